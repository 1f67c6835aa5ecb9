"""Draw the cohort's reliability: `python -m tests.bench.calibration COHORT.json CALIBRATION.svg`.

COHORT.json is what `cohort --json` prints. Needs matplotlib, which nothing else here does.
"""

from __future__ import annotations

import json
import sys
from pathlib import Path


def draw(found: dict[str, object], to: Path) -> None:
    """Chances said on the last morning of the load against how often it came so."""
    import matplotlib as mpl  # noqa: PLC0415

    mpl.use("svg")
    mpl.rcParams["svg.hashsalt"] = "brimline"
    from matplotlib import pyplot  # noqa: PLC0415

    figure, axes = pyplot.subplots(figsize=(5, 5))
    axes.plot([0, 1], [0, 1], color="0.6", linestyle="--", label="as said, so it came")
    policies = found["policies"]
    assert isinstance(policies, dict)  # for the type checker
    for marker, (name, row) in zip("os^Dv", _reliable(policies), strict=False):
        deciles = row["reliability"]
        axes.plot(
            [d["said"] for d in deciles], [d["came"] for d in deciles], marker=marker, label=name
        )
    axes.set(
        xlabel="chance said",
        ylabel="share that came so",
        title=f"{found['athletes']} virtual athletes, seed {found['seed']}",
    )
    axes.legend(frameon=False, loc="lower right")
    figure.savefig(to, metadata={"Date": None})


def _reliable(policies: dict[str, dict[str, object]]) -> list[tuple[str, dict[str, list[dict]]]]:
    return [(name, row) for name, row in policies.items() if row.get("reliability")]


if __name__ == "__main__":
    draw(json.loads(Path(sys.argv[1]).read_text(encoding="utf-8")), Path(sys.argv[2]))
