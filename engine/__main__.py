"""`python -m engine CASE.toml [--json]`: a case file in, its decisions out.

Also `python -m engine simulate PROTOCOL.toml`, `validate` and `cohort`, each with its own `--help`.
"""

from __future__ import annotations

import argparse
import json
import sys
import textwrap
from collections.abc import Callable, Iterator, Sequence
from pathlib import Path

from engine.cli.casefile import CaseFile, parse, run, summary
from engine.cli.tables import CaseFileError
from engine.decision.decide import Decision
from engine.decision.gates import ANSWER_NAMES
from engine.decision.reason import reason
from engine.decision.rules.rule import in_words
from engine.values.case import ForecastUse
from engine.values.limits import LIMIT_KEYS, plan_problems

WIDTH = 96
COMMANDS = {
    "simulate": "simulate_command",
    "validate": "validate_command",
    "cohort": "cohort_command",
}
CAUTION = (
    "Brimline is no medical device and no doctor. Stop and get medical help for fainting, chest "
    "pain, palpitations, weakness, confusion or repeated vomiting, whatever is printed here."
)


def main(arguments: Sequence[str] | None = None) -> int:
    """Exit status 0 when it was done, 2 when a file or an option could not be read."""
    given = list(sys.argv[1:] if arguments is None else arguments)
    if given and given[0] in COMMANDS:
        from engine.cli import commands  # noqa: PLC0415 - numpy, not wanted for a case

        command: Callable[[Sequence[str]], int] = getattr(commands, COMMANDS[given[0]])
        return command(given[1:])
    parser = argparse.ArgumentParser(prog="python -m engine", description=__doc__)
    parser.add_argument("case", type=Path, metavar="CASE.toml", help="the week of one athlete")
    parser.add_argument("--json", action="store_true", help="print the decisions as a JSON list")
    parser.add_argument(
        "--forecast", choices=[use.value for use in ForecastUse], default=ForecastUse.RULES_ONLY,
        help="what the model's forecast may do beside the rules",
    )  # fmt: skip
    asked = parser.parse_args(given)
    try:
        file = parse(asked.case.read_text(encoding="utf-8"))
        decisions = run(file, forecast=ForecastUse(asked.forecast))
    except OSError as error:
        return _refuse(asked.case, error.strerror or str(error))
    except UnicodeDecodeError:
        return _refuse(asked.case, "this is no UTF-8 text")
    except CaseFileError as error:
        return _refuse(asked.case, str(error))
    if asked.json:
        print(json.dumps([summary(decision) for decision in decisions], indent=2))
    else:
        print("\n\n".join([_week(file), *map(_block, decisions), _wrapped(CAUTION)]))
    return 0


def _refuse(path: Path, why: str) -> int:
    print(f"{path}: {' '.join(why.split())}", file=sys.stderr)
    return 2


def _counted(figure: float | None) -> str:
    return "always" if figure is None else f"{figure:g}"


def _week(file: CaseFile) -> str:
    """The plan and the limits that the decisions below were made with."""
    origin = "drafted: the file has no [[day]]" if file.drafted else "as in the file"
    lines = [
        f"{file.event.kind.value.capitalize()} on {file.event.day:%A} {file.event.day.day} "
        f"{file.event.day:%B %Y}, {file.event.zone}. Plan {origin}.",
        "days out  carbs g  protein g  fat g  fibre g  water L  sodium mg  training",
    ]
    for day in file.plan:
        lines.append(
            f"{day.days_out:8}  {day.carb_g:7g}  {day.protein_g:9g}  {day.fat_g:5g}  "
            f"{_counted(day.fibre_g):>7}  {day.water_l:7g}  {_counted(day.sodium_mg):>9}  "
            f"{day.training}".rstrip()
        )
    limits = (
        f"{key.label} {getattr(file.limits, name):g} {key.unit}"
        + (" (suggested)" if name in file.suggested else "")
        for name, key in LIMIT_KEYS.items()
    )
    lines.append(_wrapped("Limits: " + "; ".join(limits) + "."))
    lines += [f"The plan does not fit: {one}." for one in plan_problems(file.plan, file.limits)]
    return "\n".join(lines)


def _block(decision: Decision) -> str:
    return "\n".join(
        textwrap.fill(line, WIDTH, initial_indent=f"  {name:9} ", subsequent_indent=" " * 12)
        if name
        else line
        for name, line in _lines(decision)
    )


def _lines(decision: Decision) -> Iterator[tuple[str, str]]:
    morning = decision.date
    yield "", f"Check-in of {morning:%A} {morning.day} {morning:%B}"
    day = decision.sets_date
    yield "sets", f"{day:%A} {day.day} {day:%B}, {decision.days_out} days out"
    yield "carbs", _figure(decision)
    yield decision.outcome.value, f"by {decision.rule}"
    yield "because", reason(decision)
    if stopped := decision.trace.stopped:
        yield "went by", ", ".join(f"{name} {_shown(value)}" for name, value in stopped.items())
    if decision.needs_sign_off:
        yield "sign-off", f"waits for the coach's word; without it {decision.lapse_g:g} g stands"
    if decision.tell_coach:
        yield "coach", "is told"
    if decision.ask_again:
        yield "ask again", ", ".join(ANSWER_NAMES[name] for name in decision.ask_again)
    if decision.band:
        band = decision.band
        yield "band", f"{band.low_kg:.1f} to {band.high_kg:.1f} kg, {band.expected_kg:.1f} expected"
    for flag in decision.flags:
        facts = ", ".join(f"{name} {_shown(value)}" for name, value in flag.facts)
        yield flag.level.value, f"{flag.id} ({facts})" if facts else flag.id
    for source in decision.sources:
        yield "source", f"{source.citation} [{source.provenance.value}]"


def _figure(decision: Decision) -> str:
    if decision.carb_g is None:
        return "no figure"
    if decision.planned_carb_g is None:
        return f"{decision.carb_g:g} g"
    plan = f"{decision.carb_g:g} g (plan {decision.planned_carb_g:g} g"
    plan += f", {in_words(decision.change_g)})"
    return f"{plan}, bound by {decision.bound}" if decision.bound else plan


def _shown(value: float | str | None) -> str:
    return f"{value:.4g}" if isinstance(value, int | float) else str(value)


def _wrapped(text: str) -> str:
    return textwrap.fill(text, WIDTH, subsequent_indent="  ")


if __name__ == "__main__":
    sys.exit(main())
