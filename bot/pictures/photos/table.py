"""Photos: its commands, buttons, flows and timed duties."""

from __future__ import annotations

from bot.core.chat.routes import ATHLETE, COACHING, Command, Duty, tap, view
from bot.dialogue.feature import Feature
from bot.pictures.photos import buttons, compare, photo_rows, photos
from bot.pictures.photos import words as photo_words

FEATURE = Feature(
    id="photos",
    commands=(
        Command(
            "photos", ATHLETE, photos.show_own, photo_words.photos_menu, rank=80, can_wait=True
        ),
        Command(
            "compare",
            ATHLETE | COACHING,
            compare.compare,
            photo_words.compare_menu,
            rank=90,
            can_wait=True,
        ),
    ),
    taps=(
        tap(buttons.ON_PHOTO, ATHLETE, photos.pick, photo_words.picture_gone),
        tap(buttons.SEE, ATHLETE, photos.see, photo_words.picture_gone),
        tap(buttons.WIPE, ATHLETE, photos.ask_wipe),
        tap(buttons.WIPE_YES, ATHLETE, photos.wipe),
        tap(buttons.WIPE_NO, ATHLETE, photos.keep),
        tap(buttons.OWN_COMPARED, ATHLETE, compare.compare_own, photo_words.picture_gone),
    ),
    on_card=(
        view(buttons.PHOTOS, compare.show_photos),
        view(buttons.COMPARED, compare.compare_athlete),
    ),
    duties=(
        Duty(photos.FORWARD, photos.forward, "the morning's photos on their way to the coach"),
        Duty(photo_rows.REMOVE, photo_rows.remove_file, "a photo's file, to be deleted"),
        Duty(
            photo_rows.EXPIRE, photo_rows.expire, "the sweep of photos that were kept long enough"
        ),
    ),
)
