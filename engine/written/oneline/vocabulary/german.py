"""What the German words and phrases of a check-in say."""

from __future__ import annotations

from engine.written.oneline.tokens.pieces import Means, Table

GERMAN: Table = {
    (Means.LABEL, "weight_kg", None): (
        "gewicht, körpergewicht, koerpergewicht, kg gewicht, wiege, wiegt, gewogen, waage, waage "
        "sagt, waage zeigt, auf der waage, gew, die waage, die waage sagt, die waage zeigt, "
        "gwicht, waag, waage sagte, waage zeigte, waage meint, auf der anzeige, waage vom hotel, "
        "gewicht heute, kampfgewicht, morgengewicht, nüchterngewicht, gewicht früh, gewicht "
        "morgens, gewicht nüchtern, auf der waage steht, waage steht bei, waage bei, g, wiig, "
        "wieg, wäg, i wiig, i wieg, gwichd, kilo, waagn, woog, woge"
    ),
    (Means.LABEL, "fullness", None): (
        "fülle, fuelle, füllung, fuellung, voll, prall, vollheit, füllegrad, fülle grad, optik, "
        "fü, fülli, vom look her, vom look, look, füllegefühl, muskelfülle, optisch, vollgefühl, "
        "füllewert, wie voll, im spiegel, spiegel sagt, spiegel, füllestand, füllungsgrad, füll, "
        "fülle gefühl, fülle heute, völle, fuelle gefuehl, v, voi, volle, völli, voll mi, füllung "
        "heute, fülligkeit, fülltheit, form, ausschaun, schau aus wie, schau aus wie a, schaug aus wie "
        "a, ausschaun tu i wie, ausschaun tu i wie a, seh aus wie, seh aus wie ne, sehe aus wie, "
        "sehe aus wie eine, gsehne us wie, gsehne us wie e, vom schaun, vom schauen, vom aussehen, "
        "aussehen"
    ),
    (Means.LABEL, "water_l", None): (
        "wasser, getrunken, trinken, trinkmenge, trank, flüssigkeit, fluessigkeit, getränke, "
        "trunken, wa, liter, h2o, wasserstand, wassermenge, trinken gestern, flüssig, getränk, "
        "trinkerei, lidda, lita, wassr, wasr, wassa, wossa, trunka, trunke, gsoffe, trinka"
    ),
    (Means.LABEL, "sharpness", None): (
        "schärfe, schaerfe, scharf, definition, härte, haerte, hart"
    ),
    (Means.LABEL, "carb_eaten_g", None): (
        "kh, khs, kohlenhydrate, kohlenhydrat, kohlehydrate, carbs, kh gegessen"
    ),
    (Means.LABEL, "sleep_h", None): ("schlaf, geschlafen, schlief"),
    (Means.SCORE, "fullness", 1): (
        "total flach, völlig flach, total platt, ganz flach, komplett leer"
    ),
    (Means.SCORE, "fullness", 2): ("sehr flach, richtig flach, sehr platt, leer, richtig platt"),
    (Means.SCORE, "fullness", 3): (
        "flach, ziemlich flach, platt, ziemlich platt, ganz schön platt, ganz schön flach, recht "
        "flach"
    ),
    (Means.SCORE, "fullness", 4): (
        "etwas flach, bisschen flach, ein bisschen flach, leicht flach, eher flach, nicht voll, "
        "zwischen flach und ok, irgendwo zwischen flach und ok, zwischen flach und okay, ned "
        "voll, net voll, nicht sehr voll, nicht so voll, nicht ganz voll"
    ),
    (Means.SCORE, "fullness", 5): (
        "mittelvoll, mittel voll, halbvoll, halb voll, mittel, so lala voll, so lala, "
        "mittelprächtig, mittelmäßig, geht so, naja, durchschnittlich, zwischen flach und voll, "
        "medium"
    ),
    (Means.SCORE, "fullness", 6): (
        "etwas voll, halbwegs voll, einigermaßen voll, ganz gut voll, ganz ok, ganz okay, "
        "passabel, ganz gut"
    ),
    (Means.SCORE, "fullness", 7): ("ziemlich voll, schön voll, recht voll, gut voll, eher voll"),
    (Means.SCORE, "fullness", 8): (
        "sehr voll, richtig voll, rund und voll, voll und rund, rund, schön rund, prall und rund"
    ),
    (Means.SCORE, "fullness", 9): ("zum platzen, extrem voll, total voll, randvoll, maximal voll"),
    (Means.SCORE, "sharpness", 1): ("sehr weich, sehr verschwommen, total verschwommen"),
    (Means.SCORE, "sharpness", 2): (
        "weich, verschwommen, weich und verschwommen, verschwommen und weich, wässrig, unscharf, "
        "schwammig, nicht scharf, ziemlich weich, matschig, ziemlich verschwommen"
    ),
    (Means.SCORE, "sharpness", 3): (
        "etwas weich, leicht weich, etwas verschwommen, bisschen weich"
    ),
    (Means.SCORE, "sharpness", 4): ("ziemlich scharf, recht scharf, ziemlich hart, trocken"),
    (Means.SCORE, "sharpness", 5): (
        "knackig, sehr scharf, knackscharf, knallhart, messerscharf, sehr hart"
    ),
    (Means.LINK, "", None): (
        "gesamt, im ganzen, flacher, flacher als gestern, bisschen flacher, etwas flacher, viel "
        "voller, viel voller als gestern, deutlich voller, etwas voller als gestern, wia gestern, "
        "wie gestern aufs gramm, wia gestern aufs gramm, aufs gramm, oiso, guat, gnau, aufs gramm "
        "genau, voll und ganz, nah, i, mir, mi, des, rest, der rest, gingen runter, ging runter, "
        "sind runter, gingen rein, gingen weg, war es, warens, in summe, bis ins bett, so weit, "
        "soweit, unverändert, keine änderung, keine veränderung, alles gleich, alles wie gestern, "
        "un, unn, u, warn, wie'n, wie 'n, würde ich mit, würd ich mit, bewerten, bewerte ich mit, "
        "würde ich auf, schätze ich auf, gefallen auf, gesunken auf, gestiegen auf, hoch auf, "
        "ist, bei, war, mein, waren, meine, und, ich, bin, hab, habe, am, von, der, die, das, "
        "insgesamt, heute, heute morgen, heute früh, heut, heut früh, heut morgen, hüt, hatte, "
        "intus, glatt, gefühlt, ne, fühle mich, fühl mich, gefühl, gegessen, sind, es, zeigt, "
        "sagt, mit, dazu, den, grad, stand, check in, checkin, check-in, mich, auf, beim, gerade, "
        "jetzt, wie gestern, so wie gestern, gleich wie gestern, wieder, voller, bisschen voller, "
        "ein bisschen voller, etwas voller, geschafft, drin, alle, nur, plus, sonst nichts, sonst "
        "nix, sonst weiß ich nix, sonst weiß ich nichts, also, immer noch, immer noch ne, würd "
        "mir ne, würde mir ne, würd mir eine, würde mir eine, würd sagen, würde sagen, ich würd "
        "sagen, ich würde sagen, sagen wir, sag ma, sag mal, geb mir ne, gebe mir eine, geben, "
        "gib mir ne, nach klo, nach dem klo, nach toilette, nach der toilette, nach wc, nach "
        "pipi, nach dem pinkeln, nach klogang, nach bad, nüchtern, nackt, ohne kleidung, ohne "
        "klamotten, ohne frühstück, vor dem frühstück, vorm frühstück, auf nüchternen magen, "
        "leerer magen, in unterwäsche, in unterhose, niveau, wert, runter auf, bin auf, bin bei, "
        "morgens, früh, direkt nach dem aufstehen, nach dem aufstehen, vorm kaffee, vor dem "
        "kaffee, würd ich sagen, würde ich sagen, sag ich mal, sagen wir mal, werte, meine werte, "
        "hier meine werte, hier die werte, heutige werte, zahlen, meine zahlen, daten, meine "
        "daten, update, kurzes update, exakt, genau, gut und gerne, auf der hotelwaage, "
        "hotelwaage, hotelwaage sagt, äh, ähm, öh, hm, hmm, runter, rauf, is, isch, a, is a, ist "
        "a, is ne, als gestern, voller als gestern, bissl voller als gestern, bisschen voller als "
        "gestern, bissl voller, weg, runtergekippt, runter gekippt, reingekippt, reinbekommen, "
        "runterbekommen, gepackt, gezischt, gesoffen, weggetrunken, ausgetrunken, getrunken "
        "gestern, hab ich, habe ich, wars, war's, waren's, wieg ich, wiege ich, ich wiege, "
        "aktuell, momentan, heit, heute mal, auf der fülleskala, auf der skala, mach ma, mach "
        "mal, machen wir, sagt mein bauch, für die fülle, bei der fülle, mit der fülle, für "
        "fülle, beim wasser, fürs wasser, für wasser, jenau, gsagt, sag i, ich sag, ich sage, ich "
        "würde sagen ne, ich würd sagen ne, tagsüber, übern tag, gestern getrunken, über den "
        "ganzen tag"
    ),
    (Means.TODAY, "", None): ("heute, heut, heute abend, morgen, später, übermorgen"),
    (Means.ABOUT, "", None): (
        "etwa, ungefähr, ungefaehr, circa, ca, zirka, rund, knapp, gut, fast, so um die, um die, "
        "so, vielleicht, so ca, so circa, glaub ich, glaub, glaube ich, glaube, wohl, schätze, "
        "ungef, so etwa, so ungefähr, so rund, zwischen, irgendwo zwischen, irgendwas zwischen, "
        "so zwischen, irgendwo, irgendwo bei, irgendwo um, irgendwo um die, irgendwas, irgendwas "
        "um, irgendwas um die, so bei, ne glatte, eine glatte, glatte, ne gute, eine gute, ne "
        "solide, eine solide, solide, ne starke, eine starke, starke, ne schwache, eine schwache, "
        "ne klare, eine klare, ne saubere, eine saubere, locker, locker ne, so ne, eher ne, eher, "
        "eher so, vielleicht ne, vielleicht eine, glaub ne, gefühlt ne, gefühlt eine, ne, eine, "
        "ca ne, wahrscheinlich, vermutlich, satt, satte, ne satte, eine satte, gute, a gute, a "
        "glatte, a solide, gut und gern, bestimmt, sicher, plusminus, plus minus, so grob, grob, "
        "pi mal daumen, ungefähr so, ganz knapp, ziemlich genau, rund um, mal, ne knappe, knappe, "
        "eine knappe, ne dicke, gefühlt so, gefühlt eher, gefühlsmäßig, gefühlsmäßig ne, würd "
        "sagen ne, würde sagen ne, sagen wir ne, sag mal ne, denke, denk, ich denke, ich denk, "
        "ich schätze, ich glaub, ich glaube, hm, öppe, öpe, öppis um, ungfähr, umra, ca., eher a, an, "
        "eher eine, wenig über, wenig unter, etwas über, etwas unter, knapp über, knapp unter, "
        "leicht über, leicht unter, gut über, bissl über, bissl unter, bisschen über, bisschen "
        "unter"
    ),
    (Means.BOUND, "", None): (
        "über, ueber, unter, mehr als, weniger als, mindestens, höchstens, bis zu, maximal, kaum, "
        "nicht mal, wenigstens"
    ),
    (Means.RANGE, "", None): ("bis, oder"),
    (Means.NOT, "", None): (
        "nicht, ned, net, kein, keine, keinen, keiner, nie, ohne, nix, nichts, nein, weder, noch"
    ),
    (Means.OTHERWISE, "", None): (
        "sollte, soll, sollen, will, wollte, möchte, würde, könnte, kann, darf, ziel, "
        "zielgewicht, plan, geplant, limit, wenn, falls, normalerweise, sonst, vorher, nachher, "
        "als, letzte woche, letztes mal, letztes jahr, brauche, muss, wäre, hätte, wunschgewicht, "
        "grenze, mutter, freundin, freund, schwester, bruder, mann, frau, sohn, tochter, kind, "
        "hund, katze, abgenommen, zugenommen, weitere, noch, noch offen, offen, übrig, zu wenig, "
        "zuwenig, fehlen, fehlt noch, vorgabe, soll wert, sollwert"
    ),
    (Means.OTHER_DAY, "", None): (
        "ges, gest, vortag, am vortag, gestern, vorgestern, letzte nacht, montag, dienstag, "
        "mittwoch, donnerstag, freitag, samstag, sonntag, gestern abend, abends, am abend, "
        "mittags, nachmittags, vorm schlafen, vor dem schlafen"
    ),
    (Means.COUNTS_NOT, "", None): (
        "aber, weil, sehr, echt, ziemlich, ganz, etwas, bisschen, ein bisschen, schlecht, "
        "schwindelig, müde, muede, hungrig, durstig, gebläht, aufgebläht, kaputt, erschöpft, "
        "leider, auch, nicht, kein, keine, fühle, fühl, trotzdem, immer, kopfschmerzen, krämpfe, "
        "mir, trainiert, übel, wegen, trotz, nach, dank, danach, davor, denn, lol, haha, hihi, "
        "obwohl, seit, oder so, echt jetzt, laut, trotz des, wegen dem, wegen der, glaub ich, "
        "finde ich, find ich, nachm, vorm, wie immer, wie sonst, wie üblich, wie so oft, wie "
        "jeden tag, über den tag, über den tag verteilt, verteilt, geworden, bis abends, bis zum "
        "abend, statt, anstatt, muskelkater, posing, beine, rücken, bauch, magen, haut, laune, "
        "stimmung, pump, hunger, durst, energie, nerven, aufregung, bin, wadenkrampf, verdauung, "
        "stuhlgang, schlecht geschlafen, gut geschlafen, nervös, aufgeregt, motiviert, platt wie, "
        "heute frei, heute training, heute posing, lief, läuft, puls, blähbauch, füße"
    ),
    (Means.FINE, "", None): (
        "alles gut, alles ok, alles okay, alles bestens, alles fein, alles super, alles klar, "
        "alles prima, gut, geht gut, mir gut, geht mir gut, mir geht's gut, mir gehts gut, passt, "
        "alles passt, passt alles, sonst alles gut, sonst gut, bestens, keine beschwerden, sonst "
        "nichts, alles in ordnung, alles top, super, prima, sonst alles ok"
    ),
    (Means.ON_TARGET, "", None): (
        "alles gegessen, alles aufgegessen, hab alles gegessen, habe alles gegessen, im ziel, auf "
        "ziel, nach plan, wie geplant, kh im ziel, kh auf ziel, kh nach plan, kh wie geplant, "
        "ziel getroffen, ziel erreicht, kohlenhydrate nach plan, kohlenhydrate im ziel, "
        "kohlenhydrate wie geplant, carbs im ziel, carbs nach plan, carbs wie geplant, kh "
        "erreicht, kh ziel erreicht, kh getroffen, ziel ja, zil ja, am ziel"
    ),
    (Means.OFF_TARGET, "", None): (
        "ziel verfehlt, kh verfehlt, ziel nicht erreicht, kh nicht erreicht, kh ziel verfehlt, "
        "nicht alles gegessen, hab nicht alles gegessen, über ziel, unter ziel, über dem ziel, "
        "unter dem ziel"
    ),
    (Means.YES, "", None): ("ja, jep, jo, jawohl"),
    (Means.NO, "", None): ("nein, nee, nö"),
    (Means.CORRECTS, "", None): (
        "nein, nee, nö, quatsch, ich meine, ich meinte, korrektur, vielmehr, besser gesagt, ne, "
        "ups, nein quatsch, nein sorry, sorry nein, nein warte, halt nein, moment, äh, ähm, öh, "
        "hm, hmm, meinte, edit, ich meinte natürlich, sollte heißen, sollte sein, falsch gelesen, "
        "verlesen, eigentlich, soll heißen, richtig ist, richtig wäre, korrigiere, tippfehler, "
        "ach nee, ach was, ah na, vertippt, verschrieben, ach nein, ach ne, äh nein, äh ne, "
        "nee warte, stopp, nimm, nehmen "
        "wir, ich nehm, ich nehme, nehme, nehm, sorry, sry, halt, besser, stimmt nicht, quatsch "
        "nein, nein doch, doch, ah ne, ah nein, äh sorry, äh quatsch, bzw, beziehungsweise, "
        "lieber, pardon, verzeihung, entschuldigung, nee eher, ne eher, nein eher, ne ne, nä"
    ),
    (Means.VESSEL, "", None): (
        "glas, gläser, glaeser, gläser wasser, becher, tassen, flasche, flaschen, krüge, flaschen "
        "wasser, große gläser, pullen, bidons, shaker, humpen, krug, buddeln, halbliterflaschen, "
        "trinkflaschen, trinkflasche, pulle, kannen, kanne, maß"
    ),
    (Means.EATEN, "", None): ("gegessen, aß, ass, plus, dazu, extra, gefuttert"),
    (Means.SKIP, "", None): (
        "überspringen, ueberspringen, übersprungen, auslassen, weglassen, weiß nicht, weiss "
        "nicht, weiß ich nicht, weiss ich nicht, keine ahnung, unbekannt, fehlt, nicht gemessen, "
        "hab ich nicht, habe ich nicht, hab ich keins, nicht gezählt, nicht getrackt, nicht "
        "notiert, kenne ich nicht, kenn ich nicht, weiß ich nicht mehr, weiß nimmer, woas i ned, "
        "vergessen, keine angabe"
    ),
    (Means.LATER, "", None): (
        "später, folgt, folgt später, folgt noch, kommt noch, kommt später, kommt gleich, reich "
        "ich nach, reiche ich nach, noch nicht, gleich, nachher"
    ),
    (Means.SKIP, "weight_kg", None): (
        "keine waage, keine waage heute, keine waage da, keine waage dabei, ohne waage, heute "
        "keine waage, waage kaputt, waage ist kaputt, die waage ist kaputt, waage defekt, waage "
        "geht nicht, nicht gewogen, mich nicht gewogen, kein gewicht, kein gewicht heute, konnte "
        "mich nicht wiegen, konnte nicht wiegen, nicht wiegen können, gewicht vergessen, wiegen "
        "vergessen, vergessen zu wiegen, vergessen mich zu wiegen, hab vergessen mich zu wiegen, "
        "hab vergessn mich zu wiegen, vergessn mich zu wiegen, waage vergessen, hab keine waage, "
        "habe keine waage, waage leer, waage streikt, waage tot, hab mich nicht gewogen, habe "
        "mich nicht gewogen, hatte keine waage, waage funktioniert nicht, hab keine waage hier, "
        "hier keine waage, waage im koffer, waage steht daheim, waage steht zuhause, waage steht "
        "zu hause, heute nicht gewogen, nicht gewogen heute, kein wiegen, kein wiegen heute, "
        "waage nicht da, waage zuhause, waage zu hause, waage daheim"
    ),
    (Means.SKIP, "water_l", None): (
        "keine ahnung wie viel ich getrunken habe, keine ahnung was ich getrunken habe, weiß "
        "nicht wie viel ich getrunken habe, weiß nicht was ich getrunken habe, wasser nicht "
        "gemessen, wasser nicht gezählt, trinken nicht gezählt, trinkmenge unbekannt, weiß nicht "
        "mehr wie viel ich getrunken habe, nicht gezählt was ich getrunken habe, wasser vergessen "
        "zu zählen, vergessen wasser zu zählen, wasser vergessen, trinken vergessen zu zählen"
    ),
    (Means.SKIP, "fullness", None): (
        "keine fülle, kein gefühl für die fülle, kein gefühl für fülle, fülle ned gschaut, fülle "
        "nicht geschaut"
    ),
    (Means.SKIP, "sharpness", None): ("keine definition, kein spiegel"),
    (Means.SKIP, "carb_eaten_g", None): (
        "kh nicht gezählt, nicht getrackt, kh nicht getrackt, kohlenhydrate nicht gezählt, nicht "
        "mitgezählt, kh weiß ich nicht"
    ),
    (Means.TRAINING, "as-planned", None): (
        "training wie geplant, trainiert, training gemacht, training nach plan, training "
        "erledigt, wie geplant trainiert, einheit gemacht, training war wie geplant, training ok, "
        "training ja, training und cardio gemacht, cardio gemacht, training absolviert, training "
        "passt, einheit erledigt, nach plan trainiert, training durchgezogen, cardio erledigt"
    ),
    (Means.TRAINING, "less", None): (
        "weniger trainiert, weniger training, training kürzer, kürzer trainiert, training "
        "verkürzt, cardio ausgelassen, kein cardio, ohne cardio, cardio ausgefallen, cardio nicht "
        "gemacht, training abgebrochen, halbes training, nur halbes training, cardio geschwänzt, "
        "weniger cardio, cardio weggelassen, nur die hälfte trainiert"
    ),
    (Means.TRAINING, "more", None): (
        "mehr trainiert, mehr training, länger trainiert, extra training, extra cardio, "
        "zusätzliches training, mehr cardio, zusätzliches cardio, extra einheit, doppelt "
        "trainiert, training länger"
    ),
    (Means.TRAINING, "none", None): (
        "kein training, training ausgefallen, nicht trainiert, training ausgelassen, training "
        "fiel aus, training ist ausgefallen, kein gym, nicht im gym, keine einheit, gar nicht "
        "trainiert, training nicht gemacht, training nein, training geschwänzt, training "
        "weggelassen, hab nicht trainiert, habe nicht trainiert, training versäumt, training "
        "verpasst, nicht beim training, kein sport"
    ),
    (Means.SAME, "fullness", None): (
        "fülle wie gestern, gleich voll wie gestern, genauso voll wie gestern, fülle gleich, "
        "fülle unverändert, gleiche fülle, gleiche fülle wie gestern, so voll wie gestern, voll "
        "wie gestern"
    ),
    (Means.SAME, "water_before_l", None): (
        "wasser gleich, wasser wie gestern, gleich viel wasser, wasser gleich wie gestern, wasser "
        "unverändert, getrunken wie gestern, gleich viel getrunken, gleich viel getrunken wie "
        "gestern"
    ),
    (Means.SAME, "water_l", None): (
        "wasser wie geplant, wasser nach plan, wasser im ziel, wasser auf ziel, wasserziel "
        "erreicht, wasser erreicht, wasser komplett, getrunken wie geplant, trinkmenge erreicht, "
        "trinkziel erreicht, wasser passt, trinkmenge wie geplant, trinkmenge nach plan, wasser "
        "alles getrunken, wasser alles geschafft, ganzes wasser getrunken"
    ),
    (Means.SAME, "weight_kg", None): (
        "des selbe gwicht wia gestern, s gleiche gwicht, gleichs gwicht, des gleiche gwicht, des "
        "gleiche gwicht wia gestern, gwicht gleich, gwicht wia gestern, gleichs gwicht wia "
        "gestern, gewicht wie gestern, gleiches gewicht, gleiches gewicht wie gestern, gewicht "
        "gleich, gewicht gleich wie gestern, gewicht unverändert, selbes gewicht, selbes gewicht "
        "wie gestern, gewicht ist gleich, gewicht gleich geblieben, gewicht ist gleich geblieben, "
        "gewicht so wie gestern, gewicht ist wie gestern, gewicht das gleiche, gewicht das "
        "gleiche wie gestern, dasselbe gewicht, das gleiche gewicht, dasselbe gewicht wie "
        "gestern, das gleiche gewicht wie gestern, waage wie gestern, waage sagt das gleiche, "
        "waage unverändert, gewicht hat sich nicht verändert, gwicht wie gestern, kilo wie "
        "gestern, kg wie gestern, gewicht hat sich nicht bewegt, gewicht hat sich null bewegt, "
        "gewicht hat sich nicht geändert, gewicht hat sich nix getan, gewicht hat sich nicht "
        "getan, gewicht stabil, waage hat sich nicht bewegt, waage hat sich nicht gerührt, keine "
        "änderung beim gewicht, keine veränderung beim gewicht, gewicht keine änderung, gewicht "
        "keine veränderung, gewicht bleibt gleich, wiege wie gestern, wiege gleich viel wie "
        "gestern, wiege das gleiche, wiege das gleiche wie gestern, wiege dasselbe wie gestern, "
        "kilos wie gestern, kilo gleich"
    ),
    (Means.MANNERS, "", None): (
        "danke, dankeschön, merci, guten morgen, morgen, moin, servus, hallo, lg, vg, hey, coach, "
        "hi, grüße, gruß, liebe grüße, bitte, guten tag, morgen coach, na"
    ),
}
