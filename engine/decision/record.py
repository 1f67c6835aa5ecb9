"""Cases and decisions as JSON-able data, and cases back: any decision can be replayed."""

from __future__ import annotations

import math
from collections.abc import Callable, Mapping
from dataclasses import dataclass, field, fields, is_dataclass
from datetime import date, datetime, time
from enum import Enum
from functools import cache, partial
from operator import attrgetter, methodcaller
from types import UnionType
from typing import Any, TypeVar, Union, cast, get_args, get_origin, get_type_hints

from engine.decision.facts import Fact
from engine.decision.rules import TABLE
from engine.values.body import Taught
from engine.values.case import Case, ForecastUse
from engine.values.limits import Window


@dataclass(frozen=True, slots=True)
class GateStep:
    """One gate, and whether the case went through it."""

    id: str
    passed: bool


@dataclass(frozen=True, slots=True, kw_only=True)
class Trace:
    """The way of one decision: gates, then the facts and what the rule asked, then the limits.

    `facts`, `steps` and `asked_g` are empty where a gate decided, and `stopped` is what that gate went
    by; `window` is None where there is no plan or the limits leave no figure. `wanted_g` is the figure
    before it was fitted; `rule_g` is what the rule alone asked for, `forecast_g` what the forecast
    alone would have done, `disagree` whether the two pulled apart. `would_g` is the figure that would
    have been proposed with the forecast, where it only shows. `table` is the number of the rule table
    that judged.
    """

    gates: tuple[GateStep, ...]
    facts: Mapping[str, Fact] = field(default_factory=dict)
    stopped: Mapping[str, Fact] = field(default_factory=dict)
    steps: int | None = None
    rule_g: float | None = None
    forecast_g: float | None = None
    disagree: bool = False
    would_g: float | None = None
    asked_g: float | None = None
    wanted_g: float | None = None
    window: Window | None = None
    bound: str | None = None
    limits: Mapping[str, float]
    table: int = TABLE


def by_forecast(rule_g: float | None, forecast_g: float | None, asked_g: float | None) -> bool:
    """Whether the forecast alone asked for the change: the rule for nothing, or for the opposite."""
    return forecast_g is not None and bool(asked_g) and (rule_g or 0.0) * (asked_g or 0.0) <= 0


T = TypeVar("T")
#: What said, in older records, whether the forecast was asked: yes or no.
FORESIGHT = "foresight"


def plain(value: Any) -> Any:
    """Any value of the engine as JSON-able data; a number that JSON lacks becomes its name."""
    kind: Any = type(value)
    if kind in _AS_JSON_HAS_IT:
        return value
    if kind is float:
        return value if math.isfinite(value) else str(value)
    return _writer(kind)(value)


_AS_JSON_HAS_IT = frozenset({str, int, bool, type(None)})


@cache
def _writer(kind: Any) -> Callable[[Any], Any]:
    """How values of this class are written; worked out once, as a case has hundreds."""
    if is_dataclass(kind):
        names = tuple(one.name for one in fields(kind))
        # Most are as JSON has them already, and calling `plain` would take as long as all else.
        return lambda value: {
            name: item if type(item := getattr(value, name)) in _AS_JSON_HAS_IT else plain(item)
            for name in names
        }
    if issubclass(kind, Enum):
        return attrgetter("value")
    if issubclass(kind, date | time):
        return methodcaller("isoformat")
    if issubclass(kind, Mapping):
        return lambda value: {str(key): plain(item) for key, item in value.items()}
    if issubclass(kind, tuple | list | frozenset):
        return lambda value: [plain(item) for item in value]
    if issubclass(kind, float):  # numpy's
        return lambda value: value if math.isfinite(value) else str(value)
    return _as_it_is


def case_as_dict(case: Case) -> dict[str, Any]:
    """The whole case as JSON-able data."""
    whole: dict[str, Any] = plain(case)
    return whole


def case_from_dict(data: Mapping[str, Any]) -> Case:
    """The case that `case_as_dict` wrote.

    A field that the record lacks takes its default, so older records still load. Raises ValueError
    or TypeError for a record that is no case.
    """
    if isinstance(data, Mapping) and FORESIGHT in data:
        use = ForecastUse.PROPOSES if data[FORESIGHT] else ForecastUse.RULES_ONLY
        data = {key: item for key, item in data.items() if key != FORESIGHT} | {"forecast": use}
    return _build(Case, data)


def taught_from_dict(data: Mapping[str, Any]) -> Taught:
    """What `plain` wrote of a `Taught`. Raises ValueError or TypeError for a record that is none."""
    return _build(Taught, data)


def built(cls: type[T], data: Mapping[str, Any], **ready: Any) -> T:
    """What `plain` wrote of this class, without what it does not know; `ready` are fields as they are.

    Raises ValueError or TypeError for a record that is none.
    """
    return _build(cls, data, ready, lenient=True)


def _build(
    cls: type[T],
    data: Mapping[str, Any],
    ready: Mapping[str, Any] | None = None,
    *,
    lenient: bool = False,
) -> T:
    if not isinstance(data, Mapping):
        raise TypeError(f"{cls.__name__} is no table: {data!r}")
    fields_of = _fields_of(cast("Any", cls), lenient=lenient)
    if not lenient and (strangers := data.keys() - fields_of.names):
        raise ValueError(f"{cls.__name__} has no {', '.join(sorted(strangers))}")
    kept = {name: item for name, item in data.items() if name in fields_of.names}
    for name, read in fields_of.figures:
        if type(kept.get(name)) is str:
            kept[name] = read(kept[name])
    for name, read in fields_of.others:
        if name in kept:
            kept[name] = read(kept[name])
    return cls(**kept, **(ready or {}))


_Reader = Callable[[Any], Any]


@dataclass(frozen=True, slots=True)
class _Fields:
    """The fields of a class, those that read an item, and of these the figures.

    Figures are items as JSON has them, unless they are beyond the finite: then they stand by name.
    """

    names: frozenset[str]
    figures: tuple[tuple[str, _Reader], ...]
    others: tuple[tuple[str, _Reader], ...]


@cache
def _fields_of(cls: type, *, lenient: bool) -> _Fields:
    """Worked out once, as thousands of records are read in a go."""
    hints = get_type_hints(cls)
    figures = {name for name, hint in hints.items() if _is_figure(hint)}
    readers = {name: _reader(hint, lenient=lenient) for name, hint in hints.items()}
    return _Fields(
        frozenset(hints),
        tuple((name, readers[name]) for name in hints if name in figures),
        tuple(
            (name, read)
            for name, read in readers.items()
            if name not in figures and read is not _as_it_is
        ),
    )


def _is_figure(hint: Any) -> bool:
    if get_origin(hint) in {Union, UnionType}:
        return {kind for kind in get_args(hint) if kind is not type(None)} <= {int, float}
    return hint in {int, float}


def _reader(hint: Any, *, lenient: bool) -> _Reader:
    origin, inner = get_origin(hint), get_args(hint)
    if origin in {Union, UnionType}:
        kinds = [kind for kind in inner if kind is not type(None)]
        return _if_known(_reader(kinds[0], lenient=lenient))
    if origin is tuple:
        return _each(_reader(inner[0], lenient=lenient))
    if origin is Mapping:
        return _by_key(*(_reader(one, lenient=lenient) for one in inner))
    if hint in {date, datetime, time}:
        return cast("_Reader", hint.fromisoformat)
    if hint in {int, float}:
        return partial(_number, hint)
    if isinstance(hint, type) and is_dataclass(hint):
        return partial(_build, hint, lenient=lenient)
    return hint if issubclass(hint, Enum) else _as_it_is


def _as_it_is(item: Any) -> Any:
    return item


def _if_known(read: _Reader) -> _Reader:
    return read if read is _as_it_is else lambda item: None if item is None else read(item)


def _each(read: _Reader) -> _Reader:
    return tuple if read is _as_it_is else lambda items: tuple([read(item) for item in items])


def _by_key(key: _Reader, value: _Reader) -> _Reader:
    if key is value is _as_it_is:
        return dict
    return lambda items: {key(name): value(item) for name, item in items.items()}


def _number(kind: type[int] | type[float], item: Any) -> float:
    if not isinstance(item, str):
        return item  # type: ignore[no-any-return]
    return int(item) if kind is int and item.lstrip("-").isdigit() else float(item)
