"""What is no answer, no check-in and no request goes to a person, and its writer is told to whom.

A mistyped answer is asked again first, and a question that waits is put once more beneath.
"""

from __future__ import annotations

from collections.abc import Callable

from bot.checkin.flow import CHECK_IN
from bot.core.chat.incoming import Media
from bot.core.chat.outbox import SILENTLY
from bot.dialogue import answering, asking
from bot.direct import passing_on
from bot.direct import words_passing_on as words
from bot.direct.flow_passing_on import PASS_ON, SURE
from bot.event.stage import times_told
from bot.landing.beside import with_hints
from bot.landing.requests import show_beside
from bot.landing.text import Landing
from bot.people.people import get_profile, has_agreed, profile_of
from bot.people.rights import athletes_seen_by, others_coaching
from bot.people.telling import say_to
from bot.safety import watch as safety_watch
from bot.safety.flow_symptom import ASKED_ABOUT_SIGNS
from bot.store.tables.people import OpenQuestion
from bot.words.symptoms import symptom_name
from engine.symptoms.thirst import is_of_thirst
from engine.written.chatter import is_chatter
from engine.written.putting_off import puts_off
from engine.written.to_the_bot import asks_to_tell_nobody

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
        told = tell_coach(it, it.text, words.may_drink_told)
        _say_and_remind(it, f"{words.may_drink()} {told}")
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
    return passing_on.from_athlete(
        it.turn, profile, said.strip(),
        message_id=it.turn.incoming.message_id, instead=instead, at_once=at_once,
    )  # fmt: skip


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
