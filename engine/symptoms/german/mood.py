"""How people say in German what concerns eating, the body as they see it, and the mood."""

# ruff: noqa: E501 - a pattern stays on one line
from __future__ import annotations

from engine.symptoms.german.warnings import german_table
from engine.symptoms.names import Symptom
from engine.symptoms.patterns import Phrase

_OWN = r"(?:mein(?:en|e|em)? (?:ganzen |eigenen |fetten |eigenes |fetter )?(?:körper|beine|oberschenkel|bauch|gesicht|arsch|hintern|spiegelbild|figur|aussehen|hüften|arme|haut)|mich(?: selbst| selber)?|wie ich aussehe|was ich (?:im spiegel )?sehe|meinen anblick)"

GERMAN_MOOD: tuple[Phrase, ...] = (
    *german_table(
        Symptom.PURGING,
        "finger absichtlich erbrech gebrochen hals zwing gezwung loswerd losgeworden abfuhr bulimi zahnburste kau extra ubergeb kotz straf wieder raus abtrainier bad klo toilett rausgeholt hochgeholt ruckgangig loffel kompens ausglei abarbei hochgew verbren brechen spucke absicht ausgesp gereihe breche selbst",
        sure=r"""
        (?:wieder|alles|es)<2>(?:rausgeholt|hochgeholt|rausgebracht|rausgewürgt|rausgelassen|ausgespuckt|rückgängig gemacht)<2>(?:klo|bad|toilette|du weisst)?|(?:bad|klo|toilette)<3>(?:wieder )?(?:rausgeholt|hochgeholt|rausgebracht|losgeworden|rausgewürgt)|nach dem essen<3>(?:aufs klo|ins bad)<4>(?:finger|kotzen|brechen|loswerden|raus)?
        (?:finger|zahnbürste|löffel)<4>(?:in den|im|in)<1>(?:hals|rachen|mund|kehle)
        (?:absichtlich|extra|mit absicht|freiwillig|bewusst|selbst|selber|gezielt)<4>(?:<kotz>|gebrochen|brechen|erbrechen|übergeben|kotzen)|(?:<kotz>|gebrochen)<3>(?:absichtlich|mit absicht|extra)
        (?:zum|zu)<1>(?:erbrechen|kotzen|übergeben|brechen)<2>(?:gebracht|gezwungen|bringen|zwingen)|(?:zwinge|zwing|gezwungen|bringe|gebracht)<4>(?:erbrechen|kotzen|übergeben|zu (?:brechen|kotzen|erbrechen))|bulimi\w*
        (?:essen|alles|pizza|kuchen|eis|abendessen|fressanfall)<4>(?:wieder (?:los|raus|ausgekotzt|hochgeholt|losgeworden|hochgebracht|ausgebrochen)|losgeworden|ausgekotzt|hochgewürgt|rausgekotzt)|wieder<2>(?:rausgekotzt|ausgekotzt|losgeworden|hochgewürgt|rausgewürgt|hochgeholt)
        abführ\w*<4>(?:genommen|geschluckt|um|nehme|damit|gegen|wieder|nach|eingeworfen)
        gekaut<3>(?:ausgespuckt|ausspucken)|kaue?n?<4>(?:spucke|spucken|ausspucken)
        """,
        doubtful=r"""
        (?:cardio|laufen|gelaufen|laufband|schritte|sport|training|stepper|crosstrainer)<6>(?:strafe|bestraf\w*|abtrainier\w*|wiedergutmach\w*|ausgleich\w*|abarbeit\w*|kompensier\w*|verbrenn\w*)<4>(?:essanfall|fressanfall|gegessen|gefressen|kuchen|pizza|essen|schokolade|eis)?
        (?:bestrafe|bestraft|bestrafen) mich|mich<2>(?:bestrafen|bestraft)
        """,
    ),
    *german_table(
        Symptom.BINGEING,
        "fress gefress essanfall esssucht attacke kontroll vollgestopft reingestopft geplundert leergegess leer aufhor gestopft verschlungen packung tute ferngesteurt rausch trance orgie glas tafel pizza eimer kuchen stoppen gegesse hinein aufgeho uberfal heisshu gebinge weggeha uberess reingez rein verputz verdruc nutella musli binge schokol becher brot rutsch heimlic geheult stehen zehn einmal",
        sure=r"""
        (?:packung|tüte|glas|tafel|pizza|eimer|becher|kuchen|brot|eis|müsli|schokolade|nutella)<7>(?:wie ferngesteuert|ferngesteuert|auf einmal|im stehen|in zehn minuten|in einem rutsch|danach geheult|und geheult|wie im rausch|in trance|heimlich)|wie (?:ferngesteuert|im rausch|in trance)<5>(?:gegessen|gefressen|kühlschrank|küche|reingestopft)?
        (?:essens?|fress|zucker)<1>(?:orgie|rausch|attacke)|(?:gegessen|gefressen|reingestopft)<6>(?:wie ferngesteuert|ohne zu stoppen|bis nichts mehr|wie ein tier|wie im rausch)
        fressanfall\w*|fressanfäll\w*|essanfall\w*|essanfäll\w*|fressattacke\w*|essattacke\w*|heisshungerattacke\w*|heisshungeranfall\w*|fressflash|fressorgie|binge(?! ?watch\w*)\w*|gebinged?|überfressen|überessen
        (?:alles|mich|mir|wild|wahllos|unkontrolliert)<4>(?:vollgefressen|reingestopft|reingefressen|vollgestopft|reingeschaufelt|verschlungen|gefressen|in mich hinein\w*|reingeschoben)|in mich (?:rein|hinein)\w*|vollgefressen|vollgestopft(?! mit terminen)
        <kann><4>nicht<2>(?:aufhören|mehr aufhören|stoppen)<2>(?:zu essen|zu fressen|mit (?:dem )?(?:essen|fressen))|(?:nicht|nicht mehr)<2>(?:aufhören|aufgehört|stoppen)<2>(?:zu essen|zu fressen|mit (?:dem )?essen)|(?:essen|fressen)<3>nicht<2>(?:aufhören|stoppen|aufgehört)
        kontrolle<4>(?:verloren|verlor|verliere|weg)(?! (?:über (?:das auto|den wagen|die zeit)))|(?:kühlschrank|vorratsschrank|schränke|küche|vorräte|süssigkeitenschrank)<3>(?:leer ?gefressen|leer ?gegessen|geplündert|leergeräumt|überfallen)
        (?:gegessen|gefressen)<4>bis<4>(?:schlecht|weh|nicht mehr|übel|platz\w*|kotz\w*|bauch)
        """,
        doubtful=r"""
        (?:ganze[ns]?|ganzen|komplette[ns]?|zwei|drei|vier|riesen)<1>(?:glas|gläser|kuchen|torte|packung|packungen|tüte|tüten|tafel|tafeln|pizza|pizzen|eimer|becher|brot|dose|nutella|erdnussbutter|eis|kekse|chips|gummibärchen)<3>(?:gegessen|gefressen|verdrückt|verputzt|weggehauen|reingezogen|aufgegessen|leer\w*|verschlungen)
        """,
    ),
    *german_table(
        Symptom.STARVING,
        "ess iss hunger gegessen mahlzeit fast nahrung kalorien verdien futter lebe bissen nichts weggeworfen hund kaffee stolz leere runter weniger magersu bloss anorexi ernahre kaum kcal mull steheng salat magen angeruh zigaret weggeki hungrig stehenl leb entsorg katze panik heimlic gurke bruhe apfel verstec unter",
        sure=r"""
        (?:abendessen|mittagessen|frühstück|essen|portion|mahlzeit|reis|hähnchen)<6>(?:der hund|dem hund|hund gekriegt|hund bekommen|in den müll|im müll|stehen ?lassen|stehengelassen|nicht angerührt|an den hund|der katze)|hund<4>(?:gekriegt|bekommen|gefüttert)<4>(?:essen|abendessen|portion)|(?:weniger|leerer|hungriger)<1>(?:ist mehr|ist besser|desto besser)
        (?:nur|bloss|ausschliesslich)<2>(?:schwarzer kaffee|kaffee|wasser|tee|kaugummi|gurke|salat|brühe|ein apfel|zigaretten)<3>(?:heute|den ganzen tag|seit|statt|sonst nichts|gestern|bis)|(?:hunger|leere|leerer magen)<4>(?:fühlt sich gut|tut gut|gibt mir kraft|macht mich stolz|ist mein freund)|stolz<6>(?:nichts gegessen|hunger|ohne essen)
        (?:kriege?|bringe?|bekomme?)<4>(?:nichts|keinen bissen|kein essen)<2>(?:runter|hinunter)|(?:will|mag|möchte|kann)<3>nicht<1>(?:mehr )?essen(?! (?:gehen|was|müssen|wie|mit|den reis|das hähnchen))
        (?:esse|ess|essen|gegessen|aß)<3>(?:(?:heute |gar |seit \w+ |fast |einfach |jetzt |absolut |ab jetzt |bis \w+ )*(?:nichts|nix)(?: mehr)?|keinen bissen|nicht mehr|keine mahlzeit\w*)(?= (?:bis|heute|mehr|seit|damit|um|und|ab|weil|vor|morgen|,)|$)
        (?:nichts|nix|keinen bissen|nichts mehr|gar nicht|nicht|kaum was|kaum etwas|fast nichts|noch nichts)<2>(?:gegessen|zu essen|essen|esse)(?= (?:bis|seit|heute|mehr|damit|um|und|will|werde|sollte|möchte|und|darf|ab|gestern|morgen|weil|habe|,)|$)(?! (?:zuhause|im haus))
        (?:sollte|will|werde|möchte|könnte|darf|muss|höre|hör)<5>(?:nichts mehr|nichts|gar nichts|aufhören zu|auf zu|nicht mehr)<1>essen|(?:aufhören|aufgehört|höre auf|hör auf)<2>(?:zu essen|mit (?:dem )?essen)
        (?:seit|den ganzen|ganzen)<3>(?:tag|tagen|gestern|vorgestern|stunden|montag|dienstag|mittwoch|donnerstag)<4>(?:nichts|nix|kaum was|kaum etwas)<1>(?:gegessen|im magen)
        (?:hungere?|hungern|aushungern|ausgehungert)(?! nach)<2>(?:mich|bis|damit|um|seit|lieber|einfach|weiter|aus)|mich<2>(?:aushungern|runterhungern|hungern)|(?:will|werde|möchte|lieber)<3>(?:hungern|faste|fasten|heilfasten)(?= (?:bis|damit|um|statt|als|ab)|$)
        (?:lasse|lass|weggelassen|auslassen|ausgelassen|überspringe)<3>(?:alle|jede|sämtliche|meine)<2>(?:mahlzeit\w*|essen)|(?:alle|meine|sämtliche)<2>(?:mahlzeiten|essen)<2>(?:weggelassen|ausgelassen|weglassen|auslassen|gestrichen)
        (?:lebe|leb|ernähre mich|überlebe)<3>(?:nur |bloss )?(?:von|mit)<2>(?:kaffee|wasser|luft|kaugummi|cola|zigaretten|gurken?|salat)
        (?:verdiene?|verdient)<4>(?:essen|kein essen|nichts zu essen|mahlzeit\w*|kohlenhydrate|zu essen)|nicht verdient<3>(?:essen|mahlzeit)|essen<3>(?:nicht verdient|verdienen)
        (?:essen|mahlzeit\w*|reis|mittagessen|abendessen|frühstück)<4>(?:weggeworfen|weggeschmissen|heimlich|in den müll|versteckt|entsorgt|dem hund|weggekippt)|(?:so getan|gelogen|behauptet|erzählt)<4>(?:gegessen|essen)
        (?:angst|panik|schiss)<2>(?:vor dem essen|vorm essen|zu essen|vor (?:jedem )?essen|vor kohlenhydraten|vor carbs|vor jeder mahlzeit|etwas zu essen)|magersüchtig|magersucht|anorexi\w*
        (?:nur|bloss|auf|unter)<2>(?:[1-7]\d\d) ?(?:kcal|kalorien)(?! (?:frühstück|snack|verbrannt))
        """,
        doubtful=r"""
        (?:absichtlich|heimlich|extra|mit absicht|freiwillig)<3>(?:weniger|nur die hälfte|kaum)<2>(?:gegessen|essen|esse)
        """,
    ),
    *german_table(
        Symptom.BODY_HATE,
        "hass ekel ekle korper fett hasslich spiegel abstoss widerlich scham schame wal tonne widert alles nichts nimmer speck verabsc veracht abschne eklig wegschn ertrage raussch abreiss monster anblick aussehe unformi graust elefant leiden ansehen dick anschau aussteh obersch beine bauch figur arsch eigenen sehen",
        sure=rf"""
        (?:alles|nichts)<2>(?:an mir|an meinem körper)<3>(?:fett|eklig|hässlich|widerlich|ekelhaft|falsch|schwabbelig|schlimm|gut genug|schön)|(?:fett|eklig|hässlich|widerlich|ekelhaft)<5>(?:wenn ich|im spiegel|spiegel sehe|mich sehe)|spiegel<6>(?:heule?|eklig|fett|widerlich|kotzen|schlecht|hasse|zerschlagen)
        (?:hasse?|verabscheue?|verachte)<2>{_OWN}|(?:kann|konnte|ertrage|mag)<3>{_OWN}<3>(?:nicht|nimmer)<2>(?:sehen|ansehen|anschauen|ertragen|leiden|mehr|ausstehen)
        (?:ekle|ekel|ekelt|schäme|widert|graust)<4>(?:vor (?:mir|meinem)|mich (?:vor|an)|mich für (?:meinen|mich)|mein körper|mich selbst|mein spiegelbild|mein bauch)|mich<2>(?:ekelt|widert)<3>(?:körper|bauch|spiegel\w*|anblick)
        <kann><4>nicht<2>(?:in den|im) spiegel<2>(?:schauen|sehen|gucken|ansehen)|nicht (?:mehr )?im spiegel|spiegel<3>(?:abgehängt|verhängt|zerschlagen|meide|vermeide|zugehängt)|(?:in den|im) spiegel<4>(?:heul\w*|hasse|ekel\w*|schlecht|nicht ertragen)
        (?:bin|sehe|seh|fühle? mich|fühl mich|ich)<3>(?:so |zu |einfach |total |nur |wie )?(?:fett|hässlich|widerlich|ekelhaft|eklig|abstossend|fette kuh|fettes schwein|fette sau|ein wal|wal|walross|tonne|elefant|dick und|speckig|monster|unförmig|fettsack)(?! (?:verbrenn\w*|frei|arm|grip|markiert|gedruckt))
        (?:mein körper|mein bauch|mein spiegelbild|meine beine|meine oberschenkel)<2>(?:ist|sind|ekelt|widert|macht)<3>(?:eklig|ekelhaft|widerlich|hässlich|abstossend|fett|mich|krank)
        (?:fett|speck|haut|bauch)<3>(?:abschneiden|wegschneiden|abreissen|rausschneiden)
        """,
    ),
    *german_table(
        Symptom.LOW_MOOD,
        "sinn hoffnung wert depress wein heul geweint leer tranen allein einsam versag egal kann mag dunkl loch panik angst freude leben kaputt am ende zusammen verzweif nutzlos aufgeben tief niemand keiner bringt schwarz last antrieb mehr seelisch psychisch mental emotional innerlich freut interessiert wozu umsonst aufgege trostlo traurig niederg grau mochte zerbroc psyche spass hasse stimmun zweck laune ausweg bett licht bereite sehr unsicht begeist eimer verlore einfach total gebroch miserab tot verschw unten nichts down schlech will",
        sure=r"""
        (?:nichts|gar nichts)<3>(?:freut|erfreut|begeistert|interessiert|macht|bereitet)<3>(?:mich|mir|mehr|spass|freude)|freut mich<2>(?:nichts|gar nichts|nicht)<1>mehr|(?:seelisch|psychisch|mental|emotional|innerlich)<4>(?:schlecht|mies|am ende|kaputt|fertig|am boden|ganz unten|leer|scheisse|zusammengebrochen|labil|nicht gut|dreckig)
        (?:alles|ich)<3>(?:schwarz|grau|sinnlos|umsonst|hoffnungslos)(?= (?:in mir|und|,)|$)(?! (?:und weiss|gekleidet|lackiert))|(?:kriege?|komme|komm)<4>nicht(?: mehr)?<2>(?:aus dem bett|aus dem loch|hoch psychisch)<2>(?:vor traurigkeit|weil|seelisch)?
        (?:alles|das alles|es|nichts|leben|das ganze|irgendwas|überhaupt)<3>(?:keinen sinn|kein sinn|sinnlos|keinen zweck|zwecklos|sinn(?: mehr)?$)(?! (?:im plan|bei der))|(?:keinen|kein) sinn<2>(?:mehr|in (?:irgend)?(?:was|allem|nichts))|(?:sehe|seh)<3>(?:keinen sinn|kein sinn|keine hoffnung|kein licht|keinen ausweg)|wozu (?:das alles|überhaupt|noch)|(?:hat|ergibt|macht)<3>alles keinen sinn
        hoffnungslos\w*|wertlos\w*|depressiv\w*|depression\w*|verzweifel\w*|verzweiflung|nutzlos(?!e)|lebensmüde|trostlos\w*
        (?:weine|heule|heul|wein|weinen|geweint|geheult|heulen|tränen)<4>(?:ständig|dauernd|nur noch|nur|den ganzen|die ganze|ohne grund|seit|jeden|jede|grundlos|wieder|stundenlang|aufhören|unter der dusche|im bett|bei jeder|schlaf)|(?:ständig|dauernd|nur noch|den ganzen tag|die ganze nacht|ohne grund|jeden abend|grundlos|stundenlang|nur am)<3>(?:weine\w*|heule\w*|geweint|geheult|am heulen|am weinen|heulen|tränen)
        (?:fühle? mich|fühl mich|bin|innerlich|so)<3>(?:leer|tot|kaputt|zerbrochen|allein gelassen|einsam|wie ein versager|als versager|eine last|ein versager|versagerin|nichts wert|am ende|gebrochen|verloren)(?! (?:vom training|gegessen|nach (?:dem|beinen)))|innere leere|innerlich (?:leer|tot|kaputt)
        (?:mag|will|kann)<1>(?:ich )?(?:einfach )?nicht mehr(?= ,|$)|(?:ich )?(?:kann|mag|will) (?:einfach |echt |wirklich |so |das alles )*nicht mehr$|(?:halte|halt)<2>(?:das|es)<2>(?:alles |einfach |so )?nicht mehr aus|(?:pack|packe|schaff|schaffe)<2>(?:das|es)<2>(?:alles |einfach )?nicht mehr
        (?:dunkle?n?|schwarze?n?|tiefe?n?)<1>(?:loch|gedanken|tal)(?! (?:im zahn))|tief im loch|seelisch<2>(?:am ende|fertig|kaputt)|psychisch<2>(?:am ende|fertig|kaputt|schlecht|nicht gut)|nervlich<1>am ende|nervenzusammenbruch|zusammenbruch (?:nahe|nah)
        (?:nichts|gar nichts)<2>(?:macht|bereitet|bringt)<3>(?:freude|spass|sinn)(?: mehr)?|(?:keine|null|kein)<1>(?:freude|lebensfreude|lebenslust|hoffnung|antrieb)(?: mehr)?(?! (?:auf|am) (?:cardio|training))|alles egal(?: geworden)?|alles ist mir egal
        panikattacke\w*|angstattacke\w*|angstzustände|(?:hasse)<1>(?:mein leben|alles)|(?:will|möchte)<3>(?:verschwinden|einfach weg sein|unsichtbar sein|nur noch weg)|(?:habe|hab)<3>(?:mich|alles) aufgegeben
        """,
        doubtful=r"""
        (?:stimmung|laune|psyche|mental|mentally|kopf)<3>(?:am boden|tiefpunkt|ganz unten|ganz schlecht|sehr schlecht|miserabel|am arsch|im eimer)|(?:so|total|sehr)<1>(?:einsam|allein|niedergeschlagen|traurig|down)
        (?:niemand|keiner)<2>(?:versteht|interessiert|mag|braucht)<2>(?:mich)?|(?:heute|gestern|vorhin|gerade|plötzlich)<3>(?:geweint|geheult|in tränen)|in tränen ausgebrochen|heulkrampf|heulanfall
        """,
    ),
    *german_table(
        Symptom.SELF_HARM,
        "aufwach aufzuwach besser ohne mich existier tot bruck zug auto tablette klinge messer abschied ritz weg leben hier sterb schlaf geboren last niemand keiner verletz mich schluss ende schluss tabletten pillen medikament erhang erschiess ertrank vergift schneid denke gedank uberleg traum draufge baum aufhort absicht springe lange geschni bahn einfach aufgewa leichte ruhe lieber extra nimmer gedacht gesprun getan schmeis werfen welt denk sein gluckli verbran geschla gabe",
        sure=r"""
        (?:mache?|mach)<4>schluss(?! mit (?:der|dem|ihm|ihr|diät|cardio|süssigkeiten|meinem freund|meiner freundin|für heute))(?= |$)(?! für heute)|(?:tabletten|pillen|medikamente)<6>(?:aufgereiht|vor mir|bereit\w*|gesammelt|gehortet|gezählt|schaue?|starre?|liegen)|(?:besser|lieber|leichter)<4>tot(?! ?(?:müde))|tot<3>(?:besser|lieber)
        (?:denke?|gedanken|gedacht|träume?|überlege?)<4>(?:ans sterben|an den tod|vom tod|zu sterben|zu springen|mich umzubringen|nicht mehr da zu sein|wie es wäre (?:tot|weg)|alles zu beenden|es zu beenden)|(?:erhängen|erschiessen|ertränken|vergiften)<2>(?:mich|$)|mich<2>(?:erhängen|erschiessen|ertränken|vergiften|aufhängen)
        (?:ritze|schneide|verletze)<3>(?:mich|mir)<3>(?:wieder|in die|die arme|nachts)?|(?:wieder|nachts|heimlich)<3>(?:geritzt|geschnitten|am ritzen)
        (?:nicht|nie|nimmer|gar nicht)<2>(?:mehr )?(?:aufwachen|aufzuwachen|aufgewacht|aufwache)(?! (?:um|vor|ohne wecker))|(?:einschlafen|schlafen)<4>(?:nie|nicht)<2>(?:wieder |mehr )?(?:aufwachen|aufwache)|für immer schlafen
        (?:ohne mich|wenn ich (?:weg|tot|nicht mehr (?:da|hier|lebe))|wenn's mich nicht|wenn es mich nicht)<4>(?:besser|leichter|einfacher|glücklicher|gäbe|wäre\w*)|(?:besser|leichter|einfacher|glücklicher)<4>(?:ohne mich|wenn ich (?:weg|tot|nicht mehr)|wenn es mich nicht)|(?:besser|lieber)<2>(?:dran )?ohne mich
        (?:nicht|nie|nimmer)<3>(?:mehr )?(?:da sein|existieren|hier sein|leben|am leben sein|geboren|auf der welt)(?= (?:und|wollen|will|worden|müssen|so)|$|(?: ,))(?! (?:wie|ohne|mit|in|auf|können))|nie geboren
        (?:von|vor)<2>(?:brücke|dach|zug|balkon|hochhaus|u bahn|s bahn|bahn|auto)<2>(?:springen|gesprungen|werfen|schmeissen|zu springen)|(?:gegen|an)<1>(?:einen |den |nen )?(?:baum|brückenpfeiler)<1>(?:fahren|lenken|setzen)|(?:vors|vor ein|vor den|vor einen|in den|in die)<1>(?:auto|zug|lkw|laster|bahn|gegenverkehr|leitplanke)<2>(?:laufen|rennen|springen|werfen|schmeissen|gehen|lenken|fahren)(?! (?:ein|lassen))
        (?:alle|ganzen|viele)<2>(?:tabletten|pillen)<2>(?:schlucken|nehmen|geschluckt|genommen|einwerfen)|abschiedsbrief\w*|(?:pulsadern?|handgelenk\w*)<3>(?:aufschneid\w*|aufgeschnitten|schneid\w*)|(?:klinge|rasierklinge|messer)<4>(?:arm|haut|handgelenk\w*|oberschenkel)
        (?:mach|mache|machen|mache ich|setze)<4>(?:schluss mit (?:allem|mir|dem leben)|allem ein ende|ein ende)(?! mit (?:der|dem) (?:diät|prep|training))|(?:will|möchte|kann)<4>(?:nicht mehr leben|so nicht (?:mehr )?(?:weiter ?)?leben)|so nicht (?:mehr )?(?:weiter ?)?leben
        (?:niemand|keiner)<3>(?:vermissen|vermisst|merken|auffallen)<3>(?:wenn ich|mich)?|wär\w*<2>(?:lieber|besser)<2>(?:tot|weg|nicht mehr da)|(?:egal|scheissegal)<3>(?:ob|wenn) ich (?:sterbe|tot|draufgehe|aufwache)
        (?:mich|mir)<2>(?:geritzt|geschnitten|verbrannt|geschlagen|wehgetan|weh getan)<2>(?:um|damit|absichtlich|wieder|weil|mit absicht|extra)|(?:absichtlich|mit absicht|extra)<3>(?:geritzt|geschnitten|verbrannt|geschlagen|verletzt)
        """,
        doubtful=r"""
        (?:alle|allen|familie|welt|anderen)<3>(?:besser dran|leichter|einfacher)|(?:fall|falle|bin)<3>(?:nur )?(?:zur last|eine last)|will<3>(?:nur noch )?(?:dass es aufhört|dass alles aufhört|ruhe für immer|meine ruhe für immer)
        (?:nicht mehr|nicht)<1>lange<1>(?:da|hier|leben)
        """,
    ),
)
