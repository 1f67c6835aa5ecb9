"""`brimline setup`: from a token to a running bot, by questions."""

from __future__ import annotations

import asyncio
import getpass
import os
import shlex
import shutil
import subprocess
import sys
from collections.abc import Callable
from datetime import UTC, datetime
from pathlib import Path

from dotenv import set_key
from telegram.error import InvalidToken, TelegramError

from bot.core.turn import Context, Turn
from bot.membership.invitations import InviteKind, invitation_link, make_invite, spaced
from bot.operation.doctor import ask_telegram
from bot.operation.installation import migrated
from bot.settings import DOTENV, PREFIX, Settings, SettingsError, load_settings
from bot.store.db import transaction
from bot.store.tables import setting

UNIT = """\
[Unit]
Description=Brimline, a check-in bot for physique athletes and their coaches
After=network-online.target
StartLimitIntervalSec=0

[Service]
ExecStart={program} run
WorkingDirectory={folder}
UMask=0077
Restart=always
RestartSec=2
RestartPreventExitStatus=2
TimeoutStopSec=30
NoNewPrivileges=true

[Install]
WantedBy=default.target
"""
UNIT_NAME = "brimline.service"

Ask = Callable[[str], str]
Say = Callable[[str], None]


def set_up(folder: Path, ask: Ask, say: Say) -> bool:
    """Ask, check, write, make the database, invite the coach, offer to run it as a service.

    What is set already is kept. Returns whether a bot stands at the end.
    """
    dotenv = folder / DOTENV
    say(
        "Three steps: the bot's token, the database, the coach's link. Nothing is sent to anybody.\n"
    )
    settings = _with_token(dotenv, ask, say)
    if settings is None:
        return False
    username = str(asyncio.run(ask_telegram(settings, "getMe")).get("username", ""))
    engine = migrated(settings)
    say("The database is ready.")
    with transaction(engine) as session:
        setting.keep(session, setting.BOT_USERNAME, username)
        now = datetime.now(UTC)
        context = Context(now=now, bot_username=username, invite_days=settings.invite_days)
        code = make_invite(Turn(session, context), InviteKind.COACH, None)
    engine.dispose()
    link = invitation_link(username, code)
    say(f"\nThe coach opens this link, once, within {settings.invite_days} days:\n\n  {link}\n")
    say(as_qr(link))
    say(f"(or sends the bot: /join {spaced(code)})\n")
    _offer_service(folder, ask, say)
    return True


def as_qr(text: str) -> str:
    """The text as a QR code for a terminal (ISO/IEC 18004), two rows of squares a line."""
    import io  # noqa: PLC0415

    import segno  # noqa: PLC0415

    out = io.StringIO()
    segno.make_qr(text).terminal(out, compact=True)
    return out.getvalue()


def _with_token(dotenv: Path, ask: Ask, say: Say) -> Settings | None:
    """Settings whose token Telegram takes, asked for until there is one; None where nobody answers."""
    settings = load_settings(dotenv)
    while True:
        if settings.bot_token is not None:
            try:
                me = asyncio.run(ask_telegram(settings, "getMe"))
            except InvalidToken:
                say("Telegram does not take this token. Copy it again from @BotFather, whole.")
            except TelegramError:
                say(f"{settings.api_base_url} cannot be reached. Is this machine online?")
                return None
            else:
                say(f"The token works: the bot is @{me.get('username', '')}.")
                return settings
        else:
            say(
                "In Telegram, write to @BotFather, send /newbot and choose a name; it answers with a"
            )
            say("token that looks like 123456:ABC...")
        token = ask("The token (empty to stop): ").strip()
        if not token:
            return None
        settings = _store(dotenv, f"{PREFIX}BOT_TOKEN", token, settings, say)


def _store(dotenv: Path, name: str, value: str, before: Settings, say: Say) -> Settings:
    """The settings with this one written down; as before where it can't be right."""
    kept = dotenv.read_bytes() if dotenv.exists() else None
    dotenv.touch(mode=0o600)
    set_key(dotenv, name, value, quote_mode="never")
    dotenv.chmod(0o600)
    try:
        return load_settings(dotenv)
    except SettingsError as error:
        say("\n".join(error.lines))
        if kept is None:
            dotenv.unlink()
        else:
            dotenv.write_bytes(kept)
        return before


def _offer_service(folder: Path, ask: Ask, say: Say) -> None:
    program = _program()
    wanted = sys.platform == "linux" and shutil.which("systemctl") is not None and ask(
        "Run the bot as a service that starts again by itself? (yes/no) "
    ).lower().startswith("y")  # fmt: skip
    if not wanted:
        say(f"Start the bot, in the folder {folder.resolve()}:\n\n  {shlex.join(program)} run")
        return
    unit = Path.home() / ".config" / "systemd" / "user" / UNIT_NAME
    unit.parent.mkdir(parents=True, exist_ok=True)
    # systemd.unit(5): quotes keep a path with blanks whole, and a "%" that means itself is doubled.
    started = " ".join(f'"{part}"' for part in program).replace("%", "%%")
    place = str(folder.resolve()).replace("%", "%%")
    unit.write_text(UNIT.format(program=started, folder=place), encoding="utf-8")
    say(f"Written: {unit}")
    for command in (
        ["systemctl", "--user", "daemon-reload"],
        ["systemctl", "--user", "enable", "--now", UNIT_NAME],
        ["loginctl", "enable-linger", getpass.getuser()],
    ):
        done = subprocess.run(command, check=False, capture_output=True, text=True)
        if done.returncode != 0:
            say(f"This did not work; run it yourself: {' '.join(command)}")
    say("See how it does with: brimline doctor")


def _program() -> list[str]:
    """The command by its whole path: the one that is being run, whatever is found first elsewhere."""
    beside = Path(sys.executable).with_name("brimline")
    return [str(beside)] if beside.exists() else [sys.executable, "-m", "bot.cli"]


def in_terminal() -> bool:
    """`set_up` in this folder, with the keyboard and the screen."""

    def ask(question: str) -> str:
        try:
            return input(question)
        except EOFError:
            return ""

    return set_up(Path(os.curdir), ask, print)
