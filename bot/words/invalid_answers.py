"""What to say to an answer that could not be read: what is wrong, and how to put it right."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from datetime import date, timedelta

from bot.words import figures
from bot.words.languages import Sentence, tr, worded
from engine.written.units import ParseError, ParseErrorCode

Facts = Mapping[str, str | float]


def parse_error_text(error: ParseError) -> str:
    """One or two kind sentences for an error of the engine's readers."""
    return worded(_SENTENCES[error.code], error.facts)


use_buttons = Sentence("Please tap one of the buttons, or type what it says.")
empty_note = Sentence('That was empty. Write a few words, or "skip".')
reason_empty = Sentence("That was empty. Send a few words on why you go ahead.")

unknown_place = Sentence(
    "I don't know a place by that name. Send the nearest large city, or what your clock shows "
    "right now, such as 14:35."
)
no_zone_at_that_time = Sentence(
    "No time zone shows that right now. Look at your clock and send it as hours and minutes, "
    "such as 14:35, or send the nearest large city."
)
message_names_drug = Sentence(
    "I don't pass on anything about drugs; that is a matter for a doctor. Please leave it "
    "out, or speak with them directly."
)


def long_note(length: int, most: int) -> str:
    return tr(
        "That is {length} characters, more than the {most} I can keep as a note. "
        "Please send the short of it.",
        length=figures.number(length),
        most=figures.number(most),
    )


def not_a_birth_year(low: int, high: int) -> str:
    return tr(
        "Please send the year you were born with four digits, between {low} and {high}.",
        low=low,
        high=high,
    )


def _number(value: str | float | None) -> str:
    if isinstance(value, float | int):
        return figures.in_digits(f"{value:,.4g}")
    return str(value)


def _with_unit(value: str | float | None, facts: Facts) -> str:
    unit = str(facts.get("unit") or "")
    if unit == "days":
        unit = tr("days")
    unit = "L" if unit == "l" else unit
    return f"{_number(value)} {unit}".strip()


def _range(facts: Facts) -> str:
    if "low" in facts and "high" in facts:
        low, high = _number(facts["low"]), _with_unit(facts["high"], facts)
        return tr("between {low} and {high}", low=low, high=high)
    if "high" in facts:
        return tr("{high} at most", high=_with_unit(facts["high"], facts))
    if "low" in facts:
        return tr("{low} at least", low=_with_unit(facts["low"], facts))
    return ""


def _hinted(sentence: str, facts: Facts) -> str:
    """The sentence, and what may have been meant where that can be told."""
    if not facts.get("hint"):
        return sentence
    return sentence + " " + tr("Did you mean {hint}?", hint=figures.in_digits(str(facts["hint"])))


def cannot_be_right(facts: Facts) -> str:
    """Of a figure beside which what was meant is offered, which says more than what is allowed."""
    given = _with_unit(facts["given"], facts) if "given" in facts else tr("That")
    return tr("{given} can't be right.", given=given)


def _implausible(facts: Facts) -> str:
    if facts.get("hint"):
        return _hinted(cannot_be_right(facts), facts)
    given = _with_unit(facts["given"], facts) if "given" in facts else tr("That")
    wanted = _range(facts)
    sentence = (
        tr("{given} can't be right: I expect something {wanted}.", given=given, wanted=wanted)
        if wanted
        else tr("{given} can't be right.", given=given)
    )
    return sentence + " " + tr("Please check it and send it again.")


def _out_of_range(facts: Facts) -> str:
    sentence = (
        tr(
            "I read {given}; it has to be {wanted}.",
            given=_with_unit(facts["given"], facts),
            wanted=_range(facts),
        )
        if "given" in facts
        else tr("It has to be {wanted}. Please send it again.", wanted=_range(facts))
    )
    return _hinted(sentence, facts)


def _wrong_weekday(facts: Facts) -> str:
    day = date.fromisoformat(str(facts["day"]))
    monday = day - timedelta(days=day.weekday())
    week = [monday + timedelta(days=number) for number in range(7)]
    said = next(other for other in week if f"{other:%A}" == facts["given"])
    return tr(
        "{day} is a {right}, not a {said}. Please check the date.",
        day=figures.date_in_figures(day),
        right=figures.weekday(day),
        said=figures.weekday(said),
    )


_SENTENCES: dict[ParseErrorCode, Sentence | Callable[[Facts], str]] = {
    ParseErrorCode.EMPTY: Sentence("That message was empty. Please type the answer."),
    ParseErrorCode.TOO_LONG: Sentence(
        "That is too long for this answer. Please send just the figure."
    ),
    ParseErrorCode.NOT_A_NUMBER: lambda facts: _hinted(
        tr("I need a number here, in digits."), facts
    ),
    ParseErrorCode.NOT_A_WHOLE_NUMBER: lambda facts: tr(
        "Please send a whole number {wanted}, without decimals.", wanted=_range(facts)
    ),
    ParseErrorCode.TOO_MANY_NUMBERS: lambda facts: _hinted(
        tr("I only need one number here, and there are more in that."), facts
    ),
    ParseErrorCode.NEGATIVE: Sentence("That is below zero. Please send it without the minus."),
    ParseErrorCode.AMBIGUOUS_SEPARATOR: Sentence(
        "I can't tell whether the point or comma there marks thousands or decimals. "
        "Please send it with one decimal mark only, such as 61.2."
    ),
    ParseErrorCode.NO_UNIT: Sentence(
        "Which unit is that? Please send it again with the unit, such as 61.2 kg or 3.5 L."
    ),
    ParseErrorCode.UNKNOWN_UNIT: lambda facts: (
        tr("I only need the number. A unit may stand behind it: {units}.", units=facts["known"])
        if facts.get("known")
        else tr("I only need the number here.")
    ),
    ParseErrorCode.WHICH_FLUID_OUNCE: Sentence(
        'US and imperial fluid ounces differ. Please send it as "us fl oz" or "imp fl oz", or in '
        "litres."
    ),
    ParseErrorCode.AMBIGUOUS_STONE: Sentence(
        "I can't tell stones with decimals from stones and pounds there. "
        "Please send it like 9 st 8 lb."
    ),
    ParseErrorCode.IMPLAUSIBLE: _implausible,
    ParseErrorCode.OUT_OF_RANGE: _out_of_range,
    ParseErrorCode.NOT_A_TIME: Sentence(
        "I could not read a time of day in that. Please send it like 6:45 or 18:30."
    ),
    ParseErrorCode.NOT_A_DATE: Sentence(
        "I could not read a date in that. Please send it like 14 May or 2027-05-14."
    ),
    ParseErrorCode.AMBIGUOUS_DATE: Sentence(
        "Day and month could be either way round there. Please write the month as a word, "
        "such as 5 June."
    ),
    ParseErrorCode.WRONG_WEEKDAY: _wrong_weekday,
    ParseErrorCode.NOT_A_CHECK_IN: lambda facts: tr(
        "That is not a check-in I can read. In one line it is weight, fullness, water, "
        "such as: {example}",
        example=facts.get("example", "61.2 7 3.5"),
    ),
    ParseErrorCode.INCOMPLETE: lambda facts: (
        tr(
            "A check-in in one line needs weight, fullness and water, such as: {example}",
            example=facts.get("example", "61.2 7 3.5"),
        )
        + (" " + tr("(missing: water)") if facts.get("missing") == "water" else "")
    ),
}
