"""Whether the sets behind talk of warming up are of it, by the plan: on one of 60 `warm up done, 40x10` is a warm-up,
`warm up done, 60x9` the first working set, `bit of rolling to warm up, then 60x9` too.

A warm-up's name straight before its sets says so by itself and is left to the other rules here.
"""

from collections.abc import Sequence
from dataclasses import replace
from decimal import Decimal

from bot.notation.answer import Request
from bot.notation.bounds import FEW_SETS
from bot.notation.clauses import kind_at, part_of, text_at
from bot.notation.days import read_day
from bot.notation.kinds import Kind
from bot.notation.session_place import place_spoken_of
from bot.notation.tokens import Mark
from bot.notation.wordlist import words

_LIGHT = Decimal("0.85")
_WHOLE = Decimal("0.95")
_MOST = Decimal("1.3")
"""Of the planned load: up to the first it is a warm-up, from the second to the last a working set (common practice, no
source)."""
_TALK = (Kind.FILL, Kind.WORD, Kind.DONE, Kind.WAS, Kind.COMMA, Kind.COLON, Kind.OPEN, Kind.DASH, Kind.STOP, Kind.AND,
         Kind.THEN, Kind.WITH, Kind.UNDONE, Kind.ORD, Kind.SET, Kind.SETS, Kind.AT, Kind.TO, Kind.FOR, Kind.CLOSE,
         Kind.FEELS, Kind.BREAK, Kind.OTHERPERSON, Kind.ALL, Kind.LEFT, Kind.MEANT,
         Kind.FINISH)  # fmt: skip
_STRAIGHT = (Kind.COMMA, Kind.COLON, Kind.DASH, Kind.FOR, Kind.SET, Kind.SETS, Kind.WITH, Kind.AT)
"""Kinds between a warm-up's name and its sets that leave it straight before them."""
_NOT_YET = frozenset(words("no not without skipped skip need needs should gonna will next forgot forget didnt never"))
_DENIED = frozenset(words("dont not isnt wasnt"))
_LINKS = (Kind.X, Kind.FOR, Kind.COMMA, Kind.TIMES)
_FOLLOWING = frozenset(words("follow follows come coming next after soon later now"))
_FARTHEST = 14
"""Words of talk about a warm-up."""


def with_warmups_by_load(marks: Sequence[Mark], request: Request) -> list[Mark]:
    """The marks with talk of warming up as the name of the sets behind it, or as no more than talk."""
    marks = _with_now(marks)
    said = _with_warming(marks)
    at = next((i for i, m in enumerate(said) if m.kind is Kind.WARMUP), None)
    if at is None or sum(m.kind is Kind.WARMUP for m in said) > 1:
        return list(marks)
    lone = said[at].text == "warm" and kind_at(said, at + 1) not in (*_LINKS, Kind.COLON, Kind.STOP, Kind.DASH, None)
    if lone or _is_of_other(said[:at]):
        return list(marks)  # `warm in here, 40x10`, `my mate's warm up is 40x10`
    if any(m.kind is Kind.NUM for m in said[:at]):
        return _without_judged(marks, at, request)
    number = next((i for i in range(at, len(said)) if _opens_entry(said, i)), None)
    if number is None or number - at > _FARTHEST or at > _FARTHEST:
        return list(marks)
    if read_day(said[:number], request.now) is not None:
        return list(marks)  # `yesterday rows warm up 30x7, then 60x10`: its words are kept
    if kind_at(said, number + 1) in (Kind.AT, Kind.WITH):
        return list(marks)  # `9@60`: which of the two is the load is for the rules of roles
    before, between = said[:at], said[at + 1 : number]
    names = [m for m in (*before, *between) if m.kind is Kind.NAME and len(m.names) == 1]
    light = _is_light(said, number, names, request)
    if light and {w for m in (*before, *between) for w in m.text.split()} & _LIGHT_WORK:
        return list(marks)
    if light and any(m.kind is Kind.SET and kind_at(between, i + 1) is Kind.NUM for i, m in enumerate(between)):
        return list(marks)  # `warm up done, set 1 40x10`: the set that it names
    opened = sum({Kind.OPEN: 1, Kind.CLOSE: -1}.get(m.kind, 0) for m in said[:number])
    rest = _as_load_first(_parted(said[number:]) if opened > 0 else said[number:])
    rest = _with_work_apart(rest, names, request) if light else rest
    if light and _is_straight(before, between):
        return [*said[:number], *rest]
    if light is None or not _is_talk(before, between, light=light):
        return list(marks)
    if not light and request.done and any(m.kind is Kind.SET for m in between):
        return list(marks)
    return [
        *names,
        *([replace(said[at], text="warm up")] if light else []),
        *(_without_coming(rest) if light else rest),
    ]


def _parted(marks: Sequence[Mark]) -> list[Mark]:
    """The marks with a comma for the bracket that closes before what opened it does: `(warm-up 40x5) 60x8`."""
    closed = next((i for i, m in enumerate(marks) if m.kind is Kind.CLOSE), None)
    return [replace(m, kind=Kind.COMMA, text=",") if i == closed else m for i, m in enumerate(marks)]


def _with_work_apart(marks: Sequence[Mark], names: Sequence[Mark], request: Request) -> list[Mark]:
    """`warm-up 45x7, 90: 8, 8`: behind the comma the load as planned, with a list of its own."""
    for place, mark in enumerate(marks):
        if mark.kind is not Kind.COMMA or kind_at(marks, place - 2) is not Kind.X:
            continue
        behind = place + 2 + (kind_at(marks, place + 2) in (Kind.KG, Kind.LB))
        listed = kind_at(marks, behind) is Kind.COLON or [kind_at(marks, behind + n) for n in (0, 1)] == [Kind.NUM] * 2
        if kind_at(marks, place + 1) is Kind.NUM and listed and _is_light(marks, place + 1, names, request) is False:
            return [*marks[:place], replace(mark, kind=Kind.THEN, text="then"), *marks[place + 1 :]]
    return list(marks)


def _with_now(marks: Sequence[Mark]) -> list[Mark]:
    """`warm-up 100x5 and 130x2, now 152.5x3`: then."""
    led = next((i for i, m in enumerate(marks) if m.kind is Kind.WARMUP), None)
    if led is None:
        return list(marks)
    return [
        replace(m, kind=Kind.THEN)
        if m.text == "now" and i > led + 1 and kind_at(marks, i + 1) is Kind.NUM and kind_at(marks, i + 2) is Kind.X
        else m
        for i, m in enumerate(marks)
    ]


def _is_of_other(before: Sequence[Mark]) -> bool:
    return bool(before) and (before[-1].kind is Kind.OTHERPERSON or before[-1].text.split()[-1:] in _WHOSE)


_WHOSE = (["his"], ["her"], ["their"], ["mates"], ["partners"], ["wifes"], ["husbands"], ["guys"], ["kids"])


def _without_judged(marks: Sequence[Mark], at: int, request: Request) -> list[Mark]:
    """`60x9, warm up felt good`: the set, and how the warm-up before it went."""
    ahead, behind = marks[:at], marks[at + 1 :]
    judged = {w for m in behind for w in m.text.split()} & _JUDGING
    talk = all(m.kind in (Kind.FILL, Kind.WORD, Kind.WAS, Kind.FEELS, Kind.DONE, Kind.STOP) for m in behind)
    parted = kind_at(marks, at - 1) in (Kind.COMMA, Kind.STOP, Kind.DASH)
    names = [m for m in ahead if m.kind is Kind.NAME and len(m.names) == 1]
    number = next((i for i in range(at) if _opens_entry(ahead, i)), None)
    entry = number is not None and sum(m.kind is Kind.NUM for m in ahead) == _OF_ONE
    if not (judged and talk and parted and entry and number is not None):
        return list(marks)
    return list(ahead[:-1] if _is_light(marks, number, names, request) is False else marks)


_LIGHT_WORK = frozenset(words("light lighter easy deload weak ill sick tired dropped drop working week day"))
"""Words of why the working sets are lighter than planned: `warm up done, light day 40x8`."""
_JUDGING = frozenset(words("felt feels feeling went was were moved flew good fine ok okay easy smooth stiff"))
_OF_ONE = 2
"""Numbers of a set: its load and its repetitions."""


def _with_warming(marks: Sequence[Mark]) -> list[Mark]:
    """`warming the old bones up: 40x10`, `as warming 40x10`: a warm-up's name that has words within."""
    at = next((i for i, m in enumerate(marks) if m.text in _WARMING and m.kind is not Kind.WARMUP), None)
    if at is None:
        return list(marks)
    up = next((i for i in range(at + 1, min(at + 6, len(marks))) if marks[i].text.split()[-1:] == ["up"]), None)
    led = text_at(marks, at - 1) in ("as", "for")
    if (up is None and not led) or kind_at(marks, at - 1) is Kind.OTHERPERSON:
        return list(marks)
    end = at if up is None else up
    if not all(m.kind in (Kind.FILL, Kind.WORD, Kind.WEAK) or m.names == () for m in marks[at : end + 1]):
        return list(marks)
    return [*marks[:at], replace(marks[at], kind=Kind.WARMUP, text="warm up", end=marks[end].end), *marks[end + 1 :]]


_WARMING = ("warming", "warmed", "warm")


def _opens_entry(marks: Sequence[Mark], at: int) -> bool:
    """Whether a load with its repetitions, or repetitions with their load, start here."""
    if kind_at(marks, at) is not Kind.NUM or (
        kind_at(marks, at - 1) is Kind.SET and (marks[at].value or 0) <= FEW_SETS
    ):
        return False
    link = at + 1 + (kind_at(marks, at + 1) in (Kind.KG, Kind.LB, Kind.REPS))
    return kind_at(marks, link + (kind_at(marks, link) in (*_LINKS, Kind.WITH, Kind.AT))) is Kind.NUM


def _is_light(marks: Sequence[Mark], number: int, names: Sequence[Mark], request: Request) -> bool | None:
    """Whether the first set is lighter than planned; `None` where that is not clear."""
    after = number + 2 + (kind_at(marks, number + 2) in (*_LINKS, Kind.WITH, Kind.AT))
    counted = kind_at(marks, number + 1) is Kind.REPS
    load = marks[after].value if counted and kind_at(marks, after) is Kind.NUM else marks[number].value
    place = place_spoken_of(names, request)
    if load is None or place is None:
        return None
    planned = [p.load.amount for p in request.exercises[place].sets if p.load is not None]
    if not planned or min(planned) <= 0:
        return None
    crossed = kind_at(marks, number + 1) is Kind.X and kind_at(marks, number + 2) is Kind.NUM
    entry = crossed and (marks[number + 2].value or 0) < _WHOLE * min(planned)  # `wu 15x7, 27.5x13`
    few = load <= max(s.reps.high for s in request.exercises[place].sets)
    if few and not entry and _is_full_behind(marks, number, min(planned)):
        return False  # `4 4 4 @ 80`, `4x80`: repetitions come first
    if load <= _LIGHT * min(planned):
        return True
    return False if load >= _WHOLE * min(planned) else None


def _is_full_behind(marks: Sequence[Mark], number: int, planned: Decimal) -> bool:
    """Whether a load as planned stands behind a number in its part."""
    behind = marks[number + 1 : part_of(marks, number, ends=(Kind.STOP, Kind.LINE, Kind.THEN))[1]]
    return any(m.kind is Kind.NUM and _WHOLE * planned <= (m.value or 0) <= _MOST * planned for m in behind)


def _is_talk(before: Sequence[Mark], between: Sequence[Mark], *, light: bool) -> bool:
    """Whether the words about a warm-up say no more, and say that much: its bare name is left to the other rules."""
    said = {w for m in (*before, *between) for w in m.text.split()}
    labelled = [m for i, m in enumerate(between) if not (m.kind is Kind.NUM and i and between[i - 1].kind is Kind.SET)]
    works = [m for m in (*before, *between) if m.kind is Kind.WORKSET]
    denied = bool({w for m in between for w in m.text.split()} & _DENIED)
    if works and light and not denied:
        return False
    plain = all(m.kind in (*_TALK, Kind.WORKSET, Kind.NAME) for m in (*before, *labelled))
    bare = not light and not before and all(m.kind in (*_STRAIGHT, Kind.NAME) for m in between)
    return plain and not bare and not (said & _NOT_YET and not denied)


def _is_straight(before: Sequence[Mark], between: Sequence[Mark]) -> bool:
    """Whether a warm-up's name stands straight before its sets, so that it says by itself whose it is."""
    led = all(m.kind is Kind.FILL or (m.kind is Kind.NAME and m.names) for m in before)
    return led and all(m.kind in (*_STRAIGHT, Kind.NAME) for m in between)


def _as_load_first(marks: Sequence[Mark]) -> list[Mark]:
    """`10 reps 40 kg`, `9 reps with 60 kg` as `40 kg x 10`, wherever a set is told so."""
    crossed = [
        (m.kind is Kind.TIMES and kind_at(marks, i + 1) is Kind.NUM) or (m.kind is Kind.X and m.text == "by")
        for i, m in enumerate(marks)
    ]
    out = [replace(m, kind=Kind.X, text="x") if crossed[i] else m for i, m in enumerate(marks)]
    if kind_at(out, 1) is not Kind.REPS:
        return out
    for at in range(len(out)):
        if [kind_at(out, at), kind_at(out, at + 1)] != [Kind.NUM, Kind.REPS]:
            continue
        load = at + 2 + (kind_at(out, at + 2) in (Kind.WITH, Kind.AT, Kind.COMMA))
        if [kind_at(out, load), kind_at(out, load + 1)] == [Kind.NUM, Kind.KG]:
            cross = replace(out[load], kind=Kind.X, text="x", value=None, end=out[load].start, parts=())
            out[at : load + 2] = [out[load], out[load + 1], cross, out[at], out[at + 1]]
    return out


def _without_coming(marks: Sequence[Mark]) -> list[Mark]:
    """The marks without what says that the working sets are still to come: `proper sets to follow`."""
    end = next((i for i, m in enumerate(marks) if m.kind is Kind.STOP), len(marks))
    behind = marks[end:]
    coming = {w for m in behind for w in m.text.split()} & _FOLLOWING
    works = any(m.kind is Kind.WORKSET for m in behind)
    return list(marks[:end]) if works and coming and not any(m.kind is Kind.NUM for m in behind) else list(marks)
