"""Any two mornings side by side, pose by pose: for the coach, and for the athlete's own."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date
from functools import partial

from sqlmodel import Session

from bot.core.chat.buttons import CallbackData
from bot.core.chat.outbox import Button, Buttons, send_pictures
from bot.core.turn import Act, ChatTurn, OnAthlete, Turn
from bot.people.people import athletes_seen_by, get_profile, name_of, profile_of
from bot.people.telling import answer, rewrite, say_to
from bot.pictures.buttons import COMPARED, OWN_COMPARED, PHOTOS, OfMorning, TwoMornings
from bot.pictures.photos import photo_rows, words
from bot.pictures.photos.photo_rows import kept_photos, mornings_of, when
from bot.pictures.photos.photos import send_morning
from bot.store.base import id_of
from bot.store.tables.people import AthleteProfile, Person
from bot.store.tables.photos import PhotoRow, Pose

Days = Callable[..., CallbackData]

MORNINGS_SHOWN = 16
IN_A_ROW = 2


def compare(turn: Act) -> None:
    """/compare: whose mornings; where there is only one answer, which."""
    own = profile_of(turn.session, turn.person.id)
    choices = [] if own is None else [(own, words.mine_button(), OWN_COMPARED())]
    coached = [
        one
        for one in athletes_seen_by(turn.session, turn.person)
        if one.person_id != turn.person.id
    ]
    choices += [
        (one, name_of(turn.session, one.person_id), COMPARED(one.person_id))
        for one in coached
        if len(mornings_of(turn.session, one.person_id)) > 1
    ]
    if own is not None and len(choices) == 1 and not coached:
        text, buttons = _first_question(turn.session, turn.person, own, OWN_COMPARED)
        say_to(turn, turn.person, text, buttons=buttons)
        return
    rows = [Button(label, data) for _, label, data in choices]
    if not rows:
        say_to(turn, turn.person, words.no_athlete_with_two())
        return
    say_to(turn, turn.person, words.compare_whom(), buttons=_in_rows(rows))


def compare_own(turn: Act, pressed: TwoMornings) -> None:
    """The athlete's own: none, one or two of them named."""
    profile = get_profile(turn.session, turn.person.id)
    _step(turn, turn.person, profile, pressed, OWN_COMPARED)


def compare_athlete(turn: OnAthlete, pressed: TwoMornings) -> None:
    """The same on a card."""
    _step(turn, turn.person, turn.profile, pressed, partial(COMPARED, turn.profile.person_id))


def show_photos(turn: OnAthlete, pressed: OfMorning) -> None:
    """The card's button: the latest morning's pictures, and buttons for the others."""
    answer(turn)
    name, own = name_of(turn.session, turn.profile.person_id), turn.self_coached
    days = mornings_of(turn.session, turn.profile.person_id)
    asked = pressed.day
    rows = kept_photos(turn.session, turn.profile.person_id, asked or (days[-1] if days else None))
    if not days or not rows:
        text = words.nothing_kept(name, self_coached=own)
        say_to(turn, turn.person, text)
        return
    send_morning(turn, turn.person, turn.profile, rows)
    if asked is not None:
        return
    number = turn.profile.person_id
    buttons = _days(turn.session, turn.profile, days, partial(PHOTOS, number))
    if len(days) > 1:
        buttons = [*buttons, [Button(words.compare_button(), COMPARED(number))]]
    say_to(turn, turn.person, words.mornings(name, self_coached=own), buttons=buttons)


def _step(
    turn: ChatTurn, viewer: Person, profile: AthleteProfile, pressed: TwoMornings, carrying: Days
) -> None:
    """Ask for the one morning, then the other, then send the pictures."""
    answer(turn)
    left, right = pressed
    if left is None:
        text, buttons = _first_question(turn.session, viewer, profile, carrying)
        say_to(turn, viewer, text, buttons=buttons)
        return
    left_day = when(turn.session, profile.person_id, left)
    if right is None:
        others = [day for day in mornings_of(turn.session, profile.person_id) if day != left]
        buttons = _days(turn.session, profile, others, partial(carrying, left))
        rewrite(turn, words.ask_right(left_day), buttons)
        return
    right_day = when(turn.session, profile.person_id, right)
    rewrite(turn, words.chosen(left_day, right_day))
    _send(turn, viewer, profile, (left, left_day), (right, right_day))


def _first_question(
    session: Session, viewer: Person, profile: AthleteProfile, carrying: Days
) -> tuple[str, Buttons]:
    days = mornings_of(session, profile.person_id)
    name, own = name_of(session, profile.person_id), viewer.id == profile.person_id
    if len(days) < 2:
        return words.two_needed(name, self_coached=own), ()
    ends = carrying(days[0], days[-1])
    first = [Button(words.first_and_latest_button(), ends)]
    return words.ask_left(), [first, *_days(session, profile, days, carrying)]


def _days(session: Session, profile: AthleteProfile, days: list[date], carrying: Days) -> Buttons:
    return _in_rows(
        [
            Button(when(session, profile.person_id, day), carrying(day))
            for day in days[-MORNINGS_SHOWN:]
        ]
    )


def _send(
    turn: Turn,
    viewer: Person,
    profile: AthleteProfile,
    left: tuple[date, str],
    right: tuple[date, str],
) -> None:
    """One picture a pose that both mornings have, sent together."""
    athlete_id = profile.person_id
    before, after = (
        _by_pose(kept_photos(turn.session, athlete_id, day)) for day, _ in (left, right)
    )
    poses = [pose.value for pose in Pose if pose.value in before and pose.value in after]
    name = name_of(turn.session, athlete_id)
    if not poses:
        text = (
            words.no_pose_in_both()
            if viewer.id == athlete_id
            else words.no_pose_in_both_for_coach(name)
        )
        say_to(turn, viewer, text)
        return
    send_pictures(
        turn,
        chat_id=viewer.chat_id,
        pictures=[
            {"make": "pair", "left": before[pose].id, "right": after[pose].id} for pose in poses
        ],
        caption=words.compared(
            name, poses,
            *(
                words.morning_with_numbers(shown, photo_rows.numbers(turn.session, profile, day))
                for day, shown in (left, right)
            ),
        ),
    )  # fmt: skip


def _by_pose(rows: list[PhotoRow]) -> dict[str, PhotoRow]:
    """The newest of each pose."""
    return {row.pose: row for row in sorted(rows, key=id_of)}


def _in_rows(buttons: list[Button]) -> list[list[Button]]:
    return [buttons[i : i + IN_A_ROW] for i in range(0, len(buttons), IN_A_ROW)]
