"""How people say in German what concerns eating, the body as they see it, and the mood."""

# ruff: noqa: E501 - a pattern stays on one line
from __future__ import annotations

from functools import partial

from .german_spelling import folded
from .german_warnings import GROUPS
from .names import Symptom
from .patterns import Phrase, table

_table = partial(table, groups=GROUPS, fold=folded)

GERMAN_MOOD: tuple[Phrase, ...] = (
    *_table(
        Symptom.PURGING,
        "finger absichtlich erbrechen gebracht hals",
        sure=r"""
        finger<3>(?:in den|im) hals
        (?:absichtlich|selbst|extra)<3><kotz>
        zum (?:erbrechen|kotzen|übergeben) gebracht
        """,
    ),
    *_table(
        Symptom.BINGEING,
        "fress essanfall gefressen",
        sure=r"""
        fressanfall|fressanfälle|essanfall|essanfälle|fressattacke\w*|heisshungerattacke\w*
        """,
    ),
    *_table(
        Symptom.STARVING,
        "ess hunger gegessen",
        sure=r"""
        (?:heute|gar) nichts (?:mehr )?(?:essen|gegessen)|nichts mehr essen|hungere mich
        """,
    ),
    *_table(
        Symptom.BODY_HATE,
        "hass ekel ekle korper",
        sure=r"""
        hasse? (?:meinen körper|mich|mein spiegelbild|wie ich aussehe)|ekle mich vor (?:mir|meinem körper)
        """,
    ),
    *_table(
        Symptom.LOW_MOOD,
        "sinn hoffnungslos wertlos depress",
        sure=r"""
        alles keinen sinn|hoffnungslos|wertlos|depressiv
        """,
    ),
)
