"""German, as far as complaints go."""

from __future__ import annotations

from itertools import chain

from engine.symptoms.denying import NO_AT_HOME, NO_MORE, NOT
from engine.symptoms.english.language import MISREADING, Settings
from engine.symptoms.german.negation import german_drug_denied, german_polarity
from engine.symptoms.german.spelling import GERMAN_CORRECTOR, folded
from engine.symptoms.judging import ComplaintLanguage
from engine.symptoms.patterns import Cued, PhraseBook, Tables
from engine.written.late import Late, word_set

# ruff: noqa: E501 - a pattern stays on one line


def _words(pattern: str) -> Late:
    return Late(rf"\b(?:{folded(pattern)})\b")


_PERSON = r"(?:azubi|azubine|lehrling|praktikant|praktikantin|vermieter|vermieterin|schwiegereltern|kita|klasse von|leiche|schwangere|hebamme|friseurin|hubby|männer|kundin|kunden?|klientin|klient|mutter|mama|mutti|vater|papa|eltern|oma|opa|großmutter|großvater|bruder|schwester|freund|freunde|freundin|kumpel|frau|mann|ehemann|ehefrau|verlobter?|partner|partnerin|sohn|tochter|kind|kinder|baby|kleiner?|neffe|nichte|cousin|cousine|tante|onkel|mitbewohner|mitbewohnerin|nachbar|nachbarin|nachbarn|kollege|kollegin|kollegen|chef|chefin|trainingspartner|trainingspartnerin|trainingskumpel|trainingsfreundin|trainingsfreund|trainingskollegin|trainingskollege|arbeitskollegin|arbeitskollege|schwager|schwägerin|schwiegermutter|schwiegervater|trainer|lehrer|lehrerin|kampfrichter|veranstalter|athlet|athletin|athleten|teilnehmerin?|konkurrentin|typ|mädel|mädchen|junge|jungs|dame|herrn?|fahrgast|senior|seniorin|passant|passantin|reporter|reporterin|patient|patientin|kundschaft|kommissar|kommissarin|detektiv|detektivin|ermittler|ermittlerin|mörder|zombies?|vampir|opfer|schauspieler|schauspielerin|sänger|sängerin|held|heldin|figur|schüler|schülerin|läufer|läuferin|fahrer|spieler|ex|andere|anderer|person|stürmer|stürmerin|torwart|schiedsrichter|fußballer|boxer|radfahrer|schwimmer|jockey|turnerin|tänzerin|moderator|moderatorin|politiker|könig|königin|soldat|klempner|elektriker|handwerker|dachdecker|maler|gärtner|bauer|metzger|bäcker|koch|köchin|rentner|rentnerin|mieter|mieterin|gast|gäste|zwilling|zwillingsschwester|zwillingsbruder|stiefvater|stiefmutter|stiefsohn|patenkind|enkel|enkelin|klassenkamerad|influencer|influencerin|youtuber|neuling|sieger|siegerin)"
_KIN = r"(?:azubi|lehrling|schwiegermutter|schwiegervater|schwager|schwägerin|chef|chefin|kumpel|vermieter|kundin|kunde|klientin|klient|frau|mann|ehemann|ehefrau|verlobter?|freundin|freund|kollege|kollegin|nachbar|nachbarin|mitbewohner|mitbewohnerin|trainingspartner|trainingspartnerin|bruder|schwester|sohn|tochter|kind|kinder|cousin|cousine|neffe|nichte|tante|onkel|oma|opa|athletin von mir)"
_ANIMAL = r"(?:hund|taube|tauben|hündin|hunde|katze|kater|katzen|welpe|pferd|pony|hamster|hase|kaninchen|vogel|papagei|wellensittich|fisch|kuh|schwein|huhn|hühner|hennen|labrador|mops|dackel|gaul|stute|goldfisch|ziege|schaf|meerschweinchen|schildkröte|meerschwein|meersau)"
_THING = r"(?:abfluss|waschbecken|spüle|dusche|leitung|kanal|\w*maschine|\w*automat|\w*drucker|\w*heizung|thermomix|herd|fritteuse|eiweiß|eischnee|teig|soße|tablet|gerät|armband|waage|handy|telefon|app|laptop|computer|rechner|server|wlan|internet|drucker|mixer|backofen|ofen|kühlschrank|spülmaschine|waschmaschine|pflanzen?|blumen?|zelt|stuhl|regal|tisch|markt|wirtschaft|firma|brücke|gebäude|dach|decke|kuchen|teig|reifen|motor|auto|wagen|bus|zug|fahrrad|akku|batterie|anzug|schuhe?|bikini|preise?|kosten|rechnung|miete|hantel|stange|maschine|kabel|fernseher|bildschirm|kamera|licht|strom|mikrowelle|wasserkocher|wecker|lautsprecher|aktien|bitcoin|show|publikum|musik|lied|song|mannschaft|team|plan|zeitplan|reißverschluss|träger|flasche|shaker|rohr|heizung|baum|zaun|leiter|webseite|website|verbindung|datei|tabelle|tastatur|laufband|toaster|kaffeemaschine|klimaanlage|wackelpudding|pudding|steak|fleisch|linien?|streifen|bild|foto|video|serie|folge|finale|steuer|umzug|stimmung|dose|box|brotbox|tupperdose|becher|glas|teller|schüssel|tasse|löffel|gabel|topf|pfanne|karton|tüte|rucksack|koffer|brille|kopfhörer|anzeige|display|signal|empfang|netz|mikro|akku|ladegerät|spiegel|lampe|wetter|gewitter|kreditkarte|rack|geldbeutel|portemonnaie|konto|depot|börse|kurse?|motorrad|roller|stativ|generator|router|headset|reiskocher|thermoskanne|kühlbox|banner|pokal|medaille|stürmer|torwart|blender|staubsauger|rasenmäher|drohne|beamer)"
_BODY = r"(?:ganzer?|ganzes|körper|brust|herz|kopf|beine?n?|arme?n?|hände?n?|hand|füße?n?|fuß|knien?|gesicht|augen?|sicht|ohren?|mund|lippen?|zunge|hals|nacken|rücken|magen|bauch|darm|rippen|lunge|atem|atmung|puls|muskeln?|finger|zehen|waden?|oberschenkel|knöchel|haut|blut|urin|pipi|stuhl|kreislauf|gedanken|gehirn|hirn|sprache|schläfen?|schädel|linke\w*|rechte\w*|seite|uhr|ruhepuls|periode|nase|leben|spiegelbild)"

GERMAN_SETTINGS = Settings(
    others=_words(
        rf"(?<!\bbei )(?<!\bmit )(?<!\bin )(?<!\bauf )(?<!\bvon )(?<!\bzu )(?<!\bnach )(?<!\bvor )(?<!\ban )(?<!\bfür )(?<!\bwie )(?<!\bunter )(?<!\büber )(?<!\baus )(?<!\bneben )(?<!\bohne )(?<!\bauf'm )(?<!\baufm )(?<!\bim )"
        rf"(?:(?:mein|meine|meiner|meinem|meinen|der|die|das|dem|den|ein|ne|nen|eine|einer|einem|sein|seine|seiner|seinem|ihr|ihre|ihrer|unser|unsere|unserer|unserem|dein|deine|eure|diese|dieser|dieses|manche|viele|zwei|drei) (?:\w+ ){{0,2}}?(?:{_PERSON}|{_ANIMAL}|{_THING})(?= )"
        rf"|(?<![a-z] )(?:{_KIN})(?= (?!(?:ich|mir|mich|hier|sagt)\b))|(?:{_PERSON}) von (?:mir|uns)|bekannte\w* von (?:mir|uns)|(?:eine|einer) aus (?:dem|der|meinem|meiner|unserem|unserer) \w+(?= )"
        r"|(?<!hi )(?<!hey )(?<!hallo )(?<!du )(?<!coach )\b(?:der |die )?(?:lukas|jonas|leon|finn|felix|tim|jan|max|moritz|niklas|david|kevin|dave|mike|jake|tom|paul|lisa|anna|lena|laura|julia|sarah|sara|marie|sophie|jana|nina|tina|sandra|steffi|kathi|basti|flo|chris|alex|nico|marco|toni|sepp|hans|uwe|jürgen|sabine|petra)(?= )"
        rf"|(?<![a-z] ){_ANIMAL}(?= )"
        r"|(?<![a-z] )(?:tablet|kamera|gesichtserkennung|anzeige|display|empfang|netz|signal|verbindung|lautsprecher|mikro|kopfhörer|foto|video|farbe|drucker|batterie|handy|laptop|computer|waage|app|auto|wlan|katze|hund|bildschirm|fernseher|akku|server|welpe|pferd|anzug|kühlschrank)|(?:der|die|das|typ|frau) _{9}(?= )|(?:mama|papa|oma|opa|jemand|jemandem|leute|leuten|kollegin)|(?:er|sie) (?:hat|ist|war|hatte|wurde|musste|muss|kann|konnte|fiel|kippte|bekam|hätte|will|wollte)|(?:hat|ist|war|hatte|wurde|dass|weil|als|wenn) (?:er|sie|ihm|ihr)|ihm|ihr (?:ist|war|wurde))"
    ),
    things=_words(rf"{_THING}(?= ?$)"),
    acting=Late(
        folded(
            r"(?:(?:\bich|^(?:, )?(?:dann |und )*) ?(?:habe|hatte|wollte|musste|bin|hebe|hob|nehme|nahm|hole|öffne|öffnete|lege|legte|stelle|stellte) (?:(?!dass|gesehen|gehört)\w+ ){0,3}|\bich )$"
        )
    ),
    oneself=_words(
        rf"(?:ich|(?<!neben )(?<!vor )(?<!hinter )(?<!bei )(?<!mit )(?<!zu )(?<!von )(?!(?<=ist )mir (?:an|auf|in|bei|während|heute|gestern|fast)\b)mir|mich|uns|mein\w{{0,2}} (?:\w+ )?{_BODY})"
    ),
    to_oneself=_words(r"(?:mich|mir)"),
    of_late=_words(
        r"(?:letzte woche|letzten monat|von (?:letzter woche|letztem \w+|neulich|gestern|vorgestern|montag|dienstag|mittwoch|donnerstag|freitag|samstag|sonntag)|vom (?:wochenende|montag|dienstag|mittwoch|donnerstag|freitag|samstag|sonntag)|gestrige[nrs]?|vor (?:\w+ )?(?:tagen|wochen|monaten)|neulich|anfang der woche|am (?:montag|dienstag|mittwoch|donnerstag|freitag|samstag|sonntag))"
    ),
    gone=_words(
        r"(?:weg|vorbei|nicht wiedergekommen|kam nicht wieder|nicht mehr da|verschwunden|wieder (?:gut|weg|ok|okay|normal|besser|alles gut)|(?:seitdem|seither) (?:nicht|nichts|nix|nie|gut|weg|ruhe)|ausgestanden|überstanden)"
    ),
    gone_by=Late(
        folded(
            r"(?: (?:im|in den|an den|in der|am|vom) \w+| von (?:gestern|\w+tag))?(?: (?:ist|sind|hat sich|haben sich))?(?: (?:heute|jetzt|komplett|ganz|völlig|endlich|wieder|seit \w+|seit heute|inzwischen|mittlerweile|zum glück|total|alle))*"
            r" (?:weg|vorbei|verschwunden|abgeklungen|weggegangen|verflogen|überstanden|ausgestanden|gelegt|zurückgegangen|abgeschwollen|verheilt|abgeheilt|aufgehört|rum|durch|raus|beruhigt|erledigt|geschichte|passé|gegessen)(?: (?:heute|jetzt|seit heute|seit gestern|zum glück|danke|gott sei dank|komplett))*(?= ?,| ?$)"
        )
    ),
    back=_words(r"(?:wieder|zurück|kommt|kommen|kam|kamen|schlimmer|noch|dann)"),
    reports=_words(
        r"(?:sagt|sagte|gesagt|meint|meinte|gemeint|findet|glaubt|denkt|erzählt|fand|gefunden|sah|gesehen|merkt|bemerkt|fragt|fragte|zeigt|sorgen|behauptet|misst|gemessen)"
    ),
    stories=_words(
        r"(?:im (?:\w+ )?(?:film|buch|roman|krimi|kino|fernsehen|video|traum|albtraum|spiel|podcast|horrorfilm|tatort)|in (?:der|einer|meiner|dem|einem) (?:\w+ )?(?:serie|doku|folge|film|buch|krimi|roman|geschichte)|(?:film|serie|doku|buch|roman) (?:\w+ ){0,2}(?:über|wo|in der|in dem|mit)|geträumt(?: dass)?(?: ich)?|tatort|netflix|(?:lied|song|playlist|album|band|bühnenlied|bühnenmusik|posingmusik|einlaufmusik|musik|titel|hör\w*|höre gerade|karaoke) (?:\w+ ){0,3}(?:ist|heißt|von|namens|gerade))"
    ),
    long_ago=_words(
        r"(?:als (?:konfirmand\w*|kind|schüler\w*|teenie|teenager\w*|jugendliche\w*|student\w*|azubi|rekrut\w*|lehrling|pfadfinder\w*|kleines mädchen|kleiner junge)|vor (?:zehn|fünfzehn|zwanzig|dreißig|\d+) jahren|damals (?:in|bei|auf|mit|im)|auf (?:der )?(?:abifahrt|klassenfahrt)|mit (?:1\d|[5-9]|zehn|elf|zwölf|dreizehn|vierzehn|fünfzehn|sechzehn) (?:jahren )?(?:bin ich|war ich|hatte ich|habe? ich (?:mal|einmal)|bekam ich|wurde ich|wurde mir)|mit (?:zwölf|dreizehn|vierzehn|fünfzehn|sechzehn|siebzehn|achtzehn|neunzehn)(?! (?:kilo|kg|prozent|wiederholungen|wdh|grad|sätzen)\b)|mit 1\d (?:mal|bei|auf|im|in)|mit (?:[23]\d|zwanzig|dreißig) (?:hatte|war|habe?|bin|wurde|bekam) (?:ich|mir)|in meinen (?:zwanzigern|dreißigern|jungen jahren)|vorletzte (?:saison|prep|diät)|beim (?:bund|boxen früher)|als (?:kleinkind|jugendliche|junior|juniorin|student|studentin)|im (?:ersten |zweiten )?lockdown|mein (?:voriger|alter|letzter|früherer|ex) (?:coach|trainer)|vor (?:\w+ ){0,2}jahren|vor (?:einem|nem) jahr|als kind|als (?:jugendlicher?|teenager|teenie|schüler|schülerin|baby)|als ich (?:noch )?(?:klein|jung|jünger|\d+|ein|in der|zur|kind|schwanger|zwölf|zehn)|damals|früher|letztes jahr|letzten (?:sommer|winter|frühling|herbst) |in (?:der|meiner) (?:letzten|ersten|vorigen|schulzeit|kindheit|jugend|schule|schwangerschaft|alten)(?: (?:prep|diät|saison|vorbereitung))?|(?:bei|auf|in) (?:meinem|meiner|der|dem) (?:letzten|ersten|vorigen|allerersten) (?:\w+ )?(?:wettkampf|show|prep|diät|saison|vorbereitung|marathon)|letzte (?:prep|diät|saison|vorbereitung)|(?:19|20)\d\d|in der (?:grundschule|schule|uni|pubertät)|im (?:sportunterricht|studium))"
    ),
    of_now=_words(
        r"(?:(?<!nie )(?<!nichts mehr )seit(?! (?:[\w']+ )?(?:\d+ )?jahren (?:ist )?(?:nichts|nicht|nie|kein|keine|keinen|ruhe|anfallsfrei))|(?<!nie )(?<!niemals )wieder|immer noch|noch immer|heute?(?! (?:(?:nicht|nie|nix|kein\w*) mehr|nimmer|nimma|nie|nicht))|jetzt|gerade|gestern|nachts|momentan|derzeit|ständig|dauernd|genau wie|so wie)"
    ),
    rules=_words(
        r"(?:(?:hilft|helfen|bringt|wirkt|nützt|taugt) (?:eigentlich |da |denn )?(?:\w+ ){0,3}?(?:wirklich |was |etwas )?(?:gegen|bei)|(?:kann|können|könnte|macht|machen|kommt|kommen|bekommt|kriegt|wird) (?:man|koffein|kaffee|kohlenhydrate|carbs|zucker|salz|natrium|wasser|das laden|die bräune|sauna|zu (?:viel|wenig)|keto|fasten|kreatin|kartoffeln|reis|stress|hitze)|stimmt es dass (?:viele|man|manche|leute|alle)|wie (?:häufig|oft bekommen|viele (?:athleten|leute))|warum (?:bekommen|haben|werden|fallen|kriegen) (?:leute|athleten|manche|viele|so viele)|(?:manche|viele|andere|einige) (?:leute|athleten|athletinnen|teilnehmer|mädels)|laut (?:artikel|buch|regel\w*)|was sind (?:die )?(?:anzeichen|symptome|zeichen)|(?:zeigt|meldet|markiert|erkennt|registriert) (?:das|dein|dieses) (?:programm|system|formular)|(?:zeigt|meldet|markiert|erkennt|registriert) (?:der bot|die app)|(?:im|laut) regelwerk|(?:laut|nach) (?:den )?(?:regeln|statuten|satzung)|abbruchgrund|nach (?:was|welchen) (?:für )?symptomen|fliegt man (?:\w+ ){0,3}(?:raus|aus)|wenn (?:jemand|man|einer|wer) (?:\w+ ){0,4}(?:hat|bekommt|kriegt|umkippt|umfällt|ohnmächtig|meldet)|anzeichen (?:für|von|eines)|symptome (?:für|von|eines)|erste hilfe kurs)"
    ),
    enquiries=_words(
        r"(?:gibt es (?:\w+ ){0,3}?(?:regel|regeln|strafe|knopf|feld|wort|begriff|option|einstellung|emoji|verbot) (?:\w+ ){0,3}?(?:gegen|für|wegen|bei|zu)|gibt's (?:\w+ ){0,3}?(?:regel|strafe|knopf|feld|wort|begriff|option|verbot)"
        r"|ab (?:wann|wie viel|welcher|was) (?:\w+ ){0,4}?(?:zählt|gilt|ist|spricht|heißt|nennt)|(?:zählt|gilt|zählen|gelten) (?:\w+ ){0,4}?als|was (?:\w+ ){0,2}?(?:zählt|gilt)"
        r"|(?:warum|wieso|weshalb|wozu) (?:fragst|fragt|willst|will|wollt|warnst|warnt|musst|müssen wir|prüfst) (?:du|ihr|der bot|die app|das ding|der check in)?(?: mich| uns)?"
        r"|(?:muss|müssen|soll|sollen|sollte) (?:ich|man|wir) (?:(?!(?:habe?|hatte|heute|seit|gerade|jetzt)\b)[\w']+ ){1,5}(?:melden|angeben|eintragen|schreiben|sagen|erwähnen) oder (?:nur|erst|bloß|reicht)"
        r"|(?:sieht|merkt|liest|erfährt|weiß|kriegt|bekommt|siehst|merkst|liest|erfährst) (?:du|sie|er|ihr|(?:die|der|das|mein|meine) (?:trainerin|trainer|coach|bot|app))(?: [\w']+){0,4} (?:wenn|falls|sobald) ich (?:sowas wie|so was wie|so etwas wie|etwas wie|zum beispiel) (?:[\w']+ ){1,3}(?:schreibe?|tippe?|melde|eingebe|eintrage)"
        r"|(?:wird|bleibt) (?:[\w']+ ){0,3}(?:wasser|trinken|trinkmenge) (?:[\w']+ ){0,2}(?:reduziert|gekürzt|gestrichen|runtergefahren|weniger) oder"
        r"|was (?:bedeutet|heißt|meinst du mit|versteht man unter|ist der unterschied)|wie (?:schreibt|definiert|übersetzt|nennt) (?:man|ihr|du)|unterschied zwischen|(?:bläht|verstopft|entwässert) (?:\w+ )?(?:die |viele |alle )?(?:leute|andere|athleten|einen|jeden)|ist das ein mythos)"
    ),
    supposed=_words(
        r"(?:angenommen|gesetzt den fall|theoretisch|wenn|falls|könnte|könnten|vielleicht|womöglich|eventuell|evtl|angst|sorge|sorgen|befürchte|hoffe|"
        r"hoffentlich|sollte|würden|würde(?! (?:[\w']+ ){0,4}(?:ohnmächtig|bewusstlos|schwarz|schwindelig|schwindlig|übel|schlecht|gelähmt|taub)(?! werd))|risiko|vermeiden|vorbeugen|fast|beinahe|kurz davor|kurz vorm|"
        r"kurz vor|nah dran|knapp|vor monaten|vor wochen|letzte woche|letzten monat|"
        r"normalerweise|normal|glaube|denke|dachte|vermute|scheint|fühlt sich an als|als ob|als würde|"
        r"sowas wie|so eine art|(?:krieg|kriege|bekomm|bekomme) ich (?:davon|von|durch|vom|mit)|warum|wieso|gefühlt)"
    ),
)


# ruff: noqa: E501 - a pattern stays on one line


_DRUGS = Late(
    r"\b(?:"
    + folded(
        r"diuretik\w+|entwässerungs(?:mittel\w*|tablett\w*|pille\w*|tee|kapsel\w*)|wasser ?(?:tablett\w*|pillen?)|"
        r"(?:was|etwas|mittel|tablett\w*|pillen?) zum entwässern|furosemid\w*|torasemid\w*|spironolacton\w*|hydrochlorothiazid\w*|"
        r"abführ(?:mittel\w*|tablett\w*|tropfen|tee|zäpfchen)|glaubersalz|bittersalz|einlauf|flohsamen ?kur|"
        r"kalium(?:tablett\w*|präparat\w*|chlorid|citrat|kapsel\w*|pulver|infusion|brause\w*)|kalium (?:tablett\w*|präparat\w*|kapsel\w*|brause\w*|infusion|chlorid|citrat|pulver)|"
        r"\d+ ?(?:mg|g|mmol) kalium|(?:wie ?viel|soll ich|kann ich|wann)(?: [\w']+){0,3} kalium|"
        r"insulin ?spritze\w*|"
        r"ephedrin\w*|koffein ?(?:tablett\w*|pillen?|kapsel\w*)|fettverbrenner|fatburner|"
        r"anabolika|steroide?n?|testo|testosteron ?(?:spritze\w*|kur|gel|enantat|propionat)|wachstumshormone?n?|"
        r"schilddrüsenhormone?n?|l ?thyroxin|thyroxin|t3 (?:tablett\w*|kur)|stanozolol|trenbolon|winstrol|"
        r"blutdruck ?(?:tablett\w*|mittel|senker)|betablocker|kortison\w*|cortison\w*|infusionen?|kochsalz ?infusion|"
        r"überdosis|zu viele (?:tabletten|pillen)|schlaf ?tabletten|beruhigungs ?(?:mittel|tabletten)"
    )
    + r")\b"
)


def german_drugs(clause: str) -> list[tuple[int, int]]:
    """Where in a clause of folded German words a drug is named, but for those said not to be taken."""
    return [m.span() for m in _DRUGS.finditer(clause) if not german_drug_denied(clause, m.span())]


_TABLES = Tables("engine.symptoms.german", folded, net=NOT, nimmer=NO_MORE, koa=NO_AT_HOME)
_PHRASES = _TABLES.phrases(
    "warnings", "dangers", "images", "body", "mood", "others", "other_images", "daily", "dialect"
)
#: Beside dark urine these make it muscle that breaks down.
_MUSCLES_HURT = (
    r"(?:muskeln?|beine?n?|arme?n?|oberschenkel\w*|waden?|schultern?|rücken|körper|alles)"
    r"(?: [\w']+){0,4} (?:weh|schmerz\w*|steinhart|bretthart|hart|geschwollen|brennen|brennt|steif|schwach|krampf\w*|muskelkater|strecken|beugen|höllisch\w*|hölle|schreien|unerträglich|mörderisch)|"
    r"muskel(?:schmerz\w*|kater|krämpf\w*)|gliederschmerz\w*|(?:schmerzende?|steife|harte|geschwollene) (?:muskeln|beine|arme|oberschenkel)|schmerz\w*(?: [\w']+){0,3} (?:muskeln?|beinen?|armen?|oberschenkeln?)"
)

GERMAN = ComplaintLanguage(
    phrases=PhraseBook(chain.from_iterable(_PHRASES.values())),
    figures=Cued((MISREADING, *_TABLES.figures())),
    everyday=_TABLES.everyday(),
    corrector=GERMAN_CORRECTOR,
    said=german_polarity,
    settings=GERMAN_SETTINGS,
    taken_back=Late(
        r"(?:heute|jetzt|seit heute|heute morgen)\b.{0,30}\b(?:schon|doch|ja|habe|ist|wieder|da)\b|"
        r"(?:doch|jetzt schon|wieder da)"
    ),
    muscles_hurt=Late(rf"\b(?:{folded(_MUSCLES_HURT)})\b"),
    no=word_set(
        "nein ne nee no keine keinen kein keins nichts nie negativ null 0 nicht nope nö noe"
    ),
    drugs=german_drugs,
)
