"""The named facts of one morning, which rules judge and reasons speak of."""

from __future__ import annotations

from dataclasses import dataclass, fields
from datetime import date, timedelta

from engine.decision.band import WeightBand
from engine.evidence import deciding as e
from engine.evidence import drafting, grading
from engine.symptoms import Symptom, from_report, screen
from engine.symptoms.spilled import says_spilled
from engine.values.athlete import Baseline, Sex
from engine.values.case import Case
from engine.values.checkin import CheckIn, Gut, History
from engine.values.look import FULLEST, SHARPEST, USUAL_LOOK, TargetLook
from engine.values.observed import CoachLook, most_careful
from engine.values.plan import LOAD_DAYS, PLAN_DAYS, DayTarget, PeakPlan, Phase

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
    """What is known this morning. Grams, kg, litres and hours; fullness of 10, sharpness of 5.

    What was not answered is None, and nothing that would follow from it holds. `coach_saw` is a
    `CoachLook`, "" where no coach has looked.
    """

    days_out: int
    loading: bool
    load_eaten: bool  # some of the load lies behind: only then can anything have spilled
    depleting: bool
    planned_carb_g: float
    fullness: int | None
    expected_fullness: int
    sharpness: int | None
    sharpness_before: int | None
    weight_kg: float | None
    band_low_kg: float
    band_high_kg: float
    water_l: float | None
    water_target_l: float
    gut: str
    severe_gut: str
    dizzy: bool
    sleepless: bool
    refed: bool = False  # yesterday was a refeed, which can spill as a load day can
    fullness_short_before: int | None = None  # likewise on the load's morning before
    usual_short: float = 0.0  # the same on average before the load: this athlete's own scale
    load_over_usual: float = 0.0  # g/kg a day; 0 where a trial has shown what its load does
    load_shown: bool = False  # a week behind has shown what such a load does
    # What the event asks for.
    full_from: int = USUAL_LOOK.fullness_low
    fullness_most: int = FULLEST
    crisp_from: int = USUAL_LOOK.sharpness_low
    blurred_to: int = USUAL_LOOK.blurred_to
    sharpness_most: int = SHARPEST
    told_spilled: bool = False  # in the athlete's own words
    coach_saw: str = ""
    coach_sharpness: int | None = None

    @property
    def fullness_short(self) -> int:
        """How far fullness is under its expectation; 0 where it was not told."""
        return 0 if self.fullness is None else self.expected_fullness - self.fullness

    @property
    def flat(self) -> bool:
        return self.fullness_short >= e.FLAT_BY.value

    @property
    def short_lately(self) -> float:
        """How far fullness was under its expectation, today and the morning before together."""
        today = grading.LATELY_TODAY.value
        before = self.fullness_short_before
        if before is None:
            before = self.fullness_short
        both = today * self.fullness_short + (1 - today) * before
        # An own scale only restrains: the same answers before the load may have been depletion.
        own = grading.OWN_SCALE.value * self.usual_short
        least, most = min(both, 0.0), max(both, 0.0)
        return round(min(max(both - own, least), most), 6)

    @property
    def load_counted(self) -> float:
        """How far the planned load is over the usual one, as far as that counts (g/kg a day)."""
        most = grading.LOAD_COUNTS_MOST.value
        return min(max(self.load_over_usual, -most), most)

    @property
    def behind(self) -> float:
        """Grades behind the plan (+) or ahead of it (-), with the room that its load leaves."""
        return round(self.short_lately - grading.LOAD_COUNTS.value * self.load_counted, 6)

    @property
    def raise_due(self) -> bool:
        """So far behind the plan that more is worth its risk; later and sooner it has to be further."""
        if not self.load_eaten:
            return not self.load_shown and self.behind >= grading.RAISE_FROM_FIRST.value
        last = grading.RAISE_FROM_LAST if self.days_out <= 1 else grading.RAISE_FROM
        return self.behind >= last.value

    @property
    def ahead(self) -> bool:
        """Fuller than expected, with more of the load to come; on one morning alone, by far."""
        one = self.fullness_short_before is None
        far = self.fullness_short <= -(e.FLAT_BY.value if one else 1)
        lately = self.short_lately <= -grading.AHEAD_LATELY.value
        to_come = self.loading and self.days_out > 0
        return to_come and self.loaded and self.full and far and lately and self.cut_due

    @property
    def ahead_by(self) -> float:
        """Grades ahead of the plan past those from which it is cut; 0 or less where it is not."""
        last = grading.AHEAD_FROM_LAST if self.days_out <= 1 else grading.AHEAD_FROM
        return round(-self.behind - last.value, 6)

    @property
    def cut_due(self) -> bool:
        return self.ahead_by > 0

    @property
    def full(self) -> bool:
        """Fullness at or over its expectation."""
        return self.fullness is not None and self.fullness_short <= 0

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
        return self.sharpness is not None and self.sharpness <= self.blurred_to

    @property
    def crisp(self) -> bool:
        return self.sharpness is not None and self.sharpness >= self.crisp_from

    @property
    def sharp(self) -> bool:
        """Crisp, or in the middle and not on the way down; not where it is said to have spilled."""
        if self.says_spilled:
            return False
        if self.crisp:
            return True
        return self.sharpness is not None and not self.blurred and self.sharpness_fall == 0

    @property
    def blurring(self) -> bool:
        """Blurred, or so far down, and under what is asked for, that it comes to the same."""
        fallen = self.sharpness_fall >= e.SHARPNESS_FALL.value
        return self.blurred or (fallen and not self.crisp)

    @property
    def softer_than_most(self) -> bool:
        """Under the most that the event asks for: a fall down to that is no loss."""
        return self.sharpness is not None and self.sharpness < self.sharpness_most

    @property
    def too_full(self) -> bool:
        return self.fullness is not None and self.fullness > self.fullness_most

    @property
    def loaded(self) -> bool:
        """Whether so much was eaten that something can have spilled."""
        return (self.loading and self.load_eaten) or self.refed

    @property
    def spilling(self) -> bool:
        """Blurred lines on a loaded athlete who is full or heavy: spill, or water."""
        return self.loaded and self.blurring and (self.full or self.above_band)

    @property
    def says_spilled(self) -> bool:
        """Said to have spilled, where there is a load that can have."""
        return self.loaded and self.told_spilled

    @property
    def softening(self) -> bool:
        full = self.fullness is not None and self.fullness >= self.full_from
        fallen = self.sharpness_fall == 1 and self.softer_than_most
        return self.loaded and fallen and full and self.upper_half

    @property
    def seen_spilled(self) -> bool:
        """The coach sees spill, and there is a load that can have spilled."""
        return self.loaded and self.coach_saw == CoachLook.SPILLED

    @property
    def seen_softening(self) -> bool:
        return self.loaded and self.coach_saw == CoachLook.SOFTENING

    @property
    def seen_blurred(self) -> bool:
        return self.coach_sharpness is not None and self.coach_sharpness <= self.blurred_to

    @property
    def seen_flat(self) -> bool:
        return self.coach_saw == CoachLook.FLAT

    @property
    def above_band(self) -> bool:
        return self.weight_kg is not None and self.weight_kg > self.band_high_kg

    @property
    def under_band(self) -> bool:
        return self.weight_kg is not None and self.weight_kg < self.band_low_kg

    @property
    def upper_half(self) -> bool:
        """In the upper half of the band, or above it."""
        middle = (self.band_low_kg + self.band_high_kg) / 2
        return self.weight_kg is not None and self.weight_kg > middle

    @property
    def underdrunk(self) -> bool:
        # Rounded, for 80 % of 3.2 L is 2.56 L and not a hair more.
        least = round(e.UNDERDRUNK_SHARE.value * self.water_target_l, 6)
        return self.water_l is not None and self.water_l < least

    @property
    def unwell(self) -> bool:
        """Dizzy or sleepless on low days: for the coach first."""
        return self.dizzy or self.sleepless

    @property
    def measured(self) -> bool:
        """Whether weight and water were told, without which no large raise is made."""
        return self.weight_kg is not None and self.water_l is not None

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
            signs.append(self.weight_said)
        if self.dizzy:
            signs.append("dizziness was reported")
        if self.sleepless:
            signs.append("the night was short of sleep")
        return " and ".join(signs)

    @property
    def weight_said(self) -> str:
        """The weight beside its band, in words."""
        band = f"{self.band_low_kg:.1f} to {self.band_high_kg:.1f} kg"
        if self.weight_kg is None:
            return f"no weight was told (band {band})"
        where = "above" if self.above_band else "under" if self.under_band else "within"
        return f"weight {self.weight_kg:.1f} kg is {where} its band of {band}"

    @property
    def sharpness_said(self) -> str:
        if self.sharpness is None:
            return "sharpness not told"
        fallen = f", down from {self.sharpness_before}" if self.sharpness_fall else ""
        return f"sharpness {self.sharpness}{fallen}"

    @property
    def coach_said(self) -> str:
        """What the coach sees, in words."""
        if self.coach_sharpness is None:
            return self.coach_saw
        return f"{self.coach_saw}, sharpness {self.coach_sharpness}"

    @property
    def told_said(self) -> str:
        """Fullness and sharpness as the athlete told them, in words."""
        full = f"fullness {self.fullness} ({self.expected_fullness} expected)"
        return f"{full} and {self.sharpness_said}"

    @property
    def blur_said(self) -> str:
        """A clause on blurred lines beside another complaint; "" where they are sharp."""
        return f" and the lines have blurred ({self.sharpness_said})" if self.blurring else ""

    @property
    def lately_said(self) -> str:
        """A clause on the morning before, where it was over its expectation too."""
        before = self.fullness_short_before
        return ", as on the morning before" if before is not None and before < 0 else ""

    @property
    def load_said(self) -> str:
        """A clause on a planned load that is over the usual one."""
        over = round(self.load_over_usual, 1)
        return (
            f", and the planned load is {over:g} g/kg a day over the usual one" if over > 0 else ""
        )

    @property
    def waits_said(self) -> str:
        """A clause on what keeps a flat athlete's load from being raised; "" where nothing does."""
        if self.raise_due:
            return ""
        if not self.load_eaten:
            return "; none of the load has been eaten yet"
        if self.load_counted > 0:
            return f"; the planned load is {self.load_over_usual:.1f} g/kg a day over the usual one"
        return "; over both mornings that is not far enough"

    @property
    def drink_said(self) -> str:
        if not self.underdrunk:
            return ""
        return f" Only {self.water_l:g} L of {self.water_target_l:g} L was drunk: back to that too."

    @classmethod
    def names(cls) -> frozenset[str]:
        derived = (name for name, value in vars(cls).items() if isinstance(value, property))
        return frozenset(f.name for f in fields(cls)) | frozenset(derived)

    def as_dict(self) -> dict[str, Fact]:
        """Every fact by name, what follows from the others included."""
        return {name: getattr(self, name) for name in sorted(self.names())}


def expected_fullness(
    plan: PeakPlan, baseline: Baseline, days_out: int, look: TargetLook = USUAL_LOOK
) -> int:
    """The fullness (of 10) a plan leads one to expect on the morning that many days out.

    Ordinary before the load, one less once the plan has depleted, then rising with the share of
    the planned load already eaten, to what the event asks for. No published scale with a known
    error exists: common practice.
    """
    return fullness_on_plan(plan, baseline.carb_g, days_out, look)


def fullness_on_plan(
    plan: PeakPlan, habit: float, days_out: int, look: TargetLook = USUAL_LOOK
) -> int:
    """The same, from the habitual carbohydrate alone (g a day)."""
    # Days still to come count as habit: one low day has not depleted anyone yet.
    load_days = plan.load_days
    first = max(load_days, default=0)
    before = [d.carb_g if d.days_out > days_out else habit for d in plan if d.days_out > first]
    depleted = sum(before) < e.DEPLETED_SHARE.value * habit * len(before)
    start = e.FULLNESS_DEPLETED.value if depleted else e.FULLNESS_BEFORE_LOAD.value
    load = {d.days_out: d.carb_g for d in plan if d.days_out in load_days}
    total, eaten = sum(load.values()), sum(g for out, g in load.items() if out > days_out)
    share = eaten / total if total else 0.0
    return int(start + share * (max(look.fullness, start) - start) + 0.5)


def gather(case: Case, planned: DayTarget, band: WeightBand) -> Facts:
    """The facts of a case whose answers can be believed (see `engine.decision.gates`)."""
    checkin = case.checkin
    symptoms = symptoms_of(checkin)
    slept_short = checkin.sleep_h is not None and checkin.sleep_h < e.SLEEPLESS_H.value
    before_load = not case.plan.loading(case.days_out)
    refeeding = case.plan.phase(case.days_out) is Phase.REFEED
    morning, look = case.event.days_out(checkin.date), case.event.look
    seen = most_careful(case.history.seen_on(checkin.date))
    return Facts(
        days_out=case.days_out,
        loading=case.plan.loading(case.days_out),
        load_eaten=_load_eaten(case, morning),
        full_from=look.fullness_low,
        fullness_most=look.fullness_high,
        crisp_from=look.sharpness_low,
        blurred_to=look.blurred_to,
        sharpness_most=look.sharpness_high,
        told_spilled=_told_spilled(checkin),
        refed=case.plan.after_refeed(morning),
        depleting=before_load and not refeeding and planned.carb_g < case.baseline.carb_g,
        planned_carb_g=planned.carb_g,
        fullness=checkin.fullness,
        expected_fullness=expected_fullness(case.plan, case.baseline, morning, look),
        sharpness=checkin.sharpness,
        sharpness_before=_sharpness_before(case.history, checkin.date),
        weight_kg=checkin.weight_kg,
        band_low_kg=band.low_kg,
        band_high_kg=band.high_kg,
        water_l=checkin.water_l,
        water_target_l=_water_target(case),
        gut=checkin.gut.value if checkin.gut else "",
        severe_gut=_severe_gut(checkin, symptoms),
        dizzy=Symptom.DIZZY in symptoms,
        sleepless=slept_short or Symptom.SLEEPLESS in symptoms,
        coach_saw=seen.look.value if seen else "",
        coach_sharpness=seen.sharpness if seen else None,
        fullness_short_before=_short_before(case),
        usual_short=_usual_short(case),
        load_over_usual=_load_over_usual(case),
        load_shown=_load_shown(case),
    )


def gut_trouble(checkin: CheckIn) -> bool:
    """Whether these answers tell of a bad gut, ticked or in words."""
    return checkin.gut is Gut.BAD or bool(_severe_gut(checkin, symptoms_of(checkin)))


def _told_spilled(checkin: CheckIn) -> bool:
    return any(says_spilled(text) for text in (checkin.note, *checkin.symptoms))


def _load_eaten(case: Case, morning: int) -> bool:
    """Whether any day of the load lies behind on the morning that many days out."""
    for out in case.plan.load_days:
        planned = case.plan.day(out)
        if out > morning and planned is not None and planned.carb_g > 0:
            return True
    return False


def symptoms_of(checkin: CheckIn) -> frozenset[Symptom]:
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


def _short(case: Case, told: CheckIn) -> int | None:
    """How far the fullness of a morning of this week was under its expectation, where it was told."""
    out = case.event.days_out(told.date)
    if told.fullness is None or not 1 <= told.fullness <= FULLEST or out not in PLAN_DAYS:
        return None
    expected = expected_fullness(case.plan, case.baseline, out, case.event.look)
    return expected - told.fullness


def _short_before(case: Case) -> int | None:
    """The last morning's, within the days that sharpness is compared over, once the load has begun."""
    earliest = case.checkin.date - timedelta(days=int(e.SHARPNESS_LOOKS_BACK_DAYS.value))
    first = case.event.day - timedelta(days=case.plan.first_load_day)
    found = [
        _short(case, told)
        for told in case.history.checkins
        if max(earliest, first) <= told.date < case.checkin.date
    ]
    known = [short for short in found if short is not None]
    return known[-1] if known else None


def _usual_short(case: Case) -> float:
    """The mean of this week's mornings before the load; 0 where there were too few."""
    first = case.event.day - timedelta(days=case.plan.first_load_day)
    found = [_short(case, told) for told in case.history.checkins if told.date < first]
    known = [short for short in found if short is not None]
    enough = len(known) >= grading.OWN_SCALE_MORNINGS.value
    return round(sum(known) / len(known), 6) if enough else 0.0


def _load_shown(case: Case) -> bool:
    return any(week.look is not None for week in case.trials)


def _load_over_usual(case: Case) -> float:
    """The mean load day over the usual one (g/kg); 0 where that says nothing.

    The usual load is known for three days. A week behind whose look is known says more.
    """
    days = case.plan.load_days
    if len(days) != len(LOAD_DAYS) or _load_shown(case):
        return 0.0
    male = case.athlete.sex is Sex.MALE
    usual = drafting.LOAD_MEN_G_PER_KG if male else drafting.LOAD_WOMEN_G_PER_KG
    return round(case.plan.load_g / len(days) / case.athlete.body_mass_kg - usual.value, 6)


def _water_target(case: Case) -> float:
    """Yesterday's: the water answer speaks of the day just past."""
    yesterday = case.plan.day(case.event.days_out(case.checkin.date) + 1)
    return yesterday.water_l if yesterday else case.baseline.water_l
