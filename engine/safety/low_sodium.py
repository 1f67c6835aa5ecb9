"""The picture of too much water in the blood: its signs, how much was drunk, what the scale says."""

from __future__ import annotations

from collections.abc import Iterator

from engine.evidence import safety as evidence
from engine.safety.complaints import Complaints
from engine.safety.flag import Fact, Flag, FlagId
from engine.safety.readings import above, at_least, believed_water, believed_weight, last_morning
from engine.symptoms import Symptom
from engine.values.checkin import CheckIn, History
from engine.values.level import Level

#: Each sign once, however it is called.
SIGNS: tuple[frozenset[Symptom], ...] = (
    frozenset({Symptom.HEADACHE, Symptom.SEVERE_HEADACHE}),
    frozenset({Symptom.NAUSEA}),
    frozenset({Symptom.VOMITING, Symptom.REPEATED_VOMITING}),
    frozenset({Symptom.SWOLLEN_HANDS, Symptom.SWELLING}),
    frozenset({Symptom.CONFUSION}),
)
_ALL = frozenset[Symptom]().union(*SIGNS)
_GRAVE = frozenset({Symptom.VOMITING, Symptom.REPEATED_VOMITING, Symptom.CONFUSION})
TWO = 2


def low_sodium_flags(
    history: History,
    checkin: CheckIn,
    said: Complaints,
    *,
    target_l: float | None,
    ceiling_l: float | None,
) -> Iterator[Flag]:
    """A caution: any of its signs on a rise, two with water at its target, a fast rise with much.

    A warning with confusion or vomiting among two signs, or on a fast rise. Two signs are the
    pattern too where nobody has said what was drunk: then it cannot be ruled out.
    `target_l` is that of the day the water was drunk on; None where there is no plan to ask.
    """
    told = sum(not signs.isdisjoint(said.words) for signs in SIGNS)
    grave = not _GRAVE.isdisjoint(said.sure)
    water, percent, facts = _readings(history, checkin)
    rising = percent is not None and above(percent, 0)
    fast = percent is not None and at_least(percent, float(evidence.WEIGHT_RISE_DAY))
    enough = water is not None and target_l is not None and at_least(water, target_l)
    much = (
        water is not None
        and target_l is not None
        and above(water, target_l * float(evidence.WATER_OVER_TARGET) / 100)
    )
    at_ceiling = water is not None and ceiling_l is not None and at_least(water, ceiling_l)
    unknown = water is None or target_l is None
    found = (
        (fast and at_ceiling)
        or (told and (rising or much))
        or (told >= TWO and (enough or unknown))
    )
    if not found:
        return
    # Nobody knows what was drunk: said as a caution, whatever the signs.
    warned = grave and ((told >= TWO and (enough or rising)) or fast)
    level = Level.WARNING if warned else Level.CAUTION
    if target_l is not None and water is not None:
        facts["target_l"] = target_l
    if words := said.quoted(_ALL):
        facts["words"] = words
    if told:
        facts["signs"] = ", ".join(s for s in Symptom if s in _ALL and s in said.words)
    yield Flag(FlagId.LOW_SODIUM, level, facts, (evidence.HEW_BUTLER_2015,))


def _readings(
    history: History, checkin: CheckIn
) -> tuple[float | None, float | None, dict[str, Fact]]:
    """Water in L, the change since the last morning in %, and both as facts."""
    water, now = believed_water(checkin.water_l), believed_weight(checkin.weight_kg)
    last = last_morning(history, checkin)
    facts: dict[str, Fact] = {}
    percent = None
    if now is not None and last is not None:
        percent = (now - last) / last * 100
        facts = {"weight_kg": now, "before_kg": last, "up_percent": round(percent, 6)}
    if water is not None:
        facts["water_l"] = water
    return water, percent, facts
