"""Numbers behind body composition, resting energy, and whether a peak week is worth it."""

from __future__ import annotations

from engine.evidence.deciding import COMMON_PRACTICE, OWN_CHOICE
from engine.evidence.safety import ENERGY_AVAILABILITY, NCAA_WEIGHT_LOSS
from engine.evidence.source import Number, Provenance, Source, mark

JACKSON_POLLOCK_1978 = Source(
    "jackson-pollock-1978",
    mark(
        "Jackson & Pollock 1978, Br J Nutr 40:497-504: body density of men from skinfolds (standard "
        "error 0.0077 to 0.0078 g/mL, some 3.5 % body fat; very lean athletes were few among them)"
    ),
    Provenance.SEEN,
)
# Both equations were seen as quoted in public tables.
JACKSON_POLLOCK_WARD_1980 = Source(
    "jackson-pollock-ward-1980",
    mark(
        "Jackson, Pollock & Ward 1980, Med Sci Sports Exerc 12:175-182: body density of women from "
        "skinfolds (331 women of 18 to 55)"
    ),
    Provenance.SEEN,
)
SIRI_1961 = Source(
    "siri-1961", mark("Siri 1961: body fat in % = 495 / density (g/mL) - 450"), Provenance.SEEN
)
MIFFLIN_1990 = Source(
    "mifflin-1990",
    mark(
        "Mifflin, St Jeor et al. 1990, Am J Clin Nutr 51:241-247: resting energy 10 x kg + 6.25 x cm - "
        "5 x years, + 5 for men, - 161 for women (kcal a day)"
    ),
    Provenance.SEEN,
)
CUNNINGHAM_1980 = Source(
    "cunningham-1980",
    mark(
        "Cunningham 1980, Am J Clin Nutr 33:2372-2374: resting energy 500 + 22 x fat-free mass in kg "
        "(kcal a day)"
    ),
    Provenance.SEEN,
)
PEAK_WEEK_WORTH = Source(
    "what-a-peak-week-is-worth",
    mark(
        "Common practice: a peak week is worth a per cent or two, and only to somebody already "
        "lean; Homer et al. 2024 (Nutrition 127:112528) saw 0.3 % more body mass and 2.1 % more "
        "muscle thickness than usual in very lean men"
    ),
    Provenance.PRACTICE,
)
HELMS_2014_LOSS = Source(
    "helms-2014-loss",
    mark("Helms et al. 2014, J Int Soc Sports Nutr 11:20: lose 0.5 to 1 % of body mass a week"),
    Provenance.SEEN,
)
REDS_2023 = Source(
    "reds-2023",
    mark(
        "Mountjoy et al. 2023, Br J Sports Med 57:1073: periods that stay away are a sign of low "
        "energy availability and are for a doctor to look at"
    ),
    Provenance.SEEN,
)
NICE_REFEEDING = Source(
    "nice-refeeding",
    mark(
        "NICE criteria for a high risk of refeeding problems: body mass index under 16, or more than "
        "15 % of body mass lost in 3 to 6 months, by themselves"
    ),
    Provenance.SEEN,
)
SCREENING = Source(
    "screening-first",
    mark("An answer in the health questions needs a doctor's clearance before any peak week"),
    Provenance.PRACTICE,
)
INJURY = Source("injury-first", mark("an injury needs a doctor first"), Provenance.PRACTICE)

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
