"""The signs in German that emergency services ask for and that no single complaint names.

The same kinds as in English (`english/dangers.py`), from memory.
"""

# ruff: noqa: E501 - a pattern stays on one line
from __future__ import annotations

from engine.symptoms.german.warnings import german_table
from engine.symptoms.names import Symptom
from engine.symptoms.patterns import Phrase

_PILLS = r"(?:\w*tabletten|pillen|\w*tropfen|medikamente|schmerzmittel|kapseln|paracetamol|ibuprofen|ibus|aspirin|koffeintabletten)"
_SWOLLEN = r"(?:\w*geschwollen|schwill\w*|schwell\w*|anschwell\w*|dick|ballons?|aufgequollen|zugeschwollen|schlauchboote)"
_SIDE = r"(?:eine|nur eine|ein|nur ein|linke|rechte|linkes|rechtes|die linke|die rechte|das linke|das rechte)"

GERMAN_DANGERS: tuple[Phrase, ...] = (
    *german_table(
        Symptom.DANGER_SIGNS,
        "rettung krankenwagen notarzt sanit seitenlage notaufnahm schockraum intensivst quaddel ausschlag nessel juck pusteln lippe zunge hals allerg anaphyl nacken genick schwitz haut tablett pille tropfen medikam schmerzm kapsel paracet ibu aspirin koffein packung schachtel blister flasche röhrchen wade bein zucker blutzuck messger krall pfötchen pfotchen finger hände blase pinkel bauch brett kopf rüttel ruttel wach augen taub schritt zerreiss reiss schulterbl fieber temperat gefahr notfall verschluckt vergift stecken cashew riegel nuss nüss garnel sesam kinn spucke speichel giftig falsch danger",
        sure=rf"""
        (?:quaddeln?|ausschlag|nesselsucht|pusteln|juck\w*)<,8>(?:lippen?|zunge|gesicht|augen|hals|lider)<4>{_SWOLLEN}
        (?:lippen?|zunge|hals)<4>{_SWOLLEN}<,8>(?:quaddeln?|ausschlag|nesselsucht|juck\w*|pfeif\w*|nuss|nüsse|erdnuss\w*|cashew\w*|garnelen|sesam|antibiotik\w*)
        (?:quaddeln?|ausschlag|juck\w*|nuss|nüssen?|erdn[uü]ss\w*|cashew\w*|garnelen?|sesam)<,8>(?:kaum|keine?|schlecht|schwer)<3>(?:luft|atmen|atem)
        allergischer? schock|anaphyla\w*|(?:schwere|heftige|krasse) allergische reaktion
        (?:nacken|genick)<4>(?:steif|bretthart|starr|unbeweglich|geht nicht runter|lässt sich nicht beugen|nicht beugen)<,9>(?:licht|fieber\w*|schüttelfrost|kinn|kopf\w*|glühe?|ausschlag|heiss)
        (?:licht<3>(?:weh|hell|schmerz\w*|blendet)|fieber\w*|schüttelfrost|glüh\w*|friere?n?)<,9>(?:nacken|genick)<4>(?:steif|bretthart|starr|geht nicht|lässt sich nicht|nicht|weh)|kinn<4>(?:nicht|kaum)<4>brust|steifer? (?:nacken|genick)<,6>(?:fieber|licht|schüttelfrost|kopf\w*)
        schwitze?<3>(?:nicht mehr|nimmer)<,8>(?:heisse? haut|trockene? haut|haut<2>(?:heiss|trocken)|schwindel\w*|verwirrt|dreh\w*)|(?:heisse?|glühende?)<,1>trockene haut|trockene<,1>heisse haut|haut<3>(?:heiss und trocken|trocken und heiss)|heiss<,2>trockene haut
        (?:zu viele?|viel zu viele?|eine handvoll|handvoll|ne handvoll|\d\d)<1>(?:von )?(?:den |die |meine |diese |diesen )?{_PILLS}<3>(?:genommen|geschluckt|eingeworfen|intus|reingehauen|runtergespült|geworfen|gfressn|gnommen)
        (?:habe?|nahm|schluckte)<3>(?:zu viele?|handvoll)<3>{_PILLS}
        (?:ganze|komplette|volle|gesamte)<1>(?:packung|schachtel|blister|röhrchen)(?: (?:von )?(?:den |der )?{_PILLS})?(?: auf einmal)? (?:geschluckt|eingeworfen|runtergespült|intus)
        {_SIDE}<1>(?:wade|unterschenkel|bein|oberschenkel)<5>(?:dick|geschwollen|heiss|rot|warm|prall)<,8>(?:heiss|rot|warm|luft|atm\w*|weh|schmerz\w*|flug|fahrt|andere|pocht|spannt)
        {_SIDE}<1>(?:wade|unterschenkel|bein|oberschenkel)<3>(?:doppelt|zweimal) so (?:dick|gross)|(?:wade|bein)<4>(?:doppelt|viel) so dick wie
        (?:blutzucker|bz|glukose)<5>(?:[12][.,]\d|(?:[23]\d|4\d)(?! ?(?:g|gramm|kg|min|%))|lo)(?= ?$| ?,| (?:und|laut|auf|mg|mmol|ich|zitter\w*|schwitz\w*|am))|zucker<2>(?:[12][.,]\d|[234]\d)<2>(?:messgerät|gemessen|mg|mmol)
        (?:zuckerwert|messgerät|zuckermesser|sensor|pumpe)(?: (?:sagt|zeigt|meldet|steht auf|bei|von|ist))?<1>[12][.,]\d(?!\d| ?(?:kg|kilo|l|liter|g)\b)
        (?:hände?|finger|füsse)<4>(?:krall\w*|pfötchen\w*|verkrampf\w*|zusammengekrampft|eingerollt)<,8>(?:auf|lippen|kribbel\w*|gesicht|strecken|gerade)|pfötchenstellung|(?:krieg\w*|bekomm\w*|kann)<3>(?:die |meine )?(?:finger|hände)<2>nicht<2>(?:auf|gerade|gestreckt|geöffnet)<,6>(?:kribbel\w*|lippen|krampf\w*)
        (?:krall\w*|kribbel\w*|lippen)<,8>(?:finger|hände)<2>nicht<2>(?:auf|gerade|gestreckt)
        (?:kann|krieg\w*|konnte|geht)<3>(?:nicht|nix|nichts)<2>(?:pinkeln|pieseln|wasser lassen|pissen|aufs klo)<,9>(?:blase|bauch|unterbauch)<6>(?:trommel|platzt|weh|hölle|hart|prall|ballon|schmerz\w*|höllisch)
        blase<3>(?:platzt|explodiert|übervoll|zum platzen|randvoll)<,8>(?:nichts|nix|kein tropfen|nicht|kommt)
        (?:schlimmste\w*|unerträgliche\w*|vernichtende\w*)<1>(?:bauch|magen|unterleibs)\w*<3>(?:meines lebens|aller zeiten|je|überhaupt)|(?:bauch|bauchdecke|unterbauch)<5>(?:hart wie ein brett|bretthart|steinhart und)(?! (?:vom|von den|durch))
        (?:kopf|schädel|hinterkopf)<4>(?:angehauen|gestossen|angeschlagen|aufgeschlagen|geknallt)<,9>(?:gekotzt|erbrochen|übel|schlecht|schläfrig|benommen|verwirrt|doppelt|erinner\w*|wegged\w*|schlimmer)
        taub<4>(?:zwischen den beinen|im schritt|genital\w*|reithose\w*|damm)<,8>(?:blase|pinkel\w*|klo|halten|beine|rücken)|(?:blase|urin|stuhl|pipi)<3>nicht<2>(?:halten|kontrollieren)<,8>(?:taub|rücken|beine)
        (?:zerreissende\w*|reissende\w*|zerreisst)<2>(?:schmerz\w*|mich)?<3>(?:rücken|schulterblätter\w*|brust)|(?:steckt|stecken)<3>hals<,8>(?:schluck\w*|speichel|luft)|(?:kann|krieg\w*)<3>(?:spucke|speichel)<2>nicht<2>(?:schlucken|runter)
        (?:fieber|temperatur|thermometer)<4>(?:40[.,]\d|41)|(?:40[.,]\d|41)<1>fieber|gefahrenzeichen|danger signs|körpertemperatur<3>(?:34|35)[.,]\d
        """,
        doubtful=r"""
        (?:rettung|krankenwagen|notarzt|rettungswagen|sanitäter)<3>(?:kommt|kommen|unterwegs|gerufen|da(?= ?$| ?,)|geholt)
        (?:stabile\w*|in die|in der) seitenlage
        (?:in der|in die|im|aus der) (?:notaufnahme|schockraum|intensivstation)
        (?:müssen|muss|mussten|musste)<2>mich<2>(?:wachrütteln|rütteln|wach rütteln|aufwecken|wecken und)|nicht<2>wach(?:zu)?(?: ?zu)? ?(?:kriegen|bekommen|rütteln)|(?:die|alle|er|sie) (?:müssen|muss) mich (?:rütteln|wachhalten|wach halten)
        (?:was|etwas)<2>(?:giftiges|falsches) (?:geschluckt|genommen|getrunken)|(?:mich|bin|wurde) vergiftet
        """,
    ),
    *german_table(
        Symptom.HEAVY_BLEEDING,
        "rot binde tampon tasse nase pump spritz sprudel geschnitt kaffeesatz erbr kotz",
        sure=r"""
        (?:was|etwas|alles|ganz|hell|dunkel)<1>rote?s?<2>(?:erbrochen|gekotzt|gespuckt|hochgekommen|rausgekommen|kotzt)|(?:erbrochen\w*|gekotzt\w*|rausk\w*|hochk\w*|was hochkam)<4>(?:rot|blutig|hellrot|dunkelrot|kaffeesatz)
        (?:binde|tampon|tasse|cup|slipeinlage)\w*<5>(?:halbe[nr]?|viertel\w*|einer|einer knappen|\d+|jede|alle)<1>(?:stunde|min\w*|viertelstunde|halbe)?<2>(?:voll|durch|dicht|überläuft|durchgesuppt)
        nase<5>(?:rot|blut\w*|läuft|suppt|schiesst)<4>(?:[2-9]\d|stunde\w*|halben stunde)<,8>(?:nicht|nimmer|hört|immer noch)
        (?:geschnitten|schnitt|aufgeschlitzt|gesäbelt)<,9>(?:pump\w*|spritz\w*|sprudel\w*|schiesst|suppt)<1>(?:richtig|nur so|es|raus|heraus)?
        """,
    ),
    *german_table(
        Symptom.STROKE_SIGNS,
        "wort worter worte name stift unterschr schreib tasse glas klinke daneben fuss bein schleif sagen auge blind vorhang anderes raus red rede",
        sure=r"""
        (?:wollte|will|woll|möchte)<8>(?:kam|kommt|kommen|kamen)<3>(?:was|etwas)<2>anderes|(?:falsche|andere|verkehrte)<1>wörter?<2>(?:raus|heraus|kommen|kommt|kam)|(?:falsches|anderes|verkehrtes) wort<3>(?:raus|heraus|kam|kommt)
        (?:weiss|wusste|kenne|hab|habe)<2>(?:das|die) (?:wort|wörter|worte)<,5>(?:nicht|nimmer|net|ned)<3>(?:raus|heraus|sagen|aussprechen|rausbring\w*|rüber)|(?:wort|wörter)<2>(?:liegt|liegen)<3>zunge<,5>(?:seit|nicht|dauernd)
        (?:kann|konnte|konnt|krieg\w*)<3>(?:nicht|nimmer|kaum)<2>(?:unterschreiben|schreiben|meinen namen schreiben)(?! (?:heute|gerade|grad)? ?(?:weil|bin|auto))<,8>(?:stift|hand|finger|rutscht|krakel\w*|buchstaben)|stift<3>(?:rutscht|fällt|entgleitet)<3>hand
        (?:greife?|greif)<3>daneben<,6>(?:tasse|glas|klinke|hand|löffel|becher)<4>(?:nicht|trifft)?|hand<2>(?:trifft|findet)<3>(?:tasse|glas|klinke|becher|knopf|löffel|mund) nicht
        (?:linker|rechter|linkes|rechtes|ein|linke|rechte)<1>(?:fuss|bein)<3>(?:schleift|schleifen|zieh ich nach|hinterher|nachziehen|bleibt hängen|schlurft)
        (?:blind|nichts|nix|schwarz)<2>(?:auf|am|im|mit)<2>(?:einem|linken|rechten)<1>auge|(?:einem|linken|rechten|rechtes|linkes) auge<4>(?:blind|schwarz|nichts mehr|nix mehr|vorhang)|vorhang<2>(?:vor|überm|über)<3>auge(?= ?$| )
        (?:rede?|red|sprech\w*|kling\w*)<2>als (?:hätte?|wäre?)<4>(?:bier|schnaps|getrunken|betrunken|besoffen|promille|wein)
        """,
    ),
    *german_table(
        Symptom.CHEST_PAIN,
        "sodbrennen zentner schulterbl kiefer zahn zähne zahne",
        sure=r"""
        sodbrennen<,9>(?:kiefer|zähne|zahn|linken? arm|kaltschweiss\w*|kalter schweiss)
        zwischen<2>schulterblättern?<,9>(?:kaltschwei\w*|kalter schweiss|schwitz\w*|luft|atem)|(?:zentner|tonne|amboss|betonplatte)<5>brust
        kiefer\w*<4>(?:treppe\w*|treppensteigen|bergauf)
        """,
    ),
    *german_table(
        Symptom.BREATHLESSNESS,
        "sitzen flach liegen satz aufrecht atemzug atemzüge atemzuge kissen",
        sure=r"""
        (?:nur|bloss)<2>(?:im sitzen|aufrecht|halb sitzend)<2>atmen|(?:flach|im liegen|hinlegen)<4>(?:ersauf\w*|ersticke?|erstick\w*|absauf\w*|keine luft|ertrink\w*)
        satz<5>(?:zwei|drei|mehrere|2|3)<1>(?:atemzüge|anläufe|pausen)|(?:zwei|drei|mehrere) atemzüge<4>satz
        """,
    ),
    *german_table(
        Symptom.PALPITATIONS,
        "uhr armband ring gurt herz verchlopf",
        sure=r"""
        (?:uhr|armband|ring|gurt)<3>(?:1[3-9]\d|2[0-2]\d)(?! ?(?:min\w*|kcal|schritte|g|kg|h|stunden|m))<3>(?:im liegen|im bett|auf der couch|auf dem sofa|aufm sofa|im sitzen|in ruhe|liegend)
        (?:herz|s herz)<4>(?:verchlopf\w*|verjagt|vertätscht|springt raus|hüpft raus)|verchlopf\w*<3>herz
        """,
    ),
    *german_table(
        Symptom.CONFUSION,
        "lall augen zeug unsinn wirr kopf",
        sure=r"""
        lall ich|ich lall|lall<1>(?:nur|so|seit|total)
        (?:habe?|hätte|hätt)<4>(?:wirres zeug|unsinn|wirr|blödsinn|komisches zeug|kauderwelsch)<2>(?:geredet|gesprochen|erzählt|gelabert)<,8>(?:weiss|erinner\w*|ahnung)<4>(?:nichts|nix|nicht|keine)
        """,
        doubtful=r"""
        stimmt<3>(?:meinem|mein) kopf<2>nicht|(?:meinem|mein) kopf<2>stimmt<3>nicht
        """,
    ),
    *german_table(
        Symptom.LIMB_WEAKNESS,
        "knie bein hand arm gehort gehört",
        sure=r"""
        knien?<4>(?:knick\w*|sack\w*|klapp\w*|gebe?n?)<6>(?:weg|ein|nach)(?! (?:beim (?:kniebeugen|letzten satz)))|(?:hand|arm|bein|fuss)<2>(?:gehört|ghört)<2>(?:nicht|nimmer|net|ned)<2>(?:mir|mehr|zu mir)
        """,
    ),
    *german_table(
        Symptom.SELF_HARM,
        "bahnsteig gleis brücke brucke dach balkon geländer gelander kante messer klinge tabletten schritt vorbei ende brief",
        sure=r"""
        (?:stand|stehe?|steh|sitze?|sass|war|bin)<3>(?:am|auf dem|auf der|an der|am rand|aufm)<2>(?:bahnsteig|gleis\w*|brücke|dach|balkon|geländer|klippe|parkhaus)<,8>(?:nur ein schritt|nur noch ein schritt|so leicht|so einfach|springen|loslassen|fehlt nicht viel)
        (?:schaue?|schau|guck\w*|starr\w*|denk\w*|zähl\w*)<3>(?:dauernd|ständig|immer|immer wieder|nur noch)<3>(?:messer|klingen?|tabletten|brücken?|gleise)|(?:dauernd|ständig|immer wieder)<3>(?:messer|klingen?|tabletten)<2>(?:an|anschauen|angucken|zählen)
        (?:will|möchte|mag|wünsch\w*)<,3>(?:dass )?(?:es|alles)<2>(?:vorbei|aus|zu ende) (?:ist|wäre|sein)?<,2>(?:für immer|endgültig|ein für alle mal)
        """,
        doubtful=r"""
        nur ein schritt(?= ?$| ?,| und (?:dann|alles|es))
        """,
    ),
    *german_table(
        Symptom.NO_URINE,
        "pinkel klo tropfen",
        sure=r"""
        (?:nur|erst|bloss)<1>(?:einmal|ein mal|1x)<2>(?:pinkeln|gepinkelt|pieseln|klo gewesen)(?= |$)|(?:kein|keinen)<1>tropfen<2>(?:gekommen|rausgekommen|pipi|urin|raus)
        """,
    ),
    *german_table(
        Symptom.DRYING_OUT,
        "wanne bad salz pfund",
        sure=r"""
        (?:heissen? wanne|heisses? bad|salz ?bad)<,9>(?:für (?:ein|zwei|ein halbes) (?:pfund|kilo)|(?:pfund|kilo|gramm)<2>(?:runter|weniger|loszuwerden|zu verlieren))
        """,
    ),
    *german_table(
        Symptom.FALL,
        "stepper laufband crosstrainer",
        sure=r"""
        vom (?:stepper|laufband|crosstrainer|rudergerät)<2>(?:geflogen|gefallen|gestürzt|gerutscht|runtergeflogen)
        """,
    ),
    *german_table(
        Symptom.LOW_MOOD,
        "durchgeheul durchgewein geheult mutlos",
        sure=r"""
        durchgeheult|durchgeweint|(?:so|ganz|völlig|total|nur noch|bin|einfach)<1>mutlos|(?:ganze|ganzen)<1>(?:training|tag|einheit|nacht|abend|weg)<2>(?:geheult|geweint)(?! vor (?:freude|lachen|glück))
        """,
    ),
    *german_table(
        Symptom.PURGING,
        "gerannt gelaufen gejoggt cardio laufband stepper km kilomet",
        sure=r"""
        (?:gerannt|gelaufen|gejoggt|cardio|laufband|stepper|km|kilometer)<3>wegen<2>(?:keks|kekse|keksen|schokolade|pizza|kuchen|eis|fressanfall\w*|ausrutscher\w*|burger|chips|brot)
        """,
    ),
    *german_table(
        Symptom.UNWELL,
        "rücken kreuz kreiz hexen muskel wade oberschenkel leiste zerrung riss bänder knöchel fuss knie handgelenk",
        doubtful=r"""
        (?:rücken|kreuz|kreiz)<4>(?:reingeschossen|gschossn|geschossen|blockiert|verrissen|verhoben|eingeklemmt)|hexenschuss
        (?:muskel|wade|oberschenkel|leiste|bizeps|adduktor\w*)<3>(?:gezerrt|gerissen|angerissen)|zerrung|bänderriss|muskelfaserriss
        (?:knöchel|fuss|knie|handgelenk)<3>(?:umgeknickt|verstaucht|verdreht)|umgeknickt<2>(?:knöchel|fuss)
        """,
    ),
    *german_table(
        Symptom.STROKE_SIGNS,
        "gesicht arm hand",
        sure=r"""
        gesicht<6>(?:einer|linken|rechten)<1>seite<3>(?:geschmolzen|tiefer|verrutscht|schlaff|abgesackt)|(?:eine|linke|rechte)<1>(?:gesichtsseite|gesichtshälfte)<4>(?:geschmolzen|tiefer|verrutscht|abgesackt)
        (?:arm|hand)<4>(?:eingeschlafen|taub|tot)<,9>(?:fallen gelassen|fallen lassen|wacht nicht|runtergefallen)
        """,
    ),
    *german_table(
        Symptom.FAINTING,
        "dusch",
        sure=r"""
        (?:dusche|duschwanne|duschtasse|duschkabine)<2>(?:aufgewacht|zu mir gekommen|wach geworden)
        """,
    ),
)
