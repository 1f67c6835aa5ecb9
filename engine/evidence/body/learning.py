"""How what a week taught of a body is read off and stated: our own choices, tried on the bench."""

from __future__ import annotations

from engine.evidence.source import Number, Provenance, Source

OWN_LEARNING = Source(
    "own-learning",
    "our own choice, tried on virtual athletes of worlds that the model was not fitted to",
    Provenance.OURS,
)


def _number(name: str, value: float, unit: str, note: str = "") -> Number:
    return Number(name, value, unit, OWN_LEARNING, note)


STATED = _number("share of what is thought possible that a stated span holds", 0.9, "1")
STATED_SDS = _number("half of such a span, in SDs of a normal", 1.645, "SD")
STORE_DOUBT = _number(
    "how far a store may lie from any that the model knows",
    0.17,
    "log",
    "set so that nine in ten hold in the world that is least like the model",
)
FILL_DOUBT = _number("how far a fill rate may, likewise", 0.2, "log")
FLAT_DOUBT = _number("how far a load that leaves flat may, likewise", 0.14, "log")
SPILL_DOUBT = _number("how far a load that spills over may, likewise", 0.09, "log")
LEAST_ASKED = _number("smallest load that is asked of the model", 2.0, "g/kg a load day")
MOST_ASKED = _number("largest one", 20.0, "g/kg a load day")
ASKED_STEP = _number("steps between them", 1.0, "g/kg a load day")
LOOK_SEEN = _number("difference of look (0 to 1) that counts as one", 0.02, "1")
SURE = _number("share of bodies in which a change has to have helped, or hurt, to say so", 0.7, "1")
WELL_KNOWN = _number(
    "width of a span, of its middle, under which a quantity is called well known", 0.35, "1"
)
SAME_SURE = _number(
    "chance of full under the same load from which it is advised as it was", 0.75, "1"
)
MISS_LIKELY = _number(
    "chance of flat under a smaller load from which only a range down to it is advised", 0.4, "1"
)
A_LITTLE = _number("how much is meant by a little more or less of a load", 0.5, "g/kg a load day")
