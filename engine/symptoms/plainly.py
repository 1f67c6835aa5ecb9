"""Whether a sentence names a mild complaint and says no more: then nothing graver is heard in it.

By its letters alone "61.0 4 1.0 as planned headache" is as near to an emergency as "worst headache
ever": what makes the second one graver is the words beside the name.
"""

from __future__ import annotations

from collections.abc import Iterable

from engine.symptoms.ear.reading import words
from engine.symptoms.finding import Hit
from engine.symptoms.names import Symptom
from engine.written.word_set import word_set

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
