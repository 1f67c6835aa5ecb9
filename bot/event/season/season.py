"""Several events ahead of one athlete: which of them counts, and what follows once one is over.

One event counts at a time; the others wait with their own plans and limits. It is the earliest,
unless a week is running and the earlier one cannot be followed yet.
"""

from __future__ import annotations

from dataclasses import asdict, dataclass
from datetime import date, time, timedelta

from sqlmodel import col, select

from bot.core.chat.cards import SEASON
from bot.core.chat.outbox import Button, Buttons, Delivery
from bot.core.timing import agenda, instants
from bot.core.timing.agenda import Subject
from bot.core.turn import Turn
from bot.event.season import words
from bot.people.changes import Change
from bot.people.people import get_person, is_own_coach, local_date, profile_of, record
from bot.people.rights import others_coaching
from bot.people.telling import say_to
from bot.plan.planning import event_line
from bot.readiness import readiness as ready
from bot.store.base import id_of
from bot.store.tables.people import AthleteProfile, AthleteStatus, HistoryRow, Person
from bot.store.tables.traffic import AgendaRow
from bot.store.tables.week import EventRow
from bot.week import prompts
from bot.week.load import current_event, events_ahead, limits_row, plan_row
from bot.week.prompts import subject
from engine.planning.drafting.bridge import is_bridge
from engine.values.plan import PLAN_DAYS

TAKE_OVER = "season"
#: After the week's own end, which falls due at the same instant.
_LAST = 9


@dataclass(frozen=True, slots=True, kw_only=True)
class New:
    """An event as it is to be. `class_name`: the coach's words for the class, "" where unsaid."""

    kind: str
    day: date
    zone: str
    class_name: str = ""


def add(turn: Turn, coach: Person, profile: AthleteProfile, new: New) -> EventRow:
    """One more event, which waits until `choose_active` finds that it comes first."""
    event = EventRow(
        athlete_id=profile.person_id, **asdict(new),
        active=False, waits=True, set_by=id_of(coach), set_at=turn.now,
    )  # fmt: skip
    turn.session.add(event)
    turn.session.flush()
    return event


def choose_active(turn: Turn, profile: AthleteProfile) -> bool:
    """Let the event count whose turn it is; whether that is another one than before."""
    today = local_date(profile, turn.context)
    counts = current_event(turn.session, profile.person_id)
    rows = [row for row in events_ahead(turn.session, profile.person_id) if row.day >= today]
    _watch(turn, profile, rows)
    if not rows or (counts is not None and counts.day < today):
        return False  # an event that was yesterday has its morning after first
    first = rows[0]
    if counts is not None and (first is counts or _runs(turn, counts, today, before=first)):
        return False
    if counts is not None:
        counts.active, counts.waits = False, True
        turn.session.add(counts)
    first.active, first.waits = True, False
    turn.session.add(first)
    turn.session.flush()
    _watch(turn, profile, rows)
    return True


def choose_active_of_planned(turn: Turn, planned: list[HistoryRow]) -> None:
    """An event that has got its plan and limits may come first now."""
    for row in planned:
        profile = profile_of(turn.session, row.athlete_id)
        if profile is not None and choose_active(turn, profile):
            prompts.schedule(turn, profile)
            ready.schedule(turn, profile)


def take_over(turn: Turn, profile: AthleteProfile) -> EventRow | None:
    """The one before is over: the next counts, and both are told; None where there is none."""
    today = local_date(profile, turn.context)
    for row in events_ahead(turn.session, profile.person_id):
        if row.waits and row.day < today:
            row.waits = False
            turn.session.add(row)
    turn.session.flush()
    if not choose_active(turn, profile):
        return None
    event = current_event(turn.session, profile.person_id)
    assert event is not None
    first = prompts.schedule(turn, profile)
    ready.schedule(turn, profile)
    _tell(turn, profile, event, asked=first is not None)
    return event


def due(turn: Turn, duty: AgendaRow) -> None:
    """The morning after an event that never had a whole week: the next one takes over all the same."""
    profile = profile_of(turn.session, Subject.ATHLETE.of(duty))
    if profile is None or profile.status == AthleteStatus.ENDED:
        return
    counts = current_event(turn.session, profile.person_id)
    if counts is not None and counts.day < duty.local_date:
        counts.active = False
        turn.session.add(counts)
        turn.session.flush()
    take_over(turn, profile)


def remove(turn: Turn, coach: Person, profile: AthleteProfile, event: EventRow) -> None:
    """An event that waits is taken out of the season; what was planned for it stays in the history."""
    event.waits = False
    turn.session.add(event)
    turn.session.flush()
    record(
        turn, profile.person_id, Change.EVENT_REMOVED, by=coach.id,
        event=event.id, kind=event.kind, day=event.day.isoformat(),
    )  # fmt: skip
    choose_active(turn, profile)


def before(turn: Turn, profile: AthleteProfile, event: EventRow) -> EventRow | None:
    """The event ahead, or just over, that this one follows as closely as to need a bridge."""
    rows = [*events_ahead(turn.session, profile.person_id), *_over(turn, profile, event.day)]
    near = [row for row in rows if row.kind != "trial" and is_bridge(row.day, event.day)]
    return max(near, key=lambda row: row.day, default=None)


def _over(turn: Turn, profile: AthleteProfile, day: date) -> list[EventRow]:
    """Events whose day has been and that had a plan, as far back as a bridge may reach."""
    rows = turn.session.exec(
        select(EventRow).where(
            EventRow.athlete_id == profile.person_id,
            col(EventRow.active).is_(False),
            col(EventRow.waits).is_(False),
            EventRow.day < min(day, local_date(profile, turn.context)),
        )
    )
    return [row for row in rows if plan_row(turn.session, row) is not None]


def _runs(turn: Turn, counts: EventRow, today: date, *, before: EventRow) -> bool:
    """Whether its week is under way, and the one that would come before it is not planned yet."""
    running = (counts.day - today).days <= max(PLAN_DAYS) and _planned(turn, counts)
    return running and not _planned(turn, before)


def _planned(turn: Turn, event: EventRow) -> bool:
    return plan_row(turn.session, event) is not None and limits_row(turn.session, event) is not None


def _watch(turn: Turn, profile: AthleteProfile, rows: list[EventRow]) -> None:
    """The morning after each event that another one follows."""
    agenda.cancel(turn.session, subject=subject(profile), kinds=[TAKE_OVER])
    for row in rows[:-1]:
        after = row.day + timedelta(days=1)
        agenda.put(
turn.session,
agenda.Named(subject(profile), after, TAKE_OVER),
rank=_LAST,
due_at=instants.local_instant(
                after, profile.prompt_time or time(7), profile.zone or row.zone
            ),
)  # fmt: skip


def _tell(turn: Turn, profile: AthleteProfile, event: EventRow, *, asked: bool) -> None:
    athlete = get_person(turn.session, profile.person_id)
    self_coached, planned = is_own_coach(profile), _planned(turn, event)
    close = before(turn, profile, event) is not None

    def line() -> str:
        return event_line(profile, event, turn.context)

    def keys() -> Buttons:
        return [[Button(words.season_button(), SEASON(profile.person_id))]]

    say_to(
        turn,
        athlete,
        lambda: words.athlete_next(
            line(), planned=planned, close=close, asked=asked, self_coached=self_coached
        ),
        buttons=keys if self_coached else (),
    )
    for coach in others_coaching(turn.session, profile):
        say_to(
            turn,
            coach,
            lambda: words.coach_next(athlete.first_name, line(), planned=planned),
            buttons=keys,
            how=Delivery(silent=planned),
        )
