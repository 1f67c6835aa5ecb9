"""The history as a coach reads it: for any day what was set, what changed it, who, when and why."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from datetime import date
from typing import Any

from bot.messages import coach_figures as figures
from bot.messages import next_load as load_words
from bot.messages.safety import symptom_name
from engine.limits import LIMIT_KEYS

Detail = Mapping[str, Any]
LONGEST_QUOTE = 200


def history_button() -> str:
    return "History"


def head(name: str, day: date, days_out: int | None) -> str:
    out = f", {figures.days_out(days_out)}" if days_out is not None else ""
    return f"History of {name}: {figures.day(day)} {day.year}{out}"


def in_force(carb_g: float, planned_g: float | None, by: str) -> str:
    """`by`: decision | coach | plan, as kept with the figure."""
    against = (
        f" ({figures.change(carb_g - planned_g)} against the plan)"
        if planned_g is not None and abs(carb_g - planned_g) >= 0.5
        else ""
    )
    whose = {"decision": "the check-in", "coach": "the coach's word", "plan": "the plan"}[by]
    return f"Set for the day: {figures.grams(carb_g)}{against}, by {whose}."


def as_planned(planned_g: float) -> str:
    return f"Set for the day: {figures.grams(planned_g)}, as planned."


def nothing_set() -> str:
    return "No figure was set for the day."


def nothing_happened() -> str:
    return "Nothing was changed for it, and nothing happened on it."


def cut(left_out: int) -> str:
    return f"… and {left_out} more that day."


def line(when: str, who: str, what: str) -> str:
    return f"- {when}, {who}: {what}"


def brimline() -> str:
    return "Brimline"


def earlier_button(day: date) -> str:
    return f"← {figures.day(day)}"


def later_button(day: date) -> str:
    return f"{figures.day(day)} →"


def another_day_button() -> str:
    return "Another day"


def undo_button() -> str:
    return "Take back the last change"


def back_button() -> str:
    return "Back to the card"


def ask_day() -> str:
    return "Which day? Send a date, such as 6 May."


# Taking the last change back


def nothing_to_undo() -> str:
    return "No change of yours is left to take back."


def cannot_undo(what: str) -> str:
    return (
        f"The last thing that set figures was this, and it can't be taken back: {what}. Set a day "
        "by hand, or change the plan or limits again."
    )


def undo_sure(when: str, who: str, what: str, *, told: bool, own: bool) -> str:
    then = (
        "It has gone out, so a correction follows it."
        if told
        else "Nothing has gone out on it yet, so nobody is told."
    )
    return f"Take this back?\n{line(when, who, what)}" + ("" if own else f"\n\n{then}")


def undo_yes_button() -> str:
    return "Take it back"


def undo_no_button() -> str:
    return "Leave it"


def undone(*, told: bool, own: bool) -> str:
    if own:
        return "Taken back. What held before holds again."
    return "Taken back. What held before holds again" + (
        ", and a correction is on its way." if told else "; nothing had gone out on it."
    )


def undo_moved_on() -> str:
    return "Something has been set since then, so that can't be taken back any more."


def left() -> str:
    return "Left as it is."


# What each kept thing reads as


def sentence(what: str, detail: Detail, *, weight_unit: str, volume_unit: str) -> str:
    """A kept thing in words. A test holds that everything which is kept has its sentence here."""
    if what in ("plan set", "limits set"):
        return (_plan_set if what == "plan set" else _limits_set)(detail, volume_unit)
    return SENTENCES[what](detail)


def _day(detail: Detail) -> str:
    return figures.day(date.fromisoformat(detail["day"])) if "day" in detail else "the day"


def _why(detail: Detail) -> str:
    return f". Why: {detail['because']}" if detail.get("because") else ""


def _quote(text: object) -> str:
    said = " ".join(str(text).split())
    return f'"{said[: LONGEST_QUOTE - 1]}…"' if len(said) > LONGEST_QUOTE else f'"{said}"'


def _grams(detail: Detail, key: str = "carb_g") -> str:
    return figures.grams(detail[key]) if detail.get(key) is not None else "no figure"


FIELDS = {
    "carb_g": "carbs", "protein_g": "protein", "fat_g": "fat", "fibre_g": "fibre",
    "water_l": "water", "sodium_mg": "sodium",
}  # fmt: skip


def _value(key: str, value: object, volume_unit: str) -> str:
    if value is None or isinstance(value, str):
        return str(value or "none")
    assert isinstance(value, int | float)
    if key.endswith("_l"):
        return figures.litres(value, volume_unit)
    return f"{value:,.0f} mg" if key.endswith("_mg") else f"{value:,.0f} {_unit(key)}".strip()


def _unit(key: str) -> str:
    return "g" if key.endswith("_g") else ""


def _plan_set(detail: Detail, volume_unit: str) -> str:
    changed = [
        f"{figures.days_out(day['days_out'])}: {_fields(day['fields'], volume_unit)}"
        for day in detail.get("changed", [])
    ]
    return "set the plan" + (f" ({'; '.join(changed)})" if changed else "")


def _fields(fields: Mapping[str, Sequence[Any]], volume_unit: str) -> str:
    return ", ".join(
        f"{FIELDS.get(key, key.replace('_', ' '))} {_value(key, old, volume_unit)} to "
        f"{_value(key, new, volume_unit)}"
        for key, (old, new) in fields.items()
    )


def _limits_set(detail: Detail, volume_unit: str) -> str:
    changed = [
        f"{LIMIT_KEYS[key].label} {figures.limit(key, old, volume_unit)} to "
        f"{figures.limit(key, new, volume_unit)}"
        for key, (old, new) in detail.get("changed", {}).items()
    ]
    return "set the limits" + (f" ({'; '.join(changed)})" if changed else "")


def _decided(detail: Detail) -> str:
    if detail["outcome"] == "escalated":
        return f"stopped by a warning, nothing adjusted for {_day(detail)}"
    planned = f" (planned {_grams(detail, 'planned_carb_g')})"
    verb = "proposed" if detail.get("status") == "waiting" else detail["outcome"]
    return f"{verb}: {_grams(detail)} for {_day(detail)}{planned}, rule {detail['rule']}"


def _signed(detail: Detail) -> str:
    verb = {
        "approved": "approved",
        "plan-kept": "kept the plan at",
        "other-figure": "set another figure,",
    }[detail["status"]]
    return f"{verb} {_grams(detail)} for {_day(detail)}{_why(detail)}"


def _alert(step: str) -> Callable[[Detail], str]:
    def told(detail: Detail) -> str:
        level = detail.get("level", "alert")
        return f"{level} ({detail['flag'].replace('-', ' ')}) {step}"

    return told


SENTENCES: dict[str, Callable[[Detail], str]] = {
    "onboarded": lambda d: "answered the first questions",
    "declined": lambda d: f"declined at the start: {d.get('because', '')}",
    "doctor's word noted": lambda d: "noted that a doctor said yes",
    "coach changed": lambda d: "changed the coach",
    "coach ended": lambda d: "ended the coaching",
    "coach began": lambda d: "took up the coaching",
    "second coach joined": lambda d: f"{d['name']} joined as second coach ({d['rights']})",
    "second coach over": lambda d: f"{d['name']} is no longer second coach",
    "event set": lambda d: f"set the event: {d['kind']}, {_day(d)}",
    "day set by hand": lambda d: f"set {_day(d)} by hand to {_grams(d)}{_why(d)}",
    "held": lambda d: (
        f"held from {_day(d)} to {figures.day(date.fromisoformat(d['last']))} at {_grams(d)}"
        f"{_why(d)}"
    ),
    "hold ended": lambda d: "ended the hold",
    "taken back": lambda d: f"took back: {d['sentence']}",
    "decided": _decided,
    "signed off": _signed,
    "sign-off lapsed": lambda d: f"no word in time, the plan holds: {_grams(d)} for {_day(d)}",
    "frozen": lambda d: "froze the adjusting" + _why(d),
    "freeze lifted": lambda d: "lifted the freeze",
    "always tomorrow": lambda d: (
        "mornings set the day after" if d.get("on") else "mornings set the day that begins"
    ),
    "checked-in": lambda d: "checked in" if d["revision"] == 1 else "changed the check-in",
    "missed": lambda d: "missed the check-in",
    "symptom": lambda d: f"told of {symptom_name(d['told'].partition(':')[0])}",
    "settings": lambda d: "changed a setting",
    "paused": lambda d: "paused the check-ins",
    "active": lambda d: "took the check-ins up again",
    "unreachable": lambda d: "could not be reached any more",
    "message to athlete": lambda d: f"wrote to the athlete {_quote(d.get('text', ''))}",
    "message to coach": lambda d: f"wrote to the coach {_quote(d.get('text', ''))}",
    "alert opened": _alert("raised"),
    "alert repeated": lambda d: _alert(f"repeated ({d['times']})")(d),
    "alert no longer repeated": _alert("no longer repeated after a day"),
    "alert became worse": lambda d: _alert(f"has become a {d['now']}")(d),
    "second contact told": lambda d: _alert(f"told to {d['contact']}. Why: {d['why']}")(d),
    "no second contact to tell": lambda d: _alert(f"reached nobody else. Why: {d['why']}")(d),
    "alert acknowledged": _alert("acknowledged"),
    "journey": lambda d: "planned the journey to the event",
    "arrived": lambda d: "arrived: mornings go by the event's clocks",
    "day laid out": lambda d: "laid out the timetable of the day",
    "day moved": lambda d: f"moved the day's times by {d['minutes']} min",
    "stage called off": lambda d: "called the stage off",
    "look check": lambda d: (
        f"looked before the stage: fullness {d['fullness']}, sharpness {d['sharpness']}, "
        f"gut {d['gut']}; rule {d['rule']}"
    ),
    "top-up": lambda d: f"allowed a top-up of {figures.grams(d['grams'])}",
    "look": lambda d: (
        "left open how the day looked" if d["look"] == "-" else f"said the day looked {d['look']}"
    ),
    "next load suggested": load_words.suggested,
    "next load taken over": load_words.taken_over,
    "next load left": load_words.left_it,
    "forecast": lambda d: f"switched the forecast {'on' if d['on'] else 'off'}",
    "picture kept": lambda d: "sent a picture",
    "pictures deleted": lambda d: "deleted the pictures",
    "readiness": lambda d: f"asked whether a peak week is worth it: {d['outcome']}",
    "went on against readiness": lambda d: f"went on although the answer was: {d['outcome']}",
}
