"""A coach's own numbers: counted by hand for a small season, and against scipy where it can."""

from __future__ import annotations

import io
from collections.abc import Callable
from datetime import UTC, date, datetime, time, timedelta
from typing import Any, NamedTuple

import numpy as np
import pandas as pd
import pytest
from PIL import Image

from bot.core.timing.instants import local_instant
from bot.sheets.coach_numbers import reckoning as r
from bot.sheets.coach_numbers import words
from bot.sheets.coach_numbers.gather import numbers_of
from bot.store.db import transaction
from bot.store.tables.coach import CoachLookRow
from bot.store.tables.people import Person
from bot.store.tables.week import CheckInRow, DaySetRow, DecisionRow, EventRow, PlanRow
from engine.values.checkin import Look
from engine.values.shares import Share
from tests.support.files import files_for
from tests.support.many import Alike, many_athletes
from tests.support.weeks import Team
from tests.support.world import Someone, text_of

DAY = timedelta(days=1)
#: Fullness as it was expected and as it was, by days out: two mornings off, of which one gets nearer.
EXPECTED = {3: 4, 2: 6, 1: 7, 0: 9}
WAS = {3: 2, 2: 5, 1: 7, 0: 7}


@pytest.fixture
def team(team_at: Callable[[datetime], Team]) -> Team:
    """Nothing is over yet."""
    return team_at(datetime(2027, 5, 1, 15, 0, tzinfo=UTC))


class Foreseen(NamedTuple):
    """What was foreseen in a week: the chance of full, and what the decision's trace holds."""

    full: float = 0.6
    trace: dict[str, float] | None = None


AS_EVER = Foreseen()


def past(
    team: Team, number: int, look: str | None, foreseen: Foreseen = AS_EVER, athlete: int = 2
) -> None:
    """A week of an athlete that is over: four mornings, the load raised by 20 g three days out."""
    full, trace = foreseen
    day = date(2027, 4, 20) - number * 10 * DAY
    set_at = datetime.combine(day - 5 * DAY, datetime.min.time(), tzinfo=UTC)
    with transaction(team.world.engine) as session:
        event = EventRow(
            athlete_id=athlete, kind="trial", day=day, zone="Europe/London", active=False,
            look=look, set_by=1, set_at=set_at,
        )  # fmt: skip
        session.add(event)
        session.flush()
        days = [
            {"days_out": out, "carb_g": 400.0, "protein_g": 140.0, "fat_g": 50.0, "water_l": 3.5}
            for out in range(7, -1, -1)
        ]
        session.add(
            PlanRow(event_id=event.id or 0, shape="even", days=days, set_by=1, set_at=set_at)
        )
        session.add(DaySetRow(
            athlete_id=athlete, date=day - 3 * DAY, carb_g=420, by="decision", set_at=set_at,
        ))  # fmt: skip
        for out, expected in EXPECTED.items():
            on = day - out * DAY
            at = local_instant(on, time(6, 50), "Europe/London")  # asked at 6:30
            row = CheckInRow(
                athlete_id=athlete, date=on, weight_kg=61, fullness=WAS[out], sharpness=4,
                answered_at=at,
            )  # fmt: skip
            session.add(row)
            session.flush()
            odds = {"carb_g": 400.0, "flat": 0.9 - full, "full": full, "spilled": 0.1, "look": 0.8}
            waits = out == 3
            session.add(DecisionRow(
                athlete_id=athlete, event_id=event.id or 0, checkin_id=row.id or 0, revision=1,
                sets_date=on, outcome="adjusted", status="approved" if waits else "in-force",
                carb_g=420 if waits else 400, planned_carb_g=400, case={},
                decision={"rule": "flat-in-load" if waits else "steady", "date": on.isoformat(),
                          "carb_g": 400.0, "expected_fullness": expected,
                          "foresight": {"planned": odds, "best": odds}, "trace": trace or {}},
                made_at=at, sign_off_due_at=at + timedelta(hours=2) if waits else None,
                signed_at=at + timedelta(minutes=12) if waits else None,
                signed_by=1 if waits else None,
            ))  # fmt: skip
        session.add(CoachLookRow(
            athlete_id=athlete, date=day - 3 * DAY, by_id=1, look="flat", sharpness=3, at=set_at,
        ))  # fmt: skip


def counted(team: Team) -> r.Numbers:
    with team.world.session() as session:
        return numbers_of(session, session.get_one(Person, 1), team.world.now)[0]


def test_before_a_week_is_over_there_is_nothing_to_count(team: Team) -> None:
    assert "nothing to count" in text_of(team.coach.writes("/numbers"))
    assert files_for(team.coach, "sendPhoto") == []


def test_a_small_season_is_counted_as_one_counts_it_by_hand(team: Team) -> None:
    for number, look in enumerate(["full", "full", "flat", "spilled over", None]):
        past(team, number, look, Foreseen(0.8 if look == "full" else 0.3))
    found = counted(team)
    assert (found.athletes, found.weeks, found.imported) == (1, 5, 0)
    assert found.looks == {
        Look.FLAT: Share(1, 4), Look.FULL: Share(2, 4), Look.SPILLED: Share(1, 4),
    }  # fmt: skip
    # Off by 2 three days out, with 20 g more, and by 1 the day after: nearer. Off by 1 two days out
    # with nothing changed, and by 0 the day after: nearer too. Each week once.
    assert found.helped == {r.RAISED: Share(5, 5), r.KEPT: Share(5, 5)}
    assert found.by_rule == {"flat-in-load": Share(5, 5)}
    # Set up at midnight five days out: six mornings were asked about, and four were answered.
    assert found.answered == Share(20, 30)
    assert found.after_prompt == r.Minutes(20, 20, 20)
    assert found.signed == Share(5, 5) and found.to_sign == r.Minutes(5, 12, 12)
    assert found.sharpness == r.Apart(5, 1, 1, 1)  # theirs 4, the coach's 3
    assert found.fullness == r.Apart(5, 0, 0, 0)  # two under what was expected, and seen as flat
    assert [(band.said, band.came) for band in found.bands] == [
        (pytest.approx(0.3), Share(0, 2)), (pytest.approx(0.8), Share(2, 2)),
    ]  # fmt: skip
    # Twice (0.1, 0.8, 0.1) with full; (0.6, 0.3, 0.1) with flat, and with spilled over.
    by_hand = (2 * (0.01 + 0.04 + 0.01) + (0.16 + 0.09 + 0.01) + (0.36 + 0.09 + 0.81)) / 4
    assert found.brier == pytest.approx(by_hand)


def test_what_the_forecast_alone_changed_is_not_counted_for_a_rule(team: Team) -> None:
    past(team, 0, "full", Foreseen(trace={"rule_g": 0.0, "forecast_g": 20.0, "asked_g": 20.0}))
    past(team, 1, "full", Foreseen(trace={"rule_g": 25.0, "forecast_g": 20.0, "asked_g": 20.0}))
    assert counted(team).by_rule == {"flat-in-load": Share(1, 1), "forecast": Share(1, 1)}
    assert 'after "the forecast": 1 of 1' in text_of(team.coach.writes("/numbers"))


def test_a_mean_difference_has_the_interval_that_scipy_gives_it() -> None:
    from scipy.stats import ttest_1samp  # noqa: PLC0415 - a second and more

    differences = np.random.default_rng(7).normal(0.4, 1.1, 23)
    found = r.apart(pd.Series(differences))
    interval = ttest_1samp(differences, 0).confidence_interval(0.95)
    assert found is not None
    assert (found.low, found.high) == pytest.approx((interval.low, interval.high))


def test_weeks_of_other_coaches_are_never_counted(team: Team) -> None:
    past(team, 0, "full")
    with transaction(team.world.engine) as session:
        other = Person(
            telegram_user_id=150, chat_id=150, first_name="Zo", is_coach=True,
            created_at=team.world.now,
        )  # fmt: skip
        session.add(other)
        session.flush()
        (foreign,) = many_athletes(session, other.id or 0, 1, team.world.now, Alike(answered=False))
    past(team, 1, "flat", athlete=foreign)
    assert counted(team).looks[Look.FLAT] == Share(0, 1)
    said = text_of(Someone(team.world, 150, "Zo").writes("/numbers"))
    assert "flat: 1 of 1" in said and "full: 0 of 1" in said


def test_the_message_says_how_few_and_that_nothing_is_proved(team: Team) -> None:
    for number, look in enumerate(["full", "flat", "full"]):
        past(team, number, look)
    said = text_of(team.coach.writes("/numbers"))
    assert "full: 2 of 3 (67 %, 21 to 94)" in said  # Wilson: 0.208 to 0.939
    assert "none of this proves anything" in said and "no proof of a cause" in said
    assert "Only your own athletes" in said


def test_the_picture_is_for_a_phone_and_says_what_is_few(team: Team) -> None:
    for number, look in enumerate(["full", "flat", "full"]):
        past(team, number, look)
    team.coach.writes("/numbers")
    (row, (picture,)) = files_for(team.coach, "sendPhoto")[-1]
    image = Image.open(io.BytesIO(picture.content))
    assert image.width == 1080 and image.height > 900
    assert row.payload["caption"]  # no picture without words
    heads = [head for head, _ in words.panels(counted(team))]
    assert heads == [
        "How weeks ended",
        "Nearer the next morning",
        "Answers",
        "Forecast: how often full came",
    ]


def test_the_sheet_holds_the_counts_and_what_was_counted(team: Team) -> None:
    for number, look in enumerate(["full", "flat", "full"]):
        past(team, number, look)
    team.coach.writes("/numbers")
    team.coach.taps("As a sheet (XLSX)")
    content = files_for(team.coach, "sendDocument")[-1][1][0].content
    book: dict[str, pd.DataFrame] = pd.read_excel(io.BytesIO(content), sheet_name=None)
    counts = book["Shares"].set_index(["What", "Which"])
    row: Any = counts.loc[("How weeks ended", "full")]
    assert (row["Count"], row["Of"]) == (2, 3)
    assert row["95 % from (%)"] == pytest.approx(20.8, abs=0.05)
    assert list(book["Weeks"]["Look on the day"]) == ["full", "flat", "full"]
    assert book["Mornings"]["Answered"].value_counts().to_dict() == {"Yes": 12, "No": 12}
    assert list(book["Proposals"]["Time to the coach's answer (min)"]) == [12, 12, 12]
