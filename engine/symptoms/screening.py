"""Free text in, complaints and named drugs out; in English and German, whichever somebody writes."""

from __future__ import annotations

import re
from collections.abc import Iterator, Mapping

from .body_phrases import BODY_PHRASES
from .drugs import DRUG_VOCABULARY, drug_spans
from .ear import suspicions
from .figures import EVERYDAY, FIGURES
from .finding import Heard, Hit, Screening, Tongue
from .german import GERMAN
from .mood_phrases import MOOD_PHRASES
from .names import Symptom
from .negation import Said, Span, drug_denied, said, supposed
from .other_phrases import OTHER_PHRASES
from .patterns import Phrase, by_cues
from .spelling import Corrector, clauses
from .warning_phrases import WARNING_PHRASES
from .words import word_set

# The words that a slip of the finger is put right to.
_VOCABULARY = DRUG_VOCABULARY | word_set("""
    chest sternum heart heartbeat breath breathe breathing breathless breathlessness shortness
    difficulty struggling gasping suffocating fainted fainting faint passed blacked unconscious
    consciousness collapsed blackout seizure seizures convulsion convulsions convulsing epileptic
    fitting palpitations palpitation arrhythmia fluttering irregular pounding racing skipping
    weakness paralysed paralysis buckled confused confusion disoriented delirious hallucinating
    slurring slurred vomit vomited vomiting puking puked thrown throwing headache headaches
    migraine severe splitting unbearable excruciating nausea nauseous nauseated queasy swollen
    swelling puffy fingers ankles dizzy dizziness lightheaded lightheadedness vertigo insomnia
    cramp cramps cramping tingling trembling diarrhoea constipated constipation bloated bloating
    couldn't wouldn't haven't killing hurting hardly trouble seizing ectopic heaving panting angina
    myself throat extreme massive
    stomach urine tight tightness pressure crushing stabbing suicidal suicide numbness twice
""")
_PHRASES = (*WARNING_PHRASES, *BODY_PHRASES, *MOOD_PHRASES, *OTHER_PHRASES)
_CORRECTOR = Corrector(_VOCABULARY, frozenset().union(*(phrase.words for phrase in _PHRASES)))

_TAKEN_BACK = re.compile(
    r"(?:(?:today|now|this morning|tonight)\b.{0,30}\b"
    r"(?:do|yes|have|has|had|did|got|started|is|there)\b|"
    r"(?:i )?(?:do|have|did) (?:now|today)|it(?:'s| is| has)? (?:back|here|there|started|came))"
)
_NO = frozenset({"no", "none", "nope", "nil", "negative", "nah", "never", "zero", "0", "n"})


def _drugs(clause: str) -> list[str]:
    return [clause[a:b] for a, b in drug_spans(clause) if not drug_denied(clause, (a, b))]


ENGLISH = Tongue(
    phrases=by_cues(_PHRASES),
    figures=FIGURES,
    everyday=EVERYDAY,
    clauses=lambda text: clauses(text, _CORRECTOR),
    said=said,
    supposed=supposed,
    taken_back=_TAKEN_BACK,
    no=_NO,
    drugs=_drugs,
)


def screen(text: str) -> Screening:
    """Read free text for complaints and drugs; never raises, in time linear in the text.

    Both languages are looked for whatever the chat's is, since people mix them. What one finds and
    the other takes for denied in the same breath is in doubt.
    """
    found: dict[Symptom, Hit] = {}
    denied: set[Symptom] = set()
    drugs: list[str] = []
    for english, german in zip(_heard(text, ENGLISH), _heard(text, GERMAN), strict=True):
        contested = english.denied & german.found.keys() | german.denied & english.found.keys()
        for hit in (*english.found.values(), *german.found.values()):
            sure = hit.sure and hit.symptom not in contested
            _keep(found, Hit(hit.symptom, sure, hit.words))
        denied |= english.denied | german.denied
        drugs += (*english.drugs, *german.drugs)
    return Screening(
        hits=tuple(found[symptom] for symptom in Symptom if symptom in found),
        denied=tuple(s for s in Symptom if s in denied and s not in found),
        drug_words=tuple(dict.fromkeys(drugs)),
        # Where the tables heard anything at all, theirs is the word.
        suspicions=() if found or denied or drugs else suspicions(text, [text]),
    )


def _heard(text: str, tongue: Tongue) -> Iterator[Heard]:
    """What each clause says to somebody who knows this one language."""
    parts = tongue.clauses(text)
    sure: dict[Symptom, Hit] = {}
    for index, (clause, mark) in enumerate(parts):
        heard = Heard()
        asked = mark in {":", "?", "-", "="} and index + 1 < len(parts)
        # "no chest pain yesterday but today I do"
        turned = index + 1 < len(parts) and tongue.taken_back.match(parts[index + 1][0]) is not None
        answered_no = asked and _is_no(parts[index + 1][0], tongue)
        for phrase, span, verdict in _judged(clause, sure, tongue):
            if (verdict is Said.NO and not turned) or (answered_no and span[1] == len(clause)):
                heard.denied.add(phrase.symptom)
            else:
                hit = Hit(
                    phrase.symptom,
                    verdict is Said.YES and phrase.sure,
                    clause[span[0] : span[1]],
                )
                _keep(heard.found, hit)
                if hit.sure:
                    sure[hit.symptom] = hit
        heard.drugs += tongue.drugs(clause)
        yield heard


def from_report(word: str) -> Symptom | None:
    """The symptom that an id, a button or a few words of one's own stand for, or None."""
    by_id = "-".join(word.lower().replace("_", " ").replace("-", " ").split())
    if by_id in set(Symptom):
        return Symptom(by_id)
    hits = screen(word).hits
    ranked = sorted(hits, key=lambda hit: (not hit.sure, list(Symptom).index(hit.symptom)))
    return ranked[0].symptom if ranked else None


def _judged(
    clause: str, found: Mapping[Symptom, Hit], tongue: Tongue
) -> Iterator[tuple[Phrase, Span, Said]]:
    """Every find of the clause with its verdict; what is sure already is not looked for again."""
    if not clause:
        return
    plain = clause
    for figure in tongue.figures:
        plain = figure.sub(lambda match: "_" * len(match[0]), plain)
    settled = set(found)
    finds = [
        (phrase, match.span())
        for cues, phrases in tongue.phrases
        if any(cue in plain for cue in cues)
        for phrase in phrases
        if phrase.symptom not in settled
        for match in phrase.pattern.finditer(plain)
    ]
    spans = sorted({span for _, span in finds})
    doubtful = tongue.supposed(plain)
    everyday = {symptom for symptom, words in tongue.everyday.items() if words.search(plain)}
    for phrase, span in finds:
        if phrase.symptom in settled:
            continue
        verdict = tongue.said(plain, span, spans, denies=phrase.denies)
        if verdict is Said.YES and (doubtful or phrase.symptom in everyday):
            verdict = Said.DOUBT
        elif verdict is Said.YES and phrase.sure:
            settled.add(phrase.symptom)
        yield phrase, span, verdict


def _is_no(answer: str, tongue: Tongue) -> bool:
    """Whether this is a plain "no", and not one that goes on, as in "no sleep"."""
    words = answer.split(" ", 2)
    return words[0] in tongue.no and (len(words) == 1 or words[1] == ",")


def _keep(found: dict[Symptom, Hit], hit: Hit) -> None:
    before = found.get(hit.symptom)
    if before is None or (hit.sure and not before.sure):
        found[hit.symptom] = hit
