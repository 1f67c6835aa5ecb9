"""What is typed of one's own accord and is nothing else: to the coach, to the athlete, never lost."""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass
from functools import partial

from sqlalchemy import bindparam
from sqlmodel import Session, col, or_, select

from bot.alerts import notes
from bot.core.chat.outbox import Delivery
from bot.core.turn import ChatTurn, Turn
from bot.dialogue import asking
from bot.dialogue.flow import InvalidAnswer
from bot.direct import flow, messages, words
from bot.direct.flow import ALL, LEAVE, OTHER, OWN, PASS_ON, TO_ATHLETE
from bot.people import coach_settings
from bot.people.changes import Change
from bot.people.people import (
    athletes_seen_by,
    get_person,
    get_profile,
    given_to,
    is_own_coach,
    name_of,
    others_coaching,
    own_athlete,
    profile_of,
    record,
)
from bot.people.telling import say_to, speaking_to
from bot.store.base import id_of
from bot.store.tables.coach import SecondCoach
from bot.store.tables.people import AthleteProfile, AthleteStatus, HistoryRow, OpenQuestion, Person
from bot.words import common
from engine.symptoms import screen
from engine.written.chatter import is_chatter
from engine.written.late import Late

LIVE = frozenset(AthleteStatus) - {AthleteStatus.DECLINED, AthleteStatus.ENDED}


def from_athlete(
    turn: Turn, profile: AthleteProfile, wrote: notes.Wrote, *, at_once: bool = False
) -> str:
    """Bring an athlete's words to those who coach them; returns what to tell the athlete.

    `at_once` brings it in quiet hours too, without a sound. Chatter is kept for their next words,
    unless it may be what a coach waits for who has just written to them.
    """
    said = wrote.words
    if profile.status not in LIVE:
        return words.nobody_reads()
    if is_own_coach(profile) and not said:
        return ""
    if is_own_coach(profile) and is_chatter(said):
        return words.nothing_to_do()
    if is_own_coach(profile):
        record(turn, profile.person_id, Change.OWN_NOTE(text=said), by=profile.person_id)
        return words.own_note()
    coaches, athlete = (
        others_coaching(turn.session, profile),
        get_person(turn.session, profile.person_id),
    )
    idle = wrote.instead is None and is_chatter(said) and not _written_to(turn, profile)
    comes = notes.Comes.ALONG if idle else notes.Comes.IN_TURN
    comes = notes.Comes.AT_ONCE if at_once and not idle else comes
    for coach in coaches:
        text = notes.gather(turn, coach, athlete, wrote, comes)
    entry = Change.MESSAGE_TO_COACH(text=text, to=[coach.first_name for coach in coaches])
    record(turn, profile.person_id, entry, by=athlete.id)
    return told(coaches, in_words=bool(said), idle=idle)


def _written_to(turn: Turn, profile: AthleteProfile) -> bool:
    """Whether a coach has written to this athlete lately, so that "ok" is an answer."""
    return turn.session.exec(_WRITTEN_TO, params={
        "athlete": profile.person_id, "since": turn.now - notes.IDLE_FOR,
    }).first() is not None  # fmt: skip


_WRITTEN_TO = select(HistoryRow.id).where(
    HistoryRow.athlete_id == bindparam("athlete"),
    HistoryRow.what == Change.MESSAGE_TO_ATHLETE,
    col(HistoryRow.at) > bindparam("since"),
)


def told(coaches: Sequence[Person], *, in_words: bool = True, idle: bool = False) -> str:
    """What the athlete hears of who has it now; or, of what cannot be passed on, who knows of it."""
    if idle and any(one.reachable for one in coaches):
        return words.kept_for([one.first_name for one in coaches if one.reachable])
    here = [one.first_name for one in coaches if one.reachable]
    gone = [one.first_name for one in coaches if not one.reachable]
    parts = [(words.passed_on if in_words else words.told_it_came)(here)] if here else []
    return " ".join([*parts, words.cannot_arrive(gone)] if gone else parts)


def edited(turn: Turn, athlete: Person, message_id: int, said: str, *, heard: bool = False) -> bool:
    """An athlete changed words that had been passed on; whether they had been. `heard`: a complaint in
    them has been answered, so that no more is said.
    """
    changed = notes.said_anew(turn, athlete, message_id, said)
    if not changed:
        return False
    names = [name_of(turn.session, note.coach_id) for note in changed]
    record(turn, id_of(athlete), Change.MESSAGE_TO_COACH(text=said, to=names), by=athlete.id)
    if not heard:
        say_to(turn, athlete, words.changed_for(names))
    return True


# A coach's words


@dataclass(frozen=True, slots=True)
class Among:
    """Whom a coach's words may be for; `meant` where it seems clear, `all_of_them` where they were
    addressed together.
    """

    athletes: Sequence[AthleteProfile]
    meant: AthleteProfile | None = None
    all_of_them: bool = False


def replied(turn: ChatTurn, coach: Person) -> bool:
    """A coach answered a message by Telegram's reply: back to the sentence it answers, at once;
    where the message was about an athlete but not from them, after one tap.
    """
    found = messages.about_athlete(
        turn.session, coach, turn.incoming.reply_to, turn.incoming.quoted
    )
    if found is None:
        return _to_contact(turn, coach)
    profile = get_profile(turn.session, found.athlete_id)
    if found.said and not _refused(turn, coach, turn.incoming.text):
        messages.deliver(turn, coach, profile, turn.incoming.text.strip(), about=found.said)
    elif not found.said:
        _ask(turn, coach, turn.incoming.text, Among([profile], profile))
    return True


def _to_contact(turn: ChatTurn, coach: Person) -> bool:
    """A coach answered a word of somebody who is told of alerts; whether it was one."""
    row = messages.message_answered(turn.session, coach, turn.incoming.reply_to)
    if row is None:
        return False
    beside = select(SecondCoach.person_id).where(
        SecondCoach.coach_id == coach.id, col(SecondCoach.ended_at).is_(None)
    )
    told = turn.session.exec(
        select(Person).where(or_(Person.id == coach.second_contact_id, col(Person.id).in_(beside)))
    ).all()
    said = str(row.payload.get("text", ""))
    for contact in told:
        with speaking_to(coach):
            heading = words.from_contact(contact.first_name, "")
        if said.startswith(heading):
            text = turn.incoming.text.strip()
            say_to(turn, contact, partial(common.from_athlete, coach.first_name, [text]))
            say_to(turn, coach, words.message_sent(contact.first_name))
            return True
    return False


def from_coach(turn: Turn, coach: Person, said: str, *, for_somebody_else: bool = False) -> bool:
    """A coach's words to the athlete they name, or whose card is open: shown, and sent by a tap.

    With `for_somebody_else` only words that name an athlete are taken; whether they were.
    """
    coached = [one for one in athletes_seen_by(turn.session, coach) if one.person_id != coach.id]
    names = [_name(turn.session, one) for one in coached]
    together, rest = flow.addressed_together(names, said)
    if len(together) > 1:
        several = [one for one, name in zip(coached, names, strict=True) if name in together]
        _ask(turn, coach, rest, Among(several, all_of_them=True))
        return True
    named, rest = _named(turn.session, coached, said)
    if for_somebody_else and len(named) != 1:
        return False
    if not coached:
        say_to(turn, coach, common.nobody_yet())
        return True
    meant = named[0] if len(named) == 1 else None
    if not named:
        meant = _on_the_card(turn, coach, coached)
    if not named and meant is None and len(coached) == 1 and not _own(turn.session, coach):
        meant = coached[0]
    _ask(turn, coach, rest if len(named) == 1 else said, Among(named or coached, meant))
    return True


def named_alone(session: Session, coach: Person, text: str) -> AthleteProfile | None:
    """The athlete whose name is all that was typed, or of whom it was asked how they are."""
    coached = [
        one
        for one in athletes_seen_by(session, coach)
        if one.person_id != coach.id or is_own_coach(one)
    ]
    plain = _plain(text).replace("\u2019", "'").strip(" .!?")
    asked = _HOW_IS.fullmatch(plain)
    meant = {plain, asked["name"]} if asked is not None else {plain}
    called = [one for one in coached if _plain(_name(session, one)) in meant]
    return called[0] if len(called) == 1 else None


_HOW_IS = Late(
    r"(?:how(?:'s| is| was| are things with)|hows|where(?:'s| is)|what(?:'s up with| about)|"
    r"show(?: me)?|open|check(?: on)?|wie geht(?:'?s| es)(?: der| dem)?|wie läuft(?:'s| es) bei|"
    r"was ist mit|wo ist|zeig(?: mir)?|öffne) "
    r"(?P<name>.+?)(?: (?:doing|looking|feeling|going|today|now|getting on|heute|gerade|so|denn))*"
)


#: A coach writes of an athlete what the athlete would write as "I".
_HE_OR_SHE = Late(r"\b(?:she|he|they|sie|er)\b(?:'s|\u2019s)?", re.IGNORECASE)


def names_another(session: Session, coach: Person, question: OpenQuestion, text: str) -> bool:
    """Whether a message that is being asked for begins with the name of another athlete."""
    if question.flow != TO_ATHLETE.id:
        return False
    coached = [one for one in athletes_seen_by(session, coach) if one.person_id != coach.id]
    named, rest = _named(session, coached, text)
    return rest != text and [one.person_id for one in named] not in ([], [question.subject_id])


def from_contact(turn: Turn, person: Person, said: str) -> None:
    """A word of a second contact, or of somebody who is told of alerts, to the coach."""
    of = select(Person).where(Person.second_contact_id == person.id)
    coaches = {one.id: one for one in turn.session.exec(of)}
    for row in given_to(turn.session, person):
        coaches.setdefault(row.coach_id, get_person(turn.session, row.coach_id))
    for coach in coaches.values():
        say_to(
            turn,
            coach,
            partial(words.from_contact, person.first_name, said),
            how=Delivery(silent=is_chatter(said) or notes.quiet_now(turn, coach)),
        )
    say_to(turn, person, told(list(coaches.values())))


def answered(turn: Turn, coach: Person, question: OpenQuestion) -> None:
    """The tap under a coach's words: whom they are for."""
    answers = question.answers
    to = answers.get("to") or answers.get("_to")
    if LEAVE in (answers.get("sure"), answers.get("to")) or (
        answers.get("sure") == OTHER and not answers.get("to")
    ):
        say_to(turn, coach, words.not_sent())
        return
    own = profile_of(turn.session, coach.id)
    if to == ALL:
        for number, _ in answers["_athletes"]:
            one = own_athlete(turn.session, coach, int(number))
            if one is not None:
                messages.deliver(turn, coach, one, answers["_text"])
        return
    if to == OWN and own is not None:
        say_to(turn, coach, from_athlete(turn, own, notes.Wrote(answers["_text"])))
        return
    profile = own_athlete(turn.session, coach, int(str(to))) if str(to).isdigit() else None
    if profile is None:
        say_to(turn, coach, common.not_your_athlete())
        return
    messages.deliver(turn, coach, profile, answers["_text"])


def _ask(turn: Turn, coach: Person, said: str, among: Among) -> None:
    if _refused(turn, coach, said):
        return
    meant, everybody = among.meant, among.athletes
    if meant is not None:
        everybody = _with_first(meant, athletes_seen_by(turn.session, coach))
    athletes: list[list[object]] = [
        [one.person_id, _name(turn.session, one)] for one in everybody if one.person_id != coach.id
    ]
    own = "" if among.all_of_them else _own(turn.session, coach)
    question = asking.open_question(
        turn, coach, PASS_ON,
        subject_id=meant.person_id if meant is not None else None,
        answers={
            "_text": said.strip(),
            "_alarm": bool(screen(_HE_OR_SHE.sub("I", said)).warnings),
            "_athletes": athletes + ([[OWN, own]] if own else []),
            "_all": among.all_of_them,
            "_to": meant.person_id if meant is not None else None,
            "_name": _name(turn.session, meant) if meant is not None else "",
        },
    )  # fmt: skip
    messages.ask_once_more(turn, question)


def _with_first(first: AthleteProfile, others: Sequence[AthleteProfile]) -> list[AthleteProfile]:
    return [first, *(one for one in others if one.person_id != first.person_id)]


def _own(session: Session, coach: Person) -> str:
    """What the button says that keeps a coach's words for themselves; "" where they do not compete."""
    profile = profile_of(session, coach.id)
    if profile is None or profile.status not in LIVE:
        return ""
    if is_own_coach(profile):
        return words.note_to_self_button()
    return words.to_my_coach_button(name_of(session, profile.coach_id))


def _refused(turn: Turn, coach: Person, said: str) -> bool:
    """What no athlete is sent by this bot, such as a drug's name; the coach is told so."""
    try:
        TO_ATHLETE.steps[0].answer(said, {})
    except InvalidAnswer as unread:
        say_to(turn, coach, str(unread))
        return True
    return False


def _on_the_card(
    turn: Turn, coach: Person, coached: Sequence[AthleteProfile]
) -> AthleteProfile | None:
    open_card = coach_settings.card_open(turn, coach)
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
            named = [one for one, end in found if end == longest]
            if flow.is_of_them(begin, rest):
                return _and_those_alike(session, coached, named), said
            return _and_those_alike(session, coached, named), _told(begin is not said, rest) or said
    anywhere = [
        one for one in coached if re.search(rf"(?<!\w){re.escape(_name(session, one))}(?!\w)", said)
    ]
    return anywhere, said


def _and_those_alike(
    session: Session, coached: Sequence[AthleteProfile], named: list[AthleteProfile]
) -> list[AthleteProfile]:
    """With those who are called alike but for what tells them apart: "Mira" may be "Mira K."."""
    begins = tuple(f"{_plain(_name(session, one))} " for one in named)
    alike = [one for one in coached if _plain(_name(session, one)).startswith(begins)]
    return [*named, *(one for one in alike if one not in named)]


def _told(asked_to: bool, rest: str) -> str:
    """What is left of "tell Mira to rest": to be read by Mira."""
    return re.sub(r"^to\s+(?=\S)", "", rest, flags=re.I) if asked_to else rest


def _name(session: Session, profile: AthleteProfile) -> str:
    return name_of(session, profile.person_id)


def _plain(name: str) -> str:
    return " ".join(name.split()).casefold()
