"""What is not there, or over, raises nothing; what is told beside it is heard.

The sentences are invented for this file, as tired people type them.
"""

from __future__ import annotations

from engine.symptoms import WARNINGS, Symptom, screen

NOTHING_WRONG = """
i dont feel dizzy | my headache is gone | no cramps today | slept fine | not sick at all
no dizziness no cramps no nothing | i am not dizzy anymore | belly is fine again | wasnt sick
havent had any headache since monday | cramps have stopped | the swelling went down
not feeling sick today | no chest pain, no breathing problems | nausea's gone thank god
pulse normal, no flutter | no blood anywhere | i dont have a fever | stomach settled down
all symptoms gone | no longer bloated | haven't binged | not going to faint don't worry
no headache, dizziness or nausea | 61.2 5 3.5 no cramps
Kopfweh ist weg | mir ist nicht mehr schlecht | keine krämpfe heute | gut geschlafen
mir ist gar nicht übel | schwindel ist vorbei | seit montag kein kopfweh mehr
krämpfe haben aufgehört | nicht umgekippt oder so | keine brustschmerzen, luft auch gut
that headache i had is gone now | fever's down | krämpfe? nein
beine nicht mehr dick | alles weg, keine beschwerden mehr | hatte keinen fressanfall
"""
#: Each with the warning that must be alarmed at; "?" where to be heard at all is enough.
SOMETHING_WRONG = """
no headache, but I woke up on the floor | fainting
the headache is gone but now I see double | double-vision
not dizzy anymore, just can't feel my left arm | limb-weakness
no headache. woke up on the floor | fainting
cramps are gone, chest pain isn't | ?
i dont feel my legs | limb-weakness
no pulse in my left foot | ?
no feeling in my legs | limb-weakness
nothing hurts but my chest | ?
no chest pain yesterday, today i do | ?
i don't have chest pain anymore | ?
headache isn't gone | ?
cramps settled in my calves | ?
i haven't slept | ?
kein kopfweh, aber bin am boden aufgewacht | fainting
kopfweh ist weg, aber jetzt seh ich doppelt | double-vision
krämpfe sind weg, der druck auf der brust nicht | chest-pain
nicht schwindelig, aber krieg keine luft | breathlessness
kein gefühl im bein | limb-weakness
kopfweh weg, jetzt lall ich | confusion
dizziness isn't gone | ?
"""


def rows(table: str) -> list[list[str]]:
    return [[cell.strip() for cell in line.split("|")] for line in table.strip().splitlines()]


def test_what_is_denied_or_over_raises_neither_a_flag_nor_a_question() -> None:
    raised = {}
    for text in (cell for row in rows(NOTHING_WRONG) for cell in row):
        found = screen(text)
        if found.hits or found.suspicions:
            raised[text] = (found.hits, found.suspicions)
    assert raised == {}


def test_what_is_told_beside_it_or_only_sounds_like_it_is_heard() -> None:
    missed = {}
    for text, expected in rows(SOMETHING_WRONG):
        found = screen(text)
        alarms = {hit.symptom for hit in found.hits if hit.sure} & WARNINGS
        heard = bool(found.hits or found.suspicions)
        if not heard or (expected != "?" and Symptom(expected) not in alarms):
            missed[text] = found.hits
    assert missed == {}


def test_what_is_denied_is_known_for_denied() -> None:
    """So that a check-in in which nothing but that is told has been understood."""
    assert screen("no cramps today").denied == (Symptom.CRAMPS,)
    assert screen("Kopfweh ist weg").denied == (Symptom.HEADACHE,)
