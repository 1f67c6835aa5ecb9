"""What a coach reads where plan and limits don't fit together: what could give way, by name."""

from __future__ import annotations

from collections.abc import Sequence

from bot.words import figures
from bot.words.languages import Sentence, SentenceOn, tr
from bot.words.names import LIMIT_WORDS, cited


def limit_moves(moves: Sequence[tuple[str, float, float]], volume_unit: str) -> str:
    """ "carb ceiling 420 → 450 g": each as key, value now and value then."""
    return figures.all_of(
        [
            tr(
                "{limit} {was} → {becomes}",
                limit=tr(LIMIT_WORDS[key]),
                was=figures.limit(key, was, volume_unit),
                becomes=figures.limit(key, becomes, volume_unit),
            )
            for key, was, becomes in moves
        ]
    )


def draft_kept(problems: str, raises: str, past: str) -> str:
    """`raises`: what would move ("" where nothing may); `past`: what stands in the way of that."""
    parts = [
        tr("I changed nothing yet: plan and limits don't fit together:\n{lines}", lines=problems)
    ]
    if raises:
        parts.append(tr("With this change they would fit: {moves}.", moves=raises))
    if past:
        parts.append(past)
    parts.append(edit_hint())
    return "\n\n".join(parts)


def past_bound(limit: str, bound: str, citation: str) -> str:
    return tr(
        "No limit can allow it: the safety bound for the {limit} is {bound}. Source: {citation}.",
        limit=tr(LIMIT_WORDS[limit]),
        bound=bound,
        citation=cited(citation),
    )


edit_hint = Sentence(
    "Your draft is kept. To change a number in it, send for example: 2 days out carbs 380."
)
cut_button = Sentence("Cut the draft to fit")
how_to_edit = Sentence(
    "Tap a button, or send one number of the draft to change, for example: 2 days out carbs 380."
)
moved_on = Sentence(
    "Plan, limits or event have changed since I asked, so I changed nothing. Please look again."
)


fits_now = SentenceOn("It fits now:\n\n{table}\n\nUse this plan?")


def raise_button(raises: str) -> str:
    return tr("Change the limit: {moves}", moves=raises)


no_such_day = SentenceOn("The draft has no {when}.", figures.days_out)
