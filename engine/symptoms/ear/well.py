"""What says that its writer is well: "I feel fine, just tired", "mir geht's gut"."""

# ruff: noqa: E501 - a pattern stays on one line
from __future__ import annotations

from engine.symptoms.ear.reading import fold
from engine.written.late import Late

_AM = (
    r"i'm|im|i am|i feel|i'm feeling|feel|feeling|am feeling|all|all is|all's|everything|everything's|everything is|"
    r"it's all|its all|mir geht'?s|mir geht es|geht(?:'s| es)? mir|geht|alles|alles ist|ist alles|bin|ich bin|"
    r"fuhl\w* mich|ich fuhl\w* mich"
)
_HOW = r"really|so|very|totally|all|completely|much|absolutely|perfectly|quite|schon|wieder|ganz|jetzt|auch|viel|echt|sehr|total"
_WELL = r"fine|good|great|ok|okay|well|alright|better|perfect|gut|super|bestens|in ordnung|besser|prima|fit|klar|paletti"
_IS_WELL = Late(
    rf"(?:(?:no|nope|nah|nein|ne|oh|ah|ja|yes|yeah|thanks|danke)[,. ]+)*(?:{_AM}) (?:(?:{_HOW}) )*(?:{_WELL})\b"
    r"(?: (?:now|again|today|here|thanks|thank you|coach|jetzt|wieder|heute|danke))*[ ]?(?:[,.!;:)-].*)?"
)
#: What sets something apart from it.
_SAVE = Late(
    r"\b(?:but|except|apart|though|only|until|if|when|not|aber|ausser|bis auf|nur|nicht|wenn|obwohl)\b"
)


def calls_themself_well(text: str) -> bool:
    """Whether a text begins with that, asks nothing and sets nothing apart from it; there may be more."""
    plain = plainly(text)
    return "?" not in text and bool(_IS_WELL.fullmatch(plain)) and not _SAVE.search(plain)


def plainly(text: str) -> str:
    """The text in small letters, without accents and with single spaces."""
    return " ".join(fold(text).replace("\u2019", "'").split())
