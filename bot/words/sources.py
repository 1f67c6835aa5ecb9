"""What sources say, as it is shown to people under a decision, a finding or a bound.

A publication is cited as it stands; what we say of it is said in the reader's language. The engine
holds the English ones (`engine.evidence`).
"""

from __future__ import annotations

from bot.words.languages import mark

#: A citation of the engine with a sentence in it.
SENTENCES = (
    mark("This project's own, cautious choice"),
    mark("Common practice among physique coaches; no study of it was found"),
    mark(
        "common practice that a load is begun from the usual one and moved by what is seen; on this "
        "project's virtual athletes, never on people, a first load's distance from the usual one says"
        " more of what is needed than a morning's answers; figures set there"
    ),
    mark("An answer in the health questions needs a doctor's clearance before any peak week"),
    mark("an injury needs a doctor first"),
    mark(
        "Common practice: a peak week is worth a per cent or two, and only to somebody already "
        "lean; Homer et al. 2024 (Nutrition 127:112528) saw 0.3 % more body mass and 2.1 % more"
        " muscle thickness than usual in very lean men"
    ),
    mark(
        "Common practice, and Escalante et al. 2021 (BMC Sports Sci Med Rehabil 13:68): run the"
        " week as a trial two to eight weeks before; one earlier outcome says more than any "
        "table"
    ),
    mark(
        "Reale 2018, Int J Sport Nutr Exerc Metab 28:565-573 (100 mL/kg a day for three days in"
        " combat athletes, electrolytes watched and in range: the highest published in such "
        "athletes)"
    ),
    mark(
        "Areta & Hopkins 2018, Sports Med 48:2091-2102: a high-carbohydrate diet is 6 g/kg a "
        "day or more for three days, or 7 g/kg or more for two"
    ),
    mark("Burke et al. 2011, J Sports Sci 29:S17-27: load with 10-12 g/kg per 24 h for 36-48 h"),
    mark(
        "Cheuvront et al. 2004, Int J Sport Nutr Exerc Metab 14:532-540: morning body mass "
        "varies from day to day by 0.51 kg, 0.66 % (SD); three mornings make a baseline"
    ),
    mark(
        "de Moraes et al. 2019, J Sports Sci Med 18:772-779: of 15 bodybuilders who loaded, 7 "
        "had diarrhoea, 4 of them severe"
    ),
    mark(
        "EFSA 2010, EFSA Journal 8(3):1459: adequate intake of water from drinks 1.4 L a day "
        "for women and 1.75 L for men"
    ),
    mark(
        "Escalante et al. 2021, BMC Sports Sci Med Rehabil 13:68: peak-week loads of about 3-12"
        " g/kg a day over one to three days"
    ),
    mark(
        "Fairchild et al. 2002, Med Sci Sports Exerc 34:980-986: muscle glycogen from 109.1 to "
        "198.2 mmol/kg wet weight in 24 h at 10.3 g/kg"
    ),
    mark(
        "Fernandez-Elias et al. 2015, Eur J Appl Physiol 115:1919-1926: at least 3 g water with"
        " each gram of glycogen; the glycogen came back as fast on little water"
    ),
    mark(
        "Foo et al. 2022, Int J Sport Nutr Exerc Metab 32:256-264: fibre from 30 to under 10 g "
        "a day took 0.40 kg of gut content off in four days"
    ),
    mark(
        "Homer et al. 2024, Nutrition 127:112528: very lean men after three days of depletion "
        "gained 0.8 % body mass on one day of 9 g/kg"
    ),
    mark(
        "Kreitzman et al. 1992, Am J Clin Nutr 56:292S-293S: glycogen is held with 3-4 parts water"
    ),
    mark(
        "Roberts et al. 2020, J Hum Kinet 71:79-108: protein 1.8-2.7 g/kg a day in contest "
        "preparation"
    ),
    mark(
        "Sedlock 2008, Curr Sports Med Rep 7:209-213: women need more than 8 g/kg a day, and "
        "enough energy, for a load to take"
    ),
    mark("Shiose et al. 2016, J Appl Physiol 121:205-211: 12 g/kg a day for 72 h"),
    mark(
        "Computed on this project's virtual athletes, never measured on people: of those whom "
        "another load would help, three in four need up to about 3 g/kg a day more or less than"
        " a usual plan"
    ),
    mark(
        "Computed from Fairchild et al. 2002: (198.2 - 109.1) mmol/kg x 162 g/mol = 14.4 g per "
        "kg wet muscle, with muscle at 28 % of body mass"
    ),
    mark(
        "Computed from Homer et al. 2024: +0.8 % body mass where plan arithmetic says 5 g/kg x "
        "4.5 = 2.25 % (habitual 4 g/kg is assumed)"
    ),
    mark("90th percentile of the standard normal distribution (any table)"),
    mark(
        "common practice that a correction grows with how far the look is off; its figures are "
        "set on three of this project's virtual worlds (one-store, two-phase, pool) with an eye"
        " on five more, never on people"
    ),
    mark(
        "Casa 2000, National Athletic Trainers' Association position statement: fluid "
        "replacement for athletes, J Athl Train 35:212-224 (classes of body mass change: "
        "minimal to 3 %, significant 3-5 %, serious over 5 %)"
    ),
    mark(
        "McDermott 2017, National Athletic Trainers' Association position statement, J Athl "
        "Train 52:877-895 (normal range +1 to -3 %, effects from about 2 %)"
    ),
    mark(
        "Hew-Butler 2015, third exercise-associated hyponatraemia consensus, Clin J Sport Med "
        "25:303-320 (weight gain with headache, nausea, vomiting, swollen hands; confusion and "
        "seizures are emergencies)"
    ),
    mark(
        "EFSA 2010, Dietary reference values for water, EFSA Journal 8(3):1459 (adequate "
        "intake, food included: 2.0 L women, 2.5 L men)"
    ),
    mark(
        "Institute of Medicine 2005, Dietary reference intakes for water (the kidneys excrete "
        "at most 0.7 to 1.0 L an hour)"
    ),
    mark(
        "Armstrong 1994, Int J Sport Nutr 4:265-279 (urine colour 1 to 8; 7 and 8 are classed "
        "as extremely dehydrated with the chart)"
    ),
    mark("Tachycardia of an adult: more than 100 beats a minute at rest (clinical definition)"),
    mark(
        "Loucks 2011, J Sports Sci 29:S7-S15; Mountjoy 2018, Br J Sports Med 52:687-697 (low "
        "energy availability: under 30 kcal per kg fat-free mass a day)"
    ),
    mark(
        "Ainsworth 2011, Compendium of Physical Activities, Med Sci Sports Exerc 43:1575-1581 "
        "(brisk walking 4.3 MET; resistance training, 8-15 repetitions, 3.5 MET)"
    ),
    mark(
        "Regulation (EU) No 1169/2011, Annex XIV (conversion factors: carbohydrate 4, protein "
        "4, fat 9, fibre 2 kcal/g)"
    ),
    mark("NCAA wrestling weight certification rule (at most 1.5 % of body mass a week)"),
    mark(
        "Watson 2015, Sleep 38:843-844, recommends 7 h or more for adults; that two nights "
        "running under 5 h are worth telling the coach is our own choice"
    ),
    mark("a morning without an answer in peak week is told to the coach"),
    mark("how far a day's drinking may miss its target before the coach is told"),
    mark(
        "Signs before emergencies in physique athletes: paralysis and palpitations (Mayr 2012, "
        "Am J Emerg Med 30:1324.e5; Cheung 2014, Case Rep Endocrinol 2014:483835), weakness "
        "(Sturmi & Rutecki 1995, Phys Sportsmed 23(11):49-53), refeeding (Lapinskiene 2018, "
        "Clin Nutr ESPEN 23:253-255)"
    ),
    mark(
        "signs for which first-aid teaching has one call an ambulance at once: fainting, chest "
        "pain, fits, sudden severe headache, breathlessness, thoughts of ending one's life"
    ),
    mark(
        "Life-threatening potassium disturbance after diuretics and potassium tablets before a "
        "show: Sturmi & Rutecki 1995, Phys Sportsmed 23(11):49-53; Mayr 2012, Am J Emerg Med "
        "30:1324.e5"
    ),
    mark(
        "Exertional rhabdomyolysis: muscle pain, weakness and dark urine are its classic signs;"
        " emergency care at once, for the kidneys and the heart (taught in sports medicine)"
    ),
    mark(
        "Passing no urine while the body swells is taught as a sign of failing kidneys, and "
        "holding water back is how exercise-associated hyponatraemia comes about (Hew-Butler "
        "2015, Clin J Sport Med 25:303-320)"
    ),
    mark("every complaint of a dieting athlete is told to the coach"),
    mark("a reported complaint that cannot be placed is read by a person"),
    mark("one missed morning is bridged"),
    mark("past it, a slip of the finger"),
    mark("an hour in the gym"),
    mark(
        "Medicine (Baltimore) 2017;96(40):e8251: a man of 28, no drugs, four days of "
        "carbohydrate binge after a contest, +10 kg, potassium 1.8 mmol/L, paralysed; Cheung "
        "2014, Case Rep Endocrinol 2014:483835; Lapinskiene 2018, Clin Nutr ESPEN 23:253-255; "
        "refeeding problems come within five days (ASPEN 2020, Nutr Clin Pract 35:178-195)"
    ),
    mark(
        "Jackson & Pollock 1978, Br J Nutr 40:497-504: body density of men from skinfolds "
        "(standard error 0.0077 to 0.0078 g/mL, some 3.5 % body fat; very lean athletes were "
        "few among them)"
    ),
    mark(
        "Jackson, Pollock & Ward 1980, Med Sci Sports Exerc 12:175-182: body density of women "
        "from skinfolds (331 women of 18 to 55)"
    ),
    mark("Siri 1961: body fat in % = 495 / density (g/mL) - 450"),
    mark(
        "Mifflin, St Jeor et al. 1990, Am J Clin Nutr 51:241-247: resting energy 10 x kg + 6.25"
        " x cm - 5 x years, + 5 for men, - 161 for women (kcal a day)"
    ),
    mark(
        "Cunningham 1980, Am J Clin Nutr 33:2372-2374: resting energy 500 + 22 x fat-free mass "
        "in kg (kcal a day)"
    ),
    mark("Helms et al. 2014, J Int Soc Sports Nutr 11:20: lose 0.5 to 1 % of body mass a week"),
    mark(
        "Mountjoy et al. 2023, Br J Sports Med 57:1073: periods that stay away are a sign of "
        "low energy availability and are for a doctor to look at"
    ),
    mark(
        "NICE criteria for a high risk of refeeding problems: body mass index under 16, or more"
        " than 15 % of body mass lost in 3 to 6 months, by themselves"
    ),
    mark(
        "Escalante et al. 2021, BMC Sports Sci Med Rehabil 13:68: in peak week neither water "
        "nor sodium is to be cut hard, and whatever is done is to be practised"
    ),
    mark(
        "Bie 2018, Am J Physiol Regul (doi 10.1152/ajpregu.00363.2017): a lasting 100 mmol "
        "(2,300 mg) a day more holds about 0.9 L of water; Heer 2000, Am J Physiol Renal "
        "278:F585, saw none. What a swing does to one athlete cannot be foretold"
    ),
    mark(
        "Energy by Annex XIV of Regulation (EU) No 1169/2011 (carbohydrate 4 without fibre, "
        "fibre 2, protein 4, fat 9 kcal/g) or by the general Atwater factors 4/9/4 with fibre "
        "counted as carbohydrate, as US labels do (Merrill & Watt, USDA Handbook 74)"
    ),
    mark(
        "Morgan, Reid & Lacey 1999, BMJ 319:1467: five questions (SCOFF); two or more answered "
        "yes raise the suspicion of an eating disorder, for a doctor to look into"
    ),
    mark(
        "Mountjoy et al. 2023, Br J Sports Med 57:1073: signs of too little energy in women and"
        " men, such as periods, libido, bones, illness, mood and sleep; for a doctor to judge"
    ),
    mark(
        "World Health Organization, body mass index of adults: under 18.5 is underweight, under"
        " 17 moderate or severe thinness"
    ),
    mark(
        "ICD-10, F50.0: body weight at which anorexia nervosa is looked for (body mass index "
        "17.5 or less)"
    ),
)
