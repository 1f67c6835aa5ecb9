"""A word from the coach to an athlete, and back; which message is answered, what was not sent yet."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import timedelta
from functools import partial

from sqlmodel import Session, col, select

from bot.alerts import notes
from bot.alerts.buttons import ALERT
from bot.core.chat.buttons import CallbackData, card_of
from bot.core.chat.cards import MESSAGE, ROSTER, SIGN, Message
from bot.core.chat.outbox import Button, Buttons, Delivery
from bot.core.timing import agenda
from bot.core.timing.agenda import Subject
from bot.core.turn import Act, Incoming, OnAthlete, Turn
from bot.dialogue import asking
from bot.dialogue.flow import Answers, Step
from bot.direct import words
from bot.direct.buttons import REPLY, To
from bot.direct.flow import PASS_ON, TO_ATHLETE, TO_COACH
from bot.people.changes import Change
from bot.people.people import approvers, get_person, get_profile, name_of, own_athlete, record
from bot.people.telling import say_to
from bot.store.base import id_of
from bot.store.tables.people import AthleteProfile, AthleteStatus, OpenQuestion, Person
from bot.store.tables.traffic import AgendaRow, OutboxRow
from bot.store.tables.week import AlertRow, DecisionRow
from bot.words import common
from bot.words.common import from_athlete
from engine.written.chatter import is_chatter


@dataclass(frozen=True, slots=True)
class Answered:
    """The athlete whom a message of the bot's was about; `said` is what they had written there."""

    athlete_id: int
    said: str = ""


def message_answered(session: Session, person: Person, message_id: int | None) -> OutboxRow | None:
    """The bot's message with this id in the person's chat; None where it is not known any more."""
    if message_id is None:
        return None
    query = (
        select(OutboxRow)
        .where(
            OutboxRow.chat_id == person.chat_id,
            OutboxRow.message_id == message_id,
            OutboxRow.status == "sent",
            col(OutboxRow.edits_outbox_id).is_(None),
            OutboxRow.method != "editMessageText",
        )
        .order_by(col(OutboxRow.id).desc())
    )
    return session.exec(query).first()


def question_first(
    session: Session, person: Person, incoming: Incoming, asked: Sequence[OpenQuestion]
) -> list[OpenQuestion]:
    """The open questions with the one last whose message is answered, as if it had been put last."""
    row = message_answered(session, person, incoming.reply_to)
    meant = [one for one in asked if row is not None and one.outbox_id == row.id]
    return [one for one in asked if one not in meant] + meant


def about_athlete(
    session: Session, coach: Person, message_id: int | None, quoted: str = ""
) -> Answered | None:
    """Whom a message to this coach is about, while they coach them; and what it answers."""
    row = message_answered(session, coach, message_id)
    if row is None:
        return None
    gathered = notes.gathered_in(session, id_of(row))
    named = {note.athlete_id for note in gathered} or _named(session, row)
    if len(named) != 1:
        return None
    (athlete_id,) = named
    if own_athlete(session, coach, athlete_id) is None:
        return None
    said = quoted or "\n".join(_worth_quoting([note.said for note in gathered]))
    if not said and MESSAGE(athlete_id) in _data(row):
        # A message that was written as one: what stands under its heading.
        said = str(row.payload.get("text", "")).partition("\n")[2]
    return Answered(athlete_id, said.strip())


def _worth_quoting(gathered: Sequence[str]) -> Sequence[str]:
    """What was written there, but for an "ok" or a thumb beside it."""
    return [said for said in gathered if not is_chatter(said)] or gathered


def coach_answered(session: Session, athlete: Person, incoming: Incoming) -> int | None:
    """The coach whose message the athlete answers; None where it was none of a coach's."""
    row = message_answered(session, athlete, incoming.reply_to)
    for data in _data(row) if row is not None else ():
        to = REPLY.found_in(data)
        if to is not None:
            return to.person
    return None


def _data(row: OutboxRow) -> list[str]:
    keyboard = row.payload.get("reply_markup", {}).get("inline_keyboard", [])
    return [str(button.get("callback_data", "")) for line in keyboard for button in line]


def _named(session: Session, row: OutboxRow) -> set[int]:
    """The athletes whom the buttons of a message name, themselves or by an alert or a decision."""
    found: set[int] = set()
    for data in _data(row):
        about: AlertRow | DecisionRow | None = None
        if (alert := ALERT.found_in(data)) is not None:
            about = session.get(AlertRow, alert.alert)
        elif (proposal := SIGN.found_in(data)) is not None:
            about = session.get(DecisionRow, proposal.decision)
        elif not ROSTER.begins(data) and (athlete := card_of(data)) is not None:
            found.add(athlete)
        if about is not None:
            found.add(about.athlete_id)
    return found


def ask_message(turn: OnAthlete, _: Message) -> None:
    """The card's button for a message; and the one under an athlete's words, which it answers."""
    found = about_athlete(turn.session, turn.person, turn.incoming.message_id)
    about = found.said if found is not None and found.athlete_id == turn.profile.person_id else ""
    asking.open_question(turn, turn.person, TO_ATHLETE, turn.profile.person_id, {
        "_name": name_of(turn.session, turn.profile.person_id), "_about": about,
    })  # fmt: skip


def message_given(turn: Turn, coach: Person, profile: AthleteProfile, answers: Answers) -> None:
    """To the athlete, with a way to answer; whoever else coaches them reads it in their own time."""
    deliver(turn, coach, profile, answers["text"], about=answers.get("_about", ""))


def deliver(
    turn: Turn, coach: Person, profile: AthleteProfile, said: str, *, about: str = ""
) -> None:
    """A coach's words to an athlete, above them what of the athlete's they answer."""
    athlete = get_person(turn.session, profile.person_id)
    first = get_person(turn.session, profile.coach_id)

    def text() -> str:
        told = (
            words.from_coach(coach.first_name, said)
            if first.id == coach.id
            else words.from_second_coach(coach.first_name, first.first_name, said)
        )
        return f"{words.about(about)}\n\n{told}" if about else told

    say_to(turn, athlete, text, buttons=partial(_reply, REPLY(id_of(coach))))
    _confirm(turn, coach, [athlete])
    _note(turn, profile, coach, [athlete], said)
    record(turn, profile.person_id, Change.MESSAGE_TO_ATHLETE(text=said), by=coach.id)


def write(turn: Act) -> None:
    """/write: an athlete's own word, to all who coach them; it may stand right behind."""
    if turn.words:
        to_coaches(turn, turn.person, turn.words, None)
    else:
        _ask_athlete(turn, turn.person, None)


def reply_tapped(turn: Act, pressed: To) -> None:
    """The button under a message: the answer goes to whoever sent it."""
    _ask_athlete(turn, turn.person, pressed.person)


def reply_given(turn: Turn, athlete: Person, question: OpenQuestion) -> None:
    to_coaches(turn, athlete, question.answers["text"], question.answers.get("_to"))


def to_coaches(turn: Turn, athlete: Person, said: str, to: int | None) -> None:
    """An athlete's words to one who coaches them, or to all who do (None): at once, by themselves."""
    profile = get_profile(turn.session, athlete.id)
    refused = _nobody(profile)
    if refused:
        say_to(turn, athlete, refused)
        return
    readers = _readers(turn.session, profile, to)
    for reader in readers:
        say_to(
            turn,
            reader,
            partial(from_athlete, athlete.first_name, [said]),
            buttons=partial(_reply, MESSAGE(profile.person_id)),
            how=Delivery(silent=notes.quiet_now(turn, reader)),
        )
    _confirm(turn, athlete, readers)
    _note(turn, profile, athlete, readers, said)
    entry = Change.MESSAGE_TO_COACH(text=said, to=[reader.first_name for reader in readers])
    record(turn, profile.person_id, entry, by=athlete.id)


def _ask_athlete(turn: Turn, athlete: Person, to: int | None) -> None:
    profile = get_profile(turn.session, athlete.id)
    refused = _nobody(profile)
    if refused:
        say_to(turn, athlete, refused)
        return
    names = [reader.first_name for reader in _readers(turn.session, profile, to)]
    asking.open_question(turn, athlete, TO_COACH, athlete.id, {
        "_coach": ", ".join(names), "_to": to,
    })  # fmt: skip


def _nobody(profile: AthleteProfile) -> str:
    """Why there is nobody to write to; "" where there is."""
    if profile.status in (AthleteStatus.ENDED, AthleteStatus.DECLINED):
        return common.nobody_coaches_you()
    return words.nobody_else() if profile.coach_id == profile.person_id else ""


def _readers(session: Session, profile: AthleteProfile, to: int | None) -> list[Person]:
    """The one who is answered, while they coach the athlete; the coach in place of one who does not
    any more; all who do, where nobody is answered.
    """
    everybody = approvers(session, profile)
    if to is None:
        return everybody
    return [one for one in everybody if one.id == to] or everybody[:1]


def _note(
    turn: Turn, profile: AthleteProfile, sender: Person, readers: Sequence[Person], said: str
) -> None:
    """Those who coach the athlete too, and neither wrote it nor got it, can read along."""
    concerned = {sender.id, *(reader.id for reader in readers)}
    to = ", ".join(reader.first_name for reader in readers)
    for other in approvers(turn.session, profile):
        if other.id not in concerned:
            text = partial(words.read_along, sender.first_name, to, said)
            notes.tell(turn, other, profile.person_id, text)


def _reply(data: CallbackData) -> Buttons:
    return [[Button(common.reply_button(), data)]]


def _confirm(turn: Turn, sender: Person, readers: Sequence[Person]) -> None:
    for said, names in (
        (words.message_sent, [one.first_name for one in readers if one.reachable]),
        (words.message_may_not_arrive, [one.first_name for one in readers if not one.reachable]),
    ):
        if names:
            say_to(turn, sender, said(", ".join(names)))


UNSENT = "words-unsent"
#: Our own choice: long enough for a tap, short enough to be remembered.
AFTER = timedelta(minutes=20)
FEWEST_WORDS = 3  # an "ok" or a "thanks" that nobody sent was meant for the bot


def ask_once_more(turn: Turn, question: OpenQuestion) -> None:
    """A coach's words wait for the tap which sends them: asked about again, so that none is lost."""
    if len(str(question.answers["_text"]).split()) < FEWEST_WORDS:
        return
    agenda.put(
        turn.session, agenda.Named(Subject.QUESTION(question.id), turn.now.date(), UNSENT),
        due_at=turn.now + AFTER,
    )  # fmt: skip


def remind_unsent(turn: Turn, duty: AgendaRow) -> None:
    question = turn.session.get(OpenQuestion, Subject.QUESTION.of(duty))
    if question is None or question.closed_at is not None:
        return
    coach = get_person(turn.session, question.person_id)
    put = asking.Put(coach, question, PASS_ON, _step(question))
    asking.put_again(turn, put, words.not_sent_yet)


def _step(question: OpenQuestion) -> Step:
    step = PASS_ON.step(question.step)
    assert step is not None
    return step
