"""What each rule says to the athlete: one plain sentence, in their units."""

from __future__ import annotations

from engine.decision.rules.rule import Told
from engine.evidence.deciding import FLAT_BY, FULL_FROM


def say_steady(told: Told) -> str:
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


def say_dropping(told: Told) -> str:
    """What to do about the dizziness itself is said with the complaint, before any target."""
    if told["under_band"]:
        cause = told.tr("You're lighter than expected ({weight}, {band_low} at least)")
    else:
        cause = told.tr("You felt dizzy") if told["dizzy"] else told.tr("You hardly slept")
    if told.change_g > 0:
        return told.tr("{cause}, so eat {change} today.", cause=cause, change=told.change)
    return told.tr("{cause}. Stay on plan today.", cause=cause)


def say_unwell_and_heavy(told: Told) -> str:
    first = told.tr("You felt dizzy") + "." if told["dizzy"] else told.tr("You hardly slept.")
    return (
        first
        + " "
        + told.tr(
            "You're heavier than expected ({weight}), so more carbs are not the answer. Stay on plan."
        )
    )


def say_gut(told: Told) -> str:
    if told.get("blurring"):
        if told.change_g < 0:
            return told.tr(
                "Your gut is struggling and the lines have blurred: eat {change} today. Smaller meals, "
                "more of them, only foods that have always sat well."
            )
        return told.tr(
            "Your gut is struggling and the lines have blurred: no extra carbs. Smaller meals, more of "
            "them, only foods that have always sat well."
        )
    if told.change_g < 0:
        return told.tr(
            "Your gut is struggling with the load: eat {change} today. Smaller meals, more of them, "
            "only foods that have always sat well."
        )
    return told.tr(
        "Your gut is struggling with the load: no extra carbs. Smaller meals, more of them, only foods "
        "that have always sat well."
    )


def say_spilled(told: Told) -> str:
    if told.change_g < 0:
        return told.tr(
            "The lines have blurred (sharpness {sharpness}) and you are full or heavy: that looks "
            "spilled over, or like water. Eat {change} today."
        )
    return told.tr(
        "The lines have blurred (sharpness {sharpness}) and you are full or heavy: that looks spilled "
        "over, or like water. No extra carbs today."
    )


def say_fuller(told: Told) -> str:
    if told.change_g < 0:
        return told.tr(
            "You're fuller ({fullness}) than this event asks for ({most} at most): eat {change} today."
        )
    return told.tr(
        "You're fuller ({fullness}) than this event asks for ({most} at most). No extra carbs today."
    )


def say_softening(told: Told) -> str:
    if told.change_g < 0:
        return told.tr(
            "You're full ({fullness}), a touch softer than before and on the heavy side: eat {change} "
            "today."
        )
    return told.tr(
        "You're full ({fullness}), a touch softer than before and on the heavy side. No extra carbs "
        "today."
    )


def say_flat_in_load(told: Told) -> str:
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


def say_ahead(told: Told) -> str:
    if told.change_g < 0:
        return told.tr(
            "You're fuller than expected already ({fullness}, I expected {expected}), with carbs still "
            "to come: eat {change} today."
        )
    return told.tr(
        "You're fuller than expected already ({fullness}, I expected {expected}). No extra carbs "
        "today."
    )


def say_over_usual(told: Told) -> str:
    if told.change_g < 0:
        return told.tr(
            "Fullness {fullness} (I expected {expected}) is fine, but this load is larger than most "
            "people need: eat {change} today."
        )
    return told.tr(
        "Fullness {fullness} (I expected {expected}) is fine, but this load is larger than most people "
        "need. No extra carbs today."
    )


def say_under_usual(told: Told) -> str:
    if told.change_g > 0:
        return told.tr(
            "Fullness {fullness} (I expected {expected}) and sharp, and this load is smaller than most "
            "people need: eat {change} today."
        )
    return told.tr(
        "Fullness {fullness} (I expected {expected}) and sharp. More is not allowed today. Stay on "
        "plan."
    )


def say_blurring(told: Told) -> str:
    if told.change_g < 0:
        return told.tr(
            "The lines have blurred (sharpness {sharpness}), and more is planned than there is room "
            "for: eat {change} today."
        )
    return told.tr(
        "The lines have blurred (sharpness {sharpness}). Usually that's salt, water, sleep or stress. "
        "No extra carbs. Stay on plan."
    )


def say_full_and_sharp(told: Told) -> str:
    if told["fullness"] < (told.get("full_from") or FULL_FROM.value):
        return told.tr(
            "On course (fullness {fullness}, I expected {expected}) and sharp ({sharpness}). Don't "
            "change anything."
        )
    return told.tr(
        "Full and sharp (fullness {fullness}, sharpness {sharpness}). That's the look. Don't change "
        "anything."
    )


def say_drink_too(told: Told) -> str:
    """After a sentence, with its space: that the water was short as well."""
    if not told.get("underdrunk"):
        return ""
    return " " + told.tr("You drank {water} of {target}: get back to that, spread over the day.")


def say_says_spilled(told: Told) -> str:
    if told.change_g < 0:
        return told.tr("You say you've spilled over, so eat {change} today.")
    return told.tr("You say you've spilled over. No extra carbs today.")


def say_coach_sees_too_much(told: Told) -> str:
    if told.change_g < 0:
        return told.tr(
            "Your coach sees: {look}; you said fullness {fullness}. What your coach sees goes first, "
            "so eat {change} today."
        )
    return told.tr(
        "Your coach sees: {look}; you said fullness {fullness}. What your coach sees goes first. No "
        "extra carbs. Stay on plan."
    )


def say_coach_sees_blur(told: Told) -> str:
    if told.change_g < 0:
        return told.tr(
            "Your coach sees blurred lines ({look}), and more is planned than there is room for: eat "
            "{change} today."
        )
    return told.tr("Your coach sees blurred lines ({look}). No extra carbs. Stay on plan.")


def say_coach_sees_nothing_flat(told: Told) -> str:
    return told.tr(
        "You feel flat ({fullness}, I expected {expected}), but your coach sees: {look}. What your "
        "coach sees goes first. Stay on plan."
    )


def say_coach_sees_flat(told: Told) -> str:
    if told.change_g > 0:
        return told.tr(
            "Your coach sees: {look}; you said fullness {fullness}. You're still sharp, so eat "
            "{change} today."
        )
    return told.tr(
        "Your coach sees: {look}; you said fullness {fullness}. More is not allowed today. Stay on "
        "plan."
    )
