"""Worlds where carbs reach the muscle late, or fast while it is nearly empty and then slowly.

World "slow-gut": what cannot be taken up waits in the gut, and a blur is water under the skin.

Uptake from the gut has a daily most (Jentjens and Jeukendrup: about 60 to 90 g an hour while at
exercise, from memory; assumed lower in a rested, low-fibre week), the rest waits and weighs. The
store follows a share of what is taken up, falling as it fills (Katz and Lowell-like saturation,
assumed). A blur is water: carbohydrate over what was stored draws it under the skin the same day and
it goes as fast (assumed: coaches who cut back on the last day "to dry out"). Water 2.7 g/g (Hall
2011), and wandering salt. Her grades are thirds of the scale: low, middle, high (assumed: coarse).

World "two-phase": fast then slow synthesis by the hour, and a spill that shows the same day.

Muscle takes glucose up several times faster while it is nearly empty, without insulin, and slowly
with insulin afterwards (Price et al. 1994; first-hours rates of Flynn 2020, Greiwe 1999). A fixed
share of what is absorbed is burnt at once (Acheson 1988: a quarter to a third of a load), and a
fixed amount a day, whatever the store. Excess past a ration is in the skin by evening and half gone
in a day (assumed: many coaches see the spill the same day). Flat is seen late: what an athlete feels
and a judge sees levels off towards the ceiling (assumed: a logarithm, as sensations go). Water 3.3
g/g at once (Kreitzman 1992: 3 to 4 parts), and some held with insulin's sodium (DeFronzo 1975, from
memory). She answers in even grades only, low or high by temper (assumed).
"""

from __future__ import annotations

import numpy as np

from engine.bench.worlds.world import (
    BLUR,
    SHARE,
    Condition,
    Draw,
    Floats,
    Judging,
    Lived,
    People,
    Rated,
    World,
)


class SlowGut(World):
    id = "slow-gut"
    judging = Judging(flat_under=0.78, full_at=0.92, flat_power=1.4)

    def traits(self, drawn: Draw) -> dict[str, Floats]:
        return {
            "ceiling": drawn.lean * drawn.around(11.4, 0.11),
            "uptake": drawn.lean * drawn.around(11.5, 0.11),
            "needs": drawn.lean * drawn.around(2.5, 0.12),
            "usage": drawn.around(0.15, 0.15),
            "session": drawn.around(0.10, 0.22),
            "steep": drawn.around(1.15, 0.15),
            "tolerates": drawn.lean * drawn.around(2.7, 0.19),
            "carries": drawn.lean * drawn.around(2.3, 0.19),
            "water": drawn.around(2.7, 0.09),
            "bias": drawn.normal(0, 0.5),
            "critic": drawn.normal(0, 0.3),
        }

    def start(self, people: People, chance: Floats) -> Condition:
        zero = np.zeros(len(people))
        return {
            SHARE: (0.48 + 0.08 * chance[0]).clip(0.2, 0.8),
            BLUR: zero,
            "waits": zero,
            "salt": 0.3 * chance[1],
        }

    def next_morning(self, people: People, now: Condition, day: Lived, chance: Floats) -> Condition:
        there = now["waits"] + day.carb_g
        taken_up = np.minimum(there, people["uptake"])
        net = np.maximum(taken_up - people["needs"], 0.0)
        short = np.minimum(taken_up - people["needs"], 0.0)
        before = now[SHARE]
        # The nearer the ceiling, the smaller the part of what comes that is stored.
        free = np.maximum(1 - before, 0.0)
        part = net / people["ceiling"] * people["steep"]
        filled = free * (1 - np.exp(-1.15 * part / np.maximum(free + 0.25, 0.05)))
        used = before**1.5 * people["usage"] + day.session * people["session"] * before
        share = np.clip(before + filled - used + 0.3 * short / people["ceiling"], 0.05, 1)
        past = np.maximum(net - filled * people["ceiling"] - people["tolerates"], 0)
        return {
            SHARE: share,
            BLUR: 0.2 * now[BLUR] + past / people["carries"],
            "waits": 0.8 * (there - taken_up),
            "salt": 0.6 * now["salt"] + 0.3 * chance[1],
        }

    def weight_kg(self, people: People, first: Condition, now: Condition) -> Floats:
        grams = (now[SHARE] - first[SHARE]) * people["ceiling"]
        return np.asarray(
            people.mass
            + grams / 1000 * (1 + people["water"])
            + 2.5 * now["waits"] / 1000
            + 0.6 * now[BLUR]
            + now["salt"]
            - first["salt"]
        )

    def rates(self, people: People, now: Condition, chance: Floats) -> Rated:
        felt = 1 + 9 * (now[SHARE] - 0.15) / 0.80 + people["bias"] + 0.6 * chance[0]
        coarse = np.where(felt < 4, 3.0, np.where(felt < 7, 5.0, 8.0))
        return Rated(
            fullness=coarse, sharpness=4.4 - 1.5 * now[BLUR] + people["critic"] + 0.45 * chance[1]
        )


HOURS, EATING = 24, 16
PHASE_ENDS = 0.24  # of the ceiling: 35 mmol of 150 (Price 1994)


class TwoPhase(World):
    id = "two-phase"
    judging = Judging(flat_under=0.84, full_at=0.95, flat_cost=0.45, flat_power=1.3)

    def traits(self, drawn: Draw) -> dict[str, Floats]:
        return {
            "ceiling": drawn.muscle * 0.162 * drawn.around(188, 0.09),
            "slow": drawn.around(0.034, 0.12),  # of the ceiling an hour: 5 mmol/kg/h
            "rest": drawn.lean * drawn.around(2.4, 0.11),  # g a day burnt by brain and rest
            "direct": drawn.around(0.27, 0.11),  # of what is eaten, burnt at once
            "session": drawn.around(0.17, 0.22),
            "unseen": drawn.lean * drawn.around(0.6, 0.22),
            "carries": drawn.lean * drawn.around(2.4, 0.19),
            "water": drawn.around(3.3, 0.08),
            "salt": drawn.around(0.45, 0.3),
            "temper": drawn.normal(0, 0.8),
            "critic": drawn.normal(0, 0.35),
        }

    def start(self, people: People, chance: Floats) -> Condition:
        zero = np.zeros(len(people))
        return {
            SHARE: (0.47 + 0.08 * chance[0]).clip(0.25, 0.75),
            BLUR: zero,
            "insulin": zero,
            "gut": 0.2 * chance[1],
            "drift": zero,
        }

    def next_morning(self, people: People, now: Condition, day: Lived, chance: Floats) -> Condition:
        share, blur, ceiling = now[SHARE], now[BLUR], people["ceiling"]
        share = np.maximum(share - day.session * people["session"] * share, 0.05)
        an_hour = day.carb_g * (1 - people["direct"]) / EATING
        over = np.zeros(len(people))
        for hour in range(HOURS):
            offered = np.where(hour < EATING, an_hour, 0.0) - people["rest"] / HOURS
            empty = np.clip((PHASE_ENDS - share) / PHASE_ENDS, 0, 1)
            fastest = ceiling * people["slow"] * (1 + 2.5 * empty)
            room = np.clip((1 - share) / 0.08, 0, 1)
            taken = np.where(offered > 0, np.minimum(offered, fastest * room), 0.3 * offered)
            over += np.maximum(offered - np.maximum(taken, 0), 0)
            share = np.clip(share + taken / ceiling, 0.05, 1.0)
        excess = np.maximum(over - people["unseen"], 0) / people["carries"]
        insulin = now["insulin"] + 0.7 * (
            np.tanh((day.carb_g / people.lean - 3) / 4) * people["salt"] - now["insulin"]
        )
        return {
            SHARE: share,
            BLUR: 0.45 * blur + 0.75 * excess,
            "insulin": insulin,
            "gut": 0.5 * now["gut"] + 0.22 * chance[1],
            "drift": 0.6 * now["drift"] + 0.25 * chance[2],
        }

    def weight_kg(self, people: People, first: Condition, now: Condition) -> Floats:
        grams = (now[SHARE] - first[SHARE]) * people["ceiling"]
        moved = now["insulin"] - first["insulin"] + now["gut"] + now["drift"]
        return np.asarray(
            people.mass + grams / 1000 * (1 + people["water"]) + moved + 0.25 * now[BLUR]
        )

    def rates(self, people: People, now: Condition, chance: Floats) -> Rated:
        felt = np.log1p(6 * now[SHARE]) / np.log1p(6)  # levels off: 0.87 already at 0.75
        fullness = 1 + 9 * (felt - 0.42) / 0.56 + people["temper"] + 0.7 * chance[0]
        return Rated(
            fullness=2 * np.round(fullness / 2),
            sharpness=4.3 - 1.4 * now[BLUR] + people["critic"] + 0.5 * chance[1],
        )
