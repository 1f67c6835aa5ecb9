"""What each subcommand does; `bot.cli` only reads the command line. Returns exit codes."""

from __future__ import annotations

import argparse
import asyncio
import time
from collections.abc import AsyncIterator, Iterator
from contextlib import contextmanager
from datetime import UTC, datetime
from pathlib import Path
from typing import TYPE_CHECKING

from bot.operation.doctor import NO_TOKEN, TOKEN_REFUSED, Finding
from bot.operation.installation import DatabaseAwayError, migrated, opened, shaped, shown
from bot.settings import PREFIX, Settings, SettingsError

if TYPE_CHECKING:
    from sqlmodel import Session

FINE, FAILED, WRONG_SETTING = 0, 1, 2


@contextmanager
def _beside(settings: Settings, *, writing: bool = False) -> Iterator[Session]:
    """A session beside the bot, or one transaction that writes."""
    from sqlmodel import Session  # noqa: PLC0415

    from bot.store.db import transaction  # noqa: PLC0415

    engine = opened(settings)
    with transaction(engine) if writing else Session(engine) as session:
        yield session
    engine.dispose()


def run(settings: Settings) -> int:
    if settings.bot_token is None:
        raise SettingsError([NO_TOKEN])
    from telegram.error import InvalidToken  # noqa: PLC0415

    from bot.app import serve  # noqa: PLC0415
    from bot.core.logs import set_up_logs  # noqa: PLC0415
    from bot.dispatcher import USE_CASES  # noqa: PLC0415

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

    from bot.core.timing.waiting import growing_pause  # noqa: PLC0415

    failures = 0
    while True:
        try:
            migrated(settings).dispose()
        except DatabaseAwayError as away:
            failures += 1
            pause = growing_pause(failures)
            structlog.get_logger(__name__).warning(
                "the database is out of reach or busy, trying again",
                seconds=pause,
                count=failures,
                error=away.kind,
            )
            time.sleep(pause)
        else:
            return


def migrate(settings: Settings, given: argparse.Namespace) -> int:
    """Bring the database up to date; with --from and --to, move an installation."""
    if (given.source is None) != (given.target is None):
        print("brimline: --from and --to belong together: from which database to which")
        return WRONG_SETTING
    if given.source is not None:
        return _move(given.source, given.target)
    engine = migrated(settings)
    print(f"ok: {shown(engine)} has the shape that this version needs")
    engine.dispose()
    return FINE


def _move(source: str, target: str) -> int:
    from bot.operation.backup import BackupError, move  # noqa: PLC0415
    from bot.store.db import make_engine  # noqa: PLC0415

    old = shaped(source, "--from")
    try:
        new = make_engine(target)
    except ValueError as error:
        raise SettingsError([f"--to: {error}"]) from None
    try:
        contents = move(old, new)
    except BackupError as error:
        print(f"failed  {error}")
        return FAILED
    finally:
        old.dispose()
        new.dispose()
    print(f"ok      moved and compared: {contents.told()}")
    print(f"        now set {PREFIX}DATABASE_URL to the new address and start the bot again")
    return FINE


def check(settings: Settings) -> int:
    from bot.operation import doctor  # noqa: PLC0415

    return asyncio.run(_findings(doctor.check(settings)))


def examine(settings: Settings) -> int:
    from bot.operation import doctor  # noqa: PLC0415

    return asyncio.run(_findings(doctor.doctor(settings)))


async def _findings(found: AsyncIterator[Finding]) -> int:
    well = True
    async for finding in found:
        print(finding.line())
        well = well and finding.ok
    return FINE if well else FAILED


def status(settings: Settings) -> int:
    from bot.operation.status import status as report  # noqa: PLC0415

    with _beside(settings) as session:
        text, well = report(session, datetime.now(UTC))
    print(text)
    return FINE if well else FAILED


def setup(_settings: Settings) -> int:
    from bot.operation.setup import in_terminal  # noqa: PLC0415

    return FINE if in_terminal() else FAILED


def invite_coach(settings: Settings) -> int:
    from bot.core.turn import Context, Turn  # noqa: PLC0415
    from bot.membership.invitations import invite_coach_command  # noqa: PLC0415
    from bot.store.tables import setting  # noqa: PLC0415

    with _beside(settings, writing=True) as session:
        context = Context(
            now=datetime.now(UTC),
            bot_username=setting.kept(session, setting.BOT_USERNAME),
            invite_days=settings.invite_days,
        )
        text = invite_coach_command(Turn(session, context))
    print(text)
    return FINE


def coaches(settings: Settings) -> int:
    from bot.operation.roles import coaches_and_invitations  # noqa: PLC0415

    with _beside(settings) as session:
        print(coaches_and_invitations(session, datetime.now(UTC)))
    return FINE


def revoke(settings: Settings, given: argparse.Namespace) -> int:
    from bot.core.turn import Context, Turn  # noqa: PLC0415
    from bot.operation.roles import revoke_coach, revoke_invitation  # noqa: PLC0415

    now = datetime.now(UTC)
    with _beside(settings, writing=True) as session:
        if given.what == "invitation":
            in_the_way = revoke_invitation(session, given.number, now)
        else:
            in_the_way = revoke_coach(Turn(session, Context(now=now)), given.number)
    print(f"failed  {in_the_way}" if in_the_way else f"ok      {given.what} {given.number} revoked")
    return FAILED if in_the_way else FINE


def backup(settings: Settings, given: argparse.Namespace) -> int:
    from bot.operation.backup import BackupError, back_up  # noqa: PLC0415

    now = datetime.now(UTC)
    target = given.file or Path(f"brimline-{now:%Y%m%dT%H%M%SZ}.zip")
    engine = opened(settings, of_any_version=True)
    try:
        contents = back_up(engine, _photos(settings), target, now)
    except BackupError as error:
        print(f"failed  {error}")
        return FAILED
    finally:
        engine.dispose()
    print(f"ok      {target}: {contents.told()}. It holds health data: keep it private.")
    return FINE


def restore(settings: Settings, given: argparse.Namespace) -> int:
    from alembic.util.exc import CommandError  # noqa: PLC0415

    from bot.operation.backup import BackupError, put_back  # noqa: PLC0415
    from bot.operation.installation import NEWER  # noqa: PLC0415
    from bot.store.db import make_engine  # noqa: PLC0415

    engine = make_engine(settings.database_url)
    try:
        contents = put_back(engine, _photos(settings), given.file)
    except (BackupError, CommandError) as error:
        print(f"failed  {error if isinstance(error, BackupError) else NEWER}")
        return FAILED
    finally:
        engine.dispose()
    print(f"ok      restored: {contents.told()}")
    return FINE


def _photos(settings: Settings) -> Path | None:
    return settings.photo_dir.expanduser() if settings.photo_dir is not None else None


def replay(settings: Settings, given: argparse.Namespace) -> int:
    """Every stored decision again; 1 where one that this version made comes out otherwise."""
    from bot.decision.replay.command import NoSuchChangeError, change_of, replay_all  # noqa: PLC0415

    try:
        change = change_of(given.without, given.rules, given.limit, given.forecast)
    except NoSuchChangeError as error:
        raise SettingsError([str(error)]) from None
    with _beside(settings) as session:
        found = replay_all(session, change, given.athlete)
    for line in found.lines:
        print(line)
    print(
        f"{found.decisions} decisions: {found.same} the same, {len(found.lines)} not "
        f"({found.of_other_version} were made by another version, {found.unreadable} unreadable)"
    )
    changed = bool(given.without or given.rules or given.limit or given.forecast)
    return FINE if changed or not found.lines else FAILED


def priors(settings: Settings, given: argparse.Namespace) -> int:
    """On how many finished weeks forecasts rest, coach by coach."""
    from bot.core.turn import Context, Turn  # noqa: PLC0415
    from bot.debrief import pooling  # noqa: PLC0415
    from bot.store.tables import setting  # noqa: PLC0415

    with _beside(settings, writing=True) as session:
        if given.anew:
            made = pooling.anew(Turn(session, Context(now=datetime.now(UTC), bot_username="")))
            print(f"ok      {made} athletes summed up again")
        if given.use is not None:
            setting.keep(session, setting.PRIORS, given.use)
        for line in pooling.told(session):
            print(line)
    return FINE
