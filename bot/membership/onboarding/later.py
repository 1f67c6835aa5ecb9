"""What sharpens a plan, asked once there is an event to draft one for: body fat, fibre, salt."""

from __future__ import annotations

from functools import partial

from bot.core.chat.outbox import SILENTLY, Button, Delivery
from bot.core.turn import Act, Turn
from bot.dialogue import asking
from bot.membership.buttons import MORE
from bot.membership.onboarding import words
from bot.membership.onboarding.flow import LATER, LATER_KEYS
from bot.membership.onboarding.flow_measures import fat_of
from bot.membership.onboarding.onboarding import answers_lines
from bot.people.changes import Change
from bot.people.people import get_person, is_own_coach, profile_of, record
from bot.people.telling import answer, say_to
from bot.store.tables.people import AthleteProfile, HistoryRow, OpenQuestion, Person
from bot.week.load import current_event


def ask_for_new_events(turn: Turn, events_set: list[HistoryRow]) -> None:
    """Whoever has got an event and has not been asked the rest is asked now."""
    for athlete_id in dict.fromkeys(row.athlete_id for row in events_set):
        profile = profile_of(turn.session, athlete_id)
        event = current_event(turn.session, athlete_id)
        if profile is None or event is None or not _is_open(profile):
            continue
        say_to(
            turn,
            get_person(turn.session, athlete_id),
            partial(words.later_asked, event.kind),
            buttons=lambda: [[Button(words.later_button(), MORE())]],
            how=Delivery(silent=True, dedupe=f"later-questions:{athlete_id}:{event.id}"),
        )


def tapped(turn: Act) -> None:
    """Button "more:ask"."""
    profile = profile_of(turn.session, turn.person.id)
    if profile is None or not _is_open(profile):
        answer(turn, words.later_known_already())
        return
    answer(turn)
    asking.open_question(
        turn, turn.person, LATER, subject_id=turn.person.id, answers={"sex": profile.sex}
    )


def given(turn: Turn, person: Person, question: OpenQuestion) -> None:
    profile = profile_of(turn.session, person.id)
    if profile is None or not profile.baseline:
        return
    told = {key: question.answers.get(key) for key in LATER_KEYS}
    profile.body_fat_percent = fat_of(question.answers)
    profile.baseline = {**profile.baseline, **told}
    turn.session.add(profile)
    record(turn, profile.person_id, Change.MEASURES_ANSWERED_AGAIN, by=person.id)
    say_to(turn, person, words.later_kept())
    if not is_own_coach(profile):
        coach = get_person(turn.session, profile.coach_id)
        say_to(
            turn,
            coach,
            lambda: words.coach_told_later(person.first_name, answers_lines(profile)),
            how=SILENTLY,
        )


def _is_open(profile: AthleteProfile) -> bool:
    return bool(profile.baseline) and not set(LATER_KEYS) <= set(profile.baseline)
