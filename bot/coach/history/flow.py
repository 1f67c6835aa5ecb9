"""Which day of an athlete's history the coach wants to see."""

from __future__ import annotations

from datetime import datetime
from zoneinfo import ZoneInfo

from bot.coach.history import words
from bot.dialogue.flow import Answers, Flow, Step, day_in


def _read_day(text: str, answers: Answers) -> str:
    today = datetime.fromisoformat(answers["_now"]).astimezone(ZoneInfo(answers["_zone"])).date()
    return day_in(text, today).isoformat()


#: Context: "_zone", the athlete's.
HISTORY_DAY = Flow(
    id="coach-history-day", steps=(Step(key="day", ask=words.ask_day, read_with=_read_day),)
)
