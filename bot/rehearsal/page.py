"""How a rehearsal looks on the terminal: who says what to whom, and when, without need of colour."""

from __future__ import annotations

import io
import os
import re
import shutil
import sys
import textwrap
from collections.abc import Iterable, Sequence
from datetime import datetime
from typing import TextIO
from zoneinfo import ZoneInfo

from bot.core.timing.clock import Clock
from bot.rehearsal.chats import Happening, Message
from bot.rehearsal.script import PLAYERS, Player, player_of

BOT = "Brimline"
TITLES = {"athlete": "", "coach": " (coach)", "contact": " (2nd contact)"}
WIDTH, NARROWEST, WIDEST = 100, 60, 120
MARGIN = "  "  # of what a chat says under the line that tells whose it is
INSET = {"athlete": 0, "coach": 6, "contact": 12}

_DIM, _BOLD, _PLAIN = "\x1b[2m", "\x1b[1m", "\x1b[0m"
_COLOURS = {"athlete": "\x1b[36m", "coach": "\x1b[33m", "contact": "\x1b[35m"}
_CODE = re.compile(r"\b(?:[0-9A-HJKMNP-TV-Z]{4}-){3}[0-9A-HJKMNP-TV-Z]{4}\b")


def full_name(player: Player) -> str:
    return player.name + TITLES[player.role]


class Page:
    """Prints what happens. `clock` is set once there is one.

    With `hide_codes`, one-time codes are printed as stars: they are different each time.
    """

    def __init__(self, out: TextIO | None = None, *, hide_codes: bool = False) -> None:
        self.clock: Clock | None = None
        self.quiet = False
        self.shown = 0  # messages of the bot's
        self._out = out or sys.stdout
        if isinstance(self._out, io.TextIOWrapper):
            self._out.reconfigure(errors="replace")  # for a terminal that lacks a character
        self._hide_codes = hide_codes
        terminal = self._out.isatty()
        self._coloured = terminal and not os.environ.get("NO_COLOR")
        columns = shutil.get_terminal_size((WIDTH, 24)).columns if terminal else WIDTH
        self.width = min(max(columns, NARROWEST), WIDEST)

    def show(self, happening: Happening, message: Message, before: Message | None) -> None:
        """A message as it arrives in, or changes on, somebody's screen.

        Of a change only what was added is printed, where that says it; buttons taken away, not at
        all.
        """
        self.shown += 1
        text = message.text
        if before is not None and text.startswith(before.text):
            text = text.removeprefix(before.text).lstrip("\n")
            if not text and not message.keys:
                return
        player = player_of(message.chat_id)
        remarks = {
            Happening.ARRIVED: "  (arrives silently)" if message.silent else "",
            Happening.CHANGED: "  (changed)" if text == message.text else "  (added to a message)",
            Happening.POPPED_UP: "  (pops up for a moment)",
        }
        head = f"{BOT} > {full_name(player)}{remarks[happening]}"
        self._block(player, head, text.split("\n"), self._keys(message))

    def again(self, message: Message) -> None:
        """A message that stands on somebody's screen already."""
        player = player_of(message.chat_id)
        head = f"{BOT} > {full_name(player)}  (from before)"
        self._block(player, head, message.text.split("\n"), self._keys(message))

    def said(self, player: Player, what: str) -> None:
        """What a player does in their own chat."""
        self._block(player, f"{full_name(player)} > {BOT}", what.split("\n"))

    def title(self, text: str) -> None:
        """A line across the page."""
        line = f"── {text} ".ljust(self.width, "─")
        self.plain(["", self._paint(line, _BOLD)])

    def time(self) -> None:
        """What the clocks show now, one for each place."""
        self.title(self.clocks())

    def clocks(self) -> str:
        places: dict[str, Player] = {}
        for player in PLAYERS:
            places.setdefault(player.city, player)
        return " · ".join(
            f"{self._local(player):%H:%M} in {city}"
            if number
            else f"{self._local(player):%A} {self._local(player).day} "
            f"{self._local(player):%B %H:%M} in {city}"
            for number, (city, player) in enumerate(places.items())
        )

    def note(self, text: str) -> None:
        """A word of the rehearsal's own, outside all chats."""
        wrapped = [self._wrapped(line, self.width - 2) for line in text.split("\n")]
        self.plain(
            ["", *(f"* {line}" if n == 0 else f"  {line}" for n, line in _numbered(wrapped))]
        )

    def plain(self, lines: Iterable[str]) -> None:
        """Lines as they are."""
        if self.quiet:
            return
        for line in lines:
            print(line.rstrip(), file=self._out)
        self._out.flush()

    def _block(
        self, player: Player, head: str, text: Sequence[str], keys: Sequence[str] = ()
    ) -> None:
        if self.quiet:
            return
        inset = " " * INSET[player.role]
        room = self.width - len(inset) - len(MARGIN)
        painted = self._paint(f"{self._local(player):%H:%M}  {head}", _COLOURS[player.role])
        lines = ["", inset + painted]
        for line in text:
            lines += [inset + MARGIN + part for part in self._wrapped(self._masked(line), room)]
        lines += [inset + MARGIN + self._paint(line, _DIM) for line in keys]
        self.plain(lines)

    def _keys(self, message: Message) -> list[str]:
        """The buttons, numbered through, in the rows in which they stand."""
        lines, number = [], 1
        for row in message.keys:
            shown = []
            for key in row:
                shown.append(f"#{number} {key.label}")
                number += 1
            lines += self._wrapped("   ".join(shown), self.width - 20)
        return lines

    def _wrapped(self, line: str, room: int) -> list[str]:
        hang = "  " if line.startswith(("• ", "- ")) else ""
        return textwrap.wrap(
            line, room, subsequent_indent=hang, break_on_hyphens=False, drop_whitespace=True
        ) or [""]

    def _masked(self, line: str) -> str:
        return _CODE.sub("****-****-****-****", line) if self._hide_codes else line

    def _paint(self, text: str, colour: str) -> str:
        return f"{colour}{text}{_PLAIN}" if self._coloured else text

    def _local(self, player: Player) -> datetime:
        assert self.clock is not None
        return self.clock.now().astimezone(ZoneInfo(player.zone))


def _numbered(wrapped: Sequence[Sequence[str]]) -> Iterable[tuple[int, str]]:
    return enumerate(line for part in wrapped for line in part)
