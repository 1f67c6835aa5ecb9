"""Everybody is spoken to in their own language, and the catalogues say all that there is to say."""

from __future__ import annotations

import ast
import importlib
import pkgutil
import re
import string
from collections.abc import Callable, Iterator
from datetime import UTC, date, datetime
from pathlib import Path

import pytest
from babel.messages import Message
from sqlmodel import select

from bot.dialogue.flow import day_in
from bot.dispatcher import COMMANDS
from bot.store.tables.people import Person
from bot.store.tables.traffic import OutboxRow
from bot.words import figures, languages
from bot.words.locale.update import catalogue_file, read
from engine import evidence
from engine.decision.facts import Facts
from engine.decision.rules import table, words
from engine.decision.rules.rule import GAPS
from engine.evidence.source import Source
from tests.support.foreign import (
    FOREIGN,
    OURS,
    calendar_names,
    is_foreign,
    plain_words,
    sentences_in,
    write_foreign_catalogue,
)
from tests.support.weeks import Team
from tests.support.world import Someone, World, text_of

TRANSLATIONS = [code for code in languages.known() if code != languages.ENGLISH]

# The catalogues


def test_every_gap_in_a_sentence_on_a_decision_is_a_fact_or_has_its_filling() -> None:
    known = Facts.names() | GAPS.keys()
    for module in (table, words):
        tree = ast.parse(Path(module.__file__).read_text(encoding="utf-8"))
        said = [n for n in ast.walk(tree) if isinstance(n, ast.Call) and is_told(n)]
        assert said, f"nothing is said of a decision in {module.__name__}"
        for call in said:
            message, given = call.args[0], {str(given.arg) for given in call.keywords}
            assert isinstance(message, ast.Constant)
            gaps = {gap for _, gap, _, _ in string.Formatter().parse(str(message.value)) if gap}
            gaps -= given
            assert gaps <= known, f"{module.__name__}: nothing fills {gaps - known}"


def is_told(call: ast.Call) -> bool:
    return ast.unparse(call.func) == "told.tr"


def forms(text: object) -> list[str]:
    return list(text) if isinstance(text, list | tuple) else [str(text or "")]


def placeholders(text: str) -> set[tuple[str, str]]:
    found = string.Formatter().parse(text)
    return {(name, spec or "") for _, name, spec, _ in found if name is not None}


def fits(message: Message, translated: Message) -> bool:
    """Whether each form names what its sentence names; one of a plural may leave the number out."""
    named = set().union(*map(placeholders, forms(message.id)))
    may_miss = {("number", "")} if message.pluralizable else set()
    return all(named - may_miss <= placeholders(form) <= named for form in forms(translated.string))


@pytest.mark.parametrize("code", TRANSLATIONS)
def test_every_sentence_is_translated_and_names_what_it_should(code: str, in_code: Path) -> None:
    there = read(catalogue_file(code, OURS), code)
    wrong = []
    for message in sentences_in(in_code):
        found = there.get(message.id) if message.id else None
        if message.id and (
            found is None
            or found.fuzzy
            or not all(forms(found.string))
            or bool(found.pluralizable) != bool(message.pluralizable)
            or not fits(message, found)
        ):
            wrong.append(message.id)
    assert not wrong, "run python -m bot.words.locale.update, then translate"


@pytest.mark.parametrize("code", TRANSLATIONS)
def test_nothing_is_translated_that_is_not_said_any_more(code: str, in_code: Path) -> None:
    there, said = read(catalogue_file(code, OURS), code), sentences_in(in_code)
    assert not [m.id for m in there if m.id and said.get(m.id) is None]
    assert not there.obsolete


# Numbers and days. German as the CLDR has it: https://cldr.unicode.org (locale de), which DIN 5008
# agrees with for the comma and the day before the month.


def test_no_sentence_stands_inside_an_f_string_where_nobody_finds_it() -> None:
    """What collects sentences does not look into them, so that such a one stays English."""
    within = re.compile(r"""\bf["'].*\{[^{}]*\b(?:(?:trn?|mark|Sentence\w*)\(['"]|tr_if\()""")
    assert within.search("said = f\"{first}: {tr('You felt dizzy')}.\"")
    assert within.search("said = f\"{first}: {tr_if(own, 'You felt it', 'It was felt')}.\"")
    found = [
        f"{path.name}: {line.strip()}"
        for path in Path(languages.__file__).parents[1].rglob("*.py")
        for line in path.read_text(encoding="utf-8").splitlines()
        if within.search(line)
    ]
    assert not found


def test_numbers_days_and_weights_are_written_as_germans_write_them(ours: None) -> None:
    with languages.speaking("de"):
        assert figures.number(12345.5, 1) == "12.345,5"
        assert figures.signed(-25) == "−25"
        assert figures.weight(61.2, "kg") == "61,2 kg"
        assert figures.volume(3.5, "l") == "3,5 L"
        assert figures.long_day(date(2027, 5, 9)) == "Sonntag, 9. Mai"
        assert figures.short_day(date(2026, 12, 8)) == "Di. 8. Dez."
        assert figures.all_of(["Reis", "Huhn", "Salz"]) == "Reis, Huhn und Salz"


def test_english_is_written_as_ever() -> None:
    assert figures.number(12345.5, 1) == "12,345.5"
    assert figures.short_day(date(2026, 12, 8)) == "Tue 8 Dec"
    assert figures.long_day(date(2027, 5, 9)) == "Sunday 9 May"


# Who is spoken to in which


@pytest.fixture
def team(team_at: Callable[[datetime], Team]) -> Team:
    """Three days out, Thursday 6 May, at seven in London."""
    return team_at(datetime(2027, 5, 6, 6, 0, tzinfo=UTC))


def test_whose_telegram_is_german_reads_german_and_may_choose_english(
    ours: None, team: Team
) -> None:
    team.athlete.language = "de-AT"
    assert "Guten Morgen" in text_of(team.athlete.writes("/checkin"))
    team.athlete.writes("/language")
    assert "English" in text_of(team.athlete.taps("English"))
    assert "Good morning" in text_of(team.athlete.writes("/checkin"))
    team.athlete.writes("/language")
    team.athlete.taps("As Telegram is set")
    assert "Guten Morgen" in text_of(team.athlete.writes("/checkin"))


def test_the_menu_follows_the_language(ours: None, team: Team) -> None:
    def menu() -> dict[str, str]:
        with team.world.session() as session:
            rows = session.exec(
                select(OutboxRow).where(
                    OutboxRow.method == "setMyCommands", OutboxRow.chat_id == team.athlete.user_id
                )
            )
            shown = list(rows)[-1].payload["commands"]
        return {one["command"]: one["description"] for one in shown}

    team.athlete.writes("/today")
    assert menu()["today"] == "Today's targets"
    team.athlete.language = "de"
    team.athlete.writes("/today")
    assert menu()["today"] == "Die Vorgaben für heute"


def test_a_language_that_is_not_there_is_answered_in_english(ours: None, team: Team) -> None:
    team.athlete.language = "pt-br"
    assert "Good morning" in text_of(team.athlete.writes("/checkin"))


def test_german_words_are_understood_and_english_ones_still(ours: None, team: Team) -> None:
    team.athlete.language = "de"
    said = text_of(team.athlete.writes("61,2 kg, Fülle 6, Wasser 3,5 l, Schärfe 4, alles gut"))
    assert "Kohlenhydrate 500 g (wie geplant)" in said
    team.athlete.language = "en"
    assert "carbs set 500 g" in text_of(team.athlete.writes("/past"))


@pytest.mark.parametrize(
    ("typed", "day"),
    [
        ("5. Juni", date(2027, 6, 5)), ("5.6.", date(2027, 6, 5)), ("morgen", date(2027, 5, 2)),
        ("Sa. 12. Juni", date(2027, 6, 12)), ("in 10 Tagen", date(2027, 5, 11)),
        ("3. März", date(2028, 3, 3)), ("14 May", date(2027, 5, 14)),
    ],
)  # fmt: skip
def test_dates_are_typed_as_germans_write_them(ours: None, typed: str, day: date) -> None:
    with languages.speaking("de"):
        assert day_in(typed, date(2027, 5, 1)) == day


def test_buttons_may_be_typed_out_in_german(ours: None, team: Team) -> None:
    team.athlete.language = "de"
    team.athlete.writes("/checkin")
    for answer in (
        "61,2",
        "7 von 10",
        "3,5 Liter",
        "4",
        "nach Plan",
        "wie geplant",
        "Etwas stimmt nicht",
    ):
        said = team.athlete.writes(answer)
    assert "Hak alles an" in said[-1].text
    team.athlete.writes("Übelkeit")
    said = team.answers(
        {"gut": "schwer", "sleep_h": "7 Stunden", "note": "überspringen"}, typed=True
    )
    assert "Ballaststoffe" in text_of(said)  # the day's targets: everything was taken


# A week in two languages


class Bilingual:
    """A peak week in which everything that is offered is pressed once by whoever is offered it."""

    MOST_PRESSES = 140
    #: What would end the week for everybody.
    LEFT_ALONE = ("gone:yes", "gone:all", "c:end-yes", "c:undo-yes", "st:off-yes", "lang:", "http")

    def __init__(self, team: Team) -> None:
        self.team = team
        self.pressed: set[tuple[int, str]] = set()

    def play(self) -> None:
        team = self.team
        lea = Someone(team.world, 104, "Lea", language=team.coach.language)
        code = re.search(r"/join (\S+)", text_of(team.coach.writes("/contact")))
        assert code is not None
        lea.writes(f"/join {code[1]}")
        self.press_what_is_offered(60)
        team.athlete.writes("61.0 1 3.5 5 on target fine")
        team.athlete.writes("very dizzy and I hardly slept")
        self.press_what_is_offered(40)
        self.acknowledge_what_is_open()
        team.morning(2)
        team.athlete.writes("62.9 9 3.4 2 on target; sore hips")
        for someone in (team.athlete, team.coach):
            for command in COMMANDS:
                if command not in ("delete_my_data", "pause"):
                    someone.writes(f"/{command}")
        self.press_what_is_offered(self.MOST_PRESSES)
        team.athlete.writes("I fainted in the shower")
        team.world.later(minutes=40)
        self.acknowledge_what_is_open()
        team.morning(-2)
        for someone in (team.athlete, team.coach, lea):
            someone.writes("/help")
            someone.writes("what?")

    def acknowledge_what_is_open(self) -> None:
        """So that nothing is repeated for days."""
        for said in self.team.coach.all_said():
            for data in said.buttons.values():
                if data.startswith("alert:ack"):
                    self.team.coach.presses(data, said.outbox_id)

    def press_what_is_offered(self, most: int) -> None:
        for _ in range(most):
            found = next(self._offered(), None)
            if found is None:
                return
            someone, data, outbox_id = found
            someone.presses(data, outbox_id)

    def _offered(self) -> Iterator[tuple[Someone, str, int]]:
        for someone in (self.team.athlete, self.team.coach):
            for said in reversed(someone.all_said()[-12:]):
                for data in said.buttons.values():
                    kind = (someone.user_id, re.sub(r"\d+", "#", data))
                    if kind not in self.pressed and not data.startswith(self.LEFT_ALONE):
                        self.pressed.add(kind)
                        yield someone, data, said.outbox_id


def last_row(world: World) -> int:
    with world.session() as session:
        return max(session.exec(select(OutboxRow.id)), default=0) or 0


def sayings(world: World, chat_id: int, since: int = 0) -> list[str]:
    """All that was written to this chat: messages, buttons, captions, answers to taps, the menu."""
    with world.session() as session:
        rows = list(session.exec(select(OutboxRow).where(OutboxRow.chat_id == chat_id)))
    rows = [row for row in rows if (row.id or 0) > since]
    found: list[str] = []
    for row in rows:
        payload = row.payload
        keyboard = payload.get("reply_markup", {}).get("inline_keyboard", [])
        found += [payload.get("text", ""), payload.get("caption", "")]
        found += [button["text"] for line in keyboard for button in line]
        found += [one["description"] for one in payload.get("commands", [])]
        found += [one.get("caption", "") for one in payload.get("media", [])]
    return [text for text in found if text]


def citations() -> list[str]:
    """Where numbers come from, which is cited as it stands."""
    modules = [
        importlib.import_module(f"engine.evidence.{found.name}")
        for found in pkgutil.iter_modules(evidence.__path__)
    ]
    found = {
        value.citation
        for module in modules
        for value in vars(module).values()
        if isinstance(value, Source)
    }
    return sorted(found, key=len, reverse=True)


UNITS = "XLSX CSV English kg lb st mg ml oz fl us imp kcal cm min am pm UTC GMT BST Telegram"
TYPED = "very dizzy and hardly slept sore hips fainted in the shower what"


@pytest.mark.parametrize("foreign", ["coach", "athlete"])
def test_a_week_in_two_languages_never_mixes_them(
    team: Team, foreign: str, in_code: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    write_foreign_catalogue(tmp_path, in_code)
    monkeypatch.setattr(languages, "CATALOGUES", tmp_path)
    speaker, other = (
        (team.coach, team.athlete) if foreign == "coach" else (team.athlete, team.coach)
    )
    speaker.language, other.language = FOREIGN, languages.ENGLISH
    speaker.writes("/help")  # from here on their language is known
    before = last_row(team.world)
    Bilingual(team).play()
    known = frozenset(f"Ravi Mira Lea Brimline {UNITS} {TYPED}".split()) | calendar_names()
    untranslated: dict[str, list[str]] = {}
    cited = citations()
    for text in sayings(team.world, speaker.user_id, since=before):
        said = text
        for citation in cited:
            said = said.replace(citation, " ")
        if words := plain_words(said, known):
            untranslated[text] = words
    mixed = [text for text in sayings(team.world, other.user_id) if is_foreign(text)]
    assert (untranslated, mixed) == ({}, [])


def test_a_person_is_kept_with_the_language_chosen(ours: None, team: Team) -> None:
    team.athlete.presses("lang:de")
    with team.world.session() as session:
        person = session.exec(
            select(Person).where(Person.telegram_user_id == team.athlete.user_id)
        ).one()
    assert person.chosen_language == "de"
