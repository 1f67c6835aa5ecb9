"""The images in which people tell in German what is no warning."""

# ruff: noqa: E501 - a pattern stays on one line
from __future__ import annotations

from functools import partial

from engine.symptoms.german.spelling import folded
from engine.symptoms.german.warnings import GROUPS
from engine.symptoms.names import Symptom
from engine.symptoms.patterns import Phrase, table

_table = partial(table, groups=GROUPS, fold=folded)

GERMAN_OTHER_IMAGES: tuple[Phrase, ...] = (
    *_table(
        Symptom.SEVERE_GUT,
        "bauch magen darm krampf unterleib gekrummt krumm eingero",
        sure=r"""
        (?:<bauch>|<bauch>krämpf\w*|<bauch>schmerz\w*|<bauch>weh)(?: ,)?<5>(?:so stark|so weh|so schlimm|so heftig|dass ich|unerträglich|nicht (?:sitzen|stehen|laufen)|zum schreien|heule|heulen|schreien|messer\w*|zerreisst|badezimmerboden|boden lag|krümm\w*|zusammengekrümmt|höllisch|kaum auszuhalten|wie wehen)
        (?:solche|derartige|so starke|so heftige|dermassen|irre)<2>(?:<bauch>krämpf\w*|<bauch>schmerz\w*|krämpfe)|(?:schmerz\w*|krämpfe)<3><bauch><4>(?:so stark|stark|heftig|unerträglich|nicht (?:sitzen|stehen))
        (?:messer\w*|stiche)<3><bauch>|(?:gekrümmt|krümme|zusammengekrümmt|eingerollt)<5>(?:bett|boden|sofa|schmerz\w*|<bauch>)
        """,
    ),
    *_table(
        Symptom.HEADACHE,
        "kopf auge schlafe stirn schadel",
        sure=r"""
        (?:druck|schmerz\w*|ziehen|pochen|stechen|dumpfe?\w*)<4>(?:augen?|schläfen?|stirn|kopf|hinterkopf|schädel)|(?:schläfen?|stirn|kopf|hinterkopf|schädel)<3>(?:pocht|pochen|drückt|druck|schmerzt|tut weh|weh|dröhnt|brummt|zieht|hämmert|voll watte)
        """,
    ),
    *_table(
        Symptom.NAUSEA,
        "magen ubel schlecht brech kotz wurg flau speiub hoch seekran mulmig speien ubergeb spucken",
        sure=r"""
        magen<3>(?:dreht|umgedreht|dreht sich um|flau|hebt sich|revoltiert|verrückt|umdreh\w*)|dreht<4>magen|hebt<3>magen|(?:könnte|muss|müsste|werde|fast|gleich)<4>(?:kotzen|brechen|speien|übergeben|spucken)(?! (?:vor wut|vor lauter))|würgereiz\w*|würge|gewürgt|kommt mir hoch|seekrank|sterbensübel|mulmig\w*<2>(?:magen|bauch)
        """,
    ),
    *_table(
        Symptom.VOMITING,
        "hoch ubergeb reis essen fruhstuck portion kloschussel klo rauf kam gekommen schusse eimer gereihe gespuck erbroch gekotzt retour ruckwar gebroch oben hahnche mahlzei haferfl shake raus",
        sure=r"""
        (?:frühstück|mittagessen|abendessen|essen|reis|portion|mahlzeit|shake|haferflocken|alles|es|hähnchen)<5>(?:wieder hoch|hochgekommen|wieder raus|oben raus|rückwärts|retour)(?: gekommen)?|kam<4>(?:wieder )?(?:hoch|oben raus)
        (?:nachts|nacht|morgen|früh|einmal|heute|gestern|danach|ein mal|vorhin)<4>(?:übergeben|erbrochen|gekotzt|gereihert|gebrochen|gespuckt)(?! (?:worden|an))|(?:über|vor|neben|mit dem kopf)<2>(?:der|die|in der)<1>(?:kloschüssel|klo|schüssel|eimer)(?! (?:geputzt|putzen))
        """,
    ),
    *_table(
        Symptom.SWOLLEN_HANDS,
        "hand finger ring faust",
        sure=r"""
        (?:hände?n?|finger|fingern|hand)<4>(?:würstchen|würste\w*|bratwürste|wurst\w*|ballons?|bananen|boxhandschuhe|aufgepumpt|doppelt so dick|dick|dicke|dicker|prall|geschwollen|aufgequollen|polster|marshmallows?|kissen)(?! (?:eingecremt))|(?:faust|finger)<4>(?:nicht|kaum)<2>(?:schliessen|machen|beugen|ballen|krumm)
        (?:ring|ehering|ringe|verlobungsring)<6>(?:nicht|kaum)<3>(?:ab|runter|vom finger|drüber|über|an)
        """,
    ),
    *_table(
        Symptom.SWELLING,
        "socke dell abdruck knochel fuss bein wade schuh gesicht augen lid schwoll dick elefant ballon quillt wasser verquol aufgesc strumpf sneaker bundche stiefel gummibu wangen untersc",
        sure=r"""
        (?:socken?|sockenbund|strümpfe|strumpf|gummibund|bündchen|schuhe?|turnschuhe|stiefel|sneaker)<5>(?:dellen?|abdrücke?|abdruck|rillen|furchen|schneiden ein|passen nicht|gehen nicht (?:mehr )?(?:zu|an)|zu eng|drücken|krieg ich nicht|nicht (?:mehr )?(?:zu|an))
        (?:knöchel\w*|füsse?n?|fuss|beine?n?|waden?|schienbein\w*|unterschenkel)<4>(?:elefant\w*|ballon\w*|baumstämme\w*|dellen?|delle|dick|dicker|verschwunden|aufgepumpt|prall|aufgeschwemmt|doppelt so dick|voll wasser|klumpen|stampfer)(?! (?:trainiert|vom training|vom pump))|elefantenbeine|(?:drück\w*|daumen|finger)<6>delle
        (?:gesicht|augen|lider|augenlider|wangen)<4>(?:dick|zugeschwollen|geschwollen|aufgedunsen|mondgesicht|ballon|aufgequollen|verquollen|schlitze|hamster\w*)|mondgesicht|verquollen|aufgeschwemmt
        """,
    ),
    *_table(
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
    *_table(
        Symptom.BLURRED_VISION,
        "verschwomm unscharf scharf schleier milch glas sehe seh sah sicht auge lesen punkte flimmer blitz zickzack blind verschmier fokus bild entziff erkenne scheibe blickfe flacker nebelwa neblig beschla punktch vaselin flecken trub verschw wasser",
        sure=r"""
        (?:alles|schrift|augen|sicht|text|buchstaben|umrisse|gesichter)<4>(?:unscharf|verschwommen|verschwimm\w*|verschmiert|milchig|trüb|neblig|flimmert|flackert)(?! (?:fotos?|foto))|(?:unscharf|verschwommen|verschmiert)<3>(?:sehen|gesehen|sehe|sicht|alles)
        (?:durch|wie(?! (?:viel|lange|oft|bei))|hinter)<4>(?:milchglas\w*|nebelwand|schleier|beschlagene\w*|trübe\w* scheibe|wasser|dreckige\w* scheibe|vaseline|milch)|schleier<3>(?:augen|blick)|milchglas
        <kann><6>(?:nicht|kaum)<3>(?:lesen|erkennen|fokussieren|scharf (?:sehen|stellen)|entziffern)(?! was der plan)
        (?:schwarze|weisse|helle|dunkle|tanzende)<1>(?:punkte|flecken|pünktchen)<4>(?:augen|sehe|sichtfeld|sehen|blick)?|(?:sehe|seh|sah)<4>(?:punkte|blitze|lichtblitze|zickzack\w*|flecken|funken|sternchen|kreise)|lichtblitze|zickzack\w*<3>(?:augen|sehen|sichtfeld)|blind\w*<3>(?:auge|fleck|geworden)|(?:sichtfeld|gesichtsfeld|blickfeld)<4>(?:fehlt|weg|eingeschränkt|ausfall|loch|lücke)|augen<3>(?:stellen nicht scharf|spinnen|machen nicht mit)
        """,
    ),
    *_table(
        Symptom.SLEEPLESS,
        "schlaf wach nacht auge gewalzt decke stunden liegen",
        sure=r"""
        (?:dritte|zweite|vierte|fünfte|wieder eine|noch eine|ganze)<2>nacht<4>(?:ohne|kein|keinen|wach|nicht|schlaflos|durchgemacht)|(?:ohne|kaum|keinen|null|kein)<3>(?:richtigen |echten )?schlaf(?! ?(?:zimmer|maske|anzug|sack))|(?:bis|seit)<4>(?:wach|an die decke gestarrt|wachgelegen)|(?:wach|wachgelegen|wach gelegen)<3>(?:bis|seit|die ganze|stunden\w*|ewig)|an die decke (?:gestarrt|geschaut|geguckt)|gewälzt|kein auge
        alle (?:stunde|halbe stunde|paar minuten) (?:wach|aufgewacht)|stündlich (?:wach|aufgewacht)|(?:aufgewacht|wach)<2>um (?:[1-4]|zwei|drei|vier|eins)(?: uhr)?<5>(?:nicht|seitdem)
        """,
    ),
    *_table(
        Symptom.CRAMPS,
        "krampf wade fuss zeh finger oberschenkel verhart knoten macht zu",
        sure=r"""
        (?:wade\w*|oberschenkel|fuss|füsse|zehen?|finger|hand|beine?|bauchmuskeln?)<4>(?:krampf\w*|krämpf\w*|gekrampft|macht<1>zu|machte<1>zu|zugemacht|dicht gemacht|macht dicht|bretthart vor krampf|verkrampf\w*|zieht sich zusammen)
        """,
    ),
    *_table(
        Symptom.TINGLING,
        "kribbel ameise prickel taub eingeschlafen bitzel nadel strom elektri schlaft armn schlafe",
        sure=r"""
        ameisen<4>(?:hand|hände\w*|finger\w*|beine\w*|arme?\w*|füsse\w*|haut)|(?:hände?n?|finger\w*|lippen?|zehen|füsse?n?|gesicht|mund|zunge|arme?n?|beine?n?|haut|hand|fuss)<4>(?:kribbel\w*|prickel\w*|bitzel\w*|ameisen\w*|eingeschlafen|schläft ein|schlafen ein|nadelstiche|nadeln|unter strom|elektrisch|taub)|(?:kribbeln|prickeln|bitzeln|nadelstiche)<4>(?:hand|hände\w*|finger\w*|lippen?|zehen|füsse?n?|gesicht|mund)
        """,
    ),
    *_table(
        Symptom.SHAKY,
        "zitter zittr bibber tatter wackel espenlaub schlotter zucker tattrig",
        sure=r"""
        bibber\w*|tattrig\w*|tatterig\w*|schlottere?n?|espenlaub|wackelig auf|(?:zucker|blutzucker)<3>(?:im keller|unten|abgesackt|abgestürzt|zu niedrig|abgerauscht)
        """,
    ),
    *_table(
        Symptom.STOMACH_PAIN,
        "bauch magen darm unterleib",
        sure=r"""
        (?:<bauch>|unterbauch)<4>(?:weh|schmerz\w*|sticht|krampft|krämpfe|zieht|ziehen|zwickt|drückt|grummelt|rumort|spinnt|brennt|kneift)(?! (?:ein|sich))|(?:schmerz\w*|ziehen|stechen|krämpfe|zwicken|stiche)<4>(?:<bauch>|unterbauch)
        """,
    ),
    *_table(
        Symptom.DIARRHOEA,
        "klo toilette flussig durchfall dunn wasser scheiss stuhl kacke rennerei bad spruhwu schusse gerannt wassrig verbrac standig gewohnt renne daurnd paar wohne halbe funf runter renn ganze",
        sure=r"""
        (?:klo|toilette|bad|wc|schüssel)<5>(?:\d ?mal|(?:zwei|drei|vier|fünf|sechs|sieben|acht) ?mal|ständig|dauernd|alle (?:stunde|halbe|\d+|paar)|flüssig|wie wasser|die ganze nacht|nicht mehr runter|gerannt|renne|verbracht|gewohnt|wohne)|(?:\d ?mal|(?:zwei|drei|vier|fünf|sechs|sieben|acht) ?mal|ständig|dauernd|alle halbe stunde|renne?|rennerei|rennen)<5>(?:klo|toilette|wc)|(?:alles|nur|ganz|total|komplett)<2>(?:flüssig|wie wasser|wässrig)(?! (?:nahrung|gegessen|eiweiss))|(?:stuhl|kacke|stuhlgang)<4>(?:flüssig|dünn|wässrig|wie wasser|breiig)|scheisserei|sprühwurst
        """,
    ),
    *_table(
        Symptom.CONSTIPATION,
        "verstopf gross klo beton stuhl darm kacken tage stuhlgang stau zement stein geht diensta donners samstag sonntag mittwoc freitag montag keinen nichts ohne",
        sure=r"""
        (?:nicht|kein|keinen|nix|nichts|ohne)<4>(?:gross gewesen|gross|stuhlgang|kacken|kacken gewesen|grosses geschäft|aa)(?! (?:geschlafen|gewachsen|trainiert|anders|hungrig|verändert|geändert|was|genug|rauskommen))|(?:seit|schon)<4>(?:tagen|montag|dienstag|mittwoch|donnerstag|freitag|samstag|sonntag)<4>(?:nicht (?:auf(?:'s| dem|m)? klo|gross)|kein stuhl\w*|nix mehr|nichts mehr)<4>(?:darm|raus|klo|gross|beton|los|$)|(?:beton|stein|zement|stau)<3>(?:darm|bauch)|darm<3>(?:dicht|steht still|beton|streikt|zu)|geht<3>(?:nix|nichts)<2>(?:raus|auf(?:'s|m| dem) klo)
        """,
    ),
    *_table(
        Symptom.BLOATING,
        "blah bauch kugel ballon trommel schwanger luft gas pups furz monat winde",
        sure=r"""
        bauch<4>(?:ballon|kugel|trommel|schwanger|aufgeblasen|aufgepumpt|gebläht|fussball|medizinball|melone|prall voll|voll luft)|(?:wie|im|sehe aus)<3>(?:schwanger|schwangere|\w+ monat)|(?:voller|viel|zu viel)<1>(?:luft|gase?)<3>(?:bauch|darm)|(?:pupse|furze|blähungen|winde)
        """,
    ),
    *_table(
        Symptom.URINE_DARK,
        "pipi urin pinkel piss klo toilett wasserlassen harn pinkle",
        sure=r"""
        (?:<pipi>|pinkle|pinkel|gepinkelt|klo)<6>(?:schwarzer tee|schwarzem tee|cola|tee|malzbier|altbier|apfelsaft|kaffee|rost|bernstein|ahornsirup|whisky|eistee)|pinkel<2>(?:tee|cola|kaffee|blut)
        (?:<pipi>|pinkle|pinkel|pinkeln|pisse|pissen|gepinkelt|wasserlassen)<5>(?:dunkel\w*|dunkler|braun\w*|bräunlich|cola\w*|tee|schwarztee|kaffee|rost\w*|orange\w*|bernstein\w*|rot|rötlich|rosa|schwarz\w*|blutig|whisky|malzbier|altbier|apfelsaft|sirup|ahornsirup|sojasauce|spezi|schwarzer tee|bier)(?! (?:eingefärbt))|(?:dunkel\w*|dunkler|braun\w*|cola\w*|teefarben\w*|rostig\w*|rötlich\w*)<3>(?:<pipi>|pinkel\w*)
        """,
    ),
    *_table(
        Symptom.NO_URINE,
        "pinkel piss urin klein klo toilett blase pipi wasserlassen tropf zuletzt letzte stunden gelasse kommt kam",
        sure=r"""
        (?:zuletzt|letzte\w* mal|das letzte mal|seit|vor)<8>(?:toilette|klo|wc)<3>(?:klein|pinkeln|pipi|für klein)|(?:stunden|gestern|heute)<6>(?:nicht|kein|keinen)<3>(?:pinkeln|gepinkelt|klein|pipi|tropfen)
        (?:nicht|kaum|nimmer|noch nicht|nicht mehr|gar nicht|nix|nichts|kein|keinen tropfen|nicht ein ?mal|nur (?:ein paar )?tropfen|ein paar tropfen|ohne)<4>(?:pinkeln|gepinkelt|pissen|gepisst|uriniert|urinieren|pipi|pinkeln gewesen|klein gewesen|wasser gelassen|urin|auf (?:dem|m)? ?klo klein)(?! (?:dunkel|hell|klar))
        (?:zuletzt|letzte\w* mal|das letzte mal)<7>(?:klein|gepinkelt|pinkeln|pipi|uriniert|toilette<4>klein|klo<4>klein|wasser gelassen)|blase<4>(?:leer|zu|nix|nichts|streikt|nicht)|(?:kommt|kam)<4>(?:kein tropfen|nichts|nix|nur tropfen)<3>(?:raus|beim pinkeln|mehr|seit)|(?:seit|schon)<5>(?:nicht|nimmer)<2>(?:mehr )?(?:pinkeln|pissen|gepinkelt|gepisst|klein)
        """,
    ),
    *_table(
        Symptom.FEVER,
        "fieber temperatur frost grad schuttel gluh schwitz thermometer 38 39 40 abwechs kalt stirn",
        sure=r"""
        (?:3[89](?:[.,]\d)?|40(?:[.,]\d)?)<1>(?:grad|fieber|temperatur|°)(?! (?:draussen|im schatten|in der sauna|warm))|(?:temperatur|thermometer|fieber|stirn)<4>(?:3[89](?:[.,]\d)?|40(?:[.,]\d)?|erhöht|hoch|glüht)|glühe|glüht<2>(?:stirn|kopf)|friere und schwitze|abwechselnd heiss und kalt|heiss und kalt
        """,
    ),
    *_table(
        Symptom.EXHAUSTION,
        "erschopf mude erledigt reserve energie akku kaputt fertig eingenickt matt kraftlos platt ausgelaugt sofa schlapp gerad kriech power kraft anstren notstro sparfla eingesc zahnfle qual viel geschaf",
        sure=r"""
        (?:völlig|total|komplett|echt|so|absolut|richtig|nur noch)<1>(?:erledigt|ausgelaugt|geschafft|am ende der kräfte|erschöpft|gerädert|ausgepowert|matt|schlapp)|(?:laufe?|lauf|läuft|fahre?)<2>auf<1>(?:reserve|sparflamme|notstrom|dem zahnfleisch)|(?:müde|kaputt|erschöpft)<2>(?:wie (?:noch )?nie|wie ein stein und|dass ich (?:nicht|kaum))|ein\w*genickt<3>(?:schreibtisch|arbeit|bahn|auto)|(?:schreibtisch|arbeit|bahn)<4>(?:eingenickt|eingeschlafen)|mein akku<3>(?:leer|null|alle)|(?:keine|null|kaum|gar keine) (?:energie|kraft|power)(?: mehr)?(?= |$)(?! (?:im training|beim (?:bank|beugen)))|alles<2>(?:zu viel|anstrengend|eine qual|zu anstrengend)|komme?<3>nicht<1>vom sofa|kriech\w* auf dem zahnfleisch|hundemüde|völlig platt
        """,
    ),
)
