"""How much of a slip in the deciding code the tests would notice: `python -m tests.mutation`.

Each mutant is one small change (`changes.py`) of one of the modules below, made in a copy of the tree;
it is killed where one of the tests beside it fails. What survives is printed with its line: either
nothing can tell it from the code, which `alike.py` says with the reason, or an assertion is missing.
`--only limits --most 20` takes a minute. With `--phrases` each way of saying a complaint is left out
of its table in turn.
"""

from __future__ import annotations

import argparse
import ast
import os
import random
import shutil
import subprocess
import sys
import tempfile
import time
from collections.abc import Mapping, Sequence
from pathlib import Path

from tests.mutation.alike import ALIKE
from tests.mutation.changes import Mutant, mutants

#: The modules that decide, and the tests that are to notice: run once for all of a row.
WATCHED: Mapping[tuple[str, ...], tuple[str, ...]] = {
    (
        "values/limits", "planning/room", "decision/sizing", "decision/rules/rule",
        "decision/rules/table", "decision/facts", "decision/gather",
        "decision/gates", "decision/decide",
    ): (
        "test_limits", "test_limit_edges", "test_sizing", "test_facts", "test_rule_steps",
        "test_rules", "test_gather", "test_grading", "test_gates", "test_what_stands",
        "test_says_spilled", "test_event_asks", "test_coachs_eye", "test_foresight", "test_replay",
        "test_decide", "test_kept_decisions",
    ),
    ("planning/behind/next_load", "planning/behind/load_room"): (
        "test_next_load",
        "test_next_load_moved",
        "test_next_load_asks",
    ),
    (
        "safety/__init__", "safety/water", "safety/weight", "safety/complaints",
    ): (
        "test_safety", "test_safety_levels", "test_safety_unnoticed", "test_safety_properties",
        "test_safety_edges", "test_drinking", "test_after_show",
    ),
}  # fmt: skip


def main(arguments: Sequence[str] | None = None) -> int:
    """Exit status 1 where fewer than the asked share of the mutants was killed."""
    names = [_name(path) for row in WATCHED for path in row]
    parser = argparse.ArgumentParser(prog="python -m tests.mutation", description=__doc__)
    parser.add_argument("--only", nargs="*", choices=names, default=names)
    parser.add_argument("--most", type=int, default=0, help="mutants a module, at random (0: all)")
    parser.add_argument("--seed", type=int, default=1)
    parser.add_argument("--share", type=float, default=0.9, help="to be killed at least")
    parser.add_argument("--phrases", action="store_true", help="the tables of complaints instead")
    parser.add_argument("--here", action="store_true", help="in this tree itself, and in no copy")
    asked = parser.parse_args(arguments)
    if not asked.here:
        return _in_a_copy(sys.argv[1:] if arguments is None else list(arguments))
    begun = time.perf_counter()
    if asked.phrases:
        killed, tried = _phrases(asked.most, str(asked.seed))
    else:
        rows = [[one for one in row if _name(one) in asked.only] for row in WATCHED]
        counts = [_held_against(row, asked.most, str(asked.seed)) for row in rows if row]
        killed, tried = (sum(each) for each in zip(*counts, strict=True))
    share = killed / max(tried, 1)
    _say(f"{killed} of {tried} killed, {share:.0%}, in {time.perf_counter() - begun:.0f} s")
    return 0 if share >= asked.share else 1


def _name(path: str) -> str:
    folder, _, name = path.rpartition("/")
    return folder if name == "__init__" else name


def _in_a_copy(arguments: Sequence[str]) -> int:
    """The same command in a copy of the tree, so that what is worked on may go on changing."""
    root = Path(__file__).parents[2]
    with tempfile.TemporaryDirectory() as folder:
        for part in ("engine", "bot", "tests"):
            shutil.copytree(root / part, Path(folder, part))
        command = [sys.executable, "-m", "tests.mutation", "--here", *arguments]
        return subprocess.run(command, cwd=folder, check=False).returncode


def _held_against(paths: Sequence[str], most: int, seed: str) -> tuple[int, int]:
    """How many mutants of these modules were killed, of how many: in a process of its own."""
    reads, writes = os.pipe()
    child = os.fork()
    if not child:
        try:
            os.close(reads)
            killed, tried = _killed(paths, most, seed)
            os.write(writes, f"{killed} {tried}".encode())
            os._exit(0)
        finally:
            os._exit(1)
    os.close(writes)
    with os.fdopen(reads) as told:
        words = told.read().split()
    os.waitpid(child, 0)
    if not words:
        raise SystemExit(f"{', '.join(paths)}: the run broke off")
    return int(words[0]), int(words[1])


def _killed(paths: Sequence[str], most: int, seed: str) -> tuple[int, int]:
    # Loaded here, so that one row of modules knows nothing of another.
    from tests.mutation.killing import Survivors  # noqa: PLC0415

    root = Path.cwd()
    files = {
        f"engine/{path}".removesuffix("/__init__").replace("/", "."): root / f"engine/{path}.py"
        for path in paths
    }
    row = next(row for row in WATCHED if set(paths) <= set(row))
    tests = [root / "tests" / "engine" / f"{one}.py" for one in WATCHED[row]]
    watched, killed, tried = Survivors(files, tests, root), 0, 0
    for name in files:
        begun = time.perf_counter()
        chosen = _chosen(watched.trees[name], name, most, seed)
        left = [one for one in chosen if watched.survives(name, one)]
        killed, tried = killed + len(chosen) - len(left), tried + len(chosen)
        took = time.perf_counter() - begun
        _say(f"{name}: {len(chosen) - len(left)} of {len(chosen)} killed, in {took:.0f} s")
        for mutant in left:
            _say(f"  line {mutant.line}  {mutant}")
    return killed, tried


def _chosen(tree: ast.Module, name: str, most: int, seed: str) -> list[Mutant]:
    """The module's mutants, or so many of them at random; without those that are called alike."""
    found = mutants(tree)
    alike = ALIKE.get(name, {})
    if gone := alike.keys() - {str(one) for one in found}:
        _say(f"{name}: called alike, and no mutants any more: {sorted(gone)}")
    chosen = [one for one in found if str(one) not in alike]
    if most:
        chosen = random.Random(f"{seed}/{name}").sample(chosen, min(most, len(chosen)))
    return sorted(chosen, key=lambda one: one.line)


def _phrases(most: int, seed: str) -> tuple[int, int]:
    from tests.mutation.phrases import unnoticed  # noqa: PLC0415 - the tables are many

    tried, left = unnoticed(most, seed)
    for one in left:
        _say(f"  {one}")
    return tried - len(left), tried


def _say(line: str) -> None:
    print(line, flush=True)  # noqa: T201 - a command


if __name__ == "__main__":
    os.environ.setdefault("OMP_NUM_THREADS", "1")  # one core: others have work to do
    sys.exit(main())
