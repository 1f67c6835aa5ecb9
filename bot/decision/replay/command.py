"""`brimline replay`: stored decisions made again, and where another rule set would differ.

It prints numbers of athletes and dates, never names or answers.
"""

from __future__ import annotations

import importlib.util
import sys
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, field
from pathlib import Path

from sqlmodel import Session, col, select

from bot.store.base import id_of
from bot.store.tables.week import DecisionRow
from engine.decision.record import case_from_dict
from engine.decision.replay import (
    Change,
    Differs,
    differences,
    made_again,
    of_this_version,
    result_differs,
)
from engine.decision.rules import RULES
from engine.decision.rules.rule import Rule
from engine.values.case import ForecastUse
from engine.values.limits import LIMIT_KEYS

A_PAGE = 500  # rows looked at in one go


class NoSuchChangeError(ValueError):
    """A rule, limit or rule table that is not there."""


@dataclass(slots=True)
class Found:
    """What came of a replay: counts, and a line for each decision that differs."""

    decisions: int = 0
    same: int = 0
    of_other_version: int = 0
    unreadable: int = 0
    lines: list[str] = field(default_factory=list)


def rules_in(file: Path) -> tuple[Rule, ...]:
    """The `RULES` of a Python file, such as a changed copy of `engine/decision/rules/table.py`."""
    spec = importlib.util.spec_from_file_location("brimline_rules_to_try", file)
    if spec is None or spec.loader is None or not file.is_file():
        raise NoSuchChangeError(f"{file} is no Python file")
    module = importlib.util.module_from_spec(spec)
    sys.modules[spec.name] = module  # dataclasses look their own module up by its name
    try:
        spec.loader.exec_module(module)
    except Exception as error:
        raise NoSuchChangeError(f"{file}: {error}") from error
    table = tuple(getattr(module, "RULES", ()))
    if not table or not all(hasattr(rule, "when") and hasattr(rule, "id") for rule in table):
        raise NoSuchChangeError(f"{file} has no RULES")
    return table


def change_of(
    without: Sequence[str],
    rules: Path | None,
    limits: Sequence[str] = (),
    forecast: str | None = None,
) -> Change:
    """The change that was asked for; `limits` are such as "step_g=20".

    Raises NoSuchChangeError for what is not there.
    """
    table = rules_in(rules) if rules is not None else RULES
    known = {rule.id for rule in table[:-1]}
    if strangers := sorted(set(without) - known):
        raise NoSuchChangeError(
            f"there is no rule {', '.join(strangers)} to leave out; there are "
            f"{', '.join(sorted(known))}"
        )
    return Change(
        without=frozenset(without),
        table=table,
        limits=dict(map(_limit, limits)),
        forecast=ForecastUse(forecast) if forecast is not None else None,
    )


def _limit(given: str) -> tuple[str, float]:
    key, _, value = given.partition("=")
    if key not in LIMIT_KEYS:
        raise NoSuchChangeError(f"there is no limit {key}; there are {', '.join(LIMIT_KEYS)}")
    try:
        return key, float(value)
    except ValueError:
        raise NoSuchChangeError(f"{given}: a limit is given as {key}=NUMBER") from None


def replay_all(session: Session, change: Change, athlete_id: int | None = None) -> Found:
    """Every stored decision again, oldest first; with a change only what people act on counts.

    Each morning by itself, with what was known on it: not as if the days before had gone otherwise.
    """
    found = Found()
    changed = bool(change.without or change.limits or change.forecast) or change.table is not RULES
    for row in _rows(session, athlete_id):
        found.decisions += 1
        try:
            case = case_from_dict(row.case)
        except (ValueError, TypeError, KeyError) as error:
            found.unreadable += 1
            found.lines.append(f"{_named(row)}: can't be read: {type(error).__name__}")
            continue
        try:
            again = made_again(case, change)
        except ValueError as error:
            if not change.limits:
                raise
            found.lines.append(f"{_named(row)}: {error}")  # it speaks of limits only
            continue
        own = of_this_version(row.decision)
        found.of_other_version += not own
        strict = own and not changed
        differ = (differences if strict else result_differs)(row.decision, again)
        if differ:
            version = "" if own else " (made by another version)"
            found.lines.append(f"{_named(row)}{version}: {_said(differ)}")
        else:
            found.same += 1
    return found


def _rows(session: Session, athlete_id: int | None) -> Iterator[DecisionRow]:
    last = 0
    while True:
        query = select(DecisionRow).where(col(DecisionRow.id) > last)
        if athlete_id is not None:
            query = query.where(DecisionRow.athlete_id == athlete_id)
        page = session.exec(query.order_by(col(DecisionRow.id)).limit(A_PAGE)).all()
        if not page:
            return
        yield from page
        last = id_of(page[-1])
        session.expunge_all()


def _named(row: DecisionRow) -> str:
    return f"decision {row.id}, athlete {row.athlete_id}, for {row.sets_date.isoformat()}"


def _said(differ: Sequence[Differs]) -> str:
    shown = [f"{one.where} {one.stored} -> {one.again}" for one in differ[:6]]
    more = len(differ) - len(shown)
    return ", ".join([*shown, *([f"and {more} more"] if more > 0 else [])])
