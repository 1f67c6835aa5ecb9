"""An athlete who writes that the look has spilled over is heard, also whatever the figures say."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

import pytest

from engine.cli.casefile import parse, play
from engine.decision.decide import decide
from engine.symptoms.across import says_spilled
from engine.values.case import Case
from engine.values.checkin import CoachLook, Observed, TargetLook

CASES = Path(__file__).parents[1] / "cases"
SOFTER = TargetLook(fullness_low=6, fullness_high=9, sharpness_low=2, sharpness_high=3)


@pytest.mark.parametrize(
    "text",
    [
        "spilled over", "soft and blurry, spilled", "I think I've spilled over", "totally spilt over",
        "Spilled over I think, legs tight", "spilling over this morning", "woke up spilled",
        "bin überladen", "glaub ich hab gespillt", "weich und überladen", "slept badly. Spilled over!",
    ],
)  # fmt: skip
def test_said_of_this_morning(text: str) -> None:
    assert says_spilled(text)


@pytest.mark.parametrize(
    "text",
    [
        "not spilled over", "did I spill over?", "don't want to spill over", "afraid I'll spill over",
        "spilled my coffee", "spilled half the bottle", "I spilled over last year", "spilled over?",
        "what if I spill over", "nicht überladen", "Angst dass ich überladen werde",
        "kein bisschen gespillt",
        "yesterday I looked spilled over", "soft", "water spilled on the floor", "",
        "coach says I'm spilled over",
    ],
)  # fmt: skip
def test_doubt_denial_questions_and_other_things_are_not(text: str) -> None:
    assert not says_spilled(text)


def case(**answers: object) -> Case:
    """Two days out, as full as expected, in the middle of the band, sharpness 3 as before."""
    one = list(play(parse((CASES / "says-spilled.toml").read_text())))[-1][0]
    return replace(one, checkin=replace(one.checkin, **answers))  # type: ignore[arg-type]


def test_a_step_comes_off_where_fullness_or_weight_bear_it_out_and_the_coach_looks() -> None:
    decision = decide(case())
    assert (decision.rule, decision.trace.steps) == ("says-spilled", -1)
    assert decision.tell_coach
    assert decide(case(note="")).rule == "steady"
    assert decide(case(note="not spilled over")).rule == "steady"


@pytest.mark.parametrize("answers", [{"fullness": 4}, {"sharpness": 4}])
def test_it_never_adds_carbs_and_is_looked_at_where_nothing_bears_it_out(
    answers: dict[str, int],
) -> None:
    decision = decide(case(**answers))
    assert (decision.rule, decision.trace.steps, decision.tell_coach) == ("says-spilled", 0, True)


def test_what_the_coach_sees_goes_before_the_word() -> None:
    def seen(look: CoachLook) -> Case:
        one = case()
        word = Observed(date=one.checkin.date, look=look)
        return replace(one, history=replace(one.history, observed=(word,)))

    assert decide(seen(CoachLook.FLAT)).rule == "coach-sees-flat-over-blur"
    assert decide(seen(CoachLook.FULL)).trace.steps == 0
    assert decide(seen(CoachLook.SPILLED)).rule == "coach-sees-spill"


def test_under_a_softer_look_the_word_counts_all_the_same() -> None:
    one = case(sharpness=1, fullness=7)
    assert decide(replace(one, event=replace(one.event, target=SOFTER))).rule == "spilled-over"
    one = case(sharpness=2)
    said = decide(replace(one, event=replace(one.event, target=SOFTER)))
    assert (said.rule, said.trace.steps, said.tell_coach) == ("says-spilled", 0, True)
