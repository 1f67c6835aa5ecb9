"""Invented German messages for the symptom screening, each with what a person would read in it."""

from __future__ import annotations

# Every one of these must be found as that warning, surely or in doubt.
WARNINGS = {
    "fainting": """
        Ich bin heute Morgen in der Dusche ohnmächtig geworden
        bin ohnmaechtig geworden
        bin onmächtig geworden
        gestern zweimal umgekippt
        bin beim Aufstehen umgekippt und auf dem Boden aufgewacht
        mir wurde schwarz vor Augen
        Alles wurde schwarz vor meinen Augen als ich aufgestanden bin
        war kurz bewusstlos
        habe das Bewusstsein verloren
        ich verlor für einen Moment das Bewusstsein
        auf dem Laufband zusammengebrochen
        bin im Supermarkt zusammengeklappt
        kollabiert nach dem Posing
        Kreislaufkollaps heute früh
        hatte einen Ohnmachtsanfall
        meine Freundin hat mich gefunden, war kurz weg
        einfach umgefallen, keine Ahnung warum
        fast ohnmächtig geworden
        wäre beinahe umgekippt
        Nein, ich bin umgekippt
        kein Schlaf, beim Frühstück umgekippt
        ich glaube ich war kurz ohnmächtig
        bin aus den Latschen gekippt
        mir sind die Beine weg und ich bin in Ohnmacht gefallen
        Bin heut morgen umgekipt
        mir is schwarz vor augen geworden
        plötzlich weg gewesen, lag dann am Boden
        ich bin weggekippt
        hatte nen Blackout in der Küche
        bin vorhin fast weggetreten
        beim Duschen zusammengesackt
        bin in Ohnmacht gefallen
        ohnmacht heute früh
        bin vom Stuhl gekippt und war nicht ansprechbar
        war 10 Sekunden weg
        kippe ständig um
        ich kipp gleich um
        bin einfach zusammengebrochen
        Bin vorhin beim Treppensteigen kurz ohnmächtig gewesen
        Heute früh im Bad umgefallen
        bin in der Bahn bewusstlos geworden
        mir wurde auf einmal schwarz vor Augen und dann lag ich da
        Kreislauf weg und umgekippt
        ich war für ein paar Sekunden bewusstlos
        nach dem Aufstehen kollabiert, Nachbarin hat den Notarzt gerufen
        Bin ohnmächtig aufm Sofa gelegen
        wurde ohnmächtig
        eben im Flur umgekippt, jetzt geht's wieder
        Mir ist vorhin schwarz geworden und ich lag aufm Teppich
        bin einfach weggesackt
        Bin heute fast bewusstlos geworden
        ich wurde kurz ohnmächtig als ich aus der Sauna kam
        Kreislauf komplett weg, bin zusammengebrochen
        meine Schwester sagt ich war bewusstlos
    """,
    "chest-pain": """
        Brustschmerzen seit heute Nacht
        ich habe Schmerzen in der Brust
        starker Druck auf der Brust
        es sticht in der Brust beim Einatmen
        meine Brust tut weh
        die Brust ist wie zugeschnürt
        Engegefühl in der Brust
        Stiche im Herz
        mein Herz tut weh
        Brust drückt und zieht in den Arm
        Schmerzen im linken Arm
        stechender Schmerz in der Brust
        Brustschmertzen
        hab so ein Brennen in der Brust
        es fühlt sich an wie ein Stein auf der Brust
        ziehen in der Brust
        Brust fühlt sich komisch an
        Herzschmerzen beim Liegen
        brust schmerzt
        hab ein Stechen links in der Brust
        da ist ein Druckgefühl in der Brust
        Brustkorb tut weh beim Atmen
        es drückt auf meine Brust
        krampfartige Schmerzen in der Brust
        Herz sticht
        Herzinfarkt Gefühl
        mir tut die Brust weh
        meine Brust brennt
        Schmerzen hinterm Brustbein
        die Brust fühlt sich eng an
        Ich hab seit gestern Abend so ein Druckgefühl auf der Brust
        Stechende Schmerzen in der linken Brust
        brustkorb zieht sich zusammen
        Meine Brust schmerzt beim Atmen
        es zieht in der Brust
        Habe Herzstechen
        Ich spüre ein starkes Ziehen in der Brust
        Brustschmerz der in den Kiefer zieht
        hab Schmerzen im Brustkorb
        Druck auf dem Brustbein
        mein Herz tut mir weh
        Es drückt so auf der Brust
    """,
    "palpitations": """
        Herzrasen seit einer Stunde
        mein Herz rast
        Herz rast im Liegen
        mein Herz stolpert
        hab Herzstolpern
        starkes Herzklopfen im Bett
        das Herz schlägt unregelmäßig
        mein Herz schlägt bis zum Hals
        mein Herz schlägt total schnell
        Herzrhythmusstörungen
        Herzrytmusstörungen heute nacht
        Herz setzt manchmal aus
        Puls rast obwohl ich sitze
        unregelmäßiger Puls
        mein Herz macht komische Sachen
        Herzflattern
        herzrassen
        Ruhepuls 124 heute früh
        Hertzrasen die ganze Nacht
        herz klopft wie verrückt
        Puls ist bei 130 im Sitzen
        mein Herzschlag ist unregelmäßig
        mein Herz spielt verrückt
        Herz pocht so laut dass ich nicht schlafen kann
        Herz hat Aussetzer
        mein Herz schlägt ganz komisch
        spüre mein Herz bis in den Hals
        mein Herz hämmert
        Herz springt
        hab dauernd Extraschläge
        Herz galoppiert
        Mein Herz rast seit dem Aufwachen
        ich habe so ein Herzstolpern und Schwindel
        das Herz pocht mir bis zum Hals
        Herzklopfen ohne Grund
        mein Puls ist unregelmäßig
        mein herz macht aussetzer
        Mein Herz überschlägt sich
        Herz schlägt viel zu schnell
        hab Herzrasen bekommen
        mein Puls rast im Liegen
        Das Herz stolpert seit heute Nacht
        Herz pumpt wie verrückt
        unregelmäßigen Herzschlag
        ich merke wie mein Herz aussetzt
    """,
    "breathlessness": """
        ich bekomme keine Luft
        krieg kaum Luft
        Atemnot
        Luftnot im Liegen
        kann nicht richtig atmen
        ich kann kaum atmen
        mir bleibt die Luft weg
        das Atmen fällt mir schwer
        bin total kurzatmig
        kurzatmig im Bett
        ringe nach Luft
        habe das Gefühl zu ersticken
        meine Lippen sind blau
        ich kann nicht tief durchatmen
        schlecht Luft bekommen heute nacht
        Atemprobleme
        bekomme nicht genug Luft
        muss nach Luft schnappen
        attemnot seit gestern
        kriege schlecht Luft
        komme nicht mehr zu Atem
        ich krieg keine luft mehr
        kann nicht atmen
        keine luft
        japse nach Luft
        es fällt mir schwer zu atmen
        atme ganz flach und schnell
        hab Probleme mit dem Atmen
        ich ersticke
        kriege nachts keine Luft
        Hals geht zu
        mir fehlt die Luft
        ich kriege keine Luft
        hab Atemnot beim Liegen
        bin schon beim Reden außer Atem
        mir bleibt dauernd die Luft weg
        ich kann nur noch schwer atmen
        Atmung ist flach
        ich habe Schwierigkeiten beim Atmen
        Ich kann nicht mehr richtig atmen
        bekomme schwer Luft
        Kurzatmigkeit seit heute
        japse nur noch
        kann nicht durchatmen
        bin im Liegen atemlos
        schnaufe wie eine Lok beim Sitzen
    """,
    "limb-weakness": """
        meine Beine sind ganz schwach
        Beine geben nach
        die Beine knicken mir weg
        ich kann nicht mehr aufstehen
        kann kaum noch gehen
        kann meinen Arm nicht heben
        meine Beine wollen nicht
        keine Kraft in den Beinen
        keine Kraft mehr in den Armen
        der linke Arm ist gelähmt
        Lähmung in den Beinen
        schwache Beine seit heute früh
        meine Hände sind taub
        linke Seite fühlt sich taub an
        Mundwinkel hängt
        mir fällt alles aus der Hand
        ich komme nicht mehr hoch
        Beine wie Blei
        schwere Beine
        zu schwach zum Aufstehen
        ich fühle mich sehr schwach
        kann die Finger nicht bewegen
        Muskelschwäche
        Beine sacken weg
        Beine tragen mich nicht mehr
        meine beine sind wie pudding
        kann meine Beine nicht bewegen
        hab keine Kraft in den Händen
        kann nicht aufstehen
        kann nicht stehen
        meine Arme sind so schwer und schwach
        linker Arm ist taub
        die Knie geben nach
        Arme gehorchen mir nicht
        kann nichts mehr halten, alles fällt runter
        einseitige Schwäche
        halbe Gesicht hängt
        ich fühle meine Beine nicht mehr
        kann mich kaum bewegen
        komm kaum aus dem Bett hoch
        Muskeln versagen
        habe Lähmungserscheinungen
        Meine Beine fühlen sich total schwach an
        ich kann die Beine kaum heben
        meine Arme sind kraftlos
        bin so schwach dass ich nicht stehen kann
        Kann nicht mehr laufen
        Mein rechter Arm lässt sich nicht bewegen
        Beine machen nicht mehr mit
        ich habe ein Taubheitsgefühl im Gesicht
        beine sacken mir weg
        Meine Beine geben dauernd nach
        kann kaum laufen
        Beine fühlen sich gelähmt an
        ich hab kein Gefühl mehr in den Füßen
        meine Arme werden immer schwächer
        ich kriege die Beine nicht mehr hoch
        rechte Hand macht nicht was ich will
        Schwäche in Armen und Beinen
        habe keine Kraft um aufzustehen
    """,
    "confusion": """
        ich bin total verwirrt
        war heute früh verwirrt und wusste nicht wo ich bin
        wusste nicht mehr welcher Tag ist
        bin völlig desorientiert
        ich lalle
        meine Sprache ist verwaschen
        kann nicht richtig sprechen
        ich rede wirres Zeug sagt mein Mann
        Halluzinationen
        konnte mich nicht an meinen Namen erinnern, hatte meinen Namen vergessen
        kann nicht klar denken
        wie im Nebel
        fühle mich benommen
        bin komplett neben mir
        finde die Worte nicht
        orientierungslos aufgewacht
        Verwirrtheit
        bin ganz wirr im Kopf
        ich weiß nicht wo ich bin
        weiß nicht mehr wer ich bin
        bin desorientiert
        kann mich nicht konzentrieren, alles wie Watte
        kann keinen klaren Gedanken fassen
        Sprache ist undeutlich
        ich bekomme keine Wörter raus
        wusste nicht wie ich nach Hause gekommen bin
        erkenne meine Leute nicht
        bin verwirrt
        vergesse mitten im Satz Wörter
        ich bin verwirrt und weiß nicht welcher Tag heute ist
        Fühle mich desorientiert
        Kann nicht mehr klar denken
        bin irgendwie benebelt
        mein Mann sagt ich rede wirr
        ich sehe Dinge die nicht da sind, Halluzinationen
        Bin irgendwie total verwirrt heute
        ich rede komisches Zeug
        fühle mich wie betrunken
        weiß gerade nicht welcher Tag ist
        kann mich an nichts erinnern
        Mein Freund meint ich bin nicht ganz da
    """,
    "seizure": """
        hatte einen Krampfanfall
        Krampfanfall in der Nacht
        epileptischer Anfall
        ich hatte einen Anfall
        habe am ganzen Körper unkontrolliert gezuckt
        mein ganzer Körper hat gekrampft
        Epilepsie Anfall gestern
        Zuckungen am ganzen Körper
        hab gekrampft und gezuckt
        Krampfanfall
        war am Boden und habe gezuckt
        epileptischer anfall heute nacht
        Ich hatte heute einen Krampfanfall
        hatte Epilepsie
        mein Körper hat unkontrolliert gezuckt
        ich hatte wohl einen Krampfanfall
        hatte einen epileptischen Anfall
    """,
    "repeated-vomiting": """
        habe mich mehrmals übergeben
        dreimal erbrochen
        3x gekotzt heute
        kotze die ganze Nacht
        ich übergebe mich ständig
        musste mich immer wieder übergeben
        kann nichts bei mir behalten
        nichts bleibt drin
        alles kommt wieder hoch
        schon 4 mal erbrochen
        Blut erbrochen
        habe mich übergeben
        heute morgen erbrochen
        mehrfach uebergeben
        erbreche seit heute Nacht
        hab schon wieder gekotzt
        kotz mir die Seele aus dem Leib
        übergebe mich seit Stunden
        muss dauernd brechen
        hab 5x gebrochen
        kann nichts drin behalten
        hab Blut gespuckt
        erbrochen, schon zum dritten Mal
        Ich habe mich heute schon dreimal übergeben
        Muss mich dauernd übergeben
        seit Stunden am Kotzen
        Alles was ich esse kommt wieder raus
        hab die ganze Nacht gekotzt
        ich behalte nichts drin
        Kotze schon den ganzen Tag
        Hab mich jetzt 4 mal übergeben
        Erbrechen hört nicht auf
        kann nicht mal Wasser bei mir behalten
        muss mich ständig übergeben
        seit heute früh nur am Erbrechen
    """,
    "severe-headache": """
        starke Kopfschmerzen
        heftige Kopfschmerzen seit dem Aufwachen
        unerträgliche Kopfschmerzen
        Kopfschmerzen, so schlimm wie noch nie
        die schlimmsten Kopfschmerzen meines Lebens
        mein Kopf platzt
        mein Kopf explodiert gleich
        plötzlich extreme Kopfschmerzen
        Kopfschmerzen kaum auszuhalten
        Migräne
        rasende Kopfschmerzen
        richtig dolle Kopfschmerzen
        Kopfschmerzen gehen nicht weg
        starke Kopschmerzen
        mein Schädel platzt
        Kopfschmerzen zum Schreien
        Hammer Kopfschmerzen
        brutale kopfschmerzen
        Kopfschmerzen wie noch nie
        so starke Kopfschmerzen dass ich nichts sehe
        Kopf tut extrem weh
        mein Kopf zerspringt
        Kopfschmerzen bringen mich um
        Ich habe unfassbar starke Kopfschmerzen
        So heftige Kopfschmerzen hatte ich noch nie
        Migräneanfall
        Kopf tut höllisch weh
        die Kopfschmerzen sind unerträglich
        plötzlich wahnsinnige Kopfschmerzen
        Die Kopfschmerzen bringen mich noch um
        Hab übelste Kopfschmerzen
        Kopfschmerzen sind heute extrem
        mein Kopf tut so weh dass ich heulen muss
        ganz plötzlich schlimme Kopfschmerzen bekommen
    """,
    "self-harm": """
        ich will nicht mehr leben
        denke an Selbstmord
        ich habe Suizidgedanken
        will mich umbringen
        möchte mir das Leben nehmen
        ich würde mir am liebsten etwas antun
        wäre besser tot
        ich will sterben
        habe mich wieder geritzt
        mein Leben hat keinen Sinn mehr
        möchte nicht mehr aufwachen
        will mich selbst verletzen
        ich mag nicht mehr leben
        will nicht mehr da sein
        ich bringe mich um
        wenn ich tot wäre wäre es besser
        ich tu mir was an
        hab mich selbst verletzt
        will mir was antun
        will einfach nur sterben
        Ich möchte nicht mehr leben
        ich denke darüber nach mich umzubringen
        ich verletze mich selbst
        ich hab Suizidgedanken
        Ich sehe keinen Sinn mehr im Leben
        am liebsten wäre ich tot
        Ich will mir das Leben nehmen
        habe Gedanken mich umzubringen
    """,
    "stroke-signs": """
        mein Mundwinkel hängt
        eine Gesichtshälfte hängt
        die linke Seite ist taub
        ich glaube ich hatte einen Schlaganfall
        meine Sprache ist weg
    """,
    "heavy-bleeding": """
        Blut erbrochen
        Blut im Stuhl
        hab Blut gehustet
        die Blutung hört nicht auf
        blute stark
    """,
    "double-vision": """
        ich sehe doppelt
        seh alles doppelt
        habe Doppelbilder
    """,
    "muscle-breakdown": """
        Urin ist braun und die Muskeln tun weh
        brauner Urin und meine Beine sind steinhart
        Pipi wie Cola, Oberschenkel schmerzen
    """,
    "danger-signs": """
        überall Quaddeln und die Lippen wie Ballons
        Nacken bretthart und Licht tut weh, Kinn geht nicht auf die Brust
        hab zu viele Tabletten genommen
        eine Wade ist dick und heiß und tut weh
        die müssen mich wachrütteln
        kann nicht pinkeln und der Unterbauch tut höllisch weh
    """,
}

# Every one of these must be found as that complaint.
OTHERS = {
    "headache": """
        leichte Kopfschmerzen
        Kopfweh
        mir tut der Kopf weh
        der Kopf brummt
    """,
    "nausea": """
        mir ist übel
        mir ist schlecht
        Übelkeit nach dem Essen
        mir wird ganz flau
        uebelkeit
        muss gleich kotzen
        ist mir übel heute
        mir ist kotzübel
        seit heute morgen ist mir schlecht
        leichte Übelkeit
    """,
    "vomiting": """
        einmal erbrochen
        musste mich übergeben
    """,
    "swollen-hands": """
        geschwollene Hände
        meine Finger sind geschwollen
        Wurstfinger
        mein Ring geht nicht mehr ab
        die Hände sind total dick
        Finger sind dick und der Ring ist zu eng
    """,
    "swelling": """
        geschwollene Knöchel
        meine Füße sind angeschwollen
        Gesicht aufgedunsen
        dicke Knöchel heute
        Meine Knöchel sind dick
        Füße geschwollen
    """,
    "dizzy": """
        mir ist schwindelig
        Schwindel beim Aufstehen
        schwindlig
        alles dreht sich
        sehe Sternchen
        mein Kreislauf spinnt
        leichter schwindel
        schwindelich
        mir ist total schwindelig
        schwindel seit heute morgen
        mir ist so schwummrig
    """,
    "blurred-vision": """
        sehe verschwommen
        Flimmern vor den Augen
        kann nicht richtig sehen
    """,
    "sleepless": """
        konnte nicht schlafen
        kaum geschlafen
        kein Auge zugemacht
        nur 3 Stunden geschlafen
        die ganze Nacht wach
        schlecht geschlafen
        kein Schlaf
        konnte gar nicht einschlafen
        habe kaum geschlafen
    """,
    "cramps": """
        Wadenkrämpfe
        Krampf in der Wade
        ständig Krämpfe
        Krämpfe in beiden Waden
        hab nen Krampf im Fuß
    """,
    "tingling": """
        Kribbeln in den Fingern
        es kribbelt in den Füßen
    """,
    "shaky": """
        bin zittrig
        meine Hände zittern
        Unterzucker glaub ich
    """,
    "stomach-pain": """
        Bauchschmerzen
        mein Bauch tut weh
        Magenkrämpfe
        Bauchweh
    """,
    "severe-gut": """
        starke Bauchkrämpfe
        Blut im Stuhl
        heftige Bauchschmerzen
        blutiger Durchfall
    """,
    "diarrhoea": """
        Durchfall
        Dünnpfiff
        seit gestern durchfal
        hab Durchfall bekommen
        seit heute Dünnschiss
    """,
    "constipation": """
        Verstopfung
        bin verstopft
        seit Tagen kein Stuhlgang
    """,
    "bloating": """
        bin total aufgebläht
        Blähungen
        Blähbauch
    """,
    "urine-dark": """
        dunkler Urin
        Urin ist braun
        mein Urin ist sehr dunkel
        Blut im Urin
        Pipi ist cola-farben
        mein Urin ist dunkelgelb bis braun
    """,
    "no-urine": """
        kann nicht pinkeln
        heute kaum gepinkelt
        kein Urin seit gestern
        hab seit gestern nicht gepinkelt
    """,
    "fever": """
        Fieber
        Schüttelfrost
    """,
    "fall": """
        bin auf der Treppe gestürzt
        bin hingefallen
    """,
    "fast-heart": """
        Puls 130 im Liegen
        Herzfrequenz 140 im Sitzen
    """,
    "bleeding": """
        ich blute
        Nasenbluten heute früh
    """,
    "drying-out": """
        trinke nichts mehr, will nichts mehr trinken bis Samstag
        in die Sauna um Wasser zu verlieren
    """,
    "purging": """
        Finger in den Hals gesteckt
        habe absichtlich erbrochen
    """,
    "bingeing": """
        hatte gestern einen Fressanfall
    """,
    "starving": """
        ich esse heute nichts, will gar nichts essen
    """,
    "body-hate": """
        ich hasse meinen Körper
    """,
    "low-mood": """
        hat alles keinen Sinn mehr
    """,
    "unwell": """
        ich fühle mich beschissen
        mir geht es elend
    """,
    "exhaustion": """
        total erschöpft
        völlig fertig
        fix und fertig
    """,
}

# Complaints that are said not to be there.
DENIED = """
    keine Brustschmerzen
    kein Schwindel
    keine Kopfschmerzen, keine Übelkeit
    kein Herzrasen und keine Atemnot
    keine Kopfschmerzen oder Schwindel
    mir ist nicht schwindelig
    mir ist nicht übel
    ich bin nicht ohnmächtig geworden
    Brustschmerzen habe ich nicht
    Schwindel hatte ich keinen
    Herzrasen: nein
    Kopfschmerzen? Nein
    weder Übelkeit noch Schwindel
    ohne Kopfschmerzen aufgewacht
    Hände sind nicht geschwollen
    keine geschwollenen Hände
    nicht erbrochen
    habe mich nicht übergeben
    kein Durchfall
    bisher keine Krämpfe
    habe keine Schmerzen in der Brust
    hatte nie Herzstolpern
    keinerlei Atemnot
    Beine sind nicht schwach
    keine Migräne
    kein Fieber
    keine Anzeichen von Verwirrung
    kein Kribbeln, kein Zittern
    Atemnot war nicht da
    Keine Symptome, kein Schwindel
    nein, kein Schwindel
    kein Schwindel, keine Übelkeit, keine Krämpfe
    Ich habe keine Schmerzen in der Brust und kriege gut Luft
    habe keinerlei Beschwerden
    Keine Kopfschmerzen heute
    hatte kein Herzrasen
    nicht schwindelig, nicht übel
    mir war nicht schlecht
    Kopfschmerzen keine
    Übelkeit: keine
    Schwindel nein
    ich war nicht verwirrt
    Es gab keine Krämpfe
    Herzstolpern habe ich heute nicht gehabt
    Ohnmacht nein
    weder Kopfschmerzen noch Übelkeit noch Schwindel
    Durchfall hatte ich nicht
    Schmerzen in der Brust hab ich keine
    kein Schwindel mehr gehabt heute und auch keine Übelkeit
    mir ist weder schlecht noch schwindelig
    Nein keine Symptome
    bin nicht umgekippt
    kein Erbrechen
    Atemnot hatte ich nicht
    habe kein Herzstolpern bemerkt
    Ich bin nicht verwirrt
    kein Kopfweh
"""

# Nothing is the matter here; at most one in a hundred may lead to a question about a warning.
HARMLESS = """
    Guten Morgen, 61,2 heute
    alles gut, gut geschlafen
    Alles bestens, Essen war gut
    Check-in kommt gleich
    heute Beintraining, lief super
    gestern Brusttraining, Pump war geil
    Brust sieht voll aus
    meine Brust ist richtig prall heute
    Muskelkater in den Beinen
    Wade verhärtet vom Cardio
    mit ganzem Herzen dabei
    das kommt von Herzen
    von Herzen danke dir
    herzlichen Glückwunsch
    der Plan liegt mir am Herzen
    das ist zum Kotzen
    das Wetter kotzt mich an
    der Plan macht mir Kopfschmerzen
    mach dir keinen Kopf
    Kopf hoch, wird schon
    die Fahrt war lang, aber ok
    mein Kopf ist frei
    bin verwirrt welche Kategorie ich nehmen soll
    die App verwirrt mich
    verwirrt wegen der Makros im Plan
    schwache Körperpartie sind bei mir die Waden
    meine Schwachstelle ist der Rücken
    meine größte Schwäche ist Schokolade
    hab eine Schwäche für Erdnussbutter
    schwarzer Kaffee zum Frühstück
    Kaffee schwarz, sonst nichts
    die Flasche ist umgekippt
    die Stimmung ist gekippt
    der Server ist zusammengebrochen
    Stress bei der Arbeit, sonst alles fein
    das war atemberaubend
    noch Luft nach oben
    muss den Atem anhalten beim Posing üben
    frische Luft tut gut
    den Shaker mit Wasser aufgefüllt
    Reis 250 g, Hähnchen 200 g
    rote Paprika und Gurke gegessen
    rote Beete gab es keine
    bin fertig mit dem Essen
    Posing ist fertig
    Lampenfieber habe ich schon ein bisschen
    fiebere dem Tag entgegen
    das Handy ist tot
    war heute laufen, 30 Minuten locker
    Lachkrampf beim Posing
    hatte einen Fressanfall vor Wochen, jetzt nicht mehr
    Hunger bringt mich um, aber passt
    ich sterbe vor Hunger, haha
    die Zahlen sind ein riesen Durcheinander
    im Plan geht alles durcheinander gewürfelt
    bis zum Muskelversagen trainiert
    Kniebeugen waren stark
    starke Form heute
    so stark war ich noch nie
    die Taille ist schmal geworden
    Adern kommen raus
    Form wird besser, Schärfe 3
    Wann soll ich die letzte Mahlzeit essen?
    Darf ich heute Nacht länger schlafen?
    welche Farbe soll der Bikini haben
    Unterlagen an den Veranstalter übergeben
    habe den Pokal übergeben bekommen
    Ich freue mich auf Samstag
    wie viel Salz soll ich nehmen?
    der Tan ist gebucht für Freitag
    Fahrt zum Wettkampf dauert zwei Stunden
    Arm und Schulter trainiert
    Hände waschen nicht vergessen
    Handschuhe zuhause vergessen
    Mein Mann fährt mich hin
    Blutwerte kommen nächste Woche
    Puls beim Cardio war 135
    Puls auf dem Laufband bei 140
    Ruhepuls 58
    Wasser 3,5 Liter getrunken
    habe heute frei
    bin etwas nervös, aber gut drauf
    übrigens ist die Waage neu
    die Übungen liefen gut
    über Nacht 400 g runter
    Fülle 7, alles prall
    war gestern schwimmen, bin viel geschwommen
    Bilder sind eingerahmt
    gegen Abend wird es ruhiger
    Kampfgeist ist da
    wir spielen Schach zur Ablenkung
    ein Scherz am Rande
    Kraft ist stabil
    kalt hier im Büro
    die Jeans sitzt locker
    Ende der Diät in Sicht
    Trainingspartner ist krank, ich nicht
    habe heute Beine, morgen Pause
    Kohlenhydrate alle gegessen
    ohne Probleme alles geschafft
    nichts Besonderes
    keine Beschwerden
    Ich habe gut geschlafen und fühle mich stark
    Herz und Seele im Posing
    bin heute schwach geworden bei Schokolade
    Beine sind gut durchtrainiert
    Hab heute nicht so gut geschlafen aber ok
    mir geht es gut
    bin etwas müde
    der Bauch ist flach
    Training war schwer aber gut
    schwere Gewichte heute
    die Beine sind heute schwerer trainiert
    der Arm ist prall
    der Plan hängt an der Wand
    heute ist mein letzter Tag vor der Bühne
    Der Coach meinte ich soll 20 g mehr essen
    bin aufgeregt
    schwarze Trauben gegessen
    die Luft im Hotel ist trocken
    ich will nicht mehr als 3 Liter trinken
    ich mag nicht mehr Reis essen
    nicht mehr lange
    ich kann nicht mehr als 200 g essen
    kann heute nicht ins Gym gehen
    kann nicht früher schlafen gehen
    konnte den Reis nicht mehr sehen
    kann die Waage nicht finden
    weiß nicht wo ich den Reis kaufen soll
    weiß nicht wie ich das essen soll
    Brust und Rücken trainiert
    Schlag mir was vor
    schlagfertig
    die Nacht war kurz
    hab mich an den Plan gehalten
    alles behalten wie besprochen
    Wasser fällt mir leicht
    Wie schlägt sich mein Gewicht?
    Kommt alles in den Koffer
    alles kommt wieder in Form
    das Gesicht wird schmaler
    Gewicht ist gefallen
    lasse das Cardio fallen
    Ring ist zu groß geworden
    beide Hände voll zu tun
    dicke Socken an
    fester Schlaf
    wach und fit
    Stuhlgang normal
    Bauch ist ruhig
    Urin ist hell
    Urin hellgelb
    Verdauung ok
    Moin, 62,3, Fülle 6, Wasser 3,5
    alles easy hier
    Coach, soll ich morgen früher essen?
    Ich hab den Reis vergessen
    mein Herz gehört der Bühne
    Das Herzstück der Kür sitzt
    Bin heute schlecht drauf aber kein Drama
    schlechter Tag auf der Arbeit
    die Laune ist im Keller
    ich bin platt vom Beintraining
    bin hungrig wie ein Wolf
    hatte Heißhunger auf Schokolade
    das Licht im Bad ist schlecht
    die Haut ist dünn geworden
    Brust und Schultern voll, Beine noch etwas flach
    Linien kommen raus
    die Waage zeigt 61,9
    habe die Tabletten nicht gefunden
    mein Kopf sagt ja, mein Bauch sagt nein
    kein Bock auf Cardio
    ich kann das nicht mehr sehen
    die Musik ist zu leise
    steife Schultern vom Schlafen
    meine Beine sehen gut aus
    Beine heute etwas weich im Look
    Arme sind flach
    hab Muskelkater in der Brust vom Training
    Muskelkater im Bauch
    Gesicht ist schmal
    linke Seite ist schärfer als die rechte
    rechte Seite beim Posing besser
    heute war ich schnell außer Haus
    Herbstluft ist schön
    habe mir die Zähne putzen lassen
    der Zug fällt aus
    steht alles im Plan
    das Frühstück war lecker
    zwei Stunden Cardio in dieser Woche
    bin um 22 Uhr eingeschlafen wie ein Stein
    habe durchgeschlafen
    geschlafen wie ein Baby
    Bauchumfang 68 cm
    Bauch ist hart trainiert
    die Ringe sind angekommen
    Ring gehört zum Kostüm
    es dreht sich alles nur ums Essen
    meine Hand ist ruhig beim Malen
    Fingerfood ist tabu
    Augen auf die Bühne
    ich sehe doppelt so gut aus wie letztes Jahr
    Stuhl im Bad ist kaputt
    zitterte vor Kälte in der Halle
    dicke Jacke an
    kotzt mich echt an das Wetter
    ist übel kalt heute
    brauche eine Pause
    die Schule hat heute begonnen
    bis später
    danke dir
    wie war dein Wochenende?
    Ich nehme noch mein Magnesium
    heute Refeed, endlich
    Ich packe jetzt meinen Koffer
    Die Nacht war unruhig, viel geträumt
    Soll ich mehr Wasser trinken?
    hab mich mit der Hand geschnitten beim Kochen
    Der Weg zur Arbeit ist lang
    das Gym war leer
    meine Tochter ist krank
    Heute Schulter trainiert und Waden
    linker Arm 36 cm, rechter Arm 36,5 cm
    Puls 52 morgens
    Mein Herzblut steckt da drin
    Luft war stickig im Studio
    keine Lust auf Cardio
    keine Zeit für Posing
    Ich bin gespannt
    hab Bock
    der Kopf ist klar
    Kopfkino vor der Show
    komme morgen nicht ins Gym
    kann morgen nicht kommen
    kann das Ergebnis kaum erwarten
    ich kann kaum erwarten
    ich kann nicht klagen
    kann ich nochmal wiegen?
    die Beine kommen gut
    Füße tun weh von den Schuhen
    Rücken zwickt
    hab mir den Finger geklemmt
    Der Bauch knurrt
    Was ist mit Salz?
    ich war gestern beim Arzt wegen Impfung
    Brustumfang gemessen
    Heute ist der Tank leer aber happy
    sehe scharf aus
    ich sehe Adern am Bauch
    Haut spannt
    heiß hier, schwitze viel
    bin im Stress
    ich falle gleich ins Bett
    falle müde ins Bett
    bin tot müde
    mir ist kalt
    Ich friere ständig
    hab kalte Hände
    Weg ist weg
    Alles weg gegessen
    bin gleich weg, bis morgen
"""

DRUGS = """
    ich nehme Entwässerungstabletten
    soll ich ein Diuretikum nehmen?
    habe Abführmittel genommen
    wie viel Kalium soll ich nehmen
    Kaliumtabletten gekauft
    nehme Furosemid 40 mg
    hab noch Wassertabletten vom letzten Mal
    Spironolacton seit Montag
    spritze Insulin
    Diuretika ab Donnerstag?
    Koffeintabletten vor dem Training
    Abfuhrmittel genommen
    Clenbuterol läuft noch
    nehme Steroide
"""

NO_DRUGS = """
    keine Diuretika
    ich nehme keine Abführmittel
    Abführmittel nehme ich nicht
    nie Steroide genommen
    Bananen haben viel Kalium
    ohne Entwässerungstabletten
    Wasser und Salz wie immer
    Tabletten nehme ich keine
    Kapseln mit Omega 3
    kein Insulin
"""


def lines(block: str) -> list[str]:
    return [line.strip() for line in block.strip().splitlines()]
