"""One sitting of a rehearsal, by hand or by the script, from opening its file to its checks."""

from __future__ import annotations

import asyncio
import tempfile
from collections.abc import Iterator, Sequence
from contextlib import contextmanager
from pathlib import Path

from sqlalchemy import Engine
from sqlmodel import Session, col, select

from bot.core.logs import set_up_logs
from bot.rehearsal.chats import Happening, Message
from bot.rehearsal.driver import Driver, NotARehearsal, Stuck
from bot.rehearsal.interactive import FROM_INVITE, HOW_TO_PLAY, Interactive
from bot.rehearsal.page import Page, full_name
from bot.rehearsal.play import Heard, Play, ScriptBroken
from bot.rehearsal.script import COACH, CURTAIN, PLAYERS, Act, Outcome
from bot.rehearsal.table import Row, table_lines, week_rows
from bot.rehearsal.week import OPENING, OUTCOMES, WEEK
from bot.store.tables.traffic import AgendaRow, InboxRow, OutboxRow
from bot.store.tables.week import DecisionRow
from engine.decision.decide import case_from_dict, decide, decision_as_dict


def check_outcomes(rows: Sequence[Row], wanted: Sequence[Outcome]) -> None:
    """Each day of the table holds what the script says it is to hold."""
    found = {row.days_out: row for row in rows}
    for outcome in wanted:
        row = found.get(outcome.days_out)
        if row is None:
            raise ScriptBroken(f"the table has no row for {outcome.days_out} days out")
        if row.carb_g != outcome.carb_g:
            found_g = "nothing" if row.carb_g is None else f"{row.carb_g:g} g"
            raise ScriptBroken(
                f"{outcome.days_out} days out was to be set to {outcome.carb_g:g} g, not {found_g}"
            )
        happened = "; ".join(row.happened)
        for words in outcome.happened:
            if words not in happened:
                raise ScriptBroken(
                    f'{outcome.days_out} days out was to hold "{words}", but holds: {happened}'
                )


def check_decisions_replay(engine: Engine) -> None:
    """Each stored case, decided again, gives the decision stored with it."""
    with Session(engine) as session:
        for row in session.exec(select(DecisionRow).order_by(col(DecisionRow.id))):
            if decision_as_dict(decide(case_from_dict(row.case))) != row.decision:
                raise ScriptBroken(f"decision {row.id} comes out differently when decided again")


def check_all_went_out(engine: Engine) -> None:
    """Nothing was set aside, given up or put off on the way."""
    with Session(engine) as session:
        updates = select(InboxRow.update_id).where(
            (col(InboxRow.status) != "done") | (col(InboxRow.attempts) > 0)
        )
        messages = select(OutboxRow.id).where(col(OutboxRow.status).not_in(("sent", "dropped")))
        duties = select(AgendaRow.id).where(col(AgendaRow.attempts) > 0)
        for what, found in (
            ("updates were set aside or failed", session.exec(updates).all()),
            ("messages were not sent", session.exec(messages).all()),
            ("timed duties failed", session.exec(duties).all()),
        ):
            if found:
                raise ScriptBroken(f"{len(found)} {what}")


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
