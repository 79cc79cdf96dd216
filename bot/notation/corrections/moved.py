"""A stored set that was another exercise's: `that was rows not bench`, `move that last set over to rows`.

What was lifted stays; the set becomes the next one of the exercise that it was done on.
"""

from collections.abc import Sequence
from dataclasses import replace

from bot.notation.answer import AskKind
from bot.notation.clauses import kind_at, text_at
from bot.notation.draft import Draft
from bot.notation.grounds import Told
from bot.notation.kinds import Kind
from bot.notation.said import Doubt
from bot.notation.segments.edges import NUMBERS
from bot.notation.shaping import shape_marks
from bot.notation.tokens import Mark
from bot.notation.wordlist import words
from bot.training.report import SetKey, Stage

MOVING = frozenset(words("move put book log file count belongs belong shift switch change swap transfer reassign"))
_TO_COME = frozenset(words("next now going gonna doing will tomorrow ill want wanna can should today"))
_FILED = frozenset(words("filed logged put have got wrote booked entered saved down under as"))
_LED = (Kind.FILL, Kind.WITH, Kind.FOR, Kind.AT, Kind.COMMA, Kind.LABEL, Kind.ORD)
"""Kinds that may stand between a word of moving, of being or of denial and the exercise."""
_OTHER = (Kind.QUERY, Kind.X, Kind.REPS, Kind.SAME, Kind.SKIP, Kind.SKIPPED, Kind.SCRAP, Kind.KG, Kind.LB, Kind.RPE,
          Kind.RIR, Kind.ALL, Kind.SETS, Kind.PLANNED, Kind.THEN, Kind.OR)  # fmt: skip


def move_set(draft: Draft, piece: Sequence[Mark]) -> bool:
    """Whether a piece says that a stored set was another exercise's, and nothing else; it is moved, or asked about."""
    last = draft.record.last()
    if last is None or last.set is None or not any(m.kind is Kind.NAME for m in piece):
        return False
    shaped = shape_marks(piece, False)
    if any(m.kind in (*NUMBERS, *_OTHER) for m in shaped):
        return False
    labels = [
        int(m.value) for m in shaped if m.kind is Kind.LABEL and m.value is not None and _labels_stored(shaped, m)
    ]
    target = _target(shaped, draft.record.place_of(last.exercise))
    key = (last.exercise, labels[0] if labels else last.set)
    if target is None or not draft.record.rows(key):
        return False
    if not _put(draft, key, target):
        draft.doubt(Doubt(AskKind.WHICH_EXERCISE, piece[0].start, piece[-1].end))
        return True
    draft.note_replaced((piece[0].start, piece[-1].end))
    return True


def _labels_stored(marks: Sequence[Mark], label: Mark) -> bool:
    """Whether a set's number is the stored one's: not that of `it was my first row set`."""
    at = next(i for i, m in enumerate(marks) if m is label)
    return kind_at(marks, at + 1) is not Kind.NAME


def _target(marks: Sequence[Mark], stored: int | None) -> int | None:
    """The exercise that the set was done on, where it is said of which it was not, or that it is to be moved."""
    names = [i for i, m in enumerate(marks) if m.kind is Kind.NAME]
    if not names or any(len(marks[i].names) != 1 for i in names):
        return None
    named = {marks[i].names[0] for i in names}
    others = named - {stored}
    if len(others) != 1 or len(named) > 2:
        return None
    target = others.pop()
    at = next(i for i in names if marks[i].names[0] == target)
    if _led_by(marks, at) is Kind.NOT:
        return None
    said = {w for m in marks for w in m.text.split()}
    if len(named) > 1:
        old = next(i for i in names if marks[i].names[0] == stored)
        before = {w for m in marks[max(0, old - 4) : old] for w in m.text.split()}
        denied = _led_by(marks, old) is Kind.NOT or "instead" in before
        filed = bool(before & _FILED) and _led_by(marks, at) in (Kind.WAS, Kind.MEANT)
        told = any(m.kind in (Kind.WAS, Kind.MEANT, Kind.LASTSET, Kind.SET, Kind.LABEL) for m in marks)
        return target if told and (denied or filed) and not said & _TO_COME else None
    pointed = any(m.kind in (Kind.LASTSET, Kind.SET) for m in marks) or bool(said & {"that", "it", "thats"})
    moved = bool(said & MOVING) and (_led_by(marks, at) is Kind.TO or bool(said & {"under", "on", "to"}))
    wrong = any(m.kind is Kind.MEANT for m in marks) and _led_by(marks, at) is Kind.WAS
    return target if pointed and (moved or wrong) else None


def _led_by(marks: Sequence[Mark], name: int) -> Kind | None:
    """The kind of word that leads a name: `not` of `not on the bench press`."""
    at = name - 1
    while kind_at(marks, at) in _LED and text_at(marks, at) != ",":
        at -= 1
    return kind_at(marks, at)


def _put(draft: Draft, key: SetKey, target: int) -> bool:
    """Makes a set the next one of an exercise; not where its sets are all done, where it is done or loaded otherwise,
    or where what was lifted is far from its plan.
    """
    record = draft.record
    exercise = record.exercises[target]
    old = record.exercises[record.place_of(key[0]) or 0]
    alike = all(getattr(exercise, what) == getattr(old, what) for what in ("sides", "measure", "load_style"))
    context = record.context(target)
    open_sets, rows = context.open_sets, record.rows(key)
    if not alike or not open_sets or any(r.stage is Stage.WARMUP for r in rows):
        return False
    before = [p.load for p in context.worked]
    loads = [r.load for r in rows if r.load is not None and r.stage is Stage.WORK]
    likely = all(context.is_load_in_reason(load, open_sets[0], before, False) for load in loads)
    if not likely or not all(context.are_reps_in_reason(r.reps, open_sets[0]) for r in rows):
        return False

    def moved(told: Sequence[Told]) -> list[Told]:
        return [replace(t, row=replace(t.row, exercise=exercise.name, set=open_sets[0])) for t in told]

    record.change(key, moved)
    record.last_exercise = target
    return True
