"""What may tell of the day's times among other words. Lines invented for this, each reviewed."""

from __future__ import annotations

import pytest

from engine.written.stage_perhaps import perhaps_stage_word
from engine.written.stage_times import LAST


@pytest.mark.parametrize(
    ("text", "language", "clocks"),
    [
        ("Prejudging's at quarter to eleven, my mum is more nervous than me", "en", "10:45"),
        ("they have put me back to ten to six in the evening", "en", "17:50"),
        ("juniors at 9:40am and then the open at half past two", "en", "09:40 14:30"),
        ("I'm on at 3, and again at half seven in the masters", "en", "15:00 19:30"),
        ("weigh in 7.30 am, hall by 10, on stage ten past one pm", "en", "13:10"),
        ("figure class 1400, overall 1945", "en", "14:00 19:45"),
        ("Vorwahl um dreiviertel elf, Finale um acht auf d'Nacht", "de", "10:45 20:00"),
        ("Bin um drei dran und um halb acht abends nochmal bei den Masters", "de", "15:00 19:30"),
        ("jetzt erst um viertel nach vier am Nachmittag dran, sagt der Sprecher", "de", "16:15"),
        ("meine Klasse ist erst um drei dran statt um eins", "de", "15:00"),
        (
            "meine Klasse ist um 16 Uhr 5, hat sie gesagt, ab 13 Uhr muss ich in der Halle sein",
            "de",
            "16:05",
        ),
        ("class sixteen twenty, finals twenty thirty", "en", "16:20 20:30"),
        ("Waage 7:30, Einlass um 10 Uhr, Bühne zehn nach eins", "de", "13:10"),
    ],
)
def test_times_of_the_stage_are_found_among_other_words_and_those_of_the_hall_left_out(
    text: str, language: str, clocks: str
) -> None:
    word = perhaps_stage_word(text, language)
    assert word is not None and " ".join(f"{at:%H:%M}" for at in word.clocks) == clocks


@pytest.mark.parametrize(
    ("text", "language", "minutes"),
    [
        ("running forty minutes behind backstage, what do I eat now?", "en", 40),
        ("An hour and a half late now, they lost the music", "en", 90),
        ("hold up, another quarter of an hour", "en", 15),
        ("they've called us forward, half an hour earlier", "en", -30),
        ("anderthalb Stunden Verzug, na super", "de", 90),
        ("nochmal eine Viertelstunde warten", "de", 15),
        ("zehn Minuten vor dem Plan, das gab's noch nie", "de", -10),
    ],
)
def test_a_delay_is_found_among_other_words(text: str, language: str, minutes: int) -> None:
    word = perhaps_stage_word(text, language)
    assert word is not None and word.by_min == minutes and not word.clocks


def test_one_round_of_two_is_told_by_its_name() -> None:
    finals = perhaps_stage_word("finals moved, they're at twenty one hundred now")
    assert finals is not None and finals.which == LAST and f"{finals.clocks[0]:%H:%M}" == "21:00"


@pytest.mark.parametrize(
    ("text", "language"),
    [
        ("be at the hall by 7.15am, weigh-in 7.45am", "en"),
        ("doors for athletes are 9:30 am", "en"),
        ("slept well, up at half six, coffee black", "en"),
        ("the tan lady moved me to 5 pm", "en"),
        ("no times up yet, will shout", "en"),
        ("30 minutes late, no, make that 45", "en"),
        ("halbe Stunde Verzug, nein, doch nicht", "de"),
        ("what time is my class, 3 or 4?", "en"),
        ("Abwiegen Freitag um neun in der Früh", "de"),
        ("muss um zwölf Uhr mittags in der Halle sein", "de"),
        ("Zug um 8:15, dann sind wir da", "de"),
    ],
)
def test_other_times_are_none_of_the_stage(text: str, language: str) -> None:
    assert perhaps_stage_word(text, language) is None
