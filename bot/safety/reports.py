"""What an athlete tells of body, mood, drugs and drinking: kept, told to the coach, answered.

Before they have agreed, nothing is kept and nobody told; they are answered all the same.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from datetime import timedelta
from functools import partial
from zoneinfo import ZoneInfo

from sqlmodel import Session, col, select

from bot.alerts import alerts
from bot.alerts import words_advice as advice
from bot.alerts import words_athlete as words
from bot.alerts.words import AGAIN, TO_THIRST
from bot.core.chat.outbox import Delivery
from bot.core.turn import Turn
from bot.decision import deciding, to_athlete, words_self_coached
from bot.decision.to_athlete import OF_EATING_AND_MOOD, WARNED, care_for, rests
from bot.people.changes import Change
from bot.people.people import get_person, has_agreed, is_own_coach, local_date, name_of, record
from bot.people.telling import say_to
from bot.store.tables.people import AthleteProfile, AthleteStatus, Person
from bot.store.tables.week import EventRow, SymptomReport
from bot.week.cases import CLEARED, DRANK_IN_AN_HOUR, flags_of, told_today
from bot.week.load import checkin_row, current_week
from engine.evidence import safety as evidence
from engine.evidence.planning.health import AFTER_DAYS
from engine.safety import LOW_SODIUM_SIGNS, Flag, FlagId, Level, flags_of_words
from engine.safety.weight import after_show_flags
from engine.symptoms import EATING_AND_MOOD, WARNINGS, Symptom

#: Mild ones that change how much is drunk, or come before a faint.
BEFORE_WORSE = frozenset[Symptom]().union(*LOW_SODIUM_SIGNS, {Symptom.DIZZY})
LONGEST_WORDS = 500
STAGE_EVENING = 18  # o'clock where the athlete is: from then the days after have begun
_OF_THE_MORNING = frozenset(
    {FlagId.LOW_ENERGY, FlagId.SHORT_SLEEP, FlagId.WEEKLY_LOSS, FlagId.MISSED_CHECK_IN}
)


@dataclass(frozen=True, slots=True, kw_only=True)
class Told:
    """What one message or answer told of. `words` are the person's own, "" where buttons were tapped.

    `readings` are entries as `bot.week.cases` keeps them; `unread` could not be placed.
    """

    symptoms: tuple[Symptom, ...] = ()
    words: str = ""
    drugs: tuple[str, ...] = ()
    readings: tuple[str, ...] = ()
    emergency: bool = False
    unread: bool = False

    def __bool__(self) -> bool:
        return bool(self.symptoms or self.drugs or self.readings or self.emergency or self.unread)


def report(turn: Turn, profile: AthleteProfile, told: Told) -> None:
    """Keep it, bring it to the coach at its level, answer it as itself, and decide anew with it."""
    day = local_date(profile, turn.context)
    before = alerts.found_on(turn.session, profile.person_id, day)
    new = [s for s in told.symptoms if keep(turn, profile, s.value, told.words)]
    for entry in (*told.drugs, *told.readings):
        keep(turn, profile, entry, told.words)
    to_thirst = care_for(turn, profile).to_thirst
    fresh = [
        _as_it_stands(flag, warned=rests(profile), to_thirst=to_thirst)
        for flag in _fresh(turn, profile, told, before)
    ]
    _freeze(turn, profile, fresh)
    warned = [flag.id for flag in fresh if flag.level is Level.WARNING]
    moods = [flag.id for flag in fresh if flag.id in EATING_AND_MOOD]
    coach = coach_name(turn.session, profile)
    if warned:
        answer = partial(to_athlete.emergency, turn, profile, warned)
    elif moods:
        answer = partial(_of_mood, turn, told, fresh, coach)
    else:
        answer = partial(_answer, told, fresh, coach, warned=rests(profile), to_thirst=to_thirst)
    told_them = alerts.Answered(answer if is_own_coach(profile) else None, not rests(profile))
    answered = alerts.raise_flags(turn, profile, alerts.Found(fresh, day), told_them)
    if warned:
        if not answered:
            to_athlete.say_emergency(turn, profile, warned)
        _decide(turn, profile, lead=None)
    elif moods:
        if not answered:
            say_to(turn, get_person(turn.session, profile.person_id), answer)
        _decide(turn, profile, lead=None)
    else:
        text = "" if answered else answer()
        if any(flag.id is FlagId.AFTER_SHOW_COMPLAINT for flag in fresh):
            # the stage is behind them: a doctor is meant to be seen, and no target met
            if text:
                say_to(turn, get_person(turn.session, profile.person_id), text)
            _decide(turn, profile, lead=None)
            return
        anew = bool(new) or any(flag.id is FlagId.LOW_SODIUM for flag in fresh)
        _tell(turn, profile, text, anew=anew)


def keep(turn: Turn, profile: AthleteProfile, told: str, their_words: str) -> bool:
    """Write down for the day what was told, in whose words; False where it was there already."""
    day = local_date(profile, turn.context)
    their_words = their_words.strip()[:LONGEST_WORDS]
    known = turn.session.exec(
        select(SymptomReport).where(
            SymptomReport.athlete_id == profile.person_id,
            SymptomReport.date == day,
            SymptomReport.symptom == told,
        )
    ).first()
    if known is not None and (not their_words or their_words in known.words):
        return False
    entry = Change.SYMPTOM(told=told, words=their_words)
    record(turn, profile.person_id, entry, by=profile.person_id)
    if known is not None:
        known.words = their_words
        return False
    turn.session.add(
        SymptomReport(
            athlete_id=profile.person_id, date=day, symptom=told, words=their_words, at=turn.now
        )
    )
    return True


def cleared(turn: Turn, profile: AthleteProfile, symptom: str) -> None:
    """A doubtful word did not mean that: what was held back for it is decided again."""
    keep(turn, profile, f"{CLEARED}{symptom}", "")
    _decide(turn, profile, lead="")


def coach_name(session: Session, profile: AthleteProfile) -> str:
    """Who is told; "" where nobody else coaches them."""
    return "" if is_own_coach(profile) else name_of(session, profile.coach_id)


def _fresh(turn: Turn, profile: AthleteProfile, told: Told, before: dict[str, int]) -> list[Flag]:
    """What this adds to what the coach was told today: new, worse, or said once more."""
    day = local_date(profile, turn.context)
    week, row = (
        current_week(turn.session, profile),
        checkin_row(turn.session, profile.person_id, day),
    )
    known = flags_of_words(told_today(turn.session, profile.person_id, day))
    if week is not None and row is not None and profile.body_mass_kg is not None:
        known = flags_of(turn.session, week, row)
    flags = [flag for flag in known if flag.id not in _OF_THE_MORNING]
    if told.emergency:
        facts = {"words": told.words} if told.words else {}
        flags.append(Flag(FlagId.EMERGENCY, Level.WARNING, facts, (evidence.FIRST_AID,)))
    if told.unread:
        facts = {"words": told.words}
        flags.append(Flag(FlagId.SYMPTOM_UNREAD, Level.CAUTION, facts, (evidence.A_HUMAN_LOOKS,)))
    after = _after_show(turn, profile, told)
    if after:
        flags = [flag for flag in flags if flag.level is not Level.ADVISORY]
    said = {*told.symptoms}
    return [
        flag
        for flag in (*flags, *after)
        if flag.id is not FlagId.DOUBT
        and (flag.id in said or flag in after or flag.level.rank > before.get(flag.id, -1))
    ]


def _as_it_stands(flag: Flag, *, warned: bool, to_thirst: bool) -> Flag:
    """The flag as it is meant while a warning stands, and where only thirst counts.

    What may come before a faint or tell of too much water is not mild under a warning; and what was
    said to it told nobody to drink more, which the coach reads so.
    """
    facts = dict(flag.facts) | ({TO_THIRST: True} if to_thirst else {})
    if warned and flag.level is Level.ADVISORY and flag.id in BEFORE_WORSE:
        return Flag(flag.id, Level.CAUTION, facts | {AGAIN: True}, flag.sources)
    return Flag(flag.id, flag.level, facts, flag.sources)


def _after_show(turn: Turn, profile: AthleteProfile, told: Told) -> list[Flag]:
    """In the night after a stage and the days that follow, what is a doctor's matter then."""
    now = turn.now.astimezone(ZoneInfo(profile.zone or "UTC"))
    today = now.date()
    event = turn.session.exec(
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


def _freeze(turn: Turn, profile: AthleteProfile, fresh: Sequence[Flag]) -> None:
    if any(flag.level is Level.WARNING for flag in fresh):
        deciding.freeze(turn, profile, WARNED)
    elif any(flag.id in EATING_AND_MOOD for flag in fresh):
        deciding.freeze(turn, profile, OF_EATING_AND_MOOD)


def _answer(told: Told, fresh: Sequence[Flag], coach: str, *, warned: bool, to_thirst: bool) -> str:
    """One message for all that was told: refusals, what to do, and who knows of it."""
    found = {flag.id for flag in fresh}
    parts = []
    if told.drugs:
        parts.append(words.drug_refusal(coach) if coach else words_self_coached.drug_refusal())
    if any(entry.startswith(DRANK_IN_AN_HOUR) for entry in told.readings):
        parts.append(advice.drank_too_fast(coach))
    if {FlagId.AFTER_SHOW_COMPLAINT, FlagId.LOW_SODIUM} <= found:
        parts += [advice.low_sodium(coach), words.and_no_large_meals()]
    elif FlagId.AFTER_SHOW_COMPLAINT in found:
        parts.append(words.look_into_it(coach, self_coached=not coach))
    elif FlagId.LOW_SODIUM in found:
        parts.append(advice.low_sodium(coach))
    elif told.symptoms:
        parts.append(advice.told(told.symptoms, coach, warned=warned, to_thirst=to_thirst))
    if told.unread:
        parts.append(advice.told_at_once(coach))
    if FlagId.PULSE_HIGH in found and Symptom.FAST_HEART not in told.symptoms:
        parts.append(advice.advice([Symptom.FAST_HEART]))
    if Symptom.URINE_DARK in found and Symptom.URINE_DARK not in told.symptoms:
        parts.append(advice.advice([Symptom.URINE_DARK]))
    return "\n\n".join(parts)


def _of_mood(turn: Turn, told: Told, fresh: Sequence[Flag], coach: str) -> str:
    """The gentle answer first, then what was told besides that is more than a complaint."""
    moods = [flag.id for flag in fresh if flag.id in EATING_AND_MOOD]
    beside = [flag.id for flag in fresh if isinstance(flag.id, Symptom) and flag.id not in moods]
    to_thirst = any(dict(flag.facts).get(TO_THIRST) for flag in fresh)
    gentle = advice.mood(moods, coach, turn.context.helpline, beside=beside, to_thirst=to_thirst)
    rest = [flag for flag in fresh if flag.id not in beside]
    other = _answer(replace(told, symptoms=()), rest, coach, warned=False, to_thirst=to_thirst)
    return "\n\n".join(part for part in (gentle, other) if part)


def _tell(turn: Turn, profile: AthleteProfile, text: str, *, anew: bool) -> None:
    """Answer; where this morning was decided, with the day's target as it is after that."""
    person = get_person(turn.session, profile.person_id)
    if rests(profile):
        self_coached = is_own_coach(profile)
        warned = deciding.warned_today(turn, profile)
        stands = words.warning_stands(
            warned, coach_name(turn.session, profile), self_coached=self_coached
        )
        text = "\n\n".join(part for part in (text, stands) if part)
        say_to(turn, person, text)
        _decide(turn, profile, lead=None)
        return
    if _decide(turn, profile, lead=text, always=anew):
        to_athlete.answered_with_target(turn, profile, text)
        return
    if text:
        say_to(turn, person, text, how=Delivery(topic=to_athlete.answer_topic(profile.person_id)))


def _decide(turn: Turn, profile: AthleteProfile, *, lead: str | None, always: bool = False) -> bool:
    """Decide this morning again; whether the athlete was told, with `lead` before the target.

    None: nothing is said. Without `always`, a target that stays the same is not sent once more.
    """
    row = checkin_row(turn.session, profile.person_id, local_date(profile, turn.context))
    if row is None or row.weight_kg is None or profile.status != AthleteStatus.ACTIVE:
        return False
    if current_week(turn.session, profile) is None:
        return False
    return deciding.decide_with(turn, profile, row, deciding.Occasion(lead), always=always)


def bring(turn: Turn, person: Person, profile: AthleteProfile, told: Told) -> None:
    """To the coach, kept and answered; an emergency alone before they have agreed to that."""
    if has_agreed(turn.session, person):
        report(turn, profile, told)
    else:
        _told(turn, person, profile, told)


def who_knows(turn: Turn, person: Person, profile: AthleteProfile) -> str:
    """Who was told of a doubt; "" for nobody."""
    return coach_name(turn.session, profile) if has_agreed(turn.session, person) else ""


def _told(turn: Turn, person: Person, profile: AthleteProfile, found: Told) -> None:
    """Answer what was told; bring an emergency in it to the coach, without what was told beside it."""
    warnings = tuple(symptom for symptom in found.symptoms if symptom in WARNINGS)
    if warnings or found.emergency:
        of_it = replace(found, symptoms=warnings, drugs=(), readings=(), unread=False)
        report(turn, profile, of_it)
        return
    say_to(turn, person, _answer_before_consent(found, self_coached=is_own_coach(profile)))


def _answer_before_consent(found: Told, *, self_coached: bool) -> str:
    body = [symptom for symptom in found.symptoms if symptom not in EATING_AND_MOOD]
    gentle = advice.gently([symptom for symptom in found.symptoms if symptom in EATING_AND_MOOD])
    parts = [
        words_self_coached.drug_refusal() if found.drugs else "",
        gentle,
        advice.too_fast() if found.readings else "",
        advice.advice(body),
        words.stays_with_you(self_coached=self_coached),
        words.if_worse(),
    ]
    return "\n\n".join(part for part in parts if part)
