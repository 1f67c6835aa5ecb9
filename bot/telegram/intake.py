"""Updates into the inbox: each is committed there before Telegram is told that it arrived.

Telegram takes the next getUpdates with a higher offset, or the webhook's 200, for "arrived", and
forgets the update. The library's own updater says so first and keeps updates in memory meanwhile.
"""

from __future__ import annotations

import asyncio
import hmac
import json
from collections.abc import Callable, Sequence
from datetime import datetime
from typing import Any

import structlog
from sqlalchemy import Engine
from sqlalchemy.dialects import postgresql, sqlite
from sqlalchemy.exc import InterfaceError, OperationalError, SQLAlchemyError
from telegram.error import Conflict, RetryAfter, TelegramError
from tornado.web import RequestHandler

from bot.core.logs import error_name
from bot.core.timing.clock import Clock
from bot.core.timing.waiting import growing_pause
from bot.core.use_cases import HowUrgent, all_alike
from bot.core.web import WebServer
from bot.store.db import claiming, looking
from bot.store.sole import LeaderLease
from bot.store.tables.traffic import InboxRow, Urgency
from bot.telegram.reading import ALLOWED_UPDATES, chat_id_of, said_in, update_id_of
from bot.telegram.transport import POLL_SECONDS, Transport, span_of

MOST_AT_ONCE = 100  # getUpdates gives no more in one answer
STANDBY_S = 1.0
LARGEST_BODY_BYTES = 1_000_000
SECRET_HEADER = "X-Telegram-Bot-Api-Secret-Token"

# In place of an update that the database refuses; it reads as no update that Telegram knows.
UNSTORABLE = {"message": "could not be stored"}

# Each is written once, however often it comes. Built once: building costs more than asking.
_INSERTS = {
    "sqlite": sqlite.insert(InboxRow).on_conflict_do_nothing(),
    "postgresql": postgresql.insert(InboxRow).on_conflict_do_nothing(),
}

_log = structlog.get_logger(__name__)


class Intake:
    """Where updates are committed, whichever way they come."""

    def __init__(self, engine: Engine, clock: Clock, how_urgent: HowUrgent = all_alike) -> None:
        self._engine = engine
        self._clock = clock
        self._how_urgent = how_urgent

    def store(self, raws: Sequence[object]) -> int | None:
        """Commit these updates, each once however often it comes. Returns the highest id among them.

        How urgent each is is marked, so that it overtakes what is less so. One that the database
        refuses is kept as a bare id and set aside by the worker: it must not hold up all others.
        """
        taken = [raw for raw in raws if isinstance(raw, dict) and update_id_of(raw) is not None]
        if not taken:
            return None
        now = self._clock.now()
        with looking(self._engine) as session:
            came = [(chat_id_of(raw), said_in(raw)) for raw in taken]
            urgency = self._how_urgent(session, now, came)
        rows = [self._row(raw, now, how) for raw, how in zip(taken, urgency, strict=True)]
        try:
            self._insert(rows)
        except (OperationalError, InterfaceError):
            raise  # the database is to blame: nothing is confirmed, and they come again
        except SQLAlchemyError:
            for row in rows:
                self._insert_alone(row)
        return max(int(row["update_id"]) for row in rows)

    @staticmethod
    def _row(raw: dict[str, Any], now: datetime, urgency: Urgency) -> dict[str, Any]:
        return {
            "update_id": update_id_of(raw),
            "chat_id": chat_id_of(raw),
            "raw": raw,
            "received_at": now,
            "status": "new",
            "urgency": urgency,
            "attempts": 0,
            "problem": "",
        }

    def _insert(self, rows: Sequence[dict[str, Any]]) -> None:
        insert = _INSERTS[self._engine.dialect.name]
        with claiming(self._engine) as session:
            session.connection().execute(insert, rows)

    def _insert_alone(self, row: dict[str, Any]) -> None:
        try:
            self._insert([row])
        except (OperationalError, InterfaceError):
            raise
        except SQLAlchemyError as error:
            update_id = row["update_id"]
            _log.error(
                "an update could not be stored", update_id=update_id, error=error_name(error)
            )
            self._insert([row | {"raw": {"update_id": update_id, **UNSTORABLE}}])


class Poller:
    """Long polling. Of several processes one polls, and another takes over when it dies."""

    def __init__(
        self,
        engine: Engine,
        transport: Transport,
        clock: Clock,
        arrived: Callable[[], None],
        how_urgent: HowUrgent = all_alike,
    ) -> None:
        self._intake = Intake(engine, clock, how_urgent)
        self._transport = transport
        self._clock = clock
        self._arrived = arrived
        self._right = LeaderLease(engine, "poll")
        self._offset: int | None = None

    async def run(self) -> None:
        """Poll until cancelled."""
        failures = 0
        try:
            while True:
                try:
                    if not await asyncio.to_thread(self._right.hold):
                        self._offset = None
                        await self._clock.sleep(STANDBY_S)
                        continue
                    await self.poll_once()
                    failures = 0
                except Exception as error:
                    failures += 1
                    await self._clock.sleep(self._after(error, failures))
        finally:
            self._right.release()

    async def poll_once(self) -> None:
        """Fetch what there is and commit it; only the next call confirms it."""
        payload: dict[str, Any] = {
            "timeout": POLL_SECONDS,
            "limit": MOST_AT_ONCE,
            "allowed_updates": ALLOWED_UPDATES,
        }
        if self._offset is not None:
            payload["offset"] = self._offset
        raws = await self._transport.call("getUpdates", payload)
        highest = await asyncio.to_thread(self._intake.store, raws)
        if highest is not None:
            self._offset = highest + 1
            self._arrived()

    def _after(self, error: Exception, failures: int) -> float:
        """Log a failed poll; returns the seconds to wait before the next."""
        pause = growing_pause(failures)
        if isinstance(error, RetryAfter):
            pause = max(pause, span_of(error).total_seconds())
        if isinstance(error, Conflict):
            _log.error(
                "another program polls with this token, or a webhook is set; stop it",
                seconds=pause,
                error=error_name(error),
            )
        elif isinstance(error, TelegramError):
            _log.warning("polling failed", seconds=pause, error=error_name(error), count=failures)
        else:
            _log.error("storing updates failed", seconds=pause, exc_info=error, count=failures)
        return pause


class Webhook(WebServer):
    """A small web server that says 200 once an update is committed."""

    def __init__(
        self, intake: Intake, arrived: Callable[[], None], *, path: str, secret: str
    ) -> None:
        parts = {"intake": intake, "arrived": arrived, "secret": secret.encode()}
        super().__init__([(path or "/", _UpdateHandler, parts)], max_body_size=LARGEST_BODY_BYTES)


class _UpdateHandler(RequestHandler):
    def initialize(self, intake: Intake, arrived: Callable[[], None], secret: bytes) -> None:
        self._intake = intake
        self._arrived = arrived
        self._secret = secret

    async def post(self) -> None:
        given = self.request.headers.get(SECRET_HEADER, "").encode()
        if not hmac.compare_digest(given, self._secret):
            _log.warning("a webhook call without the right secret", code=403)
            self.set_status(403)
            return
        try:
            raw = json.loads(self.request.body)
        except ValueError:
            raw = None
        if update_id_of(raw) is None:
            self.set_status(400)
            return
        await asyncio.to_thread(self._intake.store, [raw])
        self._arrived()

    def log_exception(self, *exc_info: Any) -> None:
        _log.error("storing an update failed", exc_info=exc_info)

    def write_error(self, status_code: int, **_kwargs: Any) -> None:
        self.set_status(status_code)
        self.finish()


async def announce_polling(transport: Transport) -> None:
    """Tell Telegram that updates are fetched; what waits there is kept."""
    await transport.call("deleteWebhook", {"drop_pending_updates": False})


async def announce_webhook(transport: Transport, url: str, secret: str) -> None:
    """Tell Telegram where to bring updates, and the word by which it is known."""
    await transport.call(
        "setWebhook", {"url": url, "secret_token": secret, "allowed_updates": ALLOWED_UPDATES}
    )
