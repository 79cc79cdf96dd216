"""A list of repetitions and its load told as on a form: `thrusts: 90kg. reps: 10 9 8`, `10, 9, 8: load 90`."""

from collections.abc import Sequence
from dataclasses import replace

from bot.notation.clauses import EDGES, kind_at, text_at
from bot.notation.kinds import Kind
from bot.notation.order.units import WEIGHTS
from bot.notation.tokens import Mark

_WEIGHED = (Kind.KG, Kind.LB, Kind.S)
_LEADS = (Kind.AT, Kind.WITH)
_BEFORE_LIST = (*EDGES, Kind.DASH, Kind.FILL)
_WITHIN = (Kind.NUM, Kind.COMMA, Kind.SLASH, Kind.THEN, Kind.AND, Kind.REPS)
_REACH = 12
"""Marks of a list that are looked back at from its end."""


def labelled(marks: list[Mark]) -> list[Mark]:
    """The marks with the list behind its load, or the load behind its list, as they are told without labels."""
    return _load_behind(_list_behind(marks))


def _list_behind(marks: list[Mark]) -> list[Mark]:
    """`90kg. reps: 10 9 8` as `90kg: 10 9 8`."""
    out: list[Mark] = []
    place = 0
    while place < len(marks):
        if not _labels_list(marks, place):
            out.append(marks[place])
            place += 1
            continue
        kept = len(out)
        while kept and out[kept - 1].kind in _BEFORE_LIST:
            kept -= 1
        if kept > 1 and out[kept - 1].kind is Kind.NAME and out[kept - 2].kind in _WEIGHED:
            load = kept - 2 - (out[kept - 2].kind is not Kind.NUM)
            out[load:kept] = [out[kept - 1], *out[load : kept - 1]]
        if kept and out[kept - 1].kind in (Kind.NUM, *_WEIGHED):
            out[kept:] = [replace(marks[place + 1], kind=Kind.COLON)]
            _unlabel(out)
        place += 2
    return out


def _unlabel(out: list[Mark]) -> None:
    """Takes the colon of `weight: 90` away, the last of the marks but one list."""
    for at in range(len(out) - 2, max(0, len(out) - 5), -1):
        if out[at].kind is Kind.COLON and text_at(out, at - 1) in WEIGHTS:
            del out[at]
            return


def _labels_list(marks: Sequence[Mark], place: int) -> bool:
    """Whether `reps:` or `sets were` stands here before a list; not `12 reps: 60kg`."""
    if marks[place].kind not in (Kind.SETS, Kind.REPS):
        return False
    before = kind_at(marks, place - 1)
    counted = (
        before is Kind.NUM and kind_at(marks, place - 2) not in _LEADS and text_at(marks, place - 2) not in WEIGHTS
    )
    opens = before in _BEFORE_LIST and kind_at(marks, place + 1) is Kind.WAS
    label = marks[place].kind is Kind.REPS and kind_at(marks, place + 1) is Kind.COLON and not counted
    label = label or (opens and not counted)
    several = kind_at(marks, place + 3) is Kind.NUM or kind_at(marks, place + 4) is Kind.NUM
    sets = marks[place].kind is Kind.SETS and kind_at(marks, place + 1) is Kind.COLON and before in _BEFORE_LIST
    label = label or (sets and several)
    listed = kind_at(marks, place + 2) is Kind.NUM and kind_at(marks, place + 3) not in _WEIGHED
    return label and listed and (bool(marks[place + 2].parts) or kind_at(marks, place + 3) in _WITHIN)


def _load_behind(marks: list[Mark]) -> list[Mark]:
    """`10, 9, 8: load 90` as `10, 9, 8 at 90`."""
    out = list(marks)
    for place in range(len(out) - 2, 0, -1):
        if out[place].kind not in (Kind.COLON, Kind.DASH, Kind.COMMA) or not _ends_list(out, place):
            continue
        at = place + 1
        led = kind_at(out, at) in _LEADS or text_at(out, at) in WEIGHTS
        at += led
        at += led and kind_at(out, at) is Kind.COLON
        weighed = kind_at(out, at + 1) in _WEIGHED
        ends = kind_at(out, at + 1 + weighed) in (None, *EDGES, Kind.DASH)
        if kind_at(out, at) is Kind.NUM and (led or weighed) and ends:
            out[place:at] = [replace(out[place], kind=Kind.AT, text="at")]
    return out


def _ends_list(marks: Sequence[Mark], place: int) -> bool:
    """Whether repetitions told one by one end before a place, with no load among them."""
    counts, at = 0, place - 1
    while at >= max(0, place - _REACH) and marks[at].kind in _WITHIN:
        counts += max(1, len(marks[at].parts)) if marks[at].kind is Kind.NUM else 0
        at -= 1
    return counts > 1 and kind_at(marks, at) in (
        None,
        Kind.NAME,
        Kind.COLON,
        Kind.LINE,
        Kind.STOP,
        Kind.DASH,
        Kind.FILL,
    )
