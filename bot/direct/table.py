"""Direct: its commands, buttons, flows and timed duties."""

from __future__ import annotations

from bot.core.chat import cards
from bot.core.chat.routes import ATHLETE, Command, Duty, tap, view
from bot.dialogue.asking import FlowBinding
from bot.dialogue.feature import Feature
from bot.direct import direct_messages as messages_across
from bot.direct import passing_on, unsent
from bot.direct import words as direct_words
from bot.direct.buttons import REPLY
from bot.direct.flow import TO_ATHLETE, TO_COACH
from bot.direct.flow_passing_on import PASS_ON

FEATURE = Feature(
    commands=(
        Command(
            "write",
            ATHLETE,
            messages_across.write,
            direct_words.write_menu,
            takes_words=True,
            rank=210,
        ),
    ),
    taps=(tap(REPLY, ATHLETE, messages_across.reply_tapped),),
    on_card=(view(cards.MESSAGE, messages_across.ask_message),),
    flows=(
        FlowBinding(TO_ATHLETE, messages_across.message_given),
        FlowBinding(TO_COACH, messages_across.reply_given),
        FlowBinding(PASS_ON, passing_on.answered),
    ),
    duties=(Duty(unsent.UNSENT, unsent.remind, "a coach's words that were not sent yet"),),
)
