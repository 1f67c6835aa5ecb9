"""The coach says what an event asks for: its look, and a weigh-in that the forecast looks ahead to."""

from __future__ import annotations

from datetime import date, timedelta
from typing import Any

from sqlmodel import Session

from bot.alerts import alerts
from bot.core.callbacks import answer, rewrite
from bot.core.cards import CARD
from bot.core.outbox import Button
from bot.core.turn import OnAthlete, Turn
from bot.dialogue import asking
from bot.event import words_asks as words
from bot.event.buttons import ASKS_LOOK, ASKS_WEIGH_IN
from bot.event.flow_asks import TARGET_LOOK, USUAL, WEIGH_IN, weigh_in_of
from bot.people.changes import Change
from bot.people.people import get_person, local_date, own_athlete, record
from bot.people.telling import say_to
from bot.plan import words as plan_words
from bot.plan.planning import event_line
from bot.store.tables.people import AthleteProfile, OpenQuestion, Person
from bot.store.tables.week import CheckInRow, EventRow
from bot.week.load import (
    Week,
    athlete_of,
    baseline_of,
    checkin_of,
    current_event,
    current_week,
    event_of,
    history_before,
    target_of,
    weigh_in_row,
)
from engine.planning.weigh_in import OnScale, Standing, making, on_scale, with_today


def show(turn: OnAthlete) -> None:
    """What the event asks for, with what is likely on the scale."""
    answer(turn)
    event = current_event(turn.session, turn.profile.person_id)
    if event is None:
        say_to(turn, turn.person, plan_words.event_first())
        return
    number = turn.profile.person_id
    rewrite(
        turn, _view(turn, turn.profile, event),
        [
            [
                Button(words.look_button(), ASKS_LOOK(number)),
                Button(words.weigh_in_button(), ASKS_WEIGH_IN(number)),
            ],
            [Button(plan_words.back_button(), CARD(number))],
        ],
    )  # fmt: skip


def _view(turn: Turn, profile: AthleteProfile, event: EventRow) -> str:
    week = current_week(turn.session, profile)
    weigh_in = weigh_in_row(event)
    line = ""
    if weigh_in is not None:
        day = event.day - timedelta(days=weigh_in.days_out)
        line = words.weigh_in_line(weigh_in, day, profile.weight_unit)
        said = _foreseen(turn, profile, week) if week is not None else ""
        line = f"{line}\n{said}" if said else line
    return words.view(event_line(profile, event, turn.context), target_of(event), line)


def ask_look(turn: OnAthlete) -> None:
    answer(turn)
    if current_event(turn.session, turn.profile.person_id) is None:
        say_to(turn, turn.person, plan_words.event_first())
        return
    asking.open_question(turn, turn.person, TARGET_LOOK, subject_id=turn.profile.person_id)


def look_given(turn: Turn, coach: Person, question: OpenQuestion) -> None:
    given = question.answers["look"]
    look = None if given == USUAL else {**given, "words": question.answers.get("words", "")}
    _keep(turn, coach, question, "look", look)


def ask_weigh_in(turn: OnAthlete) -> None:
    answer(turn)
    if current_event(turn.session, turn.profile.person_id) is None:
        say_to(turn, turn.person, plan_words.event_first())
        return
    asking.open_question(
        turn, turn.person, WEIGH_IN, subject_id=turn.profile.person_id,
        answers={
            "_weight_unit": turn.profile.weight_unit, "_height_cm": turn.profile.height_cm,
        },
    )  # fmt: skip


def weigh_in_given(turn: Turn, coach: Person, question: OpenQuestion) -> None:
    _keep(turn, coach, question, "weigh_in", weigh_in_of(question.answers))


def _keep(
    turn: Turn, coach: Person, question: OpenQuestion, key: str, value: dict[str, Any] | None
) -> None:
    profile = own_athlete(turn.session, coach, question.about)
    event = current_event(turn.session, profile.person_id) if profile is not None else None
    if profile is None or event is None:
        say_to(turn, coach, plan_words.event_first())
        return
    before = event.asks.get(key)
    event.asks = {k: v for k, v in event.asks.items() if k != key} | (
        {key: value} if value is not None else {}
    )
    turn.session.add(event)
    turn.session.flush()
    record(
        turn, profile.person_id, Change.EVENT_ASKS, by=coach.id,
        event=event.id, key=key, before=before, now=value,
    )  # fmt: skip
    say_to(turn, coach, words.saved(_view(turn, profile, event)))


def look_ahead(turn: Turn, profile: AthleteProfile, row: CheckInRow) -> None:
    """After a morning: the coach is told early, once for each way the cap comes to stand."""
    week = current_week(turn.session, profile)
    weigh_in = weigh_in_row(week.event) if week is not None else None
    if week is None or weigh_in is None:
        return
    scale = _scale(turn.session, profile, week, today=row)
    if scale is None or scale.day < row.date:
        return
    told = week.event.asks.get("told")
    if scale.standing == (told or Standing.LIKELY_MADE):
        return
    week.event.asks = {**week.event.asks, "told": scale.standing.value}
    turn.session.add(week.event)
    turn.session.flush()
    person = get_person(turn.session, profile.person_id)

    def text() -> str:
        line = words.weigh_in_line(weigh_in, scale.day, profile.weight_unit)
        said = _said(profile, week, scale, row.date)
        return words.early(person.first_name, line, said)

    alerts.note(turn, profile, text, once=True)


def _foreseen(turn: Turn, profile: AthleteProfile, week: Week) -> str:
    today = local_date(profile, turn.context)
    scale = _scale(turn.session, profile, week)
    if scale is None or scale.day < today:
        return ""
    return _said(profile, week, scale, today)


def _said(profile: AthleteProfile, week: Week, scale: OnScale, today: date) -> str:
    weigh_in = weigh_in_row(week.event)
    assert weigh_in is not None
    made = making(
        athlete_of(profile), baseline_of(profile), week.plan, weigh_in, scale,
        days_left=max((scale.day - today).days, 0),
    )  # fmt: skip
    unit = profile.weight_unit
    parts = [words.forecast(scale, unit)]
    if scale.standing is not Standing.LIKELY_MADE:
        parts.append(words.ways(made, unit))
    return "\n".join(part for part in parts if part)


def _scale(
    session: Session, profile: AthleteProfile, week: Week, *, today: CheckInRow | None = None
) -> OnScale | None:
    weigh_in = weigh_in_row(week.event)
    if weigh_in is None:
        return None
    day = week.event.day - timedelta(days=weigh_in.days_out)
    history = history_before(session, profile.person_id, day)
    if today is not None:
        history = with_today(history, checkin_of(today))
    return on_scale(
        athlete_of(profile),
        baseline_of(profile),
        event_of(week.event),
        week.plan,
        history,
        weigh_in,
    )
