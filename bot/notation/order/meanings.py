"""Marks whose meaning those beside them give: `60 times 5`, `again 60 for 5`, `14kg dbs`, `with a little help`."""

from collections.abc import Sequence
from dataclasses import replace
from decimal import Decimal

from bot.notation.bounds import MOST_SETS
from bot.notation.clauses import kind_at, part_of, text_at
from bot.notation.kinds import Kind
from bot.notation.order.more_talk import is_more_of_talk
from bot.notation.order.near import LOADED, OF_LOAD, UNITS, whole_number
from bot.notation.tokens import Mark
from bot.notation.wordlist import words

_REPEATS = ("and again", "once more", "again")
_BELLS = frozenset(words("db dbs dumbbell dumbbells dumbell dumbells kb kbs kettlebell kettlebells bells"))
_LITTLE = frozenset(words("little bit some slight tiny"))
_SEVERAL = frozenset((
    Kind.SAME, Kind.AGAIN, Kind.THEN, Kind.SLASH, Kind.DASH, Kind.TIMES, Kind.NUM, Kind.HAND, Kind.LASTREP, Kind.MORE,
    Kind.AT, Kind.WORD, Kind.TO, Kind.DROP, Kind.PLATES, Kind.NAME, Kind.WEAK, Kind.ASSIST, Kind.WITH, Kind.BODY,
))  # fmt: skip
"""Kinds that mean several things."""


def by_neighbours(marks: Sequence[Mark], place: int) -> Mark:
    """A mark with the meaning that those beside it give it."""
    mark = marks[place]
    if mark.kind not in _SEVERAL:
        return mark
    after = kind_at(marks, place + 1)
    numbered = after is Kind.NUM
    if mark.kind in (Kind.SAME, Kind.AGAIN) and mark.text in _REPEATS and numbered:
        whole = kind_at(marks, place + 2) in LOADED or kind_at(marks, place + 2) in OF_LOAD
        whole = whole or kind_at(marks, place - 1) is kind_at(marks, place + 2) is Kind.TIMES
        return replace(mark, kind=Kind.AND if mark.text.startswith("and") else Kind.FILL) if whole else mark
    if mark.kind is Kind.SAME and _is_entry(marks, place + 1) and not any(m.kind is Kind.NUM for m in marks[:place]):
        return replace(mark, kind=Kind.FILL)
    if mark.kind is Kind.THEN and after in (Kind.COLON, Kind.COMMA) and _is_load_at(marks, place - 1):
        return replace(mark, kind=Kind.FILL)
    apart = (
        mark.kind in (Kind.SLASH, Kind.DASH)
        and not mark.tight
        and not (place + 1 < len(marks) and marks[place + 1].tight)
    )
    if apart and _names_next(marks, place):
        return replace(mark, kind=Kind.BREAK)
    if mark.kind is Kind.TIMES and _is_of_event(marks, place):
        return replace(mark, kind=Kind.GAP)
    if mark.kind is Kind.NUM and after is Kind.TIMES and _is_of_event(marks, place + 1):
        return replace(mark, kind=Kind.GAP, value=None, parts=())
    if mark.kind is Kind.TIMES and kind_at(marks, place - 1) is Kind.NUM and mark.text != "twice":
        whole = [m.kind for m in marks[place + 1 : place + 4]] == [Kind.NUM, Kind.X, Kind.NUM]
        kind = Kind.SETS if after is Kind.NAME or whole else Kind.X if numbered else mark.kind
        return replace(mark, kind=kind, text="x" if kind is Kind.X else "sets" if whole else mark.text)
    if (
        mark.kind is Kind.HAND
        and mark.text == "apiece"
        and after in (Kind.WITH, Kind.AT)
        and _is_bell(marks, place + 1)
    ):
        return replace(mark, kind=Kind.FILL)
    if mark.kind is Kind.HAND and kind_at(marks, place - 1) is Kind.REPS and "hand" in mark.text.split():
        return replace(mark, kind=Kind.EACH)
    if mark.kind is Kind.HAND and (counted := counted_by_hand(marks, place)) is not None and counted[0] > counted[1]:
        return replace(mark, kind=Kind.EACH)
    if (
        mark.kind is Kind.LASTREP
        and mark.text in ("last", "the last")
        and after is Kind.NAME
        and _is_sided(marks, place)
    ):
        return replace(mark, kind=Kind.LASTSET)
    if mark.kind is Kind.MORE and is_more_of_talk(marks, place):
        return replace(mark, kind=Kind.FILL)
    if mark.kind is Kind.MORE and kind_at(marks, place - 1) is Kind.SETS:
        return replace(mark, kind=Kind.FILL)
    if mark.kind is Kind.MORE and kind_at(marks, place - 1) is Kind.NUM and after in (Kind.SETS, Kind.SET):
        return replace(mark, kind=Kind.FILL)
    if mark.kind is Kind.MORE and kind_at(marks, place - 1) is Kind.NUM and after is Kind.MINI:
        return replace(mark, kind=Kind.FILL)
    if mark.kind is Kind.NUM and after is Kind.MORE and _is_told_each(marks, place):
        return replace(mark, kind=Kind.GAP, value=None, parts=())
    if mark.kind is Kind.AT and mark.text == "on" and kind_at(marks, place - 1) is Kind.NUM and _is_put(marks, place):
        return replace(mark, kind=Kind.FILL)
    if mark.kind is Kind.WORD and mark.text in _PUTTING and _is_loading(marks, place):
        return replace(mark, kind=Kind.FILL)
    if mark.kind is Kind.TO and numbered and place > 1 and marks[place - 1].text == "it":
        return replace(mark, kind=Kind.FILL)
    if mark.text == "times" and kind_at(marks, place - 1) in _COUNTED and whole_number(marks, place + 1, 1, MOST_SETS):
        return replace(mark, kind=Kind.X, text="x")  # `40 seconds a side times two`
    if (
        mark.kind in (Kind.MORE, Kind.ANOTHER)
        and text_at(marks, place + 1) == "like"
        and kind_at(marks, place + 2) is Kind.NUM
    ):
        return replace(mark, kind=Kind.FILL)  # `rpe on that one more like 9.5`
    if mark.kind is Kind.DROP and mark.text.endswith(" to") and _is_of_new(marks, place):
        return replace(mark, kind=Kind.FILL)
    if mark.kind is Kind.MORE and mark.text == "extra" and _is_set(marks, place + 1):
        return replace(mark, kind=Kind.FILL)
    if mark.kind is Kind.MORE and mark.text == "more" and _is_many(marks, place - 1):
        return replace(mark, kind=Kind.REPS)
    if mark.kind is Kind.PLATES and mark.text == "bar" and kind_at(marks, place - 1) is Kind.NAME and not numbered:
        return replace(mark, kind=Kind.FILL)
    if mark.kind is Kind.PLATES and "bar" in mark.text.split() and _is_told_of(marks, place):
        return replace(mark, kind=Kind.FILL)
    if (
        mark.kind is Kind.BODY
        and mark.text == "just me"
        and kind_at(marks, place + 1) in (Kind.AND, Kind.WORD, Kind.FILL)
    ):
        return replace(mark, kind=Kind.FILL)  # `just me and the cleaner in here`
    if mark.kind in (Kind.NAME, Kind.WEAK) and mark.text in _BELLS and kind_at(marks, place - 1) in (*UNITS, Kind.S):
        return replace(mark, kind=Kind.HAND, names=())
    if mark.kind is Kind.ASSIST and _is_helped(marks, place):
        return replace(mark, kind=Kind.GAP)
    if mark.kind is Kind.WITH:
        helped = next((i for i in range(place + 1, min(place + 5, len(marks))) if marks[i].kind is Kind.ASSIST), None)
        return replace(mark, kind=Kind.GAP) if helped is not None and _is_helped(marks, helped) else mark
    return mark


def counted_by_hand(marks: Sequence[Mark], place: int) -> tuple[Decimal, Decimal] | None:
    """The load and the count before a hand: those of `24x10 each hand`, `25 kg for 12 reps per hand`."""
    count = place - 1 - (kind_at(marks, place - 1) is Kind.REPS)
    weighed = kind_at(marks, count - 1) is Kind.COMMA and kind_at(marks, count - 2) in (Kind.KG, Kind.LB)
    linked = kind_at(marks, count) is Kind.NUM and (weighed or kind_at(marks, count - 1) in (Kind.X, Kind.FOR))
    load = count - 2 - (kind_at(marks, count - 2) in (Kind.KG, Kind.LB, Kind.S))
    values = (marks[load].value, marks[count].value) if linked and kind_at(marks, load) is Kind.NUM else (None, None)
    return (values[0], values[1]) if values[0] is not None and values[1] is not None else None


_COUNTED = (Kind.EACH, Kind.SECONDS, Kind.METRES, Kind.M, Kind.REPS, Kind.HAND)


def _is_of_event(marks: Sequence[Mark], place: int) -> bool:
    """`80x5, phone rang 3 times`, `had to stop twice`: what happened so often, in a part that tells no set.

    Not `missed 65 twice`, whose number is a load.
    """
    first = place - (kind_at(marks, place - 1) in (Kind.NUM, Kind.GAP))
    start, end = part_of(marks, place)
    if kind_at(marks, place - 1) is Kind.GAP:  # what hurts, told as one whole with its commas
        start = next((i + 1 for i in range(place - 1, -1, -1) if marks[i].kind is not Kind.GAP), 0)
    if kind_at(marks, place - 1) is Kind.NUM and text_at(marks, place) != "times":
        return False
    event = first > start and kind_at(marks, first - 1) in (Kind.WORD, Kind.SKIP, Kind.GAP)
    if not event or set(text_at(marks, first - 1).split()) & _DONE_AGAIN:
        return False
    return all(m.kind in _OF_EVENTS for m in (*marks[start:first], *marks[place + 1 : end]))


_DONE_AGAIN = frozenset(words("circuit superset round rounds complex ladder sequence combo lot thing redid rep pair"))
_OF_EVENTS = (Kind.WORD, Kind.FILL, Kind.GAP, Kind.SKIP, Kind.COULD, Kind.TO, Kind.WAS, Kind.AND, Kind.DROP, Kind.WITH)


def _is_load_at(marks: Sequence[Mark], place: int) -> bool:
    """`rows at 15 after that: 10 each`: a name's load, the word of when behind it."""
    return [kind_at(marks, place - n) for n in (2, 1, 0)] == [Kind.NAME, Kind.AT, Kind.NUM]


def _names_next(marks: Sequence[Mark], place: int) -> bool:
    """`curls 12x10 / I did rows 50x12`, `skulls 25x11 - both sets of shrugs as planned`: between two names."""
    told = any(m.kind is Kind.NUM for m in marks[max(0, place - 3) : place])
    at = place + 1
    while kind_at(marks, at) in (Kind.FILL, Kind.ALL, Kind.SETS, Kind.NUM):
        at += 1
    if not told or kind_at(marks, at) not in (Kind.NAME, Kind.WEAK):
        return False
    counted = any(m.kind in (Kind.NUM, Kind.ALL) for m in marks[place + 1 : at])
    return counted or any(kind_at(marks, at + n) in (Kind.NUM, Kind.PLANNED, Kind.SAME, Kind.BODY) for n in (1, 2, 3))


def _is_bell(marks: Sequence[Mark], place: int) -> bool:
    """`15 apiece with the 44`: the load follows, so that the number before counts repetitions."""
    return kind_at(marks, place + 1) is Kind.NUM and kind_at(marks, place - 2) is Kind.NUM


def _is_sided(marks: Sequence[Mark], place: int) -> bool:
    """`last BSS the right side was 9`: one side of the last set of an exercise."""
    return kind_at(marks, place + 2) in (Kind.LEFT, Kind.RIGHT) and kind_at(marks, place + 3) is Kind.WAS


_PUTTING = frozenset(words("put stuck slapped threw chucked loaded whacked banged popped had got"))


def _is_put(marks: Sequence[Mark], place: int) -> bool:
    """The `on` of `put 200 on, 10`: what the bar was loaded with."""
    return place > 1 and marks[place - 2].text in _PUTTING and kind_at(marks, place + 1) is not Kind.NUM


def _is_loading(marks: Sequence[Mark], place: int) -> bool:
    """`put 200 on, 10`, `put it to 200, got 10`: a load, and behind a comma the repetitions with it."""
    at = place + 1
    while kind_at(marks, at) in (Kind.FILL, Kind.TO):
        at += 1
    end = at + 1 + (kind_at(marks, at + 1) in UNITS)
    end += kind_at(marks, end) is Kind.AT
    then = end + 1
    while kind_at(marks, then) is Kind.FILL:
        then += 1
    return kind_at(marks, at) is Kind.NUM and kind_at(marks, end) is Kind.COMMA and kind_at(marks, then) is Kind.NUM


def _is_told_each(marks: Sequence[Mark], place: int) -> bool:
    """`2 more minis, 3 and 2`: how many there were, each told behind."""
    told = sum(m.kind is Kind.NUM for m in marks[place + 1 : place + 12])
    return kind_at(marks, place + 2) is Kind.MINI and told > 1 and marks[place].value == told


def _is_of_new(marks: Sequence[Mark], place: int) -> bool:
    """`second took it down to 20`: a set of its own, named before, and no drop of the one before it."""
    at = place - 1
    while kind_at(marks, at) in (Kind.FILL, Kind.SET) or (at >= 0 and marks[at].text == "one"):
        at -= 1
    return kind_at(marks, at) in (Kind.ORD, Kind.LABEL) and kind_at(marks, place + 1) in (
        Kind.NUM, Kind.DASH, Kind.MINUS, Kind.PLUS
    )  # fmt: skip


def _is_entry(marks: Sequence[Mark], place: int) -> bool:
    """`100x5`, past fillers: what `the same again 100x5` repeats, told in full."""
    while kind_at(marks, place) is Kind.FILL:
        place += 1
    return [kind_at(marks, place + n) for n in (0, 1, 2)] in (
        [Kind.NUM, Kind.X, Kind.NUM],
        [Kind.NUM, Kind.FOR, Kind.NUM],
    )


def _is_set(marks: Sequence[Mark], place: int) -> bool:
    """`an extra one`, `an extra set`."""
    return kind_at(marks, place) in (Kind.SET, Kind.SETS) or (place < len(marks) and marks[place].text == "one")


_MOST_LEFT = 6
"""Nobody keeps as many repetitions in reserve and counts them."""


def _is_many(marks: Sequence[Mark], place: int) -> bool:
    """Whether a number is too great for repetitions in reserve: `17 more for the second`."""
    value = marks[place].value if kind_at(marks, place) is Kind.NUM else None
    return value is not None and value >= _MOST_LEFT and kind_at(marks, place - 1) is not Kind.COULD


def _is_told_of(marks: Sequence[Mark], place: int) -> bool:
    """Whether a bar's load follows (`empty bar 20x12`), or it is only spoken of (`bar pad slipped`)."""
    weighed = kind_at(marks, place + 1) is Kind.NUM and kind_at(marks, place + 2) in (Kind.X, Kind.FOR)
    spoken = kind_at(marks, place + 1) is Kind.WORD and kind_at(marks, place - 1) is not Kind.NUM
    return weighed or spoken


def _is_helped(marks: Sequence[Mark], place: int) -> bool:
    """`with a little help`: no amount of it."""
    at = place - 1
    while kind_at(marks, at) is Kind.FILL or (at >= 0 and marks[at].text in _LITTLE):
        at -= 1
    return kind_at(marks, at) is Kind.WITH
