"""A word from the coach to an athlete, and back."""

from __future__ import annotations

from collections.abc import Sequence

from sqlmodel import Session

from bot.context import Context
from bot.flows.coach_message import TO_ATHLETE, TO_COACH
from bot.incoming import Incoming
from bot.messages import coach as words
from bot.messages import leaving as leaving_words
from bot.messages import passing_on as passing_words
from bot.outbox import Button, say
from bot.service import asking, notes, replies
from bot.service.people import get_person, own_athlete, profile_of, record, speaking_to
from bot.service.signoff import signers
from bot.service.tapping import answer
from bot.store.people import AthleteProfile, AthleteStatus, OpenQuestion, Person


def ask_message(
    session: Session,
    coach: Person,
    profile: AthleteProfile,
    _rest: list[str],
    incoming: Incoming,
    context: Context,
) -> None:
    """The card's button for a message; and the one under an athlete's words, which it answers."""
    answer(session, incoming, context)
    found = replies.about_athlete(session, coach, incoming.message_id)
    about = found.said if found is not None and found.athlete_id == profile.person_id else ""
    asking.open_question(
        session, coach, TO_ATHLETE, context=context, subject_id=profile.person_id,
        answers={"_name": get_person(session, profile.person_id).first_name, "_about": about},
    )  # fmt: skip


def message_given(
    session: Session, coach: Person, question: OpenQuestion, context: Context
) -> None:
    """To the athlete, with a way to answer; whoever else coaches them reads it in their own time."""
    profile = own_athlete(session, coach, question.subject_id or 0)
    if profile is None:
        say(session, chat_id=coach.chat_id, text=words.not_your_athlete(), now=context.now)
        return
    deliver(
        session, coach, profile, question.answers["text"], context,
        about=question.answers.get("_about", ""),
    )  # fmt: skip


def deliver(
    session: Session,
    coach: Person,
    profile: AthleteProfile,
    said: str,
    context: Context,
    *,
    about: str = "",
) -> None:
    """A coach's words to an athlete, above them what of the athlete's they answer."""
    athlete = get_person(session, profile.person_id)
    first = get_person(session, profile.coach_id)
    with speaking_to(athlete):
        text = (
            words.from_coach(coach.first_name, said)
            if first.id == coach.id
            else words.from_second_coach(coach.first_name, first.first_name, said)
        )
        text = f"{passing_words.about(about)}\n\n{text}" if about else text
        button = [[Button(words.reply_button(), f"reply:{coach.id}")]]
        say(session, chat_id=athlete.chat_id, text=text, now=context.now, buttons=button)
    _confirm(session, coach, [athlete], context)
    _note(session, profile, coach, [athlete], said, context)
    record(
        session, profile.person_id, "message to athlete", context, by=coach.id, text=said
    )  # fmt: skip


def write(session: Session, athlete: Person, rest: str, context: Context) -> None:
    """/write: an athlete's own word, to all who coach them; it may stand right behind."""
    if rest:
        to_coaches(session, athlete, rest, None, context)
    else:
        _ask_athlete(session, athlete, None, context)


def reply_tapped(
    session: Session, athlete: Person, arguments: list[str], incoming: Incoming, context: Context
) -> None:
    """Buttons "reply:PERSON" under a message: the answer goes to whoever sent it."""
    answer(session, incoming, context)
    number = arguments[0] if arguments else ""
    _ask_athlete(session, athlete, int(number) if number.isdigit() else None, context)


def reply_given(
    session: Session, athlete: Person, question: OpenQuestion, context: Context
) -> None:
    to_coaches(session, athlete, question.answers["text"], question.answers.get("_to"), context)


def to_coaches(
    session: Session, athlete: Person, said: str, to: int | None, context: Context
) -> None:
    """An athlete's words to one who coaches them, or to all who do (None): at once, by themselves."""
    profile = profile_of(session, athlete.id)
    assert profile is not None
    refused = _nobody(profile)
    if refused:
        say(session, chat_id=athlete.chat_id, text=refused, now=context.now)
        return
    readers = _readers(session, profile, to)
    for reader in readers:
        with speaking_to(reader):
            button = [[Button(words.reply_button(), f"c:message:{profile.person_id}")]]
            say(
                session, chat_id=reader.chat_id, now=context.now, buttons=button,
                text=words.from_athlete(athlete.first_name, said),
                silent=notes.quiet_now(session, reader, context),
            )  # fmt: skip
    _confirm(session, athlete, readers, context)
    _note(session, profile, athlete, readers, said, context)
    record(
        session, profile.person_id, "message to coach", context, by=athlete.id, text=said,
        to=[reader.first_name for reader in readers],
    )  # fmt: skip


def _ask_athlete(session: Session, athlete: Person, to: int | None, context: Context) -> None:
    profile = profile_of(session, athlete.id)
    assert profile is not None
    refused = _nobody(profile)
    if refused:
        say(session, chat_id=athlete.chat_id, text=refused, now=context.now)
        return
    names = [reader.first_name for reader in _readers(session, profile, to)]
    asking.open_question(
        session, athlete, TO_COACH, context=context, subject_id=athlete.id,
        answers={"_coach": ", ".join(names), "_to": to},
    )  # fmt: skip


def _nobody(profile: AthleteProfile) -> str:
    """Why there is nobody to write to; "" where there is."""
    if profile.status in (AthleteStatus.ENDED, AthleteStatus.DECLINED):
        return leaving_words.nobody_coaches_you()
    return words.nobody_else() if profile.coach_id == profile.person_id else ""


def _readers(session: Session, profile: AthleteProfile, to: int | None) -> list[Person]:
    """The one who is answered, while they coach the athlete; the coach in place of one who does not
    any more; all who do, where nobody is answered.
    """
    everybody = signers(session, profile)
    if to is None:
        return everybody
    return [one for one in everybody if one.id == to] or everybody[:1]


def _note(
    session: Session,
    profile: AthleteProfile,
    sender: Person,
    readers: Sequence[Person],
    said: str,
    context: Context,
) -> None:
    """Those who coach the athlete too, and neither wrote it nor got it, can read along."""
    concerned = {sender.id, *(reader.id for reader in readers)}
    to = ", ".join(reader.first_name for reader in readers)
    for other in signers(session, profile):
        if other.id not in concerned:
            with speaking_to(other):
                text = words.read_along(sender.first_name, to, said)
                notes.tell(session, other, profile.person_id, text, context)


def _confirm(session: Session, sender: Person, readers: Sequence[Person], context: Context) -> None:
    for said, names in (
        (words.message_sent, [one.first_name for one in readers if one.reachable]),
        (words.message_may_not_arrive, [one.first_name for one in readers if not one.reachable]),
    ):
        if names:
            say(session, chat_id=sender.chat_id, text=said(", ".join(names)), now=context.now)
