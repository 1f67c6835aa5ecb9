"""Pictures: what is reached by command, button and clock; of a week, of several, of seasons, photos."""

from __future__ import annotations

from bot.core.chat import cards
from bot.core.chat.routes import ATHLETE, COACHING, Command, Duty, tap, view
from bot.dialogue.feature import Feature
from bot.pictures import buttons
from bot.pictures.comparison import comparing
from bot.pictures.comparison import words as comparison_words
from bot.pictures.photos import compare, photo_rows, photos
from bot.pictures.photos import words as photo_words
from bot.pictures.timeline import seasons
from bot.pictures.timeline import words as timeline_words
from bot.pictures.week_picture import picture
from bot.pictures.week_picture import words as week_words

_BOTH = ATHLETE | COACHING

FEATURE = Feature(
    commands=(
        Command("chart", ATHLETE, picture.own_picture, week_words.menu, rank=40, can_wait=True),
        Command("picture", ATHLETE, picture.own_picture, rank=50, can_wait=True),
        Command("weeks", ATHLETE, comparing.own, comparison_words.menu, rank=72, can_wait=True),
        Command("season", ATHLETE, seasons.own, timeline_words.menu, rank=74, can_wait=True),
        Command(
            "photos", ATHLETE, photos.show_own, photo_words.photos_menu, rank=80, can_wait=True
        ),
        Command(
            "compare", _BOTH, compare.compare, photo_words.compare_menu, rank=90, can_wait=True
        ),
    ),
    taps=(
        tap(buttons.OWN_WEEKS, ATHLETE, comparing.own_tapped),
        tap(buttons.ON_PHOTO, ATHLETE, photos.pick, photo_words.picture_gone),
        tap(buttons.SEE, ATHLETE, photos.see, photo_words.picture_gone),
        tap(buttons.WIPE, ATHLETE, photos.ask_wipe),
        tap(buttons.WIPE_YES, ATHLETE, photos.wipe),
        tap(buttons.WIPE_NO, ATHLETE, photos.keep),
        tap(buttons.OWN_COMPARED, ATHLETE, compare.compare_own, photo_words.picture_gone),
    ),
    on_card=(
        view(cards.PICTURE, picture.show_picture),
        view(buttons.WEEKS, comparing.of_athlete),
        view(buttons.TIMELINE, seasons.of_athlete),
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
