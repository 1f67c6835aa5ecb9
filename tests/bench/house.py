"""How the house stands: `python -m tests.bench.house`.

Prints lines, arrows inside and across folders, circles, the longest folder, and the files that one
check-in and one approval pass through, beside the same of earlier commits. Not in the suite.
"""

from __future__ import annotations

import ast
import sys
import tempfile
from collections import Counter, defaultdict
from collections.abc import Callable
from datetime import UTC, datetime
from pathlib import Path
from types import FrameType
from typing import NamedTuple

ROOT = Path(__file__).parents[2]
HOUSES = ("bot", "engine")


def modules() -> dict[str, Path]:
    """Every module of both houses, migrations apart."""
    files = [path for house in HOUSES for path in (ROOT / house).rglob("*.py")]
    return {
        ".".join(path.relative_to(ROOT).with_suffix("").parts).removesuffix(".__init__"): path
        for path in files
        if "versions" not in path.parts
    }


def arrows(known: dict[str, Path]) -> set[tuple[str, str]]:
    """Which module imports which, inside functions too."""
    found = set()
    for name, path in known.items():
        package = name if path.name == "__init__.py" else name.rpartition(".")[0]
        for node in ast.walk(ast.parse(path.read_text(encoding="utf-8"))):
            if isinstance(node, ast.ImportFrom):
                up = package.split(".")[: len(package.split(".")) - node.level + 1]
                base = ".".join([*(up if node.level else []), *filter(None, [node.module])])
                for alias in node.names:
                    target = f"{base}.{alias.name}"
                    found.add((name, target if target in known else base))
    return {(a, b) for a, b in found if b in known and a != b}


def folder(module: str) -> str:
    return ".".join(module.split(".")[:2])


def circles(links: set[tuple[str, str]]) -> list[set[str]]:
    """Groups of folders each of which reaches all others of its group."""
    reach: dict[str, set[str]] = defaultdict(set)
    for a, b in links:
        reach[a].add(b)
    changed = True
    while changed:
        changed = False
        for ends in reach.values():
            more = set().union(*(reach.get(end, set()) for end in ends)) - ends
            changed = changed or bool(more)
            ends.update(more)
    groups = {frozenset(b for b in reach[a] if a in reach.get(b, set())) for a in reach}
    return [set(group) for group in groups if len(group) > 1]


class Walk:
    """The files that a call passes through, and how often it changes from one to another."""

    def __init__(self) -> None:
        self.files: Counter[str] = Counter()
        self.changes = 0
        self._last = ""

    def _seen(self, frame: FrameType, event: str, _argument: object) -> None:
        if event not in ("call", "return"):
            return
        file = frame.f_code.co_filename if event == "call" else _caller(frame)
        if file.startswith((str(ROOT / "bot"), str(ROOT / "engine"))):
            self.files[file] += event == "call"
            self.changes += file != self._last
            self._last = file

    def take(self, work: Callable[[], object]) -> None:
        sys.setprofile(self._seen)
        try:
            work()
        finally:
            sys.setprofile(None)


def _caller(frame: FrameType) -> str:
    return frame.f_back.f_code.co_filename if frame.f_back else ""


def walks() -> dict[str, Walk]:
    """A check-in in one line that asks for a sign-off, and the coach's approval of it, of a bot that
    has started (`load`); and the check-in of the next morning, when what is made once has been made.
    """
    from bot.dispatcher import load
    from bot.store.db import make_engine
    from bot.store.migrate import upgrade_to_head
    from tests.support.weeks import in_peak_week

    with tempfile.TemporaryDirectory() as place:
        load()
        engine = make_engine(f"sqlite:///{place}/house.sqlite3")
        upgrade_to_head(engine)
        team = in_peak_week(engine, now=datetime(2027, 5, 1, 15, tzinfo=UTC))
        team.world.until(datetime(2027, 5, 7, 6, tzinfo=UTC))
        team.athlete.hears()
        team.coach.hears()
        checked_in, approved, next_morning = Walk(), Walk(), Walk()
        checked_in.take(lambda: team.athlete.writes("61.0 1 3.5 5 on target fine"))
        asked = team.coach.hears()
        label = next(text for said in asked for text in said.buttons if "Approve" in text)
        approved.take(lambda: team.coach.taps(label, *asked[-1:]))
        team.world.until(datetime(2027, 5, 8, 6, tzinfo=UTC))
        next_morning.take(lambda: team.athlete.writes("61.1 6 3.5 5 on target fine"))
        engine.dispose()
    return {
        "check-in in one line": checked_in,
        "approval": approved,
        "check-in of the next morning": next_morning,
    }


class House(NamedTuple):
    """The figures of one commit. `checkin`, `approval`: files passed through, and changes of file."""

    modules: int
    lines: int
    inside: int
    across: int
    circles: int
    longest: tuple[str, int]
    checkin: tuple[int, int]
    approval: tuple[int, int]

    def __str__(self) -> str:
        folder, entries = self.longest
        return (
            f"{self.modules} modules, {self.lines:,} lines; arrows {self.inside:,} inside a folder and "
            f"{self.across:,} across; circles of folders {self.circles}; longest {folder} with "
            f"{entries} files; a check-in in one line through {self.checkin[0]} files with "
            f"{self.checkin[1]:,} changes of file, an approval through "
            f"{self.approval[0]} with {self.approval[1]:,}"
        )


#: Measured by the functions above on those commits; each did more than the one before it.
BEFORE = {
    "by layers, commit 9392ba79": House(
        360, 49831, 772, 1326, 1, ("bot/service", 90), (77, 1114), (40, 322)
    ),
    "by layers at its last, commit 5512be7e": House(
        425, 63697, 966, 1535, 1, ("bot/service", 99), (102, 2368), (42, 342)
    ),
    "by feature, the newest before lines were cut, commit e014e361": House(
        838, 102805, 1614, 3512, 0, ("bot/store/tables", 18), (150, 1859), (38, 601)
    ),
}


def now() -> tuple[House, list[list[str]], dict[str, Walk]]:
    """The figures as they are, the circles by name, and what was walked."""
    known = modules()
    links = arrows(known)
    across = {(a, b) for a, b in links if folder(a) != folder(b)}
    longest, entries = Counter(path.parent for path in known.values()).most_common(1)[0]
    tangles = circles({(folder(a), folder(b)) for a, b in across})
    walked = walks()
    checkin, approval = walked["check-in in one line"], walked["approval"]
    house = House(
        modules=len(known),
        lines=sum(len(path.read_text(encoding="utf-8").splitlines()) for path in known.values()),
        inside=len(links) - len(across),
        across=len(across),
        circles=len(tangles),
        longest=(str(longest.relative_to(ROOT)), entries),
        checkin=(len(checkin.files), checkin.changes),
        approval=(len(approval.files), approval.changes),
    )
    return house, sorted(map(sorted, tangles)), walked


def main() -> None:
    for when, house in BEFORE.items():
        print(f"{when}: {house}")
    house, tangles, walked = now()
    print(f"now: {house}")
    tables = [path for house in HOUSES for path in (ROOT / house).rglob("*.toml")]
    told = sum(len(path.read_text(encoding="utf-8").splitlines()) for path in tables)
    print(
        f"beside them {len(tables)} tables of text with {told:,} lines, which were modules before"
    )
    if tangles:
        print(f"circles: {tangles}")
    morning = walked["check-in of the next morning"]
    print(f"check-in of the next morning: {len(morning.files)} files, {morning.changes:,} changes")


if __name__ == "__main__":
    main()
