"""Weeks from before come in as a sheet, count as weeks that are over, and can go again as a whole."""

from __future__ import annotations

import csv
import io
from collections.abc import Callable
from datetime import UTC, date, datetime, time, timedelta
from typing import Any

import pytest
from openpyxl import load_workbook
from sqlmodel import select

from bot.core.turn import Turn
from bot.people.people import get_profile
from bot.plan.next_load.learnt import learnt_g_per_kg
from bot.store.db import transaction
from bot.store.tables import metadata
from bot.store.tables.coach import TaughtRow
from bot.store.tables.people import HistoryRow, Person
from bot.store.tables.traffic import OutboxRow
from bot.store.tables.week import CheckInRow, EventRow
from bot.week.cases import weeks_before
from bot.week.load import athlete_of, baseline_of
from bot.week.weeks_of import weeks_of_one
from engine.bench.setting import Client
from engine.values.case import PastWeek
from engine.values.checkin import Look
from engine.values.plan import Phase
from tests.support.files import files_for, sends_file
from tests.support.imported import as_sheet, taken_on
from tests.support.past_weeks import Lived, behind
from tests.support.weeks import Team
from tests.support.world import Someone, text_of

EVENT = date(2026, 11, 14)
HEADINGS = [
    "Date", "Event day", "Event", "Look on the day", "Carbs planned (g)", "Carbs set (g)",
    "Carbs eaten (g)", "Water drunk (L)", "Weight (kg)", "Fullness (1-10)", "Sharpness (1-5)",
    "Stomach", "Sleep (h)", "Note",
]  # fmt: skip
#: One week of an invented trial: days out, planned, set, eaten, water, weight, fullness, sharpness.
WEEK = (
    (7, 185, None, None, 3.5, 61.2, 5, None), (6, 185, None, None, 3.5, 61.0, 5, None),
    (5, 185, None, None, 3.5, 60.8, 4, None), (4, 185, None, None, 3.5, 60.7, 4, None),
    (3, 500, 520, 510, 3.6, 60.5, 3, 4), (2, 500, None, 480, 3.5, 61.1, 5, 4),
    (1, 500, None, 500, 3.5, 61.6, 7, 4), (0, 200, None, None, None, 61.9, 8, 4),
)  # fmt: skip


@pytest.fixture
def team(team_at: Callable[[datetime], Team]) -> Team:
    """The afternoon before Mira's next peak week begins."""
    return team_at(datetime(2027, 5, 1, 15, 0, tzinfo=UTC))


def rows(event: date = EVENT, look: str = "flat", kind: str = "trial") -> list[list[Any]]:
    found = []
    for out, planned, set_g, eaten, water, weight, full, sharp in WEEK:
        first = out == 7
        found.append([
            (event - timedelta(days=out)).isoformat(), event.isoformat() if first else "",
            kind if first else "", look if out == 0 else "", planned, set_g, eaten, water, weight,
            full, sharp, "fine" if first else "", 7.5 if first else "", "=1+1" if first else "",
        ])  # fmt: skip
    return found


def as_csv(
    table: list[list[Any]], *, headings: list[str] = HEADINGS, athlete: str = "A2", sep: str = ","
) -> bytes:
    out = io.StringIO()
    lines = csv.writer(out, delimiter=sep)
    lines.writerows([["Past weeks of", "Mira"], ["Athlete", athlete], [], headings, *table])
    return out.getvalue().encode()


def sends(team: Team, content: bytes, name: str = "past.csv") -> str:
    return text_of(sends_file(team.coach, content, name=name))


def imports(team: Team, content: bytes) -> str:
    assert "Import these weeks?" in (said := sends(team, content)), said
    return text_of(team.coach.taps("Import them"))


def everything(team: Team) -> dict[str, list[Any]]:
    """All rows but the queues, what is kept of who did what, and the sheet's own row."""
    skipped = {"inbox", "outbox", "fetch", "agenda", "history", "past_import", "open_question"}
    with team.world.session() as session:
        return {
            name: list(session.connection().execute(table.select()).all())
            for name, table in metadata.tables.items()
            if name not in skipped | {"person", "coach_desk"}
        }


def test_an_empty_sheet_comes_with_the_athlete_in_it_and_dates_laid_out(team: Team) -> None:
    team.coach.presses("c:files:2")
    team.coach.taps("Past weeks")
    team.coach.taps("Empty sheet (CSV)")
    as_saved = files_for(team.coach, "sendDocument")[-1][1][0].content.decode("utf-8-sig")
    with_semicolons = io.StringIO()
    csv.writer(with_semicolons, delimiter=";").writerows(csv.reader(io.StringIO(as_saved)))
    assert "I imported nothing" in sends(team, with_semicolons.getvalue().encode())
    team.coach.taps("Empty sheet (XLSX)")
    page = load_workbook(io.BytesIO(files_for(team.coach, "sendDocument")[-1][1][0].content)).active
    assert page is not None
    assert (page["B1"].value, page["B2"].value) == ("Mira", "A2")
    assert [cell.value for cell in page[10]][:3] == ["Date", "Event day", "Event"]
    assert (
        str(page["A11"].value)[:10] == "2027-04-23" and str(page["B11"].value)[:10] == "2027-04-30"
    )
    assert page.freeze_panes == "A11"
    as_it_is = io.BytesIO()
    page.parent.save(as_it_is)
    said = sends(team, as_it_is.getvalue(), "past-weeks.xlsx")
    assert "I imported nothing" in said and "show, a shoot or a trial" in said


@pytest.mark.parametrize(
    "said", ["7:30", "7.5", "7,5 h", "7 h 30 min", "7h30", "7 Std. 30 Min.", "7:30 h"]
)
def test_a_night_is_read_in_any_ordinary_form(team: Team, said: str) -> None:
    table = rows()
    table[0][HEADINGS.index("Sleep (h)")] = said
    imports(team, as_csv(table))
    with team.world.session() as session:
        slept = session.exec(
            select(CheckInRow.sleep_h).where(CheckInRow.date == date(2026, 11, 7))
        ).one()
    assert slept == 7.5


def test_a_night_that_a_spreadsheet_took_for_a_time_of_day_is_a_night(team: Team) -> None:
    team.coach.presses("c:past:2")
    team.coach.taps("Empty sheet (XLSX)")
    page = load_workbook(io.BytesIO(files_for(team.coach, "sendDocument")[-1][1][0].content)).active
    assert page is not None
    night = [cell.value for cell in page[10]].index("Sleep (h)") + 1
    page.cell(11, night, time(7, 30)).number_format = "hh:mm"
    page.cell(12, night, date(2027, 4, 7))
    as_it_is = io.BytesIO()
    page.parent.save(as_it_is)
    said = sends(team, as_it_is.getvalue(), "past-weeks.xlsx")
    wrong = page.cell(12, night).coordinate
    assert page.cell(11, night).coordinate not in said and f"- {wrong}: " in said


def test_the_picture_of_the_week_stays_that_of_the_event_that_counts(team: Team) -> None:
    imports(team, as_csv(rows()))
    team.coach.presses("c:picture:2")
    with team.world.session() as session:
        sent = session.exec(select(OutboxRow).where(OutboxRow.method == "sendPhoto")).one()
    assert sent.payload["caption"].startswith("Mira's week to the show")


def test_a_dry_run_says_what_was_read_and_keeps_nothing(team: Team) -> None:
    before = everything(team)
    said = sends(team, as_csv(rows()))
    assert "Trial, Sat 14 Nov 2026: 8 mornings, load 1,520 g, flat" in said
    assert everything(team) == before
    assert "nothing was imported" in text_of(team.coach.taps("Don't import"))
    assert everything(team) == before


def test_imported_weeks_count_as_weeks_that_are_over_and_teach_the_next_load(team: Team) -> None:
    def learnt() -> float | None:
        with team.world.session() as session:
            profile = get_profile(session, 2)
            return learnt_g_per_kg(Turn(session, team.world.context), profile)

    assert learnt() is None
    assert "1 past week is in" in imports(team, as_csv(rows(look="flat")))
    then = (520 + 500 + 500) / 3 / 61.2
    after_flat = learnt()
    assert after_flat is not None and after_flat >= then - 0.05  # flat: no less than that
    with team.world.session() as session:
        (past,) = weeks_before(session, 2, date(2027, 5, 2))
        (week, _) = weeks_of_one(session, 2)
    assert past.look is Look.FLAT and week.kind == "trial" and not week.active
    assert [c.weight_kg for c in past.history.checkins] == [row[5] for row in WEEK]
    # What was eaten on a day is told on the next morning.
    told = past.history.on(EVENT - timedelta(days=2))
    assert told is not None and (told.carb_eaten_g, told.water_l) == (510, 3.6)
    assert past.history.set_on(EVENT - timedelta(days=3)) == 520
    day = week.at(2)
    assert day is not None and (day.eaten_carb_g, day.carb_g, day.fullness) == (480, 500, 5)


def test_the_history_says_that_they_were_imported_and_so_does_the_workbook(team: Team) -> None:
    imports(team, as_csv(rows()))
    with team.world.session() as session:
        kept = session.exec(select(HistoryRow).where(HistoryRow.what == "weeks imported")).one()
    assert kept.by_id == 1 and kept.detail["days"] == ["2026-11-14"]
    team.coach.presses("c:history:2")
    assert "imported past weeks from a sheet: Sat 14 Nov 2026" in text_of(team.coach.all_said())


def test_taken_back_nothing_of_them_is_left(team: Team) -> None:
    before = everything(team)
    imports(team, as_csv(rows() + rows(date(2026, 12, 5), "full", "show")))
    team.world.later(seconds=1)
    with team.world.session() as session:
        assert [row.weeks for row in session.exec(select(TaughtRow))] == [2]  # the coach's prior
    team.coach.presses("c:debrief:2")  # what came to hang on such a week goes with it
    assert "Debrief of Mira's show" in text_of(team.coach.all_said())
    team.coach.presses("c:past:2")
    team.coach.taps("Take back: 2 weeks of Sat 1 May")
    assert "Imported on Sat 1 May 2027 by Ravi: 2 weeks" in text_of(team.coach.all_said()[-1:])
    assert "2 weeks are out" in text_of(team.coach.taps("Take them back"))
    team.world.later(seconds=1)
    assert everything(team) == before
    assert "out already" in text_of(team.coach.presses("c:past-back:2:1"))


@pytest.mark.parametrize(
    "write",
    [
        lambda day: f"{day:%Y-%m-%d}", lambda day: f"{day:%d/%m/%Y}", lambda day: f"{day:%m/%d/%Y}",
        lambda day: f"{day.day}.{day.month}.{day:%y}", lambda day: f"{day:%d %B %Y}",
        lambda day: f"{day:%b} {day.day}, {day:%Y}", lambda day: f"{day:%a} {day.day} {day:%b}",
        # Day 1 of a spreadsheet's count is 1 January 1900, and it has a 29 February of that year.
        lambda day: str((day - date(1899, 12, 30)).days),
    ],
)  # fmt: skip
def test_dates_are_read_in_any_ordinary_form(team: Team, write: Callable[[date], str]) -> None:
    table = rows()
    for row in table:
        for column in (0, 1):
            row[column] = write(date.fromisoformat(row[column])) if row[column] else ""
    if table[0][0].isdigit():
        assert "not a date I can read" in sends(team, as_csv(table))  # a bare number in a text file
        return
    assert "Trial, Sat 14 Nov 2026: 8 mornings" in sends(team, as_csv(table))


def test_a_sheet_that_makes_sense_either_way_round_is_asked_about(team: Team) -> None:
    table = rows(date(2026, 3, 3))[5:]  # 1, 2 and 3 March, or 3 January, February and March?
    table = [[row[0], "03/03/2026", "trial", *row[3:]] for row in table][-1:]
    table[0][0] = "03/03/2026"
    assert "no carbs for 3 days out" in sends(team, as_csv(table))


@pytest.mark.parametrize("sep", [";", "\t", ","])
def test_other_units_decimal_commas_and_separators_say_the_same(team: Team, sep: str) -> None:
    headings = [
        {"Weight (kg)": "Weight (lb)", "Water drunk (L)": "Water drunk (ml)"}.get(h, h)
        for h in HEADINGS
    ]
    table = rows()
    for row in table:
        row[8] = f"{row[8] / 0.45359237:.2f}".replace(".", ",")  # 1 lb is 0.45359237 kg
        row[7] = round(row[7] * 1000) if row[7] else ""
    imports(team, as_csv(table, headings=headings, sep=sep))
    with team.world.session() as session:
        first = session.exec(select(CheckInRow).order_by(CheckInRow.date)).first()  # type: ignore[arg-type]
    assert first is not None and first.weight_kg == pytest.approx(61.2, abs=0.01)


def test_everything_that_is_wrong_is_named_by_its_cell_and_nothing_is_kept(team: Team) -> None:
    before, table = everything(team), rows()
    table[0][8], table[1][9], table[2][0] = "sixty-one", 11, "the day before"
    table[3][11], table[4][3] = "queasy", "soft"
    said = sends(team, as_csv(table))
    for cell in ("I5:", "J6:", "A7:", "L8:", "D9:"):
        assert f"- {cell}" in said, cell
    assert "I know fine, heavy and bad" in said and "I know flat, full and spilled over" in said
    assert everything(team) == before


@pytest.mark.parametrize(
    ("change", "said"),
    [
        (lambda t: t.pop(5), "no carbs for 2 days out"),
        (lambda t: t[1].__setitem__(0, t[0][0]), "this day is in row 5 already"),
        (lambda t: t[0].__setitem__(0, "2026-11-01"), "13 days before its event"),
        (lambda t: t[0].__setitem__(8, 134.9), "is the unit right?"),
        (lambda t: t[3].__setitem__(3, "full"), "two different looks"),
        (lambda t: t[0].__setitem__(2, ""), "was it a show, a shoot or a trial?"),
    ],
)
def test_a_week_that_cannot_be_is_refused_with_the_reason(
    team: Team, change: Callable[[list[list[Any]]], None], said: str
) -> None:
    table = rows()
    change(table)
    assert said in sends(team, as_csv(table))


def with_columns(table: list[list[Any]], **columns: dict[int, str]) -> tuple[list[str], Any]:
    """Headings and rows with further columns; their cells by days out."""
    return [*HEADINGS, *columns], [
        [*row, *(cells.get(7 - n, "") for cells in columns.values())] for n, row in enumerate(table)
    ]


def on_other_days(*load: int) -> list[list[Any]]:
    table = rows()
    for n, row in enumerate(table[:7]):
        row[4], row[5], row[6] = (500 if 7 - n in load else 185), "", ""
    return table


def past(team: Team) -> PastWeek:
    with team.world.session() as session:
        (week,) = weeks_before(session, 2, date(2027, 5, 2))
    return week


def test_a_load_on_other_days_is_read_off_the_carbs_or_as_its_phases_are_named(team: Team) -> None:
    said = sends(team, as_csv(on_other_days(5, 4, 3)))
    assert "load 1,500 g (5 to 3 days out), flat" in said
    named = {7: "Depletion", 5: "load", 4: "Load", 3: "rest", 2: "Load day", 1: "rest"}
    headings, table = with_columns(on_other_days(5, 4, 2), Phase=named)
    assert "load 1,500 g (5, 4 and 2 days out)" in sends(team, as_csv(table, headings=headings))
    team.coach.taps("Import them")
    plan = past(team).plan
    assert plan.load_days == (5, 4, 2)
    assert (plan.phase(7), plan.phase(3)) == (Phase.DEPLETION, Phase.REST)


def test_a_named_load_needs_the_carbs_of_its_own_days(team: Team) -> None:
    table = on_other_days(5, 4, 3)
    table[2][4] = ""
    headings, table = with_columns(table, Phase={5: "load", 4: "load"})
    assert "no carbs for 5 days out" in sends(team, as_csv(table, headings=headings))
    headings, table = with_columns(rows(), Phase=dict.fromkeys(range(1, 7), "load"))
    assert "more than 5 load days" in sends(team, as_csv(table, headings=headings))
    headings, table = with_columns(rows(), Phase={6: "carb up"})
    assert '- O6: "carb up": I know depletion' in sends(team, as_csv(table, headings=headings))


def test_weeks_that_were_lived_here_are_the_same_when_they_come_in_as_a_sheet(team: Team) -> None:
    behind(team, EVENT, Lived(load_g=530), look="full")
    lived = past(team)
    with transaction(team.world.engine) as session:
        profile = get_profile(session, 2)
        known = athlete_of(profile), baseline_of(profile)
        client = Client(athlete=known[0], baseline=known[1], plan=lived.plan, told_short=1.0)
        other = taken_on(session, client, 1, team.world.now)
    sends_file(team.coach, as_sheet(other, (lived,)), name="past.csv")
    team.coach.taps("Import them")
    with team.world.session() as session:
        (again,) = weeks_before(session, other, date(2027, 5, 2))
    assert (again.day, again.look) == (lived.day, lived.look)
    assert again.history.set_days == lived.history.set_days

    def eaten(week: PastWeek) -> list[Any]:
        return [(one.days_out, one.carb_g, one.training, week.plan.phase(one.days_out))
                for one in week.plan]  # fmt: skip

    def told(week: PastWeek) -> list[Any]:
        return [(c.date, c.weight_kg, c.fullness, c.sharpness) for c in week.history.checkins]

    assert eaten(again) == eaten(lived) and told(again) == told(lived)


def test_no_week_comes_in_over_one_that_is_here_or_still_ahead(team: Team) -> None:
    assert "not over yet" in sends(team, as_csv(rows(date(2027, 6, 20))))
    imports(team, as_csv(rows()))
    again = sends(team, as_csv(rows()))
    assert "overlaps one that is here already (Sat 14 Nov 2026)" in again
    assert "check-in of this day" not in again  # said once of a week, and not of each morning
    assert "overlaps one" in sends(team, as_csv(rows(EVENT + timedelta(days=7))))


def test_a_repeat_of_the_yes_imports_once(team: Team) -> None:
    sends(team, as_csv(rows()))
    said = team.coach.all_said()[-1]
    team.coach.taps("Import them", said)
    team.coach.taps("Import them", said)
    with team.world.session() as session:
        assert len(session.exec(select(EventRow)).all()) == 2


def test_nobody_imports_for_another_coachs_athlete(team: Team) -> None:
    with transaction(team.world.engine) as session:
        session.add(Person(
            telegram_user_id=150, chat_id=150, first_name="Zo", is_coach=True,
            created_at=team.world.now,
        ))  # fmt: skip
    other = Someone(team.world, 150, "Zo")
    said = text_of(sends_file(other, as_csv(rows()), name="past.csv"))
    assert said == "That is not the plan of an athlete of yours. Nothing was changed."
    said = text_of(sends_file(other, as_csv(rows(), athlete="A9999"), name="past.csv"))
    assert said == "That is not the plan of an athlete of yours. Nothing was changed."
