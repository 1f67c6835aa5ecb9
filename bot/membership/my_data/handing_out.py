"""/mydata: everything that is kept of whoever asks, as files in one ZIP."""

from __future__ import annotations

import io
import zipfile
from datetime import date
from typing import Any
from zoneinfo import ZoneInfo

from sqlmodel import Session, col, select

from bot.core.chat.outbox import send_document
from bot.core.turn import Act, Document, Turn
from bot.membership.my_data import words
from bot.membership.my_data.document import as_json, document
from bot.membership.my_data.owned import Me
from bot.membership.my_data.schema import FILE
from bot.membership.my_data.sheets import as_sheets
from bot.people.coach_settings import zone_of_coach
from bot.people.people import athletes_of, profile_of
from bot.pictures.photos.photo_rows import make_photo
from bot.sheets.workbook import words as workbook_words
from bot.sheets.workbook.files import pages_for
from bot.sheets.workbook.writing import xlsx
from bot.store.base import id_of
from bot.store.tables.people import Person
from bot.store.tables.photos import PhotoRow

MAKE = "my-data"
#: Telegram takes 50 MB from a bot (https://core.telegram.org/bots/api#senddocument).
MOST_OF_PHOTOS = 40_000_000


def hand_out(turn: Act) -> None:
    """/mydata."""
    profile = profile_of(turn.session, turn.person.id)
    zone = zone_of_coach(turn.session, turn.person) or (profile.zone if profile else None) or "UTC"
    send_document(
turn,
chat_id=turn.person.chat_id,
document={
            "make": MAKE, "person": turn.person.id,
            "day": turn.now.astimezone(ZoneInfo(zone)).date().isoformat(),
        },
caption=words.caption(keep_days=turn.context.keep_traffic_days),
)  # fmt: skip


def make(turn: Turn, named: dict[str, Any]) -> Document | None:
    """The ZIP; None once the person is gone."""
    person = turn.session.get(Person, named["person"])
    if person is None:
        return None
    day = date.fromisoformat(named["day"])
    out = io.BytesIO()
    with zipfile.ZipFile(out, "w", zipfile.ZIP_DEFLATED) as archive:
        found = document(turn.session, me(turn.session, person), turn.now)
        archive.writestr("data.json", as_json(found))
        archive.writestr("schema.json", FILE.read_bytes())
        archive.writestr("data.xlsx", xlsx(as_sheets(found)))
        profile = profile_of(turn.session, person.id)
        if profile is not None:
            whose = workbook_words.whose_own()
            pages = pages_for(turn.session, person, [profile], whose=whose, day=day)
            archive.writestr("workbook.xlsx", xlsx(pages))
            _photos(turn, archive, profile.person_id)
    return Document(f"my-data-{day.isoformat()}.zip", out.getvalue())


def me(session: Session, person: Person) -> Me:
    """Whoever asks, and whom they coach now."""
    coached = frozenset(profile.person_id for profile in athletes_of(session, person))
    return Me(id_of(person), person.chat_id, coached)


def _photos(turn: Turn, archive: zipfile.ZipFile, athlete_id: int) -> None:
    """The newest pictures first, as many as a message can carry."""
    query = (
        select(PhotoRow)
        .where(PhotoRow.athlete_id == athlete_id, col(PhotoRow.kept_at).is_not(None))
        .order_by(col(PhotoRow.date).desc(), col(PhotoRow.id).desc())
    )
    size = 0
    for row in turn.session.exec(query):
        made = make_photo(turn, {"photo": row.id})
        if made is None:
            continue
        size += len(made.content)
        if size > MOST_OF_PHOTOS:
            return
        name = f"photos/{row.date.isoformat()}-{row.pose}-{row.id}.jpg"
        archive.writestr(name, made.content, zipfile.ZIP_STORED)
