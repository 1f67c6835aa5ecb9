"""A text as the answer to what was asked, or to what only a tap decides."""

from __future__ import annotations

from dataclasses import replace

from bot.core.chat import outbox
from bot.decision.signoff import typed as signoff_typed
from bot.dialogue import answering, asking
from bot.direct import direct_messages as messages_across
from bot.direct import passing_on, replies
from bot.direct.flow_passing_on import PASS_ON, SURE, sends
from bot.landing.persons import agreed, go_on
from bot.landing.text import Landing
from bot.plan.next_load import typed_look
from bot.safety import typed_ack
from bot.safety import watch as safety_watch
from bot.store.tables.people import OpenQuestion


def replied(it: Landing) -> bool:
    """Telegram's own reply: a coach's to an athlete's words, an athlete's to the coach's."""
    if it.turn.incoming.reply_to is None or (not it.is_coach and not agreed(it)):
        return False
    latest = it.latest
    row = replies.message_answered(it.turn.session, it.person, it.turn.incoming.reply_to)
    if row is None or (latest is not None and latest.outbox_id == row.id):
        return False
    if it.is_coach and passing_on.replied(it.turn, it.person):
        return True
    coach_id = replies.coach_answered(it.turn.session, it.person, it.turn.incoming)
    if coach_id is None or "athlete" not in it.house.roles:
        return False
    if it.heard:  # the coach has these words with what is made of them
        return True
    messages_across.to_coaches(it.turn, it.person, it.text.strip(), coach_id)
    return True


def typed_for_a_tap(it: Landing) -> bool:
    """What a coach says in words that only a tap decides: of an alert, a proposal, a look. Not where
    another question waits for an answer.
    """
    if it.latest is not None and it.latest.flow != PASS_ON.id:
        return False
    return (
        (it.is_coach and typed_ack.heard(it.turn, it.person))
        or signoff_typed.assented(it.turn, it.person)
        or (it.is_coach and typed_look.heard(it.turn, it.person))
    )


def answered(it: Landing) -> bool:
    if it.latest is not None and _sends_unseen(it, it.latest):
        asking.ask_again(it.turn, it.person, it.latest, it.house.flows)
        return True
    taken = answering.answered(it.turn, it.person, it.house.flows, asked=it.asked)
    return taken is not None


def _sends_unseen(it: Landing, asked: OpenQuestion) -> bool:
    """Whether an "ok" would send words to an athlete although something else was shown since: then it
    may be meant for that.
    """
    if asked.flow != PASS_ON.id or asked.step != SURE:
        return False
    return sends(it.text) and outbox.said_since(it.turn.session, it.person.chat_id, asked.outbox_id)


def answered_in_part(it: Landing) -> bool:
    """Several answers at once, or one with more behind it, which then goes on by itself."""
    if it.latest is None:
        return False
    taken = answering.answered_in_part(it.turn, it.person, it.house.flows, it.latest)
    if taken is None:
        return False
    if taken.rest and not it.heard:
        rest = replace(it.turn.incoming, text=taken.rest)
        go_on(replace(it, turn=replace(it.turn, incoming=rest), asked=()))
    return True


def given_in_words(it: Landing) -> bool:
    """Free words to the question that waits for them, unless they name another athlete, or the
    question was put so long ago that they can hardly be meant for it.
    """
    latest = it.latest
    assert latest is not None
    patient = it.house.flows[latest.flow].flow.patient and "?" not in it.text
    listens = answering.LISTENS_LONG if patient else answering.LISTENS_FOR
    if it.turn.now - latest.asked_at > listens:
        return False
    if safety_watch.asks_of_something_else(latest, it.text):
        return False
    if it.is_coach and passing_on.names_another(it.turn.session, it.person, latest, it.text):
        return False
    if not answered(it):  # empty, too long, or about a drug
        asking.refuse(it.turn, it.person, latest, it.house.flows, it.text)
    return True
