"""A week of the bench: every morning's answers go through `decide` as it is shipped, and are eaten."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field
from datetime import date, timedelta

import numpy as np

from engine.bench.eye import Eye, Told, Week
from engine.bench.setting import (
    DAYS_OUT,
    EVENT_DAY,
    ORDINARY,
    ZONE,
    Client,
    LimitsOf,
    Trouble,
    load_g,
    planned_g,
    suggested,
)
from engine.bench.worlds.world import Bools, Condition, Floats
from engine.decision.beliefs import taught_by
from engine.decision.decide import Decision, decide
from engine.model.pooling import pooled
from engine.planning.behind.next_load import Ahead, ModelMisfit, next_load
from engine.values.athlete import Event, EventKind
from engine.values.body import Prior
from engine.values.case import Case, ForecastUse, PastWeek
from engine.values.checkin import CheckIn, DaySet, History, Look, Observed, TrainingDone
from engine.values.limits import Limits
from engine.values.plan import LOAD_DAYS, PeakPlan

WEEKS_APART = 3
EPSILON = 1e-6


@dataclass(frozen=True, slots=True, kw_only=True)
class Policy:
    """How a row of the bench decides: the engine as shipped, and what the coach and the answers do."""

    id: str
    foresight: bool
    answers: bool = True  # the coach takes what is proposed; else what stands is what lapses to
    looks: bool = False  # the coach taps what they see on every load morning
    finished: int = 0  # weeks of other athletes of that world that the prior rests on
    limits: LimitsOf = suggested
    trouble: Trouble = ORDINARY
    without: frozenset[str] = frozenset()  # rules that are left out, to see what each is worth


@dataclass(frozen=True, slots=True, kw_only=True)
class Ended:
    """How a policy's week ended, an element an athlete."""

    look: Floats
    flat: Bools
    spilled: Bools
    given: dict[int, Floats]
    limits_broken: int
    flagged: int  # mornings with a caution or a warning
    chances: Floats  # flat, full and spilled x athletes as said on the last morning; NaN where none
    inside: tuple[bool, ...]  # each weight, whether the model's 80 % band held it


@dataclass(slots=True, kw_only=True)
class _File:
    """What is kept of one athlete from week to week and from morning to morning."""

    client: Client
    trials: tuple[PastWeek, ...] = ()
    plan: PeakPlan
    limits: Limits
    checkins: list[CheckIn]
    given: dict[int, float]
    decisions: dict[int, Decision]
    observed: list[Observed] = field(default_factory=list)


class Practice:
    """A coach's athletes of one world under one policy, through trials and the week that counts."""

    def __init__(
        self, policy: Policy, week: Week, clients: Sequence[Client], prior: Prior | None = None
    ) -> None:
        self.policy, self.prior = policy, prior
        self.files = [self._file(client) for client in clients]
        self.weeks = week

    def _file(self, client: Client) -> _File:
        return _File(
            client=client,
            plan=client.plan,
            limits=self.policy.limits(client.athlete, client.plan, client.baseline),
            checkins=[],
            given={},
            decisions={},
        )

    def trial(self, week: Week, weeks_before: int) -> None:
        """A week that is run for practice and looked at; each next load is taken as suggested."""
        if self.policy.answers:
            for one in self.files:
                self._next_plan(one, EventKind.TRIAL)
        day = EVENT_DAY - timedelta(weeks=weeks_before)
        ended = self.run(week, day, EventKind.TRIAL)
        told = week.told(0, ended, self.policy.trouble)
        judging = week.world.judging
        flat, spilled = judging.flat(ended), judging.spilled(ended)
        for i, one in enumerate(self.files):
            last = _checkin(one, told, i, day, 0)
            if last.fullness is not None:
                one.checkins.append(last)
            look = Look.SPILLED if spilled[i] else Look.FLAT if flat[i] else Look.FULL
            past = PastWeek(day=day, plan=one.plan, history=_history(one, day), look=look)
            one.trials = (*one.trials, past)
            if self.policy.answers:
                self._next_plan(one, EventKind.SHOW)

    def _next_plan(self, one: _File, kind: EventKind) -> None:
        """The coach takes the load that is suggested, and limits suggested anew around it."""
        if not one.trials:
            return
        athlete, baseline = one.client.athlete, one.client.baseline
        made_from = one.trials[-1].as_it_went
        try:
            ahead = Ahead(one.limits, kind=kind)
            found = next_load(athlete, baseline, made_from, one.trials, ahead)
        except ModelMisfit:
            return
        one.plan = found.plan
        one.limits = self.policy.limits(athlete, one.plan, baseline)

    def run(self, week: Week, day: date = EVENT_DAY, kind: EventKind = EventKind.SHOW) -> Condition:
        """The week up to the morning of `day`: the condition then."""
        for one in self.files:
            one.checkins, one.given, one.decisions, one.observed = [], {}, {}, []
        eye = Eye(week, [f.client for f in self.files], week.seed) if self.policy.looks else None
        now = week.first
        for out in DAYS_OUT:
            told = week.told(out, now, self.policy.trouble)
            for i, one in enumerate(self.files):
                if eye is not None:
                    one.observed += eye.sees(now, i, day, out)
                self._morning(one, told, i, Event(kind=kind, day=day, zone=ZONE), out)
            now = week.after(now, out, np.array([one.given[out] for one in self.files]))
        return now

    def _morning(self, one: _File, told: Told, i: int, event: Event, out: int) -> None:
        checkin = _checkin(one, told, i, event.day, out)
        if checkin.fullness is None:
            one.given[out] = planned_g(one.plan, out)  # what is in force where nothing is answered
            return
        decision = decide(
            Case(
                athlete=one.client.athlete,
                baseline=one.client.baseline,
                event=event,
                plan=one.plan,
                limits=one.limits,
                history=_history(one, event.day),
                checkin=checkin,
                trials=one.trials,
                prior=self.prior,
                forecast=ForecastUse.PROPOSES if self.policy.foresight else ForecastUse.RULES_ONLY,
            ),
            without=self.policy.without,
        )
        silent = decision.needs_sign_off and not self.policy.answers
        grams = decision.lapse_g if silent else decision.carb_g
        one.given[out] = planned_g(one.plan, out) if grams is None else grams
        one.checkins.append(checkin)
        one.decisions[out] = decision

    def ended(self, week: Week, now: Condition) -> Ended:
        judging = week.world.judging
        chances = np.full((3, len(self.files)), np.nan)
        for i, one in enumerate(self.files):
            view = one.decisions[1].foresight if 1 in one.decisions else None
            odds = view.odds if view else ()
            if odds:
                said = min(odds, key=lambda o: abs(o.carb_g - one.given[1]))
                chances[:, i] = said.flat, said.full, said.spilled
        return Ended(
            look=judging.look(now),
            flat=judging.flat(now),
            spilled=judging.spilled(now),
            given={out: np.array([one.given[out] for one in self.files]) for out in DAYS_OUT},
            limits_broken=sum(_broken(one) for one in self.files),
            flagged=sum(bool(d.flags) for one in self.files for d in one.decisions.values()),
            chances=chances,
            inside=tuple(
                decision.foresight.band.low_kg <= weight <= decision.foresight.band.high_kg
                for one in self.files
                for decision, weight in zip(
                    one.decisions.values(), [c.weight_kg for c in one.checkins], strict=True
                )
                if weight is not None and decision.foresight and decision.foresight.band
            ),
        )


def _checkin(one: _File, told: Told, i: int, day: date, out: int) -> CheckIn:
    if np.isnan(told.weight_kg[i]):
        return CheckIn(date=day - timedelta(days=out))
    return CheckIn(
        date=day - timedelta(days=out),
        weight_kg=float(told.weight_kg[i]),
        fullness=int(told.fullness[i]),
        sharpness=int(told.sharpness[i]) if out <= max(LOAD_DAYS) else None,
        water_l=one.client.baseline.water_l,
        training_done=TrainingDone.AS_PLANNED,
    )


def _history(one: _File, day: date) -> History:
    """What is on file up to now."""
    set_days = [DaySet(day - timedelta(days=out), grams) for out, grams in one.given.items()]
    return History(
        checkins=tuple(one.checkins), set_days=tuple(set_days), observed=tuple(one.observed)
    )


def _broken(one: _File) -> int:
    """Days on which a limit of the coach's did not hold, told from the limits themselves."""
    limits, found = one.limits, 0
    for out, grams in one.given.items():
        far = abs(grams - planned_g(one.plan, out)) > limits.change_per_day_g + EPSILON
        low = grams < min(limits.carb_floor_g, planned_g(one.plan, out)) - EPSILON
        high = grams > max(limits.carb_ceiling_g, planned_g(one.plan, out)) + EPSILON
        found += far or low or high
    total = sum(one.given[out] for out in LOAD_DAYS)
    return found + int(total > max(limits.load_total_g, load_g(one.plan)) + EPSILON)


def prior_after(policy: Policy, week: Week, clients: Sequence[Client]) -> Prior | None:
    """The prior once these athletes have finished a week each, looked at on its day."""
    practice = Practice(policy, week, clients)
    practice.trial(week, WEEKS_APART)
    return pooled(
        [
            taught_by(one.client.athlete, one.client.baseline, one.trials, f"{number}")
            for number, one in enumerate(practice.files)
        ]
    )


def weeks_behind(
    policy: Policy,
    week: Week,
    trials: Sequence[Week],
    clients: Sequence[Client],
    prior: Prior | None = None,
) -> list[Ended]:
    """How one and the same week ends with none of those trials behind, with one, and so on."""
    found = []
    practice = Practice(policy, week, clients, prior)
    for behind in range(len(trials) + 1):
        found.append(practice.ended(week, practice.run(week)))
        if behind < len(trials):
            practice.trial(trials[behind], WEEKS_APART * (len(trials) - behind))
    return found
