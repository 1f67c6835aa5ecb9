"""Plan: its commands, buttons, flows and timed duties."""

from __future__ import annotations

from bot.core.chat import cards
from bot.core.chat.routes import COACH, COACHING, Command, tap, view
from bot.dialogue.asking import FlowBinding, of_own_athlete
from bot.dialogue.feature import Feature
from bot.plan import buttons, limits, planning
from bot.plan import numbers as plan_numbers
from bot.plan import typed as plan_typed
from bot.plan.flow import DRAFT, PLAN_NUMBER
from bot.plan.flow_limits import LIMIT, PLAN_FIT
from bot.plan.next_load import looks, next_load
from bot.plan.next_load.flow import NEXT_LOAD
from bot.plan.prep import of_own_event
from bot.plan.review import review
from bot.plan.review.flow import PLAN_REVIEW, PLAN_TOTAL
from bot.plan.templates import flow as flow_templates
from bot.plan.templates import templates
from bot.plan.templates.flow import TEMPLATE_NAME, TEMPLATE_USE
from bot.words.common import cancelled

FEATURE = Feature(
    commands=(
        Command(
            "templates", COACHING, templates.list_templates, flow_templates.templates_menu, rank=180
        ),
    ),
    taps=(
        tap(buttons.TEMPLATE, COACHING, templates.tapped, flow_templates.gone),
        tap(cards.LOOK, COACH, looks.look_tapped),
    ),
    on_card=(
        view(cards.DRAFT, planning.ask_draft),
        view(cards.PLAN, plan_numbers.show_plan),
        view(buttons.DAY, plan_numbers.show_day),
        view(buttons.NUMBER, plan_numbers.ask_number),
        view(buttons.SET_NUMBER, plan_typed.set_tapped),
        view(cards.TEMPLATES, templates.use_template),
        view(buttons.TEMPLATE_SAVE, templates.ask_to_save),
        view(cards.LEARNT, next_load.show),
        view(buttons.LEARNT_NO, next_load.leave),
        view(buttons.REVIEW, review.show_review),
        view(buttons.TOTAL, review.ask_total),
        view(cards.LIMITS, limits.show_limits),
        view(buttons.LIMITS_USE, limits.use_suggested_limits),
        view(buttons.ONE_LIMIT, limits.ask_limit),
    ),
    flows=(
        FlowBinding(DRAFT, of_own_athlete(planning.draft_given, gone=None)),
        FlowBinding(PLAN_FIT, of_own_athlete(planning.fit_answered, gone=cancelled)),
        FlowBinding(PLAN_NUMBER, of_own_event(plan_numbers.number_given)),
        FlowBinding(TEMPLATE_NAME, of_own_event(templates.name_given)),
        FlowBinding(TEMPLATE_USE, of_own_athlete(templates.use_answered, gone=cancelled)),
        FlowBinding(NEXT_LOAD, of_own_athlete(next_load.answered, gone=cancelled)),
        FlowBinding(PLAN_REVIEW, of_own_athlete(review.review_answered, gone=None)),
        FlowBinding(PLAN_TOTAL, of_own_event(review.total_given)),
        FlowBinding(LIMIT, of_own_event(limits.limit_given)),
    ),
)
