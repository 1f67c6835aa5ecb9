"""The coach holds an athlete at one figure for some days, whatever the check-ins say."""

from __future__ import annotations

from datetime import date, timedelta

from sqlmodel import Session, select

from bot.context import Context
from bot.flows.coach_hold import HOLD, last_day
from bot.incoming import Incoming
from bot.messages import coach as card_words
from bot.messages import coach_holding as words
from bot.messages import coach_signoff as figure_words
from bot.outbox import Button, say
from bot.service import asking, deciding
from bot.service.changes import running_hold, standing_before
from bot.service.people import get_person, local_date, own_athlete, record, speaking_to
from bot.service.signoff_taps import question_context, say_frozen
from bot.service.tapping import answer, rewrite
from bot.service.week import Week, current_week, set_day, target_in_force
from bot.store.desk import HoldRow
from bot.store.people import AthleteProfile, OpenQuestion, Person
from bot.store.week import DaySetRow
from engine.plan import LOAD_DAYS, PLAN_DAYS


def ask_hold(
    session: Session,
    coach: Person,
    profile: AthleteProfile,
    _rest: list[str],
    incoming: Incoming,
    context: Context,
) -> None:
    """The card's button: what holds now, with the button to end it; else the questions."""
    answer(session, incoming, context)
    today = local_date(profile, context)
    hold = running_hold(session, profile.person_id, today)
    if hold is None:
        _ask(session, coach, profile, context)
        return
    name = get_person(session, profile.person_id).first_name
    own = coach.id == profile.person_id
    say(
        session, chat_id=coach.chat_id, now=context.now,
        text=words.running(name, hold.carb_g, hold.last, hold.because, own=own),
        buttons=[[Button(words.end_button(), f"c:hold-end:{profile.person_id}")]],
    )  # fmt: skip


def hold_given(session: Session, coach: Person, question: OpenQuestion, context: Context) -> None:
    """Hold the days from today on; each keeps the figure until the hold is over or ended."""
    profile = own_athlete(session, coach, question.subject_id or 0)
    if profile is None:
        say(session, chat_id=coach.chat_id, text=card_words.not_your_athlete(), now=context.now)
        return
    answers = question.answers
    if answers.get("sure") is False:
        _ask(session, coach, profile, context)
        return
    athlete = get_person(session, profile.person_id)
    today = local_date(profile, context)
    week, last = current_week(session, profile), last_day(answers)
    if week is None or last < today or last > week.event.day:
        text = figure_words.day_is_over(athlete.first_name)
        say(session, chat_id=coach.chat_id, text=text, now=context.now)
        return
    if profile.frozen_at is not None:
        say_frozen(session, coach, profile, context)
        return
    first = max(today, date.fromisoformat(answers["_first"]))
    carb_g, because = answers["carb_g"], answers.get("because", "")
    before = standing_before(session, profile, context)
    for number in range((last - first).days + 1):
        day = first + timedelta(days=number)
        set_day(session, profile.person_id, day, carb_g, by="coach", context=context)
    hold = HoldRow(
        athlete_id=profile.person_id, first=first, last=last, carb_g=carb_g, because=because,
        set_by=coach.id or 0, set_at=context.now,
    )  # fmt: skip
    session.add(hold)
    session.flush()
    own = coach.id == profile.person_id
    text = words.held(athlete.first_name, carb_g, last, own=own)
    say(session, chat_id=coach.chat_id, text=text, now=context.now)
    said = []
    if not own:
        with speaking_to(athlete):
            text = words.athlete_told_held(coach.first_name, carb_g, last)
            said = [say(session, chat_id=athlete.chat_id, text=text, now=context.now).id]
    record(
        session, profile.person_id, "held", context, by=coach.id, hold=hold.id,
        day=first.isoformat(), last=last.isoformat(), carb_g=carb_g, because=because,
        before=before, said=said,
    )  # fmt: skip
    deciding.redecide(session, profile, context=context, because="held")


def end_hold(
    session: Session,
    coach: Person,
    profile: AthleteProfile,
    _rest: list[str],
    incoming: Incoming,
    context: Context,
) -> None:
    """The days still held follow the plan and the check-ins again."""
    answer(session, incoming, context)
    today = local_date(profile, context)
    hold = running_hold(session, profile.person_id, today)
    if hold is None:
        rewrite(session, incoming, words.nothing_held(), context)
        return
    athlete = get_person(session, profile.person_id)
    before = standing_before(session, profile, context)
    for row in _held_days(session, hold, today):
        session.delete(row)
    hold.ended_at = context.now
    session.add(hold)
    session.flush()
    own = coach.id == profile.person_id
    rewrite(session, incoming, words.ended(athlete.first_name, own=own), context)
    said = []
    if not own:
        with speaking_to(athlete):
            text = words.athlete_told_ended(coach.first_name)
            said = [say(session, chat_id=athlete.chat_id, text=text, now=context.now).id]
    record(
        session, profile.person_id, "hold ended", context, by=coach.id, hold=hold.id,
        day=today.isoformat(), last=hold.last.isoformat(), before=before, said=said,
    )  # fmt: skip
    deciding.redecide(session, profile, context=context, because="hold-ended")


def _held_days(session: Session, hold: HoldRow, today: date) -> list[DaySetRow]:
    """The days to come that are still as the hold set them."""
    query = select(DaySetRow).where(
        DaySetRow.athlete_id == hold.athlete_id,
        DaySetRow.by == "coach",
        DaySetRow.carb_g == hold.carb_g,
        DaySetRow.date >= max(today, hold.first),
        DaySetRow.date <= hold.last,
    )
    return list(session.exec(query))


def _ask(session: Session, coach: Person, profile: AthleteProfile, context: Context) -> None:
    week, today = current_week(session, profile), local_date(profile, context)
    target = target_in_force(session, week, today) if week is not None else None
    if week is None or target is None:
        begins = week.date_of(max(PLAN_DAYS)) if week is not None else None
        early = begins is not None and today < begins
        text = words.not_begun(begins) if early and begins else card_words.no_such_day()
        say(session, chat_id=coach.chat_id, text=text, now=context.now)
        return
    if profile.frozen_at is not None:
        say_frozen(session, coach, profile, context)
        return
    about = question_context(session, coach, week, today, target.carb_g)
    limits = about["_limits"] | {"load_total_g": week.limits.load_total_g}
    asking.open_question(
        session, coach, HOLD, context=context, subject_id=profile.person_id,
        answers=about | {
            "_limits": limits,
            "_first": today.isoformat(),
            "_last": week.event.day.isoformat(),
            "_stands_g": target.carb_g,
            "_load": _load(session, week),
        },
    )  # fmt: skip


def _load(session: Session, week: Week) -> dict[str, float]:
    """The load days, each with what stands for it."""
    days = [week.date_of(days_out) for days_out in LOAD_DAYS]
    targets = {day: target_in_force(session, week, day) for day in days}
    return {day.isoformat(): target.carb_g for day, target in targets.items() if target}
