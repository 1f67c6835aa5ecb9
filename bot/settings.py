"""Environment and .env file -> one frozen Settings; anything wrong stops the start and is named."""

from __future__ import annotations

import difflib
import ipaddress
import os
import re
import sys
from collections.abc import Mapping
from pathlib import Path
from typing import Annotated, Literal
from urllib.parse import urlsplit

from dotenv import dotenv_values
from pydantic import AfterValidator, Field, SecretStr, ValidationError, model_validator
from pydantic_settings import BaseSettings, SettingsConfigDict

from bot.store.db import database_url

PREFIX = "BRIMLINE_"
DOTENV = ".env"
TELEGRAM = "https://api.telegram.org"

_TOKEN = re.compile(r"\d+:[A-Za-z0-9_-]+")
_WEBHOOK_SECRET = re.compile(r"[A-Za-z0-9_-]{16,256}")


class SettingsError(Exception):
    """What is wrong with the settings, one line each, without their values."""

    def __init__(self, lines: list[str]) -> None:
        super().__init__("\n".join(lines))
        self.lines = lines


def data_folder() -> Path:
    """The user's own data folder, so that it is the same from wherever the bot is started."""
    home = Path.home()
    if sys.platform == "win32":
        base = Path(os.environ.get("LOCALAPPDATA") or home / "AppData" / "Local")
    elif sys.platform == "darwin":
        base = home / "Library" / "Application Support"
    else:
        base = Path(os.environ.get("XDG_DATA_HOME") or home / ".local" / "share")
    return base / "brimline"


def default_database_url() -> str:
    """An SQLite file in the user's own data folder."""
    return f"sqlite:///{data_folder() / 'brimline.sqlite3'}"


def default_photo_dir() -> Path:
    """A folder beside it: pictures are not kept in the database."""
    return data_folder() / "photos"


def _token(value: SecretStr) -> SecretStr:
    if not _TOKEN.fullmatch(value.get_secret_value()):
        raise ValueError("is not a bot token (digits, a colon, letters), as @BotFather gives it")
    return value


def _webhook_secret(value: SecretStr) -> SecretStr:
    if not _WEBHOOK_SECRET.fullmatch(value.get_secret_value()):
        raise ValueError("must be 16 to 256 characters out of A-Z, a-z, 0-9, _ and -")
    return value


def _database(value: str) -> str:
    database_url(value)
    return value


def _root_url(value: str) -> str:
    address = urlsplit(value)
    if address.scheme not in ("http", "https") or not address.hostname:
        raise ValueError("must be the address of a Bot API server, such as http://127.0.0.1:8081")
    return value.rstrip("/")


def _webhook_url(value: str) -> str:
    address = urlsplit(value)
    if address.scheme == "https" and address.hostname:
        return value
    if address.scheme == "http" and _is_loopback(address.hostname or ""):
        return value
    raise ValueError("must begin with https:// (Telegram calls no other address)")


def _is_loopback(host: str) -> bool:
    try:
        return ipaddress.ip_address(host).is_loopback
    except ValueError:
        return host == "localhost"


class Settings(BaseSettings):
    """Every setting, with its default. Secrets do not show in `repr`."""

    model_config = SettingsConfigDict(
        env_prefix=PREFIX,
        env_file=DOTENV,
        env_file_encoding="utf-8",
        env_ignore_empty=True,
        extra="ignore",
        frozen=True,
        hide_input_in_errors=True,
    )

    bot_token: Annotated[SecretStr, AfterValidator(_token)] | None = None
    database_url: Annotated[str, AfterValidator(_database)] = Field(
        default_factory=default_database_url, repr=False
    )
    api_base_url: Annotated[str, AfterValidator(_root_url)] = TELEGRAM

    # Long polling without a webhook address, a webhook with one.
    webhook_url: Annotated[str, AfterValidator(_webhook_url)] | None = Field(None, repr=False)
    webhook_secret: Annotated[SecretStr, AfterValidator(_webhook_secret)] | None = None
    webhook_listen: str = "127.0.0.1"
    webhook_port: int = Field(8080, ge=0, le=65535)

    tick_seconds: float = Field(3.0, ge=0.2, le=60.0)  # how late a timed duty may begin
    # More only hides the way to a database far away: they take turns at the interpreter's lock.
    worker_threads: int = Field(2, ge=1, le=32)
    invite_days: int = Field(7, ge=1, le=30)
    keep_traffic_days: int = Field(30, ge=1, le=3650)  # how long raw messages are kept
    photo_dir: Path | None = Field(default_factory=default_photo_dir, repr=False)
    keep_photos_days: int = Field(180, ge=1, le=3650)

    # Whom somebody who thinks of harming themself can call here, such as "Lifeline, 555 0100".
    helpline: str = Field("", max_length=200)

    # Where `/alive`, `/ready` and `/metrics` are answered; nowhere without a port.
    health_listen: str = "127.0.0.1"
    health_port: int | None = Field(None, ge=0, le=65535)
    # The Telegram chat that is told where prompts or alerts fall behind.
    operator_chat: int | None = None

    log_level: Literal["DEBUG", "INFO", "WARNING", "ERROR"] = "INFO"
    log_format: Literal["json", "console"] = "json"

    @model_validator(mode="after")
    def _webhook_is_whole(self) -> Settings:
        if self.webhook_url is not None and self.webhook_secret is None:
            raise ValueError(
                f"{PREFIX}WEBHOOK_SECRET: is missing; a webhook without it would believe anybody"
            )
        return self


def load_settings(dotenv: Path = Path(DOTENV)) -> Settings:
    """The settings of this process. Raises SettingsError, naming each that is wrong or unknown."""
    given: Mapping[str, str | None] = {
        **(dotenv_values(dotenv, encoding="utf-8") if dotenv.is_file() else {}),
        **os.environ,
    }
    known = {f"{PREFIX}{name.upper()}" for name in Settings.model_fields}
    unknown = sorted(
        name for name in given if name.upper().startswith(PREFIX) and name.upper() not in known
    )
    if unknown:
        raise SettingsError([_unknown(name, known) for name in unknown])
    try:
        return Settings(_env_file=dotenv)
    except ValidationError as error:
        raise SettingsError([_wrong(dict(problem)) for problem in error.errors()]) from None


def _unknown(name: str, known: set[str]) -> str:
    near = difflib.get_close_matches(name.upper(), known, n=1)
    hint = f"did you mean {near[0]}?" if near else f"there are {', '.join(sorted(known))}."
    return f"{name}: is not a setting; {hint}"


def _wrong(problem: dict[str, object]) -> str:
    location, message = problem["loc"], str(problem["msg"]).removeprefix("Value error, ")
    assert isinstance(location, tuple)
    if not location:
        return message
    return f"{PREFIX}{str(location[0]).upper()}: {message[0].lower()}{message[1:]}"
