"""How an athlete of the twenty answers a morning: by buttons, in one line, with pictures."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date

from tests.support.crowd import Script, Someone
from tests.support.pictures import picture
from tests.support.twenty import ATHLETES, Athlete

# An ordinary week of somebody of 61.2 kg: (weight in kg, fullness, sharpness) by days out.
ORDINARY = {
    7: (61.1, 6, 4), 6: (60.9, 6, 4), 5: (60.7, 5, 4), 4: (60.5, 5, 4),
    3: (60.4, 4, 4), 2: (60.8, 6, 5), 1: (61.4, 8, 5), 0: (61.8, 9, 5),
}  # fmt: skip
WAYS = ("line", "buttons", "line", "pictures")


@dataclass(frozen=True)
class Morning:
    """What is answered, and how many minutes after the question."""

    way: str
    kg: float
    fullness: int
    sharpness: int
    water: str = "3.5"
    after_min: int = 10
    words: str = ""  # what is added to a line


def ordinary(athlete: Athlete, number: int, days_out: int) -> Morning:
    """The morning of the athlete with this number in the cast; each takes turns at the ways."""
    kg, fullness, sharpness = ORDINARY[days_out]
    way = WAYS[(number + days_out) % len(WAYS)]
    return Morning(way, kg * athlete.mass_kg / 61.2, fullness, sharpness)


def colour_of(name: str) -> tuple[int, int, int]:
    """A colour of each athlete's own, by which a picture that went astray is told."""
    number = [one.name for athletes in ATHLETES.values() for one in athletes].index(name)
    return (50 + number % 3 * 80, 50 + number // 3 % 3 * 80, 50 + number // 9 * 80)


def line_of(athlete: Athlete, morning: Morning, days_out: int) -> str:
    """ "61.2 7 3.5", with the sharpness from the load on."""
    weight = athlete.weight(morning.kg)
    sharpness = f" {morning.sharpness}" if days_out <= 3 else ""
    return f"{weight} {morning.fullness} {morning.water}{sharpness} on target"


def answers(person: Someone, athlete: Athlete, morning: Morning, day: date) -> Script:
    days_out = (athlete.event_day - day).days
    by = {"buttons": _by_buttons, "line": _in_a_line, "pictures": _with_pictures}[morning.way]
    return by(person, athlete, morning, days_out)


def _in_a_line(person: Someone, athlete: Athlete, morning: Morning, days_out: int) -> Script:
    person.says(f"{line_of(athlete, morning, days_out)} {morning.words}".strip())
    yield


def _with_pictures(person: Someone, athlete: Athlete, morning: Morning, days_out: int) -> Script:
    yield from _in_a_line(person, athlete, morning, days_out)
    for number in range(3):
        person.sends(
            picture(colour_of(athlete.name), (300, 400)), album=f"{athlete.name}{days_out}",
            caption="before coffee" if number == 0 else "",
        )  # fmt: skip
    yield


def _by_buttons(person: Someone, athlete: Athlete, morning: Morning, days_out: int) -> Script:
    person.says(athlete.weight(morning.kg))
    yield
    person.taps(str(morning.fullness))
    yield
    person.heard("What did you drink")
    person.says(morning.water)
    yield
    if days_out <= 3:
        person.taps(str(morning.sharpness))
        yield
    person.says("310") if days_out == 7 else person.taps("On target*")
    yield
    if 0 < days_out < 7:  # where yesterday had a session in the plan
        person.taps("As planned")
        yield
    person.taps("All fine")
    yield
