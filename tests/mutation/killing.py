"""Which mutants of a module its tests notice.

The tests are run once as the code is, but that each step of the modules says that it was come by. For a
mutant only those are called that come by it, the quickest first, in a child of the process that has
loaded everything already: the child drops what rests on its module and loads it anew, changed.
"""

from __future__ import annotations

import ast
import builtins
import gc
import importlib
import importlib.util
import os
import resource
import sys
import time
from collections import defaultdict
from collections.abc import Callable, Iterator, Mapping, Sequence
from contextlib import redirect_stdout
from dataclasses import dataclass, field
from importlib.machinery import ModuleSpec, SourceFileLoader
from pathlib import Path
from types import CodeType, ModuleType

import pytest
from hypothesis import HealthCheck, Phase, settings

from tests.mutation.changes import Mutant, change, with_steps_told

#: What takes longer than this is not asked about every mutant.
LONGEST_S = 10.0
_QUICK_S = 0.1
_SETTINGS = """\
[pytest]
pythonpath = .
addopts = -qx --noconftest --tb=no --assert=plain --import-mode=importlib -m "not soak"
    -p no:cacheprovider -p no:xdist -p no:timeout -p no:asyncio -p no:unraisableexception
    -p no:threadexception -p no:faulthandler -p no:junitxml -p no:pastebin -p no:doctest -p no:logging
markers = soak: long
"""


@dataclass
class Seen:
    """A run of the tests as the code is: what each took, and which steps of each module it came by."""

    steps: dict[str, set[tuple[str, int]]] = field(default_factory=lambda: defaultdict(set))
    seconds: dict[str, float] = field(default_factory=dict)
    calls: dict[str, Call] = field(default_factory=dict)
    _test: str = ""  # none: what runs while modules are loaded

    @pytest.hookimpl(wrapper=True)
    def pytest_runtest_protocol(self, item: pytest.Item) -> Iterator[None]:
        self._test = item.nodeid
        self.calls[item.nodeid] = Call.of(item)
        _forget_caches()
        begun = time.process_time()
        try:
            return (yield)
        finally:
            self.seconds[item.nodeid] = time.process_time() - begun
            self._test = ""

    def teller(self, module: str) -> Callable[[int], None]:
        """What the steps of that module call with their line."""

        def came_by(step: int) -> None:
            self.steps[self._test].add((module, step))

        return came_by

    def tests_of(self, module: str, step: int | None) -> list[str]:
        """The tests that come by that step of it, or all where it is none, the quickest first."""
        asked = [one for one, took in self.seconds.items() if took < LONGEST_S]
        if step is not None and (module, step) not in self.steps[""]:
            asked = [one for one in asked if (module, step) in self.steps[one]]
        return sorted(asked, key=self.seconds.__getitem__)


@dataclass(frozen=True, slots=True)
class Call:
    """A test as a call of its function; `number` says which of its parametrized calls it is."""

    module: str
    function: str
    number: int

    @classmethod
    def of(cls, item: pytest.Item) -> Call:
        """Raises RuntimeError for a test that asks for more than its parameters."""
        assert isinstance(item, pytest.Function)
        indices = item.callspec.indices if hasattr(item, "callspec") else {}
        if item.cls is not None or set(item.fixturenames) - set(indices):
            raise RuntimeError(f"{item.nodeid} can't be called by itself: {item.fixturenames}")
        return cls(item.module.__name__, item.originalname, max(indices.values(), default=0))

    def __call__(self) -> None:
        test = getattr(importlib.import_module(self.module), self.function)
        arguments: dict[str, object] = {}
        marks = [mark for mark in getattr(test, "pytestmark", ()) if mark.name == "parametrize"]
        number = self.number
        for mark in reversed(marks):  # the last one goes round the fastest
            names, rows = mark.args[0], list(mark.args[1])
            names = names.replace(",", " ").split() if isinstance(names, str) else names
            number, at = divmod(number, len(rows))
            arguments |= zip(names, [rows[at]] if len(names) == 1 else rows[at], strict=True)
        test(**arguments)


class Survivors:
    """The tests of some modules, run once and ready to be held against the mutants of each."""

    def __init__(self, modules: Mapping[str, Path], tests: Sequence[Path], root: Path) -> None:
        """`modules` are files by their names. Raises RuntimeError where the tests fail as it is."""
        (root / "pytest.ini").write_text(_SETTINGS, encoding="utf-8")
        settings.register_profile(
            "mutation", database=None, derandomize=True, deadline=None,
            phases=[Phase.explicit, Phase.generate], suppress_health_check=list(HealthCheck),
        )  # fmt: skip
        settings.load_profile("mutation")
        self._files, self._root, self._seen = modules, root, Seen()
        self.trees = {one: ast.parse(file.read_text("utf-8")) for one, file in modules.items()}
        begun, telling = time.process_time(), []
        for number, (name, tree) in enumerate(self.trees.items()):
            setattr(builtins, f"came_by_{number}", self._seen.teller(name))
            code = _compiled(with_steps_told(tree, f"came_by_{number}"), modules[name])
            telling.append(_Changed(name, modules[name], code))
        sys.meta_path[:0] = telling
        failed = _run([str(test) for test in tests], root, self._seen)
        sys.meta_path[:] = [one for one in sys.meta_path if one not in telling]
        if failed:
            raise RuntimeError("the tests fail before anything is changed")
        self._seconds = time.process_time() - begun
        self._imports = _imports(root)
        for name in self.trees:
            # Called by themselves they have to pass as well, or each mutant would count as killed.
            tests = [one for one, took in self._seen.seconds.items() if took < _QUICK_S]
            if not self._passes(name, None, tests):
                raise RuntimeError(f"the tests fail when {name} is loaded anew")

    def survives(self, module: str, mutant: Mutant) -> bool:
        """Whether no test notices this mutant."""
        tests = self._seen.tests_of(module, mutant.step)
        return not tests or self._passes(module, mutant, tests)

    def _passes(self, module: str, mutant: Mutant | None, tests: Sequence[str]) -> bool:
        gc.freeze()
        child = os.fork()
        if child:
            return os.waitpid(child, 0)[1] == 0
        status = 1
        try:
            gc.disable()  # a child is gone before it fills up
            most = int(3 * self._seconds) + 20  # one that never ends is noticed as well
            resource.setrlimit(resource.RLIMIT_CPU, (most, most))
            # Those that told of their steps go on doing so, which changes nothing.
            for name in _resting_on(module, self._imports):
                sys.modules.pop(name, None)
            file, tree = self._files[module], self.trees[module]
            if mutant is not None:
                change(tree, mutant)
            sys.meta_path.insert(0, _Changed(module, file, _compiled(tree, file)))
            with Path(os.devnull).open("w") as silent, redirect_stdout(silent):
                for test in tests:
                    self._seen.calls[test]()
            status = 0
        finally:
            os._exit(status)


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
        if name.startswith(("engine.values", "engine.decision", "tests.")):
            for value in list(vars(module).values()):
                if hasattr(value, "cache_clear"):
                    value.cache_clear()


def _imports(root: Path) -> Mapping[str, set[str]]:
    """What each module of the tree that is loaded imports, by its name."""
    files = {
        name: Path(str(module.__file__))
        for name, module in sys.modules.items()
        if getattr(module, "__file__", None)
    }
    return {
        name: _imported(file)
        for name, file in files.items()
        if file.suffix == ".py" and file.is_relative_to(root)
    }


def _resting_on(changed: str, imports: Mapping[str, set[str]]) -> set[str]:
    """The modules that import the changed one, by however many steps, and that one itself."""
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
