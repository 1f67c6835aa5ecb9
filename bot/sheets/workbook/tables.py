"""The sheets of a workbook, column by column (unit, kind, meaning): the one list of what is handed out.

`bot.sheets.workbook.gather` fills a frame for each; a test names a column that either side lacks.
"""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum

from bot.words.languages import mark, tr


class Kind(StrEnum):
    """What stands in a column's cells."""

    TEXT = "text"
    NUMBER = "number"
    DATE = "date"
    MOMENT = "moment"  # a local date and time, on the athlete's clocks


@dataclass(frozen=True, slots=True, kw_only=True)
class Column:
    """`key` names it in code, in every language; `heading` and `about` are marked sentences.

    `places` are the decimals shown, None where a figure shows as many as it has. Of a sheet of one
    athlete, `across` columns are left out; in a file for the athlete themself, `for_coaches` ones.
    """

    key: str
    heading: str
    kind: Kind = Kind.TEXT
    unit: str = ""
    about: str = ""
    places: int | None = None
    across: bool = False
    for_coaches: bool = False

    def titled(self) -> str:
        """ "Weight (kg)", in the reader's language."""
        heading = tr(self.heading)
        return f"{heading} ({self.unit})" if self.unit else heading


@dataclass(frozen=True, slots=True, kw_only=True)
class Table:
    """One sheet, and one CSV; `id` is the CSV's name. A row is what `about` says."""

    id: str
    title: str
    about: str
    columns: tuple[Column, ...]

    def shown(self, *, across: bool, to_coach: bool) -> tuple[Column, ...]:
        """The columns of a file for this reader."""
        return tuple(
            column
            for column in self.columns
            if (across or not column.across) and (to_coach or not column.for_coaches)
        )


_N, _D, _M = Kind.NUMBER, Kind.DATE, Kind.MOMENT


def text(key: str, heading: str, about: str = "", *, for_coaches: bool = False) -> Column:
    return Column(key=key, heading=heading, about=about, for_coaches=for_coaches)


def number(
    key: str, heading: str, unit: str = "", about: str = "", places: int | None = None
) -> Column:
    return Column(key=key, heading=heading, kind=_N, unit=unit, about=about, places=places)


def day(key: str, heading: str, about: str = "") -> Column:
    return Column(key=key, heading=heading, kind=_D, about=about)


def moment(key: str, heading: str, about: str = "") -> Column:
    return Column(key=key, heading=heading, kind=_M, about=about)


WHO = (
    Column(key="athlete", heading=mark("Athlete"), across=True),
    Column(
        key="athlete_id", heading=mark("Athlete no."), kind=_N, across=True,
        about=mark("Tells two athletes of one name apart."),
    ),
)  # fmt: skip
WEEK = (
    day("event_day", mark("Event day"), mark("The event whose week the day belongs to.")),
    text("kind", mark("Event")),
    number(
        "days_out", mark("Days out"), about=mark("Days from the row's date to the event; 0 is it.")
    ),
)
DATE = day("date", mark("Date"))

WEEKS = Table(
    id="weeks",
    title=mark("Weeks"),
    about=mark("One row a peak week that has a plan, trials included."),
    columns=(
        *WHO,
        *WEEK[:2],
        text("look", mark("Look on the day"), mark("The coach's verdict.")),
        number("mornings", mark("Mornings answered"), about=mark("Of eight.")),
        number("load_planned_g", mark("Load planned"), "g", mark("Carbs of all load days.")),
        number("load_set_g", mark("Load set"), "g"),
        number("load_g_per_kg", mark("Load set, mean day"), "g/kg", places=1),
        number("eaten_percent", mark("Eaten of the load"), "%", mark("As reported."), places=0),
        number("weight_first_kg", mark("Weight before the load"), "kg", places=1),
        number("weight_event_kg", mark("Weight on event day"), "kg", places=1),
        number("fullness_event", mark("Fullness on event day"), "1-10"),
        text("imported", mark("Imported"), mark("Whether the week came from a sheet.")),
        text("placing", mark("Placing")),
        text("athlete_said", mark("Athlete on the week")),
        text("coach_note", mark("Coach's note"), for_coaches=True),
    ),
)
CHECKINS = Table(
    id="check-ins",
    title=mark("Check-ins"),
    about=mark("One row a morning on which something was answered."),
    columns=(
        *WHO,
        DATE,
        *WEEK,
        moment("answered_at", mark("Answered at"), mark("On the athlete's own clocks.")),
        number("weight_kg", mark("Weight"), "kg", places=2),
        number("band_low_kg", mark("Weight expected from"), "kg", places=2),
        number("band_high_kg", mark("Weight expected to"), "kg", places=2),
        number("fullness", mark("Fullness"), "1-10"),
        number("expected_fullness", mark("Fullness expected"), "1-10"),
        number("sharpness", mark("Sharpness"), "1-5"),
        text("coach_look", mark("Look, seen by the coach"), for_coaches=True),
        Column(
            key="coach_sharpness",
            heading=mark("Sharpness, seen by the coach"),
            kind=_N,
            unit="1-5",
            for_coaches=True,
        ),
        number("water_l", mark("Water the day before"), "L", places=2),
        number("carb_eaten_g", mark("Carbs eaten the day before"), "g"),
        text("gut", mark("Stomach")),
        number("sleep_h", mark("Sleep"), "h", places=1),
        number("urine_colour", mark("Urine colour"), "1-8"),
        number("resting_pulse", mark("Resting pulse"), "1/min"),
        text("training", mark("Training the day before")),
        text("symptoms", mark("Symptoms")),
        text("note", mark("Note")),
    ),
)
TARGETS = Table(
    id="targets",
    title=mark("Targets"),
    about=mark("One row a day of a peak week: planned, set, eaten and drunk."),
    columns=(
        *WHO,
        *WEEK[:2],
        DATE,
        WEEK[2],
        text("phase", mark("Phase"), mark("Empty where the plan names none.")),
        number("carb_planned_g", mark("Carbs planned"), "g"),
        number("carb_g", mark("Carbs set"), "g", mark("What counted for the day in the end.")),
        text("set_by", mark("Set by")),
        number("carb_eaten_g", mark("Carbs eaten"), "g", mark("As told the next morning.")),
        number("eaten_off_g", mark("Eaten minus set"), "g"),
        number("protein_g", mark("Protein"), "g"),
        number("fat_g", mark("Fat"), "g"),
        number("fibre_g", mark("Fibre"), "g", mark("Empty: as always.")),
        number(
            "kcal_planned", mark("Energy planned"), "kcal",
            mark("Carbs without fibre, 4 kcal/g; fibre 2."),
        ),
        number("kcal", mark("Energy set"), "kcal"),
        number("water_target_l", mark("Water target"), "L", places=2),
        number("water_l", mark("Water drunk"), "L", mark("As told the next morning."), places=2),
        number("sodium_mg", mark("Sodium"), "mg", mark("Empty: as always.")),
        text("training", mark("Training")),
        number("cardio_min", mark("Cardio"), "min"),
        number("steps", mark("Steps")),
    ),
)  # fmt: skip
DECISIONS = Table(
    id="decisions",
    title=mark("Decisions"),
    about=mark("One row a decision, replaced ones included."),
    columns=(
        *WHO,
        DATE,
        day("sets_date", mark("For the day")),
        *WEEK,
        text("outcome", mark("Outcome")),
        text("status", mark("What became of it")),
        number("planned_carb_g", mark("Carbs planned"), "g"),
        number("carb_g", mark("Carbs decided"), "g"),
        number("change_g", mark("Change"), "g", mark("Decided minus planned.")),
        text("rule", mark("Rule")),
        text("bound", mark("Limited by"), mark("The limit that cut what the rule asked for.")),
        text("reason", mark("Reason"), mark("As the athlete reads it.")),
        number("flat_percent", mark("Chance flat"), "%", mark("Forecast for event day."), places=0),
        number("full_percent", mark("Chance full"), "%", places=0),
        number("spilled_percent", mark("Chance spilled over"), "%", places=0),
        moment("made_at", mark("Decided at"), mark("On the athlete's own clocks.")),
        text("signed_by", mark("Approved or set by")),
        moment("signed_at", mark("Answered by the coach at")),
        number("sign_off_min", mark("Time to the coach's answer"), "min", places=0),
    ),
)
FLAGS = Table(
    id="flags",
    title=mark("Flags"),
    about=mark("One row a caution, warning or info that was brought to the coach."),
    columns=(
        *WHO,
        DATE,
        *WEEK,
        text("level", mark("Level")),
        text("flag", mark("What")),
        text("cause", mark("Why")),
        moment("opened_at", mark("Told at")),
        moment("acknowledged_at", mark("Acknowledged at")),
        text("acknowledged_by", mark("Acknowledged by")),
        number("acknowledged_min", mark("Time to acknowledge"), "min", places=0),
    ),
)
_PER_100 = (
    number("kcal", mark("Energy in 100 g"), "kcal"),
    number("carb_g", mark("Carbs in 100 g"), "g", mark("Without fibre."), places=1),
    number("protein_g", mark("Protein in 100 g"), "g", places=1),
    number("fat_g", mark("Fat in 100 g"), "g", places=1),
    number("fibre_g", mark("Fibre in 100 g"), "g", places=1),
    number("sodium_mg", mark("Sodium in 100 g"), "mg"),
)
FOODS = Table(
    id="foods",
    title=mark("Foods"),
    about=mark("One row a food on the list, those taken off it included."),
    columns=(
        *WHO,
        text("food", mark("Food")),
        text("liking", mark("Liking")),
        number("usual_g", mark("Usual amount a day"), "g"),
        *_PER_100,
        day("added", mark("On the list since")),
        day("removed", mark("Taken off")),
    ),
)
EATEN = Table(
    id="eaten",
    title=mark("Eaten"),
    about=mark("One row a food that was entered as eaten."),
    columns=(
        *WHO,
        DATE,
        moment("at", mark("Entered at")),
        text("food", mark("Food")),
        number("grams", mark("Amount"), "g"),
        number("eaten_kcal", mark("Energy"), "kcal"),
        number("eaten_carb_g", mark("Carbs"), "g", places=1),
        number("eaten_protein_g", mark("Protein"), "g", places=1),
        number("eaten_fat_g", mark("Fat"), "g", places=1),
        number("eaten_sodium_mg", mark("Sodium"), "mg"),
    ),
)
#: Its columns go on with one a week, the oldest first.
COMPARED = Table(
    id="weeks-compared",
    title=mark("Weeks compared"),
    about=mark("One row a measure and day out, with one column a week, the oldest first."),
    columns=(*WHO, text("measure", mark("Measure")), WEEK[2]),
)
TABLES = (WEEKS, COMPARED, CHECKINS, TARGETS, DECISIONS, FLAGS, FOODS, EATEN)

#: What the weeks are compared by, as columns of `TARGETS` or `CHECKINS`.
MEASURES = (
    "carb_planned_g",
    "carb_g",
    "carb_eaten_g",
    "water_l",
    "weight_kg",
    "fullness",
    "sharpness",
)
