"""A kept set of stored decisions comes out as it did, and a changed rule differs where it should."""

from __future__ import annotations

import json
from dataclasses import replace
from functools import cache
from typing import Any

import numpy as np
import pytest

from engine.cli.casefile import parse, play
from engine.decision.decide import case_as_dict, decide, decision_as_dict
from engine.decision.record import case_from_dict
from engine.decision.replay import (
    Change,
    differences,
    made_by,
    of_this_version,
    replayed,
    result_differs,
    week_again,
)
from engine.decision.rules import RULES, TABLE
from engine.decision.rules.rule import always
from engine.values.case import ForecastUse
from tests.kept.make import CASES, kept

#: Another machine's last bit, in a forecast's chances and kilograms.
OTHER_MACHINE = 1e-3


@cache
def records() -> tuple[dict[str, Any], ...]:
    return tuple(kept())


def ours(name: str) -> bool:
    return not name.startswith("forecast/")


def test_every_kept_decision_comes_out_as_the_version_that_made_it_had_it() -> None:
    wrong = {}
    for one in records():
        if of_this_version(one["decision"]):
            again = replayed(one["case"])
            within = 0.0 if ours(one["name"]) else OTHER_MACHINE
            if found := differences(one["decision"], again, within=within):
                wrong[one["name"]] = found
    assert not wrong, "changed on purpose? Then the table's or the model's number goes up too"


def test_the_kept_set_is_of_this_version_and_large_enough_to_notice() -> None:
    current = [one["name"] for one in records() if of_this_version(one["decision"])]
    assert len(current) >= 40, "after a new number of table or model: python -m tests.kept.make"
    assert {one["decision"]["rule"] for one in records()} >= {
        "coach-sees-spill", "flat-in-load", "spilled-over", "steady", "underdrunk",
    }  # fmt: skip


def test_a_rule_changed_on_purpose_differs_exactly_where_it_decided() -> None:
    changed = tuple(
        replace(rule, steps=always(-1)) if rule.id == "spilled-over" else rule for rule in RULES
    )
    differ = {}
    for one in records():
        found = result_differs(one["decision"], replayed(one["case"], Change(table=changed)))
        if found:
            differ[one["name"]] = {each.where: (each.stored, each.again) for each in found}
    decided = {one["name"] for one in records() if one["decision"]["rule"] == "spilled-over"}
    assert decided and set(differ) == decided
    step = {"carb_g": (385.0, 435.0), "lapse_g": (435.0, 435.0), "needs_sign_off": (True, False)}
    for found in differ.values():
        assert found["carb_g"] == step["carb_g"]
        assert found["needs_sign_off"] == step["needs_sign_off"]
        assert set(found) <= set(step)


def test_a_rule_left_out_differs_exactly_where_it_decided() -> None:
    differ = {
        one["name"]
        for one in records()
        if result_differs(
            one["decision"], replayed(one["case"], Change(without=frozenset({"underdrunk"})))
        )
    }
    assert differ == {one["name"] for one in records() if one["decision"]["rule"] == "underdrunk"}


def test_what_a_record_lacks_is_no_difference_and_what_it_says_is() -> None:
    stored = {"carb_g": 410, "trace": {"table": 1, "steps": -2}, "flags": [{"id": "a"}]}
    again = {"carb_g": 410.0, "trace": {"table": 3, "steps": -2, "new": 7}, "flags": [{"id": "b"}]}
    assert [(d.where, d.stored, d.again) for d in differences(stored, again)] == [
        ("flags[0].id", "a", "b")
    ]
    assert made_by(stored) == (1, None)
    assert not of_this_version(stored)
    assert of_this_version({"trace": {"table": TABLE}})
    assert differences({"a": [1, 2]}, {"a": [1]}) != ()
    assert differences({"a": None}, {}) == ()
    assert differences({"a": 1.0}, {"a": 1.0005}, within=1e-3) == ()
    assert differences({"a": 1.0}, {"a": 1.0005}) != ()


def test_what_older_versions_kept_in_words_is_no_difference_and_the_facts_beside_it_are() -> None:
    stored = {"reason": "Why.", "trace": {"facts": {"weight_said": "60 kg", "weight_kg": 60}}}
    assert differences(stored, {"trace": {"facts": {"weight_kg": 60}}}) == ()
    (found,) = differences(stored, {"trace": {"facts": {"weight_kg": 61}}})
    assert found.where == "trace.facts.weight_kg"


def test_a_week_under_a_change_knows_what_would_have_been_set_before() -> None:
    week = [one for one, _ in play(parse((CASES / "spilled-over.toml").read_text()))]
    as_it_was = week_again(week, Change())
    assert [d.carb_g for _, d in as_it_was] == [decide(one).carb_g for one in week]
    without = week_again(week, Change(without=frozenset({"spilled-over"})))
    last_case, last = without[-1]
    assert last_case.history.set_on(week[-2].checkin.date) == without[-2][1].carb_g
    assert last.carb_g != as_it_was[-1][1].carb_g
    step = week_again(week, Change(limits={"step_g": 20}))
    assert [d.change_g for _, d in step][-2:] == [-80, -80]
    forecast = week_again(week, Change(forecast=ForecastUse.PROPOSES))
    assert any(d.foresight is not None for _, d in forecast)
    with pytest.raises(ValueError, match="step"):
        week_again(week, Change(limits={"step_g": 5000}))


SHAKEN = 10_000


@cache
def shaken_records() -> tuple[tuple[dict[str, Any], dict[str, Any]], ...]:
    """Case and decision as they are stored: mornings of the case files with their answers shaken."""
    rng = np.random.default_rng(12)
    week = [
        one for file in sorted(CASES.glob("*.toml")) for one, _ in play(parse(file.read_text()))
    ]
    found = []
    for number in range(SHAKEN):
        one = week[number % len(week)]
        told = replace(
            one.checkin,
            weight_kg=round(float(rng.normal(60, 1.2)), 1),
            fullness=int(rng.integers(1, 11)),
            sharpness=int(rng.integers(1, 6)),
            water_l=round(float(rng.uniform(1.5, 4.5)), 1),
        )
        shaken = replace(one, checkin=told)
        record = json.loads(json.dumps(case_as_dict(shaken)))
        assert case_from_dict(record) == shaken
        found.append((record, json.loads(json.dumps(decision_as_dict(decide(shaken))))))
    return tuple(found)


@pytest.mark.soak
@pytest.mark.timeout(1800)
def test_ten_thousand_stored_decisions_replay_to_the_bit() -> None:
    records = shaken_records()
    assert len(records) == SHAKEN
    assert len({json.dumps(case, sort_keys=True) for case, _ in records}) > 0.9 * SHAKEN
    differ = [made for case, made in records if differences(made, replayed(case))]
    assert differ == []


@pytest.mark.soak
@pytest.mark.timeout(1800)
def test_of_ten_thousand_a_changed_rule_differs_in_exactly_those_that_it_decided() -> None:
    """The step of one rule from two to one: it is seen in what each of its decisions asked for, in
    the figure where no limit held both alike, and nowhere else.
    """
    changed = tuple(
        replace(rule, steps=always(-1)) if rule.id == "spilled-over" else rule for rule in RULES
    )
    records = shaken_records()
    of_the_rule = [n for n, (_, made) in enumerate(records) if made["rule"] == "spilled-over"]
    assert len(of_the_rule) > 100
    other_figures = 0
    for number, (case, made) in enumerate(records):
        again = replayed(case, Change(table=changed))
        differ = {one.where for one in differences(made, again)}
        if number not in of_the_rule:
            assert differ == set()
            continue
        asked, then = again["trace"]["asked_g"], made["trace"]["asked_g"]
        assert ("trace.asked_g" in differ) == (asked != then)
        assert again["carb_g"] >= made["carb_g"], "a smaller cut never takes more away"
        assert again["rule"] == "spilled-over"
        other_figures += again["carb_g"] != made["carb_g"]
    assert other_figures > 0.5 * len(of_the_rule)
