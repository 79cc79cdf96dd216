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
    out = list(marks)
    place = 0
    while place < len(out):
        end = _end(out, place)
        if end is not None and _is_on_body(out, place, record, under):
            body = replace(out[place], kind=Kind.BODY, text="without it", value=None, parts=(), end=out[end - 1].end)
            out[place:end] = [body]
        place += 1
    return out


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
