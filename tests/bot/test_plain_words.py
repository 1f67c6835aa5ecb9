"""Words that a tired reader trips over, and words that were two for one thing: none comes back."""

from __future__ import annotations

import re
from functools import cache
from pathlib import Path

from babel.messages import Message
from babel.messages.pofile import read_po

from bot.words.languages import CATALOGUES, DOMAIN
from tests.support.foreign import sentences_in

# A pattern each, and why it went. What a person types (a list of words in the catalogue) is free.
RETIRED_ENGLISH = {
    r"\bNoted\b": "reads as if somebody had been told: say Saved, or who was told",
    r"\boutlook\b": "forecast is the one word",
    r"\bthe model\b": "forecast is the one word",
    r"\bguard rail": "safety bound is the one word",
    r"\babsolute bound": "safety bound is the one word",
    r"\bas ever\b": "means as always, and was read as as much as ever",
    r"\ball the same\b": "say anyway",
    r"\bSo be it\b": "sulky",
    r"\banew\b": "say again",
    r"\brehears": "trial (noun) and practise (verb) are the words",
    r"\bthe plan holds\b": "hold is the coach's own hold: stay on plan",
    r"\b[Hh]eld at\b": "hold is the coach's own hold: on plan",
    r"\bheld by\b": "hold is the coach's own hold: limited by",
    r"\bhold(s)? (it|them|you|the figure)\b": "hold is the coach's own hold",
    r"\b(your|coach's|doctor's|their|no) word\b": "approval, clearance or verdict",
    r"\bword from you\b": "approval, clearance or verdict",
    r"\bstands? beside\b": "second coach, or second contact",
    r"\btheir time\b": "nobody converts times: the reader's clock, the athlete's beside it",
    r"\bby the clocks of\b": "say the time zone's time",
    r"\b(front|fat)[- ]load in\b|\blead-in\b": "say what comes first",
    r"from memory|was seen\b|framing": "how a source was seen belongs to the evidence",
    r"\bReckoned\b|\breckon": "workshop word",
    r"\bno medical device\b": "say: is not a medical device",
    r"\bpictures?\b": "photos (of the morning) or chart (of the week)",
    r"\bnumbers this morning\b": "check-in is the event, answers its content",
    r"\bThe mornings? moved\b": "check-in is the event",
    r"\bmean load day\b": "say average",
    r"\bhas been already\b|\bhave been already\b": "say is already past",
    r"\bwants a second look\b": "log style",
    r"Of ten such": "say chances",
}
RETIRED_GERMAN = {
    r"\b[Pp]rall": "über eine Person schief: voll",
    r"\b[Üü]bergelaufen": "überladen",
    r"\bÜberlaufen\b": "überladen",
    r"^Aufgehoben|(beim Plan|mit der Änderung|hier|Antworten) aufgehoben": "gespeichert",
    r"\bTipper\b": "ist jemand, der tippt",
    r"\bLeitplanke": "Sicherheitsgrenze oder Höchstgrenze",
    r"\bFülle\b": "Leibesfülle: voll",
    r"\bSchärfe\b": "im Sport: Definition",
    r"\bZweitkontakt": "zweiter Kontakt",
    r"\bAlarme?\b": "Meldung",
    r"\bVorhersage": "Prognose",
    r"\bShow\b": "Wettkampf",
    r"\bLadung": "Fracht: Laden",
    r"\bProbelauf": "Probe",
    r"\bDie Morgen haben\b": "Morgen als Täter",
    r"\bNotiert\b": "klingt, als hätte jemand Bescheid bekommen",
    r"\bSo soll es sein\b|\b[Dd]urchziehen\b": "trotzig",
    r"\bgehalten\b": "Halten heißt fester Wert",
    r"\b(dein|das|kein|zum) Wort\b|auf (dein|ein) Wort\b": "Freigabe, ärztliches Okay oder Urteil",
    r"aus dem Gedächtnis": "gehört in die Belege",
    r"\bhinausgeht\b|\bgeht .* hinaus\b": "Amtsdeutsch: schicken",
    r"\bBilder?\b": "Fotos oder Diagramm",
}
#: Messages that have not been gone through yet; whoever does takes the line out.
NOT_YET = frozenset[str]()
#: Lists of what people type stand in the catalogue too, and may hold any word.
TYPED = ("show day, the show day", "spilled, spilled over, ")


def _not_yet(message: Message) -> bool:
    return {place for place, *_ in message.locations} <= NOT_YET


@cache
def english(in_code: Path) -> list[str]:
    return [
        text
        for message in sentences_in(in_code)
        if message.id and not _not_yet(message)
        for text in (message.id if isinstance(message.id, list | tuple) else (message.id,))
        if not text.startswith(TYPED)
    ]


@cache
def german() -> list[str]:
    with (CATALOGUES / "de" / "LC_MESSAGES" / f"{DOMAIN}.po").open("rb") as source:
        catalogue = read_po(source, locale="de")
    return [
        text
        for message in catalogue
        if message.id and not _not_yet(message) and not str(message.id).startswith(TYPED)
        for text in (message.string if isinstance(message.string, tuple) else (message.string,))
    ]


def retired(sentences: list[str], words: dict[str, str]) -> list[tuple[str, str]]:
    """The sentences in which one of these words stands, each with why it went."""
    at_once = "\n".join(sentences)  # thousands of short searches take ten times as long
    return [
        (text, why)
        for pattern, why in words.items()
        if re.search(pattern, at_once, re.MULTILINE)
        for text in sentences
        if re.search(pattern, text)
    ]


def test_a_retired_english_word_is_in_no_sentence(in_code: Path) -> None:
    assert retired(english(in_code), RETIRED_ENGLISH) == []


def test_a_retired_german_word_is_in_no_sentence() -> None:
    assert retired(german(), RETIRED_GERMAN) == []


def test_what_is_retired_is_found_among_sentences_that_are_not() -> None:
    said = ["So no more on top: the plan holds.", "Gut.", "Aufgehoben.", "Gut aufgehoben."]
    assert [text for text, _ in retired(said, RETIRED_ENGLISH | RETIRED_GERMAN)] == [
        "So no more on top: the plan holds.", "Aufgehoben.",
    ]  # fmt: skip


def test_a_retired_word_would_be_found() -> None:
    """The patterns find the sentences for which they were written."""
    assert re.search(r"\bthe plan holds\b", "So no more on top: the plan holds.")
    assert all(re.compile(pattern) for pattern in (*RETIRED_ENGLISH, *RETIRED_GERMAN))
