"""The season on an athlete's card: every event ahead, what it still needs, one out, one more."""

from __future__ import annotations

from bot.core.chat.cards import CARD, DRAFT, EVENT, PLAN, SEASON, OfEvent
from bot.core.chat.outbox import Button, Buttons
from bot.core.turn import OnAthlete
from bot.event.buttons import ASKS, BRIDGE, SEASON_OFF, SEASON_OUT
from bot.event.season import season, words
from bot.people.people import name_of
from bot.people.telling import answer, ask_sure, rewrite
from bot.plan.planning import event_line
from bot.store.base import id_of
from bot.store.tables.people import AthleteProfile
from bot.store.tables.week import EventRow
from bot.week.load import current_event, event_ahead, events_ahead, limits_row, plan_row
from bot.words.common import keep_it_button, step_back_button


def show(turn: OnAthlete) -> None:
    """Each event ahead with what is set for it."""
    answer(turn)
    text, buttons = _view(turn)
    rewrite(turn, text, buttons)


def ask_remove(turn: OnAthlete, pressed: OfEvent) -> None:
    """It is taken out by a second tap."""
    answer(turn)
    event = named(turn, pressed)
    if event is None or not event.waits:
        _again(turn, words.not_there())
        return
    number = turn.profile.person_id
    ask_sure(
        turn,
        turn.person,
        words.ask_remove(words.short(event.kind, event.day, event.class_name)),
        Button(words.remove_yes_button(), SEASON_OUT(number, id_of(event))),
        Button(keep_it_button(), SEASON(number)),
    )


def remove(turn: OnAthlete, pressed: OfEvent) -> None:
    answer(turn)
    event = named(turn, pressed)
    if event is None or not event.waits:
        _again(turn, words.not_there())
        return
    season.remove(turn, turn.person, turn.profile, event)
    _again(turn, words.removed(words.short(event.kind, event.day, event.class_name)))


def named(turn: OnAthlete, pressed: OfEvent) -> EventRow | None:
    """The event ahead that a button names."""
    if pressed.event is None:
        return None
    return event_ahead(turn.session, turn.profile.person_id, pressed.event)


def _again(turn: OnAthlete, lead: str) -> None:
    text, buttons = _view(turn)
    rewrite(turn, f"{lead}\n\n{text}", buttons)


def _view(turn: OnAthlete) -> tuple[str, Buttons]:
    profile, number = turn.profile, turn.profile.person_id
    rows = events_ahead(turn.session, number)
    counts = current_event(turn.session, number)
    text = words.view(
        name_of(turn.session, number),
        [_line(turn, profile, row) for row in rows],
        self_coached=turn.person.id == number,
    )
    buttons: list[list[Button]] = []
    for row in rows:
        said = words.short(row.kind, row.day)
        line = [Button(words.plan_button(said), PLAN(number, id_of(row)))]
        if plan_row(turn.session, row) is None:
            close = season.before(turn, profile, row)
            begin = DRAFT if close is None else BRIDGE
            label = words.plan_button(said) if close is None else words.bridge_button(said)
            line = [Button(label, begin(number, id_of(row)))]
        line.append(Button(words.asks_button(said), ASKS(number, id_of(row))))
        if counts is None or row.id != counts.id:
            line.append(Button(words.remove_button(said), SEASON_OFF(number, id_of(row))))
        buttons.append(line)
    buttons.append(
        [Button(words.add_button(), EVENT(number)), Button(step_back_button(), CARD(number))]
    )
    return text, buttons


def _line(turn: OnAthlete, profile: AthleteProfile, row: EventRow) -> str:
    has_plan = plan_row(turn.session, row) is not None
    planned = has_plan and limits_row(turn.session, row) is not None
    line = event_line(profile, row, turn.context)
    said = f"{line} ({row.class_name})" if row.class_name else line
    return words.entry(said, planned=planned, has_plan=has_plan)
