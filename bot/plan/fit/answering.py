"""The coach's answer to a draft that did not fit: a limit gives way, or the draft, or neither."""

from __future__ import annotations

from bot.core.turn import Turn
from bot.people.people import own_athlete
from bot.people.telling import say_to
from bot.plan.fit import words
from bot.plan.fit.flow import CUT, LEAVE, RAISE, draft_of, edited
from bot.plan.fit.offering import limits_for, offer_room
from bot.plan.planning import use_plan
from bot.plan.prep import Prep, Version
from bot.store.tables.people import OpenQuestion, Person
from bot.week.load import event_ahead, limits_row, plan_row
from bot.words.common import cancelled
from engine.planning.fitting import cut_to_fit
from engine.values.plan import DayTarget, PeakPlan


def answered(turn: Turn, coach: Person, question: OpenQuestion) -> None:
    """Nothing counts before it fits; what was kept is put again after every change of it."""
    answers, do = question.answers, question.answers.get("do", LEAVE)
    profile = own_athlete(turn.session, coach, question.about)
    if profile is None or do == LEAVE:
        say_to(turn, coach, cancelled())
        return
    event = event_ahead(turn.session, profile.person_id, answers["_event"])
    standing = plan_row(turn.session, event) if event is not None else None
    bounds = limits_row(turn.session, event) if event is not None else None
    if (
        event is None
        or event.day.isoformat() != answers["_event_day"]
        or (standing.id if standing is not None else 0) != answers["_base"]
        or (bounds.id if bounds is not None else 0) != answers["_limits"]
    ):
        say_to(turn, coach, words.moved_on())
        return
    plan, prep = draft_of(answers), Prep(turn, coach, profile, event)
    if isinstance(do, dict):
        plan = PeakPlan(tuple(DayTarget(**day) for day in edited(answers)))
    elif do == CUT:
        plan = cut_to_fit(plan, limits_for(turn.session, profile, event, plan))
    version = Version(plan, answers["_shape"], answers["_reason"], answers["_how"])
    if isinstance(do, dict) or do == CUT:
        offer_room(prep, version)
    else:
        use_plan(prep, version, bounds=answers["_bounds"] if do == RAISE else None)
