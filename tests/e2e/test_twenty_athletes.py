"""Three coaches and twenty athletes through a whole week over the Bot API, on a clock that is driven.

What happens is in `tests.support.busy_week`; here is what everybody must and must not have seen.
"""

from __future__ import annotations

from collections import Counter
from datetime import UTC, date, datetime, time, timedelta
from pathlib import Path
from pprint import pformat
from zoneinfo import ZoneInfo

import pytest
from sqlmodel import select

from bot.store.db import transaction
from bot.store.tables.people import AthleteProfile, Person
from engine.values.case import ForecastUse
from tests.support import witness
from tests.support.acts import GROUP
from tests.support.busy_week import ARRIVED, MISSED, WORDS, Week, day, the_week
from tests.support.chats import Telegram
from tests.support.crowd import Crowd
from tests.support.driven_bot import DrivenBot
from tests.support.twenty import (
    ATHLETES,
    BEFORE,
    CONTACTS,
    Cast,
    coaches_set_the_weeks,
    everybody_comes_in,
)  # fmt: skip

pytestmark = [pytest.mark.loopback, pytest.mark.soak, pytest.mark.timeout(1800)]

ASKS_ABOUT_PHOTOS = ("What do you see on ", "Photos of ")
MOST_ROSTERS = 3  # edits while seven answer, the slowest by buttons within half a minute
TICK = timedelta(seconds=3)  # the default of BRIMLINE_TICK_SECONDS
AFTER = datetime(2027, 4, 5, 16, 0, tzinfo=UTC)
STAND_IN_OVER = datetime(2027, 4, 5, 4, 1, tzinfo=UTC)  # midnight in New York


async def test_three_coaches_and_twenty_athletes_have_their_week_and_nobody_anothers(
    telegram: Telegram, own_url: str, tmp_path: Path
) -> None:
    async with DrivenBot(telegram, own_url, BEFORE, tmp_path / "photos") as bot:
        crowd = Crowd(telegram, bot)
        cast = Cast(crowd)
        await everybody_comes_in(cast, bot)
        only_rules_propose(bot)
        await coaches_set_the_weeks(cast)
        set_up = bot.now
        week = the_week(cast)
        await week.play(AFTER)

        people = list(crowd.people.values())
        left = {cast[name].chat for name in ("Gwendal", "Ulrike")}  # for a while
        refused = [
            call for call in telegram.refused() if int(call["fields"]["chat_id"]) not in left
        ]
        with bot.session() as session:
            loose_ends, mishaps = witness.loose_ends(session), witness.mishaps(session, left)
        found = {
            "somebody reads what is not theirs": witness.strays(
                crowd, may_know(week), numbers(bot)
            ),
            "pictures of somebody else": witness.strange_pictures(crowd),
            "said twice": witness.repeats(people, set_up),
            "faster than Telegram's pace": witness.haste(bot.line.calls),
            "targets": differences(witness.targets(people, 2027), week.targets),
            "mornings asked at the wrong time": asked_when_not_due(week),
            "alerts with loose ends": loose_ends,
            "noise at a coach's": noise(week),
            "alerts that did not find their way": ways_of_alerts(cast),
            "two words on one change": two_words(cast),
            "quiet hours that were not": sounds_at_night(cast),
            "a group that is talked to": talk_in_group(bot),
            "calls that Telegram refuses": refused,
            "mishaps": mishaps,
        }
        went_wrong = {name: what for name, what in found.items() if what}
        assert not went_wrong, pformat(went_wrong, width=200)


def only_rules_propose(bot: DrivenBot) -> None:
    """What is counted below is what rules propose; the forecast has tests of its own."""
    with transaction(bot.engine) as session:
        for profile in session.exec(select(AthleteProfile)):
            profile.forecast = ForecastUse.RULES_ONLY
            session.add(profile)


def differences(seen: Counter[tuple[str, date]], due: Counter[tuple[str, date]]) -> list[str]:
    return [
        f"{name} for {on}: {seen[name, on]}, not {due[name, on]}"
        for name, on in sorted(seen.keys() | due.keys())
        if seen[name, on] != due[name, on]
    ]


def talk_in_group(bot: DrivenBot) -> list[str]:
    """Two things were said there, a command and a question; the command alone is answered, politely."""
    said = [
        str(call.fields["text"]) for call in bot.line.calls if call.fields.get("chat_id") == GROUP
    ]
    return [] if len(said) == 1 and said[0].startswith("I only talk in private chats") else said


def numbers(bot: DrivenBot) -> dict[int, str]:
    with bot.session() as session:
        query = select(Person.id, Person.first_name).join(
            AthleteProfile,
            AthleteProfile.person_id == Person.id,  # type: ignore[arg-type]
        )
        return {number or 0: name for number, name in session.exec(query)}


def may_know(week: Week) -> dict[str, dict[str, witness.Window | None]]:
    """Who may read of whom, set out by hand."""
    known: dict[str, dict[str, witness.Window | None]] = {name: {} for name in week.cast.people}
    for coach, athletes in ATHLETES.items():
        contact = CONTACTS[coach]
        known[coach] |= {athlete.name: None for athlete in athletes} | {contact: None}
        known[contact][coach] = None
        for athlete in athletes:
            known[athlete.name][coach] = None
    weekend = (week.handed_over, STAND_IN_OVER)
    for athlete in ATHLETES["Torvald"]:
        known[athlete.name]["Zebulon"] = None
    for athlete in ATHLETES["Valentina"]:
        known[athlete.name]["Torvald"] = weekend
        known["Torvald"][athlete.name] = weekend
    known["Torvald"] |= {"Ulrike": None, "Zebulon": None, "Valentina": weekend}
    known["Valentina"]["Torvald"] = weekend
    known["Torvald"]["Yevgenia"] = weekend  # the card says who is told when nobody answers
    known["Ulrike"] |= {"Torvald": None, "Brunhilde": None}
    known["Brunhilde"]["Ulrike"] = None
    known["Zebulon"] |= {"Torvald": None}
    # Alerts alone bring an athlete's name to those who have no other right to it.
    known["Zebulon"] |= {"Brunhilde": None, "Fiorella": None, "Wolfram": None}
    known["Wolfram"]["Fiorella"] = known["Fiorella"]["Wolfram"] = None
    known["Xanthe"]["Mireille"] = known["Mireille"]["Xanthe"] = None
    return known


def asked_when_not_due(week: Week) -> list[str]:
    """Good mornings that came twice, not at all, or off the athlete's own clock by more than a tick."""
    asked: dict[tuple[str, date], int] = {}
    found = []
    for name, at in witness.asked(week.cast.people.values()):
        athlete = week.cast.of[name]
        away = name == "Rosamund" and at >= ARRIVED
        local = at.astimezone(ZoneInfo("Europe/Madrid" if away else athlete.zone))
        asked[name, local.date()] = asked.get((name, local.date()), 0) + 1
        due = local.replace(
            hour=athlete.asked_at.hour, minute=athlete.asked_at.minute, second=0, microsecond=0
        )
        if name == "Rosamund" and local.date() == day(2):
            due = ARRIVED  # her morning had gone by on the clocks there
        if name == "Gwendal" and local.date() == day(4):
            due = athlete.at(day(4), time(9))  # had stopped the bot, and is asked once he is back
        if not timedelta(0) <= at - due <= TICK:
            found.append(f"{name} at {local:%a %H:%M:%S}")
    wanted = dict.fromkeys(week.targets, 1) | {(MISSED[0], day(MISSED[1])): 1}
    return found + [
        f"{pair}: {asked.get(pair, 0)}"
        for pair in wanted.keys() | asked.keys()
        if asked.get(pair) != wanted.get(pair)
    ]


def noise(week: Week) -> list[str]:
    """What reaches a coach of seven mornings in the same minutes: one question on all their photos, a
    note, the roster kept up to date; aloud only what is an alert or waits for a word."""
    torvald, aurelio = week.cast["Torvald"], week.cast.of["Aurelio"]
    found = []
    for days_out, aloud, notes in (
        (7, 0, 1), (6, 1, 0), (5, 0, 0), (4, 0, 0), (3, 0, 0), (2, 4, 0), (1, 0, 1), (0, 0, 2),
    ):  # fmt: skip
        begin = aurelio.at(day(days_out), aurelio.asked_at) - timedelta(minutes=5)
        end = begin + timedelta(minutes=20)
        came = torvald.between(begin, end)
        heard = [shown.text for shown in came if not shown.silent]
        silent = [s for s in came if s.silent and s.method == "sendMessage"]
        noted = [s for s in silent if not any(words in s.text for words in ASKS_ABOUT_PHOTOS)]
        edits = Counter(
            torvald.messages[call.fields["message_id"]].text.partition(" ")[0]
            for call in week.cast.crowd.bot.line.calls
            if call.method == "editMessageText" and begin <= call.at < end
            and call.fields["chat_id"] == torvald.chat
        )  # fmt: skip
        grown = edits["Info:"] + edits["Photos"] + edits["What"]
        rosters = edits["Roster:"]
        others = edits.total() - rosters - grown
        photos = len(silent) - len(noted)
        if (
            (len(heard), len(noted)) != (aloud, notes) or rosters > MOST_ROSTERS or others
            or photos > 1
        ):  # fmt: skip
            found.append(
                f"{days_out} days out: {heard}, {len(noted)} notes, {rosters} rosters, {edits}"
            )
    return found


def ways_of_alerts(cast: Cast) -> list[str]:
    """Each alert of the week as those saw it who were to see it, told to the end where it was told."""
    seen = {
        ("Torvald", "Caution: Brunhilde"): "Acknowledged by Torvald",
        ("Ulrike", "Caution: Brunhilde"): "Acknowledged by Torvald",
        ("Zebulon", "Caution: Brunhilde"): "Acknowledged by Torvald",
        ("Torvald", "Warning: Fiorella"): "Acknowledged by Wolfram",
        ("Zebulon", "Warning: Fiorella"): "Acknowledged by Wolfram",
        ("Wolfram", "Warning: Fiorella"): "Acknowledged by Wolfram",
        ("Xanthe", "Warning: Mireille"): "Acknowledged by Xanthe",
        ("Ulrike", "Warning: Mireille"): "Acknowledged by Xanthe",  # once she is back
    }
    found = []
    for (who, what), end in seen.items():
        about = [shown for shown in cast[who].messages.values() if what in shown.text]
        if not about or end not in about[-1].text:
            found.append(f"{who}, {what}: {[shown.text[-80:] for shown in about]}")
    for athlete, who in (("Fiorella", "Zebulon and Wolfram have"), ("Mireille", "Xanthe has")):
        if not any(f"{who} been told too" in shown.text for shown in cast[athlete].came):
            found.append(f"{athlete} was not told that {who} been told")
    first = next(s for s in cast["Xanthe"].came if "Warning: Mireille" in s.text)
    told = next(s for s in cast["Mireille"].came if s.text.startswith("Stop."))
    if first.at - told.at > TICK:
        found.append(f"the second contact heard {first.at - told.at} after the athlete")
    return found


def two_words(cast: Cast) -> list[str]:
    """Both coaches pressed at once: one word counts, and both read which, each on their own clocks."""
    ends = set()
    for who in ("Torvald", "Valentina"):
        (asked,) = [
            s for s in cast[who].messages.values() if s.text.startswith("Quillon, 2 days out")
        ]
        who_said, _, when_and_what = asked.text.rpartition("\n\n")[2].partition(",")
        ends.add(f"{who_said}: {when_and_what.rpartition(': ')[2]}")
        if asked.buttons:
            return [f"{who} can press still"]
    told = [
        s.text for s in cast["Quillon"].came if "Your coach" in s.text and "2 days out" in s.text
    ]
    one = len(ends) == 1 and len(told) == 1
    approved = "Approved by" in min(ends)
    return [] if one and approved == ("approved" in told[0]) else [*ends, *told]


def sounds_at_night(cast: Cast) -> list[str]:
    """What rang in Valentina's quiet hours beside alerts, sign-offs and answers to herself."""
    valentina, zone = cast["Valentina"], ZoneInfo("America/New_York")
    rang = [
        f"{shown.at:%a %H:%M} {shown.text[:80]}"
        for shown in valentina.came
        if not 7 <= shown.at.astimezone(zone).hour < 21
        and not shown.text.startswith("Roster: ")
        and "for you to approve" not in shown.text
        and not shown.silent
    ]
    for words in (WORDS, "Theodora, by Torvald: set a hold"):
        noted = [
            s.at for s in valentina.came if words in s.text and not s.text.startswith("Digest")
        ]
        if [at.astimezone(zone).hour for at in noted] != [7]:
            rang.append(f"{words} of the night came at {noted}")
    return rang
