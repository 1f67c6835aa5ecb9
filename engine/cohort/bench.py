"""The same athletes under the fixed plan, the rules, the rules with forecast, and an oracle."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np

from engine.cohort import athletes as hidden
from engine.cohort.athletes import Answers, Athletes, Condition, Floats
from engine.cohort.policies import (
    EXPECTED_FULLNESS,
    Facts,
    Foresight,
    Rules,
    frame_of,
    plain_rules,
)
from engine.cohort.week import (
    DAYS_OUT,
    LAST_DAY_STEPS,
    LOAD_DAYS,
    MOST_STEPS,
    TRAINING_DAYS,
    WeekLimits,
    limits,
    load_left,
    plan_g,
)
from engine.look import Look
from engine.tracker import PARTICLES, Band, Morning

TRIAL_WEEKS_AGO = 3.0
REPORT_NOISE = 0.06


@dataclass(frozen=True, slots=True, kw_only=True)
class Outcome:
    """How a policy's weeks ended, an element an athlete."""

    look: Floats
    flat: hidden.Bools
    spilled: hidden.Bools
    limits_broken: int
    flags: int  # mornings with a mass loss that calls for a caution
    doses: Floats  # days x athletes
    inside: tuple[bool, ...] = ()
    chances: Floats | None = None  # flat, full, spilled x athletes, as forecast the day before


class Weeks:
    """One week of all athletes: hidden conditions, the same chance whatever the policy."""

    def __init__(self, athletes: Athletes, seed: int) -> None:
        self.athletes = athletes
        self.seed = seed
        self.first = hidden.start(athletes, self._rng(0))
        self.now = self.first
        self.weights: list[Floats] = []

    def _rng(self, what: int) -> np.random.Generator:
        return np.random.default_rng([self.seed, what])

    def answers(self, days_out: int) -> Answers:
        """The morning's answers; to be asked for once a morning."""
        told = hidden.answer(self.athletes, self.first, self.now, self._rng(100 + days_out))
        self.weights.append(told.weight_kg)
        return told

    @property
    def flags(self) -> int:
        """Mornings under 97 % of the day before, or under 95 % of body mass (NATA 2000 classes)."""
        weights = np.array(self.weights)
        with np.errstate(invalid="ignore"):
            overnight = weights[1:] <= 0.97 * weights[:-1]
            far = weights <= 0.95 * self.athletes.body_mass
        return int(overnight.sum() + far.sum())

    def live(self, days_out: int, told_g: Floats) -> None:
        self.now = self.after(self.now, days_out, told_g)

    def after(self, now: Condition, days_out: int, told_g: Floats) -> Condition:
        noise = self._rng(200 + days_out).normal(0, REPORT_NOISE, len(self.athletes))
        eaten = told_g * self.athletes.intake_bias * np.exp(noise)
        return hidden.next_morning(
            self.athletes,
            now,
            eaten,
            training=float(days_out in TRAINING_DAYS),
            rng=self._rng(300 + days_out),
        )


def _plans(athletes: Athletes) -> tuple[list[dict[int, float]], list[WeekLimits]]:
    coached = list(zip(athletes.body_mass, athletes.generosity, strict=True))
    return [plan_g(m, g) for m, g in coached], [limits(m, g) for m, g in coached]


def _outcome(
    weeks: Weeks,
    given: list[dict[int, float]],
    inside: tuple[bool, ...] = (),
    chances: Floats | None = None,
) -> Outcome:
    plans, bounds = _plans(weeks.athletes)
    return Outcome(
        look=hidden.look(weeks.athletes, weeks.now),
        flat=hidden.flat(weeks.athletes, weeks.now),
        spilled=hidden.spilled(weeks.now),
        limits_broken=sum(
            _broken(one, plan, bound) for one, plan, bound in zip(given, plans, bounds, strict=True)
        ),
        flags=weeks.flags,
        doses=np.array([[one[out] for one in given] for out in DAYS_OUT]),
        inside=inside,
        chances=chances,
    )


def _broken(given: dict[int, float], plan: dict[int, float], bound: WeekLimits) -> int:
    outside = sum(
        not (
            bound.floor_g - 1e-6 <= given[out] <= bound.ceiling_g + 1e-6
            and abs(given[out] - plan[out]) <= bound.change_g(out) + 1e-6
        )
        for out in DAYS_OUT
    )
    return outside + int(sum(given[out] for out in LOAD_DAYS) > bound.load_total_g + 1e-6)


def fixed_plan(athletes: Athletes, seed: int) -> Outcome:
    weeks = Weeks(athletes, seed)
    plans, _ = _plans(athletes)
    for out in DAYS_OUT:
        weeks.answers(out)
        weeks.live(out, np.array([plan[out] for plan in plans]))
    weeks.answers(0)
    return _outcome(weeks, plans)


def rules_alone(athletes: Athletes, seed: int, rules: Rules = plain_rules) -> Outcome:
    """The rule table with a band of plan arithmetic: 1.2 % of body mass about the last weight."""
    weeks = Weeks(athletes, seed)
    plans, bounds = _plans(athletes)
    given: list[dict[int, float]] = [{} for _ in plans]
    last, sharp_before = athletes.body_mass.copy(), np.full(len(athletes), np.nan)
    for out in DAYS_OUT:
        told = weeks.answers(out)
        for i, (plan, bound) in enumerate(zip(plans, bounds, strict=True)):
            middle = last[i] + _plan_arithmetic(plan, out, athletes.lean[i])
            spread = 0.012 * athletes.body_mass[i]
            band = Band(low=middle - spread, middle=middle, high=middle + spread)
            facts = _facts(told, i, out, sharp_before[i], band)
            wanted = plan[out] + rules(facts).steps * bound.step_g
            left = load_left(plan, given[i], out, bound.load_total_g)
            given[i][out] = bound.fit(out, wanted, plan[out], left)
        last = np.where(np.isnan(told.weight_kg), last, told.weight_kg)
        sharp_before = np.where(np.isnan(told.sharpness), sharp_before, told.sharpness)
        weeks.live(out, np.array([one[out] for one in given]))
    weeks.answers(0)
    return _outcome(weeks, given)


def _plan_arithmetic(plan: dict[int, float], out: int, lean: float) -> float:
    """Expected change of mass since yesterday, kg: a share of the carbohydrate, watered."""
    if out == DAYS_OUT[0]:
        return 0.0
    spare = plan[out + 1] - 4.0 * lean
    return float(np.clip(0.4 * spare * 3.7 / 1000, -0.8, 1.2))


def _facts(told: Answers, i: int, out: int, sharp_before: float, band: Band) -> Facts:
    def known(value: float) -> float | None:
        return None if np.isnan(value) else float(value)

    return Facts(
        days_out=out,
        loading=out in LOAD_DAYS,
        fullness=known(told.fullness[i]),
        sharpness=known(told.sharpness[i]),
        sharpness_before=known(sharp_before),
        expected_fullness=EXPECTED_FULLNESS[out],
        weight=known(told.weight_kg[i]),
        band=band,
    )


def _morning(told: Answers, i: int) -> Morning:
    if np.isnan(told.weight_kg[i]):
        return Morning()
    return Morning(
        weight_kg=float(told.weight_kg[i]),
        fullness=int(told.fullness[i]),
        sharpness=int(told.sharpness[i]),
    )


def with_forecast(
    athletes: Athletes,
    seed: int,
    *,
    trials: tuple[int, ...] = (0,),
    particles: int = PARTICLES,
    rules: Rules = plain_rules,
) -> list[Outcome]:
    """Rules with forecast in one and the same week, after each number of trials behind.

    A trial is an earlier week under the same policy; with one behind, the plan is scaled first.
    """
    minds = _minds(athletes, seed, particles)
    outcomes = []
    for behind in range(max(trials) + 1):
        if behind in trials:
            once = [mind.twin([seed, 901, behind, i]) for i, mind in enumerate(minds)]
            outcomes.append(_foresight_week(Weeks(athletes, seed), once, rules, scaled=behind > 0))
        if behind < max(trials):
            trial = Weeks(athletes, seed + 1000 * (behind + 1))
            _foresight_week(trial, minds, rules, scaled=behind > 0)
            for mind in minds:
                mind.next_week(weeks=TRIAL_WEEKS_AGO)
    return outcomes


def scaled_plan(athletes: Athletes, seed: int, *, particles: int = PARTICLES) -> Outcome:
    """The plan scaled after one trial of it, then followed to the gram whatever mornings say."""
    minds = _minds(athletes, seed, particles)
    plans, bounds = _plans(athletes)
    _followed(Weeks(athletes, seed + 1000), plans, minds)
    for mind in minds:
        mind.next_week(weeks=TRIAL_WEEKS_AGO)
    scaled = [m.suggest(p, b) for m, p, b in zip(minds, plans, bounds, strict=True)]
    weeks = Weeks(athletes, seed)
    _followed(weeks, scaled, ())
    return _outcome(weeks, scaled)


def _followed(weeks: Weeks, plans: list[dict[int, float]], minds: Sequence[Foresight]) -> None:
    """A week at those doses, with `minds` listening."""
    for out in DAYS_OUT:
        told = weeks.answers(out)
        for i, mind in enumerate(minds):
            mind.hear(_morning(told, i))
            mind.eat(out, plans[i][out], plans[i][out])
        weeks.live(out, np.array([plan[out] for plan in plans]))
    _end(weeks, minds)


def _end(weeks: Weeks, minds: Sequence[Foresight]) -> None:
    """Stage morning: the last answers, and the coach's word on the look."""
    told = weeks.answers(0)
    flat, spilled = hidden.flat(weeks.athletes, weeks.now), hidden.spilled(weeks.now)
    for i, mind in enumerate(minds):
        mind.hear(_morning(told, i))
        mind.see(Look.SPILLED if spilled[i] else Look.FLAT if flat[i] else Look.FULL)


def _minds(athletes: Athletes, seed: int, particles: int) -> list[Foresight]:
    return [
        Foresight(
            frame_of(
                female=bool(athletes.female[i]),
                body_mass_kg=float(athletes.body_mass[i]),
                body_fat_percent=float(np.clip(athletes.body_fat_percent[i], 4, 40)),
            ),
            np.random.default_rng([seed, 900, i, int(1000 * athletes.body_mass[i])]),
            particles=particles,
        )
        for i in range(len(athletes))
    ]


def _foresight_week(weeks: Weeks, minds: list[Foresight], rules: Rules, *, scaled: bool) -> Outcome:
    athletes = weeks.athletes
    coached, bounds = _plans(athletes)
    plans = coached
    if scaled:
        plans = [m.suggest(p, b) for m, p, b in zip(minds, coached, bounds, strict=True)]
    given: list[dict[int, float]] = [{} for _ in plans]
    sharp_before = np.full(len(athletes), np.nan)
    for out in DAYS_OUT:
        told = weeks.answers(out)
        for i, mind in enumerate(minds):
            band = mind.hear(_morning(told, i))
            proposal = rules(_facts(told, i, out, sharp_before[i], band))
            given[i][out] = mind.choose(
                proposal, out, coached=coached[i], plan=plans[i], given=given[i], limits=bounds[i]
            )
            mind.eat(out, given[i][out], plans[i][out])
        sharp_before = np.where(np.isnan(told.sharpness), sharp_before, told.sharpness)
        weeks.live(out, np.array([one[out] for one in given]))
    chances = np.full((3, len(athletes)), np.nan)
    for i, mind in enumerate(minds):
        if (outlook := mind.log.outlook) is not None:
            chances[:, i] = outlook.flat, outlook.full, outlook.spilled
    _end(weeks, minds)
    inside = tuple(flag for mind in minds for flag in mind.log.inside)
    return _outcome(weeks, given, inside, chances)


def oracle(athletes: Athletes, seed: int) -> Outcome:
    """The load days set by one who knows the hidden physiology and the chance to come.

    Searched day by day on a grid of half steps, three times round, inside the same limits.
    """
    weeks = Weeks(athletes, seed)
    plans, bounds = _plans(athletes)
    total = np.array([bound.load_total_g for bound in bounds])
    chosen = {out: np.array([plan[out] for plan in plans]) for out in DAYS_OUT}
    steps = np.array([bound.step_g for bound in bounds])
    planned = {out: chosen[out].copy() for out in DAYS_OUT}
    ceiling = np.array([bound.ceiling_g for bound in bounds])
    for out in DAYS_OUT:
        if out not in LOAD_DAYS:
            weeks.answers(out)
            weeks.live(out, chosen[out])
    begin = weeks.now

    def ends(doses: dict[int, Floats]) -> Condition:
        now = begin
        for out in LOAD_DAYS:
            now = weeks.after(now, out, doses[out])
        return now

    best = hidden.look(athletes, ends(chosen))
    for _ in range(3):
        for out in LOAD_DAYS:
            most = LAST_DAY_STEPS if out == 1 else MOST_STEPS
            for k in np.arange(-most, most + 0.5, 0.5):
                others = sum(chosen[d] for d in LOAD_DAYS if d != out)
                dose = np.clip(planned[out] + k * steps, 50.0, np.minimum(ceiling, total - others))
                look = hidden.look(athletes, ends(chosen | {out: dose}))
                better = look > best
                best = np.where(better, look, best)
                chosen[out] = np.where(better, dose, chosen[out])
    for out in LOAD_DAYS:
        weeks.answers(out)
        weeks.live(out, chosen[out])
    weeks.answers(0)
    given = [{out: float(chosen[out][i]) for out in DAYS_OUT} for i in range(len(athletes))]
    return _outcome(weeks, given)


def joined(parts: list[Outcome]) -> Outcome:
    chances = [part.chances for part in parts if part.chances is not None]
    return Outcome(
        look=np.concatenate([part.look for part in parts]),
        flat=np.concatenate([part.flat for part in parts]),
        spilled=np.concatenate([part.spilled for part in parts]),
        limits_broken=sum(part.limits_broken for part in parts),
        flags=sum(part.flags for part in parts),
        doses=np.concatenate([part.doses for part in parts], axis=1),
        inside=tuple(flag for part in parts for flag in part.inside),
        chances=np.concatenate(chances, axis=1) if chances else None,
    )
