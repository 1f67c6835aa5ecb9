"""What a morning costs the engine, in CPU: `python -m tests.bench.deciding [--times 30]`.

A forecast of eleven doses is to stay under 30 ms, a morning's update of the belief under 15 ms; what
is printed beside them is the median of so many, after a first one that loads the libraries.
"""

from __future__ import annotations

import argparse
import statistics
import sys
import time
from collections.abc import Callable, Sequence
from dataclasses import replace

import numpy as np

from engine.bench.setting import ORDINARY, clients
from engine.bench.worlds import WORLDS
from engine.decision.beliefs import frame_of, intake_of
from engine.decision.decide import decide
from engine.model.forecast import DayAhead, Doses, forecast
from engine.model.particles import Belief, Morning
from engine.model.tracker import after_day, first_belief, update_belief
from engine.planning.teaching import best_lesson
from engine.values.case import Case
from tests.engine.test_foresight import case

SEED = 5
#: What may be used at most, ms of CPU; None is only reported.
FORECAST_MS, UPDATE_MS = 30.0, 15.0
DOSES = [300.0 + 25 * k for k in range(11)]


def median_ms(work: Callable[[int], object], times: int) -> float:
    """The median CPU of calls that are each told their number, ms."""
    work(0)
    spent = []
    for number in range(1, times + 1):
        begin = time.process_time()
        work(number)
        spent.append(1000 * (time.process_time() - begin))
    return statistics.median(spent)


def measured(times: int) -> dict[str, tuple[float, float | None]]:
    """Each thing measured: ms, and what it may cost."""
    world = WORLDS["one-store"]
    one = clients(world.people(1, np.random.default_rng(SEED)), SEED, ORDINARY)[0]
    rng = np.random.default_rng(SEED)
    belief: Belief = first_belief(frame_of(one.athlete, one.baseline), rng)
    weight = one.athlete.body_mass_kg
    belief = update_belief(belief, Morning(weight_kg=weight, fullness=4, sharpness=4), rng)
    plan = one.plan
    days = [(out, plan.day(out)) for out in (3, 2, 1)]
    ahead = [
        DayAhead(
            planned=intake_of(day, day.carb_g), low_g=day.carb_g - 150, high_g=day.carb_g + 150
        )
        for _, day in days
        if day is not None
    ]

    def update(number: int) -> Belief:
        morning = Morning(weight_kg=weight + 0.1 * (number % 3), fullness=5, sharpness=4)
        return after_day(update_belief(belief, morning, rng), ahead[0].planned, rng)

    def whole(number: int) -> object:
        # Another weight each time: nothing of an earlier call is at hand but yesterday's belief.
        told: Case = case(1, weight_kg=60.5 + 0.001 * number)
        return decide(replace(told))

    return {
        "forecast of eleven doses, three days out": (
            median_ms(lambda _: forecast(belief, ahead, Doses(DOSES), rng), times), FORECAST_MS,
        ),
        "morning's update": (median_ms(update, times), UPDATE_MS),
        "whole decision with a forecast": (median_ms(whole, times), None),
        "trial that teaches most": (
            median_ms(lambda _: best_lesson(one.athlete, one.baseline, plan), times), None,
        ),
    }  # fmt: skip


def main(arguments: Sequence[str] | None = None) -> int:
    """Exit status 1 where something costs more than it may."""
    parser = argparse.ArgumentParser(prog="python -m tests.bench.deciding", description=__doc__)
    parser.add_argument("--times", type=int, default=30)
    found = measured(parser.parse_args(arguments).times)
    over = False
    for name, (ms, most) in found.items():
        over = over or (most is not None and ms > most)
        print(f"{name:42} {ms:6.1f} ms" + (f"  (at most {most:g})" if most else ""))  # noqa: T201
    return int(over)


if __name__ == "__main__":
    sys.exit(main())
