"""Numbers and cases of the days after a show."""

from __future__ import annotations

from engine.evidence.deciding import OWN_CHOICE
from engine.evidence.source import Number, Provenance, Source, mark

AFTER_SHOW_HARM = Source(
    "after-show-cases",
    mark(
        "Medicine (Baltimore) 2017;96(40):e8251: a man of 28, no drugs, four days of carbohydrate "
        "binge after a contest, +10 kg, potassium 1.8 mmol/L, paralysed; Cheung 2014, Case Rep "
        "Endocrinol 2014:483835; Lapinskiene 2018, Clin Nutr ESPEN 23:253-255; refeeding problems "
        "come within five days (ASPEN 2020, Nutr Clin Pract 35:178-195)"
    ),
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
