"""What is a warning only together, told in two breaths: hives, "and my lips are ballooning".

A phrase is looked for within a clause; these are looked for across the clauses of a text that is not
too long to be one report. Which belong together is common knowledge of first aid, from memory.
"""

# ruff: noqa: E501 - a pattern stays on one line
from __future__ import annotations

from collections.abc import Sequence

from engine.symptoms.names import Symptom
from engine.symptoms.patterns import spelled_briefly
from engine.written.late import Late


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
