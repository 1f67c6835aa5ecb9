"""The bench of virtual athletes: limits hold, it repeats, and nobody beats the one who knows."""

from __future__ import annotations

import json

import numpy as np
import pytest

from engine.cohort.athletes import draw_athletes
from engine.cohort.bench import Outcome, fixed_plan, oracle, rules_alone, with_forecast
from engine.cohort.week import DAYS_OUT, LOAD_DAYS, limits, plan_g
from engine.commands import cohort_command

ATHLETES = draw_athletes(12, np.random.default_rng(3))


@pytest.fixture(scope="module")
def outcomes() -> dict[str, Outcome]:
    return {
        "fixed": fixed_plan(ATHLETES, 3),
        "rules": rules_alone(ATHLETES, 3),
        "forecast": with_forecast(ATHLETES, 3, particles=150)[0],
        "oracle": oracle(ATHLETES, 3),
    }


def test_no_policy_breaks_a_limit(outcomes: dict[str, Outcome]) -> None:
    assert [one.limits_broken for one in outcomes.values()] == [0, 0, 0, 0]


def test_every_dose_lies_within_floor_ceiling_change_and_load_total(
    outcomes: dict[str, Outcome],
) -> None:
    for one in outcomes.values():
        for i, mass in enumerate(ATHLETES.body_mass):
            coach = float(ATHLETES.generosity[i])
            plan, bound = plan_g(float(mass), coach), limits(float(mass), coach)
            doses = dict(zip(DAYS_OUT, one.doses[:, i], strict=True))
            for out, dose in doses.items():
                assert bound.floor_g <= dose <= bound.ceiling_g
                assert abs(dose - plan[out]) <= bound.change_g(out) + 1e-6
            assert sum(doses[out] for out in LOAD_DAYS) <= bound.load_total_g + 1e-6


def test_who_knows_the_hidden_physiology_is_never_worse_than_the_plan(
    outcomes: dict[str, Outcome],
) -> None:
    assert np.all(outcomes["oracle"].look >= outcomes["fixed"].look - 1e-9)
    assert outcomes["oracle"].look.mean() >= outcomes["forecast"].look.mean()


def test_the_same_seed_gives_the_same_bench() -> None:
    few = draw_athletes(3, np.random.default_rng(3))
    once, again = (with_forecast(few, 3, trials=(0, 1), particles=60) for _ in range(2))
    assert [np.array_equal(a.doses, b.doses) for a, b in zip(once, again, strict=True)] == [
        True
    ] * 2


def test_the_command_prints_every_policy_as_data(capsys: pytest.CaptureFixture[str]) -> None:
    argv = ["--athletes", "4", "--seed", "3", "--particles", "60", "--workers", "1", "--json"]
    assert cohort_command(argv) == 0
    found = json.loads(capsys.readouterr().out)
    assert set(found["policies"]) >= {"fixed plan", "rules alone", "rules with forecast", "oracle"}
    assert all(row["limits_broken"] == 0 for row in found["policies"].values())
