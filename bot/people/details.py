"""What is kept with each kind of entry of the history: a line for each shape, as the database has it.

Days are ISO dates, carbs grams. A shape fits wherever its keys are asked for, so none is built on
another; what an older row may lack is asked for with `.get`. An entry that keeps what held `before`
(`bot/week/snapshots.py`, and what whoever changed it adds) can be taken back.
"""
# ruff: noqa: UP013

from __future__ import annotations

from typing import Any, NotRequired, TypedDict

Keyed = dict[str, Any]
Grams = float | None

# fmt: off
Nothing = TypedDict("Nothing", {})
Because = TypedDict("Because", {"because": str})
CheckIn = TypedDict("CheckIn", {"checkin": int, "revision": int})
Coach = TypedDict("Coach", {"coach": str})
Day = TypedDict("Day", {"day": str})
Figure = TypedDict("Figure", {"day": str, "carb_g": Grams})
Forecast = TypedDict("Forecast", {"use": str})
Frozen = TypedDict("Frozen", {"because": NotRequired[str]})
Look = TypedDict("Look", {"day": str, "look": str, "sharpness": int | None})
LookCheck = TypedDict("LookCheck", {"fullness": int, "sharpness": int, "gut": str, "rule": str,
    "grams": float})
Named = TypedDict("Named", {"name": str})
NewCoach = TypedDict("NewCoach", {"to": int})
OnOff = TypedDict("OnOff", {"on": bool})
Photo = TypedDict("Photo", {"photo": int})
Readiness = TypedDict("Readiness", {"readiness": int, "outcome": str})
SecondCoach = TypedDict("SecondCoach", {"name": str, "rights": str, "until": str})
Setting = TypedDict("Setting", {"flow": str})
Status = TypedDict("Status", {"status": str})
Symptom = TypedDict("Symptom", {"told": str, "words": str})
Text = TypedDict("Text", {"text": str})
TextTo = TypedDict("TextTo", {"text": str, "to": list[str]})
TopUp = TypedDict("TopUp", {"grams": float})
Trip = TypedDict("Trip", {"trip": int})
Weeks = TypedDict("Weeks", {"of": int, "days": list[str]})

Alert = TypedDict("Alert", {"alert": int, "flag": str, "level": str})
AlertOn = TypedDict("AlertOn", {"alert": int, "flag": str, "level": str, "day": str})
AlertOpened = TypedDict("AlertOpened", {"alert": int, "flag": str, "level": str, "day": str,
    "facts": Keyed})
AlertRepeated = TypedDict("AlertRepeated", {"alert": int, "flag": str, "level": str, "day": str,
    "times": int})
AlertWorse = TypedDict("AlertWorse", {"alert": int, "flag": str, "level": str, "day": str,
    "now": str})
AlertPassedOn = TypedDict("AlertPassedOn", {"alert": int, "flag": str, "level": str, "day": str,
    "contact": str, "why": str})
AlertStuck = TypedDict("AlertStuck", {"alert": int, "flag": str, "level": str, "day": str,
    "why": str})
Doubt = TypedDict("Doubt", {"alert": int, "words": str, "about": str})

Decided = TypedDict("Decided", {"decision": int, "outcome": str, "rule": str, "day": str,
    "carb_g": Grams, "planned_carb_g": Grams, "status": str})
Lapsed = TypedDict("Lapsed", {"decision": int, "day": str, "carb_g": Grams, "proposed_g": Grams,
    "small": bool})
ProposalClosed = TypedDict("ProposalClosed", {"decision": int, "day": str, "carb_g": Grams})
SignedOff = TypedDict("SignedOff", {"decision": int, "status": str, "carb_g": Grams, "day": str,
    "proposed_g": Grams, "because": str, "before": Keyed})
SetByHand = TypedDict("SetByHand", {"day": str, "carb_g": float, "because": str, "before": Keyed})
Held = TypedDict("Held", {"hold": int, "day": str, "last": str, "carb_g": float, "because": str,
    "before": Keyed, "said": list[int]})
HoldEnded = TypedDict("HoldEnded", {"hold": int, "day": str, "last": str, "before": Keyed,
    "said": list[int]})
TakenBack = TypedDict("TakenBack", {"of": int, "sentence": str, "day": str})

Event = TypedDict("Event", {"event": int})
EventAsks = TypedDict("EventAsks", {"event": int, "key": str, "before": Keyed, "now": Keyed | None,
    "how": NotRequired[str]})
EventLook = TypedDict("EventLook", {"event": int, "look": str})
EventRemoved = TypedDict("EventRemoved", {"event": int, "kind": str, "day": str})
EventSet = TypedDict("EventSet", {"event": int, "kind": str, "day": str, "zone": str,
    "before": Keyed, "said": list[int], "was": list[str] | None, "how": NotRequired[str]})
Load = TypedDict("Load", {"g_per_kg": float, "was_g_per_kg": float})
LoadSuggested = TypedDict("LoadSuggested", {"event": int, "look": str, "g_per_kg": float,
    "was_g_per_kg": float})

# `_volume_unit` is not kept: it is that of whoever reads the sentence.
LimitsSet = TypedDict("LimitsSet", {"limits": int, "bounds": Keyed, "how": str, "before": Keyed,
    "changed": dict[str, list[Any]], "_volume_unit": NotRequired[str]})
PlanSet = TypedDict("PlanSet", {"plan": int, "shape": str, "how": str, "before": Keyed,
    "changed": list[Keyed], "_volume_unit": NotRequired[str]})

Times = TypedDict("Times", {"stage_day": int, "before": Keyed})
TimesMoved = TypedDict("TimesMoved", {"minutes": int, "stage_day": int, "before": Keyed})
TimesTakenBack = TypedDict("TimesTakenBack", {"of": int, "sentence": str, "stage_day": int})
