"""A Bot API server without a network: takes calls down, and answers or fails as it was told."""

from __future__ import annotations

import itertools
from collections import defaultdict
from collections.abc import Mapping
from typing import Any

from bot.telegram.transport import TooLarge


class Line:
    """Stands where the network would be; `calls` are those that got an answer or an error, `heard`
    those that got an answer.
    """

    def __init__(self) -> None:
        self.calls: list[tuple[str, dict[str, Any]]] = []
        self.heard: list[tuple[str, dict[str, Any]]] = []
        self.uploads: list[dict[str, bytes]] = []
        self.files: dict[str, bytes] = {}
        self.failures: dict[object, list[Exception]] = defaultdict(list)
        self._message_ids = itertools.count(500)

    def fail(self, *errors: Exception, on: object = "sendMessage") -> None:
        """Let the next calls of this method, or into this chat, fail."""
        self.failures[on].extend(errors)

    async def call(
        self, method: str, payload: dict[str, Any], files: Mapping[str, Any] | None = None
    ) -> Any:
        self.calls.append((method, dict(payload)))
        for key in (payload.get("chat_id"), method):
            if self.failures[key]:
                raise self.failures[key].pop(0)
        self.heard.append((method, dict(payload)))
        if files is not None:
            self.uploads.append({field: content for field, (_, content) in files.items()})
        if method in ("sendMessage", "sendDocument", "sendPhoto"):
            return {"message_id": next(self._message_ids), "chat": {"id": payload["chat_id"]}}
        if method == "sendMediaGroup":
            chat = {"id": payload["chat_id"]}
            return [{"message_id": next(self._message_ids), "chat": chat} for _ in payload["media"]]
        if method.startswith("editMessage"):
            return {"message_id": payload["message_id"], "chat": {"id": payload["chat_id"]}}
        return True

    async def download(self, file_id: str, most_bytes: int) -> bytes:
        if self.failures[file_id]:
            raise self.failures[file_id].pop(0)
        if len(self.files[file_id]) > most_bytes:
            raise TooLarge
        return self.files[file_id]

    def heard_in(self, chat_id: int) -> list[str]:
        """The texts that this chat has got."""
        return [fields["text"] for _, fields in self.heard if fields.get("chat_id") == chat_id]

    def texts(self, chat_id: int | None = None) -> list[str]:
        """The texts of the calls so far, into this chat or all."""
        return [
            payload["text"]
            for _, payload in self.calls
            if "text" in payload and chat_id in (None, payload.get("chat_id"))
        ]
