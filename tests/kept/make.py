"""Decisions kept from one version to the next: `python -m tests.kept.make` writes them anew.

Invented athletes only: every morning of the case files by the rules alone, and some mornings of a week
with the forecast, an earlier trial and what the coach saw. They are made anew when the table's or the
model's number has gone up on purpose; until then every version has to come to the same.
"""

from __future__ import annotations

import gzip
import json
from collections.abc import Iterator
from dataclasses import replace
from pathlib import Path
from typing import Any

from engine.cli.casefile import parse, play
from engine.decision.decide import case_as_dict, decide, decision_as_dict
from engine.values.case import Case
from engine.values.checkin import CoachLook, Look
from tests.engine.test_coachs_eye import looked_at, seen
from tests.engine.test_foresight import case, trial

KEPT = Path(__file__).parent / "decisions.jsonl.gz"
CASES = Path(__file__).parents[1] / "cases"


def cases() -> Iterator[tuple[str, Case]]:
    """Each case with a name of its own."""
    for file in sorted(CASES.glob("*.toml")):
        for number, (one, _) in enumerate(play(parse(file.read_text(encoding="utf-8")))):
            yield f"{file.stem}/{number}", one
    for out in (3, 2, 1):
        yield f"forecast/{out}", case(out)
    spilled = trial(Look.SPILLED, sharpness=2)
    yield "forecast/after-a-trial", replace(case(2), trials=(spilled,))
    yield "forecast/coach-sees-full", looked_at(case(1), seen(CoachLook.FULL, 4, out=1))


def kept() -> list[dict[str, Any]]:
    """The records: name, case and decision, as they would be stored."""
    with gzip.open(KEPT, "rt", encoding="utf-8") as lines:
        return [json.loads(line) for line in lines]


def main() -> None:
    with KEPT.open("wb") as raw, gzip.GzipFile(fileobj=raw, mode="wb", mtime=0) as file:
        for name, one in cases():
            record = {
                "name": name,
                "case": case_as_dict(one),
                "decision": decision_as_dict(decide(one)),
            }
            file.write((json.dumps(record, sort_keys=True) + "\n").encode())


if __name__ == "__main__":
    main()
