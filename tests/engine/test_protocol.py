"""Loading protocols as files: read by key, refused by key, followed day by day."""

from __future__ import annotations

import json
from itertools import pairwise
from pathlib import Path
from typing import Any

import pytest

from engine.__main__ import main
from engine.bench.protocol import BadProtocol, read_protocol, simulate

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


def glycogen(*phases: dict[str, Any], **subject: Any) -> list[float]:
    """Muscle glycogen (mmol/kg wet weight) at the start and at the end of each phase."""
    readings = simulate(read_protocol(protocol(*phases, **subject)))
    ends = {reading.phase: reading.muscle_glycogen_mmol_per_kg for reading in readings}
    return list(ends.values())


RIDE = {"hours": 2, "carb_g_per_day": 0, "exercise": "depleting"}


def test_three_days_of_taper_on_much_carbohydrate_load_as_published() -> None:
    """Sherman 1981, Int J Sports Med 2:114-118 (from memory): about 204 mmol/kg after 353 g a day
    for three days and 542 g for three, the first day's work long and hard, the last day at rest."""
    *_, loaded = glycogen(
        {"days": 1, "carb_g_per_day": 353, "exercise": "depleting"},
        {"days": 2, "carb_g_per_day": 353, "exercise": "light"},
        {"days": 2, "carb_g_per_day": 542, "exercise": "light"},
        {"days": 1, "carb_g_per_day": 542},
        body_mass_kg=70,
    )
    assert loaded == pytest.approx(204, rel=0.15)


def test_three_days_of_depletion_and_three_of_load_go_far_down_and_far_up() -> None:
    """Bergstrom 1967, Acta Physiol Scand 71:140-150 (from memory): 39, then 204 mmol/kg."""
    _, depleted, loaded = glycogen(
        {"days": 3, "carb_g_per_kg_day": 1.5, "exercise": "depleting"},
        {"days": 3, "carb_g_per_kg_day": 8},
    )
    assert depleted == pytest.approx(39, rel=0.15)
    assert loaded == pytest.approx(204, rel=0.15)


def test_days_of_fat_leave_less_and_one_day_of_carbohydrate_more_than_makes_it_good() -> None:
    """Burke 2000, J Appl Physiol 89:2413-2421 (from memory): muscle glycogen fell in five days at
    2.4 g/kg, and a day at 10 g/kg brought it back to the start or over."""
    start, after_fat, after_carb = glycogen(
        {"days": 5, "carb_g_per_kg_day": 2.4, "protein_g_per_kg_day": 2.1, "exercise": "light"},
        {"days": 1, "carb_g_per_kg_day": 10, "fat_g_per_kg_day": 0.5},
    )
    assert after_fat < 0.8 * start
    assert after_carb > start


def test_a_gel_every_quarter_of_an_hour_is_the_same_as_eating_all_the_time() -> None:
    gels = glycogen(RIDE, *[{"hours": 0.25, "carb_g_per_kg_day": 28.8}] * 16)
    steady = glycogen(RIDE, {"hours": 4, "carb_g_per_kg_day": 28.8})
    assert gels[-1] == pytest.approx(steady[-1], rel=0.01)
    assert all(later > earlier for earlier, later in pairwise(gels[1:]))


def test_a_drink_within_minutes_can_be_written_and_counts_as_what_it_comes_to() -> None:
    """1.6 g/kg at once and 1.6 g/kg two hours later, as in recovery studies."""
    drink = {"hours": 0.1, "carb_g_per_kg_day": 384, "water_l": 120}
    nothing = {"hours": 1.9, "carb_g_per_day": 0}
    drinks = glycogen(RIDE, drink, nothing, drink, nothing)
    spread = glycogen(RIDE, {"hours": 4, "carb_g_per_kg_day": 19.2})
    assert spread[-1] < drinks[-1] < 1.2 * spread[-1]


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
        (protocol({"days": 1, "carb_g_per_kg_day": 153.6}), "carb_g_per_kg_day"),
        (protocol({"hours": 0.25, "carb_g_per_kg_day": 15360}), "carb_g_per_kg_day"),
        (protocol({"minutes": 15, "carb_g_per_day": 500}), "minutes"),
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


def test_phases_of_hours_are_printed_by_the_hour(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    file = tmp_path / "drinks.toml"
    phases = "[[phase]]\nhours = 0.25\ncarb_g_per_kg_day = 28.8\n" * 2
    file.write_text(f'[subject]\nsex = "M"\nbody_mass_kg = 75\n{phases}')
    assert main(["simulate", str(file)]) == 0
    lines = capsys.readouterr().out.splitlines()
    assert lines[0].split()[0] == "hour"
    assert [line.split()[0] for line in lines[2:5]] == ["0.00", "0.25", "0.50"]


def test_emptied_muscle_of_the_trained_fills_fastest_at_first_and_of_others_at_one_pace() -> None:
    """Price 1994, J Appl Physiol 76:104-111 (from memory): fast while nearly empty, then slower.

    Greiwe 1999, J Appl Physiol 87:222-226: in the trained more than twice as fast as in others.
    """
    hours = [{"hours": 1, "carb_g_per_kg_day": 28.8}] * 10
    paces = {}
    for trained in ("trained", "untrained"):
        filled = glycogen(RIDE, *hours, trained=trained)[1:]
        paces[trained] = [later - earlier for earlier, later in pairwise(filled)]
    assert paces["trained"][3] > 1.1 * paces["trained"][9]
    assert paces["untrained"][3] == pytest.approx(paces["untrained"][9], rel=0.02)
    assert sum(paces["trained"][:6]) > 2 * sum(paces["untrained"][:6])
