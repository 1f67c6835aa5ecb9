"""Is what a debrief states of a body true? Asked of virtual athletes whose bodies are known.

Each runs trials as on the bench; then what is believed of store and spill point is held against the
hidden values. The spill point of a world is found as it is defined: loads of every size are lived
through, without chance, until the look spills over.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import timedelta

import numpy as np

from engine.bench.eye import Week
from engine.bench.setting import SESSIONS, Client, clients, planned_g
from engine.bench.week import WEEKS_APART, Policy, Practice
from engine.bench.worlds import WORLDS
from engine.bench.worlds.world import BLUR, CHANCES, Condition, Floats, Lived, People, World
from engine.evidence.body import learning as e
from engine.planning.behind.debrief import DayBehind, Debrief, debrief
from engine.planning.behind.hindsight import Moved, rules_weighed
from engine.planning.behind.learning import Quantity, Taught, taught
from engine.planning.behind.next_load import Ahead, ModelMisfit, NextLoad, NothingLearnt, next_load
from engine.planning.behind.next_time import Advice, next_time
from engine.values.case import PastWeek
from engine.values.checkin import Look
from engine.values.plan import LOAD_DAYS, PLAN_DAYS, PeakPlan

EPSILON = 1e-6
RULES = Policy(id="rules", foresight=False)


@dataclass(frozen=True, slots=True)
class Known:
    """One athlete's weeks, what was read off them, and the truth."""

    world: str
    client: Client
    people: People  # alone
    weeks: tuple[PastWeek, ...]
    taught: tuple[Taught, ...]
    store_g: float
    flat_g_per_kg: float
    spill_g_per_kg: float

    def holds(self, quantity: Quantity) -> bool:
        true = self.store_g if quantity is Quantity.STORE else self.spill_g_per_kg
        return self.taught[-1].after[quantity].holds(true)


def athletes(number: int, seed: int, *, trials: int = 2) -> list[Known]:
    """So many of each world, after so many trials."""
    found = []
    for place, world in enumerate(WORLDS.values()):
        rng = np.random.default_rng([seed, place])
        people = world.people(number, rng)
        file = clients(people, seed * 100 + place, RULES.trouble)
        short = np.array([one.told_short for one in file])
        weeks = [Week(world, people, seed * 1000 + 10 * place + n, short) for n in range(trials)]
        practice = Practice(RULES, weeks[0], file)
        for n, week in enumerate(weeks):
            practice.trial(week, WEEKS_APART * (trials - n))
        plans = [one.trials[-1].plan for one in practice.files]
        flats, spills = look_points(world, people, plans, file)
        stores = store_sizes(people)
        for i, one in enumerate(practice.files):
            client = one.client
            found.append(
                Known(
                    world=world.id,
                    client=client,
                    people=people.take(np.array([i])),
                    weeks=one.trials,
                    taught=taught(client.athlete, client.baseline, one.trials),
                    store_g=float(stores[i]),
                    flat_g_per_kg=float(flats[i]),
                    spill_g_per_kg=float(spills[i]),
                )
            )
    return found


def store_sizes(people: People) -> Floats:
    """Glycogen that full muscles hold, g."""
    if "ceiling" in people.traits:
        return people["ceiling"]
    return np.asarray(people["worked_most"] + people["rest_most"])


def look_points(
    world: World, people: People, plans: Sequence[PeakPlan], file: Sequence[Client]
) -> tuple[Floats, Floats]:
    """The loads (g/kg of the mass on file, as told, a load day) under which each is flat, and from
    which each spills over.
    """
    masses = np.array([one.athlete.body_mass_kg for one in file])
    short = np.array([one.told_short for one in file])
    still = np.zeros((CHANCES, len(people)))
    now = world.start(people, still)
    for out in [out for out in PLAN_DAYS if out > max(LOAD_DAYS)]:
        grams = np.array([planned_g(plan, out) for plan in plans]) * short
        now = world.next_morning(people, now, Lived(carb_g=grams, session=SESSIONS[out]), still)
    spills = np.full(len(people), float(e.MOST_ASKED))
    flats = np.full(len(people), float(e.MOST_ASKED))
    for dose in np.arange(float(e.MOST_ASKED), float(e.LEAST_ASKED), -0.1):
        ended = _loaded(world, people, now, dose * masses * short, still)
        spills = np.where(ended[BLUR] > 1, dose, spills)
        flats = np.where(world.judging.flat(ended), flats, dose)
    return flats, spills


def _loaded(
    world: World, people: People, now: Condition, grams: Floats, still: Floats
) -> Condition:
    for out in sorted(LOAD_DAYS, reverse=True):
        now = world.next_morning(people, now, Lived(carb_g=grams, session=SESSIONS[out]), still)
    return now


def shares(known: Sequence[Known], quantity: Quantity) -> dict[str, float]:
    """By world, and over all ("all"), the share whose true value the stated span holds."""
    found = {
        world: float(np.mean([one.holds(quantity) for one in known if one.world == world]))
        for world in dict.fromkeys(one.world for one in known)
    }
    return {**found, "all": float(np.mean([one.holds(quantity) for one in known]))}


def sentences(one: Known) -> tuple[Advice, Advice, Advice]:
    """The three sentences for next time, as the coach reads them."""
    week, athlete, baseline = one.weeks[-1], one.client.athlete, one.client.baseline
    weighed = rules_weighed(athlete, baseline, one.weeks, moved(week))
    return next_time(_summed(week), week.look, one.taught[-1].after, _load(one), weighed)


def moved(week: PastWeek) -> tuple[Moved, ...]:
    """The days that were set otherwise than planned."""
    days = [
        (target, week.history.set_on(week.day - timedelta(days=target.days_out)))
        for target in week.plan
        if target.days_out
    ]
    return tuple(
        Moved(target.days_out, "rules", target.carb_g, set_g)
        for target, set_g in days
        if set_g is not None and abs(set_g - target.carb_g) > EPSILON
    )


def contradicted(one: Known, three: Sequence[Advice] | None = None) -> list[str]:
    """Of the three sentences for next time, those that the athlete's true body speaks against.

    A load that is named, or the middle of a range of them, has to look no worse than the one that it
    takes the place of; after a full look it has to be full. A range of a body's own has to hold the
    true value. A change that is said to have helped has to have won look, one that is said to have
    cost look has to have lost some.
    """
    load, way, still = three or sentences(one)
    wrong = []
    named, then = named_load(load), load.facts.get("then")
    if named is not None and then is not None and _worse(one, named, then):
        wrong.append(load.id)
    if way.id == "load-moved" and not _full(one, way.facts["set_g"] / _kg(one) / len(LOAD_DAYS)):
        wrong.append(way.id)
    if way.id in ("rule-helped", "rule-hurt"):
        gain = _gain(one, int(way.facts["days_out"]), way.facts["change"])
        if gain <= 0 if way.id == "rule-helped" else gain >= 0:
            wrong.append(way.id)
    span = {"open-flat": Quantity.FLAT, "open-spill": Quantity.SPILL}.get(still.id)
    true = one.flat_g_per_kg if span is Quantity.FLAT else one.spill_g_per_kg
    if span is not None and not one.taught[-1].after[span].holds(true):
        wrong.append(still.id)
    return wrong


def named_load(advice: Advice) -> float | None:
    """The load that a sentence advises, g/kg a load day: of a range its middle; None for none."""
    facts = advice.facts
    if "then" not in facts:
        return None
    if "low" in facts:
        return (facts["low"] + facts["high"]) / 2
    return facts["then"] if advice.id == "same-again" else facts["to"]


def _full(one: Known, load: float) -> bool:
    return one.flat_g_per_kg <= load < one.spill_g_per_kg


def _worse(one: Known, load: float, then: float) -> bool:
    """Whether that load truly misses, and not in the way in which the one before it missed."""
    if _full(one, load):
        return False
    if one.weeks[-1].look is Look.FULL:
        return True
    way = Look.FLAT if load < one.flat_g_per_kg else Look.SPILLED
    was = Look.FLAT if then < one.flat_g_per_kg else Look.SPILLED
    return _full(one, then) or way is not was


def _gain(one: Known, days_out: int, change_g: float) -> float:
    """The look truly won by a day's change: the week as it was set, with it and without it."""
    week, world, people = one.weeks[-1], WORLDS[one.world], one.people
    still = np.zeros((CHANCES, 1))

    def ended(left_out: float) -> float:
        now = world.start(people, still)
        for target in week.plan:
            out = target.days_out
            if not out:
                continue
            set_g = week.history.set_on(week.day - timedelta(days=out))
            grams = target.carb_g if set_g is None else set_g
            grams -= left_out if out == days_out else 0.0
            eaten = np.array([grams * one.client.told_short])
            now = world.next_morning(people, now, Lived(carb_g=eaten, session=SESSIONS[out]), still)
        return float(world.judging.look(now)[0])

    return ended(0.0) - ended(change_g)


def _kg(one: Known) -> float:
    return one.client.athlete.body_mass_kg


def _summed(week: PastWeek) -> Debrief:
    """The week read as a whole, as for a coach."""
    days = []
    for target in week.plan:
        day = week.day - timedelta(days=target.days_out)
        set_g = week.history.set_on(day)
        days.append(
            DayBehind(
                target=target,
                set_g=target.carb_g if set_g is None else set_g,
                morning=week.history.on(day),
            )
        )
    return debrief(days, week.look)


def _load(one: Known) -> NextLoad | None:
    athlete, baseline = one.client.athlete, one.client.baseline
    made_from = one.weeks[-1].as_it_went
    limits = RULES.limits(athlete, made_from, baseline)
    try:
        return next_load(athlete, baseline, made_from, one.weeks, Ahead(limits))
    except (NothingLearnt, ModelMisfit):
        return None
