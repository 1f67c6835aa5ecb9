"""A small web server of the bot's own: it listens where it is told to, and ends without haste."""

from __future__ import annotations

from typing import Any

from tornado.httpserver import HTTPServer
from tornado.netutil import bind_sockets
from tornado.web import Application

#: Who opens a connection and says nothing, or not all that was promised, is not waited for.
IDLE_S, BODY_S = 30.0, 10.0


class WebServer:
    """Answers with these pages. `limits` are those of tornado's HTTPServer."""

    def __init__(self, pages: list[Any], **limits: Any) -> None:
        # No line per request: what matters is logged where it happens.
        pages_alone = Application(pages, log_function=lambda _handler: None)
        self._server = HTTPServer(
            pages_alone, idle_connection_timeout=IDLE_S, body_timeout=BODY_S, **limits
        )

    def listen(self, address: str, port: int) -> int:
        """Begin to answer; returns the port (0 asks for a free one). OSError where it is taken."""
        sockets = bind_sockets(port, address)
        self._server.add_sockets(sockets)
        return int(sockets[0].getsockname()[1])

    async def close(self) -> None:
        """Take no more, and let what is being answered finish."""
        self._server.stop()
        await self._server.close_all_connections()
