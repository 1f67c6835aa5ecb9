"""Three coaches with twenty athletes on ten clocks, all invented, and how they come to be set up.

Torvald has seven in Berlin; Ulrike, in London, coaches six and herself; Valentina, in New York, six
far apart. Everybody comes in by an invitation and answers every question in the chat.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass
from datetime import UTC, date, datetime, time
from zoneinfo import ZoneInfo

from bot.core.turn import Context, Turn
from bot.membership.invitations import invite_coach_command
from bot.store.db import transaction
from tests.support.crowd import Crowd, Script, Someone
from tests.support.driven_bot import DrivenBot

STAGE_DAY = date(2027, 4, 4)  # Europe's clocks went forward seven days out; Sydney's go back today
BEFORE = datetime(2027, 3, 27, 15, 0, tzinfo=UTC)
CODE = re.compile(r"[0-9A-Z]{4}(?:-[0-9A-Z]{4}){3}")


@dataclass(frozen=True)
class Athlete:
    """Somebody in the cast, as they answer the first questions."""

    name: str
    city: str
    zone: str
    asked_at: time = time(6, 30)
    sex: str = "Female"
    mass_kg: float = 61.2
    unit: str = "kilograms"
    kind: str = "A show"
    event_day: date = STAGE_DAY
    event_city: str = ""  # "" where it is on the athlete's own clocks

    def at(self, day: date, clock: time) -> datetime:
        """The instant of a clock time on a day where this athlete lives."""
        return datetime.combine(day, clock, ZoneInfo(self.zone)).astimezone(UTC)

    def weight(self, kg: float) -> str:
        """A weight as this athlete's scale shows it; 1 lb is 0.45359237 kg, 1 st is 14 lb."""
        pounds = kg / 0.45359237
        if self.unit == "pounds":
            return f"{pounds:.1f}"
        if self.unit == "stones and pounds":
            return f"{int(pounds // 14)} st {pounds % 14:.1f}"
        return f"{kg:.1f}"


def _in(city: str, zone: str, *names: str, **more: object) -> tuple[Athlete, ...]:
    return tuple(Athlete(name, city, zone, **more) for name in names)  # type: ignore[arg-type]


BERLIN, LONDON = ("Berlin", "Europe/Berlin"), ("Leeds", "Europe/London")
NEW_YORK = ("New York", "America/New_York")
ATHLETES: dict[str, tuple[Athlete, ...]] = {
    "Torvald": (
        *_in(*BERLIN, "Aurelio", "Evander", sex="Male", mass_kg=83.4),
        *_in(*BERLIN, "Brunhilde", "Casimira", "Delphine", "Fiorella"),
        *_in(*BERLIN, "Gwendal", kind="A photo shoot", event_day=date(2027, 4, 3)),
    ),
    "Ulrike": (
        *_in(*LONDON, "Ulrike", asked_at=time(6, 0)),
        *_in("Los Angeles", "America/Los_Angeles", "Isolde", "Jarmila", unit="pounds"),
        *_in("Mumbai", "Asia/Kolkata", "Hyacinth", asked_at=time(7, 0)),
        *_in(*LONDON, "Leopold", sex="Male", mass_kg=79.8, unit="stones and pounds"),
        *_in("Johannesburg", "Africa/Johannesburg", "Mireille"),
        *_in(*LONDON, "Nikodem", kind="A trial", event_day=date(2027, 4, 2)),
    ),
    "Valentina": (
        *_in("Auckland", "Pacific/Auckland", "Octavia"),
        *_in("Sydney", "Australia/Sydney", "Perpetua", asked_at=time(7, 0)),
        *_in(*NEW_YORK, "Quillon", sex="Male", mass_kg=88.0),
        *_in(*NEW_YORK, "Rosamund", event_city="Madrid"),
        *_in("Tokyo", "Asia/Tokyo", "Svetlana", asked_at=time(6, 0)),
        *_in("São Paulo", "America/Sao_Paulo", "Theodora"),
    ),
}  # fmt: skip
#: Who is told where the coach does not answer.
CONTACTS = {"Torvald": "Wolfram", "Ulrike": "Xanthe", "Valentina": "Yevgenia"}
ZEBULON = "Zebulon"  # stands beside Torvald, for alerts only


class Cast:
    """The people by name, in their chats."""

    def __init__(self, crowd: Crowd) -> None:
        self.crowd = crowd
        self.of = {one.name: one for athletes in ATHLETES.values() for one in athletes}
        self.coach_of = {one.name: coach for coach, all_ in ATHLETES.items() for one in all_}
        names = dict.fromkeys([*ATHLETES, *self.of, *CONTACTS.values(), ZEBULON])
        # Chat ids that appear nowhere else, so that one which leaks is found.
        self.people = {
            name: crowd.person(7_310_501 + 37 * number, name) for number, name in enumerate(names)
        }

    def __getitem__(self, name: str) -> Someone:
        return self.people[name]


async def everybody_comes_in(cast: Cast, bot: DrivenBot) -> None:
    """The coaches by what `brimline invite coach` prints, all others by what the coaches forward."""
    codes = {coach: _coach_code(bot) for coach in ATHLETES}
    play = cast.crowd.together
    await play(*(_takes(cast[coach], code, "set up here") for coach, code in codes.items()))
    invited: dict[str, str] = {}
    await play(*(_invites(cast, coach, invited) for coach in ATHLETES))
    await play(
        *(_takes(cast[name], invited[name], "second contact") for name in CONTACTS.values()),
        *(_answers_all(cast[name], cast.of[name], code) for name, code in invited.items()
          if name in cast.of),
        _coaches_herself(cast["Ulrike"], cast.of["Ulrike"]),
    )  # fmt: skip


async def coaches_set_the_weeks(cast: Cast) -> None:
    await cast.crowd.together(*(_sets_all(cast, coach) for coach in ATHLETES))


def invitation_heard(person: Someone) -> str:
    """The code in what the bot has just said."""
    return next(
        found.group() for text in person.texts[person.looked :] if (found := CODE.search(text))
    )


def _coach_code(bot: DrivenBot) -> str:
    with transaction(bot.engine) as session:
        context = Context(now=bot.now, bot_username="brimline_test_bot")
        found = CODE.search(invite_coach_command(Turn(session, context)))
    assert found is not None
    return found.group()


def _takes(person: Someone, code: str, part: str) -> Script:
    person.says(f"/start {code}")
    yield
    person.heard(part)


def _invites(cast: Cast, coach: str, invited: dict[str, str]) -> Script:
    person = cast[coach]
    person.says("/contact")
    yield
    invited[CONTACTS[coach]] = invitation_heard(person)
    for athlete in ATHLETES[coach]:
        if athlete.name != coach:
            person.says("/invite")
            yield
            invited[athlete.name] = invitation_heard(person)


def _coaches_herself(person: Someone, athlete: Athlete) -> Script:
    person.says("/selfcoach")
    yield
    yield from _first_questions(person, athlete)


def _answers_all(person: Someone, athlete: Athlete, code: str) -> Script:
    person.says(code)  # as it was read out, without the link
    yield
    yield from _first_questions(person, athlete)


def _first_questions(person: Someone, athlete: Athlete) -> Script:
    person.heard("not a doctor")
    person.taps("I understand and agree")
    yield
    person.says("1994")
    yield
    person.taps(athlete.sex)
    yield
    for _ in range(3):
        person.taps("None of these")
        yield
    person.says(athlete.city)
    yield
    if "Is it this one" in person.texts[-1]:
        person.taps(f"*({athlete.zone})")
        yield
    weight = athlete.weight(athlete.mass_kg)
    unit = {"kilograms": " kg", "pounds": " lb"}.get(athlete.unit, "")
    for answer in (
        f"{athlete.asked_at:%H:%M}", "168 cm", f"{weight}{unit}", "310 150 60 and 3.5 L",
    ):  # fmt: skip
        person.says(answer)
        yield
    person.heard("All set")
    person.taps("Body fat, fibre, salt: answer now")
    yield
    for answer in ("14", "25", "2300"):
        person.says(answer)
        yield


def _sets_all(cast: Cast, coach: str) -> Iterator[None]:
    person = cast[coach]
    for athlete in ATHLETES[coach]:
        person.says("/roster")
        yield
        person.taps("All *")
        yield
        yield from sets_week(person, athlete)


def sets_week(person: Someone, athlete: Athlete) -> Script:
    """Event, plan and limits, by buttons from the roster."""
    for label in (athlete.name, "Event", athlete.kind):
        person.taps(label)
        yield
    person.says(f"{athlete.event_day:%d %B %Y}")
    yield
    if athlete.event_city:
        person.says(athlete.event_city)
        yield
        person.taps(f"{athlete.event_city}*")
    else:
        person.taps("Same time zone")
    yield
    for label in (
        "Draft a plan", "even", "* g/kg", "None", "Use this plan", "Set the limits",
        "Set these limits",
    ):  # fmt: skip
        person.taps(label)
        yield
    person.heard("limits are set")
