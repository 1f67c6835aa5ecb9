"""One call to a Bot API server: the only place that touches the network on the way out."""

from __future__ import annotations

import asyncio
from collections.abc import Mapping, Sequence
from datetime import timedelta
from typing import Any, Protocol

import httpx
from telegram import Bot, InputFile, InputMediaPhoto
from telegram.error import BadRequest, NetworkError, RetryAfter, TimedOut
from telegram.request import HTTPXRequest

# Longer than the server's own wait, so that a quiet poll ends at the server.
POLL_SECONDS = 25
POLL_READ_SECONDS = POLL_SECONDS + 10
CONNECT_SECONDS = 10
READ_SECONDS = 20
CONNECTIONS = 64

Files = Mapping[str, tuple[str, bytes]]


class Transport(Protocol):
    """Raises telegram.error.TelegramError, as python-telegram-bot sorts them."""

    async def call(self, method: str, payload: dict[str, Any], files: Files | None = None) -> Any:
        """Call a Bot API method by its own name; returns its `result`.

        `files` maps a field to (file name, content).
        """

    async def download(self, file_id: str, most_bytes: int) -> bytes:
        """A file that somebody sent. Raises TooLarge past `most_bytes`, having read no more."""


class TooLarge(BadRequest):
    """A file of more bytes than were asked for."""

    def __init__(self) -> None:
        super().__init__("the file is too large")


class _RawBot(Bot):
    """A Bot whose answers stay JSON: an update has to be stored before anybody parses it.

    `Bot.do_api_request` would do, but warns for every method that the class has a name for.
    """

    __slots__ = ()

    async def raw(self, method: str, payload: dict[str, Any], read_seconds: float) -> Any:
        return await self._post(method, payload, read_timeout=read_seconds)


class TelegramTransport:
    """A Bot API server: Telegram's, or one of your own at `base_url`."""

    def __init__(self, token: str, base_url: str) -> None:
        # Each would read the system's certificates anew, which is a third of a start.
        trusted: dict[str, Any] = {"verify": httpx.create_ssl_context()}
        self._calls = HTTPXRequest(
            connection_pool_size=CONNECTIONS,
            connect_timeout=CONNECT_SECONDS,
            read_timeout=READ_SECONDS,
            write_timeout=READ_SECONDS,
            pool_timeout=READ_SECONDS,
            httpx_kwargs=trusted,
        )
        self._polls = HTTPXRequest(
            connection_pool_size=1,
            connect_timeout=CONNECT_SECONDS,
            read_timeout=POLL_READ_SECONDS,
            httpx_kwargs=trusted,
        )
        self._downloads = httpx.AsyncClient(timeout=READ_SECONDS, follow_redirects=False, **trusted)
        self._files = f"{base_url}/file/bot{token}"
        self._bot = _RawBot(
            token,
            base_url=f"{base_url}/bot",
            base_file_url=f"{base_url}/file/bot",
            request=self._calls,
            get_updates_request=self._polls,
        )

    async def close(self) -> None:
        """Close the connections; they open by themselves at the first call."""
        await asyncio.gather(
            self._calls.shutdown(), self._polls.shutdown(), self._downloads.aclose()
        )

    async def call(self, method: str, payload: dict[str, Any], files: Files | None = None) -> Any:
        fields = dict(payload)
        if "media" in fields:
            fields["media"] = _album(fields["media"], files or {})
        else:
            for field, (name, content) in (files or {}).items():
                fields[field] = InputFile(content, filename=name)
        seconds = POLL_READ_SECONDS if method == "getUpdates" else READ_SECONDS
        return await self._bot.raw(method, fields, seconds)

    async def download(self, file_id: str, most_bytes: int) -> bytes:
        found = await self._bot.raw("getFile", {"file_id": file_id}, READ_SECONDS)
        if int(found.get("file_size") or 0) > most_bytes:
            raise TooLarge
        path = found.get("file_path")
        if not path:
            raise BadRequest("the file cannot be fetched")
        try:
            return await self._stream(f"{self._files}/{path}", most_bytes)
        except httpx.TimeoutException as error:
            raise TimedOut from error
        except httpx.HTTPError as error:
            raise NetworkError(type(error).__name__) from error  # its text may hold the address

    async def _stream(self, url: str, most_bytes: int) -> bytes:
        content = bytearray()
        async with self._downloads.stream("GET", url) as answer:
            if answer.is_client_error:
                raise BadRequest("the file is gone")
            answer.raise_for_status()
            # The size that was told beforehand is a claim; what arrives is counted.
            async for part in answer.aiter_bytes():
                content += part
                if len(content) > most_bytes:
                    raise TooLarge
        return bytes(content)


def _album(media: Sequence[Mapping[str, str]], files: Files) -> list[InputMediaPhoto]:
    """Pictures that name their files "attach://FIELD", as the library wants them."""
    album = []
    for item in media:
        name, content = files[item["media"].removeprefix("attach://")]
        file = InputFile(content, filename=name, attach=True)
        album.append(InputMediaPhoto(file, caption=item.get("caption")))
    return album


def span_of(error: RetryAfter) -> timedelta:
    """How long the server says to wait."""
    after = error.retry_after
    return after if isinstance(after, timedelta) else timedelta(seconds=after)


def surely_not_sent(error: NetworkError) -> bool:
    """Whether the call never left: no connection came about. Otherwise it may have arrived."""
    never_left = (httpx.ConnectError, httpx.ConnectTimeout, httpx.PoolTimeout)
    return isinstance(error.__cause__, never_left)


def answered_by_server(error: NetworkError) -> bool:
    """Whether the server itself said that it failed (5xx), rather than the line going dead."""
    return not isinstance(error.__cause__, httpx.HTTPError)
