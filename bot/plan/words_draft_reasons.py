"""Why a draft's figures are what they are, in a coach's words, and what is asked while drafting."""

from __future__ import annotations

import re
from collections.abc import Mapping, Sequence
from datetime import date

from bot.words import figures
from bot.words.languages import Sentence, SentenceBy, SentenceOn, mark, tr, tr_if
from engine.evidence.body.tracking import LEARNT_LOAD
from engine.evidence.source import Provenance, Source
from engine.planning.drafting.draft_reasons import Line
from engine.values.athlete import Sex

#: What each line says. Names in braces are figures of the line, as `_figures` shows them.
SENTENCES: Mapping[str, str] = {
    "load-women": mark(
        "Load, {mean} g/kg a day on average: my starting point for women. The review says above "
        "8 g/kg, with enough energy, or it does little."
    ),
    "load-women-much": mark(
        "Load, {mean} g/kg a day on average: my starting point for women who train well over an hour "
        "a day, inside the 6 to 10 g/kg of the guideline for such training."
    ),
    "load-men": mark(
        "Load, {mean} g/kg a day on average: my starting point for men. The review counts 6 g/kg for "
        "three days or 7 for two as high."
    ),
    "load-men-much": mark(
        "Load, {mean} g/kg a day on average: my starting point for men who train well over an hour a "
        "day, inside the 6 to 10 g/kg of the guideline for such training."
    ),
    "load-own": mark(
        "Load, {mean} g/kg a day on average: your own number. I draft from {least} to {most} g/kg."
    ),
    "load-learnt": mark(
        "Load, {mean} g/kg a day on average: what your verdicts on earlier peak weeks suggest. "
        "I draft from {least} to {most} g/kg."
    ),
    "shape-front-load": mark(
        "Front-load, {load}, then less each day up to the event: full early, with time to see and "
        "correct a spill."
    ),
    "shape-taper": mark("Taper, {load}: most on the first load day, less each day."),
    "shape-even": mark("Even load, {load}: easiest on the stomach."),
    "shape-back-load": mark(
        "Back-load (most on the last load day), {load}: full late, with little time to correct."
    ),
    "shape-fat-load": mark(
        "Fat first, then the carb load, {load}: fat keeps energy up while carbs are low. It "
        "was tried on one man only."
    ),
    "depletion-none": mark(
        "No depletion, {carb} a day before the load: trained muscle fills without it."
    ),
    "depletion-mild": mark(
        "Mild depletion, {carb} a day before the load: enough to make room, and easy to bear."
    ),
    "depletion-deep": mark(
        "Deep depletion, {carb} a day ({per_kg} g/kg) before the load. It rarely adds anything "
        "if the look is already right: after three such days and one of loading, very lean men "
        "were 0.3 % heavier than before and their muscles 2 % thicker, perhaps only measuring "
        "error."
    ),
    "the-day": mark("Event day, {carb} ({per_kg} g/kg): familiar meals, no second load."),
    "protein": mark(
        "Protein, from {before} down to {on_the_day} day by day, to make room for carbs; never "
        "below {least} g/kg, or below the habit if that is lower."
    ),
    "fat-habit": mark("Fat, {before} until the load, {loading} during the load."),
    "fat-low": mark(
        "Fat, {before} while depleting, {loading} during the load: low, then a little more."
    ),
    "fat-for-energy": mark(
        "Fat, {before} while depleting, {loading} during the load: kept higher, so that there "
        "is enough energy for the lean mass."
    ),
    "fat-lead-in": mark(
        "Fat, {before} before the load instead of the missing carbs, {loading} during the load."
    ),
    "fibre": mark(
        "Fibre, at most {first} on the first load day and {then} after it: less weight and gas "
        "in the gut."
    ),
    "fibre-not-counted": mark(
        "Fibre, as always: it is not counted, so it gets no figure. In the load, fewer "
        "vegetables, pulses and whole grains mean less weight and gas in the gut."
    ),
    "water": mark(
        "Water, {water} every day, as usual: muscle is mostly water, and cutting water has "
        "harmed people."
    ),
    "water-inside": mark(
        "Water, {water} every day: the habit of {habit}, brought inside the safety bounds."
    ),
    "sodium": mark(
        "Sodium, {sodium} every day, as usual: nobody can predict what a change does to one body."
    ),
    "sodium-not-counted": mark(
        "Sodium, as always: it is not counted, so it gets no figure. Salt as usual, for nobody can "
        "tell what a swing does to one body."
    ),
    "training": mark(
        "Training, legs last at six days out, then short pump sessions at half effort and far "
        "from failure, rest the day before: trained legs keep water, sore muscles swell."
    ),
    "cardio-and-steps": mark(
        "Cardio, {cardio} min a day until the load, then none; steps from {steps} down to "
        "{steps_last}: don't walk off what you load."
    ),
    "trial": mark(
        "A trial two to eight weeks before, once or twice: one result says more than any table."
    ),
}  # fmt: skip


#: References that are not only a publication.
PRACTICE_TOO = (
    mark("Common practice, and Escalante et al. 2021 (BMC Sports Sci Med Rehabil 13:68)"),
)

why_button = Sentence("Why these numbers")
back_to_draft_button = Sentence("Back to the draft")


def why_these_numbers(lines: Sequence[Line], volume_unit: str) -> str:
    """Each line of a draft with where it comes from."""
    said = "\n\n".join(line_text(line, volume_unit) for line in lines)
    return f"{why_button()}\n\n{said}"


def line_text(line: Line, volume_unit: str) -> str:
    sentence = tr(SENTENCES[line.id], **_figures(line.facts, volume_unit))
    sources = "; ".join(reference(source) for source in line.sources)
    where = tr("Source: {sources}", sources=sources)
    return f"{sentence}\n{where}"


def reference(source: Source) -> str:
    """Where to look it up, without what is said there."""
    if source.id == LEARNT_LOAD.id:
        return tr("the verdicts on those looks, and our forecast")
    if source.provenance is Provenance.OURS:
        return tr("our own choice")
    if source.id == "common-practice":
        return tr("common practice")
    where = re.split(r":\s|\s\((?!doi|BMC)", source.citation, maxsplit=1)[0]
    return tr(where) if where in PRACTICE_TOO else where


def _figures(facts: Mapping[str, float], volume_unit: str) -> dict[str, str]:
    """By the name of the fact without its unit: "before_g" is {before}, in grams.

    The load days of a shape ("carb_3_g") are one list, {load}.
    """
    shown = {}
    load = [
        f"{figures.days_out(int(key.split('_')[1]))} {figures.grams(value)}"
        for key, value in facts.items()
        if key.startswith("carb_") and key.split("_")[1].isdigit()
    ]
    if load:
        return {"load": ", ".join(load)}
    for key, value in facts.items():
        if key == "g_per_kg":
            shown["per_kg"] = figures.number(value, 1)
        elif key.endswith("_g_per_kg"):
            shown[key.removesuffix("_g_per_kg")] = figures.plain(value)
        elif key.endswith("_g"):
            shown[key.removesuffix("_g")] = figures.grams(value)
        elif key.endswith("_l"):
            shown[key.removesuffix("_l")] = figures.volume(value, volume_unit)
        elif key.endswith("_mg"):
            shown[key.removesuffix("_mg")] = figures.milligrams(value)
        else:
            shown[key.removesuffix("_min")] = figures.number(value)
    return shown


# What is asked while drafting


def ask_depletion(*, fat_lead_in: bool) -> str:
    return tr_if(
        fat_lead_in,
        "How far down should carbs go before the load?\n- mild: about 60 % of normal\n- "
        "deep: about 1 g/kg or less; I'll ask for a reason",
        "How far down should carbs go before the load?\n- none: normal carbs\n- mild: about 60 "
        "% of normal\n- deep: about 1 g/kg or less; I'll ask for a reason",
    )


DEPLETIONS = {"none": mark("None"), "mild": mark("Mild"), "deep": mark("Deep")}
depletion_button = SentenceBy(DEPLETIONS)
ask_why_deep = Sentence(
    "Deep depletion rarely adds anything if the look is already right, and the days are "
    "hard. After three such days and one of loading, very lean men were 0.3 % heavier than "
    "before, perhaps only measuring error (Homer et al. 2024, Nutrition 127:112528). Why "
    "use it here? A few words; I save them with the plan."
)
trial_is_this = Sentence(
    "This is the trial: the same week as before the event, best run two to eight weeks ahead of it."
)
depletion_so_far = SentenceBy(
    {
        "none": mark("Depletion: none"),
        "mild": mark("Depletion: mild"),
        "deep": mark("Depletion: deep"),
    }
)
reason_so_far = SentenceOn("Reason for a deep depletion: {reason}")


def ask_load(sex: Sex, usual: float, much: float, body_mass: str) -> str:
    values = {
        "usual": figures.plain(usual), "much": figures.plain(much), "body_mass": body_mass,
    }  # fmt: skip
    if sex is Sex.FEMALE:
        return tr(
            "How much on an average load day, in g of carbs per kg of body mass? My starting "
            "point for women: {usual} g/kg (review: above 8). With well over an hour of "
            "training a day: {much} g/kg (guideline: 6 to 10). Body mass: {body_mass}. Tap "
            "one, or type another, for example 6.5.",
            **values,
        )
    return tr(
        "How much on an average load day, in g of carbs per kg of body mass? My starting point "
        "for men: {usual} g/kg (review: 6 for three days or 7 for two is high). With well over "
        "an hour of training a day: {much} g/kg (guideline: 6 to 10). Body mass: {body_mass}. "
        "Tap one, or type another, for example 6.5.",
        **values,
    )


load_button = SentenceOn("{load} g/kg", figures.plain)


def trial_fits(first: date, last: date) -> str:
    return tr(
        "There is time to practise: run the same week as a trial, once or twice, with its "
        "event day from {first} to {last} (eight to two weeks before).",
        first=figures.short_day(first), last=figures.short_day(last),
    )  # fmt: skip


def trial_teaches(load: float, narrower: float, spilled: float, *, same: bool) -> str:
    """What the trial is expected to teach, and how likely it is to spill over.

    `same` where the planned load teaches most already.
    """
    share = figures.plain(round(100 * narrower / 5) * 5)
    return f"{_teaches(load, share, same=same)} {_spills(spilled)}"


def _spills(chance: float) -> str:
    fives = round(100 * chance / 5) * 5
    if fives < 5:
        return tr("It is unlikely to spill over.")
    return tr("The chance that it spills over is about {share} %.", share=figures.plain(fives))


def _teaches(load: float, share: str, *, same: bool) -> str:
    if same:
        return tr(
            "This load should teach about as much as any: afterwards the load that fills and the one "
            "that spills over should be known about {share} % more closely. That's an estimate, and "
            "one look may teach less.",
            share=share,
        )
    return tr(
        "A load of {load} g/kg a day should teach more than this one: afterwards the load that fills "
        "and the one that spills over should be known about {share} % more closely. That's an "
        "estimate, and one look may teach less.",
        load=figures.plain(round(load, 1)),
        share=share,
    )
