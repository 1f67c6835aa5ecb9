"""Who stands beside a coach, and whose athletes a person therefore sees.

A second coach's time is ended by a duty, and before anything that they do themselves after it.
"""

from __future__ import annotations

from sqlalchemy import bindparam
from sqlmodel import Session, col, select

from bot.people.people import athletes_of, beside, get_person
from bot.store.base import id_of
from bot.store.remembering import remembered_rows
from bot.store.tables.coach import Rights, SecondCoach
from bot.store.tables.people import AthleteProfile, Person

_STANDING = col(SecondCoach.ended_at).is_(None)
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
    rows = [row for row in beside(session, profile.coach_id) if _covers(row, profile)]
    ids = dict.fromkeys(row.person_id for row in rows if rights in (None, row.rights))
    return [get_person(session, one) for one in ids if one != profile.person_id]


def others_coaching(session: Session, profile: AthleteProfile) -> list[Person]:
    """The coach and those beside with full rights, as far as they are somebody else."""
    coach = get_person(session, profile.coach_id)
    everybody = [coach, *second_coaches(session, profile, rights=Rights.FULL)]
    return [person for person in everybody if person.id != profile.person_id]


def given_to(session: Session, person: Person) -> list[SecondCoach]:
    """What this person was given as second coach and still has."""
    found = remembered_rows(session, SecondCoach, ("to", person.id), _GIVEN_TO, person=person.id)
    return list(found)


def given_by(session: Session, coach: Person) -> list[SecondCoach]:
    """What this coach has given to others and not ended."""
    return list(beside(session, id_of(coach)))


def _covers(row: SecondCoach, profile: AthleteProfile) -> bool:
    return row.athlete_id in (None, profile.person_id)


def approvers(session: Session, profile: AthleteProfile) -> list[Person]:
    """Whose word counts on this athlete's changes: the coach's, and that of full second coaches."""
    coach = get_person(session, profile.coach_id)
    return [coach, *second_coaches(session, profile, rights=Rights.FULL)]
