"""World "one-store": a single store by the day, and a spill that shows half now and half tomorrow.

The store fills along an exponential and empties with the square of its level (Hall et al. 2011 use
that power); brain and blood cells take their part first. A ration of excess a day is burnt unseen,
half of the rest blurs the look the next morning, half the one after (common practice: "it shows a
day later"). Water follows the store a day late by half (assumed). Ratings are linear with a bias of
each athlete's own (assumed). Glycogen ceiling 190 mmol/kg wet: Bergstrom 1967 and Fairchild 2002
reached 198 to 204. All other figures assumed: chosen so that plans miss to both sides.
"""

from __future__ import annotations

import numpy as np

from engine.bench.worlds.world import (
    BLUR,
    SHARE,
    Condition,
    Draw,
    Floats,
    Lived,
    People,
    Rated,
    World,
)

PARTS = 8


class OneStore(World):
    id = "one-store"

    def traits(self, drawn: Draw) -> dict[str, Floats]:
        lean = drawn.lean
        return {
            "ceiling": drawn.muscle * 0.162 * drawn.around(186, 0.11),
            "needs": lean * drawn.around(2.5, 0.13),
            "fill": drawn.around(0.80, 0.14),
            "usage": drawn.around(0.17, 0.15),
            "training": drawn.around(0.12, 0.19),
            "burn_more": lean * drawn.around(2.1, 0.17),
            "carries": lean * drawn.around(1.9, 0.19),
            "water": drawn.around(2.8, 0.09),
            "fullness_bias": drawn.normal(0, 0.5),
            "sharpness_bias": drawn.normal(0, 0.3),
            "menstruating": drawn.female * drawn.some(0.15),
        }

    def start(self, people: People, chance: Floats) -> Condition:
        share = (0.50 + 0.07 * chance[0]).clip(0.3, 0.75)
        zero = np.zeros(len(people))
        return {
            SHARE: share,
            BLUR: zero,
            "liver": people.lean * (1 + 0.15 * chance[1]),
            "pending": zero,
            "lag": zero,
            "salt": 0.25 * chance[2],
            "gut": zero,
            "tissue": zero,
        }

    def next_morning(self, people: People, now: Condition, day: Lived, chance: Floats) -> Condition:
        carb, lean = day.carb_g, people.lean
        net = np.maximum(
            carb - people["needs"] * (0.6 + 0.4 * np.minimum(carb / people["needs"], 1)), 0
        )
        to_hold = 1.9 * lean * (1 - np.exp(-carb / (3.0 * lean)))
        liver = now["liver"] + 0.6 * (to_hold - now["liver"])
        share, stored = self._fill(people, now[SHARE], net, day.session)
        excess = np.maximum(net - stored - people["burn_more"], 0) / people["carries"]
        grams = (share - now[SHARE]) * people["ceiling"] + liver - now["liver"]
        return {
            SHARE: share,
            BLUR: 0.5 * now[BLUR] + now["pending"] + 0.5 * excess,
            "liver": liver,
            "pending": 0.5 * excess,
            "lag": 0.45 * (now["lag"] + grams / 1000 * people["water"]),
            "salt": 0.55 * now["salt"] + 0.28 * chance[0],
            "gut": 0.6 * now["gut"] + 0.18 * chance[1],
            "tissue": now["tissue"] - 0.035 * (1 - carb / (5 * lean)),
        }

    @staticmethod
    def _fill(people: People, share: Floats, net: Floats, session: float) -> tuple[Floats, Floats]:
        """The share after a day in parts, and what of `net` (g) the store took."""
        ceiling = people["ceiling"]
        most, stored = people["fill"] * ceiling / PARTS, np.zeros(len(people))
        for _ in range(PARTS):
            room = np.maximum(1 - share**8, 0)
            taken = most * (1 - np.exp(-net / PARTS / most)) * room
            used = share * (share * people["usage"] + session * people["training"]) / PARTS
            share = np.clip(share + taken / ceiling - used, 0.02, 1)
            stored += taken
        return share, stored

    def weight_kg(self, people: People, first: Condition, now: Condition) -> Floats:
        grams = (now[SHARE] - first[SHARE]) * people["ceiling"] + now["liver"] - first["liver"]
        return np.asarray(
            people.mass
            + grams / 1000 * (1 + people["water"])
            - (now["lag"] - first["lag"])
            + now["salt"]
            + 0.4 * now[BLUR]
            + now["gut"]
            + now["tissue"]
            + 0.45 * people["menstruating"]  # Kanellakis 2023
        )

    def rates(self, people: People, now: Condition, chance: Floats) -> Rated:
        return Rated(
            fullness=1 + 9 * (now[SHARE] - 0.15) / 0.80 + people["fullness_bias"] + 0.6 * chance[0],
            sharpness=4.4 - 1.5 * now[BLUR] + people["sharpness_bias"] + 0.45 * chance[1],
        )
