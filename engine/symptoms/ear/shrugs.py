"""What says nothing of a body: a shrug, words of every day, the day's business, and that all is well."""

# ruff: noqa: E501 - a pattern stays on one line
from __future__ import annotations

import re

from engine.symptoms.ear.reading import fold
from engine.written.late import Late

#: With one of these in it a sentence is listened to whatever its shape.
_TELLS = Late(
    r"herz|brust(?!tag|training|muskel|, bank| und bank)|\batem|\bluft|ohnm|ohnmä|bewuss|blut|kotz|brech|spei|schwindel|schwarz|taub|l[äa]hm|krampf|zuck|sterb|\btot\b|\btod|leben|suiz|schmerz|\bweh|schlecht|[üu]bel|fieber|angst|panik|"
    r"bl[ae][si]s?[sc]h?\b|bleich|krank|leiche|gespenst|geist|zombie|grau|gelb|doppelt|verschw|umgekipp|umgefall|zusammen|boden|notarzt|notfall|sanit|rettung|arzt|klinik|pinkel|\bpiss|durst|hunger|hass|wein|heul|leer|m[üu]de|schwach|zitter|puls|kopf|magen|bauch|"
    r"heart|chest|breath|faint|pass(?:ed)? out|black|blood|bleed|vomit|puk|threw|throw|dizz|numb|\b(?:to|will|i.ll|gonna|wanna|could|might|would|can|should|just|let me) die\b|dying|dead|death|life|pain|hurt|ach(?:e|ing)|\bsick|\bill\b|pale|ghost|grey|gray|yellow|blur|double vision|collaps|floor|ambulance|doctor|hospital|emergency|\bpee|thirst|starv|hate|cry|empty|weak|shak|trembl|pulse|head|stomach|help|hilfe|scared|suicid|kill|"
    r"trink nichts|kein wasser|no water|nicht mehr|can't|cannot|won't|geht nicht|komm nicht|find nicht",
    re.IGNORECASE,
)
#: The same of shapes that leave room for words of one's own.
_OF_A_BODY = Late(
    r"\b(?:face|gesicht|arms?|beine?|legs?|h[aä]nde?|hands?|fingers?|eyes?|augen?|mouth|mund|zunge|tongue|side|seite|spr[aei]ch\w*|speech|speak\w*|slur\w*|lall\w*|f[üu]hl\w*|feel\w*|felt|"
    r"\w*schwoll\w*|swoll\w*|swell\w*|dick\w*|wake|woke|w[ae]ck\w*|jerk\w*|star(?:e|ed|ing)|starr\w*|drunk|besoffen|betrunken|odd|weird|strange|komisch|seltsam|funny|wrong|off|schief|crooked|droop\w*|"
    r"was|were|war|hatte|kept|keep\w*|repeat\w*|wiederhol\w*|name\w*|forg[eo]t\w*|verg[ea]ss\w*|h[öo]r\w* auf|stop\w*|tired|eat\w*|ess\w*|food|sleep\w*|schlaf\w*|slept|drink\w*|trink\w*|thin|dünn|bones|knochen|alone|allein\w*|without me|ohne mich)\b",
    re.IGNORECASE,
)
_PERSON = r"(?:(?:mein|meine|der|die|das|my|the|our|unser|unsere) )?(?:mann|frau|freund|freundin|mama|papa|mutter|vater|bruder|schwester|kind|kinder|sohn|tochter|trainer|trainerin|coach|posingcoach|kollege|kollegin|nachbar|nachbarin|hubby|husband|wife|boyfriend|girlfriend|mum|mom|dad|brother|sister|friend|bestie|neighbour|neighbor|trainer|posing coach|judge|oma|opa|nan|grandma|tan guy|tan lady)"
_PLACE = r"(?:bahnhof|flughafen|hotel|zug|bus|auto|gym|studio|büro|halle|venue|backstage|check ?in|gleis|gate|station|airport|train|car|office|hotel|home|zuhause|daheim|supermarkt|rewe|edeka|aldi|lidl|friseur|nails|solarium|posing|posingkurs|parkhaus|parkplatz|werk|schicht|uni|schule|meeting)"
_TRAINING = frozenset(
    {
        "a", "abs", "am", "an", "and", "arme", "arms", "auf", "aufm", "back", "bahnen", "bank",
        "bankdrücken", "bauch", "beine", "beinpresse", "bench", "biceps", "bike", "bisschen",
        "bissl", "bizeps", "brust", "calves", "cardio", "crosstrainer", "danach", "dann", "das",
        "dehnen", "der", "did", "die", "done", "easy", "ein", "eine", "einen", "einheit",
        "ergometer", "etwas", "fahrrad", "fliegende", "flies", "flys", "for", "für", "gemacht",
        "geschwommen", "gestern", "halbe", "half", "heute", "hiit", "hour", "hours", "im", "in",
        "just", "klimmzüge", "km", "kniebeugen", "kurz", "laps", "laterals", "laufband", "legs",
        "leichte", "leichtes", "lengths", "light", "locker", "lockeres", "mal", "min",
        "minuten", "minutes", "mit", "mobility", "morgen", "noch", "nur", "only", "plank",
        "plus", "pose", "posen", "posing", "pullups", "pump", "rad", "reps", "rower", "rows",
        "rudern", "runde", "runden", "rücken", "satz", "schritte", "schulter", "schultern",
        "schwamm", "schwimmen", "seitheben", "session", "sets", "short", "shoulders",
        "spazieren", "spaziergang", "squats", "stairmaster", "stepper", "steps", "stretch",
        "stretching", "stunde", "stunden", "swim", "sätze", "the", "then", "today", "tomorrow",
        "trained", "trainiert", "training", "treadmill", "triceps", "trizeps", "und", "viertel",
        "waden", "walk", "wdh", "wiederholungen", "with", "workout", "x", "yesterday", "yoga",
    }
)  # fmt: skip
_WEATHER = frozenset(
    {
        "a", "again", "am", "arsch", "arschkalt", "bisschen", "bissl", "bit", "blanket",
        "broken", "bäh", "cold", "das", "decke", "degrees", "der", "desk", "draußen", "echt",
        "eiskalt", "es", "flat", "foggy", "freezing", "früh", "ganz", "grad", "gym", "heating",
        "heizung", "heiß", "here", "heut", "heute", "hier", "hock", "hot", "im", "immer", "in",
        "is", "ist", "it's", "its", "jacke", "jumper", "kalt", "kaputt", "lovely", "minus",
        "mist", "mit", "morgens", "morning", "mütze", "nass", "nebel", "neblig", "noch",
        "outside", "plus", "rain", "raining", "really", "regen", "regnet", "sau", "saukalt",
        "scheiße", "schnee", "schneit", "schreibtisch", "schön", "sehr", "shit", "sitz",
        "sitze", "snow", "snowing", "so", "sonne", "sonnig", "spinnt", "still", "studio",
        "sturm", "stürmisch", "sun", "sunny", "the", "today", "traumhaft", "voll", "war",
        "warm", "was", "weather", "wet", "wetter", "wieder", "wind", "windig", "windy", "with",
        "wohnung", "ätzend",
    }
)  # fmt: skip
#: A sentence of one kind of words alone, whatever of the body is trained.
_KINDS = (_TRAINING, _WEATHER)
_FRAMES = tuple(
    Late(pattern, re.IGNORECASE)
    for pattern in (
        r"(?=.*\d)(?:ok |also |hi |hey |coach,? )?(?:(?:nur |nochmal |noch mal )?(?:zur sicherheit|zum verständnis)|just (?:checking|to (?:be sure|check|confirm|double ?check))|quick (?:check|question)|to confirm|double ?check|kurze (?:frage|rückfrage))\b[^.]{0,80}\b(?:l|liter|litres?|liters?|g|gramm|grams?|kg|uhr|o'clock|am|pm|steps|schritte|min|minuten|minutes)\b.{0,30}",
        rf"{_PERSON} (?:sagt|meint|findet|says|thinks|reckons),? (?:dass )?(?:ich|i) (?:look|seh|sehe|schau|schaue)\b[^,.]{{0,40}}",
        rf"(?:was heißt|what does|what's|was bedeutet|was ist) ['\"„“]?[\w-]+['\"“”]?(?: (?:eigentlich|genau|mean|even|actually|nochmal))*\??(?:,? {_PERSON} (?:sagt|says).{{0,50}})?",
        rf"(?:(?:ich |i'?m |i am |we'?re |wir )?(?:bin|sind)? ?(?:schon |gleich |jetzt |grad |gerade |already |now |nearly |almost |just )*(?:am|im|in der|in|beim|auf dem|aufm|at the|at|on the|in the|on my way to(?: the)?|unterwegs (?:zum|zur|ins)|auf dem weg (?:zum|zur|ins)) {_PLACE}(?:,? (?:gleis|gate|platform|bis|until|um|at|wagen|reihe|seat|platz) ?\w{{0,12}}){{0,2}})",
        r"(?:good |guten )?(?:morning|morgen|moin|hi|hey|servus)[!,. ]*(?:(?:i |ich )?(?:just|only|grad|gerade|eben|erst) (?:got up|woke up|up|awake|aufgestanden|aufgewacht|raus)|bin wach|i'?m up)[!. ]*",
        r"(?:the |die |das |der )?(?:sauna|pool|gym|studio|dampfbad|steam room|solarium|fitnessraum) (?:was|is|war|ist|hat|had)(?: \w+)? (?:closed|shut|zu|geschlossen|kaputt|broken|busy|packed|voll)(?:,? (?:so|also|drum|deshalb) (?:i |ich )?(?:just |only |nur )?(?:had a shower|a shower|geduscht|eine dusche))?",
        r"(?:.{0,30}, )?(?:wo|where) (?:seh|sehe|find|finde|steht|stehen|do i (?:see|find)|can i (?:see|find)|is|are)(?: ich)? (?:noch ?mal )?(?:meine?n?|die|den|das|my|the) (?:vorgaben|werte|plan|ziele|zahlen|liste|menü|fotos|targets?|plan|numbers|list|menu|photos|chart|diagramm)\b.{0,30}",
        r"(?:am|on|this|dieses|nächstes|next) ?(?:the )?(?:wochenende|weekend|samstag|sonntag|saturday|sunday|montag|monday|freitag|friday) (?:ist|is|haben wir|we have|hab ich|i have) (?:(?:ne|eine|die|das|a|the|my|meine?) )?(?:\w+ )?(?:taufe|hochzeit|geburtstag|party|feier|christening|wedding|birthday|bbq|grillen|familienfeier|konfirmation|kommunion|abschlussfeier|graduation)",
        r"(?:bitte |pls |please |hey bot )?(?:(?:can|could|kannst|könntest|könnte|würdest) (?:you|u|someone|somebody|du|ihr|jemand)(?: please| pls| bitte)? )?(?:(?:sag|sage|richt|richte|gib|schreib|frag|frage|leite|lass)[^,.]{0,40}|(?:(?:der|dem|den) \w+|ihr|ihm) (?:bitte )?(?:weitergeben|ausrichten|sagen|weiterleiten)|(?:tell|ask|let|send|forward|pass)[^,.]{0,30}\b(?:coach|him|her|trainer)\b)[ ,:]*(?:dass|das|ob|und|that|know|a msg|a message|if|to|for)?\b.{0,80}",
        r".{0,40}\b(?:sweat\w*|schweiß|schwitz\w*|durchgeschwitzt|drenched)\b[^.]{0,30} (?:on the|after the|from the|during|after|beim|nach dem|auf dem|aufm) (?:bike|treadmill|stairmaster|stepper|rower|cardio|session|workout|rad|fahrrad|laufband|training|crosstrainer)",
        r"(?:(?:ich |i |i've |i have )?(?:hab|habe|nehm\w*|pack\w*|got|have|bring\w*|brought)) .{0,50} (?:dabei|mitgenommen|eingepackt|with me|in my bag|packed)",
        r".{0,40}\b(?:macros|makros|rows|zeilen|einträge|entries)\b.{0,30}\b(?:double|doppelt|zweimal|twice|2 rows|missing|fehlen)\b.{0,30}",
    )
)
_LONGEST = 140


def is_of_the_day(sentence: str) -> bool:
    """Whether the whole sentence has the shape of the day's business, and nothing of a complaint in it.

    The second ear goes by letters and words, and of a few everyday ones it makes anything.
    """
    plain = " ".join(sentence.replace("\u2019", "'").split()).strip(" .!?…🥹😅😂🙈")
    if len(plain) > _LONGEST or _TELLS.search(plain):
        return False
    said = [word for word in re.split(r"[ ,.+!?]+", plain.lower()) if word and not word.isdecimal()]
    if any(all(word in kind for word in said) for kind in _KINDS):
        return True
    return _OF_A_BODY.search(plain) is None and any(frame.fullmatch(plain) for frame in _FRAMES)


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


_AM = (
    r"i'm|im|i am|i feel|i'm feeling|feel|feeling|am feeling|all|all is|all's|everything|everything's|everything is|"
    r"it's all|its all|mir geht'?s|mir geht es|geht(?:'s| es)? mir|geht|alles|alles ist|ist alles|bin|ich bin|"
    r"fuhl\w* mich|ich fuhl\w* mich"
)
_HOW = r"really|so|very|totally|all|completely|much|absolutely|perfectly|quite|schon|wieder|ganz|jetzt|auch|viel|echt|sehr|total"
_WELL = r"fine|good|great|ok|okay|well|alright|better|perfect|gut|super|bestens|in ordnung|besser|prima|fit|klar|paletti"
_IS_WELL = Late(
    rf"(?:(?:no|nope|nah|nein|ne|oh|ah|ja|yes|yeah|thanks|danke)[,. ]+)*(?:{_AM}) (?:(?:{_HOW}) )*(?:{_WELL})\b"
    r"(?: (?:now|again|today|here|thanks|thank you|coach|jetzt|wieder|heute|danke))*[ ]?(?:[,.!;:)-].*)?"
)
#: What sets something apart from it.
_SAVE = Late(
    r"\b(?:but|except|apart|though|only|until|if|when|not|aber|ausser|bis auf|nur|nicht|wenn|obwohl)\b"
)


def calls_themself_well(text: str) -> bool:
    """Whether a text begins with that, asks nothing and sets nothing apart from it; there may be more."""
    plain = plainly(text)
    return "?" not in text and bool(_IS_WELL.fullmatch(plain)) and not _SAVE.search(plain)


def plainly(text: str) -> str:
    """The text in small letters, without accents and with single spaces."""
    return " ".join(fold(text).replace("\u2019", "'").split())
