"""What is said about a set that is taken back: that it does not count, and why: `delete set 3, i only did two`."""

from collections.abc import Sequence
from dataclasses import replace

from bot.notation.clauses import EDGES, kind_at, text_at
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark

_ENDS = (Kind.STOP, Kind.LINE, Kind.QUERY)
_LASTS = (Kind.LASTSET, Kind.LASTREP)
_DENIES = frozenset(["doesnt", "didnt", "dont", "shouldnt", "wont"])
_UNCOUNTED = frozenset(["last one doesnt count", "last one didnt count"])
_MOST = 12
"""Words of a reason."""


def with_uncounted(marks: Sequence[Mark]) -> list[Mark]:
    """`that last one doesnt count`, where its sentence tells no number: a stored set is taken back."""
    out = list(marks)
    for place, mark in enumerate(marks):
        named = place > 0 and marks[place - 1].kind in _LASTS and mark.text.split()[-1:] != []
        if not named and mark.text not in _UNCOUNTED:
            continue
        said = " ".join((mark.text, text_at(marks, place + 1))).split()
        counts = named and bool(said) and said[0] in _DENIES and said[1:2] == ["count"]
        if (counts or mark.text in _UNCOUNTED) and not _tells_number(marks, place):
            out[place] = replace(mark, kind=Kind.SCRAP, text="scrap that")
            if counts and text_at(marks, place + 1) == "count":
                out[place + 1] = replace(marks[place + 1], kind=Kind.FILL)
    return out


def with_reasons(marks: list[Mark]) -> list[Mark]:
    """The marks without why a set is taken back: `i only did two`, `i pressed send while she was talking`."""
    out = list(marks)
    for place, mark in enumerate(marks):
        if mark.kind is not Kind.SCRAP:
            continue
        at = place + 1 + (kind_at(marks, place + 1) is Kind.NAME)
        if kind_at(marks, at) is Kind.SET and kind_at(marks, at + 1) is Kind.NUM:
            left = _number_left(marks, at + 2, int(marks[at + 1].value or 0) - 1)
            for at in left:
                out[at] = replace(marks[at], kind=Kind.FILL, value=None, parts=())
        _silence_twice(out, place)
        _silence_undone(out, place)
        end = place + 1 + (kind_at(marks, place + 1) in _LASTS)
        own = kind_at(marks, place + 1) in _LASTS or mark.text.split()[-1:] == ["that"] or "last" in mark.text.split()
        if own and text_at(marks, end) in ("i", "because", "cos", "it", "my") and not _tells_number(marks, place):
            while end < len(marks) and marks[end].kind not in (*_ENDS, Kind.COMMA):
                out[end] = replace(marks[end], kind=Kind.FILL, names=())
                end += 1
    return out


def _silence_undone(out: list[Mark], place: int) -> None:
    """Makes `i didnt do the set` behind `scratch the 3rd squat` words without bearing: no more than that set."""
    end = next((i for i in range(place, len(out)) if out[i].kind in _ENDS), len(out))
    for at in range(place + 2, end):
        one = any(m.kind in (*_LASTS, Kind.ORD, Kind.SET) for m in out[place + 1 : at])
        stop = next((i for i in range(at, len(out)) if out[i].kind in EDGES), len(out))
        of_it = {w for m in out[at + 1 : stop] for w in m.text.split()}
        if out[at].kind in (Kind.SKIP, Kind.SKIPPED) and one and of_it and of_it <= _IT:
            out[at:stop] = [replace(m, kind=Kind.FILL) for m in out[at:stop]]


_IT = frozenset(["it", "the", "set", "that", "one", "this", "actually"])


def _silence_twice(out: list[Mark], place: int) -> None:
    """Makes `i have written it twice`, `it's in two times` behind a scrap words without bearing: why, and no sets."""
    start = place
    for end in range(place + 1, len(out) + 1):
        if end < len(out) and out[end].kind not in EDGES:
            continue
        part = range(start + 1, end)
        times = any(out[i].kind is Kind.TIMES for i in part)
        counted = all(out[i].kind is not Kind.NUM or kind_at(out, i + 1) is Kind.TIMES for i in part)
        if start > place and times and counted and all(out[i].kind in _OF_REASONS for i in part):
            for i in part:
                out[i] = replace(out[i], kind=Kind.FILL, value=None, parts=())
        start = end


_OF_REASONS = (Kind.FILL, Kind.WORD, Kind.WROTE, Kind.WAS, Kind.TIMES, Kind.NUM, Kind.AND, Kind.DONE, Kind.MEANT)


def _number_left(marks: Sequence[Mark], start: int, left: int) -> range:
    """Where `i only did two` says how many sets there were, straight before the one that is taken back."""
    end = min(len(marks), start + _MOST)
    for at in range(start, end):
        if marks[at].kind in _ENDS:
            break
        if marks[at].kind is Kind.NUM:
            words = {w for m in marks[start:at] for w in m.text.split()}
            alone = kind_at(marks, at + 1) in (None, *_ENDS, Kind.COMMA, Kind.SETS, Kind.FILL)
            counts = marks[at].value == left and words & {"only", "just"} and alone
            return range(at, at + 1 + (kind_at(marks, at + 1) is Kind.SETS)) if counts else range(0)
    return range(0)


def _tells_number(marks: Sequence[Mark], place: int) -> bool:
    """Whether the sentence of a place tells a number."""
    for step in (-1, 1):
        at = place
        while 0 <= at < len(marks) and abs(at - place) < 2 * _MOST and marks[at].kind not in _ENDS:
            if marks[at].kind in (Kind.NUM, Kind.CLOCK, Kind.BODY):
                return True
            at += step
    return False
