"""The named facts of one morning, which rules judge and reasons speak of."""

from __future__ import annotations

from dataclasses import dataclass, fields
from datetime import date, timedelta

from engine.athlete import Baseline
from engine.band import WeightBand
from engine.case import Case, loading
from engine.checkin import CheckIn, Gut, History
from engine.evidence import deciding as e
from engine.plan import LOAD_DAYS, DayTarget, PeakPlan
from engine.symptoms import Symptom, from_report, screen

#: Symptoms that say by themselves that the gut is in real trouble.
SEVERE_GUT = frozenset(
    {
        Symptom.SEVERE_GUT,
        Symptom.DIARRHOEA,
        Symptom.VOMITING,
        Symptom.REPEATED_VOMITING,
        Symptom.STOMACH_PAIN,
    }
)

Fact = str | float | int | bool | None


@dataclass(frozen=True, slots=True, kw_only=True)
class Facts:
    """What is known this morning. Grams, kg, litres and hours; fullness of 10, sharpness of 5."""

    days_out: int
    loading: bool
    depleting: bool
    planned_carb_g: float
    fullness: int
    expected_fullness: int
    sharpness: int | None
    sharpness_before: int | None
    weight_kg: float
    band_low_kg: float
    band_high_kg: float
    water_l: float
    water_target_l: float
    gut: str
    severe_gut: str
    dizzy: bool
    sleepless: bool

    @property
    def fullness_short(self) -> int:
        return self.expected_fullness - self.fullness

    @property
    def flat(self) -> bool:
        return self.fullness_short >= e.FLAT_BY.value

    @property
    def very_flat(self) -> bool:
        return self.fullness_short >= e.VERY_FLAT_BY.value

    @property
    def sharpness_fall(self) -> int:
        """How far sharpness fell since it was last told; 0 where that is not known."""
        if self.sharpness is None or self.sharpness_before is None:
            return 0
        return max(self.sharpness_before - self.sharpness, 0)

    @property
    def blurred(self) -> bool:
        return self.sharpness is not None and self.sharpness <= e.BLURRED_TO.value

    @property
    def crisp(self) -> bool:
        return self.sharpness is not None and self.sharpness >= e.CRISP_FROM.value

    @property
    def sharp(self) -> bool:
        """Crisp, or in the middle and not on the way down."""
        if self.crisp:
            return True
        return self.sharpness is not None and not self.blurred and self.sharpness_fall == 0

    @property
    def above_band(self) -> bool:
        return self.weight_kg > self.band_high_kg

    @property
    def under_band(self) -> bool:
        return self.weight_kg < self.band_low_kg

    @property
    def underdrunk(self) -> bool:
        # Rounded, for 80 % of 3.2 L is 2.56 L and not a hair more.
        return self.water_l < round(e.UNDERDRUNK_SHARE.value * self.water_target_l, 6)

    @property
    def gut_bad(self) -> bool:
        return self.gut == Gut.BAD or bool(self.severe_gut)

    @property
    def gut_signs(self) -> str:
        return f"bad ({self.severe_gut})" if self.severe_gut else "bad"

    @property
    def signs_of_dropping(self) -> str:
        signs = []
        if self.under_band:
            signs.append(f"weight {self.weight_kg:.1f} kg is under its band")
        if self.dizzy:
            signs.append("dizziness was reported")
        if self.sleepless:
            signs.append("the night was short of sleep")
        return " and ".join(signs)

    @property
    def in_the_way(self) -> str:
        """Why a flat morning of the load is not answered with more carbs."""
        if not (self.loading and self.flat):
            return ""
        if self.above_band:
            return ", since above the band more may spill"
        return "" if self.sharp else ", since the lines are softening"

    @classmethod
    def names(cls) -> frozenset[str]:
        derived = (name for name, value in vars(cls).items() if isinstance(value, property))
        return frozenset(f.name for f in fields(cls)) | frozenset(derived)

    def as_dict(self) -> dict[str, Fact]:
        """Every fact by name, what follows from the others included."""
        return {name: getattr(self, name) for name in sorted(self.names())}


def expected_fullness(plan: PeakPlan, baseline: Baseline, days_out: int) -> int:
    """The fullness (of 10) a plan leads one to expect on the morning that many days out.

    Ordinary before the load, one less once the plan has depleted, then rising with the share of
    the planned load already eaten. No published scale with a known error exists: common practice.
    """
    habit = baseline.carb_g
    # Days still to come count as habit: one low day has not depleted anyone yet.
    before = [
        d.carb_g if d.days_out > days_out else habit for d in plan if d.days_out > max(LOAD_DAYS)
    ]
    depleted = sum(before) < e.DEPLETED_SHARE.value * habit * len(before)
    start = e.FULLNESS_DEPLETED.value if depleted else e.FULLNESS_BEFORE_LOAD.value
    load = {d.days_out: d.carb_g for d in plan if d.days_out in LOAD_DAYS}
    total, eaten = sum(load.values()), sum(g for out, g in load.items() if out > days_out)
    share = eaten / total if total else 0.0
    return int(start + share * (e.FULLNESS_LOADED.value - start) + 0.5)


def gather(case: Case, planned: DayTarget, band: WeightBand) -> Facts:
    """The facts of a case whose answers are all there and can be believed (see `engine.gates`)."""
    checkin = case.checkin
    weight, fullness, water = checkin.weight_kg, checkin.fullness, checkin.water_l
    if weight is None or fullness is None or water is None:
        raise ValueError("no facts without weight, fullness and water")
    symptoms = _symptoms(checkin)
    slept_short = checkin.sleep_h is not None and checkin.sleep_h < e.SLEEPLESS_H.value
    before_load = case.days_out > max(LOAD_DAYS)
    morning = case.event.days_out(checkin.date)
    return Facts(
        days_out=case.days_out,
        loading=loading(case.days_out),
        depleting=before_load and planned.carb_g < case.baseline.carb_g,
        planned_carb_g=planned.carb_g,
        fullness=fullness,
        expected_fullness=expected_fullness(case.plan, case.baseline, morning),
        sharpness=checkin.sharpness,
        sharpness_before=_sharpness_before(case.history, checkin.date),
        weight_kg=weight,
        band_low_kg=band.low_kg,
        band_high_kg=band.high_kg,
        water_l=water,
        water_target_l=_water_target(case),
        gut=checkin.gut.value if checkin.gut else "",
        severe_gut=_severe_gut(checkin, symptoms),
        dizzy=Symptom.DIZZY in symptoms,
        sleepless=slept_short or Symptom.SLEEPLESS in symptoms,
    )


def _symptoms(checkin: CheckIn) -> frozenset[Symptom]:
    """What was ticked, told in own words or written in the note."""
    found = set(screen(checkin.note).symptoms)
    for word in checkin.symptoms:
        symptom = from_report(word)
        found |= screen(word).symptoms | ({symptom} if symptom else set())
    return frozenset(found)


def _severe_gut(checkin: CheckIn, symptoms: frozenset[Symptom]) -> str:
    # Cramps may be a calf's: they count for the gut only where the gut was called bad.
    counted = SEVERE_GUT | {Symptom.CRAMPS} if checkin.gut is Gut.BAD else SEVERE_GUT
    return ", ".join(sorted(symptom.replace("-", " ") for symptom in symptoms & counted))


def _sharpness_before(history: History, today: date) -> int | None:
    earliest = today - timedelta(days=int(e.SHARPNESS_LOOKS_BACK_DAYS.value))
    found = [
        c.sharpness
        for c in history.checkins
        if earliest <= c.date < today and c.sharpness is not None and 1 <= c.sharpness <= 5
    ]
    return found[-1] if found else None


def _water_target(case: Case) -> float:
    """Yesterday's: the water answer speaks of the day just past."""
    yesterday = case.plan.day(case.event.days_out(case.checkin.date) + 1)
    return yesterday.water_l if yesterday else case.baseline.water_l
