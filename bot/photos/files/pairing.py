"""Two pictures side by side, at the same height, each with its date above it."""

from __future__ import annotations

import io

from PIL import Image, ImageDraw, ImageFont

HEIGHT = 1200
WIDEST = 1600  # of one side: a picture taken across is not to push the other out of sight
GAP, BAND, FONT_SIZE = 12, 64, 34
_PAPER, _INK = (255, 255, 255), (20, 20, 20)
QUALITY = 88


def side_by_side(left: bytes, right: bytes, left_label: str, right_label: str) -> bytes:
    """JPEG. Both are drawn whole and at one height, so that a frame's height is a frame's height."""
    sides = [_to_height(content) for content in (left, right)]
    width = sum(side.width for side in sides) + GAP
    sheet = Image.new("RGB", (width, BAND + HEIGHT), _PAPER)
    draw = ImageDraw.Draw(sheet)
    x = 0
    for side, label in zip(sides, (left_label, right_label), strict=True):
        font = _font_that_fits(draw, label, side.width - 2 * GAP)
        draw.text((x + side.width / 2, BAND / 2), label, fill=_INK, font=font, anchor="mm")
        sheet.paste(side, (x, BAND + (HEIGHT - side.height) // 2))
        x += side.width + GAP
    out = io.BytesIO()
    sheet.save(out, "JPEG", quality=QUALITY)
    return out.getvalue()


def _to_height(content: bytes) -> Image.Image:
    with Image.open(io.BytesIO(content), formats=("JPEG",)) as picture:
        scale = min(HEIGHT / picture.height, WIDEST / picture.width)
        size = (max(1, round(picture.width * scale)), max(1, round(picture.height * scale)))
        return picture.convert("RGB").resize(size, Image.Resampling.LANCZOS)


def _font_that_fits(
    draw: ImageDraw.ImageDraw, label: str, width: int
) -> ImageFont.FreeTypeFont | ImageFont.ImageFont:
    size = FONT_SIZE
    font = ImageFont.load_default(size)
    while size > 10 and draw.textlength(label, font=font) > width:
        size -= 2
        font = ImageFont.load_default(size)
    return font
