"""The morning's answers: asked for, taken, recorded, changed."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import UTC, date, datetime, timedelta

from sqlmodel import Session

from bot.alerts import alerts
from bot.checkin import words
from bot.checkin.flow import CHANGEABLE, CHECK_IN, IN_NOTE, QUESTIONS, STORED
from bot.checkin.flow_reading import ALL_FINE, IN_ONE, NOTED, SOMETHING_OFF
from bot.core.chat.outbox import Button, answer_tap
from bot.core.turn import Act, Turn
from bot.decision.buttons import ON_ANSWERS, ChangeDo, OnAnswers
from bot.decision.deciding import Occasion, decide_checkin
from bot.dialogue import asking
from bot.dialogue.answering import TYPED_IN
from bot.dialogue.flow import Answers
from bot.event import asks
from bot.people.changes import Change
from bot.people.people import get_person, get_profile, is_own_coach, local_date, profile_of, record
from bot.people.telling import say_to
from bot.pictures.photos import photos
from bot.safety import answers as safety_answers
from bot.store.base import id_of
from bot.store.tables.people import AthleteProfile, OpenQuestion, Person
from bot.store.tables.week import CheckInRow
from bot.week import prompts
from bot.week.load import (
    Week,
    checkin_row,
    checkins_before,
    current_event,
    current_week,
    keep_checkin,
    target_in_force,
)
from bot.words import common, figures, phases
from engine.decision.decide import Outcome
from engine.evidence.deciding import JUMP_LOOKS_BACK_DAYS
from engine.safety import exercise_kcal
from engine.symptoms import screen
from engine.values.case import answers_needed
from engine.written.chatter import is_chatter
from engine.written.oneline import CORE


def start(turn: Turn, person: Person, profile: AthleteProfile) -> None:
    """Ask for this morning's numbers; where they are there already, offer to change them."""
    today = local_date(profile, turn.context)
    row = checkin_row(turn.session, profile.person_id, today)
    if row is not None and is_answered(row):
        offer_change(turn, person, profile, row)
        return
    about = question_context(turn.session, profile, today)
    asking.open_question(turn, person, CHECK_IN, profile.person_id, about)


def question_context(session: Session, profile: AthleteProfile, today: date) -> Answers:
    """What the check-in's questions need to know: units, yesterday's targets, what is asked today."""
    week = current_week(session, profile)
    event = current_event(session, profile.person_id)
    person = get_person(session, profile.person_id)
    yesterday = target_in_force(session, week, today - timedelta(days=1)) if week else None
    days_out = (event.day - today).days if event else None
    sharpness = week is not None and _wants_sharpness(week, profile, today)
    trained = yesterday is not None and exercise_kcal(yesterday, profile.body_mass_kg or 0) > 0
    return {
        "_date": today.isoformat(),
        **units_of(profile),
        "_water_target_l": yesterday.water_l if yesterday else profile.baseline.get("water_l"),
        "_carb_set_g": yesterday.carb_g if yesterday else None,
        "_wants_sharpness": sharpness,
        "_trained": trained,
        "_habit": _habit(session, profile, today),
        "_greeting": words.morning(
            person.first_name,
            days_out,
            event.kind if event else "",
            phases.of_day(week.plan, days_out) if week is not None and days_out is not None else "",
        ),
    }


def units_of(profile: AthleteProfile) -> Answers:
    """The units that this athlete's figures are read in, where none is written."""
    return {"_weight_unit": profile.weight_unit, "_volume_unit": profile.volume_unit}


def _habit(session: Session, profile: AthleteProfile, today: date) -> Answers:
    """What this athlete told last, for a figure to be held against before it is taken."""
    yesterday = today - timedelta(days=1)
    earliest = today - timedelta(days=int(JUMP_LOOKS_BACK_DAYS.value))
    rows = [
        row
        for row in reversed(checkins_before(session, profile.person_id, today))
        if row.date >= earliest
    ]
    return {
        "weight_kg": next((row.weight_kg for row in rows if row.weight_kg is not None), None),
        "weight_is_yesterdays": any(
            row.weight_kg is not None and row.date == yesterday for row in rows
        ),
        "fullness": next((row.fullness for row in rows if row.fullness is not None), None),
        "water_before_l": next((row.water_l for row in rows if row.date == yesterday), None),
        "on_file_kg": profile.body_mass_kg,
        "height_cm": profile.height_cm,
    }


def is_answered(row: CheckInRow) -> bool:
    """Whether a morning has been told, even if without its weight."""
    return any(getattr(row, key) is not None for key in CORE)


def _wants_sharpness(week: Week, profile: AthleteProfile, today: date) -> bool:
    sets = today + timedelta(days=1) if profile.always_tomorrow else today
    return "sharpness" in answers_needed(week.days_out(sets), week.plan)


def finish(turn: Turn, person: Person, question: OpenQuestion) -> None:
    """All questions of a check-in are answered."""
    profile = get_profile(turn.session, person.id)
    answers = with_note(question.answers)
    row = checkin_row(turn.session, profile.person_id, date.fromisoformat(answers["_date"]))
    if row is not None and is_answered(row) and _says_the_same(turn.session, profile, row, answers):
        say_to(turn, person, common.cancelled())
        return
    typed = [int(number) for number in answers.get(TYPED_IN, {})]
    message_id = typed[0] if len(typed) == 1 and answers.get(IN_ONE) else None
    take(turn, profile, answers, message_id=message_id)


def take_draft(turn: Turn, profile: AthleteProfile, answers: Answers) -> None:
    """Take what a morning that was left half way has told."""
    take(turn, profile, with_note(answers), message_id=None)


def take_unfinished(turn: Turn, profile: AthleteProfile, answers: Answers) -> None:
    """Take what was told until the cut-off; what is doubtful or was not told counts as left out."""
    whole = with_note(answers) | {key: answers.get(key) for key in CORE}
    lead = words.taken_unfinished(words.so_far(answers))
    take(turn, profile, whole, message_id=None, lead=lead)
    person = get_person(turn.session, profile.person_id)
    alerts.note(
        turn, profile,
        lambda: words.left_unfinished(person.first_name, words.so_far(answers)), once=True,
    )  # fmt: skip


def pass_on_words(turn: Turn, profile: AthleteProfile, said: str) -> None:
    """Words beside the figures of a morning that was never finished still reach the coach."""
    if said and not is_chatter(said):
        person = get_person(turn.session, profile.person_id)
        told = words.beside_the_numbers([], None, None, said)
        alerts.note(turn, profile, lambda: words.passed_on(person.first_name, told), once=True)


def with_note(answers: Answers) -> Answers:
    """The words that were said beside the figures joined to the note, and read for complaints."""
    said = answers.get(NOTED, "")
    if not said or is_chatter(said):  # "sorry", beside the figures, is nothing to pass on
        return answers
    note = " / ".join(part for part in (answers.get("note") or "", said) if part)
    heard = [hit.symptom.value for hit in screen(said).hits if hit.sure]
    symptoms = list(dict.fromkeys([*(answers.get("symptoms") or []), *heard]))
    return answers | {"note": note, "symptoms": symptoms}


def _says_the_same(
    session: Session, profile: AthleteProfile, row: CheckInRow, answers: Answers
) -> bool:
    old = answers_of(session, profile, row)
    return words.so_far(old) == words.so_far(answers) and row.note == (
        answers.get("note") or row.note
    )


def take(
    turn: Turn, profile: AthleteProfile, answers: Answers, *, message_id: int | None, lead: str = ""
) -> None:
    """Write the answers down, or change what was written, and decide on them."""
    day = date.fromisoformat(answers["_date"])
    row = checkin_row(turn.session, profile.person_id, day)
    again = row is not None
    if row is None:
        row = CheckInRow(athlete_id=profile.person_id, date=day, answered_at=turn.now)
    else:
        row.revision += 1
    _write(row, answers)
    row.message_id = message_id or row.message_id
    keep_checkin(turn.session, row)
    entry = Change.CHECKED_IN(checkin=id_of(row), revision=row.revision)
    record(turn, profile.person_id, entry, by=profile.person_id)
    prompts.cancel_morning(turn.session, profile, day)
    if again and not lead:
        lead = words.re_decided()
    beside = (words.worked_out(answers), _passed_on_beside(turn, profile, answers))
    lead = "\n".join(part for part in (lead, *beside) if part)
    told_anew = bool(answers.get("symptoms") or answers.get("note"))
    decided = decide_checkin(turn, profile, row, Occasion(lead, told_anew))
    _pass_on(turn, profile, row)
    if not again and not told_anew and answers.get("fine") == ALL_FINE:
        safety_answers.all_is_fine(turn, profile)
    asks.look_ahead(turn, profile, row)
    if decided is not None and decided.outcome != Outcome.ESCALATED and not again:
        photos.offer(turn, profile, day)


def _passed_on_beside(turn: Turn, profile: AthleteProfile, answers: Answers) -> str:
    """To the athlete: what became of the words that were no answer; complaints are answered apart."""
    said = answers.get(NOTED, "")
    if not said or is_chatter(said) or screen(said).hits:
        return ""
    coach = "" if is_own_coach(profile) else get_person(turn.session, profile.coach_id).first_name
    return words.beside_passed_on(said, coach)


def _pass_on(turn: Turn, profile: AthleteProfile, row: CheckInRow) -> None:
    """What was said beside the numbers goes to the coach too, silently; complaints went already."""
    note = "" if screen(row.note).hits else row.note
    if not words.beside_the_numbers((), row.gut, row.sleep_h, note):
        return
    person = get_person(turn.session, profile.person_id)
    alerts.note(
        turn, profile,
        lambda: words.passed_on(
            person.first_name,
            words.beside_the_numbers((), row.gut, row.sleep_h, note),
        ), once=True,
    )  # fmt: skip


def row_with(standing: CheckInRow | None, profile: AthleteProfile, answers: Answers) -> CheckInRow:
    """A morning's row as these answers would leave it, beside the one that stands and never kept."""
    day = date.fromisoformat(answers["_date"])
    kept = standing.model_dump(exclude={"id"}) if standing is not None else {}
    given = {"answered_at": datetime.min.replace(tzinfo=UTC), **kept}
    row = CheckInRow(**given | {"athlete_id": profile.person_id, "date": day})
    _write(row, answers)
    return row


def _write(row: CheckInRow, answers: Answers, in_note: Sequence[str] = IN_NOTE) -> None:
    """Each answer to its column; those `in_note` to the note, as they are said."""
    if answers.get("fine") == ALL_FINE and not answers.get("note"):
        row.symptoms, row.gut, row.note = [], "fine", ""
    for key in STORED.keys() & answers.keys():
        value = answers[key]
        if key == "symptoms":
            value = list(value or [])
        elif key == "note":
            value = value or ""
        setattr(row, key, value)
    if told := [key for key in in_note if answers.get(key) is not None]:
        said = words.parts(answers)
        parts = [row.note, *(said[key] for key in told if said[key] not in row.note)]
        row.note = " / ".join(part for part in parts if part)


def answers_of(session: Session, profile: AthleteProfile, row: CheckInRow) -> Answers:
    """A recorded check-in as the flow's answers again, so that one of them can be asked anew.

    What was never asked, or was skipped, is None: it is not asked when another answer changes.
    """
    answers = question_context(session, profile, row.date)
    was_off = bool(row.symptoms or row.gut not in (None, "fine"))
    for key, question in STORED.items():
        if was_off or not question.of_what_is_off:
            value = getattr(row, key)
            answers[key] = list(value) if isinstance(value, list) else value
    answers |= dict.fromkeys(IN_NOTE)  # the note says it already
    answers["fine"] = SOMETHING_OFF if was_off else ALL_FINE if row.gut == "fine" else None
    return answers


def offer_change(turn: Turn, person: Person, profile: AthleteProfile, row: CheckInRow) -> None:
    asked = question_context(turn.session, profile, row.date)
    keys = [key for key in CHANGEABLE if _can_change(key, row, asked)]
    labelled = [
        Button(words.changeable(key), ON_ANSWERS(ChangeDo.ONE, id_of(row), key)) for key in keys
    ]
    say_to(
        turn,
        person,
        f"{words.so_far(answers_of(turn.session, profile, row))}\n\n{words.change_which()}",
        buttons=[labelled[i : i + 3] for i in range(0, len(labelled), 3)],
    )


def _can_change(key: str, row: CheckInRow, asked: Answers) -> bool:
    if key == "sharpness":
        return bool(asked["_wants_sharpness"]) or row.sharpness is not None
    if key == "training_done":
        return bool(asked["_trained"]) or row.training_done is not None
    return True


def tapped(turn: Act, pressed: OnAnswers) -> None:
    """The buttons under a target."""
    row = turn.session.get(CheckInRow, pressed.checkin)
    profile = profile_of(turn.session, turn.person.id)
    assert turn.incoming.tap_id is not None
    if row is None or profile is None or row.athlete_id != turn.person.id:
        text = common.not_your_button()
        answer_tap(turn, chat_id=turn.person.chat_id, tap_id=turn.incoming.tap_id, text=text)
        return
    answer_tap(turn, chat_id=turn.person.chat_id, tap_id=turn.incoming.tap_id)
    if row.date != local_date(profile, turn.context):
        text = words.too_late_to_change(figures.long_day(row.date))
        say_to(turn, turn.person, text)
    elif pressed.do is ChangeDo.CHANGE:
        offer_change(turn, turn.person, profile, row)
    elif pressed.do is ChangeDo.OFF:
        _ask_one(turn, turn.person, profile, row, "off")
    elif pressed.key in CHANGEABLE:
        _ask_one(turn, turn.person, profile, row, pressed.key)


#: What the questions hang on that not every morning has.
_ASKED_WHERE = {"sharpness": "_wants_sharpness", "training_done": "_trained"}


def _ask_one(
    turn: Turn, person: Person, profile: AthleteProfile, row: CheckInRow, key: str
) -> None:
    answers = answers_of(turn.session, profile, row)
    if key in ("off", "fine"):
        for question in QUESTIONS:
            if question.key == "fine" or question.of_what_is_off:
                answers.pop(question.key, None)
        if key == "off":
            answers["fine"] = SOMETHING_OFF
    else:
        answers.pop(key, None)
        if key in _ASKED_WHERE:  # who asks for it by name is asked, whatever this morning wanted
            answers[_ASKED_WHERE[key]] = True
    answers["_greeting"] = ""
    asking.open_question(turn, person, CHECK_IN, profile.person_id, answers)
