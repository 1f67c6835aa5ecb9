"""The real app around a domain of three sentences, to be killed at will: python -m ...small_bot

Every text is counted in the transaction that answers it, so that one handled twice shows.
"""

from __future__ import annotations

import asyncio
import sys
from datetime import timedelta

from sqlmodel import Session
from telegram.error import InvalidToken

from bot import agenda, outbox
from bot.app import serve
from bot.context import Context, UseCases
from bot.incoming import Incoming, Kind
from bot.logs import set_up_logs
from bot.settings import SettingsError, load_settings
from bot.store import setting
from bot.store.db import make_engine
from bot.store.migrate import upgrade_to_head
from bot.store.traffic import AgendaRow, OutboxRow

COACH = 99


def _count(session: Session, name: str) -> None:
    setting.keep(session, name, str(int(setting.kept(session, name) or 0) + 1))


def incoming(session: Session, incoming: Incoming, context: Context) -> None:
    now, chat = context.now, incoming.chat_id
    _count(session, f"handled:{incoming.update_id}")
    if incoming.kind is Kind.TAP:
        assert incoming.tap_id is not None
        outbox.answer_tap(session, chat_id=chat, tap_id=incoming.tap_id, now=now)
        outbox.edit(session, chat_id=chat, text="changed", message_id=incoming.message_id, now=now)
        return
    if incoming.text == "remind me":
        agenda.put(
            session,
            subject=f"chat:{chat}",
            local_date=now.date(),
            kind="reminder",
            due_at=now + timedelta(seconds=0.3),
        )
    if incoming.kind in (Kind.TEXT, Kind.EDITED):
        outbox.say(session, chat_id=chat, text=f"{incoming.kind} {incoming.text}", now=now)
    else:
        outbox.say(session, chat_id=COACH, text=f"{chat} {incoming.kind}", now=now)
    if incoming.text == "bad":
        raise ZeroDivisionError("what she weighs: 61.2")


def due(session: Session, row: AgendaRow, context: Context) -> None:
    _count(session, f"due:{row.subject}")
    chat = int(row.subject.removeprefix("chat:"))
    outbox.say(session, chat_id=chat, text="the reminder", now=context.now)


def undeliverable(session: Session, row: OutboxRow, context: Context) -> None:
    outbox.say(session, chat_id=COACH, text=f"{row.chat_id} is out of reach", now=context.now)


def moved(session: Session, old: int, new: int, context: Context) -> None:
    outbox.say(session, chat_id=COACH, text=f"{old} is now {new}", now=context.now)


def poisoned(session: Session, chat_id: int, context: Context) -> None:
    outbox.say(session, chat_id=chat_id, text="sorry, say it another way", now=context.now)


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
        sys.stderr.write(f"{type(error).__name__}\n")
        return 2
    return 0


if __name__ == "__main__":
    sys.exit(main())
