"""Which exercise of the session a set without a name belongs to, before anything of the message is read."""

from collections.abc import Iterable, Sequence

from bot.notation.answer import Request
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark


def place_under_way(request: Request) -> int | None:
    """The exercise that the chat is on, else the first with a prescribed set not yet done."""
    done = {(p.exercise, p.set) for p in request.done}
    for place, exercise in enumerate(request.exercises):
        if exercise.name == request.current:
            return place
    for place, exercise in enumerate(request.exercises):
        if any((exercise.name, n) not in done for n in range(1, len(exercise.sets) + 1)):
            return place
    return None


def place_spoken_of(names: Iterable[Mark], request: Request) -> int | None:
    """The one exercise that these names are of, else the one under way; `None` where they are of several."""
    named = {m.names for m in names}
    if not named:
        return place_under_way(request)
    only = next(iter(named))
    return only[0] if len(named) == 1 and len(only) == 1 else None


def name_of(place: int, names: Sequence[Mark], request: Request, at: int) -> Mark:
    """The name that a message says, else one in its place that says nothing of where it stands."""
    return names[0] if names else Mark(Kind.NAME, request.exercises[place].name.lower(), at, at, names=(place,))
