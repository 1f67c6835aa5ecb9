"""An athlete who is somewhere else now, with other clocks."""

from __future__ import annotations

from dataclasses import asdict
from zoneinfo import ZoneInfo

from bot.athlete.flow_settings import SETTINGS
from bot.core.zones import find_places
from bot.dialogue import asking
from bot.landing.persons import tell_coach
from bot.landing.text import Landing
from bot.people.people import profile_of
from bot.people.telling import say_to
from bot.store.tables.people import AthleteStatus
from engine.written.whereabouts import now_in


def now_elsewhere(it: Landing) -> bool:
    """An athlete says that they are in a place with other clocks: whether these are to be theirs now is
    one tap, and the coach has the words.
    """
    place = now_in(it.text)
    profile = profile_of(it.turn.session, it.person.id) if place and not it.heard else None
    if profile is None or profile.zone is None or profile.status != AthleteStatus.ACTIVE:
        return False
    found = find_places(place)
    offset = it.turn.now.astimezone(ZoneInfo(profile.zone)).utcoffset()
    away = [
        one for one in found if it.turn.now.astimezone(ZoneInfo(one.zone)).utcoffset() != offset
    ]
    if not found or len(away) != len(found):
        return False
    say_to(it.turn, it.person, tell_coach(it, it.text))
    asking.open_question(
        it.turn, it.person, SETTINGS["place"], subject_id=profile.person_id,
        answers={"place": [asdict(one) for one in found]},
    )  # fmt: skip
    return True
