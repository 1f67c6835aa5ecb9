"""What the code tells of itself is so: each path, module and command that the guide names is there."""

from __future__ import annotations

import ast
import importlib.util
import re
from collections.abc import Iterator
from pathlib import Path

from bot.cli import _parser

ROOT = Path(__file__).parents[2]
GUIDE = ROOT / "DEVELOPERS.md"
#: Where a path in the guide may begin.
HOUSES = (ROOT, ROOT / "bot", ROOT / "engine")
WORDS_AT_MOST = 1388

_PATH = re.compile(r"`([\w./-]+(?:/|\.(?:py|md|toml)))`")
_FROM_THE_ROOT = re.compile(r"\b((?:tests|deploy|engine|bot)/[\w./-]+\b/?)")
_MODULE = re.compile(r"python -m ([a-z_.]+\b)")
_COMMAND = re.compile(r"`brimline ([a-z]+)")


def told() -> Iterator[tuple[str, str]]:
    """The guide, and what each package tells of itself."""
    yield "DEVELOPERS.md", GUIDE.read_text(encoding="utf-8")
    for house in ("bot", "engine", "tests"):
        for file in sorted((ROOT / house).rglob("__init__.py")):
            doc = ast.get_docstring(ast.parse(file.read_text(encoding="utf-8")))
            yield file.relative_to(ROOT).as_posix(), doc or ""


def test_every_path_that_the_guide_names_is_there() -> None:
    # "`table.py`" alone is what a feature has; all else is named from a house on.
    of_a_feature = {"table.py", "buttons.py", "words.py", "flow.py", "__init__.py"}
    named = set(_PATH.findall(GUIDE.read_text(encoding="utf-8"))) - of_a_feature
    assert len(named) > 40, "the guide names paths in backquotes"
    assert [p for p in sorted(named) if not any((house / p).exists() for house in HOUSES)] == []


def test_every_file_module_and_command_that_the_guide_or_a_package_tells_of_is_there() -> None:
    known = set(re.findall(r"[a-z]+", _parser().format_usage().partition("{")[2]))
    known |= set(re.findall(r"^    ([a-z]+) ", _parser().format_help(), re.MULTILINE))
    gone = []
    for where, text in told():
        gone += [f"{where}: {p}" for p in _FROM_THE_ROOT.findall(text) if not (ROOT / p).exists()]
        modules = {m for m in _MODULE.findall(text) if not m.endswith(".")}  # `tests.bench.NAME`
        gone += [f"{where}: {m}" for m in modules if importlib.util.find_spec(m) is None]
        gone += [f"{where}: brimline {c}" for c in _COMMAND.findall(text) if c not in known]
    assert not gone


def test_every_feature_is_on_the_map_and_the_guide_stays_short() -> None:
    text = GUIDE.read_text(encoding="utf-8")
    features = {path.parent.name for path in (ROOT / "bot").glob("*/table.py")} - {"rehearsal"}
    assert len(features) > 15
    assert [name for name in sorted(features) if f"`{name}`" not in text] == []
    assert len(text.split()) <= WORDS_AT_MOST
