"""A small page for machines: alive, ready, and figures in the Prometheus text format.

Only on an address of one's own (loopback unless set otherwise). No label names or numbers a person.
"""

from __future__ import annotations

import asyncio
from collections.abc import Callable, Iterable, Iterator
from contextlib import AbstractContextManager
from datetime import datetime
from typing import Any

import structlog
from sqlalchemy import Engine, func
from sqlalchemy.exc import SQLAlchemyError
from sqlmodel import Session, col, select
from tornado.web import RequestHandler

from bot.core.logs import error_name, errors_logged
from bot.core.timing.clock import Clock
from bot.core.web import WebServer
from bot.store.db import looking, times_run_again
from bot.store.tables.week import DecisionRow
from bot.watching.watch import backlog

CONTENT_TYPE = "text/plain; version=0.0.4; charset=utf-8"
PREFIX = "brimline"

_log = structlog.get_logger(__name__)


class HealthPage(WebServer):
    """`/alive`: the process answers. `/ready`: the database does too. `/metrics`: the figures."""

    def __init__(self, engine: Engine, clock: Clock) -> None:
        parts = {"engine": engine, "clock": clock}
        pages: list[Any] = [
            (r"/alive", _Alive),
            (r"/ready", _Ready, parts),
            (r"/metrics", _Metrics, parts),
        ]
        super().__init__(pages)


class _Alive(RequestHandler):
    def get(self) -> None:
        self.write("alive\n")


class _WithDatabase(RequestHandler):
    def initialize(self, engine: Engine, clock: Clock) -> None:
        self.engine = engine
        self.clock = clock

    async def get(self) -> None:
        try:
            text = await asyncio.to_thread(self.text, self.engine, self.clock.now())
        except SQLAlchemyError as error:
            _log.warning("the database does not answer", error=error_name(error))
            self.set_status(503)
            text = "the database does not answer\n"
        self.set_header("Content-Type", CONTENT_TYPE)
        self.write(text)

    @staticmethod
    def text(engine: Engine, now: datetime) -> str:
        raise NotImplementedError


class _Ready(_WithDatabase):
    @staticmethod
    def text(engine: Engine, now: datetime) -> str:  # noqa: ARG004 - one signature for both
        with looking(engine) as session:
            session.connection().exec_driver_sql("SELECT 1")
        return "ready\n"


class _Metrics(_WithDatabase):
    @staticmethod
    def text(engine: Engine, now: datetime) -> str:
        return metrics(engine, now)


def metrics(engine: Engine, now: datetime) -> str:
    """The figures of this moment in the Prometheus text exposition format."""
    from prometheus_client import CollectorRegistry, generate_latest  # noqa: PLC0415

    registry = CollectorRegistry()
    registry.register(_Figures(lambda: looking(engine), now))
    return generate_latest(registry).decode()


class _Figures:
    """What is counted, read from the database when it is asked for."""

    def __init__(
        self, session: Callable[[], AbstractContextManager[Session]], now: datetime
    ) -> None:
        self._session = session
        self._now = now

    def describe(self) -> Iterable[Any]:
        return ()  # nothing is read at registration

    def collect(self) -> Iterator[Any]:
        from prometheus_client.core import CounterMetricFamily, GaugeMetricFamily  # noqa: PLC0415

        with self._session() as session:
            found = backlog(session, self._now)
            outcomes = session.exec(
                select(DecisionRow.outcome, func.count()).group_by(col(DecisionRow.outcome))
            ).all()
        rows = GaugeMetricFamily(f"{PREFIX}_queue_rows", "Rows that wait now.", labels=["queue"])
        oldest = GaugeMetricFamily(
            f"{PREFIX}_queue_oldest_seconds", "How long the oldest has waited.", labels=["queue"]
        )
        for queue in found.queues:
            rows.add_metric([queue.name], queue.count)
            oldest.add_metric([queue.name], queue.oldest.total_seconds())
        yield rows
        yield oldest
        yield GaugeMetricFamily(f"{PREFIX}_set_aside", "Updates set aside.", value=found.set_aside)
        yield GaugeMetricFamily(
            f"{PREFIX}_undelivered", "Messages given up.", value=found.undelivered
        )
        sent = found.last_sent.timestamp() if found.last_sent is not None else 0.0
        yield GaugeMetricFamily(
            f"{PREFIX}_last_sent_seconds", "When something was last sent.", sent
        )
        decisions = GaugeMetricFamily(
            f"{PREFIX}_decisions", "Stored decisions by outcome.", labels=["outcome"]
        )
        for outcome, count in outcomes:
            decisions.add_metric([outcome], count)
        yield decisions
        errors = CounterMetricFamily(
            f"{PREFIX}_errors", "Errors logged by this process, by class.", labels=["kind"]
        )
        for kind, count in errors_logged().items():
            errors.add_metric([kind], count)
        yield errors
        again = CounterMetricFamily(
            f"{PREFIX}_run_again",
            "Transactions run again since another got in the way, by SQLSTATE.",
            labels=["code"],
        )
        for code, count in times_run_again().items():
            again.add_metric([code], count)
        yield again
