"""A picture as it was sent -> one that can be kept, and the folder with those that are.

What it is, is seen from its content; what the camera added is left out. Names are such as nobody can
guess.
"""

from __future__ import annotations

import io
import os
import re
import secrets
from collections.abc import Iterator
from datetime import datetime
from pathlib import Path
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from PIL import Image

MOST_BYTES = 10_000_000  # Telegram's own bound for a picture that is sent as one
MOST_PIXELS = 50_000_000  # what a picture unfolds to; phones take 12 to 50 million
LONGEST_SIDE = 2000
QUALITY = 88
FORMATS = ("JPEG", "PNG", "WEBP")
_WHITE = (255, 255, 255)


class PictureRefused(Exception):  # noqa: N818 - it is an answer to a person, not a fault
    """A file that is no picture to keep. `why` is a key of `bot.pictures.photos.words.refused`."""

    def __init__(self, why: str) -> None:
        super().__init__(why)
        self.why = why


def clean(content: bytes) -> bytes:
    """The picture as JPEG, upright, at most LONGEST_SIDE, without metadata. Raises PictureRefused."""
    from PIL import Image, UnidentifiedImageError  # noqa: PLC0415

    if len(content) > MOST_BYTES:
        raise PictureRefused("too-large")
    try:
        with Image.open(io.BytesIO(content), formats=FORMATS) as picture:
            fits = picture.width * picture.height <= MOST_PIXELS
            cleaned = _drawn_anew(picture) if fits else None
    except (Image.DecompressionBombError, Image.DecompressionBombWarning) as error:
        raise PictureRefused("too-large") from error
    except UnidentifiedImageError as error:
        raise PictureRefused("no-picture") from error
    except Exception as error:
        # The decoders raise whatever a broken file makes them stumble over.
        raise PictureRefused("damaged") from error
    if cleaned is None:
        raise PictureRefused("too-large")
    return cleaned


def _drawn_anew(picture: Image.Image) -> bytes:
    from PIL import Image, ImageOps  # noqa: PLC0415

    if picture.format == "JPEG":
        picture.draft("RGB", (LONGEST_SIDE, LONGEST_SIDE))  # reads a huge one at half its size
    upright = ImageOps.exif_transpose(picture)
    upright.thumbnail((LONGEST_SIDE, LONGEST_SIDE), Image.Resampling.LANCZOS)
    flat = _in_plain_colours(upright)
    out = io.BytesIO()
    # A new image holds pixels only: no exif, no profile, no comment comes along.
    fresh = Image.new("RGB", flat.size)
    fresh.paste(flat)
    fresh.save(out, "JPEG", quality=QUALITY)
    return out.getvalue()


def _in_plain_colours(picture: Image.Image) -> Image.Image:
    """sRGB on white: a phone's wider colours would look dull once its profile is left out."""
    from PIL import Image, ImageCms  # noqa: PLC0415

    profile = picture.info.get("icc_profile")
    if picture.mode in ("RGBA", "LA", "PA", "P"):
        seen = picture.convert("RGBA")
        picture = Image.new("RGB", seen.size, _WHITE)
        picture.paste(seen, mask=seen.getchannel("A"))
    if profile and picture.mode == "RGB":
        try:
            converted = ImageCms.profileToProfile(
                picture,
                ImageCms.ImageCmsProfile(io.BytesIO(profile)),
                ImageCms.createProfile("sRGB"),
                outputMode="RGB",
            )
        except (ImageCms.PyCMSError, OSError, ValueError, TypeError):
            converted = None  # a profile that makes no sense; the pixels do
        picture = converted or picture
    return picture.convert("RGB")


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
