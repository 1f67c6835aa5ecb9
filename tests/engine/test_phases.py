"""The load where the coach puts it: what each day is for, and that everything follows that."""

from __future__ import annotations

import json
from dataclasses import replace
from datetime import date, timedelta
from pathlib import Path

import pytest

from engine.cli.casefile import parse, play
from engine.decision.decide import case_as_dict, case_from_dict, decide, decision_as_dict
from engine.decision.gather import expected_fullness
from engine.evidence.experiments.loading import STUDIES
from engine.planning.behind.debrief import DayBehind, debrief
from engine.planning.drafting.draft import Asked, draft_plan
from engine.planning.drafting.template import as_ever, named, relative, renamed, scaled
from engine.planning.review import review_plan
from engine.planning.room import room_to_correct
from engine.values.athlete import Athlete, Baseline, Sex
from engine.values.case import Case, answers_decisive, answers_needed
from engine.values.checkin import CheckIn, DaySet, Gut, History, Look
from engine.values.limits import Limits, plan_problems
from engine.values.plan import DayTarget, PeakPlan, Phase

CASES = Path(__file__).parents[1] / "cases"
MIRA = Athlete(sex=Sex.FEMALE, birth_year=1994, height_cm=166, body_mass_kg=60)
TOMAS = Athlete(sex=Sex.MALE, birth_year=1990, height_cm=181, body_mass_kg=80)
HABIT = Baseline(carb_g=180, protein_g=130, fat_g=50, fibre_g=28, water_l=3.2, sodium_mg=2800)
D, U, L, R, F, E = (
    Phase.DEPLETION, Phase.USUAL, Phase.LOAD, Phase.REST, Phase.REFEED, Phase.EVENT,
)  # fmt: skip


def week(*carbs: float, phases: tuple[Phase, ...] | None = None) -> PeakPlan:
    """Eight days' carbs, seven days out first."""
    return PeakPlan(
        tuple(
            DayTarget(
                days_out=7 - at, carb_g=grams, protein_g=130, fat_g=50, fibre_g=15, water_l=3.2,
                sodium_mg=2800, phase=phases[at] if phases else None,
            )
            for at, grams in enumerate(carbs)
        )
    )  # fmt: skip


def morning(plan: PeakPlan, out: int, **answers: object) -> Case:
    """A morning of Mira's with that plan, those before it steady and sharp."""
    case = next(c for c, _ in play(parse((CASES / "flat-in-load.toml").read_text())))
    day = case.event.day - timedelta(days=out)
    told = {"weight_kg": 59.5, "fullness": 5, "sharpness": 4, "water_l": 3.2}
    before = tuple(
        CheckIn(date=day - timedelta(days=n), **told)  # type: ignore[arg-type]
        for n in (3, 2, 1)
    )
    checkin = CheckIn(date=day, **{**told, **answers})  # type: ignore[arg-type]
    limits = Limits.suggested(MIRA, plan, HABIT)
    return replace(
        case, athlete=MIRA, baseline=HABIT, plan=plan, limits=limits, checkin=checkin,
        history=History(checkins=before),
    )  # fmt: skip


# --- what is said, and what is read off the figures -------------------------------------------


@pytest.mark.parametrize(
    ("carbs", "phases"),
    [
        # The usual three days, and fewer.
        ((110, 110, 110, 110, 460, 460, 460, 180), (D, D, D, D, L, L, L, E)),
        ((110, 110, 110, 110, 110, 460, 460, 180), (D, D, D, D, D, L, L, E)),
        ((180, 180, 180, 180, 180, 180, 600, 180), (U, U, U, U, U, U, L, E)),
        # Loaded early, then less each day up to the event; a lighter last day.
        ((110, 110, 500, 420, 340, 200, 190, 180), (D, D, L, L, L, R, R, E)),
        ((110, 110, 110, 110, 480, 480, 250, 180), (D, D, D, D, L, L, L, E)),
        # A rest day between two halves of a load; four and five days of it.
        ((110, 110, 110, 460, 180, 460, 460, 180), (D, D, D, L, R, L, L, E)),
        ((110, 110, 110, 400, 400, 400, 400, 180), (D, D, D, L, L, L, L, E)),
        ((110, 110, 350, 350, 350, 350, 350, 180), (D, D, L, L, L, L, L, E)),
        # A refeed with low days after it is none of the load.
        ((110, 110, 450, 110, 460, 460, 460, 180), (D, D, F, D, L, L, L, E)),
        ((400, 110, 110, 110, 110, 460, 460, 180), (F, D, D, D, D, L, L, E)),
        # Nothing that is larger than usual: the load is taken to be where it always was.
        ((180, 180, 180, 180, 200, 200, 200, 180), (U, U, U, U, L, L, L, E)),
    ],
)
def test_a_plan_that_says_nothing_is_read_off_its_figures(
    carbs: tuple[float, ...], phases: tuple[Phase, ...]
) -> None:
    plan = named(week(*carbs), HABIT)
    assert tuple(day.phase for day in plan) == phases
    assert named(plan, HABIT) is plan


def test_what_the_coach_has_said_is_kept_and_a_long_load_is_refused() -> None:
    said = week(110, 110, 110, 110, 460, 460, 460, 180).with_day(
        replace(week(*[110] * 8).days[0], phase=Phase.REFEED)
    )
    assert named(said, HABIT).phase(7) is Phase.REFEED
    with pytest.raises(ValueError, match="at most 5"):
        week(*[400] * 8, phases=(L, L, L, L, L, L, D, E))
    with pytest.raises(ValueError, match="0 days out"):
        week(*[400] * 8, phases=(D, D, D, D, L, L, L, L))


def test_a_plan_of_before_phases_loads_from_three_days_out_and_reads_its_words_from_a_row() -> None:
    plan = week(110, 110, 450, 110, 460, 460, 460, 180)
    assert plan.load_days == (3, 2, 1)
    assert [plan.phase(out) for out in (5, 3, 0)] == [D, L, E]
    assert as_ever(plan, HABIT).load_days == (3, 2, 1)
    row = {"days_out": 2, "carb_g": 1, "protein_g": 1, "fat_g": 1, "water_l": 1, "phase": "load"}
    assert DayTarget(**row).phase is Phase.LOAD  # type: ignore[arg-type]


@pytest.mark.parametrize(
    ("out", "carb_g", "becomes"),
    [
        (5, 450, F),  # a low day follows
        (4, 450, L),  # beside the load
        (4, 150, D),
        (6, 175, U),
        (2, 90, L),  # how light a load day may be is the coach's
    ],
)
def test_a_day_that_is_changed_is_read_anew(out: int, carb_g: float, becomes: Phase) -> None:
    plan = named(week(110, 110, 110, 110, 460, 460, 460, 180), HABIT)
    assert renamed(plan.with_carbs(out, carb_g), out, HABIT).phase(out) is becomes


# --- every morning follows it -----------------------------------------------------------------


def test_a_spill_after_a_large_day_five_out_is_seen_for_what_it_is() -> None:
    plan = named(week(110, 110, 450, 110, 460, 460, 460, 180), HABIT)
    assert "sharpness" in answers_needed(4, plan)
    decision = decide(morning(plan, 4, fullness=7, sharpness=2, note="soft and blurry, spilled"))
    assert (decision.rule, decision.trace.steps) == ("spilled-over", -2)
    assert decision.change_g < 0
    # As a plan was read before its days were named, that morning was one of depletion.
    before = decide(
        morning(week(110, 110, 450, 110, 460, 460, 460, 180), 4, fullness=7, sharpness=2)
    )
    assert before.rule != "spilled-over"


@pytest.mark.parametrize("out", [4, 3, 2, 1])
def test_a_load_from_five_days_out_is_judged_as_a_load_to_the_event(out: int) -> None:
    plan = draft_plan(MIRA, HABIT, Asked("front-load"))
    assert answers_decisive(out, plan) == ("fullness", "sharpness")
    spilled = decide(morning(plan, out, fullness=9, sharpness=2))
    assert (spilled.rule, spilled.trace.steps) == ("spilled-over", -2)
    assert decide(morning(plan, out, fullness=2, sharpness=4)).rule == "flat-in-load"
    assert decide(morning(plan, out, gut=Gut.BAD, fullness=9)).rule == "gut-unsettled"


def test_before_a_late_load_nothing_is_judged_as_one() -> None:
    plan = named(week(110, 110, 110, 110, 110, 110, 600, 180), HABIT)
    assert "sharpness" not in answers_needed(2, plan)
    assert decide(morning(plan, 2, fullness=3)).rule in (
        "steady",
        "dropping-too-fast",
        "flat-before-load",
    )
    assert decide(morning(plan, 1, fullness=2)).rule == "flat-in-load"


def test_fullness_is_expected_to_rise_with_the_load_that_was_eaten_wherever_it_lies() -> None:
    early = draft_plan(MIRA, HABIT, Asked("front-load"))
    # common practice: ordinary is 5 of 10, depleted 4, after the whole load 9
    assert [expected_fullness(early, HABIT, out) for out in (6, 5, 2, 1, 0)] == [5, 4, 9, 9, 9]
    one = named(week(180, 180, 180, 180, 180, 180, 600, 180), HABIT)
    assert [expected_fullness(one, HABIT, out) for out in (2, 1, 0)] == [5, 5, 9]


def test_the_load_total_holds_all_load_days_and_no_other() -> None:
    plan = named(week(110, 450, 110, 460, 180, 460, 460, 180), HABIT)
    assert plan.load_days == (4, 2, 1)
    limits = replace(Limits.suggested(MIRA, plan, HABIT), load_total_g=1400)
    case = replace(morning(plan, 2, fullness=2, sharpness=5), limits=limits)
    assert case.load_room_g == 1400 - 460 - 460
    set_day = DaySet(case.event.day - timedelta(days=4), 500)
    eaten = replace(case, history=replace(case.history, set_days=(set_day,)))
    assert eaten.load_room_g == 1400 - 500 - 460
    decision = decide(case)
    assert (decision.carb_g, decision.bound) == (480, "load_total_g")
    assert (
        decide(
            replace(case, plan=plan, checkin=replace(case.checkin, date=date(2026, 11, 25)))
        ).bound
        is None
    )


def test_a_stored_case_with_its_phases_decides_the_same_again() -> None:
    case = morning(draft_plan(MIRA, HABIT, Asked("front-load")), 3, fullness=2)
    record = json.loads(json.dumps(case_as_dict(case), allow_nan=False))
    assert case_from_dict(record) == case
    assert decision_as_dict(decide(case_from_dict(record))) == decision_as_dict(decide(case))
    for day in record["plan"]["days"]:
        del day["phase"]
    assert case_from_dict(record).plan.load_days == (3, 2, 1)


# --- and so does what is planned and looked back on -------------------------------------------


def test_limits_room_review_and_debrief_go_by_the_plans_own_load() -> None:
    plan = named(week(110, 110, 500, 500, 400, 200, 190, 180), HABIT)
    limits = Limits.suggested(MIRA, plan, HABIT)
    assert limits.load_total_g == pytest.approx(1400 + 7.5 * 60, abs=5)
    one = named(week(180, 180, 180, 180, 180, 180, 600, 180), HABIT)
    assert Limits.suggested(MIRA, one, HABIT).load_total_g == pytest.approx(600 + 2.5 * 60, abs=5)
    room = room_to_correct(plan, limits)
    assert room is not None and room.up_g == pytest.approx(7.5 * 60 / 3, abs=2)
    behind = debrief([DayBehind(target=day, set_g=day.carb_g) for day in plan], Look.FULL)
    assert (behind.load_days, behind.planned_g) == (3, 1400)
    lighter = week(110, 110, 500, 110, 400, 400, 400, 180, phases=(D, D, D, D, L, L, L, E))
    found = {finding.id: finding for finding in review_plan(MIRA, HABIT, lighter)}
    assert [day.days_out for day in found["load-by-another-name"].days] == [5]
    assert "load-by-another-name" not in {
        f.id
        for f in review_plan(
            MIRA, HABIT, named(lighter, HABIT).with_day(replace(lighter.days[2], phase=F))
        )
    }
    none = week(*[180] * 8, phases=(U, U, U, U, U, U, U, E))
    assert "no-load-day" in {finding.id for finding in review_plan(MIRA, HABIT, none)}


def test_a_template_carries_the_phases_over_and_scales_load_and_refeed_by_body_mass() -> None:
    plan = named(week(450, 110, 500, 500, 400, 200, 190, 180), HABIT)
    theirs = scaled(json.loads(json.dumps(relative(plan, MIRA, HABIT))), TOMAS, HABIT)
    assert [day.phase for day in theirs] == [day.phase for day in plan]
    assert [day.carb_g for day in theirs] == [600, 110, 665, 665, 535, 265, 255, 240]
    older = [{k: v for k, v in day.items() if k != "phase"} for day in relative(plan, MIRA, HABIT)]
    assert not scaled(older, TOMAS, HABIT).says_phases


# --- published loads --------------------------------------------------------------------------


def _load_days_of(study_id: str) -> list[float]:
    """g/kg of each of its load days: those on which its subjects were fed to fill up."""
    study = next(one for one in STUDIES if one.id == study_id)
    kg = study.protocol["subject"]["body_mass_kg"]
    days: list[float] = []
    for phase in study.protocol["phase"]:
        a_day = phase.get("carb_g_per_kg_day", phase.get("carb_g_per_day", 0) / kg)
        whole = round(phase.get("days", phase.get("hours", 0) / 24))
        days += [a_day] * (whole if a_day >= 5 else 0)
    return days


PUBLISHED = {
    # Fairchild et al. 2002, Med Sci Sports Exerc 34:980-986
    "fairchild-2002": 1,
    # Motonaga et al. 2022, Nutrients 14:1320
    "motonaga-2022-7": 1,
    "motonaga-2022-10": 1,
    # Homer et al. 2024, Nutrition 127:112528
    "homer-2024": 1,
    # Bussau et al. 2002, Eur J Appl Physiol 87:290-295 (from memory)
    "bussau-2002": 3,
    # Shiose et al. 2016, J Appl Physiol 121:205-211 (from memory)
    "shiose-2016": 3,
    # Bergstrom et al. 1967, Acta Physiol Scand 71:140-150 (from memory)
    "bergstrom-1967-high": 3,
    # Tarnopolsky et al. 1995, J Appl Physiol 78:1360-1368
    "tarnopolsky-1995-men": 4,
    "tarnopolsky-1995-women": 4,
}
#: Loads that are advised and were not measured as one experiment.
ADVISED = {
    # Areta & Hopkins 2018, Sports Med 48:2091-2102: 7 g/kg or more for two days
    "areta-2018": [7.0, 7.0],
    # Burke et al. 2011, J Sports Sci 29:S17-27 (from memory): 10-12 g/kg per 24 h for 36-48 h
    "burke-2011": [10.0, 10.0],
    # Balon et al. 1992: three days at 80 % of 45 kcal/kg, 9 g/kg, then one day of rest
    "balon-1992": [9.0, 9.0, 9.0, 0.0],
}


@pytest.mark.parametrize("study", [*PUBLISHED, *ADVISED])
def test_published_loads_are_plans_inside_the_limits_suggested_for_them(study: str) -> None:
    doses = ADVISED.get(study) or _load_days_of(study)
    if study in PUBLISHED:
        assert len(doses) == PUBLISHED[study]
    athlete = MIRA if study.endswith("-women") else TOMAS
    habit = replace(HABIT, carb_g=3.5 * athlete.body_mass_kg)
    fed = [round(dose * athlete.body_mass_kg) for dose in doses]
    rest = [round(2.5 * athlete.body_mass_kg)] * (7 - len(fed))
    carbs = [*rest, *(grams or habit.carb_g for grams in fed), habit.carb_g]
    plan = named(week(*carbs), habit)
    load = [len(doses) - at for at, dose in enumerate(doses) if dose]
    assert list(plan.load_days) == load
    assert [plan.phase(out) for out in range(len(doses), 0, -1)] == [
        L if dose else R for dose in doses
    ]
    assert plan.load_g == sum(fed)
    limits = Limits.suggested(athlete, plan, habit)
    assert plan_problems(plan, limits) == ()
    over = {"carbs-over-guard-rail", "load-over-guard-rail", "load-by-another-name"}
    assert not over & {finding.id for finding in review_plan(athlete, habit, plan)}
