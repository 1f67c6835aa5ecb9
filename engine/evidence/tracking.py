"""The figures of the tracker: how people differ, how days and answers scatter."""

from __future__ import annotations

from engine.evidence.deciding import CHEUVRONT_2004
from engine.evidence.source import Number, Provenance, Source

KANELLAKIS_2023 = Source(
    "kanellakis-2023",
    "Kanellakis et al. 2023, Am J Hum Biol 35:e23951: +0.450 kg at menstruation",
    Provenance.SEEN,
)
OURS = Source("own-choice-tracking", "our own choice, wide on purpose", Provenance.OURS)
LEARNT_LOAD = Source(
    "own-learnt-load",
    "the looks of earlier peak weeks, and a model tried on published loads and virtual athletes only",
    Provenance.OURS,
)
FITTED = Source(
    "own-fit-tracking",
    "fitted so that loads of 0.7 to 1.3 times the typical plan leave as many virtual athletes flat "
    "and spilled over as they should; to be fitted to real weeks when there are any",
    Provenance.OURS,
)


def _number(name: str, value: float, unit: str, source: Source = OURS, note: str = "") -> Number:
    return Number(name=name, value=value, unit=unit, source=source, note=note)


# How people differ (SD; "log" is of the logarithm)
POOL_SPREAD = _number("size of the muscle pool", 0.16, "log")
CEILING_SPREAD = _number("ceiling of muscle glycogen", 0.13, "log")
BURN_SPREAD = _number("carbohydrate burnt by muscle", 0.2, "log", FITTED)
SYNTHESIS_SPREAD = _number("fastest synthesis in muscle", 0.25, "log", FITTED)
SYNTHESIS_USUAL = _number(
    "fastest synthesis of a dieting athlete, over that of the trained",
    -0.58,
    "log",
    FITTED,
    note="7.9 to 8.2 mmol/kg/h in Flynn 2020, 10.5 in Greiwe 1999",
)
WORK_SPREAD = _number("glycogen cost of a session", 0.4, "log", FITTED)
WORK_USUAL = _number("glycogen cost of a lifting session over light work", 0.97, "log", FITTED)
BURN_USUAL = _number("carbohydrate burnt by a dieting muscle, over the usual", -1.1, "log", FITTED)
ACTIVITY = _number(
    "carbohydrate burnt in posing, walking and standing about, where a study has its subjects rest",
    4.2,
    "g/kg FFM/d",
    FITTED,
)
ACTIVITY_SPREAD = _number("the same", 0.3, "log", FITTED)
INTAKE_SPREAD = _number("true intake over what is told", 0.06, "log")
WATER_USUAL = _number(
    "water held with glycogen by a dieting athlete, over the usual", 0.2, "log", FITTED
)
WATER_SPREAD = _number("the same", 0.22, "log")
SCALE_SPREAD = _number("first weight against the stated body mass", 0.5, "kg", CHEUVRONT_2004)
START_LEVEL = _number("store on the first morning, of its ceiling", 0.505, "1", FITTED)
START_SPREAD = _number("the same", 0.15, "log", FITTED)

# How fullness and sharpness are felt
EMPTY_LEVEL = _number("store at fullness 1, of its ceiling", 0.13, "1")
EMPTY_SPREAD = _number("the same", 0.07, "1")
FULLEST_LEVEL = _number("store at fullness 10, of its ceiling", 0.96, "1")
FULLEST_SPREAD = _number("the same", 0.06, "1")
FULLNESS_NOISE = _number("scatter of a fullness answer", 0.75, "grades")
CRISP = _number("sharpness without spill", 4.4, "grades")
CRISP_SPREAD = _number("the same", 0.4, "grades")
BLUR_GRADES = _number("sharpness lost when just spilled over", 1.5, "grades")
SHARPNESS_NOISE = _number("scatter of a sharpness answer", 0.55, "grades")
SPILL_UNSEEN_SPREAD = _number("carbohydrate past the stores that never shows", 0.45, "log", FITTED)
SPILL_CARRIED = _number("spill at which the look is lost", 1.15, "g/kg FFM", FITTED)
SPILL_CARRIED_SPREAD = _number("the same", 0.35, "log", FITTED)
SPILL_WATER = _number("body mass that a just spilled-over look carries", 0.3, "kg")
SPILL_EDGE = _number("softness of the edge of spilled over", 0.25, "1")
FLAT_UNDER = _number("store under which muscle looks flat, of its ceiling", 0.80, "1")
FLAT_EDGE = _number("softness of the edge of flat", 0.04, "1")
FULL_AT = _number("store over which more fullness cannot be seen, of its ceiling", 0.92, "1")
FLAT_COST = _number("store short of that at which the look is worth nothing", 0.5, "1")
FLAT_POWER = _number("power with which being short of full costs look", 1.2, "1")
BLUR_FREE = _number("blur that costs nothing", 0.4, "1")
BLUR_COST = _number("look lost per unit of blur past that", 0.5, "1")

# What a change is worth
LOSS_AVERSION = _number("look lost by a change against look won by it", 10.0, "1", FITTED)
LOSS_AVERSION_AFTER_A_MISS = _number(
    "the same for the next load after one that came in flat or spilled over",
    5.0,
    "1",
    FITTED,
    note="another look at what has just missed is a risk of its own",
)
WORTH_ALIKE = _number("worth within which doses are alike", 0.003, "1")

# How days and answers scatter (SD)
INTAKE_DAILY = _number("daily error of what is told", 0.08, "log")
WATER_DAILY = _number(
    "daily wander of extracellular water",
    0.27,
    "kg",
    FITTED,
    note="with gut and scale 0.42 kg a day, inside the 0.51 kg of Cheuvront 2004",
)
GUT_DAILY = _number("daily wander of gut content", 0.20, "kg", CHEUVRONT_2004)
STORE_DAILY = _number("daily wander of the store", 0.05, "log", FITTED)
SCALE_NOISE = _number("scale and bladder", 0.25, "kg", CHEUVRONT_2004)
WEIGHT_DOUBT = _number(
    "how far water may take a weight from the model, when the store is read from it",
    0.43,
    "kg",
    note="water that the model does not know of must not pass for glycogen",
)
OUTLIERS = _number("share of weights after food or on another scale", 0.04, "1")
OUTLIER_NOISE = _number("scatter of those", 1.5, "kg")
MENSTRUATING = _number("share of a woman's mornings at menstruation", 0.15, "1", note="4 of 28 d")
MENSTRUATION_GAIN = _number("body mass at menstruation", 0.45, "kg", KANELLAKIS_2023)

# What was done of yesterday's session and cardio, of what was planned; the words stand for a span
TRAINED_LESS = _number("training done where less was told", 0.5, "1", note="of what was planned")
TRAINED_MORE = _number("training done where more was told", 1.5, "1", note="of what was planned")
TRAINED_SPREAD = _number(
    "scatter of that where less or more was told", 0.2, "log",
    note="a half is a word, not a count of sets",
)  # fmt: skip
TRAINED_UNKNOWN_SPREAD = _number("the same where nothing was told", 0.35, "log")

# Forgetting
SHRINK = _number("share of a parameter kept when particles are shaken", 0.98, "1")
FORGET_A_WEEK = _number("share of the prior's variance that returns a week", 0.005, "1")
