"""The clauses of a report: which label names which figure, and which figures only look like answers."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import pairwise

from engine.written.oneline.answers.labelling import name_figures
from engine.written.oneline.answers.oddities import mark_odd
from engine.written.oneline.report import Known
from engine.written.oneline.tokens.patterns import SKIPPED_MARKS
from engine.written.oneline.tokens.pieces import Clause, Figure, Mark, Token, Word
from engine.written.oneline.vocabulary.meanings import Means

_ENDS = frozenset("\n;.!?|()[]")
_PARTS = frozenset(",/-")


def clauses_of(tokens: Sequence[Token], known: Known) -> list[Clause]:
    """The line's clauses in order, each with its labels given to its figures."""
    found = [Clause(part, end) for piece in _parted(tokens) for part, end in _asked_apart(*piece)]
    pointing = frozenset(
        token.start
        for token, following in pairwise(tokens)
        if isinstance(following, Mark) and following.text in (":", "=")
    )
    for clause in found:
        clause.asks = clause.end == "?" and not _only_rounds(clause)
        clause.pointing = pointing
    mark_odd(found)
    name_figures(found, known)
    return found


def _only_rounds(clause: Clause) -> bool:
    """ "maybe 2?": a figure that is not sure, and no question."""
    said = (Means.ABOUT, Means.LABEL, Means.LINK, Means.RANGE)
    plain = all(
        isinstance(t, Figure) or (isinstance(t, Word) and t.says(*said)) for t in clause.tokens
    )
    return plain and bool(clause.figures) and Means.ABOUT in clause.means


def _parted(tokens: Sequence[Token]) -> Iterator[tuple[list[Token], str]]:
    part: list[Token] = []
    for index, token in enumerate(tokens):
        if isinstance(token, Mark) and _parts_here(tokens, index, token):
            if part:
                yield part, "|" if _is_gap(part, token) else token.text
            part = []
        elif not isinstance(token, Mark) or token.text not in SKIPPED_MARKS:
            part.append(token)
    if part:
        yield part, ""


def _is_gap(part: Sequence[Token], mark: Mark) -> bool:
    """Whether "?" stands in the place of an answer, as in "72.4 6 ?"; "is 72.4 fine ?" asks."""
    apart = mark.text == "?" and mark.start > part[-1].end
    return apart and all(
        isinstance(token, Figure) or (isinstance(token, Word) and Means.LABEL in token.means)
        for token in part
    )


def _asked_apart(part: list[Token], end: str) -> Iterator[tuple[list[Token], str]]:
    """What is put as a question ("on target? yes") is a clause of its own after figures."""
    at = next(
        (i for i, t in enumerate(part) if isinstance(t, Word) and Means.ON_TARGET in t.means), 0
    )
    if end == "?" and at:
        yield part[:at], ","
        yield part[at:], end
    else:
        yield part, end


def _parts_here(tokens: Sequence[Token], index: int, mark: Mark) -> bool:
    if mark.text == ".":
        before = tokens[index - 1] if index else None
        # the point of "ca. 60" and of "gest. 60" is no end
        short = (Means.ABOUT, Means.OTHER_DAY)
        return not (isinstance(before, Word) and before.says(*short) and len(before.text) <= 6)
    return mark.text in _ENDS or mark.text in _PARTS
