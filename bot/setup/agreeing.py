"""From what was foreseen to what is done: told, asked about with each reason, then all or nothing."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from datetime import date, time, timedelta
from typing import Any, NamedTuple

from bot.core.turn import Turn
from bot.dialogue import asking
from bot.event import flow_asks
from bot.event import words as event_words
from bot.people.people import is_own_coach
from bot.people.telling import say_to
from bot.plan import words as plan_words
from bot.plan.flow_limits import limit_moves
from bot.plan.review.flow import findings_text
from bot.setup import words, words_sheet
from bot.setup.flow import LEAVE, SETUP_SURE
from bot.setup.foreseeing import foresee
from bot.setup.foreseen import Foreseen, Trouble, Wanted, as_json
from bot.setup.putting import put
from bot.store.tables.people import OpenQuestion, Person
from bot.words.common import cancelled
from bot.words.names import shape_words
from engine.planning.drafting.bridge import BRIDGE
from engine.planning.drafting.draft import SHAPES
from engine.safety import Level
from engine.values.athlete import WeighIn
from engine.values.checkin import TargetLook


def parts(seen: Foreseen) -> list[str]:
    """What would be, in short pieces; one piece where nothing would change."""
    if not seen.changes or seen.profile is None:
        return [words.stays_line()]
    wanted, event = seen.wanted, seen.event
    found = [
        words.event_lines(
            event_words.short(
                wanted.kind,
                date.fromisoformat(wanted.day),
                wanted.class_name or (event.class_name if event is not None else ""),
            ),
            moved_from=(event.kind, event.day) if event is not None and seen.moves else None,
            new=event is None,
            zone=wanted.zone if wanted.zone != seen.profile.zone else "",
        ),
        _plan(seen),
    ]
    if seen.plan is not None:
        moves = limit_moves(
            [(one.key, one.was, one.becomes) for one in seen.moved_limits], seen.profile.volume_unit
        )
        found.append(words.limits_line(seen.limits_are, moves if seen.moved_limits else ""))
    if seen.stage_day is not None:
        day = seen.stage_day
        found.append(words.stage_line(day.stages[0], wanted.zone, day.look_before_min))
    found += [_asked_for(seen, key, one) for key, one in seen.asks.items()]
    if seen.meals:
        found.append(words.meals_line())
    if seen.asked_at is not None:
        found.append(words.asked_line(seen.asked_at))
    if seen.warnings:
        found.append(words.warned_line(len(seen.warnings)))
    cautions = [one for one in seen.findings if one.level is Level.CAUTION]
    if cautions:
        found.append(words.noticed_line(len(cautions)))
    return found


def _asked_for(seen: Foreseen, key: str, asked: dict[str, Any] | None) -> str:
    if key == "look":
        return flow_asks.look_line(TargetLook(**asked) if asked else None)
    if asked is None or seen.profile is None:
        return words.no_weigh_in_line()
    weigh_in = WeighIn(**{**asked, "at": time.fromisoformat(asked["at"])})
    day = date.fromisoformat(seen.wanted.day) - timedelta(days=weigh_in.days_out)
    return flow_asks.weigh_in_line(weigh_in, day, seen.profile.weight_unit)


def _plan(seen: Foreseen) -> str:
    if seen.plan is None:
        return words.plan_missing()
    if not seen.plan_is_new:
        return words.plan_stays()
    load_days = seen.plan.load_days
    load = [day.carb_g for day in seen.plan if day.days_out in load_days]
    assert seen.profile is not None
    per_kg = sum(load) / len(load) / (seen.profile.body_mass_kg or 1) if load else None
    return words.plan_line(plan_name(seen), per_kg)


def plan_name(seen: Foreseen) -> str:
    if seen.template:
        return seen.template
    if seen.shape == BRIDGE:
        return words_sheet.shape_names()[-1]
    return shape_words(SHAPES[seen.shape].label) if seen.shape in SHAPES else seen.shape


def troubles(seen: Foreseen) -> list[tuple[str, str, str]]:
    """Cell, name and what is wrong, for every trouble; each limit once."""
    found: dict[tuple[str, object], tuple[str, str, str]] = {}
    for one in seen.troubles:
        cell, moved = seen.wanted.cell(one.at), one.facts.get("moved")
        line = (cell, seen.name, words.trouble(one.why, one.facts))
        found.setdefault((cell, moved or line), line)
    return list(found.values())


_LONGEST_MESSAGE = 3500  # of what Telegram takes, with room for a heading


def foresee_all(turn: Turn, coach: Person, rows: Sequence[Wanted]) -> list[Foreseen]:
    """What each would do, those of one athlete seen together."""
    return [
        foresee(
            turn, coach, one,
            [other for other in rows if other is not one and other.athlete_id == one.athlete_id],
        )
        for one in rows
    ]  # fmt: skip


class Lead(NamedTuple):
    """What is said before the question. `room`: which limits would move, "" where none has to."""

    text: str = ""
    room: str = ""


def show_one_and_ask(turn: Turn, coach: Person, seen: Foreseen) -> None:
    """What would be done for one athlete, with the whole plan, and the question under it."""
    ask(turn, coach, [seen], Lead(_whole(seen)), many=False)


def show_all_and_ask(
    turn: Turn, coach: Person, seen: Sequence[Foreseen], idle: Sequence[str], room: int = 0
) -> None:
    """The dry run, and the question under it.

    `idle`: who is named in the sheet and stays as they are. `room`: how many need a limit to move.
    """
    _say_in_parts(turn, coach, words.dry_run(len(seen)), _alike(seen))
    moves = words.room_for(room, len(seen)) if room else ""
    ask(turn, coach, seen, Lead(words.untouched(idle), moves), many=True)


def ask(turn: Turn, coach: Person, seen: Sequence[Foreseen], lead: Lead, *, many: bool) -> None:
    """Whether it is to be done; first for each reason that is still wanted."""
    asking.open_question(
        turn, coach, SETUP_SURE,
        answers={
            "_rows": [as_json(one.wanted) for one in seen],
            "_marks": [one.mark for one in seen],
            "_many": many, "_text": lead.text, "_room": lead.room, "_group": _next_group(seen),
        },
    )  # fmt: skip


def offer_room(turn: Turn, coach: Person, seen: Foreseen) -> bool:
    """Where nothing but limits stands in the way, ask whether they may move, each named."""
    if not seen.troubles or not _movable(seen):
        return False
    moves = {one.facts["moved"].key: one.facts["moved"] for one in seen.troubles}
    roomier = replace(seen.wanted, make_room=True)
    again = foresee(turn, coach, roomier)
    if again.troubles or again.profile is None:
        return False
    unit = again.profile.volume_unit
    said = limit_moves([(one.key, one.was, one.becomes) for one in moves.values()], unit)
    asking.open_question(
        turn, coach, SETUP_SURE,
        answers={
            "_rows": [as_json(roomier)], "_marks": [again.mark], "_many": False,
            "_text": words.cannot(seen.name, _lines(seen.troubles)) + "\n\n" + _whole(again),
            "_room": said, "_group": _next_group([again]),
        },
    )  # fmt: skip
    return True


def offer_room_to_all(
    turn: Turn, coach: Person, seen: Sequence[Foreseen], idle: Sequence[str]
) -> bool:
    """The same for a sheet: what would move is shown by cell, then what all of it would do."""
    tight = [one for one in seen if one.troubles]
    if not all(_movable(one) for one in tight):
        return False
    wanted = [replace(one.wanted, make_room=True) if one in tight else one.wanted for one in seen]
    again = foresee_all(turn, coach, wanted)
    changing = [one for one in again if one.changes]
    if any(one.troubles for one in again):
        return False
    lines = [line for one in tight for line in troubles(one)]
    say_to(turn, coach, words.too_tight(lines))
    show_all_and_ask(turn, coach, changing, idle, room=len(tight))
    return True


def _movable(seen: Foreseen) -> bool:
    """Whether nothing but limits that can move stands in the way."""
    return all(one.why == "does-not-fit" and one.facts["moved"] for one in seen.troubles)


def answered(turn: Turn, coach: Person, question: OpenQuestion) -> None:
    """A reason goes to every athlete that it is for; the last word puts all in force, or nothing."""
    answers = question.answers
    rows, many = [Wanted(**row) for row in answers["_rows"]], answers["_many"]
    group = answers["_group"]
    if answers.get("do") == LEAVE or answers.get("reason") == LEAVE:
        say_to(turn, coach, cancelled())
        return
    if group is not None:
        for number in group["rows"]:
            rows[number] = replace(rows[number], reason=answers["reason"])
        seen = foresee_all(turn, coach, rows)
        if _moved_on(turn, coach, seen, answers["_marks"], many=many):
            return
        noted = words.reason_noted(group["names"], answers["reason"])
        ask(turn, coach, seen, Lead(noted, answers["_room"]), many=many)
        return
    seen = foresee_all(turn, coach, rows)
    if _moved_on(turn, coach, seen, answers["_marks"], many=many):
        return
    for one in seen:
        if one.changes:
            put(turn, coach, one, one.wanted.reason)
    changed = [one.name for one in seen if one.changes]
    names = list(dict.fromkeys(changed))
    text = (
        words.done(len(names), names)
        if many
        else words.done_one(seen[0].name, self_coached=_own(seen[0]))
    )
    say_to(turn, coach, text)


def _moved_on(
    turn: Turn, coach: Person, seen: Sequence[Foreseen], marks: Sequence[str], *, many: bool
) -> bool:
    """What has changed since it was shown is shown again, and asked about anew."""
    others = [one for one, mark in zip(seen, marks, strict=True) if one.mark != mark]
    if not others:
        return False
    names = list(dict.fromkeys(one.name for one in others if one.name))
    wrong = [line for one in seen for line in troubles(one)]
    if wrong:
        say_to(turn, coach, words.problems(wrong))
        return True
    _say_in_parts(
        turn, coach, words.changed_meanwhile(names), _alike(others),
    )  # fmt: skip
    ask(turn, coach, seen, Lead(), many=many)
    return True


def _next_group(seen: Sequence[Foreseen]) -> dict[str, object] | None:
    """The first athletes of like warnings for whom there is no reason yet."""
    open_ones = [
        (number, one) for number, one in enumerate(seen) if one.warnings and not one.wanted.reason
    ]
    if not open_ones:
        return None
    first = open_ones[0][1]
    alike = [
        (number, one) for number, one in open_ones
        if {w.id for w in one.warnings} == {w.id for w in first.warnings}
    ]  # fmt: skip
    assert first.profile is not None
    return {
        "names": list(dict.fromkeys(one.name for _, one in alike)),
        "warnings": findings_text(first.warnings, first.profile.volume_unit),
        "rows": [number for number, _ in alike],
    }


def _whole(seen: Foreseen) -> str:
    assert seen.profile is not None
    unit = seen.profile.volume_unit
    table = (
        plan_words.plan_table(seen.plan, date.fromisoformat(seen.wanted.day), unit)
        if seen.plan is not None and seen.plan_is_new
        else ""
    )
    told = [one for one in seen.findings if one not in seen.warnings]
    return words.preview(
        seen.name, parts(seen), table, findings_text(told, unit), self_coached=_own(seen)
    )


def _own(seen: Foreseen) -> bool:
    return seen.profile is not None and is_own_coach(seen.profile)


def _lines(troubles: Sequence[Trouble]) -> list[str]:
    return [words.trouble(one.why, one.facts) for one in troubles]


def _alike(seen: Sequence[Foreseen]) -> list[str]:
    """A line for all to whom the same would happen."""
    names: dict[tuple[str, ...], list[str]] = {}
    for one in seen:
        names.setdefault(tuple(parts(one)), []).append(one.name)
    return [f"{', '.join(dict.fromkeys(who))}: {'; '.join(what)}" for what, who in names.items()]


def _say_in_parts(turn: Turn, coach: Person, head: str, lines: Sequence[str]) -> None:
    """A list in as many messages as it needs; none of it is cut off."""
    text = head
    for line in (f"- {line}" for line in lines):
        if len(text) + len(line) > _LONGEST_MESSAGE:
            say_to(turn, coach, text)
            text = line
        else:
            text = f"{text}\n{line}"
    say_to(turn, coach, text)
