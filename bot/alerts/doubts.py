"""A doubt as the coach sees it: told as one when it is asked about, again when no answer comes.

It never becomes a warning by itself. What the answer makes of it is put right in the same message.
"""

from __future__ import annotations

from functools import partial
from typing import Any

from sqlmodel import Session, col, select

from bot.alerts import alerts, delivery
from bot.core.chat.outbox import Delivery
from bot.core.turn import Turn
from bot.people.changes import Change
from bot.people.people import get_person, has_agreed, is_own_coach, local_date, record
from bot.people.telling import say_to
from bot.store.base import id_of
from bot.store.tables.people import AthleteProfile, AthleteStatus, OpenQuestion
from bot.store.tables.week import AlertRow
from engine.safety import FlagId, Level

NO, FINE, TOLD, CHECKED_IN = "answer", "fine", "told", "check-in"


def asked(turn: Turn, profile: AthleteProfile, question: OpenQuestion) -> None:
    """The coach hears at once what was written and that it has been asked about, without a sound.

    Who coaches themself knows; it is kept where somebody is told if no answer comes. `about` is the
    symptom that may be meant, "" where that is open; then `sounds_like` is what the second ear took it
    for.
    """
    words, about, sounds_like = (
        str(question.answers.get(key, "")) for key in ("_words", "_symptom", "_concern")
    )
    athlete, own = get_person(turn.session, profile.person_id), is_own_coach(profile)
    if profile.status == AthleteStatus.ENDED or not has_agreed(turn.session, athlete):
        return
    if own and delivery.second_contact(turn.session, athlete) is None:
        return
    row = AlertRow(
        athlete_id=profile.person_id,
        coach_id=profile.coach_id,
        flag=FlagId.DOUBT,
        level=Level.ADVISORY,
        about=str(question.id),
        facts={"words": words, "about": about, "sounds_like": sounds_like, "state": "asked"},
        date=local_date(profile, turn.context),
        opened_at=turn.now,
        acknowledged_at=turn.now,
    )
    turn.session.add(row)
    turn.session.flush()
    entry = Change.DOUBT(alert=id_of(row), words=words, about=about)
    record(turn, profile.person_id, entry, by=None)
    for person in () if own else delivery.told_of(turn.session, row):
        say_to(
            turn,
            person,
            partial(delivery.alert_text, turn.session, row, person),
            how=Delivery(silent=True, topic=delivery.topic_of(row, person)),
        )


def unanswered(turn: Turn, profile: AthleteProfile, question: OpenQuestion) -> None:
    """No answer in time: the coach is to ask, and is told until they have."""
    row = of_question(turn.session, profile, question)
    if row is None:
        return
    unwell = row.facts.get("state") in ("unwell", "unwell-silent")
    _change(row, state="unwell-silent" if unwell else "silent")
    alerts.open_as_caution(turn, row)


def feels_unwell(
    turn: Turn, profile: AthleteProfile, question: OpenQuestion, asks: OpenQuestion, words: str
) -> None:
    """They do not feel well, and are asked what it is by another question. `words`: all they wrote."""
    row = of_question(turn.session, profile, question)
    if row is None:
        return
    _change(row, state="unwell", words=words)
    row.about = str(asks.id)
    alerts.rewrite_everywhere(turn, row)


def wrote_more(turn: Turn, profile: AthleteProfile, question: OpenQuestion, words: str) -> None:
    """They were asked what it is, and say it: the coach reads it beside what was written before."""
    row = of_question(turn.session, profile, question)
    if row is None or alerts.CORRECTED in row.facts or words in str(row.facts["words"]):
        return
    _change(row, words=f"{row.facts['words']}; {words}")
    alerts.rewrite_everywhere(turn, row)


def settled(
    turn: Turn, profile: AthleteProfile, question: OpenQuestion, by: str, *, words: str = ""
) -> None:
    """The answer is there. `by`: it is not that, they are fine, all was fine in the morning's answers,
    or it has an alert of its own. `words` are the answer's, where it was more than a tap.
    """
    row = of_question(turn.session, profile, question)
    if row is not None and alerts.CORRECTED not in row.facts:
        facts = row.facts | {alerts.CORRECTED: {"by": by, "words": words}}
        alerts.put_right_in_place(turn, row, facts)


def asked_lately(turn: Turn, profile: AthleteProfile) -> bool:
    """Whether the coach was told of a doubt today, or of one that is still open, and of no answer."""
    today = local_date(profile, turn.context)
    return any(
        row.flag == FlagId.DOUBT and alerts.CORRECTED not in row.facts
        for row in alerts.of_day_or_open(turn.session, profile.person_id, today)
    )


def of_question(
    session: Session, profile: AthleteProfile, question: OpenQuestion
) -> AlertRow | None:
    """What the coach was told of it; None where there is nobody to tell, or no longer."""
    if profile.status == AthleteStatus.ENDED:
        return None
    query = (
        select(AlertRow)
        .where(
            AlertRow.athlete_id == profile.person_id,
            AlertRow.coach_id == profile.coach_id,
            AlertRow.flag == FlagId.DOUBT.value,
            AlertRow.about == str(question.id),
        )
        .order_by(col(AlertRow.id).desc())
    )
    return session.exec(query).first()


def _change(row: AlertRow, **facts: Any) -> None:
    row.facts = row.facts | facts
