"""The words of a check-in by language: what each of them says."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum
from functools import cache


class Means(StrEnum):
    """What a word or phrase does to the figures around it."""

    LABEL = "label"  # names an answer
    SCORE = "score"  # says a score in words; `value` is the likely one
    CORRECTS = "corrects"  # between a figure and the one that stands in its stead
    VESSEL = "vessel"  # what is drunk from: its size is not known
    EATEN = "eaten"  # with what was eaten or came on top, by the piece
    LINK = "link"  # says nothing by itself: "is", "my", "this morning"
    ABOUT = "about"  # before a figure that is rounded
    BOUND = "bound"  # before a figure that is only a bound
    RANGE = "range"  # between the two ends of a range
    NOT = "not"  # denies what follows
    OTHERWISE = "otherwise"  # a wish, a plan, a limit: no report
    OTHER_DAY = "other-day"
    TODAY = "today"
    COUNTS_NOT = "counts-not"  # a number before it does not count it
    FINE = "fine"
    ON_TARGET = "on-target"
    YES = "yes"
    NO = "no"
    SKIP = "skip"  # after a label, or for the answer in `about`
    TRAINING = "training"  # `about` is how it went
    MANNERS = "manners"


@dataclass(frozen=True, slots=True)
class Meaning:
    """`about` is the answer's key, or the way the training went; `value` a score or a number."""

    means: Means
    about: str = ""
    value: float | None = None


_Table = dict[tuple[Means, str, float | None], str]

ENGLISH: _Table = {
    (Means.LABEL, "weight_kg", None): (
        "weight, wt, w, weigh, weighed, weighed in, weighing, weigh in, weighing in, bodyweight, "
        "body weight, bw, scale, scales, scale says, scales say, on the scale, on the scales, weights"
    ),
    (Means.LABEL, "fullness", None): "fullness, full, fulness, fullnes, fullness level, look, f",
    (Means.LABEL, "water_l", None): (
        "water, w, drank, drunk, drink, drinks, drinking, fluid, fluids, liquids, hydration, h2o, "
        "water intake, fluid intake, total drinks, wasser"
    ),
    (Means.LABEL, "sharpness", None): (
        "sharpness, sharp, sharpnes, definition, crispness, conditioning, s"
    ),
    (Means.LABEL, "carb_eaten_g", None): (
        "carbs, carb, carbohydrate, carbohydrates, cho, carbs eaten, carb intake, ate carbs"
    ),
    (Means.LABEL, "sleep_h", None): "sleep, slept, asleep, of sleep, hours sleep",
    (Means.SCORE, "fullness", 1): "completely flat, flat as a pancake, totally flat, pancake flat",
    (Means.SCORE, "fullness", 2): "very flat, super flat, really flat, so flat, empty, depleted",
    (
        Means.SCORE,
        "fullness",
        3,
    ): "flat, pretty flat, quite flat, fairly flat, deflated, rather flat",
    (Means.SCORE, "fullness", 4): (
        "a bit flat, bit flat, slightly flat, a little flat, little flat, kinda flat, flattish, "
        "not very full, not so full, not full"
    ),
    (Means.SCORE, "fullness", 5): "half full, medium full, so-so, middling",
    (Means.SCORE, "fullness", 6): "a bit full, fairly full, quite full, ok full",
    (Means.SCORE, "fullness", 7): "pretty full, nicely full, rather full, good and full",
    (Means.SCORE, "fullness", 8): (
        "very full, really full, super full, so full, round and full, full and round, round, pumped"
    ),
    (Means.SCORE, "fullness", 9): "bursting, popping, extremely full, full as can be, totally full",
    (Means.SCORE, "sharpness", 1): "very soft, very blurry, completely blurred, very blurred",
    (Means.SCORE, "sharpness", 2): (
        "soft, blurry, blurred, soft and blurry, blurry and soft, watery, smooth, hazy, smeared, "
        "not sharp, pretty soft, pretty blurry, quite soft"
    ),
    (Means.SCORE, "sharpness", 3): "a bit soft, a bit blurry, slightly soft, slightly blurred",
    (Means.SCORE, "sharpness", 4): "pretty sharp, quite sharp, tight, fairly sharp",
    (Means.SCORE, "sharpness", 5): "crisp, razor sharp, very sharp, super sharp, grainy, shredded",
    (Means.LINK, "", None): (
        "is, was, are, were, at, of, my, the, a, and, i, i'm, im, i've, ive, me, we, it's, its, it, "
        "this morning, am at, in total, total, altogether, day, all day, with, for, kind, level, "
        "reading, came in, had, have, be, being, feel, feeling, felt, feels, of water, all drinks, "
        "so far, up, plus, then, now, eaten, ate, got, sitting, score, says, showed, shows, say, "
        "number, numbers, check in, checkin, check-in, here, are my, also, as, in, again, all, only, "
        "same as yesterday, like yesterday, same as the day before, fuller, a bit fuller, bit fuller, "
        "managed, even, dead on"
    ),
    (Means.TODAY, "", None): "today, tonight, tomorrow, later",
    (Means.ABOUT, "", None): (
        "about, around, approx, approximately, roughly, ca, circa, maybe, probably, i think, "
        "think, i guess, guess, like, say, almost, nearly, some, something like, give or take, a good, "
        "just about, ish, just"
    ),
    (Means.BOUND, "", None): (
        "over, under, more than, less than, at least, at most, up to, above, below, just over, "
        "just under, almost no, hardly, barely, not even, only half"
    ),
    (Means.RANGE, "", None): "to, or, till",
    (Means.NOT, "", None): (
        "no, not, none, nothing, never, don't, dont, didn't, didnt, isn't, isnt, wasn't, wasnt, "
        "without, cannot, can't, cant, haven't, havent, couldn't, hasn't, won't, nor, neither"
    ),
    (Means.OTHERWISE, "", None): (
        "should, would, could, want, wanted, wanna, wish, goal, aim, aiming, supposed, need, needed, "
        "target, plan, planned, limit, if, when, until, may, might, max, minimum, usually, normally, "
        "usual, before, after, than, last week, last year, next, last time, coach said, told, said, "
        "other, sister, friend, mum, mom, dad, husband, wife, son, kid, dog, cat, lost, gained, down, "
        "increase, lower, raise, set, change, another, extra, left, to go, still to go, remaining, "
        "still to drink"
    ),
    (Means.OTHER_DAY, "", None): (
        "yesterday, last night, the day before, day before, on monday, monday, tuesday, wednesday, "
        "thursday, friday, saturday, sunday, last"
    ),
    (Means.COUNTS_NOT, "", None): (
        "but, because, though, although, however, very, really, pretty, quite, so, too, bit, a bit, "
        "little, a little, still, since, tired, sore, bloated, dizzy, hungry, thirsty, exhausted, "
        "woke, cold, nauseous, stressed, went, trained, training, no, not, didn't, couldn't, today, "
        "headache, cramps, cramping, moody, starving, knackered, sick, lightheaded, light-headed"
    ),
    (Means.FINE, "", None): (
        "fine, all fine, all good, all ok, all okay, everything fine, everything good, everything ok, "
        "everything's fine, everything's good, everything is fine, everything is good, good, ok, okay, "
        "feeling fine, feel fine, feeling good, feel good, feeling ok, i'm fine, im fine, no problems, "
        "no complaints, nothing else, all well, no issues"
    ),
    (Means.ON_TARGET, "", None): (
        "on target, carbs on target, carb on target, hit target, hit my target, hit the target, "
        "carbs as planned, on plan, carbs hit, hit my carbs, hit carbs, carbs on plan, "
        "target hit, carbs like planned, "
        "carbs on the dot"
    ),
    (Means.YES, "", None): "yes, yeah, yep, y, yup, sure",
    (Means.NO, "", None): "no, nope, nah, n",
    (Means.CORRECTS, "", None): (
        "no, nope, sorry, i mean, i meant, correction, make that, scratch that, actually, no wait, "
        "wait no, no sorry, sorry no, wait, oops, or rather"
    ),
    (Means.VESSEL, "", None): (
        "glass, glasses, glasses of water, cup, cups, bottle, bottles, mugs, shaker, shakers, "
        "big glasses, bottles of water, flasks, jugs"
    ),
    (Means.EATEN, "", None): "ate, had, eaten, plus, extra, another, snacked",
    (Means.SKIP, "", None): (
        "skip, skipped, skipping, unknown, na, pass, no idea, don't know, dont know, "
        "not sure, not measured, didn't measure, missing, dunno, can't say, don't have, dont have, "
        "didn't count, didnt count, not counted, didn't track, didnt track, not tracked, haven't got"
    ),
    (Means.SKIP, "weight_kg", None): (
        "no scale, no scales, no scale today, no scales today, without scale, without a scale, "
        "without scales, scale broken, scales broken, scale is broken, scale's broken, broken scale, "
        "scale broke, scale died, scale is dead, no weight, no weight today, didn't weigh, "
        "didnt weigh, did not weigh, couldn't weigh, could not weigh, can't weigh, cannot weigh, "
        "not weighed, haven't weighed, havent weighed, forgot to weigh, no weigh in, no weigh-in, "
        "didn't weigh myself, forgot to weigh myself, couldn't weigh myself, don't have a scale, "
        "dont have a scale, no scale here, scale empty, scale not working, scale isn't working, "
        "away from my scale, don't have my scale, no access to a scale, haven't got a scale, "
        "scale at home, left my scale at home, left the scale at home, scale in the suitcase"
    ),
    (Means.SKIP, "water_l", None): (
        "no idea what i drank, no idea how much i drank, don't know what i drank, "
        "don't know how much i drank, didn't measure water, didn't track water, no water figure, "
        "not sure what i drank, not sure how much i drank, didn't count water, no water number, "
        "forgot what i drank, forgot how much i drank, lost track of water, didn't measure my water, "
        "forgot to count water, forgot to count my water, forgot to count the water, "
        "no idea about water, "
        "no idea about the water"
    ),
    (Means.SKIP, "fullness", None): (
        "no fullness, don't know fullness, can't judge fullness, no idea about the look, "
        "no idea about fullness"
    ),
    (Means.SKIP, "sharpness", None): "no sharpness, can't judge sharpness, no mirror",
    (Means.SKIP, "carb_eaten_g", None): (
        "didn't track, didn't track carbs, didn't count carbs, no idea of carbs, don't know my carbs, "
        "don't know carbs, carbs not counted, didn't count my carbs"
    ),
    (Means.TRAINING, "as-planned", None): (
        "training done, trained, training as planned, trained as planned, session done, workout done, "
        "session as planned, did my session, did the session, gym done, all training done, "
        "training complete, training completed, training ok, did my training, did the training, "
        "training and cardio done, session and cardio done, cardio done, did my cardio, "
        "workout as planned, as planned training, trained as per plan, training was done, "
        "did all my training, training yes, trained fully, did my workout"
    ),
    (Means.TRAINING, "less", None): (
        "less training, trained less, training less, shorter session, short session, "
        "cut training short, cut it short, cut the session short, skipped cardio, no cardio, "
        "missed cardio, cardio skipped, half the session, half session, did half the session, "
        "did less, didn't do cardio, did not do cardio, skipped my cardio, missed my cardio, "
        "trained but skipped cardio, training cut short, session cut short, less cardio"
    ),
    (Means.TRAINING, "more", None): (
        "more training, trained more, extra session, extra cardio, extra training, longer session, "
        "did more, more cardio, training more, trained twice, double session, did extra cardio, "
        "did an extra session, trained longer"
    ),
    (Means.TRAINING, "none", None): (
        "no gym, no training, skipped training, skipped the gym, skipped gym, missed training, "
        "missed the gym, missed gym, missed my session, skipped my session, skipped the session, "
        "didn't train, didnt train, did not train, no session, no workout, training skipped, "
        "training none, training no, missed my workout, skipped my workout, training missed, "
        "session missed, session skipped, couldn't train, didn't go to the gym, didn't make the gym, "
        "skipped training and cardio, missed the session, did nothing, haven't trained, gym skipped"
    ),
    (Means.MANNERS, "", None): (
        "thanks, thank you, cheers, coach, good morning, morning, hi, hello, hey, please, mate, "
        "morning coach, hope you're well, thx, ta, hiya"
    ),
}
GERMAN: _Table = {
    (Means.LABEL, "weight_kg", None): (
        "gewicht, körpergewicht, koerpergewicht, kg gewicht, wiege, wiegt, gewogen, waage, "
        "waage sagt, waage zeigt, auf der waage, gew, die waage, die waage sagt, die waage zeigt, "
        "gwicht, waag, auf der anzeige, waage vom hotel"
    ),
    (
        Means.LABEL,
        "fullness",
        None,
    ): ("fülle, fuelle, füllung, fuellung, voll, prall, vollheit, füllegrad, fülle grad, optik"),
    (Means.LABEL, "water_l", None): (
        "wasser, getrunken, trinken, trinkmenge, trank, flüssigkeit, fluessigkeit, getränke"
    ),
    (Means.LABEL, "sharpness", None): "schärfe, schaerfe, scharf, definition, härte, haerte, hart",
    (Means.LABEL, "carb_eaten_g", None): (
        "kh, khs, kohlenhydrate, kohlenhydrat, kohlehydrate, carbs, kh gegessen"
    ),
    (Means.LABEL, "sleep_h", None): "schlaf, geschlafen, schlief",
    (
        Means.SCORE,
        "fullness",
        1,
    ): "total flach, völlig flach, total platt, ganz flach, komplett leer",
    (Means.SCORE, "fullness", 2): "sehr flach, richtig flach, sehr platt, leer, richtig platt",
    (Means.SCORE, "fullness", 3): (
        "flach, ziemlich flach, platt, ziemlich platt, ganz schön platt, ganz schön flach, recht flach"
    ),
    (Means.SCORE, "fullness", 4): (
        "etwas flach, bisschen flach, ein bisschen flach, leicht flach, eher flach, nicht voll, "
        "nicht sehr voll, nicht so voll, nicht ganz voll"
    ),
    (Means.SCORE, "fullness", 5): "mittelvoll, mittel voll, halbvoll, halb voll, mittel",
    (Means.SCORE, "fullness", 6): "etwas voll, halbwegs voll, einigermaßen voll, ganz gut voll",
    (Means.SCORE, "fullness", 7): "ziemlich voll, schön voll, recht voll, gut voll, eher voll",
    (Means.SCORE, "fullness", 8): (
        "sehr voll, richtig voll, rund und voll, voll und rund, rund, schön rund, prall und rund"
    ),
    (Means.SCORE, "fullness", 9): "zum platzen, extrem voll, total voll, randvoll, maximal voll",
    (Means.SCORE, "sharpness", 1): "sehr weich, sehr verschwommen, total verschwommen",
    (Means.SCORE, "sharpness", 2): (
        "weich, verschwommen, weich und verschwommen, verschwommen und weich, wässrig, unscharf, "
        "schwammig, nicht scharf, ziemlich weich, matschig, ziemlich verschwommen"
    ),
    (Means.SCORE, "sharpness", 3): "etwas weich, leicht weich, etwas verschwommen, bisschen weich",
    (Means.SCORE, "sharpness", 4): "ziemlich scharf, recht scharf, ziemlich hart, trocken",
    (
        Means.SCORE,
        "sharpness",
        5,
    ): "knackig, sehr scharf, knackscharf, knallhart, messerscharf, sehr hart",
    (Means.LINK, "", None): (
        "ist, bei, war, mein, meine, und, ich, bin, hab, habe, am, von, der, die, das, insgesamt, "
        "heute, heute morgen, heute früh, heut, heut früh, heut morgen, hüt, hatte, intus, "
        "glatt, gefühlt, ne, "
        "fühle mich, fühl mich, gefühl, gegessen, sind, es, zeigt, "
        "sagt, mit, dazu, den, grad, stand, check in, checkin, check-in, mich, auf, beim, gerade, "
        "jetzt, wie gestern, so wie gestern, gleich wie gestern, wieder, voller, bisschen voller, "
        "ein bisschen voller, etwas voller, geschafft, drin, alle, nur, plus, sonst nichts, sonst nix, "
        "sonst weiß ich nix, sonst weiß ich nichts, also"
    ),
    (Means.TODAY, "", None): "heute, heut, heute abend, morgen, später, übermorgen",
    (Means.ABOUT, "", None): (
        "etwa, ungefähr, ungefaehr, circa, ca, zirka, rund, knapp, gut, fast, so um die, um die, so, "
        "vielleicht, so ca, so circa, glaub, glaube ich, glaube, wohl, schätze, ungef, so etwa, "
        "so ungefähr, so rund"
    ),
    (Means.BOUND, "", None): (
        "über, ueber, unter, mehr als, weniger als, mindestens, höchstens, bis zu, maximal, "
        "kaum, nicht mal, wenigstens"
    ),
    (Means.RANGE, "", None): "bis, oder",
    (Means.NOT, "", None): (
        "nicht, ned, net, kein, keine, keinen, keiner, nie, ohne, nix, nichts, nein, weder, noch"
    ),
    (Means.OTHERWISE, "", None): (
        "sollte, soll, sollen, will, wollte, möchte, würde, könnte, kann, darf, ziel, zielgewicht, "
        "plan, geplant, limit, wenn, falls, normalerweise, sonst, vorher, nachher, als, letzte woche, "
        "letztes mal, letztes jahr, brauche, muss, wäre, hätte, wunschgewicht, grenze, mutter, "
        "freundin, freund, schwester, bruder, mann, frau, sohn, tochter, kind, hund, katze, "
        "abgenommen, zugenommen, weitere, noch, noch offen, offen, übrig"
    ),
    (Means.OTHER_DAY, "", None): (
        "gestern, vorgestern, letzte nacht, montag, dienstag, mittwoch, donnerstag, freitag, samstag, "
        "sonntag, gestern abend"
    ),
    (Means.COUNTS_NOT, "", None): (
        "aber, weil, sehr, echt, ziemlich, ganz, etwas, bisschen, ein bisschen, schlecht, schwindelig, "
        "müde, muede, hungrig, durstig, gebläht, aufgebläht, kaputt, erschöpft, leider, auch, nicht, "
        "kein, keine, fühle, fühl, trotzdem, immer, kopfschmerzen, krämpfe, mir, trainiert, übel"
    ),
    (Means.FINE, "", None): (
        "alles gut, alles ok, alles okay, alles bestens, alles fein, alles super, alles klar, "
        "alles prima, gut, geht gut, mir gut, geht mir gut, mir geht's gut, mir gehts gut, passt, "
        "alles passt, passt alles, sonst alles gut, sonst gut, bestens, keine beschwerden, "
        "sonst nichts, alles in ordnung, alles top, super, prima, sonst alles ok"
    ),
    (Means.ON_TARGET, "", None): (
        "im ziel, auf ziel, nach plan, wie geplant, kh im ziel, kh auf ziel, kh nach plan, "
        "kh wie geplant, ziel getroffen, ziel erreicht, kohlenhydrate nach plan, "
        "kohlenhydrate im ziel, kohlenhydrate wie geplant, carbs im ziel, carbs nach plan, "
        "carbs wie geplant, kh erreicht, kh ziel erreicht, kh getroffen, ziel ja, zil ja, am ziel"
    ),
    (Means.YES, "", None): "ja, jep, jo, jawohl",
    (Means.NO, "", None): "nein, nee, nö",
    (Means.CORRECTS, "", None): (
        "nein, nee, nö, quatsch, ich meine, ich meinte, korrektur, vielmehr, besser gesagt, ne, ups, "
        "nein quatsch, nein sorry, sorry nein, nein warte, halt nein, moment"
    ),
    (Means.VESSEL, "", None): (
        "glas, gläser, glaeser, gläser wasser, becher, tassen, flasche, flaschen, krüge, "
        "flaschen wasser, große gläser"
    ),
    (Means.EATEN, "", None): "gegessen, aß, ass, plus, dazu, extra, gefuttert",
    (Means.SKIP, "", None): (
        "überspringen, ueberspringen, übersprungen, auslassen, weglassen, weiß nicht, weiss nicht, "
        "weiß ich nicht, weiss ich nicht, keine ahnung, unbekannt, fehlt, nicht gemessen, egal, "
        "hab ich nicht, habe ich nicht, hab ich keins, nicht gezählt, nicht getrackt, nicht notiert, "
        "kenne ich nicht, kenn ich nicht"
    ),
    (Means.SKIP, "weight_kg", None): (
        "keine waage, keine waage heute, keine waage da, keine waage dabei, ohne waage, "
        "heute keine waage, waage kaputt, waage ist kaputt, die waage ist kaputt, waage defekt, "
        "waage geht nicht, nicht gewogen, mich nicht gewogen, kein gewicht, kein gewicht heute, "
        "konnte mich nicht wiegen, "
        "konnte nicht wiegen, nicht wiegen können, gewicht vergessen, wiegen vergessen, "
        "vergessen zu wiegen, waage vergessen, hab keine waage, habe keine waage, waage leer, "
        "waage streikt, waage tot, hab mich nicht gewogen, habe mich nicht gewogen, "
        "hatte keine waage, waage funktioniert nicht, hab keine waage hier, hier keine waage, "
        "waage im koffer, waage zuhause, waage zu hause, waage daheim"
    ),
    (Means.SKIP, "water_l", None): (
        "keine ahnung wie viel ich getrunken habe, keine ahnung was ich getrunken habe, "
        "weiß nicht wie viel ich getrunken habe, weiß nicht was ich getrunken habe, "
        "wasser nicht gemessen, wasser nicht gezählt, trinken nicht gezählt, trinkmenge unbekannt, "
        "weiß nicht mehr wie viel ich getrunken habe, nicht gezählt was ich getrunken habe, "
        "wasser vergessen zu zählen, vergessen wasser zu zählen, wasser vergessen, "
        "trinken vergessen zu zählen"
    ),
    (Means.SKIP, "fullness", None): (
        "keine fülle, kein gefühl für die fülle, kein gefühl für fülle, fülle ned gschaut, "
        "fülle nicht geschaut"
    ),
    (Means.SKIP, "sharpness", None): "keine definition, kein spiegel",
    (Means.SKIP, "carb_eaten_g", None): (
        "kh nicht gezählt, nicht getrackt, kh nicht getrackt, kohlenhydrate nicht gezählt, "
        "nicht mitgezählt, kh weiß ich nicht"
    ),
    (Means.TRAINING, "as-planned", None): (
        "training wie geplant, trainiert, training gemacht, training nach plan, training erledigt, "
        "wie geplant trainiert, einheit gemacht, training war wie geplant, training ok, training ja, "
        "training und cardio gemacht, cardio gemacht, training absolviert, training passt, "
        "einheit erledigt, nach plan trainiert, training durchgezogen, cardio erledigt"
    ),
    (Means.TRAINING, "less", None): (
        "weniger trainiert, weniger training, training kürzer, kürzer trainiert, training verkürzt, "
        "cardio ausgelassen, kein cardio, ohne cardio, cardio ausgefallen, cardio nicht gemacht, "
        "training abgebrochen, halbes training, nur halbes training, cardio geschwänzt, "
        "weniger cardio, cardio weggelassen, nur die hälfte trainiert"
    ),
    (Means.TRAINING, "more", None): (
        "mehr trainiert, mehr training, länger trainiert, extra training, extra cardio, "
        "zusätzliches training, mehr cardio, zusätzliches cardio, extra einheit, doppelt trainiert, "
        "training länger"
    ),
    (Means.TRAINING, "none", None): (
        "kein training, training ausgefallen, nicht trainiert, training ausgelassen, "
        "training fiel aus, training ist ausgefallen, kein gym, nicht im gym, keine einheit, "
        "gar nicht trainiert, training nicht gemacht, training nein, training geschwänzt, "
        "training weggelassen, hab nicht trainiert, habe nicht trainiert, training versäumt, "
        "training verpasst, nicht beim training, kein sport"
    ),
    (Means.MANNERS, "", None): (
        "danke, dankeschön, merci, guten morgen, morgen, moin, servus, hallo, lg, vg, hey, coach, hi, "
        "grüße, gruß, liebe grüße, bitte, guten tag, morgen coach, na"
    ),
}
_BESIDE_ENGLISH = {"de": GERMAN}


@cache
def phrases(language: str) -> dict[tuple[str, ...], tuple[Meaning, ...]]:
    """What each phrase (as its words) may mean: English, and this language (ISO 639-1) beside it."""
    found: dict[tuple[str, ...], tuple[Meaning, ...]] = {}
    other = _BESIDE_ENGLISH.get(language, {})
    for table in (other, ENGLISH):
        for (means, about, value), written in table.items():
            for phrase in written.split(", "):
                words = tuple(phrase.split())
                found[words] = (*found.get(words, ()), Meaning(means, about, value))
    return found


@cache
def longest_phrase(language: str) -> int:
    return max(len(words) for words in phrases(language))
