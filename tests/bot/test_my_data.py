"""Everything that is kept of somebody, handed out as files that fit a published schema."""

from __future__ import annotations

import hashlib
import io
import json
import zipfile
from collections.abc import Callable
from datetime import UTC, datetime
from pathlib import Path
from typing import Any

import pandas as pd
import pytest
from jsonschema import Draft202012Validator, FormatChecker
from sqlalchemy import Table
from sqlmodel import SQLModel, select

from bot.core.turn import Turn
from bot.membership.ending import part
from bot.membership.my_data import schema
from bot.membership.my_data.owned import Me, as_athlete, owned, tables
from bot.membership.onboarding import words as onboarding_words
from bot.people.people import get_profile
from bot.store.db import transaction
from bot.store.tables import metadata
from bot.store.tables.coach import TemplateRow
from bot.store.tables.people import AthleteProfile, Person
from tests.support.files import files_for, sends_file
from tests.support.many import Alike, many_athletes
from tests.support.pictures import picture
from tests.support.weeks import Team
from tests.support.whole_week import lived
from tests.support.world import Someone, text_of


@pytest.fixture
def team(team_at: Callable[[datetime], Team], tmp_path: Path) -> Team:
    """Mira's week is over and holds something of everything; Ravi has another athlete."""
    team = team_at(datetime(2027, 5, 6, 5, 40, tzinfo=UTC))
    team.world.photo_dir = tmp_path / "photos"
    sends_file(team.athlete, picture(), as_photo=True)
    lived(team)
    with transaction(team.world.engine) as session:
        many_athletes(session, 1, 1, team.world.now, Alike(name="Orla", answered=False))
        session.add(TemplateRow(
            coach_id=1, name="my usual", shape="even", days=[], made_at=team.world.now,
        ))  # fmt: skip
    return team


def handed(who: Someone) -> zipfile.ZipFile:
    who.writes("/mydata")
    (document,) = files_for(who, "sendDocument")[-1][1]
    assert document.name == "my-data-2027-05-06.zip"
    return zipfile.ZipFile(io.BytesIO(document.content))


def data(who: Someone) -> dict[str, Any]:
    with handed(who) as archive:
        found: dict[str, Any] = json.loads(archive.read("data.json"))
        validator = Draft202012Validator(
            json.loads(archive.read("schema.json")), format_checker=FormatChecker()
        )
    wrong = [
        f"{list(error.absolute_path)}: {error.message}" for error in validator.iter_errors(found)
    ]
    assert wrong == []
    return found


# The schema: https://json-schema.org/draft/2020-12, held to by a validator that is not ours


def test_the_published_schema_is_that_of_the_tables_and_one_by_the_standard() -> None:
    assert schema.FILE.read_text() == schema.written(), (
        "run python -m bot.membership.my_data.schema"
    )
    Draft202012Validator.check_schema(schema.schema())


def test_of_every_table_it_is_known_whose_its_rows_are() -> None:
    for table in metadata.sorted_tables:
        owned(table)


def test_a_table_of_which_nobody_has_said_is_named() -> None:
    forgotten = Table("forgotten", SQLModel.metadata.__class__())
    with pytest.raises(KeyError, match="forgotten"):
        owned(forgotten)


def test_the_schema_refuses_what_is_not_in_it(team: Team) -> None:
    found = data(team.athlete)
    validator = Draft202012Validator(schema.schema(), format_checker=FormatChecker())
    found["athlete"]["checkin"][0]["weight_kg"] = "61"
    assert not validator.is_valid(found)
    found["athlete"]["checkin"][0]["weight_kg"] = 61
    assert validator.is_valid(found)
    del found["athlete"]["checkin"][0]["fullness"]
    assert not validator.is_valid(found)


# What is in it


def test_an_athlete_gets_every_row_about_them_whoever_wrote_it(team: Team) -> None:
    found = data(team.athlete)
    me = Me(team.athlete_id, team.athlete.user_id)
    with team.world.session() as session:
        for table in tables():
            mine = as_athlete(table, me)
            if mine is not None:
                rows = session.connection().execute(table.select().where(mine)).all()
                assert len(found["athlete"][table.name]) == len(rows), table.name
    filled = {name for name, rows in found["athlete"].items() if rows}
    assert {
        "athlete_profile", "event", "plan", "limits", "checkin", "decision", "alert", "food",
        "eaten", "photo", "coach_look", "debrief", "history",
    } <= filled  # fmt: skip
    assert found["people"] == {"1": "Ravi", "2": "Mira"}
    assert any("61.0" in json.dumps(row) for row in found["person"]["outbox"])


def test_nothing_of_anybody_else_and_no_secret_is_in_it(team: Team) -> None:
    text = json.dumps(data(team.athlete))
    assert "more rice" not in text  # the coach's note, which is promised to go to nobody
    assert "token_hash" not in text and "Orla" not in text and '"chat_id": 101' not in text


def test_a_coach_gets_what_they_set_and_wrote_and_of_former_athletes_nothing(team: Team) -> None:
    found = data(team.coach)
    assert [row["name"] for row in found["coach"]["plan_template"]] == ["my usual"]
    assert [row["look"] for row in found["coach"]["coach_look"]] == ["on course"]
    assert not any(found["athlete"].values())
    with transaction(team.world.engine) as session:
        profile = get_profile(session, 2)
        part(Turn(session, team.world.context), profile, session.get_one(Person, 1))
    found = data(team.coach)
    assert found["coach"]["coach_look"] == [] and found["coach"]["coach_note"] == []


def test_a_second_contact_gets_what_there_is_of_them(team: Team) -> None:
    with transaction(team.world.engine) as session:
        person = Person(
            telegram_user_id=180, chat_id=180, first_name="Xanthe", created_at=team.world.now
        )
        session.add(person)
        session.flush()
        session.get_one(Person, 1).second_contact_id = person.id
    found = data(Someone(team.world, 180, "Xanthe"))
    assert [row["first_name"] for row in found["person"]["person"]] == ["Xanthe"]
    assert not any(found["athlete"].values()) and not any(found["coach"].values())


def test_sheets_pictures_and_schema_come_in_the_same_file(team: Team) -> None:
    with handed(team.athlete) as archive:
        names = archive.namelist()
        book = pd.read_excel(io.BytesIO(archive.read("workbook.xlsx")), sheet_name="Check-ins")
        photo = next(name for name in names if name.startswith("photos/"))
        assert archive.read(photo)[:2] == b"\xff\xd8"  # a JPEG's first bytes (ITU-T T.81, SOI)
    assert 61.0 in set(book["Weight (kg)"])
    with handed(team.coach) as archive:
        assert archive.namelist() == ["data.json", "schema.json", "data.xlsx"]
        sheets = pd.read_excel(io.BytesIO(archive.read("data.xlsx")), sheet_name=None)
    assert list(sheets["coach plan_template"]["name"]) == ["my usual"]
    assert list(sheets["people"]["first_name"]) == ["Ravi", "Mira"]


def test_strangers_get_nothing(team: Team) -> None:
    stranger = Someone(team.world, 999, "Nobody")
    assert "by invitation" in text_of(stranger.writes("/mydata"))
    assert files_for(stranger, "sendDocument") == []


# Consent


#: What each version of the text says, both texts together (SHA-256).
CONSENTS = {"1": "332c459ee02815fe", "2": "d7898e3a79dca099"}


def test_consent_is_kept_with_the_version_and_language_of_what_was_agreed_to(team: Team) -> None:
    with team.world.session() as session:
        profile = session.exec(select(AthleteProfile).where(AthleteProfile.person_id == 2)).one()
    assert profile.consent_version == onboarding_words.CONSENT_VERSION
    assert profile.consent_language == "en" and profile.consent_at is not None


def test_a_changed_text_has_a_version_of_its_own() -> None:
    texts = [
        onboarding_words.cautions("{coach}", self_coached=self_coached)
        for self_coached in (True, False)
    ]
    now = hashlib.sha256("\n\n".join(texts).encode()).hexdigest()[:16]
    assert CONSENTS[onboarding_words.CONSENT_VERSION] == now, f"raise CONSENT_VERSION; it is {now}"
