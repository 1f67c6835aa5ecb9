"""SIGKILL at any point between an answer and its answer: handled once, said at least once.

A message may be said twice only where the kill came between Telegram's taking it and the bot's
hearing of that, because the Bot API has no way to ask whether a message arrived.
"""

from __future__ import annotations

import random
import signal
from collections import Counter
from pathlib import Path

import pytest
from sqlmodel import Session, select

from bot.store.db import make_engine
from bot.store.tables.setting import SettingRow
from bot.telegram.beginnings import MOST
from tests.support.chats import BotProcess, Telegram

pytestmark = [pytest.mark.loopback, pytest.mark.soak]

INES = 11


@pytest.fixture
def bot(telegram: Telegram, any_url: str, tmp_path: Path) -> BotProcess:
    return BotProcess(telegram, any_url, tmp_path / "log", module=["tests.support.small_bot"])


def handled(bot: BotProcess) -> Counter[str]:
    """How often each update was handled, by what the handling itself wrote down."""
    engine = make_engine(bot.database_url)
    with Session(engine) as session:
        rows = session.exec(select(SettingRow)).all()
        counts = {row.name: int(row.value) for row in rows if row.name.startswith("handled:")}
    engine.dispose()
    return Counter(counts)


def test_killed_before_telegram_took_the_message_it_is_sent_once(
    telegram: Telegram, bot: BotProcess
) -> None:
    telegram.hold("sendMessage", "before")
    with bot:
        telegram.says(INES, "61.2 7 3.5")
        telegram.wait_for_held()
    telegram.release()
    with bot:
        telegram.says(INES, "done")
        telegram.wait_for_text(INES, "text done")

    assert telegram.texts(INES) == ["text 61.2 7 3.5", "text done"]
    assert set(handled(bot).values()) == {1}


def test_killed_after_telegram_took_the_message_it_is_sent_again(
    telegram: Telegram, bot: BotProcess
) -> None:
    telegram.hold("sendMessage", "after")
    with bot:
        telegram.says(INES, "61.2 7 3.5")
        telegram.wait_for_held()
    telegram.release()
    with bot:
        telegram.says(INES, "done")
        telegram.wait_for_text(INES, "text done")

    assert telegram.texts(INES) == ["text 61.2 7 3.5"] * 2 + ["text done"]
    assert set(handled(bot).values()) == {1}


def test_killed_each_time_after_telegram_took_the_message_it_stands_there_three_times(
    telegram: Telegram, bot: BotProcess
) -> None:
    telegram.says(INES, "61.2 7 3.5")
    for _ in range(3):
        telegram.hold("sendMessage", "after")
        with bot:
            telegram.wait_for_held()
        telegram.release()
    with bot:
        telegram.says(INES, "done")
        telegram.wait_for_text(INES, "text done")

    assert telegram.texts(INES) == ["text 61.2 7 3.5"] * 3 + ["text done"]
    assert set(handled(bot).values()) == {1}


def test_killed_when_updates_were_handed_out_and_not_yet_received(
    telegram: Telegram, bot: BotProcess
) -> None:
    telegram.hold("getUpdates", "after")
    with bot:
        telegram.says(INES, "61.2 7 3.5")
        telegram.wait_for_held()
    telegram.release()
    with bot:
        telegram.wait_for_text(INES, "61.2")

    assert telegram.texts(INES) == ["text 61.2 7 3.5"]
    assert set(handled(bot).values()) == {1}


def test_killed_before_updates_were_confirmed(telegram: Telegram, bot: BotProcess) -> None:
    """The next getUpdates would confirm them, and is kept from coming in."""
    with bot:
        telegram.says(INES, "hello")
        telegram.wait_for_text(INES, "hello")
        telegram.hold("getUpdates", "before")
        telegram.says(INES, "61.2 7 3.5")
        telegram.wait_for_text(INES, "61.2")
        telegram.wait_until(lambda: not bot.open_rows(), "the bot to note that it was sent")
        telegram.wait_for_held()
    telegram.release()
    with bot:
        telegram.says(INES, "done")
        telegram.wait_for_text(INES, "text done")

    assert telegram.texts(INES) == ["text hello", "text 61.2 7 3.5", "text done"]
    assert set(handled(bot).values()) == {1}


def test_killed_again_and_again_amid_the_work_nothing_is_lost_or_handled_twice(
    telegram: Telegram, bot: BotProcess
) -> None:
    chance = random.Random(20270601)
    texts = {chat: [f"<{chat}.{n}>" for n in range(3)] for chat in range(100, 136)}
    turns = [(chat, text) for n in range(3) for chat, text in ((c, texts[c][n]) for c in texts)]
    kills = 0
    while turns:
        with bot:  # killed at the end of the block, some calls after it came up
            for chat, text in turns[:18]:
                telegram.says(chat, text)
            del turns[:18]
            before = len(telegram.calls(method="sendMessage"))
            enough = before + chance.randint(1, 12)
            telegram.wait_until(
                lambda enough=enough: len(telegram.calls(method="sendMessage")) >= enough,
                "the bot to get going",
            )
        kills += 1
    with bot:
        for chat in texts:
            telegram.says(chat, "done")
        for chat in texts:
            telegram.wait_for_text(chat, "text done")
        assert bot.stop() == 0

    said = {chat: telegram.texts(chat) for chat in texts}
    counts = handled(bot)
    assert kills == 6
    assert len(counts) == 4 * len(texts)
    assert set(counts.values()) == {1}
    assert bot.open_rows() == []
    for chat, sent in texts.items():
        assert without_repeats(said[chat]) == [*(f"text {text}" for text in sent), "text done"]
    # Twice only what was underway at a kill: the five that may go ahead of the pace, and those
    # whose answers had not been noted yet.
    assert sum(len(words) for words in said.values()) - 4 * len(texts) <= kills * 10


def test_what_kills_each_process_that_handles_it_is_gone_past_at_last(
    telegram: Telegram, bot: BotProcess
) -> None:
    telegram.says(INES, "deadly")
    telegram.says(INES, "and now?")
    telegram.says(12, "61.2")
    for _ in range(MOST):
        with bot:
            assert bot.wait() == -signal.SIGKILL
    with bot:
        telegram.wait_for_text(INES, "text and now?")
        telegram.wait_for_text(12, "text 61.2")
        # What one of the killed had on its way is sent again in a while, as nobody knows of it.
        telegram.wait_until(lambda: not bot.open_rows(), "the bot to send what was left")
        assert bot.stop() == 0

    assert telegram.texts(INES) == ["sorry, say it another way", "text and now?"]
    assert set(handled(bot).values()) == {1}


def without_repeats(texts: list[str]) -> list[str]:
    """A message that came twice in a row counts once."""
    return [text for n, text in enumerate(texts) if n == 0 or texts[n - 1] != text]
