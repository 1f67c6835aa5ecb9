"""What each clause says to somebody who knows one language: the finds, and what the tone makes of them."""

# ruff: noqa: E501 - a pattern stays on one line
from __future__ import annotations

import re
from collections.abc import Callable, Iterator, Mapping, Sequence
from dataclasses import dataclass, field, replace
from typing import NamedTuple, Protocol

from engine.symptoms.clauses import GOES_ON, Clause, Correcting, spelt
from engine.symptoms.ear import SecondOpinion
from engine.symptoms.english.language import Settings
from engine.symptoms.english.negation import Polarity, Span
from engine.symptoms.names import EATING_AND_MOOD, WARNINGS, Hit, Symptom
from engine.symptoms.patterns import Cued, Phrase, PhraseBook
from engine.values.level import Level
from engine.written.late import Late, word_set


@dataclass(slots=True)
class ClauseFindings:
    """What one clause says in one language."""

    found: dict[Symptom, Hit] = field(default_factory=dict)
    denied: set[Symptom] = field(default_factory=set)
    drugs: list[str] = field(default_factory=list)
    muscles_hurt: bool = False
    supposed: set[Symptom] = field(default_factory=set)
    """What was found near, feared or over, so that it stays in doubt however it sounds."""
    set_aside: set[Symptom] = field(default_factory=set)
    """What was found and befell somebody else, or long ago: whoever reads it so has understood it."""
    elsewhere: bool = False
    """Whether something was found that befell somebody else, or long ago, or is a figure of speech."""

    @property
    def placed(self) -> bool:
        """Whether the clause is accounted for."""
        return bool(self.found or self.denied or self.drugs or self.elsewhere)


class Judge(Protocol):
    """Says whether what stands at a span of a clause was said, denied, or left in doubt."""

    def __call__(
        self, clause: str, span: Span, others: Sequence[Span], *, denies: bool = False
    ) -> Polarity: ...


@dataclass(frozen=True, slots=True, kw_only=True)
class ComplaintLanguage:
    """A language, as far as complaints go."""

    phrases: PhraseBook
    figures: Cued
    everyday: Mapping[Symptom, Late]
    corrector: Correcting
    said: Judge
    settings: Settings
    taken_back: Late
    no: frozenset[str]
    muscles_hurt: Late
    drugs: Callable[[str], list[Span]]


#: "no, all fine", "nope im good": what may follow the answer, and does not go on as "no sleep" does.
_GOES_WITH_NO = word_set(
    ", alles all thanks thank danke bin im i'm zum gott gar everything mir never sir gsd wieso why"
)
TOO_SHORT = 2  # words of a clause that are not listened to by themselves
#: A warning in so few words is asked about, however harmless it sounds: the tone has little to go by.
_ASKED_IN_SHORT = 5
#: From this chance of harmlessness on, to the second ear, a sure find is asked about and not flagged.
#: Chosen, as all that follows, on 1,930 fresh lines of four tables that the ear was not taught with: of
#: 263 warnings found for sure three sound so harmless, and of 60 harmless lines that had been taken
#: for one 20.
_HARDLY = 0.55
#: The same for so many words between commas, at most, of which the tone tells less: "wait, chest pain".
_IN_SHORT, _HARDLY_IN_SHORT = 6, 0.98
#: From here on a sure find that is no warning is let pass: the sentence goes to the coach as any other.
_NOT_AT_ALL = 0.9
#: And one of the mildest.
_NOT_A_MILD_ONE = 0.95
#: The same for a warning in doubt; a sure one is always asked about.
_NO_WARNING = 0.99
#: The same for a doubtful find of anything milder. Against a tenth and more higher 23
#: fewer of 198 harmless lines are asked about, and no complaint is missed.
_HARDLY_EITHER = 0.8
#: Up to here a doubtful find of anything milder than a warning is one, if it was not feared or supposed:
#: of the same lines 12 more, and no harmless one.
_SURELY_NOT = 0.06


def heard(
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
        findings = ClauseFindings()
        following = read[index + 1].text if index + 1 < len(read) else ""
        asked = parts[index].mark in {":", "?", "-", "="} and bool(following)
        # "no chest pain yesterday but today I do"
        turned = tongue.taken_back.match(following) is not None
        answered_no = asked and _is_no(following, tongue)
        plain, spared = _without_figures(clause.text, tongue)
        findings.elsewhere = spared
        goes_on = index > 0 and parts[index - 1].mark in GOES_ON
        before = read[index - 1].text if goes_on else ""
        findings.muscles_hurt = tongue.muscles_hurt.search(clause.text) is not None
        judged = list(_judged(plain, sure, tongue, before, following))
        # a word or two, or a complaint set against a denied one, is no matter of tone
        short = len(clause.text.split(" ")) <= TOO_SHORT
        none = any(verdict is Polarity.NO for *_, verdict in judged)
        denying = denying or none
        plainly = none or (short and (alone or denying))
        for phrase, span, verdict in judged:
            if verdict is Polarity.ELSEWHERE:
                findings.elsewhere = True
                findings.set_aside.add(phrase.symptom)
            elif (verdict is Polarity.NO and not turned) or (answered_no and span[1] == len(plain)):
                findings.denied.add(phrase.symptom)
            else:
                words = clause.typed(text, span)
                about = "" if short else parts[index].typed
                harmless = 0.0 if plainly else opinion.harmless(words, about)
                slipped = not _as_typed(clause.text[span[0] : span[1]], words)
                certain = verdict is Polarity.YES and phrase.sure
                few = len(clause.text.split()) <= _ASKED_IN_SHORT
                passes = not slipped and not (few and phrase.symptom in WARNINGS)
                if verdict is Polarity.SUPPOSED:
                    findings.supposed.add(phrase.symptom)
                if passes and _let_pass(phrase.symptom, certain, harmless):
                    findings.elsewhere = True
                    continue
                tone = Tone(harmless, plainly, _hardly(clause.text, span))
                hit = _hit(phrase, verdict, words, tone)
                keep(findings.found, hit)
                if hit.sure:
                    sure[hit.symptom] = hit
        findings.drugs += [clause.typed(text, span) for span in tongue.drugs(clause.text)]
        yield findings


class Tone(NamedTuple):
    """How harmless a find sounds, from where on it is doubted, and whether no tone tells of it."""

    harmless: float
    plainly: bool
    doubted_from: float


def _hit(phrase: Phrase, verdict: Polarity, words: str, tone: Tone) -> Hit:
    """What a phrase found, sure or in doubt, by the phrase, by how it was said and how it sounds."""
    certain = verdict is Polarity.YES and phrase.sure
    symptom, (harmless, plainly, bar) = phrase.symptom, tone
    if symptom in WARNINGS:
        return Hit(symptom, certain and harmless < bar, words)
    if verdict is Polarity.YES and not plainly and harmless <= _SURELY_NOT:
        return Hit(symptom, True, words)
    # nobody is asked about a doubt so mild: it is taken, or it is let pass
    mild = symptom.level is Level.ADVISORY
    return Hit(symptom, certain and (mild or harmless < bar), words)


def _hardly(clause: str, span: Span) -> float:
    """How harmless it has to sound to be doubted, by what stands between the commas around it."""
    start, end = clause.rfind(",", 0, span[0]) + 1, clause.find(",", span[1])
    said = len(clause[start : end if end >= 0 else len(clause)].split())
    return _HARDLY_IN_SHORT if said <= _IN_SHORT else _HARDLY


def _as_typed(read: str, typed: str) -> bool:
    """Whether nothing was put right in these words: the second ear hears them as they were typed."""
    return set(read.split(" ")) <= set(re.findall(r"[\w']+", typed.lower()))


def _let_pass(symptom: Symptom, certain: bool, harmless: float) -> bool:
    """Whether a find is forgotten, in what sounds harmless throughout: never a certain warning."""
    if symptom in WARNINGS:
        return not certain and harmless >= _NO_WARNING
    if certain and symptom.level is Level.ADVISORY:
        return harmless >= _NOT_A_MILD_ONE
    return harmless >= (_NOT_AT_ALL if certain else _HARDLY_EITHER)


def _without_figures(clause: str, tongue: ComplaintLanguage) -> tuple[str, bool]:
    """The clause without its figures of speech, and whether one of them is most of it."""
    plain = clause
    for figure in tongue.figures.worth_trying(clause):
        plain = figure.sub(lambda match: "_" * len(match[0]), plain)
    return plain, plain != clause and 2 * plain.count("_") > len(plain)


def _judged(
    clause: str, found: Mapping[Symptom, Hit], tongue: ComplaintLanguage, before: str, after: str
) -> Iterator[tuple[Phrase, Span, Polarity]]:
    """Every find of the clause with its verdict; what is sure already is not looked for again."""
    settled = set(found)
    finds = tongue.phrases.found_in(clause, but=settled)
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


def keep(found: dict[Symptom, Hit], hit: Hit) -> None:
    before = found.get(hit.symptom)
    if before is None or (hit.sure and not before.sure):
        found[hit.symptom] = hit
