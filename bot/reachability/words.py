"""Somebody whose chat could not be reached is back: what they, and those who were told, read."""

from __future__ import annotations

from bot.words.languages import SentenceCounted, SentenceOn

#: Above the alerts that could not reach a coach or second contact.
missed_alerts = SentenceCounted(
    "Welcome back. While I could not reach you, you missed this alert:",
    "Welcome back. While I could not reach you, you missed these {number} alerts:",
)

athlete_back = SentenceOn("{name} can be reached again and gets questions and targets as before.")
contact_back = SentenceOn("{name}, your second contact, can be reached again.")
second_back = SentenceOn("{name}, your second coach, can be reached again.")
coach_back = SentenceOn("{coach} can be reached here again. Alerts go to {coach} first, as before.")
