"""A typed text on its way: what is asked for is shown, and all else goes to a person.

Its writer is told to whom. A mistyped answer is asked again first, and a question that waits is put
once more beneath.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass

from bot.alerts.notes import Wrote
from bot.checkin.flow import CHECK_IN
from bot.coach.card import card
from bot.core.chat.outbox import SILENTLY
from bot.core.chat.routes import COACHING, Command
from bot.core.turn import ChatTurn, Turn
from bot.decision.to_athlete import care_for
from bot.dialogue import answering, asking
from bot.dialogue.requests import asks_about_drink, asks_about_food, requested
from bot.direct import passing_on, words
from bot.direct.flow import PASS_ON, SURE
from bot.event.stage import times_told
from bot.event.stage import views as stage_views
from bot.food.list import rows_of
from bot.people import coach_settings
from bot.people.people import (
    athletes_seen_by,
    get_profile,
    has_agreed,
    local_date,
    others_coaching,
    profile_of,
)
from bot.people.telling import say_to
from bot.safety import watch as safety_watch
from bot.safety.flow_symptom import ASKED_ABOUT_SIGNS
from bot.store.base import id_of
from bot.store.tables.people import AthleteStatus, OpenQuestion, Person
from bot.week.load import current_week, target_in_force
from bot.words.common import Media
from bot.words.figures import volume
from bot.words.names import symptom_name
from engine.asked import View, view_asked_for, views_asked_for
from engine.symptoms.across import is_of_thirst
from engine.symptoms.asked_whether import says_all_is_well
from engine.written.chatter import is_chatter, puts_off
from engine.written.questions import asks_about_amount, asks_to_tell_nobody, asks_whether_human


@dataclass(frozen=True, slots=True)
class House:
    """What the dispatcher knows: every flow, every command, and who this person is here."""

    flows: asking.Flows
    commands: Mapping[str, Command]
    roles: frozenset[str]


@dataclass(frozen=True, slots=True)
class Landing:
    """One text on its way. `heard`: a complaint in it was seen to, so that it has landed already."""

    turn: ChatTurn
    person: Person
    house: House
    asked: Sequence[OpenQuestion]
    heard: bool = False

    @property
    def text(self) -> str:
        return self.turn.incoming.text

    @property
    def latest(self) -> OpenQuestion | None:
        """The question that was put last and still waits."""
        return next((one for one in reversed(self.asked) if one.closed_at is None), None)

    @property
    def is_coach(self) -> bool:
        return bool(COACHING & self.house.roles)


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


#: Whom a coach's words are for is answered in no more; what is longer are other words.
MOST_OF_A_NAME = 2


def go_on(it: Landing) -> None:
    """It is no answer, no check-in and no request: a mistyped answer is asked again, and the rest is
    passed on to a person.
    """
    latest = it.latest
    flows = it.house.flows
    if latest is not None and _meant_for(latest, it):
        asking.refuse(it.turn, it.person, latest, flows, it.text)
        return
    athlete = "athlete" in it.house.roles
    if it.is_coach and passing_on.from_coach(
        it.turn, it.person, it.text, for_somebody_else=athlete and not coaches(it)
    ):
        times_told.asked_about(it.turn, it.person, it.text)
        return
    if not athlete:
        passing_on.from_contact(it.turn, it.person, it.text)
        return
    if latest is not None and not agreed(it):
        sentence = words.not_before_you_agree()
        asking.remind(it.turn, it.person, latest, flows, sentence)
        return
    if is_of_thirst(it.text):
        _say_and_remind(it, f"{words.may_drink()} {tell_coach(it, it.text, words.may_drink_told)}")
        return
    if _of_a_mild_doubt(it):
        return
    sentence = tell_coach(it, it.text)
    waits = latest is not None and latest.flow in (*ASKED_ABOUT_SIGNS, CHECK_IN.id)
    if is_chatter(it.text) and not waits:
        say_to(it.turn, it.person, sentence, how=SILENTLY)  # and no question once more for it
        return
    if latest is not None and latest.flow == CHECK_IN.id and puts_off(it.text):
        say_to(it.turn, it.person, f"{sentence} {words.when_you_can()}")
        return
    sentence = with_hints(it.turn, it.person, it.text, _frankly(it, sentence))
    if latest is not None:  # above the question, which is put once more
        show_beside(it)
    _say_and_remind(it, sentence)
    if latest is None:
        show_beside(it)


def _frankly(it: Landing, sentence: str) -> str:
    """What is said of who was told, to somebody who asked that nobody is."""
    told = others_coaching(it.turn.session, get_profile(it.turn.session, it.person.id))
    if not told or not asks_to_tell_nobody(it.text):
        return sentence
    return words.cannot_keep_back([one.first_name for one in told])


def _of_a_mild_doubt(it: Landing) -> bool:
    """What may mean a mild complaint: asked about where that would change the day, else brought to
    the coach at once with what it may mean.
    """
    complaint = safety_watch.mild_doubt(it.text)
    if complaint is None:
        return False
    if not safety_watch.asked_about_mild(it.turn, it.person, complaint, it.text):
        told = tell_coach(
            it, it.text, lambda: words.may_mean(symptom_name(complaint)), at_once=True
        )
        _say_and_remind(it, f"{told} {words.if_it_troubles_you()}")
    return True


def _meant_for(latest: OpenQuestion, it: Landing) -> bool:
    """Whether a text looks like an answer that went wrong. Beside a coach's words that wait to be sent
    anything but a bare word is meant for somebody, too.
    """
    if latest.flow == PASS_ON.id and not answering.is_bare(it.text):
        return latest.step != SURE and len(it.text.split()) <= MOST_OF_A_NAME
    return answering.attempted(latest, it.house.flows, it.text, it.turn.context, coach=it.is_coach)


def coaches(it: Landing) -> bool:
    """Whether somebody else than themselves is on this coach's roster."""
    return any(
        one.person_id != it.person.id for one in athletes_seen_by(it.turn.session, it.person)
    )


def tell_coach(
    it: Landing, said: str, instead: Callable[[], str] | None = None, *, at_once: bool = False
) -> str:
    """Pass it on to the coach; returns what the athlete is told."""
    profile = get_profile(it.turn.session, it.person.id)
    wrote = Wrote(said.strip(), it.turn.incoming.message_id, instead)
    return passing_on.from_athlete(it.turn, profile, wrote, at_once=at_once)


def agreed(it: Landing) -> bool:
    """Whether the athlete has agreed that somebody reads what they write."""
    profile = profile_of(it.turn.session, it.person.id)
    return profile is not None and has_agreed(it.turn.session, it.person)


def say_empty(it: Landing) -> None:
    latest = it.latest
    if latest is not None and latest.flow in it.house.flows:
        asking.refuse(it.turn, it.person, latest, it.house.flows, it.text)
    else:
        say_to(it.turn, it.person, words.cannot_read(Media.ELSE))


def say_no_words(it: Landing, media: Media) -> None:
    sentence = words.cannot_read(media)
    if media in words.TOLD and agreed(it) and not coaches(it):
        told = tell_coach(it, it.text, lambda: words.sent_in_place(media))
        sentence = f"{sentence} {told}".strip()
    _say_and_remind(it, sentence)


def _say_and_remind(it: Landing, sentence: str) -> None:
    latest = it.latest
    ago = it.turn.now - latest.asked_at if latest is not None else answering.LISTENS_FOR
    recent = ago <= answering.LISTENS_FOR
    if latest is not None and latest.flow in ASKED_ABOUT_SIGNS:
        recent = recent and ago >= safety_watch.ANSWER_WITHIN  # until then it has just been read
    if latest is not None and recent and latest.flow in it.house.flows:
        asking.remind(it.turn, it.person, latest, it.house.flows, sentence)
    else:
        say_to(it.turn, it.person, sentence)
