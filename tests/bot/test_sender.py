"""From the outbox to Telegram, whatever Telegram answers.

Errors are as python-telegram-bot raises them; limits are those of
core.telegram.org/bots/faq#my-bot-is-hitting-limits-how-do-i-avoid-this
"""

from __future__ import annotations

import asyncio
import math
from collections.abc import Iterator
from datetime import UTC, datetime, timedelta
from typing import Any

import httpx
import pytest
from sqlalchemy import Engine
from sqlmodel import Session, col, func, select
from telegram.error import (
    BadRequest,
    ChatMigrated,
    Forbidden,
    InvalidToken,
    NetworkError,
    RetryAfter,
    TelegramError,
    TimedOut,
)

from bot.core.chat import outbox
from bot.core.chat.outbox import Button, Topic
from bot.core.timing.clock import DrivenClock
from bot.core.timing.clock_watch import ClockWatch, take_up_what_waits
from bot.core.turn import Context, Document, Turn
from bot.core.use_cases import UseCases
from bot.store.db import transaction
from bot.store.tables import setting
from bot.store.tables.traffic import VIEWS_WAIT, OutboxRow, TopicKind, Urgency
from bot.telegram.outcomes import Outcomes
from bot.telegram.sender import Sender
from bot.telegram.uploads import Uploads
from tests.bench.crew import counting
from tests.support.line import Line

START = datetime(2027, 6, 1, 7, tzinfo=UTC)
INES, MARA, TOMAS = 11, 12, 13
_NEXT_TRY = select(func.min(OutboxRow.not_before)).where(
    col(OutboxRow.status).in_(("waiting", "sending"))
)


def _note(session: Session, what: str, *about: int) -> None:
    setting.keep(session, what, setting.kept(session, what) + str(about))


def kept(session: Session, name: str) -> bool:
    """Whether what a file is made of is still there: here, all that is not noted as gone."""
    return setting.kept(session, f"gone:{name}") == ""


class Post:
    """A sender at work on a real database, a line that fails when told to, and a driven clock."""

    def __init__(self, engine: Engine) -> None:
        self.engine = engine
        self.line = Line()
        self.clock = DrivenClock(START - timedelta(minutes=1))
        self.sender = self.new_sender()

    async def up(self) -> None:
        """All chats are ours, for long enough that what may be sent ahead may."""
        await self.sender.step()
        self.clock.move_to(START)

    def new_sender(self) -> Sender:
        use_cases = UseCases(
            incoming=lambda turn: None,
            due=lambda turn, row: None,
            undeliverable=lambda turn, row: _note(turn.session, "gone", row.chat_id),
            moved=lambda turn, old, new: _note(turn.session, "moved", old, new),
            document=lambda turn, named: (
                Document(f"{named['make']}.jpg", str(named["make"]).encode())
                if kept(turn.session, named["make"])
                else None
            ),
        )
        return Sender(
            self.engine,
            self.line,
            self.clock,
            lambda pace: Outcomes(
                self.engine, use_cases, self.clock, lambda: Context(self.clock.now()), pace
            ),
            Uploads(self.engine, use_cases, lambda: Context(self.clock.now())),
        )

    def say(self, chat_id: int, text: str, *, buttons: outbox.Buttons = (), **how: Any) -> int:
        with transaction(self.engine) as session:
            row = outbox.say(
                Turn(session, Context(self.clock.now())), chat_id=chat_id, text=text,
                buttons=buttons, how=outbox.Delivery(**how),
            )  # fmt: skip
        assert row.id is not None
        return row.id

    def show(self, chat_id: int, *names: str) -> int:
        """Pictures, by what they are made of."""
        with transaction(self.engine) as session:
            row = outbox.send_pictures(
                Turn(session, Context(self.clock.now())), chat_id=chat_id, caption="this morning",
                pictures=[{"make": name} for name in names],
            )  # fmt: skip
        assert row.id is not None
        return row.id

    def forget(self, *names: str) -> None:
        with transaction(self.engine) as session:
            for name in names:
                setting.keep(session, f"gone:{name}", "yes")

    def edit(self, chat_id: int, text: str, **which: int) -> int:
        with transaction(self.engine) as session:
            row = outbox.edit(
                Turn(session, Context(self.clock.now())), outbox.Shown(chat_id, **which), text=text
            )
        assert row.id is not None
        return row.id

    def noted(self, what: str) -> str:
        """What the use cases were told, as they wrote it down."""
        with Session(self.engine) as session:
            return setting.kept(session, what)

    def row(self, row_id: int) -> OutboxRow:
        with Session(self.engine) as session:
            return session.get_one(OutboxRow, row_id)

    async def turn(self) -> float:
        """One look at the outbox, and the answers to what went out."""
        wait = await self.sender.step()
        await self.sender.drain()
        return wait

    async def run_for(self, span: timedelta) -> None:
        """Let time go by as the sender would see it."""
        end = self.clock.now() + span
        while True:
            before = len(self.line.calls)
            wait = await self.turn()
            if len(self.line.calls) > before or wait == 0:
                continue
            wait += self._looks_in_vain(wait, end)
            if self.clock.now() + timedelta(seconds=wait) > end:
                self.clock.move_to(end)
                return
            self.clock.advance(timedelta(seconds=wait))

    def _looks_in_vain(self, wait: float, end: datetime) -> int:
        """The seconds of those looks, one a second, at which no row may go yet: they are skipped."""
        first = self.clock.now() + timedelta(seconds=wait)
        until = min(self.next_try() or end, end)
        return max(0, math.ceil((until - first) / timedelta(seconds=1)))

    def next_try(self) -> datetime | None:
        """When the first of the open rows may go; None where there is none."""
        with Session(self.engine) as session:
            return session.exec(_NEXT_TRY).one()

    async def run_until_empty(self) -> None:
        for _ in range(10_000):
            await self.run_for(timedelta(seconds=1))
            if (next_try := self.next_try()) is None:
                return
            if next_try > self.clock.now():
                await self.run_for(next_try - self.clock.now())
        raise AssertionError("the outbox never emptied")


@pytest.fixture
async def post(any_engine: Engine) -> Any:
    post = Post(any_engine)
    await post.up()
    yield post
    await post.sender.close()


def _cut(kind: type[httpx.TransportError]) -> TelegramError:
    """A connection that ended so, as the library passes it on."""
    timed_out = issubclass(kind, httpx.TimeoutException)
    error: TelegramError = TimedOut() if timed_out else NetworkError(f"httpx.{kind.__name__}: ")
    error.__cause__ = kind("gone")
    return error


async def test_a_message_goes_out_once_and_its_id_is_kept(post: Post) -> None:
    row_id = post.say(INES, "Good morning")
    await post.turn()
    await post.turn()

    assert post.line.calls == [("sendMessage", {"chat_id": INES, "text": "Good morning"})]
    row = post.row(row_id)
    assert (row.status, row.sent_at, row.message_id) == ("sent", START, 500)


async def test_messages_of_a_chat_go_out_in_the_order_they_were_written(post: Post) -> None:
    for number in range(6):
        post.say(INES, str(number))
    await post.run_until_empty()

    assert post.line.texts() == ["0", "1", "2", "3", "4", "5"]


async def test_one_chat_gets_a_short_burst_and_then_one_message_a_second(post: Post) -> None:
    for number in range(8):
        post.say(INES, str(number))
    await post.run_for(timedelta(milliseconds=500))
    assert len(post.line.calls) == 3
    await post.run_for(timedelta(milliseconds=2500))
    assert len(post.line.calls) == 6


async def test_all_chats_together_get_at_most_thirty_messages_in_any_second(post: Post) -> None:
    times: list[datetime] = []
    call = post.line.call

    async def noted(method: str, payload: dict[str, Any], files: Any = None) -> Any:
        times.append(post.clock.now())
        return await call(method, payload, files)

    post.line.call = noted  # type: ignore[method-assign]
    with transaction(post.engine) as session:
        for chat in range(100):
            outbox.say(Turn(session, Context(START)), chat_id=1000 + chat, text="Morning")
    await post.run_until_empty()

    assert len(times) == 100
    assert max(sum(t <= u < t + timedelta(seconds=1) for u in times) for t in times) <= 30
    assert times[-1] - times[0] < timedelta(seconds=5)


async def test_an_answer_to_a_tap_overtakes_what_waits_in_the_chat(post: Post) -> None:
    for number in range(5):
        post.say(INES, str(number))
    with transaction(post.engine) as session:
        outbox.answer_tap(Turn(session, Context(START)), chat_id=INES, tap_id="t9")
    await post.turn()

    assert ("answerCallbackQuery", {"callback_query_id": "t9"}) in post.line.calls


async def test_a_chat_told_to_slow_down_rests_and_the_others_go_on(post: Post) -> None:
    post.line.fail(RetryAfter(30), on=INES)
    post.say(INES, "first")
    post.say(INES, "second")
    post.say(MARA, "other")
    await post.run_for(timedelta(seconds=29))
    assert post.line.texts() == ["first", "other"]
    await post.run_for(timedelta(seconds=3))
    assert post.line.texts(INES) == ["first", "first", "second"]


async def test_two_chats_told_to_slow_down_rest_everybody(post: Post) -> None:
    post.line.fail(RetryAfter(20), on=INES)
    post.line.fail(RetryAfter(20), on=MARA)
    post.say(INES, "a")
    post.say(MARA, "b")
    await post.turn()
    post.say(TOMAS, "c")
    await post.run_for(timedelta(seconds=19))
    assert post.line.texts(TOMAS) == []
    await post.run_for(timedelta(seconds=2))
    assert post.line.texts(TOMAS) == ["c"]


async def test_the_order_to_slow_down_outlives_a_restart(post: Post) -> None:
    post.line.fail(RetryAfter(30), on=INES)
    post.say(INES, "first")
    await post.turn()
    await post.sender.close()
    post.sender = post.new_sender()
    post.say(INES, "Warning", urgency=Urgency.URGENT)  # the chat rests, whatever is for it
    await post.run_for(timedelta(seconds=29))
    assert len(post.line.calls) == 1
    await post.run_for(timedelta(seconds=3))
    assert len(post.line.calls) == 3


async def test_that_all_are_to_slow_down_outlives_a_restart_and_ends_where_the_clock_is_set_back(
    post: Post,
) -> None:
    post.line.fail(RetryAfter(300), on=INES)
    post.line.fail(RetryAfter(300), on=MARA)
    post.say(INES, "a")
    post.say(MARA, "b")
    await post.turn()
    post.say(TOMAS, "c")
    await post.sender.close()
    post.sender = post.new_sender()
    await post.run_for(timedelta(seconds=60))
    assert post.line.texts(TOMAS) == []
    post.clock.set(START - timedelta(hours=1))
    await post.sender.close()
    post.sender = post.new_sender()
    with transaction(post.engine) as session:
        take_up_what_waits(session, post.clock.now())
    await post.run_for(timedelta(seconds=2))
    assert post.line.texts(TOMAS) == ["c"]


@pytest.mark.parametrize(
    "error",
    [
        Forbidden("Forbidden: bot was blocked by the user"),
        Forbidden("Forbidden: user is deactivated"),
        BadRequest("Chat not found"),
    ],
)
async def test_an_unreachable_person_is_reported_once_and_not_hammered(
    post: Post, error: TelegramError
) -> None:
    post.line.fail(error, on=INES)
    rows = [post.say(INES, str(number)) for number in range(4)]
    other = post.say(MARA, "other")
    await post.run_until_empty()

    assert post.noted("gone") == f"({INES},)"
    assert post.line.texts(INES) == ["0"]
    assert [post.row(row).status for row in rows] == ["failed"] * 4
    assert post.row(other).status == "sent"


async def test_somebody_who_comes_back_gets_what_is_written_from_then_on(post: Post) -> None:
    post.line.fail(Forbidden("Forbidden: bot was blocked by the user"), on=INES)
    post.say(INES, "before")
    await post.run_until_empty()
    post.say(INES, "after")
    await post.run_until_empty()

    assert post.line.texts(INES) == ["before", "after"]


async def test_a_chat_that_moved_is_followed_with_all_that_waits_for_it(post: Post) -> None:
    post.line.fail(ChatMigrated(-1005), on=-5)
    post.say(-5, "first")
    post.say(-5, "second")
    with transaction(post.engine) as session:
        outbox.set_menu(Turn(session, Context(START)), chat_id=-5, commands=[("week", "the week")])
    post.line.fail(TimedOut(), on="setMyCommands")  # so that it is still waiting at the move
    await post.run_until_empty()

    assert post.noted("moved") == "(-5, -1005)"
    assert post.line.texts(-1005) == ["first", "second"]
    menus = [payload for method, payload in post.line.calls if method == "setMyCommands"]
    assert menus[-1]["scope"] == {"type": "chat", "chat_id": -1005}


@pytest.mark.parametrize(
    "said",
    [
        "Message is not modified: specified new message content and reply markup are exactly the "
        "same as a current content and reply markup of the message"
    ],
)
async def test_an_edit_that_changes_nothing_is_as_good_as_made(post: Post, said: str) -> None:
    post.line.fail(BadRequest(said), on="editMessageText")
    row_id = post.edit(INES, "same", message_id=77)
    await post.run_until_empty()

    assert post.row(row_id).status == "sent"
    assert len(post.line.calls) == 1


async def test_a_tap_answered_too_late_is_left_at_that(post: Post) -> None:
    said = "Query is too old and response timeout expired or query id is invalid"
    post.line.fail(BadRequest(said), on="answerCallbackQuery")
    with transaction(post.engine) as session:
        row = outbox.answer_tap(Turn(session, Context(START)), chat_id=INES, tap_id="t9")
    await post.run_until_empty()

    assert row.id is not None
    assert post.row(row.id).status == "sent"


async def test_an_edit_of_a_deleted_message_comes_as_a_new_one_which_later_edits_change(
    post: Post,
) -> None:
    asked = post.say(INES, "How full?", buttons=[[Button("7", "f:1:7")]])
    await post.run_until_empty()
    post.line.fail(BadRequest("Message to edit not found"), on="editMessageText")
    post.edit(INES, "7, noted", outbox_id=asked)
    await post.run_until_empty()
    post.edit(INES, "8, noted", outbox_id=asked)
    await post.run_until_empty()

    assert post.line.calls[1:] == [
        (
            "editMessageText",
            {
                "chat_id": INES,
                "text": "7, noted",
                "message_id": 500,
                "reply_markup": {"inline_keyboard": []},
            },
        ),
        ("sendMessage", {"chat_id": INES, "text": "7, noted"}),
        (
            "editMessageText",
            {
                "chat_id": INES,
                "text": "8, noted",
                "message_id": 501,
                "reply_markup": {"inline_keyboard": []},
            },
        ),
    ]


async def test_an_edit_finds_the_message_that_its_row_sent(post: Post) -> None:
    asked = post.say(INES, "How full?")
    post.edit(INES, "7, noted", outbox_id=asked)
    await post.run_until_empty()

    method, payload = post.line.calls[-1]
    assert (method, payload["message_id"]) == ("editMessageText", 500)


async def test_a_message_that_is_refused_for_its_shape_fails_and_lets_the_next_through(
    post: Post,
) -> None:
    post.line.fail(BadRequest("Can't parse entities: unclosed tag"))
    broken = post.say(INES, "<b>broken")
    post.say(INES, "fine")
    await post.run_until_empty()

    assert post.row(broken).status == "failed"
    assert post.line.texts() == ["<b>broken", "fine"]


@pytest.mark.parametrize(
    "error", [NetworkError("Bad Gateway (502)"), _cut(httpx.ConnectError), _cut(httpx.PoolTimeout)]
)
async def test_what_surely_did_not_go_out_is_sent_again_however_often_it_fails(
    post: Post, error: TelegramError
) -> None:
    post.line.fail(*[error] * 5)
    row_id = post.say(INES, "first")
    post.say(INES, "second")
    await post.run_until_empty()

    assert post.row(row_id).status == "sent"
    assert post.line.texts() == ["first"] * 6 + ["second"]


async def test_a_server_out_of_order_is_asked_less_and_less_and_given_up_after_a_day(
    post: Post,
) -> None:
    post.line.fail(*[NetworkError("Bad Gateway (502)")] * 5000)
    row_id = post.say(INES, "first")
    await post.run_for(timedelta(minutes=1))
    assert 5 <= len(post.line.calls) <= 7  # after 1, 2, 4, ... seconds
    await post.run_for(timedelta(minutes=3))
    assert len(post.line.calls) <= 10  # and then once a minute
    post.clock.advance(timedelta(days=1))
    await post.run_for(timedelta(minutes=2))
    assert post.row(row_id).status == "failed"


async def test_an_alert_goes_out_as_soon_as_telegram_is_back_after_days_and_holds_up_no_later_one(
    post: Post,
) -> None:
    post.line.fail(*[NetworkError("Bad Gateway (502)")] * 40)
    old = post.say(INES, "Adem fainted", urgency=Urgency.URGENT)
    await post.run_for(timedelta(minutes=4))
    post.clock.advance(timedelta(days=3))
    await post.run_for(timedelta(minutes=2))
    assert post.row(old).status == "waiting"
    assert post.row(old).not_before > post.clock.now() + timedelta(minutes=5)
    post.line.failures.clear()
    new = post.say(INES, "Adem is dizzy", urgency=Urgency.URGENT)
    await post.run_for(timedelta(seconds=5))
    assert post.row(new).status == "sent"
    await post.run_until_empty()
    assert post.row(old).status == "sent"


async def test_an_alert_that_is_refused_for_a_month_is_given_up(post: Post) -> None:
    post.line.fail(*[NetworkError("Bad Gateway (502)")] * 40)
    row_id = post.say(INES, "Adem fainted", urgency=Urgency.URGENT)
    await post.run_for(timedelta(minutes=4))
    post.clock.advance(timedelta(days=31))
    await post.run_for(timedelta(minutes=2))
    assert post.row(row_id).status == "failed"


@pytest.mark.parametrize("kind", [httpx.ReadTimeout, httpx.ReadError, httpx.RemoteProtocolError])
async def test_what_may_have_gone_out_is_sent_three_times_at_most(
    post: Post, kind: type[httpx.TransportError]
) -> None:
    post.line.fail(*[_cut(kind)] * 10)
    row_id = post.say(INES, "first")
    await post.run_for(timedelta(minutes=5))

    assert post.row(row_id).status == "failed"
    assert post.line.texts() == ["first"] * 3


async def test_an_edit_of_unknown_outcome_is_made_again_as_often_as_it_takes(post: Post) -> None:
    post.line.fail(*[_cut(httpx.ReadTimeout)] * 6, on="editMessageText")
    row_id = post.edit(INES, "noted", message_id=77)
    await post.run_until_empty()

    assert post.row(row_id).status == "sent"


async def test_what_a_crash_left_underway_is_sent_again_at_once(post: Post) -> None:
    row_id = post.say(INES, "first")
    with transaction(post.engine) as session:
        session.get_one(OutboxRow, row_id).status = "sending"
    await post.turn()

    assert post.line.texts() == ["first"]
    assert post.row(row_id).status == "sent"


@pytest.mark.parametrize(
    ("urgency", "sent"), [(Urgency.ORDINARY, 3), (Urgency.STAGE_DAY, 3), (Urgency.URGENT, 8)]
)
async def test_what_one_kill_after_another_leaves_open_is_said_three_times_at_most_if_not_urgent(
    post: Post, urgency: Urgency, sent: int
) -> None:
    """As each kill comes after Telegram took it and before that was noted."""
    row_id = post.say(INES, "Good morning", urgency=urgency)
    for _ in range(8):
        await post.run_for(timedelta(seconds=5))
        with transaction(post.engine) as session:
            row = session.get_one(OutboxRow, row_id)
            row.status = "sending" if row.status == "sent" else row.status
    assert post.line.texts() == ["Good morning"] * sent
    assert post.row(row_id).status == ("failed" if sent == 3 else "sending")


async def test_a_newer_word_on_a_topic_drops_the_older_that_did_not_get_out(post: Post) -> None:
    post.line.fail(NetworkError("Bad Gateway (502)"), on=INES)
    old = post.say(INES, "300 g today", topic=Topic(TopicKind.TARGET, 1))
    await post.turn()
    new = post.say(INES, "320 g today", topic=Topic(TopicKind.TARGET, 1))
    await post.run_until_empty()

    assert post.line.texts() == ["300 g today", "320 g today"]  # the first was refused
    assert (post.row(old).status, post.row(new).status) == ("dropped", "sent")


async def test_a_word_overtaken_while_it_was_underway_is_not_sent_after_the_newer(
    post: Post,
) -> None:
    """The crash case: the row was `sending` when the newer one was written."""
    old = post.say(INES, "300 g today", topic=Topic(TopicKind.TARGET, 1))
    with transaction(post.engine) as session:
        session.get_one(OutboxRow, old).status = "sending"
    post.say(INES, "320 g today", topic=Topic(TopicKind.TARGET, 1))
    await post.run_until_empty()

    assert post.line.texts() == ["320 g today"]


async def test_an_edit_of_a_message_that_was_dropped_is_dropped_too(post: Post) -> None:
    old = post.say(INES, "How full?", topic=Topic(TopicKind.NOTES, 1))
    post.say(INES, "How sharp?", topic=Topic(TopicKind.NOTES, 1))
    post.edit(INES, "How full? Never mind.", outbox_id=old)
    await post.run_until_empty()

    assert post.line.texts() == ["How sharp?"]


async def test_a_refused_token_rests_everything_and_loses_nothing(post: Post) -> None:
    post.line.fail(InvalidToken("Unauthorized"))
    row_id = post.say(INES, "first")
    await post.turn()
    post.say(MARA, "second")
    await post.run_for(timedelta(seconds=59))
    assert len(post.line.calls) == 1
    await post.run_for(timedelta(seconds=5))
    assert post.row(row_id).status == "sent"


async def test_an_error_that_nobody_foresaw_keeps_the_message(post: Post) -> None:
    post.line.fail(ValueError("?"))
    row_id = post.say(INES, "first")
    await post.run_until_empty()

    assert post.row(row_id).status == "sent"


async def test_files_are_made_when_they_are_sent_and_the_row_holds_none_of_them(post: Post) -> None:
    row_id = post.show(INES, "front", "side")
    await post.turn()

    assert post.line.uploads == [{"picture0": b"front", "picture1": b"side"}]
    assert post.line.calls == [
        (
            "sendMediaGroup",
            {
                "chat_id": INES,
                "media": [
                    {"type": "photo", "media": "attach://picture0", "caption": "this morning"},
                    {"type": "photo", "media": "attach://picture1"},
                ],
            },
        )
    ]
    row = post.row(row_id)
    assert (row.status, row.message_id) == ("sent", 500)
    assert row.attached == {
        "picture0": {"make": "front", "language": "en"},
        "picture1": {"make": "side", "language": "en"},
    }


async def test_a_file_is_made_anew_when_the_line_dies(post: Post) -> None:
    post.show(INES, "front")
    post.line.fail(NetworkError("down"), on="sendPhoto")
    await post.run_until_empty()

    assert post.line.uploads == [{"photo": b"front"}]
    assert [method for method, _ in post.line.calls] == ["sendPhoto", "sendPhoto"]


async def test_a_picture_that_the_server_fails_on_holds_up_no_alert_behind_it(post: Post) -> None:
    post.show(INES, "front")
    post.say(INES, "Warning")
    post.line.fail(*[NetworkError("Internal Server Error")] * 5, on="sendPhoto")
    await post.run_for(timedelta(seconds=3))
    assert post.line.texts() == ["Warning"] and not post.line.uploads

    await post.run_until_empty()
    assert post.line.uploads == [{"photo": b"front"}]


async def test_what_is_gone_by_then_is_left_out_and_the_caption_stays(post: Post) -> None:
    post.show(INES, "front", "side", "back")
    post.show(MARA, "front", "side")
    nothing_left = post.show(TOMAS, "front")
    post.forget("front")
    await post.turn()

    # The two go out side by side, so either may be first.
    assert sorted(post.line.uploads, key=len) == [
        {"photo": b"side"},
        {"picture1": b"side", "picture2": b"back"},
    ]
    single, album = sorted(post.line.calls, key=lambda call: "media" in call[1])
    assert [item.get("caption") for item in album[1]["media"]] == ["this morning", None]
    assert single == ("sendPhoto", {"chat_id": MARA, "caption": "this morning"})
    assert post.row(nothing_left).status == "dropped"


async def test_what_is_urgent_overtakes_all_that_waits(post: Post) -> None:
    for chat in range(100, 160):
        post.say(chat, "your target")
    for number in range(10):
        post.say(MARA, f"a note, {number}")
    post.say(MARA, "Warning: she fainted", urgency=Urgency.URGENT)

    await post.turn()

    assert post.line.texts(MARA)[0] == "Warning: she fainted"


async def test_a_rush_is_not_looked_through_again_and_again(post: Post) -> None:
    """Each look would lock what waits, and whoever notes what was sent would wait for that."""
    for chat in range(100, 250):
        about = Topic(TopicKind.TARGET, chat)
        post.say(chat, "your target", topic=about)
    with counting(post.engine) as asked:
        await post.turn()
    sent = len(post.line.calls)
    assert 0 < sent < 10
    assert len(asked) < 10 * sent

    with counting(post.engine) as asked:
        await post.turn()
    assert asked == [] and len(post.line.calls) == sent


def test_which_are_first_is_found_once_by_a_plan_that_was_made_while_nothing_waited(
    postgres_engine: Engine,
) -> None:
    """It is kept for as long as the connection is: once for each row that waits, a look takes seconds.

    What is found once is called an InitPlan (PostgreSQL's documentation, 14.1.2).
    """
    with postgres_engine.connect() as connection, Session(connection) as session:
        for _ in range(7):  # psycopg prepares what it puts for the sixth time
            assert list(Sender.heads(session, START)) == []
        (prepared,) = connection.exec_driver_sql(
            "SELECT statement FROM pg_prepared_statements WHERE strpos(statement, 'min(outbox') > 0"
        ).scalars()
        explain = f"EXPLAIN (GENERIC_PLAN, FORMAT JSON) {prepared}".replace("%", "%%")
        (whole,) = connection.exec_driver_sql(explain).scalar_one()
    of_each_chat = [
        ways for kind, ways in _nodes(whole["Plan"]) if kind in ("Aggregate", "Group", "Unique")
    ]
    assert of_each_chat and all("InitPlan" in ways for ways in of_each_chat)


def _nodes(node: dict[str, Any], *ways: str) -> Iterator[tuple[str, tuple[str, ...]]]:
    """Each node of a plan, and how it and those above it hang together."""
    ways = (*ways, node.get("Parent Relationship", ""))
    yield node["Node Type"], ways
    for below in node.get("Plans", ()):
        yield from _nodes(below, *ways)


async def test_a_stage_day_goes_before_mornings_and_views_and_pictures_after_them(
    post: Post,
) -> None:
    post.show(101, "front")
    post.say(102, "the week", urgency=Urgency.VIEW)
    for chat in range(110, 150):
        post.say(chat, "your target")
    post.say(103, "pump up", urgency=Urgency.STAGE_DAY)

    await post.run_until_empty()

    order = [payload["chat_id"] for _, payload in post.line.calls]
    assert order.index(103) < 5  # so many go at once
    assert order[-2:] in ([101, 102], [102, 101])


async def test_a_view_or_a_picture_that_has_waited_for_long_goes_among_the_mornings_behind_danger(
    post: Post,
) -> None:
    post.show(101, "front")
    post.say(102, "the week", urgency=Urgency.VIEW)
    post.clock.advance(VIEWS_WAIT)
    post.show(103, "side")
    for chat in range(110, 150):
        post.say(chat, "your target")
    post.say(104, "she fainted", urgency=Urgency.URGENT)

    await post.run_until_empty()

    order = [payload["chat_id"] for _, payload in post.line.calls]
    assert order.index(104) < 5  # so many go at once
    assert max(order.index(101), order.index(102)) < 5
    assert order[-1] == 103


async def test_in_a_chat_what_waits_behind_a_view_comes_after_it(post: Post) -> None:
    post.say(MARA, "the week", urgency=Urgency.VIEW)
    post.say(MARA, "your target")
    post.say(MARA, "pump up", urgency=Urgency.STAGE_DAY)

    await post.run_until_empty()

    assert post.line.texts(MARA) == ["the week", "your target", "pump up"]


async def test_an_edit_of_something_urgent_does_not_come_before_it(post: Post) -> None:
    warned = post.say(MARA, "Warning: she fainted", urgency=Urgency.URGENT)
    post.edit(MARA, "Warning: she fainted. Seen by Tomas.", outbox_id=warned)

    await post.run_until_empty()

    methods = [method for method, payload in post.line.calls if payload.get("chat_id") == MARA]
    assert methods == ["sendMessage", "editMessageText"]


async def set_clock(post: Post, span: timedelta) -> None:
    """Somebody sets the machine's clock; whatever watches it has its next look."""
    watch = ClockWatch(post.engine, post.clock, lambda: None)
    post.clock.set(post.clock.now() + span)
    looking = asyncio.create_task(watch.look())
    await asyncio.sleep(0)
    post.clock.advance(timedelta(seconds=1))
    await looking


async def test_a_clock_set_back_silences_nobody(post: Post) -> None:
    for number in range(5):
        post.say(MARA, f"before, {number}")
    await post.turn()
    await set_clock(post, timedelta(minutes=-10))
    post.say(INES, "after")

    await post.run_for(timedelta(seconds=8))

    assert post.line.texts(INES) == ["after"]
    assert len(post.line.texts(MARA)) == 5


async def test_a_clock_set_back_while_no_process_was_there_silences_nobody(post: Post) -> None:
    for number in range(5):
        post.say(MARA, f"before, {number}")
    post.clock.set(post.clock.now() - timedelta(minutes=15))
    await watch_begins(post)

    await post.run_for(timedelta(seconds=8))

    assert len(post.line.texts(MARA)) == 5


async def watch_begins(post: Post) -> None:
    """A process is started, and looks at the clock for the first time."""
    looking = asyncio.create_task(ClockWatch(post.engine, post.clock, lambda: None).look())
    await asyncio.sleep(0)
    post.clock.advance(timedelta(seconds=1))
    await looking


async def test_what_is_put_off_for_good_reason_is_left_so_when_a_process_is_started(
    post: Post,
) -> None:
    post.line.fail(RetryAfter(30), on=MARA)
    row = post.say(MARA, "an alert")
    await post.turn()
    before = post.row(row).not_before
    await watch_begins(post)
    assert post.row(row).not_before == before > post.clock.now()


async def test_what_waits_for_its_next_try_is_not_held_by_a_clock_set_back(post: Post) -> None:
    post.line.fail(RetryAfter(30), on=MARA)
    row = post.say(MARA, "an alert")
    await post.turn()
    await set_clock(post, timedelta(hours=-1))

    await post.run_for(timedelta(seconds=40))

    assert post.row(row).status == "sent"
