"""What may be written to the outbox. Limits after core.telegram.org/bots/api."""

from __future__ import annotations

from datetime import UTC, datetime

import pytest
from sqlalchemy import Engine
from sqlmodel import select

from bot.core.chat import outbox
from bot.core.chat.outbox import Button, Topic
from bot.core.turn import Context, Turn
from bot.store.db import transaction
from bot.store.tables.traffic import OutboxRow, TopicKind

NOW = datetime(2027, 6, 1, 7, tzinfo=UTC)
CHAT = 11


@pytest.mark.parametrize("text", ["a" * 5000, "💪" * 5000, "a" + "💪" * 5000])
def test_a_text_past_the_4096_utf16_units_of_a_message_is_cut(
    own_engine: Engine, text: str
) -> None:
    with transaction(own_engine) as session:
        row = outbox.say(Turn(session, Context(NOW)), chat_id=CHAT, text=text)

    units = len(row.payload["text"].encode("utf-16-le")) // 2
    assert 4095 <= units <= 4096
    assert row.payload["text"].endswith("…")


def test_a_text_that_fits_is_left_alone(own_engine: Engine) -> None:
    with transaction(own_engine) as session:
        row = outbox.say(Turn(session, Context(NOW)), chat_id=CHAT, text="💪" * 2048)

    assert row.payload["text"] == "💪" * 2048


def test_a_button_holds_64_bytes_at_most() -> None:
    Button("7", "é" * 32)
    with pytest.raises(ValueError, match="64 bytes"):
        Button("7", "é" * 32 + "a")


def test_the_same_word_under_the_same_key_is_said_once(any_engine: Engine) -> None:
    for _ in range(2):
        with transaction(any_engine) as session:
            outbox.say(
                Turn(session, Context(NOW)),
                chat_id=CHAT,
                text="hello",
                how=outbox.Delivery(dedupe="greeting:11"),
            )
    with transaction(any_engine) as session:
        assert len(session.exec(select(OutboxRow)).all()) == 1


def test_of_the_words_on_a_topic_only_the_latest_waits(any_engine: Engine) -> None:
    with transaction(any_engine) as session:
        for text in ("300 g", "320 g"):
            outbox.say(
                Turn(session, Context(NOW)),
                chat_id=CHAT,
                text=text,
                how=outbox.Delivery(topic=Topic(TopicKind.TARGET, 1)),
            )
        outbox.say(
            Turn(session, Context(NOW)),
            chat_id=CHAT,
            text="other",
            how=outbox.Delivery(topic=Topic(TopicKind.TARGET, 2)),
        )
        rows = session.exec(select(OutboxRow).order_by("id")).all()
        assert [row.status for row in rows] == ["dropped", "waiting", "waiting"]
