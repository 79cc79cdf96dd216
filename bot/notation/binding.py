"""Sets as said, bound to the plan: which set each answers, and what was not said taken from the plan or the set before.

Rule by rule: repetitions alone take the load of the set before it where the plan has both sets alike, else the planned
load; `same` repeats the set before with its sides and continuations; effort is never filled in.
"""

from dataclasses import dataclass, field

from bot.notation.answer import AskKind, Source
from bot.notation.context import Context
from bot.notation.grounds import Grounds, Told, grounds_of, repeated
from bot.notation.quick import replace
from bot.notation.reason import check_beyond, check_row
from bot.notation.said import Candidate, Doubt, SaidSet
from bot.training.plan import PlannedSet
from bot.training.report import Performed, SetKey, Side, Stage
from bot.training.units import Load


@dataclass(frozen=True, slots=True)
class Bound:
    """Sets bound to the plan, with where each was said, what they replace, and what speaks against storing them."""

    told: tuple[Told, ...]
    said: tuple[SaidSet, ...]
    """For each of them the words that gave it."""
    replaces: tuple[SetKey, ...] = ()
    doubts: tuple[Doubt, ...] = ()

    @property
    def performed(self) -> tuple[Performed, ...]:
        """The sets as they would be stored."""
        return tuple(told.row for told in self.told)


@dataclass
class _Desk:
    """The binding under way: `rows` so far, and which sets are filled on which side."""

    context: Context
    filled: set[tuple[int, Side]]
    rows: list[Performed] = field(default_factory=list)
    said: list[SaidSet] = field(default_factory=list)
    grounds: list[Grounds] = field(default_factory=list)
    replaces: list[SetKey] = field(default_factory=list)
    doubts: list[Doubt] = field(default_factory=list)
    number: int | None = None
    """The work set said last."""
    next: dict[Side | None, int] = field(default_factory=dict)
    """The least set of each side (of both: `None`) that may be open: filled ones stay filled."""

    def put(self, row: Performed, said: SaidSet, grounds: Grounds) -> None:
        self.rows.append(row)
        self.said.append(said)
        self.grounds.append(grounds)
        if row.stage is Stage.WORK and row.set is not None:
            self.number = row.set
            self.filled.update((row.set, side) for side in (Side if row.side is None else (row.side,)))

    def doubt(self, kind: AskKind, said: SaidSet) -> None:
        self.doubts.append(Doubt(kind, said.start, said.end))

    def next_number(self, side: Side | None) -> int:
        taken = {number for number, filled in self.filled if side in (None, filled)}
        number = self.next.get(side, 1)
        while number in taken:
            number += 1
        self.next[side] = number
        return number

    def before(self) -> Performed | None:
        """The work set before, said in this message or stored."""
        for row in reversed(self.rows):
            if row.stage is Stage.WORK:
                return row
        return self.context.worked[-1] if self.context.worked else None


def bind(candidate: Candidate, context: Context) -> Bound:
    """The sets of a reading, numbered and completed; with the doubts that the plan raises."""
    desk = _Desk(context, set(context.filled), doubts=list(candidate.doubts))
    for said in candidate.sets:
        if context.exercise.sides == 1 and said.side is not None:
            said = replace(said, side=None)  # noqa: PLW2901
        if said.planned:
            _bind_planned(desk, said)
            continue
        for turn in range(said.count):
            label = said.label + turn if said.label is not None else None
            _bind_one(desk, replace(said, words=replace(said.words, number=None)) if turn else said, label)
    if context.exercise.sides == 1 and {s.side for s in candidate.sets} >= set(Side):
        first, last = candidate.sets[0], candidate.sets[-1]
        desk.doubts.append(Doubt(AskKind.WHICH_EXERCISE, first.start, last.end))
    whole = max(3, len(context.exercise.sets))
    desk.doubts.extend(Doubt(AskKind.OUT_OF_REASON, s.start, s.end) for s in candidate.sets if s.count > whole + 3)
    desk.doubts.extend(check_beyond(desk.rows, desk.said, context))
    for row, said in zip(desk.rows, desk.said, strict=True):
        desk.doubts.extend(check_row(row, said, context, desk.rows))
    told = tuple(Told(row, why) for row, why in zip(desk.rows, desk.grounds, strict=True))
    return Bound(told, tuple(desk.said), tuple(dict.fromkeys(desk.replaces)), tuple(desk.doubts))


def _bind_one(desk: _Desk, said: SaidSet, label: int | None) -> None:
    name = desk.context.exercise.name
    if said.same:
        _bind_same(desk, said, label)
        return
    match said.stage:
        case Stage.WARMUP:
            load = said.load.load if said.load is not None else None
            source = Source.SAID
            if not desk.context.takes_load:
                load = None
            elif load is None and desk.context.is_bodyweight:
                load, source = Load.of(0, desk.context.unit), Source.PLAN
            row = Performed(name, None, Stage.WARMUP, load, said.reps or 0, said.rir, said.side)
            desk.put(row, said, grounds_of(said, source, _counted(said)))
        case Stage.DROP | Stage.MINI:
            _bind_continuation(desk, said)
        case Stage.WORK:
            number = label if label is not None else desk.next_number(said.side)
            before = desk.said[-1] if desk.said else None
            if label is None and before is not None and before.label is not None and number < (desk.number or 0):
                desk.doubt(AskKind.WHICH_SET, said)
            if label is not None and (number, said.side or Side.LEFT) in desk.filled:
                desk.replaces.append((name, number))
            load, source = _load_for(desk, said, number)
            reps, counted = said.reps, _counted(said)
            if reps is None:
                earlier = desk.before()
                if earlier is None:
                    desk.doubt(AskKind.SAME, said)
                reps, counted = earlier.reps if earlier is not None else 0, Source.BEFORE
            row = Performed(name, number, Stage.WORK, load, reps, said.rir, said.side)
            desk.put(row, said, grounds_of(said, source, counted))


def _counted(said: SaidSet) -> Source:
    """Where the repetitions of a set are from."""
    return Source.PLAN if said.from_plan else Source.SAID


def _load_for(desk: _Desk, said: SaidSet, number: int) -> tuple[Load | None, Source]:
    """The load of a work set, and where it is from: as said, else the set before's or the plan's."""
    context = desk.context
    if not context.takes_load:
        return None, Source.PLAN
    before = desk.before()
    if said.load is not None:
        if said.load.load is not None:
            return said.load.load, Source.SAID
        if before is None:
            planned = context.planned_load(number)
            if planned is None:
                desk.doubt(AskKind.SAME, said)
            return planned, Source.PLAN
        return before.load, Source.BEFORE
    planned = context.planned_load(number)
    if before is not None and before.set is not None and before.load is not None:
        earlier = context.planned_load(before.set)
        if earlier == planned:
            return before.load, Source.BEFORE
    if planned is None and context.is_bodyweight:
        return Load.of(0, context.unit), Source.PLAN
    return planned, Source.PLAN


def _bind_continuation(desk: _Desk, said: SaidSet) -> None:
    context = desk.context
    before = desk.before()
    number = desk.number if desk.number is not None else (before.set if before is not None else None)
    if number is None:
        desk.doubt(AskKind.WHICH_SET, said)
        number = context.open_sets[0] if context.open_sets else 1
    if said.label is not None and said.label != number:
        said = replace(said, words=replace(said.words, number=None))
    load, source = None, Source.SAID
    if said.stage is Stage.MINI and before is not None:
        load, source = before.load, Source.BEFORE
    elif said.load is not None:
        load = said.load.load
    if not context.takes_load:
        load = None
    elif load is None and said.stage is Stage.DROP and context.is_bodyweight and said.load is not None:
        load = Load.of(0, context.unit)
    row = Performed(context.exercise.name, number, said.stage, load, said.reps or 0, said.rir, said.side)
    desk.put(row, said, grounds_of(said, source, _counted(said), Source.BEFORE))


def _bind_same(desk: _Desk, said: SaidSet, label: int | None) -> None:
    """The set before again, with its sides, continuations and unit, for the next set."""
    before = desk.before()
    repeated_set = said.like if said.like is not None else None if before is None else before.set
    pool = [*desk.context.done, *desk.rows]
    group = [p for p in pool if p.set == repeated_set and p.stage is not Stage.WARMUP]
    if repeated_set is None or not group:
        desk.doubt(AskKind.SAME, said)
        return
    number = label if label is not None else desk.next_number(None)
    load = None if said.load is None else said.load.load
    for row in group:
        last = row.stage is Stage.WORK
        kept = row.load if load is None or row.stage is Stage.DROP else load
        desk.put(replace(row, set=number, load=kept, rir=said.rir if last else None), said, repeated(row, said))


def _bind_planned(desk: _Desk, said: SaidSet) -> None:
    """As planned: the planned load and repetitions of so many open sets (0: all), from the one that is named."""
    context = desk.context
    opens = [n for n in context.open_sets if (n, Side.LEFT) not in desk.filled or (n, Side.RIGHT) not in desk.filled]
    opens = opens if said.label is None else [n for n in opens if n >= (said.label or 0)]
    numbers = opens[: said.count] if said.count else opens
    for number in numbers:
        planned = context.planned(number)
        if planned is None or not _is_single(planned):
            desk.doubt(AskKind.RANGE, said)
            continue
        load = planned.load if context.takes_load else None
        if load is None and context.is_bodyweight:
            load = Load.of(0, context.unit)
        rir = said.rir if said.rates_all or number == numbers[-1] else None
        row = Performed(context.exercise.name, number, Stage.WORK, load, planned.reps.high, rir)
        desk.put(row, said, grounds_of(said, Source.PLAN, Source.PLAN))


def _is_single(planned: PlannedSet) -> bool:
    """Whether the plan leaves nothing to ask: one number of repetitions, and no finish."""
    return planned.reps.is_fixed and planned.finish is None
