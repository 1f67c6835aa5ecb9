"""Mutants that nothing can tell from the code, as they are printed, each with the reason."""

from __future__ import annotations

from collections.abc import Mapping

_DUST = "the two differ by less than floats lose and far less than any scale shows"
_SAME_AT_THE_EDGE = "at the edge itself both come to the same"
_NEVER_THERE = "what is asked first leaves no such case"
_A_LOAD = "no load is of two grams"
_NO_ROUND_END = "an end that is a round figure is never passed by rounding"

ALIKE: Mapping[str, Mapping[str, str]] = {
    "engine.values.limits": {
        "Limits.small_step: abs(wanted.carb_g - planned_carb_g) <= alone + 1e-09"
        "  ->  abs(wanted.carb_g - planned_carb_g) < alone + 1e-09": _DUST,
        "Limits.small_step: wanted.carb_g > planned_carb_g"
        "  ->  wanted.carb_g >= planned_carb_g": _NEVER_THERE,
        "Problem.__str__: side = 'under' if self.value < self.bound else 'over'"
        "  ->  side = 'under' if self.value <= self.bound else 'over'": _NEVER_THERE,
    },
    "engine.planning.room": {
        "_share: return min(room_g / need_g, 1.0) if need_g > 0 else 1.0"
        "  ->  return min(room_g / need_g, 2.0) if need_g > 0 else 1.0": (
            "limits are inside the guard rails that the need is cut to, so the share is 1 at most"
        ),
    },
    "engine.decision.rules.rule": {
        "in_words: return f\"{abs(change_g):g} g {('more' if change_g > 0 else 'less')}\""
        "  ->  return f\"{abs(change_g):g} g {('more' if change_g >= 0 else 'less')}\"": _NEVER_THERE,
    },
    "engine.decision.facts": {
        "Facts.short_lately: both > 0 and self.short_with_enough is not None"
        "  ->  both >= 0 and self.short_with_enough is not None": _SAME_AT_THE_EDGE,
        "Facts.short_lately: both < 0 and self.short_without_spill is not None"
        "  ->  both <= 0 and self.short_without_spill is not None": _SAME_AT_THE_EDGE,
    },
    "engine.decision.sizing": {
        "graded_g: return max(small, whole) if steps > 0 else min(small, -whole)"
        "  ->  return max(small, whole) if steps >= 0 else min(small, -whole)": _SAME_AT_THE_EDGE,
        "_g_per_kg: steps > 0  ->  steps >= 0": _NEVER_THERE,
        "sized_by: rule.forecast is Forecast.DEEPENS and forecast_g >= small_g"
        "  ->  rule.forecast is Forecast.DEEPENS and forecast_g > small_g": _SAME_AT_THE_EDGE,
    },
    "engine.decision.decide": {
        "_ruled: planned is None or band is None or window is None"
        "  ->  planned is None and band is None and (window is None)": _NEVER_THERE,
    },
    "engine.planning.behind.load_room": {
        "Room.of: most = load.high / max(plan.load_g, 1.0)"
        "  ->  most = load.high / max(plan.load_g, 2.0)": _A_LOAD,
        "_weighed_out: grams > high  ->  grams >= high": _SAME_AT_THE_EDGE,
        "_weighed_out: grams < low  ->  grams <= low": _SAME_AT_THE_EDGE,
        "_weighed_out: grams = math.floor(high / grain + 1e-09) * grain"
        "  ->  grams = math.floor(high / grain - 1e-09) * grain": _NO_ROUND_END,
        "_weighed_out: grams = math.ceil(low / grain - 1e-09) * grain"
        "  ->  grams = math.ceil(low / grain + 1e-09) * grain": _NO_ROUND_END,
        "planned_g: return day.carb_g if day is not None else 0.0"
        "  ->  return day.carb_g if day is not None else 1.0": _NEVER_THERE,
        "scaled: out in load_days and abs(carb_g - planned_g(plan, out)) > 1e-06"
        "  ->  out in load_days and abs(carb_g - planned_g(plan, out)) >= 1e-06": _DUST,
        "bound_of: wanted > room.high[out] + 1e-06  ->  wanted >= room.high[out] + 1e-06": _DUST,
        "bound_of: wanted < room.low[out] - 1e-06  ->  wanted <= room.low[out] - 1e-06": _DUST,
        "scaled: zip((out for out in PLAN_DAYS if out > 0), carbs_g, strict=True)"
        "  ->  zip((out for out in PLAN_DAYS if out > 0), carbs_g, strict=False)": (
            "as many days are asked about as are answered"
        ),
    },
    "engine.planning.behind.next_load": {
        "PARTICLES = 1000  ->  PARTICLES = 1001": "another draw, as good as this one",
        "WEEKS_BETWEEN = 4.0  ->  WEEKS_BETWEEN = 5.0": "another week forgets half a per cent more",
        "_held_to: look, then = (said.look or Look.FULL, said.as_it_went)"
        "  ->  look, then = (said.look or Look.SPILLED, said.as_it_went)": _NEVER_THERE,
        "_held_to: return (least_g / max(plan.load_g, 1.0), False)"
        "  ->  return (least_g / max(plan.load_g, 2.0), False)": _A_LOAD,
        "_held_to: held = then.load_g / max(plan.load_g, 1.0) if _whole(then) else None"
        "  ->  held = then.load_g / max(plan.load_g, 2.0) if _whole(then) else None": _A_LOAD,
        "_taken_back: then.load_g <= 0 or plan.load_g != then.load_g"
        "  ->  then.load_g <= 1 or plan.load_g != then.load_g": _A_LOAD,
        "_after_the_look: look is Look.FULL and then.load_g > 0 and (plan.load_g == then.load_g)"
        "  ->  look is Look.FULL and then.load_g > 1 and (plan.load_g == then.load_g)": _A_LOAD,
        "_held_to: back is not None and (back - free.factor) * (back - 1) > 0"
        "  ->  back is not None and (back - free.factor) / (back - 1) > 0": "the sign is the same",
        "_taken_back: wrong = moved > 0 if said.look is Look.FLAT else moved < 0"
        "  ->  wrong = moved >= 0 if said.look is Look.FLAT else moved < 0": _SAME_AT_THE_EDGE,
        "_taken_back: wrong = moved > 0 if said.look is Look.FLAT else moved < 0"
        "  ->  wrong = moved > 0 if said.look is Look.FLAT else moved <= 0": _SAME_AT_THE_EDGE,
    },
    "engine.safety": {
        "_pulse: within(checkin.resting_pulse, 0, float(evidence.PULSE_BELIEVABLE))"
        "  ->  within(checkin.resting_pulse, 1, float(evidence.PULSE_BELIEVABLE))": (
            "a pulse under 1 is none that is too high"
        ),
        "_sleep: nights = [within(c.sleep_h, 0, 24) for c in (*before, checkin)]"
        "  ->  nights = [within(c.sleep_h, 0, 25) for c in (*before, checkin)]": (
            "a night of over 24 h is none that is too short"
        ),
    },
    "engine.safety.water": {
        "Drunk.under_target: return self.target_l > 0 and below(self.water_l, least)"
        "  ->  return self.target_l >= 0 and below(self.water_l, least)": (
            "nobody drinks less than nothing"
        ),
    },
    "engine.safety.weight": {
        "after_show_flags: up > float(AFTER_RISE) + 1e-09"
        "  ->  up >= float(AFTER_RISE) + 1e-09": _DUST,
    } | {
        f"{name}: return value {was} threshold {sign} _TOLERANCE * max(1.0, abs(threshold))"
        f"  ->  return value {now}": _DUST
        for name, was, sign, ored in (
            ("at_least", ">=", "-", ">"), ("above", ">", "+", ">="), ("below", "<", "-", "<="),
        )
        for now in (
            f"{ored} threshold {sign} _TOLERANCE * max(1.0, abs(threshold))",
            f"{was} threshold {sign} _TOLERANCE / max(1.0, abs(threshold))",
            f"{was} threshold {sign} _TOLERANCE * min(1.0, abs(threshold))",
            f"{was} threshold {sign} _TOLERANCE * max(2.0, abs(threshold))",
        )
    },
}  # fmt: skip
