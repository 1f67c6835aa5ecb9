"""Totals that came with a sheet, held against the figures beside them."""

from __future__ import annotations

from collections.abc import Mapping

from bot.messages import plan_review as review_words
from bot.messages import plan_totals as words
from bot.service.week import athlete_of, baseline_of
from bot.store.people import AthleteProfile
from engine.plan import PeakPlan
from engine.review import conventions_of, review_plan


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
