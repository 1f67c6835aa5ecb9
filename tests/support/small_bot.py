"""The real app around a domain of three sentences, to be killed at will: python -m ...small_bot

Every text is counted in the transaction that answers it, so that one handled twice shows.
"""

from __future__ import annotations

import asyncio
import os
import signal
import sys
from datetime import timedelta

from sqlmodel import Session
from telegram.error import InvalidToken

from bot.app import serve
from bot.core.chat import outbox
from bot.core.logs import set_up_logs
from bot.core.timing import agenda
from bot.core.turn import ChatTurn, Kind, Turn
from bot.core.use_cases import UseCases
from bot.settings import SettingsError, load_settings
from bot.store.db import make_engine
from bot.store.migrate import upgrade_to_head
from bot.store.tables import setting
from bot.store.tables.traffic import AgendaRow, OutboxRow

COACH = 99


def _count(session: Session, name: str) -> None:
    setting.keep(session, name, str(int(setting.kept(session, name) or 0) + 1))


def incoming(turn: ChatTurn) -> None:
    now, chat = turn.now, turn.incoming.chat_id
    _count(turn.session, f"handled:{turn.incoming.update_id}")
    if turn.incoming.kind is Kind.TAP:
        assert turn.incoming.tap_id is not None
        outbox.answer_tap(turn, chat_id=chat, tap_id=turn.incoming.tap_id)
        outbox.edit(turn, outbox.Shown(chat, message_id=turn.incoming.message_id), text="changed")
        return
    if turn.incoming.text == "remind me":
        agenda.put(
            turn.session,
            agenda.Named(f"chat:{chat}", now.date(), "reminder"),
            due_at=now + timedelta(seconds=0.3),
        )
    if turn.incoming.kind in (Kind.TEXT, Kind.EDITED):
        outbox.say(turn, chat_id=chat, text=f"{turn.incoming.kind} {turn.incoming.text}")
    else:
        outbox.say(turn, chat_id=COACH, text=f"{chat} {turn.incoming.kind}")
    if turn.incoming.text == "deadly":
        os.kill(os.getpid(), signal.SIGKILL)  # as the kernel does where memory runs out
    if turn.incoming.text == "bad":
        raise ZeroDivisionError("what she weighs: 61.2")


def due(turn: Turn, row: AgendaRow) -> None:
    _count(turn.session, f"due:{row.subject}")
    chat = int(row.subject.removeprefix("chat:"))
    outbox.say(turn, chat_id=chat, text="the reminder")


def undeliverable(turn: Turn, row: OutboxRow) -> None:
    outbox.say(turn, chat_id=COACH, text=f"{row.chat_id} is out of reach")


def moved(turn: Turn, old: int, new: int) -> None:
    outbox.say(turn, chat_id=COACH, text=f"{old} is now {new}")


def poisoned(turn: Turn, chat_id: int, _urgent: str) -> None:
    outbox.say(turn, chat_id=chat_id, text="sorry, say it another way")


def main() -> int:
    settings = load_settings()
    set_up_logs(settings.log_level, settings.log_format)
    engine = make_engine(settings.database_url)
    upgrade_to_head(engine)
    engine.dispose()
    use_cases = UseCases(incoming, due, undeliverable, moved, poisoned)
    try:
        asyncio.run(serve(settings, use_cases))
    except (InvalidToken, SettingsError) as error:
        said = error if isinstance(error, SettingsError) else type(error).__name__
        sys.stderr.write(f"{said}\n")
        return 2
    return 0


if __name__ == "__main__":
    sys.exit(main())
