"""Numbers of the day itself: how long before the stage what is done. Most is the trade's habit."""

from __future__ import annotations

from engine.evidence.deciding import COMMON_PRACTICE, OWN_CHOICE
from engine.evidence.source import Number

WAKE_BEFORE_STAGE_MIN = Number(
    "up before the stage, at least", 300, "min", COMMON_PRACTICE,
    "two meals and the way",
)  # fmt: skip
WAKE_BEFORE_DUTY_MIN = Number(
    "up before the first appointment or the way, at least", 60, "min",
    COMMON_PRACTICE,
)  # fmt: skip
FIRST_MEAL_AFTER_MIN = Number("first meal after waking", 30, "min", COMMON_PRACTICE)
MEAL_GAP_LEAST_MIN = Number("meals two to three hours apart, from", 120, "min", COMMON_PRACTICE)
MEAL_GAP_MOST_MIN = Number("meals two to three hours apart, to", 180, "min", COMMON_PRACTICE)
MEAL_GAP_NEVER_UNDER_MIN = Number(
    "two meals are never closer than", 90, "min", OWN_CHOICE,
    "when a change of times squeezes the day",
)  # fmt: skip
LAST_MEAL_BEFORE_MIN = Number("last meal before the stage", 90, "min", COMMON_PRACTICE)
NO_MEAL_WITHIN_MIN = Number("no meal within so long of the stage", 60, "min", COMMON_PRACTICE)
LOOK_BEFORE_MIN = Number("look check before the stage", 120, "min", COMMON_PRACTICE)
LOOK_USELESS_MIN = Number("a look check later than this changes nothing", 75, "min", OWN_CHOICE)
LOOK_SOONEST_MIN = Number(
    "a look check earlier than this sees too little of the day", 240, "min",
    OWN_CHOICE,
)  # fmt: skip
SIPS_BEFORE_MIN = Number("from drinking as usual to sips", 180, "min", COMMON_PRACTICE)
SIPS_L = Number(
    "sips up to the stage, about", 0.5, "L", COMMON_PRACTICE,
    "over three hours: far under the 0.7-1.0 L an hour that kidneys clear, and no cut",
)  # fmt: skip
SUGAR_BEFORE_MIN = Number("quick sugar before the stage", 45, "min", COMMON_PRACTICE)
PUMP_BEFORE_MIN = Number("pump-up before the stage", 30, "min", COMMON_PRACTICE)
PUMP_LENGTH_MIN = Number(
    "length of the pump-up", 20, "min", COMMON_PRACTICE,
    "half effort, far from failure",
)  # fmt: skip
PUMP_AGAIN_MIN = Number(
    "classes closer than this need no second pump-up", 30, "min",
    OWN_CHOICE,
)  # fmt: skip
BETWEEN_CLASSES_MEAL_MIN = Number(
    "classes further apart than this leave room for a meal", 150, "min",
    COMMON_PRACTICE,
)  # fmt: skip
BETWEEN_CLASSES_FIRST_MIN = Number("first meal after a class", 30, "min", COMMON_PRACTICE)
TAN_LASTS_MIN = Number("a coat of tan with drying", 45, "min", COMMON_PRACTICE)
REGISTRATION_LASTS_MIN = Number("registration", 30, "min", COMMON_PRACTICE)
CLASS_LASTS_MIN = Number(
    "a class on stage, where only the order is known", 15, "min",
    COMMON_PRACTICE,
)  # fmt: skip
AFTER_STAGE_MIN = Number("first food and drink after the last class", 15, "min", COMMON_PRACTICE)
ROUND_TO_MIN = Number("times are given to the nearest", 5, "min", OWN_CHOICE)

# Something to drink in every hour that is not slept through. It is no cut and no flood: a glass an
# hour is far under the 0.7-1.0 L an hour that kidneys clear.
DRINK_GAP_MOST_MIN = Number("no longer than so without something to drink", 60, "min", OWN_CHOICE)
DRINK_L = Number("a glass, where people drink as usual", 0.25, "L", COMMON_PRACTICE)
BITE_GAP_MIN = Number(
    "classes further apart than this have a bite and a drink between", 60, "min",
    OWN_CHOICE,
)  # fmt: skip
BITE_AFTER_MIN = Number("the bite after a class where no meal fits", 15, "min", COMMON_PRACTICE)
