"""What the kit itself weighs, beside loads: `bar is 20`, `not counting the 20 lb carriage`, `collars are 2.5 each`.

Never a load that something was done with: `the 20 kg bar x 10`, `chins with a 10 kg vest`, `bar + 40`.
"""

from collections.abc import Sequence

from bot.notation.clauses import EDGES, kind_at, part_of, text_at
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark
from bot.notation.wordlist import words

_UNITS = (Kind.KG, Kind.LB)
_BARS = frozenset(words("bar bars barbell ezbar axle machine"))
_HOLDERS = frozenset(words(
    "carriage carriages sled sleds handle handles collar collars clip clips clamp clamps trolley frame attachment hook "
    "hooks prowler yoke pin rope microplate microplates lever cart basket cradle"
))  # fmt: skip
"""What holds a load, and is none that is hung on somebody."""
_HUNG = frozenset(words("belt belts chain chains vest harness plate plates"))
"""What may be hung on somebody, or be loaded: a load itself, where no word says that it only weighs so much."""
_WEIGHS = frozenset(words("is was are were weigh weighs weighed weighing s thats its"))
_BETWEEN = _WEIGHS | frozenset(words("it its only just like about around roughly maybe prob probably here alone itself "
                                     "empty = the in i think this gym"))  # fmt: skip
_USED = frozenset(words("with used using use on"))
_COUNTED = frozenset(words("counting count counts counted include including includes included incl inc excluding excl "
                           "exclude excludes excluded without minus not"))  # fmt: skip
_HEAVIEST = 55
"""The heaviest bar, in pounds or kilograms (common practice, no source)."""
_JOINED = (Kind.PLUS, Kind.X, Kind.FOR, Kind.SLASH, Kind.MINUS, Kind.SIGN, Kind.NUM, Kind.RPE, Kind.RIR, Kind.AT)
_OF_SET = (Kind.X, Kind.FOR, Kind.REPS, Kind.SETS, Kind.PLUS, Kind.NUM, Kind.SECONDS, Kind.METRES, Kind.TIMES, Kind.S)
_FAR = 8


def kit_weights(marks: Sequence[Mark]) -> set[int]:
    """The places of such weights, and of the words around them."""
    out: set[int] = set()
    for place, mark in enumerate(marks):
        if mark.kind is Kind.NUM and not mark.parts and 0 < (mark.value or 0) <= _HEAVIEST:
            out |= _told_at(marks, place)
    return out


def _told_at(marks: Sequence[Mark], place: int) -> set[int]:
    """The places of what tells that the kit weighs the number here; none where it may be a load."""
    plates = _plates(marks, place)
    if plates is not None:
        return plates
    after = place + 1 + (kind_at(marks, place + 1) in _UNITS)
    if text_at(marks, place - 1) == "the" and kind_at(marks, place - 2) is Kind.NOT and text_at(marks, after) in _ONES:
        return set(range(place - 2, after + 1))
    by_itself = text_at(marks, after) == "by" and text_at(marks, after + 1) == "itself"
    if kind_at(marks, place - 1) in _JOINED or (kind_at(marks, after) in _OF_SET and not by_itself):
        return set()
    start, end = part_of(marks, place, _FAR)
    counted = any(set(m.text.split()) & _COUNTED for m in marks[start:place])
    if any(m.kind is Kind.NAME and m.names for m in marks[start : place if counted else end]):
        return set()
    first = _weighing(marks, place)
    if first is None:
        first = _with_kit(marks, start, place, end) if after > place + 1 else None
    alone = [w for m in marks[after : after + 3] for w in m.text.split()][:3] in _BY_ITSELF
    if first is None or not (alone or _is_beside_sets(marks, first, place, end)):
        return set()
    while first > 0 and (text_at(marks, first - 1) in _COUNTED | {"the", "my"} or _is_elsewhere(marks[first - 1])):
        first -= 1
    last = after
    while last < end and marks[last].kind not in (Kind.THEN, Kind.NAME) and text_at(marks, last) not in ("so", "but"):
        last += 1
    return set(range(first, last))


_BY_ITSELF = (["by", "itself"], ["on", "its", "own"], ["alone"], ["itself"], ["by", "themselves"])


def _plates(marks: Sequence[Mark], place: int) -> set[int] | None:
    """The places of `grabbed the wrong 5s`, `had 2.5s on not 5s`: small plates beside a load; else `None`."""
    value = marks[place].value or 0
    if kind_at(marks, place + 1) is not Kind.S or kind_at(marks, place + 2) in (Kind.X, Kind.FOR, Kind.REPS, Kind.NUM):
        return None
    start, end = part_of(marks, place, _FAR)
    start = next((i + 1 for i in range(place - 1, start, -1) if marks[i].kind in (Kind.X, Kind.FOR)), start - 1) + 1
    start = min(start, place)
    part = range(start, end)
    led = {w for i in part for w in marks[i].text.split()}
    listed = [i for i in part if marks[i].kind is Kind.NUM]
    plates = all(kind_at(marks, i + 1) is Kind.S and (marks[i].value or 0) <= _HEAVIEST for i in listed)
    heavier = any(m.kind is Kind.NUM and (m.value or 0) > _SMALL * value for m in (*marks[:start], *marks[end:]))
    if not (heavier and plates and led & _GRABBED) or any(marks[i].kind in (Kind.X, Kind.REPS) for i in part):
        return None
    return set(range(start, end))


_SMALL = 8
"""So much heavier than a plate is what it is loaded on (common practice, no source)."""
_GRABBED = frozenset(words("grabbed wrong had put putting loaded loading used took forgot missing swapped only find "
                           "finding added add need needed got ran lost no"))  # fmt: skip


_ONES = ("one", "ones", "bar", "plates")
"""What ends `not the 20 one`, which was not used."""


def _is_elsewhere(mark: Mark) -> bool:
    """The `smith` of `smith bar is 9 kg`: no exercise of the session."""
    return mark.kind in (Kind.NAME, Kind.WEAK) and not mark.names


def _weighing(marks: Sequence[Mark], place: int) -> int | None:
    """Where `bar is 20`, `bar weighs about 20`, `bar included (20)`, `the lighter bar, 15 kg` starts; else `None`."""
    at, said = place - 1, set[str]()
    while at >= 0 and (set(text_at(marks, at).split()) <= _BETWEEN | _COUNTED or kind_at(marks, at) in _SEAMS):
        said |= set(text_at(marks, at).split())
        at -= 1
    noun = set(text_at(marks, at).split()[-1:])
    weighs = bool(said & _WEIGHS) or kind_at(marks, place - 1) in (Kind.COLON, Kind.OPEN)
    if noun & _HUNG:
        return at if weighs and said & _WEIGHS else None
    weighs = weighs or ("not" in said and text_at(marks, place + 1) == "one")
    apart = kind_at(marks, place - 1) is Kind.COMMA and kind_at(marks, place + 1) in (*_UNITS, Kind.EACH)
    return at if noun & (_BARS | _HOLDERS) and (weighs or apart) else None


_SEAMS = (Kind.OPEN, Kind.COMMA, Kind.COLON)


def _with_kit(marks: Sequence[Mark], start: int, place: int, end: int) -> int | None:
    """Where `with the 20 kg bar`, `not counting the 20 lb carriage`, of which the part has nothing else, starts."""
    noun = set(text_at(marks, place + 2).split()[-1:])
    noun = noun or set(text_at(marks, place + 3).split()[-1:])
    at = place
    while at > start and kind_at(marks, at - 1) not in (Kind.NUM, Kind.X):
        at -= 1
    led = {w for m in marks[at:place] for w in m.text.split()}
    ends = place + 3 >= end or text_at(marks, place + 3) in ("on the", "on", "of the", "today", "here", "though", "btw")
    if led & _COUNTED:
        return at if noun & (_BARS | _HOLDERS | _HUNG) else None
    return at if led & _USED and noun & (_BARS | _HOLDERS) and ends else None


def _is_beside_sets(marks: Sequence[Mark], first: int, place: int, end: int) -> bool:
    """Whether a heavier load is told with its repetitions beside it, and no bare count follows that may be of it."""
    value = marks[place].value or 0
    follows = next((i for i in range(end, len(marks)) if marks[i].kind not in EDGES), len(marks))
    if kind_at(marks, follows) is Kind.NUM and not _is_entry(marks, follows):
        return False
    return any(
        m.kind is Kind.NUM and (m.value or 0) > value and _is_entry(marks, i)
        for i, m in enumerate(marks)
        if not first <= i < end
    )


def _is_entry(marks: Sequence[Mark], place: int) -> bool:
    """Whether a number is a load with its repetitions."""
    after = place + 1
    while kind_at(marks, after) in (*_UNITS, Kind.S):
        after += 1
    return kind_at(marks, after) in (Kind.X, Kind.FOR, Kind.COLON, Kind.NUM)
