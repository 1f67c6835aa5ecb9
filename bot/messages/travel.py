"""What athlete and coach read about a journey to an event elsewhere."""

from __future__ import annotations

from datetime import date, datetime
from zoneinfo import ZoneInfo

from bot import figures
from bot.languages import tr
from engine.travel import JourneyPlan


def menu() -> str:
    return tr("The journey to an event in another time zone")


def no_event() -> str:
    return tr("There is no event ahead to travel to: it has to be set first.")


def same_zone(zone: str) -> str:
    return tr(
        "Your event is on the same clocks as you are now ({zone}), so there is no shift to plan. If "
        "you are somewhere else, /settings changes your place.",
        zone=zone,
    )


def ask_leave_day(away: str) -> str:
    return tr("On which day do you leave for {away}?", away=away)


def ask_leave(home: str) -> str:
    return tr("At what time, by the clocks of {home}?", home=home)


def ask_arrive_day(away: str) -> str:
    return tr("On which day do you arrive, by the clocks of {away}?", away=away)


def ask_arrive(away: str) -> str:
    return tr("At what time do you arrive, by the clocks of {away}?", away=away)


def day_is_past() -> str:
    return tr("That day has been already. Please check the date.")


def after_the_event() -> str:
    return tr("That is after the event. Please check the date.")


def arrival_impossible() -> str:
    return tr(
        "Counted over the zones, that is not between leaving and three days later. Please check the "
        "time; if the day was wrong, leave it and send /travel again."
    )


def plan(
    found: JourneyPlan, home: str, away: str, event_day: date, arrive: datetime, *, lead: str = ""
) -> str:
    parts = [lead] if lead else []
    parts.append(_shift(found.shift_h, home, away))
    if found.at_home:
        days = "; ".join(
            f"{figures.short_day(day)} {figures.clock(at)}" for day, at in found.at_home
        )
        parts.append(tr("Begin at home: up (and meals along with it) at {days}.", days=days))
    if found.shift_h:
        parts.append(_settled(found.settled_on, event_day))
    parts.append(meals_on_the_way(found))
    parts.append(
        tr(
            "From the arrival on ({moment} there) I ask by the clocks there. Common practice, all of "
            "it.",
            moment=moment(arrive, away),
        )
    )
    return "\n\n".join(parts)


def meals_on_the_way(found: JourneyPlan) -> str:
    """A line for each day and place, in the order in which they are lived."""
    times: dict[tuple[date, str], list[str]] = {}
    for meal in found.meals:
        local = meal.at.astimezone(ZoneInfo(meal.zone))
        times.setdefault((local.date(), meal.zone), []).append(figures.clock(local))
    lines = [
        tr("Meals, each date's target over the meals of that date:"),
        *(
            tr(
                "- {day} by the clocks of {zone}: {times}",
                day=figures.short_day(day),
                zone=zone,
                times=", ".join(clocks),
            )
            for (day, zone), clocks in times.items()
        ),
        tr("Drink as usual, salt as usual."),
    ]
    return "\n".join(lines)


def _shift(shift_h: float, home: str, away: str) -> str:
    if not shift_h:
        return tr("{away} shows the same time as {home} on that day.", away=away, home=home)
    hours = figures.plain(abs(shift_h))
    if shift_h > 0:
        return tr("{away} is {hours} h ahead of {home}.", away=away, hours=hours, home=home)
    return tr("{away} is {hours} h behind {home}.", away=away, hours=hours, home=home)


def _settled(on: date, event_day: date) -> str:
    if on <= event_day:
        return tr("By then the body clock has about caught up: {day}.", day=figures.short_day(on))
    return tr(
        "By then the body clock has about caught up: {day}, which is after the event. Earlier travel "
        "would help; else keep meals and sleep on the new clocks from the first hour.",
        day=figures.short_day(on),
    )


def moment(at: datetime, zone: str) -> str:
    local = at.astimezone(ZoneInfo(zone))
    return f"{figures.short_day(local.date())} {figures.clock(local)}"


def coach_lead(name: str) -> str:
    return tr("{name}'s journey:", name=name)


def arrived(zone: str) -> str:
    return tr(
        "You should have arrived. From now on I ask by the clocks of {zone}; /settings changes it.",
        zone=zone,
    )


def coach_told_arrived(name: str, zone: str) -> str:
    return tr("{name}'s mornings now go by the clocks of {zone}.", name=name, zone=zone)
