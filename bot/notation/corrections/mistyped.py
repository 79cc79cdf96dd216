"""A digit too many or too few, put right in the same breath: `700kg for 6. ok ok 70`, `600x9 whoops 60x9`; a set told
in jest before the real one: `170x8, i wish. 70x8`, `100x20 as if. 60x8`.
"""

from collections.abc import Sequence
from dataclasses import dataclass, replace
from decimal import Decimal

from bot.notation.bounds import MINUTE_S
from bot.notation.clauses import EDGES, kind_at
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark

_CUES = (Kind.SORRY, Kind.MEANT, Kind.NO)
_TALK = (*EDGES, *_CUES, Kind.FILL, Kind.WORD, Kind.OTHERTIME, Kind.NOT, Kind.RIGHT, Kind.AT, Kind.WITH, Kind.WAS)
_LINKS = (Kind.X, Kind.FOR)
_UNITS = (Kind.KG, Kind.LB)
_LAUGHS = frozenset(
    ["lol", "lmao", "haha", "hahaha", "hehe", "ok", "okay", "wish", "jk", "rofl", "fine", "alright", "jaja", "jajaja",
     "typo", "oops", "whoops"]
)  # fmt: skip
_SURE = frozenset(["obviously", "clearly", "obvs", "ofc", "of", "course", "obv", "duh", "that", "is", "lol", "haha"])
"""Words behind the number as it should have been."""
_JESTS = tuple(
    phrase.split()
    for phrase in (
        "wish", "in my dreams", "dream on", "dreaming", "as if", "yeah right", "aye right", "joke", "jokes", "joking",
        "kidding", "jk", "jks", "if only", "only kidding", "not really", "yeah no", "pull the other one", "fat chance",
        "not quite", "i lie", "would be nice", "in another life", "only in my head", "keep dreaming",
    )
)  # fmt: skip
"""What is said behind a set that was never done (common usage, no source)."""
NEEDS = frozenset((*_CUES, *_LAUGHS, *_SURE, *(max(jest, key=len) for jest in _JESTS)))
"""Kinds and words of which one stands wherever something told is put right so."""
_MOST = 8
"""Marks between what is told and what it should have been."""


@dataclass(frozen=True, slots=True)
class _Entry:
    """A load with its repetitions: the places of both, and the place behind."""

    load: int
    reps: int
    end: int


def without_mistyped(marks: Sequence[Mark]) -> list[Mark]:
    """The marks with the number as it should have been, and without the words that put it right."""
    out = list(marks)
    at = 0
    while at < len(out):
        entry = _entry_at(out, at)
        if entry is None:
            _without_lone_jest(out, at)
            at += 1
            continue
        new = _past_talk(out, entry.end)
        if new is not None:
            _mend(out, entry, new)
        at = entry.end
    return out


def _without_lone_jest(out: list[Mark], at: int) -> None:
    """`1:10 each side, only joking. 40 each`: a count alone that was said in jest before the real one."""
    opens = kind_at(out, at) in (Kind.NUM, Kind.CLOCK) and kind_at(out, at - 1) in (None, Kind.NAME, *EDGES)
    end = at + 1
    while kind_at(out, end) in (*_UNITS, Kind.REPS, Kind.SECONDS, Kind.EACH):
        end += 1
    new = _past_talk(out, end) if opens and kind_at(out, end) not in _LINKS else None
    if (
        new is None
        or kind_at(out, new + 1) in _LINKS
        or not _is_jest([w for m in out[end:new] for w in m.text.split()])
    ):
        return
    if _is_beyond(_seconds(out[at]), out[new].value):
        _silence(out, at, new)


def _seconds(mark: Mark) -> Decimal | None:
    """The number of a mark; of a clock's minutes and seconds, the seconds."""
    return mark.parts[0] * MINUTE_S + mark.parts[1] if mark.kind is Kind.CLOCK else mark.value


def _entry_at(marks: Sequence[Mark], at: int) -> _Entry | None:
    if kind_at(marks, at) is not Kind.NUM or kind_at(marks, at - 1) in _LINKS:
        return None
    link = at + 1 + (kind_at(marks, at + 1) in _UNITS)
    if kind_at(marks, link) not in _LINKS or kind_at(marks, link + 1) is not Kind.NUM:
        return None
    return _Entry(at, link + 1, link + 2 + (kind_at(marks, link + 2) is Kind.REPS))


def _past_talk(marks: Sequence[Mark], at: int) -> int | None:
    """The number behind a pause and little words, or words that correct; none where something else stands between."""
    end = at
    while end < min(len(marks), at + _MOST) and kind_at(marks, end) in _TALK:
        end += 1
    linked = kind_at(marks, end - 1) in (Kind.AT, Kind.WITH, Kind.RIGHT)
    return end if end > at and not linked and kind_at(marks, end) is Kind.NUM else None


def _mend(out: list[Mark], old: _Entry, new: int) -> None:
    """Puts the number right, where what follows is the same set, or one of its numbers, but for a digit."""
    cued = any(m.kind in _CUES for m in out[old.end : new])
    said = [w for m in out[old.end : new] for w in m.text.split()]
    again = _entry_at(out, new)
    behind = new + 1 + (kind_at(out, new + 1) in (*_UNITS, Kind.REPS)) if again is None else again.end
    sure = behind
    while kind_at(out, sure) in (Kind.FILL, Kind.WORD) and out[sure].text in _SURE:
        sure += 1
    laughs = any(w in _LAUGHS for w in said) or sure > behind
    jests = _is_jest(said)
    if not (cued or laughs or jests):
        return
    if again is not None:
        loads = out[old.load].value, out[again.load].value
        reps = out[old.reps].value, out[again.reps].value
        slips = (loads[0] == loads[1] and _slips(*reps)) or (reps[0] == reps[1] and _slips(*loads))
        beyond = _is_beyond(*loads), _is_beyond(*reps)
        if slips or (jests and any(beyond)) or (cued and all(beyond)):
            _silence(out, old.load, new)
        return
    unit = sure
    if kind_at(out, unit) not in (None, *EDGES):
        return
    place = old.load if _slips(out[old.load].value, out[new].value) else old.reps
    near = (out[new].value or 0) <= 2 * (out[old.reps].value or 0)
    if not _slips(out[place].value, out[new].value) or not (cued or (laughs and place == old.load)):
        return
    if place == old.load and near:
        return
    out[place] = out[new]
    _silence(out, old.end, unit)


def _is_jest(said: Sequence[str]) -> bool:
    """Whether the words hold one of those that are said behind a set that was never done."""
    return any(list(said[i : i + len(jest)]) == jest for jest in _JESTS for i in range(len(said)))


def _is_beyond(jest: Decimal | None, done: Decimal | None) -> bool:
    """Whether a number is so far over the one that was done that it was said in jest."""
    return jest is not None and done is not None and jest * 2 >= done * 3


def _silence(out: list[Mark], start: int, end: int) -> None:
    out[start:end] = [replace(m, kind=Kind.FILL, value=None, parts=()) for m in out[start:end]]


def _slips(old: Decimal | None, new: Decimal | None) -> bool:
    """Whether a number is another with its last digit twice, a nought too many or too few, or no point."""
    if old is None or new is None or old == new:
        return False
    if old != int(old):  # `7.5x5 haha 75`: a point too many
        return new == old * 10
    if new != int(new):  # `875x4 lol, 87.5 obviously`: without its point
        return old in (new * 10, new * 100)
    one, two = str(int(old)), str(int(new))
    return one == two + "0" or two == one + "0" or one == two + two[-1]
