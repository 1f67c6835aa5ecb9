"""The coach says what an event asks for: its look, and a weigh-in that the forecast looks ahead to."""

from __future__ import annotations

from datetime import date, timedelta
from typing import Any

from sqlmodel import Session

from bot.alerts import alerts
from bot.core.chat.cards import CARD, SEASON, OfEvent
from bot.core.chat.outbox import Button
from bot.core.turn import OnAthlete, Turn
from bot.dialogue import asking
from bot.dialogue.flow import Answers, Flow
from bot.event import flow_asks
from bot.event.buttons import ASKS_LOOK, ASKS_WEIGH_IN
from bot.event.flow_asks import AS_USUAL, TARGET_LOOK, WEIGH_IN, weigh_in_of
from bot.people.changes import Change
from bot.people.people import get_person, local_date, record
from bot.people.telling import answer, rewrite, say_to
from bot.plan import words as plan_words
from bot.plan.planning import event_line, meant_event, naming
from bot.plan.prep import Prep
from bot.store.base import id_of
from bot.store.tables.people import AthleteProfile, HistoryRow
from bot.store.tables.week import CheckInRow, EventRow
from bot.week.cases import checkin_of, history_before
from bot.week.load import (
    Week,
    athlete_of,
    baseline_of,
    current_week,
    event_ahead,
    event_of,
    target_of,
    weigh_in_row,
)
from bot.week.snapshots import take_snapshot
from bot.words.common import step_back_button
from engine.planning.weigh_in import OnScale, Standing, making, on_scale, with_today
from engine.values.case import WeekSoFar
from engine.values.checkin import CheckIn


def show(turn: OnAthlete, pressed: OfEvent) -> None:
    """What the event asks for, with what is likely on the scale."""
    event = _meant(turn, pressed)
    if event is None:
        return
    number, ahead = turn.profile.person_id, naming(turn.session, turn.profile, event)
    rewrite(
        turn, _view(turn, turn.profile, event),
        [
            [
                Button(flow_asks.look_button(), ASKS_LOOK(number, ahead)),
                Button(flow_asks.weigh_in_button(), ASKS_WEIGH_IN(number, ahead)),
            ],
            [Button(step_back_button(), CARD(number) if ahead is None else SEASON(number))],
        ],
    )  # fmt: skip


def _view(turn: Turn, profile: AthleteProfile, event: EventRow) -> str:
    week = current_week(turn.session, profile)
    if week is not None and week.event.id != event.id:
        week = None  # what is likely on the scale is only worked out once its week has begun
    weigh_in = weigh_in_row(event)
    line = ""
    if weigh_in is not None:
        day = event.day - timedelta(days=weigh_in.days_out)
        line = flow_asks.weigh_in_line(weigh_in, day, profile.weight_unit)
        said = _foreseen(turn, profile, week) if week is not None else ""
        line = f"{line}\n{said}" if said else line
    return flow_asks.view(event_line(profile, event, turn.context), target_of(event), line)


def ask_look(turn: OnAthlete, pressed: OfEvent) -> None:
    _ask(turn, pressed, TARGET_LOOK, {})


def _ask(turn: OnAthlete, pressed: OfEvent, flow: Flow, known: Answers) -> None:
    event = _meant(turn, pressed)
    if event is not None:
        asking.open_question(turn, turn.person, flow, turn.profile.person_id, {
            **known, "_event": event.id,
        })  # fmt: skip


def _meant(turn: OnAthlete, pressed: OfEvent) -> EventRow | None:
    answer(turn)
    event = meant_event(turn, pressed.event)
    if event is None:
        say_to(turn, turn.person, plan_words.event_first())
    return event


def look_given(prep: Prep, answers: Answers) -> None:
    given = answers["look"]
    look = None if given == AS_USUAL else {**given, "words": answers.get("words", "")}
    _keep_and_show(prep, "look", look)


def ask_weigh_in(turn: OnAthlete, pressed: OfEvent) -> None:
    profile = turn.profile
    known = {"_weight_unit": profile.weight_unit, "_height_cm": profile.height_cm}
    _ask(turn, pressed, WEIGH_IN, known)


def weigh_in_given(prep: Prep, answers: Answers) -> None:
    _keep_and_show(prep, "weigh_in", weigh_in_of(answers))


def _keep_and_show(prep: Prep, key: str, value: dict[str, Any] | None) -> None:
    keep(prep, key, value)
    said = flow_asks.saved(_view(prep.turn, prep.profile, prep.event))
    say_to(prep.turn, prep.coach, said)


def keep(prep: Prep, key: str, value: dict[str, Any] | None, *, how: str = "") -> None:
    """From now on the event asks for that: "look" as usual, no "weigh_in", where it is None."""
    turn, coach, profile, event = prep.turn, prep.coach, prep.profile, prep.event
    before = {"asks": event.asks.get(key), **take_snapshot(turn, profile)}
    _put(turn.session, event, key, value)
    record(turn, profile.person_id, by=coach.id, what=Change.EVENT_ASKS(
        event=id_of(event), key=key, before=before, now=value, **{"how": how} if how else {},
    ))  # fmt: skip


def can_go_back(turn: OnAthlete, row: HistoryRow) -> bool:
    """Whether the event is still ahead and asks for what was set then."""
    detail = Change.EVENT_ASKS.of(row)
    event = event_ahead(turn.session, turn.profile.person_id, detail["event"])
    return event is not None and event.asks.get(detail["key"]) == detail["now"]


def go_back(turn: OnAthlete, row: HistoryRow) -> None:
    """It asks for what it did before."""
    detail = Change.EVENT_ASKS.of(row)
    event = turn.session.get_one(EventRow, detail["event"])
    _put(turn.session, event, detail["key"], detail["before"]["asks"])


def _put(session: Session, event: EventRow, key: str, value: dict[str, Any] | None) -> None:
    gone = {key, "told"} if key == "weigh_in" else {key}  # another cap is told of anew
    event.asks = {k: v for k, v in event.asks.items() if k not in gone} | (
        {key: value} if value is not None else {}
    )
    session.add(event)
    session.flush()


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
        line = flow_asks.weigh_in_line(weigh_in, scale.day, profile.weight_unit)
        said = _said(profile, week, scale, row.date)
        return flow_asks.early(person.first_name, line, said)

    alerts.note(turn, profile, text, once=True)


def _foreseen(turn: Turn, profile: AthleteProfile, week: Week) -> str:
    today = local_date(profile, turn.context)
    scale = _scale(turn.session, profile, week)
    if scale is None or scale.day < today:
        return ""
    return _said(profile, week, scale, today)


def _said(profile: AthleteProfile, week: Week, scale: OnScale, today: date) -> str:
    made = making(
        athlete_of(profile), baseline_of(profile), week.plan, scale,
        days_left=max((scale.day - today).days, 0),
    )  # fmt: skip
    unit = profile.weight_unit
    parts = [flow_asks.forecast(scale, unit)]
    if scale.standing is not Standing.LIKELY_MADE:
        parts.append(flow_asks.ways(made, unit))
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
    so_far = WeekSoFar(
        athlete=athlete_of(profile), baseline=baseline_of(profile), event=event_of(week.event),
        plan=week.plan, history=history, checkin=CheckIn(date=day),
    )  # fmt: skip
    return on_scale(so_far, weigh_in)
