"""What to do next time in three sentences: the load, how it is carried out, what to find out.

Each comes with what speaks for it and how far to trust it; a sentence that nothing speaks for is not
made up: then it says that there is nothing to change, or nothing to go by.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field

from engine.evidence import debriefing as known
from engine.evidence import learning as e
from engine.planning.debrief import Debrief
from engine.planning.hindsight import Helped
from engine.planning.learning import Believed, Quantity
from engine.planning.next_load import NextLoad
from engine.values.look import Look

#: Lessons of how a week was carried out, the gravest first.
CARRIED_OUT = (
    "gut-in-the-load", "eaten-short", "water-short", "sleep-short", "eaten-over", "load-moved",
)  # fmt: skip


@dataclass(frozen=True, slots=True)
class Advice:
    """One sentence: `facts` are the figures of its evidence and of its doubt."""

    id: str
    facts: Mapping[str, float] = field(default_factory=dict)


def next_time(
    summed: Debrief,
    look: Look | None,
    after: Believed | None,
    load: NextLoad | None,
    rules: Sequence[Helped] = (),
) -> tuple[Advice, Advice, Advice]:
    """The three: of the load, of how it was carried out, of what is still open."""
    return _of_the_load(summed, look, load), _of_the_way(summed, rules), _of_the_open(summed, after)


def _of_the_load(summed: Debrief, look: Look | None, load: NextLoad | None) -> Advice:
    if look is None:
        return Advice("no-verdict")
    share = summed.eaten_share
    short = share is not None and share < float(known.EATEN_SHORT_SHARE)
    if look is Look.FLAT and short and share is not None:
        return Advice("eat-it-first", {"percent": 100 * share})
    if load is None:
        return Advice({Look.FLAT: "more", Look.FULL: "same", Look.SPILLED: "less"}[look])
    facts = {
        "then": load.then_g_per_kg,
        "to": load.g_per_kg,
        "full": load.after.full,
        "flat": load.after.flat,
        "spilled": load.after.spilled,
    }
    if look is Look.FULL:
        return Advice("same-again", facts)
    moved = load.g_per_kg - load.then_g_per_kg
    if look is Look.FLAT:
        return Advice("more-to" if moved > 0 else "more-unsure", facts)
    return Advice("less-to" if moved < 0 else "less-unsure", facts)


def _of_the_way(summed: Debrief, rules: Sequence[Helped]) -> Advice:
    found = {lesson.id: lesson.facts for lesson in summed.lessons}
    share = summed.eaten_share
    if share is not None and share < float(known.EATEN_SHORT_SHARE):
        found["eaten-short"] = {"eaten_percent": 100 * share}  # said of a flat look in other words
    for one in CARRIED_OUT:
        if one in found:
            return Advice(one, found[one])
    for judged in rules:
        if judged.verdict != "open":
            facts = {
                "days_out": judged.moved.days_out,
                "change": judged.moved.set_g - judged.moved.planned_g,
                "share": max(judged.better, judged.worse),
            }
            return Advice(f"rule-{judged.verdict}", facts)
    return Advice("keep-the-way", {"mornings": summed.mornings})


def _of_the_open(summed: Debrief, after: Believed | None) -> Advice:
    missed = next((one for one in summed.lessons if one.id == "mornings-missed"), None)
    if missed is not None:
        return Advice("answer-more", missed.facts)
    if after is None:
        return Advice("nothing-learnt")
    spans = {quantity: after[quantity] for quantity in (Quantity.FLAT, Quantity.SPILL)}
    widest = max(spans, key=lambda one: spans[one].width / spans[one].middle)
    span = spans[widest]
    facts = {"low": span.low, "middle": span.middle, "high": span.high}
    if span.width / span.middle < float(e.WELL_KNOWN):
        return Advice("well-known", facts)
    return Advice(f"open-{widest.value}", facts)
