"""How large a rule's change is where no forecast gives the size: graded by the look and by the room."""

from __future__ import annotations

from engine.evidence.source import Number, Provenance, Source

GRADED = Source(
    "own-grading",
    "common practice that a correction grows with how far the look is off; its figures are set on "
    "three of this project's virtual worlds (one-store, two-phase, pool) with an eye on five more, "
    "never on people",
    Provenance.OURS,
)

USUAL = Source(
    "own-usual-load",
    "common practice that a load is begun from the usual one and moved by what is seen; on this "
    "project's virtual athletes, never on people, a first load's distance from the usual one says more "
    "of what is needed than a morning's answers; figures set there",
    Provenance.OURS,
)

LATELY_TODAY = Number(
    name="weight of today's fullness beside that of the morning before", value=0.6, unit="1",
    source=GRADED, note="one answer scatters by about a grade; two mornings less",
)  # fmt: skip
OWN_SCALE = Number(
    name="share of an athlete's usual distance from expectation that is her own scale", value=0.28,
    unit="1", source=GRADED, note="mornings of this week before the load",
)  # fmt: skip
LOAD_COUNTS = Number(
    name="grades that a planned load of 1 g/kg a day over the usual one counts", value=1.0,
    unit="grades/(g/kg/day)", source=GRADED,
    note="either way; only where no trial has shown what such a load does",
)  # fmt: skip
LOAD_COUNTS_MOST = Number(
    name="furthest from the usual load that is counted", value=1.5, unit="g/kg/day", source=GRADED
)
AHEAD_FROM = Number(
    name="grades ahead of the plan from which a load is cut",
    value=0.35,
    unit="grades",
    source=GRADED,
)
AHEAD_FROM_LAST = Number(
    name="the same on the last day of the load", value=1.25, unit="grades", source=GRADED,
    note="one answer scatters by about a grade, and no day after it makes good a cut for nothing",
)  # fmt: skip
AHEAD_LATELY = Number(
    name="grades over expectation, both mornings together, that are ahead of it", value=0.2,
    unit="grades", source=GRADED,
)  # fmt: skip
OWN_SCALE_MORNINGS = Number(
    name="mornings before the load that tell an athlete's own scale", value=2, unit="mornings",
    source=GRADED,
)  # fmt: skip
CUT_PER_GRADE = Number(
    name="cut for each grade past that", value=1.4, unit="g/kg/day", source=GRADED
)
RAISE_FROM = Number(
    name="grades behind the plan from which a load is raised", value=1.2, unit="grades",
    source=GRADED,
)  # fmt: skip
RAISE_FROM_FIRST = Number(
    name="the same before any of the load is eaten", value=2.5, unit="grades", source=GRADED,
    note="flat is what depletion leaves; how the load will fill has not been seen",
)  # fmt: skip
RAISE_FROM_LAST = Number(
    name="the same on the last day of the load", value=2.0, unit="grades", source=GRADED,
    note="what spills then can't be taken back on a day after it",
)  # fmt: skip
RAISE_PER_GRADE = Number(
    name="raise for each grade past that", value=0.4, unit="g/kg/day", source=GRADED,
    note="less than a cut: what has spilled does not come back in time, what is flat may still fill",
)  # fmt: skip
SPILL_CUT = Number(
    name="cut where blurred lines tell of spill", value=1.8, unit="g/kg/day", source=GRADED
)
FALLEN_CUT = Number(
    name="the same where lines fell to the middle of the scale and no further", value=1.0,
    unit="g/kg/day", source=GRADED, note="two answers that scatter may come to such a fall",
)  # fmt: skip
SPILL_CUT_PER_LOAD = Number(
    name="more of it for each g/kg a day that the load is over the usual one", value=0.7, unit="1",
    source=GRADED,
)  # fmt: skip
SOFT_ON_MUCH_FROM = Number(
    name="how far over the usual load a plan is a large one, where lines soften on it", value=0.4,
    unit="g/kg/day", source=GRADED,
)  # fmt: skip
SOFT_ON_MUCH_CUT = Number(
    name="cut where lines soften on such a load", value=1.8, unit="g/kg/day", source=GRADED,
    note="a first sign of spill weighs more where the load makes spill likely; on a usual load it "
    "may as well be a strict eye",
)  # fmt: skip
OVER_FROM = Number(
    name="how far over the usual load a plan is before less is worth it for that alone", value=0.5,
    unit="g/kg/day", source=USUAL,
)  # fmt: skip
OVER_CUT = Number(
    name="cut for each g/kg a day past that", value=1.3, unit="1", source=USUAL,
    note="over 1: the days that are left make good what those gone by had too much",
)  # fmt: skip
UNDER_FROM = Number(
    name="how far under the usual load a plan is before more is worth it for that alone", value=0.9,
    unit="g/kg/day", source=USUAL, note="more than for less: what has spilled does not come back",
)  # fmt: skip
UNDER_RAISE = Number(name="raise for each g/kg a day past that", value=0.7, unit="1", source=USUAL)
LATELY_COUNTS = Number(
    name="what a grade behind or ahead counts beside the load", value=0.4, unit="g/kg/day",
    source=USUAL,
)  # fmt: skip
GRADED_MOST = Number(
    name="most that a rule moves a day by itself", value=3.0, unit="g/kg/day", source=GRADED,
    note="the guard rail of a change",
)  # fmt: skip
