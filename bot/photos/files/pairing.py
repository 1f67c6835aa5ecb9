"""Pictures side by side, of one height and one cut, each with its date above it."""

from __future__ import annotations

import io
from collections.abc import Sequence

from PIL import Image, ImageDraw, ImageFont

HEIGHT = 1200
WIDEST = 1600  # of one side: a picture taken across is not to push the other out of sight
WIDEST_ALL = 3600  # of all: what a chat would shrink anyway
GAP, BAND, FONT_SIZE, LEAST_FONT = 12, 64, 34, 10
_PAPER, _INK = (255, 255, 255), (20, 20, 20)
QUALITY = 88


def side_by_side(left: bytes, right: bytes, left_label: str, right_label: str) -> bytes:
    """JPEG of two; see `in_a_row`."""
    return in_a_row([left, right], [left_label, right_label])


def in_a_row(pictures: Sequence[bytes], labels: Sequence[str]) -> bytes:
    """JPEG. All are as high and as wide as each other, so that a frame is a frame.

    The narrowest gives the shape; of a wider one as much is left out at its left and right. Nothing
    is ever cut off above or below, where head and feet are.
    """
    shape = min(_shape(content) for content in pictures)
    room = (WIDEST_ALL - GAP * (len(pictures) - 1)) / len(pictures)
    width = max(1, round(min(HEIGHT * shape, WIDEST, room)))
    height = max(1, round(width / shape))
    sheet = Image.new(
        "RGB", ((width + GAP) * len(pictures) - GAP, BAND + max(height, HEIGHT // 2)), _PAPER
    )
    draw = ImageDraw.Draw(sheet)
    for number, (content, label) in enumerate(zip(pictures, labels, strict=True)):
        x = number * (width + GAP)
        font = _font_that_fits(draw, label, width - 2 * GAP)
        draw.text((x + width / 2, BAND / 2), label, fill=_INK, font=font, anchor="mm")
        sheet.paste(_cut(content, width, height), (x, BAND + (sheet.height - BAND - height) // 2))
    out = io.BytesIO()
    sheet.save(out, "JPEG", quality=QUALITY)
    return out.getvalue()


def _shape(content: bytes) -> float:
    """Width over height."""
    with Image.open(io.BytesIO(content), formats=("JPEG",)) as picture:
        return picture.width / picture.height


def _cut(content: bytes, width: int, height: int) -> Image.Image:
    with Image.open(io.BytesIO(content), formats=("JPEG",)) as picture:
        keep = min(picture.width, picture.height * width / height)
        left = (picture.width - keep) / 2
        return picture.convert("RGB").resize(
            (width, height), Image.Resampling.LANCZOS,
            box=(left, 0, left + keep, picture.height),
        )  # fmt: skip


def _font_that_fits(
    draw: ImageDraw.ImageDraw, label: str, width: int
) -> ImageFont.FreeTypeFont | ImageFont.ImageFont:
    size = FONT_SIZE
    font = ImageFont.load_default(size)
    while size > LEAST_FONT and draw.textlength(label, font=font) > width:
        size -= 2
        font = ImageFont.load_default(size)
    return font
