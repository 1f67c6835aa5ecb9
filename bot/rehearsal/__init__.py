"""`brimline rehearse`: an invented peak week in the terminal, without a token or a network."""

from __future__ import annotations

import argparse
import os
import sys
from collections.abc import Sequence

PROGRAM = "brimline rehearse"
FINE, FAILED, REFUSED, STOPPED = 0, 1, 2, 130


def main(arguments: Sequence[str]) -> int:
    """Play a rehearsal; returns the exit code: 0 fine, 1 not as scripted, 2 not that file."""
    chosen = _parser().parse_args(arguments)
    from bot.rehearsal import sitting  # noqa: PLC0415 - --help need not wait for the whole bot

    try:
        if chosen.auto:
            sitting.play_script(chosen.file)
        else:
            sitting.play_by_hand(chosen.file, from_invite=chosen.from_invite)
    except sitting.ScriptBroken as broken:
        print(f"{PROGRAM}: not as scripted: {broken}", file=sys.stderr)
        return FAILED
    except sitting.NotARehearsal as refusal:
        print(f"{PROGRAM}: {refusal}", file=sys.stderr)
        return REFUSED
    except BrokenPipeError:  # whoever read along has gone, as `| head` does
        os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())
        return FAILED
    except KeyboardInterrupt:
        return STOPPED
    return FINE


def _parser() -> argparse.ArgumentParser:
    parser = argparse.ArgumentParser(
        prog=PROGRAM,
        description="Play an invented athlete's peak week in the terminal: the real bot, with only "
        "Telegram and the clock replaced. Needs no token, no settings and no network.",
    )
    parser.add_argument(
        "--auto",
        action="store_true",
        help="play a whole scripted week and check it; exits 1 where it goes otherwise",
    )
    parser.add_argument(
        "--from-invite",
        action="store_true",
        help="begin at the first invitation, with nothing set up",
    )
    parser.add_argument(
        "--file",
        metavar="FILE",
        help="keep the rehearsal in this SQLite file, and go on with it next time (default: a "
        "temporary one)",
    )
    return parser
