"""The signs that emergency services ask for, as tired people type them: each raises its warning.

Which signs these are is common knowledge of first aid (face, arm, speech; severe allergy; a stiff neck
with fever; heat stroke; poisoning; a clot in a leg; low sugar; urine that cannot come), listed from
memory; the sentences are invented for this file.
"""

from __future__ import annotations

from engine.symptoms import WARNINGS, Symptom, screen

TOLD = """
danger-signs | nettle rash everywhere, and my tongue is getting thick
danger-signs | my neck is stiff and the bright light hurts, fever too
danger-signs | stopped sweating an hour ago, skin hot and dry, bit confused
danger-signs | I took way too many of the painkillers
danger-signs | right calf is red and hot and I'm short of breath
danger-signs | blood sugar 2.4 and I'm shaking
danger-signs | can't pee since last night and my bladder is bursting
danger-signs | banged my head on the rack, threw up twice since
danger-signs | dad is burning to the touch, bone dry and muttering rubbish after the long walk
danger-signs | since the tan my face is swelling and swallowing is getting hard
danger-signs | left calf has gone purple, throbs behind the knee
breathlessness | can't.. get.. any air.. sitting.. down
stroke-signs | no dizziness no nausea only my speech is slurred
danger-signs | my hands are locked shut like claws and my lips tingle
heavy-bleeding | sliced my hand on a tin and it's spurting
heavy-bleeding | brought up something like coffee grounds
stroke-signs | i know the word but can't say it
stroke-signs | wanted to say thanks and something completely different came out
stroke-signs | my left foot keeps dragging
chest-pain | heartburn that goes up into the jaw, and I'm clammy
breathlessness | can only sleep sitting up, lying flat i suffocate
self-harm | stood at the edge of the platform, one step
danger-signs | pills are all gone, i took them
danger-signs | calf's like a balloon, and i get no air on the stairs
danger-signs | das Gesicht schwillt zu seit dem Spray, Schlucken fällt schwer
breathlessness | krieg.. kaum.. luft.. sitz nur
danger-signs | Ausschlag am ganzen Körper und die Lippen sind geschwollen
danger-signs | Nacken ist steif, Fieber, Licht tut weh
danger-signs | hab die ganze Schachtel Schmerztabletten geschluckt
danger-signs | eine Wade ist heiß und geschwollen und ich bin kurzatmig
danger-signs | kann seit gestern nicht pinkeln, die Blase platzt
danger-signs | Kopf am Türrahmen angeschlagen, seitdem gekotzt
heavy-bleeding | hab was rotes erbrochen
heavy-bleeding | die binde ist nach einer halben stunde voll
stroke-signs | weiß das Wort, krieg es aber nicht raus
stroke-signs | wollte danke sagen und da kam was anderes raus
stroke-signs | mein rechter Fuß schleift seit dem Aufstehen
chest-pain | Sodbrennen das bis in den Kiefer zieht
self-harm | stand am bahnsteig, nur ein schritt
"""
#: The same words of something else.
HARMLESS = """
left leg is purple from the new tights | eyes puffy from the sad film | hm.. ok.. fine..
stopped sweating the small stuff | took the whole pack of rice cakes to the gym
one leg of the tripod is twice the size of the other | the word is on the list, page 2
stood on the platform for an hour, train late | my neck is stiff from the flight, pillow was bad
nur ein Schritt bis zum Pokal, sagt Ravi | die ganze Packung Reiswaffeln ist schon weg
der Hund hat einen Ausschlag, Lippen auch geschwollen | bauch flach wie ein brett
need to sleep sitting up so the tan won't smear | not sweating in the sauna yet, too cold
carbs 300, fat 50, sugar 25 | Zucker 30, Salz 5, alles laut Etikett | downed the whole bottle, 2 litres
packed all my tablets and the tan | took 12 vitamin tablets a week like you said | ring size 16 at rest
heartburn again after the chilli, nothing new | Sodbrennen bis in den Hals nach dem Espresso
press feels heavy but focus on upper pecs was good | i left it next to the cup
the curtain goes up and all eyes on me | im Bad gewogen, Gewicht 61,2 | 35 degrees outside, so warm
cut my carbs, sweat pouring out of me on the bike | hab lange daneben gestanden
die Nüsse krieg ich nicht mehr runter, so satt | my alarm had to go off twice, slept so deep
"""


def cells(table: str) -> list[str]:
    return [cell.strip() for line in table.strip().splitlines() for cell in line.split("|")]


def test_each_sign_raises_its_warning() -> None:
    rows = list(zip(cells(TOLD)[::2], cells(TOLD)[1::2], strict=True))
    missed = {}
    for symptom, text in rows:
        sure = {hit.symptom for hit in screen(text).hits if hit.sure}
        if Symptom(symptom) not in sure:
            missed[text] = sure
    assert missed == {}


def test_the_same_words_of_something_else_raise_no_alarm() -> None:
    alarms = {
        text: [hit.symptom for hit in screen(text).hits if hit.sure and hit.symptom in WARNINGS]
        for text in cells(HARMLESS)
    }
    assert not any(alarms.values()), alarms
