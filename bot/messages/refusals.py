"""What to say to an answer that could not be read: what is wrong, and how to put it right."""

from __future__ import annotations

from collections.abc import Callable, Mapping

from engine.units import Refusal, RefusalCode

Facts = Mapping[str, str | float]


def refusal_text(refusal: Refusal) -> str:
    """One or two kind sentences for a refusal of the engine's readers."""
    return _SENTENCES[refusal.code](refusal.facts)


def use_buttons() -> str:
    return "Please use one of the buttons for this one."


def empty_note() -> str:
    return 'That was empty. Write a few words, or "skip".'


def long_note(length: int, most: int) -> str:
    return (
        f"That is {length:,} characters, more than the {most:,} I can keep as a note. "
        "Please send the short of it."
    )


def unknown_place() -> str:
    return (
        "I don't know a place by that name. Send the nearest large city, or what your clock shows "
        "right now, such as 14:35."
    )


def no_zone_at_that_time() -> str:
    return (
        "No time zone shows that right now. Look at your clock and send it as hours and minutes, "
        "such as 14:35, or send the nearest large city."
    )


def not_a_birth_year(low: int, high: int) -> str:
    return f"Please send the year you were born with four digits, between {low} and {high}."


def _number(value: str | float | None) -> str:
    return f"{value:,.4g}" if isinstance(value, float | int) else str(value)


def _range(facts: Facts) -> str:
    unit = f" {facts['unit']}" if facts.get("unit") else ""
    if "low" in facts and "high" in facts:
        return f"between {_number(facts['low'])} and {_number(facts['high'])}{unit}"
    if "high" in facts:
        return f"{_number(facts['high'])}{unit} at most"
    if "low" in facts:
        return f"{_number(facts['low'])}{unit} at least"
    return ""


def _hint(facts: Facts) -> str:
    return f" Did you mean {facts['hint']}?" if facts.get("hint") else ""


def _implausible(facts: Facts) -> str:
    given = f"{_number(facts['given'])} " if "given" in facts else "That "
    unit = f"{facts['unit']} " if "given" in facts and facts.get("unit") else ""
    wanted = _range(facts)
    return (
        f"{given}{unit}can't be right" + (f": I expect something {wanted}." if wanted else ".")
        + (_hint(facts) or " Please check it and send it again.")
    )  # fmt: skip


def _out_of_range(facts: Facts) -> str:
    return f"It has to be {_range(facts)}. Please send it again." + _hint(facts)


_SENTENCES: dict[RefusalCode, Callable[[Facts], str]] = {
    RefusalCode.EMPTY: lambda facts: "That message was empty. Please type the answer.",
    RefusalCode.TOO_LONG: lambda facts: (
        "That is too long for this answer. Please send just the figure."
    ),
    RefusalCode.NOT_A_NUMBER: lambda facts: (
        "I could not read a number in that. Please send just the figure." + _hint(facts)
    ),
    RefusalCode.NOT_A_WHOLE_NUMBER: lambda facts: (
        f"Please send a whole number {_range(facts)}, without decimals."
    ),
    RefusalCode.TOO_MANY_NUMBERS: lambda facts: (
        "There is more than one number in that. Please send one figure only." + _hint(facts)
    ),
    RefusalCode.NEGATIVE: lambda facts: "That is below zero. Please send it without the minus.",
    RefusalCode.AMBIGUOUS_SEPARATOR: lambda facts: (
        "I can't tell whether the point or comma there marks thousands or decimals. "
        "Please send it with one decimal mark only, such as 61.2."
    ),
    RefusalCode.NO_UNIT: lambda facts: (
        "Which unit is that? Please send it again with the unit, such as 61.2 kg or 3.5 L."
    ),
    RefusalCode.UNKNOWN_UNIT: lambda facts: (
        "I don't know that unit. Weight can be in kg, lb or st; water in L, ml or fl oz."
    ),
    RefusalCode.WHICH_FLUID_OUNCE: lambda facts: (
        'US and imperial fluid ounces differ. Please send it as "us fl oz" or "imp fl oz", or in '
        "litres."
    ),
    RefusalCode.AMBIGUOUS_STONE: lambda facts: (
        "I can't tell stones with decimals from stones and pounds there. "
        "Please send it like 9 st 8 lb."
    ),
    RefusalCode.IMPLAUSIBLE: _implausible,
    RefusalCode.OUT_OF_RANGE: _out_of_range,
    RefusalCode.NOT_A_TIME: lambda facts: (
        "I could not read a time of day in that. Please send it like 6:45 or 18:30."
    ),
    RefusalCode.NOT_A_DATE: lambda facts: (
        "I could not read a date in that. Please send it like 14 May or 2027-05-14."
    ),
    RefusalCode.AMBIGUOUS_DATE: lambda facts: (
        "Day and month could be either way round there. Please write the month as a word, "
        "such as 5 June."
    ),
    RefusalCode.WRONG_WEEKDAY: lambda facts: (
        f"{facts.get('day', 'That date')} is a {facts.get('hint', 'different day')}, "
        f"not a {facts.get('given', 'day of that name')}. Please check the date."
    ),
    RefusalCode.NOT_A_CHECK_IN: lambda facts: (
        "That is not a check-in I can read. In one line it is weight, fullness, water, "
        "such as: 61.2 7 3.5"
    ),
    RefusalCode.INCOMPLETE: lambda facts: (
        "A check-in in one line needs weight, fullness and water, such as: 61.2 7 3.5"
        + (f" (missing: {facts['missing']})" if facts.get("missing") else "")
    ),
}
