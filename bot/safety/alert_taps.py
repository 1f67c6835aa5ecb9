"""What is done about an alert: acknowledging it, lifting a freeze or setting one, listing them."""

from __future__ import annotations

from functools import partial

from sqlmodel import Session, col, select

from bot.alerts import words, words_after
from bot.alerts.alerts import CORRECTED, open_alerts, to_acknowledge
from bot.alerts.buttons import ALERT, Do, OnAlert
from bot.alerts.delivery import (
    WITHIN,
    alert_text,
    latest_message,
    settle_message,
    subject_of,
    told_of,
)
from bot.alerts.words_athlete import cause
from bot.core.chat.outbox import Button, Buttons, Delivery
from bot.core.timing import agenda
from bot.core.turn import Act, ChatTurn, OnAthlete, Turn
from bot.decision import deciding
from bot.dialogue.asking import open_questions
from bot.dialogue.flow import said
from bot.people.changes import Change
from bot.people.coach_settings import moment_for
from bot.people.people import (
    athletes_of,
    athletes_seen_by,
    covered,
    get_person,
    given_to,
    is_own_coach,
    local_date,
    name_of,
    own_athlete,
    profile_of,
    record,
)
from bot.people.telling import answer, ask_sure, rewrite, say_to, tell_athlete
from bot.safety.buttons import LIFT, LIFT_NO, LIFT_YES
from bot.safety.flow_symptom import ASKED_ABOUT_SIGNS
from bot.store.base import id_of
from bot.store.tables.people import AthleteProfile, Person
from bot.store.tables.week import AlertRow
from bot.week.load import current_week, target_in_force
from bot.words import common, figures
from bot.words.languages import mark
from engine.safety import Level
from engine.written.late import Late

FROZEN_BY_HAND = "coach"


def alert_tapped(turn: Act, pressed: OnAlert) -> None:
    """Somebody has seen to it."""
    row = turn.session.get(AlertRow, pressed.alert)
    if row is None or not _may(turn.session, turn.person, row):
        answer(turn, words_after.not_your_alert())
        return
    if row.acknowledged_at is not None:
        _say_settled(turn, row)
        return
    _acknowledge(turn, turn.person, row)


def _say_settled(turn: Act, row: AlertRow) -> None:
    """What became of it: to whoever was told of it, and in full only while the coaching stands."""
    profile = profile_of(turn.session, row.athlete_id)
    if profile is None or profile.coach_id != row.coach_id:
        answer(turn, common.coaching_over())
    elif not _was_told(turn.session, turn.person, row):
        answer(turn, words_after.not_your_alert())
    else:
        said = _settled_already(turn.session, row, turn.person)
        answer(turn, said)
        rewrite(turn, alert_text(turn.session, row, turn.person, settled=said))


def _was_told(session: Session, person: Person, row: AlertRow) -> bool:
    """Not whoever came to be a second coach or the second contact after it had been seen to."""
    return person.id == row.coach_id or latest_message(session, row, person) is not None


def _settled_already(session: Session, row: AlertRow, reader: Person) -> str:
    """What became of an alert that is no longer open."""
    by = name_of(session, row.acknowledged_by) if row.acknowledged_by else None
    if by is None and CORRECTED in row.facts:
        return words_after.corrected_already()
    return words_after.acknowledged_already(by, _when(session, row, reader))


def list_alerts(turn: Act) -> None:
    """/alerts: each open alert once more, with its button; for a coach or a second contact."""
    rows = open_to(turn.session, turn.person)
    head = words_after.how_many_open(len(rows)) if rows else words_after.none_open()
    say_to(turn, turn.person, head)
    for row in rows:
        say_to(
            turn,
            turn.person,
            alert_text(turn.session, row, turn.person),
            buttons=[[Button(words_after.acknowledge_button(), ALERT(Do.ACKNOWLEDGE, id_of(row)))]],
        )


def open_to(session: Session, person: Person) -> list[AlertRow]:
    """Open alerts that this person is told of."""
    return [
        row
        for profile in _whose(session, person)
        for row in open_alerts(session, profile.person_id)
        if person.id in {one.id for one in told_of(session, row)}
    ]


def _whose(session: Session, person: Person) -> list[AthleteProfile]:
    """Athletes of whom this person may be told: their own, and those of coaches whom they back."""
    coaches = select(Person).where(Person.second_contact_id == person.id)
    found = {
        profile.person_id: profile
        for coach in (person, *session.exec(coaches.order_by(col(Person.id))))
        for profile in athletes_of(session, coach)
    }
    for given in given_to(session, person):
        for profile in covered(session, given):
            found.setdefault(profile.person_id, profile)
    return list(found.values())


def freeze(turn: OnAthlete) -> None:
    """The coach stops all adjusting by hand."""
    if turn.profile.frozen_at is None:
        turn.profile.frozen_at, turn.profile.frozen_because = turn.now, FROZEN_BY_HAND
        record(turn, turn.profile.person_id, Change.FROZEN(), by=turn.person.id)
        told = partial(words_after.athlete_told_frozen, turn.person.first_name)
        tell_athlete(turn, turn.person, turn.profile, told)
    name = name_of(turn.session, turn.profile.person_id)
    said = words_after.frozen_by_hand(name, self_coached=turn.self_coached)
    rewrite(turn, said, [[lift_button(turn.profile.person_id)]])


def ask_to_lift(turn: OnAthlete) -> None:
    """Lifting takes a second tap, on a question that says what it means."""
    if turn.profile.frozen_at is None:
        rewrite(turn, words_after.not_frozen())
        return
    if waits := _lift_waits(turn.session, turn.profile):
        say_to(turn, turn.person, waits)
        return
    name = name_of(turn.session, turn.profile.person_id)
    text = words_after.lift_sure(name, self_coached=turn.self_coached)
    yes = Button(words_after.lift_yes_button(), LIFT_YES(turn.profile.person_id))
    no = Button(words_after.lift_no_button(), LIFT_NO(turn.profile.person_id))
    ask_sure(turn, turn.person, text, yes, no)


def _lift_waits(session: Session, profile: AthleteProfile) -> str:
    """What is still open, so that the freeze cannot be lifted yet; "" where nothing is."""
    name = name_of(session, profile.person_id)
    if still := to_acknowledge(session, profile.person_id):
        lines = [
            words_after.open_line(
                words.level_word(row.flag, Level(row.level)),
                cause(
                    row.flag, row.facts, name="" if is_own_coach(profile) else name,
                    weight_unit=profile.weight_unit, volume_unit=profile.volume_unit,
                ),
            )
            for row in still
        ]  # fmt: skip
        return words_after.lift_waits("\n".join(lines))
    for question in open_questions(session, get_person(session, profile.person_id)):
        if question.flow in ASKED_ABOUT_SIGNS:
            return words_after.lift_waits_for_answer(name, str(question.answers["_words"]))
    return ""


def lift(turn: OnAthlete) -> None:
    """Adjusting goes on from here."""
    if turn.profile.frozen_at is None:
        rewrite(turn, words_after.not_frozen())
        return
    if waits := _lift_waits(turn.session, turn.profile):
        rewrite(turn, waits)
        return
    turn.profile.frozen_at, turn.profile.frozen_because = None, ""
    record(turn, turn.profile.person_id, Change.FREEZE_LIFTED(), by=turn.person.id)
    name = name_of(turn.session, turn.profile.person_id)
    rewrite(turn, words_after.lifted(name, self_coached=turn.self_coached))
    if not _has_target_today(turn, turn.profile):
        told = partial(words_after.athlete_told_lifted, turn.person.first_name)
        tell_athlete(turn, turn.person, turn.profile, told)
    deciding.redecide(turn, turn.profile, because="lifted")


def keep_frozen(turn: OnAthlete) -> None:
    rewrite(turn, words_after.kept_frozen())


def lift_button(athlete_id: int) -> Button:
    return Button(words_after.lift_button(), LIFT(athlete_id))


def _has_target_today(turn: Turn, profile: AthleteProfile) -> bool:
    week = current_week(turn.session, profile)
    today = local_date(profile, turn.context)
    return week is not None and target_in_force(turn.session, week, today) is not None


def _may(session: Session, person: Person, row: AlertRow) -> bool:
    return person.id in {one.id for one in told_of(session, row)}


def _acknowledge(turn: ChatTurn, person: Person, row: AlertRow) -> None:
    row.acknowledged_at, row.acknowledged_by = turn.now, person.id
    _with_it(turn.session, row)
    agenda.cancel(turn.session, subject=subject_of(row))
    entry = Change.ALERT_ACKNOWLEDGED(alert=id_of(row), flag=row.flag, level=row.level)
    record(turn, row.athlete_id, entry, by=person.id)
    answer(turn, words_after.acknowledged_tap())
    buttons = _after(turn.session, person, row)
    latest = latest_message(turn.session, row, person)
    settle_message(
        turn, row, person, settled=partial(settled_line, turn.session, row, person), buttons=buttons
    )
    if latest is None or latest.message_id != turn.incoming.message_id:
        rewrite(turn, settled_text(turn.session, row, person), buttons)
    _tell_others(turn, person, row)


def _with_it(session: Session, row: AlertRow) -> None:
    """What was told in the same message is acknowledged with it."""
    within = select(AlertRow).where(
        AlertRow.athlete_id == row.athlete_id, AlertRow.date == row.date
    )
    for other in session.exec(within).all():
        if other.facts.get(WITHIN) == row.id:
            other.acknowledged_by = row.acknowledged_by


def _tell_others(turn: Turn, person: Person, row: AlertRow) -> None:
    athlete = get_person(turn.session, row.athlete_id)
    coach = get_person(turn.session, row.coach_id)
    for other in told_of(turn.session, row):
        if other.id == person.id:
            continue
        settle_message(turn, row, other, settled=partial(settled_line, turn.session, row, other))
        say_to(
            turn,
            other,
            partial(
                words_after.acknowledged_elsewhere,
                person.first_name,
                athlete.first_name,
                self_coached=other.id == athlete.id,
            ),
            buttons=partial(_after, turn.session, other, row),
        )
    if athlete.id not in (person.id, coach.id):
        say_to(
            turn,
            athlete,
            lambda: words_after.athlete_told_acknowledged(person.first_name),
            how=Delivery(silent=row.level != Level.WARNING),
        )


def _after(session: Session, reader: Person, row: AlertRow) -> Buttons:
    """After a warning, the coach can lift the freeze."""
    profile = own_athlete(session, reader, row.athlete_id)
    if profile is None or profile.frozen_at is None or row.level != Level.WARNING:
        return ()
    return [[lift_button(row.athlete_id)]]


def settled_text(session: Session, row: AlertRow, reader: Person) -> str:
    """An acknowledged alert as this reader sees it."""
    return alert_text(session, row, reader, settled=settled_line(session, row, reader))


def settled_line(session: Session, row: AlertRow, reader: Person) -> str:
    """Who acknowledged it, and when."""
    assert row.acknowledged_by is not None
    by = get_person(session, row.acknowledged_by)
    return words_after.acknowledged(by.first_name, _when(session, row, reader))


def _when(session: Session, row: AlertRow, reader: Person) -> str:
    profile = profile_of(session, row.athlete_id)
    assert row.acknowledged_at is not None
    if profile is None:
        return figures.moment_in(row.acknowledged_at, None)
    return moment_for(session, reader, profile, row.acknowledged_at)


#: What is said of an alert that has been seen, and of nothing else.
SEEN_TO = mark(
    "acknowledge, acknowledged, ack, on it, i'm on it, im on it, seen, seen it, calling, calling now"
)
_CALLED = Late(
    r"(?:i(?:['’]ve| have|['’]m)? )?(?:just )?(?:called|rang|phoned|calling|spoke (?:to|with)|"
    r"spoken (?:to|with)|talked (?:to|with)) \w+.*"
    r"|(?:ich )?habe? (?:gerade )?(?:mit )?\w+ (?:gerade )?(?:angerufen|gesprochen|telefoniert).*"
)


def heard(turn: ChatTurn, person: Person) -> bool:
    """False where no alert waits for this coach: then it is a word like any other. A typed word
    acknowledges nothing by itself, because it doesn't say which alert was read.
    """
    plain = " ".join(turn.incoming.text.casefold().split()).strip(" .!")
    if not said(plain, SEEN_TO) and not _CALLED.fullmatch(plain):
        return False
    if not athletes_seen_by(turn.session, person) or not open_to(turn.session, person):
        return False
    list_alerts(turn.by(person))
    return True
