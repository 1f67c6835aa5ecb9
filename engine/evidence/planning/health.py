"""What the health questions before a first week rest on, and from where they ask for a doctor."""

from __future__ import annotations

from engine.evidence.deciding import OWN_CHOICE
from engine.evidence.source import Number, Provenance, Source, mark

# The five questions were read as printed in the paper's box. It was made for asking aloud, in women
# of 18 to 40, with a clinic's patients against students: in people who diet for a sport, the questions
# on lost weight and on food are often answered yes without an eating disorder. It only says who is to
# see a doctor first. The German wording is that of the KiGGS survey (Hölling & Schlack 2007), which
# Berger et al. 2011 (Psychother Psychosom Med Psychol 61:311) held against the EAT-26D; the survey's
# wording is from memory.
SCOFF_1999 = Source(
    "scoff-1999",
    mark(
        "Morgan, Reid & Lacey 1999, BMJ 319:1467: five questions (SCOFF); two or more answered yes "
        "raise the suspicion of an eating disorder, for a doctor to look into"
    ),
    Provenance.SEEN,
)
# Neither a score nor the clinical tool of the statement (IOC REDs CAT2, for doctors), nor the LEAF-Q
# (Melin et al. 2014) or the LEAM-Q (Lundy et al. 2022), questionnaires that asked for such signs: our
# list borrows what is asked about, and no weights. Which sign leads where is our own choice.
REDS_SIGNS_2023 = Source(
    "reds-signs-2023",
    mark(
        "Mountjoy et al. 2023, Br J Sports Med 57:1073: signs of too little energy in women and "
        "men, such as periods, libido, bones, illness, mood and sleep; for a doctor to judge"
    ),
    Provenance.SEEN,
)
WHO_BMI = Source(
    "who-bmi",
    mark(
        "World Health Organization, body mass index of adults: under 18.5 is underweight, under 17 "
        "moderate or severe thinness"
    ),
    Provenance.MEMORY,
)
# The criterion of weight of ICD-10 F50.0 is a body mass index of 17.5 or less; from memory.
ICD_10_WEIGHT = Source(
    "icd-10-f50",
    mark(
        "ICD-10, F50.0: body weight at which anorexia nervosa is looked for (body mass index 17.5 "
        "or less)"
    ),
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
