"""What says nothing: a shrug, or a word or three of every day."""

# ruff: noqa: E501 - a pattern stays on one line
from __future__ import annotations

import re

from engine.symptoms.ear.frames import is_of_the_day
from engine.written.late import Late

#: No letters of it are listened to: by those alone "I don't know" sounds like confusion.
SHRUGS = Late(
    r"(?:(?:i|im|i'm|i am|well|hm+|um+|uh|oh|sorry|honestly|ich|na ja|naja|puh|ah+|äh+m?|ja|ehrlich gesagt) ?,? )*"
    r"(?:(?:really |still )?not (?:so |quite |really |too |that )?sure(?: yet| about (?:that|it))?|"
    r"(?:have |got |absolutely )*no (?:idea|clue)|(?:really |just )?(?:don'?t|do not) (?:really )?know(?: yet| that| it)?|"
    r"dunno|(?:can'?t|cannot|couldn'?t) (?:say|tell)(?: yet)?|hard to (?:say|tell)|who knows|no clue|"
    r"maybe|perhaps|one (?:moment|sec(?:ond)?)|(?:let me|i'll) (?:check|see|think)|"
    r"(?:bin (?:mir )?)?(?:noch |nicht ganz |nicht so |ganz )*nicht (?:ganz |so )?sicher|(?:hab |habe |echt )*kein(?:e|en)? (?:ahnung|plan|schimmer|idee)|"
    r"weiß (?:ich )?(?:ehrlich |grad |gerade |noch |es )*nicht(?: so genau| genau| mehr)?|weiss (?:ich )?nicht|"
    r"(?:ist )?schwer zu sagen|(?:kann|kanns|kann's) (?:ich )?nicht sagen|wer weiß|vielleicht|mal (?:sehen|schauen)|"
    r"(?:so ,? ?)?(?:ich )?(?:hau|leg|lege) mich (?:jetzt |dann )?(?:hin|aufs ohr|schlafen)(?:,? (?:gute nacht|nacht|schlaf gut|bis morgen))?|"
    r"ich schau(?:e)? (?:mal )?nach|moment|sekunde)[ .!?…]*",
    re.IGNORECASE,
)

#: What a song says is not what who hears it has; said with more beside it, it is listened to.
_SUNG = Late(
    r"(?:the |this |that )?(?:song|lyrics?|chorus|refrain) (?:says?|goes?|sings?) [^,;.]{1,60}[ .!?…]*",
    re.IGNORECASE,
)

#: Whole sentences of every day in a word or three, apostrophes left out: of so few letters the ear
#: makes anything ("I think so" would be danger).
_EVERYDAY_SAID = """
my period started, my period started today, my period came, period started, got my period,
on my period, hab meine tage, habe meine tage, meine tage sind da, hab meine periode,
not sure, no idea, dont know, i dont know, dunno, i wont, i cant, i dont, i didnt, hard to say,
not really, nicht wirklich, eher nicht,
cant say, maybe, whatever, same as always, the usual, who knows, not sure yet, ask me later,
let me check, no clue, i guess so, pass, forgot, forgot to count, not sure how much i drank,
not sure about the sodium, no idea about fibre, i never counted salt, could be 3,
could be 4 litres, roughly the same, hmm, wait a sec, one moment, brb, typo sorry, wrong chat,
cant today, im here, why me, i think so, i dont think so, cant find it, its gone, it is back,
im off, im up, just woke up, in bed, cant come, cant make it, cannot load the picture,
almost there, im scared of heights, im hot, so tired, cant eat more, stop, wait, on my way,
too late, too much, too little, not me, not today, done, finished, nope, yes please, no thanks,
got it, understood, what, how much, how many, when, where, who, really, seriously, no way,
oh no, oops, damn, crap, i didnt mean that, i was wrong, my mistake, lost count,
cant see the button, i cant open the file, nothing happens, it doesnt work, not working,
it stopped, im back, im in, woke up late, overslept, still in bed, on the floor stretching,
on the couch, at the gym, at work, in the car, in the shower, on the loo, need a minute,
give me a minute, hold on, nearly done, leaving now, goodbye, bye, see you, good night,
take care, so nervous, im bored, im cold, its freezing, dead tired from work, im full,
cant finish the rice, no appetite for fish, cant wait, cant complain, cant believe it,
i cant hear you in the call, i cant see the plan, where are you, who is this, what now,
im ready, im early, im late, im stuck in traffic, im on it, one more hour, two more days,
half done, next week, last one, ok boss, yes coach, sure thing, nicht sicher, keine ahnung,
weiß nicht, weiß ich nicht, kein plan, schwer zu sagen, kann ich nicht sagen, vielleicht, egal,
wie immer, das übliche, wer weiß, noch nicht sicher, frag mich später, ich schau nach,
ich glaub schon, vergessen, vergessen zu zählen, nicht sicher wie viel ich getrunken hab,
bei natrium keine ahnung, ballaststoffe weiß ich nicht, salz hab ich nie gezählt,
können 3 oder 4 liter gewesen sein, so ungefähr gleich, moment, sekunde, gleich, vertippt sorry,
falscher chat, mal sehen, passt schon, wird schon, zu viel, im ernst, glaub nicht, glaub schon,
hab mich geirrt, grad aufgewacht, lieg noch, unter der dusche, auf dem klo, kann nicht kommen,
bin dann mal weg, mir ist heiß, so müde, todmüde von der arbeit, schaff den reis nicht, stopp,
warte, bin da, unterwegs, zu spät, zu wenig, ich nicht, heute nicht, heute geht nicht, fertig,
nö, ja bitte, nein danke, verstanden, was, warum ich, wie viel, wann, wo, wer, echt, niemals,
oh nein, ups, mist, verdammt, versteh ich nicht, kapier ich nicht, so war das nicht gemeint,
mein fehler, habs vergessen, hab mich verzählt, nicht mitgezählt, find ich nicht,
seh den knopf nicht, kann die datei nicht öffnen, passiert nix, nix geht, geht nicht,
geht wieder, ist weg, hat aufgehört, bin wieder da, bin dabei, bin wach, verschlafen,
noch im bett, auf dem boden am dehnen, auf dem sofa, im gym, auf der arbeit, im auto,
schaff ich nicht, das bild lädt nicht, brauch mehr zeit, gib mir ne minute, fast da,
gleich fertig, tschüss, ciao, bis bald, gute nacht, schlaf gut, bin nervös, so nervös,
bisschen bammel vor samstag, mir ist langweilig, hab hunger, hab durst, mir ist kalt,
ist das kalt, bin müde, bin voll, kein appetit auf fisch, kanns kaum erwarten,
kann nicht klagen, nicht zu fassen, ich hör dich nicht im call, ich seh den plan nicht,
wo bist du, wer ist das, was jetzt, bin bereit, bin früh dran, bin spät dran, steh im stau,
bin dran, noch eine stunde, noch zwei tage, halb fertig, nächste woche, letzte, ok chef,
ja coach, klaro, jo, passt
"""
_EVERYDAY = frozenset(" ".join(_EVERYDAY_SAID.split()).split(", "))
_MARKS = Late(r"[^\w ]+")
#: "I think" alone sounds like the mind; beside the usual or a time of day it says nothing.
_HEDGE = Late(
    r"^(?:(?:i think|i guess|probably|ich glaube?|ich denke?|glaube? ich|wahrscheinlich) )+"
    r"|(?: (?:i think|i guess|probably|glaube? ich|denke? ich|oder so|or so))+$"
)
_A_TIME = Late(
    r"(?:(?:its|it is|im on|at|um|so|about|around|gegen|es ist|ist|halb|half|past|quarter|viertel|nach|vor|to) )*"
    r"(?:\d{1,2}(?: ?\d\d)?|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|eins|zwei|drei|vier|"
    r"fünf|sechs|sieben|acht|neun|zehn|elf|zwölf)(?: ?(?:am|pm|uhr|oclock))?(?: \d\d)?"
)


def says_nothing(sentence: str) -> bool:
    """Whether the whole sentence is one of these."""
    plain = " ".join(_MARKS.compiled.sub("", sentence.lower()).split())
    hedged = _HEDGE.compiled.sub("", plain)
    if hedged != plain and (hedged in _EVERYDAY or _A_TIME.fullmatch(hedged)):
        return True
    if plain in _EVERYDAY or any(one.fullmatch(sentence) for one in (SHRUGS, _SUNG)):
        return True
    return is_of_the_day(sentence)
