"""Trains what hears requests and writes its weights: `python -m tests.asked.train`.

`--check` only measures, on sentences whose template was left out. Needs scikit-learn (the extra
`train`). The same corpus gives the same bytes.
"""

from __future__ import annotations

import argparse
import random
from collections.abc import Sequence
from pathlib import Path

import numpy as np
from scipy import sparse
from sklearn.linear_model import LogisticRegression
from sklearn.model_selection import GroupKFold

from engine.asked.views import FAMILIES, THRESHOLD, Model, features
from engine.symptoms.ear.reading import BUCKETS
from tests.asked.corpus import CLASSES, NONE, Request, digest, held_out, requests
from tests.ear.corpus import sentences
from tests.ear.train import rows, slipped

HERE = Path(__file__).resolve().parents[2] / "engine" / "asked" / "weights.bin"
SEED = 11
#: A weaker pull to nought fits the corpus better; chosen on sentences unseen in training.
STRENGTH = 8.0
ROUNDS = 100
#: Features of fewer sentences than this are names and chance.
RARE = 2
#: So many of the second ear's sentences stand for all that is said and asks for nothing.
OF_THE_EAR = 6000
#: What sounds so much like a request among them may be one.
UNMARKED = 0.4
#: What such a sentence counts beside one of the corpus.
SHARE_OF_THE_EAR = 0.8


def examples(corpus: Sequence[Request]) -> tuple[list[str], list[str], list[float]]:
    """Texts, what they ask for and their weights: as they stand, mistyped, and beside other words."""
    chance = random.Random(SEED)
    told = [one.text for one in corpus if one.asks == NONE]
    texts: list[str] = []
    asks: list[str] = []
    weights: list[float] = []
    for one in corpus:
        other = chance.choice(told)
        mark = chance.choice((", ", ". ", " und " if one.language == "de" else " and ", "\n"))
        joined = f"{other}{mark}{one.text}" if chance.random() < 0.6 else f"{one.text}{mark}{other}"
        for text, weight in ((one.text, 1.0), (slipped(one.text, chance), 0.4), (joined, 0.4)):
            texts.append(text)
            asks.append(one.asks)
            weights.append(weight * one.share)
    return texts, asks, weights


def of_the_ear() -> list[str]:
    """Sentences for the second ear, those of a complaint and harmless ones, drawn alike each time."""
    chance = random.Random(SEED)
    return chance.sample([one.text for one in sentences() if one.by_hand], OF_THE_EAR)


def fit(corpus: Sequence[Request], others: Sequence[str]) -> Model:
    """Learns twice: the first model says which of the `others` may be requests themselves."""
    texts, asks, weights = examples(corpus)
    plain = rows(texts, FAMILIES, features)
    known = np.flatnonzero((plain > 0).sum(axis=0).A1 >= RARE)
    seen, unmarked = plain[:, known], rows(others, FAMILIES, features)[:, known]
    kinds = np.array([CLASSES.index(each) for each in asks])
    first = _learner().fit(seen, kinds, sample_weight=weights)
    told = unmarked[first.predict_proba(unmarked)[:, 0] > 1.0 - UNMARKED]
    learner = _learner().fit(
        sparse.vstack([seen, told]),
        np.concatenate([kinds, np.zeros(told.shape[0], dtype=int)]),
        sample_weight=[*weights, *[SHARE_OF_THE_EAR] * told.shape[0]],
    )
    whole = np.zeros((BUCKETS, len(CLASSES)))
    whole[known] = learner.coef_.T
    return Model.of(whole, learner.intercept_, digest())


def _learner() -> LogisticRegression:
    return LogisticRegression(C=STRENGTH, max_iter=ROUNDS, tol=1e-3)


def report(asked: Sequence[tuple[str, str]], heard: Sequence[Sequence[float]], worst: int) -> None:
    """How many requests are heard at each threshold, and taken for themselves; how many others."""
    asks = np.array([each for each, _ in asked])
    chances = np.array(heard)
    likeliest = np.array(CLASSES)[chances[:, 1:].argmax(axis=1) + 1]
    for threshold in (0.2, 0.3, 0.4, 0.5, 0.6):
        shown = 1.0 - chances[:, 0] >= threshold
        of_requests = shown[asks != NONE].mean()
        right = (shown & (likeliest == asks))[asks != NONE].mean()
        print(
            f"at {threshold}: requests {of_requests:.3f}, by the view meant {right:.3f}, "
            f"others {shown[asks == NONE].mean():.3f}"
        )
    shown = 1.0 - chances[:, 0] >= THRESHOLD
    wrong = np.flatnonzero(shown != (asks != NONE) if worst else np.zeros(len(asks), dtype=bool))
    for at in wrong[:worst]:
        print(f"{asks[at]:6} {1.0 - chances[at][0]:.2f} {likeliest[at]:6} {asked[at][1]}")


def main() -> None:
    asked = argparse.ArgumentParser(description=__doc__)
    asked.add_argument("--check", action="store_true", help="measure on grouped folds")
    asked.add_argument("--worst", type=int, default=0, help="show so many that are heard wrongly")
    args = asked.parse_args()
    corpus, others = requests(), of_the_ear()
    for each in CLASSES:
        print(each, sum(one.asks == each for one in corpus))
    if args.check:
        chances: list[Sequence[float]] = [()] * len(corpus)
        lines = [one.line for one in corpus]
        for seen, unseen in GroupKFold(5).split(corpus, groups=lines):
            model = fit([corpus[i] for i in seen], others)
            for i in unseen:
                chances[i] = model.chances(corpus[i].text)
        report([(one.asks, one.text) for one in corpus], chances, args.worst)
        return
    model = fit(corpus, others)
    HERE.write_bytes(model.packed())
    print(f"{HERE.name}: {HERE.stat().st_size} bytes, corpus {model.corpus}")
    print("held out:")
    apart = [(asks, text) for _, asks, text in held_out()]
    report(apart, [model.chances(text) for _, text in apart], args.worst)


if __name__ == "__main__":
    main()
