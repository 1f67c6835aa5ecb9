"""The coach's athletes in one message: who needs the coach first, kept up to date in place."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass

from bot.coach.roster import words
from bot.coach.roster.standing import NEEDS_THE_COACH, Seen, Standing, decided_line, look, standing
from bot.core.callbacks import answer, rewrite
from bot.core.outbox import TEXT_LIMIT, Button, Buttons, edit
from bot.core.turn import Act, ChatTurn, Turn
from bot.decision.signoff import morning_line
from bot.people import desk
from bot.people.people import get_person
from bot.people.rights import athletes_seen_by
from bot.people.telling import say_to
from bot.store.tables.people import Person
from bot.store.tables.traffic import AgendaRow
from bot.words import coach_figures as figures
from bot.words import common

ON_A_PAGE = 20
LONGEST_PAGE = TEXT_LIMIT - 200  # UTF-16 units, as Telegram counts; the rest is for head and foot
BUTTONS_IN_A_ROW = 3

Line = tuple[Standing, Seen]


def _needs_coach(line: Line) -> bool:
    return line[0].rank <= NEEDS_THE_COACH


def _loads(line: Line) -> bool:
    return line[1].days_out in line[1].load_days


def _in_week(line: Line) -> bool:
    return line[1].in_week


FILTERS: dict[str, Callable[[Line], bool]] = {
    "": lambda _line: True,
    "me": _needs_coach,
    "load": _loads,
    "week": _in_week,
}


@dataclass(frozen=True, slots=True)
class Page:
    """What is shown: `number` is the page that there is, whichever was asked for."""

    text: str
    buttons: Buttons
    number: int


def show_roster(turn: Act) -> None:
    """/roster"""
    page = _page(turn, turn.person, 0, "")
    row = say_to(turn, turn.person, page.text, buttons=page.buttons)
    desk.roster_shown(turn.session, turn.person, page=0, shown="", outbox_id=row.id)


def turn_page(turn: ChatTurn, coach: Person, arguments: list[str]) -> None:
    """Buttons "c:roster:PAGE:FILTER"; the page that is shown already is refreshed."""
    number, shown = (*arguments, "", "")[:2]
    shown = shown if shown in FILTERS else ""
    answer(turn, words.up_to_date())
    page = _page(turn, coach, int(number) if number.isdigit() else 0, shown)
    rewrite(turn, page.text, page.buttons)
    desk.roster_shown(
        turn.session, coach, page=page.number, shown=shown, message_id=turn.incoming.message_id
    )


def refresh(turn: Turn, duty: AgendaRow) -> None:
    """Something has happened: the roster that the coach has open is brought up to date."""
    coach = get_person(turn.session, int(duty.subject.partition(":")[2]))
    found = desk.roster_message(turn.session, coach)
    if found is None or not coach.reachable:
        return
    kept = desk.desk_of(turn.session, coach)
    page = _page(turn, coach, kept.roster_page, kept.roster_filter)
    edit(
        turn.session, chat_id=coach.chat_id, text=page.text, buttons=page.buttons, now=turn.now,
        outbox_id=found.outbox_id, message_id=found.message_id, topic=f"roster:{coach.id}",
    )  # fmt: skip


def _page(turn: Turn, coach: Person, number: int, shown: str) -> Page:
    profiles = athletes_seen_by(turn.session, coach)
    if not profiles:
        return Page(common.nobody_yet(), (), 0)
    here = desk.zone_of_coach(turn.session, coach)
    everybody = [(standing(seen, turn.context, here), seen) for seen in look(turn, profiles)]
    everybody.sort(key=lambda line: (line[0].rank, line[0].order))
    chosen = [line for line in everybody if FILTERS[shown](line)]
    pages = _split(chosen)
    number = min(number, len(pages) - 1)
    on_page = pages[number]
    texts = [_text(*line) for line in on_page] or [words.nobody_here(shown)]
    head = words.head(shown, len(chosen), len(everybody), number, len(pages))
    foot = words.as_of(figures.clock_with_zone(turn.now, here))
    buttons = [
        *_filter_buttons(everybody, shown),
        *_openers(on_page),
        _turning(number, len(pages), shown),
    ]
    return Page("\n\n".join([head, *texts, foot]), buttons, number)


def _text(found: Standing, seen: Seen) -> str:
    morning = morning_line(seen.profile, seen.morning) if seen.morning is not None else None
    return words.line(
        seen.person.first_name,
        seen.event.kind if seen.event is not None else None,
        seen.days_out,
        morning or (words.no_numbers() if seen.in_week else None),
        decided_line(seen),
        found.state,
        seen.wrote,
    )


def _split(lines: Sequence[Line]) -> list[list[Line]]:
    """Pages of twenty at most, fewer where twenty would not fit a message; one page at least."""
    pages: list[list[Line]] = [[]]
    room = LONGEST_PAGE
    for line in lines:
        length = len(_text(*line).encode("utf-16-le")) // 2 + 2
        if len(pages[-1]) == ON_A_PAGE or (pages[-1] and length > room):
            pages.append([])
            room = LONGEST_PAGE
        pages[-1].append(line)
        room -= length
    return pages


def _filter_buttons(everybody: Sequence[Line], shown: str) -> Buttons:
    buttons = [
        Button(
            words.filter_button(key, sum(matches(line) for line in everybody), chosen=key == shown),
            f"c:roster:0:{key}",
        )
        for key, matches in FILTERS.items()
    ]
    return [buttons[:2], buttons[2:]]


def _openers(lines: Sequence[Line]) -> Buttons:
    openers = [
        Button(words.short(seen.person.first_name), f"c:card:{seen.profile.person_id}")
        for _, seen in lines
    ]
    return [openers[i : i + BUTTONS_IN_A_ROW] for i in range(0, len(openers), BUTTONS_IN_A_ROW)]


def _turning(number: int, pages: int, shown: str) -> list[Button]:
    turning = [Button(words.refresh_button(), f"c:roster:{number}:{shown}")]
    if number > 0:
        turning.insert(0, Button(words.earlier_button(), f"c:roster:{number - 1}:{shown}"))
    if number < pages - 1:
        turning.append(Button(words.next_button(), f"c:roster:{number + 1}:{shown}"))
    return turning
