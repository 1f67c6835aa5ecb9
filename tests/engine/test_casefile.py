"""Case files: read in full or refused by section and key, and decided from the command line."""

from __future__ import annotations

import json
import subprocess
from datetime import date
from pathlib import Path

import pytest

from engine.cli.casefile import parse, run
from engine.cli.tables import CaseFileError
from engine.planning.drafting.draft import draft_plan
from engine.values.athlete import Sex
from engine.values.checkin import TrainingDone
from engine.values.plan import LOAD_DAYS
from tests.support import started

CASES = Path(__file__).parents[1] / "cases"
FILES = sorted(CASES.glob("*.toml"))

WEEK = """
[athlete]
sex = "F"
birth_year = 1994
height_cm = 166
body_mass_kg = 60.0

[baseline]
carb_g = 180
protein_g = 130
fat_g = 50
fibre_g = 28
water_l = 3.2
sodium_mg = 2800

[event]
kind = "show"
day = 2026-11-28
zone = "Europe/Lisbon"

[limits]
carb_floor_g = 60
carb_ceiling_g = 560
step_g = 25
change_per_day_g = 100
load_total_g = 1500
apply_without_asking_g = 30
water_floor_l = 2.4
water_ceiling_l = 4.8
"""
DAY = """
[[day]]
days_out = 2
carb_g = 460
"""
MORNING = """
[[checkin]]
date = 2026-11-26
weight_kg = 59.6
fullness = 6
sharpness = 3
water_l = 3.2
"""
# The fields of one printed decision, in the words of the case-file format.
FIELDS = {
    "date", "sets_date", "days_out", "outcome", "carb_g", "planned_carb_g", "change_g", "rule",
    "bound", "needs_sign_off", "flags", "reason", "sources",
}  # fmt: skip


def engine(*arguments: str) -> subprocess.CompletedProcess[str]:
    return started.run("-m", "engine.__main__", *arguments, cwd=CASES.parents[1])


def test_json_holds_exactly_the_promised_fields_for_each_check_in() -> None:
    ran = engine(str(CASES / "flat-in-load.toml"), "--json")
    assert (ran.returncode, ran.stderr) == (0, "")
    decisions = json.loads(ran.stdout)
    assert [set(decision) for decision in decisions] == [FIELDS] * 4
    last = decisions[-1]
    assert last["date"] == "2026-11-27"
    assert last["outcome"] == "adjusted"
    assert (last["carb_g"], last["planned_carb_g"], last["change_g"]) == (510, 460, 50)
    assert last["needs_sign_off"] is True
    assert last["bound"] is None
    assert all(isinstance(source, str) for source in last["sources"])


def test_a_morning_may_tell_how_training_went() -> None:
    (answered,) = parse(WEEK + DAY + MORNING + 'training_done = "less"\n').answers
    assert answered.checkin.training_done is TrainingDone.LESS
    (untold,) = parse(WEEK + DAY + MORNING).answers
    assert untold.checkin.training_done is None


def test_flags_are_printed_with_id_and_level(tmp_path: Path) -> None:
    file = tmp_path / "ill.toml"
    file.write_text(WEEK + DAY + MORNING + 'symptoms = ["chest pain"]\n')
    (decision,) = json.loads(engine(str(file), "--json").stdout)
    assert decision["outcome"] == "escalated"
    assert {"id": "chest-pain", "level": "warning"} in decision["flags"]


def test_text_tells_the_figures_the_reason_the_sources_and_the_caution() -> None:
    ran = engine(str(CASES / "flat-in-load.toml"))
    assert ran.returncode == 0
    for told in (
        "485 g (plan 460 g, 25 g more)",
        "flat-in-load",
        "You're flatter than planned (4, I expected 6) and still sharp",
        "waits for the coach's word; without it 490 g stands",
        "Cheuvront",
        "no medical device",
    ):
        assert told in " ".join(ran.stdout.split())


def test_a_file_that_is_missing_or_no_toml_or_no_text_ends_with_one_clear_line(
    tmp_path: Path,
) -> None:
    broken, binary = tmp_path / "broken.toml", tmp_path / "binary.toml"
    broken.write_text("[athlete\nsex = ")
    binary.write_bytes(b"\xff\xfe\x00week")
    for path, says in (
        (tmp_path / "gone.toml", "No such file"),
        (tmp_path, "directory"),
        (broken, "no TOML"),
        (binary, "no UTF-8"),
    ):
        ran = engine(str(path))
        assert ran.returncode == 2
        assert ran.stdout == ""
        assert len(ran.stderr.splitlines()) == 1
        assert says in ran.stderr


@pytest.mark.parametrize(
    ("text", "says"),
    [
        (WEEK.replace('sex = "F"', 'sex = "F"\nshoe_size = 39'), r"\[athlete\]: unknown shoe_size"),
        (WEEK + DAY + "carbs = 3\n", r"\[\[day\]\] number 1: unknown carbs"),
        (WEEK + MORNING + "mood = 3\n", r"\[\[checkin\]\] number 1: unknown mood"),
        (WEEK + "[coach]\nname = 1\n", "the file: unknown coach"),
        (WEEK.replace("step_g = 25", "stepp_g = 25"), r"\[limits\]: unknown stepp_g"),
    ],
)
def test_an_unknown_key_is_refused_by_name_and_section(text: str, says: str) -> None:
    with pytest.raises(CaseFileError, match=says):
        parse(text)


@pytest.mark.parametrize(
    ("text", "says"),
    [
        (WEEK.replace("birth_year = 1994\n", ""), r"\[athlete\]: birth_year is missing"),
        (WEEK.replace("fat_g = 50\n", ""), r"\[baseline\]: fat_g is missing"),
        (WEEK.replace('zone = "Europe/Lisbon"\n', ""), r"\[event\]: zone is missing"),
        (WEEK.replace("[event]", "[evening]"), r"the section \[event\] is missing"),
        (WEEK + "[[day]]\ncarb_g = 5\n", r"\[\[day\]\] number 1: days_out is missing"),
        (WEEK + "[[day]]\ndays_out = 5\n", r"\[\[day\]\] number 1: carb_g is missing"),
        (WEEK + "[[checkin]]\nfullness = 5\n", r"\[\[checkin\]\] number 1: date is missing"),
    ],
)
def test_a_missing_key_is_named(text: str, says: str) -> None:
    with pytest.raises(CaseFileError, match=says):
        parse(text)


@pytest.mark.parametrize(
    ("text", "says"),
    [
        (WEEK.replace("height_cm = 166", 'height_cm = "tall"'), "height_cm must be a number"),
        (WEEK.replace("height_cm = 166", "height_cm = true"), "height_cm must be a number"),
        (WEEK.replace('sex = "F"', 'sex = "X"'), "sex must be"),
        (WEEK.replace("birth_year = 1994", "birth_year = 1994.5"), "birth_year must be a year"),
        (WEEK.replace('kind = "show"', 'kind = "party"'), "kind must be one of show, shoot, trial"),
        (WEEK.replace("day = 2026-11-28", 'day = "soon"'), "day must be a date"),
        (WEEK.replace("day = 2026-11-28", "day = 2026-11-28T09:00:00"), "day must be a date"),
        (WEEK.replace("Europe/Lisbon", "Atlantis/Capital"), r"\[event\]: .*Atlantis/Capital"),
        (WEEK.replace("Europe/Lisbon", "Europe"), r"\[event\]: "),
        (WEEK + MORNING + 'gut = "grumpy"\n', "gut must be one of fine, heavy, bad"),
        (WEEK + MORNING + 'training_done = "some"\n', "one of as-planned, less, more, none"),
        (WEEK + MORNING + 'symptoms = "dizzy"\n', "symptoms must be a list"),
        (WEEK + MORNING.replace("fullness = 6", "fullness = 6.5"), "fullness must be a whole"),
        (WEEK + MORNING.replace("fullness = 6", "fullness = inf"), "fullness must be a whole"),
        (WEEK + MORNING + 'time = "breakfast"\n', "time must be a time"),
        (WEEK.replace("[athlete]", "[[athlete]]"), r"athlete must be a section \[athlete\]"),
        (WEEK + "[day]\ndays_out = 5\n", r"day must be sections \[\[day\]\]"),
    ],
)
def test_a_value_of_the_wrong_kind_is_named_with_what_it_should_be(text: str, says: str) -> None:
    with pytest.raises(CaseFileError, match=says):
        parse(text)


@pytest.mark.parametrize(
    ("text", "says"),
    [
        (WEEK.replace("body_mass_kg = 60.0", "body_mass_kg = 9"), "outside 30 to 250"),
        (WEEK + DAY + DAY, "one a day"),
        (WEEK + "[[day]]\ndays_out = 9\ncarb_g = 5\n", "outside 7 to 0"),
        (WEEK + MORNING + MORNING, "two are dated 2026-11-26"),
        (WEEK.replace("carb_ceiling_g = 560", "carb_ceiling_g = 900"), "at most 720 g"),
        (WEEK.replace("carb_floor_g = 60", "carb_floor_g = 600"), "is over carb_ceiling_g"),
        (WEEK + "[[override]]\ndays_out = 9\ncarb_g = 400\n", "outside 7 to 0"),
        (WEEK + DAY + "cardio = 20\ncardio_min = 30\n", "say the same"),
    ],
)
def test_what_contradicts_itself_is_refused_with_the_reason(text: str, says: str) -> None:
    with pytest.raises(CaseFileError, match=says):
        parse(text)


def test_a_file_without_days_has_its_plan_drafted() -> None:
    file = parse(WEEK)
    assert file.drafted
    assert file.plan == draft_plan(file.athlete, file.baseline)
    assert parse(WEEK + DAY).drafted is False


def test_a_day_takes_from_the_baseline_what_it_does_not_say() -> None:
    extras = 'training = "legs"\ncardio = "20 min bike"\nsteps = 9000\nwater_l = 3.5\n'
    day = parse(WEEK + DAY + extras).plan.day(2)
    assert day is not None
    assert (day.carb_g, day.protein_g, day.sodium_mg, day.water_l) == (460, 130, 2800, 3.5)
    assert (day.training, day.steps) == ("legs; cardio: 20 min bike", 9000)
    minutes = parse(WEEK + DAY + "cardio = 20\n").plan.day(2)
    assert minutes is not None
    assert minutes.cardio_min == 20


@pytest.mark.parametrize(
    ("told", "sex"), [("F", Sex.FEMALE), ("female", Sex.FEMALE), ("m", Sex.MALE)]
)
def test_sex_is_told_by_letter_or_word(told: str, sex: Sex) -> None:
    assert parse(WEEK.replace('"F"', f'"{told}"')).athlete.sex is sex


def test_a_limit_left_out_is_suggested_and_named_as_such() -> None:
    assert parse(WEEK).suggested == ()
    some = parse(WEEK.replace("step_g = 25\n", ""))
    assert some.suggested == ("step_g",)
    none = WEEK[: WEEK.index("[limits]")]
    assert len(parse(none).suggested) == 8


def test_answers_nobody_can_have_meant_are_read_and_left_to_the_gates() -> None:
    for line in ("weight_kg = 840", "weight_kg = nan", "weight_kg = -1"):
        odd = MORNING.replace("weight_kg = 59.6", line)
        (decision,) = run(parse(WEEK + DAY + odd))
        assert (decision.rule, decision.ask_again) == ("implausible-answer", ("weight_kg",))


def test_a_check_in_with_nothing_in_it_is_asked_for_what_is_needed() -> None:
    (decision,) = run(parse(WEEK + DAY + "[[checkin]]\ndate = 2026-11-26\n"))
    assert decision.rule == "missing-answer"
    assert set(decision.ask_again) == {"weight_kg", "fullness", "water_l", "sharpness"}
    assert decision.carb_g == 460


def test_check_ins_run_in_the_order_of_dates_whatever_the_order_in_the_file() -> None:
    later = MORNING.replace("2026-11-26", "2026-11-27")
    mornings = [decision.date for decision in run(parse(WEEK + later + MORNING))]
    assert mornings == [date(2026, 11, 26), date(2026, 11, 27)]


def test_the_time_of_an_answer_decides_which_day_it_sets() -> None:
    early, late = (
        run(parse(WEEK + MORNING + f"time = {clock}:00\n"))[0].sets_date
        for clock in ("07:30", "11:30")
    )
    assert (early, late) == (date(2026, 11, 26), date(2026, 11, 27))


def test_what_was_set_counts_later_and_what_waited_for_the_coach_lapses_to_a_small_step() -> None:
    flat = """
[[checkin]]
date = 2026-11-25
weight_kg = 59.0
fullness = {fullness}
sharpness = 4
water_l = 3.2
"""
    load = "".join(f"[[day]]\ndays_out = {out}\ncarb_g = 460\n" for out in LOAD_DAYS)
    second = MORNING.replace("fullness = 6", "fullness = 2").replace(
        "sharpness = 3", "sharpness = 5"
    )
    tight = WEEK.replace("load_total_g = 1500", "load_total_g = 1420")
    # 25 g went out alone on the first day: of 40 g of room 15 g are left for the second.
    one_step = run(parse(tight + load + flat.format(fullness=2) + second))
    assert [(d.carb_g, d.bound) for d in one_step] == [(485, None), (475, "load_total_g")]
    # Two steps wait for the coach's word, and lapse to the 30 g that may go out alone.
    two_steps = run(parse(tight + load + flat.format(fullness=1) + second))
    assert two_steps[0].needs_sign_off
    assert two_steps[0].carb_g == 500
    assert (two_steps[0].lapse_g, two_steps[1].carb_g, two_steps[1].bound) == (
        490, 470, "load_total_g",
    )  # fmt: skip


def test_a_signed_figure_in_the_file_stands() -> None:
    signed = "[[override]]\ndays_out = 2\ncarb_g = 420\n"
    (decision,) = run(parse(WEEK + DAY + MORNING + signed))
    assert (decision.rule, decision.carb_g) == ("coach-override", 420)


@pytest.mark.parametrize("path", FILES, ids=lambda path: path.stem)
def test_every_case_file_of_the_project_runs(path: Path) -> None:
    assert run(parse(path.read_text(encoding="utf-8")))
