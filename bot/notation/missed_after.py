"""Repetitions that failed, told behind those that were done: `60x7f`, `4 then a miss`, `60x4 + 1 failed`.

All become the words of an effort with nothing left, straight behind the repetitions.
"""

from collections.abc import Sequence
from decimal import Decimal

from bot.notation.bounds import EARLIEST_FAILED
from bot.notation.clauses import kind_at, text_at
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark
from bot.notation.wordlist import words

_LETTERS = frozenset(["f", "tf"])
_MISS = frozenset(words("miss missed fail fails failed failing fluffed"))
_LITTLE = frozenset(words("a an the i one ones it just clean good solid nice strict full but got did managed had"))
_MISSES = (Kind.SKIP, Kind.SKIPPED, Kind.FILL, Kind.WORD, Kind.EMPTY, Kind.FAILED)
_JOINS = (Kind.COMMA, Kind.THEN, Kind.AND, Kind.PLUS, Kind.WITH, Kind.OPEN, Kind.STOP)
_ENDS = (None, Kind.COMMA, Kind.STOP, Kind.LINE, Kind.BREAK, Kind.CLOSE, Kind.AND, Kind.THEN, Kind.QUERY)
_LINKS = (Kind.AT, Kind.WITH, Kind.FOR, Kind.FILL)
_OF_A_SET = (None, Kind.X, Kind.FOR, Kind.COMMA, Kind.NUM, Kind.AND, Kind.THEN, Kind.SLASH, Kind.COLON, Kind.LINE,
             Kind.NAME, Kind.STOP, Kind.FILL, Kind.REPS)  # fmt: skip


def with_missed_after(marks: Sequence[Mark]) -> list[Mark]:
    """The marks with such words in that form."""
    out = list(marks)
    place = 0
    while place < len(out):
        if out[place].kind is Kind.NUM and kind_at(out, place - 1) in _OF_A_SET:
            found = _letter_at(out, place + 1) or _miss_at(out, place)
            if found is not None:
                start, end = found
                first, last = out[start], out[end - 1]
                failed = Mark(Kind.EMPTY, "failed", first.start, last.end)
                out[start:end] = [failed]
        place += 1
    return out


def _letter_at(marks: Sequence[Mark], at: int) -> tuple[int, int] | None:
    """The `f` of `60x7f`, `60x7 (f)`, `@f`, `to f`: where its words start and end."""
    start = at
    while kind_at(marks, at) in (Kind.OPEN, Kind.AT, Kind.TO, Kind.REPS):
        start += kind_at(marks, at) is Kind.REPS
        at += 1
    end = at + 1 + (kind_at(marks, at + 1) is Kind.CLOSE)
    letter = kind_at(marks, at) is Kind.WORD and marks[at].text in _LETTERS
    return (start, end) if letter and kind_at(marks, end) in (*_ENDS, Kind.NUM) else None


def _miss_at(marks: Sequence[Mark], place: int) -> tuple[int, int] | None:
    """`then a miss`, `+ 1 failed`, `and one miss on the fifth` behind the repetitions at a place."""
    at = place + 1
    while kind_at(marks, at) is Kind.REPS or (kind_at(marks, at) is Kind.FILL and _is_little(marks[at])):
        at += 1
    start = at
    joined = False
    while at < len(marks) and (marks[at].kind in _JOINS or _is_little(marks[at])):
        joined = joined or marks[at].kind in _JOINS
        at += 1
    if not joined:
        return None
    done = marks[place].value or (marks[place].parts or (Decimal(0),))[-1]
    if kind_at(marks, at) is Kind.ORD and marks[at].value == done + 1 and done + 1 >= EARLIEST_FAILED:
        end = at + 1 + (kind_at(marks, at + 1) is Kind.REPS)
        return (start, end + 1) if _is_miss(marks, end) and kind_at(marks, end + 1) in _ENDS else None
    if not _is_miss(marks, at):
        return None
    at += 1
    while kind_at(marks, at) is Kind.REPS or (kind_at(marks, at) is Kind.FILL and text_at(marks, at) == "one"):
        at += 1
    at += kind_at(marks, at) is Kind.CLOSE
    link = at
    while kind_at(marks, link) in _LINKS:
        link += 1
    if link > at and kind_at(marks, link) in (Kind.ORD, Kind.NUM) and marks[link].value == done + 1:
        at = link + 1 + (kind_at(marks, link + 1) is Kind.REPS)
    return (start, at) if kind_at(marks, at) in _ENDS else None


def _is_little(mark: Mark) -> bool:
    return mark.kind is Kind.FILL and set(mark.text.split()) <= _LITTLE


def _is_miss(marks: Sequence[Mark], at: int) -> bool:
    """Whether a word says that a repetition failed: not the `failed the` whose repetition follows."""
    return kind_at(marks, at) in _MISSES and bool(set(text_at(marks, at).split()) & _MISS) and not _leads(marks[at])


def _leads(mark: Mark) -> bool:
    return mark.kind is Kind.FAILED and mark.text.split(" ")[-1] in ("the", "on", "at", "my", "number")
