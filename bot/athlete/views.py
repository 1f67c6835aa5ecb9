"""What an athlete asks for: today, the week, why, past check-ins, settings, pause, help."""

from __future__ import annotations

from datetime import date, time
from functools import partial

from sqlmodel import col, select

from bot.alerts.notes import quiet_now
from bot.athlete import words
from bot.athlete import words as why_words
from bot.athlete.buttons import SETTING, Setting
from bot.athlete.flow_settings import SETTINGS
from bot.checkin import checkins
from bot.checkin.flow import CHECK_IN
from bot.core.chat.outbox import Button, Delivery
from bot.core.turn import Act, Turn
from bot.decision import words_self_coached, words_target
from bot.decision.deciding import latest_decision
from bot.decision.signoff.signoff import waiting_line
from bot.decision.to_athlete import care_for, told_whole, told_why
from bot.dialogue import asking
from bot.dialogue.flow import zone_of
from bot.event import season
from bot.people.changes import Change
from bot.people.people import (
    active,
    get_person,
    get_profile,
    is_own_coach,
    local_date,
    others_coaching,
    record,
)
from bot.people.telling import answer, say_to
from bot.store.tables.people import AthleteProfile, AthleteStatus, OpenQuestion, Person
from bot.store.tables.week import CheckInRow, DecisionRow, DecisionStatus
from bot.week.cases import checkin_of, decision_of
from bot.week.load import checkin_row, current_week, day_set, target_in_force
from bot.week.prompts import schedule
from bot.words import common, phases

PAST_SHOWN = 14


def check_in(turn: Act) -> None:
    profile = active(turn, turn.person)
    if profile is not None:
        checkins.start(turn, turn.person, profile)


def today(turn: Act) -> None:
    profile = active(turn, turn.person)
    if profile is None:
        return
    day = local_date(profile, turn.context)
    week = current_week(turn.session, profile)
    if week is None:
        coach = get_person(turn.session, profile.coach_id)
        say_to(turn, turn.person, words.no_week(coach.first_name))
        return
    target, planned = target_in_force(turn.session, week, day), week.plan.day(week.days_out(day))
    if target is None or planned is None:
        say_to(turn, turn.person, words.no_target(day))
        return
    decided = latest_decision(turn.session, profile.person_id)
    why = _told_of(turn, profile, decided, day) if decided is not None else ""
    row = checkin_row(turn.session, profile.person_id, day)
    text = words_target.target_message(
        words_target.target_head(week.plan, day, week.days_out(day)),
        care_for(turn, profile).lines(target, planned.carb_g, profile.volume_unit),
        why,
        lead="" if row else words.not_checked_in_yet(),
    )
    say_to(turn, turn.person, text)


def _told_of(turn: Act, profile: AthleteProfile, decided: DecisionRow, day: date) -> str:
    """The reason beside the day's figure; and what waits to be approved for a day that comes."""
    if decided.sets_date == day:
        return told_why(turn.session, profile, decided)
    if decided.sets_date > day and decided.status == DecisionStatus.WAITING:
        return words.for_a_day(decided.sets_date, waiting_line(turn.session, profile, decided))
    return ""


def week_view(turn: Act) -> None:
    profile = active(turn, turn.person)
    if profile is None:
        return
    week = current_week(turn.session, profile)
    if week is None:
        coach = get_person(turn.session, profile.coach_id)
        say_to(turn, turn.person, words.no_week(coach.first_name))
        return
    now_day = local_date(profile, turn.context)
    rows: list[str] = []
    heading = ""
    for planned in week.plan:
        day = week.date_of(planned.days_out)
        above, heading = heading, phases.phase_words(week.plan.phase(planned.days_out))
        if heading != above:
            rows.append(f"\n{heading}")
        target = target_in_force(turn.session, week, day)
        assert target is not None
        fixed = day < now_day or day_set(turn.session, profile.person_id, day) is not None
        row = words.week_row(planned, target, day, profile.volume_unit, fixed=fixed)
        rows.append(words.on_today(row) if day == now_day else row)
    title = words.week_title(week.event.kind, week.event.day)
    ahead = season.ahead_line(turn, profile)
    text = "\n".join([title, *rows])
    say_to(turn, turn.person, "\n\n".join(part for part in (text, ahead) if part))


def why(turn: Act) -> None:
    profile = get_profile(turn.session, turn.person.id)
    decided = latest_decision(turn.session, profile.person_id)
    text = (
        why_words.why_message(
            decision_of(decided),
            told_whole(turn.session, profile, decided),
            profile.weight_unit,
            profile.volume_unit,
        )
        if decided
        else why_words.nothing_decided()
    )
    say_to(turn, turn.person, text)


def past(turn: Act) -> None:
    profile = get_profile(turn.session, turn.person.id)
    query = (
        select(CheckInRow)
        .where(CheckInRow.athlete_id == turn.person.id)
        .order_by(col(CheckInRow.date).desc())
        .limit(PAST_SHOWN)
    )
    rows = []
    for row in turn.session.exec(query):
        set_row = day_set(turn.session, profile.person_id, row.date)
        rows.append(
            words.past_row(
                checkin_of(row), set_row.carb_g if set_row else None,
                profile.weight_unit, profile.volume_unit,
            )
        )  # fmt: skip
    say_to(turn, turn.person, words.past_message(rows))


def settings(turn: Act) -> None:
    profile = get_profile(turn.session, turn.person.id)
    if profile.zone is None:
        say_to(turn, turn.person, common.not_active("onboarding"))
        return
    labelled = [Button(words.settings_button(key), SETTING(key)) for key in words.SETTINGS_BUTTONS]
    say_to(turn, turn.person, _settings_lines(profile), buttons=[labelled[:2], labelled[2:]])


def _settings_lines(profile: AthleteProfile) -> str:
    return words.settings_message(
        profile.zone or "",
        profile.prompt_time.strftime("%H:%M"),
        profile.weight_unit,
        profile.volume_unit,
        profile.status == AthleteStatus.PAUSED,
    )


def change_setting(turn: Act, pressed: Setting) -> None:
    """A button under the settings: ask for the new value."""
    flow = SETTINGS.get(pressed.key)
    if flow is None:
        answer(turn, common.already_answered())
    else:
        asking.open_question(turn, turn.person, flow, turn.person.id)


def setting_changed(turn: Turn, person: Person, question: OpenQuestion) -> None:
    """Keep the new setting; the mornings ahead move with it."""
    profile = get_profile(turn.session, person.id)
    answers = question.answers
    if "place" in answers:
        profile.zone = zone_of(answers)
    if "prompt_time" in answers:
        profile.prompt_time = time.fromisoformat(answers["prompt_time"])
    profile.weight_unit = answers.get("weight_unit", profile.weight_unit)
    profile.volume_unit = answers.get("volume_unit", profile.volume_unit)
    for waiting in asking.open_questions(
        turn.session, person, flow=CHECK_IN.id, subject_id=profile.person_id
    ):
        waiting.answers = waiting.answers | checkins.units_of(
            profile
        )  # the next figure is in these
    record(turn, profile.person_id, Change.SETTINGS(flow=question.flow), by=person.id)
    schedule(turn, profile)
    say_to(turn, person, words.settings_changed(_settings_lines(profile)))


def pause(turn: Act) -> None:
    profile = active(turn, turn.person)
    if profile is not None:
        _set_status(turn, turn.person, profile, AthleteStatus.PAUSED)
        say_to(
            turn,
            turn.person,
            words_self_coached.paused() if is_own_coach(profile) else words.paused(),
        )


def resume(turn: Act) -> None:
    profile = get_profile(turn.session, turn.person.id)
    if profile.status != AthleteStatus.PAUSED:
        say_to(turn, turn.person, words.not_paused())
        return
    _set_status(turn, turn.person, profile, AthleteStatus.ACTIVE)
    say_to(turn, turn.person, words.resumed())


def _set_status(turn: Turn, person: Person, profile: AthleteProfile, status: AthleteStatus) -> None:
    profile.status = status
    paused = status == AthleteStatus.PAUSED
    kept = Change.PAUSED() if paused else Change.RESUMED()
    record(turn, profile.person_id, kept, by=person.id)
    schedule(turn, profile)
    told = words.coach_told_paused if paused else words.coach_told_resumed
    for coach in others_coaching(turn.session, profile):
        say_to(
            turn,
            coach,
            partial(told, person.first_name),
            how=Delivery(silent=quiet_now(turn, coach)),
        )
