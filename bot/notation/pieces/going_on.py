"""Whether a sentence goes on behind its stop: `typo. 62.5`, `52.5 for 8. twice`, `L9 R10. left had nothing left`."""

from collections.abc import Sequence

from bot.notation.kinds import Kind
from bot.notation.pieces.lists import has_load_behind, is_load_again
from bot.notation.tokens import Mark

_ERRORS = frozenset(["mistake", "miscounted", "miscount", "misread", "error", "typo", "wrong"])
_BREAKING_OFF = frozenset(
    ["wait", "no wait", "wait no", "oh wait", "hang on", "hold on", "no hang on", "no hold on", "oops", "whoops",
     "ah no", "hmm no", "ugh no", "oh no wait", "no sorry", "sorry no", "actually no", "no actually", "no no"]
)  # fmt: skip
"""Words that break off what is being told."""


def _is_broken_off(piece: Sequence[Mark]) -> bool:
    """Whether a sentence is nothing but `no wait`."""
    plain = all(m.kind in (Kind.SORRY, Kind.FILL, Kind.COMMA, Kind.NO) for m in piece)
    return plain and any(m.text in _BREAKING_OFF for m in piece)


def _opens_correction(piece: Sequence[Mark], marks: Sequence[Mark], place: int) -> bool:
    """Whether a sentence only says that something was wrong, and the next one what it was: `typo. 62.5`."""
    numbers = (Kind.NUM, Kind.BODY, Kind.SAME, Kind.CLOCK)
    cued = any(m.kind is Kind.MEANT or set(m.text.split()) & _ERRORS for m in piece)
    cued = cued or (_is_broken_off(piece) and place > len(piece))
    if not cued or any(m.kind in (*numbers, Kind.WORD) for m in piece):
        return False
    following = marks[place + 1 : place + 7]
    ends = next((i for i, m in enumerate(following) if m.kind in (Kind.LINE, Kind.QUERY)), len(following))
    return any(m.kind in (Kind.NUM, Kind.BODY) for m in following[:ends])


def _is_of_all(piece: Sequence[Mark], marks: Sequence[Mark], place: int) -> bool:
    """`were 12s sorry not 10s. all three`: the next sentence says how many sets the correction is of, and no more."""
    if not any(m.kind in (Kind.MEANT, Kind.SORRY, Kind.NOT, Kind.WAS) for m in piece):
        return False
    following = []
    for mark in marks[place + 1 :]:
        if mark.kind in (Kind.LINE, Kind.STOP, Kind.QUERY):
            break
        following.append(mark)
    said = [m for m in following if m.kind is not Kind.FILL]
    return bool(said) and all(m.kind in (Kind.ALL, Kind.SETS, Kind.SET) or m.text == "both" for m in said)


def _counts_sets(piece: Sequence[Mark], marks: Sequence[Mark], place: int) -> bool:
    """`52.5 for 8. twice`, `sled 60 20m. Three times.`: the next sentence only says how many times."""
    end = next((i for i in range(place + 1, len(marks)) if marks[i].kind in (Kind.LINE, Kind.STOP, Kind.QUERY)), None)
    said = [m.kind for m in marks[place + 1 : end] if m.kind is not Kind.FILL]
    pair = any(m.kind in (Kind.X, Kind.FOR) for m in piece)
    measured = any(m.kind in _MEASURES for m in piece)
    counted = measured and not any(m.kind in (Kind.SETS, Kind.SET, Kind.TIMES) for m in piece)
    times = said in ([Kind.TIMES], [Kind.NUM, Kind.TIMES], [Kind.NUM, Kind.X], [Kind.LEADX, Kind.NUM])
    return (pair or counted) and (times or said == [Kind.NUM, Kind.SETS])


_MEASURES = (Kind.REPS, Kind.METRES, Kind.M, Kind.SECONDS, Kind.S)
_EFFORTS = (Kind.EMPTY, Kind.COULD, Kind.RPE, Kind.RIR, Kind.TANK, Kind.AT, Kind.FEELS)


def _rates_side(piece: Sequence[Mark], marks: Sequence[Mark], place: int) -> bool:
    """`L9 R10. left had nothing left, right 2 more`: the next sentence says how hard a side was that is told before."""
    numbers = any(m.kind is Kind.NUM for m in piece)
    sided = sum(m.kind in (Kind.LEFT, Kind.RIGHT, Kind.L, Kind.R) for m in piece) > 1
    if not (numbers and sided):
        return False
    said = [m for m in marks[place + 1 :] if m.kind is not Kind.FILL and m.text not in _LIMBS]
    if not (said and said[0].kind in (Kind.LEFT, Kind.RIGHT)):
        return False
    after = [m.kind for m in said[1:4] if m.kind is not Kind.WAS]
    return bool(after) and (after[0] in _EFFORTS or after[:2] in ([Kind.NUM, Kind.TANK], [Kind.NUM, Kind.RIRPOST]))


_LIMBS = ("leg", "arm", "side", "one", "hand")
GOING_ON = (_opens_correction, _is_of_all, _rates_side, _counts_sets, has_load_behind, is_load_again)
"""When a sentence goes on behind its stop."""
