"""The clauses of a report: which label names which figure, and which figures only look like answers."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from itertools import pairwise

from engine.written.oneline.answers.labelling import name_figures
from engine.written.oneline.report import Known
from engine.written.oneline.tokens.pieces import (
    SKIPPED_MARKS,
    Clause,
    Figure,
    Mark,
    Means,
    Token,
    Unit,
    Word,
)

# after a figure these say that so much is not done yet
_STILL_OPEN = frozenset(
    {"left", "to go", "still to go", "remaining", "still to drink", "noch offen", "offen", "übrig",
     "so far", "bisher", "bis jetzt", "by now", "already today", "heute schon"}
)  # fmt: skip
IN_PLACE_OF = frozenset({"statt", "anstatt", "instead of", "rather than", "up from", "down from"})
_FROM = frozenset({"from", "von"})
_RISEN_TO = frozenset({"up to", "bis zu"})
_AT_AN_HOUR = frozenset({"at", "um", "gegen", "ab", "around", "by"})
_HOURS = 24
_ASKS = frozenset(
    {
        "is",
        "are",
        "was",
        "were",
        "isn't",
        "aren't",
        "ist",
        "sind",
        "waren",
        "wären",
        "reichen",
        "reicht",
        "genügen",
    }
)
_ARTICLES = frozenset({"the", "a", "my", "der", "die", "das", "den", "mein", "meine"})
# a number after one of these, or before it with "of", may count what an unknown word names
_SEE_THROUGH = _ARTICLES | {"of", "at", "up", "von", "um", "am"}


def mark_odd(clauses: Iterable[Clause]) -> None:
    for clause in clauses:
        _mark(clause)


def _mark(clause: Clause) -> None:
    tokens = clause.tokens
    wished = denied = False
    alone = len(clause.figures) == 1
    for index, token in enumerate(tokens):
        if isinstance(token, Word):
            if Means.OTHERWISE in token.means and Means.ON_TARGET not in token.means:
                wished = True
            if Means.NOT in token.means and len(token.meanings) <= 3:
                denied = _denies_answer(tokens, index)
            if token.unknown:
                denied = False
        elif isinstance(token, Figure):
            beside = _bounded(tokens, index) or _of_an_hour_or_open(tokens, index)
            if wished or denied or clause.asks or beside:
                clause.odd.add(token.start)
            _mark_beside(clause, token, index)
            denied = False
    if alone and Means.OTHERWISE in clause.means and not _drunk_down(clause):
        clause.odd.add(clause.figures[0].start)
        clause.trailed.clear()
        clause.beside.clear()


def _mark_beside(clause: Clause, figure: Figure, index: int) -> None:
    """What the words directly beside a figure make of it."""
    tokens = clause.tokens
    if (
        _is_eaten(tokens, index)
        or _stands_aside(tokens, index)
        or _of_hours(tokens, index)
        or _at_an_hour(tokens, index)
        or (clause.asks and _is_asked_about(tokens, index))
    ):
        clause.foreign.add(figure.start)
    following = tokens[index + 1] if index + 1 < len(tokens) else None
    multiplied = figure.unit is Unit.VOLUME and any(sign in figure.text for sign in "x×*")
    if isinstance(following, Word) and Means.VESSEL in following.means and not multiplied:
        clause.vessels.add(figure.start)
        clause.odd.add(figure.start)
    counts = _counts(tokens, index, +1)
    if _of_other_day(tokens, index):
        clause.dated.add(figure.start)
    if counts or _counts(tokens, index, -1) or figure.start in clause.dated:
        if figure.start not in clause.odd:
            clause.beside.add(figure.start)
        clause.odd.add(figure.start)
    if counts:
        clause.trailed.add(figure.start)


def _stands_aside(tokens: Sequence[Token], index: int) -> bool:
    """Whether the figure is what another stands in place of: "8 instead of 7", "statt 4"."""
    before = tokens[index - 1] if index else None
    return isinstance(before, Word) and before.text in IN_PLACE_OF


def _of_hours(tokens: Sequence[Token], index: int) -> bool:
    """ "from two to five no signal": a time of day, with both its ends."""
    figure, before = tokens[index], tokens[index - 1] if index else None
    after = tokens[index + 1] if index + 1 < len(tokens) else None
    begun = isinstance(before, Word) and before.text in _FROM
    ranged = isinstance(after, Word) and Means.RANGE in after.means
    return begun and (ranged or bool(isinstance(figure, Figure) and figure.high))


def _at_an_hour(tokens: Sequence[Token], index: int) -> bool:
    """ "My hair appointment is at three": so late something is that is no answer."""
    figure, before = tokens[index], tokens[index - 1] if index else None
    assert isinstance(figure, Figure)
    if not isinstance(before, Word) or before.text not in _AT_AN_HOUR or figure.high:
        return False
    if figure.unit is not Unit.NONE or not figure.number.isdecimal():
        return False
    told = any(isinstance(t, Word) and t.says(Means.LABEL, Means.SCORE) for t in tokens)
    what = any(token.unknown for token in tokens[: index - 1])
    return int(figure.number) <= _HOURS and what and not told


def _is_asked_about(tokens: Sequence[Token], index: int) -> bool:
    """ "Is 3.5 liters a lot?" tells of no drink; "is it 3.5?" may."""
    return index == 1 and isinstance(tokens[0], Word) and tokens[0].text in _ASKS


def _drunk_down(clause: Clause) -> bool:
    """ "got 3.5 L down"."""
    (figure,) = clause.figures
    said = [word for word in clause.words if Means.OTHERWISE in word.means]
    down = all(word.text == "down" and word.start > figure.end for word in said)
    return down and figure.unit is Unit.VOLUME


def _of_an_hour_or_open(tokens: Sequence[Token], index: int) -> bool:
    """Whether the figure is the "till 5" of a sentence, with no first end, or what is "still to go"."""
    before = tokens[index - 1] if index else None
    after = tokens[index + 1] if index + 1 < len(tokens) else None
    ends = isinstance(before, Word) and Means.RANGE in before.means
    label = tokens[index - 2] if index > 1 else None
    if ends and isinstance(label, Word) and Means.LABEL in label.means:
        return False  # "fullness to 7"
    return ends or (isinstance(after, Word) and after.text in _STILL_OPEN)


def _denies_answer(tokens: Sequence[Token], index: int) -> bool:
    """Whether what is denied is a figure or its label, rather than a word that is not known."""
    for token in tokens[index + 1 :]:
        if isinstance(token, Figure):
            return True
        if token.unknown:
            return False
        if isinstance(token, Word) and Means.LABEL in token.means:
            return True
    return False


def _bounded(tokens: Sequence[Token], index: int) -> bool:
    before = tokens[index - 1] if index else None
    if not isinstance(before, Word) or Means.BOUND not in before.means:
        return False
    label = tokens[index - 2] if index > 1 else None
    of_score = label.means.get(Means.LABEL) if isinstance(label, Word) else None
    # "fullness up to 8" has risen to it
    return not (before.text in _RISEN_TO and of_score and of_score.about == "fullness")


def _of_other_day(tokens: Sequence[Token], index: int) -> bool:
    """Whether a figure of this morning stands beside the name of another day."""
    beside = [tokens[i] for i in (index - 1, index + 1, index - 2) if 0 <= i < len(tokens)]
    far = [t for t in beside if isinstance(t, Word) and Means.OTHER_DAY in t.means]
    if not far and not _of_the_day_named(tokens, index):
        return False
    if any(_labels_past(token) for token in tokens[max(0, index - 2) : index]):
        return False
    labels = [t.means.get(Means.LABEL) for t in tokens if isinstance(t, Word)]
    figure = tokens[index]
    assert isinstance(figure, Figure)
    keys = {label.about for label in labels if label is not None}
    if keys & {"water_l", "carb_eaten_g", "sleep_h"} and not keys & {"weight_kg", "fullness"}:
        return False
    return figure.unit is not Unit.VOLUME


def _of_the_day_named(tokens: Sequence[Token], index: int) -> bool:
    """Whether a score follows the name of another day: "gestern hatt ich fülle 5 heut 6"."""
    label = next(
        (t.means.get(Means.LABEL) for t in tokens[max(0, index - 2) : index] if isinstance(t, Word)
         and Means.LABEL in t.means), None,
    )  # fmt: skip
    if label is None or label.about not in ("fullness", "sharpness"):
        return False
    for token in reversed(tokens[:index]):
        if isinstance(token, Figure) or (isinstance(token, Word) and Means.TODAY in token.means):
            return False
        if isinstance(token, Word) and Means.OTHER_DAY in token.means:
            return True
    return False


def _labels_past(token: Token) -> bool:
    """Whether it labels what is always told of the day before: "water yesterday 3.5"."""
    label = token.means.get(Means.LABEL) if isinstance(token, Word) else None
    return label is not None and label.about in ("water_l", "carb_eaten_g", "sleep_h")


def _is_eaten(tokens: Sequence[Token], index: int) -> bool:
    """Whether a bare number counts pieces of what was eaten: "ate 5 rice cakes"."""
    figure = tokens[index]
    following = tokens[index + 1] if index + 1 < len(tokens) else None
    assert isinstance(figure, Figure)
    if figure.unit is not Unit.NONE or not figure.number.isdecimal() or following is None:
        return False
    eaten = any(isinstance(token, Word) and Means.EATEN in token.means for token in tokens)
    return eaten and following.unknown


def _counts(tokens: Sequence[Token], index: int, step: int) -> bool:
    """Whether an unknown word beside the figure may be what it counts, or what it is told of."""
    word = _neighbour(tokens, index, step)
    following = tokens[index + 1] if index + 1 < len(tokens) else None
    if step > 0 and isinstance(following, Word) and following.text in _ARTICLES:
        return False  # "4 the hotel bed was hard" counts no hotels
    if word is None or Means.LABEL in word.means or Means.SCORE in word.means:
        return False
    if not word.meanings:
        return word.unknown and not any(
            char.isdecimal() for char in word.text
        )  # "5 days" is counted already
    return step < 0 and {meaning.means for meaning in word.meanings} == {Means.COUNTS_NOT}


def _neighbour(tokens: Sequence[Token], index: int, step: int) -> Word | None:
    at = index + step
    while 0 <= at < len(tokens):
        token = tokens[at]
        if not isinstance(token, Word):
            return None
        if token.text not in _SEE_THROUGH:
            return token
        at += step
    return None


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
