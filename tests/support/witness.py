"""What somebody who saw every message of a week would notice: strays, repeats, haste, gaps."""

from __future__ import annotations

import json
import re
from collections import Counter, defaultdict
from collections.abc import Collection, Iterable, Mapping
from datetime import date, datetime, timedelta

from sqlmodel import Session, col, select

from bot.store.tables.people import HistoryRow
from bot.store.tables.traffic import AgendaRow, InboxRow, OutboxRow
from bot.store.tables.week import AlertRow
from tests.support.crowd import Crowd, Someone, buttons_of, file_ids
from tests.support.driven_bot import Call
from tests.support.mornings import colour_of
from tests.support.pictures import is_near, opened

# core.telegram.org/bots/faq#my-bot-is-hitting-limits-how-do-i-avoid-this: about 30 messages a second
# over all chats, and one a second in a chat, where short bursts are let through (we take three).
MOST_IN_A_SECOND, BURST_IN_A_CHAT = 30, 3
LONGEST_LOOKED_AT_S = 120
SOON = timedelta(hours=6)

ON_ATHLETE = re.compile(r"c:[a-z-]+:(\d+)(?::.*)?")
TARGET = re.compile(r"(?:\d+ days? out|The day), (\w+day \d+ \w+)(?:: [^\n]+)?\nCarbs ")
PROMPT = re.compile(r"Good morning, (\w+)\. (?:\d+ days? out\.|This is the day of)")

Window = tuple[datetime, datetime]


def strays(
    crowd: Crowd, may_know: Mapping[str, Mapping[str, Window | None]], numbers: Mapping[int, str]
) -> list[str]:
    """What shows somebody a name, a chat or an athlete's number that is not theirs to know.

    `may_know`: by reader, of whom they may read, and in which time (None: always). `numbers`: whose
    is the number that a button about an athlete carries.
    """
    names = {one.name: re.compile(rf"\b{one.name}\b") for one in crowd.people.values()}
    of_chat = {str(person.chat): person.name for person in crowd.people.values()}
    found = []
    for call in crowd.bot.line.calls:
        reader = crowd.reader(call)
        if reader is None:
            continue
        shown = _all_that_is_shown(call)
        told = {name for name, pattern in names.items() if pattern.search(shown)}
        told |= {of_chat[digits] for digits in re.findall(r"\d{7,}", shown) if digits in of_chat}
        told |= {
            numbers[int(match.group(1))]
            for data in buttons_of(call).values()
            if (match := ON_ATHLETE.fullmatch(data)) and not data.startswith("c:roster:")
        }
        for name in sorted(told - {reader.name}):
            if not _knows(may_know[reader.name], name, call.at):
                found.append(f"{call.at:%a %H:%M} {reader.name} reads of {name}: {shown[:300]}")
    return found


def _all_that_is_shown(call: Call) -> str:
    beside = ("chat_id", "scope", "callback_query_id")
    shown = {key: value for key, value in call.fields.items() if key not in beside}
    return json.dumps(shown, ensure_ascii=False)


def _knows(known: Mapping[str, Window | None], name: str, at: datetime) -> bool:
    if name not in known:
        return False
    window = known[name]
    return window is None or window[0] <= at <= window[1]


def strange_pictures(crowd: Crowd) -> list[str]:
    """Pictures that show another athlete than their caption says, by each one's own colour."""
    found, seen = [], 0
    for person in crowd.people.values():
        for shown in person.came:
            if shown.method in ("sendPhoto", "sendMediaGroup"):
                name = shown.text.partition(",")[0]
                for file_id in file_ids(shown, "photo"):
                    seen += 1
                    pixel = opened(crowd.telegram.downloads(file_id)).getpixel((150, 300))
                    if not is_near(pixel, colour_of(name)):
                        found.append(f"{person.name}: {shown.text}")
    return found if seen else ["no picture came at all"]


def repeats(people: Iterable[Someone], since: datetime) -> list[str]:
    """The same words twice within hours in one chat, as messages of their own."""
    found = []
    for person in people:
        last: dict[str, datetime] = {}
        for shown in (shown for shown in person.came if shown.at >= since):
            before = last.get(shown.text)
            if shown.text and before is not None and shown.at - before < SOON:
                found.append(f"{shown.at:%a %H:%M} {person.name}: {shown.text[:120]}")
            last[shown.text] = shown.at
    return found


def haste(calls: Iterable[Call]) -> list[str]:
    """Where more went out than Telegram's pace allows."""
    everywhere: list[datetime] = []
    in_chat: dict[int, list[datetime]] = defaultdict(list)
    for call in calls:
        everywhere.append(call.at)
        if call.method not in ("answerCallbackQuery", "setMyCommands", "getMe"):
            in_chat[int(call.fields["chat_id"])].append(call.at)
    everywhere.sort()
    found = [
        f"{first:%a %H:%M:%S}: more than {MOST_IN_A_SECOND} within a second"
        for first, last in zip(everywhere, everywhere[MOST_IN_A_SECOND:], strict=False)
        if last - first < timedelta(seconds=1)
    ]
    for chat, times in in_chat.items():
        times.sort()
        for first, begin in enumerate(times):
            for count, end in enumerate(times[first:], start=1):
                span = (end - begin).total_seconds()
                if span > LONGEST_LOOKED_AT_S:
                    break
                if count > BURST_IN_A_CHAT + span + 1e-6:
                    found.append(f"{begin:%a %H:%M:%S} in {chat}: {count} within {span:.2f} s")
    return found


def targets(people: Iterable[Someone], year: int) -> Counter[tuple[str, date]]:
    """How often each was told a day's figures, as a message of its own."""
    told: Counter[tuple[str, date]] = Counter()
    for person in people:
        for shown in person.came:
            for match in TARGET.finditer(shown.text):
                day = datetime.strptime(f"{match.group(1)} {year}", "%A %d %B %Y").date()  # noqa: DTZ007
                told[person.name, day] += 1
    return told


def asked(people: Iterable[Someone]) -> list[tuple[str, datetime]]:
    """Whom the bot wished a good morning, and when."""
    return [
        (match.group(1), shown.at)
        for person in people
        for shown in person.came
        if (match := PROMPT.match(shown.text))
    ]


def mishaps(session: Session, unreachable: Collection[int]) -> list[str]:
    """What was set aside, given up or tried again, beside messages to those who had stopped the bot."""
    found = [
        f"update {row.update_id}: {row.status}, {row.problem}"
        for row in session.exec(select(InboxRow))
        if row.status != "done" or row.attempts
    ]
    found += [
        f"{row.method} to {row.chat_id}: {row.status}, {row.problem}"
        for row in session.exec(select(OutboxRow))
        if row.status not in ("sent", "dropped") and row.chat_id not in unreachable
    ]
    found += [
        f"{row.kind} of {row.subject}: {row.attempts} attempts"
        for row in session.exec(select(AgendaRow))
        if row.attempts
    ]
    return found


def loose_ends(session: Session) -> list[str]:
    """Alerts whose life is not told to its end: opened, repeated or not, seen to or grown worse."""
    found = []
    for row in session.exec(select(AlertRow).order_by(col(AlertRow.id))):
        if row.level == "advisory":
            continue
        life = [
            kept.what
            for kept in session.exec(
                select(HistoryRow)
                .where(HistoryRow.athlete_id == row.athlete_id)
                .order_by(col(HistoryRow.id))
            )
            if kept.detail.get("alert") == row.id
        ]
        ends = {"alert acknowledged", "alert became worse", "alert no longer repeated"}
        whole = (
            life[:1] == ["alert opened"]
            and life[-1] in ends
            and life.count("alert repeated") == row.repeats
            and ("second contact told" in life) == (row.second_contact_at is not None)
            and row.acknowledged_at is not None
        )
        waits = session.exec(
            select(AgendaRow.id).where(
                AgendaRow.subject == f"alert:{row.id}", AgendaRow.status == "waiting"
            )
        ).first()
        if not whole or waits is not None:
            found.append(f"{row.flag} of {row.athlete_id}: {life}")
    return found
