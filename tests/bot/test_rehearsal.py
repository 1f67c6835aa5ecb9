"""`brimline rehearse --auto`: a whole scripted week, as whoever tries Brimline first sees it."""

from __future__ import annotations

import pickle
import resource
import subprocess
import sys
from collections.abc import AsyncIterator, Callable
from dataclasses import dataclass
from pathlib import Path
from typing import cast

import pytest
from sqlmodel import select

from bot.rehearsal.play import ScriptBroken
from bot.rehearsal.script import ATHLETE, COACH, Outcome, Presses, Reads, ReadsNothing, Until
from bot.rehearsal.sitting import check_all_went_out, check_decisions_replay, check_outcomes
from bot.rehearsal.table import week_rows
from bot.store.db import transaction
from bot.store.tables.traffic import OutboxRow
from bot.store.tables.week import DecisionRow
from tests.support import started
from tests.support.once import once_a_run
from tests.support.rehearsed import Sitting

STARTS_AT_MOST = 8  # the whole week's processor time, by that of only starting what plays it


#: As the command `brimline`, which notes how long it took to load what plays.
BRIMLINE = """
import sys, time
from pathlib import Path
import bot.rehearsal.sitting
from bot.cli import main
Path(sys.argv.pop()).write_text(str(time.process_time()))
sys.exit(main())
"""


@dataclass
class Played:
    code: int
    text: str
    problems: str
    start_s: float  # of the processor, both
    whole_s: float


def rehearse(*arguments: str, folder: Path) -> Played:
    began = resource.getrusage(resource.RUSAGE_CHILDREN)
    done = subprocess.run(
        [sys.executable, "-c", BRIMLINE, "rehearse", *arguments, str(folder / "start")],
        capture_output=True,
        text=True,
        check=False,
        timeout=110,
        stdin=subprocess.DEVNULL,
    )
    ended = resource.getrusage(resource.RUSAGE_CHILDREN)
    whole_s = ended.ru_utime + ended.ru_stime - began.ru_utime - began.ru_stime
    start_s = float((folder / "start").read_text())
    return Played(done.returncode, done.stdout, done.stderr, start_s, whole_s)


@pytest.fixture(scope="module")
def played(tmp_path_factory: pytest.TempPathFactory) -> Played:
    def play(folder: Path) -> None:
        (folder / "played").write_bytes(pickle.dumps(rehearse("--auto", folder=folder)))

    folder = once_a_run(tmp_path_factory, "whole-rehearsal", play)
    return cast(Played, pickle.loads((folder / "played").read_bytes()))


#: What plays or reads the whole week, a command of its own that takes as long as fifty tests.
WHOLE = pytest.mark.soak


@WHOLE
def test_a_whole_week_plays_in_time_and_without_a_complaint(played: Played) -> None:
    assert (played.code, played.problems) == (0, "")
    # Of the processor, since other tests may run beside this one; and by what a start costs here.
    assert played.whole_s < STARTS_AT_MOST * played.start_s


@WHOLE
def test_the_transcript_has_both_sides_with_their_own_local_times(played: Played) -> None:
    lines = [line.strip() for line in played.text.splitlines()]
    assert "07:00  Brimline > Orla" in lines
    assert "09:30  Aino (coach) > Brimline" in lines
    assert "07:00  Orla > Brimline" in lines
    assert "09:00  Brimline > Aino (coach)" in lines


@WHOLE
def test_the_prompt_comes_at_seven_on_both_sides_of_the_change_of_clocks(played: Played) -> None:
    # Ireland leaves summer time on 25 October 2026, 6 days out.
    for days_out in (7, 6, 5):
        at = played.text.index(f"Good morning, Orla. {days_out} days out.")
        assert played.text[:at].rstrip().splitlines()[-1] == "07:00  Brimline > Orla"


@WHOLE
@pytest.mark.parametrize(
    ("days_out", "held"),
    [
        ("6", "dropping too fast"),
        ("5", "caution: water over"),
        ("4", "check-in missed"),
        ("3", "flat in load, +25 g"),
        ("2", "flat in load, +50 g"),
        ("1", "spilled over, -100 g"),
        ("0", "full and sharp"),
    ],
)
def test_the_table_at_the_end_says_what_happened_each_day(
    played: Played, days_out: str, held: str
) -> None:
    table = played.text[played.text.rindex("── The week") :].splitlines()
    assert any(line.startswith(f"{days_out}    ") and held in line for line in table)


@WHOLE
def test_it_plays_the_same_each_time_and_shows_no_one_time_code(
    played: Played, tmp_path: Path
) -> None:
    assert rehearse("--auto", folder=tmp_path).text == played.text
    assert "/join ****-****-****-****" in played.text


def test_what_goes_otherwise_than_scripted_fails_at_once_and_says_where() -> None:
    other_script = (
        "import sys\n"
        "from bot.rehearsal import main, sitting\n"
        "from bot.rehearsal.script import COACH\n"
        "from bot.rehearsal.script import Act, Reads, Says\n"
        "steps = (Says(COACH, '/help'), Reads(COACH, 'Carbs 999 g'))\n"
        "sitting.OPENING = (Act('a test', steps),)\n"
        "sys.exit(main(['--auto']))"
    )
    done = started.run("-c", other_script)
    assert done.returncode == 1
    assert (
        'not as scripted: a test, step 2: Aino (coach) was to read "Carbs 999 g", but read: '
        in done.stderr
    )
    assert "as scripted." not in done.stdout


@WHOLE
def test_a_week_that_ends_otherwise_than_scripted_fails_and_says_where() -> None:
    other_script = (
        "import sys\n"
        "from bot.rehearsal import main, sitting\n"
        "from bot.rehearsal.script import Outcome\n"
        "sitting.WEEK, sitting.OUTCOMES = (), (Outcome(3, 999, ()),)\n"
        "sys.exit(main(['--auto']))"
    )
    done = started.run("-c", other_script)
    assert done.returncode == 1
    assert "not as scripted: 3 days out was to be set to 999 g, not 495 g" in done.stderr
    assert "as scripted." not in done.stdout


@pytest.fixture
async def sitting(after_a_morning: Callable[[], Sitting]) -> AsyncIterator[Sitting]:
    sitting = after_a_morning()
    yield sitting
    await sitting.driver.close()


async def test_each_kind_of_step_can_fail(sitting: Sitting) -> None:
    for broken, complaint in (
        (Reads(ATHLETE, "Carbs 999 g"), 'was to read "Carbs 999 g", but read: 60.4 kg'),
        (Reads(ATHLETE, "Carbs 170 g", silently=True), "was to read silently"),
        (ReadsNothing(ATHLETE), "was to read nothing, but read: 60.4 kg"),
        (Presses(COACH, "Approve 545 g"), 'has no button "Approve 545 g"'),
        (Until("sign-off-lapse"), 'no "sign-off-lapse" falls due'),
    ):
        with pytest.raises(ScriptBroken, match=complaint.replace("(", r"\(")):
            await sitting.plays(broken)


async def test_a_day_that_holds_something_else_than_written_is_found(sitting: Sitting) -> None:
    rows = week_rows(sitting.driver)
    check_outcomes(rows, (Outcome(7, 170, ("held, steady",)),))
    with pytest.raises(ScriptBroken, match="was to be set to 171 g, not 170 g"):
        check_outcomes(rows, (Outcome(7, 171, ()),))
    with pytest.raises(ScriptBroken, match='was to hold "spilled over"'):
        check_outcomes(rows, (Outcome(7, 170, ("spilled over",)),))


async def test_a_decision_that_no_longer_follows_from_its_case_is_found(sitting: Sitting) -> None:
    check_decisions_replay(sitting.driver.engine)
    with transaction(sitting.driver.engine) as session:
        row = session.exec(select(DecisionRow)).one()
        row.decision = row.decision | {"carb_g": 500.0}
        session.add(row)
    with pytest.raises(ScriptBroken, match="comes out differently"):
        check_decisions_replay(sitting.driver.engine)


async def test_a_message_that_did_not_go_out_is_found(sitting: Sitting) -> None:
    check_all_went_out(sitting.driver.engine)
    with transaction(sitting.driver.engine) as session:
        row = session.exec(select(OutboxRow).limit(1)).one()
        row.status = "failed"
        session.add(row)
    with pytest.raises(ScriptBroken, match="1 messages were not sent"):
        check_all_went_out(sitting.driver.engine)
