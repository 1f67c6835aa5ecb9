"""Height, weight and body fat, each held against the other and against the sex."""

from __future__ import annotations

from bot.dialogue import flow
from bot.dialogue.flow import (
    SKIP,
    YES,
    Answers,
    Choice,
    Choices,
    Flow,
    InvalidAnswer,
    Step,
    When,
    both,
    buttons,
    said,
)
from bot.words import figures, invalid_answers
from bot.words.common import leave_out_button, skip_button
from bot.words.languages import Sentence, SentenceBy, SentenceOn, mark, tr
from engine.evidence.units import KG_PER_LB
from engine.planning.health_screen import believable, body_fat_believable
from engine.values.athlete import Sex
from engine.written.units import (
    ParseError,
    ParseErrorCode,
    WeightUnit,
    parse_height,
    parse_number,
    parse_weight,
)

UNSURE = mark(
    "not sure, unsure, don't know, dont know, i don't know, no idea, not measured, unknown, dunno, "
    "idk, no clue, not a clue"
)
NO_SCALE = mark(
    "no scale, i have no scale, skip, not sure, unsure, don't know, dont know, i don't know, no idea"
)
WEIGHT_UNITS = {"kg": mark("kilograms"), "lb": mark("pounds"), "st": mark("stones and pounds")}

weight_unit_name = SentenceBy(WEIGHT_UNITS)
ask_height = Sentence("How tall are you? Such as 165 cm or 5 ft 5.")
height_with_unit = Sentence("I need your height with its unit.")
weight_is_needed = Sentence(
    "I need a weight this once, because the limits that keep you safe go by it. A scale at a gym "
    "or pharmacy will do, and so will your weight of the last weeks."
)
weight_button = Sentence("Another weight")
height_button = Sentence("Another height")
right_button = Sentence("Both are right")
still_doubted = Sentence(
    "That can hardly be right either. Send it with its unit, such as 70 kg or 154 lb."
)
ask_body_fat = Sentence("Your body fat in percent, if it was measured lately? Otherwise skip.")
fat_keep_button = Sentence("Yes, it was measured so")
fat_again_button = Sentence("Type it again")


def ask_body_mass(unit: str | None) -> str:
    """`unit`: the one that was chosen; None: the answer's own will be theirs."""
    if unit is None:
        return tr(
            "What did you weigh this morning, or on your last ordinary morning? Such as 61.2 kg, "
            "134.9 lb or 9 st 8.9 lb; I write it as you do."
        )
    return tr(
        "What did you weigh this morning, or on your last ordinary morning? (in {unit})",
        unit=weight_unit_name(unit),
    )


weight_with_unit = SentenceOn("{given} kg or {given} lb? Please send it with the unit.")


def ask_check(kg: float, unit: str, height_cm: float, meant: float | None) -> str:
    values = {
        "given": figures.weight(kg, unit),
        "kg": figures.weight(kg, "kg"),
        "height": tr("{height_cm:.0f} cm", height_cm=height_cm),
    }
    if unit == "kg":
        doubt = tr("{given} at {height} can hardly be right.", **values)
    else:
        doubt = tr("{given} is {kg}, and at {height} that can hardly be right.", **values)
    if meant is None:
        question = tr("Which one is it?")
    else:
        question = tr("Did you mean {meant}?", meant=meant_button(meant, unit))
    return f"{doubt} {question}"


def meant_button(kg: float, unit: str) -> str:
    """The number as it was typed, in the other unit."""
    if unit == "kg":
        return tr("{pounds} ({kg})", pounds=figures.weight(kg, "lb"), kg=figures.weight(kg, "kg"))
    return figures.weight(kg, "kg")


def ask_fat_check(percent: float, sex: str) -> str:
    shown = figures.plain(percent)
    if sex == "female":
        return tr("{percent} % is unusual for a woman. Is it right?", percent=shown)
    return tr("{percent} % is unusual for a man. Is it right?", percent=shown)


MEANT, RIGHT, HEIGHT, WEIGHT = "meant", "right", "height", "weight"
#: Zones by whose name alone somebody may say where they are, and that lie in the US.
US_ZONES = (
    "America/New_York", "America/Chicago", "America/Denver", "America/Phoenix",
    "America/Los_Angeles", "America/Anchorage", "Pacific/Honolulu",
)  # fmt: skip
KEEP, LEAVE, AGAIN = "keep", "leave", "again"


def height_of(answers: Answers) -> float:
    """The height that counts (cm)."""
    return float(answers.get("height_again") or answers["height_cm"])


def mass_of(answers: Answers) -> float:
    """The body mass that counts (kg)."""
    checked = answers.get("mass_check")
    return float(checked if isinstance(checked, int | float) else answers["body_mass_kg"])


def fat_of(answers: Answers) -> float | None:
    """The body fat that counts (%), None where it is not known."""
    return None if answers.get("fat_check") == LEAVE else answers["body_fat_percent"]


def meant_kg(answers: Answers) -> float | None:
    """The weight if the number was meant in the other unit, where that goes with the height."""
    unit, pound = WeightUnit(answers["weight_unit"]), float(KG_PER_LB)
    kg: float = answers["body_mass_kg"]
    other = {WeightUnit.LB: kg / pound, WeightUnit.KG: kg * pound}.get(unit)
    if other is None or not believable(answers["height_cm"], other):
        return None
    return round(other, 2)


def _doubted(answers: Answers) -> bool:
    return not believable(answers["height_cm"], answers["body_mass_kg"])


def _read_height(text: str) -> float:
    try:
        return parse_height(flow.plainly(text))
    except ParseError as error:
        if error.code in _UNREAD:
            raise InvalidAnswer(height_with_unit()) from error
        raise


_UNREAD = (ParseErrorCode.NO_UNIT, ParseErrorCode.UNKNOWN_UNIT, ParseErrorCode.NOT_A_NUMBER)


def _read_mass(text: str, answers: Answers) -> Answers:
    """The weight (kg) and the unit in which it was told, which is the athlete's from then on."""
    if said(text, NO_SCALE):
        raise InvalidAnswer(weight_is_needed())
    unit = answers.get("weight_unit")
    text = flow.plainly(text)
    try:
        told = parse_weight(text, unit=WeightUnit(unit) if unit else None)
    except ParseError as error:
        if error.code is not ParseErrorCode.NO_UNIT:
            raise
        told = parse_weight(text, unit=_unit_meant(text, answers))
    return {"body_mass_kg": told.kg, "weight_unit": told.unit.value}


def _unit_meant(text: str, answers: Answers) -> WeightUnit:
    """The unit of a bare number: kilograms; in the US pounds, and where either goes it is asked."""
    height = float(answers["height_cm"])

    def fits(unit: WeightUnit) -> bool:
        try:
            return believable(height, parse_weight(text, unit=unit).kg)
        except ParseError:
            return False

    if not _in_us(answers) or not fits(WeightUnit.LB):
        return WeightUnit.KG
    if fits(WeightUnit.KG):
        doubt = ParseError(ParseErrorCode.NO_UNIT, given=text.strip())
        raise InvalidAnswer(weight_with_unit(text.strip())) from doubt
    return WeightUnit.LB


def _in_us(answers: Answers) -> bool:
    places, chosen = answers.get("place") or [], answers.get("which_place", 0)
    place = places[chosen] if isinstance(chosen, int) and chosen < len(places) else {}
    return str(place.get("name", "")).endswith(", US") or place.get("zone", "") in US_ZONES


def _ask_check(answers: Answers) -> str:
    return ask_check(
        answers["body_mass_kg"], answers["weight_unit"], answers["height_cm"], meant_kg(answers)
    )


def _checks(answers: Answers) -> Choices:
    meant = meant_kg(answers)
    first = [[Choice(meant_button(meant, answers["weight_unit"]), MEANT)]] if meant else []
    return [
        *first,
        [Choice(weight_button(), WEIGHT), Choice(height_button(), HEIGHT)],
        [Choice(right_button(), RIGHT)],
    ]


def _read_check(text: str, answers: Answers) -> Answers | None:
    """The weight that was meant, RIGHT or HEIGHT, and the unit it is told in, which is the athlete's
    from then on; or None to be asked for the weight again.
    """
    unit, word = str(answers["weight_unit"]), text.strip().lower()
    meant = meant_kg(answers)
    if word == WEIGHT:
        return None
    if word in (RIGHT, HEIGHT):
        return {"mass_check": word, "weight_unit": unit}
    if meant is not None and (word == MEANT or said(text, YES)):
        return {"mass_check": meant, "weight_unit": _OTHER_UNIT[unit]}
    try:
        typed = parse_weight(text, unit=WeightUnit(unit))
    except ParseError:
        raise InvalidAnswer(invalid_answers.use_buttons()) from None
    if not believable(answers["height_cm"], typed.kg):
        raise InvalidAnswer(still_doubted())
    return {"mass_check": typed.kg, "weight_unit": typed.unit.value}


#: The unit in which a number was meant that was read in this one.
_OTHER_UNIT = {WeightUnit.LB.value: WeightUnit.KG.value, WeightUnit.KG.value: WeightUnit.LB.value}


def _read_fat(text: str) -> float | None:
    if said(text, SKIP) or said(text, UNSURE):
        return None
    return parse_number(text.replace("%", ""), low=3, high=60)


def _fat_doubted(answers: Answers) -> bool:
    percent = answers.get("body_fat_percent")
    return percent is not None and not body_fat_believable(Sex(answers["sex"]), percent)


def _read_fat_check(text: str) -> str | None:
    word = text.strip().lower()
    if word in (KEEP, LEAVE):
        return word
    if word == AGAIN:
        return None
    raise InvalidAnswer(invalid_answers.use_buttons())


def steps(when: When | None = None) -> tuple[Step, ...]:
    """Height and weight, put where `when` holds; "sex" is answered before."""
    return (
        Step(key="height_cm", ask=ask_height, read=_read_height, when=when),
        Step(
            key="body_mass_kg",
            ask=lambda answers: ask_body_mass(answers.get("weight_unit")),
            read_with=_read_mass,
            when=when,
            spreads=True,
        ),
        Step(
            key="mass_check",
            ask=_ask_check,
            read_with=_read_check,
            choices=_checks,
            when=both(when, _doubted),
            back_to="body_mass_kg",
            spreads=True,
        ),
        Step(
            key="height_again",
            ask=ask_height,
            read=_read_height,
            when=both(when, lambda answers: answers.get("mass_check") == HEIGHT),
        ),
    )


def fat_steps() -> tuple[Step, ...]:
    """Body fat."""
    return (
        Step(
            key="body_fat_percent",
            ask=ask_body_fat,
            read=_read_fat,
            choices=buttons(((skip_button, "skip"),)),
        ),
        Step(
            key="fat_check",
            ask=lambda answers: ask_fat_check(answers["body_fat_percent"], answers["sex"]),
            read=_read_fat_check,
            choices=buttons(
                ((fat_keep_button, KEEP),), ((leave_out_button, LEAVE), (fat_again_button, AGAIN))
            ),
            when=_fat_doubted,
            back_to="body_fat_percent",
        ),
    )


#: Asked again of somebody whose height or weight was wrong. Context: "sex", "weight_unit".
MEASURES = Flow(id="measures", steps=(*steps(), *fat_steps()))
