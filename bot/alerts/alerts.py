"""Flags brought to the coach: told at once, repeated until acknowledged, then a second contact."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass
from datetime import date, timedelta
from typing import Any
from zoneinfo import ZoneInfo

from sqlmodel import Session, col, select

from bot.alerts import notes, words
from bot.alerts.words_advice import advice
from bot.core import agenda
from bot.core.outbox import Button, Buttons, edit
from bot.core.turn import Turn
from bot.people.changes import Change
from bot.people.people import get_person, profile_of, record, speaking_to
from bot.people.rights import others_coaching, second_coaches
from bot.people.telling import say_to
from bot.store.tables.desk import Rights
from bot.store.tables.people import AthleteProfile, AthleteStatus, Person
from bot.store.tables.traffic import AgendaRow, OutboxRow, Urgency
from bot.store.tables.week import AlertRow, CheckInRow
from bot.week.load import words_told
from bot.words.figures import capital
from bot.words.symptoms import symptom_name
from engine.decision.record import plain
from engine.safety import LOW_SODIUM_SIGNS, Finding, Flag, FlagId, Level, finding
from engine.safety.after_show import LOOKED_AT
from engine.symptoms import EATING_AND_MOOD, Concern, Symptom

REPEAT = "alert-repeat"


@dataclass(frozen=True, slots=True)
class Pace:
    """How often an open alert is repeated, after how many repeats the second contact joins."""

    every: timedelta
    contact_after: int
    then_every: timedelta


# Our own choice, all of these: no study says how fast a coach has to be fetched.
PACES = {
    Level.WARNING: Pace(timedelta(minutes=5), 3, timedelta(minutes=15)),
    Level.CAUTION: Pace(timedelta(minutes=30), 4, timedelta(minutes=30)),
}
# A half-empty bottle is asked about by day, and no second contact is fetched for it.
CALM_PACE = Pace(timedelta(hours=3), 1000, timedelta(hours=3))
DAY_FROM, DAY_TO = 7, 21  # hours of the athlete's clock
CALM = frozenset({FlagId.WATER_UNDER_ADEQUATE, FlagId.WATER_UNDER_TARGET})
STOP_REPEATING_AFTER = timedelta(hours=24)
# The same drink told twice: where both come at once, only the second is brought to the coach.
SAID_BY = {
    "water-under-target": "water-under-adequate",
    "water-over-target": "water-over-guard-rail",
}
MISSED = "missed-check-in"
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
WITHIN = "_in"  # told in another alert's message: which
# Findings that are made of what was said of these.
_MADE_OF: dict[Finding, frozenset[Symptom]] = {
    FlagId.LOW_SODIUM: frozenset().union(*LOW_SODIUM_SIGNS),
    FlagId.NO_URINE_SWELLING: frozenset(
        {Symptom.NO_URINE, Symptom.SWELLING, Symptom.SWOLLEN_HANDS}
    ),
    FlagId.AFTER_SHOW_COMPLAINT: frozenset(LOOKED_AT),
    Symptom.MUSCLE_BREAKDOWN: frozenset({Symptom.URINE_DARK, Symptom.CRAMPS}),
}


def raise_flags(
    turn: Turn, profile: AthleteProfile, flags: Sequence[Flag], *, day: date, told_anew: bool = True
) -> None:
    """Bring flags to the coach. A cause whose alert is open pings again only at a worse level.

    `told_anew` is False where nothing new was said (a plan changed and the morning was decided
    again): then a warning acknowledged that day is not raised once more. Doubts have a life of
    their own (`bot.alerts.doubts`).
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
            _ping(turn, row)
    if complaints:
        _tell_complaints(turn, profile, complaints)


def _together(turn: Turn, opened: list[AlertRow]) -> list[AlertRow]:
    """What was told in one go is one message: the gravest, with the other complaints in it."""
    leads = [row for row in opened if row.level != Level.ADVISORY and _of_complaints(row)]
    left = list(opened)
    for mood in (True, False):
        of_kind = [row for row in leads if (row.flag in EATING_AND_MOOD) is mood]
        if not of_kind:
            continue
        lead = of_kind[0]
        others = [
            row
            for row in opened
            if row is not lead
            and row.flag in set(Symptom)
            and (row.flag in EATING_AND_MOOD) is mood
        ]
        for row in others:
            row.facts = row.facts | {WITHIN: lead.id}
            row.acknowledged_at = turn.now
            turn.session.add(row)
            left.remove(row)
        if others:
            lead.facts = lead.facts | {"_with": [row.flag for row in others]}
            turn.session.add(lead)
    turn.session.flush()
    return left


def _of_complaints(row: AlertRow) -> bool:
    return row.flag in set(Symptom) or finding(row.flag) in _MADE_OF


def in_their_words(flag: Flag, words: Mapping[str, str]) -> dict[str, Any]:
    """The flag's facts, with what was written of it where the flag itself does not know."""
    facts: dict[str, Any] = plain(dict(flag.facts))
    if not facts.get("words"):
        of = _MADE_OF.get(flag.id, frozenset()) | {flag.id}
        told = dict.fromkeys(words[found] for found in of if found in words)
        if told:
            facts["words"] = "; ".join(told)
    return facts


def found_on(session: Session, athlete_id: int, day: date) -> dict[str, int]:
    """What has been brought to the coach of this day: the finding, and the rank of its worst level."""
    query = select(AlertRow).where(AlertRow.athlete_id == athlete_id, AlertRow.date == day)
    found: dict[str, int] = {}
    for row in session.exec(query):
        found[row.flag] = max(found.get(row.flag, -1), Level(row.level).rank)
    return found


def correct(turn: Turn, profile: AthleteProfile, row: CheckInRow, flags: Sequence[Flag]) -> None:
    """Put right in place what was raised of these answers before they were changed."""
    standing = {flag.id: flag for flag in flags}
    query = select(AlertRow).where(
        AlertRow.athlete_id == profile.person_id,
        AlertRow.date == row.date,
        col(AlertRow.flag).in_([flag.value for flag in OF_FIGURES]),
    )
    for alert in turn.session.exec(query).all():
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
        agenda.cancel(turn.session, subject=subject_of(row))
    turn.session.add(row)
    turn.session.flush()
    _record(turn, row, Change.ALERT_PUT_RIGHT)
    profile = profile_of(turn.session, row.athlete_id)
    for person in told_of(turn.session, row):
        with speaking_to(person):
            if row.level == Level.ADVISORY and row.flag != FlagId.DOUBT:
                name = get_person(turn.session, row.athlete_id).first_name
                if profile is not None and person.id != row.athlete_id:
                    what = words.corrected(
                        facts[CORRECTED], profile.weight_unit, profile.volume_unit
                    )
                    text = words.corrected_note(name, what)
                    notes.tell(turn, person, row.athlete_id, text)
                continue
            buttons = [[_acknowledge_button(row)]] if was_open and holds else ()
            settle_message(turn, row, person, alert_text(turn.session, row, person), buttons)


def open_alerts(session: Session, athlete_id: int) -> list[AlertRow]:
    """Not yet acknowledged: the worst first, then the oldest."""
    query = select(AlertRow).where(
        AlertRow.athlete_id == athlete_id, col(AlertRow.acknowledged_at).is_(None)
    )
    return sorted(session.exec(query), key=lambda row: (-Level(row.level).rank, row.opened_at))


def seen_to(session: Session, profile: AthleteProfile, flags: Sequence[Flag], day: date) -> bool:
    """Whether there are warnings among these flags and somebody has acknowledged each that day."""
    query = select(AlertRow.flag).where(
        AlertRow.athlete_id == profile.person_id,
        AlertRow.date == day,
        AlertRow.level == Level.WARNING,
        col(AlertRow.acknowledged_by).is_not(None),
    )
    warned = {flag.id for flag in flags if flag.level is Level.WARNING}
    still_open = {row.flag for row in open_alerts(session, profile.person_id)}
    return bool(warned) and warned <= set(session.exec(query)) - still_open


def second_contact(session: Session, coach: Person) -> Person | None:
    return get_person(session, coach.second_contact_id) if coach.second_contact_id else None


def told_of(session: Session, row: AlertRow) -> list[Person]:
    """Who hears of this alert as it stands: the coach, second coaches, then the second contact."""
    coach = get_person(session, row.coach_id)
    contact = second_contact(session, coach) if row.second_contact_at else None
    people = {person.id: person for person in (coach, *_fellows(session, row))}
    if contact is not None:
        people.setdefault(contact.id, contact)
    return list(people.values())


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


def repeat(turn: Turn, duty: AgendaRow) -> None:
    """An alert that nobody has acknowledged yet sounds again."""
    row = turn.session.get(AlertRow, int(duty.subject.partition(":")[2]))
    if row is None or row.acknowledged_at is not None:
        return
    coach = get_person(turn.session, row.coach_id)
    if turn.now - row.opened_at >= STOP_REPEATING_AFTER:
        for person in told_of(turn.session, row):
            with speaking_to(person):
                text = words.stopped(alert_text(turn.session, row, person))
                _send(turn, row, person, text)
        _record(turn, row, Change.ALERT_NO_LONGER_REPEATED)
        return
    if _is_calm(row) and _at_night(turn, row, coach):
        _put_repeat(turn, row)
        return
    row.repeats += 1
    _record(turn, row, Change.ALERT_REPEATED, times=row.repeats)
    for person in told_of(turn.session, row):
        with speaking_to(person):
            text = words.again(row.repeats, alert_text(turn.session, row, person))
            _send(turn, row, person, text)
    if row.repeats >= _pace(row).contact_after:
        _bring_in_contact(turn, row, coach, words.no_answer)
    turn.session.add(row)
    _put_repeat(turn, row)


def open_again(turn: Turn, row: AlertRow, level: Level) -> None:
    """What was told by the way is now to be acknowledged, at a worse level."""
    row.level, row.opened_at = level, turn.now
    row.acknowledged_at, row.repeats = None, 0
    turn.session.add(row)
    turn.session.flush()
    _record(turn, row, Change.ALERT_OPENED, facts=row.facts)
    _ping(turn, row)


def rewrite_everywhere(turn: Turn, row: AlertRow) -> None:
    """What was said of it, as it is now."""
    buttons = [[_acknowledge_button(row)]] if row.acknowledged_at is None else ()
    for person in told_of(turn.session, row):
        with speaking_to(person):
            settle_message(turn, row, person, alert_text(turn.session, row, person), buttons)


def tell_again(turn: Turn, row: AlertRow, person: Person) -> None:
    """An open alert once more, to somebody whom it did not reach."""
    _send(turn, row, person, alert_text(turn.session, row, person))


def coach_gone(turn: Turn, coach: Person) -> None:
    """The coach cannot be reached: what is open goes to the second contact at once."""
    query = select(AlertRow).where(
        AlertRow.coach_id == coach.id, col(AlertRow.acknowledged_at).is_(None)
    )
    for row in turn.session.exec(query.order_by(col(AlertRow.id))).all():
        _bring_in_contact(turn, row, coach, words.unreachable)


def latest_message(session: Session, row: AlertRow, person: Person) -> OutboxRow | None:
    """The newest message that told this person of the alert."""
    query = (
        select(OutboxRow)
        .where(OutboxRow.topic == topic_of(row, person))
        .order_by(col(OutboxRow.id).desc())
    )
    return session.exec(query).first()


def settle_message(
    turn: Turn, row: AlertRow, person: Person, text: str, buttons: Buttons = ()
) -> None:
    """Rewrite the newest message about this alert, with these buttons in place of its own."""
    message = latest_message(turn.session, row, person)
    if message is not None and message.status not in ("dropped", "failed"):
        edit(
            turn.session, chat_id=person.chat_id, outbox_id=message.id, text=text, buttons=buttons,
            now=turn.now,
        )  # fmt: skip


def subject_of(row: AlertRow) -> str:
    return f"alert:{row.id}"


def alert_text(session: Session, row: AlertRow, reader: Person, *, settled: str = "") -> str:
    """The alert as this reader sees it."""
    profile = profile_of(session, row.athlete_id)
    assert profile is not None
    return words.alert(
        name=get_person(session, row.athlete_id).first_name,
        flag=row.flag,
        level=Level(row.level),
        facts=row.facts,
        opened_at=row.opened_at,
        zone=profile.zone,
        weight_unit=profile.weight_unit,
        volume_unit=profile.volume_unit,
        own=reader.id == row.athlete_id,
        settled=settled,
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
    same_cause = select(AlertRow).where(
        AlertRow.athlete_id == profile.person_id, AlertRow.flag == flag.id.value
    )
    for earlier in turn.session.exec(same_cause.order_by(col(AlertRow.id).desc())).all():
        worse = flag.level.rank > Level(earlier.level).rank
        same = _apart_from_corrections(earlier.facts) == facts or (
            isinstance(flag.id, Symptom)
            and set(facts) <= {"words"}
            and str(facts.get("words", "")) in str(earlier.facts.get("words", ""))
        )
        if earlier.acknowledged_at is None:
            if not worse:
                if told_anew and not same and isinstance(flag.id, Symptom):
                    _add_words(turn, earlier, facts)
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
    _record(turn, row, Change.ALERT_OPENED, facts=facts)
    return row


def _said_again(flag: Flag, told_anew: bool) -> bool:
    return told_anew and flag.level is Level.WARNING


def _apart_from_corrections(facts: Mapping[str, Any]) -> dict[str, Any]:
    return {key: value for key, value in facts.items() if not key.startswith("_")}


def _is_complaint(row: AlertRow) -> bool:
    """Whether this is a single complaint that needs no acknowledging."""
    return row.level == Level.ADVISORY and row.flag in set(Symptom)


def _add_words(turn: Turn, row: AlertRow, facts: Mapping[str, Any]) -> None:
    """Said once more in other words while the alert is open: they stand in it, without a sound."""
    told, before = str(facts.get("words", "")), str(row.facts.get("words", ""))
    if not told or told in before:
        return
    row.facts = row.facts | {"words": f"{before}; {told}" if before else told}
    turn.session.add(row)
    for person in told_of(turn.session, row):
        with speaking_to(person):
            text = alert_text(turn.session, row, person)
            settle_message(turn, row, person, text, [[_acknowledge_button(row)]])


def _tell_complaints(turn: Turn, profile: AthleteProfile, rows: Sequence[AlertRow]) -> None:
    """What was complained of in one go, in one silent note, in any hours: who is told may look."""
    told = [row.flag for row in rows]
    wrote = "; ".join(dict.fromkeys(str(row.facts.get("words", "")) for row in rows)).strip("; ")
    name = get_person(turn.session, profile.person_id).first_name
    for person in others_coaching(turn.session, profile):
        with speaking_to(person):
            text = words.info(
                name=name,
                named=capital(", ".join(symptom_name(flag) for flag in told)),
                wrote=wrote,
                told=advice(told),
                at=turn.now,
                zone=profile.zone,
            )
            notes.tell(turn, person, profile.person_id, text, at_once=True)


def _ping(turn: Turn, row: AlertRow) -> None:
    coach = get_person(turn.session, row.coach_id)
    if row.level == Level.ADVISORY:
        _note_advisory(turn, row, coach)
        return
    for person in told_of(turn.session, row):
        with speaking_to(person):
            _send(turn, row, person, alert_text(turn.session, row, person))
    _put_repeat(turn, row)
    own = row.coach_id == row.athlete_id
    if not coach.reachable:
        _bring_in_contact(turn, row, coach, words.unreachable)
    elif own and row.level == Level.WARNING:
        _bring_in_contact(turn, row, coach, words.on_their_own)


def _note_advisory(turn: Turn, row: AlertRow, coach: Person) -> None:
    profile = profile_of(turn.session, row.athlete_id)
    assert profile is not None
    for person in (coach, *second_coaches(turn.session, profile, rights=Rights.FULL)):
        if person.id == row.athlete_id and row.flag == MISSED:
            continue  # told as the athlete already
        with speaking_to(person):
            notes.tell(turn, person, row.athlete_id, alert_text(turn.session, row, person))


def _bring_in_contact(
    turn: Turn, row: AlertRow, coach: Person, why_of: Callable[[str], str]
) -> None:
    """Send the alert to the second contact too, once, and tell the athlete how things stand.

    `why_of` says, with the coach's name, why it is not the coach alone who is told.
    """
    if row.second_contact_at is not None:
        return
    contact = second_contact(turn.session, coach)
    if contact is not None and not contact.reachable:
        contact = None
    with speaking_to(coach):
        why = why_of(coach.first_name)  # as the coach will read it in the history
    if contact is not None:
        row.second_contact_at = turn.now
        turn.session.add(row)
        with speaking_to(contact):
            text = words.to_contact(
                why_of(coach.first_name), alert_text(turn.session, row, contact)
            )
            _send(turn, row, contact, text)
        _record(turn, row, Change.SECOND_CONTACT_TOLD, contact=contact.first_name, why=why)
    else:
        _record(turn, row, Change.NO_SECOND_CONTACT_TO_TELL, why=why)
    if row.coach_id != row.athlete_id:
        athlete = get_person(turn.session, row.athlete_id)
        with speaking_to(athlete):
            others = _others(turn.session, row, contact)
            say_to(
                turn,
                athlete,
                words.athlete_told_no_answer(
                    why_of(coach.first_name), others, urgent=row.level == Level.WARNING
                ),
                dedupe=f"alert-no-answer:{row.id}",
            )


def _others(session: Session, row: AlertRow, contact: Person | None) -> list[str]:
    """The names of those beside the coach who have been told."""
    others = [*_fellows(session, row), *([contact] if contact is not None else [])]
    return list(dict.fromkeys(person.first_name for person in others))


def _supersede(turn: Turn, row: AlertRow, level: Level) -> None:
    row.acknowledged_at = turn.now
    turn.session.add(row)
    turn.session.flush()  # the index allows one open row a cause and level
    agenda.cancel(turn.session, subject=subject_of(row))
    _record(turn, row, Change.ALERT_BECAME_WORSE, now=level.value)
    for person in told_of(turn.session, row):
        with speaking_to(person):
            text = alert_text(turn.session, row, person, settled=words.superseded(level))
            settle_message(turn, row, person, text)


def _send(turn: Turn, row: AlertRow, person: Person, text: str) -> None:
    """The alert as a new message, which takes the button over from the message before it."""
    before = latest_message(turn.session, row, person)
    sent = say_to(
        turn,
        person,
        text,
        buttons=[[_acknowledge_button(row)]],
        topic=topic_of(row, person),
        dedupe=f"{topic_of(row, person)}:{turn.now.isoformat()}",
        urgency=Urgency.URGENT,
    )
    if before is not None and before.id != sent.id and before.status not in ("dropped", "failed"):
        edit(
            turn.session, chat_id=person.chat_id, outbox_id=before.id, now=turn.now,
            text=before.payload["text"],
        )  # fmt: skip
    if person.id == row.coach_id:
        row.outbox_id = sent.id
        turn.session.add(row)


def _acknowledge_button(row: AlertRow) -> Button:
    return Button(words.acknowledge_button(), f"alert:ack:{row.id}")


def _pace(row: AlertRow) -> Pace:
    return CALM_PACE if _is_calm(row) else PACES[Level(row.level)]


def _is_calm(row: AlertRow) -> bool:
    """A half-empty bottle, or words of which nobody knows what they might mean: asked by day, and
    no second contact is fetched. A doubt about a certain complaint, or one that sounds like an
    emergency or like despair, keeps the pace of a caution.
    """
    vague = row.flag == FlagId.DOUBT and row.facts.get("sounds_like") == Concern.BODY
    return (row.flag in CALM or vague) and row.level != Level.WARNING


def _at_night(turn: Turn, row: AlertRow, coach: Person) -> bool:
    """Whether the coach sleeps: their quiet hours, or late and early where the athlete is."""
    profile = profile_of(turn.session, row.athlete_id)
    zone = ZoneInfo((profile.zone if profile else None) or "UTC")
    hour = turn.now.astimezone(zone).hour
    return notes.quiet_now(turn, coach) or not DAY_FROM <= hour < DAY_TO


def _put_repeat(turn: Turn, row: AlertRow) -> None:
    pace = _pace(row)
    wait = pace.then_every if row.repeats >= pace.contact_after else pace.every
    agenda.put(
        turn.session,
        subject=subject_of(row),
        local_date=row.date,
        kind=f"{REPEAT}:{row.repeats + 1}",
        due_at=min(turn.now + wait, row.opened_at + STOP_REPEATING_AFTER),
        again=True,
    )


def topic_of(row: AlertRow, person: Person) -> str:
    """What all messages that tell this person of the alert are on."""
    return f"alert:{row.id}:{person.id}"


def _fellows(session: Session, row: AlertRow) -> list[Person]:
    profile = profile_of(session, row.athlete_id)
    if profile is None or profile.coach_id != row.coach_id:
        return []
    return second_coaches(session, profile)


def _record(turn: Turn, row: AlertRow, what: Change, **detail: object) -> None:
    """A step of the alert's life, for the history."""
    record(
        turn, row.athlete_id, what, by=None, alert=row.id, flag=row.flag,
        level=row.level, day=row.date.isoformat(), **detail,
    )  # fmt: skip
