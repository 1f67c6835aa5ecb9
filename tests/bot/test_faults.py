"""Power cuts at any statement, a server that loses answers, a clock that is set: nothing is lost by it.

`python -m tests.bot.test_faults SEED FAULTS` does it for longer; a seed does the same again.
"""

from __future__ import annotations

import asyncio
import logging
import random
import sys
import tempfile
from collections import Counter
from datetime import UTC, datetime, timedelta
from pathlib import Path

import pytest
import structlog
from sqlmodel import col, select

from bot.store.migrate import upgrade_to_head
from bot.store.tables.traffic import InboxRow, OutboxRow
from bot.store.tables.week import AlertRow, CheckInRow, DaySetRow, DecisionRow, LimitsRow
from tests.support.faulty import Lives
from tests.support.images import Image, fill
from tests.support.prepared import Another
from tests.support.warm import warm_engine
from tests.support.weeks import Team, in_peak_week

START = datetime(2027, 5, 2, 5, 0, tzinfo=UTC)
RAVI, MIRA = 101, 102
MORNINGS = (
    "60.9 5 3.5 fine",
    "60.4 3 3.5 3 on target fine",
    "60.2 6 3.0 4 on target",
    "60.8 9 3.5 2",
)
DURING = (
    (MIRA, "can I have coffee"), (MIRA, "dizzy and cramps"), (MIRA, "/today"), (MIRA, "fullness 4"),
    (RAVI, "/roster"), (RAVI, "/alerts"), (MIRA, "my head hurts a little"), (MIRA, "water was 3 l"),
)  # fmt: skip
DANGER = "I fainted in the bathroom"


async def play(url: str, seed: int, faults: int) -> Lives:
    """Days of a week with their mornings, until so many faults have happened; then all settles."""
    lives = Lives(url, START, seed)
    chance = random.Random(seed + 1)
    said: list[int] = []
    while sum(lives.server.faults.values()) < faults:
        lives.clock.advance(timedelta(minutes=chance.choice([1, 7, 45, 180])))
        who, text = chance.choice(
            [(MIRA, chance.choice(MORNINGS)), chance.choice(DURING), chance.choice(DURING)]
        )
        said.append(lives.server.says(who, "Ravi" if who == RAVI else "Mira", text))
        for _ in range(chance.randint(1, 4)):
            await lives.step()
    said.append(lives.server.says(MIRA, "Mira", DANGER))
    await lives.step()
    lives.reliable()
    await lives.rest()
    hold_together(lives, said)
    await lives.close()
    return lives


def hold_together(lives: Lives, said: list[int]) -> None:
    """What must be so after any faults whatever."""
    with lives.session() as session:
        inbox = {row.update_id: row.status for row in session.exec(select(InboxRow))}
        outbox = session.exec(select(OutboxRow)).all()
        decisions = session.exec(select(DecisionRow)).all()
        checkins = {row.id: row.date for row in session.exec(select(CheckInRow))}
        alerts = session.exec(select(AlertRow)).all()
        limits = session.exec(select(LimitsRow).order_by(col(LimitsRow.id))).all()
        days = session.exec(select(DaySetRow).where(DaySetRow.by == "decision")).all()
    assert {number: inbox.get(number) for number in said} == dict.fromkeys(said, "done")
    counting = Counter(
        checkins[d.checkin_id] for d in decisions if d.status in ("in-force", "waiting")
    )
    assert all(count == 1 for count in counting.values())
    bounds = limits[-1].bounds
    assert all(bounds["carb_floor_g"] <= day.carb_g <= bounds["carb_ceiling_g"] for day in days)
    assert set(lives.server.chats) <= {RAVI, MIRA}
    for row in outbox:
        assert row.status in ("sent", "dropped", "failed"), (row.id, row.status)
        if row.status == "sent" and "text" in row.payload and row.method == "sendMessage":
            assert row.payload["text"] in lives.server.chats[row.chat_id]
    heard = "\n".join(lives.server.chats[RAVI])
    assert any(alert.level == "warning" for alert in alerts)
    assert f'Mira wrote "{DANGER}"' in heard
    assert not [row.payload for row in outbox if row.urgency and row.status == "failed"]


@pytest.fixture
def week(peak_week: tuple[Image, Team], another_database: Another, tmp_path: Path) -> str:
    """The address of a database that holds a peak week."""
    url = another_database(tmp_path)
    engine = warm_engine(url)
    fill(engine, peak_week[0])
    engine.dispose()
    return url


@pytest.mark.soak
async def test_after_fifty_faults_every_answer_is_there_decided_once_and_every_alert_told(
    week: str,
) -> None:
    lives = await play(week, seed=20270502, faults=50)
    assert set(lives.server.faults) == {
        "power",
        "lost_answer",
        "not_taken",
        "slow_down",
        "clock_set",
    }


if __name__ == "__main__":
    with tempfile.TemporaryDirectory() as folder:
        url = f"sqlite:///{folder}/week.sqlite3"
        engine = warm_engine(url)
        upgrade_to_head(engine)
        in_peak_week(engine)
        engine.dispose()
        structlog.configure(wrapper_class=structlog.make_filtering_bound_logger(logging.CRITICAL))
        played = asyncio.run(play(url, int(sys.argv[1]), int(sys.argv[2])))
        counted = dict(played.server.faults)
        sys.stdout.write(f"seed {sys.argv[1]}: held together after {counted}\n")
