"""How large a rule's own change is: graded by how far the look is off, on both mornings, and by room.

A rule's steps give direction and the small step that goes out alone. Where no forecast gives a size,
the proposal grows from there: with how far fullness was from what was expected, today and the
morning before, less what is this athlete's own way of answering; and with how the planned load stands
beside the usual one, which counts by itself, too. Once a trial has shown what such a load does, only a
spill earns more than steps.
It never turns a step round, nor makes it smaller.
"""

from __future__ import annotations

from engine.decision.facts import Facts
from engine.evidence import grading as known
from engine.evidence.source import Number


def graded_g(facts: Facts, steps: int, step_g: float, body_mass_kg: float) -> float:
    """Grams that a rule asks for, in whole steps of the coach's: at least its own steps."""
    small = steps * step_g
    size = _g_per_kg(facts, steps) * body_mass_kg
    whole = round(min(size, known.GRADED_MOST.value * body_mass_kg) / step_g) * step_g
    return max(small, whole) if steps > 0 else min(small, -whole)


def _g_per_kg(facts: Facts, steps: int) -> float:
    if steps == 0 or not facts.loading:
        return 0.0
    # One morning alone earns no more than the rule's steps, nor do two where a week has shown more.
    small = facts.fullness_short_before is None or facts.load_shown
    if steps > 0:
        if not facts.measured:
            return 0.0
        past = 0.0 if small else max(facts.behind - known.RAISE_FROM.value, 0.0)
        return max(past * known.RAISE_PER_GRADE.value, facts.under_by)
    cut = max(facts.ahead_by, 0.0) * known.CUT_PER_GRADE.value
    cut = cut if facts.ahead and not small else 0.0
    # Blur on a load that did not spill the last time is more likely water, or a strict eye.
    doubtful = facts.load_held and not facts.seen_spilled
    if steps <= -2 and (facts.spilling or facts.seen_spilled) and not doubtful:
        clear = facts.blurred or facts.seen_spilled or facts.says_spilled
        spill = known.SPILL_CUT if clear else known.FALLEN_CUT
        cut = max(cut, _for_spill(facts, spill))
    if facts.soft_on_much and not small and not doubtful:
        cut = max(cut, _for_spill(facts, known.SOFT_ON_MUCH_CUT))
    # What the plan's load alone asks for stands on no morning.
    return cut if facts.flat else max(cut, facts.over_by)


def _for_spill(facts: Facts, on_a_usual_load: Number) -> float:
    return on_a_usual_load.value + known.SPILL_CUT_PER_LOAD.value * facts.load_counted
