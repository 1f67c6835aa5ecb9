"""A bridge between two events is drafted, shown and used as any plan is."""

from __future__ import annotations

from bot.core.chat.cards import OfEvent
from bot.core.turn import OnAthlete
from bot.dialogue import asking
from bot.dialogue.flow import Answers
from bot.event import season
from bot.event import words as event_words
from bot.event.flow import BRIDGE_WEEK, USE, USUAL
from bot.event.season import named, show
from bot.people.telling import answer, say_to
from bot.plan import words as plan_words
from bot.plan.planning import has_measures, open_draft, use_plan
from bot.plan.prep import Prep, Version, plan_id
from bot.week.load import athlete_of, baseline_of, plan_days, plan_from
from bot.words.common import cancelled
from engine.planning.drafting.bridge import BRIDGE, bridge_plan


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
    asking.open_question(turn, turn.person, BRIDGE_WEEK, turn.profile.person_id, {
        "_event": event.id, "_said": event_words.short(event.kind, event.day),
        "_earlier": event_words.short(earlier.kind, earlier.day), "_between": between,
        "_days": plan_days(plan),
        "_table": plan_words.plan_table(plan, event.day, turn.profile.volume_unit),
        "_base": plan_id(turn.session, event),
    })  # fmt: skip


def answered(prep: Prep, answers: Answers) -> None:
    if plan_id(prep.turn.session, prep.event) != answers["_base"]:
        say_to(prep.turn, prep.coach, event_words.not_there())
    elif answers["do"] == USUAL:
        open_draft(prep.turn, prep.coach, prep.profile, prep.event)
    elif answers["do"] == USE:
        use_plan(prep, Version(plan_from(answers["_days"]), BRIDGE))
    else:
        say_to(prep.turn, prep.coach, cancelled())
