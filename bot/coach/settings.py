"""A coach sets when the digest comes, where they are, and which hours are quiet."""

from __future__ import annotations

from datetime import time

from sqlmodel import Session

from bot.coach import digest, flow_digest
from bot.coach.buttons import SETTINGS, CoachSetting, OnSettings
from bot.coach.flow_digest import DIGEST, QUIET, ZONE
from bot.core.chat.outbox import Button, Buttons
from bot.core.turn import Act, Turn
from bot.dialogue import asking
from bot.dialogue.flow import Flow, zone_of
from bot.people.coach_settings import coach_settings_of, zone_of_coach
from bot.people.telling import answer, rewrite, say_to
from bot.store.tables.coach import CoachSettings
from bot.store.tables.people import OpenQuestion, Person


def show_settings(turn: Act) -> None:
    """/digest: where nothing is set yet, the questions; else what holds, with its buttons."""
    settings = coach_settings_of(turn.session, turn.person)
    if settings.digest_at is None and settings.zone is None and settings.quiet_from is None:
        _ask(turn, turn.person, DIGEST)
        return
    text, buttons = _view(turn.session, turn.person, settings)
    say_to(turn, turn.person, text, buttons=buttons)


ASKED = {
    CoachSetting.DIGEST: DIGEST, CoachSetting.ZONE: ZONE, CoachSetting.QUIET: QUIET,
}  # fmt: skip


def settings_tapped(turn: Act, pressed: OnSettings) -> None:
    """The buttons under the settings."""
    flow = ASKED.get(pressed.setting)
    if flow is not None:
        answer(turn)
        _ask(turn, turn.person, flow)
        return
    settings = coach_settings_of(turn.session, turn.person)
    if pressed.setting is CoachSetting.OFF:
        settings.digest_at = None
    else:
        settings.quiet_from = settings.quiet_to = None
    turn.session.add(settings)
    answer(turn)
    digest.schedule(turn, turn.person)
    text, buttons = _view(turn.session, turn.person, settings)
    rewrite(turn, text, buttons)


def setting_given(turn: Turn, coach: Person, question: OpenQuestion) -> None:
    """Keep the new setting; the digest ahead moves with it."""
    settings, answers = coach_settings_of(turn.session, coach), question.answers
    if "place" in answers:
        settings.zone = zone_of(answers)
    if "digest_at" in answers:
        settings.digest_at = time.fromisoformat(answers["digest_at"])
    if "quiet_to" in answers:
        settings.quiet_from = time.fromisoformat(answers["quiet_from"])
        settings.quiet_to = time.fromisoformat(answers["quiet_to"])
    turn.session.add(settings)
    digest.schedule(turn, coach)
    text, buttons = _view(turn.session, coach, settings)
    say_to(turn, coach, text, buttons=buttons)


def _ask(turn: Turn, coach: Person, flow: Flow) -> None:
    asking.open_question(turn, coach, flow, coach.id, {"_zone": zone_of_coach(turn.session, coach)})


def _view(session: Session, coach: Person, settings: CoachSettings) -> tuple[str, Buttons]:
    is_on = settings.digest_at is not None
    quiet = (
        (settings.quiet_from, settings.quiet_to)
        if settings.quiet_from is not None and settings.quiet_to is not None
        else None
    )
    text = flow_digest.settings(settings.digest_at, zone_of_coach(session, coach), quiet)
    return text, [
        [
            Button(flow_digest.time_button(is_on=is_on), SETTINGS(CoachSetting.DIGEST)),
            *([Button(flow_digest.off_button(), SETTINGS(CoachSetting.OFF))] if is_on else []),
        ],
        [
            Button(flow_digest.quiet_button(), SETTINGS(CoachSetting.QUIET)),
            *(
                [Button(flow_digest.quiet_off_button(), SETTINGS(CoachSetting.QUIET_OFF))]
                if quiet
                else []
            ),
        ],
        [Button(flow_digest.zone_button(), SETTINGS(CoachSetting.ZONE))],
    ]
