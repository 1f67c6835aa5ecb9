"""The files that outbox rows name, by what they are made of."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from typing import Any

from sqlmodel import Session

from bot.context import Context, Document
from bot.languages import ENGLISH, speaking
from bot.service import calendar_file, photo_rows, picture, sheets

Maker = Callable[[Session, dict[str, Any], Context], Document | None]

MAKERS: Mapping[str, Maker] = {
    "plan-sheet": sheets.make_sheet,
    "photo": photo_rows.make_photo,
    "pair": photo_rows.make_pair,
    picture.MAKE: picture.make_picture,
    calendar_file.MAKE: calendar_file.make_calendar,
}


def document(session: Session, named: dict[str, Any], context: Context) -> Document | None:
    """The file, its words in the reader's language; None where what it was made of is gone."""
    with speaking(named.get("language", ENGLISH)):
        return MAKERS[named["make"]](session, named, context)
