"""Learns how what both ears heard is weighed together: `python -m tests.ear.weigh`.

The second ear is taught anew without the tables that were read of late, so that it hears those as it
will hear what nobody has written yet; from them the weights of `engine.symptoms.ear.hearing` are
learnt, and printed to be written there. Needs scikit-learn (the extra `train`) and some minutes.
"""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np
from sklearn.linear_model import LogisticRegression

from engine.symptoms.ear import hearing
from engine.symptoms.ear.hearing import WEIGHTS, measures
from engine.symptoms.ear.model import vectors
from engine.symptoms.screening import found_by_either, is_by_another
from tests.ear.corpus import Sentence, sentences
from tests.ear.train import fit, fit_meaning

#: How a family's name ends that was read of late; what is mild there is neither told nor harmless.
OF_LATE = "-of-late"
MILD = "mild-of-late"


def of_late(sentence: Sentence) -> bool:
    return sentence.family.removesuffix(" mixed").endswith(OF_LATE)


def learnt(unheard: Sequence[Sentence]) -> tuple[dict[str, float], float]:
    """The weights by name, and the bias."""
    rows = []
    for sentence in unheard:
        text = sentence.text
        told = found_by_either(text, by_another=is_by_another(text))
        found = measures(text, told.hits)
        rows.append([float(found[name]) for name in WEIGHTS])
    are = [sentence.kind != "harmless" for sentence in unheard]
    learner = LogisticRegression(C=0.3, max_iter=5000).fit(np.array(rows), are)
    named = dict(zip(WEIGHTS, (round(float(w), 2) for w in learner.coef_[0]), strict=True))
    return named, round(float(learner.intercept_[0]), 2)


def main() -> None:
    corpus = sentences()
    taught = [sentence for sentence in corpus if not of_late(sentence)]
    model, meaning = fit(taught), fit_meaning(taught, vectors([s.text for s in taught]))
    hearing.model, hearing.meaning = lambda: model, lambda: meaning
    weights, bias = learnt([s for s in corpus if of_late(s) and MILD not in s.family])
    print(weights, bias)


if __name__ == "__main__":
    main()
