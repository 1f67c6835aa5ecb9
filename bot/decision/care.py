"""What a health matter takes off the targets that are shown: sessions, a figure for water, a push."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date

from sqlmodel import Session

from bot.alerts.alerts import of_day_or_open
from bot.core.turn import Turn
from bot.decision.words_target import resting_line, target_lines
from bot.people.people import is_own_coach, local_date, name_of
from bot.store.tables.people import AthleteProfile
from engine.safety import FlagId
from engine.symptoms import Symptom
from engine.values.plan import DayTarget

WARNED = "warning-flag"  # why adjusting is frozen: as the gate that stops such a morning is called
OF_EATING_AND_MOOD = "eating-and-mood"
#: With these a doctor looks before there is any training; a lesser fever or pulse too. Whoever is sent
#: to a doctor today is not sent to a session as well.
NO_TRAINING = frozenset(
    {
        FlagId.LOW_SODIUM, FlagId.PULSE_HIGH, Symptom.URINE_DARK, Symptom.FAST_HEART, Symptom.FEVER,
        Symptom.BLEEDING, Symptom.BLURRED_VISION, Symptom.FALL, Symptom.NO_URINE, Symptom.SEVERE_GUT,
    }
)  # fmt: skip


@dataclass(frozen=True, slots=True)
class Care:
    """`rest`, `doctor_first`: no training of any kind; `to_thirst`: no figure for water; `unsaid`: not
    sent unasked.

    `coach` is who lifts it, "" for who coaches themself.
    """

    rest: bool = False
    doctor_first: bool = False
    to_thirst: bool = False
    unsaid: bool = False
    coach: str = ""

    @property
    def still(self) -> bool:
        """Whether there is no training of any kind."""
        return self.rest or self.doctor_first

    def resting(self, *, own: bool) -> str | None:
        """Why there is no training, to the athlete (`own`) or their coach; None where there is."""
        return resting_line(self.coach if own else "", warned=self.rest) if self.still else None

    def lines(self, target: DayTarget, planned_carb_g: float, volume_unit: str) -> str:
        """The target as it is to be read now."""
        return target_lines(
            target, planned_carb_g, volume_unit, to_thirst=self.to_thirst,
            resting=self.resting(own=True),
        )  # fmt: skip


def care_for(turn: Turn, profile: AthleteProfile) -> Care:
    """What holds for this athlete just now."""
    frozen = profile.frozen_at is not None
    coach = "" if is_own_coach(profile) else name_of(turn.session, profile.coach_id)
    found = _found(turn.session, profile, local_date(profile, turn.context))
    return Care(
        rest=frozen and profile.frozen_because == WARNED,
        doctor_first=not found.isdisjoint(NO_TRAINING),
        to_thirst=FlagId.LOW_SODIUM.value in found,
        unsaid=frozen and profile.frozen_because == OF_EATING_AND_MOOD,
        coach=coach,
    )


def rests(profile: AthleteProfile) -> bool:
    """Whether a warning has stopped everything."""
    return profile.frozen_at is not None and profile.frozen_because == WARNED


def _found(session: Session, profile: AthleteProfile, today: date) -> set[str]:
    """What was told today or is still open, as far as targets have to heed it."""
    heeded = {found.value for found in NO_TRAINING}
    return {
        row.flag
        for row in of_day_or_open(session, profile.person_id, today)
        if row.flag in heeded and row.facts.get("_corrected", {"holds": True}).get("holds")
    }
