"""A workbook asked for in the chat: by athletes of their own weeks, by coaches of one or of all."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date
from typing import Any
from zoneinfo import ZoneInfo

from sqlmodel import Session, select

from bot.core.chat.cards import FILES, HANDOUT, IMPORTS, InFormat
from bot.core.chat.outbox import Button, send_document
from bot.core.garbage import unsearched
from bot.core.turn import Act, Document, OnAthlete, Turn
from bot.people.coach_settings import zone_of_coach
from bot.people.people import athletes_of, name_of, own_athlete, profile_of
from bot.people.telling import answer, say_to
from bot.sheets.buttons import OWN_FILES, OwnFiles, Whose
from bot.sheets.format.making import FORMATS
from bot.sheets.workbook import words
from bot.sheets.workbook.writing import Page, file_name, pages_of, write
from bot.store.base import id_of
from bot.store.tables.people import AthleteProfile, AthleteStatus, Person
from bot.store.tables.week import CheckInRow, EventRow
from bot.words import common

MAKE = "workbook"


def show(turn: Act) -> None:
    """/files: what there is for this person, as buttons."""
    profile = profile_of(turn.session, turn.person.id)
    coached = athletes_of(turn.session, turn.person)
    if profile is None and not coached:
        say_to(turn, turn.person, words.nobody())
        return
    if profile is not None:
        own = [Button(words.format_button(form), OWN_FILES(Whose.OWN, form)) for form in FORMATS]
        say_to(turn, turn.person, words.ask_own(), buttons=[own])
    if coached and [one.person_id for one in coached] != [turn.person.id]:
        every = [[Button(words.all_button(form), OWN_FILES(Whose.ALL, form))] for form in FORMATS]
        say_to(turn, turn.person, words.ask_all(), buttons=every)


def tapped(turn: Act, pressed: OwnFiles) -> None:
    """One's own weeks, or those of everybody whom one coaches."""
    answer(turn)
    whose, form = pressed
    profile, coached = (
        profile_of(turn.session, turn.person.id),
        athletes_of(turn.session, turn.person),
    )
    if form not in FORMATS:
        say_to(turn, turn.person, common.already_answered())
    elif whose is Whose.OWN and profile is not None:
        _send(turn, [profile], form, words.caption_own())
    elif whose is Whose.ALL and coached:
        _send(turn, coached, form, words.caption_all(len(coached)), whose=Whose.ALL)
    else:
        say_to(turn, turn.person, words.nobody())


def on_card(turn: OnAthlete, pressed: InFormat) -> None:
    """The choice of formats; with one, the file."""
    answer(turn)
    name, number = name_of(turn.session, turn.profile.person_id), turn.profile.person_id
    own = number == turn.person.id
    form = pressed.format
    if form not in FORMATS:
        forms = [Button(words.format_button(form), FILES(number, form)) for form in FORMATS]
        others = [
            Button(common.handout_button(), HANDOUT(number)),
            Button(common.past_weeks_button(), IMPORTS(number)),
        ]
        text = words.ask_own() if own else words.ask_athlete(name)
        say_to(turn, turn.person, text, buttons=[forms, others])
        return
    _send(turn, [turn.profile], form, words.caption_own() if own else words.caption_athlete(name))


def make(turn: Turn, named: dict[str, Any]) -> Document | None:
    """The file; None for a reader who may not see it any more."""
    reader = turn.session.get(Person, named["reader"])
    if reader is None:
        return None
    if named["athlete"] is None:
        profiles = athletes_of(turn.session, reader)
        whose, name = words.whose_all(reader.first_name), words.FILE
    else:
        profile = _may_see(turn.session, reader, named["athlete"])
        profiles = [profile] if profile is not None else []
        name = name_of(turn.session, named["athlete"])
        own = reader.id == named["athlete"]
        whose = words.whose_own() if own else words.whose_athlete(name)
    if not profiles:
        return None
    day = date.fromisoformat(named["day"])
    form = str(named["format"])
    pages = pages_for(turn.session, reader, profiles, whose=whose, day=day)
    return Document(file_name(name, day, form), write(pages, form))


def pages_for(
    session: Session, reader: Person, profiles: Sequence[AthleteProfile], *, whose: str, day: date
) -> list[Page]:
    """The sheets about these athletes as this reader may see them."""
    from bot.sheets.workbook.gather import frames_of  # noqa: PLC0415 - pandas takes half a second to load

    # An athlete whom somebody else coaches does not read what that coach keeps for themselves.
    to_coach = any(
        profile.person_id != reader.id
        or (profile.coach_id == reader.id and profile.status != AthleteStatus.ENDED)
        for profile in profiles
    )
    with unsearched():
        return pages_of(
            frames_of(session, profiles, reader_id=id_of(reader)), whose=whose,
            made_on=words.made_on(day), across=len(profiles) > 1, to_coach=to_coach,
        )  # fmt: skip


def _send(
    turn: Act, profiles: Sequence[AthleteProfile], form: str, caption: str, whose: str = ""
) -> None:
    if not _anything(turn.session, profiles):
        say_to(turn, turn.person, words.nothing_yet())
        return
    zone = zone_of_coach(turn.session, turn.person) or profiles[0].zone or "UTC"
    send_document(
        turn,
        chat_id=turn.person.chat_id,
        caption=caption,
        document={
            "make": MAKE, "format": form, "reader": turn.person.id,
            "athlete": None if whose is Whose.ALL else profiles[0].person_id,
            "day": turn.now.astimezone(ZoneInfo(zone)).date().isoformat(),
        },
    )  # fmt: skip


def _anything(session: Session, profiles: Sequence[AthleteProfile]) -> bool:
    for profile in profiles:
        for kept in (CheckInRow, EventRow):
            if session.exec(select(kept.id).where(kept.athlete_id == profile.person_id)).first():
                return True
    return False


def _may_see(session: Session, reader: Person, athlete_id: int) -> AthleteProfile | None:
    if reader.id == athlete_id:
        return profile_of(session, athlete_id)
    return own_athlete(session, reader, athlete_id)
