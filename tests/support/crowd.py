"""Many people in their chats at once: what each sees, and scripts that they play side by side.

A script is a generator: it acts as one person and yields for the bot to answer; those given to
`Crowd.together` take their steps at the same moments, as twenty athletes do at half past six.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, field, replace
from datetime import datetime
from fnmatch import fnmatchcase
from typing import Any

from tests.support.chats import Telegram
from tests.support.driven_bot import Call, DrivenBot

REACTION_S = 4.0  # what anything a person does takes, by the bot's clock

Script = Iterator[None]


@dataclass
class Shown:
    """A message as it stands in a chat."""

    message_id: int
    at: datetime
    method: str
    text: str
    buttons: dict[str, str]  # label -> data
    silent: bool = False
    result: Any = None


@dataclass
class Someone:
    """A person with a private chat."""

    crowd: Crowd
    chat: int
    name: str
    messages: dict[int, Shown] = field(default_factory=dict)  # as they stand now, the oldest first
    came: list[Shown] = field(default_factory=list)  # as they came, edits left out
    texts: list[str] = field(default_factory=list)  # everything shown, new or as an edit
    toasts: list[str] = field(default_factory=list)  # answers to taps
    looked: int = 0  # how many of `texts` were there before the last thing this person did
    last_message: int = 0

    def says(self, text: str) -> None:
        self.looked = len(self.texts)
        self.last_message = self.crowd.telegram.says(self.chat, text)

    def taps(self, label: str, message_id: int | None = None) -> None:
        """Press a button, where a star stands for anything: the newest, or that of a message."""
        self.looked = len(self.texts)
        message = self.newest(label) if message_id is None else self.messages[message_id]
        data = next(data for said, data in message.buttons.items() if _matches(said, label))
        tap = self.crowd.telegram.taps(self.chat, data, message.message_id)
        self.crowd.taps[tap] = self

    def edits(self, text: str) -> None:
        """Change what this person wrote last."""
        self.looked = len(self.texts)
        self.crowd.telegram.edits(self.chat, self.last_message, text)

    def sends(self, content: bytes, **more: str) -> None:
        """Send a picture, or with `name` another file."""
        self.looked = len(self.texts)
        self.crowd.telegram.sends_file(self.chat, content, **more)

    def stops_the_bot(self, *, with_word: bool = True) -> None:
        """Block the bot; Telegram tells it of that, or (`with_word` false) lets it find out."""
        self.crowd.telegram.cut_off(self.chat)
        if with_word:
            self.crowd.telegram.membership(self.chat, "kicked")

    def comes_back(self) -> None:
        self.looked = len(self.texts)
        self.crowd.telegram.cut_off(self.chat, blocked=False)
        self.crowd.telegram.membership(self.chat, "member")

    def newest(self, label: str) -> Shown:
        for message in reversed(self.messages.values()):
            if any(_matches(said, label) for said in message.buttons):
                return message
        raise AssertionError(f"{self.name} sees no button {label!r}; the last: {self.texts[-2:]}")

    def heard(self, part: str) -> str:
        """What was shown since this person's last act and has these words; AssertionError if not."""
        new = self.texts[self.looked :]
        for text in new:
            if part in text:
                return text
        raise AssertionError(f"{self.name} did not hear {part!r} but {new}")

    def between(self, begin: datetime, end: datetime) -> list[Shown]:
        """The messages that came in that time, edits left out."""
        return [shown for shown in self.came if begin <= shown.at < end]


class Crowd:
    """Everybody who is in a chat with the bot."""

    def __init__(self, telegram: Telegram, bot: DrivenBot) -> None:
        self.telegram = telegram
        self.bot = bot
        self.people: dict[int, Someone] = {}
        self.taps: dict[str, Someone] = {}
        self._read = 0

    def person(self, chat: int, name: str) -> Someone:
        self.telegram.names[chat] = name
        self.people[chat] = Someone(self, chat, name)
        return self.people[chat]

    async def together(self, *scripts: Script) -> None:
        """Play the scripts side by side, a step of each at a time, until all have ended."""
        playing = list(scripts)
        while playing:
            await self.bot.later(seconds=REACTION_S)
            self.look()
            playing = [script for script in playing if _goes_on(script)]
            await self.bot.drain()
            self.look()

    async def until(self, moment: datetime) -> None:
        await self.bot.until(moment)
        self.look()

    def look(self) -> None:
        """Everybody reads what has come."""
        for call in self.bot.line.calls[self._read :]:
            reader = self.reader(call)
            if reader is not None:
                _show(reader, call)
        self._read = len(self.bot.line.calls)

    def reader(self, call: Call) -> Someone | None:
        """Who sees this call: the person of its chat, or who pressed the button it answers."""
        if "callback_query_id" in call.fields:
            return self.taps.get(call.fields["callback_query_id"])
        return self.people.get(int(call.fields.get("chat_id", 0)))


def words_of(call: Call) -> str:
    """What is read of a call: its text, or the caption of what it sends."""
    for album in call.fields.get("media", ())[:1]:
        return str(album.get("caption", ""))
    return str(call.fields.get("text") or call.fields.get("caption") or "")


def buttons_of(call: Call) -> dict[str, str]:
    rows = (call.fields.get("reply_markup") or {}).get("inline_keyboard", [])
    return {button["text"]: button.get("callback_data", "") for row in rows for button in row}


def file_ids(shown: Shown, kind: str) -> Sequence[str]:
    """What Telegram calls the files of a message, or of an album's messages."""
    messages = shown.result if isinstance(shown.result, list) else [shown.result]
    files = [message[kind] for message in messages]
    return [(file[-1] if isinstance(file, list) else file)["file_id"] for file in files]


def _show(reader: Someone, call: Call) -> None:
    text = words_of(call)
    if call.method == "answerCallbackQuery":
        reader.toasts.append(text)
        return
    if call.method.startswith("edit"):
        shown = reader.messages[int(call.fields["message_id"])]
        shown.text, shown.buttons = text, buttons_of(call)
    elif call.method.startswith("send"):
        first = call.result[0] if isinstance(call.result, list) else call.result
        shown = Shown(
            message_id=first["message_id"],
            at=call.at,
            method=call.method,
            text=text,
            buttons=buttons_of(call),
            silent=bool(call.fields.get("disable_notification")),
            result=call.result,
        )
        reader.messages[shown.message_id] = shown
        reader.came.append(replace(shown))
    else:
        return
    reader.texts.append(text)


def _matches(said: str, label: str) -> bool:
    return fnmatchcase(said, label) if "*" in label else said == label


def _goes_on(script: Script) -> bool:
    try:
        next(script)
    except StopIteration:
        return False
    return True
