"""One athlete's card: how they stand today, and everything that can be done about them."""

from __future__ import annotations

from datetime import date

from sqlmodel import Session

from bot.coach import words
from bot.coach.card import lines as card_lines
from bot.coach.card import pages
from bot.coach.roster.standing import RosterRow, decided_line, load_roster_rows, standing
from bot.core.chat.outbox import Buttons
from bot.core.turn import Context, OnAthlete, Turn
from bot.decision.signoff.signoff import morning_line
from bot.event import season
from bot.people import coach_settings
from bot.people.people import name_of
from bot.people.telling import answer, rewrite
from bot.plan.planning import event_line
from bot.store.tables.people import AthleteProfile, Person
from bot.store.tables.week import CheckInRow, EventRow
from bot.week.cases import CLEARED, reported_symptoms
from bot.week.load import current_week, target_in_force
from bot.words import figures, phases
from bot.words.names import symptom_name


def show_card(turn: OnAthlete) -> None:
    """One athlete, in the place of the message that was tapped."""
    answer(turn)
    coach_settings.roster_left(turn.session, turn.person, turn.incoming)
    text, buttons = card(turn, turn.person, turn.profile)
    rewrite(turn, text, buttons)


def card(turn: Turn, coach: Person, profile: AthleteProfile) -> tuple[str, Buttons]:
    name = name_of(turn.session, profile.person_id)
    self_coached = coach.id == profile.person_id
    (seen,) = load_roster_rows(turn, [profile])
    lines = _card_lines(turn, coach, profile, seen)
    buttons = [
        *card_lines.open_buttons(turn.session, profile, seen, self_coached=self_coached),
        *pages.first_page(pages.of_card(turn, coach, profile), set_up=seen.event is not None),
    ]
    return words.card(name, lines), buttons


def _card_lines(turn: Turn, coach: Person, profile: AthleteProfile, seen: RosterRow) -> list[str]:
    today, row = seen.today, seen.morning
    week = current_week(turn.session, profile)
    lines = [_event_words(profile, seen.event, turn.context), season.ahead_line(turn, profile)]
    target = target_in_force(turn.session, week, today) if week is not None else None
    if week is not None and target is not None:
        phase = phases.of_day(week.plan, week.days_out(today))
        water = figures.volume(target.water_l, profile.volume_unit)
        lines.append(words.card_today(today, target.carb_g, water, phase))
    if row is not None:
        lines.append(words.card_morning(morning_line(profile, row)))
    lines += card_lines.looks(turn.session, profile, today)
    told = _also_told(turn.session, profile, row, today)
    lines += [told] if told else []
    decided = decided_line(seen)
    lines += [figures.sentence(decided)] if decided else []
    if profile.zone is not None:
        at = f"{profile.prompt_time:%H:%M}"
        lines.append(words.card_asked(at, profile.zone, always_tomorrow=profile.always_tomorrow))
    if week is not None:
        lines.append(card_lines.limits_line(week, profile))
    lines.append(
        standing(seen, turn.context, coach_settings.zone_of_coach(turn.session, coach)).state
    )
    lines += card_lines.open_lines(turn.session, coach, profile, seen.waiting)
    lines.append(card_lines.note_line(turn.session, profile, today))
    lines.append(card_lines.pictures_line(turn.session, profile))
    lines.append(card_lines.contacts_line(turn.session, profile))
    return [line for line in lines if line]


def _also_told(
    session: Session, profile: AthleteProfile, row: CheckInRow | None, today: date
) -> str:
    """What the athlete said today beside the numbers, in a line; "" where that is nothing."""
    reported = reported_symptoms(session, profile.person_id, today)
    told = [one for one in reported if not one.startswith(CLEARED)]  # what it was not is no news
    symptoms = [*(row.symptoms if row is not None else ()), *told]
    return words.card_also_told(
        [symptom_name(symptom) for symptom in dict.fromkeys(symptoms)],
        row.gut if row is not None else None,
        row.sleep_h if row is not None else None,
        row.note if row is not None else "",
    )


def _event_words(profile: AthleteProfile, event: EventRow | None, context: Context) -> str:
    return event_line(profile, event, context) if event is not None else words.no_event()
