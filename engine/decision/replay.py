"""Stored decisions made again: the same to the bit, or what another rule set would have made of them.

A record of before a field was added lacks it, which is no difference. Where a decision was made by
another table or model than this one, it is compared all the same and said to be of another version.
"""

from __future__ import annotations

import json
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, field, replace
from typing import Any

from engine.decision.decide import Decision, decide, decision_as_dict
from engine.decision.record import case_from_dict
from engine.decision.rules import RULES, TABLE
from engine.decision.rules.rule import Rule
from engine.model.particles import MODEL
from engine.values.case import Case, ForecastUse, PastWeek
from engine.values.checkin import DaySet

Stored = Mapping[str, Any]

#: What is new in a record with each table or model, and so no difference by itself.
_VERSIONS = ("trace.table", "foresight.model")
#: What older versions kept in words beside the facts that they were told from. Sentences are told anew
#: (`engine.decision.reason`), so they are no part of what was decided.
_IN_WORDS = frozenset(
    {"reason"}
    | {
        f"trace.facts.{name}"
        for name in (
            "blur_said", "coach_said", "drink_said", "gut_signs", "lately_said", "little_said",
            "load_said", "sharpness_said", "signs_of_dropping", "told_said", "waits_said",
            "weight_said",
        )
    }
)  # fmt: skip
#: The parts of a decision that people act on.
RESULT = ("outcome", "carb_g", "rule", "bound", "needs_sign_off", "lapse_g")


@dataclass(frozen=True, slots=True)
class Differs:
    """One place of a decision that came out otherwise; `where` names it, such as "trace.steps"."""

    where: str
    stored: Any
    again: Any


@dataclass(frozen=True, slots=True, kw_only=True)
class Change:
    """Another rule set, other limits (by key) or another use of the forecast; nothing: as it was."""

    without: frozenset[str] = frozenset()
    table: Sequence[Rule] = RULES
    limits: Mapping[str, float] = field(default_factory=dict)
    forecast: ForecastUse | None = None

    def of(self, case: Case) -> Case:
        """The case under this change. Raises ValueError for limits that cannot be."""
        others: dict[str, Any] = dict(self.limits)
        limits = replace(case.limits, **others) if others else case.limits
        return replace(case, limits=limits, forecast=self.forecast or case.forecast)

    def decide(self, case: Case) -> Decision:
        return decide(self.of(case), without=self.without, table=self.table)


AS_IT_WAS = Change()


def made_by(decision: Stored) -> tuple[int | None, int | None]:
    """The numbers of rule table and model that made a decision; None where it tells of none."""
    foresight = decision.get("foresight") or {}
    return decision.get("trace", {}).get("table"), foresight.get("model")


def of_this_version(decision: Stored) -> bool:
    """Whether this rule table and this model made it, so that it has to come out the same."""
    table, model = made_by(decision)
    return table == TABLE and model in (None, MODEL)


def replayed(case: Stored, change: Change = AS_IT_WAS) -> dict[str, Any]:
    """The decision on a stored case, as it would be stored. Raises what `case_from_dict` raises."""
    return made_again(case_from_dict(case), change)


def made_again(case: Case, change: Change = AS_IT_WAS) -> dict[str, Any]:
    """The decision on a case, as it would be stored. Raises ValueError for limits that cannot be."""
    made = decision_as_dict(change.decide(case))
    whole: dict[str, Any] = json.loads(json.dumps(made))
    return whole


def differences(stored: Stored, again: Stored, *, within: float = 0.0) -> tuple[Differs, ...]:
    """Every place where two decisions differ, but for version numbers and what was kept in words.

    `within`: how far two numbers may lie apart, for records that another machine has made.
    """
    found = _differ("", stored, again, within)
    return tuple(one for one in found if one.where not in _VERSIONS and one.where not in _IN_WORDS)


def result_differs(stored: Stored, again: Stored) -> tuple[Differs, ...]:
    """The differences in what people act on: figure, rule, bound, sign-off."""
    return tuple(one for one in differences(stored, again) if one.where in RESULT)


def _differ(where: str, stored: Any, again: Any, within: float) -> Iterator[Differs]:
    if isinstance(stored, Mapping) and isinstance(again, Mapping):
        for key in stored:  # what the record lacks is newer than it
            at = f"{where}.{key}" if where else str(key)
            yield from _differ(at, stored[key], again.get(key), within)
    elif isinstance(stored, list) and isinstance(again, list) and len(stored) == len(again):
        for number, (one, other) in enumerate(zip(stored, again, strict=True)):
            yield from _differ(f"{where}[{number}]", one, other, within)
    elif not _alike(stored, again, within):
        yield Differs(where, stored, again)


def _alike(stored: Any, again: Any, within: float) -> bool:
    numbers = isinstance(stored, int | float) and isinstance(again, int | float)
    if within and numbers:
        return bool(abs(stored - again) <= within)
    return bool(stored == again)


def week_again(
    cases: Sequence[Case],
    change: Change,
    trials: tuple[PastWeek, ...] = (),
    then: Sequence[Decision] = (),
) -> tuple[tuple[Case, Decision], ...]:
    """A week's mornings under a change, in order, each knowing what would have been set before.

    What was answered stays as it was answered: what the body would have said to other figures
    nobody knows. `trials` are put in where the stored case, decided without a forecast, has none.
    `then` are the decisions as they were made: where the same is decided again, what became of it
    stands, whatever that was.
    """
    moved: dict[Any, float] = {}
    found = []
    for case, was in zip(cases, then or map(decide, cases), strict=True):
        days = {day.date: day.carb_g for day in case.history.set_days} | moved
        set_days = tuple(DaySet(day, grams) for day, grams in sorted(days.items()))
        again = replace(
            case, history=replace(case.history, set_days=set_days), trials=case.trials or trials
        )
        decision = change.decide(again)
        if decision.carb_g is not None and not same_for_people(decision, was):
            moved[decision.sets_date] = decision.carb_g
        found.append((again, decision))
    return tuple(found)


def same_for_people(one: Decision, other: Decision) -> bool:
    """Whether both come to the same figure, and to the same question to the coach."""
    return (one.carb_g, one.needs_sign_off) == (other.carb_g, other.needs_sign_off)
