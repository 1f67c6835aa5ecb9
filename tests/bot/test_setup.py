"""Setting athletes up: one from a template, many by a sheet; counted in what the coach has to do."""

from __future__ import annotations

import io
from collections.abc import Callable
from datetime import UTC, date, datetime, time, timedelta

import pytest
from openpyxl import Workbook, load_workbook
from sqlmodel import col, select

from bot.core.turn import Turn
from bot.dispatcher import USE_CASES
from bot.event.stage.day import day_of, stage_row
from bot.people.people import get_person, get_profile, profile_of
from bot.store.db import transaction
from bot.store.tables.event import PlanReviewRow
from bot.store.tables.people import AthleteProfile, Person
from bot.store.tables.traffic import OutboxRow
from bot.store.tables.week import EventRow, LimitsRow, PlanRow
from bot.week.load import current_event, current_week, events_ahead
from tests.support.files import sends_file
from tests.support.many import Alike, not_set_up
from tests.support.roster_sheets import csv_of, filled
from tests.support.weeks import Team, gone_on
from tests.support.world import Said, text_of

TWENTY = tuple(f"Athlete{letter}" for letter in "ABCDEFGHIJKLMNOPQRST")
#: What setting up takes at most, in taps, typed messages and files of the coach.
ONE_FROM_TEMPLATE, TWENTY_BY_SHEET = 4, 4


class Counted:
    """A coach whose every tap, message and file is counted."""

    def __init__(self, team: Team) -> None:
        self.team, self.actions = team, 0

    def writes(self, text: str) -> list[Said]:
        self.actions += 1
        return self.team.coach.writes(text)

    def taps(self, label: str) -> list[Said]:
        self.actions += 1
        return self.team.coach.taps(label)

    def sends(self, content: bytes, name: str) -> list[Said]:
        self.actions += 1
        return sends_file(self.team.coach, content, name=name)


@pytest.fixture
def team(team_at: Callable[[datetime], Team]) -> Team:
    """Mira is set up, eight days out; a template was saved off her plan."""
    return gone_on(team_at(datetime(2027, 5, 1, 15, 0, tzinfo=UTC)), a_template_is_saved)


def a_template_is_saved(team: Team) -> None:
    team.coach.presses(f"c:tpl-save:{team.athlete_id}")
    team.coach.writes("Even week")


def newcomers(team: Team, *names: str) -> list[int]:
    with transaction(team.world.engine) as session:
        return not_set_up(session, 1, names, team.world.now)


def document(team: Team) -> bytes:
    """The file that was handed out last, made as it would be when it is sent."""
    with team.world.session() as session:
        row = session.exec(
            select(OutboxRow)
            .where(OutboxRow.method == "sendDocument")
            .order_by(col(OutboxRow.id).desc())
        ).first()
        assert row is not None and row.attached is not None
        made = USE_CASES.document(Turn(session, team.world.context), row.attached["document"])
    assert made is not None
    return made.content


def headings(content: bytes) -> dict[str, int]:
    page = load_workbook(io.BytesIO(content)).worksheets[0]
    return {str(cell.value): cell.column for cell in page[1]}


def everything(team: Team) -> tuple[int, int, int]:
    with team.world.session() as session:
        return tuple(  # type: ignore[return-value]
            len(session.exec(select(table)).all()) for table in (EventRow, PlanRow, LimitsRow)
        )


def complete(team: Team, athlete_id: int) -> bool:
    with team.world.session() as session:
        profile = get_profile(session, athlete_id)
        return current_week(session, profile) is not None


# One from a template


def test_one_athlete_is_set_up_from_a_template_in_four_actions(team: Team) -> None:
    (tess,) = newcomers(team, "Tess")
    coach = Counted(team)
    coach.writes("/setup Tess")
    coach.taps("Even week")
    shown = text_of(coach.writes("show 16 May 14:30"))
    assert "This is how Tess would be set up" in shown
    assert not complete(team, tess)
    assert "Done: Tess is set up" in text_of(coach.taps("Set it up"))
    assert coach.actions <= ONE_FROM_TEMPLATE
    assert complete(team, tess)
    with team.world.session() as session:
        event = current_event(session, tess)
        assert event is not None
        assert (event.kind, event.day) == ("show", date(2027, 5, 16))
        row = stage_row(session, event)
        assert row is not None
        assert day_of(row).stages[0] == datetime(2027, 5, 16, 13, 30, tzinfo=UTC)
        profile = session.get_one(AthleteProfile, tess)
        assert profile.prompt_time == time(6, 30)  # as Mira's, whose plan the template was
        told = session.exec(
            select(OutboxRow).where(OutboxRow.chat_id == get_person(session, tess).chat_id)
        ).all()
    assert len([row for row in told if "has set an event for you" in row.payload["text"]]) == 1


def test_where_only_a_limit_stands_in_the_way_its_change_is_named_and_agreed_to(team: Team) -> None:
    team.coach.presses(f"c:lim:{team.athlete_id}:carb_ceiling_g")
    team.coach.writes("520")
    team.coach.writes("/setup Mira")
    team.coach.taps("Draft: front-load")  # 120 % of 8.2 g/kg on its first day: 600 g
    said = team.coach.writes("9 May")
    button = next(label for label in said[-1].buttons if "carb ceiling 520 g → 600 g" in label)
    assert "Done: Mira" in text_of(team.coach.taps(button))
    with team.world.session() as session:
        limits = session.exec(select(LimitsRow).order_by(col(LimitsRow.id).desc())).first()
    assert limits is not None and limits.bounds["carb_ceiling_g"] == 600


@pytest.mark.parametrize(
    ("typed", "kind", "day", "stage"),
    [
        ("16 May", "show", "2027-05-16", None),
        ("2027-05-16 2:30 pm", "show", "2027-05-16", "14:30"),
        ("trial Sun 16 May", "trial", "2027-05-16", None),
        ("16 May shoot at 9:05", "shoot", "2027-05-16", "09:05"),
    ],
)
def test_the_day_is_read_as_people_write_it(
    team: Team, typed: str, kind: str, day: str, stage: str | None
) -> None:
    newcomers(team, "Tess")
    team.coach.writes("/setup Tess")
    team.coach.taps("Even week")
    shown = text_of(team.coach.writes(typed))
    assert {"show": "show", "trial": "trial", "shoot": "photo shoot"}[kind] in shown
    assert "on Sun 16 May" in shown
    assert ("stage " in shown) == (stage is not None)
    assert stage is None or f"stage {stage}" in shown


# Many by a sheet


def test_twenty_athletes_are_set_up_by_a_sheet_in_four_actions(team: Team) -> None:
    ids = newcomers(team, *TWENTY)
    coach = Counted(team)
    coach.writes("/setup")
    coach.taps("Sheet for all (XLSX)")
    wanted = {
        "Event": "show", "Day": date(2027, 5, 16), "Stage time": time(14, 30), "Class": "Figure B",
        "Plan": "Even week",
    }  # fmt: skip
    before = everything(team)
    shown = coach.sends(filled(document(team), dict.fromkeys(TWENTY, wanted)), "athletes.xlsx")
    assert "What the sheet would do (nothing is changed yet), 20 rows" in text_of(shown)
    assert "AthleteT: new: show on Sun 16 May (Figure B); plan Even week" in text_of(shown)
    assert "Left as they are: Mira" in text_of(shown)
    assert everything(team) == before
    said = text_of(coach.taps("Set up all 20"))
    assert "Done: 20 athletes are set up" in said
    assert coach.actions <= TWENTY_BY_SHEET
    assert all(complete(team, one) for one in ids)
    assert everything(team) == (before[0] + 20, before[1] + 20, before[2] + 20)


def test_the_sheet_handed_out_is_worth_opening(team: Team) -> None:
    newcomers(team, "=Tess")
    team.coach.writes("/setup")
    team.coach.taps("Sheet for all (XLSX)")
    page = load_workbook(io.BytesIO(document(team))).worksheets[0]
    assert page.freeze_panes == "C2"
    assert page.page_setup.orientation == "landscape"
    columns = headings(document(team))
    assert {"Carb ceiling a day (g)", "Water floor a day (L)", "Load (g/kg)"} <= set(columns)
    rows = {str(page.cell(n, columns["Athlete"]).value): n for n in range(2, page.max_row + 1)}
    assert page.cell(rows["=Tess"], columns["Athlete"]).data_type == "s"  # computes nothing
    mira = rows["Mira"]
    assert page.cell(mira, columns["Code"]).value == "A2-E1"
    assert page.cell(mira, columns["Day"]).value == datetime(2027, 5, 9)  # noqa: DTZ001
    assert page.cell(mira, columns["Check-in at"]).value == time(6, 30)


def test_sent_back_as_it_was_the_sheet_changes_nothing(team: Team) -> None:
    newcomers(team, "Tess")
    for form in ("XLSX", "CSV"):
        team.coach.writes("/setup")
        team.coach.taps(f"Sheet for all ({form})")
        said = text_of(sends_file(team.coach, document(team), name=f"a.{form.lower()}"))
        assert "Nothing in that sheet differs" in said, form
        assert "Tess" in said and "Mira" in said


def test_whatever_is_wrong_is_told_by_cell_and_nothing_is_half_done(team: Team) -> None:
    newcomers(team, "Tess", "Orla", "Orla")
    before = everything(team)
    content = csv_of(
        {"Athlete": "Tess", "Event": "show", "Day": "32 May", "Plan": "even"},
        {"Athlete": "Orla", "Event": "show", "Day": "16 May", "Plan": "even"},
        {"Athlete": "Nobody", "Event": "show", "Day": "16 May", "Plan": "even"},
        {"Athlete": "Mira", "Event": "party", "Day": "9 May", "Plan": "odd"},
        {"Athlete": "Mira", "Event": "show", "Day": "1 April 2027", "Plan": "even",
         "Stage time": "25:00", "Carb ceiling a day": "5000"},
        {"Athlete": "Tess", "Event": "show", "Day": "05/06/2027", "Plan": "even"},
    )  # fmt: skip
    said = text_of(sends_file(team.coach, content, name="a.csv"))
    for part in (
        "C2", "more than one athlete is called Orla", "A4: nobody on your roster is called Nobody",
        "B5", "D5", "E6", "C7",
    ):  # fmt: skip
        assert part in said, part
    assert "I changed nothing" in said
    assert everything(team) == before


def test_where_limits_of_the_sheet_are_too_tight_they_are_moved_by_a_tap_and_named_before(
    team: Team,
) -> None:
    ids = newcomers(team, "Tess", "Orla", "Pia")
    row = {"Event": "show", "Day": "16 May", "Plan": "even", "Carb ceiling a day": ""}
    content = csv_of(
        {"Athlete": "Tess", **row},
        {"Athlete": "Orla", **row, "Carb ceiling a day": "450"},
        {"Athlete": "Pia", **row},
    )
    said = sends_file(team.coach, content, name="a.csv")
    told = text_of(said)
    assert told.count("over the carb ceiling of 450 g") == 1  # once, though three days leave it
    assert "E3, Orla: " in told
    assert "carb ceiling 450 g → 500 g" in told
    assert "- Tess, Pia: new: show on Sun 16 May" in told  # the same for both: one line
    assert not any(complete(team, one) for one in ids)
    assert "Done: 3 athletes" in text_of(team.coach.taps("Move that limit: Set up all 3"))
    with team.world.session() as session:
        event = current_event(session, ids[1])
        assert event is not None
        limits = session.exec(select(LimitsRow).where(LimitsRow.event_id == event.id)).one()
    assert limits.bounds["carb_ceiling_g"] == 500


@pytest.mark.parametrize(
    ("day", "clock"),
    [
        ("2027-05-16", "14:30"), ("16 May 2027", "2:30 pm"), ("Sun 16 May", "1430"),
        ("16.5.2027", "14:30:00"),
    ],
)  # fmt: skip
@pytest.mark.parametrize("delimiter", [",", ";", "\t"])
def test_dates_and_times_are_taken_in_any_ordinary_form(
    team: Team, day: str, clock: str, delimiter: str
) -> None:
    newcomers(team, "Tess")
    content = csv_of(
        {"Athlete": "tess", "Event": "Show", "Day": day, "Stage time": clock, "Plan": "EVEN"},
        delimiter=delimiter,
    )
    said = text_of(sends_file(team.coach, content, name="a.csv"))
    assert "Tess: new: show on Sun 16 May; plan even" in said
    assert "stage 14:30" in said


def test_days_and_times_as_a_spreadsheet_counts_them_are_days_and_times(team: Team) -> None:
    newcomers(team, "Tess")
    book = Workbook()
    page = book.worksheets[0]
    page.append(["Athlete", "Event", "Day", "Stage time", "Plan"])
    # ECMA-376 part 1, 18.17.4: days since 30 December 1899, and times as shares of a day.
    page.append(["Tess", "show", 46523, 14.5 / 24, "even"])
    out = io.BytesIO()
    book.save(out)
    said = text_of(sends_file(team.coach, out.getvalue(), name="a.xlsx"))
    assert "Tess: new: show on Sun 16 May" in said
    assert "stage 14:30" in said


def test_what_changed_since_the_dry_run_is_shown_again_before_anything_counts(team: Team) -> None:
    newcomers(team, "Tess", "Orla")
    content = csv_of(
        {"Athlete": "Tess", "Event": "show", "Day": "16 May", "Plan": "even"},
        {"Athlete": "Mira", "Event": "show", "Day": "9 May", "Plan": "front-load"},
    )
    shown = sends_file(team.coach, content, name="a.csv")
    team.coach.presses(f"c:num:{team.athlete_id}:7:fat_g")
    team.coach.writes("50")
    before = everything(team)
    said = team.coach.taps("Set up all 2", shown[-1])
    assert "something has changed for Mira. Nothing was set up" in text_of(said)
    assert everything(team) == before
    assert "Done: 2 athletes" in text_of(team.coach.taps("Set up all 2"))


def test_one_reason_serves_all_with_like_warnings_and_is_kept_for_each(team: Team) -> None:
    newcomers(team, "Tess", "Orla", "Pia")
    rows = [
        {"Athlete": name, "Event": "show", "Day": "16 May", "Plan": "even", "Depletion": "deep"}
        for name in ("Tess", "Orla")
    ]
    rows.append({"Athlete": "Pia", "Event": "show", "Day": "16 May", "Plan": "even",
                 "Depletion": "none"})  # fmt: skip
    said = text_of(sends_file(team.coach, csv_of(*rows), name="a.csv"))
    assert "Before Tess and Orla" in said and "depletion is deep" in said
    team.coach.writes("both did it in March and it worked")
    assert "Done: 3 athletes" in text_of(team.coach.taps("Set up all 3"))
    with team.world.session() as session:
        kept = session.exec(select(PlanReviewRow)).all()
    assert [row.reason for row in kept] == ["both did it in March and it worked"] * 2
    assert len({row.event_id for row in kept}) == 2


def test_two_shows_of_one_athlete_in_one_sheet_are_a_season_with_a_bridge(team: Team) -> None:
    (tess,) = newcomers(team, "Tess")
    content = csv_of(
        {"Athlete": "Tess", "Event": "show", "Day": "16 May", "Plan": "even"},
        {"Athlete": "Tess", "Event": "show", "Day": "23 May", "Plan": "bridge"},
    )
    sends_file(team.coach, content, name="a.csv")
    assert "Done: 1 athlete" in text_of(team.coach.taps("Set up all 2"))
    with team.world.session() as session:
        rows = events_ahead(session, tess)
        plans = [
            session.exec(select(PlanRow).where(PlanRow.event_id == row.id)).one() for row in rows
        ]
    assert [row.day.day for row in rows] == [16, 23]
    assert [plan.shape for plan in plans] == ["even", "bridge"]
    assert plans[1].days[0]["days_out"] == 6


def test_a_row_with_an_events_code_moves_that_event_and_its_plan_along(team: Team) -> None:
    content = csv_of({"Code": "A2-E1", "Event": "show", "Day": "12 May", "Plan": ""})
    said = text_of(sends_file(team.coach, content, name="a.csv"))
    assert "Mira: show on Wed 12 May (now show on Sun 9 May); plan stays" in said
    team.coach.taps("Set it up")
    with team.world.session() as session:
        (row,) = events_ahead(session, team.athlete_id)
    assert row.day == date(2027, 5, 12)
    assert complete(team, team.athlete_id)


def test_another_coachs_athlete_is_nobody_whatever_code_is_written(team: Team) -> None:
    with transaction(team.world.engine) as session:
        other = Person(telegram_user_id=150, chat_id=150, first_name="Lena", is_coach=True,
                       created_at=team.world.now)  # fmt: skip
        session.add(other)
        session.flush()
        (theirs,) = not_set_up(
            session, other.id or 0, ("Uma",), team.world.now, Alike(first_chat=9000)
        )
    content = csv_of({"Code": f"A{theirs}", "Event": "show", "Day": "16 May", "Plan": "even"})
    refused = text_of(sends_file(team.coach, content, name="a.csv"))
    absent = csv_of({"Code": "A9999", "Event": "show", "Day": "16 May", "Plan": "even"})
    assert refused.replace(f"A{theirs}", "A9999") == text_of(
        sends_file(team.coach, absent, name="a.csv")
    )
    assert "Uma" not in refused


def asked_for(team: Team, athlete_id: int) -> dict[str, object]:
    with team.world.session() as session:
        event = current_event(session, athlete_id)
        assert event is not None
        return dict(event.asks)


def test_a_sheet_sets_target_look_and_weigh_in_and_hands_them_out_as_they_are_read(
    team: Team,
) -> None:
    coach = team.coach
    coach.writes("/setup")
    coach.taps("Sheet for all (XLSX)")
    row = {
        "Target look": "full 6-7, sharp 3-4: round, no striations", "Weigh-in cap (kg)": 63.5,
        "Weigh-in day": date(2027, 5, 8), "Weigh-in time": time(17),
    }  # fmt: skip
    said = text_of(sends_file(coach, filled(document(team), {"Mira": row}), name="a.xlsx"))
    assert "Target look: fullness 6-7, sharpness 3-4" in said
    assert "Weigh-in: Sat 8 May 2027, 17:00, at most 63.5 kg" in said
    coach.taps("Set it up")
    kept = asked_for(team, team.athlete_id)
    assert kept["weigh_in"] == {"days_out": 1, "at": "17:00", "cap_kg": 63.5}
    assert kept["look"] == {
        "fullness_low": 6, "fullness_high": 7, "sharpness_low": 3, "sharpness_high": 4,
        "words": "round, no striations",
    }  # fmt: skip
    coach.writes("/setup")
    coach.taps("Sheet for all (XLSX)")
    same = document(team)
    assert "differs" in text_of(sends_file(coach, same, name="a.xlsx"))
    team.world.now += timedelta(minutes=5)
    off = filled(same, {"Mira": {"Target look": "usual", "Weigh-in cap (kg)": "none"}})
    assert "no weigh-in" in text_of(sends_file(coach, off, name="a.xlsx"))
    coach.taps("Set it up")
    assert asked_for(team, team.athlete_id) == {}
    (asked,) = coach.presses(f"c:undo:{team.athlete_id}")
    assert "changed the target look or the weigh-in" in asked.text
    coach.taps("Take it back")
    assert asked_for(team, team.athlete_id) == kept


def test_half_a_weigh_in_is_told_by_cell(team: Team) -> None:
    coach = team.coach
    coach.writes("/setup")
    coach.taps("Sheet for all (XLSX)")
    sheet = document(team)
    for row, why in (
        ({"Weigh-in cap (kg)": 63.5}, "a weigh-in needs its cap, its day and its time"),
        ({"Weigh-in cap (kg)": 5, "Target look": "soft"}, "between 30 and 250 kg"),
        ({"Target look": "soft"}, "I need a fullness from 1 to 10"),
        (
            {"Weigh-in cap (kg)": 63.5, "Weigh-in day": date(2027, 4, 8), "Weigh-in time": "17:00"},
            "in the seven days before",
        ),
    ):
        said = text_of(sends_file(coach, filled(sheet, {"Mira": row}), name="a.xlsx"))
        assert why in said, row
    assert asked_for(team, team.athlete_id) == {}


def test_a_template_holds_the_look_and_a_class_by_height_for_the_new_athletes_own(
    team: Team,
) -> None:
    coach = team.coach
    coach.presses(f"c:asks-look:{team.athlete_id}")
    coach.writes("full 6-7 sharp 3-4")
    coach.writes("round")
    coach.presses(f"c:asks-weigh:{team.athlete_id}")
    coach.writes("height +4")
    coach.taps("1 day out")
    coach.taps("08:00")
    coach.presses(f"c:tpl-save:{team.athlete_id}")
    coach.writes("By height")
    (number,) = newcomers(team, "Nia")
    coach.writes("/setup Nia")
    coach.taps("By height")
    assert "Target look: fullness 6-7, sharpness 3-4" in text_of(coach.writes("9 May 14:30"))
    coach.taps("Set it up")
    with team.world.session() as session:
        profile = profile_of(session, number)
        assert profile is not None and profile.height_cm is not None
        height_cm = profile.height_cm
    weigh_in = asked_for(team, number)["weigh_in"]
    assert isinstance(weigh_in, dict)
    assert weigh_in["cap_kg"] == pytest.approx(height_cm - 100 + 4, abs=0.05)
    assert asked_for(team, number)["look"] is not None


def test_the_card_of_somebody_without_an_event_begins_with_setting_one(team: Team) -> None:
    (number,) = newcomers(team, "Nia")
    (card,) = team.coach.presses(f"c:card:{number}")
    assert list(card.buttons.values())[:2] == [f"c:setup:{number}", f"c:event:{number}"]
