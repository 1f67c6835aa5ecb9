"""Whether a figure can be its owner's, and what may have been meant where it can't."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from contextlib import suppress
from functools import lru_cache
from typing import NamedTuple

from engine.evidence import deciding as e
from engine.evidence.units import (
    A_GLASS_L,
    CARBS_FAR_OVER,
    CARBS_FAR_UNDER,
    FULLNESS_FAR,
    LEAST_BMI,
    MOST_BMI,
    NEAR_A_SLIP,
    WATER_AT_TARGET,
    WATER_FAR_OVER,
    WATER_FAR_UNDER,
)
from engine.written.oneline.report import CORE, Doubt, DoubtCode, Known, Value
from engine.written.oneline.tokens.pieces import Figure, Unit
from engine.written.units import (
    ParseError,
    VolumeUnit,
    WeightUnit,
    parse_grams,
    parse_score,
    parse_volume,
    parse_weight,
)
from engine.written.units.reading import parse_number

_UNITS_OF = {
    "weight_kg": {Unit.NONE, Unit.WEIGHT},
    "fullness": {Unit.NONE, Unit.OF_TEN},
    "water_l": {Unit.NONE, Unit.VOLUME},
    "sharpness": {Unit.NONE, Unit.OF_FIVE},
    "carb_eaten_g": {Unit.NONE, Unit.GRAMS},
    "sleep_h": {Unit.NONE, Unit.HOURS},
}
#: The answer that a figure's unit names by itself.
KEY_OF_UNIT = {
    Unit.WEIGHT: "weight_kg", Unit.VOLUME: "water_l", Unit.OF_TEN: "fullness",
    Unit.OF_FIVE: "sharpness",
}  # fmt: skip
MOST_FULL, MOST_SHARP = 10, 5
_A_DAYS_DRINK = (1.0, 10.0)  # L
_UNMISTAKABLE = 0.03  # a share: a figure so near the last weight can be nothing else
#: Answers that no bare number is ever taken for.
_NO_FIGURES = frozenset({"fine", "symptoms", "gut", "note", "training_done"})


def fits(key: str, figure: Figure) -> bool:
    """Whether the unit of a figure allows it to be this answer at all."""
    return key not in _NO_FIGURES and figure.unit in _UNITS_OF.get(key, set())


def value_of(key: str, figure: Figure, known: Known) -> Value:
    """The figure as this answer, in kg, L, g, h or as a score. Raises `ParseError`."""
    value, error = _tried(key, figure, known)
    if error is not None:
        raise ParseError(error.code, **{"field": key, **error.facts})
    return value


def ends_of(key: str, figure: Figure, known: Known) -> list[Value]:
    """The two ends of a range that can be this answer."""
    tried = (_tried(key, figure, known, number) for number in (figure.number, figure.high))
    return [value for value, error in tried if error is None]


def answer_of(figure: Figure, answers: Mapping[str, Value], known: Known) -> str | None:
    """Which of the answers the figure was read as."""
    for key in CORE:
        if key in answers and fits(key, figure):
            value, error = _tried(key, figure, known)
            if error is None and value == answers[key]:
                return key
    return None


def _tried(
    key: str, figure: Figure, known: Known, number: str | None = None
) -> tuple[Value, ParseError | None]:
    if number is None:
        number = figure.number
    written = _Written(number, figure.unit, figure.unit_text, figure.thousand)
    return _parsed(key, written, known.weight_unit, known.volume_unit, _most_sharp(known))


def _most_sharp(known: Known) -> int:
    """Where nobody asks for the lines, they may be told on the scale of the fullness."""
    asked = known.wants_sharpness or "sharpness" in known.asked
    return MOST_SHARP if asked else MOST_FULL


class _Written(NamedTuple):
    """What of a figure says what it is worth."""

    number: str
    unit: Unit
    unit_text: str
    thousand: bool


@lru_cache(maxsize=256)  # each figure of a message is held against each answer several times
def _parsed(
    key: str,
    written: _Written,
    weight_unit: WeightUnit | None,
    volume_unit: VolumeUnit | None,
    most_sharp: int,
) -> tuple[Value, ParseError | None]:
    number, unit, unit_text, thousand = written
    try:
        if key == "weight_kg":
            return parse_weight(f"{number} {unit_text}".strip(), unit=weight_unit).kg, None
        if key == "water_l":
            return parse_volume(f"{number} {unit_text}".strip(), unit=volume_unit).litres, None
        if key in ("fullness", "sharpness"):
            scale = MOST_SHARP if unit is Unit.OF_FIVE else most_sharp
            most = MOST_FULL if key == "fullness" else scale
            of = f"/{unit_text}" if unit in (Unit.OF_TEN, Unit.OF_FIVE) else ""
            return parse_score(f"{number}{of}", 1, most), None
        if key == "carb_eaten_g":
            grams = parse_grams(number) if not thousand else parse_number(number) * 1000
            return parse_grams(f"{grams:g}"), None
        return parse_number(number, low=0, high=24), None
    except ParseError as error:
        return None, error.with_traceback(None)


def likely(key: str, value: Value, known: Known) -> bool:
    """Whether the value is near enough to what its owner usually tells."""
    return _far_from(key, value, known) is None


def _far_from(key: str, value: Value, known: Known) -> float | None:
    """What the value is too far from to be taken unasked, or None where it is not."""
    if value is None:
        return None
    if key == "weight_kg":
        return _weight_far_from(value, known)
    if key == "fullness" and known.fullness is not None:
        far = abs(value - known.fullness) >= float(FULLNESS_FAR)
        return float(known.fullness) if far else None
    if key == "water_l" and known.water_l:
        low, high = (float(share) * known.water_l for share in (WATER_FAR_UNDER, WATER_FAR_OVER))
        return None if low <= value <= high else known.water_l
    if key == "carb_eaten_g" and known.carb_g:
        low, high = (float(share) * known.carb_g for share in (CARBS_FAR_UNDER, CARBS_FAR_OVER))
        return None if low <= value <= high else known.carb_g
    return None


def _weight_far_from(kg: float, known: Known) -> float | None:
    """A morning is held against the last one, and passes where it agrees with the file instead."""
    last, on_file = known.weight_kg, known.on_file_kg
    if last is not None:
        references = [reference for reference in (last, on_file) if reference is not None]
        near = any(abs(kg - r) <= float(e.JUMP_SHARE) * r for r in references)
        return None if near else last
    if on_file is not None:
        near = abs(kg - on_file) <= float(e.FIRST_JUMP_ASKED_SHARE) * on_file
        return None if near else on_file
    if known.height_cm is not None:
        square = (known.height_cm / 100) ** 2
        if not float(LEAST_BMI) <= kg / square <= float(MOST_BMI):
            return (
                float(LEAST_BMI) if kg / square < float(LEAST_BMI) else float(MOST_BMI)
            ) * square
    return None


def values_of(key: str, figures: Sequence[Figure], known: Known) -> list[float]:
    """The figures that can be read as this answer, as values."""
    tried = (_tried(key, figure, known) for figure in figures)
    return [value for value, error in tried if error is None and value is not None]


def is_readable(key: str, figure: Figure, known: Known) -> bool:
    """Whether the figure can be this answer at all, usual or not."""
    if not fits(key, figure) or figure.high:
        return fits(key, figure)
    return _tried(key, figure, known)[1] is None


def is_plain(key: str, figure: Figure, known: Known) -> bool:
    """Whether the figure is this answer as its owner usually tells it."""
    if not fits(key, figure) or not is_readable(key, figure, known):
        return False
    if figure.high:
        return any(likely(key, end, known) for end in ends_of(key, figure, known))
    values = values_of(key, [figure], known)
    return bool(values) and likely(key, values[0], known)


def doubt_of_habit(key: str, figure: Figure, value: Value, known: Known) -> Doubt | None:
    """The question to ask where a figure that could be read is far from its owner's habit."""
    before = _far_from(key, value, known)
    if before is None or value is None:
        return None
    meant = list(_meant(key, figure, before, known))
    if key == "water_l" and not meant and not 0 < value < float(A_GLASS_L):
        # nothing else can be meant: too much or too little drunk is heard at once, not asked about
        return None
    insist = key != "weight_kg" or abs(value - before) <= 0.25 * before
    options = [*meant, value] if insist else meant
    return Doubt(
        code=DoubtCode.FAR, answer=key, given=figure.text.strip(),
        facts={"before": before, "value": value},
        options=tuple({key: option} for option in options),
    )  # fmt: skip


def doubt_of_parse_error(key: str, figure: Figure, error: ParseError, known: Known) -> Doubt:
    """The question to ask where a figure cannot be this answer: the answer, and what may be meant."""
    facts = {name: fact for name, fact in error.facts.items() if name != "field"}
    usual = _usual(key, known)
    meant = list(dict.fromkeys(_meant(key, figure, usual, known)))[:3]
    return Doubt(
        code=error.code, answer=key, given=figure.text.strip(), facts=facts,
        options=tuple({key: option} for option in meant),
    )  # fmt: skip


def _usual(key: str, known: Known) -> float | None:
    return {
        "weight_kg": known.weight_kg or known.on_file_kg,
        "water_l": known.water_l,
        "carb_eaten_g": known.carb_g,
    }.get(key)


def _meant(key: str, figure: Figure, usual: float | None, known: Known) -> Iterator[Value]:
    """Likely meanings of a figure that cannot stand as it is, the likeliest first."""
    if key in ("fullness", "sharpness"):
        yield from _scores_meant(figure.number, 10 if key == "fullness" else 5)
    elif key == "weight_kg" and usual is not None:
        yield from _weights_meant(figure, usual)
    elif key == "water_l" and not _is_said_whole(figure, known):
        yield from _volumes_meant(figure, usual, known)


def _scores_meant(number: str, most: int) -> Iterator[int]:
    plain = number.lstrip("-")
    try:
        value = float(plain.replace(",", "."))
    except ValueError:
        return
    if number.startswith("-") and value.is_integer() and 1 <= value <= most:
        yield int(value)
    elif not value.is_integer():
        for score in (int(value), int(value) + 1):
            if 1 <= score <= most:
                yield score
    elif plain.isdecimal() and len(plain) > 1:
        first = int(plain[0])
        if 1 <= first <= most and (plain[1:].strip("0") == "" or set(plain) == {plain[0]}):
            yield first
        elif int(plain[-1]) and int(plain[-1]) <= most and int(plain[0]) <= most and first:
            yield from sorted({first, int(plain[-1])})


def _weights_meant(figure: Figure, usual: float) -> Iterator[float]:
    digits = figure.number.lstrip("-").replace(",", ".")
    written = [f"{digits} {unit}" for unit in (WeightUnit.LB, WeightUnit.KG)]
    if "." not in digits:
        written += [f"{digits[:-1]}.{digits[-1:]} {unit}" for unit in ("kg", "lb")]
    else:
        whole, rest = digits.split(".", 1)
        written += [f"{whole}{rest[:1]}.{rest[1:] or 0} {unit}" for unit in ("kg", "lb")]
    own = figure.unit_text or WeightUnit.KG
    for place, digit in enumerate(digits):
        if digit.isdecimal():
            written += [f"{digits[:place]}{d}{digits[place + 1 :]} {own}" for d in "0123456789"]
    found: list[tuple[float, float]] = []
    for rank, text in enumerate(written):
        with suppress(ParseError):
            kg = parse_weight(text).kg
            if abs(kg - usual) <= float(NEAR_A_SLIP) * usual:
                found.append((rank if rank < 4 else 4 + abs(kg - usual), kg))
    yield from [kg for _, kg in sorted(found)][:1]


def _is_said_whole(figure: Figure, known: Known) -> bool:
    """Whether a day's drink was written with its unit, so that no decimal point slipped."""
    low, high = _A_DAYS_DRINK
    values = values_of("water_l", [figure], known)
    return figure.unit is Unit.VOLUME and any(low <= value <= high for value in values)


def _volumes_meant(figure: Figure, usual: float | None, known: Known) -> Iterator[float]:
    try:
        number = float(figure.number.lstrip("-").replace(",", "."))
    except ValueError:
        return
    written = [number, number / 10, number / 1000, number * 10, number / 100]
    unit = known.volume_unit
    if unit in (VolumeUnit.FLOZ_US, VolumeUnit.FLOZ_IMP):
        with suppress(ParseError):
            written.append(parse_volume(f"{number:g}", unit=unit).litres)
    if figure.number.count(",") + figure.number.count(".") == 1 and "000" not in figure.number:
        written.append(float(figure.number.lstrip("-").replace(",", "").replace(".", "")) / 1000)
    around = usual if usual else 3.0
    near = [litres for litres in written if 0.4 * around <= litres <= 1.75 * around]
    yield from sorted(set(near), key=lambda litres: abs(litres - around))[:1]


def at_last_weight(figure: Figure, known: Known) -> bool:
    """Whether it is so near the last weight that it can be nothing else."""
    last = known.weight_kg
    values = values_of("weight_kg", [figure], known) if fits("weight_kg", figure) else []
    if last is None or not values or figure.high or figure.bound:
        return False
    return abs(values[0] - last) <= _UNMISTAKABLE * last


def at_water_target(figure: Figure, known: Known) -> bool:
    target = known.water_l
    values = values_of("water_l", [figure], known) if fits("water_l", figure) else []
    if not target or not values or figure.high:
        return False
    return abs(values[0] - target) <= float(WATER_AT_TARGET) * target
