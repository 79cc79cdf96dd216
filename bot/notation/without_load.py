"""Body weight by what was left off: `in my 10 kg vest 11, without it 15`, `8 7 7 without the weight`.

Only of an exercise on body weight, and behind a load or where nothing but repetitions is told.
"""

from collections.abc import Sequence
from dataclasses import replace

from bot.notation.clauses import kind_at, text_at
from bot.notation.kinds import Kind
from bot.notation.record import Record
from bot.notation.tokens import Mark
from bot.training.plan import LoadStyle

_IT = frozenset(["it", "them", "that", "the", "my", "any", "vest", "belt", "weight", "plate", "dumbbell", "chain"])
_ENDS = (None, Kind.COMMA, Kind.STOP, Kind.LINE, Kind.BREAK, Kind.NUM, Kind.COLON, Kind.FOR, Kind.CLOSE)


def with_body_weight(marks: Sequence[Mark], record: Record, under: int | None) -> list[Mark]:
    """The marks with such words as body weight."""
    out = _behind_sets(list(marks), record, under)
    place = 0
    while place < len(out):
        end = _end(out, place)
        if end is not None and _is_on_body(out, place, record, under):
            body = replace(out[place], kind=Kind.BODY, text="without it", value=None, parts=(), end=out[end - 1].end)
            out[place:end] = [body]
        place += 1
    return out


def _behind_sets(marks: list[Mark], record: Record, under: int | None) -> list[Mark]:
    """`dips: 15, 12 and 12. No weight.`: told in a sentence of its own, of the sets of the one before."""
    for place in range(2, len(marks)):
        if marks[place].kind is not Kind.BODY or marks[place - 1].kind is not Kind.STOP:
            continue
        start = next((i + 1 for i in range(place - 2, -1, -1) if marks[i].kind in _SENTENCES), 0)
        end = next((i for i in range(place, len(marks)) if marks[i].kind in _SENTENCES), len(marks))
        told, rest = marks[start : place - 1], marks[place + 1 : end]
        if not any(m.kind is Kind.NUM for m in told) or any(m.kind in _LOADS for m in told):
            continue
        if any(m.kind in (*_LOADS, Kind.NUM, Kind.NAME) and m.kind is not Kind.BODY for m in rest):
            continue
        if _is_on_body(marks, place, record, under):
            comma = replace(marks[place - 1], kind=Kind.COMMA, text=",")
            gone = [replace(m, kind=Kind.GAP) for m in rest]
            joined = [] if kind_at(marks, place - 2) is Kind.TIMES else [comma]
            return [*marks[: place - 1], *joined, marks[place], *gone, *marks[end:]]
    return marks


_SENTENCES = (Kind.STOP, Kind.LINE, Kind.QUERY)
_LOADS = (Kind.BODY, Kind.KG, Kind.LB, Kind.PLUS, Kind.SIGN, Kind.ADDED, Kind.ASSIST, Kind.BAND, Kind.X, Kind.MINUS)
"""Kinds of sets whose load is told, or may be."""


def _end(marks: Sequence[Mark], place: int) -> int | None:
    """Where `without it` ends that starts here; `None` where it does not."""
    if marks[place].text != "without" or not any(m.kind is Kind.NUM for m in marks):
        return None
    at = place + 1
    while text_at(marks, at) in _IT:
        at += 1
    told = kind_at(marks, at) is Kind.NUM and kind_at(marks, at + 1) in (*_ENDS, Kind.AND, Kind.REPS)
    return at if told or kind_at(marks, at) in (None, Kind.COMMA, Kind.STOP, Kind.LINE, Kind.BREAK) else None


def _is_on_body(marks: Sequence[Mark], place: int, record: Record, under: int | None) -> bool:
    """Whether the exercise that is spoken of there is done on body weight."""
    named = [m.names[0] for m in marks[:place] if m.kind is Kind.NAME and len(m.names) == 1]
    which = named[-1] if named else under
    return which is not None and record.exercises[which].load_style is LoadStyle.BODYWEIGHT
