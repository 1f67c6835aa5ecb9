"""What an athlete reads beside the word that something went to the coach: what the plan says of it."""

from __future__ import annotations

from bot.core.turn import Turn
from bot.decision.care import care_for
from bot.dialogue.food_talk import asks_about_drink, asks_about_food
from bot.direct import words_passing_on as words
from bot.people.people import local_date, profile_of
from bot.store.tables.people import AthleteStatus, Person
from bot.week.load import current_week, target_in_force
from bot.words.figures import volume
from engine.asked import views_asked_for
from engine.symptoms.asked_whether import says_all_is_well
from engine.written.questions import asks_about_amount, asks_whether_human


def with_hints(turn: Turn, person: Person, text: str, sentence: str) -> str:
    """The sentence with what answers the text meanwhile: rest, drink, food, today's water, and what
    may be meant beside the view that is shown.
    """
    if asks_whether_human(text):
        sentence = f"{words.a_program()} {sentence}"
    if still := _rests_who_asks(turn, person, text):
        sentence = f"{sentence} {still}."
    drink = asks_about_drink(text)
    if drink:
        sentence = f"{sentence} {words.drink_hint()}"
    if (drink or asks_about_food(text)) and has_a_day(turn, person):
        sentence = f"{sentence} {words.food_hint()}"
    if has_a_day(turn, person) and (others := views_asked_for(text)[1:]):
        sentence = f"{sentence} {words.or_meant(others[0])}"
    if asks_about_amount(text) and (water := _water_of_today(turn, person)):
        sentence = f"{words.water_hint(water)} {sentence}"
    return sentence


def has_a_day(turn: Turn, person: Person) -> bool:
    """Whether a plan is there that today is a day of."""
    profile = profile_of(turn.session, person.id)
    return (
        profile is not None
        and profile.status == AthleteStatus.ACTIVE
        and current_week(turn.session, profile) is not None
    )


def _rests_who_asks(turn: Turn, person: Person, text: str) -> str:
    """That there is no training just now, to who asks something meanwhile or feels well again."""
    profile = profile_of(turn.session, person.id)
    if profile is None or not ("?" in text or says_all_is_well(text)):
        return ""
    return care_for(turn, profile).resting(own=True) or ""


def _water_of_today(turn: Turn, person: Person) -> str:
    """What the plan has to be drunk today; "" where there is none, or where thirst alone counts."""
    profile = profile_of(turn.session, person.id)
    if profile is None or not has_a_day(turn, person):
        return ""
    care = care_for(turn, profile)
    week = current_week(turn.session, profile)
    today = local_date(profile, turn.context)
    target = target_in_force(turn.session, week, today) if week is not None else None
    if target is None or care.rest or care.to_thirst or care.unsaid:
        return ""
    return volume(target.water_l, profile.volume_unit)
