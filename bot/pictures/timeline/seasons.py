"""A season at a glance: for who coaches the athlete from the card, for the athlete by a command."""

from __future__ import annotations

from datetime import date, timedelta
from typing import Any

from sqlmodel import Session, col, select

from bot.core.turn import Act, Document, OnAthlete, Turn
from bot.people.people import get_profile, local_date, name_of
from bot.people.telling import answer, say_to
from bot.pictures.drawn_later import DrawnLater
from bot.pictures.timeline import words
from bot.pictures.timeline.words import Season, SeasonEvent
from bot.store.tables.event import DebriefRow
from bot.store.tables.people import AthleteProfile, Person
from bot.store.tables.week import CheckInRow
from bot.week.weeks_of import WeekRows, weeks_of_one

PICTURE = DrawnLater("season", "season", Season)
#: How far back a season is looked at.
DAYS_BACK = 366


def of_athlete(turn: OnAthlete) -> None:
    """The card's button."""
    answer(turn)
    _send(turn, turn.person, turn.profile)


def own(turn: Act) -> None:
    """The athlete's command."""
    profile = get_profile(turn.session, turn.person.id)
    _send(turn, turn.person, profile)


def make_picture(turn: Turn, named: dict[str, Any]) -> Document | None:
    """The PNG; None for somebody who may not see this athlete any more."""
    season = PICTURE.values_in(turn, named)
    if season is None:
        return None
    # Matplotlib takes a second to load: whoever never asks for a picture never waits for it.
    from bot.pictures.timeline.drawn import season_png  # noqa: PLC0415

    return Document("season.png", season_png(season))


def season_of(session: Session, profile: AthleteProfile, today: date) -> Season | None:
    """The last year and what is set ahead; None where there is neither an event nor a weight."""
    since = today - timedelta(days=DAYS_BACK)
    query = (
        select(col(CheckInRow.date), col(CheckInRow.weight_kg))
        .where(
            CheckInRow.athlete_id == profile.person_id,
            CheckInRow.date >= since,
            col(CheckInRow.weight_kg).is_not(None),
        )
        .order_by(col(CheckInRow.date))
    )
    weights = tuple((day, kg) for day, kg in session.exec(query) if kg is not None)
    weeks = [week for week in weeks_of_one(session, profile.person_id) if week.day >= since]
    shown = [week for week in weeks if week.day >= today or week.mornings]
    if not weights and not shown:
        return None
    placings = _placings(session, profile.person_id)
    return Season(
        name=name_of(session, profile.person_id),
        weight_unit=profile.weight_unit,
        today=today,
        weights=weights,
        events=tuple(_event(week, profile, today, placings) for week in shown),
    )


def _event(
    week: WeekRows, profile: AthleteProfile, today: date, placings: dict[int, str]
) -> SeasonEvent:
    if week.day >= today:
        return SeasonEvent(kind=week.kind, day=week.day)
    weights = [day.weight_kg for day in week.days if day.weight_kg is not None]
    mass = profile.body_mass_kg
    return SeasonEvent(
        kind=week.kind,
        day=week.day,
        look=week.look,
        placing=placings.get(week.event_id, ""),
        weight_kg=weights[-1] if weights else None,
        load_per_kg=week.load_g / len(week.load) / mass if mass and week.load_g else None,
    )


def _placings(session: Session, athlete_id: int) -> dict[int, str]:
    query = select(DebriefRow.event_id, DebriefRow.placing).where(
        DebriefRow.athlete_id == athlete_id, DebriefRow.placing != ""
    )
    return {event: placing for event, placing in session.exec(query)}  # noqa: C416


def _send(turn: Turn, reader: Person, profile: AthleteProfile) -> None:
    season = season_of(turn.session, profile, local_date(profile, turn.context))
    if season is None:
        name = name_of(turn.session, profile.person_id)
        say_to(turn, reader, words.nothing_yet(name, self_coached=reader.id == profile.person_id))
        return
    PICTURE.send(turn, reader, profile, season, words.caption(season))
