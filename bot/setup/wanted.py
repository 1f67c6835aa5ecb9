"""What is wanted for one athlete: an event, and what plan, limits and times it is to have."""

from __future__ import annotations

from dataclasses import asdict, dataclass, field
from typing import Any


@dataclass(frozen=True, slots=True, kw_only=True)
class Wanted:
    """Empty or 0 where nothing is said: what holds then stays, or what is usual is taken.

    `event_id`: the event ahead that is meant; 0 for the one on that day, or one more. `day` is ISO,
    `stage` and `asked_at` "HH:MM" by the event's and the athlete's clocks. `plan`: "template:ID", a
    shape's key, or "" to keep the present one. `cells` are where each was read, by field.
    """

    athlete_id: int
    event_id: int = 0
    kind: str
    day: str
    zone: str
    class_name: str = ""
    stage: str = ""
    plan: str = ""
    load_g_per_kg: float | None = None
    depletion: str = ""
    bounds: dict[str, float] = field(default_factory=dict)
    asked_at: str = ""
    look_before_min: float | None = None
    reason: str = ""
    asks: dict[str, Any] = field(default_factory=dict)  # "look", "weigh_in": None takes it away
    make_room: bool = False  # a limit that the plan leaves moves as far as it has to
    cells: dict[str, str] = field(default_factory=dict)

    @property
    def template_id(self) -> int:
        kind, _, number = self.plan.partition(":")
        return int(number) if kind == "template" and number.isdigit() else 0

    def cell(self, name: str) -> str:
        return self.cells.get(name, "")


def as_json(wanted: Wanted) -> dict[str, Any]:
    return asdict(wanted)


def of_json(kept: dict[str, Any]) -> Wanted:
    return Wanted(**kept)
