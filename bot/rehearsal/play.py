"""Playing a script: each step is done, or checked, and the first that fails ends the play."""

from __future__ import annotations

import re
from collections.abc import Sequence

from bot.rehearsal.chats import Happening, Key, Message
from bot.rehearsal.driver import Driver
from bot.rehearsal.page import Page, full_name
from bot.rehearsal.script import (
    Act,
    Edits,
    Joins,
    Player,
    Presses,
    Reads,
    ReadsNothing,
    Says,
    Step,
    Until,
    Waits,
    player_of,
)

CODE = re.compile(r"/join ([0-9A-Z-]{19})")
MOST_EVENTS = 200

Heard = list[tuple[Happening, Message]]


class ScriptBroken(Exception):  # noqa: N818 - it says what the script is
    """Something did not happen as written: where, what was expected, and what was there."""


class Play:
    """Plays acts on a driver. `heard` is what has come up on screens, filled by the one who shows."""

    def __init__(self, driver: Driver, page: Page, heard: Heard) -> None:
        self._driver = driver
        self._page = page
        self._heard = heard

    async def act(self, act: Act) -> None:
        """Play one act. Raises ScriptBroken."""
        self._page.title(act.title)
        for number, step in enumerate(act.steps, start=1):
            try:
                await self._step(step)
            except ScriptBroken as broken:
                raise ScriptBroken(f"{act.title}, step {number}: {broken}") from None

    async def _step(self, step: Step) -> None:
        match step:
            case Reads() | ReadsNothing():
                self._check(step)
                return
            case _:
                self._heard.clear()
        match step:
            case Says(player, text):
                self._page.said(player, text)
                await self._driver.says(player, text)
            case Edits(player, text):
                self._page.said(player, f"(changes their last message to:) {text}")
                await self._driver.edits(player, text)
            case Presses(player, label):
                await self._press(player, label)
            case Joins(player, host):
                code = self._code(host)
                self._page.said(player, f"/join {code}")
                await self._driver.says(player, f"/join {code}")
            case Until(kind):
                await self._until(kind)
            case Waits(span):
                await self._driver.move_to(self._driver.clock.now() + span)

    async def _press(self, player: Player, label: str) -> None:
        messages = self._driver.chats.with_keys(player.user_id)
        found = find_key(messages, label)
        if found is None:
            there = ", ".join(key.label for m in messages[:1] for row in m.keys for key in row)
            raise ScriptBroken(
                f'{player.name} has no button "{label}" (the newest are: {there or "none"})'
            )
        self._page.said(player, f"[{found[1].label}]")
        await self._driver.presses(player, *found)

    def _code(self, host: Player | None) -> str:
        texts = (
            [self._driver.coach_invitation()]
            if host is None
            else [m.text for m in reversed(self._driver.chats.messages(host.user_id))]
        )
        code = next((found[1] for text in texts if (found := CODE.search(text))), None)
        if code is None:
            raise ScriptBroken(f"{host.name if host else 'the operator'} has no invitation to give")
        return code

    async def _until(self, kind: str) -> None:
        for _ in range(MOST_EVENTS):
            due = self._driver.next_due()
            if due is None:
                break
            await self._driver.move_to(due.at)
            if due.kind == kind:
                return
        raise ScriptBroken(f'no "{kind}" falls due')

    def _check(self, step: Reads | ReadsNothing) -> None:
        came = [
            (happening, message)
            for happening, message in self._heard
            if player_of(message.chat_id) == step.player
        ]
        if isinstance(step, ReadsNothing):
            if came:
                raise ScriptBroken(
                    f"{step.player.name} was to read nothing, but read: {_all(came)}"
                )
            return
        if not any(_fits(step, happening, message) for happening, message in came):
            how = "silently " if step.silently else ""
            raise ScriptBroken(
                f'{full_name(step.player)} was to read {how}"{step.words}", but read: {_all(came)}'
            )


def find_key(
    messages: Sequence[Message], label: str, *, whole: bool = False
) -> tuple[Message, Key] | None:
    """The button so labelled, whatever the case; unless `whole`, else the first that begins so."""
    wanted = label.strip().casefold()
    keys = [(message, key) for message in messages for row in message.keys for key in row]
    exact = [pair for pair in keys if pair[1].label.casefold() == wanted]
    begun = [pair for pair in keys if pair[1].label.casefold().startswith(wanted)]
    return next(iter(exact if whole else exact or begun), None)


def _fits(step: Reads, happening: Happening, message: Message) -> bool:
    aloud_enough = not step.silently or (message.silent and happening is Happening.ARRIVED)
    return step.words in message.text and aloud_enough


def _all(came: Heard) -> str:
    return " | ".join(message.text for _, message in came) or "nothing"
