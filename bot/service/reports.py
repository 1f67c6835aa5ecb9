"""What an athlete tells of body, mood, drugs and drinking: kept, told to the coach, answered."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import timedelta
from zoneinfo import ZoneInfo

from sqlmodel import Session, col, select

from bot.context import Context
from bot.messages import advice, after_show, on_your_own
from bot.messages import safety as words
from bot.outbox import say
from bot.service import alerts, deciding
from bot.service.care import OF_EATING_AND_MOOD, WARNED, rests
from bot.service.people import get_person, is_own_coach, local_date, record
from bot.service.week import (
    CLEARED,
    DRANK_IN_AN_HOUR,
    checkin_row,
    current_week,
    flags_of,
    told_today,
)
from bot.store.people import AthleteProfile, AthleteStatus
from bot.store.week import EventRow, SymptomReport
from engine.after_show import after_show_flags
from engine.evidence import safety as evidence
from engine.evidence.after import AFTER_DAYS
from engine.safety import Flag, FlagId, Level, flags_of_words
from engine.symptoms import EATING_AND_MOOD, Symptom

LONGEST_WORDS = 500
STAGE_EVENING = 18  # o'clock where the athlete is: from then the days after have begun
_OF_THE_MORNING = frozenset(
    {FlagId.LOW_ENERGY, FlagId.SHORT_SLEEP, FlagId.WEEKLY_LOSS, FlagId.MISSED_CHECK_IN}
)


@dataclass(frozen=True, slots=True, kw_only=True)
class Told:
    """What one message or answer told of. `words` are the person's own, "" where buttons were tapped.

    `readings` are entries as `bot.service.week` keeps them; `unread` could not be placed.
    """

    symptoms: tuple[Symptom, ...] = ()
    words: str = ""
    drugs: tuple[str, ...] = ()
    readings: tuple[str, ...] = ()
    emergency: bool = False
    unread: bool = False

    def __bool__(self) -> bool:
        return bool(self.symptoms or self.drugs or self.readings or self.emergency or self.unread)


def report(session: Session, profile: AthleteProfile, told: Told, context: Context) -> None:
    """Keep it, bring it to the coach at its level, answer it as itself, and decide anew with it."""
    day = local_date(profile, context)
    before = alerts.found_on(session, profile.person_id, day)
    new = [s for s in told.symptoms if keep(session, profile, s.value, told.words, context)]
    for entry in (*told.drugs, *told.readings):
        keep(session, profile, entry, told.words, context)
    fresh = _fresh(session, profile, told, before, context)
    _freeze(session, profile, fresh, context)
    alerts.raise_flags(session, profile, fresh, day=day, context=context)
    warned = [flag for flag in fresh if flag.level is Level.WARNING]
    moods = [flag.id for flag in fresh if flag.id in EATING_AND_MOOD]
    coach = coach_name(session, profile)
    if warned:
        deciding.say_emergency(session, profile, [flag.id for flag in warned], context)
        _decide(session, profile, context, lead=None)
    elif moods:
        person = get_person(session, profile.person_id)
        text = advice.mood(moods, coach, context.helpline)
        say(session, chat_id=person.chat_id, text=text, now=context.now)
        _decide(session, profile, context, lead=None)
    else:
        text = _answer(told, fresh, coach)
        anew = bool(new) or any(flag.id is FlagId.LOW_SODIUM for flag in fresh)
        _tell(session, profile, text, context, anew=anew)


def keep(
    session: Session, profile: AthleteProfile, told: str, their_words: str, context: Context
) -> bool:
    """Write down for the day what was told, in whose words; False where it was there already."""
    day = local_date(profile, context)
    their_words = their_words.strip()[:LONGEST_WORDS]
    known = session.exec(
        select(SymptomReport).where(
            SymptomReport.athlete_id == profile.person_id,
            SymptomReport.date == day,
            SymptomReport.symptom == told,
        )
    ).first()
    if known is not None and (not their_words or their_words in known.words):
        return False
    record(
        session, profile.person_id, "symptom", context, by=profile.person_id, told=told,
        words=their_words,
    )  # fmt: skip
    if known is not None:
        known.words = their_words
        session.add(known)
        session.flush()
        return False
    session.add(
        SymptomReport(
            athlete_id=profile.person_id, date=day, symptom=told, words=their_words, at=context.now
        )
    )
    session.flush()
    return True


def cleared(session: Session, profile: AthleteProfile, symptom: str, context: Context) -> None:
    """A doubtful word did not mean that: what was held back for it is decided again."""
    keep(session, profile, f"{CLEARED}{symptom}", "", context)
    _decide(session, profile, context, lead="")


def coach_name(session: Session, profile: AthleteProfile) -> str:
    """Who is told; "" where nobody else coaches them."""
    return "" if is_own_coach(profile) else get_person(session, profile.coach_id).first_name


def _fresh(
    session: Session,
    profile: AthleteProfile,
    told: Told,
    before: dict[str, int],
    context: Context,
) -> list[Flag]:
    """What this adds to what the coach was told today: new, worse, or said once more."""
    day = local_date(profile, context)
    week, row = current_week(session, profile), checkin_row(session, profile.person_id, day)
    known = flags_of_words(told_today(session, profile.person_id, day))
    if week is not None and row is not None and profile.body_mass_kg is not None:
        known = flags_of(session, week, row)
    flags = [flag for flag in known if flag.id not in _OF_THE_MORNING]
    if told.emergency:
        facts = {"words": told.words} if told.words else {}
        flags.append(Flag(FlagId.EMERGENCY, Level.WARNING, facts, (evidence.FIRST_AID,)))
    if told.unread:
        facts = {"words": told.words}
        flags.append(Flag(FlagId.SYMPTOM_UNREAD, Level.CAUTION, facts, (evidence.A_HUMAN_LOOKS,)))
    after = _after_show(session, profile, told, context)
    if after:
        flags = [flag for flag in flags if flag.level is not Level.ADVISORY]
    said = {*told.symptoms}
    return [
        flag
        for flag in (*flags, *after)
        if flag.id is not FlagId.DOUBT
        and (flag.id in said or flag.level.rank > before.get(flag.id, -1))
    ]


def _after_show(
    session: Session, profile: AthleteProfile, told: Told, context: Context
) -> list[Flag]:
    """In the night after a stage and the days that follow, what is a doctor's matter then."""
    now = context.now.astimezone(ZoneInfo(profile.zone or "UTC"))
    today = now.date()
    event = session.exec(
        select(EventRow)
        .where(
            EventRow.athlete_id == profile.person_id,
            EventRow.kind != "trial",
            EventRow.day <= today,
            EventRow.day >= today - timedelta(days=int(AFTER_DAYS.value)),
        )
        .order_by(col(EventRow.id).desc())
    ).first()
    if event is None or (event.day == today and now.hour < STAGE_EVENING):
        return []
    return list(after_show_flags(told.symptoms, None, None))


def _freeze(
    session: Session, profile: AthleteProfile, fresh: Sequence[Flag], context: Context
) -> None:
    if any(flag.level is Level.WARNING for flag in fresh):
        deciding.freeze(session, profile, WARNED, context)
    elif any(flag.id in EATING_AND_MOOD for flag in fresh):
        deciding.freeze(session, profile, OF_EATING_AND_MOOD, context)


def _answer(told: Told, fresh: Sequence[Flag], coach: str) -> str:
    """One message for all that was told: refusals, what to do, and who knows of it."""
    found = {flag.id for flag in fresh}
    parts = []
    if told.drugs:
        parts.append(words.drug_refusal(coach) if coach else on_your_own.drug_refusal())
    if any(entry.startswith(DRANK_IN_AN_HOUR) for entry in told.readings):
        parts.append(advice.drank_too_fast(coach))
    if FlagId.AFTER_SHOW_COMPLAINT in found:
        parts.append(after_show.look_into_it(coach, own=not coach))
    elif FlagId.LOW_SODIUM in found:
        parts.append(advice.low_sodium(coach))
    elif told.symptoms:
        parts.append(advice.told(told.symptoms, coach))
    if told.unread:
        parts.append(advice.told_at_once(coach))
    if FlagId.PULSE_HIGH in found and Symptom.FAST_HEART not in told.symptoms:
        parts.append(advice.advice([Symptom.FAST_HEART]))
    if Symptom.URINE_DARK in found and Symptom.URINE_DARK not in told.symptoms:
        parts.append(advice.advice([Symptom.URINE_DARK]))
    return "\n\n".join(parts)


def _tell(
    session: Session, profile: AthleteProfile, text: str, context: Context, *, anew: bool
) -> None:
    """Answer; where this morning was decided, with the day's target as it is after that."""
    person = get_person(session, profile.person_id)
    if rests(profile):
        own = is_own_coach(profile)
        warned = deciding.warned_today(session, profile, context)
        stands = words.warning_stands(warned, coach_name(session, profile), own=own)
        text = "\n\n".join(part for part in (text, stands) if part)
        say(session, chat_id=person.chat_id, text=text, now=context.now)
        _decide(session, profile, context, lead=None)
        return
    if _decide(session, profile, context, lead=text, always=anew):
        return
    if text:
        say(
            session, chat_id=person.chat_id, text=text, now=context.now,
            topic=deciding.answer_topic(profile.person_id),
        )  # fmt: skip


def _decide(
    session: Session,
    profile: AthleteProfile,
    context: Context,
    *,
    lead: str | None,
    always: bool = False,
) -> bool:
    """Decide this morning again; whether the athlete was told, with `lead` before the target.

    None: nothing is said. Without `always`, a target that stays the same is not sent once more.
    """
    row = checkin_row(session, profile.person_id, local_date(profile, context))
    if row is None or row.weight_kg is None or profile.status != AthleteStatus.ACTIVE:
        return False
    if current_week(session, profile) is None:
        return False
    return deciding.decide_with(session, profile, row, context=context, lead=lead, always=always)
