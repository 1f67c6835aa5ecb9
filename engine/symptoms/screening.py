"""Free text in, complaints and named drugs out; in English and German, whichever somebody writes."""

# ruff: noqa: E501 - a pattern stays on one line
from __future__ import annotations

import re
from collections.abc import Sequence, Set
from dataclasses import replace
from itertools import chain

from engine.symptoms.across import by_name_alone, is_of_thirst, told_together
from engine.symptoms.all_clear import parted
from engine.symptoms.clauses import Clause, clauses, spelt
from engine.symptoms.ear import Plain, SecondOpinion, called, suspicions
from engine.symptoms.ear.hearing import weighed
from engine.symptoms.english.language import (
    DRUG_VOCABULARY,
    ENGLISH_SETTINGS,
    MISREADING,
    drug_spans,
)
from engine.symptoms.english.negation import Span, drug_denied, said
from engine.symptoms.english.spelling import Corrector, Habits
from engine.symptoms.german.language import GERMAN
from engine.symptoms.judging import TOO_SHORT, ComplaintLanguage, heard, keep
from engine.symptoms.names import WARNINGS, Concern, Hit, Screening, Suspicion, Symptom
from engine.symptoms.patterns import Cued, PhraseBook, Tables
from engine.values.level import Level
from engine.written.chatter import puts_off
from engine.written.late import Late
from engine.written.questions import about_targets

_TABLES = Tables("engine.symptoms.english")
_PHRASES = _TABLES.phrases(
    "warnings", "dangers", "images", "body", "mood", "others", "other_images", "daily", "colloquial"
)
_HABITS = Habits.written("engine.symptoms.english")
_CORRECTOR = Corrector(
    _HABITS._replace(vocabulary={*DRUG_VOCABULARY, *_HABITS.vocabulary}),
    frozenset().union(*(p.words for p in (*_PHRASES["warnings"], *_PHRASES["others"]))),
)
#: Beside dark urine these make it muscle that breaks down.
_MUSCLES_HURT = (
    r"(?:muscles?|legs?|arms?|thighs?|quads?|calves|calf|shoulders?|glutes|hamstrings?|biceps|triceps|lats|back|whole body|everything|body)"
    r"(?: [\w']+){0,4} (?:hurts?|hurting|pain\w*|sore|ach\w+|agony|killing|stiff|rock hard|swollen|tender|solid|wrecked|weak|bend|straighten|burn\w*|like rocks?|like wood|cramp\w*|excruciat\w*|unbearable|scream\w*|torture|destroyed)|"
    r"muscle (?:pains?|aches?|soreness|cramps?)|(?:sore|aching|painful|swollen|stiff|tender) (?:muscles?|legs?|arms?|thighs?|quads?|calves|shoulders?)|doms|sore all over|aching all over"
)

_TAKEN_BACK = Late(
    r"(?:(?:today|now|this morning|tonight)\b.{0,30}\b"
    r"(?:do|yes|have|has|had|did|got|started|is|there)\b|"
    r"(?:i )?(?:do|have|did) (?:now|today)|it(?:'s| is| has)? (?:back|here|there|started|came))"
)
_NO = frozenset({"no", "none", "nope", "nil", "negative", "nah", "never", "zero", "0", "n"})
#: A few words beside others are listened to where they sound so surely like a complaint: "ashamed too".
_PLAIN_ENOUGH = 0.9
#: Where one of these is denied, the second ear calls nothing by name: it hears the words of it.
_ONCE_DENIED = WARNINGS | {Symptom.VOMITING}
#: "I don't feel sick anymore": to the second ear its words are those of limbs that are not felt.
_NO_LONGER = Late(
    r"\bi(?:'m|m| am)? (?:don't|dont|do not|not) (?:feel|feeling|have|having|get|getting)\b.*\b(?:any ?more|any longer)\b"
    r"|\bi no longer (?:feel|have|get)\b"
)
# A husband or a mother who writes in the athlete's place.
_PARTNER = r"(?:husband|wife|partner|boyfriend|girlfriend|mum|mom|mother|dad|father|brother|sister|friend|flatmate|roommate|son|daughter)"
_NAHE = r"(?:mann|frau|partner|partnerin|freund|freundin|mutter|mama|vater|papa|bruder|schwester|mitbewohner|mitbewohnerin|sohn|tochter)"
_BY_ANOTHER = Late(
    rf"^ *(?:(?:her|his|the|der|die|ihre?|seine?) )?(?:{_PARTNER}|{_NAHE}|coach|trainer|trainerin|flatmate|housekeeping|reception) ?[:.] ?(?:she|he|sie|er)\b|"
    rf"\b(?:{_PARTNER} (?:here|writing|typing|texting)|(?:^ *|[.!] *){_NAHE} (?:schreibt|tippt)(?= ?[,.:;!-])|hier (?:seine|ihre|der|die) {_NAHE}|{_NAHE} hier(?= ?[,.:;!-])|(?:my|her|his|their) {_PARTNER} (?:here|wrote this|writes this|is (?:writing|typing)|typing this|writing this)|"
    rf"(?:this is|it's|i'm|i am) (?:her|his|their|\w+'s) {_PARTNER}|(?:here is|hier ist|hier schreibt|ich bin) (?:ihre?|seine?|der|die|\w+s) {_NAHE}|"
    rf"(?:writing|typing) (?:this )?for (?:her|him|them)|(?:schreibe|tippe) (?:das )?für (?:sie|ihn)|(?:told|asked) me to (?:text|write|type|message)(?: you| this)?|(?:mein|meine|ihr|ihre|sein|seine) {_NAHE} (?:hier|schreibt (?:das|hier)|tippt))\b"
    # or somebody asks what to do with "him" or "her"
    r"|\b(?:he|she)\b.*\b(?:what (?:do|should|can) (?:i|we) do|help (?:him|her)|who do i call)\b"
    r"|\b(?:er|sie)\b.*\bwas soll(?:en)? (?:ich|wir) (?:machen|tun|nur)\b",
    re.IGNORECASE | re.DOTALL,
)


_OF_THEM = Late(r"\b(?:he|she|they|him|her|er|sie|ihm|ihr|ihn)(?:'s)?\b", re.IGNORECASE)
#: A suspicion that nothing in the words says has the least score that is asked about.
_ASKED = 0.3


# Dots between every few words, so that none of what they part says anything.
_GASPS = Late(r"\.{2,}|…")
_GASPED = 2


def _drugs(clause: str) -> list[Span]:
    return [span for span in drug_spans(clause) if not drug_denied(clause, span)]


ENGLISH = ComplaintLanguage(
    phrases=PhraseBook(chain.from_iterable(_PHRASES.values())),
    figures=Cued((MISREADING, *_TABLES.figures())),
    everyday=_TABLES.everyday(),
    corrector=_CORRECTOR,
    said=said,
    settings=ENGLISH_SETTINGS,
    taken_back=_TAKEN_BACK,
    muscles_hurt=Late(rf"\b(?:{_MUSCLES_HURT})\b"),
    no=_NO,
    drugs=_drugs,
)


#: A check-in in figures alone, which can name nothing; two with a stroke may be a blood pressure.
_FIGURES_ALONE = Late(r"[\d\s.,:;+-]*")


def screen(text: str) -> Screening:
    """Read free text for complaints and drugs; never raises, in time linear in the text.

    Each clause is judged by itself. Both languages are looked for whatever the chat's is, since
    people mix them; what one finds and the other takes for denied in the same breath is in doubt.
    """
    if _FIGURES_ALONE.fullmatch(text):
        return Screening()
    if is_of_thirst(text) or about_targets(text) or puts_off(text):
        return Screening()
    text = _in_one_breath(text)
    rest, clear = parted(text, (ENGLISH.taken_back, GERMAN.taken_back))
    found = _screened(rest)
    if not clear.strip():
        return found
    denied = ({*found.denied} | _named_in(clear)) - found.symptoms
    return replace(found, denied=tuple(symptom for symptom in Symptom if symptom in denied))


def _in_one_breath(text: str) -> str:
    """A text that is gasped ("can't.. get.. any air") as one that is not, each word in its place."""
    parts = _GASPS.split(text)
    if len(parts) <= _GASPED or any(len(part.split()) > _GASPED for part in parts):
        return text
    return _GASPS.sub(lambda dots: " " * len(dots.group()), text)


def _named_in(text: str) -> set[Symptom]:
    """What a text names, whatever it says of it."""
    return {
        phrase.symptom
        for tongue in (ENGLISH, GERMAN)
        for clause in spelt(clauses(text), tongue.corrector)
        for phrase, _ in tongue.phrases.found_in(clause.text)
        if phrase.sure
    }


def _screened(text: str) -> Screening:
    by_another = is_by_another(text)
    found = found_by_either(text, by_another=by_another)
    if not by_another:
        return weighed(text, found)
    if found.hits or found.suspicions:
        return found
    return replace(found, suspicions=_written_for(text))


def is_by_another(text: str) -> bool:
    """Whether somebody writes in the athlete's place."""
    return _BY_ANOTHER.search(text) is not None


def found_by_either(text: str, *, by_another: bool) -> Screening:
    """What the tables find and what the second ear hears, before the two are weighed together."""
    found: dict[Symptom, Hit] = {}
    denied: set[Symptom] = set()
    supposed: set[Symptom] = set()
    drugs: list[str] = []
    unplaced: list[str] = []
    told: list[str] = []  # clauses that deny nothing and are of nobody else
    free: list[str] = []  # clauses in which complaints are denied and none is told
    muscles_hurt = False
    parts = clauses(text)
    opinion = SecondOpinion(text)
    by_clause = zip(
        parts,
        *(heard(text, parts, tongue, by_another, opinion) for tongue in (ENGLISH, GERMAN)),
        strict=True,
    )
    for clause, english, german in by_clause:
        contested = english.denied & german.found.keys() | german.denied & english.found.keys()
        aside = english.set_aside - english.found.keys() | german.set_aside - german.found.keys()
        for hit in (*english.found.values(), *german.found.values()):
            if hit.symptom in aside:
                continue
            sure = hit.sure and hit.symptom not in contested
            keep(found, Hit(hit.symptom, sure, hit.words))
        none = english.denied | german.denied
        if none and not (english.found or german.found):
            free.append(clause.typed)
        if clause.says_something and not (none or english.elsewhere or german.elsewhere):
            told.append(" ".join(word.plain for word in clause.words))
        denied |= none
        supposed |= english.supposed | german.supposed
        drugs += (*english.drugs, *german.drugs)
        muscles_hurt = muscles_hurt or english.muscles_hurt or german.muscles_hurt
        if clause.says_something and not (english.placed or german.placed):
            unplaced.append(clause.typed)
    if muscles_hurt and (urine := found.get(Symptom.URINE_DARK)) is not None:
        keep(found, Hit(Symptom.MUSCLE_BREAKDOWN, urine.sure, urine.words))
    for symptom in told_together(told):
        keep(found, Hit(symptom, symptom not in supposed, text.strip()))
    mild = [hit for hit in found.values() if hit.sure and hit.symptom.level is Level.ADVISORY]
    if not denied & _ONCE_DENIED:
        for plain in opinion.plain():
            over = found and not found.keys() & WARNINGS and _NO_LONGER.search(plain.words.lower())
            if over or by_name_alone(plain.words, mild) or any(plain.words in one for one in free):
                continue
            _keep_plain(found, plain, supposed)
    heard_of = suspicions(text, [rest for rest in unplaced if _worth_hearing(rest, parts, opinion)])
    suspected = tuple(one for one in heard_of if not _keep_called(found, one, denied | supposed))
    hits = tuple(found[symptom] for symptom in Symptom if symptom in found)
    return Screening(
        hits=hits,
        denied=tuple(s for s in Symptom if s in denied and s not in found),
        drug_words=tuple(dict.fromkeys(drugs)),
        suspicions=suspected or _taken_lightly(hits, opinion, spoken_of=bool(denied or drugs)),
        unplaced=tuple(unplaced),
    )


#: Who names so many complaints has told them in full: what they mean together is a flag's to say.
_IN_FULL = 4


def _taken_lightly(
    hits: Sequence[Hit], opinion: SecondOpinion, *, spoken_of: bool
) -> tuple[Suspicion, ...]:
    """What the tables found no warning in, and the second ear hears as one."""
    if any(hit.symptom in WARNINGS for hit in hits):
        return ()
    taken = [hit.words for hit in hits if hit.sure]
    if len(taken) >= _IN_FULL:
        return ()
    opinions = [*(opinion.emergency(hit.words) for hit in hits), opinion.contradicts(taken)]
    if not hits and not spoken_of:
        opinions.append(opinion.after_all())
    mild = [hit for hit in hits if hit.sure and hit.symptom.level is Level.ADVISORY]
    return tuple(one for one in opinions if one is not None and not by_name_alone(one.words, mild))[
        :1
    ]


def _written_for(text: str) -> tuple[Suspicion, ...]:
    """Who takes up an athlete's phone to tell of her seldom does it for nothing: that is asked about."""
    told = _OF_THEM.search(text)
    return (Suspicion(Concern.EMERGENCY, text.strip(), _ASKED),) if told else ()


#: Of these a phrase in doubt leaves open what no tone of voice tells: whether it was more than once, and
#: whether limbs are weak or only tired.
_LEFT_OPEN = (Symptom.REPEATED_VOMITING, Symptom.LIMB_WEAKNESS)


#: What the second ear may hear in words that a phrase took for the milder one, supposed or asked about.
_GRAVER = {
    Symptom.HEADACHE: Symptom.SEVERE_HEADACHE,
    Symptom.NAUSEA: Symptom.REPEATED_VOMITING,
    Symptom.VOMITING: Symptom.REPEATED_VOMITING,
    Symptom.DIZZY: Symptom.FAINTING,
    Symptom.CRAMPS: Symptom.SEIZURE,
}

#: Of these it is the degree that is graver: told among other complaints, the tone is that of them all.
_BY_DEGREE = {Symptom.HEADACHE, Symptom.NAUSEA}

_OF_URINE = Late(
    r"(?i)urin|rhabdo|\b(?:pee\w*|piss\w*|wee\w*|pink\w*|pipi|harn\w*|brown\w*|braun\w*|cola|coke|"
    r"tea|tee|dark\w*|dunk\w*|red|rot\w*|blood\w*|blut\w*|toilet\w*|klo\w*|loo)\b"
)


def _keep_plain(found: dict[Symptom, Hit], plain: Plain, supposed: Set[Symptom]) -> None:
    """What the second ear is certain of: under the name that a phrase gave it, else under its own.

    What was said to be near, feared or over stays in doubt.
    """
    warned = [hit for symptom, hit in found.items() if symptom in WARNINGS]
    if any(hit.sure for hit in warned):
        return
    named = next((hit for hit in warned if hit.words in plain.words), None)
    symptom = plain.symptom if named is None else named.symptom
    if symptom is Symptom.MUSCLE_BREAKDOWN and not _OF_URINE.search(plain.words):
        return  # its name is half about urine, and nothing of that was said
    told = [hit.symptom for hit in found.values() if hit.sure]
    milder = supposed | (_BY_DEGREE & set(told) if len(told) > 1 else set())
    if symptom in supposed | {_GRAVER[one] for one in milder if one in _GRAVER} or (
        named is not None and symptom in _LEFT_OPEN
    ):
        return
    found[symptom] = Hit(symptom, True, plain.words if named is None else named.words)


def _keep_called(found: dict[Symptom, Hit], one: Suspicion, but: Set[Symptom]) -> bool:
    """Keep what the second ear calls by name and is no warning; whether it did."""
    symptom = called(one)
    if symptom is None or symptom in but:
        return False
    keep(found, Hit(symptom, True, one.words))
    return True


def _worth_hearing(rest: str, parts: Sequence[Clause], opinion: SecondOpinion) -> bool:
    """Whether what was left unplaced says enough by itself: not the "i won't" after a clause."""
    alone = sum(part.says_something for part in parts) == 1
    if alone or len(rest.split()) > TOO_SHORT:
        return True
    return len(rest.split()) == TOO_SHORT and opinion.harmless(rest) <= 1.0 - _PLAIN_ENOUGH


def from_report(word: str) -> Symptom | None:
    """The symptom that an id, a button or a few words of one's own stand for, or None."""
    by_id = "-".join(word.lower().replace("_", " ").replace("-", " ").split())
    if by_id in set(Symptom):
        return Symptom(by_id)
    hits = screen(word).hits
    ranked = sorted(hits, key=lambda hit: (not hit.sure, list(Symptom).index(hit.symptom)))
    return ranked[0].symptom if ranked else None
