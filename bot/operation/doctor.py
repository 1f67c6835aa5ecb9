"""`brimline check` and `brimline doctor`: what works, what does not, and what to do where not."""

from __future__ import annotations

import os
import shutil
import sqlite3
from collections.abc import AsyncIterator, Iterator
from dataclasses import dataclass
from datetime import UTC, datetime, timedelta
from email.utils import parsedate_to_datetime
from pathlib import Path
from typing import TYPE_CHECKING, Any

from bot.operation.installation import EARLIER, NEWER, is_sound, shown, unusable
from bot.settings import PREFIX, TELEGRAM, Settings

if TYPE_CHECKING:
    from sqlalchemy import Engine

NO_TOKEN = f"{PREFIX}BOT_TOKEN: is missing; @BotFather in Telegram gives you one"
TOKEN_REFUSED = f"{PREFIX}BOT_TOKEN: is refused by the Bot API server; ask @BotFather for a new one"
LEAST_FREE_BYTES = 200_000_000
ANSWER_S = 10.0
CLOCK_MAY_BE_OFF = timedelta(minutes=1)


@dataclass(frozen=True, slots=True)
class Finding:
    """One thing looked at: how it is, and what to do where it is not well."""

    ok: bool
    text: str

    def line(self) -> str:
        return f"{'ok      ' if self.ok else 'failed  '}{self.text}"


async def check(settings: Settings) -> AsyncIterator[Finding]:
    """Whether the bot could start: settings, database, token."""
    yield Finding(ok=True, text="settings: all known and readable")
    yield _database(settings)
    yield await _token(settings)


async def doctor(settings: Settings) -> AsyncIterator[Finding]:
    """All of `check`, and whether the bot runs well: space, photos, webhook, queues, clock."""
    async for finding in check(settings):
        yield finding
    for finding in _places(settings):
        yield finding
    async for finding in _clock(settings):
        yield finding
    async for finding in _line_to_telegram(settings):
        yield finding
    for finding in _running(settings):
        yield finding


def _database(settings: Settings) -> Finding:
    from sqlalchemy.exc import SQLAlchemyError  # noqa: PLC0415

    from bot.store.db import make_engine  # noqa: PLC0415
    from bot.store.migrate import is_at_head, knows, revision_of  # noqa: PLC0415

    try:
        engine = make_engine(settings.database_url)
        shaped, revision = is_at_head(engine), revision_of(engine)
        known = revision is None or knows(engine, revision)
        sound = is_sound(engine)
        if revision is not None:
            _write_in_vain(engine)
        engine.dispose()
    except (SQLAlchemyError, OSError) as error:
        return Finding(ok=False, text=f"database: {unusable(f'{PREFIX}DATABASE_URL', error)}")
    if not sound:
        text = f"database: {shown(engine)} is damaged; stop the bot and restore the last back-up"
        return Finding(ok=False, text=text)
    if not known:
        return Finding(ok=False, text=f"database: {NEWER}")
    if revision is None:
        text = f"database: {shown(engine)} is empty; run `brimline setup` or `brimline migrate`"
        return Finding(ok=False, text=text)
    if not shaped:
        return Finding(ok=False, text=f"database: {EARLIER}")
    return Finding(ok=True, text=f"database: {shown(engine)}")


def _write_in_vain(engine: Engine) -> None:
    """Fails where it may not be written: SQLite lets a writing transaction begin there all the same."""
    with engine.connect() as connection:
        connection.exec_driver_sql("UPDATE alembic_version SET version_num = version_num")
        connection.rollback()


async def _token(settings: Settings) -> Finding:
    from telegram.error import InvalidToken, TelegramError  # noqa: PLC0415

    if settings.bot_token is None:
        return Finding(ok=False, text=f"token: {NO_TOKEN}")
    try:
        me = await ask_telegram(settings, "getMe")
    except InvalidToken:
        return Finding(ok=False, text=f"token: {TOKEN_REFUSED}")
    except TelegramError:
        return Finding(
            ok=False,
            text=f"token: {settings.api_base_url} cannot be reached; is this machine online, "
            f"and is {PREFIX}API_BASE_URL right?",
        )
    return Finding(ok=True, text=f"token: the bot is @{me.get('username', '')}")


async def ask_telegram(settings: Settings, method: str, **fields: Any) -> Any:
    """One call with the token of these settings. Raises TelegramError."""
    from bot.telegram.transport import TelegramTransport  # noqa: PLC0415

    assert settings.bot_token is not None
    transport = TelegramTransport(settings.bot_token.get_secret_value(), settings.api_base_url)
    try:
        return await transport.call(method, fields)
    finally:
        await transport.close()


def _places(settings: Settings) -> Iterator[Finding]:
    from bot.store.db import database_url  # noqa: PLC0415

    address = database_url(settings.database_url)
    folders: dict[str, Path] = {}
    if address.drivername.startswith("sqlite"):
        folders["database"] = Path(str(address.database)).expanduser().parent
    if settings.photo_dir is not None:
        folders["photos"] = settings.photo_dir.expanduser()
    for name, folder in folders.items():
        there = next((at for at in (folder, *folder.parents) if at.exists()), Path("/"))
        free = shutil.disk_usage(there).free
        text = f"space for {name}: {free / 1e9:.1f} GB free at {there}"
        if free < LEAST_FREE_BYTES:
            yield Finding(ok=False, text=f"{text}; make room, or nothing can be stored soon")
        else:
            yield Finding(ok=True, text=text)
        if name == "photos" and not os.access(there, os.W_OK | os.X_OK):
            text = f"photos: this user may not write in {there}; see {PREFIX}PHOTO_DIR"
            yield Finding(ok=False, text=text)


async def _clock(settings: Settings) -> AsyncIterator[Finding]:
    import httpx  # noqa: PLC0415

    try:
        async with httpx.AsyncClient(timeout=ANSWER_S) as client:
            answer = await client.head(settings.api_base_url)
    except httpx.HTTPError:
        return  # said of the token
    if "Date" in answer.headers:
        yield clock(answer.headers["Date"], datetime.now(UTC))


def clock(server: str, now: datetime) -> Finding:
    """How this machine's clock stands beside a server's, as it dates its answers (RFC 9110, 6.6.1)."""
    from bot.watching.watch import minutes  # noqa: PLC0415

    ahead = now - parsedate_to_datetime(server).astimezone(UTC)
    if abs(ahead) <= CLOCK_MAY_BE_OFF:
        return Finding(ok=True, text="clock: agrees with the Bot API server's")
    way = "ahead of" if ahead > timedelta(0) else "behind"
    text = (
        f"clock: this machine's is {minutes(abs(ahead))} {way} the Bot API server's, and everything "
        "is asked and sent that much off; have it set by the network (timedatectl set-ntp true)"
    )
    return Finding(ok=False, text=text)


async def _line_to_telegram(settings: Settings) -> AsyncIterator[Finding]:
    from telegram.error import TelegramError  # noqa: PLC0415

    if settings.bot_token is None:
        return
    try:
        info = await ask_telegram(settings, "getWebhookInfo")
    except TelegramError:
        return  # said of the token
    url = str(info.get("url", ""))
    if settings.webhook_url is None:
        if url:
            text = (
                "updates: are fetched here, but a webhook is set at Telegram, so another program "
                "may take them; `brimline run` takes it away at its start"
            )
            yield Finding(ok=False, text=text)
        else:
            yield Finding(ok=True, text="updates: are fetched by long polling")
        return
    problem = str(info.get("last_error_message", ""))
    if url != settings.webhook_url:
        text = f"updates: Telegram does not call {PREFIX}WEBHOOK_URL; start `brimline run`"
        yield Finding(ok=False, text=text)
    elif problem and info.get("pending_update_count"):
        text = f"updates: Telegram's last call failed ({problem}); does the proxy hand https on?"
        yield Finding(ok=False, text=text)
    else:
        yield Finding(ok=True, text="updates: Telegram calls the webhook")


def _running(settings: Settings) -> Iterator[Finding]:
    from sqlalchemy.exc import SQLAlchemyError  # noqa: PLC0415
    from sqlmodel import Session  # noqa: PLC0415

    from bot.store.db import make_engine  # noqa: PLC0415
    from bot.store.shares import shares_of  # noqa: PLC0415
    from bot.watching.watch import backlog, troubles  # noqa: PLC0415

    try:
        engine = make_engine(settings.database_url)
        sending = shares_of(engine)
        free = sending.hold_alone()
        sending.release()
        with Session(engine) as session:
            wrong = troubles(backlog(session, datetime.now(UTC)))
    except (SQLAlchemyError, OSError, sqlite3.Error):
        return  # said of the database
    if free:
        yield Finding(ok=False, text="bot: does not run on this database; start `brimline run`")
    else:
        yield Finding(ok=True, text="bot: runs")
    for line in wrong:
        yield Finding(ok=False, text=f"queues: {line}; `brimline status` shows more")
    if not wrong:
        yield Finding(ok=True, text="queues: nothing is overdue")
    if settings.api_base_url != TELEGRAM:
        yield Finding(ok=True, text=f"server: {settings.api_base_url}, one of your own")
    if settings.operator_chat is None:
        text = f"watch: nobody is told when the bot falls behind; set {PREFIX}OPERATOR_CHAT"
        yield Finding(ok=True, text=text)
