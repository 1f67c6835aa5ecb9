"""Files between people and the bot: what they send is fetched by the real fetcher, from a line without
a network; what they are sent is made as the sender would make it.
"""

from __future__ import annotations

import asyncio
import itertools
from collections.abc import Iterable, Sequence
from functools import cached_property
from typing import Any

from sqlmodel import col, select

from bot.core.timing.clock import DrivenClock
from bot.core.turn import Document, SentFile, Turn
from bot.core.use_cases import Runtime
from bot.dispatcher import USE_CASES
from bot.store.tables.traffic import OutboxRow
from bot.telegram.fetcher import Fetcher
from tests.support.line import Line
from tests.support.world import Said, Someone, World

_ids = itertools.count(1)


def sends_file(who: Someone, content: bytes, *, caption: str = "", **file: Any) -> list[Said]:
    """Somebody sends a file (as `SentFile` has it) and it is fetched; returns what the bot says to them
    about it.
    """
    file_id = f"file-{next(_ids)}"
    said = who.sends(SentFile(file_id=file_id, **{"size": len(content)} | file), caption)
    fetch(who.world, {file_id: content})
    return said + who.hears()


def fetch(world: World, files: dict[str, bytes]) -> None:
    """Fetch everything that waits."""
    line = Line()
    line.files = files
    fetcher = Fetcher(
        Runtime(world.engine, USE_CASES, DrivenClock(world.now), lambda: world.context), line
    )

    async def all_of_it() -> None:
        while await fetcher.step():
            pass

    asyncio.run(all_of_it())


class Made(Sequence[Document]):
    """What a message would upload, made when somebody looks at it."""

    def __init__(self, world: World, named: Iterable[dict[str, Any]]) -> None:
        self._world, self._named = world, tuple(named)

    @cached_property
    def _documents(self) -> list[Document]:
        with self._world.session() as session:
            turn = Turn(session, self._world.context)
            made = [USE_CASES.document(turn, one) for one in self._named]
        return [one for one in made if one is not None]

    def __len__(self) -> int:
        return len(self._documents)

    def __getitem__(self, which: Any) -> Any:
        return self._documents[which]

    def __eq__(self, other: object) -> bool:
        return self._documents == other

    __hash__ = None  # type: ignore[assignment]


def files_for(who: Someone, *methods: str) -> list[tuple[OutboxRow, Made]]:
    """The files that wait for somebody, each message with what it would upload now."""
    query = (
        select(OutboxRow)
        .where(OutboxRow.chat_id == who.user_id, col(OutboxRow.attached).is_not(None))
        .order_by(col(OutboxRow.id))
    )
    with who.world.session() as session:
        rows = [row for row in session.exec(query) if not methods or row.method in methods]
    return [(row, Made(who.world, (row.attached or {}).values())) for row in rows]
