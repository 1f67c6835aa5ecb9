"""The coach sets the event; what was planned for the one before comes along. And the end of a week."""

from __future__ import annotations

from datetime import date
from functools import partial

from bot.core.chat.cards import DRAFT, LEARNT, PLAN, SEASON
from bot.core.chat.outbox import Button
from bot.core.turn import OnAthlete, Turn
from bot.debrief import after_show, debrief
from bot.dialogue import asking
from bot.dialogue.flow import Answers
from bot.event import flow_asks, season
from bot.event import moving as event_moving
from bot.event import words as event_words
from bot.event.buttons import ASKS, BRIDGE
from bot.event.flow import EVENT, INSTEAD, ONE_MORE, event_zone
from bot.event.season import New
from bot.event.stage import day as stage_day
from bot.people.changes import Change
from bot.people.people import get_person, local_date, name_of, record
from bot.people.telling import say_to, tell_athlete
from bot.plan import words
from bot.plan.next_load import flow, looks
from bot.plan.next_load.learnt import something_learnt
from bot.plan.planning import days_follow_plan, event_line, has_measures, week_changed
from bot.readiness import readiness as ready
from bot.store.base import id_of
from bot.store.tables.people import AthleteProfile, Person
from bot.store.tables.week import EventRow
from bot.week import prompts
from bot.week.load import current_event, current_week, events_ahead, plan_row
from bot.week.snapshots import take_snapshot
from bot.words import common


def ask_event(turn: OnAthlete) -> None:
    """The card's button for the event."""
    if not has_measures(turn, turn.person, turn.profile):
        return
    asking.open_question(turn, turn.person, EVENT, turn.profile.person_id, {
        "_name": name_of(turn.session, turn.profile.person_id),
        "_own": turn.self_coached,
        "_zone": turn.profile.zone,
        "_ahead": _ahead(turn, turn.profile),
    })  # fmt: skip


def _ahead(turn: Turn, profile: AthleteProfile) -> list[list[object]]:
    """What the question has to know of the events whose day is still to come."""
    today = local_date(profile, turn.context)
    return [
        [row.id, row.kind, row.day.isoformat()]
        for row in events_ahead(turn.session, profile.person_id)
        if row.day >= today and not event_moving.day_is_done(turn, row)
    ]


def event_given(turn: Turn, coach: Person, profile: AthleteProfile, answers: Answers) -> None:
    """A new event: in the place of one ahead, whose plan and limits come along, or one more."""
    new = New(
        kind=answers["kind"], day=date.fromisoformat(answers["day"]), zone=event_zone(answers)
    )
    if answers.get("stands") == ONE_MORE:
        one_more(turn, coach, profile, new)
        return
    instead = _instead(turn, profile, answers.get("stands", ""), new.day)
    in_place_of(turn, coach, profile, new, instead)


def _instead(turn: Turn, profile: AthleteProfile, stands: str, day: date) -> EventRow | None:
    """Which event the new one replaces: the one named, that of the same day, or the one that counts."""
    ahead = events_ahead(turn.session, profile.person_id)
    if stands.startswith(INSTEAD):
        number = int(stands.removeprefix(INSTEAD))
        return next((row for row in ahead if row.id == number), None)
    same_day = [row for row in ahead if row.day == day]
    return same_day[0] if same_day else current_event(turn.session, profile.person_id)


def in_place_of(
    turn: Turn, coach: Person, profile: AthleteProfile, new: New, earlier: EventRow | None
) -> None:
    """The event takes the place of the earlier one; a plan and limits still ahead come along."""
    was_complete = current_week(turn.session, profile) is not None
    before = take_snapshot(turn, profile)
    event, followed, moved_from = replace_event(turn, coach, profile, new, earlier)
    said = _tell_event(turn, coach, profile, event, earlier)
    record(turn, profile.person_id, by=coach.id, what=Change.EVENT_SET(
        event=id_of(event), kind=event.kind, day=event.day.isoformat(), zone=event.zone,
        before={"event": moved_from, **before}, said=said,
        was=[earlier.kind, earlier.day.isoformat()] if earlier is not None else None,
    ))  # fmt: skip
    if event.active:
        event_moving.tell(turn, coach, profile, event, followed)
    season.choose_active(turn, profile)
    ready.schedule(turn, profile)
    days_follow_plan(turn, profile)
    week_changed(turn, coach, profile, because="plan-changed", was_complete=was_complete)


def replace_event(
    turn: Turn, coach: Person, profile: AthleteProfile, new: New, earlier: EventRow | None
) -> tuple[EventRow, event_moving.Followed, int | None]:
    """The new row in the place of the earlier one, what came along, and the row it moved from."""
    waits = earlier is not None and earlier.waits
    event = EventRow(
        athlete_id=profile.person_id, kind=new.kind, day=new.day, zone=new.zone,
        class_name=new.class_name or (earlier.class_name if earlier is not None else ""),
        asks=dict(earlier.asks) if earlier is not None and earlier.day >= turn.now.date() else {},
        active=not waits, waits=waits, set_by=id_of(coach), set_at=turn.now,
    )  # fmt: skip
    turn.session.add(event)
    turn.session.flush()
    moved = earlier is not None and earlier.day >= local_date(profile, turn.context)
    followed, moved_from = event_moving.Followed(), None
    if earlier is not None:
        earlier.active = earlier.waits = False
        if moved:
            event_moving.copy_plan_and_limits(turn.session, earlier, event)
        if moved and event_moving.day_is_done(turn, earlier):
            close_week(turn, profile, earlier)
        elif moved:
            moved_from = earlier.id
            followed = event_moving.follow(turn, profile, earlier, event)
    return event, followed, moved_from


def one_more(turn: Turn, coach: Person, profile: AthleteProfile, new: New) -> None:
    """The event joins those ahead; it counts at once only where it comes first."""
    was_complete = current_week(turn.session, profile) is not None
    counted = current_event(turn.session, profile.person_id)
    before = take_snapshot(turn, profile)
    event = season.add(turn, coach, profile, new)
    said = _tell_one_more(turn, coach, profile, event)
    record(turn, profile.person_id, by=coach.id, what=Change.EVENT_SET(
        event=id_of(event), kind=event.kind, day=event.day.isoformat(), zone=event.zone,
        before={"event": None, "counted": _id(counted), "more": True, **before}, said=said,
        was=None,
    ))  # fmt: skip
    if season.choose_active(turn, profile):
        ready.schedule(turn, profile)
        days_follow_plan(turn, profile)
        week_changed(turn, coach, profile, because="plan-changed", was_complete=was_complete)
        prompts.schedule(turn, profile)


def _id(event: EventRow | None) -> int | None:
    return event.id if event is not None else None


def _tell_one_more(
    turn: Turn, coach: Person, profile: AthleteProfile, event: EventRow
) -> list[int]:
    def line() -> str:
        return event_line(profile, event, turn.context)

    number = profile.person_id
    keys = [
        Button(common.draft_plan_button(), DRAFT(number, id_of(event))),
        Button(event_words.season_button(), SEASON(number)),
    ]
    close = season.before(turn, profile, event)
    if close is not None:
        keys[0] = Button(
            event_words.bridge_button(event_words.short(event.kind, event.day)),
            BRIDGE(number, id_of(event)),
        )
    say_to(
        turn, coach, event_words.one_more(line(), season.ahead_line(turn, profile)),
        buttons=[keys],
    )  # fmt: skip
    return tell_athlete(
        turn, coach, profile, lambda: event_words.athlete_one_more(coach.first_name, line())
    )


def _tell_event(
    turn: Turn, coach: Person, profile: AthleteProfile, event: EventRow, earlier: EventRow | None
) -> list[int]:
    """Both are told; the outbox row of the athlete's message."""
    ahead = earlier is not None and earlier.day >= local_date(profile, turn.context)
    replaced = earlier.day if earlier is not None and ahead and earlier.day != event.day else None
    moved = ahead and plan_row(turn.session, event) is not None
    next_step = (
        Button(words.see_plan_button(), PLAN(profile.person_id))
        if moved
        else Button(common.draft_plan_button(), DRAFT(profile.person_id))
    )
    learnt = Button(flow.learnt_button(), LEARNT(profile.person_id))
    say_to(
        turn,
        coach,
        words.event_set(event_line(profile, event, turn.context), replaced=replaced, moved=moved),
        buttons=[
            [next_step, *([learnt] if something_learnt(turn.session, profile) else [])],
            [Button(flow_asks.asks_button(), ASKS(profile.person_id))],
        ],
    )
    return tell_athlete(turn, coach, profile, lambda: words.athlete_told_event(
        coach.first_name, event_line(profile, event, turn.context), replaced=replaced
    ))  # fmt: skip


def close_week(turn: Turn, profile: AthleteProfile, event: EventRow) -> None:
    """To be called once the event's day has been."""
    # The last reminder of the day may still wait, where the next event is set that evening: what
    # it would say is said here.
    row = stage_day.stage_row(turn.session, event)
    stage_day.cancel_reminders(turn, profile, row, due_ones_too=True)
    looks.ask_look(turn, profile, event)
    debrief.schedule(turn, profile, event)
    person = get_person(turn.session, profile.person_id)
    if event.kind == "trial":
        say_to(turn, person, partial(event_words.event_over, event.kind))
        return
    after_show.begin(turn, profile, event)
