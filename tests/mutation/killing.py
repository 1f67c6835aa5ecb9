"""Which mutants of a module its tests notice.

The tests are run once as the code is, but that each step of the module says that it was come by. For a
mutant only those are run that come by it, the quickest first, in a child of the process that has loaded
everything already: the child drops what rests on the module and loads it anew, changed.
"""

from __future__ import annotations

import ast
import builtins
import importlib.util
import os
import resource
import sys
import time
from collections import defaultdict
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, field
from importlib.machinery import ModuleSpec, SourceFileLoader
from pathlib import Path
from types import CodeType, ModuleType

import pytest
from hypothesis import HealthCheck, Phase, settings

from tests.mutation.changes import Mutant, mutated, with_steps_told

#: What takes longer than this is not asked about every mutant.
LONGEST_S = 10.0
_SETTINGS = """\
[pytest]
pythonpath = .
addopts = -qx --noconftest --tb=no --assert=plain --import-mode=importlib -m "not soak"
    -p no:cacheprovider -p no:xdist -p no:timeout -p no:asyncio
markers = soak: long
"""


@dataclass
class Seen:
    """A run of the tests as the code is: what each took, and which steps of the module it came by."""

    steps: dict[str, set[int]] = field(default_factory=lambda: defaultdict(set))
    seconds: dict[str, float] = field(default_factory=dict)
    _test: str = ""  # none: what runs while modules are loaded

    @pytest.hookimpl(wrapper=True)
    def pytest_runtest_protocol(self, item: pytest.Item) -> Iterator[None]:
        self._test = item.nodeid
        _forget_caches()
        begun = time.process_time()
        try:
            return (yield)
        finally:
            self.seconds[item.nodeid] = time.process_time() - begun
            self._test = ""

    def came_by(self, step: int) -> None:
        self.steps[self._test].add(step)

    def tests_of(self, mutant: Mutant) -> list[str]:
        """The tests that may tell it from the code as it is, the quickest first."""
        asked = [one for one, took in self.seconds.items() if took < LONGEST_S]
        if mutant.step is not None and mutant.step not in self.steps[""]:
            asked = [one for one in asked if mutant.step in self.steps[one]]
        return sorted(asked, key=self.seconds.__getitem__)


@dataclass
class Chosen:
    """Runs these tests alone, in this order."""

    tests: Sequence[str]

    def pytest_collection_modifyitems(self, items: list[pytest.Item]) -> None:
        order = {test: number for number, test in enumerate(self.tests)}
        kept = [item for item in items if item.nodeid in order]
        items[:] = sorted(kept, key=lambda item: order[item.nodeid])


class Survivors:
    """The tests of one module, run once and ready to be held against its mutants."""

    def __init__(self, name: str, file: Path, tests: Sequence[Path], root: Path) -> None:
        """Raises RuntimeError where the tests fail for the code as it is."""
        (root / "pytest.ini").write_text(_SETTINGS, encoding="utf-8")
        settings.register_profile(
            "mutation", database=None, derandomize=True, deadline=None,
            phases=[Phase.explicit, Phase.generate], suppress_health_check=list(HealthCheck),
        )  # fmt: skip
        settings.load_profile("mutation")
        self._name, self._file, self._root = name, file, root
        self._tree = ast.parse(file.read_text(encoding="utf-8"))
        self._seen = Seen()
        begun = time.process_time()
        builtins.came_by = self._seen.came_by  # type: ignore[attr-defined]
        told = _Changed(name, file, _compiled(with_steps_told(self._tree, "came_by"), file))
        sys.meta_path.insert(0, told)
        failed = _run([str(test) for test in tests], root, self._seen)
        sys.meta_path.remove(told)
        if failed:
            raise RuntimeError(f"the tests of {name} fail before anything is changed")
        self._seconds = time.process_time() - begun
        self._rests_on_it = _resting_on(name, root)
        if not self._passes(self._tree, list(self._seen.seconds)):
            raise RuntimeError(f"the tests of {name} fail when it is loaded anew")

    def survives(self, mutant: Mutant) -> bool:
        """Whether no test notices this mutant."""
        tests = self._seen.tests_of(mutant)
        return not tests or self._passes(mutated(self._tree, mutant), tests)

    def _passes(self, tree: ast.Module, tests: Sequence[str]) -> bool:
        child = os.fork()
        if child:
            return os.waitpid(child, 0)[1] == 0
        status = 1
        try:
            most = int(3 * self._seconds) + 20  # one that never ends is noticed as well
            resource.setrlimit(resource.RLIMIT_CPU, (most, most))
            for name in self._rests_on_it:
                sys.modules.pop(name, None)
            changed = _Changed(self._name, self._file, _compiled(tree, self._file))
            sys.meta_path.insert(0, changed)
            files = dict.fromkeys(test.partition("::")[0] for test in tests)
            status = _run([str(self._root / one) for one in files], self._root, Chosen(tests))
        finally:
            os._exit(1 if status else 0)


class _Changed:
    """Finds the one module that is changed, before anybody else does."""

    def __init__(self, name: str, file: Path, code: CodeType) -> None:
        self._name, self._file = name, str(file)

        class Loader(SourceFileLoader):
            def get_code(self, fullname: str) -> CodeType:
                return code

        self._loader = Loader(name, self._file)

    def find_spec(
        self, name: str, path: object = None, target: ModuleType | None = None
    ) -> ModuleSpec | None:
        if name != self._name:
            return None
        return importlib.util.spec_from_file_location(name, self._file, loader=self._loader)


def _compiled(tree: ast.Module, file: Path) -> CodeType:
    return compile(tree, str(file), "exec", dont_inherit=True)


def _run(tests: Sequence[str], root: Path, plugin: object) -> int:
    """The exit status of a run that prints nothing."""
    arguments = ["-c", str(root / "pytest.ini"), "--rootdir", str(root), *tests]
    told, silent = [os.dup(1), os.dup(2)], os.open(os.devnull, os.O_WRONLY)
    for number in (1, 2):
        os.dup2(silent, number)
    os.close(silent)
    try:
        return int(pytest.main(arguments, plugins=[plugin]))
    finally:
        for number, before in enumerate(told, start=1):
            os.dup2(before, number)
            os.close(before)


def _forget_caches() -> None:
    """So that what one test has had worked out is worked out for the next one too."""
    for name, module in list(sys.modules.items()):
        if name.startswith(("engine.values", "engine.decision")):
            for value in list(vars(module).values()):
                if hasattr(value, "cache_clear"):
                    value.cache_clear()


def _resting_on(changed: str, root: Path) -> set[str]:
    """The modules of the tree that are loaded and import the changed one, by however many steps."""
    loaded = {
        name: Path(module.__file__)
        for name, module in sys.modules.items()
        if getattr(module, "__file__", None) and Path(str(module.__file__)).is_relative_to(root)
    }
    imports = {name: _imported(file) for name, file in loaded.items() if file.suffix == ".py"}
    found = {changed}
    while more := {name for name, named in imports.items() if named & found} - found:
        found |= more
    return found


def _imported(file: Path) -> set[str]:
    named: set[str] = set()
    for node in ast.walk(ast.parse(file.read_text(encoding="utf-8"))):
        if isinstance(node, ast.Import):
            named |= {one.name for one in node.names}
        elif isinstance(node, ast.ImportFrom) and node.module:
            named |= {node.module, *(f"{node.module}.{one.name}" for one in node.names)}
    return named
