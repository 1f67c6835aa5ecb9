"""What an athlete does not count has no figure anywhere: sodium and fibre stay as always."""

from __future__ import annotations

import json
from dataclasses import replace
from pathlib import Path

import pytest

from engine.__main__ import main
from engine.cli.casefile import parse, play
from engine.decision.decide import case_as_dict, case_from_dict, decide, decision_as_dict
from engine.food.portions import Aim, Totals
from engine.planning.drafting.draft import SHAPES, Asked, draft_plan
from engine.planning.drafting.draft_reasons import draft_reasons
from engine.planning.drafting.template import relative, scaled
from engine.planning.review import review_plan
from engine.safety import Level
from engine.values.athlete import Athlete, Baseline, Sex, energy_kcal
from engine.values.case import ForecastUse

ATHLETE = Athlete(sex=Sex.FEMALE, birth_year=1996, height_cm=165, body_mass_kg=61.2)
COUNTED = Baseline(carb_g=310, protein_g=140, fat_g=55, fibre_g=25, water_l=3.5, sodium_mg=2300)
UNCOUNTED = replace(COUNTED, fibre_g=None, sodium_mg=None)
CASES = sorted((Path(__file__).parents[1] / "cases").glob("*.toml"))


def uncounted_file(path: Path) -> str:
    """The case file with every line on fibre and sodium left out."""
    lines = path.read_text(encoding="utf-8").splitlines()
    return "\n".join(line for line in lines if not line.startswith(("fibre_g", "sodium_mg")))


@pytest.mark.parametrize("shape", SHAPES)
def test_a_draft_has_no_figure_for_what_nobody_counts_and_passes_its_review(shape: str) -> None:
    plan = draft_plan(ATHLETE, UNCOUNTED, Asked(shape))
    assert {(day.fibre_g, day.sodium_mg) for day in plan} == {(None, None)}
    counted = draft_plan(ATHLETE, COUNTED, Asked(shape))
    assert [day.carb_g for day in plan] == [day.carb_g for day in counted]
    assert not {"sodium-swing", "sodium-habit-unknown", "fibre-high-late"} & {
        finding.id for finding in review_plan(ATHLETE, UNCOUNTED, plan)
    }


def test_a_draft_says_that_what_is_not_counted_stays_as_always() -> None:
    lines = {
        line.id: line for line in draft_reasons(ATHLETE, UNCOUNTED, Asked("even", 8.2, "mild"))
    }
    assert {"fibre-not-counted", "sodium-not-counted"} <= set(lines)
    assert not {"fibre", "sodium"} & set(lines)
    assert not lines["sodium-not-counted"].facts


def test_a_sodium_figure_for_somebody_whose_habit_nobody_knows_is_cautioned_about() -> None:
    """An adequate intake (EFSA 2019: 2.0 g a day) is a cut for most people who train much."""
    plan = draft_plan(ATHLETE, UNCOUNTED)
    day = plan.day(2)
    assert day is not None
    found = review_plan(ATHLETE, UNCOUNTED, plan.with_day(replace(day, sodium_mg=2000)))
    cautions = [finding for finding in found if finding.id == "sodium-habit-unknown"]
    assert [(f.level, f.days[0].days_out) for f in cautions] == [(Level.CAUTION, 2)]


@pytest.mark.parametrize("path", CASES, ids=lambda path: path.stem)
@pytest.mark.parametrize("forecast", [ForecastUse.RULES_ONLY, ForecastUse.PROPOSES])
def test_a_case_file_may_leave_them_out_and_decides_and_replays_all_the_same(
    path: Path, forecast: ForecastUse
) -> None:
    file = parse(uncounted_file(path))
    assert (file.baseline.fibre_g, file.baseline.sodium_mg) == (None, None)
    for case, decision in play(file, forecast=forecast):
        record = json.loads(json.dumps(case_as_dict(case), allow_nan=False))
        assert case_from_dict(record) == case
        assert decision_as_dict(decide(case_from_dict(record))) == decision_as_dict(decision)


def test_a_case_file_without_them_prints_its_plan_as_always(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    path = tmp_path / "case.toml"
    path.write_text(uncounted_file(CASES[0]), encoding="utf-8")
    assert main([str(path)]) == 0
    assert "always" in capsys.readouterr().out


def test_a_template_gives_no_figure_to_somebody_who_does_not_count() -> None:
    of_counted = relative(draft_plan(ATHLETE, COUNTED), ATHLETE, COUNTED)
    onto_uncounted = scaled(of_counted, ATHLETE, UNCOUNTED)
    assert {(day.fibre_g, day.sodium_mg) for day in onto_uncounted} == {(None, None)}
    of_uncounted = relative(draft_plan(ATHLETE, UNCOUNTED), ATHLETE, UNCOUNTED)
    onto_counted = scaled(json.loads(json.dumps(of_uncounted)), ATHLETE, COUNTED)
    assert {day.sodium_mg for day in onto_counted} == {COUNTED.sodium_mg}


def test_fibre_that_is_not_counted_adds_no_energy() -> None:
    # EU 1169/2011, Annex XIV: 4, 4 and 9 kcal per g of carbohydrate, protein and fat
    assert energy_kcal(300, 100, 50, None) == 300 * 4 + 100 * 4 + 50 * 9


def test_what_is_left_of_a_day_has_no_figure_for_what_had_none() -> None:
    aim = Aim(carb_g=300, protein_g=120, fat_g=40)
    left = aim.left_after(Totals(carb_g=100, protein_g=150, fat_g=10, fibre_g=9, sodium_mg=800))
    assert left == Aim(carb_g=200, protein_g=0, fat_g=30)
