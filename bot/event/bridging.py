"""A bridge between two events is drafted, shown and used as any plan is."""

from __future__ import annotations

from bot.core.chat.cards import OfEvent
from bot.core.turn import OnAthlete, Turn
from bot.dialogue import asking
from bot.event import season
from bot.event import words as event_words
from bot.event.flow import BRIDGE_WEEK, USE, USUAL
from bot.event.season import named, show
from bot.people.people import own_athlete
from bot.people.telling import answer, say_to
from bot.plan import words as plan_words
from bot.plan.planning import has_measures, open_draft, use_plan
from bot.plan.prep import Prep, Version
from bot.store.tables.people import OpenQuestion, Person
from bot.week.load import athlete_of, baseline_of, event_ahead, plan_days, plan_row
from bot.words.common import cancelled
from engine.planning.drafting.bridge import BRIDGE, bridge_plan
from engine.values.plan import DayTarget, PeakPlan


def ask(turn: OnAthlete, pressed: OfEvent) -> None:
    """A week that bridges to this event from the one before it."""
    event = named(turn, pressed)
    earlier = season.before(turn, turn.profile, event) if event is not None else None
    if event is None or earlier is None:
        show(turn)
        return
    answer(turn)
    if not has_measures(turn, turn.person, turn.profile):
        return
    between = (event.day - earlier.day).days
    plan = bridge_plan(athlete_of(turn.profile), baseline_of(turn.profile), between)
    standing = plan_row(turn.session, event)
    asking.open_question(turn, turn.person, BRIDGE_WEEK, turn.profile.person_id, {
        "_event": event.id, "_said": event_words.short(event.kind, event.day),
        "_earlier": event_words.short(earlier.kind, earlier.day), "_between": between,
        "_days": plan_days(plan),
        "_table": plan_words.plan_table(plan, event.day, turn.profile.volume_unit),
        "_base": standing.id if standing is not None else 0,
    })  # fmt: skip


def answered(turn: Turn, coach: Person, question: OpenQuestion) -> None:
    answers, do = question.answers, question.answers["do"]
    profile = own_athlete(turn.session, coach, question.about)
    event = (
        event_ahead(turn.session, profile.person_id, answers["_event"])
        if profile is not None
        else None
    )
    if profile is None or event is None:
        say_to(turn, coach, event_words.not_there())
        return
    standing = plan_row(turn.session, event)
    if (standing.id if standing is not None else 0) != answers["_base"]:
        say_to(turn, coach, event_words.not_there())
    elif do == USUAL:
        open_draft(turn, coach, profile, event)
    elif do == USE:
        plan = PeakPlan(tuple(DayTarget(**day) for day in answers["_days"]))
        use_plan(Prep(turn, coach, profile, event), Version(plan, BRIDGE))
    else:
        say_to(turn, coach, cancelled())
