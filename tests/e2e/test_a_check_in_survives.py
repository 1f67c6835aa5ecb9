"""The real bot killed between a check-in and its target: decided once, sent, nothing lost.

The same points as in `test_crashes`, with a real peak week behind them: what a kill must not do is
lose an answer, decide twice on it, or leave the athlete without the day's target.
"""

from __future__ import annotations

import random
from datetime import UTC, datetime, timedelta
from pathlib import Path

import pytest
from sqlalchemy import Engine
from sqlmodel import Session, select

from bot.store.db import make_engine
from bot.store.tables.traffic import OutboxRow
from bot.store.tables.week import CheckInRow, DaySetRow, DecisionRow, DecisionStatus
from tests.support.chats import BotProcess, Telegram
from tests.support.weeks import in_peak_week

pytestmark = [pytest.mark.loopback, pytest.mark.soak]

ATHLETE = 102


@pytest.fixture
def bot(telegram: Telegram, any_engine: Engine, tmp_path: Path) -> BotProcess:
    """`brimline run` on a database in which Mira is five days out today."""
    today = datetime.now(UTC)
    in_peak_week(any_engine, now=today - timedelta(hours=1), days_ahead=5)
    with Session(any_engine) as session:  # what was said while the week was set up is not at issue
        for row in session.exec(select(OutboxRow)):
            row.status = "dropped"
            session.add(row)
        session.commit()
    url = any_engine.url.render_as_string(hide_password=False)
    any_engine.dispose()
    return BotProcess(telegram, url, tmp_path / "log")


def targets(telegram: Telegram) -> list[str]:
    return [text for text in telegram.texts(ATHLETE) if "Carbs" in text and "out," in text]


def decided_once(bot: BotProcess, *, fullness: int) -> None:
    """One check-in, one decision in force, one figure for the day, and they agree."""
    engine = make_engine(bot.database_url)
    with Session(engine) as session:
        checkin = session.exec(select(CheckInRow)).one()
        decisions = session.exec(select(DecisionRow)).all()
        in_force = [d for d in decisions if d.status == DecisionStatus.IN_FORCE]
        day = session.exec(select(DaySetRow)).one()
    engine.dispose()
    assert checkin.fullness == fullness
    assert len(decisions) == len({(d.checkin_id, d.revision) for d in decisions})
    assert len(in_force) == 1
    assert (day.date, day.carb_g) == (in_force[0].sets_date, in_force[0].carb_g)


@pytest.mark.parametrize("moment", ["before", "after"])
def test_killed_while_the_target_is_being_sent_it_is_decided_once_and_arrives(
    telegram: Telegram, bot: BotProcess, moment: str
) -> None:
    telegram.hold("sendMessage", moment)
    with bot:
        telegram.says(ATHLETE, "61.0 6 3.5")
        telegram.wait_for_held()
    telegram.release()
    with bot:
        telegram.wait_until(lambda: bool(targets(telegram)), "the target")
        telegram.says(ATHLETE, "/past")
        telegram.wait_for_text(ATHLETE, "Your check-ins")
    decided_once(bot, fullness=6)
    # Where the kill came after Telegram had taken the message, nobody can know: it comes again.
    assert len(set(targets(telegram))) == 1
    assert len(targets(telegram)) <= (1 if moment == "before" else 2)


def test_killed_when_the_answer_was_handed_out_and_not_yet_kept_it_is_handed_out_again(
    telegram: Telegram, bot: BotProcess
) -> None:
    telegram.hold("getUpdates", "after")
    with bot:
        telegram.says(ATHLETE, "61.0 6 3.5")
        telegram.wait_for_held()
    telegram.release()
    with bot:
        telegram.wait_until(lambda: bool(targets(telegram)), "the target")
    decided_once(bot, fullness=6)
    assert len(targets(telegram)) == 1


def test_killed_at_any_moment_of_a_check_in_and_its_change_the_last_word_holds(
    telegram: Telegram, bot: BotProcess
) -> None:
    chance = random.Random(20270509)
    with bot:
        telegram.says(ATHLETE, "/help")
        telegram.wait_for_text(ATHLETE, "/checkin")
    sent = telegram.says(ATHLETE, "61.0 6 3.5")
    for _ in range(3):
        with bot:
            calls = len(telegram.calls())
            seen = calls + chance.randrange(3)
            telegram.wait_until(lambda seen=seen: len(telegram.calls()) >= seen, "some calls")
    telegram.edits(ATHLETE, sent, "61.0 5 3.5")
    with bot:
        telegram.wait_until(lambda: bool(telegram.calls()), "any call")
    with bot:
        telegram.wait_for_text(ATHLETE, "fullness 6 → fullness 5")
    decided_once(bot, fullness=5)
