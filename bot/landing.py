"""Where a typed sentence lands: as an answer, a check-in, a request, or a word to a person.

The first that fits has it, and nothing falls through: what is none of the others is passed on to a
person, and its writer is told to whom. Complaints have been heard before any of this.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass, replace

from bot.beside import has_a_day, with_hints
from bot.checkin import typed
from bot.checkin.flow import CHECK_IN
from bot.coach.card import card
from bot.core.chat import outbox
from bot.core.chat.incoming import Kind, Media
from bot.core.chat.routes import COACHING, Command
from bot.core.turn import ChatTurn
from bot.decision.signoff import typed as signoff_typed
from bot.dialogue import answering, asking
from bot.dialogue.food_talk import asks_about_drink
from bot.dialogue.requests import requested
from bot.direct import direct_messages as messages_across
from bot.direct import passing_on, replies
from bot.direct import words_passing_on as words
from bot.direct.flow_passing_on import PASS_ON, SURE, sends
from bot.event.stage import views as stage_views
from bot.food.list import rows_of
from bot.membership.onboarding.flow import ONBOARDING
from bot.people import coach_settings
from bot.people.people import get_profile, profile_of
from bot.people.rights import athletes_seen_by
from bot.people.telling import say_to
from bot.plan import typed as plan_typed
from bot.plan.next_load import typed_look
from bot.safety import typed_ack
from bot.safety import watch as safety_watch
from bot.safety.flow_symptom import ASKED_ABOUT_SIGNS
from bot.store.base import id_of
from bot.store.tables.people import OpenQuestion, Person
from bot.words.symptoms import symptom_name
from engine.asked import View, view_asked_for
from engine.symptoms.thirst import is_of_thirst
from engine.written.chatter import is_chatter
from engine.written.putting_off import puts_off

#: Whom a coach's words are for is answered in no more; what is longer are other words.
MOST_OF_A_NAME = 2


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


def land(
    turn: ChatTurn,
    person: Person,
    house: House,
    *,
    asked: Sequence[OpenQuestion],
    heard: bool = False,
) -> None:
    """A typed text. `asked` are the questions that were open when it was written."""
    ordered = replies.question_first(turn.session, person, turn.incoming, asked)
    it = Landing(turn, person, house, ordered, heard)
    if not it.text.strip():
        _empty(it)
        return
    if _replied(it):
        return
    if it.latest is not None and _opens_card(it):  # a city may be called like an athlete
        return
    waits_for_words = it.latest is not None and answering.takes_anything(
        it.latest, house.flows, turn.context
    )
    if not waits_for_words and _answered(it):
        return
    if (
        typed.one_line(turn, person)
        or _delayed(it)
        or plan_typed.heard(turn, person, it.text, house.flows, asked=ordered)
        or _served(it, at_least_words=2 if waits_for_words else 1)
        or _opens_card(it)
        or _typed_for_a_tap(it)
    ):
        return
    if waits_for_words and _given_in_words(it):
        return
    if not waits_for_words and _answered_in_part(it):
        return
    if not heard:
        _go_on(it)
    elif safety_watch.only_wonders(turn, person):
        _show_beside(it)


def caption(turn: ChatTurn, person: Person, house: House, *, kept: bool, heard: bool) -> None:
    """What stands under a file: the morning's numbers, or a word to the coach. Not `kept`: nobody
    here can open that file.
    """
    it = Landing(turn, person, house, (), heard)
    numbers = bool(it.text.strip()) and typed.one_line(turn, person)
    if not kept:
        lead = words.file_unread()
        if _agreed(it) and not _coaches(it):
            lead = f"{lead} {_tell_coach(it, it.text, words.file_told)}".strip()
        say_to(turn, person, lead)
    elif it.text.strip() and not numbers and not heard and not _is_label(it.text):
        _go_on(it)


def unreadable(
    turn: ChatTurn, person: Person, house: House, *, asked: Sequence[OpenQuestion]
) -> None:
    """A voice message, a sticker, a place on the map: say what to do instead, and tell the coach."""
    it = Landing(turn, person, house, asked)
    _not_words(it, turn.incoming.media or Media.ELSE)


def edited(
    turn: ChatTurn, person: Person, house: House, *, asked: Sequence[OpenQuestion], heard: bool
) -> None:
    """A message was changed that held no answer of a check-in: where it had been passed on, it is
    changed there; else it is taken as if it were new.
    """
    if turn.incoming.message_id is not None and passing_on.edited(
        turn, person, turn.incoming.message_id, turn.incoming.text, heard=heard
    ):
        return
    as_new = replace(turn.incoming, kind=Kind.TEXT)
    land(replace(turn, incoming=as_new), person, house, asked=asked, heard=heard)


def _replied(it: Landing) -> bool:
    """Telegram's own reply: a coach's to an athlete's words, an athlete's to the coach's."""
    if it.turn.incoming.reply_to is None:
        return False
    latest = it.latest
    row = replies.message_answered(it.turn.session, it.person, it.turn.incoming.reply_to)
    if row is None or (latest is not None and latest.outbox_id == row.id):
        return False
    if it.is_coach and passing_on.replied(it.turn, it.person):
        return True
    coach_id = replies.coach_answered(it.turn.session, it.person, it.turn.incoming)
    if coach_id is None or "athlete" not in it.house.roles:
        return False
    if it.heard:  # the coach has these words with what is made of them
        return True
    messages_across.to_coaches(it.turn, it.person, it.text.strip(), coach_id)
    return True


def _delayed(it: Landing) -> bool:
    """Word that the day runs late is served, and what was said beside it lands by itself."""
    rest = stage_views.heard_delay(it.turn, it.person, it.text)
    if rest and not it.heard:
        beside = replace(it.turn.incoming, text=rest)
        land(replace(it.turn, incoming=beside), it.person, it.house, asked=it.asked)
    return rest is not None


def _typed_for_a_tap(it: Landing) -> bool:
    """What a coach says in words that only a tap decides: of an alert, a proposal, a look. Not where
    another question waits for an answer.
    """
    if it.latest is not None and it.latest.flow != PASS_ON.id:
        return False
    return (
        (it.is_coach and typed_ack.heard(it.turn, it.person))
        or signoff_typed.assented(it.turn, it.person)
        or (it.is_coach and typed_look.heard(it.turn, it.person))
    )


def _answered(it: Landing) -> bool:
    if it.latest is not None and _sends_unseen(it, it.latest):
        asking.ask_again(it.turn, it.person, it.latest, it.house.flows)
        return True
    taken = answering.answered(it.turn, it.person, it.house.flows, asked=it.asked)
    return taken is not None


def _sends_unseen(it: Landing, asked: OpenQuestion) -> bool:
    """Whether an "ok" would send words to an athlete although something else was shown since: then it
    may be meant for that.
    """
    if asked.flow != PASS_ON.id or asked.step != SURE:
        return False
    return sends(it.text) and outbox.said_since(it.turn.session, it.person.chat_id, asked.outbox_id)


def _answered_in_part(it: Landing) -> bool:
    """Several answers at once, or one with more behind it, which then goes on by itself."""
    if it.latest is None:
        return False
    taken = answering.answered_in_part(it.turn, it.person, it.house.flows, it.latest)
    if taken is None:
        return False
    if taken.rest and not it.heard:
        rest = replace(it.turn.incoming, text=taken.rest)
        _go_on(replace(it, turn=replace(it.turn, incoming=rest), asked=()))
    return True


def _given_in_words(it: Landing) -> bool:
    """Free words to the question that waits for them, unless they name another athlete, or the
    question was put so long ago that they can hardly be meant for it.
    """
    latest = it.latest
    assert latest is not None
    patient = it.house.flows[latest.flow].flow.patient and "?" not in it.text
    listens = answering.LISTENS_LONG if patient else answering.LISTENS_FOR
    if it.turn.now - latest.asked_at > listens:
        return False
    if it.is_coach and passing_on.names_another(it.turn.session, it.person, latest, it.text):
        return False
    if not _answered(it):  # empty, too long, or about a drug
        asking.refuse(it.turn, it.person, latest, it.house.flows, it.text)
    return True


def _served(it: Landing, *, at_least_words: int) -> bool:
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


def _opens_card(it: Landing) -> bool:
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


def _go_on(it: Landing) -> None:
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
        it.turn, it.person, it.text, for_somebody_else=athlete and not _coaches(it)
    ):
        return
    if not athlete:
        passing_on.from_contact(it.turn, it.person, it.text)
        return
    if latest is not None and not _agreed(it):
        sentence = words.not_before_you_agree()
        asking.remind(it.turn, it.person, latest, flows, sentence)
        return
    if is_of_thirst(it.text):
        told = _tell_coach(it, it.text, words.may_drink_told)
        _say_and_remind(it, f"{words.may_drink()} {told}")
        return
    if _of_a_mild_doubt(it):
        return
    sentence = _tell_coach(it, it.text)
    waits = latest is not None and latest.flow in (*ASKED_ABOUT_SIGNS, CHECK_IN.id)
    if is_chatter(it.text) and not waits:
        say_to(it.turn, it.person, sentence, silent=True)  # and no question once more for it
        return
    if latest is not None and latest.flow == CHECK_IN.id and puts_off(it.text):
        say_to(it.turn, it.person, f"{sentence} {words.when_you_can()}")
        return
    sentence = with_hints(it.turn, it.person, it.text, sentence)
    if latest is not None:  # above the question, which is put once more
        _show_beside(it)
    _say_and_remind(it, sentence)
    if latest is None:
        _show_beside(it)


def _show_beside(it: Landing) -> None:
    """What the athlete's own plan says to what was asked of a person."""
    view = view_asked_for(it.text)
    if not has_a_day(it.turn, it.person) or (view is View.FOOD and not _has_a_menu(it)):
        return
    if not stage_views.told_unset(it.turn, it.person, it.text):
        _shown(it, view)


def _has_a_menu(it: Landing) -> bool:
    """Whether a menu says more than the hint: none does of coffee, nor is one made of an empty list."""
    return not asks_about_drink(it.text) and bool(rows_of(it.turn.session, id_of(it.person)))


def _of_a_mild_doubt(it: Landing) -> bool:
    """What may mean a mild complaint: asked about where that would change the day, else brought to
    the coach at once with what it may mean.
    """
    complaint = safety_watch.mild_doubt(it.text)
    if complaint is None:
        return False
    if not safety_watch.asked_about_mild(it.turn, it.person, complaint, it.text):
        told = _tell_coach(
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


def _coaches(it: Landing) -> bool:
    """Whether somebody else than themselves is on this coach's roster."""
    return any(
        one.person_id != it.person.id for one in athletes_seen_by(it.turn.session, it.person)
    )


def _tell_coach(
    it: Landing, said: str, instead: Callable[[], str] | None = None, *, at_once: bool = False
) -> str:
    """Pass it on to the coach; returns what the athlete is told."""
    profile = get_profile(it.turn.session, it.person.id)
    return passing_on.from_athlete(
        it.turn, it.person, profile, said.strip(),
        message_id=it.turn.incoming.message_id, instead=instead, at_once=at_once,
    )  # fmt: skip


def _agreed(it: Landing) -> bool:
    """Whether the athlete has agreed that somebody reads what they write."""
    profile = profile_of(it.turn.session, it.person.id)
    if profile is None:
        return False
    asked = next((one for one in reversed(it.asked) if one.flow == ONBOARDING.id), None)
    return asked is None or asked.answers.get("consent") == "yes"


def _empty(it: Landing) -> None:
    latest = it.latest
    if latest is not None and latest.flow in it.house.flows:
        asking.refuse(it.turn, it.person, latest, it.house.flows, it.text)
    else:
        say_to(it.turn, it.person, words.cannot_read(Media.ELSE))


def _not_words(it: Landing, media: Media) -> None:
    sentence = words.cannot_read(media)
    if media in words.TOLD and _agreed(it) and not _coaches(it):
        told = _tell_coach(it, it.text, lambda: words.sent_in_place(media))
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


def _is_label(text: str) -> bool:
    """Whether a caption only says which side a picture shows."""
    return len(text.split()) <= 2
