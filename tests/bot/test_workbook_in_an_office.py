"""The workbook in a spreadsheet program: LibreOffice without a window, where there is one.

`apt-get install --no-install-recommends libreoffice-calc-nogui`, then `pytest -m soak` with this file.
"""

from __future__ import annotations

import io
import re
import shutil
import subprocess
from collections.abc import Callable
from datetime import UTC, datetime
from pathlib import Path

import pandas as pd
import pytest
from pypdf import PdfReader

from tests.support.files import files_for
from tests.support.weeks import Team, gone_on
from tests.support.whole_week import lived

OFFICE = shutil.which("soffice")
pytestmark = [
    pytest.mark.soak,
    pytest.mark.timeout(600),
    pytest.mark.skipif(OFFICE is None, reason="LibreOffice is not installed"),
]
#: What the program says of the machine, not of the file.
OF_THE_MACHINE = "Warning: failed to launch javaldx - java may not function correctly"


@pytest.fixture
def team(team_at: Callable[[datetime], Team]) -> Team:
    return gone_on(team_at(datetime(2027, 5, 6, 5, 40, tzinfo=UTC)), lived)


def converted(content: bytes, to: str, folder: Path, of: str = "xlsx") -> bytes:
    """The file as the program writes it in another format; it may say nothing else about it."""
    source = folder / f"book.{of}"
    source.write_bytes(content)
    assert OFFICE is not None
    done = subprocess.run(
        [
            OFFICE, f"-env:UserInstallation=file://{folder / 'profile'}", "--headless",
            "--convert-to", to, "--outdir", str(folder / to), str(source),
        ],
        capture_output=True, text=True, check=False,
    )  # fmt: skip
    said = [line for line in done.stderr.splitlines() if line and line != OF_THE_MACHINE]
    assert (done.returncode, said) == (0, [])
    told = done.stdout.strip()
    assert re.fullmatch(r"convert \S+ -> \S+ using filter ?: .+", told), told
    return (folder / to / f"book.{to}").read_bytes()


def books(team: Team) -> dict[str, bytes]:
    """Every sheet that a coach is given, as XLSX."""
    found = {}
    for name, ask in (
        ("one", lambda: team.coach.presses("c:files:2:xlsx")),
        ("all", lambda: team.coach.presses("fl:all:xlsx")),
        ("numbers", lambda: (team.coach.writes("/numbers"), team.coach.presses("nb:xlsx"))),
        ("empty", lambda: team.coach.presses("c:past:2:xlsx")),
        ("plan", lambda: team.coach.presses("c:sheet:2:xlsx")),
    ):
        ask()
        found[name] = files_for(team.coach, "sendDocument")[-1][1][0].content
    return found


@pytest.mark.parametrize("language", ["en", "de"])
def test_it_opens_and_prints_without_a_warning_and_every_heading_is_there(
    ours: None, team: Team, language: str, tmp_path: Path
) -> None:
    team.coach.language = language
    for name, content in books(team).items():
        folder = tmp_path / name
        folder.mkdir()
        pages = PdfReader(io.BytesIO(converted(content, "pdf", folder))).pages
        printed = " ".join(" ".join(page.extract_text() for page in pages).split())
        for sheet in pd.read_excel(io.BytesIO(content), sheet_name=None).values():
            for heading in sheet.columns:
                for word in str(heading).split():
                    assert word in printed or word.startswith("Unnamed"), (name, heading)


def test_what_it_saves_again_holds_the_same_values(team: Team, tmp_path: Path) -> None:
    """Each cell as pandas reads it: out of our file, and out of the one that the program wrote."""
    for name, content in books(team).items():
        folder = tmp_path / name
        folder.mkdir()
        ours = pd.read_excel(io.BytesIO(content), sheet_name=None)
        # Into the open format and back, so that nothing of our file is left but what it understood.
        back = converted(converted(content, "ods", folder), "xlsx", folder, of="ods")
        theirs = pd.read_excel(io.BytesIO(back), sheet_name=None)
        assert list(theirs) == list(ours)
        for title, sheet in ours.items():
            pd.testing.assert_frame_equal(
                theirs[title], sheet, check_dtype=False, obj=f"{name}, {title}"
            )
