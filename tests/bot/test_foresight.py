"""The forecast in chat: a plain line for the athlete, odds for whoever asks, the coach's word."""

from __future__ import annotations

import inspect
import re

import pytest
from sqlalchemy import Engine
from sqlmodel import select

from bot.decision import words_forecast as words
from bot.store.db import transaction
from bot.store.tables.people import AthleteProfile, Person
from bot.store.tables.week import DecisionRow, DecisionStatus, EventRow, LimitsRow
from bot.week.cases import decision_of
from bot.week.load import day_set
from engine.decision import foresight
from engine.decision.decide import case_from_dict, decide, decision_as_dict
from engine.values.case import ForecastUse
from tests.support.decided import decided
from tests.support.weeks import Team, in_peak_week, onboarded
from tests.support.world import Someone, text_of

FULL_AND_BLURRED = "60.9 9 3.5 2"
LINES = ("61.0 6 3.5", "60.6 5 3.5", "60.3 5 3.5", "60.1 4 3.5", "59.9 4 3.5 4", "60.4 6 3.5 4")


def up_to_two_days_out(engine: Engine, *, foresight: bool = True) -> Team:
    team = in_peak_week(engine, foresight=foresight)
    for days_out, line in zip((7, 6, 5, 4, 3), LINES, strict=False):
        team.morning(days_out)
        team.athlete.writes(line)
    team.morning(2)
    return team


def decisions(team: Team) -> list[DecisionRow]:
    with team.world.session() as session:
        return list(session.exec(select(DecisionRow)))


def test_from_the_load_on_a_target_says_in_one_plain_line_how_the_day_looks(
    own_engine: Engine,
) -> None:
    team = up_to_two_days_out(own_engine)
    said = text_of(team.athlete.writes(LINES[5]))
    line = words.outlook_line(decision_of(decisions(team)[-1]))
    assert line and line in said
    assert "%" not in line and not re.search(r"\d", line), "never a false precision"


def test_why_shows_band_residual_and_rough_odds(own_engine: Engine) -> None:
    team = up_to_two_days_out(own_engine)
    team.athlete.writes(LINES[5])
    said = text_of(team.athlete.writes("/why"))
    assert "Weight expected this morning" in said
    assert "forecast" in said
    assert re.search(r"Chances on event day with \d+ g, as planned: full \w+ \d in 10", said)
    assert re.search(r"[Tt]he rule .*forecast", said), "both are told, whichever was followed"
    assert "%" not in said


def test_before_the_model_is_trusted_why_says_so(own_engine: Engine) -> None:
    team = in_peak_week(own_engine, foresight=True)
    team.morning(7)
    team.athlete.writes(LINES[0])
    said = text_of(team.athlete.writes("/why"))
    assert "No forecast yet, so the rules decide alone: it needs" in said
    assert "in 10" not in said


def test_decisions_with_a_forecast_replay_to_the_same_result(own_engine: Engine) -> None:
    team = up_to_two_days_out(own_engine)
    team.athlete.writes(LINES[5])
    for row in decisions(team):
        assert decision_as_dict(decide(case_from_dict(row.case))) == row.decision


def test_who_is_new_has_a_forecast_that_proposes(own_engine: Engine) -> None:
    assert onboarded(own_engine).profile().forecast == ForecastUse.PROPOSES


def test_the_coach_says_what_the_forecast_may_do_for_an_athlete(own_engine: Engine) -> None:
    team = in_peak_week(own_engine, foresight=True)
    team.coach.writes("/roster")
    team.coach.taps("Mira")
    team.coach.taps("Plan …")
    said = team.coach.taps("Forecast")
    assert "The forecast proposes, you decide" in text_of(said)
    assert "never tested on real peak weeks" in text_of(said)
    assert "Forecast proposes" not in said[-1].buttons, "what holds is no choice"
    assert "the forecast is not asked" in text_of(team.coach.taps("Rules only"))
    assert team.profile().forecast == ForecastUse.RULES_ONLY
    team.coach.presses(f"c:history:{team.athlete_id}")
    assert "set to rules only, without the forecast" in text_of(team.coach.all_said())
    team.morning(7)
    team.athlete.writes(LINES[0])
    assert decisions(team)[0].decision["foresight"] is None
    assert "only shows" in text_of(team.coach.presses(f"c:forecast-use:{team.athlete_id}:shows"))
    assert team.profile().forecast == ForecastUse.SHOWS
    team.coach.presses(f"c:forecast-use:{team.athlete_id}:prophesies")
    assert team.profile().forecast == ForecastUse.SHOWS


def set_forecast(team: Team, use: ForecastUse) -> None:
    with transaction(team.world.engine) as session:
        profile = session.get_one(AthleteProfile, team.athlete_id)
        profile.forecast = use
        session.add(profile)


def test_a_forecast_that_only_shows_changes_nothing_and_keeps_score(own_engine: Engine) -> None:
    team = up_to_two_days_out(own_engine)
    set_forecast(team, ForecastUse.SHOWS)
    said = text_of(team.athlete.writes(LINES[5]))
    shown = decisions(team)[-1]
    assert shown.decision["trace"]["would_g"] is not None
    assert shown.decision["trace"]["asked_g"] == shown.decision["trace"]["rule_g"]
    assert "On track" not in said and "Right now" not in said
    assert "it only shows, so nothing of it is used" in text_of(team.athlete.writes("/why"))
    team.morning(-1)
    debrief = text_of(team.coach.presses(f"c:debrief:{team.athlete_id}"))
    assert "The forecast only showed" in debrief


def waiting_after(team: Team, line: str) -> DecisionRow:
    """The decision on a morning whose larger change waits for the coach."""
    team.athlete.hears()
    team.coach.hears()
    team.athlete.writes(line)
    row = decisions(team)[-1]
    assert row.status == DecisionStatus.WAITING, "the change is not larger than goes out alone"
    return row


def test_a_larger_step_of_the_forecast_waits_with_its_odds_and_a_small_step_goes_out(
    own_engine: Engine,
) -> None:
    team = up_to_two_days_out(own_engine)
    row = waiting_after(team, FULL_AND_BLURRED)
    stands, planned = row.decision["lapse_g"], row.planned_carb_g
    assert row.carb_g is not None and planned is not None
    assert row.carb_g < stands < planned
    assert planned - stands <= row.decision["trace"]["limits"]["apply_without_asking_g"]
    told = text_of(team.athlete.all_said())
    assert f"Eat {stands:.0f} g for now, a small step" in told
    assert f"Carbs {stands:.0f} g" in told
    asked = text_of(team.coach.all_said())
    assert f"Mira eats {stands:.0f} g for now" in asked
    assert re.search(r"Chances on event day with \d+ g, as planned", asked)
    kept = next(label for m in team.coach.all_said() for label in m.buttons if "Keep" in label)
    assert kept == f"Keep the plan, {planned:.0f} g"


def test_where_nobody_answers_the_small_step_stays_and_both_are_told(own_engine: Engine) -> None:
    team = up_to_two_days_out(own_engine)
    row = waiting_after(team, FULL_AND_BLURRED)
    stands = row.decision["lapse_g"]
    team.world.later(hours=6)
    assert decisions(team)[-1].status == DecisionStatus.LAPSED
    assert day_in_force(team, row) == stands
    assert "The small step stays" in text_of(team.athlete.all_said())
    told = text_of(team.coach.all_said())
    assert f"Mira was told to eat {stands:.0f} g, the small step" in told
    assert "The small step stands" in told


def test_keeping_the_plan_takes_the_small_step_back(own_engine: Engine) -> None:
    team = up_to_two_days_out(own_engine)
    row = waiting_after(team, FULL_AND_BLURRED)
    team.coach.taps(f"Keep the plan, {row.planned_carb_g:.0f} g")
    assert day_in_force(team, row) == row.planned_carb_g
    told = text_of(team.athlete.all_said())
    assert f"Carbs {row.planned_carb_g:.0f} g (as planned)" in told
    assert "Your coach keeps the plan" in told


def day_in_force(team: Team, row: DecisionRow) -> float:
    with team.world.session() as session:
        standing = day_set(session, team.athlete_id, row.sets_date)
        assert standing is not None
        return standing.carb_g


@pytest.mark.parametrize(("label", "kept"), [("Flat", "flat"), ("Spilled over", "spilled over")])
def test_the_day_after_the_coach_is_asked_how_it_looked_and_the_next_week_begins_from_that(
    own_engine: Engine, label: str, kept: str
) -> None:
    team = up_to_two_days_out(own_engine)
    team.morning(-1)
    (asked,) = [said for said in team.coach.hears() if "How did Mira look" in said.text]
    assert asked.silent  # it can wait, and after a show twenty of them come at once
    said = text_of(team.coach.taps(label))
    assert kept in said
    with team.world.session() as session:
        assert session.exec(select(EventRow)).one().look == kept


def test_who_coaches_themself_is_asked_how_they_looked_themself(own_engine: Engine) -> None:
    team = up_to_two_days_out(own_engine)
    with transaction(own_engine) as session:
        session.get_one(Person, team.athlete_id).is_coach = True
        session.get_one(AthleteProfile, team.athlete_id).coach_id = team.athlete_id
    team.morning(-1)
    assert "Your show was yesterday. How did you look" in text_of(team.athlete.hears())
    assert "Saved: you were full on the day" in text_of(team.athlete.taps("Full"))


def test_only_the_own_coach_can_say_how_it_looked(own_engine: Engine) -> None:
    team = up_to_two_days_out(own_engine)
    team.morning(-1)
    data = next(m for m in team.coach.hears() if "How did Mira look" in m.text).buttons["Flat"]
    team.athlete.presses(data)
    Someone(team.world, 999, "Stranger").presses(data)
    with team.world.session() as session:
        assert session.exec(select(EventRow)).one().look is None


@pytest.mark.parametrize(
    ("flat", "full", "spilled", "line"),
    [
        (0.05, 0.90, 0.05, "On track: full; spilling over is unlikely."),
        (0.10, 0.65, 0.25, "On track: full; spilling over is possible."),
        (0.60, 0.38, 0.02, "Right now flat is more likely than full; the risk is being flat, "
                           "not spilling over."),
        (0.05, 0.40, 0.55, "Right now spilled over is more likely than full; spilling over is a "
                           "real risk."),
    ],
)  # fmt: skip
def test_odds_are_put_into_words(flat: float, full: float, spilled: float, line: str) -> None:
    odds = {"carb_g": 500, "flat": flat, "full": full, "spilled": spilled, "look": 0.8}
    decision = decided(carb_g=500, foresight={"best": odds, "planned": odds})
    assert words.outlook_line(decision) == line


def odds(carb_g: float, full: float) -> dict[str, float]:
    return {"carb_g": carb_g, "flat": 0.1, "full": full, "spilled": 0.9 - full, "look": 0.8}


def told(rule_g: float, forecast_g: float, asked_g: float, *, disagree: bool = False) -> str:
    """What is said of a morning on which the model was heard."""
    view = {
        "trusted": True, "why_not": "", "residual_kg": -0.42,
        "planned": odds(500, 0.58), "best": odds(500 + forecast_g, 0.72),
    }  # fmt: skip
    trace = {
        "rule_g": rule_g, "forecast_g": forecast_g, "asked_g": asked_g, "disagree": disagree,
        "facts": {"above_band": False, "under_band": True},
    }  # fmt: skip
    decision = decided(
        foresight=view, trace=trace, carb_g=500 + asked_g,
        band={"low_kg": 60, "expected_kg": 61, "high_kg": 62},
    )  # fmt: skip
    return "\n".join(words.why_lines(decision, "kg"))


@pytest.mark.parametrize(
    ("rule_g", "forecast_g", "asked_g", "disagree", "line"),
    [
        (25, 50, 50, False, "rule alone says 25 g more. The forecast sets the size: 50 g more"),
        (25, 25, 25, False, "rule and the forecast agree: 25 g more"),
        (-50, -25, -50, False, "rule says 50 g less, the forecast 25 g less. Here the rule"),
        (25, -25, 0, True, "rule alone says 25 g more, the forecast 25 g less. They disagree, so"),
    ],
)
def test_rule_and_forecast_are_both_told_and_which_was_followed(
    rule_g: float, forecast_g: float, asked_g: float, disagree: bool, line: str
) -> None:
    said = told(rule_g, forecast_g, asked_g, disagree=disagree)
    assert line in said
    assert "0.4 kg under the forecast, outside the expected range" in said
    assert (
        "Chances on event day with 500 g, as planned: full about 6 in 10, flat about 1 in 10"
        in said
    )
    assert f"With {500 + forecast_g} g, the best allowed amount: full about 7 in 10" in said


def test_a_figure_that_is_neither_the_plans_nor_the_best_has_its_chances_told() -> None:
    view = {
        "trusted": True, "why_not": "", "planned": odds(500, 0.3), "best": odds(350, 0.7),
        "proposed": odds(425, 0.55),
    }  # fmt: skip
    decision = decided(carb_g=425, foresight=view)
    said = words.foreseen(decision)
    assert "With 425 g, as proposed: full about" in said
    assert said.index("as planned") < said.index("as proposed") < said.index("best allowed")
    in_force = words.odds_in_force(decision)
    assert in_force is not None and in_force.carb_g == 425


def test_a_model_that_was_surprised_three_mornings_running_is_said_to_stand_aside() -> None:
    view = {"trusted": False, "why_not": "three mornings running outside what it expected"}
    (line,) = words.why_lines(decided(foresight=view), "kg")
    assert "the rules decide alone" in line
    assert "on three mornings in a row the weight was outside the range it expected" in line


def test_the_reasons_with_a_sentence_are_those_that_the_engine_gives() -> None:
    source = inspect.getsource(foresight)
    assert all(f'"{reason}"' in source for reason in words.ASIDE)


def test_a_coach_who_is_to_sign_a_change_sees_the_chances(own_engine: Engine) -> None:
    team = in_peak_week(own_engine, foresight=True)
    with transaction(own_engine) as session:
        row = session.exec(select(LimitsRow)).one()
        row.bounds = {**row.bounds, "apply_without_asking_g": 0.0}
        session.add(row)
    softened = (*LINES[:-1], "61.4 9 3.5 2")
    for days_out, line in zip((7, 6, 5, 4, 3, 2), softened, strict=True):
        team.morning(days_out)
        team.athlete.writes(line)
    waiting = [m.text for m in team.coach.all_said() if "for you to approve" in m.text]
    assert "as planned: full" in waiting[-1]
