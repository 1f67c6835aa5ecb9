"""What is said of signs in the days after a show."""

from __future__ import annotations

from bot.words.languages import tr


def look_into_it(coach: str, *, self_coached: bool) -> str:
    parts = [
        tr("See a doctor today."),
        "" if self_coached else tr("I have told {coach}.", coach=coach),
        tr(
            "In these days weakness, heavy limbs, palpitations or swelling can mean that "
            "minerals in your blood are falling now that you eat more. No large meals until a "
            "doctor has looked. If it gets worse, call your local emergency number."
        ),
    ]
    return " ".join(part for part in parts if part)
