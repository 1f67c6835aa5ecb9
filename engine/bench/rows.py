"""The rows of the bench: what is asked of the engine as shipped."""

from __future__ import annotations

from engine.bench.setting import Trouble, narrow
from engine.bench.week import Policy

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
BY_ID = {policy.id: policy for policy in POLICIES}
