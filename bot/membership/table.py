"""Membership: its commands, buttons, flows and timed duties."""

from __future__ import annotations

from bot.core.chat.routes import ANYONE_KNOWN, ATHLETE, COACH, FORMER, Command, Duty, tap, view
from bot.dialogue.asking import FlowBinding
from bot.dialogue.feature import After, Feature
from bot.membership import (
    buttons,
    ending,
    flow_invitations,
    invitations,
    language,
    second_coach,
    words,
)
from bot.membership.deletion import athlete as deletion
from bot.membership.deletion import told_others
from bot.membership.deletion import words as deletion_words
from bot.membership.flow_invitations import CHANGE_COACH
from bot.membership.flow_second import SECOND
from bot.membership.my_data import handing_out
from bot.membership.onboarding import onboarding
from bot.membership.onboarding.flow import LATER, ONBOARDING
from bot.membership.onboarding.flow_measures import MEASURES
from bot.people.changes import Change

_OR_FORMER = ANYONE_KNOWN | FORMER

FEATURE = Feature(
    commands=(
        Command("leave", ATHLETE, ending.ask, words.leave_menu, rank=110),
        Command("mydata", _OR_FORMER, handing_out.hand_out, words.menu, rank=115, can_wait=True),
        Command("delete_my_data", _OR_FORMER, deletion.ask, deletion_words.deletion_menu, rank=120),
        Command(
            "invite", COACH, invitations.invite_athlete, flow_invitations.invite_menu, rank=190
        ),
        Command(
            "contact", COACH, invitations.invite_contact, flow_invitations.contact_menu, rank=200
        ),
        Command(
            "selfcoach", COACH, invitations.self_coach, flow_invitations.selfcoach_menu, rank=220
        ),
        Command("language", ANYONE_KNOWN, language.show, words.language_menu, rank=290),
    ),
    taps=(
        tap(buttons.LEAVE, ATHLETE, ending.tapped),
        tap(buttons.GONE, _OR_FORMER, deletion.tapped),
        tap(buttons.CONTACT_REMOVE, COACH, invitations.contact_tapped),
        tap(buttons.MORE, ATHLETE, onboarding.tapped),
        tap(buttons.LANGUAGE, ANYONE_KNOWN, language.choose, words.not_there),
    ),
    on_card=(
        view(buttons.ASK_MEASURES, onboarding.ask_measures),
        view(buttons.SECOND, second_coach.show_second, first_coach_only=True),
        view(buttons.SECOND_ASK, second_coach.ask_second, first_coach_only=True),
        view(buttons.SECOND_END, second_coach.end_second, first_coach_only=True),
        view(buttons.END, ending.ask_to_end, first_coach_only=True),
        view(buttons.END_YES, ending.end, first_coach_only=True),
        view(buttons.END_NO, ending.keep, first_coach_only=True),
    ),
    flows=(
        FlowBinding(ONBOARDING, onboarding.finish),
        FlowBinding(LATER, onboarding.given),
        FlowBinding(MEASURES, onboarding.measured),
        FlowBinding(SECOND, invitations.second_given),
        FlowBinding(CHANGE_COACH, invitations.coach_change_answered),
    ),
    duties=(
        Duty(second_coach.OVER, second_coach.over, "the end of a second coach's time"),
        Duty(
            told_others.FORGET,
            told_others.due,
            "a second look for what was told of somebody who is gone",
        ),
        Duty(
            told_others.FORGET_NAME,
            told_others.name_due,
            "a second look for the name of somebody who is gone",
        ),
    ),
    after=(After((Change.EVENT_SET,), onboarding.ask_for_new_events),),
)
