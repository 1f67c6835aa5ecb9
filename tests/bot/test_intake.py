"""Updates are in the inbox before Telegram is told that they arrived."""

from __future__ import annotations

import asyncio
import http.client
import json
from datetime import UTC, datetime
from pathlib import Path
from typing import Any

import pytest
from sqlalchemy import Engine
from sqlalchemy.exc import DBAPIError
from sqlmodel import Session, select
from telegram.error import Conflict, NetworkError

from bot.core import web
from bot.core.timing.clock import DrivenClock
from bot.store.db import make_engine
from bot.store.tables.traffic import InboxRow
from bot.telegram.intake import LARGEST_BODY_BYTES, SECRET_HEADER, Intake, Poller, Webhook
from bot.watching.health import HealthPage

START = datetime(2027, 6, 1, 7, tzinfo=UTC)
SECRET = "an-invented-webhook-secret"


def _update(update_id: int) -> dict[str, Any]:
    return {"update_id": update_id, "message": {"chat": {"id": 7}}}


def _inbox(engine: Engine) -> list[int]:
    with Session(engine) as session:
        return sorted(session.exec(select(InboxRow.update_id)).all())


class Server:
    """getUpdates as documented: it gives what is at or past the offset, and forgets the rest."""

    def __init__(self, *updates: dict[str, Any]) -> None:
        self.updates = list(updates)
        self.errors: list[Exception] = []
        self.asked = 0

    async def call(self, method: str, payload: dict[str, Any], files: Any = None) -> Any:
        assert method == "getUpdates"
        self.asked += 1
        if self.errors:
            raise self.errors.pop(0)
        offset = payload.get("offset", 0)
        self.updates = [u for u in self.updates if u.get("update_id", offset) >= offset]
        return self.updates[: payload["limit"]]


@pytest.fixture
def clock() -> DrivenClock:
    return DrivenClock(START)


async def test_updates_are_confirmed_only_by_the_poll_after_they_were_committed(
    any_engine: Engine, clock: DrivenClock
) -> None:
    server = Server(_update(5), _update(6))
    poller = Poller(any_engine, server, clock, lambda: None)
    await poller.poll_once()

    assert _inbox(any_engine) == [5, 6]
    assert len(server.updates) == 2  # a crash here loses nothing
    await poller.poll_once()
    assert server.updates == []


async def test_updates_that_could_not_be_stored_are_not_confirmed(
    own_engine: Engine, clock: DrivenClock
) -> None:
    server = Server(_update(5))
    poller = Poller(own_engine, server, clock, lambda: None)
    with own_engine.begin() as connection:
        connection.exec_driver_sql("ALTER TABLE inbox RENAME TO away")
    with pytest.raises(DBAPIError, match="inbox"):
        await poller.poll_once()
    with own_engine.begin() as connection:
        connection.exec_driver_sql("ALTER TABLE away RENAME TO inbox")

    assert server.updates == [_update(5)]


async def test_a_misshapen_update_does_not_stop_those_around_it(
    any_engine: Engine, clock: DrivenClock
) -> None:
    server = Server(_update(5), {"update_id": 6, "message": "?"}, {}, _update(7))
    await Poller(any_engine, server, clock, lambda: None).poll_once()

    assert _inbox(any_engine) == [5, 6, 7]


@pytest.mark.parametrize("error", [NetworkError("gone"), Conflict("terminated by other")])
async def test_polling_goes_on_after_an_error_and_waits_longer_each_time(
    sqlite_engine: Engine, clock: DrivenClock, error: Exception
) -> None:
    server = Server(_update(5))
    server.errors = [error] * 3
    arrived = asyncio.Event()
    polling = asyncio.create_task(Poller(sqlite_engine, server, clock, arrived.set).run())
    started = clock.now()
    waited: list[float] = []
    while not arrived.is_set():
        asked = server.asked
        while clock.sleepers == 0 and not arrived.is_set():
            await asyncio.sleep(0)
        if arrived.is_set():
            break
        assert server.asked > asked or not waited
        waited.append(clock.move_to_next())
    polling.cancel()
    await asyncio.gather(polling, return_exceptions=True)

    assert _inbox(sqlite_engine) == [5]
    assert waited == [1.0, 2.0, 4.0]
    assert (clock.now() - started).total_seconds() == 7


async def test_a_database_that_is_away_when_it_is_asked_who_may_poll_ends_nothing(
    tmp_path: Path, clock: DrivenClock
) -> None:
    nowhere = make_engine(f"postgresql:///brimline?host={tmp_path}&user=postgres")
    polling = asyncio.create_task(Poller(nowhere, Server(), clock, lambda: None).run())
    waited = []
    while len(waited) < 3 and not polling.done():
        if clock.sleepers:
            waited.append(clock.move_to_next())
        await asyncio.sleep(0.001)
    polling.cancel()
    await asyncio.gather(polling, return_exceptions=True)
    nowhere.dispose()

    assert waited == [1.0, 2.0, 4.0]


def test_the_same_update_is_stored_once_however_often_it_comes(
    any_engine: Engine, clock: DrivenClock
) -> None:
    Intake(any_engine, clock).store([_update(5), _update(5)])
    assert Intake(any_engine, clock).store([_update(5)]) == 5

    assert _inbox(any_engine) == [5]


@pytest.fixture
async def webhook(any_engine: Engine, clock: DrivenClock) -> Any:
    webhook = Webhook(Intake(any_engine, clock), lambda: None, path="/hook", secret=SECRET)
    port = webhook.listen("127.0.0.1", 0)

    async def post(body: bytes, path: str = "/hook", **headers: str) -> int:
        return await asyncio.to_thread(_post, port, path, body, headers)

    yield post
    await webhook.close()


def _post(port: int, path: str, body: bytes, headers: dict[str, str]) -> int:
    connection = http.client.HTTPConnection("127.0.0.1", port, timeout=10)
    try:
        connection.request("POST", path, body, headers)
        return connection.getresponse().status
    finally:
        connection.close()


@pytest.mark.loopback
async def test_the_webhook_takes_an_update_that_comes_with_the_secret(
    any_engine: Engine, webhook: Any
) -> None:
    status = await webhook(json.dumps(_update(5)).encode(), **{SECRET_HEADER: SECRET})

    assert status == 200
    assert _inbox(any_engine) == [5]


@pytest.mark.loopback
@pytest.mark.parametrize(
    "headers", [{}, {SECRET_HEADER: ""}, {SECRET_HEADER: "wrong"}, {SECRET_HEADER: SECRET + "x"}]
)
async def test_the_webhook_believes_nobody_without_the_secret(
    any_engine: Engine, webhook: Any, headers: dict[str, str]
) -> None:
    assert await webhook(json.dumps(_update(5)).encode(), **headers) == 403
    assert _inbox(any_engine) == []


@pytest.mark.loopback
@pytest.mark.parametrize("body", [b"", b"[]", b"{}", b"not json", b'{"update_id": "5"}', b"\xff"])
async def test_the_webhook_refuses_what_is_no_update(
    any_engine: Engine, webhook: Any, body: bytes
) -> None:
    assert await webhook(body, **{SECRET_HEADER: SECRET}) == 400
    assert _inbox(any_engine) == []


@pytest.mark.loopback
async def test_the_webhook_does_not_say_200_when_the_update_could_not_be_stored(
    any_engine: Engine, webhook: Any
) -> None:
    with any_engine.begin() as connection:
        connection.exec_driver_sql("ALTER TABLE inbox RENAME TO away")
    status = await webhook(json.dumps(_update(5)).encode(), **{SECRET_HEADER: SECRET})
    with any_engine.begin() as connection:
        connection.exec_driver_sql("ALTER TABLE away RENAME TO inbox")

    assert status == 500
    assert await webhook(json.dumps(_update(5)).encode(), **{SECRET_HEADER: SECRET}) == 200
    assert _inbox(any_engine) == [5]


@pytest.mark.loopback
async def test_the_webhook_reads_no_more_than_an_update_can_be(
    any_engine: Engine, webhook: Any
) -> None:
    # It is turned away by the size it says it has, before it is sent.
    said = {"Content-Length": str(LARGEST_BODY_BYTES + 1), SECRET_HEADER: SECRET}

    assert await webhook(json.dumps(_update(5)).encode(), **said) == 400
    assert _inbox(any_engine) == []


@pytest.mark.loopback
@pytest.mark.parametrize(
    "said",
    [
        b"",
        b"POST /hook HTTP/1.1\r\nHost: x\r\n",
        b"POST /hook HTTP/1.1\r\nHost: x\r\nContent-Length: 50\r\n\r\nab",
    ],
    ids=["silent", "half a head", "half a body"],
)
async def test_who_says_half_of_it_and_waits_is_hung_up_on(
    own_engine: Engine, clock: DrivenClock, monkeypatch: pytest.MonkeyPatch, said: bytes
) -> None:
    monkeypatch.setattr(web, "IDLE_S", 0.1)
    monkeypatch.setattr(web, "BODY_S", 0.1)
    hook = Webhook(Intake(own_engine, clock), lambda: None, path="/hook", secret=SECRET)
    for server in (hook, HealthPage(own_engine, clock)):
        reader, writer = await asyncio.open_connection("127.0.0.1", server.listen("127.0.0.1", 0))
        writer.write(said)
        async with asyncio.timeout(5):
            while await reader.read(1000):  # an answer may come, and then the end
                pass
        writer.close()
        await server.close()


@pytest.mark.loopback
async def test_the_webhook_answers_at_its_own_path_only(webhook: Any) -> None:
    body = json.dumps(_update(5)).encode()

    assert await webhook(body, "/elsewhere", **{SECRET_HEADER: SECRET}) == 404


def test_an_update_that_the_database_refuses_holds_up_nobody(
    any_engine: Engine, clock: DrivenClock
) -> None:
    refused = _update(6) | {"message": {"text": "a \x00 that PostgreSQL keeps in no JSON"}}
    too_large = _update(10**23)

    highest = Intake(any_engine, clock).store([_update(5), refused, too_large, _update(7)])

    assert highest == 7
    assert _inbox(any_engine) == [5, 6, 7]
