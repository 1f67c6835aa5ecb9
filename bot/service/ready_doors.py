"""Readiness: its command, buttons, flows and timed duty, for the list in `doors`."""

from __future__ import annotations

from bot.flows.ready import READY, READY_ANYWAY
from bot.messages import ready as words
from bot.service import ready
from bot.service.asking import Registered
from bot.service.handles import COACH, Command, Duty, Tap

COMMANDS = (Command("ready", COACH, ready.command, words.menu),)
TAPS = (Tap("rd", COACH, ready.tapped),)
FLOWS = (Registered(READY, ready.answered), Registered(READY_ANYWAY, ready.went_on))
DUTIES = (Duty(ready.ASK, ready.due),)
