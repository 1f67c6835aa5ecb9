"""A pattern that is left out by its cues would not have been found."""

from __future__ import annotations

import re
from pathlib import Path

import pytest

from engine.symptoms.clauses import clauses
from engine.symptoms.english import language as drugs
from engine.symptoms.german.language import GERMAN
from engine.symptoms.patterns import Cued, cues_of
from engine.symptoms.screening import ENGLISH
from engine.written.late import Late
from tests.engine import german_phrases, phrases
from tests.support import conversation_de, conversation_en

CUED = (ENGLISH.figures, GERMAN.figures, drugs.DRUG_PHRASES, drugs._FIGURES)
CORPUS = Path(__file__).parents[1] / "ear" / "corpus"


def sentences() -> list[str]:
    """All that is written in the tests' tables, and what the second ear learns from."""
    tables = (phrases, german_phrases, conversation_en, conversation_de)
    told = re.findall(r"[^\n\"]{6,}", "\n".join(Path(t.__file__ or "").read_text() for t in tables))
    for file in sorted(CORPUS.rglob("*.t*")):
        told += file.read_text(encoding="utf-8").splitlines()[::30]
    return told


def test_what_is_left_out_by_its_cues_is_in_no_sentence_that_anybody_wrote() -> None:
    read = {
        " ".join(word.plain for word in clause.words)
        for said in sentences()
        for clause in clauses(said)
    }
    assert len(read) > 3000
    everything = "\n".join(sorted(read))  # a clause a line: no pattern goes on past its end
    for cued in CUED:
        for pattern in cued.all():
            for match in pattern.finditer(everything):
                start = everything.rfind("\n", 0, match.start()) + 1
                clause = everything[start : everything.find("\n", match.start())]
                assert pattern in cued.worth_trying(clause), clause


def test_every_group_that_a_pattern_names_is_one_of_its_language_or_its_file() -> None:
    for tongue in (ENGLISH, GERMAN):
        assert not [p.written for p in tongue.phrases.all() if re.search(r"(?<!\?)<", p.written)]


def test_a_clause_of_everyday_words_is_spared_nearly_all_of_them() -> None:
    for cued in CUED[:2]:
        tried = list(cued.worth_trying("the tan is booked for friday and i look forward to it"))
        assert len(tried) < len(cued.all()) / 5


@pytest.mark.parametrize(
    ("pattern", "cues"),
    [
        (r"\b(?:faint hearted|fainthearted)\b", {"hearted", "fainthearted"}),
        (r"hearts? (?:set on|in)", {"heart"}),
        (r"(?:numb|dull)(?:ing)? cream", {"cream"}),
        (r"(?:on|in) (?:the )?(?:bike|stepper)", {"bike", "stepper"}),
        (r"(?:lol|haha\w*) \d{3}(?= bpm)", {"lol", "haha"}),
        (r"[a-z]+ (?<!no )pains+", {"pains"}),
        (r"(?:lost count|\w+ing)", {"count", "ing"}),
        (r"(?:lost count|\w+)", set()),
        (r"(?:very )*(?:sick)?", set()),
        (r"at \d+", set()),
    ],
)
def test_the_cues_of_a_pattern_are_what_has_to_be_there(pattern: str, cues: set[str]) -> None:
    assert cues_of(pattern) == cues


def test_a_pattern_that_needs_no_word_is_always_tried() -> None:
    dose = Late(r"\d+ ?mcg|\d+ iu")
    assert list(Cued([dose]).worth_trying("5 iu")) == [dose]
