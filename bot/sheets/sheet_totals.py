"""Totals that came with a sheet, held against the figures beside them."""

from __future__ import annotations

from collections.abc import Mapping

from bot.plan import words_totals as words
from bot.plan.review import words as review_words
from bot.store.tables.people import AthleteProfile
from bot.week.load import athlete_of, baseline_of
from engine.planning.review import conventions_of, review_plan
from engine.values.plan import PeakPlan


def totals_text(profile: AthleteProfile, plan: PeakPlan, stated: Mapping[int, float]) -> str:
    """What there is to say of stated kcal (by days out) beside this plan; empty without any."""
    days = [day for day in plan if day.days_out in stated]
    if not days:
        return ""
    findings = review_plan(athlete_of(profile), baseline_of(profile), plan, stated_kcal=stated)
    off = [finding for finding in findings if finding.id == "total-off"]
    if off:
        return review_words.findings_text(off, profile.volume_unit)
    fits = [set(conventions_of(day, stated[day.days_out])) for day in days]
    shared = set.intersection(*fits)
    return words.totals_fit(len(days), only=shared.pop() if len(shared) == 1 else None)
