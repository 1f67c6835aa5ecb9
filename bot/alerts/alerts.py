"""Flags brought to the coach: told at once, repeated until acknowledged, then a second contact."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass
from datetime import date
from functools import partial
from typing import Any

from sqlalchemy import bindparam
from sqlmodel import Session, col, or_, select

from bot.alerts import delivery, notes, together, words, words_after
from bot.alerts.delivery import WITHIN, step_of
from bot.core.chat.outbox import Buttons
from bot.core.timing import agenda
from bot.core.turn import Turn
from bot.people.changes import Change
from bot.people.people import name_of, others_coaching, profile_of, record
from bot.store.remembering import remembered_rows
from bot.store.tables.people import AthleteProfile, AthleteStatus, Person
from bot.store.tables.week import AlertRow, CheckInRow
from bot.week.cases import words_told
from bot.week.load import may_have
from engine.safety import Flag, FlagId, Level, finding
from engine.symptoms import Symptom

# The same drink told twice: where both come at once, only the second is brought to the coach.
SAID_BY = {
    "water-under-target": "water-under-adequate",
    "water-over-target": "water-over-guard-rail",
}
# What a plan or a whole week shows would be news only once.
ONCE_A_WEEK = frozenset({"low-energy-availability", "weekly-loss-fast"})
# What rests on answers that can be put right; words that were said stay said.
OF_FIGURES = frozenset(
    {
        FlagId.LOW_SODIUM, FlagId.WEIGHT_DROP_DAY, FlagId.WEIGHT_DROP_BASELINE, FlagId.WEEKLY_LOSS,
        FlagId.WATER_UNDER_ADEQUATE, FlagId.WATER_UNDER_TARGET, FlagId.WATER_OVER_TARGET,
        FlagId.WATER_OVER_GUARD_RAIL, FlagId.SHORT_SLEEP,
    }
)  # fmt: skip
CORRECTED = "_corrected"


@dataclass(frozen=True, slots=True)
class Found:
    """The flags of a day. `told_anew` is False where nothing new was said (a plan changed and the
    morning was decided again): then a warning acknowledged that day is not raised once more.
    """

    flags: Sequence[Flag]
    day: date
    told_anew: bool = True


@dataclass(frozen=True, slots=True)
class Answered:
    """What the athlete is told of the flags on their words.

    `advised` is False where they are told nothing of what to do about mild ones. `words`: who coaches
    themselves reads these with the button of the gravest alert, in one message.
    """

    words: Callable[[], str] | None = None
    advised: bool = True


_AS_EVER = Answered()


def raise_flags(
    turn: Turn, profile: AthleteProfile, found: Found, answered: Answered = _AS_EVER
) -> bool:
    """Bring flags to the coach. A cause whose alert is open pings again only at a worse level.

    Doubts have a life of their own (`bot.alerts.doubts`). Whether the athlete has been sent their
    answer.
    """
    raised, day = {flag.id for flag in found.flags}, found.day
    if profile.status == AthleteStatus.ENDED:
        return False  # nobody coaches them; what they are to do themselves is said all the same
    words = words_told(turn.session, profile.person_id, day)
    opened = []
    for flag in sorted(found.flags, key=lambda flag: -flag.level.rank):
        if SAID_BY.get(flag.id) in raised or flag.id is FlagId.DOUBT:
            continue
        facts = together.in_their_words(flag, words)
        row = _raise(turn, profile, flag, facts, found)
        if row is not None:
            opened.append(row)
    opened = together.gathered(turn, opened)
    complaints = [row for row in opened if together.is_complaint(row)]
    sent = False
    for row in opened:
        if row not in complaints:
            sent |= delivery.ping(turn, row, answer=None if sent else answered.words)
    alerts = of_day_or_open(turn.session, profile.person_id, day) if complaints else ()
    untold = [row for row in complaints if not together.told_with_graver(row, alerts)]
    if untold:
        together.tell_complaints(turn, profile, untold, advised=answered.advised)
    return sent


def found_on(session: Session, athlete_id: int, day: date) -> dict[str, int]:
    """What has been brought to the coach of this day: the finding, and the rank of its worst level."""
    found: dict[str, int] = {}
    for row in of_day_or_open(session, athlete_id, day):
        if row.date == day:
            found[row.flag] = max(found.get(row.flag, -1), Level(row.level).rank)
    return found


# Built once: building a statement costs as much as asking it.
_OF_DAY_OR_OPEN = select(AlertRow).where(
    AlertRow.athlete_id == bindparam("athlete"),
    or_(AlertRow.date == bindparam("day"), col(AlertRow.acknowledged_at).is_(None)),
)

_SAME_CAUSE = (
    select(AlertRow)
    .where(AlertRow.athlete_id == bindparam("athlete"), AlertRow.flag == bindparam("flag"))
    .order_by(col(AlertRow.id).desc())
)
_OPEN = select(AlertRow).where(
    AlertRow.athlete_id == bindparam("athlete"), col(AlertRow.acknowledged_at).is_(None)
)


def of_day_or_open(session: Session, athlete_id: int, day: date) -> Sequence[AlertRow]:
    """An athlete's alerts of this day, and those of other days that nobody has acknowledged."""
    if not may_have(session, AlertRow, athlete_id):
        return ()
    return remembered_rows(
        session, AlertRow, (athlete_id, day), _OF_DAY_OR_OPEN, athlete=athlete_id, day=day
    )


def correct(turn: Turn, profile: AthleteProfile, row: CheckInRow, flags: Sequence[Flag]) -> None:
    """Put right in place what was raised of these answers before they were changed."""
    standing = {flag.id: flag for flag in flags}
    of_figures = [flag.value for flag in OF_FIGURES]
    for alert in of_day_or_open(turn.session, profile.person_id, row.date):
        if alert.date != row.date or alert.flag not in of_figures:
            continue
        put_right = alert.facts.get(CORRECTED)
        if put_right is not None and not put_right.get("holds"):
            continue
        superseded = alert.acknowledged_at is not None and alert.acknowledged_by is None
        if superseded and alert.level != Level.ADVISORY:
            continue  # a worse one took its place
        told = {key: alert.facts[key] for key in ("water_l", "weight_kg") if key in alert.facts}
        now = {key: getattr(row, key) for key in told if getattr(row, key) is not None}
        moved = {key: value for key, value in now.items() if value != told[key]}
        flag = standing.get(finding(alert.flag))
        signs = "signs" in alert.facts  # what was felt stays to be seen to, whatever was drunk
        if signs and not moved:
            continue
        if flag is not None and (not moved or flag.level.rank > Level(alert.level).rank):
            continue
        facts = dict(alert.facts)
        if flag is not None:
            told_with = {key: fact for key, fact in facts.items() if key.startswith("_")}
            facts = told_with | together.in_their_words(
                flag, words_told(turn.session, profile.person_id, row.date)
            )
        facts[CORRECTED] = {
            "before": {key: told[key] for key in moved}, "now": moved,
            "holds": flag is not None or signs,
        }  # fmt: skip
        put_right_in_place(turn, alert, facts)


def put_right_in_place(turn: Turn, row: AlertRow, facts: dict[str, Any]) -> None:
    """Rewrite what was said of an alert; where it no longer holds, nothing waits to be acknowledged."""
    row.facts = facts
    holds = bool(facts[CORRECTED].get("holds"))
    was_open = row.acknowledged_at is None
    if was_open and not holds:
        row.acknowledged_at = turn.now
        agenda.cancel(turn.session, subject=delivery.subject_of(row))
    record(turn, row.athlete_id, Change.ALERT_PUT_RIGHT(**step_of(row)), by=None)
    lead = turn.session.get(AlertRow, row.facts.get(WITHIN, 0))
    if lead is not None and lead.acknowledged_at is None:  # it was told in that one's message
        rewrite_everywhere(turn, lead)
    if lead is not None and (holds or lead.acknowledged_at is None):
        return  # one that somebody saw to stays as it was read, and what holds is told anew
    profile = profile_of(turn.session, row.athlete_id)
    for person in delivery.told_of(turn.session, row):
        if lead is None and (row.level != Level.ADVISORY or row.flag == FlagId.DOUBT):
            _rewrite(turn, row, person, to_acknowledge=was_open and holds)
        elif profile is not None and person.id != row.athlete_id:
            note_of = partial(_put_right, turn, profile, facts[CORRECTED])
            notes.tell(turn, person, row.athlete_id, note_of)


def _put_right(turn: Turn, profile: AthleteProfile, corrected: dict[str, Any]) -> str:
    what = words.corrected(corrected, profile.weight_unit, profile.volume_unit)
    return words_after.corrected_note(name_of(turn.session, profile.person_id), what)


def open_alerts(session: Session, athlete_id: int) -> list[AlertRow]:
    """Not yet acknowledged: the worst first, then the oldest."""
    if not may_have(session, AlertRow, athlete_id):
        return []
    rows = remembered_rows(session, AlertRow, ("open", athlete_id), _OPEN, athlete=athlete_id)
    return sorted(rows, key=lambda row: (-Level(row.level).rank, row.opened_at))


def to_acknowledge(session: Session, athlete_id: int) -> list[AlertRow]:
    """Those of them that are not only for the coach's information."""
    return [row for row in open_alerts(session, athlete_id) if row.level != Level.ADVISORY]


def seen_to(session: Session, profile: AthleteProfile, flags: Sequence[Flag], day: date) -> bool:
    """Whether there are warnings among these flags and somebody has acknowledged each that day."""
    warned = {flag.id for flag in flags if flag.level is Level.WARNING}
    if not warned:
        return False
    query = select(AlertRow.flag).where(
        AlertRow.athlete_id == profile.person_id,
        AlertRow.date == day,
        AlertRow.level == Level.WARNING,
        col(AlertRow.acknowledged_by).is_not(None),
    )
    still_open = {row.flag for row in open_alerts(session, profile.person_id)}
    return warned <= set(session.exec(query)) - still_open


def note(
    turn: Turn, profile: AthleteProfile, words_for: Callable[[], str], *, once: bool = False
) -> None:
    """Something that needs no word: silent, gathered, and held in quiet hours.

    To those who coach somebody else, each in their language; on their own, athletes read it with
    their target. With `once`, the same words are not noted twice within a day.
    """
    for person in others_coaching(turn.session, profile):
        comes = notes.Comes.ONCE_A_DAY if once else notes.Comes.IN_TURN
        notes.tell(turn, person, profile.person_id, words_for, comes)


def open_as_caution(turn: Turn, row: AlertRow) -> None:
    """What was told by the way is now to be acknowledged."""
    row.level, row.opened_at = Level.CAUTION, turn.now
    row.acknowledged_at, row.repeats = None, 0
    record(turn, row.athlete_id, Change.ALERT_OPENED(**step_of(row), facts=row.facts), by=None)
    delivery.ping(turn, row)


def rewrite_everywhere(turn: Turn, row: AlertRow) -> None:
    """What was said of it, as it is now."""
    for person in delivery.told_of(turn.session, row):
        _rewrite(turn, row, person, to_acknowledge=row.acknowledged_at is None)


def _rewrite(turn: Turn, row: AlertRow, person: Person, *, to_acknowledge: bool) -> None:
    def buttons() -> Buttons:
        return [[delivery.acknowledge_button(row)]] if to_acknowledge else ()

    delivery.settle_message(turn, row, person, buttons=buttons)


def _raise(
    turn: Turn, profile: AthleteProfile, flag: Flag, facts: dict[str, Any], found: Found
) -> AlertRow | None:
    """The row of an alert that is new, or None where this has been said."""
    day, told_anew = found.day, found.told_anew
    for earlier in _of_same_cause(turn.session, profile.person_id, flag):
        worse = flag.level.rank > Level(earlier.level).rank
        said = {key: fact for key, fact in earlier.facts.items() if not key.startswith("_")}
        same = said == facts or (
            isinstance(flag.id, Symptom)
            and set(facts) <= {"words"}
            and str(facts.get("words", "")) in str(earlier.facts.get("words", ""))
        )
        if earlier.acknowledged_at is None:
            if not worse:
                if (
                    told_anew
                    and not same
                    and (isinstance(flag.id, Symptom) or flag.id in together.MADE_OF)
                ):
                    _add_words(turn, earlier, facts, anew=earlier.date != day)
                return None
            _supersede(turn, earlier, flag.level)
        elif flag.id in ONCE_A_WEEK and abs((day - earlier.date).days) < 7:
            return None
        elif earlier.date == day and not worse:
            if same and (flag.level is Level.ADVISORY or not _said_again(flag, told_anew)):
                return None
            if flag.level is Level.ADVISORY and not (told_anew and together.is_complaint(earlier)):
                return None
    row = AlertRow(
        athlete_id=profile.person_id,
        coach_id=profile.coach_id,
        flag=flag.id,
        level=flag.level,
        facts=facts,
        date=day,
        opened_at=turn.now,
        acknowledged_at=turn.now if flag.level is Level.ADVISORY else None,
    )
    turn.session.add(row)
    turn.session.flush()  # facts of other alerts name it: without gaps, on whichever database
    record(turn, row.athlete_id, Change.ALERT_OPENED(**step_of(row), facts=facts), by=None)
    return row


def _of_same_cause(session: Session, athlete_id: int, flag: Flag) -> Sequence[AlertRow]:
    """Every alert of this cause so far, the latest first."""
    if not may_have(session, AlertRow, athlete_id):
        return ()
    return session.exec(_SAME_CAUSE, params={"athlete": athlete_id, "flag": flag.id.value}).all()


def _said_again(flag: Flag, told_anew: bool) -> bool:
    return told_anew and flag.level is Level.WARNING


def _add_words(turn: Turn, row: AlertRow, facts: Mapping[str, Any], *, anew: bool) -> None:
    """Said once more in other words while the alert is open: they stand in it, without a sound; on
    another day (`anew`) it is told once more.
    """
    told, before = str(facts.get("words", "")), str(row.facts.get("words", ""))
    if not told or told in before:
        return
    parts = dict.fromkeys(part for part in (*before.split("; "), *told.split("; ")) if part)
    row.facts = row.facts | {"words": "; ".join(parts)}
    for person in delivery.told_of(turn.session, row):
        if anew:
            delivery.send(turn, row, person)
        else:
            _rewrite(turn, row, person, to_acknowledge=True)


def _supersede(turn: Turn, row: AlertRow, level: Level) -> None:
    row.acknowledged_at = turn.now
    turn.session.flush()  # the index allows one open row a cause and level
    agenda.cancel(turn.session, subject=delivery.subject_of(row))
    worse = Change.ALERT_BECAME_WORSE(**step_of(row), now=level.value)
    record(turn, row.athlete_id, worse, by=None)
    for person in delivery.told_of(turn.session, row):
        delivery.settle_message(turn, row, person, settled=partial(words_after.superseded, level))
