"""The bench's report: each policy in each world against the fixed plan and the all-knowing choice."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass, replace
from typing import NamedTuple

import numpy as np

from engine.bench.eye import Week
from engine.bench.knowing import all_knowing
from engine.bench.setting import DAYS_OUT, ORDINARY, Client, Trouble, clients, narrow, planned_g
from engine.bench.week import Ended, Policy, prior_after, weeks_behind
from engine.bench.worlds import WORLDS
from engine.bench.worlds.world import Bools, Floats, World
from engine.decision.rules import RULES
from engine.values.body import Prior
from engine.values.limits import Limits
from engine.values.plan import LOAD_DAYS

POLICIES: tuple[Policy, ...] = (
    Policy(id="rules alone", foresight=False),
    Policy(id="forecast", foresight=True),
    Policy(id="rules, coach's eye", foresight=False, looks=True),
    Policy(id="coach's eye", foresight=True, looks=True),
    Policy(id="30 weeks of others", foresight=True, finished=30),
    Policy(id="silent coach", foresight=True, answers=False),
    Policy(id="narrow limits", foresight=True, limits=narrow),
    Policy(id="wrong fat figure", foresight=True, trouble=Trouble(fat_error=3, fat_bias=5)),
    Policy(id="misreported carbs", foresight=True, trouble=Trouble(report_spread=0.15)),
    Policy(id="missed mornings", foresight=True, trouble=Trouble(missed=0.3)),
    Policy(id="other scale", foresight=True, trouble=Trouble(file_mass_error=0.04)),
)
#: The rows that are run where none are named.
SHIPPED: tuple[str, ...] = tuple(policy.id for policy in POLICIES)
_NAMED = {policy.id: policy for policy in POLICIES}


def _without_one() -> tuple[Policy, ...]:
    """The rules alone with one left out; where it needs a coach's eye, beside that."""
    found = []
    for rule in RULES[:-1]:
        with_it = _NAMED[
            "rules, coach's eye" if rule.id.startswith("coach-sees") else "rules alone"
        ]
        found.append(replace(with_it, id=f"without {rule.id}", without=frozenset({rule.id})))
    return tuple(found)


#: The rule table with and without each rule but the last, which is what remains.
EACH_RULE: tuple[Policy, ...] = (
    _NAMED["rules alone"],
    _NAMED["rules, coach's eye"],
    *_without_one(),
)
BY_ID = {policy.id: policy for policy in (*POLICIES, *EACH_RULE)}


WORSE_BY = 0.05
#: Athletes of one task; each keeps few beliefs in mind, so that yesterday's is still at hand.
PART = 10


@dataclass(frozen=True, slots=True, kw_only=True)
class Task:
    """One policy on some of the athletes of a world, a unit that may run in its own process."""

    world: str
    policy: str
    number: int
    seed: int
    trials: int


@dataclass(frozen=True, slots=True, kw_only=True)
class Measured:
    """The looks of some athletes under the plan, the all-knowing choice and a policy."""

    fixed: Floats
    free: Floats
    inside: Floats  # all-knowing, inside the limits that the coach begins with
    ended: tuple[Ended, ...]  # by trials behind


Run = Callable[[Callable[[Task], Measured], list[Task]], Iterable[Measured]]


def one_by_one(run: Callable[[Task], Measured], tasks: list[Task]) -> Iterable[Measured]:
    return [run(task) for task in tasks]


def measure(task: Task) -> Measured:
    """A policy's weeks, and the same week under the plan and the all-knowing choice."""
    world, policy = WORLDS[task.world], BY_ID[task.policy]
    who = world.people(task.number, np.random.default_rng([task.seed, 40]))
    people = clients(who, task.seed, policy.trouble)
    short = np.array([one.told_short for one in people])
    week = Week(world, who, task.seed, short)
    trials = [Week(world, who, task.seed + 1000 * (k + 1), short) for k in range(task.trials)]
    fixed, free, inside = reference(world, week, people, policy)
    prior = learnt(world, policy.finished, task.seed) if policy.finished else None
    ended = weeks_behind(policy, week, trials, people, prior)
    return Measured(fixed=fixed, free=free, inside=inside, ended=tuple(ended))


def learnt(world: World, weeks: int, seed: int) -> Prior | None:
    """The prior after so many finished weeks of others of that world, by the rules alone."""
    others = world.people(weeks, np.random.default_rng([seed, 51]))
    files = clients(others, seed + 51, ORDINARY)
    short = np.array([one.told_short for one in files])
    return prior_after(BY_ID["rules alone"], Week(world, others, seed + 51, short), files)


def reference(
    world: World, week: Week, people: Sequence[Client], policy: Policy
) -> tuple[Floats, Floats, Floats]:
    """Looks under the fixed plan, the free all-knowing choice, and that inside the limits."""
    now = week.first
    begin = now
    for out in DAYS_OUT:
        begin = now if out == max(LOAD_DAYS) else begin
        now = week.after(now, out, np.array([planned_g(one.plan, out) for one in people]))
    limits: list[Limits] = [policy.limits(one.athlete, one.plan, one.baseline) for one in people]
    free, _ = all_knowing(week, begin, people, None)
    inside, _ = all_knowing(week, begin, people, limits)
    return world.judging.look(now), free, inside


class Cohort(NamedTuple):
    """How many athletes of each world, and the seeds that they are drawn with."""

    number: int
    seeds: Sequence[int]


def bench(
    cohort: Cohort,
    *,
    worlds: Sequence[str] = tuple(WORLDS),
    policies: Sequence[str] = SHIPPED,
    trials: int = 2,
    spread: Run = one_by_one,
) -> dict[str, object]:
    """Every policy in every world, on the same athletes; plain data, ready to print."""
    number, seeds = cohort
    rows = [(world, policy) for world in worlds for policy in policies]
    parts = [
        (seed, min(PART, number - begin), seed + 17 * begin)
        for seed in seeds
        for begin in range(0, number, PART)
    ]
    tasks = [
        Task(world=world, policy=policy, number=size, seed=at, trials=trials)
        for world, policy in rows
        for _, size, at in parts
    ]
    found = list(spread(measure, tasks))
    table = []
    for k, (world, policy) in enumerate(rows):
        mine = found[k * len(parts) : (k + 1) * len(parts)]
        by_seed = np.concatenate([np.full(size, seed) for seed, size, _ in parts])
        table.append({"world": world, "policy": policy, **_row(mine, by_seed)})
    return {"athletes": number, "seeds": list(seeds), "rows": table}


def _row(parts: Sequence[Measured], by_seed: Floats) -> dict[str, object]:
    fixed, free, inside = (
        np.concatenate([getattr(part, name) for part in parts])
        for name in ("fixed", "free", "inside")
    )
    possible = free - fixed
    return {
        "plan": round(float(fixed.mean()), 4),
        "all_knowing": round(float(free.mean()), 4),
        "inside_limits": share(inside - fixed, possible, by_seed)[0],
        "by_trials": [
            _summary([part.ended[k] for part in parts], fixed, possible, by_seed)
            for k in range(len(parts[0].ended))
        ],
    }


def share(gain: Floats, possible: Floats, by_seed: Floats) -> tuple[float, float]:
    """Share of the possible gain, and its standard error.

    Over seeds where there are three or more, else over athletes (a ratio of two means).
    """
    whole = float(gain.sum() / possible.sum())
    seeds = np.unique(by_seed)
    if len(seeds) >= 3:
        each = [gain[by_seed == s].sum() / possible[by_seed == s].sum() for s in seeds]
        error = float(np.std(each, ddof=1) / np.sqrt(len(seeds)))
    else:
        off = gain - whole * possible
        error = float(np.std(off) / np.sqrt(len(off)) / possible.mean())
    return round(whole, 3), round(error, 3)


def _summary(
    parts: Sequence[Ended], fixed: Floats, possible: Floats, by_seed: Floats
) -> dict[str, object]:
    look = np.concatenate([part.look for part in parts])
    flat = np.concatenate([part.flat for part in parts])
    spilled = np.concatenate([part.spilled for part in parts])
    gain = look - fixed
    found, error = share(gain, possible, by_seed)
    inside = [held for part in parts for held in part.inside]
    chances = np.concatenate([part.chances for part in parts], axis=1)
    return {
        "gain": found,
        "gain_error": error,
        "worse": round(float((gain < -WORSE_BY).mean()), 4),
        "flat": round(float(flat.mean()), 3),
        "spilled": round(float(spilled.mean()), 3),
        "limits_broken": sum(part.limits_broken for part in parts),
        "band_80": round(float(np.mean(inside)), 3) if inside else None,
        "odds": odds_by_tenth(chances, flat, spilled),
    }


def odds_by_tenth(chances: Floats, flat: Bools, spilled: Bools) -> list[dict[str, float]]:
    """What was said on the last morning of the load beside what came, by tenths."""
    known = ~np.isnan(chances[0])
    came = np.where(spilled, 2, np.where(flat, 0, 1))[known]
    said = np.concatenate([chances[kind][known] for kind in range(3)])
    was = np.concatenate([came == kind for kind in range(3)])
    tenths = np.minimum((said * 10).astype(int), 9)
    return [
        {
            "said": round(float(said[tenths == k].mean()), 3),
            "came": round(float(was[tenths == k].mean()), 3),
            "times": int((tenths == k).sum()),
        }
        for k in range(10)
        if (tenths == k).any()
    ]


def off_by(odds: Sequence[dict[str, float]]) -> float | None:
    """How far odds lie from what came, by tenth, weighted by how often each was said."""
    times = sum(one["times"] for one in odds)
    if not times:
        return None
    return sum(one["times"] * abs(one["said"] - one["came"]) for one in odds) / times


def table(found: dict[str, object]) -> str:
    """The findings for a terminal: a row a world and policy, with 0, 1, 2 trials behind."""
    rows = found["rows"]
    assert isinstance(rows, list)  # for the type checker
    wide = max(len("policy"), *(len(row["policy"]) for row in rows))
    lines = [
        f"{found['athletes']} virtual athletes a world, seeds {found['seeds']}. Share of what an "
        "all-knowing choice gains over the fixed plan (its standard error),",
        "share made worse by over 0.05, odds' mean distance from what came, 80 % weight band; "
        "with no trial behind, then one, then two.",
        f"{'world':12} {'policy':{wide}} {'most*':>5}  {'no trial':28} {'one':28} {'two':28} broken",
    ]
    for row in rows:
        cells = [_cell(one) for one in row["by_trials"]]
        broken = sum(one["limits_broken"] for one in row["by_trials"])
        lines.append(
            f"{row['world']:12} {row['policy']:{wide}} {row['inside_limits']:5.0%}  "
            + " ".join(f"{cell:28}" for cell in cells)
            + f" {broken}"
        )
    lines.append("*  of an all-knowing choice held to the coach's limits")
    return "\n".join(lines)


def _cell(one: dict[str, object]) -> str:
    odds = one["odds"]
    assert isinstance(odds, list)  # for the type checker
    off, band = off_by(odds), one["band_80"]
    said = "  -" if off is None else f"{off:3.2f}"
    held = "  -" if band is None else f"{band:3.0%}"
    return f"{one['gain']:4.0%} ({one['gain_error']:.0%}) w{one['worse']:.0%} {said} {held}"
