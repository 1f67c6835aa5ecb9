"""Sentences whose shape says that they are of the day's business, and of nobody's body.

The second ear goes by letters and words, and of a few everyday ones it makes anything. A sentence that
has one of these shapes, and no word that a complaint is told with, is not asked about.
"""

# ruff: noqa: E501 - a pattern stays on one line
from __future__ import annotations

import re

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
    """Whether the whole sentence has such a shape, and nothing of a complaint in it."""
    plain = " ".join(sentence.replace("\u2019", "'").split()).strip(" .!?…🥹😅😂🙈")
    if len(plain) > _LONGEST or _TELLS.search(plain):
        return False
    said = [word for word in re.split(r"[ ,.+!?]+", plain.lower()) if word and not word.isdecimal()]
    if any(all(word in kind for word in said) for kind in _KINDS):
        return True
    return _OF_A_BODY.search(plain) is None and any(frame.fullmatch(plain) for frame in _FRAMES)
