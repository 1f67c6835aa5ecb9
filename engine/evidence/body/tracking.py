"""The figures of the tracker: how people differ, how days and answers scatter."""

from __future__ import annotations

from engine.evidence.deciding import CHEUVRONT_2004, FOO_2022, KREITZMAN_1992
from engine.evidence.source import Number, Provenance, Source, seen

KANELLAKIS_2023 = seen(
    "kanellakis-2023", "Kanellakis et al. 2023, Am J Hum Biol 35:e23951: +0.450 kg at menstruation"
)
FAIRCHILD_2002 = seen(
    "fairchild-2002-ceiling",
    "Fairchild et al. 2002, Med Sci Sports Exerc 34:980-986: 198.2 mmol/kg wet in 24 h",
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
    return Number(name, value, unit, source, note)


STRUCTURES = Source(
    "own-structures",
    "assumed, several ways side by side: common practice has a spill show the same day or a day "
    "later; Hall 2011 burns with the store, Acheson 1988 a share of what is eaten",
    Provenance.OURS,
)

# A typical athlete in a peak week, by the day
CEILING_G_PER_KG_MUSCLE = _number(
    "ceiling of muscle glycogen",
    28.5,
    "g/kg muscle wet",
    FAIRCHILD_2002,
    note="198 mmol/kg is 32; not all muscle fills like the thigh that was ridden",
)
FILL_A_DAY = _number("most that a day stores, of the ceiling", 0.80, "1", STRUCTURES)
OWN_SHARE = _number("share of what is burnt that muscle bears without food", 0.2, "1", STRUCTURES)
SESSION_TAKES = _number("share of the store that an hour's lifting takes", 0.14, "1", STRUCTURES)
SESSION_LIGHT = _number("a short session, in hours of lifting", 0.6, "h", STRUCTURES)
SESSION_DEPLETING = _number("a depleting session, likewise", 1.4, "h", STRUCTURES)
CARDIO_HOUR = _number("an hour of steady cardio, likewise", 0.4, "h", STRUCTURES)
SPILL_UNSEEN = _number(
    "carbohydrate past the stores that never shows", 2.0, "g/kg FFM/d", STRUCTURES
)
HABIT_G_PER_KG = _number("carbohydrate of a dieting day", 3.0, "g/kg FFM/d", STRUCTURES)
LIVER_USUAL = _number("liver glycogen on a usual morning", 1.1, "g/kg FFM", STRUCTURES)
LIVER_MOST = _number("liver glycogen, most", 1.9, "g/kg FFM", STRUCTURES)
LIVER_HALF = _number("carbohydrate to which it fills by two thirds", 3.5, "g/kg FFM/d", STRUCTURES)
LIVER_FOLLOWS = _number("share of that within a day", 0.6, "1", STRUCTURES)
WATER_WITH_GLYCOGEN = _number("water held with glycogen", 2.9, "g/g", KREITZMAN_1992)
SALT_SPAN = _number("carbohydrate over habit that holds sodium", 4.0, "g/kg FFM/d", STRUCTURES)
SALT_FOLLOWS = _number("share of that within a day", 0.6, "1", STRUCTURES)
TISSUE_DAILY = _number("tissue lost on a day without carbohydrate", 0.035, "kg/d", STRUCTURES)
TISSUE_EVEN = _number("carbohydrate at which none is", 5.0, "g/kg FFM/d", STRUCTURES)
GUT_PER_FIBRE = _number("gut content held per g of daily fibre", 0.034, "kg/(g/d)", FOO_2022)
GUT_TRANSIT = _number("time constant of gut content", 2.9, "d", FOO_2022)
SODIUM_EXCRETION = _number("sodium per litre of water held", 3000.0, "mg/L", STRUCTURES)
SODIUM_GAIN_MOST = _number("most water that more sodium adds", 0.6, "kg", STRUCTURES)

# How people differ (SD; "log" is of the logarithm)
CEILING_SPREAD = _number("ceiling of muscle glycogen, with the size of the muscle", 0.19, "log")
BURN_SPREAD = _number("carbohydrate burnt", 0.19, "log", FITTED)
FILL_SPREAD = _number("most that a day stores", 0.22, "log", FITTED)
WORK_SPREAD = _number("glycogen cost of a session", 0.35, "log", FITTED)
INTAKE_SPREAD = _number("true intake over what is told", 0.06, "log")
WATER_SPREAD = _number("water held with glycogen", 0.22, "log")
LATE_WATER = _number("share of it that comes a day later", 0.25, "1", STRUCTURES)
LATE_WATER_SPREAD = _number("the same", 0.2, "1", STRUCTURES)
SALT_WATER = _number("water held with a load's sodium", 0.25, "kg", STRUCTURES)
SALT_WATER_SPREAD = _number("the same", 0.3, "kg", STRUCTURES)
SCALE_SPREAD = _number(
    "first weight against the body mass on file", 0.02, "1",
    note="weeks old and of another scale; the first morning's weight takes its place",
)  # fmt: skip
START_LEVEL = _number("store on the first morning, of its ceiling", 0.47, "1", FITTED)
START_SPREAD = _number("the same", 0.16, "log", FITTED)
SPILL_UNSEEN_SPREAD = _number("carbohydrate past the stores that never shows", 0.4, "log", FITTED)
SPILL_CARRIED = _number("spill at which the look is lost", 2.2, "g/kg FFM", FITTED)
SPILL_CARRIED_SPREAD = _number("the same", 0.35, "log", FITTED)

# How fullness and sharpness are felt
EMPTY_LEVEL = _number("store at fullness 1, of its ceiling", 0.13, "1")
EMPTY_SPREAD = _number("the same", 0.09, "1")
FULLEST_LEVEL = _number("store at fullness 10, of its ceiling", 0.96, "1")
FULLEST_SPREAD = _number("the same", 0.09, "1")
FULLNESS_NOISE = _number("scatter of a fullness answer", 0.8, "grades", FITTED)
CRISP = _number("sharpness without spill", 4.35, "grades")
CRISP_SPREAD = _number("the same", 0.4, "grades")
BLUR_GRADES = _number("sharpness lost when just spilled over", 1.45, "grades")
SHARPNESS_NOISE = _number("scatter of a sharpness answer", 0.55, "grades")
SPILL_WATER = _number("body mass that a just spilled-over look carries", 0.35, "kg")
SPILL_EDGE = _number("softness of the edge of spilled over", 0.15, "1")
FLAT_UNDER = _number(
    "store under which muscle looks flat, of its ceiling", 0.78, "1", FITTED,
    note="as the model counts the store, which it holds for a little emptier than it is",
)  # fmt: skip
FLAT_UNDER_SPREAD = _number("the same, between judges and athletes", 0.03, "1", STRUCTURES)
FLAT_EDGE = _number("softness of the edge of flat", 0.04, "1")
FULL_OVER_FLAT = _number("store past that under which more fullness is still seen", 0.12, "1")
FLAT_COST = _number("store short of that at which the look is worth nothing", 0.5, "1")
FLAT_POWER = _number("power with which being short of full costs look", 1.2, "1")
BLUR_FREE = _number("blur that costs nothing", 0.4, "1")
BLUR_COST = _number("look lost per unit of blur past that", 0.5, "1")
OTHER_KIND = _number("particles that change in kind each morning", 0.01, "1", STRUCTURES)
DOUBT = _number(
    "share of each forecast that is left to what happens to anybody", 0.02, "1", FITTED,
    note="no kind of body held here need be the true one",
)  # fmt: skip
SURER = _number(
    "power to which chances are taken before they are told", 1.25, "1", FITTED,
    note="particles are held apart on purpose, so that what most of them say comes more often",
)  # fmt: skip
FLAT_COMES = _number(
    "how much flat counts beside the other looks before chances are told", 0.3, "1", FITTED,
    note="particles hold the store for a little emptier than it is: flat was said two to three times "
    "as often as it came, with the plan's figure as with a corrected one; spilled over was not",
)  # fmt: skip
ANYBODY_FLAT = _number("flat of those who follow a plan", 0.25, "1", FITTED)
ANYBODY_SPILLED = _number("spilled over of those", 0.25, "1", FITTED)

# What a change is worth
LOSS_AVERSION = _number("look lost against the plan beside look won over it", 2.0, "1", FITTED)
LESS_TODAY = _number(
    "what look lost by less today counts besides, before the load's last day", 2.0, "1", FITTED,
    note="muscle stores so much a day and no more: a day that is left out is not made good, while "
    "more early can be taken back by the mornings after it",
)  # fmt: skip
LESS_ON_THE_LAST_DAY = _number("the same on the last day", 1.0, "1", FITTED)
MORE_ON_THE_LAST_DAY = _number(
    "what look lost by more on the last day counts besides", 4.0, "1", FITTED,
    note="what spills then shows on the day, and no day is left to make it good",
)  # fmt: skip
LOSS_AVERSION_REHEARSED = _number(
    "the same in a trial, and once a week behind has been looked at", 8.0, "1",
    FITTED,
    note="a trial is to show what its plan does; and what is planned from one has more behind it than "
    "a morning's word: moved lightly, each week takes a load that was right a little further off. "
    "With 4 twice as many came out worse for a point more",
)  # fmt: skip
LOSS_AVERSION_NEXT_LOAD = _number(
    "the same for the next load",
    2.0,
    "1",
    FITTED,
    note="what has just missed, or was moved on one morning's word, is a risk of its own",
)
BY_LOOKS_ALONE = _number(
    "share of what a load between two that were looked at is chosen by that has heard no morning",
    0.5, "1", LEARNT_LOAD,
    note="as much was won, and hardly fewer came out worse; after one trial it only won less",
)  # fmt: skip
BETWEEN_LOADS = _number(
    "how far such a load may lie from the one that came in full", 0.15, "1", LEARNT_LOAD,
    note="a tenth gained less, and with a fifth more came out worse",
)  # fmt: skip
LESS_THAN_FULL = _number(
    "what look lost by a load under the one that came in full counts besides", 1.0, "1", LEARNT_LOAD,
    note="without it as much was won again as lost, and more came out worse",
)  # fmt: skip
TOLD_SPILLED = _number(
    "most chance of spilling over at which a trial is put off the load that came in full", 0.3, "1",
    LEARNT_LOAD, note="up to 0.5 taught no more",
)  # fmt: skip
WORTH_TELLING = _number(
    "look that such a trial is to win for the next load, over another of the same", 0.003, "1", OURS
)
TAKEN_BACK = _number(
    "share of what mornings moved a load that is taken back where its look does not bear it out",
    0.5,
    "1",
    LEARNT_LOAD,
    note="flat on a load that was cut; full, which it may have been anyhow, or spilled over on one "
    "that was raised",
)
WORTH_ALIKE = _number("worth within which doses are alike", 0.003, "1")

# How days and answers scatter (SD)
INTAKE_DAILY = _number("daily error of what is told", 0.08, "log")
WATER_DAILY = _number("daily wander of extracellular water", 0.32, "kg", CHEUVRONT_2004)
WATER_KEPT = _number("share of it that is there a day later", 0.6, "1", STRUCTURES)
STORE_DAILY = _number("daily wander of the store", 0.03, "log", FITTED)
SCALE_NOISE = _number("scale and bladder", 0.25, "kg", CHEUVRONT_2004)
WEIGHT_DOUBT = _number(
    "how far water may take a weight from the model, when the store is read from it",
    0.3,
    "kg",
    FITTED,
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
