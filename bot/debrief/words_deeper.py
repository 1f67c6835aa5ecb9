"""A week looked at closely: what it taught, what was foreseen, what each change was worth."""

from __future__ import annotations

from collections.abc import Sequence

from bot.debrief.words import LOOK_WORDS, WHY
from bot.words import figures
from bot.words.chances import in_ten
from bot.words.figures import signed
from bot.words.languages import Sentence, SentenceOn, mark, tr, tr_if, trn
from engine.planning.behind.debrief import DayBehind
from engine.planning.behind.hindsight import Foreseen, Helped, Odds
from engine.planning.behind.learning import Quantity, Taught
from engine.planning.behind.next_time import Advice
from engine.values.checkin import Gut, Look

TEN = 10


button = Sentence("Look closer")
placing_button = Sentence("Placing")

head = SentenceOn("{debrief}: a closer look")

# What it taught

QUANTITIES = {
    Quantity.STORE: mark("Muscles hold about {middle} g when full ({low} to {high})."),
    Quantity.FILL: mark("In a day they take up at most about {middle} g ({low} to {high})."),
    Quantity.FLAT: mark("Flat under about {middle} g/kg a load day ({low} to {high})."),
    Quantity.SPILL: mark("Spills over from about {middle} g/kg a load day ({low} to {high})."),
}
_IN_GRAMS = (Quantity.STORE, Quantity.FILL)


def what_it_taught(taught: Taught | None) -> str:
    if taught is None:
        return tr("Too few weights in this week to learn about stores and spill from it.")
    lines = [tr("What this week says about the body (9 in 10 such ranges should hold):")]
    for quantity in Quantity:
        span, was = taught.after[quantity], taught.before[quantity]
        places = 0 if quantity in _IN_GRAMS else 1
        told = tr(
            QUANTITIES[quantity],
            low=figures.number(span.low, places),
            middle=figures.number(span.middle, places),
            high=figures.number(span.high, places),
        )
        before = tr(
            "Before: {low} to {high}",
            low=figures.number(was.low, places),
            high=figures.number(was.high, places),
        )
        lines.append(f"- {told} {before}, {_narrower(taught.narrowed(quantity))}.")
    return "\n".join(lines)


def _narrower(share: float) -> str:
    percent = round(100 * share)
    if percent >= 5:
        return tr("now {percent} % narrower", percent=percent)
    if percent <= -5:
        return tr("now {percent} % wider", percent=-percent)
    return tr("hardly changed")


# What was foreseen


def foreseen_lines(found: Foreseen, look: str | None) -> str:
    parts = []
    if found.bands:
        parts.append(
            tr(
                "{held} of {number} weights lay in the range expected that morning.",
                held=found.bands_held,
                number=found.bands,
            )
        )
    if found.fullness_told:
        off = figures.number(abs(found.fullness_off), 1)
        if abs(found.fullness_off) < 0.25:
            parts.append(tr("Fullness was as expected."))
        elif found.fullness_off > 0:
            parts.append(tr("Fullness was {grades} higher than expected on average.", grades=off))
        else:
            parts.append(tr("Fullness was {grades} lower than expected on average.", grades=off))
    if found.odds is not None and found.days_out is not None:
        told = tr(
            "The last forecast ({when}) said {odds}.",
            when=figures.days_out(found.days_out),
            odds=odds(found.odds),
        )
        parts.append(told + (" " + _came(found.odds, look) if look else ""))
    if not parts:
        return tr("Nothing was forecast in this week that could be checked.")
    return tr("Forecast and result: {parts}", parts=" ".join(parts))


def _came(said: Odds, look: str) -> str:
    chance = said.of(Look(look))
    word = tr(LOOK_WORDS[look])
    if chance >= 0.5:
        return tr("It came in {look}, as was most likely.", look=word)
    if chance >= 0.2:
        return tr("It came in {look}, which was one of the likely ways.", look=word)
    return tr("It came in {look}, which it had thought unlikely.", look=word)


def odds(said: Odds) -> str:
    """ "full 7, flat 1, spilled over 2 in 10"."""
    tenths = in_ten(said)
    return tr(
        "full {full}, flat {flat}, spilled over {spilled} in 10",
        full=tenths["full"],
        flat=tenths["flat"],
        spilled=tenths["spilled"],
    )


# Rules


def rules_lines(found: Sequence[Helped]) -> str:
    if not found:
        return tr("No day was moved away from the plan, so there is no change to weigh.")
    lines = [tr("What each change was worth, as the forecast sees it now:")]
    for one in found:
        moved = one.moved
        why = tr(WHY[moved.rule]) if moved.rule in WHY else moved.rule.replace("-", " ")
        lines.append(
            tr(
                "- {when}, {change} ({why}): with it {given}; without it {without}. {verdict}",
                when=figures.days_out(moved.days_out),
                change=figures.change(moved.set_g - moved.planned_g),
                why=why,
                given=odds(one.given),
                without=odds(one.without),
                verdict=_verdict(one),
            )
        )
    return "\n".join(lines)


def _verdict(one: Helped) -> str:
    share = round(TEN * max(one.better, one.worse))
    if one.verdict != "open" and in_ten(one.given) == in_ten(one.without):
        return tr_if(
            one.verdict == "helped",
            "It probably helped ({share} in 10), but too little to move these odds.",
            "It probably made the look worse ({share} in 10), but too little to move these odds.",
            share=share,
        )
    if one.verdict == "helped":
        return tr("It probably helped ({share} in 10).", share=share)
    if one.verdict == "hurt":
        return tr("It probably made the look worse ({share} in 10).", share=share)
    return tr("Whether it helped can't be told.")


# What is kept with the week


def kept_lines(days: Sequence[DayBehind], placing: str, note: str) -> str:
    told = [day.morning for day in days if day.morning is not None]
    guts = [one.gut for one in told if one.gut is not None]
    upset = sum(gut in (Gut.HEAVY, Gut.BAD) for gut in guts)
    slept = [one.sleep_h for one in told if one.sleep_h is not None]
    lines = []
    if guts:
        lines.append(
            trn(
                "Stomach: heavy or bad on {upset} of {number} morning.",
                "Stomach: heavy or bad on {upset} of {number} mornings.",
                len(guts),
                upset=upset,
            )
        )
    if slept:
        lines.append(
            tr(
                "Sleep: {mean} h on average, {least} h in the shortest night.",
                mean=figures.number(sum(slept) / len(slept), 1),
                least=figures.number(min(slept), 1),
            )
        )
    if placing:
        lines.append(tr("Placing: {placing}", placing=placing))
    if note:
        lines.append(tr("Your note: {note}", note=note))
    return "\n".join(lines)


# Next time


#: Each sentence with its evidence and its doubt.
ADVICE = {
    "no-verdict": mark(
        "Give your verdict on the look: without it nothing can be said of the load."
    ),
    "eat-it-first": mark(
        "Plan the same load and see that it is eaten: only {percent} % of it was. Whether it "
        "would have been enough is not known."
    ),
    "more": mark(
        "Plan more for the load: it came in flat. How much more can't be said from these weeks."
    ),
    "same": mark("Plan the same load: it came in full. One good week may be luck."),
    "less": mark(
        "Plan less for the load: it spilled over. How much less can't be said from these weeks."
    ),
    "more-to": mark(
        "Plan about {to} g/kg a load day: {then} came in flat. At that the forecast says {odds}."
    ),
    "more-unsure": mark(
        "Plan {low} to {high} g/kg a load day, in a trial first: {low} came in flat, but the "
        "forecast sees no gain in more ({odds})."
    ),
    "less-to": mark(
        "Plan about {to} g/kg a load day: {then} spilled over. At that the forecast says {odds}."
    ),
    "less-between": mark(
        "Plan between {low} and {high} g/kg a load day, in a trial first: {high} spilled over, but "
        "at {low} it may come in flat. There the forecast says {odds}."
    ),
    "less-unsure": mark(
        "Plan {low} to {high} g/kg a load day, in a trial first: {high} spilled over, though the "
        "forecast sees no gain in less ({odds})."
    ),
    "same-again": mark(
        "Plan {then} g/kg a load day again: it came in full. For the same again the forecast says "
        "{odds}."
    ),
    "same-or-more": mark(
        "Plan {low} to {high} g/kg a load day: {low} came in full, but perhaps only just. For the "
        "same again the forecast says {odds}."
    ),
    "same-or-less": mark(
        "Plan {low} to {high} g/kg a load day: {high} came in full, but perhaps only just. For the "
        "same again the forecast says {odds}."
    ),
    "gut-in-the-load": mark(
        "Make meals smaller and keep to foods that digested well: the stomach was upset on "
        "{mornings} mornings of the load. Which food did it is not known; try them in a trial."
    ),
    "eaten-short": mark(
        "Make the load easier to eat: {eaten_percent} % of it was eaten, as far as was reported."
    ),
    "eaten-over": mark(
        "Eat exactly what is set: {eaten_percent} % of it was eaten, as far as was reported."
    ),
    "water-short": mark(
        "Keep water at target through the load: it was short on {days} days. How much that cost "
        "can't be told."
    ),
    "sleep-short": mark(
        "See to sleep: {nights} short nights. They can make anybody look flat or watery; whether "
        "they did here is not known."
    ),
    "load-moved": mark(
        "Start the plan nearer to {set_g} g: this week's check-ins took the load there from "
        "{planned_g} g. Next time may differ."
    ),
    "rule-helped": mark(
        "Let the check-ins move the days as they did: {change} g {when} probably helped ({share} in "
        "10, by the forecast)."
    ),
    "rule-hurt": mark(
        "Look twice at a change like {change} g {when}: it probably made the look worse ({share} in "
        "10, by the forecast)."
    ),
    "keep-the-way": mark(
        "Keep food, water and sleep as they were: nothing in {mornings} check-ins speaks against "
        "them. What nobody wrote down is not known."
    ),
    "answer-more": mark(
        "Answer every morning: {mornings} were missing, and what they would have shown can't be "
        "made up for."
    ),
    "nothing-learnt": mark(
        "Weigh in on the mornings of the next trial: this week had too few weights to learn from."
    ),
    "well-known": mark(
        "Flat and spilled over are known well enough (within {low} to {high} g/kg a load day): "
        "another trial is for practice. Nine in ten such ranges hold."
    ),
    "open-flat": mark(
        "Where flat ends is still the most open: {low} to {high} g/kg a load day. A trial near "
        "{middle} would tell most. Nine in ten such ranges hold."
    ),
    "open-spill": mark(
        "Where it spills over is still the most open: {low} to {high} g/kg a load day. Don't go "
        "looking for it on a show day; a trial tells. Nine in ten such ranges hold."
    ),
}
#: How many places the figures of a sentence have; those left out are whole.
_PLACES = {"to": 1, "then": 1, "low": 1, "middle": 1, "high": 1}


def next_time(three: Sequence[Advice]) -> str:
    lines = [f"{number}. {_advice(one)}" for number, one in enumerate(three, 1)]
    return "\n".join([tr("Next time:"), *lines])


def _advice(one: Advice) -> str:
    told = {name: figures.number(value, _PLACES.get(name, 0)) for name, value in one.facts.items()}
    if "full" in one.facts:
        said = Odds(one.facts["flat"], one.facts["full"], one.facts["spilled"])
        told["odds"] = odds(said)
    if "share" in one.facts:
        told["share"] = figures.number(TEN * one.facts["share"])
    if "change" in one.facts:
        told["change"] = signed(one.facts["change"])
        told["when"] = figures.days_out(int(one.facts["days_out"]))
    return tr(ADVICE[one.id], **told)


rests_on = Sentence(
    "Ranges and odds come from a model tried on published loads and virtual athletes, not on "
    "real peak weeks: a guide beside your own eye."
)


# Placing


def ask_placing(name: str, *, self_coached: bool) -> str:
    if self_coached:
        return tr("How did you place? Such as: 2nd of 9, Bikini B. I keep it with the week.")
    return tr(
        "How did {name} place? Such as: 2nd of 9, Bikini B. I keep it with the week.", name=name
    )


placing_kept = Sentence("Saved with the week.")
