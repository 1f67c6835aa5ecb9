"""A coach taps what they see of an athlete's morning; the morning is decided again with it."""

from __future__ import annotations

from datetime import date, timedelta
from functools import partial

from sqlmodel import Session, col, select

from bot.core.chat.outbox import Button, Delivery, Shown, Topic
from bot.core.timing import instants
from bot.core.turn import OnAthlete, Turn
from bot.decision import deciding, to_athlete
from bot.decision.buttons import EYE, Looked, Morning, Sharp
from bot.decision.eye import view, words
from bot.decision.signoff.signoff import LATEST
from bot.people.changes import Change
from bot.people.people import athletes_seen_by, get_person, local_date, name_of, record
from bot.people.telling import answer, edit_to, rewrite, say_to, speaking_to
from bot.store.base import id_of
from bot.store.tables.coach import CoachLookRow
from bot.store.tables.people import AthleteProfile, Person
from bot.store.tables.photos import PhotoRow
from bot.store.tables.traffic import OutboxRow, TopicKind
from bot.store.tables.week import CheckInRow, DecisionRow, DecisionStatus
from bot.week.cases import default_carb_g, look_row
from bot.week.load import HISTORY_DAYS, checkin_row, current_week, day_set

SCORES = range(1, 6)


def show(turn: OnAthlete, pressed: Morning) -> None:
    """A morning, in the place of the message that was tapped."""
    day = _morning(turn, pressed.day)
    if day is not None:
        rewrite(turn, *view.morning(turn, turn.person, turn.profile, day))


def look_tapped(turn: OnAthlete, pressed: Looked) -> None:
    """What this coach sees, in the place of an earlier word."""
    day, look = _morning(turn, pressed.day), pressed.look.value
    if day is None:
        return
    row = look_row(turn.session, turn.profile.person_id, day, id_of(turn.person))
    if row is None:
        row = CoachLookRow(
            athlete_id=turn.profile.person_id, date=day, by_id=id_of(turn.person),
            look=look, at=turn.now,
        )  # fmt: skip
    elif row.look == look:
        show(turn, Morning(day))
        return
    row.look = look
    _keep(turn, row)


def sharpness_tapped(turn: OnAthlete, pressed: Sharp) -> None:
    """Beside a look; the same once more takes it away."""
    day, score = _morning(turn, pressed.day), pressed.score
    row = None if day is None else look_row(
        turn.session, turn.profile.person_id, day, id_of(turn.person)
    )  # fmt: skip
    if day is None or row is None or score not in SCORES:
        if day is not None:
            show(turn, Morning(day))
        return
    row.sharpness = None if row.sharpness == score else score
    _keep(turn, row)


def take_back(turn: OnAthlete, pressed: Morning) -> None:
    """As if this coach had not looked."""
    day = _morning(turn, pressed.day)
    if day is None:
        return
    row = look_row(turn.session, turn.profile.person_id, day, id_of(turn.person))
    if row is None:
        answer(turn, words.nothing_to_take_back())
        rewrite(turn, *view.morning(turn, turn.person, turn.profile, day))
        return
    answer(turn, words.taken_back())
    turn.session.delete(row)
    turn.session.flush()
    record(turn, turn.profile.person_id, by=turn.person.id, what=Change.COACH_LOOK_TAKEN_BACK(
        day=day.isoformat(), look=row.look, sharpness=row.sharpness,
    ))  # fmt: skip
    _again(turn, day)


def _keep(turn: OnAthlete, row: CoachLookRow) -> None:
    row.at = turn.now
    turn.session.add(row)
    entry = Change.COACH_LOOK(day=row.date.isoformat(), look=row.look, sharpness=row.sharpness)
    record(turn, row.athlete_id, entry, by=turn.person.id)
    _again(turn, row.date)


def _again(turn: OnAthlete, day: date) -> None:
    """Decide with what is seen now, as far as that day is open, and show the morning with it."""
    came = decided_with_it(turn, turn.profile, day)
    rewrite(turn, *view.morning(turn, turn.person, turn.profile, day, came=came))


def decided_with_it(turn: OnAthlete, profile: AthleteProfile, day: date) -> str:
    """Decide that morning again where its figure can still change; what came of it, in words."""
    row = checkin_row(turn.session, profile.person_id, day)
    why = _closed(turn, profile, day, row)
    if row is None or why:
        return words.not_open(why or "no-answers")
    before = deciding.latest_decision(turn.session, profile.person_id)
    stood = to_athlete.stands(before) if before is not None else None
    with speaking_to(get_person(turn.session, profile.person_id)):
        lead = words.athlete_lead(turn.person.first_name)
    waiting = before is not None and before.status == DecisionStatus.WAITING
    answer_by = before.sign_off_due_at if before is not None and waiting else None
    on = deciding.Occasion(lead, answer_by=answer_by)
    deciding.decide_with(turn, profile, row, on, always=False)
    return _came(stood, deciding.latest_decision(turn.session, profile.person_id))


def _closed(turn: Turn, profile: AthleteProfile, day: date, row: CheckInRow | None) -> str:
    """Why a look at that morning moves no figure any more; "" where it may."""
    if day != local_date(profile, turn.context):
        return "past"
    if row is None:
        return "no-answers"
    week = current_week(turn.session, profile)
    if week is None:
        return "no-plan"
    if profile.frozen_at is not None:
        return "frozen"
    decided = deciding.latest_decision(turn.session, profile.person_id)
    sets_date = decided.sets_date if decided is not None and decided.checkin_id == row.id else day
    standing = day_set(turn.session, profile.person_id, sets_date)
    if standing is not None and standing.by == "coach":
        return "by-hand"
    latest = instants.local_instant(sets_date, LATEST, profile.zone or "UTC")
    return "late" if turn.now >= latest else ""


def _came(stood: float | None, after: DecisionRow | None) -> str:
    """`stood`: the figure that was in force (g)."""
    if after is None or after.carb_g is None:
        return words.decided_nothing()
    if after.status == DecisionStatus.WAITING:
        return words.proposed(after.carb_g, default_carb_g(after), after.sets_date)
    if stood is None or abs(stood - after.carb_g) < 0.5:
        return words.stays(after.carb_g, after.sets_date)
    return words.moved(stood, after.carb_g, after.sets_date)


def _morning(turn: OnAthlete, named: date | None) -> date | None:
    """The morning that a button names, today's where it names none; else it is answered why not."""
    if turn.self_coached:
        answer(turn, words.not_on_yourself())
        return None
    today = local_date(turn.profile, turn.context)
    day = named or today
    if today - timedelta(days=HISTORY_DAYS) <= day <= today:
        return day
    answer(turn, words.no_such_morning())
    return None


#: Photos that came within this are one morning's, of whatever zones: asked of in one message.
ONE_MORNING = timedelta(hours=6)
MOST_NAMED = 60


def ask(turn: Turn, coach: Person, profile: AthleteProfile, day: date) -> None:
    """One quiet line with a tap for each look. Where others' photos have come before on the same
    morning, that line names them all instead, and a name opens the looks; nothing where it is said.
    """
    number = profile.person_id
    if look_row(turn.session, number, day, id_of(coach)) is not None:
        return
    asked = _asked_before(turn, coach)
    waiting = _waiting(turn, coach)
    if asked is None or len(waiting) < 2:
        name = name_of(turn.session, number)
        say_to(
            turn, coach,
            lambda: words.under_photos(name, view.day_words(turn.session, profile, day)),
            buttons=lambda: view.looks(number, day),
            how=Delivery(
                silent=True, topic=Topic(TopicKind.LOOK_ASKED, id_of(coach), number, day),
                dedupe=f"eye:{coach.id}:{number}:{day.isoformat()}",
            ),
        )  # fmt: skip
        return
    names = [
        Button(name_of(turn.session, athlete), EYE(athlete, on))
        for athlete, on in waiting[:MOST_NAMED]
    ]
    topic = Topic(TopicKind.LOOKS_GATHERED, id_of(coach), id_of(asked))
    edit_to(
        turn, coach, Shown(coach.chat_id, outbox_id=id_of(asked), topic=topic),
        partial(words.under_photos_of, len(waiting)),
        buttons=[names[at : at + 3] for at in range(0, len(names), 3)],
    )  # fmt: skip


def _asked_before(turn: Turn, coach: Person) -> OutboxRow | None:
    """The message of this morning in which this coach has been asked already."""
    query = select(OutboxRow).where(
        OutboxRow.topic == TopicKind.LOOK_ASKED,
        OutboxRow.topic_about == coach.id,
        col(OutboxRow.created_at) > turn.now - ONE_MORNING,
    )
    return turn.session.exec(query.order_by(col(OutboxRow.id))).first()


def _waiting(turn: Turn, coach: Person) -> list[tuple[int, date]]:
    """Whose photos have come on this morning and have had no look of this coach's, oldest first."""
    theirs = [profile.person_id for profile in athletes_seen_by(turn.session, coach)]
    came = select(col(PhotoRow.athlete_id), col(PhotoRow.date)).where(
        col(PhotoRow.athlete_id).in_(theirs),
        col(PhotoRow.date) >= (turn.now - ONE_MORNING).date() - timedelta(days=1),
        col(PhotoRow.forwarded_at) > turn.now - ONE_MORNING,
    )
    rows = turn.session.exec(came.order_by(col(PhotoRow.forwarded_at), col(PhotoRow.id))).all()
    mornings = dict.fromkeys((athlete, day) for athlete, day in rows)
    return [one for one in mornings if not _seen(turn.session, coach, *one)]


def _seen(session: Session, coach: Person, athlete_id: int, day: date) -> bool:
    return look_row(session, athlete_id, day, id_of(coach)) is not None
