"""What is asked about an answer that is not clear yet."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from typing import NamedTuple

from bot.checkin.words import NAMES, Answers, example, parts, so_far
from bot.words import figures
from bot.words.invalid_answers import cannot_be_right, parse_error_text
from bot.words.languages import tr
from engine.written.oneline import DoubtCode
from engine.written.units import ParseError, ParseErrorCode, WeightUnit, show_weight


def yes_no_or_number(options: Sequence[Answers]) -> str:
    if len(options) == 1:
        return tr("Please answer yes or no, or send the right number.")
    return tr("Please tap one, or send the right number.")


def option_button(option: Answers, doubt: Answers, answers: Answers) -> str:
    """A likely meaning, short enough for a button: "7", "133 lb (60.3 kg)", "fullness 7, water 4 L"."""
    if len(option) == 1:
        return _figure_meant(option, doubt, answers)
    units = {key: answers[key] for key in ("_weight_unit", "_volume_unit")}
    return ", ".join(parts(units | option).values())


def _figure_meant(option: Answers, doubt: Answers, answers: Answers) -> str:
    ((key, value),) = option.items()
    if key == "weight_kg":
        return _weight_meant(value, str(doubt["given"]), answers["_weight_unit"])
    if key == "water_l":
        return figures.volume(value, answers["_volume_unit"])
    if key == "carb_eaten_g":
        return figures.grams(value)
    if key == "sleep_h":
        return tr("{hours} h", hours=figures.plain(value))
    return str(value) if len(keys_of(doubt)) == 1 else parts(answers | option)[key]


def keys_of(doubt: Answers) -> set[str]:
    """Which figures it is about."""
    return {key for option in doubt["options"] for key in option}


def _weight_meant(kg: float, given: str, unit: str) -> str:
    """ "60.3 kg"; with the unit that was meant, where it was another: "133 lb (60.3 kg)"."""
    shown = figures.weight(kg, unit)
    number = "".join(char for char in given if char.isdecimal() or char in ".,").replace(",", ".")
    for other in (WeightUnit.LB, WeightUnit.KG):
        written = show_weight(kg, other).removesuffix(f" {other}").removesuffix(".0")
        if other != unit and written == number.removesuffix(".0"):
            return f"{figures.in_digits(written)} {other} ({shown})"
    return shown


class About(NamedTuple):
    """What is asked about: something that was read, and the answers of the morning beside it."""

    doubt: Answers
    answers: Answers


def first_of(doubts: Sequence[Answers], answers: Answers) -> str:
    """The question about the first. Of a morning told again it names what else is doubtful, which
    would seem unread in what is to be changed.
    """
    asked = doubt(doubts[0], answers)
    later = [str(other["given"]) for other in doubts[1:] if other["given"]]
    if doubts[0]["code"] != DoubtCode.CHANGE or not later:
        return asked
    return asked + " " + tr("I'll ask about {given} next.", given=", ".join(later))


def doubt(doubt: Answers, answers: Answers) -> str:
    """The question about something that was read and is not taken yet."""
    code, key, given = doubt["code"], doubt["answer"], str(doubt["given"])
    options = doubt["options"]
    several = len(options) > 1 and code in (
        ParseErrorCode.AMBIGUOUS_SEPARATOR, ParseErrorCode.AMBIGUOUS_STONE,
    )  # fmt: skip
    put = _which if several else _DOUBTS.get(code, _refused)
    if code == DoubtCode.BOUND and len(options) == 1 and given[:1].isalpha():
        meant = _figure_meant(options[0], doubt, answers)
        return tr('"{given}": is that {meant}?', given=given, meant=meant)
    sentence = put(About(doubt, answers))
    if len(options) == 1 and code in _ASKS_WHAT_WAS_MEANT | set(ParseErrorCode):
        if options[0].get(key) == doubt["facts"].get("value"):
            return sentence + " " + tr("Is that right?")
        meant = _figure_meant(options[0], doubt, answers) if len(options[0]) == 1 else given
        return sentence + " " + tr("Did you mean {meant}?", meant=meant)
    return sentence


def _name(key: str) -> str:
    return tr(NAMES[key]) if key in NAMES else ""


def _range_doubt(about: About) -> str:
    doubt = about.doubt
    return tr(
        "{name}: you wrote {given}. Which one shall I take?",
        name=_name(doubt["answer"]), given=doubt["given"],
    )  # fmt: skip


def _far(about: About) -> str:
    doubt, answers = about
    facts, key = doubt["facts"], doubt["answer"]
    if key == "weight_kg":
        given = figures.weight(facts["value"], answers["_weight_unit"])
        before = figures.weight(facts["before"], answers["_weight_unit"])
        insists = any(option.get(key) == facts["value"] for option in doubt["options"])
        if insists:
            return tr("{given} is far from your {before}.", given=given, before=before)
        return tr("{given} can't be right: you were {before}.", given=given, before=before)
    if key == "water_l":
        return tr(
            "I read {given} of water, and your target was {before}.",
            given=figures.volume(facts["value"], answers["_volume_unit"]),
            before=figures.volume(facts["before"], answers["_volume_unit"]),
        )
    if key == "carb_eaten_g":
        return tr(
            "I read {given} of carbs, and {before} were planned.",
            given=figures.grams(facts["value"]), before=figures.grams(facts["before"]),
        )  # fmt: skip
    return tr(
        "I read fullness {given}, and last time it was {before}.",
        given=figures.plain(facts["value"]), before=figures.plain(facts["before"]),
    )  # fmt: skip


def _spare(about: About) -> str:
    doubt, answers = about
    read = tr("I read {read}, but not {given}.", read=so_far(answers), given=doubt["given"])
    if doubt["options"]:
        return read + " " + tr("Are those yesterday's carbs?")
    ask = tr('What is it? Send it with its name, such as "carbs 170", or leave it out.')
    return f"{read} {ask}"


def _unclear(about: About) -> str:
    doubt = about.doubt
    if doubt["answer"] == "water_l" and not doubt["options"]:
        return tr("I can't tell how much {given} is.", given=doubt["given"])
    return tr(
        "I am not sure about {given}. Is it your answer to: {name}?",
        given=doubt["given"], name=_name(doubt["answer"]),
    )  # fmt: skip


def _which(about: About) -> str:
    doubt, answers = about
    if len(doubt["options"]) == 1:
        units = {key: answers[key] for key in ("_weight_unit", "_volume_unit")}
        meant = ", ".join(parts(units | doubt["options"][0]).values())
        return tr("I can't tell which number is which. Did you mean {meant}?", meant=meant)
    return tr("I can read that in more than one way. Which is right?")


def _change(about: About) -> str:
    """Of an answer that was told this morning already."""
    doubt, answers = about
    (option,) = doubt["options"]
    units = {key: answers[key] for key in ("_weight_unit", "_volume_unit")}
    before = parts(units | {key: answers.get(key) for key in option})
    after = parts(units | option)
    nothing = tr("nothing")
    moves = [f"{before.get(key, nothing)} → {after[key]}" for key in after]
    return tr("Shall I change this morning's answer: {moves}?", moves="; ".join(moves))


def _in_words(about: About) -> str:
    doubt = about.doubt
    if doubt["answer"] == "sharpness":
        return tr(
            '"{given}": what is that as a number, 1 (blurred) to 5 (crisp)?', given=doubt["given"]
        )
    return tr('"{given}": what is that as a number, 1 (flat) to 10 (full)?', given=doubt["given"])


def _refused(about: About) -> str:
    """What an answer has to be, by its name, and what was read."""
    doubt, answers = about
    key, given = doubt["answer"], doubt["given"]
    if key == "fullness":
        return tr("Fullness is 1 to 10, I read {given}.", given=given)
    if key == "sharpness":
        return tr("Sharpness is 1 to 5, I read {given}.", given=given)
    facts = {name: fact for name, fact in doubt["facts"].items() if name != "hint"}
    if "_weight_unit" in answers:
        facts["example"] = example(answers)
    if doubt["options"] and doubt["code"] == ParseErrorCode.IMPLAUSIBLE:
        sentence = cannot_be_right(facts)
    else:
        sentence = parse_error_text(ParseError(ParseErrorCode(doubt["code"]), **facts))
    return f"{_name(key)}: {sentence}" if _name(key) else sentence


_ASKS_WHAT_WAS_MEANT = {DoubtCode.FAR, DoubtCode.BOUND, DoubtCode.RANGE}


_DOUBTS: dict[str, Callable[[About], str]] = {
    DoubtCode.FAR: _far,
    DoubtCode.RANGE: _range_doubt,
    DoubtCode.BOUND: lambda about: tr(
        "{name}: {given} is not exact.",
        name=_name(about.doubt["answer"]),
        given=about.doubt["given"],
    ),
    DoubtCode.IN_WORDS: _in_words,
    DoubtCode.SPARE: _spare,
    DoubtCode.UNCLEAR: _unclear,
    DoubtCode.ORDER: _which,
    DoubtCode.TWO_VALUES: _which,
    DoubtCode.CHANGE: _change,
}
