"""Complaints told in passing, and everyday talk that borrows the words of a complaint.

The rows are invented for this file, in the manner in which tired people write on a phone.
"""

from __future__ import annotations

import pytest

from engine.symptoms import Symptom, screen

TOLD = """
seizure | arms were twitching and then I was not responding for two minutes, my flatmate says
fainting | there is a gap between filling the kettle and lying on the tiles
palpitations | my heart shakes the mattress every night
palpitations | the whole bed is rocking with my pulse
stroke-signs | since lunch my left side feels nothing
stroke-signs | half my face is hanging a bit
stroke-signs | lip feels like after the dentist, one side only
heavy-bleeding | period flooding since noon, pads full every hour
heavy-bleeding | my period is really heavy, clots the size of walnuts
severe-headache | like a baseball bat to the back of the head
severe-headache | I have never had a headache like this
severe-headache | pain in my head made me drop on my knees
double-vision | every face has a second outline, people have ghosts
double-vision | seeing two of everything on the screen
double-vision | I see doubel since I got up
self-harm | the farewell letters are in the drawer
self-harm | on the roof of the car park, one step would do
muscle-breakdown | pee looks like porter and my quads are excruciating
starving | no food until friday, that is my plan
low-mood | tears just keep coming, every evening this week
low-mood | there is no joy in anything anymore
drying-out | salt baths in a tracksuit, two kilos down already
drying-out | slept in bin bags to sweat it off
purging | took senna so the scale looks lighter
fast-heart | ring shows resting 102
fast-heart | 118 just lying in bed
fall | fell off the stepper and my wrist is fat
fall | slipped on the wet tiles and landed on my hip
vomiting | lost my lunch behind a hedge
vomiting | the shake made a comeback
fever | 39.1 under the tongue
fever | my teeth are chattering under two blankets
headache | tension across my forehead since noon
swelling | a thumbprint stays on my ankle
dizzy | feeling floaty on the stairs
diarrhoea | it just pours out the back end
constipation | nothing has moved for four days
exhaustion | so tired I missed my stop
seizure | hab gezuckt und war nicht ansprechbar für zwei minuten sagt meine freundin
fainting | da ist eine lücke zwischen wasserkocher und auf den fliesen liegen
palpitations | mein puls ist so stark dass die matratze bebt
palpitations | herz schlägt so laut dass ich nicht liegen kann
stroke-signs | seit mittag spür ich links gar nichts
stroke-signs | die halbe lippe hängt
stroke-signs | linke wange wie nach der betäubung
limb-weakness | die hand hat einfach das glas fallen lassen
heavy-bleeding | tage so heftig, tampon nach ner stunde durch
heavy-bleeding | die periode kommt mit klumpen so groß wie pflaumen
severe-headache | wie ein baseballschläger gegen den schädel
severe-headache | solche kopfschmerzen hab ich noch nie gehabt
severe-headache | höllische schmerzen im kopf seit einer stunde
double-vision | alle zeilen haben einen zwilling
double-vision | ich sehe zwei bilder leicht versetzt
self-harm | die abschiedsbriefe sind fertig
self-harm | steh auf der brücke, es wäre so leicht
urine-dark | urin sieht aus wie malzbier
starving | bis freitag nichts mehr essen, dann passt der anzug
low-mood | beim kochen laufen mir die tränen
low-mood | hab an nichts mehr spaß
drying-out | salzbad in der badewanne, schon ein kilo leichter
drying-out | im müllsack aufs laufband und schwitzen
purging | abführtee damit ich mich leer fühle
purging | vier abführtabletten genommen
fast-heart | ruhepuls heute früh 104
fast-heart | 112 im liegen
fall | an der kante hängen geblieben und lang hingeschlagen
fall | vom podest gefallen, handgelenk dick
vomiting | das frühstück kam rückwärts
vomiting | einmal gebrochen nach dem shake
fever | 38,9 unter der achsel
fever | mir klappern nachts die zähne
headache | druckkopfschmerz seit dem aufstehen
nausea | fühl mich seekrank auf dem sofa
swollen-hands | mit geschwollenen fingern aufgewacht
swelling | am knöchel bleibt eine delle
dizzy | so duselig beim aufstehen
sleepless | hab schäfchen gezählt bis vier
stomach-pain | leichtes magendrücken nach dem reis
diarrhoea | bei mir kommt es hinten wie wasser
constipation | eine stunde gesessen für nichts
exhaustion | akku ganz leer, meiner, nicht das handy
"""

HARMLESS = """
girlfriend has a fever so I'm in the spare room
a friend of mine fainted at her wedding rehearsal
neighbour threw up on our stairs, lovely smell
husband is dizzy from his new glasses, he moans a lot
an athlete of mine collapsed after legs last autumn
is there a button for nausea
what counts as a headache on the scale
why do you ask me about vomiting each evening
what's the difference between cramps and a strain
does cabbage bloat people
nearly collapsed with laughter at the tanning tent
almost fainted from excitement when the number came
trembling with anticipation, two sleeps left
binge watching the new season on the couch
the dye is bleeding on the white towel
flexed the chest in side chest for an hour
squeezed my abs on every pose
the puking emoji was for the tilapia
heart rate sat at 131 on the treadmill
yesterday's headache is long gone
the cramps from sunday are gone
quads look a bit blurry today, carbs please
sunday's dizziness never came back
pulse 120 during posing practice
the paint is bleeding through the wall
cross my heart, all meals eaten
kollegin hat fieber, ich übernehm ihre schicht
eine freundin von mir ist beim yoga umgekippt
nachbar hat sich im treppenhaus übergeben, lecker
mann hat kopfschmerzen, ich koch heute für uns
gibt es einen knopf für übelkeit
ab wann gilt das als kopfschmerz
wieso fragst du abends nach erbrechen
was ist der unterschied zwischen krampf und zerrung
bläht kohl die leute eigentlich
mein trainingskumpel ist gestern zusammengebrochen
puls 142 auf dem rad, 30 min
fast in ohnmacht gefallen vor freude als die nummer kam
zittere vor aufregung, noch zwei nächte
vor lachen fast umgekippt im bräunungszelt
die tinte blutet aufs papier
der becher ist mir vom tisch gefallen
der koffer ist die treppe runtergefallen
kotzsmiley war für den fisch gedacht
das kopfweh von gestern ist längst weg
die krämpfe vom sonntag sind weg
linien heute etwas verwaschen, mehr carbs
signal ist schwach, ich schick das foto später
brust angespannt im side chest, lief gut
""".strip().splitlines()


def test_a_complaint_told_in_passing_is_found() -> None:
    told = [row.split(" | ") for row in TOLD.strip().splitlines()]
    assert [row for row in told if Symptom(row[0]) not in screen(row[1]).symptoms] == []


def test_talk_of_others_of_words_and_of_joy_is_no_complaint() -> None:
    assert [text for text in HARMLESS if screen(text).hits != ()] == []


@pytest.mark.parametrize(
    ("text", "symptom"),
    [
        ("wife here, she passed out in the hall", Symptom.FAINTING),
        ("husband found me on the floor", Symptom.FAINTING),
        ("frau hier, er ist umgekippt", Symptom.FAINTING),
        ("someone drove a nail gun into my temple", Symptom.SEVERE_HEADACHE),
        ("why do you ask, i fainted an hour ago", Symptom.FAINTING),
        ("fainted again today, headache from sunday is gone", Symptom.FAINTING),
        ("i put down the bar and everything went black", Symptom.FAINTING),
        ("opened the fridge and passed out", Symptom.FAINTING),
        ("i dropped my phone and then my legs gave way", Symptom.LIMB_WEAKNESS),
        ("hab die stange abgelegt und dann wurde alles schwarz", Symptom.FAINTING),
        ("als ich den kühlschrank aufgemacht hab bin ich umgekippt", Symptom.FAINTING),
        ("heart rate resting 97 this morning", Symptom.FAST_HEART),
        ("the puking emoji says it all, i threw up twice", Symptom.REPEATED_VOMITING),
    ],
)
def test_ones_own_complaint_beside_such_talk_is_still_found(text: str, symptom: Symptom) -> None:
    assert symptom in screen(text).symptoms


@pytest.mark.parametrize(
    "text",
    [
        "what if I get a cramp on stage?",
        "was wenn ich auf der Bühne einen Krampf kriege?",
        "what if I faint on stage?",
        "Was wenn ich auf der Bühne umkippe?",
        "heart skipped a beat when I saw the stage",
        "not dizzy anymore",
        "nicht mehr schwindelig",
    ],
)
def test_what_is_asked_of_the_day_joked_or_over_goes_to_the_coach_and_nobody_is_asked(
    text: str,
) -> None:
    found = screen(text)
    assert found.hits == ()
    assert found.suspicions == ()


OVER_OR_ELSEWHERE = """
the headache from yesterday has gone
my cramps are all gone now
swelling in my ankles is completely gone
Übelkeit ist heute weg
die Krämpfe sind seit gestern vorbei
Knöchel sind wieder ganz abgeschwollen
I am not in the least nauseous
not one bit dizzy today
mir ist nicht im geringsten übel
mir ist kein bisschen schwindlig
aged 15 I passed out at a concert, never again
at the age of ten I had seizures, nothing since
mit 15 hatte ich mal einen Krampfanfall, nie wieder
in meiner ersten Diät damals bin ich umgekippt, nie wieder
do we have to report a cramp or just the serious stuff?
does the coach see it when I write something like dizzy?
muss ich einen Krampf eintragen oder nur schlimme Dinge?
sieht der Coach wenn ich so etwas wie Schwindel tippe?
will the water be cut or does it stay the same
wird das Trinken gekürzt oder bleibt alles wie es ist
the ketchup bled into my oats
the omelette collapsed, smelled like vomit
die Soße blutet in den Reis
der Teig ist mir zusammengebrochen
horror film night with lots of blood
the lyrics say my chest hurts
my heart stopped when I read the start list
head spinning with all the macros
the hotel bill made me dizzy
mir schwirrt der Kopf vor lauter Zahlen
bei der Hotelrechnung ist mir schwindlig geworden
es liegt mir schwer im Magen, dass ich dich angelogen habe
my heart skipped a beat when I saw the first photos of the hall
mein Herz blieb kurz stehen als ich die Startliste gesehen hab
legs were trembling on the final set of squats
beim letzten Satz haben die Beine gezittert
max heart rate 181 during the sprints, average 139
watch read 205 on the treadmill, chest strap said 127
Uhr zeigte 210 auf dem Rad, Brustgurt sagte 131
""".strip().splitlines()


def test_what_is_over_or_denied_or_asked_about_or_of_other_things_is_no_complaint() -> None:
    assert [text for text in OVER_OR_ELSEWHERE if screen(text).hits != ()] == []


@pytest.mark.parametrize(
    ("text", "symptom"),
    [
        ("headache is gone but back again now", Symptom.HEADACHE),
        ("headache was gone for an hour, then worse", Symptom.HEADACHE),
        ("Kopfschmerzen waren weg, jetzt wieder da", Symptom.HEADACHE),
        ("Kopfschmerzen sind nicht weg", Symptom.HEADACHE),
        ("Knöchel sind immer noch nicht abgeschwollen", Symptom.SWELLING),
        ("chest pain is gone now", Symptom.CHEST_PAIN),
        ("Brustschmerzen sind weg", Symptom.CHEST_PAIN),
        ("not just a bit dizzy, the room spins", Symptom.DIZZY),
        ("nicht nur ein bisschen schwindelig", Symptom.DIZZY),
        ("mit 13 hatte ich Epilepsie und heute wieder einen Anfall", Symptom.SEIZURE),
        ("muss ich melden dass ich Kopfschmerzen habe?", Symptom.HEADACHE),
        ("does the bot tell you when I write that I have chest pain", Symptom.CHEST_PAIN),
        ("horror movie last night, blood in my stool this morning", Symptom.HEAVY_BLEEDING),
        ("Horrorfilm geschaut, danach Blut im Stuhl", Symptom.HEAVY_BLEEDING),
        ("my heart skipped a beat when I stood up", Symptom.PALPITATIONS),
        ("head is spinning with every step", Symptom.DIZZY),
        ("arms shaking since the last set, can't stop", Symptom.SHAKY),
        ("die Frau neben mir musste mich auffangen, bin umgekippt", Symptom.FAINTING),
        ("Kopf ans Waschbecken geknallt", Symptom.FALL),
        ("husband here, she doesn't know what day it is", Symptom.CONFUSION),
        ("Frau hier, er weiß nicht wo er ist", Symptom.CONFUSION),
        ("every mouthful comes right back up", Symptom.REPEATED_VOMITING),
        ("jeder Schluck kommt sofort wieder raus", Symptom.REPEATED_VOMITING),
        ("my nosebleed doesn't stop, second towel", Symptom.HEAVY_BLEEDING),
        ("Nasenbluten seit 45 min, drittes Handtuch", Symptom.HEAVY_BLEEDING),
        ("the lanes drifted apart and every car became two", Symptom.DOUBLE_VISION),
        ("aus jedem Schild wurden zwei", Symptom.DOUBLE_VISION),
        ("im Kopf geknallt wie ein Donnerschlag", Symptom.SEVERE_HEADACHE),
    ],
)
def test_what_sounds_like_it_and_is_meant_is_still_found(text: str, symptom: Symptom) -> None:
    assert symptom in screen(text).symptoms
