"""What each rule says to the athlete: one plain sentence, in their units."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from typing import Any

from bot.words import figures
from bot.words.languages import tr
from bot.words.looks import seen_in
from engine.decision.decide import Decision
from engine.decision.kept import InShort
from engine.evidence.deciding import FLAT_BY, FULL_FROM


def change_in_words(change_g: float) -> str:
    if change_g == 0:
        return tr("no change")
    if change_g > 0:
        return tr("{grams:.0f} g more", grams=change_g)
    return tr("{grams:.0f} g less", grams=-change_g)


class Told:
    """A decision's facts, with the weights and waters as the athlete writes them."""

    def __init__(
        self,
        decision: Decision | InShort,
        weight_unit: str,
        volume_unit: str,
        *,
        stands_g: float | None = None,
    ) -> None:
        """`stands_g`: the change that is in force, where it is not the one that was decided."""
        self.facts: Mapping[str, Any] = decision.trace.facts
        self._weight_unit = weight_unit
        self._volume_unit = volume_unit
        self.change_g = decision.change_g if stands_g is None else stands_g

    @property
    def change(self) -> str:
        return change_in_words(self.change_g)

    def weight(self, key: str) -> str:
        return figures.weight(self.facts[key], self._weight_unit)

    def water(self, key: str) -> str:
        return figures.volume(self.facts[key], self._volume_unit)

    def __getitem__(self, key: str) -> Any:
        return self.facts[key]

    def get(self, key: str) -> Any:
        """A fact that decisions of an earlier table did not know; None there."""
        return self.facts.get(key)


def _steady(told: Told) -> str:
    if told["weight_kg"] is None:
        return tr(
            "Fullness {fullness} is in the range I expected. Stay on plan.",
            fullness=told["fullness"],
        )
    values = {"fullness": told["fullness"], "weight": told.weight("weight_kg")}
    if told["above_band"]:
        return tr(
            "Fullness {fullness} is fine, but {weight} is heavier than expected ({band_high} at most). "
            "No extra carbs today. Stay on plan.",
            **values,
            band_high=told.weight("band_high_kg"),
        )
    if told["under_band"]:
        return tr(
            "Fullness {fullness} is fine; {weight} is lighter than expected ({band_low} at least). "
            "Stay on plan.",
            **values,
            band_low=told.weight("band_low_kg"),
        )
    # Decisions of the first table, which had no rule of its own for it.
    if told["fullness_short"] >= FLAT_BY.value:
        return tr(
            "You're flatter than expected ({fullness}, I expected {expected}), but not sharp enough "
            "for more carbs. Stay on plan.",
            fullness=told["fullness"],
            expected=told["expected_fullness"],
        )
    if told["sharpness_fall"]:
        return tr(
            "Fullness {fullness} and {weight} are in the range I expected; the lines are a touch "
            "softer. Stay on plan.",
            **values,
        )
    return tr(
        "Fullness {fullness} and {weight} are in the range I expected. Stay on plan.", **values
    )


def _dropping(told: Told) -> str:
    """What to do about the dizziness itself is said with the complaint, before any target."""
    if told["under_band"]:
        cause = tr(
            "You're lighter than expected ({weight}, {band_low} at least)",
            weight=told.weight("weight_kg"),
            band_low=told.weight("band_low_kg"),
        )
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
        + tr(
            "You're heavier than expected ({weight}), so more carbs are not the answer. Stay on plan.",
            weight=told.weight("weight_kg"),
        )
    )


def _gut(told: Told) -> str:
    if told.get("blurring"):
        if told.change_g < 0:
            return tr(
                "Your gut is struggling and the lines have blurred: eat {change} today. Smaller meals, "
                "more of them, only foods that have always sat well.",
                change=told.change,
            )
        return tr(
            "Your gut is struggling and the lines have blurred: no extra carbs. Smaller meals, more of "
            "them, only foods that have always sat well."
        )
    if told.change_g < 0:
        return tr(
            "Your gut is struggling with the load: eat {change} today. Smaller meals, more of them, "
            "only foods that have always sat well.",
            change=told.change,
        )
    return tr(
        "Your gut is struggling with the load: no extra carbs. Smaller meals, more of them, only foods "
        "that have always sat well."
    )


def _spilled(told: Told) -> str:
    if told.change_g < 0:
        return tr(
            "The lines have blurred (sharpness {sharpness}) and you are full or heavy: that looks "
            "spilled over, or like water. Eat {change} today.",
            sharpness=told["sharpness"],
            change=told.change,
        )
    return tr(
        "The lines have blurred (sharpness {sharpness}) and you are full or heavy: that looks spilled "
        "over, or like water. No extra carbs today.",
        sharpness=told["sharpness"],
    )


def _fuller(told: Told) -> str:
    if told.change_g < 0:
        return tr(
            "You're fuller ({fullness}) than this event asks for ({most} at most): eat {change} today.",
            fullness=told["fullness"],
            most=told["fullness_most"],
            change=told.change,
        )
    return tr(
        "You're fuller ({fullness}) than this event asks for ({most} at most). No extra carbs today.",
        fullness=told["fullness"],
        most=told["fullness_most"],
    )


def _softening(told: Told) -> str:
    if told.change_g < 0:
        return tr(
            "You're full ({fullness}), a touch softer than before and on the heavy side: eat {change} "
            "today.",
            fullness=told["fullness"],
            change=told.change,
        )
    return tr(
        "You're full ({fullness}), a touch softer than before and on the heavy side. No extra carbs "
        "today.",
        fullness=told["fullness"],
    )


def _flat_in_load(told: Told) -> str:
    if told.change_g > 0:
        return tr(
            "You're flatter than planned ({fullness}, I expected {expected}) and still sharp, so eat "
            "{change} today.",
            fullness=told["fullness"],
            expected=told["expected_fullness"],
            change=told.change,
        )
    if told.get("raise_due") is False and told.get("felt_so_on_enough"):
        return tr(
            "You're flatter than planned ({fullness}, I expected {expected}) and still sharp. You "
            "answered much the same on a load that turned out to be enough, so no carbs are added. "
            "Stay on plan.",
            fullness=told["fullness"],
            expected=told["expected_fullness"],
        )
    if told.get("raise_due") is False:
        return tr(
            "You're flatter than planned ({fullness}, I expected {expected}) and still sharp, but that "
            "is not sure enough to add carbs yet. Stay on plan.",
            fullness=told["fullness"],
            expected=told["expected_fullness"],
        )
    return tr(
        "You're flatter than planned ({fullness}, I expected {expected}) and still sharp, but more is "
        "not allowed today. Stay on plan.",
        fullness=told["fullness"],
        expected=told["expected_fullness"],
    )


def _ahead(told: Told) -> str:
    if told.change_g < 0:
        return tr(
            "You're fuller than expected already ({fullness}, I expected {expected}), with carbs still "
            "to come: eat {change} today.",
            fullness=told["fullness"],
            expected=told["expected_fullness"],
            change=told.change,
        )
    return tr(
        "You're fuller than expected already ({fullness}, I expected {expected}). No extra carbs "
        "today.",
        fullness=told["fullness"],
        expected=told["expected_fullness"],
    )


def _over_usual(told: Told) -> str:
    values = {"fullness": told["fullness"], "expected": told["expected_fullness"]}
    if told.change_g < 0:
        return tr(
            "Fullness {fullness} (I expected {expected}) is fine, but this load is larger than most "
            "people need: eat {change} today.",
            **values,
            change=told.change,
        )
    return tr(
        "Fullness {fullness} (I expected {expected}) is fine, but this load is larger than most people "
        "need. No extra carbs today.",
        **values,
    )


def _under_usual(told: Told) -> str:
    values = {"fullness": told["fullness"], "expected": told["expected_fullness"]}
    if told.change_g > 0:
        return tr(
            "Fullness {fullness} (I expected {expected}) and sharp, and this load is smaller than most "
            "people need: eat {change} today.",
            **values,
            change=told.change,
        )
    return tr(
        "Fullness {fullness} (I expected {expected}) and sharp. More is not allowed today. Stay on "
        "plan.",
        **values,
    )


def _blurring(told: Told) -> str:
    if told.change_g < 0:
        return tr(
            "The lines have blurred (sharpness {sharpness}), and more is planned than there is room "
            "for: eat {change} today.",
            sharpness=told["sharpness"],
            change=told.change,
        )
    return tr(
        "The lines have blurred (sharpness {sharpness}). Usually that's salt, water, sleep or stress. "
        "No extra carbs. Stay on plan.",
        sharpness=told["sharpness"],
    )


def _coach_sees_blur(told: Told) -> str:
    if told.change_g < 0:
        return tr(
            "Your coach sees blurred lines ({look}), and more is planned than there is room for: eat "
            "{change} today.",
            look=seen_in(told.facts),
            change=told.change,
        )
    return tr(
        "Your coach sees blurred lines ({look}). No extra carbs. Stay on plan.",
        look=seen_in(told.facts),
    )


def _full_and_sharp(told: Told) -> str:
    values = {"fullness": told["fullness"], "sharpness": told["sharpness"]}
    if told["fullness"] < (told.get("full_from") or FULL_FROM.value):
        return tr(
            "On course (fullness {fullness}, I expected {expected}) and sharp ({sharpness}). Don't "
            "change anything.",
            **values,
            expected=told["expected_fullness"],
        )
    return tr(
        "Full and sharp (fullness {fullness}, sharpness {sharpness}). That's the look. Don't change "
        "anything.",
        **values,
    )


def _drink_too(told: Told) -> str:
    """After a sentence, with its space: that the water was short as well."""
    if not told.get("underdrunk"):
        return ""
    return " " + tr(
        "You drank {water} of {target}: get back to that, spread over the day.",
        water=told.water("water_l"),
        target=told.water("water_target_l"),
    )


def _coach_sees_too_much(told: Told) -> str:
    said = {"look": seen_in(told.facts), "fullness": told["fullness"]}
    if told.change_g < 0:
        return tr(
            "Your coach sees: {look}; you said fullness {fullness}. What your coach sees goes first, "
            "so eat {change} today.",
            **said,
            change=told.change,
        )
    return tr(
        "Your coach sees: {look}; you said fullness {fullness}. What your coach sees goes first. No "
        "extra carbs. Stay on plan.",
        **said,
    )


def _coach_sees_flat(told: Told) -> str:
    said = {"look": seen_in(told.facts), "fullness": told["fullness"]}
    if told.change_g > 0:
        return tr(
            "Your coach sees: {look}; you said fullness {fullness}. You're still sharp, so eat "
            "{change} today.",
            **said,
            change=told.change,
        )
    return tr(
        "Your coach sees: {look}; you said fullness {fullness}. More is not allowed today. Stay on "
        "plan.",
        **said,
    )


def _coach_sees_nothing_flat(told: Told) -> str:
    return tr(
        "You feel flat ({fullness}, I expected {expected}), but your coach sees: {look}. What your "
        "coach sees goes first. Stay on plan.",
        fullness=told["fullness"],
        expected=told["expected_fullness"],
        look=seen_in(told.facts),
    )


def _says_spilled(told: Told) -> str:
    if told.change_g < 0:
        return tr("You say you've spilled over, so eat {change} today.", change=told.change)
    return tr("You say you've spilled over. No extra carbs today.")


BY_RULE: dict[str, Callable[[Told], str]] = {
    "gut-unsettled": _gut,
    "coach-sees-spill": _coach_sees_too_much,
    "coach-sees-softening": _coach_sees_too_much,
    "coach-sees-flat-over-blur": lambda told: tr(
        "Your coach sees: {look}; you said fullness {fullness} and sharpness {sharpness}. The two "
        "don't agree, so nothing is moved. Stay on plan.",
        look=seen_in(told.facts),
        fullness=told["fullness"],
        sharpness=told["sharpness"],
    ),
    "coach-sees-blur": _coach_sees_blur,
    "coach-sees-full": _coach_sees_nothing_flat,
    "coach-sees-on-course": _coach_sees_nothing_flat,
    "coach-sees-flat": _coach_sees_flat,
    "spilled-over": _spilled,
    "softening": _softening,
    "says-spilled": _says_spilled,
    "fuller-than-asked": _fuller,
    "flat-and-watery": lambda told: (
        tr(
            "Flat and blurred (fullness {fullness}, sharpness {sharpness}). Usually that's salt, "
            "water, sleep or stress, not carbs. Stay on plan.",
            fullness=told["fullness"],
            sharpness=told["sharpness"],
        )
        + _drink_too(told)
    ),
    "blurring": _blurring,
    "flat-but-heavy": lambda told: (
        tr(
            "You're flatter than expected ({fullness}, I expected {expected}) but heavier than "
            "expected ({weight}, {band_high} at most). Stay on plan.",
            fullness=told["fullness"],
            expected=told["expected_fullness"],
            weight=told.weight("weight_kg"),
            band_high=told.weight("band_high_kg"),
        )
        + _drink_too(told)
    ),
    "underdrunk": lambda told: tr(
        "You're flat, but you drank {water} of {target}, and carbs are stored with water. Get back to "
        "{target} first, spread over the day. No extra carbs today.",
        water=told.water("water_l"),
        target=told.water("water_target_l"),
    ),
    "flat-in-load": _flat_in_load,
    "flat-and-softening": lambda told: tr(
        "You're flatter than expected ({fullness}, I expected {expected}), but the lines are "
        "softening, so no extra carbs. Stay on plan.",
        fullness=told["fullness"],
        expected=told["expected_fullness"],
    ),
    "ahead-of-plan": _ahead,
    "load-over-usual": _over_usual,
    "load-under-usual": _under_usual,
    "full-and-sharp": _full_and_sharp,
    "unwell-and-heavy": _unwell_and_heavy,
    "dropping-too-fast": _dropping,
    "flat-before-load": lambda told: tr(
        "You're flatter than expected ({fullness}, I expected {expected}). That happens before the "
        "load. Stay on plan.",
        fullness=told["fullness"],
        expected=told["expected_fullness"],
    ),
    "steady": _steady,
}
