"""Nothing that an answer waits for reads a whole table: the database is asked how it would look."""

from __future__ import annotations

import re
from collections.abc import Callable, Iterator, Mapping
from datetime import UTC, datetime, timedelta
from typing import Any

import psycopg
import pytest
from sqlalchemy import Column, Engine, Index, PrimaryKeyConstraint, Table, UniqueConstraint, event
from sqlalchemy.dialects import postgresql

from bot.core.timing.clock import DrivenClock
from bot.core.timing.duties import Duties
from bot.core.turn import Turn
from bot.core.use_cases import Runtime, UseCases
from bot.dispatcher import COMMANDS
from bot.features import ON_CARD
from bot.membership.my_data.handing_out import make
from bot.store.db import claiming, is_sqlite, transaction
from bot.store.prune import prune_traffic
from bot.store.tables import metadata
from bot.telegram.sender import Sender
from bot.telegram.worker import Worker
from bot.watching.watch import backlog
from bot.week.events import chats_on_stage
from tests.bench.copies import copies
from tests.bench.crew import counting
from tests.support.weeks import Team, in_peak_week

MORNING = datetime(2027, 5, 4, 6, 30, tzinfo=UTC)

#: Tables of a few rows however many people there are.
STAY_SMALL = {"setting"}
GROWING = {table for table in metadata.tables if table not in STAY_SMALL}
# "SEARCH" without an index is said of min() and max(), which then read everything but for the key.
READS_ALL = re.compile(
    r"^(?:SCAN (?!\w+ USING (?:COVERING )?INDEX ix_\w+_open)|SEARCH (?!\w+ USING))(\w+)"
)
#: What is asked of SQLite; of PostgreSQL it is asked all at once, since there have to be many rows.
ASKED_OF_SQLITE = pytest.mark.sqlite
OF_A_KEY = "SELECT max(outbox.id)"
NOTHING = "WHERE 0 = 1"


class Asked:
    """Every statement that was put to a database, with values that it was put with.

    `writing` leaves out what a test itself looks up: it asks outside of writing transactions.
    """

    def __init__(self, engine: Engine, *, writing: bool) -> None:
        self.statements: dict[str, Any] = {}
        self._writing = writing
        event.listen(engine, "before_cursor_execute", self._note)

    def _note(
        self, connection: Any, _cursor: Any, statement: str, values: Any, _context: Any, many: bool
    ) -> None:
        told = connection.get_execution_options()
        if self._writing and not (told.get("begin_immediate") or "isolation_level" in told):
            return
        if not many and statement.startswith(("SELECT", "UPDATE", "DELETE", "WITH")):
            self.statements[statement] = values

    def reading_whole_tables(self, engine: Engine) -> dict[str, str]:
        """Statements whose plan reads all rows of a table that grows, with that line of the plan."""
        if not is_sqlite(engine):
            return _read_as_a_whole(engine, self.statements)
        found = {}
        with engine.connect() as connection:
            for statement, values in list(self.statements.items()):
                plan = connection.exec_driver_sql(f"EXPLAIN QUERY PLAN {statement}", values)
                for *_, line in plan.all():
                    scanned = READS_ALL.match(line)
                    by_key = statement.startswith(OF_A_KEY) or NOTHING in statement
                    if scanned and scanned.group(1) in GROWING and not by_key:
                        found[statement] = line
        return found


_NAMED = re.compile(r"%\((\w+)\)s")
#: So many times what there is: what is planned for a season of a hundred thousand.
TIMES_AS_MANY = 1000
MANY = 300


def _read_as_a_whole(
    engine: Engine, statements: Mapping[str, Any], *, without: str = ""
) -> dict[str, str]:
    """The same on PostgreSQL, by what the server has counted of the rows, and for many more of them.

    What is put often is planned for these values, and for whatever values there may be; the server
    keeps to the second plan where it costs no more (PostgreSQL's documentation, PREPARE, Notes).
    """
    found = {}
    with engine.connect() as connection:
        cursor = psycopg.RawCursor(connection.connection.dbapi_connection)
        if without:
            cursor.execute(f"DROP INDEX {without}")
        # More people, not more of each: what has a value for each of them has more values.
        cursor.execute(
            "UPDATE pg_statistic SET stadistinct = -stadistinct / reltuples FROM pg_class"
            f" WHERE oid = starelid AND relname = ANY($1) AND stadistinct >= {MANY // 2}",
            [list(GROWING)],
        )
        cursor.execute(
            f"UPDATE pg_class SET reltuples = reltuples * {TIMES_AS_MANY} WHERE relname = ANY($1) OR"
            " oid IN (SELECT indexrelid FROM pg_index WHERE indrelid = ANY($1::regclass[]))",
            [list(GROWING)],
        )
        for statement, values in statements.items():
            if statement.endswith("%s") or OF_A_KEY in statement:
                continue  # a test's own look-up; one step from the end of an index
            names = list(dict.fromkeys(_NAMED.findall(statement)))
            asked = _NAMED.sub(lambda name, all=names: f"${all.index(name[1]) + 1}", statement)
            given = [values[name] for name in names] if names else list(values or ())
            plans = [
                cursor.execute(f"EXPLAIN (FORMAT JSON{how}) {asked}", put).fetchone()[0][0]["Plan"]
                for how, put in (("", given), (", GENERIC_PLAN", None))
            ]
            taken = min(plans, key=lambda plan: plan["Total Cost"])
            if line := next(filter(None, map(_reads_all, _nodes(taken))), ""):
                found[statement] = line
        connection.rollback()
    return found


def _reads_all(node: dict[str, Any]) -> str:
    """What a node of a plan reads as a whole, or ""."""
    kind, table = node["Node Type"], node.get("Relation Name", "")
    reads = "Scan" in kind and kind != "Bitmap Heap Scan" and (table or "Index Name" in node)
    if not reads or table in STAY_SMALL or "Index Cond" in node:
        return ""
    return f"{kind} {table} {node.get('Index Name', '')} {node.get('Filter', '')}"


def _nodes(node: dict[str, Any]) -> Iterator[dict[str, Any]]:
    yield node
    for below in node.get("Plans", ()):
        yield from _nodes(below)


def _written_and_looked_at(team: Team) -> None:
    """What is done each day by everybody."""
    team.athlete.writes("60.4 5 3.5 fine")
    team.athlete.writes("/today")
    team.athlete.writes("can I have coffee")
    team.coach.writes("/roster")
    team.coach.taps("Mira")
    team.coach.writes("/help")
    team.morning(3)
    team.athlete.writes("60.2 3 3.5 2")
    team.morning(3, hour=20)
    team.athlete.writes("dizzy and cramps")
    for name, command in COMMANDS.items():
        for someone, role in ((team.athlete, "athlete"), (team.coach, "coach")):
            if role in command.roles:
                someone.writes(f"/{name}")
    for name in ON_CARD:
        team.coach.presses(f"c:{name}:{team.athlete_id}")


@ASKED_OF_SQLITE
def test_a_check_in_an_approval_and_the_views_read_by_index_alone(
    team_at: Callable[[datetime], Team],
) -> None:
    team = team_at(MORNING)
    asked = Asked(team.world.engine, writing=True)

    _written_and_looked_at(team)

    assert len(asked.statements) > 50
    assert asked.reading_whole_tables(team.world.engine) == {}


async def test_on_postgresql_too_nothing_that_is_waited_for_reads_a_whole_table(
    postgres_engine: Engine,
) -> None:
    """Which way it takes hangs on how many rows there are: so there are many."""
    team = in_peak_week(postgres_engine)
    team.world.until(MORNING)
    asked = Asked(postgres_engine, writing=True)

    _written_and_looked_at(team)
    await _queues_worked_off(team)
    _handed_out(team)

    statements = dict(asked.statements)
    _many(postgres_engine)
    assert len(statements) > 150
    assert _read_as_a_whole(postgres_engine, statements) == {}
    # Or this could not fail: what no index serves, and what one served that is gone.
    whole = ("SELECT * FROM checkin WHERE weight_kg = 60", "SELECT count(*) FROM person")
    by_key = "SELECT * FROM checkin WHERE athlete_id = 2"
    assert set(_read_as_a_whole(postgres_engine, dict.fromkeys((by_key, *whole)))) == set(whole)
    without = "ix_person_second_contact_id"
    assert _read_as_a_whole(postgres_engine, statements, without=without) != {}


def _many(engine: Engine) -> None:
    """Three hundred teams that have lived through the same, all of which is done, and something in
    every table of which they have nothing; counted by the server.
    """
    copies(engine, MANY)
    with engine.connect().execution_options(isolation_level="AUTOCOMMIT") as connection:
        connection.exec_driver_sql("SET session_replication_role = replica")
        for table in metadata.sorted_tables:
            if table.name in GROWING and not connection.execute(table.select().limit(1)).first():
                connection.exec_driver_sql(_something_in(table))
        for table, done in (("inbox", "done"), ("outbox", "sent"), ("agenda", "done")):
            connection.exec_driver_sql(f"UPDATE {table} SET status = '{done}'")
        connection.exec_driver_sql("ANALYZE")


def _something_in(table: Table) -> str:
    """A statement that puts rows of no meaning there, each about another of the people."""
    names = ", ".join(f'"{column.name}"' for column in table.c)
    kinds = [column.type.compile(postgresql.dialect()).partition(" ")[0] for column in table.c]
    values = ", ".join(_VALUES[kind] for kind in kinds)
    return (
        f'INSERT INTO "{table.name}" ({names}) SELECT {values} FROM generate_series(1, 3000) AS n'
    )


_VALUES = {
    "INTEGER": "n", "BIGINT": "n", "FLOAT": "n", "VARCHAR": "'some ' || n", "BOOLEAN": "mod(n, 2) = 0",
    "JSON": "'{}'", "DATE": "date '2027-05-01' + mod(n, 30)", "TIME": "time '07:00'",
    "TIMESTAMP": "timestamptz '2027-05-01 07:00' + n * interval '1 minute'",
}  # fmt: skip


@pytest.mark.parametrize(
    ("said", "most", "and_locks"),
    [("60.4 5 3.5 fine", 19, 0), ("/today", 9, 2), ("can I have coffee", 12, 5)],
)
def test_an_answer_takes_few_statements(
    team_at: Callable[[datetime], Team], said: str, most: int, and_locks: int
) -> None:
    """As many as there are now: who adds one to every morning of everybody should have meant to. On
    PostgreSQL those whom it concerns are locked; what is written is written in fewer.
    """
    team = team_at(MORNING)
    team.athlete.writes("/help")

    with counting(team.world.engine) as put:
        team.athlete.writes(said)

    assert len(put) <= most + (0 if is_sqlite(team.world.engine) else and_locks), put


def _handed_out(team: Team) -> None:
    with transaction(team.world.engine) as session:
        for person_id in (team.athlete_id, 1):
            named = {"person": person_id, "day": MORNING.date().isoformat()}
            assert make(Turn(session, team.world.context), named) is not None


@ASKED_OF_SQLITE
def test_what_somebody_has_here_is_handed_out_by_index_alone(
    team_at: Callable[[datetime], Team],
) -> None:
    team = team_at(MORNING)
    asked = Asked(team.world.engine, writing=True)

    _handed_out(team)

    assert len(asked.statements) > 30
    assert asked.reading_whole_tables(team.world.engine) == {}


async def _queues_worked_off(team: Team) -> None:
    engine, clock = team.world.engine, DrivenClock(MORNING)
    nothing = UseCases(
        incoming=lambda turn: None, due=lambda turn, row: None, undeliverable=lambda turn, row: None
    )
    worker = Worker(
        Runtime(engine, nothing, clock, lambda: team.world.context), threads=1, handled=lambda: None
    )

    await worker.step()
    await worker.close()
    Duties(Runtime(engine, nothing, clock, lambda: team.world.context)).do_due()
    with claiming(engine) as session:
        list(Sender.heads(session, MORNING))
        chats_on_stage(session, [101, 102], MORNING)
        backlog(session, MORNING)


@ASKED_OF_SQLITE
async def test_the_queues_are_worked_off_and_watched_by_index_alone(
    team_at: Callable[[datetime], Team],
) -> None:
    team = team_at(MORNING)
    asked = Asked(team.world.engine, writing=False)

    await _queues_worked_off(team)

    assert len(asked.statements) > 9
    assert asked.reading_whole_tables(team.world.engine) == {}


@ASKED_OF_SQLITE
def test_clearing_out_goes_by_the_order_of_keys_and_sorts_nothing(
    team_at: Callable[[datetime], Team],
) -> None:
    """What was sorted for each handful took hours where millions had been sent."""
    engine = team_at(MORNING).world.engine
    asked = Asked(engine, writing=False)
    prune_traffic(engine, MORNING)
    with engine.connect() as connection:
        for statement, values in list(asked.statements.items()):
            plan = connection.exec_driver_sql(f"EXPLAIN QUERY PLAN {statement}", values).all()
            assert not any("B-TREE" in line for *_, line in plan), statement
    assert len(asked.statements) > 4


@ASKED_OF_SQLITE
def test_a_handful_that_is_cleared_out_is_found_by_its_keys_alone(
    team_at: Callable[[datetime], Team],
) -> None:
    """Found by status, each handful read all that was ever sent while nobody else could write."""
    team = team_at(MORNING)
    team.athlete.writes("60.4 5 3.5 fine")
    engine = team.world.engine
    with transaction(engine) as session:
        for table, done in (("inbox", "done"), ("outbox", "sent")):
            session.connection().exec_driver_sql(f"UPDATE {table} SET status = '{done}'")
    asked = Asked(engine, writing=False)
    assert prune_traffic(engine, MORNING + timedelta(days=40)) > 0

    deletes = {s: v for s, v in asked.statements.items() if s.startswith("DELETE")}
    assert len(deletes) >= 2
    with engine.connect() as connection:
        for statement, values in deletes.items():
            plan = connection.exec_driver_sql(f"EXPLAIN QUERY PLAN {statement}", values).all()
            assert not any("status" in line for *_, line in plan), plan


def test_whoever_and_whatever_a_row_names_is_found_by_an_index() -> None:
    """What is deleted is looked for in every column that may name it: a column without an index is
    read as a whole, while nobody else can write.
    """
    without = [
        f"{table.name}.{column.name}"
        for table in metadata.sorted_tables
        for column in table.c
        if column.foreign_keys and not _leads_an_index(column)
    ]
    assert without == []


def _leads_an_index(column: Column[Any]) -> bool:
    table = column.table
    assert isinstance(table, Table)
    firsts = [next(iter(index.columns)) for index in table.indexes if not _is_of_some_rows(index)]
    firsts += [next(iter(one.columns)) for one in table.constraints if isinstance(one, _KEYS)]
    return column in firsts


_KEYS = (PrimaryKeyConstraint, UniqueConstraint)


def _is_of_some_rows(index: Index) -> bool:
    return index.dialect_options["sqlite"]["where"] is not None
