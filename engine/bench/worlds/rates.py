"""Worlds where uptake and burning follow the intake of the days before.

World "flux": burning follows what is eaten, and the ceiling falls back from day to day.

Carbohydrate burning adapts to intake within days (Hall et al. 2010; McDevitt 2000, from memory), so
the first load day stores most. How high the store may go depends on how hard the muscle was emptied
before, and falls back (Bergstrom and Hultman 1966: the exercised leg took twice as much; Goforth
1997, from memory). A spill shows half the same day, half the next. Water 3 g/g; insulin has the
kidneys hold sodium for two days or so and then let go (DeFronzo 1975, from memory); an athlete short
of food holds water that leaves at once when she eats (assumed; common practice calls it a whoosh).
What she answers is anchored to yesterday's answer (assumed).

World "set-point": stores that are held near a set point, a load that wears off, and moods.

Muscle takes up in proportion to how far it is under a set point that each load day lifts, and
leaks back towards it (Goforth 1997: a raised store falls back only over days; that the point
moves is assumed). Burning is what is on offer to a power (assumed). A spill is the sum of two
days' excess over what the body tells as usual (assumed: "two big days in a row"). Water is 3.4
g/g (Kreitzman 1992), and stress holds some that leaves with the first carbohydrate (assumed;
common practice). Fullness is felt as the rise over yesterday and the level, about half each
(assumed: people notice what changes); sharpness goes down with held water as well, and with the
athlete's mood of the day, which moves both answers the same way (assumed: a bad day looks bad in
every mirror). Rules are not set on it; the tracker's noise and a debrief's stated doubt were
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

FULLNESS, SHARPNESS = "felt_full", "felt_sharp"


class Flux(World):
    id = "flux"
    judging = Judging(flat_under=0.80, full_at=0.93)

    def traits(self, drawn: Draw) -> dict[str, Floats]:
        return {
            "ceiling": drawn.muscle * 0.162 * drawn.around(190, 0.1),
            "supers": drawn.around(0.22, 0.3),  # how much higher after depleting work
            "share_burnt": (0.50 + 0.025 * drawn.normal(0, 1)).clip(0.35, 0.7),
            "adapts": drawn.around(0.55, 0.15).clip(0.2, 0.9),
            "least": drawn.lean * drawn.around(2.0, 0.15),
            "session": drawn.around(0.15, 0.22),
            "day_most": drawn.around(0.5, 0.14),
            "slack": drawn.lean * drawn.around(1.0, 0.22),
            "carries": drawn.lean * drawn.around(2.6, 0.19),
            "water": drawn.around(3.0, 0.09),
            "sodium": drawn.around(0.5, 0.3),
            "whoosh": drawn.some(0.3) * drawn.around(0.6, 0.22),
            "anchors": (0.4 + 0.12 * drawn.normal(0, 1)).clip(0.1, 0.7),
            "bias": drawn.normal(0, 0.6),
        }

    def start(self, people: People, chance: Floats) -> Condition:
        zero = np.zeros(len(people))
        share = (0.50 + 0.07 * chance[0]).clip(0.25, 0.8)
        return {
            SHARE: share,
            BLUR: zero,
            "store": share * people["ceiling"],
            "primed": zero + 0.3,
            "burning": people["least"] + zero,
            "pending": zero,
            "sodium": zero,
            "held": people["whoosh"],
            "drift": 0.2 * chance[1],
            FULLNESS: self._full(people, share),
            SHARPNESS: zero + 4.3,
        }

    def next_morning(self, people: People, now: Condition, day: Lived, chance: Floats) -> Condition:
        aim = np.maximum(people["share_burnt"] * day.carb_g, people["least"])
        burning = now["burning"] + people["adapts"] * (aim - now["burning"])
        worked = people["session"] * day.session * now["store"]
        primed = 0.8 * now["primed"] + 0.3 * day.session
        ceiling = people["ceiling"] * (1 + people["supers"] * (np.minimum(primed, 1.2) - 0.45))
        left, net = now["store"] - worked, day.carb_g - burning
        room = np.maximum(ceiling - left, 0)
        most = people["day_most"] * ceiling
        offered = np.minimum(np.maximum(net, 0), most)
        taken = room * (1 - np.exp(-offered / np.maximum(room, 1)))
        store = np.maximum(left + taken + 0.4 * np.minimum(net, 0), 0.05 * ceiling)
        excess = np.maximum(np.maximum(net, 0) - taken - people["slack"], 0) / people["carries"]
        fed = day.carb_g > 4 * people.lean
        sodium = np.where(fed, now["sodium"] + 0.6 * (people["sodium"] - now["sodium"]), 0.0)
        share = np.minimum(store / ceiling, 1.0)
        blur = 0.45 * now[BLUR] + now["pending"] + 0.5 * excess
        full, sharp = self._full(people, share), 4.3 - 1.5 * blur
        a = people["anchors"]
        return {
            SHARE: share,
            BLUR: blur,
            "store": store,
            "primed": primed,
            "burning": burning,
            "pending": 0.5 * excess,
            "sodium": sodium,
            "held": np.where(fed, 0.0, now["held"]),
            "drift": 0.6 * now["drift"] + 0.27 * chance[1],
            FULLNESS: a * now[FULLNESS] + (1 - a) * full + 0.3 * chance[2],
            SHARPNESS: a * now[SHARPNESS] + (1 - a) * sharp + 0.2 * chance[3],
        }

    @staticmethod
    def _full(people: People, share: Floats) -> Floats:
        return np.asarray(1 + 9 * (share - 0.14) / 0.80 + people["bias"])

    def weight_kg(self, people: People, first: Condition, now: Condition) -> Floats:
        grams = now["store"] - first["store"]
        moved = now["sodium"] - first["sodium"] + now["held"] - first["held"] + now["drift"]
        return np.asarray(
            people.mass + grams / 1000 * (1 + people["water"]) + moved + 0.3 * now[BLUR]
        )

    def rates(self, people: People, now: Condition, chance: Floats) -> Rated:
        del people  # what is answered hangs on what was felt, and that on the days before
        return Rated(
            fullness=now[FULLNESS] + 0.5 * chance[0], sharpness=now[SHARPNESS] + 0.35 * chance[1]
        )


class SetPoint(World):
    id = "set-point"
    judging = Judging(flat_under=0.81, full_at=0.94, flat_power=1.3, blur_cost=0.45)

    def traits(self, drawn: Draw) -> dict[str, Floats]:
        return {
            "ceiling": drawn.muscle * 0.162 * drawn.around(192, 0.1),
            "follows": drawn.around(0.80, 0.14),
            "lifts": drawn.around(0.42, 0.18),  # of what is still free, by a usual load day
            "burns": drawn.around(1.3, 0.12),
            "session": drawn.around(0.16, 0.22),
            "takes": drawn.lean * drawn.around(1.7, 0.25),
            "carries": drawn.lean * drawn.around(3.6, 0.2),
            "water": drawn.around(3.4, 0.08),
            "stress": drawn.some(0.4) * drawn.around(0.5, 0.3),
            "bias": drawn.normal(0, 0.5),
            "rises": drawn.around(0.5, 0.25).clip(0.15, 0.8),
            "critic": drawn.normal(0, 0.3),
        }

    def start(self, people: People, chance: Floats) -> Condition:
        share = (0.48 + 0.07 * chance[0]).clip(0.25, 0.75)
        zero = np.zeros(len(people))
        return {
            SHARE: share,
            BLUR: zero,
            "point": share,
            "risen": zero,
            "excess": zero,
            "held": people["stress"],
            "mood": 0.5 * chance[1],
            "drift": 0.2 * chance[2],
        }

    def next_morning(self, people: People, now: Condition, day: Lived, chance: Floats) -> Condition:
        per_kg = day.carb_g / people.lean
        burnt = people["burns"] * np.maximum(per_kg, 0.5) ** 0.55 * people.lean
        net = day.carb_g - burnt
        worked = now[SHARE] * (1 - day.session * people["session"])
        lifted = people["lifts"] * np.tanh(np.maximum(net, 0) / (4.0 * people.lean)) * 1.5
        point = np.clip(now["point"] + lifted * (1 - now["point"]), 0, 1)
        point = np.where(net <= 0, 0.48 + 0.85 * (point - 0.48), point)
        wanted = np.maximum(point + 0.12 - worked, 0) * people["follows"] * people["ceiling"]
        stored = np.minimum(np.maximum(net, 0), wanted)
        share = np.clip(worked + (stored + 0.25 * np.minimum(net, 0)) / people["ceiling"], 0.05, 1)
        excess = np.maximum(np.maximum(net, 0) - stored - people["takes"], 0) / people["carries"]
        fed = per_kg > 4
        return {
            SHARE: share,
            BLUR: 0.2 * now[BLUR] + 0.75 * excess + 0.55 * now["excess"],
            "point": point,
            "risen": share - now[SHARE],
            "excess": excess,
            "held": np.where(fed, 0.2 * now["held"], now["held"]),
            "mood": 0.5 * now["mood"] + 0.4 * chance[1],
            "drift": 0.6 * now["drift"] + 0.25 * chance[2],
        }

    def weight_kg(self, people: People, first: Condition, now: Condition) -> Floats:
        grams = (now[SHARE] - first[SHARE]) * people["ceiling"]
        moved = now["drift"] + now["held"] - first["held"] + 0.35 * now[BLUR]
        return np.asarray(people.mass + grams / 1000 * (1 + people["water"]) + moved)

    def rates(self, people: People, now: Condition, chance: Floats) -> Rated:
        level = 1 + 9 * (now[SHARE] - 0.15) / 0.80
        felt = (
            level + people["rises"] * 9 * (now["risen"] - 0.08) + people["bias"] + 0.6 * now["mood"]
        )
        clear = 4.4 - 1.3 * now[BLUR] - 0.4 * now["held"] + people["critic"] + 0.25 * now["mood"]
        return Rated(fullness=felt + 0.5 * chance[0], sharpness=clear + 0.4 * chance[1])
