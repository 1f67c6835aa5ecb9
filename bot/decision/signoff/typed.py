"""A coach types "ok" instead of tapping: the proposals that wait are put before them once more."""

from __future__ import annotations

from sqlmodel import col, select

from bot.core.turn import ChatTurn
from bot.decision.signoff import signoff, words
from bot.dialogue.readers import said
from bot.people.rights import approvers, athletes_seen_by
from bot.store.tables.people import Person
from bot.store.tables.week import DecisionRow, DecisionStatus
from bot.words.languages import mark
from engine.written.late import Late

#: Words of assent that say nothing else.
ASSENT = mark(
    "ok, okay, yes, y, yep, yeah, sure, approve, approved, approve it, agreed, go, go ahead, do it, "
    "fine, fine by me, sounds good, looks good, 👍, ✅"
)
#: And those that say no to a change; another figure says so too.
DISSENT = mark(
    "keep, keep it, keep the plan, stay on plan, stick to the plan, reject, decline, don't"
)
_FIGURE = Late(r"\d{2,4} ?(?:g|grams?|gramm|carbs?|kh)?")


def assented(turn: ChatTurn, person: Person) -> bool:
    """Asks for the tap, where somebody who may sign off says yes, no or a figure to nothing that was
    asked.

    False where nothing waits for them: an "ok" between people is passed on like any other word. A
    typed word approves nothing by itself, because it doesn't say beside which figure it was read.
    """
    text = turn.incoming.text.strip(" .!")
    if not (said(text, ASSENT) or said(text, DISSENT) or _FIGURE.fullmatch(text.casefold())):
        return False
    mine = {
        profile.person_id: profile
        for profile in athletes_seen_by(turn.session, person)
        if person.id in {one.id for one in approvers(turn.session, profile)}
    }
    waiting = select(DecisionRow).where(
        col(DecisionRow.athlete_id).in_(mine), DecisionRow.status == DecisionStatus.WAITING
    )
    rows = turn.session.exec(waiting.order_by(col(DecisionRow.id))).all()
    for row in rows:
        signoff.put_again(turn, person, mine[row.athlete_id], row, lead=words.tap_to_answer())
    return bool(rows)
