"""What happened since the last time, once a day at the coach's own hour; nothing, no message."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import datetime, timedelta
from zoneinfo import ZoneInfo

from sqlmodel import Session, col, select

from bot.alerts.notes import held_notes, notes_since
from bot.alerts.words import LEVEL_WORDS
from bot.alerts.words_athlete import cause
from bot.coach import flow_digest
from bot.coach.roster import words as coach_roster
from bot.coach.roster.rows import RosterRow, load_roster_rows
from bot.coach.roster.standing import ASKED, NEEDS_THE_COACH, outcome_now, standing
from bot.core.timing import agenda, instants
from bot.core.timing.agenda import Subject
from bot.core.turn import Turn
from bot.decision.words_target import reason
from bot.people.coach_settings import coach_settings_of, subject_of, zone_of_coach
from bot.people.people import athletes_seen_by, get_person
from bot.people.telling import say_to
from bot.safety.alert_taps import settled_line
from bot.store.base import id_of
from bot.store.tables.people import Person
from bot.store.tables.traffic import AgendaRow
from bot.store.tables.week import AlertRow, CheckInRow, DecisionRow, DecisionStatus
from bot.week.cases import decision_of, default_carb_g, is_small_step
from engine.safety import Level
from engine.written.chatter import is_chatter

DIGEST = "digest"
AT_MOST_BACK = timedelta(days=2)  # after a pause, what is older is in the history
FIRST_BACK = timedelta(days=1)

Section = tuple[str, Sequence[str]]


def schedule(turn: Turn, coach: Person) -> None:
    """Lay the next digest on the agenda, or take it off where the coach wants none."""
    settings = coach_settings_of(turn.session, coach)
    subject = subject_of(id_of(coach))
    agenda.cancel(turn.session, subject=subject, kinds=[DIGEST])
    if settings.digest_at is None:
        return
    zone = zone_of_coach(turn.session, coach) or "UTC"
    day = turn.now.astimezone(ZoneInfo(zone)).date()
    while True:
        due = instants.local_instant(day, settings.digest_at, zone)
        if due > turn.now:
            row = agenda.put(turn.session, agenda.Named(subject, day, DIGEST), due_at=due)
            if row.status == "waiting":
                return
        day += timedelta(days=1)


def send(turn: Turn, duty: AgendaRow) -> None:
    """The hour has come: tell what there is to tell, and look forward to tomorrow."""
    coach = get_person(turn.session, Subject.COACH.of(duty))
    settings = coach_settings_of(turn.session, coach)
    if settings.digest_at is None:
        return
    since = max(settings.digest_sent_at or turn.now - FIRST_BACK, turn.now - AT_MOST_BACK)
    sections = _sections(turn, coach, since)
    if sections:
        zone = zone_of_coach(turn.session, coach) or "UTC"
        day = turn.now.astimezone(ZoneInfo(zone)).date()
        row = say_to(turn, coach, flow_digest.digest(day, sections))
        for note in held_notes(turn.session, coach):
            if is_chatter(note.said):
                continue  # comes with the next words
            note.outbox_id = id_of(row)
    settings.digest_sent_at = turn.now
    schedule(turn, coach)


def _sections(turn: Turn, coach: Person, since: datetime) -> list[Section]:
    everybody = load_roster_rows(turn, athletes_seen_by(turn.session, coach))
    ranked = sorted(
        (
            (standing(seen, turn.context, zone_of_coach(turn.session, coach)), seen)
            for seen in everybody
        ),
        key=lambda pair: (pair[0].rank, pair[0].order),
    )
    needs = [
        f"- {_name(coach, seen)}: {found.state}"
        for found, seen in ranked
        if found.rank <= NEEDS_THE_COACH
    ]
    alerts = _alerts(turn.session, coach, everybody, since)
    stage = [
        flow_digest.today_line(
            seen.person.first_name, seen.event.kind, self_coached=seen.profile.person_id == coach.id
        )
        for seen in everybody
        if seen.event is not None and seen.days_out == 0
    ]
    changed = _changed(turn.session, coach, everybody, since)
    came = _who_checked_in(turn.session, everybody, since)
    in_names = [_name(coach, seen) for seen in everybody if seen.profile.person_id in came]
    waited_for = [_name(coach, seen) for found, seen in ranked if found.rank == ASKED]
    seen_of = {seen.profile.person_id for seen in everybody}
    notes = [
        flow_digest.note_line(note.text)
        for note in notes_since(turn.session, coach, since)
        if note.athlete_id in seen_of and not is_chatter(note.said)
    ]
    sections: list[tuple[str, list[str]]] = [
        (flow_digest.needs_you(len(needs)), needs),
        (flow_digest.alerts(len(alerts)), alerts),
        (flow_digest.today(), stage),
        (flow_digest.changed(len(changed)), changed),
        (flow_digest.checked_in(len(in_names)), [flow_digest.names(in_names)] if in_names else []),
        (
            flow_digest.not_yet(len(waited_for)),
            [flow_digest.names(waited_for)] if waited_for else [],
        ),
        (flow_digest.notes(len(notes)), notes),
    ]
    return [(heading, lines) for heading, lines in sections if lines]


def _alerts(
    session: Session, coach: Person, everybody: Sequence[RosterRow], since: datetime
) -> list[str]:
    """A line for each warning and caution, and who has seen to it; worse ones stand for lesser."""
    of = {seen.profile.person_id: seen for seen in everybody}
    query = (
        select(AlertRow)
        .where(
            col(AlertRow.athlete_id).in_(of),
            AlertRow.opened_at > since,
            AlertRow.level != Level.ADVISORY.value,
        )
        .order_by(col(AlertRow.opened_at), col(AlertRow.id))
    )
    lines = []
    for row in session.exec(query):
        if row.acknowledged_at is not None and row.acknowledged_by is None:
            continue
        seen = of[row.athlete_id]
        what = cause(
            row.flag, row.facts,
            name="" if row.athlete_id == coach.id else seen.person.first_name,
            weight_unit=seen.profile.weight_unit, volume_unit=seen.profile.volume_unit,
        )  # fmt: skip
        end = (
            settled_line(session, row, coach)
            if row.acknowledged_by is not None
            else flow_digest.not_acknowledged()
        )
        level = LEVEL_WORDS[Level(row.level)]
        lines.append(flow_digest.alert_line(_name(coach, seen), level, what, end))
    return lines


def _changed(
    session: Session, coach: Person, everybody: Sequence[RosterRow], since: datetime
) -> list[str]:
    """A line for each figure that was changed from the plan, with the reason that was given."""
    of = {seen.profile.person_id: seen for seen in everybody}
    query = (
        select(DecisionRow)
        .where(
            col(DecisionRow.athlete_id).in_(of),
            DecisionRow.made_at > since,
            DecisionRow.outcome == "adjusted",
            DecisionRow.status != DecisionStatus.REPLACED,
        )
        .order_by(col(DecisionRow.made_at))
    )
    lines = []
    for row in session.exec(query):
        seen = of[row.athlete_id]
        what = _outcome(row)
        self_coached = seen.profile.person_id == coach.id
        decision = decision_of(row)
        why = reason(
            decision, seen.profile.weight_unit, seen.profile.volume_unit, self_coached=self_coached
        )
        lines.append(
            flow_digest.changed_line(_name(coach, seen), what, why, self_coached=self_coached)
        )
    return lines


def _outcome(row: DecisionRow) -> str:
    assert row.carb_g is not None
    if row.status == DecisionStatus.LAPSED and is_small_step(row):
        return flow_digest.small_step_stands(row.carb_g, default_carb_g(row), row.sets_date)
    if row.status in (DecisionStatus.LAPSED, DecisionStatus.PLAN_KEPT, DecisionStatus.CLOSED):
        return flow_digest.not_taken(row.carb_g, row.sets_date)
    if row.status == DecisionStatus.OTHER_FIGURE:
        return flow_digest.other_figure(row.carb_g, row.sets_date)
    return coach_roster.decided(
        outcome_now(row.outcome, row.status), row.carb_g, row.planned_carb_g, row.sets_date,
    )  # fmt: skip


def _who_checked_in(session: Session, everybody: Sequence[RosterRow], since: datetime) -> set[int]:
    query = select(CheckInRow.athlete_id).where(
        col(CheckInRow.athlete_id).in_([seen.profile.person_id for seen in everybody]),
        CheckInRow.answered_at > since,
    )
    return set(session.exec(query))


def _name(coach: Person, seen: RosterRow) -> str:
    self_coached = seen.profile.person_id == coach.id
    return flow_digest.you() if self_coached else coach_roster.short(seen.person.first_name)
