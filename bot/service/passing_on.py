"""What is typed of one's own accord and is nothing else: to the coach, to the athlete, never lost."""

from __future__ import annotations

import re
from collections.abc import Callable, Sequence

from sqlmodel import Session, select

from bot.context import Context
from bot.dialogue import Unread
from bot.flows.coach_message import TO_ATHLETE
from bot.flows.passing_on import LEAVE, OTHER, OWN, PASS_ON
from bot.incoming import Incoming
from bot.messages import coach as coach_words
from bot.messages import coach_roster
from bot.messages import passing_on as words
from bot.outbox import say
from bot.service import asking, desk, messages_across, notes, replies
from bot.service.people import (
    get_person,
    is_own_coach,
    own_athlete,
    profile_of,
    record,
    speaking_to,
)
from bot.service.rights import athletes_seen_by, given_to, others_coaching
from bot.store.people import AthleteProfile, AthleteStatus, OpenQuestion, Person

LIVE = frozenset(AthleteStatus) - {AthleteStatus.DECLINED, AthleteStatus.ENDED}


def from_athlete(
    session: Session,
    athlete: Person,
    profile: AthleteProfile,
    said: str,
    context: Context,
    *,
    message_id: int | None = None,
    instead: Callable[[], str] | None = None,
) -> str:
    """Bring an athlete's words to those who coach them; returns what to tell the athlete.

    `instead` is what the coaches read for what is no words (a voice message), behind those there are.
    """
    if profile.status not in LIVE:
        return words.nobody_reads()
    if is_own_coach(profile) and not said:
        return ""
    if is_own_coach(profile):
        record(session, profile.person_id, "own note", context, by=athlete.id, text=said)
        return words.own_note()
    coaches = others_coaching(session, profile)
    for coach in coaches:
        with speaking_to(coach):
            text = " ".join(part for part in (said, instead() if instead else "") if part)
            notes.gather(session, coach, athlete, text, context, message_id=message_id)
    record(
        session, profile.person_id, "message to coach", context, by=athlete.id, text=text,
        to=[coach.first_name for coach in coaches],
    )  # fmt: skip
    return told(coaches, in_words=bool(said))


def told(coaches: Sequence[Person], *, in_words: bool = True) -> str:
    """What the athlete hears of who has it now; or, of what cannot be passed on, who knows of it."""
    here = [one.first_name for one in coaches if one.reachable]
    gone = [one.first_name for one in coaches if not one.reachable]
    parts = [(words.passed_on if in_words else words.told_it_came)(here)] if here else []
    return " ".join([*parts, words.cannot_arrive(gone)] if gone else parts)


def edited(session: Session, athlete: Person, message_id: int, said: str, context: Context) -> bool:
    """An athlete changed words that had been passed on; whether they had been."""
    changed = notes.said_anew(session, athlete, message_id, said, context)
    if not changed:
        return False
    names = [get_person(session, note.coach_id).first_name for note in changed]
    record(
        session, athlete.id or 0, "message to coach", context, by=athlete.id, text=said, to=names
    )  # fmt: skip
    say(session, chat_id=athlete.chat_id, text=words.changed_for(names), now=context.now)
    return True


# A coach's words


def replied(session: Session, coach: Person, incoming: Incoming, context: Context) -> bool:
    """A coach answered a message by Telegram's reply: back to the sentence it answers, at once;
    where the message was about an athlete but not from them, after one tap.
    """
    found = replies.about_athlete(session, coach, incoming.reply_to, incoming.quoted)
    if found is None:
        return False
    profile = replies.profile_named(session, found)
    if found.said and not _refused(session, coach, incoming.text, context):
        messages_across.deliver(
            session, coach, profile, incoming.text.strip(), context, about=found.said
        )
    elif not found.said:
        _ask(session, coach, incoming.text, [profile], profile, context)
    return True


def from_coach(
    session: Session, coach: Person, said: str, context: Context, *, for_somebody_else: bool = False
) -> bool:
    """A coach's words to the athlete they name, or whose card is open: shown, and sent by a tap.

    With `for_somebody_else` only words that name an athlete are taken; whether they were.
    """
    coached = [one for one in athletes_seen_by(session, coach) if one.person_id != coach.id]
    named, rest = _named(session, coached, said)
    if for_somebody_else and len(named) != 1:
        return False
    if not coached:
        say(session, chat_id=coach.chat_id, text=coach_roster.nobody_yet(), now=context.now)
        return True
    meant = named[0] if len(named) == 1 else None
    if not named:
        meant = _on_the_card(session, coach, coached, context)
    if not named and meant is None and len(coached) == 1 and not _own(session, coach):
        meant = coached[0]
    _ask(session, coach, rest if len(named) == 1 else said, named or coached, meant, context)
    return True


def named_alone(session: Session, coach: Person, text: str) -> AthleteProfile | None:
    """The athlete whose name is all that was typed."""
    coached = [one for one in athletes_seen_by(session, coach) if one.person_id != coach.id]
    plain = _plain(text).strip(" .!?")
    called = [one for one in coached if _plain(_name(session, one)) == plain]
    return called[0] if len(called) == 1 else None


def names_another(session: Session, coach: Person, question: OpenQuestion, text: str) -> bool:
    """Whether a message that is being asked for begins with the name of another athlete."""
    if question.flow != TO_ATHLETE.id:
        return False
    coached = [one for one in athletes_seen_by(session, coach) if one.person_id != coach.id]
    named, rest = _named(session, coached, text)
    return rest != text and [one.person_id for one in named] not in ([], [question.subject_id])


def from_contact(session: Session, person: Person, said: str, context: Context) -> None:
    """A word of a second contact, or of somebody who is told of alerts, to the coach."""
    of = select(Person).where(Person.second_contact_id == person.id)
    coaches = {one.id: one for one in session.exec(of)}
    for row in given_to(session, person):
        coaches.setdefault(row.coach_id, get_person(session, row.coach_id))
    for coach in coaches.values():
        with speaking_to(coach):
            say(
                session, chat_id=coach.chat_id, now=context.now,
                text=words.from_contact(person.first_name, said),
                silent=notes.quiet_now(session, coach, context),
            )  # fmt: skip
    say(session, chat_id=person.chat_id, text=told(list(coaches.values())), now=context.now)


def answered(session: Session, coach: Person, question: OpenQuestion, context: Context) -> None:
    """The tap under a coach's words: whom they are for."""
    answers = question.answers
    to = answers.get("to") or answers.get("_to")
    if answers.get("sure") == LEAVE or (answers.get("sure") == OTHER and not answers.get("to")):
        say(session, chat_id=coach.chat_id, text=words.not_sent(), now=context.now)
        return
    own = profile_of(session, coach.id)
    if to == OWN and own is not None:
        text = from_athlete(session, coach, own, answers["_text"], context)
        say(session, chat_id=coach.chat_id, text=text, now=context.now)
        return
    profile = own_athlete(session, coach, int(str(to))) if str(to).isdigit() else None
    if profile is None:
        say(session, chat_id=coach.chat_id, text=coach_words.not_your_athlete(), now=context.now)
        return
    messages_across.deliver(session, coach, profile, answers["_text"], context)


def _ask(
    session: Session,
    coach: Person,
    said: str,
    among: Sequence[AthleteProfile],
    meant: AthleteProfile | None,
    context: Context,
) -> None:
    if _refused(session, coach, said, context):
        return
    everybody = among if meant is None else _with_first(meant, athletes_seen_by(session, coach))
    athletes: list[list[object]] = [
        [one.person_id, _name(session, one)] for one in everybody if one.person_id != coach.id
    ]
    own = _own(session, coach)
    asking.open_question(
        session, coach, PASS_ON, context=context, beside=True,
        subject_id=meant.person_id if meant is not None else None,
        answers={
            "_text": said.strip(),
            "_athletes": athletes + ([[OWN, own]] if own else []),
            "_to": meant.person_id if meant is not None else None,
            "_name": _name(session, meant) if meant is not None else "",
        },
    )  # fmt: skip


def _with_first(first: AthleteProfile, others: Sequence[AthleteProfile]) -> list[AthleteProfile]:
    return [first, *(one for one in others if one.person_id != first.person_id)]


def _own(session: Session, coach: Person) -> str:
    """What the button says that keeps a coach's words for themselves; "" where they do not compete."""
    profile = profile_of(session, coach.id)
    if profile is None or profile.status not in LIVE:
        return ""
    if is_own_coach(profile):
        return words.note_to_self_button()
    return words.to_my_coach_button(get_person(session, profile.coach_id).first_name)


def _refused(session: Session, coach: Person, said: str, context: Context) -> bool:
    """What no athlete is sent by this bot, such as a drug's name; the coach is told so."""
    try:
        TO_ATHLETE.steps[0].read(said, {})
    except Unread as unread:
        say(session, chat_id=coach.chat_id, text=str(unread), now=context.now)
        return True
    return False


def _on_the_card(
    session: Session, coach: Person, coached: Sequence[AthleteProfile], context: Context
) -> AthleteProfile | None:
    open_card = desk.card_open(session, coach, context)
    return next((one for one in coached if one.person_id == open_card), None)


_TELL = re.compile(
    r"(?:please\s+|bitte\s+)?(?:tell|ask|to|for|sag|sage|frag|frage|schreib|an|für)\s+(?=\S)",
    re.IGNORECASE,
)


def _named(
    session: Session, coached: Sequence[AthleteProfile], text: str
) -> tuple[list[AthleteProfile], str]:
    """The athletes whom a text names, and the text without a name that it was addressed to.

    A name at its beginning is whom it is for; else one that stands anywhere in it.
    """
    said = text.strip()
    for begin in (said, _TELL.sub("", said, count=1) if _TELL.match(said) else ""):
        found = [
            (one, match.end())
            for one in coached
            if (
                match := re.match(
                    rf"@?{re.escape(_name(session, one))}(?!\w)[\s,:;–-]*", begin, re.I
                )
            )
        ]
        if found:
            longest = max(end for _, end in found)
            rest = begin[longest:].strip()
            return [one for one, end in found if end == longest], rest or said
    anywhere = [
        one for one in coached if re.search(rf"(?<!\w){re.escape(_name(session, one))}(?!\w)", said)
    ]
    return anywhere, said


def _name(session: Session, profile: AthleteProfile) -> str:
    return get_person(session, profile.person_id).first_name


def _plain(name: str) -> str:
    return " ".join(name.split()).casefold()
