"""The images in which people tell the warnings in German."""

# ruff: noqa: E501 - a pattern stays on one line
from __future__ import annotations

from functools import partial

from engine.symptoms.german.spelling import folded
from engine.symptoms.german.warnings import GROUPS
from engine.symptoms.names import Symptom
from engine.symptoms.patterns import Phrase, table

_table = partial(table, groups=GROUPS, fold=folded)

GERMAN_IMAGES: tuple[Phrase, ...] = (
    *_table(
        Symptom.CHEST_PAIN,
        "brust herz rippen kiefer arm beklemm schulte",
        sure=r"""
        (?:elefant|zentner\w*|ziegel\w*|gürtel|schraubstock|klammer|amboss|felsbrocken|felsen|panzer|lkw|tonne|tonnen|korsett|beton|messer|dolch|eisenring|ring)<4>(?:auf|um|in|an|durch)<2>(?:brust|brustkorb|rippen|herz)
        (?:brust|brustkorb|rippen)<4>(?:zugeschnürt|schraubstock|zusammengedrückt|zusammengequetscht|zerquetscht|eingeklemmt|eingeschnürt|elefant|ziegel\w*|zerreisst|verkrampft|brennt|feuer|beklemm\w*)
        (?:sitzt|steht|kniet|trampelt|lastet|liegt|drückt|presst|quetscht|schnürt|sticht|bohrt)<5>(?:auf|in|um)<2>(?:brust|brustkorb|herz)
        beklemmung\w*|beklemmend\w*<3>brust|kiefer<5>(?:arm|brust|schulter)|(?:zieht|strahlt|schmerz\w*)<5>(?:linken arm|kiefer|linke schulter)
        """,
    ),
    *_table(
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
    *_table(
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
    *_table(
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
    *_table(
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
    *_table(
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
    *_table(
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
    *_table(
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
