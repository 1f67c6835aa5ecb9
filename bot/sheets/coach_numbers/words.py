"""What a coach reads of their own numbers."""

from __future__ import annotations

from datetime import date

from bot.decision.words_target import gate_name
from bot.sheets.coach_numbers import reckoning as r
from bot.words import common, figures
from bot.words.languages import Sentence, SentenceOn, mark, tr, trn
from bot.words.names import rule_name, word
from engine.decision.rules import RULE_IDS
from engine.values.checkin import Look
from engine.values.shares import Share

RULES_SHOWN = 3
SAME = 0.05  # a difference that would be written as 0.0
DONE = {
    r.RAISED: mark("after more carbs"),
    r.LOWERED: mark("after fewer carbs"),
    r.KEPT: mark("with nothing changed"),
}
ORDER = (r.RAISED, r.LOWERED, r.KEPT)


menu = Sentence("How your athletes' weeks went, in numbers")
nothing_yet = Sentence(
    "None of your athletes has a finished week yet, so there is nothing to count. Past weeks "
    "can come in from a sheet: open a card, then Files."
)
caption = Sentence("Your numbers as a chart. Bars are 95 % ranges.")
sheet_caption = Sentence(
    "What your numbers are counted from, row by row. It holds health data: keep it safe."
)


def share(found: Share) -> str:
    """ "18 of 31 (58 %, 41 to 74)"."""
    if not found.total:
        return tr("none so far")
    return tr(
        "{count} of {total} ({percent} %, {low} to {high})",
        count=found.count, total=found.total, percent=figures.number(100 * found.share),
        low=figures.number(100 * found.low), high=figures.number(100 * found.high),
    )  # fmt: skip


def message(found: r.Numbers) -> str:
    parts = [
        _head(found), _looks(found), _changes(found), _checkins(found), _signing(found),
        _ratings(found), _forecast(found), _how_sure(found),
    ]  # fmt: skip
    return "\n\n".join(part for part in parts if part)


def _head(found: r.Numbers) -> str:
    head = tr(
        "Your numbers: {athletes}, {weeks} behind them.",
        athletes=trn("{number} athlete", "{number} athletes", found.athletes),
        weeks=trn("{number} week", "{number} weeks", found.weeks),
    )
    if not found.imported:
        return head
    more = trn("{number} of them is imported.", "{number} of them are imported.", found.imported)
    return f"{head} {more}"


def _looks(found: r.Numbers) -> str:
    if not next(iter(found.looks.values())).total:
        return tr("How they ended: you have not given a verdict on a look yet.")
    lines = [
        f"- {word(look.value)}: {share(found.looks[look])}"
        for look in (Look.FULL, Look.FLAT, Look.SPILLED)
    ]
    return "\n".join([tr("How they ended, by your verdict:"), *lines])


def _changes(found: r.Numbers) -> str:
    if not found.helped:
        return ""
    lines = [
        f"- {tr(DONE[done])}: {share(found.helped[done])}" for done in ORDER if done in found.helped
    ]
    lines += [
        tr('- after "{why}": {share}', why=why(rule), share=share(count))
        for rule, count in list(found.by_rule.items())[:RULES_SHOWN]
    ]
    head = tr(
        "On mornings off the fullness expected, the next one was nearer to it (that is no proof "
        "of a cause):"
    )
    return "\n".join([head, *lines])


def why(rule: str) -> str:
    """What changed a day: a rule, a gate, the forecast alone or the coach's own hand."""
    if rule == "coach":
        return tr("set by hand")
    if rule == "forecast":
        return tr("the forecast")
    return rule_name(rule) if rule in RULE_IDS else gate_name(rule)


def _checkins(found: r.Numbers) -> str:
    if not found.answered.total:
        return ""
    said = tr("Mornings answered: {share}.", share=share(found.answered))
    return f"{said} {_minutes(found.after_prompt, asked=True)}".strip()


def _signing(found: r.Numbers) -> str:
    if not found.signed.total:
        return ""
    said = tr("Proposals you answered in time: {share}.", share=share(found.signed))
    return f"{said} {_minutes(found.to_sign, asked=False)}".strip()


def _minutes(took: r.Minutes | None, *, asked: bool) -> str:
    if took is None:
        return ""
    values = {"median": _span(took.median), "most": _span(took.nine_of_ten)}
    if values["median"] == values["most"]:
        if asked:
            return tr("Nine of ten came within {most} of the question.", **values)
        return tr("Nine of ten took no more than {most}.", **values)
    if asked:
        return tr("Half of them within {median} of the question, nine of ten in {most}.", **values)
    return tr("Half of them within {median}, nine of ten in {most}.", **values)


def _span(minutes: float) -> str:
    if minutes < 120:
        return tr("{minutes} min", minutes=figures.number(minutes))
    return tr("{hours} h", hours=figures.number(minutes / 60, 1))


def _ratings(found: r.Numbers) -> str:
    lines = []
    if found.fullness is not None:
        lines.append(_apart(tr("Fullness"), found.fullness, tr("points of ten")))
    if found.sharpness is not None:
        lines.append(_apart(tr("Sharpness"), found.sharpness, tr("points of five")))
    if not lines:
        return ""
    return "\n".join([tr("Athletes' own ratings against what you saw:"), *lines])


def _apart(what: str, found: r.Apart, unit: str) -> str:
    values = {
        "what": what, "unit": unit, "mean": figures.number(abs(found.mean), 1),
        "low": figures.signed(found.low, 1), "high": figures.signed(found.high, 1),
        "pairs": trn("{number} morning", "{number} mornings", found.pairs),
    }  # fmt: skip
    if abs(found.mean) < SAME:
        return tr("- {what}: the same as you ({low} to {high}; {pairs})", **values)
    if found.mean < 0:
        return tr("- {what}: {mean} {unit} lower than you ({low} to {high}; {pairs})", **values)
    return tr("- {what}: {mean} {unit} higher than you ({low} to {high}; {pairs})", **values)


def _forecast(found: r.Numbers) -> str:
    if found.brier is None:
        return ""
    lines = [
        tr(
            "- full forecast at {said} %: it came in {share}",
            said=figures.number(100 * band.said), share=share(band.came),
        )
        for band in found.bands
    ]  # fmt: skip
    tail = tr(
        "Error {brier} (0 is perfect, {blind} is what guessing would score).",
        brier=figures.number(found.brier, 2), blind=figures.number(2 / 3, 2),
    )  # fmt: skip
    return "\n".join([tr("The last forecast before each event:"), *lines, tail])


def _how_sure(found: r.Numbers) -> str:
    said = tr(
        "In brackets: 95 % ranges, within which the true share may well lie. Only your own "
        "athletes are counted."
    )
    if found.weeks < r.FEW:
        said += " " + tr("With so few weeks, none of this proves anything.")
    return said


sheet_button = SentenceOn("As a sheet ({format})", str.upper)


def yes_no(yes: bool) -> str:
    return common.yes() if yes else common.no()


def said_full(band: r.Band) -> str:
    return tr("full forecast at {said} %", said=figures.number(100 * band.said))


# The picture


picture_title = Sentence("Your numbers")
few = Sentence("few: proves nothing")


def picture_under(found: r.Numbers, day: date) -> str:
    return tr("{weeks} behind you, {day}", weeks=trn("{number} week", "{number} weeks", found.weeks),
              day=figures.short_day(day))  # fmt: skip


def panels(found: r.Numbers) -> list[tuple[str, list[tuple[str, Share]]]]:
    """Heading and lines of each panel; without those that have nothing to show."""
    looked = [
        (word(look.value), found.looks[look]) for look in (Look.FULL, Look.FLAT, Look.SPILLED)
    ]
    changed = [(tr(DONE[d]), found.helped[d]) for d in ORDER if d in found.helped]
    habits = [
        (tr("mornings answered"), found.answered),
        (tr("proposals answered in time"), found.signed),
    ]
    odds = [(said_full(band), band.came) for band in found.bands]
    every = [
        (tr("How weeks ended"), looked),
        (tr("Nearer the next morning"), changed),
        (tr("Answers"), habits),
        (tr("Forecast: how often full came"), odds),
    ]
    shown = [(head, [line for line in lines if line[1].total]) for head, lines in every]
    return [(head, lines) for head, lines in shown if lines]
