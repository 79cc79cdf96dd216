"""A message in pieces: sentences, and what follows a correcting word inside one."""

from collections.abc import Sequence
from dataclasses import replace

from bot.notation.corrections.told_new import ESTIMATES
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark


def split_pieces(marks: Sequence[Mark]) -> list[list[Mark]]:
    """The message in pieces: sentences, and what follows a correcting word inside one."""
    pieces: list[list[Mark]] = [[]]
    for place, mark in enumerate(marks):
        ends = mark.kind in (Kind.LINE, Kind.STOP)
        if ends and _heads_list(pieces[-1], marks, place):
            pieces[-1] = [m for m in pieces[-1] if m.kind is not Kind.ALL]
            pieces[-1].append(replace(mark, kind=Kind.COLON, text=":"))
            continue
        if ends and any(goes_on(pieces[-1], marks, place) for goes_on in _GOING_ON):
            pieces[-1].append(replace(mark, kind=Kind.COMMA))
            continue
        if mark.kind in (Kind.LINE, Kind.STOP, Kind.QUERY):
            pieces[-1].append(mark)
            if pieces[-1]:
                pieces.append([])
            continue
        if mark.text == "got" and _was_tried(pieces[-1]) and _gives_number(marks, place):
            pieces.append([replace(mark, kind=Kind.MEANT)])
            continue
        again = (
            mark.kind in (Kind.AND, Kind.COMMA)
            and _labels_next(marks, place)
            and any(m.kind in (Kind.MEANT, Kind.WAS) for m in pieces[-1])
            and _tells_value(pieces[-1])
        )
        if again:
            pieces.append([])
            continue
        if _moves_on(pieces[-1], marks, place):
            pieces.append([])
            continue
        if _next_set(pieces[-1], marks, place):
            pieces.append([])
        if mark.kind is Kind.SCRAP and _is_of_target(pieces[-1]):
            pieces[-1].append(mark)
            continue
        starts = mark.kind in (Kind.SORRY, Kind.MEANT, Kind.SCRAP) or (mark.kind is Kind.NOT and _is_no(mark))
        if mark.kind in (Kind.MEANT, Kind.SORRY) and _waits(pieces[-1]) and _numbers_follow(marks, place):
            pieces[-1] = [replace(m, kind=Kind.GAP, value=None) if m.kind is Kind.NUM else m for m in pieces[-1]]
            continue
        starts = starts and not _is_guess(pieces[-1], mark)
        no = mark.kind is Kind.NO and place + 1 < len(marks) and marks[place + 1].kind in (Kind.NUM, Kind.SORRY)
        if (starts or no) and _breaks(pieces[-1], marks, place):
            pieces.append([])
        pieces[-1].append(mark)
    return [p for p in pieces if p]


def _moves_on(piece: Sequence[Mark], marks: Sequence[Mark], place: int) -> bool:
    """`squat 112.5x3 no sorry 110x3, bench 75x6`: after a correction, the next exercise with its sets."""
    if marks[place].kind not in (Kind.COMMA, Kind.BREAK, Kind.AND, Kind.THEN) or not piece:
        return False
    if piece[0].kind not in (Kind.SORRY, Kind.MEANT, Kind.NO, Kind.NOT, Kind.SCRAP):
        return False
    whole = any(m.kind in (Kind.X, Kind.FOR) for m in piece) or sum(m.kind is Kind.NUM for m in piece) > 1
    following = [m for m in marks[place + 1 : place + 5] if m.kind is not Kind.FILL][:2]
    return whole and [m.kind for m in following] == [Kind.NAME, Kind.NUM]


def _next_set(piece: Sequence[Mark], marks: Sequence[Mark], place: int) -> bool:
    """`set 2 180x11 no actually 10 set 3 same as set 2`: after a correction, the next set by its number."""
    if marks[place].kind is not Kind.SET or not piece or piece[0].kind not in (Kind.SORRY, Kind.MEANT, Kind.NO):
        return False
    numbers = [i for i, m in enumerate(piece) if m.kind is Kind.NUM]
    told = bool(numbers) and numbers[-1] == len(piece) - 1 and not any(m.kind in (Kind.SET, Kind.ORD) for m in piece)
    kinds = [m.kind for m in marks[place + 1 : place + 4] if m.kind is not Kind.FILL]
    return (
        told and kinds[:1] == [Kind.NUM] and kinds[1:2] in ([Kind.SAME], [Kind.NUM], [Kind.SAMEREPS], [Kind.SAMELOAD])
    )


def _was_tried(piece: Sequence[Mark]) -> bool:
    """Whether a piece tells of a set that was tried for, and of nothing after it: `went for 90x10 but only`."""
    tried = any(m.text in ("tried", "attempted", "went") for m in piece) and any(m.kind is Kind.X for m in piece)
    last = max((i for i, m in enumerate(piece) if m.kind is Kind.NUM), default=-1)
    return tried and not any(m.kind is Kind.THEN for m in piece[last + 1 :])


def _gives_number(marks: Sequence[Mark], place: int) -> bool:
    """Whether a number follows in the same breath."""
    after = next((m for m in marks[place + 1 :] if m.kind is not Kind.FILL), None)
    return after is not None and after.kind is Kind.NUM


def _is_guess(piece: Sequence[Mark], mark: Mark) -> bool:
    """The `call it` of `70 8 8 then my spotter helped so call it 6`, which tells of a set that is announced before."""
    if mark.kind is not Kind.MEANT or mark.text not in ESTIMATES:
        return False
    last = max((i for i, m in enumerate(piece) if m.kind is Kind.NUM), default=-1)
    return any(m.kind in (Kind.THEN, Kind.ORD) for m in piece[last + 1 :])


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


_SIDES = (Kind.LEFT, Kind.RIGHT)
_LIMBS = ("leg", "arm", "side", "one", "hand")


_BESIDE_LOAD = (Kind.WAS, Kind.PLATES, Kind.GAP, Kind.FILL, Kind.WORD, Kind.NAME, Kind.KG, Kind.LB, Kind.COMMA,
                Kind.AT, Kind.WITH, Kind.DASH, Kind.COLON, Kind.S, Kind.HAND, Kind.PAIR, Kind.TOTAL)  # fmt: skip
_LENGTHS = (Kind.METRES, Kind.M, Kind.SECONDS)
_SIDED = (Kind.EACH, Kind.LEFT, Kind.RIGHT, Kind.L, Kind.R)
_LISTED = (Kind.NUM, Kind.COMMA, Kind.SLASH, Kind.AND, Kind.REPS, Kind.DASH, Kind.THEN, Kind.X, Kind.SETS, *_SIDED,
           *_LENGTHS)  # fmt: skip
_TALK = (Kind.FILL, Kind.WORD, Kind.GAP)


def _is_load_alone(part: Sequence[Mark]) -> bool:
    """Whether a sentence tells one load and no repetitions: `90 kg`, `at 90 for all`, `weight 90`."""
    said = [m.kind for m in part if m.kind not in _BESIDE_LOAD]
    return said in ([Kind.NUM], [Kind.NUM, Kind.ALL], [Kind.ALL, Kind.NUM], [Kind.NUM, Kind.FOR, Kind.ALL])


def _is_list(part: Sequence[Mark]) -> bool:
    """Whether a sentence tells counts only: `10, 9 and 8`, `reps 10/9/8`, `10 each side`, `3x10`, `40m`."""
    kinds = [m.kind for m in part if m.kind not in (Kind.FILL, Kind.NAME)]
    kinds = kinds[2:] if kinds[:2] == [Kind.REPS, Kind.COLON] else kinds
    worded = any(k in (Kind.REPS, Kind.SETS, *_SIDED, *_LENGTHS) for k in kinds) and Kind.NUM in kinds
    return all(k in _LISTED for k in kinds) and (kinds.count(Kind.NUM) > 1 or worded)


def _sentence(marks: Sequence[Mark], place: int) -> list[Mark]:
    """The sentence behind a stop, past those that are talk and nothing else."""
    ends = (Kind.LINE, Kind.STOP, Kind.QUERY)
    end = place
    said: list[Mark] = []
    while end < len(marks) and all(m.kind in _TALK for m in said):
        start = end + 1
        end = next((i for i in range(start, len(marks)) if marks[i].kind in ends), len(marks))
        said = list(marks[start:end])
    return said


def _heads_list(piece: Sequence[Mark], marks: Sequence[Mark], place: int) -> bool:
    """`155 across. 6 6 5`, `2x28 / 40m`: a load by itself, and then what was done with it."""
    head = next((m.names for m in piece if m.kind is Kind.NAME), None)
    piece = piece[max((i for i, m in enumerate(piece) if m.kind is Kind.NAME), default=0) :]
    two = [m.kind for m in piece if m.kind not in _BESIDE_LOAD] == [Kind.NUM, Kind.X, Kind.NUM] and _holds_two(piece)
    alone = _is_load_alone(piece)
    if not alone and not two:
        return False
    following = _sentence(marks, place)
    named = next((m.names for m in following if m.kind is Kind.NAME), None)
    if head is not None and named is not None and head != named:
        return False
    return (alone or any(m.kind in _LENGTHS for m in following)) and _is_list(following)


def _holds_two(piece: Sequence[Mark]) -> bool:
    """Whether a number is led by `2x`: a weight in each hand."""
    return next(m.value for m in piece if m.kind is Kind.NUM) == len(_SIDES)


def _has_load_behind(piece: Sequence[Mark], marks: Sequence[Mark], place: int) -> bool:
    """`10/9/8. weight 90`: repetitions, and their load in a sentence of its own."""
    if not _is_list([m for m in piece if m.kind is not Kind.COLON]):
        return False
    after = _sentence(marks, place)
    return _is_load_alone(after) and not any(m.kind is Kind.NAME for m in after)


_GOING_ON = (_opens_correction, _is_of_all, _rates_side, _counts_sets, _has_load_behind)
"""When a sentence goes on behind its stop."""


def _is_of_target(piece: Sequence[Mark]) -> bool:
    """Whether a piece up to a scrap only names the set that it takes back, or takes it back already."""
    if any(m.kind is Kind.SCRAP for m in piece):
        return True
    kinds = [m.kind for m in piece if m.kind is not Kind.FILL]
    return kinds.count(Kind.NUM) == 1 and Kind.SET in kinds and kinds.index(Kind.SET) + 1 == kinds.index(Kind.NUM)


def _breaks(piece: Sequence[Mark], marks: Sequence[Mark], place: int) -> bool:
    """Whether a correcting word starts a new piece: after numbers, before others, and not about a stored set."""
    numbers = any(m.kind in (Kind.NUM, Kind.BODY, Kind.SAME) for m in piece)
    wrote = any(m.kind is Kind.WROTE for m in piece)
    return numbers and not wrote and _numbers_follow(marks, place) and not _has_label(piece)


def _labels_next(marks: Sequence[Mark], place: int) -> bool:
    """Whether another set is named after `and`: `set 1 should be 60 and set 2 65`."""
    said = [m for m in marks[place + 1 : place + 6] if m.text not in ("the", "and", "then", "one", "my")]
    if said[:1] and said[0].kind is Kind.NAME:
        said = said[1:] if any(m.kind in (Kind.MEANT, Kind.WAS) for m in marks[place : place + 8]) else said
    following = [m.kind for m in said[:2]]
    if following in ([Kind.LEFT, Kind.MEANT], [Kind.RIGHT, Kind.MEANT]):
        return True
    if following in ([Kind.SET, Kind.NUM], [Kind.ORD, Kind.SET], [Kind.ORD, Kind.WAS], [Kind.ORD, Kind.MEANT]):
        return True
    one = place + 3 < len(marks) and "one" in [m.text for m in marks[place + 1 : place + 4]]
    return following[:1] == [Kind.ORD] and one


def _tells_value(piece: Sequence[Mark]) -> bool:
    """Whether a piece says what a set was, and not only which one is meant: not `correction: set 1`."""
    numbers = [i for i, m in enumerate(piece) if m.kind is Kind.NUM]
    return not numbers or any(not i or piece[i - 1].kind is not Kind.SET for i in numbers)


def _waits(piece: Sequence[Mark]) -> bool:
    """Whether a piece holds one number only, whose other half is still to come: `row 30, i mean 35 for 11`."""
    kinds = [m.kind for m in piece if m.kind is not Kind.FILL]
    halves = (Kind.NUM, Kind.NAME, Kind.DASH, Kind.COMMA, Kind.KG, Kind.LB, Kind.COLON)
    return kinds.count(Kind.NUM) == 1 and all(k in halves for k in kinds)


def _is_no(mark: Mark) -> bool:
    return mark.text == "no"


def _has_label(piece: Sequence[Mark]) -> bool:
    """Whether the piece is about a stored set up to here: `set 1 should be 100`, `set 2 on dips was really 5`."""
    kinds = [m.kind for m in piece if m.kind is not Kind.FILL]
    if not kinds:
        return False
    ons = {i for i, k in enumerate(kinds[:-1]) if k in (Kind.FOR, Kind.AT) and kinds[i + 1] is Kind.NAME}
    entries = [i for i, k in enumerate(kinds) if k in (Kind.X, Kind.FOR, Kind.AT, Kind.COMMA) and i not in ons]
    return (Kind.SET in kinds or Kind.ORD in kinds) and not entries


def _numbers_follow(marks: Sequence[Mark], place: int) -> bool:
    if marks[place].kind is Kind.SCRAP:
        return True
    for mark in marks[place + 1 : place + 6]:
        if mark.kind in (Kind.NUM, Kind.BODY, Kind.RPE, Kind.RIR):
            return True
        if mark.kind not in (Kind.FILL, Kind.COMMA, Kind.SORRY, Kind.MEANT, Kind.WAS, Kind.SET, Kind.LASTSET, Kind.NAME,
                             Kind.COLON, Kind.STOP, Kind.DASH, Kind.ORD, Kind.NO, Kind.X, Kind.LASTREP,
                             Kind.FOR):  # fmt: skip
            return False
    return False
