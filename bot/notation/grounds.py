"""Why each value of a set is what it is: the words that gave it, or where it was taken from."""

from decimal import Decimal

from bot.notation.answer import Source, Span
from bot.notation.quick import quick, replace
from bot.notation.said import SaidSet
from bot.training.report import Performed, Stage


@quick
class Ground:
    """Where one value came from. `at` is where its words stand in the folded text; those of its set where none say it.

    `None`: there are none, since the value was stored before this message.
    """

    source: Source
    at: Span | None = None


@quick
class Grounds:
    """The ground of each value of a set; `None` where there is no such value."""

    exercise: Ground
    number: Ground
    stage: Ground
    load: Ground
    unit: Ground
    reps: Ground
    effort: Ground | None = None
    side: Ground | None = None
    sets: Ground | None = None
    """Of how many alike were said at once."""
    count: int = 1


@quick
class Told:
    """A set that the message gives, with the ground of each of its values."""

    row: Performed
    grounds: Grounds


def kept(row: Performed) -> Told:
    """A set as it was stored before this message."""
    as_was = Ground(Source.KEPT)
    return Told(row, Grounds(as_was, as_was, as_was, as_was, as_was, as_was, as_was, as_was))


def grounds_of(said: SaidSet, load: Source, reps: Source = Source.SAID, number: Source = Source.NEXT) -> Grounds:
    """The grounds of a set as bound: `load`, `reps` and, where no words say it, `number` are where those came from."""
    whole, words = (said.start, said.end), said.words
    load_at = whole if said.load is None else said.load.number_at or (said.load.start, said.load.end)
    unit_at = None if said.load is None else said.load.unit_at
    unit = Source.OWN if load is Source.SAID else load
    return Grounds(
        exercise=Ground(Source.UNDER_WAY, whole),
        number=_said_or(words.number, number, whole),
        stage=_said_or(words.stage, Source.PLAN, whole),
        load=Ground(load, load_at),
        unit=_said_or(unit_at if load is Source.SAID else None, unit, load_at),
        reps=Ground(reps, words.reps or whole),
        effort=_said_or(words.effort, Source.SAID, whole),
        side=_said_or(words.side, Source.SAID, whole),
        sets=None if words.sets is None else Ground(Source.SAID, words.sets),
        count=words.count,
    )


def _said_or(words: Span | None, otherwise: Source, whole: Span) -> Ground:
    return Ground(otherwise, whole) if words is None else Ground(Source.SAID, words)


def repeated(row: Performed, said: SaidSet) -> Grounds:
    """The grounds of a set that `same` repeats: all of the set before but the effort."""
    loaded = said.load is not None and said.load.load is not None and row.stage is not Stage.DROP
    made = grounds_of(said, Source.SAID if loaded else Source.BEFORE, Source.BEFORE)
    before = Ground(Source.BEFORE, (said.start, said.end))
    return replace(
        made,
        stage=before if row.stage is not Stage.WORK else made.stage,
        side=before if row.side is not None else None,
    )


def answered(told: Told, row: Performed) -> Told:
    """The set with other values, which the answer to a question gives."""
    grounds = told.grounds
    if row.load != told.row.load:
        grounds = replace(grounds, load=_answer(grounds.load), unit=_answer(grounds.unit))
    if row.reps != told.row.reps:
        grounds = replace(grounds, reps=_answer(grounds.reps))
    return Told(row, grounds)


def _answer(ground: Ground) -> Ground:
    return replace(ground, source=Source.ANSWERED)


def with_effort(told: Told, rir: Decimal, at: Span) -> Told:
    """What was told with so many repetitions in reserve, said at `at`, where it is of a working set."""
    if told.row.stage is not Stage.WORK:
        return told
    ground = Ground(Source.SAID, at)
    return replace(told, row=replace(told.row, rir=rir), grounds=replace(told.grounds, effort=ground))
