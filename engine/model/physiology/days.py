"""From one morning to the next, and what has changed since the first.

A day begins in the morning, at waking, and food is eaten evenly over the waking hours; exercise
comes first in the day. What `simulate_day` returns is therefore the next morning, fasted.
"""

from __future__ import annotations

from itertools import pairwise

import numpy as np

from engine.evidence.body import physiology as known
from engine.model.physiology.body import Body, Floats, Quantity
from engine.model.physiology.dynamics import (
    HOURS_A_DAY,
    DayPhase,
    RateCoefficients,
    Row,
    dry_loss_l,
    rates_into,
)
from engine.model.physiology.intake import Day, Intake, complete


def first_morning(person: Body, muscle_mmol_per_kg: Quantity | None = None) -> Floats:
    """The state on the first morning, at the usual stores or the muscle glycogen given.

    The liver of someone who starts low in muscle glycogen starts low too.
    """
    concentration = person.usual_muscle if muscle_mmol_per_kg is None else muscle_mmol_per_kg
    people = np.broadcast(person.body_mass_kg, person.muscle_kg, concentration).shape
    state = np.zeros((len(Row), *people))
    fed = np.minimum(concentration / person.usual_muscle, 1.0)
    state[Row.MUSCLE] = person.muscle_g(concentration)
    state[Row.LIVER] = person.lean_kg * float(known.LIVER_OF_LEAN) * float(known.LIVER_USUAL) * fed
    state[Row.PRIMING] = person.standing_priming
    state[Row.GUT_BULK] = float(known.GUT_PER_FIBRE) * person.usual_fibre_g
    state[Row.DEFICIT] = -dry_loss_l(person) * (1 - float(known.WAKING_HOURS) / HOURS_A_DAY)
    return state


def advance(state: Floats, day: Day, person: Body, *, hours: float, step_h: float = 0.25) -> Floats:
    """The state `hours` (at most 24) on, by Heun's method in steps of at most `step_h` hours.

    Steps end where eating or work does. In less than the waking hours food is spread over all of
    them, and a session longer than they are is done within them.
    """
    eaten_over = min(float(known.WAKING_HOURS), hours)
    session = min(day.work.hours, hours)
    marks = sorted({0.0, hours, eaten_over, session})
    pace = RateCoefficients.of(day, person)
    # Written over in place: making arrays of this size anew at each step takes longer than the sums.
    state, there = state.copy(), np.empty_like(state)
    first, second = np.empty_like(state), np.empty_like(state)
    for begin, end in pairwise(marks):
        now = DayPhase(
            eating=hours / eaten_over if begin < eaten_over else 0.0,
            working_hours=session if begin < session else 0.0,
        )
        # Work empties a store many times faster than anything else does.
        longest = step_h / 4 if now.working_hours else step_h
        steps = max(1, int(np.ceil((end - begin) / longest - 1e-9)))
        length = (end - begin) / steps / HOURS_A_DAY
        for _ in range(steps):
            rates_into(first, state, now, pace)
            np.multiply(first, length, out=there)
            there += state
            rates_into(second, there, now, pace)
            first += second
            first *= 0.5 * length
            state += first
    return state


def simulate_day(state: Floats, intake: Intake, person: Body, *, step_h: float = 0.25) -> Floats:
    """The next morning's state after one whole day."""
    return advance(state, complete(intake, person), person, hours=HOURS_A_DAY, step_h=step_h)


def water_change_l(state: Floats, start: Floats, person: Body) -> Floats:
    """Change of body water since `start`, L: with glycogen, outside cells, and deficit."""
    glycogen = state[Row.MUSCLE] + state[Row.LIVER] - start[Row.MUSCLE] - start[Row.LIVER]
    return np.asarray(
        person.bound_water * glycogen / 1000
        + (state[Row.EXTRACELLULAR] - start[Row.EXTRACELLULAR])
        + (state[Row.DEFICIT] - start[Row.DEFICIT])
    )


def mass_change_kg(state: Floats, start: Floats, person: Body) -> Floats:
    """Change of body mass since `start`, kg: the sum of the parts."""
    grams = sum(state[row] - start[row] for row in (Row.MUSCLE, Row.LIVER, Row.GUT_CARB))
    kilos = sum(state[row] - start[row] for row in (Row.GUT_BULK, Row.TISSUE))
    return np.asarray(grams / 1000 + kilos + water_change_l(state, start, person))
