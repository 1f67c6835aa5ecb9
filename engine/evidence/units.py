"""Exact sizes of the units people answer in, what an answer can believably be, and how far it may be
from its owner's habit before it is asked about.
"""

from __future__ import annotations

from engine.evidence.source import Number, Provenance, Source, from_memory

YARD_AND_POUND_1959 = from_memory(
    "yard-and-pound-1959",
    "International yard and pound agreement, 1959: 1 lb = 0.45359237 kg, 1 in = 2.54 cm, exactly",
)
NIST_HANDBOOK_44 = from_memory(
    "nist-handbook-44",
    "NIST Handbook 44, appendix C: the US gallon is 231 cubic inches and holds 128 fluid ounces",
)
UK_UNITS_1995 = from_memory(
    "uk-units-1995",
    "Units of Measurement Regulations 1995 (UK): the gallon is 4.54609 litres, exactly; "
    "it holds 160 fluid ounces",
)
BELIEVABLE = Source(
    "believable-answers",
    "bounds outside which an answer is taken for a slip of the finger and asked again",
    Provenance.OURS,
)

KG_PER_LB = Number("pound", 0.45359237, "kg", YARD_AND_POUND_1959)
LB_PER_STONE = Number("stone", 14, "lb", YARD_AND_POUND_1959)
CM_PER_INCH = Number("inch", 2.54, "cm", YARD_AND_POUND_1959)
L_PER_US_FLUID_OUNCE = Number("US fluid ounce", 0.0295735295625, "L", NIST_HANDBOOK_44)
L_PER_IMPERIAL_FLUID_OUNCE = Number("imperial fluid ounce", 0.0284130625, "L", UK_UNITS_1995)

LEAST_BODY_MASS = Number("least believable body mass of an adult", 30, "kg", BELIEVABLE)
MOST_BODY_MASS = Number("most believable body mass of an adult", 250, "kg", BELIEVABLE)
MOST_WATER = Number("most believable drinking in a day", 15, "L", BELIEVABLE)
LEAST_HEIGHT = Number("least believable height of an adult", 120, "cm", BELIEVABLE)
MOST_HEIGHT = Number("most believable height of an adult", 230, "cm", BELIEVABLE)


FULLNESS_FAR = Number(
    "change of fullness since the last morning that is asked about", 7, "of 10",
    BELIEVABLE, "what is less may be a load that works, or one that fails",
)  # fmt: skip
WATER_FAR_OVER = Number(
    "drinking over the day's target that is asked about", 1.9, "1", BELIEVABLE,
    "over what the safety flags hear: those are for what was truly drunk",
)  # fmt: skip
WATER_FAR_UNDER = Number(
    "drinking under the day's target that is asked about", 0.28, "1",
    BELIEVABLE,
)  # fmt: skip
A_GLASS_L = Number(
    "drinking of a whole day, other than none, under which it is asked about: a glass or a can",
    0.5, "L", BELIEVABLE, "such a figure mostly is of one drink; so little in a day is heard once sure",
)  # fmt: skip
WATER_AT_TARGET = Number(
    "distance from the day's water target within which a figure before words is still water",
    0.1, "1", BELIEVABLE, "further off, it may count what the words name",
)  # fmt: skip
CARBS_FAR_OVER = Number(
    "carbohydrate eaten over the figure set that is asked about", 2.5, "1",
    BELIEVABLE,
)  # fmt: skip
CARBS_FAR_UNDER = Number(
    "carbohydrate eaten under the figure set that is asked about", 0.25, "1",
    BELIEVABLE,
)  # fmt: skip
NEAR_A_SLIP = Number(
    "distance to the usual weight at which a corrected slip of the finger is offered",
    0.035, "1", BELIEVABLE,
)  # fmt: skip
LEAST_BMI = Number(
    "least body mass index that is believed of an athlete", 14, "kg/m2",
    BELIEVABLE,
)  # fmt: skip
MOST_BMI = Number(
    "greatest body mass index that is believed of an athlete", 50, "kg/m2",
    BELIEVABLE,
)  # fmt: skip
