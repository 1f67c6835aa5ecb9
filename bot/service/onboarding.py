"""A new athlete: from the invitation to the first morning."""

from __future__ import annotations

from datetime import time

from sqlmodel import Session

from bot.context import Context
from bot.dialogue import Answers
from bot.flows.health_screen import ticked
from bot.flows.measures import fat_of, height_of, mass_of
from bot.flows.onboarding import BASELINE_KEYS, ONBOARDING, under_age, zone_of
from bot.messages import health_screen as health_words
from bot.messages import onboarding as words
from bot.outbox import Button, say
from bot.service import asking, health_screen
from bot.service.people import get_person, local_date, profile_of, record, speaking_to
from bot.service.prompts import schedule
from bot.store.people import AthleteProfile, AthleteStatus, OpenQuestion, Person


def begin(session: Session, person: Person, coach_id: int, context: Context) -> None:
    """Put the first question to somebody who took up a coach's invitation."""
    assert person.id is not None
    profile = profile_of(session, person.id) or AthleteProfile(
        person_id=person.id, coach_id=coach_id, created_at=context.now
    )
    profile.coach_id = coach_id
    profile.status = AthleteStatus.ONBOARDING
    session.add(profile)
    session.flush()
    asking.open_question(
        session,
        person,
        ONBOARDING,
        context=context,
        subject_id=person.id,
        answers={
            "_coach": get_person(session, coach_id).first_name,
            "_own": coach_id == person.id,
            "_today": local_date(profile, context).isoformat(),
        },
    )


def finish(session: Session, person: Person, question: OpenQuestion, context: Context) -> None:
    """Everything is answered, or an answer has ended it early."""
    profile = profile_of(session, person.id)
    assert profile is not None
    coach = get_person(session, profile.coach_id)
    answers = question.answers
    if answers.get("consent") != "yes" or under_age(answers):
        _decline(session, person, profile, question, coach, context)
        return
    _keep(profile, answers, context)
    waits, own = health_screen.has_to_wait(profile), coach.id == person.id
    profile.status = AthleteStatus.DOCTOR_FIRST if waits else AthleteStatus.ACTIVE
    session.add(profile)
    record(session, profile.person_id, "onboarded", context, by=person.id, status=profile.status)
    told = words.coach_told_doctor_first if waits else words.coach_told_all_set
    with speaking_to(coach):
        text = told(person.first_name, answers_lines(profile), own=own)
        say(
            session, chat_id=coach.chat_id, text=text, now=context.now,
            buttons=[[Button(words.open_button(person.first_name), f"c:card:{profile.person_id}")]],
        )  # fmt: skip
    say(
        session, chat_id=person.chat_id, now=context.now,
        text=health_words.clearance_first(
            health_screen.health_of(profile), coach.first_name, own=own
        ) if waits else words.all_set(
            profile.prompt_time.strftime("%H:%M"), coach.first_name, _example(profile), own=own
        ),
    )  # fmt: skip
    schedule(session, profile, context=context)


def answers_lines(profile: AthleteProfile) -> str:
    """What was answered, as the coach sees it."""
    return words.answers_lines(
        {
            **profile.baseline,
            "health": health_words.lines(
                health_screen.health_of(profile), own=profile.coach_id == profile.person_id
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


def _example(profile: AthleteProfile) -> str:
    """A check-in in one line, in the units that were chosen: "190 7 128"."""
    return words.example(
        profile.body_mass_kg or 0, profile.weight_unit,
        profile.baseline["water_l"], profile.volume_unit,
    )  # fmt: skip


def _keep(profile: AthleteProfile, answers: Answers, context: Context) -> None:
    profile.consent_at = context.now
    profile.screening = {health_screen.TOLD: [str(sign) for sign in ticked(answers)]}
    profile.sex, profile.birth_year = answers.get("sex"), answers.get("birth_year")
    profile.height_cm, profile.body_mass_kg = height_of(answers), mass_of(answers)
    profile.body_fat_percent = fat_of(answers)
    profile.weight_unit = str(answers["weight_unit"])
    profile.volume_unit = str(answers["volume_unit"])
    profile.zone = zone_of(answers)
    profile.prompt_time = time.fromisoformat(str(answers["prompt_time"]))
    profile.baseline = {key: answers[key] for key in BASELINE_KEYS}


def _decline(
    session: Session,
    person: Person,
    profile: AthleteProfile,
    question: OpenQuestion,
    coach: Person,
    context: Context,
) -> None:
    """Under age, or no consent: a kind word, and nothing kept but that it was so."""
    minor = under_age(question.answers)
    question.answers = {}
    profile.status = AthleteStatus.DECLINED
    session.add(question)
    session.add(profile)
    record(
        session, profile.person_id, "declined", context, by=person.id,
        because="under age" if minor else "no consent",
    )  # fmt: skip
    say(
        session, chat_id=person.chat_id, now=context.now,
        text=words.under_age() if minor else words.no_consent(),
    )  # fmt: skip
    if coach.id != person.id:
        tell = words.coach_told_under_age if minor else words.coach_told_no_consent
        with speaking_to(coach):
            say(session, chat_id=coach.chat_id, text=tell(person.first_name), now=context.now)
