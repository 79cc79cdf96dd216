"""The sets behind the heaviest one, by what they are called: `both back offs were 127.5`, `the second back off was 4`,
`top set was 285`, `first back off 80x8`. Each is put as the label of its set.
"""

from collections.abc import Sequence
from dataclasses import replace
from decimal import Decimal

from bot.notation.clauses import kind_at, text_at
from bot.notation.context import Context
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark

_CUES = (Kind.WAS, Kind.MEANT)
_LIGHTER = frozenset(["back off", "back offs", "backoff", "backoffs", "back off set", "back off sets", "backoff set",
                      "backoff sets", "back downs", "backdowns", "back down set", "back down sets", "down set",
                      "down sets", "drop down sets", "lighter sets", "volume sets"])  # fmt: skip


def by_part(piece: list[Mark], context: Context) -> list[Mark]:
    """`both back offs were 127.5`, `top set was 285`: by what the plan has each set for."""
    piece = _only_of(piece)
    if not any(m.kind in (*_CUES, Kind.SORRY, Kind.NOT) for m in piece) or any(m.kind is Kind.X for m in piece):
        return piece
    loads = {n: p.load.kg for n, p in enumerate(context.exercise.sets, 1) if p.load is not None}
    top = max(loads.values(), default=Decimal(0))
    heavy, light = [n for n, v in loads.items() if v == top], [n for n, v in loads.items() if v < top]
    stored = {p.set for p in context.worked}
    for at, mark in enumerate(piece):
        lighter = mark.text in _LIGHTER and mark.kind is not Kind.LABEL
        heaviest = mark.text == "top set" or (mark.text == "top" and text_at(piece, at + 1) in ("one", "single"))
        numbers = light if lighter else heavy if heaviest else []
        numbers = [n for n in numbers if n in stored]
        if not numbers or not light or (heaviest and len(numbers) > 1):
            continue
        led = at - 1 if at and piece[at - 1].kind is Kind.NAME else at
        one, start, end = _one_of(piece, led, at) if lighter else (None, led, at + 1)
        plural = mark.text.endswith("s") or mark.text in ("back off",)
        if one is None and len(numbers) > 1 and not plural:
            continue
        if one is not None:
            if not -len(numbers) <= one < len(numbers):
                continue
            numbers = [numbers[one]]
        else:
            start = next((i for i in range(led - 1, max(-1, led - 4), -1) if _counts_all(piece[i], len(numbers))), led)
        names = [m for m in piece[start:at] if m.kind is Kind.NAME]
        was = [replace(m, kind=Kind.MEANT) if m.kind is Kind.WAS else m for m in piece[end:]]
        return [*piece[:start], *names, *(label_of(mark, n) for n in numbers), *was]
    return piece


def lighter_open(piece: list[Mark], context: Context) -> list[Mark]:
    """`first back off 80x8`: the number of a lighter set that is still to come, counted among those alone."""
    loads = {n: p.load.kg for n, p in enumerate(context.exercise.sets, 1) if p.load is not None}
    light = [n for n, v in loads.items() if v < max(loads.values())]
    out: list[Mark] = []
    is_said = False
    for place, mark in enumerate(piece):
        named = text_at(piece, place + 1) in _LIGHTER
        number = int(mark.value or 0) if mark.kind is Kind.ORD and (named or is_said) else 0
        if 0 < number <= len(light) and light[number - 1] in context.open_sets:
            mark, is_said = label_of(mark, light[number - 1]), True  # noqa: PLW2901
        elif mark.text in _LIGHTER and mark.kind is not Kind.LABEL and out and out[-1].kind is Kind.LABEL:
            continue
        out.append(mark)
    return out


def _only_of(piece: list[Mark]) -> list[Mark]:
    """`only got 4 on the first back off`: which of the lighter sets, then the number that it really was."""
    only = next((i for i, m in enumerate(piece) if "only" in m.text.split() or m.text == "just"), len(piece))
    numbers = [i for i, m in enumerate(piece) if m.kind is Kind.NUM]
    link = next((i for i, m in enumerate(piece) if i > only and m.kind in (Kind.AT, Kind.WITH, Kind.FOR)), 0)
    lighter = any(m.text in _LIGHTER for m in piece[link:])
    if len(numbers) != 1 or not only < numbers[0] < link or not lighter or any(m.kind in _CUES for m in piece):
        return piece
    was = replace(piece[only], kind=Kind.WAS, text="was only")
    return [*piece[:only], *piece[link + 1 :], was, *piece[only + 1 : link]]


def _counts_all(mark: Mark, count: int) -> bool:
    """`both`, `all`, `all three`, `on all`, `the two`: every one of so many lighter sets."""
    said = mark.text.split()
    return bool(said) and (said[-1] in ("both", "all") or said[0] == "all" or (mark.value == count and count > 1))


def _one_of(piece: Sequence[Mark], led: int, at: int) -> tuple[int | None, int, int]:
    """Which of the lighter sets `the second back off`, `last back off`, `back off 2` is (the first is 0, the last -1),
    with where its words start and end; `None` where they are all meant.
    """
    before = piece[led - 1] if led else None
    behind = kind_at(piece, at + 1) is Kind.SET
    end = at + 1 + behind
    if before is not None and before.kind is Kind.ORD and before.value is not None:
        return int(before.value) - 1, led - 1, end
    if before is not None and before.kind in (Kind.LASTREP, Kind.LASTSET) and "one" not in before.text.split():
        return -1, led - 1, end
    cued = kind_at(piece, at + 2) in (*_CUES, Kind.NUM) or text_at(piece, at + 2) == "only"
    if kind_at(piece, at + 1) is Kind.NUM and cued and (piece[at + 1].value or 0) <= _MOST_LIGHTER:
        return int(piece[at + 1].value or 0) - 1, led, at + 2
    return None, led, end


_MOST_LIGHTER = 5
"""A number behind `back off` that may say which one it is."""


def label_of(at: Mark, number: int) -> Mark:
    """The number of a set, where another mark stands: `set 2` for the `backoff`."""
    return replace(at, kind=Kind.LABEL, value=Decimal(number), parts=(), names=())
