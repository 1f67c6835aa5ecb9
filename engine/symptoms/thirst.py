"""Whether somebody says no more than that they are thirsty, or asks whether they may drink.

It is no complaint by itself, and whoever asks may always drink. With more beside it ("but I'm not
allowed", a headache) it is none of these, and is heard as anything else.
"""

# ruff: noqa: E501 - a pattern stays on one line
from __future__ import annotations

import re

from engine.written.late import Late

_NOW = r"(?: (?:right )?now| yet| today| already| again| tonight| please| here| though| before bed| this morning| in between)*"
_SOME = r"(?: (?:something|anything|some|any|a bit(?: of)?|a little|a few sips(?: of)?|a sip(?: of)?|a glass(?: of)?|more|a drink))*"
_VERY = r"(?:(?:so|really|very|super|pretty|quite|soo+|bit|a bit|a little|still|always|constantly|crazy|incredibly|extremely|always so|just|damn|bloody|mega|totally)[ ,]+)*"
_ENGLISH = (
    rf"(?:can|may|could|should|shall) (?:i|we)(?: (?:still|just|also|already|please))?{_SOME} ?(?:drink|have|sip|take){_SOME}(?: ?(?:water|to drink|to sip))?{_NOW}",
    rf"(?:am i|are we) (?:still )?allowed (?:to (?:drink|have|sip){_SOME}(?: water| to drink)?|water|a drink|some water){_NOW}",
    rf"(?:is it|is) (?:ok|okay|fine|alright)(?: if i| to| for me to) (?:drink|have|sip){_SOME}(?: water| to drink)?{_NOW}",
    rf"is water (?:ok|okay|allowed|fine){_NOW}",
    rf"(?:(?:i'?m|i am|im|feel|feeling|i feel|we'?re) )?{_VERY}thirsty{_NOW}(?: all (?:day|the time|night))?",
    rf"(?:i'?m |im )?(?:dying of thirst|parched){_NOW}",
    rf"i(?:'d| would)? (?:(?:really|just|so|desperately) )?(?:need|want|like|could use|could do with)(?: to)?{_SOME} ?(?:drink|water|to drink){_NOW}",
)
_JETZT = r"(?: (?:jetzt|gerade|grad|heute|schon|wieder|noch|dazu|zwischendurch|bitte|nochmal|eigentlich|einfach|denn|auch|mal))*"
_WAS = r"(?: (?:was|etwas|ein bisschen|bisschen|einen schluck|einen|nen schluck|ein paar schlucke|ein glas|mehr|noch was|ein wasser|wasser))*"
_SEHR = r"(?: (?:so|voll|echt|total|mega|sau|ziemlich|richtig|sehr|großen|riesigen|dauernd|ständig|immer|furchtbar(?:en)?|schrecklich(?:en)?|wahnsinnig(?:en)?|krassen?|übel(?:st)?|einen?|nen|etwas|bisschen|ein bisschen|den|brutal(?:en)?|tierisch(?:en)?|tierischen|riesen|unglaublich(?:en)?|viel|extrem(?:en)?))*"
_GERMAN = (
    rf"(?:darf|kann|soll|könnte|dürfte|dürfen|können) (?:ich|wir){_JETZT}{_WAS}{_JETZT}{_WAS} (?:trinken|nippen|haben){_JETZT}",
    rf"(?:ist|geht) (?:es )?(?:ok|okay|in ordnung|erlaubt)?,? ?wenn ich{_JETZT}{_WAS}{_JETZT} trinke",
    rf"ist (?:trinken|wasser){_JETZT} (?:ok|okay|erlaubt|in ordnung)",
    rf"(?:(?:ich )?(?:hab|habe|hätte|krieg|kriege|bekomme)|(?:hab|habe) ich){_JETZT}{_SEHR}{_JETZT}{_SEHR} durst{_JETZT}",
    rf"(?:ich )?(?:bin|wäre){_JETZT}{_SEHR} durstig{_JETZT}",
    rf"was (?:darf|kann|soll) ich{_JETZT} trinken{_JETZT}",
    rf"(?:so(?:lchen|on|nen|n)?|voll|echt|mega|großen|riesen)? ?(?:durst|durstig){_JETZT}",
    rf"(?:ich )?(?:verdurste|verdurst){_JETZT}(?: fast| gleich)?{_JETZT}",
    rf"(?:ich )?(?:brauch|brauche|will|möchte|muss){_JETZT}{_WAS}{_JETZT} (?:trinken|wasser|zu trinken){_JETZT}",
)
_SAID = Late("|".join(f"(?:{one})" for one in (*_ENGLISH, *_GERMAN)), re.IGNORECASE)
_COURTESY = Late(
    r"^(?:(?:hi|hey|hello|hallo|moin|coach|ok|okay|sorry|um+|äh+m?|puh|boah|man|oh|and|und|also|but|aber|so|frage|"
    r"question|quick question|kurze frage|sag mal|du|ich|i)\b[ ,:!.-]*)+(?=\S)|[ ,]+(?:coach|pls|please|bitte|man|mann|lol|haha|hm+|oder|or not)$",
    re.IGNORECASE,
)
_SENTENCE_END = Late(r"[.!?…;\n]+")
_MOST_WORDS, _LONGEST = 14, 120  # words, characters


def is_of_thirst(text: str) -> bool:
    """Whether thirst, or the question whether one may drink, is all that a text says."""
    plain = " ".join(text.replace("\u2019", "'").split(" "))
    parts = [part.strip(" ,-") for part in _SENTENCE_END.split(plain)]
    said = [part for part in parts if part and any(char.isalpha() for char in part)]
    return bool(said) and all(_is_one(" ".join(part.split())) for part in said)


def _is_one(sentence: str) -> bool:
    if len(sentence.split()) > _MOST_WORDS or len(sentence) > _LONGEST:
        return False
    bare = _COURTESY.sub("", _COURTESY.sub("", sentence)).strip(" ,")
    if any(_SAID.fullmatch(one) for one in (sentence, bare) if one):
        return True
    head, comma, rest = sentence.partition(",")
    return bool(comma) and _is_one(head.strip()) and _is_one(rest.strip())


_ASKS = Late(
    r"[^.!?;\n]*\b(?:can|may|could|should|do|am|are|must|darf|dürfen|kann|können|soll|sollen|muss|müssen)\b"
    r"[^.!?;\n]*\?",
    re.IGNORECASE,
)
_DRINKING = Late(r"\b(?:drink\w*|sip\w*|water|trink\w*|schluck\w*|nipp\w*|wasser)\b", re.IGNORECASE)
_DOING_WITHOUT = Late(
    r"\b(?:stop\w*|cut\w*|without|no|not|never|nothing|sauna|steam|dry\w*|weight|sweat\w*|spit\w*|aufhör\w*|"
    r"weglass\w*|kein\w*|nicht|ohne|nix|nichts|gewicht|trocken\w*|entwässer\w*|schwitz\w*|ausspuck\w*)\b",
    re.IGNORECASE,
)


def asks_how_to_drink(text: str) -> bool:
    """Whether a text is one question of how to drink: "only sips, or can I drink normally?". One that
    speaks of doing without is none.
    """
    return (
        len(text) <= _LONGEST
        and _ASKS.fullmatch(text.strip()) is not None
        and _DRINKING.search(text) is not None
        and _DOING_WITHOUT.search(text) is None
    )
