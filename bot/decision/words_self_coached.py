"""What somebody reads who has no other coach, where others read that their coach is told."""

from __future__ import annotations

from bot.words.languages import Sentence, mark, tr

missed = Sentence(
    "No check-in this morning, so today stays as planned. If you can still send your answers, "
    "do: they help tomorrow. /checkin"
)
paused = Sentence(
    "Paused: I won't ask until you send /resume. The plan's figures stay as they are, nothing is "
    "adjusted meanwhile."
)
drug_refusal = Sentence(
    "I can't help with drugs or medicines of any kind: no doses, no timing, nothing. Water pills, "
    "laxatives, potassium, insulin and the like have killed people in peak week. Please ask a "
    "doctor, and tell them about your diet."
)


#: By the rule of a decision, where what others read speaks of their coach.
_REASONS = {
    "frozen": mark("You have frozen adjusting. Stay on plan for now."),
    "coach-override": mark("You have set this figure."),
    "limits-conflict": mark("The plan and your limits don't fit together for this day."),
    "eating-or-mood": mark(
        "Your plan stays as it is for now. Please talk to somebody you trust about how you feel."
    ),
}


def reason(rule: str) -> str:
    """The sentence for the athlete; "" where the one that everybody reads will do."""
    return tr(_REASONS[rule]) if rule in _REASONS else ""
