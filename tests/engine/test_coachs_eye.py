"""What the coach sees: a second observer beside the athlete's own answers.

That a coach's word goes before an athlete's "flat", and that nothing is added to what a practised eye
calls softening or spilled over, is common practice; the size of a coach's error is assumed.
"""

from __future__ import annotations

import itertools
import json
from dataclasses import replace
from datetime import UTC, date, datetime, timedelta
from pathlib import Path

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from engine.cli.casefile import parse, play, run
from engine.cli.tables import CaseFileError
from engine.decision.decide import case_as_dict, case_from_dict, decide, decision_as_dict
from engine.decision.facts import Facts
from engine.decision.reason import reason
from engine.decision.rules import first_match
from engine.decision.rules.rule import Told
from engine.evidence.body import observing as e
from engine.evidence.body import tracking as known
from engine.model.eye import edges, learn_seen, look_chances, seen_grade
from engine.model.particles import Covariates, Morning
from engine.model.structures import Row
from engine.model.tracker import first_belief, generator, levels, update_belief
from engine.values.athlete import Sex
from engine.values.case import Case
from engine.values.checkin import CoachLook, History, Observed, most_careful
from tests.engine.test_foresight import DAY, case, foreseen

FILE = Path(__file__).parents[1] / "cases" / "coachs-eye.toml"
FRAME = Covariates(sex=Sex.FEMALE, body_mass_kg=60, body_fat_percent=14)


def seen(look: CoachLook, sharpness: int | None = None, *, out: int = 2, by: int = 1) -> Observed:
    return Observed(
        date=DAY - timedelta(days=out), look=look, sharpness=sharpness, by=by,
        at=datetime(2027, 5, 7, 7, 15, tzinfo=UTC),
    )  # fmt: skip


def looked_at(one: Case, *looks: Observed) -> Case:
    return replace(one, history=replace(one.history, observed=looks))


def facts(**changed: object) -> Facts:
    told: dict[str, object] = {
        "days_out": 2, "loading": True, "load_eaten": True, "depleting": False, "planned_carb_g": 460.0,
        "fullness": 6, "expected_fullness": 6, "sharpness": 4, "sharpness_before": 4,
        "weight_kg": 60.0, "band_low_kg": 59.0, "band_high_kg": 61.0, "water_l": 3.2,
        "water_target_l": 3.2, "gut": "fine", "severe_gut": "", "dizzy": False, "sleepless": False,
    }  # fmt: skip
    return Facts(**{**told, **changed})  # type: ignore[arg-type]


mornings = st.builds(
    facts,
    load_eaten=st.booleans(), fullness=st.integers(1, 10), expected_fullness=st.integers(4, 9),
    sharpness=st.integers(1, 5), sharpness_before=st.none() | st.integers(1, 5),
    weight_kg=st.none() | st.floats(57, 63), water_l=st.none() | st.floats(0, 5),
    gut=st.sampled_from(["", "fine", "bad"]), severe_gut=st.sampled_from(["", "vomiting"]),
)  # fmt: skip


# --- the rules ----------------------------------------------------------------------------------


def test_a_file_with_looks_decides_by_them_and_says_what_both_said() -> None:
    decisions = run(parse(FILE.read_text(encoding="utf-8")))
    assert [(d.days_out, d.rule, d.change_g) for d in decisions] == [
        (4, "steady", 0), (3, "full-and-sharp", 0), (2, "coach-sees-full", 0),
        (1, "coach-sees-spill", -75),
    ]  # fmt: skip
    assert "You feel flat (4, I expected 6)" in reason(decisions[2])
    assert "your coach sees: full, sharpness 4" in reason(decisions[2])
    assert "Your coach sees: spilled over; you said fullness 3" in reason(decisions[3])
    assert decisions[3].expected_fullness == 7


def test_without_the_coach_the_same_mornings_were_raised() -> None:
    raised = []
    for one, _ in play(parse(FILE.read_text(encoding="utf-8"))):
        raised.append(decide(replace(one, history=replace(one.history, observed=()))).change_g)
    assert raised == [0, 0, 25, 50]


@given(mornings, st.sampled_from([CoachLook.SOFTENING, CoachLook.SPILLED]))
def test_what_a_coach_sees_past_full_is_never_added_to_and_never_cut_less(
    morning: Facts, look: CoachLook
) -> None:
    with_coach = replace(morning, coach_saw=look.value)
    asked, alone = _steps(with_coach), _steps(morning)
    assert asked <= 0
    assert asked <= alone or not morning.load_eaten
    assert "{" not in first_match(with_coach).tells(Told(with_coach.as_dict(), -25))


@given(mornings, st.sampled_from([CoachLook.ON_COURSE, CoachLook.FULL]))
def test_a_coach_who_sees_nothing_flat_never_leads_to_a_raise(
    morning: Facts, look: CoachLook
) -> None:
    assert _steps(replace(morning, coach_saw=look.value)) <= 0


@given(mornings)
def test_a_coach_who_sees_flat_adds_at_most_a_step_to_what_the_athlete_would_have_got(
    morning: Facts,
) -> None:
    with_coach = replace(morning, coach_saw="flat")
    if morning.gut_bad or morning.blurring or morning.above_band or morning.underdrunk:
        assert _steps(with_coach) <= 0
    assert _steps(with_coach) <= max(_steps(morning), 1)


@given(mornings, st.sampled_from(list(CoachLook)))
def test_a_look_more_overfilled_never_earns_more_carbs(morning: Facts, look: CoachLook) -> None:
    if not morning.load_eaten:
        return
    order = [_steps(replace(morning, coach_saw=one.value)) for one in CoachLook if one >= look]
    assert all(a >= b for a, b in itertools.pairwise(order)) or morning.spilling


@given(mornings, st.sampled_from(list(CoachLook)))
def test_blurred_lines_in_the_coachs_eye_are_nothing_to_add_to(
    morning: Facts, look: CoachLook
) -> None:
    assert _steps(replace(morning, coach_saw=look.value, coach_sharpness=2)) <= 0


def _steps(morning: Facts) -> int:
    return first_match(morning).steps(morning)


def test_of_two_coaches_the_more_careful_word_counts() -> None:
    both = (seen(CoachLook.FLAT, 4, by=1), seen(CoachLook.SOFTENING, by=7))
    word = most_careful(both)
    assert word is not None
    assert (word.look, word.sharpness, word.by) == (CoachLook.SOFTENING, 4, 7)
    assert most_careful(()) is None
    decision = decide(looked_at(case(2, fullness=3), *both))
    assert decision.trace.facts["coach_saw"] == "softening"


def test_what_was_seen_on_another_morning_moves_no_rule() -> None:
    yesterday = looked_at(case(2, fullness=6), seen(CoachLook.SPILLED, out=3))
    assert decide(yesterday).trace.facts["coach_saw"] == ""


def test_a_coach_looks_once_a_morning_and_a_sharpness_is_of_five() -> None:
    with pytest.raises(ValueError, match="one a date and coach"):
        History(observed=(seen(CoachLook.FLAT), seen(CoachLook.FULL)))
    with pytest.raises(ValueError, match="sharpness 6"):
        seen(CoachLook.FLAT, 6)
    wrong = FILE.read_text(encoding="utf-8").replace('"on course"', '"shiny"')
    with pytest.raises(CaseFileError, match="coach_saw"):
        parse(wrong)


# --- the record -----------------------------------------------------------------------------------


def test_a_case_with_looks_survives_its_record_and_decides_the_same_to_the_bit() -> None:
    one = looked_at(case(2), seen(CoachLook.FULL, 4, out=3), seen(CoachLook.SOFTENING, out=2, by=7))
    record = json.loads(json.dumps(case_as_dict(one)))
    assert case_from_dict(record) == one
    assert decision_as_dict(decide(case_from_dict(record))) == decision_as_dict(decide(one))


def test_a_record_of_before_coaches_looked_is_read_and_decides_as_it_did() -> None:
    record = case_as_dict(case(2))
    del record["history"]["observed"]
    assert decision_as_dict(decide(case_from_dict(record))) == decision_as_dict(decide(case(2)))


# --- the model ------------------------------------------------------------------------------------


def test_a_coach_who_calls_a_morning_fuller_moves_the_odds_from_flat_towards_spilled() -> None:
    odds = {look: foreseen(decide(looked_at(case(1), seen(look, out=1)))) for look in CoachLook}
    flat = [odds[look][0] for look in CoachLook]
    spilled = [odds[look][2] for look in CoachLook]
    assert all(a > b for a, b in itertools.pairwise(flat[:3]))
    assert all(a < b for a, b in itertools.pairwise(spilled))
    assert spilled[-1] > spilled[0] + 0.3


def test_the_looks_of_a_morning_share_out_the_whole_chance() -> None:
    grades = np.linspace(-2, 13, 61).astype(np.float32)
    for shown, expected in itertools.product((0.0, 0.6, 1.4), (4, 6, 9)):
        looks = look_chances(grades, np.full(61, shown, dtype=np.float32), expected)
        assert np.allclose(looks.sum(axis=0), 1, atol=1e-5)
        assert np.all(looks > -1e-6)


def test_a_look_as_it_should_be_is_called_on_course() -> None:
    for expected in (4, 5, 6, 7, 8, 9):
        low, high = edges(expected)
        assert low < expected and high >= low + 1
        if expected <= 7:
            middle = np.array([float(expected)], dtype=np.float32)
            looks = look_chances(middle, np.zeros(1, dtype=np.float32), expected)
            assert CoachLook.ON_COURSE.order == int(looks[:, 0].argmax())


def test_a_coach_teaches_more_of_the_store_than_the_same_word_of_the_athlete() -> None:
    """Steadier: the spread of what is believed of the store shrinks by more."""
    day = date(2027, 5, 6)
    begin = first_belief(FRAME, generator("Mira", day), particles=4000)
    expected = 5
    flat_grade = int(np.floor(edges(expected)[0] - 1))
    athlete = update_belief(begin, Morning(fullness=flat_grade), generator("Mira/a", day))
    word = Observed(date=day, look=CoachLook.FLAT)
    coach = learn_seen(begin, word, expected, generator("Mira/c", day))
    assert levels(coach).mean() < levels(begin).mean()
    assert levels(athlete).mean() < levels(begin).mean()
    assert float(e.SEEN_NOISE) < float(known.FULLNESS_NOISE)
    assert float(e.SEEN_SHARPNESS_NOISE) < float(known.SHARPNESS_NOISE)


def test_a_coach_who_always_calls_it_emptier_is_believed_to_rate_low() -> None:
    day = date(2027, 5, 3)
    rng = generator("Mira", day)
    belief = first_belief(FRAME, rng, particles=3000)
    on_average = float(seen_grade(belief).mean())
    for number in range(6):
        word = Observed(date=day + timedelta(days=number), look=CoachLook.FLAT, by=3)
        belief = learn_seen(belief, word, on_average, rng)
        # The athlete says the ordinary thing each time.
        belief = update_belief(belief, Morning(fullness=round(on_average)), rng)
    ((coach, off),) = belief.eyes
    assert coach == 3
    assert off.mean() < -0.3


def test_mornings_on_which_nobody_looked_are_believed_as_before() -> None:
    day = date(2027, 5, 3)
    belief = first_belief(FRAME, generator("Mira", day), particles=200)
    assert belief.eyes == ()
    again = update_belief(belief, Morning(fullness=5), generator("Mira/1", day))
    assert again.eyes == ()
    spill = learn_seen(
        belief, Observed(date=day, look=CoachLook.SPILLED, sharpness=2), 6, generator("x", day)
    )
    assert spill.state[Row.SHOWN].mean() >= belief.state[Row.SHOWN].mean()
