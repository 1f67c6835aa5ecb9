"""The week."""

from __future__ import annotations

from collections.abc import Sequence

from bot.demo.script import Act, Outcome

WEEK: Sequence[Act] = ()
OUTCOMES: Sequence[Outcome] = ()
