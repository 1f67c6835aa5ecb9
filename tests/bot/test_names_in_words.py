"""What the engine calls things has its words in the messages, and foods are found by either name."""

from __future__ import annotations

import re
from pathlib import Path

import pytest

import bot
from bot.alerts import words_advice as advice
from bot.decision import words_target
from bot.food import words_names as food_names
from bot.food.flow import ADD_FOOD
from bot.plan import words_draft_reasons as draft_reasons
from bot.plan.words import FIELDS
from bot.words import figures, languages, names, phases
from engine.decision.gates import GATES
from engine.decision.rules import RULES
from engine.evidence import deciding, grading, safety
from engine.evidence.planning import health, reviewing
from engine.evidence.source import Source
from engine.food.foods import known_foods
from engine.planning.drafting.draft import SHAPES
from engine.planning.readiness import CONDITIONS
from engine.safety import FlagId
from engine.safety.words import WORDED
from engine.symptoms import WARNINGS, Symptom
from engine.values.body import SITES_3
from engine.values.limits import LIMIT_KEYS
from tests.engine.test_evidence import SOURCES
from tests.support.foreign import sentences_in

CATALOGUES = languages.CATALOGUES  # the tests' own may take their place while tests run


@pytest.fixture
def catalogues(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(languages, "CATALOGUES", CATALOGUES)


def test_limits_shapes_and_ratings_are_called_in_messages_what_the_engine_calls_them(
    in_code: Path,
) -> None:
    assert {key: limit.label for key, limit in LIMIT_KEYS.items()} == {
        key: figures.limit_label(key) for key in LIMIT_KEYS
    }
    assert set(names.LIMITS) == set(names.LIMIT_WORDS) == set(LIMIT_KEYS)
    said = {text for shape in SHAPES.values() for text in (shape.label, shape.meaning)}
    assert {text: names.shape_words(text) for text in said} == {text: text for text in said}
    said |= {*CONDITIONS.values(), *phases.DRAFTED, *(limit.label for limit in LIMIT_KEYS.values())}
    said |= {site for sites in SITES_3.values() for site in sites}
    assert said - {message.id for message in sentences_in(in_code)} == set(), "not inside mark(...)"
    assert set(names.FIELD_WORDS) == set(FIELDS)


def test_every_flag_has_its_name_and_its_sentences() -> None:
    for flag in FlagId:
        assert flag in WORDED, f"{flag} has no words in engine/safety/words.py"
        assert WORDED[flag].name, f"{flag} has no name in engine/safety/words.py"


def test_rules_and_gates_are_called_what_the_engine_calls_them_in_the_readers_language(
    catalogues: None,
) -> None:
    assert [names.rule_name(rule.id) for rule in RULES] == [rule.name for rule in RULES]
    assert [words_target.gate_name(gate.id) for gate in GATES] == [gate.name for gate in GATES]
    with languages.speaking("de"):
        assert names.rule_name("gut-unsettled") == "Bauch unruhig"
        assert words_target.gate_name("frozen") == "eingefroren"
    assert names.rule_name("of-an-older-table") == "of an older table"


def test_every_symptom_has_a_name_and_something_to_do_about_it() -> None:
    told = {*advice.ADVICE, *advice.MOOD, *WARNINGS}  # for a warning: stop, and call for help
    for symptom in Symptom:
        assert symptom in names.SYMPTOM_NAMES, (
            f"{symptom} has no name in bot/alerts/words_athlete.py"
        )
        assert symptom in told, f"nothing is said to {symptom} in bot/alerts/words_advice.py"


def test_several_symptoms_in_a_row_are_called_once_each_by_the_more_particular_name() -> None:
    assert names.symptom_names(("swelling", "cramps", "swollen-hands")) == "cramps, swollen hands"
    assert names.symptom_names(("headache", "nausea")) == "headache, nausea"


def test_every_food_of_the_table_and_its_piece_has_its_name() -> None:
    assert set(food_names.NAMES) == {food.name for food in known_foods()}
    assert set(food_names.PIECES) == {food.piece for food in known_foods() if food.piece}


def test_what_is_said_of_a_source_that_anybody_may_see_is_said_in_their_language(
    in_code: Path,
) -> None:
    seen_by_people = (deciding, grading, health, reviewing, safety)
    said = {
        source.citation
        for module in seen_by_people
        for value in vars(module).values()
        if isinstance(source := getattr(value, "source", value), Source)
    }
    assert len(said) > 50
    assert said - {message.id for message in sentences_in(in_code)} == set(), "not inside mark(...)"


@pytest.mark.parametrize(
    ("typed", "found"),
    [
        ("Hähnchen", "Chicken breast, roasted"),
        ("süßkartoffel", "Sweet potato, boiled, no skin"),
        ("kartoffel", "Potatoes, boiled, no skin"),
        ("Reis gekocht", "White rice, cooked"),
        ("rice", "White rice, cooked"),
    ],
)
def test_a_german_finds_foods_by_german_words_and_by_english_ones(
    catalogues: None, typed: str, found: str
) -> None:
    with languages.speaking("de"):
        assert found in [food.name for food in food_names.find(typed)]


def test_english_words_find_what_they_always_found() -> None:
    assert next(food.name for food in food_names.find("potato")).startswith("Potatoes")
    assert food_names.find("kartoffel") == []


def test_a_food_is_offered_under_the_name_of_the_readers_language(catalogues: None) -> None:
    step = ADD_FOOD.step("food")
    assert step is not None
    with languages.speaking("de"):
        offered = [choice.label for row in step.offers({"query": "Lachs"}) for choice in row]
    assert offered[:2] == [
        "Lachs aus Zucht, gebacken oder gegrillt", "Wildlachs, gebacken oder gegrillt",
    ]  # fmt: skip


def test_no_source_that_anybody_reads_says_how_it_was_seen() -> None:
    for source in SOURCES:
        assert not re.search(
            r"from memory|was seen|were seen|not seen|framing|abstract", source.citation
        ), source.id
        assert "memory" not in draft_reasons.reference(source), source.id


def test_what_an_older_decision_stored_of_it_is_left_out_where_it_is_shown() -> None:
    stored = "Escalante et al. 2021: run a trial (the framing was seen)"
    assert names.cited(stored) == "Escalante et al. 2021: run a trial"
    assert names.cited("reviews, Lancet 369:1117; from memory)") == "reviews, Lancet 369:1117)"


def test_every_flag_is_raised_by_somebody() -> None:
    """One that is only declared, named and worded would never reach a coach."""
    house = Path(bot.__file__).parent.parent
    code = "".join(
        file.read_text(encoding="utf-8")
        for folder in ("engine/safety", "bot")
        for file in sorted((house / folder).rglob("*.py"))
        if not file.name.startswith("words")
    )
    assert [flag.name for flag in FlagId if not re.search(rf"FlagId\.{flag.name}\b", code)] == []


def test_every_flag_is_held_by_a_test_at_its_threshold() -> None:
    tests = Path(__file__).parents[1] / "engine"
    told = "".join(file.read_text(encoding="utf-8") for file in sorted(tests.glob("test_*.py")))
    named = [one for one in FlagId if f'"{one}"' in told or f"FlagId.{one.name}" in told]
    assert set(FlagId) - set(named) == set(), "no test in tests/engine/ names these flags"
