"""What athlete and coach read about a journey to an event elsewhere."""

from __future__ import annotations

from datetime import date, datetime
from zoneinfo import ZoneInfo

from bot.languages import tr
from bot.messages.athlete import short_day
from engine.travel import JourneyPlan


def menu() -> str:
    return "The journey to an event in another time zone"


def no_event() -> str:
    return "There is no event ahead to travel to: your coach sets it first."


def same_zone(zone: str) -> str:
    return (
        f"Your event is on the same clocks as you are now ({zone}), so there is no shift to plan. If "
        "you are somewhere else, /settings changes your place."
    )


def ask_leave_day(away: str) -> str:
    return f"On which day do you leave for {away}?"


def ask_leave(home: str) -> str:
    return f"At what time, by the clocks of {home}?"


def ask_arrive_day(away: str) -> str:
    return f"On which day do you arrive, by the clocks of {away}?"


def ask_arrive(away: str) -> str:
    return f"At what time do you arrive, by the clocks of {away}?"


def day_is_past() -> str:
    return "That day has been already. Please check the date."


def after_the_event() -> str:
    return "That is after the event. Please check the date."


def arrival_impossible() -> str:
    return (
        "Counted over the zones, that is not between leaving and three days later. Please check the "
        "time; if the day was wrong, leave it and send /travel again."
    )


def _hours(shift: float) -> str:
    return f"{abs(shift):g} h {'ahead of' if shift > 0 else 'behind'}"


def plan(
    found: JourneyPlan, home: str, away: str, event_day: date, arrive: datetime, *, lead: str = ""
) -> str:
    parts = [lead] if lead else []
    if found.shift_h:
        parts.append(f"{away} is {_hours(found.shift_h)} {home}.")
    else:
        parts.append(f"{away} shows the same time as {home} on that day.")
    if found.at_home:
        days = "; ".join(f"{short_day(day)} {at:%H:%M}" for day, at in found.at_home)
        parts.append(f"Begin at home: up (and meals along with it) at {days}.")
    if found.shift_h:
        late = found.settled_on > event_day
        settled = f"By then the body clock has about caught up: {short_day(found.settled_on)}"
        parts.append(
            settled
            + (
                ", which is after the event. Earlier travel would help; else keep meals and sleep on "
                "the new clocks from the first hour."
                if late
                else "."
            )
        )
    parts.append(meals_on_the_way(found))
    parts.append(
        f"From the arrival on ({moment(arrive, away)} there) I ask by the clocks there. "
        "Common practice, all of it."
    )
    return "\n\n".join(parts)


def meals_on_the_way(found: JourneyPlan) -> str:
    """A line for each day and place, in the order in which they are lived."""
    times: dict[tuple[date, str], list[str]] = {}
    for meal in found.meals:
        local = meal.at.astimezone(ZoneInfo(meal.zone))
        times.setdefault((local.date(), meal.zone), []).append(f"{local:%H:%M}")
    lines = [
        tr("Meals, each date's target over the meals of that date:"),
        *(
            tr(
                "- {day} by the clocks of {zone}: {times}",
                day=short_day(day),
                zone=zone,
                times=", ".join(clocks),
            )
            for (day, zone), clocks in times.items()
        ),
        tr("Drink as usual, salt as usual."),
    ]
    return "\n".join(lines)


def moment(at: datetime, zone: str) -> str:
    local = at.astimezone(ZoneInfo(zone))
    return f"{short_day(local.date())} {local:%H:%M}"


def coach_lead(name: str) -> str:
    return f"{name}'s journey:"


def arrived(zone: str) -> str:
    return (
        f"You should have arrived. From now on I ask by the clocks of {zone}; /settings changes it."
    )


def coach_told_arrived(name: str, zone: str) -> str:
    return f"{name}'s mornings now go by the clocks of {zone}."
