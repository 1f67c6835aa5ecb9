"""What typed sentences are, by themselves: of food, of drink, of the day's targets, a word for later.

The sentences are invented for this file, as tired people type them.
"""

from __future__ import annotations

from bot.dialogue.requests import asks_about_drink, asks_about_food, requested
from bot.food.words_names import food_name
from bot.words.languages import speaking
from engine.asked import view_asked_for
from engine.food.foods import known_foods
from engine.symptoms import screen
from engine.written.chatter import puts_off


def lines(text: str) -> list[str]:
    return [cell.strip() for line in text.strip().splitlines() for cell in line.split("|")]


DRINK = lines("""
    can i have sparkling water | is almond milk in tea a no | how late may I drink coffee
    one beer with my brother yes or no | does camomile tea count as water | lime in my water ok
    darf ich Apfelschorle | geht Limette ins Wasser | zählt Früchtetee zur Trinkmenge
    Cappuccino mit Milch, ja nein | noch ein Kaffee um vier ok | Sekt am Samstag erlaubt?
""")
FOOD = lines("""
    can i swap cod for chicken in meal 3 | is paprika or mustard ok on the eggs | hot sauce yes no
    do i weigh the oats dry or cooked | how many rice cakes do I bring | peanut butter or honey
    kann ich Lachs gegen Pute tauschen | Nudeln roh oder gekocht wiegen | Senf zum Fisch ja oder nein
    kein Spargel mehr da, Bohnen auch ok | Kaugummi erlaubt? | was ess ich im Flieger
""")
LATER = lines("""
    20 mins, in the shower | numbers later, at the gym | on the train, weight after | overslept, coming
    scale is in the car hang on | will check in after cardio | not forgotten, still driving
    Werte kommen gleich | bin noch unterwegs, wieg mich um 9 | steh im Stau, Zahlen später
    verschlafen, meld mich gleich | Hund muss raus, dann kommt das Gewicht | erst nach dem Cardio
""")
NO_PUTTING_OFF = lines("""
    can't get up yet, still in bed | can't do this much longer | the pain comes after cardio
    after dinner i bring it back up | i'm dizzy, numbers later | still in bed, legs won't move
    komm nicht aus dem Bett hoch | erst nach dem Essen wird mir schlecht | ich kann nicht mehr
    is my check-in later today?
""")
TARGETS = {
    "today": lines("""
        whats my step goal today | whats my sodium number again | am i on 10k or 12k steps
        wie hoch is mein Fettziel heute | sinds noch 160g Eiweiß
    """),
    "week": lines("""
        whats tomorrows carb number is it a low day | wieviel Kohlenhydrate krieg ich am Mittwoch
        Kalorien warens 1650 oder 1750 am Donnerstag
    """),
}


def test_questions_of_food_and_drink_are_known_for_what_they_are() -> None:
    assert [text for text in DRINK if not asks_about_drink(text)] == []
    assert [text for text in FOOD if not asks_about_food(text)] == []
    assert [text for text in (*DRINK, *FOOD) if screen(text).hits] == []


def test_every_food_of_the_table_is_known_for_one_in_each_language() -> None:
    for code, asks in (("en", "can I have {}?"), ("de", "darf ich {}?")):
        with speaking(code):
            named = {food_name(food.name).partition(",")[0].lower() for food in known_foods()}
            unheard = {name for name in named if not asks_about_food(asks.format(name))}
        assert unheard <= {"dates", "orange juice", "orangensaft"}, code  # a day, and a drink


def test_a_question_of_days_is_none_of_food() -> None:
    assert not asks_about_food("which dates are set?")


def test_what_puts_the_answers_off_is_no_complaint_and_a_complaint_is_no_putting_off() -> None:
    assert [text for text in LATER if not puts_off(text)] == []
    assert [text for text in LATER if screen(text).hits or screen(text).suspicions] == []
    assert [text for text in NO_PUTTING_OFF if puts_off(text)] == []


def test_the_days_figures_are_asked_for_in_any_words() -> None:
    for command, texts in TARGETS.items():
        assert [text for text in texts if requested(text) != command] == []


SHOWN_BESIDE = {
    "today": lines("""
        lost my notes, what was on for today food wise pls | is it a high day today or a rest day
        how much am i meant to drink today, forgot | show me today | send the targets please
        ist heute eigentlich ladetag | zettel weg, was gilt heute | schick mir die vorgaben bitte
        wie viel wasser war das heute gleich
    """),
    "week": lines("""
        what's friday looking like | which days are the load days | can you list all my days to the show
        is saturday a low day | what is on tomorrow already please, I'm cooking tonight
        wie schaut der donnerstag aus | gib mir den überblick über die woche
        an welchem tag gehen die kh hoch | ist freitag noch entladen
    """),
    "why": lines("""
        how come the carbs moved up by 40 | explain me the new numbers
        warum denn jetzt mehr kohlenhydrate
        kannst du mir den grund für die neuen zahlen erklären
    """),
}
SHOWN_NOTHING = lines("""
    is the flight on friday fine with the plan | could i skip legs tomorrow | what music for saturday
    should i change the suit today | darf ich morgen das cardio auslassen
        wie wird das wetter am samstag
    my numbers at work are awful | ran into my old coach today | heute war ein guter tag
    warum bist du so streng | which trunks on the day | wann trocknet die farbe morgen
""")


def test_a_question_of_the_plan_in_looser_words_is_known_by_the_view_that_answers_it() -> None:
    read = {text: view_asked_for(text) for texts in SHOWN_BESIDE.values() for text in texts}
    meant = {text: view for view, texts in SHOWN_BESIDE.items() for text in texts}
    assert {t: v for t, v in read.items() if v != meant[t]} == {}
    assert [text for text in SHOWN_NOTHING if view_asked_for(text)] == []
