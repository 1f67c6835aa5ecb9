"""The day backwards from the stage, and what becomes of it when times move."""

from __future__ import annotations

import itertools
from collections.abc import Sequence
from datetime import UTC, datetime, timedelta
from typing import Any
from zoneinfo import ZoneInfo

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from engine.planning.drafting.draft import draft_plan
from engine.stage_day.stage_day import (
    DRINKS,
    MEALS,
    Entry,
    Kind,
    StageDay,
    estimated_stage,
    timeline,
)
from engine.stage_day.stage_look import last_choice
from engine.values.athlete import Athlete, Baseline, Sex
from engine.values.checkin import Gut
from engine.values.limits import Limits
from engine.written.stage_times import delay_beside, parse_delay


def at(hour: int, minute: int = 0, day: int = 9) -> datetime:
    return datetime(2027, 5, day, hour, minute, tzinfo=UTC)


ORDINARY = StageDay(
    stages=(at(14),), usual_wake=at(7), travel_min=40, registration=at(9), tan=at(9, 30)
)


def clocks(entries: Sequence[Entry]) -> dict[str, str]:
    return {entry.key: f"{entry.at:%H:%M}" for entry in entries}


def done_by(entries: Sequence[Entry], now: datetime) -> list[Entry]:
    return [entry for entry in entries if entry.at <= now]


def test_an_ordinary_day_reads_backwards_from_the_stage() -> None:
    assert clocks(timeline(ORDINARY)) == {
        "wake": "07:00",
        "meal:1": "07:30",
        "drink:1": "08:25",
        "leave": "08:20",
        "registration": "09:00",
        "drink:2": "09:20",
        "tan": "09:30",
        "meal:2": "10:15",
        "sips": "11:00",
        "drink:3": "11:45",
        "look:1": "12:00",
        "meal:3": "12:30",
        "sugar:1": "13:15",
        "pump:1": "13:30",
        "stage:1": "14:00",
        "after": "14:15",
    }


def test_meals_come_every_two_to_three_hours_and_the_last_is_marked() -> None:
    entries = timeline(StageDay(stages=(at(18),), usual_wake=at(7)))
    meals = [entry for entry in entries if entry.kind in MEALS]
    gaps = [b.at - a.at for a, b in itertools.pairwise(meals)]
    assert all(timedelta(hours=2) <= gap <= timedelta(hours=3) for gap in gaps)
    assert [meal.kind for meal in meals] == [Kind.MEAL] * (len(meals) - 1) + [Kind.LAST_MEAL]
    assert meals[-1].at == at(16, 30)


def test_an_early_stage_has_the_athlete_up_in_the_night_for_food() -> None:
    entries = clocks(timeline(StageDay(stages=(at(9),), usual_wake=at(7), travel_min=30)))
    # 9:00 is on stage, 7:00 the look check, so there at 7:00, away at 6:30; up five hours before.
    assert entries["wake"] == "04:00"
    assert entries["leave"] == "06:30"


def test_two_classes_far_apart_have_food_and_a_look_between_and_a_pump_up_each() -> None:
    entries = clocks(timeline(StageDay(stages=(at(12), at(17)), usual_wake=at(7))))
    assert [key for key in entries if key.startswith("pump")] == ["pump:1", "pump:2"]
    assert (entries["meal:3"], entries["meal:4"]) == ("13:00", "15:30")
    assert entries["look:2"] == "15:00"
    assert entries["after"] == "17:15"


@pytest.mark.parametrize(
    ("gap_min", "second_pump", "meals_between"), [(20, False, 0), (29, False, 0), (60, True, 0)]
)
def test_two_classes_close_together_are_one_effort(
    gap_min: int, second_pump: bool, meals_between: int
) -> None:
    second = at(14) + timedelta(minutes=gap_min)
    entries = timeline(StageDay(stages=(at(14), second), usual_wake=at(7)))
    assert ("pump:2" in clocks(entries)) is second_pump
    between = [x for x in entries if x.kind in MEALS and at(14) < x.at < second]
    assert len(between) == meals_between


def test_an_hour_late_before_the_last_meal_moves_it_along() -> None:
    now = at(11, 10)
    later = ORDINARY.moved(timedelta(hours=1), now)
    entries = clocks(timeline(later, now=now, done=done_by(timeline(ORDINARY), now)))
    assert entries == {
        "drink:3": "11:50",
        "drink:4": "12:40",
        "look:1": "13:00",
        "meal:3": "13:30",
        "sugar:1": "14:15",
        "pump:1": "14:30",
        "stage:1": "15:00",
        "after": "15:15",
    }


def test_late_45_after_the_last_meal_brings_no_second_one() -> None:
    now = at(12, 45)
    later = ORDINARY.moved(timedelta(minutes=45), now)
    entries = timeline(later, now=now, done=done_by(timeline(ORDINARY), now))
    assert not [entry for entry in entries if entry.kind in MEALS]
    assert clocks(entries)["sugar:1"] == "14:00"


def test_three_hours_late_after_the_last_meal_brings_another_in_good_time() -> None:
    now = at(12, 45)
    later = ORDINARY.moved(timedelta(hours=3), now)
    entries = timeline(later, now=now, done=done_by(timeline(ORDINARY), now))
    assert clocks(entries)["meal:4"] == "15:30"


def test_a_delay_after_the_pump_up_has_it_done_again_nearer_the_stage() -> None:
    now = at(13, 40)
    later = ORDINARY.moved(timedelta(hours=1), now)
    entries = clocks(timeline(later, now=now, done=done_by(timeline(ORDINARY), now)))
    assert entries["pump:1+1"] == "14:30"
    assert entries["stage:1"] == "15:00"


def test_an_early_call_puts_what_still_matters_now_and_drops_the_rest() -> None:
    now = at(12, 40)
    sooner = ORDINARY.moved(timedelta(minutes=-60), now)
    entries = clocks(timeline(sooner, now=now, done=done_by(timeline(ORDINARY), now)))
    assert entries == {
        "sugar:1": "12:40", "pump:1": "12:40", "stage:1": "13:00", "after": "13:15",
    }  # fmt: skip


def test_an_early_call_never_lands_before_now() -> None:
    now = at(13, 50)
    assert ORDINARY.moved(timedelta(hours=-3), now).stages == (now,)


def test_a_second_class_called_while_the_first_is_on_is_not_lost() -> None:
    day = StageDay(stages=(at(12), at(13)), usual_wake=at(7))
    called = day.moved(timedelta(hours=-2), at(12))
    assert called.stages == (at(12), at(12, 5))
    done = done_by(timeline(day), at(12))
    assert clocks(timeline(called, now=at(12), done=done))["stage:2"] == "12:05"


def test_a_class_that_is_over_does_not_move() -> None:
    day = StageDay(stages=(at(12), at(17)), usual_wake=at(7))
    assert day.moved(timedelta(minutes=30), at(13)).stages == (at(12), at(17, 30))


def test_a_stage_past_midnight_counts_from_the_evening_before() -> None:
    day = StageDay(stages=(at(0, 30, day=10),), usual_wake=at(8))
    entries = timeline(day)
    assert entries[0].at == at(8)
    assert clocks(entries)["look:1"] == "22:30"
    assert entries[-1].at == at(0, 45, day=10)


@pytest.mark.parametrize(
    ("day", "stage_hour_utc"),
    [
        # Europe/Berlin, clocks go forward on 28 March 2027 at 02:00 and back on 31 October at 03:00
        (datetime(2027, 3, 28, tzinfo=ZoneInfo("Europe/Berlin")), 7),
        (datetime(2027, 10, 31, tzinfo=ZoneInfo("Europe/Berlin")), 8),
    ],
)
def test_a_change_of_clocks_in_the_night_does_not_shorten_or_stretch_the_day(
    day: datetime, stage_hour_utc: int
) -> None:
    stage, wake = day.replace(hour=9), day.replace(hour=7)
    entries = timeline(StageDay(stages=(stage,), usual_wake=wake))
    keys = {entry.key: entry.at for entry in entries}
    assert keys["stage:1"] == day.astimezone(UTC).replace(
        day=stage.day, hour=stage_hour_utc, minute=0
    )
    # Real hours, not those on the dial: five from waking to the stage.
    assert keys["stage:1"] - keys["wake"] == timedelta(hours=5)


def test_the_class_order_gives_an_estimate() -> None:
    assert estimated_stage(at(10), 1) == at(10)
    assert estimated_stage(at(10), 9, 12) == at(11, 36)
    with pytest.raises(ValueError, match="number 1"):
        estimated_stage(at(10), 0)


def test_a_day_that_cannot_be_is_refused() -> None:
    for stages in ((), (at(14), at(12)), (at(14), at(14))):
        with pytest.raises(ValueError, match="one after another"):
            StageDay(stages=stages, usual_wake=at(7))
    with pytest.raises(ValueError, match="zone"):
        StageDay(stages=(datetime(2027, 5, 9, 14),), usual_wake=at(7))  # noqa: DTZ001


MINUTES = st.integers(0, 24 * 60)


WHATEVER_HAPPENS = given(
    first=st.integers(6 * 60, 25 * 60),
    gap=st.none() | st.integers(5, 9 * 60),
    wake=st.integers(4 * 60, 10 * 60),
    travel=st.integers(0, 240),
    registration=st.none() | st.integers(5 * 60, 12 * 60),
    tan=st.none() | st.integers(5 * 60, 12 * 60),
    changes=st.lists(st.tuples(st.integers(1, 300), st.integers(-120, 180)), max_size=6),
)


@settings(max_examples=120)
@WHATEVER_HAPPENS
def test_whatever_happens_no_two_meals_at_once_nothing_in_the_past_and_each_thing_once(
    **day: Any,
) -> None:
    whatever_happens(**day)


@pytest.mark.soak
@settings(max_examples=5000)
@WHATEVER_HAPPENS
def test_in_many_more_days_nothing_is_at_once_in_the_past_or_twice(**day: Any) -> None:
    whatever_happens(**day)


def whatever_happens(
    first: int, gap: int | None, changes: list[tuple[int, int]], **around: Any
) -> None:
    midnight = at(0)

    def when(minutes: int | None) -> datetime | None:
        return midnight + timedelta(minutes=minutes) if minutes is not None else None

    stages = [midnight + timedelta(minutes=first)]
    if gap is not None:
        stages.append(stages[0] + timedelta(minutes=gap))
    day = StageDay(
        stages=tuple(stages), usual_wake=midnight + timedelta(minutes=around["wake"]),
        travel_min=around["travel"], registration=when(around["registration"]),
        tan=when(around["tan"]),
    )  # fmt: skip
    ahead, done, now = list(timeline(day)), list[Entry](), midnight
    check(day, ahead, done, None)
    drinks_in_every_hour(day, ahead, None)
    for passes, by in changes:
        now += timedelta(minutes=passes)
        done += [entry for entry in ahead if entry.at <= now]
        day = day.moved(timedelta(minutes=by), now)
        ahead = list(timeline(day, now=now, done=done))
        check(day, ahead, done, now)
        up = any(entry.kind is Kind.WAKE for entry in done)
        drinks_in_every_hour(day, [*done, *ahead], now if up else None)


@pytest.mark.parametrize(
    ("first", "second"), [((15, 0), (19, 30)), ((12, 0), (17, 0)), ((14, 0), (15, 30))]
)
def test_between_classes_over_an_hour_apart_there_is_food_and_drink_and_sips_again(
    first: tuple[int, int], second: tuple[int, int]
) -> None:
    entries = timeline(StageDay(stages=(at(*first), at(*second)), usual_wake=at(7)))
    between = [x for x in entries if at(*first) < x.at < at(*second)]
    assert any(x.kind in (*MEALS, Kind.BITE) for x in between)
    assert [x.key for x in between if x.kind is Kind.SIPS] == ["sips:2"]
    assert any(x.kind in DRINKS and x.at - at(*first) <= timedelta(hours=1) for x in between)


def drinks_in_every_hour(day: StageDay, told: Sequence[Entry], since: datetime | None) -> None:
    """From waking, or from when the times last moved, to after the last class."""
    end = day.stages[-1] + timedelta(minutes=15)
    found = sorted(x.at for x in told if x.kind in DRINKS)
    begin = since if since is not None and (not found or since > found[0]) else found[0]
    if begin >= end:
        return
    earlier = [x for x in found if x <= begin]
    marks = [begin, *(x for x in found if begin < x < end), end]
    if earlier and begin - earlier[-1] < timedelta(hours=1):
        marks[0] = earlier[-1]
    for one, other in itertools.pairwise(marks):
        assert other - one <= timedelta(hours=1), (one, other, found)


def check(
    day: StageDay, ahead: Sequence[Entry], done: Sequence[Entry], now: datetime | None
) -> None:
    assert [entry.at for entry in ahead] == sorted(entry.at for entry in ahead)
    assert now is None or all(entry.at >= now for entry in ahead)
    keys = [entry.key for entry in (*done, *ahead)]
    assert len(keys) == len(set(keys))
    meals = sorted(entry.at for entry in (*done, *ahead) if entry.kind in MEALS)
    assert all(b - a >= timedelta(minutes=90) for a, b in itertools.pairwise(meals))
    for entry in ahead:
        if entry.kind in MEALS:
            coming = [stage for stage in day.stages if stage >= entry.at]
            assert coming
            assert min(coming) - entry.at >= timedelta(minutes=60)
    for stage in day.stages:
        if now is None or stage >= now:
            told = (*done, *ahead)
            assert any(entry.kind is Kind.STAGE and entry.at == stage for entry in told)


@pytest.mark.parametrize(
    ("text", "minutes"),
    [
        ("late 45", 45),
        ("45 late", 45),
        ("45 min late", 45),
        ("They're running an hour behind", 60),
        ("they’re running an hour behind.", 60),
        ("running half an hour late", 30),
        ("delayed by 1.5 h", 90),
        ("one hour and a half behind", 90),
        ("early 20", -20),
        ("20 minutes early", -20),
        ("we are two hours ahead of schedule", -120),
        ("they pushed us back 30 min", 30),
        ("moved up 10 minutes", -10),
        ("moved up 10", None),
        ("late 1h15", 75),
        ("late", None),
        ("late 0", None),
        ("late 4500", None),
        ("an behind", None),
        ("I was late 45 minutes to bed", None),
        ("61.2 7 3.5", None),
        ("my period is 5 days late", None),
        ("", None),
    ],
)
def test_word_of_a_delay_is_read_only_where_it_is_plain(text: str, minutes: int | None) -> None:
    assert parse_delay(text) == minutes


@pytest.mark.parametrize(
    ("text", "language", "read"),
    [
        ("running 40 minutes late, and mum says hi", "en", (40, "mum says hi")),
        ("they are 20 min behind. my tan looks streaky", "en", (20, "my tan looks streaky")),
        ("hall is freezing but we're half an hour late", "en", (30, "hall is freezing")),
        ("mum is here, we run 20 min late, all calm", "en", (20, "mum is here all calm")),
        ("wir sind 20 min später dran, Mama ist da", "de", (20, "Mama ist da")),
        ("mum is in the jam, 20 min late", "en", None),  # whose?
        ("they're 20 min behind, we're 10 min early", "en", None),
        ("20 min late, not sure", "en", None),
        ("40 minutes late, no, make that 50", "en", None),
        ("40 Minuten Verzug, nein, grad korrigiert, 50", "de", None),
        ("running 40 minutes late", "en", None),  # nothing beside it
    ],
)
def test_a_delay_among_other_news_is_read_with_what_else_was_said(
    text: str, language: str, read: tuple[int, str] | None
) -> None:
    assert delay_beside(text, language) == read


ATHLETE = Athlete(sex=Sex.FEMALE, birth_year=1994, height_cm=166, body_mass_kg=60)
HABIT = Baseline(carb_g=250, protein_g=140, fat_g=55, fibre_g=25, water_l=3.5, sodium_mg=2500)
LIMITS = Limits.suggested(ATHLETE, draft_plan(ATHLETE, HABIT), HABIT)


@pytest.mark.parametrize(
    ("fullness", "sharpness", "gut", "rule", "tops_up"),
    [
        (7, 4, Gut.FINE, "flat-and-sharp", True),
        (3, 5, Gut.FINE, "flat-and-sharp", True),
        (8, 5, Gut.FINE, "full", False),
        (7, 3, Gut.FINE, "good-enough", False),
        (4, 2, Gut.FINE, "blurred", False),
        (4, 5, Gut.HEAVY, "gut-unsettled", False),
        (4, 5, Gut.BAD, "gut-unsettled", False),
    ],
)
def test_only_the_flat_and_sharp_with_a_quiet_gut_top_up(
    fullness: int, sharpness: int, gut: Gut, rule: str, tops_up: bool
) -> None:
    choice = last_choice(fullness, sharpness, gut, LIMITS)
    assert choice.rule == rule
    assert (choice.grams > 0) is tops_up


@given(fullness=st.integers(1, 10), sharpness=st.integers(1, 5), gut=st.sampled_from(Gut))
def test_a_top_up_stays_inside_what_the_coach_allows_on_the_last_day(
    fullness: int, sharpness: int, gut: Gut
) -> None:
    choice = last_choice(fullness, sharpness, gut, LIMITS)
    assert 0 <= choice.grams <= min(LIMITS.step_g, LIMITS.change_per_day_g / 2)
    assert choice.needs_sign_off is (choice.grams > LIMITS.apply_without_asking_g)


def test_a_look_off_its_scale_is_refused() -> None:
    with pytest.raises(ValueError, match="outside its scale"):
        last_choice(11, 3, Gut.FINE, LIMITS)


@settings(max_examples=60)
@given(st.integers(8 * 12, 21 * 12), st.integers(9, 60))
def test_nobody_is_told_to_drink_while_they_stand_on_stage(first: int, gap: int) -> None:
    start = at(0) + timedelta(minutes=5 * first)
    stages = (start, start + timedelta(minutes=5 * gap))
    told = timeline(StageDay(stages=stages, usual_wake=at(6)))
    assert [entry for entry in told if entry.kind in DRINKS and entry.at in stages] == []
