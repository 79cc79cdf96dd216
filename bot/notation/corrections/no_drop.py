"""Drops and minis that were told and never done, or done and forgotten: `scratch the drop, i never did it`.

What is taken back is the continuation, and its work set stays. `forgot to put in the drop, it was 25 for 8` adds one.
"""

from collections.abc import Sequence
from dataclasses import replace
from decimal import Decimal

from bot.notation.answer import Request
from bot.notation.clauses import kind_at, parts_between
from bot.notation.kinds import Kind
from bot.notation.record import Record
from bot.notation.tokens import Mark
from bot.notation.wordlist import words
from bot.training.plan import Drop, Mini
from bot.training.report import Performed, SetKey, Stage

_ENDS = (Kind.STOP, Kind.LINE, Kind.QUERY)
_STAGES = {Kind.DROP: Stage.DROP, Kind.DROPPED: Stage.DROP, Kind.MINI: Stage.MINI}
_TAKING = (Kind.SCRAP, Kind.SKIP, Kind.SKIPPED, Kind.UNDONE, Kind.NO)
_NEVER = frozenset(
    words("never didnt scrap scratch delete remove cancel forget ignore undo erase bin take not no wasnt")
)
_PASSED = (Kind.FILL, Kind.COMMA, Kind.WAS, Kind.AT, Kind.WITH, Kind.OTHERTIME, Kind.DONE, Kind.SORRY, Kind.LASTSET,
           Kind.LASTREP, Kind.SET, Kind.NAME, Kind.DASH, Kind.FOR, Kind.AND, Kind.X, Kind.NUM, Kind.WORD,
           *_TAKING, *_STAGES)  # fmt: skip
_FORGOTTEN = frozenset(words("forgot forgotten forget missed missing add mention"))
_TELLING = frozenset(words("add mention log report send write say put tell note"))
"""With `left` or `didnt` these are of what was not told; `left the drop out` is of what was not done."""
_FAR = 12
"""Marks between the words of a drop and its numbers."""


def with_drops(marks: Sequence[Mark], request: Request) -> list[Mark]:
    """The marks with each such sentence in plain wording: `scrap the drop`, `drop 25 for 8`."""
    if not request.done or not any(m.kind in _STAGES for m in marks):
        return list(marks)
    out: list[Mark] = []
    for start, end in parts_between(marks, _ENDS):
        sentence = list(marks[start:end])
        put = any(m.kind is Kind.LABEL for m in sentence)
        out += _plain(sentence, request) if not put and any(m.kind in _STAGES for m in sentence) else sentence
        out += marks[end : end + 1]
    return out


def _plain(sentence: list[Mark], request: Request) -> list[Mark]:
    at = next(i for i, m in enumerate(sentence) if m.kind in _STAGES)
    stage = _STAGES[sentence[at].kind]
    rows = _rows(sentence, request)
    stored = [p for p in rows if p.stage is stage]
    said = {w for m in sentence for w in m.text.split()}
    if not stored:
        before = {w for m in sentence[: at + 1] for w in m.text.split()}
        forgot = bool(before & _FORGOTTEN) or bool(before & {"left", "didnt"} and before & _TELLING)
        return _of_untold(_added(sentence, at), stage, request) if forgot and rows else sentence
    number = stored[-1].set or 0
    taken = said & _NEVER or any(m.kind in _TAKING for m in sentence)
    if not taken or not all(m.kind in _PASSED for m in sentence) or not _fits(sentence, rows, number):
        return sentence
    mark = sentence[at]
    drop = replace(mark, kind=Kind.DROP if stage is Stage.DROP else Kind.MINI, value=None)
    label = replace(mark, kind=Kind.LABEL, value=Decimal(number), parts=(), names=())
    return [*(m for m in sentence if m.kind is Kind.NAME), label, replace(mark, kind=Kind.SCRAP, text="scrap"), drop]


def _of_untold(sentence: list[Mark], stage: Stage, request: Request) -> list[Mark]:
    """The sentence with the exercise whose finish is planned and not told yet, where the last one has none and no name
    is said: `forgot to write the drop before, 65 for 12`.
    """
    kind = Drop if stage is Stage.DROP else Mini
    planned = {e.name: {n for n, s in enumerate(e.sets, 1) if isinstance(s.finish, kind)} for e in request.exercises}
    told = {(p.exercise, p.set) for p in request.done if p.stage is stage}
    whole = [p for p in request.done if (p.exercise, p.set) not in told]
    untold = [p.exercise for p in whole if p.set in planned.get(p.exercise, ())]
    if any(m.kind is Kind.NAME for m in sentence) or not untold or planned[request.done[-1].exercise]:
        return sentence
    place = next(i for i, e in enumerate(request.exercises) if e.name == untold[-1])
    start = sentence[0].start
    return [Mark(Kind.NAME, untold[-1], start, start, names=(place,)), *sentence]


def _rows(sentence: Sequence[Mark], request: Request) -> list[Performed]:
    """The stored sets of the exercise that is named, else of the one that was told last."""
    names = {request.exercises[p].name for m in sentence if m.kind is Kind.NAME for p in m.names}
    done = [p for p in request.done if p.exercise in names] if names else list(request.done)
    return [p for p in done if p.exercise == done[-1].exercise]


def _fits(sentence: Sequence[Mark], rows: Sequence[Performed], number: int) -> bool:
    """Whether the numbers beside it are those of its work set as stored: `only the 12x11`, `on set 3`."""
    told = [m.value for i, m in enumerate(sentence) if m.kind is Kind.NUM and kind_at(sentence, i - 1) is not Kind.SET]
    named = [m.value for i, m in enumerate(sentence) if m.kind is Kind.NUM and kind_at(sentence, i - 1) is Kind.SET]
    work = next((p for p in rows if p.set == number and p.stage is Stage.WORK), None)
    load = None if work is None or work.load is None else work.load.amount
    whole = work is not None and told in ([], [load, work.reps], [load], [work.reps])
    return whole and all(value == number for value in named)


def _added(sentence: list[Mark], at: int) -> list[Mark]:
    """`drop 25 for 8`: the words around a drop that was forgotten, as talk."""
    first = next((i for i in range(at, min(len(sentence), at + _FAR)) if sentence[i].kind is Kind.NUM), None)
    between = () if first is None else sentence[at + 1 : first]
    plain = all(m.kind in (Kind.FILL, Kind.COMMA, Kind.WAS, Kind.COLON, Kind.DASH, Kind.WITH) for m in between)
    if first is None or not plain or any(m.kind is Kind.NUM for m in sentence[:at]):
        return sentence
    names = [m for m in sentence[:at] if m.kind is Kind.NAME]
    return [*names, replace(sentence[at], kind=Kind.DROP if sentence[at].kind is Kind.DROPPED else sentence[at].kind),
            *sentence[first:]]  # fmt: skip


def take_drop_back(piece: Sequence[Mark], record: Record, place: int | None) -> SetKey | None:
    """Takes a set's stored continuations back, or the numbered one, where the piece scraps it; gives the set."""
    at = next((i for i, m in enumerate(piece) if m.kind is Kind.SCRAP), len(piece))
    nth = int(piece[at + 1].value or 0) if kind_at(piece, at + 1) is Kind.ORD else None
    stage = _STAGES.get(kind_at(piece, at + 1 + (nth is not None)) or Kind.GAP)
    last = record.last(place)
    if stage is None or last is None or any(m.kind is Kind.NUM for m in piece):
        return None
    label = next((int(m.value) for m in piece[:at] if m.kind is Kind.LABEL and m.value is not None), last.set or 0)
    key = (last.exercise, label)
    rows = record.rows(key)
    if not any(r.stage is stage for r in rows) or not any(r.stage is Stage.WORK for r in rows):
        return None
    gone = [i for i, r in enumerate(rows) if r.stage is stage]
    gone = gone if nth is None else gone[nth - 1 : nth]
    record.change(key, lambda told: [t for i, t in enumerate(told) if i not in gone])
    record.last_exercise = record.place_of(last.exercise)
    return key
