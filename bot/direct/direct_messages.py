"""A word from the coach to an athlete, and back."""

from __future__ import annotations

from collections.abc import Sequence
from functools import partial

from sqlmodel import Session

from bot.alerts import notes
from bot.core.chat.buttons import CallbackData
from bot.core.chat.cards import MESSAGE, Message
from bot.core.chat.outbox import Button, Buttons, Delivery
from bot.core.turn import Act, OnAthlete, Turn
from bot.dialogue import asking
from bot.direct import replies
from bot.direct import words as direct_words
from bot.direct import words_passing_on as passing_words
from bot.direct.buttons import REPLY, To
from bot.direct.flow import TO_ATHLETE, TO_COACH
from bot.people.changes import Change
from bot.people.people import get_person, get_profile, name_of, own_athlete, record
from bot.people.rights import approvers
from bot.people.telling import answer, say_to
from bot.store.base import id_of
from bot.store.tables.people import AthleteProfile, AthleteStatus, OpenQuestion, Person
from bot.words import common
from bot.words.common import from_athlete


def ask_message(turn: OnAthlete, _: Message) -> None:
    """The card's button for a message; and the one under an athlete's words, which it answers."""
    answer(turn)
    found = replies.about_athlete(turn.session, turn.person, turn.incoming.message_id)
    about = found.said if found is not None and found.athlete_id == turn.profile.person_id else ""
    asking.open_question(
        turn, turn.person, TO_ATHLETE, subject_id=turn.profile.person_id,
        answers={"_name": name_of(turn.session, turn.profile.person_id), "_about": about},
    )  # fmt: skip


def message_given(turn: Turn, coach: Person, question: OpenQuestion) -> None:
    """To the athlete, with a way to answer; whoever else coaches them reads it in their own time."""
    profile = own_athlete(turn.session, coach, question.about)
    if profile is None:
        say_to(turn, coach, common.not_your_athlete())
        return
    deliver(
        turn, coach, profile, question.answers["text"],
        about=question.answers.get("_about", ""),
    )  # fmt: skip


def deliver(
    turn: Turn, coach: Person, profile: AthleteProfile, said: str, *, about: str = ""
) -> None:
    """A coach's words to an athlete, above them what of the athlete's they answer."""
    athlete = get_person(turn.session, profile.person_id)
    first = get_person(turn.session, profile.coach_id)

    def text() -> str:
        told = (
            direct_words.from_coach(coach.first_name, said)
            if first.id == coach.id
            else direct_words.from_second_coach(coach.first_name, first.first_name, said)
        )
        return f"{passing_words.about(about)}\n\n{told}" if about else told

    say_to(turn, athlete, text, buttons=partial(_reply, REPLY(id_of(coach))))
    _confirm(turn, coach, [athlete])
    _note(turn, profile, coach, [athlete], said)
    record(
        turn, profile.person_id, Change.MESSAGE_TO_ATHLETE, by=coach.id, text=said
    )  # fmt: skip


def write(turn: Act) -> None:
    """/write: an athlete's own word, to all who coach them; it may stand right behind."""
    if turn.words:
        to_coaches(turn, turn.person, turn.words, None)
    else:
        _ask_athlete(turn, turn.person, None)


def reply_tapped(turn: Act, pressed: To) -> None:
    """The button under a message: the answer goes to whoever sent it."""
    answer(turn)
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
    record(
        turn, profile.person_id, Change.MESSAGE_TO_COACH, by=athlete.id, text=said,
        to=[reader.first_name for reader in readers],
    )  # fmt: skip


def _ask_athlete(turn: Turn, athlete: Person, to: int | None) -> None:
    profile = get_profile(turn.session, athlete.id)
    refused = _nobody(profile)
    if refused:
        say_to(turn, athlete, refused)
        return
    names = [reader.first_name for reader in _readers(turn.session, profile, to)]
    asking.open_question(
        turn, athlete, TO_COACH, subject_id=athlete.id,
        answers={"_coach": ", ".join(names), "_to": to},
    )  # fmt: skip


def _nobody(profile: AthleteProfile) -> str:
    """Why there is nobody to write to; "" where there is."""
    if profile.status in (AthleteStatus.ENDED, AthleteStatus.DECLINED):
        return common.nobody_coaches_you()
    return direct_words.nobody_else() if profile.coach_id == profile.person_id else ""


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
            text = partial(direct_words.read_along, sender.first_name, to, said)
            notes.tell(turn, other, profile.person_id, text)


def _reply(data: CallbackData) -> Buttons:
    return [[Button(common.reply_button(), data)]]


def _confirm(turn: Turn, sender: Person, readers: Sequence[Person]) -> None:
    for said, names in (
        (direct_words.message_sent, [one.first_name for one in readers if one.reachable]),
        (
            direct_words.message_may_not_arrive,
            [one.first_name for one in readers if not one.reachable],
        ),
    ):
        if names:
            say_to(turn, sender, said(", ".join(names)))
