"""What happens to the twenty in their week: who answers how, what goes wrong, what the coaches do.

Everything is laid on instants; what falls on the same one is played side by side.
"""

from __future__ import annotations

from collections import Counter, defaultdict
from dataclasses import dataclass, field, replace
from datetime import date, datetime, time, timedelta
from typing import Any

from tests.support import acts
from tests.support.crowd import Script
from tests.support.mornings import Morning, answers, line_of, ordinary
from tests.support.twenty import ATHLETES, STAGE_DAY, Athlete, Cast

LIVES_AS = {"Torvald": "Aurelio", "Valentina": "Quillon"}  # an athlete on the coach's own clock
WORDS = "the hotel bed was hard"  # added in the night hours of the coach who is to read it
#: Mornings out of the ordinary, by athlete and days to the stage of most.
SPECIAL: dict[tuple[str, int], dict[str, Any]] = {
    ("Brunhilde", 6): {"way": "line", "water": "7.4"},
    ("Delphine", 5): {"after_min": 180},
    ("Evander", 5): {"way": "line"},
    ("Gwendal", 4): {"way": "line", "after_min": 155},
    ("Quillon", 4): {"way": "line", "words": WORDS},
    **{(name, 2): {"fullness": 2, "sharpness": 5}
       for name in ("Aurelio", "Brunhilde", "Casimira", "Delphine", "Quillon")},
    ("Mireille", 1): {"kg": 63.4, "fullness": 9, "sharpness": 2},
}  # fmt: skip
MISSED = ("Casimira", 6)
#: Who is told a day's figures once more than they answered: something around them changed.
TOLD_AGAIN = {
    ("Evander", 5): "an answer was changed",
    ("Fiorella", 5): "the freeze was lifted",
    ("Mireille", 4): "the freeze was lifted",
    ("Svetlana", 3): "the freeze was lifted, on a Thursday in Tokyo",
    ("Leopold", 4): "the plan was changed by a sheet",
    ("Aurelio", 3): "the day was set by hand",
    ("Jarmila", 4): "held",
    ("Aurelio", 2): "approved",
    ("Brunhilde", 2): "the plan was kept",
    ("Delphine", 2): "another figure was set",
    ("Quillon", 2): "two coaches signed at once, and one word counts",
    ("Casimira", 2): "nobody answered in time",
    ("Mireille", 1): "nobody answered in time",
    ("Theodora", 1): "held, by who stands in",
}


def day(days_out: int) -> date:
    """A day of the week by its days to the stage of most."""
    return STAGE_DAY - timedelta(days=days_out)


ARRIVED = Athlete("", "", "Europe/Madrid").at(day(2), time(8, 0))  # Rosamund, coming from New York


@dataclass
class Week:
    """The program: scripts by the instant at which they begin."""

    cast: Cast
    program: dict[datetime, list[Script]] = field(default_factory=lambda: defaultdict(list))
    targets: Counter[tuple[str, date]] = field(default_factory=Counter)  # due, by athlete and day

    def instant(self, when: str) -> datetime:
        """ "Torvald 8 18:00": eight days to the stage, at six by the clock where Torvald lives."""
        who, days_out, clock = when.split()
        athlete = self.cast.of[LIVES_AS.get(who, who)]
        return athlete.at(day(int(days_out)), time.fromisoformat(clock))

    def at(self, when: str, script: Script) -> None:
        self.program[self.instant(when)].append(script)

    @property
    def handed_over(self) -> datetime:
        """When Valentina begins to hand her athletes to Torvald for the stage weekend."""
        return self.instant("Valentina 3 18:00")

    async def play(self, until: datetime) -> None:
        for instant in sorted(self.program):
            await self.cast.crowd.until(instant)
            await self.cast.crowd.together(*self.program[instant])
        await self.cast.crowd.until(until)


def the_week(cast: Cast) -> Week:
    week = Week(cast)
    _mornings(week)
    for part in (_before_it_begins, _first_days, _four_days_out, _the_load, _the_day_after):
        part(week, cast)
    return week


def _mornings(week: Week) -> None:
    for name, athlete in week.cast.of.items():
        for days_to_stage in range(7, -1, -1):
            on = day(days_to_stage)
            if not 0 <= (athlete.event_day - on).days <= 7 or (name, days_to_stage) == MISSED:
                continue
            morning = morning_of(week.cast, name, days_to_stage)
            answered = _asked(athlete, on) + timedelta(minutes=morning.after_min)
            week.program[answered].append(answers(week.cast[name], athlete, morning, on))
            week.targets[name, on] = 1 + ((name, days_to_stage) in TOLD_AGAIN)


def morning_of(cast: Cast, name: str, days_to_stage: int) -> Morning:
    athlete, number = cast.of[name], list(cast.of).index(name)
    usual = ordinary(athlete, number, (athlete.event_day - day(days_to_stage)).days)
    return replace(usual, **SPECIAL.get((name, days_to_stage), {}))


def _asked(athlete: Athlete, on: date) -> datetime:
    if athlete.name == "Rosamund" and on >= day(2):  # on Madrid's clocks by then
        there = replace(athlete, zone="Europe/Madrid")
        return max(there.at(on, athlete.asked_at), ARRIVED)
    return athlete.at(on, athlete.asked_at)


def _before_it_begins(week: Week, cast: Cast) -> None:
    """Saturday: who stands beside whom, digests, quiet hours; a group is refused."""
    week.at(
        "Torvald 8 18:00",
        acts.brings_in(cast, "Torvald", "Brunhilde", "Ulrike", ("Only*", "Everything")),
    )
    week.at(
        "Torvald 8 18:10",
        acts.brings_in(cast, "Torvald", "Aurelio", "Zebulon", ("All my*", "Alerts only")),
    )
    week.at("Torvald 8 19:00", acts.sets_digest(cast, "Torvald", "Berlin", "20:00"))
    week.at("Torvald 8 19:10", acts.says_in_a_group(cast, "Torvald", "/roster", "How is Aurelio?"))
    week.at("Valentina 8 14:00", acts.sets_digest(cast, "Valentina", "New York", "8:00"))
    quiet = acts.taps(cast, "Valentina", "Quiet hours", "21:00", "7:00", part="21:00 to 07:00")
    week.at("Valentina 8 14:10", quiet)
    for coach in ATHLETES:  # each has the roster open overnight, as it stood in the evening
        for days_out in range(8, -1, -1):
            week.at(f"{coach} {days_out} 22:00", acts.says(cast, coach, "/roster", part="Roster: "))


def _first_days(week: Week, cast: Cast) -> None:
    """A caution, a slip put right, a warning that the coach does not answer, somebody who leaves."""
    week.at("Torvald 6 06:50", acts.acknowledges(cast, "Torvald", "Caution: Brunhilde"))
    better = replace(morning_of(cast, "Evander", 5), fullness=7)
    line = line_of(cast.of["Evander"], better, 5)
    week.at(
        "Evander 5 06:55", acts.edits(cast, "Evander", line, "Changed: fullness 5 → fullness 7")
    )
    week.at("Torvald 5 07:30", acts.looks_through_roster(cast, "Torvald"))
    week.at(
        "Fiorella 5 12:00", acts.says(cast, "Fiorella", "I fainted in the shower", part="Stop.")
    )
    week.at("Torvald 5 12:17", acts.acknowledges(cast, "Wolfram", "Warning: Fiorella"))
    week.at("Torvald 5 13:00", _lifts(cast, "Torvald", "Fiorella"))
    week.at("Rosamund 5 12:00", acts.will_travel(cast, "Rosamund", day(3), day(2)))
    week.at(
        "Valentina 5 12:30",
        acts.on_the_card(cast, "Valentina", "Svetlana", "Freeze", part="Frozen."),
    )
    week.at("Gwendal 5 20:00", acts.stops_the_bot(cast, "Gwendal", with_word=True))


def _four_days_out(week: Week, cast: Cast) -> None:
    """A coach out of reach, an athlete back again, figures set by hand and held, a sheet."""
    week.at("Gwendal 4 09:00", acts.comes_back(cast, "Gwendal", "Your weight this morning"))
    week.at("Ulrike 4 09:00", acts.stops_the_bot(cast, "Ulrike", with_word=False))
    week.at(
        "Mireille 4 11:30", acts.says(cast, "Mireille", "chest pain since breakfast", part="Stop.")
    )
    week.at("Mireille 4 11:40", acts.acknowledges(cast, "Xanthe", "Warning: Mireille"))
    week.at("Ulrike 4 12:00", acts.comes_back(cast, "Ulrike", "you missed this alert"))
    week.at("Ulrike 4 12:05", _lifts(cast, "Ulrike", "Mireille"))
    week.at("Valentina 4 12:30", _lifts(cast, "Valentina", "Svetlana"))
    week.at(
        "Ulrike 4 14:00",
        acts.on_the_card(cast, "Ulrike", "Jarmila", "Hold", "Today", "As now*", part="stays at"),
    )
    week.at("Torvald 4 15:00", acts.sets_by_hand(cast, "Torvald", "Aurelio", "3 out", 600))
    week.at("Ulrike 4 16:00", acts.sheet_there_and_back(cast, "Ulrike", "Leopold"))


def _lifts(cast: Cast, coach: str, athlete: str) -> Script:
    labels = ("Lift the freeze", "Lift it")
    return acts.on_the_card(cast, coach, athlete, *labels, part="The freeze is lifted")


def _the_load(week: Week, cast: Cast) -> None:
    """A handover for the stage weekend, changes that wait for a word, and two words at once."""
    week.at(
        "Valentina 3 18:00",
        acts.brings_in(cast, "Valentina", "Quillon", "Torvald", ("All my*", "Everything")),
    )
    week.at(
        "Torvald 2 07:00", acts.signs(cast, "Torvald", "Aurelio", "Approve*", "Approved by Torvald")
    )
    week.at(
        "Torvald 2 07:02",
        acts.signs(cast, "Ulrike", "Brunhilde", "Keep the plan*", "Ulrike kept the plan"),
    )
    week.at("Torvald 2 07:04", acts.sets_another(cast, "Torvald", "Delphine"))
    week.at("Quillon 2 07:00", acts.signs(cast, "Valentina", "Quillon", "Approve*"))
    week.at("Quillon 2 07:00", acts.signs(cast, "Torvald", "Quillon", "Keep the plan*"))
    labels = ("Hold", "Today", "As now*")
    held = acts.on_the_card(cast, "Torvald", "Theodora", *labels, part="stays at")
    week.at("Torvald 1 12:00", held)


def _the_day_after(week: Week, cast: Cast) -> None:
    week.at("Torvald -1 09:00", acts.taps(cast, "Torvald", "Full", part="was full on the day"))
    for who, clock in (("Ulrike", "06:10"), ("Fiorella", "06:45")):
        week.at(f"{who} -1 {clock}", acts.taps(cast, who, "Fine", "Not today", part="Good."))
    week.at("Ulrike -1 06:20", acts.taps(cast, "Ulrike", "Flat", part="Saved: you were flat"))
