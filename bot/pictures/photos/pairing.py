"""Pictures side by side, of one height and one cut, each with its date above it."""

from __future__ import annotations

import io
from collections.abc import Sequence

from PIL import Image, ImageDraw, ImageFont

from bot.drawing.canvas import letters

HEIGHT = 1200
WIDEST = 1600  # of one side: a picture taken across is not to push the other out of sight
WIDEST_ALL = 3600  # of all: what a chat would shrink anyway
GAP, LEAST_FONT = 12, 10
PHONE, LEGIBLE = 400, 12  # pixels of a phone's width, and of letters that are read on it
_PAPER, _INK = (255, 255, 255), (20, 20, 20)
QUALITY = 88


def in_a_row(pictures: Sequence[bytes], labels: Sequence[str]) -> bytes:
    """JPEG. All are as high and as wide as each other, so that a frame is a frame.

    The narrowest gives the shape; of a wider one as much is left out at its left and right. Nothing
    is ever cut off above or below, where head and feet are.
    """
    shape = min(_shape(content) for content in pictures)
    room = (WIDEST_ALL - GAP * (len(pictures) - 1)) / len(pictures)
    width = max(1, round(min(HEIGHT * shape, WIDEST, room)))
    height = max(1, round(width / shape))
    whole = (width + GAP) * len(pictures) - GAP
    said = [_label(label, width - 2 * GAP, round(LEGIBLE * whole / PHONE)) for label in labels]
    band = max(round(font.size * (1.2 * text.count("\n") + 1.6)) for text, font in said)
    sheet = Image.new("RGB", (whole, band + max(height, HEIGHT // 2)), _PAPER)
    draw = ImageDraw.Draw(sheet)
    for number, (content, (text, font)) in enumerate(zip(pictures, said, strict=True)):
        x = number * (width + GAP)
        draw.text(
            (x + width / 2, band / 2), text, fill=_INK, font=font, anchor="mm", align="center"
        )
        sheet.paste(_cut(content, width, height), (x, band + (sheet.height - band - height) // 2))
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


def _label(label: str, width: int, size: int) -> tuple[str, ImageFont.FreeTypeFont]:
    """The label as it fits over its picture: on two lines before it gets smaller."""
    font = _font(size)
    if font.getlength(label) > width and " " in label:
        middle = len(label) / 2
        cut = min(
            (place for place, sign in enumerate(label) if sign == " "),
            key=lambda place: abs(place - middle),
        )
        label = f"{label[:cut]}\n{label[cut + 1 :]}"
    while size > LEAST_FONT and max(map(font.getlength, label.split("\n"))) > width:
        size -= 2
        font = _font(size)
    return label, font


def _font(size: int) -> ImageFont.FreeTypeFont:
    return ImageFont.truetype(str(letters() / "DejaVuSans.ttf"), size)
