"""A virtual coach who looks on load mornings: store and blur as a practised eye would call them.

Assumed, all of it, and none of it the tracker's own wording: the coach compares with how full people
of that world are on their plans by then, each coach a little high or low for good.
"""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date, timedelta

import numpy as np

from engine.bench.chance import Week
from engine.bench.setting import DAYS_OUT, Client, planned_g
from engine.bench.worlds.world import BLUR, SHARE, Condition
from engine.values.observed import CoachLook, Observed
from engine.values.plan import LOAD_DAYS

OFF_FOR_GOOD, SCATTER = 0.05, 0.06  # of the store's ceiling, SD
BLUR_SCATTER = 0.22  # of a blur that is just spilled over, SD
FLAT_BY, FULL_BY, FULL_FROM = 0.11, 0.11, 0.90
SOFT_FROM, SPILLED_FROM = 0.5, 1.0


class Eye:
    """What a coach taps of each athlete of a week, by days out."""

    def __init__(self, week: Week, clients: Sequence[Client], seed: int) -> None:
        rng = np.random.default_rng([seed, 47])
        self.clients = clients
        self.scatter = {out: rng.normal(size=(2, len(clients))) for out in LOAD_DAYS}
        self.usual = _on_plan(week, clients)

    def sees(self, now: Condition, i: int, day: date, out: int) -> tuple[Observed, ...]:
        """The coach's word on athlete `i` on that morning of a week whose event is on `day`."""
        if out not in LOAD_DAYS:
            return ()
        share_off, blur_off = self.scatter[out][:, i]
        off = OFF_FOR_GOOD * self.clients[i].rated_high + SCATTER * share_off
        share, blur = now[SHARE][i] + off, now[BLUR][i] + BLUR_SCATTER * blur_off
        look = _called(float(share), float(blur), self.usual[out])
        return (Observed(date=day - timedelta(days=out), look=look),)


def _called(share: float, blur: float, usual: float) -> CoachLook:
    if blur >= SPILLED_FROM:
        return CoachLook.SPILLED
    if blur >= SOFT_FROM:
        return CoachLook.SOFTENING
    if share < usual - FLAT_BY:
        return CoachLook.FLAT
    return CoachLook.FULL if share >= min(usual + FULL_BY, FULL_FROM) else CoachLook.ON_COURSE


def _on_plan(week: Week, clients: Sequence[Client]) -> dict[int, float]:
    """How full people are on average on their plans, by days out."""
    now, found = week.first, {}
    for out in DAYS_OUT:
        found[out] = float(now[SHARE].mean())
        now = week.after(now, out, np.array([planned_g(one.plan, out) for one in clients]))
    return found
