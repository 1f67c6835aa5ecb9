"""Questions of food and drink, put in whatever words: "hot sauce yes no", "geht Zitrone ins Wasser"."""

# ruff: noqa: E501 - one pattern a line

from __future__ import annotations

import re
from functools import cache

from bot.words.languages import language, tr
from engine.food.foods import known_foods
from engine.written.late import Late

_ASKS = Late(
    r"\?|^(?:(?:hey|hi|coach|bot|hallo|moin|ok|sag mal|quick question|kurze frage)[ ,]+)*"
    r"(?:can|could|may|is|are|do|does|did|am|should|shall|how|what|when|which|where|any|would|will|darf|kann|könnte|soll|sollte|ist|is|sind|geht|gehen|zählt|zählen|wie|wieviel|wann|was|welche\w*|wo|noch|muss|müssen|hab|habe)\b"
    r"|\b(?:yes or no|yes no|yes/no|or not|allowed|ok|okay|fine|a no|a yes|is it same|the same|either|ja oder nein|ja nein|ja/nein|oder nicht|oder|erlaubt|verboten|egal|wurscht|in ordnung|auch ok)(?: pls| please| bitte)?[ .!]*$"
    r"|\b(?:swap\w*|instead|replace\w*|substitut\w*|conver(?:t|sion)|same weight|sold out|statt|anstatt|stattdessen|tausch\w*|ersetz\w*|umrechn\w*|ausverkauft)\b"
    r"|\bor\b|\boder\b|\b(?:can|could|may) i\b|\b(?:darf|kann) ich\b",
    re.IGNORECASE,
)
_DRINK = Late(
    r"\b(?:drinks?|drinking|water|fizzy|sparkling|tap|bottled|tea|coffee|espresso|cappuccino|latte|milk|juice|lemonade|soda|cola|coke|energy drinks?|beer|wine|prosecco|alcohol|gin|squash|electrolytes?|lemon"
    r"|trinken|trinkmenge|trink|\w*wasser|sprudel|stilles|tee|kräutertee|grüntee|pfefferminztee|eistee|früchtetee|kaffee|milch|\w*saft|limo\w*|\w*schorle|radler|bier|wein|sekt|alkohol\w*|energydrink\w*|elektrolyt\w*|zitrone)\b",
    re.IGNORECASE,
)
#: What is eaten and has no row in the table of foods, or is called otherwise than there.
_FOOD = Late(
    r"\b(?:eat|eating|food|meals?|snacks?|rice(?: cakes?)?|mince|fillets?|oats?|oatmeal|porridge|chicken|turkey|fish|tuna|steak|beef|eggs?|whites|bread|toast|bagels?|potato\w*|pasta|noodles|beans|salad|veg\w*|fruit|banana\w*|apples?|berries|syrup|butter|nuts?|almonds?|cheese|yog\w*|cottage|chocolate|sweets|gum|cinnamon|mustard|ketchup|sauces?|spices?|salt|sweetener|dressing|vinegar|oil|shake|whey|bars?|sushi|pizza|burger|ice ?cream|cake|cookies?|pickles?|gherkins?|olives?|hummus|mushrooms?|onions?|peppers?|tomato\w*|carrots?|lentils?|tofu|tempeh|ham|bacon|jerky|prawns?|shrimps?|cereals?|granola|muesli|tortillas?|wraps?|popcorn|crackers?|avocado\w*|garlic|chil\w+|soup|couscous|quinoa|pre ?workout|creatine|protein powder|vitamins?|magnesium|supplements?"
    r"|esse?n?|ess|ässe|mahlzeit\w*|reis|reiswaffeln?|\w*flocken|erdäpfel|erdöpfe?l|kn[öo]de?l\w*|\w*quark|\w*öl|kabeljau|seelachs|dorsch|forelle|honig|milchreis|hafer\w*|huhn|hähnchen|pute\w*|fisch|lachs|thunfisch|fleisch|rind\w*|ei|eier|eiweiß|brot|toast|kartoffel\w*|nudeln|bohnen|salat|gemüse|obst|banane\w*|äpfel|beeren|sirup|butter|\w*nuss\w*|\w*nüsse|mandel\w*|käse|joghurt|skyr|schokolade|süßigkeiten|kaugummi\w*|zimt|senf|\w*soße\w*|gewürze?\w*|salz|süßstoff|essig|riegel|pizza|eis|kuchen|kekse?|zucchini|waffeln?|\w*gurken?|oliven?|pilze?|champignons?|zwiebeln?|paprika\w*|tomaten?|karotten?|möhren?|linsen|schinken|speck|\w*wurst|garnelen|krabben|müsli|cornflakes|knäckebrot|zwieback|knoblauch|suppe|avocados?|booster|kreatin|proteinpulver|vitamine?|supplements?)\b",
    re.IGNORECASE,
)
#: A food of the table whose name is asked after as a day more often.
_DAYS_TOO = {"dates"}
_MOST_WORDS = 18


def asks_about_food(text: str) -> bool:
    """Whether something to eat is asked about."""
    if not _is_question(text):
        return False
    return (_FOOD.search(text) or _of_the_table(language()).search(text)) is not None


def asks_about_drink(text: str) -> bool:
    """Whether something to drink is asked about."""
    return _is_question(text) and _DRINK.search(text) is not None


@cache
def _of_the_table(_language: str) -> re.Pattern[str]:
    """What the foods of the table are called, in the language in force and in English."""
    named = {name for food in known_foods() for name in (food.name, tr(food.name))}
    heads = {name.partition(",")[0].casefold() for name in named} - _DAYS_TOO
    return re.compile(rf"\b(?:{'|'.join(map(re.escape, sorted(heads)))})\b", re.IGNORECASE)


def _is_question(text: str) -> bool:
    plain = " ".join(text.split())
    return len(plain.split()) <= _MOST_WORDS and _ASKS.search(plain) is not None
