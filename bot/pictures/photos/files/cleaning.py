"""A picture as it was sent -> one that can be kept: what it is, is seen from its content, and what the
camera wrote beside it (place, time, device) is gone, because it is drawn anew.
"""

from __future__ import annotations

import io
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
    """A file that is no picture to keep. `why` is a key of `bot.pictures.photos.words.REFUSED`."""

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
