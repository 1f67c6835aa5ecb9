"""A finished week under another step, another limit, without a rule or with the forecast: in chat."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date, timedelta

from sqlmodel import Session, col, select

from bot.core.chat.cards import CARD, OfEvent
from bot.core.chat.outbox import Button, Buttons
from bot.core.turn import OnAthlete, Turn
from bot.decision.buttons import (
    ASK_LIMIT,
    WHAT_IF,
    WHAT_IF_LESS,
    WHAT_IF_USE,
    WithLimit,
    WithoutRule,
    WithUse,
)
from bot.decision.replay import words
from bot.decision.replay.flow import WHAT_IF_LIMIT
from bot.dialogue import asking
from bot.dialogue.flow import Answers
from bot.people.people import local_date, name_of
from bot.people.telling import answer, rewrite, say_to
from bot.store.base import id_of
from bot.store.tables.people import AthleteProfile, Person
from bot.store.tables.week import DecisionRow, DecisionStatus, EventRow
from bot.store.working_out import worked_out
from bot.week.cases import decision_of, stood, weeks_before
from bot.week.load import day_set
from bot.words import common
from bot.words.names import rule_name
from engine.decision.decide import Case, Decision
from engine.decision.foresight import odds_of
from engine.decision.record import case_from_dict
from engine.decision.replay import Change, same_for_people, week_again
from engine.decision.rules import RULES
from engine.values.case import ForecastUse, PastWeek
from engine.values.limits import LIMIT_KEYS
from engine.values.plan import PLAN_DAYS


@dataclass(frozen=True, slots=True, kw_only=True)
class MorningAgain:
    """One morning: the figure that was in force in the end (g), and the decision it would have been.

    `as_then`: the same was decided then, so what became of it stands.
    """

    days_out: int
    set_g: float | None
    by_coach: bool
    as_then: bool
    case: Case
    decision: Decision

    @property
    def differs(self) -> bool:
        again = self.decision.carb_g
        if self.as_then or self.set_g is None or again is None:
            return False
        return abs(again - self.set_g) >= 0.5


def finished(session: Session, athlete_id: int, today: date) -> list[EventRow]:
    """Events whose day has been and on which anything was decided, the newest first."""
    decided = select(DecisionRow.event_id).where(DecisionRow.athlete_id == athlete_id).distinct()
    query = select(EventRow).where(
        EventRow.athlete_id == athlete_id, EventRow.day < today, col(EventRow.id).in_(decided)
    )
    return list(session.exec(query.order_by(col(EventRow.day).desc(), col(EventRow.id).desc())))


def stored(session: Session, event: EventRow) -> list[DecisionRow]:
    """The decision that stood for each day of the week, from the furthest out."""
    return list({row.sets_date: row for row in stood(session, event)}.values())


def week_under(session: Session, event: EventRow, change: Change) -> list[MorningAgain]:
    """The week decided again under a change. Raises ValueError for limits that cannot be."""
    rows = stored(session, event)
    cases = [case_from_dict(row.case) for row in rows]
    first = event.day - timedelta(days=max(PLAN_DAYS))
    trials = weeks_before(session, event.athlete_id, first) if change.forecast else ()
    then = [decision_of(row) for row in rows]
    made = worked_out(
        session, _again, cases, (change.without, dict(change.limits), change.forecast), trials, then
    )
    found = []
    for row, was, (case, decision) in zip(rows, then, made, strict=True):
        standing = day_set(session, event.athlete_id, row.sets_date)
        found.append(
            MorningAgain(
                days_out=decision.days_out,
                set_g=standing.carb_g if standing is not None else row.carb_g,
                by_coach=standing is not None
                and standing.by == "coach"
                and row.status != DecisionStatus.APPROVED,
                as_then=same_for_people(decision, was),
                case=case,
                decision=decision,
            )
        )
    return found


def _again(
    cases: list[Case],
    asked: tuple[frozenset[str], dict[str, float], ForecastUse | None],
    trials: tuple[PastWeek, ...],
    then: list[Decision],
) -> tuple[tuple[Case, Decision], ...]:
    without, limits, forecast = asked
    change = Change(without=without, limits=limits, forecast=forecast)
    return week_again(cases, change, trials, then)


RULES_SHOWN = 6
#: Limits that say how far the carbs may move.
LIMITS = tuple(key for key, limit in LIMIT_KEYS.items() if limit.unit == "g")


def show(turn: OnAthlete, pressed: OfEvent) -> None:
    """The week, and what can be asked of it."""
    answer(turn)
    event = _event(turn, pressed.event)
    name = name_of(turn.session, turn.profile.person_id)
    if event is None:
        say_to(turn, turn.person, words.no_week_yet(name))
        return
    rewrite(turn, words.ask(name, event.kind, event.day), _choices(turn, turn.profile, event))


def with_forecast(turn: OnAthlete, pressed: WithUse) -> None:
    """The same week with the forecast used otherwise."""
    event, use = _event(turn, pressed.event), pressed.use
    if event is None or use is None:
        show(turn, OfEvent(pressed.event))
        return
    answer(turn)
    _tell(turn, turn.person, event, Change(forecast=use), words.with_use(use))


def without_rule(turn: OnAthlete, pressed: WithoutRule) -> None:
    """The same week without one of the rules."""
    event, rule = _event(turn, pressed.event), pressed.rule
    if event is None or rule is None or rule not in {one.id for one in RULES[:-1]}:
        show(turn, OfEvent(pressed.event))
        return
    answer(turn)
    change = Change(without=frozenset({rule}))
    _tell(turn, turn.person, event, change, words.without(rule_name(rule)))


def ask_limit(turn: OnAthlete, pressed: WithLimit) -> None:
    """The same week under another limit: which figure."""
    event, key = _event(turn, pressed.event), pressed.key
    rows = stored(turn.session, event) if event is not None else []
    if event is None or key not in LIMITS or not rows:
        show(turn, OfEvent(pressed.event))
        return
    answer(turn)
    limits = case_from_dict(rows[-1].case).limits
    asking.open_question(turn, turn.person, WHAT_IF_LIMIT, turn.profile.person_id, {
        "_event": event.id, "_key": key, "_value": getattr(limits, key),
    })  # fmt: skip


def limit_given(turn: Turn, coach: Person, profile: AthleteProfile, answers: Answers) -> None:
    """The end of that question."""
    event = turn.session.get(EventRow, answers["_event"])
    if event is None or event.athlete_id != profile.person_id:
        say_to(turn, coach, common.not_your_athlete())
        return
    key, value = answers["_key"], float(answers["value"])
    change = Change(limits={key: value})
    if not _tell(turn, coach, event, change, words.with_limit(key, value)):
        asked = {name: told for name, told in answers.items() if name != "value"}
        asking.open_question(turn, coach, WHAT_IF_LIMIT, profile.person_id, asked)


def _tell(turn: Turn, coach: Person, event: EventRow, change: Change, what: str) -> bool:
    """Then and now side by side, a line a morning, and what is not known of it.

    Returns whether it could be asked: False for limits that cannot be.
    """
    name = name_of(turn.session, event.athlete_id)
    try:
        mornings = week_under(turn.session, event, change)
    except ValueError:
        say_to(turn, coach, words.cannot_be(), buttons=_back(event))
        return False
    head = words.head(name, event.kind, event.day, what)
    lines = [
        words.morning(
            one.days_out, one.set_g, one.decision, by_coach=one.by_coach, as_then=one.as_then
        )
        for one in mornings
    ]
    moved = [one for one in mornings if one.differs]
    parts = [head, "\n".join([words.columns(), *lines]), words.in_sum(len(moved), len(mornings))]
    parts += [_estimate(turn.session, change, moved), words.not_known(name)]
    say_to(turn, coach, "\n\n".join(part for part in parts if part), buttons=_back(event))
    return True


def _estimate(session: Session, change: Change, moved: list[MorningAgain]) -> str:
    """The forecast's own chances on the first morning that differs; "" where it has none."""
    for one in moved:
        set_g, again_g = one.set_g, one.decision.carb_g
        if set_g is None or again_g is None:
            continue
        odds = worked_out(session, odds_of, change.of(one.case), (set_g, again_g))
        if odds:
            then, now = odds
            return words.estimate(one.days_out, (set_g, then), (again_g, now))
    return ""


def _choices(turn: Turn, profile: AthleteProfile, event: EventRow) -> Buttons:
    number, this, rows = profile.person_id, id_of(event), stored(turn.session, event)
    used = {case_from_dict(row.case).forecast for row in rows}
    uses = [ForecastUse.PROPOSES, ForecastUse.RULES_ONLY]
    uses = [use for use in uses if used != {use}]
    fired = dict.fromkeys(decision_of(row).rule for row in rows)
    rules = [one for one in fired if one in {rule.id for rule in RULES[:-1]}][:RULES_SHOWN]
    others = [one for one in finished(turn.session, number, local_date(profile, turn.context))
              if one.id != event.id]  # fmt: skip
    return [
        [Button(words.use_button(use), WHAT_IF_USE(number, this, use)) for use in uses],
        *([Button(words.less_button(rule_name(rule)), WHAT_IF_LESS(number, this, rule))]
          for rule in rules),
        *([Button(words.limit_button(key), ASK_LIMIT(number, this, key))] for key in LIMITS),
        *([Button(words.week_button(one.kind, one.day), WHAT_IF(number, id_of(one)))]
          for one in others[:3]),
        [Button(common.back_button(), CARD(number))],
    ]  # fmt: skip


def _back(event: EventRow) -> Buttons:
    return [[Button(words.ask_more_button(), WHAT_IF(event.athlete_id, id_of(event)))]]


def _event(turn: OnAthlete, named: int | None) -> EventRow | None:
    """The finished week that a button names, else the newest; None where there is none."""
    weeks = _weeks(turn.session, turn, turn.profile)
    if named is None:
        return weeks[0] if weeks else None
    return next((one for one in weeks if one.id == named), None)


def _weeks(session: Session, turn: Turn, profile: AthleteProfile) -> list[EventRow]:
    return finished(session, profile.person_id, local_date(profile, turn.context))
