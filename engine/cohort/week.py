"""A peak week of the cohort: the plan, the limits, and the one way in which doses are set.

The plan and the limits are of the bench, scaled by body mass; figures are common practice.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

DAYS_OUT = (7, 6, 5, 4, 3, 2, 1)
LOAD_DAYS = (3, 2, 1)
#: Planned carbohydrate, g/kg body mass, by days out.
PLAN_G_PER_KG = {7: 2.0, 6: 1.5, 5: 1.5, 4: 1.5, 3: 8.0, 2: 8.5, 1: 7.0}
TRAINING_DAYS = (7, 6, 5, 4)
STEP_G_PER_KG = 0.5
MOST_STEPS = 5  # largest change a day, in steps
LAST_DAY_STEPS = 4  # the same on the last day, when nothing can be mended any more
LOAD_TOTAL_OVER_PLAN = 1.35
FLOOR_G = 50.0
CEILING_G_PER_KG = 12.0


@dataclass(frozen=True, slots=True, kw_only=True)
class WeekLimits:
    """What the coach allows in this week, g."""

    floor_g: float
    ceiling_g: float
    step_g: float
    change_per_day_g: float
    last_day_change_g: float
    load_total_g: float

    def change_g(self, days_out: int) -> float:
        return self.last_day_change_g if days_out == 1 else self.change_per_day_g

    def window(
        self, days_out: int, planned_g: float, load_left_g: float = np.inf
    ) -> tuple[float, float]:
        """Lowest and highest allowed of a day; `load_left_g` is what the load may still bring."""
        change = self.change_g(days_out)
        low = max(self.floor_g, planned_g - change)
        high = min(self.ceiling_g, planned_g + change, load_left_g)
        return low, max(low, high)

    def fit(self, days_out: int, wanted_g: float, planned_g: float, load_left_g: float) -> float:
        """Rounded to 5 g first, fitted last."""
        low, high = self.window(days_out, planned_g, load_left_g)
        return float(np.clip(5 * round(wanted_g / 5), low, high))


def plan_g(body_mass_kg: float, generosity: float = 1.0) -> dict[int, float]:
    """Grams by days out; `generosity` is how this coach's load compares with the typical one."""
    return {
        out: 5.0 * round(dose * body_mass_kg * (generosity if out in LOAD_DAYS else 1.0) / 5)
        for out, dose in PLAN_G_PER_KG.items()
    }


def limits(body_mass_kg: float, generosity: float = 1.0) -> WeekLimits:
    plan = plan_g(body_mass_kg, generosity)
    step = 5.0 * round(STEP_G_PER_KG * body_mass_kg / 5)
    return WeekLimits(
        floor_g=FLOOR_G,
        ceiling_g=5.0 * round(CEILING_G_PER_KG * body_mass_kg / 5),
        step_g=step,
        change_per_day_g=MOST_STEPS * step,
        last_day_change_g=LAST_DAY_STEPS * step,
        load_total_g=5.0 * round(LOAD_TOTAL_OVER_PLAN * sum(plan[d] for d in LOAD_DAYS) / 5),
    )


def load_left(plan: dict[int, float], given: dict[int, float], out: int, total: float) -> float:
    """What day `out` may bring at most: the total, less what was set and what is still planned."""
    if out not in LOAD_DAYS:
        return np.inf
    before = sum(given[d] for d in LOAD_DAYS if d > out)
    after = sum(plan[d] for d in LOAD_DAYS if d < out)
    return total - before - after
