"""How people say in German what else the body does: falls, bleeding, double vision, drying out."""

from __future__ import annotations

from engine.symptoms.denying import NO_AT_HOME, NO_MORE, NOT
from engine.symptoms.german.warnings import german_table
from engine.symptoms.names import Symptom
from engine.symptoms.patterns import Phrase

# ruff: noqa: E501 - a pattern stays on one line


_REST = r"(?:liegen|liegend|liege|im sitzen|sitzen|sitze|sitzend|ruhe|ruhepuls|bett|sofa|couch|stuhl|schreibtisch|stehen|stehend|ohne bewegung|nichts tun|nichtstun|aufwachen|aufgewacht|morgens|badewanne|schlaf\w*|fernsehen|einfach so)"

GERMAN_BODY: tuple[Phrase, ...] = (
    *german_table(
        Symptom.STROKE_SIGNS,
        "mund gesicht schlaganfall halbseitig seite sprache lid lachel hangt arm zunge halfte rede sprech sprich stimme brei wollt wollte hand arm linke rechte heraus schief unterli korper klinge rausgek lachen kriege rausgeb bringe grinsen rausbek bekomme kamen wange lauft sagen unsinn laute gelall gerausc gebrabb kauderw nichts",
        sure=r"""
        (?:nur|bloss)<2>(?:halbe?|die halbe|eine|die linke|die rechte)<1>(?:seite|gesicht|mund|gesichtshälfte|hälfte)<4>(?:hoch|ging|geht|bewegt|mit|lächel\w*|gelächelt|runter)?|(?:lächeln|lachen|grinsen)<5>(?:schief|halbe|eine seite|nicht mit|hängt)|halbe (?:seite|gesicht)<3>(?:ging|geht|hoch|hängt|taub)
        (?:rede|sprech\w*|spricht|klinge|sprache|stimme|aussprache)<4>(?:verwaschen|lallend|undeutlich|verschwommen|schwerfällig|wie betrunken|wie besoffen|breiig|nuschel\w*)|(?:kam|kommt|kamen)<4>(?:nur )?(?:brei|gelall|unsinn|gebrabbel|kauderwelsch|laute|geräusche|nichts)<2>(?:raus|heraus)|(?:wollte|will)<4>(?:sagen|sprechen|reden)<7>(?:nicht|brei|nichts|kein wort|ging nicht)
        (?:linke|rechte|linker|rechter|linkes|rechtes)<1>(?:hand|arm|bein|seite|fuss|gesichtshälfte)<3>(?:schläft|eingeschlafen|taub|weg|gefühllos|tot|gelähmt|kraftlos|gehorcht nicht|hängt|kribbelt)(?! (?:heute )?(?:gut|tief|noch im bett))|kaffee<4>(?:mundwinkel|aus dem mund|läuft)|sabber\w*<4>(?:seite|mundwinkel)
        (?:mundwinkel|gesicht|gesichtshälfte|augenlid|lid|lächeln|mund|wange|unterlippe)<4>(?:häng\w*|schief|taub|gelähmt|runter|verzogen|ungleich|asymmetrisch|bewegt sich nicht)|(?:hängt|hängend\w*|schiefe?\w*)<3>(?:mundwinkel|gesicht|augenlid|lächeln|mund|gesichtshälfte)|schlaganfall\w*|halbseitig\w*
        (?:eine|linke|rechte|halbe|ganze linke|ganze rechte)<1>(?:seite|körperhälfte|gesichtshälfte|hälfte|körperseite)<4>(?:taub|gelähmt|weg|gefühllos|kraftlos|tot|schlaff|schwach|eingeschlafen|hängt|kribbelt)
        (?:halbe[rs]?|halbes)<1>(?:gesicht|körper|mund)<3>(?:taub|gelähmt|hängt|gefühllos|weg)
        sprache<3>(?:weg|verwaschen|undeutlich|schwer|weggeblieben)|zunge<3>(?:schwer|taub|dick|gehorcht|lahm)|(?:linke|rechte)\w? (?:arm|hand|bein)<3>(?:plötzlich|auf einmal|schlagartig)<2>(?:taub|gelähmt|weg|kraftlos|schlaff)
        (?:plötzlich|auf einmal)<5>(?:nicht|kein wort|keinen ton|kaum)<3>(?:sprechen|reden|rausbekommen|herausbringen|rausgebracht|rausgekriegt)|(?:bringe|kriege|bekomme)<4>(?:kein wort|keinen satz|keine wörter|keine worte)<2>(?:raus|heraus|mehr)
        """,
    ),
    *german_table(
        Symptom.HEAVY_BLEEDING,
        "blut kaffeesatz teer binde tampon klumpen spritzt pumpt sprudelt stillen stoppen stuhl koagel kacke wunde pechsch schwarz",
        sure=r"""
        \w*blut\w*<8>hört<2>nicht<2>auf|\w*bluten?<4>(?:seit|über)<2>(?:stunde\w*|einer stunde|zwei stunden|\d+ minuten|heute früh|gestern)|(?:voller|voll|voll mit|alles voller|schüssel|waschbecken|becken)<3>blut(?! (?:abgenommen|werte))|blut<3>(?:in der schüssel|kloschüssel|am bein|die beine|hinunter)
        (?:binde|tampon)\w*<3>(?:durch|stunde|halbe|minuten|voll)|(?:stunde|minuten)<3>(?:binde|tampon)\w*<2>(?:durch|voll)?|blutklumpen|(?:mit|grosse|dicke|viele)<1>(?:klumpen|koagel)<1>(?:blut|periode|$)|klumpen<2>blut
        blut<3><kotz>|<kotz><3>blut|blut<1>(?:gespuckt|gekotzt|erbrochen|spucke|kotze|gebrochen)|bluterbrechen|blut<1>(?:husten|gehustet|huste)|huste\w*<2>blut|kaffeesatz<3>(?:erbrochen|gekotzt|gebrochen)|<kotz><4>kaffeesatz
        blut<3>(?:stuhl|durchfall|kot|klo|toilette|kacke)|blutige?[rn]? (?:stuhl|durchfall)|(?:stuhl|kot|kacke)<3>(?:blutig|teer\w*|pechschwarz|schwarz|blut)|teerstuhl|schwarzer stuhl
        (?:blut\w*|wunde)<5>(?:nicht|kaum)<2>(?:auf|stoppen|stillen|zu stillen|zu stoppen)|(?:blute|blutet|geblutet|blutung)<2>(?:stark|heftig|wie verrückt|wie sau|ununterbrochen|stundenlang|ohne ende|in strömen)|(?:starke|heftige|massive|schwere) blutung\w*|<kann><4>(?:nicht|kaum)<2>(?:stillen|stoppen)
        (?:viel|überall|lache|so viel|literweise|massenhaft|jede menge)<2>blut(?! (?:spenden|abgenommen|abnehmen))|blut<2>(?:überall|läuft|strömt|spritzt|verloren|rinnt)|verblut\w*|blutsturz|binde<3>(?:stunde|halbe)|durchgeblutet
        """,
        doubtful=r"""
        (?:es|das) (?:spritzt|sprudelt|pumpt)(?: (?:raus|richtig|nur so|stark|immer noch))*(?= ?$)
        """,
    ),
    *german_table(
        Symptom.DOUBLE_VISION,
        "doppel zwei zweimal verdoppel auge zweifach mal nebenei auseina sah monde turen lampen bildsch kopfe bilder teller handys gesicht sehe",
        sure=r"""
        (?:da sind|sind|stehen|liegen|habe|hab|seh|sehe|sah|auf einmal|plötzlich)<3>zwei<1>\w+<3>(?:wenn ich|statt|obwohl|mit beiden augen|nebeneinander|wo nur)|(?:linien|zeilen|buchstaben|lichter|zahlen|strasse|bild|schrift|ränder|alles|gesichter)<6>(?:verdoppel\w*|doppelt|zweifach|laufen auseinander|nebeneinander|zweigeteilt)(?! (?:so|gegessen|gemoppelt|gewogen))
        (?:sehe?|seh|sah)<5>(?:zwei ?mal|doppelt|verdoppelt|zweifach)|(?:zwei ?mal|doppelt)<5>(?:auf(?:'m|m| dem)|im)<1>(?:bildschirm|handy|fernseher|spiegel)|ein auge (?:zu|zukneifen|zuhalten|zumachen)|mit beiden augen<3>(?:doppelt|zwei)
        (?:sehe|seh|sah|sehen|gesehen|seht|sieht|lese)<4>(?:doppelt?|zweimal)(?! so)|doppelt<3>(?:sehen|gesehen|sehe)|doppelbilder?|doppeltsehen|(?:alles|schrift|buchstaben|bildschirm|bild)<3>doppelt(?! so)
        (?:sehe|seh|sah)<3>(?:alles )?(?:zwei|2)<1>(?:von|handys?|bildschirme|gesichter|monde|köpfe|teller|lampen|türen|bilder)|alles zweimal(?! (?:gegessen|gewogen|gecheckt))
        """,
    ),
    *german_table(
        Symptom.MUSCLE_BREAKDOWN,
        "rhabdo",
        sure=r"""
        rhabdo\w*
        """,
    ),
    *german_table(
        Symptom.FALL,
        "sturz gestürzt hingefallen hingeflogen gefallen fall kopf wand bein knie langgelegt gestolpert ausgerutscht fallen geflogen boden aufgeschlagen geknallt gestossen rutsch knickt gelandet musste aufrech gestrau getorke getaume gesegel halten hingele fusse fliesen stirn schadel gekippt",
        sure=r"""
        (?:ausgerutscht|gerutscht|gestolpert|gestrauchelt|umgeknickt|gekippt)<7>(?:hin|hingefallen|gelandet|gefallen|hüfte|handgelenk|knie|ellbogen|kopf|steiss|schulter|boden|treppe|rücken|gestürzt|geprellt|geflogen)|(?:auf|gegen)<2>(?:die |das |den |dem )?(?:hüfte|handgelenk|steiss|steissbein|ellbogen|hinterkopf)<2>(?:geknallt|gefallen|gelandet|gestürzt)|(?:dusche|treppe|laufband|bad|eis|stufe)<4>(?:ausgerutscht|weggerutscht|hingefallen|gestolpert)
        gestürzt(?! (?:auf|in) (?:die|den|das) (?:arbeit|essen|reis|training))|hingefallen|langgelegt|hingelegt<1>auf die (?:nase|fresse|schnauze)|auf die (?:nase|fresse|schnauze|knie) (?:gefallen|geflogen)|sturz(?! (?:bach|helm))
        (?:treppe|bett|stuhl|leiter|klo|toilette|dusche|bühne|laufband|hocker|rad|fahrrad|stufen?|wanne)<3>(?:runter ?|herunter ?|hinunter ?)?(?:gefallen|geflogen|gestürzt|gerutscht|gesegelt)(?! (?:ins))
        (?<!im )(?:kopf|stirn|schädel|hinterkopf)<4>(?:angeschlagen|gestossen|angestossen|aufgeschlagen|geknallt|angehauen|gehauen)|(?:aufgeschlagen|geknallt)<3>(?:kopf|boden|fliesen|waschbecken)
        (?:beine|füsse|knie|bein)<4>(?:weggezogen|weggerutscht|unter mir weg|weggesackt|unterm hintern weg|unter mir)
        (?:boden|fliesen|wand)<3>(?:gelandet|runtergerutscht|wiedergefunden|aufgekommen)|(?:gelandet|lande)<3>(?:auf dem|am)<1>boden|an der wand<1>(?:runter|herunter)
        """,
        doubtful=r"""
        (?:gestolpert|gestrauchelt|ausgerutscht|getaumelt|getorkelt)(?! (?:über (?:die|das|den) (?:regel|frage|artikel|wort)))
        <kann><3>(?:mich )?(?:nicht|kaum)<2>(?:auf den beinen|aufrecht|halten)|musste mich<3>(?:festhalten|abstützen)
        """,
    ),
    *german_table(
        Symptom.FAST_HEART,
        "puls herz bpm schlage hf uhr",
        sure=rf"""
        (?:puls|herzfrequenz|hf|bpm|herz|herzschlag)<5>(?:1\d\d|2[0-2]\d)<5>{_REST}
        {_REST}<5>(?:puls|herzfrequenz|hf|bpm|herz|herzschlag)<4>(?:1\d\d|2[0-2]\d)
        (?:1\d\d|2[0-2]\d)<1>(?:bpm|schläge|schlägen|puls|herzfrequenz)<5>{_REST}|{_REST}<4>(?:1\d\d|2[0-2]\d) ?(?:bpm|schläge|puls)
        (?:ruhepuls|ruheherzfrequenz)<4>(?:1\d\d|2[0-2]\d|9[5-9])
        """,
        doubtful=r"""
        (?:hohem|hoher|hohen|erhöhter|erhöhtem|zu hohem|schneller|schnellem)<1>(?:ruhe)?(?:puls|herzfrequenz|herzschlag)|uhr<4>(?:piept|warnt|alarm|meldet|schlägt alarm|vibriert)<4>(?:puls|herz\w*)
        (?:puls|herzfrequenz|hf|bpm|herz|herzschlag)<4>(?:1[1-9]\d|2[0-2]\d)(?! ?(?:g|kg|kcal|gramm|mal|ml|m)\b)
        (?:1[1-9]\d|2[0-2]\d) ?(?:bpm|schläge)
        (?:ruhepuls|puls|herzfrequenz)<3>(?:viel zu hoch|zu hoch|durch die decke|geht nicht runter|nicht runter|kommt nicht runter|über (?:hundert|100)|dreistellig|total hoch|sehr hoch|erhöht)
        """,
    ),
    *german_table(
        Symptom.BLEEDING,
        "blut",
        sure=r"""
        blut<5>(?:papier|abwischen|tuch|tempo|wischen|klopapier|slip|unterwäsche|wäsche|zähneputzen|spülen)|(?:bisschen|etwas|wenig|tropfen|spur|schlieren|streifen)<1>(?:helles |frisches |rotes )?blut
        blute|blutet|bluten|blutete|geblutet|blutung\w*(?! (?:hat angefangen|setzt ein))|nasenbluten|zahnfleischbluten|zwischenblutung\w*
        blut<3>(?:nase|mund|zahnfleisch|ohr|ohren|spucke|speichel|taschentuch|klopapier|kissen|schleim|zahnbürste|waschbecken|unterhose)
        """,
    ),
    *german_table(
        Symptom.DRYING_OUT,
        "sauna spuck trink schwitz bad bade getrunken wasser dampfbad ausgetrocknet austrock dehydr entwasser flussig durst schluck mull trocken folie abkoche infraro nippe trank auszutr mund hochste bloss becher glas lippen",
        sure=r"""
        (?:sauna|dampfbad|heisses? bad|heissen? bade\w*|badewanne)<7>(?:gewicht|kilos?|kg|wasser|trocken\w*|schwitz\w*|ausschwitz\w*|verlier\w*|loswerden|runter|klasse|limit|abkochen|entwässer\w*|stunden?)
        (?:gewicht|kilos?|wasser|trocken\w*|abkochen|ausschwitz\w*|schwitzen|runter)<7>(?:sauna|dampfbad|heissen? bad|heisse badewanne)|abkochen(?! (?:den|die|das|wasser))
        schwitzanzug\w*|saunaanzug\w*|(?:müllsack|müllsäcke|müllbeutel|mülltüte\w*|frischhaltefolie)<5>(?:cardio|laufen|gelaufen|schwitz\w*|training|trainiert|gejoggt|joggen|rad|schlaf\w*|wasser|gewicht|eingewickelt)|(?:cardio|laufen|gelaufen|joggen|training|rad|eingewickelt|schwitz\w*)<4>(?:müllsack|müllsäcke\w*|müllbeutel|mülltüte\w*|frischhaltefolie)
        (?:spucke|spuck|spucken|gespuckt|ausspucken)<5>(?:becher|flasche|eimer|tüte|gewicht|wasser|ganzen tag|taschentuch|kaugummi)|(?:becher|flasche|eimer|kaugummi)<3>(?:spucke|spucken|gespuckt)
        (?:trinke?|trink|getrunken|trank|trinken)<3>(?:(?:heute |seit \w+ |jetzt |gar |bis \w+ |absolut |fast )*(?:nichts|nix)(?: mehr)?|kein wasser|nicht mehr|keinen (?:schluck|tropfen)|keine flüssigkeit)(?! (?:süsses|alkohol\w*|kaffee|als))
        (?:nichts|nix|kein wasser|keinen (?:schluck|tropfen)|nicht|kaum(?: noch)?|kaum (?:was|etwas)|keine flüssigkeit|fast nichts)<3>(?:getrunken|trinken|trinke)(?! (?:alkohol|kaffee))|nicht trinken (?:bis|damit|um|dürfen)
        (?:wasser|trinken|flüssigkeit|trinkmenge)<3>(?:weglassen|weggelassen|gestrichen|streichen|streiche|lasse weg|abgesetzt|absetzen|gestoppt|reduziert|eingestellt|auf null|gekürzt|gecuttet|cutten)|(?:lasse|lass|streiche|setze)<3>(?:wasser|trinken|flüssigkeit)<2>(?:weg|ab)?
        (?:nur|bloss|höchstens)<3>(?:schluck|schlückchen|schlucke|ein glas|einen becher|lippen)<3>(?:wasser|getrunken|benetzt|heute|am tag|pro tag|seit)|nur noch<2>(?:nippe|schlückchen\w*|schluckweise)
        (?:will|möchte|muss|werde|soll)<4>(?:austrocknen|dehydrieren|entwässern|auszutrocknen|trockenlegen)|(?:mich|körper)<2>(?:austrocknen|ausgetrocknet|trockenlegen|entwässern|dehydrier\w*)|zum entwässern
        """,
        doubtful=r"""
        (?:war|gehe?|ging|saß|sitze|bin|mache|gegangen|minuten|min|stunde|noch|runden?|gänge|gang)<4>(?:sauna|dampfbad|infrarotkabine)|(?:sauna|dampfbad|infrarotkabine)<2>(?:gehen|gewesen|gegangen|gesessen|gänge|gang)
        dehydriert|dehydrierung|ausgetrocknet|(?:mega|extrem|riesigen|riesen|unglaublich|ständig|totalen|solchen|wahnsinnigen) ?durst|mund<3>(?:staubtrocken|wüste|sahara|ausgedörrt)|(?:kaum|zu wenig|viel zu wenig)<1>(?:getrunken|trinke)
        """,
    ),
    *german_table(
        Symptom.UNWELL,
        "leiche gespenst gespuckt ausgekotzt tod fuhl unwohl beschissen elend gehts geht stimmt krank hilfe notarzt schlapp erkaltet grippe komisch notruf sterbe scheisse dreckig mies hinuber vollig komplet total erkaltu eimer kaputt eigenar rettung seltsam merkwur anders arzt ende wohl richtig okay normal",
        sure=r"""
        (?:fühle?n? mich|fühl mich|fühl|fühle|geht(?:'s| es|s)? mir|mir geht(?:'s| es|s)?|mir gehts|gehts mir)<3>(?:beschissen|elend|elendig|mies|scheisse|scheiße|dreckig|hundeelend|nicht gut|gar nicht gut|schlecht|unwohl|miserabel|schrecklich|furchtbar|grauenhaft|grottig|kacke|sterbenselend|krank|total daneben|übel|wie (?:ausgekotzt|überfahren|gerädert|erschlagen|tot|ein wrack|ausgespuckt|vom (?:lkw|laster|bus|zug) (?:überfahren|überrollt)|durch den wolf|ein häufchen elend))(?! vorbereitet)
        unwohl(?! (?:im|in dem|mit der) (?:bikini|pose|posing))|hundeelend|(?:irgend)?(?:etwas|was)<1>stimmt<2>nicht(?! (?:mit (?:dem|der|den) (?:plan|waage|app|zahlen|zeiten))|im plan|am plan)|(?:mit mir|bei mir)<2>stimmt<2>nicht
        (?:bin|werde|werd)<2>(?:krank|erkältet)|grippe|erkältung|(?:ruf\w*|brauche?|holt?)<3>(?:hilfe|notarzt|krankenwagen|arzt|rettungswagen|notruf)(?! (?:beim|bei der|mit (?:dem|der)|für))|hilfe bitte|bitte hilfe
        (?:ich )?glaube? ich sterbe|ich sterbe(?= (?:gleich|echt)$|$)
        """,
        doubtful=r"""
        (?:seh|sehe|schau|schaue)<2>aus wie<2>(?:tod|tode|leiche|gespenst|ausgespuckt|gespuckt|ausgekotzt)
        (?:fühle? mich|fühl mich|fühlt sich|geht(?:'s| es|s)? mir|mir geht(?:'s| es|s)?|mir ist)<3>(?:komisch|seltsam|merkwürdig|eigenartig|nicht (?:so )?(?:gut|wohl|richtig|normal|ok|okay)|anders)(?! (?:im bikini|beim posing|vorbereitet))
        (?:bin|total|völlig|komplett)<1>(?:im eimer|am ende|kaputt|hinüber)
        """,
    ),
)
#: Beside dark urine these make it muscle that breaks down.
GERMAN_MUSCLES_HURT = (
    r"(?:muskeln?|beine?n?|arme?n?|oberschenkel\w*|waden?|schultern?|rücken|körper|alles)"
    r"(?: [\w']+){0,4} (?:weh|schmerz\w*|steinhart|bretthart|hart|geschwollen|brennen|brennt|steif|schwach|krampf\w*|muskelkater|strecken|beugen|höllisch\w*|hölle|schreien|unerträglich|mörderisch)|"
    r"muskel(?:schmerz\w*|kater|krämpf\w*)|gliederschmerz\w*|(?:schmerzende?|steife|harte|geschwollene) (?:muskeln|beine|arme|oberschenkel)|schmerz\w*(?: [\w']+){0,3} (?:muskeln?|beinen?|armen?|oberschenkeln?)"
)


# ruff: noqa: E501 - a pattern stays on one line


_FELL = r"(?:brochen|brochn|ghaut|gehaut|ghauen|gsackt|gesackt|gebrochen|gebrocha|brocha|klappt|geklappt|gklappt|gfallen|gfalln|gefallen|gsunken|gesunken|gekracht|kracht)"
_FLOOR = r"(?:boden|bodn|boda|fliesen|treppenhaus|stiegenhaus|flur|gang|parkplatz|bad|küche|treppe|dusche|matte|asphalt|gehweg|straße|teppich)"
_PILLS = r"(?:schlaf|schmerz|beruhigungs|herz|kopfschmerz|entwässerungs|blutdruck)?(?:tabletten|pillen|tropfen|medikamente)"

GERMAN_DIALECT: tuple[Phrase, ...] = (
    *german_table(
        Symptom.FAINTING,
        "umgheit zsamm zusamm zam zäme zäma zämä kollab kolab kolap lichter gelegen glegn glaega gläga fliesen boda lag log umkippt umgfall weggetre verleit umghaut umgehaut ohnmacht ohnmächt zsam",
        sure=rf"""
        (?:zsamm|zsam|zusamma|zam|zamm|zäme|zäma|zämä) ?{_FELL}
        kol+[ab]+iert<2>(?:beim|auf|im|nach|am|in|vorhin|heute|gestern)
        (?:mir|mia|mer) (?:sin|sind|san|sen|ham|haben)?<2>(?:die )?lichter (?:aus|ausgegangen|ausganga|ausgangen|weg)|lichter<2>(?:ausgegangen|ausganga|ausgangen)
        (?:auf|uff|of) (?:einmal|amal|eemal|oimol) (?:lag|log|bin|bi|lieg|lieg)<1>(?:ich|ick|i)<3>{_FLOOR}?
        schwarz (?:worda|gworn|gwordn|worn|wurn)<5>(?:gläga|glegn|gelegen|boda|boden|bodn|glegen|liegen)
        (?:weil|dass|als|wo) (?:ich|i|ick)<4>(?:im|auf der|auf dem|aufm|vor dem|vor der|in der|auf den) {_FLOOR}<1>(?:gelegen|lag|glegn|aufgewacht|gefunden|rumlag)
        (?:erstes|zweites|drittes|\d+) mal<2>(?:weggetreten|ohnmächtig|umgekippt|weggesackt|bewusstlos|umgefallen)
        (?:zweimal|dreimal|viermal)<2>(?:weggetreten|ohnmächtig|weggesackt|bewusstlos)
        mir<1>(?:gingen|gehen|ging|geht|sind)<5>(?:lichter|licht) aus
        (?:umkippt|umgfalln|umgfalle)
        (?:bi|bin|i|ich|hüt|geschter|eifach|grad)<5>umgheit|umgheit<1>(?:im|uf|ufem|vor|bim|am|i de|und)
        """,
        doubtful=r"""
        umgheit
        hätt(?:e)?s? (?:mi|mich)<2>(?:fascht|fast)<2>(?:verleit|umghaut|hinghaut|umgehauen|hingehauen|gelegt)
        """,
    ),
    *german_table(
        Symptom.BREATHLESSNESS,
        "luft schnauf",
        sure=rf"""
        {NO_AT_HOME} luft<2>(?:mehr|kriag|griag|krieg|griagt|kriagt|gekriegt|überkomme|bekomm\w*|kumm)|(?:kriag|griag|krieg|kriege|bekomm|bekomme|kriagt)<2>{NO_AT_HOME} luft
        (?:hob|hab|han|ho)<1>{NO_AT_HOME} luft
        """,
    ),
    *german_table(
        Symptom.LIMB_WEAKNESS,
        "bein bei arm hand fuss haxn haxe",
        sure=rf"""
        (?:bein|arm|hand|fuß|haxn) (?:geht|funktioniert|gehorcht|bewegt sich|macht) (?:{NO_MORE}|{NOT})(?= ?$| ?,| (?:will|und|wenn|ich|mehr))
        """,
    ),
    *german_table(
        Symptom.HEAVY_BLEEDING,
        "blut rot hochkam hochgekomm erbroch rauskam raufkam schwarz kaffeesatz krümel",
        sure=r"""
        (?:kotz\w*|gekotzt|erbroch\w*|erbrech\w*|übergeb\w*|spuck\w*|brechen)<5>(?:was rotes|rotes|blutig\w*|blut)(?! (?:wurst|orange))
        (?:hochkam|hochgekommen|hoch kam|erbrochene|rauskam|raufkam)<4>(?:braunschwarz|schwarz|kaffeesatz|krümelig|blutig)\w*<1>(?:krümelig|braun)?
        blut\w*<2>(?:beim|im) (?:kotz\w*|erbroch\w*|übergeben|brechen)
        (?:schüssel|kloschüssel|klo|toilette)<2>(?:voller|voll mit|alles|ganz)<1>(?:blut|rot|blutig)
        """,
        doubtful=r"""
        (?:beim )?abwischen<2>(?:alles )?(?:rot|blutig)
        """,
    ),
    *german_table(
        Symptom.STROKE_SIGNS,
        "lall nuschel auge augn",
        sure=r"""
        (?:lall|lalle|lallte|lallen|nuschel|nuschle)<2>(?:wie|nur noch|obwohl|als wär|als ob)<3>(?:besoffen\w*|betrunken\w*|zu|dicht|getrunken)?
        (?:linke[snm]?|rechte[snm]?|einem|einen|ein) (?:auge|augn)<5>(?:blind|vorhang|nichts (?:mehr )?gesehen|nix mehr gesehen|nichts mehr)
        """,
    ),
    *german_table(
        Symptom.PALPITATIONS,
        "puls herz hf herzfrequenz schläge schlage",
        sure=r"""
        (?:ruhepuls|puls|herzfrequenz|hf|herz)<4>(?:1[3-9]\d|2[0-2]\d)<3>(?:im liegen|im bett|auf der couch|aufm sofa|auf dem sofa|im sitzen|in ruhe|beim liegen|im schlaf)
        (?:im liegen|im bett|auf der couch|in ruhe)<3>(?:puls|herzfrequenz|hf)<3>(?:1[3-9]\d|2[0-2]\d)
        """,
    ),
    *german_table(
        Symptom.SELF_HARM,
        "tablette pille tropfen medikament dasein da wozu warum wieso weshalb leben testament abschied ohne gegoogelt mehr dawisch",
        sure=rf"""
        (?:ganze|alle|volle|komplette|gesamte) (?:\w+ )?(?:packung|schachtel|dose|blister|{_PILLS})<4>(?:genommen|geschluckt|eingeworfen|intus|gnommen)
        {_PILLS}<6>(?:alle geschluckt|eigentlich alle|alle genommen|mehr als ich sollte|viel zu viele)
        (?:gegoogelt|gesucht|nachgeschaut|gelesen)<6>(?:{_PILLS})<5>(?:braucht|reichen|reicht|tödlich|nötig)
        (?:wozu|warum|weshalb|wieso)<4>(?:überhaupt |eigentlich |hier )*noch (?:da bin|lebe|hier bin|weiterlebe|auf der welt bin)|(?:wozu|warum|wieso) (?:bin|leb|lebe) ich (?:überhaupt |eigentlich )*noch(?: da| hier)?(?= ?$| ?,| ?\?)
        schnauze<2>voll<2>(?:vom|von dem|von meinem|von diesem) (?:leben|dasein|existieren|dem ganzen leben)
        """,
        doubtful=rf"""
        bin ich<1>(?:eh|sowieso|ohnehin|eh scho)<1>{NO_MORE} da|(?:wenn|wennst) (?:ihr |du )?(?:mich|mi)<3>{NO_MORE}<1>(?:findet|findest|erreich\w*|dawischt|siehst)
        (?:ihr|alle|die|die welt|euch)<2>(?:kommt|kommen|kämt|geht|wär|wäre)<3>(?:besser )?ohne mich(?! (?:trainier\w*|anfang\w*|essen|los|frühstück\w*))
        testament<5>(?:gelegt|geschrieben|gemacht|fertig|verfasst)
        """,
    ),
    *german_table(
        Symptom.FAINTING,
        "bewusst",
        sure=r"""
        bewusst(?:sein|si|sei|sin)<3>(?:verlo\w+|verlieren|weg gsi)
        """,
    ),
    *german_table(
        Symptom.SWELLING,
        "gschwoll",
        doubtful=r"""
        (?:knia?|knie|knöchl|knöchel|fuass|fiass|fuß|füße|haxn|hax|händ|hand|finga|finger|gsicht|gsichd|augn|augen|wadl|wadn)<5>(?:an)?gschwoll\w*
        """,
    ),
    *german_table(
        Symptom.PURGING,
        "abführ abfuhr",
        sure=r"""
        (?:nehm|nehme|nimm|trink|trinke|schluck|schlucke)(?! ich)<4>abführ(?:tee|tablett|mittel|tropfen|zeug)\w*
        abführtee\w*(?! (?:hilft|gut|erlaubt))<5>(?:abend|morgen|täglich|getrunken|nacht|keinem|niemand\w*|heimlich|wieder|tag)
        """,
    ),
    *german_table(
        Symptom.DIARRHOEA,
        "klo häusl hausl wc toilette schüssel schussel",
        sure=r"""
        (?:vier|fünf|sechs|sieben|acht|neun|zehn|fünfzehn|zwanzig|[4-9]|1\d|2\d) ?(?:mal|moi|mol|x)<3>(?:am|aufm|auf dem|auf'm|aufs|aufn) (?:klo|häusl|wc|häuserl|topf|toilette)
        (?:viermal|fünfmal|sechsmal|siebenmal|achtmal|zehnmal|sechsmoi|fünfmoi|siebnmoi|zehnmoi)<3>(?:klo|häusl|wc|häuserl|toilette)
        (?:klo|toilette|wc|häusl|schüssel)<3>(?:mein|meine|zum) (?:büro|zuhause|wohnzimmer|homeoffice|zweitwohnsitz|bester freund)
        """,
    ),
    *german_table(
        Symptom.DRYING_OUT,
        "trocknen wasser flasche dry",
        sure=r"""
        ab (?:jetzt|jetz|heute|sofort|mittag) (?:trocknen|trocken legen|dry|trockne ich|austrocknen|kein wasser mehr|kein tropfen mehr)
        (?:flaschen?|wasser) (?:weggestellt|weggesperrt|weggeschlossen|eingeschlossen)
        """,
    ),
    *german_table(
        Symptom.FALL,
        "gerutscht stürzt sturzt hingefallen hingeflogen gestolpert",
        sure=r"""
        (?:abgerutscht|ausgerutscht|gestürzt|hingefallen|hingeflogen|gestolpert|runtergefallen)<4>(?:knie|beine|schwach|weich|wackelig|wacklig|schwindlig|schwindelig)
        """,
    ),
    *german_table(
        Symptom.EXHAUSTION,
        "blei",
        sure=r"""
        (?:beine?|arme?|körper|füße)<2>(?:wie|aus|schwer wie) blei|bleierne? (?:müdigkeit|beine|arme)
        """,
    ),
    *german_table(
        Symptom.LOW_MOOD,
        "wurscht wurst egal gleichgültig",
        sure=r"""
        (?:alles|is ma alles|mir ist alles|mir is alles)<2>(?:wurscht|wurst|scheißegal|völlig egal|total egal|egal geworden|gleichgültig)<2>(?:auch|sogar|selbst)<1>(?:der|die|das) (?:wettkampf|show|bühne|diät|training)
        (?:wettkampf|show|bühne|training|alles) (?:ist |is )?mir (?:nur noch |inzwischen |gerade |grad )?(?:scheißegal|völlig egal|total egal|komplett egal)
        """,
    ),
)
