"""What the rules say that go by what the coach sees."""

from __future__ import annotations

from engine.decision.rules.rule import Told


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
