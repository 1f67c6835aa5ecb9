"""Complaints and drugs in German messages. Finding too much costs a question; missing one costs more.

Read beside the English, whatever language somebody has set: people write as they think.
"""

# ruff: noqa: E501 - a pattern stays on one line
from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass

from .names import Symptom

_GAP = r"(?:[\w-]+ ){0,4}"  # written as "..." in the tables below
_STRONG = r"(?:(?:sehr |ganz |so )?(?:stark|heftig|schlimm|extrem|unerträglich|massiv|höllisch|krass|furchtbar|brutal|irre)\w*)"
_BAD_HEAD = r"(?:kopfschmerz\w*|kopfweh|kopfdruck)"

_SURE: dict[Symptom, str] = {
    Symptom.CHEST_PAIN: r"""
        brust(?:korb)?schmerz\w*|brust(?:enge|druck|stechen)|herz(?:schmerz\w*|stechen|infarkt|enge|druck)|angina pectoris
        (?:schmerz\w*|druck|stechen|stiche|enge\w*|brennen|ziehen|krampf) ...(?:in|auf|im|hinter|an) (?:der |dem |meiner |meinem )?(?:linken )?(?:brust\w*|herz\w*)
        (?:brust(?:korb|bein)?|herz) ...(?:schmerzt|tut (?:\w+ )?weh|sticht|drückt|ist (?:\w+ )?eng|zieht sich zusammen|schnürt)
        linke[rn]? arm ...(?:taub|schmerzt|weh|kribbelt)
    """,
    Symptom.SEIZURE: r"""
        krampfanf\w*|epilep\w*|(?:hatte|hab|habe|bekam|gehabt) ...(?:einen )?anfall|anfall ...(?:gehabt|bekommen)
        am ganzen körper (?:gekrampft|gezuckt|gezittert)|unkontrolliert(?:es|e)? (?:ge)?zuck\w*
    """,
    Symptom.FAINTING: r"""
        ohnm(?:ä|a)cht\w*|bewußtlos\w*|bewußtsein ...verl\w+|synkope|kreislauf(?:kollaps|zusammenbruch|versagen)
        umgekippt|umgefallen|zusammen(?:gebrochen|geklappt|gesackt)|kollabiert|weg(?:getreten|gesackt|gekippt)|aus den latschen gekippt
        schwarz vor (?:den |meinen )?augen|(?:kippe|klappe|sacke|breche) ...(?:um|zusammen|weg)
    """,
    Symptom.BREATHLESSNESS: r"""
        atemnot|luftnot|kurzatmig\w*|schnappatmung|erstick\w*|atembeschwerden|atemprobleme
        (?:bekomm|bekam|krieg|kriegt|kriege|bekomme|hab|habe|hatte) ...(?:keine|kaum|schlecht|nicht genug|zu wenig|schwer) (?:\w+ )?luft
        (?:keine|kaum|zu wenig) luft|luft ...(?:bleibt|blieb) ...weg|luft weg
        (?:schwer|mühsam|schlecht|kaum|nicht) ...(?:zu )?atmen|atmen ...(?:schwer|weh|schmerzt|mühsam|nicht mehr)|ring\w* ...(?:nach|um) luft|blaue lippen|lippen ...blau
    """,
    Symptom.PALPITATIONS: r"""
        herz(?:rasen|stolpern|klopfen|flattern|rhythmus\w*|aussetzer|jagen)|extrasystole\w*|vorhofflimmern|tachykardie
        (?:herz|puls|herzschlag) ...(?:rast|raste|stolpert\w*|klopft|hämmert|pocht|flattert|springt|überschlägt|setzt ...aus|spinnt|unregelmäßig\w*|viel zu (?:hoch|schnell)|wie verrückt|wie wild|bis zum hals)
        (?:rasende[rs]?|unregelmäßige[rs]?|stolpernde[rs]?) (?:herz|puls|herzschlag)
    """,
    Symptom.LIMB_WEAKNESS: r"""
        muskelschwäche|lähmung\w*|gelähmt
        (?:beine?|arme?|glieder|hände?|finger|muskeln|knie) ...(?:ganz |so |sehr |total |völlig )?(?:schwach|kraftlos|wie blei|bleischwer|gelähmt|taub|versag\w+|knick\w+|gaben nach|sack\w+|geben nach|nicht mehr (?:spüren|bewegen|heben)|keine kraft)
        (?:schwache|kraftlose|bleischwere|taube) (?:\w+ )?(?:beine|arme|glieder|hände|muskeln)|schwere glieder
        (?:keine|kaum|null) kraft ...(?:in|mehr in) ...(?:beinen?|armen?|gliedern|händen)
        (?:kann|konnte) ...(?:beine?|arme?|finger|hand) ...(?:nicht|kaum) ...(?:bewegen|heben)
    """,
    Symptom.CONFUSION: r"""
        verwirr\w*|desorientiert|orientierungslos|halluzin\w*|delir\w*|(?:rede|redet|redete) (?:\w+ )?wirr|lalle\w*|gelallt
        weiß nicht (?:mehr )?(?:wo ich bin|welcher tag)|(?:kann|konnte) ...nicht (?:mehr )?klar (?:denken|sprechen)
    """,
    Symptom.REPEATED_VOMITING: r"""
        (?:ständig|mehrmals|mehrfach|dauernd|immer wieder|die ganze (?:nacht|zeit)|zwei ?mal|drei ?mal|vier ?mal|fünf ?mal|[2-9] ?(?:x|mal)|andauernd) ...(?:erbrochen|erbreche\w*|übergeben|übergebe|gekotzt|kotze\w*|gespuckt)
        (?:erbreche|übergebe|kotze) ...(?:ständig|mehrmals|dauernd|immer wieder|seit stunden)|(?:behalte|behielt|kann) nichts ...(?:drin|bei mir|unten)
    """,
    Symptom.SEVERE_HEADACHE: r"""
        STARK ...KOPF|migräne\w*|(?:hammer|mörder|höllen)kopfschmerz\w*|KOPF ...(?:unerträglich|kaum auszuhalten|nicht auszuhalten|extrem|heftig|zum verrücktwerden)
        (?:kopf|schädel) ...(?:platzt|explodiert|zerspringt)|vernichtungskopfschmerz\w*
    """,
    Symptom.SELF_HARM: r"""
        umbring\w*|selbstmord\w*|suizid\w*|selbst ?verletz\w*|mir ...(?:etwas|was) anzutun|(?:tue|tu) mir ...(?:etwas|was) an|mir das leben nehmen|mein leben beenden
        (?:nicht|nimmer) mehr leben|(?:will|möchte) ...(?:sterben|tot sein)|lieber tot|wäre ...(?:lieber|besser) tot|mag nicht mehr leben
    """,
    Symptom.SEVERE_GUT: r"STARK ...(?:bauch|magen)(?:schmerz\w*|krämpfe|weh)|blut(?:iger)? (?:im )?stuhl",
    Symptom.HEADACHE: r"KOPF|(?:kopf|schädel) ...(?:brummt|tut (?:\w+ )?weh|dröhnt|pocht)",
    Symptom.NAUSEA: r"übelkeit|speiübel|brechreiz|(?:mir|mirs) (?:ist |war |wird |wurde )?...(?:übel|schlecht)|flau im magen",
    Symptom.VOMITING: r"erbrochen|erbrechen|übergeben müssen|musste mich übergeben|habe? mich übergeben|gekotzt",
    Symptom.SWOLLEN_HANDS: r"(?:hände|hand|finger) ...(?:geschwollen|angeschwollen|aufgedunsen|dick)|(?:geschwollene|dicke|aufgequollene) (?:hände|finger)|ring ...passt nicht mehr",
    Symptom.SWELLING: r"(?:füße|knöchel|beine|unterschenkel|gesicht|augen) ...(?:geschwollen|angeschwollen|aufgedunsen)|geschwollene (?:füße|knöchel|beine|augen)|ödeme?",
    Symptom.DIZZY: r"schwindel\w*|schwindl?ig\w*|schwindelig\w*|schummrig|benommen|alles dreht sich|dreht sich alles|kreislauf ...(?:im keller|schlecht|spinnt|am ende|probleme)|kreislaufproblem\w*",
    Symptom.BLURRED_VISION: r"(?:sehe|sicht|sehen|augen) ...(?:verschwommen|unscharf|doppelt)|verschwommen\w* (?:sehen|sicht|gesehen)|doppelbilder|flimmern vor (?:den )?augen",
    Symptom.SLEEPLESS: r"schlaflos\w*|kein auge zu|(?:kaum|gar nicht|fast nicht|überhaupt nicht|nicht|null|keine minute|so gut wie nicht) geschlafen|die ganze nacht wach",
    Symptom.CRAMPS: r"(?:muskel|waden|bein|fuß)?kr(?:ämpfe?|ampf)(?!anf)|krampft|(?:waden|bein)kr\w*",
    Symptom.TINGLING: r"kribbel\w*|ameisenlaufen|taubheitsgefühl\w*|(?:finger|lippen|hände|füße) ...taub",
    Symptom.SHAKY: r"zittrig\w*|zitter[en]\w*|wackelig auf den beinen",
    Symptom.STOMACH_PAIN: r"(?:bauch|magen)(?:schmerz\w*|weh|krämpfe|krampf)|(?:bauch|magen) ...(?:tut (?:\w+ )?weh|schmerzt|krampft)",
    Symptom.DIARRHOEA: r"durchfall\w*|dünnpfiff|durchmarsch|flitzekacke",
    Symptom.CONSTIPATION: r"verstopf\w*|kein\w* stuhlgang",
    Symptom.BLOATING: r"bläh\w*|aufgebläht|völlegefühl",
    Symptom.URINE_DARK: r"(?:dunkle[rn]?|brauner|roter|colafarben\w*) (?:urin|pipi|harn)|(?:urin|pipi|harn) ...(?:dunkel|braun|rot|wie cola)",
    Symptom.NO_URINE: r"(?:kann|konnte) ...nicht ...(?:pinkeln|pissen|urinieren|wasser lassen)|kein (?:urin|pipi)|seit stunden nicht ...(?:gepinkelt|auf toilette|auf der toilette)",
    Symptom.FEVER: r"fieber|fiebrig|schüttelfrost",
    Symptom.EXHAUSTION: r"(?:völlig|total|komplett|absolut|ganz) (?:fertig|erschöpft|kaputt|am ende)|am ende meiner kräfte|entkräftet",
}  # fmt: skip
_DOUBTFUL: dict[Symptom, str] = {
    Symptom.CHEST_PAIN: r"(?:brust|herz) ...(?:komisch|unangenehm|brennt|seltsam|eng)|sodbrennen",
    Symptom.FAINTING: r"umgefallen|kurz weg|weggetreten",
    Symptom.BREATHLESSNESS: r"außer atem|aus der puste|luft ...(?:knapp|dünn)",
    Symptom.LIMB_WEAKNESS: r"kraftlos\w*|weiche knie|pudding in den (?:beinen|knien)|(?:beine|arme) ...schwer",
    Symptom.CONFUSION: r"(?:bin|war) (?:\w+ )?durcheinander(?! gekommen)|neben der spur|neben mir",
    Symptom.SELF_HARM: r"ritz(?:en|e|te)|kann nicht mehr|hat (?:alles )?keinen sinn mehr",
}

_DRUGS = r"""
    diuretik\w+|entwässerungs\w+|entwässerer|entwässernde\w*|wassertablette\w*|abführmittel\w*|abführtee|einlauf|einläufe
    kalium(?:tablette\w*|präparat\w*|chlorid|citrat|kapsel\w*|pulver|infusion\w*)|kalium (?:nehmen|einnehmen|schlucken|spritzen)|(?:nehme|nahm|genommen|wie viel|wieviel) (?:\w+ ){0,2}kalium
    insulinspritze\w*|furosemid\w*|spironolacton\w*|torasemid\w*|hydrochlorothiazid\w*|clenbuterol\w*|ephedrin|wachstumshormon\w*|schilddrüsenhormon\w*|schilddrüsentablette\w*|thyroxin\w*
    steroide?n?|anabolika|testosteron(?:spritze\w*|enantat)?|trenbolon|stanozolol|cortison\w*|kortison\w*|fatburner\w*|betablocker\w*|blutdruck(?:mittel|tablette\w*|senker)|schmerzmittel\w*|schlafmittel\w*|schlaftablette\w*
"""

_NOT = r"(?:kein|keine|keinen|keinem|keiner|keinerlei|nicht|nie|niemals|ohne|weder|null)"
_DENIED_BEFORE = re.compile(rf"\b{_NOT} (?:[\w-]+ ){{0,3}}$")
_DENIED_AFTER = re.compile(
    rf"^ (?:(?:habe?|hatte|bin|war|ist|sind|gibt es|gab es) (?:\w+ )?)?{_NOT}\b(?! (?:besser|weg|auszuhalten|mehr))|"
    r"^ (?:ist|sind|war|waren) (?:\w+ )?(?:weg|vorbei|verschwunden)\b"
)
_LIST_OF_DENIED = re.compile(rf"\b(?:{_NOT}|und|oder|noch) (?:[\w-]+ )?$")
_NOT_A_DENIAL = re.compile(
    r"\b(?:nicht nur|nicht mehr normal|nicht besser|nicht weg|kein scherz|keine ahnung)\b"
)
_SUPPOSED = re.compile(
    r"\b(?:falls|angst vor|angst dass|sorge|letztes jahr|früher|damals|könnte|würde|vielleicht|irgendwie ein bisschen)\b"
)
_CLAUSE = re.compile(
    r"[.;:!?\n]|\baber\b|\bdafür\b|\bsondern\b|, (?=ich|bin|habe?|mir|mein|dann|nur|und)"
)
_EVERYDAY = re.compile(
    r"muskelkater\w*|herzlich\w*|(?:beine|arme|brust) (?:trainiert|gemacht)|(?:bein|arm|brust)training|"
    r"insulin(?:sensitiv\w*|resisten\w*|spiegel|ausschüttung)|kein fleisch|brusttag|"
    r"(?:beine|arme) (?:\w+ ){0,3}(?:vom|nach dem|durchs) (?:\w*training|cardio|posing|laufen|gehen) \w+"
)
_PLAIN = str.maketrans("äöüßéè’", "aousee'")


@dataclass(frozen=True, slots=True)
class GermanFind:
    """A complaint with its words as they stand in the text; or, with no symptom, a drug."""

    symptom: Symptom | None
    words: str
    sure: bool
    denied: bool


def german_finds(text: str) -> Iterator[GermanFind]:
    """What a German message tells of, clause by clause; in time linear in the text."""
    source = re.sub(r"[ \t]+", " ", text)
    line = source.lower().translate(_PLAIN)
    if len(line) != len(source):
        source = line
    start = 0
    for end in [*(match.start() for match in _CLAUSE.finditer(line)), len(line)]:
        yield from _in_clause(line[start:end], source[start:end])
        start = end


def _in_clause(clause: str, source: str) -> Iterator[GermanFind]:
    spared = _EVERYDAY.sub(lambda match: "_" * len(match[0]), clause)
    supposed = _SUPPOSED.search(spared) is not None
    denied_before = False
    taken: list[tuple[int, int]] = []
    finds = sorted(
        (match.start(), -match.end(), symptom, sure)
        for symptom, sure, pattern in _PATTERNS
        for match in pattern.finditer(spared)
    )
    for start, minus_end, symptom, sure in finds:
        end = -minus_end
        if any(start < other_end and other_start < end for other_start, other_end in taken):
            continue
        taken.append((start, end))
        denied = _denied(spared, start, end, listed=denied_before)
        denied_before = denied
        yield GermanFind(symptom, source[start:end], sure and not supposed, denied)
    for match in _DRUG_PATTERN.finditer(spared):
        denied = _denied(spared, *match.span(), listed=False)
        yield GermanFind(None, source[match.start() : match.end()], True, denied)


def _denied(clause: str, start: int, end: int, *, listed: bool) -> bool:
    before, after = clause[:start], clause[end:]
    if _NOT_A_DENIAL.search(clause):
        return False
    if _DENIED_BEFORE.search(before) or _DENIED_AFTER.search(after):
        return True
    return (
        listed
        and _LIST_OF_DENIED.search(before.replace(",", " und").replace("  ", " ")) is not None
    )


def _compiled(lines: str) -> re.Pattern[str]:
    both = "|".join(line.strip() for line in lines.strip().splitlines() if line.strip())
    both = both.replace("STARK", _STRONG).replace("KOPF", _BAD_HEAD).replace("...", _GAP)
    # Umlauts may be written with an e, or without their dots; a sharp s with one s or two.
    for letter, written in (("ä", "ae?"), ("ö", "oe?"), ("ü", "ue?"), ("ß", "ss?")):
        both = both.replace(letter, written)
    return re.compile(rf"\b(?:{both})(?!\w)")


_PATTERNS = tuple(
    (symptom, sure, _compiled(lines))
    for sure, table in ((True, _SURE), (False, _DOUBTFUL))
    for symptom, lines in table.items()
)
_DRUG_PATTERN = _compiled(_DRUGS)
