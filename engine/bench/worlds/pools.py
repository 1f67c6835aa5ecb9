"""Worlds where what spills, or is stored, goes into pools of its own.

World "pool": what spills stays, and the body learns to burn it.

The store fills straight on to a hard ceiling (assumed); its size differs widely, with a long tail
(Areta and Hopkins 2018: SD of 132 in 462 mmol/kg dry between people). What spills goes into a pool
that shows at once and drains over days (assumed: coaches who "start the load early to let it clear").
Burning of the excess rises with each day of it (Acheson 1988: fat made from carbohydrate grows over
the first days of a massive load). Four grams of water a gram (Kreitzman 1992, upper), half of it a
day late (assumed). Flat is seen only far down, and costs slowly (assumed). Her answers regress to
her usual grade (a known failing of scales: Stevens and Greenbaum 1966, from memory).

World "two-pools": two pools of glycogen in one muscle, a gut with an hourly most, slow water.

Small grains fill first and fast, large ones slowly after them and only with much on offer (Adamo
and Graham 1998: proglycogen within a day, macroglycogen over three, from memory). The gut passes
no more than so much a waking hour (Jeukendrup 2004: 60 to 70 g of glucose, from memory); what is
over waits and is lost by half (assumed). What is neither stored nor burnt draws water with salt,
which comes a day late and leaves slowly (assumed: the "held" look). Her grades rest on an anchor:
she judges the change against her first mornings, drifts down as the diet wears on, and hardly
uses grades over eight (Stevens and Greenbaum 1966 on avoided ends of scales, from memory; the
drift is assumed). Rules are not set on it; the tracker's noise and a debrief's stated doubt were
chosen with it in view.
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

    def start(self, people: People, chance: Floats) -> Condition:
        zero = np.zeros(len(people))
        return {
            SHARE: (0.46 + 0.08 * chance[0]).clip(0.2, 0.75),
            BLUR: zero,
            "days": zero,
            "late": zero,
            "drift": 0.2 * chance[1],
        }

    def next_morning(self, people: People, now: Condition, day: Lived, chance: Floats) -> Condition:
        ceiling = people["ceiling"]
        kept = now[SHARE] * (1 - people["usage"] - day.session * people["session"])
        net = day.carb_g - people["rest"]
        short = np.minimum(net, 0) * 0.25  # the liver, fat and ketones bear the rest
        taken = np.minimum(np.maximum(net, 0), people["most"] * ceiling)
        share = np.clip(kept + (taken + short) / ceiling, 0.05, 1)
        over = np.maximum(np.maximum(net, 0) - (share - kept) * ceiling, 0)
        burnt = people["burns"] + people["learns"] * now["days"]
        spilled = np.maximum(over - burnt, 0) / people["carries"]
        bound = (share - now[SHARE]) * ceiling / 1000 * people["water"]
        return {
            SHARE: share,
            BLUR: now[BLUR] * (1 - people["drains"]) + spilled,
            "days": 0.7 * now["days"] + (over > burnt),
            "late": 0.5 * bound,
            "drift": 0.7 * now["drift"] + 0.3 * chance[1],
        }

    def weight_kg(self, people: People, first: Condition, now: Condition) -> Floats:
        grams = (now[SHARE] - first[SHARE]) * people["ceiling"]
        held = grams / 1000 * (1 + people["water"]) - now["late"]
        return np.asarray(people.mass + held + now["drift"] + 0.5 * now[BLUR])

    def rates(self, people: People, now: Condition, chance: Floats) -> Rated:
        truly = 1 + 9 * (now[SHARE] - 0.12) / 0.84
        fullness = people["sticks"] * people["usual"] + (1 - people["sticks"]) * truly
        clear = 4.2 - 1.3 * now[BLUR] + people["fat_eye"]
        return Rated(fullness=fullness + 0.55 * chance[0], sharpness=clear + 0.45 * chance[1])


WAKING_H = 15
SMALL = 0.55  # of the ceiling are small grains


class TwoPools(World):
    id = "two-pools"
    judging = Judging(flat_under=0.79, full_at=0.92, flat_cost=0.45, flat_power=1.15)

    def traits(self, drawn: Draw) -> dict[str, Floats]:
        return {
            "ceiling": drawn.lean * drawn.around(11.8, 0.12),
            "passes": drawn.lean * drawn.around(0.85, 0.13),  # g a waking hour
            "rest": drawn.lean * drawn.around(2.3, 0.12),
            "of_meals": drawn.around(0.20, 0.2).clip(0.05, 0.4),
            "fast": drawn.around(0.85, 0.15),
            "slow": drawn.around(0.42, 0.2),
            "usage": drawn.around(0.12, 0.2),
            "session": drawn.around(0.15, 0.22),
            "bears": drawn.lean * drawn.around(1.5, 0.2),
            "carries": drawn.lean * drawn.around(2.2, 0.2),
            "late": drawn.around(0.45, 0.2).clip(0.1, 0.8),
            "leaves": drawn.around(0.45, 0.2).clip(0.15, 0.9),
            "water": drawn.around(3.0, 0.1),
            "anchor": drawn.normal(4.6, 0.5),
            "stretch": drawn.around(8.2, 0.14),
            "wears": np.abs(drawn.normal(0.05, 0.05)),
            "critic": drawn.normal(0, 0.3),
        }

    def start(self, people: People, chance: Floats) -> Condition:
        share = (0.48 + 0.07 * chance[0]).clip(0.25, 0.75)
        zero = np.zeros(len(people))
        return {
            SHARE: share,
            BLUR: zero,
            "small": np.minimum(share, SMALL),
            "large": np.maximum(share - SMALL, 0) + 0.0 * zero,
            "anchored": share,
            "waits": zero,
            "salt": zero,
            "owed": zero,
            "day": zero,
            "drift": 0.2 * chance[1],
        }

    def next_morning(self, people: People, now: Condition, day: Lived, chance: Floats) -> Condition:
        there = 0.5 * now["waits"] + day.carb_g
        passed = np.minimum(there, people["passes"] * WAKING_H)
        kept = 1 - people["usage"] * now[SHARE] - people["session"] * day.session
        net = passed * (1 - people["of_meals"]) - people["rest"]
        offered = np.maximum(net, 0) / people["ceiling"]
        small, large = now["small"] * kept, now["large"] * kept
        first = np.minimum(offered, (SMALL - small) * people["fast"])
        then = (1 - SMALL - large) * (1 - np.exp(-people["slow"] * 2.2 * (offered - first) / 0.45))
        then = np.minimum(np.maximum(then, 0), offered - first)
        small = np.clip(small + first + 0.2 * np.minimum(net, 0) / people["ceiling"], 0.05, SMALL)
        large = np.clip(large + then, 0, 1 - SMALL)
        over = (offered - first - then) * people["ceiling"]
        excess = np.maximum(over - people["bears"], 0) / people["carries"]
        return {
            SHARE: small + large,
            BLUR: (1 - people["leaves"]) * now[BLUR] + now["owed"] + (1 - people["late"]) * excess,
            "small": small,
            "large": large,
            "anchored": now["anchored"],
            "waits": there - passed,
            "salt": 0.5 * now["salt"] + 0.2 * np.minimum(excess, 1) + 0.12 * chance[2],
            "owed": people["late"] * excess,
            "day": now["day"] + 1,
            "drift": 0.6 * now["drift"] + 0.25 * chance[1],
        }

    def weight_kg(self, people: People, first: Condition, now: Condition) -> Floats:
        grams = (now[SHARE] - first[SHARE]) * people["ceiling"]
        moved = now["drift"] + now["salt"] + 0.4 * now[BLUR] + 2 * now["waits"] / 1000
        return np.asarray(
            people.mass + grams / 1000 * (1 + people["water"]) + moved - 0.03 * now["day"]
        )

    def rates(self, people: People, now: Condition, chance: Floats) -> Rated:
        felt = people["anchor"] + people["stretch"] * (now[SHARE] - now["anchored"])
        felt = felt - people["wears"] * now["day"]
        squeezed = np.where(felt > 8, 8 + 0.4 * (felt - 8), felt)
        return Rated(
            fullness=squeezed + 0.6 * chance[0],
            sharpness=4.3 - 1.4 * now[BLUR] + people["critic"] + 0.45 * chance[1],
        )
