"""The coach's eye: what a coach sees of a morning, tapped on the card or under its photos."""

from __future__ import annotations

from bot.dialogue.feature import Feature
from bot.eye import looking

FEATURE = Feature(
    id="eye",
    on_card={
        "eye": looking.show,
        "eye-look": looking.look_tapped,
        "eye-sharp": looking.sharpness_tapped,
        "eye-back": looking.take_back,
    },
)
