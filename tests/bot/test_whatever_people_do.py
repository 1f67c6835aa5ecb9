"""Whatever coaches, athletes and strangers write, tap and wait, in any order, the bot stays whole.

A machine draws what happens next: messages of every sort, every button that was ever shown to anybody
pressed by anybody, old and forged ones, days that pass. After each step, what must never be is looked
for. `-m soak` does it for longer.
"""

from __future__ import annotations

import re
from dataclasses import replace
from datetime import UTC, datetime, timedelta
from typing import Any

import pytest
from hypothesis import HealthCheck, settings
from hypothesis import strategies as st
from hypothesis.stateful import RuleBasedStateMachine, invariant, rule, run_state_machine_as_test
from sqlalchemy import Engine
from sqlmodel import col, select

from bot.alerts.delivery import STOP_REPEATING_AFTER
from bot.core.chat.buttons import CALLBACK_DATA_LIMIT_BYTES
from bot.core.chat.outbox import TEXT_LIMIT
from bot.core.turn import Kind
from bot.features import COMMANDS
from bot.store.tables.people import Person
from bot.store.tables.traffic import AgendaRow, OutboxRow
from bot.store.tables.week import AlertRow, DaySetRow, DecisionRow, LimitsRow
from bot.words.common import Media
from tests.support.images import Image, fill
from tests.support.weeks import Team
from tests.support.world import Someone, World

START = datetime(2027, 5, 4, 6, 20, tzinfo=UTC)
RAVI, MIRA, VERA, LENA = 101, 102, 104, 106
STRANGERS = {VERA, LENA}
NAMES = {RAVI: "Ravi", MIRA: "Mira", VERA: "Vera", LENA: "Lena"}

SAID = (
    *(f"/{name}" for name in COMMANDS),
    "60.4 5 3.5 fine", "60.1 3 3.5 2", "59.8", "5", "3.5", "133", "fine", "fullness 9, blurry",
    "60.4 5", "about 60", "no scale today", "yes", "no", "ok", "not sure", "skip", "soft and blurry",
    "I fainted in the bathroom", "dizzy and cramps", "my hands are swollen, headache and feel sick",
    "I binged and made myself sick", "all good now", "no headache", "chest pain", "cut water?",
    "can I have coffee", "running late, 20 minutes", "what about clenbuterol", "Mira 3 days out 420",
    "Mira: well done", "450", "170", "London", "2027-05-09", "tomorrow", "19:30", "0", "-3", "1e9",
    "9" * 23, "½", "²", "🙂", "A" * 4000, "/start", "/join ABCD-EFGH-JKMN-PQRS", "1.5k", "stop",
)  # fmt: skip
PLACEHOLDER = re.compile(r"\{\w*\}|\bNone\b(?! of)|\bnan\b|<\w+ object")


class Machine(RuleBasedStateMachine):
    """Ravi coaches Mira in her peak week; Vera and Lena know the bot's name."""

    engine: Engine
    image: Image
    made: Team

    def __init__(self) -> None:
        super().__init__()
        fill(self.engine, self.image)
        self.world = World(self.engine, START, self.made.world.updates)
        self.people = {user: Someone(self.world, user, name, 100) for user, name in NAMES.items()}
        self.world.until(START)
        self.seen = 0
        self.shown: list[str] = ["c:plan:2", "signoff:approve:1", "x", ""]

    @rule(
        who=st.sampled_from(sorted(NAMES)),
        text=st.sampled_from(SAID)
        | st.text(st.characters(exclude_characters="{}<", exclude_categories=["Cs"]), max_size=60),
    )
    def writes(self, who: int, text: str) -> None:
        if text:
            self.people[who].writes(text)

    @rule(who=st.sampled_from([MIRA, MIRA, RAVI]), text=st.sampled_from(SAID))
    def changes_a_message(self, who: int, text: str) -> None:
        self.people[who].writes(text, Kind.EDITED, message_id=self.people[who].message_ids)

    @rule(who=st.sampled_from(sorted(NAMES)), which=st.integers(0, 400))
    def presses_any_button_that_was_ever_shown(self, who: int, which: int) -> None:
        self.people[who].presses(self.shown[-1 - which % len(self.shown)])

    @rule(who=st.sampled_from([MIRA, RAVI]), which=st.integers(0, 6))
    def presses_one_of_the_latest_buttons_of_their_own(self, who: int, which: int) -> None:
        with_buttons = [said for said in self.people[who].all_said()[-6:] if said.buttons]
        if with_buttons:
            data = list(with_buttons[-1].buttons.values())
            if not data[which % len(data)].startswith("http"):
                self.people[who].presses(data[which % len(data)], with_buttons[-1].outbox_id)

    @rule(who=st.sampled_from(sorted(NAMES)), media=st.sampled_from(list(Media)))
    def sends_something_else(self, who: int, media: Media) -> None:
        self.people[who].writes("", Kind.OTHER, media=media)

    @rule(minutes=st.sampled_from([1, 20, 45, 240, 720, 1440, 2880]))
    def waits(self, minutes: int) -> None:
        self.world.until(self.world.now + timedelta(minutes=minutes))

    @invariant()
    def every_message_can_be_sent_and_read(self) -> None:
        with self.world.session() as session:
            rows = session.exec(
                select(OutboxRow).where(col(OutboxRow.id) > self.seen).order_by(col(OutboxRow.id))
            ).all()
        for row in rows:
            self.seen = row.id or 0
            text = str(row.payload.get("text", row.payload.get("caption", "-")))
            assert row.chat_id in NAMES
            assert len(text.encode("utf-16-le")) <= 2 * TEXT_LIMIT
            if row.method in ("sendMessage", "editMessageText"):
                assert text.strip()
                assert row.chat_id in (RAVI, MIRA) or "Mira" not in text, text
                assert not PLACEHOLDER.search(text), text
            for button in self._buttons(row.payload):
                data = button.get("callback_data", "")
                assert len(data.encode()) <= CALLBACK_DATA_LIMIT_BYTES
                assert button["text"].strip()
                if data:
                    self.shown.append(data)

    @invariant()
    def no_decision_leaves_the_limits(self) -> None:
        with self.world.session() as session:
            limits = session.exec(select(LimitsRow).order_by(col(LimitsRow.id))).all()
            days = session.exec(select(DaySetRow).where(DaySetRow.by == "decision")).all()
        low = min(row.bounds["carb_floor_g"] for row in limits)
        high = max(row.bounds["carb_ceiling_g"] for row in limits)
        assert all(low <= day.carb_g <= high for day in days)

    @invariant()
    def a_days_answers_have_one_decision_that_counts(self) -> None:
        with self.world.session() as session:
            rows = session.exec(select(DecisionRow)).all()
        counting = [row.checkin_id for row in rows if row.status in ("in-force", "waiting")]
        assert len(counting) == len(set(counting))

    @invariant()
    def an_open_warning_goes_on_being_told(self) -> None:
        with self.world.session() as session:
            alerts = session.exec(
                select(AlertRow).where(
                    col(AlertRow.acknowledged_at).is_(None), AlertRow.level == "warning"
                )
            ).all()
            duties = session.exec(select(AgendaRow).where(AgendaRow.status == "waiting")).all()
            coaches = session.exec(select(Person).where(col(Person.is_coach))).all()
        kinds = {duty.kind for duty in duties}
        for alert in alerts:
            assert coaches
            if self.world.now - alert.opened_at >= STOP_REPEATING_AFTER:
                continue  # its coach was told that it no longer sounds and where it stays
            assert any(kind.startswith("alert") for kind in kinds), (alert.flag, kinds)

    @invariant()
    def strangers_stay_strangers(self) -> None:
        with self.world.session() as session:
            known = {person.chat_id for person in session.exec(select(Person))}
        assert not STRANGERS & known

    @staticmethod
    def _buttons(payload: dict[str, Any]) -> list[dict[str, str]]:
        rows = payload.get("reply_markup", {}).get("inline_keyboard", [])
        return [button for row in rows for button in row]


def play(
    engine: Engine, peak_week: tuple[Image, Team], *, examples: int, steps: int, seeded: bool
) -> None:
    class OnThis(Machine):
        pass

    OnThis.engine, OnThis.image, OnThis.made = engine, peak_week[0], replace(peak_week[1])
    run_state_machine_as_test(
        OnThis,
        settings=settings(
            max_examples=examples,
            stateful_step_count=steps,
            derandomize=seeded,
            suppress_health_check=list(HealthCheck),
        ),
    )


def test_whatever_people_do_for_a_while_the_bot_stays_whole(
    own_engine: Engine, peak_week: tuple[Image, Team]
) -> None:
    play(own_engine, peak_week, examples=6, steps=20, seeded=True)


@pytest.mark.soak
@pytest.mark.timeout(3600)
def test_whatever_people_do_for_long_the_bot_stays_whole(
    own_engine: Engine, peak_week: tuple[Image, Team]
) -> None:
    play(own_engine, peak_week, examples=40, steps=50, seeded=False)
