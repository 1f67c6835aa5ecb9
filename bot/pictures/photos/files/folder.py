"""Pictures as files in one folder, under names that nobody can guess."""

from __future__ import annotations

import os
import re
import secrets
from collections.abc import Iterator
from datetime import datetime
from pathlib import Path

_NAME = re.compile(r"[A-Za-z0-9_-]{32}")
_SUFFIX = ".jpg"


def new_name() -> str:
    """192 random bits, as 32 characters that are safe in a file's name."""
    return secrets.token_urlsafe(24)


def write(folder: Path, name: str, content: bytes) -> None:
    """Keep a picture, whole or not at all; readable by the bot's own user only."""
    folder.mkdir(mode=0o700, parents=True, exist_ok=True)
    target = _file(folder, name)
    part = target.with_suffix(".part")
    with os.fdopen(os.open(part, os.O_WRONLY | os.O_CREAT | os.O_TRUNC, 0o600), "wb") as out:
        out.write(content)
        out.flush()
        os.fsync(out.fileno())
    part.replace(target)


def read(folder: Path, name: str) -> bytes | None:
    """The picture, or None where it is gone."""
    try:
        return _file(folder, name).read_bytes()
    except FileNotFoundError:
        return None


def remove(folder: Path, name: str) -> None:
    """Delete a picture; one that is gone already is no matter."""
    _file(folder, name).unlink(missing_ok=True)


def kept_before(folder: Path, instant: datetime) -> Iterator[str]:
    """The names of pictures written before then, and of parts that a crash left behind."""
    if not folder.is_dir():
        return
    for file in folder.iterdir():
        ours = file.suffix in (_SUFFIX, ".part") and _NAME.fullmatch(file.stem)
        if ours and file.stat().st_mtime < instant.timestamp():
            if file.suffix == ".part":
                file.unlink(missing_ok=True)
            else:
                yield file.stem


def is_empty(folder: Path) -> bool:
    return not folder.is_dir() or next(folder.iterdir(), None) is None


def _file(folder: Path, name: str) -> Path:
    if not _NAME.fullmatch(name):
        raise ValueError("no name of a picture")
    return folder / f"{name}{_SUFFIX}"
