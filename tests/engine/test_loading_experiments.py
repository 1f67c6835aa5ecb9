"""The body model beside published loading experiments, one set of constants for all."""

from __future__ import annotations

import json
from pathlib import Path

import pytest

from engine.bench.validation import STUDIES, compare
from engine.cli.commands import simulate_command, validate_command
from engine.evidence.body import physiology
from engine.evidence.experiments.loading import STUDIES as FITTED
from engine.evidence.experiments.study import Measure, Measured, Study
from engine.evidence.source import Number

FIGURES = [(study, measured) for study in STUDIES for measured in study.measured]
#: Figures that the model is known to miss; each is explained in its study's note or here.
KNOWN_MISSES: set[str] = {
    "fernandez-elias-2015-full/water_per_glycogen/2",
    # not fitted to, figures from memory: too slow at moderate intakes, too full in hard training
    "sherman-1981-mixed/muscle/3", "sherman-1981-mixed-high/muscle/3",
    "sherman-1981-low-high/muscle/3", "simonsen-1991-10/muscle/1",
    # abstracts seen after the fit; each says why in its note
    "burke-1993-low/muscle_rate/2", "burke-1995-control/muscle_rate/2",
    "burke-1995-matched-energy/muscle_rate/2",
}  # fmt: skip


def _name(study: Study, measured: Measured) -> str:
    return f"{study.id}/{measured.measure.name.lower()}/{measured.after}"


@pytest.mark.parametrize("number", range(len(FIGURES)), ids=[_name(*one) for one in FIGURES])
def test_the_model_comes_within_the_reported_spread(number: int) -> None:
    row = compare()[number]
    assert (row.study, row.measured) == FIGURES[number]
    if _name(row.study, row.measured) in KNOWN_MISSES:
        assert not row.holds, "no longer missed: take it off the list"
        return
    assert row.holds, f"{row.modelled:.1f} against {row.measured.value} ± {row.allowed:.1f}"


def test_every_figure_of_muscle_glycogen_and_of_body_mass_is_within_the_aim() -> None:
    aimed = (
        Measure.MUSCLE, Measure.MUSCLE_RATIO, Measure.MUSCLE_RATE, Measure.MASS,
        Measure.MASS_PERCENT,
    )  # fmt: skip
    rows = [row for row in compare() if row.measured.measure in aimed]
    assert len(rows) > 20
    missed = {_name(row.study, row.measured) for row in rows if not row.holds}
    assert missed == {name for name in KNOWN_MISSES if "water" not in name}
    assert not missed & {_name(r.study, r.measured) for r in rows if r.study in FITTED}


def test_every_constant_of_the_body_model_has_a_unit_and_a_source() -> None:
    numbers = [value for value in vars(physiology).values() if isinstance(value, Number)]
    assert len(numbers) > 50
    assert all(number.unit and number.source.citation for number in numbers)


def test_validate_prints_each_study_and_says_how_many_hold(
    capsys: pytest.CaptureFixture[str],
) -> None:
    validate_command([])
    printed = capsys.readouterr().out
    assert all(study.id in printed for study in STUDIES)
    assert f"of {len(compare())} within" in printed


PROTOCOL = """
[subject]
sex = "female"
body_mass_kg = 58
trained = "trained"

[[phase]]
days = 2
carb_g_per_kg_day = 1
protein_g_per_kg_day = 2.2
exercise = "depleting"

[[phase]]
hours = 36
carb_g_per_kg_day = 9
water_l = 3
"""


def test_simulate_gives_each_day_as_data(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    file = tmp_path / "load.toml"
    file.write_text(PROTOCOL)
    assert simulate_command([str(file), "--json"]) == 0
    rows = json.loads(capsys.readouterr().out)
    assert [row["day"] for row in rows] == [0, 1, 2, 3, 3.5]
    assert rows[2]["muscle_glycogen_mmol_per_kg"] < 45
    assert rows[4]["muscle_glycogen_mmol_per_kg"] > 100


@pytest.mark.parametrize(
    ("change", "named"),
    [
        (("trained =", "trainedness ="), "trainedness"),
        (("water_l = 3", "wine_l = 3"), "wine_l"),
        (("days = 2", "days = 2\nhours = 3"), "hours or days"),
        (("carb_g_per_kg_day = 9", "fat_g = 9"), "carb_g_per_kg_day"),
        (('"female"', '"woman"'), "female"),
        (('"depleting"', '"hard"'), "depleting"),
        (("body_mass_kg = 58", "body_mass_kg = 580"), "body_mass_kg"),
        (("body_mass_kg = 58", 'body_mass_kg = "58"'), "body_mass_kg"),
        (("[[phase]]\nhours", "[[phase]\nhours"), "load.toml"),
    ],
)
def test_a_protocol_that_cannot_be_read_is_refused_by_name(
    change: tuple[str, str], named: str, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    file = tmp_path / "load.toml"
    file.write_text(PROTOCOL.replace(*change, 1))
    assert simulate_command([str(file)]) == 2
    assert named in capsys.readouterr().err


def test_a_protocol_file_that_is_not_there_is_said_to_be_missing(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    assert simulate_command([str(tmp_path / "none.toml")]) == 2
    assert "none.toml" in capsys.readouterr().err
