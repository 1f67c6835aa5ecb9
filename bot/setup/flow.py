"""The questions while setting up: which plan and when; reasons for warnings; whether to do it."""

from __future__ import annotations

import re
from datetime import date, datetime
from typing import Any
from zoneinfo import ZoneInfo

from bot.core.zones import find_places
from bot.dialogue.flow import (
    Answers,
    Choice,
    Choices,
    Flow,
    InvalidAnswer,
    Step,
    buttons,
    day_in,
    one_of,
    read_offered,
    reason,
)
from bot.event import words as event_words
from bot.event.flow import standing
from bot.plan import words as plan_words
from bot.setup import words, words_sheet
from engine.planning.drafting.bridge import BRIDGE
from engine.planning.drafting.draft import SHAPES
from engine.written.units import ParseError, parse_clock

USE, ROOM, LEAVE = "use", "room", "leave"
#: A time of day at the end of a line: with a colon, an h, or am and pm, so that no date is one.
_TIME = re.compile(
    r"(?:^|[\s,]+)(?:at|um)?\s*(\d{1,2}(?::\d{2}|h\d{0,2})\s*(?:am|pm|uhr)?|\d{1,2}\s*(?:am|pm|uhr))$",
    re.IGNORECASE,
)


# One athlete


def _plans(answers: Answers) -> Choices:
    templates = [(Choice(name, f"template:{number}"),) for number, name in answers["_templates"]]
    shapes = [*SHAPES, *([BRIDGE] if answers["_near"] else [])]
    names = dict(zip([*SHAPES, BRIDGE], words_sheet.shape_names(), strict=True))
    drafts = [Choice(words.draft_button(names[key]), key) for key in shapes]
    return (*templates, *(tuple(drafts[i : i + 2]) for i in range(0, len(drafts), 2)))


def _read_plan(text: str, answers: Answers) -> str:
    named = {name.casefold(): f"template:{number}" for number, name in answers["_templates"]}
    plain = " ".join(text.split()).casefold()
    known = {**words_sheet.shapes(), **named}
    return read_offered(_plans)(known.get(plain, text), answers)


def read_when(text: str, answers: Answers) -> dict[str, Any]:
    """ "show 9 May 14:30, Madrid" -> kind (None where unsaid), day (ISO), stage ("" or HH:MM), zone.

    Raises InvalidAnswer or ParseError.
    """
    today = datetime.fromisoformat(answers["_now"]).astimezone(ZoneInfo(answers["_zone"])).date()
    said, zone = _place(" ".join(text.split()), answers["_zone"])
    stage = ""
    found = _TIME.search(said)
    if found:
        stage, said = _clock(found[1]), said[: found.start()].rstrip(" ,")
    kind, said = _kind(said)
    try:
        day = day_in(said, today)
    except ParseError as error:
        if not said:
            raise InvalidAnswer(words.when_unread()) from error
        raise
    if day < today:
        raise InvalidAnswer(plan_words.day_is_past(day))
    return {"kind": kind, "day": day.isoformat(), "stage": stage, "zone": zone}


def _clock(said: str) -> str:
    """ "2:30 pm", "14h30", "14 Uhr" as HH:MM. Raises ParseError."""
    plain = said.lower().replace("uhr", "").strip()
    plain = re.sub(r"^(\d{1,2})h(\d{0,2})$", r"\1:\2", plain).rstrip(":")
    return f"{parse_clock(plain):%H:%M}"


def _place(text: str, home: str) -> tuple[str, str]:
    """A city behind the last comma, where there is one; its zone, else the athlete's own."""
    before, comma, place = text.rpartition(",")
    if not comma or any(sign.isdigit() for sign in place):
        return text, home
    try:
        found = find_places(place.strip())
    except ParseError:
        found = []
    if not found:
        raise InvalidAnswer(words.place_unknown(place.strip()))
    return before.strip(), found[0].zone


def _kind(text: str) -> tuple[str | None, str]:
    """The kind of event at the beginning or end of the line, and the rest of it."""
    for word, kind in sorted(words_sheet.kinds().items(), key=lambda pair: -len(pair[0])):
        found = re.search(rf"^{re.escape(word)}\b[\s,:]*|[\s,]+{re.escape(word)}$", text.casefold())
        if found:
            return kind, (text[: found.start()] + text[found.end() :]).strip(" ,")
    return None, text


def _others(answers: Answers) -> list[tuple[int, str, date]]:
    rows = [(number, kind, date.fromisoformat(day)) for number, kind, day in answers["_ahead"]]
    days = [day.isoformat() for _, _, day in rows]
    return [] if answers.get("when", {}).get("day") in days else rows


def _ask_stands(answers: Answers) -> str:
    when = answers["when"]
    new = event_words.short(when["kind"] or "show", date.fromisoformat(when["day"]))
    return event_words.ask_stands(
        new,
        [event_words.short(kind, day) for _, kind, day in _others(answers)],
        name=answers["_name"],
        self_coached=False,
    )


def _stands(answers: Answers) -> Choices:
    others = _others(answers)
    first = date.fromisoformat(answers["when"]["day"]) < min(day for _, _, day in others)
    return standing(others, first=first)


#: Context: "_name", "_own", "_zone"; "_templates" as [id, name]; "_ahead" as [id, kind, day]; "_near":
#: whether a bridge may be drafted; "_now" comes with every answer.
SETUP = Flow(
    id="coach-setup",
    steps=(
        Step(
            key="plan",
            ask=lambda answers: words.ask_template(
                answers["_name"], self_coached=answers["_own"], none=not answers["_templates"]
            ),
            read_with=_read_plan,
            choices=_plans,
        ),
        Step(key="when", ask=lambda answers: words.ask_when(answers["_zone"]), read_with=read_when),
        Step(
            key="stands",
            ask=_ask_stands,
            read_with=read_offered(_stands),
            choices=_stands,
            when=lambda answers: "when" in answers and bool(_others(answers)),
        ),
    ),
)


# What was foreseen, for one or many


def _ask(answers: Answers) -> str:
    asked = words.ask_use_all(len(answers["_rows"])) if answers["_many"] else words.ask_use()
    return "\n\n".join(part for part in (answers["_text"], asked) if part)


def _choices(answers: Answers) -> Choices:
    use = words.use_all_button(len(answers["_rows"])) if answers["_many"] else words.use_button()
    room = answers["_room"]
    raised = room if answers["_many"] else words.room_button(room)
    first = Choice(raised, ROOM) if room else Choice(use, USE)
    return ((first,), (Choice(words.leave_button(), LEAVE),))


def _ask_reason(answers: Answers) -> str:
    group = answers["_group"]
    asked = words.ask_reason(group["names"], group["warnings"])
    return "\n\n".join(part for part in (answers["_text"], asked) if part)


#: Context: "_rows", what is wanted for each, and "_marks", what each rests on; "_many": whether it is
#: a sheet; "_text" to show above the question; "_room": limits that would move, agreed to with it;
#: "_group": the next athletes whose like warnings want a reason ("names", "warnings", "rows"), or None.
SETUP_SURE = Flow(
    id="coach-setup-sure",
    can_cancel=False,
    steps=(
        Step(
            key="reason",
            ask=_ask_reason,
            read=lambda text: LEAVE if text == LEAVE else reason(text),
            free=True,
            choices=buttons(((words.leave_button, LEAVE),)),
            when=lambda answers: answers["_group"] is not None,
        ),
        Step(
            key="do",
            ask=_ask,
            read=one_of(USE, ROOM, LEAVE),
            choices=_choices,
            when=lambda answers: answers["_group"] is None,
        ),
    ),
)
