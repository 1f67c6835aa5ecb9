"""Two or more peak weeks of an athlete side by side: for who coaches them, and for the athlete."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from datetime import timedelta
from functools import partial
from typing import Any

from bot.core.chat.buttons import CallbackData
from bot.core.chat.outbox import Button, Buttons, send_pictures
from bot.core.turn import Act, ChatTurn, Document, OnAthlete, Turn
from bot.people.people import get_profile, name_of
from bot.people.telling import answer, rewrite, say_to
from bot.pictures.buttons import OWN_WEEKS, WEEKS, Weeks
from bot.pictures.comparison import words
from bot.pictures.comparison.words import LETTERS, MOST, Compared, ComparedWeek
from bot.pictures.drawn_later import DrawnLater
from bot.pictures.photos.photo_rows import kept_photos
from bot.pictures.week_picture.picture import chart_day
from bot.store.base import id_of
from bot.store.tables.people import AthleteProfile, Person
from bot.store.tables.photos import PhotoRow, Pose
from bot.week.weeks_of import WeekRows, weeks_of_one
from engine.values.plan import PLAN_DAYS

PICTURE = DrawnLater("weeks-compared", "compared", Compared)
#: The newest weeks that can be chosen: a phone shows no more buttons at a glance.
OFFERED = 12


@dataclass(frozen=True, slots=True)
class Asked:
    """Who compares whose weeks, and what their buttons carry."""

    viewer: Person
    profile: AthleteProfile
    data: Callable[[str, str], CallbackData]
    weeks: tuple[WeekRows, ...]  # those with check-ins, oldest first

    @property
    def own(self) -> bool:
        return self.viewer.id == self.profile.person_id

    def button(self, label: str, view: str, weeks: Sequence[WeekRows]) -> Button:
        return Button(label, self.data(view, ".".join(str(w.event_id) for w in weeks)))


def of_athlete(turn: OnAthlete, pressed: Weeks) -> None:
    """The card's button, and those under what it shows."""
    data = partial(WEEKS, turn.profile.person_id)
    _step(turn, _asked(turn, turn.person, turn.profile, data), pressed)


def own(turn: Act) -> None:
    """The athlete's command."""
    own_tapped(turn, Weeks())


def own_tapped(turn: Act, pressed: Weeks) -> None:
    """The buttons under what it shows."""
    profile = get_profile(turn.session, turn.person.id)
    _step(turn, _asked(turn, turn.person, profile, OWN_WEEKS), pressed)


def make_picture(turn: Turn, named: dict[str, Any]) -> Document | None:
    """The PNG; None for somebody who may not see this athlete any more."""
    compared = PICTURE.values_in(turn, named)
    if compared is None:
        return None
    # Matplotlib takes a second to load: whoever never asks for a picture never waits for it.
    from bot.pictures.comparison.drawn import compared_png  # noqa: PLC0415

    return Document("weeks.png", compared_png(compared))


def _asked(
    turn: Turn, viewer: Person, profile: AthleteProfile, data: Callable[[str, str], CallbackData]
) -> Asked:
    weeks = weeks_of_one(turn.session, profile.person_id)
    told = tuple(week for week in weeks if week.mornings)[-OFFERED:]
    return Asked(viewer, profile, data, told)


def _step(turn: ChatTurn, asked: Asked, pressed: Weeks) -> None:
    if len(asked.weeks) < 2:
        answer(turn)
        name = name_of(turn.session, asked.profile.person_id)
        say_to(turn, asked.viewer, words.two_needed(name, self_coached=asked.own))
        return
    view, named = pressed.view, (pressed.events or "").split(".")
    if view is None:
        answer(turn)
        _begin(turn, asked)
        return
    chosen = tuple(week for week in asked.weeks if str(week.event_id) in named)
    if view == "pick":
        _pick(turn, asked, chosen)
        return
    if len(chosen) < 2:
        answer(turn, words.at_least_two())
        return
    chosen = chosen[-MOST:]
    if view in words.VIEWS:
        answer(turn)
        text, buttons = _table(turn, asked, chosen, view)
        rewrite(turn, text, buttons)
    elif view in _OTHERS:
        answer(turn)
        _OTHERS[view](turn, asked, chosen)
    elif view.startswith("p") and view[1:].isdigit():
        answer(turn)
        _send_photos(turn, asked, chosen, int(view[1:]))
    else:
        answer(turn, words.gone())


def _begin(turn: ChatTurn, asked: Asked) -> None:
    """Two weeks are compared at once; of more it is asked which."""
    if len(asked.weeks) == 2:
        text, buttons = _table(turn, asked, asked.weeks, "carbs")
    else:
        text, buttons = _question(turn, asked, asked.weeks[-2:])
    say_to(turn, asked.viewer, text, buttons=buttons)


def _pick(turn: ChatTurn, asked: Asked, chosen: Sequence[WeekRows]) -> None:
    if len(chosen) > MOST:
        answer(turn, words.most_at_once())
        return
    answer(turn)
    text, buttons = _question(turn, asked, chosen)
    rewrite(turn, text, buttons)


def _question(turn: Turn, asked: Asked, chosen: Sequence[WeekRows]) -> tuple[str, Buttons]:
    """Every week as a button that takes it in or out; the newest first."""
    name = name_of(turn.session, asked.profile.person_id)
    rows = []
    for week in reversed(asked.weeks):
        there = week in chosen
        after = [w for w in asked.weeks if (w in chosen) != (w is week)]
        label = words.week_button(week.kind, week.day, chosen=there)
        rows.append([asked.button(label, "pick", after)])
    rows.append([asked.button(words.compare_button(), "carbs", chosen)])
    return words.which(name, own=asked.own), rows


def _table(turn: Turn, asked: Asked, chosen: Sequence[WeekRows], view: str) -> tuple[str, Buttons]:
    views = [
        asked.button(words.view_button(one, shown=one == view), one, chosen) for one in words.VIEWS
    ]
    more = [asked.button(words.picture_button(), "picture", chosen)]
    if _days_with_photos(turn, asked, chosen):
        more.append(asked.button(words.photos_button(), "photos", chosen))
    rows = [views[:2], views[2:], more]
    if len(asked.weeks) > 2:
        rows.append([asked.button(words.other_weeks_button(), "pick", chosen)])
    return words.message(_compared(turn, asked, chosen), view), rows


def _compared(turn: Turn, asked: Asked, chosen: Sequence[WeekRows]) -> Compared:
    profile = asked.profile
    mass = profile.body_mass_kg
    return Compared(
        name=name_of(turn.session, profile.person_id),
        weight_unit=profile.weight_unit,
        volume_unit=profile.volume_unit,
        weeks=tuple(
            ComparedWeek(
                kind=week.kind,
                event_day=week.day,
                look=week.look,
                load_per_kg=week.load_g / len(week.load) / mass if mass and week.load_g else None,
                eaten_share=week.eaten_share,
                load_from=max((day.days_out for day in week.load), default=0),
                days=tuple(chart_day(day) for day in week.days),
            )
            for week in chosen
        ),
    )


def _send_picture(turn: ChatTurn, asked: Asked, chosen: Sequence[WeekRows]) -> None:
    compared = _compared(turn, asked, chosen)
    PICTURE.send(turn, asked.viewer, asked.profile, compared, words.caption(compared))


# Photos of the same morning


def _photos(
    turn: Turn, asked: Asked, chosen: Sequence[WeekRows]
) -> dict[tuple[int, str], dict[str, PhotoRow]]:
    """By days out and pose, the newest photo of each week that has one, by its letter."""
    found: dict[tuple[int, str], dict[str, PhotoRow]] = {}
    rows = kept_photos(turn.session, asked.profile.person_id)
    for letter, week in zip(LETTERS, chosen, strict=False):
        for row in sorted(rows, key=id_of):
            days_out = (week.day - row.date).days
            if days_out in PLAN_DAYS:
                found.setdefault((days_out, row.pose), {})[letter] = row
    return {key: rows for key, rows in found.items() if len(rows) > 1}


def _days_with_photos(turn: Turn, asked: Asked, chosen: Sequence[WeekRows]) -> list[int]:
    return sorted({days_out for days_out, _ in _photos(turn, asked, chosen)}, reverse=True)


def _ask_photos(turn: ChatTurn, asked: Asked, chosen: Sequence[WeekRows]) -> None:
    days = _days_with_photos(turn, asked, chosen)
    if not days:
        name = name_of(turn.session, asked.profile.person_id)
        say_to(turn, asked.viewer, words.no_photos(name, self_coached=asked.own))
        return
    if len(days) == 1:
        _send_photos(turn, asked, chosen, days[0])
        return
    buttons = [asked.button(words.spoken(out), f"p{out}", chosen) for out in days]
    rows = [buttons[:4], buttons[4:]]
    say_to(turn, asked.viewer, words.which_day(), buttons=rows)


def _send_photos(turn: ChatTurn, asked: Asked, chosen: Sequence[WeekRows], days_out: int) -> None:
    """A picture a pose, each week's photo of that morning beside the others."""
    photos = _photos(turn, asked, chosen)
    poses = [pose.value for pose in Pose if (days_out, pose.value) in photos]
    if not poses:
        name = name_of(turn.session, asked.profile.person_id)
        say_to(turn, asked.viewer, words.no_photos(name, self_coached=asked.own))
        return
    compared = _compared(turn, asked, chosen)
    date_of = {letter: week.event_day for letter, week in compared.lettered()}
    send_pictures(
        turn,
        chat_id=asked.viewer.chat_id,
        caption=words.photos_caption(days_out, compared.lettered()),
        pictures=[
            {
                "make": "photo-row",
                "photos": [row.id for row in photos[days_out, pose].values()],
                "labels": [
                    words.photo_label(letter, date_of[letter] - timedelta(days=days_out))
                    for letter in photos[days_out, pose]
                ],
            }
            for pose in poses
        ],
    )  # fmt: skip


_OTHERS: dict[str, Callable[[ChatTurn, Asked, Sequence[WeekRows]], None]] = {
    "picture": _send_picture,
    "photos": _ask_photos,
}
