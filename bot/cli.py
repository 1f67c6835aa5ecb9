"""brimline ...: the table of contents.

Exit codes: 0 fine, 1 something failed, 2 a setting is wrong and named on standard error.
"""

from __future__ import annotations

import argparse
import sys
from collections.abc import Callable, Sequence
from pathlib import Path

from bot.operation import commands
from bot.operation.installation import DatabaseAwayError, DatabaseUnusableError, cause
from bot.settings import Settings, SettingsError, load_settings

Command = Callable[[Settings, argparse.Namespace], int]


def main(arguments: Sequence[str] | None = None) -> int:
    """Run a subcommand; returns the exit code."""
    parser = _parser()
    given = list(sys.argv[1:] if arguments is None else arguments)
    if given[:1] == ["rehearse"]:  # it has options of its own, and needs no settings
        from bot.rehearsal import main as rehearse  # noqa: PLC0415

        return int(rehearse(given[1:]))
    chosen = parser.parse_args(given)
    try:
        command: Command = chosen.command
        return command(load_settings(), chosen)
    except SettingsError as error:
        for line in error.lines:
            print(f"brimline: {line}", file=sys.stderr)
        not_the_setting = isinstance(error, DatabaseAwayError | DatabaseUnusableError)
        return commands.FAILED if not_the_setting else commands.WRONG_SETTING
    except Exception as error:
        known = cause(error) if given[:1] != ["run"] else None  # that one logs
        if known is None:
            raise
        print(f"brimline: {known}", file=sys.stderr)
        return commands.FAILED


def _parser() -> argparse.ArgumentParser:
    parser = argparse.ArgumentParser(
        prog="brimline",
        description="A chat check-in bot for physique athletes and their coaches.",
        epilog="Settings come from the environment or a .env file in this folder; README.md "
        "lists them.",
    )
    names = parser.add_subparsers(title="commands", required=True, metavar="COMMAND")

    def command(name: str, does: Command, text: str) -> argparse.ArgumentParser:
        added = names.add_parser(name, help=text, description=f"{text[0].upper()}{text[1:]}.")
        added.set_defaults(command=does)
        return added

    def plain(name: str, does: Callable[[Settings], int], text: str) -> argparse.ArgumentParser:
        """One that goes by the settings alone."""
        return command(name, lambda settings, _: does(settings), text)

    plain("setup", commands.setup, "set a bot up by questions: token, database, coach's link")
    plain("run", commands.run, "run the bot until it is stopped")
    migrate = command(
        "migrate", commands.migrate, "bring the database to this version's shape, or move it"
    )
    migrate.add_argument("--from", dest="source", metavar="ADDRESS", help="the database to move")
    migrate.add_argument("--to", dest="target", metavar="ADDRESS", help="an empty one")
    plain("check", commands.check, "say whether settings, database and token work")
    plain("doctor", commands.examine, "say what is wrong with a running bot, and what to do")
    plain("status", commands.status, "queues, what was set aside, when something was last sent")
    invite = plain("invite", commands.invite_coach, "make a one-time invitation")
    invite.add_argument("whom", choices=["coach"], help="whom to invite")
    plain("coaches", commands.coaches, "list coaches, and invitations that can still be used")
    revoke = command("revoke", commands.revoke, "take back an invitation, or a coach's role")
    revoke.add_argument("what", choices=["invitation", "coach"])
    revoke.add_argument("number", type=int, help="as `brimline coaches` lists it")
    backup = command("backup", commands.backup, "write everything into one file, while it runs")
    backup.add_argument("file", type=Path, nargs="?", help="a new file (else one named by now)")
    restore = command("restore", commands.restore, "fill an empty database from a back-up")
    restore.add_argument("file", type=Path)
    replay = command(
        "replay", commands.replay, "make stored decisions again, and say where they would differ"
    )
    replay.add_argument("--athlete", type=int, metavar="NUMBER", help="those of one athlete only")
    replay.add_argument(
        "--without", action="append", default=[], metavar="RULE", help="leave a rule out, by its id"
    )
    replay.add_argument("--rules", type=Path, metavar="FILE.py", help="try another rule table")
    replay.add_argument(
        "--limit", action="append", default=[], metavar="KEY=NUMBER",
        help="try another limit, such as step_g=20",
    )  # fmt: skip
    replay.add_argument(
        "--forecast", choices=["proposes", "shows", "rules-only"],
        help="try another use of the forecast",
    )  # fmt: skip
    priors = command(
        "priors", commands.priors, "on how many finished weeks each coach's forecasts rest"
    )
    priors.add_argument(
        "--use", choices=["on", "off"], help="let them move new decisions, or not (off at first)"
    )
    priors.add_argument("--anew", action="store_true", help="sum every finished week up again")
    names.add_parser(
        "rehearse", help="play an invented week in the terminal, without a token or a network"
    )
    return parser


if __name__ == "__main__":
    sys.exit(main())
