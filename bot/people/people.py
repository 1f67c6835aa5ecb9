"""Who is who: looking people up, whose athlete is whose, who stands beside a coach."""

from __future__ import annotations

import re
from collections.abc import Mapping, Sequence
from datetime import date
from itertools import chain, count
from typing import Any
from zoneinfo import ZoneInfo

from sqlalchemy import bindparam, exists, func
from sqlalchemy.orm import aliased
from sqlmodel import Session, SQLModel, col, or_, select

from bot.core.chat.outbox import LAST_MENU, menu_was_read, say, some_wait, were_found_to_wait
from bot.core.turn import ChatTurn, Context, Kind, Turn
from bot.people.changes import Entry
from bot.people.coach_settings import roster_stale
from bot.store.base import id_of
from bot.store.remembering import remember, remembered, remembered_rows
from bot.store.tables.coach import CoachSettings, Rights, SecondCoach
from bot.store.tables.people import AthleteProfile, AthleteStatus, HistoryRow, OpenQuestion, Person
from bot.store.tables.traffic import TopicKind
from bot.words import common
from bot.words.figures import one_line
from bot.words.names import CONSENT, FIRST_QUESTIONS

PENDING_ENTRIES = "kept"  # where a session remembers what was kept in it
_APART = re.compile(r"[^\W\d_]\.|\d+")  # behind a name that two athletes of one coach have


_OTHER, _COACH = aliased(Person), aliased(Person)
_STANDING = col(SecondCoach.ended_at).is_(None)
#: Who coaches this person, or they themselves.
_LEADS = func.coalesce(col(AthleteProfile.coach_id), col(Person.id))
#: Who this is, with what every turn asks of them and of whoever coaches them.
_BY_TELEGRAM: Any = (
    select(  # type: ignore[call-overload]
        Person,
        AthleteProfile,
        _COACH,
        CoachSettings,
        exists().where(col(_OTHER.second_contact_id) == Person.id),
        exists().where(col(SecondCoach.person_id) == Person.id, _STANDING),
        exists().where(col(SecondCoach.coach_id) == _LEADS, _STANDING),
        exists().where(
            col(OpenQuestion.person_id) == Person.id, col(OpenQuestion.closed_at).is_(None)
        ),
        some_wait(TopicKind.TARGET, col(Person.id)),
        LAST_MENU.scalar_subquery(),
    )
    .select_from(Person)
    .outerjoin(AthleteProfile, col(AthleteProfile.person_id) == Person.id)
    .outerjoin(_COACH, _COACH.id == _LEADS)
    .outerjoin(CoachSettings, col(CoachSettings.person_id) == _LEADS)
    .where(Person.telegram_user_id == bindparam("number"))
)
_ASKED = (
    select(OpenQuestion)
    .where(OpenQuestion.person_id == bindparam("person"), col(OpenQuestion.closed_at).is_(None))
    .order_by(col(OpenQuestion.asked_at), col(OpenQuestion.id))
)
_COACHED_BY = (
    select(AthleteProfile)
    .where(
        AthleteProfile.coach_id == bindparam("coach"),
        col(AthleteProfile.status).not_in((AthleteStatus.DECLINED, AthleteStatus.ENDED)),
    )
    .order_by(col(AthleteProfile.created_at), col(AthleteProfile.person_id))
)
_IS_CONTACT = select(exists().where(col(Person.second_contact_id) == bindparam("person")))
_STANDS_IN = select(SecondCoach.id).where(
    SecondCoach.person_id == bindparam("person"),
    SecondCoach.coach_id == bindparam("coach"),
    SecondCoach.rights == Rights.FULL,
    col(SecondCoach.ended_at).is_(None),
    or_(col(SecondCoach.athlete_id).is_(None), SecondCoach.athlete_id == bindparam("athlete")),
)
_IN_CHAT = select(Person).where(Person.chat_id == bindparam("chat"))
_BESIDE = (
    select(SecondCoach)
    .where(SecondCoach.coach_id == bindparam("coach"), _STANDING)
    .order_by(col(SecondCoach.id))
)


def sender(turn: ChatTurn) -> Person | None:
    """The person who did this, as they were kept; None for a stranger."""
    number, chat = turn.incoming.user_id, turn.incoming.chat_id
    return remembered(
        turn.session, Person, ("telegram", number), lambda: _read_sender(turn.session, number, chat)
    )


def _read_sender(session: Session, number: int, chat: int) -> Person | None:
    found = session.exec(_BY_TELEGRAM, params={"number": number, "chat": chat}).first()
    if found is None:
        return None
    person: Person = found[0]
    profile, coach, settings, is_contact, stands_in, has_others_beside, is_asked = found[1:8]
    target_waits, menu = found[8:]
    menu_was_read(session, chat, menu)
    were_found_to_wait(session, TopicKind.TARGET, id_of(person), some=target_waits)
    read: list[tuple[type[SQLModel], tuple[object, ...], object]] = [
        (AthleteProfile, (person.id,), profile),
        (Person, ("contact", person.id), is_contact),
    ]
    if not stands_in:
        read.append((SecondCoach, ("to", person.id), ()))
    if coach is not None:
        read.append((CoachSettings, (coach.id,), settings))
        if not has_others_beside:
            read.append((SecondCoach, ("by", coach.id), ()))
    if not is_asked:
        read.append((OpenQuestion, ("open", person.id), ()))
    remember(session, *read)
    return person


def asked(session: Session, person: Person) -> Sequence[OpenQuestion]:
    """The questions that this person has been asked and has not answered, the latest last."""
    return remembered_rows(session, OpenQuestion, ("open", person.id), _ASKED, person=person.id)


def has_agreed(session: Session, athlete: Person) -> bool:
    """Whether this athlete has agreed that what they write is kept and passed on."""
    questions = [one for one in asked(session, athlete) if one.flow == FIRST_QUESTIONS]
    return not questions or questions[-1].answers.get(CONSENT) == "yes"


def given_by(session: Session, coach_id: int) -> Sequence[SecondCoach]:
    """What this coach has given to others and not ended."""
    return remembered_rows(session, SecondCoach, ("by", coach_id), _BESIDE, coach=coach_id)


def is_second_contact(session: Session, person: Person) -> bool:
    """Whether a coach has named them as the one to call besides."""
    return remembered(
        session, Person, ("contact", person.id),
        lambda: session.exec(_IS_CONTACT, params={"person": person.id}).one(),
    )  # fmt: skip


def touch_person(turn: ChatTurn) -> Person | None:
    """The person who did this, with chat and name brought up to date; None for a stranger."""
    person = sender(turn)
    if person is not None:
        now = {
            "chat_id": turn.incoming.chat_id,
            "first_name": _name_now(turn.incoming.first_name, person.first_name),
            "language": turn.incoming.language or person.language,
            "reachable": person.reachable or turn.incoming.kind is not Kind.BLOCKED,
        }
        for name, value in now.items():
            if getattr(person, name) != value:  # what is set is written, be it the same
                setattr(person, name, value)
    return person


def get_or_create_person(turn: ChatTurn) -> Person:
    """The person who did this, written down if they are new."""
    known = touch_person(turn)
    if known is not None:
        return known
    person = Person(
        telegram_user_id=turn.incoming.user_id,
        chat_id=turn.incoming.chat_id,
        first_name=turn.incoming.first_name or "there",
        language=turn.incoming.language,
        created_at=turn.now,
    )
    turn.session.add(person)
    turn.session.flush()
    return person


def _name_now(sent: str, kept: str) -> str:
    """The name as Telegram has it now, with what tells it apart from another's kept behind it."""
    if not sent or (kept.startswith(f"{sent} ") and _APART.fullmatch(kept[len(sent) + 1 :])):
        return kept
    return sent


def tell_apart(session: Session, person: Person, coach_id: int, *, initial: str = "") -> str:
    """Give somebody whose name another of this coach's athletes has a name of their own, with the
    first letter of their family name or a number behind it; returns the name they share, "" where
    nobody has it.
    """
    others = select(Person.first_name).where(
        Person.id == AthleteProfile.person_id,
        AthleteProfile.coach_id == coach_id,
        Person.id != person.id,
    )
    taken = {name.casefold() for name in session.exec(others)}
    shared = person.first_name
    if shared.casefold() not in taken:
        return ""
    letter = [f"{shared} {initial}."] if initial.isalpha() else []
    numbered = (f"{shared} {number}" for number in count(2))
    person.first_name = next(
        name for name in chain(letter, numbered) if name.casefold() not in taken
    )
    return shared


def get_person(session: Session, person_id: int) -> Person:
    person = session.get(Person, person_id)
    if person is None:
        raise LookupError(f"no person {person_id}")
    return person


def name_of(session: Session, person_id: int) -> str:
    """What a person is called."""
    return get_person(session, person_id).first_name


def person_in_chat(session: Session, chat_id: int) -> Person | None:
    return session.exec(_IN_CHAT, params={"chat": chat_id}).first()


def profile_of(session: Session, person_id: int | None) -> AthleteProfile | None:
    if person_id is None:
        return None
    return remembered(
        session, AthleteProfile, (person_id,),
        lambda: session.get(AthleteProfile, person_id), flushes=False,
    )  # fmt: skip


def get_profile(session: Session, person_id: int | None) -> AthleteProfile:
    """The profile of somebody who is an athlete. Raises `LookupError` where there is none."""
    profile = profile_of(session, person_id)
    if profile is None:
        raise LookupError(f"no athlete {person_id}")
    return profile


def athletes_of(session: Session, coach: Person) -> list[AthleteProfile]:
    """The coach's athletes, in the order in which they came."""
    return list(session.exec(_COACHED_BY, params={"coach": coach.id}))


def own_athlete(session: Session, coach: Person, athlete_id: int) -> AthleteProfile | None:
    """The athlete if this person coaches them, first or second with full rights.

    None for everybody else, whether the athlete exists or not.
    """
    profile = profile_of(session, athlete_id)
    if profile is None or profile.status == AthleteStatus.ENDED:
        return None
    return profile if profile.coach_id == coach.id or _stands_in(session, coach, profile) else None


def may_see(session: Session, reader: Person, profile: AthleteProfile) -> bool:
    """Whether this is their own week or that of an athlete whom they coach."""
    return reader.id == profile.person_id or (
        own_athlete(session, reader, profile.person_id) is not None
    )


def still_sees(session: Session, named: Mapping[str, Any]) -> bool:
    """Whether the reader of a document may see the athlete whom it names, now that it is made."""
    reader, profile = session.get(Person, named["reader"]), profile_of(session, named["athlete"])
    return reader is not None and profile is not None and may_see(session, reader, profile)


def _stands_in(session: Session, coach: Person, profile: AthleteProfile) -> bool:
    if coach.id == profile.person_id:
        return False
    asked = {"person": coach.id, "coach": profile.coach_id, "athlete": profile.person_id}
    return session.exec(_STANDS_IN, params=asked).first() is not None


def example_of(profile: AthleteProfile, *, sharpness: bool = True) -> str:
    """A morning in one line as this athlete would write it: "61.2 7 3.5 4", "134.9 7 118 4"."""
    return one_line(
        profile.body_mass_kg or 61.2, profile.weight_unit,
        profile.baseline.get("water_l") or 3.5, profile.volume_unit,
    ) + (" 4" if sharpness else "")  # fmt: skip


def is_own_coach(profile: AthleteProfile) -> bool:
    """Whether nobody else coaches the athlete, so that nobody else is told of them."""
    return profile.coach_id == profile.person_id


def local_date(profile: AthleteProfile, context: Context) -> date:
    """Today where the athlete is."""
    return context.now.astimezone(ZoneInfo(profile.zone or "UTC")).date()


def record(turn: Turn, athlete_id: int, what: Entry, *, by: int | None) -> None:
    """Keep who did what, when and why; whoever has the roster open or a calendar sees it soon."""
    row = HistoryRow(
        athlete_id=athlete_id, by_id=by, at=turn.now, what=what.kind, detail=what.detail
    )
    turn.session.add(row)
    turn.session.info.setdefault(PENDING_ENTRIES, []).append(row)
    profile = profile_of(turn.session, athlete_id)
    if profile is not None:
        fellows = {row.person_id for row in given_by(turn.session, profile.coach_id)}
        for coach_id in (profile.coach_id, *sorted(fellows)):
            roster_stale(turn, coach_id)


def pending_entries(session: Session) -> Sequence[HistoryRow]:
    """What has been kept in this transaction, in order; it grows with what is kept from now on."""
    kept: list[HistoryRow] = session.info.setdefault(PENDING_ENTRIES, [])
    return kept


def drop_pending_entries(session: Session) -> None:
    """What had been kept in this transaction is deleted again."""
    session.info.pop(PENDING_ENTRIES, None)


def active(turn: Turn, person: Person) -> AthleteProfile | None:
    """The person's profile if check-ins are running; else they are told why not."""
    profile = get_profile(turn.session, person.id)
    if profile.status == AthleteStatus.ACTIVE:
        return profile
    say(
        turn,
        chat_id=person.chat_id,
        text=common.not_active(profile.status, self_coached=is_own_coach(profile)),
    )
    return None


_GIVEN_TO = (
    select(SecondCoach)
    .where(SecondCoach.person_id == bindparam("person"), _STANDING)
    .order_by(col(SecondCoach.id))
)


def is_first_coach(coach: Person, profile: AthleteProfile) -> bool:
    """Whether the relation itself is this person's: to end it, to bring in a second coach."""
    return profile.coach_id == coach.id


def athletes_seen_by(session: Session, coach: Person) -> list[AthleteProfile]:
    """The coach's own athletes, then those of others that they have full rights on."""
    own = athletes_of(session, coach)
    found = {profile.person_id: profile for profile in own}
    for row in given_to(session, coach):
        if row.rights == Rights.FULL:
            for profile in covered(session, row):
                found.setdefault(profile.person_id, profile)
    return list(found.values())


def covered(session: Session, row: SecondCoach) -> list[AthleteProfile]:
    """The athletes that a second coach was given, as far as they still are the first one's."""
    athletes = athletes_of(session, get_person(session, row.coach_id))
    return [one for one in athletes if row.athlete_id in (None, one.person_id)]


def second_coaches(
    session: Session, profile: AthleteProfile, *, rights: Rights | None = None
) -> list[Person]:
    """Who stands beside the coach of this athlete now, the earliest first."""
    rows = given_by(session, profile.coach_id)
    theirs = [row for row in rows if row.athlete_id in (None, profile.person_id)]
    ids = dict.fromkeys(row.person_id for row in theirs if rights in (None, row.rights))
    return [get_person(session, one) for one in ids if one != profile.person_id]


def others_coaching(session: Session, profile: AthleteProfile) -> list[Person]:
    """The coach and those beside with full rights, as far as they are somebody else."""
    return [one for one in approvers(session, profile) if one.id != profile.person_id]


def given_to(session: Session, person: Person) -> Sequence[SecondCoach]:
    """What this person was given as second coach and still has."""
    return remembered_rows(session, SecondCoach, ("to", person.id), _GIVEN_TO, person=person.id)


def approvers(session: Session, profile: AthleteProfile) -> list[Person]:
    """Whose word counts on this athlete's changes: the coach's, and that of full second coaches."""
    coach = get_person(session, profile.coach_id)
    return [coach, *second_coaches(session, profile, rights=Rights.FULL)]
