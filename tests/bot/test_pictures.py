"""What is kept of a picture, and what is not; checked with Pillow, an ordinary imaging library."""

from __future__ import annotations

import io
import os
import stat
import time
import zlib
from datetime import UTC, datetime
from pathlib import Path

import pytest
from PIL import Image, ImageCms, ImageFont

from bot.drawing.canvas import letters
from bot.pictures.photos import kept as folder
from bot.pictures.photos.kept import LONGEST_SIDE, MOST_BYTES, PictureRefused, clean
from bot.pictures.photos.pairing import GAP, HEIGHT, LEGIBLE, PHONE, WIDEST_ALL, in_a_row
from tests.support.pictures import BLUE, GREEN, RED, is_near, opened, picture


def test_place_time_and_device_are_gone() -> None:
    sent = picture(with_metadata=True)
    assert b"Invented Camera" in sent and len(opened(sent).getexif()) > 0

    kept = clean(sent)
    assert b"Invented" not in kept and b"Exif" not in kept
    assert len(opened(kept).getexif()) == 0
    assert set(opened(kept).info) <= {"jfif", "jfif_version", "jfif_unit", "jfif_density"}


def test_a_comment_and_a_text_chunk_are_gone() -> None:
    image, out = Image.new("RGB", (20, 20)), io.BytesIO()
    image.save(out, "JPEG", comment=b"at home, Leeds")
    assert b"Leeds" in out.getvalue() and b"Leeds" not in clean(out.getvalue())


@pytest.mark.parametrize("form", ["JPEG", "PNG", "WEBP"])
def test_the_formats_of_phones_become_jpeg_and_look_the_same(form: str) -> None:
    kept = opened(clean(picture(GREEN, form=form)))
    assert (kept.format, kept.size) == ("JPEG", (600, 800))
    assert is_near(kept.getpixel((300, 500)), GREEN)


def test_a_picture_taken_with_the_phone_on_its_side_is_put_upright() -> None:
    """Orientation 6: the camera's right is the picture's top (CIPA DC-008, Exif 2.32, tag 274)."""
    kept = opened(clean(picture(RED, (800, 600), orientation=6)))
    assert kept.size == (600, 800)
    assert is_near(kept.getpixel((590, 400)), (255, 255, 255))  # what was the top is at the right


def test_a_large_picture_is_made_smaller_and_a_small_one_stays() -> None:
    assert opened(clean(picture(size=(3000, 4000)))).size == (1500, LONGEST_SIDE)
    assert opened(clean(picture(size=(60, 80)))).size == (60, 80)


def test_what_is_transparent_becomes_white() -> None:
    out = io.BytesIO()
    Image.new("RGBA", (20, 20), (255, 0, 0, 0)).save(out, "PNG")
    assert opened(clean(out.getvalue())).getpixel((10, 10)) == (255, 255, 255)


def test_a_colour_profile_is_worked_in_and_a_senseless_one_is_left_out() -> None:
    for profile in (ImageCms.ImageCmsProfile(ImageCms.createProfile("sRGB")).tobytes(), b"junk"):
        out = io.BytesIO()
        Image.new("RGB", (20, 20), BLUE).save(out, "JPEG", icc_profile=profile)
        kept = opened(clean(out.getvalue()))
        assert "icc_profile" not in kept.info
        assert is_near(kept.getpixel((10, 10)), BLUE)


def _png_of(width: int, height: int) -> bytes:
    """A PNG that unfolds to this many pixels out of a few kB (PNG: W3C, ISO/IEC 15948)."""

    def chunk(kind: bytes, data: bytes) -> bytes:
        body = kind + data
        return len(data).to_bytes(4) + body + zlib.crc32(body).to_bytes(4)

    head = width.to_bytes(4) + height.to_bytes(4) + bytes([1, 0, 0, 0, 0])
    return (
        b"\x89PNG\r\n\x1a\n" + chunk(b"IHDR", head)
        + chunk(b"IDAT", zlib.compress(b"\x00" * 1000)) + chunk(b"IEND", b"")
    )  # fmt: skip


@pytest.mark.parametrize(
    ("content", "why"),
    [
        (b"", "no-picture"),
        (b"hello", "no-picture"),
        (b"GIF89a" + b"\x00" * 50, "no-picture"),
        (b"<svg xmlns='http://www.w3.org/2000/svg'/>", "no-picture"),
        (picture()[:3000], "damaged"),
        (_png_of(8000, 8000), "too-large"),
        (_png_of(60000, 60000), "too-large"),
        (b"\xff\xd8\xff" + b"x" * (MOST_BYTES + 1), "too-large"),
    ],
)
def test_what_is_no_picture_or_too_large_a_one_is_refused(content: bytes, why: str) -> None:
    began = time.perf_counter()
    with pytest.raises(PictureRefused) as refused:
        clean(content)
    assert refused.value.why == why
    assert time.perf_counter() - began < 10  # it was not unfolded


# The folder


def test_names_cannot_be_guessed_and_lead_nowhere_else(tmp_path: Path) -> None:
    names = {folder.new_name() for _ in range(100)}
    assert len(names) == 100 and all(len(name) == 32 for name in names)
    for name in ("../../etc/passwd", "a/b", "", "x" * 31):
        with pytest.raises(ValueError, match="no name"):
            folder.read(tmp_path, name)


def test_a_picture_is_readable_by_its_owner_only(tmp_path: Path) -> None:
    name = folder.new_name()
    folder.write(tmp_path / "photos", name, b"x")
    (file,) = (tmp_path / "photos").iterdir()
    assert stat.S_IMODE(file.stat().st_mode) == 0o600
    assert stat.S_IMODE(file.parent.stat().st_mode) == 0o700
    folder.write(tmp_path / "photos", name, b"again")  # a repeat does no harm
    assert folder.read(tmp_path / "photos", name) == b"again"
    folder.remove(tmp_path / "photos", name)
    folder.remove(tmp_path / "photos", name)
    assert folder.read(tmp_path / "photos", name) is None


def test_old_files_are_found_by_age_and_strangers_left_alone(tmp_path: Path) -> None:
    old, new = folder.new_name(), folder.new_name()
    for name in (old, new):
        folder.write(tmp_path, name, b"x")
    (tmp_path / "notes.jpg").write_bytes(b"x")
    os.utime(tmp_path / f"{old}.jpg", (0, 0))
    os.utime(tmp_path / "notes.jpg", (0, 0))
    assert set(folder.kept_before(tmp_path, datetime(2100, 1, 1, tzinfo=UTC))) == {old, new}
    assert list(folder.kept_before(tmp_path, datetime(1990, 1, 1, tzinfo=UTC))) == [old]
    assert list(folder.kept_before(tmp_path / "nowhere", datetime(2027, 1, 1, tzinfo=UTC))) == []


# Side by side


def side_by_side(left: bytes, right: bytes, left_label: str, right_label: str) -> bytes:
    return in_a_row([left, right], [left_label, right_label])


def test_two_pictures_stand_side_by_side_at_one_height_each_under_its_label() -> None:
    made = opened(side_by_side(picture(RED, (600, 800)), picture(BLUE, (1200, 1600)), "a", "b"))
    # Both are 3 by 4: at 1200 high they are 900 wide, whatever they were sent at.
    band = made.height - HEIGHT
    assert made.width == 900 + GAP + 900
    for x, colour in ((450, RED), (900 + GAP + 450, BLUE)):
        assert is_near(made.getpixel((x, band + 800)), colour)
        assert is_near(made.getpixel((x, band + HEIGHT - 3)), colour)
    top = made.crop((0, 0, 900, band)).convert("L").getextrema()
    assert isinstance(top[0], int | float) and top[0] < 100  # something is written there


def test_a_picture_taken_across_does_not_push_the_other_out_of_sight() -> None:
    made = opened(side_by_side(picture(RED, (4000, 1000)), picture(BLUE, (600, 800)), "a", "b"))
    assert made.width == 900 + GAP + 900
    assert is_near(made.getpixel((450, made.height - HEIGHT + 800)), RED)


def test_pictures_of_any_shape_share_height_and_cut_and_lose_nothing_above_or_below() -> None:
    """The top tenth of each is white: it is a tenth of each side's height still."""
    shapes = [(600, 800), (1500, 1000), (500, 1000), (2000, 2000)]
    made = opened(in_a_row([picture(RED, shape) for shape in shapes], list("abcd")))
    width = (made.width - 3 * GAP) // 4
    assert made.width == 4 * width + 3 * GAP
    band = made.height - 2 * width  # the narrowest is 1 by 2
    assert made.width <= WIDEST_ALL
    for number in range(4):
        x, height = number * (width + GAP) + width // 2, 2 * width
        assert is_near(made.getpixel((x, band + round(0.08 * height))), (255, 255, 255))
        assert is_near(made.getpixel((x, band + round(0.13 * height))), RED)
        assert is_near(made.getpixel((x, band + height - 4)), RED)


def test_a_long_label_stays_over_its_own_picture() -> None:
    made = opened(side_by_side(picture(size=(200, 800)), picture(), "Sun 2 May, 7 days out", ""))
    beside = made.crop((300, 0, 300 + GAP, made.height - HEIGHT)).convert("L").getextrema()
    assert isinstance(beside[0], int | float) and beside[0] > 200


def test_labels_are_as_high_as_is_legible_where_a_phone_shows_four_in_its_width() -> None:
    shapes = [(600, 800)] * 4
    made = opened(in_a_row([picture(RED, one) for one in shapes], ["A · Thu 11 Mar 2027", *"bcd"]))
    band = made.crop((0, 0, made.width // 4, made.height - 1200)).convert("L")
    rows = [
        y for y in range(band.height)
        if band.crop((0, y, band.width, y + 1)).getextrema()[0] < 100  # type: ignore[operator]
    ]  # fmt: skip
    lines = [y for y in rows if y - 1 not in rows]
    assert len(lines) >= 2, "the longest takes two lines before it gets smaller"
    assert (rows[-1] - rows[0]) * PHONE / made.width > 1.4 * LEGIBLE


def test_a_label_has_the_letters_of_every_month() -> None:
    """A letter that is not in the typeface is drawn as the empty box that any such letter gets."""

    def drawn(label: str) -> bytes:
        made = opened(side_by_side(picture(), picture(), label, ""))
        return made.crop((0, 0, 900, made.height - HEIGHT)).tobytes()

    assert drawn("ä") != drawn("\U000e0000")
    typeface = ImageFont.truetype(str(letters() / "DejaVuSans.ttf"), 20)
    missing = bytes(typeface.getmask("\U000e0000"))
    assert all(bytes(typeface.getmask(sign)) != missing for sign in "äöüßéèñłřőçåøžščýąę")
