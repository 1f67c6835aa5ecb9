"""The debrief on one page: read back by libraries that have nothing to do with its writer."""

from __future__ import annotations

import io
from collections.abc import Callable, Iterator
from datetime import UTC, datetime
from typing import Any

import pikepdf
import pytest
from pypdf import PdfReader
from sqlmodel import select

from bot.store.db import transaction
from bot.store.tables.event import DebriefRow
from bot.store.tables.people import Person
from tests.support.files import files_for
from tests.support.weeks import Team, gone_on
from tests.support.whole_week import lived
from tests.support.world import text_of

LONG = "Wilhelmine-Charlotte von Hohenfels-Weidenbach"


@pytest.fixture
def team(team_at: Callable[[datetime], Team]) -> Team:
    """Mira's week is over and holds something of everything."""
    return gone_on(team_at(datetime(2027, 5, 6, 5, 40, tzinfo=UTC)), the_whole_week)


def the_whole_week(team: Team) -> None:
    lived(team)
    team.world.until(datetime(2027, 5, 11, 12, 0, tzinfo=UTC))


def handed(team: Team) -> bytes:
    team.coach.presses("c:files:2")
    team.coach.taps("Debrief as PDF")
    row, (document,) = files_for(team.coach, "sendDocument")[-1]
    assert row.payload["caption"] and document.name == "debrief-2027-05-09.pdf"
    return document.content


def elements(node: Any) -> Iterator[tuple[str, Any]]:
    """The structure tree in reading order: the kind of each element, and the element."""
    kids = node.get("/K")
    for kid in kids if isinstance(kids, pikepdf.Array) else [kids]:
        if isinstance(kid, pikepdf.Dictionary) and "/S" in kid:
            yield str(kid["/S"]), kid
            yield from elements(kid)


@pytest.mark.parametrize("language", ["en", "de"])
def test_it_is_one_sound_page_with_its_letters_embedded(
    ours: None, team: Team, language: str
) -> None:
    team.coach.language = language
    with pikepdf.open(
        io.BytesIO(handed(team)) if language == "en" else io.BytesIO(german(team))
    ) as pdf:
        assert pdf.check_pdf_syntax() == []
        assert len(pdf.pages) == 1
        fonts = list(pdf.pages[0]["/Resources"]["/Font"].values())
        assert fonts
        for font in fonts:
            (inner,) = font["/DescendantFonts"]
            assert "/FontFile2" in inner["/FontDescriptor"]
            assert "/ToUnicode" in font  # so that the text can be read aloud, copied and searched
        assert str(pdf.Root["/Lang"]) == language


def german(team: Team) -> bytes:
    team.coach.presses("c:handout:2")
    return files_for(team.coach, "sendDocument")[-1][1][0].content


def test_its_structure_is_told_and_covers_all_that_is_written(team: Team) -> None:
    """Tagged PDF: ISO 32000-1, 14.8; every piece of text is in the tree or marked as decoration."""
    with pikepdf.open(io.BytesIO(handed(team))) as pdf:
        root = pdf.Root["/StructTreeRoot"]
        assert bool(pdf.Root["/MarkInfo"]["/Marked"])
        assert bool(pdf.Root["/ViewerPreferences"]["/DisplayDocTitle"])
        assert "Debrief of Mira's show" in str(pdf.docinfo["/Title"])
        kinds = [kind for kind, _ in elements(root)]
        assert kinds[:3] == ["/Document", "/H1", "/P"]
        assert kinds.count("/Table") == 1 and kinds.count("/TR") == 9  # headings and eight days
        assert kinds.count("/TH") == 8 + 8 and kinds.count("/TD") == 8 * 7
        assert {"/H2", "/L", "/LI", "/LBody"} <= set(kinds)
        (figure,) = [element for kind, element in elements(root) if kind == "/Figure"]
        told = str(figure["/Alt"])  # ISO 32000-1, 14.9.3: what is read aloud in its place
        assert "Most carbs were set 3 days out: 525 g." in told
        assert "Weight went from 61.0 kg (3 days out) to 62.0 kg (event day)." in told
        numbered = [
            int(kid)
            for _, element in elements(root)
            for kid in element.get("/K", [])
            if not isinstance(kid, pikepdf.Dictionary)
        ]
        marks = [
            int(operands[1]["/MCID"])
            for operands, operator in pikepdf.parse_content_stream(pdf.pages[0])
            if str(operator) == "BDC"
        ]
        assert numbered == marks == list(range(len(marks)))
        parents = root["/ParentTree"]["/Nums"][1]
        assert len(parents) == len(marks)
        assert int(pdf.pages[0]["/StructParents"]) == int(root["/ParentTree"]["/Nums"][0]) == 0


def test_nothing_is_shown_outside_of_a_mark(team: Team) -> None:
    with pikepdf.open(io.BytesIO(handed(team))) as pdf:
        open_marks = 0
        for _, operator in pikepdf.parse_content_stream(pdf.pages[0]):
            open_marks += {"BDC": 1, "BMC": 1, "EMC": -1}.get(str(operator), 0)
            if str(operator) in ("Tj", "TJ", "S", "f", "B"):
                assert open_marks == 1
        assert open_marks == 0


def test_its_text_says_what_the_debrief_says_and_not_the_coachs_note(team: Team) -> None:
    text = PdfReader(io.BytesIO(handed(team))).pages[0].extract_text()
    plain = " ".join(text.split())
    assert "Debrief of Mira's show, Sun 9 May 2027" in plain
    assert "Athlete: Mira. Coach: Ravi." in plain and "full" in plain
    assert "3 days out" in plain and "61.0 kg" in plain and "520" in plain
    assert 'Mira says: "slept badly"' in plain
    assert "Placing: 2nd of 9" in plain and "Sleep: 6.5 h on average" in plain
    assert "more rice" not in plain and "History" not in plain
    assert "not medical advice" in plain


def test_however_much_there_is_to_say_it_stays_on_the_page(ours: None, team: Team) -> None:
    with transaction(team.world.engine) as session:
        session.get_one(Person, 2).first_name = LONG
        row = session.exec(select(DebriefRow)).one()
        row.athlete_said = "a long story of a week " * 45
    team.athlete.name = LONG
    team.coach.language = "de"
    with pikepdf.open(io.BytesIO(german(team))) as pdf:
        assert len(pdf.pages) == 1
    text = PdfReader(io.BytesIO(german(team))).pages[0].extract_text()
    assert "kein medizinischer Rat" in " ".join(text.split())  # the last line of the page is on it


def test_before_a_week_is_over_there_is_no_page(team_at: Callable[[datetime], Team]) -> None:
    team = team_at(datetime(2027, 5, 1, 15, 0, tzinfo=UTC))
    assert "has not finished a week" in text_of(team.coach.presses("c:handout:2"))
