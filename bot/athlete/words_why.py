"""How a decision came about, for a person: what was seen, weighed up and allowed, and its sources."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from typing import Any

from bot.decision.words_outlook import why_lines
from bot.decision.words_target import bound_name, gate_name
from bot.words import figures
from bot.words.languages import Sentence, tr
from bot.words.names import cited, rule_name, seen_in
from engine.decision.decide import Decision
from engine.values.limits import Window
from engine.written.units import Towards


def why_message(decision: Decision, why: str, weight_unit: str, volume_unit: str) -> str:
    """`why`, and the trace, for a person: gates, what was weighed up, what held it, the sources."""
    parts = [why]
    weighed = [
        *_seen(decision, weight_unit, volume_unit),
        _stopped_or_clear(decision),
        *why_lines(decision, weight_unit),
    ]
    if decision.trace.window is not None:
        weighed.append(_allowed(decision, decision.trace.window))
    parts.append("\n".join(f"• {line}" for line in weighed))
    sources = sorted({cited(source.citation) for source in decision.sources})
    if sources:
        parts.append(tr("Based on:") + "\n" + "\n".join(f"• {source}" for source in sources))
    return "\n\n".join(parts)


def _seen(decision: Decision, weight_unit: str, volume_unit: str) -> Iterator[str]:
    facts: Mapping[str, Any] = decision.trace.facts
    band = decision.band
    if band is not None:
        yield tr(
            "Weight expected this morning: {low} to {high}, most likely {expected}",
            low=figures.weight(band.low_kg, weight_unit, Towards.LEAST),
            high=figures.weight(band.high_kg, weight_unit, Towards.MOST),
            expected=figures.weight(band.expected_kg, weight_unit),
        )
    if not facts:
        return
    look = []
    if facts["fullness"] is not None:
        look.append(
            tr(
                "Fullness {fullness}, expected {expected}",
                fullness=facts["fullness"],
                expected=facts["expected_fullness"],
            )
        )
    if facts["sharpness"] is not None:
        look.append(tr("sharpness {score}", score=facts["sharpness"]))
    if look:
        yield "; ".join(look)
    if coach_sees := seen_in(facts):
        yield tr("The coach sees: {look}", look=coach_sees)
    if facts["water_l"] is not None:
        yield tr(
            "Water {water} of {target}",
            water=figures.volume(facts["water_l"], volume_unit),
            target=figures.volume(facts["water_target_l"], volume_unit),
        )


def _stopped_or_clear(decision: Decision) -> str:
    stopped = [gate.id for gate in decision.trace.gates if not gate.passed]
    if stopped:
        return tr("No rule was used: {gate}", gate=gate_name(stopped[0]))
    return tr("All safety checks were clear. Rule: {rule}", rule=rule_name(decision.rule))


def _allowed(decision: Decision, window: Window) -> str:
    wanted_g, low, high = decision.trace.wanted_g, window.low, window.high
    if not decision.bound or wanted_g is None:
        return tr(
            "Allowed for that day: {low:.0f} to {high:.0f} g; no limit applied", low=low, high=high
        )
    return tr(
        "Allowed for that day: {low:.0f} to {high:.0f} g; the rule wanted {wanted_g:.0f} g, "
        "limited by: {limit}",
        low=low,
        high=high,
        wanted_g=wanted_g,
        limit=bound_name(decision.bound),
    )


nothing_decided = Sentence(
    "Nothing has been decided yet. After your next check-in, /why shows how I decide."
)
