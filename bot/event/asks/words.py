"""What an event asks for, in words: the look that its judges want, and its weigh-in."""

from __future__ import annotations

from datetime import date, time

from bot.words import figures
from bot.words.common import day_and_year
from bot.words.languages import Sentence, SentenceOn, mark, tr
from engine.planning.weigh_in import Making, OnScale, Standing
from engine.values.athlete import WeighIn
from engine.values.checkin import TargetLook

USUAL = mark("Full and sharp (fullness 8-10, sharpness 4-5)")


asks_button = Sentence("Look and weigh-in")
look_button = Sentence("Target look")
weigh_in_button = Sentence("Weigh-in")

ask_look = Sentence(
    "Which look do the judges of this event want? Not every division wants it as full or as dry. "
    'Tap, or send two ranges, for example "full 7-9 sharp 3-4". Check-ins and forecast aim for '
    "that; nothing is ever dried out for it."
)
usual_button = Sentence("Full and sharp, as usual")
unread_look = Sentence(
    'I need a fullness from 1 to 10 and a sharpness from 1 to 5, for example "full 7-9 sharp 3-4".'
)
ask_words = Sentence(
    "And in your own words? For example: round shoulders, soft lines, no striations. Or skip."
)


def view(event: str, look: TargetLook | None, weigh_in: str) -> str:
    head = tr("What this event asks for: {event}", event=event)
    return "\n\n".join([head, look_line(look), weigh_in or tr("Weigh-in: none set")])


def look_line(look: TargetLook | None) -> str:
    if look is None:
        return tr("Target look: {look}", look=tr(USUAL))
    said = tr("Target look: fullness {full}, sharpness {sharp}", **_ranges(look))
    return f'{said}\n"{look.words}"' if look.words else said


def _ranges(look: TargetLook) -> dict[str, str]:
    return {
        "full": _range(look.fullness_low, look.fullness_high),
        "sharp": _range(look.sharpness_low, look.sharpness_high),
    }


def _range(low: int, high: int) -> str:
    return str(low) if low == high else f"{low}-{high}"


def range_button(look: TargetLook) -> str:
    return tr("Fullness {full}, sharpness {sharp}", **_ranges(look))


def saved(line: str) -> str:
    return tr("Saved. {asks}", asks=line)


# The weigh-in


ask_cap = Sentence(
    "What may the scale show at most? Send the cap, for example 63.5 kg. For a class by height and "
    'weight, send "height +4": that is the height in cm less 100, plus 4 kg. Look it up in the '
    "rules of your federation."
)
no_weigh_in_button = Sentence("No weigh-in")
ask_when = Sentence("On which day is the weigh-in?")
ask_hour = Sentence("At what time, where the event is? For example 17:00.")
height_unknown = Sentence(
    "I don't know the height yet, so please send the cap itself, for example 63.5 kg."
)


no_such_cap = SentenceOn(
    "That comes to {cap} kg, which can't be a class. Please check it.", figures.plain
)


def weigh_in_line(weigh_in: WeighIn, day: date, unit: str) -> str:
    return tr(
        "Weigh-in: {day}, {time}, at most {cap}",
        day=day_and_year(day), time=_clock(weigh_in.at), cap=figures.weight(weigh_in.cap_kg, unit),
    )  # fmt: skip


def _clock(at: time) -> str:
    return f"{at:%H:%M}"


#: What is likely, first of all.
STANDINGS = {
    Standing.LIKELY_MADE: mark("The cap is likely to be made."),
    Standing.IN_DOUBT: mark("The cap is in doubt."),
    Standing.LIKELY_MISSED: mark("The cap is likely to be missed."),
}


def forecast(scale: OnScale, unit: str) -> str:
    """The likely weight with its doubt, and what that means for the cap."""
    likely = tr(
        "On the scale then, if all goes as planned: about {expected} ({low} to {high} in eight cases "
        "of ten). Chance of being over: about {percent} %.",
        expected=figures.weight(scale.expected_kg, unit),
        low=figures.weight(scale.low_kg, unit),
        high=figures.weight(scale.high_kg, unit),
        percent=min(max(round(20 * scale.chance_over) * 5, 5), 95),  # never sure
    )
    return f"{tr(STANDINGS[scale.standing])} {likely}"


def ways(made: Making, unit: str) -> str:
    """What food may take off, what it may not, and what there is to do instead."""
    if made.over_kg <= 0:
        return ""
    lines = [tr("Expected over the cap: {over}.", over=figures.weight(made.over_kg, unit))]
    if "load-after" in made.ways:
        least, most = made.ways["load-after"]
        lines.append(
            tr(
                "- Load days after the weigh-in instead of before it: {least} to {most} less (glycogen "
                "and its water). The load may go on between weigh-in and stage.",
                least=figures.weight(least, unit), most=figures.weight(most, unit),
            )
        )  # fmt: skip
    if "fibre" in made.ways:
        lines.append(
            tr(
                "- Low fibre from four days before: about {most} less, but people differ a lot.",
                most=figures.weight(made.ways["fibre"][1], unit),
            )
        )
    if made.safely:
        lines.append(tr("That is food alone. Water and salt stay as always."))
    else:
        lines.append(
            tr(
                "The other {left} ({percent} % of body mass) can't be made safely: within days it "
                "would have to be water. Don't cut water or salt, don't sweat it off. Enter the next "
                "class up, or ask the federation what it offers.",
                left=figures.weight(made.left_kg, unit), percent=figures.number(made.left_percent, 1),
            )
        )  # fmt: skip
    return "\n".join(lines)


def early(name: str, line: str, said: str) -> str:
    """The note to the coach, days ahead."""
    return f"{figures.capital(name)}. {line}.\n{said}"
