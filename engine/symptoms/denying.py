"""The words of denial: one list for each language, for all that asks whether something is denied.

The German ones are of books and of home; no umlaut is among them, so that they are the same however a
text is folded.
"""

from __future__ import annotations

from engine.written.late import word_set

DENIALS = word_set(
    """
    no not never without none zero nil neither nor nothing denies denied don't didn't doesn't
    haven't hasn't hadn't wasn't isn't aren't weren't ain't
    """
)


_NOT = word_set("nicht")
_NOT_AT_HOME = word_set("net ned nid nit nod")
_NO = word_set("kein keine keinen keinem keiner keines keins keinerlei")
_NO_AT_HOME = word_set("koa koane koan kei keen keene kane")
#: "ka" is "kein", and "keine Ahnung" too: by itself, before something else, it denies nothing.
NO_OR_NO_IDEA = word_set("ka kee ke kenne")
#: What everybody writes, and takes for a denial in the other language, too.
GERMAN_DENIALS_IN_WRITING = _NOT | _NO | word_set("nie niemals ohne weder null nichts")
GERMAN_DENIALS = GERMAN_DENIALS_IN_WRITING | _NOT_AT_HOME | _NO_AT_HOME | word_set("nix nimmer")


def _any_of(words: frozenset[str]) -> str:
    return f"(?:{'|'.join(sorted(words))})"


#: The same in patterns: "not", "no more", and "no" as it is said at home.
NOT = _any_of(_NOT | _NOT_AT_HOME)
NO_MORE = f"(?:nimmer|{NOT} mehr)"
NO_AT_HOME = _any_of(_NO_AT_HOME | NO_OR_NO_IDEA | {"kei ne"})
