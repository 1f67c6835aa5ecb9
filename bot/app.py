"""The composition root: the only place where the parts meet."""

from __future__ import annotations

import asyncio
import signal
from collections.abc import Awaitable, Callable, Coroutine
from datetime import UTC, datetime, timedelta
from typing import Any
from urllib.parse import urlsplit

import structlog
from apscheduler.schedulers.asyncio import AsyncIOScheduler
from sqlalchemy import Engine
from sqlalchemy.exc import InterfaceError, OperationalError
from telegram.error import BadRequest, InvalidToken, TelegramError

from bot.core.garbage import leave_out_what_is_loaded
from bot.core.logs import error_name
from bot.core.timing.clock import FIRST_WHILE_S, Clock, RealClock
from bot.core.timing.clock_watch import ClockWatch
from bot.core.timing.duties import Duties
from bot.core.timing.waiting import growing_pause, keep_going
from bot.core.turn import Context
from bot.core.use_cases import Runtime, UseCases
from bot.settings import PREFIX, Settings, SettingsError
from bot.store.db import in_transaction, make_engine
from bot.store.moved import moved_to, sentence
from bot.store.prune import prune_traffic
from bot.store.tables import setting
from bot.telegram.fetcher import Fetcher
from bot.telegram.intake import Intake, Poller, Webhook, announce_polling, announce_webhook
from bot.telegram.outcomes import Outcomes
from bot.telegram.sender import Sender
from bot.telegram.transport import TelegramTransport, Transport
from bot.telegram.uploads import Uploads
from bot.telegram.worker import Worker
from bot.watching.health import HealthPage
from bot.watching.watch import Watch
from bot.watching.watchdog import watched

PRUNE_EVERY = timedelta(hours=6)
TIME_TO_FINISH_S = 20
LOOK_WHETHER_MOVED_S = 2

_log = structlog.get_logger(__name__)


class App:
    """Everything between a Bot API server and the use cases, wired and not yet running."""

    def __init__(
        self,
        settings: Settings,
        engine: Engine,
        transport: Transport,
        use_cases: UseCases,
        clock: Clock,
    ) -> None:
        self.username = ""
        self._settings = settings
        self._engine = engine
        self._transport = transport
        self._clock = clock
        self._how_urgent = use_cases.how_urgent
        self._load = use_cases.load
        self._loading: asyncio.Task[None] | None = None
        self._pruning = asyncio.Lock()
        self._moved = ""
        self.sender = Sender(
            engine,
            transport,
            clock,
            lambda pace: Outcomes(engine, use_cases, clock, self.context, pace),
            Uploads(engine, use_cases, self.context),
        )
        self.fetcher = Fetcher(
            Runtime(engine, use_cases, clock, self.context), transport, self.sender.wake.set
        )
        self.worker = Worker(
            Runtime(engine, use_cases, clock, self.context),
            threads=settings.worker_threads,
            handled=self._handled,
            noted_for_s=FIRST_WHILE_S,
        )
        self.duties = Duties(
            Runtime(engine, use_cases, clock, self.context),
            self.sender.wake.set,
            noted_for_s=FIRST_WHILE_S,
        )
        self.watch = Watch(engine, clock, transport, settings.operator_chat)

    def context(self) -> Context:
        """The world as a use case that begins now is to see it."""
        folder = self._settings.photo_dir
        return Context(
            now=self._clock.now(),
            bot_username=self.username,
            invite_days=self._settings.invite_days,
            photo_dir=folder.expanduser() if folder is not None else None,
            keep_photos_days=self._settings.keep_photos_days,
            keep_traffic_days=self._settings.keep_traffic_days,
            helpline=self._settings.helpline,
        )

    def _came_in(self) -> None:
        """Something came in: have it answered, and the first time load beside it what answers need."""
        self.worker.wake.set()
        if self._loading is None:
            self._loading = asyncio.create_task(asyncio.to_thread(self._load_for_good))

    def _load_for_good(self) -> None:
        self._load()
        leave_out_what_is_loaded()

    def _handled(self) -> None:
        self.sender.wake.set()
        self.fetcher.wake.set()

    async def run(self, stop: asyncio.Event) -> None:
        """Work until `stop`; then finish what was begun. Raises InvalidToken at a wrong token."""
        await self._once_reached(self._introduce, stop)
        if stop.is_set():
            return
        scheduler = self._scheduler()
        scheduler.start()
        parts = (self.worker, self.sender, self.fetcher)
        watch = ClockWatch(self._engine, self._clock, lambda: self._look_again(scheduler))
        tasks = [asyncio.create_task(part.run()) for part in parts]
        tasks.append(asyncio.create_task(keep_going("clock watch", self._clock, watch.look)))
        tasks.append(asyncio.create_task(keep_going("watch", self._clock, self.watch.look)))
        tasks.append(
            asyncio.create_task(keep_going("move", self._clock, lambda: self._until_moved(stop)))
        )
        page = self._health_page()
        try:
            await self._take_in_until(stop)
        finally:
            if page is not None:
                await page.close()
            scheduler.pause()
            for task in tasks:
                task.cancel()
            await asyncio.gather(*tasks, return_exceptions=True)
            await self._finish()
            scheduler.shutdown(wait=False)  # what it began would be torn off any earlier
            _log.info("stopped")
        if self._moved:
            raise SettingsError(
                [f"{PREFIX}DATABASE_URL: {self._moved}; put that there and start again"]
            )

    async def _until_moved(self, stop: asyncio.Event) -> None:
        """Stop once the installation has moved to another database: this one takes nothing more."""
        await self._clock.sleep(LOOK_WHETHER_MOVED_S)
        if address := await asyncio.to_thread(moved_to, self._engine):
            self._moved = sentence(address)
            _log.error("the installation has moved to another database")
            stop.set()

    async def _once_reached(self, call: Callable[[], Awaitable[None]], stop: asyncio.Event) -> None:
        """Make a call that the start depends on, as often as it takes to reach Telegram."""
        failures = 0
        while not stop.is_set():
            try:
                await call()
            except (InvalidToken, BadRequest):
                raise
            except (TelegramError, OperationalError, InterfaceError) as error:
                failures += 1
                pause = growing_pause(failures)
                _log.warning(
                    "Telegram is out of reach"
                    if isinstance(error, TelegramError)
                    else "the database is out of reach",
                    seconds=pause,
                    error=error_name(error),
                )
                await _unless(stop, self._clock.sleep(pause))
            else:
                return

    async def _introduce(self) -> None:
        """Learn the bot's own name, for invitation links here and on the command line."""
        me = await self._transport.call("getMe", {})
        self.username = str(me.get("username", ""))
        await asyncio.to_thread(
            in_transaction,
            self._engine,
            lambda session: setting.keep(session, setting.BOT_USERNAME, self.username),
        )

    async def _take_in_until(self, stop: asyncio.Event) -> None:
        url, secret = self._settings.webhook_url, self._settings.webhook_secret
        if url is None or secret is None:
            await self._once_reached(lambda: announce_polling(self._transport), stop)
            _log.info("started", mode="polling")
            poller = Poller(
                self._engine, self._transport, self._clock, self._came_in,
                self._how_urgent,
            )  # fmt: skip
            await _unless(stop, poller.run())
        else:
            await self._listen_until(stop, url, secret.get_secret_value())

    async def _listen_until(self, stop: asyncio.Event, url: str, secret: str) -> None:
        intake = Intake(self._engine, self._clock, self._how_urgent)
        webhook = Webhook(intake, self._came_in, path=urlsplit(url).path, secret=secret)
        try:
            port = webhook.listen(self._settings.webhook_listen, self._settings.webhook_port)
            await self._once_reached(lambda: announce_webhook(self._transport, url, secret), stop)
            _log.info("started", mode="webhook", listen=self._settings.webhook_listen, port=port)
            await stop.wait()
        except OSError:
            line = f"{PREFIX}WEBHOOK_LISTEN, {PREFIX}WEBHOOK_PORT: cannot be listened on"
            raise SettingsError([line]) from None
        except BadRequest as error:
            line = f"{PREFIX}WEBHOOK_URL: is refused by Telegram ({error.message})"
            raise SettingsError([line]) from None
        finally:
            await webhook.close()

    def _health_page(self) -> HealthPage | None:
        if self._settings.health_port is None:
            return None
        page = HealthPage(self._engine, self._clock)
        try:
            port = page.listen(self._settings.health_listen, self._settings.health_port)
        except OSError:
            line = f"{PREFIX}HEALTH_LISTEN, {PREFIX}HEALTH_PORT: cannot be listened on"
            raise SettingsError([line]) from None
        _log.info("health page", listen=self._settings.health_listen, port=port)
        return page

    def _scheduler(self) -> AsyncIOScheduler:
        # It only ticks: what is due, and whose turn it is, stands in rows. A tick that comes late
        # still runs, and several missed ones are one.
        scheduler = AsyncIOScheduler(
            timezone="UTC",
            job_defaults={"misfire_grace_time": None, "coalesce": True, "max_instances": 1},
        )
        now = datetime.now(UTC)  # its own clock is the machine's, whatever ours is
        scheduler.add_job(
            self.duties.tick, "interval", seconds=self._settings.tick_seconds, next_run_time=now
        )
        scheduler.add_job(
            self._prune, "interval", seconds=PRUNE_EVERY.total_seconds(), next_run_time=now
        )
        return scheduler

    def _look_again(self, scheduler: AsyncIOScheduler) -> None:
        """The clock was set: the next tick would wait for an instant of the old time."""
        for job in scheduler.get_jobs():
            job.modify(next_run_time=datetime.now(UTC))
        self.worker.wake.set()
        self._handled()

    async def _prune(self) -> None:
        before = self._clock.now() - timedelta(days=self._settings.keep_traffic_days)
        async with self._pruning:
            try:
                await asyncio.to_thread(prune_traffic, self._engine, before)
            except Exception:
                _log.exception("clearing out old messages failed")

    async def _finish(self) -> None:
        try:
            async with asyncio.timeout(TIME_TO_FINISH_S):
                await self.duties.close()
                await self.worker.close()
                await self.sender.close()
                async with self._pruning:
                    pass
        except TimeoutError:
            _log.warning("stopped before all was finished; the rest is taken up at the next start")


async def serve(settings: Settings, use_cases: UseCases) -> None:
    """Run the bot on a database in shape until SIGTERM or SIGINT.

    Raises InvalidToken at a wrong token, SettingsError where the webhook cannot be set up.
    """
    assert settings.bot_token is not None
    engine = make_engine(settings.database_url)
    transport = TelegramTransport(settings.bot_token.get_secret_value(), settings.api_base_url)
    stop = asyncio.Event()
    _on_signals(stop.set)
    app = App(settings, engine, transport, use_cases, RealClock())
    watchdog = asyncio.create_task(watched(app.worker.underway, app.duties.underway))
    try:
        await app.run(stop)
    finally:
        watchdog.cancel()
        await transport.close()
        engine.dispose()


def _on_signals(stop: Callable[[], None]) -> None:
    loop = asyncio.get_running_loop()
    for number in (signal.SIGTERM, signal.SIGINT):
        try:
            loop.add_signal_handler(number, stop)
        except NotImplementedError:  # Windows
            signal.signal(number, lambda *_: loop.call_soon_threadsafe(stop))


async def _unless(stop: asyncio.Event, work: Coroutine[Any, Any, None]) -> None:
    """Do this work until it ends or `stop` is set, whichever is first."""
    working = asyncio.ensure_future(work)
    stopping = asyncio.ensure_future(stop.wait())
    await asyncio.wait((working, stopping), return_when=asyncio.FIRST_COMPLETED)
    stopping.cancel()
    if not working.done():
        working.cancel()
    results = await asyncio.gather(working, stopping, return_exceptions=True)
    if isinstance(results[0], Exception):
        raise results[0]
