"""The worlds of the bench, each a way in which bodies and answers might work; see each one's source."""

from __future__ import annotations

from engine.cohort.worlds.flux import Flux
from engine.cohort.worlds.one_store import OneStore
from engine.cohort.worlds.pool import Pool
from engine.cohort.worlds.slow_gut import SlowGut
from engine.cohort.worlds.two_muscles import TwoMuscles
from engine.cohort.worlds.two_phase import TwoPhase
from engine.cohort.worlds.world import World

WORLDS: dict[str, World] = {
    world.id: world for world in (OneStore(), TwoPhase(), Pool(), Flux(), TwoMuscles(), SlowGut())
}
