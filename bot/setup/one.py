"""One athlete set up from a template or a draft: event, plan, limits and times in a few taps."""

from __future__ import annotations

from datetime import date

from bot.core.turn import OnAthlete, Turn
from bot.dialogue import asking
from bot.dialogue.flow import Answers
from bot.event.flow import INSTEAD
from bot.people.people import local_date, name_of
from bot.people.telling import answer, say_to
from bot.plan.planning import has_measures
from bot.plan.templates.templates import templates_of
from bot.setup import agreeing, words
from bot.setup.agreeing import foresee_all, offer_room, show_one_and_ask
from bot.setup.flow import SETUP
from bot.setup.foreseen import Wanted
from bot.store.tables.people import AthleteProfile, Person
from bot.week.load import events_ahead


def from_card(turn: OnAthlete) -> None:
    """Buttons "c:setup:ATHLETE"."""
    answer(turn)
    begin(turn, turn.person, turn.profile)


def begin(turn: Turn, coach: Person, profile: AthleteProfile) -> None:
    """Ask which plan, then when; the rest is shown before it counts."""
    if not has_measures(turn, coach, profile):
        return
    today = local_date(profile, turn.context)
    ahead = [row for row in events_ahead(turn.session, profile.person_id) if row.day >= today]
    asking.open_question(turn, coach, SETUP, profile.person_id, {
        "_name": name_of(turn.session, profile.person_id),
        "_own": coach.id == profile.person_id,
        "_zone": profile.zone,
        "_templates": [[row.id, row.name] for row in templates_of(turn.session, coach)],
        "_ahead": [[row.id, row.kind, row.day.isoformat()] for row in ahead],
        "_near": any(row.kind != "trial" for row in ahead),
    })  # fmt: skip


def given(turn: Turn, coach: Person, profile: AthleteProfile, answers: Answers) -> None:
    """Everything that follows from the answers is shown; nothing is changed yet."""
    (seen,) = foresee_all(turn, coach, [_wanted(turn, coach, profile, answers)])
    if not seen.troubles:
        show_one_and_ask(turn, coach, seen)
    elif not offer_room(turn, coach, seen):
        lines = [what for _, _, what in agreeing.troubles(seen)]
        say_to(turn, coach, words.cannot(seen.name, lines))
        begin(turn, coach, profile)


def _wanted(turn: Turn, coach: Person, profile: AthleteProfile, answers: Answers) -> Wanted:
    when, stands = answers["when"], answers.get("stands", "")
    number = int(stands.removeprefix(INSTEAD)) if stands.startswith(INSTEAD) else 0
    kind = when["kind"] or _kind_of(turn, coach, answers["plan"]) or "show"
    same_day = [
        row for row in events_ahead(turn.session, profile.person_id)
        if row.day == date.fromisoformat(when["day"])
    ]  # fmt: skip
    if same_day and not when["kind"]:
        kind = same_day[0].kind
    return Wanted(
        athlete_id=profile.person_id, event_id=number, kind=kind, day=when["day"],
        zone=when["zone"], stage=when["stage"], plan=answers["plan"],
    )  # fmt: skip


def _kind_of(turn: Turn, coach: Person, plan: str) -> str:
    """What kind of event a template was saved off; a trial's serves a show as well."""
    for row in templates_of(turn.session, coach):
        if plan == f"template:{row.id}":
            kind = str(row.habits.get("kind", ""))
            return "" if kind == "trial" else kind
    return ""
