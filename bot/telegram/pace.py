"""How fast calls may go out.

Telegram's guidance: about one message a second in one chat, about 30 a second over all chats, 20 a
minute in a group (core.telegram.org/bots/faq#my-bot-is-hitting-limits-how-do-i-avoid-this). Short
bursts in a chat are let through, and conversation needs them: a tap leads to an edit and the next
question at once. So a chat may spend three calls ahead, and then one a second; over all chats it is
25 a second and five ahead, which is never more than 30 in any one second. Answers to taps and menus
put no message into a chat and count only towards the whole.
"""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime, timedelta

OVERALL_PER_SECOND, OVERALL_AHEAD = 25.0, 5
CHAT_PER_SECOND, CHAT_AHEAD = 1.0, 3
GROUP_PER_SECOND, GROUP_AHEAD = 20 / 60, 3
LEAVES_NO_MESSAGE = frozenset({"answerCallbackQuery", "setMyCommands", "sendChatAction"})
_CHATS_KEPT = 10_000


@dataclass(slots=True)
class Bucket:
    """Tokens that fill up at a steady rate; one call takes one."""

    per_second: float
    ahead: int
    tokens: float
    at: datetime

    def seconds_until_ready(self, now: datetime) -> float:
        self._fill(now)
        return max(0.0, (1.0 - self.tokens) / self.per_second)

    def take(self, now: datetime) -> None:
        self._fill(now)
        self.tokens -= 1.0

    def _fill(self, now: datetime) -> None:
        passed = max(0.0, (now - self.at).total_seconds())
        self.tokens = min(float(self.ahead), self.tokens + passed * self.per_second)
        self.at = now


class Pace:
    """Says how long a call has to wait, and remembers the calls made and the pauses ordered."""

    def __init__(self, now: datetime) -> None:
        self._overall = Bucket(OVERALL_PER_SECOND, OVERALL_AHEAD, OVERALL_AHEAD, now)
        self._chats: dict[int, Bucket] = {}
        self._paused_until: dict[int, datetime] = {}
        self._all_paused_until = now

    def seconds_until_ready(self, chat_id: int, method: str, now: datetime) -> float:
        """Seconds until this call may go; 0 for now."""
        waits = [
            (self._all_paused_until - now).total_seconds(),
            (self._paused_until.get(chat_id, now) - now).total_seconds(),
            self._overall.seconds_until_ready(now),
        ]
        if method not in LEAVES_NO_MESSAGE:
            waits.append(self._chat(chat_id, now).seconds_until_ready(now))
        return max(0.0, *waits)

    def take(self, chat_id: int, method: str, now: datetime) -> None:
        """Note a call as made."""
        self._overall.take(now)
        if method not in LEAVES_NO_MESSAGE:
            self._chat(chat_id, now).take(now)

    def pause(self, chat_id: int, span: timedelta, now: datetime) -> None:
        """Obey "retry after": this chat rests; a second chat told so meanwhile rests them all.

        Telegram does not say which of its limits was met. One chat alone met its own.
        """
        resting = {chat for chat, until in self._paused_until.items() if until > now}
        if resting - {chat_id}:
            self.pause_all(span, now)
        self._paused_until = {chat: self._paused_until[chat] for chat in resting}
        self._paused_until[chat_id] = max(now + span, self._paused_until.get(chat_id, now))

    def pause_all(self, span: timedelta, now: datetime) -> None:
        self._all_paused_until = max(self._all_paused_until, now + span)

    def _chat(self, chat_id: int, now: datetime) -> Bucket:
        if len(self._chats) > _CHATS_KEPT:
            self._chats = {
                chat: bucket
                for chat, bucket in self._chats.items()
                if bucket.seconds_until_ready(now) > 0 or bucket.tokens < bucket.ahead
            }
        if chat_id not in self._chats:
            rate, ahead = (
                (GROUP_PER_SECOND, GROUP_AHEAD) if chat_id < 0 else (CHAT_PER_SECOND, CHAT_AHEAD)
            )
            self._chats[chat_id] = Bucket(rate, ahead, ahead, now)
        return self._chats[chat_id]
