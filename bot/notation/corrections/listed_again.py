"""The sets of a message told again as a list, with more behind: `70x6 70x5 wait no.. my notes say 6 6 5`."""

from collections.abc import Sequence

from bot.notation.corrections.revised import Values, apply_values
from bot.notation.kinds import Kind
from bot.notation.record import Record
from bot.notation.tokens import Mark
from bot.training.report import SetKey, Stage

_CUES = (Kind.SORRY, Kind.NO, Kind.MEANT)
_PLAIN = (*_CUES, Kind.NUM, Kind.FILL, Kind.COMMA, Kind.STOP, Kind.LINE, Kind.WORD, Kind.WROTE, Kind.WAS, Kind.AND,
          Kind.OTHERTIME, Kind.GAP, Kind.COLON, Kind.SLASH, Kind.REPS)  # fmt: skip


def tells_list_again(piece: Sequence[Mark], record: Record) -> bool:
    """Whether a piece opens with a word that corrects and lists bare numbers, as many as the sets told or more."""
    if next((m.kind for m in piece if m.kind is not Kind.FILL), None) not in _CUES:
        return False
    numbers = [m for m in piece if m.kind is Kind.NUM]
    keys = _told(record)
    plain = all(m.kind in _PLAIN for m in piece) and all(m.value is not None for m in numbers)
    enough = len(numbers) > 2 or not any(m.kind is Kind.NO for m in piece)
    return plain and enough and 1 < len(keys) <= len(numbers)


def list_again(piece: Sequence[Mark], record: Record) -> list[Mark]:
    """Puts the numbers over the sets told; gives those behind, which are sets of their own."""
    numbers = [i for i, m in enumerate(piece) if m.kind is Kind.NUM]
    keys = _told(record)
    for key, at in zip(keys, numbers, strict=False):
        mark = piece[at]
        values = Values(reps=int(mark.value or 0), reps_at=(mark.start, mark.end))
        record.change(key, lambda rows, values=values: apply_values(rows, values))  # type: ignore[misc]
    return list(piece[numbers[len(keys)] :]) if len(numbers) > len(keys) else []


def _told(record: Record) -> list[SetKey]:
    """The sets that the message has told, where they are of one exercise with one load, in order; else none."""
    rows = [r for r in record.said if r.stage is Stage.WORK and r.set is not None and r.side is None]
    alike = len({(r.exercise, r.load) for r in rows}) == 1 and len(rows) == len(record.said)
    return list(dict.fromkeys((r.exercise, r.set) for r in rows if r.set is not None)) if alike else []
