"""Warm-ups that are only told of, and drops and minis said after their numbers."""

from collections.abc import Sequence
from dataclasses import replace

from bot.notation.clauses import kind_at, mark_at
from bot.notation.kinds import Kind
from bot.notation.shaping.neighbours import LINKS, SEPARATORS, TAILS, is_number
from bot.notation.tokens import Mark


def warmed(marks: list[Mark]) -> list[Mark]:
    """`warmed up, 60x5` and `10 min to warm up` tell of no warm-up sets."""
    out: list[Mark] = []
    for place, mark in enumerate(marks):
        kind = mark.kind
        if kind is Kind.WARMUP:
            ends = kind_at(marks, place + 1) in (Kind.COMMA, Kind.STOP, Kind.AND, Kind.THEN, Kind.LINE)
            part = [m.kind for m in marks[place + 1 : place + 4]]
            before = [m.kind for m in marks[max(0, place - 2) : place]]
            timed = (
                part[:2] == [Kind.NUM, Kind.MINUTES] or part[1:3] == [Kind.NUM, Kind.MINUTES] or Kind.MINUTES in before
            )
            led = part[:2] == [Kind.COMMA, Kind.THEN] or part[:1] == [Kind.THEN]
            only = ends and led and Kind.NUM not in before
            if timed or only or (ends and mark.text.startswith("warmed")) or kind_at(marks, place + 1) is Kind.DONE:
                kind = Kind.GAP
        out.append(mark if kind is mark.kind else replace(mark, kind=kind))
    return out


_STAGED = (Kind.DROP, Kind.DROPPED, Kind.MINI, Kind.MORE)
"""Kinds that those beside them may change or move."""


def dropped(marks: list[Mark]) -> list[Mark]:
    """`8 on the drop` becomes `drop 8`; `4 4 3 minis` becomes `minis 4 4 3`."""
    out: list[Mark] = []
    for place, mark in enumerate(marks):
        kind = mark.kind
        if kind not in _STAGED:
            out.append(mark)
            continue
        lighter = any(m.kind is Kind.DROP for m in out[-5:])
        if kind is Kind.MORE and lighter and is_number(mark_at(marks, place - 1)):
            continue
        counted = len(out) < 2 or out[-2].kind not in LINKS or out[-2].kind is Kind.WITH
        few = bool(out) and out[-1].kind is Kind.NUM and out[-1].value is not None and out[-1].value <= _MOST_MINIS
        if (
            kind is Kind.MINI
            and mark.text.endswith(" of")
            and few
            and counted
            and mark.text.split(" ")[0] not in _ADDING
        ):
            count = out.pop()
            out = out[:-1] if kind_at(out, len(out) - 1) is Kind.WITH else out
            out += [mark, count, replace(mark, kind=Kind.SETS, start=count.end, end=count.end)]
            continue
        leads = (
            kind in (Kind.DROP, Kind.MINI)
            and (not any(is_number(m) for m in out) or mark.text.split(" ")[0] in ("then", "and", "with"))
            and kind_at(marks, place + 1) is Kind.COMMA
            and is_number(mark_at(marks, place + 2))
        )
        trailing = kind in (Kind.DROP, Kind.MINI) and not _reaches(marks, place + 1) and not leads
        if trailing and kind is Kind.MINI and _is_chain_end(out):
            out.append(replace(mark, kind=Kind.GAP))
            continue
        if trailing and kind is Kind.DROP and _is_done(mark) and _continues(marks, place + 1):
            out.append(mark)
            continue
        if trailing and kind is Kind.DROP and mark.text.split(" ")[0] not in ("drop", "drops", "dropset", "dropsets"):
            out.append(replace(mark, kind=Kind.GAP))
            continue
        linked = len(out) > 1 and out[-1].kind in (Kind.WITH, Kind.AT, Kind.FOR) and is_number(out[-2])
        out = out[:-1] if kind is Kind.MINI and trailing and linked else out
        if kind is Kind.DROPPED and _reaches(marks, place + 1) and _is_entry_end(out):
            out.append(replace(mark, kind=Kind.DROP, text="drop"))
            continue
        if kind is Kind.DROPPED or (trailing and out and (is_number(out[-1]) or out[-1].kind in TAILS)):
            start = _entry_start(out, kind)
            if kind is not Kind.MINI:
                kind = Kind.DROP
            out.insert(
                start,
                replace(mark, kind=kind, start=out[start].start, end=out[start].start) if start < len(out) else mark,
            )
            joins = (Kind.AND, Kind.THEN, Kind.COMMA, Kind.PLUS, Kind.SLASH)
            if kind is Kind.DROP and start > 0 and out[start - 1].kind in joins:
                out.pop(start - 1)
            continue
        out.append(mark)
    return out


def _entry_start(out: Sequence[Mark], kind: Kind) -> int:
    """Where the entry starts that a drop, or minis, said behind it are of."""
    start = len(out)
    while start > 0 and out[start - 1].kind not in SEPARATORS and out[start - 1].kind is not Kind.NAME:
        if start < len(out) and is_number(out[start]) and is_number(out[start - 1]):
            break
        if kind is not Kind.MINI and start < len(out) and out[start - 1].kind in (Kind.PLUS, Kind.SLASH):
            break
        if kind is Kind.MINI and start < len(out) and out[start - 1].kind in (Kind.X, *TAILS):
            break
        start -= 1
    return _list_start(out, start) if kind is Kind.MINI else start


def _is_chain_end(out: Sequence[Mark]) -> bool:
    """`90x9 +4 +3 lol minis died`: whether signs say already which are minis."""
    at = len(out) - 1
    while kind_at(out, at) is Kind.FILL:
        at -= 1
    signs = [kind_at(out, n) for n in (at - 3, at - 1)]
    return is_number(mark_at(out, at)) and all(s in (Kind.PLUS, Kind.SIGN) for s in signs)


def _is_entry_end(out: Sequence[Mark]) -> bool:
    """Whether what stands before is whole: `35x10 and in the drop 25 for 8`, and not the `8` of `8 on the drop`."""
    if not out or out[-1].kind in SEPARATORS or out[-1].kind in (Kind.AND, Kind.THEN):
        return True
    return len(out) > _PAIR and out[-2].kind in (Kind.X, Kind.FOR) and is_number(out[-1])


_PAIR = 2
"""Marks before the last number of an entry: its load and what links them."""
_MOST_MINIS = 5
"""Minis behind one set at the most, as a count before `minis of`."""
_ADDING = ("and", "then", "with")


def _list_start(marks: Sequence[Mark], start: int) -> int:
    """Where the bare numbers begin that end in the one at `start`: `4, 4 and 3 on the minis`."""
    while (
        start > 1
        and marks[start - 1].kind in (Kind.COMMA, Kind.AND, Kind.SLASH, Kind.PLUS)
        and is_number(marks[start - 2])
        and kind_at(marks, start - 3) not in LINKS
    ):
        start -= 2
    first = start
    while first and is_number(marks[first - 1]):
        first -= 1
    opens = first == 0 or marks[first - 1].kind in (Kind.FILL, *SEPARATORS)
    few = all((m.value or _MOST_OF_MINI + 1) <= _MOST_OF_MINI for m in marks[first:start])
    return first if opens and few else start


_MOST_OF_MINI = 8
"""Repetitions of a mini at most, where bare numbers open a part that ends in `minis` (common practice, no source)."""


def _is_done(mark: Mark) -> bool:
    """Whether the words say that weight was taken off."""
    return bool({"plate", "off", "pin", "plates", "stripped"} & set(mark.text.split()))


def _continues(marks: Sequence[Mark], place: int) -> bool:
    """Whether `and` or a comma and a number follow: `stripped a plate and got 9`."""
    joined = kind_at(marks, place) in (Kind.AND, Kind.COMMA, Kind.THEN)
    return joined and (is_number(mark_at(marks, place + 1)) or kind_at(marks, place + 1) is Kind.ANOTHER)


def _reaches(marks: Sequence[Mark], place: int) -> bool:
    """Whether a number follows, with at most a link or a colon before it."""
    for mark in marks[place : place + 3]:
        if is_number(mark) or mark.kind in (Kind.BODY, Kind.SAMELOAD):
            return True
        if mark.kind not in (
            Kind.COLON,
            Kind.AT,
            Kind.WITH,
            Kind.FOR,
            Kind.WAS,
            Kind.DASH,
            Kind.TO,
            Kind.PLUS,
            Kind.X,
            Kind.SIGN,
        ):
            return False
    return False
