"""Whose each row of each table is: the one declaration that export and its schema go by.

A table with `athlete_id`, or with `event_id`, is the athlete's by that; all others are declared. What
is about an athlete is theirs, whoever wrote it, but for what a coach noted for themselves alone.
"""

from __future__ import annotations

from collections.abc import Collection, Mapping
from dataclasses import dataclass
from typing import Any

from sqlalchemy import Column, ColumnElement, Table, false, or_
from sqlalchemy import select as pick

from bot.store.tables import metadata


@dataclass(frozen=True, slots=True, kw_only=True)
class Owned:
    """`athlete`: the column that names the athlete whose row it is ("event_id" goes by the event).

    `person`: columns that make it anybody's own; `coach`: those that make it a coach's, of athletes
    that they coach still. `chat`: whether it goes by the chat. `hidden` columns are never given;
    `coachs` are left out of an athlete's. `nobodys` says why a table is nobody's.
    """

    athlete: str = ""
    person: tuple[str, ...] = ()
    coach: tuple[str, ...] = ()
    chat: bool = False
    hidden: frozenset[str] = frozenset()
    coachs: frozenset[str] = frozenset()
    nobodys: str = ""


@dataclass(frozen=True, slots=True)
class Me:
    """Somebody and what they are here. `coaches`: athletes whom they coach now."""

    person_id: int
    chat_id: int
    coaches: frozenset[int] = frozenset()


DECLARED: Mapping[str, Owned] = {
    "person": Owned(person=("id",)),
    "athlete_profile": Owned(athlete="person_id"),
    "meal_times": Owned(athlete="athlete_id"),
    "coach_desk": Owned(coach=("person_id",)),
    "plan_template": Owned(coach=("coach_id",)),
    "coach_note": Owned(coach=("coach_id",)),
    "coach_look": Owned(athlete="athlete_id", coach=("by_id",)),
    "history": Owned(athlete="athlete_id", coach=("by_id",)),
    # The coach's note of a week is told to nobody: it is shown to whoever coaches.
    "debrief": Owned(athlete="athlete_id", coachs=frozenset({"coach_note"})),
    "second_coach": Owned(person=("person_id",), coach=("coach_id",)),
    "invite": Owned(person=("used_by",), coach=("invited_by",), hidden=frozenset({"token_hash"})),
    "open_question": Owned(person=("person_id",)),
    "inbox": Owned(chat=True),
    "outbox": Owned(chat=True),
    "fetch": Owned(person=("person_id",)),
    "agenda": Owned(nobodys="duties ahead, named by what they are about; all of it is in the rows"),
    "setting": Owned(nobodys="what the bot keeps about itself"),
}
#: Drafts of a coach hold athletes' figures; what became of them is in the athletes' rows.
NOT_A_COACHS_DRAFT = "open_question"


def owned(table: Table) -> Owned:
    """Whose the rows are. Raises KeyError for a table of which nobody has said."""
    if table.name in DECLARED:
        return DECLARED[table.name]
    for column in ("athlete_id", "event_id"):
        if column in table.c:
            return Owned(athlete=column)
    raise KeyError(f"whose are the rows of {table.name}? Say so in bot.membership.my_data.owned")


def tables() -> list[Table]:
    """Every table that holds anything of anybody's, parents first."""
    return [table for table in metadata.sorted_tables if not owned(table).nobodys]


def as_athlete(table: Table, me: Me) -> ColumnElement[bool] | None:
    """Which rows are about this person as an athlete; None where no row of the table is."""
    how = owned(table)
    if not how.athlete:
        return None
    if how.athlete == "event_id":
        events = metadata.tables["event"]
        mine = pick(events.c.id).where(events.c.athlete_id == me.person_id)
        return table.c.event_id.in_(mine)
    return table.c[how.athlete] == me.person_id


def as_coach(table: Table, me: Me) -> ColumnElement[bool] | None:
    """Which rows are this person's as a coach."""
    how = owned(table)
    if not how.coach:
        return None
    mine = or_(*(table.c[column] == me.person_id for column in how.coach))
    return _still_coached(table, mine, me.coaches)


def as_person(table: Table, me: Me) -> ColumnElement[bool] | None:
    """Which rows are this person's whatever they are here."""
    how = owned(table)
    if how.chat:
        return table.c.chat_id == me.chat_id
    if not how.person:
        return None
    mine: ColumnElement[bool] = or_(*(table.c[column] == me.person_id for column in how.person))
    if table.name == NOT_A_COACHS_DRAFT:
        return mine & or_(table.c.subject_id.is_(None), table.c.subject_id == me.person_id)
    return mine


def given(table: Table, *, to_athlete: bool) -> list[Column[Any]]:
    """The columns that are handed out."""
    how = owned(table)
    left_out = how.hidden | (how.coachs if to_athlete else frozenset())
    return [column for column in table.c if column.name not in left_out]


def _still_coached(
    table: Table, mine: ColumnElement[bool], coaches: Collection[int]
) -> ColumnElement[bool]:
    """Of athletes whom they coach no more, a coach keeps nothing."""
    if "athlete_id" not in table.c or table.name == "second_coach":
        return mine
    return mine & (table.c.athlete_id.in_(coaches) if coaches else false())
