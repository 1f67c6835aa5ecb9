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

#: Each module that decides, by the end of its file's name, and the tests that are to notice.
WATCHED: Mapping[str, tuple[str, ...]] = {
    "values/limits": ("test_limits", "test_decide"),
    "planning/room": ("test_limits",),
    "decision/sizing": ("test_sizing",),
    "decision/rules": ("test_rules", "test_grading", "test_sizing", "test_coachs_eye", "test_decide"),
    "decision/facts": ("test_rules", "test_grading", "test_coachs_eye", "test_decide"),
    "decision/gather": (
        "test_rules", "test_grading", "test_decide", "test_event_asks", "test_coachs_eye",
    ),
    "decision/grading": ("test_grading", "test_rules"),
    "decision/gates": ("test_decide", "test_replay"),
    "decision/decide": ("test_decide", "test_replay", "test_foresight", "test_rules"),
    "planning/next_load": ("test_next_load",),
    "safety/__init__": ("test_safety", "test_safety_levels", "test_safety_unnoticed"),
    "safety/low_sodium": ("test_safety", "test_safety_levels", "test_safety_unnoticed"),
    "safety/drinking": ("test_drinking", "test_safety_unnoticed", "test_safety"),
    "safety/energy": ("test_safety", "test_safety_unnoticed"),
    "safety/water": ("test_safety", "test_safety_levels", "test_safety_unnoticed"),
    "safety/weight": ("test_safety", "test_safety_properties", "test_safety_unnoticed"),
    "safety/readings": ("test_safety", "test_safety_properties", "test_safety_unnoticed"),
    "safety/complaints": ("test_safety_levels", "test_safety", "test_safety_unnoticed"),
}  # fmt: skip


def main(arguments: Sequence[str] | None = None) -> int:
    """Exit status 1 where fewer than the asked share of the mutants was killed."""
    names = {name.rpartition("/")[2] if "__" not in name else name: name for name in WATCHED}
    parser = argparse.ArgumentParser(prog="python -m tests.mutation", description=__doc__)
    parser.add_argument("--only", nargs="*", choices=sorted(names), default=list(names))
    parser.add_argument("--most", type=int, default=0, help="mutants a module, at random (0: all)")
    parser.add_argument("--seed", type=int, default=1)
    parser.add_argument("--share", type=float, default=0.9, help="to be killed at least")
    parser.add_argument("--phrases", action="store_true", help="the tables of complaints instead")
    parser.add_argument("--here", action="store_true", help="in this tree itself, and in no copy")
    asked = parser.parse_args(arguments)
    if not asked.here:
        return _in_a_copy(sys.argv[1:] if arguments is None else list(arguments))
    tried = killed = 0
    begun = time.perf_counter()
    for name in () if asked.phrases else asked.only:
        of, out_of = _held_against(names[name], asked.most, f"{asked.seed}/{name}")
        killed, tried = killed + of, tried + out_of
    if asked.phrases:
        killed, tried = _phrases(asked.most, str(asked.seed))
    share = killed / max(tried, 1)
    _say(f"{killed} of {tried} killed, {share:.0%}, in {time.perf_counter() - begun:.0f} s")
    return 0 if share >= asked.share else 1


def _in_a_copy(arguments: Sequence[str]) -> int:
    """The same command in a copy of the tree, so that what is worked on may go on changing."""
    root = Path(__file__).parents[2]
    with tempfile.TemporaryDirectory() as folder:
        for part in ("engine", "bot", "tests"):
            shutil.copytree(root / part, Path(folder, part))
        command = [sys.executable, "-m", "tests.mutation", "--here", *arguments]
        return subprocess.run(command, cwd=folder, check=False).returncode


def _held_against(name: str, most: int, seed: str) -> tuple[int, int]:
    """How many mutants of the module were killed, of how many: in a process of its own."""
    reads, writes = os.pipe()
    child = os.fork()
    if not child:
        try:
            os.close(reads)
            killed, tried = _killed(name, most, seed)
            os.write(writes, f"{killed} {tried}".encode())
            os._exit(0)
        finally:
            os._exit(1)
    os.close(writes)
    with os.fdopen(reads) as told:
        words = told.read().split()
    os.waitpid(child, 0)
    if not words:
        raise SystemExit(f"{name}: the run broke off")
    return int(words[0]), int(words[1])


def _killed(name: str, most: int, seed: str) -> tuple[int, int]:
    # Loaded here, once for each module.
    from tests.mutation.alike import ALIKE  # noqa: PLC0415
    from tests.mutation.changes import mutants  # noqa: PLC0415
    from tests.mutation.killing import Survivors  # noqa: PLC0415

    root, begun = Path.cwd(), time.perf_counter()
    file = root / "engine" / f"{name}.py"
    tests = [root / "tests" / "engine" / f"{one}.py" for one in WATCHED[name]]
    module = f"engine/{name}".removesuffix("/__init__").replace("/", ".")
    watched = Survivors(module, file, tests, root)
    found = mutants(ast.parse(file.read_text(encoding="utf-8")))
    alike = ALIKE.get(name, {})
    if gone := alike.keys() - {str(one) for one in found}:
        _say(f"{name}: called alike, and no mutants any more: {sorted(gone)}")
    chosen = [one for one in found if str(one) not in alike]
    if most:
        chosen = random.Random(seed).sample(chosen, min(most, len(chosen)))
    left = [one for one in chosen if watched.survives(one)]
    took = time.perf_counter() - begun
    _say(f"{name}: {len(chosen) - len(left)} of {len(chosen)} killed, in {took:.0f} s")
    for mutant in sorted(left, key=lambda one: one.line):
        _say(f"  line {mutant.line}  {mutant}")
    return len(chosen) - len(left), len(chosen)


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
