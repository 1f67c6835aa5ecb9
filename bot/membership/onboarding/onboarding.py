"""A new athlete, from the invitation to the first morning; health answers, and what is asked later."""

from __future__ import annotations

from datetime import time
from functools import partial

from bot.core.chat.cards import CARD, SETUP
from bot.core.chat.outbox import SILENTLY, Button, Delivery
from bot.core.turn import Act, ChatTurn, Context, OnAthlete, Turn
from bot.dialogue import asking
from bot.dialogue.flow import Answers, zone_of
from bot.membership.buttons import ASK_MEASURES, MORE
from bot.membership.onboarding import flow_health, words
from bot.membership.onboarding.flow import BASELINE_KEYS, LATER, LATER_KEYS, ONBOARDING, under_age
from bot.membership.onboarding.flow_health import ticked
from bot.membership.onboarding.flow_measures import MEASURES, fat_of, height_of, mass_of
from bot.membership.onboarding.words import open_button
from bot.people.changes import Change
from bot.people.people import (
    example_of,
    get_person,
    get_profile,
    is_own_coach,
    local_date,
    name_of,
    profile_of,
    record,
)
from bot.people.telling import answer, rewrite, say_to
from bot.store.base import id_of
from bot.store.tables.people import AthleteProfile, AthleteStatus, HistoryRow, OpenQuestion, Person
from bot.week.load import current_event
from bot.week.prompts import schedule
from bot.words import common
from bot.words.languages import language
from bot.words.names import CONSENT
from engine.planning.health_screen import Health, Sign, judged, sign_named


def begin(turn: Turn, person: Person, coach_id: int) -> None:
    """Put the first question to somebody who took up a coach's invitation."""
    profile = profile_of(turn.session, person.id) or AthleteProfile(
        person_id=id_of(person), coach_id=coach_id, created_at=turn.now
    )
    profile.coach_id = coach_id
    profile.status = AthleteStatus.ONBOARDING
    turn.session.add(profile)
    turn.session.flush()
    asking.open_question(turn, person, ONBOARDING, person.id, {
        "_coach": name_of(turn.session, coach_id),
        "_own": coach_id == person.id,
        "_today": local_date(profile, turn.context).isoformat(),
    })  # fmt: skip


def finish(turn: Turn, person: Person, question: OpenQuestion) -> None:
    """Everything is answered, or an answer has ended it early."""
    profile = get_profile(turn.session, person.id)
    coach = get_person(turn.session, profile.coach_id)
    answers = question.answers
    if answers.get(CONSENT) != "yes" or under_age(answers):
        _decline(turn, person, profile, question, coach)
        return
    _keep(profile, answers, turn.context)
    waits, self_coached = has_to_wait(profile), coach.id == person.id
    profile.status = AthleteStatus.DOCTOR_FIRST if waits else AthleteStatus.ACTIVE
    record(turn, profile.person_id, Change.ONBOARDED(status=profile.status), by=person.id)
    told = words.coach_told_doctor_first if waits else words.coach_told_all_set
    say_to(
        turn,
        coach,
        lambda: told(person.first_name, answers_lines(profile), self_coached=self_coached),
        buttons=lambda: [
            [Button(words.open_button(person.first_name), CARD(profile.person_id))],
            [Button(common.setup_button(), SETUP(profile.person_id))],
        ],
    )
    say_to(
        turn,
        person,
        flow_health.clearance_first(health_of(profile), coach.first_name, self_coached=self_coached)
        if waits
        else words.all_set(
            profile.prompt_time.strftime("%H:%M"),
            coach.first_name,
            example_of(profile, sharpness=False),
            self_coached=self_coached,
        ),
        buttons=() if waits else [[Button(words.later_button(), MORE())]],
    )
    schedule(turn, profile)


def answers_lines(profile: AthleteProfile) -> str:
    """What was answered, as the coach sees it."""
    return words.answers_lines(
        {
            **profile.baseline,
            "health": flow_health.lines(
                health_of(profile), self_coached=profile.coach_id == profile.person_id
            ),
            "sex": profile.sex,
            "birth_year": profile.birth_year,
            "height_cm": profile.height_cm,
            "body_mass_kg": profile.body_mass_kg,
            "body_fat_percent": profile.body_fat_percent,
            "weight_unit": profile.weight_unit,
            "volume_unit": profile.volume_unit,
            "zone": profile.zone,
            "prompt_time": profile.prompt_time.strftime("%H:%M"),
        }
    )


def _keep(profile: AthleteProfile, answers: Answers, context: Context) -> None:
    profile.consent_at = context.now
    profile.consent_version, profile.consent_language = words.CONSENT_VERSION, language()
    profile.screening = {TOLD: [str(sign) for sign in ticked(answers)]}
    profile.sex, profile.birth_year = answers.get("sex"), answers.get("birth_year")
    profile.height_cm, profile.body_mass_kg = height_of(answers), mass_of(answers)
    profile.weight_unit = str(answers["weight_unit"])
    profile.volume_unit = str(answers["volume_unit"])
    profile.zone = zone_of(answers)
    profile.prompt_time = time.fromisoformat(str(answers["prompt_time"]))
    profile.baseline = {key: answers[key] for key in BASELINE_KEYS}


def _decline(
    turn: Turn, person: Person, profile: AthleteProfile, question: OpenQuestion, coach: Person
) -> None:
    """Under age, or no consent: a kind word, and nothing kept but that it was so."""
    minor = under_age(question.answers)
    question.answers = {}
    profile.status = AthleteStatus.DECLINED
    entry = Change.DECLINED(because="under age" if minor else "no consent")
    record(turn, profile.person_id, entry, by=person.id)
    self_coached = coach.id == person.id
    say_to(
        turn,
        person,
        words.under_age(self_coached=self_coached)
        if minor
        else words.no_consent(self_coached=self_coached),
    )
    if not self_coached:
        tell = words.coach_told_under_age if minor else words.coach_told_no_consent
        say_to(turn, coach, lambda: tell(person.first_name))


TOLD = "told"  # the key of `AthleteProfile.screening` that holds what was ticked


def told_by(profile: AthleteProfile) -> list[Sign]:
    """What was ticked. Before there were lists, each question had a key of its own and yes or no."""
    if TOLD in profile.screening:
        return [sign_named(one) for one in profile.screening[TOLD]]
    return [sign for sign in Sign if profile.screening.get(sign.value) is True]


def health_of(profile: AthleteProfile) -> Health:
    """What the answers of this athlete come to; their measures have to be there."""
    assert profile.height_cm is not None and profile.body_mass_kg is not None
    return judged(told_by(profile), profile.height_cm, profile.body_mass_kg)


def has_to_wait(profile: AthleteProfile) -> bool:
    """Whether a doctor comes first, or no peak week runs at all."""
    health = health_of(profile)
    return health.floor or (health.doctor_first and profile.cleared_at is None)


def held_by_floor(turn: ChatTurn, coach: Person, profile: AthleteProfile) -> bool:
    """Whether a clearance cannot start anything here, which the coach is then told."""
    if profile.height_cm is None or not health_of(profile).floor:
        return False
    self_coached, name = coach.id == profile.person_id, name_of(turn.session, profile.person_id)
    key = Button(
        flow_health.ask_again_button(name, self_coached=self_coached),
        ASK_MEASURES(profile.person_id),
    )
    rewrite(turn, flow_health.floor_holds(name, self_coached=self_coached), [[key]])
    return True


def ask_measures(turn: OnAthlete) -> None:
    """Button "c:measure:ATHLETE": the athlete is asked for height and weight once more."""
    athlete = get_person(turn.session, turn.profile.person_id)
    self_coached = turn.person.id == athlete.id
    rewrite(turn, flow_health.asked_again(athlete.first_name, self_coached=self_coached))
    asking.open_question(turn, athlete, MEASURES, athlete.id, {
        "sex": turn.profile.sex, "weight_unit": turn.profile.weight_unit,
    })  # fmt: skip


def measured(turn: Turn, person: Person, question: OpenQuestion) -> None:
    """Height, weight and body fat are answered again; who was held by the floor may go on."""
    profile = profile_of(turn.session, person.id)
    if profile is None or profile.status != AthleteStatus.DOCTOR_FIRST:
        return
    profile.height_cm = height_of(question.answers)
    profile.body_mass_kg = mass_of(question.answers)
    profile.body_fat_percent = fat_of(question.answers)
    health = health_of(profile)
    if not health.floor and not health.doctor_first:
        profile.status = AthleteStatus.ACTIVE
    record(turn, profile.person_id, Change.MEASURES_ANSWERED_AGAIN(), by=person.id)
    say_to(turn, person, flow_health.measures_kept())
    coach = get_person(turn.session, profile.coach_id)
    say_to(
        turn,
        coach,
        lambda: flow_health.coach_told_measures(
            person.first_name, flow_health.lines(health, self_coached=coach.id == person.id)
        ),
        buttons=lambda: [[Button(open_button(person.first_name), CARD(profile.person_id))]],
    )


def ask_for_new_events(turn: Turn, events_set: list[HistoryRow]) -> None:
    """Whoever has got an event and has not been asked the rest is asked now."""
    for athlete_id in dict.fromkeys(row.athlete_id for row in events_set):
        profile = profile_of(turn.session, athlete_id)
        event = current_event(turn.session, athlete_id)
        if profile is None or event is None or not _is_open(profile):
            continue
        say_to(
            turn,
            get_person(turn.session, athlete_id),
            partial(words.later_asked, event.kind),
            buttons=lambda: [[Button(words.later_button(), MORE())]],
            how=Delivery(silent=True, dedupe=f"later-questions:{athlete_id}:{event.id}"),
        )


def tapped(turn: Act) -> None:
    """Button "more:ask"."""
    profile = profile_of(turn.session, turn.person.id)
    if profile is None or not _is_open(profile):
        answer(turn, words.later_known_already())
        return
    asking.open_question(turn, turn.person, LATER, turn.person.id, {"sex": profile.sex})


def given(turn: Turn, person: Person, question: OpenQuestion) -> None:
    profile = profile_of(turn.session, person.id)
    if profile is None or not profile.baseline:
        return
    told = {key: question.answers.get(key) for key in LATER_KEYS}
    profile.body_fat_percent = fat_of(question.answers)
    profile.baseline = {**profile.baseline, **told}
    record(turn, profile.person_id, Change.MEASURES_ANSWERED_AGAIN(), by=person.id)
    say_to(turn, person, words.later_kept())
    if not is_own_coach(profile):
        coach = get_person(turn.session, profile.coach_id)
        say_to(
            turn,
            coach,
            lambda: words.coach_told_later(person.first_name, answers_lines(profile)),
            how=SILENTLY,
        )


def _is_open(profile: AthleteProfile) -> bool:
    return bool(profile.baseline) and not set(LATER_KEYS) <= set(profile.baseline)
