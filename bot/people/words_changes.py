"""What each kind of entry of the history reads as, made of what was kept with it."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from datetime import date
from typing import Any

from bot.people import details as kept
from bot.words import figures, phases
from bot.words.common import day_and_year
from bot.words.languages import mark, tr
from bot.words.names import FIELD_WORDS, flag_name, rule_name, seen, symptom_name, word
from bot.words.phases import training_words
from engine.values.case import ForecastUse
from engine.values.plan import Phase

LONGEST_QUOTE = 200


def day(detail: kept.Day) -> str:
    return (
        figures.short_day(date.fromisoformat(detail["day"])) if "day" in detail else tr("the day")
    )


def event_set(detail: kept.EventSet) -> str:
    """The event, with what it was before where there was one."""
    kind = word(detail["kind"])
    if not (was := detail.get("was")):
        return tr("set the event: {kind}, {day}", kind=kind, day=day(detail))
    earlier_kind, earlier_day = was
    return tr(
        "set the event: {kind}, {day} (before that {earlier_kind}, {earlier_day})",
        kind=kind, day=day(detail), earlier_kind=word(earlier_kind),
        earlier_day=figures.short_day(date.fromisoformat(earlier_day)),
    )  # fmt: skip


def _with_reason(said: str, because: str | None) -> str:
    """Followed by the reason that was given, where one was."""
    return tr("{said}. Why: {because}", said=said, because=because) if because else said


def quote(text: str) -> str:
    said = " ".join(text.split())
    return f'"{said[: LONGEST_QUOTE - 1]}…"' if len(said) > LONGEST_QUOTE else f'"{said}"'


def _grams(carb_g: float | None) -> str:
    return figures.grams(carb_g) if carb_g is not None else tr("no value")


def _for_day(detail: kept.Figure) -> dict[str, str]:
    return {"figure": _grams(detail.get("carb_g")), "day": day(detail)}


def _value(key: str, value: object, volume_unit: str) -> str:
    if value is None or value == "":
        return tr("none")
    if isinstance(value, str):
        return phases.phase_words(Phase(value)) if key == "phase" else training_words(value)
    assert isinstance(value, int | float)
    if key.endswith("_l"):
        return figures.volume(value, volume_unit)
    if key.endswith("_mg"):
        return figures.milligrams(value)
    return figures.grams(value) if key.endswith("_g") else figures.number(value)


def _from_to(what: str, old: str, new: str) -> str:
    return tr("{what} {old} to {new}", what=what, old=old, new=new)


def plan_set(detail: kept.PlanSet) -> str:
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


def limits_set(detail: kept.LimitsSet) -> str:
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


def decided(detail: kept.Decided) -> str:
    if detail["outcome"] == "escalated":
        return tr("stopped by a warning, nothing adjusted for {day}", day=day(detail))
    outcome = "proposed" if detail.get("status") == "waiting" else detail["outcome"]
    return tr(
        DECIDED[outcome],
        **_for_day(detail),
        planned=_grams(detail.get("planned_carb_g")),
        rule=rule_name(detail["rule"]),
    )


SIGNED = {
    "approved": mark("approved {figure} for {day}"),
    "plan-kept": mark("kept the plan at {figure} for {day}"),
    "other-figure": mark("set another number, {figure} for {day}"),
}


def signed(detail: kept.SignedOff) -> str:
    message = SIGNED[detail["status"]]
    return _with_reason(tr(message, **_for_day(detail)), detail.get("because"))


#: Readings, and what a doubtful word was asked about, kept beside complaints.
READINGS = {
    "water-within-one-hour": mark("reported drinking fast"),
    "resting-pulse": mark("gave a resting pulse of {value}"),
    "urine-colour": mark("gave urine colour {value} of 8"),
    "cleared": mark("said that it is not {value}"),
}


def symptom(d: kept.Symptom) -> str:
    told, _, value = d["told"].partition(":")
    if told in READINGS:
        return tr(READINGS[told], value=symptom_name(value))
    what = tr("reported: {symptom}", symptom=symptom_name(told))
    return f"{what}: {quote(d['words'])}" if d.get("words") else what


def to_coach(detail: kept.TextTo) -> str:
    said = quote(detail.get("text", ""))
    if detail.get("to"):
        return tr("wrote to {names} {words}", names=", ".join(detail["to"]), words=said)
    return tr("wrote to the coach {words}", words=said)


def by_hand(detail: kept.SetByHand) -> str:
    figure = _grams(detail.get("carb_g"))
    said = tr("set {day} by hand to {figure}", day=day(detail), figure=figure)
    return _with_reason(said, detail.get("because"))


def held(detail: kept.Held) -> str:
    said = tr(
        "set a hold from {first} to {last}: {figure}",
        first=day(detail),
        last=figures.short_day(date.fromisoformat(detail["last"])),
        figure=_grams(detail.get("carb_g")),
    )
    return _with_reason(said, detail.get("because"))


#: By the rule of the last choice before the stage.
LOOK_RULES = {
    "gut-unsettled": mark("stomach unsettled, so no top-up"),
    "blurred": mark("lines blurred, so no top-up"),
    "full": mark("full already"),
    "good-enough": mark("good as it is"),
    "flat-no-room": mark("flat, but the limits leave no room"),
    "flat-and-sharp": mark("flat and sharp"),
}


def alert(message: str) -> Callable[[kept.Alert], str]:
    """A step of an alert's life; `message` may name its level, its flag and what else is kept."""

    def told(detail: kept.Alert) -> str:
        named = {"level": word(detail.get("level", "alert")), "flag": flag_name(detail["flag"])}
        more = {key: value for key, value in detail.items() if key in ("times", "contact", "why")}
        return tr(message, **named, **more, now=word(detail.get("now", "")))

    return told


def coach_look(detail: kept.Look) -> str:
    return tr(
        "saw on {day}: {look}", day=day(detail), look=seen(detail["look"], detail.get("sharpness"))
    )


def proposal_closed(detail: kept.Figure) -> str:
    return tr(
        "left before {grams} for {day} was approved, so it was not taken",
        grams=_grams(detail.get("carb_g")),
        day=day(detail),
    )


def second_coach_joined(detail: kept.SecondCoach) -> str:
    return tr(
        "{name} joined as second coach ({rights})",
        name=detail["name"],
        rights=word(detail["rights"]),
    )


def event_removed(detail: kept.EventRemoved) -> str:
    return tr(
        "took the {kind} of {day} out of the season", kind=word(detail["kind"]), day=day(detail)
    )


def sign_off_lapsed(detail: kept.Lapsed) -> str:
    return (
        tr("no answer in time, the small step stands: {figure} for {day}", **_for_day(detail))
        if detail.get("small")
        else tr("no answer in time, on plan: {figure} for {day}", **_for_day(detail))
    )


def frozen(detail: kept.Frozen) -> str:
    return _with_reason(tr("froze the adjusting"), detail.get("because"))


def always_tomorrow(detail: kept.OnOff) -> str:
    return (
        tr("check-ins now set the next day's carbs")
        if detail.get("on")
        else tr("check-ins now set the same day's carbs")
    )


def checked_in(detail: kept.CheckIn) -> str:
    return tr("checked in") if detail["revision"] == 1 else tr("changed the check-in")


def look_check(detail: kept.LookCheck) -> str:
    return tr(
        "look before the stage: fullness {fullness}, sharpness {sharpness}, stomach {gut}. "
        "Rule: {rule}",
        fullness=detail["fullness"],
        sharpness=detail["sharpness"],
        gut=word(detail["gut"]),
        rule=tr(LOOK_RULES[detail["rule"]]),
    )


def top_up(detail: kept.TopUp) -> str:
    return tr("approved {figure} of extra carbs", figure=figures.grams(detail["grams"]))


def look(detail: kept.EventLook) -> str:
    return (
        tr("gave no verdict on the look")
        if detail["look"] == "-"
        else tr("verdict on the look: {look}", look=word(detail["look"]))
    )


FORECAST = {
    ForecastUse.PROPOSES: mark("let the forecast propose"),
    ForecastUse.SHOWS: mark("let the forecast show only"),
    ForecastUse.RULES_ONLY: mark("set to rules only, without the forecast"),
}


def forecast(detail: kept.Forecast) -> str:
    """Older entries know only on and off."""
    if "use" in detail:
        return tr(FORECAST[ForecastUse(detail["use"])])
    return tr("switched the forecast on") if detail.get("on") else tr("switched the forecast off")


def load_suggested(detail: kept.Load) -> str:
    if detail["g_per_kg"] == detail["was_g_per_kg"]:
        return tr(
            "suggested the same load for next time, {now} g/kg",
            now=figures.number(detail["g_per_kg"], 1),
        )
    return tr(
        "suggested {now} g/kg for the next load, before {was}",
        now=figures.number(detail["g_per_kg"], 1), was=figures.number(detail["was_g_per_kg"], 1),
    )  # fmt: skip


def load_taken_over(detail: kept.Load) -> str:
    return tr(
        "used the suggested load: {now} g/kg, before {was}",
        now=figures.number(detail["g_per_kg"], 1), was=figures.number(detail["was_g_per_kg"], 1),
    )  # fmt: skip


def days(detail: kept.Weeks) -> str:
    return ", ".join(day_and_year(date.fromisoformat(day)) for day in detail["days"])
