"""The bench of virtual athletes: limits hold, it repeats, and nobody beats the one who knows."""

from __future__ import annotations

import json

import numpy as np
import pytest

from engine.cohort.athletes import draw_athletes
from engine.cohort.bench import Outcome, fixed_plan, oracle, rules_alone, with_forecast
from engine.cohort.policies import Foresight, frame_of
from engine.cohort.week import DAYS_OUT, LOAD_DAYS, limits, plan_g
from engine.commands import cohort_command
from engine.look import Look
from engine.tracker import Morning

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


def test_athletes_of_another_population_differ_together_not_only_one_by_one() -> None:
    def usual_ceiling(seed: int, population_spread: float) -> float:
        drawn = draw_athletes(400, np.random.default_rng(seed), population_spread=population_spread)
        return float(np.log(drawn.ceiling / drawn.lean).mean())

    alike, apart = (
        np.std([usual_ceiling(seed, spread) for seed in range(12)]) for spread in (0.0, 0.2)
    )
    assert alike < 0.03
    assert apart > 0.1


@pytest.mark.parametrize("look", list(Look))
def test_the_word_on_the_last_look_gives_the_next_load_its_direction(look: Look) -> None:
    plan, bound = plan_g(80.0), limits(80.0)
    frame = frame_of(female=False, body_mass_kg=80.0, body_fat_percent=8.0)
    mind = Foresight(frame, np.random.default_rng(5), particles=200)
    for out in DAYS_OUT:
        mind.hear(Morning(fullness=6, sharpness=3))
        mind.eat(out, plan[out], plan[out])
    mind.see(look)
    mind.next_week(weeks=3)
    before = sum(plan[out] for out in LOAD_DAYS)
    after = sum(mind.suggest(plan, bound)[out] for out in LOAD_DAYS)
    assert {Look.FLAT: after >= before, Look.FULL: after == before, Look.SPILLED: after <= before}[
        look
    ]


def test_the_command_prints_every_policy_as_data(capsys: pytest.CaptureFixture[str]) -> None:
    argv = ["--athletes", "4", "--seed", "3", "--particles", "60", "--workers", "1", "--json"]
    assert cohort_command(argv) == 0
    found = json.loads(capsys.readouterr().out)
    assert set(found["policies"]) >= {"fixed plan", "rules alone", "rules with forecast", "oracle"}
    assert all(row["limits_broken"] == 0 for row in found["policies"].values())
