"""What sounds like a correction and tells of a set to come: `set 2 was nine` where set 2 is open, `the next was 9`."""

from collections.abc import Sequence
from itertools import pairwise

from bot.notation.clauses import kind_at
from bot.notation.kinds import Kind
from bot.notation.record import Record
from bot.notation.shaping import shape_marks
from bot.notation.tokens import Mark
from bot.notation.wordlist import words

_CORRECTING = frozenset((Kind.SORRY, Kind.MEANT, Kind.NOT, Kind.WROTE, Kind.SCRAP))
_COMING = frozenset(words("next other others rest remaining another"))
ESTIMATES = ("call it", "call that", "say", "lets say", "lets call it", "make it")
"""Words of a guess: of a set that is stored where they follow it, of a new one behind its number."""
_NOW = (["this", "time"], ["this", "one"])


def tells_new(piece: Sequence[Mark], record: Record) -> bool:
    """Whether `was` tells of a set that is not stored, rather than of one that is."""
    if any(m.kind is Kind.MEANT and m.text in ESTIMATES for m in piece):
        rest = [m for m in piece if not (m.kind is Kind.MEANT and m.text in ESTIMATES)]
        return not any(m.kind in _CORRECTING for m in rest) and (_is_next(rest) or _is_open(rest, record))
    if _ended_by_a_hurt(piece, record):
        return True
    if _is_of_another(piece, record):
        return True
    if _is_sole_left(piece, record) or _is_sorry_for_next(piece, record):
        return True
    said_words = [w for m in piece for w in m.text.split()]
    if said_words[-2:] == ["this", "time"] and not any(m.kind in (Kind.LABEL, Kind.ORD, Kind.SORRY) for m in piece):
        return True
    if any(m.kind in _CORRECTING for m in piece) or not any(m.kind is Kind.WAS for m in piece):
        return False
    cue = next(i for i, m in enumerate(piece) if m.kind is Kind.WAS)
    if {w for m in piece[:cue] for w in m.text.split()} & _COMING:
        return True
    if _is_rated_whole(piece, record) or _is_just_done(piece[:cue], piece[cue:], record):
        return True
    if any(said_words[i : i + 2] in _NOW for i in range(len(said_words))):
        return not any(m.kind in (Kind.LABEL, Kind.ORD, Kind.LASTSET) for m in piece)
    return _is_open(piece, record)


def _is_of_another(piece: Sequence[Mark], record: Record) -> bool:
    """`so that was 12.5 for 9` behind presses of 45 that are all done: the planned load of the next exercise."""
    marks = [m for m in piece if m.kind not in (Kind.FILL, Kind.KG, Kind.LB)]
    kinds = [m.kind for m in marks]
    whole = kinds in ([Kind.WAS, Kind.NUM, Kind.X, Kind.NUM], [Kind.WAS, Kind.NUM, Kind.FOR, Kind.NUM])
    last = record.last(record.last_exercise)
    if not whole or last is None or last.load is None or _opens(piece, record):
        return False
    following = (record.context(i) for i in range(len(record.exercises)))
    context = next((c for c in following if c.open_sets), None)
    if context is None or marks[1].value is None or marks[3].value is None:
        return False
    load = context.planned_load(context.open_sets[0])
    planned = load is not None and load.amount == marks[1].value != last.load.amount
    return planned and int(marks[3].value) in context.range_of(context.open_sets[0])


def _is_just_done(before: Sequence[Mark], behind: Sequence[Mark], record: Record) -> bool:
    """`the one i've just done is 270 for 9`: a whole set, with words for what was done this moment."""
    said = [w for m in before for w in m.text.split()]
    just = any(a == "just" and b in _DONE for a, b in pairwise(said))
    kinds = [m.kind for m in behind if m.kind not in (Kind.FILL, Kind.KG, Kind.LB)]
    whole = any(kinds[i : i + 3] in ([Kind.NUM, Kind.X, Kind.NUM], [Kind.NUM, Kind.FOR, Kind.NUM])
                for i in range(len(kinds)))  # fmt: skip
    return just and whole and bool(_opens([*before, *behind], record))


def _ended_by_a_hurt(piece: Sequence[Mark], record: Record) -> bool:
    """`sharp stab at lockout so i put it down, that was 95 for 3`: the set in which it hurt, told right behind."""
    cue = next((i for i, m in enumerate(piece) if m.kind is Kind.WAS), 0)
    behind = [m.kind for m in piece[cue + 1 :] if m.kind not in (Kind.FILL, Kind.KG, Kind.LB)]
    whole = behind[:3] in ([Kind.NUM, Kind.X, Kind.NUM], [Kind.NUM, Kind.FOR, Kind.NUM])
    hurt = any(m.kind is Kind.GAP and m.text == "?" for m in piece[:cue])
    hurt = hurt and all(m.kind in _BESIDE_HURTS or m.text in _STOPPED for m in piece[:cue])
    return hurt and whole and not _CORRECTING & set(behind) and bool(_opens(piece, record))


_BESIDE_HURTS = (Kind.GAP, Kind.FILL, Kind.COMMA, Kind.AND, Kind.AT)
_STOPPED = frozenset(["stopped", "had to stop", "stopped there", "cut it", "bailed", "racked", "racked it", "reracked"])
_DONE = frozenset(words("did done finished completed had got racked"))
_RATES = (Kind.RPE, Kind.RIR, Kind.TANK, Kind.COULD, Kind.MORE)


def _is_rated_whole(piece: Sequence[Mark], record: Record) -> bool:
    """`okay so that was 47.5 for 7, could have done one more`: a whole set with its effort, unlike the one before."""
    last, opens = record.last(record.last_exercise), _opens(piece, record)
    marks = [m for m in piece if m.kind not in (Kind.FILL, Kind.KG, Kind.LB)]
    while marks and (marks[0].kind is Kind.COMMA or marks[0].text in ("right", "done")):
        del marks[0]
    at = next((i for i, m in enumerate(marks) if m.kind in (Kind.X, Kind.FOR)), 0)
    pair = marks[at - 1 : at + 2 : 2] if at > 1 else []
    said = kind_at(marks, 0) is Kind.WAS and len(pair) == 2 and all(m.kind is Kind.NUM for m in pair)
    rated = any(
        m.kind in _RATES or m.text == "@" or (m.text == "left" and i > at + 2 and kind_at(marks, i - 1) is Kind.NUM)
        for i, m in enumerate(marks)
        if i > at + 1
    )
    if last is None or not opens or not said or not rated or any(m.kind in _OF_STORED for m in marks):
        return False
    return pair[1].value != last.reps or last.load is None or pair[0].value != last.load.amount


_OF_STORED = (Kind.LABEL, Kind.ORD, Kind.LASTSET, Kind.LASTREP, Kind.SET, Kind.NO, Kind.NAME, Kind.ALL)


_SOLE = frozenset(["last set", "the last set", "last one", "the last one", "my last set", "my last one", "final set",
                   "the final set", "last", "the last"])  # fmt: skip


def _is_sole_left(piece: Sequence[Mark], record: Record) -> bool:
    """`last set was 100x4` where one set is left: that one, told whole."""
    opens = _opens(piece, record)
    named = any(m.kind in (Kind.LASTSET, Kind.LASTREP) and m.text in _SOLE for m in piece)
    kinds = [m.kind for m in piece]
    whole = any(kinds[i : i + 3] in ([Kind.NUM, Kind.X, Kind.NUM], [Kind.NUM, Kind.FOR, Kind.NUM])
                for i in range(len(kinds)))  # fmt: skip
    return len(opens) == 1 and named and whole and not any(k in _CORRECTING for k in kinds)


def _is_sorry_for_next(piece: Sequence[Mark], record: Record) -> bool:
    """`sorry, 12 also the second` where the second is the next one: nothing that is stored is corrected."""
    strong = (Kind.MEANT, Kind.NOT, Kind.WROTE, Kind.SCRAP)
    if not any(m.kind is Kind.SORRY for m in piece) or any(m.kind in strong for m in piece):
        return False
    shaped = shape_marks([m for m in piece if m.text != "of" and m.kind is not Kind.NAME], True)
    labels = [int(m.value) for m in shaped if m.kind in (Kind.LABEL, Kind.ORD) and m.value is not None]
    return bool(labels) and labels == list(_opens(piece, record)[: len(labels)])


def _opens(piece: Sequence[Mark], record: Record) -> tuple[int, ...]:
    """The open sets of the exercise that a piece is of, where some of its sets are stored."""
    named = next((m.names[0] for m in piece if m.kind is Kind.NAME and len(m.names) == 1), record.last_exercise)
    last = record.last(named)
    place = None if last is None else record.place_of(last.exercise)
    return () if place is None else record.context(place).open_sets


def _is_next(piece: Sequence[Mark]) -> bool:
    """`70 8 8 then my spotter helped so call it 6`: what is guessed is another set than those told before."""
    numbers = [i for i, m in enumerate(piece) if m.kind is Kind.NUM]
    return len(numbers) > 1 and any(m.kind is Kind.THEN for m in piece[numbers[-2] : numbers[-1]])


def _is_open(piece: Sequence[Mark], record: Record) -> bool:
    """Whether all sets that the piece numbers are still open, the next one first."""
    names = [m for m in piece if m.kind is Kind.NAME]
    if len(names) > 1 or any(len(m.names) != 1 for m in names):
        return False
    last = record.last(names[0].names[0] if names else record.last_exercise)
    place = None if last is None else record.place_of(last.exercise)
    if last is None or place is None:
        return False
    shaped = shape_marks([m for m in piece if m.text != "of" and m.kind is not Kind.NAME], True)
    guessed = any(m.kind in (Kind.COMMA, Kind.WITH) for m in shaped) and not any(m.kind is Kind.WAS for m in shaped)
    kinds = (Kind.LABEL, Kind.ORD) if guessed else (Kind.LABEL,)
    labels = [int(m.value) for m in shaped if m.kind in kinds and m.value is not None]
    opens = record.context(place).open_sets
    return bool(labels) and labels == list(opens[: len(labels)])
