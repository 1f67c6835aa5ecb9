"""The bench's report: each policy against the fixed plan and the oracle, and its calibration."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from dataclasses import dataclass

import numpy as np

from engine.cohort.athletes import PLAN_SPREAD, Athletes, draw_athletes
from engine.cohort.bench import (
    Outcome,
    fixed_plan,
    joined,
    oracle,
    rules_alone,
    scaled_plan,
    with_forecast,
)
from engine.tracker import PARTICLES

WORSE_BY = 0.05
FLOOR_OF_CHANCE = 0.001
#: Athletes that one task of the bench takes on; the result does not depend on it.
PART = 20


@dataclass(frozen=True, slots=True, kw_only=True)
class Task:
    """The forecast policy on some of the athletes, a unit that may run in its own process."""

    athletes: Athletes
    seed: int
    trials: tuple[int, ...]
    particles: int


Run = Callable[[Callable[[Task], list[Outcome]], list[Task]], Iterable[list[Outcome]]]


def run_task(task: Task) -> list[Outcome]:
    """What needs a tracker: the forecast after each number of trials, then the scaled plan."""
    return [
        *with_forecast(task.athletes, task.seed, trials=task.trials, particles=task.particles),
        scaled_plan(task.athletes, task.seed, particles=task.particles),
    ]


def one_by_one(run: Callable[[Task], list[Outcome]], tasks: list[Task]) -> Iterable[list[Outcome]]:
    return [run(task) for task in tasks]


def bench(
    number: int,
    seed: int,
    *,
    trials: tuple[int, ...] = (0, 1, 2),
    particles: int = PARTICLES,
    plan_spread: float = PLAN_SPREAD,
    population_spread: float = 0.0,
    spread: Run = one_by_one,
) -> dict[str, object]:
    """Run every policy on the same athletes; plain data, ready to print.

    With a `population_spread` each part of the athletes is a population of its own.
    """
    parts = [
        draw_athletes(
            min(PART, number - begin),
            np.random.default_rng([seed, begin]),
            plan_spread=plan_spread,
            population_spread=population_spread,
        )
        for begin in range(0, number, PART)
    ]

    def plain(policy: Callable[[Athletes, int], Outcome]) -> Outcome:
        return joined([policy(part, seed + 17 * i) for i, part in enumerate(parts)])

    fixed, best = plain(fixed_plan), plain(oracle)
    outcomes = {"fixed plan": fixed, "rules alone": plain(rules_alone)}
    tasks = [
        Task(athletes=part, seed=seed + 17 * i, trials=trials, particles=particles)
        for i, part in enumerate(parts)
    ]
    tracked = [joined(list(one)) for one in zip(*spread(run_task, tasks), strict=True)]
    outcomes["plan scaled after 1 trial, no more"] = tracked.pop()
    for count, outcome in zip(trials, tracked, strict=True):
        behind = f", {count} trial{'s' if count > 1 else ''} behind" if count else ""
        outcomes["rules with forecast" + behind] = outcome
    outcomes["oracle"] = best
    return {
        "athletes": number,
        "seed": seed,
        "plan_spread": plan_spread,
        "population_spread": population_spread,
        "policies": {name: _summary(one, fixed, best) for name, one in outcomes.items()},
    }


def _summary(one: Outcome, fixed: Outcome, best: Outcome) -> dict[str, object]:
    missed = fixed.flat | fixed.spilled
    possible = float(best.look.mean() - fixed.look.mean())
    gain = one.look - fixed.look
    summary: dict[str, object] = {
        "look": round(float(one.look.mean()), 4),
        "flat": round(float(one.flat.mean()), 4),
        "spilled": round(float(one.spilled.mean()), 4),
        "gain_of_oracle": round(float(gain.mean()) / possible, 4) if possible > 0 else None,
        "better_where_plan_misses": round(float((gain[missed] > 0).mean()), 4)
        if missed.any()
        else None,
        "worse_by_over_0.05": round(float((gain < -WORSE_BY).mean()), 4),
        "limits_broken": one.limits_broken,
        "flags": one.flags,
    }
    if one.inside:
        summary["weight_band_80_holds"] = round(float(np.mean(one.inside)), 4)
    if one.chances is not None:
        summary |= _calibration(one)
    return summary


def _calibration(one: Outcome) -> dict[str, object]:
    """How the chances given the day before compare with what came."""
    assert one.chances is not None  # the caller has looked
    known = ~np.isnan(one.chances[0])
    chances = one.chances[:, known]
    came = np.where(one.spilled, 2, np.where(one.flat, 0, 1))[known]
    given = chances[came, np.arange(len(came))]
    deciles = []
    for low in np.arange(0, 1, 0.1):
        said, was = [], []
        for kind in range(3):
            inside = (chances[kind] >= low) & (chances[kind] < low + 0.1 + 1e-9 * (low > 0.85))
            said += list(chances[kind][inside])
            was += list(came[inside] == kind)
        if said:
            deciles.append(
                {
                    "said": round(float(np.mean(said)), 3),
                    "came": round(float(np.mean(was)), 3),
                    "times": len(said),
                }
            )
    return {
        "log_score": round(float(-np.log(np.maximum(given, FLOOR_OF_CHANCE)).mean()), 4),
        "reliability": deciles,
    }


def table(found: dict[str, object]) -> str:
    """The bench's findings for a terminal, a row a policy, then what was said beside what came."""
    policies = found["policies"]
    assert isinstance(policies, dict)  # for the type checker
    lines = [
        f"{found['athletes']} virtual athletes, seed {found['seed']}, plans differ by "
        f"{found['plan_spread']:g}, populations by {found['population_spread']:g} "
        "(SD of the logarithm)",
        f"{'':36}{'look':>6} {'flat':>6} {'spilled':>7} {'of oracle':>9} {'better*':>8} "
        f"{'worse**':>8} {'flags':>6} {'broken':>7} {'band':>6} {'log score':>9}",
    ]
    lines += [_row(name, row) for name, row in policies.items()]
    lines += [
        "*  of the athletes whom the fixed plan leaves flat or spilled over",
        "** by more than 0.05 of the look, of all athletes",
        "",
        "chance said on the last morning of the load -> share that came so, by tenths",
    ]
    for name, row in policies.items():
        if tenths := row.get("reliability"):
            pairs = "  ".join(f"{one['said']:.2f}->{one['came']:.2f}" for one in tenths)
            lines.append(f"{name}\n  {pairs}")
    return "\n".join(lines)


def _row(name: str, row: dict[str, object]) -> str:
    def shown(key: str, form: str) -> str:
        value = row.get(key)
        return "" if value is None else format(value, form)

    return (
        f"{name:36}{shown('look', '.3f'):>6} {shown('flat', '.1%'):>6} "
        f"{shown('spilled', '.1%'):>7} {shown('gain_of_oracle', '.0%'):>9} "
        f"{shown('better_where_plan_misses', '.0%'):>8} {shown('worse_by_over_0.05', '.1%'):>8} "
        f"{shown('flags', 'd'):>6} {shown('limits_broken', 'd'):>7} "
        f"{shown('weight_band_80_holds', '.1%'):>6} {shown('log_score', '.3f'):>9}"
    ).rstrip()
