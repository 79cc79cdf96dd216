"""`other side 9`: the side that was not said last, in this message or before it; `6 on that leg, 9 on the right`."""

from collections.abc import Sequence
from dataclasses import replace

from bot.notation.clauses import kind_at, text_at
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark
from bot.notation.wordlist import words
from bot.training.report import Performed, Side

_LIMBS = ("side", "leg", "arm", "one")
_KINDS = {Kind.LEFT: Side.LEFT, Kind.RIGHT: Side.RIGHT}


def with_other_side(marks: Sequence[Mark], last: Performed | None) -> list[Mark]:
    """The marks with `other side` and `other leg` as the side that is meant, where one was said before.

    `last` is the set kept last. The words alone, with no side said, are left as they are.
    """
    side = None if last is None else last.side
    marks = _with_sides_named(_on_each(marks))
    out: list[Mark] = []
    for place, mark in enumerate(marks):
        limb = mark.text.endswith(_LIMBS) and mark.text.split(" ")[-1] in _LIMBS
        if limb and out and out[-1].text.endswith("other") and side is not None:
            side = Side.RIGHT if side is Side.LEFT else Side.LEFT
            kind = Kind.LEFT if side is Side.LEFT else Kind.RIGHT
            out[-1] = replace(mark, kind=kind, text=side.value, start=out[-1].start, names=())
            continue
        that = _that_side(marks, place) if limb and out and out[-1].text in _THAT else None
        if that is not None:
            on = len(out) > 1 and out[-2].kind is Kind.AT
            kind = Kind.LEFT if that is Side.LEFT else Kind.RIGHT
            start = out[-2 if on else -1].start
            out[-2 if on else -1 :] = [replace(mark, kind=kind, text=f"on the {that.value}", start=start, names=())]
            side = that
            continue
        side = _KINDS.get(mark.kind, side)
        out.append(mark)
    return out


def with_hurt_side(marks: Sequence[Mark]) -> list[Mark]:
    """`left 20, right groin pulled so 12 that side`: the side told to hurt last, before the words of the hurt go."""
    out: list[Mark] = []
    hurt: Side | None = None
    for mark in marks:
        if mark.kind in _KINDS:
            hurt = None
        elif mark.kind is Kind.GAP and mark.text.split(" ")[-1] in _SIDES:
            hurt = Side(mark.text.split(" ")[-1])
        elif hurt is not None and mark.text in _LIMBS[:-1] and out[-1].text in _THAT and mark.kind is not Kind.GAP:
            kind = Kind.LEFT if hurt is Side.LEFT else Kind.RIGHT
            start = out[-2 if len(out) > 1 and out[-2].kind is Kind.AT else -1].start
            while out and out[-1].start >= start:
                out.pop()
            out.append(replace(mark, kind=kind, text=f"on the {hurt.value}", start=start, names=()))
            hurt = None
            continue
        out.append(mark)
    return out


def _with_sides_named(marks: Sequence[Mark]) -> list[Mark]:
    """`8 on the left and 10 on the other`, `10 on the strong side (right), 8 on the weak one`: the other, a side."""
    out = list(marks)
    told: tuple[Kind, str] | None = None
    for place in range(2, len(out) - 1):
        which = out[place].kind is Kind.WAS and out[place - 1].text == "which" and text_at(out, place - 2) in _LIMBS
        if which and out[place + 1].kind in _KINDS:
            out[place] = replace(out[place], kind=Kind.FILL)
    for place, mark in enumerate(out):
        if mark.kind in (Kind.STOP, Kind.LINE):
            told = None
        elif mark.kind in _KINDS:
            led = [w for m in out[max(0, place - _NEAR) : place] for w in m.text.split() if w in _MANNERS]
            told = (mark.kind, _MANNERS[led[-1]] if led else "") if told is None else None
        elif told is not None and _is_turned(out, place, told[1]):
            kind = Kind.RIGHT if told[0] is Kind.LEFT else Kind.LEFT
            out[place] = replace(mark, kind=kind, text=_KINDS[kind].value)
            if kind_at(out, place + 1) in (Kind.FILL, Kind.WEAK, Kind.EACH) and text_at(out, place + 1) in _LIMBS:
                out[place + 1] = replace(out[place + 1], kind=Kind.FILL, text="")
            told = None
    return out


def _on_each(marks: Sequence[Mark]) -> Sequence[Mark]:
    """`8 on one leg and 8 on the other`: the same on each, whichever was first."""
    for place in range(1, len(marks) - 4):
        if marks[place].kind is not Kind.AT or marks[place].text != "on" or text_at(marks, place + 1) not in _ONE:
            continue
        count = place - 1 - (kind_at(marks, place - 1) is Kind.REPS)
        at = place + 2 + (text_at(marks, place + 2) in _LIMBS)
        at += kind_at(marks, at) in (Kind.AND, Kind.COMMA, Kind.THEN)
        end = at + 1 + (kind_at(marks, at + 1) is Kind.REPS)
        other = text_at(marks, end).split()[:1] == ["on"] and text_at(marks, end + 1).split()[-1:] == ["other"]
        alike = kind_at(marks, count) is kind_at(marks, at) is Kind.NUM and marks[count].value == marks[at].value
        if other and alike:
            last = end + 1 + (text_at(marks, end + 2) in _LIMBS)
            each = Mark(Kind.EACH, "each side", marks[place].start, marks[last].end)
            return [*marks[:place], each, *marks[last + 1 :]]
    return marks


_ONE = ("one", "the one")


def _is_turned(marks: Sequence[Mark], place: int, manner: str) -> bool:
    """Whether the other side is meant: `the other` at the end of its part beside a number, or another manner."""
    text = marks[place].text.split()[-1:]
    ends = kind_at(marks, place + 1) in (None, Kind.COMMA, Kind.STOP, Kind.LINE, Kind.CLOSE)
    near = any(m.kind is Kind.NUM for m in marks[max(0, place - _NEAR) : place])
    if text == ["other"]:
        return ends and near
    limb = text_at(marks, place + 1) in _LIMBS
    return near and limb and bool(text) and bool(manner) and _MANNERS.get(text[0], manner) != manner


_NEAR = 5
"""Marks between a side and what is said of it."""
_MANNERS = {
    **dict.fromkeys(words("weak weaker bad worse"), "weak"),
    **dict.fromkeys(words("strong stronger good better"), "strong"),
}
"""Words for one of two sides, with the side that they mean."""
_THAT = ("that", "this")


def _that_side(marks: Sequence[Mark], place: int) -> Side | None:
    """The side of `6 on that leg`: the one that was told to hurt before it, else not the one that is told behind."""
    if not any(m.kind is Kind.NUM for m in marks[max(0, place - 4) : place]):
        return None
    before = [m for m in marks[:place] if m.kind in _KINDS or (m.kind is Kind.GAP and m.text in _SIDES)]
    if before:
        return Side(before[-1].text.split(" ")[-1]) if before[-1].text.split(" ")[-1] in _SIDES else None
    behind = next((m for m in marks[place:] if m.kind in _KINDS), None)
    if behind is None:
        return None
    return Side.RIGHT if behind.kind is Kind.LEFT else Side.LEFT


_SIDES = ("left", "right")
