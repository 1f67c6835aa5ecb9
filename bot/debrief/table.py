"""Debrief: its commands, buttons, flows and timed duties."""

from __future__ import annotations

from bot.core.routes import Duty
from bot.debrief import after_show, debrief, deeper
from bot.debrief.flow import COACH_NOTE, OWN_WORD, PLACING
from bot.debrief.flow_after_show import AFTER_SHOW
from bot.dialogue.asking import Registered
from bot.dialogue.feature import Feature

FEATURE = Feature(
    id="debrief",
    on_card={
        "debrief": debrief.show,
        "debrief-note": debrief.ask_note,
        "closer": deeper.show,
        "placing": deeper.ask_placing,
    },
    flows=(
        Registered(AFTER_SHOW, after_show.answered),
        Registered(OWN_WORD, debrief.word_given),
        Registered(COACH_NOTE, debrief.note_given),
        Registered(PLACING, deeper.placing_given),
    ),
    duties=(
        Duty(after_show.ASK, after_show.due),
        Duty(debrief.LOOK_BACK, debrief.due),
    ),
)
