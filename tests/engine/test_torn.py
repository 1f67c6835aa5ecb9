"""No share of what was typed is left out of a figure in silence, and no run of figures passed over."""

from __future__ import annotations

import pytest

from engine.written.oneline import read_report
from tests.engine.test_morning_shapes import athlete

# language, units, kg of the morning before, text, the answer that is asked about
ASKED = [
    ("en", "kg", 66.4, "66.563.5", "weight_kg"),
    ("en", "kg", 66.4, "66.56.3.5 l", "weight_kg"),
    ("de", "kg", 66.4, "66,563,5", "weight_kg"),
    ("en", "kg", 66.4, "66.5635", "weight_kg"),
    ("en", "kg", 66.4, "66.5, 6, 3 and a third", "water_l"),
    ("en", "st", 82.9, "13 stone half, 7, 3.2", "weight_kg"),
    ("de", "kg", 66.4, "66,1 6 3 viertel", "water_l"),
    ("en", "us", 61.0, "134.2 / 6 / 12 oz", "water_l"),
    ("de", "kg", 66.4, "66,1 6 330 ml", "water_l"),
    ("en", "kg", 72.4, "water 2.5 so far plus a litre in bed, 72.3, 6", "water_l"),
]
READ = [
    ("en", "st", 82.9, "13 stone and half a pound, 7, 3.2", (82.78, 7, 3.2)),
    ("de", "kg", 48.4, "achtundvierzig einviertel, 6, dreidreiviertel liter", (48.25, 6, 3.75)),
    ("en", "kg", 66.4, "66.5.6.3.5", (66.5, 6, 3.5)),
    ("en", "kg", 66.4, "66.5, 6, three litres plus a quarter", (66.5, 6, 3.25)),
    ("de", "kg", 66.4, "66,1 6 um viertel nach 6 gewogen, 3,5", (66.1, 6, 3.5)),
    ("en", "us", 61.0, "134.2 / 6 / 0", (60.87, 6, 0.0)),
    ("de", "kg", 72.4, "72,3 kg nach dem frühstück 72,9, 6, 3,5", (72.3, 6, 3.5)),
    ("en", "kg", 72.4, "72.9 after breakfast, 72.3 before, 6, 3.5", (72.3, 6, 3.5)),
]


@pytest.mark.parametrize(("language", "units", "kg", "text", "about"), ASKED)
def test_what_hangs_on_a_figure_is_asked_about(
    language: str, units: str, kg: float, text: str, about: str
) -> None:
    report = read_report(text, athlete(language, units, kg))
    keys = {key for doubt in report.doubts for option in doubt.options for key in option}
    assert about in {doubt.answer for doubt in report.doubts} | keys
    assert about not in report.answers


@pytest.mark.parametrize(("language", "units", "kg", "text", "meant"), READ)
def test_what_is_plain_beside_it_is_read(
    language: str, units: str, kg: float, text: str, meant: tuple[float, int, float]
) -> None:
    report = read_report(text, athlete(language, units, kg))
    assert report.doubts == ()
    assert tuple(report.answers[key] for key in ("weight_kg", "fullness", "water_l")) == (
        pytest.approx(meant[0], abs=0.01), meant[1], pytest.approx(meant[2]),
    )  # fmt: skip
