"""A Bot API server on loopback for tests: lo-bot-api-emulator, with what a test needs on top.

    python -m tests.support.telegram_standin      prints its port, and serves until it is killed

Its own paths, all JSON:
    GET  /__tap?since=N&wait=S   the calls taken in since N; waits up to S seconds for one
    POST /__update               any update, with any id, once or again: {"token", "update"}
    POST /__fault                answer calls of a method with an error: {"method", "status",
                                 "description", "parameters", "times", "chat_id"}; status 0 takes
                                 the call in and then drops the line
    POST /__block                {"chat_id", "blocked"}: refuse what is sent into a chat with 403
    POST /__hold                 {"method", "moment": "before" | "after"}: keep calls of a method
                                 waiting before they are taken in, or before they are answered
    GET  /__held?wait=S          whether a call is being held; waits up to S seconds for one
    POST /__release              let them go
    POST /__asset?file_id=X      a file that waits to be downloaded: its bytes

Stricter than the emulator: callback_data in bytes, edits only of messages that were sent, no fields
that a method does not have, HTML only where it can be parsed.
"""

from __future__ import annotations

import asyncio
import json
import sys
from html.parser import HTMLParser
from typing import Any

from aiohttp import web
from lo_bot_api_emulator import ApiRefusal, LoBotApiEmulator

# The real API knows these; the emulator's contract does not.
KNOWN_ELSEWHERE = {"link_preview_options", "protect_content", "message_effect_id"}
QUIET = {"getUpdates"}


class _Tags(HTMLParser):
    """Refuses what Telegram's HTML mode would refuse: unknown, unclosed or crossed tags."""

    ALLOWED = frozenset({"b", "i", "u", "s", "code", "pre", "a", "blockquote", "tg-spoiler"})

    def __init__(self) -> None:
        super().__init__()
        self.open: list[str] = []

    def handle_starttag(self, tag: str, attrs: object) -> None:
        if tag not in self.ALLOWED:
            raise ApiRefusal(f'Bad Request: can\'t parse entities: Unsupported start tag "{tag}"')
        self.open.append(tag)

    def handle_endtag(self, tag: str) -> None:
        if not self.open or self.open.pop() != tag:
            raise ApiRefusal("Bad Request: can't parse entities: Unmatched end tag")


class StandIn(LoBotApiEmulator):
    def __init__(self) -> None:
        super().__init__(
            enable_control=True,
            allow_insecure_loopback_webhooks=True,
            max_updates=100_000,
            max_history=100_000,
            max_assets=10_000,
        )
        self.calls: list[dict[str, Any]] = []
        self.faults: list[dict[str, Any]] = []
        self.blocked: set[str] = set()
        self.sent: dict[tuple[int, int], str] = {}
        self.hold: dict[str, str] | None = None
        self.held = 0
        self.changed = asyncio.Condition()
        self.let_go = asyncio.Event()

    async def _notify(self) -> None:
        async with self.changed:
            self.changed.notify_all()

    async def _wait(self, holds: Any, seconds: float) -> None:
        async with self.changed:
            try:
                await asyncio.wait_for(self.changed.wait_for(holds), seconds)
            except TimeoutError:
                return

    def validate(self, method: str, fields: dict[str, Any], uploads: dict[str, Any]) -> Any:
        elsewhere = {key: fields.pop(key) for key in KNOWN_ELSEWHERE & set(fields)}
        shown = {**fields, **elsewhere}
        shown.pop("secret_token", None)
        for name in ("reply_markup", "commands", "scope"):
            if isinstance(shown.get(name), str):
                shown[name] = json.loads(shown[name])
        fault = self._fault(method, fields)
        if fault is not None and fault["status"]:
            self.calls.append({"method": method, "fields": shown, "refused": fault["status"]})
            raise ApiRefusal(fault["description"], fault["status"], fault.get("parameters"))
        try:
            self._own_checks(method, fields)
            result = super().validate(method, fields, uploads)
        except ApiRefusal as refusal:
            self.calls.append({"method": method, "fields": shown, "refused": refusal.description})
            raise
        if method == "getMe":
            result["username"] = "brimline_test_bot"
        if method == "sendMessage":
            self.sent[int(fields["chat_id"]), result["message_id"]] = fields["text"]
        if method not in QUIET:
            self.calls.append({"method": method, "fields": shown, "result": result})
        if fault is not None:
            raise ConnectionAbortedError
        return result

    def _fault(self, method: str, fields: dict[str, Any]) -> dict[str, Any] | None:
        for fault in self.faults:
            chat = str(fault.get("chat_id", fields.get("chat_id")))
            if fault["method"] == method and chat == str(fields.get("chat_id")) and fault["times"]:
                fault["times"] -= 1
                return fault
        return None

    def _own_checks(self, method: str, fields: dict[str, Any]) -> None:
        if str(fields.get("chat_id")) in self.blocked:
            raise ApiRefusal("Forbidden: bot was blocked by the user", 403)
        if fields.get("parse_mode") == "HTML":
            tags = _Tags()
            tags.feed(fields.get("text") or fields.get("caption") or "")
            tags.close()
            if tags.open:
                raise ApiRefusal("Bad Request: can't parse entities: Can't find end tag")
        if method == "editMessageText":
            key = (int(fields["chat_id"]), int(fields["message_id"]))
            if key not in self.sent:
                raise ApiRefusal("Bad Request: message to edit not found")
            if self.sent[key] == fields["text"] and "reply_markup" not in fields:
                raise ApiRefusal("Bad Request: message is not modified")
            self.sent[key] = fields["text"]

    async def handle(self, request: web.Request) -> web.StreamResponse:
        method = request.match_info["method"]
        await self._hold(method, "before", request)
        try:
            response: web.StreamResponse = await super().handle(request)
        except ConnectionAbortedError:
            await self._notify()
            assert request.transport is not None
            request.transport.abort()
            raise
        await self._notify()
        await self._hold(method, "after", request)
        return response

    async def _hold(self, method: str, moment: str, request: web.Request) -> None:
        if self.hold != {"method": method, "moment": moment}:
            return
        self.held += 1
        await self._notify()
        try:
            await self.let_go.wait()
        finally:
            self.held -= 1
        if request.transport is None or request.transport.is_closing():
            raise web.HTTPBadRequest  # whoever asked is gone: the call never came in

    def app(self) -> web.Application:
        app = super().app()
        app.router.add_get("/__tap", self._tap)
        app.router.add_post("/__update", self._update)
        app.router.add_post("/__fault", self._add_fault)
        app.router.add_post("/__block", self._block)
        app.router.add_post("/__hold", self._set_hold)
        app.router.add_get("/__held", self._is_held)
        app.router.add_post("/__release", self._release)
        app.router.add_post("/__asset", self._asset)
        return app

    async def _tap(self, request: web.Request) -> web.Response:
        since, seconds = int(request.query["since"]), float(request.query["wait"])
        await self._wait(lambda: len(self.calls) > since, seconds)
        return web.json_response({"calls": self.calls[since:]})

    async def _update(self, request: web.Request) -> web.Response:
        body = await request.json()
        return web.json_response({"update_id": await self.comes(body["token"], body["update"])})

    async def comes(self, token: str, update: dict[str, Any]) -> int:
        """An update waits for the bot of this token; returns its id."""
        state = self._update_queues._state(token)
        async with state.condition:
            update = {"update_id": state.next_id, **update}
            state.next_id = max(state.next_id, update["update_id"] + 1)
            state.updates.append(update)
            state.condition.notify_all()
        await self._update_queues.deliver(token)
        return int(update["update_id"])

    def unconfirmed(self, token: str) -> list[int]:
        """The ids of the updates that the bot has not yet said it has."""
        return [update["update_id"] for update in self._update_queues._state(token).updates]

    async def _add_fault(self, request: web.Request) -> web.Response:
        self.faults.append({"times": 1, "description": "", **await request.json()})
        return web.json_response({})

    async def _block(self, request: web.Request) -> web.Response:
        body = await request.json()
        change = self.blocked.add if body["blocked"] else self.blocked.discard
        change(str(body["chat_id"]))
        return web.json_response({})

    async def _set_hold(self, request: web.Request) -> web.Response:
        self.hold = await request.json()
        self.let_go.clear()
        return web.json_response({})

    async def _is_held(self, request: web.Request) -> web.Response:
        await self._wait(lambda: self.held > 0, float(request.query["wait"]))
        return web.json_response({"held": self.held})

    async def _asset(self, request: web.Request) -> web.Response:
        data = await request.read()
        name = request.query["file_id"]
        self.assets[name] = {"filename": name, "data": data, "size": len(data)}
        return web.json_response({})

    async def _release(self, _request: web.Request) -> web.Response:
        self.hold = None
        self.let_go.set()
        return web.json_response({})


async def _serve() -> None:
    runner = web.AppRunner(StandIn().app(), access_log=None, handler_cancellation=True)
    await runner.setup()
    site = web.TCPSite(runner, "127.0.0.1", 0)
    await site.start()
    sys.stdout.write(f"{runner.addresses[0][1]}\n")
    sys.stdout.flush()
    await asyncio.Event().wait()


def main() -> None:
    asyncio.run(_serve())


if __name__ == "__main__":
    main()
