"""How people tell a complaint in German in passing, as in `daily_phrases`."""

# ruff: noqa: E501 - a pattern stays on one line
from __future__ import annotations

from engine.symptoms.german.warnings import german_table
from engine.symptoms.names import Symptom
from engine.symptoms.patterns import Phrase

_TAG = r"(?:montag|dienstag|mittwoch|donnerstag|freitag|samstag|sonntag|wettkampf|show|bühne|wiegen|auftritt)"

GERMAN_DAILY: tuple[Phrase, ...] = (
    *german_table(
        Symptom.SEIZURE,
        "krampf zuck zitter geschüttelt steif",
        sure=r"""
        (?:gekrampft|krampf\w*|gezuckt|gezittert|geschüttelt|steif)<8>(?:nicht da|nicht ansprechbar|weg|abwesend|nicht reagiert|nicht geantwortet)<3>(?:minuten?|sekunden|moment)
        (?:minuten?|sekunden|moment)<3>(?:nicht da|nicht ansprechbar|weg|abwesend)<6>(?:gekrampft|gezuckt|gezittert|geschüttelt)
        """,
    ),
    *german_table(
        Symptom.FAINTING,
        "lücke zwischen fehlen fehlt schwarz herd lag",
        sure=r"""
        (?:wurde|wird|war)<3>alles<1>schwarz|alles schwarz geworden|mir<2>schwarz geworden
        (?:lücke|loch|schnitt)<2>zwischen<8>(?:liegen|lag|boden|fliesen|rücken)
        (?:fehlen|fehlt)<3>(?:sekunden|minuten?|stück)<8>(?:boden|gelegen|lag|fliesen|liegend)
        """,
        doubtful=r"""
        lag<3>(?:neben|vor|unter)<2>(?:kühlschrank|dusche|waschbecken|klo|ofen|wanne|herd)
        """,
    ),
    *german_table(
        Symptom.PALPITATIONS,
        "herz puls",
        sure=r"""
        (?:herz\w*|puls)<6>(?:bett|matratze|kissen|kopfkissen|sofa|shirt)<2>(?:wackelt\w*|bebt\w*|zittert\w*|bewegt|hüpft|vibriert)
        herz\w*<3>(?:schlägt|schlug|pumpt|klopft)<3>(?:fest|laut|doll|hart)(?! für)
        (?:bett|matratze|kissen|sofa)<2>(?:wackelt|bebt|zittert|vibriert)<4>(?:herz\w*|puls)
        """,
    ),
    *german_table(
        Symptom.STROKE_SIGNS,
        "links rechts seite hälfte strich linie zahnarzt betäub wort sagen halb ausspre nennen spritze",
        sure=r"""
        (?:strich|linie)<3>mitte<,8>(?:nichts|taub|kein gefühl|tot)
        (?:linke|rechte|eine|halbe|ganze)<1>(?:seite|hälfte|körperhälfte|gesichtshälfte)<5>(?:nichts|taub|tot|eingeschlafen|kein gefühl|gehört nicht|hängt|wie weg|fühl\w* nicht)
        (?:taub|kein gefühl|tot|eingeschlafen)<3>(?:linken?|rechten?|einen?|ganzen?|halben?)<1>(?:seite|hälfte|körperhälfte|gesichtshälfte)
        (?:spür\w*|fühl\w*|merk\w*)<3>(?:links|rechts)<3>(?:nichts|nix)
        (?:links|rechts)<3>(?:spür\w*|fühl\w*|merk\w*)<3>(?:nichts|gar nichts|nix)
        halbe?s?<1>(?:gesicht|mund|lippe|zunge)<3>(?:taub|tot|hängt|eingeschlafen|schief)
        (?:zahnarzt|betäubung|spritze)<5>(?:halbe?n?|eine seite|linke\w*|rechte\w*)|(?:halbe\w*|linke\w*|rechte\w*|eine)<2>(?:seite|gesicht|wange|lippe)<4>(?:zahnarzt|betäubt|betäubung)
        (?:weiss|wusste)<1>was<5>(?:konnte?|kann)<3>nicht<3>(?:sagen|nennen|aussprechen)
        """,
    ),
    *german_table(
        Symptom.LIMB_WEAKNESS,
        "hand finger fallen spur fuhl merk",
        sure=r"""
        (?:fühl|spür|merk)e?<3><glied><2>(?:nicht|nicht mehr|kaum)
        (?:hand|finger)<2>(?:hat|haben|hatte)<4>fallen (?:lassen|gelassen)|(?:hand|finger)<2>(?:lässt|lassen|liess)<3>(?:alles|los|fallen)
        """,
    ),
    *german_table(
        Symptom.REPEATED_VOMITING,
        "schluck bissen loffel",
        sure=r"""
        jede[rn]?<1>(?:schluck|bissen|löffel)<3>(?:kommt|kam|geht|ging|wandert)<3>(?:raus|hoch|oben|retour|zurück|heraus|rückwärts)
        """,
    ),
    *german_table(
        Symptom.HEAVY_BLEEDING,
        "periode regel tage binde tampon blut klumpen handtuch nase mens",
        sure=r"""
        nasenbluten<,8>(?:zweite|dritte|vierte|zweites|drittes|viertes) (?:handtuch|rolle|packung|lappen)|nasenbluten<2>(?:seit|schon|jetzt)<1>(?:[2-9]\d|1\d\d) ?(?:min|minuten)
        (?:periode|regelblutung|mens|tage)<5>(?:stark|heftig|krass|schlimm|extrem)<,8>(?:durch|stunde|min|minuten|binde\w*|tampon\w*|klumpen|schummrig|schwindlig|läuft)
        (?:binden?|tampons?)<4>(?:alle|jede|pro|stündlich|halbe stunde|voll nach)<2>(?:stunde|minuten|min|halbe|20|30)?
        (?:blute?|blutung)<4>(?:alles durch|durch alles|binde\w* durch|läuft durch|wie ein wasserfall)
        (?:blut)?klumpen<4>(?:gross|grosse|faust\w*|pflaume\w*|walnuss\w*|golfball\w*|tischtennis\w*)|(?:grosse|riesige|faustgrosse) (?:blut)?klumpen
        """,
    ),
    *german_table(
        Symptom.SEVERE_HEADACHE,
        "kopf schädel schläfe hirn auge migrän donner geknallt knall schmerz stirn",
        sure=r"""
        kopf<3>(?:geknallt|gekracht|geplatzt|gezündet|explodiert)<3>(?:donner\w*|schuss|bombe|blitz\w*|knaller)|(?:donnerschlag|donnerknall)<6>(?:kopf|schädel|schmerz)|(?:kopf|schädel)<6>(?:donnerschlag|donnerknall)
        im kopf (?:geknallt|gekracht)
        (?:bolzenschuss\w*|nagelpistole|schuss|kugel|vorschlaghammer|baseballschläger|peitsch\w*|böller|stromschlag|explosion)<6>(?:schläfen?|kopf|schädel|hirn|hinterm auge|stirn|augen?)
        (?:schläfen?|kopf|schädel|hirn|stirn|<kopfweh>)<7>(?:bolzenschuss\w*|nagelpistole|vorschlaghammer|baseballschläger|peitschenhieb|böller|explosion|volle\w* wucht)
        (?:irrsinnig\w*|wahnsinnig\w*|höllisch\w*|mörderisch\w*|rasend\w*|brutal\w*|grausam\w*|unmenschlich\w*)<2>(?:schmerz\w*<3>(?:kopf|schädel|schläfe)|<kopfweh>)
        <kopfweh><5>(?:noch nie|ganzen leben nicht|leben noch nicht|nie gehabt|nie erlebt|auf den knien|wimmer\w*|geschrien)
        (?:mitten im satz|zack|peng|bumm|von einer sekunde)<6>(?:<kopfweh>|schmerz\w*<3>kopf)
        """,
    ),
    *german_table(
        Symptom.DOUBLE_VISION,
        "zwilling geist zwei doppel doppler dobbel bilder auge auseinander jede",
        sure=r"""
        (?:linien?|zeilen|buchstaben|lichter|streifen|spuren|schrift|bilder)<5>(?:liefen|laufen|gingen|gehen|rutschten|drifteten|drifte\w*)<3>auseinander
        aus jede[mr]<1>(?:auto|licht|lampe|linie|buchstaben?|menschen|gesicht|schild|zahl|person|wort|ding|zeile|finger)<1>(?:wurden?|werden|machten?)<1>(?:zwei|zwo)
        (?:alles|jeder|jede|teller|leute|buchstaben|finger|daumen|zeilen|lichter|zahlen|gesichter|hat|haben)<4>(?:zwilling|zwillinge|doppelgänger|geisterbild\w*|doppelbild\w*|zweiten umriss|geist daneben)
        (?:zwei|2)<1>bilder<4>(?:nebeneinander|übereinander|neben|versetzt|verschoben|überlapp\w*)
        (?:sehe?|sah|gesehen)<3>(?:alles|jeden|dich|leute|teller|sie|ihn|es)<2>(?:zweimal|zweifach|zwei mal|doppelt|dobbelt)
        auge zu<6>(?:weg|nur noch eins|nur noch einer|wieder eins)|(?:zuhalte|zukneife|zumache|zugekniffen)<3>auge<5>(?:weg|nur noch)
        """,
    ),
    *german_table(
        Symptom.SELF_HARM,
        "abschied parkdeck dach brücke brüstung geländer gleis bahnsteig balkon leicht schritt einfach kante parkhau klippe",
        sure=r"""
        abschieds(?:nachricht\w*|video\w*|worte)|(?:briefe?|nachrichten|zettel)<3>(?:zum abschied|abschied)
        (?:parkdeck|parkhaus|dach|brücke|brüstung|geländer|gleis\w*|bahnsteig|balkon|klippe|kante)<8>(?:so leicht|so einfach|springen|ein schritt|loslassen|fallen lassen)
        """,
        doubtful=r"""
        (?:wär|wäre)<2>so (?:leicht|einfach)(?= ?$)|ein schritt und<3>(?:vorbei|ruhe)
        """,
    ),
    *german_table(
        Symptom.URINE_DARK,
        "urin pipi pisse harn pinkel dunkelgelb bernstein",
        sure=r"""
        <pipi><5>(?:kürbiskernöl\w*|starkbier|schwarzbier|altbier|malzbier|dunkelbier|guinness|espresso|kaffee|bernstein\w*|whisky|whiskey|balsamico|rostig|rost|rostbraun|rotwein|kastanie\w*|sojasosse|motoröl|sirup)
        """,
        doubtful=r"""
        (?:dunkelgelb|bernstein\w*)<,6>(?:wasser|getrunken|trinke)
        """,
    ),
    *german_table(
        Symptom.STARVING,
        "fast hunger essen ess nichts",
        sure=rf"""
        bis<2>{_TAG}<3>(?:fasten|faste|hungern|hungere|nichts essen|nix essen|nichts mehr essen|nichts mehr)(?! trinken)
        (?:fasten|faste|hungern|nichts essen|nix essen|nichts mehr essen|kein essen)<2>bis<2>{_TAG}
        """,
    ),
    *german_table(
        Symptom.LOW_MOOD,
        "tränen katz freude spass heul lust",
        sure=r"""
        (?:laufen|kommen|fliessen|rinnen|kullern)<4>tränen(?! vor (?:lachen|freude|glück|rührung))|tränen<2>(?:laufen|kommen|fliessen|rinnen)(?! vor (?:lachen|freude|glück|rührung))
        an (?:nichts|nix)(?: mehr)?<1>(?:freude|spass)|(?:freude|spass|lust)<1>an (?:nichts|nix)|(?:alles|prep|job|leben)<5>für die katz<4>(?:alles|leben|freude)
        """,
        doubtful=r"""
        alles für die katz
        """,
    ),
    *german_table(
        Symptom.DRYING_OUT,
        "bad bäder wanne schwitz müll folie sauna hoodie",
        sure=r"""
        heisse?[nrs]? (?:salz ?)?(?:bad|bäder|wanne|badewanne)<,6>(?:hoodie|pulli|runter|schwitz\w*|kilo|leichter|gewicht)|salz ?b(?:ad|äder)<,6>(?:hoodie|pulli|runter|schwitz\w*|kilo|leichter|gewicht)
        (?:müllsack|müllsäcken?|müllbeutel\w*|frischhaltefolie|schwitzanzug|saunaanzug)<6>(?:wanne|bad|sauna|rad|laufband|schwitz\w*|cardio|joggen|laufen|geschlafen|bauch)
        """,
    ),
    *german_table(
        Symptom.PURGING,
        "dulcolax abführ bisacodyl senna glauber bittersalz laxober einlauf sennes",
        sure=r"""
        (?:dulcolax|abführ\w*|bisacodyl|senna\w*|sennes\w*|glaubersalz|bittersalz)<8>(?:leer|flach|flacher|leichter|dünner|schlank|gewicht|waage|alles raus|rausgekommen|raus ist|loswerden)
        (?:zwei|drei|vier|fünf|sechs|sieben|acht|zehn|\d+)<1>(?:dulcolax|abführtabletten|abführmittel|bisacodyl)
        """,
    ),
    *german_table(
        Symptom.FAST_HEART,
        "ruhepuls puls ruhe liegen nichtstun",
        sure=r"""
        (?:ruhepuls|puls<2>(?:in ruhe|im liegen|im sitzen|im bett|beim aufwachen|nachts))<4>(?:9\d|1[0-6]\d)(?= |$)
        (?:9\d|1[0-6]\d)<3>(?:ruhepuls|im liegen|in ruhe|beim nichtstun)
        """,
        doubtful=r"""
        ruhepuls<3>[78]\d<3>(?:statt|sonst|normal|normalerweise|letzte woche)<3>[345]\d
        """,
    ),
    *german_table(
        Symptom.FALL,
        "hingeschlagen hingeknallt hingeflogen hinge gestolpert bordstein stufe podest box gerutscht rutsch gesegel gefloge gesturz runterg lange gefalle",
        sure=r"""
        (?:lang|voll|längs|übel|böse|richtig)<1>(?:hingeschlagen|hingeknallt|hingeflogen|hingelegt|hingefallen)|hingeschlagen|hingeknallt|hingeflogen|der länge nach
        (?:vom|von der|von dem|über den|über die|auf der|auf dem|die)<2>(?:podest|box|bühne|treppe|leiter|rad|laufband|hocker|bank|bordstein|kante|stufe\w*|teppich|glatteis|fliesen)<4>(?:geflogen|gefallen|gestürzt|gerutscht|ausgerutscht|gestolpert|runtergefallen|gesegelt)
        """,
    ),
    *german_table(
        Symptom.VOMITING,
        "mahlzeit essen frühstück abendessen mittag shake gebrochen oben rückwärts zuruckg hochgek retour porridg haferbr rausgek reis",
        sure=r"""
        (?:mahlzeit|essen|frühstück|abendessen|mittagessen|shake|reis|haferbrei|porridge)<4>(?:oben raus|wieder (?:raus|hoch|rausgekommen|hochgekommen)|rückwärts|retour|hochgekommen|zurückgekommen)
        (?:einmal|zweimal|dreimal|schon wieder) gebrochen(?! (?:arm|bein|finger|zeh))<2>(?:nach|vom|wegen|weil|heute|nachts|gestern|seitdem)
        """,
        doubtful=r"""
        (?:einmal|zweimal|dreimal) gebrochen(?= ?$)
        """,
    ),
    *german_table(
        Symptom.FEVER,
        "38 39 40 zähne zähneklappern",
        sure=r"""
        (?:38[.,][3-9]|39[.,]\d|40[.,]\d)<3>(?:ohr|stirn|achsel|zunge|grad|mund|thermometer|rektal|gemessen)|(?:ohr|stirn|achsel|zunge|thermometer)<3>(?:38[.,][3-9]|39[.,]\d|40[.,]\d)
        (?:klapper\w*)<3>zähne|zähne<2>klapper\w*|zähneklappern
        """,
        doubtful=r"""
        (?:38[.,][5-9]|39[.,]\d|40[.,]\d)<6>(?:frier\w*|heiss|kalt|schwitz\w*|bett|glieder\w*)
        """,
    ),
    *german_table(
        Symptom.HEADACHE,
        "kopf",
        sure=r"""
        (?:spannungs|druck|cluster|hunger|koffein|nacken|dauer|kater)kopf(?:schmerz\w*|weh)
        """,
    ),
    *german_table(
        Symptom.NAUSEA,
        "seekrank reisekrank karussell",
        sure=r"""
        seekrank\w*|reisekrank\w*
        """,
    ),
    *german_table(
        Symptom.SWOLLEN_HANDS,
        "händen fingern hände finger",
        sure=r"""
        (?:aufgedunsene[nr]?|aufgequollene[nr]?|geschwollene[nr]?|angeschwollene[nr]?|dicken)<1>(?:händen?|fingern?)
        """,
    ),
    *german_table(
        Symptom.SWELLING,
        "schienbein knöchel bein wade fuss daumen finger delle abdruck",
        sure=r"""
        (?:schienbein\w*|knöchel\w*|beine?n?|waden?|fuss|füsse?n?)<5>(?:daumenabdruck\w*|fingerabdruck\w*|abdruck|abdrücke|delle|dellen)
        (?:daumenabdruck\w*|fingerabdruck\w*|abdruck|delle|dellen)<4>(?:schienbein\w*|knöchel\w*|beine?n?|waden?|fuss|füsse?n?|bleibt|bleiben)
        """,
    ),
    *german_table(
        Symptom.DIZZY,
        "dus schwiemel tüdel trümmel",
        sure=r"""
        duselig\w*|dusslig im kopf|schwiemelig|trümmelig
        """,
    ),
    *german_table(
        Symptom.SLEEPLESS,
        "schäfchen schafe auge",
        sure=r"""
        (?:schäfchen|schafe)<2>(?:gezählt|zählen|gezaehlt)|kein auge<1>(?:zugemacht|zugetan|zubekommen|zugekriegt)|kein auge (?:zugemacht|zugetan|zubekommen|zugekriegt)
        """,
    ),
    *german_table(
        Symptom.STOMACH_PAIN,
        "bauch magen",
        sure=r"""
        (?:bauch|magen|oberbauch|unterbauch)(?:drücken|grimmen|ziehen|stechen|zwicken)
        """,
    ),
    *german_table(
        Symptom.DIARRHOEA,
        "wasser flitze hinten unten sprüh klo flotter flitzka",
        sure=r"""
        kommt<2>wie wasser|wie wasser<3>(?:raus|hinten|unten)|(?:hinten|unten)<2>(?:wie wasser|flüssig|nur wasser|nur flüssig)|flitze?kack\w*|flitzescheisse|sprüh(?:wurst|stuhl|schiss)|flotter heinrich
        """,
    ),
    *german_table(
        Symptom.CONSTIPATION,
        "zu klo gesessen pflaumen flohsamen raus stuhl feigen gehockt gedruck bewegt unten",
        sure=r"""
        zu wie<2>(?:bank|tresor|auster|safe|fort knox)|(?:gesessen|gehockt|gedrückt|sitzung|klo)<4>(?:für (?:nix|nichts)|umsonst|(?:nix|nichts)<2>(?:raus|passiert|gekommen))
        (?:pflaumen\w*|flohsamen\w*|feigen\w*)<4>(?:nix|nichts|keine wirkung|hilft nicht|helfen nicht|bringt nichts|ohne wirkung|wirkungslos)
        seit<3>(?:tagen|montag|dienstag|mittwoch|donnerstag|freitag|samstag|sonntag)<3>(?:nix|nichts)<2>(?:raus|rausgekommen|rauskommen|unten|bewegt)
        """,
    ),
    *german_table(
        Symptom.EXHAUSTION,
        "akku müde haltestelle",
        sure=r"""
        akku<,6>(?:meiner nicht|meiner|nicht (?:der|das) (?:vom )?handy|ich mein\w* mich)|mein (?:eigener|innerer|persönlicher)<1>akku
        so müde<2>(?:dass|ich)<4>(?:verpasst|eingeschlafen|vergessen|weggenickt|kaum)
        """,
    ),
)
