"""Loading protocols as files: read by key, refused by key, followed day by day."""

from __future__ import annotations

import json
from pathlib import Path
from typing import Any

import pytest

from engine.__main__ import main
from engine.protocol import BadProtocol, read_protocol, simulate

SUBJECT: dict[str, Any] = {"sex": "male", "body_mass_kg": 75, "trained": "trained"}


def protocol(*phases: dict[str, Any], **subject: Any) -> dict[str, Any]:
    return {"subject": SUBJECT | subject, "phase": list(phases)}


def test_a_day_at_ten_grams_fills_rested_trained_muscle_as_published() -> None:
    """Bussau 2002, Eur J Appl Physiol 87:290-295 (from memory): 95 to 180 mmol/kg in one day."""
    data = protocol(
        {"days": 1, "carb_g_per_kg_day": 10}, start_muscle_glycogen_mmol_per_kg=95
    )  # fmt: skip
    after = simulate(read_protocol(data))[-1]
    assert after.muscle_glycogen_mmol_per_kg == pytest.approx(180, abs=27)  # 15 %


def test_hours_and_days_and_both_ways_of_giving_carbs_mean_the_same() -> None:
    by_day = simulate(read_protocol(protocol({"days": 1, "carb_g_per_kg_day": 8})))[-1]
    by_hour = simulate(read_protocol(protocol({"hours": 24, "carb_g_per_day": 600})))[-1]
    assert by_hour == by_day


@pytest.mark.parametrize(("short", "full"), [("M", "male"), ("f", "female")])
def test_sex_may_be_written_in_short(short: str, full: str) -> None:
    phase = {"days": 1, "carb_g_per_kg_day": 8}
    assert simulate(read_protocol(protocol(phase, sex=short))) == simulate(
        read_protocol(protocol(phase, sex=full))
    )


@pytest.mark.parametrize(
    ("data", "named"),
    [
        ({}, "subject"),
        (protocol(), "phase"),
        (protocol({"days": 1}), "carb"),
        (protocol({"carb_g_per_day": 500}), "hours or days"),
        (protocol({"days": 1, "hours": 24, "carb_g_per_day": 500}), "hours or days"),
        (protocol({"days": 1, "carb_g_per_day": -1}), "carb_g_per_day"),
        (protocol({"days": 1, "carb_g_per_day": 500, "sugar_g": 3}), "sugar_g"),
        (protocol({"days": 1, "carb_g_per_day": 500, "exercise": "hard"}), "exercise"),
        (protocol({"days": 1, "carb_g_per_day": 500}, sex="both"), "sex"),
        (protocol({"days": 1, "carb_g_per_day": 500}, body_mass_kg=8.4), "body_mass_kg"),
        (protocol({"days": 1, "carb_g_per_day": 500}, age=30), "age"),
    ],
)
def test_what_is_wrong_in_a_protocol_is_named(data: dict[str, Any], named: str) -> None:
    with pytest.raises(BadProtocol, match=named):
        read_protocol(data)


def test_the_command_prints_the_days_as_data_and_refuses_a_file_that_is_not_there(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    file = tmp_path / "load.toml"
    file.write_text(
        '[subject]\nsex = "M"\nbody_mass_kg = 75\n[[phase]]\ndays = 2\ncarb_g_per_kg_day = 9\n'
    )
    assert main(["simulate", str(file), "--json"]) == 0
    days = json.loads(capsys.readouterr().out)
    assert [day["day"] for day in days] == [0, 1, 2]
    assert main(["simulate", str(tmp_path / "none.toml")]) == 2
    assert "none.toml" in capsys.readouterr().err
