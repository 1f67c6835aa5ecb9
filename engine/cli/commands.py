"""The engine's commands besides running a case: simulate a protocol, validate, bench the cohort."""

from __future__ import annotations

import argparse
import json
import os
import sys
import tomllib
from collections.abc import Sequence
from concurrent.futures import ProcessPoolExecutor
from dataclasses import asdict
from pathlib import Path

from engine.bench.protocol import BadProtocol, read_protocol, simulate
from engine.bench.report import BY_ID, EACH_RULE, SHIPPED, Cohort, bench, table
from engine.bench.validation import compare
from engine.bench.worlds import WORLDS
from engine.model.physiology import HOURS_A_DAY


def simulate_command(argv: Sequence[str]) -> int:
    """`simulate PROTOCOL.toml [--json]`: the body by day; 2 on a protocol that cannot be read."""
    parser = argparse.ArgumentParser(
        prog="simulate", description="Glycogen, water, gut and body mass by day of a protocol."
    )
    parser.add_argument("protocol", type=Path)
    parser.add_argument("--json", action="store_true", help="print the same as data")
    options = parser.parse_args(argv)
    try:
        data = tomllib.loads(options.protocol.read_text(encoding="utf-8"))
        readings = simulate(read_protocol(data))
    except (OSError, UnicodeDecodeError, tomllib.TOMLDecodeError, BadProtocol) as problem:
        _say(f"{options.protocol}: {problem}", error=True)
        return 2
    if options.json:
        _say(json.dumps([{"day": r.day} | asdict(r) for r in readings], indent=1))
        return 0
    by_hour = any(r.hours % HOURS_A_DAY for r in readings)
    _say(
        f"{'hour' if by_hour else 'day':>6} {'phase':>5} {'muscle':>9} {'muscle':>7} {'liver':>6} "
        f"{'water':>7} {'gut':>6} {'body mass':>10}"
    )
    _say(f"{'':>6} {'':>5} {'mmol/kg':>9} {'g':>7} {'g':>6} {'L':>7} {'kg':>6} {'kg':>10}")
    for r in readings:
        _say(
            f"{r.hours if by_hour else r.day:6.2f} {r.phase:5d} {r.muscle_glycogen_mmol_per_kg:9.1f} "
            f"{r.muscle_glycogen_g:7.0f} {r.liver_glycogen_g:6.0f} {r.water_change_l:+7.2f} "
            f"{r.gut_kg:6.2f} {r.body_mass_change_kg:+10.2f}"
        )
    _say("Water and body mass are changes since the start; gut is its content.")
    return 0


def validate_command(argv: Sequence[str]) -> int:
    """`validate [--json]`: each published figure beside the model's, and which of them miss."""
    parser = argparse.ArgumentParser(
        prog="validate", description="Published loading experiments beside the model."
    )
    parser.add_argument("--json", action="store_true", help="print the same as data")
    options = parser.parse_args(argv)
    rows = compare()
    if options.json:
        _say(
            json.dumps(
                [
                    {
                        "study": row.study.id,
                        "measure": row.measured.measure,
                        "measured": row.measured.value,
                        "spread": row.measured.spread,
                        "modelled": round(row.modelled, 3),
                        "residual": round(row.residual, 3),
                        "allowed": round(row.allowed, 3),
                        "holds": row.holds,
                        "source": row.study.source.citation,
                        "provenance": row.study.source.provenance,
                        "note": row.study.note,
                    }
                    for row in rows
                ],
                indent=1,
            )
        )
        return 0
    _say(f"{'study':26} {'measure':46} {'measured':>9} {'model':>8} {'residual':>9} {'allowed':>8}")
    for row in rows:
        _say(
            f"{row.study.id:26} {row.measured.measure:46} {row.measured.value:9.2f} "
            f"{row.modelled:8.2f} {row.residual:+9.2f} {row.allowed:8.2f}"
            f"{'' if row.holds else '  misses'}"
        )
    held = sum(row.holds for row in rows)
    _say(f"{held} of {len(rows)} within the reported spread, 15 % or 0.4 % of body mass.")
    for row in rows:
        if not row.holds:
            _say(f"Missed: {row.study.id}, {row.measured.measure}: {row.study.note}")
    return 0


def cohort_command(argv: Sequence[str]) -> int:
    """`cohort [--athletes N] [--seeds S ...] [--worlds W ...] [--json]`: policies beside knowing."""
    parser = argparse.ArgumentParser(
        prog="cohort",
        description="The engine as shipped on virtual athletes of several worlds, beside the fixed "
        "plan and an all-knowing choice.",
    )
    parser.add_argument("--athletes", type=_count, default=100, help="in each world")
    parser.add_argument("--seeds", type=int, nargs="+", default=[7])
    parser.add_argument("--trials", type=int, choices=(0, 1, 2), default=2)
    parser.add_argument("--worlds", nargs="+", choices=list(WORLDS), default=list(WORLDS))
    parser.add_argument(
        "--policies",
        nargs="+",
        choices=list(BY_ID),
        default=SHIPPED,
        metavar="ROW",
        help=", ".join(SHIPPED),
    )
    parser.add_argument(
        "--each-rule", action="store_true", help="the rules alone, then without each of them"
    )
    parser.add_argument("--workers", type=_count, default=os.cpu_count() or 1)
    parser.add_argument("--json", action="store_true", help="print the same as data")
    options = parser.parse_args(argv)
    with ProcessPoolExecutor(options.workers) as pool:
        found = bench(
            Cohort(options.athletes, options.seeds),
            worlds=options.worlds,
            policies=[p.id for p in EACH_RULE] if options.each_rule else options.policies,
            trials=options.trials,
            spread=pool.map,
        )
    if options.json:
        _say(json.dumps(found, indent=1))
        return 0
    _say(table(found))
    return 0


def _count(text: str) -> int:
    value = int(text)
    if value < 1:
        raise argparse.ArgumentTypeError(f"{value} is less than 1")
    return value


def _say(text: str, *, error: bool = False) -> None:
    (sys.stderr if error else sys.stdout).write(text + "\n")


COMMANDS = {"simulate": simulate_command, "validate": validate_command, "cohort": cohort_command}


if __name__ == "__main__":
    raise SystemExit(COMMANDS[sys.argv[1]](sys.argv[2:]))
