"""All athletes at once: the sheet handed out and taken back, and who is not set up yet."""

from __future__ import annotations

from datetime import timedelta
from typing import Any
from zoneinfo import ZoneInfo

from bot.core.chat.outbox import Button, send_document
from bot.core.turn import Act, Document, Turn
from bot.event.stage import day as stage_day
from bot.people.people import athletes_seen_by, local_date, name_of, own_athlete
from bot.people.telling import say_to
from bot.plan import words as plan_words
from bot.plan.templates.templates import templates_of
from bot.setup import agreeing, roster_sheet, words, words_sheet
from bot.setup.agreeing import foresee_all, offer_room_to_all, show_all_and_ask
from bot.setup.buttons import SETUP_ONE, SETUP_SHEET, One, Sheet
from bot.setup.one import begin
from bot.setup.roster_sheet import Choices, Roster, write
from bot.setup.sheet_meaning import Known, meant
from bot.sheets.format.making import FORMATS, Value
from bot.store.tables.people import AthleteProfile, Person
from bot.store.tables.week import EventRow
from bot.week.load import events_ahead, limits_row, plan_row, target_of, weigh_in_row
from bot.words import common
from engine.values.limits import LIMIT_KEYS

MAKE = "setup-sheet"
_BUTTONS_IN_A_ROW = 3


def command(turn: Act) -> None:
    """`/setup`: who lacks what; with a name, that athlete at once."""
    athletes = athletes_seen_by(turn.session, turn.person)
    if not athletes:
        say_to(turn, turn.person, common.nobody_yet())
        return
    name = " ".join(turn.words.split())
    if name:
        found = [one for one in athletes if _name(turn, one).casefold() == name.casefold()]
        if len(found) == 1:
            begin(turn, turn.person, found[0])
            return
        if not found:
            say_to(turn, turn.person, plan_words.nobody_called(name))
            return
        athletes = found
    missing = [(one, lacks) for one in athletes if (lacks := _lacks(turn, one))]
    keys = [
        Button(_name(turn, one), SETUP_ONE(one.person_id))
        for one in ([one for one, _ in missing] or athletes)
        if one.baseline
    ]
    rows: list[list[Button]] = [
        keys[i : i + _BUTTONS_IN_A_ROW] for i in range(0, len(keys), _BUTTONS_IN_A_ROW)
    ]
    text = words.start([(_name(turn, one), lacks) for one, lacks in missing], len(athletes))
    sheets = [Button(words.sheet_button(form), SETUP_SHEET(form)) for form in FORMATS]
    say_to(turn, turn.person, text, buttons=[*rows, sheets])


def one_tapped(turn: Act, pressed: One) -> None:
    """One athlete is set up by questions."""
    profile = own_athlete(turn.session, turn.person, pressed.athlete)
    if profile is None:
        say_to(turn, turn.person, common.cancelled())
        return
    begin(turn, turn.person, profile)


def sheet_tapped(turn: Act, pressed: Sheet) -> None:
    """The sheet by which many are set up."""
    if not athletes_seen_by(turn.session, turn.person):
        say_to(turn, turn.person, common.nobody_yet())
        return
    send_document(
        turn,
        chat_id=turn.person.chat_id,
        document={
            "make": MAKE, "coach": turn.person.id,
            "format": pressed.format if pressed.format in FORMATS else FORMATS[0],
        },
        caption=words.caption(),
    )  # fmt: skip


def make_sheet(turn: Turn, named: dict[str, Any]) -> Document | None:
    """The coach's athletes as they are set when the file is sent."""
    coach = turn.session.get(Person, named["coach"])
    if coach is None:
        return None
    rows = [
        row for profile in athletes_seen_by(turn.session, coach) for row in _rows(turn, profile)
    ]
    plans = [row.name for row in templates_of(turn.session, coach)]
    choices = Choices(
        kinds=tuple(words_sheet.kind_names()),
        plans=(*plans, *words_sheet.shape_names()),
        depletions=tuple(words_sheet.depletion_names()),
    )
    form = str(named["format"])
    return Document(f"athletes-{turn.now:%Y-%m-%d}.{form}", write(rows, choices, form))


def roster_came(turn: Turn, coach: Person, roster: Roster) -> None:
    """A sheet sent back: what it would do, or all that is wrong, by cell; nothing is changed."""
    known = Known(
        turn.session, turn.context,
        {one.person_id: one for one in athletes_seen_by(turn.session, coach)},
        _plans(turn, coach),
    )  # fmt: skip
    wanted, lines, idle = meant(roster, known)
    seen = foresee_all(turn, coach, wanted)
    wrong = [(line.cell, "", line.text) for line in lines]
    wrong += [line for one in seen for line in agreeing.troubles(one)]
    if wrong:
        idle += [one.name for one in seen if not one.changes and not one.troubles]
        if lines or not offer_room_to_all(turn, coach, seen, list(dict.fromkeys(idle))):
            say_to(turn, coach, words.problems(wrong))
        return
    changing = [one for one in seen if one.changes]
    idle += [one.name for one in seen if not one.changes]
    if not changing:
        say_to(turn, coach, words.nothing_to_do(idle))
        return
    show_all_and_ask(turn, coach, changing, list(dict.fromkeys(idle)))


def _plans(turn: Turn, coach: Person) -> dict[str, str]:
    """What a plan may be called in a cell; a template of a shape's name comes before it."""
    own = {
        " ".join(row.name.split()).casefold(): f"template:{row.id}"
        for row in templates_of(turn.session, coach)
    }
    return {**words_sheet.shapes(), **own}


def _rows(turn: Turn, profile: AthleteProfile) -> list[dict[str, Value]]:
    """A row an event ahead, as it is set; one without an event where there is none."""
    today = local_date(profile, turn.context)
    ahead = [row for row in events_ahead(turn.session, profile.person_id) if row.day >= today]
    person: dict[str, Value] = {
        roster_sheet.CODE: roster_sheet.code_of(profile.person_id, None),
        roster_sheet.ATHLETE: _name(turn, profile),
        roster_sheet.PLACE: profile.zone or "",
        roster_sheet.ASKED: profile.prompt_time,
    }
    return [person | _event(turn, row) for row in ahead] or [person]


def _event(turn: Turn, row: EventRow) -> dict[str, Value]:
    limits, stage = limits_row(turn.session, row), stage_day.stage_row(turn.session, row)
    found: dict[str, Value] = {
        roster_sheet.CODE: roster_sheet.code_of(row.athlete_id, row.id),
        roster_sheet.KIND: words.kind_short(row.kind),
        roster_sheet.DAY: row.day,
        roster_sheet.PLACE: row.zone,
        roster_sheet.CLASS: row.class_name,
    }
    if limits is not None:
        found |= {key: _shown(limits.bounds[key]) for key in LIMIT_KEYS if key in limits.bounds}
    if stage is not None and stage.cancelled_at is None:
        first = stage_day.day_of(stage).stages[0].astimezone(ZoneInfo(row.zone))
        found[roster_sheet.STAGE] = first.time().replace(microsecond=0)
        look = stage.facts.get("look_before_min")
        found |= {roster_sheet.LOOK: look} if look is not None else {}
    return found | _asks(row)


def _asks(row: EventRow) -> dict[str, Value]:
    found: dict[str, Value] = {}
    look, weigh_in = target_of(row), weigh_in_row(row)
    if look is not None:
        found[roster_sheet.TARGET] = words_sheet.look_cell(look)
    if weigh_in is not None:
        by_height = weigh_in.over_height_kg
        found |= {
            roster_sheet.CAP: _shown(weigh_in.cap_kg)
            if by_height is None
            else words_sheet.by_height(by_height),
            roster_sheet.WEIGH_DAY: row.day - timedelta(days=weigh_in.days_out),
            roster_sheet.WEIGH_AT: weigh_in.at,
        }
    return found


def _shown(value: float) -> float | int:
    rounded = round(value, 2)
    return int(rounded) if rounded == int(rounded) else rounded


def _lacks(turn: Turn, profile: AthleteProfile) -> str:
    """What is missing before an athlete's mornings can begin; "" where nothing is."""
    if not profile.baseline:
        return words.lacks(event=True, plan=True, limits=True, measures=True)
    ahead = events_ahead(turn.session, profile.person_id)
    if not ahead:
        return words.lacks(event=True, plan=True, limits=True, measures=False)
    plan = plan_row(turn.session, ahead[0]) is None
    limits = limits_row(turn.session, ahead[0]) is None
    return (
        words.lacks(event=False, plan=plan, limits=limits, measures=False) if plan or limits else ""
    )


def _name(turn: Turn, profile: AthleteProfile) -> str:
    return name_of(turn.session, profile.person_id)
