"""How much of a slip in the deciding code the tests would notice: `python -m tests.mutation`.

Each mutant is one small change (a comparison's edge, `and` for `or`, `min` for `max`, a level, a sign,
a figure) in one of the modules below, made in a copy of the tree; it is killed where one of the tests
beside it fails. What survives is printed with its line: either nothing can tell it from the code, or
an assertion is missing. It takes hours for all; `--most 20 --only limits` takes minutes.
"""

from __future__ import annotations

import argparse
import ast
import copy
import os
import random
import shutil
import sys
import tempfile
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from pathlib import Path

import hypothesis  # noqa: F401 - loaded before the children begin
import numpy as np  # noqa: F401
import pytest
import scipy.special  # noqa: F401

ROOT = Path(__file__).parents[1]
#: Each module that decides, by its file's name, and the tests that are to notice.
WATCHED: Mapping[str, tuple[str, ...]] = {
    "limits": ("test_limits", "test_decide", "test_evidence"),
    "room": ("test_limits",),
    "sizing": ("test_sizing", "test_evidence"),
    "rules": ("test_rules", "test_grading", "test_sizing", "test_decide"),
    "facts": ("test_rules", "test_grading", "test_decide"),
    "gather": ("test_rules", "test_grading", "test_decide", "test_event_asks"),
    "decision/grading": ("test_grading",),
    "gates": ("test_decide", "test_replay"),
    "decide": ("test_decide", "test_replay", "test_foresight"),
    "next_load": ("test_next_load",),
    "safety/low_sodium": ("test_safety", "test_safety_levels", "test_safety_unnoticed"),
    "safety/drinking": ("test_drinking", "test_safety_unnoticed", "test_safety"),
    "safety/energy": ("test_safety", "test_safety_unnoticed"),
    "safety/water": ("test_safety", "test_safety_levels", "test_safety_unnoticed"),
    "safety/weight": ("test_safety", "test_safety_properties", "test_safety_unnoticed"),
    "safety/readings": ("test_safety", "test_safety_properties", "test_safety_unnoticed"),
    "safety/complaints": ("test_safety_levels", "test_safety", "test_safety_unnoticed"),
}
#: Tests of the engine need nothing of the bot's, whose fixtures cost more than they do.
OPTIONS = (
    "-x", "-q", "-n", "0", "-p", "no:cacheprovider", "--noconftest", "-o", "markers=soak: long",
    "-W", "ignore::pytest.PytestAssertRewriteWarning",
)  # fmt: skip
_COMPARED: Mapping[type[ast.cmpop], type[ast.cmpop]] = {
    ast.Lt: ast.LtE, ast.LtE: ast.Lt, ast.Gt: ast.GtE, ast.GtE: ast.Gt, ast.Eq: ast.NotEq,
    ast.NotEq: ast.Eq, ast.In: ast.NotIn, ast.NotIn: ast.In, ast.Is: ast.IsNot, ast.IsNot: ast.Is,
}  # fmt: skip
_ADDED: Mapping[type[ast.operator], type[ast.operator]] = {
    ast.Add: ast.Sub, ast.Sub: ast.Add, ast.Mult: ast.Div, ast.Div: ast.Mult,
}  # fmt: skip
_NAMES = {"min": "max", "max": "min", "any": "all", "all": "any"}
_MEMBERS = {
    ("Level", "ADVISORY"): "CAUTION", ("Level", "CAUTION"): "ADVISORY",
    ("Level", "WARNING"): "CAUTION", ("Forecast", "SILENT"): "SIZES",
    ("Forecast", "LOWERS"): "SIZES", ("Forecast", "DEEPENS"): "LOWERS",
}  # fmt: skip


@dataclass(frozen=True, slots=True)
class Mutant:
    """One module with one small change."""

    line: int
    was: str
    now: str
    code: str


def mutants(code: str) -> Iterator[Mutant]:
    """Every mutant of a module's code, one change each."""
    tree = ast.parse(code)
    passed_over = {id(one) for node in ast.walk(tree) for one in _unseen(node)}
    for number, node in enumerate(ast.walk(tree)):
        for changed in _changes(node) if id(node) not in passed_over else ():
            whole = copy.deepcopy(tree)
            twin = list(ast.walk(whole))[number]
            for name, value in ast.iter_fields(changed):
                setattr(twin, name, value)
            yield Mutant(
                line=getattr(node, "lineno", 0),
                was=ast.unparse(node),
                now=ast.unparse(changed),
                code=ast.unparse(ast.fix_missing_locations(whole)),
            )


def _unseen(node: ast.AST) -> Iterator[ast.AST]:
    """What no decision could tell of: how a class keeps its fields, and where dust is rounded off."""
    unseen: list[ast.expr] = []
    if isinstance(node, ast.ClassDef):
        unseen += node.decorator_list
    elif isinstance(node, ast.Call) and isinstance(node.func, ast.Name) and node.func.id == "round":
        unseen += node.args[1:]
    for one in unseen:
        yield from ast.walk(one)


def _changes(node: ast.AST) -> Iterator[ast.AST]:
    """The node with one small change, for each that there is; of the same kind of node."""
    other = copy.deepcopy(node)
    if isinstance(other, ast.Compare):
        for i, compared in enumerate(other.ops):
            if type(compared) in _COMPARED:
                changed = copy.deepcopy(other)
                changed.ops[i] = _COMPARED[type(compared)]()
                yield changed
    elif isinstance(other, ast.BoolOp):
        other.op = ast.Or() if isinstance(other.op, ast.And) else ast.And()
        yield other
    elif isinstance(other, ast.BinOp) and type(other.op) in _ADDED:
        other.op = _ADDED[type(other.op)]()
        yield other
    elif isinstance(other, ast.Name) and other.id in _NAMES:
        other.id = _NAMES[other.id]
        yield other
    elif isinstance(other, ast.Constant) and isinstance(other.value, bool):
        other.value = not other.value
        yield other
    elif isinstance(other, ast.Constant) and isinstance(other.value, int | float):
        other.value += 1
        yield other
    elif isinstance(other, ast.Attribute) and isinstance(other.value, ast.Name):
        member = _MEMBERS.get((other.value.id, other.attr))
        if member is not None:
            other.attr = member
            yield other


def survivors(
    file: Path, tests: Sequence[Path], tree: Path, chosen: Sequence[Mutant]
) -> list[Mutant]:
    """Those of the mutants of this file in the copied tree that none of the tests notices.

    Raises RuntimeError where the tests fail for the code as it is.
    """
    as_it_was = file.read_text(encoding="utf-8")
    if not _passes(tests, tree):
        raise RuntimeError(f"the tests of {file.name} fail before anything is changed")
    found = []
    for mutant in chosen:
        file.write_text(mutant.code, encoding="utf-8")
        if _passes(tests, tree):
            found.append(mutant)
    file.write_text(as_it_was, encoding="utf-8")
    return found


def _passes(tests: Sequence[Path], tree: Path) -> bool:
    """Whether they pass in the copied tree: in a child, which finds the libraries loaded already."""
    child = os.fork()
    if child:
        _, status = os.waitpid(child, 0)
        return status == 0
    status = 1
    try:
        os.chdir(tree)
        # What is in the project is loaded from the tree, and nothing compiled from before a change.
        sys.path[:] = [str(tree), *(place for place in sys.path if Path(place).resolve() != ROOT)]
        sys.dont_write_bytecode = True
        silent = os.open(os.devnull, os.O_WRONLY)
        os.dup2(silent, 1)
        os.dup2(silent, 2)
        status = int(pytest.main([*OPTIONS, *(str(test.relative_to(tree)) for test in tests)]))
    finally:
        os._exit(1 if status else 0)


def main(arguments: Sequence[str] | None = None) -> int:
    """Exit status 1 where fewer than the asked share of the mutants was killed."""
    parser = argparse.ArgumentParser(prog="python -m tests.mutation", description=__doc__)
    parser.add_argument("--only", nargs="*", choices=sorted(WATCHED), default=sorted(WATCHED))
    parser.add_argument("--most", type=int, default=0, help="mutants a module, at random (0: all)")
    parser.add_argument("--seed", type=int, default=1)
    parser.add_argument("--share", type=float, default=0.9, help="to be killed at least")
    asked = parser.parse_args(arguments)
    rng = random.Random(asked.seed)
    tried = killed = 0
    with tempfile.TemporaryDirectory() as folder:
        tree = Path(folder)
        for part in ("engine", "bot", "tests"):
            shutil.copytree(ROOT / part, tree / part)
        shutil.copy(ROOT / "pyproject.toml", tree)
        for name in asked.only:
            (file,) = (tree / "engine").rglob(f"{name}.py")
            tests = [next((tree / "tests" / "engine").rglob(f"{one}.py")) for one in WATCHED[name]]
            chosen = list(mutants(file.read_text(encoding="utf-8")))
            if asked.most:
                chosen = rng.sample(chosen, min(asked.most, len(chosen)))
            left = survivors(file, tests, tree, chosen)
            tried, killed = tried + len(chosen), killed + len(chosen) - len(left)
            _say(f"{name}: {len(chosen) - len(left)} of {len(chosen)} killed")
            for mutant in left:
                _say(f"  line {mutant.line}: {mutant.was}  ->  {mutant.now}")
    share = killed / max(tried, 1)
    _say(f"{killed} of {tried} killed, {share:.0%}")
    return 0 if share >= asked.share else 1


def _say(line: str) -> None:
    print(line, flush=True)  # noqa: T201 - a command


if __name__ == "__main__":
    sys.exit(main())
