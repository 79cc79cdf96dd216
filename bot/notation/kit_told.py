"""What there was to lift with, told apart from the sets: `could only find 25kg ones, 14 reps`, `we only have 4kg
dumbbells here so curls 12 and 10`. It is the load of the sets behind it that tell none of their own.
"""

from collections.abc import Sequence
from dataclasses import dataclass, replace

from bot.notation.bounds import FEW_SETS, HARDEST
from bot.notation.clauses import EDGES, kind_at
from bot.notation.kinds import Kind
from bot.notation.masking import masked
from bot.notation.tokens import Mark
from bot.notation.wordlist import words
from bot.training.plan import LoadStyle, PlannedExercise

_BEFORE = frozenset(
    words(
        "i we they you gym hotel place the my this could can only just had have has got get to use used using find",
        "found were was is are all there ones one free little small big left biggest heaviest lightest up with but",
        "ive weve theyve its it at home here today these those a pair of",
    )
)
"""Words of a clause that tells what there was."""
_HAD = frozenset(words("find found only just have has had use used using got ive weve theyve there"))
_GEAR = frozenset(
    words(
        "ones dumbbells dumbbell dumbells dumbell dbs db weights weight kettlebells kettlebell kbs kb bells bell",
        "pair",
    )
)
_ALONE = frozenset(("only", "just"))
_LEFT = ("left", "free", "available", "remaining", "there", "around")
"""Words behind what alone there was: `only the 30 kilo bell left`."""
_UNITS = (Kind.KG, Kind.LB, Kind.S)
_LINKS = (Kind.X, Kind.FOR, Kind.AT, Kind.WITH)
_STOPS = (Kind.COMMA, Kind.STOP, Kind.LINE, Kind.BREAK, Kind.DASH)
_NAMES = (Kind.NAME, Kind.WEAK)
_FAR = 8
"""Words behind the load that may tell where it was: `left on the rack`, `at my daughters house`."""


@dataclass(frozen=True, slots=True)
class _Kit:
    """A clause from `start` to `end`, and the number of its load."""

    start: int
    number: int
    end: int


def _opined(marks: list[Mark]) -> list[Mark]:
    """`lol these 65s are murder. 8`: the load of what follows; `6 15 15, the 6s get heavier`: the load told before."""
    for place in range(1, len(marks) - 2):
        weights = marks[place].kind is Kind.NUM and marks[place + 1].kind is Kind.S
        if not weights or marks[place - 1].text.split()[-1:] not in _THE:
            continue
        end = place + 2
        while end < len(marks) and marks[end].kind in (Kind.WAS, Kind.FILL, Kind.WORD) and marks[end].text != "so":
            end += 1
        said = {w for m in marks[place + 2 : end] for w in m.text.split()}
        if kind_at(marks, end) not in (None, Kind.STOP, Kind.LINE, Kind.COMMA) or not said & _JUDGING or said & _DONE:
            continue
        words_of = [replace(m, kind=Kind.FILL, value=None) for m in marks[place:end]]
        before = [m for m in marks[:place] if m.kind is Kind.NUM]
        if any(m.value == marks[place].value for m in before):
            return [*marks[:place], *words_of, *marks[end:]]
        bare = kind_at(marks, end + 1) is Kind.NUM and kind_at(marks, end + 2) not in (*_LINKS, *_UNITS)
        if bare and not before:
            comma = replace(marks[end], kind=Kind.COMMA, text=",")
            return [*marks[: place + 2], *words_of[2:], comma, *marks[end + 1 :]]
    return marks


_THE = (["the"], ["these"], ["those"], ["them"], ["my"])
_JUDGING = frozenset(words("are were is was feel feels felt get gets got getting keep kept seem seemed look looked"))
_DONE = frozenset(words("taken gone missing used busy next too then done"))


def with_kit_told(marks: Sequence[Mark], exercises: Sequence[PlannedExercise]) -> list[Mark]:
    """The marks with such a clause as the load of what follows it, or without bearing where that tells it again."""
    out = _opined(list(marks))
    place = 0
    while place < len(out):
        kit = _kit_at(out, place) if out[place].kind is Kind.NUM else None
        place += 1
        if kit is None:
            continue
        rest = out[kit.end :]
        clause = masked(out[kit.start : kit.end], set(range(kit.end - kit.start)))
        small = any(m.kind is Kind.NUM and (m.value or 0) > _SMALL * (out[kit.number].value or 0) for m in rest)
        if small or any(_is_again(rest, i, out[kit.number]) for i in range(len(rest))):
            out[kit.start : kit.end] = clause
            continue
        load = out[kit.number : kit.number + 2]
        named = [i for i, m in enumerate(rest) if m.kind is Kind.NAME and _takes(m, exercises)]
        if not named and any(m.kind is Kind.NUM for m in rest):
            past = kit.end + (kind_at(out, kit.end) in _STOPS)
            colon = replace(load[-1], kind=Kind.COLON, text=":", start=load[-1].end)
            out[kit.start : past] = [*load, colon]
        elif named:
            for at in reversed([i for i in named if not _has_load(rest, i)]):
                rest[at + 1 : at + 1] = load
            out[kit.start :] = [*clause, *rest]
    return out


_SMALL = 8
"""So much lighter than the load told behind it is a plate (common practice, no source)."""


def _kit_at(marks: Sequence[Mark], number: int) -> _Kit | None:
    """The clause around a load that tells what there was; `None` where it tells a set, or something else."""
    if kind_at(marks, number + 1) not in _UNITS:
        return None
    start = number
    while start > 0 and (marks[start - 1].kind is not Kind.DASH) and set(marks[start - 1].text.split()) & _BEFORE:
        start -= 1
    before = {w for m in marks[start:number] for w in m.text.split()}
    opens = kind_at(marks, start - 1) in (None, *_STOPS, Kind.OPEN, Kind.NAME, Kind.AND, Kind.FILL)
    if not opens:
        return None
    end = number + 2
    while end < len(marks) and marks[end].text in _GEAR:
        end += 1
    geared = end > number + 2 or kind_at(marks, number + 1) is Kind.S
    stop = end
    while stop < min(len(marks), end + _FAR) and marks[stop].kind not in (*EDGES, *_NAMES, Kind.NUM, *_STOPS):
        if marks[stop].text == "so":
            break
        stop += 1
    ends = kind_at(marks, stop) in (*_STOPS, Kind.AND) or (stop < len(marks) and marks[stop].text == "so")
    named = kind_at(marks, stop) in _NAMES and kind_at(marks, stop - 1) in (Kind.FOR, Kind.FILL)
    left = bool(before & _ALONE) and any(m.text in _LEFT for m in marks[end:stop])
    return _Kit(start, number, stop) if geared and (ends or named) and (before & _HAD or left) else None


def _is_again(rest: Sequence[Mark], place: int, load: Mark) -> bool:
    """Whether a number behind the clause tells its load once more."""
    same = rest[place].kind is Kind.NUM and rest[place].value == load.value
    return same and (kind_at(rest, place + 1) in (*_UNITS, Kind.X, Kind.FOR) or kind_at(rest, place - 1) in _LINKS)


def _takes(name: Mark, exercises: Sequence[PlannedExercise]) -> bool:
    """Whether dumbbells are what a named exercise is done with."""
    return len(name.names) == 1 and exercises[name.names[0]].load_style is LoadStyle.PER_HAND


def _has_load(rest: Sequence[Mark], place: int) -> bool:
    """Whether a load of its own follows a name, before the next one."""
    end = next((i for i in range(place + 1, len(rest)) if rest[i].kind is Kind.NAME), len(rest))
    told = rest[place + 1 : end]
    return any(m.kind in _UNITS or (m.kind is Kind.AT and _is_load(told, i + 1)) for i, m in enumerate(told)) or any(
        kind_at(told, i - 1) is Kind.NUM and (told[i - 1].value or 0) > FEW_SETS
        for i, m in enumerate(told)
        if m.kind in (Kind.X, Kind.FOR)
    )


def _is_load(told: Sequence[Mark], place: int) -> bool:
    """Whether a load stands here: not the score of `knee grumbling at 3/10`, nor the effort of `at rpe 8`."""
    number = kind_at(told, place) is Kind.NUM and (told[place].value or 0) > HARDEST
    return number or kind_at(told, place) is Kind.BODY
