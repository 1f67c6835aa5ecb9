"""What coaches type, invented, by where it has to land; in both languages, as people write it on a phone."""

# ruff: noqa: E501 - a message stays on one line

from __future__ import annotations

#: To the one athlete there is, or whose card is open: shown first, and sent by a tap.
TO_THE_ATHLETE = {
    "en": (
        "great session today", "keep going", "you look fantastic this morning", "eat the rice dry today",
        "call me when you are up", "how did you sleep?", "did you finish the water", "send me a back pose please",
        "why is the weight up", "no cardio today, rest", "proud of you", "stay calm, the scale means nothing",
        "don't forget the tan appointment", "what did you have for dinner", "you can have the coffee",
        "photos at seven please", "see you at the venue", "sorry, was in a meeting", "good morning!", "ok", "👍", "thanks",
        "we talk tonight", "posing at five, I'm there", "lovely lines on the quads", "drink the rest before nine",
        "swap the oats for cream of rice", "yes", "no", "no sauna please", "who drives you on saturday?", "take the day slow",
        "that look is what we want", "I'd leave the pump for later", "check-in was late, all ok?", "bring your own scale",
        "500 is fine", "70 g more rice at noon", "3.5 L is enough", "meal four can wait till eight",
    ),
    "de": (
        "super Einheit heute", "weiter so", "du siehst heute früh klasse aus", "iss den Reis heute trocken gewogen",
        "ruf mich an wenn du wach bist", "wie hast du geschlafen?", "hast du das Wasser geschafft", "schick mir bitte eine Rückenpose",
        "warum ist das Gewicht oben", "heute kein Cardio, ausruhen", "bin stolz auf dich", "ruhig bleiben, die Waage sagt nichts",
        "denk an den Farbtermin", "was gab es zum Abendessen", "den Kaffee darfst du", "Bilder bitte um sieben",
        "wir sehen uns in der Halle", "sorry, war im Termin", "guten Morgen!", "ok", "👍", "danke", "wir reden heute Abend",
        "Posing um fünf, ich bin da", "schöne Linien am Quad", "trink den Rest vor neun", "tausch die Haferflocken gegen Reisbrei",
        "ja", "nein", "bitte keine Sauna", "wer fährt dich am Samstag?", "mach heute langsam", "genau den Look wollen wir",
        "den Pump würde ich später machen", "Check-in war spät, alles ok?", "bring deine eigene Waage mit",
        "500 passt", "mittags 70 g Reis mehr", "3,5 L reichen", "Mahlzeit vier kann bis acht warten",
    ),
}  # fmt: skip
#: To the athlete whom they name, without the name at their head.
NAMED = {
    "en": (
        ("Mira, eat the banana now", "eat the banana now"), ("@Mira well done", "well done"), ("tell Mira to rest", "rest"),
        ("mira: photos please", "photos please"), ("please ask Mira how she slept", "how she slept"),
        ("for Mira: no cardio", "no cardio"),
    ),
    "de": (
        ("Mira, iss jetzt die Banane", "iss jetzt die Banane"), ("@Mira gut gemacht", "gut gemacht"),
        ("sag Mira sie soll ausruhen", "sie soll ausruhen"), ("mira: Bilder bitte", "Bilder bitte"),
        ("bitte frag Mira wie sie geschlafen hat", "wie sie geschlafen hat"), ("für Mira: kein Cardio", "kein Cardio"),
    ),
}  # fmt: skip
#: Their names, by which the card opens.
CARD = ("Mira", "mira", "Mira?", " MIRA ")
#: No athlete is sent these.
REFUSED = {
    "en": ("take one furosemide tonight", "Mira, half a clen before bed", "use dulcolax"),
    "de": ("nimm heute Abend ein Furosemid", "Mira, ein halbes Clenbuterol vor dem Bett", "nimm Dulcolax"),
}  # fmt: skip
