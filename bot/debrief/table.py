"""Debrief: what is reached by command, button, conversation and clock; the handout and pooling too."""

from __future__ import annotations

from functools import partial

from bot.core.chat import cards
from bot.core.chat.routes import Duty, view
from bot.debrief import after_show, buttons, debrief, deeper, pooling
from bot.debrief.flow import COACH_NOTE, OWN_WORD, PLACING
from bot.debrief.flow_after_show import AFTER_SHOW
from bot.debrief.handout import handing_over
from bot.dialogue.asking import FlowBinding, of_own_athlete
from bot.dialogue.feature import After, Feature

FEATURE = Feature(
    on_card=(
        view(buttons.DEBRIEF, debrief.show),
        view(buttons.NOTE, debrief.ask_note),
        view(buttons.CLOSER, deeper.show),
        view(buttons.ASK_PLACING, deeper.ask_placing),
        view(cards.HANDOUT, handing_over.show),
    ),
    flows=(
        FlowBinding(AFTER_SHOW, after_show.answered),
        FlowBinding(OWN_WORD, debrief.word_given),
        FlowBinding(COACH_NOTE, of_own_athlete(partial(debrief.keep, debrief.KEEPS_NOTE))),
        FlowBinding(PLACING, of_own_athlete(partial(debrief.keep, deeper.KEEPS_PLACING))),
    ),
    duties=(
        Duty(after_show.ASK, after_show.due, "one of the lighter mornings after"),
        Duty(debrief.LOOK_BACK, debrief.due, "the look back on the week"),
        Duty(
            pooling.LEARN, pooling.due, "what a finished week teaches about this coach's athletes"
        ),
    ),
    after=(After(pooling.OVER, pooling.look_at_ended),),
)
