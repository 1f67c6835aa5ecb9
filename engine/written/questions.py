"""Questions: whether a text asks something; about the day's targets, an amount to drink, or the bot itself."""

from __future__ import annotations

import re

from engine.written.late import Late, word_set
from engine.written.units.amounts import VOLUME_WORDS
from engine.written.units.reading import NUMBER, in_one_line

_HEY = (
    r"(?:(?:hey|hi|hello|hallo|und|and|but|aber|ok|okay|so|also|sag mal|quick question|kurze frage)"
    r"[,:]? )*"
)
_ASKS = Late(
    rf"{_HEY}(?:"
    # English: an auxiliary before its subject, or a question word
    r"(?:can|could|may|shall|should|do|does|did|is|are|am|was|were|will|would|must|have|has) "
    r"(?:i|you|we|it|this|that|there|they|he|she|my|the|your)\b"
    r"|(?:what|when|where|which|who|how|why|what's|how's)\b"
    # German: a verb before its subject, or a question word
    r"|(?:kann|könnte|darf|soll|sollte|muss|bin|ist|sind|hab|habe|hast|bist|kannst|gilt|geht|geht's|"
    r"gehts|wird|werde|war|gibt) "
    r"(?:ich|du|man|es|das|der|die|wir|er|sie|mein\w*|dein\w*|was|auch|normal)\b"
    r"|(?:was|wann|wo|wie|wieso|warum|welche\w*|wer|wieviel|wie viel)\b"
    r")"
)


def asks_something(text: str) -> bool:
    """Whether it is put as a question: with its mark, or begun as one."""
    plain = in_one_line(text)
    return plain.rstrip(" !.").endswith("?") or _ASKS.match(plain) is not None


# ruff: noqa: E501 - a pattern stays on one line


_MUCH = (
    r"(?:(?:not )?(?:a lot|much|too much|too little|little|enough|plenty|okay|ok|fine|normal|bad|good|right|safe|"
    r"allowed|the limit)|(?:nicht )?(?:zu |so |sehr )?(?:viel|wenig)|genug|ok|okay|normal|schlimm|gut|richtig|"
    r"in ordnung|erlaubt|das limit|die grenze)"
)
_BESIDE_AN_AMOUNT = r"(?: (?:water|of water|wasser|for me|for today|for a day|für heute|today|a day|heute|am tag|pro tag|täglich|für mich|really|eigentlich|denn|then|so|already|schon))*"
_ASKS_AN_AMOUNT = Late(
    rf"(?:(?:hi|hey|hallo|coach|so|und|and|sag mal|quick question|kurze frage)[ ,:]+)*"
    rf"(?:(?:is|are|was|would|isn't|aren't|ist|sind|wären|wäre|waren) {NUMBER} ?{VOLUME_WORDS}{_BESIDE_AN_AMOUNT}"
    rf"(?: be| being)? {_MUCH}{_BESIDE_AN_AMOUNT}"
    rf"|(?:do|does|will|would) {NUMBER} ?{VOLUME_WORDS}{_BESIDE_AN_AMOUNT} (?:do|suffice|be enough){_BESIDE_AN_AMOUNT}"
    rf"|(?:reichen|reicht|genügen) {NUMBER} ?{VOLUME_WORDS}{_BESIDE_AN_AMOUNT})",
    re.IGNORECASE,
)


def asks_about_amount(text: str) -> bool:
    """Whether the whole text asks if so much is a lot, enough or right to drink."""
    plain = " ".join(text.replace("\u2019", "'").split()).strip(" .!?…")
    return "?" in text and _ASKS_AN_AMOUNT.fullmatch(plain) is not None


_TARGETS = word_set("""
    gram grams gramm
    carb carbs carbohydrate carbohydrates protein proteins fat fats water step steps cardio sodium
    salt fibre fiber kcal cals calories macros macro target targets numbers figures plan goal
    goals kh kohlenhydrate eiweiß eiweiss fett wasser schritte salz natrium ballaststoffe
    kalorien kalorienvorgabe makros ziel ziele vorgabe vorgaben werte zahlen eiweißziel
    eiweissziel proteinziel kohlenhydratziel fettziel schrittziel wassermenge kalorienziel
""")
#: "Am I on plan?" asks a person.
_VAGUE = word_set("plan goal goals ziel ziele numbers figures zahlen werte gram grams gramm")
_ASKS_FOR_TARGETS = word_set("""
    how what whats what's which remind tell show give send pls please bitte wie wieviel wieviele
    wievielt was welche welcher welches nennen sag sagen zeig zeige zeigen schick schicken
""")
_LATER = word_set("""
    tomorrow tmrw tomorrow's tomorrows thursday friday saturday sunday monday tuesday wednesday thu fri
    sat sun mon tue wed load loading depletion refeed rest morgen übermorgen montag dienstag
    mittwoch donnerstag freitag samstag sonntag ladetag ladetage ladetagen entladetag refeedtag
    ruhetag
""")
#: "Kalorien warens 1650 oder 1750": what somebody says who wants to be reminded.
_RECALLS = word_set("warens sinds")
#: A question begins with one of these, a statement only has it.
_BEGINS = word_set("""
    is are do does am ist sind sinds hab habe gilt gelten
""")
_BESIDE = word_set("""
    is are soll sollen solln much many was were do does should need supposed to have has got get
    hit eat drink i im i'm am my me the of for on in at it its it's this that still again can
    could you u ur pls please or none and a an one min mins minutes grams gram g litres liters l
    ml day today tonight now where wise quick question hey hi hello coach sorry remember thx
    thanks today's todays
    viel viele sind ist hab habe haben ich da stehen steht sein werden muss müssen darf
    heut heute jetzt grad gerade nochmal noch mal einmal mir bitte können könnten könntest
    kannst sie du auf bin mein meine meinen mei der die das den dem es laut für fürn gilt gelten
    nun eigentlich denn so und oder kurz hallo moin tag lang long liter gramm minuten frage
    danke left remaining over fehlen fehlt bleiben bleibt übrig esse trinke essen trinken shall
    must to morning kann von bis zum zu meinem mein number low high krieg kriege bekomm bekomme hoch
    war waren warens
""")
#: Named with nothing beside them but whose they are, these are asked for: "my macros please".
_ALONE = word_set("target targets macros makros vorgabe vorgaben ziele werte zahlen")
#: These with the day they are of: "tomorrow's carbs".
_OF_A_DAY = word_set("carb carbs kh kohlenhydrate plan numbers figures")
_WHOSE = word_set("my the meine die das for für von please bitte s this")
_DAYS = word_set("""
    today today's todays now morning heute heut heutige jetzt tomorrow tomorrow's tomorrows morgen
""")
_EVERY = _TARGETS | _ASKS_FOR_TARGETS | _LATER | _BEGINS | _BESIDE
_MOST_WORDS = 14
_FIGURE = Late(r"\d+(?:k|g|kcal|ml|l|mg)?")
_WORD = Late(r"[^\W_]+(?:'[^\W_]+)?")
#: "Should I do cardio today?" asks for a judgement, "how much cardio should I do" for the figure.
_JUDGEMENT = word_set("should soll sollen solln sollte muss müssen can could kann darf")
#: Why it is asked, which is no complaint.
_NOT_FOUND = Late(
    r"\b(?:i )?(?:can'?t|cannot|could ?n'?t) find (?:it|them|mine)\b"
    r"|\b(?:i )?(?:forgot|lost) (?:it|them|mine)\b"
    r"|\b(?:ich )?finde? (?:ich )?(?:sie |es |ihn |das )?(?:grad |gerade )?nicht\b"
    r"|\b(?:hab |habe )?(?:es |sie )?vergessen\b",
    re.IGNORECASE,
)
#: Of oneself and not of the plan, or an outcry.
_OF_ONESELF = Late(
    r"\b(?:how|wie|so|too|zu) (?:fat|fett)\b|^what a\b"
    r"|\b(?:am i|i'?m|im|bin ich|ich bin)\b.{0,12}\b(?:fat|fett)\b",
    re.IGNORECASE,
)


def about_targets(text: str) -> str | None:
    """The command that shows what is asked for: today's targets, or the week's; None for all else."""
    rest = _NOT_FOUND.sub(" ", text.replace("\u2019", "'"))
    words = [found.group().lower() for found in _WORD.finditer(rest)]
    plain = [word for word in words if not _FIGURE.fullmatch(word)]
    if not plain or len(plain) > _MOST_WORDS:
        return None
    if "?" not in text and _is_named_alone(plain):
        return "today" if _LATER.isdisjoint(plain) else "week"
    if not set(plain) <= _EVERY:
        return None
    asks = (
        "?" in text or plain[0] in _BEGINS or not (_ASKS_FOR_TARGETS | _RECALLS).isdisjoint(plain)
    )
    if _ASKS_FOR_TARGETS.isdisjoint(plain) and not _JUDGEMENT.isdisjoint(plain):
        return None
    named = _TARGETS if not _ASKS_FOR_TARGETS.isdisjoint(plain) else _TARGETS - _VAGUE
    if not asks or named.isdisjoint(plain) or _OF_ONESELF.search(text):
        return None
    return "today" if _LATER.isdisjoint(plain) else "week"


def _is_named_alone(words: list[str]) -> bool:
    """Whether figures are named, and no more said of them than whose they are and of which day."""
    rest = set(words) - _WHOSE
    figures, days = rest & (_ALONE | _OF_A_DAY), rest & _DAYS
    return bool(figures) and rest == figures | days and bool(days or figures & _ALONE)


_HUMAN = Late(
    r"(?:.*[,.!?] )?(?:(?:wait|sorry|hey|hi|und|and|sag mal|eigentlich)[,:]? )*"
    r"(?:(?:are|r) (?:you|u) (?:actually |even |really )?(?:a |an )?"
    r"(?:real(?: person| human)?|human(?: being)?|person|bot|robot|machine|computer|ai|program)"
    r"(?: or (?:a |an )?(?:bot|human|person|machine|real person))?"
    r"|(?:am i|is this|do i) (?:talking|writing|speaking|texting|talk|write)?(?: to)? ?"
    r"(?:a |an )?(?:bot|robot|machine|human|person|real person|ai)"
    r"|bist du (?:eigentlich |überhaupt |echt |wirklich )*(?:eine? |ne? )?"
    r"(?:echter |echte )?(?:mensch|bot|roboter|maschine|computer|ki|programm|person|echt)"
    r"(?: oder (?:ein |eine )?(?:bot|mensch|maschine|roboter|computer|ki))?"
    r"|(?:schreib|schreibe|rede|spreche) ich (?:hier |gerade |grad )*mit (?:einem|einer|nem|ner) "
    r"(?:echten |richtigen )?(?:mensch\w*|bot|roboter|maschine|ki))"
    r"[\s?!.]*"
)
_TELL_NOBODY = Late(
    r"\b(?:(?:do not|don't|dont|pls don't|not to|never|without) (?:you )?"
    r"(?:tell|telling|inform|say (?:this|that|it|anything) to|let) (?!me\b|you\b|us\b|lies\b)\w+"
    r"(?! me\b)"
    r"|(?:keep (?:this|that|it) (?:between us|a secret|secret|to yourself|quiet|private)"
    r"|between you and me|between us please)"
    r"|(?:must not|mustn't|can't|cannot|shouldn't) (?:know|find out|see) (?:this|that|it|about)"
    r"|(?:sag|sags|sag's|sagt|erzähl|erzähle|erzähls|verrat|verrate)"
    r"(?: (?!mir\b|uns\b|dir\b)\w+){0,3}? (?:nicht|nichts|niemandem|keinem)\b(?! (?:mir|uns)\b)"
    r"|bitte (?:nicht|nichts) (?:an )?\w+ (?:sagen|weitersagen|weitergeben|weiterleiten|erzählen)"
    r"|(?:nicht|nichts) (?:weitersagen|weitergeben|weiterleiten|weitererzählen)"
    r"|(?:bleibt|bleib) (?:das )?(?:bitte )?(?:unter uns|zwischen uns)"
    r"|(?:soll|darf|muss) (?:das |es |davon )?(?:nicht|nichts) (?:wissen|erfahren|mitkriegen))"
)


def asks_whether_human(text: str) -> bool:
    """Whether it asks if a person or a machine answers, and nothing else."""
    plain = in_one_line(text)
    return len(plain.split()) <= 14 and _HUMAN.fullmatch(plain) is not None


def asks_to_tell_nobody(text: str) -> bool:
    """Whether it asks that somebody is not told of what was written."""
    return _TELL_NOBODY.search(in_one_line(text)) is not None
