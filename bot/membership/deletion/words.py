"""What is said when an athlete has their data deleted."""

from __future__ import annotations

from bot.words.languages import Sentence, tr

deletion_menu = Sentence("Delete everything saved about you")
chats_stay = Sentence(
    "What stands in Telegram chats stays there; you can delete your own chat in Telegram."
)
sure = Sentence("Delete it all?")
more_than_an_athlete = Sentence(
    "What you have here as a coach or contact stays, unless you want all of it deleted."
)
all_button = Sentence("All of it, not only the athlete's")
yes_button = Sentence("Yes, delete it all")
nothing_there = Sentence("Nothing about you is saved here, so there is nothing to delete.")
done = Sentence(
    "Done. Everything saved here about you as an athlete is deleted; photos within a "
    "minute. If you feel unwell, don't wait for a message: see a doctor, or call the local "
    "emergency number."
)


def ask(coach: str, *, self_coached: bool) -> str:
    parts = [
        tr(
            "This deletes everything saved here about you as an athlete: your answers, "
            "check-ins, decisions, plans, limits, alerts, notes and photos. It can't be "
            "undone. Check-ins stop, and I can't fetch anybody for you any more."
        )
    ]
    if not self_coached:
        parts.append(tr("I tell {coach} only that you did it.", coach=coach))
        parts.append(
            tr(
                "What was written to {coach} and others about you goes from this bot's records too.",
                coach=coach,
            )
        )
    return " ".join([*parts, chats_stay()]) + "\n\n" + sure()


def coach_told(name: str, *, warning_open: bool) -> str:
    text = tr("{name} has deleted all data here. You get no more check-ins from {name}.", name=name)
    if not warning_open:
        return text
    return (
        text
        + " "
        + tr(
            "An alert about {name} was open. I can't follow it up any more: please call {name}.",
            name=name,
        )
    )
