"""What a text says as a whole, where a clause alone does not tell: a warning in two breaths, a mild complaint
and no more, nothing but thirst, a look that has spilled over. In English and German."""

from __future__ import annotations

import re
from collections.abc import Iterable, Sequence

from engine.symptoms.clauses import clauses
from engine.symptoms.ear.reading import words
from engine.symptoms.names import Hit, Symptom
from engine.symptoms.patterns import spelled_briefly
from engine.written.late import Late, word_set

# ruff: noqa: E501 - a pattern stays on one line


def _late(words: str) -> Late:
    return Late(spelled_briefly(words))


_SWOLLEN = r"(?:swollen|swell\w*|balloon\w*|puff\w*|closing|closed up|thick|geschwollen|schwill\w*|schwell\w*|angeschwollen|zugeschwollen|ballons?|dick|aufgequollen|schlauchboote)"
_HEAD = r"(?:head|schadel|kopf|hinterkopf|stirn)"
_PAIRS: tuple[tuple[Symptom, Late, Late], ...] = tuple(
    (symptom, _late(one), _late(other))
    for symptom, one, other in (
        (
            Symptom.DANGER_SIGNS,
            r"hives|rash|welts|itch\w*|nettle rash|wheez\w*|quaddeln?|ausschlag|nesselsucht|pusteln|juckt|jucken|pfeife?",
            rf"(?:lips?|tongue(?:'s)?|throat|face|eyes|lippen?|zunge|hals|gesicht|augen)<4>{_SWOLLEN}|{_SWOLLEN}<2>(?:lips?|tongue|throat|lippen?|zunge|hals)",
        ),
        (
            Symptom.DANGER_SIGNS,
            rf"(?:face|eyes?|lips?|tongue|eyelids?)<4>(?:{_SWOLLEN}|slits?)|(?:gesicht|augen?|lippen?|zunge|lider)<4>(?:{_SWOLLEN}|zu|schlitze?)|{_SWOLLEN}<2>(?:gesicht|augen|lippen?|zunge)",
            r"(?:swallow\w*)<3>(?:hard|difficult|hurts?|trouble|barely)|(?:can't|hard to|trouble|hardly|barely)<2>swallow\w*|throat<3>(?:tight\w*|clos\w*|narrow\w*)|schluck\w*<3>(?:schwer|kaum|nicht|weh|fallt|muhe)|(?:kaum|schwer|nicht)<2>schlucken|(?:hals|kehle)<3>(?:eng|zu|dicht|zugeschnurt)",
        ),
        (
            Symptom.DANGER_SIGNS,
            r"(?:boiling|burning|roasting|red hot|scorching)<2>(?:to the touch|hot|like an oven)|(?:gluht|gluhend|kochend|kocht|brennend)<3>(?:heiss|haut|wie ein ofen)",
            r"bone dry|no sweat|mutter\w*|rambl\w*|babbl\w*|rubbish|nonsense|gibberish|knochentrocken|staubtrocken|kein schweiss|wirr\w*|verwirrt|lallt|brabbelt|unsinn",
        ),
        (
            Symptom.DANGER_SIGNS,
            r"stiff neck|neck<3>(?:stiff|rigid|won't bend|can't bend|locked)|(?:nacken|genick)<4>(?:steif|bretthart|starr|geht nicht|nicht beugen)|steife[rnm]? (?:nacken|genick)",
            r"fever\w*|burning up|chills|shaking with cold|lights? hurts?|bright light|fieber\w*|schuttelfrost|gluhe?|licht<2>(?:weh|schmerzt|blendet)",
        ),
        (
            Symptom.DANGER_SIGNS,
            r"(?:stopped|quit|no longer) sweat\w*|schwitze?<2>(?:nicht mehr|nimmer)|(?:hot|heisse?) (?:, )?(?:dry|trockene) (?:skin|haut)|(?:dry|trockene) (?:, )?(?:hot|heisse) (?:skin|haut)",
            r"dizzy|spinning|confused|burning up|hot skin|verwirrt|schwindel\w*|dreh\w*|gluh\w*",
        ),
        (
            Symptom.DANGER_SIGNS,
            r"(?:one|left|right)<1>(?:calf|leg|lower leg)<6>(?:purple|plum|violet|blue|swollen|twice|balloon\w*)|(?:eine|linke|rechte|ein|linkes|rechtes)<1>(?:wade|bein|unterschenkel)<6>(?:lila|violett|blau|geschwollen|schwillt|doppelt)",
            r"(?:sore|pain|hurts?|aches?|throbs?|throbbing)<3>(?:behind|calf|knee|to touch)|behind<1>knee|kniekehle|wade<3>(?:weh|schmerzt|pocht)",
        ),
        (
            Symptom.DANGER_SIGNS,
            r"(?:one|left|right)<1>(?:calf|leg)<4>(?:swollen|hot|red|twice)|(?:calf|wade)(?:'s)?<4>(?:balloon|ballon|swollen|geschwollen|heiss|hot)|(?:eine|linke|rechte|ein|linkes|rechtes)<1>(?:wade|bein)<4>(?:dick|geschwollen|heiss|rot|prall)",
            r"short of (?:breath|puff)|no air|breathless|can't breathe|out of breath|fehlt<2>luft|luft<2>(?:knapp|weg|fehlt)|kurzatmig|atemnot|krieg\w*<2>luft",
        ),
        (
            Symptom.DANGER_SIGNS,
            r"(?:can't|cannot|couldn't)<2>(?:pee|wee|piss|urinate)|(?:kann|konnte|krieg\w*)<3>nicht<1>(?:pinkeln|pissen|pieseln|wasser lassen)",
            r"(?:belly|bladder|tummy|stomach)<4>(?:drum|burst\w*|hurts?|agony|hard|explod\w*)|(?:bauch|blase|unterbauch)<4>(?:trommel|platzt|hart|prall|weh|zerreisst)|hurts like hell|hollisch weh",
        ),
        (
            Symptom.DANGER_SIGNS,
            rf"(?:bang\w*|hit|smack\w*|knock\w*|whack\w*|crack\w*)<2>{_HEAD}|{_HEAD}<4>(?:angehauen|gestossen|angeschlagen|aufgeschlagen|geknallt)",
            r"vomit\w*|threw up|throwing up|puk\w*|drowsy|sleepy|can't remember|seeing double|gekotzt|erbrochen|ubergeben|schlafrig|benommen|erinner\w*|doppelt",
        ),
        (
            Symptom.DANGER_SIGNS,
            r"(?:pills|tablets|tabletten|pillen)<3>(?:all gone|gone|weg|leer)",
            r"(?:took|taken|swallowed) (?:them|all|it)|(?:sie|alle) (?:genommen|geschluckt)",
        ),
        (
            Symptom.HEAVY_BLEEDING,
            r"(?:cut|sliced|gashed|slashed)<2>(?:hand|finger|thumb|palm|leg|arm|foot)|(?:hand|finger|daumen|bein|arm|fuss)<2>(?:geschnitten|aufgeschlitzt|gesabelt)",
            r"pumping out|spurt\w*|squirt\w*|gushing|pumpt<2>(?:raus|heraus)|spritzt|sprudelt|schiesst raus|hort<1>nicht auf",
        ),
        (
            Symptom.STROKE_SIGNS,
            r"(?:wanted|went|tried|meant)<1>(?:to )?say|(?:wollte|woll|will)<4>sagen",
            r"(?:something|sth)<2>(?:different|else) came out|came out<2>(?:wrong|different\w*|gibberish|jumbled)|(?:wrong|different) words?<2>(?:came|comes) out|(?:was|etwas)<2>anderes<1>(?:raus|heraus)|(?:falsche?s?|anderes) worte?r?<3>(?:raus|heraus)",
        ),
        (
            Symptom.STROKE_SIGNS,
            r"(?:know|knew)<2>words?|know what i (?:want|mean)|(?:weiss|wusste|kenne?)<2>(?:wort|worte|worter)",
            r"(?:can't|cant|couldn't|cannot)<2>(?:say|get)<2>(?:it|out)(?! right)|(?:won't|doesn't|not) come<1>out|(?:krieg\w*|bring\w*|kommt)<4>nicht<2>raus|nicht<2>(?:aussprechen|herausbringen)",
        ),
        (
            Symptom.CHEST_PAIN,
            r"sodbrennen|heartburn|indigestion",
            r"(?:into|in|bis in)<2>(?:jaw|teeth|arm|kiefer|zahne)|clammy|cold sweat|kaltschweissig|kalter schweiss",
        ),
        (
            Symptom.SELF_HARM,
            r"(?:standing|stood|stand|sat|sitting|am|i'm)<2>(?:on|at|by|near)<2>(?:bridge|platform|roof|ledge|tracks|cliff|balcony)|(?:stand|stehe?|steh|sitze?|sass|bin)<3>(?:am|auf|an)<2>(?:bahnsteig|gleis\w*|brucke|dach|balkon|gelander|klippe)",
            r"so easy|one step|just step|stepping off|just jump|nur ein schritt|so leicht|so einfach|springen|loslassen",
        ),
        (
            Symptom.SELF_HARM,
            r"(?:doesn't|doesnt|don't|won't|wont) matter|egal",
            r"(?:won't|wont|will not) be (?:here|around)|gibt'?s? (?:es )?mich nicht(?: mehr)?|bin ich nicht mehr da|(?:bald|dann) ist(?: endlich)? ruhe",
        ),
    )
)
_MOST_CLAUSES = 8


def told_together(clauses: Sequence[str]) -> frozenset[Symptom]:
    """The warnings that clauses of plain words tell together, of which none is denied."""
    if not 1 <= len(clauses) <= _MOST_CLAUSES:
        return frozenset()
    text = " . ".join(clauses)  # no gap of a pattern reaches over the full stop
    return frozenset(
        symptom for symptom, one, other in _PAIRS if one.search(text) and other.search(text)
    )


#: Beside the name they change nothing of it.
_SAYS_NO_MORE = word_set("""
    i i'm im i've ive my me a an the have having had has got get getting some bit of little
    slight slightly mild mildly minor today this morning again now and with but also too is am
    are it it's there there's feel feeling fine otherwise ok okay good all else everything as
    planned plan usual always normal by at in on rest note sleep slept well training trained
    steps cardio did done yes coach hi hey sorry just only ich hab habe hatte hat ein eine einen
    einem etwas leicht leichte leichtes leichter leichten bisschen heute morgen fruh wieder
    jetzt grad gerade und mit mir mich mein meine ist sind bin auch aber sonst alles gut wie
    geplant immer ublich nach so dabei dazu noch nur gefuhl der die das den ein'n hallo moin ja
    trainiert schritte gemacht erledigt wie'n paar notiz schlaf geschlafen
    sort kind kinda somewhat rather quite pretty really irgendwie ziemlich recht
    target weight weigh weighed fullness full water litre litres liter liters kg lb lbs oz sharpness
    sharp carbs eaten drank yesterday stomach gut fasted scale hours
    ziel gewicht gewogen fulle wasser kilo definition kohlenhydrate gegessen getrunken gestern bauch
    nuchtern waage stunden
""")

#: What has a name of its own. A hand that will not close is told by what it does, and may be graver.
_NAMED_SO = frozenset({
    Symptom.HEADACHE, Symptom.NAUSEA, Symptom.DIZZY, Symptom.DIARRHOEA, Symptom.CONSTIPATION,
    Symptom.BLOATING, Symptom.STOMACH_PAIN, Symptom.CRAMPS, Symptom.SLEEPLESS,
})  # fmt: skip


def by_name_alone(sentence: str, found: Iterable[Hit]) -> bool:
    """Whether it holds the words of these finds, figures, and nothing that makes more of them."""
    named = {word for hit in found if hit.symptom in _NAMED_SO for word in words(hit.words)}
    said = words(sentence)
    return bool(named & set(said)) and all(
        word in named or word in _SAYS_NO_MORE or not word[0].isalpha() for word in said
    )


# ruff: noqa: E501 - a pattern stays on one line


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


# ruff: noqa: E501 - a pattern stays on one line


_SPILLED = Late(
    r"\b(?:spil(?:led|t|ling) ?over|spill(?:ed)? right over|(?:have|did|i've|must have|i) spill over"
    r"|overspilled|gespillt|uberladen|ueberladen|ubergelaufen)\b"
)
#: The trade's short form, where nothing is named that was poured: "soft and blurry, spilled".
_SPILLED_BRIEFLY = Late(
    r"\b(?:spilled|spilt)(?= *$| (?:now|today|already|a bit|a little|badly|i think)\b| *,)"
)
_UNDONE = word_set("""
    not no never don't didn't haven't hasn't isn't wasn't won't without nor neither avoid afraid scared
    worried worry fear if unless before until would could might may should hope hoping want if when
    yesterday last previous trial once usually always year week coach he she they
    nicht nie kein keine ohne weder angst sorge falls wenn bevor bis wurde konnte sollte hoffe hoffentlich
    gestern letzte letzten letztes letzter vorher damals sonst immer jahr woche probe er sie trainer
""")  # fmt: skip


def says_spilled(text: str) -> bool:
    """Whether the text says that the look has spilled over this morning."""
    for clause in clauses(text):
        words = [word.plain for word in clause.words]
        plain = " ".join(words)
        found = _SPILLED.search(plain) or _SPILLED_BRIEFLY.search(plain)
        if found and clause.mark != "?" and not _UNDONE.intersection(words):
            return True
    return False
