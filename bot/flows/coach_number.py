"""A single number of a plan in one line, such as "Mira 2 days out carbs 420"."""

from __future__ import annotations

import re
from dataclasses import dataclass

from engine.plan import PLAN_DAYS

_FIELDS = {
    "carb": "carb_g", "carbs": "carb_g", "carbohydrate": "carb_g", "carbohydrates": "carb_g",
    "protein": "protein_g", "fat": "fat_g", "fibre": "fibre_g", "fiber": "fibre_g",
    "water": "water_l", "sodium": "sodium_mg", "cardio": "cardio_min", "steps": "steps",
}  # fmt: skip
_LONGEST_VALUE = 24  # characters; it has to fit a button
_SAID = re.compile(
    r"(?:(?P<name>\S.*?)[\s,:]+)?"
    r"(?:(?P<out>\d)\s+days?\s+out|(?:the\s+|on\s+)?(?:show|stage|shoot)\s+day)[\s,:]+"
    rf"(?P<field>{'|'.join(_FIELDS)})[\s:=]+(?P<value>[^\s:][^:]*)",
    re.IGNORECASE,
)


@dataclass(frozen=True, slots=True)
class TypedNumber:
    """`name` is None where nobody was named; `value` as it was typed, its unit included."""

    name: str | None
    days_out: int
    key: str
    value: str


def read_number(text: str) -> TypedNumber | None:
    """What such a line says; None for any other text."""
    found = _SAID.fullmatch(" ".join(text.split()))
    if found is None or len(found["value"].encode()) > _LONGEST_VALUE:
        return None
    days_out = int(found["out"] or 0)
    if days_out not in PLAN_DAYS:
        return None
    return TypedNumber(found["name"], days_out, _FIELDS[found["field"].lower()], found["value"])
