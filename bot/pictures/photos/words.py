"""What athletes and coaches read around morning pictures."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date

from bot.words import figures
from bot.words.languages import Sentence, SentenceAbout, SentenceBy, SentenceOn, mark, tr, trn

pose_name = SentenceBy(
    {"front": mark("front"), "side": mark("side"), "back": mark("back"), "other": mark("other")}
)


def day(when: date, days_out: int | None) -> str:
    """ "Sun 2 May, 7 days out"."""
    if days_out is None or days_out < 0:
        return figures.short_day(when)
    return f"{figures.short_day(when)}, {figures.days_out(days_out)}"


def poses(names: Sequence[str]) -> str:
    return ", ".join(pose_name(name) for name in names)


# Asked for, and taken


def offer(coach: str, *, own: bool) -> str:
    if own:
        return tr("Photos, if you like: front, side, back. You can skip them.")
    return tr("Photos for {coach}, if you like: front, side, back. You can skip them.", coach=coach)


def kept(names: Sequence[str], when: str, coach: str, *, own: bool) -> str:
    sentence = tr("Saved for {when}: {poses}.", when=when, poses=poses(names))
    if own:
        return sentence
    return sentence + " " + tr("{coach} gets them with your check-in.", coach=coach)


def how_kept(coach: str, days: int, *, own: bool) -> str:
    who = (
        tr("About your photos: only you can see them here.")
        if own
        else tr("About your photos: only you and {coach} can see them here.", coach=coach)
    )
    how = trn(
        "I remove place, time and device from each photo, calculate nothing from it, and "
        "delete it after {number} day. /photos shows and deletes what is saved; what was sent "
        "into a chat stays in that chat.",
        "I remove place, time and device from each photo, calculate nothing from it, and "
        "delete it after {number} days. /photos shows and deletes what is saved; what was sent "
        "into a chat stays in that chat.",
        days,
    )
    return f"{who} {how}"


refused = SentenceBy(
    {
        "too-large": mark("That photo is too large. Please send it as a photo, not as a file."),
        "no-picture": (
            mark(
                "I can't open that as a photo. Please send it as a photo rather than as a file, or "
                "as JPEG, PNG or WebP."
            )
        ),
        "damaged": mark("That photo is damaged, so I did not save it. Please send it again."),
    }
)


could_not_fetch = Sentence("I could not get that photo from Telegram. Please send it again.")
not_kept_here = Sentence("I don't save photos here. Please type your check-in instead.")
athletes_only = Sentence("I take photos from athletes only.")


too_many = SentenceOn(
    "That is more than {most} photos for one day; I saved the first {most}. /photos shows them."
)


# Put right


change_button = SentenceOn("Change {pose}", pose_name)
which_pose = SentenceOn("Saved as {pose}. What does it show?", pose_name)


def pose_button(pose: str) -> str:
    return figures.capital(pose_name(pose))


drop_button = Sentence("Delete it")
picture_gone = Sentence("That photo is no longer there.")
none_left = SentenceOn("No photos are saved for {when}.")


# To the coach


def caption(name: str, when: str, names: Sequence[str], numbers: str) -> str:
    return f"{name}, {when}: {poses(names)}\n{numbers}"


no_numbers_yet = Sentence("no check-in that morning so far")
photos_button = Sentence("Photos")
no_athlete_with_two = Sentence(
    "That needs two mornings with photos, and none of your athletes has two yet."
)


nothing_kept = SentenceAbout("No photos of you are saved.", "No photos of {name} are saved.")
mornings = SentenceAbout("Your mornings with photos:", "{name}'s mornings with photos:")


# Side by side


compare_menu = Sentence("Two mornings side by side")
compare_button = Sentence("Compare two mornings")
compare_whom = Sentence("Whose photos?")
mine_button = Sentence("My own")
first_and_latest_button = Sentence("First and latest")
ask_left = Sentence("Which morning on the left?")
no_pose_in_both = Sentence(
    "Those two mornings have no pose in common. Use /photos to set what each photo shows."
)
ask_right = SentenceOn("Left: {left}. And on the right?")


def chosen(left: str, right: str) -> str:
    return tr("{left} and {right}.", left=left, right=right)


two_needed = SentenceAbout(
    "That needs two mornings with photos, and you don't have two yet.",
    "That needs two mornings with photos, and {name} does not have two yet.",
)
no_pose_in_both_for_coach = SentenceOn(
    "Those two mornings have no pose in common. {name} can set with /photos what each photo shows."
)


def compared(name: str, names: Sequence[str], left: str, right: str) -> str:
    on_the_left, on_the_right = tr("Left: {left}", left=left), tr("Right: {right}", right=right)
    return f"{name}: {poses(names)}\n{on_the_left}\n{on_the_right}"


def morning_with_numbers(when: str, numbers: str) -> str:
    return f"{when}: {numbers}"


# What an athlete has kept


photos_menu = Sentence("Your photos: see, compare, delete")
wipe_button = Sentence("Delete all of them")

wipe_yes_button = Sentence("Yes, delete them")
wiped = Sentence("Deleted. No photos of you are saved here any more.")


def ask_wipe(count: int) -> str:
    return trn(
        "Delete the {number} photo saved here? This can't be undone. What was sent into a chat "
        "stays in that chat.",
        "Delete all {number} photos saved here? This can't be undone. What was sent into a "
        "chat stays in that chat.",
        count,
    )
