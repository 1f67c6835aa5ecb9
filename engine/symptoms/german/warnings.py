"""How people say the warnings in German. Finding too much costs a question; missing one costs more."""

# ruff: noqa: E501 - a pattern stays on one line
from __future__ import annotations

from functools import partial

from engine.symptoms.german.spelling import folded
from engine.symptoms.names import Symptom
from engine.symptoms.patterns import Phrase, Writing, table

GROUPS = {
    "glied": r"(?:beine?n?|arme?n?|knien?|hande?n?|fusse?n?|muskeln?|glieder|gliedmassen|oberschenkel\w*|waden?|korper|gesicht|finger|linke seite|rechte seite)",
    "nicht": r"(?:nicht|kaum|nicht mehr|kaum noch|fast nicht)",
    "kann": r"(?:kann|konnte|konnten|können|könnte)",
    "kotz": r"(?:erbrochen|erbreche|erbrechen|erbrach|(?:mich|uns)<3>(?:übergeben|übergebe|übergab)|übergeben müssen|breche (?:immer|ständig|dauernd|seit|schon)|(?:musste|muss)<4>übergeben|übergebe mich|übergab mich|gekotzt|kotze|kotzen|kotzte|kotz(?= mir| mich| schon| seit| die| nur)|gereihert|gespien)",
    "oft": r"(?:mehrmals|mehrfach|zwei ?mal|drei ?mal|vier ?mal|fünf ?mal|(?:\d+|sechs|sieben|acht|zehn) ?(?:mal|x)|x ?\d+|immer wieder|ständig|dauernd|andauernd|pausenlos|wiederholt|wieder|erneut|nochmal|noch einmal|die ganze nacht|den ganzen (?:tag|morgen|vormittag|abend)|seit|stundenlang|alle \d+|jede stunde|alles|ununterbrochen|laufend|in einer tour|ohne pause)",
    "kopfweh": r"(?:kopfschmerz\w*|kopf ?schmerz\w*|kopfweh|migrane\w*|schädelweh|schmerz\w* im kopf)",
    "stark": r"(?:starke?[mnrs]?|stärkste\w*|heftig\w*|schlimme?[nrs]?|schlimmste\w*|extrem\w*|unerträglich\w*|rasende?\w*|höllisch\w*|furchtbar\w*|schrecklich\w*|fürchterlich\w*|brutal\w*|massiv\w*|wahnsinnig\w*|krasse?\w*|mörderisch\w*|stechende\w*|explosionsartig\w*|plötzlich\w*|hammermässig\w*|intensiv\w*|grausam\w*|unfassbar\w*|(?:nicht|kaum) auszuhalten|nicht aushalt\w*|zum schreien|üble\w*|übelste\w*|hammer|mega|monster|hölle)",
    "bauch": r"(?:bauch|magen|darm|unterleib)",
    "pipi": r"(?:urin|urine|pipi|pisse|harn|pinkel)",
}
german_table = partial(table, writing=Writing(GROUPS, folded))

GERMAN_WARNINGS: tuple[Phrase, ...] = (
    *german_table(
        Symptom.CHEST_PAIN,
        "brust herz arm angina einatm durchatm luftholen atemzug",
        sure=r"""
        (?:stich|sticht|stichts|stiche|piekst|pikst|piekt|schmerz\w*|weh)<3>(?:beim|bei jedem|bei tiefem)<1>(?:einatmen|durchatmen|luftholen|atemzug)
        (?:beim|bei jedem|bei tiefem)<1>(?:einatmen|durchatmen|luftholen|atemzug)<3>(?:stich|sticht|stichts|stiche|piekst|pikst|piekt|schmerz\w*|weh)
        brustschmerz\w*|brust schmerz\w*|brustenge|herzschmerz\w*|herzinfarkt\w*|herzstechen|herzenge|brustkorbschmerz\w*
        (?:schmerz\w*|stechen|sticht|stiche|stich|druck|druckgefühl|enge|engegefühl|brennen|reissen|krampf\w*|drückt)<4>(?:brust|brustkorb|brustbein|herz|herzen|herzgegend|herzens)
        (?:schmerz\w*|stechen|stiche|stich|druck|enge|engegefühl) (?:brust|herz)
        (?:brust|brustkorb|brustbein)<4>(?:schmerz\w*|weh|sticht|stechen|stach|drückt|druck|eng|enge|zugeschnürt|zuschnürt|brennt|krampft|zusammen|zieht sich)
        (?:brust|brustkorb) (?:schmerzt|sticht|drückt|eng|weh|tut weh)
        herz<3>(?:schmerzt|weh|sticht|stach|krampft|drückt)
        (?:elefant|gewicht|stein|band|gürtel)<3>(?:auf|um)<2>brust
        (?:schmerz\w*|zieht|ziehen|stechen|taub)<4>linken? arm
        linker arm<3>(?:schmerz\w*|weh|taub|kribbel\w*)
        """,
        doubtful=r"""
        (?:brust|brustkorb)<4>(?:komisch|seltsam|schwer|zieht|ziehen|ziept|zwickt|merkwürdig|unangenehm)
        (?:ziehen|zwicken|ziepen|zieht|zwickt)<3>brust
        brust<2>(?:gefühl|probleme)
        """,
    ),
    *german_table(
        Symptom.SEIZURE,
        "krampf epilep anfall zuck gezuckt unkontr",
        sure=r"""
        krampfanfall\w*|krampfanfäll\w*|epilep\w+|krampfend am boden
        unkontrolliert\w*<2>(?:gezuckt|zuck\w*|gekrampft|gezittert)
        (?:ganzer körper|ganzen körper)<2>(?:gekrampft|gezuckt|krampfte|zuckte)
        """,
        doubtful=r"""
        (?:einen|nen|ein)<1>anfall|anfall gehabt|anfälle
        (?:gezuckt|zuckungen|zuckte|zucke|zuckt)
        gekrampft
        """,
    ),
    *german_table(
        Symptom.FAINTING,
        "ohnmacht ohnmachtig bewusst kipp kollab kollaps zusammen klapp umgefallen synkop sackt schwarz boden weg latschen gekomme",
        sure=r"""
        ohnmacht|ohnmächtig\w*|ohnmachtsanfall\w*|bewusstlos\w*|bewusstlosigkeit|synkope\w*
        (?:verlor\w*|verlier\w*)<5>bewusstsein|bewusstsein<2>(?:verlor\w*|verlier\w*|weg|weggewesen|war weg)
        umgekippt|weggekippt|vornübergekippt|umkippte|kipp\w*<4>um|aus den latschen
        kollabier\w*|kollaps|kreislaufkollaps|kreislaufzusammenbruch
        zusammengebrochen|zusammengeklappt|zusammengesackt|zusammengesunken|weggesackt|umgefallen|zusammenbruch
        (?:klapp\w*|brach|breche|sackte|brech)<4>zusammen
        schwarz<2>augen|augen<2>schwarz
        (?:auf|am) (?:dem |den )?boden<2>(?:aufgewacht|zu mir|wach geworden|gefunden|wiedergefunden)
        (?:zu mir|zu sich) gekommen
        """,
        doubtful=r"""
        umkippen|umzukippen|umkippe|umklappen|zusammenklappen|zusammenbrechen|zusammenzubrechen
        weggetreten|weggetretensein|weggedämmert
        (?:war|bin)<3>(?:weg|weggewesen)<1>(?:sekunden|minuten|moment|augenblick|gewesen)
        (?:kurz|sekunden|minute|minuten|moment|plötzlich)<1>weg
        (?:bin|war)<4>gekippt|lag<4>(?:am|auf dem) boden
        schwarz geworden|wurde schwarz|wird schwarz
        """,
    ),
    *german_table(
        Symptom.BREATHLESSNESS,
        "luft atem atm erstick hechel lippen hals puste japs schnauf rochel keuch husten gehustet huste",
        sure=r"""
        atemnot|kurzatmig\w*|atemlos\w*|atembeschwerden|atemprobleme\w*|atemschwierigkeiten|atemaussetzer
        (?:keine|kaum|schlecht|schlechter|schwer|wenig|zu wenig|nicht genug|nicht genügend|nicht richtig|nicht ausreichend)<2>luft
        (?:keine|kaum) luft
        luft<3>(?:bleibt|blieb|weg|weggeblieben|ging|geht)<1>(?:weg|mir|aus)
        luft<2>(?:weg|weggeblieben|wegbleibt)
        (?:fehlt|fehlte)<3>luft|nicht<2>zu atem|atm\w*<4>(?:flach|hektisch)
        nach luft<2>(?:schnapp\w*|ring\w*|japs\w*|gerungen|geschnappt)|(?:schnapp\w*|ring\w*|japs\w*)<2>luft
        <kann><5><nicht><3>(?:atmen|durchatmen|einatmen|luft holen)
        <kann><3>(?:schlecht|schwer|nur schwer|kaum)<1>atmen
        (?:atm\w+|durchatmen)<3>(?:schwer|schwerer|mühe|anstrengend|nicht möglich)
        (?:schwer|mühe|probleme|schwierigkeiten)<4>(?:atmen|atmung|luftholen)
        atmung<3>(?:schwer|flach|schnell|rasselt|komisch|unregelmässig)|flache atmung|schnappatmung
        erstick\w*|lippen<3>blau|blaue lippen
        hals<3>(?:schwillt|zugeschwollen|zuschwillt|geht zu|ging zu|zu geschwollen)
        blut<1>(?:husten|gehustet|huste)|huste\w*<2>blut
        """,
        doubtful=r"""
        ausser atem|aus der puste|puste<1>weg|atem<2>(?:komisch|weg|stockt)
        atm\w+<3>(?:komisch|seltsam|weh|schmerz\w*|anders)
        luft<2>(?:knapp|dünn|holen)
        röchel\w*|keuch\w*|hechel\w*|japs\w*|schnauf\w*
        """,
    ),
    *german_table(
        Symptom.PALPITATIONS,
        "herz puls extra vorhof tachykard palpitatione",
        sure=r"""
        herzrasen|herzstolper\w*|herzklopfen|herzflatter\w*|herzflimmer\w*|herzrhythmus\w*|herzaussetzer\w*|herzpochen|herzjagen
        extrasystol\w*|extraschläge?|vorhofflimmer\w*|tachykard\w*|palpitatione\w*
        herz<4>(?:rast|raste|rasen|gerast|stolpert|stolperte|stolpern|gestolpert|flattert|flatterte|pocht|pochte|hämmert|hämmerte|klopft|klopfte|aussetz\w*|setzt|setzte|ausgesetzt|springt|spinnt|überschlägt|überschlug|holpert|galoppiert|jagt|flimmert)
        herz (?:rast|raste|stolpert|flattert|pocht|hämmert|klopft|spinnt)
        herz\w*<3>(?:schlägt|schlug|schlagen|geschlagen)<4>(?:schnell\w*|unregelmässig\w*|komisch|seltsam|hals|verrückt|wild|irre|stark|heftig|nicht)
        (?:rast|raste|stolpert|flattert|pocht|hämmert|klopft|spinnt)<3>(?:herz|puls)
        (?:unregelmässig\w*|rasend\w*|stolpernd\w*|pochend\w*)<1>(?:herz\w*|puls)|unregelmässiger (?:herzschlag|puls)
        (?:puls|herzschlag)<3>(?:rast|raste|unregelmässig\w*|spinnt|verrückt|stolpert|jagt|aussetz\w*|hals|überschlägt)
        """,
        doubtful=r"""
        herz<3>(?:komisch|seltsam|verrückt|nicht|probleme|macht|fühlt|merkwürdig|weird)
        mein herz|herzprobleme|herzbeschwerden
        (?:puls|herzfrequenz|ruhepuls)<3>(?:hoch|erhöht|zu hoch|1[1-9]\d|2\d\d)|(?:hoher|erhöhter) (?:puls|ruhepuls)
        """,
    ),
    *german_table(
        Symptom.LIMB_WEAKNESS,
        "schwach kraft lahm beweg halten greif ruhren tragen gelahm lahmung bein arm knie hand fuss muskel glied oberschenkel wade korper gesicht finger seite schlag steh geh lauf hoch fall taub mundwinkel bett weich faust aufsitz aufrich halbsei kaum paralys boden steigen",
        sure=r"""
        <glied><4>(?:schwach|schwächer|kraftlos|gelähmt|schlaff|lahm|wegsack\w*|weggesackt|sacken|sackt|nachgegeben|nachgeben|weggeknickt|eingeknickt|knicken|knickt|einknick\w*|versag\w*|versagen|streik\w*|weggebrochen|weggerutscht)
        <glied><2>(?:geben|gibt|gaben|gab)<3>nach
        <glied> (?:schwach|kraftlos|gelähmt|schlaff|versagen|knicken|sacken)
        (?:gibt|geben|gab|gaben|knickt|knicken|sackt|sacken|versagt|versagen|streiken)<4><glied>
        (?:schwache?[nrs]?|kraftlose?[nrs]?|gelähmte?[nrs]?|schlaffe?[nrs]?|lahme?[nrs]?)<1><glied>
        muskelschwäche|muskelversagen im alltag|lähmung\w*|gelähmt|paralyse|schlaganfall|halbseitig\w*
        (?:schwach|schwäche|kraftlos|kraftlosigkeit|schwächegefühl)<3><glied>
        (?:mundwinkel|gesicht|gesichtshälfte)<2>(?:häng\w*|schief)|hängt<2>mundwinkel
        <glied><5><nicht><3>(?:beweg\w*|heb\w*|anheb\w*|hoch|halten|benutz\w*|spür\w*|belast\w*|strecken|beugen|steuern|kontrollier\w*)
        <glied><2>(?:wollen|will|machen|macht|gehorch\w*|funktionier\w*|bewegen|bewegt|tragen|trägt|reagier\w*|halten|hält)<2>nicht
        (?:wollen|will|gehorchen|tragen|bewegen|funktionieren)<3><glied><2>nicht
        <kann><5><nicht><2>(?:aufstehen|stehen|aufrichten|hochkommen|aufsitzen|treppen? (?:steigen|hoch)|zur toilette gehen)
        <kann><4>(?:nicht mehr|kaum noch|kaum)<2>(?:gehen|laufen)(?! gehen)
        komme?<3>(?:nicht|kaum)<4>(?:hoch|aus dem bett|vom boden|auf die beine)
        (?:keine|kaum|null|kein)<2>(?:kraft|gefühl|kontrolle)<4><glied>
        <kann><4>nichts<2>(?:halten|greifen|festhalten|tragen)
        <kann><4>mich<3><nicht><2>(?:bewegen|rühren)|keine<2>kraft<4>(?:aufzustehen|aufstehen|stehen|gehen|laufen|heben)|<kann><2><nicht> mich<2>(?:bewegen|rühren)|(?:mich|mir)<2>kaum bewegen
        zu schwach (?:zum|um|für)|faust<2>(?:nicht|kaum) (?:machen|ballen|schliessen)
        """,
        doubtful=r"""
        schwach|schwäche|schwächegefühl|schwächeanfall|schwächlich|kraftlos\w*
        <glied><3>(?:taub|schwer|blei|bleischwer|wackelig|wacklig|zittrig|pudding|gummi|eingeschlafen|kribbel\w*|watte)|knien?<3>weich
        (?:taube?[nrs]?|schwere?[nr]?|bleierne?[nr]?|wackelige?[nr]?)<1><glied>|weiche knie
        taub|taubheit\w*|taubes gefühl
        (?:lasse|liess)<4>(?:dinge|sachen|alles|ständig|dauernd|immer|tasse|glas|handy|gabel|löffel|zeug)<3>fallen|alles<2>fallen|alles fällt|fällt<3>aus der hand|fallen mir<3>aus der hand
        <kann>(?: (?:ich|heute|fast|gar|überhaupt|plötzlich|irgendwie|richtig|leider|momentan|gerade)){0,4} <nicht>(?: (?:mehr|richtig|gut|alleine?|ohne hilfe|gerade)){0,2} (?:gehen|laufen)(?! gehen)
        """,
    ),
    *german_table(
        Symptom.CONFUSION,
        "verwirr orient wirr wusste weiss name lall gelallt sprech sprach sprache geredet rede red halluzin delir erkannt erkenne denken konzentr benommen benebelt neben betrunken nebel durcheinander watte matsch kopf wort worte gedacht film erinner vergess klar ganz richtig gesproc ahnung welcher bringe zeug kriege bekomme",
        sure=r"""
        verwirrt|verwirrter|verwirrtheit|verwirrung|verwirrtheitszustand|desorientiert\w*|orientierungslos\w*|delir\w*|halluzin\w*|nicht ansprechbar
        (?:weiss|wusste|wussten)<4>(?:nicht|nimmer)<4>(?:wo ich (?:bin|war)|wer ich (?:bin|war)|welcher tag|welches jahr|welcher monat|wie ich (?:heisse|hierher|heimgekommen|hergekommen|nach hause)|was für ein tag)
        (?:weiss|wusste)<2>(?:nicht|nimmer) (?:wo|wer) ich<2>(?:bin|war)
        (?:nicht|keine ahnung)<3>(?:wo ich (?:bin|war)|welcher tag)
        (?:meinen|eigenen)<1>namen<3>(?:vergessen|nicht|erinner\w*)
        lalle|lallen|lallte|gelallt|verwaschene? (?:sprache|aussprache)|sprache<2>verwaschen|<kann><3>keinen klaren gedanken|sprache<3>(?:undeutlich|weg|komisch)|(?:bekomme|kriege|bringe)<3>(?:keine|kaum)<1>(?:wörter|worte|ton|satz)
        undeutlich<2>(?:sprech\w*|gesprochen|geredet)
        <kann><4><nicht><2>(?:sprechen|reden)(?! (?:mit|über))
        (?:rede|redet|redete|spreche|sprach)<2>(?:wirr|unsinn|zusammenhanglos)
        (?:wirres|wirr|komisches|seltsames|unsinn|zusammenhanglos\w*)<2>(?:zeug|geredet|reden|gerede|gesprochen|rede)
        """,
        doubtful=r"""
        <kann><4><nicht><2>(?:klar denken|denken|konzentrieren|klar)
        benommen\w*|benebelt|neben mir|neben der spur|neben der kappe|wie betrunken|nebel im kopf|watte im kopf|matsch\w* im kopf|kopf<2>(?:benebelt|matsch\w*|nebel|watte)
        (?:völlig|total|ganz|bin|so)<1>durcheinander|wirr im kopf
        (?:worte|wörter)<2>(?:nicht|verwechsel\w*|durcheinander|vergess\w*)|vergess\w*<6>(?:wörter|worte)
        filmriss|gedächtnislücke\w*|gedächtnisverlust|erinner\w*<3>nicht<2>(?:was|wie|daran|gestern|mehr)|(?:nicht|nichts|an nichts)<2>erinnern|nicht (?:ganz|richtig) da
        (?:erkannt\w*|erkenne)<4>nicht
        """,
    ),
    *german_table(
        Symptom.REPEATED_VOMITING,
        "erbr kotz ubergeb ubergab reiher behalt drin unten wasser gespien hoch gebrochen brech gewurgt wurge blut speien raus grippe geblieb magen",
        sure=r"""
        zum (?:zweiten|dritten|vierten|fünften|sechsten|siebten|achten|neunten|zehnten|x ?ten) ?mal<3><kotz>|<kotz><2>zum (?:zweiten|dritten|vierten|fünften|sechsten|siebten|achten|neunten|zehnten|x ?ten) ?mal
        nicht (?:ein)? ?mal (?:wasser|ein schluck|tee)<2>(?:bleibt|blieb|hält)<2>(?:drin|drinnen|unten)
        <kotz><4><oft>|<kotz> <oft>|<oft><4><kotz>|<oft> <kotz>
        <kotz><3>(?:hört|hörte)<2>nicht|(?:höre?|hört|hörte)<3>nicht<2>auf<3>(?:kotzen|erbrechen)
        <kann><4>(?:nichts|nicht(?: ein)? ?mal wasser|kein wasser|kein essen)<3>(?:behalten|drinbehalten|drinnen behalten|bei mir behalten|unten behalten)
        behalte?<3>nichts|nichts<3>(?:bleibt|blieb|drin|drinnen)<2>(?:drin|drinnen|unten|im magen|geblieben)
        (?:kommt|kam|kommen)<3>alles<3>(?:hoch|raus|heraus)|alles<6>(?:kommt|kam)<2>(?:hoch|raus|heraus)
        blut<3><kotz>|<kotz><3>blut|blut gespuckt|blut gekotzt|bluterbrechen
        (?:mehrmals|mehrfach|zwei ?mal|drei ?mal|vier ?mal|fünf ?mal|ständig|dauernd|immer wieder|\d+ ?(?:mal|x))<3>(?:gebrochen|brechen|gewürgt|übergeben)
        """,
        doubtful=r"""
        (?<!einmal )(?<!ein mal )(?<!1x )(?<!1 mal )<kotz>
        brechdurchfall|magen darm grippe
        (?:musste|muss|habe|hatte)<2>brechen
        """,
    ),
    *german_table(
        Symptom.SEVERE_HEADACHE,
        "kopf migran schadel nacken",
        sure=r"""
        <stark><2><kopfweh>
        <kopfweh><5><stark>|<kopfweh> ,(?: [\w']+){0,2} <stark>
        <kopfweh><4>(?:meines lebens|noch nie|nie zuvor|(?:bringen|bringt) mich(?: noch)? um|umbringen|9 von 10|10 von 10|8 von 10)
        (?:kopf|schädel)<3>(?:<stark>|so|sehr|wahnsinnig)<2>weh
        (?:kopf|schädel)<4>(?:platzt|platze|platzen|zerspringt|explodiert|explodieren|zerplatzt|zerreisst|bringt mich um)
        (?:schädel|kopf)<2>(?:zerspringen|sprengt|gesprengt)
        vernichtungskopfschmerz\w*|donnerschlagkopfschmerz\w*
        <kopfweh><4>(?:steifer|steifen) nacken
        (?:halte|hält)<4><kopfweh><3>nicht aus
        """,
        doubtful=r"""
        migrane\w*
        (?:dolle|doll|böse|ziemliche|ziemlich|fiese|pochende\w*|hämmernde\w*|dröhnende\w*|richtig|richtige|starkes?)<1><kopfweh>
        <kopfweh><4>(?:nicht weg|schlimmer|seit tagen|ganzen tag|werden stärker|wird stärker|pocht|pochen|hämmern)
        (?:kopf|schädel)<2>(?:dröhnt|hämmert|pocht)
        """,
    ),
    *german_table(
        Symptom.SELF_HARM,
        "suizid selbst leben umbring bring nicht mir tot sterben ritz antun ende dosis aufwach aufzuwach verletz existier selber",
        sure=r"""
        suizid\w*|selbstmord\w*|selbsttötung|selbstverletz\w*|selbst verletzung|lebensmüde
        (?:mich|mir)<4>(?:umbringen|umzubringen|leben nehmen|leben zu nehmen|töten)|bringe? mich um
        nicht mehr<2>(?:leben|da sein|existieren|aufwachen|aufzuwachen|hier sein)(?! (?:wie|ohne|mit|in|auf))
        leben<3>(?:ein ende|beenden|nehmen)
        mir<3>(?:was|etwas|nichts) (?:antun|anzutun|angetan)|(?:tu|tue)<2>mir<2>(?:was|etwas) an
        verletz\w*<2>mich<2>(?:selbst|selber)|(?:mich|mir) (?:selbst|selber)<2>(?:verletz\w*|weh ?tun|weh ?zutun|schaden)
        (?:besser|lieber|wäre)<2>tot|keinen sinn<3>leben|leben<3>(?:keinen sinn|sinnlos|nicht lebenswert|nichts mehr wert)|kein grund mehr zu leben|nicht lebenswert
        """,
        doubtful=r"""
        (?:will|möchte|mag|könnte|lieber)<3>sterben|tot<1>(?:sein|wäre)|allem ein ende
        (?:ritze|ritzen|geritzt)|überdosis\w*
        """,
    ),
)
