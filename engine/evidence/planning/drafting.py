"""Numbers behind drafted plans, trials, a week between two shows, a weigh-in and travel."""

from __future__ import annotations

from datetime import date

from engine.evidence.body.learning import OWN_LEARNING
from engine.evidence.deciding import (
    ARETA_2018,
    COMMON_PRACTICE,
    ESCALANTE_2021,
    FOO_2022,
    HOMER_2024,
    OWN_CHOICE,
    ROBERTS_2020,
    SEDLOCK_2008,
)
from engine.evidence.source import Number, from_memory, seen

BURKE_2011_DAILY = from_memory(
    "burke-2011-by-training",
    "Burke et al. 2011, J Sports Sci 29:S17-27: by how much is trained, 5-7 g/kg a day with about an "
    "hour of exercise a day, 6-10 g/kg with one to three",
)
BARAKAT_2022 = seen(
    "barakat-2022",
    "Barakat et al. 2022, Sports 10(7):106: one man, carbs low and fat high first, then loaded; he "
    "felt fuller by the day",
)
BUSSAU_2002 = from_memory(
    "bussau-2002-no-depletion",
    "Bussau et al. 2002, Eur J Appl Physiol 87:290-295: trained men filled up in one day of 10 g/kg "
    "with no depletion before",
)

# Before the load.
MILD_SHARE = Number(
    "carbohydrate of a mild depletion day, share of habit", 0.6, "1",
    COMMON_PRACTICE,
)  # fmt: skip
DEEP_G_PER_KG = Number(
    "carbohydrate of a deep depletion day", 1.0, "g/kg/day", HOMER_2024,
    "that the men ate about so much is assumed; Balon 1992 comes to 1.1",
)  # fmt: skip
DEEP_SHARE_MOST = Number(
    "carbohydrate of a deep depletion day at most, share of habit", 0.4, "1",
    OWN_CHOICE, "so that deep is deeper than mild where habit is low",
)  # fmt: skip

# The load.
LOAD_MEN_G_PER_KG = Number("mean load day, men", 7, "g/kg/day", ARETA_2018)
LOAD_WOMEN_G_PER_KG = Number("mean load day, women", 8.2, "g/kg/day", SEDLOCK_2008)
LOAD_MEN_TRAINING_MUCH_G_PER_KG = Number(
    "mean load day, men who train well over an hour a day", 8, "g/kg/day",
    BURKE_2011_DAILY,
)  # fmt: skip
LOAD_WOMEN_TRAINING_MUCH_G_PER_KG = Number(
    "mean load day, women who train well over an hour a day", 9, "g/kg/day",
    BURKE_2011_DAILY,
)  # fmt: skip
LOAD_LEAST_G_PER_KG = Number("least mean load day that is drafted", 3, "g/kg/day", ESCALANTE_2021)
LOAD_HEAVY = Number(
    "heavy load day of a sloped load, share of the mean", 1.2, "1",
    COMMON_PRACTICE,
)  # fmt: skip
LOAD_LIGHT = Number(
    "light load day of a sloped load, share of the mean", 0.8, "1",
    COMMON_PRACTICE,
)  # fmt: skip
LONG_LOAD_ROOM = Number(
    "what a load of four or five days stays under its guard rail by, a day", 0.1,
    "g/kg/day", OWN_CHOICE, "the rounding of each day",
)  # fmt: skip
CARB_MOST_G = Number(
    "most carbohydrate drafted for a day", 1500, "g/day", OWN_CHOICE,
    "the most that a day of a plan holds at all",
)  # fmt: skip
STAGE_G_PER_KG = Number("carbohydrate of the day itself", 3, "g/kg", COMMON_PRACTICE)

# What goes with them.
PROTEIN_SHARE = Number(
    "protein of the day itself, share of habit", 0.8, "1", COMMON_PRACTICE,
    "reached in equal steps from the first load day on",
)  # fmt: skip
PROTEIN_LEAST_G_PER_KG = Number("protein that easing down stops at", 1.8, "g/kg/day", ROBERTS_2020)
FAT_LOW_G_PER_KG = Number(
    "fat while depleting, at most", 0.7, "g/kg/day", COMMON_PRACTICE,
    "more, up to habit, where energy availability would fall under 30 kcal/kg lean mass",
)  # fmt: skip
FAT_UP_G_PER_KG = Number("fat that comes back with the load", 0.1, "g/kg/day", COMMON_PRACTICE)
FAT_LOADING_MOST_G_PER_KG = Number("fat while loading, at most", 1.0, "g/kg/day", COMMON_PRACTICE)
FAT_MOST_G = Number("fat that a lead-in fat load stops at", 250, "g/day", COMMON_PRACTICE)
FIBRE_G = Number(
    "fibre from two days out on, at most", 15, "g/day", FOO_2022,
    "Foo went under 10 g; constipation is common in these weeks (de Moraes 2019)",
)  # fmt: skip
FIBRE_FIRST_G = Number(
    "fibre on the first load day, at most", 18, "g/day", FOO_2022,
    "under the 20 g that count as low here",
)  # fmt: skip
CARDIO_MIN = Number("cardio a day until four days out", 20, "min", COMMON_PRACTICE)
STEPS = Number("steps a day until four days out", 10000, "steps", COMMON_PRACTICE)
STEPS_LOADING = Number("steps a day while loading", 7000, "steps", COMMON_PRACTICE)
STEPS_LAST = Number("steps the day before and on the day", 5000, "steps", COMMON_PRACTICE)

# Rehearsing it.
TRIAL_FIRST_DAYS = Number(
    "days before the event from which a trial is of use", 56, "days",
    COMMON_PRACTICE,
)  # fmt: skip
TRIAL_LAST_DAYS = Number(
    "days before the event by which a trial is over", 14, "days",
    COMMON_PRACTICE,
)  # fmt: skip


ARNALL_2007 = from_memory(
    "arnall-2007",
    "Arnall et al. 2007, Eur J Appl Physiol 99:251-256: after a load, muscle glycogen of trained "
    "cyclists stayed above normal for up to five days of rest and a moderate diet",
)
GOFORTH_1997 = from_memory(
    "goforth-1997",
    "Goforth et al. 1997, J Appl Physiol 82:342-347: loaded glycogen of trained men stayed high for "
    "three days of light exercise on 60 % carbohydrate",
)

BRIDGE_WITHIN_DAYS = Number(
    "two events so close that the time between is a bridge", 14, "days",
    COMMON_PRACTICE, "shows a week or two apart; no second depletion between them",
)  # fmt: skip
BRIDGE_LOAD_SHARE = Number(
    "mean load day after a bridge, share of the published load", 0.85, "1",
    OWN_CHOICE,
    "stores begin higher than after a diet (Arnall 2007, Goforth 1997); the mornings correct it",
)  # fmt: skip
BRIDGE_CARDIO_MIN = Number("cardio of a day between two shows", 20, "min", COMMON_PRACTICE)


LARGE_OF_HABIT = Number(
    "carbs from which a day is larger than an ordinary one, share of habit", 1.3,
    "1", OWN_CHOICE, "at or over; the smallest published load is well past it",
)  # fmt: skip
LARGE_OF_LARGEST = Number(
    "share of the largest day from which another belongs to the load", 0.5, "1",
    COMMON_PRACTICE, "at or over; a lighter last day is still one of the load",
)  # fmt: skip
USUAL_OF_HABIT = Number(
    "carbs from which a day before the load counts as usual, share of habit", 0.9,
    "1", OWN_CHOICE, "at or over; about as exactly as people weigh out",
)  # fmt: skip


CAP_BY_HEIGHT_CM = Number(
    "body height less than which a height-weight cap counts its kg from", 100, "cm",
    COMMON_PRACTICE, "height in cm less 100, plus the kg that the federation allows",
)  # fmt: skip
#: What is said of fat loss a week is from memory of the review; so it stands in no message.
HELMS_2014 = from_memory(
    "helms-2014",
    "Helms et al. 2014, J Int Soc Sports Nutr 11:20: 0.5 to 1 % of body mass a week in preparation",
)
DAY_RISE_SHARE = Number(
    "rise of body mass from the morning's weighing to the evening's, share of it", 0.012,
    "1", OWN_CHOICE,
    "food and drink of the day, less what has left by then; clothes come on top",
)  # fmt: skip
DAY_RISE_HOURS = Number("hours over which it rises", 14, "h", OWN_CHOICE)
DAY_RISE_SPREAD = Number("scatter of that rise, share of itself", 0.5, "1", OWN_CHOICE)
MORNING_HOUR = Number("hour of the morning's weighing", 7, "o'clock", OWN_CHOICE)
FIBRE_LIGHTER_KG = Number(
    "body mass that four days of low fibre take off", 0.4, "kg", FOO_2022,
    "30 to under 10 g a day; SD between people 0.77 kg",
)  # fmt: skip
FIBRE_DAYS = Number("days that it takes", 4, "days", FOO_2022)
FIBRE_FROM_G = Number(
    "habitual fibre from which there is something to take off", 20, "g/day",
    FOO_2022,
)  # fmt: skip
IN_DOUBT_FROM = Number(
    "chance of being over the cap from which the coach is told early", 0.2, "1",
    OWN_CHOICE,
)  # fmt: skip
MISSED_FROM = Number(
    "chance of being over the cap from which it is likely missed", 0.5, "1",
    OWN_CHOICE,
)  # fmt: skip

STEP = Number(
    "steps between the loads that a trial may have", 0.5, "g/kg a load day",
    OWN_LEARNING,
)  # fmt: skip
SPILL_AT_MOST = Number(
    "most chance of spilling over at which a trial's load is put over the plan's", 0.5,
    "1", OWN_LEARNING, "a trial may miss, but not be run to miss",
)  # fmt: skip
ALIKE = Number(
    "difference in what two trials teach that counts as none", 0.02, "1",
    OWN_LEARNING,
)  # fmt: skip
WORTH_SAYING = Number(
    "least that the edges get narrower for a trial's load to be suggested", 0.05, "1",
    OWN_LEARNING,
)  # fmt: skip
#: Fixes the chance where no week lies behind.
FIRST_DAY = date(2026, 1, 1)


JET_LAG = from_memory(
    "jet-lag-rates",
    "The body clock moves by about 1 h a day towards the east and 1.5 h towards the west (reviews of "
    "jet lag, such as Waterhouse et al. 2007, Lancet 369:1117-1129)",
)
EAST_H_A_DAY = Number("body clock eastwards", 1.0, "h/day", JET_LAG)
WEST_H_A_DAY = Number("body clock westwards", 1.5, "h/day", JET_LAG)
SHIFT_WORTH_H = Number(
    "shift from which it is worth beginning at home", 3, "h",
    COMMON_PRACTICE,
)  # fmt: skip
SHIFT_AT_HOME_DAYS = Number(
    "days on which sleep and meals are moved at home beforehand, at most", 3,
    "days", COMMON_PRACTICE,
)  # fmt: skip
MEAL_EVERY_MIN = Number("meals of the day of travel, apart", 180, "min", COMMON_PRACTICE)
BED_AFTER_WAKE_H = Number("bed after the usual waking", 16, "h", COMMON_PRACTICE)
NIGHT_H = Number("a night's sleep", 8, "h", COMMON_PRACTICE)
FIRST_MEAL_MIN = Number("first meal after waking", 30, "min", COMMON_PRACTICE)
UP_BEFORE_MIN = Number("up before leaving, at least", 60, "min", OWN_CHOICE)
EARLY_MEAL_MIN = Number(
    "before the usual waking, no earlier breakfast than by", 180, "min",
    OWN_CHOICE, "whoever leaves in the middle of the night sleeps on instead",
)  # fmt: skip
LONGEST_WITHOUT_MIN = Number(
    "longest without food on the way while nobody can sleep yet", 360, "min",
    OWN_CHOICE, "where it is night by the clocks away and day by those at home",
)  # fmt: skip
NO_SLEEP_YET_H = Number("for so long after getting up nobody can sleep", 12, "h", OWN_CHOICE)
LAST_MEAL_BEFORE_BED_MIN = Number("last meal before bed, at least", 60, "min", OWN_CHOICE)
