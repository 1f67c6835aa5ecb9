"""`/stage` for athlete and coach: the timetable, delays, and what falls due of it."""

from __future__ import annotations

from datetime import timedelta
from zoneinfo import ZoneInfo

from sqlmodel import Session

from bot.context import Context
from bot.flows.stage import LOOK, STAGE, stage_day_of
from bot.incoming import Incoming
from bot.languages import language
from bot.messages import food_day as food_words
from bot.messages import stage as words
from bot.messages import stage_entries as entries
from bot.outbox import Button, Buttons, say
from bot.service import asking, stage_day
from bot.service.food_day import day_row
from bot.service.food_list import food_of, rows_of
from bot.service.people import (
    athletes_of,
    get_person,
    own_athlete,
    profile_of,
    record,
    speaking_to,
)
from bot.service.tapping import answer, rewrite
from bot.service.week import athlete_of, current_event, current_limits
from bot.store.people import AthleteProfile, OpenQuestion, Person
from bot.store.stage import StageRow
from bot.store.traffic import AgendaRow
from bot.store.week import EventRow
from engine.checkin import Gut
from engine.delays import parse_delay
from engine.evidence.staging import LOOK_USELESS_MIN
from engine.stage_day import Entry, Kind
from engine.stage_look import last_choice

LATE_BY = (15, 30, 60)
EARLY_BY = (15, 30)


def show(session: Session, person: Person, rest: str, context: Context) -> None:
    """`/stage`: the own day; for a coach a button an athlete with an event, or the one there is."""
    own = profile_of(session, person.id)
    if own is not None and current_event(session, own.person_id) is not None:
        _say_day(session, person, own, context)
        return
    found = _coached(session, person)
    if len(found) == 1:
        _say_day(session, person, found[0], context)
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
        _top_up(session, person, profile, row, rest, incoming, context)
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
    _say_day(session, person, profile, context)
    other = _other(session, person, profile)
    if other is not None:
        with speaking_to(other):
            lead = (
                words.set_by_coach(person.first_name)
                if other.id == profile.person_id
                else words.set_by_athlete(person.first_name)
            )
            _say_day(session, other, profile, context, lead=lead)


def remind(session: Session, duty: AgendaRow, context: Context) -> None:
    """What falls due of the timetable, said once; stale or overtaken reminders are not said."""
    row = session.get(StageRow, duty.payload.get("stage_day", 0))
    profile = profile_of(session, row.athlete_id) if row is not None else None
    event = current_event(session, profile.person_id) if profile is not None else None
    if row is None or profile is None or event is None or event.id != row.event_id:
        return
    if row.cancelled_at is not None:
        return
    entry = stage_day.settle(session, row, duty.payload["key"])
    if entry is None or context.now - duty.due_at > stage_day.STALE_AFTER:
        return
    athlete = get_person(session, profile.person_id)
    if entry.kind is Kind.LOOK:
        asking.open_question(
            session, athlete, LOOK, context=context, subject_id=profile.person_id,
            answers={"_stage_day": row.id},
        )  # fmt: skip
        return
    text = entries.reminder(
        entry, len(row.facts["stages"]), event.zone, _food(session, profile, event, entry, context)
    )
    say(
        session, chat_id=athlete.chat_id, text=text, now=context.now,
        dedupe=f"stage:{row.id}:{entry.key}",
    )  # fmt: skip


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
    with speaking_to(coach):
        keys: Buttons = ()
        told = words.look_result(choice.rule, choice.grams)
        if waits:
            told = words.coach_asked(choice.grams)
            keys = [
                [
                    Button(
                        words.top_up_button(choice.grams),
                        f"st:top:{profile.person_id}:{question.id}:{choice.grams:g}",
                    ),
                    Button(words.no_top_up_button(), f"st:top:{profile.person_id}:{question.id}:0"),
                ]
            ]
        say(
            session, chat_id=coach.chat_id, now=context.now, buttons=keys,
            text=words.coach_look(person.first_name, full, sharp, gut, told),
        )  # fmt: skip


def _top_up(
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
        profile.coach_id != coach.id
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
    limits = current_limits(session, event, athlete_of(profile)) if event is not None else None
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
    athlete = get_person(session, profile.person_id)
    with speaking_to(athlete):
        text = (
            words.approved(coach.first_name, choice.grams)
            if wanted
            else words.declined(coach.first_name)
        )
        say(session, chat_id=athlete.chat_id, text=text, now=context.now)


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
    for reader in (person, _other(session, person, profile)):
        if reader is not None:
            with speaking_to(reader):
                lead = words.moved(minutes, person.first_name, own=reader.id == person.id)
                _say_day(session, reader, profile, context, lead=lead)


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
        other = _other(session, person, profile)
        if other is not None:
            name = get_person(session, profile.person_id).first_name
            with speaking_to(other):
                text = (
                    words.is_cancelled()
                    if other.id == profile.person_id
                    else words.coach_told_cancelled(name)
                )
                say(session, chat_id=other.chat_id, text=text, now=context.now)
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


def _say_day(
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
        topic=f"stage-day:{profile.person_id}:{reader.id}",
    )  # fmt: skip


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
    text = words.timetable(
        get_person(session, id).first_name, stage_day.entries_of(row), event.zone,
        len(row.facts["stages"]), own=reader.id == id, home_zone=profile.zone,
    )  # fmt: skip
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
    return f"{text}\n\n{words.habits()}", keys


def _food(
    session: Session, profile: AthleteProfile, event: EventRow, entry: Entry, context: Context
) -> str:
    """What the day's own menu has for this meal, where the athlete has made one."""
    if entry.kind not in (Kind.MEAL, Kind.LAST_MEAL):
        return ""
    menu = day_row(session, profile.person_id, event.day, context).meals
    if not menu:
        return ""
    local = entry.at.astimezone(ZoneInfo(event.zone))
    nearest = min(
        menu, key=lambda meal: abs(_minutes(meal["at"]) - (local.hour * 60 + local.minute))
    )
    foods = {str(row.id): food_of(row) for row in rows_of(session, profile.person_id)}
    portions = [
        food_words.amount(foods[id], steps * foods[id].step_g)
        for id, steps in nearest["portions"].items()
        if id in foods
    ]
    return entries.food_hint("; ".join(portions)) if portions else ""


def _minutes(clock: str) -> int:
    hours, minutes = clock.split(":")
    return int(hours) * 60 + int(minutes)


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
        for profile in athletes_of(session, person)
        if current_event(session, profile.person_id) is not None
    ]


def _theirs(session: Session, person: Person, athlete_id: int) -> AthleteProfile | None:
    """The athlete's profile for the athlete and for their coach; None for everybody else."""
    if person.id == athlete_id:
        return profile_of(session, athlete_id)
    return own_athlete(session, person, athlete_id)


def _other(session: Session, person: Person, profile: AthleteProfile) -> Person | None:
    """The other one of athlete and coach; None for somebody who is both."""
    if profile.coach_id == profile.person_id:
        return None
    return get_person(
        session, profile.coach_id if person.id == profile.person_id else profile.person_id
    )
