"""The body model written out again for one person with plain floats: to time against, and to check.

Only for a day without exercise, which is what the bench runs.
"""

from __future__ import annotations

import math

from engine.evidence.body import physiology as known
from engine.model.physiology import Body, Intake, Row, complete

STEP_H = 0.25


def plain_day(
    state: list[float], carb_g: float, person: Body, *, step_h: float = STEP_H
) -> list[float]:
    """The next morning's state after a day at that carbohydrate, the rest as not stated."""
    day = complete(Intake(carb_g=carb_g), person)
    facts = {
        "carb": carb_g,
        "energy": float(day.energy_kcal),
        "spent": float(day.spent_kcal),
        "surplus": float(day.surplus),
        "fibre": float(day.fibre_g),
        "sodium": float(day.sodium_mg),
        "water": float(day.water_l),
    }
    length, steps = step_h / 24, round(24 / step_h)
    for step in range(steps):
        eating = 1.5 if step < steps * 2 / 3 else 0.0
        first = _rates(state, facts, eating, person)
        half = [s + length * r for s, r in zip(state, first, strict=True)]
        second = _rates(half, facts, eating, person)
        state = [s + length / 2 * (a + b) for s, a, b in zip(state, first, second, strict=True)]
    return state


def _rates(s: list[float], day: dict[str, float], eating: float, person: Body) -> list[float]:
    lean, mass, muscle_kg = (
        float(person.lean_kg),
        float(person.body_mass_kg),
        float(person.muscle_kg),
    )
    change = [0.0] * len(Row)
    absorbed = s[Row.GUT_CARB] * known.ABSORPTION.value * 24
    made = known.GLUCONEOGENESIS.value * lean
    fed = s[Row.LIVER] / (s[Row.LIVER] + known.LIVER_HALF.value)
    obligate = known.OBLIGATE_GLUCOSE.value * lean
    obligate *= 1 - known.KETOSIS_SPARING.value * (1 - fed)
    spare, short = max(absorbed + made - obligate, 0), max(obligate - absorbed - made, 0)
    room = max(1 - s[Row.LIVER] / float(person.liver_ceiling_g), 0)
    liver_in = spare * known.LIVER_SHARE.value * room
    offered = spare - liver_in

    per_level = muscle_kg * known.GLYCOGEN_MOLAR.value
    level = s[Row.MUSCLE] / per_level
    surplus = min(max(day["surplus"], known.ENERGY_LEAST.value), known.ENERGY_MOST.value)
    spared = known.OXIDATION_ENERGY.value * surplus
    spared += known.OXIDATION_PRIMED.value * (s[Row.PRIMING] - known.PRIMED_RECREATIONAL.value)
    most = float(person.oxidation) * lean * (level / 100) ** known.OXIDATION_POWER.value
    most *= math.exp(-spared)
    fasted = most * known.OXIDATION_FASTED.value
    meals = most - fasted + float(person.activity) * lean
    oxidation = fasted + meals * offered / (offered + meals + 1e-9)
    left = max(offered - oxidation, 0)
    empty = max(1 - level / known.FAST_UNDER.value, 0)
    fastest = float(person.synthesis) * per_level * 24 * (1 + float(person.fast) * empty)
    rested, primed = float(person.ceiling_rested), float(person.ceiling_primed)
    ceiling = rested + s[Row.PRIMING] * (primed - rested)
    space = max(1 - (level / ceiling) ** known.CEILING_STEEPNESS.value, 0)
    stored = fastest * (1 - math.exp(-left / fastest)) * space
    over = left - stored
    lent = max(1 - level / known.LOW_LEVEL.value, 0) * known.LOW_REFILL.value * lean * fed
    resting = float(person.resting_kcal)
    instead = min(over, max(resting / known.CARB_ENERGY.value - obligate - oxidation, 0))

    change[Row.GUT_CARB] = day["carb"] * eating - absorbed
    change[Row.LIVER] = liver_in - short * fed - lent
    change[Row.MUSCLE] = stored + lent - max(oxidation - offered, 0)
    change[Row.GLUCONEOGENESIS] = made
    showing = s[Row.SPILL] / known.SPILL_LAG.value
    change[Row.SPILL] = max(over - float(person.unseen) * lean, 0) - showing
    change[Row.SHOWN_SPILL] = showing - s[Row.SHOWN_SPILL] / known.SPILL_KEPT.value
    change[Row.LIPOGENESIS] = over - instead
    change[Row.OXIDISED] = obligate - short * (1 - fed) + oxidation + instead
    standing = float(person.standing_priming)
    change[Row.PRIMING] = (standing - s[Row.PRIMING]) / known.PRIMING_KEPT.value

    excretion = known.SODIUM_EXCRETION.value
    sodium = (day["sodium"] - known.SODIUM_USUAL.value) / excretion
    gain = known.SODIUM_GAIN_MOST.value
    if sodium > 0:
        sodium = gain * math.tanh(sodium / gain)
    without = max(1 - day["carb"] / (known.KETOSIS_CARB.value * lean), 0)
    aim = sodium - known.SODIUM_CARB.value / excretion * without
    shifted = float(person.bound_water) / 1000 * (change[Row.MUSCLE] + change[Row.LIVER])
    lost = (known.INSENSIBLE.value + known.URINE_LEAST.value) * mass
    lost -= known.METABOLIC_WATER.value * resting / 1000
    to_hand = day["water"] * eating - lost
    made_good = min(to_hand, -s[Row.DEFICIT] * 24 / known.REHYDRATION.value)
    change[Row.DEFICIT] = made_good
    kept = (aim - s[Row.EXTRACELLULAR]) * excretion / known.SODIUM_OF_WATER.value
    change[Row.EXTRACELLULAR] = min(kept, max(to_hand - made_good, 0)) - shifted

    energy = known.CARB_ENERGY.value
    stores = change[Row.MUSCLE] + change[Row.LIVER] + change[Row.GUT_CARB]
    cost = known.FAT_SYNTHESIS_COST.value * energy * change[Row.LIPOGENESIS]
    balance = day["energy"] * eating - day["spent"] - energy * stores - cost
    change[Row.TISSUE] = balance / known.TISSUE_ENERGY.value
    bulk = known.GUT_PER_FIBRE.value * day["fibre"]
    change[Row.GUT_BULK] = (bulk - s[Row.GUT_BULK]) / known.GUT_TRANSIT.value
    return change
