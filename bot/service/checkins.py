"""The morning's answers: asked for, taken by buttons or in one line, changed, recorded."""

from __future__ import annotations

from datetime import date, timedelta

from sqlmodel import Session, col, select

from bot.context import Context
from bot.dialogue import Answers, Unread
from bot.flows.checkin import ALL_FINE, CHECK_IN, CORE, SOMETHING_OFF
from bot.flows.symptom import SYMPTOM_CHECK
from bot.incoming import Incoming
from bot.languages import language
from bot.messages import athlete as athlete_words
from bot.messages import checkin as words
from bot.messages import common
from bot.messages.refusals import refusal_text
from bot.outbox import Button, answer_tap, say
from bot.service import alerts, asking, photos, prompts
from bot.service.deciding import decide_checkin
from bot.service.people import get_person, local_date, profile_of, record
from bot.service.week import (
    Week,
    checkin_row,
    current_event,
    current_week,
    target_in_force,
)
from bot.store.people import AthleteProfile, AthleteStatus, OpenQuestion, Person
from bot.store.week import CheckInRow
from engine.case import answers_needed
from engine.decide import Outcome
from engine.oneline import parse_one_line
from engine.symptoms import screen
from engine.units import Refusal, VolumeUnit, WeightUnit

FEWEST_NUMBERS_IN_A_LINE = 3
LONGEST_LINE = 500  # characters; what is longer is a letter, not a check-in


def start(session: Session, person: Person, profile: AthleteProfile, context: Context) -> None:
    """Ask for this morning's numbers; where they are there already, offer to change them."""
    today = local_date(profile, context)
    row = checkin_row(session, profile.person_id, today)
    if row is not None and row.weight_kg is not None:
        offer_change(session, person, profile, row, context)
        return
    asking.open_question(
        session, person, CHECK_IN, context=context, subject_id=profile.person_id,
        answers=question_context(session, profile, today),
    )  # fmt: skip


def question_context(session: Session, profile: AthleteProfile, today: date) -> Answers:
    """What the check-in's questions need to know: units, yesterday's targets, what is asked today."""
    week = current_week(session, profile)
    event = current_event(session, profile.person_id)
    person = get_person(session, profile.person_id)
    yesterday = target_in_force(session, week, today - timedelta(days=1)) if week else None
    days_out = (event.day - today).days if event else None
    sharpness = week is not None and _wants_sharpness(week, profile, today)
    return {
        "_date": today.isoformat(),
        "_weight_unit": profile.weight_unit,
        "_volume_unit": profile.volume_unit,
        "_water_target_l": yesterday.water_l if yesterday else profile.baseline.get("water_l"),
        "_carb_set_g": yesterday.carb_g if yesterday else None,
        "_wants_sharpness": sharpness,
        "_greeting": words.morning(person.first_name, days_out, event.kind if event else ""),
    }


def _wants_sharpness(week: Week, profile: AthleteProfile, today: date) -> bool:
    sets = today + timedelta(days=1) if profile.always_tomorrow else today
    return "sharpness" in answers_needed(week.days_out(sets))


def finish(session: Session, person: Person, question: OpenQuestion, context: Context) -> None:
    """All questions of a check-in are answered."""
    profile = profile_of(session, person.id)
    assert profile is not None
    take(session, profile, question.answers, message_id=None, context=context)


def take(
    session: Session,
    profile: AthleteProfile,
    answers: Answers,
    *,
    message_id: int | None,
    context: Context,
    lead: str = "",
) -> None:
    """Write the answers down, or change what was written, and decide on them."""
    day = date.fromisoformat(answers["_date"])
    row = checkin_row(session, profile.person_id, day)
    again = row is not None
    if row is None:
        row = CheckInRow(athlete_id=profile.person_id, date=day, answered_at=context.now)
    else:
        row.revision += 1
    _write(row, answers)
    row.message_id = message_id or row.message_id
    session.add(row)
    session.flush()
    record(
        session, profile.person_id, "checked-in", context, by=profile.person_id,
        checkin=row.id, revision=row.revision,
    )  # fmt: skip
    prompts.cancel_morning(session, profile, day)
    if again and not lead:
        lead = words.re_decided()
    told_anew = bool(answers.get("symptoms") or answers.get("note"))
    decided = decide_checkin(session, profile, row, context=context, lead=lead, told_anew=told_anew)
    _pass_on(session, profile, row, context)
    if decided is not None and decided.outcome != Outcome.ESCALATED and not again:
        photos.offer(session, profile, day, context)


def _pass_on(session: Session, profile: AthleteProfile, row: CheckInRow, context: Context) -> None:
    """What was said beside the numbers goes to the coach too, silently."""
    if not words.beside_the_numbers(row.symptoms, row.gut, row.sleep_h, row.note):
        return
    person = get_person(session, profile.person_id)
    alerts.note(
        session, profile,
        lambda: words.passed_on(
            person.first_name,
            words.beside_the_numbers(row.symptoms, row.gut, row.sleep_h, row.note),
        ),
        context, once=True,
    )  # fmt: skip


def _write(row: CheckInRow, answers: Answers) -> None:
    for key in (*CORE, "sharpness", "carb_eaten_g", "gut", "sleep_h"):
        if key in answers:
            setattr(row, key, answers[key])
    if answers.get("fine") == ALL_FINE:
        row.symptoms, row.gut, row.note = [], "fine", ""
    if "symptoms" in answers:
        row.symptoms = list(answers["symptoms"])
    if "note" in answers:
        row.note = answers["note"]


def answers_of(session: Session, profile: AthleteProfile, row: CheckInRow) -> Answers:
    """A recorded check-in as the flow's answers again, so that one of them can be asked anew."""
    context = question_context(session, profile, row.date)
    given = {
        "weight_kg": row.weight_kg,
        "fullness": row.fullness,
        "water_l": row.water_l,
        "sharpness": row.sharpness,
        "carb_eaten_g": row.carb_eaten_g,
    }
    answers = context | {key: value for key, value in given.items() if value is not None}
    # What was never asked in a one-line check-in is not asked when another answer changes.
    for key in ("sharpness", "carb_eaten_g"):
        answers.setdefault(key, None)
    was_off = bool(row.symptoms or row.gut not in (None, "fine"))
    answers["fine"] = SOMETHING_OFF if was_off else ALL_FINE if row.gut == "fine" else None
    if was_off:
        answers |= {
            "symptoms": list(row.symptoms), "gut": row.gut,
            "sleep_h": row.sleep_h, "note": row.note,
        }  # fmt: skip
    return answers


def offer_change(
    session: Session, person: Person, profile: AthleteProfile, row: CheckInRow, context: Context
) -> None:
    keys = [key for key in words.CHANGEABLE if key != "sharpness" or row.sharpness is not None]
    labelled = [Button(words.changeable(key), f"k:one:{row.id}:{key}") for key in keys]
    say(
        session, chat_id=person.chat_id, now=context.now,
        text=f"{words.so_far(answers_of(session, profile, row))}\n\n{words.change_which()}",
        buttons=[labelled[i : i + 3] for i in range(0, len(labelled), 3)],
    )  # fmt: skip


def tapped(
    session: Session, person: Person, arguments: list[str], incoming: Incoming, context: Context
) -> None:
    """Buttons under a target: "change:ID", "off:ID", "one:ID:KEY"."""
    action, checkin_id, key = (*arguments, "", "", "")[:3]
    row = session.get(CheckInRow, int(checkin_id)) if checkin_id.isdigit() else None
    profile = profile_of(session, person.id)
    assert incoming.tap_id is not None
    if row is None or profile is None or row.athlete_id != person.id:
        text = common.not_your_button()
        answer_tap(
            session, chat_id=person.chat_id, tap_id=incoming.tap_id, now=context.now, text=text
        )
        return
    answer_tap(session, chat_id=person.chat_id, tap_id=incoming.tap_id, now=context.now)
    if row.date != local_date(profile, context):
        text = words.too_late_to_change(athlete_words.day_name(row.date))
        say(session, chat_id=person.chat_id, text=text, now=context.now)
    elif action == "change":
        offer_change(session, person, profile, row, context)
    elif action == "off" or key in words.CHANGEABLE:
        _ask_one(session, person, profile, row, "off" if action == "off" else key, context)


def _ask_one(
    session: Session,
    person: Person,
    profile: AthleteProfile,
    row: CheckInRow,
    key: str,
    context: Context,
) -> None:
    answers = answers_of(session, profile, row)
    if key in ("off", "fine"):
        for part in ("fine", "symptoms", "gut", "sleep_h", "note"):
            answers.pop(part, None)
        if key == "off":
            answers["fine"] = SOMETHING_OFF
    else:
        answers.pop(key, None)
    answers["_greeting"] = ""
    asking.open_question(
        session, person, CHECK_IN, context=context, subject_id=profile.person_id, answers=answers
    )


def one_line(session: Session, person: Person, incoming: Incoming, context: Context) -> bool:
    """Take "61.2 7 3.5" as a whole check-in. False where the text is something else."""
    profile = profile_of(session, person.id)
    if profile is None or profile.status != AthleteStatus.ACTIVE:
        return False
    if not _looks_like_a_line(incoming.text) or _answers_another_question(session, person):
        return False
    today = local_date(profile, context)
    try:
        answers = read_line(session, profile, incoming.text, today)
    except Unread as unread:
        say(session, chat_id=person.chat_id, text=str(unread), now=context.now)
        return True
    for question in asking.open_questions(
        session, person, flow=CHECK_IN.id, subject_id=profile.person_id
    ):
        asking.close(session, question, context)
    take(session, profile, answers, message_id=incoming.message_id, context=context)
    return True


def _looks_like_a_line(text: str) -> bool:
    if len(text) > LONGEST_LINE:
        return False
    words_in = text.replace(";", " ").split()
    numbers = [word for word in words_in if word[:1].isdigit()]
    return bool(words_in) and words_in[0][0].isdigit() and len(numbers) >= FEWEST_NUMBERS_IN_A_LINE


def _answers_another_question(session: Session, person: Person) -> bool:
    """Whether the latest open question takes figures and is not of a check-in: the text is its."""
    asked = [q for q in asking.open_questions(session, person) if q.flow != SYMPTOM_CHECK.id]
    return bool(asked) and asked[-1].flow != CHECK_IN.id


def read_line(session: Session, profile: AthleteProfile, text: str, day: date) -> Answers:
    """A one-line check-in as answers. Raises Unread with what to say."""
    context = question_context(session, profile, day)
    try:
        line = parse_one_line(
            text,
            weight_unit=WeightUnit(profile.weight_unit),
            volume_unit=VolumeUnit(profile.volume_unit),
            wants_sharpness=bool(context["_wants_sharpness"]),
            language=language(),
        )
    except Refusal as refusal:
        raise Unread(refusal_text(refusal)) from refusal
    carbs = context["_carb_set_g"] if line.on_target else line.carb_eaten_g
    answers = context | {
        "weight_kg": line.weight.kg,
        "fullness": line.fullness,
        "water_l": line.water.litres,
        "sharpness": line.sharpness,
        "carb_eaten_g": carbs,
    }
    if line.all_fine:
        answers["fine"] = ALL_FINE
    if line.note:
        answers["note"] = line.note
        answers["symptoms"] = [hit.symptom.value for hit in screen(line.note).hits if hit.sure]
    return answers


def edited(session: Session, person: Person, incoming: Incoming, context: Context) -> bool:
    """The text of an earlier message was changed: if it held an answer, the answer changes with it.

    False where it held none.
    """
    profile = profile_of(session, person.id)
    if profile is None or incoming.message_id is None:
        return False
    today = local_date(profile, context)
    row = session.exec(
        select(CheckInRow).where(
            CheckInRow.athlete_id == person.id, CheckInRow.message_id == incoming.message_id
        )
    ).first()
    if row is not None:
        _edited_line(session, person, profile, row, incoming, today, context)
        return True
    question = _question_typed_in(session, person, incoming.message_id)
    if question is None:
        return False
    _edited_answer(session, person, profile, question, incoming, today, context)
    return True


def _edited_line(
    session: Session,
    person: Person,
    profile: AthleteProfile,
    row: CheckInRow,
    incoming: Incoming,
    today: date,
    context: Context,
) -> None:
    if row.date != today:
        text = words.too_late_to_change(athlete_words.day_name(row.date))
        say(session, chat_id=person.chat_id, text=text, now=context.now)
        return
    try:
        answers = read_line(session, profile, incoming.text, today)
    except Unread:
        say(session, chat_id=person.chat_id, text=words.no_longer_a_check_in(), now=context.now)
        return
    old = answers_of(session, profile, row)
    if words.so_far(old) == words.so_far(answers) and row.note == answers.get("note", row.note):
        return
    lead = f"{words.changed(old, answers)}\n{words.re_decided()}"
    take(session, profile, answers, message_id=incoming.message_id, context=context, lead=lead)


def _question_typed_in(session: Session, person: Person, message_id: int) -> OpenQuestion | None:
    query = (
        select(OpenQuestion)
        .where(OpenQuestion.person_id == person.id, OpenQuestion.flow == CHECK_IN.id)
        .order_by(col(OpenQuestion.id).desc())
        .limit(20)
    )
    return next(
        (q for q in session.exec(query) if str(message_id) in q.answers.get(asking.TYPED_IN, {})),
        None,
    )


def _edited_answer(
    session: Session,
    person: Person,
    profile: AthleteProfile,
    question: OpenQuestion,
    incoming: Incoming,
    today: date,
    context: Context,
) -> None:
    if question.answers["_date"] != today.isoformat():
        day = date.fromisoformat(question.answers["_date"])
        text = words.too_late_to_change(athlete_words.day_name(day))
        say(session, chat_id=person.chat_id, text=text, now=context.now)
        return
    key = question.answers[asking.TYPED_IN][str(incoming.message_id)]
    step = CHECK_IN.step(key)
    assert step is not None
    try:
        value = asking.read_answer(step, incoming.text, question, context)
    except Unread as unread:
        text = f"{unread}\n\n{words.no_longer_a_check_in()}"
        say(session, chat_id=person.chat_id, text=text, now=context.now)
        return
    value = [value] if step.many else value
    if question.answers.get(key) == value:
        return
    old = dict(question.answers)
    question.answers = question.answers | {key: value}
    session.add(question)
    lead = words.changed(old, question.answers)
    row = checkin_row(session, profile.person_id, today)
    if row is None:
        say(session, chat_id=person.chat_id, text=lead, now=context.now)
        return
    answers = answers_of(session, profile, row) | {key: value}
    take(
        session, profile, answers, message_id=None, context=context,
        lead=f"{lead}\n{words.re_decided()}",
    )  # fmt: skip
