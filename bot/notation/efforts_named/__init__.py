"""Efforts told by the sets that they are of: `10 9 8, first two rpe 8, last rpe 9`, `nothing left on the 8`."""

from collections.abc import Sequence
from dataclasses import replace
from decimal import Decimal

from bot.notation.answer import Span
from bot.notation.bounds import SEVERAL
from bot.notation.clauses import kind_at
from bot.notation.efforts_named.effort import ENDS, LITTLE, RATED, effort_at, is_effort, past_kinds
from bot.notation.efforts_named.rating import NamedEfforts
from bot.notation.efforts_named.talk import felt_end, past_talk, talk_end
from bot.notation.efforts_named.which_sets import BUT, Sets, excepts, sets_at
from bot.notation.kinds import Kind
from bot.notation.order.steps import said_in
from bot.notation.tokens import Mark

_JOINS = (Kind.COMMA, Kind.AND, Kind.FILL, Kind.THEN, Kind.STOP, Kind.EXCEPT, Kind.PLATES)


def split_named(marks: list[Mark]) -> tuple[list[Mark], tuple[NamedEfforts, ...]]:
    """The marks without efforts that name their sets, and those, where at least two stand behind sets that are told.

    One is enough where it is of several sets, or of one of sets told alike: `rpe 9 on the last two`.
    """
    out, said = list(marks), list[NamedEfforts]()
    at = 0
    name: int | None = None
    told = seen = False
    rated = not RATED.isdisjoint(said_in(out))
    while at < len(out):
        mark = out[at]
        if mark.kind is Kind.NAME:
            name, told = mark.names[0] if len(mark.names) == 1 else None, False
        felt = felt_end(out, at) if told else None
        if felt is not None:
            del out[at:felt]
            continue
        talk = talk_end(out, at) if told else None
        if talk is not None:
            out[at:talk] = [replace(m, kind=Kind.GAP, value=None) for m in out[at:talk]]
            at = talk
            continue
        if rated and (told or not seen) and (sets_at(out, at) is not None or effort_at(out, at, None) is not None):
            found, end = _read(out, at)
            enough = len(found) >= SEVERAL or (bool(found) and _is_of_several(out, at, found[0][0]))
            heads = kind_at(out, end) in (Kind.COLON, Kind.STOP, Kind.LINE, Kind.DASH)
            enough = enough if told else len(found) >= SEVERAL and heads and _has_sets(out, end)
            if enough and (kind_at(out, end) in ENDS or heads):
                said.append(NamedEfforts(tuple(found), (mark.start, out[end - 1].end), name))
                del out[at : end + (not told)]
                continue
        if mark.kind in (Kind.NUM, Kind.PLANNED):
            told = seen = True
        at += 1
    return out, tuple(said)


def _has_sets(marks: Sequence[Mark], end: int) -> bool:
    """Whether a list of sets follows the efforts of `one left on the first, none on the last: 60 8 8 7`."""
    return sum(max(1, len(m.parts)) for m in marks[end:] if m.kind is Kind.NUM) > SEVERAL


def _is_of_several(marks: Sequence[Mark], at: int, sets: Sets) -> bool:
    """Whether an effort is of several sets, or of one by its number of those that are told alike in every set."""
    start = max((i for i, m in enumerate(marks[:at]) if m.kind in (Kind.NAME, Kind.STOP, Kind.LINE)), default=0)
    alike = any(m.kind is Kind.ALL for m in marks[start:at])
    planned = alike and any(m.kind is Kind.PLANNED for m in marks[start:at])
    apart = sets.count > 1 or sets.rest or sets.reps is not None or planned
    return apart or (alike and sets.first is not None)


def _read(piece: Sequence[Mark], start: int) -> tuple[list[tuple[Sets, Decimal, Span]], int]:
    """The efforts from a place on, and where their words end."""
    found: list[tuple[Sets, Decimal, Span]] = []
    word = _word_behind(piece, start)
    at = end = start
    while at < len(piece):
        at = past_kinds(piece, at, _JOINS) if found else at
        excepted = bool(found) and kind_at(piece, at - 1) in BUT
        sets = sets_at(piece, at)
        sets = replace(sets, end=past_talk(piece, sets.end)) if sets is not None and sets.reps is not None else sets
        place = past_kinds(piece, sets.end if sets is not None else at, (*LITTLE, Kind.COMMA) if excepted else LITTLE)
        effort = effort_at(piece, place, word)
        if effort is None:
            break
        word, stop = effort.word, effort.end
        if sets is None and excepts(piece, stop):
            sets = Sets(None, 1, True, stop)
        if sets is None:
            link = past_kinds(piece, stop, LITTLE)
            sets = sets_at(piece, link) if link > stop or kind_at(piece, link) is Kind.ALL else None
            stop = sets.end if sets is not None else stop
        if sets is None:
            break
        found.append((sets, effort.left, (piece[effort.start].start, piece[effort.end - 1].end)))
        at = end = stop
        apart = past_kinds(piece, stop, (*LITTLE, Kind.COMMA, Kind.WORD)) if sets.but_last else at
        last = effort_at(piece, apart, word) if sets.but_last else None
        if last is not None:
            span = (piece[last.start].start, piece[last.end - 1].end)
            found.insert(0, (Sets(None, 1, False, apart), last.left, span))
            at = end = last.end
    return found, end


def _word_behind(piece: Sequence[Mark], start: int) -> Kind | None:
    """The `rpe` of `both 275x5, second was 8 third was rpe 9`, of the first number too; none where none is left out."""
    one = sets_at(piece, start)
    number = past_kinds(piece, one.end, LITTLE) if one is not None else start
    two = sets_at(piece, past_kinds(piece, number + 1, _JOINS)) if one is not None else None
    if one is None or two is None or kind_at(piece, one.end) is not Kind.WAS or one.first is None:
        return None
    told_alike = any(m.kind in _ALIKE for m in piece[:start]) or kind_at(piece, start - 5) is Kind.X
    rated = kind_at(piece, past_kinds(piece, two.end, LITTLE)) is Kind.RPE
    return Kind.RPE if told_alike and rated and is_effort(piece, number, Kind.RPE) else None


_ALIKE = (Kind.EACH, Kind.ALL, Kind.SETS, Kind.TIMES)
