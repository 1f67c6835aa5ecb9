"""`brimline rehearse`: a week played by hand, through a pipe and at a terminal."""

from __future__ import annotations

import os
import pty
import re
import select
import subprocess
import time
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

import pytest

from tests.support import started
from tests.support.once import once_a_run
from tests.support.started import Started

pytestmark = pytest.mark.soak

COMMAND = ("-m", "bot.cli", "rehearse")
PATIENCE_S = 60


def by_pipe(*lines: str, options: tuple[str, ...] = ()) -> subprocess.CompletedProcess[str]:
    return started.run(*COMMAND, *options, given="\n".join(lines), timeout=PATIENCE_S)


@pytest.fixture(scope="module")
def morning(tmp_path_factory: pytest.TempPathFactory) -> str:
    """A morning, a look at the coach's side, and a few things that are not there; no ":quit"."""
    return (once_a_run(tmp_path_factory, "rehearsed-by-hand", _play) / "shown").read_text()


def _play(folder: Path) -> None:
    done = by_pipe(
        ":who", ":next", "60.4", "#5", "3.5 L", "280", "all FINE",
        ":edit 60.6", ":coach", "/roster", "Orla", ":buttons", ":week",
        ":dance", "#99", "#", ":wait soon", ":athlete", ":menu", "blah", ":next",
    )  # fmt: skip
    assert (done.returncode, done.stderr) == (0, "")
    (folder / "shown").write_text(done.stdout)


def test_a_new_player_is_told_how_to_play(morning: str) -> None:
    head = morning[: morning.index("── ")]
    assert "You are Orla" in head and ":next" in head and "#2" in head and ":quit" in head
    assert len(head.splitlines()) < 14


def test_a_morning_is_answered_by_typing_by_number_and_by_label(morning: str) -> None:
    assert "── Saturday 24 October 07:00 in Galway · 09:00 in Helsinki" in morning
    assert "[5]" in morning and "[3.5 L]" in morning and "[All fine]" in morning
    assert "7 days out, Saturday 24 October: low day\n  Carbs 170 g (as planned)" in morning


def test_an_edited_message_changes_its_answer(morning: str) -> None:
    assert "(changes their last message to:)" in morning


def test_the_coachs_side_is_played_in_a_chat_of_its_own(morning: str) -> None:
    assert "You play Aino (coach) now." in morning
    assert re.search(r"\n {6}09:0\d  Brimline > Aino \(coach\)\n {8}Roster: 1 athlete", morning)
    assert "[Orla]" in morning and "#1 What I see" in morning


def test_the_week_is_shown_as_a_table(morning: str) -> None:
    assert re.search(
        r"^7    Sat 24 Oct  60.. kg     5 +3.5 L +170 g +170 g  held, steady", morning, re.M
    )


@pytest.mark.parametrize(
    "answer",
    [
        "There is no :dance here. :help lists what there is.",
        "The newest message with buttons has #1 to #",
        "Say how many minutes shall pass, such as  :wait 45",
        "I've passed that on to Aino.",
    ],
)
def test_what_is_not_there_gets_a_kind_line(morning: str, answer: str) -> None:
    assert answer in morning


def test_each_sees_the_menu_of_their_role(morning: str) -> None:
    menu = morning[morning.index("/checkin  This morning") :]
    assert "/roster" not in menu.split("blah")[0]


def test_the_end_of_input_ends_it_cleanly(morning: str) -> None:
    assert morning.rstrip().endswith("The rehearsal ends here.")
    assert "\x1b" not in morning


@pytest.mark.soak
def test_a_rehearsal_can_be_gone_on_with(tmp_path: Path) -> None:
    file = str(tmp_path / "week.sqlite3")
    assert by_pipe(":next", "60.4 5 3.5 fine", options=("--file", file)).returncode == 0
    again = by_pipe(":week", "Change an answer", options=("--file", file))
    assert "Going on where the last sitting ended" in again.stdout
    assert "── Saturday 24 October 07:00 in Galway" in again.stdout
    assert "7    Sat 24 Oct  60.4 kg" in again.stdout
    assert "Which answer shall we change?" in again.stdout


def test_a_bots_own_database_is_left_alone(sqlite_url: str) -> None:
    file = sqlite_url.removeprefix("sqlite:///")
    done = by_pipe(":next", options=("--file", file))
    assert done.returncode == 2
    assert "is not a rehearsal's, so it is left alone" in done.stderr
    assert done.stdout == ""


def test_a_file_that_is_no_database_is_left_alone(tmp_path: Path) -> None:
    file = tmp_path / "diary.txt"
    file.write_text("Dear diary, today I ate rice.")
    assert by_pipe(options=("--file", str(file))).returncode == 2
    assert file.read_text() == "Dear diary, today I ate rice."


def test_from_the_invitation_on_everything_is_played() -> None:
    process = Started(
        *COMMAND, "--from-invite", stdin=subprocess.PIPE, stdout=subprocess.PIPE, text=True
    )
    assert process.stdin is not None
    assert process.stdout is not None
    shown = ""
    while not (code := re.search(r"/join [0-9A-Z-]{19}", shown)):
        shown += process.stdout.readline()
    said, _ = process.communicate(f"{code[0]}\n/invite\n:quit\n", timeout=PATIENCE_S)
    assert process.returncode == 0
    assert "Welcome, Aino. You are set up here as a coach." in said
    assert "Aino invites you to check in here" in said


class Terminal:
    """A pseudo-terminal with the rehearsal in it."""

    def __init__(self, leader: int) -> None:
        self.leader = leader
        self.shown = ""

    def types(self, line: str, until: str) -> str:
        """Type a line and wait for this to appear; returns what has appeared since."""
        before = len(self.shown)
        os.write(self.leader, f"{line}\n".encode())
        return self.waits_for(until, since=before)

    def waits_for(self, words: str, since: int = 0) -> str:
        deadline = time.monotonic() + PATIENCE_S
        while words not in self.shown[since:]:
            ready, _, _ = select.select([self.leader], [], [], deadline - time.monotonic())
            assert ready, f"{words!r} did not appear; there is: {self.shown[since:]}"
            self.shown += os.read(self.leader, 65536).decode()
        return self.shown[since:]


@contextmanager
def terminal(file: Path, **environment: str) -> Iterator[tuple[Terminal, Started]]:
    leader, follower = pty.openpty()
    process = Started(
        *COMMAND,
        "--file",
        str(file),
        stdin=follower,
        stdout=follower,
        stderr=follower,
        env={**os.environ, "TERM": "xterm", **environment},
        start_new_session=True,
    )
    os.close(follower)
    try:
        yield Terminal(leader), process
    finally:
        process.kill()
        process.wait()
        os.close(leader)


def test_at_a_terminal_a_morning_is_played_and_the_coach_acknowledges(opened: Path) -> None:
    with terminal(opened, NO_COLOR="1") as (at, process):
        at.waits_for("Orla > ")
        at.types(":next", "Your weight this morning")
        at.types("60.4 5 5.5 fine", "Caution: Orla")
        at.types(":coach", "Aino (coach) > ")
        at.types(":week", "water over")
        at.types("Acknowledge", "Acknowledged by Aino")
        jumped = at.types(":next", "── Sunday 25 October 07:00 in Galway · 09:00 in Helsinki")
        assert "\x1b" not in jumped
        at.types(":quit", "The rehearsal ends here.")
        assert process.wait(PATIENCE_S) == 0


def test_colour_is_only_an_extra(opened: Path) -> None:
    with terminal(opened, NO_COLOR="") as (at, _):
        shown = at.waits_for("Orla > ")
        assert "\x1b[" in shown
