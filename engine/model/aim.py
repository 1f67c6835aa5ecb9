"""What the forecast aims for: how far an event's look lies from the usual one."""

from __future__ import annotations

from dataclasses import dataclass

from engine.evidence import deciding
from engine.evidence.body import tracking
from engine.values.checkin import FULLEST, USUAL_LOOK, TargetLook


@dataclass(frozen=True, slots=True, kw_only=True)
class Aim:
    """Against the usual look: grades of fullness aimed higher (+) or lower (-), and blur let pass.

    `blur` is in units of a just spilled-over look. `over` is how many grades past its middle the
    range of fullness ends, None where no fullness is too much.
    """

    fullness: float = 0.0
    blur: float = 0.0
    over: float | None = None


USUAL_AIM = Aim()


def aim_of(look: TargetLook | None) -> Aim:
    """The aim of a target look; None is the usual one."""
    if look is None:
        return USUAL_AIM
    softer = deciding.CRISP_FROM.value - look.sharpness_low
    return Aim(
        fullness=look.fullness - USUAL_LOOK.fullness,
        blur=softer / tracking.BLUR_GRADES.value,
        over=None if look.fullness_high >= FULLEST else look.fullness_high - look.fullness,
    )
