"""A whole peak week over the Bot API: invitations, first questions, mornings, alarms, sign-off.

The Bot API server is a stand-in on loopback that refuses what Telegram's would (sizes, shapes, edits
of what was never sent); nothing here touches the use cases but through it.
"""

from __future__ import annotations

import re
from datetime import UTC, date, datetime, timedelta

import pytest

from bot.core.turn import Context, Turn
from bot.membership.invitations import invite_coach_command
from bot.store.db import make_engine, transaction
from bot.store.migrate import upgrade_to_head
from tests.support.chats import Telegram
from tests.support.logged import logging_all
from tests.support.shifted_bot import ShiftedBot
from tests.support.talk import Talk

pytestmark = [pytest.mark.loopback, pytest.mark.soak, pytest.mark.timeout(240)]

COACH, ATHLETE, CONTACT, STRANGER = 501, 502, 503, 599
STAGE_DAY = date(2027, 5, 9)
START = datetime(2027, 5, 1, 15, 0, tzinfo=UTC)
#: What was said, decided or told of this week that no log may hold: figures, words, names, the token.
SAID = (
    "61.1", "60.9", "62.4", "7.4", "flat", "spilled", "sharp", "faint", "backstage",
    "Stop.", f"P{ATHLETE}", f"P{COACH}", "invented-token",
)  # fmt: skip
CODE = re.compile(r"[0-9A-Z]{4}(?:-[0-9A-Z]{4}){3}")


@pytest.fixture
def talk(telegram: Telegram) -> Talk:
    return Talk(telegram)


def coach_code(database_url: str) -> str:
    """What `brimline invite coach` prints."""
    engine = make_engine(database_url)
    upgrade_to_head(engine)
    with transaction(engine) as session:
        text = invite_coach_command(
            Turn(session, Context(now=START, bot_username="brimline_test_bot"))
        )
    engine.dispose()
    found = CODE.search(text)
    assert found is not None
    return found.group()


def everybody_comes_in(talk: Talk, code: str) -> None:
    talk.says(COACH, f"/start {code}", "set up here as a coach")
    talk.says(STRANGER, f"/join {code}", "used")
    talk.telegram.says(COACH, "/contact")
    contact = CODE.search(talk.hears(COACH, "be second contact: if"))
    assert contact is not None
    talk.says(CONTACT, f"/join {contact.group()}", "second contact")
    talk.telegram.says(COACH, "/invite")
    athlete = CODE.search(talk.hears(COACH, "invites you to check in"))
    assert athlete is not None
    talk.says(ATHLETE, athlete.group(), "not a doctor")
    talk.taps(ATHLETE, "I understand and agree", "Which year")
    talk.says(ATHLETE, "1994", "female or male")
    talk.taps(ATHLETE, "Female", "Your health first")
    for part in ("Five short questions on eating", "too little energy", "Where are you"):
        talk.taps(ATHLETE, "None of these", part)
    talk.says(ATHLETE, "Leeds, GB", "shall I ask each morning")
    talk.taps(ATHLETE, "6:30", "How tall")
    for answer, part in (
        ("165 cm", "weigh"), ("61,2kg", "eat and drink a day"), ("310 140 55 and 3.5 L", "All set"),
    ):  # fmt: skip
        talk.says(ATHLETE, answer, part)
    talk.taps(ATHLETE, "Body fat, fibre, salt: answer now", "body fat")
    for answer, part in (("15", "Fibre"), ("25", "Sodium"), ("2300", "Saved")):
        talk.says(ATHLETE, answer, part)


def the_coach_sets_the_week(talk: Talk) -> None:
    name = f"P{ATHLETE}"
    talk.says(COACH, "/roster", name)
    talk.taps(COACH, name, "No event yet")
    talk.taps(COACH, "Event", "peak week for")
    talk.taps(COACH, "A show", "day")
    talk.says(COACH, "9 May 2027", "zone")
    talk.taps(COACH, "Same time zone", "9 May")
    talk.taps(COACH, "Draft a plan", "load be spread")
    talk.taps(COACH, "even", "g/kg")
    talk.taps(COACH, "8.2 g/kg", "How far down should carbs go")
    talk.taps(COACH, "Mild", "draft")
    talk.taps(COACH, "Use this plan", "plan is set")
    talk.taps(COACH, "Set the limits", "floor")
    talk.taps(COACH, "Set these limits", "limits are set")
    talk.hears(ATHLETE, "event, plan and limits")
    talk.says(COACH, "/roster", name)
    talk.taps(COACH, name, "carb ceiling")
    talk.taps(COACH, "Plan …", "plan, limits")
    talk.taps(COACH, "Forecast", "The forecast proposes, you decide")
    talk.taps(COACH, "Rules only", "the forecast is not asked")


def morning(bot: ShiftedBot, talk: Talk, days_out: int) -> str:
    day = STAGE_DAY - timedelta(days=days_out)
    talk.skip(ATHLETE)
    talk.skip(COACH)
    bot.clock.put_forward_to(datetime(day.year, day.month, day.day, 5, 30, 1, tzinfo=UTC))
    return talk.hears(ATHLETE, "Good morning")


def by_buttons(talk: Talk, weight: str, fullness: str, sharpness: str | None, carbs: str) -> str:
    talk.says(ATHLETE, weight, "Fullness, 1 to 10?")
    talk.taps(ATHLETE, fullness, "What did you drink")
    if sharpness is None:
        talk.taps(ATHLETE, "3.5 L", "Yesterday's carbs")
    else:
        talk.taps(ATHLETE, "3.5 L", "Sharpness, 1 to 5?")
        talk.taps(ATHLETE, sharpness, "Yesterday's carbs")
    if carbs.isdigit():
        talk.says(ATHLETE, carbs, "Anything else going on?")
    else:
        talk.taps(ATHLETE, carbs, "training and cardio go as planned")
        talk.taps(ATHLETE, "As planned", "Anything else going on?")
    return talk.taps(ATHLETE, "All fine", "Carbs")


def test_a_whole_peak_week_over_the_bot_api(talk: Talk, telegram: Telegram, own_url: str) -> None:
    code = coach_code(own_url)
    with logging_all() as log, ShiftedBot(telegram, own_url, START) as bot:
        talk.says(STRANGER, "hello", "works by invitation")
        everybody_comes_in(talk, code)
        the_coach_sets_the_week(talk)

        assert "7 days out" in morning(bot, talk, 7)
        assert "Stay on plan" in by_buttons(talk, "61.1", "6", None, "310")

        morning(bot, talk, 6)
        said = talk.says(ATHLETE, "60.9 6 3.5 on target fine", "Carbs")
        assert "6 days out" in said and "60.9 kg" in said

        # A water alarm: the coach is pinged aloud, and acknowledges.
        morning(bot, talk, 5)
        talk.says(ATHLETE, "60.7 5 7.4", "more than is safe for your weight")
        alarm = talk.hears(COACH, "Caution")
        assert "7.4 L" in alarm
        talk.taps(COACH, "Acknowledge", "cknowledged")

        # A missed morning: two reminders, then the coach is told silently.
        morning(bot, talk, 4)
        bot.clock.put_forward_to(bot.clock.now() + timedelta(minutes=31))
        talk.hears(ATHLETE, "still missing")
        bot.clock.put_forward_to(bot.clock.now() + timedelta(minutes=61))
        talk.hears(ATHLETE, "Last reminder")
        bot.clock.put_forward_to(bot.clock.now() + timedelta(hours=4))
        talk.hears(ATHLETE, "today stays as planned")
        talk.hears(COACH, "No check-in this morning")

        # The load: sharpness is asked for; flat and sharp, so one step up within what needs no word.
        morning(bot, talk, 3)
        said = by_buttons(talk, "60.4", "1", "4", "On target (185 g)")
        assert "still sharp, so eat 25 g more" in said

        # Very flat: two steps are more than goes out unasked, so the coach signs off.
        morning(bot, talk, 2)
        said = talk.says(ATHLETE, "60.6 2 3.5 5 on target", "so eat 25 g more today")
        assert "Eat 525 g for now, a small step" in said
        talk.hears(COACH, "for you to approve")
        talk.taps(COACH, "Approve 550 g", "Approved")
        assert "on the plan's" in talk.hears(ATHLETE, "approved the change")

        # Spilled over; then a slip put right by editing the message it came in.
        morning(bot, talk, 1)
        talk.skip(ATHLETE)
        sent = telegram.says(ATHLETE, "63.4 9 3.5 2 on target")
        talk.hears(ATHLETE, "I read fullness 9, and last time it was 2. Is that right?")
        talk.taps(ATHLETE, "Yes", "spilled over")
        telegram.edits(ATHLETE, sent, "62.4 9 3.5 5 on target")
        talk.hears(ATHLETE, "Changed: 63.4 kg → 62.4 kg")

        assert "This is the day" in morning(bot, talk, 0)
        assert "Full and sharp" in talk.says(ATHLETE, "61.9 9 3.5 5 on target fine", "Carbs")
        assert "Stop." in talk.says(ATHLETE, "I fainted backstage", "Stop")
        talk.hears(COACH, "Warning")
        for _ in range(3):
            talk.skip(COACH)
            bot.clock.put_forward_to(bot.clock.now() + timedelta(minutes=5, seconds=5))
            talk.hears(COACH, "Not acknowledged yet")
        talk.hears(CONTACT, "Warning")
        talk.taps(CONTACT, "Acknowledge", "cknowledged")
        talk.says(ATHLETE, "/past", "61.9 kg")
        talk.says(ATHLETE, "/week", "0 out")
        telegram.says(ATHLETE, "/chart")
        telegram.wait_until(lambda: bool(telegram.calls(ATHLETE, "sendPhoto")), "the picture")
        (picture,) = telegram.calls(method="sendPhoto")
        assert "Show, Sun 9 May (today): 61.9 kg" in picture["fields"]["caption"]

        bot.clock.put_forward_to(datetime(2027, 5, 10, 5, 30, 1, tzinfo=UTC))
        talk.hears(ATHLETE, "Your show is over")

    logged = re.sub(r'"(timestamp|duration_ms|seconds)": [^,}]*', "", log.getvalue())
    assert logged.count("an update was handled") > 20
    assert [one for one in SAID if one in logged] == []
    assert telegram.refused() == []
    for chat in (COACH, ATHLETE, CONTACT, STRANGER):
        assert all(0 < len(text) <= 4096 for text in talk.shown(chat))
    commands = {
        call["fields"]["scope"]["chat_id"]: [c["command"] for c in call["fields"]["commands"]]
        for call in telegram.calls(method="setMyCommands")
    }
    assert "roster" in commands[COACH] and "checkin" not in commands[COACH]
    assert "checkin" in commands[ATHLETE] and "roster" not in commands[ATHLETE]
