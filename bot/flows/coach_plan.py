"""The questions for a plan: drafting one, and changing one number of one day."""

from __future__ import annotations

from datetime import date

from bot.dialogue import Answers, Choice, Choices, Flow, Step, Unread
from bot.flows.reading import one_of, yes_or_no
from bot.messages import coach_figures as figures
from bot.messages import coach_plan as words
from bot.messages import next_load as learnt_words
from engine.athlete import Athlete, Baseline, Sex
from engine.draft import SHAPES, draft_plan, load_range, usual_load
from engine.plan import PeakPlan
from engine.units import VolumeUnit, parse_grams, parse_number, parse_volume

USUAL = "usual"
LEARNT = "learnt"
LONGEST_TRAINING = 200
MOST = {
    "carb_g": 1500, "protein_g": 600, "fat_g": 400, "fibre_g": 150,
    "sodium_mg": 20000, "cardio_min": 600, "steps": 60000,
}  # fmt: skip


def drafted(answers: Answers) -> PeakPlan:
    """The plan that the answers describe."""
    return draft_plan(
        _athlete(answers), Baseline(**answers["_baseline"]), answers["shape"], answers["load"]
    )


def _athlete(answers: Answers) -> Athlete:
    facts = answers["_athlete"]
    return Athlete(**{**facts, "sex": Sex(facts["sex"])})


def _ask_shape(answers: Answers) -> str:
    shapes = [(shape.label, shape.meaning) for shape in SHAPES.values()]
    return words.ask_shape(answers["_name"], shapes, own=answers["_own"])


def _shapes(answers: Answers) -> Choices:
    return [[Choice(shape.label, key)] for key, shape in SHAPES.items()]


def _ask_load(answers: Answers) -> str:
    athlete, learnt = _athlete(answers), _learnt(answers)
    body_mass = figures.weight(athlete.body_mass_kg, answers["_weight_unit"])
    asked = words.ask_load(usual_load(athlete.sex), body_mass)
    if learnt is None:
        return asked
    return f"{asked}\n\n{learnt_words.draft_hint(learnt_words.per_kg(learnt))}"


def _loads(answers: Answers) -> Choices:
    usual = Choice(words.usual_load_button(usual_load(_athlete(answers).sex)), USUAL)
    learnt = _learnt(answers)
    if learnt is None:
        return ((usual,),)
    return ((usual, Choice(learnt_words.draft_button(learnt_words.per_kg(learnt)), LEARNT)),)


def _learnt(answers: Answers) -> float | None:
    """The load that earlier weeks suggest, where this shape can have it (g/kg)."""
    learnt = answers.get("_learnt")
    low, high = load_range(answers["shape"])
    return round(learnt, 1) if learnt is not None and low <= round(learnt, 1) <= high else None


def _read_load(text: str, answers: Answers) -> float:
    said, learnt = text.strip().lower(), _learnt(answers)
    if said == USUAL:
        return usual_load(_athlete(answers).sex)
    if said == LEARNT and learnt is not None:
        return learnt
    low, high = load_range(answers["shape"])
    plain = text.lower().replace("g/kg", "").replace("g per kg", "")
    return parse_number(plain, low=low, high=high)


def _table(answers: Answers) -> str:
    return words.plan_table(
        drafted(answers), date.fromisoformat(answers["_event_day"]), answers["_volume_unit"]
    )


def _so_far(answers: Answers) -> str:
    if "shape" not in answers:
        return ""
    said = words.draft_so_far(SHAPES[answers["shape"]].label, answers.get("load"))
    return f"{said}\n\n{_table(answers)}" if "use" in answers else said


def _use(answers: Answers) -> Choices:
    return (
        (
            Choice(words.use_plan_button(), "yes"),
            Choice(words.another_draft_button(), "no"),
        ),
    )


#: Context: "_name", "_own", "_athlete" and "_baseline" as the engine's fields, "_event_day",
#: "_weight_unit", "_volume_unit"; "_learnt", the load that earlier weeks suggest (g/kg) or None.
DRAFT = Flow(
    id="coach-draft",
    so_far=_so_far,
    steps=(
        Step(key="shape", ask=_ask_shape, read=one_of(*SHAPES), choices=_shapes),
        Step(key="load", ask=_ask_load, read=_read_load, choices=_loads),
        Step(
            key="use",
            ask=lambda answers: words.ask_use_plan(_table(answers)),
            read=yes_or_no,
            choices=_use,
        ),
    ),
)


def _ask_number(answers: Answers) -> str:
    return words.ask_field(
        answers["_field"], answers["_days_out"], answers["_value"], answers["_volume_unit"]
    )


def _read_number(text: str, answers: Answers) -> float | str:
    key = answers["_field"]
    if key == "training":
        return _training(text)
    if key == "water_l":
        return parse_volume(text, unit=VolumeUnit(answers["_volume_unit"])).litres
    if key.endswith("_g"):
        return parse_grams(text, high=MOST[key])
    plain = text.lower().removesuffix("mg").removesuffix("minutes").removesuffix("min")
    number = parse_number(plain.removesuffix("steps"), low=0, high=MOST[key])
    return int(number) if key == "steps" else number


def _training(text: str) -> str:
    said = " ".join(text.split())
    if not said:
        raise Unread(words.training_empty())
    if len(said) > LONGEST_TRAINING:
        raise Unread(words.training_too_long(len(said), LONGEST_TRAINING))
    return said


#: Context: "_field" (a key of the day target), "_days_out", "_value" as it is, "_volume_unit".
PLAN_NUMBER = Flow(
    id="coach-plan-number", steps=(Step(key="value", ask=_ask_number, read=_read_number),)
)
