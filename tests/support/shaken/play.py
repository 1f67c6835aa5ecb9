"""A chapter: a week of two teams on a database of its own, with so many faults, until all settles."""

from __future__ import annotations

import asyncio
import json
import shutil
import tempfile
import time
from collections import Counter
from contextlib import suppress
from dataclasses import dataclass, field
from datetime import timedelta
from pathlib import Path

from sqlalchemy import Engine
from sqlmodel import Session, col, select

from bot.store.db import make_engine
from bot.store.tables.traffic import AgendaRow, InboxRow, OutboxRow
from tests.support.chats import TOKEN
from tests.support.shaken.checks import Witness, wrong
from tests.support.shaken.line import Ambush, Line, Trouble, Weather
from tests.support.shaken.people import BUTTONS, NAMES, Act, moments
from tests.support.shaken.place import Place
from tests.support.shaken.processes import Bots
from tests.support.shaken.schedule import Fault, Step, steps
from tests.support.shaken.wall import SPEED, Wall

#: Real seconds. What is put off for a minute of the bot's comes up within six.
PATIENCE_S = 180.0
MOST_WAITING = 8  # updates that the bot has not fetched, before all wait for it
MOST_BEHIND_S = 10.0
MOST_SPARE_BYTES = 30_000  # some pages
SENDS = frozenset({"sendMessage", "editMessageText"})
ALL_FAULTS = frozenset(Fault) - {Fault.LOCKED, Fault.RESTART, Fault.LINES_CUT, Fault.FULL}
#: By fault: the one way and the other.
_TROUBLES = {
    Fault.BAD_GATEWAY: (Trouble.BAD_GATEWAY,) * 2,
    Fault.SLOW_DOWN: (Trouble.SLOW_DOWN,) * 2,
    Fault.SLOW: (Trouble.SLOW,) * 2,
    Fault.CUT: (Trouble.CUT_BEFORE, Trouble.CUT_AFTER),
    Fault.SILENCE: (Trouble.SILENT_BEFORE, Trouble.SILENT_AFTER),
}


class NoRestError(AssertionError):
    """With all faults over, something still waits."""


@dataclass
class Chapter:
    """What came of it. `wrong`: what must not be so."""

    faults: Counter[str] = field(default_factory=Counter)
    met: Counter[str] = field(default_factory=Counter)  # calls that met trouble
    ended: Counter[int] = field(default_factory=Counter)
    logged: Counter[str] = field(default_factory=Counter)  # warnings and errors, by what they name
    cpu_s: float = 0.0  # of the bot processes that were killed or stopped
    starts: Counter[str] = field(default_factory=Counter)
    written: int = 0
    wrong: list[str] = field(default_factory=list)
    seconds: float = 0.0
    settling: float = 0.0


class Player:
    """Does the steps of one chapter."""

    def __init__(self, place: Place, seed: str, folder: Path) -> None:
        self._place = place
        self._folder = folder
        self._clock = folder / "clock"
        self.wall = Wall.begin(self._clock, moments()[0])
        self.line = Line(seed, self._kill)
        self.line.names = dict(NAMES)
        self.url = place.new()
        self.seed = seed
        self.chapter = Chapter()
        self.witness = Witness()
        self._beside: set[asyncio.Task[object]] = set()

    async def play(self, faults: int) -> Chapter:
        began = time.monotonic()
        await self.line.open()
        self.bots = Bots(self.line, self.url, self._clock, self._folder / "log")
        self.bots.begin()
        try:
            await self.bots.start(0)
            drawn = steps(self.seed, self._among())
            while (done := self.chapter.faults.total()) < faults:
                self._pass_time(done / faults)
                await self._step(next(drawn))
            ended = time.monotonic()
            await self._settle()
            self.chapter.settling = time.monotonic() - ended
            self.chapter.wrong += self._look()
        except NoRestError as waits:
            self.chapter.wrong.append(str(waits))
        finally:
            for task in self._beside:
                task.cancel()
            self._place.disk.clear()
            await self.bots.end()
            await self.line.close()
            self.wall.close()
        self.chapter.met += self.line.met
        self.chapter.ended += self.bots.ended
        self.chapter.starts += self.bots.starts
        self.chapter.cpu_s = self.bots.cpu_s
        self._read_log()
        self.chapter.seconds = time.monotonic() - began
        return self.chapter

    def _among(self) -> frozenset[Fault]:
        full = {Fault.FULL} if self._place.disk.small else set()
        return ALL_FAULTS | self._place.faults | full

    def _pass_time(self, share: float) -> None:
        """Be at the hour of the week that this share of the chapter comes to, where it is not past."""
        hours = moments()
        here = hours[min(int(share * len(hours)), len(hours) - 1)]
        if (ahead := here - self.wall.now()) > timedelta(0):
            self.wall.set_by(ahead)

    async def _step(self, step: Step) -> None:
        await self._progress()
        for act in step.acts:
            await self._act(act)
        await asyncio.sleep(step.after_s)
        if await self._happens(step):
            self.chapter.faults[step.fault] += 1

    async def _progress(self) -> None:
        """Where more is done to the bot than it can do, as on a busy machine, wait for it."""
        deadline = time.monotonic() + MOST_BEHIND_S
        while len(self.line.unconfirmed(TOKEN)) > MOST_WAITING and time.monotonic() < deadline:
            if not self.bots.running:
                await self.bots.start(0)
            await self.line.until_called(1, 0.1)

    async def _act(self, act: Act) -> None:
        if str(act.chat) in self.line.blocked:
            return
        if act.text:
            self.witness.said[await self.line.says(act.chat, act.text)] = (act, self.wall.now())
        elif found := self._newest_button(act.chat):
            self.witness.said[await self.line.taps(act.chat, *found)] = (act, self.wall.now())
        self.chapter.written += 1

    def _newest_button(self, chat: int) -> tuple[str, int] | None:
        for call in reversed(self.line.calls):
            if call["fields"].get("chat_id") != str(chat) or "refused" in call:
                continue
            for row in (call["fields"].get("reply_markup") or {}).get("inline_keyboard", []):
                for button in row:
                    if button["text"].startswith(BUTTONS):
                        return button["callback_data"], call["result"]["message_id"]
        return None

    # What happens

    def _kill(self, number: int) -> None:
        self.bots.kill(number)

    async def _happens(self, step: Step) -> bool:
        """Whether it came about: a process that is not there cannot be killed."""
        match step.fault:
            case Fault.KILL | Fault.KILL_AT_CALL | Fault.KILL_BOTH | Fault.OTHER | Fault.FREEZE:
                return await self._to_a_process(step)
            case Fault.FORWARD:
                self.wall.set_by(timedelta(minutes=1 + 120 * step.share))
            case Fault.BACK:
                self.wall.set_by(timedelta(minutes=-1 - (60 if step.sure else 10) * step.share))
            case Fault.FULL:
                self._place.disk.fill(int(MOST_SPARE_BYTES * step.share))
                self._later(self._cleared(2 * step.lasts_s))
            case Fault.LOCKED | Fault.RESTART | Fault.LINES_CUT:
                self._later(self._place.suffer(step.fault, step.lasts_s))
            case Fault.BLOCKED:
                return await self._blocked(step)
            case _:
                self._trouble(step)
                return False  # it counts once a call has met it
        return True

    def _trouble(self, step: Step) -> None:
        if all(one.until is not None for one in self.line.weather):
            trouble = _TROUBLES[step.fault][step.sure]
            self.line.weather.append(
                Weather(
                    trouble, step.lasts_s, 0.3 + 0.7 * step.share,
                    lambda: self.chapter.faults.update([step.fault]),
                )
            )  # fmt: skip

    async def _to_a_process(self, step: Step) -> bool:
        if not self.bots.running:
            await self.bots.start(step.number)
            return False
        number = step.number if step.number in self.bots.running else self.bots.running[0]
        other = 1 - number
        if step.fault is Fault.OTHER:
            if other not in self.bots.running:
                await self.bots.start(other)
                return True
            return await self.bots.stop(number)
        if step.share > 0.2:  # else amid its start, perhaps
            await self._until_up(number)
            await self.line.until_called(int(1 + 8 * step.share), 4 * step.lasts_s)  # amid work
        if step.fault is Fault.FREEZE:
            self._later(self.bots.freeze(number, step.lasts_s))
            return True
        if step.fault is Fault.KILL_AT_CALL:
            return await self._ambush(step, number)
        killed = self.bots.kill(number)
        if step.fault is Fault.KILL_BOTH:
            killed = self.bots.kill(other) or killed
        self._later(self._started(number, step.lasts_s / 2 if step.sure else 0.0))
        return killed

    async def _ambush(self, step: Step, number: int) -> bool:
        sprung = asyncio.Event()
        methods = SENDS if step.share < 0.7 else frozenset({"getUpdates"})
        self.line.ambush = Ambush(methods, step.sure, sprung)
        try:
            await asyncio.wait_for(sprung.wait(), 0.6)
            killed = True
        except TimeoutError:
            self.line.ambush = None
            killed = self.bots.kill(number)
        for one in (0, 1):
            if one not in self.bots.running and (one == number or step.sure):
                self._later(self._started(one, 0.0))
        return killed

    async def _until_up(self, number: int) -> None:
        with suppress(TimeoutError):
            await asyncio.wait_for(self.line.called[number].wait(), 1.5)

    async def _started(self, number: int, after_s: float) -> None:
        await asyncio.sleep(after_s)
        await self.bots.start(number)

    async def _cleared(self, after_s: float) -> None:
        await asyncio.sleep(after_s)
        self._place.disk.clear()
        await self._place.recover()

    async def _blocked(self, step: Step) -> bool:
        """An athlete stops the bot, and starts it again after a while."""
        chat = sorted(chat for chat in NAMES if chat >= 7100)[int(step.share * 6)]
        if str(chat) in self.line.blocked:
            return False
        if step.sure:
            await self.line.membership(chat, "kicked")
        else:  # it finds out
            self.line.blocked.add(str(chat))
        self.witness.blocked.add(chat)

        async def comes_back() -> None:
            await asyncio.sleep(step.lasts_s)
            await self.line.membership(chat, "member")

        self._later(comes_back())
        return True

    def _later(self, what: object) -> None:
        task = asyncio.ensure_future(what)  # type: ignore[call-overload]
        self._beside.add(task)
        task.add_done_callback(self._beside.discard)

    # The end

    async def _settle(self) -> None:
        """Nothing goes wrong any more, and one process runs: what waits has to come to its end."""
        while self._beside:
            await asyncio.gather(*self._beside)
        self.line.calm()
        self._place.disk.clear()
        await self._place.recover()
        await self.bots.start(0, fresh=False)
        engine = make_engine(self.url)
        deadline = time.monotonic() + PATIENCE_S
        try:
            while waits := (
                self.line.unconfirmed(TOKEN) or await asyncio.to_thread(self._open, engine)
            ):
                if time.monotonic() > deadline:
                    raise NoRestError(
                        f"after {PATIENCE_S * SPEED / 60:.0f} minutes there waits {waits[:9]}"
                    )
                await asyncio.sleep(0.2)
        finally:
            engine.dispose()

    def _open(self, engine: Engine) -> list[object]:
        """What waits to be done by now."""
        now = self.wall.now()
        with Session(engine) as session:
            return [
                *session.exec(select(InboxRow.update_id).where(InboxRow.status == "new")),
                *session.exec(
                    select(OutboxRow.id, OutboxRow.method, OutboxRow.problem, OutboxRow.not_before)
                    .where(col(OutboxRow.status).in_(("waiting", "sending")))
                ),
                *session.exec(
                    select(AgendaRow.id, AgendaRow.kind, AgendaRow.claimed_until).where(
                        AgendaRow.status == "waiting", AgendaRow.due_at <= now
                    )
                ),
            ]  # fmt: skip

    def _read_log(self) -> None:
        """What it warns of; nobody's name or words, and nothing that is no line of its own."""
        for line in (self._folder / "log").read_text().splitlines():
            if any(name in line for name in (*NAMES.values(), "fainted", "Carbs")):
                self.chapter.wrong.append(f"the log tells of people: {line[:300]}")
            try:
                told = json.loads(line)
            except ValueError:
                self.chapter.wrong.append(f"no line of a log: {line[:300]}")
            else:
                if told["level"] not in ("info", "debug"):
                    self.chapter.logged[f"{told['event']} [{told.get('error', '')}]"] += 1

    def _look(self) -> list[str]:
        engine = make_engine(self.url)
        try:
            with Session(engine) as session:
                found = wrong(session, self.line.calls, self.witness)
        finally:
            engine.dispose()
        return found + [
            f"a process ended with {code}" for code in self.bots.ended if code not in (0, 1)
        ]


#: Nothing is lost by it, since it is tried again; but no fault that is played is a reason for it.
_STRANGE = "IntegrityError"


def play(place: Place, seed: str, faults: int, keep: Path | None = None) -> Chapter:
    """One chapter; where something is wrong, its database and log are kept in that folder."""
    folder = Path(tempfile.mkdtemp(prefix="brimline-shaken-"))
    try:
        chapter = asyncio.run(Player(place, seed, folder).play(faults))
        if keep is not None and (chapter.wrong or any(_STRANGE in what for what in chapter.logged)):
            kept = keep / seed
            kept.mkdir(parents=True)
            shutil.copy(folder / "log", kept)
            place.keep(kept)
            (kept / "wrong.txt").write_text("\n".join(chapter.wrong))
        return chapter
    finally:
        shutil.rmtree(folder, ignore_errors=True)
