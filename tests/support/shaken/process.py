"""`brimline run` on a clock that a test sets, with each update and duty counted: python -m ...process

All else is the shipped command: its settings, its start on a database that may be away, its exit codes.
The count is kept in the transaction that answers, so that what was done twice shows.
"""

from __future__ import annotations

import os
import sys
from dataclasses import replace
from datetime import datetime, timedelta, tzinfo
from pathlib import Path
from typing import Any

import apscheduler.executors.base
import apscheduler.schedulers.base

import bot.app
import bot.dispatcher
from bot import cli
from bot.core.turn import ChatTurn, Turn
from bot.core.use_cases import UseCases
from bot.store.tables import setting
from bot.store.tables.traffic import AgendaRow
from bot.telegram import transport
from tests.support.shaken.wall import SPEED, Wall

CLOCK = "SHAKEN_CLOCK"  # names the clock's file; no setting of the bot's
UPDATE, DUTY = "handled:", "due:"


def counted(really: UseCases) -> UseCases:
    """These use cases, with a note of how often each update and duty was done, and when at last."""

    def incoming(turn: ChatTurn) -> None:
        really.incoming(turn)
        _note(turn, f"{UPDATE}{turn.incoming.update_id}")

    def due(turn: Turn, row: AgendaRow) -> None:
        name = f"{DUTY}{row.id}:{row.due_at.isoformat()}"  # done, it may be put again for later
        really.due(turn, row)
        _note(turn, name)

    return replace(really, incoming=incoming, due=due)


def _note(turn: Turn, name: str) -> None:
    before = setting.kept(turn.session, name)
    times = int(before.split()[0]) + 1 if before else 1
    setting.keep(turn.session, name, f"{times} {turn.now.isoformat()}")


def on_clock(wall: Wall) -> None:
    """Have the bot and its scheduler, which reads the machine's clock by itself, go by this one."""

    class Reads(datetime):
        @classmethod
        def now(cls, tz: tzinfo | None = None) -> Any:
            return datetime.now(tz) + timedelta(seconds=wall.was_set_by())

    for module in (bot.app, apscheduler.schedulers.base, apscheduler.executors.base):
        module.datetime = Reads  # type: ignore[attr-defined, misc]
    bot.app.RealClock = lambda: wall  # type: ignore[assignment, misc]
    transport.READ_SECONDS //= SPEED
    transport.POLL_READ_SECONDS //= SPEED


def main() -> int:
    on_clock(Wall(Path(os.environ[CLOCK])))
    bot.dispatcher.USE_CASES = counted(bot.dispatcher.USE_CASES)
    return cli.main(["run"])


if __name__ == "__main__":
    sys.exit(main())
