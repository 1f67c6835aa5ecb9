"""Direct: its commands, buttons, flows and timed duties."""

from __future__ import annotations

from bot.core.chat import cards
from bot.core.chat.routes import ATHLETE, Command, Duty, tap, view
from bot.dialogue.asking import FlowBinding, of_own_athlete
from bot.dialogue.feature import Feature
from bot.direct import messages, passing_on, words
from bot.direct.buttons import REPLY
from bot.direct.flow import PASS_ON, TO_ATHLETE, TO_COACH

FEATURE = Feature(
    commands=(
        Command("write", ATHLETE, messages.write, words.write_menu, takes_words=True, rank=210),
    ),
    taps=(tap(REPLY, ATHLETE, messages.reply_tapped),),
    on_card=(view(cards.MESSAGE, messages.ask_message),),
    flows=(
        FlowBinding(TO_ATHLETE, of_own_athlete(messages.message_given)),
        FlowBinding(TO_COACH, messages.reply_given),
        FlowBinding(PASS_ON, passing_on.answered),
    ),
    duties=(
        Duty(messages.UNSENT, messages.remind_unsent, "a coach's words that were not sent yet"),
    ),
)
