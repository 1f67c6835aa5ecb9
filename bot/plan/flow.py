"""The questions for a plan: drafting one, and changing one number of one day."""

from __future__ import annotations

import re
from datetime import date, timedelta
from functools import partial

from bot.dialogue.flow import (
    AS_ALWAYS,
    FOUND,
    MINUTES,
    STEPS,
    Answers,
    Choice,
    Choices,
    Flow,
    InvalidAnswer,
    Long,
    Step,
    buttons,
    one_a_row,
    one_of,
    reason,
    said,
    without,
    yes_or_no,
)
from bot.plan import words
from bot.plan import words_draft_reasons as reasons
from bot.plan.next_load import flow
from bot.words import figures, invalid_answers, phases
from bot.words.common import too_long_here
from engine.evidence.planning.drafting import STEP, WORTH_SAYING
from engine.planning.drafting.draft import (
    DEEP,
    MILD,
    MUCH_TRAINING,
    SHAPES,
    USUAL_TRAINING,
    Asked,
    depletions,
    draft_plan,
    load_range,
    trial_window,
    usual_load,
)
from engine.planning.drafting.draft_reasons import draft_reasons
from engine.planning.teaching import Lesson, best_lesson
from engine.values.athlete import Athlete, Baseline, Sex
from engine.values.plan import MOST_LOAD_DAYS, PeakPlan, Phase
from engine.written.units import VolumeUnit, parse_grams, parse_number, parse_volume

LEARNT, WHY, DAYS = "learnt", "why", "days"
#: Load days on buttons: how many of them is the coach's, and any others can be typed.
USUAL_LOAD_DAYS = ((3, 2, 1), (2, 1), (1,), (4, 3, 2, 1), (5, 4, 3), (4, 2, 1))
LONGEST_TRAINING = 200
MOST = {
    "carb_g": 1500, "protein_g": 600, "fat_g": 400, "fibre_g": 150,
    "sodium_mg": 20000, "cardio_min": 600, "steps": 60000,
}  # fmt: skip


#: What may have no figure: it stays as always where it is not counted.
UNCOUNTED = frozenset({"fibre_g", "sodium_mg"})


def drafted(answers: Answers) -> PeakPlan:
    """The plan that the answers describe."""
    asked, days = _asked_for(answers), _load_days(answers)
    return draft_plan(
        _athlete(answers), Baseline(**answers["_baseline"]), Asked(*asked, load_days=days)
    )


def _asked_for(answers: Answers) -> tuple[str, float, str]:
    # A question that was open before depletion was asked for has a mild one.
    _, most = load_range(answers["shape"], _load_days(answers))
    return answers["shape"], min(answers["load"], most), answers.get("depletion", MILD)


def _load_days(answers: Answers) -> tuple[int, ...]:
    return tuple(answers.get("load_days") or SHAPES[answers["shape"]].load_days)


def _athlete(answers: Answers) -> Athlete:
    facts = answers["_athlete"]
    return Athlete(**{**facts, "sex": Sex(facts["sex"])})


def _ask_shape(answers: Answers) -> str:
    shapes = [(shape.label, shape.meaning) for shape in SHAPES.values()]
    return words.ask_shape(answers["_name"], shapes, self_coached=answers["_own"])


def _published(answers: Answers) -> tuple[float, float]:
    """The published loads (g/kg): for about an hour of training a day, and for well over it."""
    sex = _athlete(answers).sex
    return usual_load(sex), usual_load(sex, MUCH_TRAINING)


def _ask_load(answers: Answers) -> str:
    learnt = _learnt(answers)
    body_mass = figures.weight(_athlete(answers).body_mass_kg, answers["_weight_unit"])
    asked = reasons.ask_load(_athlete(answers).sex, *_published(answers), body_mass)
    if learnt is None:
        return asked
    return f"{asked}\n\n{flow.draft_hint(flow.per_kg(learnt))}"


def _loads(answers: Answers) -> Choices:
    usual, much = _published(answers)
    published = (
        Choice(reasons.load_button(usual), USUAL_TRAINING),
        Choice(reasons.load_button(much), MUCH_TRAINING),
    )
    learnt = _learnt(answers)
    if learnt is None:
        return (published,)
    as_learnt = Choice(flow.draft_button(flow.per_kg(learnt)), LEARNT)
    return (published, (as_learnt,))


def _learnt(answers: Answers) -> float | None:
    """The load that earlier weeks suggest, where this shape can have it (g/kg)."""
    learnt = answers.get("_learnt")
    low, high = load_range(answers["shape"])
    return round(learnt, 1) if learnt is not None and low <= round(learnt, 1) <= high else None


def _read_load(text: str, answers: Answers) -> float:
    typed, learnt = text.strip().lower(), _learnt(answers)
    published = dict(zip((USUAL_TRAINING, MUCH_TRAINING), _published(answers), strict=True))
    if typed in published:
        return published[typed]
    if typed == LEARNT and learnt is not None:
        return learnt
    low, high = load_range(answers["shape"])
    plain = text.lower().replace("g/kg", "").replace("g per kg", "")
    return parse_number(plain, low=low, high=high)


def _ask_depletion(answers: Answers) -> str:
    return reasons.ask_depletion(fat_lead_in=SHAPES[answers["shape"]].fat_lead_in)


def _depletions(answers: Answers) -> Choices:
    return (
        tuple(Choice(reasons.depletion_button(one), one) for one in depletions(answers["shape"])),
    )


def _read_depletion(text: str, answers: Answers) -> str:
    return one_of(*depletions(answers["shape"]))(text)


def _table(answers: Answers) -> str:
    return words.plan_table(
        drafted(answers), date.fromisoformat(answers["_event_day"]), answers["_volume_unit"]
    )


def _so_far(answers: Answers) -> str:
    if "shape" not in answers:
        return ""
    said = [words.draft_so_far(SHAPES[answers["shape"]].label, answers.get("load"))]
    if "depletion" in answers:
        said.append(reasons.depletion_so_far(answers["depletion"]))
    if "deep_reason" in answers:
        said.append(reasons.reason_so_far(answers["deep_reason"]))
    lines = "\n".join(said)
    return f"{lines}\n\n{_table(answers)}" if answers.get("use") is True else lines


def _ask_use(answers: Answers) -> str:
    text = words.ask_use_plan(_table(answers))
    event_day = date.fromisoformat(answers["_event_day"])
    first, last = trial_window(event_day)
    today = date.fromisoformat(answers.get("_today") or answers["_event_day"])
    if answers.get("_kind") == "trial":
        return "\n\n".join(
            part for part in (text, reasons.trial_is_this(), _teaches(answers)) if part
        )
    if today < last:
        fits = reasons.trial_fits(max(first, today + timedelta(days=1)), last)
        return f"{text}\n\n{fits}"
    return text


def _lesson(answers: Answers) -> Long | None:
    """What of a trial is to be worked out: which load would teach most in it."""
    if answers.get("_kind") != "trial":
        return None
    return best_lesson, (_athlete(answers), Baseline(**answers["_baseline"]), drafted(answers))


def _teaches(answers: Answers) -> str:
    """Which load would teach most in this trial, where another than the planned one would.

    Where weeks lie behind, what they suggest has been said with the load.
    """
    if answers.get("_learnt") is not None:
        return ""
    plan = drafted(answers)
    found: Lesson | None = answers[FOUND]
    if found is None or found.narrower < WORTH_SAYING.value:
        return ""
    planned = plan.load_g / len(plan.load_days) / _athlete(answers).body_mass_kg
    return reasons.trial_teaches(
        found.g_per_kg,
        found.narrower,
        found.spilled,
        same=abs(found.g_per_kg - planned) < STEP.value / 2,
    )


def _read_use(text: str) -> bool | str:
    typed = text.strip().lower()
    return typed if typed in (WHY, DAYS) else yes_or_no(text)


def _ask_load_days(answers: Answers) -> str:
    return phases.ask_load_days(_load_days(answers), MOST_LOAD_DAYS)


def _days_to_tap() -> Choices:
    each = [
        Choice(partial(phases.load_days, days), " ".join(str(out) for out in days))
        for days in USUAL_LOAD_DAYS
    ]
    return tuple(tuple(each[k : k + 2]) for k in range(0, len(each), 2))


def _read_load_days(text: str) -> dict[str, list[int]]:
    """ "5-3", "5 4 3" or "5, 4 and 3" to days out, the furthest first."""
    run = re.fullmatch(r"\s*([1-7])\s*(?:-|–|to|bis)\s*([1-7])\D*", text.casefold())
    if run is not None:
        first, last = sorted((int(run[1]), int(run[2])), reverse=True)
        days = list(range(first, last - 1, -1))
    else:
        days = sorted({int(number) for number in re.findall(r"\d+", text)}, reverse=True)
    if not 1 <= len(days) <= MOST_LOAD_DAYS or not all(1 <= out <= 7 for out in days):
        raise InvalidAnswer(phases.unread_load_days(MOST_LOAD_DAYS))
    return {"load_days": days}


def _explain(answers: Answers) -> str:
    lines = draft_reasons(
        _athlete(answers),
        Baseline(**answers["_baseline"]),
        Asked(*_asked_for(answers), _load_days(answers)),
        learnt_g_per_kg=_learnt(answers),
    )
    return reasons.why_these_numbers(lines, answers["_volume_unit"])


#: Context: "_name", "_own", "_athlete" and "_baseline" as the engine's fields, "_event_day",
#: "_kind" of the event, "_today", "_weight_unit", "_volume_unit"; "_learnt", the load that earlier
#: weeks suggest (g/kg) or None.
DRAFT = Flow(
    id="coach-draft",
    so_far=_so_far,
    steps=(
        Step(
            key="shape",
            ask=_ask_shape,
            read=one_of(*SHAPES),
            choices=one_a_row({key: shape.label for key, shape in SHAPES.items()}),
        ),
        Step(key="load", ask=_ask_load, read_with=_read_load, choices=_loads),
        Step(key="depletion", ask=_ask_depletion, read_with=_read_depletion, choices=_depletions),
        Step(
            key="deep_reason",
            ask=reasons.ask_why_deep,
            read=reason,
            free=True,
            when=lambda answers: answers.get("depletion") == DEEP,
        ),
        Step(
            key="use",
            ask=_ask_use,
            beforehand=_lesson,
            read=_read_use,
            choices=buttons(
                ((words.use_plan_button, "yes"), (words.another_draft_button, "no")),
                ((reasons.why_button, WHY), (phases.other_days_button, DAYS)),
            ),
        ),
        Step(
            key=WHY,
            ask=_explain,
            free=True,
            choices=buttons(((reasons.back_to_draft_button, "back"),)),
            when=lambda answers: answers.get("use") == WHY,
            back_to="use",
        ),
        Step(
            key=DAYS,
            ask=_ask_load_days,
            read=_read_load_days,
            choices=_days_to_tap(),
            when=lambda answers: answers.get("use") == DAYS,
            back_to="use",
            returns=True,
            spreads=True,
        ),
    ),
)


def _ask_number(answers: Answers) -> str:
    return words.ask_field(
        answers["_field"], answers["_days_out"], answers["_value"], answers["_volume_unit"]
    )


def _is_training(answers: Answers) -> bool:
    return bool(answers["_field"] == "training")


def _read_number(text: str, answers: Answers) -> float | str | None:
    key = answers["_field"]
    if key in UNCOUNTED and said(text, AS_ALWAYS):
        return None
    if key == "phase":
        return _phase(text)
    if key == "training":
        return _training(text)
    if key == "water_l":
        return parse_volume(text, unit=VolumeUnit(answers["_volume_unit"])).litres
    if key.endswith("_g"):
        return parse_grams(text, high=MOST[key])
    plain = without(without(text, MINUTES), STEPS).removesuffix("mg")
    number = parse_number(plain, low=0, high=MOST[key])
    return int(number) if key == "steps" else number


def _phase(text: str) -> str:
    phase = phases.phase_in(text)
    if phase is None or phase is Phase.EVENT:
        raise InvalidAnswer(invalid_answers.use_buttons())
    return phase.value


def _as_always(answers: Answers) -> Choices:
    if answers["_field"] == "phase":
        named = [Choice(phases.phase_words(phase), phase.value) for phase in Phase]
        return (tuple(named[:3]), tuple(named[3:5]))  # the event's day is what it is
    if answers["_field"] not in UNCOUNTED or answers["_value"] is None:
        return ()
    return ((Choice(words.as_always_button(), "as always"),),)


def _training(text: str) -> str:
    said = " ".join(text.split())
    if not said:
        raise InvalidAnswer(words.training_empty())
    if len(said) > LONGEST_TRAINING:
        raise InvalidAnswer(too_long_here(len(said), LONGEST_TRAINING))
    return said


#: Context: "_field" (a key of the day target), "_days_out", "_value" as it is, "_volume_unit".
PLAN_NUMBER = Flow(
    id="coach-plan-number",
    steps=(
        Step(
            key="value",
            ask=_ask_number,
            read_with=_read_number,
            free=_is_training,
            choices=_as_always,
        ),
    ),
)
