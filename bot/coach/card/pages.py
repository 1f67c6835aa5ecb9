"""What can be done from an athlete's card: on its first page what a morning needs, the rest by subject.

Every button is on exactly one page; a page is a tap away.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass

from bot.alerts import words_after
from bot.coach import flow_history, words
from bot.coach.buttons import (
    ANSWERS,
    BY_HAND,
    DOCTOR,
    FORECAST,
    HISTORY,
    PAGE,
    TOMORROW,
    WHY,
    OnPage,
)
from bot.core.chat.buttons import CallbackData
from bot.core.chat.cards import (
    CALENDAR,
    CARD,
    EVENT,
    FILES,
    LEARNT,
    LIMITS,
    MESSAGE,
    PICTURE,
    PLAN,
    PLAN_SHEET,
    ROSTER,
    SEASON,
    SETUP,
)
from bot.core.chat.outbox import Button, Buttons
from bot.core.turn import OnAthlete, Turn
from bot.debrief import words as debrief_words
from bot.debrief.buttons import DEBRIEF
from bot.decision import words_forecast as forecast_words
from bot.decision import words_holding as hold_words
from bot.decision.buttons import EYE, HOLD, WHAT_IF
from bot.decision.eye import words as eye_words
from bot.decision.replay import words as replay_words
from bot.event import flow_asks
from bot.event import words as event_words
from bot.event.buttons import ASKS
from bot.food import flow_coach
from bot.food.buttons import FOOD_OF
from bot.membership import flow_second
from bot.membership.buttons import END, SECOND
from bot.people.people import is_first_coach, name_of
from bot.people.telling import rewrite
from bot.pictures.buttons import PHOTOS, TIMELINE, WEEKS
from bot.pictures.comparison import words as comparison_words
from bot.pictures.photos import words as photo_words
from bot.pictures.timeline import words as timeline_words
from bot.plan.next_load.flow import learnt_button
from bot.plan.next_load.learnt import something_learnt
from bot.plan.words import limits_button
from bot.safety.buttons import FREEZE, LIFT
from bot.store.tables.people import AthleteProfile, AthleteStatus, Person
from bot.words import common

FIRST = "first"


@dataclass(frozen=True, slots=True)
class Of:
    """Whose card it is. `own`: the reader's; `first`: the reader is the first coach."""

    profile: AthleteProfile
    name: str
    self_coached: bool
    first: bool
    learnt: bool

    def button(self, label: str, data: Callable[[int], CallbackData]) -> Button:
        return Button(label, data(self.profile.person_id))


def first_page(of: Of, *, set_up: bool) -> Buttons:
    """What a morning needs, and the way to the other pages; before an event is set, that first."""
    number, button = of.profile.person_id, of.button
    freezing = (
        button(words_after.lift_button(), LIFT)
        if of.profile.frozen_at is not None
        else button(words.freeze_button(), FREEZE)
    )
    begin = [button(common.setup_button(), SETUP), button(common.event_button(), EVENT)]
    rows = [
        [] if set_up else begin,
        [button(learnt_button(), LEARNT)] if of.learnt else [],
        [
            *([] if of.self_coached else [button(eye_words.eye_button(), EYE)]),
            button(photo_words.photos_button(), PHOTOS),
            button(common.picture_button(), PICTURE),
        ],
        [button(words.why_button(), WHY), button(words.hand_button(), BY_HAND)],
        [button(hold_words.hold_button(), HOLD), freezing],
        [
            *([] if of.self_coached else [button(words.message_button(of.name), MESSAGE)]),
            button(flow_coach.button(), FOOD_OF),
        ],
        [Button(words.page_button(key), PAGE(number, key)) for key in PAGES],
        [Button(words.roster_button(), ROSTER(0))],
    ]  # fmt: skip
    if of.profile.status == AthleteStatus.DOCTOR_FIRST:
        rows.insert(0, [button(words.doctor_button(), DOCTOR)])
    return [row for row in rows if row]


def _plan(of: Of) -> Buttons:
    button = of.button
    tomorrow = words.tomorrow_button(always_tomorrow=of.profile.always_tomorrow)
    return [
        [
            button(words.plan_button(), PLAN),
            button(limits_button(), LIMITS),
            button(common.sheet_button(), PLAN_SHEET),
        ],
        [button(common.setup_button(), SETUP), button(replay_words.button(), WHAT_IF)],
        [button(tomorrow, TOMORROW), button(forecast_words.button(), FORECAST)],
    ]


def _event(of: Of) -> Buttons:
    button = of.button
    return [
        [button(common.event_button(), EVENT), button(event_words.season_button(), SEASON)],
        [button(flow_asks.asks_button(), ASKS), button(common.calendar_button(), CALENDAR)],
        [button(debrief_words.button(), DEBRIEF)],
    ]


def _person(of: Of) -> Buttons:
    button = of.button
    return [
        [
            button(words.answers_button(), ANSWERS),
            button(flow_history.history_button(), HISTORY),
            button(common.files_button(), FILES),
        ],
        [button(comparison_words.button(), WEEKS), button(timeline_words.button(), TIMELINE)],
        [button(flow_second.second_button(), SECOND)] if of.first else [],
        [button(flow_second.end_button(), END)] if of.first and not of.self_coached else [],
    ]


PAGES: Mapping[str, Callable[[Of], Buttons]] = {"plan": _plan, "event": _event, "person": _person}


def of_card(turn: Turn, reader: Person, profile: AthleteProfile) -> Of:
    return Of(
        profile,
        name_of(turn.session, profile.person_id),
        self_coached=reader.id == profile.person_id,
        first=is_first_coach(reader, profile),
        learnt=something_learnt(turn.session, profile),
    )


def show(turn: OnAthlete, pressed: OnPage) -> None:
    """One of the pages."""
    of = of_card(turn, turn.person, turn.profile)
    key = next((one for one in PAGES if one == pressed.page), next(iter(PAGES)))
    back = [of.button(common.back_button(), CARD)]
    rows = [row for row in PAGES[key](of) if row]
    rewrite(turn, words.head(of.name, key, self_coached=of.self_coached), [*rows, back])
