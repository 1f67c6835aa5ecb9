"""`/stage` for athlete and coach: the timetable, and word of delays."""

from __future__ import annotations

from sqlmodel import Session

from bot.context import Context
from bot.flows.stage import STAGE, stage_day_of
from bot.incoming import Incoming
from bot.languages import language
from bot.messages import calendar as calendar_words
from bot.messages import stage as words
from bot.outbox import Button, Buttons, say
from bot.service import asking, stage_day, stage_look
from bot.service.care import care_for
from bot.service.people import get_person, own_athlete, profile_of, speaking_to
from bot.service.rights import athletes_seen_by
from bot.service.signoff import signers
from bot.service.tapping import answer, rewrite
from bot.service.week import current_event
from bot.store.people import AthleteProfile, OpenQuestion, Person
from bot.store.stage import StageRow
from bot.store.week import EventRow
from engine.delays import parse_delay
from engine.stage_day import Kind

LATE_BY = (15, 30, 60)
EARLY_BY = (15, 30)


def show(session: Session, person: Person, rest: str, context: Context) -> None:
    """`/stage`: the own day; for a coach a button an athlete with an event, or the one there is."""
    own = profile_of(session, person.id)
    if own is not None and current_event(session, own.person_id) is not None:
        say_day(session, person, own, context)
        return
    found = _coached(session, person)
    if len(found) == 1:
        say_day(session, person, found[0], context)
        return
    if not found:
        text = words.no_event(own=True) if own is not None else words.nobody()
        say(session, chat_id=person.chat_id, text=text, now=context.now)
        return
    keys = [
        [Button(get_person(session, p.person_id).first_name, f"st:day:{p.person_id}")]
        for p in found
    ]
    say(session, chat_id=person.chat_id, text=words.which_athlete(), now=context.now, buttons=keys)


def late(session: Session, person: Person, rest: str, context: Context) -> None:
    """`/late 45`."""
    minutes = parse_delay(f"late {rest}" if rest[:1].isdigit() else rest, language())
    if minutes is None:
        say(session, chat_id=person.chat_id, text=words.how_late(), now=context.now)
        return
    _move_or_ask(session, person, minutes, context)


def heard_delay(session: Session, person: Person, text: str, context: Context) -> bool:
    """Word of a delay typed on the day, with no command; False where it is none or no day runs."""
    minutes = parse_delay(text, language())
    if minutes is None or not _running_days(session, person, context):
        return False
    _move_or_ask(session, person, minutes, context)
    return True


def tapped(
    session: Session, person: Person, arguments: list[str], incoming: Incoming, context: Context
) -> None:
    """Buttons "st:VIEW:ATHLETE:...", for the athlete and for their coach."""
    view, number, *rest = (*arguments, "", "")
    profile = _theirs(session, person, int(number)) if number.isdigit() else None
    event = current_event(session, profile.person_id) if profile is not None else None
    if profile is None or event is None:
        answer(session, incoming, context, words.day_not_here())
        return
    row = stage_day.stage_row(session, event)
    if view == "top":
        stage_look.top_up(session, person, profile, row, rest, incoming, context)
        return
    answer(session, incoming, context)
    if view == "set":
        _ask_times(session, person, profile, event, context)
    elif view == "late" and rest[0].lstrip("-").isdigit():
        _move(session, person, profile, event, int(rest[0]), context)
    elif view == "off":
        keys = [
            [
                Button(words.cancel_yes_button(), f"st:off-yes:{profile.person_id}"),
                Button(words.cancel_no_button(), f"st:day:{profile.person_id}"),
            ]
        ]
        rewrite(session, incoming, words.ask_cancel(), context, keys)
    elif view == "off-yes" and row is not None:
        _call_off(session, person, profile, row, incoming, context)
    else:
        text, shown = _view(session, person, profile, event, context)
        rewrite(session, incoming, text, context, shown)


def times_given(session: Session, person: Person, question: OpenQuestion, context: Context) -> None:
    """The day is laid out, and both see it."""
    profile = _theirs(session, person, question.subject_id or 0)
    event = current_event(session, profile.person_id) if profile is not None else None
    if profile is None or event is None or event.day.isoformat() != question.answers["_day"]:
        say(session, chat_id=person.chat_id, text=words.day_not_here(), now=context.now)
        return
    stage_day.lay_out(session, profile, event, stage_day_of(question.answers), person, context)
    say_day(session, person, profile, context)
    for other in _others(session, person, profile):
        with speaking_to(other):
            lead = (
                words.set_by_coach(person.first_name)
                if other.id == profile.person_id
                else words.set_by_athlete(person.first_name)
            )
            say_day(session, other, profile, context, lead=lead)


def _move_or_ask(session: Session, person: Person, minutes: int, context: Context) -> None:
    days = _running_days(session, person, context)
    if not days:
        say(session, chat_id=person.chat_id, text=words.day_not_here(), now=context.now)
        return
    if len(days) == 1:
        _move(session, person, *days[0], minutes, context)
        return
    keys = [
        [
            Button(
                get_person(session, profile.person_id).first_name,
                f"st:late:{profile.person_id}:{minutes}",
            )
        ]
        for profile, _ in days
    ]
    say(session, chat_id=person.chat_id, text=words.which_athlete(), now=context.now, buttons=keys)


def _move(
    session: Session,
    person: Person,
    profile: AthleteProfile,
    event: EventRow,
    minutes: int,
    context: Context,
) -> None:
    row = stage_day.stage_row(session, event)
    if row is None or not stage_day.running(row, event, context):
        text = words.day_over() if row is not None else words.not_set()
        say(session, chat_id=person.chat_id, text=text, now=context.now)
        return
    stage_day.move(session, profile, event, row, minutes, person, context)
    for reader in (person, *_others(session, person, profile)):
        with speaking_to(reader):
            lead = words.moved(minutes, person.first_name, own=reader.id == person.id)
            say_day(session, reader, profile, context, lead=lead)


def _call_off(
    session: Session,
    person: Person,
    profile: AthleteProfile,
    row: StageRow,
    incoming: Incoming,
    context: Context,
) -> None:
    if row.cancelled_at is None:
        stage_day.call_off(session, profile, row, person, context)
        name = get_person(session, profile.person_id).first_name
        for other in _others(session, person, profile):
            with speaking_to(other):
                text = (
                    words.is_cancelled()
                    if other.id == profile.person_id
                    else words.coach_told_cancelled(name)
                )
                say(
                    session, chat_id=other.chat_id, text=text, now=context.now,
                    topic=topic(profile, other),
                )  # fmt: skip
    keys = [[Button(words.set_button(), f"st:set:{profile.person_id}")]]
    rewrite(session, incoming, words.is_cancelled(), context, keys)


def _ask_times(
    session: Session, person: Person, profile: AthleteProfile, event: EventRow, context: Context
) -> None:
    asking.open_question(
        session, person, STAGE, context=context, subject_id=profile.person_id,
        answers={
            "_day": event.day.isoformat(),
            "_zone": event.zone,
            "_wake": f"{profile.prompt_time:%H:%M}",
        },
    )  # fmt: skip


def say_day(
    session: Session,
    reader: Person,
    profile: AthleteProfile,
    context: Context,
    *,
    lead: str = "",
) -> None:
    event = current_event(session, profile.person_id)
    assert event is not None
    text, keys = _view(session, reader, profile, event, context)
    text = f"{lead}\n\n{text}" if lead else text
    say(
        session, chat_id=reader.chat_id, text=text, now=context.now, buttons=keys,
        topic=topic(profile, reader),
    )  # fmt: skip


def topic(profile: AthleteProfile, reader: Person) -> str:
    """Of several messages with the day's times that have not been sent yet, only the latest is."""
    return f"stage-day:{profile.person_id}:{reader.id}"


def readers(session: Session, profile: AthleteProfile) -> list[Person]:
    """Who has the day's times: the athlete, and those who coach them with full rights."""
    people = [get_person(session, profile.person_id), *signers(session, profile)]
    return list({person.id: person for person in people}.values())


def _view(
    session: Session,
    reader: Person,
    profile: AthleteProfile,
    event: EventRow,
    context: Context,
) -> tuple[str, Buttons]:
    row, id = stage_day.stage_row(session, event), profile.person_id
    if row is None or row.cancelled_at is not None:
        text = words.not_set() if row is None else words.is_cancelled()
        return text, [[Button(words.set_button(), f"st:set:{id}")]]
    resting = care_for(session, profile, context).resting(own=reader.id == id)
    entries = [
        (entry, done)
        for entry, done in stage_day.entries_of(row)
        if resting is None or done or entry.kind is not Kind.PUMP
    ]
    text = words.timetable(
        get_person(session, id).first_name, entries, event.zone,
        len(row.facts["stages"]), own=reader.id == id, home_zone=profile.zone,
    )  # fmt: skip
    if resting is not None:
        text = f"{resting}\n\n{text}"
    keys = []
    if stage_day.running(row, event, context):
        keys = [
            [Button(words.late_button(n), f"st:late:{id}:{n}") for n in LATE_BY],
            [Button(words.early_button(n), f"st:late:{id}:-{n}") for n in EARLY_BY],
            [
                Button(words.change_button(), f"st:set:{id}"),
                Button(words.cancel_button(), f"st:off:{id}"),
            ],
        ]
    keys.append([Button(calendar_words.button(), f"cal:get:{id}")])
    return f"{text}\n\n{words.habits()}", keys


def _running_days(
    session: Session, person: Person, context: Context
) -> list[tuple[AthleteProfile, EventRow]]:
    """Days that this person may move, and that are under way."""
    own = profile_of(session, person.id)
    found: list[tuple[AthleteProfile, EventRow]] = []
    for profile in ([own] if own is not None else []) + _coached(session, person):
        event = current_event(session, profile.person_id)
        if event is None or profile.person_id in [p.person_id for p, _ in found]:
            continue
        row = stage_day.stage_row(session, event)
        if stage_day.local_day(event, context) and stage_day.running(row, event, context):
            found.append((profile, event))
    return found


def _coached(session: Session, person: Person) -> list[AthleteProfile]:
    return [
        profile
        for profile in athletes_seen_by(session, person)
        if current_event(session, profile.person_id) is not None
    ]


def _theirs(session: Session, person: Person, athlete_id: int) -> AthleteProfile | None:
    """The athlete's profile for the athlete and for their coach; None for everybody else."""
    if person.id == athlete_id:
        return profile_of(session, athlete_id)
    return own_athlete(session, person, athlete_id)


def _others(session: Session, person: Person, profile: AthleteProfile) -> list[Person]:
    return [one for one in readers(session, profile) if one.id != person.id]
