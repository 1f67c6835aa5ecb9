"""What the foods of the published table are called; a food from a label has its owner's name."""

from __future__ import annotations

from bot.words.languages import mark, tr
from engine.food.foods import Food, known_foods, search

NAMES = (
    mark("White rice, cooked"),
    mark("White rice, cooked, unenriched"),
    mark("White rice, cooked with salt"),
    mark("Rice cakes, unsalted"),
    mark("Rice cakes, salted"),
    mark("Cream of rice, dry"),
    mark("Cream of rice, cooked in water"),
    mark("Oats, dry"),
    mark("Oats, cooked in water"),
    mark("Jam"),
    mark("Honey"),
    mark("White bread"),
    mark("Potatoes, boiled, no skin"),
    mark("Sweet potato, baked in skin"),
    mark("Sweet potato, boiled, no skin"),
    mark("Banana"),
    mark("Sugar"),
    mark("Maple syrup"),
    mark("Chicken breast, roasted"),
    mark("Egg white, weighed raw"),
    mark("Cod, baked or grilled"),
    mark("Tilapia, baked or grilled"),
    mark("Haddock, baked or grilled"),
    mark("Ground beef, 95 % lean, grilled"),
    mark("Beef round roast, lean"),
    mark("Salmon, farmed, baked or grilled"),
    mark("Salmon, wild, baked or grilled"),
    mark("Olive oil"),
    mark("Peanut butter, unsalted"),
    mark("Peanut butter, salted"),
    mark("Almonds"),
    mark("Spinach, raw"),
    mark("Broccoli, boiled"),
    mark("Broccoli, raw"),
    mark("Asparagus, boiled"),
    mark("Greek yogurt, nonfat"),
    mark("Dates, deglet noor"),
    mark("Raisins"),
    mark("Jelly beans"),
    mark("Gumdrops"),
    mark("Orange juice"),
    mark("Blueberries"),
    mark("Apple, with skin"),
    mark("Grapes"),
    mark("Avocado"),
    mark("Pretzels, salted"),
    mark("Table salt"),
    mark("Turkey breast, roasted"),
    mark("Cucumber, with peel"),
)
PIECES = (
    mark("cake"),
    mark("slice"),
    mark("half banana"),
    mark("egg white"),
    mark("date"),
    mark("half apple"),
)
MOST_FOUND = 8


def food_name(name: str) -> str:
    return tr(name) if name in NAMES else name


def piece_name(piece: str) -> str:
    return tr(piece) if piece in PIECES else piece


def find(words: str) -> list[Food]:
    """Foods of the table by words of their names: the engine's, and those of the reader's language."""
    found = list(search(words, MOST_FOUND))
    wanted = [word.strip(".,") for word in words.casefold().split() if word.strip(".,")]
    for food in known_foods():
        name = food_name(food.name)
        if name == food.name or food in found or not wanted:
            continue
        # Within a word too, since some languages write compounds as one: the potato in a sweet one.
        if all(part in name.casefold() for part in wanted):
            found.append(food)
    return found[:MOST_FOUND]
