"""What is stored of the sets that are put right: of `190 not 180`, the one with 180, and that 180 was its load."""

from collections.abc import Sequence

from bot.notation.answer import Request
from bot.notation.corrections.old_and_new.clause import Said, Value
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark
from bot.training.report import Performed, Stage


def is_told(said: Said, exercise: str, request: Request) -> bool:
    """Whether `set 2 was 190` can only be of a stored set: one that is named by its number, of the exercise that is
    named or under way.
    """
    planned = next(len(e.sets) for e in request.exercises if e.name == exercise)
    stored = {p.set for p in request.done if p.exercise == exercise}
    under_way = request.current in (None, exercise) and len(stored) < planned
    which = said.which is not None and not said.which.lasts
    return which and Kind.WAS in said.cues and (said.name is not None or under_way)


def exercise_of(name: Mark | None, request: Request) -> str | None:
    """The exercise that is put right: the one that is named, else the one of the last set; none where it has none."""
    if name is None:
        return request.done[-1].exercise
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


def what_changes(
    staged: Sequence[Sequence[Performed]], new: Value, old: Value | None, stages: Sequence[Stage]
) -> tuple[Stage | None, bool | None]:
    """The stage that is put right, and whether repetitions (`None`: not said); no stage where the old value is none."""
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
