"""What the review of a plan found, in a coach's words."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping, Sequence

from bot.messages import coach_figures as figures
from engine.review import Finding, OnDay
from engine.safety import Level

LEVELS = {Level.WARNING: "Warning", Level.CAUTION: "Caution", Level.ADVISORY: "Note"}


def review_button() -> str:
    return "Review"


def findings_text(findings: Sequence[Finding], volume_unit: str) -> str:
    """Every finding with its reason and sources, the most urgent first."""
    return "\n\n".join(finding_text(finding, volume_unit) for finding in findings)


def finding_text(finding: Finding, volume_unit: str) -> str:
    said = SENTENCES[finding.id](finding, volume_unit)
    sources = "; ".join(source.citation for source in finding.sources)
    return f"{LEVELS[finding.level]}: {said}\nSource: {sources}."


def looked_over(findings: Sequence[Finding], volume_unit: str) -> str:
    """Under a plan that has gone live."""
    if not findings:
        return "I looked it over against the published figures and found nothing to say."
    return f"I looked it over:\n\n{findings_text(findings, volume_unit)}"


def review_view(name: str, findings: Sequence[Finding], volume_unit: str, *, own: bool) -> str:
    whose = "Your" if own else f"{name}'s"
    if not findings:
        return f"{whose} plan against the published figures: nothing to say."
    return f"{whose} plan against the published figures:\n\n{findings_text(findings, volume_unit)}"


def reasons_kept(reasons: Iterable[tuple[str, str]]) -> str:
    """`reasons`: when and why a coach went on."""
    return "\n".join(f"Went on, {when}: {reason}" for when, reason in reasons)


def ask_sure(warnings: str) -> str:
    return (
        f"Before this goes live:\n\n{warnings}\n\n"
        "Nothing has been changed yet. To go on with it I need a reason, which is kept with the plan."
    )


def go_on_button() -> str:
    return "Go on, with a reason"


def leave_button() -> str:
    return "Leave the plan as it was"


def ask_reason() -> str:
    return "What is the reason? A few words, such as: done so in the March trial, and it went well."


def going_on(warnings: str) -> str:
    return f"Going on with this:\n\n{warnings}"


def left() -> str:
    return "Left as it was. Nothing was changed."


def reason_empty() -> str:
    return "That was empty. Send a few words on why you go on."


def reason_noted(reason: str) -> str:
    return f"Your reason is kept with the plan: {reason}"


def changed_meanwhile() -> str:
    return "The plan or the event has changed since I asked, so I changed nothing. Look at it anew."


# One sentence a finding


def _on(days: Sequence[OnDay], show: Callable[[OnDay], str]) -> str:
    """ "3 and 2 days out: 1.5 L; the day itself: 2 L"."""
    by_value: dict[str, list[int]] = {}
    for day in days:
        if day.days_out is not None:
            by_value.setdefault(show(day), []).append(day.days_out)
    return "; ".join(f"{_days(outs)}: {value}" for value, outs in by_value.items())


def _days(outs: Sequence[int]) -> str:
    far = [str(out) for out in outs if out > 0]
    parts = []
    if far:
        named = far[0] if len(far) == 1 else f"{', '.join(far[:-1])} and {far[-1]}"
        parts.append(f"{named} {'day' if far == ['1'] else 'days'} out")
    if 0 in outs:
        parts.append("the day itself")
    return " and ".join(parts)


def _litres(day: OnDay, unit: str) -> str:
    return figures.litres(float(day.value), unit)


def _mg(value: float) -> str:
    return f"{value:,.0f} mg"


def _water_cut(f: Finding, unit: str) -> str:
    return (
        f"water is cut. {_on(f.days, lambda d: _litres(d, unit))}, against a habit of "
        f"{figures.litres(f.facts['habit_l'], unit)}. Muscle is three quarters water, and glycogen is "
        "stored with it: cutting it flattens and has harmed people."
    )


def _water_load(f: Finding, unit: str) -> str:
    return (
        f"water is loaded. {_on(f.days, lambda d: _litres(d, unit))}, more than 1 L over a habit of "
        f"{figures.litres(f.facts['habit_l'], unit)}. Nothing is gained by it here, and much water in "
        "little time dilutes the blood."
    )


def _sodium_swing(f: Finding, unit: str) -> str:
    return (
        f"sodium leaves the habit of {_mg(f.facts['habit_mg'])} by more than a quarter. "
        f"{_on(f.days, lambda d: _mg(float(d.value)))}."
    )


def _carbs_over(f: Finding, unit: str) -> str:
    return (
        f"carbs are over the guard rail of {figures.grams(f.facts['most_g'])}. "
        f"{_on(f.days, lambda d: figures.grams(float(d.value)))}."
    )


def _load_over(f: Finding, unit: str) -> str:
    return (
        f"the load comes to {figures.grams(float(f.days[0].value))}, over the guard rail of "
        f"{figures.grams(f.facts['most_g'])} for three days."
    )


def _load_small(f: Finding, unit: str) -> str:
    return (
        f"the mean load day is {float(f.days[0].value):.1f} g/kg; under "
        f"{f.facts['need_g_per_kg']:g} g/kg little is to be expected of a load."
    )


def _load_small_woman(f: Finding, unit: str) -> str:
    return (
        f"the heaviest load day is {float(f.days[0].value):.1f} g/kg; at or under "
        f"{f.facts['need_g_per_kg']:g} g/kg women's muscle was found to take up little."
    )


def _deep(f: Finding, unit: str) -> str:
    return (
        "depletion is deep. "
        f"{_on(f.days, lambda d: figures.grams(float(d.value)))}, under "
        f"{figures.grams(f.facts['least_g'])}. It has little to give to somebody who is happy with the "
        "look."
    )


def _jump(f: Finding, unit: str) -> str:
    return (
        "carbs jump at the very end, with no time to see or correct a spill, and the gut may answer. "
        f"{_on(f.days, lambda d: figures.grams(float(d.value)))}, more than half as much again as the "
        "day before."
    )


def _legs(f: Finding, unit: str) -> str:
    return (
        f"legs come late: {_on(f.days, lambda d: str(d.value))}. Trained legs hold water for days; "
        f"{f.facts['last_days_out']:g} days out is late enough."
    )


def _stimulus(f: Finding, unit: str) -> str:
    return (
        f"something new or hard close to the day: {_on(f.days, lambda d: str(d.value))}. Sore muscle "
        "swells, and fills more slowly."
    )


def _cardio(f: Finding, unit: str) -> str:
    return (
        f"cardio jumps. {_on(f.days, lambda d: f'{float(d.value):.0f} min')}, more than "
        "20 min over the days before."
    )


def _fibre(f: Finding, unit: str) -> str:
    return (
        f"fibre is high late. {_on(f.days, lambda d: figures.grams(float(d.value)))}, over "
        f"{figures.grams(f.facts['most_g'])}: it stays in the gut, with its weight and its gas."
    )


def _energy(f: Finding, unit: str) -> str:
    return (
        "energy availability is low. "
        f"{_on(f.days, lambda d: f'about {float(d.value):.1f} kcal per kg lean mass')}, under "
        f"{f.facts['least_kcal_per_kg']:g}. For some days it can be borne, for weeks it does harm; "
        "exercise is estimated."
    )


def _not_rehearsed(f: Finding, unit: str) -> str:
    return "nothing was rehearsed. A trial two to eight weeks before says more than any table."


def _total(f: Finding, unit: str) -> str:
    return (
        f"the total does not match. {_on(f.days, lambda d: f'{float(d.value):,.0f} kcal stated')}; "
        f"the macros come to {f.facts['kcal_fibre_apart']:,.0f} kcal where carbs are without fibre "
        f"(EU labels), or {f.facts['kcal_fibre_within']:,.0f} where fibre is in them (US labels)."
    )


SENTENCES: Mapping[str, Callable[[Finding, str], str]] = {
    "water-cut": _water_cut,
    "water-load": _water_load,
    "sodium-swing": _sodium_swing,
    "carbs-over-guard-rail": _carbs_over,
    "load-over-guard-rail": _load_over,
    "load-small": _load_small,
    "load-small-for-a-woman": _load_small_woman,
    "deep-depletion": _deep,
    "last-day-jump": _jump,
    "legs-too-late": _legs,
    "new-stimulus": _stimulus,
    "cardio-jump": _cardio,
    "fibre-high-late": _fibre,
    "low-energy-availability": _energy,
    "nothing-rehearsed": _not_rehearsed,
    "total-off": _total,
}


def ask_total(days_out: int) -> str:
    return (
        f"What total does your plan give for {figures.days_out(days_out)}, in kcal? I hold it against "
        "the day's carbs, protein, fat and fibre."
    )


def total_fits(stated: float, apart: float, within: float) -> str:
    return (
        f"{stated:,.0f} kcal fits: the macros come to {apart:,.0f} kcal where carbs are without fibre "
        f"(EU labels) and {within:,.0f} where fibre is in them (US labels)."
    )


def total_button() -> str:
    return "Check kcal"
