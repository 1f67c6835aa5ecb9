"""What looks like a drink and was not read, though another was: never passed over in silence."""

from __future__ import annotations

from collections.abc import Sequence

from engine.written.oneline.drinks.parts import MOST_BARE_L, Part, Parts, is_british
from engine.written.oneline.drinks.words import may_be_counted, pieces_of
from engine.written.oneline.report import Known

_NOT_DRUNK = (
    "not", "nicht", "left", "than", "als", "statt", "instead", "of", "less", "weniger", "without",
    "ohne",
)  # fmt: skip
_OF_THE_DAY = (
    "at night", "in the evening", "in the morning", "in the afternoon", "at lunch", "at work",
    "at the gym", "abends", "morgens", "mittags", "nachmittags", "vormittags", "nachts",
    "am abend", "am morgen", "am nachmittag", "am vormittag", "auf arbeit", "im gym",
)  # fmt: skip


def passed_over(line: str, known: Known, read: Sequence[tuple[int, int]]) -> str:
    """What looks like a drink and was not read, though another was; "" where there is none.

    `read` are the places of the figures that are accounted for.
    """
    if not may_be_counted(line):
        return ""
    pieces = pieces_of(line, known.language)
    reader = _Alone(pieces, known, british=is_british(line, known))
    at = 0
    while at < len(pieces):
        part = reader.part_at(at)
        if part is None:
            at += 1
            continue
        start, end = pieces[part.first].start, pieces[part.last].end
        accounted = any(start < to and begin < end for begin, to in read)
        if not accounted and reader.is_a_drink(part):
            return line[start:end]
        at = part.last + 1
    return ""


class _Alone(Parts):
    """Parts of a line that belong to no sum."""

    def is_a_drink(self, part: Part) -> bool:
        """Whether a part that stands alone is drunk: not eaten, not left over, of no other drink."""
        if part.shape in ("other", "share", "wholes"):
            return False
        beside = [
            self._all[at] for at in (part.first - 1, part.last + 1) if 0 <= at < len(self._all)
        ]
        before = self._all[max(0, part.first - 3) : part.first]
        if any(piece.kind in "-o" or piece.text in _NOT_DRUNK for piece in (*before, *beside)):
            return False
        joint, behind = self.joint_at(part.last + 1)
        if "o" in joint:
            return False
        of = self._all[part.last + 1 : behind]
        following = self._all[behind] if behind < len(self._all) else None
        eaten = of and of[-1].text == "of" and following and following.kind == "."
        if part.shape != "bare":
            return not eaten
        day = any(piece.kind == "p" and piece.text in _OF_THE_DAY for piece in beside)
        return day and self.may_begin(part) and (part.amount or 0) <= MOST_BARE_L
