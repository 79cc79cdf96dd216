"""The parts of a message that may tell one exercise's sets each: `4 sets of 6 on press at 95`, `8, 7 and 7 chins`."""

from collections.abc import Sequence
from dataclasses import dataclass

from bot.notation.bounds import FEW_SETS
from bot.notation.clauses import kind_at
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark

PARTING = (Kind.COMMA, Kind.AND, Kind.THEN, Kind.BREAK, Kind.LINE, Kind.STOP, Kind.QUERY)
_NAMES = (Kind.NAME, Kind.WEAK)
_UNITS = (Kind.KG, Kind.LB, Kind.S, Kind.HAND, Kind.TOTAL)
_LINKS = (Kind.X, Kind.FOR, Kind.AT, Kind.WITH)
_MEASURES = (Kind.REPS, Kind.SECONDS, Kind.METRES, Kind.M, Kind.EACH)
_COUNTS = (Kind.SETS, Kind.TIMES)
_EFFORTS = (Kind.RPE, Kind.RIR, Kind.RPEPOST, Kind.RIRPOST, Kind.EFFORT, Kind.TANK)
_TELLS = frozenset(
    (Kind.NUM, Kind.NAME, Kind.WEAK, Kind.FILL, Kind.BODY, Kind.PLUS, Kind.SIGN, Kind.PAIR, Kind.LEADX, Kind.DONE,
     Kind.MORE, Kind.SLASH, *_UNITS, *_LINKS, *_MEASURES, *_COUNTS, *_EFFORTS)
)  # fmt: skip
"""Kinds of a part that tells the sets of one exercise and nothing else."""
_SAID = (Kind.NUM, Kind.CLOCK, Kind.BODY, Kind.SAME, Kind.PLANNED, Kind.BAD, Kind.SAMELOAD)
"""Kinds that tell a set."""
_PLAIN = frozenset((Kind.NUM, Kind.FILL, Kind.REPS, Kind.EACH, Kind.X, Kind.FOR, Kind.SLASH, *_UNITS))
"""Kinds of a part that tells numbers alone."""
_BEHIND_NAMES = (Kind.COLON, Kind.DASH, Kind.WAS, Kind.COMMA)
"""Kinds that may stand in such a part behind its name: `press was 95`."""
_LITTLE = 4
"""Little words of such a part."""


@dataclass(frozen=True, slots=True)
class Part:
    """Marks between two edges that tell something."""

    start: int
    end: int
    seam: Kind | None
    """What parts it from the one before."""
    named: int | None
    """Where the name stands, in a part of one exercise."""
    exercise: int | None
    """Its place in the session, where the name fits one."""
    numbers: int
    """How many numbers it tells; of a name behind its sets, before the name."""
    behind: bool = False
    """Whether all that it tells stands before the name, but for its load."""
    plain: bool = False
    """Whether it tells numbers of repetitions, with or without a load, and nothing else."""


def read_parts(marks: Sequence[Mark]) -> list[Part]:
    """The parts of the marks in order; a comma inside an entry that is not whole before it parts nothing."""
    out: list[Part] = []
    start = 0
    for place in range(len(marks) + 1):
        if place < len(marks) and not _parts(marks, start, place):
            continue
        part = list(marks[start:place])
        names = [i for i, m in enumerate(part) if m.kind in _NAMES and not _is_turn(part, i)]
        if names or any(m.kind in _SAID for m in part):
            seam = marks[start - 1].kind if start else None
            out.append(_read_part(part, names, start, seam))
        start = place + 1
    return out


def _parts(marks: Sequence[Mark], start: int, place: int) -> bool:
    """Whether a mark ends the part that starts at `start`: a comma and the like, the plus of `95x6 press + 8 chins`."""
    kind = marks[place].kind
    if kind is Kind.PLUS:
        return kind_at(marks, place - 1) in _NAMES and not marks[place].tight
    return kind in PARTING and not _goes_on(marks, start, place)


def _is_turn(part: Sequence[Mark], place: int) -> bool:
    """The `pushes` of `4 pushes of 20`: what is counted, and no name."""
    of = place + 1 < len(part) and part[place + 1].text == "of"
    return part[place].kind is Kind.WEAK and of and kind_at(part, place - 1) is Kind.NUM


def _read_part(part: Sequence[Mark], names: Sequence[int], start: int, seam: Kind | None) -> Part:
    """The part of these marks, which start at `start` in the message and hold names at these places."""
    end = start + len(part)
    if len(names) != 1 or not _is_entry(part[head_of(part) :]) or _begins(part, names[0]):
        numbers = sum(m.kind is Kind.NUM for m in part)
        return Part(start, end, seam, None, None, numbers, plain=not names and all(m.kind in _PLAIN for m in part))
    name = names[0]
    behind = _is_behind(part, name)
    numbers = sum(m.kind is Kind.NUM for m in part[: name if behind else len(part)])
    told = part[name].names
    return Part(start, end, seam, start + name, told[0] if len(told) == 1 else None, numbers, behind=behind)


def _begins(part: Sequence[Mark], name: int) -> bool:
    """Whether a name begins the next exercise behind a number of the one before: `seven yates ninety for ten`."""
    rest = [m for m in part[name + 1 :] if m.kind not in (Kind.FILL, Kind.KG, Kind.LB)]
    whole = [m.kind for m in rest[:3]] in ([Kind.NUM, Kind.X, Kind.NUM], [Kind.NUM, Kind.FOR, Kind.NUM])
    loaded = whole and (rest[0].value or 0) > FEW_SETS
    return loaded and any(m.kind in _SAID for m in part[:name])


def _is_behind(part: Sequence[Mark], name: int) -> bool:
    """Whether a name stands behind its counts: `7 chins`, `5 on squats at 100`; not `95 press 6`."""
    rest = [m for m in part[name + 1 :] if m.kind is not Kind.FILL]
    told = any(m.kind in _SAID and kind_at(part, i + 1) not in _COUNTS for i, m in enumerate(part[:name]))
    loaded = [m.kind for m in rest[:2]] in ([Kind.AT, Kind.NUM], [Kind.WITH, Kind.NUM])
    return told and (not any(m.kind in _SAID for m in rest) or (loaded and sum(m.kind is Kind.NUM for m in rest) == 1))


def head_of(part: Sequence[Mark]) -> int:
    """Behind the `today:` of a part; 0 without one."""
    colon = next((i for i, m in enumerate(part) if m.kind is Kind.COLON), 0)
    return colon + 1 if colon and all(m.kind in (Kind.FILL, Kind.GAP) for m in part[:colon]) else 0


def _goes_on(marks: Sequence[Mark], start: int, place: int) -> bool:
    """The comma of `3 sets of squats, 5 at 100`: how many sets, and behind it what they were; not of a list. And that
    of `squats, 100, 5, 5`, behind a name alone.
    """
    if marks[place].kind is not Kind.COMMA or kind_at(marks, place + 1) is not Kind.NUM:
        return False
    if [m.kind for m in marks[start:place] if m.kind is not Kind.FILL] == [Kind.NAME]:
        return True
    end = next((i for i in range(place + 1, len(marks)) if marks[i].kind in PARTING), len(marks))
    listed = kind_at(marks, end + 1) is Kind.NUM and kind_at(marks, end + 2) in (None, *PARTING)
    return _only_counts(marks[start + head_of(marks[start:place]) : place]) and not listed


def _only_counts(part: Sequence[Mark]) -> bool:
    """`3 sets of squats`: a name with how many sets there were."""
    said = [m.kind for m in part if m.kind is not Kind.FILL]
    return len(said) == len(("number", "sets", "name")) and said[:2] == [Kind.NUM, Kind.SETS] and said[2] in _NAMES


def _is_entry(part: Sequence[Mark]) -> bool:
    """Whether a part tells sets with their repetitions, and nothing else."""
    name = next((i for i, m in enumerate(part) if m.kind in _NAMES), len(part))
    told = all(m.kind in _TELLS or (i > name and m.kind in _BEHIND_NAMES) for i, m in enumerate(part))
    if not told or sum(m.kind is Kind.FILL for m in part) > _LITTLE:
        return False
    if _only_counts(part):
        return True
    numbers = [i for i, m in enumerate(part) if m.kind is Kind.NUM]
    counts = [i for i in numbers if kind_at(part, i + 1) not in (*_UNITS, *_COUNTS)]
    return bool(counts) and (len(numbers) > 1 or kind_at(part, counts[0] + 1) not in (Kind.X, Kind.FOR))
