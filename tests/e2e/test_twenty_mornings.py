"""Twenty mornings in the same minute, over the Bot API: what each athlete gets, and what the coach."""

from __future__ import annotations

from collections import Counter
from datetime import UTC, date, datetime, timedelta
from pathlib import Path

import pytest

from bot.core.turn import Context, Turn
from bot.people.people import get_profile
from bot.store.db import transaction
from bot.store.tables.people import Person
from bot.week import prompts
from tests.support import witness
from tests.support.chats import Telegram
from tests.support.crowd import Crowd, Script, Someone
from tests.support.driven_bot import DrivenBot
from tests.support.many import Alike, many_athletes
from tests.support.mornings import ORDINARY
from tests.support.pictures import picture

pytestmark = [pytest.mark.loopback, pytest.mark.soak, pytest.mark.timeout(120)]

NIGHT = datetime(2027, 5, 3, 3, 0, tzinfo=UTC)
HALF_PAST_SIX = datetime(2027, 5, 3, 5, 30, tzinfo=UTC)  # in London, an hour ahead in May
TODAY = date(2027, 5, 3)
COACHES = {"Torvald": 20, "Ulrike": 1, "Valentina": 1}  # coaches, and how many athletes they have
WITH_PICTURES, DRANK_TOO_MUCH = {2, 5, 8, 11, 14, 17}, 7


def prepared(bot: DrivenBot, crowd: Crowd) -> dict[str, list[Someone]]:
    """Coaches with athletes in the middle of their weeks, laid out straight in the database."""
    teams = {}
    with transaction(bot.engine) as session:
        for number, (name, count) in enumerate(COACHES.items()):
            chat, first_chat = 7_400_001 + number, 7_401_000 + 100 * number
            coach = Person(
                telegram_user_id=chat, chat_id=chat, first_name=name, is_coach=True,
                created_at=NIGHT,
            )  # fmt: skip
            session.add(coach)
            session.flush()
            crowd.person(chat, name)
            ids = many_athletes(
                session,
                coach.id or 0,
                count,
                NIGHT,
                Alike(
                    answered=False,
                    zones=("Europe/London",),
                    name=f"{name}son",
                    first_chat=first_chat,
                    within_days=8,
                ),
            )
            for one in ids:
                profile = get_profile(session, one)
                prompts.schedule(Turn(session, Context(now=NIGHT)), profile)
            teams[name] = [
                crowd.person(first_chat + each, f"{name}son {each}") for each in range(count)
            ]
    return teams


def answers(person: Someone, number: int) -> Script:
    days_out = number % 8
    kg, fullness, sharpness = ORDINARY[days_out]
    water = "7.4" if number == DRANK_TOO_MUCH else "3.5"
    in_load = f" {sharpness}" if days_out <= 3 else ""
    person.says(f"{kg} {fullness} {water}{in_load} on target fine")
    yield
    person.heard("Carbs")
    if number in WITH_PICTURES:
        for _ in range(2):
            person.sends(picture(size=(300, 400)), album=f"of {number}")
        yield


async def test_twenty_mornings_at_once_are_a_roster_kept_up_to_date_the_pictures_and_the_alert(
    telegram: Telegram, own_url: str, tmp_path: Path
) -> None:
    async with DrivenBot(telegram, own_url, NIGHT, tmp_path / "photos") as bot:
        crowd = Crowd(telegram, bot)
        teams = prepared(bot, crowd)
        torvald = next(one for one in crowd.people.values() if one.name == "Torvald")
        torvald.says("/roster")
        await crowd.until(HALF_PAST_SIX + timedelta(minutes=10))
        begin = bot.now
        await crowd.together(
            *(answers(who, number) for team in teams.values() for number, who in enumerate(team))
        )
        await crowd.until(begin + timedelta(minutes=10))

    aloud = [shown.text for shown in torvald.between(begin, bot.now) if not shown.silent]
    assert len(aloud) == 1 and aloud[0].startswith(f"Caution: Torvaldson {DRANK_TOO_MUCH}, ")
    quietly = Counter(s.method for s in torvald.between(begin, bot.now) if s.silent)
    # of messages, one of notes, and one that asks what is seen on the pictures
    assert quietly == {
        "sendMediaGroup": len(WITH_PICTURES), "sendMessage": 2,
    }  # fmt: skip
    edits = Counter(
        torvald.messages[call.fields["message_id"]].text.partition(" ")[0]
        for call in bot.line.calls
        if call.method == "editMessageText" and call.fields["chat_id"] == torvald.chat
    )
    assert edits["Roster:"] <= 2 and set(edits) <= {"Roster:", "Info:", "Photos"}
    roster = next(iter(torvald.messages.values())).text
    assert f"Torvaldson {DRANK_TOO_MUCH}, " in roster and "Torvaldson 19" in roster
    assert "not checked in" not in roster

    everybody = [who for team in teams.values() for who in team]
    assert witness.targets(everybody, 2027) == Counter((who.name, TODAY) for who in everybody)
    knows = {who.name: {name: None} for name, team in teams.items() for who in team}
    knows |= {name: {who.name: None for who in team} for name, team in teams.items()}
    numbers = {number: f"{of}" for number, of in _numbers(teams).items()}
    assert witness.strays(crowd, knows, numbers) == []
    assert witness.haste(bot.line.calls) == []
    assert telegram.refused() == []


def _numbers(teams: dict[str, list[Someone]]) -> dict[int, str]:
    """The athletes' numbers as people of the database, in the order in which they were written."""
    names: list[str] = []
    for name, team in teams.items():
        names += [name, *(who.name for who in team)]
    return dict(enumerate(names, start=1))
