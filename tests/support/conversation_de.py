"""What athletes type, invented, by where it has to land. German, as people write it on a phone."""

# ruff: noqa: E501 - a message stays on one line

from __future__ import annotations

#: Said of one's own accord, about nothing that the bot knows: to the coach, in these words.
CHATTER = (
    "hab heute meine Tage bekommen", "das Studio war brechend voll", "meine Mutter fährt mich hin",
    "hab meine Posing-Schuhe gefunden", "die Bräunung ist gebucht", "Bikini ist vom Ändern zurück",
    "im Hotel gibt es keinen Wasserkocher", "mein Flug geht jetzt erst abends", "bin so aufgeregt",
    "freu mich total", "Posing lief richtig gut", "meine Tasche ist kaputt",
    "hab eine neue Waage gekauft", "mein Freund hat Pfannkuchen gemacht und ich hab nein gesagt",
    "auf der Arbeit ist Chaos", "am Donnerstag schreibe ich eine Klausur", "hab den Reis daheim vergessen",
    "meine Haferflocken sind ausverkauft", "Shaker vergessen", "bin bis mittags im Zug",
    "von zwei bis fünf kein Netz", "der Hund hat mein Hähnchen gefressen",
    "hab Cardio auf den Abend verlegt", "gestern Beine statt Schultern trainiert",
    "Studio macht heute früher zu, trainiere um vier", "gestern kein Posing gemacht",
    "40 Minuten geposed", "Friseur ist um drei", "Nägel sind fertig", "Startnummer gibts Freitagabend",
    "Unterkunft ist gebucht", "der Wettkampf ist in einer anderen Halle",
    "die Reihenfolge der Klassen wurde geändert", "zwei aus meiner Klasse haben abgesagt",
    "bin die Einzige in meiner Klasse haha", "vielen Dank", "danke Coach", "ok", "alles klar", "mach ich",
    "guten Morgen!", "gute Nacht", "bis Samstag", "👍", "🙏🙏", "haha", "ok super", "perfekt",
    "das ging schnell", "kein Stress", "egal", "ich mag diesen Bot", "der Bot nervt", "bist du ein Roboter",
    "ich verstehe das nicht", "es ist so kalt hier", "Regentag, war nur drin", "war zweimal mit dem Hund",
    "die Kinder sind bei Oma", "ich will das so sehr gewinnen", "ich seh heute so gut aus",
    "Bauch kommt richtig raus", "fühle mich gut vorbereitet", "fühle mich super", "geschlafen wie ein Stein",
    "war vor dem Wecker wach", "beste Nacht seit Wochen", "Beine sahen im Spiegel super aus",
    "am Quad sieht man neue Linien", "das Licht im Bad ist schlecht", "meine Haut strahlt",
    "im Solarium war die dunkle Farbe aus", "bin auf koffeinfrei umgestiegen", "Kaffee war schwarz",
    "letzte Mahlzeit um neun gegessen", "Mahlzeit zwei war eine Stunde später", "musste im Auto essen",
    "der Reis war nicht durch", "hab den Reis diesmal roh gewogen", "andere Reiswaffeln genommen",
    "bin zwei Tage bei meinen Eltern", "hier ist es eine Stunde später", "meine Schwester startet auch",
    "die Jury war bei uns im Studio", "meine Posing-Trainerin will die Frontpose ändern",
    "hab die Kürmusik geändert", "die Hose ist da", "sie ist jetzt zu groß", "freu mich auf Pizza",
    "träume von Burgern", "nur noch drei Tage", "gleich geschafft", "sag Ravi liebe Grüße",
    "ich hab noch was vergessen zu sagen", "die Tante vom Stand hat mir den Plan erklärt",
    "meine Chefin gibt mir Freitag frei", "Parkplatz am Eingang B",
)  # fmt: skip

#: Questions that nobody but the coach answers.
QUESTIONS = (
    "können wir später reden?", "hast du Zeit zum Telefonieren", "wann telefonieren wir?",
    "soll ich heute Cardio machen?", "trainiere ich morgen noch Beine?", "reicht Posing für heute",
    "wie lange soll ich posen?", "was sagst du zu meinem Rücken?", "hast du meine Bilder gesehen",
    "bin ich im Plan?", "seh ich bereit aus?", "welche Farbe soll ich buchen", "wie viele Schichten brauche ich?",
    "was muss ich einpacken", "brauche ich eine eigene Nadel für die Nummer?", "darf ich mich massieren lassen",
    "ist es ok, am Tag davor zu fliegen", "wann soll ich am Samstag aufstehen", "ab wann nur noch Schlucke",
    "wer holt mich ab", "soll ich heute oder morgen rasieren", "braucht der Bikini Kleber",
    "ist es schlimm, dass ich nur 6,5 Stunden geschlafen habe?", "was passiert nach dem Wettkampf",
    "wann planen wir den nächsten", "muss ich mir wegen der Waage Sorgen machen", "warum bewegt sich mein Gewicht nicht",
    "ist es normal, heute leichter zu sein", "ist das normal?", "schickst du mir das Posing-Video",
    "welche Schuhe sind erlaubt", "mögen Juroren Haare oben", "wie laufe ich in die Mitte",
    "darf mein Vater mit backstage", "was kostet der Eintritt", "wo ist die Athletenbesprechung",
    "was, wenn ich die Besprechung verpasse", "muss ich um sechs da sein", "können wir den Check-in morgen später machen",
    "gibt es einen Plan B", "was ist Frontload", "wie läuft das mit dem Wasser am Tag", "was heißt überladen",
    "warum kürzen wir kein Salz?", "laden die anderen in meiner Klasse auch", "sind 3,5 Liter viel?",
    "was, wenn ich das Essen nicht schaffe", "was hast du bei Ana geändert", "kriege ich den Plan als Tabelle",
    "bist du da?", "bist du stolz auf mich?", "hab ich was falsch gemacht?", "liest das jemand?",
    "hallo?", "ist da jemand", "Coach bist du da?", "und welche Bräune jetzt, hell oder dunkel",
)  # fmt: skip

#: Whether something may be eaten or drunk: to the coach, and the way to the food is shown.
FOOD = (
    "darf ich Sushi essen", "kann ich Kaffee trinken", "darf ich heute Abend eine Cola Zero trinken?",
    "darf ich Sprudel trinken?", "darf ich Kaugummi haben", "kann ich Senf dazu nehmen",
    "kann ich den Reis gegen Kartoffeln tauschen?", "kann ich Haferflocken durch Reisbrei ersetzen",
    "darf ich Tomaten essen", "soll ich die Schale mitessen, also darf ich die essen",
    "darf ich meinen Riegel noch essen", "kann ich vor dem Training eine Banane essen", "ist Ketchup ok?",
    "sind Reiswaffeln mit Marmelade ok?", "darf ich den Kaffee mit Milch trinken", "darf ich Wein trinken?",
    "darf ich Obst essen", "kann ich Zimt nehmen", "kann ich stattdessen Brot essen", "darf ich backstage Honig essen",
    "darf ich Booster trinken", "soll ich abends Tee trinken", "kann ich heute im Restaurant essen",
    "darf ich Gurken essen", "kann ich Eiklar statt Hähnchen essen",
)  # fmt: skip

#: What a command serves, by the command.
REQUESTS = {
    "today": (
        "was esse ich heute", "Was soll ich heute essen?", "was gibt es heute zu essen", "was sind meine Werte heute",
        "wie viele Kohlenhydrate heute", "wie viel Wasser soll ich heute trinken?", "meine Ziele bitte", "heute",
        "hallo, was esse ich heute?", "meine Makros", "was darf ich heute essen", "wie viel Eiweiß heute",
    ),
    "why": ("warum", "warum?", "warum so viele Kohlenhydrate", "wieso weniger", "warum haben sich meine Werte geändert"),
    "week": ("wie sieht meine Woche aus", "zeig mir meine Woche", "was esse ich morgen", "meinen Wochenplan"),
    "help": ("hilfe", "was kannst du", "wie funktioniert das", "was mache ich jetzt"),
    "checkin": ("ich will mein Gewicht ändern", "meine Antwort ändern", "ich habe mich vertippt", "check-in", "mein Gewicht war falsch"),
    "food": ("zeig mir meine Mahlzeiten", "speiseplan", "meine Einkaufsliste"),
    "stage": ("wann bin ich dran?", "wann muss ich auf die Bühne", "mein Zeitplan"),
    "settings": ("einstellungen", "meine Einheiten ändern", "Zeitzone umstellen"),
    "photos": ("zeig mir meine Fotos",),
    "picture": ("zeig mir das Diagramm",),
    "late": ("wir sind spät dran", "Verspätung", "alles verschiebt sich"),
}  # fmt: skip

#: Something is wrong: heard as that, whatever else is open.
COMPLAINTS = (
    "bin in der Küche ohnmächtig geworden", "ich habe Brustschmerzen", "mein Herz rast im Sitzen", "hab seit Mitternacht fünfmal erbrochen",
    "mir ist schwindelig", "schwindlig beim Aufstehen", "ich habe Kopfschmerzen", "den ganzen Tag starke Kopfschmerzen", "mir ist schlecht",
    "seit dem Frühstück übel", "die ganze Nacht Wadenkrämpfe", "meine Hände sind geschwollen", "meine Knöchel sind geschwollen",
    "Durchfall seit gestern Nacht", "starke Bauchschmerzen", "ich fühle mich schwach", "ich kann überhaupt nicht schlafen", "ich habe Fieber",
    "meine Beine krampfen", "bin nach dem Cardio umgekippt", "Atemnot auf der Treppe", "ich bin verwirrt und zittrig",
    "ich bekomme keine Luft", "ich habe Herzrasen", "ich sehe verschwommen", "mein Herz stolpert",
    "seit 4 Tagen Verstopfung", "die ganze Nacht Sodbrennen", "hab heute Morgen erbrochen", "Krämpfe in den Waden",
    "Kopfschmerzen, geschwollene Hände und mir ist übel", "ich will mich umbringen", "ich will nicht mehr leben",
    "bin im Studio zusammengebrochen", "ich sehe doppelt", "ich hatte einen Krampfanfall", "ich huste Blut", "mein Urin ist dunkelbraun",
    "war seit gestern nicht pinkeln", "hab gestern gefressen und danach erbrochen",
)  # fmt: skip

#: A drug named: refused, and a caution to the coach.
DRUGS = (
    "kann ich heute Abend Furosemid nehmen?", "ich überlege ein Abführmittel zu nehmen", "wie viel Kalium vor der Bühne",
    "ein Freund hat mir Clenbuterol gegeben", "soll ich Entwässerungstabletten nehmen",
)  # fmt: skip

#: A whole morning in one message (before the load, and in it).
CHECK_INS = (
    "60,4 5 3,5", "60.4 5 3.5", "60,4kg 5 3,5l", "60,4 5 3,5 alles gut",
    "60,4 kg, 5, 3,5 Liter",
)  # fmt: skip

#: Answers as they are typed, by the question that is open.
ANSWERS = {
    "weight_kg": ("60,4", "60.4", "60,4 kg", "60,4kg"),
    "fullness": ("5", "7", "5/10", " 6 "),
    "water_l": ("3,5", "3.5", "3,5 L", "3500 ml", "3,5 Liter"),
    "sharpness": ("4", "3", "4/5"),
    "carb_eaten_g": ("500", "500 g", "480g"),
    "fine": ("alles gut",),
    "gut": (),
    "sleep_h": ("7", "6,5", "7 Stunden"),
    "note": ("langer Tag auf der Arbeit",),
    "sex": ("weiblich", "männlich"),
    "diabetes": ("nein", "Nein", "nee", "n"),
    "place": ("London", "Dublin"),
    "which_place": ("Dublin, IE",),
    "carb_g": ("310", "310 g", "310g"),
}  # fmt: skip

#: Once the event is over, the morning after and a week later, by where it has to land.
AFTER = {
    "chatter": (
        "der Pokal steht im Regal", "dritter Platz!!", "gestern noch Pizza mit allen gegessen", "was für ein Tag, danke für alles",
        "die Bilder von gestern sind online", "Waage sagt 63,5, haha", "wann fängt die neue Saison an", "heute wieder auf der Arbeit",
        "die Farbe ist im ganzen Bett", "hab diese Woche trainingsfrei", "komisch so ganz ohne Plan",
    ),
    "food": ("darf ich wieder normal essen", "kann ich heute einen Burger essen", "soll ich den Reis noch wiegen"),
    "complaint": (
        "meine Knöchel sind so geschwollen, ich komm in keine Schuhe", "Beine wie Ballons seit der Show", "kann seit der Show nicht aufhören zu essen",
        "wieder die ganze Nacht gefressen", "fühl mich leer jetzt wo alles vorbei ist, muss nur heulen", "meine Brust tut weh seit der Show",
        "jedes Mal schwindelig beim Aufstehen", "seit gestern nicht mehr gepinkelt", "hab das Buffet dreimal erbrochen",
    ),
}  # fmt: skip
