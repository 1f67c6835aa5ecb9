"""What an athlete's health answers come to, and height and weight asked once more."""

from __future__ import annotations

from bot.core.chat.cards import CARD
from bot.core.chat.outbox import Button
from bot.core.turn import ChatTurn, OnAthlete, Turn
from bot.dialogue import asking
from bot.membership.buttons import ASK_MEASURES
from bot.membership.onboarding import words_health as words
from bot.membership.onboarding.flow_measures import MEASURES, fat_of, height_of, mass_of
from bot.membership.onboarding.words import open_button
from bot.people.changes import Change
from bot.people.people import get_person, name_of, profile_of, record, speaking_to
from bot.people.telling import answer, rewrite, say_to
from bot.store.tables.people import AthleteProfile, AthleteStatus, OpenQuestion, Person
from engine.planning.health_screen import Health, Sign, judged, sign_named

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
        words.ask_again_button(name, self_coached=self_coached), ASK_MEASURES(profile.person_id)
    )
    rewrite(turn, words.floor_holds(name, self_coached=self_coached), [[key]])
    return True


def ask_measures(turn: OnAthlete) -> None:
    """Button "c:measure:ATHLETE": the athlete is asked for height and weight once more."""
    answer(turn)
    athlete = get_person(turn.session, turn.profile.person_id)
    self_coached = turn.person.id == athlete.id
    rewrite(turn, words.asked_again(athlete.first_name, self_coached=self_coached))
    with speaking_to(athlete):
        asking.open_question(
            turn, athlete, MEASURES, subject_id=athlete.id,
            answers={"sex": turn.profile.sex, "weight_unit": turn.profile.weight_unit},
        )  # fmt: skip


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
    turn.session.add(profile)
    record(turn, profile.person_id, Change.MEASURES_ANSWERED_AGAIN, by=person.id)
    say_to(turn, person, words.measures_kept())
    coach = get_person(turn.session, profile.coach_id)
    say_to(
        turn,
        coach,
        lambda: words.coach_told_measures(
            person.first_name, words.lines(health, self_coached=coach.id == person.id)
        ),
        buttons=lambda: [[Button(open_button(person.first_name), CARD(profile.person_id))]],
    )
