"""Everything about an athlete, or about all of a coach's, as one workbook or as CSVs."""

from __future__ import annotations

import io
import zipfile
from collections.abc import Callable, Sequence
from datetime import UTC, datetime
from xml.etree import ElementTree

import pandas as pd
import pytest
from hypothesis import given
from hypothesis import strategies as st
from openpyxl import load_workbook
from openpyxl.utils.cell import column_index_from_string, coordinate_from_string
from sqlalchemy import delete
from sqlmodel import col, select

from bot.core.turn import Turn
from bot.decision.words_forecast import odds_in_force
from bot.decision.words_target import reason
from bot.membership.ending import part
from bot.people.people import get_profile
from bot.sheets.format.cells import for_csv, from_csv
from bot.sheets.workbook.gather import frames_of
from bot.sheets.workbook.tables import TABLES
from bot.store.db import is_sqlite, transaction
from bot.store.tables.people import Person
from bot.store.tables.week import CheckInRow, EventRow, LimitsRow, PlanRow
from engine.decision.kept import decided_in_short, decision_from_dict
from engine.written.units import VolumeUnit, WeightUnit
from tests.kept.make import kept
from tests.support.files import files_for
from tests.support.many import Alike, many_athletes
from tests.support.weeks import Team, gone_on
from tests.support.whole_week import lived
from tests.support.world import Someone, text_of

SHEETS = "{http://schemas.openxmlformats.org/spreadsheetml/2006/main}"
RISKY = ("=1+1", "+49 170", "-5 kg?", "@Ravi", "\t=1", "\r=1", "＝1", "'quoted'", "plain")


@pytest.fixture
def team(team_at: Callable[[datetime], Team]) -> Team:
    """Mira's week is over and holds something of everything."""
    return gone_on(team_at(datetime(2027, 5, 6, 5, 40, tzinfo=UTC)), the_whole_week)


def the_whole_week(team: Team) -> None:
    lived(team)


def book_for(who: Someone, data: str) -> bytes:
    who.presses(data)
    _, documents = files_for(who, "sendDocument")[-1]
    return documents[0].content


def read(content: bytes) -> dict[str, pd.DataFrame]:
    return pd.read_excel(io.BytesIO(content), sheet_name=None)


def csvs(content: bytes) -> dict[str, pd.DataFrame]:
    with zipfile.ZipFile(io.BytesIO(content)) as archive:
        return {
            name.removesuffix(".csv"): pd.read_csv(archive.open(name), encoding="utf-8-sig")
            for name in archive.namelist()
        }


def frames(team: Team, reader: int = 1) -> dict[str, pd.DataFrame]:
    with team.world.session() as session:
        profile = get_profile(session, team.athlete_id)
        return frames_of(session, [profile], reader_id=reader)


def test_no_column_is_declared_that_nothing_ever_fills(team: Team) -> None:
    found = frames(team)
    assert list(found) != [] and set(found) == {table.id for table in TABLES}
    empty = [
        f"{table.id}.{column.key}"
        for table in TABLES
        for column in table.columns
        if not found[table.id][column.key].notna().any()
        or (found[table.id][column.key].astype(str) == "").all()
    ]
    assert empty == ["weeks.imported"]  # nothing was


def test_a_coach_opens_it_with_pandas_and_reads_what_was_answered_planned_and_decided(
    team: Team,
) -> None:
    book = read(book_for(team.coach, "c:files:2:xlsx"))
    assert list(book) == [
        "Read me", "Weeks", "Weeks compared", "Check-ins", "Targets", "Decisions", "Flags",
        "Foods", "Eaten",
    ]  # fmt: skip
    morning = book["Check-ins"].iloc[0]
    assert morning["Weight (kg)"] == 61.0 and morning["Fullness (1-10)"] == 1
    assert morning["Date"] == pd.Timestamp(2027, 5, 6) and morning["Days out"] == 3
    assert morning["Answered at"] == pd.Timestamp(2027, 5, 6, 6, 40)  # London is an hour ahead
    day = book["Targets"].set_index("Days out").loc[3]
    assert (day["Carbs eaten (g)"], day["Water drunk (L)"]) == (520, 3.4)
    # EU 1169/2011 Annex XIV: 4, 4, 9 and 2 kcal a gram, carbs without fibre.
    assert day["Energy set (kcal)"] == (
        4 * day["Carbs set (g)"] + 4 * day["Protein (g)"] + 9 * day["Fat (g)"]
        + 2 * day["Fibre (g)"]
    )  # fmt: skip
    decided = book["Decisions"].iloc[-1]
    assert decided["Time to the coach's answer (min)"] == 17
    assert decided["Reason"] and decided["Chance full (%)"] in (50, 70)
    week = book["Weeks"].iloc[0]
    assert (week["Look on the day"], week["Coach's note"]) == ("full", "more rice")
    assert week["Placing"] == "2nd of 9"
    eaten = book["Eaten"].iloc[0]
    assert (eaten["Energy (kcal)"], eaten["Carbs (g)"]) == (875, 193.75)


def test_the_weeks_stand_side_by_side_by_days_out(team: Team) -> None:
    found = read(book_for(team.coach, "c:files:2:xlsx"))["Weeks compared"]
    weight = found[found["Measure"] == "Weight (kg)"].set_index("Days out")
    assert weight["show 2027-05-09"].to_dict() == {3: 61.0, 2: 61.4, 1: 61.9, 0: 62.0}


@pytest.mark.parametrize("language", ["en", "de"])
def test_csv_says_the_same_as_the_workbook_in_either_language(
    ours: None, team: Team, language: str
) -> None:
    team.coach.language = language
    book = read(book_for(team.coach, "c:files:2:xlsx"))
    files = csvs(book_for(team.coach, "c:files:2:csv"))
    assert list(files) == ["readme", *(table.id for table in TABLES)]
    for sheet, (name, plain) in zip(book.values(), files.items(), strict=True):
        assert list(sheet.columns) == list(plain.columns), name
        for heading in plain.columns:
            if pd.api.types.is_numeric_dtype(sheet[heading]):
                assert plain[heading].equals(sheet[heading]) or (
                    (plain[heading] - sheet[heading]).abs().max() < 1e-9
                ), heading
            elif pd.api.types.is_datetime64_any_dtype(sheet[heading]):
                assert list(pd.to_datetime(plain[heading])) == list(sheet[heading])
            else:
                said = plain[heading].map(lambda v: from_csv(v) if isinstance(v, str) else v)
                assert list(said.fillna("")) == list(sheet[heading].fillna("")), heading
    headings = {heading for sheet in book.values() for heading in sheet.columns}
    assert ("Gewicht (kg)" in headings) == (language == "de")


def test_every_sheet_has_frozen_headings_and_prints_one_page_wide(team: Team) -> None:
    book = load_workbook(io.BytesIO(book_for(team.coach, "fl:all:xlsx")))
    for page in book.worksheets:
        assert page.freeze_panes == "A2"
        assert page.print_title_rows == "$1:$1"
        assert page.page_setup.orientation == "landscape" and page.page_setup.fitToWidth == 1
        assert page.page_setup.fitToHeight == 0 and page.sheet_properties.pageSetUpPr.fitToPage


@pytest.mark.parametrize("language", ["en", "de"])
def test_headings_and_texts_have_the_room_that_they_take(
    ours: None, team: Team, language: str
) -> None:
    """No program need raise a row: LibreOffice, which does not, printed one line over the other."""
    team.coach.language = language
    book = load_workbook(io.BytesIO(book_for(team.coach, "fl:all:xlsx")))
    for page in book.worksheets:
        widths = {letter: one.width for letter, one in page.column_dimensions.items()}
        for row in page.iter_rows():
            height = page.row_dimensions[row[0].row].height or 15
            for cell in (one for one in row if one.value and one.alignment.wrap_text):
                said, width = str(cell.value), widths[cell.column_letter]
                assert len(said) <= width * height / 15, (page.title, cell.coordinate)
                if cell.row == 1:
                    assert max(map(len, said.split())) <= width, said
                    assert cell.font.b and cell.font.name == page["A2"].font.name


def test_the_file_is_whole_as_its_standard_has_it(team: Team) -> None:
    """ECMA-376 Part 2 (packages: every part has a type, every relationship a target) and Part 1,
    18.3.1 (rows and cells in ascending order, each where it says; styles that are there).
    """
    with zipfile.ZipFile(io.BytesIO(book_for(team.coach, "fl:all:xlsx"))) as archive:
        parts = {name: ElementTree.fromstring(archive.read(name)) for name in archive.namelist()}
    types = list(parts["[Content_Types].xml"])
    named = {one.get("PartName", "").lstrip("/") for one in types}
    endings = {one.get("Extension") for one in types}
    for name, content in parts.items():
        assert name in named or name.rpartition(".")[2] in endings, name
        if name.endswith(".rels"):
            start = name.replace("_rels/", "").rpartition("/")[0]
            for relationship in content:
                target = relationship.attrib["Target"]
                whole = target.lstrip("/") if target[0] == "/" else f"{start}/{target}".lstrip("/")
                assert whole in parts, (name, target)
    styles = parts["xl/styles.xml"].find(f"{SHEETS}cellXfs")
    assert styles is not None
    for name in (name for name in parts if name.startswith("xl/worksheets/sheet")):
        rows = list(parts[name].iter(f"{SHEETS}row"))
        assert [int(row.attrib["r"]) for row in rows] == list(range(1, len(rows) + 1))
        for row in rows:
            places = [coordinate_from_string(cell.attrib["r"]) for cell in row]
            assert {number for _, number in places} == {int(row.attrib["r"])}
            columns = [column_index_from_string(letters) for letters, _ in places]
            assert columns == sorted(set(columns))
            assert all(int(cell.get("s", 0)) < len(styles) for cell in row)


def test_the_readme_explains_every_column_of_every_other_sheet(team: Team) -> None:
    book = read(book_for(team.coach, "c:files:2:xlsx"))
    about = book["Read me"]
    told = set(zip(about["Sheet"], about["Column"], strict=True))
    for title, sheet in book.items():
        if title != "Read me":
            assert {(title, heading) for heading in sheet.columns} <= told


def test_what_somebody_wrote_is_never_a_formula(team: Team) -> None:
    with team.world.session() as session:
        mornings = len(session.exec(select(CheckInRow.id)).all())
    assert mornings > 2
    for first in range(0, len(RISKY), mornings):
        is_never_a_formula(team, RISKY[first : first + mornings])


def is_never_a_formula(team: Team, texts: Sequence[str]) -> None:
    """Each of them the note of a morning."""
    with transaction(team.world.engine) as session:
        rows = session.exec(select(CheckInRow).order_by(col(CheckInRow.date))).all()
        for row, text in zip(rows, texts, strict=False):
            row.note = text
            session.add(row)
    book = load_workbook(io.BytesIO(book_for(team.coach, "c:files:2:xlsx")))
    cells = [cell for page in book.worksheets for row in page.iter_rows() for cell in row]
    assert not [cell.coordinate for cell in cells if cell.data_type == "f"]
    risky = [cell for cell in cells if isinstance(cell.value, str) and cell.value[:1] in "=+-@\t＝"]
    assert all(cell.quotePrefix for cell in risky)
    with zipfile.ZipFile(io.BytesIO(book_for(team.coach, "c:files:2:csv"))) as archive:
        plain = archive.read("check-ins.csv").decode("utf-8-sig")
    notes = pd.read_csv(io.StringIO(plain))["Note"]
    for note, text in zip(notes, texts, strict=False):
        assert from_csv(note).replace("\r", "\n") == text.replace("\r", "\n")
        assert not note.startswith(("=", "+", "-", "@", "\t", "\r", "＝"))


@given(
    st.text(
        st.characters(exclude_categories=["Cs", "Cc"]) | st.sampled_from("=+-@\t\r'"), max_size=12
    )
)
def test_a_csv_gives_back_any_text_and_none_that_computes(text: str) -> None:
    assert from_csv(for_csv(text)) == text
    assert not for_csv(text).startswith(
        ("=", "+", "-", "@", "\t", "\r", "\n", "＝", "＋", "－", "＠")
    )


def test_signs_that_no_sheet_can_hold_are_left_out(team: Team) -> None:
    with transaction(team.world.engine) as session:
        row = session.exec(select(CheckInRow).order_by(col(CheckInRow.id))).all()[0]
        # PostgreSQL keeps no NUL in a text, and none comes there (`bot.telegram.reading`).
        row.note = "a\x00b\x0bc" if is_sqlite(team.world.engine) else "a\x01b\x0bc"
        session.add(row)
    book = read(book_for(team.coach, "c:files:2:xlsx"))
    assert book["Check-ins"]["Note"].iloc[0] == "abc"


# Whose


def test_athletes_get_their_own_without_what_the_coach_keeps_for_themselves(team: Team) -> None:
    assert "keep it safe" not in text_of(team.athlete.writes("/files"))
    book = read(book_for(team.athlete, "fl:own:xlsx"))
    assert 61.0 in set(book["Check-ins"]["Weight (kg)"])
    assert "Coach's note" not in book["Weeks"].columns
    assert not [h for sheet in book.values() for h in sheet.columns if "seen by the coach" in h]
    assert "more rice" not in str([sheet.to_dict() for sheet in book.values()])


def test_an_ended_coaching_shows_the_coachs_note_to_nobody(team: Team) -> None:
    with transaction(team.world.engine) as session:
        profile = get_profile(session, 2)
        part(Turn(session, team.world.context), profile, session.get_one(Person, 1))
    book = read(book_for(team.athlete, "fl:own:xlsx"))
    assert "more rice" not in str([sheet.to_dict() for sheet in book.values()])
    assert "coach nobody" in text_of(team.coach.writes("/files"))


def test_a_coach_gets_all_of_their_own_in_one_file_and_nobody_elses(team: Team) -> None:
    with transaction(team.world.engine) as session:
        many_athletes(session, 1, 2, team.world.now, Alike(name="Same", answered=False))
        other = Person(
            telegram_user_id=150, chat_id=150, first_name="Zo", is_coach=True,
            created_at=team.world.now,
        )  # fmt: skip
        session.add(other)
        session.flush()
        many_athletes(
            session,
            other.id or 0,
            1,
            team.world.now,
            Alike(name="Foreign", first_chat=6000, answered=False),
        )
    book = read(book_for(team.coach, "fl:all:xlsx"))
    assert set(book["Check-ins"]["Athlete"]) == {"Mira"}
    for title in ("Weeks", "Targets", "Weeks compared"):
        names = book[title]["Athlete"]
        assert set(names) == {"Mira", "Same 0", "Same 1"}, title
        assert list(names) == sorted(names)
    assert list(book["Weeks compared"].columns[-1:]) == ["Week 1"]


def test_a_file_asked_for_before_the_coaching_ended_is_not_made_after_it(team: Team) -> None:
    team.coach.presses("c:files:2:xlsx")
    with transaction(team.world.engine) as session:
        profile = get_profile(session, 2)
        part(Turn(session, team.world.context), profile, session.get_one(Person, 1))
    assert files_for(team.coach, "sendDocument")[-1][1] == []


def test_there_is_nothing_to_hand_out_before_anything_was_planned(
    team_at: Callable[[datetime], Team],
) -> None:
    team = team_at(datetime(2027, 5, 1, 15, 0, tzinfo=UTC))
    with transaction(team.world.engine) as session:
        for table in (PlanRow, LimitsRow, EventRow):
            session.connection().execute(delete(table))
    assert "nothing to put into a file" in text_of(team.athlete.presses("fl:own:xlsx"))


def test_what_is_read_in_short_gives_the_reasons_and_odds_of_the_whole_decision() -> None:
    seen = set()
    for record in kept():
        whole, short = (
            read_as(record["decision"]) for read_as in (decision_from_dict, decided_in_short)
        )
        for units in ((WeightUnit.KG, VolumeUnit.L), (WeightUnit.LB, VolumeUnit.FLOZ_US)):
            assert reason(short, *units) == reason(whole, *units), record["name"]
        assert odds_in_force(short) == odds_in_force(whole), record["name"]
        assert (short.change_g, short.rule, short.bound) == (
            whole.change_g,
            whole.rule,
            whole.bound,
        )
        seen.add(whole.rule)
    assert len(seen) > 10, "kept decisions of many rules"


def test_a_share_shows_no_more_digits_than_anybody_could_vouch_for() -> None:
    shares = [column for table in TABLES for column in table.columns if column.unit == "%"]
    assert len(shares) > 3 and all(column.places == 0 for column in shares)
