"""Mutants that nothing can tell from the code, as they are printed, each with the reason."""

from __future__ import annotations

from collections.abc import Mapping

ALIKE: Mapping[str, Mapping[str, str]] = {}
