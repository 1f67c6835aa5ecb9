"""The named facts of one morning, which rules judge and sentences are told from."""

from __future__ import annotations

from dataclasses import dataclass, fields
from functools import cache, cached_property

from engine.evidence import deciding as e
from engine.evidence import grading
from engine.values.checkin import FULLEST, SHARPEST, USUAL_LOOK, CoachLook, Gut

Fact = str | float | int | bool | None


@dataclass(frozen=True, kw_only=True)
class Facts:
    """What is known this morning. Grams, kg, litres and hours; fullness of 10, sharpness of 5.

    What was not answered is None, and nothing that would follow from it holds. `coach_saw` is a
    `CoachLook`, "" where no coach has looked.
    """

    days_out: int
    loading: bool
    load_eaten: bool  # some of the load lies behind: only then can anything have spilled
    depleting: bool
    planned_carb_g: float
    fullness: int | None
    expected_fullness: int
    sharpness: int | None
    sharpness_before: int | None
    weight_kg: float | None
    band_low_kg: float
    band_high_kg: float
    water_l: float | None
    water_target_l: float
    gut: str
    severe_gut: str
    dizzy: bool
    sleepless: bool
    refed: bool = False  # yesterday was a refeed, which can spill as a load day can
    fullness_short_before: int | None = None  # likewise on the load's morning before
    usual_short: float = 0.0  # the same on average before the load: this athlete's own scale
    load_over_usual: float = 0.0  # g/kg a day; 0 where a trial has shown what its load does
    load_shown: bool = False  # a week behind has shown what such a load does
    load_held: bool = False  # the last week behind came in unspilled on a load as large as this
    # How far fullness was under its expectation, on average, in loads behind that came in ...
    short_with_enough: float | None = None  # full or spilled over: she answered so on enough
    short_without_spill: float | None = None  # flat or full: nor was it too much
    # What the event asks for.
    full_from: int = USUAL_LOOK.fullness_low
    fullness_most: int = FULLEST
    crisp_from: int = USUAL_LOOK.sharpness_low
    blurred_to: int = USUAL_LOOK.blurred_to
    sharpness_most: int = SHARPEST
    told_spilled: bool = False  # in the athlete's own words
    coach_saw: str = ""
    coach_sharpness: int | None = None

    @cached_property
    def fullness_short(self) -> int:
        """How far fullness is under its expectation; 0 where it was not told."""
        return 0 if self.fullness is None else self.expected_fullness - self.fullness

    @cached_property
    def flat(self) -> bool:
        return self.fullness_short >= e.FLAT_BY.value

    @cached_property
    def short_lately(self) -> float:
        """How far fullness was under its expectation, today and the morning before together."""
        today = grading.LATELY_TODAY.value
        before = self.fullness_short_before
        if before is None:
            before = self.fullness_short
        both = today * self.fullness_short + (1 - today) * before
        # An own scale only restrains: the same answers before the load may have been depletion.
        own = grading.OWN_SCALE.value * self.usual_short
        # What was answered in a week whose look is known says more of it.
        if both > 0 and self.short_with_enough is not None:
            own = max(own, self.short_with_enough)
        if both < 0 and self.short_without_spill is not None:
            own = min(own, self.short_without_spill)
        least, most = min(both, 0.0), max(both, 0.0)
        return round(min(max(both - own, least), most), 6)

    @cached_property
    def felt_so_on_enough(self) -> bool:
        """Flat, but not beside what was answered in a load behind that came in full or spilled."""
        then = self.short_with_enough
        return self.flat and then is not None and self.fullness_short - then < e.FLAT_BY.value

    @cached_property
    def load_counted(self) -> float:
        """How far the planned load is over the usual one, as far as that counts (g/kg a day)."""
        most = grading.LOAD_COUNTS_MOST.value
        return min(max(self.load_over_usual, -most), most)

    @cached_property
    def behind(self) -> float:
        """Grades behind the plan (+) or ahead of it (-), with the room that its load leaves."""
        return round(self.short_lately - grading.LOAD_COUNTS.value * self.load_counted, 6)

    @cached_property
    def raise_due(self) -> bool:
        """So far behind the plan that more is worth its risk; later and sooner it has to be further."""
        if self.under_by > 0:
            return True
        if not self.load_eaten:
            return not self.load_shown and self.behind >= grading.RAISE_FROM_FIRST.value
        last = grading.RAISE_FROM_LAST if self.days_out <= 1 else grading.RAISE_FROM
        return self.behind >= last.value

    @cached_property
    def ahead(self) -> bool:
        """Fuller than expected, with more of the load to come; on one morning alone, by far."""
        one = self.fullness_short_before is None
        far = self.fullness_short <= -(e.FLAT_BY.value if one else 1)
        lately = self.short_lately <= -grading.AHEAD_LATELY.value
        to_come = self.loading and self.days_out > 0
        return to_come and self.loaded and self.full and far and lately and self.cut_due

    @cached_property
    def ahead_by(self) -> float:
        """Grades ahead of the plan past those from which it is cut; 0 or less where it is not."""
        last = grading.AHEAD_FROM_LAST if self.days_out <= 1 else grading.AHEAD_FROM
        return round(-self.behind - last.value, 6)

    @cached_property
    def cut_due(self) -> bool:
        return self.ahead_by > 0

    @cached_property
    def over_by(self) -> float:
        """How much less a load over the usual one is worth (g/kg a day), with what the look says."""
        past = self.load_counted - grading.OVER_FROM.value
        if past <= 0:
            return 0.0
        look = grading.LATELY_COUNTS.value * self.short_lately
        return round(max(grading.OVER_CUT.value * past - look, 0.0), 6)

    @cached_property
    def under_by(self) -> float:
        """How much more a load under the usual one is worth (g/kg a day), if nothing is against it."""
        past = -self.load_counted - grading.UNDER_FROM.value
        if past <= 0 or not self.room_for_more:
            return 0.0
        look = grading.LATELY_COUNTS.value * self.short_lately
        # Flat before the load, or on one morning alone, raises nobody further.
        if self.fullness_short_before is None or not self.load_eaten:
            look = min(look, 0.0)
        return round(max(grading.UNDER_RAISE.value * past + look, 0.0), 6)

    @cached_property
    def room_for_more(self) -> bool:
        """Sharp, measured, not heavy, with the usual look asked for and a day after it to make good."""
        fit = self.sharp and self.measured and not (self.above_band or self.underdrunk)
        unseen = self.coach_saw in ("", CoachLook.FLAT)
        full_asked = self.full_from >= USUAL_LOOK.fullness_low
        return fit and unseen and full_asked and self.days_out > 1

    @cached_property
    def much_to_come(self) -> bool:
        """Not flat, with a load still to come that is well over the usual one."""
        told = self.fullness is not None and not (self.flat or self.seen_flat)
        return self.loading and self.days_out > 0 and told and self.over_by > 0

    @cached_property
    def little_to_come(self) -> bool:
        """No fuller than expected, with a load still to come that is well under the usual one."""
        told = self.fullness is not None and self.fullness_short >= 0
        return self.loading and self.days_out > 0 and told and self.under_by > 0

    @cached_property
    def full(self) -> bool:
        """Fullness at or over its expectation."""
        return self.fullness is not None and self.fullness_short <= 0

    @cached_property
    def very_flat(self) -> bool:
        return self.fullness_short >= e.VERY_FLAT_BY.value

    @cached_property
    def sharpness_fall(self) -> int:
        """How far sharpness fell since it was last told; 0 where that is not known."""
        if self.sharpness is None or self.sharpness_before is None:
            return 0
        return max(self.sharpness_before - self.sharpness, 0)

    @cached_property
    def blurred(self) -> bool:
        return self.sharpness is not None and self.sharpness <= self.blurred_to

    @cached_property
    def crisp(self) -> bool:
        return self.sharpness is not None and self.sharpness >= self.crisp_from

    @cached_property
    def sharp(self) -> bool:
        """Crisp, or in the middle and not on the way down; not where it is said to have spilled."""
        steady = self.sharpness is not None and not self.blurred and self.sharpness_fall == 0
        return not self.says_spilled and (self.crisp or steady)

    @cached_property
    def blurring(self) -> bool:
        """Blurred, or so far down, and under what is asked for, that it comes to the same."""
        fallen = self.sharpness_fall >= e.SHARPNESS_FALL.value
        return self.blurred or (fallen and not self.crisp)

    @cached_property
    def softer_than_most(self) -> bool:
        """Under the most that the event asks for: a fall down to that is no loss."""
        return self.sharpness is not None and self.sharpness < self.sharpness_most

    @cached_property
    def too_full(self) -> bool:
        return self.fullness is not None and self.fullness > self.fullness_most

    @cached_property
    def loaded(self) -> bool:
        """Whether so much was eaten that something can have spilled."""
        return (self.loading and self.load_eaten) or self.refed

    @cached_property
    def spilling(self) -> bool:
        """Blurred lines on a loaded athlete who is full or heavy: spill, or water."""
        return self.loaded and self.blurring and (self.full or self.above_band)

    @cached_property
    def says_spilled(self) -> bool:
        """Said to have spilled, where there is a load that can have."""
        return self.loaded and self.told_spilled

    @cached_property
    def softening(self) -> bool:
        full = self.fullness is not None and self.fullness >= self.full_from
        fallen = self.sharpness_fall == 1 and self.softer_than_most
        return self.loaded and fallen and full and self.upper_half

    @cached_property
    def soft_on_much(self) -> bool:
        """Lines on the way down and no longer crisp, on a load well over the usual one."""
        fallen = self.sharpness_fall > 0 and self.softer_than_most and not self.crisp
        much = self.load_counted >= grading.SOFT_ON_MUCH_FROM.value
        return self.loaded and fallen and much and not self.flat

    @cached_property
    def seen_spilled(self) -> bool:
        """The coach sees spill, and there is a load that can have spilled."""
        return self.loaded and self.coach_saw == CoachLook.SPILLED

    @cached_property
    def seen_softening(self) -> bool:
        return self.loaded and self.coach_saw == CoachLook.SOFTENING

    @cached_property
    def seen_blurred(self) -> bool:
        return self.coach_sharpness is not None and self.coach_sharpness <= self.blurred_to

    @cached_property
    def seen_flat(self) -> bool:
        return self.coach_saw == CoachLook.FLAT

    @cached_property
    def above_band(self) -> bool:
        return self.weight_kg is not None and self.weight_kg > self.band_high_kg

    @cached_property
    def under_band(self) -> bool:
        return self.weight_kg is not None and self.weight_kg < self.band_low_kg

    @cached_property
    def upper_half(self) -> bool:
        """In the upper half of the band, or above it."""
        middle = (self.band_low_kg + self.band_high_kg) / 2
        return self.weight_kg is not None and self.weight_kg > middle

    @cached_property
    def underdrunk(self) -> bool:
        # Rounded, for 80 % of 3.2 L is 2.56 L and not a hair more.
        least = round(e.UNDERDRUNK_SHARE.value * self.water_target_l, 6)
        return self.water_l is not None and self.water_l < least

    @cached_property
    def unwell(self) -> bool:
        """Dizzy or sleepless on low days: for the coach first."""
        return self.dizzy or self.sleepless

    @cached_property
    def measured(self) -> bool:
        """Whether weight and water were told, without which no large raise is made."""
        return self.weight_kg is not None and self.water_l is not None

    @cached_property
    def gut_bad(self) -> bool:
        return self.gut == Gut.BAD or bool(self.severe_gut)

    @classmethod
    def names(cls) -> frozenset[str]:
        derived = (name for name, value in vars(cls).items() if isinstance(value, cached_property))
        return frozenset(f.name for f in fields(cls)) | frozenset(derived)

    def as_dict(self) -> dict[str, Fact]:
        """Every fact by name, what follows from the others included."""
        return {name: getattr(self, name) for name in _in_order()}


@cache
def _in_order() -> tuple[str, ...]:
    return tuple(sorted(Facts.names()))
