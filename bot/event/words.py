"""What is said of events: several ahead of one athlete, one that moves, and a move taken back."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date

from bot.words import figures
from bot.words.common import event_name, kind_word
from bot.words.languages import Sentence, SentenceAbout, SentenceOn, SentenceOnTwo, tr, tr_if

season_button = Sentence("Season")
add_button = Sentence("Add an event")
remove_yes_button = Sentence("Yes, remove it")
not_there = Sentence("That event is no longer part of the season.")
usual_draft_button = Sentence("The usual draft instead")


def short(kind: str, day: date, class_name: str = "") -> str:
    """ "show on Sun 9 May", with the class behind it where there is one."""
    said = tr("{kind} on {day}", kind=event_name(kind), day=figures.short_day(day))
    return f"{said} ({class_name})" if class_name else said


def ahead(lines: Sequence[str]) -> str:
    """One line for all that follow the event that counts."""
    return tr("After that: {events}.", events="; ".join(lines)) if lines else ""


def ask_stands(new: str, others: Sequence[str], *, self_coached: bool, name: str) -> str:
    known = figures.all_of(others)
    if self_coached:
        return tr(
            "You already have: {others}. Does the {new} replace one, or is it one more event?",
            others=known, new=new,
        )  # fmt: skip
    return tr(
        "{name} already has: {others}. Does the {new} replace one, or is it one more event?",
        name=name, others=known, new=new,
    )  # fmt: skip


replaces_button = SentenceOn("It replaces the {event}")


def follows_button(*, first: bool) -> str:
    return tr_if(first, "One more: it comes first", "One more: it follows")


def one_more(line: str, ahead_line: str) -> str:
    parts = [tr("One more event: {event}.", event=line), ahead_line]
    return "\n".join(part for part in parts if part)


athlete_one_more = SentenceOnTwo("{coach} has added an event: {event}.")


def view(name: str, lines: Sequence[str], *, self_coached: bool) -> str:
    if not lines:
        return tr("No event is set.")
    head = tr_if(self_coached, "Your season:", "{name}'s season:", name=figures.capital(name))
    body = "\n".join(f"{number}. {line}" for number, line in enumerate(lines, start=1))
    return f"{head}\n{body}\n\n" + tr(
        "When one is over, the next takes over by itself. What was answered and looked back on "
        "stays with its event."
    )


def entry(event: str, *, planned: bool, has_plan: bool) -> str:
    if planned:
        return tr("{event}: plan and limits are set", event=event)
    return tr_if(has_plan, "{event}: plan set, limits missing", "{event}: no plan yet", event=event)


plan_button = SentenceOn("Plan: {event}")
bridge_button = SentenceOn("Bridge: {event}")
asks_button = SentenceOn("Look, weigh-in: {event}")
remove_button = SentenceOn("Remove: {event}")
removed = SentenceOn("Removed: {event}.")
ask_remove = SentenceOn("Take the {event} out of the season? Its plan no longer counts then.")


def athlete_next(line: str, *, planned: bool, close: bool, asked: bool, self_coached: bool) -> str:
    said = [tr("Next: {event}.", event=line)]
    if close:
        said.append(
            tr(
                "Until then eat and drink as your plan says. You don't empty out a second time: "
                "what you have carries over."
            )
        )
    if not planned:
        said.append(
            tr("It still needs a plan.")
            if self_coached
            else tr("Your coach still has to set the plan for it.")
        )
    elif asked:
        said.append(tr("I ask you each morning as before."))
    return " ".join(said)


def coach_next(name: str, line: str, *, planned: bool) -> str:
    said = tr("Next for {name}: {event}.", name=name, event=line)
    if planned:
        return said
    return f"{said} " + tr("It has no plan yet.")


def ask_bridge(event: str, earlier: str, table: str, days: int) -> str:
    return tr(
        "Draft for the {event}, {days} days after the {earlier}. Between them: eat and drink as "
        "always, no second depletion, then a smaller load (common practice: what was loaded "
        "stays for days, so less fills up again). Check-ins adjust it.\n\n{table}\n\nUse it?",
        event=event, earlier=earlier, days=days, table=table,
    )  # fmt: skip


event_over = SentenceOn(
    "The {kind} is behind you. Eat and drink to appetite, not all at once: after long dieting, "
    "very large meals can upset heart and muscles. Weakness, palpitations, swelling or "
    "breathlessness in the next days: see a doctor at once. I stop asking in the mornings now.",
    kind_word,
)


def came_along(day: date, zone: str) -> str:
    return tr(
        "I moved the timetable to {day}: same times, {zone} time. Reminders come only for that "
        "day. If the times are different, change them below.",
        day=figures.long_day(day),
        zone=zone,
    )


stayed_behind = SentenceAbout(
    "I could not move your timetable (it was cancelled, or its classes would be over "
    "by then), so its reminders stop. You can set the times again.",
    "I could not move {name}'s timetable (it was cancelled, or its classes would be over "
    "by then), so its reminders stop. The times can be set again.",
)


def journey_gone(name: str, zone: str, *, own: bool) -> str:
    return tr_if(
        own,
        "Your journey no longer leads to your event (it is now in {zone}, or before you "
        "arrive). Check-ins stay at the time where you are now. Use /travel to plan the "
        "journey again.",
        "{name}'s journey no longer leads to the event (it is now in {zone}, or before the "
        "arrival). I have asked {name} to plan it again.",
        name=name,
        zone=zone,
    )


event_is_back = SentenceOn("The event is again: {event}.")


def athlete_told_event_back(coach: str, line: str) -> str:
    """`line` describes the event that counts again; "" where there is none."""
    if not line:
        return tr(
            "Correction: {name} has removed the event. You have no event set right now.", name=coach
        )
    return tr(
        "Correction: {name} has undone the last change. Your event is again: {event}",
        name=coach, event=line,
    )  # fmt: skip
