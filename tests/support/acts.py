"""What the twenty's coaches and athletes do beside the mornings, as scripts for `Crowd.together`."""

from __future__ import annotations

import io
from collections.abc import Sequence
from datetime import date

from openpyxl import load_workbook
from openpyxl.worksheet.worksheet import Worksheet

from tests.support.crowd import Script, Shown, file_ids
from tests.support.twenty import Cast, invitation_heard

GROUP = -7_390_001


def says(cast: Cast, who: str, *texts: str, part: str) -> Script:
    """Write these one after the other, and then hear something with these words."""
    for text in texts:
        cast[who].says(text)
        yield
    cast[who].heard(part)


def taps(cast: Cast, who: str, *labels: str, part: str) -> Script:
    for label in labels:
        cast[who].taps(label)
        yield
    cast[who].heard(part)


def edits(cast: Cast, who: str, text: str, part: str) -> Script:
    cast[who].edits(text)
    yield
    cast[who].heard(part)


def says_in_a_group(cast: Cast, who: str, *texts: str) -> Script:
    person = cast[who]
    for text in texts:
        cast.crowd.telegram.update(
            message={
                "message_id": 1, "date": 1, "text": text,
                "chat": {"id": GROUP, "type": "group", "title": "Gym"},
                "from": {"id": person.chat, "is_bot": False, "first_name": person.name},
            }
        )  # fmt: skip
        yield


def stops_the_bot(cast: Cast, who: str, *, with_word: bool) -> Script:
    cast[who].stops_the_bot(with_word=with_word)
    yield


def comes_back(cast: Cast, who: str, part: str) -> Script:
    cast[who].comes_back()
    yield
    cast[who].heard(part)
    yield from says(cast, who, "/help", part="I am not a doctor")


def opens_card(cast: Cast, coach: str, athlete: str) -> Script:
    yield from says(cast, coach, "/roster", part="Roster: ")
    yield from taps(cast, coach, "All *", athlete, part=f"{athlete}\n")


def on_the_card(cast: Cast, coach: str, athlete: str, *labels: str, part: str) -> Script:
    """From the roster to an athlete's card, and there these buttons."""
    yield from opens_card(cast, coach, athlete)
    yield from taps(cast, coach, *labels, part=part)


def looks_through_roster(cast: Cast, coach: str) -> Script:
    for label, part in (
        ("Loading *", "Nobody is loading"), ("This week *", "this week"), ("Needs me *", "7 athletes"),
        ("All *", "7 athletes"), ("Refresh", "7 athletes"), ("Aurelio", "Aurelio\n"),
        ("Roster", "7 athletes"),
    ):  # fmt: skip
        yield from taps(cast, coach, label, part=part)


def brings_in(cast: Cast, coach: str, athlete: str, second: str, given: Sequence[str]) -> Script:
    """A second coach, invited from this athlete's card to the day itself, and joining. `given`: on
    whom, and which rights.
    """
    labels = ("Person …", "Second coach", "Invite a second coach", *given, "Event day*")
    yield from on_the_card(cast, coach, athlete, *labels, part="asks you to be second coach")
    code = invitation_heard(cast[coach])
    yield from says(cast, second, f"/join {code}", part="You are second coach for")


def sets_digest(cast: Cast, coach: str, city: str, clock: str) -> Script:
    yield from says(cast, coach, "/digest", city, part="")
    yield from taps(cast, coach, f"{city}*", clock, part="Your digest comes at")


def acknowledges(cast: Cast, who: str, about: str) -> Script:
    """Press the newest Acknowledge, which stands under an alert that begins so."""
    assert about in cast[who].newest("Acknowledge").text
    yield from taps(cast, who, "Acknowledge", part=f"Acknowledged by {who}")


def sets_by_hand(cast: Cast, coach: str, athlete: str, day: str, grams: int) -> Script:
    yield from on_the_card(cast, coach, athlete, "Set a day by hand", day, part="How many grams")
    yield from says(cast, coach, str(grams), part=f"is set to {grams} g")


def sheet_there_and_back(cast: Cast, coach: str, athlete: str) -> Script:
    """Fetch the plan as a sheet, raise the carbs of two days out by ten grams, and send it back."""
    person = cast[coach]
    yield from on_the_card(
        cast, coach, athlete, "Plan …", "Plan as a sheet", "XLSX", part="send the file back"
    )
    sheet = next(m for m in reversed(person.messages.values()) if m.method == "sendDocument")
    (file_id,) = file_ids(sheet, "document")
    book = load_workbook(io.BytesIO(cast.crowd.telegram.downloads(file_id)))
    page = book.active
    assert isinstance(page, Worksheet)
    assert page["B1"].value == athlete and page["A11"].value == 2
    page["C11"] = page["C11"].value + 10
    out = io.BytesIO()
    book.save(out)
    person.sends(out.getvalue(), name="plan.xlsx")
    yield
    person.heard("2 days out, carbs")
    yield from taps(cast, coach, "Use these changes", part="Done: 1 change is now set")


def will_travel(cast: Cast, who: str, leave: date, arrive: date) -> Script:
    days = [f"{day:%d %B %Y}" for day in (leave, arrive)]
    yield from says(cast, who, "/travel", days[0], "18:00", days[1], "08:00", part="ahead of")


def signs(cast: Cast, coach: str, athlete: str, label: str, part: str = "") -> Script:
    """Press a button of the proposal about this athlete."""
    cast[coach].taps(label, proposal(cast, coach, athlete).message_id)
    yield
    cast[coach].heard(part)


def sets_another(cast: Cast, coach: str, athlete: str) -> Script:
    text = proposal(cast, coach, athlete).text
    yield from signs(cast, coach, athlete, "Set another number", "How many grams")
    planned = int(text.partition("Planned ")[2].partition(" g")[0])
    yield from says(cast, coach, str(planned + 10), part="is set to")


def proposal(cast: Cast, coach: str, athlete: str) -> Shown:
    """The newest proposal about this athlete that still has its buttons."""
    for message in reversed(cast[coach].messages.values()):
        if message.text.startswith(f"{athlete}, ") and any("Approve" in b for b in message.buttons):
            return message
    raise AssertionError(f"{coach} has no proposal about {athlete}")
