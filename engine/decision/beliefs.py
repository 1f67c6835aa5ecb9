"""What is believed of an athlete on a morning, through earlier peak weeks and this one."""

from __future__ import annotations

from dataclasses import dataclass, replace
from datetime import date, timedelta
from functools import lru_cache
from typing import NamedTuple

import numpy as np

from engine.decision.gather import fullness_on_plan
from engine.evidence import deciding as e
from engine.model.aim import aim_of
from engine.model.eye import learn_seen
from engine.model.particles import Belief, Covariates, Morning
from engine.model.physiology import Intake
from engine.model.pooling import taught
from engine.model.structures import Usual
from engine.model.tracker import (
    after_day,
    first_belief,
    generator,
    next_prior,
    update_belief,
    update_on_look,
)
from engine.safety import plausible_weight
from engine.values.athlete import Athlete, Baseline, Event
from engine.values.body import Prior, Taught
from engine.values.case import Case, PastWeek
from engine.values.checkin import (
    TRAINED,
    USUAL_LOOK,
    CheckIn,
    History,
    TargetLook,
    TrainingDone,
    training_spread,
)
from engine.values.plan import DayTarget, PeakPlan

DAY = timedelta(days=1)


def athlete_key(case: Case) -> str:
    """What tells one athlete's randomness from another's; nothing that changes within a week."""
    who = case.athlete
    return f"{who.sex}/{who.birth_year}/{who.height_cm:g}/{who.body_mass_kg:g}/{case.event.day}"


def frame_of(athlete: Athlete, baseline: Baseline, target: TargetLook | None = None) -> Covariates:
    """The facts of an athlete that the tracker's particles share, and the look aimed for."""
    return Covariates(
        sex=athlete.sex,
        body_mass_kg=athlete.body_mass_kg,
        body_fat_percent=athlete.body_fat_percent,
        usual=Usual(fibre_g=baseline.fibre_g, sodium_mg=baseline.sodium_mg),
        aim=aim_of(target),
    )


@dataclass(frozen=True, slots=True, kw_only=True)
class Lived:
    """All that the belief on one morning hangs on, before that morning's answers but for `told`.

    `told` is what that morning said of the day before: carbs eaten and training done.
    """

    key: str
    athlete: Athlete
    baseline: Baseline
    event: Event
    plan: PeakPlan
    trials: tuple[PastWeek, ...]
    prior: Prior | None
    history: History
    told: CheckIn | None
    start: date
    today: date

    @classmethod
    def until(cls, case: Case, start: date) -> Lived:
        today = case.checkin.date
        return cls(
            key=athlete_key(case),
            athlete=case.athlete,
            baseline=case.baseline,
            event=case.event,
            plan=case.plan,
            trials=case.trials,
            prior=case.prior,
            history=_before(case.history, today),
            told=_of_yesterday(case.checkin),
            start=start,
            today=today,
        )

    def yesterday(self) -> Lived:
        day = self.today - DAY
        told = self.history.on(day)
        return replace(
            self,
            history=_before(self.history, day),
            told=None if told is None else _of_yesterday(told),
            today=day,
        )


@dataclass(frozen=True, slots=True, kw_only=True)
class Course:
    """How a week up to `day`, its event, is planned and has gone.

    `look` is what it asks for; `habit_g` the carbohydrate of a day for which nothing else is known.
    """

    history: History
    plan: PeakPlan
    day: date
    look: TargetLook
    habit_g: float

    def fullness(self, day: date) -> int:
        """The fullness to be expected on that morning if all goes to plan."""
        return fullness_on_plan(self.plan, self.habit_g, (self.day - day).days, self.look)

    def carbs(self, day: date) -> float:
        """What was eaten on a day: as told the morning after, else as set, else as planned."""
        told = self.history.on(day + DAY)
        eaten = told.carb_eaten_g if told is not None else None
        if eaten is not None and 0 <= eaten <= e.CARB_EATEN_MOST_G.value:
            return eaten
        set_g = self.history.set_on(day)
        if set_g is not None:
            return set_g
        planned = self.plan.day((self.day - day).days)
        return planned.carb_g if planned else self.habit_g


def _before(history: History, day: date) -> History:
    return History(
        checkins=tuple(c for c in history.checkins if c.date < day),
        set_days=tuple(d for d in history.set_days if d.date < day),
        observed=tuple(seen for seen in history.observed if seen.date < day),
    )


def _of_yesterday(checkin: CheckIn) -> CheckIn:
    """What a check-in says of the day before."""
    return CheckIn(
        date=checkin.date, carb_eaten_g=checkin.carb_eaten_g, training_done=checkin.training_done
    )


# Yesterday's belief is at hand this morning, for a few athletes at a time; worked out anew it is the
# same to the bit.
@lru_cache(maxsize=48)
def belief_on(lived: Lived) -> Belief:
    """The belief on this morning, before this morning's answers."""
    if lived.today <= lived.start:
        return _before_this_week(lived)
    day = lived.today - DAY
    rng = generator(lived.key, day)
    belief = belief_on(lived.yesterday())
    answers = lived.history.on(day)
    if answers is not None:
        belief = update_belief(belief, morning_of(answers), rng)
    history = lived.history
    course = Course(
        history=history, plan=lived.plan, day=lived.event.day, look=lived.event.look,
        habit_g=lived.baseline.carb_g,
    )  # fmt: skip
    belief = after_looks(belief, course, day, rng)
    if lived.told is not None:
        history = replace(history, checkins=(*history.checkins, lived.told))
    carbs = replace(course, history=history).carbs
    target = lived.plan.day(lived.event.days_out(day))
    eaten, set_g = carbs(day), history.set_on(day)
    # What was eaten beside the set figure would have been eaten beside the planned one too.
    moved = set_g - target.carb_g if target is not None and set_g is not None else 0.0
    done = training_on(history, day)
    return after_day(
        belief,
        trained(intake_of(target, eaten), done),
        rng,
        planned=trained(intake_of(target, max(eaten - moved, 0.0)), done),
        training_spread=training_spread(done),
    )


def _before_this_week(lived: Lived) -> Belief:
    """What earlier peak weeks have taught, carried over; else what sex and size alone say."""
    return _taught(
        Earlier(lived.key, lived.athlete, lived.baseline, lived.trials, lived.event, lived.prior)
    )


class Earlier(NamedTuple):
    """All that hangs on no morning of this week."""

    key: str
    athlete: Athlete
    baseline: Baseline
    trials: tuple[PastWeek, ...]
    event: Event
    prior: Prior | None


@lru_cache(maxsize=48)
def _taught(earlier: Earlier) -> Belief:
    key, athlete, baseline, trials, event, prior = earlier
    frame, event_day = frame_of(athlete, baseline, event.target), event.day
    belief = first_belief(frame, generator(f"{key}/first", event_day), prior=prior)
    for number, week in enumerate(trials):
        belief = through(belief, week, key, habit_g=baseline.carb_g)
        following = trials[number + 1 :]
        next_day = following[0].day if following else event_day
        weeks = max((next_day - week.day).days / 7, 1)
        rng = generator(f"{key}/between", week.day)
        belief = next_prior(belief, frame, rng, weeks=weeks)
    return belief


def taught_by(
    athlete: Athlete, baseline: Baseline, weeks: tuple[PastWeek, ...], key: str
) -> Taught:
    """What an athlete's finished weeks (at least one) have taught, from the published prior on."""
    frame = frame_of(athlete, baseline)
    belief = first_belief(frame, generator(f"{key}/pool", weeks[-1].day))
    told = 0
    for number, week in enumerate(weeks):
        before = belief
        belief = through(belief, week, key, habit_g=baseline.carb_g)
        told += belief is not before
        if number + 1 < len(weeks):
            apart = max((weeks[number + 1].day - week.day).days / 7, 1)
            belief = next_prior(belief, frame, generator(f"{key}/between", week.day), weeks=apart)
    return taught(belief, told)


def through(
    belief: Belief, week: PastWeek, key: str, *, habit_g: float, mornings_tell: bool = True
) -> Belief:
    """The belief after an earlier peak week and the word on its look; as it was if none weighed in.

    `habit_g` is the carbohydrate of a day for which nothing else is known; `key` fixes the chance.
    Without `mornings_tell` only what was eaten and seen is learnt from, not what mornings answered.
    """
    told = [c for c in week.history.checkins if weighed(c)]
    if not told:
        return belief
    course = Course(
        history=week.history, plan=week.plan, day=week.day, look=week.target or USUAL_LOOK,
        habit_g=habit_g,
    )  # fmt: skip
    day, mornings = told[0].date, {c.date: c for c in told}
    while day <= week.day:
        rng = generator(f"{key}/{week.day}", day)
        if day in mornings and mornings_tell:
            belief = update_belief(belief, morning_of(mornings[day]), rng)
        if day < week.day or week.look is None:  # the word on the day itself is the same look again
            belief = after_looks(belief, course, day, rng)
        if day < week.day:
            target = week.plan.day((week.day - day).days)
            done = training_on(week.history, day)
            belief = after_day(
                belief,
                trained(intake_of(target, course.carbs(day)), done),
                rng,
                training_spread=training_spread(done),
            )
        day += DAY
    if week.look is not None:
        rng = generator(f"{key}/look", week.day)
        belief = update_on_look(belief, week.look, rng, aim=aim_of(week.target))
    return belief


def after_looks(belief: Belief, course: Course, day: date, rng: np.random.Generator) -> Belief:
    """The belief after what coaches saw that morning; as it was where nobody looked."""
    for seen in course.history.seen_on(day):
        belief = learn_seen(belief, seen, course.fullness(day), rng)
    return belief


def training_on(history: History, day: date) -> TrainingDone | None:
    """What was done of a day's training, as told the morning after."""
    told = history.on(day + DAY)
    return told.training_done if told is not None else None


def trained(intake: Intake, done: TrainingDone | None) -> Intake:
    """The day with so much of its session and cardio as was done."""
    return replace(intake, work_done=TRAINED[done])


def intake_of(target: DayTarget | None, carb_g: float) -> Intake:
    """A day as planned, with that much carbohydrate; the rest is not known without a target."""
    if target is None:
        return Intake(carb_g=carb_g)
    return Intake(
        carb_g=carb_g,
        protein_g=target.protein_g,
        fat_g=target.fat_g,
        fibre_g=target.fibre_g,
        sodium_mg=target.sodium_mg,
        water_l=target.water_l,
        exercise=target.exercise,
        cardio_h=(target.cardio_min or 0) / 60,
    )


def morning_of(checkin: CheckIn) -> Morning:
    """The answers that can be believed, as the tracker takes them."""
    weight = checkin.weight_kg if plausible_weight(checkin.weight_kg) else None
    return Morning(
        weight_kg=weight,
        fullness=_grade(checkin.fullness, 10),
        sharpness=_grade(checkin.sharpness, 5),
    )


def _grade(value: int | None, most: int) -> int | None:
    return value if value is not None and 1 <= value <= most else None


def weighed(checkin: CheckIn) -> bool:
    """Whether a believable weight was told."""
    return plausible_weight(checkin.weight_kg)
