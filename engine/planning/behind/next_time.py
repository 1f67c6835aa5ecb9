"""What to do next time in three sentences: the load, how it is carried out, what to find out.

Each comes with what speaks for it and how far to trust it; a sentence that nothing speaks for is not
made up: then it says that there is nothing to change, or nothing to go by.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field

from engine.evidence.body import learning as e
from engine.evidence.planning import reviewing as known
from engine.planning.behind.debrief import Debrief
from engine.planning.behind.hindsight import Helped
from engine.planning.behind.learning import Believed, Quantity
from engine.planning.behind.next_load import NextLoad
from engine.values.checkin import Look

#: Lessons of how a week was carried out, the gravest first.
CARRIED_OUT = (
    "gut-in-the-load", "eaten-short", "water-short", "sleep-short", "eaten-over", "load-moved",
)  # fmt: skip


@dataclass(frozen=True, slots=True)
class Advice:
    """One sentence: `facts` are the figures of its evidence and of its doubt.

    A load that is named is `to`, or lies between `low` and `high`, g/kg a load day; of "same-again"
    it is `then`.
    """

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
    match look:
        case Look.FULL:
            return _after_full(load)
        case Look.FLAT:
            return _after_flat(load)
        case Look.SPILLED:
            return _after_spilled(load)


def _after_full(load: NextLoad) -> Advice:
    """The same again where the forecast is sure enough of it; else with room to its safer side.

    Where a load beside it was looked at too, with room to where the two looks point.
    """
    then, after = load.then_g_per_kg, load.after
    if load.between and load.g_per_kg != then:
        low, high = sorted((then, load.g_per_kg))
        return _between("same-or-more" if load.g_per_kg > then else "same-or-less", load, low, high)
    if after.full >= float(e.SAME_SURE):
        return Advice("same-again", _facts(load))
    if after.flat >= after.spilled:
        return _between("same-or-more", load, then, then + float(e.A_LITTLE))
    return _between("same-or-less", load, then - float(e.A_LITTLE), then)


def _after_flat(load: NextLoad) -> Advice:
    then, to = load.then_g_per_kg, load.g_per_kg
    if to > then:
        return Advice("more-to", _facts(load))
    return _between("more-unsure", load, then, then + float(e.A_LITTLE))


def _after_spilled(load: NextLoad) -> Advice:
    """How far down, and only as a range where that far down it may already be flat."""
    then, to = load.then_g_per_kg, load.g_per_kg
    if to >= then:
        return _between("less-unsure", load, then - float(e.A_LITTLE), then)
    if load.after.flat >= float(e.MISS_LIKELY):
        return _between("less-between", load, to, then)
    return Advice("less-to", _facts(load))


def _facts(load: NextLoad) -> dict[str, float]:
    return {
        "then": load.then_g_per_kg,
        "to": load.g_per_kg,
        "full": load.after.full,
        "flat": load.after.flat,
        "spilled": load.after.spilled,
    }


def _between(id: str, load: NextLoad, low: float, high: float) -> Advice:
    """A range of loads, g/kg a load day, where one figure would claim more than is known."""
    return Advice(id, _facts(load) | {"low": low, "high": high})


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
