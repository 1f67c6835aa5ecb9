"""A coach sets when the digest comes, where they are, and which hours are quiet."""

from __future__ import annotations

from datetime import time

from sqlmodel import Session

from bot.context import Context
from bot.dialogue import Flow
from bot.flows.coach_digest import DIGEST, QUIET, ZONE
from bot.flows.onboarding import zone_of
from bot.incoming import Incoming
from bot.messages import coach_digest as words
from bot.outbox import Button, Buttons, say
from bot.service import asking, digest
from bot.service.desk import desk_of, zone_of_coach
from bot.service.tapping import answer, rewrite
from bot.store.desk import CoachDesk
from bot.store.people import OpenQuestion, Person


def show_settings(session: Session, coach: Person, _rest: str, context: Context) -> None:
    """/digest: where nothing is set yet, the questions; else what holds, with its buttons."""
    desk = desk_of(session, coach)
    if desk.digest_at is None and desk.zone is None and desk.quiet_from is None:
        _ask(session, coach, DIGEST, context)
        return
    text, buttons = _view(session, coach, desk)
    say(session, chat_id=coach.chat_id, text=text, buttons=buttons, now=context.now)


def desk_tapped(
    session: Session, coach: Person, arguments: list[str], incoming: Incoming, context: Context
) -> None:
    """Buttons "desk:SETTING" under the settings."""
    what = arguments[0] if arguments else ""
    flow = {"digest": DIGEST, "zone": ZONE, "quiet": QUIET}.get(what)
    if flow is not None:
        answer(session, incoming, context)
        _ask(session, coach, flow, context)
        return
    desk = desk_of(session, coach)
    if what == "off":
        desk.digest_at = None
    elif what == "quiet-off":
        desk.quiet_from = desk.quiet_to = None
    else:
        answer(session, incoming, context, words.not_a_setting())
        return
    session.add(desk)
    answer(session, incoming, context)
    digest.schedule(session, coach, context)
    text, buttons = _view(session, coach, desk)
    rewrite(session, incoming, text, context, buttons)


def setting_given(
    session: Session, coach: Person, question: OpenQuestion, context: Context
) -> None:
    """Keep the new setting; the digest ahead moves with it."""
    desk, answers = desk_of(session, coach), question.answers
    if "place" in answers:
        desk.zone = zone_of(answers)
    if "digest_at" in answers:
        desk.digest_at = time.fromisoformat(answers["digest_at"])
    if "quiet_to" in answers:
        desk.quiet_from = time.fromisoformat(answers["quiet_from"])
        desk.quiet_to = time.fromisoformat(answers["quiet_to"])
    session.add(desk)
    digest.schedule(session, coach, context)
    text, buttons = _view(session, coach, desk)
    say(session, chat_id=coach.chat_id, text=text, buttons=buttons, now=context.now)


def _ask(session: Session, coach: Person, flow: Flow, context: Context) -> None:
    asking.open_question(
        session, coach, flow, context=context, subject_id=coach.id,
        answers={"_zone": zone_of_coach(session, coach)},
    )  # fmt: skip


def _view(session: Session, coach: Person, desk: CoachDesk) -> tuple[str, Buttons]:
    is_on = desk.digest_at is not None
    quiet = (
        (desk.quiet_from, desk.quiet_to)
        if desk.quiet_from is not None and desk.quiet_to is not None
        else None
    )
    text = words.settings(desk.digest_at, zone_of_coach(session, coach), quiet)
    return text, [
        [
            Button(words.time_button(is_on=is_on), "desk:digest"),
            *([Button(words.off_button(), "desk:off")] if is_on else []),
        ],
        [
            Button(words.quiet_button(), "desk:quiet"),
            *([Button(words.quiet_off_button(), "desk:quiet-off")] if quiet else []),
        ],
        [Button(words.zone_button(), "desk:zone")],
    ]
