"""Sentences that say no more than that a complaint is not there, or is over: "i dont feel dizzy",
"Kopfweh ist weg".

To the second ear a denied complaint is the words of that complaint, so that these are taken out before
it listens. Each word must be of that business: with one word more ("no headache, but I woke up on the
floor") the sentence is listened to as any other. Which words these are is our own choice.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence, Set
from enum import Enum

from engine.symptoms.denying import DENIALS, GERMAN_DENIALS, NO_OR_NO_IDEA
from engine.symptoms.ear.reading import fold
from engine.written.late import Late, word_set


def _words(listed: str) -> frozenset[str]:
    return word_set(fold(listed))


_DENY = _words(" ".join((*DENIALS, *GERMAN_DENIALS, *NO_OR_NO_IDEA)))
_DENY |= {word.replace("'", "") for word in _DENY}
#: Mild ones: they may be over, and then nobody has to know.
_MILD = _words("""
    dizzy dizziness lightheaded lightheadedness woozy headache headaches migraine nausea
    nauseous sick queasy cramp cramps cramping bloat bloated bloating gassy swelling swollen
    puffy diarrhoea diarrhea runs trots constipated constipation tired exhausted exhaustion
    shaky shaking trembling insomnia stomachache bellyache symptom symptoms complaint complaints
    vomited vomit vomiting fever chills unwell schwindlig schwindelig schwindel kopfweh
    kopfschmerz kopfschmerzen migrane ubelkeit ubel schlecht krampf krampfe krampfen wadenkrampf
    wadenkrampfe blahung blahungen geblaht blahbauch geschwollen schwellung schwellungen
    angeschwollen durchfall verstopft verstopfung mude erschopft zittrig bauchweh bauchschmerzen
    magenschmerzen symptome beschwerden erbrochen ubergeben gekotzt fieber schuttelfrost krank
    dunnpfiff dick problem problems issue issues probleme
""")
#: Of these it counts that they are not there; one that is over has still been there.
_GRAVE = _words("""
    pain pains hurt hurts hurting ache aches blood bleeding palpitations flutter flutters
    fluttering faint fainted fainting blackout collapsed breathless breathlessness confused
    confusion seizure chestpain binged binge purged purge starving schmerz schmerzen weh
    brustschmerzen blut blutung blutungen herzrasen herzstolpern stolpern umgekippt ohnmachtig
    ohnmacht kollabiert atemnot luftnot verwirrt krampfanfall fressanfall stechen
""")
_OVER = _words("""
    gone passed stopped subsided vanished disappeared has have weg vorbei verschwunden
    abgeklungen zuruckgegangen aufgehort uberstanden verflogen rum durch abgeschwollen
    weggegangen verzogen gelegt
""")
_GONE = _OVER - word_set("has have went")
_WELL = _words("""
    fine ok okay good great clear normal well alright perfect super gut okay frei klar bestens
    prima wunderbar top ruhig calm
""")
#: What is well or not, and hurts or not, and is no complaint by its name.
_PARTS = _words("""
    belly stomach tummy gut head legs leg feet ankles hands fingers eyes chest heart back knees
    muscles pulse breathing face bauch magen kopf beine bein fusse knochel hande finger augen
    brust herz rucken knie muskeln puls luft atmung gesicht kreislauf
""")
#: To have none of these is the complaint.
_NEEDED = _words("""
    pulse breathing luft atmung sleep schlaf slept geschlafen urine urin pee pipi
    poo stuhl periode period energy kraft strength appetite kreislauf water wasser
""")
#: What somebody does not have any more they have had.
_NO_MORE = _words("anymore more longer again since mehr nimmer wieder seit")
#: What is behind "gone" in "gone to my head", and not in "gone by now".
_GOES_ON = _words("""
    my the a an in on of to with it mein meine meinem meinen die der das den dem im am ein eine mit
""")
_FELT = _words("feel feeling feels felt")
_SLEPT = _words("slept sleep geschlafen schlaf")
_BESIDE = _words("""
    i i'm im i've ive am was is are were be been being it it's its all every the a an any my me
    of in on at to and also feel feels feeling felt had got get getting having do did going
    gonna sign signs today now this morning tonight last night since yesterday anymore more
    longer any again finally thankfully luckily thank god thanks anywhere else ever even though
    monday tuesday wednesday thursday friday saturday sunday noon breakfast lunch worry don't
    with up after completely totally fully actually ich mir mich mein meine meinem meinen bin
    war waren ist sind es der die das den dem ein eine hab habe hatte hatten gehabt mehr heute
    heut jetzt seit gestern morgen fruh nacht wieder auch alles alle gar uberhaupt zum gluck
    gott sei dank endlich am im in und oder noch or von montag dienstag mittwoch donnerstag
    freitag samstag sonntag mittag fruhstuck tut tun hat haben sich geworden zu sehen mal
    irgendwo sonst inzwischen mittlerweile komplett ganz vollig mit nach dabei
""")
#: Said first, these would be told of by one word that they also are in other company.
_AS_ONE = tuple(
    (Late(rf"\b(?:{pattern})\b"), instead)
    for pattern, instead in (
        (r"(?:throw|threw|thrown|throwing) up", "vomited"),
        (r"pass(?:ed|ing)? out|black(?:ed|ing)? out", "fainted"),
        (r"short(?:ness)? of breath|out of breath", "breathlessness"),
        (r"breathing (?:problems?|difficult\w+|trouble|issues?)", "breathlessness"),
        (r"chest pains?", "chestpain"),
        (r"(?:went|gone|going) (?:away|down)|(?:is|are|was|all|now) over", "gone"),
        (r"(?:'s|is|are) (?:back )?down", " gone"),
        (r"^that", "the"),
        (r"settled(?: down)?", "calm"),
        (r"or (?:anything|something)|oder (?:so|sowas)", ""),
        (r"(?:double|blurr(?:y|ed)) vision", "palpitations"),
        (r"(?:racing|fluttering|pounding) heart", "palpitations"),
    )
)
#: Without one of these no sentence says any of it.
_TURNS_ON = _DENY | _GONE | _WELL | _words("over away down settled")
_WORD = Late(r"[a-z]+(?:'[a-z]+)?|\d+(?:[.,]\d+)*|[^\sa-z0-9.,!?;:'\"()…-]")
_SENTENCE = Late(r"\S.*?(?:\n|[.!;?:…]+(?=\s|$)|$)", re.DOTALL)
_BREAK = Late(r",|\s+(?:and|und|but|aber|sonst|plus)\s+|&|\+")
#: "the cramps are gone, the headache isn't"
_ONE_STAYS = Late(
    rf"\b(?:gone|weg|vorbei|verschwunden|stopped)\b.*,.*\b(?:{'|'.join(sorted(_DENY))})$"
)
_SET_APART = Late(r"\b(?:but|aber|except|ausser|only|nur|until|bis)\b")
#: The body part is what is not felt.
_NOT_FELT = Late(
    r"\b(?:no feeling|kein gefuhl|"
    r"(?:feel|feeling|felt|spur\w*|fuhl\w*|merk\w*) (?:my|mein\w*|the|die|den))\b"
)
_EITHER = Late(r"\b(?:or|nor|oder|noch)\b")
_NOTHING = _words("none nothing nix nichts don't dont")
_ANSWERS = _words("no none nothing never")
_SUBJECTS = _words("i i'm im i've ive my am it's its was were is are had have got do did feel felt")
_LISTED = _MILD | _GRAVE | _PARTS | _BESIDE
_KNOWN = _LISTED | _DENY | _OVER | _WELL | _SLEPT
_MOST_WORDS, _LONGEST = 20, 200  # words, characters
_FEW = 3  # words, at most, that may stand between "not" and the "good" that it takes away


class _Part(Enum):
    CLEAR, NOTHING, MORE = range(3)


def parted(text: str, taken_back: Sequence[Late]) -> tuple[str, str]:
    """The text with those sentences blanked, and they alone, with blanks for all the rest.

    One that goes on to take it back (`taken_back`: "... today I do") stays.
    """
    rest, cleared = list(text), [" "] * len(text)
    found = [match for match in _SENTENCE.finditer(text) if len(match[0]) <= _LONGEST]
    for at, match in enumerate(found):
        following = found[at + 1][0].lower() if at + 1 < len(found) else ""
        again = any(one.match(following) for one in taken_back)
        if again or not is_all_clear(match[0], taken_back):
            continue
        for place in range(*match.span()):
            if rest[place] != "\n":
                rest[place], cleared[place] = " ", text[place]
    return "".join(rest), "".join(cleared)


def is_all_clear(sentence: str, taken_back: Sequence[Late] = ()) -> bool:
    """Whether one sentence says this and no more; a question or an announcement (":") never does."""
    bare = sentence.strip()
    if not bare or bare[-1] in "?:…" or bare.endswith(".."):
        return False
    plain = fold(bare)
    if _TURNS_ON.isdisjoint(_WORD.compiled.findall(plain)):
        return False
    for pattern, instead in _AS_ONE:
        plain = pattern.sub(instead, plain)
    if _NOT_FELT.search(plain):
        return False
    parts = [part.strip() for part in _BREAK.split(plain)]
    if any(one.match(part) for part in parts for one in taken_back) or _ONE_STAYS.search(plain):
        return False
    said = list(_says(parts, either=_EITHER.search(plain) is not None))
    whole = _Part.NOTHING not in said or _SET_APART.search(plain) is None
    return _Part.CLEAR in said and _Part.MORE not in said and whole


def _says(parts: Sequence[str], *, either: bool) -> Iterator[_Part]:
    """What each part between commas says; a list goes on from a denial where it has an "or"."""
    before = _Part.NOTHING
    for part in parts:
        words = [_bare(word) for word in _WORD.compiled.findall(part)]
        if words:
            listed = either and before is _Part.CLEAR and all(word in _LISTED for word in words)
            before = _Part.CLEAR if listed else _said(words)
            yield before


def _bare(word: str) -> str:
    return word if word in _DENY | _BESIDE else word.removesuffix("'s")


def _said(words: Sequence[str]) -> _Part:
    if len(words) > 1 and words[0] in _ANSWERS and words[1] in _SUBJECTS:
        words = words[1:]  # "no I fainted"
    if len(words) > _MOST_WORDS or not all(word in _KNOWN or word[0].isdigit() for word in words):
        return _Part.MORE
    said = set(words)
    named, denied = said & (_MILD | _GRAVE), said & _DENY
    if _takes_away(words):
        return _Part.MORE
    if said & _GONE:
        return _Part.CLEAR if named and _is_gone(words, said) else _is_nothing(said)
    if denied and named:
        once = named & _GRAVE and said & _NO_MORE
        return _Part.MORE if once else _Part.CLEAR
    if said & _WELL and said & (_PARTS | _SLEPT) and not denied | named:
        return _Part.CLEAR
    return _Part.MORE if named else _is_nothing(said)


def _is_gone(words: Sequence[str], said: Set[str]) -> bool:
    last = max(at for at, word in enumerate(words) if word in _GONE)
    before, behind = words[:last], words[last + 1 :]
    named = not _MILD.isdisjoint(before) and _MILD.isdisjoint(behind)
    return named and not said & (_DENY | _GRAVE) and _GOES_ON.isdisjoint(behind)


def _is_nothing(said: Set[str]) -> _Part:
    """Of words that name no complaint: "not at all" says nothing more, "no pulse" does."""
    more = said & (_PARTS | _NEEDED | _MILD | _GRAVE) or (said & _FELT and said & _DENY)
    return _Part.MORE if more or said & _DENY - _NOTHING else _Part.NOTHING


def _takes_away(words: Sequence[str]) -> bool:
    """Whether a denial takes what one needs, or what is well: "no pulse", "not feeling good"."""
    for at, word in enumerate(words):
        if word not in _DENY:
            continue
        for after in words[at + 1 : at + 1 + _FEW]:
            if after in _MILD | _GRAVE:
                break
            if after in _NEEDED or after in _WELL:
                return True
    return False
