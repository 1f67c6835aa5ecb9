"""How people tell a complaint in German in passing, in short, or as they speak at home."""

# ruff: noqa: E501 - a pattern stays on one line
from __future__ import annotations

from functools import partial

from engine.symptoms.german.denying import NO_AT_HOME, NO_MORE, NOT
from engine.symptoms.german.spelling import folded
from engine.symptoms.german.warnings import GROUPS
from engine.symptoms.names import Symptom
from engine.symptoms.patterns import Phrase, table

_table = partial(table, groups=GROUPS, fold=folded)
_FELL = r"(?:brochen|brochn|ghaut|gehaut|ghauen|gsackt|gesackt|gebrochen|gebrocha|brocha|klappt|geklappt|gklappt|gfallen|gfalln|gefallen|gsunken|gesunken|gekracht|kracht)"
_FLOOR = r"(?:boden|bodn|boda|fliesen|treppenhaus|stiegenhaus|flur|gang|parkplatz|bad|küche|treppe|dusche|matte|asphalt|gehweg|straße|teppich)"
_PILLS = r"(?:schlaf|schmerz|beruhigungs|herz|kopfschmerz|entwässerungs|blutdruck)?(?:tabletten|pillen|tropfen|medikamente)"

GERMAN_DIALECT: tuple[Phrase, ...] = (
    *_table(
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
    *_table(
        Symptom.BREATHLESSNESS,
        "luft schnauf",
        sure=rf"""
        {NO_AT_HOME} luft<2>(?:mehr|kriag|griag|krieg|griagt|kriagt|gekriegt|überkomme|bekomm\w*|kumm)|(?:kriag|griag|krieg|kriege|bekomm|bekomme|kriagt)<2>{NO_AT_HOME} luft
        (?:hob|hab|han|ho)<1>{NO_AT_HOME} luft
        """,
    ),
    *_table(
        Symptom.LIMB_WEAKNESS,
        "bein bei arm hand fuss haxn haxe",
        sure=rf"""
        (?:bein|arm|hand|fuß|haxn) (?:geht|funktioniert|gehorcht|bewegt sich|macht) (?:{NO_MORE}|{NOT})(?= ?$| ?,| (?:will|und|wenn|ich|mehr))
        """,
    ),
    *_table(
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
    *_table(
        Symptom.STROKE_SIGNS,
        "lall nuschel auge augn",
        sure=r"""
        (?:lall|lalle|lallte|lallen|nuschel|nuschle)<2>(?:wie|nur noch|obwohl|als wär|als ob)<3>(?:besoffen\w*|betrunken\w*|zu|dicht|getrunken)?
        (?:linke[snm]?|rechte[snm]?|einem|einen|ein) (?:auge|augn)<5>(?:blind|vorhang|nichts (?:mehr )?gesehen|nix mehr gesehen|nichts mehr)
        """,
    ),
    *_table(
        Symptom.PALPITATIONS,
        "puls herz hf herzfrequenz schläge schlage",
        sure=r"""
        (?:ruhepuls|puls|herzfrequenz|hf|herz)<4>(?:1[3-9]\d|2[0-2]\d)<3>(?:im liegen|im bett|auf der couch|aufm sofa|auf dem sofa|im sitzen|in ruhe|beim liegen|im schlaf)
        (?:im liegen|im bett|auf der couch|in ruhe)<3>(?:puls|herzfrequenz|hf)<3>(?:1[3-9]\d|2[0-2]\d)
        """,
    ),
    *_table(
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
    *_table(
        Symptom.FAINTING,
        "bewusst",
        sure=r"""
        bewusst(?:sein|si|sei|sin)<3>(?:verlo\w+|verlieren|weg gsi)
        """,
    ),
    *_table(
        Symptom.SWELLING,
        "gschwoll",
        doubtful=r"""
        (?:knia?|knie|knöchl|knöchel|fuass|fiass|fuß|füße|haxn|hax|händ|hand|finga|finger|gsicht|gsichd|augn|augen|wadl|wadn)<5>(?:an)?gschwoll\w*
        """,
    ),
    *_table(
        Symptom.PURGING,
        "abführ abfuhr",
        sure=r"""
        (?:nehm|nehme|nimm|trink|trinke|schluck|schlucke)(?! ich)<4>abführ(?:tee|tablett|mittel|tropfen|zeug)\w*
        abführtee\w*(?! (?:hilft|gut|erlaubt))<5>(?:abend|morgen|täglich|getrunken|nacht|keinem|niemand\w*|heimlich|wieder|tag)
        """,
    ),
    *_table(
        Symptom.DIARRHOEA,
        "klo häusl hausl wc toilette schüssel schussel",
        sure=r"""
        (?:vier|fünf|sechs|sieben|acht|neun|zehn|fünfzehn|zwanzig|[4-9]|1\d|2\d) ?(?:mal|moi|mol|x)<3>(?:am|aufm|auf dem|auf'm|aufs|aufn) (?:klo|häusl|wc|häuserl|topf|toilette)
        (?:viermal|fünfmal|sechsmal|siebenmal|achtmal|zehnmal|sechsmoi|fünfmoi|siebnmoi|zehnmoi)<3>(?:klo|häusl|wc|häuserl|toilette)
        (?:klo|toilette|wc|häusl|schüssel)<3>(?:mein|meine|zum) (?:büro|zuhause|wohnzimmer|homeoffice|zweitwohnsitz|bester freund)
        """,
    ),
    *_table(
        Symptom.DRYING_OUT,
        "trocknen wasser flasche dry",
        sure=r"""
        ab (?:jetzt|jetz|heute|sofort|mittag) (?:trocknen|trocken legen|dry|trockne ich|austrocknen|kein wasser mehr|kein tropfen mehr)
        (?:flaschen?|wasser) (?:weggestellt|weggesperrt|weggeschlossen|eingeschlossen)
        """,
    ),
    *_table(
        Symptom.FALL,
        "gerutscht stürzt sturzt hingefallen hingeflogen gestolpert",
        sure=r"""
        (?:abgerutscht|ausgerutscht|gestürzt|hingefallen|hingeflogen|gestolpert|runtergefallen)<4>(?:knie|beine|schwach|weich|wackelig|wacklig|schwindlig|schwindelig)
        """,
    ),
    *_table(
        Symptom.EXHAUSTION,
        "blei",
        sure=r"""
        (?:beine?|arme?|körper|füße)<2>(?:wie|aus|schwer wie) blei|bleierne? (?:müdigkeit|beine|arme)
        """,
    ),
    *_table(
        Symptom.LOW_MOOD,
        "wurscht wurst egal gleichgültig",
        sure=r"""
        (?:alles|is ma alles|mir ist alles|mir is alles)<2>(?:wurscht|wurst|scheißegal|völlig egal|total egal|egal geworden|gleichgültig)<2>(?:auch|sogar|selbst)<1>(?:der|die|das) (?:wettkampf|show|bühne|diät|training)
        (?:wettkampf|show|bühne|training|alles) (?:ist |is )?mir (?:nur noch |inzwischen |gerade |grad )?(?:scheißegal|völlig egal|total egal|komplett egal)
        """,
    ),
)
