"""A message in pieces: sentences, and what follows a correcting word inside one."""

from collections.abc import Sequence
from dataclasses import replace

from bot.notation.clauses import kind_at
from bot.notation.corrections.told_new import ESTIMATES
from bot.notation.kinds import Kind
from bot.notation.pieces.going_on import GOING_ON
from bot.notation.pieces.lists import heads_list
from bot.notation.tokens import Mark


def split_pieces(marks: Sequence[Mark]) -> list[list[Mark]]:
    """The message in pieces: sentences, and what follows a correcting word inside one."""
    pieces: list[list[Mark]] = [[]]
    for place, mark in enumerate(marks):
        ends = mark.kind in (Kind.LINE, Kind.STOP)
        if ends and heads_list(pieces[-1], marks, place):
            pieces[-1] = [m for m in pieces[-1] if m.kind is not Kind.ALL]
            pieces[-1].append(replace(mark, kind=Kind.COLON, text=":"))
            continue
        if ends and any(goes_on(pieces[-1], marks, place) for goes_on in GOING_ON):
            pieces[-1].append(replace(mark, kind=Kind.COMMA))
            continue
        if mark.kind in (Kind.LINE, Kind.STOP, Kind.QUERY):
            pieces[-1].append(mark)
            if pieces[-1]:
                pieces.append([])
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
        starts = mark.kind in (Kind.SORRY, Kind.MEANT, Kind.SCRAP)
        if mark.kind in (Kind.MEANT, Kind.SORRY) and _waits(pieces[-1]) and _numbers_follow(marks, place):
            pieces[-1] = [replace(m, kind=Kind.GAP, value=None) if m.kind is Kind.NUM else m for m in pieces[-1]]
            continue
        starts = starts and not _is_guess(pieces[-1], mark)
        apart = kind_at(marks, place + 1) is Kind.COMMA and kind_at(marks, place - 1) in (Kind.DASH, Kind.LINE)
        no = mark.kind is Kind.NO and kind_at(marks, place + 1 + apart) in (Kind.NUM, Kind.SORRY)
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


def _is_guess(piece: Sequence[Mark], mark: Mark) -> bool:
    """The `call it` of `70 8 8 then my spotter helped so call it 6`, which tells of a set that is announced before."""
    if mark.kind is not Kind.MEANT or mark.text not in ESTIMATES:
        return False
    last = max((i for i, m in enumerate(piece) if m.kind is Kind.NUM), default=-1)
    return any(m.kind in (Kind.THEN, Kind.ORD) for m in piece[last + 1 :])


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
