"""What comes around the mornings, over the Bot API: is it worth it, the plan, food, journey, the day.

One athlete and one coach from fourteen days out to the last morning after, against the stand-in that
refuses what Telegram's server would.
"""

from __future__ import annotations

from datetime import UTC, datetime, timedelta

import pytest
from sqlalchemy import Engine

from tests.support.chats import Telegram
from tests.support.shifted_bot import ShiftedBot
from tests.support.talk import Talk
from tests.support.weeks import onboarded

pytestmark = [pytest.mark.loopback, pytest.mark.timeout(240), pytest.mark.soak]

COACH, ATHLETE = 101, 102
START = datetime(2027, 4, 24, 15, 0, tzinfo=UTC)


def at(day: int, hour: int, minute: int = 0, month: int = 5) -> datetime:
    return datetime(2027, month, day, hour, minute, 5, tzinfo=UTC)


@pytest.fixture
def talk(telegram: Telegram) -> Talk:
    return Talk(telegram)


def the_event(talk: Talk) -> None:
    talk.says(COACH, "/roster", "Mira")
    talk.taps(COACH, "Mira", "No event yet")
    talk.taps(COACH, "Event", "peak week for")
    talk.taps(COACH, "A show", "day")
    talk.says(COACH, "9 May", "Where is it?")
    talk.says(COACH, "New York", "Is it this one?")
    place = next(label for label in talk.newest_buttons(COACH) if "America/New_York" in label)
    talk.taps(COACH, place, "Sun 9 May 2027 (America/New_York)")
    talk.hears(ATHLETE, "has set your event")


def is_it_worth_it(bot: ShiftedBot, talk: Talk) -> None:
    bot.clock.put_forward_to(at(25, 8, month=4))
    talk.hears(COACH, "show is in 14 days. Is a peak week worth it?")
    talk.taps(COACH, "Answer now", "How lean is")
    lean = next(label for label in talk.newest_buttons(COACH) if label.startswith("5 "))
    talk.taps(COACH, lean, "fat")
    talk.taps(COACH, "Not known", "week")
    for answer in ("0.8", "6"):
        talk.telegram.says(COACH, answer)
    talk.says(COACH, "16", "Still open")
    talk.taps(ATHLETE, "Answer now", "Your periods")
    talk.taps(ATHLETE, "Regular", "Your energy")
    talk.taps(ATHLETE, "Good", "Sleep on most nights")
    talk.says(ATHLETE, "7", "Any injury?")
    talk.taps(ATHLETE, "None", "a peak week is worth it")
    assert "Run it: there is something to peak." in talk.hears(COACH, "Condition 5 of 5.")


def the_plan(talk: Talk) -> None:
    talk.taps(COACH, "Draft a plan", "load be spread")
    talk.taps(COACH, "even", "g/kg")
    talk.taps(COACH, "8.2 g/kg", "How far down should carbs go")
    talk.taps(COACH, "Deep", "Why use it here?")
    said = talk.says(COACH, "She fills from empty, seen in March", "This is the draft")
    assert "Reason for a deep depletion: She fills from empty" in said
    why = talk.taps(COACH, "Why these numbers", "Source: Homer et al. 2024")
    assert "common practice" in why
    talk.taps(COACH, "Back to the draft", "This is the draft")
    said = talk.taps(COACH, "Use this plan", "The plan is set.")
    assert "Your reason is saved with the plan: She fills from empty" in said
    assert "Info: there was no trial" in said
    talk.taps(COACH, "Set the limits", "floor")
    talk.taps(COACH, "Set these limits", "limits are set")
    talk.hears(ATHLETE, "event, plan and limits")
    talk.taps_earlier(COACH, "See the plan", "Tap a day")
    talk.taps(COACH, "1 out", "Which one do you want to change?")
    talk.taps(COACH, "Water", "Send the new number")
    said = talk.says(COACH, "2.8", "Nothing has been changed yet")
    assert "Warning: water is cut" in said
    talk.taps(COACH, "Use it anyway, with a reason", "What is the reason?")
    talk.says(COACH, "Her doctor asked for it", "Your reason is saved with the plan")


def the_journey(bot: ShiftedBot, talk: Talk) -> None:
    bot.clock.put_forward_to(at(4, 5, 31))
    talk.hears(ATHLETE, "5 days out")
    talk.says(ATHLETE, "60.4 5 3.5 on target fine", "Carbs")
    talk.says(ATHLETE, "/travel", "On which day do you leave")
    for answer in ("6 May", "11:00", "6 May"):
        talk.telegram.says(ATHLETE, answer)
    said = talk.says(ATHLETE, "14:00", "America/New_York is 5 h behind Europe/London.")
    assert "get up, and shift meals with it, at Wed 5 May 08:00" in said
    assert "From your arrival on (Thu 6 May 14:00 there)" in said
    talk.hears(COACH, "journey:")
    bot.clock.put_forward_to(at(6, 18))
    talk.hears(ATHLETE, "check-ins go by America/New_York")


def the_food(bot: ShiftedBot, talk: Talk) -> None:
    bot.clock.put_forward_to(at(7, 10, 31))  # half past six in New York, two days out
    talk.hears(ATHLETE, "Good morning")
    talk.says(ATHLETE, "60.6 6 3.5 4 on target fine", "Carbs")
    talk.says(ATHLETE, "/food", "Your list of foods is empty")
    for word, name, liking in (
        ("rice", "White rice, cooked", "A favourite"),
        ("chicken", "Chicken breast, roasted", "Digests well"),
        ("olive", "Olive oil", "Digests well"),
        ("honey", "Honey", "Digests well"),
        ("jelly", "Jelly beans", "So-so"),
        ("dates", "Dates, deglet noor", "Never"),
        ("salt", "Table salt", "Digests well"),
    ):
        talk.taps(ATHLETE, "Add a food", "Which food?")
        talk.says(ATHLETE, word, "Which of these?")
        talk.taps(ATHLETE, name, "How well do you digest it?")
        if liking == "Never":
            talk.taps(ATHLETE, liking, "never digest")
            continue
        talk.taps(ATHLETE, liking, "usual day")
        talk.taps(ATHLETE, "It varies", "is on your list")
    said = talk.says(ATHLETE, "/food", "Today's target: carbs")
    assert "07:00  " in said
    assert "Dates" not in said
    assert "Not quite" not in said
    talk.taps(ATHLETE, "Lock", "Tap a food to keep it")
    chicken = next(b for b in talk.newest_buttons(ATHLETE) if b.startswith("Chicken"))
    talk.taps(ATHLETE, chicken, "Tap a food to keep it")
    assert f"✓ {chicken}" in talk.newest_buttons(ATHLETE)
    talk.taps(ATHLETE, "Today's food", "Today's target")
    talk.taps(ATHLETE, "Swap", "Which one do you want to replace")
    talk.taps(ATHLETE, "White rice, cooked", "What instead of White rice, cooked?")
    said = talk.taps(ATHLETE, "Jelly beans", "White rice, cooked is out for today")
    assert chicken.rsplit(" ", 2)[0] in said
    talk.taps(ATHLETE, "Ate 07:00", "Eaten: carbs")
    talk.taps(ATHLETE, "Ate something else", "What did you eat?")
    talk.says(ATHLETE, "pizza", "is not on your list")
    talk.says(ATHLETE, "honey", "How much")
    talk.says(ATHLETE, "40", "Saved: Honey 40 g")
    said = talk.taps(ATHLETE, "Shopping for the load", "To pack for event day")
    assert "For the load (2 days) and event day" in said


def the_day(bot: ShiftedBot, talk: Talk) -> None:
    bot.clock.put_forward_to(at(8, 16))
    talk.says(COACH, "/stage", "not set yet")
    talk.taps(COACH, "Set the times", "at what time on stage?")
    talk.says(COACH, "15:00", "More classes?")
    talk.taps(COACH, "One class only", "How long is the way")
    talk.telegram.says(COACH, "40")
    talk.telegram.says(COACH, "10:00")
    seen = talk.says(COACH, "10:30", "backwards from the stage")
    assert "15:00  on stage" in seen
    talk.hears(ATHLETE, "has set the times of your day")
    bot.clock.put_forward_to(at(9, 10, 31))
    talk.hears(ATHLETE, "This is the day")
    talk.says(ATHLETE, "61.4 8 3.5 4 on target fine", "Carbs")
    bot.clock.put_forward_to(at(9, 16, 30))
    said = talk.says(ATHLETE, "late 45", "Moved 45 min later")
    assert "15:45  on stage" in said
    assert f"Moved 45 min later (P{ATHLETE} said so)" in talk.hears(COACH, "Moved 45 min later")
    bot.clock.put_forward_to(at(9, 17, 45))  # two hours before
    talk.hears(ATHLETE, "Look check. How full")
    talk.taps(ATHLETE, "9", "How sharp")
    talk.taps(ATHLETE, "5", "How is your stomach?")
    talk.taps(ATHLETE, "Fine", "You're full; leave it")
    talk.hears(COACH, "look check: fullness 9, sharpness 5, stomach fine")
    bot.clock.put_forward_to(at(9, 18, 15))
    talk.hears(ATHLETE, "The last meal before the stage")
    bot.clock.put_forward_to(at(9, 20, 1))
    talk.hears(ATHLETE, "Done. Eat something ordinary")


def the_mornings_after(bot: ShiftedBot, talk: Talk) -> None:
    for number in (1, 2, 3):
        talk.skip(ATHLETE)
        bot.clock.put_forward_to(at(9, 10, 31) + timedelta(days=number))
        talk.hears(ATHLETE, f"Day {number} after. How do you feel?")
        talk.taps(ATHLETE, "Fine", "Your weight")
        said = "my last question" if number == 3 else "Ordinary meals, to appetite"
        talk.taps(ATHLETE, "Not today", said)
    bot.clock.put_forward_to(at(9, 20) + timedelta(days=4))
    talk.hears(COACH, "Debrief of")


def test_from_fourteen_days_out_to_the_last_morning_after(
    talk: Talk, telegram: Telegram, own_engine: Engine
) -> None:
    onboarded(own_engine, now=START)
    with ShiftedBot(telegram, str(own_engine.url), START) as bot:
        the_event(talk)
        is_it_worth_it(bot, talk)
        the_plan(talk)
        talk.says(ATHLETE, "/calendar", "as a calendar file")
        the_journey(bot, talk)
        the_food(bot, talk)
        the_day(bot, talk)
        the_mornings_after(bot, talk)
    assert telegram.refused() == []
    for chat in (COACH, ATHLETE):
        assert all(0 < len(text) <= 4096 for text in talk.shown(chat))
