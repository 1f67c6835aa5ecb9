"""How people say what else the body does: falls, bleeding, eyes that see double, drying out."""

# ruff: noqa: E501 - a pattern stays on one line
from __future__ import annotations

from .names import Symptom
from .patterns import Phrase, table

BODY_PHRASES: tuple[Phrase, ...] = (
    *table(
        Symptom.STROKE_SIGNS,
        "face stroke side mouth speech",
        sure=r"""
        (?:face|mouth)<3>(?:droop\w*|hanging|lopsided)|stroke
        (?:one|left|right) side<4>(?:numb|dead|droop\w*|paralys\w*)
        speech<2>(?:gone|slurred)
        """,
    ),
    *table(
        Symptom.HEAVY_BLEEDING,
        "blood bleed",
        sure=r"""
        <vomit><2>blood|blood<3><vomit>|cough\w*<2>blood
        blood(?:y)?<3>(?:stools?|poo|poop|diarrhoea|toilet)|bloody (?:stools?|poo|poop|diarrhoea)
        bleed\w*<2>(?:won't|doesn't|not) stop\w*|bleeding heavily
        """,
    ),
    *table(
        Symptom.DOUBLE_VISION,
        "double vision two twice",
        sure=r"""
        (?:see|seeing|saw)<1>double|(?:see|seeing|saw) double|double vision|vision<2>(?:double|doubled)
        (?:see|seeing|saw) two of (?:everything|you|it)
        """,
    ),
    *table(
        Symptom.MUSCLE_BREAKDOWN,
        "urine pee rhabdo",
        sure=r"""
        rhabdo\w*
        (?:dark|brown|cola|black)<3><pee>(?: ,)?<6>(?:muscles?|legs?|arms?|thighs?|quads?)
        <pee><3>(?:dark|brown|cola|black)(?: ,)?<6>(?:muscles?|legs?|arms?|thighs?|quads?)
        (?:muscles?|legs?|arms?|thighs?)(?: [\w',]+){0,8} (?:(?:dark|brown|cola|black)<3><pee>|<pee><3>(?:dark|brown|cola|black))
        """,
    ),
    *table(
        Symptom.FALL,
        "fell fall legs floor",
        sure=r"""
        (?:i|just|and) fell(?! asleep| in love| off plan| behind| short)
        legs went<2>under
        """,
    ),
    *table(
        Symptom.FAST_HEART,
        "heart pulse bpm hr",
        sure=r"""
        (?:heart rate|hr|pulse|bpm)<3>(?:1[1-9]\d|2\d\d)<3>(?:lying|sitting|rest\w*|bed|couch|sofa)
        """,
    ),
    *table(
        Symptom.BLEEDING,
        "bleed blood",
        sure=r"""
        bleeding|nose ?bleeds?|bled
        """,
    ),
    *table(
        Symptom.DRYING_OUT,
        "sauna spit drink dry water bath sweat",
        sure=r"""
        spitting (?:in|into)|sweat suit|hot bath<4>(?:weight|water)
        (?:sauna)<4>(?:weight|water|dry)
        (?:not|stopped|haven't|no) (?:drinking|drunk)(?: anything)?(?! (?:alcohol|coffee))
        """,
    ),
    *table(
        Symptom.UNWELL,
        "feel unwell",
        sure=r"""
        (?:feel|feeling|felt)<1>(?:like (?:crap|shit|death|hell)|awful|terrible|unwell|ill|rough|rubbish)|unwell
        """,
    ),
)
