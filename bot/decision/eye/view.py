"""A morning in the coach's eye: what was answered, what is seen, and the taps for it."""

from __future__ import annotations

from datetime import date, timedelta

from sqlmodel import Session, col, select

from bot.core.chat.cards import CARD
from bot.core.chat.outbox import Button, Buttons
from bot.core.turn import Turn
from bot.decision.buttons import EYE, EYE_BACK, EYE_LOOK, EYE_SHARPNESS
from bot.decision.eye import words
from bot.decision.signoff.signoff import morning_line
from bot.people.coach_settings import clock_for
from bot.people.people import local_date, name_of
from bot.store.base import id_of
from bot.store.tables.coach import CoachLookRow
from bot.store.tables.people import AthleteProfile, Person
from bot.store.tables.week import CheckInRow, DecisionRow
from bot.week.cases import look_rows
from bot.week.events import event_of_day
from bot.week.load import HISTORY_DAYS, checkin_row
from bot.words import common, figures
from engine.decision.kept import decision_from_dict
from engine.planning.behind.ratings import BothSaid, fullness_apart, sharpness_apart
from engine.values.checkin import CoachLook


def both_said(session: Session, athlete_id: int, coach_id: int) -> list[BothSaid]:
    """The athlete's mornings that this coach has looked at too, oldest first."""
    query = (
        select(CheckInRow, CoachLookRow)
        .where(
            CheckInRow.athlete_id == athlete_id,
            CoachLookRow.athlete_id == athlete_id,
            CoachLookRow.by_id == coach_id,
            col(CoachLookRow.date) == col(CheckInRow.date),
        )
        .order_by(col(CheckInRow.date))
    )
    pairs = session.exec(query).all()
    expected = expected_fullness(session, [row.id for row, _ in pairs])
    return [
        BothSaid(
            fullness=row.fullness,
            expected=expected.get(row.id),
            sharpness=row.sharpness,
            look=CoachLook(seen.look),
            seen_sharpness=seen.sharpness,
        )
        for row, seen in pairs
    ]


def compared_with_own(session: Session, profile: AthleteProfile, coach: Person) -> list[str]:
    """What can be said of it, a line each; nothing before a handful of mornings."""
    said = both_said(session, profile.person_id, id_of(coach))
    name = name_of(session, profile.person_id)
    full, sharp = fullness_apart(said), sharpness_apart(said)
    found = [words.fullness_compared(name, full)] if full is not None else []
    return [*found, *([words.sharpness_compared(name, sharp)] if sharp is not None else [])]


def expected_fullness(session: Session, checkins: list[int | None]) -> dict[int | None, int | None]:
    """The fullness that the newest decision on each check-in expected."""
    query = (
        select(DecisionRow.checkin_id, col(DecisionRow.decision))
        .where(col(DecisionRow.checkin_id).in_(checkins))
        .order_by(col(DecisionRow.id))
    )
    return {
        number: decision_from_dict(decision).expected_fullness
        for number, decision in session.exec(query)
    }


FURTHEST_OUT = 28  # days; a morning longer before an event is not called days out of it
DAY = timedelta(days=1)


def morning(
    turn: Turn, reader: Person, profile: AthleteProfile, day: date, *, came: str = ""
) -> tuple[str, Buttons]:
    """The text and buttons of one morning for one coach; `came`: what a tap just led to."""
    session, number = turn.session, profile.person_id
    name = name_of(session, number)
    row = checkin_row(session, number, day)
    rows = look_rows(session, number, day, day)
    mine = next((one for one in rows if one.by_id == reader.id), None)
    lines = [words.head(name, day_words(session, profile, day)), ""]
    if row is not None:
        expected = expected_fullness(session, [row.id]).get(row.id)
        lines.append(words.their_answers(name, morning_line(profile, row), expected))
    else:
        lines.append(words.no_answers(name))
    for one in rows:
        at = clock_for(session, reader, profile, one.at)
        lines.append(
            words.you_said(one.look, one.sharpness, at)
            if one is mine
            else words.other_said(name_of(session, one.by_id), one.look, one.sharpness, at)
        )
    if mine is not None:
        lines.append(words.sharpness_if_you_like())
    lines += ["", came] if came else []
    compared = compared_with_own(session, profile, reader)
    lines += ["", *compared] if compared else []
    buttons = looks(number, day, mine.look if mine is not None else "")
    if mine is not None:
        buttons = [*buttons, *_sharpness(number, day, mine.sharpness)]
    return "\n".join(lines), [*buttons, *_ways_on(turn, profile, day)]


def looks(athlete_id: int, day: date, chosen: str = "") -> Buttons:
    """A button for each look of that morning."""
    keys = [
        Button(words.look_button(look, chosen=look == chosen), EYE_LOOK(athlete_id, day, look))
        for look in CoachLook
    ]
    return [keys[:3], keys[3:]]


def day_words(session: Session, profile: AthleteProfile, day: date) -> str:
    """The day, with days out where an event lay ahead of it."""
    event = event_of_day(session, profile.person_id, day, FURTHEST_OUT * DAY)
    said = figures.short_day(day)
    return f"{said}, {figures.days_out((event.day - day).days)}" if event is not None else said


def _sharpness(athlete_id: int, day: date, chosen: int | None) -> Buttons:
    return [
        [
            Button(
                f"✓ {score}" if score == chosen else str(score),
                EYE_SHARPNESS(athlete_id, day, score),
            )
            for score in range(1, 6)
        ],
        [Button(common.take_back_button(), EYE_BACK(athlete_id, day))],
    ]


def _ways_on(turn: Turn, profile: AthleteProfile, day: date) -> Buttons:
    """Earlier and later mornings, and back to the card."""
    number, today = profile.person_id, local_date(profile, turn.context)
    aside = []
    if day - DAY >= today - HISTORY_DAYS * DAY:
        aside.append(Button(common.earlier_button(day - DAY), EYE(number, day - DAY)))
    if day < today:
        aside.append(Button(common.later_button(day + DAY), EYE(number, day + DAY)))
    return [aside, [Button(common.back_button(), CARD(number))]]
