"""How large a rule's change is where no forecast gives the size: graded by the look and by the room."""

from __future__ import annotations

from engine.evidence.source import Number, Provenance, source_shown

GRADED = source_shown(
    "own-grading",
    "common practice that a correction grows with how far the look is off; its figures are set on "
    "three of this project's virtual worlds (one-store, two-phase, pool) with an eye on five more, "
    "never on people",
    Provenance.OURS,
)

USUAL = source_shown(
    "own-usual-load",
    "common practice that a load is begun from the usual one and moved by what is seen; on this "
    "project's virtual athletes, never on people, a first load's distance from the usual one "
    "says more of what is needed than a morning's answers; figures set there",
    Provenance.OURS,
)

LATELY_TODAY = Number(
    "weight of today's fullness beside that of the morning before", 0.6, "1",
    GRADED, "one answer scatters by about a grade; two mornings less",
)  # fmt: skip
OWN_SCALE = Number(
    "share of an athlete's usual distance from expectation that is her own scale", 0.28,
    "1", GRADED, "mornings of this week before the load",
)  # fmt: skip
LOAD_COUNTS = Number(
    "grades that a planned load of 1 g/kg a day over the usual one counts", 1.0,
    "grades/(g/kg/day)", GRADED,
    "either way; only where no trial has shown what such a load does",
)  # fmt: skip
LOAD_COUNTS_MOST = Number("furthest from the usual load that is counted", 1.5, "g/kg/day", GRADED)
AHEAD_FROM = Number("grades ahead of the plan from which a load is cut", 0.35, "grades", GRADED)
AHEAD_FROM_LAST = Number(
    "the same on the last day of the load", 1.25, "grades", GRADED,
    "one answer scatters by about a grade, and no day after it makes good a cut for nothing",
)  # fmt: skip
AHEAD_LATELY = Number(
    "grades over expectation, both mornings together, that are ahead of it", 0.2,
    "grades", GRADED,
)  # fmt: skip
OWN_SCALE_MORNINGS = Number(
    "mornings before the load that tell an athlete's own scale", 2, "mornings",
    GRADED,
)  # fmt: skip
CUT_PER_GRADE = Number("cut for each grade past that", 1.4, "g/kg/day", GRADED)
RAISE_FROM = Number(
    "grades behind the plan from which a load is raised", 1.2, "grades",
    GRADED,
)  # fmt: skip
RAISE_FROM_FIRST = Number(
    "the same before any of the load is eaten", 2.5, "grades", GRADED,
    "flat is what depletion leaves; how the load will fill has not been seen",
)  # fmt: skip
RAISE_FROM_LAST = Number(
    "the same on the last day of the load", 2.0, "grades", GRADED,
    "what spills then can't be taken back on a day after it",
)  # fmt: skip
RAISE_PER_GRADE = Number(
    "raise for each grade past that", 0.4, "g/kg/day", GRADED,
    "less than a cut: what has spilled does not come back in time, what is flat may still fill",
)  # fmt: skip
SPILL_CUT = Number("cut where blurred lines tell of spill", 1.8, "g/kg/day", GRADED)
FALLEN_CUT = Number(
    "the same where lines fell to the middle of the scale and no further", 1.0,
    "g/kg/day", GRADED, "two answers that scatter may come to such a fall",
)  # fmt: skip
SPILL_CUT_PER_LOAD = Number(
    "more of it for each g/kg a day that the load is over the usual one", 0.7, "1",
    GRADED,
)  # fmt: skip
SOFT_ON_MUCH_FROM = Number(
    "how far over the usual load a plan is a large one, where lines soften on it", 0.4,
    "g/kg/day", GRADED,
)  # fmt: skip
SOFT_ON_MUCH_CUT = Number(
    "cut where lines soften on such a load", 1.8, "g/kg/day", GRADED,
    "a first sign of spill weighs more where the load makes spill likely; on a usual load it "
    "may as well be a strict eye",
)  # fmt: skip
OVER_FROM = Number(
    "how far over the usual load a plan is before less is worth it for that alone", 0.5,
    "g/kg/day", USUAL,
)  # fmt: skip
OVER_CUT = Number(
    "cut for each g/kg a day past that", 1.3, "1", USUAL,
    "over 1: the days that are left make good what those gone by had too much",
)  # fmt: skip
UNDER_FROM = Number(
    "how far under the usual load a plan is before more is worth it for that alone", 0.9,
    "g/kg/day", USUAL, "more than for less: what has spilled does not come back",
)  # fmt: skip
UNDER_RAISE = Number("raise for each g/kg a day past that", 0.7, "1", USUAL)
LATELY_COUNTS = Number(
    "what a grade behind or ahead counts beside the load", 0.4, "g/kg/day",
    USUAL,
)  # fmt: skip
GRADED_MOST = Number(
    "most that a rule moves a day by itself", 3.0, "g/kg/day", GRADED,
    "the guard rail of a change",
)  # fmt: skip
