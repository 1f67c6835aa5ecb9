"""What leaves a question open, and says nothing more."""

# ruff: noqa: E501 - a pattern stays on one line
from __future__ import annotations

import re

from engine.written.late import Late

#: No letters of it are listened to: by those alone "I don't know" sounds like confusion.
SHRUGS = Late(
    r"(?:(?:i|im|i'm|i am|well|hm+|um+|uh|oh|sorry|honestly|ich|na ja|naja|puh|ah+|äh+m?|ja|ehrlich gesagt) ?,? )*"
    r"(?:(?:really |still )?not (?:so |quite |really |too |that )?sure(?: yet| about (?:that|it))?|"
    r"(?:have |got |absolutely )*no (?:idea|clue)|(?:really |just )?(?:don'?t|do not) (?:really )?know(?: yet| that| it)?|"
    r"dunno|(?:can'?t|cannot|couldn'?t) (?:say|tell)(?: yet)?|hard to (?:say|tell)|who knows|no clue|"
    r"maybe|perhaps|one (?:moment|sec(?:ond)?)|(?:let me|i'll) (?:check|see|think)|"
    r"(?:bin (?:mir )?)?(?:noch |nicht ganz |nicht so |ganz )*nicht (?:ganz |so )?sicher|(?:hab |habe |echt )*kein(?:e|en)? (?:ahnung|plan|schimmer|idee)|"
    r"weiß (?:ich )?(?:ehrlich |grad |gerade |noch |es )*nicht(?: so genau| genau| mehr)?|weiss (?:ich )?nicht|"
    r"(?:ist )?schwer zu sagen|(?:kann|kanns|kann's) (?:ich )?nicht sagen|wer weiß|vielleicht|mal (?:sehen|schauen)|"
    r"ich schau(?:e)? (?:mal )?nach|moment|sekunde)[ .!?…]*",
    re.IGNORECASE,
)
