"""What a day's drinks are told with: how many of what, how large, in which part of the day.

A line is cut into pieces of one letter each, so that `drinks` can read them by a small grammar.
"""

# ruff: noqa: E501 - a pattern stays on one line
from __future__ import annotations

import re
from typing import NamedTuple

from engine.written.late import Late
from engine.written.oneline.tokens.numbers import NUMBER_WORDS, SMALL_NUMBERS, goes_on, spelt_at

_OVER = r"(?![^\W_]|')"
_VESSEL_NOUNS = (
    r"bottles?|flaschen?|flaschn|flaschln|flascherl|fläschchen|glass(?:es)?|glas|gläsern?|glaeser|cups?|mugs?|shakers?|flasks?|jugs?|cans?|"
    r"tumblers?|cartons?|dosen?|pullen?|kannen?|krüge?|krug|karaffen?|bidons?|becher|humpen|tassen?|"
    r"buddeln?|(?:trink|wasser|halbe )flaschen?|canteens?|beakers?|lots|refills?|servings?|fills?|füllungen|thermos|kanister|pitchers?|trinkbecher"
)
_PART_NOUNS = (
    r"mornings?|midday|noon|lunch(?:time)?|afternoons?|evenings?|nights?|bed(?:time)?|breakfast|brekkie|"
    r"dinner|tea(?:time)?|supper|work|gym|training|workout|cardio|session|waking(?: up)?|wake[- ]?up|"
    r"getting up|meals?|day|school|uni|class|office|home|drive|way(?: home)?|walk|shift|run|posing|"
    r"train|car|desk|sleep|a\.m\.|p\.m\.|am|pm"
)
_PART_NOUNS_DE = (
    r"training|gym|sport|arbeit|arbeiten|büro|schule|uni|essen|frühstück(?:en)?|mittag(?:essen)?|"
    r"abendessen|abend|schlafen(?:gehen)?|bett|aufstehen|cardio|abends|mittags|nacht|vormittag|"
    r"nachmittag|morgen|job|workout|fahrt|weg|tag|feierabend|dienst|schicht|posing|kraft\w*|laufen"
)
_HOUR = r"\d{1,2}(?:[:.]\d\d)?(?: ?(?:[ap]\.?m\b\.?|uhr|o'?clock))"

#: A piece by its letter; the first that fits counts.
_PIECES: tuple[tuple[str, str], ...] = (
    (".", r"\([-+]"),  # by how much more it was
    # what was drunk is told apart from what is left, of a plan, or of another day
    ("!", rf"(?:this morning|heute früh|heute morgen|today|heute?|heut|so far|bisher|bis jetzt|already|schon){_OVER}"),
    ("-", rf"(?:left(?: over)?|übrig|short|less|weniger|missing|zu wenig|under|to go|remaining|offen|unter|fehlen|mehr|more than){_OVER}"),
    ("t", rf"(?:all in all|in total|in all|total(?:ling|led)?|altogether|overall|insgesamt|zusammen|in summe|summe|gesamt|so|makes|macht|ergibt|that's|thats|that is|that makes|das sind|also){_OVER}|(?:(?<![^\W\d_])|(?<=\dl))="),
    ("i", rf"(?:davon|darunter|of which|of that|of it|of those|including|incl\.?|inklusive|inkl\.?|dabei (?=\d)){_OVER}"),
    ("e", rf"(?:each of|with each|with every|je(?= (?:ein|eine|einen|\d)\b[^,;]* (?:zu[mr]?|am|morgens|mittags|früh)\b)|jeweils|per){_OVER}"),
    ("p", rf"(?:in|at|by|before|after|until|till?|up to|during|with|for|on|pre|post|from|over|through(?:out)?|around|between)[ -](?:the |my |a |all )*(?:rest of the )?(?:early |late |mid-?)?(?:{_PART_NOUNS}){_OVER}"
          rf"|(?:at|by|before|after|until|till?|bis|um|vor|nach|ab)(?: um| ca\.?| etwa)? {_HOUR}{_OVER}"
          rf"|(?:vorm|nachm|vor|nach|bei|beim|im|in|zum|zur|während|auf|aufs|bis|bis zum|ab|am|übern?|über den|unterm?|vorn|rund ums)(?: (?:dem|der|den|die|das|de|m|n|nem))?(?: ganzen)? (?:{_PART_NOUNS_DE}){_OVER}"
          rf"|(?:am|pm|a\.m\.|p\.m\.|mornings?|noon|midday|afternoons?|evenings?|nights?|bedtime|breakfast|lunch(?:time)?|dinner|supper|gym|work|training|workout|cardio|overnight|early|late|during|after(?:wards)?|before|pre|post|beforehand)(?: the| my)?{_OVER}"
          rf"|(?:in d(?:er|a|r) früh|auf d'nacht|auf die nacht|z'?mittag|z'?nacht|vormittag|nachmittag|morgens|früh|vormittags|mittags|mittag|nachmittags|abends|abend|nachts|tagsüber|untertags|vorher|davor|dabei|danach|nachher|vor(?= und)|nach(?= und)|frühstück|mittagessen|abendessen|mid[- ]?(?:morning|afternoon)|hinterher|zwischendurch|daheim|zuhause|zu hause|unterwegs|frühmorgens|spätabends){_OVER}"),
    ("+", rf"(?:and then|und dann|und noch|und|and|plus|then|dann|nochmals?|noch(?: mal)?|zusätzlich|(?:an )?extra|later|später|dazu|on top|additional){_OVER}|[+&]"),
    ("+", r"\. (?:oh,? |ach,? )?(?:and|plus|und|dazu|then|dann)(?![^\W_])"),
    (",", r",(?!\d)"),
    # "a third" of two bottles is one more bottle
    ("f", rf"of (?:another(?: one)?|it|that(?: one)?|(?:a|the|my) (?:third|fourth|fifth|second|next|last|other)(?: one)?){_OVER}|(?:von )?(?:der|einer) (?:dritten|vierten|nächsten|zweiten){_OVER}"),
    ("m", rf"(?:twice|thrice|once|(?P<times>{NUMBER_WORDS}|\d{{1,2}}|ein)[ -]?(?:mal|times)){_OVER}"),
    ("x", rf"[x×*](?![^\W\d_])|(?:x|mal|times){_OVER}"),
    ("u", rf"(?P<unit>millilit(?:re|er)s?|mls?|centilit(?:re|er)s?|zentiliter|cl|decilit(?:re|er)s?|dezi(?:liter)?|dl|lit(?:re|er)[sn]?|ltrs?|lts?|l|fl\.? ?oz|fluid ounces?|ounces?|unzen?|ozs?|gallon(?:en|es|e|s)?|gals?|quarts?|qts?|pints?|pts?|maß|moaß|massl?){_OVER}\.?(?!\d)"),
    ("s", rf"(?P<sized>halbliter|liter)(?:(?<=halbliter) )?-?(?:{_VESSEL_NOUNS}){_OVER}"),
    ("v", rf"(?:(?:big|large|small|full|whole|little|normal|gro(?:ß|ss)en?|kleinen?|ganzen?|vollen?|normalen?) )*(?:{_VESSEL_NOUNS}){_OVER}|(?:(?:big|large|small|little|gro(?:ß|ss)e[rn]?|kleine[rn]?|normale[rn]?)(?: ones?)?){_OVER}(?! ?\d)"),
    ("g", rf"ganze[nrs]?{_OVER}(?! ?(?:lit|l\b|fla|maß))"),
    ("o", rf"(?:coffees?|kaffees?|espress[oi]s?|teas?|tees?|colas?|cokes?|diet coke|juices?|säfte?|saft|milk|milch|squash|beers?|biere?|wines?|wein|shakes?|electrolytes?|elektrolyten?|soda|lemonade|limo\w*|eistee|latt?es?|cappuccin[oi]s?|monsters?|energy drinks?|schorle|apfelschorle|fanta|bouillon|broth|brühe|soup|suppe|cordial|red bulls?|smoothies?)(?: light| zero)?{_OVER}"),
    ("w", rf"(?:of )?(?:water|wasser|wasser:|h2o|still(?:es)?|sparkling|sprudel|plain|tap|leitungswasser|mineral(?:wasser)?|drank|drunk|drink(?:ing)?|getrunken|trinken|trank|intake|trinkmenge|fluids?|hydration|flüssigkeit|watr|wtr|finished|downed|emptied|leer(?: gemacht| getrunken)?|geleert){_OVER}|[💧💦🚰]|w(?=[:=]? ?\d)"),
    ("h", r"(?:(?:an?|one|ein(?:e[nr]?)?|n|nen|ne) )?(?P<half>half|halbe?[rsn]?)(?: (?:of )?an?(?= ))?(?![^\W_]|')"
          r"|(?P<three>three[ -]quarters?|drei ?viertel)(?: of an?| of)?(?![^\W_]|')"
          r"|(?:an? |one |ein(?:en)? |nen? )(?P<quarter>quarter|viertel)(?: of an?)?(?![^\W_]|')"
          r"|(?P<fourth>viertel)(?! (?:vor|nach|über))(?![^\W_])"
          r"|(?P<part>[13]/[24])(?: of an?| of)?(?![^\W_l]|[.,]?\d)"),
    ("f", rf"(?:of|the|my|meine[rn]?|die|das|den|der|à|á|@|zu je|zu|je|mit je|mit|with|at|about|around|roughly|circa|ca\.?|etwa|ungefähr|rund|gut|knapp|nearly|almost|just|nur|only|fast|up|ganze[nrs]?|yesterday|gestern|i had|had|i|hab|habe|ich|es|waren|war|was|were|each|empty|refilled|davor|stück|erst|zuerst|first|more|got|down|(?:big|large|small|gro(?:ß|ss)en?|kleinen?)(?= ?\d)|in(?= (?:before|by|after|during|until))){_OVER}|[()~:]"),
)  # fmt: skip
_PIECE = Late("|".join(f"(?P<k{at}>{written})" for at, (_, written) in enumerate(_PIECES)))
_DIGITS = Late(r"(?:\d+(?:[.,]\d+)?|[.,]\d+)")
_SIZE_NOUN = Late(rf"(?:er|s)[ -]?(?:{_VESSEL_NOUNS})?{_OVER}")
_TIGHT = Late(r"-(?=[^\W\d_])")
_ARTICLE = Late(
    rf"(?:another|a further|weitere[nr]?|zusätzlicher|an?|one|eine[nmrs]?|ein|n|nen|ne|a){_OVER}"
)
_WORD = Late(r"[^\W\d_]+(?:['-][^\W\d_]+)*|.")
_NO_AMOUNT = Late(r"[/:'-]\d|[.,]\d|%|°| ?/")
_ONE_MORE = frozenset({"another", "a further", "weitere", "weiteren", "weiterer", "zusätzlicher"})
_SURE = frozenset("!mshpv")  # what no number in words begins otherwise
_SHARES = {"half": 0.5, "three": 0.75, "quarter": 0.25, "fourth": 0.25}
_ONCE = {"once": 1, "twice": 2, "thrice": 3, "ein": 1}

#: A line without any of these tells no sum and no product.
_MAY_BE_COUNTED = Late(
    r"[x×*+=&]|mal(?![^\W_])|times|twice|thrice|\b(?:and|und|plus|then|dann|an?other|noch|total|insgesamt)(?![^\W_])"
    rf"|hal[bf]|quarter|viertel|bottle|(?:{_VESSEL_NOUNS}){_OVER}|\d(?:er|s)(?![^\W_])"
    r"|morn|morg|noon|mittag|even|abend|night|nacht|früh|lunch|gym|training|work|arbeit|breakfast|\b[ap]m\b|davon"
    rf"|\b(?:litres?|liters?|l) (?:\d|{NUMBER_WORDS})|lit(?:re|er) [^\W\d_]"
    r"|before|after|danach|dabei|during|dinner|supper|\bbed|home|office|essen|schlafen|büro"
    r"|\d ?(?:l|ml|oz|lit(?:er|re)s?)(?![^\W_]).*\d ?(?:l|ml|oz|lit(?:er|re)s?)(?![^\W_])"
)


class Piece(NamedTuple):
    """`kind` is the letter of `_PIECES`, or n (a number), a (an article), "." (anything else)."""

    kind: str
    start: int
    end: int
    text: str
    value: float = 0.0


def may_be_counted(line: str) -> bool:
    return _MAY_BE_COUNTED.search(line) is not None


def pieces_of(line: str, language: str) -> list[Piece]:
    """The pieces of a line, in order; articles and small words stay in, for who needs their places."""
    found: list[Piece] = []
    at = 0
    while at < len(line):
        before = line[at - 1] if at else " "
        if line[at] == " " or (before.isalnum() and _TIGHT.match(line, at)):
            at += 1
            continue
        if line[at].isdecimal() or (line[at] in ".," and not before.isalnum()):
            piece = _number(line, at, language)
        elif before.isalpha() and line[at].isalpha():
            piece = _stop(line, at)
        else:
            piece = _word(line, at, language)
        if piece.text in _ONE_MORE:
            found.append(piece._replace(kind="+", end=piece.start))
        found.append(piece)
        at = piece.end
    return found


def _stop(line: str, at: int) -> Piece:
    match = _WORD.match(line, at)
    end = match.end() if match else at + 1
    return Piece(".", at, end, line[at:end])


def _number(line: str, at: int, language: str) -> Piece:
    before, share = line[at - 1 : at], _PIECE.match(line, at)
    if share and share["part"] and not before.isalnum():
        top, of = share["part"].split("/")
        return Piece("h", at, share.end(), share[0], int(top) / int(of))
    match = _DIGITS.match(line, at)
    if match is None:
        return Piece("." if line[at] == "." else ",", at, at + 1, line[at])
    number, end = match[0], match.end()
    glued = (before.isalnum() and before != "x") or (before and before in "./-'")
    glued = glued and not (before == "w" and not line[at - 2 : at - 1].isalnum())
    if glued or _NO_AMOUNT.match(line, end):
        return Piece(".", at, end, line[at:end])
    if share and share["times"]:
        return Piece("m", at, share.end(), share[0], float(share["times"]))
    if longer := goes_on(line, number, end, language):
        number, end = longer
    value = float(number.replace(",", "."))
    if (size := _SIZE_NOUN.match(line, end)) and (value % 1 or value >= 100 or value in (1, 2)):
        litres = value if value < 10 else value / 1000
        return Piece("s", at, size.end(), line[at : size.end()], litres)
    return Piece("n", at, end, line[at:end], value)


def _word(line: str, at: int, language: str) -> Piece:
    found = _PIECE.match(line, at)
    letter = _PIECES[int(str(found.lastgroup)[1:])][0] if found else ""
    spelt = spelt_at(line, at, language) if line[at].isalpha() and letter not in _SURE else None
    if spelt:
        return Piece("n", at, spelt[1], line[at : spelt[1]], float(spelt[0]))
    if found:
        return Piece(letter, at, found.end(), found[0], _value(found))
    if article := _ARTICLE.match(line, at):
        return Piece("a", at, article.end(), article[0], 1.0)
    return _stop(line, at)


def _value(found: re.Match[str]) -> float:
    if found["times"]:
        many = found["times"]
        return float(_ONCE.get(many) or SMALL_NUMBERS.get(many) or many)
    if found["sized"]:
        return 0.5 if found["sized"] == "halbliter" else 1.0
    return next(
        (share for name, share in _SHARES.items() if found[name]), float(_ONCE.get(found[0], 0))
    )
