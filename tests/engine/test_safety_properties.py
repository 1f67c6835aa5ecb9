"""No content of a check-in makes the safety flags raise, or say what is not so."""

from __future__ import annotations

from datetime import date
from typing import Any

from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from engine.safety import Level, safety_flags
from engine.values.athlete import Athlete, Baseline, Event, EventKind, Sex
from engine.values.case import WeekSoFar
from engine.values.checkin import CheckIn, Gut, History
from engine.values.plan import DayTarget, PeakPlan
from tests.support.any_text import any_text

ANY_NUMBER = st.one_of(
    st.none(),
    st.floats(),
    st.floats(30, 250),
    st.integers(-(10**400), 10**400),
    st.sampled_from([0, -1, 1e308, -1e308, 6.12, 61.2]),
)
WORDS = st.one_of(
    any_text(80),
    st.sampled_from(["dizzy", "chest-pain", "2 litres in an hour", "no headache", "💀", "1" * 500]),
)
CHECKIN = st.builds(
    CheckIn,
    date=st.dates(),
    weight_kg=ANY_NUMBER,
    fullness=ANY_NUMBER,
    sharpness=ANY_NUMBER,
    water_l=ANY_NUMBER,
    carb_eaten_g=ANY_NUMBER,
    gut=st.one_of(st.none(), st.sampled_from(Gut)),
    symptoms=st.lists(WORDS, max_size=3).map(tuple),
    note=WORDS,
    sleep_h=ANY_NUMBER,
    urine_colour=ANY_NUMBER,
    resting_pulse=ANY_NUMBER,
    water_within_one_hour_l=ANY_NUMBER,
)
NEARBY = st.builds(
    CheckIn, date=st.dates(date(2027, 5, 1), date(2027, 5, 14)), weight_kg=ANY_NUMBER,
    sleep_h=ANY_NUMBER,
)  # fmt: skip


def plan_of(outs: set[int]) -> PeakPlan:
    return PeakPlan(
        tuple(
            DayTarget(
                days_out=out,
                carb_g=200,
                protein_g=100,
                fat_g=50,
                fibre_g=20,
                water_l=out / 2,
                sodium_mg=2000,
            )
            for out in sorted(outs, reverse=True)
        )
    )


PLANS = st.sets(st.integers(0, 7)).map(plan_of)


def history(checkins: list[CheckIn]) -> History:
    by_date = {checkin.date: checkin for checkin in checkins}
    return History(checkins=tuple(by_date[day] for day in sorted(by_date)))


def flags(
    *, water_ceiling_l: float | None, mornings_missed: int = 0, **week: Any
) -> tuple[Any, ...]:
    so_far = WeekSoFar(
        athlete=Athlete(
            sex=Sex.MALE, birth_year=1990, height_cm=180, body_mass_kg=80, body_fat_percent=8
        ),
        baseline=Baseline(
            carb_g=250, protein_g=150, fat_g=60, fibre_g=25, water_l=0, sodium_mg=2500
        ),
        event=Event(kind=EventKind.TRIAL, day=date(2027, 5, 14), zone="UTC"),
        **week,
    )
    return safety_flags(so_far, water_ceiling_l=water_ceiling_l, mornings_missed=mornings_missed)


# how long a draw takes says how busy the machine is, and nothing of the flags
@settings(max_examples=150, suppress_health_check=[HealthCheck.too_slow])
@given(
    checkin=CHECKIN,
    earlier=st.lists(st.one_of(CHECKIN, NEARBY), max_size=4),
    plan=PLANS,
    ceiling=ANY_NUMBER,
    missed=st.integers(-1, 400),
)
def test_no_check_in_makes_the_flags_raise(
    checkin: CheckIn, earlier: list[CheckIn], plan: PeakPlan, ceiling: Any, missed: int
) -> None:
    case = {
        "checkin": checkin, "history": history(earlier), "plan": plan,
        "water_ceiling_l": ceiling, "mornings_missed": missed,
    }  # fmt: skip
    found = flags(**case)
    assert flags(**case) == found
    assert hash(found) is not None
    assert [flag.level.rank for flag in found] == sorted(
        (flag.level.rank for flag in found), reverse=True
    )
    for flag in found:
        assert flag.sources
        assert flag.level in set(Level)


@given(
    last=st.integers(400, 1500), now=st.integers(400, 1500), water=st.integers(0, 150)
)  # tenths of kg and of L
def test_weight_flags_agree_with_whole_number_arithmetic(last: int, now: int, water: int) -> None:
    found = {
        flag.id
        for flag in flags(
            checkin=CheckIn(date=date(2027, 5, 10), weight_kg=now / 10, water_l=water / 10),
            history=History(checkins=(CheckIn(date=date(2027, 5, 9), weight_kg=last / 10),)),
            plan=PeakPlan(()),
            water_ceiling_l=5.0,
        )
    }
    assert ("weight-drop-24h" in found) == ((last - now) * 100 >= 3 * last)
    assert ("weight-drop-baseline" in found) == ((800 - now) * 100 >= 5 * 800)
    assert ("low-sodium-pattern" in found) == ((now - last) * 100 >= 2 * last and water >= 50)
    assert ("water-over-guard-rail" in found) == (water > 80)
    assert ("water-under-adequate" in found) == (water < 25)
