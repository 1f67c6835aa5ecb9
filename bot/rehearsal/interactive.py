"""Playing a week by hand: you type as the athlete, or as the coach, and move time on."""

from __future__ import annotations

import asyncio
import sys
from collections.abc import Callable, Coroutine
from datetime import timedelta
from typing import Any

from bot.core.timing.agenda import kind_alone
from bot.features import DUTIES
from bot.rehearsal.chats import Key, Message
from bot.rehearsal.driver import Driver
from bot.rehearsal.page import Page, full_name
from bot.rehearsal.play import find_key
from bot.rehearsal.script import ATHLETE, COACH, CONTACT, PLAYERS, Player
from bot.rehearsal.table import table_lines, week_rows

HOW_TO_PLAY = f"""\
You are {ATHLETE.name}, an invented athlete in {ATHLETE.city}. {COACH.name}, in {COACH.city}, coaches
you. The bot is the real one; only Telegram and the clock are replaced. Time stands still until
you move it on.
  Type what {ATHLETE.name} would type. Press a button by its number, such as #2, or by its label.
  :next    on to whatever falls due next: the first time, the morning's questions
  :coach   play {COACH.name} (:athlete to come back, :contact for the second contact {CONTACT.name})
  :week    the week as a table
  :help    all commands
  :quit    end, as does the end of input"""

FROM_INVITE = f"""\
This begins at the very beginning: you run the bot, and made an invitation for a coach, see below.
You are {COACH.name}, the coach. Type the /join line, then /contact and /invite, and go on from there.
{CONTACT.name} may be the second contact (:contact to play them), {ATHLETE.name} the athlete (:athlete).
  :next    on to whatever falls due next
  :help    all commands
  :quit    end, as does the end of input"""

HELP = """\
Anything that does not begin with ":" or "#" is typed into the chat of whoever you play.
  #2              press button 2 of the newest message that has buttons
  All fine        press the button with that label, on whichever message it stands
  :edit TEXT      change the last message you typed, as one can in Telegram
  :next           on to whatever falls due next
  :wait 45        let 45 minutes pass, doing what falls due meanwhile
  :athlete, :coach, :contact
                  whom you play
  :buttons        the messages whose buttons can be pressed, the newest last
  :menu           the command menu in this chat
  :week           the week as a table
  :who            who is who, and what time it is for each
  :help, :quit"""

LONGEST_WAIT_MIN = 7 * 24 * 60


class Interactive:
    """Reads lines until ":quit" or the end of input. `runner` has the driver's loop."""

    def __init__(
        self,
        driver: Driver,
        page: Page,
        runner: asyncio.Runner,
        *,
        plays_first: Player | None = None,
    ) -> None:
        self._driver = driver
        self._page = page
        self._runner = runner
        self._player = plays_first or ATHLETE
        # Somebody at a terminal sees what they type; in a pipe it has to be printed.
        self._echo = not sys.stdin.isatty()
        self._commands: dict[str, Callable[[str], None]] = {
            "next": self._next,
            "n": self._next,
            "wait": self._wait,
            "week": self._week,
            "who": self._who,
            "menu": self._menu,
            "buttons": self._buttons,
            "edit": self._edit,
            "help": lambda _rest: self._page.note(HELP),
        }

    def play(self) -> None:
        """Until the player has had enough."""
        while True:
            line = self._read()
            if line is None or line.strip().lower() in (":quit", ":q", ":exit"):
                break
            if line.strip():
                self._take(line.strip())
        self._page.note("The rehearsal ends here.")

    def _read(self) -> str | None:
        try:
            return input(self._prompt())
        except (EOFError, KeyboardInterrupt):
            print()
            return None
        except UnicodeDecodeError:
            return ":unreadable"

    def _prompt(self) -> str:
        if self._echo:
            return ""
        return f"\n{self._driver.now(self._player):%H:%M}  {full_name(self._player)} > "

    def _take(self, line: str) -> None:
        if line.startswith(":"):
            self._command(line[1:])
        elif line.startswith("#"):
            self._press_number(line[1:].strip())
        else:
            found = find_key(self._with_keys(), line, whole=True)
            if found is not None:
                self._press(*found)
            else:
                self._say(line)

    def _command(self, line: str) -> None:
        word, _, rest = line.partition(" ")
        role = next((player for player in PLAYERS if player.role == word.lower()), None)
        command = self._commands.get(word.lower())
        if role is not None:
            self._player = role
            self._page.note(f"You play {full_name(role)} now.{self._asked()}")
        elif command is not None:
            command(rest.strip())
        else:
            self._page.note(f"There is no :{word} here. :help lists what there is.")

    def _asked(self) -> str:
        newest = self._with_keys()[:1]
        return " :buttons shows what can be pressed." if newest else ""

    def _say(self, text: str) -> None:
        if self._echo:
            self._page.said(self._player, text)
        self._do(self._driver.says(self._player, text))

    def _edit(self, text: str) -> None:
        if not text:
            self._page.note("Write the new text after :edit, such as  :edit 61.4 7 3.5")
            return
        if not self._driver.has_written(self._player):
            self._page.note(f"{self._player.name} has not typed anything yet.")
            return
        if self._echo:
            self._page.said(self._player, f"(changes their last message to:) {text}")
        self._do(self._driver.edits(self._player, text))

    def _press_number(self, number: str) -> None:
        newest = self._with_keys()[:1]
        keys = [key for message in newest for row in message.keys for key in row]
        if not keys:
            self._page.note("There is no button to press in this chat just now.")
        elif not number.isdecimal() or not 1 <= int(number) <= len(keys):
            self._page.note(
                f"The newest message with buttons has #1 to #{len(keys)}. Older ones are pressed by "
                "their label; :buttons shows them all."
            )
        else:
            self._press(newest[0], keys[int(number) - 1])

    def _press(self, message: Message, key: Key) -> None:
        self._page.said(self._player, f"[{key.label}]")
        self._do(self._driver.presses(self._player, message, key))

    def _next(self, _rest: str) -> None:
        due = self._driver.next_due()
        if due is None:
            self._page.note(
                "Nothing falls due any more. Set a day as the coach (/roster), or :quit."
            )
            return
        self._driver.clock.move_to(max(due.at, self._driver.clock.now()))
        self._page.time()
        what = DUTIES[kind_alone(due.kind)].what
        self._do(
            self._driver.move_to(due.at), silence=f"Fell due, with nothing left to say: {what}."
        )

    def _wait(self, minutes: str) -> None:
        if not minutes.isdecimal() or not 1 <= int(minutes) <= LONGEST_WAIT_MIN:
            self._page.note("Say how many minutes shall pass, such as  :wait 45")
            return
        until = self._driver.clock.now() + timedelta(minutes=int(minutes))
        self._runner.run(self._driver.move_to(until))
        self._page.time()

    def _week(self, _rest: str) -> None:
        rows = week_rows(self._driver)
        if rows:
            self._page.plain(["", *table_lines(rows, self._page.width)])
        else:
            self._page.note("There is no week yet: the coach has not set the day and the plan.")

    def _who(self, _rest: str) -> None:
        lines = [
            f"{full_name(player)}, in {player.city}, where it is "
            f"{self._driver.now(player):%A %H:%M}{' (you)' if player == self._player else ''}"
            for player in PLAYERS
        ]
        self._page.note("\n".join(lines))

    def _menu(self, _rest: str) -> None:
        menu = self._driver.chats.menus.get(self._player.user_id, [])
        lines = [f"/{command}  {what}" for command, what in menu]
        self._page.note("\n".join(lines) or "This chat has no command menu yet.")

    def _buttons(self, _rest: str) -> None:
        messages = self._with_keys()
        if not messages:
            self._page.note("There is no button to press in this chat just now.")
        for message in reversed(messages):
            self._page.again(message)

    def _do(
        self, work: Coroutine[Any, Any, None], silence: str = "No answer comes to that."
    ) -> None:
        """Let it happen; `silence` is what to say where nobody was told anything."""
        shown = self._page.shown
        self._runner.run(work)
        if self._page.shown == shown:
            self._page.note(silence)

    def _with_keys(self) -> list[Message]:
        return self._driver.chats.with_keys(self._player.user_id)
