"""Warnings said in ways that the other lists do not hold: every way of saying one is to be heard.

The rows are invented for this file, in the manner in which tired people write on a phone.
"""

from __future__ import annotations

from engine.symptoms import Symptom, screen

#: Said so plainly that nobody is asked first.
PLAIN = """
chest-pain | tight chest since the stairs
chest-pain | jaw and left arm both aching, shoulder hurts too
chest-pain | pain from my chest up into the jaw
chest-pain | hab stiche brust seit heute früh
chest-pain | linker arm tut weh und kribbelt
chest-pain | wie ein gürtel um die brust
chest-pain | fühlt sich an wie ein amboss auf der brust
seizure | uncontrollable shaking for a minute or so
seizure | was fitting on the kitchen floor, says my sister
seizure | woke up with my tongue bitten
seizure | bit my tongue in the night and don't remember how
seizure | couldn't answer them but heard every word
seizure | arms were jerking all by themselves
seizure | foam at my mouth she said
seizure | i shook for ages and was not responding for some minutes
seizure | shaking all over, don't remember any of it
seizure | hab mir nachts die zunge zerbissen
seizure | zunge gebissen und am boden aufgewacht
seizure | hab mir heut nacht in die hose gemacht und weiß von nichts
seizure | eingenässt in der nacht, mit 31
seizure | schaum vor dem mund gehabt sagt er
seizure | zwei minuten nicht ansprechbar und gezuckt
fainting | came round with strangers bending over me
fainting | then i was lying on the bathroom tiles
fainting | can't remember going down
fainting | the floor came up to meet me
fainting | next thing i'm looking up at the ceiling
fainting | ich sackte einfach zusammen
fainting | bin erst im flur wieder zu mir gekommen
fainting | sie haben mich aufgefangen
fainting | weiß nichts vom sturz
fainting | der boden kam mir entgegen
fainting | wachte auf den fliesen auf
fainting | mir fehlen ein paar sekunden, lag auf dem boden
fainting | i bin heit zsammbrochn
fainting | mir sind die lichter ausgegangen
fainting | auf einmal lag ich im flur
fainting | zweimal ohnmächtig seit gestern
breathlessness | like breathing through a straw
breathlessness | air just won't go in
breathlessness | mir bleibt die luft weg
breathlessness | muss blut husten
breathlessness | atmen wie durch einen strohhalm
breathlessness | keinen ganzen satz ohne luft holen
breathlessness | i kriag ka luft
breathlessness | hob ka luft mehr
palpitations | i feel my heartbeat in my throat
palpitations | a bird flapping inside my chest
palpitations | my heart keeps stumbling and tripping
palpitations | heart galloping in bed
palpitations | like an engine behind my ribs
palpitations | da rast mein herz seit einer stunde
palpitations | wie ein vogel in der brust
palpitations | es hämmert gegen die rippen
palpitations | die pumpe stolpert
palpitations | im liegen hab ich puls 148
limb-weakness | can't even stand up from the toilet
limb-weakness | have to hold on to the walls to walk
limb-weakness | my legs don't listen anymore
limb-weakness | knees no longer hold me
limb-weakness | mir versagen die beine
limb-weakness | meine hände gehorchen nicht, wollen die finger nicht
limb-weakness | kann keine faust machen, faust geht nicht zu machen
limb-weakness | muss mich an der wand abstützen zum gehen
limb-weakness | komm nur noch an der wand entlang ins bad
limb-weakness | musste auf allen vieren kriechen
limb-weakness | ich zieh das bein nach, schleife den fuß
limb-weakness | das bein gehorcht nicht mehr
repeated-vomiting | was sick three times since midnight
repeated-vomiting | third time vomiting today
repeated-vomiting | i keep getting sick
severe-headache | head splitting since i woke
severe-headache | can barely see straight with this headache
severe-headache | pain in my head i can't bear
severe-headache | like a sledgehammer in my skull
severe-headache | mid sentence, bang, headache
severe-headache | this headache has me on my knees
severe-headache | mir sprengt es den schädel, kopf ist am zerspringen
severe-headache | kopfschmerzen und ein steifer nacken
severe-headache | halte die kopfschmerzen nicht aus
severe-headache | mir platzt gleich der kopf
severe-headache | wie eine axt im hinterkopf
severe-headache | das licht ist unerträglich
severe-headache | der kopf war schlagartig unerträglich
severe-headache | schraubstock um den kopf
severe-headache | es sticht hinter den augen wie verrückt
severe-headache | mein hirn ist zu groß für den schädel, es explodiert
severe-headache | mitten im satz kopfschmerzen, zack
self-harm | i've been hurting myself on purpose
self-harm | harming myself again
self-harm | nothing left to live for
self-harm | i've started cutting again
self-harm | the pills are lined up on my desk
self-harm | after the show i'll be gone for good
self-harm | can't stop thinking about dying
self-harm | i want to hang myself
self-harm | hope i don't wake up tomorrow
self-harm | everyone is better off without me
self-harm | tired of living
self-harm | thought of stepping in front of a train
self-harm | wrote a goodbye letter
self-harm | i want to sleep forever
self-harm | go to sleep and never wake, that would be nice
self-harm | wouldn't care if i died
self-harm | nobody would miss me
self-harm | it's the only way out
self-harm | googled how many pills it takes
self-harm | i'd rather drown myself
self-harm | am liebsten für immer schlafen
self-harm | ich könnte mich erhängen
self-harm | einfach gegen einen baum fahren
self-harm | ich mache schluss mit allem
self-harm | mir egal ob ich sterbe
self-harm | hab mich wieder geritzt
self-harm | hab mich absichtlich verletzt, mit absicht geschnitten
self-harm | hab die ganze packung schlaftabletten genommen
self-harm | hab gegoogelt wie viele tabletten reichen
confusion | i keep asking the same question every few minutes
confusion | my words come out jumbled
confusion | the text on the screen makes no sense, letters don't make sense
confusion | war wohl nicht ansprechbar
confusion | ich frag alle zwei minuten dasselbe sagt sie
confusion | die wörter kommen falsch raus
confusion | undeutlich gesprochen den ganzen morgen
stroke-signs | only half my mouth smiles
stroke-signs | tried to say hello and only mush came out
stroke-signs | coffee runs out of the corner of my mouth
stroke-signs | drooling on the left side
stroke-signs | when i lift both arms the left one sinks
stroke-signs | drooping eyelid since breakfast
stroke-signs | right arm suddenly went numb
stroke-signs | can't lift my left arm
stroke-signs | couldn't speak for a moment
stroke-signs | my tongue feels thick and heavy
stroke-signs | numb all down my left side
stroke-signs | like a line down the middle, left of it i feel nothing
stroke-signs | nur das halbe gesicht bewegt sich
stroke-signs | halbe seite hängt
stroke-signs | mein lächeln ist schief
stroke-signs | die sprache klingt verwaschen
stroke-signs | es kam nur brei raus
stroke-signs | wollte etwas sagen und es kam nichts raus, kein wort
stroke-signs | der kaffee läuft mir aus dem mund
stroke-signs | sabber auf einer seite
stroke-signs | das halbe gesicht ist taub
stroke-signs | bringe kein wort raus
stroke-signs | taub auf der ganzen linken seite
stroke-signs | rechts spür ich gar nichts
stroke-signs | ich lalle wie besoffen
stroke-signs | auf dem linken auge nichts mehr gesehen
heavy-bleeding | nose has been bleeding for two hours
heavy-bleeding | the sink is full of blood
heavy-bleeding | blood down my legs
heavy-bleeding | passing big clots
heavy-bleeding | blood clots again
heavy-bleeding | my poo is black as tar
heavy-bleeding | black stools since yesterday
heavy-bleeding | lost so much blood
heavy-bleeding | blood everywhere
heavy-bleeding | bled through three towels
heavy-bleeding | a pad every hour
heavy-bleeding | blute seit zwei stunden
heavy-bleeding | das waschbecken ist voller blut
heavy-bleeding | blut in der kloschüssel
heavy-bleeding | starke blutung seit heute nacht
heavy-bleeding | überall blut
heavy-bleeding | so viel blut
heavy-bleeding | ich verblute hier
heavy-bleeding | alles durchgeblutet
heavy-bleeding | brauch jede stunde eine binde, binden alle halbe stunde voll
heavy-bleeding | blutung läuft durch alles durch
heavy-bleeding | hab was rotes gekotzt, blut gespuckt beim brechen
heavy-bleeding | blut beim erbrechen
heavy-bleeding | die kloschüssel ist ganz rot
double-vision | there are two kettles when i look
double-vision | the letters drift apart
double-vision | coach has two heads today
double-vision | everything has a ghost image
double-vision | two pictures side by side
double-vision | ein auge zu, dann seh ich nur noch eins
"""
#: These may be meant otherwise, so they are asked about.
TOLD = """
seizure | wet the bed, never happened before
seizure | my eyes rolled back apparently
seizure | die arme haben gezuckt ohne dass ich was machen konnte
fainting | klapp jedes mal zusammen wenn ich aufstehe
breathlessness | i don't seem to breathe in
breathlessness | feels like drowning on dry land
breathlessness | breathing as if under a wet towel
breathlessness | wenn mir die luft wegbleibt hab ich angst
breathlessness | muss auf der treppe stehen bleiben wegen der luft
breathlessness | als ob die lunge voll wasser wär
palpitations | die matratze bebt vom puls
limb-weakness | konnte die gabel nicht halten
self-harm | took the whole packet of painkillers
self-harm | will vom dach springen
confusion | sie fragt immer dasselbe
stroke-signs | konnte auf einmal nicht mehr sprechen
stroke-signs | wusste was es ist und konnte es nicht sagen
double-vision | if i close one eye i can read, else not
double-vision | die zeilen laufen auseinander
"""


def test_a_warning_said_plainly_is_one_at_once_however_it_is_said() -> None:
    told = [row.split(" | ") for row in PLAIN.strip().splitlines()]
    sure = [[hit.symptom for hit in screen(text).hits if hit.sure] for _, text in told]
    assert [
        row for row, found in zip(told, sure, strict=True) if Symptom(row[0]) not in found
    ] == []


def test_a_warning_that_may_be_meant_otherwise_is_heard_too() -> None:
    told = [row.split(" | ") for row in TOLD.strip().splitlines()]
    assert [row for row in told if Symptom(row[0]) not in screen(row[1]).symptoms] == []


def test_a_warning_told_sideways_is_at_least_asked_about() -> None:
    told = (
        "they say i was thrashing about on the mat",
        "there's a black gap and then the floor",
        "some seconds are gone and i was on my back",
    )
    heard = [screen(text) for text in told]
    assert all(one.hits or one.suspicions for one in heard)
