"""What has to hold once a scripted week is over."""

from __future__ import annotations

from collections.abc import Sequence

from sqlalchemy import Engine
from sqlmodel import Session, col, select

from bot.rehearsal.demo.script import Outcome
from bot.rehearsal.play import ScriptBroken
from bot.rehearsal.table import Row
from bot.store.tables.traffic import AgendaRow, InboxRow, OutboxRow
from bot.store.tables.week import DecisionRow
from engine.decision.decide import case_from_dict, decide, decision_as_dict


def check_outcomes(rows: Sequence[Row], wanted: Sequence[Outcome]) -> None:
    """Each day of the table holds what the script says it is to hold."""
    found = {row.days_out: row for row in rows}
    for outcome in wanted:
        row = found.get(outcome.days_out)
        if row is None:
            raise ScriptBroken(f"the table has no row for {outcome.days_out} days out")
        if row.carb_g != outcome.carb_g:
            found_g = "nothing" if row.carb_g is None else f"{row.carb_g:g} g"
            raise ScriptBroken(
                f"{outcome.days_out} days out was to be set to {outcome.carb_g:g} g, not {found_g}"
            )
        happened = "; ".join(row.happened)
        for words in outcome.happened:
            if words not in happened:
                raise ScriptBroken(
                    f'{outcome.days_out} days out was to hold "{words}", but holds: {happened}'
                )


def check_decisions_replay(engine: Engine) -> None:
    """Each stored case, decided again, gives the decision stored with it."""
    with Session(engine) as session:
        for row in session.exec(select(DecisionRow).order_by(col(DecisionRow.id))):
            if decision_as_dict(decide(case_from_dict(row.case))) != row.decision:
                raise ScriptBroken(f"decision {row.id} comes out differently when decided again")


def check_all_went_out(engine: Engine) -> None:
    """Nothing was set aside, given up or put off on the way."""
    with Session(engine) as session:
        updates = select(InboxRow.update_id).where(
            (col(InboxRow.status) != "done") | (col(InboxRow.attempts) > 0)
        )
        messages = select(OutboxRow.id).where(col(OutboxRow.status).not_in(("sent", "dropped")))
        duties = select(AgendaRow.id).where(col(AgendaRow.attempts) > 0)
        for what, found in (
            ("updates were set aside or failed", session.exec(updates).all()),
            ("messages were not sent", session.exec(messages).all()),
            ("timed duties failed", session.exec(duties).all()),
        ):
            if found:
                raise ScriptBroken(f"{len(found)} {what}")
