"""Which sets an effort of all is of once they are bound, and their rating: three of `8 8 7 on the zerchers, all @8`."""

from collections.abc import Sequence
from dataclasses import dataclass, replace
from decimal import Decimal
from enum import Enum, auto

from bot.notation.answer import AskKind, Source, Span
from bot.notation.draft import Draft
from bot.notation.grounds import Ground, Told
from bot.notation.record import Record
from bot.notation.said import Doubt
from bot.training.report import Stage


class Reach(Enum):
    """Which of the sets told so far an effort is of."""

    LIST = auto()
    """The list that it stands behind."""
    SENTENCE = auto()
    """All of the sentence."""
    ALL = auto()
    """All that was told."""
    NEXT = auto()
    """What follows it: of the exercise named before it, if one is."""


@dataclass(frozen=True, slots=True)
class EffortOfAll:
    """Repetitions in reserve of every set in reach; `start` is where the reach starts, `at` where the words stand."""

    left: Decimal
    at: Span
    reach: Reach
    start: int
    place: int | None
    """Of what follows: the exercise that was named."""
    count: int | None = None
    """How many sets are said to be."""
    of_each: bool = False
    """Told by `each`, which may be of the two hands of one set."""
    of_last: bool = False
    """Of so many told last: `those three all @8`."""
    names: tuple[int, ...] = ()
    """The exercises that it is of, where they are named behind it."""


def rate_of_all(draft: Draft, said: EffortOfAll) -> None:
    """Gives every set in reach the effort; asks where they are not so many, or where one has another effort."""
    record = draft.record
    rows = [t for t in record.told if t.row.stage is Stage.WORK and _is_within(t, said, record)]
    rows = [t for t in rows if record.place_of(t.row.exercise) in said.names] if said.names else _reached(rows, said)
    if not rows or not _are_counted(rows, said):
        draft.doubt(Doubt(AskKind.EFFORT, *said.at))
        return
    rated = {id(t) for t in rows if t.row.rir is None}
    ground = Ground(Source.SAID, said.at)
    record.told = [
        replace(t, row=replace(t.row, rir=said.left), grounds=replace(t.grounds, effort=ground))
        if id(t) in rated
        else t
        for t in record.told
    ]


def _is_within(told: Told, said: EffortOfAll, record: Record) -> bool:
    at = _at(told)
    if said.reach is Reach.NEXT:
        named = said.place is None or told.row.exercise == record.exercises[said.place].name
        return named and at >= said.at[1]
    return said.start <= at < said.at[0]


def _at(told: Told) -> int:
    at = told.grounds.reps.at or told.grounds.exercise.at
    return 0 if at is None else at[0]


def _reached(rows: list[Told], said: EffortOfAll) -> list[Told]:
    """The sets of one list, or of all exercises that have no effort of their own."""
    if not rows or said.reach is Reach.NEXT:
        return [t for t in rows if t.row.rir is None]
    last = max(rows, key=_at).row.exercise
    own = [t for t in rows if t.row.exercise == last]
    if said.of_last and said.count is not None:
        kept = list(dict.fromkeys(t.row.set for t in own))[-said.count :]
        return [t for t in own if t.row.set in kept]
    unrated = [t for t in own if t.row.rir is None]
    if said.count is not None and said.count == _keys(unrated) < _keys(own):
        return unrated
    if said.reach is Reach.LIST and (_keys(own) > 1 or said.of_each):
        return own
    if said.count is not None and _keys(own) == said.count:
        return own
    apart = {t.row.exercise for t in rows if t.row.rir is not None} - {last}
    return [t for t in rows if t.row.exercise not in apart]


def _keys(rows: Sequence[Told]) -> int:
    return len({(t.row.exercise, t.row.set) for t in rows})


def _are_counted(rows: Sequence[Told], said: EffortOfAll) -> bool:
    return said.count in (None, _keys(rows), len(rows), len({t.row.exercise for t in rows}))
