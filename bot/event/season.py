"""Several events ahead of one athlete: which of them counts, what follows once one is over, the views.

One event counts at a time; the others wait with their own plans and limits. It is the earliest,
unless a week is running and the earlier one cannot be followed yet.
"""

from __future__ import annotations

from dataclasses import asdict, dataclass
from datetime import date, time, timedelta

from sqlmodel import col, select

from bot.core.chat.cards import CARD, DRAFT, EVENT, PLAN, SEASON, OfEvent
from bot.core.chat.outbox import Button, Buttons, Delivery
from bot.core.timing import agenda, instants
from bot.core.timing.agenda import Subject
from bot.core.turn import OnAthlete, Turn
from bot.event import words as event_words
from bot.event.buttons import ASKS, BRIDGE, SEASON_OFF, SEASON_OUT
from bot.people.changes import Change
from bot.people.people import (
    get_person,
    is_own_coach,
    local_date,
    name_of,
    others_coaching,
    profile_of,
    record,
)
from bot.people.telling import ask_sure, rewrite, say_to
from bot.plan.planning import event_line
from bot.readiness import readiness as ready
from bot.store.base import id_of
from bot.store.tables.people import AthleteProfile, AthleteStatus, HistoryRow, Person
from bot.store.tables.traffic import AgendaRow
from bot.store.tables.week import EventRow
from bot.week import prompts
from bot.week.load import current_event, event_ahead, events_ahead, limits_row, plan_row
from bot.week.prompts import subject
from bot.words.common import keep_it_button, step_back_button
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
    first.active, first.waits = True, False
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
        turn.session.flush()
    take_over(turn, profile)


def take_out(turn: Turn, coach: Person, profile: AthleteProfile, event: EventRow) -> None:
    """An event that waits is taken out of the season; what was planned for it stays in the history."""
    event.waits = False
    entry = Change.EVENT_REMOVED(event=id_of(event), kind=event.kind, day=event.day.isoformat())
    record(turn, profile.person_id, entry, by=coach.id)
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
        agenda.put_in_rank(
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
        return [[Button(event_words.season_button(), SEASON(profile.person_id))]]

    say_to(
        turn,
        athlete,
        lambda: event_words.athlete_next(
            line(), planned=planned, close=close, asked=asked, self_coached=self_coached
        ),
        buttons=keys if self_coached else (),
    )
    for coach in others_coaching(turn.session, profile):
        say_to(
            turn,
            coach,
            lambda: event_words.coach_next(athlete.first_name, line(), planned=planned),
            buttons=keys,
            how=Delivery(silent=planned),
        )


def waiting(turn: Turn, profile: AthleteProfile) -> list[EventRow]:
    """The events behind the one that counts, by day."""
    counts = current_event(turn.session, profile.person_id)
    return [
        row for row in events_ahead(turn.session, profile.person_id)
        if counts is None or row.id != counts.id
    ]  # fmt: skip


def ahead_line(turn: Turn, profile: AthleteProfile) -> str:
    """One line for all of them; "" where there is none."""
    return event_words.ahead(
        [event_words.short(row.kind, row.day, row.class_name) for row in waiting(turn, profile)]
    )


def show(turn: OnAthlete) -> None:
    """Each event ahead with what is set for it."""
    rewrite(turn, *_view(turn))


def ask_remove(turn: OnAthlete, pressed: OfEvent) -> None:
    """It is taken out by a second tap."""
    event = named(turn, pressed)
    if event is None or not event.waits:
        _again(turn, event_words.not_there())
        return
    number = turn.profile.person_id
    ask_sure(
        turn,
        turn.person,
        event_words.ask_remove(event_words.short(event.kind, event.day, event.class_name)),
        Button(event_words.remove_yes_button(), SEASON_OUT(number, id_of(event))),
        Button(keep_it_button(), SEASON(number)),
    )


def remove(turn: OnAthlete, pressed: OfEvent) -> None:
    event = named(turn, pressed)
    if event is None or not event.waits:
        _again(turn, event_words.not_there())
        return
    take_out(turn, turn.person, turn.profile, event)
    _again(turn, event_words.removed(event_words.short(event.kind, event.day, event.class_name)))


def named(turn: OnAthlete, pressed: OfEvent) -> EventRow | None:
    """The event ahead that a button names."""
    if pressed.event is None:
        return None
    return event_ahead(turn.session, turn.profile.person_id, pressed.event)


def _again(turn: OnAthlete, lead: str) -> None:
    text, buttons = _view(turn)
    rewrite(turn, f"{lead}\n\n{text}", buttons)


def _view(turn: OnAthlete) -> tuple[str, Buttons]:
    profile, number = turn.profile, turn.profile.person_id
    rows = events_ahead(turn.session, number)
    counts = current_event(turn.session, number)
    text = event_words.view(
        name_of(turn.session, number),
        [_line(turn, profile, row) for row in rows],
        self_coached=turn.person.id == number,
    )
    buttons: list[list[Button]] = []
    for row in rows:
        said = event_words.short(row.kind, row.day)
        line = [Button(event_words.plan_button(said), PLAN(number, id_of(row)))]
        if plan_row(turn.session, row) is None:
            close = before(turn, profile, row)
            begin = DRAFT if close is None else BRIDGE
            label = (
                event_words.plan_button(said) if close is None else event_words.bridge_button(said)
            )
            line = [Button(label, begin(number, id_of(row)))]
        line.append(Button(event_words.asks_button(said), ASKS(number, id_of(row))))
        if counts is None or row.id != counts.id:
            line.append(Button(event_words.remove_button(said), SEASON_OFF(number, id_of(row))))
        buttons.append(line)
    buttons.append(
        [Button(event_words.add_button(), EVENT(number)), Button(step_back_button(), CARD(number))]
    )
    return text, buttons


def _line(turn: OnAthlete, profile: AthleteProfile, row: EventRow) -> str:
    has_plan = plan_row(turn.session, row) is not None
    planned = has_plan and limits_row(turn.session, row) is not None
    line = event_line(profile, row, turn.context)
    said = f"{line} ({row.class_name})" if row.class_name else line
    return event_words.entry(said, planned=planned, has_plan=has_plan)
