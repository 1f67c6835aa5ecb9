"""Every feature, once: what is not listed here does not exist.

A command, a button, a flow or a duty that two features claim stops the start.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping
from typing import TypeVar

from bot.alerts.table import FEATURE as ALERTS
from bot.athlete.table import FEATURE as ATHLETE
from bot.calendar.table import FEATURE as CALENDAR
from bot.checkin.table import FEATURE as CHECKIN
from bot.coach.table import FEATURE as COACH
from bot.debrief.table import FEATURE as DEBRIEF
from bot.decision.table import FEATURE as DECISION
from bot.dialogue.feature import Feature
from bot.direct.table import FEATURE as DIRECT
from bot.event.table import FEATURE as EVENT
from bot.food.table import FEATURE as FOOD
from bot.membership.table import FEATURE as MEMBERSHIP
from bot.pictures.table import FEATURE as PICTURES
from bot.plan.table import FEATURE as PLAN
from bot.readiness.table import FEATURE as READINESS
from bot.safety.table import FEATURE as SAFETY
from bot.setup.table import FEATURE as SETUP
from bot.sheets.table import FEATURE as SHEETS
from bot.undo.table import FEATURE as UNDO

_Entry = TypeVar("_Entry")

FEATURES: tuple[Feature, ...] = (
    ALERTS,
    ATHLETE,
    CALENDAR,
    CHECKIN,
    COACH,
    DEBRIEF,
    DECISION,
    DIRECT,
    EVENT,
    FOOD,
    MEMBERSHIP,
    PICTURES,
    PLAN,
    READINESS,
    SAFETY,
    SETUP,
    SHEETS,
    UNDO,
)


def once(entries: Iterable[_Entry], key: Callable[[_Entry], str]) -> Mapping[str, _Entry]:
    """The entries by their key. Raises ValueError where two have the same."""
    found: dict[str, _Entry] = {}
    for entry in entries:
        if key(entry) in found:
            raise ValueError(f"two features claim {key(entry)!r}")
        found[key(entry)] = entry
    return found


#: The views of a card: buttons "c:VIEW:ATHLETE:..." (`bot.core.chat.buttons.CardRoute`).
ON_CARD = once((one for feature in FEATURES for one in feature.on_card), lambda one: one.name)


COMMANDS = once(
    sorted(
        (command for feature in FEATURES for command in feature.commands),
        key=lambda command: command.rank,
    ),
    lambda command: command.name,
)
TAPS = once((tap for feature in FEATURES for tap in feature.taps), lambda tap: tap.prefix)
FLOWS = once((flow for feature in FEATURES for flow in feature.flows), lambda one: one.flow.id)
DUTIES = once((duty for feature in FEATURES for duty in feature.duties), lambda duty: duty.kind)
AFTER = tuple(after for feature in FEATURES for after in feature.after)
