"""World "slow-gut": what cannot be taken up waits in the gut, and a blur is water under the skin.

Uptake from the gut has a daily most (Jentjens and Jeukendrup: about 60 to 90 g an hour while at
exercise, from memory; assumed lower in a rested, low-fibre week), the rest waits and weighs. The
store follows a share of what is taken up, falling as it fills (Katz and Lowell-like saturation,
assumed). A blur is water: carbohydrate over what was stored draws it under the skin the same day and
it goes as fast (assumed: coaches who cut back on the last day "to dry out"). Water 2.7 g/g (Hall
2011), and wandering salt. Her grades are thirds of the scale: low, middle, high (assumed: coarse).
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

    def start(self, who: People, chance: Floats) -> Condition:
        zero = np.zeros(len(who))
        return {
            SHARE: (0.48 + 0.08 * chance[0]).clip(0.2, 0.8),
            BLUR: zero,
            "waits": zero,
            "salt": 0.3 * chance[1],
        }

    def next_morning(self, who: People, now: Condition, day: Lived, chance: Floats) -> Condition:
        there = now["waits"] + day.carb_g
        taken_up = np.minimum(there, who["uptake"])
        net = np.maximum(taken_up - who["needs"], 0.0)
        short = np.minimum(taken_up - who["needs"], 0.0)
        before = now[SHARE]
        # The nearer the ceiling, the smaller the part of what comes that is stored.
        free = np.maximum(1 - before, 0.0)
        part = net / who["ceiling"] * who["steep"]
        filled = free * (1 - np.exp(-1.15 * part / np.maximum(free + 0.25, 0.05)))
        used = before**1.5 * who["usage"] + day.session * who["session"] * before
        share = np.clip(before + filled - used + 0.3 * short / who["ceiling"], 0.05, 1)
        past = np.maximum(net - filled * who["ceiling"] - who["tolerates"], 0)
        return {
            SHARE: share,
            BLUR: 0.2 * now[BLUR] + past / who["carries"],
            "waits": 0.8 * (there - taken_up),
            "salt": 0.6 * now["salt"] + 0.3 * chance[1],
        }

    def weight_kg(self, who: People, first: Condition, now: Condition) -> Floats:
        grams = (now[SHARE] - first[SHARE]) * who["ceiling"]
        return np.asarray(
            who.mass
            + grams / 1000 * (1 + who["water"])
            + 2.5 * now["waits"] / 1000
            + 0.6 * now[BLUR]
            + now["salt"]
            - first["salt"]
        )

    def rates(self, who: People, now: Condition, chance: Floats) -> Rated:
        felt = 1 + 9 * (now[SHARE] - 0.15) / 0.80 + who["bias"] + 0.6 * chance[0]
        coarse = np.where(felt < 4, 3.0, np.where(felt < 7, 5.0, 8.0))
        return Rated(
            fullness=coarse, sharpness=4.4 - 1.5 * now[BLUR] + who["critic"] + 0.45 * chance[1]
        )
