"""A new athlete: from the invitation to the first morning."""

from __future__ import annotations

from datetime import time

from bot.core.chat.cards import CARD, SETUP
from bot.core.chat.outbox import Button
from bot.core.turn import Context, Turn
from bot.dialogue import asking
from bot.dialogue.flow import Answers, zone_of
from bot.membership.buttons import MORE
from bot.membership.onboarding import health_screen, words
from bot.membership.onboarding import words_health as health_words
from bot.membership.onboarding.flow import BASELINE_KEYS, ONBOARDING, under_age
from bot.membership.onboarding.flow_health import ticked
from bot.membership.onboarding.flow_measures import height_of, mass_of
from bot.people.changes import Change
from bot.people.people import (
    example_of,
    get_person,
    get_profile,
    local_date,
    name_of,
    profile_of,
    record,
)
from bot.people.telling import say_to
from bot.store.tables.people import AthleteProfile, AthleteStatus, OpenQuestion, Person
from bot.week.prompts import schedule
from bot.words import common
from bot.words.languages import language
from bot.words.names import CONSENT


def begin(turn: Turn, person: Person, coach_id: int) -> None:
    """Put the first question to somebody who took up a coach's invitation."""
    assert person.id is not None
    profile = profile_of(turn.session, person.id) or AthleteProfile(
        person_id=person.id, coach_id=coach_id, created_at=turn.now
    )
    profile.coach_id = coach_id
    profile.status = AthleteStatus.ONBOARDING
    turn.session.add(profile)
    turn.session.flush()
    asking.open_question(
        turn,
        person,
        ONBOARDING,
        subject_id=person.id,
        answers={
            "_coach": name_of(turn.session, coach_id),
            "_own": coach_id == person.id,
            "_today": local_date(profile, turn.context).isoformat(),
        },
    )


def finish(turn: Turn, person: Person, question: OpenQuestion) -> None:
    """Everything is answered, or an answer has ended it early."""
    profile = get_profile(turn.session, person.id)
    coach = get_person(turn.session, profile.coach_id)
    answers = question.answers
    if answers.get(CONSENT) != "yes" or under_age(answers):
        _decline(turn, person, profile, question, coach)
        return
    _keep(profile, answers, turn.context)
    waits, self_coached = health_screen.has_to_wait(profile), coach.id == person.id
    profile.status = AthleteStatus.DOCTOR_FIRST if waits else AthleteStatus.ACTIVE
    turn.session.add(profile)
    record(turn, profile.person_id, Change.ONBOARDED, by=person.id, status=profile.status)
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
        health_words.clearance_first(
            health_screen.health_of(profile), coach.first_name, self_coached=self_coached
        )
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
            "health": health_words.lines(
                health_screen.health_of(profile), self_coached=profile.coach_id == profile.person_id
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
    profile.screening = {health_screen.TOLD: [str(sign) for sign in ticked(answers)]}
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
    turn.session.add(question)
    turn.session.add(profile)
    record(
        turn, profile.person_id, Change.DECLINED, by=person.id,
        because="under age" if minor else "no consent",
    )  # fmt: skip
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
