"""World "two-muscles": worked muscle fills before the rest, and yesterday's meals pass for fullness.

Half of the muscle was worked and takes up fast, the rest slowly and only as far as at rest (Bergstrom
and Hultman 1966: one leg of two); what a judge sees is mostly the worked half (assumed). Chronic
dieters have small stores: a third of the athletes (assumed; low stores in energy deficit: Areta and
Hopkins 2018). Nothing of a spill shows up to a threshold, then it does steeply, a day late (assumed).
Water 2.4 g/g, slowly (Fernandez-Elias 2015: 1:3 when drinking little; Olsson and Saltin 1970 from
memory: 3 to 4). The scale strays on some mornings by a pound (assumed: toilet, clothes). How full
she feels is two parts store and one part what was eaten yesterday (assumed: the pump).
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

PARTS = 6
SEEN = 0.7  # of the look is the worked half


class TwoMuscles(World):
    id = "two-muscles"
    judging = Judging(flat_under=0.82, full_at=0.94, flat_power=1.0, blur_cost=0.6)

    def traits(self, drawn: Draw) -> dict[str, Floats]:
        small = 1 - 0.2 * drawn.some(0.33)
        ceiling = drawn.muscle * 0.162 * drawn.around(200, 0.08) * small
        return {
            "worked_most": 0.5 * ceiling,
            "rest_most": 0.5 * ceiling * 0.72,
            "fast": drawn.around(0.75, 0.19),  # of the room a day, per g/kg offered in full
            "slow": drawn.around(0.30, 0.22),
            "needs": drawn.lean * drawn.around(2.8, 0.11),
            "burn": drawn.around(0.13, 0.19),
            "session": drawn.around(0.22, 0.22),
            "unseen": drawn.lean * drawn.around(1.9, 0.19),
            "carries": drawn.lean * drawn.around(2.6, 0.19),
            "water": drawn.around(2.4, 0.11),
            "bias": drawn.normal(0, 0.5),
            "critic": drawn.normal(0, 0.3),
            "eats": drawn.lean * 5.5,
        }

    def start(self, people: People, chance: Floats) -> Condition:
        worked = people["worked_most"] * (0.42 + 0.08 * chance[0]).clip(0.15, 0.8)
        rest = people["rest_most"] * (0.62 + 0.08 * chance[1]).clip(0.3, 0.9)
        zero = np.zeros(len(people))
        return {
            SHARE: self._share(people, worked, rest),
            BLUR: zero,
            "worked": worked,
            "rest": rest,
            "before": zero,
            "excess": zero,
            "bound": zero,
            "owed": zero,
            "meals": zero + 0.45,
            "stray": zero,
            "drift": 0.2 * chance[2],
        }

    @staticmethod
    def _share(people: People, worked: Floats, rest: Floats) -> Floats:
        return np.asarray(
            SEEN * worked / people["worked_most"] + (1 - SEEN) * rest / people["rest_most"]
        )

    def next_morning(self, people: People, now: Condition, day: Lived, chance: Floats) -> Condition:
        worked = now["worked"] * (1 - day.session * people["session"])
        rest, over = now["rest"], np.zeros(len(people))
        net = (day.carb_g - people["needs"]) / PARTS
        for _ in range(PARTS):
            offered = np.maximum(net, 0)
            first = np.minimum(
                offered, people["fast"] * (people["worked_most"] - worked) / PARTS * 2
            )
            then = np.minimum(
                offered - first, people["slow"] * (people["rest_most"] - rest) / PARTS * 2
            )
            over += offered - first - then
            worked = worked * (1 - people["burn"] / PARTS) + first + 0.25 * np.minimum(net, 0)
            rest = rest * (1 - 0.6 * people["burn"] / PARTS) + then + 0.1 * np.minimum(net, 0)
            worked = np.maximum(worked, 0.05 * people["worked_most"])
            rest = np.maximum(rest, 0.2 * people["rest_most"])
        excess = np.maximum(over - people["unseen"], 0) / people["carries"]
        ripe = now["excess"] + 0.35 * now["before"]  # of yesterday, and what is left of before
        grams = worked + rest - now["worked"] - now["rest"]
        due = grams / 1000 * people["water"] + now["owed"]
        return {
            SHARE: self._share(people, worked, rest),
            BLUR: 1.6 * np.maximum(ripe - 0.35, 0) + 0.25 * excess,
            "worked": worked,
            "rest": rest,
            "before": ripe,
            "excess": excess,
            "bound": now["bound"] + 0.6 * due,
            "owed": 0.4 * due,
            "meals": day.carb_g / people["eats"],
            "stray": 0.45 * (chance[3] > 1.1),
            "drift": 0.55 * now["drift"] + 0.25 * chance[2],
        }

    def weight_kg(self, people: People, first: Condition, now: Condition) -> Floats:
        grams = now["worked"] + now["rest"] - first["worked"] - first["rest"]
        moved = now["bound"] + now["drift"] + now["stray"]
        return np.asarray(people.mass + grams / 1000 + moved + 0.3 * now[BLUR])

    def rates(self, people: People, now: Condition, chance: Floats) -> Rated:
        felt = 0.67 * now[SHARE] + 0.33 * np.clip(0.35 + 0.45 * now["meals"], 0, 1)
        return Rated(
            fullness=1 + 9 * (felt - 0.25) / 0.68 + people["bias"] + 0.6 * chance[0],
            sharpness=4.5 - 1.4 * now[BLUR] + people["critic"] + 0.5 * chance[1],
        )
