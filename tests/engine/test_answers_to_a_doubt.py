"""What is said to "do you mean headache?", and what says that all is well: invented for this file."""

from __future__ import annotations

import pytest

from engine.symptoms import Symptom
from engine.symptoms.asked_whether import means_it, says_all_is_well
from engine.written.chatter import is_chatter


def lines(text: str) -> list[str]:
    return [cell.strip() for line in text.strip().splitlines() for cell in line.split("|")]


DENIED = lines("""
    no headache at all, just tired | nope | not really | nah just tired
    nope, slept badly that's all
    it was a joke | I meant the price | all good | nothing like that | no no, my head is fine
    nicht direkt | nee, nur müde | kein Kopfweh, alles gut | eher nicht | war nur ein Scherz
    nein, nein
""")
AFFIRMED = lines("""
    yes a bit | yeah since this morning | a little | kind of | yep, bad one | leider ja
    ja ein bisschen
    not just headache | etwas | only a bit | yes, my head hurts
""")
LEFT_OPEN = lines("""
    not sure | no idea | not too bad | not yet | nicht schlimm | keine Ahnung | no worse than usual
    can I have coffee | what do you mean
""")
WELL = lines("""
    all good now, had some food | I'm fine | everything is fine again | feeling great today
    no, I'm ok, thanks | mir geht's wieder gut | alles gut, danke | alles wieder bestens
""")
NOT_WELL = lines("""
    all good but my chest feels tight | I'm good for nothing | is everything fine? | all good things end
    fine, except my legs | alles gut, nur schwindlig | I'm not fine | feeling better off dead
""")
CHATTER = lines("""
    hm | meh | ok lol | haha | thanks coach | 👍 | 🙏🏽🙏🏽 | ❤️ | na ja | alles klar | danke dir | ...
    vielen lieben Dank | okay will do | guten Morgen
""")
SOMETHING = lines("""
    ok? | 😭 | 💀 | help | ok but my knee | no | sick | gut geschlafen | more
    thanks for nothing honestly
    5 | wait | why | müde
""")


@pytest.mark.parametrize(("said", "means"), [(DENIED, False), (AFFIRMED, True), (LEFT_OPEN, None)])
def test_an_answer_to_a_doubt_is_a_no_a_yes_or_leaves_it_open(
    said: list[str], means: bool | None
) -> None:
    assert [one for one in said if means_it(one, Symptom.HEADACHE) is not means] == []


def test_a_warning_is_not_denied_by_a_not_really() -> None:
    assert means_it("not really", Symptom.CHEST_PAIN) is None
    assert means_it("no chest pain, only the strap", Symptom.CHEST_PAIN) is False
    assert means_it("no, i just want it all to stop", Symptom.SELF_HARM) is not False
    assert means_it("no, never", Symptom.SELF_HARM) is False


def test_that_all_is_well_is_heard_and_what_is_set_apart_from_it_too() -> None:
    assert [one for one in WELL if not says_all_is_well(one)] == []
    assert [one for one in NOT_WELL if says_all_is_well(one)] == []


def test_chatter_is_what_says_nothing_and_no_word_more() -> None:
    assert [one for one in CHATTER if not is_chatter(one)] == []
    assert [one for one in SOMETHING if is_chatter(one)] == []
