"""An athlete's week as it stands on a morning."""

from __future__ import annotations

from dataclasses import dataclass

from engine.values.athlete import Athlete, Baseline, Event
from engine.values.checkin import CheckIn, History
from engine.values.plan import DayTarget, PeakPlan


@dataclass(frozen=True, slots=True, kw_only=True)
class WeekSoFar:
    """Whose week it is and what is planned, the mornings so far, and this morning's answers."""

    athlete: Athlete
    baseline: Baseline
    event: Event
    plan: PeakPlan
    history: History
    checkin: CheckIn

    @property
    def days_out(self) -> int:
        """Days from this morning to the event; negative after it."""
        return self.event.days_out(self.checkin.date)

    @property
    def yesterday(self) -> DayTarget | None:
        """The target of the day that this morning's answers speak of."""
        return self.plan.day(self.days_out + 1)
