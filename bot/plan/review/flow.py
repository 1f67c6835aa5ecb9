"""What the review of a plan found, and the question before one with warnings goes live."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping, Sequence
from typing import NamedTuple

from bot.dialogue.flow import Answers, Flow, Step, buttons, reason, yes_or_no
from bot.words import figures
from bot.words.common import cancelled
from bot.words.languages import Sentence, SentenceOn, mark, tr, trn, worded
from bot.words.names import cited
from bot.words.phases import training_words
from engine.food.foods import LabelConvention
from engine.planning.review import Finding, OnDay
from engine.safety import Level
from engine.written.units import parse_number

LEVELS = {
    Level.WARNING: mark("Warning"),
    Level.CAUTION: mark("Caution"),
    Level.ADVISORY: mark("Info"),
}


review_button = Sentence("Review")
go_on_button = Sentence("Use it anyway, with a reason")
leave_button = Sentence("Keep the old plan")
ask_reason = Sentence(
    "What is the reason? A few words, for example: worked well in the March trial."
)
changed_meanwhile = Sentence(
    "The plan or the event has changed since I asked, so I changed nothing. Please look again."
)


def findings_text(findings: Sequence[Finding], volume_unit: str) -> str:
    """Every finding with its reason and sources, the most urgent first."""
    return "\n\n".join(finding_text(finding, volume_unit) for finding in findings)


def finding_text(finding: Finding, volume_unit: str) -> str:
    return tr(
        "{level}: {said}\nSource: {sources}.",
        level=tr(LEVELS[finding.level]),
        said=worded(SENTENCES[finding.id], Found(finding.days, finding.facts, volume_unit)),
        sources="; ".join(cited(source.citation) for source in finding.sources),
    )


def looked_over(findings: Sequence[Finding], volume_unit: str) -> str:
    """Under a plan that has gone live."""
    if not findings:
        return tr("I checked it against the published figures and found no problem.")
    return tr("I checked it:\n\n{findings}", findings=findings_text(findings, volume_unit))


def review_view(
    name: str, findings: Sequence[Finding], volume_unit: str, *, self_coached: bool
) -> str:
    if not findings:
        if self_coached:
            return tr("I checked your plan against the published figures: no problem found.")
        return tr(
            "I checked {name}'s plan against the published figures: no problem found.", name=name
        )
    head = (
        tr("Your plan, checked against the published figures:")
        if self_coached
        else tr("{name}'s plan, checked against the published figures:", name=name)
    )
    return f"{head}\n\n{findings_text(findings, volume_unit)}"


def reasons_kept(reasons: Iterable[tuple[str, str]]) -> str:
    """`reasons`: when and why a coach went on."""
    return "\n".join(
        tr("Used anyway, {when}: {reason}", when=when, reason=reason) for when, reason in reasons
    )


ask_sure = SentenceOn(
    "Before I use this plan:\n\n{warnings}\n\nNothing has been changed yet. To use it "
    "anyway, give me a reason; I save it with the plan."
)
going_on = SentenceOn("Using it anyway:\n\n{warnings}")
reason_noted = SentenceOn("Your reason is saved with the plan: {reason}")


# One sentence a finding


def _on(days: Sequence[OnDay], show: Callable[[OnDay], str]) -> str:
    """ "3 and 2 days out: 1.5 L; the day itself: 2 L"."""
    by_value: dict[str, list[int]] = {}
    for day in days:
        if day.days_out is not None:
            by_value.setdefault(show(day), []).append(day.days_out)
    return "; ".join(f"{_days(outs)}: {value}" for value, outs in by_value.items())


def _days(outs: Sequence[int]) -> str:
    far = [out for out in outs if out > 0]
    parts = []
    if len(far) == 1:
        parts.append(figures.days_out(far[0]))
    elif far:
        parts.append(tr("{several} days out", several=figures.all_of([str(out) for out in far])))
    if 0 in outs:
        parts.append(figures.days_out(0))
    return figures.all_of(parts)


def _on_in_grams(days: Sequence[OnDay]) -> str:
    return _on(days, lambda day: figures.grams(float(day.value)))


def _on_in_litres(days: Sequence[OnDay], unit: str) -> str:
    return _on(days, lambda day: figures.volume(float(day.value), unit))


def _on_as_said(days: Sequence[OnDay]) -> str:
    return _on(days, lambda day: training_words(str(day.value)))


def _kcal_per_kg(day: OnDay) -> str:
    return tr("about {energy} kcal per kg lean mass", energy=figures.number(float(day.value), 1))


def _kcal_stated(day: OnDay) -> str:
    return tr("{energy} kcal stated", energy=figures.number(float(day.value)))


class Found(NamedTuple):
    """What a sentence tells: the days and figures of a finding, in the reader's unit of volume."""

    days: Sequence[OnDay]
    facts: Mapping[str, float]
    volume_unit: str


SENTENCES: Mapping[str, Sentence | Callable[[Found], str]] = {
    "water-cut": lambda f: tr(
        "water is cut. {days}; the habit is {habit}. Muscle is three quarters water, and "
        "glycogen is stored with it: cutting water makes people flat and has harmed some.",
        days=_on_in_litres(f.days, f.volume_unit),
        habit=figures.volume(f.facts["habit_l"], f.volume_unit),
    ),
    "water-load": lambda f: tr(
        "water is loaded. {days}; that is more than 1 L over the habit of {habit}. It gains "
        "nothing here, and much water in little time dilutes the blood.",
        days=_on_in_litres(f.days, f.volume_unit),
        habit=figures.volume(f.facts["habit_l"], f.volume_unit),
    ),
    "sodium-swing": lambda f: tr(
        "sodium differs from the habit of {habit} by more than a quarter. {days}.",
        habit=figures.milligrams(f.facts["habit_mg"]),
        days=_on(f.days, lambda day: figures.milligrams(float(day.value))),
    ),
    "sodium-habit-unknown": lambda f: tr(
        "sodium has a figure, and nobody has counted the habit. {days}. It may be a cut without "
        'anybody meaning one: "as always" is safer.',
        days=_on(f.days, lambda day: figures.milligrams(float(day.value))),
    ),
    "carbs-over-guard-rail": lambda f: tr(
        "carbs are over the safety bound of {most}. {days}.",
        most=figures.grams(f.facts["most_g"]),
        days=_on_in_grams(f.days),
    ),
    "no-load-day": Sentence("no day is marked as a load day, so no morning is judged as one."),
    "load-by-another-name": lambda f: tr(
        "a day has as many carbs as a load day but is called something else: {days}. Change its "
        "phase to load or refeed, so that the morning after is judged right.",
        days=_on_in_grams(f.days),
    ),
    "load-over-guard-rail": lambda f: tr(
        "the load comes to {load}; the safety bound for a whole load is {most}.",
        load=figures.grams(float(f.days[0].value)),
        most=figures.grams(f.facts["most_g"]),
    ),
    "load-small": lambda f: tr(
        "an average load day is {load} g/kg; under {need} g/kg a load does little.",
        load=figures.number(float(f.days[0].value), 1),
        need=figures.plain(f.facts["need_g_per_kg"]),
    ),
    "load-small-for-a-woman": lambda f: tr(
        "the largest load day is {load} g/kg; at {need} g/kg or less, women's muscles took up "
        "little in studies.",
        load=figures.number(float(f.days[0].value), 1),
        need=figures.plain(f.facts["need_g_per_kg"]),
    ),
    "deep-depletion": lambda f: tr(
        "depletion is deep. {days}, under {least}. It rarely adds anything if the look is "
        "already right.",
        days=_on_in_grams(f.days),
        least=figures.grams(f.facts["least_g"]),
    ),
    "last-day-jump": lambda f: tr(
        "carbs jump at the very end: no time to see or correct a spill, and the stomach may "
        "rebel. {days}, more than one and a half times the day before.",
        days=_on_in_grams(f.days),
    ),
    "legs-too-late": lambda f: tr(
        "legs are trained late: {days}. Trained legs keep water for days; {last} days out is "
        "late enough.",
        days=_on_as_said(f.days),
        last=figures.plain(f.facts["last_days_out"]),
    ),
    "new-stimulus": lambda f: tr(
        "something new or hard close to event day: {days}. Sore muscles swell and fill more "
        "slowly.",
        days=_on_as_said(f.days),
    ),
    "cardio-jump": lambda f: tr(
        "cardio jumps. {days}, more than 20 min over the days before.",
        days=_on(
            f.days, lambda day: tr("{minutes} min", minutes=figures.plain(round(float(day.value))))
        ),
    ),
    "fibre-high-late": lambda f: tr(
        "fibre is high late. {days}, over {most}: it stays in the gut and brings weight and gas.",
        days=_on_in_grams(f.days),
        most=figures.grams(f.facts["most_g"]),
    ),
    "low-energy-availability": lambda f: tr(
        "energy availability is low. {days}, under {least}. A few days can be managed, weeks "
        "do harm; exercise is estimated.",
        days=_on(f.days, _kcal_per_kg),
        least=figures.plain(f.facts["least_kcal_per_kg"]),
    ),
    "nothing-rehearsed": Sentence(
        "there was no trial. A trial two to eight weeks before says more than any table."
    ),
    "total-off": lambda f: tr(
        "the total does not match. {days}; the macros come to {apart} kcal where carbs are without "
        "fibre (EU labels), or {within} where fibre is in them (US labels).",
        days=_on(f.days, _kcal_stated),
        apart=figures.number(f.facts["kcal_fibre_apart"]),
        within=figures.number(f.facts["kcal_fibre_within"]),
    ),
}


ask_total = SentenceOn(
    "What total does your plan give for {when}, in kcal? I compare it with the day's "
    "carbs, protein, fat and fibre.",
    figures.days_out,
)


def total_fits(stated: float, apart: float, within: float) -> str:
    return tr(
        "{stated} kcal fits: the macros come to {apart} kcal where carbs are without "
        "fibre (EU labels) and {within} where fibre is in them (US labels).",
        stated=figures.number(stated),
        apart=figures.number(apart),
        within=figures.number(within),
    )


total_button = Sentence("Check kcal")


MOST_KCAL = 12000


def _so_far(answers: Answers) -> str:
    if "sure" not in answers:
        return ""
    return going_on(answers["_warnings"]) if answers["sure"] else cancelled()


#: Context: "_warnings" (the text), "_answers" (what the reason will be for), "_event", "_base" (the
#: plan row this was to take the place of, 0 for none), "_days", "_shape", "_field", "_days_out".
PLAN_REVIEW = Flow(
    id="coach-plan-review",
    so_far=_so_far,
    can_cancel=False,
    steps=(
        Step(
            key="sure",
            ask=lambda answers: ask_sure(answers["_warnings"]),
            read=yes_or_no,
            choices=buttons(((go_on_button, "yes"),), ((leave_button, "no"),)),
        ),
        Step(
            key="reason",
            ask=ask_reason,
            read=reason,
            free=True,
            when=lambda answers: answers.get("sure") is True,
        ),
    ),
)


def _read_total(text: str) -> float:
    return parse_number(text.lower().replace("kcal", ""), low=100, high=MOST_KCAL)


#: Context: "_days_out".
PLAN_TOTAL = Flow(
    id="coach-plan-total",
    steps=(
        Step(key="kcal", ask=lambda answers: ask_total(answers["_days_out"]), read=_read_total),
    ),
)


def add_totals_hint(headings: str) -> str:
    """`headings`: what the column may be headed with, and the first of them as we say it."""
    return tr(
        'If your own plan has totals, add a column "{heading}": I compare them with the '
        "day's numbers.",
        heading=tr(headings).partition(",")[0],
    )


def totals_fit(days: int, only: LabelConvention | None) -> str:
    """`only`: the one convention by which they all fit; None where either will do."""
    said = trn(
        "The total of {number} day fits its carbs, protein, fat and fibre.",
        "The totals of {number} days fit their carbs, protein, fat and fibre.",
        days,
    )
    return f"{said} {label_convention(only)}" if only else said


def label_convention(only: LabelConvention) -> str:
    """By which way of counting carbs a total fits, and what that means for the plan."""
    if only is LabelConvention.EU:
        return tr("That is with carbs without fibre, as on EU labels and in my plans.")
    return tr(
        "But only with fibre counted as carbs, as on US labels. In my plans carbs are without "
        "fibre: if yours include it, subtract it."
    )
