"""The coach sets the event; what was planned for the one before comes along."""

from __future__ import annotations

from datetime import date

from sqlmodel import Session

from bot.context import Context
from bot.flows.coach_event import EVENT, event_zone
from bot.incoming import Incoming
from bot.messages import coach_plan as words
from bot.messages import next_load as learnt_words
from bot.outbox import Button, say
from bot.service import asking, event_moving, ready
from bot.service.changes import standing_before
from bot.service.learnt import something_learnt
from bot.service.people import get_person, local_date, own_athlete, record, speaking_to
from bot.service.planning import days_follow_plan, event_line, has_measures, week_changed
from bot.service.tapping import answer
from bot.service.week import current_event, current_week, plan_row
from bot.service.week_over import close_week
from bot.store.people import AthleteProfile, OpenQuestion, Person
from bot.store.week import EventRow


def ask_event(
    session: Session,
    coach: Person,
    profile: AthleteProfile,
    _rest: list[str],
    incoming: Incoming,
    context: Context,
) -> None:
    """The card's button for the event."""
    answer(session, incoming, context)
    if not has_measures(session, coach, profile, context):
        return
    asking.open_question(
        session, coach, EVENT, context=context, subject_id=profile.person_id,
        answers={
            "_name": get_person(session, profile.person_id).first_name,
            "_own": coach.id == profile.person_id,
            "_zone": profile.zone,
        },
    )  # fmt: skip


def event_given(session: Session, coach: Person, question: OpenQuestion, context: Context) -> None:
    """A new event takes the place of the one before; a plan and limits still ahead come along."""
    profile = own_athlete(session, coach, question.subject_id or 0)
    if profile is None:
        return
    was_complete = current_week(session, profile) is not None
    earlier = current_event(session, profile.person_id)
    before = standing_before(session, profile, context)
    event = EventRow(
        athlete_id=profile.person_id,
        kind=question.answers["kind"],
        day=date.fromisoformat(question.answers["day"]),
        zone=event_zone(question.answers),
        set_by=coach.id or 0,
        set_at=context.now,
    )
    session.add(event)
    session.flush()
    moved = earlier is not None and earlier.day >= local_date(profile, context)
    followed, moved_from = event_moving.Followed(), None
    if earlier is not None:
        earlier.active = False
        session.add(earlier)
        if moved:
            event_moving.copy_plan_and_limits(session, earlier, event)
        if moved and event_moving.day_is_done(session, earlier, context):
            close_week(session, profile, earlier, context)
        elif moved:
            moved_from = earlier.id
            followed = event_moving.follow(session, profile, earlier, event, context)
    replaced = earlier.day if earlier is not None and moved and earlier.day != event.day else None
    moved = moved and plan_row(session, event) is not None
    said = _tell_event(session, coach, profile, event, context, replaced=replaced, moved=moved)
    record(
        session, profile.person_id, "event set", context, by=coach.id,
        event=event.id, kind=event.kind, day=event.day.isoformat(), zone=event.zone,
        before={"event": moved_from, **before}, said=said,
        was=[earlier.kind, earlier.day.isoformat()] if earlier is not None else None,
    )  # fmt: skip
    event_moving.tell(session, coach, profile, event, followed, context)
    ready.schedule(session, profile, context)
    days_follow_plan(session, profile, context)
    week_changed(
        session, coach, profile, context, because="plan-changed", was_complete=was_complete
    )


def _tell_event(
    session: Session,
    coach: Person,
    profile: AthleteProfile,
    event: EventRow,
    context: Context,
    *,
    replaced: date | None,
    moved: bool,
) -> list[int | None]:
    """Both are told; the outbox row of the athlete's message."""
    next_step = (
        Button(words.see_plan_button(), f"c:plan:{profile.person_id}")
        if moved
        else Button(words.draft_plan_button(), f"c:draft:{profile.person_id}")
    )
    learnt = Button(learnt_words.learnt_button(), f"c:learnt:{profile.person_id}")
    say(
        session, chat_id=coach.chat_id, now=context.now,
        text=words.event_set(
            event_line(profile, event, context), replaced=replaced, moved=moved
        ),
        buttons=[[next_step, *([learnt] if something_learnt(session, profile) else [])]],
    )  # fmt: skip
    if coach.id != profile.person_id:
        athlete = get_person(session, profile.person_id)
        with speaking_to(athlete):
            text = words.athlete_told_event(
                coach.first_name, event_line(profile, event, context), replaced=replaced
            )
            return [say(session, chat_id=athlete.chat_id, text=text, now=context.now).id]
    return []
