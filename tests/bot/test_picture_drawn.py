"""The picture of a week as it is seen: on a phone, in another unit, without colours, with gaps."""

from __future__ import annotations

import io
from collections.abc import Iterator
from concurrent.futures import ThreadPoolExecutor
from dataclasses import replace
from datetime import date, timedelta
from functools import lru_cache

import matplotlib as mpl
import numpy as np
import pytest
from matplotlib.figure import Figure
from matplotlib.text import Text
from PIL import Image
from pydantic import TypeAdapter

from bot.drawing import canvas
from bot.pictures.week_picture import words
from bot.pictures.week_picture.layout import DAYS_TOP, LEFT, RIGHT, TOP, WIDTH
from bot.pictures.week_picture.layout import EYES as LOOKS_SEEN
from bot.pictures.week_picture.values import Before, BeforeDay, ChartDay, ChartWeek
from bot.pictures.week_picture.week import draw, layout, week_png
from bot.words.languages import speaking

Pixels = np.ndarray[tuple[int, ...], np.dtype[np.float64]]

SHOW = date(2027, 5, 9)
PLANNED = {7: 155, 6: 155, 5: 155, 4: 155, 3: 500, 2: 500, 1: 420, 0: 240}
#: days out: weight, its band, fullness, expected, sharpness, carbs set
TOLD = {
    7: (61.2, 60.6, 61.9, 5, 5, 3, 155),
    6: (60.9, 60.3, 61.6, 5, 5, 3, 155),
    4: (60.1, 59.7, 61.1, 4, 5, 4, 155),
    3: (59.3, 59.5, 60.8, 2, 4, 5, 525),
    2: (61.9, 59.6, 61.3, 7, 6, 4, 475),
}
#: days out: carbs eaten, water drunk, what the coach saw, complaints
BESIDE: dict[int, tuple[float | None, float | None, str | None, tuple[str, ...]]] = {
    7: (150, 3.5, None, ()),
    6: (160, 3.4, "on course", ()),
    4: (155, 3.5, "flat", ("cramps", "dizzy")),
    3: (430, 2.8, "flat", ("cramps",)),
    2: (None, None, "full", ()),
}
#: days out of the last trial: weight against its first, carbs set, fullness, sharpness
TRIAL = {
    7: (0.0, 150, 6, 3), 6: (-0.8, 150, 3, 4), 5: (-1.1, 150, 4, 4), 4: (-1.4, 180, 2, 3),
    3: (-1.8, 400, 4, 4), 2: (0.1, 430, 5, 3), 1: (0.6, 400, 8, 4), 0: (0.9, 200, 8, 3),
}  # fmt: skip
SERIES = {
    "weight": ("weight_kg",),
    "band": ("band_low_kg", "band_high_kg"),
    "planned": ("planned_carb_g",),
    "set": ("set_carb_g",),
    "eaten": ("eaten_carb_g",),
    "water": ("water_l",),
    "fullness": ("fullness",),
    "expected fullness": ("expected_fullness",),
    "coach's eye": ("eye",),
    "sharpness": ("sharpness",),
}


def day(days_out: int, *, scale: float = 1.0) -> ChartDay:
    whole = ChartDay(
        date=SHOW - timedelta(days=days_out), days_out=days_out, planned_carb_g=PLANNED[days_out]
    )
    if days_out not in TOLD:
        return whole
    weight, low, high, full, expected, sharp, set_g = TOLD[days_out]
    return replace(
        whole, answered=True, weight_kg=weight * scale, band_low_kg=low * scale,
        band_high_kg=high * scale, fullness=full, expected_fullness=expected, sharpness=sharp,
        set_carb_g=set_g,
    )  # fmt: skip


def week(unit: str = "kg", *, scale: float = 1.0) -> ChartWeek:
    """Two days out; five days out was missed."""
    days = tuple(day(days_out, scale=scale) for days_out in range(7, -1, -1))
    return ChartWeek(
        name="Mira", kind="show", event_day=SHOW, today=date(2027, 5, 7), weight_unit=unit,
        days=days,
    )  # fmt: skip


def full_week(unit: str = "kg", *, scale: float = 1.0, name: str = "Mira") -> ChartWeek:
    """The same with everything that a week can have beside it."""
    whole = week(unit, scale=scale)
    days = []
    for one in whole.days:
        eaten, water, eye, symptoms = BESIDE.get(one.days_out, (None, None, None, ()))
        days.append(
            replace(
                one,
                eaten_carb_g=eaten,
                planned_water_l=3.5,
                water_l=water,
                eye=eye,
                symptoms=symptoms,
            )
        )
    trial = tuple(
        BeforeDay(days_out=out, moved_kg=moved, carb_g=carb_g, fullness=full, sharpness=sharp)
        for out, (moved, carb_g, full, sharp) in TRIAL.items()
    )
    return replace(
        whole, name=name, days=tuple(days), baseline_kg=61.2 * scale,
        before=Before(event_day=date(2027, 4, 11), days=trial),
    )  # fmt: skip


def with_days(whole: ChartWeek, **changes: object) -> ChartWeek:
    days = tuple(replace(one, **changes) for one in whole.days)  # type: ignore[arg-type]
    return replace(whole, days=days)


def without(whole: ChartWeek, series: str) -> ChartWeek:
    return with_days(whole, **dict.fromkeys(SERIES[series]))


@lru_cache(maxsize=64)
def pixels(whole: ChartWeek) -> np.ndarray[tuple[int, ...], np.dtype[np.uint8]]:
    """The picture's red, green and blue, 0 to 255."""
    with Image.open(io.BytesIO(week_png(whole))) as image:
        return np.asarray(image.convert("RGB"))


def seen(whole: ChartWeek) -> Pixels:
    """The same, 0 to 1."""
    return np.asarray(pixels(whole), dtype=np.float64) / 255


def linear(rgb: Pixels) -> Pixels:
    # sRGB to linear light: IEC 61966-2-1.
    return np.asarray(np.where(rgb <= 0.04045, rgb / 12.92, ((rgb + 0.055) / 1.055) ** 2.4))


def contrast(one: Pixels, other: Pixels) -> Pixels:
    """Contrast ratio of linear colours: WCAG 2.2, definitions of contrast ratio and luminance."""
    weights = np.array([0.2126, 0.7152, 0.0722])
    lighter, darker = (
        np.maximum(one @ weights, other @ weights),
        np.minimum(one @ weights, other @ weights),
    )
    return np.asarray((lighter + 0.05) / (darker + 0.05))


# Machado GM, Oliveira MM, Fernandes LAF. A physiologically-based model for simulation of color
# vision deficiency. IEEE Trans Vis Comput Graph 2009;15(6):1291-1298: severity 1.0, linear RGB.
# Grey: luminance alone, as for somebody who sees no colours, or a screen set to grey.
EYES = {
    "ordinary": np.eye(3),
    "protan": [
        [0.152286, 1.052583, -0.204868], [0.114503, 0.786281, 0.099216],
        [-0.003882, -0.048116, 1.051998],
    ],
    "deutan": [
        [0.367322, 0.860646, -0.227968], [0.280085, 0.672501, 0.047413],
        [-0.011820, 0.042940, 0.968881],
    ],
    "tritan": [
        [1.255528, -0.076749, -0.178779], [-0.078411, 0.930809, 0.147602],
        [0.004733, 0.691367, 0.303900],
    ],
    "grey": [[0.2126, 0.7152, 0.0722]] * 3,
}  # fmt: skip


def through(eyes: str, rgb: Pixels) -> Pixels:
    return np.asarray(np.clip(linear(rgb) @ np.array(EYES[eyes]).T, 0, 1))


@pytest.fixture(scope="module")
def figures() -> Iterator[dict[str, Figure]]:
    """The page with its texts still texts, for each unit, with figures as long as they get."""
    with mpl.rc_context():
        mpl.rcdefaults()
        mpl.rcParams.update(canvas.STYLE)
        yield {
            "kg": draw(week("kg")).figure,
            "lb": draw(week("lb", scale=2.0)).figure,
            "st": draw(week("st", scale=1.73)).figure,
            "most": draw(with_days(week("lb", scale=4.0), set_carb_g=1500.0)).figure,
            **{f"full {unit}": _drawn_full(unit) for unit in ("kg", "st")},
        }


LONGEST_NAME = "Maximiliane-Charlotte von Hohenstein-Wittelsbach"  # Telegram allows 64 characters


def _drawn_full(unit: str) -> Figure:
    scale = {"kg": 1.0, "st": 1.73}[unit]
    return draw(full_week(unit, scale=scale, name=LONGEST_NAME)).figure


def _drawn_in(code: str) -> Figure:
    """In a month whose name is long; the last days of it, as these have two figures."""
    event = date(2027, 9, 28)
    days = tuple(
        replace(one, date=event - timedelta(days=one.days_out)) for one in full_week().days
    )
    moved = replace(
        full_week(),
        event_day=event,
        today=event - timedelta(days=2),
        days=days,
        volume_unit="us fl oz",
    )
    with speaking(code):
        return draw(moved).figure


def texts(figure: Figure) -> list[Text]:
    return [text for text in figure.findobj(Text) if isinstance(text, Text) and text.get_text()]


def test_the_picture_is_a_png_for_a_phone_held_upright_that_shines_through_nowhere() -> None:
    with Image.open(io.BytesIO(week_png(week()))) as image:
        assert (image.format, image.size) == ("PNG", (1080, layout(week()).height))
        # As wide as the screen it is still seen whole on a phone held upright (19.5:9 and longer).
        assert image.height < 2.1 * image.width
        assert image.convert("RGBA").getchannel("A").getextrema() == (255, 255)
        # Bot API, sendPhoto: 10 MB at most, width and height together 10000, their ratio 20.
        assert len(week_png(week())) < 10_000_000


def test_the_same_week_gives_the_same_bytes_whatever_else_is_set_up_or_drawn_meanwhile() -> None:
    first = week_png(week())
    with mpl.rc_context({"font.size": 3, "axes.facecolor": "black", "hatch.color": "red"}):
        assert week_png(week()) == first
        assert mpl.rcParams["font.size"] == 3
    with ThreadPoolExecutor(4) as threads:
        assert set(threads.map(week_png, [week()] * 4)) == {first}


@pytest.mark.parametrize("series", SERIES)
def test_every_series_stands_out_for_every_kind_of_colour_vision(series: str) -> None:
    whole = full_week()
    bare = without(whole, series)
    if layout(bare).height != layout(whole).height:
        # A panel or a row of figures without any would not be there: one day keeps its own.
        keeps = (one if one.days_out == 3 else None for one in whole.days)
        days = (kept or gone for kept, gone in zip(keeps, bare.days, strict=True))
        bare = replace(bare, days=tuple(days))
    with_it, without_it = pixels(whole), pixels(bare)
    changed = np.any(with_it != without_it, axis=2)
    there, gone = with_it[changed] / 255, without_it[changed] / 255
    for eyes in EYES:
        ratio = contrast(through(eyes, there), through(eyes, gone))
        # WCAG 2.2, success criterion 1.4.11: 3:1 for the parts of a graphic that are needed.
        assert (ratio >= 3).sum() > 1500, f"{series}, {eyes}: {(ratio >= 3).sum()} pixels"


@pytest.mark.parametrize("eyes", EYES)
def test_the_last_trial_is_seen_but_fainter_than_this_week(eyes: str) -> None:
    whole = full_week()
    bare = replace(whole, before=Before(event_day=date(2027, 4, 11), days=()))
    top, bottom = layout(whole).top("fullness"), layout(whole).top("eye")
    with_it, without_it = (pixels(one)[int(top) : int(bottom)] for one in (whole, bare))
    changed = np.any(with_it != without_it, axis=2)
    ratio = contrast(
        through(eyes, with_it[changed] / 255), through(eyes, without_it[changed] / 255)
    )
    assert (ratio >= 3).sum() > 500
    ink = contrast(
        through(eyes, np.array(mpl.colors.to_rgb(canvas.INK))),
        through(eyes, np.array(mpl.colors.to_rgb(canvas.PAPER))),
    )
    assert ratio.max() < ink / 2


def test_one_colour_has_one_meaning() -> None:
    """Blue is what was planned or expected; none of it is left where nothing was."""
    whole = with_days(
        full_week(), planned_carb_g=None, planned_water_l=None, band_low_kg=None,
        band_high_kg=None, expected_fullness=None, symptoms=(),
    )  # fmt: skip
    top = layout(whole).top("fullness") + 56  # below the keys, which explain the colours
    rgb = seen(whole)[int(top) :]
    for colour in (canvas.BLUE, canvas.PALE_BLUE, canvas.GREEN, canvas.VERMILLION):
        assert not np.all(np.abs(rgb - mpl.colors.to_rgb(colour)) < 0.01, axis=2).any()


def test_an_empty_week_has_no_blank_panels_and_says_that_nobody_has_checked_in() -> None:
    empty = with_days(week(), **{key: None for keys in SERIES.values() for key in keys})
    ahead = with_days(replace(empty, today=date(2027, 4, 28)), answered=False)
    planned = replace(
        ahead, days=tuple(replace(d, planned_carb_g=PLANNED[d.days_out]) for d in ahead.days)
    )
    assert [panel.id for panel, _ in layout(planned).panels] == ["carbs"]
    said = {text.get_text() for text in texts(draw(planned).figure)}
    assert "no check-in yet" in said
    assert "Fullness" not in said
    assert [panel.id for panel, _ in layout(full_week()).panels] == [
        "weight", "carbs", "water", "fullness", "eye", "sharpness", "symptoms",
    ]  # fmt: skip


def test_whose_week_it_is_and_what_they_weigh_on_file_stand_on_it_and_complaints_in_words() -> None:
    said = {text.get_text() for text in texts(draw(full_week()).figure)}
    assert {"Mira", "show, Sun 9 May 2027", "on file 61.2 kg"} <= said
    assert "4 out: cramps, dizziness" in said
    far = {text.get_text() for text in texts(draw(replace(full_week(), baseline_kg=90.0)).figure)}
    assert "on file 90.0 kg" not in far  # a line that far off would flatten the week


def test_each_of_the_coachs_words_fills_a_box_of_its_own() -> None:
    eyes = dict(zip(range(7, 2, -1), LOOKS_SEEN, strict=True))
    whole = full_week()
    days = tuple(replace(one, eye=eyes.get(one.days_out)) for one in whole.days)
    whole = replace(whole, days=days)
    row = seen(whole)[int(layout(whole).top("eye")) + 80].mean(axis=1)
    width = (RIGHT - LEFT) / 8
    places = []
    for number in range(len(LOOKS_SEEN)):
        left = int(LEFT + number * width) + 6
        dark = np.nonzero(row[left : int(left + width - 10)] < 0.2)[0]
        places.append(float(dark.mean()))
    assert min(np.diff(places)) > 15


def test_a_picture_put_on_its_way_before_there_was_more_to_draw_is_still_drawn() -> None:
    stored = _values.dump_python(week(), mode="json")
    newer = {"baseline_kg", "before", "volume_unit"}
    old = {key: value for key, value in stored.items() if key not in newer}
    keys = {"eaten_carb_g", "planned_water_l", "water_l", "eye", "symptoms"}
    old["days"] = [{k: v for k, v in day.items() if k not in keys} for day in stored["days"]]
    assert _values.validate_python(old) == week()


_values = TypeAdapter(ChartWeek)


@pytest.mark.parametrize("eyes", EYES)
def test_planned_is_hatched_and_set_is_solid_so_that_no_colour_has_to_tell_them_apart(
    eyes: str,
) -> None:
    nothing = with_days(week(), planned_carb_g=None, set_carb_g=None)
    base, inside = seen(nothing), {}
    third = day(3)
    for series, alone in (
        ("planned", replace(third, planned_carb_g=500.0, set_carb_g=None)),
        ("set", replace(third, planned_carb_g=None, set_carb_g=500.0)),
    ):
        days = tuple(alone if one.days_out == 3 else one for one in nothing.days)
        bar = seen(replace(nothing, days=days))
        rows, columns = np.nonzero(np.any(bar != base, axis=2))
        lowest, middle = rows.max() - 10, int(columns.mean())
        inside[series] = through(eyes, bar[lowest - 60 : lowest, middle - 15 : middle + 15])
    paper = through(eyes, np.array(mpl.colors.to_rgb(canvas.PAPER)))
    against_paper = {series: contrast(pixels, paper) for series, pixels in inside.items()}
    assert against_paper["set"].min() >= 3
    assert inside["set"].std(axis=(0, 1)).max() < 0.01
    assert 0.1 < (against_paper["planned"] >= 3).mean() < 0.9


def test_a_weight_above_its_band_points_up_and_one_below_points_down() -> None:
    def widths(days_out: int) -> list[int]:
        """How wide the mark is, from its top to its tip."""
        rgb = seen(with_days(week(), planned_carb_g=None, set_carb_g=None))
        width = (RIGHT - LEFT) / 8
        left = int(LEFT + (7 - days_out) * width)
        top = int(layout(week()).top("weight"))
        column = rgb[top + 60 : top + 360, left : int(left + width)]
        filled = np.all(np.abs(column - mpl.colors.to_rgb(canvas.VERMILLION)) < 0.01, axis=2)
        return [int(n) for n in filled.sum(axis=1) if n]

    above, below, inside = widths(2), widths(3), widths(4)
    assert above[-2] > 2 * above[1]
    assert below[1] > 2 * below[-2]
    assert inside == []


@pytest.mark.parametrize("unit", ["kg", "lb", "st", "most", "full kg", "full st"])
def test_no_words_lie_on_others_or_off_the_page_and_all_are_large_enough_for_a_phone(
    figures: dict[str, Figure], unit: str
) -> None:
    _assert_apart(figures[unit])


def test_in_german_no_words_lie_on_others_either(ours: None) -> None:
    with mpl.rc_context():
        mpl.rcdefaults()
        mpl.rcParams.update(canvas.STYLE)
        _assert_apart(_drawn_in("de"))


def _assert_apart(figure: Figure) -> None:
    boxes = [(text.get_text(), text.get_window_extent()) for text in texts(figure)]
    assert len(boxes) > 40
    height = figure.bbox.height
    for number, (text, box) in enumerate(boxes):
        assert box.x0 >= 0, text
        assert box.y0 >= 0, text
        assert box.x1 <= WIDTH, text
        assert box.y1 <= height, text
        for other, other_box in boxes[number + 1 :]:
            across = min(box.x1, other_box.x1) - max(box.x0, other_box.x0)
            along = min(box.y1, other_box.y1) - max(box.y0, other_box.y0)
            # Boxes hold room for tails below the line; words touch from a few pixels on.
            assert across <= 0 or along <= 6, f"{text} on {other}"
    # Common practice: nothing under 7 points; the picture is about 390 points wide on a phone.
    smallest = min(float(text.get_fontsize()) for text in texts(figure))
    assert smallest / canvas.POINTS_PER_PIXEL / WIDTH * 390 >= 9


def test_all_words_stand_out_from_what_they_stand_on(figures: dict[str, Figure]) -> None:
    figure = figures["full kg"]
    height = int(figure.bbox.height)
    written = texts(figure)
    boxes = [text.get_window_extent() for text in written]
    for text in written:
        text.set_visible(False)
    out = io.BytesIO()
    figure.savefig(out, format="png", dpi=canvas.DOTS_PER_INCH)
    for text in written:
        text.set_visible(True)
    with Image.open(out) as image:
        ground = np.asarray(image.convert("RGB"), dtype=np.float64) / 255
    for text, box in zip(written, boxes, strict=True):
        under = ground[height - int(box.y1) : height - int(box.y0), int(box.x0) : int(box.x1)]
        typical = np.median(under.reshape(-1, 3), axis=0)
        ink = np.array(mpl.colors.to_rgb(text.get_color()))
        # WCAG 2.2, success criterion 1.4.3: 4.5:1 for words.
        assert contrast(linear(ink), linear(typical)) >= 4.5, text.get_text()


def test_a_missed_morning_is_a_gap_that_no_line_crosses() -> None:
    def column(whole: ChartWeek) -> Pixels:
        width = (RIGHT - LEFT) / 8
        left = LEFT + 2 * width
        plan = layout(whole)
        rows = slice(int(plan.top("fullness")) + 56, int(plan.bottom))
        return seen(whole)[rows, int(left + 4) : int(left + width - 4)]

    silent = replace(week(), days=tuple(replace(day(out), answered=False, fullness=None,
                     sharpness=None, expected_fullness=None) if out < 7 else day(7)
                     for out in range(7, -1, -1)))  # fmt: skip
    assert np.array_equal(column(week()), column(silent))
    answered = replace(day(5), answered=True, fullness=5, sharpness=3)
    there = replace(week(), days=tuple(answered if d.days_out == 5 else d for d in week().days))
    assert not np.array_equal(column(there), column(silent))
    assert words.missed_label() in {text.get_text() for text in texts(draw(week()).figure)}
    assert words.missed_label() not in {text.get_text() for text in texts(draw(there).figure)}


def test_one_check_in_no_check_in_a_morning_without_weight_and_a_day_without_carbs_can_be_drawn() -> (
    None
):
    empty = with_days(week(), **{key: None for keys in SERIES.values() for key in keys})
    first = replace(empty, today=date(2027, 5, 2), days=(day(7), *empty.days[1:]))
    unbanded = replace(day(7), band_low_kg=None, band_high_kg=None, set_carb_g=0.0)
    weightless = replace(day(7), weight_kg=None)
    pictures = [
        week_png(replace(first, days=(one, *empty.days[1:])))
        for one in (day(7), unbanded, weightless, empty.days[0])
    ]
    assert len(set(pictures)) == 4


def test_the_day_of_the_event_and_today_are_marked() -> None:
    rgb = seen(week())
    width = (RIGHT - LEFT) / 8
    event = rgb[DAYS_TOP + 12, int(LEFT + 7.5 * width)]
    assert np.allclose(event, mpl.colors.to_rgb(canvas.INK), atol=0.01)
    labels = [text.get_text() for text in texts(draw(week()).figure)]
    assert {"7 out", "Sun", "2 May", "2 out", "today", "7 May", "Show", "9 May"} <= set(labels)
    assert "Trial" in {
        text.get_text() for text in texts(draw(replace(week(), kind="trial")).figure)
    }


@pytest.mark.parametrize(("unit", "scale"), [("kg", 1.0), ("lb", 2.0), ("st", 1.73)])
def test_every_figure_on_the_picture_is_in_the_words_of_its_day(unit: str, scale: float) -> None:
    whole = full_week(unit, scale=scale)
    lines = words.caption(whole, own=False).splitlines()[1:]
    width = (RIGHT - LEFT) / 8
    by_day: list[list[str]] = [[] for _ in whole.days]
    for text in texts(draw(whole).figure):
        x, y = text.get_position()
        number, off = divmod(x - LEFT, width)
        if TOP < y < layout(whole).top("symptoms") and abs(off - width / 2) < 1:
            by_day[int(number)].append(text.get_text().replace("\n", " "))
    assert [len(figures) for figures in by_day] == [6, 6, 2, 6, 7, 5, 1, 1]
    for line, figures in zip(lines, by_day, strict=True):
        for figure in figures:
            assert figure in line, (figure, line)


def test_the_words_say_where_a_weight_lies_and_what_is_planned_or_missing() -> None:
    said = words.caption(week(), own=False)
    assert said.startswith("Mira's week to the show on Sun 9 May 2027")
    for line in (
        "7 out, Sun 2 May: 61.2 kg (in 60.6–61.9), full 5 (5 expected), sharp 3, carbs 155",
        "5 out, Tue 4 May: no check-in, carbs 155 planned",
        "3 out, Thu 6 May: 59.3 kg (below 59.5–60.8), full 2 (4 expected), sharp 5, carbs 525 (+25)",
        "2 out, Fri 7 May (today): 61.9 kg (above 59.6–61.3), full 7 (6 expected), sharp 4, "
        "carbs 475 (−25)",
        "Show, Sun 9 May: carbs 240 planned",
    ):
        assert line in said
    assert words.caption(week(), own=True).startswith("Your week to the show")


def test_the_words_are_in_the_athletes_unit() -> None:
    # 61.2 kg = 134.92 lb: the pound is 0.45359237 kg (NIST Handbook 44, appendix C). The band, 133.60
    # to 136.47 lb, ends at the last tenths within it: no weight outside prints as one of its ends.
    assert "134.9 lb (in 133.7–136.4)" in words.caption(week("lb"), own=False)
    assert "9 st 8.9 lb (in 9 st 7.7 lb–9 st 10.4 lb)" in words.caption(week("st"), own=False)


def test_the_longest_words_still_fit_under_a_picture() -> None:
    days = tuple(
        replace(
            day(7), date=date(2027, 9, 22) - timedelta(days=out), days_out=out, weight_kg=160.0,
            band_low_kg=160.5, band_high_kg=170.5, fullness=10, expected_fullness=10,
            planned_carb_g=1000.0, set_carb_g=1475.0,
        )
        for out in range(7, -1, -1)
    )  # fmt: skip
    longest = ChartWeek(
        name="M" * 64, kind="shoot", event_day=date(2027, 9, 22), today=date(2027, 9, 22),
        weight_unit="st", days=days,
    )  # fmt: skip
    said = words.caption(longest, own=False)
    # Bot API, sendPhoto: a caption has 1024 characters at most.
    assert 900 < len(said.encode("utf-16-le")) / 2 <= 1024
    assert said.count("25 st 2.7 lb (below the expected range)") == 8
