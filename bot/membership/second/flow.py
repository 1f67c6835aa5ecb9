"""For whom a second coach stands in, with which rights, until which day."""

from __future__ import annotations

from datetime import date, datetime, timedelta
from functools import partial
from zoneinfo import ZoneInfo

from bot.dialogue.flow import (
    Answers,
    Choice,
    Choices,
    Flow,
    InvalidAnswer,
    Step,
    buttons,
    day_in,
    one_of,
)
from bot.membership.second import words

AT_MOST_DAYS = 31  # our own choice: a stage weekend, a trip, an illness; not another coach for good
ONE, ALL = "one", "all"


def _read_until(text: str, answers: Answers) -> str:
    today = datetime.fromisoformat(answers["_now"]).astimezone(ZoneInfo(answers["_zone"])).date()
    day = day_in(text, today)
    if day < today:
        raise InvalidAnswer(words.until_is_past())
    if day - today > timedelta(days=AT_MOST_DAYS):
        raise InvalidAnswer(words.until_is_far(AT_MOST_DAYS))
    return day.isoformat()


def _until_choices(answers: Answers) -> Choices:
    if answers["_event_day"] is None:
        return ()
    event = date.fromisoformat(answers["_event_day"])
    after = event + timedelta(days=1)
    return (
        (Choice(words.until_event_button(event), event.isoformat()),),
        (Choice(words.until_day_after_button(after), after.isoformat()),),
    )


def _whom_choices(answers: Answers) -> Choices:
    return ((Choice(words.only_button(answers["_name"]), ONE), Choice(words.all_button(), ALL)),)


#: Context: "_name", the athlete's; "_event_day" (ISO or None); "_zone", the coach's.
SECOND = Flow(
    id="coach-second",
    steps=(
        Step(
            key="whom",
            ask=lambda answers: words.ask_whom(answers["_name"]),
            read=one_of(ONE, ALL),
            choices=_whom_choices,
        ),
        Step(
            key="rights",
            ask=words.ask_rights,
            read=one_of(*words.RIGHTS),
            choices=buttons(
                tuple((partial(words.rights_button, right), right) for right in words.RIGHTS)
            ),
        ),
        Step(key="until", ask=words.ask_until, read_with=_read_until, choices=_until_choices),
    ),
)
