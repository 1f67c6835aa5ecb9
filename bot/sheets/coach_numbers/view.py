"""/numbers: a coach's own numbers as a message, a picture and a sheet."""

from __future__ import annotations

from datetime import date
from typing import Any
from zoneinfo import ZoneInfo

from bot.core.chat.outbox import Button, send_document, send_pictures
from bot.core.turn import Act, Document, Turn
from bot.people.coach_settings import zone_of_coach
from bot.people.telling import answer, say_to
from bot.sheets.buttons import NUMBERS, Numbers
from bot.sheets.coach_numbers import words
from bot.sheets.format.making import FORMATS
from bot.sheets.workbook.writing import file_name, write
from bot.store.tables.people import Person
from bot.words import common

PICTURE, SHEET = "coach-numbers-picture", "coach-numbers-sheet"


def show(turn: Act) -> None:
    """The message with its buttons, then the picture."""
    from bot.sheets.coach_numbers.gather import numbers_of  # noqa: PLC0415 - pandas, at the first use

    found, _ = numbers_of(turn.session, turn.person, turn.now)
    if not found.weeks:
        say_to(turn, turn.person, words.nothing_yet())
        return
    buttons = [[Button(words.sheet_button(form), NUMBERS(form)) for form in FORMATS]]
    say_to(turn, turn.person, words.message(found), buttons=buttons)
    send_pictures(
        turn, chat_id=turn.person.chat_id, caption=words.caption(),
        pictures=[{"make": PICTURE, "reader": turn.person.id, "day": _today(turn)}],
    )  # fmt: skip


def tapped(turn: Act, pressed: Numbers) -> None:
    answer(turn)
    form = pressed.format
    if form not in FORMATS:
        say_to(turn, turn.person, common.already_answered())
        return
    send_document(
        turn, chat_id=turn.person.chat_id, caption=words.sheet_caption(),
        document={"make": SHEET, "format": form, "reader": turn.person.id, "day": _today(turn)},
    )  # fmt: skip


def make_picture(turn: Turn, named: dict[str, Any]) -> Document | None:
    """Drawn from what holds when it is sent: a coach who is none any more gets nothing."""
    from bot.sheets.coach_numbers.gather import numbers_of  # noqa: PLC0415
    from bot.sheets.coach_numbers.picture import numbers_png  # noqa: PLC0415 - matplotlib, likewise

    reader = turn.session.get(Person, named["reader"])
    if reader is None:
        return None
    found, _ = numbers_of(turn.session, reader, turn.now)
    if not found.weeks:
        return None
    day = date.fromisoformat(named["day"])
    return Document(f"numbers-{day.isoformat()}.png", numbers_png(found, day))


def make_sheet(turn: Turn, named: dict[str, Any]) -> Document | None:
    from bot.sheets.coach_numbers.gather import numbers_of  # noqa: PLC0415
    from bot.sheets.coach_numbers.sheet import sheets  # noqa: PLC0415

    reader = turn.session.get(Person, named["reader"])
    if reader is None:
        return None
    form = str(named["format"])
    content = write(sheets(*numbers_of(turn.session, reader, turn.now)), form)
    return Document(file_name("numbers", date.fromisoformat(named["day"]), form), content)


def _today(turn: Act) -> str:
    zone = zone_of_coach(turn.session, turn.person) or "UTC"
    return turn.now.astimezone(ZoneInfo(zone)).date().isoformat()
