"""The worlds of the bench, each a way in which bodies and answers might work; see each one's source."""

from __future__ import annotations

from engine.bench.worlds.gut import SlowGut, TwoPhase
from engine.bench.worlds.one_store import OneStore
from engine.bench.worlds.pools import Pool, TwoPools
from engine.bench.worlds.rates import Flux, SetPoint
from engine.bench.worlds.two_muscles import TwoMuscles
from engine.bench.worlds.world import World

WORLDS: dict[str, World] = {
    world.id: world
    for world in (
        OneStore(),
        TwoPhase(),
        Pool(),
        Flux(),
        TwoMuscles(),
        SlowGut(),
        TwoPools(),
        SetPoint(),
    )
}
