"""Somebody in a chat of the stand-in: says or taps something, and waits for the bot's words."""

from __future__ import annotations

from tests.support.chats import Telegram


class Talk:
    """Takes turns in one chat: says or taps something and waits for the bot's words."""

    def __init__(self, telegram: Telegram) -> None:
        self.telegram = telegram
        self._seen: dict[int, int] = {}

    def shown(self, chat: int) -> list[str]:
        """Every text the bot has put into the chat, new, as an edit or under a file."""
        return [
            call["fields"].get("text") or call["fields"]["caption"]
            for call in self.telegram.calls(chat)
            if call["method"] in ("sendMessage", "editMessageText", "sendDocument")
        ]

    def hears(self, chat: int, part: str) -> str:
        """Wait until something with these words is shown that was not shown at the last look."""
        seen = self._seen.get(chat, 0)
        found: list[str] = []

        def is_there() -> bool:
            new = self.shown(chat)[seen:]
            found[:] = [text for text in new if part in text]
            if found:
                self._seen[chat] = seen + new.index(found[0]) + 1
            return bool(found)

        try:
            self.telegram.wait_until(is_there, f"{part!r} in chat {chat}")
        except AssertionError as error:
            raise AssertionError(f"{error}; it showed {self.shown(chat)[seen:]}") from None
        return found[0]

    def says(self, chat: int, text: str, part: str) -> str:
        self.skip(chat)
        self.telegram.says(chat, text)
        return self.hears(chat, part)

    def taps(self, chat: int, label: str, part: str) -> str:
        self.telegram.wait_until(
            lambda: label in self.newest_buttons(chat), f"the button {label!r}"
        )
        self.skip(chat)
        self.telegram.taps_label(chat, label)
        return self.hears(chat, part)

    def taps_earlier(self, chat: int, label: str, part: str) -> str:
        """The same with a button that stands further up in the chat."""
        self.skip(chat)
        self.telegram.taps_label(chat, label)
        return self.hears(chat, part)

    def newest_buttons(self, chat: int) -> list[str]:
        """The labels under the newest message with buttons."""
        for call in reversed(self.telegram.calls(chat)):
            rows = (call["fields"].get("reply_markup") or {}).get("inline_keyboard", [])
            if rows:
                return [button["text"] for row in rows for button in row]
        return []

    def skip(self, chat: int) -> None:
        """What was shown so far is not what is waited for next."""
        self._seen[chat] = len(self.shown(chat))
