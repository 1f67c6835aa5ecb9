"""What coach and athlete read of a week that is over, and of the verdict on how its day looked."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date

from bot.words import figures
from bot.words.common import day_and_year, event_name, kind_word
from bot.words.languages import Sentence, SentenceBy, SentenceOn, SentenceOnTwo, mark, tr, trn
from bot.words.names import seen as look_seen
from bot.words.names import word
from engine.planning.behind.debrief import DayBehind, Debrief, Lesson

#: What changed a day, in two or three words, by rule; "coach" is the coach's own hand, "forecast" the
#: forecast where the rule by itself asked for nothing of the kind.
WHY = {
    "gut-unsettled": mark("stomach upset"),
    "coach-sees-spill": mark("the coach saw spill"),
    "coach-sees-softening": mark("the coach saw softening"),
    "coach-sees-flat": mark("the coach saw flat"),
    "spilled-over": mark("spilled over"),
    "softening": mark("softening"),
    "says-spilled": mark("spilled over in their words"),
    "fuller-than-asked": mark("fuller than asked for"),
    "blurring": mark("lines blurring"),
    "flat-in-load": mark("flat in the load"),
    "dropping-too-fast": mark("dropping too fast"),
    "coach": mark("set by hand"),
    "forecast": mark("the forecast"),
}

#: What to carry over, by lesson.
LESSONS = {
    "no-word-on-the-look": mark(
        "Your verdict on the look is still missing; without it I learn little from this week's "
        "load."
    ),
    "flat-not-eaten": mark(
        "Flat, but only {eaten_percent} % of the load was eaten. Next time eat all of the same "
        "load before trying a larger one."
    ),
    "flat-more": mark(
        "Flat although the load was eaten, as far as reported: there was room for more."
    ),
    "spilled-overeaten": mark(
        "Spilled over, with {eaten_percent} % of the load eaten. Next time eat exactly what is "
        "set before lowering it."
    ),
    "spilled-less": mark("Spilled over: load less next time, or less of it late."),
    "full-again": mark("Full: use the same load again, not more."),
    "eaten-short": mark(
        "Only {eaten_percent} % of the load was eaten. Next time use food that is easier to "
        "eat, or a smaller load."
    ),
    "eaten-over": mark("{eaten_percent} % of the load was eaten, more than was set."),
    "load-moved": mark(
        "Check-ins changed the load from {planned_g} g to {set_g} g. Start the next plan "
        "closer to where this one ended."
    ),
    "gut-in-the-load": mark(
        "The stomach was upset during the load. Smaller meals, less fibre, and only foods that "
        "digested well; test them in a trial."
    ),
    "water-short": mark(
        "Water stayed under target during the load. Glycogen is stored with water: keep it at "
        "target."
    ),
    "sleep-short": mark("Short nights. They alone can make people look flat and watery."),
    "mornings-missed": mark(
        "{mornings} mornings without a check-in. I can't adjust what I don't know."
    ),
}

button = Sentence("Debrief")
note_button = Sentence("Note for next time")
columns = Sentence("Carbs planned / set / eaten (g), and the check-in:")
rests_on = Sentence("Common practice and our own reading; one week proves little.")
note_kept = Sentence("Saved. I show it before the next draft.")
word_empty = Sentence("That was empty. A few words are enough.")


def head(name: str, kind: str, day: date, *, self_coached: bool) -> str:
    when = day_and_year(day)
    if self_coached:
        return tr("Debrief of your {kind}, {day}", kind=event_name(kind), day=when)
    return tr("Debrief of {name}'s {kind}, {day}", name=name, kind=event_name(kind), day=when)


def day_line(day: DayBehind, why: str, weight_unit: str) -> str:
    """ "3 out: 495 / 520 / 510 (flat in the load) · 59.3 kg, full 2, sharp 5"."""
    label = tr("Day") if day.days_out == 0 else tr("{days} out", days=day.days_out)
    eaten = "–" if day.eaten_g is None else figures.number(day.eaten_g)
    carbs = f"{label}: {figures.number(day.target.carb_g)} / {figures.number(day.set_g)} / {eaten}"
    if why:
        carbs += f" ({tr(WHY[why]) if why in WHY else why.replace('-', ' ')})"
    return f"{carbs} · {_morning(day, weight_unit)}"


def _morning(day: DayBehind, weight_unit: str) -> str:
    told = day.morning
    seen = (
        []
        if day.seen is None
        else [tr("coach: {look}", look=look_seen(day.seen.look, day.seen.sharpness))]
    )
    if told is None or told.weight_kg is None:
        return ", ".join([tr("no check-in"), *seen])
    parts = [figures.weight(told.weight_kg, weight_unit)]
    if told.fullness is not None:
        parts.append(tr("full {score}", score=told.fullness))
    if told.sharpness is not None:
        parts.append(tr("sharp {score}", score=told.sharpness))
    return ", ".join([*parts, *seen])


def load_line(found: Debrief, body_mass_kg: float) -> str:
    text = tr(
        "Load: {planned} planned, {set} set ({per_kg} g/kg a day).",
        planned=figures.grams(found.planned_g),
        set=figures.grams(found.set_g),
        per_kg=figures.number(found.set_g / max(found.load_days, 1) / body_mass_kg, 1),
    )
    if found.eaten_share is not None:
        text += " " + tr(
            "Eaten of it, as reported: {percent} %.",
            percent=figures.number(100 * found.eaten_share),
        )
    return text


def forecast_score(shown: Sequence[tuple[int, float, float]]) -> str:
    """What the forecast would have proposed while it only showed; `shown`: see the service."""
    if not shown:
        return ""
    other = [
        tr(
            "{when}: {would} instead of {decided}",
            when=figures.days_out(days_out),
            would=figures.grams(would_g),
            decided=figures.grams(decided_g),
        )
        for days_out, decided_g, would_g in shown
        if abs(would_g - decided_g) >= 0.5
    ]
    if not other:
        return tr("The forecast only showed, and would have proposed nothing else.")
    return tr("The forecast only showed. It would have proposed: {days}.", days="; ".join(other))


def weight_line(change_kg: float, weight_unit: str) -> str:
    size = figures.weight_apart(change_kg, weight_unit)
    if size == figures.weight_apart(0.0, weight_unit):
        return tr("Weight over the load: unchanged.")
    if change_kg < 0:
        return tr("Weight over the load: {size} down.", size=size)
    return tr("Weight over the load: {size} up.", size=size)


def look_line(look: str | None, *, to_hand_over: bool = False) -> str:
    if to_hand_over:
        said = tr("no verdict yet") if look is None else tr(LOOK_WORDS[look])
        return tr("The coach's verdict on the look: {look}.", look=said)
    if look is None:
        return tr("Your verdict on the look: none yet. How was it when it mattered?")
    return tr("Your verdict on the look: {look}.", look=tr(LOOK_WORDS[look]))


def day_itself(fullness: int, sharpness: int, gut: str) -> str:
    return tr(
        "Look check on event day: fullness {full}, sharpness {sharp}, stomach {gut}.",
        full=fullness,
        sharp=sharpness,
        gut=word(gut),
    )


def afterwards(change_kg: float, day: int, weight_unit: str) -> str:
    size = figures.weight_apart(change_kg, weight_unit)
    if change_kg < 0:
        return tr("Weight by day {day} after: {size} less than on event day.", day=day, size=size)
    return tr("Weight by day {day} after: {size} more than on event day.", day=day, size=size)


def alerts_line(count: int, *, to_hand_over: bool = False) -> str:
    if to_hand_over:  # on paper there is no history to look into
        return trn(
            "{number} caution or warning this week.",
            "{number} cautions or warnings this week.",
            count,
        )
    return trn(
        "{number} caution or warning this week: see History.",
        "{number} cautions or warnings this week: see History.",
        count,
    )


athletes_word = SentenceOnTwo('{name} says: "{said}"')


def earlier_line(kind: str, day: date, per_kg: float, look: str | None, *, newest: bool) -> str:
    """A week before this one; the newest of them is the last time."""
    week = tr(
        "{kind} {day}, {per_kg} g/kg a day",
        kind=event_name(kind),
        day=figures.short_day(day),
        per_kg=figures.number(per_kg, 1),
    )
    said = f"{week}, {tr(LOOK_WORDS[look])}" if look else week
    return tr("Last time: {week}.", week=said) if newest else tr("Before that: {week}.", week=said)


def to_carry(lessons: Sequence[Lesson]) -> str:
    return "\n".join([tr("For next time:"), *(f"- {lesson(one)}" for one in lessons)])


def lesson(one: Lesson) -> str:
    return tr(LESSONS[one.id], **{name: figures.number(value) for name, value in one.facts.items()})


own_note = SentenceOn("Your note: {note}")


def none_yet(name: str, *, self_coached: bool) -> str:
    if self_coached:
        return tr("You have not finished a week yet, so there is nothing to look back on.")
    return tr("{name} has not finished a week yet, so there is nothing to look back on.", name=name)


def ask_note(name: str, *, self_coached: bool) -> str:
    if self_coached:
        return tr("What do you want to remember next time? I show it before the next draft.")
    return tr(
        "What do you want to remember from {name}'s week? I show it to you before the next "
        "draft, and never to {name}.",
        name=name,
    )


# Before the next draft


def before_draft(kind: str, day: date, lessons: Sequence[Lesson], note: str) -> str:
    parts = [
        tr(
            "From the {kind} of {day}, before you draft:",
            kind=event_name(kind),
            day=figures.short_day(day),
        ),
        *(f"- {lesson(one)}" for one in lessons),
    ]
    if note:
        parts.append(f"- {own_note(note)}")
    return "\n".join(parts)


# The athlete


def short(kind: str, mornings: int, days: int, eaten_share: float | None) -> str:
    parts = [
        tr("Looking back on your {kind}:", kind=event_name(kind)),
        tr("You checked in on {mornings} of {days} mornings.", mornings=mornings, days=days),
    ]
    if eaten_share is not None:
        parts.append(
            tr(
                "In the load you ate {percent} % of what was set, as you reported it.",
                percent=figures.number(100 * eaten_share),
            )
        )
    return " ".join(parts)


def ask_athlete(said: str, coach: str) -> str:
    asked = tr(
        "What went well, and what should be different next time? A sentence or two; {name} "
        "reads it.",
        name=coach,
    )
    return f"{said} {asked}"


skipped = Sentence("All right. Eat well.")
thanks = SentenceOn("Thank you. {name} has it. Eat well.")
coach_told = SentenceOnTwo('{name} on the week that is over: "{said}"')


# In the history


def ask_look(name: str, kind: str) -> str:
    """To the coach, the day after."""
    return tr(
        "{name}'s {kind} was yesterday. How did {name} look when it mattered? I use this for "
        "the next load.",
        name=name,
        kind=kind_word(kind),
    )


#: The same to somebody who coaches themself.
ask_own_look = SentenceBy(
    {
        "show": mark(
            "Your show was yesterday. How did you look on stage? I use this for your next load."
        ),
        "shoot": mark("Your shoot was yesterday. How did you look? I use this for your next load."),
        "trial": mark("Your trial was yesterday. How did you look? I use this for your next load."),
    }
)

LOOKS = {"flat": mark("Flat"), "full": mark("Full"), "spilled over": mark("Spilled over")}


#: The same inside a sentence.
LOOK_WORDS = {"flat": mark("flat"), "full": mark("full"), "spilled over": mark("spilled over")}

#: How it is said in a sentence of a coach's own.
LOOK_SAID = {
    "flat": mark("flat"),
    "full": mark("full"),
    "spilled over": mark("spilled, spilled over, spill over, spilt"),
}
own_look_still_asked = Sentence("Is that how you looked on the day? Tap it, and it counts.")
look_still_asked = SentenceOn(
    "Is that your verdict on how {name} looked on the day? Tap it, and it counts."
)
look_button = SentenceBy(LOOKS)
look_left = Sentence("No verdict saved.")


def look_kept(name: str, look: str) -> str:
    return tr(
        "Saved: {name} was {look} on the day. The next forecast starts from there.",
        name=name,
        look=tr(LOOK_WORDS[look]) if look in LOOK_WORDS else look,
    )


own_look_kept = SentenceBy(
    {
        "flat": mark("Saved: you were flat on the day. The next forecast starts from there."),
        "full": mark("Saved: you were full on the day. The next forecast starts from there."),
        "spilled over": mark(
            "Saved: you were spilled over on the day. The next forecast starts from there."
        ),
    }
)
