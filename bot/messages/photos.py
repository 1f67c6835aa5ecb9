"""What athletes and coaches read around morning pictures."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from datetime import date

from bot.messages import coach_figures as figures

POSES: Mapping[str, str] = {"front": "front", "side": "side", "back": "back", "other": "other"}


def day(when: date, days_out: int | None) -> str:
    """ "Sun 2 May, 7 days out"."""
    out = f", {figures.days_out(days_out)}" if days_out is not None and days_out >= 0 else ""
    return f"{figures.day(when)}{out}"


def poses(names: Sequence[str]) -> str:
    return ", ".join(POSES[name] for name in names)


# Asked for, and taken


def offer(coach: str, *, own: bool) -> str:
    whom = "" if own else f" for {coach}"
    return f"Pictures{whom}, if you like: front, side, back. Nothing depends on them."


def kept(names: Sequence[str], when: str, coach: str, *, own: bool) -> str:
    goes = "" if own else f" {coach} gets them with the morning's numbers."
    return f"Kept for {when}: {poses(names)}.{goes}"


def how_kept(coach: str, days: int, *, own: bool) -> str:
    who = "you" if own else f"you and {coach}"
    return (
        f"About pictures: only {who} can see them here. Place, time and device are taken out, nothing "
        f"is worked out from them, and each is deleted after {days} days. /photos shows what is kept "
        "and deletes it; what was sent into a chat stays in that chat."
    )


REFUSED: Mapping[str, str] = {
    "too-large": "That picture is larger than I can take. Please send it as a photo, not as a file.",
    "no-picture": (
        "I can't open that as a picture. Please send it as a photo rather than as a file, or as JPEG, "
        "PNG or WebP."
    ),
    "damaged": "That picture is damaged, so I did not keep it. Please send it once more.",
}


def refused(why: str) -> str:
    return REFUSED[why]


def could_not_fetch() -> str:
    return "I could not get that picture from Telegram. Please send it once more."


def too_many(most: int) -> str:
    return (
        f"That is more than {most} pictures for a day; I kept the first {most}. /photos shows them."
    )


def not_kept_here() -> str:
    return "I don't keep pictures here. Your numbers in words are all I need."


def athletes_only() -> str:
    return "I take pictures from athletes only."


# Put right


def change_button(pose: str) -> str:
    return f"Change {POSES[pose]}"


def which_pose(pose: str) -> str:
    return f"Kept as {POSES[pose]}. What does it show?"


def pose_button(pose: str) -> str:
    return POSES[pose].capitalize()


def drop_button() -> str:
    return "Delete it"


def back_button() -> str:
    return "Back"


def picture_gone() -> str:
    return "That picture is no longer there."


def none_left(when: str) -> str:
    return f"No pictures are kept for {when}."


# To the coach


def caption(name: str, when: str, names: Sequence[str], numbers: str) -> str:
    return f"{name}, {when}: {poses(names)}\n{numbers}"


def no_numbers_yet() -> str:
    return "no numbers that morning so far"


def photos_button() -> str:
    return "Photos"


def nothing_kept(name: str, *, own: bool) -> str:
    return "No pictures of you are kept." if own else f"No pictures of {name} are kept."


def mornings(name: str, *, own: bool) -> str:
    return "Your mornings with pictures:" if own else f"{name}'s mornings with pictures:"


def no_athlete_with_two() -> str:
    return "It takes two mornings with pictures, and no athlete of yours has two yet."


# Side by side


def compare_menu() -> str:
    return "Two mornings side by side"


def compare_button() -> str:
    return "Compare two mornings"


def compare_whom() -> str:
    return "Whose mornings?"


def mine_button() -> str:
    return "My own"


def first_and_latest_button() -> str:
    return "First and latest"


def ask_left() -> str:
    return "Which morning on the left?"


def ask_right(left: str) -> str:
    return f"Left: {left}. And on the right?"


def chosen(left: str, right: str) -> str:
    return f"{left}, beside {right}."


def two_needed(name: str, *, own: bool) -> str:
    whose = "yours" if own else f"{name}'s"
    return f"It takes two mornings with pictures, and there are not two of {whose} yet."


def no_pose_in_both() -> str:
    return "Those two mornings have no pose in common. /photos lets you set what a picture shows."


def no_pose_in_both_for_coach(name: str) -> str:
    return (
        f"Those two mornings have no pose in common. {name} can set with /photos what each shows."
    )


def compared(name: str, names: Sequence[str], left: str, right: str) -> str:
    return f"{name}: {poses(names)}\nLeft: {left}\nRight: {right}"


def morning_with_numbers(when: str, numbers: str) -> str:
    return f"{when}: {numbers}"


# What an athlete has kept


def photos_menu() -> str:
    return "Your pictures: see, compare, delete"


def wipe_button() -> str:
    return "Delete all of them"


def ask_wipe(count: int) -> str:
    return (
        f"Delete all {count} pictures that are kept here? That cannot be undone. What was sent into a "
        "chat stays in that chat."
    )


def wipe_yes_button() -> str:
    return "Yes, delete them"


def keep_button() -> str:
    return "Keep them"


def wiped() -> str:
    return "Deleted. No pictures of you are kept here any more."


def left() -> str:
    return "Kept as they were."
