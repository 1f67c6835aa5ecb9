"""How people say in German what else the body does: falls, bleeding, double vision, drying out."""

# ruff: noqa: E501 - a pattern stays on one line
from __future__ import annotations

from functools import partial

from .german_spelling import folded
from .german_warnings import GROUPS
from .names import Symptom
from .patterns import Phrase, table

_table = partial(table, groups=GROUPS, fold=folded)

GERMAN_BODY: tuple[Phrase, ...] = (
    *_table(
        Symptom.STROKE_SIGNS,
        "mundwinkel gesicht schlaganfall halbseitig seite sprache",
        sure=r"""
        (?:mundwinkel|gesicht|gesichtshälfte)<2>(?:häng\w*|schief)|hängt<2>mundwinkel|schlaganfall|halbseitig\w*
        (?:eine|linke|rechte)<1>seite<3>(?:taub|gelähmt)|sprache<2>weg
        """,
    ),
    *_table(
        Symptom.HEAVY_BLEEDING,
        "blut",
        sure=r"""
        blut<3><kotz>|<kotz><3>blut|blut (?:gespuckt|gekotzt)|bluterbrechen|blut<1>(?:husten|gehustet|huste)|huste\w*<2>blut
        blut<3>(?:stuhl|durchfall|kot|klo)|blutige?[rn]? (?:stuhl|durchfall)
        blut\w*<3>hört<2>nicht<1>auf|blute<1>stark
        """,
    ),
    *_table(
        Symptom.DOUBLE_VISION,
        "doppel",
        sure=r"""
        (?:sehe|sah|sehen|seh)<3>doppelt?(?! so)|doppelbilder|doppeltsehen
        """,
    ),
    *_table(
        Symptom.MUSCLE_BREAKDOWN,
        "urin pipi pisse rhabdo",
        sure=r"""
        rhabdo\w*
        (?:dunkl?\w*|braun\w*|cola\w*|schwarz\w*)<2><pipi>(?: ,)?<5>(?:muskel\w*|beine?|oberschenkel)
        <pipi><3>(?:dunkel|braun|schwarz|cola\w*)(?: ,)?<5>(?:muskel\w*|beine?|oberschenkel)
        (?:muskel\w*|beine?|oberschenkel)(?: [\w',]+){0,8} <pipi><3>(?:dunkel|braun|schwarz|cola\w*)
        """,
    ),
    *_table(
        Symptom.FALL,
        "gesturzt hingefallen gefallen sturz",
        sure=r"""
        gestürzt|hingefallen|hingeflogen|(?:treppe|bett|stuhl)<2>(?:runter|herunter)?gefallen
        """,
    ),
    *_table(
        Symptom.FAST_HEART,
        "puls herzfrequenz bpm",
        sure=r"""
        (?:puls|herzfrequenz|bpm)<3>(?:1[1-9]\d|2\d\d)<3>(?:liegen|sitzen|ruhe|bett|sofa)
        """,
    ),
    *_table(
        Symptom.BLEEDING,
        "blut",
        sure=r"""
        blute|blutet|geblutet|blutung\w*|nasenbluten
        """,
    ),
    *_table(
        Symptom.DRYING_OUT,
        "sauna spuck trink schwitz bad getrunken",
        sure=r"""
        (?:nichts|nicht) mehr (?:trinken|getrunken)|schwitzanzug|spucke<3>(?:becher|flasche)
        sauna<4>(?:gewicht|wasser)
        """,
    ),
    *_table(
        Symptom.UNWELL,
        "fuhl unwohl beschissen elend",
        sure=r"""
        (?:fühle? mich|fühl|geht(?:'s| es)? mir|mir geht(?:'s| es)?)<2>(?:beschissen|elend|mies|scheisse|dreckig|hundeelend|nicht gut|schlecht|unwohl)|unwohl|hundeelend
        """,
    ),
)
