"""The choice of one who knows the hidden body and the chance to come: what could be had at most."""

from __future__ import annotations

from collections.abc import Sequence
from typing import NamedTuple

import numpy as np

from engine.bench.eye import Week
from engine.bench.setting import Client, load_g, planned_g
from engine.bench.worlds.world import Condition, Floats, taken
from engine.values.limits import GuardRails, Limits
from engine.values.plan import LOAD_DAYS

FACTORS = np.arange(0.30, 2.01, 0.05)
DOSES = 25
ROUNDS = 2
ALIKE = 2e-6  # look given up per g of change, so that ties stay near the plan


def all_knowing(
    week: Week, begin: Condition, clients: Sequence[Client], limits: Sequence[Limits] | None
) -> tuple[Floats, dict[int, Floats]]:
    """Each one's best look and load; inside `limits`, or where None inside the guard rails.

    The load is scaled as a whole first, then each day in turn is searched on a grid.
    """
    low, high, total = _bounds(clients, limits)
    plan = {out: np.array([planned_g(c.plan, out) for c in clients]) for out in LOAD_DAYS}
    best = {out: np.clip(plan[out], low[out], high[out]) for out in LOAD_DAYS}
    found = Found(np.full(len(clients), -2.0), best)
    tried = {
        out: np.stack([np.clip(f * plan[out], low[out], high[out]) for f in FACTORS])
        for out in LOAD_DAYS
    }
    search = Search(week, begin, plan, total)
    found = search.better(tried, found)
    for _ in range(ROUNDS):
        for out in LOAD_DAYS:
            grid = low[out] + np.linspace(0, 1, DOSES)[:, None] * (high[out] - low[out])
            tried = {
                other: grid if other == out else np.tile(found.load[other], (DOSES, 1))
                for other in LOAD_DAYS
            }
            found = search.better(tried, found)
    return _looks(week, begin, found.load)[0], found.load


class Found(NamedTuple):
    """Each one's best look so far, and the load that gives it."""

    look: Floats
    load: dict[int, Floats]


class Search(NamedTuple):
    """What every load is tried on: the week from its condition before the load, and its bound."""

    week: Week
    begin: Condition
    plan: dict[int, Floats]
    total: Floats

    def better(self, tried: dict[int, Floats], so_far: Found) -> Found:
        looks = _looks(self.week, self.begin, tried)
        # Of loads that look alike, the one nearest the coach's own.
        looks = looks - ALIKE * sum(np.abs(tried[out] - self.plan[out]) for out in LOAD_DAYS)
        looks = np.where(sum(tried.values()) <= self.total + 1e-6, looks, -1.0)
        row = looks.argmax(axis=0)[None]
        found = np.take_along_axis(looks, row, axis=0)[0]
        wins = found > so_far.look
        chosen = {
            out: np.where(wins, np.take_along_axis(tried[out], row, axis=0)[0], so_far.load[out])
            for out in LOAD_DAYS
        }
        return Found(np.where(wins, found, so_far.look), chosen)


def _looks(week: Week, begin: Condition, doses: dict[int, Floats]) -> Floats:
    """The look on the day, doses x athletes."""
    number = len(week.people)
    times = max(np.atleast_2d(doses[out]).shape[0] for out in LOAD_DAYS)
    many = week.many(times)
    now = taken(begin, np.tile(np.arange(number), times))
    for out in LOAD_DAYS:
        now = many.after(now, out, np.atleast_2d(doses[out]).reshape(-1))
    return week.world.judging.look(now).reshape(times, number)


def _bounds(
    clients: Sequence[Client], limits: Sequence[Limits] | None
) -> tuple[dict[int, Floats], dict[int, Floats], Floats]:
    if limits is None:
        rails = [GuardRails.of(client.athlete) for client in clients]
        low = np.array([one.rail("carb_floor_g").low for one in rails])
        high = np.array([one.rail("carb_ceiling_g").high for one in rails])
        total = np.array([one.rail("load_total_g").high for one in rails])
        return dict.fromkeys(LOAD_DAYS, low), dict.fromkeys(LOAD_DAYS, high), total
    lows: dict[int, Floats] = {}
    highs: dict[int, Floats] = {}
    for out in LOAD_DAYS:
        windows = [
            one.window(planned_g(client.plan, out), None)
            for client, one in zip(clients, limits, strict=True)
        ]
        plans = [planned_g(client.plan, out) for client in clients]
        lows[out] = np.array([w.low if w else g for w, g in zip(windows, plans, strict=True)])
        highs[out] = np.array([w.high if w else g for w, g in zip(windows, plans, strict=True)])
    total = np.array(
        [max(one.load_total_g, load_g(c.plan)) for c, one in zip(clients, limits, strict=True)]
    )
    return lows, highs, total
