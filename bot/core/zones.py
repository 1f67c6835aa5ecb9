"""From "I'm in Leeds" or "it's half past two here" to a time zone of the IANA database."""

from __future__ import annotations

import gzip
import re
import unicodedata
from collections.abc import Iterator
from dataclasses import dataclass
from datetime import datetime, time, timedelta
from functools import cache
from importlib.resources import files
from zoneinfo import ZoneInfo, available_timezones

from babel import Locale

from engine.written.late import Late

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

    Takes a zone's own name ("Europe/London") as well as a city's ("Leeds", "San Francisco, US"), and a
    city's within the words that people put around it ("Sydney time", "a village near Cork, Ireland").
    """
    exact = _zones().get(text.strip().lower())
    if exact is not None:
        return [Place(exact.rsplit("/", 1)[-1].replace("_", " "), exact)]
    for name, country in _ways_to_name(text):
        if places := _places_called(name, country):
            return places
    return []


# What people put around the name of their town: "I live near", "10:00 ... time", "bin in ... daheim".
_BESIDE = (
    r"(?:(?:in der nähe von|in|near|close to|outside|from|around|next to|at|aus|bei|nahe|neben) )?"
)
_BEFORE = Late(
    r"(?:(?:i(?:'m| am)|im(?= in )|i live|we live|living|based|currently|at the moment|right now|just|"
    r"ich bin|bin|ich wohne|wohne|wir sind|ich lebe|lebe|derzeit|zurzeit|gerade|jetzt|hier in) )*"
    rf"{_BESIDE}(?:(?:a|the|einem|dem|der|small|little|kleinen|kleines|village|town|dorf|ort) )*"
    rf"{_BESIDE}",
    re.IGNORECASE,
)
_CLOCK_BEFORE = Late(r"\d{1,2}(?:[:.]\d{2})? ?(?:uhr|h|am|pm)? (?=[^\W\d])", re.IGNORECASE)
_BEHIND = Late(
    r"(?:[ ,]*\(.*\)|[ ,]+(?:(?:local |standard |summer )?time(?: zone)?|ortszeit|zeit|zeitzone|"
    r"daheim|zuhause|zu hause|right now|at the moment|now|atm|jetzt|gerade|derzeit|zurzeit|here|"
    r"please|bitte))[.! ]*$",
    re.IGNORECASE,
)


def _ways_to_name(text: str) -> Iterator[tuple[str, str]]:
    """The name of a city and the code of its country, or "", as the text may mean them: first as it
    stands, then without what people put around it.
    """
    plainly = " ".join(text.strip().strip(".!").split())
    bare = plainly
    while (shorter := _BEHIND.sub("", bare)) != bare:
        bare = shorter
    clock = _CLOCK_BEFORE.match(bare)
    bare = bare[clock.end() :] if clock is not None else bare
    before = _BEFORE.match(bare)
    bare = bare[before.end() :] if before is not None else bare
    for named in dict.fromkeys((plainly, bare)):
        name, _, country = named.partition(",")
        yield name, _country(country)
        *words, last = name.split() or [""]
        if words and (code := _country(last)) and code != _NOWHERE:
            yield " ".join(words), code
    if bare != plainly and bare.endswith("er"):  # "Berliner Zeit"
        yield bare[:-2], ""
        yield f"{bare[:-2]}en", ""


_NOWHERE = "?"


def _country(name: str) -> str:
    """The code of a country given by code or by its English or German name; "" for no name at all."""
    if not name.strip():
        return ""
    return _countries().get(plain(name), _NOWHERE)


@cache
def _countries() -> dict[str, str]:
    """Codes of countries (ISO 3166) by code and by name, from the CLDR."""
    named = {"uk": "GB", "england": "GB", "scotland": "GB", "wales": "GB", "usa": "US"}
    for language in ("en", "de"):
        for code, name in Locale(language).territories.items():
            if len(code) == 2 and code.isalpha():
                named.setdefault(plain(name), code)
                named.setdefault(code.lower(), code)
    return named


def _places_called(name: str, country: str) -> list[Place]:
    places: dict[str, Place] = {}
    only_by_own_name = None
    for city, code, zone in _so_called(plain(name)):
        if country in ("", code) and zone.lower() in _zones():
            own_name = plain(city) == plain(name)
            # Beside the best known place of that name, one that was once called so is not meant.
            only_by_own_name = own_name if only_by_own_name is None else only_by_own_name
            if own_name or not only_by_own_name:
                places.setdefault(zone, Place(f"{city}, {code}", zone))
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


def plain(name: str) -> str:
    """A name as it is compared: small letters and digits only, no accents."""
    decomposed = unicodedata.normalize("NFKD", name.strip().casefold())
    return "".join(c for c in decomposed if c.isalnum())


@cache
def _zones() -> dict[str, str]:
    """The zones of the IANA database by their names in small letters; finding them reads the disk."""
    return {zone.lower(): zone for zone in available_timezones()}


@cache
def _cities() -> bytes:
    """A line for each city of 15,000 people and more, the largest first, from GeoNames (CC BY 4.0).

    Name, country code, zone and |plain names| apart by tabs; `python -m tests.support.cities` wrote it.
    """
    return gzip.decompress((files(__package__) / "cities.tsv.gz").read_bytes())


def _so_called(name: str) -> list[tuple[str, str, str]]:
    """Cities with this plain name as (name, country code, zone), the likeliest first.

    One so called comes before a larger one that is known by the name as well (Porto, PT before
    Bordeaux, FR).
    """
    cities, found, at = _cities(), [], 0
    while name and (at := cities.find(f"|{name}|".encode(), at)) >= 0:
        start, at = cities.rfind(b"\n", 0, at) + 1, cities.index(b"\n", at)
        city, country, zone, _ = cities[start:at].decode().split("\t")
        found.append((city, country, zone))
    return sorted(found, key=lambda city: plain(city[0]) != name)
