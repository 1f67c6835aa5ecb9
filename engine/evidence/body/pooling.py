"""The figures by which finished weeks of a coach's athletes move the prior for the next one.

Tried on the bench with 30 finished weeks of one world, no trial behind, seed 3; share of the
all-knowing gain with the published prior, then with the learnt one (standard error of the difference):
learnt and used on flux 24 %, then 16 % (4, 20 athletes); on two-muscles 51 %, then 51 % (1, 24);
learnt on flux, used on two-muscles 51 %, then 48 % (2); the other way round 24 %, then 14 % (7).
The log score of the odds of a look on the fixed plan, kinds learnt alone and twice as strongly:
better by 0.12 (0.03, 60 athletes of flux). So it is off unless switched on.
"""

from __future__ import annotations

from engine.evidence.source import Number, Provenance, Source

POOLING = Source(
    "own-pooling",
    "assumed, and tried on virtual athletes only: an ordinary model of people within a group, its mean "
    "unknown by part of what is published as spread",
    Provenance.OURS,
)


def _number(name: str, value: float, unit: str, note: str = "") -> Number:
    return Number(name, value, unit, POOLING, note)


BETWEEN = _number(
    "share of a parameter's published variance that lies between groups", 0.05, "1",
    note="little on purpose: with 0.3 the odds of new athletes came out worse on the bench, since "
    "parameters take up what a wrong kind of body leaves unexplained",
)  # fmt: skip
SPREAD_HELD = _number(
    "athletes that the expected scatter within a group counts for", 60.0, "athletes",
    note="people of one group stay about as different as people are held to be",
)  # fmt: skip
LEARNT_FROM = _number(
    "share of a parameter's variance that a week has to take away to count", 0.1, "1",
    note="less than that is the scatter of a finite number of particles",
)  # fmt: skip
FARTHEST = _number("farthest that one athlete may pull, in published SDs", 3.0, "1")
KINDS_HELD = _number("athletes that the published shares of kinds count for", 15.0, "athletes")
KIND_LEAST = _number("least that a kind is held possible", 0.02, "1")
STAYS_PUBLISHED = _number(
    "share of what is believed of a new athlete that stays as published", 0.5, "1",
    note="somebody unlike all others is met as before",
)  # fmt: skip
