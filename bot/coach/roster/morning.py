"""The morning in one glance: who needs the coach with what changed, all others in a few lines."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime, timedelta

from sqlmodel import Session, col, select

from bot.alerts.words_athlete import cause
from bot.coach.buttons import GLANCE
from bot.coach.roster import flow_morning, words
from bot.coach.roster.rows import Decided, RosterRow
from bot.coach.roster.standing import (
    ASKED,
    MISSED,
    NEEDS_THE_COACH,
    Priority,
    asked_at,
    decided_line,
)
from bot.core.chat.cards import CARD, Say
from bot.core.chat.outbox import TEXT_LIMIT, Button, Buttons, units
from bot.decision.signoff.signoff import morning_line
from bot.people.people import is_own_coach
from bot.store.base import id_of
from bot.store.tables.people import AthleteStatus
from bot.store.tables.photos import PhotoRow
from bot.store.tables.week import CheckInRow, DecisionRow
from bot.week.cases import plan_g
from bot.words import figures
from bot.words.names import flag_name, rule_name, symptom_names, training_went
from engine.decision.decide import Decision
from engine.decision.kept import decision_from_dict
from engine.safety import FlagId
from engine.values.checkin import TrainingDone

# Our own choices, all of them.
ON_A_PAGE = 6  # who need the coach
FEW = 3  # so few athletes are each shown with their numbers
BACK = timedelta(days=3)  # how old the check-in may be that a morning is set beside
ROOM = TEXT_LIMIT - 150  # UTF-16 units of a page, what stands between its parts left out
MOST_OF_A_BLOCK = 590  # units: six of them fit a page, with head and foot
LEAST_OF_A_LINE = 120  # units that a line of names gets at least
BUTTONS_IN_A_ROW = 3

Line = tuple[Priority, RosterRow]


@dataclass(frozen=True, slots=True)
class Closer:
    """What a morning is set beside, and the decision on it."""

    before: CheckInRow | None = None
    photo: bool = False
    decision: Decision | None = None

    @property
    def expected_fullness(self) -> int | None:
        expected = self.decision.trace.facts.get("expected_fullness") if self.decision else None
        return int(expected) if expected is not None else None

    @property
    def rule(self) -> str:
        """The name of the rule that proposed, in the reader's language."""
        return rule_name(self.decision.rule) if self.decision and self.decision.rule else ""


def needs_coach(line: Line) -> bool:
    return line[0].rank <= NEEDS_THE_COACH


def look_closer(session: Session, seen: Sequence[RosterRow]) -> dict[int, Closer]:
    """For each of these: the check-in before, whether photos came today, the decision whole."""
    of = {one.profile.person_id: one for one in seen}
    if not of:
        return {}
    first = min(one.today for one in seen) - BACK
    before: dict[int, CheckInRow] = {}
    rows = session.exec(
        select(CheckInRow)
        .where(col(CheckInRow.athlete_id).in_(of), CheckInRow.date >= first)
        .order_by(col(CheckInRow.date))
    )
    for row in rows:  # the latest comes last
        if of[row.athlete_id].today - BACK <= row.date < of[row.athlete_id].today:
            before[row.athlete_id] = row
    photos = session.exec(
        select(col(PhotoRow.athlete_id), col(PhotoRow.date))
        .where(
            col(PhotoRow.athlete_id).in_(of),
            PhotoRow.date >= first,
            col(PhotoRow.kept_at).is_not(None),
        )
        .distinct()
    )
    sent = {athlete_id for athlete_id, day in photos if day == of[athlete_id].today}
    ids = {
        decided.id: one.profile.person_id
        for one in seen
        if (decided := one.waiting or one.decided) is not None
    }
    decisions = session.exec(
        select(col(DecisionRow.id), col(DecisionRow.decision)).where(col(DecisionRow.id).in_(ids))
    )
    whole = {ids[n]: decision_from_dict(one) for n, one in decisions if n is not None}
    return {number: Closer(before.get(number), number in sent, whole.get(number)) for number in of}


#: Of training that went as planned the glance has nothing to say.
_UNLIKE_THE_PLAN = frozenset(TrainingDone) - {TrainingDone.AS_PLANNED}


def numbers_line(seen: RosterRow, closer: Closer) -> str:
    """The morning's numbers beside those before; "" where there was no check-in."""
    row = seen.morning
    if row is None:
        return words.no_numbers() if seen.in_week else ""
    parts = [
        _weight(seen, closer) if row.weight_kg is not None else "",
        flow_morning.fullness(row.fullness, closer.expected_fullness)
        if row.fullness is not None
        else "",
        flow_morning.sharpness(row.sharpness, closer.before.sharpness if closer.before else None)
        if row.sharpness is not None
        else "",
        flow_morning.water(figures.volume(row.water_l, seen.profile.volume_unit))
        if row.water_l is not None
        else "",
        training_went(row.training_done) if row.training_done in _UNLIKE_THE_PLAN else "",
        flow_morning.photo(there=closer.photo),
        flow_morning.told_of(_complaints(seen)) if seen.complaints else "",
    ]
    return ", ".join(part for part in parts if part)


def page(
    session: Session, everybody: Sequence[Line], number: int, here: str | None, foot: str
) -> tuple[str, Buttons, int, int]:
    """Who needs the coach, so many to a page, and on the first page all others in a few lines.

    Returns text, buttons, which page it is, and of how many.
    """
    needing = [line for line in everybody if needs_coach(line)]
    pages = [needing[at : at + ON_A_PAGE] for at in range(0, len(needing), ON_A_PAGE)] or [[]]
    number = min(number, len(pages) - 1)
    closer = look_closer(session, [seen for _, seen in pages[number]])
    blocks = [_block(*line, closer[line[1].profile.person_id]) for line in pages[number]]
    head = flow_morning.head(len(needing), len(everybody), number, len(pages))
    parts = [head, *blocks]
    if number == 0:
        others = [line for line in everybody if not needs_coach(line)]
        parts += _others(others, here, ROOM - units("\n\n".join([*parts, foot])), len(everybody))
    buttons = _buttons(session, everybody if len(everybody) <= FEW else pages[number])
    if here is None:
        foot = f"{flow_morning.where_are_you()}\n{foot}"
    return "\n\n".join([*parts, foot]), buttons, number, len(pages)


def _weight(seen: RosterRow, closer: Closer) -> str:
    unit = seen.profile.weight_unit
    assert seen.morning is not None
    assert seen.morning.weight_kg is not None
    now = figures.weight(seen.morning.weight_kg, unit)
    before = closer.before
    if before is None or before.weight_kg is None:
        return now
    changed = seen.morning.weight_kg - before.weight_kg
    yesterday = before.date == seen.today - timedelta(days=1)
    return flow_morning.weight(
        now, figures.weight_change(changed, unit), None if yesterday else before.date
    )


def _complaints(seen: RosterRow) -> str:
    return words.short_quote(symptom_names(seen.complaints))


def _block(found: Priority, seen: RosterRow, closer: Closer) -> str:
    decided = decided_line(seen) or ""
    why = closer.rule if seen.waiting is not None else ""
    text = flow_morning.block(
        _who(seen),
        " ".join(part for part in (found.state, _alert(seen)) if part),
        numbers_line(seen, closer) if found.rank != MISSED else "",
        flow_morning.proposed(decided, why) if decided else "",
        seen.wrote,
    )
    return _cut(text, MOST_OF_A_BLOCK)


def _who(seen: RosterRow) -> str:
    kind = seen.event.kind if seen.event is not None else None
    return words.who(seen.person.first_name, kind, seen.days_out)


def _alert(seen: RosterRow) -> str:
    """What the alert is about, for those whose standing does not say it already; to whoever coaches
    themself as it is told to them.
    """
    if seen.alert is None or seen.alert.flag == FlagId.DOUBT:
        return ""
    if not seen.alert.facts:
        return ""
    return flow_morning.short_cause(
        cause(
            seen.alert.flag, seen.alert.facts,
            name="" if is_own_coach(seen.profile) else seen.person.first_name,
            weight_unit=seen.profile.weight_unit, volume_unit=seen.profile.volume_unit,
        )
    )  # fmt: skip


# All others

#: In which of the `GROUPS`, and where that says a time, at which instant on which clocks.
_Line = tuple[str, tuple[datetime, str | None] | None]


def _others(lines: Sequence[Line], here: str | None, room: int, of_all: int) -> list[str]:
    if of_all <= FEW:
        return [in_full(*line) for line in lines]
    grouped: dict[_Line, list[str]] = defaultdict(list)
    for found, seen in lines:
        which, name = _named(found, seen)
        when = (asked_at(seen), seen.profile.zone) if which == "later" else None
        grouped[which, when].append(name)
    said = [
        flow_morning.wrote(words.short(seen.person.first_name), seen.wrote)
        for _, seen in lines
        if seen.wrote
    ]
    told = "\n".join(said)
    room -= units(told)
    share = max(LEAST_OF_A_LINE, room // max(len(grouped), 1) - 40)
    order = list(flow_morning.GROUPS)
    rows = [
        _group(line, grouped[line], share, here)
        for line in sorted(grouped, key=lambda line: (order.index(line[0]), _instant(line)))
    ]
    parts = ["\n".join(rows), told]
    if lines:
        parts.append(flow_morning.how_to_open())
    return [part for part in parts if part]


def _instant(line: _Line) -> float:
    return line[1][0].timestamp() if line[1] is not None else 0.0


def _group(line: _Line, names: Sequence[str], share: int, here: str | None) -> str:
    which, at = line
    shown: list[str] = []
    for name in names:
        if shown and units(", ".join([*shown, name])) > share:
            break
        shown.append(name)
    when = flow_morning.asked_at(at[0], here, at[1], names) if at is not None else ""
    return flow_morning.group(which, len(names), shown, len(names) - len(shown), when)


def _named(found: Priority, seen: RosterRow) -> tuple[str, str]:
    """In which line somebody is named who does not need the coach, and as what."""
    name, decided = words.short(seen.person.first_name), seen.decided
    if seen.profile.status == AthleteStatus.ONBOARDING:
        return "outside", flow_morning.with_word(name, flow_morning.first_questions())
    if seen.profile.status == AthleteStatus.PAUSED:
        return "outside", flow_morning.with_word(name, flow_morning.paused())
    if not seen.in_week:
        out = figures.days_out(seen.days_out) if seen.days_out is not None else ""
        return "outside", flow_morning.with_word(name, out)
    if seen.hold is not None:
        return "hold", flow_morning.held(name, seen.hold.carb_g, seen.hold.last)
    if seen.asked_about:
        return "told", flow_morning.with_word(name, flow_morning.asked_about())
    if seen.complaints:
        return "told", flow_morning.with_word(name, _complaints(seen))
    if seen.seen_to is not None:
        return "told", flow_morning.with_word(name, flag_name(seen.seen_to.flag))
    if found.rank == ASKED:
        return "missing", name
    if seen.morning is None:
        return "later", name
    if decided is not None and decided.to_look_at:
        return "look", flow_morning.with_word(name, decided.to_look_at)
    moved = _moved(seen, decided)
    if moved is not None:
        return "moved", flow_morning.moved(name, *moved)
    return "plan", name


def _moved(seen: RosterRow, decided: Decided | None) -> tuple[float, float] | None:
    """The figure in force and its change from the plan; None where it is the plan's."""
    if decided is None or decided.planned_carb_g is None:
        return None
    carb_g = seen.set_g if seen.set_g is not None else decided.carb_g
    if carb_g is None or abs(carb_g - decided.planned_carb_g) < 0.5:
        return None
    return carb_g, carb_g - decided.planned_carb_g


def in_full(found: Priority, seen: RosterRow) -> str:
    """An athlete with the morning's numbers in a line."""
    morning = morning_line(seen.profile, seen.morning) if seen.morning is not None else None
    return words.line(
        _who(seen),
        morning or (words.no_numbers() if seen.in_week else None),
        decided_line(seen),
        found.state,
        seen.wrote,
    )


# Buttons


def _buttons(session: Session, lines: Sequence[Line]) -> Buttons:
    """For each the card; for a proposal the two answers first."""
    waiting = {
        seen.waiting.id: seen
        for _, seen in lines
        if seen.waiting is not None and seen.profile.frozen_at is None and seen.alert is None
    }
    rows = session.exec(select(DecisionRow).where(col(DecisionRow.id).in_(waiting))).all()
    proposals = {row.athlete_id: row for row in rows if row.carb_g is not None}
    buttons: list[list[Button]] = []
    openers = []
    for _, seen in lines:
        opener = opening(seen)
        row = proposals.get(seen.profile.person_id)
        if row is None or row.carb_g is None:
            openers.append(opener)
            continue
        approve = flow_morning.approve_button(seen.person.first_name, row.carb_g)
        keep = flow_morning.keep_button(plan_g(row))
        buttons.append([Button(approve, GLANCE(Say.APPROVE, id_of(row)))])
        buttons.append([Button(keep, GLANCE(Say.KEEP, id_of(row))), opener])
    return [*buttons, *in_rows(openers)]


def opening(seen: RosterRow) -> Button:
    return Button(words.short(seen.person.first_name), CARD(seen.profile.person_id))


def in_rows(buttons: Sequence[Button]) -> Buttons:
    return [buttons[i : i + BUTTONS_IN_A_ROW] for i in range(0, len(buttons), BUTTONS_IN_A_ROW)]


def _cut(text: str, most: int) -> str:
    if units(text) <= most:
        return text
    return text.encode("utf-16-le")[: 2 * (most - 1)].decode("utf-16-le", "ignore") + "…"
