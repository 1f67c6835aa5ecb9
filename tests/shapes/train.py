"""Trains the judge of figures and writes its weights: `python -m tests.shapes.train`.

`--check` only measures: each table of the corpus is read with a judge that has not seen it. The grammar
has seen some of them, so that what counts is the difference between the columns. Needs scikit-learn
(the extra `train`). The same corpus gives the same bytes.
"""

from __future__ import annotations

import argparse
import random
from collections import Counter
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from itertools import product
from math import prod
from pathlib import Path

import numpy as np
from scipy import sparse
from sklearn.linear_model import LogisticRegression

from engine.written.oneline import CORE, Report
from engine.written.oneline.judge import settling
from engine.written.oneline.judge.model import BUCKETS, MOST_FIGURES, OTHER, Model, Seen, seen
from engine.written.oneline.reading import by_grammar, read_report
from engine.written.oneline.tokens.pieces import Token, Word
from tests.shapes.rows import FOLDER, Row, digest, rows

HERE = Path(__file__).resolve().parents[2] / "engine/written/oneline/judge/weights.bin"
SEED = 11
#: Chosen on tables left out, as were the three below.
STRENGTH = 8.0
ROUNDS = 200
#: Traits of fewer figures than this are names and chance.
RARE = 2
#: Each morning is told again with some of its words, and with most of them, put in other words that
#: nobody knows; it counts so much then.
IN_OTHER_WORDS = (0.25, 0.6)
SHARE = 0.3
#: What the grammar had to ask about counts more: the judge is asked about nothing else.
OF_THE_ASKED = 3.0


@dataclass(frozen=True)
class Example:
    """A morning's figures as they stand and in other words, and what each of them may be meant as."""

    row: Row
    asked: bool
    figures: list[Seen]
    reworded: list[list[Seen]]
    may_be: list[set[int]]


def examples(of: Sequence[Row]) -> list[Example]:
    chance = random.Random(SEED)
    found = []
    for row in of:
        read = by_grammar(row.text, row.known)
        figures = seen(read.tokens, read.known)
        if not 0 < len(figures) <= MOST_FIGURES:
            continue
        may_be = [
            {
                column
                for column, key in enumerate(CORE)
                if (worth := one.values[column]) is not None and row.is_meant(key, worth)
            }
            for one in figures
        ]
        reworded = [
            seen([_reworded(t, share, chance) for t in read.tokens], read.known)
            for share in IN_OTHER_WORDS
        ]
        found.append(Example(row, bool(read.report.doubts), figures, reworded, may_be))
    return found


def _reworded(token: Token, share: float, chance: random.Random) -> Token:
    if not isinstance(token, Word) or chance.random() >= share:
        return token
    return Word(start=token.start, end=token.end, text=f"q{chance.randrange(10**6)}")


def rows_of(figures: Sequence[Seen]) -> sparse.csr_matrix:
    starts = np.cumsum([0, *(len(one.traits) for one in figures)])
    indices = [trait for one in figures for trait in one.traits]
    values = [len(one.traits) ** -0.5 for one in figures for _ in one.traits]
    return sparse.csr_matrix((values, indices, starts), shape=(len(figures), BUCKETS))


def meant(example: Example, by: Model | None) -> list[int] | None:
    """The class of each figure; where a value stands there twice, as `by` thinks likelier."""
    told = Counter(column for columns in example.may_be for column in columns)
    if max(told.values(), default=0) < 2 and all(len(one) < 2 for one in example.may_be):
        return [min(one, default=OTHER) for one in example.may_be]
    if by is None:
        return None
    chances = [by.chances(one) for one in example.figures]
    ways = list(_ways(example.may_be, list(told)))
    return max(
        ways,
        key=lambda way: prod(own[c] for own, c in zip(chances, way, strict=True)),
        default=None,
    )


def _ways(may_be: Sequence[set[int]], columns: Sequence[int]) -> Iterator[list[int]]:
    """Each answer that was told on one of the figures that may be meant."""
    for places in product(range(len(may_be)), repeat=len(columns)):
        pairs = list(zip(places, columns, strict=True))
        if len(set(places)) == len(places) and all(c in may_be[at] for at, c in pairs):
            classes = [OTHER] * len(may_be)
            for at, column in pairs:
                classes[at] = column
            yield classes


def fit(taught: Sequence[Example], corpus: str = "") -> Model:
    """Learns twice: the first model says which of two like figures is meant."""
    return _fit(taught, _fit(taught, None, corpus), corpus)


def _fit(taught: Sequence[Example], by: Model | None, corpus: str) -> Model:
    figures: list[Seen] = []
    classes: list[int] = []
    weights: list[float] = []
    for example in taught:
        own = meant(example, by)
        if own is None:
            continue
        counts = OF_THE_ASKED if example.asked else 1.0
        for share, told in ((1.0, example.figures), *((SHARE, one) for one in example.reworded)):
            figures += told
            classes += own
            weights += [counts * share] * len(told)
    whole = rows_of(figures)
    common = np.flatnonzero((whole > 0).sum(axis=0).A1 >= RARE)
    learner = LogisticRegression(C=STRENGTH, max_iter=ROUNDS, tol=1e-3)
    learner.fit(whole[:, common], classes, sample_weight=weights)
    learnt = np.zeros((BUCKETS, len(CORE) + 1))
    learnt[common] = learner.coef_.T
    return Model.of(learnt, learner.intercept_, corpus)


def grade(report: Report, row: Row) -> str:
    """How a report does: `wrong` is wrong in silence."""
    read = {key: report.answers.get(key) for key in CORE}
    told = {key: value for key, value in read.items() if value is not None}
    if not all(row.is_meant(key, value) for key, value in told.items()):
        return "wrong, asked" if report.doubts else "wrong"
    if report.doubts:
        return "rightly asked" if row.may_ask else "asked"
    missing = any(row.meant[key] is not None and key not in told for key in CORE)
    return "unread" if missing else "right"


def check(corpus: Sequence[Example], worst: int) -> None:
    """Each table by a judge that has not seen it, beside the grammar alone."""
    for table in sorted({path.stem for path in FOLDER.glob("*.txt")}):
        model = fit([one for one in corpus if one.row.table != table])
        settling.model = lambda model=model: model  # type: ignore[misc]
        read_report.cache_clear()
        alone: Counter[str] = Counter()
        both: Counter[str] = Counter()
        for row in (row for row in rows() if row.table == table):
            before = grade(by_grammar(row.text, row.known).report, row)
            report = read_report(row.text, row.known)
            after = grade(report, row)
            alone[before] += 1
            both[after] += 1
            if worst and after not in ("right", "rightly asked"):
                told = [f"{doubt.code} {doubt.answer}: {doubt.given}" for doubt in report.doubts]
                print(f"  {before} > {after}: {row.text!r} {row.meant} {report.answers} {told}")
        print(table, "grammar", dict(alone), "and judge", dict(both))


def main() -> None:
    asked = argparse.ArgumentParser(description=__doc__)
    asked.add_argument("--check", action="store_true", help="measure on tables left out")
    asked.add_argument("--worst", action="store_true", help="show what is not right")
    args = asked.parse_args()
    corpus = examples(rows())
    if args.check:
        check(corpus, args.worst)
        return
    HERE.write_bytes(fit(corpus, digest()).packed())
    print(f"{HERE.name}: {HERE.stat().st_size} bytes")


if __name__ == "__main__":
    main()
