"""Pictures that are drawn when they are sent, from values that go along in the outbox row: so picture
and words agree however late that is.
"""

from __future__ import annotations

from typing import Any, Generic, TypeVar

from pydantic import TypeAdapter

from bot.core.chat.outbox import send_pictures
from bot.core.turn import Turn
from bot.people.people import still_sees
from bot.store.tables.people import AthleteProfile, Person

_Values = TypeVar("_Values")


class DrawnLater(Generic[_Values]):
    """One kind of picture: how its maker is called, under which key its values go along, and of which
    class they are.
    """

    def __init__(self, make: str, key: str, values: type[_Values]) -> None:
        self.make, self.key = make, key
        self._values = TypeAdapter(values)

    def send(
        self, turn: Turn, reader: Person, profile: AthleteProfile, values: _Values, caption: str
    ) -> None:
        told = self._values.dump_python(values, mode="json")
        picture = {
            "make": self.make, "reader": reader.id, "athlete": profile.person_id, self.key: told
        }  # fmt: skip
        send_pictures(turn, chat_id=reader.chat_id, caption=caption, pictures=[picture])

    def values_in(self, turn: Turn, named: dict[str, Any]) -> _Values | None:
        """The values; None for somebody who may not see this athlete any more."""
        if not still_sees(turn.session, named):
            return None
        return self._values.validate_python(named[self.key])
