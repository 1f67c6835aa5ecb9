"""What a feature is: one table of everything by which it is reached."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

from bot.core.chat.routes import CallbackRoute, Command, Duty, View
from bot.core.turn import Turn
from bot.dialogue.asking import FlowBinding


@dataclass(frozen=True, slots=True, kw_only=True)
class Feature:
    """`on_card` are the views of an athlete's card; a name that two features use is refused."""

    id: str
    commands: tuple[Command, ...] = ()
    taps: tuple[CallbackRoute, ...] = ()
    on_card: tuple[View, ...] = ()
    flows: tuple[FlowBinding, ...] = ()
    duties: tuple[Duty, ...] = ()
    after: tuple[Callable[[Turn], None], ...] = ()  # run at the end of every use case
