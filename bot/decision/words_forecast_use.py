"""What a coach reads while saying what the forecast may do for an athlete."""

from __future__ import annotations

from bot.words.common import noted
from bot.words.figures import capital
from bot.words.languages import Sentence, mark, tr, trn
from engine.values.case import ForecastUse

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


def choice(use: ForecastUse) -> str:
    return tr(CHOICES[use])


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


def not_used(weeks: int) -> str:
    return trn(
        "It begins from published figures. {number} finished week of your athletes is summed up and "
        "not used: on virtual athletes that made the chances better and the corrections smaller.",
        "It begins from published figures. {number} finished weeks of your athletes are summed up and "
        "not used: on virtual athletes that made the chances better and the corrections smaller.",
        weeks,
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
