"""What a use case has read is read again only once something of that kind was written."""

from __future__ import annotations

import ast
import re
from pathlib import Path

import pytest
from sqlalchemy import Engine, update
from sqlmodel import Session, select

from bot.store.db import transaction
from bot.store.remembering import remember_ahead, remembered
from bot.store.tables.setting import SettingRow
from bot.store.tables.traffic import InboxRow
from tests.bench.crew import NOW, counting

BOT = Path(__file__).parents[2] / "bot"


def value(session: Session) -> str | None:
    """What stands under "a", by a question that may be remembered."""
    query = select(SettingRow).where(SettingRow.name == "a")
    row = remembered(session, SettingRow, ("a",), lambda: session.exec(query).first())
    return row.value if row is not None else None


def test_the_same_question_is_put_once(own_engine: Engine) -> None:
    with transaction(own_engine) as session:
        session.add(SettingRow(name="a", value="1"))
        assert value(session) == "1"
        with counting(own_engine) as said:
            assert value(session) == value(session) == "1"
        assert said == []


@pytest.mark.parametrize("how", ["added", "changed", "deleted", "in bulk"])
def test_it_is_put_again_after_a_write_of_that_kind(own_engine: Engine, how: str) -> None:
    with transaction(own_engine) as session:
        if how != "added":
            session.add(SettingRow(name="a", value="1"))
        before = value(session)
        row = session.get(SettingRow, "a")
        if how == "added":
            session.add(SettingRow(name="a", value="2"))
        elif how == "in bulk":
            session.connection().execute(update(SettingRow).values(value="2"))
            session.expire_all()
        elif how == "changed":
            assert row is not None
            row.value = "2"
        else:
            session.delete(row)
        assert before == (None if how == "added" else "1")
        assert value(session) == (None if how == "deleted" else "2")


def test_a_write_of_another_kind_changes_nothing(own_engine: Engine) -> None:
    with transaction(own_engine) as session:
        assert value(session) is None
        session.add(InboxRow(update_id=1, raw={}, received_at=NOW))
        session.flush()
        with counting(own_engine) as said:
            assert value(session) is None
        assert said == []


@pytest.mark.parametrize("after", ["nothing", "another added", "deleted", "all forgotten"])
def test_what_is_known_ahead_of_its_writing_is_not_asked_for_until_more_is_written(
    any_engine: Engine, after: str
) -> None:
    query = select(SettingRow.name).order_by(SettingRow.name)

    def names(session: Session) -> list[str]:
        return remembered(session, SettingRow, ("all",), lambda: list(session.exec(query)))

    with transaction(any_engine) as session:
        session.add(SettingRow(name="b", value="1"))
        session.flush()
        session.add(SettingRow(name="a", value="1"))
        remember_ahead(session, SettingRow, ("all",), ["a", "b"])
        with counting(any_engine) as said:
            assert names(session) == ["a", "b"]
        assert said == []
        if after == "another added":
            session.add(SettingRow(name="c", value="1"))
        elif after == "deleted":
            session.delete(session.get_one(SettingRow, "b"))
        elif after == "all forgotten":
            session.connection()
        with counting(any_engine) as said:
            session.flush()
            found = names(session)
        assert found == {"another added": ["a", "b", "c"], "deleted": ["a"]}.get(after, ["a", "b"])
        assert any("SELECT" in one for one in said) == (after != "nothing")


def test_nothing_is_remembered_from_one_use_case_to_the_next(own_engine: Engine) -> None:
    with transaction(own_engine) as session:
        assert value(session) is None
    with transaction(own_engine) as session:
        session.add(SettingRow(name="a", value="1"))
    with transaction(own_engine) as session:
        assert value(session) == "1"


def test_whatever_writes_in_bulk_does_so_where_it_is_noticed() -> None:
    """`session.connection()` makes the session forget; `session.exec(update(...))` would not."""
    unnoticed = [
        f"{file.relative_to(BOT)}:{node.lineno}"
        for file in BOT.rglob("*.py")
        for source in [file.read_text()]
        if re.search(r"\b(?:update|delete|insert)\s*\(", source)  # else it is taken apart in vain
        for node in ast.walk(ast.parse(source))
        if isinstance(node, ast.Call)
        and isinstance(node.func, ast.Attribute)
        and node.func.attr in ("exec", "execute")
        and isinstance(node.func.value, ast.Name)
        and node.func.value.id == "session"
        and node.args
        and isinstance(node.args[0], ast.Call)
        and getattr(node.args[0].func, "id", "") in ("update", "delete", "insert")
    ]
    assert unnoticed == []
