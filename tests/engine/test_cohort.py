"""The bench of worlds: none of them is the tracker's own, limits hold, and a real loss is seen."""

from __future__ import annotations

import ast
import inspect
import json
import sys
from dataclasses import replace
from itertools import pairwise
from pathlib import Path

import numpy as np
import pytest

from engine.bench import worlds as package
from engine.bench.eye import Week
from engine.bench.report import BY_ID, EACH_RULE, Task, measure, odds_by_tenth, share
from engine.bench.setting import DAYS_OUT, Trouble, clients, planned_g
from engine.bench.worlds import WORLDS
from engine.bench.worlds.world import BLUR, SHARE
from engine.cli.commands import cohort_command
from engine.decision.rules import RULES
from engine.values.plan import LOAD_DAYS

#: What the tracker believes in; a world that used it would be asking the model about itself.
MODEL = ("physiology", "structures", "tracker", "forecast", "foresight", "rescale", "evidence")


@pytest.mark.parametrize("path", sorted(Path(package.__file__).parent.glob("*.py")), ids=str)
def test_no_world_uses_the_equations_that_the_tracker_believes_in(path: Path) -> None:
    tree = ast.parse(path.read_text(encoding="utf-8"))
    imported = {node.module or "" for node in ast.walk(tree) if isinstance(node, ast.ImportFrom)}
    names = {part for module in imported for part in module.split(".")}
    assert not names & set(MODEL)


def test_there_are_at_least_five_worlds_and_each_gives_its_sources_or_says_assumed() -> None:
    assert len(WORLDS) >= 5
    for world in WORLDS.values():
        told = inspect.getdoc(sys.modules[type(world).__module__]) or ""
        said = told.partition(f'World "{world.id}"')[2].partition('\nWorld "')[0]
        assert "assumed" in said and any(char.isdigit() for char in said), world.id


@pytest.mark.parametrize("name", list(WORLDS))
def test_in_every_world_plans_miss_to_both_sides_and_could_be_mended(name: str) -> None:
    world = WORLDS[name]
    who = world.people(60, np.random.default_rng(2))
    people = clients(who, 2, Trouble())
    week = Week(world, who, 2, np.array([one.told_short for one in people]))
    now = week.first
    for out in DAYS_OUT:
        now = week.after(now, out, np.array([planned_g(one.plan, out) for one in people]))
    assert world.judging.flat(now).mean() >= 0.05
    assert world.judging.spilled(now).mean() >= 0.05
    assert np.all((now[SHARE] > 0) & (now[SHARE] <= 1) & (now[BLUR] >= 0))


@pytest.mark.parametrize("name", list(WORLDS))
def test_a_larger_load_leaves_nobody_emptier_or_sharper(name: str) -> None:
    world = WORLDS[name]
    who = world.people(20, np.random.default_rng(4))
    week = Week(world, who, 4, np.ones(20))
    ends = []
    for load in (4.0, 7.0, 10.0):
        now = week.first
        for out in DAYS_OUT:
            now = week.after(now, out, who.mass * (load if out in LOAD_DAYS else 2.0))
        ends.append(now)
    for less, more in pairwise(ends):
        assert np.all(more[SHARE] >= less[SHARE] - 0.01)
        assert np.all(more[BLUR] >= less[BLUR] - 1e-9)


def test_the_forecast_as_shipped_gains_on_the_plan_breaks_no_limit_and_beats_nobody_who_knows() -> (
    None
):
    parts = [
        measure(Task(world=name, policy="forecast", number=5, seed=3, trials=0))
        for name in ("one-store", "two-phase", "pool")
    ]
    fixed, free, inside, look = (
        np.concatenate(arrays)
        for arrays in (
            [part.fixed for part in parts],
            [part.free for part in parts],
            [part.inside for part in parts],
            [part.ended[0].look for part in parts],
        )
    )
    assert np.all(free >= fixed - 1e-3)
    assert np.all(free >= inside - 0.02)
    assert sum(part.ended[0].limits_broken for part in parts) == 0
    # Far under what is measured with more athletes, and far over doing nothing.
    assert (look - fixed).sum() > 0.15 * (free - fixed).sum()


def test_the_same_athletes_end_the_same_way_each_time() -> None:
    task = Task(world="flux", policy="forecast", number=2, seed=5, trials=1)
    once, again = measure(task), measure(task)
    for one, other in zip(once.ended, again.ended, strict=True):
        assert np.array_equal(one.look, other.look)


def test_a_silent_coach_gets_no_more_than_what_goes_out_alone() -> None:
    task = Task(world="two-muscles", policy="silent coach", number=3, seed=3, trials=0)
    (ended,) = measure(task).ended
    people = clients(WORLDS["two-muscles"].people(3, np.random.default_rng([3, 40])), 3, Trouble())
    for i, one in enumerate(people):
        alone = BY_ID["silent coach"].limits(one.athlete, one.plan, one.baseline)
        for out in DAYS_OUT:
            moved = abs(ended.given[out][i] - planned_g(one.plan, out))
            assert moved <= alone.apply_without_asking_g + 1e-6


def test_the_table_is_measured_with_and_without_each_of_its_rules() -> None:
    left_out = [policy.without for policy in EACH_RULE if policy.without]
    assert left_out == [frozenset({rule.id}) for rule in RULES[:-1]]
    task = Task(world="pool", policy="rules alone", number=3, seed=3, trials=0)
    (with_it,) = measure(task).ended
    (without,) = measure(replace(task, policy="without load-over-usual")).ended
    moved = [abs(with_it.given[out] - without.given[out]).max() for out in DAYS_OUT]
    assert max(moved[:4]) == 0  # it is a rule of the load
    assert max(moved[4:]) > 0


def test_a_share_of_the_gain_has_an_error_over_seeds_or_athletes() -> None:
    gain, possible = np.array([0.1, 0.2, 0.0, 0.1]), np.array([0.2, 0.2, 0.2, 0.2])
    found, over_athletes = share(gain, possible, np.zeros(4))
    assert found == 0.5
    assert over_athletes > 0
    assert share(gain, possible, np.array([0.0, 1, 2, 2]))[1] > 0


def test_odds_are_set_beside_what_came_by_tenths() -> None:
    chances = np.array([[0.05, 0.95], [0.9, 0.0], [0.05, 0.05]])
    tenths = odds_by_tenth(chances, np.array([False, True]), np.array([False, False]))
    assert [one["times"] for one in tenths] == [4, 2]
    assert tenths[0]["came"] == 0 and tenths[1]["came"] == 1


def test_the_command_prints_a_row_a_world_and_policy(capsys: pytest.CaptureFixture[str]) -> None:
    argv = ["--athletes", "3", "--seeds", "3", "--trials", "0", "--workers", "1"]
    argv += ["--worlds", "pool", "--policies", "rules alone"]
    assert cohort_command([*argv, "--json"]) == 0
    (row,) = json.loads(capsys.readouterr().out)["rows"]
    assert (row["world"], row["policy"]) == ("pool", "rules alone")
    assert row["by_trials"][0]["limits_broken"] == 0
    assert cohort_command(argv) == 0
    assert "pool" in capsys.readouterr().out
