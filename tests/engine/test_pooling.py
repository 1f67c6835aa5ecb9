"""Finished weeks move the prior for the next athlete as a hierarchical model of people has it.

The update of a normal mean by observations of unequal precision is that of Gelman et al., Bayesian
Data Analysis, section 5.4 (from memory); here it is held against the posterior found on a grid.
"""

from __future__ import annotations

import json
from collections.abc import Callable
from dataclasses import replace
from datetime import date

import numpy as np
import pytest

from engine.decision.beliefs import taught_by
from engine.decision.decide import case_as_dict, case_from_dict, decide, decision_as_dict
from engine.decision.record import plain, taught_from_dict
from engine.evidence.body import pooling as e
from engine.model.particles import ALIKE, MODEL, PRIOR, Covariates
from engine.model.pooling import pooled, taught
from engine.model.structures import KINDS, Kind
from engine.model.tracker import first_belief, generator
from engine.values.athlete import Sex
from engine.values.body import KindShares, Prior, Spread, Taught
from engine.values.case import ForecastUse
from engine.values.checkin import Look
from tests.engine.test_foresight import HABIT, WHO, case, foreseen, trial

FRAME = Covariates(sex=Sex.FEMALE, body_mass_kg=60, body_fat_percent=14)
DAY = date(2027, 5, 3)


def athlete(weeks: int = 1, *, model: int = MODEL, **moved: tuple[float, float]) -> Taught:
    """Somebody whose weeks left the published prior, but for the parameters named (mean and SD)."""
    published = {name: spread for name, spread in PRIOR.items() if name != "scale"}
    return Taught(
        weeks=weeks,
        model=model,
        parameters=tuple(Spread(name, *at) for name, at in (published | moved).items()),
        kinds=tuple(
            KindShares(kind.name.lower(), tuple(likely))
            for kind, likely in zip(Kind, KINDS, strict=True)
        ),
    )


def of(prior: Prior | None, name: str) -> Spread:
    assert prior is not None
    return next(one for one in prior.parameters if one.name == name)


def test_without_finished_weeks_there_is_no_prior_but_the_published_one() -> None:
    assert pooled([]) is None
    assert pooled([athlete(weeks=0)]) is None
    assert pooled([athlete(model=min(ALIKE) - 1)]) is None


def test_weeks_that_taught_nothing_leave_the_published_prior() -> None:
    prior = pooled([athlete()] * 30)
    assert prior is not None
    assert (prior.weeks, prior.athletes, prior.model) == (30, 30, MODEL)
    for one in prior.parameters:
        mean, spread = PRIOR[one.name]
        assert one.mean == pytest.approx(mean, abs=1e-5)
        assert one.spread == pytest.approx(spread, rel=1e-4)
    for kind, likely in zip(prior.kinds, KINDS, strict=True):
        assert kind.shares == pytest.approx(tuple(likely), abs=1e-4)


def test_the_groups_mean_is_the_posterior_found_on_a_grid_for_the_scatter_found() -> None:
    from scipy.stats import norm  # noqa: PLC0415 - no other test waits for it to be loaded

    mean, spread = PRIOR["ceiling"]
    said, noise = (0.20, 0.05, 0.30, 0.16), 0.12  # what each athlete's weeks alone would say
    found = of(pooled([_left_by(one, noise) for one in said]), "ceiling")
    unknown = float(e.BETWEEN) * spread**2
    grid = np.linspace(-1, 1, 20001)

    def posterior(within: float) -> tuple[float, float]:
        density = norm.logpdf(grid, mean, unknown**0.5)
        for one in said:
            density += norm.logpdf(one, grid, (within + noise**2) ** 0.5)
        weight = np.exp(density - density.max())
        weight /= weight.sum()
        middle = float((grid * weight).sum())
        return middle, float((weight * (grid - middle) ** 2).sum())

    # The spread that is told is the scatter of people and the doubt about their mean together.
    within = _solved(lambda one: one + posterior(one)[1] - found.spread**2, spread**2)
    assert found.mean == pytest.approx(posterior(within)[0], abs=2e-3)


def _solved(off: Callable[[float], float], about: float) -> float:
    from scipy.optimize import brentq  # noqa: PLC0415

    return float(brentq(off, 0.05 * about, 3 * about))


def _left_by(said: float, noise: float, name: str = "ceiling") -> Taught:
    """Somebody whose weeks, taken alone, say so much with so much noise."""
    mean, spread = PRIOR[name]
    precision = 1 / spread**2 + 1 / noise**2
    left = (mean / spread**2 + said / noise**2) / precision
    return athlete(**{name: (left, precision**-0.5)})


@pytest.mark.parametrize(("where", "scatter"), [(0.25, 0.10), (-0.2, 0.22), (0.0, 0.19)])
def test_a_groups_mean_and_scatter_are_found_again(where: float, scatter: float) -> None:
    rng = np.random.default_rng(3)
    people = rng.normal(where, scatter, 2000)
    noise = 0.08
    told = [_left_by(float(one), noise) for one in people + rng.normal(0, noise, 2000)]
    found = of(pooled(told), "ceiling")
    assert found.mean == pytest.approx(where, abs=0.04)
    assert found.spread == pytest.approx(scatter, abs=0.03)


def test_one_who_is_far_off_pulls_no_further_than_is_allowed() -> None:
    _, spread = PRIOR["burn"]
    far = of(pooled([athlete(burn=(50.0, 0.05))]), "burn")
    assert 0 < far.mean <= float(e.FARTHEST) * spread


def test_kinds_that_weeks_point_to_grow_likelier_and_none_is_given_up() -> None:
    one_way = tuple(0.94 if k == 2 else 0.02 for k in range(4))
    pointing = replace(athlete(), kinds=(KindShares("spill", one_way), *athlete().kinds[1:]))
    prior = pooled([pointing] * 20)
    assert prior is not None
    spill = prior.kinds[Kind.SPILL].shares
    assert spill[2] > 0.6 > KINDS[Kind.SPILL][2]
    assert min(spill) >= 0.015
    assert sum(spill) == pytest.approx(1)


def test_a_belief_is_summed_up_without_what_belongs_to_a_scale() -> None:
    belief = first_belief(FRAME, generator("Mira", DAY), particles=4000)
    summed = taught(belief, 1)
    assert "scale" not in {one.name for one in summed.parameters}
    assert taught_from_dict(json.loads(json.dumps(plain(summed)))) == summed
    ceiling = next(one for one in summed.parameters if one.name == "ceiling")
    assert ceiling.spread == pytest.approx(PRIOR["ceiling"][1], rel=0.05)


def test_a_share_of_a_new_athletes_particles_begins_where_the_others_ended() -> None:
    prior = pooled([athlete(burn=(0.3, 0.05))] * 30)
    one = first_belief(FRAME, generator("Ida", DAY), particles=4000, prior=prior)
    other = first_belief(FRAME, generator("Ida", DAY), particles=4000)
    moved = float(np.mean(one.person["burn"] != other.person["burn"]))
    assert moved == pytest.approx(1 - float(e.STAYS_PUBLISHED), abs=0.03)
    assert one.person["burn"].mean() > other.person["burn"].mean() + 0.1
    assert np.array_equal(one.person["scale"], other.person["scale"])


def test_a_prior_of_a_model_whose_parameters_mean_the_same_is_used() -> None:
    prior = pooled([athlete(burn=(0.3, 0.05))] * 30)
    assert prior is not None
    for model in ALIKE:
        same = first_belief(
            FRAME, generator("Ida", DAY), particles=300, prior=replace(prior, model=model)
        )
        now = first_belief(FRAME, generator("Ida", DAY), particles=300, prior=prior)
        assert np.array_equal(same.person.values, now.person.values)


def test_a_prior_of_another_model_is_passed_over() -> None:
    prior = pooled([athlete(burn=(0.3, 0.05))] * 30)
    assert prior is not None
    older = replace(prior, model=min(ALIKE) - 1)
    one = first_belief(FRAME, generator("Ida", DAY), particles=300, prior=older)
    other = first_belief(FRAME, generator("Ida", DAY), particles=300)
    assert np.array_equal(one.person.values, other.person.values)


def test_a_decision_holds_the_prior_it_used_and_replays_to_the_bit() -> None:
    prior = pooled([athlete(ceiling=(0.25, 0.06), burn=(0.2, 0.06))] * 30)
    with_prior = replace(case(2), prior=prior, forecast=ForecastUse.PROPOSES)
    record = json.loads(json.dumps(case_as_dict(with_prior)))
    assert record["prior"]["weeks"] == 30
    assert case_from_dict(record) == with_prior
    assert decision_as_dict(decide(case_from_dict(record))) == decision_as_dict(decide(with_prior))
    # Larger stores that burn more: flat is likelier on the same plan.
    assert foreseen(decide(with_prior))[0] > foreseen(decide(case(2)))[0] + 0.05


def test_an_athletes_own_weeks_are_summed_up_from_the_published_prior_on() -> None:
    weeks = (trial(Look.FLAT, sharpness=5, weeks_before=8), trial(Look.FLAT, sharpness=5))
    found = taught_by(WHO, HABIT, weeks, "Mira")
    assert (found.weeks, found.model) == (2, MODEL)
    narrowed = [
        one.spread < 0.95 * PRIOR[one.name][1] for one in found.parameters if one.name != "start"
    ]
    assert any(narrowed)
    silent = replace(weeks[0], history=replace(weeks[0].history, checkins=()))
    assert taught_by(WHO, HABIT, (silent,), "Mira").weeks == 0


def test_what_is_no_prior_cannot_be_made() -> None:
    with pytest.raises(ValueError, match="is no prior"):
        Spread("burn", 0.1, 0.0)
    with pytest.raises(ValueError, match="is no prior"):
        Spread("burn", float("nan"), 0.1)
    with pytest.raises(ValueError, match="are no shares"):
        KindShares("spill", (0.5, 0.6))
