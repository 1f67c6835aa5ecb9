"""What is said of signs in the days after a show, and of those told before anything is agreed to."""

from __future__ import annotations

from bot.words.languages import Sentence, tr

#: Behind the advice on too much water, in the days after a show.
and_no_large_meals = Sentence(
    "No training and no large meals until a doctor has looked: in these days minerals in your blood "
    "can fall as well, now that you eat more."
)


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


def stays_with_you(*, self_coached: bool) -> str:
    """Of what was told before somebody has agreed that it is passed on or kept."""
    if self_coached:
        return tr("I have not saved that, because you have not agreed yet.")
    return tr("I have told nobody of that, because you have not agreed yet.")
