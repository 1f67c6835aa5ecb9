"""The look check before the stage: the last small choice, and the coach's approval."""

from __future__ import annotations

from datetime import timedelta
from functools import partial

from sqlmodel import select

from bot.core.chat.outbox import Button, Buttons, Delivery, Shown
from bot.core.turn import ChatTurn, Turn
from bot.event.buttons import TOP_UP, TopUp
from bot.event.stage import day as stage_day
from bot.event.stage import words
from bot.event.stage.flow import LOOK
from bot.people.changes import Change
from bot.people.people import approvers, get_person, own_athlete, profile_of, record
from bot.people.telling import answer, edit_to, rewrite, say_to
from bot.store.base import id_of
from bot.store.tables.event import StageRow
from bot.store.tables.people import AthleteProfile, OpenQuestion, Person
from bot.store.tables.traffic import OutboxRow
from bot.week.load import athlete_of, current_event, current_limits
from bot.words.common import settled_already
from engine.evidence.staging import LOOK_USELESS_MIN
from engine.stage_day.stage_look import last_choice
from engine.values.checkin import Gut


def look_given(turn: Turn, person: Person, question: OpenQuestion) -> None:
    """The last small choice: said at once inside the limits, else put to the coach."""
    profile = profile_of(turn.session, person.id)
    event = current_event(turn.session, profile.person_id) if profile is not None else None
    limits = (
        current_limits(turn.session, event, athlete_of(profile))
        if event is not None and profile is not None
        else None
    )
    if profile is None or event is None or limits is None:
        say_to(turn, person, words.look_result("good-enough", 0))
        return
    answers = question.answers
    full, sharp, gut = answers["fullness"], answers["sharpness"], answers["gut"]
    choice = last_choice(full, sharp, Gut(gut), limits)
    coach = get_person(turn.session, profile.coach_id)
    own = coach.id == person.id
    waits = choice.needs_sign_off and not own
    said = (
        words.look_waits(coach.first_name)
        if waits
        else words.look_result(choice.rule, choice.grams)
    )
    record(turn, profile.person_id, by=person.id, what=Change.LOOK_CHECK(
        fullness=full, sharpness=sharp, gut=gut, rule=choice.rule, grams=choice.grams,
    ))  # fmt: skip
    say_to(turn, person, said)
    if own:
        return

    def look() -> str:
        told = (
            words.coach_asked(choice.grams)
            if waits
            else words.look_result(choice.rule, choice.grams)
        )
        return words.coach_look(person.first_name, full, sharp, gut, told)

    for reader in approvers(turn.session, profile):
        say_to(
            turn,
            reader,
            look,
            buttons=partial(_top_up_keys, profile, question, choice.grams) if waits else (),
            how=Delivery(dedupe=_asked(question, reader)),
        )


def top_up(
    turn: ChatTurn, coach: Person, profile: AthleteProfile, row: StageRow | None, pressed: TopUp
) -> None:
    """The coach's approval of a top-up, or not; once, and not when it can no longer be digested."""
    question = turn.session.get(OpenQuestion, pressed.question)
    if (
        own_athlete(turn.session, coach, profile.person_id) is None
        or row is None
        or question is None
        or question.flow != LOOK.id
        or question.person_id != profile.person_id
    ):
        answer(turn, words.day_not_here())
        return
    if "_coach_said" in question.answers:
        answer(turn, settled_already())
        return
    event = current_event(turn.session, profile.person_id)
    if event is None or not stage_day.local_day(event, turn.context):
        answer(turn, words.day_not_here())
        return
    limits = current_limits(turn.session, event, athlete_of(profile))
    assert limits is not None
    answers = question.answers
    choice = last_choice(answers["fullness"], answers["sharpness"], Gut(answers["gut"]), limits)
    wanted = pressed.grams != 0 and choice.grams > 0
    ahead = [stage for stage in stage_day.day_of(row).stages if stage > turn.now]
    if wanted and (not ahead or min(ahead) - turn.now < timedelta(minutes=float(LOOK_USELESS_MIN))):
        answer(turn, words.too_late_to_top_up())
        return
    question.answers = question.answers | {"_coach_said": choice.grams if wanted else 0}
    entry = Change.TOP_UP(grams=question.answers["_coach_said"])
    record(turn, profile.person_id, entry, by=coach.id)
    athlete = get_person(turn.session, profile.person_id)
    rewrite(turn, words.top_up_told(athlete.first_name, question.answers["_coach_said"]))
    _settle_others(turn, coach, profile, question)
    say_to(
        turn,
        athlete,
        lambda: (
            words.approved(coach.first_name, choice.grams)
            if wanted
            else words.declined(coach.first_name)
        ),
    )


def _settle_others(
    turn: Turn, coach: Person, profile: AthleteProfile, question: OpenQuestion
) -> None:
    """Whoever else was asked reads that it is settled, and by whom."""
    for reader in approvers(turn.session, profile):
        message = turn.session.exec(
            select(OutboxRow).where(OutboxRow.dedupe == _asked(question, reader))
        ).first()
        if reader.id == coach.id or message is None:
            continue
        said = message.payload["text"]
        edit_to(
            turn,
            reader,
            Shown(reader.chat_id, outbox_id=message.id),
            partial(_settled, said, coach.first_name),
        )


def _settled(said: str, by: str) -> str:
    return f"{said}\n\n{words.settled_by(by)}"


def _top_up_keys(profile: AthleteProfile, question: OpenQuestion, grams: float) -> Buttons:
    number, asked = profile.person_id, id_of(question)
    return [
        [
            Button(words.top_up_button(grams), TOP_UP(number, asked, grams)),
            Button(words.no_top_up_button(), TOP_UP(number, asked, 0)),
        ]
    ]


def _asked(question: OpenQuestion, reader: Person) -> str:
    return f"look-check:{question.id}:{reader.id}"
