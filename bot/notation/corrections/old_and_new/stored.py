"""What is stored of the sets that are put right: of `190 not 180`, the one with 180, and that 180 was its load."""

from collections.abc import Sequence
from dataclasses import replace
from decimal import Decimal

from bot.notation.answer import Request
from bot.notation.bounds import EASIEST, HARDEST, MOST_LEFT
from bot.notation.context import LEAST, MOST
from bot.notation.corrections.old_and_new.clause import EVERY, Said, Value
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark
from bot.training.report import Performed, Stage


def is_told(said: Said, exercise: str, request: Request, *, told: bool = False) -> bool:
    """Whether `set 2 was 190` can only be of a stored set: one that is named by its number, of the exercise that is
    named or under way. `told`: it is told of a set, so that the verb may be left out.
    """
    planned = {e.name: len(e.sets) for e in request.exercises}
    stored = {p.set for p in request.done if p.exercise == exercise}
    whole = len(stored) >= planned[exercise]
    ended = request.current == exercise or not any(_has_open(name, planned[name], request) for name in planned)
    under_way = ended if whole else request.current in (None, exercise)
    which = said.which is not None and (whole or not said.which.lasts)
    plainly = told or Kind.WAS in said.cues or said.owned or whole or said.hedge is not None
    return which and plainly and (said.name is not None or under_way)


def _has_open(name: str, planned: int, request: Request) -> bool:
    """Whether sets of an exercise are still to come."""
    return len({p.set for p in request.done if p.exercise == name}) < planned


def exercise_of(name: Mark | None, request: Request, stage: Stage = Stage.WORK) -> str | None:
    """The exercise that is put right: the one that is named, else the one of the last set (of the last drop, where one
    is told of); none where it has none.
    """
    if name is None:
        staged = [p.exercise for p in request.done if p.stage is stage]
        return staged[-1] if staged else request.done[-1].exercise
    done = {p.exercise for p in request.done}
    named = [request.exercises[p].name for p in name.names if request.exercises[p].name in done]
    return named[0] if len(named) == 1 else None


def with_old(rows: Sequence[Performed], old: Value | None) -> tuple[int, ...]:
    """Where no set is named: the last one, where it was the old value, else the only one that was."""
    sets = sorted({p.set for p in rows if p.set is not None and old is not None and _was(p, old)})
    last = max((p.set for p in rows if p.set is not None), default=0)
    return (last,) if last in sets else tuple(sets) if len(sets) == 1 else ()


def _was(row: Performed, value: Value) -> bool:
    """Whether a stored set has a value: as its load, help as it is said or without a sign, or as its repetitions."""
    return _was_load(row, value) or (not value.loads and row.reps == value.amount)


def _was_load(row: Performed, value: Value) -> bool:
    load = None if row.load is None else row.load.amount
    return not value.counts and load is not None and value.amount in (load, -load)


def which_continuations(said: Said, rows: Sequence[Performed], old: Value | None) -> list[tuple[Performed, int | None]]:
    """The drops or minis that are put right, and which of its set's each is (`None`: the only one); none in doubt."""
    named = None if said.which is None else said.which.sets
    staged = [p for p in rows if p.stage is said.stage and (named is None or p.set in named)]
    if not staged or (named is not None and len(named) > 1):
        return []
    last = [p for p in staged if p.set == staged[-1].set]
    once = len({p.set for p in staged}) == len(staged)
    of_set = staged if once and said.nth is not None else last
    if old is not None and named is None and said.nth is None and not any(_was(p, old) for p in last):
        sets = {p.set for p in staged if _was(p, old)}
        of_set = [p for p in staged if {p.set} == sets]
    nth = len(of_set) if said.nth is not None and said.nth < 0 else said.nth
    fits = [i for i, p in enumerate(of_set) if (old is None or _was(p, old)) and nth in (None, EVERY, i + 1)]
    if len(fits) != (len(of_set) if nth == EVERY else 1):
        return []
    return [(of_set[i], None if once or len(of_set) == 1 else i + 1) for i in fits]


def as_rated(said: Said, rows: Sequence[Performed], none: Mark | None) -> Said:
    """The number of `first one 3 rir, second 2`, the `none` of `set 3 none` as an effort, where nobody did so few."""
    if none is not None and said.which is not None and not said.plain and said.effort is None:
        return replace(said, effort=(Decimal(0), none, none))
    if said.effort is not None or said.which is None or len(said.plain) != 1 or said.olds or said.stage is not None:
        return said
    value = said.plain[0]
    least = min((p.reps for p in rows if p.set in said.which.sets), default=0)
    if value.counts or value.loads or len(value.marks) > 1 or not 0 <= 2 * value.amount < min(least, 2 * MOST_LEFT + 1):
        return said
    return replace(said, effort=(value.amount, value.marks[0], value.marks[0]), plain=[])


def as_scaled(said: Said, rows: Sequence[Performed]) -> Said:
    """The number of `rpe 9 on the second, 9.5 on the third` as an effort on the same scale, where it is no load."""
    if said.effort is not None or said.which is None or len(said.plain) != 1 or said.olds or said.stage is not None:
        return said
    value = said.plain[0]
    loads = [p.load.amount for p in rows if p.set in said.which.sets and p.load is not None]
    scaled = EASIEST < value.amount <= HARDEST and value.amount * 2 == int(value.amount * 2)
    if value.counts or value.loads or len(value.marks) > 1 or not scaled:
        return said
    counts = [Decimal(p.reps) for p in rows if p.set in said.which.sets] if Kind.WAS in said.cues else []
    if any(LEAST * one <= value.amount <= MOST * one for one in (*loads, *counts)):
        return said
    return replace(said, effort=(HARDEST - value.amount, value.marks[0], value.marks[0]), plain=[])


def counts_of_part(row: Performed, new: Value) -> bool | None:
    """Whether a bare number is the repetitions of a drop, beside what is stored of it; `None` in doubt."""
    load = None if row.load is None else row.load.amount
    loads = load is not None and LEAST * load <= new.amount <= MOST * load
    counts = new.amount == int(new.amount) and new.amount <= 2 * row.reps
    return None if new.pair or loads == counts or new.loads or new.counts else counts


def what_changes(
    staged: Sequence[Sequence[Performed]], new: Value, old: Value | None, stages: Sequence[Stage]
) -> tuple[Stage | None, bool | None]:
    """The stage that is put right, and whether repetitions (`None`: not said); no stage where the old value is none."""
    if new.pair:
        return stages[0], None
    if old is None and all(any(p.stage is stages[0] for p in one) for one in staged):
        return stages[0], True if new.counts else False if new.loads else None
    if old is None:
        return None, None
    for stage in stages:
        rows = [[p for p in one if p.stage is stage] for one in staged]
        if not all(rows):
            continue
        loads = all(_was_load(p, old) for one in rows for p in one) and not new.counts
        reps = all(not old.loads and p.reps == old.amount for one in rows for p in one) and not new.loads
        if loads != reps:
            return stage, reps
        if loads:
            return None, None
    return None, None


def all_helped(staged: Sequence[Sequence[Performed]]) -> bool:
    """Whether the sets are stored with help, so that a number without a sign is help."""
    return all(p.load is not None and p.load.thousandths < 0 for one in staged for p in one)
