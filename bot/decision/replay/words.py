"""What a coach reads of a finished week under another rule, limit or use of the forecast."""

from __future__ import annotations

from datetime import date

from bot.words import chances, figures
from bot.words.common import day_and_year, event_name
from bot.words.languages import Sentence, SentenceBy, SentenceOn, mark, tr
from bot.words.names import LIMIT_WORDS, rule_name
from engine.decision.decide import Decision
from engine.values.case import ForecastUse

#: The limits that may be asked about, inside a sentence.
LIMITS = {**LIMIT_WORDS, "apply_without_asking_g": mark("auto-approval limit")}

button = Sentence("What if")
ask_more_button = Sentence("Ask something else about this week")
cannot_be = Sentence(
    "That limit can't be: it is past the safety bound, or doesn't fit the other limits of that "
    "week. Nothing was changed; try another figure."
)
columns = Sentence("Days out: set then → would have been (rule)")
no_week_yet = SentenceOn("{name} has no finished week yet that anything was decided in.")


def ask(name: str, kind: str, day: date) -> str:
    return tr(
        "{name}, {kind} on {day}: what if something had been different? The week is decided again from "
        "what was answered then.",
        name=name, kind=event_name(kind), day=day_and_year(day),
    )  # fmt: skip


use_button = SentenceBy(
    {
        ForecastUse.PROPOSES: mark("Forecast on"),
        ForecastUse.SHOWS: mark("Forecast only shows"),
        ForecastUse.RULES_ONLY: mark("Rules alone"),
    }
)
less_button = SentenceOn("Without: {rule}")


def limit_button(key: str) -> str:
    return tr("Another {limit}", limit=tr(LIMITS[key]))


def week_button(kind: str, day: date) -> str:
    return tr("Week of the {kind}, {day}", kind=event_name(kind), day=day_and_year(day))


def which_value(key: str, then_g: float) -> str:
    return tr(
        "Which {limit} in g? It was {then}.", limit=tr(LIMITS[key]), then=figures.grams(then_g)
    )


with_use = SentenceBy(
    {
        ForecastUse.PROPOSES: mark("with the forecast proposing"),
        ForecastUse.SHOWS: mark("with the forecast only showing"),
        ForecastUse.RULES_ONLY: mark("with the rules alone"),
    }
)
without = SentenceOn("without the rule: {rule}")


def with_limit(key: str, value_g: float) -> str:
    return tr("with {limit}: {value}", limit=tr(LIMITS[key]), value=figures.grams(value_g))


def head(name: str, kind: str, day: date, what: str) -> str:
    return tr(
        "{name}, {kind} on {day}, {what}",
        name=name, kind=event_name(kind), day=day_and_year(day), what=what,
    )  # fmt: skip


def morning(
    days_out: int, set_g: float | None, again: Decision, *, by_coach: bool, as_then: bool
) -> str:
    """ "2 out: 475 → 460 (spilled over); would have waited for you"."""
    label = tr("Day") if days_out == 0 else tr("{days} out", days=days_out)
    then = "–" if set_g is None else figures.number(set_g)
    now = "–" if again.carb_g is None else figures.number(again.carb_g)
    same = as_then or then == now
    line = f"{label}: {then} → {now}"
    if same:
        line = tr("{label}: {figure}, the same", label=label, figure=then)
    else:
        line += f" ({rule_name(again.rule)})"
    said = []
    if by_coach:
        said.append(tr("by your own hand then"))
    if again.needs_sign_off and not same:
        said.append(tr("would have waited for you"))
    return "; ".join([line, *said])


def in_sum(moved: int, mornings: int) -> str:
    if not moved:
        return tr("No figure would have been different.")
    return tr(
        "{moved} of {mornings} figures would have been different. Figures that wait for you are "
        "counted as approved.",
        moved=moved, mornings=mornings,
    )  # fmt: skip


def estimate(
    days_out: int, then: tuple[float, chances.Chances], now: tuple[float, chances.Chances]
) -> str:
    """The forecast's chances with each figure, seen from the first morning that differs."""
    when = tr("event day") if days_out == 0 else tr("{days} out", days=days_out)
    if chances.in_ten(then[1]) == chances.in_ten(now[1]):
        return tr(
            "The forecast sees no difference between {then} and {now} from {when}: {chances}.",
            when=when, then=figures.grams(then[0]), now=figures.grams(now[0]),
            chances=chances.all_three(now[1]),
        )  # fmt: skip
    return tr(
        "The forecast's own estimate from {when}: with {then} {chances_then}; with {now} "
        "{chances_now}.",
        when=when, then=figures.grams(then[0]), chances_then=chances.all_three(then[1]),
        now=figures.grams(now[0]), chances_now=chances.all_three(now[1]),
    )  # fmt: skip


not_known = SentenceOn(
    "Nobody knows what {name}'s body would have answered to other figures: each morning is "
    "decided with the answers that were given."
)
