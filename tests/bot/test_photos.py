"""An athlete's morning pictures: sent, kept, passed on, compared, deleted; seen by two people only."""

from __future__ import annotations

import os
from collections.abc import Callable
from datetime import UTC, date, datetime, timedelta
from pathlib import Path

import pytest
from sqlmodel import Session, select

from bot.core.turn import SentFile, Turn
from bot.files import document
from bot.store.db import transaction
from bot.store.tables.coach import Rights, SecondCoach
from bot.store.tables.people import AthleteProfile, AthleteStatus, Person
from bot.store.tables.photos import PhotoRow
from bot.store.tables.traffic import FetchRow, OutboxRow
from tests.support.files import fetch, files_for, sends_file
from tests.support.pictures import BLUE, GREEN, RED, is_near, opened, picture
from tests.support.weeks import Team
from tests.support.world import Said, Someone, text_of


@pytest.fixture
def team(team_at: Callable[[datetime], Team], tmp_path: Path) -> Team:
    """Seven days out, at half past six in London: Mira has just been asked for her numbers."""
    made = team_at(datetime(2027, 5, 2, 5, 30, tzinfo=UTC))
    made.world.photo_dir = tmp_path / "photos"
    return made


def sends(team: Team, colour: tuple[int, int, int] = RED, caption: str = "") -> list[Said]:
    return sends_file(team.athlete, picture(colour), caption=caption, as_photo=True)


def sends_all(team: Team) -> None:
    for colour in (RED, GREEN, BLUE):
        sends(team, colour)


def rows(team: Team) -> list[PhotoRow]:
    with team.world.session() as session:
        return list(session.exec(select(PhotoRow).order_by("id")))


def files(team: Team) -> set[str]:
    folder = team.world.photo_dir
    assert folder is not None
    return {file.stem for file in folder.iterdir()} if folder.is_dir() else set()


def gathered(team: Team) -> None:
    team.world.later(seconds=50)


# Taken


def test_pictures_are_kept_outside_the_database_under_names_that_say_nothing(team: Team) -> None:
    sends(team)
    (row,) = rows(team)
    assert files(team) == {row.name}
    assert "Mira" not in row.name and "front" not in row.name
    with team.world.session() as session:
        raw = session.connection().exec_driver_sql("SELECT * FROM photo").all()
    assert not any(isinstance(value, bytes) for line in raw for value in line)


def test_three_pictures_without_a_word_are_front_side_and_back_in_one_message(team: Team) -> None:
    said = text_of(sends(team))
    assert "Saved for Sun 2 May, 7 days out: front. Ravi gets them" in said
    assert "only you and Ravi can see them" in said and "delete it after 180 days" in said
    second = sends(team, GREEN)
    assert [message.method for message in second] == ["editMessageText"]
    assert "front, side." in text_of(second)
    third = text_of(sends(team, BLUE))
    assert "front, side, back." in third and "About your photos" not in third
    assert [row.pose for row in rows(team)] == ["front", "side", "back"]


def test_a_word_under_a_picture_says_its_pose_and_a_newer_one_takes_the_place(team: Team) -> None:
    sends(team, RED, "Back today")
    assert [row.pose for row in rows(team)] == ["back"]
    sends(team, GREEN, "back")
    assert [row.pose for row in rows(team)] == ["other", "back"]
    sends(team, BLUE)
    assert rows(team)[-1].pose == "front"


def test_a_picture_sent_as_a_file_is_a_picture_too(team: Team) -> None:
    said = sends_file(team.athlete, picture(form="PNG"), name="IMG_1.png", mime="image/png")
    assert "Saved for" in text_of(said)


def test_a_pose_is_put_right_with_two_taps_and_the_other_picture_swaps_with_it(team: Team) -> None:
    sends_all(team)
    team.athlete.taps("Change side")
    assert "front, side, back" in text_of(team.athlete.taps("Back"))  # the way out
    team.athlete.presses(f"ph:pose:{rows(team)[1].id}:back")
    assert [row.pose for row in rows(team)] == ["front", "back", "side"]


def test_a_picture_is_deleted_with_its_file_on_a_tap(team: Team) -> None:
    sends(team)
    team.athlete.taps("Change front")
    assert "No photos are saved" in text_of(team.athlete.taps("Delete it"))
    team.world.later(seconds=1)
    assert rows(team) == [] and files(team) == set()


@pytest.mark.parametrize(
    ("content", "said"), [(b"hello", "can't open that as a photo"), (picture()[:2000], "damaged")]
)
def test_what_is_no_picture_is_said_so_and_leaves_nothing(
    team: Team, content: bytes, said: str
) -> None:
    shown = text_of(sends_file(team.athlete, content, name="a.jpg", mime="image/jpeg"))
    assert said in shown
    team.world.later(seconds=1)
    assert rows(team) == [] and files(team) == set()


def test_a_picture_that_is_too_large_is_refused_before_it_is_fetched(team: Team) -> None:
    file = SentFile(file_id="a", mime="image/png", name="a.png", size=11_000_000)
    assert "too large" in text_of(team.athlete.sends(file))
    with team.world.session() as session:
        assert session.exec(select(FetchRow)).all() == []


def test_more_pictures_than_a_day_has_use_for_are_refused_kindly(team: Team) -> None:
    for _ in range(10):
        sends(team)
    assert "saved the first 10" in text_of(sends(team))
    assert len(rows(team)) == 10


def test_the_same_update_twice_is_one_picture(team: Team) -> None:
    file = SentFile(file_id="a", as_photo=True, size=100)
    team.athlete.sends(file)
    team.world.updates -= 1
    team.athlete.sends(file)
    fetch(team.world, {"a": picture()})
    assert len(rows(team)) == 1


def test_words_under_a_picture_are_read_for_symptoms_and_may_be_the_morning(team: Team) -> None:
    assert "Stop." in text_of(sends(team, caption="I fainted in the shower"))
    assert "arning" in text_of(team.coach.hears())


def test_the_mornings_numbers_may_stand_under_the_pictures(team: Team) -> None:
    said = text_of(sends(team, caption="61.1 6 3.5 on target fine"))
    assert "Carbs" in said and "Saved for" in said
    gathered(team)
    ((row, _),) = files_for(team.coach, "sendPhoto")
    assert "61.1 kg" in row.payload["caption"]


def test_a_bot_that_keeps_no_pictures_says_so_and_never_asks_for_them(team: Team) -> None:
    team.world.photo_dir = None
    assert "don't save photos" in text_of(sends(team))
    assert "Photos" not in text_of(team.athlete.writes("61.1 6 3.5 on target fine"))


def test_a_picture_from_a_coach_or_a_stranger_is_not_kept(team: Team) -> None:
    assert "from athletes only" in text_of(
        sends_file(team.coach, picture(), as_photo=True)
    )  # fmt: skip
    stranger = Someone(team.world, 999, "Nobody")
    assert "by invitation" in text_of(sends_file(stranger, picture(), as_photo=True))
    assert rows(team) == [] and files(team) == set()


# Offered


def test_pictures_are_offered_in_one_silent_line_after_the_numbers_and_never_required(
    team: Team,
) -> None:
    said = team.athlete.writes("61.1 6 3.5 on target fine")
    offers = [message for message in said if message.text.startswith("Photos for Ravi")]
    assert [(m.silent, m.text.count("\n"), "You can skip" in m.text) for m in offers] == [
        (True, 0, True)
    ]
    again = team.athlete.writes("61.0 6 3.5 on target fine")
    assert "Photos for" not in text_of(again)


def test_they_are_not_asked_for_when_they_are_there_nor_in_an_emergency(
    team: Team, team_at: Callable[[datetime], Team]
) -> None:
    sends(team)
    assert "Photos for" not in text_of(team.athlete.writes("61.1 6 3.5 on target fine"))
    team.world.until(datetime(2027, 5, 3, 5, 31, tzinfo=UTC))
    team.athlete.hears()
    said = text_of(team.athlete.writes("61.1 6 3.5 I fainted"))
    assert "Stop." in said and "Photos for" not in said


# To the coach


def test_the_coach_gets_one_album_with_days_out_and_the_mornings_numbers(team: Team) -> None:
    team.athlete.writes("61.1 6 3.5 on target fine")
    sends_all(team)
    assert files_for(team.coach) == []
    gathered(team)
    ((row, made),) = files_for(team.coach)
    assert row.method == "sendMediaGroup" and row.payload["disable_notification"]
    caption = row.payload["media"][0]["caption"]
    assert caption.startswith("Mira, Sun 2 May, 7 days out: front, side, back\n")
    assert "61.1 kg" in caption and "3.5 L" in caption
    assert [opened(d.content).size for d in made] == [(600, 800)] * 3
    assert is_near(opened(made[1].content).getpixel((300, 500)), GREEN)


def test_each_picture_goes_once_and_a_late_one_by_itself(team: Team) -> None:
    sends(team)
    gathered(team)
    sends(team, GREEN)
    gathered(team)
    gathered(team)
    assert [row.method for row, _ in files_for(team.coach)] == ["sendPhoto", "sendPhoto"]
    assert "no check-in that morning" in files_for(team.coach)[0][0].payload["caption"]


def test_the_card_shows_the_latest_morning_and_others_by_date(team: Team) -> None:
    assert "No photos of Mira" in text_of(team.coach.presses(f"c:photos:{team.athlete_id}"))
    sends_all(team)
    two_mornings(team)
    before = len(files_for(team.coach))
    team.coach.presses(f"c:card:{team.athlete_id}")
    said = team.coach.taps("Photos")
    assert "Mira's mornings with photos" in text_of(said)
    assert "3 May" in files_for(team.coach)[before][0].payload["media"][0]["caption"]
    team.coach.taps("Sun 2 May, 7 days out")
    assert "2 May" in files_for(team.coach)[before + 1][0].payload["media"][0]["caption"]


def test_a_picture_deleted_before_it_was_sent_is_left_out(team: Team) -> None:
    sends_all(team)
    gathered(team)
    team.athlete.presses(f"ph:drop:{rows(team)[0].id}")
    ((_, made),) = files_for(team.coach)
    assert len(made) == 2


# Side by side


def two_mornings(team: Team) -> None:
    team.world.until(datetime(2027, 5, 3, 5, 40, tzinfo=UTC))
    team.athlete.writes("60.8 5 3.4 on target fine")
    sends(team, GREEN)
    sends(team, BLUE, "back")
    gathered(team)
    team.athlete.hears()
    team.coach.hears()


def test_the_coach_compares_two_mornings_pose_by_pose_dated(team: Team) -> None:
    team.athlete.writes("61.1 6 3.5 on target fine")
    sends_all(team)
    two_mornings(team)
    before = len(files_for(team.coach))
    team.coach.writes("/compare")
    team.coach.taps("Mira")
    team.coach.taps("Sun 2 May, 7 days out")
    team.coach.taps("Mon 3 May, 6 days out")
    row, made = files_for(team.coach)[before]
    caption = row.payload["media"][0]["caption"]
    assert caption.startswith("Mira: front, back\nLeft: Sun 2 May, 7 days out: 61.1 kg")
    assert "Right: Mon 3 May, 6 days out: 60.8 kg" in caption
    front, back = (opened(d.content) for d in made)
    assert front.size == (1812, 1286)
    assert is_near(front.getpixel((450, 800)), RED)
    assert is_near(front.getpixel((1362, 800)), GREEN)
    assert is_near(back.getpixel((450, 800)), BLUE) and is_near(back.getpixel((1362, 800)), BLUE)


def test_first_and_latest_is_one_tap(team: Team) -> None:
    sends_all(team)
    two_mornings(team)
    before = len(files_for(team.coach))
    team.coach.writes("/compare")
    team.coach.taps("Mira")
    team.coach.taps("First and latest")
    assert len(files_for(team.coach)) == before + 1


def test_an_athlete_compares_their_own(team: Team) -> None:
    assert "two mornings" in text_of(team.athlete.writes("/compare"))
    sends_all(team)
    two_mornings(team)
    team.athlete.writes("/compare")
    team.athlete.taps("First and latest")
    ((row, _),) = files_for(team.athlete)
    assert row.payload["media"][0]["caption"].startswith("Mira: front, back")


def test_two_mornings_without_a_pose_in_common_are_said_so(team: Team) -> None:
    sends(team, RED, "side")
    two_mornings(team)
    team.coach.presses(f"c:cmp:{team.athlete_id}:2027-05-02:2027-05-03")
    assert "no pose in common" in text_of(team.coach.all_said()[-1:])


@pytest.mark.parametrize("data", ["ph:cmp:x:y", "ph:see:tomorrow", "ph:pick:zz", "ph:", "ph:no"])
def test_senseless_buttons_do_no_harm(team: Team, data: str) -> None:
    sends(team)
    team.athlete.presses(data)
    assert len(rows(team)) == 1


# Whose


def test_nobody_else_sees_compares_or_deletes_them(team: Team) -> None:
    sends_all(team)
    two_mornings(team)
    with transaction(team.world.engine) as session:
        session.add(
            Person(
                telegram_user_id=301, chat_id=301, first_name="Noor", is_coach=True,
                created_at=team.world.now,
            )
        )  # fmt: skip
    other = Someone(team.world, 301, "Noor")
    for data in (
        f"c:photos:{team.athlete_id}", f"c:cmp:{team.athlete_id}:2027-05-02:2027-05-03",
        f"ph:drop:{rows(team)[0].id}", "ph:wipe-yes", f"ph:pick:{rows(team)[0].id}",
    ):  # fmt: skip
        other.presses(data)
    team.coach.presses(f"ph:drop:{rows(team)[0].id}")  # the coach sees, and does not delete
    assert files_for(other) == []
    assert len(rows(team)) == 5
    assert "none of your athletes" in text_of(other.writes("/compare"))


# Deleted


def test_an_athlete_deletes_all_of_them_on_a_second_tap(team: Team) -> None:
    sends_all(team)
    team.athlete.writes("/photos")
    assert "all 3 photos" in text_of(team.athlete.taps("Delete all of them"))
    assert "nothing was deleted" in text_of(team.athlete.taps("Keep them"))
    team.athlete.taps("Delete all of them")
    assert "Deleted." in text_of(team.athlete.taps("Yes, delete them"))
    team.world.later(minutes=1)
    assert rows(team) == [] and files(team) == set()
    assert "No photos of you" in text_of(team.athlete.writes("/photos"))
    gathered(team)
    assert files_for(team.coach) == []


def test_each_is_deleted_after_the_set_time_with_its_file(team: Team) -> None:
    sends(team)
    team.world.later(days=179)
    assert len(rows(team)) == len(files(team)) == 1
    team.world.later(days=3)
    assert rows(team) == [] and files(team) == set()


def test_a_file_that_a_crash_left_without_a_row_is_swept_up(team: Team) -> None:
    sends(team)
    assert team.world.photo_dir is not None
    stray = team.world.photo_dir / f"{'a' * 32}.jpg"
    stray.write_bytes(b"x")
    os.utime(stray, (0, 0))
    team.world.later(days=2)
    assert files(team) == {rows(team)[0].name}


def test_a_picture_deleted_while_it_is_on_its_way_leaves_no_file(team: Team) -> None:
    file = SentFile(file_id="a", as_photo=True, size=100)
    team.athlete.sends(file)
    team.athlete.presses("ph:wipe-yes")
    fetch(team.world, {"a": picture()})
    team.world.later(seconds=1)
    assert rows(team) == [] and files(team) == set()


def test_what_is_gone_when_it_is_to_be_sent_is_not_sent(team: Team) -> None:
    sends(team)
    gathered(team)
    team.athlete.presses("ph:wipe-yes")
    with Session(team.world.engine) as session:
        row = session.exec(select(OutboxRow).where(OutboxRow.method == "sendPhoto")).one()
        assert row.attached is not None
        assert document(Turn(session, team.world.context), row.attached["photo"]) is None


def test_the_day_is_the_athletes_own(team: Team) -> None:
    """Half past midnight in London is the day before in UTC."""
    team.world.until(datetime(2027, 5, 3, 23, 30, tzinfo=UTC))
    sends(team)
    assert rows(team)[0].date == date(2027, 5, 4)


def test_a_second_coach_with_full_rights_sees_and_compares_and_one_for_alerts_does_not(
    team: Team,
) -> None:
    sends_all(team)
    two_mornings(team)
    for user_id, name, rights in ((301, "Noor", Rights.FULL), (302, "Piet", Rights.ALERTS)):
        with transaction(team.world.engine) as session:
            person = Person(
                telegram_user_id=user_id, chat_id=user_id, first_name=name,
                created_at=team.world.now,
            )  # fmt: skip
            session.add(person)
            session.flush()
            session.add(
                SecondCoach(
                    coach_id=1, person_id=person.id or 0, rights=rights,
                    given_at=team.world.now, until_day=date(2027, 5, 6),
                    until_at=team.world.now + timedelta(days=3),
                )
            )  # fmt: skip
    full, alerts = Someone(team.world, 301, "Noor"), Someone(team.world, 302, "Piet")
    full.writes("/compare")
    full.taps("Mira")
    full.taps("First and latest")
    assert len(files_for(full)) == 1
    assert "don't know that command" in text_of(alerts.writes("/compare"))
    alerts.presses(f"c:photos:{team.athlete_id}")
    assert files_for(alerts) == []


def test_once_a_coaching_has_ended_pictures_reach_nobody(team: Team) -> None:
    sends(team)
    with transaction(team.world.engine) as session:
        profile = session.get_one(AthleteProfile, team.athlete_id)
        profile.status = AthleteStatus.ENDED
        session.add(profile)
    gathered(team)
    assert files_for(team.coach) == []
    team.athlete.writes("/photos")
    team.athlete.taps("Sun 2 May, 7 days out")
    assert len(files_for(team.athlete)) == 1
