"""Every number has a unit and a source, and the figures agree with what was published."""

from __future__ import annotations

import ast
import importlib
import pkgutil
from pathlib import Path

import pytest

import engine.evidence
from engine.evidence import deciding as e
from engine.evidence.planning import drafting
from engine.evidence.source import Number, Provenance, Source
from engine.safety import Flag, Level

ROOT = Path(__file__).parents[2]
MODULES = [
    importlib.import_module(f"engine.evidence.{module.name}")
    for module in pkgutil.iter_modules(engine.evidence.__path__)
]
NUMBERS = [
    (f"{module.__name__.rsplit('.', 1)[-1]}.{name}", value)
    for module in MODULES
    for name, value in vars(module).items()
    if isinstance(value, Number)
]
SOURCES = {
    source
    for module in MODULES
    for value in vars(module).values()
    for source in ([value] if isinstance(value, Source) else [])
} | {number.source for _, number in NUMBERS}


def test_there_are_numbers_and_sources_to_look_at() -> None:
    assert len(NUMBERS) > 80
    assert len(SOURCES) > 25


def test_every_number_has_a_unit_a_name_and_a_source() -> None:
    for name, number in NUMBERS:
        assert number.unit.strip(), name
        assert number.name.strip(), name
        assert number.source.citation.strip(), name


def test_one_id_is_one_source() -> None:
    by_id: dict[str, set[Source]] = {}
    for source in SOURCES:
        by_id.setdefault(source.id, set()).add(source)
    assert {id for id, found in by_id.items() if len(found) > 1} == set()


def test_what_claims_to_be_published_says_where_and_when() -> None:
    for source in SOURCES:
        if source.provenance in {Provenance.SEEN, Provenance.MEMORY}:
            assert any(char.isdigit() for char in source.citation) or ":" in source.citation


def test_a_source_without_a_citation_and_a_number_without_a_unit_cannot_be_made() -> None:
    with pytest.raises(ValueError, match="citation"):
        Source("x", "", Provenance.SEEN)
    with pytest.raises(ValueError, match="unit"):
        Number("x", 1, "", e.OWN_CHOICE)


def test_a_safety_flag_without_a_source_cannot_be_made() -> None:
    assert Flag("fainting", Level.CAUTION, {}, (e.OWN_CHOICE,)).sources
    with pytest.raises(ValueError, match="source"):
        Flag("fainting", Level.CAUTION, {}, ())


def test_every_number_of_deciding_is_used_somewhere_in_the_engine() -> None:
    code = "".join(
        path.read_text(encoding="utf-8")
        for path in (ROOT / "engine").rglob("*.py")
        if path.name != "deciding.py"
    )
    names = [name.split(".")[1] for name, _ in NUMBERS if name.startswith("deciding.")]
    assert [name for name in names if f"e.{name}" not in code] == []


DECIDING = {
    "limits": "values", "band": "decision", "facts": "decision", "table": "decision/rules",
    "gates": "decision", "decide": "decision", "draft": "planning/drafting",
}  # fmt: skip


@pytest.mark.parametrize("module", DECIDING)
def test_the_deciding_modules_hold_no_figures_of_their_own(module: str) -> None:
    """Past 0, 1, 2 and counts of grains, a bare figure in these modules would have no source."""
    tree = ast.parse(
        (ROOT / "engine" / DECIDING[module] / f"{module}.py").read_text(encoding="utf-8")
    )
    named = [node for node in ast.walk(tree) if isinstance(node, ast.Call)]
    sourced = {
        inner
        for call in named
        if ast.unparse(call.func) == "Number"  # which has its unit and source
        for inner in ast.walk(call)
    }
    figures = {
        node.value
        for node in ast.walk(tree)
        if node not in sourced
        and isinstance(node, ast.Constant)
        and isinstance(node.value, int | float)
        and not isinstance(node.value, bool)
    }
    named_elsewhere = {
        # halves up; three load days; rounding; litres' grain; athletes whose rails are kept at hand
        "limits": {0.5, 3, 6, 0.05, 1e-9, 256},
        "band": {1000},  # g per kg
        "facts": {0.5, 5, 6},  # halves up; the scale of sharpness; rounding
        "gates": {5, 8, 10, 12, 24},  # ends of scales, hours of a day, characters shown
        "decide": {6},  # rounding
        "draft": {3, 4, 5, 6, 7},  # days out
        "table": {11},  # the rule table's number
    }
    assert figures - {0, 1, 2, -1, -2} <= named_elsewhere.get(module, set())


# Checks against the outside: the figure as published, beside what the engine holds.
@pytest.mark.parametrize(
    ("number", "published", "where"),
    [
        (e.CARB_MOST_G_PER_KG, 12, "Burke 2011, J Sports Sci 29:S17-27: 10-12 g/kg per 24 h"),
        (e.LOAD_MOST_G_PER_KG, 36, "Shiose 2016, J Appl Physiol 121:205-211: 12 g/kg x 3 days"),
        (e.MORNING_WEIGHT_CV, 0.0066, "Cheuvront 2004, IJSNEM 14:532-540: CV 0.66 %"),
        (e.MORNINGS_FOR_AN_ANCHOR, 3, "Cheuvront 2004: three mornings suffice"),
        (e.GLYCOGEN_WATER_LOW, 3, "Fernandez-Elias 2015, EJAP 115:1919-26: 1:3 at the least"),
        (e.GLYCOGEN_WATER_HIGH, 4, "Kreitzman 1992, AJCN 56:292S-293S: 3-4 parts water"),
        (e.WATER_LEAST_WOMEN_L, 1.4, "EFSA 2010, EFSA J 8(3):1459: drinks, women"),
        (e.WATER_LEAST_MEN_L, 1.75, "EFSA 2010, EFSA J 8(3):1459: drinks, men"),
        (e.WATER_MOST_L_PER_KG, 0.1, "Reale 2018, IJSNEM 28:565-573: 100 mL/kg"),
        (drafting.PROTEIN_LEAST_G_PER_KG, 1.8, "Roberts 2020, J Hum Kinet 71:79-108: 1.8-2.7"),
        (drafting.LOAD_LEAST_G_PER_KG, 3, "Escalante 2021, BMC SSMR 13:68: about 3-12 (memory)"),
    ],
    ids=lambda value: value.name if isinstance(value, Number) else "",
)
def test_a_figure_is_the_published_one(number: Number, published: float, where: str) -> None:
    assert float(number) == published, where


def test_a_female_load_exceeds_what_sedlock_found_women_need() -> None:
    # Sedlock 2008, Curr Sports Med Rep 7:209-213: more than 8 g/kg a day
    assert float(drafting.LOAD_WOMEN_G_PER_KG) > 8


def test_the_scatter_in_per_cent_is_the_scatter_in_kilograms_of_the_men_measured() -> None:
    # Cheuvront 2004: SD 0.51 kg and CV 0.66 % of the same men, so they weighed about 77 kg.
    assert 0.51 / float(e.MORNING_WEIGHT_CV) == pytest.approx(77, abs=1)


def test_the_store_swing_follows_from_fairchild_and_stays_under_acheson() -> None:
    # Fairchild 2002, MSSE 34:980-986: 109.1 -> 198.2 mmol/kg wet muscle; 162 g/mol glucosyl.
    per_kg_muscle = (198.2 - 109.1) * 0.162
    assert float(e.STORE_SWING_G_PER_KG) == pytest.approx(per_kg_muscle * 0.28, abs=0.1)
    # Acheson 1988, Am J Clin Nutr 48:240-247: about 15 g/kg held in all, 500 g gained by depleted
    # men: the swing is well inside both.
    assert float(e.STORE_SWING_G_PER_KG) < 500 / 70
