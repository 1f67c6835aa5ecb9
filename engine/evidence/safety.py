"""Every threshold of the safety flags, with unit and source."""

from __future__ import annotations

from engine.evidence.source import Number, Provenance, source_shown

NATA_2000 = source_shown(
    "nata-2000",
    "Casa 2000, National Athletic Trainers' Association position statement: fluid replacement for "
    "athletes, J Athl Train 35:212-224 (classes of body mass change: minimal to 3 %, significant "
    "3-5 %, serious over 5 %)",
    Provenance.MEMORY,
)
NATA_2017 = source_shown(
    "nata-2017",
    "McDermott 2017, National Athletic Trainers' Association position statement, "
    "J Athl Train 52:877-895 (normal range +1 to -3 %, effects from about 2 %)",
    Provenance.SEEN,
)
HEW_BUTLER_2015 = source_shown(
    "hew-butler-2015",
    "Hew-Butler 2015, third exercise-associated hyponatraemia consensus, Clin J Sport Med "
    "25:303-320 (weight gain with headache, nausea, vomiting, swollen hands; confusion and "
    "seizures are emergencies)",
    Provenance.SEEN,
)
EFSA_2010 = source_shown(
    "efsa-2010-water",
    "EFSA 2010, Dietary reference values for water, EFSA Journal 8(3):1459 (adequate intake, food "
    "included: 2.0 L women, 2.5 L men)",
    Provenance.SEEN,
)
IOM_2005 = source_shown(
    "iom-2005-water",
    "Institute of Medicine 2005, Dietary reference intakes for water (the kidneys excrete at most "
    "0.7 to 1.0 L an hour)",
    Provenance.SEEN,
)
REALE_2018 = source_shown(
    "reale-2018",
    "Reale 2018, Int J Sport Nutr Exerc Metab 28:565-573 (100 mL/kg a day for three days in combat "
    "athletes, electrolytes watched and in range: the highest published in such athletes)",
    Provenance.SEEN,
)
ARMSTRONG_1994 = source_shown(
    "armstrong-1994",
    "Armstrong 1994, Int J Sport Nutr 4:265-279 (urine colour 1 to 8; 7 and 8 are classed as "
    "extremely dehydrated with the chart)",
    Provenance.SEEN,
)
RESTING_PULSE = source_shown(
    "tachycardia",
    "Tachycardia of an adult: more than 100 beats a minute at rest (clinical definition)",
    Provenance.SEEN,
)
# The figure was seen; the two papers are cited from memory.
ENERGY_AVAILABILITY = source_shown(
    "energy-availability",
    "Loucks 2011, J Sports Sci 29:S7-S15; Mountjoy 2018, Br J Sports Med 52:687-697 (low energy "
    "availability: under 30 kcal per kg fat-free mass a day)",
    Provenance.SEEN,
)
COMPENDIUM_2011 = source_shown(
    "compendium-2011",
    "Ainsworth 2011, Compendium of Physical Activities, Med Sci Sports Exerc 43:1575-1581 (brisk "
    "walking 4.3 MET; resistance training, 8-15 repetitions, 3.5 MET)",
    Provenance.MEMORY,
)
ANNEX_XIV = source_shown(
    "eu-1169-2011-annex-xiv",
    "Regulation (EU) No 1169/2011, Annex XIV (conversion factors: carbohydrate 4, protein 4, "
    "fat 9, fibre 2 kcal/g)",
    Provenance.SEEN,
)
NCAA_WEIGHT_LOSS = source_shown(
    "ncaa-weight-loss",
    "NCAA wrestling weight certification rule (at most 1.5 % of body mass a week)",
    Provenance.SEEN,
)
# Watson 2015 is cited from memory.
ADULT_SLEEP = source_shown(
    "adult-sleep",
    "Watson 2015, Sleep 38:843-844, recommends 7 h or more for adults; that two nights running "
    "under 5 h are worth telling the coach is our own choice",
    Provenance.OURS,
)
MISSED_MORNING = source_shown(
    "missed-morning",
    "a morning without an answer in peak week is told to the coach",
    Provenance.PRACTICE,
)
OUR_WATER_MARGINS = source_shown(
    "water-against-target",
    "how far a day's drinking may miss its target before the coach is told",
    Provenance.OURS,
)
EMERGENCY_SIGNS = source_shown(
    "emergency-signs",
    "Signs before emergencies in physique athletes: paralysis and palpitations (Mayr 2012, Am J "
    "Emerg Med 30:1324.e5; Cheung 2014, Case Rep Endocrinol 2014:483835), weakness (Sturmi & "
    "Rutecki 1995, Phys Sportsmed 23(11):49-53), refeeding (Lapinskiene 2018, Clin Nutr ESPEN "
    "23:253-255)",
    Provenance.SEEN,
)
FIRST_AID = source_shown(
    "first-aid-red-flags",
    "signs for which first-aid teaching has one call an ambulance at once: fainting, chest pain, "
    "fits, sudden severe headache, breathlessness, thoughts of ending one's life",
    Provenance.PRACTICE,
)
DRUG_HARM = source_shown(
    "drug-case-reports",
    "Life-threatening potassium disturbance after diuretics and potassium tablets before a show: "
    "Sturmi & Rutecki 1995, Phys Sportsmed 23(11):49-53; Mayr 2012, Am J Emerg Med 30:1324.e5",
    Provenance.SEEN,
)
MUSCLE_BREAKDOWN = source_shown(
    "muscle-breakdown",
    "Exertional rhabdomyolysis: muscle pain, weakness and dark urine are its classic signs; "
    "emergency care at once, for the kidneys and the heart (taught in sports medicine)",
    Provenance.MEMORY,
)
NO_URINE = source_shown(
    "no-urine",
    "Passing no urine while the body swells is taught as a sign of failing kidneys, and holding "
    "water back is how exercise-associated hyponatraemia comes about (Hew-Butler 2015, Clin J "
    "Sport Med 25:303-320)",
    Provenance.PRACTICE,
)
A_COACH_IS_TOLD = source_shown(
    "a-coach-is-told",
    "every complaint of a dieting athlete is told to the coach",
    Provenance.PRACTICE,
)
A_HUMAN_LOOKS = source_shown(
    "a-human-looks",
    "a reported complaint that cannot be placed is read by a person",
    Provenance.PRACTICE,
)

# Weight
WEIGHT_DROP_DAY = Number(
    "weight drop in 24 h", 3, "% of body mass", NATA_2000,
    "at or past it",
)  # fmt: skip
WEIGHT_DROP_BASELINE = Number(
    "weight drop against the mass before the week", 5, "% of body mass",
    NATA_2000, "at or past it",
)  # fmt: skip
WEIGHT_RISE_DAY = Number(
    "weight rise in a day with water at its ceiling", 2, "% of body mass",
    HEW_BUTLER_2015, "the pattern is published, the 2 % is our own reading of it",
)  # fmt: skip
LAST_MORNING_WITHIN = Number(
    "how far back the last morning's weight may lie", 2, "days",
    source_shown("one-missed-morning", "one missed morning is bridged", Provenance.OURS),
)  # fmt: skip
WEEKLY_LOSS = Number(
    "weekly loss", 1.5, "% of body mass per week", NCAA_WEIGHT_LOSS,
    "past it",
)  # fmt: skip

# Water
WATER_ADEQUATE_WOMEN = Number(
    "adequate intake of water, women", 2.0, "L/day", EFSA_2010,
    "strictly under; the published figure counts the water in food, the answer may not, "
    "so the flag errs to the safe side",
)  # fmt: skip
WATER_ADEQUATE_MEN = Number(
    "adequate intake of water, men", 2.5, "L/day", EFSA_2010,
    "strictly under; as for women",
)  # fmt: skip
WATER_UNDER_TARGET = Number(
    "drinking under target", 60, "% of the day's target",
    OUR_WATER_MARGINS, "strictly under",
)  # fmt: skip
WATER_HARDLY_ANY = Number(
    "hardly any drinking", 50, "% of the adequate intake",
    OUR_WATER_MARGINS, "strictly under; a caution on the first day",
)  # fmt: skip
WATER_OVER_TARGET = Number(
    "drinking over target", 150, "% of the day's target",
    OUR_WATER_MARGINS, "strictly over",
)  # fmt: skip
WATER_GUARD_RAIL = Number(
    "most water in a day", 100, "mL per kg body mass", REALE_2018,
    "strictly over",
)  # fmt: skip
WATER_IN_AN_HOUR = Number("most water in an hour", 1.0, "L/h", IOM_2005, "strictly over")

# Other readings
URINE_DARK = Number(
    "urine colour of extreme dehydration", 7, "colour of 1 to 8",
    ARMSTRONG_1994, "at or past it; vitamins, beetroot and medicines change it too",
)  # fmt: skip
URINE_DARKEST = Number("last colour of the chart", 8, "colour of 1 to 8", ARMSTRONG_1994)
PULSE_HIGH = Number("resting pulse", 100, "beats/min", RESTING_PULSE, "strictly over")
PULSE_BELIEVABLE = Number(
    "most believable resting pulse", 250, "beats/min",
    source_shown("believable-pulse", "past it, a slip of the finger", Provenance.OURS),
)  # fmt: skip
SHORT_SLEEP = Number(
    "short sleep, two nights running", 5, "h", ADULT_SLEEP,
    "strictly under, both nights",
)  # fmt: skip
MISSED_CHECK_IN = Number(
    "missed mornings before the coach is told", 1, "mornings",
    MISSED_MORNING,
)  # fmt: skip
MISSED_IN_SILENCE = Number(
    "mornings missed without a word in between, before the coach is asked to call", 2, "mornings",
    MISSED_MORNING,
)  # fmt: skip

# Energy
KCAL_PER_G_CARB = Number(
    "energy of carbohydrate", 4, "kcal/g", ANNEX_XIV,
    "available carbohydrate: without fibre",
)  # fmt: skip
KCAL_PER_G_PROTEIN = Number("energy of protein", 4, "kcal/g", ANNEX_XIV)
KCAL_PER_G_FAT = Number("energy of fat", 9, "kcal/g", ANNEX_XIV)
KCAL_PER_G_FIBRE = Number("energy of fibre", 2, "kcal/g", ANNEX_XIV)
LOW_ENERGY_AVAILABILITY = Number(
    "low energy availability", 30, "kcal per kg fat-free mass per day",
    ENERGY_AVAILABILITY,
    "strictly under; men may tolerate 20-25 (Fagerberg 2017), the higher figure is kept",
)  # fmt: skip
MET_CARDIO = Number(
    "cardio of peak week, as brisk walking", 4.3, "MET", COMPENDIUM_2011,
    "resting metabolism (1 MET) is taken off, as energy availability counts exercise only",
)  # fmt: skip
MET_LIFTING = Number("resistance training, 8-15 repetitions", 3.5, "MET", COMPENDIUM_2011)
LIFTING_SESSION = Number(
    "length of a training session", 1.0, "h",
    source_shown("session-length", "an hour in the gym", Provenance.PRACTICE),
)  # fmt: skip
KCAL_PER_MET_KG_H = Number("energy of one MET", 1.0, "kcal per kg per h", COMPENDIUM_2011)
