"""What is kept with an entry of the history is what its sentence tells: both are read off the code."""

from __future__ import annotations

import ast
from collections import defaultdict
from collections.abc import Iterator
from pathlib import Path

from bot.people.changes import Change

BOT = Path(__file__).parents[2] / "bot"
WORDS = ast.parse((BOT / "people" / "words_changes.py").read_text(encoding="utf-8"))
FUNCTIONS = {node.name: node for node in WORDS.body if isinstance(node, ast.FunctionDef)}


def keys_in(node: ast.AST, detail: str = "detail") -> Iterator[str]:
    """The keys that are looked up in the detail without being asked for first, here or in a helper."""
    asked = {
        one.left.value
        for one in ast.walk(node)
        if isinstance(one, ast.Compare) and isinstance(one.left, ast.Constant)
    } | {
        one.args[0].value
        for one in ast.walk(node)
        if isinstance(one, ast.Call) and ast.unparse(one.func) == f"{detail}.get"
        and isinstance(one.args[0], ast.Constant)
    }  # fmt: skip
    for one in ast.walk(node):
        if isinstance(one, ast.Subscript) and ast.unparse(one.value) == detail:
            if isinstance(one.slice, ast.Constant) and one.slice.value not in asked:
                yield str(one.slice.value)
        elif isinstance(one, ast.Call) and isinstance(one.func, ast.Name):
            helper = FUNCTIONS.get(one.func.id)
            if helper is not None and any(ast.unparse(given) == detail for given in one.args):
                yield from keys_in(helper)


def told() -> dict[str, set[str]]:
    """The keys that each kind's sentence needs."""
    tree = ast.parse((BOT / "people" / "changes.py").read_text(encoding="utf-8"))
    (changes,) = (n for n in tree.body if isinstance(n, ast.ClassDef) and n.name == "Change")
    found: dict[str, set[str]] = {}
    for entry in changes.body:
        if isinstance(entry, ast.Assign) and isinstance(entry.value, ast.Tuple):
            said = ast.unparse(entry.value.elts[1])
            needed = {
                node.args[0].value
                for node in ast.walk(entry.value)
                if isinstance(node, ast.Call) and ast.unparse(node.func) == "itemgetter"
                and isinstance(node.args[0], ast.Constant)
            }  # fmt: skip
            for name, function in FUNCTIONS.items():
                if f"words.{name}" in said.replace(")", " ").replace("(", " ").split():
                    needed |= set(keys_in(function))
            found[ast.unparse(entry.targets[0])] = {str(key) for key in needed}
    return found


def kept() -> dict[str, list[set[str]]]:
    """With which keys each kind is kept, wherever that is said outright."""
    found = defaultdict(list)
    for file in BOT.rglob("*.py"):
        for node in ast.walk(ast.parse(file.read_text(encoding="utf-8"))):
            if not isinstance(node, ast.Call) or ast.unparse(node.func).split(".")[-1] != "record":
                continue
            kinds = [a for a in map(ast.unparse, node.args) if a.startswith("Change.")]
            names = [keyword.arg for keyword in node.keywords]
            if kinds and None not in names:
                found[kinds[0].removeprefix("Change.")].append({str(name) for name in names})
    return found


def test_an_entry_is_kept_with_all_that_its_sentence_tells() -> None:
    needed, calls = told(), kept()
    assert set(needed) == set(Change.__members__)
    assert sum(bool(keys) for keys in needed.values()) > 20
    assert sum(bool(needed[kind]) for kind in calls) > 12
    lacking = {
        f"{kind}: {', '.join(sorted(needed[kind] - given))}"
        for kind, each in calls.items()
        for given in each
        if needed[kind] - given - {"_volume_unit"}
    }
    assert not lacking
