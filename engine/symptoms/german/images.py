"""The images in which people tell the warnings in German."""

from __future__ import annotations

from engine.symptoms.german.warnings import german_table
from engine.symptoms.names import Symptom
from engine.symptoms.patterns import Phrase

# ruff: noqa: E501 - a pattern stays on one line


GERMAN_IMAGES: tuple[Phrase, ...] = (
    *german_table(
        Symptom.CHEST_PAIN,
        "brust herz rippen kiefer arm beklemm schulte",
        sure=r"""
        (?:elefant|zentner\w*|ziegel\w*|gürtel|schraubstock|klammer|amboss|felsbrocken|felsen|panzer|lkw|tonne|tonnen|korsett|beton|messer|dolch|eisenring|ring)<4>(?:auf|um|in|an|durch)<2>(?:brust|brustkorb|rippen|herz)
        (?:brust|brustkorb|rippen)<4>(?:zugeschnürt|schraubstock|zusammengedrückt|zusammengequetscht|zerquetscht|eingeklemmt|eingeschnürt|elefant|ziegel\w*|zerreisst|verkrampft|brennt|feuer|beklemm\w*)
        (?:sitzt|steht|kniet|trampelt|lastet|liegt|drückt|presst|quetscht|schnürt|sticht|bohrt)<5>(?:auf|in|um)<2>(?:brust|brustkorb|herz)
        beklemmung\w*|beklemmend\w*<3>brust|kiefer<5>(?:arm|brust|schulter)|(?:zieht|strahlt|schmerz\w*)<5>(?:linken arm|kiefer|linke schulter)
        """,
    ),
    *german_table(
        Symptom.PALPITATIONS,
        "herz brust rippen pump puls hals",
        sure=r"""
        (?:vogel|vögel|fisch|schmetterling\w*|frosch|trommel\w*|presslufthammer|motor|maus|hase|kaninchen|tier|hummel|kolibri|dampfhammer|specht|pferd\w*|bass)<4>(?:in|unter|hinter|gegen)<2>(?:brust|rippen|brustkorb|hals|herz)
        herz<4>(?:stolper\w*|purzel\w*|hüpft\w*|hüpfer|gehüpft|zappel\w*|zappelt|zittert|bebt|rattert|trommelt|wummert|bollert|hopst|ratter\w*|poltert|bubbert|flattert|hoppelt|taktlos|takt|rhythmus|überschlägt|purzelbäume|saltos?|davon|abgehauen|durchgeht|geht durch|dreht durch|durch die decke|aus der brust|bis (?:zum|in den) hals|in den ohren|wie (?:ein|eine|nen|n) (?:\w+ )?(?:trommel|maschine|motor|presslufthammer|vogel|fisch|hammer|kolibri|pferd|hase)|rumpelt|schlägt purzelbäume|rennt|sprintet|bleibt stehen|setzt aus|aussetzer|vibriert|spielt verrückt)
        (?:wummert|trommelt|pocht|flattert|hämmert|zappelt|klopft|bollert|hüpft|stolpert|poltert)<4>(?:in|unter|hinter|gegen)<2>(?:brust|rippen|brustkorb)
        (?:spüre|höre|fühle|merke)<3>(?:puls|herzschlag|herz)<4>(?:ohren|hals|kopf|überall|matratze|bett|kissen|schläfen|fingerspitzen)
        pumpe<2>(?:spinnt|stolpert|rast|macht|setzt)
        """,
    ),
    *german_table(
        Symptom.FAINTING,
        "grau schwarz dunkel boden fliesen tunnel vorhang lichter licht sekunden teppich asphalt decke flimmer weg bewusst kreislauf ausgeknockt latschen sternchen aufsteh lag liege aufgefang wachgerut lampe gratsch umgefal badvorl erinner zappend fehlen abgekla duster aufgeho hochgeh wangen sobald aufgest rasen stecker umgekna beinahe hochkom schalte dazwisc treppe zusamme verblas umgehau zugegan moment weiss entfern stuhl verschw sacke gleich enger plotzli fehlt hingefa klappe dahin fast danach",
        sure=r"""
        (?:lag|liege|lagen)<2>(?:ich|da|plötzlich)<4>(?:im flur|am boden|auf dem boden|im bad|in der küche|in der dusche|im treppenhaus|auf der strasse|auf den fliesen|da|unten)(?! (?:gemütlich|entspannt))|(?:dann|plötzlich|danach|und)<2>(?:lag|war) ich<3>(?:im flur|am boden|auf dem boden|im bad|in der küche|in der dusche|da unten|weg)
        (?:mich|mir)<4>(?:aufgefangen|aufgehoben|hochgehoben|wachgerüttelt|aufgeweckt am boden|auf die wangen)|(?:weiss|weis|erinner\w*|erinnerung)<4>(?:nicht|nichts|nix|keine)<4>(?:sturz|gefallen|hingefallen|umgefallen|dahin gekommen|auf den boden|zwischendrin|dazwischen)
        boden<3>(?:kam|kommt|raste|sprang|flog|schlug|entgegen)<3>(?:entgegen|hoch|näher|auf mich)|boden<3>entgegen
        (?:aufgewacht|wach geworden|zu mir gekommen|zu mir|wieder da|aufgekommen|wachte|kam)<5>(?:auf|am)<2>(?:boden|fliesen|teppich|asphalt|badvorleger|badezimmerboden|küchenboden|rasen|treppe)
        (?:auf|am|neben)<2>(?:boden|fliesen|teppich|asphalt|badvorleger|badezimmerboden|küchenboden|rasen|treppe)<4>(?:aufgewacht|wach geworden|zu mir gekommen|wiedergefunden|gelegen|gefunden|zu mir|aufgekommen)
        (?:lag|liege|fand mich)<5>(?:am|auf dem|auf den|auf der)<1>(?:boden|fliesen|teppich|asphalt|badvorleger|badezimmerboden|küchenboden|treppe)(?! (?:und (?:lese|schaue|dehne|entspann)|zum|yoga))
        (?:bin|war|hat)<4>(?:weggeklappt|weggedriftet|ausgeknockt|weggepennt im stehen|umgeknallt|umgehauen im bad|umgefallen|zusammengeklappt|weggekippt|vom stuhl gekippt)
        (?:klappe?|kipp\w*|sacke?|fall\w*)<5>(?:zusammen|weg|um)<1>(?:wenn|sobald|beim|als)
        """,
        doubtful=r"""
        (?:lichter|licht|lampen?)<3>(?:aus|ausgegangen|ausgeknipst|weg)|(?:gehen|gingen|ging|geht)<4>(?:die )?(?:lichter|licht|lampen?)<2>aus
        (?:alles|sicht|blick|blickfeld|welt|raum|mir|zimmer|augen)<4>(?:grau|schwarz|dunkel|weiss|zappenduster|duster)(?! (?:gekleidet|angezogen|lackiert|auf weiss))<1>(?:geworden|vor|um|war|wurde|und|als|beim|sobald|wenn|,|$)
        (?:wurde|wird|ist|ward|war)<4>(?:grau|schwarz|dunkel)<2>(?:vor|um|augen|mich)
        (?:blick\w*|sicht|augen|sehen|welt|alles|umgebung)<4>(?:tunnel|eng|enger|verschwamm|verschwand|verblasst\w*|entfernt\w*|weit weg|zugegangen)|tunnel<2>(?:vor|augen|blick)
        vorhang<4>(?:augen|zu|gefallen|runter)|licht\w*<2>(?:aus|ausgegangen)<1>(?:bei mir|gewesen|gegangen|$)|(?:jemand|einer)<3>(?:licht|stecker|schalter)<3>(?:aus|gezogen|umgelegt)
        (?:sekunden|minuten|moment)<3>(?:fehlen|fehlt|weg|verloren)|fehlen mir<3>(?:sekunden|minuten)
        (?:gleich|fast|beinahe)<3>(?:weg|hin|um|umgefallen|abgeklappt|weggetreten)
        kreislauf<3>(?:verabschiedet|weg|ade|abgeschmiert|abgesackt|im keller|zusammen)|(?:macht|machte)<3>die grätsche
        (?:sternchen|sterne|schwarz|punkte)<5>(?:aufsteh\w*|aufgestanden|hochkomm\w*)|(?:aufsteh\w*|aufgestanden)<6>(?:schwarz|sternchen|sterne|dunkel)
        """,
    ),
    *german_table(
        Symptom.BREATHLESSNESS,
        "luft atem atm lunge ertrink erstick strohhalm sauerstoff schnapp satz kehle puste erwurg keuch hals schnauf",
        sure=r"""
        strohhalm<3>(?:atm\w*|luft)|luft ?not|luft<4>(?:wegblieb\w*|wegbleibt|weggeblieben|ausgeht|ausging|wegbleib\w*|fehlt\w*)|(?:stehen ?bleiben|stehenbleiben|stehengeblieben|pause|hinsetzen)<6>(?:luft|atem|puste)|(?:luft|atem|puste)<6>(?:stehen ?bleiben|stehenbleiben|pause machen|hinsetzen)
        (?:kriege?|bekomme|krieg|hole?|kommt)<3>(?:kaum|nicht genug|zu wenig|keine|schlecht)<3>(?:luft|sauerstoff)
        (?:atm\w*|luft)<4>(?:strohhalm|nasses tuch|kissen|decke|watte|schlamm|plastiktüte|schwamm)
        lunge\w*<4>(?:nicht|halb|voll wasser|wasser|füllt|füllen|zu|geschrumpft|zugeschnürt|brennt in ruhe|papiertüte|klein)
        luft<4>(?:kommt nicht|geht nicht|reicht nicht|nicht (?:rein|an|unten|durch)|dünn|knapp|weg)
        (?:schnapp\w*|ring\w*|japs\w*|hecheln?|kämpf\w*|lechz\w*)<3>(?:luft|atem|sauerstoff)|(?:luft|atem)<2>(?:schnapp\w*|ring\w*|japs\w*|kämpf\w*)
        (?:gefühl|fühl\w*|als ob|als würde|wie|am)<5>(?:ertrink\w*|erstick\w*|erwürg\w*)
        (?:mitten im|keinen|nicht|kaum)<3>satz<4>(?:luft|atm\w*|pause|zu ende|sprechen|rausbring\w*|ohne)
        (?:hals|kehle)<3>(?:zu|zugeschnürt|eng|schnürt)
        """,
        doubtful=r"""
        (?:schon beim|beim)<2>(?:schuhe\w*|reden|sprechen|liegen|sitzen|treppe|zähneputzen|anziehen)<4>(?:ausser atem|aus der puste|puste|luft|schnauf\w*|keuch\w*)
        (?:ausser atem|aus der puste|puste)<5>(?:reden|sprechen|liegen|sitzen|schuhe\w*|anziehen|zähneputzen|paar schritte\w*|paar stufen)
        """,
    ),
    *german_table(
        Symptom.LIMB_WEAKNESS,
        "bein arm knie hand fuss gabel loffel handy tasse kriech krabbel zahnburste hand faust kraft wand tasse glas musste kaum glieder gliedma seite flasche stift obersch fallen konnten muss gekroch gesicht finger korper kamm runter muskel deckel wade konnen messer schlies offnen zumache heben greifen festhal halten aufmach",
        sure=r"""
        <kann>(?: [\w']+){0,4}(?: (?:zahnbürste|gabel|löffel|handy|tasse|glas|flasche|stift|nichts|kamm|tür|deckel|hand|faust|messer))<3>(?:nicht|kaum|nichts)<2>(?:halten|heben|greifen|festhalten|zumachen|schliessen|aufmachen|öffnen)
        (?:hand|faust|finger)<2>(?:geht|gehen|lässt sich|lassen sich)<2>(?:nicht|kaum)<2>(?:zu|auf|schliessen|öffnen|bewegen)|(?:keine|null|kein|kaum|ohne)<2>(?:kraft|power|saft|gefühl|kontrolle)<3>(?:in|bei)<3>(?:beinen?|armen?|händen?|knien?|fingern?|füssen?)|<glied><3>(?:ohne kraft|keine kraft|keinen saft|versagen den dienst)
        (?:muss|musste)<3>(?:mich )?(?:an der wand|am geländer|an möbeln|festhalten|abstützen)<4>(?:gehen|laufen|stehen|entlang|hangeln)|an der wand entlang
        <glied><4>(?:gehören|gehör\w*|gehorch\w*|wegklapp\w*|weggeklappt|weggeknickt|weg|nachgegeben|schlapp ?gemacht|verweiger\w*|verabschied\w*|eingeknickt|einknick\w*|wegzieh\w*|weggezogen|ausgefallen|im stich|im streik|streiken|zusammengeklappt)(?! (?:vom|von der))
        (?:musste|muss)<4>(?:kriechen|krabbeln|robben)|(?:krieche|krabbel|gekrochen|gekrabbelt)<5>(?:bad|klo|bett|toilette|tür|flur)|(?:ziehe|schleife|nachziehen)<3>(?:bein|fuss)
        """,
        doubtful=r"""
        <glied><4>(?:wackelpudding|beton|pudding|gummi|blei|bleischwer|watte|zement|holz|spaghetti|schaumstoff|sandsäcke|wabbel\w*|wackel\w*|wie fremd|fremd|eingeschlafen|butter|knete|wachs|klotz|klötze|taub\w*)
        (?:lasse|lass|fällt|fallen)<4>(?:fallen|aus der hand|aus den händen|runter)<2>(?:ständig|dauernd|alles|heute|immer|$)
        <kann><4>(?:kaum|nicht|nicht mal)<4>(?:gabel|löffel|handy|tasse|glas|flasche|zahnbürste|stift)<2>(?:halten|heben)?
        """,
    ),
    *german_table(
        Symptom.CONFUSION,
        "wort worte namen weiss wusste vergess kuhlschrank wirklich unwirklich traum glas watte gesprach satz film neben nebel schleier folgen lesen erkenn erkannt rede schreib sprech sprich weiss fragt frag mulleim backofe gefrier hinterh adresse gedampf surreal irreal durchei versteh glocke verdreh verkehr ahnung trance dasselb kaum dasglei ofen gewusst mikrowe gleiche falsch fallt leute weit erzahl waschma sagen zeug quatsch kauderw wasser pin unsinn wirr zusamme komm",
        sure=r"""
        er<1>(?:weiss|wusste)<2>nicht<,2>(?:wo er (?:ist|war)|wer (?:er|ich|wir) (?:ist|bin|sind)|welcher tag|welches jahr)|sie<1>(?:weiss|wusste)<2>nicht<,2>(?:wo sie (?:ist|war)|wer (?:sie|ich|wir) (?:ist|bin|sind)|welcher tag|welches jahr)
        fragt<3>(?:dasselbe|das ?gleiche|die gleiche frage|dieselbe frage)|(?:jede minute|alle zwei minuten|alle \w+ minuten|ständig)<3>(?:dasselbe|das ?gleiche|die gleiche frage|dieselbe frage)
        (?:rede|redet|sprech\w*|spricht|schreibe|schreibt|erzähl\w*|sagt|sage)<3>(?:wirr\w*|unsinn|quatsch|kauderwelsch|zusammenhanglos\w*|wirres zeug|durcheinander)(?! (?:mit|im kurs))|(?:erkenne|erkennt|erkannt\w*)<4>(?:nicht|niemanden|keinen)(?! (?:auf dem|den unterschied|im video|was))|niemanden<1>erkannt
        (?:wörter|worte|sätze|satz)<4>(?:falsch|verdreht|durcheinander|verkehrt|vertausch\w*|purzeln)<2>(?:raus|heraus|kommen|$)|(?:kommen|kommt)<4>(?:falsch|verdreht|durcheinander|verkehrt)<1>raus
        (?:vergessen|vergesse|weiss nicht mehr|wusste nicht mehr|keine ahnung mehr|fällt mir nicht ein)<4>(?:wo ich (?:wohne|bin|war|parke)|(?:meine|unsere) adresse|meinen namen|meine pin|wie ich heisse|welcher tag|wie man)
        (?:meine adresse|meinen namen|eigenen namen|meine pin)<4>(?:vergessen|nicht mehr|nicht ein\w*|nicht gewusst)
        """,
        doubtful=r"""
        (?:handy|schlüssel|reis|milch|geldbeutel|portemonnaie|schuhe?|fernbedienung)<4>(?:kühlschrank|gefrierfach|backofen|ofen|mülleimer|mikrowelle|waschmaschine)<3>(?:gelegt|gestellt|gefunden|getan|gepackt|$)|(?:komme?|komm)<3>(?:nicht|kaum)<2>(?:mit|hinterher)<3>(?:leute|gespräch|sagen|reden|was)|dreimal das (?:selbe|gleiche) gefragt
        (?:alles|welt|umgebung)<4>(?:unwirklich|weit weg|wie im (?:traum|film|nebel)|wie durch (?:glas|watte|nebel)|gedämpft|irreal|surreal)
        wie (?:im|durch|in|unter|hinter)<2>(?:traum|nebel|glas|watte|wattewolke|wasser|glocke|schleier|trance)
        <kann><5>(?:nicht|kaum)<2>(?:gespräch\w*|folgen|lesen was|verstehen)|(?:gespräch|unterhaltung)<4>nicht<2>folgen
        (?:handy|schlüssel|portemonnaie)<4>(?:kühlschrank|gefrierfach|backofen|mülleimer)
        """,
    ),
    *german_table(
        Symptom.SEIZURE,
        "zuck krampf zunge schaum arme korper gezappelt gerüttelt geschuttelt zunge hose eingenasst eingepinkelt weggedr verdreh beine genasst gepisst unkontr gepinke stoppen gemacht aufhore selbst dass",
        sure=r"""
        zunge<4>(?:gebissen|zerbissen|aufgebissen|durchgebissen)|(?:in die hose|in die hosen|ins bett)<1>(?:gemacht|gepinkelt|gepisst|genässt)|eingenässt|eingepinkelt
        (?:hat's mich|hat es mich|habe|hab|bin|es hat)<5>(?:geschüttelt|durchgeschüttelt|gekrampft|gezappelt|gerüttelt|gezuckt)<3>(?:wie|am ganzen|überall|minuten|minute|sekunden|blöd|verrückt|unkontrolliert|und|$)(?! vor (?:lachen|kälte|ekel))|geschüttelt wie|augen<3>(?:verdreht|weggedreht)<3>(?:gezuckt|weg|habe|und|$)
        (?:arme|beine|arme und beine|körper)<4>(?:gezuckt|zuckten|um sich|gezappelt|geschlagen|verkrampft|steif|wild)
        (?:arme?|beine?|körper|hände?)<5>(?:gezuckt|zucken|zuckten|geschüttelt|gezappelt|geschlagen)<4>(?:von (?:selbst|allein\w*)|ohne dass|unkontrolliert|nicht stoppen|nicht aufhören)
        (?:auf die|in die|meine) zunge gebissen<4>(?:aufgewacht|bewusst\w*|boden|schlaf|gezuckt|nacht)|schaum<3>mund
        """,
    ),
    *german_table(
        Symptom.SEVERE_HEADACHE,
        "kopf schadel schlafe hirn auge hinterkopf licht axt nacken",
        sure=r"""
        (?:platzt|zerspringt|explodiert|zerreisst|birst|spaltet sich|zerplatzt|dröhnt|hämmert)<4>(?:kopf|schädel|hirn)|(?:axt|hammer|messer|blitz|bombe|schraubstock|nagel|dolch|donnerschlag|bohrer)<4>(?:hinterkopf|kopf|schädel|schläfe\w*|nacken|hirn)
        (?:hinterkopf|kopf|schädel)<7>(?:aus dem nichts|schlagartig|urplötzlich|noch nie|unerträglich|licht tut weh|nicht auszuhalten|wahnsinnig)|licht<2>(?:tut weh|unerträglich|schmerzt)
        (?:kopf|schädel)<5>(?:schraubstock|presslufthammer|hammer|bohrt|bohrer|axt|nagel|nägel|messer|spaltet|gespalten|zerspring\w*|zerplatz\w*|bombe|explodier\w*|explosion|sprengt|gesprengt|zweigeteilt|eingeklemmt|dampfkessel|schnellkochtopf|birst|reisst)
        (?:schraubstock|presslufthammer|hammer|bohrer|axt|nagel|nägel|messer|spechte?|dolch)<4>(?:kopf|schädel|schläfen?|hirn|auge|augen)
        (?:stich\w*|stech\w*|sticht|bohr\w*|hämmer\w*|poch\w*)<4>(?:hinter|in)<2>(?:augen?|schläfen?|kopf|schädel)
        (?:hirn|gehirn|schläfen)<4>(?:platzt|explodiert|zu gross|drückt|hämmern|hämmert|schwillt|pochen)
        """,
    ),
)


# ruff: noqa: E501 - a pattern stays on one line


GERMAN_OTHER_IMAGES: tuple[Phrase, ...] = (
    *german_table(
        Symptom.SEVERE_GUT,
        "bauch magen darm krampf unterleib gekrummt krumm eingero",
        sure=r"""
        (?:<bauch>|<bauch>krämpf\w*|<bauch>schmerz\w*|<bauch>weh)(?: ,)?<5>(?:so stark|so weh|so schlimm|so heftig|dass ich|unerträglich|nicht (?:sitzen|stehen|laufen)|zum schreien|heule|heulen|schreien|messer\w*|zerreisst|badezimmerboden|boden lag|krümm\w*|zusammengekrümmt|höllisch|kaum auszuhalten|wie wehen)
        (?:solche|derartige|so starke|so heftige|dermassen|irre)<2>(?:<bauch>krämpf\w*|<bauch>schmerz\w*|krämpfe)|(?:schmerz\w*|krämpfe)<3><bauch><4>(?:so stark|stark|heftig|unerträglich|nicht (?:sitzen|stehen))
        (?:messer\w*|stiche)<3><bauch>|(?:gekrümmt|krümme|zusammengekrümmt|eingerollt)<5>(?:bett|boden|sofa|schmerz\w*|<bauch>)
        """,
    ),
    *german_table(
        Symptom.HEADACHE,
        "kopf auge schlafe stirn schadel",
        sure=r"""
        (?:druck|schmerz\w*|ziehen|pochen|stechen|dumpfe?\w*)<4>(?:augen?|schläfen?|stirn|kopf|hinterkopf|schädel)|(?:schläfen?|stirn|kopf|hinterkopf|schädel)<3>(?:pocht|pochen|drückt|druck|schmerzt|tut weh|weh|dröhnt|brummt|zieht|hämmert|voll watte)
        """,
    ),
    *german_table(
        Symptom.NAUSEA,
        "magen ubel schlecht brech kotz wurg flau speiub hoch seekran mulmig speien ubergeb spucken",
        sure=r"""
        magen<3>(?:dreht|umgedreht|dreht sich um|flau|hebt sich|revoltiert|verrückt|umdreh\w*)|dreht<4>magen|hebt<3>magen|(?:könnte|muss|müsste|werde|fast|gleich)<4>(?:kotzen|brechen|speien|übergeben|spucken)(?! (?:vor wut|vor lauter))|würgereiz\w*|würge|gewürgt|kommt mir hoch|seekrank|sterbensübel|mulmig\w*<2>(?:magen|bauch)
        """,
    ),
    *german_table(
        Symptom.VOMITING,
        "hoch ubergeb reis essen fruhstuck portion kloschussel klo rauf kam gekommen schusse eimer gereihe gespuck erbroch gekotzt retour ruckwar gebroch oben hahnche mahlzei haferfl shake raus",
        sure=r"""
        (?:frühstück|mittagessen|abendessen|essen|reis|portion|mahlzeit|shake|haferflocken|alles|es|hähnchen)<5>(?:wieder hoch|hochgekommen|wieder raus|oben raus|rückwärts|retour)(?: gekommen)?|kam<4>(?:wieder )?(?:hoch|oben raus)
        (?:nachts|nacht|morgen|früh|einmal|heute|gestern|danach|ein mal|vorhin)<4>(?:übergeben|erbrochen|gekotzt|gereihert|gebrochen|gespuckt)(?! (?:worden|an))|(?:über|vor|neben|mit dem kopf)<2>(?:der|die|in der)<1>(?:kloschüssel|klo|schüssel|eimer)(?! (?:geputzt|putzen))
        """,
    ),
    *german_table(
        Symptom.SWOLLEN_HANDS,
        "hand finger ring faust",
        sure=r"""
        (?:hände?n?|finger|fingern|hand)<4>(?:würstchen|würste\w*|bratwürste|wurst\w*|ballons?|bananen|boxhandschuhe|aufgepumpt|doppelt so dick|dick|dicke|dicker|prall|geschwollen|aufgequollen|polster|marshmallows?|kissen)(?! (?:eingecremt))|(?:faust|finger)<4>(?:nicht|kaum)<2>(?:schliessen|machen|beugen|ballen|krumm)
        (?:ring|ehering|ringe|verlobungsring)<6>(?:nicht|kaum)<3>(?:ab|runter|vom finger|drüber|über|an)
        """,
    ),
    *german_table(
        Symptom.SWELLING,
        "socke dell abdruck knochel fuss bein wade schuh gesicht augen lid schwoll dick elefant ballon quillt wasser verquol aufgesc strumpf sneaker bundche stiefel gummibu wangen untersc",
        sure=r"""
        (?:socken?|sockenbund|strümpfe|strumpf|gummibund|bündchen|schuhe?|turnschuhe|stiefel|sneaker)<5>(?:dellen?|abdrücke?|abdruck|rillen|furchen|schneiden ein|passen nicht|gehen nicht (?:mehr )?(?:zu|an)|zu eng|drücken|krieg ich nicht|nicht (?:mehr )?(?:zu|an))
        (?:knöchel\w*|füsse?n?|fuss|beine?n?|waden?|schienbein\w*|unterschenkel)<4>(?:elefant\w*|ballon\w*|baumstämme\w*|dellen?|delle|dick|dicker|verschwunden|aufgepumpt|prall|aufgeschwemmt|doppelt so dick|voll wasser|klumpen|stampfer)(?! (?:trainiert|vom training|vom pump))|elefantenbeine|(?:drück\w*|daumen|finger)<6>delle
        (?:gesicht|augen|lider|augenlider|wangen)<4>(?:dick|zugeschwollen|geschwollen|aufgedunsen|mondgesicht|ballon|aufgequollen|verquollen|schlitze|hamster\w*)|mondgesicht|verquollen|aufgeschwemmt
        """,
    ),
    *german_table(
        Symptom.DIZZY,
        "dreh schwank schwimm boot schiff karussell kopf boden wand wande schwindel wackel zimmer welt taumel kreisel wellen abstutz festhal festgeh schauke fuhle abgestu stutze kahn achterb wasserb wankt trampol deck hoher fahre halte kreist bewegt geschwo kippt",
        sure=r"""
        (?:alles|zimmer|raum|kopf|welt|decke|bett|boden|küche|wände?|bad|mir)<6>(?:dreht|gedreht|dreht sich|drehte|schwankt|geschwankt|wankt|kreist|schwimmt|geschwommen|karussell|wackelt|gewackelt|schaukelt|bewegt sich|kippt|kreiselt)(?! (?:um|den|nur|ums))|(?:dreht|schwankt|schwimmt|wankt|schaukelt|kreist)<4>(?:alles|kopf|boden|zimmer|raum|welt|wände?|decke)
        (?:wie|als|auf|fühlt|fühle)<4>(?:boot|schiff|karussell|trampolin|kahn|schaukel|achterbahn|wasserbett|deck|hoher see|wellen|fähre)
        """,
        doubtful=r"""
        (?:festhalten|abstützen|stütze mich|halte mich)<5>(?:wand|tisch|waschbecken|geländer|möbel\w*|tür\w*)|(?:wand|tisch|waschbecken|geländer)<3>(?:festhalten|abstützen|festgehalten|abgestützt)
        """,
    ),
    *german_table(
        Symptom.BLURRED_VISION,
        "verschwomm unscharf scharf schleier milch glas sehe seh sah sicht auge lesen punkte flimmer blitz zickzack blind verschmier fokus bild entziff erkenne scheibe blickfe flacker nebelwa neblig beschla punktch vaselin flecken trub verschw wasser",
        sure=r"""
        (?:alles|schrift|augen|sicht|text|buchstaben|umrisse|gesichter)<4>(?:unscharf|verschwommen|verschwimm\w*|verschmiert|milchig|trüb|neblig|flimmert|flackert)(?! (?:fotos?|foto))|(?:unscharf|verschwommen|verschmiert)<3>(?:sehen|gesehen|sehe|sicht|alles)
        (?:durch|wie(?! (?:viel|lange|oft|bei))|hinter)<4>(?:milchglas\w*|nebelwand|schleier|beschlagene\w*|trübe\w* scheibe|wasser|dreckige\w* scheibe|vaseline|milch)|schleier<3>(?:augen|blick)|milchglas
        <kann><6>(?:nicht|kaum)<3>(?:lesen|erkennen|fokussieren|scharf (?:sehen|stellen)|entziffern)(?! was der plan)
        (?:schwarze|weisse|helle|dunkle|tanzende)<1>(?:punkte|flecken|pünktchen)<4>(?:augen|sehe|sichtfeld|sehen|blick)?|(?:sehe|seh|sah)<4>(?:punkte|blitze|lichtblitze|zickzack\w*|flecken|funken|sternchen|kreise)|lichtblitze|zickzack\w*<3>(?:augen|sehen|sichtfeld)|blind\w*<3>(?:auge|fleck|geworden)|(?:sichtfeld|gesichtsfeld|blickfeld)<4>(?:fehlt|weg|eingeschränkt|ausfall|loch|lücke)|augen<3>(?:stellen nicht scharf|spinnen|machen nicht mit)
        """,
    ),
    *german_table(
        Symptom.SLEEPLESS,
        "schlaf wach nacht auge gewalzt decke stunden liegen",
        sure=r"""
        (?:dritte|zweite|vierte|fünfte|wieder eine|noch eine|ganze)<2>nacht<4>(?:ohne|kein|keinen|wach|nicht|schlaflos|durchgemacht)|(?:ohne|kaum|keinen|null|kein)<3>(?:richtigen |echten )?schlaf(?! ?(?:zimmer|maske|anzug|sack))|(?:bis|seit)<4>(?:wach|an die decke gestarrt|wachgelegen)|(?:wach|wachgelegen|wach gelegen)<3>(?:bis|seit|die ganze|stunden\w*|ewig)|an die decke (?:gestarrt|geschaut|geguckt)|gewälzt|kein auge
        alle (?:stunde|halbe stunde|paar minuten) (?:wach|aufgewacht)|stündlich (?:wach|aufgewacht)|(?:aufgewacht|wach)<2>um (?:[1-4]|zwei|drei|vier|eins)(?: uhr)?<5>(?:nicht|seitdem)
        """,
    ),
    *german_table(
        Symptom.CRAMPS,
        "krampf wade fuss zeh finger oberschenkel verhart knoten macht zu",
        sure=r"""
        (?:wade\w*|oberschenkel|fuss|füsse|zehen?|finger|hand|beine?|bauchmuskeln?)<4>(?:krampf\w*|krämpf\w*|gekrampft|macht<1>zu|machte<1>zu|zugemacht|dicht gemacht|macht dicht|bretthart vor krampf|verkrampf\w*|zieht sich zusammen)
        """,
    ),
    *german_table(
        Symptom.TINGLING,
        "kribbel ameise prickel taub eingeschlafen bitzel nadel strom elektri schlaft armn schlafe",
        sure=r"""
        ameisen<4>(?:hand|hände\w*|finger\w*|beine\w*|arme?\w*|füsse\w*|haut)|(?:hände?n?|finger\w*|lippen?|zehen|füsse?n?|gesicht|mund|zunge|arme?n?|beine?n?|haut|hand|fuss)<4>(?:kribbel\w*|prickel\w*|bitzel\w*|ameisen\w*|eingeschlafen|schläft ein|schlafen ein|nadelstiche|nadeln|unter strom|elektrisch|taub)|(?:kribbeln|prickeln|bitzeln|nadelstiche)<4>(?:hand|hände\w*|finger\w*|lippen?|zehen|füsse?n?|gesicht|mund)
        """,
    ),
    *german_table(
        Symptom.SHAKY,
        "zitter zittr bibber tatter wackel espenlaub schlotter zucker tattrig",
        sure=r"""
        bibber\w*|tattrig\w*|tatterig\w*|schlottere?n?|espenlaub|wackelig auf|(?:zucker|blutzucker)<3>(?:im keller|unten|abgesackt|abgestürzt|zu niedrig|abgerauscht)
        """,
    ),
    *german_table(
        Symptom.STOMACH_PAIN,
        "bauch magen darm unterleib",
        sure=r"""
        (?:<bauch>|unterbauch)<4>(?:weh|schmerz\w*|sticht|krampft|krämpfe|zieht|ziehen|zwickt|drückt|grummelt|rumort|spinnt|brennt|kneift)(?! (?:ein|sich))|(?:schmerz\w*|ziehen|stechen|krämpfe|zwicken|stiche)<4>(?:<bauch>|unterbauch)
        """,
    ),
    *german_table(
        Symptom.DIARRHOEA,
        "klo toilette flussig durchfall dunn wasser scheiss stuhl kacke rennerei bad spruhwu schusse gerannt wassrig verbrac standig gewohnt renne daurnd paar wohne halbe funf runter renn ganze",
        sure=r"""
        (?:klo|toilette|bad|wc|schüssel)<5>(?:\d ?mal|(?:zwei|drei|vier|fünf|sechs|sieben|acht) ?mal|ständig|dauernd|alle (?:stunde|halbe|\d+|paar)|flüssig|wie wasser|die ganze nacht|nicht mehr runter|gerannt|renne|verbracht|gewohnt|wohne)|(?:\d ?mal|(?:zwei|drei|vier|fünf|sechs|sieben|acht) ?mal|ständig|dauernd|alle halbe stunde|renne?|rennerei|rennen)<5>(?:klo|toilette|wc)|(?:alles|nur|ganz|total|komplett)<2>(?:flüssig|wie wasser|wässrig)(?! (?:nahrung|gegessen|eiweiss))|(?:stuhl|kacke|stuhlgang)<4>(?:flüssig|dünn|wässrig|wie wasser|breiig)|scheisserei|sprühwurst
        """,
    ),
    *german_table(
        Symptom.CONSTIPATION,
        "verstopf gross klo beton stuhl darm kacken tage stuhlgang stau zement stein geht diensta donners samstag sonntag mittwoc freitag montag keinen nichts ohne",
        sure=r"""
        (?:nicht|kein|keinen|nix|nichts|ohne)<4>(?:gross gewesen|gross|stuhlgang|kacken|kacken gewesen|grosses geschäft|aa)(?! (?:geschlafen|gewachsen|trainiert|anders|hungrig|verändert|geändert|was|genug|rauskommen))|(?:seit|schon)<4>(?:tagen|montag|dienstag|mittwoch|donnerstag|freitag|samstag|sonntag)<4>(?:nicht (?:auf(?:'s| dem|m)? klo|gross)|kein stuhl\w*|nix mehr|nichts mehr)<4>(?:darm|raus|klo|gross|beton|los|$)|(?:beton|stein|zement|stau)<3>(?:darm|bauch)|darm<3>(?:dicht|steht still|beton|streikt|zu)|geht<3>(?:nix|nichts)<2>(?:raus|auf(?:'s|m| dem) klo)
        """,
    ),
    *german_table(
        Symptom.BLOATING,
        "blah bauch kugel ballon trommel schwanger luft gas pups furz monat winde",
        sure=r"""
        bauch<4>(?:ballon|kugel|trommel|schwanger|aufgeblasen|aufgepumpt|gebläht|fussball|medizinball|melone|prall voll|voll luft)|(?:wie|im|sehe aus)<3>(?:schwanger|schwangere|\w+ monat)|(?:voller|viel|zu viel)<1>(?:luft|gase?)<3>(?:bauch|darm)|(?:pupse|furze|blähungen|winde)
        """,
    ),
    *german_table(
        Symptom.URINE_DARK,
        "pipi urin pinkel piss klo toilett wasserlassen harn pinkle",
        sure=r"""
        (?:<pipi>|pinkle|pinkel|gepinkelt|klo)<6>(?:schwarzer tee|schwarzem tee|cola|tee|malzbier|altbier|apfelsaft|kaffee|rost|bernstein|ahornsirup|whisky|eistee)|pinkel<2>(?:tee|cola|kaffee|blut)
        (?:<pipi>|pinkle|pinkel|pinkeln|pisse|pissen|gepinkelt|wasserlassen)<5>(?:dunkel\w*|dunkler|braun\w*|bräunlich|cola\w*|tee|schwarztee|kaffee|rost\w*|orange\w*|bernstein\w*|rot|rötlich|rosa|schwarz\w*|blutig|whisky|malzbier|altbier|apfelsaft|sirup|ahornsirup|sojasauce|spezi|schwarzer tee|bier)(?! (?:eingefärbt))|(?:dunkel\w*|dunkler|braun\w*|cola\w*|teefarben\w*|rostig\w*|rötlich\w*)<3>(?:<pipi>|pinkel\w*)
        """,
    ),
    *german_table(
        Symptom.NO_URINE,
        "pinkel piss urin klein klo toilett blase pipi wasserlassen tropf zuletzt letzte stunden gelasse kommt kam",
        sure=r"""
        (?:zuletzt|letzte\w* mal|das letzte mal|seit|vor)<8>(?:toilette|klo|wc)<3>(?:klein|pinkeln|pipi|für klein)|(?:stunden|gestern|heute)<6>(?:nicht|kein|keinen)<3>(?:pinkeln|gepinkelt|klein|pipi|tropfen)
        (?:nicht|kaum|nimmer|noch nicht|nicht mehr|gar nicht|nix|nichts|kein|keinen tropfen|nicht ein ?mal|nur (?:ein paar )?tropfen|ein paar tropfen|ohne)<4>(?:pinkeln|gepinkelt|pissen|gepisst|uriniert|urinieren|pipi|pinkeln gewesen|klein gewesen|wasser gelassen|urin|auf (?:dem|m)? ?klo klein)(?! (?:dunkel|hell|klar))
        (?:zuletzt|letzte\w* mal|das letzte mal)<7>(?:klein|gepinkelt|pinkeln|pipi|uriniert|toilette<4>klein|klo<4>klein|wasser gelassen)|blase<4>(?:leer|zu|nix|nichts|streikt|nicht)|(?:kommt|kam)<4>(?:kein tropfen|nichts|nix|nur tropfen)<3>(?:raus|beim pinkeln|mehr|seit)|(?:seit|schon)<5>(?:nicht|nimmer)<2>(?:mehr )?(?:pinkeln|pissen|gepinkelt|gepisst|klein)
        """,
    ),
    *german_table(
        Symptom.FEVER,
        "fieber temperatur frost grad schuttel gluh schwitz thermometer 38 39 40 abwechs kalt stirn",
        sure=r"""
        (?:3[89](?:[.,]\d)?|40(?:[.,]\d)?)<1>(?:grad|fieber|temperatur|°)(?! (?:draussen|im schatten|in der sauna|warm))|(?:temperatur|thermometer|fieber|stirn)<4>(?:3[89](?:[.,]\d)?|40(?:[.,]\d)?|erhöht|hoch|glüht)|glühe|glüht<2>(?:stirn|kopf)|friere und schwitze|abwechselnd heiss und kalt|heiss und kalt
        """,
    ),
    *german_table(
        Symptom.EXHAUSTION,
        "erschopf mude erledigt reserve energie akku kaputt fertig eingenickt matt kraftlos platt ausgelaugt sofa schlapp gerad kriech power kraft anstren notstro sparfla eingesc zahnfle qual viel geschaf",
        sure=r"""
        (?:völlig|total|komplett|echt|so|absolut|richtig|nur noch)<1>(?:erledigt|ausgelaugt|geschafft|am ende der kräfte|erschöpft|gerädert|ausgepowert|matt|schlapp)|(?:laufe?|lauf|läuft|fahre?)<2>auf<1>(?:reserve|sparflamme|notstrom|dem zahnfleisch)|(?:müde|kaputt|erschöpft)<2>(?:wie (?:noch )?nie|wie ein stein und|dass ich (?:nicht|kaum))|ein\w*genickt<3>(?:schreibtisch|arbeit|bahn|auto)|(?:schreibtisch|arbeit|bahn)<4>(?:eingenickt|eingeschlafen)|mein akku<3>(?:leer|null|alle)|(?:keine|null|kaum|gar keine) (?:energie|kraft|power)(?: mehr)?(?= |$)(?! (?:im training|beim (?:bank|beugen)))|alles<2>(?:zu viel|anstrengend|eine qual|zu anstrengend)|komme?<3>nicht<1>vom sofa|kriech\w* auf dem zahnfleisch|hundemüde|völlig platt
        """,
    ),
)
