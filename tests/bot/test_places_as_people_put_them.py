"""A city is found within the words that people put around it, and nowhere else."""

from __future__ import annotations

import pytest

from bot.core.zones import find_places


@pytest.mark.parametrize(
    ("text", "zone"),
    [
        ("Leeds", "Europe/London"),
        ("vienna austria", "Europe/Vienna"),
        ("München, Deutschland", "Europe/Berlin"),
        ("Cork, Ireland", "Europe/Dublin"),
        ("i live in a village near Cork, Ireland", "Europe/Dublin"),
        ("Sydney time", "Australia/Sydney"),
        ("10:00 Sydney time", "Australia/Sydney"),
        ("9 Uhr Berliner Zeit", "Europe/Berlin"),
        ("Wiener Zeit", "Europe/Vienna"),
        ("bin in basel daheim", "Europe/Zurich"),
        ("dorf neben Villach", "Europe/Vienna"),
        ("in der Nähe von Graz", "Europe/Vienna"),
        ("i'm in Nice", "Europe/Paris"),
    ],
)
def test_a_city_is_found_in_the_words_around_it(text: str, zone: str) -> None:
    assert find_places(text)[0].zone == zone


def test_a_second_city_of_that_name_is_offered_too() -> None:
    zones = {place.zone for place in find_places("Perth (the Scottish one)")}
    assert {"Australia/Perth", "Europe/London"} <= zones


@pytest.mark.parametrize("text", ["why do you need that", "im Zug", "near here", "thanks", "61.4"])
def test_what_names_no_city_is_none(text: str) -> None:
    assert find_places(text) == []
