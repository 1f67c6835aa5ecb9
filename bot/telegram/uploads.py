"""The files of an outbox row, made at the moment at which it is sent.

A row names its files by what they are made of. What is gone by then (a deleted picture) is left out;
where nothing is left, there is nothing to send.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from typing import Any

from sqlalchemy import Engine

from bot.core.turn import Context, Turn
from bot.core.use_cases import UseCases
from bot.store.db import looking
from bot.telegram.transport import Files


@dataclass(frozen=True, slots=True)
class Made:
    """A call with its files: field -> (file name, content)."""

    method: str
    payload: dict[str, Any]
    files: Files


class Uploads:
    """Makes the files that rows name, from a reading session of its own."""

    def __init__(self, engine: Engine, use_cases: UseCases, context: Callable[[], Context]) -> None:
        self._engine = engine
        self._use_cases = use_cases
        self._context = context

    def make(
        self, method: str, payload: dict[str, Any], attached: dict[str, dict[str, Any]]
    ) -> Made | None:
        """The call as it can be made now; None where none of its files can."""
        files = {}
        with looking(self._engine) as session:
            for field, named in attached.items():
                document = self._use_cases.document(Turn(session, self._context()), named)
                if document is not None:
                    files[field] = (document.name, document.content)
        if not files:
            return None
        if method == "sendMediaGroup" and len(files) < len(attached):
            return _without_the_missing(payload, files)
        return Made(method, payload, files)


def _without_the_missing(payload: dict[str, Any], files: dict[str, tuple[str, bytes]]) -> Made:
    """An album of the pictures that are left; of one, a picture."""
    caption = {key: value for key, value in payload["media"][0].items() if key == "caption"}
    rest = {key: value for key, value in payload.items() if key != "media"}
    if len(files) == 1:
        return Made("sendPhoto", rest | caption, {"photo": next(iter(files.values()))})
    media = [
        {key: value for key, value in item.items() if key != "caption"}
        for item in payload["media"]
        if item["media"].removeprefix("attach://") in files
    ]
    media[0] |= caption
    return Made("sendMediaGroup", rest | {"media": media}, files)
