"""What is asked for is shown: a view of the plan, a card, what the plan says beside words."""

from __future__ import annotations

from bot.coach.card import card
from bot.dialogue import asking
from bot.dialogue.food_talk import asks_about_drink
from bot.dialogue.requests import requested
from bot.direct import passing_on
from bot.direct.flow_passing_on import PASS_ON, SURE
from bot.event.stage import times_told
from bot.event.stage import views as stage_views
from bot.food.list import rows_of
from bot.landing.beside import has_a_day
from bot.landing.text import Landing
from bot.people import coach_settings
from bot.people.telling import say_to
from bot.store.base import id_of
from engine.asked import View, view_asked_for


def served(it: Landing, *, at_least_words: int) -> bool:
    """Something that a command shows, asked for in words."""
    if it.heard or len(it.text.split()) < at_least_words:
        return False
    return _shown(it, requested(it.text))


def _shown(it: Landing, name: str | None) -> bool:
    """What a command shows, to whom it is for; whether it was shown."""
    command = it.house.commands.get(name) if name is not None else None
    if command is None or not command.roles & it.house.roles:
        return False
    command.run(it.turn.by(it.person))
    return True


def opens_card(it: Landing) -> bool:
    """A coach typed an athlete's name and nothing else: the card."""
    if not it.is_coach:
        return False
    profile = passing_on.named_alone(it.turn.session, it.person, it.text)
    asks_whom = it.latest is not None and it.latest.flow == PASS_ON.id and it.latest.step != SURE
    if profile is None or asks_whom:
        return False
    if it.latest is not None and asking.is_button(it.latest, it.house.flows, it.text):
        return False
    coach_settings.card_opened(it.turn, it.person, profile.person_id)
    text, buttons = card.card(it.turn, it.person, profile)
    say_to(it.turn, it.person, text, buttons=buttons)
    return True


def show_beside(it: Landing) -> None:
    """What the athlete's own plan says to what was asked of a person."""
    if times_told.asked_about(it.turn, it.person, it.text):
        return
    view = view_asked_for(it.text)
    if not has_a_day(it.turn, it.person) or (view is View.FOOD and not _has_a_menu(it)):
        return
    if not stage_views.told_unset(it.turn, it.person, it.text):
        _shown(it, view)


def _has_a_menu(it: Landing) -> bool:
    """Whether a menu says more than the hint: none does of coffee, nor is one made of an empty list."""
    return not asks_about_drink(it.text) and bool(rows_of(it.turn.session, id_of(it.person)))
