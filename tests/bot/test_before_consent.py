"""What a new athlete writes before they have agreed: answered, and an emergency alone passed on."""

from __future__ import annotations

import pytest
from sqlalchemy import Engine
from sqlmodel import select

from bot.membership.onboarding import flow_health, words
from bot.store.tables.people import OpenQuestion
from bot.store.tables.week import SymptomReport
from engine.planning.health_screen import Part
from tests.support.weeks import Team, invited
from tests.support.world import text_of


def coach_heard(team: Team) -> str:
    return text_of(team.coach.hears())


def kept(team: Team) -> list[str]:
    with team.world.session() as session:
        return [row.symptom for row in session.exec(select(SymptomReport))]


@pytest.mark.parametrize(
    "said", ["i feel dizzy", "I binged yesterday", "took two water pills", "I hate my body"]
)
def test_before_consent_a_complaint_is_answered_and_told_to_nobody(
    own_engine: Engine, said: str
) -> None:
    team = invited(own_engine)
    coach_heard(team)
    answer = text_of(team.athlete.writes(said))
    assert "told nobody" in answer and "emergency number" in answer
    assert not coach_heard(team) and not kept(team)


def test_before_consent_an_emergency_is_passed_on_without_what_was_told_beside_it(
    own_engine: Engine,
) -> None:
    team = invited(own_engine)
    coach_heard(team)
    team.athlete.writes("i feel dizzy")
    assert "emergency number" in text_of(team.athlete.writes("I fainted this morning and I binged"))
    told = coach_heard(team)
    assert "Reported: fainting." in told
    assert "(UTC)" in told and "Mira's time" not in told  # where they are has not been asked yet
    assert kept(team) == ["fainting"]


def test_before_consent_a_doubt_is_asked_about_and_passed_on_only_where_it_is_a_yes(
    own_engine: Engine,
) -> None:
    team = invited(own_engine)
    coach_heard(team)
    assert "To be sure" in text_of(team.athlete.writes("my legs feel heavy today"))
    assert not coach_heard(team)
    assert "Good, then that is settled." in text_of(team.athlete.writes("no"))
    assert not coach_heard(team) and not kept(team)
    team.athlete.writes("my legs feel heavy today")
    team.athlete.writes("yes")
    assert "weak or heavy limbs" in coach_heard(team)


def test_the_words_to_agree_to_say_that_an_emergency_is_passed_on_before() -> None:
    for self_coached in (True, False):
        said = words.cautions("Ravi", self_coached=self_coached)
        assert "Before you agree" in said and "but an emergency" in said


@pytest.mark.parametrize(
    "said", ["no to all of them", "none of those apply", "nope, none", "nothing of that, thanks"]
)
def test_a_none_in_whatever_words_is_the_answer_to_a_list(own_engine: Engine, said: str) -> None:
    team = at_the_questions_on_eating(own_engine)
    heard = text_of(team.athlete.writes(said))
    assert flow_health.ask(Part.ENERGY, (), self_coached=False).split(".")[0] in heard


def test_what_is_typed_at_the_questions_on_eating_is_passed_on_to_nobody(
    own_engine: Engine,
) -> None:
    team = at_the_questions_on_eating(own_engine)
    coach_heard(team)
    answer = text_of(team.athlete.writes("the fifth one fits me"))
    assert "passed that on to nobody" in answer
    assert not coach_heard(team)
    team.athlete.writes("when do we meet?")
    assert "when do we meet?" in coach_heard(team)


def at_the_questions_on_eating(engine: Engine) -> Team:
    team = invited(engine)
    for answer in ("I agree", "1994", "female", "none"):
        team.athlete.writes(answer)
    with team.world.session() as session:
        steps = [one.step for one in session.exec(select(OpenQuestion)) if one.closed_at is None]
    assert Part.EATING.value in steps
    return team


@pytest.mark.parametrize(
    ("first", "then", "unit"),
    [("133 kg", "133 lb", "lb"), ("133 kg", "yes", "lb"), ("70 lb", "70 kg", "kg")],
)
def test_a_weight_put_right_is_told_in_the_unit_it_was_put_right_in(
    own_engine: Engine, first: str, then: str, unit: str
) -> None:
    team = at_the_questions_on_eating(own_engine)
    for answer in ("none", "none", "Berlin", "half six", "5 ft 6", first, then, "310 150 60 3.5 l"):
        team.athlete.writes(answer)
    profile = team.profile()
    assert profile.weight_unit == unit and 55 < (profile.body_mass_kg or 0) < 75
    assert f"{profile.prompt_time:%H:%M}" == "06:30"
