"""Stored sets that a correction counts, as labels: `the last two squats`, `the two sets`, `both sets`, `bench 2`.

Only beside words that correct, or where nothing but efforts is told: `last two sets 95x5` may tell of sets to come.
"""

from collections.abc import Sequence
from dataclasses import replace
from decimal import Decimal

from bot.notation.bounds import FEW_SETS
from bot.notation.clauses import kind_at, text_at
from bot.notation.context import Context
from bot.notation.corrections.drops import drop_again
from bot.notation.corrections.ordinals import ordinal_set
from bot.notation.kinds import Kind
from bot.notation.record import Record
from bot.notation.tokens import Mark
from bot.training.report import Performed

_CUES = (Kind.SORRY, Kind.MEANT, Kind.WAS, Kind.NOT, Kind.SCRAP)
RATES = (Kind.RPE, Kind.RIR, Kind.TANK)
OF_ENTRIES = (Kind.X, Kind.KG, Kind.LB, Kind.REPS)
"""Beside these an effort is one of a set that is told."""
_LASTS = ("last", "previous", "final", "latest", "the last", "the previous", "those last", "these last")
_FIRSTS = ("first",)
_OF_SETS = (Kind.SETS, Kind.SET, Kind.NAME, Kind.WAS, Kind.MEANT, Kind.NOT, Kind.RPE, Kind.RIR, Kind.SCRAP)
_POINTING = ("that", "those", "this", "these")
_EFFORTS = (*RATES, Kind.COULD, Kind.MORE, Kind.EMPTY)
_ENTRIES = (Kind.X, Kind.FOR)


def with_targets(piece: list[Mark], record: Record, place: int | None) -> list[Mark]:
    """The piece with the stored sets that it counts as labels; as it is where it counts none, or corrects nothing."""
    last = record.last(place)
    where = None if last is None else record.place_of(last.exercise)
    if last is None or where is None:
        return piece
    piece = drop_again(piece, record, last)
    if not _may_correct(piece):
        return piece
    piece = _without_its_load(piece, last, record.context(where))
    stored = list(dict.fromkeys(p.set for p in record.context(where).worked if p.set is not None))
    plainly = any(m.kind in (Kind.SORRY, Kind.NOT, Kind.MEANT, Kind.SCRAP) for m in piece)
    plainly = plainly or (_rates(piece) and not any(m.kind in _ENTRIES for m in piece))
    opens = len(record.context(where).open_sets)
    out: list[Mark] = []
    at = 0
    while at < len(piece):
        numbers, end = _counted(piece, at, stored)
        if numbers and (plainly or len(numbers) > opens):
            mark = replace(piece[at], kind=Kind.LABEL, end=piece[end - 1].end, parts=(), names=())
            out += [replace(mark, value=Decimal(n)) for n in numbers]
            at = end
            continue
        one = ordinal_set(piece, at, stored) if plainly else None
        if one is not None:
            out.append(replace(piece[at], kind=Kind.LABEL, value=Decimal(one[0]), end=piece[one[1] - 1].end, parts=()))
            at = one[1]
            continue
        named = [m.kind for m in out[-2:]] == [Kind.LABEL, Kind.NAME]
        if not (named and piece[at].kind in (Kind.SETS, Kind.SET)):
            out.append(piece[at])
        at += 1
    return out


def _without_its_load(piece: list[Mark], last: Performed, context: Context) -> list[Mark]:
    """`could have got 1 more on that 275`: what the stored set was lifted with says which one is rated, no more."""
    load = None if last.load is None else last.load.amount
    numbers = [i for i, m in enumerate(piece) if m.kind is Kind.NUM]
    if load is None or not 1 <= len(numbers) <= 2 or any(m.kind in (*_ENTRIES, Kind.REPS, Kind.SETS) for m in piece):
        return piece
    coming = context.planned_load(context.open_sets[0]) if context.open_sets else None
    passed = coming is None or coming.amount != load
    for place in numbers:
        led = [w for m in piece[max(0, place - 2) : place] for w in m.text.split()][-1:]
        if (
            piece[place].value == load
            and (passed or (led and led[0] in _POINTING))
            and any(m.kind in _EFFORTS for m in piece)
        ):
            end = place + 1 + (kind_at(piece, place + 1) in (Kind.KG, Kind.LB, Kind.S))
            start = place - (place > 0 and piece[place - 1].text in _POINTING)
            start -= start > 0 and piece[start - 1].kind in (Kind.AT, Kind.FOR, Kind.WITH)
            return [m if not start <= i < end else replace(m, kind=Kind.FILL, value=None) for i, m in enumerate(piece)]
    return piece


def _may_correct(piece: Sequence[Mark]) -> bool:
    """Whether a word of the piece corrects, or all that it tells is effort."""
    return any(m.kind in (*_CUES, Kind.COULD) for m in piece) or _rates(piece)


def _rates(piece: Sequence[Mark]) -> bool:
    kinds = {m.kind for m in piece}
    return bool(kinds & set(RATES)) and kinds.isdisjoint(OF_ENTRIES)


def _counted(piece: Sequence[Mark], at: int, stored: Sequence[int]) -> tuple[list[int], int]:
    """The stored sets that the words from here count, and where those words end; none where they count none."""
    mark = piece[at]
    led = mark.kind in (Kind.LASTSET, Kind.LASTREP, Kind.FILL) and mark.text in _LASTS
    if at and piece[at - 1].kind is Kind.SCRAP and piece[at - 1].text.endswith("last"):
        count, end = _number(piece, at)
        if 1 < count <= len(stored) and _ends(piece, end):
            return list(stored[-count:]), _past_sets(piece, end)
    if led or (mark.kind is Kind.ORD and mark.text in _FIRSTS):
        count, end = _number(piece, at + 1)
        if 1 < count <= len(stored) and _ends(piece, end):
            return list(stored[-count:] if led else stored[:count]), _past_sets(piece, end)
        return [], at
    bare, after = _bare_numbers(piece, at, stored)
    if bare:
        return bare, after
    others = mark.kind in (Kind.THEREST, Kind.FILL) and mark.text in _OTHERS
    named = (
        [int(m.value) for m in piece[:at] if m.kind in (Kind.LABEL, Kind.ORD) and m.value is not None] if others else []
    )
    if named:
        end = _number(piece, at + 1)[1]
        rest = [n for n in stored if n not in named]
        return (rest, _past_sets(piece, end)) if rest else ([], at)
    wrote = kind_at(piece, at - 2) is Kind.WROTE
    if mark.kind is Kind.EACH and mark.text == "both" and len(stored) == 2 and _is_end(piece, at + 1) and not wrote:
        return list(stored), at + 1
    count, end = _number(piece, at)
    told = kind_at(piece, end) is Kind.SETS and kind_at(piece, end + 1) is Kind.NUM
    if count == len(stored) and count > 1 and kind_at(piece, end) in (Kind.SETS, Kind.SET) and _opens(piece, at):
        if told:
            return [], at
        return list(stored), _past_sets(piece, end)
    each = (mark.kind is Kind.ALL or mark.text in ("each", "every")) and kind_at(piece, at + 2) in (Kind.SET, Kind.SETS)
    both = mark.kind is Kind.EACH and mark.text == "both" and len(stored) == 2
    if (each or both) and kind_at(piece, at + 1) is Kind.NAME:
        return list(stored), at + 1
    if at and piece[at - 1].kind is Kind.NAME and count in stored and kind_at(piece, end) is Kind.AND:
        second, then = _number(piece, end + 1)
        if second in stored and kind_at(piece, then) in (Kind.WAS, Kind.MEANT):
            return [count, second], then
    if not (at and piece[at - 1].kind is Kind.NAME and count in stored):
        return [], at
    scraps = any(m.kind is Kind.SCRAP for m in piece[:at]) and _is_end(piece, end)
    spoken = kind_at(piece, end) is Kind.WAS and mark.text in ("one", "two", "three", "four", "five")
    index = spoken or (mark.text.isdigit() and (scraps or _is_index(piece, end)))
    return ([count], end + (kind_at(piece, end) is Kind.COLON)) if index else ([], at)


def _bare_numbers(piece: Sequence[Mark], at: int, stored: Sequence[int]) -> tuple[list[int], int]:
    """`4 and 5 were 180 not 185`: stored sets by their numbers alone, before what they were and what not."""
    if not all(m.kind in (Kind.FILL, Kind.SORRY, Kind.COMMA, Kind.NAME, Kind.MEANT) for m in piece[:at]):
        return [], at
    numbers: list[int] = []
    end = at
    while kind_at(piece, end) is Kind.NUM and _number(piece, end)[0] in stored:
        numbers.append(_number(piece, end)[0])
        end += 1
        if kind_at(piece, end) in (Kind.AND, Kind.COMMA, Kind.PLUS):
            end += 1
    cued = kind_at(piece, end) in (Kind.WAS, Kind.MEANT) and kind_at(piece, end + 1) is Kind.NUM
    denied = any(m.kind is Kind.NOT and kind_at(piece, i + 1) is Kind.NUM for i, m in enumerate(piece) if i > end)
    ordered = numbers == sorted(set(numbers))
    return (numbers, end) if numbers and cued and denied and ordered else ([], at)


_OTHERS = (
    "other",
    "others",
    "the other",
    "the others",
    "the other two",
    "the rest",
    "rest",
    "the other ones",
    "other two",
)


def _is_end(piece: Sequence[Mark], at: int) -> bool:
    return all(m.kind in (Kind.FILL, Kind.STOP, Kind.LINE) for m in piece[at:])


def _number(piece: Sequence[Mark], at: int) -> tuple[int, int]:
    """A small count here, and the place after it; 0 where there is none."""
    if at >= len(piece):
        return 0, at
    mark = piece[at]
    if mark.text == "couple":
        return 2, at + 1 + (text_at(piece, at + 1) == "of")
    if mark.kind is Kind.NUM and mark.value is not None and mark.value == int(mark.value) and mark.value <= FEW_SETS:
        return int(mark.value), at + 1
    return 0, at


def _ends(piece: Sequence[Mark], at: int) -> bool:
    """Whether a count ends here: sets, a name or what they were follows, no load and no repetitions."""
    while at < len(piece) and piece[at].kind is Kind.FILL:
        at += 1
    return at >= len(piece) or piece[at].kind in (*_OF_SETS, Kind.COMMA, Kind.STOP, Kind.LINE)


def _past_sets(piece: Sequence[Mark], at: int) -> int:
    """The place after `sets of`, which a count may have behind it."""
    return at + 1 if kind_at(piece, at) in (Kind.SETS, Kind.SET) else at


def _opens(piece: Sequence[Mark], at: int) -> bool:
    """Whether nothing but small words stands before a count in its part."""
    before = piece[at - 1] if at else None
    return before is None or before.kind in (Kind.FILL, Kind.COMMA, Kind.SORRY, Kind.MEANT, Kind.STOP, Kind.NAME)


def _is_index(piece: Sequence[Mark], at: int) -> bool:
    """`bench 2 = 82.5x6`, `bench 2 was 7`: what stands behind the number of a set."""
    kind, then = kind_at(piece, at), kind_at(piece, at + 1)
    if kind in RATES and text_at(piece, at).split(" ")[0] in ("was", "were"):
        return True
    return (kind is Kind.COLON and then is Kind.NUM) or (kind in (Kind.WAS, Kind.MEANT) and then is not Kind.X)
