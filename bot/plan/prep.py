"""What a coach works on: one event of an athlete, a version of its plan, one figure of that."""

from __future__ import annotations

from dataclasses import dataclass
from typing import NamedTuple

from bot.core.turn import Turn
from bot.store.tables.people import AthleteProfile, Person
from bot.store.tables.week import EventRow
from engine.values.plan import PeakPlan


@dataclass(frozen=True, slots=True)
class Prep:
    """One event of an athlete, and the coach who sets something for it."""

    turn: Turn
    coach: Person
    profile: AthleteProfile
    event: EventRow


@dataclass(frozen=True, slots=True)
class Version:
    """A plan that is to be kept.

    `reason`: why the coach wants its deep depletion, where it has one; kept with the plan. `how`: by
    what it came about, where something else was changed along with it.
    """

    plan: PeakPlan
    shape: str
    reason: str = ""
    how: str = ""


class Figure(NamedTuple):
    """One figure of a plan, by the field of its day."""

    days_out: int
    key: str
