"""The look check before the stage: the last small choice, and the coach's word on it."""

from __future__ import annotations

from datetime import timedelta

from sqlmodel import Session, select

from bot.context import Context
from bot.flows.stage import LOOK
from bot.incoming import Incoming
from bot.messages import stage as words
from bot.outbox import Button, Buttons, edit, say
from bot.service import stage_day
from bot.service.people import get_person, own_athlete, profile_of, record, speaking_to
from bot.service.signoff import signers
from bot.service.tapping import answer, rewrite
from bot.service.week import athlete_of, current_event, current_limits
from bot.store.people import AthleteProfile, OpenQuestion, Person
from bot.store.stage import StageRow
from bot.store.traffic import OutboxRow
from engine.checkin import Gut
from engine.evidence.staging import LOOK_USELESS_MIN
from engine.stage_look import last_choice


def look_given(session: Session, person: Person, question: OpenQuestion, context: Context) -> None:
    """The last small choice: said at once inside the limits, else put to the coach."""
    profile = profile_of(session, person.id)
    event = current_event(session, profile.person_id) if profile is not None else None
    limits = (
        current_limits(session, event, athlete_of(profile))
        if event is not None and profile is not None
        else None
    )
    if profile is None or event is None or limits is None:
        say(session, chat_id=person.chat_id, text=words.look_result("good-enough", 0),
            now=context.now)  # fmt: skip
        return
    answers = question.answers
    full, sharp, gut = answers["fullness"], answers["sharpness"], answers["gut"]
    choice = last_choice(full, sharp, Gut(gut), limits)
    coach = get_person(session, profile.coach_id)
    own = coach.id == person.id
    waits = choice.needs_sign_off and not own
    said = (
        words.look_waits(coach.first_name)
        if waits
        else words.look_result(choice.rule, choice.grams)
    )
    record(
        session, profile.person_id, "look check", context, by=person.id, fullness=full,
        sharpness=sharp, gut=gut, rule=choice.rule, grams=choice.grams,
    )  # fmt: skip
    say(session, chat_id=person.chat_id, text=said, now=context.now)
    if own:
        return
    for reader in signers(session, profile):
        with speaking_to(reader):
            told = words.look_result(choice.rule, choice.grams)
            keys: Buttons = ()
            if waits:
                told = words.coach_asked(choice.grams)
                keys = _top_up_keys(profile, question, choice.grams)
            say(
                session, chat_id=reader.chat_id, buttons=keys, now=context.now,
                text=words.coach_look(person.first_name, full, sharp, gut, told),
                dedupe=_asked(question, reader),
            )  # fmt: skip


def top_up(
    session: Session,
    coach: Person,
    profile: AthleteProfile,
    row: StageRow | None,
    rest: list[str],
    incoming: Incoming,
    context: Context,
) -> None:
    """The coach's word on a top-up; once, and not when it can no longer be digested."""
    number = rest[0] if rest else ""
    question = session.get(OpenQuestion, int(number)) if number.isdigit() else None
    if (
        own_athlete(session, coach, profile.person_id) is None
        or row is None
        or question is None
        or question.flow != LOOK.id
        or question.person_id != profile.person_id
    ):
        answer(session, incoming, context, words.day_not_here())
        return
    if "_coach_said" in question.answers:
        answer(session, incoming, context, words.settled())
        return
    event = current_event(session, profile.person_id)
    if event is None or not stage_day.local_day(event, context):
        answer(session, incoming, context, words.day_not_here())
        return
    limits = current_limits(session, event, athlete_of(profile))
    assert limits is not None
    answers = question.answers
    choice = last_choice(answers["fullness"], answers["sharpness"], Gut(answers["gut"]), limits)
    wanted = rest[1] != "0" and choice.grams > 0
    ahead = [stage for stage in stage_day.day_of(row).stages if stage > context.now]
    if wanted and (
        not ahead or min(ahead) - context.now < timedelta(minutes=float(LOOK_USELESS_MIN))
    ):
        answer(session, incoming, context, words.too_late_to_top_up())
        return
    question.answers = question.answers | {"_coach_said": choice.grams if wanted else 0}
    session.add(question)
    record(
        session, profile.person_id, "top-up", context, by=coach.id,
        grams=question.answers["_coach_said"],
    )  # fmt: skip
    answer(session, incoming, context)
    rewrite(session, incoming, words.top_up_told(), context)
    _settle_others(session, coach, profile, question, context)
    athlete = get_person(session, profile.person_id)
    with speaking_to(athlete):
        text = (
            words.approved(coach.first_name, choice.grams)
            if wanted
            else words.declined(coach.first_name)
        )
        say(session, chat_id=athlete.chat_id, text=text, now=context.now)


def _settle_others(
    session: Session,
    coach: Person,
    profile: AthleteProfile,
    question: OpenQuestion,
    context: Context,
) -> None:
    """Whoever else was asked reads that it is settled, and by whom."""
    for reader in signers(session, profile):
        message = session.exec(
            select(OutboxRow).where(OutboxRow.dedupe == _asked(question, reader))
        ).first()
        if reader.id == coach.id or message is None:
            continue
        with speaking_to(reader):
            text = f"{message.payload['text']}\n\n{words.settled_by(coach.first_name)}"
            edit(session, chat_id=reader.chat_id, outbox_id=message.id, text=text, now=context.now)


def _top_up_keys(profile: AthleteProfile, question: OpenQuestion, grams: float) -> Buttons:
    asked = f"st:top:{profile.person_id}:{question.id}"
    return [
        [
            Button(words.top_up_button(grams), f"{asked}:{grams:g}"),
            Button(words.no_top_up_button(), f"{asked}:0"),
        ]
    ]


def _asked(question: OpenQuestion, reader: Person) -> str:
    return f"look-check:{question.id}:{reader.id}"
