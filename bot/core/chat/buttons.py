"""What a button carries: written when it is shown and read when it is pressed, by one declaration.

A `Route` says how its data begins and which typed fields follow, in order, between colons:

    class Late(NamedTuple):
        athlete: int
        minutes: int

    LATE = Route("st:late", Late)
    LATE(7, -30)                # "st:late:7:-30"
    LATE.read("st:late:7:-30")  # Late(athlete=7, minutes=-30)

Fields are numbers, booleans, days, closed sets of words (`Enum`), one word, or, at the end, the
`Rest` with its colons. One that may be missing is None where it is, as on a button of an earlier
time, and where it cannot be read; any other that cannot be read is refused. What stands behind the
last field is left alone. `CardRoute` is "c:VIEW:ATHLETE:...": a view of an athlete's card.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from datetime import date
from enum import Enum
from functools import cached_property
from math import isfinite
from types import NoneType
from typing import Generic, NamedTuple, NewType, ParamSpec, TypeVar, cast, get_args, get_type_hints

#: Only made here: a button takes nothing else.
CallbackData = NewType("CallbackData", str)
#: All that is left, with its colons; only as the last field.
Rest = NewType("Rest", str)

#: That of a button which opens an address instead.
NO_DATA = CallbackData("")
CALLBACK_DATA_LIMIT_BYTES = 64
CARD = "c"
#: What a database's integers hold; a forged number beyond it is refused here.
LARGEST = 2**31 - 1

P = ParamSpec("P")
F = TypeVar("F")


class UnreadableError(ValueError):
    """The data of a button that is not, or no more, as its declaration says."""


class Nothing(NamedTuple):
    """The fields of a button that carries none."""


class Route(Generic[P, F]):
    """One button, or several that differ in a field: `prefix` is a word or two, joined by a colon."""

    def __init__(self, prefix: str, fields: Callable[P, F]) -> None:
        self.prefix = prefix
        self._fields = fields

    @property
    def bare(self) -> bool:
        """Whether its buttons carry no fields."""
        return self._fields is Nothing

    def __call__(self, *args: P.args, **kwargs: P.kwargs) -> CallbackData:
        """The data of a button with these fields. Raises ValueError beyond 64 bytes."""
        return _written(self.prefix, cast("tuple[object, ...]", self._fields(*args, **kwargs)))

    def fits(self, *args: P.args, **kwargs: P.kwargs) -> bool:
        """Whether a button can carry this."""
        try:
            self(*args, **kwargs)
        except ValueError:
            return False
        return True

    def begins(self, data: str) -> bool:
        """Whether these are the data of such a button."""
        return data == self.prefix or data.startswith(f"{self.prefix}:")

    def read(self, data: str) -> F:
        """The fields that these data hold. Raises UnreadableError."""
        if not self.begins(data):
            raise UnreadableError(self.prefix)
        return self.of(data[len(self.prefix) + 1 :].split(":"))

    def found_in(self, data: str) -> F | None:
        """The fields of these data where they are such a button's; None for any other."""
        try:
            return self.read(data)
        except UnreadableError:
            return None

    def of(self, parts: list[str]) -> F:
        """The fields from what stood between the colons. Raises UnreadableError."""
        read = dict(zip(self._kinds, _all_read(self._kinds, parts), strict=True))
        return cast("Callable[..., F]", self._fields)(**read)

    @cached_property
    def _kinds(self) -> Mapping[str, object]:
        return get_type_hints(self._fields)


class CardRoute(Generic[P, F]):
    """A view of an athlete's card: the athlete first, then its own fields."""

    def __init__(self, view: str, fields: Callable[P, F]) -> None:
        self.view = view
        self._route = Route(f"{CARD}:{view}", fields)
        self._fields = fields

    @property
    def bare(self) -> bool:
        """Whether its buttons carry nothing but the athlete."""
        return self._fields is Nothing

    def __call__(self, athlete: int, *args: P.args, **kwargs: P.kwargs) -> CallbackData:
        """The data of a button on this athlete. Raises ValueError beyond 64 bytes."""
        fields = cast("tuple[object, ...]", self._fields(*args, **kwargs))
        return _written(self._route.prefix, (athlete, *fields))

    def of(self, parts: list[str]) -> F:
        """The fields from what stood behind the athlete. Raises UnreadableError."""
        return self._route.of(parts)


class OnCard(NamedTuple):
    """What any button of a card says: the view, whose card, and the parts behind."""

    view: str
    athlete: int
    parts: list[str]


def on_card(data: str) -> OnCard:
    """The data of a card's button taken apart. Raises UnreadableError."""
    card, *rest = data.split(":")
    if card != CARD or len(rest) < 2 or (athlete := _number(rest[1])) is None:
        raise UnreadableError(CARD)
    return OnCard(rest[0], athlete, rest[2:])


def card_of(data: str) -> int | None:
    """The athlete on whose card a button is; None for any other button."""
    try:
        return on_card(data).athlete
    except UnreadableError:
        return None


def beginnings(data: str) -> tuple[str, str]:
    """How the route of a button's data may begin: with two words, or else with one."""
    words = data.split(":")
    return ":".join(words[:2]), words[0]


def _written(prefix: str, fields: tuple[object, ...]) -> CallbackData:
    last = max((place for place, value in enumerate(fields) if value is not None), default=-1)
    parts = [prefix, *(_word(value) for value in fields[: last + 1])]
    data = ":".join(parts)
    if len(data.encode()) > CALLBACK_DATA_LIMIT_BYTES:
        raise ValueError("a button's data may hold 64 bytes at most")
    return CallbackData(data)


def _word(value: object) -> str:
    if value is None:
        return ""
    if isinstance(value, Enum):
        plain = isinstance(value.value, str) and " " not in value.value
        return value.value if plain else value.name.lower()
    if isinstance(value, bool):
        return str(int(value))
    if isinstance(value, date):
        return value.isoformat()
    return f"{value:g}" if isinstance(value, float) else str(value)


def _all_read(kinds: Mapping[str, object], parts: list[str]) -> list[object]:
    read: list[object] = []
    for place, kind in enumerate(kinds.values()):
        given = parts[place] if place < len(parts) else None
        if kind is Rest and given is not None:
            read.append(":".join(parts[place:]))
            continue
        options = get_args(kind)
        wanted = next((one for one in options if one is not NoneType), kind)
        value = _value(cast("type", wanted), given) if given else None
        if value is None and NoneType not in options:
            raise UnreadableError(str(given))
        read.append(value)
    return read


def _value(kind: type, text: str) -> object | None:
    """None where the text is none of this kind."""
    if issubclass(kind, Enum):
        return next((one for one in kind if _word(one) == text), None)
    if kind is bool:
        return {"1": True, "0": False}.get(text)
    if kind is int:
        return _number(text)
    if kind is str:
        return text
    try:
        value = date.fromisoformat(text) if kind is date else float(text)
    except ValueError:
        return None
    return None if isinstance(value, float) and not isfinite(value) else value


def _number(text: str) -> int | None:
    digits = text.removeprefix("-")
    if not (digits.isascii() and digits.isdigit() and len(digits) <= 10):
        return None
    number = int(text)
    return number if abs(number) <= LARGEST else None
