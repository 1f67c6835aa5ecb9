"""Foods: what 100 g of them holds, from the published table or from a label."""

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
