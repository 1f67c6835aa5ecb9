"""What the rules say that go by what the coach sees."""

from __future__ import annotations

from collections.abc import Callable

from bot.decision.reasons.words_told import Told


def _coach_sees_too_much(told: Told) -> str:
    if told.change_g < 0:
        return told.tr(
            "Your coach sees: {look}; you said fullness {fullness}. What your coach sees goes first, "
            "so eat {change} today."
        )
    return told.tr(
        "Your coach sees: {look}; you said fullness {fullness}. What your coach sees goes first. No "
        "extra carbs. Stay on plan."
    )


def _coach_sees_blur(told: Told) -> str:
    if told.change_g < 0:
        return told.tr(
            "Your coach sees blurred lines ({look}), and more is planned than there is room for: eat "
            "{change} today."
        )
    return told.tr("Your coach sees blurred lines ({look}). No extra carbs. Stay on plan.")


def _coach_sees_nothing_flat(told: Told) -> str:
    return told.tr(
        "You feel flat ({fullness}, I expected {expected}), but your coach sees: {look}. What your "
        "coach sees goes first. Stay on plan."
    )


def _coach_sees_flat(told: Told) -> str:
    if told.change_g > 0:
        return told.tr(
            "Your coach sees: {look}; you said fullness {fullness}. You're still sharp, so eat "
            "{change} today."
        )
    return told.tr(
        "Your coach sees: {look}; you said fullness {fullness}. More is not allowed today. Stay on "
        "plan."
    )


BY_COACHS_EYE: dict[str, Callable[[Told], str]] = {
    "coach-sees-spill": _coach_sees_too_much,
    "coach-sees-softening": _coach_sees_too_much,
    "coach-sees-flat-over-blur": lambda told: told.tr(
        "Your coach sees: {look}; you said fullness {fullness} and sharpness {sharpness}. The two "
        "don't agree, so nothing is moved. Stay on plan."
    ),
    "coach-sees-blur": _coach_sees_blur,
    "coach-sees-full": _coach_sees_nothing_flat,
    "coach-sees-on-course": _coach_sees_nothing_flat,
    "coach-sees-flat": _coach_sees_flat,
}
