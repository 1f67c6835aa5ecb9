"""The coach sets the event; what was planned for the one before comes along."""

from __future__ import annotations

from datetime import date

from bot.core.callbacks import answer
from bot.core.outbox import Button
from bot.core.turn import OnAthlete, Turn
from bot.dialogue import asking
from bot.event import moving as event_moving
from bot.event.closing import close_week
from bot.event.flow import EVENT, event_zone
from bot.people.changes import Change
from bot.people.people import get_person, local_date, own_athlete, record, speaking_to
from bot.people.telling import say_to
from bot.plan import words
from bot.plan.next_load import words as learnt_words
from bot.plan.next_load.learnt import something_learnt
from bot.plan.planning import days_follow_plan, event_line, has_measures, week_changed
from bot.readiness import readiness as ready
from bot.store.base import id_of
from bot.store.tables.people import AthleteProfile, OpenQuestion, Person
from bot.store.tables.week import EventRow
from bot.week.load import current_event, current_week, plan_row
from bot.week.snapshots import standing_before
from bot.words import common


def ask_event(turn: OnAthlete) -> None:
    """The card's button for the event."""
    answer(turn)
    if not has_measures(turn, turn.person, turn.profile):
        return
    asking.open_question(
        turn, turn.person, EVENT, subject_id=turn.profile.person_id,
        answers={
            "_name": get_person(turn.session, turn.profile.person_id).first_name,
            "_own": turn.person.id == turn.profile.person_id,
            "_zone": turn.profile.zone,
        },
    )  # fmt: skip


def event_given(turn: Turn, coach: Person, question: OpenQuestion) -> None:
    """A new event takes the place of the one before; a plan and limits still ahead come along."""
    profile = own_athlete(turn.session, coach, question.about)
    if profile is None:
        return
    was_complete = current_week(turn.session, profile) is not None
    earlier = current_event(turn.session, profile.person_id)
    before = standing_before(turn, profile)
    event = EventRow(
        athlete_id=profile.person_id,
        kind=question.answers["kind"],
        day=date.fromisoformat(question.answers["day"]),
        zone=event_zone(question.answers),
        set_by=id_of(coach),
        set_at=turn.now,
    )
    turn.session.add(event)
    turn.session.flush()
    moved = earlier is not None and earlier.day >= local_date(profile, turn.context)
    followed, moved_from = event_moving.Followed(), None
    if earlier is not None:
        earlier.active = False
        turn.session.add(earlier)
        if moved:
            event_moving.copy_plan_and_limits(turn.session, earlier, event)
        if moved and event_moving.day_is_done(turn, earlier):
            close_week(turn, profile, earlier)
        elif moved:
            moved_from = earlier.id
            followed = event_moving.follow(turn, profile, earlier, event)
    replaced = earlier.day if earlier is not None and moved and earlier.day != event.day else None
    moved = moved and plan_row(turn.session, event) is not None
    said = _tell_event(turn, coach, profile, event, replaced=replaced, moved=moved)
    record(
        turn, profile.person_id, Change.EVENT_SET, by=coach.id,
        event=event.id, kind=event.kind, day=event.day.isoformat(), zone=event.zone,
        before={"event": moved_from, **before}, said=said,
        was=[earlier.kind, earlier.day.isoformat()] if earlier is not None else None,
    )  # fmt: skip
    event_moving.tell(turn, coach, profile, event, followed)
    ready.schedule(turn, profile)
    days_follow_plan(turn, profile)
    week_changed(turn, coach, profile, because="plan-changed", was_complete=was_complete)


def _tell_event(
    turn: Turn,
    coach: Person,
    profile: AthleteProfile,
    event: EventRow,
    *,
    replaced: date | None,
    moved: bool,
) -> list[int | None]:
    """Both are told; the outbox row of the athlete's message."""
    next_step = (
        Button(words.see_plan_button(), f"c:plan:{profile.person_id}")
        if moved
        else Button(common.draft_plan_button(), f"c:draft:{profile.person_id}")
    )
    learnt = Button(learnt_words.learnt_button(), f"c:learnt:{profile.person_id}")
    say_to(
        turn,
        coach,
        words.event_set(event_line(profile, event, turn.context), replaced=replaced, moved=moved),
        buttons=[[next_step, *([learnt] if something_learnt(turn.session, profile) else [])]],
    )
    if coach.id != profile.person_id:
        athlete = get_person(turn.session, profile.person_id)
        with speaking_to(athlete):
            text = words.athlete_told_event(
                coach.first_name, event_line(profile, event, turn.context), replaced=replaced
            )
            return [say_to(turn, athlete, text).id]
    return []
