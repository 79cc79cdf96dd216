"""What was done again at another load: `five again at sixty`, `20m again but 70 on it`, `same 20m but 70`.

One set: the word that repeats only the count gives way to the link between the count and its load.
"""

from collections.abc import Sequence
from dataclasses import replace

from bot.notation.clauses import kind_at, text_at
from bot.notation.kinds import Kind
from bot.notation.order.near import UNITS, past
from bot.notation.tokens import Mark

_COUNTS = (Kind.REPS, Kind.M, Kind.METRES, Kind.SECONDS, Kind.EACH)
_LINKS = (Kind.AT, Kind.WITH)
_ENDS = (None, Kind.COMMA, Kind.STOP, Kind.LINE, Kind.BREAK, Kind.AND, Kind.THEN, Kind.RPE, Kind.RIR, Kind.CLOSE)
_PRONOUNS = frozenset(["it", "there", "this", "that", "time"])
_FAR = 2
"""So many times a count is no count any more, but its load."""


def again(marks: list[Mark]) -> list[Mark]:
    """The marks with such words as a set of their own."""
    out = list(marks)
    for place, mark in enumerate(marks):
        if mark.kind is Kind.AGAIN:
            count = place - 1 - (kind_at(out, place - 1) in _COUNTS)
            if kind_at(out, count) is Kind.NUM and kind_at(out, count - 1) not in (Kind.X, Kind.FOR, *_LINKS):
                _link(out, count, place, place + 1)
            elif kind_at(out, place - 1) in _OPENS and _is_count_now(out, place + 1):
                out[place] = replace(mark, kind=Kind.SAMELOAD, text="same weight")
                out[place + 1] = replace(out[place + 1], kind=Kind.FILL)
        elif (
            mark.kind is Kind.SAME
            and mark.text.split(" ")[-1] == "again"
            and kind_at(out, _got(out, place)) is Kind.NUM
        ):
            at = _got(out, place)
            out[place + 1 : at] = [replace(m, kind=Kind.FILL, value=None, parts=()) for m in out[place + 1 : at]]
            out[place] = replace(mark, kind=Kind.SAMELOAD, text="same weight")
        elif mark.kind is Kind.SAME and mark.text in ("same", "the same"):
            counted = kind_at(out, place + 1) is Kind.NUM and kind_at(out, place + 2) in _COUNTS
            if counted and kind_at(out, place + 3) in (Kind.FILL, *_LINKS):
                _link(out, place + 1, place, place + 3)
    return out


_OPENS = (None, Kind.STOP, Kind.LINE, Kind.NAME)


def _is_count_now(marks: Sequence[Mark], at: int) -> bool:
    """The count of `again, 6 this time`, `again but only 6`: another one, of the same load."""
    led = kind_at(marks, at) is Kind.COMMA or text_at(marks, at) in ("only", "just")
    led = led or (text_at(marks, at) == "but" and text_at(marks, at + 1) in ("only", "just", "got"))
    number = past(marks, at + 1, Kind.FILL)
    ends = number + 1 + (kind_at(marks, number + 1) is Kind.REPS)
    now = text_at(marks, ends) == "this" and text_at(marks, ends + 1) == "time"
    return led and kind_at(marks, number) is Kind.NUM and (_ends(marks, ends) or now)


def _got(marks: Sequence[Mark], place: int) -> int:
    """Where the count of `did it again after 20 min and got 6` stands; the place itself, where none is told so."""
    at = past(marks, place + 1, Kind.FILL, Kind.GAP)
    if kind_at(marks, at) is Kind.NUM and kind_at(marks, at + 1) in (Kind.MINUTES, Kind.SECONDS):
        at = past(marks, at + 2, Kind.FILL)
    linked = kind_at(marks, at) in (Kind.AND, Kind.COMMA) and text_at(marks, at + 1) in ("got", "managed", "only")
    number = past(marks, at + 1, Kind.FILL)
    return number if linked and _ends(marks, number + 1 + (kind_at(marks, number + 1) is Kind.REPS)) else place


def _link(out: list[Mark], count: int, word: int, at: int) -> None:
    """Puts a link before the load that follows `at`, if one does, and takes the word of repeating away."""
    number = past(out, at, Kind.FILL, Kind.COMMA, *_LINKS)
    if kind_at(out, number) is not Kind.NUM or number == at:
        return
    between = out[at:number]
    end = number + 1 + (kind_at(out, number + 1) in UNITS)
    behind = past(out, end, *_LINKS)
    stop = behind
    while text_at(out, stop) in _PRONOUNS:
        stop += 1
    now = text_at(out, behind) == "this" and text_at(out, stop - 1) == "time"
    on_it = stop > behind > end or now
    linked = any(m.kind in _LINKS for m in between)
    but = now or any(m.text in ("but", "though", "now") for m in between)
    far = (out[number].value or 0) >= _FAR * (out[count].value or 0)
    loaded = end > number + 1 or (on_it and not now) or (but and far)
    if not _ends(out, stop if on_it else end) or not (linked or loaded):
        return
    if kind_at(out, number - 1) is Kind.AT and text_at(out, number - 1) == "@" and not far:
        return
    out[word] = replace(out[word], kind=Kind.FILL)
    out[at:number] = [replace(m, kind=Kind.FILL) for m in between]
    out[number - 1] = Mark(Kind.AT, "at", out[number].start, out[number].start)
    if on_it:
        out[end:stop] = [replace(m, kind=Kind.FILL) for m in out[end:stop]]


def _ends(marks: Sequence[Mark], at: int) -> bool:
    """Whether a set's words end there."""
    at = past(marks, at, Kind.FILL)
    return kind_at(marks, at) in _ENDS
