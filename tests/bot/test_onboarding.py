"""A new athlete's first questions, as the athlete and the coach see them."""

from __future__ import annotations

import gzip
from datetime import UTC, date, datetime
from importlib.resources import files

import pytest
from sqlalchemy import Engine
from sqlmodel import select

from bot.core.turn import Kind
from bot.core.zones import find_places, zones_for_clock
from bot.membership.onboarding import flow_health, words
from bot.membership.onboarding.flow import ONBOARDING
from bot.people.people import profile_of
from bot.store.tables.people import AthleteStatus, OpenQuestion
from bot.words.common import no
from engine.planning.health_screen import Leads, Part, Sign
from engine.values.athlete import Sex
from tests.support import cities
from tests.support.weeks import LATER_ANSWERS, ONBOARDING_ANSWERS, Team, invited, onboarded
from tests.support.world import text_of

BAD = ("", "   ", "abc", "🤷", "-1", "840 kg", "8.4 kg", "x" * 4096, "∞", "1e9", "61 or 62")


def open_question(team: Team) -> OpenQuestion:
    with team.world.session() as session:
        query = select(OpenQuestion).where(OpenQuestion.person_id == team.athlete_id)
        return session.exec(query).one()


def test_the_cautions_come_before_anything_else(own_engine: Engine) -> None:
    first = text_of(invited(own_engine).athlete.hears())
    for words_of_caution in ("not a doctor", "medical device", "emergency number", "agree"):
        assert words_of_caution in first


def test_the_cautions_stay_readable_after_they_were_agreed_to(own_engine: Engine) -> None:
    team = invited(own_engine)
    said = team.athlete.taps(words.agree_button())
    assert "not a doctor" in said[0].text and not said[0].buttons
    assert said[1].text == words.ask_birth_year()


def test_all_questions_answered_make_an_active_athlete_and_tell_the_coach(
    own_engine: Engine,
) -> None:
    team = invited(own_engine)
    for answer in ONBOARDING_ANSWERS:
        team.athlete.writes(answer)
    profile = team.profile()
    assert profile.status == AthleteStatus.ACTIVE
    assert (profile.zone, profile.height_cm, profile.body_mass_kg) == ("Europe/London", 165, 61.2)
    assert profile.baseline == {"carb_g": 310, "protein_g": 140, "fat_g": 55, "water_l": 3.5}
    told = text_of(team.coach.hears())
    assert "61.2 kg" in told and "nothing to act on" in told and "born 1996" in told


@pytest.mark.parametrize(
    ("birth_year", "birthday"), [("2012", None), ("2009", "no")], ids=["15", "17, not yet 18"]
)
def test_under_18_gets_a_kind_no_and_nothing_is_kept(
    own_engine: Engine, birth_year: str, birthday: str | None
) -> None:
    team = invited(own_engine)
    team.athlete.writes("yes")
    said = team.athlete.writes(birth_year)
    if birthday is not None:
        said = team.athlete.writes(birthday)
    assert said[-1].text == words.under_age(self_coached=False)
    assert team.profile().status == AthleteStatus.DECLINED
    assert team.profile().birth_year is None
    assert open_question(team).answers == {}
    assert "under 18" in text_of(team.coach.hears())


def test_eighteen_already_goes_on(own_engine: Engine) -> None:
    team = invited(own_engine)
    team.athlete.writes("yes")
    team.athlete.writes("2009")
    assert text_of(team.athlete.taps("Yes")) == words.ask_sex()


def test_without_consent_nothing_begins(own_engine: Engine) -> None:
    team = invited(own_engine)
    said = team.athlete.taps(no())
    assert words.no_consent(self_coached=False) in text_of(said)
    assert team.profile().status == AthleteStatus.DECLINED
    assert team.profile().consent_at is None


@pytest.mark.parametrize("sign", [s for s in Sign if s.part is not Part.EATING], ids=str)
def test_a_health_answer_asks_for_clearance_or_tells_the_coach_to_take_care(
    own_engine: Engine, sign: Sign
) -> None:
    answers = list(ONBOARDING_ANSWERS)
    answers[2] = (sign.only or Sex.FEMALE).value
    answers[3 + list(Part).index(sign.part)] = flow_health.sign_button(sign)
    team = invited(own_engine)
    for answer in answers:
        team.athlete.writes(answer)
    first = sign.leads is Leads.CLEARANCE
    assert team.profile().status == (AthleteStatus.DOCTOR_FIRST if first else AthleteStatus.ACTIVE)
    told = text_of(team.coach.hears())
    if first:
        what = flow_health.MEANT.get(sign, flow_health.SIGNS[sign].lower())
        assert f"Doctor's clearance first: {what}" in told
    else:
        assert f"Caution: {flow_health.CARE[sign]}" in told


def test_lists_are_ticked_and_a_slip_is_unticked(own_engine: Engine) -> None:
    team = onboarded(own_engine, ONBOARDING_ANSWERS[:3])
    first = team.athlete.all_said()[-1]
    assert "None of these" in first.buttons and "That's all" not in first.buttons
    team.athlete.taps("Gallstones")
    team.athlete.taps("Kidneys")
    shown = team.athlete.all_said()[-1]
    assert {"✓ Gallstones", "✓ Kidneys", "That's all"} <= set(shown.buttons)
    team.athlete.taps("✓ Kidneys")
    assert "Five short questions" in text_of(team.athlete.taps("That's all"))
    for answer in ONBOARDING_ANSWERS[4:]:
        team.athlete.writes(answer)
    assert team.profile().screening == {"told": ["gallstones"]}
    assert team.profile().status == AthleteStatus.ACTIVE


@pytest.mark.parametrize("typed", ["2 and 5", "2,5", "2 5"])
def test_two_yes_to_the_questions_on_eating_come_first_and_nobody_sees_which(
    own_engine: Engine, typed: str
) -> None:
    team = invited(own_engine)
    for answer in (*ONBOARDING_ANSWERS[:4], typed, *ONBOARDING_ANSWERS[5:]):
        said = team.athlete.writes(answer)
    assert team.profile().status == AthleteStatus.DOCTOR_FIRST
    kind = said[-1].text
    assert "you are not alone with it" in kind and "Thank you for answering openly" in kind
    assert not any(character.isdigit() for character in kind)
    told = text_of(team.coach.hears())
    assert "short questions on eating" in told and "SCOFF" in told and "BMJ 319:1467" in told
    for sign in (s for s in Sign if s.part is Part.EATING):
        assert flow_health.SIGNS[sign] not in told and sign.value not in told


def test_one_yes_to_them_says_nothing_to_anybody(own_engine: Engine) -> None:
    team = invited(own_engine)
    for answer in (*ONBOARDING_ANSWERS[:4], "5", *ONBOARDING_ANSWERS[5:]):
        team.athlete.writes(answer)
    assert team.profile().status == AthleteStatus.ACTIVE
    assert "SCOFF" not in text_of(team.coach.hears())


def test_a_man_is_asked_what_concerns_men(own_engine: Engine) -> None:
    team = invited(own_engine)
    lists = [
        " ".join((said := team.athlete.writes(answer)[-1]).buttons) + said.text
        for answer in ("yes", "1990", "male", "none of these", "none of these")
    ]
    assert "Pregnant" not in lists[2] and "regnan" not in lists[2]
    assert "Sex drive or erections gone" in lists[4] and "eriod" not in lists[4]


def measured(engine: Engine, *answers: str) -> Team:
    """Everything before height is answered; then these."""
    return onboarded(engine, (*ONBOARDING_ANSWERS[:8], *answers))


def test_a_number_meant_in_kilograms_is_asked_about_where_pounds_were_chosen(
    own_engine: Engine,
) -> None:
    team = measured(own_engine, "170", "70 lb")
    asked = team.athlete.all_said()[-1]
    assert "31.8 kg" in asked.text and "Did you mean 70.0 kg?" in asked.text
    team.athlete.taps("70.0 kg")
    for answer in ONBOARDING_ANSWERS[10:]:
        team.athlete.writes(answer)
    assert team.profile().body_mass_kg == pytest.approx(70, abs=0.01)


def test_a_number_meant_in_pounds_is_asked_about_where_kilograms_were_chosen(
    own_engine: Engine,
) -> None:
    team = measured(own_engine, "170", "150")
    assert "Did you mean 150.0 lb (68.0 kg)?" in team.athlete.all_said()[-1].text
    team.athlete.writes("68 kg")
    for answer in ONBOARDING_ANSWERS[10:]:
        team.athlete.writes(answer)
    assert team.profile().body_mass_kg == 68


def test_a_height_that_was_wrong_can_be_given_again(own_engine: Engine) -> None:
    team = measured(own_engine, "125", "70")
    assert "125 cm can hardly be right" in team.athlete.all_said()[-1].text
    team.athlete.taps("Another height")
    team.athlete.writes("175")
    for answer in ONBOARDING_ANSWERS[10:]:
        team.athlete.writes(answer)
    assert (team.profile().height_cm, team.profile().body_mass_kg) == (175, 70)


@pytest.mark.parametrize("bad", ["abc", "²", "", "33"])
def test_an_odd_answer_to_that_doubt_is_asked_again(own_engine: Engine, bad: str) -> None:
    team = measured(own_engine, "170", "32")
    team.athlete.writes(bad)
    assert open_question(team).step == "mass_check"


def test_no_scale_is_met_with_what_will_do_instead(own_engine: Engine) -> None:
    team = measured(own_engine, "170")
    assert "your weight of the last weeks" in text_of(team.athlete.writes("no scale"))
    assert open_question(team).step == "body_mass_kg"


def test_a_body_fat_unlikely_for_the_sex_is_asked_about_and_may_be_left_out(
    own_engine: Engine,
) -> None:
    team = onboarded(own_engine, later=("7",))
    assert "7 % is unusual for a woman" in team.athlete.all_said()[-1].text
    team.athlete.taps("Leave it out")
    for answer in LATER_ANSWERS[1:]:
        team.athlete.writes(answer)
    assert team.profile().body_fat_percent is None
    assert team.profile().baseline["sodium_mg"] == 2300


def test_at_most_twelve_answers_before_the_first_useful_thing(own_engine: Engine) -> None:
    team = invited(own_engine)
    actions = 0
    for kind, answer in (
        ("tap", "I understand and agree"), ("type", "1996"), ("tap", "Female"),
        *[("tap", "None of these")] * 3, ("type", "Galway"), ("tap", "6:30"), ("type", "165 cm"),
        ("type", "61.2 kg"), ("type", "310 140 55 and 3.5 L"),
    ):  # fmt: skip
        said = team.athlete.taps(answer) if kind == "tap" else team.athlete.writes(answer)
        actions += 1
    assert said[-1].text.startswith("All set. I'll ask at 06:30")
    print(f"\nfrom the invitation to all set: {actions} answers")  # noqa: T201
    assert actions == 11
    profile = team.profile()
    assert (profile.zone, profile.weight_unit, profile.volume_unit) == ("Europe/Dublin", "kg", "l")
    assert profile.baseline["water_l"] == 3.5


def test_health_is_asked_before_anything_can_be_decided(own_engine: Engine) -> None:
    """SCOFF, conditions, signs of too little energy, and the measures that the floor goes by."""
    keys = [step.key for step in ONBOARDING.steps]
    assert keys.index(Part.EATING) < keys.index("carb_g")
    assert {*Part, "height_cm", "body_mass_kg"} <= set(keys)
    team = onboarded(own_engine, ONBOARDING_ANSWERS[:9])
    assert team.profile().status == AthleteStatus.ONBOARDING


def test_the_rest_is_asked_when_an_event_is_set_and_is_gathered(own_engine: Engine) -> None:
    team = onboarded(own_engine, later=())
    team.athlete.taps("Skip")  # body fat
    team.coach.presses(f"c:event:{team.athlete_id}")
    team.coach.taps("A show")
    team.coach.writes("30 May")
    team.coach.taps("Same time zone")
    asked = next(said for said in team.athlete.hears() if "Three short questions" in said.text)
    assert "make the plan for your show better: body fat, fibre, salt" in asked.text
    team.athlete.taps(words.later_button(), asked)
    for answer in LATER_ANSWERS:
        said = text_of(team.athlete.writes(answer))
    assert "used from the next plan on" in said
    told = text_of(team.coach.hears())
    assert "Mira has answered the rest of the first questions" in told
    assert "fibre 25 g" in told and "sodium 2,300 mg" in told
    team.athlete.taps(words.later_button(), asked)
    assert "answered these already" in team.athlete.answers_to_taps()[-1]


@pytest.mark.parametrize(
    ("weight", "day", "stored", "units"),
    [
        ("61.2", "310 140 55 3.5", (61.2, 3.5), ("kg", "l")),
        ("134.9 lb", "310, 140, 55, 118", (61.19, 3.49), ("lb", "us fl oz")),
        ("9 st 8.9 lb", "310 140 55 and 123 fl oz", (61.19, 3.49), ("st", "imp fl oz")),
        ("61,2 kg", "310g 140g 55g 3500 ml", (61.2, 3.5), ("kg", "ml")),
    ],
)  # 1 lb is 0.45359237 kg; a US fluid ounce 29.5735 ml, an imperial one 28.4131 ml
def test_units_are_those_that_the_answers_are_written_in(
    own_engine: Engine, weight: str, day: str, stored: tuple[float, float], units: tuple[str, str]
) -> None:
    team = onboarded(own_engine, (*ONBOARDING_ANSWERS[:9], weight, day))
    profile = team.profile()
    assert profile.status == AthleteStatus.ACTIVE
    assert (profile.body_mass_kg, profile.baseline["water_l"]) == pytest.approx(stored, abs=0.01)
    assert (profile.weight_unit, profile.volume_unit) == units


def test_in_the_us_a_bare_weight_is_pounds_and_asked_about_where_it_could_be_either(
    own_engine: Engine,
) -> None:
    team = onboarded(
        own_engine, (*ONBOARDING_ANSWERS[:6], "America/New_York", "06:30", "165", "110")
    )
    assert open_question(team).step == "body_mass_kg"  # 110 lb are 49.9 kg; 110 kg are heavy
    team.athlete.writes("165")  # 165 kg at 165 cm nobody weighs
    assert open_question(team).answers["weight_unit"] == "lb"


def test_what_is_eaten_may_be_told_one_by_one_too(own_engine: Engine) -> None:
    team = onboarded(own_engine, (*ONBOARDING_ANSWERS[:10], "310", "140 g", "55", "3.5"))
    assert team.profile().status == AthleteStatus.ACTIVE
    assert team.profile().baseline["fat_g"] == 55


def at_weight(engine: Engine, kg: str) -> Team:
    return onboarded(engine, (*ONBOARDING_ANSWERS[:9], kg, *ONBOARDING_ANSWERS[10:]))


def test_somebody_underweight_needs_clearance_first(own_engine: Engine) -> None:
    team = at_weight(own_engine, "49")  # 165 cm: a body mass index of 18.0
    assert team.profile().status == AthleteStatus.DOCTOR_FIRST
    team.coach.presses("c:doctor-yes:2")
    assert team.profile().status == AthleteStatus.ACTIVE


def test_under_the_floor_no_clearance_starts_a_peak_week_and_a_slip_can_be_put_right(
    own_engine: Engine,
) -> None:
    team = at_weight(own_engine, "45")  # 165 cm: a body mass index of 16.5
    assert "I run no peak week" in text_of(team.athlete.all_said())
    said = text_of(team.coach.presses("c:doctor-yes:2"))
    assert "with or without a clearance" in said
    assert team.profile().status == AthleteStatus.DOCTOR_FIRST
    team.coach.taps("Ask Mira again")
    for answer in ("165", "54", "skip"):
        team.athlete.writes(answer)
    assert team.profile().status == AthleteStatus.ACTIVE
    assert "answered height and weight again" in text_of(team.coach.hears())


def test_a_city_typed_under_the_buttons_is_looked_up_like_the_first(own_engine: Engine) -> None:
    team = onboarded(own_engine, ONBOARDING_ANSWERS[:6])
    team.athlete.writes("Paris, US")
    team.athlete.writes("Leeds")
    assert open_question(team).step in ("which_of_them", "prompt_time")
    if open_question(team).step == "which_of_them":
        team.athlete.taps("Leeds, GB (Europe/London)")
    for answer in ONBOARDING_ANSWERS[7:]:
        team.athlete.writes(answer)
    assert team.profile().zone == "Europe/London"


@pytest.mark.parametrize("odd", ["²", "½", "①", "99", "\N{ZERO WIDTH SPACE}", "-1", "📍"])
def test_an_odd_character_where_a_place_is_asked_never_raises(own_engine: Engine, odd: str) -> None:
    team = onboarded(own_engine, (*ONBOARDING_ANSWERS[:6], "Paris"))
    before = open_question(team).step
    assert text_of(team.athlete.writes(odd))
    assert open_question(team).step == before == "which_place"


def test_the_example_of_a_check_in_is_in_the_readers_units(own_engine: Engine) -> None:
    answers = list(ONBOARDING_ANSWERS)
    answers[9], answers[10] = "135 lb", "310 140 55 118 fl oz"
    team = invited(own_engine)
    for answer in answers:
        said = team.athlete.writes(answer)
    assert "\n135.0 7 118\n" in said[-1].text


def test_every_sign_has_its_words() -> None:
    assert set(flow_health.SIGNS) == set(Sign)
    assert set(flow_health.CARE) == {s for s in Sign if s.leads is Leads.CAUTION}
    assert set(flow_health.MEANT) <= set(Sign)


def test_a_bad_answer_to_any_first_question_is_explained_asked_again_and_loses_nothing(
    own_engine: Engine,
) -> None:
    team = invited(own_engine)
    for answer in ONBOARDING_ANSWERS:
        before = open_question(team)
        step = ONBOARDING.step(before.step)
        assert step is not None
        for bad in BAD:
            said = team.athlete.writes(bad)
            after = open_question(team)
            assert after.step == before.step, f"{bad!r} was taken for it"
            assert after.answers == before.answers, bad
            assert (
                len(said) == 1 and step.asked(before.answers | {"_again": True}) in said[0].text
            ), bad
            assert said[0].text != step.asked(before.answers | {"_again": True}), (
                f"what was wrong with {bad!r}?"
            )
        team.athlete.writes(answer)
    assert team.profile().status == AthleteStatus.ACTIVE


def test_a_sticker_instead_of_an_answer_is_met_kindly(own_engine: Engine) -> None:
    team = invited(own_engine)
    said = team.athlete.writes("", kind=Kind.OTHER)
    assert "please type it" in said[0].text
    assert open_question(team).step == "consent"


def test_a_place_that_is_not_known_can_be_told_by_the_clock(own_engine: Engine) -> None:
    team = onboarded(own_engine, ONBOARDING_ANSWERS[:6])
    assert "don't know a place" in text_of(team.athlete.writes("Xyzzyville"))
    # It is 15:00 UTC on the first of May: clocks that show 16:00 are in London's zone, among others.
    said = team.athlete.writes("16:03")
    assert "London (Europe/London)" in said[-1].buttons
    team.athlete.taps("London (Europe/London)")
    assert open_question(team).step == "prompt_time"


def test_a_place_that_was_misread_can_be_given_again(own_engine: Engine) -> None:
    team = onboarded(own_engine, ONBOARDING_ANSWERS[:6])
    said = team.athlete.writes("Galway")
    assert "Galway, IE (Europe/Dublin)." in said[-1].text  # the only one, so it is taken
    team.athlete.taps(words.other_place_button())
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


@pytest.mark.soak
def test_the_cities_that_are_delivered_are_those_of_geonames() -> None:
    delivered = gzip.decompress((files("bot.core") / "cities.tsv.gz").read_bytes()).decode()
    assert delivered.splitlines() == cities.lines().splitlines()


def test_a_clock_reading_finds_only_zones_that_show_it() -> None:
    now = datetime(2027, 1, 15, 12, 0, tzinfo=UTC)
    found = zones_for_clock(datetime(2027, 1, 15, 17, 45).time(), now)  # noqa: DTZ001 - a wall clock
    assert [place.zone for place in found] == ["Asia/Kathmandu"]  # UTC+5:45, the only one


def test_what_is_not_counted_stays_unknown(own_engine: Engine) -> None:
    team = onboarded(own_engine, later=("14",))
    team.athlete.taps(words.not_sure_button())
    team.athlete.taps(words.not_sure_button())
    profile = team.profile()
    assert (profile.baseline["fibre_g"], profile.baseline["sodium_mg"]) == (None, None)
    told = text_of(team.coach.hears())
    assert "fibre not counted" in told and "sodium not counted" in told


def test_age_is_reckoned_by_the_day_of_the_question(own_engine: Engine) -> None:
    team = invited(own_engine, datetime(2030, 1, 1, 12, 0, tzinfo=UTC))
    team.athlete.writes("yes")
    assert text_of(team.athlete.writes("2011")) == words.ask_sex()
    assert open_question(team).answers["_today"] == date(2030, 1, 1).isoformat()


def test_a_profile_belongs_to_the_one_who_was_invited(own_engine: Engine) -> None:
    team = onboarded(own_engine)
    with team.world.session() as session:
        assert profile_of(session, 1) is None


def halfway_at_an_upgrade(team: Team) -> None:
    """Asked about diabetes, in a question of its own that the bot no longer has."""
    for answer in ("yes", "1996", "female"):
        team.athlete.writes(answer)
    with team.world.session() as session:
        row = session.exec(select(OpenQuestion)).one()
        row.step, row.answers = "diabetes", row.answers | {"kidney": False}
        session.add(row)
        session.commit()


@pytest.mark.parametrize("answer", ["no", "No.", "yes", "🤷", "", "61.2"])
def test_a_question_from_before_an_upgrade_is_put_again_as_it_is_asked_now(
    own_engine: Engine, answer: str
) -> None:
    team = invited(own_engine)
    halfway_at_an_upgrade(team)
    said = team.athlete.writes(answer)
    assert "My questions have changed since I last asked you" in said[-1].text
    assert "Kidneys" in said[-1].buttons
    assert open_question(team).step == Part.CONDITIONS
    assert open_question(team).answers["birth_year"] == 1996
    for rest in ONBOARDING_ANSWERS[3:]:
        team.athlete.writes(rest)
    assert team.profile().status == AthleteStatus.ACTIVE


def test_a_sentence_said_to_a_question_from_before_an_upgrade_still_reaches_the_coach(
    own_engine: Engine,
) -> None:
    team = invited(own_engine)
    halfway_at_an_upgrade(team)
    said = team.athlete.writes("my sister wants to know if she may join in")
    assert "Kidneys" in said[-1].buttons and "Ravi" in text_of(said)
    team.world.later(days=1)
    assert "my sister wants to know" in text_of(team.coach.all_said())


def test_a_warning_comes_before_a_question_from_before_an_upgrade(own_engine: Engine) -> None:
    team = invited(own_engine)
    halfway_at_an_upgrade(team)
    said = text_of(team.athlete.writes("I fainted in the bathroom"))
    assert "emergency number" in said and "My questions have changed" not in said
    assert "fainted in the bathroom" in text_of(team.coach.hears())
    assert "Kidneys" in team.athlete.writes("no")[-1].buttons


def test_a_button_of_a_question_from_before_an_upgrade_leads_on_in_its_place(
    own_engine: Engine,
) -> None:
    team = invited(own_engine)
    halfway_at_an_upgrade(team)
    said = team.athlete.presses(f"q:{open_question(team).id}:diabetes:no", message_id=7)
    assert "My questions have changed" in text_of(said)
    assert open_question(team).step == Part.CONDITIONS
    assert Part.CONDITIONS not in open_question(team).answers
