"""What a client's equipment can make, for an exercise."""

from decimal import Decimal
from functools import lru_cache

from bot.training.loads import Loadable
from bot.training.people import Gym

BAR, DUMBBELLS, STACK, BODY, NOTHING = "bar", "dumbbells", "stack", "body", "none"
"""The kinds of equipment that an exercise names."""

MOST_ADDED = Decimal(60)
"""Added to the body weight, in either unit's number: more than a belt holds well. Common practice, no source."""


@lru_cache(maxsize=512)
def loadable(gym: Gym, equipment: str) -> Loadable:
    """The loads that can be made with this kind of equipment; none where there is nothing to load."""
    match equipment:
        case "bar":
            return Loadable.steps(gym.bar, gym.bar_highest, 2 * gym.plate, gym.unit)
        case "dumbbells":
            return Loadable.steps(*gym.dumbbells, gym.unit)
        case "stack":
            return Loadable.steps(*gym.stack, gym.unit)
        case "body":
            return Loadable.steps(-MOST_ADDED, MOST_ADDED, 2 * gym.plate, gym.unit)
        case _:
            return Loadable((), gym.unit)
