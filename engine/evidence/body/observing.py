"""The figures of the coach's eye: how steady a coach sees, and how far off their grades lie."""

from __future__ import annotations

from engine.evidence.source import Number, Provenance, Source

EYE = Source(
    "own-coachs-eye",
    "assumed: common practice takes a coach, who compares many athletes, for steadier than one who "
    "feels their own muscle; no published error of such grades is known to us",
    Provenance.OURS,
)


def _number(name: str, value: float, unit: str, note: str = "") -> Number:
    return Number(name, value, unit, EYE, note)


SEEN_BIAS = _number(
    "how far off a coach rates fullness for good", 0.5, "grades",
    note="SD between coaches; an athlete's own anchors come to about one grade",
)  # fmt: skip
SEEN_NOISE = _number("scatter of a coach's fullness grade", 0.6, "grades")
SEEN_SHARPNESS_NOISE = _number("scatter of a coach's sharpness grade", 0.45, "grades")
SEEN_FLAT_BY = _number("fullness short of what is expected that a coach calls flat", 1.25, "grades")
SEEN_FULL_BY = _number("fullness over what is expected that a coach calls full", 1.25, "grades")
SEEN_FULL_FROM = _number("fullness that is called full whatever was expected", 8.5, "grades")
SEEN_SOFT_FROM = _number("spill that a coach calls softening, of one just spilled over", 0.5, "1")
SEEN_SPILL_EDGE = _number("scatter of a coach's grade of spill, likewise", 0.25, "1")
SEEN_SLIP = _number("looks that are tapped by mistake", 0.05, "1")

# How the athlete's own ratings compare with the coach's
COMPARED_FROM = _number(
    "mornings from which the two are compared in words", 5, "mornings", note="a handful"
)
COMPARED_APART = _number("mean difference that is worth a word", 0.75, "grades")
SEEN_FLAT_GRADE = _number("flat as a grade of fullness, against what is expected", -2.0, "grades")
SEEN_FULL_GRADE = _number("full as a grade of fullness, against what is expected", 1.5, "grades")
