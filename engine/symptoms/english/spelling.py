"""Misspelt words put right, as far as our vocabulary goes."""

from __future__ import annotations

import re
from collections.abc import Callable, Collection, Iterable, Iterator, Mapping
from typing import NamedTuple

from engine.written.late import word_set

_MOST_KEPT = 8192  # words; the most frequent ones come early
_DRAWN_OUT = re.compile(r"([a-z])\1{2,}")
_LONGEST_WORD = 18  # nothing in the vocabulary is longer by more than the slips allowed

# What people write for what they mean, where it is further off than a slip or two.
_VARIANTS = {
    "dont": "don't", "didnt": "didn't", "doesnt": "doesn't", "havent": "haven't",
    "hasnt": "hasn't", "hadnt": "hadn't", "wasnt": "wasn't", "isnt": "isn't", "arent": "aren't",
    "werent": "weren't", "cant": "can't", "cannot": "can't", "couldnt": "couldn't",
    "wouldnt": "wouldn't", "wont": "won't", "aint": "ain't", "im": "i'm", "ive": "i've",
    "wo": "without", "w/o": "without", "nt": "not", "nno": "no", "dosent": "doesn't",
    "dosnt": "doesn't",
    "hearts": "heart's", "cnt": "can't", "coudnt": "couldn't",
    "hart": "heart", "hert": "heart", "herat": "heart", "haert": "heart",
    "cheast": "chest", "chset": "chest", "ches": "chest", "chist": "chest",
    "payn": "pain", "pian": "pain", "paine": "pain", "pane": "pain",
    "brething": "breathing", "breething": "breathing", "breth": "breath", "breeth": "breath",
    "breatheless": "breathless", "brethless": "breathless", "breathlis": "breathless",
    "breathe": "breathe", "breat": "breath", "braeth": "breath", "berath": "breath",
    "fant": "faint", "feint": "faint", "fainy": "faint", "fente": "faint", "fented": "fainted",
    "feinted": "fainted", "feinting": "fainting", "fainterd": "fainted", "phainted": "fainted",
    "colapsed": "collapsed", "collasped": "collapsed", "unconcious": "unconscious",
    "conciousness": "consciousness", "consiousness": "consciousness",
    "sezure": "seizure", "siezure": "seizure", "seisure": "seizure", "ceizure": "seizure",
    "seziure": "seizure", "convultion": "convulsion", "convultions": "convulsions",
    "palps": "palpitations", "palpatations": "palpitations", "palpations": "palpitations",
    "papitations": "palpitations", "arrythmia": "arrhythmia", "arythmia": "arrhythmia",
    "hartbeat": "heartbeat", "dissy": "dizzy", "dizy": "dizzy", "dizzi": "dizzy",
    "disy": "dizzy", "dizie": "dizzy", "vertago": "vertigo", "lighthead": "lightheaded",
    "heartrate": "heart rate", "blackedout": "blacked out",
    "hedache": "headache", "heddache": "headache", "hedake": "headache", "headake": "headache",
    "headace": "headache", "hadache": "headache", "migrane": "migraine", "migrain": "migraine",
    "nausia": "nausea", "nausous": "nauseous", "naseous": "nauseous", "nauscious": "nauseous",
    "nausious": "nauseous", "nautious": "nauseous", "noxious": "nauseous", "nasuea": "nausea",
    "vomitting": "vomiting", "vommiting": "vomiting", "vommited": "vomited", "vomted": "vomited",
    "vomitted": "vomited", "puked": "puked", "thowing": "throwing", "trew": "threw",
    "throught": "through", "trhew": "threw", "thre": "threw",
    "diarrhea": "diarrhoea", "diarrea": "diarrhoea", "diarea": "diarrhoea",
    "diareah": "diarrhoea", "diarhea": "diarrhoea", "diahrea": "diarrhoea",
    "diahorrea": "diarrhoea", "dihorrea": "diarrhoea", "diorrhea": "diarrhoea",
    "diarreah": "diarrhoea", "dierea": "diarrhoea", "dirrhea": "diarrhoea", "runs": "runs",
    "constapated": "constipated", "constepated": "constipated", "blotted": "bloated",
    "swolen": "swollen", "swollin": "swollen", "swolled": "swollen",
    "paralized": "paralysed", "paralised": "paralysed", "paralyzed": "paralysed",
    "numm": "numb", "nubm": "numb", "wek": "weak", "waek": "weak", "weekness": "weakness",
    "weaknes": "weakness", "leggs": "legs", "lgs": "legs", "legz": "legs", "amrs": "arms",
    "confuzed": "confused", "confussed": "confused", "disorientated": "disoriented",
    "throwed": "threw", "urin": "urine", "wee": "pee", "piss": "pee", "deuretic": "diuretic",
    "dieuretic": "diuretic", "lacsative": "laxative", "frusemide": "furosemide",
    "waterpills": "water pills", "waterpill": "water pill", "chestpain": "chest pain",
    "chestpains": "chest pain", "heartbeats": "heartbeat", "breathin": "breathing",
    "sob": "sob", "racin": "racing", "poundin": "pounding", "feelin": "feeling",
    "theres": "there's",
    "everythings": "everything", "nothin": "nothing", "vomitin": "vomiting",
    "throwin": "throwing", "faintin": "fainting",
    "doubel": "double", "dubble": "double", "doubble": "double", "dobule": "double",
    "duoble": "double", "pukin": "puking", "alot": "a lot", "legs'": "legs",
}  # fmt: skip

# Words that people misspell in ways of their own, known by how they begin.
_BEGINNINGS = {
    "palpit": "palpitations", "palpat": "palpitations", "palpet": "palpitations",
    "convuls": "convulsion", "seizu": "seizure", "paralys": "paralysed", "paralyz": "paralysed",
    "paralis": "paralysed", "hallucin": "hallucinating", "diarr": "diarrhoea",
    "diarh": "diarrhoea", "constip": "constipated", "dizzi": "dizzy", "furos": "furosemide",
    "spironol": "spironolactone", "clenb": "clenbuterol",
}  # fmt: skip

# Sound words a slip or two away from a word of the vocabulary: never "put right".
_LEFT_ALONE = word_set("""
    ankle breeding buckley cushing discussing disrupting extrem extremen fingern funktion
    hearst homeless hopelessly massiv massiven passe passen passend peking pissed raping severed
    severn sollen stomachs temperatur temperaturen thron unconsciously
    crap crops clap
    agitate ambulances angles arcing backed bathrooms binding binging blacker blanked bleating
    blending blinking blocked blotting boating breach breaching breadth breakfasts breathed
    breather breathes bridging brining buckle buckler busting camp camping camps champ champs
    cheat chess chests clamp clamping clamps compulsion concentrated concentrates conclusion
    conclusions concussion concussions confession confuses consciously conscripted constituted
    constitution constrictor constructed consulting contiguous continuously contracted
    contusion conversing conversion conversions cram cramming crashing crest crimp crump
    delicious dispersion dissension dripping drooping droppings elephants elevate elevates
    excruciatingly exploiting exploring extremes fainter faints fightin finders finger fisting
    fittings flattening flattering flattery flint flutter forfeiting formatting functional
    functioned functions gaping gassing grasping hardy having heading healing heaping hear
    heard hearing hears heartbreak hearth hearty heat heating heave hospitable hospitals
    hunting hurling hurtling incredibles insomniac inulin irregularly killings meddling
    middling movements multiples multiplex multiplied multiplier multiplies multiply painting
    panning parting passer passes pasted pasting patting paused persistence persistently
    persisting physicality planting poked poking pressured pressures property puff puffs puke
    racking raging raking raring rating raving remeber remembered remembers reportedly
    resounding respondent ridiculously scattered seeping selling sensational sensations
    shelling shipping shuttered sinning sipping sizing skinning sleepin slipping slurping
    smelling sneaking spanning spelling spitting splattered spurred spurring stabbings
    straighten straighter straights strangling strengthen strengths struggles sweeping
    temperatures thanking thinkin thinning threat throats throw throws tighten tights tinkling
    trice troubled troubles twine unbearably unbeatable unbreakable unreadable weaknesses
    yesterdays
""")


class Habits(NamedTuple):
    """Words that people misspell in ways of their own, whole or by how they begin, and sound ones
    (`left_alone`) that only look like a misspelt one.
    """

    variants: Mapping[str, str]
    beginnings: Mapping[str, str]
    left_alone: Collection[str]


_HABITS = Habits(_VARIANTS, _BEGINNINGS, _LEFT_ALONE)


class Corrector:
    """Puts words within a slip or two of the vocabulary right: one up to nine letters, two from
    ten on. Of four letters, only one left out is thought of. The first letter is trusted, unless
    the first two have changed places.

    Looks words up by what is left when letters are taken out, so that a long message costs a
    lookup per letter and not a comparison per word known.
    """

    def __init__(
        self,
        vocabulary: Iterable[str],
        also: Iterable[str] = (),
        *,
        habits: Habits = _HABITS,
        tried_as: Callable[[str], str] | None = None,
    ) -> None:
        """Words of `also` are meant only where none of the `vocabulary` is as near.

        What none of the `habits` knows is looked up once more as what `tried_as` makes of it.
        """
        self._tried_as = tried_as
        self._variants, self._beginnings, self._left_alone = habits
        self._corrected: dict[str, str] = {}
        self._first = frozenset(word for word in vocabulary if len(word) >= 5)
        self._words = self._first.union(also)
        self._by_remains: dict[str, list[str]] = {}
        for word in sorted(self._words):
            for rest in _remains(word, _slips(word)):
                self._by_remains.setdefault(rest, []).append(word)

    def corrected(self, words: Iterable[str]) -> dict[str, str]:
        """For each the word of the vocabulary that was meant, or itself; kept, up to a bound."""
        return {word: self._correct(word) for word in words}

    def _correct(self, word: str) -> str:
        known = self._corrected.get(word)
        if known is None:
            known = self._meant(word)
            again = self._tried_as(word) if known == word and self._tried_as else word
            if again != word:
                known = self._meant(again)
            if len(self._corrected) < _MOST_KEPT:
                self._corrected[word] = known
        return known

    def _meant(self, word: str) -> str:
        if (variant := self._variants.get(word)) is not None:
            return variant
        if len(word) < 4 or word in self._words or word in self._left_alone:
            return word
        if word.endswith("'s"):
            return self._correct(word[:-2]) + "'s"
        for beginning, meant in self._beginnings.items():
            if word.startswith(beginning):
                return meant
        if _DRAWN_OUT.search(word) is None:
            return self._nearest(word) or word
        for calm in (_DRAWN_OUT.sub(r"\1\1", word), _DRAWN_OUT.sub(r"\1", word)):
            if calm in self._words or calm in self._variants:
                return self._variants.get(calm, calm)
        return self._nearest(calm) or word

    def _nearest(self, word: str) -> str | None:
        if len(word) > _LONGEST_WORD:
            return None
        allowed = _slips(word)
        near = {
            (distance, known not in self._first, known)
            for rest in _remains(word, allowed)
            for known in self._by_remains.get(rest, ())
            if (known[0] == word[0] or known[:2] == word[1::-1])
            and (distance := _distance(word, known)) <= allowed
        }
        if not near:
            return None
        meant = min(near)[2]
        return None if len(word) == 4 and len(meant) != 5 else meant


def _slips(word: str) -> int:
    return 2 if len(word) >= 10 else 1


def _remains(word: str, slips: int) -> Iterator[str]:
    yield word
    for i in range(len(word)):
        once = word[:i] + word[i + 1 :]
        yield once
        if slips > 1:
            for j in range(i, len(once)):
                yield once[:j] + once[j + 1 :]


def _distance(a: str, b: str) -> int:
    """Letters added, dropped, changed or swapped with the next (optimal string alignment)."""
    before: list[int] = []
    last = list(range(len(b) + 1))
    for i, x in enumerate(a, start=1):
        row = [i]
        for j, y in enumerate(b, start=1):
            cost = min(last[j] + 1, row[j - 1] + 1, last[j - 1] + (x != y))
            if i > 1 and j > 1 and x == b[j - 2] and a[i - 2] == y:
                cost = min(cost, before[j - 2] + 1)
            row.append(cost)
        before, last = last, row
    return last[-1]
