"""The lines of the README for a notebook run as they stand there."""

from __future__ import annotations

import contextlib
import io
import re
import zipfile
from collections.abc import Callable
from datetime import UTC, datetime
from pathlib import Path

import pytest

from tests.support.files import files_for
from tests.support.weeks import Team
from tests.support.whole_week import lived

README = Path(__file__).parents[2] / "README.md"
BLOCKS = re.findall(r"```python\n(.*?)```", README.read_text(), flags=re.S)


@pytest.fixture
def folder(
    team_at: Callable[[datetime], Team], tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> Path:
    """Where the files of a lived week lie."""
    team = team_at(datetime(2027, 5, 6, 5, 40, tzinfo=UTC))
    lived(team)
    team.athlete.presses("fl:own:xlsx")
    (tmp_path / "mira-2027-05-11.xlsx").write_bytes(last_file(team))
    team.athlete.writes("/mydata")
    with zipfile.ZipFile(io.BytesIO(last_file(team))) as archive:
        (tmp_path / "data.json").write_bytes(archive.read("data.json"))
    monkeypatch.chdir(tmp_path)
    return tmp_path


def last_file(team: Team) -> bytes:
    return files_for(team.athlete, "sendDocument")[-1][1][0].content


def test_there_are_two_ways_in() -> None:
    assert len(BLOCKS) == 2
    assert all(len([line for line in block.splitlines() if line]) <= 5 for block in BLOCKS)


@pytest.mark.parametrize("block", BLOCKS, ids=["workbook", "json"])
def test_the_readmes_lines_show_the_mornings(folder: Path, block: str) -> None:
    said = io.StringIO()
    with contextlib.redirect_stdout(said):
        exec(compile(block, str(README), "exec"), {})
    assert "2027-05-06" in said.getvalue() and "61.0" in said.getvalue()
