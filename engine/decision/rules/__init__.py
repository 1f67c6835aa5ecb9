"""The rules: what a morning's facts ask for, and what is said of it. A rule is added here alone.

`table` holds the rules in their order, each one declaration: id, name, condition, steps, sentence and
sources. `words` and `words_seen` hold the longer sentences (the latter of rules that go by the
coach's eye), told from facts by their names or by what stands in `told.GAPS`; `rule` says what a rule
is and refuses one that lacks a half. A number that a single rule goes by may stand beside it as a
`Number` with its source; those that others use as well are in `engine.evidence`.

A rule's id never changes its meaning. Where the edges of one change, `TABLE` goes up, and the kept set
is made anew: `python -m tests.kept.make`. To try a change first: `brimline replay --rules COPY.py` says
where stored decisions would differ, `python -m engine cohort --each-rule --trials 0` what each rule is
worth to virtual athletes.
"""

from engine.decision.rules.rule import Forecast, Rule, always, in_words
from engine.decision.rules.table import RULES, TABLE, first_match

RULE_IDS = frozenset(rule.id for rule in RULES)

__all__ = ["RULES", "RULE_IDS", "TABLE", "Forecast", "Rule", "always", "first_match", "in_words"]
