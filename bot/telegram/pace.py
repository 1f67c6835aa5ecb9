"""How fast calls may go out.

Telegram's guidance: about one message a second in one chat, about 30 a second over all chats, 20 a
minute in a group (core.telegram.org/bots/faq#my-bot-is-hitting-limits-how-do-i-avoid-this). Short
bursts in a chat are let through, and conversation needs them: a tap leads to an edit and the next
question at once. So a chat may spend three calls ahead, and then one a second; over all chats it is
25 a second and four ahead. Answers to taps and menus put no message into a chat and count only towards
the whole.

Several processes need not ask each other: each has its part of the whole by the shares of chats that
are its own (`bot/store/shares.py`), and a chat's pace is kept where the chat is sent to. With shares
comes one call for all of them together, and one for a chat, since who had it may have just spent
what was ahead. So in any one second it is 25, at most four that were ahead, and at most one more where
shares changed hands: never more than 30 over all processes, however they come, go or are killed.

Telegram's "retry after" stands in rows: all processes obey it, and those that start later. That a chat
rests stands in the row that was refused. That all of them do, since more than one was told so, is one
row that everybody reads before sending. What stands there is from when until when by the wall clock, so
that a clock that is set back ends it, and does not prolong it.
"""

from __future__ import annotations

from collections.abc import Collection, Sequence, Set
from dataclasses import dataclass
from datetime import datetime, timedelta

from sqlalchemy import bindparam
from sqlmodel import Session, col, select

from bot.store.shares import SHARES, share_of
from bot.store.tables import setting
from bot.store.tables.traffic import OutboxRow

OVERALL_PER_SECOND, OVERALL_AHEAD = 25.0, 4
CHAT_PER_SECOND, CHAT_AHEAD = 1.0, 3
GROUP_PER_SECOND, GROUP_AHEAD = 20 / 60, 3
LEAVES_NO_MESSAGE = frozenset({"answerCallbackQuery", "setMyCommands", "sendChatAction"})
NEVER_S = float("inf")
_CHATS_KEPT = 10_000
_NO_TIME_S = 1e-4  # sums of seconds differ in their last digits


@dataclass(slots=True)
class Bucket:
    """Tokens that fill up at a steady rate; one call takes one. `at` in seconds of a clock that only
    grows: a wall clock set back would leave everything waiting for it to catch up.
    """

    per_second: float
    ahead: float
    tokens: float
    at: float

    def seconds_until_ready(self, now: float) -> float:
        self._fill(now)
        if self.per_second == 0:
            return NEVER_S
        return max(0.0, (1.0 - self.tokens) / self.per_second)

    def take(self, now: float) -> None:
        self._fill(now)
        self.tokens -= 1.0

    def _fill(self, now: float) -> None:
        passed = max(0.0, now - self.at)
        self.tokens = min(self.ahead, self.tokens + passed * self.per_second)
        self.at = now

    def becomes(self, per_second: float, ahead: float, given: float, now: float) -> None:
        """From now on it fills up at this rate, to so many; `given` come along."""
        self._fill(now)
        self.per_second, self.ahead = per_second, ahead
        self.tokens = min(ahead, self.tokens + given)


class Pace:
    """Says how long a call has to wait, and remembers the calls made and the pauses ordered.

    Every `now` is in seconds of `Clock.monotonic`. At first no share is held.
    """

    def __init__(self, now: float) -> None:
        self._overall = Bucket(0.0, 0.0, 0.0, now)
        self._came: dict[int, float] = {}
        self._chats: dict[int, Bucket] = {}
        self._paused_until: dict[int, float] = {}
        self._all_paused_until = now

    def hold(self, shares: Collection[int], now: float) -> frozenset[int]:
        """These shares are held from now on. Returns those that were not before."""
        new = frozenset(shares) - self._came.keys()
        if new or len(shares) < len(self._came):
            part = len(shares) / SHARES
            self._overall.becomes(
                OVERALL_PER_SECOND * part, OVERALL_AHEAD * part, len(new) / SHARES, now
            )
            self._came = {share: self._came.get(share, now) for share in shares}
            self._chats = {
                chat: bucket
                for chat, bucket in self._chats.items()
                if share_of(chat) in self._came.keys() - new
            }
        return new

    @property
    def held(self) -> Set[int]:
        """The shares that are held."""
        return self._came.keys()

    def held_for(self, chat_id: int, now: float) -> float:
        """Seconds since the share of this chat came to be held."""
        return now - self._came.get(share_of(chat_id), now)

    def seconds_until_ready(self, chat_id: int, method: str, now: float) -> float:
        """Seconds until this call may go; 0 for now."""
        waits = [
            self._all_paused_until - now,
            self._paused_until.get(chat_id, now) - now,
            self._overall.seconds_until_ready(now),
        ]
        if method not in LEAVES_NO_MESSAGE:
            waits.append(self._chat(chat_id, now).seconds_until_ready(now))
        longest = max(waits)
        return longest if longest > _NO_TIME_S else 0.0

    def seconds_until_any(self, now: float) -> float:
        """Seconds until a call may go at all, whichever chat it is for; 0 for now."""
        wait = max(self._all_paused_until - now, self._overall.seconds_until_ready(now))
        return wait if wait > _NO_TIME_S else 0.0

    def take(self, chat_id: int, method: str, now: float) -> None:
        """Note a call as made."""
        self._overall.take(now)
        if method not in LEAVES_NO_MESSAGE:
            self._chat(chat_id, now).take(now)

    def pause(self, chat_id: int, span: timedelta, now: float) -> bool:
        """Obey "retry after": this chat rests. Returns whether another one does already.

        Telegram does not say which of its limits was met. One chat alone met its own.
        """
        resting = {chat for chat, until in self._paused_until.items() if until > now}
        self._paused_until = {chat: self._paused_until[chat] for chat in resting}
        self._paused_until[chat_id] = max(
            now + span.total_seconds(), self._paused_until.get(chat_id, now)
        )
        return bool(resting - {chat_id})

    def pause_all(self, span: timedelta, now: float) -> None:
        self._all_paused_until = max(self._all_paused_until, now + span.total_seconds())

    def _chat(self, chat_id: int, now: float) -> Bucket:
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
            came = self._came.get(share_of(chat_id), now)
            self._chats[chat_id] = Bucket(rate, ahead, 1.0, came)
        return self._chats[chat_id]


TOLD_TO_SLOW_DOWN = "RetryAfter"
_ALL_REST = "sending_rests"
_CLOCKS_DIFFER_BY = timedelta(seconds=5)
_NONE = timedelta()

_RESTING = select(OutboxRow.chat_id, OutboxRow.not_before).where(
    OutboxRow.status == "waiting",
    OutboxRow.problem == TOLD_TO_SLOW_DOWN,
    col(OutboxRow.not_before) > bindparam("now"),
)


def chats_that_rest(
    session: Session, shares: Collection[int], now: datetime
) -> Sequence[tuple[int, timedelta]]:
    """The chats of these shares that were told to slow down, and for how long yet."""
    resting = session.exec(_RESTING, params={"now": now}).all()
    return [(chat, until - now) for chat, until in resting if share_of(chat) in shares]


def another_chat_rests(session: Session, chat_id: int, now: datetime) -> bool:
    """Whether any other chat, whoever sends to it, has been told to slow down."""
    return any(chat != chat_id for chat, _ in session.exec(_RESTING, params={"now": now}))


def let_all_rest(session: Session, now: datetime, span: timedelta) -> None:
    """From now on nobody sends anything for so long."""
    value = f"{now.isoformat()} {(now + span).isoformat()}"
    setting.keep(session, _ALL_REST, value)


def all_rest_for(session: Session, now: datetime) -> timedelta:
    """How long nobody is to send anything yet; zero where there is no such order."""
    kept = setting.kept(session, _ALL_REST)
    if not kept:
        return _NONE
    since, until = map(datetime.fromisoformat, kept.split())
    return max(_NONE, until - now) if since - _CLOCKS_DIFFER_BY <= now else _NONE
