"""Another coach beside the first for a stage weekend, and the end of a coaching."""

from __future__ import annotations

import re
from collections.abc import Callable
from datetime import UTC, datetime

import pytest
from sqlmodel import select

from bot.core.turn import Kind
from bot.people.people import get_profile
from bot.store.db import transaction
from bot.store.tables.people import AthleteStatus, HistoryRow, Person
from bot.store.tables.week import DecisionRow, DecisionStatus
from bot.week.load import day_set
from tests.support.many import Alike, many_athletes
from tests.support.weeks import Team
from tests.support.world import Said, Someone, text_of

FLAT = "61.0 1 3.5 5 on target fine"


@pytest.fixture
def team(team_at: Callable[[datetime], Team]) -> Team:
    """Two days out, Friday 7 May, at seven in London."""
    return team_at(datetime(2027, 5, 7, 6, 0, tzinfo=UTC))


def invitation(
    team: Team, whom: str = "Only Mira", rights: str = "Everything", until: str = "9 May"
) -> str:
    team.coach.presses("c:second-ask:2")
    team.coach.taps(whom)
    team.coach.taps(rights)
    code = re.search(r"/join (\S+)", text_of(team.coach.writes(until)))
    assert code is not None
    return code[1]


def second(team: Team, rights: str = "Everything", whom: str = "Only Mira") -> Someone:
    noa = Someone(team.world, 150, "Noa")
    noa.writes(f"/join {invitation(team, whom, rights)}")
    team.coach.hears()
    team.athlete.hears()
    return noa


def new_messages(said: list[Said]) -> list[Said]:
    return [one for one in said if one.method == "sendMessage"]


def test_all_three_are_told_who_stands_in_with_what_rights_until_when(team: Team) -> None:
    noa = Someone(team.world, 150, "Noa")
    code = invitation(team)
    team.athlete.hears()
    said = text_of(noa.writes(f"/join {code}"))
    assert "You are second coach for Mira until Sun 9 May, with Ravi" in said
    assert "not a medical device" in said
    assert "Noa is now second coach for Mira (everything) until Sun 9 May" in text_of(
        team.coach.hears()
    )
    told = text_of(team.athlete.hears())
    assert "Noa is your second coach, with Ravi, until Sun 9 May" in told
    assert "may set your days" in told
    assert "Noa joined as second coach (everything)" in text_of(team.coach.presses("c:history:2"))


def test_with_full_rights_the_roster_the_card_and_a_figure_by_hand_are_theirs_too(
    team: Team,
) -> None:
    noa = second(team)
    assert "Mira, 2 days out" in text_of(noa.writes("/roster"))
    assert "Mira" in text_of(noa.presses("c:card:2"))
    noa.presses("c:hand:2:1")
    noa.writes("480")
    assert "Saturday 8 May" in text_of(team.athlete.hears())
    assert "Noa: set Sat 8 May by hand to 480 g" in text_of(team.coach.presses("c:history:2"))


def test_the_relation_itself_stays_the_first_coachs(team: Team) -> None:
    noa = second(team)
    card = noa.presses("c:card:2")[-1]
    assert not {"Second coach", "End the coaching"} & set(card.buttons)
    (page,) = noa.taps("Person …", card)
    assert not {"Second coach", "End the coaching"} & set(page.buttons)
    for view in ("second", "second-ask", "second-end:2:1", "end", "end-yes"):
        noa.presses(f"c:{view.split(':')[0]}:2:1")
        assert "not on your roster" in noa.answers_to_taps()[-1]
    assert team.profile().coach_id == 1


def test_a_sign_off_goes_to_both_and_the_first_word_settles_it_for_both(team: Team) -> None:
    noa = second(team)
    team.athlete.writes(FLAT)
    (to_ravi,), (to_noa,) = new_messages(team.coach.hears()), new_messages(noa.hears())
    assert to_ravi.text == to_noa.text
    noa.taps("Approve 550 g", to_noa)
    for reader in (team.coach.hears(), noa.all_said()[-2:]):
        assert "Approved by Noa, Fri 7 May, 07:00" in text_of(reader)
    team.coach.taps("Keep the plan, 500 g", to_ravi)
    assert "Approved by Noa" in team.coach.answers_to_taps()[-1]
    with team.world.session() as session:
        (row,) = session.exec(select(DecisionRow)).all()
        standing = day_set(session, 2, row.sets_date)
    assert (row.status, row.signed_by) == (DecisionStatus.APPROVED, 3)
    assert standing is not None
    assert standing.carb_g == 550


def test_a_question_for_another_figure_closes_when_the_other_coach_was_first(team: Team) -> None:
    noa = second(team)
    team.athlete.writes(FLAT)
    noa.hears()
    noa.taps("Set another number")
    team.coach.taps("Approve 550 g")
    assert "For Mira:\n“520”" in text_of(noa.writes("520"))


def test_alerts_come_to_a_second_coach_at_once_and_either_can_acknowledge(team: Team) -> None:
    noa = second(team, "Alerts only")
    team.athlete.writes("I fainted")
    (told,) = new_messages(noa.hears())
    assert told.text.startswith("Warning: Mira")
    assert not told.silent
    team.world.later(minutes=5)
    assert len(new_messages(noa.hears())) == 1
    noa.taps("Acknowledge")
    assert "Noa has acknowledged the alert about Mira" in text_of(team.coach.hears())
    assert "Noa has seen this" in text_of(team.athlete.hears())
    team.world.later(hours=1)
    assert new_messages(noa.hears()) == []


def test_with_alerts_only_nothing_else_is_to_be_seen_or_done(team: Team) -> None:
    noa = second(team, "Alerts only")
    assert "don't know that command" in text_of(noa.writes("/roster"))
    for data in ("c:card:2", "c:hand:2:1", "c:roster:0", "sign:approve:1", "c:lift-yes:2"):
        noa.presses(data)
        assert "not yours" in noa.answers_to_taps()[-1]
    team.athlete.writes(FLAT)
    assert new_messages(noa.hears()) == []
    assert "No alert is open" in text_of(noa.writes("/alerts"))


def test_all_athletes_are_given_together_and_only_as_long_as_they_are_the_coachs(
    team: Team,
) -> None:
    with transaction(team.world.engine) as session:
        many_athletes(session, 1, 2, team.world.now, Alike(zones=("Europe/London",)))
    noa = second(team, whom="All my athletes")
    assert "3 athletes" in text_of(noa.writes("/roster"))
    team.coach.presses("c:end-yes:2")
    assert "2 athletes" in text_of(noa.writes("/roster"))
    noa.presses("c:card:2")
    assert "not on your roster" in noa.answers_to_taps()[-1]


def test_the_first_coach_reads_what_the_second_did(team: Team) -> None:
    noa = second(team)
    noa.presses("c:hand:2:1")
    noa.writes("510")
    noa.presses("c:freeze:2")
    (note,) = new_messages(team.coach.hears())[:1]
    assert note.silent
    assert note.text == "Mira, by Noa: set Sat 8 May by hand to 510 g"
    together = team.coach.all_said()[-1].text
    assert "Mira, by Noa: froze the adjusting" in together
    assert "by Noa" not in text_of([*noa.all_said(), *team.athlete.all_said()])
    team.coach.presses("c:lift-yes:2")  # their own doing is no news
    assert "by Ravi" not in text_of(new_messages(team.coach.hears()))


def test_the_rights_end_with_the_last_day_where_the_coach_is(team: Team) -> None:
    noa = second(team)
    # The coach has told no zone, so Mira's counts: London, an hour ahead of UTC in May.
    team.world.until(datetime(2027, 5, 9, 22, 59, tzinfo=UTC))
    noa.hears()
    assert "Mira" in text_of(noa.presses("c:card:2"))
    team.world.until(datetime(2027, 5, 9, 23, 0, tzinfo=UTC))
    told = [*noa.hears(), *team.coach.hears(), *team.athlete.hears()]
    over = [said for said in told if "as second coach" in said.text or "no longer" in said.text]
    assert len(over) == 3 and all(said.silent for said in over)  # it is midnight
    assert "Your time as second coach with Ravi is over" in over[0].text
    assert "Noa is no longer your second coach" in over[1].text
    assert "Noa is no longer your second coach" in over[2].text
    assert "works by invitation" in text_of(noa.presses("c:card:2"))


def test_rights_that_have_run_out_are_gone_even_where_the_duty_is_late(team: Team) -> None:
    noa = second(team)
    team.world.now = datetime(2027, 5, 9, 23, 0, tzinfo=UTC)  # no duty has been done
    noa.hears()
    said = text_of(noa.presses("c:hand:2:0"))
    assert "is over" in said
    assert "works by invitation" in said
    assert "How many grams" not in said


def test_an_open_question_of_a_second_coach_takes_no_answer_once_their_time_is_over(
    team: Team,
) -> None:
    noa = second(team)
    noa.presses("c:hand:2:0")
    team.coach.presses("c:second:2")
    team.coach.taps("End it for Noa")
    noa.writes("480")
    with team.world.session() as session:
        assert day_set(session, 2, team.event_day) is None


def test_the_first_coach_sees_who_stands_in_and_can_end_it_early(team: Team) -> None:
    assert "You have no second coach" in text_of(team.coach.presses("c:second:2"))
    noa = second(team)
    said = team.coach.presses("c:second:2")[-1]
    assert "- Noa: Mira, everything, until Sun 9 May" in said.text
    team.coach.taps("End it for Noa", said)
    assert "is over" in text_of(noa.hears())
    team.coach.taps("End it for Noa", said)
    assert "has already ended" in team.coach.all_said()[-1].text
    team.world.later(days=3)
    assert "is over" not in text_of(noa.hears())


@pytest.mark.parametrize(
    ("typed", "answered"),
    [
        ("6 May 2027", "over"),
        ("1 August 2027", "within the next 31 days"),
        ("soon", "could not read a date"),
    ],
)
def test_a_last_day_that_cannot_be_is_refused_and_asked_again(
    team: Team, typed: str, answered: str
) -> None:
    team.coach.presses("c:second-ask:2")
    team.coach.taps("Only Mira")
    team.coach.taps("Everything")
    said = text_of(team.coach.writes(typed))
    assert answered in said
    assert "Until and including which day" in said


def test_neither_the_coach_nor_an_athlete_of_theirs_can_be_the_second_coach(team: Team) -> None:
    code = invitation(team)
    assert "somebody else" in text_of(team.coach.writes(f"/join {code}"))
    assert "that can't be you" in text_of(team.athlete.writes(f"/join {code}"))
    noa = Someone(team.world, 150, "Noa")
    assert "You are second coach" in text_of(noa.writes(f"/join {code}"))
    assert "already used that invitation" in text_of(noa.writes(f"/join {code}"))


def test_an_invitation_whose_last_day_is_over_gives_nothing(team: Team) -> None:
    code = invitation(team, until="7 May")
    team.world.until(datetime(2027, 5, 8, 6, tzinfo=UTC))
    noa = Someone(team.world, 150, "Noa")
    assert "expired" in text_of(noa.writes(f"/join {code}"))
    assert "works by invitation" in text_of(noa.writes("/roster"))


def test_the_roster_that_a_second_coach_has_open_is_kept_up_to_date(team: Team) -> None:
    noa = second(team)
    noa.writes("/roster")
    team.athlete.writes("61.0 4 3.5 5 on target fine")
    team.world.later(seconds=30)
    assert "fullness 4" in text_of(noa.hears())


def test_the_first_coach_hears_that_a_second_one_cannot_be_reached(team: Team) -> None:
    noa = second(team)
    noa.writes("", kind=Kind.BLOCKED)
    assert "can't reach Noa, your second coach" in text_of(team.coach.hears())
    noa.writes("", kind=Kind.BLOCKED)
    assert team.coach.hears() == []


# The end of a coaching


def test_after_the_end_the_coach_sees_nothing_and_the_athlete_keeps_everything(team: Team) -> None:
    team.athlete.writes("61.0 4 3.5 5 on target fine")
    team.coach.presses("c:end:2")
    team.athlete.hears()
    assert "The coaching of Mira has ended" in text_of(team.coach.taps("End it"))
    told = text_of(team.athlete.hears())
    assert "Ravi has ended the coaching" in told
    assert "don't go on with it alone" in told
    team.coach.presses("c:card:2")
    assert "not on your roster" in team.coach.answers_to_taps()[-1]
    assert "no athletes yet" in text_of(team.coach.writes("/roster"))
    assert "61.0" in text_of(team.athlete.writes("/past"))
    assert "Based on" in text_of(team.athlete.writes("/why"))
    assert "Nobody coaches you" in text_of(team.athlete.writes("/today"))
    team.world.later(days=2)
    assert team.athlete.hears() == []
    with team.world.session() as session:
        row = session.exec(select(HistoryRow).where(HistoryRow.what == "coach ended")).one()
    assert row.by_id == 1


def test_a_warning_after_the_end_still_tells_the_athlete_what_to_do(team: Team) -> None:
    team.coach.presses("c:end-yes:2")
    team.coach.hears()
    assert "emergency number" in text_of(team.athlete.writes("I fainted"))
    assert team.coach.hears() == []
    team.world.later(hours=2)
    assert team.athlete.hears() == []


def test_a_coaching_does_not_end_over_an_open_alert_or_a_waiting_figure(team: Team) -> None:
    team.athlete.writes(FLAT)
    assert "still open" in text_of(team.coach.presses("c:end:2"))
    assert "still open" in text_of(team.coach.presses("c:end-yes:2"))
    assert team.profile().coach_id == 1
    team.coach.taps("Approve 550 g")
    team.coach.presses("c:end:2")
    assert "goes on" in text_of(team.coach.taps("Keep coaching"))
    assert team.profile().coach_id == 1


def test_another_coachs_invitation_takes_it_up_again_with_what_was(team: Team) -> None:
    team.coach.presses("c:end-yes:2")
    with transaction(team.world.engine) as session:
        session.add(
            Person(
                telegram_user_id=150, chat_id=150, first_name="Noa", is_coach=True,
                created_at=team.world.now,
            )
        )  # fmt: skip
    noa = Someone(team.world, 150, "Noa")
    code = re.search(r"/join (\S+)", text_of(noa.writes("/invite")))
    assert code is not None
    said = text_of(team.athlete.writes(f"/join {code[1]}"))
    assert "Noa is now your coach" in said
    assert "Mira, 2 days out" in text_of(noa.writes("/roster"))
    assert team.profile().status == AthleteStatus.ACTIVE
    team.morning(1, hour=5, minute=30)
    assert "Mira" in text_of(team.athlete.hears())  # the morning is asked again


def test_a_coach_whose_coaching_ended_can_go_on_alone(team: Team) -> None:
    with transaction(team.world.engine) as session:
        person = session.get_one(Person, 2)
        person.is_coach = True
        session.add(person)
    team.coach.presses("c:end-yes:2")
    team.athlete.hears()
    assert "You coach yourself now" in text_of(team.athlete.writes("/selfcoach"))
    assert "Mira, 2 days out" in text_of(team.athlete.writes("/roster"))
    assert team.profile().status == AthleteStatus.ACTIVE


def test_a_coach_of_their_own_is_told_how_to_stop_instead(team: Team) -> None:
    with transaction(team.world.engine) as session:
        person = session.get_one(Person, 2)
        person.is_coach = True
        session.add(person)
    with transaction(team.world.engine) as session:
        profile = get_profile(session, 2)
        profile.coach_id = 2
        session.add(profile)
    assert "You coach yourself" in text_of(team.athlete.presses("c:end:2"))


def contact(team: Team) -> Someone:
    lea = Someone(team.world, 151, "Lea")
    code = re.search(r"/(?:join|start) (\S+)", text_of(team.coach.writes("/contact")))
    assert code is not None
    lea.writes(f"/start {code[1]}")
    return lea


def test_whoever_comes_after_an_alert_was_seen_to_reads_nothing_of_it(team: Team) -> None:
    """Its button may be made up: numbers of alerts are counted."""
    team.athlete.writes("I fainted and have chest pain")
    team.coach.taps("Acknowledge")
    for late in (contact(team), second(team, rights="Alerts only")):
        team.world.later(minutes=30)
        late.hears()
        assert late.presses("alert:ack:1") == []
        assert late.answers_to_taps()[-1] == "That alert is not yours."
    assert "chest pain" in text_of(team.coach.presses("alert:ack:1"))


def test_a_contact_who_has_not_been_fetched_yet_reads_no_alert_by_its_number(team: Team) -> None:
    lea = contact(team)
    team.athlete.writes("I fainted and have chest pain")
    assert lea.presses("alert:ack:1") == []
    team.world.later(minutes=20)
    assert "chest pain" in text_of(lea.hears())
    assert "Acknowledged by Lea" in text_of(lea.presses("alert:ack:1"))


def test_once_the_athlete_has_left_nobody_is_shown_the_text_of_an_alert_again(team: Team) -> None:
    lea = contact(team)
    team.athlete.writes("I fainted and have chest pain")
    team.world.later(minutes=20)
    team.coach.taps("Acknowledge")
    team.athlete.writes("/leave")
    team.athlete.taps("Yes, end it")
    for former in (team.coach, lea):
        former.hears()
        assert former.presses("alert:ack:1") == []
        assert former.answers_to_taps()[-1] == "Closed: the coaching has ended."
