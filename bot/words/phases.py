"""What a day of a plan is for, as it is said and as it is read; which days are the load's; training."""

from __future__ import annotations

from collections.abc import Sequence
from functools import partial

from bot.words import figures
from bot.words.languages import Sentence, SentenceOn, in_each, mark, tr
from engine.planning.drafting.bridge import TRAINING as AFTER_A_SHOW
from engine.planning.drafting.draft import TRAINING
from engine.values.plan import DayTarget, PeakPlan, Phase

#: On a button, as a heading and in a sheet.
PHASES: dict[Phase, str] = {
    Phase.DEPLETION: mark("Depletion"),
    Phase.USUAL: mark("Usual"),
    Phase.REFEED: mark("Refeed"),
    Phase.LOAD: mark("Load"),
    Phase.REST: mark("Rest from the load"),
    Phase.EVENT: mark("Event day"),
}
#: In the middle of a sentence.
IN_A_SENTENCE: dict[Phase, str] = {
    Phase.DEPLETION: mark("a depletion day"),
    Phase.USUAL: mark("a usual day"),
    Phase.REFEED: mark("a refeed"),
    Phase.LOAD: mark("a load day"),
    Phase.REST: mark("a rest day from the load"),
    Phase.EVENT: mark("event day"),
}
#: As an athlete reads it, where neither its number nor its neighbours say more.
READ_AS: dict[Phase, str] = {
    Phase.DEPLETION: mark("low day"),
    Phase.USUAL: mark("normal day"),
    Phase.REFEED: mark("refeed"),
}
#: What else people type for each.
ALSO: dict[Phase, str] = {
    Phase.DEPLETION: mark("depletion, deplete, depletion day, low, low day"),
    Phase.USUAL: mark("usual, normal, usual day, as usual, as always"),
    Phase.REFEED: mark("refeed, refeed day, refeeding"),
    Phase.LOAD: mark("load, load day, loading"),
    Phase.REST: mark("rest, rest day, rest from the load"),
    Phase.EVENT: mark("event, event day, show day, day"),
}
#: How training is called in drafted plans.
DRAFTED = (*TRAINING.values(), AFTER_A_SHOW)


def phase_words(phase: Phase | None) -> str:
    return tr(PHASES[phase]) if phase is not None else ""


def phase_in(text: str) -> Phase | None:
    """The phase that a word names, in whichever language it is written."""
    said = " ".join(text.split()).casefold()
    for phase in Phase:
        written = (*in_each(partial(tr, ALSO[phase])), *in_each(partial(phase_words, phase)))
        words = f"{phase.value}, {', '.join(written)}".split(",")
        if said in {word.strip().casefold() for word in words}:
            return phase
    return None


def load_days(days: Sequence[int]) -> str:
    """Which days are the load's: "3 to 1 days out", "5, 4 and 2 days out"; "" for none."""
    if not days:
        return ""
    if len(days) == 1:
        return figures.days_out(days[0])
    first, last = days[0], days[-1]
    if first - last == len(days) - 1:
        return tr("{first} to {last} days out", first=first, last=last)
    before = ", ".join(str(out) for out in days[:-1])
    return tr("{before} and {last} days out", before=before, last=last)


def load_line(plan: PeakPlan) -> str:
    """ "Load, 3 to 1 days out: 1,380 g carbs in all"."""
    if not plan.load_days:
        return tr("No load day in this plan")
    return tr(
        "Load, {days}: {load} carbs in all",
        days=load_days(plan.load_days), load=figures.grams(plan.load_g),
    )  # fmt: skip


def of_day(plan: PeakPlan, days_out: int) -> str:
    """What a day is for, as its athlete reads it: "load, day 2 of 3"; "" on the day itself."""
    phase, load = plan.phase(days_out), plan.load_days
    if phase is Phase.LOAD and days_out in load:
        if len(load) == 1:
            return tr("load day")
        return tr("load, day {number} of {days}", number=load.index(days_out) + 1, days=len(load))
    if phase is Phase.REST:
        return _rest(plan, days_out)
    if phase is Phase.USUAL and days_out == plan.first_load_day + 1:
        return tr("rest day before the load")
    return tr(READ_AS[phase]) if phase in READ_AS else ""


def _rest(plan: PeakPlan, days_out: int) -> str:
    if days_out > plan.first_load_day:
        return tr("rest day before the load") if plan.load_days else tr("rest day")
    between = any(out < days_out for out in plan.load_days)
    return tr("rest day between load days") if between else tr("taper after the load")


other_days_button = Sentence("Other load days")


def ask_load_days(days: Sequence[int], most: int) -> str:
    return tr(
        "The load is {days} now. On which days should it be? Tap, or send the days out, for example "
        '"5-3" or "4 2 1"; at most {most}.',
        days=load_days(days), most=most,
    )  # fmt: skip


unread_load_days = SentenceOn(
    'I need up to {most} days from 7 to 1 days out, for example "3-1", "5 4 3" or "1".'
)


def counts_as(target: DayTarget) -> str:
    """What a changed day has become."""
    assert target.phase is not None
    return tr(
        "{when} now counts as {phase}. Tap Phase on that day to say otherwise.",
        when=figures.capital(figures.days_out(target.days_out)),
        phase=tr(IN_A_SENTENCE[target.phase]),
    )


too_many_load_days = SentenceOn(
    "A load has at most {most} days. Make another day something else first."
)


def ask_phase(days_out: int, phase: Phase | None) -> str:
    return tr(
        "{when} is {phase} now. What is it for? Check-ins judge a load day, and the days up to the "
        "event after it, as the load.",
        when=figures.capital(figures.days_out(days_out)),
        phase=tr(IN_A_SENTENCE[phase]) if phase is not None else tr("not said"),
    )


def as_drafted(said: str) -> str:
    """What a draft would call it, where it is that in any language; else as it was said."""
    return next((one for one in DRAFTED if said in in_each(partial(tr, one))), said)


def training_words(training: str) -> str:
    return tr(training) if training in DRAFTED else training
