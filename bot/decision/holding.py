"""The coach holds an athlete at one figure for some days, whatever the check-ins say."""

from __future__ import annotations

from datetime import date, timedelta
from functools import partial

from sqlmodel import Session, select

from bot.core.chat.outbox import Button
from bot.core.turn import OnAthlete, Turn
from bot.decision import deciding
from bot.decision import words_holding as words
from bot.decision.buttons import HOLD_END
from bot.decision.flow_figure import HOLD, last_day
from bot.decision.signoff import words as figure_words
from bot.decision.signoff.taps import question_context, say_frozen
from bot.dialogue import asking
from bot.dialogue.flow import Answers
from bot.people.changes import Change
from bot.people.people import get_person, local_date, name_of, record
from bot.people.telling import answer, rewrite, say_to
from bot.store.base import id_of
from bot.store.tables.coach import HoldRow
from bot.store.tables.people import AthleteProfile, Person
from bot.store.tables.week import DaySetRow
from bot.week.load import Figure, Week, current_week, set_day, target_in_force
from bot.week.snapshots import running_hold, take_snapshot
from bot.words import common
from engine.values.plan import PLAN_DAYS


def ask_hold(turn: OnAthlete) -> None:
    """The card's button: what holds now, with the button to end it; else the questions."""
    answer(turn)
    today = local_date(turn.profile, turn.context)
    hold = running_hold(turn.session, turn.profile.person_id, today)
    if hold is None:
        _ask(turn, turn.person, turn.profile)
        return
    name = name_of(turn.session, turn.profile.person_id)
    self_coached = turn.self_coached
    say_to(
        turn,
        turn.person,
        words.running(name, hold.carb_g, hold.last, hold.because, self_coached=self_coached),
        buttons=[[Button(words.end_button(), HOLD_END(turn.profile.person_id))]],
    )


def hold_given(turn: Turn, coach: Person, profile: AthleteProfile, answers: Answers) -> None:
    """Hold the days from today on; each keeps the figure until the hold is over or ended."""
    if answers.get("sure") is False:
        _ask(turn, coach, profile)
        return
    athlete = get_person(turn.session, profile.person_id)
    today = local_date(profile, turn.context)
    week, last = current_week(turn.session, profile), last_day(answers)
    if week is None or last < today or last > week.event.day:
        text = figure_words.day_is_over(athlete.first_name)
        say_to(turn, coach, text)
        return
    if profile.frozen_at is not None:
        say_frozen(turn, coach, profile)
        return
    first = max(today, date.fromisoformat(answers["_first"]))
    carb_g, because = answers["carb_g"], answers.get("because", "")
    before = take_snapshot(turn, profile)
    for number in range((last - first).days + 1):
        day = first + timedelta(days=number)
        set_day(turn, profile.person_id, day, Figure(carb_g, "coach"))
    hold = HoldRow(
        athlete_id=profile.person_id, first=first, last=last, carb_g=carb_g, because=because,
        set_by=id_of(coach), set_at=turn.now,
    )  # fmt: skip
    turn.session.add(hold)
    turn.session.flush()
    self_coached = coach.id == profile.person_id
    text = words.held(athlete.first_name, carb_g, last, self_coached=self_coached)
    say_to(turn, coach, text)
    said = []
    if not self_coached:
        told = partial(words.athlete_told_held, coach.first_name, carb_g, last)
        said = [id_of(say_to(turn, athlete, told))]
    record(turn, profile.person_id, by=coach.id, what=Change.HELD(
        hold=id_of(hold), day=first.isoformat(), last=last.isoformat(), carb_g=carb_g, because=because,
        before=before, said=said,
    ))  # fmt: skip
    deciding.redecide(turn, profile, because="held")


def end_hold(turn: OnAthlete) -> None:
    """The days still held follow the plan and the check-ins again."""
    answer(turn)
    today = local_date(turn.profile, turn.context)
    hold = running_hold(turn.session, turn.profile.person_id, today)
    if hold is None:
        rewrite(turn, words.nothing_held())
        return
    athlete = get_person(turn.session, turn.profile.person_id)
    before = take_snapshot(turn, turn.profile)
    for row in _held_days(turn.session, hold, today):
        turn.session.delete(row)
    hold.ended_at = turn.now
    turn.session.add(hold)
    turn.session.flush()
    self_coached = turn.self_coached
    rewrite(turn, words.ended(athlete.first_name, self_coached=self_coached))
    said = []
    if not self_coached:
        told = partial(words.athlete_told_ended, turn.person.first_name)
        said = [id_of(say_to(turn, athlete, told))]
    record(turn, turn.profile.person_id, by=turn.person.id, what=Change.HOLD_ENDED(
        hold=id_of(hold), day=today.isoformat(), last=hold.last.isoformat(), before=before, said=said,
    ))  # fmt: skip
    deciding.redecide(turn, turn.profile, because="hold-ended")


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


def _ask(turn: Turn, coach: Person, profile: AthleteProfile) -> None:
    week, today = current_week(turn.session, profile), local_date(profile, turn.context)
    target = target_in_force(turn.session, week, today) if week is not None else None
    if week is None or target is None:
        begins = week.date_of(max(PLAN_DAYS)) if week is not None else None
        early = begins is not None and today < begins
        say_to(turn, coach, words.not_begun(begins) if early and begins else common.no_such_day())
        return
    if profile.frozen_at is not None:
        say_frozen(turn, coach, profile)
        return
    about = question_context(turn.session, coach, week, today, target.carb_g)
    asking.open_question(turn, coach, HOLD, profile.person_id, {
        **about,
        "_limits": about["_limits"] | {"load_total_g": week.limits.load_total_g},
        "_first": today.isoformat(),
        "_last": week.event.day.isoformat(),
        "_stands_g": target.carb_g,
        "_load": _load(turn.session, week),
    })  # fmt: skip


def _load(session: Session, week: Week) -> dict[str, float]:
    """The load days, each with what stands for it."""
    days = [week.date_of(days_out) for days_out in week.plan.load_days]
    targets = {day: target_in_force(session, week, day) for day in days}
    return {day.isoformat(): target.carb_g for day, target in targets.items() if target}
