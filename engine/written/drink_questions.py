"""Questions about an amount to drink: "is 3.5 liters a lot?". They tell nothing of what was drunk."""

# ruff: noqa: E501 - a pattern stays on one line
from __future__ import annotations

import re

from engine.written.late import Late
from engine.written.units.reading import NUMBER
from engine.written.units.volume import VOLUME_WORDS

_MUCH = (
    r"(?:(?:not )?(?:a lot|much|too much|too little|little|enough|plenty|okay|ok|fine|normal|bad|good|right|safe|"
    r"allowed|the limit)|(?:nicht )?(?:zu |so |sehr )?(?:viel|wenig)|genug|ok|okay|normal|schlimm|gut|richtig|"
    r"in ordnung|erlaubt|das limit|die grenze)"
)
_BESIDE = r"(?: (?:water|of water|wasser|for me|for today|for a day|für heute|today|a day|heute|am tag|pro tag|täglich|für mich|really|eigentlich|denn|then|so|already|schon))*"
_ASKS = Late(
    rf"(?:(?:hi|hey|hallo|coach|so|und|and|sag mal|quick question|kurze frage)[ ,:]+)*"
    rf"(?:(?:is|are|was|would|isn't|aren't|ist|sind|wären|wäre|waren) {NUMBER} ?{VOLUME_WORDS}{_BESIDE}"
    rf"(?: be| being)? {_MUCH}{_BESIDE}"
    rf"|(?:do|does|will|would) {NUMBER} ?{VOLUME_WORDS}{_BESIDE} (?:do|suffice|be enough){_BESIDE}"
    rf"|(?:reichen|reicht|genügen) {NUMBER} ?{VOLUME_WORDS}{_BESIDE})",
    re.IGNORECASE,
)


def asks_about_amount(text: str) -> bool:
    """Whether the whole text asks if so much is a lot, enough or right to drink."""
    plain = " ".join(text.replace("\u2019", "'").split()).strip(" .!?…")
    return "?" in text and _ASKS.fullmatch(plain) is not None
