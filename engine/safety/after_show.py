"""The three mornings after: what rapid eating after long restriction can do, watched for.

Case reports tell of paralysis and palpitations days after a show, from a fall of potassium and
phosphate as food comes back at once. Warnings stay the same as ever; here is what else is looked at.
"""

from __future__ import annotations

from collections.abc import Collection, Iterator

from engine.evidence.planning.health import AFTER_RISE, AFTER_SHOW_HARM
from engine.safety import Flag, FlagId
from engine.symptoms import Symptom
from engine.values.level import Level

#: Not yet an emergency, and a doctor's matter all the same in these days.
LOOKED_AT = (
    Symptom.SWELLING, Symptom.SWOLLEN_HANDS, Symptom.CRAMPS, Symptom.TINGLING, Symptom.DIZZY,
    Symptom.SHAKY, Symptom.EXHAUSTION,
)  # fmt: skip


def after_show_flags(
    symptoms: Collection[Symptom], weight_kg: float | None, stage_weight_kg: float | None
) -> Iterator[Flag]:
    """Cautions for the coach: complaints of these days, and weight that shoots up."""
    told = [symptom for symptom in LOOKED_AT if symptom in symptoms]
    if told:
        named = {"symptoms": ", ".join(symptom.value for symptom in told)}
        yield Flag(FlagId.AFTER_SHOW_COMPLAINT, Level.CAUTION, named, (AFTER_SHOW_HARM,))
    if weight_kg is None or stage_weight_kg is None:
        return
    up = 100 * (weight_kg - stage_weight_kg) / stage_weight_kg
    if up > float(AFTER_RISE) + 1e-9:
        facts = {"weight_kg": weight_kg, "before_kg": stage_weight_kg, "up_percent": round(up, 6)}
        yield Flag(
            FlagId.AFTER_SHOW_RISE, Level.CAUTION, facts, (AFTER_SHOW_HARM, AFTER_RISE.source)
        )
