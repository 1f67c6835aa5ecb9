"""What a coach reads of the load that earlier weeks suggest for the next one."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import asdict
from typing import Any

from bot.languages import mark, tr
from bot.messages import coach_figures as figures
from bot.messages.chances import all_three
from engine.look import Look
from engine.next_load import NextLoad
from engine.plan import LOAD_DAYS, PeakPlan

#: What the newest word on a look says, of the load that it was said of; and of one's own.
SEEN = {
    Look.FLAT: mark("{name} was flat at {then} g/kg on a mean load day."),
    Look.SPILLED: mark("{name} spilled over at {then} g/kg on a mean load day."),
    Look.FULL: mark("{name} was full at {then} g/kg on a mean load day."),
}
OWN_SEEN = {
    Look.FLAT: mark("You were flat at {then} g/kg on a mean load day."),
    Look.SPILLED: mark("You spilled over at {then} g/kg on a mean load day."),
    Look.FULL: mark("You were full at {then} g/kg on a mean load day."),
}
INSTEAD = {
    Look.FLAT: mark(
        "There was room for more, so for the next load I would plan {now} instead of {was} g/kg: "
        "{now_g} instead of {was_g} over the three days."
    ),
    Look.SPILLED: mark(
        "That was more than the muscles took up, so for the next load I would plan {now} instead of "
        "{was} g/kg: {now_g} instead of {was_g} over the three days."
    ),
    Look.FULL: mark(
        "So for the next load I would plan that load again, {now} instead of {was} g/kg: {now_g} "
        "instead of {was_g} over the three days."
    ),
}
HELD_BY = {
    "carb_floor_g": mark("Your carb floor holds it there."),
    "carb_ceiling_g": mark("Your carb ceiling holds it there."),
    "load_total_g": mark("Your total for the load holds it there."),
    "guard_rail": mark("The absolute bound for this body mass holds it there."),
}


def learnt_button() -> str:
    return tr("Load as learnt")


def take_over_button() -> str:
    return tr("Draft the next plan so")


def leave_button() -> str:
    return tr("Leave it")


def use_it_button() -> str:
    return tr("Use this plan")


def suggestion(found: NextLoad, plan: PeakPlan, name: str, *, own: bool) -> str:
    """The suggestion with its reason; `plan` is the one that it was made from."""
    seen = OWN_SEEN if own else SEEN
    parts = [
        tr(seen[found.look], name=name, then=per_kg(found.then_g_per_kg)),
        _proposal(found, plan),
        _odds(found),
        tr(HELD_BY[found.bound]) if found.bound is not None else "",
        tr(
            "This is a suggestion of a model that was never tried on real peak weeks. Nothing "
            "changes unless you take it over, and then the plan passes its review and your limits "
            "like any other."
        ),
    ]
    return "\n\n".join(part for part in parts if part)


def _proposal(found: NextLoad, plan: PeakPlan) -> str:
    now, was = per_kg(found.g_per_kg), per_kg(found.before_g_per_kg)
    if found.changes:
        return tr(
            INSTEAD[found.look],
            now=now, was=was, now_g=_total(found.plan), was_g=_total(plan),
        )  # fmt: skip
    if found.disagrees:
        return tr(
            "The model would have gone the other way. So your eye first, and no change: {now} g/kg, "
            "{now_g} over the three days. Before the load, look at what was really eaten, and at "
            "sleep, salt and water in that week.",
            now=now, now_g=_total(found.plan),
        )  # fmt: skip
    if found.look is Look.FULL:
        return tr(
            "So the same again: {now} g/kg, {now_g} over the three days.",
            now=now, now_g=_total(found.plan),
        )  # fmt: skip
    return tr(
        "Followed through with all the mornings of that week, no other load is worth its risk. So "
        "the same again: {now} g/kg, {now_g} over the three days.",
        now=now, now_g=_total(found.plan),
    )  # fmt: skip


def _odds(found: NextLoad) -> str:
    after = tr(
        "On the day, eaten as planned: {chances}.", chances=all_three(asdict(found.after))
    )  # fmt: skip
    if not found.changes:
        return after
    before = tr(
        "With {was} g/kg: {chances}.",
        was=per_kg(found.before_g_per_kg), chances=all_three(asdict(found.before)),
    )  # fmt: skip
    return f"{after}\n{before}"


def per_kg(load: float) -> str:
    """ "8.1"."""
    return f"{load:.1f}"


def _total(plan: PeakPlan) -> str:
    return figures.grams(sum(day.carb_g for day in plan if day.days_out in LOAD_DAYS))


def ask_use(said: str, table: str, *, has_plan: bool) -> str:
    if has_plan:
        return tr("{said}\n\n{table}\n\nUse it in place of the plan?", said=said, table=table)
    return tr("{said}\n\n{table}\n\nUse it as the plan?", said=said, table=table)


def set_event_first(said: str) -> str:
    return tr(
        "{said}\n\nTo draft it, set the next event first: a plan counts its days from there. Then "
        '"{button}" makes the plan.',
        said=said, button=learnt_button(),
    )  # fmt: skip


def as_it_stands(said: str) -> str:
    return tr(
        "{said}\n\nThe plan as it stands has this load, so there is nothing to do.", said=said
    )


def load_has_begun() -> str:
    return tr(
        "The load of this week has begun, so it is no longer scaled as a whole: the mornings move "
        "single days now. After the day, your word on the look is what the next load is made from."
    )


def nothing_learnt(name: str, *, own: bool) -> str:
    if own:
        return tr(
            "There is nothing to go by yet. After a trial or a show with check-ins I ask how you "
            "looked; from that word on I can suggest the next load."
        )
    return tr(
        "There is nothing to go by for {name} yet. After a trial or a show with check-ins I ask you "
        "how {name} looked; from that word on I can suggest the next load.",
        name=name,
    )


def model_misfits(name: str, *, own: bool) -> str:
    if own:
        return tr(
            "The model does not follow your body: three mornings running it was outside what it "
            "expected. So I put no figure on the next load; go by what you saw."
        )
    return tr(
        "The model does not follow {name}'s body: three mornings running it was outside what it "
        "expected. So I put no figure on the next load; go by what you saw.",
        name=name,
    )


def left() -> str:
    return tr("Left as it was. Nothing was changed.")


def moved_on() -> str:
    return tr(
        "Something has changed since I showed you this, so nothing was taken over. Please look again."
    )


def draft_hint(load: str) -> str:
    """Under the question for the load of a draft."""
    return tr(
        "Earlier weeks, as you saw them, suggest {load} g/kg on a mean load day.",
        load=load,
    )


def draft_button(load: str) -> str:
    return tr("{load} g/kg, as learnt", load=load)


# In the history


def suggested(detail: Mapping[str, Any]) -> str:
    if detail["g_per_kg"] == detail["was_g_per_kg"]:
        return tr(
            "suggested the same load for the next time, {now} g/kg", now=per_kg(detail["g_per_kg"])
        )
    return tr(
        "suggested for the next load {now} g/kg, where it was {was}",
        now=per_kg(detail["g_per_kg"]), was=per_kg(detail["was_g_per_kg"]),
    )  # fmt: skip


def taken_over(detail: Mapping[str, Any]) -> str:
    return tr(
        "chose the suggested load for the plan: {now} g/kg, where it was {was}",
        now=per_kg(detail["g_per_kg"]), was=per_kg(detail["was_g_per_kg"]),
    )  # fmt: skip


def left_it(detail: Mapping[str, Any]) -> str:
    return tr("left the suggested load")
