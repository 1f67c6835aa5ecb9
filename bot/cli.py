"""brimline ...: the table of contents.

Exit codes: 0 fine, 1 something failed, 2 a setting is wrong and named on standard error.
"""

from __future__ import annotations

import argparse
import asyncio
import sys
import time
from collections.abc import Callable, Sequence
from datetime import UTC, datetime
from pathlib import Path
from typing import TYPE_CHECKING

from bot.core.turn import Turn
from bot.settings import PREFIX, Settings, SettingsError, load_settings

if TYPE_CHECKING:
    from sqlalchemy import Engine

NO_TOKEN = f"{PREFIX}BOT_TOKEN: is missing; @BotFather in Telegram gives you one"
TOKEN_REFUSED = f"{PREFIX}BOT_TOKEN: is refused by the Bot API server; ask @BotFather for a new one"
FINE, FAILED, WRONG_SETTING = 0, 1, 2


class DatabaseAwayError(SettingsError):
    """The database cannot be reached or is busy just now."""


def main(arguments: Sequence[str] | None = None) -> int:
    """Run a subcommand; returns the exit code."""
    parser = _parser()
    given = list(sys.argv[1:] if arguments is None else arguments)
    if given[:1] == ["rehearse"]:  # it has options of its own, and needs no settings
        from bot.rehearsal import main as rehearse  # noqa: PLC0415

        return int(rehearse(given[1:]))
    chosen = parser.parse_args(given)
    try:
        command: Callable[[Settings], int] = chosen.command
        return command(load_settings())
    except DatabaseAwayError as error:
        print(f"brimline: {error.lines[0]}; is it running?", file=sys.stderr)
        return FAILED
    except SettingsError as error:
        for line in error.lines:
            print(f"brimline: {line}", file=sys.stderr)
        return WRONG_SETTING


def _parser() -> argparse.ArgumentParser:
    parser = argparse.ArgumentParser(
        prog="brimline",
        description="A chat check-in bot for physique athletes and their coaches.",
        epilog="Settings come from the environment or a .env file in this folder; README.md "
        "lists them.",
    )
    commands = parser.add_subparsers(title="commands", required=True, metavar="COMMAND")

    run = commands.add_parser("run", help="run the bot until it is stopped")
    run.set_defaults(command=_run)
    migrate = commands.add_parser("migrate", help="bring the database to this version's shape")
    migrate.set_defaults(command=_migrate)
    check = commands.add_parser("check", help="say whether settings, database and token work")
    check.set_defaults(command=_check)
    invite = commands.add_parser("invite", help="make a one-time invitation")
    invite.add_argument("whom", choices=["coach"], help="whom to invite")
    invite.set_defaults(command=_invite_coach)
    commands.add_parser(
        "rehearse", help="play an invented week in the terminal, without a token or a network"
    )
    return parser


def _run(settings: Settings) -> int:
    if settings.bot_token is None:
        raise SettingsError([NO_TOKEN])
    from telegram.error import InvalidToken  # noqa: PLC0415

    from bot.app import serve  # noqa: PLC0415
    from bot.core.logs import set_up_logs  # noqa: PLC0415
    from bot.doors import USE_CASES  # noqa: PLC0415

    set_up_logs(settings.log_level, settings.log_format)
    _wait_for_database(settings)
    try:
        asyncio.run(serve(settings, USE_CASES))
    except InvalidToken:
        raise SettingsError([TOKEN_REFUSED]) from None
    return FINE


def _wait_for_database(settings: Settings) -> None:
    """Until the database is there and in shape: one that is away or busy comes back by itself."""
    import structlog  # noqa: PLC0415

    from bot.core.waiting import growing_pause  # noqa: PLC0415

    failures = 0
    while True:
        try:
            _migrated(settings).dispose()
        except DatabaseAwayError:
            failures += 1
            pause = growing_pause(failures)
            structlog.get_logger(__name__).warning(
                "the database is out of reach or busy, trying again", seconds=pause, count=failures
            )
            time.sleep(pause)
        else:
            return


def _migrate(settings: Settings) -> int:
    engine = _migrated(settings)
    print(f"ok: {_shown(engine)} has the shape that this version needs")
    engine.dispose()
    return FINE


def _invite_coach(settings: Settings) -> int:
    from bot.core.context import Context  # noqa: PLC0415
    from bot.membership.invitations import invite_coach_command  # noqa: PLC0415
    from bot.store.db import transaction  # noqa: PLC0415
    from bot.store.tables import setting  # noqa: PLC0415

    engine = _migrated(settings)
    with transaction(engine) as session:
        context = Context(
            now=datetime.now(UTC),
            bot_username=setting.kept(session, setting.BOT_USERNAME),
            invite_days=settings.invite_days,
        )
        text = invite_coach_command(Turn(session, context))
    print(text)
    engine.dispose()
    return FINE


def _check(settings: Settings) -> int:
    print("ok      settings: all known and readable")
    checks = (_check_database(settings), asyncio.run(_check_token(settings)))
    return FINE if all(checks) else FAILED


def _check_database(settings: Settings) -> bool:
    from sqlalchemy.exc import SQLAlchemyError  # noqa: PLC0415

    from bot.store.db import make_engine  # noqa: PLC0415
    from bot.store.migrate import is_at_head  # noqa: PLC0415

    try:
        engine = make_engine(settings.database_url)
        shaped = is_at_head(engine)
        engine.dispose()
    except (SQLAlchemyError, OSError):
        print(
            f"failed  database: cannot be opened; is {PREFIX}DATABASE_URL right, does the server "
            "run, and may this user write there?"
        )
        return False
    if not shaped:
        print(f"failed  database: {_shown(engine)} is not in shape yet; run `brimline migrate`")
        return False
    print(f"ok      database: {_shown(engine)}")
    return True


async def _check_token(settings: Settings) -> bool:
    from telegram.error import InvalidToken, TelegramError  # noqa: PLC0415

    from bot.telegram.transport import TelegramTransport  # noqa: PLC0415

    if settings.bot_token is None:
        print(f"failed  token: {NO_TOKEN}")
        return False
    transport = TelegramTransport(settings.bot_token.get_secret_value(), settings.api_base_url)
    try:
        me = await transport.call("getMe", {})
    except InvalidToken:
        print(f"failed  token: {TOKEN_REFUSED}")
        return False
    except TelegramError:
        print(
            f"failed  token: {settings.api_base_url} cannot be reached; is this machine online, "
            f"and is {PREFIX}API_BASE_URL right?"
        )
        return False
    finally:
        await transport.close()
    print(f"ok      token: the bot is @{me.get('username', '')}")
    return True


def _migrated(settings: Settings) -> Engine:
    """An engine on a database in shape. Raises SettingsError where it cannot be had, and
    DatabaseAwayError, which is one, where that may pass.
    """
    from alembic.util.exc import CommandError  # noqa: PLC0415
    from sqlalchemy.exc import OperationalError, SQLAlchemyError  # noqa: PLC0415

    from bot.core.logs import error_name  # noqa: PLC0415
    from bot.store.db import make_engine, may_pass  # noqa: PLC0415
    from bot.store.migrate import upgrade_to_head  # noqa: PLC0415

    name = f"{PREFIX}DATABASE_URL"
    try:
        engine = make_engine(settings.database_url)
        upgrade_to_head(engine)
    except CommandError:
        message = f"{name}: the database belongs to a newer version of brimline; update brimline"
        raise SettingsError([message]) from None
    except (SQLAlchemyError, OSError) as error:
        message = f"{name}: the database cannot be opened or changed ({error_name(error)})"
        if isinstance(error, OperationalError) and may_pass(error):
            raise DatabaseAwayError([message]) from None
        raise SettingsError([message]) from None
    return engine


def _shown(engine: Engine) -> str:
    if engine.dialect.name == "sqlite":
        return str(Path(str(engine.url.database)).resolve())
    return engine.url.set(drivername="postgresql").render_as_string(hide_password=True)


if __name__ == "__main__":
    sys.exit(main())
