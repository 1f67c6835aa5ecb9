"""One food and what 100 g of it holds. Carbohydrate here is always without fibre, as on EU labels.

The published table and US labels count fibre as carbohydrate, EU labels do not; both are brought to
the one convention in which the plans are written, so that nothing is counted twice.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from enum import StrEnum

from engine.evidence import eating as e
from engine.food.foods.table import TABLE, Row
from engine.values.athlete import energy_kcal


class LabelConvention(StrEnum):
    EU = "eu"  # carbohydrate without fibre, salt in g
    US = "us"  # total carbohydrate with fibre, sodium in mg


class LabelProblem(ValueError):  # noqa: N818 - it names what is wrong with the label
    """Figures that no food can have; `code` says which: more-than-whole, fibre-over-carbs, energy."""

    def __init__(self, code: str, **facts: float) -> None:
        super().__init__(f"{code}: {facts}")
        self.code, self.facts = code, facts


@dataclass(frozen=True, slots=True, kw_only=True)
class Food:
    """Per 100 g: grams, but for kcal and mg of sodium. Served in whole steps of `step_g`.

    `piece` is the name of one step, such as "egg white", where it is a piece.
    """

    id: str
    name: str
    kcal: float
    carb_g: float
    protein_g: float
    fat_g: float
    fibre_g: float
    sodium_mg: float
    step_g: float
    piece: str = ""

    def __post_init__(self) -> None:
        figures = (self.kcal, self.carb_g, self.protein_g, self.fat_g, self.fibre_g, self.sodium_mg)
        if not all(math.isfinite(figure) and figure >= 0 for figure in figures):
            raise ValueError(f"{self.id}: a food's figures are 0 or more")
        if not (math.isfinite(self.step_g) and self.step_g > 0):
            raise ValueError(f"{self.id}: a portion is more than 0 g")


@dataclass(frozen=True, slots=True, kw_only=True)
class Label:
    """A label's figures for `basis_g` grams (100, or one portion).

    EU labels give `salt_g`, US labels `sodium_mg`.
    """

    convention: LabelConvention
    basis_g: float
    carb_g: float
    protein_g: float
    fat_g: float
    fibre_g: float
    salt_g: float = 0.0
    sodium_mg: float = 0.0
    kcal: float | None = None


def from_label(id: str, name: str, label: Label, step_g: float) -> Food:
    """The food that a label describes. Raises `LabelProblem` for figures that cannot be."""
    per_100 = 100 / label.basis_g
    carb, fibre = label.carb_g, label.fibre_g
    sodium = label.sodium_mg
    if label.convention is LabelConvention.US:
        if fibre > carb:
            raise LabelProblem("fibre-over-carbs", carb_g=carb, fibre_g=fibre)
        carb -= fibre
    else:
        sodium = label.salt_g / float(e.SALT_PER_SODIUM) * 1000
    whole = carb + fibre + label.protein_g + label.fat_g
    if whole > label.basis_g * 1.01:  # labels are rounded
        raise LabelProblem("more-than-whole", sum_g=whole, basis_g=label.basis_g)
    computed = energy_kcal(carb, label.protein_g, label.fat_g, fibre) * per_100
    stated = computed if label.kcal is None else label.kcal * per_100
    off = abs(stated - computed)
    if off > float(e.LABEL_ENERGY_KCAL) and off > float(e.LABEL_ENERGY_SHARE) * max(
        stated, computed
    ):
        raise LabelProblem("energy", stated_kcal=stated / per_100, computed_kcal=computed / per_100)
    return Food(
        id=id, name=name, kcal=stated,
        carb_g=carb * per_100, protein_g=label.protein_g * per_100, fat_g=label.fat_g * per_100,
        fibre_g=fibre * per_100, sodium_mg=sodium * per_100, step_g=step_g,
    )  # fmt: skip


def known_foods() -> tuple[Food, ...]:
    """The foods of the published table."""
    return tuple(_of(row) for row in TABLE)


def known_food(id: str) -> Food | None:
    return next((food for food in known_foods() if food.id == id), None)


def search(words: str, most: int = 8) -> tuple[Food, ...]:
    """Foods of the table whose name has a word that begins with each word given, nearest first."""
    wanted = [word.strip(".,") for word in words.casefold().split() if word.strip(".,")]
    found = []
    for food in known_foods():
        has = food.name.casefold().replace(",", " ").split()
        if wanted and all(any(word.startswith(part) for word in has) for part in wanted):
            found.append((has.index(next(w for w in has if w.startswith(wanted[0]))), food))
    return tuple(food for _, food in sorted(found, key=lambda pair: pair[0])[:most])


def _of(row: Row) -> Food:
    return Food(
        id=f"usda-{row.number}", name=row.name, kcal=row.kcal,
        carb_g=max(row.carb_by_difference_g - row.fibre_g, 0), protein_g=row.protein_g,
        fat_g=row.fat_g, fibre_g=row.fibre_g, sodium_mg=row.sodium_mg,
        step_g=row.step_g, piece=row.piece,
    )  # fmt: skip
