"""A database server that crashes, a full disk, two processes at one file, a move, amid real work.

Nothing is lost by any of it.
"""

from __future__ import annotations

import resource
from collections import Counter
from pathlib import Path

import pytest
from sqlmodel import Session, select

from bot.operation.backup import move
from bot.operation.commands import WRONG_SETTING
from bot.operation.installation import shown
from bot.store.db import make_engine
from bot.store.tables.setting import SettingRow
from tests.support.chats import BotProcess, Telegram
from tests.support.databases import Server

pytestmark = [pytest.mark.loopback, pytest.mark.soak]

SMALL = ["tests.support.small_bot"]
PEOPLE = range(100, 120)


def handled(bot: BotProcess) -> Counter[str]:
    """How often each update was handled, by what the handling itself wrote down."""
    engine = make_engine(bot.database_url)
    with Session(engine) as session:
        rows = session.exec(select(SettingRow)).all()
    engine.dispose()
    return Counter({row.name: int(row.value) for row in rows if row.name.startswith("handled:")})


def everybody_says(telegram: Telegram, text: str) -> None:
    for chat in PEOPLE:
        telegram.says(chat, text)


def everybody_heard(telegram: Telegram, *texts: str) -> None:
    for chat in PEOPLE:
        for text in texts:
            telegram.wait_for_text(chat, f"text {text}")


def test_a_database_server_that_crashes_amid_the_work_is_waited_for_and_nothing_is_lost(
    telegram: Telegram, postgres: Server, postgres_url: str, tmp_path: Path
) -> None:
    bot = BotProcess(telegram, postgres_url, tmp_path / "log", module=SMALL)
    with bot:
        for round_ in range(3):
            everybody_says(telegram, f"<{round_}>")
            before = len(telegram.calls(method="sendMessage"))
            telegram.wait_until(
                lambda before=before: len(telegram.calls(method="sendMessage")) > before + 3,
                "the bot to get going",
            )
            postgres.restart()
            postgres.lines.clear()  # the tests' own connections went with it
        everybody_says(telegram, "done")
        everybody_heard(telegram, "<0>", "<1>", "<2>", "done")
        assert bot.stop() == 0
    counts = handled(bot)
    assert len(counts) == 4 * len(PEOPLE) and set(counts.values()) == {1}
    assert bot.open_rows() == []


def test_a_full_disk_is_named_in_the_log_and_what_came_meanwhile_is_answered_after_it(
    telegram: Telegram, own_url: str, tmp_path: Path
) -> None:
    """A limit on the size of files stands for the disk: writes beyond it fail, as on a full one."""
    bot = BotProcess(telegram, own_url, tmp_path / "log", module=SMALL)
    with bot:
        everybody_says(telegram, "before")
        everybody_heard(telegram, "before")
        telegram.wait_until(lambda: not bot.open_rows(), "the bot to note what it sent")
        written = Path(f"{tmp_path / 'brimline.sqlite3'}-wal").stat().st_size
        _, hard = resource.prlimit(bot.pid, resource.RLIMIT_FSIZE)
        resource.prlimit(bot.pid, resource.RLIMIT_FSIZE, (written, hard))
        everybody_says(telegram, "meanwhile")
        telegram.wait_until(
            lambda: any("SQLITE_" in str(line.get("error")) for line in bot.log_lines()),
            "the log to name what is wrong",
        )
        resource.prlimit(bot.pid, resource.RLIMIT_FSIZE, (hard, hard))
        everybody_says(telegram, "after")
        everybody_heard(telegram, "before", "meanwhile", "after")
        assert bot.stop() == 0
    counts = handled(bot)
    assert len(counts) == 3 * len(PEOPLE) and set(counts.values()) == {1}
    assert bot.open_rows() == []


def test_two_processes_at_one_file_share_it_and_one_of_them_polls(
    telegram: Telegram, own_url: str, tmp_path: Path
) -> None:
    first = BotProcess(telegram, own_url, tmp_path / "first", module=SMALL)
    second = BotProcess(telegram, own_url, tmp_path / "second", module=SMALL)
    with first, second:
        everybody_says(telegram, "hello")
        everybody_heard(telegram, "hello")
        telegram.wait_until(lambda: not first.open_rows(), "the bot to note what it sent")
        first.kill()
        everybody_says(telegram, "and now?")
        everybody_heard(telegram, "and now?")
        assert second.stop() == 0
    counts = handled(second)
    assert len(counts) == 2 * len(PEOPLE) and set(counts.values()) == {1}
    assert all(call["refused"] != 409 for call in telegram.refused())


def test_a_running_bot_moves_to_a_server_and_goes_on_there_with_nothing_lost_or_done_twice(
    telegram: Telegram, own_url: str, postgres: Server, tmp_path: Path
) -> None:
    """Who moves it stops nobody: the bot finds its database closed, names the new one, and ends."""
    server = postgres.new_database()
    old = BotProcess(telegram, own_url, tmp_path / "old", module=SMALL)
    new = BotProcess(telegram, server, tmp_path / "new", module=SMALL)
    source, target = make_engine(own_url), make_engine(server)
    with old:
        everybody_says(telegram, "before")
        telegram.wait_for_text(PEOPLE[0], "text before")
        everybody_says(telegram, "meanwhile")
        move(source, target)
        everybody_says(telegram, "after")
        assert old.wait() == WRONG_SETTING
    assert f"this installation has moved to {shown(target)}" in old.log.read_text()
    source.dispose()
    target.dispose()
    with new:
        everybody_heard(telegram, "before", "meanwhile", "after")
        telegram.wait_until(lambda: not new.open_rows(), "the bot to note what it sent")
        assert new.stop() == 0
    counts = handled(new)
    assert len(counts) == 3 * len(PEOPLE) and set(counts.values()) == {1}
