"""What is typed directly at a number, and what says that it is none of the answers."""

from __future__ import annotations

from engine.written.late import Late
from engine.written.oneline.tokens.pieces import Unit
from engine.written.units.reading import NUMBER
from engine.written.units.volume import VOLUME_WORDS
from engine.written.units.weight import KG_WORDS, LB_WORDS, ST_WORDS

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
