"""From pip's report of what an installation would take, the pinned list in deploy/."""

from __future__ import annotations

import json
import re
import sys
from pathlib import Path
from typing import Any

HEADER = re.compile(r"(?:#.*\n)+")


def pins(report: dict[str, Any]) -> str:
    """One line a package, with its version and hash; Brimline itself left out."""
    lines = []
    for taken in report["install"]:
        name = re.sub(r"[-_.]+", "-", taken["metadata"]["name"].lower())
        if name != "brimline":
            digest = taken["download_info"]["archive_info"]["hashes"]["sha256"]
            lines.append(f"{name}=={taken['metadata']['version']} \\\n    --hash=sha256:{digest}\n")
    return "".join(sorted(lines))


if __name__ == "__main__":
    kept = Path(__file__).parents[2] / "deploy" / "constraints.txt"
    header = HEADER.match(kept.read_text())
    assert header is not None
    sys.stdout.write(header.group() + pins(json.loads(Path(sys.argv[1]).read_text())))
