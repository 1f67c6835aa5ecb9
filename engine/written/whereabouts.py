"""Where somebody says that they are now: "I'm in New York now", "bin jetzt in Madrid"."""

from __future__ import annotations

from engine.written.late import Late

_NOW_IN = Late(
    r"(?:(?:ok|so|hey|hi|just|gerade)[,:]? )*"
    r"(?:i'm|i am|we're|we are|im|ich bin|wir sind|bin|sind)?\s?"
    r"(?:just |now |already |jetzt |schon |gerade |gut |safely )*"
    r"(?:landed |arrived |gelandet |angekommen )?in (?P<place>[^\W\d_][^\d?!;]{1,40}?)"
    r"(?: (?P<now>now|already|jetzt|schon|gelandet|angekommen|today|heute))*"
)
_TELLS_NOW = Late(r"\b(?:now|just|landed|arrived|already|jetzt|gerade|gelandet|angekommen|schon)\b")


def now_in(text: str) -> str:
    """The place of which somebody says that they have come there; "" where none is."""
    plain = " ".join(text.replace("’", "'").split()).strip(" .!")
    match = _NOW_IN.fullmatch(plain.lower())
    if match is None or not _TELLS_NOW.search(plain.lower()):
        return ""
    return plain[match.start("place") : match.end("place")]
