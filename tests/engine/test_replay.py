"""Whatever was stored of a case decides the same again, and a case file is a fair way in."""

from __future__ import annotations

import json
from dataclasses import replace
from datetime import UTC, datetime
from pathlib import Path
from typing import Any

import pytest

from engine.cli.casefile import parse, play
from engine.decision.decide import case_as_dict, case_from_dict, decide, decision_as_dict
from engine.values.case import Case
from engine.values.checkin import TrainingDone

FILES = sorted((Path(__file__).parents[1] / "cases").glob("*.toml"))


@pytest.mark.parametrize("path", FILES, ids=lambda path: path.stem)
def test_every_case_of_a_file_replays_from_its_record(path: Path) -> None:
    for case, decision in play(parse(path.read_text(encoding="utf-8"))):
        record = json.loads(json.dumps(case_as_dict(case), allow_nan=False))
        assert case_from_dict(record) == case
        assert decision_as_dict(decide(case_from_dict(record))) == decision_as_dict(decision)


def whole_case() -> Case:
    """A case with every optional part filled in."""
    case = list(play(parse(FILES[0].read_text(encoding="utf-8"))))[-1][0]
    return replace(
        case,
        now=datetime(2026, 11, 24, 7, 30, tzinfo=UTC),
        zone="Atlantic/Azores",
        always_tomorrow=True,
        frozen=True,
        overrides={3: 480.0},
        checkin=replace(
            case.checkin,
            note="slept badly, \N{FLEXED BICEPS}",
            resting_pulse=61.0,
            training_done=TrainingDone.LESS,
        ),
    )


def test_every_part_of_a_case_survives_its_record() -> None:
    record = json.loads(json.dumps(case_as_dict(whole_case())))
    assert case_from_dict(record) == whole_case()


def test_a_record_of_before_a_field_was_added_still_loads() -> None:
    record = case_as_dict(whole_case())
    del record["zone"], record["checkin"]["resting_pulse"], record["checkin"]["training_done"]
    older = case_from_dict(record)
    assert older.zone is None
    assert older.checkin.resting_pulse is None
    assert older.checkin.training_done is None


def _without(record: dict[str, Any], *keys: str) -> dict[str, Any]:
    return {key: value for key, value in record.items() if key not in keys}


def test_a_record_that_is_no_case_is_refused() -> None:
    record = case_as_dict(whole_case())
    with pytest.raises(ValueError, match="has no moon"):
        case_from_dict({**record, "moon": 1})
    with pytest.raises(TypeError, match="athlete"):
        case_from_dict(_without(record, "athlete"))
    with pytest.raises(TypeError, match="no table"):
        case_from_dict({**record, "plan": 5})
