"""Words and regular expressions that are made when they are first used.

What people write is read with hundreds of them, most of which a process never needs; compiled all at
once they took a good part of its start.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Iterator
from functools import cached_property
from typing import Protocol


class _Finds(Protocol):
    def __call__(self, text: str, start: int = 0, end: int = ..., /) -> re.Match[str] | None: ...


class _FindsAll(Protocol):
    def __call__(self, text: str, start: int = 0, end: int = ..., /) -> Iterator[re.Match[str]]: ...


class Late:
    """A pattern with the methods of a compiled one; what is wrong with it shows at its first use.

    They are properties, so that from its second use on each is the compiled pattern's own.
    """

    def __init__(self, written: str, flags: int = 0) -> None:
        self.written = written
        self._flags = flags

    @cached_property
    def compiled(self) -> re.Pattern[str]:
        return re.compile(self.written, self._flags)

    @cached_property
    def search(self) -> _Finds:
        return self.compiled.search

    @cached_property
    def match(self) -> _Finds:
        return self.compiled.match

    @cached_property
    def fullmatch(self) -> _Finds:
        return self.compiled.fullmatch

    @cached_property
    def finditer(self) -> _FindsAll:
        return self.compiled.finditer

    @cached_property
    def findall(self) -> Callable[[str], list[str]]:
        return self.compiled.findall

    @cached_property
    def split(self) -> Callable[[str], list[str]]:
        return self.compiled.split

    @cached_property
    def sub(self) -> Callable[[str | Callable[[re.Match[str]], str], str], str]:
        return self.compiled.sub


def word_set(text: str) -> frozenset[str]:
    """The words of `text`, which is written out in lines for the reader's sake."""
    return frozenset(text.split())
