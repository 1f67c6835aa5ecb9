"""One sitting of a rehearsal, from opening its file to closing it: by hand, or by the script."""

from __future__ import annotations

import asyncio
import tempfile
from collections.abc import Iterator, Sequence
from contextlib import contextmanager
from pathlib import Path

from bot.core.logs import set_up_logs
from bot.rehearsal.chats import Happening, Message
from bot.rehearsal.checks import check_all_went_out, check_decisions_replay, check_outcomes
from bot.rehearsal.demo.cast import COACH, CURTAIN, PLAYERS
from bot.rehearsal.demo.opening import OPENING
from bot.rehearsal.demo.script import Act
from bot.rehearsal.demo.week import OUTCOMES, WEEK
from bot.rehearsal.driver import Driver, NotARehearsal, Stuck
from bot.rehearsal.interactive import FROM_INVITE, HOW_TO_PLAY, Interactive
from bot.rehearsal.page import Page, full_name
from bot.rehearsal.play import Heard, Play, ScriptBroken
from bot.rehearsal.table import table_lines, week_rows

__all__ = ["NotARehearsal", "ScriptBroken", "play_by_hand", "play_script"]

FILE_NAME = "rehearsal.sqlite3"


def play_script(file: str | None) -> None:
    """The whole scripted week. Raises ScriptBroken at the first thing that goes otherwise."""
    page = Page(hide_codes=True)
    with _opened(file, page) as (driver, heard, runner):
        if not driver.is_new:
            raise NotARehearsal(f"{file} holds a rehearsal already; --auto begins a new one.")
        page.plain([_who_is_who()])
        _play(runner, Play(driver, page, heard), (*OPENING, *WEEK))
        rows = week_rows(driver)
        page.title("The week")
        page.plain(["", *table_lines(rows, page.width), ""])
        check_outcomes(rows, OUTCOMES)
        check_decisions_replay(driver.engine)
        check_all_went_out(driver.engine)
        page.note("All of it happened as scripted.")


def play_by_hand(file: str | None, *, from_invite: bool) -> None:
    """A week that the person at the terminal plays."""
    page = Page()
    with _opened(file, page) as (driver, heard, runner):
        if driver.is_new and from_invite:
            page.note(FROM_INVITE)
            page.note(driver.coach_invitation())
        elif driver.is_new:
            page.quiet = True
            _play(runner, Play(driver, page, heard), OPENING)
            page.quiet = False
            page.note(HOW_TO_PLAY)
        else:
            page.note("Going on where the last sitting ended.  :help lists the commands.")
        page.time()
        Interactive(driver, page, runner, plays_first=COACH if from_invite else None).play()


@contextmanager
def _opened(file: str | None, page: Page) -> Iterator[tuple[Driver, Heard, asyncio.Runner]]:
    """A driver whose happenings are printed and kept, in `file` or a temporary one."""
    set_up_logs("ERROR", "console")
    heard: Heard = []

    def show(happening: Happening, message: Message, before: Message | None) -> None:
        heard.append((happening, message))
        page.show(happening, message, before)

    with tempfile.TemporaryDirectory(prefix="brimline-rehearsal-") as folder:
        driver = Driver(Path(file) if file else Path(folder) / FILE_NAME, show)
        page.clock = driver.clock
        with asyncio.Runner() as runner:
            try:
                yield driver, heard, runner
            finally:
                runner.run(driver.close())


def _play(runner: asyncio.Runner, play: Play, acts: Sequence[Act]) -> None:
    try:
        for act in acts:
            runner.run(play.act(act))
    except Stuck as stuck:
        raise ScriptBroken(str(stuck)) from stuck


def _who_is_who() -> str:
    who = "\n".join(f"  {full_name(player)}, in {player.city}" for player in PLAYERS)
    return f"A peak week with invented people, from {CURTAIN:%d %B %Y} on:\n{who}"
