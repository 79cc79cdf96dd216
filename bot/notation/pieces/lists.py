"""A load in one sentence, its repetitions in another: `155 across. 6 6 5`, `10/9/8. weight 90`, `110 again. Got 7`."""

from collections.abc import Sequence

from bot.notation.kinds import Kind
from bot.notation.tokens import Mark

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


def heads_list(piece: Sequence[Mark], marks: Sequence[Mark], place: int) -> bool:
    """`155 across. 6 6 5`, `2x28 / 40m`: a load by itself, and then what was done with it."""
    head = next((m.names for m in piece if m.kind is Kind.NAME), None)
    piece = piece[max((i for i, m in enumerate(piece) if m.kind is Kind.NAME), default=0) :]
    if not _is_load_alone(piece):
        return False
    following = _sentence(marks, place)
    named = next((m.names for m in following if m.kind is Kind.NAME), None)
    if head is not None and named is not None and head != named:
        return False
    return _is_list(following)


def has_load_behind(piece: Sequence[Mark], marks: Sequence[Mark], place: int) -> bool:
    """`10/9/8. weight 90`: repetitions, and their load in a sentence of its own."""
    if not _is_list([m for m in piece if m.kind is not Kind.COLON]):
        return False
    after = _sentence(marks, place)
    return _is_load_alone(after) and not any(m.kind is Kind.NAME for m in after)


_COUNTED = (Kind.REPS, Kind.M, Kind.METRES, Kind.SECONDS, Kind.EACH, Kind.LEFT, Kind.RIGHT)
_GOT = ("got", "managed", "only", "just", "made", "did")


def is_load_again(piece: Sequence[Mark], marks: Sequence[Mark], place: int) -> bool:
    """`24 again. Left 30 m, right 22 m`, `110 again. Got 7`: a load alone, and its count in the next sentence."""
    said = [m for m in piece if m.kind not in (Kind.FILL, Kind.KG, Kind.LB, Kind.S, Kind.AT, Kind.NAME)]
    if [m.kind for m in said] != [Kind.NUM, Kind.AGAIN]:
        return False
    at = place + 1
    got = False
    while at < len(marks) and marks[at].kind in (Kind.FILL, Kind.LEFT, Kind.RIGHT, Kind.LEFTPOST):
        got = got or marks[at].text in _GOT or marks[at].kind is not Kind.FILL
        at += 1
    behind = [m.kind for m in marks[at + 1 : at + 2]]
    counts = got or behind[:1] in ([k] for k in _COUNTED)
    return at < len(marks) and marks[at].kind is Kind.NUM and counts and behind not in ([Kind.X], [Kind.FOR])
