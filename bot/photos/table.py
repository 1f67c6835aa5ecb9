"""Photos: its commands, buttons, flows and timed duties."""

from __future__ import annotations

from bot.core.routes import ATHLETE, COACHING, Command, Duty, Tap
from bot.dialogue.feature import Feature
from bot.photos import compare, photo_rows, photo_taps, photos
from bot.photos import words as photo_words

FEATURE = Feature(
    id="photos",
    commands=(
        Command("photos", ATHLETE, photos.show_own, photo_words.photos_menu, rank=80),
        Command("compare", ATHLETE | COACHING, compare.compare, photo_words.compare_menu, rank=90),
    ),
    taps=(Tap("ph", ATHLETE, photo_taps.tapped),),
    on_card={
        "photos": compare.show_photos,
        "cmp": compare.compare_athlete,
    },
    duties=(
        Duty(photos.FORWARD, photos.forward),
        Duty(photo_rows.REMOVE, photo_rows.remove_file),
        Duty(photo_rows.EXPIRE, photo_rows.expire),
    ),
)
