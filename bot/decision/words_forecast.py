"""The forecast in words: how the day looks from here, never more precisely than the model sees it; and
what a coach reads while saying what it may do for an athlete.
"""

from __future__ import annotations

from collections.abc import Iterable

from bot.decision.words_target import change_in_words
from bot.words import figures
from bot.words.chances import all_three, in_ten
from bot.words.common import noted
from bot.words.figures import capital
from bot.words.languages import Sentence, SentenceBy, SentenceCounted, mark, tr, trn
from engine.decision.decide import Decision
from engine.decision.foresight import Foresight, Odds
from engine.decision.kept import InShort
from engine.decision.record import Trace
from engine.evidence.deciding import MORNINGS_TO_TRUST
from engine.values.case import ForecastUse
from engine.written.units import WeightUnit

LIKELY, REAL, UNLIKELY = 0.6, 0.35, 0.1  # our own choice of words for chances
AS_EXPECTED_KG = 0.05
NEAR_G = 25.0  # a usual step: within it the odds are as good as the same


def outlook_line(decision: Decision, set_g: float | None = None) -> str:
    """One plain line for the athlete; empty where the forecast has nothing to say, or only shows.

    `set_g`: the figure that stands, where it is another than the decision's.
    """
    if only_shows(decision):
        return ""
    odds = odds_in_force(decision, set_g)
    if odds is None:
        return ""
    return tr("{course}; {risk}.", course=_course(odds), risk=_risk(odds))


def _course(odds: Odds) -> str:
    if odds.full >= LIKELY:
        return tr("On track: full")
    if odds.flat >= max(odds.full, odds.spilled):
        return tr("Right now flat is more likely than full")
    if odds.spilled >= odds.full:
        return tr("Right now spilled over is more likely than full")
    return tr("Full is possible")


def _risk(odds: Odds) -> str:
    spilled, flat = odds.spilled, odds.flat
    if spilled >= REAL:
        return tr("spilling over is a real risk")
    if spilled >= UNLIKELY:
        return tr("spilling over is possible")
    if flat >= REAL:
        return tr("the risk is being flat, not spilling over")
    return tr("spilling over is unlikely")


def odds_in_force(decision: Decision | InShort, set_g: float | None = None) -> Odds | None:
    """The odds of the candidate nearest to the figure that was set, or the decision came to."""
    view, carb_g = decision.foresight, decision.carb_g if set_g is None else set_g
    if view is None or view.best is None or view.planned is None or carb_g is None:
        return None
    closest = nearest(view.odds, carb_g)
    # Odds of another figure than was set since say nothing of it.
    return closest if set_g is None or abs(closest.carb_g - set_g) <= NEAR_G else None


def nearest(candidates: Iterable[Odds], carb_g: float) -> Odds:
    """The odds of the figure that is nearest to this one (g)."""
    return min(candidates, key=lambda odds: abs(odds.carb_g - carb_g))


#: Why the forecast stands aside, by what the engine says of it.
ASIDE = {
    "too few mornings yet": mark(
        "No forecast yet, so the rules decide alone: it needs {mornings} check-ins of this "
        "week, or an earlier week"
    ),
    "three mornings running outside what it expected": mark(
        "The forecast is paused, so the rules decide alone: on three mornings in a row the "
        "weight was outside the range it expected"
    ),
}


def why_lines(decision: Decision, weight_unit: str) -> list[str]:
    """What the model saw: the weight against its band, rule and forecast, and the odds."""
    view = decision.foresight
    if view is None:
        return []
    if not view.trusted:
        aside = ASIDE.get(view.why_not, mark("No forecast"))
        return [tr(aside, mornings=figures.plain(MORNINGS_TO_TRUST.value))]
    lines = [
        _residual(decision, view.residual_kg, weight_unit),
        _rule_and_forecast(decision.trace, decision.planned_carb_g),
        *odds_lines(view),
    ]
    return [line for line in lines if line]


def _residual(decision: Decision, off_kg: float | None, weight_unit: str) -> str:
    if off_kg is None:
        return ""
    unit = WeightUnit.LB if weight_unit != WeightUnit.KG else WeightUnit.KG
    size = figures.weight(abs(off_kg), unit)
    band, facts = decision.band, decision.trace.facts
    inside = band is None or not facts or not (facts["above_band"] or facts["under_band"])
    if inside and abs(off_kg) < AS_EXPECTED_KG:
        return tr("The weight is as forecast")
    if inside:
        return (
            tr("The weight is {size} over the forecast, inside the expected range", size=size)
            if off_kg > 0
            else tr("The weight is {size} under the forecast, inside the expected range", size=size)
        )
    return (
        tr("The weight is {size} over the forecast, outside the expected range", size=size)
        if off_kg > 0
        else tr("The weight is {size} under the forecast, outside the expected range", size=size)
    )


def only_shows(decision: Decision) -> bool:
    """Whether the forecast was asked and nothing of it used."""
    return decision.trace.would_g is not None


def _rule_and_forecast(trace: Trace, planned_g: float | None) -> str:
    """What each of the two would have done, and which was followed; "" without a forecast."""
    rule_g, forecast_g = trace.rule_g, trace.forecast_g
    if forecast_g is None or rule_g is None:
        return ""
    would_g = trace.would_g
    if would_g is not None and planned_g is not None:
        return tr(
            "The rule says {rule}. With the forecast I would have proposed {forecast}; it only "
            "shows, so nothing of it is used",
            rule=change_in_words(rule_g), forecast=change_in_words(would_g - planned_g),
        )  # fmt: skip
    said = {"rule": change_in_words(rule_g), "forecast": change_in_words(forecast_g)}
    if trace.disagree:
        return tr(
            "The rule alone says {rule}, the forecast {forecast}. They disagree, so I change "
            "nothing",
            **said,
        )
    if rule_g == forecast_g:
        return tr("The rule and the forecast agree: {rule}", **said)
    if trace.asked_g == rule_g:
        return tr("The rule says {rule}, the forecast {forecast}. Here the rule decides", **said)
    return tr("The rule alone says {rule}. The forecast sets the size: {forecast}", **said)


def odds_lines(view: Foresight) -> list[str]:
    """The chances of the day with the plan's figure, the proposed and the best of those allowed."""
    planned, best = view.planned, view.best
    if planned is None or best is None:
        return []
    said = [
        tr(
            "Chances on event day with {figure}, as planned: {chances}",
            figure=figures.grams(planned.carb_g), chances=all_three(planned),
        )
    ]  # fmt: skip
    if (proposed := view.proposed) is not None:
        said.append(
            tr(
                "With {figure}, as proposed: {chances}",
                figure=figures.grams(proposed.carb_g), chances=all_three(proposed),
            )
        )  # fmt: skip
    if best.carb_g == planned.carb_g:
        return [*said, tr("No other allowed amount looks better")]
    if in_ten(best) == in_ten(planned):
        return [
            *said,
            tr(
                "{figure}, the best allowed amount, is only slightly better",
                figure=figures.grams(best.carb_g),
            ),
        ]
    return [
        *said,
        tr(
            "With {figure}, the best allowed amount: {chances}",
            figure=figures.grams(best.carb_g), chances=all_three(best),
        ),
    ]  # fmt: skip


def foreseen(decision: Decision) -> str:
    """The chances for a coach who is to sign a change; "" where the forecast has nothing to say."""
    view = decision.foresight
    if view is None or not view.trusted:
        return ""
    return "\n".join(f"{line}." for line in odds_lines(view))


#: What a coach taps.
CHOICES = {
    ForecastUse.PROPOSES: mark("Forecast proposes"),
    ForecastUse.SHOWS: mark("Show me, change nothing"),
    ForecastUse.RULES_ONLY: mark("Rules only"),
}
#: What each means, to the coach of an athlete and to somebody on their own.
MEANS = {
    ForecastUse.PROPOSES: mark(
        "The forecast proposes, you decide: in the load a larger change waits for your approval, "
        "with its chances beside the plan's. A small change goes out by itself, and so does the "
        "small part of one that you did not answer."
    ),
    ForecastUse.SHOWS: mark(
        "The forecast only shows: the rules decide alone. With each decision I keep what it would "
        "have proposed; you read it under Why, and at the debrief."
    ),
    ForecastUse.RULES_ONLY: mark("Rules only: the forecast is not asked."),
}

button = Sentence("Forecast")
#: Where a proposal's size comes from, and where to say otherwise.
under_a_proposal = Sentence(
    "The size comes from the forecast. The card's Forecast button turns that off."
)
choice = SentenceBy(CHOICES)


def rests_on(weeks: int, athletes: int) -> str:
    """What the forecast of an athlete begins from, before that athlete's own mornings."""
    if not weeks:
        return tr("It begins from published figures; none of your finished weeks is in it yet.")
    return tr(
        "It begins from {weeks} and published figures. What your athletes teach stays with you.",
        weeks=trn(
            "{number} finished week of your other athletes",
            "{number} finished weeks of your other athletes",
            weeks,
        )
        if athletes != 1
        else trn(
            "{number} finished week of another athlete of yours",
            "{number} finished weeks of another athlete of yours",
            weeks,
        ),
    )


not_used = SentenceCounted(
    "It begins from published figures. {number} finished week of your athletes is summed up and "
    "not used: on virtual athletes that made the chances better and the corrections smaller.",
    "It begins from published figures. {number} finished weeks of your athletes are summed up and "
    "not used: on virtual athletes that made the chances better and the corrections smaller.",
)


def view(name: str, use: ForecastUse, *, self_coached: bool, rests: str = "") -> str:
    head = tr("Your forecast.") if self_coached else tr("{name}'s forecast.", name=capital(name))
    untested = tr(
        "It has been tried on virtual athletes only, never tested on real peak weeks. It never goes "
        "past your limits."
    )
    return "\n\n".join(part for part in (head, tr(MEANS[use]), rests, untested) if part)


def chosen(use: ForecastUse) -> str:
    return "\n\n".join((noted(), tr(MEANS[use])))
