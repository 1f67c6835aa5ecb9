"""Foods: what 100 g of them holds, from the published table or from a label.

To add one: a row of `table` with its number in the database that it was read from; its name in
`bot/food/words_names.py`.
"""

from engine.food.foods.food import (
    Food,
    Label,
    LabelConvention,
    LabelProblem,
    from_label,
    known_food,
    known_foods,
    search,
)

__all__ = [
    "Food",
    "Label",
    "LabelConvention",
    "LabelProblem",
    "from_label",
    "known_food",
    "known_foods",
    "search",
]
