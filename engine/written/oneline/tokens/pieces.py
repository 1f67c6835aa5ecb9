"""What a line is cut into: figures, words and marks, and the clauses that they stand in."""

from __future__ import annotations

from collections.abc import Mapping, Set
from dataclasses import dataclass, field
from enum import StrEnum

from engine.written.late import Late
from engine.written.units.amounts import KG_WORDS, LB_WORDS, ST_WORDS, VOLUME_WORDS
from engine.written.units.reading import NUMBER


class Means(StrEnum):
    """What a word or phrase does to the figures around it."""

    LABEL = "label"  # names an answer
    SCORE = "score"  # says a score in words; `value` is the likely one
    CORRECTS = "corrects"  # between a figure and the one that stands in its stead
    VESSEL = "vessel"  # what is drunk from: its size is not known
    EATEN = "eaten"  # with what was eaten or came on top, by the piece
    LINK = "link"  # says nothing by itself: "is", "my", "this morning"
    ABOUT = "about"  # before a figure that is rounded
    BOUND = "bound"  # before a figure that is only a bound
    RANGE = "range"  # between the two ends of a range
    NOT = "not"  # denies what follows
    OTHERWISE = "otherwise"  # a wish, a plan, a limit: no report
    OTHER_DAY = "other-day"
    TODAY = "today"
    COUNTS_NOT = "counts-not"  # a number before it does not count it
    FINE = "fine"
    ON_TARGET = "on-target"
    OFF_TARGET = "off-target"
    YES = "yes"
    NO = "no"
    LATER = "later"  # after a label: it is told another time
    SKIP = "skip"  # after a label, or for the answer in `about`
    TRAINING = "training"  # `about` is how it went
    SAME = "same"  # the answer in `about` is what it was the day before
    MANNERS = "manners"


@dataclass(frozen=True, slots=True)
class Meaning:
    """`about` is the answer's key, or the way the training went; `value` a score or a number."""

    means: Means
    about: str = ""
    value: float | None = None


class Unit(StrEnum):
    NONE = "none"
    WEIGHT = "weight"
    VOLUME = "volume"
    GRAMS = "grams"
    HOURS = "hours"
    OF_TEN = "of-ten"
    OF_FIVE = "of-five"


@dataclass(frozen=True, slots=True, kw_only=True)
class Token:
    """`start` and `end` are places in the plain line; `unknown` is a word that is not known here."""

    start: int
    end: int
    text: str
    unknown: bool = field(init=False, compare=False, default=False)


@dataclass(frozen=True, slots=True, kw_only=True)
class Figure(Token):
    """`number` as written; `high` is the other end of a range; `bound` where it is only a bound;
    `corrected` where the other end was put in its stead.
    """

    number: str
    unit: Unit = Unit.NONE
    unit_text: str = ""
    high: str = ""
    bound: bool = False
    thousand: bool = False
    corrected: bool = False


@dataclass(frozen=True, slots=True, kw_only=True)
class Word(Token):
    """What it says, by what is meant: of several meanings of a kind the first."""

    meanings: tuple[Meaning, ...] = ()
    means: Mapping[Means, Meaning] = field(init=False, compare=False)

    def __post_init__(self) -> None:
        object.__setattr__(self, "means", {one.means: one for one in reversed(self.meanings)})
        letters = any(map(str.isalnum, self.text))  # a picture counts nothing
        object.__setattr__(self, "unknown", letters and not self.meanings)

    def says(self, *means: Means) -> Meaning | None:
        """Its first meaning that is one of these."""
        return next((meaning for meaning in self.meanings if meaning.means in means), None)


@dataclass(frozen=True, slots=True, kw_only=True)
class Mark(Token):
    pass


@dataclass(slots=True)
class Named:
    """A figure whose answer a label names; several keys where it may be either of two labels."""

    key: str
    figure: Figure
    label: Word


@dataclass(slots=True)
class Clause:
    """What stands between two marks, and what is made of it."""

    tokens: list[Token]
    end: str = ""  # the mark that ends it
    asks: bool = False
    named: list[Named] = field(default_factory=list)
    torn: list[list[Named]] = field(default_factory=list)  # labels that can be read in two ways
    odd: set[int] = field(default_factory=set)  # starts of figures not to be taken unasked
    trailed: set[int] = field(default_factory=set)  # of these, for nothing but a word behind them
    beside: set[int] = field(default_factory=set)  # for nothing but words beside them, or for a day
    dated: set[int] = field(default_factory=set)  # of these, for the name of another day
    foreign: set[int] = field(default_factory=set)  # starts of figures that are no answers
    vessels: set[int] = field(default_factory=set)  # starts of figures that count glasses
    pointing: frozenset[int] = frozenset()  # starts of labels with a colon: they name what follows
    figures: list[Figure] = field(init=False)
    words: list[Word] = field(init=False)
    unknown: list[Word] = field(init=False)
    means: Set[Means] = field(init=False)  # what any of its words may say

    def __post_init__(self) -> None:
        self.figures = [token for token in self.tokens if isinstance(token, Figure)]
        self.words = [token for token in self.tokens if isinstance(token, Word)]
        self.unknown = [word for word in self.words if word.unknown]
        self.means = {means for word in self.words for means in word.means}

    def is_told_plainly(self, one: Named) -> bool:
        """Whether its label stands right before the figure, so that no word behind it is counted."""
        start = one.figure.start
        only_trailed = start in self.beside & self.trailed - self.dated
        after = [token for token in self.tokens if token.start > start][:2]
        if any(isinstance(token, Word) and Means.CORRECTS in token.means for token in after):
            return False
        return only_trailed and one.label.start < start and adjacent(self, one.label, one.figure)


def adjacent(clause: Clause, label: Token, figure: Token) -> bool:
    """Whether the figure stands right behind its label."""
    return clause.tokens.index(figure) - clause.tokens.index(label) == 1


BLOB = Late(r"[-+]?(?:[.,]?\d|[½¼¾])[\d.,½¼¾⁰¹²³⁴-⁹₀-₉]*")
WHOLE = Late(rf"[-+]?{NUMBER}")
WORD = Late(r"[^\W\d_]+(?:['-][^\W\d_]+)*")
DATE = Late(
    r"(?:\d{1,2}(?P<mark>[./-])\d{1,2}(?P=mark)(?:20\d\d|\d\d(?!\d))|20\d\d-\d\d?-\d\d?)(?![\d.,/])"
)
CLOCK = Late(r"\d{1,2}(?:[:.]\d\d)? ?(?:[ap]\.?m\b\.?|uhr\b|o'clock)|\d{1,2}:\d\d(?::\d\d)?\b")
SCALE = Late(r" ?(?:/|(?:out )?of|outta|von|aus) ?(10|ten|zehn|5)(?![\d./]\d|\d)(?!/)")
SCALE_ALONE = Late(r"(?:out of|outta|of|von|aus) (?:10|ten|zehn)(?= ?[:=])")  # "look out of ten: 7"
OVER = r"(?![^\W_]|')"  # no letter or digit follows
DOT = r"(?:\.(?!\s|$))?"  # of "kg."; before a space it may end a clause
STONES = Late(
    rf" ?{ST_WORDS}(?![^\W\d_]|')\.?"
    rf"(?:[ ,&]*(?:and )?(?P<rest>{NUMBER})(?P<lb> ?{LB_WORDS}{OVER})?{OVER})?"
)
UNITS: tuple[tuple[Unit, Late], ...] = (
    (Unit.WEIGHT, Late(rf" ?(?:{KG_WORDS}|{LB_WORDS}){OVER}{DOT}")),
    (Unit.VOLUME, Late(rf" ?{VOLUME_WORDS}{OVER}")),
    (Unit.GRAMS, Late(rf" ?(?:grammes?|gramm|grams?|gr|g){OVER}{DOT}")),
    (Unit.HOURS, Late(rf" ?(?:hours?|hrs?|h|std|stunden?|stdn){OVER}{DOT}")),
)
LABELS_NEXT = Late(r" ?[:=] ?\d")  # "6 kilos: 66.5"
WEIGHT_NEXT = Late(r" \d{2,3}(?:[.,]\d+)?(?![\d.,]|[ /](?:\d|g\b|gram))")
THOUSAND = Late(rf" ?k{OVER}(?: ?(?:grams?|gramm|g){OVER})?")
# what a number may count that is none of the answers
COUNTED = Late(
    r" ?(?:%|°|x\b|(?:mins?|minutes?|minuten?|secs?|seconds?|km|miles?|metres?|meters?|m|mg|"
    r"(?<=\d\d\d )steps?|kcal|cals?|calories|kalorien|times|days? (?:out|to go|left)|"
    r"tage? (?:vorher|noch|davor|vor)|days?|tage?n?|weeks?|wochen?|months?|years?|jahre?n?|yr|meals?|"
    r"mahlzeit(?:en)?|sets?|sätze|reps?|wdh|bpm|(?<=\d\d\d )schritte?n?|mal|prozent|percent|"
    r"rice ?cakes?|reiswaffeln?|eggs?|eier|bananas?|bananen?|coffees?|kaffees?|espressos?|apples?|"
    r"scoops?|slices?|scheiben?|pancakes?|tablets?|tabletten?|gummies|bars?|riegel|toasts?|"
    r"euros?|pm|o'clock|uhr|kj|cm|mm|inch(?:es)?|euro|st|nd|rd|th)" + OVER + ")"
)
# "woke at 6", "um 6 auf"; "down 0.3", "300 g runter"
TOLD_OF = Late(
    r"\b(?:woke|wake|awake|got up|bed|asleep|wach|aufgewacht|aufgestanden|bett)(?: up)?"
    r" (?:at|around|about|um|gegen|seit|since|till|until) $|\bup (?:at|since) $"
    r"|\b(?:steps|schritte|cardio|bpm|puls|pulse|rhr|hrv|waist|taille|bauchumfang|kfa|bf|body ?fat|"
    r"kcal|calories|kalorien|protein|eiweiß|fat|fett|sodium|natrium|cycle day|zyklustag|temp)[:=]? ?$"
)
NEXT_FIGURE = Late(r" ?[.,]?\d")
GOT_UP = Late(rf" (?:auf|wach|aufge\w+|raus){OVER}")
OF_FULLNESS = Late(r" ?(?:full|fullness|voll|fülle)(?![^\W_])")
FULLNESS_BEFORE = Late(r"(?:full|fullness|voll|fülle|look) $")
THOUSANDS_OF_GRAMS = Late(r"(?:[3-9]\d|1\d\d)[.,]\d00")
AT = Late(r"\b(?:um|gegen|seit) $")
CHANGED = Late(
    r"(?:so |also )?(?:down|lost|gained|dropped|abgenommen|zugenommen|runter)"
    rf"(?: by| um| about| another)? (?P<number>{NUMBER})(?![\d/]| ?{VOLUME_WORDS}{OVER})"
    rf"(?: ?(?:{KG_WORDS}|{LB_WORDS}|g|gramm|grams?){OVER})?{OVER}"
)
RISEN = Late(
    rf" ?(?:{KG_WORDS}|{LB_WORDS}) (?:down|lighter|heavier|less|runter|rauf|leichter|schwerer|"
    rf"weniger|mehr|abgenommen|zugenommen)(?! ?\d| to| from| by| um| auf){OVER}"
)
GRAMS_CHANGED = Late(
    rf" ?(?:grammes?|gramm|grams?|gr|g) (?:down|lighter|heavier|less|runter|rauf|leichter|schwerer|"
    rf"weniger|abgenommen|zugenommen){OVER}"
)
# "up 0.3 to 72.7"; "72.4 (-0.3)"
CHANGED_TO = Late(
    rf"(?:down|up|rauf|hoch|runter|plus|minus)(?: by| um)? {NUMBER}"
    rf"(?: ?(?:{KG_WORDS}|{LB_WORDS}|g|gramm|grams?){OVER})? (?:to|auf|at|bei)(?= \d)"
)
CHANGE_APART = Late(rf"[-+] ?{NUMBER}(?: ?(?:{KG_WORDS}|{LB_WORDS}|g|gramm|grams?))?(?=\))")
# "day 3: 72.4"; "1) 72.4 2) 6 3) 3.5"
DAY_OF = Late(r"(?:^|\n)(?:day|tag|week|woche|check-?in|nr\.?|no\.?|#) $")
ITEM = Late(r"(?:^|(?<=[\s,;|]))(?P<which>\d)(?:\)|\.(?= ))")
GALLON = Late(
    r"(?:(?P<half>half an? |half |(?:ein(?:en)? |n |nen )?halbe[rn] )"
    r"|(?:an? |ein |eine |einen )(?:full |whole |good |ganze |ganzer )?"
    rf"(?=gallon|gal|litre|liter)|(?=gallone?{OVER}))(?P<unit>gallone?|gal|litre|liter){OVER}"
)
# "3/4 of a gallon"
PART_OF = Late(
    rf"(?P<top>[13])/(?P<of>[24]) ?(?:of an? |an? )?(?P<unit>gallons?|gal|litres?|liters?|l){OVER}"
)
# "72 kilo 400"
AND_GRAMS = Late(rf" (?:und )?(?P<more>[1-9][05]0)(?: ?(?:g|gramm|grams?))?{OVER}(?![.,]\d)")
SLEPT = Late(
    r" ?(?:hours?|hrs?|h|std|stunden?|stdn)\.? (?:of )?(?:geschlafen|schlaf|sleep|slept)\b"
)
NOT_KNOWN = Late(r"n/a(?![^\W_]|')")
POINTLESS = Late(r" (?:point|comma|komma|dot|punkt)(?![^\W_]|')")
# "3 l 250 ml"; "3 liter 250"
AND_MILLILITRES = Late(
    rf" (?:und |and )?(?P<more>[1-9][05]0)(?: ?ml{OVER}|(?<=liter \d\d\d){OVER})(?![.,]\d)"
)
# "150.something"; "59k7" and "59 kilo 7"; "3 bottles of 1.5"
UNREADABLE = Late(
    r"(?:[.,]| (?:point|komma|comma) ?)(?:something|some|irgend\w+|x+\b|\?)"
    r"|[.,](?=[a-km-z]{1,2}(?![^\W_]))"  # "57.s"
)
KILO_TENTH = Late(rf"k(?:g|ilo)?(?P<tenth>\d{{3}}|(?<=k)\d){OVER}")
#: The figure before has its own label, so that "steps" or "waist" behind it is that one's.
TAKEN_BEFORE = Late(r"(?:\d{4,}|\d[.,]\d{3}|\d ?k|\d ?(?:in|inch(?:es)?|cm|\"|mm)) $")
GRAMS_PER_KG = 1000
AS_GRADE = Late(rf"(?<=(?<!\d)\d)(?:-?er|te|e){OVER}")  # "eine 7er"
LEAST_WEIGHT_G = 30_000
POUNDS_PER_STONE = 14
HALF_A_POUND = Late(rf"half (?:an? )?{LB_WORDS}{OVER}|an? half[ -]{LB_WORDS}{OVER}")
MOST_CHANGED = 10  # kg or lb overnight; what is more is no change but the weight itself
ISH = Late(r" ?-?ish\b")
SKIPPED_MARKS = {":", "=", "~", "≈", "&", "+", '"', "'", "*", "_", "\u2026"}
