"""Stored sets that a correction points at by what they were: `the 130 was only 4`, `the 9 was an 8`, `the 6 was rpe 9`,
`the one before`, `both back offs`, `the top set`, `only 8 on set 2`. Each is put as the label of its set.
"""

from collections.abc import Sequence
from dataclasses import replace
from decimal import Decimal

from bot.notation.clauses import EDGES, kind_at, text_at
from bot.notation.context import Context
from bot.notation.corrections.lighter import by_part, label_of, lighter_open
from bot.notation.kinds import Kind
from bot.notation.order.near import past_fill
from bot.notation.record import Record
from bot.notation.tokens import Mark
from bot.training.report import Performed

_CUES = (Kind.WAS, Kind.MEANT)
_UNITS = (Kind.KG, Kind.LB, Kind.REPS, Kind.S)
_RATES = (Kind.RPE, Kind.RIR)
_RATED = (*_RATES, Kind.RPEPOST, Kind.RIRPOST, Kind.TANK)
_TWICE = 2
"""So many times its repetitions told anew: a greater number is the load of `the 6 was actually 82.5`."""
POINTING = ("the", "that", "my", "those")


def pointed(piece: list[Mark], record: Record, place: int | None) -> list[Mark]:
    """The piece with the sets that it points at as labels; as it is where it points at none."""
    last = record.last(place)
    where = None if last is None else record.place_of(last.exercise)
    if where is None or not any(m.kind is Kind.NUM for m in piece):
        return piece
    context = record.context(where)
    piece = _all_of_value(_named_ahead(lighter_open(piece, context), context), context)
    return _only_on(
        _both(by_part(_set_before(_by_value(piece, record, place), record, where), context), context), context
    )


def _by_value(piece: list[Mark], record: Record, place: int | None) -> list[Mark]:
    """`the 130 was only 4`: the one stored set that was 130, or 130x5."""
    for at in range(len(piece) - 3):
        if text_at(piece, at) not in POINTING or kind_at(piece, at + 1) is not Kind.NUM:
            continue
        end = at + 2 + (kind_at(piece, at + 2) in _UNITS)
        pair = kind_at(piece, end) is Kind.X and kind_at(piece, end + 1) is Kind.NUM
        reps = piece[end + 1].value if pair else None
        cue = end + 2 if pair else end
        new = past_fill(piece, cue + 1)
        led = cue + (kind_at(piece, cue) is Kind.WAS)
        ahead = kind_at(piece, led) in _RATES
        behind = led > cue and kind_at(piece, new) is Kind.NUM and kind_at(piece, new + 1) in _RATED
        rated = (ahead or behind) and not pair
        new = past_fill(piece, led + 1) if ahead else new
        told = rated or kind_at(piece, cue) in _CUES
        if not told or kind_at(piece, new) is not Kind.NUM or (not rated and _is_taken(piece, at, new)):
            continue
        rows = [r for r in _rows(record, place) if _was(r, piece[at + 1].value, reps)]
        last = record.last(place)
        rows = [r for r in rows if last is not None and r.exercise == last.exercise] or rows
        sets = list(dict.fromkeys((r.exercise, r.set) for r in rows))
        if len(sets) != 1 or rows[0].set is None:
            continue
        row = rows[0]
        if rated:
            return [*piece[:at], label_of(piece[at + 1], row.set or 0), *piece[led if ahead else new :]]
        counted = reps is None and row.reps == piece[at + 1].value and (piece[new].value or 0) <= _TWICE * row.reps
        named = replace(piece[at], kind=Kind.NAME, names=(record.place_of(row.exercise) or 0,), end=piece[at].start)
        alone = counted and kind_at(piece, new + 1 + (kind_at(piece, new + 1) in _UNITS)) is not Kind.X
        unit = [replace(piece[new], kind=Kind.REPS, text="", value=None, parts=())] if alone else []
        was = replace(piece[cue], kind=Kind.MEANT, text="was")
        return [*piece[:at], named, label_of(piece[at + 1], rows[0].set), was, *piece[cue + 1 : new + 1],
                *unit, *piece[new + 1 + bool(unit and kind_at(piece, new + 1) is Kind.REPS) :]]  # fmt: skip
    return piece


def _all_of_value(piece: list[Mark], context: Context) -> list[Mark]:
    """`both of the 225 sets were 235`, `the 8s were 9s`: every stored set that was that."""
    for at in range(1, len(piece) - 2):
        end = at + 1
        while kind_at(piece, end) in (Kind.S, Kind.SETS, Kind.SET, Kind.KG, Kind.LB) or text_at(piece, end) == "ones":
            end += 1
        plural = kind_at(piece, end - 1) in (Kind.S, Kind.SETS) or text_at(piece, end - 1) == "ones"
        told = kind_at(piece, end) in _CUES and kind_at(piece, past_fill(piece, end + 1)) is Kind.NUM
        if kind_at(piece, at) is not Kind.NUM or end == at + 1 or not plural or not told:
            continue
        start = at
        while start and (
            piece[start - 1].kind in (Kind.FILL, Kind.EACH, Kind.ALL) or text_at(piece, start - 1) == "two"
        ):
            start -= 1
        sets = list(dict.fromkeys(p.set for p in context.worked if p.set and _was(p, piece[at].value, None)))
        both = any(m.text in ("both", "two") for m in piece[start:at])
        if not sets or start == at or (both and len(sets) != len(("both", "of"))):
            continue
        was = replace(piece[end], kind=Kind.MEANT, text="was")
        return [*piece[:start], *(label_of(piece[at], number) for number in sets), was, *piece[end + 1 :]]
    return piece


def _is_taken(piece: Sequence[Mark], at: int, new: int) -> bool:
    """Whether something else says which set is meant, or the number is one of an effort."""
    naming = (Kind.SET, Kind.LASTSET, Kind.LABEL, Kind.ORD, Kind.NOT, Kind.WROTE)
    said = [m for m in (*piece[:at], *piece[new + 1 :]) if m.kind in naming and not _is_uncounted(m, piece[new])]
    after = kind_at(piece, new + 1)
    return bool(said) or after in (Kind.RIR, Kind.RPE, Kind.TANK, Kind.LEFT, Kind.MORE, Kind.MINUTES)


def _is_uncounted(mark: Mark, told: Mark) -> bool:
    """The 5th of `the 145 was 4 reps, the 5th I only dreamed`: the repetition behind those that count."""
    return mark.kind is Kind.ORD and told.value is not None and mark.value == told.value + 1


def _rows(record: Record, place: int | None) -> list[Performed]:
    """The sets that may be meant: of one exercise where it is said, else of all."""
    rows = [r for r in (*record.stored, *record.said) if r.set is not None]
    own = [] if place is None else [r for r in rows if r.exercise == record.exercises[place].name]
    return own or rows


def _was(row: Performed, value: Decimal | None, reps: Decimal | None) -> bool:
    load = None if row.load is None else row.load.amount
    return (load == value and row.reps == reps) if reps is not None else value in (load, row.reps)


def _set_before(piece: list[Mark], record: Record, where: int) -> list[Mark]:
    """`155x7. the set before was 8`, `the one before that was 11`: the one before the set that was told last."""
    for at in range(len(piece) - 2):
        end = _before_at(piece, at)
        if end is None or not any(m.kind in (*_CUES, Kind.NOT, Kind.SORRY) for m in piece[at:]):
            continue
        context = record.context(where)
        stored = [p.set for p in context.worked if p.set is not None]
        told = any(t.row.exercise == context.exercise.name for t in record.told)
        last = record.last(where)
        plainly = kind_at(piece, at) is not Kind.LASTSET or text_at(piece, at) == "one before"
        if last is None or last.set is None or not (told or plainly) or last.set - 1 not in stored:
            continue
        return [*piece[:at], label_of(piece[at], last.set - 1), *piece[end:]]
    return piece


def _before_at(piece: Sequence[Mark], at: int) -> int | None:
    """Where `set before`, `one before that`, `previous one`, `earlier set` ends, if it starts here."""
    one = kind_at(piece, at) is Kind.SET or text_at(piece, at) in ("one", "the one")
    if text_at(piece, at) == "earlier" and text_at(piece, at + 1) in ("i", "it"):
        return at + 1
    if one and text_at(piece, at + 1) in ("before", "before it", "earlier"):
        return at + 2 + (text_at(piece, at + 2) in ("that", "it", "this", "this one"))
    said = text_at(piece, at).split()
    if kind_at(piece, at) is Kind.LASTSET and said == ["one", "before"]:
        return at + 2
    return at + 1 if kind_at(piece, at) is Kind.LASTSET and set(said) & _BEFORE else None


_BEFORE = frozenset(["previous", "prev", "earlier"])


def _named_ahead(piece: list[Mark], context: Context) -> list[Mark]:
    """`the first one i overcounted, it was 9`: which set, then what it was behind a comma."""
    comma = next((i for i, m in enumerate(piece) if m.kind is Kind.COMMA), None)
    if comma is None or any(m.kind in (Kind.NUM, *_CUES) for m in piece[:comma]):
        return piece
    ordinals = [i for i in range(comma) if piece[i].kind is Kind.ORD]
    cue = past_fill(piece, comma + 1)
    told = kind_at(piece, cue) is Kind.WAS and kind_at(piece, cue + 1) is Kind.NUM
    stored = {p.set for p in context.worked}
    if not told or len(ordinals) != 1 or text_at(piece, cue) not in ("it was", "that was", "was"):
        return piece
    number = int(piece[ordinals[0]].value or 0)
    if number not in stored or kind_at(piece, cue + 2) in (Kind.X, Kind.FOR):
        return piece
    names = [m for m in piece[:comma] if m.kind is Kind.NAME]
    return [*names, label_of(piece[ordinals[0]], number), replace(piece[cue], kind=Kind.MEANT), *piece[cue + 1 :]]


def _both(piece: list[Mark], context: Context) -> list[Mark]:
    """`both were 62.5`, `both the rows were at 60`: the two sets that there are."""
    stored = list(dict.fromkeys(p.set for p in context.worked if p.set is not None))
    labelled = any(m.kind in (Kind.LABEL, Kind.SET, Kind.LASTSET, Kind.ORD) for m in piece)
    if len(stored) != 2 or labelled or any(m.kind in (Kind.X, Kind.LEFT, Kind.RIGHT) for m in piece):
        return piece
    for at, mark in enumerate(piece):
        if mark.kind is Kind.WAS and mark.text.startswith("both"):
            return [*piece[:at], *(label_of(mark, n) for n in stored), replace(mark, kind=Kind.MEANT), *piece[at + 1 :]]
        if mark.text != "both":
            continue
        cue = next((i for i in range(at + 1, min(at + 5, len(piece))) if piece[i].kind in _CUES), None)
        between = piece[at + 1 : cue]
        if cue is not None and all(m.kind in (Kind.FILL, Kind.NAME, Kind.COMMA) or m.text == "of" for m in between):
            names = [m for m in between if m.kind is Kind.NAME]
            was = replace(piece[cue], kind=Kind.MEANT)
            return [*piece[:at], *names, *(label_of(mark, n) for n in stored), was, *piece[cue + 1 :]]
    return piece


def _only_on(piece: list[Mark], context: Context) -> list[Mark]:
    """`i only got 8 on set 2`, `on set 1 the left only made 30`: what a set really was that is named."""
    only = [i for i, m in enumerate(piece) if "only" in m.text.split() or m.text == "just"]
    numbered = [i for i in range(1, len(piece)) if piece[i].kind is Kind.NUM and piece[i - 1].kind is Kind.SET]
    numbers = [i for i, m in enumerate(piece) if m.kind is Kind.NUM and i not in numbered]
    busy = (*_CUES, Kind.X, Kind.RPE, Kind.RIR, Kind.TANK, Kind.SETS, Kind.NOT, Kind.SCRAP)
    if len(only) != 1 or len(numbered) != 1 or len(numbers) != 1 or any(m.kind in busy for m in piece):
        return piece
    at, number = numbered[0], numbers[0]
    led = at > 1 and piece[at - 2].kind in (Kind.AT, Kind.FOR, Kind.WITH)
    if not led or only[0] > number or any(m.kind in EDGES for m in piece[only[0] : number]):
        return piece
    value = piece[at].value
    if value is None or value not in [p.set for p in context.worked]:
        return piece
    gone = {at - 2, at - 1, at}
    rest = [replace(m, kind=Kind.MEANT) if i == only[0] else m for i, m in enumerate(piece) if i not in gone]
    return [label_of(piece[at], int(value)), *rest]
