"""Every command, button, card view, question and file by every role: allowed or refused, as listed.

The lists of what there is come from the dispatcher itself, so a new handler without a row here fails.
A refusal tells nothing: it reads the same for what exists and for what does not.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator
from contextlib import contextmanager
from dataclasses import dataclass, replace
from datetime import UTC, datetime, timedelta
from pathlib import Path
from typing import Any
from weakref import WeakKeyDictionary

import pytest
from sqlalchemy import Engine, bindparam
from sqlmodel import Session, SQLModel, col, func, select

from bot.core.chat.routes import ANYONE_KNOWN, FORMER
from bot.core.turn import ChatTurn, Incoming, Kind, SentFile, Turn
from bot.dispatcher import COMMANDS, TAPS, USE_CASES, roles_of
from bot.features import FLOWS, ON_CARD
from bot.store.db import transaction
from bot.store.tables import metadata
from bot.store.tables.coach import Rights, SecondCoach
from bot.store.tables.people import AthleteProfile, AthleteStatus, Invite, OpenQuestion, Person
from bot.store.tables.traffic import AgendaRow, OutboxRow
from bot.store.tables.week import AlertRow, CheckInRow, DecisionRow
from bot.words import common
from tests.support.many import Alike, many_athletes
from tests.support.weeks import Team, as_written, gone_on

STRANGER = "a stranger"
ATHLETE = "the athlete"
OTHER_ATHLETE = "another coach's athlete"
OTHER_COACH = "another coach"
ALERTS_ONLY = "a second coach with alerts only"
SECOND = "a second coach with full rights"
CONTACT = "the second contact"
COACH = "the coach"

EVERYBODY = (
    STRANGER, ATHLETE, OTHER_ATHLETE, OTHER_COACH, ALERTS_ONLY, SECOND, CONTACT, COACH,
)  # fmt: skip
CHATS = {
    STRANGER: 190, ATHLETE: 102, OTHER_ATHLETE: 5000, OTHER_COACH: 150, ALERTS_ONLY: 160,
    SECOND: 170, CONTACT: 180, COACH: 101,
}  # fmt: skip
KNOWN = set(EVERYBODY) - {STRANGER}
ATHLETES = {ATHLETE, OTHER_ATHLETE}
COACHES = {COACH, OTHER_COACH}
COACHING = COACHES | {SECOND}
TOLD_OF_ALERTS = COACHING | {ALERTS_ONLY, CONTACT}

# Who may send each command at all; whose athletes it then shows is held by the tests below.
MAY_SEND: dict[str, set[str]] = {
    "checkin": ATHLETES, "today": ATHLETES, "week": ATHLETES, "chart": ATHLETES, "picture": ATHLETES,
    "why": ATHLETES, "past": ATHLETES, "weeks": ATHLETES, "season": ATHLETES,
    "photos": ATHLETES, "settings": ATHLETES,
    "pause": ATHLETES, "resume": ATHLETES, "delete_my_data": KNOWN,
    "leave": ATHLETES, "write": ATHLETES,
    "food": ATHLETES, "travel": ATHLETES,
    "stage": ATHLETES | COACHING, "late": ATHLETES | COACHING,
    "early": ATHLETES | COACHING, "calendar": ATHLETES | COACHES,
    "files": ATHLETES | COACHING, "mydata": KNOWN, "numbers": COACHES,
    "ready": ATHLETES | COACHES,
    "compare": ATHLETES | COACHING,
    "roster": COACHING, "digest": COACHING,
    "alerts": TOLD_OF_ALERTS,
    "templates": COACHING, "setup": COACHING,
    "invite": COACHES, "contact": COACHES, "selfcoach": COACHES,
    "help": KNOWN, "start": KNOWN, "language": KNOWN,
}  # fmt: skip

# A button of each kind about Mira, her alert or decision; what it becomes for one that is not
# there; and who may press it. None: it names nobody.
MAY_PRESS: dict[str, tuple[str, str | None, set[str]]] = {
    "c": ("c:card:2", "c:card:9999", {COACH, SECOND}),
    "c:roster": ("c:roster:0", None, COACHING),
    "alert": ("alert:ack:1", "alert:ack:9999", {COACH, SECOND, ALERTS_ONLY, CONTACT}),
    "sign": ("sign:approve:1", "sign:approve:9999", {COACH, SECOND}),
    "m": ("m:approve:1", "m:approve:9999", {COACH, SECOND}),
    "m:several": ("m:several:flat:1", None, set()),  # nothing alike waits
    "desk": ("desk:quiet", None, COACHING),
    "su:one": ("su:one:2", "su:one:9999", {COACH, SECOND}),
    "su:sheet": ("su:sheet:xlsx", None, COACHING),
    "tpl": ("tpl:del-yes:1", "tpl:del-yes:9999", set()),  # there is no template yet
    "contact:remove": ("contact:remove", None, COACHES),
    "reply": ("reply:1", None, ATHLETES),
    "lang": ("lang:en", None, KNOWN),
    "more:ask": ("more:ask", None, set()),  # both have answered all of it
    "k": ("k:change:1", "k:change:9999", {ATHLETE}),
    "set": ("set:prompt_time", None, ATHLETES),
    "leave": ("leave:no", None, ATHLETES),
    "gone": ("gone:no", None, KNOWN),
    "f": ("f:list", None, ATHLETES),
    "f:swap": ("f:swap:1", "f:swap:9999", set()),  # the list of foods is empty
    "f:lock": ("f:lock:1", "f:lock:9999", set()),
    "f:ate": ("f:ate:07:00", "f:ate:03:33", set()),
    "f:missed": ("f:missed:07:00", "f:missed:03:33", set()),
    "f:food": ("f:food:1", "f:food:9999", set()),
    "f:mark": ("f:mark:1:well", "f:mark:9999:well", set()),
    "f:off": ("f:off:1", "f:off:9999", set()),
    "f:take": ("f:take:no-such-food", None, set()),
    "st": ("st:day:2", "st:day:9999", {ATHLETE, COACH, SECOND}),
    "st:late": ("st:late:2:30", "st:late:9999:30", {ATHLETE, COACH, SECOND}),
    "st:told": ("st:told:2:0:1500", "st:told:9999:0:1500", {ATHLETE, COACH, SECOND}),
    "st:top": ("st:top:2:1:25", "st:top:9999:1:25", set()),  # no look was asked
    "cal": ("cal:get:2", "cal:get:9999", {ATHLETE, COACH}),
    "rd": ("rd:ask:2", "rd:ask:9999", {COACH}),
    "fl": ("fl:own:xlsx", None, ATHLETES | COACHING),
    "nb": ("nb:xlsx", None, COACHES),
    "look": ("look:1:flat", "look:9999:flat", {COACH}),
    "wks": ("wks:carbs:1.2", None, ATHLETES),
    "ph": ("ph:drop:1", "ph:drop:9999", set()),  # there is no picture yet
    "ph:see": ("ph:see:2027-05-06", None, ATHLETES),
    "ph:wipe": ("ph:wipe", None, ATHLETES),
    "ph:wipe-yes": ("ph:wipe-yes", None, ATHLETES),
    "ph:wipe-no": ("ph:wipe-no", None, ATHLETES),
    "ph:cmp": ("ph:cmp", None, ATHLETES),
}
# Their buttons name something of the presser's own, which they may press and which is not there.
NOTHING_THERE = {
    "more:ask": ATHLETES, "tpl": COACHING, "ph": ATHLETES, "m:several": COACHING, "f:take": ATHLETES,
    "st:top": ATHLETES | COACHING,
    **dict.fromkeys(
        ("f:swap", "f:lock", "f:ate", "f:missed", "f:food", "f:mark", "f:off"), ATHLETES
    ),
}  # fmt: skip

# What a finished question is about, and so who may finish it. "own": the one who was asked.
ABOUT: dict[str, str] = {
    "onboarding": "own", "checkin": "own", "symptom-check": "own",
    "something-wrong": "own", "unwell": "own", "measures": "own",
    "set-prompt_time": "own", "set-place": "own", "set-weight_unit": "own",
    "set-volume_unit": "own", "reply-to-coach": "own", "change-coach": "own",
    "coach-several": "own", "coach-digest": "own", "coach-zone": "own", "coach-quiet": "own",
    "coach-event": "athlete", "coach-draft": "athlete", "coach-plan-number": "athlete",
    "coach-template-name": "athlete", "coach-template-use": "athlete", "coach-sheet": "athlete",
    "coach-limit": "athlete", "coach-day": "athlete", "coach-hold": "athlete",
    "coach-second": "athlete", "coach-history-day": "athlete", "coach-message": "athlete",
    "coach-figure": "decision",
    "food-add": "own", "food-label": "own", "food-ate": "own", "food-times": "own",
    "travel": "own", "after-show": "own", "debrief-word": "own", "debrief-note": "athlete",
    "debrief-placing": "athlete",
    "stage": "athlete", "stage-look": "own",
    "coach-food-suggest": "athlete", "coach-food-fix": "athlete",
    "ready-health": "own", "later-questions": "own",
    "coach-ready": "athlete", "coach-ready-anyway": "athlete",
    "coach-plan-review": "athlete", "coach-plan-total": "athlete",
    "coach-what-if": "athlete",
    "coach-next-load": "athlete", "coach-plan-fit": "athlete", "coach-bridge": "athlete",
    "coach-pass-on": "athlete", "coach-setup": "athlete", "coach-setup-sure": "own",
    "coach-past-weeks": "athlete", "coach-target-look": "athlete", "coach-weigh-in": "athlete",
}  # fmt: skip

FILES: dict[str, tuple[SentFile, set[str]]] = {
    "picture": (SentFile(file_id="f1", mime="image/jpeg", size=9, as_photo=True), ATHLETES),
    "sheet": (SentFile(file_id="f2", name="plan.xlsx", size=9), COACHING),
}


@dataclass(frozen=True)
class Came:
    """What came back to the one who did it, and to anybody; and whether anything was changed."""

    to_them: list[str]
    answers: list[str]
    to_others: list[str]
    changed: bool

    @property
    def everything(self) -> str:
        return "\n".join([*self.to_them, *self.answers])


class _BackOutError(Exception):
    pass


@pytest.fixture
def team(team_at: Callable[[datetime], Team]) -> Team:
    """Two days out: Mira's morning waits for a word, an alert of hers is open, all roles are there."""
    return gone_on(team_at(datetime(2027, 5, 7, 6, 0, tzinfo=UTC)), all_roles_come)


def all_roles_come(team: Team) -> None:
    now = team.world.now
    with transaction(team.world.engine) as session:
        people = {}
        for role in (OTHER_COACH, ALERTS_ONLY, SECOND, CONTACT):
            person = Person(
                telegram_user_id=CHATS[role], chat_id=CHATS[role], first_name=f"P{CHATS[role]}",
                is_coach=role == OTHER_COACH, created_at=now,
            )  # fmt: skip
            session.add(person)
            session.flush()
            people[role] = person
        many_athletes(
            session,
            people[OTHER_COACH].id or 0,
            1,
            now,
            Alike(answered=False, zones=("Europe/London",)),
        )
        coach = session.get_one(Person, 1)
        coach.second_contact_id = people[CONTACT].id
        session.add(coach)
        for role, rights in ((ALERTS_ONLY, Rights.ALERTS), (SECOND, Rights.FULL)):
            session.add(
                SecondCoach(
                    coach_id=1, person_id=people[role].id or 0, athlete_id=2, rights=rights,
                    given_at=now, until_day=now.date(), until_at=now + timedelta(days=2),
                )
            )  # fmt: skip
    team.athlete.writes("61.0 1 3.5 5 on target fine")
    with transaction(team.world.engine) as session:
        session.add(
            AlertRow(
                id=1, athlete_id=2, coach_id=1, flag="pulse-high", level="caution",
                facts={"pulse": 108.0}, date=now.date(), opened_at=now, second_contact_at=now,
            )
        )  # fmt: skip
    everybody_is_met(team)


def everybody_is_met(team: Team) -> None:
    """Each has written once, so that nothing they do later begins with setting their menu."""
    with team.world.session() as session:
        names = {person.chat_id: person.first_name for person in session.exec(select(Person))}
    for chat, name in names.items():
        team.world.happen(
            Incoming(
                update_id=98_000 + chat, chat_id=chat, private=True, user_id=chat, first_name=name,
                language="en", kind=Kind.TEXT, text="/help", message_id=1, tap_id=None,
                sent_at=team.world.now,
            )
        )  # fmt: skip


@contextmanager
def backed_out(team: Team) -> Iterator[Session]:
    """A transaction of which nothing stays."""
    try:
        with transaction(team.world.engine) as session:
            yield session
            raise _BackOutError  # noqa: TRY301 - it is how a transaction is left without a trace
    except _BackOutError:
        pass


def everything_kept(session: Session) -> dict[str, list[Any]]:
    """All rows but what any message leaves: the queues, and when somebody was last met."""
    session.flush()
    skipped = {"inbox", "outbox", "person", "coach_desk"}
    # As the file has them: read a hundred times a test, and only ever compared.
    raw = session.connection().connection.driver_connection
    assert raw is not None
    return {
        name: raw.execute(f'SELECT * FROM "{name}"').fetchall()
        for name in metadata.tables
        if name not in skipped
    }


#: By its engine, what a database held and when its files were last written.
_KEPT: WeakKeyDictionary[Engine, tuple[object, dict[str, list[Any]]]] = WeakKeyDictionary()


def kept_before(team: Team, session: Session) -> dict[str, list[Any]]:
    """The same before anything is done: read once, as long as nothing is committed."""
    engine = team.world.engine
    state = as_written(engine)
    if engine not in _KEPT or _KEPT[engine][0] != state:
        _KEPT[engine] = (state, everything_kept(session))
    return _KEPT[engine][1]


# Made once, since everybody does everything.
_LAST_SAID = select(func.max(OutboxRow.id))
_SAID_SINCE = (
    select(OutboxRow)
    .where(col(OutboxRow.id) > bindparam("last"), OutboxRow.method != "setMyCommands")
    .order_by(col(OutboxRow.id))
)


def does(team: Team, role: str, kind: Kind, text: str, file: SentFile | None = None) -> Came:
    chat = CHATS[role]
    with backed_out(team) as session:
        before = kept_before(team, session)
        last = session.exec(_LAST_SAID).one() or 0
        USE_CASES.incoming(
            ChatTurn(
                session,
                replace(team.world.context, photo_dir=Path("pictures")),
                Incoming(
                    update_id=99_000, chat_id=chat, private=True, user_id=chat, first_name="X",
                    language="en", kind=kind, text=text, message_id=1,
                    tap_id="tap" if kind is Kind.TAP else None, sent_at=team.world.now, file=file,
                ),
            )
        )  # fmt: skip
        rows = session.exec(_SAID_SINCE, params={"last": last}).all()
        mine = [row for row in rows if row.chat_id == chat]
        taps = [row for row in mine if row.method == "answerCallbackQuery"]
        return Came(
            to_them=[row.payload.get("text", row.method) for row in mine if row not in taps],
            answers=[row.payload.get("text", "") for row in taps],
            to_others=[row.method for row in rows if row.chat_id != chat],
            changed=everything_kept(session) != before,
        )
    raise AssertionError("unreachable")


def holds_nothing_of_mira(came: Came) -> bool:
    return (
        not came.changed
        and not came.to_others
        and not {"Mira", "550", "61.0"}
        & set(came.everything.replace("'", " ").replace(",", " ").split())
    )


def test_every_handler_has_its_row() -> None:
    assert set(MAY_SEND) == set(COMMANDS)
    assert set(MAY_PRESS) == set(TAPS)
    assert set(ABOUT) == set(FLOWS)
    roles = {role for command in COMMANDS.values() for role in command.roles}
    roles |= {role for tap in TAPS.values() for role in tap.roles}
    assert roles <= ANYONE_KNOWN | FORMER
    # Who is nothing here any more gets at what is kept of them, and at nothing else.
    of_former = {name for name, command in COMMANDS.items() if command.roles & FORMER}
    assert of_former == {"mydata", "delete_my_data"}


@pytest.mark.parametrize("role", EVERYBODY)
def test_a_command_does_its_work_for_whom_it_is_and_does_not_exist_for_others(
    team: Team, role: str
) -> None:
    unknown = does(team, role, Kind.TEXT, "/no-such-command")
    assert unknown.to_them == [common.stranger() if role == STRANGER else common.not_for_you()]
    for name, allowed in MAY_SEND.items():
        came = does(team, role, Kind.TEXT, f"/{name}")
        if role in allowed:
            assert came.to_them != unknown.to_them, name
            assert came.to_them, name
        else:
            assert came == unknown, name


@pytest.mark.parametrize("role", EVERYBODY)
def test_a_button_works_for_whom_it_is_and_tells_others_nothing(team: Team, role: str) -> None:
    other = does(team, role, Kind.TAP, "no-such-button")
    for prefix, (data, absent, allowed) in MAY_PRESS.items():
        came = does(team, role, Kind.TAP, data)
        assert came.answers, prefix  # the spinner stops for everybody
        if role in allowed:
            assert came.to_them, prefix
            assert came.answers[0] not in (common.not_your_button(), common.not_your_athlete())
            continue
        assert holds_nothing_of_mira(came), prefix
        if absent is not None:
            assert came == does(team, role, Kind.TAP, absent), prefix
        if role not in NOTHING_THERE.get(prefix, set()):
            by_role = TAPS[prefix].roles & _roles(team, role)
            assert by_role or came == other, prefix


def _roles(team: Team, role: str) -> frozenset[str]:
    with team.world.session() as session:
        person = session.exec(select(Person).where(Person.chat_id == CHATS[role])).first()
        return roles_of(session, person) if person is not None else frozenset()


@pytest.mark.parametrize("role", EVERYBODY)
def test_a_cards_button_is_the_coachs_and_of_a_second_coach_with_full_rights(
    team: Team, role: str
) -> None:
    unknown = does(team, role, Kind.TAP, "c:no-such-view:2")
    for view, one in ON_CARD.items():
        came = does(team, role, Kind.TAP, f"c:{view}:2:1:carb_g")
        allowed = {COACH} if one.first_coach_only else {COACH, SECOND}
        if role in allowed:
            assert came.answers, view
            refusals = (common.not_your_button(), common.not_your_athlete())
            assert came.answers[0] not in refusals, view
            assert came.to_them or came.changed or came.answers[0], view
            continue
        assert holds_nothing_of_mira(came), view
        assert came == does(team, role, Kind.TAP, f"c:{view}:9999:1:carb_g"), view
        assert came == unknown, view


@pytest.mark.parametrize("role", EVERYBODY)
def test_a_question_takes_an_answer_from_nobody_but_the_one_who_was_asked(
    team: Team, role: str
) -> None:
    for flow_id, registered in FLOWS.items():
        asked = OTHER_COACH if role == COACH else COACH
        with backed_out(team) as session:
            query = select(Person.id).where(Person.chat_id == CHATS[asked])
            owner = session.exec(query).one() or 0
            step = registered.flow.steps[0].key
        with transaction(team.world.engine) as session:
            question = OpenQuestion(
                person_id=owner, flow=flow_id, subject_id=2, step=step,
                asked_at=team.world.now,
            )  # fmt: skip
            session.add(question)
            session.flush()
            number = question.id
        came = does(team, role, Kind.TAP, f"q:{number}:{step}:yes")
        assert holds_nothing_of_mira(came), flow_id
        assert came == does(team, role, Kind.TAP, f"q:99999:{step}:yes"), flow_id
        with transaction(team.world.engine) as session:
            session.delete(session.get_one(OpenQuestion, number))


SAMPLE = {
    "take": True, "use": True, "sure": True, "day": "2027-05-08", "_day": "2027-05-08",
    "_field": "carb_g", "_key": "step_g", "_days_out": 1, "value": 20.0,
    "_readiness": 1, "_event": 1, "text": "less rice", "fullness": 8, "sharpness": 4, "gut": "fine",
    "do": "usual", "look": "usual", "cap": "none",
}  # fmt: skip


@pytest.mark.parametrize("role", [OTHER_COACH, ALERTS_ONLY, CONTACT, OTHER_ATHLETE])
def test_an_answer_about_an_athlete_counts_only_while_the_right_to_it_is_there(
    team: Team, role: str
) -> None:
    """The question was theirs once; whoever answers it after that changes and reads nothing."""
    for flow_id in (one for one, about in ABOUT.items() if about != "own"):
        with backed_out(team) as session:
            person = session.exec(select(Person).where(Person.chat_id == CHATS[role])).one()
            decision = session.exec(select(DecisionRow).where(DecisionRow.athlete_id == 2)).one()
            last = session.exec(_LAST_SAID).one() or 0
            before = everything_kept(session)
            question = OpenQuestion(
                person_id=person.id or 0, flow=flow_id, answers=dict(SAMPLE),
                subject_id=2 if ABOUT[flow_id] == "athlete" else decision.id,
                asked_at=team.world.now, closed_at=team.world.now,
            )  # fmt: skip
            FLOWS[flow_id].finish(Turn(session, team.world.context), person, question)
            assert everything_kept(session) == before, flow_id
            said = session.exec(_SAID_SINCE, params={"last": last}).all()
            assert {row.chat_id for row in said} <= {CHATS[role]}, flow_id
            assert not [row for row in said if "Mira" in row.payload.get("text", "")], flow_id


def test_a_file_is_fetched_only_from_whom_it_can_be_wanted(team: Team) -> None:
    for role in EVERYBODY:
        for file, allowed in FILES.values():
            came = does(team, role, Kind.FILE, "", file)
            # An athlete's file of a kind that nobody wants of them is told to their coach instead.
            told = role in ATHLETES and "that it came" in came.everything
            assert came.changed == (role in allowed or told), role
            if role == STRANGER:
                assert came.to_them == [common.stranger()]


@pytest.mark.parametrize("role", [OTHER_COACH, ALERTS_ONLY, CONTACT, OTHER_ATHLETE, STRANGER])
def test_no_list_of_anybody_elses_shows_the_athlete_but_open_alerts(team: Team, role: str) -> None:
    for name in COMMANDS:
        said = does(team, role, Kind.TEXT, f"/{name}").everything
        may_read = name == "alerts" and role in (ALERTS_ONLY, CONTACT)
        assert ("Mira" in said) == may_read, name


def test_a_code_that_was_used_and_one_that_never_was_tell_a_stranger_nothing_of_anybody(
    team: Team,
) -> None:
    for code in ("AAAA-AAAA-AAAA-AAAA", "0"):
        said = does(team, STRANGER, Kind.TEXT, f"/join {code}")
        assert "Mira" not in said.everything
        assert "Ravi" not in said.everything


def test_the_roles_of_this_test_are_what_they_are_called(team: Team) -> None:
    with team.world.session() as session:
        profile = session.get_one(AthleteProfile, 2)
        assert profile.status == AthleteStatus.ACTIVE
        assert session.exec(select(DecisionRow)).first() is not None
        assert session.exec(select(CheckInRow)).first() is not None
        assert session.exec(select(Invite)).first() is None
        assert session.exec(select(AgendaRow)).first() is not None
    assert issubclass(SecondCoach, SQLModel)
    assert [_roles(team, role) for role in EVERYBODY] == [
        frozenset(), {"athlete"}, {"athlete"}, {"coach"}, {"second-alerts"}, {"second"},
        {"contact"}, {"coach"},
    ]  # fmt: skip
