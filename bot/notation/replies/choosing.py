"""Which of the offered readings an answer chooses: the one of which all that it tells is so."""

from collections.abc import Collection

from bot.notation.answer import Ask, AskKind, Choice, Request
from bot.notation.replies.told import Told
from bot.training.units import Load


def fits(request: Request, ask: Ask, choice: Choice, told: Told) -> bool:
    """Whether all that the answer tells is so in this reading."""
    loads = _loads_of(choice)
    counts = {row.reps for row in choice.reading.performed}
    amounts = {load.amount for load in loads}
    of_hands = ask.kind is AskKind.PER_HAND and (told.each or told.total)
    if not told.says_values:
        return told.yes and choice is as_typed(ask)
    return (
        (of_hands or all(n in amounts and unit in (None, *(x.unit for x in loads)) for n, unit in told.loads))
        and all(n in counts for n in told.counts)
        and (of_hands or _holds_bare(choice, told, amounts | counts))
        and (told.unit is None or {load.unit for load in loads} == {told.unit})
        and (told.order is None or _is_nth(ask, choice, told))
        and _is_of_hands(ask, choice, told)
        and _is_of_names(request, ask, choice, told)
        and _is_of_day(choice, told)
    )


def as_typed(ask: Ask) -> Choice | None:
    """The reading that a mere yes means."""
    if len(ask.choices) == 1:
        return ask.choices[0]
    return ask.choices[-1] if ask.choices and ask.kind is AskKind.OUT_OF_REASON else None


def _holds_bare(choice: Choice, told: Told, numbers: Collection[object]) -> bool:
    """Whether the bare numbers are its loads or counts; beside a month or weekday, its day."""
    if told.month or told.weekdays:
        day = choice.reading.day
        return day is not None and all(n == day.day for n in told.bare)
    return all(n in numbers for n in told.bare)


def _is_nth(ask: Ask, choice: Choice, told: Told) -> bool:
    """`the second one`: of the readings as they were offered; a day's `4th` is its day."""
    day = choice.reading.day
    if ask.kind is AskKind.DAY and day is not None:
        return day.day == told.order
    return told.order is not None and told.order <= len(ask.choices) and ask.choices[told.order - 1] is choice


def _is_of_hands(ask: Ask, choice: Choice, told: Told) -> bool:
    """`each` is the heaviest reading of one hand's load, `total` the lightest; `10 each` the one with 10 in each hand.
    `both` is all of the names to skip; of hands it leaves open which is meant."""
    if ask.kind is AskKind.WHICH_SKIP and told.both:
        return len(choice.reading.skipped) > 1
    if not (told.each or told.total or told.both):
        return True
    if ask.kind is not AskKind.PER_HAND or told.both or (told.each and told.total):
        return False
    mine = _loads_of(choice)
    if numbers := [*told.bare, *(n for n, _ in told.loads)]:
        return {n / (2 if told.total else 1) for n in numbers} <= {load.amount for load in mine}
    heaviest = [max(load.kg for load in _loads_of(c)) for c in ask.choices]
    return max(load.kg for load in mine) == (max(heaviest) if told.each else min(heaviest))


def _loads_of(choice: Choice) -> set[Load]:
    return {row.load for row in choice.reading.performed if row.load is not None}


def _is_of_names(request: Request, ask: Ask, choice: Choice, told: Told) -> bool:
    """Whether the exercises that it names are those by which this reading differs from the others."""
    if not told.places:
        return True
    of_all = set.intersection(*(_names_of(c) for c in ask.choices))
    order = {e.name: place for place, e in enumerate(request.exercises)}
    own = {order[name] for name in (_names_of(choice) - of_all) or of_all}
    common = frozenset.intersection(*told.places)
    return own <= common if common else own == set[int]().union(*told.places)


def _names_of(choice: Choice) -> set[str]:
    return {row.exercise for row in choice.reading.performed} | set(choice.reading.skipped)


def _is_of_day(choice: Choice, told: Told) -> bool:
    day = choice.reading.day
    if not told.weekdays and told.month is None:
        return True
    return day is not None and (not told.weekdays or day.weekday() in told.weekdays) and told.month in (None, day.month)
