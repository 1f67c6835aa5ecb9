"""Flags brought to the coach: told at once, repeated until acknowledged, then a second contact."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from datetime import date
from typing import Any

from sqlalchemy import bindparam
from sqlmodel import Session, col, or_, select

from bot.alerts import delivery, notes, words, words_after
from bot.alerts.delivery import TOGETHER, WITHIN
from bot.alerts.words_advice import advice, under_a_warning
from bot.core.timing import agenda
from bot.core.turn import Turn
from bot.people.changes import Change
from bot.people.coach_settings import moment_for
from bot.people.people import name_of, profile_of, speaking_to
from bot.people.rights import others_coaching
from bot.store.remembering import remembered
from bot.store.tables.people import AthleteProfile, AthleteStatus
from bot.store.tables.week import AlertRow, CheckInRow
from bot.week.cases import words_told
from bot.week.load import may_have
from bot.words.figures import capital
from bot.words.symptoms import symptom_names
from engine.decision.record import plain
from engine.safety import LOW_SODIUM_SIGNS, Finding, Flag, FlagId, Level, finding
from engine.safety.after_show import LOOKED_AT
from engine.symptoms import EATING_AND_MOOD, Symptom

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
# Findings that are made of what was said of these.
_MADE_OF: dict[Finding, frozenset[Symptom]] = {
    FlagId.LOW_SODIUM: frozenset().union(*LOW_SODIUM_SIGNS),
    FlagId.NO_URINE_SWELLING: frozenset(
        {Symptom.NO_URINE, Symptom.SWELLING, Symptom.SWOLLEN_HANDS}
    ),
    FlagId.AFTER_SHOW_COMPLAINT: frozenset(LOOKED_AT),
    Symptom.MUSCLE_BREAKDOWN: frozenset({Symptom.URINE_DARK, Symptom.CRAMPS}),
}
# And these are told in words as well, which may tell of other things beside.
_SAID_OUTRIGHT = frozenset({FlagId.EMERGENCY, FlagId.DRUG_NAMED, FlagId.WATER_TOO_FAST})


def raise_flags(
    turn: Turn,
    profile: AthleteProfile,
    flags: Sequence[Flag],
    *,
    day: date,
    told_anew: bool = True,
    advised: bool = True,
) -> None:
    """Bring flags to the coach. A cause whose alert is open pings again only at a worse level.

    `told_anew` is False where nothing new was said (a plan changed and the morning was decided
    again): then a warning acknowledged that day is not raised once more. `advised` is False where
    the athlete was told nothing of what to do about mild ones. Doubts have a life of their own
    (`bot.alerts.doubts`).
    """
    raised = {flag.id for flag in flags}
    if profile.status == AthleteStatus.ENDED:
        return  # nobody coaches them; what they are told to do themselves is said all the same
    words = words_told(turn.session, profile.person_id, day)
    opened = []
    for flag in sorted(flags, key=lambda flag: -flag.level.rank):
        if SAID_BY.get(flag.id) in raised or flag.id is FlagId.DOUBT:
            continue
        facts = in_their_words(flag, words)
        row = _raise(turn, profile, flag, facts, day, told_anew=told_anew)
        if row is not None:
            opened.append(row)
    opened = _together(turn, opened)
    complaints = [row for row in opened if _is_complaint(row)]
    for row in opened:
        if row not in complaints:
            delivery.ping(turn, row)
    untold = [row for row in complaints if not _told_with_graver(turn, row)]
    if untold:
        _tell_complaints(turn, profile, untold, advised=advised)


def _told_with_graver(turn: Turn, row: AlertRow) -> bool:
    """Whether the same words have just gone out in an alert on the body."""
    words = str(row.facts.get("words", ""))
    return any(
        alert.opened_at == turn.now
        and alert.level != Level.ADVISORY
        and _of_words(alert)
        and alert.flag not in EATING_AND_MOOD
        and (words or row.flag in _MADE_OF.get(finding(alert.flag), ()))
        and words in str(alert.facts.get("words", ""))
        for alert in of_day_or_open(turn.session, row.athlete_id, row.date)
    )


def _together(turn: Turn, opened: list[AlertRow]) -> list[AlertRow]:
    """What was told in one go is one message: the gravest, with all else that was told in it."""
    told = [row for row in opened if _of_words(row)]
    left = list(opened)
    for mood in (True, False):
        of_kind = [row for row in told if (row.flag in EATING_AND_MOOD) is mood]
        leads = [row for row in of_kind if row.level != Level.ADVISORY]
        if not leads:
            continue
        lead = leads[0]
        others = [row for row in of_kind if row is not lead]
        for row in others:
            row.facts = row.facts | {WITHIN: lead.id}
            row.acknowledged_at = turn.now
            turn.session.add(row)
            left.remove(row)
        if others:
            lead.facts = lead.facts | {TOGETHER: [row.flag for row in others]}
            turn.session.add(lead)
    turn.session.flush()
    return left


def _of_words(row: AlertRow) -> bool:
    found = finding(row.flag)
    return isinstance(found, Symptom) or found in _MADE_OF or found in _SAID_OUTRIGHT


def in_their_words(flag: Flag, words: Mapping[str, str]) -> dict[str, Any]:
    """The flag's facts, with what was written of it where the flag itself does not know."""
    facts: dict[str, Any] = plain(dict(flag.facts))
    if flag.id is FlagId.DRUG_NAMED:  # of which the flag knows the names alone
        named = str(facts.get("words", "")).split(", ")
        whole = dict.fromkeys(words[name] for name in named if name in words)
        facts["words"] = "; ".join(whole) or facts.get("words", "")
    if not facts.get("words"):
        of = _MADE_OF.get(flag.id, frozenset()) | {flag.id}
        told = dict.fromkeys(words[found] for found in of if found in words)
        if told:
            facts["words"] = "; ".join(told)
    return facts


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
    return remembered(
        session, AlertRow, (athlete_id, day),
        lambda: session.exec(_OF_DAY_OR_OPEN, params={"athlete": athlete_id, "day": day}).all(),
    )  # fmt: skip


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
            facts = in_their_words(flag, words_told(turn.session, profile.person_id, row.date))
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
    turn.session.add(row)
    turn.session.flush()
    delivery.keep_step(turn, row, Change.ALERT_PUT_RIGHT)
    lead = turn.session.get(AlertRow, row.facts.get(WITHIN, 0))
    if lead is not None:  # it was told in that one's message
        rewrite_everywhere(turn, lead)
        return
    profile = profile_of(turn.session, row.athlete_id)
    for person in delivery.told_of(turn.session, row):
        with speaking_to(person):
            if row.level == Level.ADVISORY and row.flag != FlagId.DOUBT:
                name = name_of(turn.session, row.athlete_id)
                if profile is not None and person.id != row.athlete_id:
                    what = words.corrected(
                        facts[CORRECTED], profile.weight_unit, profile.volume_unit
                    )
                    text = words_after.corrected_note(name, what)
                    notes.tell(turn, person, row.athlete_id, text)
                continue
            buttons = [[delivery.acknowledge_button(row)]] if was_open and holds else ()
            delivery.settle_message(
                turn, row, person, delivery.alert_text(turn.session, row, person), buttons
            )


def open_alerts(session: Session, athlete_id: int) -> list[AlertRow]:
    """Not yet acknowledged: the worst first, then the oldest."""
    if not may_have(session, AlertRow, athlete_id):
        return []
    rows = remembered(
        session, AlertRow, ("open", athlete_id),
        lambda: session.exec(_OPEN, params={"athlete": athlete_id}).all(),
    )  # fmt: skip
    return sorted(rows, key=lambda row: (-Level(row.level).rank, row.opened_at))


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
        with speaking_to(person):
            text = words_for()
            if not (once and notes.noted(turn, person, profile.person_id, text)):
                notes.tell(turn, person, profile.person_id, text)


def open_again(turn: Turn, row: AlertRow, level: Level) -> None:
    """What was told by the way is now to be acknowledged, at a worse level."""
    row.level, row.opened_at = level, turn.now
    row.acknowledged_at, row.repeats = None, 0
    turn.session.add(row)
    turn.session.flush()
    delivery.keep_step(turn, row, Change.ALERT_OPENED, facts=row.facts)
    delivery.ping(turn, row)


def rewrite_everywhere(turn: Turn, row: AlertRow) -> None:
    """What was said of it, as it is now."""
    buttons = [[delivery.acknowledge_button(row)]] if row.acknowledged_at is None else ()
    for person in delivery.told_of(turn.session, row):
        with speaking_to(person):
            delivery.settle_message(
                turn, row, person, delivery.alert_text(turn.session, row, person), buttons
            )


def _raise(
    turn: Turn,
    profile: AthleteProfile,
    flag: Flag,
    facts: dict[str, Any],
    day: date,
    *,
    told_anew: bool,
) -> AlertRow | None:
    """The row of an alert that is new, or None where this has been said."""
    for earlier in _of_same_cause(turn.session, profile.person_id, flag):
        worse = flag.level.rank > Level(earlier.level).rank
        same = _apart_from_corrections(earlier.facts) == facts or (
            isinstance(flag.id, Symptom)
            and set(facts) <= {"words"}
            and str(facts.get("words", "")) in str(earlier.facts.get("words", ""))
        )
        if earlier.acknowledged_at is None:
            if not worse:
                if told_anew and not same and (isinstance(flag.id, Symptom) or flag.id in _MADE_OF):
                    _add_words(turn, earlier, facts, anew=earlier.date != day)
                return None
            _supersede(turn, earlier, flag.level)
        elif flag.id in ONCE_A_WEEK and abs((day - earlier.date).days) < 7:
            return None
        elif earlier.date == day and not worse:
            if same and (flag.level is Level.ADVISORY or not _said_again(flag, told_anew)):
                return None
            if flag.level is Level.ADVISORY and not (told_anew and _is_complaint(earlier)):
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
    turn.session.flush()
    delivery.keep_step(turn, row, Change.ALERT_OPENED, facts=facts)
    return row


def _of_same_cause(session: Session, athlete_id: int, flag: Flag) -> Sequence[AlertRow]:
    """Every alert of this cause so far, the latest first."""
    if not may_have(session, AlertRow, athlete_id):
        return ()
    return session.exec(_SAME_CAUSE, params={"athlete": athlete_id, "flag": flag.id.value}).all()


def _said_again(flag: Flag, told_anew: bool) -> bool:
    return told_anew and flag.level is Level.WARNING


def _apart_from_corrections(facts: Mapping[str, Any]) -> dict[str, Any]:
    return {key: value for key, value in facts.items() if not key.startswith("_")}


def _is_complaint(row: AlertRow) -> bool:
    """Whether this is a single complaint that needs no acknowledging."""
    return row.level == Level.ADVISORY and row.flag in set(Symptom)


def _add_words(turn: Turn, row: AlertRow, facts: Mapping[str, Any], *, anew: bool) -> None:
    """Said once more in other words while the alert is open: they stand in it, without a sound; on
    another day (`anew`) it is told once more.
    """
    told, before = str(facts.get("words", "")), str(row.facts.get("words", ""))
    if not told or told in before:
        return
    parts = dict.fromkeys(part for part in (*before.split("; "), *told.split("; ")) if part)
    row.facts = row.facts | {"words": "; ".join(parts)}
    turn.session.add(row)
    for person in delivery.told_of(turn.session, row):
        with speaking_to(person):
            if anew:
                delivery.tell_again(turn, row, person)
                continue
            text = delivery.alert_text(turn.session, row, person)
            delivery.settle_message(turn, row, person, text, [[delivery.acknowledge_button(row)]])


def _tell_complaints(
    turn: Turn, profile: AthleteProfile, rows: Sequence[AlertRow], *, advised: bool
) -> None:
    """What was complained of in one go, in one silent note, in any hours: who is told may look."""
    told = [row.flag for row in rows]
    wrote = "; ".join(dict.fromkeys(str(row.facts.get("words", "")) for row in rows)).strip("; ")
    name = name_of(turn.session, profile.person_id)
    for person in others_coaching(turn.session, profile):
        with speaking_to(person):
            text = words.info(
                name=name,
                named=capital(symptom_names(told)),
                wrote=wrote,
                told=advice(told) if advised else under_a_warning(told),
                when=moment_for(turn.session, person, profile, turn.now),
            )
            notes.tell(turn, person, profile.person_id, text, at_once=True)


def _supersede(turn: Turn, row: AlertRow, level: Level) -> None:
    row.acknowledged_at = turn.now
    turn.session.add(row)
    turn.session.flush()  # the index allows one open row a cause and level
    agenda.cancel(turn.session, subject=delivery.subject_of(row))
    delivery.keep_step(turn, row, Change.ALERT_BECAME_WORSE, now=level.value)
    for person in delivery.told_of(turn.session, row):
        with speaking_to(person):
            text = delivery.alert_text(
                turn.session, row, person, settled=words_after.superseded(level)
            )
            delivery.settle_message(turn, row, person, text)
