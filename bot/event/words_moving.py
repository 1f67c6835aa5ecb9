"""What coach and athlete read when an event moves, and when a move is taken back."""

from __future__ import annotations

from datetime import date

from bot.words import figures
from bot.words.languages import SentenceOn, tr, tr_if


def came_along(day: date, zone: str) -> str:
    return tr(
        "I moved the timetable to {day}: same times, {zone} time. Reminders come only for that "
        "day. If the times are different, change them below.",
        day=figures.long_day(day),
        zone=zone,
    )


def stayed_behind(name: str, *, own: bool) -> str:
    return tr_if(
        own,
        "I could not move your timetable (it was cancelled, or its classes would be over "
        "by then), so its reminders stop. You can set the times again.",
        "I could not move {name}'s timetable (it was cancelled, or its classes would be over "
        "by then), so its reminders stop. The times can be set again.",
        name=name,
    )


def journey_gone(name: str, zone: str, *, own: bool) -> str:
    return tr_if(
        own,
        "Your journey no longer leads to your event (it is now in {zone}, or before you "
        "arrive). Check-ins stay at the time where you are now. Use /travel to plan the "
        "journey again.",
        "{name}'s journey no longer leads to the event (it is now in {zone}, or before the "
        "arrival). I have asked {name} to plan it again.",
        name=name,
        zone=zone,
    )


event_is_back = SentenceOn("The event is again: {event}.")


def athlete_told_event_back(coach: str, line: str) -> str:
    """`line` describes the event that counts again; "" where there is none."""
    if not line:
        return tr(
            "Correction: {name} has removed the event. You have no event set right now.", name=coach
        )
    return tr(
        "Correction: {name} has undone the last change. Your event is again: {event}",
        name=coach, event=line,
    )  # fmt: skip
