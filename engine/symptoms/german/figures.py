"""Where German words of a complaint are said of other things, or have an everyday cause."""

# ruff: noqa: E501 - a pattern stays on one line
from __future__ import annotations

from engine.symptoms.english.figures import MISREADING
from engine.symptoms.german.spelling import folded
from engine.symptoms.names import Symptom
from engine.written.late import Late

# Said of other things: taken out of the text before anything is looked for.
GERMAN_FIGURES = (
    MISREADING,
    *(
        Late(rf"\b(?:{folded(pattern)})\b")
        for pattern in (
            r"(?:uhr|tracker|ring|armband)(?: [\w']+){0,3} \d{3}(?: bpm)?(?: [\w']+| ,){0,10} (?:brustgurt|von hand|gezählt)(?: [\w']+){0,3} [4-8]\d(?!\d)|(?:uhr|tracker|ring|armband)(?: [\w']+){0,3} \d{3}(?: bpm)? (?:auf|beim|im|während)(?: dem| der)? (?:rad|ergometer|laufband|stepper|cardio|laufen|training)(?: [\w']+| ,){0,8} brustgurt(?: [\w']+){0,3} 1[0-5]\d(?!\d)",
            r"(?:(?:sorry|ich|hab|habe|heute|morgen)(?: ,)? )*verschlafen(?: ,)? wieg(?:e)? mich(?: (?:gleich|jetzt|nachher|später))?",
            r"(?:typ|mann|kerl|frau|mädel) neben mir (?:sieht|sah)(?: [\w']+){0,7} doppelt",
            r"(?:von|von ganzem|mit ganzem|aus tiefstem|aus ganzem|schweren|leichten) herze?n?s?|ans? herz (?:gelegt|gewachsen)|am herzen (?:liegt|gelegen)|liegt mir am herzen|ins herz geschlossen|vom herzen(?: gefallen)?",
            r"herz (?:und seele|ist voll|geht auf|aufgegangen|gebrochen|dabei|am rechten fleck|lacht|blutet)|mein herz (?:schlägt für|gehört|lacht|hüpft)|herz schlägt (?:für|höher)|herzlich\w*|herzblut",
            r"(?:herzfrequenz|puls)(?: (?:war|ist|ging|lag|auf|bei|von|um|bis|max|unter|zwischen|\d+)){0,6} (?:beim|im|während|nach dem|auf dem|am) (?:cardio|training|laufband|stepper|fahrrad|rad|laufen|hiit|posing|crosstrainer|ergometer|berg|joggen|finisher|intervall\w*|sprint\w*)|herzfrequenz ?zone|(?:ruhepuls|puls)(?: (?:ist|war|von|bei|um|liegt|heute|lag|morgens))* [3-8]\d(?!\d)",
            r"brust (?:training|tag|übung\w*|einheit|session|presse|muskel\w*|straps|gurt|sieht|ist (?:voll|prall|flach|rund|da|gut)|kommt|wirkt|streifen|haare|fliegende)|brust(?:training|tag|muskel\w*|presse|gurt)",
            r"(?:schwache?[nrs]?) (?:punkt\w*|stelle\w*|körperpartie\w*|partie\w*|muskelgruppe\w*|leistung|moment\w*|ausrede\w*|kaffee|tee|signal|netz|wlan|trost|feld|lineup|pump|form|seite\w*|tag)|schwach (?:besetzt|angefangen)|nur nicht schwach werden|schwach geworden bei|werde(?: ich)? schwach bei|mein schwachpunkt",
            r"schwächen? (?:von mir|auf der bühne|ausgleich\w*|ausmerzen|im posing)|(?:meine|größte) (?:schwäche|schwächen) (?:ist|sind|beim|war)|schwäche für",
            r"(?:das|es|alles|echt|ist|einfach) (?:ist |alles |nur |doch |so )*zum (?:kotzen|brechen|schreien)|zum kotzen dass|kotzt (?:mich|mir)(?: [\w']+){0,3} an|angekotzt|ankotz\w*|auskotzen|(?:ich )?kotze (?:mich )?(?:gleich )?(?:ab|aus)",
            r"(?:verwirrt|verwirrung)(?: [\w']+){1,4} (?:plan|plans|plänen|app|bot|makros?|kohlenhydrate\w*|carbs|zahlen|etikett\w*|anweisung\w*|posing|kategorien?|natrium|vorgaben?|nachrichten?|ballaststoffe\w*|zeiten)|verwirrt (?:mich|ob|welche\w*|wie viel)|mich verwirrt (?:der|die|das)|verwirrend\w*",
            r"(?:einkauf|unterlagen|paket|formular|geld|schlüssel|plan|staffel|bericht|daten|pokal|medaille)(?: [\w']+){0,2} übergeben|übergeben (?:worden|bekommen)",
            r"kopf (?:hoch|frei|aus|an|in den sand|zerbrochen|zerbreche|gewaschen|verdreht)|(?:mach\w*|bereite\w*|kriege|bekomme) (?:mir |ich )?(?:\w+ )?kopfschmerzen (?:wegen|der plan|die planung)|(?:plan|planung|steuer|orga|finanzen|anreise)(?: [\w']+){0,2} (?:macht|bereitet|machen|bereiten) mir kopfschmerzen|kopfzerbrechen|aus dem kopf|im kopf behalten|kopfsache",
            r"umgehauen|hat mich (?:fast )?umgeworfen|vom hocker|umgefallen vor lachen|(?:flasche|shaker|waage|pflanze|glas|baum|fahrrad|hantel|stange)(?: [\w']+){0,2} (?:umgefallen|umgekippt)|(?:stimmung|wetter|milch|laune|magnesium|kanu|boot)(?: [\w']+){0,2} (?:umgekippt|kippt)",
            r"(?:server|app|internet|netz|website|kartenhaus)(?: [\w']+){0,3} (?:zusammengebrochen|zusammengekracht|kollabiert)",
            r"atemberaubend\w*|atempause|atemübung\w*|luft nach oben|frische luft|heisse luft|luft rauslassen|dicke luft|an der luft|heissluft\w*|keine luft (?:im|in) (?:reifen|ball)|luft anhalten",
            r"schwarz (?:auf weiss|gesehen|fahren|ärgern)|schwarzer (?:kaffee|tee)|kaffee schwarz",
            r"(?:wie|völlig|total|echt)? ?gelähmt vor (?:angst|schreck|aufregung)|lahme\w? (?:ausrede\w*|ente|show)|lahm(?:es|er|e)? (?:internet|netz|training|workout|session)",
            r"ohnmächtig vor (?:wut|glück|freude)|vor lachen(?: [\w']+){0,2} (?:umgefallen|zusammengebrochen)|vor (?:lachen|glück|freude|hunger|langeweile|lust|sehnsucht|angst)(?: [\w']+){0,2} (?:sterben|gestorben)|(?:sterbe|sterben|gestorben) (?:vor|für|fast vor|nach)(?: [\w']+){0,2}|zum sterben (?:schön|gut|langweilig)|sterbenslangweilig",
            r"(?:hunger|diät|training|beintag|muskelkater|coach|hitze)(?: [\w']+){0,3} (?:bringt|bringst|brachte) mich(?: noch| fast)? um|(?:bringt|bringst) mich (?:noch )?um (?:den|meinen|die|das|der|mit)",
            r"(?:krampfhaft\w*)|lachkrampf|lachanfall\w*|hustenanfall|wutanfall|heulkrampf|heulanfall|putzanfall",
            r"schwindelerregend\w*|schwindel (?:ist |war )?aufgeflogen|(?:das ist|ist doch|ist alles) (?:alles )?schwindel",
            r"(?:hand|hände|arme?|beine?|füsse?) (?:voll|frei|hoch|gehoben|waschen|gewaschen|schütteln)|hand ?schuhe?|dicke beine (?:trainiert|gewünscht)|dicke arme",
            r"dicke (?:oberschenkel|waden)|geschwollene? (?:brust|rede|sprache|muskeln|oberarme|arme vom pump)|anschwellen lassen",
            r"fertig (?:mit|gemacht|gekocht|vorbereitet|gepackt|gegessen|trainiert)|fertig ist|(?:bin|sind|war) fertig(?: mit|,|$)",
            r"fieber\w* (?:auf|dem|der|mit|schon)|lampenfieber|reisefieber|bühnenfieber|wettkampffieber|fiebere|fiebern",
            r"(?:ideen|möglichkeiten|optionen|vorrat) (?:sind )?erschöpft",
            r"zitter ?partie|zitter\w* um|zitter\w* vor (?:lauter )?(?:vorfreude|freude|aufregung|kälte|glück|spannung|stolz|lachen|erleichterung)|vor (?:lauter )?(?:vorfreude|freude|glück|spannung|stolz|lachen) (?:am |ganz |richtig |schon )?(?:zitter\w*|geheult|geweint|am heulen|am weinen)|dreht sich (?:bei mir |alles |nur |immer ){0,3}ums?|sehe doppelt so",
            r"(?:beine?|arme?)(?: [\w']+){0,3} (?:vom|nach dem|durchs) (?:\w*training|cardio|posing|laufen|gehen) (?:noch )?(?:schwer|müde|platt|zu|fertig)|durcheinander gekommen|riesen ?durcheinander|durcheinander (?:gebracht|gewürfelt|in der küche|im plan|mit den)",
            r"blut (?:abgenommen|abnehmen|bild|werte|test|druck|zucker messen)|blutwerte|blutbild",
            r"(?:rote?|orangene?|dunkle?) (?:paprika|linsen|beete|beeren|schokolade|bräune|farbe|bikini|trauben|bühnenfarbe)",
            r"taube (?:nüsse|nuss|ohren)|(?:graue|weisse) tauben?|tauben füttern",
            r"(?:spaß|aufs|für das|das|mein|unser|ganze|ganzes) leben (?:lang|ist schön|genießen|verändert)|mein leben lang|nicht mehr leben ohne",
            r"tot ?müde|totmüde|tot (?:trainiert|gelaufen|gelacht)|totales?|(?:handy|akku|telefon)(?: [\w']+){0,2} tot",
            r"ende der (?:diät|saison|woche|prep)",
            r"laufen (?:gegangen|gehen|gewesen)|nicht (?:so gut |gut |besonders )?gelaufen",
            r"muskelversagen|bis zum versagen|versagen bei der|(?:app|waage|technik|bremse)(?: [\w']+){0,2} versagt",
            r"(?:fast|beinahe|halben|halb|schier|nen halben) (?:einen |nen |ein )?(?:herzinfarkt|herzkasper|anfall|schlaganfall|herzschlag)|herzkasper|herzinfarkt (?:bekommen|gekriegt|kriegen) (?:als|wegen|bei)|(?:kriege?|bekomme|krieg) (?:ich )?(?:gleich |da |noch )?(?:einen |nen |die )?(?:herzinfarkt|anfall|krise|motten|vogel|schlag|kopfschmerzen)(?= (?:wegen|bei|von|wenn)|$)|hat (?:einen|nen|ihren|mal wieder einen|wieder einen) anfall",
            r"bei der steuer(?: [\w']+){0,3} kopfschmerzen|herz (?:hängt|schlägt|brennt|gehört) (?:an|für|am|dem|der)|herz an (?:platz|dem|der)|suizid ?(?:griff|grip)|selbstmörderisch\w*|mordshunger|bombe\w* form|bombenform",
            r"(?:preis|rechnung|nachricht|ergebnis|form|look|kosten)(?: [\w']+){0,2} (?:umgehauen|umgeworfen|vom hocker gehauen|aus den latschen|erschlagen)|haut mich um|zum umfallen (?:schön|müde)|(?:würde|könnte) (?:ich )?(?:sterben|töten|morden) für|(?:für|um) [\w']+ (?:sterben|töten|morden)|zum sterben",
            r"(?:blut|schweiß|schweiss) (?:und|,) (?:schweiß|schweiss|tränen)|blut geleckt|blutorangen?|blutwurst|blutjung|blutig\w* (?:anfänger|steak)|steak (?:war |ist )?blutig|blutgruppe|blut (?:gespendet|spenden|gerochen)|blutdruck",
            r"binge ?watch\w*|serie(?:n)? (?:gebinged|gesuchtet|durchgebinged)|doppel ?(?:bizeps|biceps|pack|zimmer|stunde|einheit|kinn)|front doppel\w*|doppelt (?:so|gemoppelt|gecheckt|gewogen|gebucht)|doppelte (?:portion|menge)",
            r"(?:saunatuch|saunagutschein|sauna (?:im hotel|ist (?:zu|kaputt|geschlossen))|keine sauna|hotel (?:hat|mit) sauna)|(?:handy|becher|flasche|gewicht|hantel|schlüssel)(?: [\w']+){0,3} (?:gefallen|gestürzt|runtergefallen|hingefallen)|(?:preise?|gewicht|temperatur\w*|kurs\w*) (?:ist |sind )?(?:gefallen|gestürzt|abgestürzt)|ist gefallen (?:auf|um)|gefallen (?:mir|dir|uns|lassen|an)|gefällt (?:mir|dir)|in den schlaf gefallen|ins bett gefallen",
            r"(?:tan|bräune|farbe)(?: [\w']+){0,3} (?:verschwommen|verschmiert|schwarz|dunkel)|linien (?:sind |etwas |leicht )*verschwommen|hasse (?:mein posing|die waage|den wecker|meine schuhe|montage|cardio|hähnchen|diese farbe|meinen bikini)",
            r"(?:umgekippt|umgefallen|ohnmächtig|in ohnmacht|in ohnmacht gefallen|zusammengebrochen|geplatzt|geheult|geweint|ausgeflippt)(?: geworden| gefallen)? vor (?:lauter )?(?:freude|glück|vorfreude|lachen|stolz|rührung|begeisterung)|vor (?:lauter )?(?:freude|glück|vorfreude|lachen|stolz|rührung|begeisterung)(?: [\w']+){0,2} (?:umgekippt|umgefallen|ohnmächtig|in ohnmacht|zusammengebrochen|zusammengeklappt|tränen|umkippen)|freudentränen|tränen(?: [\w']+){0,2} (?:gelacht|vor lachen|vor freude)",
            r"(?:farbe|bräune|tan|tinte|lippenstift|wimperntusche|druck)(?: [\w']+){0,3} (?:blutet\w*|ausgeblutet|ausblutet|verläuft)(?: [\w']+){0,3}? ?(?:aus)?|farbe blutet|heizung(?:en)? entlüften",
            r"(?:kotz|brech|heul|herz|fieber|schwindel|totenkopf)\w* ?(?:emojis?|smileys?|gifs?|sticker|memes?)(?: [\w',]+){0,8}? (?:vomiting|nausea|dizzy|headache)|(?:kotz|brech|heul|herz|fieber|schwindel|totenkopf)\w* ?(?:emojis?|smileys?|gifs?|sticker|memes?)|(?:lol|haha\w*|igitt|bäh|pfui|würg) (?:vomiting|nausea)",
            r"(?:po|glutes|abs|quads|hams\w*|taille|linien|streifen|form|look|definition|beinbizeps|rücken|waden|bauchmuskeln|schultern)(?: [\w']+){0,2} (?:verschwommen\w*|unscharf|verwaschen\w*|wässrig|aufgeschwemmt|schwammig)",
            r"(?:(?<=der )|(?<=die )|(?<=das )|(?<=typ )|(?<=frau ))neben mir",
            r"(?:warm|leicht|schwer) ums herz|hand aufs herz",
            r"(?:dose|box|brotbox|tupper\w*|teller|glas|tasse|schüssel|koffer|tasche|rucksack|brille|karton|tüte|reiskocher|stativ|kamera|ring|uhr)(?: [\w']+){0,4} (?:gefallen|gestürzt|runtergefallen|hingefallen|umgefallen|umgekippt|runtergeflogen|abgestürzt|gerutscht)",
            r"(?:brust|bauch|po|rücken|lats?) (?:\w+ )?(?:gedrückt|angespannt|rausgedrückt|gequetscht|zusammengedrückt)(?: [\w']+){0,2} (?:side chest|seitlich\w*|most muscular|pose|posing|bizepspose)|side chest",
            r"(?:soße|sauce|ketchup|rote bete|marmelade|rotkohl|curry|beeren)(?: [\w']+){0,2} (?:blutet|blutete|ausgeblutet|geblutet)",
            r"(?:pfannkuchen|omelett\w*|souffle|kuchen|teig|schmarrn|waffeln?|wrap|pudding)(?: [\w']+){0,5} (?:kollabiert|zusammengefallen|zusammengebrochen|zusammengeklappt|umgekippt)|(?:sieht|sah|riecht|roch|schmeckt|schmeckte) (?:[\w']+ ){0,3}(?:wie|nach) (?:hund|katzen)?(?:kotze|erbrochenes|erbrochenem)",
            r"(?:horror|zombie|splatter|vampir|grusel)(?: ?film\w*| ?serie\w*| ?streifen| ?schocker)(?: [\w']+){0,2}(?: ,)? (?:(?:viel|jede menge|literweise|überall) )?blut (?:ohne ende|überall|bis|und|literweise|satt)(?: ohne ende)?",
            r"(?:lied|song|songtext|refrain|schlager)(?: [\w']+){0,2} (?:singt|heißt es|geht|sagt|handelt davon)(?: dass)?(?: [\w']+){0,6}",
            r"(?:mein )?herz (?:setzt|setzte|blieb|bleibt|stockte|stand)(?: [\w']+){0,3} (?:als|weil|wie) ich (?:[\w']+ ){0,3}(?:fotos?|bilder|\w*liste|nachricht\w*|mail|name\w*|preise?|rechnung|ergebnis\w*|trailer|pokal|zeitplan|welpen?) (?:[\w']+ ){0,2}(?:gesehen|sah|gelesen|las|gehört|aufgemacht)",
            r"(?:schwirrt|dreht|brummt|raucht|platzt)(?: sich)?(?: mir)?(?: schon)? der kopf (?:vor|von|wegen|bei) (?:lauter |all |allen |den |diesen |so |vielen |deinen )*(?:zahlen|makros|gramm\w*|regeln|infos|listen|terminen|anweisungen|kategorien|nachrichten)|kopf (?:schwirrt|dreht sich|brummt|raucht|platzt)(?: mir)?(?: schon)? (?:vor|von|wegen|bei) (?:lauter |all |allen |den |diesen |so |vielen |deinen )*(?:zahlen|makros|gramm\w*|regeln|infos|listen|terminen|anweisungen|kategorien|nachrichten)",
            r"(?:bei|von|wegen) (?:der|dem|den|diesen|dieser) (?:\w*gebühr\w*|\w*preise?n?|\w*rechnung\w*|\w*kosten|miete)(?: [\w']+){0,3} (?:schlecht|schwindlig|schwindelig|übel|schwarz vor augen)",
            r"(?:liegt|lag|liegen) mir (?:[\w']+ ){0,2}(?:im|auf dem|auf'm|aufm) magen (?:, )?dass(?! (?:[\w']+ ){0,5}(?:gegessen|essen|reis|gefressen))",
            r"(?:letzte[nrs]?|vorletzte[nrs]?) (?:wdh|wiederholung\w*|satz|sätzen?|rep\w*)(?: [\w']+){0,2} (?:arme?|beine?|hände|schultern|oberschenkel)(?: [\w']+){0,2} (?:gezittert|zitterten|gewackelt)|(?:arme?|beine?|hände|schultern|oberschenkel)(?: [\w']+){0,2} (?:bei|in|auf|beim|im) (?:der |den |dem )?(?:letzte[nrs]?|vorletzte[nrs]?) (?:wdh|wiederholung\w*|satz|sätzen?|reps?)(?: [\w']+){0,2} (?:gezittert|gewackelt)",
            r"max(?:imal)?(?: ?puls| hf| hr)?(?: war)? \d{3} (?:im|beim|in den|in dem) (?:\w+ )?(?:intervall\w*|sprint\w*)(?: ,)?(?: (?:im )?(?:schnitt|mittel|durchschnitt) \d+)?",
            r"für (?:[\w']+ ){1,4}würde? ich (?:[\w']+ )?(?:töten|morden)",
            r"(?<!nicht )(?<!kaum )(?<!wenig )(?<!ganz )(?<!komplett )(?<!völlig )(?<!wieder )(?<!richtig )(?:wieder )?(?:ganz |komplett |völlig |gut )?abgeschwollen",
            r"knie ?beugen?|knie ?bandage\w*|hand ?gelenk ?bandagen",
            r"(?<![a-z] )(?:nie im leben|im leben nicht)(?= ?$)",
            r"(?:schlaganfall|anfalls?|krampf|herzinfarkt|schwindel|migräne|kopfschmerz|beschwerde) ?frei",
            r"herzklopfen (?:vor|wegen|bei)(?: [\w']+){0,2} (?:vorfreude|freude|glück|aufregung|kampfrichter\w*|typen?|kerl|mädel|date|verliebtheit)|so (?:ein|a|n) herzklopfen(?: [\w']+){0,2} (?:vorfreude|freude)",
            r"schwindel bei (?:der|dem|den) (?:größe|gewicht|klasse|angabe\w*|alter|preis\w*|zutaten|anmeldung)|(?:den|der|diesen|dieser|reiner|alles|purer|großer) schwindel (?:durchschaut|aufgedeckt|bemerkt|fliegt auf|flog auf|mit den|mit dem|um)|(?:\w*pulver|\w*shake|\w*tee|werbung|diät|supplement\w*|zeug|etikett)(?: [\w']+){0,5} schwindel|für schwindel(?: [\w']+){0,5} strafe",
            r"(?:flugzeuge|schmetterlinge|hummeln|ameisen)(?: (?:im|in meinem|in)) (?:bauch|hintern|arsch)|heiß wie frittenfett|heiß auf (?:samstag|sonntag|die bühne|die show|den wettkampf)",
            r"außer atem vor(?: lauter)? (?:lachen|freude)|umgefallen ist nur(?: [\w']+){1,3}|reissack umgefallen",
            r"(?:stück|lied|song|film|buch|serie|musik|kür)(?: [\w']+){0,2} (?:heißt|namens|titel) (?:ohnmacht|atemlos|herzrasen|herzschlag|blackout|fieber|schwindel)|(?:musik|lied|song)(?: [\w']+){0,3} (?:atemlos|herzrasen|fieber|blackout)|atemlos durch die nacht",
            r"werd(?:e)? (?:ich )?(?:immer )?schwach (?:beim|bei der|bei den|bei dem|bei|wenn)(?: [\w']+){0,3} (?:bäcker\w*|schoko\w*|kuchen|pizza|eis|süß\w*|brot|duft|geruch|kaffee|croissant\w*)|werd(?:e)? (?:ich )?schwach beim bäcker",
            r"(?:ich )?könnte? kotzen (?:schon wieder|wegen|bei|wenn ich|immer)(?: [\w']+){0,4}",
            r"lieg(?:e)?(?: [\w']+){0,4} seitenlage als (?:opfer|übung\w*)|(?:spiel|spiele|mime) (?:den |die |das )?(?:verletzte\w*|opfer|bewusstlose\w*|ohnmächtige\w*)",
            r"(?:tauben?|kuckuck|amsel|hahn) (?:auf dem|aufm|vorm|vor dem|am) (?:balkon|fenster|dach)",
            r"verwirrt (?:doch |echt |total |ja |auch |nur )*(?:alle|jeden|einen|die leute|jede und jeden)",
            r"(?:nennt|nennen|hält|halten|schimpft) mich (?:immer |schon |alle )?(?:für )?(?:\w+ )?(?:lebensmüde|verrückt|wahnsinnig|irre|bekloppt)",
            r"(?:nur |kurz |bisschen |bissl |minimal |leicht |etwas |a bissl )+geblutet(?: ,| und)?(?: [\w']+){0,3} pflaster(?: [\w']+){0,4}",
            r"(?:aufgedunsen|geschwollen|dick|prall) (?:vom|nach dem|durch den|dank) (?:pump|training|pumpen)",
            r"(?:ich )?kotz(?:e)? (?:gleich |bald |echt )?(?:,? ?)?wenn ich (?:noch (?:ein ?mal|mal|ein)|das|den|die|nochmal)(?: [\w']+){0,6}",
            r"herz (?:macht|tut) (?:was (?:es|s) soll|keine zicken|brav mit)|luft krieg(?:e)? ich (?:wunderbar|gut|super|bestens|genug|prima|einwandfrei)",
            r"(?:abfluss|waschbecken|spüle|dusche|rohr|klo|toilette|wc)(?:(?! (?:ich|mir|mein))(?: [\w']+)){0,3} (?:verstopft|übergelaufen)",
            r"(?:beine?|arme?|füße?|knie) (?:vom|von der|von dem|von einem|des|am|unserer|unseres) (?:\w*tisch\w*|\w*stuhl\w*|\w*stativ\w*|\w*bett\w*|\w*bank|\w*sofa\w*|couch|zelt\w*|\w*liege|grill\w*)(?: [\w']+){0,4}",
            r"(?:waden?|arme?|beine?|schultern?|brust|rücken|bizeps|trizeps) (?:will|wollen) (?:einfach |partout |halt )?(?:nicht|ned|net) (?:wachsen|kommen|größer werden|mitziehen|aufholen)",
            r"rückwärts (?:kann|könnte|kenne|aufsage|singe|einpark\w*|zähl\w*|laufe|gelaufen|aufsagen|singen|gehen)",
            r"verstopfung(?: ,| also| zwar)* (?:im|in der|in dem|vom) (?:abfluss|rohr|waschbecken|siphon|küche|dusche|leitung|spüle)",
            r"(?:ich |hab |habe |hatte |mich |nur )*verzählt|aufgehört (?:mit)?zu ?(?:mit)?zählen",
        )
    ),
)

# Where the same words have an everyday cause, they are doubtful, not sure.
GERMAN_EVERYDAY = {
    symptom: Late(rf"\b(?:{folded(words)})\b")
    for symptom, words in {
        Symptom.CHEST_PAIN: r"bankdrück\w*|drück\w*tag|fliegende|dips|liegestütz\w*|muskelkater|training|trainiert|einheit|gym|studio|pump|workout|maschine|brusttraining|brusttag",
        Symptom.BREATHLESSNESS: r"cardio|treppen?|hiit|sprint\w*|laufen|gelaufen|laufband|stepper|fahrrad|rad|posing|posen|kleid|korsett|einheit|training|berg|stairmaster|joggen",
        Symptom.PALPITATIONS: r"cardio|hiit|sprint\w*|aufgeregt|aufregung|nervös\w*|nervosität|verliebt|bühne|laufband|laufen|kaffee|koffein|fahrrad|einheit|training|vorfreude|stepper|booster",
        Symptom.FAINTING: r"eingeschlafen|schlaf|schlafen|sofa|couch|bett|ins bett|müde|kissen|fernseher|lachen|uhr|stehend k o|feierabend|tränen",
        Symptom.LIMB_WEAKNESS: r"beintag|beintraining|kniebeugen?|training|trainiert|einheit|workout|gym|studio|ausfallschritte|cardio|muskelkater|wirken|wirkt|aussehen|sehen(?! ich)|kreuzheben|nach beinen|vergleich|bühne|stepper|laufband|satz|sätze|wiederholungen",
        Symptom.SEIZURE: r"lach\w*|wade\w*|rücken|hüfte|knie|auge|augenlid|lid|muskel|muskeln|einschlafen|als er|als sie|coach",
        Symptom.CONFUSION: r"plan|app|makros|kohlenhydrate|carbs|posing|anweisung\w*|zeiten",
        Symptom.SLEEPLESS: r"aufgeregt|spät|morgen geht|vorfreude",
    }.items()
}
