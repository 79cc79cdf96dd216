"""Help on body weight by what it came to: `assist down to 10, 7 reps`, `with the band, takes 15 off me, 8 reps`.

Both become the word of help with its number straight behind it: such a band's help is known.
"""

from collections.abc import Sequence
from dataclasses import replace

from bot.notation.clauses import kind_at, text_at
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark
from bot.notation.wordlist import words

_TURNED = frozenset(words("down up now set reduced lowered raised changed increased decreased cut turned dropped just "
                          "only to was is it by around about"))  # fmt: skip
_TURNING = frozenset(words("dropped cut turned took lowered reduced put brought knocked set the my"))
_TAKING = frozenset(words("takes took taking take"))
_GIVING = frozenset(words("gives gave giving saves saving worth helps of that about roughly around is"))
_AWAY = frozenset(words("off away"))
_OF_COUNTS = (Kind.REPS, Kind.SETS, Kind.X, Kind.TIMES, Kind.SECONDS, Kind.NUM)
_WEIGHED = (Kind.KG, Kind.LB)
_FAR = 5
"""Marks between a band and what it takes off."""


def with_help_told(marks: Sequence[Mark]) -> list[Mark]:
    """The marks with such words in that form."""
    out = _with_machine(_with_new(list(marks)))
    if not any(m.kind in (Kind.ASSIST, Kind.BAND) for m in out):
        return out
    place = 0
    while place < len(out):
        end = _level_at(out, place) if out[place].kind is Kind.ASSIST else None
        if out[place].kind is Kind.ASSIST and _is_led(out, place):
            out[place] = replace(out[place], kind=Kind.FILL)
        band = _taken_off(out, place) if out[place].kind is Kind.BAND else None
        if end is None and out[place].kind is Kind.ASSIST:
            _put_behind_name(out, place)
        if end is not None:
            start = _turning(out, place)
            out[start:end] = [replace(out[place], start=out[start].start)]
            place = start
        elif band is not None:
            number, end = band
            weight = number + 1 + (kind_at(out, number + 1) in _WEIGHED)
            comma = kind_at(out, end) is Kind.STOP
            joined = [replace(out[end], kind=Kind.COMMA, text=",")] if comma else []
            helped = replace(out[place], kind=Kind.ASSIST, text="assist", end=out[place].end)
            out[place : end + comma] = [helped, *out[number:weight], *joined]
        place += 1
    return out


def _with_new(marks: list[Mark]) -> list[Mark]:
    """`no 40 help but 50`, `not 40 assist, 50`: the help that it was, and not the one that it was not."""
    for place in range(1, len(marks) - 3):
        if marks[place].kind is not Kind.NUM or marks[place - 1].kind not in (Kind.NO, Kind.NOT):
            continue
        helped = place + 1 + (marks[place + 1].kind in _WEIGHED)
        new = helped + 2
        end = new + 1 + (kind_at(marks, new + 1) in _WEIGHED)
        but = text_at(marks, helped + 1) in ("but", "today", "just") or kind_at(marks, helped + 1) is Kind.COMMA
        told = kind_at(marks, helped) is Kind.ASSIST and but and kind_at(marks, new) is Kind.NUM
        if told and kind_at(marks, end) not in (Kind.X, Kind.FOR, Kind.REPS):
            own = [] if kind_at(marks, end) is Kind.ASSIST else [replace(marks[helped], start=marks[end - 1].end)]
            return [*marks[: place - 1], *marks[new:end], *own, *marks[end:]]
    return marks


def _put_behind_name(out: list[Mark], place: int) -> None:
    """`counterweight 18 kg, dips 10 and 8`: the name of what it helps with, before it."""
    end = place + 2 + (kind_at(out, place + 2) in _WEIGHED)
    opens = kind_at(out, place - 1) in (None, Kind.STOP, Kind.LINE)
    named = kind_at(out, end) is Kind.COMMA and kind_at(out, end + 1) is Kind.NAME
    listed = kind_at(out, end + 2) is Kind.NUM and kind_at(out, end + 3) not in (*_WEIGHED, Kind.X, Kind.FOR, Kind.AT)
    if opens and named and listed and kind_at(out, place + 1) is Kind.NUM:
        out[place : end + 2] = [out[end + 1], *out[place : end + 1]]


_MACHINES = frozenset(words("machine stack thing counterweight counterbalance weightstack assister"))
_LIFTING = frozenset(words(
    "took takes taking take gave gives giving give helped helps helping help lifted lifts lifting saves saving saved "
    "spots spotting carrying carried carries set does doing"
))  # fmt: skip
_ON_WAY = _LIFTING | frozenset(words("the my me with about around roughly to off out like exactly just only a was is "
                                     "on has had been"))  # fmt: skip
_OFF_ME = frozenset(words("off of me my body bodyweight weight away for help assistance help from"))
_AWAY_FROM = frozenset(words("off me my bodyweight taken by on the from with body weight of away"))


def _with_machine(marks: list[Mark]) -> list[Mark]:
    """`machine took 20kg off me`, `20kg taken off by the machine`: the help of a machine."""
    for place, mark in enumerate(marks):
        if (
            mark.text.split()[-1:] == []
            or mark.text.split()[-1] not in _MACHINES
            or mark.kind in (Kind.NAME, Kind.WEAK)
        ):
            continue
        told = _ahead_of(marks, place) or _behind_number(marks, place)
        if told is None:
            continue
        start, number, end = told
        weight = number + 1 + (kind_at(marks, number + 1) in _WEIGHED)
        helped = Mark(Kind.ASSIST, "assist", marks[start].start, marks[number].start)
        counted = kind_at(marks, end) is Kind.STOP and kind_at(marks, end + 1) is Kind.NUM
        comma = [replace(marks[end], kind=Kind.COMMA, text=",")] if counted else []
        return [*marks[:start], helped, *marks[number:weight], *comma, *marks[end + counted :]]
    return marks


def _ahead_of(marks: Sequence[Mark], place: int) -> tuple[int, int, int] | None:
    """Where `with the machine giving me 15kg off` starts, has its number and ends."""
    at, said = place + 1, set[str]()
    while at - place <= _FAR and marks[at : at + 1] and marks[at].text and set(marks[at].text.split()) <= _ON_WAY:
        said |= set(marks[at].text.split())
        at += 1
    if kind_at(marks, at) is not Kind.NUM or not said & _LIFTING:
        return None
    end = at + 1 + (kind_at(marks, at + 1) in _WEIGHED)
    if kind_at(marks, end) in _OF_COUNTS or kind_at(marks, end) in (Kind.FOR, Kind.PLATES):
        return None
    behind = end
    while text_at(marks, end) and set(text_at(marks, end).split()) <= _OFF_ME:
        end += 1
    off = "off" in said or {"me", "off", "help", "bodyweight", "weight"} & {
        w for m in marks[behind:end] for w in m.text.split()
    }
    helps = said & {"me", "helped", "helps", "helping", "help"}
    start = place
    while start and text_at(marks, start - 1) in ("the", "with", "w", "my", "assist", "assisted", "that", "this", "a"):
        start -= 1
    return (start, at, end) if off or helps else None


def _behind_number(marks: Sequence[Mark], place: int) -> tuple[int, int, int] | None:
    """Where `with 20kg taken off by the machine` starts, has its number and ends."""
    at, said = place - 1, set[str]()
    while at > 0 and place - at <= _FAR + 1 and marks[at].text and set(marks[at].text.split()) <= _AWAY_FROM:
        said |= set(marks[at].text.split())
        at -= 1
    at -= kind_at(marks, at) in _WEIGHED
    off = "off" in said and bool(said & {"me", "taken", "bodyweight", "body"})
    if at < 0 or marks[at].kind is not Kind.NUM or not off:
        return None
    return at - (kind_at(marks, at - 1) is Kind.WITH), at, place + 1


def _is_led(marks: Sequence[Mark], place: int) -> bool:
    """The `help` of `less help now: 20 assist 8`, whose number has its own word."""
    at = place + 1
    while kind_at(marks, at) in (Kind.FILL, Kind.COLON, Kind.COMMA):
        at += 1
    end = at + 1 + (kind_at(marks, at + 1) in _WEIGHED)
    led = kind_at(marks, place - 1) not in (Kind.NUM, *_WEIGHED)
    return led and kind_at(marks, at) is Kind.NUM and kind_at(marks, end) is Kind.ASSIST


def _level_at(marks: Sequence[Mark], place: int) -> int | None:
    """Where the number of `assist down to 10` stands; `None` where it is told otherwise."""
    at = place + 1
    while kind_at(marks, at) in (Kind.TO, Kind.AT, Kind.WAS, Kind.COLON) or text_at(marks, at) in _TURNED:
        at += 1
    if kind_at(marks, at) is Kind.SET or kind_at(marks, at - 1) is Kind.SET:
        return None
    weighed = kind_at(marks, place - 1) in (Kind.NUM, *_WEIGHED)
    told = kind_at(marks, at + 1 + (kind_at(marks, at + 1) in _WEIGHED)) is Kind.ASSIST
    counts = told or kind_at(marks, at + 1) in _OF_COUNTS
    return at if at > place + 1 and kind_at(marks, at) is Kind.NUM and not weighed and not counts else None


def _turning(marks: Sequence[Mark], place: int) -> int:
    """Where the words before a help that was changed start: `took the assist down to 10`."""
    start = place
    while start and marks[start - 1].kind in (Kind.FILL, Kind.SKIP, Kind.DROP) and _is_turning(marks[start - 1]):
        start -= 1
    return start


def _is_turning(mark: Mark) -> bool:
    return bool(mark.text) and set(mark.text.split()) <= _TURNING


def _taken_off(marks: Sequence[Mark], place: int) -> tuple[int, int] | None:
    """The number that a band takes off, and where its words end: `band, takes 15 off me`, `band that gives 15kg`."""
    at, said = place + 1, set(marks[place].text.split()) & {"assist", "assisted"}
    while at - place < _FAR and (
        kind_at(marks, at) in (Kind.COMMA, Kind.OPEN, Kind.DASH, Kind.STOP) or text_at(marks, at) in _TAKING | _GIVING
    ):
        said |= set(text_at(marks, at).split()) | ({"-"} if kind_at(marks, at) is Kind.DASH else set())
        at += 1
    if kind_at(marks, at) is not Kind.NUM:
        return None
    end = at + 1 + (kind_at(marks, at + 1) in _WEIGHED)
    away = text_at(marks, end) in _AWAY
    bracketed = kind_at(marks, at - 1) is Kind.DASH and kind_at(marks, end) is Kind.CLOSE
    given = bool(said & {"gives", "gave", "giving", "worth", "saves", "saving", "assist", "assisted"})
    if not (away or bracketed or given) or kind_at(marks, end) in _OF_COUNTS[:1]:
        return None
    while text_at(marks, end) in _AWAY | {"me", "my", "bodyweight"} or kind_at(marks, end) is Kind.CLOSE:
        end += 1
    return at, end
