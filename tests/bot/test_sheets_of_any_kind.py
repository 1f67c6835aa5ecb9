"""Whatever stands in a file that somebody sends: it is read or refused by name, and nothing else.

Cells of our own empty sheets are overwritten with what people and programs put into cells, and bytes of
our own files with any bytes; hypothesis (https://hypothesis.works) chooses where.
"""

from __future__ import annotations

import csv
import io
from datetime import date

import pytest
from hypothesis import HealthCheck, example, given, settings
from hypothesis import strategies as st

from bot.setup.roster_sheet import ATHLETE, Choices, is_roster, read_roster
from bot.setup.roster_sheet import write as write_roster
from bot.sheets.format.opening import Grid, SheetRefused, open_sheet
from bot.sheets.format.reading import SheetProblems, read_sheet
from bot.sheets.past_weeks.layout import empty_sheet
from bot.sheets.past_weeks.reading import is_past_weeks, read_past_weeks

TODAY = date(2027, 5, 9)
CHOICES = Choices(**dict.fromkeys(Choices.__dataclass_fields__, ("a", "b")))
VALUES = st.sampled_from(
    ("", "0", "-1", "1e9", "1e999", "nan", "inf", "9" * 40, "½", "²", "60,9", "60.9 kg", "12/13/2027",
     "2027-02-30", "31.4.", "24:00", "25:61", "07:00", "yes", "=1+1", "#REF!", "Mira", "show", "trial",
     "0 g", "400 g", "None", "1.2.3", "٣", "\u200b", "A" * 2000, "3 days out", "-0", "+5", "1 000,5")
)  # fmt: skip
WRITTEN = st.text(
    st.characters(exclude_categories=["Cs"], exclude_characters="\r\n\0"), max_size=12
)
EDITS = st.lists(st.tuples(st.integers(0, 30), st.integers(0, 24), VALUES | WRITTEN), max_size=25)
OFTEN = settings(
    max_examples=60, database=None, derandomize=True,
    suppress_health_check=list(HealthCheck),
)  # fmt: skip


def overwritten(content: bytes, edits: list[tuple[int, int, str]]) -> Grid:
    text = content.decode("utf-8-sig")
    delimiter = max(",;\t", key=text.count)
    rows = list(csv.reader(io.StringIO(text), delimiter=delimiter))
    for i, j, value in edits:
        while len(rows) <= i:
            rows.append([])
        rows[i].extend([""] * (j + 1 - len(rows[i])))
        rows[i][j] = value
    out = io.StringIO()
    csv.writer(out, delimiter=delimiter).writerows(rows)
    return open_sheet(out.getvalue().encode())


@OFTEN
@given(edits=EDITS)
def test_past_weeks_with_anything_in_their_cells(edits: list[tuple[int, int, str]]) -> None:
    grid = overwritten(empty_sheet("Mira", 2, TODAY, "csv"), edits)
    if is_past_weeks(grid):
        try:
            weeks = read_past_weeks(grid, TODAY)
        except SheetProblems as problems:
            assert problems.found
        else:
            assert len(weeks.weeks) < 30


@OFTEN
@given(edits=EDITS)
def test_a_sheet_of_athletes_with_anything_in_its_cells(edits: list[tuple[int, int, str]]) -> None:
    grid = overwritten(write_roster([{}, {}], CHOICES, "csv"), edits)
    if is_roster(grid):
        assert len(read_roster(grid).rows) <= 200


@pytest.mark.parametrize("form", ["csv", "xlsx"])
def test_a_file_with_bytes_that_went_wrong_on_the_way(form: str) -> None:
    whole = empty_sheet("Mira", 2, TODAY, form)

    @OFTEN
    @given(at=st.integers(0, len(whole) - 1), put=st.binary(max_size=40), cut=st.integers(0, 400))
    @example(at=46, put=bytes(5), cut=5)  # the library's own error, and none of the zip's
    def spoilt(at: int, put: bytes, cut: int) -> None:
        for content in (whole[:at] + put + whole[at + cut :], put):
            try:
                grid = open_sheet(content)
                read_sheet(grid)
                read_past_weeks(grid, TODAY)
            except SheetRefused as refused:
                assert refused.why
            except SheetProblems as problems:
                assert problems.found

    spoilt()


@pytest.mark.parametrize("form", ["xlsx", "csv"])
@pytest.mark.parametrize("name", ["=Mira", "'Mira", "+49 Mira", "Mira"])
def test_a_name_that_a_spreadsheet_program_would_take_for_something_else_comes_back_as_it_was(
    name: str, form: str
) -> None:
    made = write_roster([{ATHLETE: name}], Choices((), (), ()), form)
    (row,) = read_roster(open_sheet(made)).rows
    assert row.text(ATHLETE) == name
