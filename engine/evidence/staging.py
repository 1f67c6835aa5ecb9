"""Numbers of the day itself: how long before the stage what is done. Most is the trade's habit."""

from __future__ import annotations

from engine.evidence.deciding import COMMON_PRACTICE, OWN_CHOICE
from engine.evidence.source import Number

WAKE_BEFORE_STAGE_MIN = Number(
    name="up before the stage, at least", value=300, unit="min", source=COMMON_PRACTICE,
    note="two meals and the way",
)  # fmt: skip
WAKE_BEFORE_DUTY_MIN = Number(
    name="up before the first appointment or the way, at least", value=60, unit="min",
    source=COMMON_PRACTICE,
)  # fmt: skip
FIRST_MEAL_AFTER_MIN = Number(
    name="first meal after waking", value=30, unit="min", source=COMMON_PRACTICE
)
MEAL_GAP_LEAST_MIN = Number(
    name="meals two to three hours apart, from", value=120, unit="min", source=COMMON_PRACTICE
)
MEAL_GAP_MOST_MIN = Number(
    name="meals two to three hours apart, to", value=180, unit="min", source=COMMON_PRACTICE
)
MEAL_GAP_NEVER_UNDER_MIN = Number(
    name="two meals are never closer than", value=90, unit="min", source=OWN_CHOICE,
    note="when a change of times squeezes the day",
)  # fmt: skip
LAST_MEAL_BEFORE_MIN = Number(
    name="last meal before the stage", value=90, unit="min", source=COMMON_PRACTICE
)
NO_MEAL_WITHIN_MIN = Number(
    name="no meal within so long of the stage", value=60, unit="min", source=COMMON_PRACTICE
)
LOOK_BEFORE_MIN = Number(
    name="look check before the stage", value=120, unit="min", source=COMMON_PRACTICE
)
LOOK_USELESS_MIN = Number(
    name="a look check later than this changes nothing", value=75, unit="min", source=OWN_CHOICE
)
LOOK_SOONEST_MIN = Number(
    name="a look check earlier than this sees too little of the day", value=240, unit="min",
    source=OWN_CHOICE,
)  # fmt: skip
SIPS_BEFORE_MIN = Number(
    name="from drinking as usual to sips", value=180, unit="min", source=COMMON_PRACTICE
)
SIPS_L = Number(
    name="sips up to the stage, about", value=0.5, unit="L", source=COMMON_PRACTICE,
    note="over three hours: far under the 0.7-1.0 L an hour that kidneys clear, and no cut",
)  # fmt: skip
SUGAR_BEFORE_MIN = Number(
    name="quick sugar before the stage", value=45, unit="min", source=COMMON_PRACTICE
)
PUMP_BEFORE_MIN = Number(
    name="pump-up before the stage", value=30, unit="min", source=COMMON_PRACTICE
)
PUMP_LENGTH_MIN = Number(
    name="length of the pump-up", value=20, unit="min", source=COMMON_PRACTICE,
    note="half effort, far from failure",
)  # fmt: skip
PUMP_AGAIN_MIN = Number(
    name="classes closer than this need no second pump-up", value=30, unit="min",
    source=OWN_CHOICE,
)  # fmt: skip
BETWEEN_CLASSES_MEAL_MIN = Number(
    name="classes further apart than this leave room for a meal", value=150, unit="min",
    source=COMMON_PRACTICE,
)  # fmt: skip
BETWEEN_CLASSES_FIRST_MIN = Number(
    name="first meal after a class", value=30, unit="min", source=COMMON_PRACTICE
)
TAN_LASTS_MIN = Number(
    name="a coat of tan with drying", value=45, unit="min", source=COMMON_PRACTICE
)
REGISTRATION_LASTS_MIN = Number(name="registration", value=30, unit="min", source=COMMON_PRACTICE)
CLASS_LASTS_MIN = Number(
    name="a class on stage, where only the order is known", value=15, unit="min",
    source=COMMON_PRACTICE,
)  # fmt: skip
AFTER_STAGE_MIN = Number(
    name="first food and drink after the last class", value=15, unit="min", source=COMMON_PRACTICE
)
ROUND_TO_MIN = Number(name="times are given to the nearest", value=5, unit="min", source=OWN_CHOICE)

# Something to drink in every hour that is not slept through. It is no cut and no flood: a glass an
# hour is far under the 0.7-1.0 L an hour that kidneys clear.
DRINK_GAP_MOST_MIN = Number(
    name="no longer than so without something to drink", value=60, unit="min", source=OWN_CHOICE
)
DRINK_L = Number(
    name="a glass, where people drink as usual", value=0.25, unit="L", source=COMMON_PRACTICE
)
BITE_GAP_MIN = Number(
    name="classes further apart than this have a bite and a drink between", value=60, unit="min",
    source=OWN_CHOICE,
)  # fmt: skip
BITE_AFTER_MIN = Number(
    name="the bite after a class where no meal fits", value=15, unit="min", source=COMMON_PRACTICE
)
