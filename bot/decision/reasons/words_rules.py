"""What each rule says to the athlete: one plain sentence, in their units."""

from __future__ import annotations

from collections.abc import Callable

from bot.decision.reasons.words_seen import BY_COACHS_EYE
from bot.decision.reasons.words_told import Told
from bot.words.languages import tr
from engine.evidence.deciding import FLAT_BY, FULL_FROM


def _steady(told: Told) -> str:
    if told["weight_kg"] is None:
        return told.tr("Fullness {fullness} is in the range I expected. Stay on plan.")
    if told["above_band"]:
        return told.tr(
            "Fullness {fullness} is fine, but {weight} is heavier than expected ({band_high} at most). "
            "No extra carbs today. Stay on plan."
        )
    if told["under_band"]:
        return told.tr(
            "Fullness {fullness} is fine; {weight} is lighter than expected ({band_low} at least). "
            "Stay on plan."
        )
    # Decisions of the first table, which had no rule of its own for it.
    if told["fullness_short"] >= FLAT_BY.value:
        return told.tr(
            "You're flatter than expected ({fullness}, I expected {expected}), but not sharp enough "
            "for more carbs. Stay on plan."
        )
    if told["sharpness_fall"]:
        return told.tr(
            "Fullness {fullness} and {weight} are in the range I expected; the lines are a touch "
            "softer. Stay on plan."
        )
    return told.tr("Fullness {fullness} and {weight} are in the range I expected. Stay on plan.")


def _dropping(told: Told) -> str:
    """What to do about the dizziness itself is said with the complaint, before any target."""
    if told["under_band"]:
        cause = told.tr("You're lighter than expected ({weight}, {band_low} at least)")
    else:
        cause = tr("You felt dizzy") if told["dizzy"] else tr("You hardly slept")
    if told.change_g > 0:
        return tr("{cause}, so eat {change} today.", cause=cause, change=told.change)
    return tr("{cause}. Stay on plan today.", cause=cause)


def _unwell_and_heavy(told: Told) -> str:
    first = tr("You felt dizzy") + "." if told["dizzy"] else tr("You hardly slept.")
    return (
        first
        + " "
        + told.tr(
            "You're heavier than expected ({weight}), so more carbs are not the answer. Stay on plan."
        )
    )


def _gut(told: Told) -> str:
    if told.get("blurring"):
        if told.change_g < 0:
            return told.tr(
                "Your gut is struggling and the lines have blurred: eat {change} today. Smaller meals, "
                "more of them, only foods that have always sat well."
            )
        return tr(
            "Your gut is struggling and the lines have blurred: no extra carbs. Smaller meals, more of "
            "them, only foods that have always sat well."
        )
    if told.change_g < 0:
        return told.tr(
            "Your gut is struggling with the load: eat {change} today. Smaller meals, more of them, "
            "only foods that have always sat well."
        )
    return tr(
        "Your gut is struggling with the load: no extra carbs. Smaller meals, more of them, only foods "
        "that have always sat well."
    )


def _spilled(told: Told) -> str:
    if told.change_g < 0:
        return told.tr(
            "The lines have blurred (sharpness {sharpness}) and you are full or heavy: that looks "
            "spilled over, or like water. Eat {change} today."
        )
    return told.tr(
        "The lines have blurred (sharpness {sharpness}) and you are full or heavy: that looks spilled "
        "over, or like water. No extra carbs today."
    )


def _fuller(told: Told) -> str:
    if told.change_g < 0:
        return told.tr(
            "You're fuller ({fullness}) than this event asks for ({most} at most): eat {change} today."
        )
    return told.tr(
        "You're fuller ({fullness}) than this event asks for ({most} at most). No extra carbs today."
    )


def _softening(told: Told) -> str:
    if told.change_g < 0:
        return told.tr(
            "You're full ({fullness}), a touch softer than before and on the heavy side: eat {change} "
            "today."
        )
    return told.tr(
        "You're full ({fullness}), a touch softer than before and on the heavy side. No extra carbs "
        "today."
    )


def _flat_in_load(told: Told) -> str:
    if told.change_g > 0:
        return told.tr(
            "You're flatter than planned ({fullness}, I expected {expected}) and still sharp, so eat "
            "{change} today."
        )
    if told.get("raise_due") is False and told.get("felt_so_on_enough"):
        return told.tr(
            "You're flatter than planned ({fullness}, I expected {expected}) and still sharp. You "
            "answered much the same on a load that turned out to be enough, so no carbs are added. "
            "Stay on plan."
        )
    if told.get("raise_due") is False:
        return told.tr(
            "You're flatter than planned ({fullness}, I expected {expected}) and still sharp, but that "
            "is not sure enough to add carbs yet. Stay on plan."
        )
    return told.tr(
        "You're flatter than planned ({fullness}, I expected {expected}) and still sharp, but more is "
        "not allowed today. Stay on plan."
    )


def _ahead(told: Told) -> str:
    if told.change_g < 0:
        return told.tr(
            "You're fuller than expected already ({fullness}, I expected {expected}), with carbs still "
            "to come: eat {change} today."
        )
    return told.tr(
        "You're fuller than expected already ({fullness}, I expected {expected}). No extra carbs "
        "today."
    )


def _over_usual(told: Told) -> str:
    if told.change_g < 0:
        return told.tr(
            "Fullness {fullness} (I expected {expected}) is fine, but this load is larger than most "
            "people need: eat {change} today."
        )
    return told.tr(
        "Fullness {fullness} (I expected {expected}) is fine, but this load is larger than most people "
        "need. No extra carbs today."
    )


def _under_usual(told: Told) -> str:
    if told.change_g > 0:
        return told.tr(
            "Fullness {fullness} (I expected {expected}) and sharp, and this load is smaller than most "
            "people need: eat {change} today."
        )
    return told.tr(
        "Fullness {fullness} (I expected {expected}) and sharp. More is not allowed today. Stay on "
        "plan."
    )


def _blurring(told: Told) -> str:
    if told.change_g < 0:
        return told.tr(
            "The lines have blurred (sharpness {sharpness}), and more is planned than there is room "
            "for: eat {change} today."
        )
    return told.tr(
        "The lines have blurred (sharpness {sharpness}). Usually that's salt, water, sleep or stress. "
        "No extra carbs. Stay on plan."
    )


def _full_and_sharp(told: Told) -> str:
    if told["fullness"] < (told.get("full_from") or FULL_FROM.value):
        return told.tr(
            "On course (fullness {fullness}, I expected {expected}) and sharp ({sharpness}). Don't "
            "change anything."
        )
    return told.tr(
        "Full and sharp (fullness {fullness}, sharpness {sharpness}). That's the look. Don't change "
        "anything."
    )


def _drink_too(told: Told) -> str:
    """After a sentence, with its space: that the water was short as well."""
    if not told.get("underdrunk"):
        return ""
    return " " + told.tr("You drank {water} of {target}: get back to that, spread over the day.")


def _says_spilled(told: Told) -> str:
    if told.change_g < 0:
        return told.tr("You say you've spilled over, so eat {change} today.")
    return tr("You say you've spilled over. No extra carbs today.")


BY_RULE: dict[str, Callable[[Told], str]] = {
    **BY_COACHS_EYE,
    "gut-unsettled": _gut,
    "spilled-over": _spilled,
    "softening": _softening,
    "says-spilled": _says_spilled,
    "fuller-than-asked": _fuller,
    "flat-and-watery": lambda told: (
        told.tr(
            "Flat and blurred (fullness {fullness}, sharpness {sharpness}). Usually that's salt, "
            "water, sleep or stress, not carbs. Stay on plan."
        )
        + _drink_too(told)
    ),
    "blurring": _blurring,
    "flat-but-heavy": lambda told: (
        told.tr(
            "You're flatter than expected ({fullness}, I expected {expected}) but heavier than "
            "expected ({weight}, {band_high} at most). Stay on plan."
        )
        + _drink_too(told)
    ),
    "underdrunk": lambda told: told.tr(
        "You're flat, but you drank {water} of {target}, and carbs are stored with water. Get back to "
        "{target} first, spread over the day. No extra carbs today."
    ),
    "flat-in-load": _flat_in_load,
    "flat-and-softening": lambda told: told.tr(
        "You're flatter than expected ({fullness}, I expected {expected}), but the lines are "
        "softening, so no extra carbs. Stay on plan."
    ),
    "ahead-of-plan": _ahead,
    "load-over-usual": _over_usual,
    "load-under-usual": _under_usual,
    "full-and-sharp": _full_and_sharp,
    "unwell-and-heavy": _unwell_and_heavy,
    "dropping-too-fast": _dropping,
    "flat-before-load": lambda told: told.tr(
        "You're flatter than expected ({fullness}, I expected {expected}). That happens before the "
        "load. Stay on plan."
    ),
    "steady": _steady,
}
