"""What an athlete asks for is heard however it is put, and talk is not taken for it.

The sentences that are counted on stand in `tests/asked/held_out.tsv` and were never learnt from.
"""

from __future__ import annotations

import csv
from pathlib import Path

import pytest

from engine.asked import View, view_asked_for
from engine.asked.views import Model, model
from engine.symptoms import Screening, screen
from tests.asked.corpus import CLASSES, FOLDER, NONE, digest, held_out, requests
from tests.ear.corpus import FOLDER as OF_THE_EAR

COMPLAINTS = OF_THE_EAR.with_name("held_out.tsv")


def test_the_weights_are_those_of_the_corpus_and_of_how_it_is_read() -> None:
    assert model().corpus == digest(), "python -m tests.asked.train"
    assert len(model().bias) == len(CLASSES)


def test_weights_are_the_same_once_packed_and_those_of_other_features_are_refused() -> None:
    again = Model.unpacked(model().packed())
    assert again.chances("carbs today?") == model().chances("carbs today?")
    with pytest.raises(ValueError, match="the code is"):
        Model.unpacked(model().packed().replace(Model.ID.encode(), b"asked-0", 1))


@pytest.mark.parametrize("language", ["en", "de"])
def test_most_requests_are_heard_and_talk_seldom_taken_for_one(language: str) -> None:
    rows = [(asks, text) for spoken, asks, text in held_out() if spoken == language]
    asked = [(asks, view_asked_for(text)) for asks, text in rows if asks != NONE]
    talk = [text for asks, text in rows if asks == NONE and view_asked_for(text) is not None]
    assert len(asked) > 40
    assert sum(shown is not None for _, shown in asked) / len(asked) >= 0.75
    assert sum(shown == meant for meant, shown in asked) / len(asked) >= 0.45
    assert len(talk) / (len(rows) - len(asked)) <= 0.25, talk


def test_what_is_counted_on_was_not_learnt_from() -> None:
    learnt = {one.text.lower() for one in requests()}
    assert [text for _, _, text in held_out() if text.lower() in learnt] == []
    assert {path.name[:2] for path in FOLDER.glob("*.txt")} == {"en", "de"}


def test_a_request_beside_other_words_is_heard() -> None:
    for text, view in (
        ("slept well, dog is ill. what are my carbs today?", View.TODAY),
        ("gestern war super und wie viele tage noch bis zum wettkampf", View.WEEK),
        ("thanks for yesterday!! why are my carbs lower now", View.WHY),
        ("bin im zug, wir sind eine stunde hinten, was ess ich jetzt", View.STAGE),
    ):
        assert view_asked_for(text) is view, text


def test_a_complaint_that_the_ears_miss_is_hardly_ever_answered_with_a_view() -> None:
    with Path(COMPLAINTS).open(encoding="utf-8") as file:
        rows = list(csv.reader(file, delimiter="\t", quoting=csv.QUOTE_NONE))
    told = [text for _, kind, text in rows if kind in ("emergency", "body", "mood")]
    taken = [text for text in told if view_asked_for(text) and screen(text) == Screening()]
    assert len(told) > 100
    assert len(taken) <= 1, taken
