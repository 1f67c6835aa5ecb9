"""A plan goes out as a sheet, is changed in a spreadsheet program, and comes back."""

from __future__ import annotations

import csv
import io
import zipfile
from collections.abc import Callable
from datetime import UTC, datetime
from functools import partial
from typing import Any

import pytest
from openpyxl import Workbook, load_workbook
from openpyxl.worksheet.worksheet import Worksheet
from sqlmodel import col, select

from bot.sheets.format.opening import MOST_BYTES
from bot.store.tables.people import HistoryRow, Person
from bot.store.tables.week import LimitsRow, PlanRow
from engine.values.plan import DayTarget
from tests.support.files import files_for, sends_file
from tests.support.weeks import Team
from tests.support.world import Said, Someone, text_of


@pytest.fixture
def team(team_at: Callable[[datetime], Team]) -> Team:
    """Everything is set; seven days out, at six in London, before the first question."""
    return team_at(datetime(2027, 5, 2, 5, 0, tzinfo=UTC))


@pytest.fixture
def midweek(team_at: Callable[[datetime], Team]) -> Team:
    """Three days out, at seven in London, before the check-in."""
    return team_at(datetime(2027, 5, 6, 6, 0, tzinfo=UTC))


def versions(team: Team) -> tuple[int, int]:
    """How many versions of plan and limits there are."""
    with team.world.session() as session:
        return len(session.exec(select(PlanRow)).all()), len(session.exec(select(LimitsRow)).all())


def handed_out(team: Team, form: str = "xlsx") -> bytes:
    return team.once(_handed_out_as[form])


def _handed_out(team: Team, form: str) -> bytes:
    team.coach.presses(f"c:plan:{team.athlete_id}")
    team.coach.taps("Plan as a sheet")
    team.coach.taps(form.upper())
    row, documents = files_for(team.coach, "sendDocument")[-1]
    assert row.payload["caption"].startswith("Mira's plan and limits.")
    assert documents[0].name == f"plan-2027-05-09.{form}"
    return documents[0].content


_handed_out_as = {form: partial(_handed_out, form=form) for form in ("xlsx", "csv")}


def page_of(content: bytes) -> tuple[Workbook, Worksheet]:
    book = load_workbook(io.BytesIO(content))
    page = book.active
    assert isinstance(page, Worksheet)
    return book, page


def saved(book: Workbook) -> bytes:
    out = io.BytesIO()
    book.save(out)
    return out.getvalue()


def with_cells(content: bytes, **cells: Any) -> bytes:
    book, page = page_of(content)
    for name, value in cells.items():
        page[name] = value
    return saved(book)


def sends_back(team: Team, content: bytes, name: str = "plan.xlsx") -> str:
    return text_of(sends_file(team.coach, content, name=name))


def as_csv(content: bytes, change: Callable[[list[list[str]]], None], delimiter: str) -> str:
    rows = list(csv.reader(io.StringIO(content.decode("utf-8-sig"))))
    change(rows)
    out = io.StringIO()
    csv.writer(out, delimiter=delimiter).writerows(rows)
    return out.getvalue()


# Out


def test_the_sheet_opens_in_an_ordinary_library_and_holds_the_plan_by_day_and_the_limits(
    team: Team,
) -> None:
    _, page = page_of(handed_out(team))
    headings = [cell.value for cell in page[5]]
    assert headings[:12] == [
        "Days out", "Day", "Carbs (g)", "Protein (g)", "Fat (g)", "Fibre (g)", "Water (L)",
        "Sodium (mg)", "Training", "Cardio (min)", "Steps", "Phase",
    ]  # fmt: skip
    plan = team.week().plan
    assert [row[0].value for row in page["A6:A13"]] == [7, 6, 5, 4, 3, 2, 1, 0]
    assert page["B6"].value == "Sun 2 May"
    assert [row[0].value for row in page["C6:C13"]] == [day.carb_g for day in plan]
    assert page["I6"].value == plan.days[0].training
    assert page["A16"].value == "Carb floor a day"
    assert page["B16"].value == team.week().limits.carb_floor_g


def test_beside_the_plan_stands_what_was_set_eaten_and_answered_with_totals(midweek: Team) -> None:
    midweek.athlete.writes("61.1 2 3.5 5 on target fine")
    _, page = page_of(handed_out(midweek))
    headings = [cell.value for cell in page[5]]
    assert headings[12:] == [
        "Carbs set (g)", "Carbs eaten (g)", "Water drunk (L)", "Weight (kg)", "Fullness (1-10)",
        "Sharpness (1-5)", "Energy planned (kcal)", "Energy set (kcal)",
    ]  # fmt: skip
    cells = [[cell.value for cell in row] for row in page["A6:T13"]]
    rows = {row[0]: dict(zip(headings, row, strict=True)) for row in cells}
    morning, before = rows[3], rows[4]
    answers = ("Weight (kg)", "Fullness (1-10)", "Sharpness (1-5)")
    assert [morning[heading] for heading in answers] == [61.1, 2, 5]
    assert before["Water drunk (L)"] == 3.5 and before["Carbs eaten (g)"] == before["Carbs (g)"]
    # EU 1169/2011 Annex XIV: 4 kcal a gram of carbohydrate and of protein, 9 of fat, 2 of fibre.
    assert before["Energy planned (kcal)"] == (
        4 * (before["Carbs (g)"] + before["Protein (g)"]) + 9 * before["Fat (g)"]
        + 2 * before["Fibre (g)"]
    )  # fmt: skip
    total = dict(zip(headings, (cell.value for cell in page[14]), strict=True))
    assert total["Days out"] is None and total["Day"] == "Load days"
    assert total["Carbs (g)"] == sum(rows[out]["Carbs (g)"] for out in (3, 2, 1))
    assert total["Carbs set (g)"] == sum(rows[out]["Carbs set (g)"] for out in (3, 2, 1))
    assert total["Carbs eaten (g)"] is None  # not known of all of them
    assert page.freeze_panes == "C6"
    assert (page.page_setup.fitToWidth, page.page_setup.fitToHeight) == (1, 1)


def test_what_stands_beside_the_plan_is_not_read_back(team: Team) -> None:
    said = sends_back(team, with_cells(handed_out(team), M6=999, C14=1))
    assert "nothing in it is different" in said


def test_csv_and_xlsx_say_the_same(team: Team) -> None:
    _, page = page_of(handed_out(team))
    rows = list(csv.reader(io.StringIO(handed_out(team, "csv").decode("utf-8-sig"))))
    for number, row in enumerate(page.iter_rows(values_only=True)):
        shown = ["" if value is None else str(value) for value in row]
        assert rows[number] == shown[: len(rows[number])]


def test_a_german_coachs_sheet_is_in_german_and_comes_back_with_nothing_changed(
    ours: None, team: Team
) -> None:
    team.coach.language = "de"
    team.coach.presses(f"c:sheet:{team.athlete_id}:xlsx")
    content = files_for(team.coach, "sendDocument")[-1][1][0].content
    _, page = page_of(content)
    assert [cell.value for cell in page[5]][:3] == ["Tage vorher", "Tag", "Kohlenhydrate (g)"]
    assert page["I12"].value == "Ruhe, nur Posing"
    assert page["A16"].value == "Untergrenze Kohlenhydrate pro Tag"
    assert "nichts darin ist anders" in sends_back(team, content)
    assert "Kohlenhydrate: 185 g → 190 g" in sends_back(team, with_cells(content, C6=190))


@pytest.mark.parametrize("words", ["=HYPERLINK(x)", "+cmd", "-2+3", "@SUM(A1)"])
def test_words_that_a_spreadsheet_would_compute_go_out_and_come_back_as_text(
    team: Team, words: str
) -> None:
    with team.world.session() as session:
        row = session.exec(select(PlanRow)).one()
        row.days = [{**row.days[0], "training": words}, *row.days[1:]]
        session.add(row)
        session.commit()
    _, page = page_of(handed_out(team))
    assert (page["I6"].value, page["I6"].data_type, page["I6"].quotePrefix) == (words, "s", True)
    content = handed_out(team, "csv")
    rows = list(csv.reader(io.StringIO(content.decode("utf-8-sig"))))
    assert rows[5][8] == f"'{words}"
    for sent, name in ((handed_out(team), "plan.xlsx"), (content, "plan.csv")):
        assert "nothing in it is different" in sends_back(team, sent, name)


# Back, and taken over


def test_changes_are_shown_first_and_taken_over_on_a_tap(team: Team) -> None:
    before = team.week()
    said = sends_back(team, with_cells(handed_out(team), C8=200, G8="3,75", I8="rest", B16=80))
    assert "5 days out, carbs: 185 g → 200 g" in said
    assert "5 days out, water: 3.5 L → 3.75 L" in said
    assert "5 days out, training: " in said and "→ rest" in said
    assert f"carb floor: {before.limits.carb_floor_g:.0f} g → 80 g" in said
    assert versions(team) == (1, 1)

    said = text_of(team.coach.taps("Use these changes"))
    assert "4 changes are now set" in said
    after = team.week()
    day = after.plan.day(5)
    assert day is not None
    assert (day.carb_g, day.water_l, day.training) == (200, 3.75, "rest")
    assert after.limits.carb_floor_g == 80
    assert versions(team) == (2, 2)
    with team.world.session() as session:
        last = session.exec(select(HistoryRow).order_by(col(HistoryRow.id).desc()).limit(2)).all()
    assert {(row.what, row.by_id, row.detail["how"]) for row in last} == {
        ("plan set", 1, "sheet"), ("limits set", 1, "sheet"),
    }  # fmt: skip


def with_totals(team: Team, stated: Callable[[DayTarget], object], **cells: Any) -> bytes:
    """The sheet with a column of the coach's own totals."""
    column = {f"U{6 + i}": stated(day) for i, day in enumerate(team.week().plan)}
    return with_cells(handed_out(team), **{"U5": "Total (kcal)", **column, **cells})


# Annex XIV of Regulation (EU) No 1169/2011: carbohydrate (without fibre) 4, protein 4, fat 9 and
# fibre 2 kcal/g. On US labels (21 CFR 101.9) the fibre is in the carbohydrate.
def by_annex_xiv(day: DayTarget) -> float:
    return 4 * day.carb_g + 4 * day.protein_g + 9 * day.fat_g + 2 * day.fibre_g


def test_totals_of_a_sheet_are_held_against_their_days_before_it_is_taken_over(team: Team) -> None:
    said = sends_back(team, with_totals(team, by_annex_xiv))
    assert "nothing in it is different" in said
    assert "The totals of 8 days fit their carbs, protein, fat and fibre." in said
    # What was changed in the sheet is what its total is held against.
    said = sends_back(team, with_totals(team, lambda day: f"{by_annex_xiv(day):.0f} kcal", C8=285))
    assert "the total does not match. 5 days out: 1,800 kcal stated" in said
    assert "2,200 kcal where carbs are without fibre (EU labels)" in said
    assert "5 days out, carbs: 185 g → 285 g" in said
    # That is nearly what she always eats: no depletion any more.
    assert "5 days out, phase: Depletion → Usual" in said
    assert "2 changes are now set" in text_of(team.coach.taps("Use these changes"))
    day = team.week().plan.day(5)
    assert day is not None
    assert day.carb_g == 285


@pytest.mark.parametrize("heading", ["energy (kcal)", "Summe (kcal)", "kcal gesamt"])
def test_totals_are_read_under_their_heading_in_any_language(
    team: Team, heading: str, ours: None
) -> None:
    said = sends_back(team, with_totals(team, by_annex_xiv, U5=heading))
    assert "The totals of 8 days fit their carbs, protein, fat and fibre." in said


def test_totals_that_fit_by_one_way_of_counting_carbs_say_which(team: Team) -> None:
    fibre = {f"F{6 + i}": 40 for i in range(8)}
    eu = with_totals(team, lambda day: by_annex_xiv(day) + 2 * (40 - day.fibre_g), **fibre)
    assert "as on EU labels and in my plans" in sends_back(team, eu)
    us = with_totals(team, lambda day: by_annex_xiv(day) - 2 * day.fibre_g, **fibre)
    assert "only with fibre counted as carbs, as on US labels" in sends_back(team, us)


def test_a_column_of_totals_may_have_gaps_but_no_nonsense(team: Team) -> None:
    said = sends_back(team, with_cells(handed_out(team), U5="kcal", U8="1800"))
    assert "The total of 1 day fits" in said
    said = sends_back(team, with_cells(handed_out(team), U5="kcal", U8="much"))
    assert 'U8: I can\'t read a number in "much"' in said


def test_a_tap_on_leave_it_changes_nothing(team: Team) -> None:
    sends_back(team, with_cells(handed_out(team), C8=200))
    assert "othing was changed" in text_of(team.coach.taps("Don't change it"))
    assert versions(team) == (1, 1)


def test_a_second_tap_takes_nothing_over_twice(team: Team) -> None:
    sends_back(team, with_cells(handed_out(team), C8=200))
    question = next(m for m in team.coach.all_said() if "Use these changes" in m.buttons)
    team.coach.taps("Use these changes", question)
    team.coach.taps("Use these changes", question)
    assert versions(team) == (2, 1)


@pytest.mark.parametrize(
    ("encoding", "delimiter", "mark"),
    [("utf-8-sig", ";", ","), ("utf-8", ",", "."), ("utf-16", "\t", ","), ("cp1252", ";", ",")],
)
def test_csv_is_taken_as_programs_of_many_countries_save_it(
    team: Team, encoding: str, delimiter: str, mark: str
) -> None:
    def change(rows: list[list[str]]) -> None:
        rows[7][6] = f"3{mark}25"
        rows[7][8] = "Oberkörper, früh"

    text = as_csv(handed_out(team, "csv"), change, delimiter)
    said = sends_back(team, text.encode(encoding), "plan.csv")
    assert "water: 3.5 L → 3.25 L" in said
    assert "→ Oberkörper, früh" in said


def test_a_separator_hint_in_the_first_line_is_no_row(team: Team) -> None:
    text = as_csv(handed_out(team, "csv"), lambda rows: rows[7].__setitem__(2, "210"), ";")
    assert "carbs: 185 g → 210 g" in sends_back(team, f"sep=;\r\n{text}".encode(), "plan.csv")


def test_the_days_that_a_sheet_changed_follow_it_and_others_keep_their_figures(
    midweek: Team,
) -> None:
    said = sends_back(midweek, with_cells(handed_out(midweek), C11=520))
    assert "2 days out, carbs: 500 g → 520 g" in said
    midweek.coach.taps("Use these changes")
    day = midweek.week().plan.day(2)
    assert day is not None and day.carb_g == 520


def test_columns_of_the_coachs_own_are_left_alone_and_order_does_not_matter(team: Team) -> None:
    book, page = page_of(handed_out(team))
    page["M5"], page["M6"] = "My notes", "=C6*2"
    page.move_range("C5:C13", cols=12)
    page["O8"] = 205
    assert "carbs: 185 g → 205 g" in sends_back(team, saved(book))


def test_figures_computed_by_the_program_are_taken_as_it_last_showed_them(team: Team) -> None:
    """A formula with its stored result, as spreadsheet programs write it."""
    content = rewritten(
        with_cells(handed_out(team), C8="=C7+50"), "<f>C7+50</f><v />", "<f>C7+50</f><v>205</v>"
    )
    assert "carbs: 185 g → 205 g" in sends_back(team, content)


def rewritten(content: bytes, old: str, new: str) -> bytes:
    """The workbook with a piece of its sheet's XML replaced."""
    out = io.BytesIO()
    with zipfile.ZipFile(io.BytesIO(content)) as source, zipfile.ZipFile(out, "w") as target:
        for part in source.infolist():
            data = source.read(part)
            if part.filename == "xl/worksheets/sheet1.xml":
                # as it is written where lxml is installed
                data = data.replace(b"<v></v>", b"<v />")
                assert old in data.decode()
                data = data.decode().replace(old, new).encode()
            target.writestr(part, data)
    return out.getvalue()


# Back, and refused


REFUSED_CELLS = (
    ("C8", "abc", 'C8: I can\'t read a number in "abc"'),
    ("C8", -5, 'C8: "-5" is below zero'),
    ("C8", 5000, 'C8: "5000": it has to be between 0 and 1500'),
    ("C8", None, "C8: empty"),
    ("C8", "=C7*2", 'C8: a formula ("=C7*2") without a stored result'),
    ("C8", True, 'C8: "TRUE" is not a number'),
    ("G8", datetime(2027, 5, 3), "G8: a date"),  # noqa: DTZ001 - as a spreadsheet makes of "3.5"
    ("C8", "#DIV/0!", 'C8: an error ("#DIV/0!")'),
    ("C8", "1,234", 'C8: the point or comma in "1,234" could mark thousands'),
    ("C8", "150 or 160", "C8: more than one number"),
    ("G8", "3.5 kg", "G8: the unit in"),
    ("I8", "x" * 201, "I8: more than 200 characters"),
    ("A8", 9, 'A8: "9" is not a day of the plan'),
    ("A8", 6, "A8: 6 days out is there twice"),
    ("C5", "Carbohydrates", 'A5: the heading "Carbs (g)" is missing'),
    ("D5", "Carbs (g)", 'D5: the heading "Carbs (g)" is there twice'),
    ("C8", 700, "C8: 700 g 5 days out is over the carb ceiling"),
    ("G8", 9, "G8: 9.0 L 5 days out is over the water ceiling"),
    ("B16", 2, "B16: 2 g is past the safety bound for this body mass"),
    ("B16", 700, "B16: a floor over its ceiling"),
    ("A16", "Carb cellar", 'A16: "Carb cellar" is not a limit I know'),
    ("B17", None, "B17: empty"),
)


@pytest.mark.parametrize(("cell", "value", "expected"), REFUSED_CELLS)
def test_what_cannot_be_taken_is_named_by_its_cell_and_nothing_else_is_taken(
    team: Team, cell: str, value: Any, expected: str
) -> None:
    said = sends_back(team, with_cells(handed_out(team), C6=160, **{cell: value}))
    assert expected in said
    assert "I changed nothing" in said
    assert versions(team) == (1, 1)
    assert not any("Use these changes" in message.buttons for message in team.coach.all_said())


def test_every_wrong_cell_is_named_at_once(team: Team) -> None:
    said = sends_back(team, with_cells(handed_out(team), C6="a", D7="b", G8="c", B16="d"))
    assert all(f"{cell}: I can't read a number" in said for cell in ("C6", "D7", "G8", "B16"))


def test_merged_cells_are_refused_where_they_count_and_hidden_ones_are_pointed_out(
    team: Team,
) -> None:
    content = handed_out(team)
    book, page = page_of(content)
    page.merge_cells("C8:D8")
    page.merge_cells("A1:A2")
    said = sends_back(team, saved(book))
    assert "C8: part of merged cells (C8:D8)" in said and "A1" not in said

    book, page = page_of(with_cells(content, C8=200))
    page.row_dimensions[8].hidden = True
    said = sends_back(team, saved(book))
    assert "carbs: 185 g → 200 g" in said and "hidden in the file (C8, D8" in said


def test_a_missing_day_is_named_and_a_day_that_is_over_stays(midweek: Team) -> None:
    book, page = page_of(handed_out(midweek))
    page.delete_rows(10)
    assert "the row for 3 days out is missing" in sends_back(midweek, saved(book))
    said = sends_back(midweek, with_cells(handed_out(midweek), C6=200))
    assert "C6: carbs of a day that is over stays as it was (185 g)" in said


def test_a_sheet_of_a_plan_that_has_moved_on_is_refused_at_once_and_at_the_tap(team: Team) -> None:
    content = handed_out(team)
    sends_back(team, with_cells(content, C8=200))
    team.coach.presses(f"c:num:{team.athlete_id}:4:carb_g")
    team.coach.writes("170")
    assert "have changed since this sheet was made" in text_of(team.coach.taps("Use these changes"))
    assert "have changed since this sheet was made" in sends_back(team, with_cells(content, C8=200))
    day = team.week().plan.day(5)
    assert day is not None and day.carb_g == 185


def test_another_coachs_athlete_is_refused_as_one_that_does_not_exist(team: Team) -> None:
    content = handed_out(team)
    with team.world.session() as session:
        session.add(
            Person(
                telegram_user_id=301, chat_id=301, first_name="Noor", is_coach=True,
                created_at=team.world.now,
            )
        )  # fmt: skip
        session.commit()
    other = Someone(team.world, 301, "Noor")
    real = text_of(sends_file(other, content, name="plan.xlsx"))
    none = text_of(sends_file(other, with_cells(content, B3="A999-P1-L1"), name="plan.xlsx"))
    assert "not the plan of an athlete of yours" in real
    assert real == none


def test_an_athlete_who_sends_a_sheet_changes_nothing(team: Team) -> None:
    content = with_cells(handed_out(team), C8=200)
    said = text_of(sends_file(team.athlete, content, name="plan.xlsx"))
    assert "carbs" not in said
    assert versions(team) == (1, 1)


# Files that are no sheets of ours, or mean harm


def _zip_of(parts: dict[str, bytes]) -> bytes:
    out = io.BytesIO()
    with zipfile.ZipFile(out, "w", zipfile.ZIP_DEFLATED) as archive:
        for name, data in parts.items():
            archive.writestr(name, data)
    return out.getvalue()


def _with_part(content: bytes, name: str, data: bytes) -> bytes:
    with zipfile.ZipFile(io.BytesIO(content)) as source:
        parts = {part.filename: source.read(part) for part in source.infolist()}
    return _zip_of(parts | {name: data})


def test_a_file_that_is_too_large_is_refused_before_it_is_fetched(team: Team) -> None:
    said = text_of(sends_file(team.coach, b"x" * (5 * 1024 * 1024), name="plan.xlsx"))
    assert "too large for a plan" in said


def test_a_file_larger_than_it_said_is_not_read_to_its_end(team: Team) -> None:
    said = text_of(sends_file(team.coach, b"x" * (MOST_BYTES + 1), name="plan.csv", size=10))
    assert "could not get that file" in said


def test_a_small_file_that_unfolds_into_a_large_one_is_not_unfolded(team: Team) -> None:
    """200 MB of one letter in a part of 200 kB."""
    content = _with_part(handed_out(team), "xl/media/a.xml", b"a" * 200_000_000)
    assert len(content) < MOST_BYTES
    assert "unpacks to far more than a plan needs" in sends_back(team, content)


def test_entities_that_multiply_are_not_read(team: Team) -> None:
    """The pattern known as "billion laughs": https://en.wikipedia.org/wiki/Billion_laughs_attack"""
    laughs = b'<?xml version="1.0"?><!DOCTYPE lolz [<!ENTITY lol "lol">'
    laughs += b"".join(
        b'<!ENTITY lol%d "%s">' % (n, b"&lol%d;" % (n - 1) * 10 if n > 1 else b"&lol;" * 10)
        for n in range(1, 10)
    )
    laughs += b"]><sst>&lol9;</sst>"
    for data in (laughs, laughs.decode().encode("utf-16")):
        content = _with_part(handed_out(team), "xl/sharedStrings.xml", data)
        assert "damaged" in sends_back(team, content)


def test_a_merged_area_or_a_row_at_the_end_of_the_world_takes_no_time(team: Team) -> None:
    """A sheet has 1,048,576 rows and 16,384 columns (ECMA-376); an area of all of them is one tag."""
    content = rewritten(
        handed_out(team),
        "</sheetData>",
        '<row r="1048576"><c r="XFD1048576"><v>1</v></c></row></sheetData>'
        '<mergeCells><mergeCell ref="A1:XFD1048576"/></mergeCells>',
    )
    assert "part of merged cells (A1:XFD1048576)" in sends_back(team, content)


@pytest.mark.parametrize(
    ("content", "name", "expected"),
    [
        (b"", "plan.xlsx", "can't find a plan"),
        (b"\x00" * 1000, "plan.csv", "not a spreadsheet"),
        (bytes(range(256)) * 50, "plan.csv", "not a spreadsheet"),
        (b"a;b;c\n" * 100_000, "plan.csv", "can't find a plan"),
        (b"PK\x03\x04 and then nothing", "plan.xlsx", "damaged"),
        (_zip_of({"hello.txt": b"hello"}), "plan.xlsx", "not a file I can read"),
        (_zip_of({"xl/workbook.xml": b"<oops"}), "plan.xlsx", "damaged"),
        (_zip_of({"mimetype": b"application/vnd.oasis"}), "plan.ods", "not a file I can read"),
        (b"\xd0\xcf\x11\xe0" + b"\x00" * 600, "plan.xls", "older kind of spreadsheet"),
        (b'"unclosed ' + b"x" * 200_000, "plan.csv", "not a spreadsheet"),
        (b"Days out;Version\n", "plan.csv", "can't find a plan"),
    ],
)
def test_nonsense_is_refused_with_what_to_do_instead(
    team: Team, content: bytes, name: str, expected: str
) -> None:
    said = sends_back(team, content, name)
    assert expected in said and "othing was changed" in said


def test_an_ordinary_workbook_is_no_plan_of_ours(team: Team) -> None:
    book = Workbook()
    page = book.active
    assert isinstance(page, Worksheet)
    page["A1"] = "Shopping"
    assert "can't find a plan" in sends_back(team, saved(book))


def test_a_file_that_cannot_be_had_is_said_so(team: Team) -> None:
    from tests.support.files import fetch  # noqa: PLC0415

    said: list[Said] = team.coach.sends(_lost())
    assert said == []
    fetch(team.world, {"lost": b"x" * (MOST_BYTES + 1)})
    assert "send it once more" in text_of(team.coach.hears())


def _lost() -> Any:
    from bot.core.turn import SentFile  # noqa: PLC0415

    return SentFile(file_id="lost", name="plan.xlsx", size=10)
