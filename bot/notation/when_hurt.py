"""In which repetitions it hurt, when it did once more, and the weight that fell on a place: no sets.

`left hip pinched on the last two reps, 90x8` is one set; `knee buckled on the stairs and again at home` is none, nor is
`dropped a 60 on my foot, left one, throbbing`.
"""

from collections.abc import Sequence

from bot.notation.clauses import kind_at, part_of, text_at
from bot.notation.days.weekdays import WEEKDAYS
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark
from bot.notation.wordlist import words


def told_when(marks: Sequence[Mark], hurt: set[int]) -> set[int]:
    """The places of all of these, in the part of a hurt, or in the one behind it that says nothing else."""
    out: set[int] = set()
    for place, mark in enumerate(marks) if hurt else ():
        told: set[int] = set()
        if mark.kind in (Kind.LASTREP, Kind.LASTSET, Kind.ORD) or mark.text in _WHICH:
            told = _counted_reps(marks, place)
        elif mark.kind is Kind.REPS:
            told = _numbered_reps(marks, place)
        elif mark.kind in (Kind.SAME, Kind.AGAIN):
            told = _once_more(marks, place, hurt)
        elif mark.kind is Kind.NUM:
            told = _fell_on(marks, place) or _of_told_set(marks, place, hurt)
        if told and not told <= hurt and _in_hurt(marks, place, hurt):
            out |= told
    return out


def _in_hurt(marks: Sequence[Mark], place: int, hurt: set[int]) -> bool:
    start, end = part_of(marks, place)
    if start > 1 and start == place and marks[place].kind in (Kind.SAME, Kind.AGAIN):
        start = part_of(marks, start - 2)[0]
    return any(p in hurt for p in range(start, end))


_WHICH = frozenset(["final", "first", "last"])
_BEFORE = (Kind.AT, Kind.WITH, Kind.FOR, Kind.GAP)
_LEADS = ("in", "the", "in the", "during", "over")


def _counted_reps(marks: Sequence[Mark], place: int) -> set[int]:
    """`on the last two reps`, `in the final three reps`, `on the first couple of reps`."""
    at = place + 1
    while kind_at(marks, at) is Kind.NUM or text_at(marks, at) in ("couple", "few", "of", "couple of"):
        at += 1
    led = kind_at(marks, place - 1) in _BEFORE or text_at(marks, place - 1) in _LEADS
    return set(range(place, at + 1)) if led and at > place + 1 and kind_at(marks, at) is Kind.REPS else set()


_JOINS = (Kind.AND, Kind.SAME, Kind.AGAIN, Kind.AT, Kind.SLASH, Kind.TO, Kind.DASH, Kind.COMMA, Kind.REPS)


def _numbered_reps(marks: Sequence[Mark], place: int) -> set[int]:
    """`on rep 4 and again on 5`, `reps 4 and 5`, `reps 6 to 8`: up to what begins a set."""
    end = place
    at = place + 1
    while kind_at(marks, at) is Kind.NUM and kind_at(marks, at + 1) not in (Kind.X, Kind.FOR, Kind.COLON, Kind.KG,
                                                                            Kind.LB):  # fmt: skip
        end = at + 1
        at = end
        while kind_at(marks, at) in _JOINS:
            at += 1
        if at == end:
            break
    return set() if end == place or kind_at(marks, place - 1) is Kind.NUM else set(range(place, end))


_WHERE = frozenset(words("at on in going walking coming after when while this getting during"))
_WHEN = frozenset(words("today tonight now yesterday later since")) | set(WEEKDAYS)


def _once_more(marks: Sequence[Mark], place: int, hurt: set[int]) -> set[int]:
    """Where or when it hurt once more: `buckled and again at home`, `knee hurt saturday, same sunday`."""
    after = text_at(marks, place + 1).split()[:1]
    start, end = part_of(marks, place)
    counts = any(m.kind in (Kind.NUM, Kind.X) and p not in hurt for p, m in enumerate(marks[start:end], start))
    return {place} if not counts and after and after[0] in _WHERE | _WHEN else set()


_ON_THE = frozenset(["on the", "in the", "during the", "on", "on that", "on my"])


def _of_told_set(marks: Sequence[Mark], place: int, hurt: set[int]) -> set[int]:
    """The 3 of `35x11 +4+3, hamstring twinged on the 3`: in which of the sets told before it hurt."""
    led = text_at(marks, place - 1) if kind_at(marks, place - 1) in (Kind.WITH, Kind.AT, Kind.FILL) else ""
    start, end = part_of(marks, place)
    if led not in _ON_THE or place != end - 1:
        return set()
    earlier = [m for p, m in enumerate(marks[:start]) if m.kind is Kind.NUM and p not in hurt]
    same = len(earlier) > 1 and any(m.value == marks[place].value for m in earlier)
    told = same and any(p in hurt for p in range(start, place))
    return {place - 1, place} if told else set()


_UNITS = (Kind.KG, Kind.LB, Kind.S, Kind.PLATES)


def _fell_on(marks: Sequence[Mark], place: int) -> set[int]:
    """`dropped a 60 on my foot`, `whacked my shin with a 15`, `20kg plate landed on my toe`."""
    unit = kind_at(marks, place + 1) in _UNITS
    led = text_at(marks, place - 1).split()[-1:] in (["a"], ["an"], ["the"], ["two"])
    plate = unit and {w for m in marks[place + 2 : place + 4] for w in m.text.split()} & (_BLOWS | _THINGS)
    if not (led or plate) or kind_at(marks, place + 1) in (Kind.X, Kind.FOR, Kind.REPS):
        return set()
    start, end = part_of(marks, place)
    if not {w for m in marks[start:end] for w in m.text.split()} & _BLOWS:
        return set()
    dropped = {p for p in range(start, place) if marks[p].kind in (Kind.DROP, Kind.DROPPED)}
    return {place, *dropped, *((place - 1,) if led else ()), *((place + 1,) if unit else ())}


_THINGS = frozenset(words("plate plates dumbbell dumbbells kettlebell db kb bell disc bar"))
_BLOWS = frozenset(words(
    "dropped drop dropping fell fallen landed whacked hit smacked banged bashed caught trapped clipped knocked smashed "
    "crushed squashed jammed scraped pinched bumped kneed rolled clattered"
))  # fmt: skip
