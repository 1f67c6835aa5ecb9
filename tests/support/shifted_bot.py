"""The real app in a thread, on a clock that runs ten times as fast and can be put forward by days."""

from __future__ import annotations

import asyncio
import threading
import time
from datetime import datetime, timedelta
from pathlib import Path

from bot.app import App
from bot.core.timing.clock import Clock
from bot.dispatcher import USE_CASES
from bot.settings import Settings
from bot.store.db import make_engine
from bot.store.migrate import upgrade_to_head
from bot.telegram.transport import TelegramTransport
from tests.support.chats import PATIENCE_S, TOKEN, Telegram

SPEED = 10  # so that the bot's own pace (a message a second and chat) does not take real seconds


class ShiftedClock(Clock):
    """A fast clock plus a span that a test sets."""

    def __init__(self, start: datetime) -> None:
        self._start, self._begun = start, time.monotonic()

    def now(self) -> datetime:
        return self._start + timedelta(seconds=(time.monotonic() - self._begun) * SPEED)

    def monotonic(self) -> float:
        return (time.monotonic() - self._begun) * SPEED

    async def sleep(self, seconds: float) -> None:
        await asyncio.sleep(seconds / SPEED)

    def put_forward_to(self, instant: datetime) -> None:
        ahead = instant - self.now()
        if ahead < timedelta(0):
            raise ValueError("this clock is not put back")
        self._start += ahead


class ShiftedBot:
    """`brimline run`, but for the clock: the same wiring, intake, worker, sender and ticks."""

    def __init__(
        self, telegram: Telegram, database_url: str, start: datetime, photo_dir: Path | None = None
    ) -> None:
        self.clock = ShiftedClock(start)
        self._telegram = telegram
        self._url = database_url
        self._photo_dir = photo_dir
        self._thread = threading.Thread(target=lambda: asyncio.run(self._serve()))
        self._loop: asyncio.AbstractEventLoop | None = None
        self._stop: asyncio.Event | None = None
        self._failure: BaseException | None = None

    def __enter__(self) -> ShiftedBot:
        self._thread.start()
        return self

    def __exit__(self, *_: object) -> None:
        if self._loop is not None and self._stop is not None:
            self._loop.call_soon_threadsafe(self._stop.set)
        self._thread.join(PATIENCE_S)
        assert not self._thread.is_alive(), "the bot did not stop"
        if self._failure is not None:
            raise self._failure

    async def _serve(self) -> None:
        settings = Settings.model_validate(
            {
                "bot_token": TOKEN,
                "database_url": self._url,
                "api_base_url": self._telegram.url,
                "tick_seconds": 0.2,
                "photo_dir": self._photo_dir,
            }
        )
        self._loop, self._stop = asyncio.get_running_loop(), asyncio.Event()
        engine = make_engine(self._url)
        transport = TelegramTransport(TOKEN, self._telegram.url)
        try:
            await asyncio.to_thread(upgrade_to_head, engine)
            await App(settings, engine, transport, USE_CASES, self.clock).run(self._stop)
        except BaseException as failure:
            self._failure = failure
        finally:
            await transport.close()
            engine.dispose()
