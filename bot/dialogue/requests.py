"""What somebody asks for in words instead of by a command: "what do I eat today", "hilfe".

Only a sentence that says nothing else is such a request; whatever says more goes on to a person.
English and German are both understood, whatever the chat's language.
"""

# ruff: noqa: E501 - one pattern a line

from __future__ import annotations

import re

# ruff: noqa: E501 - one pattern a line
from functools import cache

from bot.words.languages import language, tr
from engine.food.foods import known_foods
from engine.written.late import Late
from engine.written.questions import about_targets

# Whole sentences, as patterns, by the command that serves them. "~" stands for courtesies that may
# come before or after and say nothing.
_TODAY = r"(?:today|this morning|now|for today|heute?|jetzt|für heute?)"
REQUESTS: dict[str, tuple[str, ...]] = {
    "today": (  # the figures themselves are asked for in any words: `engine.written.questions`
        rf"what (?:do|should|shall|can|must) (?:i|we) (?:eat|have|drink)(?: {_TODAY})?", r"today", r"heute",
        rf"was (?:soll|darf|kann|muss) ich (?:{_TODAY} )?(?:essen|trinken)(?: {_TODAY})?",
        rf"was (?:esse|trinke) ich {_TODAY}", rf"was (?:gibt|gibts|gibt's|steht) (?:es )?{_TODAY}(?: an)?",
        rf"was gibt es {_TODAY} (?:zu essen|zum essen)", rf"how (?:much|many) food (?:(?:is|are|do i have) )?left(?: {_TODAY})?",
        rf"how much food(?: (?:do|should|shall|can|am|must) i(?: (?:eat|have|get|need|to eat))?)?(?: {_TODAY})?",
        rf"what'?s (?:next|on my list|on (?:my|the) plan)(?: (?:on my list|on (?:my|the) plan|{_TODAY}))?",
        rf"(?:ja |ja und )?was steht (?:{_TODAY} )?auf (?:dem|meinem) plan(?: {_TODAY})?",
        rf"wie ?viel fehlt (?:mir )?(?:{_TODAY} )?noch(?: auf mein \w*(?: \w+)? ?ziel| (?:auf|bis) (?:mein|zum) \w*ziel)?(?: {_TODAY})?",
        r"was (?:kommt|ist) (?:als )?nächstes(?: dran)?",
        rf"(?:show|tell) me what (?:i|to) (?:can |should |have to |need to )?(?:eat|drink)(?: {_TODAY})?",
        rf"(?:zeig|zeige|sag) mir (?:nochmal |noch mal )?was ich (?:{_TODAY} )?(?:essen|trinken|esse|trinke)(?: (?:soll|darf|kann|muss))?(?: {_TODAY})?",
    ),
    "why": (
        r"why", r"why (?:so (?:much|many|few|little)|that|this|more|less|these|not more)(?: (?:carbs?|today|figure|numbers?))*",
        r"why (?:the|is it|are there) (?:change|so (?:much|many|few|little)|more|less)(?: carbs?)?",
        r"why did (?:my|the) (?:carbs?|targets?|numbers?|plan) (?:change|go up|go down|drop)",
        r"why (?:are|is) (?:my|the) (?:carbs?|targets?|plan) (?:so )?(?:different|higher|lower|up|down|high|low)(?: today)?",
        r"warum", r"wieso", r"(?:warum|wieso) (?:so (?:viel|viele|wenig|wenige)|mehr|weniger|das|diese zahl|die änderung)(?: (?:kh|carbs|kohlenhydrate|heute))*",
        r"(?:warum|wieso) (?:haben|sind|wurden) (?:sich )?(?:meine|die) (?:kh|carbs|kohlenhydrate|werte|ziele) (?:geändert|anders|höher|niedriger|erhöht|gesenkt)(?: worden)?",
    ),
    "week": (
        r"(?:what does|how does) (?:my|the) week look like", r"(?:show me |what is )?(?:my|the) (?:week|whole plan|week plan|plan for the week)",
        r"what(?:'s| is)? (?:the plan )?(?:for )?tomorrow", r"what do i eat tomorrow",
        r"wie sieht (?:meine|die) woche aus", r"(?:zeig mir |zeige mir )?(?:meine|die|meinen|den) (?:woche|wochenplan|plan|ganzen plan)",
        r"was (?:esse ich|gibt es|gibt's|ist|kommt) morgen",
    ),
    "checkin": (
        r"(?:i want to |can i |let me |i'd like to )?(?:change|correct|fix|edit) (?:my|an|the|one) (?:answers?|weight|check-?in|numbers?|fullness|water)",
        r"(?:i want to |can i |let me )?(?:check ?-?in|do my check-?in)(?: now)?",
        r"i (?:made a mistake|typed it wrong|got a number wrong)", r"(?:that|the|my) (?:weight|number|answer) (?:was|is) wrong",
        r"(?:ich (?:will|möchte|muss) |kann ich )?(?:meine|die|eine|meinen|mein|das|den) (?:antwort|antworten|werte|gewicht|check-?in|zahlen|wert) (?:ändern|korrigieren|berichtigen)",
        r"(?:das|mein) gewicht (?:war|ist|stimmt) (?:falsch|nicht)", r"ich habe mich vertippt", r"(?:check-?in|einchecken)",
    ),
    "late": (
        r"(?:i am|i'm|im|we are|we're|it is|it's|they are|the show is|everything is)? ?(?:running|going to be|gonna be) (?:late|behind)(?: schedule)?",
        r"(?:we are|we're|they are|the show is|it is|it's|i am|i'm|im) (?:late|delayed|behind schedule)", r"there(?:'s| is) a delay",
        r"(?:es|der wettkampf|die show|alles|wir|ich)? ?(?:verspätet sich|hat verspätung|haben verspätung|verschiebt sich|dauert länger|bin spät dran|sind spät dran|ist verspätet)",
        r"verspätung",
    ),
    "stage": (
        r"(?:when|what time) (?:am i|do i go|is it|are we|do i get) (?:on|on stage|up)", r"(?:when|what time) (?:is|does) (?:my|the) (?:class|stage time|show|category|event|shoot|contest|competition)(?: start)?",
        r"(?:my|the) (?:timetable|schedule|stage times?|times)", r"wann (?:bin ich|muss ich|gehe ich|geht es) (?:dran|auf die bühne|auf der bühne|los)",
        r"(?:mein|der) (?:zeitplan|ablauf)", r"wann ist (?:mein|meine|der|die|das) (?:wettkampf|show|auftritt|klasse|termin|shooting|bühnenzeit)",
    ),
    "food": (
        r"(?:show me |what is |what's )?(?:my|the|a) (?:menu|meals|meal plan|food list|shopping list)(?: today| for today)?",
        r"(?:give me |i need )?(?:meal|food) ideas", r"(?:zeig mir )?(?:mein|meine|das|die|ein) (?:menü|mahlzeiten|essensplan|einkaufsliste)(?: heute| für heute)?",
        rf"what (?:can|could|should|do) i (?:still )?(?:eat|have)(?: for (?:breakfast|lunch|dinner|supper))? (?:from|out of|of|on) (?:my|the) (?:list|foods?|menu)(?: (?:for (?:breakfast|lunch|dinner|supper)|{_TODAY}))?",
        rf"was (?:kann|könnte?|darf|soll) ich (?:jetzt |{_TODAY} )?(?:noch )?(?:von|aus) meiner? (?:liste|lebensmittelliste) (?:jetzt |{_TODAY} )?(?:noch )?(?:essen|nehmen|haben)",
        r"speiseplan", r"what foods? (?:can|should) i (?:eat|have)(?: today)?",
    ),
    "help": (
        r"help(?: me)?", r"how does (?:this|it|the bot) work", r"what can (?:you|i) do(?: here)?", r"(?:the )?commands", r"menu",
        r"what do i do(?: now| next)?", r"hilfe", r"wie geht das", r"wie funktioniert (?:das|der bot)", r"was kannst du", r"was kann ich (?:hier )?(?:tun|machen)",
        r"befehle", r"was mach(?:e)? ich(?: jetzt| als nächstes)?", r"was (?:soll|muss) ich (?:jetzt )?(?:machen|tun)", r"who are you", r"wer bist du",
    ),
    "settings": (
        r"(?:i want to )?(?:change|set|move) (?:my |the )?(?:units?|time ?zone|(?:check-?in |reminder |morning )?time|settings)(?: to [\w:. ]{1,12})?", r"settings", r"einstellungen",
        r"(?:ich (?:will|möchte) )?(?:meine |die )?(?:einheiten|zeitzone|check-?in-?zeit|einstellungen|uhrzeit) (?:ändern|umstellen)",
        r"(?:(?:can|could|will|would) you )?(?:ask|remind|ping|text) me (?:[\w,'-]+ ){0,4}(?:at|like|from|by) [\d:.]{1,5}(?: ?[ap]m| o'?clock)?(?:,? (?:from|tomorrow|instead|each|every|morning|day|on|then|in the))*",
        r"(?:can you )?(?:change|move|set) (?:my |the )?(?:wake ?-?up|morning|check-?in|reminder|prompt)(?: time| question| reminder)? to [\w:. ]{1,12}",
        r"(?:kannst du )?(?:mich )?(?:(?:frag|erinner)\w*(?: du)?(?: mich)? )?(?:[\w,-]+ ){0,4}(?:um|gegen|ab) [\d:.]{1,5}(?: uhr)?(?: (?:fragen|erinnern|ab|morgen|jeden|früh|tag))*",
        r"stelle? (?:die|meine) (?:check-?in-?)?(?:uhr)?zeit(?: um)?(?: auf [\w:. ]{1,12})?",
    ),
    "language": (
        r"(?:can (?:you|we) )?(?:speak|talk|write) (?:english|german)", r"(?:in )?english", r"(?:auf )?deutsch", r"(?:kannst du )?deutsch(?: sprechen| reden)?",
        r"sprichst du deutsch", r"do you speak (?:english|german)",
    ),
    "picture": (r"(?:show me )?(?:my|the|a) chart", r"(?:zeig mir )?(?:mein|das|ein) diagramm"),
    "photos": (r"(?:(?:show me )?my )?(?:photos|pictures)", r"(?:(?:zeig mir )?meine )?(?:fotos|bilder)"),
    "mydata": (r"(?:show|send|give)(?: me)? (?:all )?my data", r"my data", r"(?:zeig|schick|gib) mir (?:alle )?meine daten", r"meine daten"),
    "delete_my_data": (r"(?:please )?delete (?:all (?:of )?)?my (?:data|account)", r"lösche? (?:bitte )?(?:alle )?meine daten", r"(?:alle )?meine daten löschen"),
    "pause": (r"pause(?: (?:me|the check-?ins?|the questions))?", r"(?:please )?stop asking(?: me)?", r"(?:check-?ins?|fragen) pausieren", r"pausieren"),
    "roster": (
        r"(?:show me )?(?:my|all|the) athletes", r"(?:the |my )?roster", r"(?:meine|alle) (?:athleten|athletinnen|leute)", r"übersicht",
        r"how (?:is everybody|are (?:they(?: all)?|my athletes|all of them))(?: doing)?(?: today)?", r"wie geht(?: e)?'?s allen(?: heute)?",
        r"(?:is )?(?:who|anybody|anyone|how many)(?:'s| is| are)? (?:of them )?(?:is |are )?(?:flat|full|heavy|light|spilled(?: over)?|soft|sharp|loading|missing|late|unwell|dizzy|sick|off|on plan|frozen|paused)(?: (?:today|this morning|now|so far))?",
        r"who (?:needs me|needs something|is next|is left|(?:has not|hasn'?t|have not|haven'?t|has|did not|didn'?t|is yet to|still has to) (?:checked|check) in)(?: (?:yet|today|this morning|already|so far))?",
        r"(?:wer|jemand|wie viele)(?: von ihnen)? (?:ist|sind)(?: (?:heute|heute früh|gerade|jetzt|schon))? (?:flach|voll|schwer|leicht|überladen|weich|definiert|krank|nach plan|eingefroren|im plan)(?: (?:heute|gerade|jetzt))?",
        r"(?:wer|wie viele) (?:lädt|laden|fehlt|fehlen)(?: (?:heute|noch|gerade|jetzt))*", r"wer braucht (?:mich|was|etwas)(?: heute)?",
        r"wer hat (?:(?:heute|schon|noch|noch nicht|heute noch) )*(?:keinen |einen |den |nicht )?(?:check-?in(?: gemacht)?|eingecheckt)",
    ),
    "alerts": (
        r"(?:open |the |any )?alerts", r"(?:offene )?(?:meldungen|warnungen)", r"what(?:'s| is) (?:still )?open", r"was ist (?:noch )?offen",
        r"(?:who|has anybody|has anyone) (?:has )?acknowledged(?: (?:it|that|this|the alert))?", r"(?:wer|hat jemand) (?:hat )?(?:(?:es|das|die meldung) )?(?:schon )?bestätigt",
    ),
}  # fmt: skip

_COURTESY = Late(
    r"^(?:(?:hi|hello|hey|hallo|guten morgen|good morning|morning|moin|ok|okay|so|and|und|also|bitte|please|sorry|"
    r"entschuldigung|coach|quick question|kurze frage|can you tell me|could you tell me|tell me|sag mir|sag mal)\b[\s,:!.-]*)+"
    r"|[\s,]*(?:please|bitte|thanks|thank you|thx|danke|again|nochmal|noch mal|then|denn|eigentlich|genau|exactly|coach)$",
    re.IGNORECASE,
)
_COMPILED = {
    name: Late("|".join(f"(?:{pattern})" for pattern in patterns), re.IGNORECASE)
    for name, patterns in REQUESTS.items()
}


def requested(text: str) -> str | None:
    """The command that serves what is asked for; None where the text asks for none, or says more."""
    plain = " ".join(text.replace("\u2019", "'").split()).strip(" .?!…")
    for candidate in (plain, _COURTESY.sub("", _COURTESY.sub("", plain)).strip(" ,.?!")):
        for name, pattern in _COMPILED.items():
            if candidate and pattern.fullmatch(candidate):
                return name
    return about_targets(text)


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
