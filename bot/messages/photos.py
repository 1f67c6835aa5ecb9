"""What athletes and coaches read around morning pictures."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from datetime import date

from bot import figures
from bot.languages import mark, tr, trn

POSES: Mapping[str, str] = {
    "front": mark("front"),
    "side": mark("side"),
    "back": mark("back"),
    "other": mark("other"),
}


def day(when: date, days_out: int | None) -> str:
    """ "Sun 2 May, 7 days out"."""
    if days_out is None or days_out < 0:
        return figures.short_day(when)
    return f"{figures.short_day(when)}, {_out(days_out)}"


def _out(days_out: int) -> str:
    if days_out == 0:
        return tr("event day")
    return trn("{number} day out", "{number} days out", days_out)


def poses(names: Sequence[str]) -> str:
    return ", ".join(tr(POSES[name]) for name in names)


# Asked for, and taken


def offer(coach: str, *, own: bool) -> str:
    if own:
        return tr("Pictures, if you like: front, side, back. Nothing depends on them.")
    return tr(
        "Pictures for {coach}, if you like: front, side, back. Nothing depends on them.",
        coach=coach,
    )


def kept(names: Sequence[str], when: str, coach: str, *, own: bool) -> str:
    sentence = tr("Kept for {when}: {poses}.", when=when, poses=poses(names))
    if own:
        return sentence
    return sentence + " " + tr("{coach} gets them with the morning's numbers.", coach=coach)


def how_kept(coach: str, days: int, *, own: bool) -> str:
    who = (
        tr("About pictures: only you can see them here.")
        if own
        else tr("About pictures: only you and {coach} can see them here.", coach=coach)
    )
    how = trn(
        "Place, time and device are taken out, nothing is worked out from them, and each is deleted "
        "after {number} day. /photos shows what is kept and deletes it; what was sent into a chat "
        "stays in that chat.",
        "Place, time and device are taken out, nothing is worked out from them, and each is deleted "
        "after {number} days. /photos shows what is kept and deletes it; what was sent into a chat "
        "stays in that chat.",
        days,
    )
    return f"{who} {how}"


REFUSED: Mapping[str, str] = {
    "too-large": mark(
        "That picture is larger than I can take. Please send it as a photo, not as a file."
    ),
    "no-picture": (
        mark(
            "I can't open that as a picture. Please send it as a photo rather than as a file, or as "
            "JPEG, PNG or WebP."
        )
    ),
    "damaged": mark("That picture is damaged, so I did not keep it. Please send it once more."),
}


def refused(why: str) -> str:
    return tr(REFUSED[why])


def could_not_fetch() -> str:
    return tr("I could not get that picture from Telegram. Please send it once more.")


def too_many(most: int) -> str:
    return tr(
        "That is more than {most} pictures for a day; I kept the first {most}. /photos shows them.",
        most=most,
    )


def not_kept_here() -> str:
    return tr("I don't keep pictures here. Your numbers in words are all I need.")


def athletes_only() -> str:
    return tr("I take pictures from athletes only.")


# Put right


def change_button(pose: str) -> str:
    return tr("Change {pose}", pose=tr(POSES[pose]))


def which_pose(pose: str) -> str:
    return tr("Kept as {pose}. What does it show?", pose=tr(POSES[pose]))


def pose_button(pose: str) -> str:
    return figures.capital(tr(POSES[pose]))


def drop_button() -> str:
    return tr("Delete it")


def back_button() -> str:
    return tr("Back")


def picture_gone() -> str:
    return tr("That picture is no longer there.")


def none_left(when: str) -> str:
    return tr("No pictures are kept for {when}.", when=when)


# To the coach


def caption(name: str, when: str, names: Sequence[str], numbers: str) -> str:
    return f"{name}, {when}: {poses(names)}\n{numbers}"


def no_numbers_yet() -> str:
    return tr("no numbers that morning so far")


def photos_button() -> str:
    return tr("Photos")


def nothing_kept(name: str, *, own: bool) -> str:
    return (
        tr("No pictures of you are kept.")
        if own
        else tr("No pictures of {name} are kept.", name=name)
    )


def mornings(name: str, *, own: bool) -> str:
    return (
        tr("Your mornings with pictures:")
        if own
        else tr("{name}'s mornings with pictures:", name=name)
    )


def no_athlete_with_two() -> str:
    return tr("It takes two mornings with pictures, and no athlete of yours has two yet.")


# Side by side


def compare_menu() -> str:
    return tr("Two mornings side by side")


def compare_button() -> str:
    return tr("Compare two mornings")


def compare_whom() -> str:
    return tr("Whose mornings?")


def mine_button() -> str:
    return tr("My own")


def first_and_latest_button() -> str:
    return tr("First and latest")


def ask_left() -> str:
    return tr("Which morning on the left?")


def ask_right(left: str) -> str:
    return tr("Left: {left}. And on the right?", left=left)


def chosen(left: str, right: str) -> str:
    return tr("{left}, beside {right}.", left=left, right=right)


def two_needed(name: str, *, own: bool) -> str:
    if own:
        return tr("It takes two mornings with pictures, and there are not two of yours yet.")
    return tr(
        "It takes two mornings with pictures, and there are not two of {name}'s yet.", name=name
    )


def no_pose_in_both() -> str:
    return tr(
        "Those two mornings have no pose in common. /photos lets you set what a picture shows."
    )


def no_pose_in_both_for_coach(name: str) -> str:
    return tr(
        "Those two mornings have no pose in common. {name} can set with /photos what each shows.",
        name=name,
    )


def compared(name: str, names: Sequence[str], left: str, right: str) -> str:
    on_the_left, on_the_right = tr("Left: {left}", left=left), tr("Right: {right}", right=right)
    return f"{name}: {poses(names)}\n{on_the_left}\n{on_the_right}"


def morning_with_numbers(when: str, numbers: str) -> str:
    return f"{when}: {numbers}"


# What an athlete has kept


def photos_menu() -> str:
    return tr("Your pictures: see, compare, delete")


def wipe_button() -> str:
    return tr("Delete all of them")


def ask_wipe(count: int) -> str:
    return trn(
        "Delete the {number} picture that is kept here? That cannot be undone. What was sent into a "
        "chat stays in that chat.",
        "Delete all {number} pictures that are kept here? That cannot be undone. What was sent into "
        "a chat stays in that chat.",
        count,
    )


def wipe_yes_button() -> str:
    return tr("Yes, delete them")


def keep_button() -> str:
    return tr("Keep them")


def wiped() -> str:
    return tr("Deleted. No pictures of you are kept here any more.")


def left() -> str:
    return tr("Kept as they were.")
