"""What is said around everything that is kept of somebody."""

from __future__ import annotations

from bot.words.languages import Sentence, tr, trn

menu = Sentence("Everything saved about you, as files")


def caption(*, keep_days: int) -> str:
    parts = [
        tr("Everything that is saved about you, with the schema that says what each part means."),
        trn(
            "Messages are kept for {number} day.", "Messages are kept for {number} days.", keep_days
        ),
        tr("It holds health data: keep it safe."),
    ]
    parts.append(tr("To have it deleted: /delete_my_data."))
    return " ".join(parts)
