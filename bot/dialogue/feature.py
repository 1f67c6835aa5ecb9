"""What a feature is: one table of everything by which it is reached."""

from __future__ import annotations

from collections.abc import Callable, Collection
from dataclasses import dataclass
from typing import NamedTuple

from bot.core.chat.routes import CallbackRoute, Command, Duty, View
from bot.core.turn import Turn
from bot.dialogue.asking import FlowBinding
from bot.people.changes import AnyKind
from bot.store.tables.people import HistoryRow


class After(NamedTuple):
    """What is looked at, at the end of a use case, where something of these kinds was kept in it."""

    kinds: Collection[AnyKind]
    run: Callable[[Turn, list[HistoryRow]], None]


@dataclass(frozen=True, slots=True, kw_only=True)
class Feature:
    """`on_card` are the views of an athlete's card; a name that two features use is refused."""

    commands: tuple[Command, ...] = ()
    taps: tuple[CallbackRoute, ...] = ()
    on_card: tuple[View, ...] = ()
    flows: tuple[FlowBinding, ...] = ()
    duties: tuple[Duty, ...] = ()
    after: tuple[After, ...] = ()
