"""A journey to an event elsewhere: the questions, by the clocks at home and there, and what is said."""

from __future__ import annotations

from datetime import date, datetime, time, timedelta
from zoneinfo import ZoneInfo

from bot.core.timing.instants import local_instant
from bot.dialogue.flow import Answers, Flow, InvalidAnswer, Step, day_in
from bot.words import figures
from bot.words.languages import Sentence, SentenceOn, SentenceOnTwo, tr, tr_if
from engine.planning.travel import JourneyPlan
from engine.written.units import parse_clock

menu = Sentence("The journey to an event in another time zone")
no_event = Sentence("There is no event to travel to yet: it has to be set first.")
day_is_past = Sentence("That day is already past. Please check the date.")
after_the_event = Sentence("That is after the event. Please check the date.")
arrival_impossible = Sentence(
    "That arrival is before you leave, or more than three days after. Please check the "
    "time. If the day was wrong, cancel and send /travel again."
)
same_zone = SentenceOn(
    "Your event is in your own time zone ({zone}), so there is nothing to plan. If you are "
    "somewhere else, change your place in /settings."
)
ask_leave_day = SentenceOn("On which day do you leave for {away}?")
ask_leave = SentenceOn("At what time ({home} time)?")
ask_arrive_day = SentenceOn("On which day do you arrive ({away} time)?")
ask_arrive = SentenceOn("At what time do you arrive ({away} time)?")


def plan(found: JourneyPlan, home: str, away: str, event_day: date, arrive: datetime) -> str:
    parts = [_shift(found.shift_h, home, away)]
    if found.at_home:
        days = "; ".join(
            f"{figures.short_day(day)} {figures.clock(at)}" for day, at in found.at_home
        )
        parts.append(tr("Start at home: get up, and shift meals with it, at {days}.", days=days))
    if found.shift_h:
        parts.append(_settled(found.settled_on, event_day))
    parts.append(meals_on_the_way(found))
    parts.append(
        tr(
            "From your arrival on ({moment} there) check-ins go by local time. All of this is "
            "common practice.",
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
        tr("Meals; spread each day's target over that day's meals:"),
        *(
            tr(
                "- {day}, {zone} time: {times}",
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
        return tr("{away} has the same time as {home} on that day.", away=away, home=home)
    hours = figures.plain(abs(shift_h))
    if shift_h > 0:
        return tr("{away} is {hours} h ahead of {home}.", away=away, hours=hours, home=home)
    return tr("{away} is {hours} h behind {home}.", away=away, hours=hours, home=home)


def _settled(on: date, event_day: date) -> str:
    return tr_if(
        on <= event_day,
        "Your body clock should have caught up by about {day}.",
        "Your body clock will catch up only by about {day}, which is after the event. Travel "
        "earlier if you can; if not, eat and sleep by the new time from the first hour.",
        day=figures.short_day(on),
    )


def moment(at: datetime, zone: str) -> str:
    local = at.astimezone(ZoneInfo(zone))
    return f"{figures.short_day(local.date())} {figures.clock(local)}"


coach_lead = SentenceOn("{name}'s journey:")
arrived = SentenceOn(
    "You should have arrived. From now on check-ins go by {zone} time; you can change that "
    "in /settings."
)
coach_told_arrived = SentenceOnTwo("{name}'s check-ins now go by {zone} time.")

LONGEST = timedelta(days=3)


def _read_day(text: str, answers: Answers) -> str:
    now = datetime.fromisoformat(answers["_now"]).astimezone(ZoneInfo(answers["_home"]))
    day = day_in(text, now.date())
    if day < now.date():
        raise InvalidAnswer(day_is_past())
    if day > date.fromisoformat(answers["_event_day"]):
        raise InvalidAnswer(after_the_event())
    return day.isoformat()


def _read_clock(text: str) -> str:
    return f"{parse_clock(text):%H:%M}"


def _read_arrival(text: str, answers: Answers) -> str:
    clock = _read_clock(text)
    left, arrived = leaving({**answers}), arriving({**answers, "arrive": clock})
    if not timedelta(0) < arrived - left <= LONGEST:
        raise InvalidAnswer(arrival_impossible())
    return clock


def leaving(answers: Answers) -> datetime:
    """The instant of leaving."""
    return local_instant(
        date.fromisoformat(answers["leave_day"]),
        time.fromisoformat(answers["leave"]),
        answers["_home"],
    )


def arriving(answers: Answers) -> datetime:
    """The instant of arriving."""
    return local_instant(
        date.fromisoformat(answers["arrive_day"]),
        time.fromisoformat(answers["arrive"]),
        answers["_away"],
    )


#: Context: "_home", "_away" (zones), "_event_day" (ISO).
TRAVEL = Flow(
    id="travel",
    steps=(
        Step(
            key="leave_day",
            ask=lambda answers: ask_leave_day(answers["_away"]),
            read_with=_read_day,
        ),
        Step(key="leave", ask=lambda answers: ask_leave(answers["_home"]), read=_read_clock),
        Step(
            key="arrive_day",
            ask=lambda answers: ask_arrive_day(answers["_away"]),
            read_with=_read_day,
        ),
        Step(
            key="arrive", ask=lambda answers: ask_arrive(answers["_away"]), read_with=_read_arrival
        ),
    ),
)
