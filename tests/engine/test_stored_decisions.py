"""Stored decisions are read as Decision objects, whichever version wrote them."""

from __future__ import annotations

import json
import re
from dataclasses import replace
from pathlib import Path

import pytest

import bot
from engine.decision.decide import Decision, decide, decision_as_dict
from engine.decision.kept import FIRST_TABLE, decision_from_dict
from engine.decision.record import case_from_dict
from engine.decision.replay import differences
from tests.kept.make import kept
from tests.support.decided import decided

#: What reads of a stored decision by column, without the whole record, or holds records against
#: each other as they are.
BY_COLUMN = {
    "sheets/coach_numbers/gather.py", "week/weeks_of.py", "coach/roster/roster.py",
    "rehearsal/sitting.py", "decision/replay/command.py",
}  # fmt: skip
#: A key looked up in the record of a decision or a case.
WALKED = re.compile(r"\b(?:\w+\.)?(?:decision|case)(?:\[[\"']|\.get\([\"'])|\[\"trace\"\]")


def test_every_kept_decision_reads_as_it_was_made_and_writes_the_same_again() -> None:
    for record in kept():
        for stored in (record["decision"], {**record["decision"], "reason": "As it was told."}):
            read = decision_from_dict(stored)
            assert isinstance(read, Decision)
            written = json.loads(json.dumps(decision_as_dict(read)))
            assert differences(stored, written) == (), record["name"]
            assert set(written) == set(stored) - {"reason"}, "which is told of the rest"


def test_what_is_read_is_what_was_decided() -> None:
    record = next(one for one in kept() if one["decision"]["foresight"] is not None)
    made = decide(case_from_dict(record["case"]))
    assert decision_from_dict(decision_as_dict(made)) == made


def test_a_decision_of_the_first_versions_is_read_without_what_it_lacks() -> None:
    older = json.loads(json.dumps(kept()[-1]["decision"]))
    for name in ("foresight", "tell_coach"):
        del older[name]
    for name in ("rule_g", "forecast_g", "disagree", "would_g", "table"):
        older["trace"].pop(name, None)
    read = decision_from_dict(older)
    assert (read.foresight, read.tell_coach, read.trace.disagree) == (None, False, False)
    assert (read.trace.table, read.trace.forecast_g) == (FIRST_TABLE, None)
    assert read.carb_g == older["carb_g"]


def test_what_this_version_does_not_know_of_a_decision_is_left_out() -> None:
    newer = kept()[0]["decision"] | {"colour_of_the_tie": "blue"}
    assert decision_from_dict(newer) == decision_from_dict(kept()[0]["decision"])


@pytest.mark.parametrize("record", [{}, {"trace": {}}, {"trace": {"gates": []}, "rule": "steady"}])
def test_what_is_no_decision_is_refused(record: dict[str, object]) -> None:
    with pytest.raises((KeyError, TypeError, ValueError)):
        decision_from_dict(record)


def test_a_figure_out_of_its_window_is_no_decision() -> None:
    whole = decided(carb_g=500.0)
    assert whole.target is not None
    wrong = decision_as_dict(whole)
    wrong["target"]["carb_g"] = 9999.0
    with pytest.raises(ValueError):
        decision_from_dict(wrong)
    assert replace(whole, rule="steady") == whole


def test_no_stored_decision_is_walked_by_its_keys() -> None:
    house = Path(bot.__file__).parent
    found = {
        f"{path.relative_to(house)}: {line.strip()}"
        for path in house.rglob("*.py")
        if str(path.relative_to(house)) not in BY_COLUMN and "versions" not in path.parts
        for line in path.read_text().splitlines()
        if WALKED.search(line)
    }
    assert not found


@pytest.mark.parametrize(
    ("line", "is_one"),
    [
        ('rule = row.decision["rule"]', True),
        ("row.decision.get('foresight')", True),
        ('trace = decision["trace"]', True),
        ('row.case["limits"][key]', True),
        ("decision_from_dict(row.decision).rule", False),
        ("decision.trace.limits[key]", False),
    ],
)
def test_the_look_for_keys_finds_what_it_looks_for(line: str, is_one: bool) -> None:
    assert bool(WALKED.search(line)) is is_one
