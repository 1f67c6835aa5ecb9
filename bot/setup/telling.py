"""What was foreseen for an athlete, in a coach's lines."""

from __future__ import annotations

from datetime import date, time, timedelta
from typing import Any

from bot.event import flow_asks
from bot.plan.flow_fit import limit_moves
from bot.setup import words, words_sheet
from bot.setup.foreseen import Foreseen
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
            kind=wanted.kind,
            day=date.fromisoformat(wanted.day),
            class_name=wanted.class_name or (event.class_name if event is not None else ""),
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
