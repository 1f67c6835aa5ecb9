"""The food table against the one it was copied from, and labels of both conventions."""

from __future__ import annotations

import pytest

from engine.food.foods import (
    Food,
    Label,
    LabelConvention,
    LabelProblem,
    from_label,
    known_food,
    known_foods,
    search,
)
from engine.food.foods.table import TABLE

# USDA National Nutrient Database for Standard Reference 26, file ABBREV.txt, read off by hand:
# NDB number, kcal, protein, fat, carbohydrate by difference, fibre, sodium; per 100 g.
PUBLISHED = [
    ("20045", 130, 2.69, 0.28, 28.17, 0.4, 1),  # rice, white, long-grain, cooked
    ("08100", 370, 6.30, 0.50, 82.40, 0.7, 6),  # cream of rice, dry
    ("08120", 379, 13.15, 6.52, 67.70, 10.1, 6),  # oats, dry
    ("19296", 304, 0.30, 0.00, 82.40, 0.2, 4),  # honey
    ("18069", 265, 9.15, 3.19, 49.06, 2.7, 491),  # bread, white
    ("09040", 89, 1.09, 0.33, 22.84, 2.6, 1),  # bananas
    ("05064", 165, 31.02, 3.57, 0.00, 0.0, 74),  # chicken breast, roasted
    ("01124", 52, 10.90, 0.17, 0.73, 0.0, 166),  # egg white
    ("15237", 206, 22.10, 12.35, 0.00, 0.0, 61),  # salmon, farmed
    ("04053", 884, 0.00, 100.00, 0.00, 0.0, 2),  # olive oil
    ("12061", 579, 21.15, 49.93, 21.55, 12.5, 1),  # almonds
    ("19047", 384, 9.95, 3.47, 79.97, 3.3, 1150),  # pretzels
    ("02047", 0, 0.00, 0.00, 0.00, 0.0, 38758),  # table salt
    ("05711", 136, 29.51, 1.97, 0.00, 0.0, 114),  # turkey breast
]

# The table's energy is by food-specific factors; the general Atwater factors of USDA Handbook 74
# (4/9/4 kcal/g) differ from it by as much as stated here: almonds 41, dates 31, raisins 34, honey 27.
ATWATER_ROOM_KCAL = 8
STATED_DIFFERENCES = {
    "19296": 27, "19335": 13, "19353": 9, "08100": -11, "05064": -9, "13418": -9, "04053": 16,
    "16398": 44, "16098": 44, "12061": 41, "09087": 31, "09298": 34, "09040": 10, "09037": 14,
    "09132": 8,
}  # fmt: skip


def test_the_table_holds_forty_nine_foods_each_once() -> None:
    assert len(TABLE) == 49
    assert len({row.number for row in TABLE}) == len({row.name for row in TABLE}) == 49


@pytest.mark.parametrize("published", PUBLISHED, ids=[row[0] for row in PUBLISHED])
def test_a_food_of_the_table_is_as_published(published: tuple[str, *tuple[float, ...]]) -> None:
    row = next(row for row in TABLE if row.number == published[0])
    held = (
        row.kcal, row.protein_g, row.fat_g, row.carb_by_difference_g, row.fibre_g, row.sodium_mg
    )  # fmt: skip
    assert held == published[1:]


def test_the_sum_by_atwater_factors_lies_near_the_tables_own_energy() -> None:
    for row in TABLE:
        by_factors = 4 * row.protein_g + 9 * row.fat_g + 4 * row.carb_by_difference_g
        expected = STATED_DIFFERENCES.get(row.number, 0)
        room = 1 if expected else ATWATER_ROOM_KCAL
        assert by_factors - row.kcal == pytest.approx(expected, abs=room), row.name


def test_fibre_is_taken_out_of_the_tables_carbohydrate_as_plans_count_without_it() -> None:
    oats = known_food("usda-08120")
    assert oats is not None
    assert oats.carb_g == pytest.approx(67.70 - 10.1)
    assert all(food.carb_g >= 0 for food in known_foods())


def test_the_same_bread_read_off_an_eu_and_a_us_label_is_the_same_food() -> None:
    # 100 g: 49 g carbs of which fibre 3 g by difference; 500 mg sodium is 1.25 g salt (EU 1169/2011)
    eu = Label(
        convention=LabelConvention.EU, basis_g=100, carb_g=46, protein_g=9, fat_g=3, fibre_g=3,
        salt_g=1.25,
    )  # fmt: skip
    us = Label(
        convention=LabelConvention.US, basis_g=40, carb_g=19.6, protein_g=3.6, fat_g=1.2,
        fibre_g=1.2, sodium_mg=200,
    )  # fmt: skip
    one, other = from_label("a", "bread", eu, 40), from_label("a", "bread", us, 40)
    for key in ("carb_g", "protein_g", "fat_g", "fibre_g", "sodium_mg", "kcal"):
        assert getattr(one, key) == pytest.approx(getattr(other, key)), key
    # Annex XIV: 4 x 46 + 4 x 9 + 9 x 3 + 2 x 3
    assert one.kcal == pytest.approx(253)
    assert one.sodium_mg == pytest.approx(500)


@pytest.mark.parametrize(
    ("code", "changes"),
    [
        ("more-than-whole", {"carb_g": 95, "protein_g": 9}),
        ("fibre-over-carbs", {"convention": LabelConvention.US, "carb_g": 2, "fibre_g": 3}),
        ("energy", {"kcal": 100}),
        ("energy", {"kcal": 500}),
    ],
)
def test_a_label_that_no_food_can_have_is_refused(code: str, changes: dict[str, object]) -> None:
    figures = {
        "convention": LabelConvention.EU, "basis_g": 100, "carb_g": 46, "protein_g": 9, "fat_g": 3,
        "fibre_g": 3, "salt_g": 1,
    } | changes  # fmt: skip
    with pytest.raises(LabelProblem) as refused:
        from_label("a", "bread", Label(**figures), 40)  # type: ignore[arg-type]
    assert refused.value.code == code


def test_a_labels_own_energy_may_differ_as_labels_do() -> None:
    label = Label(
        convention=LabelConvention.EU, basis_g=100, carb_g=46, protein_g=9, fat_g=3, fibre_g=3,
        kcal=262,
    )  # fmt: skip
    assert from_label("a", "bread", label, 40).kcal == 262


@pytest.mark.parametrize(
    ("words", "first"),
    [
        ("rice", "White rice, cooked"),
        ("RICE cak", "Rice cakes, unsalted"),
        ("egg", "Egg white, weighed raw"),
        ("chick", "Chicken breast, roasted"),
        ("sweet pot", "Sweet potato, baked in skin"),
    ],
)
def test_a_food_is_found_by_the_beginnings_of_its_words(words: str, first: str) -> None:
    assert first in [food.name for food in search(words)][:3]


@pytest.mark.parametrize("words", ["", "   ", "xyz", "rice banana", ",", "🤷"])
def test_what_is_no_food_finds_none(words: str) -> None:
    assert search(words) == ()


def test_a_food_with_a_senseless_figure_cannot_be_made() -> None:
    with pytest.raises(ValueError, match="0 or more"):
        Food(
            id="a", name="a", kcal=-1, carb_g=0, protein_g=0, fat_g=0, fibre_g=0, sodium_mg=0,
            step_g=10,
        )  # fmt: skip
