"""The season on an athlete's card: every event ahead, what it still needs, one out, one more."""

from __future__ import annotations

from bot.core.callbacks import answer, ask_sure, rewrite
from bot.core.outbox import Button, Buttons
from bot.core.turn import OnAthlete
from bot.event import season
from bot.event import words_season as words
from bot.people.people import get_person
from bot.plan import words as plan_words
from bot.plan.planning import event_line
from bot.store.tables.people import AthleteProfile
from bot.store.tables.week import EventRow
from bot.week.load import current_event, event_ahead, events_ahead, limits_row, plan_row


def show(turn: OnAthlete) -> None:
    """Each event ahead with what is set for it."""
    answer(turn)
    text, buttons = _view(turn)
    rewrite(turn, text, buttons)


def ask_remove(turn: OnAthlete) -> None:
    """Buttons "c:season-off:ATHLETE:EVENT": it is taken out by a second tap."""
    answer(turn)
    event = named(turn)
    if event is None or not event.waits:
        _again(turn, words.not_there())
        return
    number = turn.profile.person_id
    ask_sure(
        turn,
        turn.person,
        words.ask_remove(words.short(event.kind, event.day, event.class_name)),
        Button(words.remove_yes_button(), f"c:season-out:{number}:{event.id}"),
        Button(words.keep_button(), f"c:season:{number}"),
    )


def remove(turn: OnAthlete) -> None:
    answer(turn)
    event = named(turn)
    if event is None or not event.waits:
        _again(turn, words.not_there())
        return
    season.remove(turn, turn.person, turn.profile, event)
    _again(turn, words.removed(words.short(event.kind, event.day, event.class_name)))


def named(turn: OnAthlete) -> EventRow | None:
    """The event ahead that a button names."""
    number = turn.arguments[0] if turn.arguments else ""
    return (
        event_ahead(turn.session, turn.profile.person_id, int(number)) if number.isdigit() else None
    )


def _again(turn: OnAthlete, lead: str) -> None:
    text, buttons = _view(turn)
    rewrite(turn, f"{lead}\n\n{text}", buttons)


def _view(turn: OnAthlete) -> tuple[str, Buttons]:
    profile, number = turn.profile, turn.profile.person_id
    rows = events_ahead(turn.session, number)
    counts = current_event(turn.session, number)
    text = words.view(
        get_person(turn.session, number).first_name,
        [_line(turn, profile, row) for row in rows],
        own=turn.person.id == number,
    )
    buttons: list[list[Button]] = []
    for row in rows:
        said = words.short(row.kind, row.day)
        line = [Button(words.plan_button(said), f"c:plan:{number}:{row.id}")]
        if plan_row(turn.session, row) is None:
            close = season.before(turn, profile, row)
            view = "draft" if close is None else "bridge"
            label = words.plan_button(said) if close is None else words.bridge_button(said)
            line = [Button(label, f"c:{view}:{number}:{row.id}")]
        line.append(Button(words.asks_button(said), f"c:asks:{number}:{row.id}"))
        if counts is None or row.id != counts.id:
            line.append(Button(words.remove_button(said), f"c:season-off:{number}:{row.id}"))
        buttons.append(line)
    buttons.append(
        [
            Button(words.add_button(), f"c:event:{number}"),
            Button(plan_words.back_button(), f"c:card:{number}"),
        ]
    )
    return text, buttons


def _line(turn: OnAthlete, profile: AthleteProfile, row: EventRow) -> str:
    has_plan = plan_row(turn.session, row) is not None
    planned = has_plan and limits_row(turn.session, row) is not None
    line = event_line(profile, row, turn.context)
    said = f"{line} ({row.class_name})" if row.class_name else line
    return words.entry(said, planned=planned, has_plan=has_plan)
