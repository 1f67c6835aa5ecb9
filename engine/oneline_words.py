"""The words around the figures of a check-in in one line, by language; alternatives of patterns."""

from __future__ import annotations

from dataclasses import dataclass, fields


@dataclass(frozen=True, slots=True, kw_only=True)
class LineWords:
    """Each a regular expression of alternatives, in lower case. `counted` are what a number may count
    that is none of the answers; `manners` is what may follow without being a note."""

    fullness: str
    water: str
    drunk: str
    sharpness: str
    carbs: str
    eaten: str
    on_target: str
    fine: str
    of: str
    says: str
    counted: str
    manners: str


ENGLISH = LineWords(
    fullness="fullness|full",
    water="water",
    drunk="drank|drunk",
    sharpness="sharpness|sharp",
    carbs="carbs?|carbohydrates?",
    eaten="eaten",
    on_target="(?:carbs? )?on target|hit (?:my |the )?target",
    fine="(?:all|everything(?:'s| is)?) (?:fine|good|ok|okay)|fine",
    of="of|out of",
    says="is|at",
    counted=(
        "h|hrs?|hours?|mins?|minutes?|am|pm|k|km|miles?|steps?|g|grams?|mg|kcal|cal|cals|x|times|"
        "days?|meals?|coffees?|cups?|bottles?|sets?|reps?|o'clock|bpm|kg|kgs|lbs?|ml|l|more|less"
    ),
    manners="thanks|thank you|cheers|coach|today",
)
GERMAN = LineWords(
    fullness="fülle|fuelle|voll|prall",
    water="wasser",
    drunk="getrunken|trinken",
    sharpness="schärfe|schaerfe|scharf|definition",
    carbs="kh|khs|kohlenhydrate?|kohlehydrate?",
    eaten="gegessen",
    on_target="(?:kh )?(?:im ziel|auf ziel|nach plan|wie geplant)|ziel (?:getroffen|erreicht)",
    fine="alles (?:gut|ok|okay|bestens|fein|super|klar|prima)|(?:geht )?(?:mir )?gut|passt",
    of="von",
    says="ist|bei|war",
    counted=(
        "std|stunden?|minuten?|uhr|schritte?|gramm|mal|tage?n?|mahlzeit(?:en)?|kaffees?|tassen?|"
        "flaschen?|sätze|wdh|prozent|mehr|weniger|kilo"
    ),
    manners="danke|dankeschön|merci|guten morgen|moin|servus|hallo|lg|vg|heute",
)
_BESIDE_ENGLISH = {"de": GERMAN}


def line_words(language: str) -> LineWords:
    """English, and the words of this language (ISO 639-1) beside them where it has any here."""
    other = _BESIDE_ENGLISH.get(language)
    if other is None:
        return ENGLISH
    return LineWords(
        **{
            field.name: f"{getattr(ENGLISH, field.name)}|{getattr(other, field.name)}"
            for field in fields(LineWords)
        }
    )
