"""What new athletes type in place of a bare answer: "born 1996", "I'm a woman", "about 165 cm",
"310 carbs, 140 protein, 55 fat, 3.5 l".
"""

from __future__ import annotations

from bot.dialogue.flow import YES, said
from bot.words.languages import listed, mark
from engine.written.late import Late

AGREED = mark(
    "i agree, agree, agreed, i accept, accepted, i understand and agree, understood and agreed, "
    "i do, i do agree, i understand and i agree"
)
SEX_SAID = {
    "female": mark("female, f, woman, a woman, girl, w, lady, i am female, i'm female"),
    "male": mark("male, m, man, a man, guy, a guy, i am male, i'm male"),
}
#: Words before the one that counts: "I'm a woman", "ok, I agree".
_LEADS = mark("ok, okay, sure, i'm, i am, im, a, yes, well")
#: What stands before or behind a figure of the ordinary day, by what it is of.
OF_THE_DAY = {
    "carb_g": mark("carbs, carb, carbohydrates, carbohydrate, c"),
    "protein_g": mark("protein, proteins, p"),
    "fat_g": mark("fat, fats, f"),
    "water_l": mark("water, to drink, drinks, fluid, fluids, drinking"),
}
_OPENING = Late(r"^[\W_]+|[\W_]+$")
_WORDS = Late(r"[^\w']+")
_YEAR = Late(
    r"\D{0,24}(?:\d{1,2}[./-] ?\d{1,2}[./-] ?|\d{1,2}\.? \D{3,10} )?"
    r"(?P<year>(?:19|20)\d\d)(?:-\d\d-\d\d)?\D{0,3}"
)
_SHORT_YEAR = Late(
    r"(?:.*\b(?:in|of|from|year|von|jahrgang|jahr|aus)|born) ?['’]?(?P<year>\d\d)\D{0,2}"
)
_FIGURE_OR_WORD = Late(
    r"(?P<figure>\d[\d.,]*)(?:\s*(?:(?:us |imp )?fl\.? ?oz|grams?|gramm|g|ml|"
    r"lit(?:er|re)s?|l)(?![^\W\d_]))?|(?P<word>[^\W\d_]+)"
)
_OF_DRINK = Late(r"(?:l|oz|lit(?:er|re)s?)$")


def _lean(text: str, leads: str) -> str:
    """The words without such ones before them."""
    words = _WORDS.sub(" ", text.casefold()).split()
    beside = listed(leads)
    while len(words) > 1 and words[0] in beside:
        words.pop(0)
    return " ".join(words)


def agrees(text: str) -> bool:
    """Whether somebody says, in so many words, that they agree."""
    plain = _lean(text, _LEADS)
    return said(plain, AGREED) or (plain != text.strip().casefold() and said(plain, YES))


def sex(text: str) -> str:
    """ "female", "male", or "" where neither is said."""
    plain, whole = _lean(text, _LEADS), _OPENING.sub("", text.casefold())
    found = [one for one, words in SEX_SAID.items() if said(plain, words) or said(whole, words)]
    return found[0] if len(found) == 1 else ""


def birth_year(text: str, low: int, high: int) -> str:
    """The figures of a year within words or a date ("born 1996", "12.03.1996", "von 96"); "" where
    there is none for certain.
    """
    plain = " ".join(text.casefold().split())
    if "?" in plain:
        return ""
    if found := _YEAR.fullmatch(plain):
        return found["year"]
    if found := _SHORT_YEAR.fullmatch(plain):
        years = [c * 100 + int(found["year"]) for c in (19, 20)]
        meant = [year for year in years if low <= year <= high]
        return str(meant[0]) if len(meant) == 1 else ""
    return ""


def day_by_name(text: str) -> dict[str, str]:
    """Figures of the ordinary day by what is named beside each ("310 carbs", "carbs: 310"); empty where
    not every figure is named, or one twice.
    """
    named = {word: key for key, words in OF_THE_DAY.items() for word in listed(words)}
    parts = list(_FIGURE_OR_WORD.finditer(text.casefold()))
    told: list[tuple[str, str]] = []  # ("figure", "310 g") or ("name", "carb_g")
    for part in parts:
        if part["figure"]:
            told.append(("figure", part[0].strip().rstrip(",.")))
        elif part["word"] in named:
            told.append(("name", named[part["word"]]))
    kinds = [kind for kind, _ in told]
    figures = [value for kind, value in told if kind == "figure"]
    names = [value for kind, value in told if kind == "name"]
    litres = figures[-1] if figures and _OF_DRINK.search(figures[-1]) else ""
    if litres and "water_l" not in names and len(figures) == len(names) + 1:
        figures, kinds = figures[:-1], [k for n, k in enumerate(kinds) if n != _last(kinds)]
    else:
        litres = ""
    alternates = kinds == ["figure", "name"] * len(names) or kinds == ["name", "figure"] * len(
        names
    )
    if not names or not alternates or len(set(names)) != len(names):
        return {}
    return dict(zip(names, figures, strict=True)) | ({"water_l": litres} if litres else {})


def _last(kinds: list[str]) -> int:
    return len(kinds) - 1 - kinds[::-1].index("figure")
