"""Where a pair of sides is put, with its load before it and the words that say which set it was: `L9 R8 second set`."""

from collections.abc import Sequence
from dataclasses import replace

from bot.notation.clauses import kind_at, text_at
from bot.notation.kinds import Kind
from bot.notation.side_pairs.sides import PARTS, Pair, Told, is_on
from bot.notation.tokens import Mark
from bot.training.report import Side

_GOT = ("got", "did", "made", "had")
"""Words that tell what a set was, and so may correct one."""


def put_pair(out: list[Mark], pair: Pair, number: int) -> int:
    """Puts a pair in its form, its load and its label before it; where to go on."""
    said = [*_said(pair.one), *_said(pair.two), *_failing(pair.one), *_failing(pair.two)]
    drop_other(out, pair.start)
    corrects = number > 1 and kind_at(out, pair.start - 1) is not Kind.NAME
    between = [m for m in out[pair.start : pair.end] if m.kind is Kind.WAS or (corrects and m.text in _GOT)]
    led = _was(out[pair.start]) or between[:1]
    out[pair.start : pair.end] = [*led, *said]
    start = _beside_load(out, pair.start)
    end = start + len(led) + len(said)
    return _label_first(out, end, len(led) + len(said), number)


def _said(told: Told) -> list[Mark]:
    side = Kind.LEFT if told.side is Side.LEFT else Kind.RIGHT
    at = told.side_mark
    start = at.end - len(at.text.split(" ")[-1]) if at.kind is Kind.TANK else at.start
    return [
        Mark(side, told.side.value, start, at.end),
        told.count,
        Mark(Kind.REPS, "reps", told.count.end, told.count.end),
    ]


def _failing(told: Told) -> list[Mark]:
    """The `right failed the 9th` of one side: an effort of that side alone."""
    if not told.failed:
        return []
    comma = Mark(Kind.COMMA, ",", told.count.start, told.count.start)
    return [comma, _said(told)[0], Mark(Kind.EMPTY, "to failure", told.count.start, told.count.end)]


def _beside_load(out: list[Mark], at: int) -> int:
    """`step ups with 10, left 10 right 9`: the load straight before the sides; where these start then."""
    led = kind_at(out, at - 3) in (Kind.WITH, Kind.AT) and kind_at(out, at - 2) is Kind.NUM
    if kind_at(out, at - 1) is not Kind.COMMA or not led or kind_at(out, at - 4) not in (None, Kind.NAME, *PARTS):
        return at
    out[at - 1] = Mark(Kind.FOR, "for", out[at - 1].start, out[at - 1].end)
    return at


def _was(mark: Mark) -> list[Mark]:
    """The `was` of `set 2 was left 5 right 3`, whose `was left` tells a side."""
    words_said = mark.text.split()
    if mark.kind is not Kind.TANK or words_said[:1] != ["was"]:
        return []
    return [replace(mark, kind=Kind.WAS, text="was", end=mark.start + len("was"))]


def drop_other(out: list[Mark], at: int) -> None:
    """The `other set` of `other set 9 on both`: the next one."""
    start = at
    while start > 0 and (set(text_at(out, start - 1).split()) <= _OTHER or _is_set(out, start - 1)):
        start -= 1
    if any("other" in m.text.split() for m in out[start:at]):
        out[start:at] = [replace(m, kind=Kind.GAP) for m in out[start:at]]


_OTHER = frozenset(("one", "other", "the"))


def _is_set(marks: Sequence[Mark], at: int) -> bool:
    return kind_at(marks, at) is Kind.SET and kind_at(marks, at - 1) is not Kind.ORD


def label_behind(marks: Sequence[Mark], at: int) -> tuple[int, int] | None:
    """Where the words start and end that say behind a set which one it was: `second set`, `on the second`."""
    link = at + (kind_at(marks, at) is Kind.COMMA)
    while kind_at(marks, link) in (Kind.FILL, Kind.WITH) or is_on(marks, link):
        link += 1
    end = link + 1 + (kind_at(marks, link + 1) is Kind.SET or text_at(marks, link + 1) == "one")
    named = kind_at(marks, link) in (Kind.ORD, Kind.LASTSET)
    return (link, end) if named and kind_at(marks, end) in (None, Kind.COMMA, Kind.THEN, *PARTS) else None


def drop_label(out: list[Mark], at: int, number: int) -> None:
    """The `first set` of `10 each first set, left 9 right 8`: the set that is next anyway."""
    found = label_behind(out, at)
    if found is not None and out[found[0]].kind is Kind.ORD and out[found[0]].value == number:
        out[at : found[1]] = [replace(m, kind=Kind.GAP, value=None) for m in out[at : found[1]]]


def _label_first(out: list[Mark], at: int, width: int, number: int) -> int:
    """`L9 R8 second set`: which set it is, before both sides of it; nothing where it is the next; where to go on."""
    led = at - width - 1
    led -= kind_at(out, led) in (Kind.SET, Kind.COLON, Kind.FILL)
    if kind_at(out, led) is Kind.ORD and out[led].value == number and number > 1:
        out[led : at - width] = [replace(m, kind=Kind.GAP, value=None) for m in out[led : at - width]]
        return at
    found = label_behind(out, at)
    if found is None:
        return at
    link, end = found
    label = [] if out[link].kind is Kind.ORD and out[link].value == number else out[link:end]
    out[at - width : end] = [*label, *out[at - width : at]]
    return at + len(label)
