"""Numbers behind the limits, the weight band, the rules and the drafted plans.

"Per kg" is per kg of body mass before the week unless a name says otherwise.
"""

from __future__ import annotations

from engine.evidence.safety import REALE_2018
from engine.evidence.source import Number, Provenance, source_shown

SEEN, MEMORY = Provenance.SEEN, Provenance.MEMORY

ARETA_2018 = source_shown(
    "areta-2018",
    "Areta & Hopkins 2018, Sports Med 48:2091-2102: a high-carbohydrate diet is 6 g/kg a day or "
    "more for three days, or 7 g/kg or more for two",
    SEEN,
)
BURKE_2011 = source_shown(
    "burke-2011",
    "Burke et al. 2011, J Sports Sci 29:S17-27: load with 10-12 g/kg per 24 h for 36-48 h",
    MEMORY,
)
CHEUVRONT_2004 = source_shown(
    "cheuvront-2004",
    "Cheuvront et al. 2004, Int J Sport Nutr Exerc Metab 14:532-540: morning body mass varies from "
    "day to day by 0.51 kg, 0.66 % (SD); three mornings make a baseline",
    SEEN,
)
DE_MORAES_2019 = source_shown(
    "de-moraes-2019",
    "de Moraes et al. 2019, J Sports Sci Med 18:772-779: of 15 bodybuilders who loaded, 7 had "
    "diarrhoea, 4 of them severe",
    SEEN,
)
EFSA_2010 = source_shown(
    "efsa-2010-drinks",
    "EFSA 2010, EFSA Journal 8(3):1459: adequate intake of water from drinks 1.4 L a day for women "
    "and 1.75 L for men",
    SEEN,
)
ESCALANTE_2021 = source_shown(
    "escalante-2021",
    "Escalante et al. 2021, BMC Sports Sci Med Rehabil 13:68: peak-week loads of about 3-12 g/kg a "
    "day over one to three days",
    MEMORY,
)
FAIRCHILD_2002 = source_shown(
    "fairchild-2002",
    "Fairchild et al. 2002, Med Sci Sports Exerc 34:980-986: muscle glycogen from 109.1 to 198.2 "
    "mmol/kg wet weight in 24 h at 10.3 g/kg",
    SEEN,
)
FERNANDEZ_ELIAS_2015 = source_shown(
    "fernandez-elias-2015",
    "Fernandez-Elias et al. 2015, Eur J Appl Physiol 115:1919-1926: at least 3 g water with each "
    "gram of glycogen; the glycogen came back as fast on little water",
    SEEN,
)
FOO_2022 = source_shown(
    "foo-2022",
    "Foo et al. 2022, Int J Sport Nutr Exerc Metab 32:256-264: fibre from 30 to under 10 g a day "
    "took 0.40 kg of gut content off in four days",
    SEEN,
)
HOMER_2024 = source_shown(
    "homer-2024",
    "Homer et al. 2024, Nutrition 127:112528: very lean men after three days of depletion gained "
    "0.8 % body mass on one day of 9 g/kg",
    SEEN,
)
KREITZMAN_1992 = source_shown(
    "kreitzman-1992",
    "Kreitzman et al. 1992, Am J Clin Nutr 56:292S-293S: glycogen is held with 3-4 parts water",
    SEEN,
)
ROBERTS_2020 = source_shown(
    "roberts-2020",
    "Roberts et al. 2020, J Hum Kinet 71:79-108: protein 1.8-2.7 g/kg a day in contest preparation",
    SEEN,
)
SEDLOCK_2008 = source_shown(
    "sedlock-2008",
    "Sedlock 2008, Curr Sports Med Rep 7:209-213: women need more than 8 g/kg a day, and enough "
    "energy, for a load to take",
    SEEN,
)
SHIOSE_2016 = source_shown(
    "shiose-2016", "Shiose et al. 2016, J Appl Physiol 121:205-211: 12 g/kg a day for 72 h", SEEN
)
COMMON_PRACTICE = source_shown(
    "common-practice",
    "Common practice among physique coaches; no study of it was found",
    Provenance.PRACTICE,
)
OWN_CHOICE = source_shown("own-choice", "This project's own, cautious choice", Provenance.OURS)


# Guard rails: what nobody can set past.
CARB_LEAST_G_PER_KG = Number("least carbohydrate a day", 0.5, "g/kg/day", COMMON_PRACTICE)
CARB_MOST_G_PER_KG = Number("most carbohydrate a day", 12, "g/kg/day", BURKE_2011)
LOAD_MOST_G_PER_KG = Number(
    "most carbohydrate over the three load days", 36, "g/kg", SHIOSE_2016,
    "three days of 12 g/kg",
)  # fmt: skip
STEP_LEAST_G = Number("smallest step", 5, "g", OWN_CHOICE)
STEP_MOST_G_PER_KG = Number("largest step", 1.5, "g/kg", OWN_CHOICE)
CHANGE_MOST_G_PER_KG = Number(
    "furthest a day may depart from its plan", 3, "g/kg", OWN_CHOICE,
    "the whole of a small load, Escalante 2021's 3 g/kg",
)  # fmt: skip
APPLY_MOST_G_PER_KG = Number("most that goes out without the coach's word", 3, "g/kg", OWN_CHOICE)
WATER_LEAST_WOMEN_L = Number("least water from drinks, women", 1.4, "L/day", EFSA_2010)
WATER_LEAST_MEN_L = Number("least water from drinks, men", 1.75, "L/day", EFSA_2010)
WATER_MOST_L_PER_KG = Number("most water a day", 0.100, "L/kg/day", REALE_2018)

# How a figure is made.
ROUND_TO_G = Number(
    "rounding of a changed figure", 5, "g", COMMON_PRACTICE,
    "about a tablespoon of honey or a third of a rice cake: finer than anyone weighs out",
)  # fmt: skip

# Limits suggested to a coach who has set none. Their size is bounded by the guard rails and by the
# coach's word on each larger change, so they leave room for what an athlete may need.
VIRTUAL_NEED = source_shown(
    "own-virtual-need",
    "Computed on this project's virtual athletes, never measured on people: of those whom another "
    "load would help, three in four need up to about 3 g/kg a day more or less than a usual plan",
    Provenance.COMPUTED,
)
SUGGESTED_STEP_G_PER_KG = Number("suggested step", 0.4, "g/kg", COMMON_PRACTICE)
SUGGESTED_CHANGE_G_PER_KG = Number(
    "suggested largest change a day", 3, "g/kg", VIRTUAL_NEED,
    "the guard rail; a load of a few days is no place for small corrections",
)  # fmt: skip
SUGGESTED_LOAD_ROOM_G_PER_KG = Number(
    "room over the planned load, for its three days together", 7.5, "g/kg",
    VIRTUAL_NEED,
    "2.5 g/kg a day; over six virtual worlds a choice that knows the body reaches 91 to 97 % of "
    "what it gains unbound, with 4.5 g/kg over the load 84 to 95 %, with 2.5 g/kg 76 to 91 %, with "
    "1.2 g/kg and half the change 55 to 71 %",
)  # fmt: skip
PLAUSIBLE_NEED_G_PER_KG = Number(
    "correction that an athlete may need, a load day", 3, "g/kg/day",
    VIRTUAL_NEED,
)  # fmt: skip
SUGGESTED_FLOOR_STEPS = Number("steps of room under the lowest planned day", 2, "steps", OWN_CHOICE)
SUGGESTED_WATER_BELOW = Number(
    "suggested water floor, share of the lowest planned day", 0.75, "1",
    OWN_CHOICE,
)  # fmt: skip
SUGGESTED_WATER_ABOVE = Number(
    "suggested water ceiling, share of the highest planned day", 1.5, "1",
    OWN_CHOICE,
)  # fmt: skip

# The weight band.
MORNING_WEIGHT_CV = Number("day-to-day SD of morning body mass", 0.0066, "1", CHEUVRONT_2004)
MORNINGS_FOR_AN_ANCHOR = Number("mornings that make an anchor", 3, "mornings", CHEUVRONT_2004)
ANCHOR_LOOKS_BACK_DAYS = Number(
    "how old a morning may be and still anchor the band", 7, "days",
    OWN_CHOICE,
)  # fmt: skip
GLYCOGEN_WATER_LOW = Number("water held per gram of glycogen, low", 3, "g/g", FERNANDEZ_ELIAS_2015)
GLYCOGEN_WATER_HIGH = Number("water held per gram of glycogen, high", 4, "g/g", KREITZMAN_1992)
STORE_SWING_G_PER_KG = Number(
    "most that the stores move from habit, either way", 4, "g/kg",
    source_shown(
        "fairchild-2002-computed",
        "Computed from Fairchild et al. 2002: (198.2 - 109.1) mmol/kg x 162 g/mol = 14.4 g per kg "
        "wet muscle, with muscle at 28 % of body mass",
        Provenance.COMPUTED,
    ),
    "muscle is 30-40 % of body mass (from memory), of which not all fills like the thigh "
    "that was just ridden to exhaustion; hence the low share",
)  # fmt: skip
SWING_SEEN_SHARE = Number(
    "share of the arithmetic swing that very lean dieting men showed", 0.36, "1",
    source_shown(
        "homer-2024-computed",
        "Computed from Homer et al. 2024: +0.8 % body mass where plan arithmetic says "
        "5 g/kg x 4.5 = 2.25 % (habitual 4 g/kg is assumed)",
        Provenance.COMPUTED,
    ),
)  # fmt: skip
ON_FILE_SD = Number(
    "doubt of the body mass on file, where no morning stands beside it", 0.011, "1",
    OWN_CHOICE,
    "weeks old and of another scale: a first morning that differs says little of the look",
)  # fmt: skip
MISSED_MORNING_SD = Number(
    "doubt of each missed morning since the last weight", 0.0033, "1",
    OWN_CHOICE, "half the day-to-day SD a day, added as squares",
)  # fmt: skip
UNKNOWN_SODIUM_SD = Number(
    "doubt where the habitual sodium is not known", 0.003, "1", OWN_CHOICE,
    "a change of salt nobody counts moves water by some hundreds of grams",
)  # fmt: skip
SESSION_G_PER_KG = Number(
    "glycogen that a planned session takes", 1.0, "g/kg", OWN_CHOICE,
    "a lifting session takes a quarter to two fifths of the worked muscles' (from memory)",
)  # fmt: skip
SESSION_UNKNOWN_SHARE = Number(
    "doubt of a planned session that nobody told of, of its glycogen", 0.35, "1",
    OWN_CHOICE,
)  # fmt: skip
BAND_Z = Number(
    "half-width of an 80 % band", 1.2816, "SD",
    source_shown(
        "normal-distribution",
        "90th percentile of the standard normal distribution (any table)",
        Provenance.COMPUTED,
    ),
)  # fmt: skip

# What can be believed of an answer (weight and water have theirs in engine.safety).
JUMP_SHARE = Number(
    "change of weight since the last morning taken for a slip of the finger",
    0.06, "1", OWN_CHOICE,
    "over the -3 % and -5 % of the safety flags, which must still be heard; -6 kg in two "
    "days on diuretics (Mayr 2012) is the largest case found",
)  # fmt: skip
FIRST_JUMP_SHARE = Number(
    "the same for a first morning, against the body mass on file", 0.15, "1",
    OWN_CHOICE, "the figure on file may be weeks old",
)  # fmt: skip
FIRST_JUMP_ASKED_SHARE = Number(
    "the same, from where a first morning's weight is asked about", 0.08, "1",
    OWN_CHOICE,
    "more than eight weeks of the 0.5 to 1 % a week that physique athletes lose are possible; "
    "one tap takes it",
)  # fmt: skip
JUMP_LOOKS_BACK_DAYS = Number("how far back the last morning may lie", 3, "days", OWN_CHOICE)
CARB_EATEN_MOST_G = Number(
    "most carbohydrate eaten in a day that is believed", 2500, "g",
    OWN_CHOICE,
    "Acheson 1988 fed about 1,100 g a day; binges after a contest reach higher",
)  # fmt: skip
MORNINGS_TO_TRUST = Number(
    "mornings of a week before its forecast is used", 3, "mornings",
    CHEUVRONT_2004, "three mornings make a baseline; an earlier week stands in for them",
)  # fmt: skip
SAME_LOAD_WITHIN = Number(
    "how far the load of a week behind may lie from the plan's and still be the same", 0.05,
    "1", OWN_CHOICE, "about what is weighed out and eaten beside what is written",
)  # fmt: skip
PULSE_LEAST = Number("least resting pulse that is believed", 25, "1/min", OWN_CHOICE)
PULSE_MOST = Number("most resting pulse that is believed", 230, "1/min", OWN_CHOICE)

# The rules.
FULLNESS_BEFORE_LOAD = Number("fullness expected before the load", 5, "of 10", COMMON_PRACTICE)
FULLNESS_DEPLETED = Number("fullness expected after depletion", 4, "of 10", COMMON_PRACTICE)
FULLNESS_LOADED = Number("fullness expected after the whole load", 9, "of 10", COMMON_PRACTICE)
DEPLETED_SHARE = Number(
    "share of habitual carbohydrate under which a plan has depleted", 0.75, "1",
    COMMON_PRACTICE,
)  # fmt: skip
FLAT_BY = Number("fullness under expectation that is flat", 2, "of 10", COMMON_PRACTICE)
VERY_FLAT_BY = Number(
    "fullness under expectation that earns two steps", 4, "of 10",
    COMMON_PRACTICE,
)  # fmt: skip
FULL_FROM = Number("fullness from which more can only soften", 8, "of 10", COMMON_PRACTICE)
BLURRED_TO = Number("sharpness up to which lines are blurred", 2, "of 5", COMMON_PRACTICE)
CRISP_FROM = Number("sharpness from which lines are crisp", 4, "of 5", COMMON_PRACTICE)
SHARPNESS_FALL = Number("fall in sharpness that is a spill", 2, "of 5", COMMON_PRACTICE)
SHARPNESS_LOOKS_BACK_DAYS = Number(
    "how far back sharpness is compared", 2, "days", OWN_CHOICE,
    "one missed morning does not hide a fall",
)  # fmt: skip
UNDERDRUNK_SHARE = Number(
    "share of the water target under which flatness may be thirst", 0.8, "1",
    COMMON_PRACTICE,
)  # fmt: skip
SLEEPLESS_H = Number("sleep that is too little", 5, "h", COMMON_PRACTICE)
