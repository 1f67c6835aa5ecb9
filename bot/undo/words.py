"""Taking the last change back: what the coach is asked and told, and what the athlete reads."""

from __future__ import annotations

from bot.coach.flow_history import line
from bot.words.languages import Sentence, SentenceOn, tr

nothing_to_undo = Sentence("You have no change left to undo.")
undo_times_button = Sentence("Take the times back")

undo_moved_on = Sentence("Something else has been set since then, so it is too late to undo that.")


cannot_undo = SentenceOn(
    "The last change can't be undone: {what}. Set a day by hand, or change the plan or "
    "limits again."
)


def undo_sure(when: str, who: str, what: str, *, told: bool, self_coached: bool) -> str:
    asked = tr("Undo this?\n{line}", line=line(when, who, what))
    if self_coached:
        return asked
    then = (
        tr("It was already sent, so I send a correction.")
        if told
        else tr("Nothing was sent about it yet, so nobody needs to be told.")
    )
    return f"{asked}\n\n{then}"


def undone(*, told: bool, self_coached: bool) -> str:
    if self_coached:
        return tr("Undone. Everything is as it was before.")
    if told:
        return tr("Undone. Everything is as it was before, and a correction is on its way.")
    return tr("Undone. Everything is as it was before; nothing had been sent.")
