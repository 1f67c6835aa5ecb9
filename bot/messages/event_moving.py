"""What coach and athlete read when an event moves, and when a move is taken back."""

from __future__ import annotations

from datetime import date

from bot.languages import tr
from bot.messages.athlete import day_name


def came_along(day: date, zone: str) -> str:
    return tr(
        "The timetable has come along to {day}: the same times by the clocks of {zone}, and "
        "reminders for then only. If the times differ, change them below.",
        day=day_name(day),
        zone=zone,
    )


def stayed_behind(name: str, *, own: bool) -> str:
    if own:
        return tr(
            "The timetable of your day did not come along (it was called off, or its classes would "
            "be over by then), and no more reminders come of it. The times can be set anew."
        )
    return tr(
        "The timetable of {name}'s day did not come along (it was called off, or its classes would "
        "be over by then), and no more reminders go out of it. The times can be set anew.",
        name=name,
    )


def journey_gone(name: str, zone: str, *, own: bool) -> str:
    if own:
        return tr(
            "The journey you told me does not lead to your event any more (it is in {zone} now, or "
            "before you arrive). Your mornings stay on the clocks where you are; /travel plans it "
            "anew.",
            zone=zone,
        )
    return tr(
        "{name}'s journey does not lead to the event any more (it is in {zone} now, or before they "
        "arrive). I have asked them to plan it anew.",
        name=name,
        zone=zone,
    )


def event_is_back(line: str) -> str:
    return tr("It is again: {event}.", event=line)
