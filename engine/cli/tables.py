"""Reading the sections of a case file, key by key, so that nothing in it goes unread."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from datetime import date, datetime, time
from typing import Any, TypeVar

T = TypeVar("T")


class CaseFileError(ValueError):
    """What is wrong with a case file, and in which section."""


class Table:
    """One section of the file, read key by key; what nobody asked for is refused at the end."""

    def __init__(self, name: str, values: Mapping[str, Any]) -> None:
        self.name, self._values, self._read = name, values, set[str]()

    def get(self, key: str, kind: Callable[[Any], T], expected: str) -> T | None:
        """The value, or None where the key is absent; `kind` raises ValueError for a wrong one."""
        self._read.add(key)
        if key not in self._values:
            return None
        value = self._values[key]
        try:
            return kind(value)
        except (ValueError, TypeError, OverflowError) as error:
            raise CaseFileError(f"{self.name}: {key} must be {expected}, not {value!r}") from error

    def need(self, key: str, kind: Callable[[Any], T], expected: str) -> T:
        value = self.get(key, kind, expected)
        if value is None:
            raise CaseFileError(f"{self.name}: {key} is missing ({expected})")
        return value

    def number(self, key: str) -> float | None:
        return self.get(key, as_number, "a number")

    def table(self, key: str, default: Mapping[str, Any] | None = None) -> Table:
        found = self.get(key, _mapping, f"a section [{key}]")
        if found is None and default is None:
            raise CaseFileError(f"the section [{key}] is missing")
        return Table(f"[{key}]", found if found is not None else default or {})

    def rows(self, key: str) -> list[Table]:
        found = self.get(key, _mappings, f"sections [[{key}]]") or []
        return [Table(f"[[{key}]] number {n}", row) for n, row in enumerate(found, start=1)]

    def refuse_the_rest(self) -> None:
        if strangers := sorted(set(self._values) - self._read):
            known = ", ".join(sorted(self._read))
            raise CaseFileError(f"{self.name}: unknown {', '.join(strangers)} (known: {known})")

    def build(self, make: Callable[..., T], **values: Any) -> T:
        """Make a value of this section's figures, and say which section it could not be made of."""
        self.refuse_the_rest()
        try:
            return make(**values)
        except (ValueError, KeyError, OSError) as error:  # the last from a zone that is a folder
            raise CaseFileError(f"{self.name}: {_message(error)}") from error


def as_number(value: object) -> float:
    if isinstance(value, bool) or not isinstance(value, int | float):
        raise TypeError(value)
    return value


def as_whole(value: object) -> int:
    figure = as_number(value)
    if figure != int(figure):  # nan and inf raise here by themselves
        raise ValueError(value)
    return int(figure)


def as_text(value: object) -> str:
    if not isinstance(value, str):
        raise TypeError(value)
    return value


def as_texts(value: object) -> tuple[str, ...]:
    if not isinstance(value, list):
        raise TypeError(value)
    return tuple(as_text(item) for item in value)


def as_date(value: object) -> date:
    if isinstance(value, str):
        return date.fromisoformat(value)
    if isinstance(value, datetime) or not isinstance(value, date):
        raise TypeError(value)
    return value


def as_time(value: object) -> time:
    if isinstance(value, str):
        return time.fromisoformat(value)
    if not isinstance(value, time):
        raise TypeError(value)
    return value


def _mapping(value: object) -> Mapping[str, Any]:
    if not isinstance(value, dict):
        raise TypeError(value)
    return value


def _mappings(value: object) -> list[Mapping[str, Any]]:
    if not isinstance(value, list):
        raise TypeError(value)
    return [_mapping(item) for item in value]


def _message(error: Exception) -> str:
    return str(error.args[0]) if error.args else str(error)
