"""Sets left that are given up, in words of their own: `the other two`, `left the third out`, `missed the last set`."""

from collections.abc import Sequence
from dataclasses import replace

from bot.notation.bounds import FEW_SETS
from bot.notation.clauses import EDGES, kind_at, part_of, text_at
from bot.notation.days.weekdays import WEEKDAYS
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark

_OTHERS = frozenset(["other", "the other", "remaining", "the remaining", "last", "the last", "final", "the final"])
_COUNTS = {2: "two", 3: "three", 4: "four"}
_CUES = (Kind.SKIP, Kind.SKIPPED)
_SETS = (Kind.SET, Kind.SETS, Kind.NAME, Kind.WEAK)
_NAMES = (Kind.NAME, Kind.WEAK)
_WHICH = (Kind.LASTSET, Kind.LASTREP, Kind.ORD)
_LEFT = frozenset(["left", "leave", "leaving"])
_FAR = 20
"""Marks that are looked at on either side."""


def with_sets_left(marks: Sequence[Mark]) -> list[Mark]:
    """The marks with such words as those that skip, or as what is left of one exercise. Their number stays."""
    out = list(marks)
    for place, mark in enumerate(marks):
        left = mark.text in _LEFT and mark.kind is not Kind.SKIP and _is_left(marks, place)
        left = left or (mark.text in ("let", "letting") and _falls(marks, place))
        if left or (_misses(mark) and _names_set(marks, place + 1)):
            out[place] = replace(mark, kind=Kind.SKIP)
        elif _says_none(marks, place):
            out[place] = replace(mark, kind=Kind.SKIPPED)
        elif mark.kind is Kind.SETS and _lists(marks, place):
            end = place + 4
            out[place:end] = [replace(m, kind=Kind.THEREST, text="the other two", value=None, parts=())
                              for m in marks[place:end]]  # fmt: skip
        elif mark.kind is Kind.SKIP and (after := stops_after(marks, place)):
            if not any(m.kind in _NAMES for m in marks[place : after[0]]):
                out[after[0]] = replace(marks[after[0]], kind=Kind.THEREST, text="of it", value=None, parts=())
        elif mark.kind is Kind.SKIP and _stops_at(marks, place):
            out[place + 3] = replace(marks[place + 3], kind=Kind.THEREST, text="of it", value=None, parts=())
        elif mark.kind is Kind.THEREST and mark.text in _OTHERS and text_at(marks, place + 1) in ("one", "set"):
            out[place] = replace(mark, kind=Kind.LASTSET, text="the last")
        elif mark.text in _OTHERS and _counts(out, place):
            count = _COUNTS[int(marks[place + 1].value or 0)]
            out[place] = replace(mark, kind=Kind.THEREST, text=f"the other {count}", value=None)
            out[place + 1] = replace(marks[place + 1], kind=Kind.THEREST, text=count, value=None, parts=())
    return out


def _misses(mark: Mark) -> bool:
    """`missed the`, `bailed on the`: a repetition that failed, or a set that was given up."""
    return mark.text in ("missed the", "missed my") or (mark.kind is Kind.FAILED and mark.text.startswith("bail"))


def _falls(marks: Sequence[Mark], place: int) -> bool:
    """`let the last two sets fall`."""
    _, end = part_of(marks, place, _FAR)
    fall = next((i for i in range(place + 2, end) if marks[i].text.split()[-1:] in _FALLING), None)
    kinds = (*_WHICH, *_SETS, Kind.NUM, Kind.FILL, Kind.THEREST)
    return fall is not None and all(m.kind in kinds for m in marks[place + 1 : fall])


_FALLING = (["fall"], ["slide"], ["drop"], ["go"], ["out"], ["away"], ["be"], ["slip"])


def _lists(marks: Sequence[Mark], place: int) -> bool:
    """`skipped sets 2 and 3`: two sets by their numbers, beside a word that skips."""
    listed = [m.kind for m in marks[place + 1 : place + 4]] == [Kind.NUM, Kind.AND, Kind.NUM]
    start, end = part_of(marks, place, _FAR)
    return (
        listed
        and any(m.kind in _CUES for m in marks[start:end])
        and not any(m.kind in (Kind.X, Kind.KG, Kind.LB) for m in marks[place:end])
    )


def _stops_at(marks: Sequence[Mark], place: int) -> bool:
    """`leaving it at one plank`: how many sets of it there are."""
    said = marks[place : place + 4]
    stops = [m.text for m in said[:3]][1:] == ["it", "at"] and len(said) > 3 and said[0].text in _LEFT
    return stops and said[3].kind is Kind.NUM and said[3].value in (1, *_COUNTS)


def stops_after(marks: Sequence[Mark], place: int) -> range:
    """The places of how many were done, in `quit after 2 sets`, `gave up on rows after two: 50x10, 50x9`; none else."""
    said = marks[place].text.split()
    if not set(said) & _QUITTING:
        return range(0)
    at = place + 1
    while kind_at(marks, at) in (Kind.FILL, *_NAMES) and text_at(marks, at) != "after":
        at += 1
    if said[-1] != "after":
        if text_at(marks, at) != "after":
            return range(0)
        at += 1
    value = marks[at].value if kind_at(marks, at) is Kind.NUM else None
    if value is None or not 0 < value <= FEW_SETS:
        return range(0)
    told = at + 1
    while kind_at(marks, told) in (*_PAUSES, Kind.GAP):
        told += 1
    whole = kind_at(marks, told) is Kind.NUM and kind_at(marks, told + 1) in (Kind.X, Kind.FOR)
    listed = kind_at(marks, at + 1) in _PAUSES and whole
    counted = kind_at(marks, at + 1) in (Kind.SET, Kind.SETS)
    return range(at, at + 1 + counted) if listed or counted else range(0)


_PAUSES = (Kind.COLON, Kind.COMMA, Kind.STOP, Kind.DASH, Kind.LINE)
_QUITTING = frozenset(["quit", "stopped", "stop", "gave", "stopping", "quitting", "giving"])


def _names_set(marks: Sequence[Mark], at: int) -> bool:
    """Whether one set is named here, and nothing told of it: `the last set`, not `the last rep`, `the 8th`."""
    at += kind_at(marks, at) is Kind.FILL
    if kind_at(marks, at) not in _WHICH or "rep" in text_at(marks, at).split():
        return False
    if _several(marks, at):
        return True
    bails = text_at(marks, at - 1).startswith("bail") and "set" not in text_at(marks, at).split()
    whole = (kind_at(marks, at) is not Kind.ORD and not bails) or kind_at(marks, at + 1) is Kind.SET
    at += 1 + (kind_at(marks, at + 1) is Kind.SET)
    _, end = part_of(marks, at - 1, _FAR)
    return whole and not any(m.kind in (Kind.NUM, Kind.X, Kind.REPS) for m in marks[at:end])


def _several(marks: Sequence[Mark], at: int) -> int:
    """How many marks count the sets of `the last two squats`, `the last two on purpose`; not of `the last two reps`."""
    if kind_at(marks, at) not in (Kind.LASTSET, Kind.LASTREP) or kind_at(marks, at + 1) is not Kind.NUM:
        return 0
    end = at + 2
    while kind_at(marks, end) in _SETS:
        end += 1
    meant = end > at + 2 or text_at(marks, end) == "on purpose"
    return end - at if meant and marks[at + 1].value in _COUNTS and kind_at(marks, end) is not Kind.REPS else 0


def _says_none(marks: Sequence[Mark], place: int) -> bool:
    """`set 3 not done`, `planks never happened`, `squats are done for today`."""
    mark = marks[place]
    if mark.text in ("not done", "set no") or mark.kind is Kind.NO or mark.text in _NONE:
        return _denies(marks, place)
    if mark.text in _LATER or mark.text in WEEKDAYS:
        at = place - 1
        while text_at(marks, at) in _PUT_OFF and place - at < _NEAR:
            at -= 1
        late = at == place - 1 or text_at(marks, at + 1) in _PUT_OFF
        alone = kind_at(marks, place - 1) is Kind.NAME and kind_at(marks, place - 2) in (None, *EDGES)
        left = (kind_at(marks, at) is Kind.THEREST and late) or (alone and mark.text in _LATER)
        return left and kind_at(marks, place + 1) in (None, *EDGES)
    if mark.text == "never happened":
        return kind_at(marks, place - 1) in _NAMES
    if mark.text in ("bailed", "dropped", "cancelled", "gone") or (
        mark.text in ("not", "not feeling") and _is_not_felt(marks, place)
    ):
        return _ends_name(marks, place) and not (mark.text == "gone" and text_at(marks, place - 1) in _USED_UP)
    return mark.kind is Kind.FINISH and _is_of_name(marks, place)


_LATER = frozenset(["tomorrow", "tmrw", "tomorow", "next time", "next session", "next week"])
"""`the rest tomorrow`: not today."""
_PUT_OFF = frozenset(["saved", "kept", "left", "moved", "pushed", "for", "to", "on", "til", "until", "will", "be",
                      "i", "do", "ill", "comes", "come", "is", "shifted", "parked", "done"])  # fmt: skip
_NEAR = 5
"""Words that put off which are looked back over: `leaving the last one for another day`."""
_USED_UP = frozenset(["legs", "leg", "arms", "back", "chest", "abs", "core", "grip", "hands", "shoulders", "quads"])
"""What is gone when it is tired: `90x10, legs gone` leaves no leg curl out."""


def _is_not_felt(marks: Sequence[Mark], place: int) -> bool:
    """`not feeling it`, `not feeling them today`."""
    said = [w for m in marks[place : place + 4] for w in m.text.split()]
    return said[:2] == ["not", "feeling"] and said[2:3] in (["it"], ["them"], ["these"], ["those"])


def _ends_name(marks: Sequence[Mark], place: int) -> bool:
    """`dips bailed`, `dips: not feeling it`: a name alone before it, and nothing told behind it in its part."""
    at = place - 1 - (kind_at(marks, place - 1) in (Kind.DASH, Kind.COLON, Kind.COMMA))
    if kind_at(marks, at) not in _NAMES:
        return False
    start, _ = part_of(marks, at, _FAR)
    _, end = part_of(marks, place, _FAR)
    beside = (*marks[start:at], *marks[place + 1 : end])
    return all(m.kind in _BESIDE for m in beside)


_BESIDE = (Kind.FILL, Kind.WORD, Kind.AND, Kind.THEN, Kind.FOR, Kind.WAS)


def _is_of_name(marks: Sequence[Mark], place: int) -> bool:
    """`squats are done for today`: the exercise that opens its part is over, not the session."""
    start, _ = part_of(marks, place, _FAR)
    kinds = [m.kind for m in marks[start:place] if m.kind is not Kind.FILL]
    return kinds == [Kind.NAME, Kind.WAS] and "done" in marks[place].text.split()


_NONE = frozenset(["nope", "nah", "naw", "none", "zero", "nothing", "zilch", "nada"])


def _denies(marks: Sequence[Mark], place: int) -> bool:
    """`set 3 not done`, `third set no`: a set that is named right before, at the end of its part."""
    end = place - (kind_at(marks, place - 1) in (Kind.COLON, Kind.DASH, Kind.WAS))
    before = [m.kind for m in marks[max(0, end - 2) : end]]
    numbered = before == [Kind.SET, Kind.NUM] or before[-1:] == [Kind.ORD] or before == [Kind.ORD, Kind.SET]
    one = end - (text_at(marks, end - 1) == "one")
    numbered = numbered or (kind_at(marks, one - 1) is Kind.LASTSET and one > 1)
    numbered = numbered or (text_at(marks, end - 2) in _OTHERS and kind_at(marks, end - 1) is Kind.SET)
    return numbered and kind_at(marks, place + 1) in (None, *EDGES)


def _is_left(marks: Sequence[Mark], place: int) -> bool:
    """`left the last set`, `left the third out`: no side, and nothing that is in the tank."""
    at = place + 1
    while kind_at(marks, at) is Kind.FILL and text_at(marks, at) in ("the", "my"):
        at += 1
    if kind_at(marks, at) is Kind.THEREST:
        return kind_at(marks, at + 1) in (None, Kind.COMMA, Kind.STOP, Kind.LINE, Kind.BREAK)
    if text_at(marks, at).split()[-1:] in (["other"], ["remaining"]):
        number = marks[at + 1] if kind_at(marks, at + 1) is Kind.NUM else None
        counts = number is not None and number.value in _COUNTS
        at += 1 + (counts or text_at(marks, at + 1) == "one")
        return kind_at(marks, at) in (None, Kind.COMMA, Kind.STOP, Kind.LINE, Kind.BREAK, Kind.SETS)
    if kind_at(marks, at) not in _WHICH or "rep" in text_at(marks, at).split():
        return False
    whole = kind_at(marks, at) is not Kind.ORD
    at += _several(marks, at) or 1
    while kind_at(marks, at) is Kind.SET or text_at(marks, at) == "one":
        at, whole = at + 1, True
    ends = kind_at(marks, at) in (None, Kind.COMMA, Kind.STOP, Kind.LINE, Kind.BREAK, Kind.AND)
    return text_at(marks, at).split()[:1] == ["out"] or (whole and ends)


def _counts(marks: Sequence[Mark], place: int) -> bool:
    """Whether so many sets or exercises are counted here, beside a word of the same part that skips."""
    number = marks[place + 1] if place + 1 < len(marks) else None
    if number is None or number.kind is not Kind.NUM or number.value not in _COUNTS:
        return False
    start, end = part_of(marks, place, _FAR)
    skips = any(m.kind in _CUES for m in marks[start:end])
    after = kind_at(marks, place + 2)
    named = after is Kind.AT and kind_at(marks, place + 3) is Kind.NAME
    plain = named or after in (None, *EDGES, Kind.FILL, Kind.AND, Kind.WORD, *_CUES, *_SETS)
    return skips and plain and not any(m.kind in (Kind.X, Kind.KG, Kind.LB) for m in marks[place:end])
