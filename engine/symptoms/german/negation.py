"""Whether what was found in a German clause was said, denied, or left in doubt.

German denies before ("keine Brustschmerzen") and after ("Brustschmerzen habe ich nicht").
"""

# ruff: noqa: E501 - a pattern stays on one line
from __future__ import annotations

from collections.abc import Sequence

from engine.symptoms.denying import GERMAN_DENIALS
from engine.symptoms.english.negation import Denial, Polarity, Span
from engine.symptoms.german.spelling import folded
from engine.written.late import Late, word_set

# Words that may stand between the "kein" and what it denies.
_BETWEEN = word_set(
    folded("""
    der die das den dem des ein eine einen einem einer mein meine meinen meinem meiner ich mir mich
    es habe hatte hat gehabt haben bin war ist sind waren wurde werde geworden gespürt spüre
    bemerkt anzeichen zeichen symptom symptome symptomen von für irgendwelche irgendeine irgendwie
    akute akuten heute gestern morgen früh nacht letzte diese dieser bisher bis oder noch und
    leben im am in an bei mit zu i mi mir ma mer mia bi hob hab han gar überhaupt problem probleme beschwerden gefühl spur einzige einzigen einziges
    mal einmal aktuell gerade zurzeit da dabei aufgetreten wegen mehr
    """)
)
_LESSENED = word_set(
    folded("""
    so sehr richtig besonders wirklich immer ganz mehr starke starken starker starkes stark
    schlimme schlimmen schlimm heftige heftigen heftig extreme extremen große grossen größeren
    größere neue neuen weitere weiteren leichte leichten leicht arg viel völlig total direkt
    """)
)
_TURNED = word_set("nur bloss auch sondern jetzt trotzdem dass")
_NOT_A_BIT = Late(
    r"\b(?:kein (?:kleines |winziges |einziges )?(?:bisschen|stuck|funkchen)|nicht (?:im|das) (?:geringsten?|mindesten?)(?: bisschen)?|nicht mal ansatzweise|nicht die spur) $"
)
_DENIAL = Denial(GERMAN_DENIALS, _BETWEEN, _LESSENED, _NOT_A_BIT)
_NEVER_SO = Late(r"nie(?: zuvor| vorher)? (?:so|derart)\b")  # "so bad it never was"
_NEITHER = Late(r"\bweder\b")
_STEP = Late(r"[\w']+|,")
_REACH = 160  # characters looked at on either side; no list of complaints is longer
_LIST_WITH_OR = Late(r"(?: ,(?: [\w']+){1,3}){0,6}(?: ,)? (?:oder|noch|und auch keine?n?|sowie) ")
# "habe ich nicht", "sind nicht da", "hatte ich heute keine"
_AFTER_DENIED = Late(
    r" ?(?::|-|=)? ?(?:(?:habe|hatte|hat|hatten|war|waren|ist|sind|gab|gibt|spure|merke|verspure|bekam|kenne|fehlt)"
    r"(?: (?:ich|es|sie|da|heute?|gestern|bisher|mir|ma|mer|bei mir|auch|aktuell|zum gluck|gar|uberhaupt|in (?:der|dieser|meiner) (?:ganzen |gesamten )?\w+|die ganze \w+|den ganzen \w+|diese woche|diesmal|definitiv|absolut|wirklich|keinerlei|bis jetzt))*"
    rf" )?(?:keinen einzigen|keine einzige|kein einziges(?: mal)?|nicht einen|nicht ein mal|{'|'.join(sorted(GERMAN_DENIALS))}|nein|ne|no|negativ|0)"
    r"(?: (?:da|vorhanden|aufgetreten|gehabt|dabei|gespurt|bemerkt|gewesen|geworden))?(?= ,|$)"
)
_AFTER_IN_DOUBT = Late(
    r"(?: [\w']+){0,4} (?:nicht mehr|keine mehr|weg|vorbei|verschwunden|besser)(?= ,|$)|"
    r"(?: [\w']+){0,2} (?:als (?:sonst|gestern|vorher))"
)
# "die Krämpfe sind weg, der Druck auf der Brust nicht": that one is not gone
_OTHERS_GONE = Late(r"\b(?:weg|vorbei|verschwunden|besser|abgeklungen)(?: [\w']+){0,2} ,")
_BARELY_NOT = Late(r" nicht(?= ,|$)")
_STILL_THERE = Late(r"(?: [\w']+){0,3} nicht (?:weg|vorbei|besser|verschwunden|auf)")
_OUT_OF_NOTHING = Late(r"\baus dem nichts\b")
# "I can't bear this headache": the "nicht" behind it is the bearing's
_NOT_BORNE = Late(
    r"\b(?:ertrage?|halte?|packe?|krieg|kriege|werde?|bekomme?)(?: (?!nicht)[\w']+){0,5} $"
)
_DRUG_DENIED = Late(
    rf"\b(?:{'|'.join(sorted(GERMAN_DENIALS))}|no|not|never)"
    r"(?: (?:die|das|den|irgendwelche|solche|andere|und|oder|noch|mehr|nehme|genommen|von|ich|[\w']+ oder|[\w']+ und|[\w']+ noch)){0,5} $"
)
_DRUG_DENIED_AFTER = Late(
    r" (?:nehme|nahm|nehm|brauche|benutze|habe|hatte|kommt|kommen)(?: (?:ich|mir|fur mich|da|auch|gar))* (?:nicht|keine|keinen|keins|nie)"
    r"(?: (?:genommen|in frage|ins haus))?(?= ,|$)"
)


def german_polarity(
    clause: str, span: Span, others: Sequence[Span], *, denies: bool = False
) -> Polarity:
    """As `negation.said`, of a German clause."""
    before, after = clause[: span[0]], clause[span[1] : span[1] + _REACH]
    before = _OUT_OF_NOTHING.sub(lambda words: "_" * len(words[0]), before)
    borne = _NOT_BORNE.search(before, max(0, len(before) - _REACH)) is None
    if _BARELY_NOT.match(after) and _OTHERS_GONE.search(before, max(0, len(before) - _REACH)):
        return Polarity.YES
    if not denies and borne and _AFTER_DENIED.match(after) and not _STILL_THERE.match(after):
        return Polarity.NO
    if not denies and (within := _DENIAL.within(clause[span[0] : span[1]])) is not Polarity.YES:
        return within
    if _NOT_A_BIT.search(before, max(0, len(before) - _REACH)):
        return Polarity.NO
    earlier = [other for other in others if other[1] <= span[0]]
    denied = _denied_before(before, earlier, _LIST_WITH_OR.match(after) is not None)
    if denied is Polarity.NO and _STILL_THERE.match(after):
        return Polarity.YES
    if denied is Polarity.YES and not _STILL_THERE.match(after) and _AFTER_IN_DOUBT.match(after):
        return Polarity.DOUBT
    return denied


def german_drug_denied(clause: str, span: Span) -> bool:
    """Whether the drug named at `span` is said not to be taken."""
    before = _DRUG_DENIED.search(clause, max(0, span[0] - _REACH), span[0])
    return before is not None or _DRUG_DENIED_AFTER.match(clause, span[1]) is not None


def _denied_before(before: str, others: Sequence[Span], listed: bool) -> Polarity:
    """Walk back from the find: only words that may stand between lead to the "kein"."""
    steps = list(_STEP.finditer(before, max(0, len(before) - _REACH)))
    comma = joined = lessened = False
    for step in reversed(steps[-14:]):
        word = step[0]
        around = next((span for span in others if span[0] <= step.start() < span[1]), None)
        if around is not None and _spent(before, around):
            return Polarity.YES  # the "kein" of "kein Schlaf" is spent on the sleep
        if word == "nie" and _NEVER_SO.match(before, step.start()):
            return Polarity.YES
        if word == "noch" and _NEITHER.search(before, 0, step.start()):
            return Polarity.NO
        if word in GERMAN_DENIALS:
            if lessened or ((joined or comma) and not listed):
                return Polarity.DOUBT
            return Polarity.NO
        if word in _TURNED:
            return Polarity.YES
        comma = comma or word == ","
        joined = joined or word in {"und", "sowie"}
        listed = listed or word in {"oder", "noch"}
        lessened = lessened or word in _LESSENED
        if around is None and word not in _BETWEEN and word not in _LESSENED and word != ",":
            return Polarity.YES
    return Polarity.YES


def _spent(before: str, span: Span) -> bool:
    """Whether a find begins with a word of denial, or has one that belongs to it."""
    return any(
        word in GERMAN_DENIALS or word == "kaum" for word in before[span[0] : span[1]].split(" ")
    )
