"""A coach types "on it" or "I called her" instead of tapping: the open alerts are put before them."""

from __future__ import annotations

from bot.core.turn import ChatTurn
from bot.dialogue.readers import said
from bot.people.rights import athletes_seen_by
from bot.safety.alert_taps import list_alerts, open_to
from bot.store.tables.people import Person
from bot.words.languages import mark
from engine.written.late import Late

#: What is said of an alert that has been seen, and of nothing else.
SEEN_TO = mark(
    "acknowledge, acknowledged, ack, on it, i'm on it, im on it, seen, seen it, calling, calling now"
)
_CALLED = Late(
    r"(?:i(?:['’]ve| have|['’]m)? )?(?:just )?(?:called|rang|phoned|calling|spoke (?:to|with)|"
    r"spoken (?:to|with)|talked (?:to|with)) \w+.*"
    r"|(?:ich )?habe? (?:gerade )?(?:mit )?\w+ (?:gerade )?(?:angerufen|gesprochen|telefoniert).*"
)


def heard(turn: ChatTurn, person: Person) -> bool:
    """False where no alert waits for this coach: then it is a word like any other. A typed word
    acknowledges nothing by itself, because it doesn't say which alert was read.
    """
    plain = " ".join(turn.incoming.text.casefold().split()).strip(" .!")
    if not said(plain, SEEN_TO) and not _CALLED.fullmatch(plain):
        return False
    if not athletes_seen_by(turn.session, person) or not open_to(turn.session, person):
        return False
    list_alerts(turn.by(person))
    return True
