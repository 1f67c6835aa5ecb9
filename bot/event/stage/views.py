"""`/stage` for athlete and coach: the timetable, and word of delays."""

from __future__ import annotations

from functools import partial

from sqlmodel import Session

from bot.core.chat.cards import CALENDAR_FILE, CalendarDo
from bot.core.chat.outbox import Button, Buttons, Delivery, Topic
from bot.core.turn import Act, ChatTurn, Turn
from bot.decision.to_athlete import care_for
from bot.dialogue import asking
from bot.dialogue.flow import Answers
from bot.event.buttons import LATE, ON_STAGE, Late, OnStage, StageView, TopUp
from bot.event.stage import day as stage_day
from bot.event.stage import look as stage_look
from bot.event.stage import words
from bot.event.stage.flow import STAGE, stage_day_of
from bot.people.people import (
    approvers,
    athletes_seen_by,
    get_person,
    is_own_coach,
    name_of,
    own_athlete,
    profile_of,
)
from bot.people.telling import Said, answer, as_said, rewrite, say_to, speaking_to
from bot.store.tables.event import StageRow
from bot.store.tables.people import AthleteProfile, OpenQuestion, Person
from bot.store.tables.traffic import TopicKind
from bot.store.tables.week import EventRow
from bot.week.load import current_event
from bot.words import common
from bot.words.languages import language
from engine.stage_day.stage_day import Kind
from engine.written.stage_times import delay_beside, parse_delay, tells_of_delay

LATE_BY = (15, 30, 60)
EARLY_BY = (15, 30)


def show(turn: Act) -> None:
    """`/stage`: the own day; for a coach a button an athlete with an event, or the one there is."""
    own = profile_of(turn.session, turn.person.id)
    if own is not None and current_event(turn.session, own.person_id) is not None:
        say_day(turn, turn.person, own)
        return
    found = coached(turn.session, turn.person)
    if len(found) == 1:
        say_day(turn, turn.person, found[0])
        return
    if not found:
        text = (
            words.no_event(own=not is_own_coach(own))
            if own is not None
            else common.no_event_ahead()
        )
        say_to(turn, turn.person, text)
        return
    keys = [
        [Button(name_of(turn.session, p.person_id), ON_STAGE(StageView.DAY, p.person_id))]
        for p in found
    ]
    say_to(turn, turn.person, words.which_athlete(), buttons=keys)


def late(turn: Act) -> None:
    """`/late 45`."""
    _moved_by_words(turn, "late")


def early(turn: Act) -> None:
    """`/early 20`."""
    _moved_by_words(turn, "early")


def _moved_by_words(turn: Act, way: str) -> None:
    said = f"{way} {turn.words}" if turn.words[:1].isdigit() else turn.words
    minutes = parse_delay(said, language())
    if minutes is None:
        _ask_how_much(turn, turn.person)
        return
    _move_or_ask(turn, turn.person, minutes)


def heard_delay(turn: Turn, person: Person, text: str) -> str | None:
    """Word of a delay typed on the day, with no command: what else was said beside it, "" where
    nothing was; None where it is no such word or no day runs.
    """
    beside = delay_beside(text, language())
    if (beside is None and not tells_of_delay(text, language())) or not _running_days(turn, person):
        return None
    minutes, rest = beside or (parse_delay(text, language()), "")
    if minutes is None:
        _ask_how_much(turn, person)
    else:
        _move_or_ask(turn, person, minutes)
    return rest


def told_unset(turn: Turn, person: Person, text: str) -> bool:
    """Where a delay is told on the day of an event whose times nobody has set, say that it moves
    nothing yet, with the way to set them; whether it was said.
    """
    told = delay_beside(text, language()) is not None or tells_of_delay(text, language())
    return told and _said_unset(turn, person)


def _said_unset(turn: Turn, person: Person) -> bool:
    own = profile_of(turn.session, person.id)
    event = current_event(turn.session, own.person_id) if own is not None else None
    if own is None or event is None or not stage_day.local_day(event, turn.context):
        return False
    row = stage_day.stage_row(turn.session, event)
    if row is not None and row.cancelled_at is None:
        return False
    set_times = Button(words.set_button(), ON_STAGE(StageView.SET, own.person_id))
    say_to(turn, person, words.late_unset(), buttons=[[set_times]])
    return True


def _say_nothing_runs(turn: Turn, person: Person) -> None:
    if not _said_unset(turn, person):
        say_to(turn, person, words.day_not_here())


def _ask_how_much(turn: Turn, person: Person) -> None:
    """With the amounts to tap, where it is plain whose day is meant."""
    days = _running_days(turn, person)
    if not days:
        _say_nothing_runs(turn, person)
        return
    keys = _amounts(days[0][0].person_id) if len(days) == 1 else []
    say_to(turn, person, words.how_late(), buttons=keys)


def _amounts(athlete: int) -> list[list[Button]]:
    return [
        [Button(words.late_button(n), LATE(athlete, n)) for n in LATE_BY],
        [Button(words.early_button(n), LATE(athlete, -n)) for n in EARLY_BY],
    ]


def tapped(turn: Act, pressed: OnStage) -> None:
    """For the athlete and for their coach."""
    found = day_of(turn, pressed.athlete)
    if found is None:
        return
    profile, event = found
    row = stage_day.stage_row(turn.session, event)
    if pressed.view is StageView.SET:
        about = context_of(turn, profile, event)
        asking.open_question(turn, turn.person, STAGE, profile.person_id, about)
    elif pressed.view is StageView.OFF:
        keys = [
            [
                Button(words.cancel_yes_button(), ON_STAGE(StageView.OFF_YES, profile.person_id)),
                Button(words.cancel_no_button(), ON_STAGE(StageView.DAY, profile.person_id)),
            ]
        ]
        rewrite(turn, words.ask_cancel(), keys)
    elif pressed.view is StageView.OFF_YES and row is not None:
        _call_off(turn, turn.person, profile, row)
    else:
        rewrite(turn, *_view(turn, turn.person, profile, event))


def late_tapped(turn: Act, pressed: Late) -> None:
    """The day runs so much later, or earlier."""
    found = day_of(turn, pressed.athlete)
    if found is not None:
        _move(turn, turn.person, *found, pressed.minutes)


def top_up_tapped(turn: Act, pressed: TopUp) -> None:
    """What the coach says to a last top-up."""
    found = day_of(turn, pressed.athlete)
    if found is not None:
        row = stage_day.stage_row(turn.session, found[1])
        stage_look.top_up(turn, turn.person, found[0], row, pressed)


def day_of(turn: Act, athlete: int) -> tuple[AthleteProfile, EventRow] | None:
    """The athlete and their event, for the two whom it concerns; else it is answered why not."""
    profile = _theirs(turn.session, turn.person, athlete)
    event = current_event(turn.session, profile.person_id) if profile is not None else None
    if profile is None or event is None:
        answer(turn, words.day_not_here())
        return None
    return profile, event


def times_given(turn: Turn, person: Person, question: OpenQuestion) -> None:
    """The day is laid out, and both see it."""
    profile = _theirs(turn.session, person, question.about)
    event = current_event(turn.session, profile.person_id) if profile is not None else None
    if profile is None or event is None or event.day.isoformat() != question.answers["_day"]:
        say_to(turn, person, words.day_not_here())
        return
    stage_day.lay_out(turn, profile, event, stage_day_of(question.answers), person)
    say_day(turn, person, profile)
    for other in others(turn.session, person, profile):
        lead = words.set_by_coach if other.id == profile.person_id else words.set_by_athlete
        say_day(turn, other, profile, lead=partial(lead, person.first_name))


def _move_or_ask(turn: Turn, person: Person, minutes: int) -> None:
    days = _running_days(turn, person)
    if not days:
        _say_nothing_runs(turn, person)
        return
    if len(days) == 1:
        _move(turn, person, *days[0], minutes)
        return
    keys = [
        [Button(name_of(turn.session, profile.person_id), LATE(profile.person_id, minutes))]
        for profile, _ in days
    ]
    say_to(turn, person, words.which_athlete(), buttons=keys)


def _move(
    turn: Turn, person: Person, profile: AthleteProfile, event: EventRow, minutes: int
) -> None:
    row = stage_day.stage_row(turn.session, event)
    if row is None or not stage_day.running(row, turn.context):
        text = words.day_over() if row is not None else words.not_set()
        say_to(turn, person, text)
        return
    stage_day.move(turn, profile, event, minutes, person)
    for reader in (person, *others(turn.session, person, profile)):
        lead = partial(words.moved, minutes, person.first_name, own=reader.id == person.id)
        say_day(turn, reader, profile, lead=lead, rest=True)


def _call_off(turn: ChatTurn, person: Person, profile: AthleteProfile, row: StageRow) -> None:
    if row.cancelled_at is None:
        stage_day.call_off(turn, profile, row, person)
        name = name_of(turn.session, profile.person_id)
        for other in others(turn.session, person, profile):
            text = (
                words.is_cancelled
                if other.id == profile.person_id
                else partial(words.coach_told_cancelled, name)
            )
            say_to(turn, other, text, how=Delivery(topic=topic(profile, other)))
    keys = [[Button(words.set_button(), ON_STAGE(StageView.SET, profile.person_id))]]
    rewrite(turn, words.is_cancelled(), keys)


def context_of(turn: Turn, profile: AthleteProfile, event: EventRow) -> Answers:
    """What the questions for the day are asked with."""
    return {
        "_day": event.day.isoformat(),
        "_zone": event.zone,
        "_wake": f"{profile.prompt_time:%H:%M}",
        "_look_before_min": stage_day.look_of(turn.session, event),
    }


def say_day(
    turn: Turn, reader: Person, profile: AthleteProfile, *, lead: Said = "", rest: bool = False
) -> None:
    """The day's times below `lead`; of the `rest` only what is still ahead."""
    event = current_event(turn.session, profile.person_id)
    assert event is not None
    with speaking_to(reader):
        text, keys = _view(turn, reader, profile, event, rest=rest)
        above = as_said(lead)
        text = f"{above}\n\n{text}" if above else text
        say_to(turn, reader, text, buttons=keys, how=Delivery(topic=topic(profile, reader)))


def topic(profile: AthleteProfile, reader: Person) -> Topic:
    """Of several messages with the day's times that have not been sent yet, only the latest is."""
    return Topic(TopicKind.STAGE_DAY, profile.person_id, reader.id)


def readers(session: Session, profile: AthleteProfile) -> list[Person]:
    """Who has the day's times: the athlete, and those who coach them with full rights."""
    people = [get_person(session, profile.person_id), *approvers(session, profile)]
    return list({person.id: person for person in people}.values())


def _view(
    turn: Turn, reader: Person, profile: AthleteProfile, event: EventRow, *, rest: bool = False
) -> tuple[str, Buttons]:
    row, id = stage_day.stage_row(turn.session, event), profile.person_id
    if row is None or row.cancelled_at is not None:
        text = words.not_set() if row is None else words.is_cancelled()
        return text, [[Button(words.set_button(), ON_STAGE(StageView.SET, id))]]
    resting = care_for(turn, profile).resting(own=reader.id == id)
    entries = [
        (entry, done)
        for entry, done in stage_day.entries_of(row)
        if (resting is None or done or entry.kind is not Kind.PUMP) and not (rest and done)
    ]
    name = name_of(turn.session, id)
    head = words.timetable_head(name, event.zone, own=reader.id == id, home_zone=profile.zone)
    text = f"{head}\n\n{words.timetable(entries, event.zone, len(row.facts['stages']))}"
    if resting is not None:
        text = f"{resting}\n\n{text}"
    keys = []
    if stage_day.running(row, turn.context):
        keys = [
            *_amounts(id),
            [
                Button(words.change_button(), ON_STAGE(StageView.SET, id)),
                Button(words.cancel_button(), ON_STAGE(StageView.OFF, id)),
            ],
        ]
    keys.append([Button(common.calendar_button(), CALENDAR_FILE(CalendarDo.GET, id))])
    return f"{text}\n\n{words.habits()}", keys


def _running_days(turn: Turn, person: Person) -> list[tuple[AthleteProfile, EventRow]]:
    """Days that this person may move, and that are under way."""
    own = profile_of(turn.session, person.id)
    found: list[tuple[AthleteProfile, EventRow]] = []
    for profile in ([own] if own is not None else []) + coached(turn.session, person):
        event = current_event(turn.session, profile.person_id)
        if event is None or profile.person_id in [p.person_id for p, _ in found]:
            continue
        row = stage_day.stage_row(turn.session, event)
        if stage_day.local_day(event, turn.context) and stage_day.running(row, turn.context):
            found.append((profile, event))
    return found


def coached(session: Session, person: Person) -> list[AthleteProfile]:
    """Whose days this person may see, where there is one."""
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


def others(session: Session, person: Person, profile: AthleteProfile) -> list[Person]:
    """Who else has the day's times."""
    return [one for one in readers(session, profile) if one.id != person.id]
