"""Questions about the day's targets, put in whatever words: "protein target?? cant find it".

Such a question names a target and asks, and every word of it is of that business; one word more, and it
is for a person. Which day is meant tells the command that serves it.
"""

from __future__ import annotations

import re

from engine.written.late import Late
from engine.written.word_set import word_set

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
_ASKS = word_set("""
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
_EVERY = _TARGETS | _ASKS | _LATER | _BEGINS | _BESIDE
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
    asks = "?" in text or plain[0] in _BEGINS or not (_ASKS | _RECALLS).isdisjoint(plain)
    if _ASKS.isdisjoint(plain) and not _JUDGEMENT.isdisjoint(plain):
        return None
    named = _TARGETS if not _ASKS.isdisjoint(plain) else _TARGETS - _VAGUE
    if not asks or named.isdisjoint(plain) or _OF_ONESELF.search(text):
        return None
    return "today" if _LATER.isdisjoint(plain) else "week"


def _is_named_alone(words: list[str]) -> bool:
    """Whether figures are named, and no more said of them than whose they are and of which day."""
    rest = set(words) - _WHOSE
    figures, days = rest & (_ALONE | _OF_A_DAY), rest & _DAYS
    return bool(figures) and rest == figures | days and bool(days or figures & _ALONE)
