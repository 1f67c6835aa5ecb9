"""How people tell a complaint in English in short or in passing, as in `daily`."""

# ruff: noqa: E501 - a pattern stays on one line
from __future__ import annotations

from engine.symptoms.names import Symptom
from engine.symptoms.patterns import Phrase, table

_PILLS = (
    r"(?:(?:sleeping|pain|water|heart|diet|blood pressure) ?)?(?:pills|tablets|painkillers|meds)"
)

COLLOQUIAL_PHRASES: tuple[Phrase, ...] = (
    *table(
        Symptom.PALPITATIONS,
        "heart hr pulse bpm",
        sure=r"""
        (?:heart ?rate|heart rate|hr|pulse|rhr|bpm|heart)<4>(?:1[3-9]\d|2[0-2]\d)<3>(?:lying|laying|in bed|at rest|resting|sitting|on the (?:couch|sofa)|doing nothing|in my sleep)
        (?:lying|laying|in bed|at rest|resting|sitting)<4>(?:heart ?rate|heart rate|hr|pulse)<3>(?:1[3-9]\d|2[0-2]\d)
        """,
    ),
    *table(
        Symptom.SELF_HARM,
        "pills tablets painkiller meds will googled",
        sure=rf"""
        (?:whole|entire|full|all) (?:of )?(?:the |my |a )?(?:packet|pack|box|bottle|strip) (?:of )?(?:the |my )?{_PILLS}<3>(?:swallowed|taken|down|gone)?|(?:took|swallowed|taken|downed)<3>(?:whole|entire|all|full)<3>(?:packet|pack|box|bottle|strip|{_PILLS})(?! (?:of (?:water|rice|cookies|biscuits|oats|sweets|cakes)))
        (?:googled|searched|looked up)<5>how many<4>{_PILLS}
        """,
    ),
    *table(
        Symptom.HEAVY_BLEEDING,
        "blood red",
        sure=r"""
        (?:puk\w*|vomit\w*|threw up|throwing up|being sick)<5>(?:something red|red stuff|blood\w*)
        """,
    ),
    *table(
        Symptom.DIARRHOEA,
        "loo toilet bathroom times",
        sure=r"""
        (?:four|five|six|seven|eight|nine|ten|[4-9]|1\d|2\d) ?(?:times|x)<2>(?:on|to) (?:the )?(?:loo|toilet|bathroom|bog|can)<3>(?:today|this morning|since|already|so far)
        """,
    ),
)
