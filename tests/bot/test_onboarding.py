"""A new athlete's first questions, as the athlete and the coach see them."""

from __future__ import annotations

from datetime import UTC, date, datetime

import pytest
from sqlalchemy import Engine
from sqlmodel import select

from bot.flows.onboarding import ONBOARDING
from bot.incoming import Kind
from bot.messages import onboarding as words
from bot.service.people import profile_of
from bot.store.people import AthleteStatus, OpenQuestion
from bot.zones import find_places, zones_for_clock
from tests.support.weeks import ONBOARDING_ANSWERS, Team, invited, onboarded
from tests.support.world import text_of

BAD = ("", "   ", "abc", "🤷", "-1", "840 kg", "8.4 kg", "x" * 4096, "∞", "1e9", "61 or 62")


def open_question(team: Team) -> OpenQuestion:
    with team.world.session() as session:
        query = select(OpenQuestion).where(OpenQuestion.person_id == team.athlete_id)
        return session.exec(query).one()


def test_the_cautions_come_before_anything_else(sqlite_engine: Engine) -> None:
    first = text_of(invited(sqlite_engine).athlete.hears())
    for words_of_caution in ("not a doctor", "medical device", "emergency number", "agree"):
        assert words_of_caution in first


def test_the_cautions_stay_readable_after_they_were_agreed_to(sqlite_engine: Engine) -> None:
    team = invited(sqlite_engine)
    said = team.athlete.taps(words.agree_button())
    assert "not a doctor" in said[0].text and not said[0].buttons
    assert said[1].text == words.ask_birth_year()


def test_all_questions_answered_make_an_active_athlete_and_tell_the_coach(
    sqlite_engine: Engine,
) -> None:
    team = invited(sqlite_engine)
    for answer in ONBOARDING_ANSWERS:
        team.athlete.writes(answer)
    profile = team.profile()
    assert profile.status == AthleteStatus.ACTIVE
    assert (profile.zone, profile.height_cm, profile.body_mass_kg) == ("Europe/London", 165, 61.2)
    assert profile.baseline["carb_g"] == 310 and profile.baseline["sodium_mg"] == 2300
    told = text_of(team.coach.hears())
    assert "61.2 kg" in told and "no to all" in told and "born 1996" in told


@pytest.mark.parametrize(
    ("birth_year", "birthday"), [("2012", None), ("2009", "no")], ids=["15", "17, not yet 18"]
)
def test_under_18_gets_a_kind_no_and_nothing_is_kept(
    sqlite_engine: Engine, birth_year: str, birthday: str | None
) -> None:
    team = invited(sqlite_engine)
    team.athlete.writes("yes")
    said = team.athlete.writes(birth_year)
    if birthday is not None:
        said = team.athlete.writes(birthday)
    assert said[-1].text == words.under_age()
    assert team.profile().status == AthleteStatus.DECLINED
    assert team.profile().birth_year is None
    assert open_question(team).answers == {}
    assert "under 18" in text_of(team.coach.hears())


def test_eighteen_already_goes_on(sqlite_engine: Engine) -> None:
    team = invited(sqlite_engine)
    team.athlete.writes("yes")
    team.athlete.writes("2009")
    assert text_of(team.athlete.taps("Yes")) == words.ask_sex()


def test_without_consent_nothing_begins(sqlite_engine: Engine) -> None:
    team = invited(sqlite_engine)
    said = team.athlete.taps(words.disagree_button())
    assert words.no_consent() in text_of(said)
    assert team.profile().status == AthleteStatus.DECLINED
    assert team.profile().consent_at is None


@pytest.mark.parametrize("key", list(words.SCREENING))
def test_any_yes_to_a_health_question_asks_for_a_doctors_word_first(
    sqlite_engine: Engine, key: str
) -> None:
    keys = list(words.SCREENING)
    answers = list(ONBOARDING_ANSWERS)
    answers[3 + keys.index(key)] = "yes"
    team = invited(sqlite_engine)
    for answer in answers:
        team.athlete.writes(answer)
    assert team.profile().status == AthleteStatus.DOCTOR_FIRST
    told = text_of(team.coach.hears())
    assert words.SCREENING_SHORT[key] in told and "doctor" in told


def test_a_man_is_not_asked_whether_he_is_pregnant(sqlite_engine: Engine) -> None:
    team = invited(sqlite_engine)
    asked = [
        team.athlete.writes(answer)[-1].text
        for answer in ("yes", "1990", "male", "no", "no", "no", "no")
    ]
    assert asked[-1] == words.SCREENING["medicines"]


@pytest.mark.parametrize("bad", BAD)
def test_a_bad_answer_to_any_first_question_is_explained_asked_again_and_loses_nothing(
    sqlite_engine: Engine, bad: str
) -> None:
    team = invited(sqlite_engine)
    for answer in ONBOARDING_ANSWERS:
        before = open_question(team)
        step = ONBOARDING.step(before.step)
        assert step is not None
        said = team.athlete.writes(bad)
        after = open_question(team)
        if after.step != before.step:
            pytest.fail(f"{bad!r} was taken for {before.step}")
        assert after.answers == before.answers
        assert len(said) == 1 and step.ask(before.answers) in said[0].text
        assert said[0].text != step.ask(before.answers), "it has to say what was wrong"
        team.athlete.writes(answer)
    assert team.profile().status == AthleteStatus.ACTIVE


def test_a_sticker_instead_of_an_answer_is_met_kindly(sqlite_engine: Engine) -> None:
    team = invited(sqlite_engine)
    said = team.athlete.writes("", kind=Kind.OTHER)
    assert "please type it" in said[0].text
    assert open_question(team).step == "consent"


def test_a_place_that_is_not_known_can_be_told_by_the_clock(sqlite_engine: Engine) -> None:
    team = onboarded(sqlite_engine, ONBOARDING_ANSWERS[:11])
    assert "don't know a place" in text_of(team.athlete.writes("Xyzzyville"))
    # It is 15:00 UTC on the first of May: clocks that show 16:00 are in London's zone, among others.
    said = team.athlete.writes("16:03")
    assert "London (Europe/London)" in said[-1].buttons
    team.athlete.taps("London (Europe/London)")
    assert open_question(team).step == "prompt_time"


def test_a_place_that_was_misread_can_be_given_again(sqlite_engine: Engine) -> None:
    team = onboarded(sqlite_engine, ONBOARDING_ANSWERS[:11])
    team.athlete.writes("Paris, US")
    assert open_question(team).step == "which_place"
    team.athlete.taps(words.somewhere_else_button())
    assert open_question(team).step == "place"
    team.athlete.writes("Paris")
    team.athlete.taps("Paris, FR (Europe/Paris)")
    assert open_question(team).step == "prompt_time"


@pytest.mark.parametrize(
    ("text", "zone"),
    [
        ("Munich", "Europe/Berlin"),
        ("köln", "Europe/Berlin"),
        ("São Paulo", "America/Sao_Paulo"),
        ("Asia/Tokyo", "Asia/Tokyo"),
        ("san francisco, us", "America/Los_Angeles"),
        ("Kathmandu", "Asia/Kathmandu"),
    ],
)
def test_a_city_leads_to_its_zone(text: str, zone: str) -> None:
    """Reference: the zones that GeoNames gives its cities, by their IANA names."""
    assert find_places(text)[0].zone == zone


def test_a_clock_reading_finds_only_zones_that_show_it() -> None:
    now = datetime(2027, 1, 15, 12, 0, tzinfo=UTC)
    found = zones_for_clock(datetime(2027, 1, 15, 17, 45).time(), now)  # noqa: DTZ001 - a wall clock
    assert [place.zone for place in found] == ["Asia/Kathmandu"]  # UTC+5:45, the only one


def test_what_is_not_counted_stays_unknown(sqlite_engine: Engine) -> None:
    team = invited(sqlite_engine)
    for answer in ONBOARDING_ANSWERS[:20]:
        team.athlete.writes(answer)
    team.athlete.taps(words.not_sure_button())
    team.athlete.writes("3.5")
    team.athlete.taps(words.not_sure_button())
    profile = team.profile()
    assert (profile.baseline["fibre_g"], profile.baseline["sodium_mg"]) == (None, None)
    told = text_of(team.coach.hears())
    assert "fibre not counted" in told and "sodium not counted" in told


def test_age_is_reckoned_by_the_day_of_the_question(sqlite_engine: Engine) -> None:
    team = invited(sqlite_engine, datetime(2030, 1, 1, 12, 0, tzinfo=UTC))
    team.athlete.writes("yes")
    assert text_of(team.athlete.writes("2011")) == words.ask_sex()
    assert open_question(team).answers["_today"] == date(2030, 1, 1).isoformat()


def test_a_profile_belongs_to_the_one_who_was_invited(sqlite_engine: Engine) -> None:
    team = onboarded(sqlite_engine)
    with team.world.session() as session:
        assert profile_of(session, 1) is None
