"""World "pool": what spills stays, and the body learns to burn it.

The store fills straight on to a hard ceiling (assumed); its size differs widely, with a long tail
(Areta and Hopkins 2018: SD of 132 in 462 mmol/kg dry between people). What spills goes into a pool
that shows at once and drains over days (assumed: coaches who "start the load early to let it clear").
Burning of the excess rises with each day of it (Acheson 1988: fat made from carbohydrate grows over
the first days of a massive load). Four grams of water a gram (Kreitzman 1992, upper), half of it a
day late (assumed). Flat is seen only far down, and costs slowly (assumed). Her answers regress to
her usual grade (a known failing of scales: Stevens and Greenbaum 1966, from memory).
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


class Pool(World):
    id = "pool"
    judging = Judging(flat_under=0.76, full_at=0.90, flat_cost=0.6, flat_power=1.1, blur_cost=0.45)

    def traits(self, drawn: Draw) -> dict[str, Floats]:
        tail = np.exp(np.abs(drawn.normal(0, 0.10)))
        return {
            "ceiling": drawn.lean * drawn.around(12.6, 0.11) * tail,
            "rest": drawn.lean * drawn.around(3.0, 0.11),
            "usage": drawn.around(0.09, 0.22),
            "session": drawn.around(0.13, 0.22),
            "most": drawn.around(0.40, 0.15),  # of the ceiling a day
            "burns": drawn.lean * drawn.around(0.6, 0.22),
            "learns": drawn.lean * drawn.around(0.55, 0.3),
            "carries": drawn.lean * drawn.around(3.1, 0.19),
            "drains": drawn.around(0.30, 0.19).clip(0.1, 0.6),
            "water": drawn.around(3.9, 0.08),
            "usual": drawn.normal(5.6, 0.8),
            "sticks": (0.35 + 0.12 * drawn.normal(0, 1)).clip(0.1, 0.65),
            "fat_eye": drawn.normal(0, 0.3),
        }

    def start(self, who: People, chance: Floats) -> Condition:
        zero = np.zeros(len(who))
        return {
            SHARE: (0.46 + 0.08 * chance[0]).clip(0.2, 0.75),
            BLUR: zero,
            "days": zero,
            "late": zero,
            "drift": 0.2 * chance[1],
        }

    def next_morning(self, who: People, now: Condition, day: Lived, chance: Floats) -> Condition:
        ceiling = who["ceiling"]
        kept = now[SHARE] * (1 - who["usage"] - day.session * who["session"])
        net = day.carb_g - who["rest"]
        short = np.minimum(net, 0) * 0.25  # the liver, fat and ketones bear the rest
        taken = np.minimum(np.maximum(net, 0), who["most"] * ceiling)
        share = np.clip(kept + (taken + short) / ceiling, 0.05, 1)
        over = np.maximum(np.maximum(net, 0) - (share - kept) * ceiling, 0)
        burnt = who["burns"] + who["learns"] * now["days"]
        spilled = np.maximum(over - burnt, 0) / who["carries"]
        bound = (share - now[SHARE]) * ceiling / 1000 * who["water"]
        return {
            SHARE: share,
            BLUR: now[BLUR] * (1 - who["drains"]) + spilled,
            "days": 0.7 * now["days"] + (over > burnt),
            "late": 0.5 * bound,
            "drift": 0.7 * now["drift"] + 0.3 * chance[1],
        }

    def weight_kg(self, who: People, first: Condition, now: Condition) -> Floats:
        grams = (now[SHARE] - first[SHARE]) * who["ceiling"]
        held = grams / 1000 * (1 + who["water"]) - now["late"]
        return np.asarray(who.mass + held + now["drift"] + 0.5 * now[BLUR])

    def rates(self, who: People, now: Condition, chance: Floats) -> Rated:
        truly = 1 + 9 * (now[SHARE] - 0.12) / 0.84
        fullness = who["sticks"] * who["usual"] + (1 - who["sticks"]) * truly
        clear = 4.2 - 1.3 * now[BLUR] + who["fat_eye"]
        return Rated(fullness=fullness + 0.55 * chance[0], sharpness=clear + 0.45 * chance[1])
