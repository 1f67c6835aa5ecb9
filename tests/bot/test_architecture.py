"""Who may import whom: as tables, which may only shrink. What nobody uses any more has to go."""

from __future__ import annotations

import ast
import graphlib
from collections import defaultdict
from functools import cache
from pathlib import Path

import pytest

ROOT = Path(__file__).parents[2]

#: The kernel knows no feature; a package of it imports packages of lower floors only.
KERNEL = ({"drawing", "store", "words"}, {"core"}, {"people", "telegram"}, {"dialogue", "week"})
FLOOR = {package: floor for floor, packages in enumerate(KERNEL) for package in packages}

#: What stands above the features and puts them together; nothing below imports it.
ABOVE = {
    "app", "cli", "dispatcher", "features", "files", "going_first", "landing", "operation",
    "rehearsal", "watching",
}  # fmt: skip

#: The features, each with the features that it imports.
FEATURES: dict[str, set[str]] = {
    "alerts": set(),
    "athlete": {"alerts", "checkin", "decision", "event", "membership"},
    "calendar": {"decision", "event", "food"},
    "checkin": {"alerts", "decision", "event", "pictures", "plan", "safety"},
    "coach": {
        "alerts",
        "athlete",
        "debrief",
        "decision",
        "event",
        "food",
        "membership",
        "pictures",
        "plan",
        "safety",
    },
    "debrief": {"alerts", "safety"},
    "decision": {"alerts"},
    "direct": {"alerts"},
    "event": {"alerts", "debrief", "decision", "food", "membership", "plan", "readiness"},
    "food": set(),
    "membership": {"alerts", "decision", "direct", "pictures", "readiness", "safety", "sheets"},
    "pictures": {"decision"},
    "plan": {"debrief", "decision", "food"},
    "reachability": {"alerts", "checkin", "coach", "decision", "membership", "safety"},
    "readiness": {"decision"},
    "safety": {"alerts", "decision"},
    "setup": {"decision", "event", "food", "plan", "readiness", "sheets"},
    "sheets": {"alerts", "decision", "food", "plan"},
    "undo": {"coach", "decision", "event"},
}

#: The rooms of the engine, each with the rooms that it imports.
ENGINE: dict[str, set[str]] = {
    "asked": {"symptoms"},
    "evidence": set(),
    "bench": {"decision", "evidence", "model", "planning", "values"},
    "cli": {"bench", "decision", "model", "planning", "values"},
    "decision": {"evidence", "model", "safety", "symptoms", "values"},
    "food": {"evidence", "values"},
    "model": {"evidence", "values"},
    "planning": {"decision", "evidence", "food", "model", "safety", "values"},
    "safety": {"evidence", "symptoms", "values", "written"},
    "stage_day": {"evidence", "values"},
    "symptoms": {"values", "written"},
    "values": {"evidence"},
    "written": {"evidence"},
}


@cache
def modules() -> dict[str, Path]:
    """Every module of the product by its dotted name, migrations apart."""
    found = {}
    for house in ("bot", "engine"):
        for path in (ROOT / house).rglob("*.py"):
            parts = path.relative_to(ROOT).with_suffix("").parts
            if "versions" not in parts:
                found[".".join(parts).removesuffix(".__init__")] = path
    return found


@cache
def imported(module: str) -> frozenset[str]:
    """The product's modules that a module imports, anywhere in it."""
    names = set()
    for node in ast.walk(ast.parse(modules()[module].read_text())):
        if isinstance(node, ast.ImportFrom) and node.module:
            for alias in node.names:
                inner = f"{node.module}.{alias.name}"
                names.add(inner if inner in modules() else node.module)
        elif isinstance(node, ast.Import):
            names.update(alias.name for alias in node.names)
    return frozenset(names & set(modules()))


def arrows(house: str) -> dict[str, set[str]]:
    """For each package of a house the others that its modules import."""
    found: dict[str, set[str]] = defaultdict(set)
    for module in modules():
        parts = module.split(".")
        if parts[0] != house or len(parts) == 1:
            continue
        to = {name.split(".")[1] for name in imported(module) if name.startswith(f"{house}.")}
        found[parts[1]] |= to - {parts[1]}
    return found


def test_every_package_of_the_bot_is_kernel_feature_or_above() -> None:
    assert set(arrows("bot")) == {*FLOOR, *FEATURES, *ABOVE, "settings"}


def test_the_kernel_knows_no_feature_and_leans_on_lower_floors_only() -> None:
    found = arrows("bot")
    wrong = {
        f"{package} imports {other}"
        for package in FLOOR
        for other in found[package]
        if other not in FLOOR or FLOOR[other] >= FLOOR[package]
    }
    assert not wrong


def test_a_feature_imports_the_kernel_and_the_features_in_its_row_all_of_them() -> None:
    found = arrows("bot")
    assert {name: found[name] - set(FLOOR) for name in FEATURES} == FEATURES


def test_a_room_of_the_engine_imports_the_rooms_in_its_row_all_of_them() -> None:
    assert {name: found for name, found in arrows("engine").items() if name != "__main__"} == ENGINE


@pytest.mark.parametrize("table", [FEATURES, ENGINE], ids=["features", "engine"])
def test_the_table_has_no_circle(table: dict[str, set[str]]) -> None:
    graphlib.TopologicalSorter(table).prepare()


def test_what_stands_above_the_features_has_no_circle_either() -> None:
    found = arrows("bot")
    graphlib.TopologicalSorter({name: found[name] & ABOVE for name in ABOVE}).prepare()


def reaches(module: str) -> dict[str, str]:
    """Every module that this one imports, by itself or through others, and through which."""
    through = {module: ""}
    waiting = [module]
    while waiting:
        at = waiting.pop()
        for name in imported(at) - set(through):
            through[name] = at
            waiting.append(name)
    return through


def test_conversations_and_sentences_reach_no_database_not_even_through_others() -> None:
    wrong = {}
    for module in modules():
        last = module.rpartition(".")[2]
        in_words = module.startswith("bot.words")
        if not in_words and last.split("_")[0] not in ("words", "flow"):
            continue
        found = reaches(module)
        stores = sorted(name for name in found if name.startswith("bot.store"))
        if stores:
            wrong[module] = f"{stores[0]} through {found[stores[0]]}"
    assert not wrong
