"""Every threshold of the safety flags, with unit and source."""

from __future__ import annotations

from engine.evidence.source import Number, Provenance, Source

NATA_2000 = Source(
    "nata-2000",
    "Casa 2000, National Athletic Trainers' Association position statement: fluid replacement for "
    "athletes, J Athl Train 35:212-224 (classes of body mass change: minimal to 3 %, significant "
    "3-5 %, serious over 5 %)",
    Provenance.MEMORY,
)
NATA_2017 = Source(
    "nata-2017",
    "McDermott 2017, National Athletic Trainers' Association position statement, "
    "J Athl Train 52:877-895 (normal range +1 to -3 %, effects from about 2 %)",
    Provenance.SEEN,
)
HEW_BUTLER_2015 = Source(
    "hew-butler-2015",
    "Hew-Butler 2015, third exercise-associated hyponatraemia consensus, Clin J Sport Med "
    "25:303-320 (weight gain with headache, nausea, vomiting, swollen hands; confusion and "
    "seizures are emergencies)",
    Provenance.SEEN,
)
EFSA_2010 = Source(
    "efsa-2010-water",
    "EFSA 2010, Dietary reference values for water, EFSA Journal 8(3):1459 (adequate intake, food "
    "included: 2.0 L women, 2.5 L men)",
    Provenance.SEEN,
)
IOM_2005 = Source(
    "iom-2005-water",
    "Institute of Medicine 2005, Dietary reference intakes for water (the kidneys excrete at most "
    "0.7 to 1.0 L an hour)",
    Provenance.SEEN,
)
REALE_2018 = Source(
    "reale-2018",
    "Reale 2018, Int J Sport Nutr Exerc Metab 28:565-573 (100 mL/kg a day for three days in combat "
    "athletes, electrolytes watched and in range: the highest published in such athletes)",
    Provenance.SEEN,
)
ARMSTRONG_1994 = Source(
    "armstrong-1994",
    "Armstrong 1994, Int J Sport Nutr 4:265-279 (urine colour 1 to 8; 7 and 8 are classed as "
    "extremely dehydrated with the chart)",
    Provenance.SEEN,
)
RESTING_PULSE = Source(
    "tachycardia",
    "Tachycardia of an adult: more than 100 beats a minute at rest (clinical definition)",
    Provenance.SEEN,
)
# The figure was seen; the two papers are cited from memory.
ENERGY_AVAILABILITY = Source(
    "energy-availability",
    "Loucks 2011, J Sports Sci 29:S7-S15; Mountjoy 2018, Br J Sports Med 52:687-697 (low energy "
    "availability: under 30 kcal per kg fat-free mass a day)",
    Provenance.SEEN,
)
COMPENDIUM_2011 = Source(
    "compendium-2011",
    "Ainsworth 2011, Compendium of Physical Activities, Med Sci Sports Exerc 43:1575-1581 (brisk "
    "walking 4.3 MET; resistance training, 8-15 repetitions, 3.5 MET)",
    Provenance.MEMORY,
)
ANNEX_XIV = Source(
    "eu-1169-2011-annex-xiv",
    "Regulation (EU) No 1169/2011, Annex XIV (conversion factors: carbohydrate 4, protein 4, "
    "fat 9, fibre 2 kcal/g)",
    Provenance.SEEN,
)
NCAA_WEIGHT_LOSS = Source(
    "ncaa-weight-loss",
    "NCAA wrestling weight certification rule (at most 1.5 % of body mass a week)",
    Provenance.SEEN,
)
# Watson 2015 is cited from memory.
ADULT_SLEEP = Source(
    "adult-sleep",
    "Watson 2015, Sleep 38:843-844, recommends 7 h or more for adults; that two nights running "
    "under 5 h are worth telling the coach is our own choice",
    Provenance.OURS,
)
MISSED_MORNING = Source(
    "missed-morning",
    "a morning without an answer in peak week is told to the coach",
    Provenance.PRACTICE,
)
OUR_WATER_MARGINS = Source(
    "water-against-target",
    "how far a day's drinking may miss its target before the coach is told",
    Provenance.OURS,
)
EMERGENCY_SIGNS = Source(
    "emergency-signs",
    "Signs before emergencies in physique athletes: paralysis and palpitations (Mayr 2012, Am J "
    "Emerg Med 30:1324.e5; Cheung 2014, Case Rep Endocrinol 2014:483835), weakness (Sturmi & "
    "Rutecki 1995, Phys Sportsmed 23(11):49-53), refeeding (Lapinskiene 2018, Clin Nutr ESPEN "
    "23:253-255)",
    Provenance.SEEN,
)
FIRST_AID = Source(
    "first-aid-red-flags",
    "signs for which first-aid teaching has one call an ambulance at once: fainting, chest pain, "
    "fits, sudden severe headache, breathlessness, thoughts of ending one's life",
    Provenance.PRACTICE,
)
DRUG_HARM = Source(
    "drug-case-reports",
    "Life-threatening potassium disturbance after diuretics and potassium tablets before a show: "
    "Sturmi & Rutecki 1995, Phys Sportsmed 23(11):49-53; Mayr 2012, Am J Emerg Med 30:1324.e5",
    Provenance.SEEN,
)
MUSCLE_BREAKDOWN = Source(
    "muscle-breakdown",
    "Exertional rhabdomyolysis: muscle pain, weakness and dark urine are its classic signs; "
    "emergency care at once, for the kidneys and the heart (taught in sports medicine)",
    Provenance.MEMORY,
)
NO_URINE = Source(
    "no-urine",
    "Passing no urine while the body swells is taught as a sign of failing kidneys, and holding "
    "water back is how exercise-associated hyponatraemia comes about (Hew-Butler 2015, Clin J Sport "
    "Med 25:303-320)",
    Provenance.PRACTICE,
)
A_COACH_IS_TOLD = Source(
    "a-coach-is-told",
    "every complaint of a dieting athlete is told to the coach",
    Provenance.PRACTICE,
)
A_HUMAN_LOOKS = Source(
    "a-human-looks",
    "a reported complaint that cannot be placed is read by a person",
    Provenance.PRACTICE,
)

# Weight
WEIGHT_DROP_DAY = Number(
    name="weight drop in 24 h", value=3, unit="% of body mass", source=NATA_2000,
    note="at or past it",
)  # fmt: skip
WEIGHT_DROP_BASELINE = Number(
    name="weight drop against the mass before the week", value=5, unit="% of body mass",
    source=NATA_2000, note="at or past it",
)  # fmt: skip
WEIGHT_RISE_DAY = Number(
    name="weight rise in a day with water at its ceiling", value=2, unit="% of body mass",
    source=HEW_BUTLER_2015, note="the pattern is published, the 2 % is our own reading of it",
)  # fmt: skip
LAST_MORNING_WITHIN = Number(
    name="how far back the last morning's weight may lie", value=2, unit="days",
    source=Source("one-missed-morning", "one missed morning is bridged", Provenance.OURS),
)  # fmt: skip
WEEKLY_LOSS = Number(
    name="weekly loss", value=1.5, unit="% of body mass per week", source=NCAA_WEIGHT_LOSS,
    note="past it",
)  # fmt: skip

# Water
WATER_ADEQUATE_WOMEN = Number(
    name="adequate intake of water, women", value=2.0, unit="L/day", source=EFSA_2010,
    note="strictly under; the published figure counts the water in food, the answer may not, "
    "so the flag errs to the safe side",
)  # fmt: skip
WATER_ADEQUATE_MEN = Number(
    name="adequate intake of water, men", value=2.5, unit="L/day", source=EFSA_2010,
    note="strictly under; as for women",
)  # fmt: skip
WATER_UNDER_TARGET = Number(
    name="drinking under target", value=60, unit="% of the day's target",
    source=OUR_WATER_MARGINS, note="strictly under",
)  # fmt: skip
WATER_HARDLY_ANY = Number(
    name="hardly any drinking", value=50, unit="% of the adequate intake",
    source=OUR_WATER_MARGINS, note="strictly under; a caution on the first day",
)  # fmt: skip
WATER_OVER_TARGET = Number(
    name="drinking over target", value=150, unit="% of the day's target",
    source=OUR_WATER_MARGINS, note="strictly over",
)  # fmt: skip
WATER_GUARD_RAIL = Number(
    name="most water in a day", value=100, unit="mL per kg body mass", source=REALE_2018,
    note="strictly over",
)  # fmt: skip
WATER_IN_AN_HOUR = Number(
    name="most water in an hour", value=1.0, unit="L/h", source=IOM_2005, note="strictly over"
)

# Other readings
URINE_DARK = Number(
    name="urine colour of extreme dehydration", value=7, unit="colour of 1 to 8",
    source=ARMSTRONG_1994, note="at or past it; vitamins, beetroot and medicines change it too",
)  # fmt: skip
URINE_DARKEST = Number(
    name="last colour of the chart", value=8, unit="colour of 1 to 8", source=ARMSTRONG_1994
)
PULSE_HIGH = Number(
    name="resting pulse", value=100, unit="beats/min", source=RESTING_PULSE, note="strictly over"
)
PULSE_BELIEVABLE = Number(
    name="most believable resting pulse", value=250, unit="beats/min",
    source=Source("believable-pulse", "past it, a slip of the finger", Provenance.OURS),
)  # fmt: skip
SHORT_SLEEP = Number(
    name="short sleep, two nights running", value=5, unit="h", source=ADULT_SLEEP,
    note="strictly under, both nights",
)  # fmt: skip
MISSED_CHECK_IN = Number(
    name="missed mornings before the coach is told", value=1, unit="mornings",
    source=MISSED_MORNING,
)  # fmt: skip

# Energy
KCAL_PER_G_CARB = Number(
    name="energy of carbohydrate", value=4, unit="kcal/g", source=ANNEX_XIV,
    note="available carbohydrate: without fibre",
)  # fmt: skip
KCAL_PER_G_PROTEIN = Number(name="energy of protein", value=4, unit="kcal/g", source=ANNEX_XIV)
KCAL_PER_G_FAT = Number(name="energy of fat", value=9, unit="kcal/g", source=ANNEX_XIV)
KCAL_PER_G_FIBRE = Number(name="energy of fibre", value=2, unit="kcal/g", source=ANNEX_XIV)
LOW_ENERGY_AVAILABILITY = Number(
    name="low energy availability", value=30, unit="kcal per kg fat-free mass per day",
    source=ENERGY_AVAILABILITY,
    note="strictly under; men may tolerate 20-25 (Fagerberg 2017), the higher figure is kept",
)  # fmt: skip
MET_CARDIO = Number(
    name="cardio of peak week, as brisk walking", value=4.3, unit="MET", source=COMPENDIUM_2011,
    note="resting metabolism (1 MET) is taken off, as energy availability counts exercise only",
)  # fmt: skip
MET_LIFTING = Number(
    name="resistance training, 8-15 repetitions", value=3.5, unit="MET", source=COMPENDIUM_2011
)
LIFTING_SESSION = Number(
    name="length of a training session", value=1.0, unit="h",
    source=Source("session-length", "an hour in the gym", Provenance.PRACTICE),
)  # fmt: skip
KCAL_PER_MET_KG_H = Number(
    name="energy of one MET", value=1.0, unit="kcal per kg per h", source=COMPENDIUM_2011
)
