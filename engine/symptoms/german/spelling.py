"""German words as they are compared: without umlauts and sharp s, misspelt ones put right.

"ü", "ue" and "u" become the same letter, since people write all three on a phone.
"""

from __future__ import annotations

import unicodedata
from functools import partial

from engine.symptoms.english.spelling import Corrector, Habits
from engine.written.late import Late

_UMLAUT_IN_TWO = Late(r"([aou])e")


def folded(text: str) -> str:
    """ "Übelkeit", "Uebelkeit" and "Ubelkeit" to "ubelkeit"; patterns are folded as words are."""
    plain = unicodedata.normalize("NFKD", text.casefold().replace("ß", "ss"))
    if not plain.isascii():
        plain = "".join(c for c in plain if not unicodedata.combining(c))
    return _UMLAUT_IN_TWO.sub(r"\1", plain)


#: Puts slips right, and where there is none, folds what the umlauts are written as first.
GERMAN_CORRECTOR = Corrector(
    Habits.written("engine.symptoms.german", folded), tried_as=partial(_UMLAUT_IN_TWO.sub, r"\1")
)
