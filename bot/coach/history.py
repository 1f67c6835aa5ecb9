"""What was set for a day and what changed it; and the last change taken back."""

from __future__ import annotations

from datetime import date, datetime, timedelta
from functools import partial
from zoneinfo import ZoneInfo

from sqlmodel import Session, col, select

from bot.alerts import notes
from bot.coach import flow_history
from bot.coach.buttons import ANOTHER_DAY, HISTORY, OfDay
from bot.coach.flow_history import HISTORY_DAY
from bot.core.chat.cards import CARD, UNDO
from bot.core.chat.outbox import TEXT_LIMIT, Button, Buttons, units
from bot.core.turn import OnAthlete, Turn
from bot.dialogue import asking
from bot.dialogue.flow import Answers
from bot.people.changes import KINDS
from bot.people.people import approvers, get_person, local_date, name_of, profile_of
from bot.people.telling import rewrite, say_to
from bot.store.tables.people import AthleteProfile, HistoryRow, Person
from bot.week.load import current_event, current_plan, day_set
from bot.words import common, figures

# A figure is set for days of the event's week, so what concerns a day is not older than this.
CONCERNS_FOR = timedelta(days=60)
UNITS = TEXT_LIMIT - 300  # UTF-16 units for the lines


def show_history(turn: OnAthlete, pressed: OfDay) -> None:
    """A day, in the place of the message that was tapped."""
    day = pressed.day or local_date(turn.profile, turn.context)
    rewrite(turn, *_view(turn.session, turn.profile, day))


def ask_day(turn: OnAthlete) -> None:
    """The button for any other day."""
    asking.open_question(turn, turn.person, HISTORY_DAY, turn.profile.person_id, {
        "_zone": turn.profile.zone or "UTC",
    })  # fmt: skip


def day_given(turn: Turn, coach: Person, profile: AthleteProfile, answers: Answers) -> None:
    text, buttons = _view(turn.session, profile, date.fromisoformat(answers["day"]))
    say_to(turn, coach, text, buttons=buttons)


def in_words(row: HistoryRow, profile: AthleteProfile) -> str:
    return KINDS[row.what].told(row.detail, volume_unit=profile.volume_unit)


def who(session: Session, row: HistoryRow) -> str:
    return name_of(session, row.by_id) if row.by_id else flow_history.brimline()


def when(row: HistoryRow, profile: AthleteProfile) -> str:
    return figures.moment_in(row.at, profile.zone)


def _view(session: Session, profile: AthleteProfile, day: date) -> tuple[str, Buttons]:
    event = current_event(session, profile.person_id)
    days_out = (event.day - day).days if event is not None else None
    name = name_of(session, profile.person_id)
    rows = [
        flow_history.line(when(row, profile), who(session, row), in_words(row, profile))
        for row in _rows(session, profile, day)
    ]
    text = "\n\n".join(
        [flow_history.head(name, day, days_out), _in_force(session, profile, day), _fitting(rows)]
    )
    number = profile.person_id
    earlier, later = day - timedelta(days=1), day + timedelta(days=1)
    return text, [
        [
            Button(common.earlier_button(earlier), HISTORY(number, earlier)),
            Button(common.later_button(later), HISTORY(number, later)),
        ],
        [
            Button(flow_history.another_day_button(), ANOTHER_DAY(number)),
            Button(flow_history.undo_button(), UNDO(number)),
        ],
        [Button(common.back_button(), CARD(number))],
    ]


def _in_force(session: Session, profile: AthleteProfile, day: date) -> str:
    event = current_event(session, profile.person_id)
    plan = current_plan(session, event) if event is not None else None
    planned = plan.day((event.day - day).days) if event is not None and plan is not None else None
    row = day_set(session, profile.person_id, day)
    if row is not None:
        return flow_history.in_force(row.carb_g, planned.carb_g if planned else None, row.by)
    return (
        flow_history.as_planned(planned.carb_g)
        if planned is not None
        else flow_history.nothing_set()
    )


def _rows(session: Session, profile: AthleteProfile, day: date) -> list[HistoryRow]:
    """What happened on that day where the athlete is, and what was set for it before or after."""
    zone = ZoneInfo(profile.zone or "UTC")
    begin = datetime(day.year, day.month, day.day, tzinfo=zone)
    query = (
        select(HistoryRow)
        .where(
            HistoryRow.athlete_id == profile.person_id,
            HistoryRow.at >= begin - CONCERNS_FOR,
            HistoryRow.at < begin + CONCERNS_FOR,
        )
        .order_by(col(HistoryRow.at), col(HistoryRow.id))
    )
    return [
        row
        for row in session.exec(query)
        if row.at.astimezone(zone).date() == day or _concerns(row, day)
    ]


def _concerns(row: HistoryRow, day: date) -> bool:
    first, last = row.detail.get("day"), row.detail.get("last")
    if last is not None and first is not None:
        return bool(first <= day.isoformat() <= last)
    return bool(first == day.isoformat())


def _fitting(rows: list[str]) -> str:
    """All the lines; where they would not fit a message, the newest, with how many are left out."""
    if not rows:
        return flow_history.nothing_happened()
    shown = list(rows)
    while units("\n".join(shown)) > UNITS:
        shown.pop(0)
    left_out = len(rows) - len(shown)
    return "\n".join([*([flow_history.cut(left_out)] if left_out else []), *shown])


def note_to_others(turn: Turn, by: Person, noted: list[HistoryRow]) -> None:
    """What this person has just changed, noted silently to whoever else coaches those athletes."""
    for row in noted:
        profile = profile_of(turn.session, row.athlete_id)
        if row.by_id != by.id or profile is None:
            continue
        athlete = get_person(turn.session, profile.person_id)
        for other in approvers(turn.session, profile):
            if other.id in (by.id, athlete.id):
                continue
            text = partial(_changed, row, profile, athlete.first_name, by.first_name)
            notes.tell(turn, other, profile.person_id, text)


def _changed(row: HistoryRow, profile: AthleteProfile, name: str, by: str) -> str:
    return flow_history.changed_by(name, by, in_words(row, profile))
