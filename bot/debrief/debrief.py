"""The switch from the week to looking back on it: for the coach whole, for the athlete in short."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from datetime import time, timedelta
from functools import partial
from typing import NamedTuple

from sqlmodel import Session, col, func, select

from bot.alerts import notes
from bot.core.chat.cards import LOOK, PICTURE
from bot.core.chat.outbox import Button
from bot.core.timing import agenda, instants
from bot.core.timing.agenda import Several
from bot.core.turn import OnAthlete, Turn
from bot.debrief import words, words_deeper
from bot.debrief.buttons import CLOSER, NOTE
from bot.debrief.flow import COACH_NOTE, OWN_WORD
from bot.debrief.flow_after_show import AFTER_SHOW as LIGHTER_MORNING
from bot.debrief.past_week import (
    BehindWeek,
    debrief_row,
    kept_of,
    newest_behind,
    next_week_runs,
    week_behind,
)
from bot.dialogue import asking
from bot.dialogue.flow import Answers, Flow
from bot.people.changes import Change, Kind
from bot.people.details import Event
from bot.people.people import get_person, is_first_coach, local_date, name_of, profile_of, record
from bot.people.telling import say_to, speaking_to
from bot.store.base import id_of
from bot.store.tables.people import AthleteProfile, AthleteStatus, HistoryRow, OpenQuestion, Person
from bot.store.tables.traffic import AgendaRow
from bot.store.tables.week import AlertRow, EventRow
from bot.week.cases import decision_of, stood
from bot.week.load import checkin_row
from bot.week.prompts import subject
from bot.words import common
from engine.evidence.planning.health import AFTER_DAYS
from engine.safety import Level
from engine.values.plan import PLAN_DAYS

LOOK_BACK = Several("debrief")
LEAVE_IT = LOOK_BACK("leave")
#: A question that was left open so long would only swallow what is meant for something else.
OPEN_FOR = timedelta(days=3)
#: After the lighter mornings, where there are any; after a trial, once the coach has had a day.
AFTER_SHOW, AFTER_TRIAL = int(AFTER_DAYS.value) + 1, 2
EARLIER_SHOWN = 2
_MIDNIGHT = time(0, 0)


def schedule(turn: Turn, profile: AthleteProfile, event: EventRow) -> None:
    """Once the week is over: when it is looked back on."""
    day = event.day + timedelta(days=AFTER_TRIAL if event.kind == "trial" else AFTER_SHOW)
    agenda.put(
        turn.session, agenda.Named(subject(profile), day, LOOK_BACK),
        due_at=instants.local_instant(day, profile.prompt_time, profile.zone or event.zone),
        payload={"event": event.id},
    )  # fmt: skip


def due(turn: Turn, duty: AgendaRow) -> None:
    """The coach reads the debrief; the athlete a short one, with one question."""
    if duty.kind == LEAVE_IT:
        _close(turn, turn.session.get(OpenQuestion, duty.payload["question"]))
        return
    event = turn.session.get(EventRow, duty.payload["event"])
    profile = profile_of(turn.session, event.athlete_id) if event is not None else None
    if event is None or profile is None or profile.status == AthleteStatus.ENDED:
        return
    found = week_behind(turn.session, profile, event)
    row = debrief_row(turn.session, event)
    if found is None or row.sent_at is not None:
        return
    row.sent_at = turn.now
    record(turn, profile.person_id, Change.DEBRIEF(event=id_of(event)), by=None)
    coach = get_person(turn.session, profile.coach_id)
    with speaking_to(coach):
        _tell_coach(turn, coach, profile, found)
    _ask_athlete(turn, profile, found)


def show(turn: OnAthlete) -> None:
    """The card's button: the newest week that lies behind."""
    found = newest_asked(turn)
    if found is not None:
        _tell_coach(turn, turn.person, turn.profile, found)


def newest_asked(turn: OnAthlete) -> BehindWeek | None:
    """A button's answer: the newest week that lies behind; that there is none yet is said."""
    found = newest_behind(turn, turn.profile)
    if found is None:
        name = name_of(turn.session, turn.profile.person_id)
        say_to(turn, turn.person, words.none_yet(name, self_coached=turn.self_coached))
    return found


def ask_note(turn: OnAthlete) -> None:
    """The button under a debrief."""
    ask(turn, COACH_NOTE)


def ask(turn: OnAthlete, flow: Flow) -> None:
    """One question about the newest week; its answer goes to `keep`."""
    found = newest_asked(turn)
    if found is not None:
        name = name_of(turn.session, turn.profile.person_id)
        asking.open_question(turn, turn.person, flow, turn.profile.person_id, {
            "_event": found.event.id, "_name": name, "_own": turn.self_coached,
        })  # fmt: skip


class Place(NamedTuple):
    """Where an answer goes: a column of the week's row, a kind of history entry, what is said."""

    column: str
    change: Kind[..., Event]
    said: Callable[[], str]


KEEPS_NOTE = Place("coach_note", Change.DEBRIEF_NOTE, words.note_kept)


def keep(
    place: Place, turn: Turn, coach: Person, profile: AthleteProfile, answers: Answers
) -> None:
    """What the coach has answered, with the week."""
    event = turn.session.get(EventRow, answers["_event"])
    if event is None or event.athlete_id != profile.person_id:
        return
    row = debrief_row(turn.session, event)
    setattr(row, place.column, answers["text"])
    record(turn, profile.person_id, place.change(event=id_of(event)), by=coach.id)
    say_to(turn, coach, place.said())


def word_given(turn: Turn, person: Person, question: OpenQuestion) -> None:
    """The athlete's own word, kept with the week and passed on silently."""
    profile = profile_of(turn.session, person.id)
    event = turn.session.get(EventRow, question.answers["_event"])
    if profile is None or event is None or event.athlete_id != person.id:
        return
    said = question.answers["text"]
    if said is None:
        say_to(turn, person, words.skipped())
        return
    row = debrief_row(turn.session, event)
    row.athlete_said = said
    record(turn, profile.person_id, Change.DEBRIEF_WORD(event=id_of(event)), by=person.id)
    coach = get_person(turn.session, profile.coach_id)
    say_to(turn, person, words.thanks(coach.first_name))
    told = partial(words.coach_told, person.first_name, said)
    notes.tell(turn, coach, profile.person_id, told)


def before_draft(turn: Turn, coach: Person, profile: AthleteProfile) -> None:
    """What the last week taught, said before the next plan is drafted."""
    found = newest_behind(turn, profile)
    if found is None:
        return
    text = words.before_draft(
        found.event.kind,
        found.event.day,
        found.debrief.lessons,
        debrief_row(turn.session, found.event).coach_note,
    )
    say_to(turn, coach, text)


def _tell_coach(turn: Turn, coach: Person, profile: AthleteProfile, found: BehindWeek) -> None:
    event, number = found.event, profile.person_id
    keys: list[Sequence[Button]] = []
    if event.look is None and is_first_coach(coach, profile):
        keys.append(
            [Button(words.look_button(look), LOOK(id_of(event), look)) for look in words.LOOKS]
        )
    keys.append(
        [
            Button(words_deeper.button(), CLOSER(number)),
            Button(words.note_button(), NOTE(number)),
            Button(common.picture_button(), PICTURE(number)),
        ]
    )
    text = _text(turn.session, coach, profile, found)
    say_to(turn, coach, text, buttons=keys)


def _text(session: Session, coach: Person, profile: AthleteProfile, found: BehindWeek) -> str:
    days = [
        words.day_line(day, found.why.get(day.days_out, ""), profile.weight_unit)
        for day in found.days
    ]
    head, *rest = paragraphs(session, coach, profile, found)
    return "\n\n".join([head, "\n".join([words.columns(), *days]), *rest])


def paragraphs(
    session: Session,
    coach: Person,
    profile: AthleteProfile,
    found: BehindWeek,
    *,
    to_hand_over: bool = False,
) -> list[str]:
    """What is said of the week beside its days, the heading first.

    What is to be handed over is without the coach's own note, which nobody else is to read.
    """
    event = found.event
    name, self_coached = name_of(session, profile.person_id), coach.id == profile.person_id
    row = kept_of(session, event)
    parts = [
        words.head(name, event.kind, event.day, self_coached=self_coached),
        "\n".join(_in_sum(session, profile, found, to_hand_over=to_hand_over)),
        words_deeper.kept_lines(
            found.days if to_hand_over else (), placing=row.placing if row else "", note=""
        ),
        words.forecast_score(_only_shown(session, event)),
        words.athletes_word(name, row.athlete_said) if row and row.athlete_said else "",
        words.to_carry(found.debrief.lessons),
        words.own_note(row.coach_note) if row and row.coach_note and not to_hand_over else "",
        words.rests_on(),
    ]
    return [part for part in parts if part]


def _in_sum(
    session: Session, profile: AthleteProfile, found: BehindWeek, *, to_hand_over: bool
) -> list[str]:
    """A line for each thing that can be said of the week as a whole."""
    summed, event, unit = found.debrief, found.event, profile.weight_unit
    lines = [words.load_line(summed, profile.body_mass_kg or 1)]
    if summed.weight_change_kg is not None:
        lines.append(words.weight_line(summed.weight_change_kg, unit))
    looked = _look_check(session, event)
    if looked is not None:
        detail = Change.LOOK_CHECK.of(looked)
        lines.append(words.day_itself(detail["fullness"], detail["sharpness"], detail["gut"]))
    lines.append(words.look_line(event.look, to_hand_over=to_hand_over))
    after = _weight_after(session, found)
    if after is not None:
        lines.append(words.afterwards(*after, unit))
    alerts = _alerts(session, event)
    if alerts:
        lines.append(words.alerts_line(alerts, to_hand_over=to_hand_over))
    for number, before in enumerate(found.earlier[:EARLIER_SHOWN]):
        per_kg = before.load_g_a_day / (profile.body_mass_kg or 1)
        lines.append(
            words.earlier_line(before.kind, before.day, per_kg, before.look, newest=not number)
        )
    return lines


def _only_shown(session: Session, event: EventRow) -> list[tuple[int, float, float]]:
    """What the forecast would have proposed while it only showed: days out, decided, proposed (g)."""
    found = []
    for row in stood(session, event):
        decision = decision_of(row)
        would_g = decision.trace.would_g
        if would_g is not None and row.carb_g is not None:
            found.append((decision.days_out, row.carb_g, would_g))
    return found


def _look_check(session: Session, event: EventRow) -> HistoryRow | None:
    query = select(HistoryRow).where(
        HistoryRow.athlete_id == event.athlete_id,
        HistoryRow.what == Change.LOOK_CHECK,
        HistoryRow.at >= instants.local_instant(event.day, _MIDNIGHT, event.zone),
    )
    return session.exec(query.order_by(col(HistoryRow.id))).first()


def _weight_after(session: Session, found: BehindWeek) -> tuple[float, int] | None:
    """How far the weight had come by the last lighter morning on which it was told, and which."""
    last = found.days[-1].morning if found.days else None
    if last is None or last.weight_kg is None:
        return None
    for number in range(int(AFTER_DAYS.value), 0, -1):
        row = checkin_row(session, found.event.athlete_id, found.event.day + timedelta(days=number))
        if row is not None and row.weight_kg is not None:
            return row.weight_kg - last.weight_kg, number
    return None


def _alerts(session: Session, event: EventRow) -> int:
    query = select(func.count()).where(
        AlertRow.athlete_id == event.athlete_id,
        AlertRow.level != Level.ADVISORY.value,
        AlertRow.date >= event.day - timedelta(days=max(PLAN_DAYS)),
        AlertRow.date <= event.day + timedelta(days=int(AFTER_DAYS.value)),
    )
    return session.exec(query).one()


def _ask_athlete(turn: Turn, profile: AthleteProfile, found: BehindWeek) -> None:
    """One question, unless something else matters more: a stop, or the next week's own mornings."""
    if profile.coach_id == profile.person_id or profile.status != AthleteStatus.ACTIVE:
        return
    if profile.frozen_at is not None or next_week_runs(turn, profile):
        return
    athlete, coach = (get_person(turn.session, id) for id in (profile.person_id, profile.coach_id))
    for left_open in asking.open_questions(
        turn.session, athlete, flow=LIGHTER_MORNING.id, subject_id=profile.person_id
    ):
        _close(turn, left_open)
    question = asking.open_question(turn, athlete, OWN_WORD, profile.person_id, {
        "_event": found.event.id, "_coach": coach.first_name, "_kind": found.event.kind,
        "_mornings": found.debrief.mornings, "_days": len(found.days),
        "_eaten": found.debrief.eaten_share,
    })  # fmt: skip
    agenda.put(
        turn.session, agenda.Named(subject(profile), local_date(profile, turn.context), LEAVE_IT),
        due_at=turn.now + OPEN_FOR, payload={"question": question.id},
    )  # fmt: skip


def _close(turn: Turn, question: OpenQuestion | None) -> None:
    if question is not None and question.closed_at is None:
        asking.close(turn, question)
