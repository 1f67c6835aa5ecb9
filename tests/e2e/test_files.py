"""Files over the Bot API, both ways: morning pictures to the coach, a plan as a sheet and back."""

from __future__ import annotations

import io
from datetime import UTC, datetime
from pathlib import Path
from typing import Any

import pytest
from openpyxl import load_workbook
from openpyxl.worksheet.worksheet import Worksheet
from sqlmodel import Session, select

from bot.store.db import make_engine
from bot.store.migrate import upgrade_to_head
from bot.store.tables.traffic import OutboxRow
from bot.store.tables.week import PlanRow
from tests.support.chats import BotProcess, Telegram
from tests.support.pictures import BLUE, GREEN, RED, is_near, opened, picture
from tests.support.shifted_bot import ShiftedBot
from tests.support.weeks import in_peak_week

pytestmark = [pytest.mark.loopback, pytest.mark.soak, pytest.mark.timeout(120)]

COACH, ATHLETE = 101, 102
MORNING = datetime(2027, 5, 2, 5, 30, 5, tzinfo=UTC)


def prepared(database_url: str) -> None:
    engine = make_engine(database_url)
    upgrade_to_head(engine)
    in_peak_week(engine)
    with engine.begin() as connection:  # what was said while it was set up is not of this test
        connection.exec_driver_sql("UPDATE outbox SET status = 'dropped'")
    engine.dispose()


def plans(database_url: str) -> list[PlanRow]:
    engine = make_engine(database_url)
    with Session(engine, expire_on_commit=False) as session:
        found = list(session.exec(select(PlanRow).order_by("id")))
    engine.dispose()
    return found


def file_ids(result: Any, kind: str) -> list[str]:
    """What Telegram calls the files of a message, or of an album's messages."""
    messages = result if isinstance(result, list) else [result]
    files = [message[kind] for message in messages]
    return [(file[-1] if isinstance(file, list) else file)["file_id"] for file in files]


def test_an_album_goes_to_the_coach_clean_and_captioned_and_two_mornings_side_by_side(
    telegram: Telegram, own_url: str, tmp_path: Path
) -> None:
    prepared(own_url)
    with ShiftedBot(telegram, own_url, MORNING, tmp_path / "photos") as bot:
        telegram.wait_for_text(ATHLETE, "Good morning")
        telegram.says(ATHLETE, "61.1 6 3.5 on target fine")
        telegram.wait_for_text(ATHLETE, "Photos for Ravi, if you like")
        for number, colour in enumerate((RED, GREEN, BLUE)):
            telegram.sends_file(
                ATHLETE, picture(colour, with_metadata=True), album="a",
                caption="before coffee" if number == 0 else "",
            )  # fmt: skip
        telegram.wait_until(
            lambda: bool(telegram.calls(COACH, "sendMediaGroup")), "the album at the coach"
        )
        album = telegram.calls(COACH, "sendMediaGroup")[0]
        assert "P102, Sun 2 May, 7 days out: front, side, back" in str(album["fields"]["media"])
        sent = [telegram.downloads(name) for name in file_ids(album["result"], "photo")]
        assert len(sent) == 3 and not any(b"Invented Camera" in content for content in sent)
        assert all(len(opened(content).getexif()) == 0 for content in sent)

        bot.clock.put_forward_to(datetime(2027, 5, 3, 5, 30, 5, tzinfo=UTC))
        telegram.sends_file(ATHLETE, picture(BLUE), caption="front")
        telegram.wait_until(lambda: bool(telegram.calls(COACH, "sendPhoto")), "the late picture")
        telegram.says(COACH, "/compare")
        telegram.wait_for_text(COACH, "Whose photos")
        telegram.taps_label(COACH, "P102")
        telegram.wait_for_text(COACH, "Which morning on the left")
        telegram.taps_label(COACH, "First and latest")
        telegram.wait_until(lambda: len(telegram.calls(COACH, "sendPhoto")) == 2, "the pair")
        (name,) = file_ids(telegram.calls(COACH, "sendPhoto")[1]["result"], "photo")
        pair = opened(telegram.downloads(name))
        assert is_near(pair.getpixel((450, 800)), RED)
        assert is_near(pair.getpixel((1362, 800)), BLUE)
    assert telegram.refused() == []


def test_a_sheet_goes_out_is_edited_and_comes_back(telegram: Telegram, own_url: str) -> None:
    prepared(own_url)
    with ShiftedBot(telegram, own_url, MORNING):
        telegram.wait_for_text(ATHLETE, "Good morning")
        telegram.taps(COACH, "c:sheet:2:xlsx", 1)
        telegram.wait_until(lambda: bool(telegram.calls(COACH, "sendDocument")), "the sheet")
        (name,) = file_ids(telegram.calls(COACH, "sendDocument")[0]["result"], "document")
        book = load_workbook(io.BytesIO(telegram.downloads(name)))
        page = book.active
        assert isinstance(page, Worksheet)
        page["C8"] = "abc"
        out = io.BytesIO()
        book.save(out)
        telegram.sends_file(COACH, out.getvalue(), name="plan.xlsx")
        telegram.wait_for_text(COACH, 'C8: I can\'t read a number in "abc"')

        page["C8"] = 200
        out = io.BytesIO()
        book.save(out)
        telegram.sends_file(COACH, out.getvalue(), name="plan.xlsx")
        telegram.wait_for_text(COACH, "5 days out, carbs: 185 g → 200 g")
        assert len(plans(own_url)) == 1
        telegram.taps_label(COACH, "Use these changes")
        telegram.wait_for_text(COACH, "1 change is now set")
    assert [day["carb_g"] for day in plans(own_url)[1].days if day["days_out"] == 5] == [200]
    assert telegram.refused() == []


def test_a_file_that_is_underway_when_the_bot_is_killed_is_fetched_soon_after_the_next_start(
    telegram: Telegram, own_url: str, tmp_path: Path
) -> None:
    prepared(own_url)
    log = tmp_path / "bot.log"
    with BotProcess(telegram, own_url, log, photo_dir=str(tmp_path / "photos")) as bot:
        telegram.hold("getFile", "after")
        telegram.sends_file(COACH, b"Shopping;Eggs\n" * 10, name="list.csv")
        telegram.wait_for_held()
        bot.kill()
        telegram.release()
        bot.start()
        telegram.wait_for_text(COACH, "can't find a plan")
        bot.stop()
        assert "Shopping" not in log.read_text() and "list.csv" not in log.read_text()
    assert telegram.texts(COACH).count(telegram.texts(COACH)[-1]) == 1
    engine = make_engine(own_url)
    with Session(engine) as session:
        attached = session.exec(select(OutboxRow.attached)).all()
    engine.dispose()
    assert not any(attached)
