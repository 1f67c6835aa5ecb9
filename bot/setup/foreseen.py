"""What is wanted for one athlete, what would become of it, and why it cannot be."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import asdict, dataclass, field
from datetime import time
from typing import Any

from bot.store.tables.people import AthleteProfile
from bot.store.tables.week import EventRow
from engine.planning.fitting import Moved
from engine.planning.review import Finding
from engine.stage_day.stage_day import StageDay
from engine.values.limits import Limits
from engine.values.plan import PeakPlan


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


@dataclass(frozen=True, slots=True)
class Trouble:
    """Why it cannot be: a name of `Wanted`, a key of `bot.setup.words.TROUBLES`, and what it names."""

    at: str
    why: str
    facts: Mapping[str, Any] = field(default_factory=dict)


@dataclass(slots=True)
class Foreseen:
    """One athlete's event as it would be. `event` is the row that it changes; None: a new one.

    `mark` names what this rests on: another mark, and something has changed meanwhile.
    """

    wanted: Wanted
    name: str = ""
    profile: AthleteProfile | None = None
    event: EventRow | None = None
    moves: bool = False
    plan: PeakPlan | None = None
    plan_is_new: bool = False
    shape: str = ""
    template: str = ""
    limits: Limits | None = None
    limits_are: str = "none"  # none | kept | template | suggested | given
    moved_limits: tuple[Moved, ...] = ()
    stage_day: StageDay | None = None
    asks: dict[str, Any] = field(default_factory=dict)  # what of it would be other than it is
    meals: dict[str, Any] = field(default_factory=dict)  # as the template holds them
    asked_at: time | None = None
    always_tomorrow: bool | None = None
    warnings: tuple[Finding, ...] = ()
    findings: tuple[Finding, ...] = ()
    troubles: list[Trouble] = field(default_factory=list)
    mark: str = ""

    @property
    def changes(self) -> bool:
        """Whether anything would be other than it is."""
        return bool(
            self.event is None or self.moves or self.plan_is_new
            or self.limits_are in ("template", "suggested", "given")
            or self.stage_day is not None or self.asks or self.asked_at is not None
            or self._class_changes() or self.always_tomorrow is not None
        )  # fmt: skip

    def _class_changes(self) -> bool:
        said = self.wanted.class_name
        return bool(said) and (self.event is None or said != self.event.class_name)
