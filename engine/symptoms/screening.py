"""Free text in, complaints and named drugs out; in English and German, whichever somebody writes."""

# ruff: noqa: E501 - a pattern stays on one line
from __future__ import annotations

import re
from collections.abc import Iterator, Mapping, Sequence, Set
from dataclasses import replace

from engine.symptoms.clauses import GOES_ON, Clause, clauses, spelt
from engine.symptoms.cues import Cued
from engine.symptoms.ear import Plain, SecondOpinion, called, suspicions
from engine.symptoms.english.body import BODY_PHRASES, MUSCLES_HURT
from engine.symptoms.english.colloquial import COLLOQUIAL_PHRASES
from engine.symptoms.english.daily import DAILY_PHRASES
from engine.symptoms.english.drugs import DRUG_VOCABULARY, drug_spans
from engine.symptoms.english.figures import EVERYDAY, FIGURES
from engine.symptoms.english.images import IMAGE_PHRASES
from engine.symptoms.english.mood import MOOD_PHRASES
from engine.symptoms.english.negation import Polarity, Span, drug_denied, said
from engine.symptoms.english.other_images import OTHER_IMAGES
from engine.symptoms.english.others import OTHER_PHRASES
from engine.symptoms.english.setting import ENGLISH_SETTINGS
from engine.symptoms.english.spelling import Corrector
from engine.symptoms.english.warnings import WARNING_PHRASES
from engine.symptoms.english.words import word_set
from engine.symptoms.finding import ClauseFindings, ComplaintLanguage, Hit, Screening, Suspicion
from engine.symptoms.german.language import GERMAN
from engine.symptoms.names import EATING_AND_MOOD, WARNINGS, Symptom
from engine.symptoms.patterns import Phrase, PhraseBook
from engine.symptoms.plainly import by_name_alone
from engine.symptoms.thirst import is_of_thirst
from engine.values.level import Level
from engine.written.late import Late
from engine.written.target_questions import about_targets

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
    bleeding nosebleed hopeless worthless depressed disgusting dehydrated laxatives
    stomach urine tight tightness pressure crushing stabbing suicidal suicide numbness twice
""")
_PHRASES = (
    *WARNING_PHRASES,
    *IMAGE_PHRASES,
    *BODY_PHRASES,
    *MOOD_PHRASES,
    *OTHER_PHRASES,
    *OTHER_IMAGES,
    *DAILY_PHRASES,
    *COLLOQUIAL_PHRASES,
)
_CORRECTOR = Corrector(
    _VOCABULARY, frozenset().union(*(p.words for p in (*WARNING_PHRASES, *OTHER_PHRASES)))
)

_TAKEN_BACK = Late(
    r"(?:(?:today|now|this morning|tonight)\b.{0,30}\b"
    r"(?:do|yes|have|has|had|did|got|started|is|there)\b|"
    r"(?:i )?(?:do|have|did) (?:now|today)|it(?:'s| is| has)? (?:back|here|there|started|came))"
)
_NO = frozenset({"no", "none", "nope", "nil", "negative", "nah", "never", "zero", "0", "n"})
#: "no, all fine", "nope im good": what may follow the answer, and does not go on as "no sleep" does.
_GOES_WITH_NO = frozenset(
    {
        ",",
        "alles",
        "all",
        "thanks",
        "thank",
        "danke",
        "bin",
        "im",
        "i'm",
        "zum",
        "gott",
        "gar",
        "everything",
        "mir",
        "never",
        "sir",
        "gsd",
        "wieso",
        "why",
    }
)
_TOO_SHORT = 2  # words of a clause that are not listened to by themselves
#: From this chance of harmlessness on, to the second ear, a sure find is asked about and not flagged.
#: Each bar was chosen on three tables of sentences, each heard by an ear that was not taught with it:
#: of 265 warnings found for sure one sounds so harmless, of 16 harmless ones found for sure 13.
_HARDLY = 0.7
#: Who tells a warning of themself is taken at their word, however the rest of it sounds.
_OF_ONESELF = Late(
    r"\b(?:i|i'm|im|i've|ive|i'd|my|me|ich|mir|mich|mein|meine|meinem|meiner|meinen|mi|mia|ick|icke|hob|han)\b"
    r"|^(?:und |and |dann |then |just |eben |heute |gestern |vorhin )*"
    r"(?:bin|wurde|hab|habe|hatte|kollabiert|fainted|collapsed|passed out|blacked out)\b"
    r"|^(?:erstes|zweites|drittes) mal\b|^(?:first|second|third) time\b"
    r"|^(?:can't|cant|cannot|couldn't) stop\b|^keep (?:thinking|wanting)\b"
)
#: The same for a word or two between commas, of which the tone tells less: "wait, chest pain".
_HARDLY_SHORT = 0.95
# These three were weighed on 1,900 fresh lines by an ear that was not taught with them.
#: From here on a sure find that is no warning is let pass: the sentence goes to the coach as any other.
#: Of 232 in complaints one sounds so harmless, of 40 in harmless lines 18.
_NOT_AT_ALL = 0.95
#: The same for a warning in doubt; a sure one is always asked about. Of 139 in complaints none, of 42
#: in harmless lines 25.
_NO_WARNING = 0.98
#: The same for a doubtful find of anything milder: of 54 in complaints none, of 18 others 10.
_HARDLY_EITHER = 0.9
#: Up to here a doubtful find of anything milder than a warning is one, if it was not feared or supposed:
#: of the same lines 12 more, and no harmless one.
_SURELY_NOT = 0.06
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
    rf"\b(?:{_PARTNER} here|{_NAHE} hier(?= ?[,.:;!-])|(?:my|her|his|their) {_PARTNER} (?:here|wrote this|writes this|is (?:writing|typing)|typing this|writing this)|"
    rf"(?:this is|it's|i'm|i am) (?:her|his|their|\w+'s) {_PARTNER}|(?:here is|hier ist|hier schreibt|ich bin) (?:ihre?|seine?|der|die|\w+s) {_NAHE}|"
    rf"(?:writing|typing) (?:this )?for (?:her|him|them)|(?:schreibe|tippe) (?:das )?für (?:sie|ihn)|(?:mein|meine|ihr|ihre|sein|seine) {_NAHE} (?:hier|schreibt (?:das|hier)|tippt))\b",
    re.IGNORECASE,
)


def _drugs(clause: str) -> list[Span]:
    return [span for span in drug_spans(clause) if not drug_denied(clause, span)]


ENGLISH = ComplaintLanguage(
    phrases=PhraseBook(_PHRASES),
    figures=Cued(FIGURES),
    everyday=EVERYDAY,
    corrector=_CORRECTOR,
    said=said,
    settings=ENGLISH_SETTINGS,
    taken_back=_TAKEN_BACK,
    muscles_hurt=Late(rf"\b(?:{MUSCLES_HURT})\b"),
    no=_NO,
    drugs=_drugs,
)


def screen(text: str) -> Screening:
    """Read free text for complaints and drugs; never raises, in time linear in the text.

    Each clause is judged by itself. Both languages are looked for whatever the chat's is, since
    people mix them; what one finds and the other takes for denied in the same breath is in doubt.
    """
    if is_of_thirst(text) or about_targets(text):
        return Screening()
    found: dict[Symptom, Hit] = {}
    denied: set[Symptom] = set()
    supposed: set[Symptom] = set()
    drugs: list[str] = []
    unplaced: list[str] = []
    free: list[str] = []  # clauses in which complaints are denied and none is told
    muscles_hurt = False
    parts = clauses(text)
    by_another = _BY_ANOTHER.search(text) is not None
    opinion = SecondOpinion(text)
    heard = zip(
        parts,
        *(_heard(text, parts, tongue, by_another, opinion) for tongue in (ENGLISH, GERMAN)),
        strict=True,
    )
    for clause, english, german in heard:
        contested = english.denied & german.found.keys() | german.denied & english.found.keys()
        aside = english.set_aside - english.found.keys() | german.set_aside - german.found.keys()
        for hit in (*english.found.values(), *german.found.values()):
            if hit.symptom in aside:
                continue
            sure = hit.sure and hit.symptom not in contested
            _keep(found, Hit(hit.symptom, sure, hit.words))
        none = english.denied | german.denied
        if none and not (english.found or german.found):
            free.append(clause.typed)
        denied |= none
        supposed |= english.supposed | german.supposed
        drugs += (*english.drugs, *german.drugs)
        muscles_hurt = muscles_hurt or english.muscles_hurt or german.muscles_hurt
        if clause.says_something and not (english.placed or german.placed):
            unplaced.append(clause.typed)
    if muscles_hurt and (urine := found.get(Symptom.URINE_DARK)) is not None:
        _keep(found, Hit(Symptom.MUSCLE_BREAKDOWN, urine.sure, urine.words))
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
        suspicions=suspected or _taken_lightly(hits, opinion),
        unplaced=tuple(unplaced),
    )


def _taken_lightly(hits: Sequence[Hit], opinion: SecondOpinion) -> tuple[Suspicion, ...]:
    """What the tables found no warning in, and the second ear hears as one."""
    if any(hit.symptom in WARNINGS for hit in hits):
        return ()
    graver = (opinion.emergency(hit.words) for hit in hits)
    heard = (*graver, opinion.contradicts())
    mild = [hit for hit in hits if hit.sure and hit.symptom.level is Level.ADVISORY]
    return tuple(one for one in heard if one is not None and not by_name_alone(one.words, mild))[:1]


#: Of these a phrase in doubt leaves open what no tone of voice tells: whether it was more than once, and
#: whether limbs are weak or only tired.
_LEFT_OPEN = (Symptom.REPEATED_VOMITING, Symptom.LIMB_WEAKNESS)


def _keep_plain(found: dict[Symptom, Hit], plain: Plain, supposed: Set[Symptom]) -> None:
    """What the second ear is certain of: under the name that a phrase gave it, else under its own.

    What was said to be near, feared or over stays in doubt.
    """
    warned = [hit for symptom, hit in found.items() if symptom in WARNINGS]
    if any(hit.sure for hit in warned):
        return
    named = next((hit for hit in warned if hit.words in plain.words), None)
    symptom = plain.symptom if named is None else named.symptom
    if symptom in supposed or (named is not None and symptom in _LEFT_OPEN):
        return
    found[symptom] = Hit(symptom, True, plain.words if named is None else named.words)


def _keep_called(found: dict[Symptom, Hit], one: Suspicion, but: Set[Symptom]) -> bool:
    """Keep what the second ear calls by name and is no warning; whether it did."""
    symptom = called(one)
    if symptom is None or symptom in but:
        return False
    _keep(found, Hit(symptom, True, one.words))
    return True


def _heard(
    text: str,
    parts: Sequence[Clause],
    tongue: ComplaintLanguage,
    by_another: bool,
    opinion: SecondOpinion,
) -> Iterator[ClauseFindings]:
    """What each clause says to somebody who knows this one language."""
    read = spelt(parts, tongue.corrector)
    alone = sum(part.says_something for part in parts) == 1
    denying = False
    if by_another:
        tongue = replace(tongue, settings=replace(tongue.settings, by_another=True))
    sure: dict[Symptom, Hit] = {}
    for index, clause in enumerate(read):
        heard = ClauseFindings()
        following = read[index + 1].text if index + 1 < len(read) else ""
        asked = parts[index].mark in {":", "?", "-", "="} and bool(following)
        # "no chest pain yesterday but today I do"
        turned = tongue.taken_back.match(following) is not None
        answered_no = asked and _is_no(following, tongue)
        plain, spared = _without_figures(clause.text, tongue)
        heard.elsewhere = spared
        goes_on = index > 0 and parts[index - 1].mark in GOES_ON
        before = read[index - 1].text if goes_on else ""
        heard.muscles_hurt = tongue.muscles_hurt.search(clause.text) is not None
        judged = list(_judged(plain, sure, tongue, before, following))
        # a word or two, or a complaint set against a denied one, is no matter of tone
        short = len(clause.text.split(" ")) <= _TOO_SHORT
        none = any(verdict is Polarity.NO for *_, verdict in judged)
        denying = denying or none
        plainly = none or (short and (alone or denying))
        for phrase, span, verdict in judged:
            if verdict is Polarity.ELSEWHERE:
                heard.elsewhere = True
                heard.set_aside.add(phrase.symptom)
            elif (verdict is Polarity.NO and not turned) or (answered_no and span[1] == len(plain)):
                heard.denied.add(phrase.symptom)
            else:
                words = clause.typed(text, span)
                about = "" if short else parts[index].typed
                harmless = 0.0 if plainly else opinion.harmless(words, about)
                slipped = not _as_typed(clause.text[span[0] : span[1]], words)
                certain = verdict is Polarity.YES and phrase.sure
                passes = not slipped and not (short and phrase.symptom in WARNINGS)
                if verdict is Polarity.SUPPOSED:
                    heard.supposed.add(phrase.symptom)
                if passes and _let_pass(phrase.symptom, certain, harmless):
                    heard.elsewhere = True
                    continue
                hit = _hit(
                    phrase, verdict, words, harmless=harmless, plainly=plainly,
                    said=(clause.text, span),
                )  # fmt: skip
                _keep(heard.found, hit)
                if hit.sure:
                    sure[hit.symptom] = hit
        heard.drugs += [clause.typed(text, span) for span in tongue.drugs(clause.text)]
        yield heard


def _hit(
    phrase: Phrase, verdict: Polarity, words: str, *, harmless: float, plainly: bool,
    said: tuple[str, Span],
) -> Hit:  # fmt: skip
    """What a phrase found, sure or in doubt, by the phrase, by how it was said and how it sounds."""
    certain = verdict is Polarity.YES and phrase.sure
    symptom = phrase.symptom
    if symptom in WARNINGS:
        own = _OF_ONESELF.search(said[0]) is not None
        bar = _HARDLY_SHORT if _said_shortly(*said) else _HARDLY
        return Hit(symptom, certain and (own or harmless < bar), words)
    if verdict is Polarity.YES and not plainly and harmless <= _SURELY_NOT:
        return Hit(symptom, True, words)
    # nobody is asked about a doubt so mild: it is taken, or it is let pass
    mild = symptom.level is Level.ADVISORY
    bar = _HARDLY_SHORT if _said_shortly(*said) else _HARDLY
    return Hit(symptom, certain and (mild or harmless < bar), words)


def _said_shortly(clause: str, span: Span) -> bool:
    """Whether what stands between the commas around the span is a word or two."""
    start, end = clause.rfind(",", 0, span[0]) + 1, clause.find(",", span[1])
    return len(clause[start : end if end >= 0 else len(clause)].split()) <= _TOO_SHORT


def _as_typed(read: str, typed: str) -> bool:
    """Whether nothing was put right in these words: the second ear hears them as they were typed."""
    return set(read.split(" ")) <= set(re.findall(r"[\w']+", typed.lower()))


def _let_pass(symptom: Symptom, certain: bool, harmless: float) -> bool:
    """Whether a find is forgotten, in what sounds harmless throughout: never a certain warning."""
    if symptom in WARNINGS:
        return not certain and harmless >= _NO_WARNING
    return harmless >= (_NOT_AT_ALL if certain else _HARDLY_EITHER)


def _worth_hearing(rest: str, parts: Sequence[Clause], opinion: SecondOpinion) -> bool:
    """Whether what was left unplaced says enough by itself: not the "i won't" after a clause."""
    alone = sum(part.says_something for part in parts) == 1
    if alone or len(rest.split()) > _TOO_SHORT:
        return True
    return len(rest.split()) == _TOO_SHORT and opinion.harmless(rest) <= 1.0 - _PLAIN_ENOUGH


def _without_figures(clause: str, tongue: ComplaintLanguage) -> tuple[str, bool]:
    """The clause without its figures of speech, and whether one of them is most of it."""
    plain = clause
    for figure in tongue.figures.worth_trying(clause):
        plain = figure.sub(lambda match: "_" * len(match[0]), plain)
    return plain, plain != clause and 2 * plain.count("_") > len(plain)


def from_report(word: str) -> Symptom | None:
    """The symptom that an id, a button or a few words of one's own stand for, or None."""
    by_id = "-".join(word.lower().replace("_", " ").replace("-", " ").split())
    if by_id in set(Symptom):
        return Symptom(by_id)
    hits = screen(word).hits
    ranked = sorted(hits, key=lambda hit: (not hit.sure, list(Symptom).index(hit.symptom)))
    return ranked[0].symptom if ranked else None


def _judged(
    clause: str, found: Mapping[Symptom, Hit], tongue: ComplaintLanguage, before: str, after: str
) -> Iterator[tuple[Phrase, Span, Polarity]]:
    """Every find of the clause with its verdict; what is sure already is not looked for again."""
    settled = set(found)
    finds = [
        (phrase, match.span())
        for phrase in tongue.phrases.worth_looking_for(clause)
        if phrase.symptom not in settled
        for match in phrase.pattern.finditer(clause)
    ]
    if not finds:
        return
    spans = sorted({span for _, span in finds})
    everyday = {symptom for symptom, words in tongue.everyday.items() if words.search(clause)}
    settings: dict[Span, Polarity] = {}
    for phrase, span in finds:
        if phrase.symptom in settled:
            continue
        verdict = tongue.said(clause, span, spans, denies=phrase.denies)
        if verdict in {Polarity.YES, Polarity.DOUBT}:
            if span not in settings:
                settings[span] = tongue.settings.judge(clause, span, before=before, after=after)
            if verdict is Polarity.YES or settings[span] in {Polarity.ELSEWHERE, Polarity.OVER}:
                verdict = settings[span]
        if (
            verdict in {Polarity.YES, Polarity.DOUBT}
            and phrase.symptom not in WARNINGS | EATING_AND_MOOD
            and tongue.settings.is_gone(clause, span, after)
        ):
            verdict = Polarity.ELSEWHERE  # a warning that has gone is a warning still
        near = verdict in {Polarity.SUPPOSED, Polarity.OVER}
        if verdict is Polarity.SUPPOSED:
            verdict = Polarity.YES if phrase.symptom in EATING_AND_MOOD else Polarity.DOUBT
        if verdict is Polarity.OVER:
            verdict = Polarity.DOUBT if phrase.symptom in WARNINGS else Polarity.ELSEWHERE
        if verdict in {Polarity.YES, Polarity.DOUBT} and phrase.symptom in everyday:
            verdict = Polarity.DOUBT if phrase.sure else Polarity.ELSEWHERE
        elif verdict is Polarity.YES and phrase.sure:
            settled.add(phrase.symptom)
        yield phrase, span, Polarity.SUPPOSED if near and verdict is Polarity.DOUBT else verdict


def _is_no(answer: str, tongue: ComplaintLanguage) -> bool:
    """Whether this is a plain "no", and not one that goes on, as in "no sleep"."""
    words = answer.split(" ", 2)
    return words[0] in tongue.no and (len(words) == 1 or words[1] in _GOES_WITH_NO)


def _keep(found: dict[Symptom, Hit], hit: Hit) -> None:
    before = found.get(hit.symptom)
    if before is None or (hit.sure and not before.sure):
        found[hit.symptom] = hit
