"""A correction told among talk, put plainly: its set, what was told before, and the one number that it really was.

`sorry mistyped, 6 pull ups last set`, `8 reps on the first was generous, call it 7`, `i said 80 but loaded 82.5 haha`.
"""

from collections.abc import Sequence
from dataclasses import replace
from decimal import Decimal

from bot.notation.clauses import part_of
from bot.notation.kinds import Kind
from bot.notation.record import Record
from bot.notation.tokens import Mark
from bot.notation.wordlist import words
from bot.training.report import Performed

_ERRORS = frozenset(words(
    "typed typo mistyped count counted miscounted misread misremembered error mistake wrong wrote put logged confused",
    "mixed thumb finger autocorrect lied meant",
))  # fmt: skip
_UNITS = (Kind.KG, Kind.LB, Kind.REPS, Kind.S, Kind.SECONDS, Kind.METRES)
_OTHER = (Kind.X, Kind.RPE, Kind.RIR, Kind.TANK, Kind.SAME, Kind.OTHERTIME, Kind.DROP, Kind.MINI, Kind.WARMUP,
          Kind.SETS, Kind.SCRAP, Kind.PLANNED, Kind.DROPPED, Kind.L, Kind.R, Kind.NO, Kind.SLASH, Kind.EMPTY,
          Kind.BODY, Kind.CLOCK, Kind.BAD, Kind.ANOTHER, Kind.GAP, Kind.SKIP, Kind.SKIPPED)  # fmt: skip
"""Kinds that tell of something else than one number of a stored set."""
_LINKED = ([Kind.NUM, Kind.FOR, Kind.NUM], [Kind.NUM, Kind.AT, Kind.NUM], [Kind.NUM, Kind.COMMA, Kind.NUM])
_COMING = frozenset(words("next this now then remaining another late delay forgot slow"))


def put_plainly(piece: Sequence[Mark], record: Record, place: int | None) -> list[Mark] | None:
    """The correction in plain order; none where it is none, or where its number or its set is not clear."""
    last = record.last(place)
    piece = [replace(m, kind=Kind.FILL) if _is_moved(piece, i) else m for i, m in enumerate(piece)]
    if last is None or any(m.kind in _OTHER for m in piece) or not _is_cued(piece):
        return None
    if {w for m in piece for w in m.text.split()} & _COMING or len({m.names for m in piece if m.names}) > 1:
        return None
    kinds = [m.kind for m in piece]
    if any(kinds[i : i + 3] in _LINKED for i in range(len(kinds))) or kinds[:1] == [Kind.AT]:
        return None
    if sum(m.kind in (Kind.LEFT, Kind.RIGHT) for m in piece) > 1:
        return None
    labels = [p for p, m in enumerate(piece) if m.kind is Kind.LABEL or _is_ordinal(piece, p) or _is_of_set(piece, p)]
    numbers = [p for p, m in enumerate(piece) if m.kind is Kind.NUM and p not in labels]
    number = _set_of(piece, labels, last)
    written = next((p for p in numbers if p and kinds[p - 1] is Kind.WROTE), None)
    if written is not None and not labels and len(numbers) == 2:
        number = _set_with(record, last, piece[written])
    stored = [] if number is None else record.rows((last.exercise, number))
    if len(labels) > 1 or not numbers or len(numbers) > 2 or not stored:
        return None
    old = written if written is not None else _old(piece, numbers, stored[0]) if len(numbers) == 2 else None
    if len(numbers) == 2 and old is None:
        return None
    new = next((p for p in numbers if p != old), None)
    if new is None:
        return None
    said = [replace(piece[new], kind=Kind.MEANT, text="", value=None, end=piece[new].start), *_with_unit(piece, new)]
    if labels:
        said.insert(0, replace(piece[labels[0]], kind=Kind.LABEL, parts=()))
    elif number != last.set and number is not None:
        said.insert(0, replace(piece[new], kind=Kind.LABEL, value=Decimal(number), parts=(), end=piece[new].start))
    told = [] if old is None else [replace(piece[old], kind=Kind.WROTE, value=None), piece[old]]
    sides = [m for m in piece if m.kind in (Kind.LEFT, Kind.RIGHT)]
    every = [m for m in piece if m.kind is Kind.ALL]
    return [*told, *sides, *every, *said]


def _is_moved(piece: Sequence[Mark], place: int) -> bool:
    """`i put 25 for the last one but i'd moved the pin to 30`: the load was changed before the set, no drop."""
    moved = piece[place].text.split()[:1] in (["moved"], ["changed"], ["upped"], ["put"])
    return piece[place].kind is Kind.DROP and moved and any(m.kind is Kind.WROTE for m in piece[:place])


def _is_cued(piece: Sequence[Mark]) -> bool:
    """Whether a word of the piece corrects a number: not an apology that has words of its own about something else."""
    for place, mark in enumerate(piece):
        if mark.kind in (Kind.MEANT, Kind.WROTE):
            return True
        if mark.kind is Kind.SORRY:
            start, end = part_of(piece, place)
            about = [m for m in piece[start:end] if m.kind is Kind.WORD]
            if not about or {w for m in piece for w in m.text.split()} & _ERRORS:
                return True
    return False


def _is_ordinal(piece: Sequence[Mark], place: int) -> bool:
    return piece[place].kind is Kind.ORD


def _is_of_set(piece: Sequence[Mark], place: int) -> bool:
    """The number of `set 2`."""
    return piece[place].kind is Kind.NUM and place > 0 and piece[place - 1].kind is Kind.SET


def _set_of(piece: Sequence[Mark], labels: Sequence[int], last: Performed) -> int | None:
    value = piece[labels[0]].value if labels else None
    return last.set if value is None else int(value)


def _set_with(record: Record, last: Performed, old: Mark) -> int | None:
    """The set that was stored with an old value: the last one where it was, else the only one that was."""
    place = record.place_of(last.exercise)
    rows = [] if place is None else record.context(place).worked
    sets = [r.set for r in rows if old.value in (r.reps, None if r.load is None else r.load.amount)]
    return last.set if last.set in sets else sets[0] if len(set(sets)) == 1 else None


def _old(piece: Sequence[Mark], numbers: Sequence[int], row: Performed) -> int | None:
    """Which of two numbers is what was told before: one that is stored, where the other is not."""
    known = [p for p in numbers if piece[p].value in (row.reps, None if row.load is None else row.load.amount)]
    return known[0] if len(known) == 1 else None


def _with_unit(piece: Sequence[Mark], place: int) -> list[Mark]:
    after = piece[place + 1 : place + 2]
    return [piece[place], *(m for m in after if m.kind in _UNITS)]
