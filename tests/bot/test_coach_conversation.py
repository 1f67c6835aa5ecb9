"""What a coach types of their own accord: with no card open, with one, and with an alert that waits.

It goes to the athlete who is meant, shown before it is sent; a bare name opens the card; a drug goes to
nobody. The messages are our own invention.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import dataclass
from datetime import UTC, datetime

import pytest
from sqlmodel import Session, col, func, select

from bot.core.turn import ChatTurn, Incoming, Kind
from bot.direct.flow import PASS_ON
from bot.dispatcher import USE_CASES
from bot.store.db import transaction
from bot.store.tables.people import OpenQuestion, Person
from bot.store.tables.traffic import OutboxRow
from tests.support import conversation_coach as table
from tests.support.weeks import Team
from tests.support.world import Someone, World, text_of

COACH = 1


class _BackOutError(Exception):
    pass


@dataclass
class Came:
    """What the coach was told, what anybody else was, and the words that wait to be sent."""

    said: str = ""
    to_others: str = ""
    waits: str | None = None


def send(world: World, language: str, text: str) -> Came:
    """What becomes of a coach's message, found out and taken back."""
    came = Came()
    with pytest.raises(_BackOutError), transaction(world.engine) as session:
        sent, asked = (_last(session, row) for row in (OutboxRow, OpenQuestion))
        coach = session.get_one(Person, COACH)
        incoming = Incoming(
            update_id=990_002, chat_id=coach.chat_id, private=True, user_id=coach.telegram_user_id,
            first_name=coach.first_name, language=language, kind=Kind.TEXT, text=text,
            message_id=770_002, tap_id=None, sent_at=world.now,
        )  # fmt: skip
        USE_CASES.incoming(ChatTurn(session, world.context, incoming))
        session.flush()
        for row in session.exec(select(OutboxRow).where(col(OutboxRow.id) > sent)):
            words = row.payload.get("text", "")
            if row.chat_id == coach.chat_id:
                came.said += words
            else:
                came.to_others += words
        opened = select(OpenQuestion).where(col(OpenQuestion.id) > asked)
        for question in session.exec(opened.where(OpenQuestion.flow == PASS_ON.id)):
            came.waits = question.answers["_text"]
        raise _BackOutError
    return came


def _last(session: Session, table: type[OutboxRow] | type[OpenQuestion]) -> int:
    return session.exec(select(func.max(table.id))).one() or 0


def states(team: Team) -> Iterator[str]:
    yield "no card open"
    team.coach.writes("Mira")
    yield "the card open"
    team.athlete.writes("my hands are swollen and I have a headache")
    yield "an alert that waits"


@pytest.mark.parametrize("language", ["en", "de"])
def test_what_a_coach_types_reaches_the_athlete_who_is_meant_once_it_was_shown(
    ours: None, team_at: Callable[[datetime], Team], language: str
) -> None:
    team = team_at(datetime(2027, 5, 4, 9, 0, tzinfo=UTC))
    team.coach.language = language
    wrong = []
    for turn, state in enumerate(states(team)):
        for text, meant in _messages(language, turn):
            came = send(team.world, language, text)
            if came.to_others or came.waits != meant or not came.said:
                wrong.append(f"{state}: {text!r} {came}")
    assert not wrong, "\n".join(wrong)


def _messages(language: str, turn: int) -> Iterator[tuple[str, str | None]]:
    """What is typed in a state, and what then waits to be sent: each is tried in one of the states."""
    every: list[tuple[str, str | None]] = [(text, text) for text in table.TO_THE_ATHLETE[language]]
    every += table.NAMED[language]
    every += [(text, None) for text in (*table.CARD, *table.REFUSED[language])]
    yield from every[turn::3]


def test_two_athletes_of_one_name_are_told_apart_and_a_yes_is_meant_for_the_newest_words(
    team_at: Callable[[datetime], Team],
) -> None:
    team = team_at(datetime(2027, 5, 4, 9, 0, tzinfo=UTC))
    team.coach.language = "en"
    invitation = text_of(team.coach.writes("/invite"))
    other = Someone(team.world, 104, "Mira")
    other.writes("/join " + invitation.split("/join ")[1].split()[0])
    assert "called Mira, so I call this athlete Mira 2." in text_of(team.coach.hears())
    (asked,) = team.coach.writes("Mira, photos please")
    assert [*asked.buttons][:2] == ["Mira", "Mira 2"]  # a first name may mean either
    assert "For Mira 2:" in text_of(team.coach.writes("mira 2: rest today"))
    assert "Who is this for?" in text_of(team.coach.writes("lovely lines this morning, well done"))
    assert "whom you mean" in text_of(team.coach.writes("yes"))
    assert text_of(team.coach.writes("forget it")).endswith("Not sent.")
    assert not other.hears() and not team.athlete.hears()


@pytest.fixture
def afternoon(team_at: Callable[[datetime], Team]) -> Team:
    return team_at(datetime(2027, 5, 4, 13, 0, tzinfo=UTC))


@pytest.mark.parametrize("asked", ["how's mira", "How is Mira doing today?", "show me mira"])
def test_how_an_athlete_is_shows_the_card_and_sends_nothing(afternoon: Team, asked: str) -> None:
    (card,) = afternoon.coach.writes(asked)
    assert card.text.startswith("Mira\n") and "Shall I send it?" not in card.text


def test_an_ok_after_something_else_was_shown_sends_nothing_before_it_is_seen_again(
    afternoon: Team,
) -> None:
    afternoon.coach.writes("mira: rest today")
    afternoon.coach.writes("/roster")
    again = text_of(afternoon.coach.writes("ok"))
    assert "“rest today”" in again and "Shall I send it?" in again
    assert afternoon.athlete.hears() == []
    afternoon.coach.writes("ok")
    assert "rest today" in text_of(afternoon.athlete.hears())


def test_a_coach_who_writes_of_an_emergency_reads_first_what_comes_first(afternoon: Team) -> None:
    said = text_of(afternoon.coach.writes("mira she fainted at the gym just now"))
    assert said.startswith("If this is happening now: the local emergency number first.")
    assert "Freeze" in said and afternoon.athlete.hears() == []
