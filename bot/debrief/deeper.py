"""The closer look at a week that is over, from rows to what the engine makes of them."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import timedelta

from sqlmodel import Session

from bot.core.chat.outbox import Button, Buttons
from bot.core.turn import OnAthlete
from bot.debrief import debrief, words, words_deeper
from bot.debrief.buttons import ASK_PLACING
from bot.debrief.flow import PLACING
from bot.debrief.past_week import BehindWeek, debrief_row
from bot.people.changes import Change
from bot.people.people import name_of
from bot.people.telling import say_to
from bot.store.tables.people import AthleteProfile
from bot.store.tables.week import EventRow
from bot.store.working_out import worked_out
from bot.week.cases import decision_of, stood, weeks_before
from bot.week.load import athlete_of, baseline_of, current_limits
from engine.planning.behind.hindsight import Helped, Moved, foreseen, rules_weighed
from engine.planning.behind.learning import Taught, taught
from engine.planning.behind.next_load import Ahead, ModelMisfit, NextLoad, NothingLearnt, next_load
from engine.planning.behind.next_time import next_time
from engine.values.athlete import Athlete, Baseline
from engine.values.case import PastWeek
from engine.values.checkin import Look
from engine.values.limits import Limits

DAY = timedelta(days=1)


def show(turn: OnAthlete) -> None:
    """The button under a debrief."""
    found = debrief.newest_asked(turn)
    if found is None:
        return
    self_coached = turn.self_coached
    name = name_of(turn.session, turn.profile.person_id)
    buttons: Buttons = ()
    if found.event.kind == "show":
        placing = Button(words_deeper.placing_button(), ASK_PLACING(turn.profile.person_id))
        buttons = [[placing]]
    text = _text(turn.session, turn.profile, found, words.head(
        name, found.event.kind, found.event.day, self_coached=self_coached
    ))  # fmt: skip
    say_to(turn, turn.person, text, buttons=buttons)


def ask_placing(turn: OnAthlete) -> None:
    """The button under the closer look at a show."""
    debrief.ask(turn, PLACING)


KEEPS_PLACING = debrief.Place("placing", Change.PLACING, words_deeper.placing_kept)


def _text(session: Session, profile: AthleteProfile, found: BehindWeek, title: str) -> str:
    event, row = found.event, debrief_row(session, found.event)
    athlete, baseline = athlete_of(profile), baseline_of(profile)
    weeks = _weeks(session, event)
    moved = [
        Moved(day.days_out, found.why[day.days_out], day.target.carb_g, day.set_g)
        for day in found.days
        if day.days_out in found.why and day.days_out > 0
    ]
    lessons, weighed, load = worked_out(
        session, _looked_back, athlete, baseline, weeks, moved, _limits(session, event, athlete)
    )
    three = next_time(
        found.debrief,
        Look(event.look) if event.look else None,
        lessons[-1].after if lessons else None,
        load,
        weighed,
    )
    decisions = [decision_of(row) for row in stood(session, event)]
    seen = words_deeper.foreseen_lines(foreseen(decisions, weeks[-1]), event.look)
    parts = [
        words_deeper.head(title),
        words_deeper.what_it_taught(lessons[-1] if lessons else None),
        seen,
        words_deeper.rules_lines(weighed),
        words_deeper.kept_lines(found.days, row.placing, row.coach_note),
        words_deeper.next_time(three),
        words_deeper.rests_on(),
    ]
    return "\n\n".join(part for part in parts if part)


def _weeks(session: Session, event: EventRow) -> tuple[PastWeek, ...]:
    """The weeks up to and with this one, oldest first."""
    return weeks_before(session, event.athlete_id, event.day + DAY)


def _limits(session: Session, event: EventRow, athlete: Athlete) -> Limits | None:
    try:
        return current_limits(session, event, athlete)
    except ValueError:  # the body mass on file allows them no more
        return None


def _looked_back(
    athlete: Athlete,
    baseline: Baseline,
    weeks: tuple[PastWeek, ...],
    moved: Sequence[Moved],
    limits: Limits | None,
) -> tuple[tuple[Taught, ...], tuple[Helped, ...], NextLoad | None]:
    """What the weeks taught, what each change was worth, and the load that they suggest."""
    try:
        load = next_load(athlete, baseline, weeks[-1].as_it_went, weeks, Ahead(limits))
    except (NothingLearnt, ModelMisfit):
        load = None
    return (taught(athlete, baseline, weeks), rules_weighed(athlete, baseline, weeks, moved), load)
