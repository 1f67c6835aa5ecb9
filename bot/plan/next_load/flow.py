"""The load that earlier weeks suggest for the next plan: what a coach reads, and whether to plan it."""

from __future__ import annotations

from bot.dialogue.flow import Answers, Flow, Step, buttons, yes_or_no
from bot.plan.words import use_plan_button
from bot.words import figures
from bot.words.chances import all_three
from bot.words.common import cancel_button
from bot.words.languages import Sentence, SentenceAbout, SentenceOn, mark, tr
from engine.planning.behind.next_load import NextLoad
from engine.values.checkin import Look
from engine.values.plan import PeakPlan

#: What the newest word on a look says, of the load that it was said of; and of one's own.
SEEN = {
    Look.FLAT: mark("{name} was flat at {then} g/kg on an average load day."),
    Look.SPILLED: mark("{name} spilled over at {then} g/kg on an average load day."),
    Look.FULL: mark("{name} was full at {then} g/kg on an average load day."),
}
OWN_SEEN = {
    Look.FLAT: mark("You were flat at {then} g/kg on an average load day."),
    Look.SPILLED: mark("You spilled over at {then} g/kg on an average load day."),
    Look.FULL: mark("You were full at {then} g/kg on an average load day."),
}
INSTEAD = {
    Look.FLAT: mark(
        "There was room for more. For the next load I suggest {now} instead of {was} g/kg: "
        "{now_g} instead of {was_g} over all load days."
    ),
    Look.SPILLED: mark(
        "That was more than the muscles took up. For the next load I suggest {now} instead of "
        "{was} g/kg: {now_g} instead of {was_g} over all load days."
    ),
    Look.FULL: mark(
        "For the next load I suggest the same again, {now} instead of {was} g/kg: {now_g} "
        "instead of {was_g} over all load days."
    ),
}
PART_OF_THE_WAY_BACK = mark(
    "But check-ins had moved that week's plan, and part of the way back to it is safer: for the next "
    "load I suggest {now} instead of {was} g/kg, {now_g} instead of {was_g} over all load days."
)
#: Beside a load that came in full, to see how far full reaches.
TO_ASK = mark(
    "The same again would teach little. For the trial I suggest {now} instead of {was} g/kg, {now_g} "
    "instead of {was_g} over all load days: how that looks tells how far full reaches. It may miss, as "
    "a trial may; eaten as planned it teaches most, so the forecast leaves its days alone."
)
ASKS_ALREADY = mark(
    "The trial's plan has another load than that, {now} g/kg, {now_g} over all load days: how it "
    "looks tells how far full reaches. Eaten as planned it teaches most, so the forecast leaves its "
    "days alone."
)
#: Once two looks beside each other have told.
BETWEEN = mark(
    "A load beside it had come in full, and the two looks together tell more than one. For the next "
    "load I suggest {now} instead of {was} g/kg: {now_g} instead of {was_g} over all load days."
)
HELD_BY = {
    "carb_floor_g": mark("Your carb floor does not allow less."),
    "carb_ceiling_g": mark("Your carb ceiling does not allow more."),
    "change_per_day_g": mark("That is as far as a day may move from your plan in one go."),
    "guard_rail": mark("That is the safety bound for this body mass."),
}

learnt_button = Sentence("Suggested next load")
take_over_button = Sentence("Draft the next plan with it")
load_has_begun = Sentence(
    "This week's load has started, so I no longer change it as a whole: check-ins adjust "
    "single days now. After the event I use your verdict on the look for the next load."
)
moved_on = Sentence(
    "Something has changed since I showed you this, so I changed nothing. Please look again."
)


def suggestion(found: NextLoad, plan: PeakPlan, name: str, *, self_coached: bool) -> str:
    """The suggestion with its reason; `plan` is the one that it was made from."""
    seen = OWN_SEEN if self_coached else SEEN
    parts = [
        tr(seen[found.look], name=name, then=per_kg(found.then_g_per_kg)),
        _proposal(found, plan),
        _odds(found),
        tr(HELD_BY[found.bound]) if found.bound is not None else "",
        tr(
            "This suggestion comes from a forecast that has never been tested on real peak "
            "weeks. Nothing changes unless you use it, and then I check the plan and your "
            "limits as always."
        ),
    ]
    return "\n\n".join(part for part in parts if part)


def _proposal(found: NextLoad, plan: PeakPlan) -> str:
    now, was = per_kg(found.g_per_kg), per_kg(found.before_g_per_kg)
    if found.asks and not found.changes:
        return tr(ASKS_ALREADY, now=now, now_g=_total(found.plan))
    if found.changes:
        back = found.look is Look.FULL and found.before_g_per_kg == found.then_g_per_kg
        beside = TO_ASK if found.asks else BETWEEN if found.between else None
        return tr(
            beside or (PART_OF_THE_WAY_BACK if back else INSTEAD[found.look]),
            now=now, was=was, now_g=_total(found.plan), was_g=_total(plan),
        )  # fmt: skip
    if found.disagrees:
        return tr(
            "The forecast would have gone the other way. Your eye comes first, so no change: "
            "{now} g/kg, {now_g} over all load days. Before the load, look at what was really "
            "eaten, and at sleep, salt and water in that week.",
            now=now, now_g=_total(found.plan),
        )  # fmt: skip
    if found.look is Look.FULL:
        return tr(
            "I suggest the same again: {now} g/kg, {now_g} over all load days.",
            now=now, now_g=_total(found.plan),
        )  # fmt: skip
    return tr(
        "Going by all check-ins of that week, no other load is worth the risk. I suggest the "
        "same again: {now} g/kg, {now_g} over all load days.",
        now=now, now_g=_total(found.plan),
    )  # fmt: skip


def _odds(found: NextLoad) -> str:
    after = tr(
        "Chances on event day, if eaten as planned: {chances}.", chances=all_three(found.after)
    )  # fmt: skip
    if not found.changes:
        return after
    before = tr(
        "With {was} g/kg: {chances}.",
        was=per_kg(found.before_g_per_kg), chances=all_three(found.before),
    )  # fmt: skip
    return f"{after}\n{before}"


def per_kg(load: float) -> str:
    """ "8.1"."""
    return figures.number(load, 1)


def _total(plan: PeakPlan) -> str:
    return figures.grams(plan.load_g)


def limits_move(was_g: float, now_g: float) -> str:
    """What a load past the limit on its total takes along."""
    return tr(
        "This load is over your limit on the load total ({was}). If you use it, that limit becomes "
        "{now}, so that check-ins keep room to correct. All other limits stay.",
        was=figures.grams(was_g), now=figures.grams(now_g),
    )  # fmt: skip


def ask_use(said: str, table: str, *, has_plan: bool) -> str:
    if has_plan:
        return tr("{said}\n\n{table}\n\nReplace the current plan with it?", said=said, table=table)
    return tr("{said}\n\n{table}\n\nUse it as the plan?", said=said, table=table)


def set_event_first(said: str) -> str:
    return tr(
        "{said}\n\nTo draft it, set the next event first. Then tap \"{button}\".",
        said=said, button=learnt_button(),
    )  # fmt: skip


as_it_stands = SentenceOn(
    "{said}\n\nThe current plan already has this load, so there is nothing to do."
)
nothing_learnt = SentenceAbout(
    "I can't suggest a load yet. After a trial or a show with check-ins I ask how you "
    "looked; then I can.",
    "I can't suggest a load for {name} yet. After a trial or a show with check-ins I ask "
    "you how {name} looked; then I can.",
)
model_misfits = SentenceAbout(
    "The forecast did not fit your body: on three mornings in a row your weight was "
    "outside what it expected. So I suggest no number for the next load; go by what "
    "you saw.",
    "The forecast did not fit {name}'s body: on three mornings in a row the weight was "
    "outside what it expected. So I suggest no number for the next load; go by what you "
    "saw.",
)

# Under the question for the load of a draft.
draft_hint = SentenceOn(
    "Your verdicts on earlier weeks suggest {load} g/kg on an average load day."
)
draft_button = SentenceOn("{load} g/kg, suggested")


def _ask_use(answers: Answers) -> str:
    return ask_use(answers["_said"], answers["_table"], has_plan=bool(answers["_plan"]))


#: Context: "_said" and "_table" to show; "_days", the plan as it would become, and its "_shape";
#: "_plan", the id of the one it would replace (0: none); "_event"; "_g_per_kg" and
#: "_was_g_per_kg", the mean load day in it and before; "_load_total_g", the limit that moves along.
NEXT_LOAD = Flow(
    id="coach-next-load",
    can_cancel=False,
    steps=(
        Step(
            key="use",
            ask=_ask_use,
            read=yes_or_no,
            choices=buttons(((use_plan_button, "yes"), (cancel_button, "no"))),
        ),
    ),
)
