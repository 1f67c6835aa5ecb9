"""The constants of the body model, each with its unit and where it comes from.

One set for every study and every athlete: what differs between people is size, sex and training
status, never a constant picked for one study. "Fitted" in a note means that the value was chosen so
that all loading experiments of `engine.evidence.experiments.loading` come out together.
"""

from __future__ import annotations

from engine.evidence.planning.health import CUNNINGHAM_1980
from engine.evidence.source import Number, Provenance, Source, from_memory, seen

HALL_SODIUM = from_memory(
    "hall-2011-sodium",
    "Hall et al. 2011, Lancet 378:826-837, web appendix: sodium balance of extracellular water",
)
HEER_2000 = seen(
    "heer-2000",
    "Heer et al. 2000, Am J Physiol Renal 278:F585: 50 to 550 mmol/d sodium without mass gain",
)
GREIWE_1999 = seen(
    "greiwe-1999",
    "Greiwe et al. 1999, J Appl Physiol 87:222-226: synthesis 10.5 trained, 4.5 untrained",
)
PRICE_1994 = from_memory(
    "price-1994",
    "Price et al. 1994, J Appl Physiol 76:104-111: after work fast under about 35 mmol/L of muscle, "
    "without insulin, then many times slower",
)
NILSSON_1973 = from_memory(
    "nilsson-1973",
    "Nilsson and Hultman 1973: liver glycogen 270 overnight, about 500 mmol/kg after high CHO",
)
SHIOSE_ABSTRACT = seen(
    "shiose-depletion",
    "Shiose et al., depletion and 24 h recovery: 76.2 to 28.1 mmol/kg by one ride",
)
FOO_2022 = seen(
    "foo-2022-gut",
    "Foo et al. 2022, Int J Sport Nutr Exerc Metab 32:256-264: low fibre and gut content",
)
EU_1169 = seen("eu-1169-2011", "Regulation (EU) 1169/2011, Annex XIV")
AREA_2018 = from_memory(
    "areta-2018-resting",
    "Areta and Hopkins 2018, Sports Med 48:2091-2102: resting 462 mmol/kg dry, trained",
)
SPILLING = Source(
    "own-spilling",
    "that a blur shows about a day after what caused it is common practice; how much is carried "
    "unseen and how fast it goes are fitted to virtual athletes",
    Provenance.OURS,
)
ACHESON_1988 = seen("acheson-1988", "Acheson et al. 1988, Am J Clin Nutr 48:240-247")
WISHNOFSKY = from_memory(
    "wishnofsky-1958", "Wishnofsky 1958, Am J Clin Nutr 6:542-546: 7700 kcal per kg of body mass"
)
EFSA_WATER = seen("efsa-2010", "EFSA 2010, EFSA Journal 8(3):1459")
IOM_WATER = seen("iom-2005", "Institute of Medicine 2005, water and electrolytes")
FITTED = Source(
    "own-fit", "chosen so that the loading experiments come out together", Provenance.OURS
)
TEXTBOOK = from_memory("textbook", "textbook physiology: usual values")
COMPUTED = Source("computed", "computed from other numbers here", Provenance.COMPUTED)


# Size of the pools
GLYCOGEN_MOLAR = Number("glycogen per glucosyl unit", 0.162, "g/mmol", TEXTBOOK)
MUSCLE_OF_LEAN_MALE = Number(
    "skeletal muscle of fat-free mass, men",
    0.476,
    "kg/kg",
    FITTED,
    "Janssen 2000: about 0.49; fitted",
)
MUSCLE_OF_LEAN_FEMALE = Number(
    "skeletal muscle of fat-free mass, women",
    0.46,
    "kg/kg",
    FITTED,
    "Janssen 2000: about 0.46; fitted",
)
CEILING_RESTED = Number(
    "muscle glycogen ceiling, untrained and rested",
    139.0,
    "mmol/kg wet",
    FITTED,
    "Bergstrom 1966: rested leg about half of the exercised; fitted",
)
CEILING_PRIMED = Number(
    "muscle glycogen ceiling after depleting work",
    220.2,
    "mmol/kg wet",
    FITTED,
    "group means of 198 to 204 were reached; fitted",
)
PRIMING_KEPT = Number(
    "days for which depleting work keeps the ceiling raised", 5.8, "d", FITTED,
    "time constant; Bergstrom and Hultman saw three days",
)  # fmt: skip
PRIMED_UNTRAINED = Number("standing priming, untrained", 0.495, "1", FITTED)
PRIMED_RECREATIONAL = Number("standing priming, recreational", 0.678, "1", FITTED)
PRIMED_TRAINED = Number("standing priming, trained", 0.717, "1", FITTED)
CEILING_STEEPNESS = Number("steepness with which uptake ends at the ceiling", 8.36, "1", FITTED)
SYNTHESIS_UNTRAINED = Number("fastest synthesis, untrained", 4.5, "mmol/kg wet/h", GREIWE_1999)
SYNTHESIS_RECREATIONAL = Number(
    "fastest synthesis, recreational",
    5.6,
    "mmol/kg wet/h",
    FITTED,
    "between Greiwe 1999 untrained 4.5 and trained 10.5; fitted",
)
SYNTHESIS_TRAINED = Number(
    "fastest synthesis, trained, once muscle is filled as usual",
    9.6,
    "mmol/kg wet/h",
    FITTED,
    "Greiwe 1999: 10.5 over the first 6 h; Flynn 2020: 8 over the first 4 h; fitted",
)
FAST_TRAINED = Number(
    "by how much synthesis is faster in empty muscle, trained", 1.35, "1", FITTED,
    "Price 1994: several times faster in the first half hour or so",
)  # fmt: skip
FAST_OTHERS = Number(
    "the same, untrained and recreational", 0.0, "1", GREIWE_1999,
    "a third of the glucose carriers of the trained; 4.5 over 6 h shows no fast part",
)  # fmt: skip
FAST_UNDER = Number(
    "muscle glycogen under which synthesis is faster",
    132.0,
    "mmol/kg wet",
    PRICE_1994,
    "there a step at about 35; here a slope down to this; fitted",
)
USUAL_UNTRAINED = Number("usual muscle glycogen, untrained", 75.34, "mmol/kg wet", FITTED, "fitted")
USUAL_RECREATIONAL = Number("usual muscle glycogen, recreational", 100.0, "mmol/kg wet", AREA_2018)
USUAL_TRAINED = Number(
    "usual muscle glycogen, trained", 111.6, "mmol/kg wet", FITTED, "Areta 2018: 107; fitted"
)
LIVER_OF_LEAN = Number("liver of fat-free mass", 0.027, "kg/kg", TEXTBOOK, "1.6 kg in 60 kg")
LIVER_CEILING = Number(
    "liver glycogen ceiling", 85.0, "g/kg liver", NILSSON_1973, "500 mmol/kg is 81 g/kg"
)
LIVER_USUAL = Number("liver glycogen on a usual morning", 44.0, "g/kg liver", NILSSON_1973)

# Carbohydrate traffic
ABSORPTION = Number("absorption of eaten carbohydrate", 0.883, "1/h", FITTED, "first order; fitted")
OBLIGATE_GLUCOSE = Number(
    "glucose that brain and blood cells burn",
    1.6,
    "g/kg FFM/d",
    FITTED,
    "textbook about 2.3 (140 g/d); fitted",
)
KETOSIS_SPARING = Number(
    "share of it spared when the liver is empty", 0.30, "1", FITTED, "ketone bodies take over"
)
LIVER_HALF = Number("liver store at which sparing is half done", 12.47, "g", FITTED)
GLUCONEOGENESIS = Number(
    "glucose made from protein, glycerol and lactate",
    1.26,
    "g/kg FFM/d",
    FITTED,
    "textbook about 1; fitted",
)
LIVER_SHARE = Number(
    "share of spare glucose taken by the liver",
    0.195,
    "1",
    FITTED,
    "Taylor 1996: 0.19 of a meal; fitted",
)
MUSCLE_OXIDATION = Number(
    "carbohydrate burnt by fed muscle at 100 mmol/kg in energy balance", 6.96, "g/kg FFM/d", FITTED,
    "grows with a power of the store, as in Hall et al.",
)  # fmt: skip
OXIDATION_POWER = Number(
    "power of the store with which muscle burns carbohydrate",
    1.82,
    "1",
    FITTED,
    "2 in Hall et al. 2011; fitted",
)
OXIDATION_FASTED = Number("the same between meals, as a share", 0.275, "1", FITTED)
OXIDATION_ENERGY = Number(
    "how an energy surplus spares carbohydrate", 3.44, "1", FITTED,
    "burn falls as exp(-this x surplus as a share of expenditure)",
)  # fmt: skip
OXIDATION_PRIMED = Number(
    "how priming spares carbohydrate", 3.51, "1", FITTED,
    "burn falls as exp(-this x (priming - recreational priming))",
)  # fmt: skip
LOW_LEVEL = Number(
    "muscle glycogen under which muscle refills at the liver's cost",
    42.04,
    "mmol/kg wet",
    FITTED,
    "Shiose: 25.5 to 33.2 in a day on under 1 g/kg; fitted",
)
LOW_REFILL = Number(
    "rate of that refill from empty", 2.0, "g/kg FFM/d", FITTED, "see the level; fitted"
)
ENERGY_LEAST = Number("energy surplus share at which the effect ends, low", -0.3, "1", FITTED)
ENERGY_MOST = Number("energy surplus share at which the effect ends, high", 0.454, "1", FITTED)
SPILL_LAG = Number("time until spilled carbohydrate shows", 1.0, "d", SPILLING)
SPILL_KEPT = Number("time for which it then shows", 1.2, "d", SPILLING)
SPILL_UNSEEN = Number("carbohydrate past the stores that never shows", 3.8, "g/kg FFM/d", SPILLING)

# Exercise
WORK_FLOOR = Number(
    "muscle glycogen at which hard work has to stop",
    22.0,
    "mmol/kg wet",
    FITTED,
    "Shiose rides ended at 25.5 and 28.1; fitted",
)
DEPLETING_LEAVES = Number(
    "share of muscle glycogen above that floor left by depleting work", 0.09, "1", SHIOSE_ABSTRACT,
    "76.2 to 28.1 is 0.11, 71.6 to 25.5 is 0.07",
)  # fmt: skip
DEPLETING_HOURS = Number("length of depleting work", 2.0, "h", FITTED)
DEPLETING_ENERGY = Number("energy of depleting work", 12.0, "kcal/kg", TEXTBOOK)
DEPLETING_SWEAT = Number("sweat of depleting work", 0.030, "L/kg", TEXTBOOK)
LIGHT_LEAVES = Number("share above the floor left by light work", 0.871, "1", FITTED)
LIGHT_HOURS = Number("length of light work", 1.0, "h", FITTED)
LIGHT_ENERGY = Number("energy of light work", 5.0, "kcal/kg", TEXTBOOK)
LIGHT_SWEAT = Number("sweat of light work", 0.008, "L/kg", TEXTBOOK)

# Water and sodium
BOUND_WATER = Number(
    "water held with glycogen", 2.85, "g/g", FITTED, "Hall et al. 2011: about 2.7; fitted"
)
SODIUM_OF_WATER = Number("sodium of extracellular water", 3220.0, "mg/L", HALL_SODIUM)
SODIUM_EXCRETION = Number("sodium excretion per extracellular litre", 3000.0, "mg/L/d", HALL_SODIUM)
SODIUM_CARB = Number(
    "sodium lost without carbohydrate",
    3935.0,
    "mg/d",
    FITTED,
    "published 4000; fitted, and only under the ketosis threshold",
)
KETOSIS_CARB = Number("carbohydrate under which sodium is lost", 2.01, "g/kg FFM/d", FITTED)
SODIUM_ENERGY = Number(
    "share of expenditure under which food brings less than the usual sodium", 0.6, "1", FITTED
)
SODIUM_GAIN_MOST = Number(
    "most extracellular water that more sodium adds", 0.6, "L", HEER_2000, "fitted"
)
SODIUM_USUAL = Number("usual sodium", 3400.0, "mg/d", IOM_WATER, "population mean, from memory")
INSENSIBLE = Number("water lost through skin, lungs and stool", 0.014, "L/kg/d", TEXTBOOK)
URINE_LEAST = Number("least urine", 0.007, "L/kg/d", TEXTBOOK, "about 0.5 L/d")
METABOLIC_WATER = Number("water made by oxidation", 0.13, "L per 1000 kcal", TEXTBOOK)
REHYDRATION = Number("time in which a water deficit is made good", 2.0, "h", TEXTBOOK)
WATER_USUAL_MALE = Number("water of a usual day, men", 2.5, "L/d", EFSA_WATER, "food included")
WATER_USUAL_FEMALE = Number("water of a usual day, women", 2.0, "L/d", EFSA_WATER, "food included")
MUSCLE_WATER_SHARE = Number("share of body water that is in muscle", 0.5, "1", TEXTBOOK)

# Gut content
GUT_PER_FIBRE = Number("gut content held per g of daily fibre", 0.034, "kg/(g/d)", FOO_2022)
GUT_TRANSIT = Number("time constant of gut content", 2.9, "d", FOO_2022, "fitted to both mornings")
FIBRE_PER_ENERGY = Number("fibre where none is stated", 0.012, "g/kcal", TEXTBOOK, "14 is advised")
FIBRE_MOST = Number("most fibre assumed where none is stated", 30.0, "g/d", FITTED)
FIBRE_USUAL_ENERGY = Number("fibre of a usual day", 0.012, "g/kcal", TEXTBOOK)

# Energy
REST_FIXED = Number("resting expenditure, fixed part", 500.0, "kcal/d", CUNNINGHAM_1980)
REST_PER_LEAN = Number("resting expenditure per fat-free kg", 22.0, "kcal/kg/d", CUNNINGHAM_1980)
DAILY_ACTIVITY = Number("activity factor without exercise", 1.40, "1", TEXTBOOK)
CARB_ENERGY = Number("energy of carbohydrate", 4.0, "kcal/g", EU_1169)
PROTEIN_ENERGY = Number("energy of protein", 4.0, "kcal/g", EU_1169)
FAT_ENERGY = Number("energy of fat", 9.0, "kcal/g", EU_1169)
TISSUE_ENERGY = Number("energy of body tissue", 7700.0, "kcal/kg", WISHNOFSKY)
FAT_SYNTHESIS_COST = Number("energy lost in making fat of carbohydrate", 0.25, "1", ACHESON_1988)
PROTEIN_USUAL = Number("protein where none is stated", 1.6, "g/kg/d", TEXTBOOK)
FAT_LEAST = Number("least fat assumed where none is stated", 0.4, "g/kg/d", TEXTBOOK)
BODY_FAT_MALE = Number("body fat where none is stated, men", 15.0, "%", TEXTBOOK)
BODY_FAT_FEMALE = Number("body fat where none is stated, women", 24.0, "%", TEXTBOOK)
WAKING_HOURS = Number("hours of the day in which food is eaten", 16.0, "h", TEXTBOOK)
