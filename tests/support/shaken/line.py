"""The Bot API stand-in in the test's own process, which fails as it is told to.

Each bot process has a port of its own, so that a call tells whose it is.
"""

from __future__ import annotations

import asyncio
import random
from collections import Counter
from collections.abc import Callable
from dataclasses import dataclass
from enum import StrEnum
from typing import Any

from aiohttp import web

from tests.support.chats import TOKEN, message_from, user
from tests.support.shaken.wall import SPEED
from tests.support.telegram_standin import StandIn

LONGEST_POLL_S = 2  # 25 of the bot's
#: Longer than the bot waits for an answer.
NEVER_S = 10.0


class Trouble(StrEnum):
    """What may become of a call. Of the lower four the bot cannot know whether it was taken in."""

    BAD_GATEWAY = "502"
    SLOW_DOWN = "429"
    SLOW = "slow"
    CUT_BEFORE = "cut before it was taken in"
    CUT_AFTER = "cut after it was taken in"
    SILENT_BEFORE = "no answer, not taken in"
    SILENT_AFTER = "no answer, taken in"


@dataclass
class Weather:
    """Each call meets this trouble with this chance, for so many seconds from the first that does."""

    trouble: Trouble
    lasts_s: float
    chance: float
    met: Callable[[], None]
    until: float | None = None


@dataclass
class Ambush:
    """Kill whoever makes the next such call, before it is taken in or before it is answered."""

    methods: frozenset[str]
    after: bool
    sprung: asyncio.Event


class Line(StandIn):
    """`kill` is given the number of the process whose call ran into an ambush."""

    def __init__(self, seed: str, kill: Callable[[int], None]) -> None:
        super().__init__()
        self.names: dict[int, str] = {}
        self.weather: list[Weather] = []
        self.ambush: Ambush | None = None
        self.met: Counter[str] = Counter()
        self.called = [asyncio.Event(), asyncio.Event()]  # by process: since it was last cleared
        self.calls_made = 0
        self._chance = random.Random(seed)
        self._kill = kill
        self._ports: list[int] = []
        self._runner: web.AppRunner | None = None

    async def open(self) -> None:
        self._runner = web.AppRunner(self.app(), access_log=None, handler_cancellation=True)
        await self._runner.setup()
        for _ in self.called:
            await web.TCPSite(self._runner, "127.0.0.1", 0).start()
        self._ports = [address[1] for address in self._runner.addresses]

    async def close(self) -> None:
        assert self._runner is not None
        await self._runner.cleanup()

    def url(self, number: int) -> str:
        return f"http://127.0.0.1:{self._ports[number]}"

    # What people do

    async def says(self, chat_id: int, text: str) -> int:
        """Somebody writes; returns the update's id."""
        message = message_from(chat_id, self.names[chat_id], text=text)
        return await self.comes(TOKEN, {"message": message})

    async def taps(self, chat_id: int, data: str, message_id: int) -> int:
        """Somebody presses a button; returns the update's id."""
        press = {
            "id": f"tap-{len(self.calls)}-{chat_id}", "chat_instance": "1", "data": data,
            "from": user(chat_id, self.names[chat_id]),
            "message": message_from(chat_id, self.names[chat_id], text="?", message_id=message_id),
        }  # fmt: skip
        return await self.comes(TOKEN, {"callback_query": press})

    async def membership(self, chat_id: int, status: str) -> int:
        """Somebody stops the bot ("kicked") or starts it again ("member"), and it is told."""
        change = self.blocked.add if status == "kicked" else self.blocked.discard
        change(str(chat_id))
        bot = {"id": 7, "is_bot": True, "first_name": "Brimline"}
        message = message_from(chat_id, self.names[chat_id])
        told = {
            "chat": message["chat"], "from": message["from"], "date": message["date"],
            "old_chat_member": {"user": bot, "status": "member"},
            "new_chat_member": {"user": bot, "status": status}
            | ({"until_date": 0} if status == "kicked" else {}),
        }  # fmt: skip
        return await self.comes(TOKEN, {"my_chat_member": told})

    async def until_called(self, times: int, seconds: float) -> None:
        """Until the bot has made so many more calls, or for so long."""
        enough = self.calls_made + times
        await self._wait(lambda: self.calls_made >= enough, seconds)

    def calm(self) -> None:
        """Nothing goes wrong any more."""
        self.weather.clear()
        self.ambush = None

    # What the bot's calls meet

    async def read_request(self, request: web.Request) -> tuple[dict[str, Any], dict[str, Any]]:
        fields, uploads = await super().read_request(request)
        if "timeout" in fields:
            fields["timeout"] = min(int(fields["timeout"]) // SPEED, LONGEST_POLL_S)
        return fields, uploads

    async def handle(self, request: web.Request) -> web.StreamResponse:
        assert request.transport is not None
        method = request.match_info["method"]
        number = self._ports.index(request.transport.get_extra_info("sockname")[1])
        self.called[number].set()
        self.calls_made += 1
        self._spring(number, method, after=False, request=request)
        trouble = self._trouble()
        if trouble is Trouble.CUT_BEFORE:
            _cut(request)
        if trouble is Trouble.SILENT_BEFORE:
            await asyncio.sleep(NEVER_S)
        if trouble is Trouble.SLOW:
            await asyncio.sleep(self._chance.uniform(0.05, 1.0))
        if trouble in (Trouble.BAD_GATEWAY, Trouble.SLOW_DOWN):
            return self._refusal(trouble)
        response = await super().handle(request)
        if method == "getUpdates":  # calls that mattered are those with something in them
            self._spring(
                number, method, after=b'"result": []' not in _body(response), request=request
            )
        else:
            self._spring(number, method, after=True, request=request)
        if trouble is Trouble.CUT_AFTER:
            _cut(request)
        if trouble is Trouble.SILENT_AFTER:
            await asyncio.sleep(NEVER_S)
        return response

    def _spring(self, number: int, method: str, *, after: bool, request: web.Request) -> None:
        waiting = self.ambush
        if waiting is None or waiting.after is not after or method not in waiting.methods:
            return
        self.ambush = None
        self._kill(number)
        waiting.sprung.set()
        _cut(request)

    def _trouble(self) -> Trouble | None:
        now = asyncio.get_running_loop().time()
        self.weather = [one for one in self.weather if one.until is None or one.until > now]
        for one in self.weather:
            if self._chance.random() < one.chance:
                if one.until is None:
                    one.until = now + one.lasts_s
                    one.met()
                self.met[one.trouble] += 1
                return one.trouble
        return None

    @staticmethod
    def _refusal(trouble: Trouble) -> web.Response:
        code, words = (
            (502, "Bad Gateway") if trouble is Trouble.BAD_GATEWAY else (429, "Too Many Requests")
        )
        body: dict[str, Any] = {"ok": False, "error_code": code, "description": words}
        if code == 429:
            body |= {"description": f"{words}: retry after 3", "parameters": {"retry_after": 3}}
        return web.json_response(body, status=code)


def _body(response: web.StreamResponse) -> bytes:
    assert isinstance(response, web.Response)
    return bytes(response.body or b"")  # type: ignore[arg-type]


def _cut(request: web.Request) -> None:
    """Drop the line without an answer."""
    if request.transport is not None:
        request.transport.abort()
    raise web.HTTPBadRequest  # nobody reads it
