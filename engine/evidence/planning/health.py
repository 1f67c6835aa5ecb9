"""Numbers behind the health screen, how ready an athlete is to peak, and the days after a show."""

from __future__ import annotations

from engine.evidence.deciding import COMMON_PRACTICE, OWN_CHOICE
from engine.evidence.safety import ENERGY_AVAILABILITY, NCAA_WEIGHT_LOSS
from engine.evidence.source import Number, Provenance, source_shown

# The five questions were read as printed in the paper's box. It was made for asking aloud, in women
# of 18 to 40, with a clinic's patients against students: in people who diet for a sport, the questions
# on lost weight and on food are often answered yes without an eating disorder. It only says who is to
# see a doctor first. The German wording is that of the KiGGS survey (Hölling & Schlack 2007), which
# Berger et al. 2011 (Psychother Psychosom Med Psychol 61:311) held against the EAT-26D; the survey's
# wording is from memory.
SCOFF_1999 = source_shown(
    "scoff-1999",
    "Morgan, Reid & Lacey 1999, BMJ 319:1467: five questions (SCOFF); two or more answered yes "
    "raise the suspicion of an eating disorder, for a doctor to look into",
    Provenance.SEEN,
)
# Neither a score nor the clinical tool of the statement (IOC REDs CAT2, for doctors), nor the LEAF-Q
# (Melin et al. 2014) or the LEAM-Q (Lundy et al. 2022), questionnaires that asked for such signs: our
# list borrows what is asked about, and no weights. Which sign leads where is our own choice.
REDS_SIGNS_2023 = source_shown(
    "reds-signs-2023",
    "Mountjoy et al. 2023, Br J Sports Med 57:1073: signs of too little energy in women and "
    "men, such as periods, libido, bones, illness, mood and sleep; for a doctor to judge",
    Provenance.SEEN,
)
WHO_BMI = source_shown(
    "who-bmi",
    "World Health Organization, body mass index of adults: under 18.5 is underweight, under 17 "
    "moderate or severe thinness",
    Provenance.MEMORY,
)
# The criterion of weight of ICD-10 F50.0 is a body mass index of 17.5 or less; from memory.
ICD_10_WEIGHT = source_shown(
    "icd-10-f50",
    "ICD-10, F50.0: body weight at which anorexia nervosa is looked for (body mass index 17.5 "
    "or less)",
    Provenance.MEMORY,
)

SCOFF_POSITIVE = Number("answers of the five that make it positive", 2, "answers", SCOFF_1999)
ENERGY_SIGNS = Number(
    "signs of low energy that together are a doctor's matter", 3, "signs",
    OWN_CHOICE,
)  # fmt: skip
BMI_UNDERWEIGHT = Number(
    "body mass index under which a doctor's clearance comes first", 18.5, "kg/m2",
    WHO_BMI, "strictly under",
)  # fmt: skip
BMI_FLOOR = Number(
    "body mass index under which no peak week runs", 17.5, "kg/m2",
    ICD_10_WEIGHT, "strictly under; there is nothing left to lose safely",
)  # fmt: skip
BMI_DOUBTED_UNDER = Number(
    "body mass index under which height or weight is asked about again", 16,
    "kg/m2", OWN_CHOICE, "a slip of the unit is likelier",
)  # fmt: skip
BMI_DOUBTED_OVER = Number(
    "body mass index over which height or weight is asked about again", 42,
    "kg/m2", OWN_CHOICE, "large muscular men reach the high thirties",
)  # fmt: skip
# Essential fat is about 3 % in men and 12 % in women (Behnke & Grande's reference bodies; from memory).
BODY_FAT_DOUBTED_UNDER_MEN = Number(
    "body fat under which it is asked about again, men", 4, "%", OWN_CHOICE
)
BODY_FAT_DOUBTED_UNDER_WOMEN = Number(
    "body fat under which it is asked about again, women", 10, "%",
    OWN_CHOICE,
)  # fmt: skip
BODY_FAT_DOUBTED_OVER_MEN = Number(
    "body fat over which it is asked about again, men", 35, "%", OWN_CHOICE
)
BODY_FAT_DOUBTED_OVER_WOMEN = Number(
    "body fat over which it is asked about again, women", 45, "%",
    OWN_CHOICE,
)  # fmt: skip


JACKSON_POLLOCK_1978 = source_shown(
    "jackson-pollock-1978",
    "Jackson & Pollock 1978, Br J Nutr 40:497-504: body density of men from skinfolds (standard "
    "error 0.0077 to 0.0078 g/mL, some 3.5 % body fat; very lean athletes were few among them)",
    Provenance.SEEN,
)
# Both equations were seen as quoted in public tables.
JACKSON_POLLOCK_WARD_1980 = source_shown(
    "jackson-pollock-ward-1980",
    "Jackson, Pollock & Ward 1980, Med Sci Sports Exerc 12:175-182: body density of women from "
    "skinfolds (331 women of 18 to 55)",
    Provenance.SEEN,
)
SIRI_1961 = source_shown(
    "siri-1961", "Siri 1961: body fat in % = 495 / density (g/mL) - 450", Provenance.SEEN
)
MIFFLIN_1990 = source_shown(
    "mifflin-1990",
    "Mifflin, St Jeor et al. 1990, Am J Clin Nutr 51:241-247: resting energy 10 x kg + 6.25 x cm - "
    "5 x years, + 5 for men, - 161 for women (kcal a day)",
    Provenance.SEEN,
)
CUNNINGHAM_1980 = source_shown(
    "cunningham-1980",
    "Cunningham 1980, Am J Clin Nutr 33:2372-2374: resting energy 500 + 22 x fat-free mass in kg "
    "(kcal a day)",
    Provenance.SEEN,
)
PEAK_WEEK_WORTH = source_shown(
    "what-a-peak-week-is-worth",
    "Common practice: a peak week is worth a per cent or two, and only to somebody already "
    "lean; Homer et al. 2024 (Nutrition 127:112528) saw 0.3 % more body mass and 2.1 % more "
    "muscle thickness than usual in very lean men",
    Provenance.PRACTICE,
)
HELMS_2014_LOSS = source_shown(
    "helms-2014-loss",
    "Helms et al. 2014, J Int Soc Sports Nutr 11:20: lose 0.5 to 1 % of body mass a week",
    Provenance.SEEN,
)
REDS_2023 = source_shown(
    "reds-2023",
    "Mountjoy et al. 2023, Br J Sports Med 57:1073: periods that stay away are a sign of low "
    "energy availability and are for a doctor to look at",
    Provenance.SEEN,
)
NICE_REFEEDING = source_shown(
    "nice-refeeding",
    "NICE criteria for a high risk of refeeding problems: body mass index under 16, or more than "
    "15 % of body mass lost in 3 to 6 months, by themselves",
    Provenance.SEEN,
)
SCREENING = source_shown(
    "screening-first",
    "An answer in the health questions needs a doctor's clearance before any peak week",
    Provenance.PRACTICE,
)
INJURY = source_shown("injury-first", "an injury needs a doctor first", Provenance.PRACTICE)

CONDITION_READY = Number(
    "condition rating from which a peak week has something to show", 4, "of 5",
    PEAK_WEEK_WORTH,
)  # fmt: skip
BODY_FAT_HIGH_MEN = Number(
    "body fat over which a rating of lean is doubted, men", 10, "%",
    COMMON_PRACTICE,
)  # fmt: skip
BODY_FAT_HIGH_WOMEN = Number(
    "body fat over which a rating of lean is doubted, women", 18, "%",
    COMMON_PRACTICE,
)  # fmt: skip
LOSS_FAST = Number(
    "weekly loss that is fast", 1.0, "% of body mass per week",
    HELMS_2014_LOSS, "strictly over",
)  # fmt: skip
LOSS_TOO_FAST = Number(
    "weekly loss that is too fast", 1.5, "% of body mass per week",
    NCAA_WEIGHT_LOSS, "strictly over",
)  # fmt: skip
LONG_DIET_WEEKS = Number(
    "diet that has been long", 24, "weeks", COMMON_PRACTICE,
    "strictly over",
)  # fmt: skip
BMI_TOO_LOW = Number(
    "body mass index that is a doctor's matter", 16, "kg/m2",
    NICE_REFEEDING, "strictly under",
)  # fmt: skip
LOSS_IN_ALL = Number(
    "loss over the diet that is a doctor's matter", 15, "% of body mass",
    NICE_REFEEDING, "strictly over",
)  # fmt: skip
LOW_AVAILABILITY = Number(
    "low energy availability", 30, "kcal per kg fat-free mass per day",
    ENERGY_AVAILABILITY, "strictly under; a note, for one day's sum is an estimate",
)  # fmt: skip
VERY_LOW_AVAILABILITY = Number(
    "very low energy availability", 20, "kcal per kg fat-free mass per day",
    ENERGY_AVAILABILITY,
    "strictly under; the lower end of what men were thought to bear (Fagerberg 2017)",
)  # fmt: skip
SLEEP_SHORT_H = Number("sleep a night that is short", 6, "h", OWN_CHOICE, "strictly under")
SKINFOLD_LEAST_MM = Number("least skinfold", 2, "mm", OWN_CHOICE)
SKINFOLD_MOST_MM = Number("most skinfold", 80, "mm", OWN_CHOICE)


AFTER_SHOW_HARM = source_shown(
    "after-show-cases",
    "Medicine (Baltimore) 2017;96(40):e8251: a man of 28, no drugs, four days of carbohydrate "
    "binge after a contest, +10 kg, potassium 1.8 mmol/L, paralysed; Cheung 2014, Case Rep "
    "Endocrinol 2014:483835; Lapinskiene 2018, Clin Nutr ESPEN 23:253-255; refeeding problems "
    "come within five days (ASPEN 2020, Nutr Clin Pract 35:178-195)",
    Provenance.SEEN,
)
AFTER_RISE = Number(
    "weight over the last morning before the stage that is told to the coach", 5,
    "% of body mass", OWN_CHOICE,
    "strictly over, within three days; the published case gained over a tenth in four",
)  # fmt: skip
AFTER_DAYS = Number(
    "mornings that are asked after a show", 3, "days", AFTER_SHOW_HARM,
    "as the cases came within days; five is the published span of refeeding problems",
)  # fmt: skip
