"""How the facts of a morning follow from its case."""

from __future__ import annotations

from datetime import date, timedelta

from engine.decision.band import WeightBand
from engine.decision.facts import Facts
from engine.evidence import deciding as e
from engine.evidence import grading
from engine.evidence.planning import drafting
from engine.symptoms import Symptom, from_report, screen
from engine.symptoms.across import says_spilled
from engine.values.athlete import Baseline, Sex
from engine.values.case import Case
from engine.values.checkin import (
    FULLEST,
    USUAL_LOOK,
    CheckIn,
    Gut,
    History,
    Look,
    TargetLook,
    most_careful,
)
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
    before = [d.carb_g if d.days_out > days_out else habit for d in plan.days if d.days_out > first]
    depleted = sum(before) < e.DEPLETED_SHARE.value * habit * len(before)
    start = e.FULLNESS_DEPLETED.value if depleted else e.FULLNESS_BEFORE_LOAD.value
    load = {d.days_out: d.carb_g for d in plan.days if d.days_out in load_days}
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
        load_held=_load_held(case),
        short_with_enough=_short_in_loads(case, Look.FULL, Look.SPILLED),
        short_without_spill=_short_in_loads(case, Look.FLAT, Look.FULL),
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
    return _short_on(told, case.event.day, case.plan, case.baseline, case.event.look)


def _short_on(
    told: CheckIn, event: date, plan: PeakPlan, baseline: Baseline, look: TargetLook
) -> int | None:
    out = (event - told.date).days
    if told.fullness is None or not 1 <= told.fullness <= FULLEST or out not in PLAN_DAYS:
        return None
    return expected_fullness(plan, baseline, out, look) - told.fullness


def _short_in_loads(case: Case, *looks: Look) -> float | None:
    """The mean over the mornings with load behind them of weeks that looked so; None without any."""
    known = [
        short
        for week in case.trials
        if week.look in looks
        for told in week.history.checkins
        if 0 <= (week.day - told.date).days < week.plan.first_load_day
        for short in (
            _short_on(told, week.day, week.plan, case.baseline, week.target or USUAL_LOOK),
        )
        if short is not None
    ]
    return round(sum(known) / len(known), 6) if known else None


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


def _load_held(case: Case) -> bool:
    """Whether the last week whose look is known did not spill over on such a load, or a larger one."""
    said = [week for week in case.trials if week.look is not None]
    if not said or said[-1].look is Look.SPILLED:
        return False
    least = (1 - e.SAME_LOAD_WITHIN.value) * case.plan.load_g
    return said[-1].as_it_went.load_g >= least


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
