"""The bot as a process against a Bot API server that misbehaves as the real one may."""

from __future__ import annotations

from pathlib import Path

import pytest

from tests.support.chats import SECRET, BotProcess, Telegram
from tests.support.small_bot import COACH

pytestmark = [pytest.mark.loopback, pytest.mark.soak]

INES, MARA = 11, 12


@pytest.fixture
def bot(telegram: Telegram, own_url: str, tmp_path: Path) -> BotProcess:
    return BotProcess(telegram, own_url, tmp_path / "log", module=["tests.support.small_bot"])


def test_texts_edits_and_taps_are_answered(telegram: Telegram, bot: BotProcess) -> None:
    with bot:
        message = telegram.says(INES, "hello")
        telegram.wait_for_text(INES, "text hello")
        telegram.edits(INES, message, "hello there")
        telegram.wait_for_text(INES, "edited hello there")
        shown = telegram.calls(INES, "sendMessage")[-1]["result"]["message_id"]
        telegram.taps(INES, "f:1:7", shown)
        telegram.wait_until(lambda: bool(telegram.calls(INES, "editMessageText")), "the edit")
        assert len(telegram.calls(method="answerCallbackQuery")) == 1
        assert bot.stop() == 0
    assert telegram.refused() == []


def test_a_reminder_comes_when_it_is_due(telegram: Telegram, bot: BotProcess) -> None:
    with bot:
        telegram.says(INES, "remind me")
        telegram.wait_for_text(INES, "the reminder")


def test_stopping_and_starting_the_bot_in_telegram_is_noticed(
    telegram: Telegram, bot: BotProcess
) -> None:
    with bot:
        telegram.membership(INES, "kicked")
        telegram.wait_for_text(COACH, f"{INES} blocked")
        telegram.membership(INES, "member")
        telegram.wait_for_text(COACH, f"{INES} unblocked")


def test_a_blocked_chat_is_reported_and_not_hammered(telegram: Telegram, bot: BotProcess) -> None:
    telegram.fault("sendMessage", 403, "Forbidden: bot was blocked by the user", chat_id=INES)
    with bot:
        telegram.says(INES, "hello")
        telegram.wait_for_text(COACH, f"{INES} is out of reach")
        telegram.says(MARA, "hello")
        telegram.wait_for_text(MARA, "text hello")

    assert telegram.texts(INES) == []
    assert len(telegram.refused()) == 1


@pytest.mark.parametrize(
    ("status", "description", "parameters"),
    [
        (429, "Too Many Requests: retry after 1", {"retry_after": 1}),
        (500, "Internal Server Error", None),
        (502, "Bad Gateway", None),
    ],
)
def test_a_call_refused_for_now_is_made_again(
    telegram: Telegram,
    bot: BotProcess,
    status: int,
    description: str,
    parameters: dict[str, int] | None,
) -> None:
    telegram.fault("sendMessage", status, description, parameters=parameters, times=2)
    with bot:
        telegram.says(INES, "one")
        telegram.says(INES, "two")
        telegram.wait_for_text(INES, "text two")

    assert telegram.texts(INES) == ["text one", "text two"]


def test_a_line_that_drops_after_the_message_was_taken_makes_it_come_twice(
    telegram: Telegram, bot: BotProcess
) -> None:
    telegram.fault("sendMessage", 0)
    with bot:
        telegram.says(INES, "one")
        telegram.wait_for_text(INES, "text one", times=2)
        telegram.says(INES, "two")
        telegram.wait_for_text(INES, "text two")

    assert telegram.texts(INES) == ["text one", "text one", "text two"]


def test_a_chat_with_a_new_id_is_followed(telegram: Telegram, bot: BotProcess) -> None:
    telegram.fault(
        "sendMessage",
        400,
        "Bad Request: group chat was upgraded to a supergroup chat",
        chat_id=INES,
        parameters={"migrate_to_chat_id": -1005},
    )
    with bot:
        telegram.says(INES, "hello")
        telegram.wait_for_text(-1005, "text hello")
        telegram.wait_for_text(COACH, f"{INES} is now -1005")


def test_poison_reaches_nobody_else_and_its_person_is_told(
    telegram: Telegram, bot: BotProcess
) -> None:
    with bot:
        telegram.says(INES, "bad")
        telegram.update(message={"message_id": "?", "chat": {"id": MARA}})
        telegram.update(something_new=[1, 2, 3])
        telegram.says(MARA, "hello")
        telegram.wait_for_text(MARA, "text hello")
        telegram.wait_for_text(MARA, "sorry")
        telegram.wait_for_text(INES, "sorry")
        telegram.says(INES, "good")
        telegram.wait_for_text(INES, "text good")

    assert "text bad" not in telegram.texts(INES)
    assert "61.2" not in bot.log.read_text()
    assert {"an update is set aside", "an update cannot be read"} <= {
        line["event"] for line in bot.log_lines()
    }


def test_the_same_update_twice_and_updates_out_of_order_are_each_handled_once(
    telegram: Telegram, bot: BotProcess
) -> None:
    for number in (12, 10, 11, 10):
        telegram.says(INES, f"<{number}>", update_id=number)
    with bot:
        telegram.says(INES, "done", update_id=20)
        telegram.wait_for_text(INES, "text done")

    assert telegram.texts(INES) == ["text <10>", "text <11>", "text <12>", "text done"]


def test_a_second_poller_is_named_in_the_log_and_polling_resumes(
    telegram: Telegram, bot: BotProcess
) -> None:
    telegram.fault("getUpdates", 409, "Conflict: terminated by other getUpdates request")
    with bot:
        telegram.says(INES, "hello")
        telegram.wait_for_text(INES, "text hello")

    assert any("another program polls" in line["event"] for line in bot.log_lines())


def test_two_processes_on_one_postgresql_share_the_work_and_one_takes_over(
    telegram: Telegram, postgres_url: str, tmp_path: Path
) -> None:
    module = ["tests.support.small_bot"]
    first = BotProcess(telegram, postgres_url, tmp_path / "first", module=module)
    second = BotProcess(telegram, postgres_url, tmp_path / "second", module=module)
    with first, second:
        for number in range(6):
            telegram.says(100 + number, "hello")
        for number in range(6):
            telegram.wait_for_text(100 + number, "text hello")
        telegram.wait_until(lambda: not first.open_rows(), "the bot to note what it sent")
        first.kill()
        telegram.says(INES, "and now?")
        telegram.wait_for_text(INES, "text and now?")

    assert [telegram.texts(100 + number) for number in range(6)] == [["text hello"]] * 6
    assert telegram.texts(INES) == ["text and now?"]
    assert all(call["refused"] != 409 for call in telegram.refused())


def test_a_webhook_is_set_up_with_its_secret_and_updates_come_through_it(
    telegram: Telegram, own_url: str, tmp_path: Path, free_port: int
) -> None:
    bot = BotProcess(
        telegram,
        own_url,
        tmp_path / "log",
        module=["tests.support.small_bot"],
        webhook_url=f"http://127.0.0.1:{free_port}/hook",
        webhook_secret=SECRET,
        webhook_port=str(free_port),
    )
    with bot:
        telegram.wait_until(lambda: bool(telegram.calls(method="setWebhook")), "the webhook")
        telegram.says(INES, "hello")
        telegram.wait_for_text(INES, "text hello")
        assert bot.stop() == 0


def test_a_refused_token_stops_the_start(telegram: Telegram, bot: BotProcess) -> None:
    telegram.fault("getMe", 401, "Unauthorized")
    with bot:
        assert bot.wait() == 2


def test_a_server_out_of_reach_at_the_start_is_waited_for(
    telegram: Telegram, bot: BotProcess
) -> None:
    telegram.fault("getMe", 502, "Bad Gateway")
    with bot:
        telegram.says(INES, "hello")
        telegram.wait_for_text(INES, "text hello")


def test_neither_token_nor_words_nor_figures_are_logged(
    telegram: Telegram, own_url: str, tmp_path: Path
) -> None:
    bot = BotProcess(
        telegram, own_url, tmp_path / "log", module=["tests.support.small_bot"], log_level="DEBUG"
    )
    telegram.fault("sendMessage", 500, "Internal Server Error")
    with bot:
        telegram.says(INES, "weight 61.234, feeling flat")
        telegram.says(INES, "bad")
        telegram.wait_for_text(INES, "flat")
        telegram.wait_for_text(INES, "sorry")
        assert bot.stop() == 0

    logged = bot.log.read_text()
    assert "started" in logged
    for secret in ("invented-token", "61.2", "flat", f"P{INES}"):
        assert secret not in logged
