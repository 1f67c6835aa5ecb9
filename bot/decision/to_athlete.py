"""What an athlete is told of a decision: target and reason, a warning, answers to complaints."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace
from datetime import date
from typing import NamedTuple

from sqlmodel import Session

from bot.alerts import alerts, words_athlete
from bot.alerts import words_advice as advice
from bot.alerts.alerts import of_day_or_open
from bot.core.chat.outbox import Button, Buttons, Delivery, Topic, drop_waiting, said_in
from bot.core.turn import Turn
from bot.decision import words_self_coached
from bot.decision import words_target as words
from bot.decision.buttons import ON_ANSWERS, ChangeDo
from bot.decision.signoff import signoff
from bot.decision.words_forecast import outlook_line
from bot.decision.words_target import nothing_planned_today, reason, resting_line, target_lines
from bot.people.people import get_person, is_own_coach, local_date, name_of
from bot.people.telling import say_to
from bot.store.tables.people import AthleteProfile
from bot.store.tables.traffic import TopicKind, Urgency
from bot.store.tables.week import DecisionRow, DecisionStatus
from bot.week.cases import decision_of, is_small_step, stands_g
from bot.week.load import Week, current_week, target_in_force
from bot.words.common import something_off_button
from engine.decision.decide import Decision, Outcome
from engine.safety import FlagId, Level
from engine.symptoms import EATING_AND_MOOD, Symptom
from engine.values.plan import DayTarget

WARNED = "warning-flag"  # why adjusting is frozen: as the gate that stops such a morning is called
OF_EATING_AND_MOOD = "eating-and-mood"
#: With these a doctor looks before there is any training; a lesser fever or pulse too. Whoever is sent
#: to a doctor today is not sent to a session as well.
NO_TRAINING = frozenset(
    {
        FlagId.LOW_SODIUM, FlagId.PULSE_HIGH, Symptom.URINE_DARK, Symptom.FAST_HEART, Symptom.FEVER,
        Symptom.BLEEDING, Symptom.BLURRED_VISION, Symptom.FALL, Symptom.NO_URINE, Symptom.SEVERE_GUT,
    }
)  # fmt: skip


@dataclass(frozen=True, slots=True)
class Care:
    """`rest`, `doctor_first`: no training of any kind; `to_thirst`: no figure for water; `unsaid`: not
    sent unasked.

    `coach` is who lifts it, "" for who coaches themself.
    """

    rest: bool = False
    doctor_first: bool = False
    to_thirst: bool = False
    unsaid: bool = False
    coach: str = ""

    @property
    def still(self) -> bool:
        """Whether there is no training of any kind."""
        return self.rest or self.doctor_first

    def resting(self, *, own: bool) -> str | None:
        """Why there is no training, to the athlete (`own`) or their coach; None where there is."""
        return resting_line(self.coach if own else "", warned=self.rest) if self.still else None

    def lines(self, target: DayTarget, planned_carb_g: float, volume_unit: str) -> str:
        """The target as it is to be read now."""
        return target_lines(
            target, planned_carb_g, volume_unit, to_thirst=self.to_thirst,
            resting=self.resting(own=True),
        )  # fmt: skip


def care_for(turn: Turn, profile: AthleteProfile) -> Care:
    """What holds for this athlete just now."""
    frozen = profile.frozen_at is not None
    coach = "" if is_own_coach(profile) else name_of(turn.session, profile.coach_id)
    found = _found(turn.session, profile, local_date(profile, turn.context))
    return Care(
        rest=frozen and profile.frozen_because == WARNED,
        doctor_first=not found.isdisjoint(NO_TRAINING),
        to_thirst=FlagId.LOW_SODIUM.value in found,
        unsaid=frozen and profile.frozen_because == OF_EATING_AND_MOOD,
        coach=coach,
    )


def rests(profile: AthleteProfile) -> bool:
    """Whether a warning has stopped everything."""
    return profile.frozen_at is not None and profile.frozen_because == WARNED


def _found(session: Session, profile: AthleteProfile, today: date) -> set[str]:
    """What was told today or is still open, as far as targets have to heed it."""
    heeded = {found.value for found in NO_TRAINING}
    return {
        row.flag
        for row in of_day_or_open(session, profile.person_id, today)
        if row.flag in heeded and row.facts.get("_corrected", {"holds": True}).get("holds")
    }


def stands(decided: DecisionRow) -> float | None:
    """The carbohydrate that a decision leaves in force until somebody says otherwise."""
    waiting = decided.status == DecisionStatus.WAITING
    return decision_of(decided).lapse_g if waiting else decided.carb_g


def answer_topic(athlete_id: int) -> Topic:
    """What is answered to a complaint, until a target goes out with it."""
    return Topic(TopicKind.ANSWER, athlete_id)


def answered_with_target(turn: Turn, profile: AthleteProfile, text: str) -> None:
    """An answer went out at the head of a target: one that overtakes it in this turn says it again."""
    turn.session.info[answered_with_target] = (profile.person_id, turn.now, text)


def answer_of_now(turn: Turn, profile: AthleteProfile) -> str:
    """What has just been answered to the same message, which is then not sent by itself."""
    person_id, moment, said = turn.session.info.pop(answered_with_target, (None, None, ""))
    text = said if (person_id, moment) == (profile.person_id, turn.now) else ""
    for row in said_in(turn.session):
        if row.status == "waiting" and Topic.of(row) == answer_topic(profile.person_id):
            row.status, text = "dropped", row.payload["text"]
    return text


def say_emergency(turn: Turn, profile: AthleteProfile, found: Sequence[str]) -> None:
    """Stop, and call for help; once for what is told in one go."""
    person = get_person(turn.session, profile.person_id)
    drop_waiting(turn.session, answer_topic(profile.person_id))
    say_to(
        turn, person, lambda: emergency(turn, profile, found), how=Delivery(urgency=Urgency.URGENT)
    )


def emergency(turn: Turn, profile: AthleteProfile, found: Sequence[str]) -> str:
    """What is said then, in the language in force."""
    if is_own_coach(profile):
        return words_athlete.emergency_self_coached(found, turn.context.helpline)
    coach = get_person(turn.session, profile.coach_id)
    return words_athlete.emergency(found, coach.first_name, turn.context.helpline)


def send_target(turn: Turn, profile: AthleteProfile, day: date, *, because: str) -> None:
    """Send a day's target as it holds now. Nothing where there is no target for the day."""
    week = current_week(turn.session, profile)
    target = target_in_force(turn.session, week, day) if week else None
    if week is None or target is None:
        return
    planned = week.plan.day(week.days_out(day))
    assert planned is not None
    person = get_person(turn.session, profile.person_id)
    care = care_for(turn, profile)
    if care.unsaid:
        return
    say_to(
        turn,
        person,
        lambda: words.target_message(
            words.target_head(week.plan, day, week.days_out(day)),
            care.lines(target, planned.carb_g, profile.volume_unit),
            "",
            lead=words.because(because, self_coached=profile.coach_id == profile.person_id),
        ),
        how=Delivery(topic=target_topic(profile.person_id, day)),
    )


def target_topic(athlete_id: int, day: date) -> Topic:
    """Of several targets for a day that have not been sent yet, only the latest is."""
    return Topic(TopicKind.TARGET, athlete_id, day=day)


def lapsed_because(decided: DecisionRow) -> str:
    """Why the figure is what it is, where nobody answered in time (see `words.because`)."""
    return "lapsed-small" if is_small_step(decided) else "lapsed"


def reason_of(profile: AthleteProfile, decided: DecisionRow) -> str:
    """The reason as the athlete reads it."""
    decision = decision_of(decided)
    rule, self_coached = decision.rule, is_own_coach(profile)
    if rule == "frozen" and profile.frozen_because in (WARNED, OF_EATING_AND_MOOD):
        return words_athlete.rests_until_talked(self_coached=self_coached)
    said = words_self_coached.reason(rule) if self_coached else ""
    return said or reason(
        decision, profile.weight_unit, profile.volume_unit,
        self_coached=self_coached, stands_g=stands_g(decided),
    )  # fmt: skip


_NOT_AS_PROPOSED = (DecisionStatus.OTHER_FIGURE, DecisionStatus.PLAN_KEPT)


def told_why(session: Session, profile: AthleteProfile, decided: DecisionRow) -> str:
    """The reason beside a figure: "eat 50 g more" is not said as an order before it is approved."""
    self_coached, why = is_own_coach(profile), reason_of(profile, decided)
    if decided.status == DecisionStatus.WAITING:
        line = signoff.waiting_line(session, profile, decided)
        small = stands_g(decided) is not None
        return f"{line}\n\n{why if small else words.suggested(why)}"
    if decided.status == DecisionStatus.LAPSED:
        return words.because(lapsed_because(decided), self_coached=self_coached)
    if decided.status in _NOT_AS_PROPOSED:
        return words.because(decided.status, self_coached=self_coached)
    return why


def told_whole(session: Session, profile: AthleteProfile, decided: DecisionRow) -> str:
    """The same, with what had been suggested where something else stands now."""
    told, why = told_why(session, profile, decided), reason_of(profile, decided)
    if why in told:
        return told
    stands_in_part = decided.status == DecisionStatus.LAPSED and is_small_step(decided)
    return f"{told}\n\n{why if stands_in_part else words.had_suggested(why)}"


class Before(NamedTuple):
    """What had been brought to the coach before, and answered (as `alerts.found_on` gives it), and
    whether somebody has seen to the warnings that are found again.
    """

    known: Mapping[str, int]
    seen_to: bool


def tell(turn: Turn, week: Week, decided: DecisionRow, lead: str, before: Before) -> None:
    """The target and why, or what a warning asks for; behind the lead."""
    known, seen_to = before
    profile, decision = week.profile, decision_of(decided)
    person = get_person(turn.session, profile.person_id)
    if decision.outcome is Outcome.ESCALATED and not seen_to:
        drop_waiting(turn.session, target_topic(profile.person_id, decision.sets_date))
        _tell_of_warning(turn, profile, decision, lead, known)
        return
    care = care_for(turn, profile)
    lead = "\n\n".join(
        part for part in (lead, _answer(care, decision, known, turn.context.helpline)) if part
    )
    if care.unsaid:
        text = f"{lead}\n\n{advice.figures_kept_back()}".strip()
        say_to(turn, person, text)
        return
    target = target_in_force(turn.session, week, decision.sets_date)
    planned = week.plan.day(week.days_out(decision.sets_date))
    if target is None or planned is None:
        text = f"{lead}\n\n{nothing_planned_today()}".strip()
        say_to(turn, person, text)
        return
    why = words_athlete.warning_seen_to() if seen_to else told_why(turn.session, profile, decided)
    course = outlook_line(decision, stands(decided))
    if course and not seen_to:
        why += f"\n{course}"
    if decision.needs_sign_off:
        if seen_to:
            why += "\n\n" + signoff.waiting_line(turn.session, profile, decided)
        target = replace(target, carb_g=decision.lapse_g or target.carb_g)
    text = words.target_message(
        words.target_head(week.plan, decision.sets_date, decision.days_out),
        care.lines(target, planned.carb_g, profile.volume_unit),
        why,
        lead=lead,
        caution=_cautions(profile, decision, care.coach),
    )
    say_to(
        turn,
        person,
        text,
        buttons=target_buttons(decided.checkin_id, decision.ask_again),
        how=Delivery(topic=target_topic(profile.person_id, decision.sets_date)),
    )


def _tell_of_warning(
    turn: Turn, profile: AthleteProfile, decision: Decision, lead: str, known: Mapping[str, int]
) -> None:
    """What is new is an emergency; what was answered before stands, and is not shouted again."""
    warnings = [flag.id for flag in decision.flags if flag.level is Level.WARNING]
    new = [found for found in warnings if known.get(found, -1) < Level.WARNING.rank]
    if new:
        say_emergency(turn, profile, new)
        return
    person = get_person(turn.session, profile.person_id)
    coach = get_person(turn.session, profile.coach_id)
    stands = words_athlete.warning_stands(
        warnings, coach.first_name, self_coached=is_own_coach(profile)
    )
    text = "\n\n".join(part for part in (lead, f"{words_athlete.answers_saved()} {stands}") if part)
    say_to(turn, person, text)


def _answer(care: Care, decision: Decision, known: Mapping[str, int], helpline: str) -> str:
    """What is said to complaints of this check-in that have not been answered yet."""
    new = [flag for flag in decision.flags if known.get(flag.id, -1) < flag.level.rank]
    moods = [flag.id for flag in new if flag.id in EATING_AND_MOOD]
    symptoms = [f.id for f in new if isinstance(f.id, Symptom) and f.level is not Level.WARNING]
    if moods:
        return advice.mood(moods, care.coach, helpline)
    if any(flag.id is FlagId.LOW_SODIUM for flag in new):
        return advice.low_sodium(care.coach)
    return advice.told(symptoms, care.coach, to_thirst=care.to_thirst) if symptoms else ""


def _cautions(profile: AthleteProfile, decision: Decision, coach: str) -> str:
    """Each finding in the answers in a sentence with what to do; one drink is told once."""
    raised = {flag.id for flag in decision.flags}
    found = [
        flag
        for flag in decision.flags
        if isinstance(flag.id, FlagId)
        and flag.id is not FlagId.LOW_SODIUM
        and alerts.SAID_BY.get(flag.id) not in raised
    ]
    lines = [
        words_athlete.line(
            flag.id, dict(flag.facts),
            weight_unit=profile.weight_unit, volume_unit=profile.volume_unit,
        )
        for flag in found
        if isinstance(flag.id, FlagId)
    ]  # fmt: skip
    told = any(
        flag.level is Level.CAUTION and flag.id is not FlagId.DOUBT for flag in decision.flags
    )
    return words_athlete.together(lines, coach, no_raise=told)


def target_buttons(checkin_id: int, ask_again: tuple[str, ...]) -> Buttons:
    """Under a target: change an answer, say that something is off; first what has to be asked again."""
    again = [
        [Button(words.ask_again_button(key), ON_ANSWERS(ChangeDo.ONE, checkin_id, key))]
        for key in ask_again
    ]
    return [
        *again,
        [
            Button(words.change_button(), ON_ANSWERS(ChangeDo.CHANGE, checkin_id)),
            Button(something_off_button(), ON_ANSWERS(ChangeDo.OFF, checkin_id)),
        ],
    ]
