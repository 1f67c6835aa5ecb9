"""Everything that is kept of somebody: its command."""

from __future__ import annotations

from bot.core.chat.routes import ANYONE_KNOWN, FORMER, Command
from bot.dialogue.feature import Feature
from bot.membership.my_data import handing_out, words

FEATURE = Feature(
    id="my_data",
    commands=(
        Command(
            "mydata",
            ANYONE_KNOWN | FORMER,
            handing_out.hand_out,
            words.menu,
            rank=115,
            can_wait=True,
        ),
    ),
)
