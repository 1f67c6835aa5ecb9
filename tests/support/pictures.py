"""Pictures made up for tests: a stripe tells what is up, and a camera has written things beside it."""

from __future__ import annotations

import io

from PIL import Image

RED, GREEN, BLUE = (220, 30, 30), (30, 160, 30), (30, 30, 220)
GPS, MAKE, DATE_TIME, ORIENTATION = 0x8825, 0x010F, 0x0132, 0x0112


def picture(
    colour: tuple[int, int, int] = RED,
    size: tuple[int, int] = (600, 800),
    *,
    form: str = "JPEG",
    with_metadata: bool = False,
    orientation: int = 1,
) -> bytes:
    """A plain picture whose top tenth is white."""
    image = Image.new("RGB", size, colour)
    image.paste((255, 255, 255), (0, 0, size[0], size[1] // 10))
    exif = Image.Exif()
    if with_metadata:
        exif[MAKE], exif[DATE_TIME] = "Invented Camera", "2027:05:02 06:30:00"
        exif.get_ifd(GPS).update({1: "N", 2: (53.0, 48.0, 0.0), 3: "W", 4: (1.0, 33.0, 0.0)})
    if orientation != 1:
        exif[ORIENTATION] = orientation
    out = io.BytesIO()
    image.save(out, form, exif=exif)
    return out.getvalue()


def opened(content: bytes) -> Image.Image:
    image = Image.open(io.BytesIO(content))
    image.load()
    return image


def is_near(found: object, wanted: tuple[int, int, int]) -> bool:
    """Whether a pixel is this colour, as far as JPEG keeps it."""
    assert isinstance(found, tuple)
    return all(abs(a - b) < 12 for a, b in zip(found, wanted, strict=True))
