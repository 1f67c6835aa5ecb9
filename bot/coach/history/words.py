"""The history as a coach reads it: for any day what was set, what changed it, who, when and why."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from datetime import date
from typing import Any

from bot.alerts.words_findings import flag_name
from bot.debrief import words as debrief_words
from bot.debrief import words_deeper as closer_words
from bot.decision import words_forecast_use as forecast_use
from bot.decision.words_reasons import rule_name
from bot.people.changes import Change
from bot.plan.next_load import words as load_words
from bot.sheets.past_weeks import words as past_words
from bot.words import coach_figures as figures
from bot.words import phases
from bot.words.languages import Sentence, SentenceOn, mark, tr, worded
from bot.words.looks import seen
from bot.words.names import FIELD_WORDS, word
from bot.words.phases import training_words
from bot.words.symptoms import symptom_name
from engine.values.plan import Phase

Detail = Mapping[str, Any]
LONGEST_QUOTE = 200


history_button = Sentence("History")
nothing_set = Sentence("No carbs were set for the day.")
nothing_happened = Sentence("Nothing was changed for that day, and nothing happened on it.")

brimline = Sentence("Brimline")
another_day_button = Sentence("Another day")
undo_button = Sentence("Take back the last change")
ask_day = Sentence("Which day? Send a date, for example 6 May.")


def head(name: str, day: date, days_out: int | None) -> str:
    text = tr("History of {name}: {day} {year}", name=name, day=figures.day(day), year=day.year)
    return f"{text}, {figures.days_out(days_out)}" if days_out is not None else text


SET_BY = {
    "decision": mark("Set for the day: {figure}, by the check-in."),
    "coach": mark("Set for the day: {figure}, by the coach."),
    "plan": mark("Set for the day: {figure}, by the plan."),
}


def in_force(carb_g: float, planned_g: float | None, by: str) -> str:
    """`by`: decision | coach | plan, as kept with the figure."""
    figure = figures.grams(carb_g)
    if planned_g is not None and abs(carb_g - planned_g) >= 0.5:
        change = figures.change(carb_g - planned_g)
        figure = tr("{figure} ({change} against the plan)", figure=figure, change=change)
    return tr(SET_BY[by], figure=figure)


as_planned = SentenceOn("Set for the day: {planned}, as planned.", figures.grams)
cut = SentenceOn("… and {left_out} more that day.")


def line(when: str, who: str, what: str) -> str:
    return f"- {when}, {who}: {what}"


def changed_by(name: str, by: str, what: str) -> str:
    """What one who coaches an athlete has changed, for the others."""
    return tr("{name}, by {who}: {what}", name=name, who=by, what=what)


# What each kept thing reads as


def sentence(what: str, detail: Detail, *, volume_unit: str) -> str:
    """A kept thing in words. A test holds that everything which is kept has its sentence here."""
    return worded(SENTENCES[Change(what)], {**detail, "_volume_unit": volume_unit})


def _day(detail: Detail) -> str:
    return figures.day(date.fromisoformat(detail["day"])) if "day" in detail else tr("the day")


def _event_set(detail: Detail) -> str:
    """The event, with what it was before where there was one."""
    kind = word(detail["kind"])
    if not detail.get("was"):
        return tr("set the event: {kind}, {day}", kind=kind, day=_day(detail))
    earlier_kind, earlier_day = detail["was"]
    return tr(
        "set the event: {kind}, {day} (before that {earlier_kind}, {earlier_day})",
        kind=kind, day=_day(detail), earlier_kind=word(earlier_kind),
        earlier_day=figures.day(date.fromisoformat(earlier_day)),
    )  # fmt: skip


def _with_reason(said: str, detail: Detail) -> str:
    """Followed by the reason that was given, where one was."""
    if not detail.get("because"):
        return said
    return tr("{said}. Why: {because}", said=said, because=detail["because"])


def _quote(text: object) -> str:
    said = " ".join(str(text).split())
    return f'"{said[: LONGEST_QUOTE - 1]}…"' if len(said) > LONGEST_QUOTE else f'"{said}"'


def _grams(detail: Detail, key: str = "carb_g") -> str:
    return figures.grams(detail[key]) if detail.get(key) is not None else tr("no value")


def _for_day(detail: Detail) -> dict[str, str]:
    return {"figure": _grams(detail), "day": _day(detail)}


def _value(key: str, value: object, volume_unit: str) -> str:
    if value is None or isinstance(value, str):
        return training_words(value) if value else tr("none")
    assert isinstance(value, int | float)
    if key == "phase":
        return phases.phase_words(Phase(str(value)) if value else None)
    if key.endswith("_l"):
        return figures.litres(value, volume_unit)
    if key.endswith("_mg"):
        return figures.milligrams(value)
    return figures.grams(value) if key.endswith("_g") else figures.number(value)


def _from_to(what: str, old: str, new: str) -> str:
    return tr("{what} {old} to {new}", what=what, old=old, new=new)


def _plan_set(detail: Detail) -> str:
    changed = [
        f"{figures.days_out(day['days_out'])}: {_fields(day['fields'], detail['_volume_unit'])}"
        for day in detail.get("changed", [])
    ]
    return tr("set the plan") + (f" ({'; '.join(changed)})" if changed else "")


def _fields(fields: Mapping[str, Sequence[Any]], volume_unit: str) -> str:
    return ", ".join(
        _from_to(_field(key), _value(key, old, volume_unit), _value(key, new, volume_unit))
        for key, (old, new) in fields.items()
    )


def _field(key: str) -> str:
    if key == "cardio_min":
        return tr("cardio min")
    return tr(FIELD_WORDS[key]) if key in FIELD_WORDS else key.replace("_", " ")


def _limits_set(detail: Detail) -> str:
    volume_unit = detail["_volume_unit"]
    changed = [
        _from_to(
            figures.limit_label(key),
            figures.limit(key, old, volume_unit),
            figures.limit(key, new, volume_unit),
        )
        for key, (old, new) in detail.get("changed", {}).items()
    ]
    return tr("set the limits") + (f" ({'; '.join(changed)})" if changed else "")


DECIDED = {
    "proposed": mark("proposed: {figure} for {day} (planned {planned}). Rule: {rule}"),
    "adjusted": mark("adjusted: {figure} for {day} (planned {planned}). Rule: {rule}"),
    "held": mark("no change: {figure} for {day} (planned {planned}). Rule: {rule}"),
}


def _decided(detail: Detail) -> str:
    if detail["outcome"] == "escalated":
        return tr("stopped by a warning, nothing adjusted for {day}", day=_day(detail))
    outcome = "proposed" if detail.get("status") == "waiting" else detail["outcome"]
    return tr(
        DECIDED[outcome],
        figure=_grams(detail),
        day=_day(detail),
        planned=_grams(detail, "planned_carb_g"),
        rule=rule_name(detail["rule"]),
    )


SIGNED = {
    "approved": mark("approved {figure} for {day}"),
    "plan-kept": mark("kept the plan at {figure} for {day}"),
    "other-figure": mark("set another number, {figure} for {day}"),
}


def _signed(detail: Detail) -> str:
    message = SIGNED[detail["status"]]
    said = tr(message, figure=_grams(detail), day=_day(detail))
    return _with_reason(said, detail)


#: Readings, and what a doubtful word was asked about, kept beside complaints.
READINGS = {
    "water-within-one-hour": mark("reported drinking fast"),
    "resting-pulse": mark("gave a resting pulse of {value}"),
    "urine-colour": mark("gave urine colour {value} of 8"),
    "cleared": mark("said that it is not {value}"),
}


def _symptom(d: Detail) -> str:
    told, _, value = str(d["told"]).partition(":")
    if told in READINGS:
        return tr(READINGS[told], value=symptom_name(value))
    what = tr("reported: {symptom}", symptom=symptom_name(told))
    return f"{what}: {_quote(d['words'])}" if d.get("words") else what


def _to_coach(detail: Detail) -> str:
    said = _quote(detail.get("text", ""))
    if detail.get("to"):
        return tr("wrote to {names} {words}", names=", ".join(detail["to"]), words=said)
    return tr("wrote to the coach {words}", words=said)


def _by_hand(detail: Detail) -> str:
    said = tr("set {day} by hand to {figure}", day=_day(detail), figure=_grams(detail))
    return _with_reason(said, detail)


def _held(detail: Detail) -> str:
    said = tr(
        "set a hold from {first} to {last}: {figure}",
        first=_day(detail),
        last=figures.day(date.fromisoformat(detail["last"])),
        figure=_grams(detail),
    )
    return _with_reason(said, detail)


#: By the rule of the last choice before the stage.
LOOK_RULES = {
    "gut-unsettled": mark("stomach unsettled, so no top-up"),
    "blurred": mark("lines blurred, so no top-up"),
    "full": mark("full already"),
    "good-enough": mark("good as it is"),
    "flat-no-room": mark("flat, but the limits leave no room"),
    "flat-and-sharp": mark("flat and sharp"),
}


def _alert(message: str) -> Callable[[Detail], str]:
    """A step of an alert's life; `message` may name its level, its flag and what else is kept."""

    def told(detail: Detail) -> str:
        named = {"level": word(detail.get("level", "alert")), "flag": flag_name(detail["flag"])}
        more = {key: value for key, value in detail.items() if key in ("times", "contact", "why")}
        return tr(message, **named, **more, now=word(detail.get("now", "")))

    return told


SENTENCES: dict[Change, Sentence | Callable[[Detail], str]] = {
    Change.PLAN_SET: _plan_set,
    Change.LIMITS_SET: _limits_set,
    Change.ONBOARDED: Sentence("answered the first questions"),
    Change.MEASURES_ANSWERED_AGAIN: Sentence("answered height and weight again"),
    Change.DECLINED: lambda d: tr(
        "declined at the start: {because}", because=word(d.get("because", ""))
    ),
    Change.DOCTOR_WORD_NOTED: Sentence("confirmed a doctor's clearance"),
    Change.COACH_CHANGED: Sentence("changed the coach"),
    Change.COACH_ENDED: Sentence("ended the coaching"),
    Change.COACH_LOOK: lambda d: tr(
        "saw on {day}: {look}", day=_day(d), look=seen(d["look"], d.get("sharpness"))
    ),
    Change.COACH_LOOK_TAKEN_BACK: lambda d: tr("took back the look of {day}", day=_day(d)),
    Change.ATHLETE_LEFT: lambda d: tr("ended the coaching with {name}", name=d["coach"]),
    Change.PROPOSAL_CLOSED: lambda d: tr(
        "left before {grams} for {day} was approved, so it was not taken",
        grams=_grams(d),
        day=_day(d),
    ),
    Change.COACH_BEGAN: Sentence("took over the coaching"),
    Change.SECOND_COACH_JOINED: lambda d: tr(
        "{name} joined as second coach ({rights})", name=d["name"], rights=word(d["rights"])
    ),
    Change.SECOND_COACH_OVER: lambda d: tr("{name} is no longer second coach", name=d["name"]),
    Change.EVENT_SET: _event_set,
    Change.EVENT_ASKS: Sentence("changed the target look or the weigh-in"),
    Change.EVENT_REMOVED: lambda d: tr(
        "took the {kind} of {day} out of the season", kind=word(d["kind"]), day=_day(d)
    ),
    Change.DAY_SET_BY_HAND: _by_hand,
    Change.HELD: _held,
    Change.HOLD_ENDED: Sentence("ended the hold"),
    Change.TAKEN_BACK: lambda d: tr("took back: {what}", what=d["sentence"]),
    Change.TIMES_TAKEN_BACK: lambda d: tr("took back: {what}", what=d["sentence"]),
    Change.DECIDED: _decided,
    Change.SIGNED_OFF: _signed,
    Change.SIGN_OFF_LAPSED: lambda d: (
        tr("no answer in time, the small step stands: {figure} for {day}", **_for_day(d))
        if d.get("small")
        else tr("no answer in time, on plan: {figure} for {day}", **_for_day(d))
    ),
    Change.FROZEN: lambda d: _with_reason(tr("froze the adjusting"), d),
    Change.FREEZE_LIFTED: Sentence("lifted the freeze"),
    Change.ALWAYS_TOMORROW: lambda d: (
        tr("check-ins now set the next day's carbs")
        if d.get("on")
        else tr("check-ins now set the same day's carbs")
    ),
    Change.CHECKED_IN: lambda d: (
        tr("checked in") if d["revision"] == 1 else tr("changed the check-in")
    ),
    Change.MISSED: Sentence("missed the check-in"),
    Change.SYMPTOM: _symptom,
    Change.DOUBT: lambda d: tr("was asked about {words}", words=_quote(d.get("words", ""))),
    Change.ALERT_PUT_RIGHT: _alert(mark("{level} ({flag}) put right")),
    Change.SETTINGS: Sentence("changed a setting"),
    Change.PAUSED: Sentence("paused the check-ins"),
    Change.RESUMED: Sentence("resumed the check-ins"),
    Change.UNREACHABLE: Sentence("could not be reached any more"),
    Change.REACHABLE_AGAIN: Sentence("could be reached again"),
    Change.MESSAGE_TO_ATHLETE: lambda d: tr(
        "wrote to the athlete {words}", words=_quote(d.get("text", ""))
    ),
    Change.MESSAGE_TO_COACH: _to_coach,
    Change.OWN_NOTE: lambda d: tr("kept a note {words}", words=_quote(d.get("text", ""))),
    Change.ALERT_OPENED: _alert(mark("{level} ({flag}) sent")),
    Change.ALERT_REPEATED: _alert(mark("{level} ({flag}) repeated ({times})")),
    Change.ALERT_NO_LONGER_REPEATED: _alert(
        mark("{level} ({flag}) no longer repeated after a day")
    ),
    Change.ALERT_BECAME_WORSE: _alert(mark("{level} ({flag}) is now: {now}")),
    Change.SECOND_CONTACT_TOLD: _alert(mark("{level} ({flag}) passed on to {contact}. Why: {why}")),
    Change.NO_SECOND_CONTACT_TO_TELL: _alert(
        mark("{level} ({flag}) reached nobody else. Why: {why}")
    ),
    Change.ALERT_ACKNOWLEDGED: _alert(mark("{level} ({flag}) acknowledged")),
    Change.ALERT_CLOSED: _alert(mark("{level} ({flag}) closed, because the coaching ended")),
    Change.JOURNEY: Sentence("planned the journey to the event"),
    Change.ARRIVED: Sentence("arrived: check-ins now go by the event's time zone"),
    Change.DAY_LAID_OUT: Sentence("set up the timetable of the day"),
    Change.DAY_MOVED: lambda d: tr("moved the day's times by {minutes} min", minutes=d["minutes"]),
    Change.STAGE_CALLED_OFF: Sentence("cancelled the event day"),
    Change.LOOK_CHECK: lambda detail: tr(
        "look before the stage: fullness {fullness}, sharpness {sharpness}, stomach {gut}. "
        "Rule: {rule}",
        fullness=detail["fullness"],
        sharpness=detail["sharpness"],
        gut=word(detail["gut"]),
        rule=tr(LOOK_RULES[detail["rule"]]),
    ),
    Change.TOP_UP: lambda d: tr(
        "approved {figure} of extra carbs", figure=figures.grams(d["grams"])
    ),
    Change.LOOK: lambda d: (
        tr("gave no verdict on the look")
        if d["look"] == "-"
        else tr("verdict on the look: {look}", look=word(d["look"]))
    ),
    Change.FORECAST: forecast_use.in_history,
    Change.PICTURE_KEPT: Sentence("sent a photo"),
    Change.PICTURES_DELETED: Sentence("deleted the photos"),
    Change.READINESS: lambda d: tr(
        "asked whether a peak week is worth it: {outcome}", outcome=word(d["outcome"])
    ),
    Change.WENT_ON_AGAINST_READINESS: lambda d: tr(
        "went ahead although the answer was: {outcome}", outcome=word(d["outcome"])
    ),
    Change.NEXT_LOAD_SUGGESTED: load_words.suggested,
    Change.NEXT_LOAD_TAKEN_OVER: load_words.taken_over,
    Change.NEXT_LOAD_LEFT: load_words.left_it,
    Change.WEEKS_IMPORTED: past_words.in_history,
    Change.IMPORT_TAKEN_BACK: past_words.back_in_history,
    Change.DEBRIEF: debrief_words.in_history,
    Change.DEBRIEF_NOTE: debrief_words.note_in_history,
    Change.DEBRIEF_WORD: debrief_words.word_in_history,
    Change.PLACING: closer_words.placing_in_history,
}
