"""The rows of the bench: what is asked of the engine as shipped, and of it without each rule."""

from __future__ import annotations

from dataclasses import replace

from engine.bench.setting import Trouble, narrow
from engine.bench.week import Policy
from engine.decision.rules import RULES

POLICIES: tuple[Policy, ...] = (
    Policy(id="rules alone", foresight=False),
    Policy(id="forecast", foresight=True),
    Policy(id="rules, coach's eye", foresight=False, looks=True),
    Policy(id="coach's eye", foresight=True, looks=True),
    Policy(id="30 weeks of others", foresight=True, finished=30),
    Policy(id="silent coach", foresight=True, answers=False),
    Policy(id="narrow limits", foresight=True, limits=narrow),
    Policy(id="wrong fat figure", foresight=True, trouble=Trouble(fat_error=3, fat_bias=5)),
    Policy(id="misreported carbs", foresight=True, trouble=Trouble(report_spread=0.15)),
    Policy(id="missed mornings", foresight=True, trouble=Trouble(missed=0.3)),
    Policy(id="other scale", foresight=True, trouble=Trouble(file_mass_error=0.04)),
)
#: The rows that are run where none are named.
SHIPPED: tuple[str, ...] = tuple(policy.id for policy in POLICIES)
_NAMED = {policy.id: policy for policy in POLICIES}


def _without_one() -> tuple[Policy, ...]:
    """The rules alone with one left out; where it needs a coach's eye, beside that."""
    found = []
    for rule in RULES[:-1]:
        with_it = _NAMED[
            "rules, coach's eye" if rule.id.startswith("coach-sees") else "rules alone"
        ]
        found.append(replace(with_it, id=f"without {rule.id}", without=frozenset({rule.id})))
    return tuple(found)


#: The rule table with and without each rule but the last, which is what remains.
EACH_RULE: tuple[Policy, ...] = (
    _NAMED["rules alone"],
    _NAMED["rules, coach's eye"],
    *_without_one(),
)
BY_ID = {policy.id: policy for policy in (*POLICIES, *EACH_RULE)}
