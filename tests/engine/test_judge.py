"""The judge of figures: what it settles among words that nobody knows, and what it leaves alone."""

from __future__ import annotations

import random
from collections import Counter

import pytest

from engine.written.oneline import CORE, Known, read_report
from engine.written.oneline.judge import settling
from engine.written.oneline.judge.model import Model, judged, model, seen
from engine.written.oneline.reading import by_grammar
from engine.written.units import VolumeUnit, WeightUnit
from tests.engine.test_morning_shapes import athlete
from tests.shapes.rows import digest, rows


def test_the_weights_were_learnt_from_this_corpus_and_read_as_it_was_read() -> None:
    assert model().corpus == digest(), "python -m tests.shapes.train"


def test_packed_weights_come_back_as_they_were_and_strange_ones_are_refused() -> None:
    packed = model().packed()
    assert Model.unpacked(packed).packed() == packed
    assert len(packed) < 40_000
    with pytest.raises(ValueError, match="weights are of judge-0"):
        Model.unpacked(packed.replace(Model.ID.encode(), b"judge-0", 1))


@pytest.mark.parametrize(
    ("language", "text", "answers"),
    [
        ("en", "weighed 72.1, roundness 6, sank 3.5", (72.1, 6, 3.5)),
        ("en", "3.5 litres, plumpness 6, 72.1", (72.1, 6, 3.5)),
        ("en", "good grief 72.1. puffiness 7. water 3.4", (72.1, 7, 3.4)),
        ("de", "Moin, 72,1, Knackigkeit 6, Wasser 3,5", (72.1, 6, 3.5)),
        ("de", "Wasser 3,5\nStraffheit 7\n72,1", (72.1, 7, 3.5)),
    ],
)
def test_figures_beside_words_that_nobody_knows_are_read_where_they_can_be_nothing_else(
    language: str, text: str, answers: tuple[float, ...]
) -> None:
    assert by_grammar(text, athlete(language, "kg")).report.doubts, "the grammar reads it alone"
    report = read_report(text, athlete(language, "kg"))
    assert report.doubts == ()
    assert [report.answers[key] for key in CORE] == pytest.approx(list(answers))


@pytest.mark.parametrize(
    ("language", "text"),
    [
        ("en", "72.1, plumpness 6, at least 3.5 l"),  # a bound
        ("en", "should weigh 72.1, plumpness 6, water 3.5"),  # a wish
        ("en", "72.1, plumpness 6, 3.5 litres to go"),
        ("en", "72.1 plumpness 6 3.5 170 g"),  # eaten
        ("en", "72.1, plumpness 6 and the legs 8, water 3.5"),  # another score
        ("en", "72.1, plumpness 6, 3 litres and a 500"),  # another drink
        ("en", "72.1 or 71.6, plumpness 6, water 3.5"),  # another weight
        ("en", "72.1, plumpness 6, sank 0.7"),  # far from what was to be drunk
        ("en", "moin 3 72.1 6"),  # bare, and in another order
        ("de", "72,1, Knackigkeit 6, drei Liter dreiviertel"),
    ],
)
def test_what_may_be_meant_otherwise_is_asked_about_as_before(language: str, text: str) -> None:
    known = athlete(language, "kg")
    assert read_report(text, known).doubts == by_grammar(text, known).report.doubts != ()


def test_a_figure_of_something_else_that_was_asked_about_stays_in_the_note() -> None:
    text = "72.1, plumpness 6, water 3.5, and 0 for the mood"
    report = read_report(text, athlete("en", "kg"))
    assert report.doubts == ()
    assert report.note.endswith("0 for the mood")


def test_what_was_read_of_a_figure_that_is_surely_something_else_is_asked_about() -> None:
    text, known = "siebzig minus zweihundert Gramm, Optik 7, Wasser 4", athlete("de", "kg", 70.0)
    assert by_grammar(text, known).report.answers["weight_kg"] == 70
    report = read_report(text, known)
    assert "weight_kg" not in report.answers
    (doubt,) = report.doubts
    assert (doubt.answer, doubt.options) == ("weight_kg", ({"weight_kg": 70},))


def test_nobody_is_judged_of_whom_nothing_is_known() -> None:
    text = "72.1, plumpness 6, water 3.5"
    stranger = Known(
        weight_unit=WeightUnit.KG, volume_unit=VolumeUnit.L, wants_sharpness=False, language="en"
    )
    assert read_report(text, stranger).doubts == by_grammar(text, stranger).report.doubts


def test_each_answer_is_of_one_figure_at_most_and_all_chances_sum_to_one() -> None:
    for row in random.Random(3).sample(rows(), 40):
        read = by_grammar(row.text, row.known)
        by = judged(seen(read.tokens, read.known), model())
        if by is None:
            continue
        assert [sum(own) for own in by.figures] == pytest.approx([1.0] * len(by.figures))
        for column, untold in enumerate(by.untold):
            told = sum(own[column] for own in by.figures)
            assert told + untold == pytest.approx(1.0)


@pytest.mark.soak
def test_on_tables_that_it_has_not_seen_the_judge_reads_more_and_is_hardly_ever_wrong(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    train = pytest.importorskip("tests.shapes.train", reason="needs scikit-learn")
    corpus = train.examples(rows())
    unseen = {"mornings-5", "mornings-6"}
    learnt = train.fit([one for one in corpus if one.row.table not in unseen])
    monkeypatch.setattr(settling, "model", lambda: learnt)
    read_report.cache_clear()
    alone: Counter[str] = Counter()
    both: Counter[str] = Counter()
    for row in (row for row in rows() if row.table in unseen):
        alone[train.grade(by_grammar(row.text, row.known).report, row)] += 1
        both[train.grade(read_report(row.text, row.known), row)] += 1
    read_report.cache_clear()
    good = ("right", "rightly asked")
    assert sum(both[one] for one in good) >= sum(alone[one] for one in good) + 5
    assert both["wrong"] <= alone["wrong"]
