"""An athlete and a coach in the middle of things: invented people, set up through the use cases."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass, replace
from datetime import UTC, date, datetime, timedelta
from typing import Any, TypeVar

from sqlalchemy import Engine
from sqlmodel import select

from bot.core.turn import Turn
from bot.dialogue import asking
from bot.membership.onboarding import onboarding
from bot.people.people import get_profile
from bot.store.db import transaction
from bot.store.tables.people import AthleteProfile, Person
from bot.store.tables.traffic import OutboxRow
from bot.store.tables.week import EventRow, LimitsRow, PlanRow
from bot.week import prompts
from bot.week.load import Week, athlete_of, baseline_of, current_week, plan_days
from bot.words import languages
from engine.planning.drafting.draft import Asked, draft_plan
from engine.values.case import ForecastUse
from engine.values.limits import LIMIT_KEYS, Limits
from tests.support.images import Image, Written, as_written, fill, image_of
from tests.support.world import Said, Someone, World

ONBOARDING_ANSWERS = (
    "yes", "1996", "female", *["none of these"] * 3, "Europe/London", "06:30", "165", "61.2",
    "310 140 55 3.5",
)  # fmt: skip
LATER_ANSWERS = ("14", "25", "2300")  # body fat, fibre, sodium: asked when all that is answered

_Given = TypeVar("_Given")

AFTERNOON = datetime(2027, 5, 1, 15, 0, tzinfo=UTC)


@dataclass
class Team:
    world: World
    coach: Someone
    athlete: Someone
    athlete_id: int = 2
    event_day: date = date(2027, 5, 9)
    as_played: AsPlayed | None = None

    def profile(self) -> AthleteProfile:
        with self.world.session() as session:
            return get_profile(session, self.athlete_id)

    def week(self) -> Week:
        """The athlete's week as it stands: event, plan and limits."""
        with self.world.session() as session:
            found = current_week(session, get_profile(session, self.athlete_id))
            assert found is not None
            return found

    def open_step(self) -> str:
        """The step of what the athlete is asked last and has not answered; "" where nothing is open."""
        with self.world.session() as session:
            asked = asking.open_questions(session, session.get_one(Person, self.athlete_id))
            return asked[-1].step if asked else ""

    def answers(self, told: Mapping[str, str], *, typed: bool = False) -> list[Said]:
        """Answer what is asked until nothing is open: as told by step, tapped where a button says so
        (unless `typed`); what is not told by the first button. Returns what is said last.
        """
        said: list[Said] = []
        while step := self.open_step():
            buttons = list(self.athlete.all_said()[-1].buttons)
            answer = told.get(step, buttons[0] if buttons else "none")
            tapped = answer in buttons and not (typed and step in told)
            said = self.athlete.taps(answer) if tapped else self.athlete.writes(answer)
            assert self.open_step() != step, f"{step} is asked again after {answer}"
        return said

    def morning(self, days_out: int, *, hour: int = 6, minute: int = 0) -> None:
        """Let time pass to a morning of the week (UTC; London is an hour ahead in May)."""
        day = date.fromordinal(self.event_day.toordinal() - days_out)
        moment = datetime(day.year, day.month, day.day, hour, minute, tzinfo=UTC)
        played = self.as_played
        if played is None or not played.still_is(self.world):
            self.world.until(moment)
            return
        key = (*played.key, moment)
        if key in _passed:
            fill(self.world.engine, _passed[key])
            self.world.now = moment
        else:
            self.world.until(moment)
            _passed[key] = image_of(self.world.engine)

    def once(self, act: Callable[[Team], _Given]) -> _Given:
        """What `act`, a function of a module, gives: right after the team was copied it is played once,
        and copied after that, as are the days that pass then.
        """
        played, world = self.as_played, self.world
        if played is None or not played.still_is(world):
            return act(self)
        key = (*played.key, act)
        if key not in _acted:
            given = act(self)
            counted = (world.updates, self.coach.message_ids, self.athlete.message_ids)
            _acted[key] = (image_of(world.engine), dict(world.read_up_to), counted, given)
            return given
        image, read_up_to, counted, given = _acted[key]
        fill(world.engine, image)
        world.updates, self.coach.message_ids, self.athlete.message_ids = counted
        world.read_up_to.clear()
        world.read_up_to.update(read_up_to)
        copied: _Given = given
        return copied


@dataclass(frozen=True)
class AsPlayed:
    """What a team was copied from: while nothing has been done since, the time that passes next is
    played once as well.
    """

    key: tuple[object, ...]
    now: datetime
    updates: int
    written: Written

    @classmethod
    def of(cls, key: tuple[object, ...], world: World) -> AsPlayed | None:
        if world.photo_dir is not None:
            return None
        return cls(key, world.now, world.updates, as_written(world.engine))

    def still_is(self, world: World) -> bool:
        return (self.now, self.updates, None, self.written) == (
            world.now, world.updates, world.photo_dir, as_written(world.engine),
        )  # fmt: skip


def invited(engine: Engine, now: datetime = AFTERNOON) -> Team:
    """Ravi coaches; Mira has just taken up his invitation and is asked the first question."""
    world = World(engine, now)
    team = Team(world, Someone(world, 101, "Ravi"), Someone(world, 102, "Mira"))
    with transaction(engine) as session:
        for someone in (team.coach, team.athlete):
            session.add(
                Person(
                    telegram_user_id=someone.user_id,
                    chat_id=someone.user_id,
                    first_name=someone.name,
                    is_coach=someone is team.coach,
                    created_at=now,
                )
            )
            session.flush()
        athlete = session.get_one(Person, team.athlete_id)
        onboarding.begin(Turn(session, world.context), athlete, 1)
    return team


def onboarded(
    engine: Engine,
    answers: tuple[str, ...] = ONBOARDING_ANSWERS,
    *,
    now: datetime = AFTERNOON,
    later: tuple[str, ...] = LATER_ANSWERS,
) -> Team:
    """Mira has answered the first questions: once for a test run, and copied after that."""
    return played_once(
        (answers, now, later), engine, lambda: _asked_everything(engine, answers, now, later)
    )


_played: dict[tuple[object, ...], tuple[Image, Team]] = {}
#: By the key of what was played and what was done right after: the database, what had been read, what
#: had been counted, and what was given back.
_acted: dict[tuple[object, ...], tuple[Image, dict[int, int], tuple[int, int, int], Any]] = {}
#: By the key of what was played and the moment up to which time has passed since.
_passed: dict[tuple[object, ...], Image] = {}


def played_once(what: tuple[object, ...], engine: Engine, play: Callable[[], Team]) -> Team:
    """What is played, copied where it was played before on a database of that kind."""
    key = (*what, engine.dialect.name, languages.CATALOGUES)
    if key not in _played:
        team = play()
        _played[key] = (image_of(engine), _as_it_stands(team, engine))
        return team
    image, stood = _played[key]
    fill(engine, image)
    team = _as_it_stands(stood, engine)
    team.as_played = AsPlayed.of(key, team.world)
    return team


def gone_on(team: Team, play: Callable[[Team], object]) -> Team:
    """The team after `play`, which is played once from there on and copied after that.

    `play` is a function of a module, and whoever gives it always begins with the same team.
    """

    def played() -> Team:
        play(team)
        return team

    return played_once((play, team.world.now), team.world.engine, played)


def _as_it_stands(team: Team, engine: Engine) -> Team:
    """A team of its own, whatever becomes of that one."""
    world = replace(team.world, engine=engine, read_up_to=dict(team.world.read_up_to))
    coach, athlete = (replace(one, world=world) for one in (team.coach, team.athlete))
    return replace(team, world=world, coach=coach, athlete=athlete)


def _asked_everything(
    engine: Engine, answers: tuple[str, ...], now: datetime, later: tuple[str, ...]
) -> Team:
    team = invited(engine, now)
    for answer in answers:
        team.athlete.writes(answer)
    if team.profile().baseline:
        team.athlete.presses("more:ask")
        for answer in later:
            team.athlete.writes(answer)
    team.coach.hears()
    return team


def in_peak_week(
    engine: Engine,
    *,
    now: datetime = AFTERNOON,
    days_ahead: int = 8,
    foresight: bool = False,
    later: tuple[str, ...] = LATER_ANSWERS,
) -> Team:
    """Event, plan and limits are set, on the afternoon of eight days out; the forecast is off."""
    what = (now, days_ahead, foresight, later)
    return played_once(what, engine, lambda: _planned(engine, *what))


def _planned(
    engine: Engine, now: datetime, days_ahead: int, foresight: bool, later: tuple[str, ...]
) -> Team:
    team = onboarded(engine, now=now, later=later)
    team.event_day = now.date() + timedelta(days=days_ahead)
    with transaction(engine) as session:
        profile = get_profile(session, team.athlete_id)
        profile.forecast = ForecastUse.PROPOSES if foresight else ForecastUse.RULES_ONLY
        session.add(profile)
        event = EventRow(
            athlete_id=team.athlete_id, kind="show", day=team.event_day, zone="Europe/London",
            set_by=1, set_at=team.world.now,
        )  # fmt: skip
        session.add(event)
        session.flush()
        assert event.id is not None
        athlete, baseline = athlete_of(profile), baseline_of(profile)
        plan = draft_plan(athlete, baseline, Asked(shape="even"))
        limits = Limits.suggested(athlete, plan, baseline)
        session.add(
            PlanRow(event_id=event.id, shape="even", days=plan_days(plan), set_by=1,
                    set_at=team.world.now)
        )  # fmt: skip
        session.add(
            LimitsRow(event_id=event.id, bounds={k: getattr(limits, k) for k in LIMIT_KEYS},
                      set_by=1, set_at=team.world.now)
        )  # fmt: skip
        session.flush()
        prompts.schedule(Turn(session, team.world.context), profile)
    return team


def replacing(coach: Someone, said: list[Said]) -> list[Said]:
    """The new event takes the place of the one ahead, where that is asked."""
    offered = [label for label in said[-1].buttons if label.startswith("It replaces")]
    return coach.taps(offered[0]) if offered else said


def arrive(team: Team) -> None:
    """What has been said so far has reached its chats."""
    with transaction(team.world.engine) as session:
        for row in session.exec(select(OutboxRow).where(OutboxRow.status == "waiting")):
            row.status, row.message_id = "sent", row.id
            session.add(row)


def arrive_and_read(team: Team) -> None:
    """The same, and athlete and coach have read it."""
    arrive(team)
    team.athlete.hears()
    team.coach.hears()
