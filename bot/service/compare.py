"""Any two mornings side by side, pose by pose: for the coach, and for the athlete's own."""

from __future__ import annotations

from datetime import date

from sqlmodel import Session

from bot.context import Context
from bot.incoming import Incoming
from bot.messages import photos as words
from bot.outbox import Button, Buttons, say, send_pictures
from bot.service import photo_rows
from bot.service.people import get_person, profile_of
from bot.service.photo_rows import kept_photos, mornings_of, when
from bot.service.photos import day_in, send_morning
from bot.service.rights import athletes_seen_by
from bot.service.tapping import answer, rewrite
from bot.store.people import AthleteProfile, Person
from bot.store.photos import PhotoRow, Pose

MORNINGS_SHOWN = 16
IN_A_ROW = 2


def compare(session: Session, person: Person, _rest: str, context: Context) -> None:
    """/compare: whose mornings; where there is only one answer, which."""
    own = profile_of(session, person.id)
    choices = [] if own is None else [(own, words.mine_button(), "ph:cmp")]
    coached = [one for one in athletes_seen_by(session, person) if one.person_id != person.id]
    choices += [
        (one, get_person(session, one.person_id).first_name, f"c:cmp:{one.person_id}")
        for one in coached
        if len(mornings_of(session, one.person_id)) > 1
    ]
    if own is not None and len(choices) == 1 and not coached:
        text, buttons = _first_question(session, person, own, "ph:cmp")
        say(session, chat_id=person.chat_id, text=text, buttons=buttons, now=context.now)
        return
    rows = [Button(label, data) for _, label, data in choices]
    if not rows:
        say(session, chat_id=person.chat_id, text=words.no_athlete_with_two(), now=context.now)
        return
    say(
        session, chat_id=person.chat_id, text=words.compare_whom(), buttons=_in_rows(rows),
        now=context.now,
    )  # fmt: skip


def compare_own(
    session: Session, person: Person, arguments: list[str], incoming: Incoming, context: Context
) -> None:
    """Buttons "ph:cmp", "ph:cmp:DATE", "ph:cmp:DATE:DATE"."""
    profile = profile_of(session, person.id)
    assert profile is not None
    _step(session, person, profile, arguments[1:], "ph:cmp", incoming, context)


def compare_athlete(
    session: Session,
    coach: Person,
    profile: AthleteProfile,
    rest: list[str],
    incoming: Incoming,
    context: Context,
) -> None:
    """Buttons "c:cmp:ATHLETE" and with one date or two."""
    _step(session, coach, profile, rest, f"c:cmp:{profile.person_id}", incoming, context)


def show_photos(
    session: Session,
    coach: Person,
    profile: AthleteProfile,
    rest: list[str],
    incoming: Incoming,
    context: Context,
) -> None:
    """The card's button: the latest morning's pictures, and buttons for the others."""
    answer(session, incoming, context)
    name, own = get_person(session, profile.person_id).first_name, coach.id == profile.person_id
    days = mornings_of(session, profile.person_id)
    asked = day_in(rest)
    rows = kept_photos(session, profile.person_id, asked or (days[-1] if days else None))
    if not days or not rows:
        text = words.nothing_kept(name, own=own)
        say(session, chat_id=coach.chat_id, text=text, now=context.now)
        return
    send_morning(session, coach, profile, rows, context)
    if asked is not None:
        return
    buttons = _in_rows(
        [
            Button(
                when(session, profile.person_id, day),
                f"c:photos:{profile.person_id}:{day.isoformat()}",
            )
            for day in days[-MORNINGS_SHOWN:]
        ]
    )
    if len(days) > 1:
        buttons = [*buttons, [Button(words.compare_button(), f"c:cmp:{profile.person_id}")]]
    say(
        session, chat_id=coach.chat_id, text=words.mornings(name, own=own), buttons=buttons,
        now=context.now,
    )  # fmt: skip


def _step(
    session: Session,
    viewer: Person,
    profile: AthleteProfile,
    dates: list[str],
    prefix: str,
    incoming: Incoming,
    context: Context,
) -> None:
    """Ask for the one morning, then the other, then send the pictures."""
    answer(session, incoming, context)
    left, right = day_in(dates[:1]), day_in(dates[1:2])
    if left is None:
        text, buttons = _first_question(session, viewer, profile, prefix)
        say(session, chat_id=viewer.chat_id, text=text, buttons=buttons, now=context.now)
        return
    left_day = when(session, profile.person_id, left)
    if right is None:
        others = [day for day in mornings_of(session, profile.person_id) if day != left]
        buttons = _days(session, profile, others, f"{prefix}:{left.isoformat()}")
        rewrite(session, incoming, words.ask_right(left_day), context, buttons)
        return
    right_day = when(session, profile.person_id, right)
    rewrite(session, incoming, words.chosen(left_day, right_day), context)
    _send(session, viewer, profile, (left, left_day), (right, right_day), context)


def _first_question(
    session: Session, viewer: Person, profile: AthleteProfile, prefix: str
) -> tuple[str, Buttons]:
    days = mornings_of(session, profile.person_id)
    name, own = get_person(session, profile.person_id).first_name, viewer.id == profile.person_id
    if len(days) < 2:
        return words.two_needed(name, own=own), ()
    ends = f"{prefix}:{days[0].isoformat()}:{days[-1].isoformat()}"
    first = [Button(words.first_and_latest_button(), ends)]
    return words.ask_left(), [first, *_days(session, profile, days, prefix)]


def _days(session: Session, profile: AthleteProfile, days: list[date], prefix: str) -> Buttons:
    return _in_rows(
        [
            Button(when(session, profile.person_id, day), f"{prefix}:{day.isoformat()}")
            for day in days[-MORNINGS_SHOWN:]
        ]
    )


def _send(
    session: Session,
    viewer: Person,
    profile: AthleteProfile,
    left: tuple[date, str],
    right: tuple[date, str],
    context: Context,
) -> None:
    """One picture a pose that both mornings have, sent together."""
    athlete_id = profile.person_id
    before, after = (_by_pose(kept_photos(session, athlete_id, day)) for day, _ in (left, right))
    poses = [pose.value for pose in Pose if pose.value in before and pose.value in after]
    name = get_person(session, athlete_id).first_name
    if not poses:
        text = (
            words.no_pose_in_both()
            if viewer.id == athlete_id
            else words.no_pose_in_both_for_coach(name)
        )
        say(session, chat_id=viewer.chat_id, text=text, now=context.now)
        return
    send_pictures(
        session, chat_id=viewer.chat_id, now=context.now,
        pictures=[
            {"make": "pair", "left": before[pose].id, "right": after[pose].id} for pose in poses
        ],
        caption=words.compared(
            name, poses,
            *(
                words.morning_with_numbers(shown, photo_rows.numbers(session, profile, day))
                for day, shown in (left, right)
            ),
        ),
    )  # fmt: skip


def _by_pose(rows: list[PhotoRow]) -> dict[str, PhotoRow]:
    """The newest of each pose."""
    return {row.pose: row for row in sorted(rows, key=lambda row: row.id or 0)}


def _in_rows(buttons: list[Button]) -> list[list[Button]]:
    return [buttons[i : i + IN_A_ROW] for i in range(0, len(buttons), IN_A_ROW)]
