"""What a trial would teach, before it is run: which load parts what is possible of a body best.

Each particle is one possible body with a load that just fills it and one that just spills it over. The
look that a trial's load would come in with is told by those, within a doubt; what would then be
believed is worked out for each look and weighed by how likely it is. A load teaches by how much
narrower the two edges are known after it on average. No load past the guard rails or the change
allowed against the plan is weighed, nor a larger one that would more likely than not spill: a
trial may miss, but it is still a week of somebody's preparation.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np

from engine.decision.beliefs import frame_of
from engine.evidence import deciding
from engine.evidence.body import learning
from engine.evidence.planning import drafting as known
from engine.model.forecast import subsample
from engine.model.normal import normal_below
from engine.model.particles import Belief
from engine.model.structures import Floats
from engine.model.tracker import first_belief, generator
from engine.planning.behind.learning import PARTICLES, edges, led_through
from engine.values.athlete import Athlete, Baseline
from engine.values.case import PastWeek
from engine.values.limits import GuardRails
from engine.values.plan import PeakPlan


@dataclass(frozen=True, slots=True, kw_only=True)
class Lesson:
    """What a trial with that mean load day (g/kg) is expected to teach.

    `flat`, `full` and `spilled` are the chances of its look; `narrower` is the share by which the loads
    that just fill and just spill are expected to be known more narrowly after it (0 to 1).
    """

    g_per_kg: float
    flat: float
    full: float
    spilled: float
    narrower: float


def lessons(
    athlete: Athlete, baseline: Baseline, plan: PeakPlan, weeks: Sequence[PastWeek] = ()
) -> tuple[Lesson, ...]:
    """A lesson for each load that a trial of this plan may have, the smallest load first.

    Of what is believed after `weeks` (oldest first). Empty for a plan without a load. The chance is
    fixed by the athlete, so that asking again gives the same.
    """
    if not plan.load_days or plan.load_g <= 0:
        return ()
    kg = athlete.body_mass_kg
    planned = plan.load_g / len(plan.load_days) / kg
    key = f"{athlete.sex}/{athlete.birth_year}/{athlete.height_cm:g}/{kg:g}/teaching"
    rng = generator(key, weeks[-1].day if weeks else known.FIRST_DAY)
    few = subsample(_believed(athlete, baseline, weeks, rng), PARTICLES, rng)
    flat, spill = edges(few.person, few.body, plan, baseline, kg)
    found = [_lesson(load, flat, spill) for load in _loads(athlete, planned)]
    safe = known.SPILL_AT_MOST.value
    return tuple(one for one in found if one.spilled <= safe or one.g_per_kg <= planned)


def best_lesson(
    athlete: Athlete, baseline: Baseline, plan: PeakPlan, weeks: Sequence[PastWeek] = ()
) -> Lesson | None:
    """The load that teaches most; of those about as good the one nearest the plan. None without any."""
    found = lessons(athlete, baseline, plan, weeks)
    if not found:
        return None
    most = max(one.narrower for one in found)
    planned = plan.load_g / len(plan.load_days) / athlete.body_mass_kg
    alike = [one for one in found if one.narrower >= most - known.ALIKE.value]
    return min(alike, key=lambda one: abs(one.g_per_kg - planned))


def _believed(
    athlete: Athlete, baseline: Baseline, weeks: Sequence[PastWeek], rng: np.random.Generator
) -> Belief:
    if not weeks:
        return first_belief(frame_of(athlete, baseline), rng)
    return list(led_through(athlete, baseline, weeks))[-1]


def _loads(athlete: Athlete, planned: float) -> list[float]:
    """The plan's own load and others in steps either way, inside rails and the change allowed."""
    rail, kg = GuardRails.of(athlete).rail("carb_ceiling_g"), athlete.body_mass_kg
    step = known.STEP.value
    count = int(deciding.SUGGESTED_CHANGE_G_PER_KG.value / step)
    loads = [planned + step * number for number in range(-count, count + 1)]
    return [load for load in loads if rail.low / kg <= load <= rail.high / kg]


def _lesson(load: float, flat: Floats, spill: Floats) -> Lesson:
    """From the edges of each particle: the look's chances, and the spread left after each look."""
    under = normal_below((np.log(flat) - np.log(load)) / learning.FLAT_DOUBT.value)
    over = normal_below((np.log(load) - np.log(spill)) / learning.SPILL_DOUBT.value)
    looks = np.stack([(1 - over) * under, (1 - over) * (1 - under), over]).astype(float)
    chances = looks.mean(axis=1)
    narrower = [
        1 - _left(np.log(edge), looks, chances) / max(float(np.log(edge).std()), 1e-6)
        for edge in (flat, spill)
    ]
    return Lesson(
        g_per_kg=round(load, 6),
        flat=float(chances[0]),
        full=float(chances[1]),
        spilled=float(chances[2]),
        narrower=max(float(np.mean(narrower)), 0.0),
    )


def _left(edge: Floats, looks: Floats, chances: Floats) -> float:
    """The SD of an edge that is left after the look is known, on average over the looks."""
    left = 0.0
    for look, chance in zip(looks, chances, strict=True):
        if chance > 0:
            weight = look / look.sum()
            mean = float((weight * edge).sum())
            left += float(chance) * float(np.sqrt((weight * (edge - mean) ** 2).sum()))
    return left
