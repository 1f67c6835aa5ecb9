"""What an athlete asks for: today, the week, why, past check-ins, settings, pause, help."""

from __future__ import annotations

from datetime import time

from sqlmodel import Session, col, select

from bot.context import Context
from bot.flows.checkin import CHECK_IN
from bot.flows.onboarding import zone_of
from bot.flows.settings import SETTINGS
from bot.incoming import Incoming
from bot.messages import athlete as words
from bot.messages import common, on_your_own
from bot.messages import why as why_words
from bot.outbox import Button, answer_tap, say
from bot.service import asking, checkins
from bot.service.care import care_for
from bot.service.deciding import latest_decision, told_why
from bot.service.notes import quiet_now
from bot.service.people import get_person, is_own_coach, local_date, profile_of, record, speaking_to
from bot.service.prompts import schedule
from bot.service.rights import others_coaching
from bot.service.week import checkin_row, current_week, day_set, target_in_force
from bot.store.people import AthleteProfile, AthleteStatus, OpenQuestion, Person
from bot.store.week import CheckInRow

PAST_SHOWN = 14


def active(session: Session, person: Person, context: Context) -> AthleteProfile | None:
    """The person's profile if check-ins are running; else they are told why not."""
    profile = profile_of(session, person.id)
    assert profile is not None
    if profile.status == AthleteStatus.ACTIVE:
        return profile
    say(session, chat_id=person.chat_id, text=words.not_active(profile.status), now=context.now)
    return None


def check_in(session: Session, person: Person, rest: str, context: Context) -> None:
    profile = active(session, person, context)
    if profile is not None:
        checkins.start(session, person, profile, context)


def today(session: Session, person: Person, rest: str, context: Context) -> None:
    profile = active(session, person, context)
    if profile is None:
        return
    day = local_date(profile, context)
    week = current_week(session, profile)
    if week is None:
        coach = get_person(session, profile.coach_id)
        say(session, chat_id=person.chat_id, text=words.no_week(coach.first_name), now=context.now)
        return
    target, planned = target_in_force(session, week, day), week.plan.day(week.days_out(day))
    if target is None or planned is None:
        say(session, chat_id=person.chat_id, text=words.no_target(day), now=context.now)
        return
    decided = latest_decision(session, profile.person_id)
    why = told_why(session, profile, decided) if decided and decided.sets_date == day else ""
    row = checkin_row(session, profile.person_id, day)
    text = words.target_message(
        day,
        week.days_out(day),
        care_for(session, profile, context).lines(target, planned.carb_g, profile.volume_unit),
        why,
        lead="" if row else words.not_checked_in_yet(),
    )
    say(session, chat_id=person.chat_id, text=text, now=context.now)


def week_view(session: Session, person: Person, rest: str, context: Context) -> None:
    profile = active(session, person, context)
    if profile is None:
        return
    week = current_week(session, profile)
    if week is None:
        coach = get_person(session, profile.coach_id)
        say(session, chat_id=person.chat_id, text=words.no_week(coach.first_name), now=context.now)
        return
    now_day = local_date(profile, context)
    rows = []
    for planned in week.plan:
        day = week.date_of(planned.days_out)
        target = target_in_force(session, week, day)
        assert target is not None
        rows.append(
            words.week_row(
                planned.days_out, day, target, planned.carb_g, profile.volume_unit,
                today=day == now_day,
                fixed=day < now_day or day_set(session, profile.person_id, day) is not None,
            )
        )  # fmt: skip
    title = words.week_title(week.event.kind, week.event.day)
    say(session, chat_id=person.chat_id, text=words.week_message(title, rows), now=context.now)


def why(session: Session, person: Person, rest: str, context: Context) -> None:
    profile = profile_of(session, person.id)
    assert profile is not None
    decided = latest_decision(session, profile.person_id)
    text = (
        why_words.why_message(
            decided.decision, profile.weight_unit, profile.volume_unit, own=is_own_coach(profile)
        )
        if decided
        else why_words.nothing_decided()
    )
    say(session, chat_id=person.chat_id, text=text, now=context.now)


def past(session: Session, person: Person, rest: str, context: Context) -> None:
    profile = profile_of(session, person.id)
    assert profile is not None
    query = (
        select(CheckInRow)
        .where(CheckInRow.athlete_id == person.id)
        .order_by(col(CheckInRow.date).desc())
        .limit(PAST_SHOWN)
    )
    rows = []
    for row in session.exec(query):
        set_row = day_set(session, profile.person_id, row.date)
        rows.append(
            words.past_row(
                row.date, row.weight_kg, row.fullness, row.sharpness, row.water_l,
                set_row.carb_g if set_row else None, profile.weight_unit, profile.volume_unit,
            )
        )  # fmt: skip
    say(session, chat_id=person.chat_id, text=words.past_message(rows), now=context.now)


def settings(session: Session, person: Person, rest: str, context: Context) -> None:
    profile = profile_of(session, person.id)
    assert profile is not None
    if profile.zone is None:
        say(session, chat_id=person.chat_id, text=words.not_active("onboarding"), now=context.now)
        return
    labelled = [Button(words.settings_button(key), f"set:{key}") for key in words.SETTINGS_BUTTONS]
    say(
        session, chat_id=person.chat_id, text=_settings_lines(profile), now=context.now,
        buttons=[labelled[:2], labelled[2:]],
    )  # fmt: skip


def _settings_lines(profile: AthleteProfile) -> str:
    return words.settings_message(
        profile.zone or "",
        profile.prompt_time.strftime("%H:%M"),
        profile.weight_unit,
        profile.volume_unit,
        profile.status == AthleteStatus.PAUSED,
    )


def change_setting(
    session: Session, person: Person, arguments: list[str], incoming: Incoming, context: Context
) -> None:
    """A button under the settings: ask for the new value."""
    assert incoming.tap_id is not None
    flow = SETTINGS.get(arguments[0] if arguments else "")
    answer_tap(
        session, chat_id=person.chat_id, tap_id=incoming.tap_id, now=context.now,
        text="" if flow else common.already_answered(),
    )  # fmt: skip
    if flow is not None:
        asking.open_question(session, person, flow, context=context, subject_id=person.id)


def setting_changed(
    session: Session, person: Person, question: OpenQuestion, context: Context
) -> None:
    """Keep the new setting; the mornings ahead move with it."""
    profile = profile_of(session, person.id)
    assert profile is not None
    answers = question.answers
    if "place" in answers:
        profile.zone = zone_of(answers)
    if "prompt_time" in answers:
        profile.prompt_time = time.fromisoformat(answers["prompt_time"])
    profile.weight_unit = answers.get("weight_unit", profile.weight_unit)
    profile.volume_unit = answers.get("volume_unit", profile.volume_unit)
    session.add(profile)
    for waiting in asking.open_questions(
        session, person, flow=CHECK_IN.id, subject_id=profile.person_id
    ):
        waiting.answers = waiting.answers | checkins.units_of(
            profile
        )  # the next figure is in these
    record(session, profile.person_id, "settings", context, by=person.id, flow=question.flow)
    schedule(session, profile, context=context)
    text = words.settings_changed(_settings_lines(profile))
    say(session, chat_id=person.chat_id, text=text, now=context.now)


def pause(session: Session, person: Person, rest: str, context: Context) -> None:
    profile = active(session, person, context)
    if profile is not None:
        _set_status(session, person, profile, AthleteStatus.PAUSED, context)
        text = on_your_own.paused() if is_own_coach(profile) else words.paused()
        say(session, chat_id=person.chat_id, text=text, now=context.now)


def resume(session: Session, person: Person, rest: str, context: Context) -> None:
    profile = profile_of(session, person.id)
    assert profile is not None
    if profile.status != AthleteStatus.PAUSED:
        say(session, chat_id=person.chat_id, text=words.not_paused(), now=context.now)
        return
    _set_status(session, person, profile, AthleteStatus.ACTIVE, context)
    say(session, chat_id=person.chat_id, text=words.resumed(), now=context.now)


def _set_status(
    session: Session,
    person: Person,
    profile: AthleteProfile,
    status: AthleteStatus,
    context: Context,
) -> None:
    profile.status = status
    session.add(profile)
    record(session, profile.person_id, status.value, context, by=person.id)
    schedule(session, profile, context=context)
    told = words.coach_told_paused if status == AthleteStatus.PAUSED else words.coach_told_resumed
    for coach in others_coaching(session, profile):
        with speaking_to(coach):
            say(
                session, chat_id=coach.chat_id, text=told(person.first_name), now=context.now,
                silent=quiet_now(session, coach, context),
            )  # fmt: skip
