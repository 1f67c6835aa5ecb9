"""How people say what concerns eating, the body as they see it, and the mood."""

# ruff: noqa: E501 - a pattern stays on one line
from __future__ import annotations

from .names import Symptom
from .patterns import Phrase, table

MOOD_PHRASES: tuple[Phrase, ...] = (
    *table(
        Symptom.PURGING,
        "myself finger purg laxativ",
        sure=r"""
        (?:made|make|making) myself (?:sick|vomit|throw up|puke)
        fingers?<2>(?:down|in)<1>throat
        purg(?:ed|ing|e)
        """,
    ),
    *table(
        Symptom.BINGEING,
        "bing",
        sure=r"""
        bing(?:ed?|ing|eing)(?! (?:watch\w*|on (?:netflix|series)))|binge ?eat\w*|binge ?ate
        """,
    ),
    *table(
        Symptom.STARVING,
        "eat food starv meal",
        sure=r"""
        starv(?:e|ing) myself
        (?:not|stopped|won't be|refus\w+ to) eat(?:ing)? (?:today|at all|anything|anymore)
        """,
        doubtful=r"""
        (?:should|going to|gonna|want to) (?:just )?(?:stop|quit) eating
        """,
    ),
    *table(
        Symptom.BODY_HATE,
        "hate disgust body mirror",
        sure=r"""
        hate (?:my body|how i look|what i see|myself)|disgusted by (?:my body|myself)|i(?:'m| am) disgusting
        """,
    ),
    *table(
        Symptom.LOW_MOOD,
        "hopeless worthless depress point crying",
        sure=r"""
        hopeless|worthless|depressed|no point in anything|can't stop crying
        """,
    ),
)
