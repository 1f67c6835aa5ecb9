"""What happens, and what people write meanwhile, drawn from a seed."""

from __future__ import annotations

import random
from collections.abc import Collection, Iterator
from dataclasses import dataclass
from enum import StrEnum

from tests.support.shaken.people import Act, something


class Fault(StrEnum):
    """A process, Telegram's server, the clock, the database, a person."""

    KILL = "kill"
    KILL_AT_CALL = "kill at a call"
    KILL_BOTH = "kill both"
    OTHER = "another process comes or goes"
    FREEZE = "freeze"

    BAD_GATEWAY = "502"
    SLOW_DOWN = "429 storm"
    SLOW = "slow answers"
    CUT = "line cut"
    SILENCE = "no answer"

    FORWARD = "clock forward"
    BACK = "clock back"

    FULL = "disk full"
    LOCKED = "file locked"
    RESTART = "server crash"
    LINES_CUT = "server hangs up"

    BLOCKED = "bot blocked"


#: How often each is drawn.
WEIGHTS = {
    Fault.KILL: 24, Fault.KILL_AT_CALL: 14, Fault.KILL_BOTH: 3, Fault.OTHER: 10, Fault.FREEZE: 4,
    Fault.BAD_GATEWAY: 6, Fault.SLOW_DOWN: 6, Fault.SLOW: 4, Fault.CUT: 7, Fault.SILENCE: 4,
    Fault.FORWARD: 4, Fault.BACK: 5, Fault.FULL: 6, Fault.LOCKED: 5, Fault.RESTART: 4,
    Fault.LINES_CUT: 5, Fault.BLOCKED: 2,
}  # fmt: skip
assert set(WEIGHTS) == set(Fault)


@dataclass(frozen=True)
class Step:
    """People act, and after so many seconds something happens, for so long."""

    acts: tuple[Act, ...]
    after_s: float
    fault: Fault
    lasts_s: float
    share: float  # how much of it: the chance of each call, the part of a span, of room left
    number: int  # of the process
    sure: bool  # which of two ways, where there are two


def steps(seed: str, among: Collection[Fault]) -> Iterator[Step]:
    """One after another without end."""
    chance = random.Random(seed)
    kinds = [fault for fault in Fault if fault in among]
    weights = [WEIGHTS[fault] for fault in kinds]
    while True:
        yield Step(
            acts=tuple(something(chance) for _ in range(chance.choice((0, 1, 1, 2, 3, 5)))),
            after_s=chance.uniform(0.0, 0.2),
            fault=chance.choices(kinds, weights)[0],
            lasts_s=chance.uniform(0.1, 0.8),
            share=chance.random(),
            number=chance.randrange(2),
            sure=chance.random() < 0.5,
        )
