"""Whether what was found in a clause was said, denied, or left in doubt."""

# ruff: noqa: E501 - a pattern stays on one line
from __future__ import annotations

from bisect import bisect_left
from collections.abc import Sequence
from dataclasses import dataclass
from enum import StrEnum

from engine.symptoms.denying import DENIALS, GERMAN_DENIALS_IN_WRITING
from engine.written.late import Late, word_set

Span = tuple[int, int]


class Polarity(StrEnum):
    YES = "yes"
    NO = "no"
    DOUBT = "doubt"
    SUPPOSED = "supposed"  # feared, wished, planned: of eating and mood that is the complaint
    OVER = "over"  # of some days ago, and gone since
    ELSEWHERE = "elsewhere"  # of somebody else, of long ago, in a film


@dataclass(frozen=True, slots=True)
class Denial:
    """A language's words of denial, and those that may stand between one and what it denies.

    After a word of `lessens` ("not very ...") the denial is in doubt; `not_a_bit` denies outright.
    """

    words: frozenset[str]
    between: frozenset[str]
    lessens: frozenset[str]
    not_a_bit: Late

    def within(self, found: str) -> Polarity:
        """For "hands are not swollen", where the "no" stands inside what was found."""
        inner = found.split(" ")[1:-1]
        if self.not_a_bit.search(" ".join((*inner, ""))):
            return Polarity.NO
        at = next((i for i, word in enumerate(inner) if word in self.words), None)
        after = inner[at + 1 :] if at is not None else []
        if at is None or not all(word in self.between or word in self.lessens for word in after):
            return Polarity.YES
        return Polarity.DOUBT if any(word in self.lessens for word in after) else Polarity.NO


_NOT = DENIALS | GERMAN_DENIALS_IN_WRITING
# Finds that begin with a word of denial are complaints in themselves: "no sleep", "can't breathe".
_SELF_DENYING = _NOT | {"can't", "couldn't", "barely", "hardly", "won't", "unable"}
# Words that may stand between the "no" and what it denies.
_BETWEEN = word_set(
    """
    a an any the my of sign signs symptom symptoms feel feels feeling felt had have having has been
    got get gets getting experience experienced experiencing at actually even ever single bit like i
    am is was were noticed notice noticing suffer suffered suffering from with kind sort issue
    issues problem problems there there's it's i've i'm far today yesterday this morning last night
    lately overnight episode episodes attack attacks bout bouts become became go going
    report reported to or nor nothing hint did once trace me life entire whole in before
    """
)
_LESSENED = word_set(
    """
    too very so as that much really quite super overly constantly always completely totally all
    seriously more longer mild slight extra new severe bad unusual other real think believe suppose reckon properly fully such
    """
)
# "no" before one of these is an answer, and what follows a sentence of its own: "no I fainted"
_SUBJECTS = frozenset({"i", "i'm", "i've", "my", "am", "it's", "there's", "was", "were", "is"})
_NOT_A_BIT = Late(
    r"\b(?:(?:not|isn't|wasn't|don't|didn't|never|aren't|weren't)(?: (?:feel|feeling|i|am|been|have|had|even))*"
    r" (?:(?:in )?the (?:least|slightest)(?: bit)?|one (?:little |tiny |single )?bit|(?:even )?(?:remotely|slightly|the tiniest bit))) $"
)
_DENIAL = Denial(_NOT, _BETWEEN, _LESSENED, _NOT_A_BIT)
_DETERMINERS = frozenset({"no", "none", "zero", "nil", "nothing"})
_TURNED = frozenset({"just", "only", "also", "now", "still", "instead"})
_STEP = Late(r"[\w']+|,")
_AFTER_STILL_THERE = Late(
    r" (?:like this|like that|like it|this bad|that bad|so bad|as bad|worse|"
    r"(?:get|got|getting|go|going|gone|went|stop|stopping|stopped|ease|easing|improv\w+) (?:away|better|worse))"
)
_AFTER_IN_DOUBT = Late(
    r"(?: [\w']+){0,2} (?:before|until|till|anymore|any more|any longer|yet|as (?:much|bad))"
)
_AFTER_DENIED = Late(r"(?: ?- ?| )(?:free|no|none|nope|nil|negative|zero|0|nein|keine?n?)(?= ,|$)")
_TWICE_DENIED = Late(r"\b(?:can't|couldn't|cannot|unable|never|impossible|hard)\b")
_DRUG_DENIED = Late(
    rf"\b(?:{'|'.join(sorted(_NOT))}|won't|wouldn't)"
    r"(?: (?:i|ever|even|be|been|on|any|take|takes|taking|taken|took|use|uses|using|used|touch|"
    r"touched|need|want|had|have|doing|do|of|or|and|other|such|tried|try)|"
    r" [\w']+(?: [\w']+)? (?:or|nor)){0,5} $"
)
_REACH = 160  # characters looked at on either side; no list of complaints is longer
_LIST_WITH_OR = Late(r"(?: ,(?: [\w']+){1,3}){0,6}(?: ,)? n?or ")


def said(clause: str, span: Span, others: Sequence[Span], *, denies: bool = False) -> Polarity:
    """Judge the words at `span`; `others` are the spans of all finds of the clause, in order.

    `denies` says that words of denial within the span belong to the complaint.
    """
    before, after = clause[: span[0]], clause[span[1] : span[1] + _REACH]
    if _AFTER_DENIED.match(after):
        return Polarity.NO
    if not denies and (within := _DENIAL.within(clause[span[0] : span[1]])) is not Polarity.YES:
        return within
    if _NOT_A_BIT.search(before, max(0, len(before) - _REACH)):
        return Polarity.NO
    denied = _denied_before(before, _nearby(others, span), _LIST_WITH_OR.match(after) is not None)
    if denied is Polarity.NO and _AFTER_STILL_THERE.match(after):
        return Polarity.YES
    if denied is Polarity.NO and _AFTER_IN_DOUBT.match(after):
        return Polarity.DOUBT
    return denied


def _denied_before(before: str, others: Sequence[Span], listed: bool) -> Polarity:
    """Walk back from the find: only words that may stand between lead to the "no".

    A list needs its "or" (`listed`, or on the way back) for the "no" to reach past a comma; with
    commas alone, or with "and", the rest of the list is in doubt.
    """
    start = max(0, len(before) - _REACH)
    steps = list(_STEP.finditer(before, start))
    comma = joined = lessened = own_sentence = False
    for step in reversed(steps[-14:]):
        word = step[0]
        around = _around(step.start(), others)
        if around is not None and _STEP.match(before, around[0])[0] in _SELF_DENYING:  # type: ignore[index]
            return Polarity.YES  # the "no" of "no sleep" is spent on the sleep
        if word in _NOT:
            alone = word in _DETERMINERS and own_sentence
            if lessened or alone or ((joined or comma) and not listed):
                return Polarity.DOUBT
            if word == "without" and _TWICE_DENIED.search(before, start, step.start()):
                return Polarity.YES
            return Polarity.NO
        if word in _TURNED:
            return Polarity.YES
        if word == "free" and before.startswith((" of", " from"), step.end()):
            return Polarity.NO
        own_sentence = own_sentence or word in _SUBJECTS
        comma = comma or word == ","
        joined = joined or word == "and"
        listed = listed or word in {"or", "nor"}
        lessened = lessened or word in _LESSENED
        passed = word in _BETWEEN or word in _LESSENED or word in {",", "and"}
        if not passed and around is None:
            return Polarity.YES
    return Polarity.YES


def drug_denied(clause: str, span: Span) -> bool:
    """Whether the drug named at `span` is said not to be taken; "my" or "the" drug is taken."""
    return _DRUG_DENIED.search(clause, max(0, span[0] - _REACH), span[0]) is not None


def _nearby(spans: Sequence[Span], span: Span) -> Sequence[Span]:
    first = bisect_left(spans, (span[0] - 2 * _REACH, 0))
    last = bisect_left(spans, span)
    return spans[first:last]


def _around(position: int, spans: Sequence[Span]) -> Span | None:
    return next((span for span in spans if span[0] <= position < span[1]), None)
