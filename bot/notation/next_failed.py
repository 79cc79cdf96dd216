"""The repetition behind the last one done, as failed: `120x3 fail on 4`, `3, tried a fourth and missed`.

Whatever the word of failing, the number that it stands beside is one more than was told last, and so no set.
"""

from collections.abc import Sequence
from dataclasses import replace
from decimal import Decimal

from bot.notation.clauses import kind_at, text_at
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark
from bot.notation.wordlist import words

FAILING = frozenset(words(
    "fail fails failed failing miss missed missing bailed bail bailing dumped lost nope stuck died stalled grinder f "
    "tried attempted failure didnt couldnt wouldnt never slipped stopped spotter "
    "pinned buried crushed stapled"
))  # fmt: skip
"""Words of a repetition that failed, where the one after those that were done is named."""
_LEADING = frozenset(
    words(
        "the a an my on at for rep reps number no out and it was is got went attempt attempting go get make do took "
        "finish manage"
    )
)
_FAR = 4
"""Marks beside the repetition among which the word of failing stands."""
_EARLIEST = 2
"""The lowest repetition behind one that was done."""
_ENDS = (Kind.STOP, Kind.LINE, Kind.THEN, Kind.AND, Kind.BREAK)
_SAYING = (Kind.FAILED, Kind.EMPTY, Kind.NO)
_SO = frozenset(words("so only just got gives means meaning"))


def with_next_failed(marks: Sequence[Mark]) -> list[Mark]:
    """`120x3 fail on 4`, `3, tried a fourth and missed`: the repetition behind the last one done, as failed."""
    out = list(marks)
    if not any(m.kind in _SAYING or m.text.split()[-1:] in _NOT_THERE or set(m.text.split()) & FAILING for m in out):
        return out
    out = _so_many(out)
    for place in range(1, len(out)):
        mark = out[place]
        if mark.kind not in (Kind.NUM, Kind.ORD) or mark.value is None or mark.value < _EARLIEST:
            continue
        said = kind_at(out, place - 1) is Kind.FAILED and mark.kind is Kind.ORD
        if said or mark.value - 1 != told_last(out[:place]) or kind_at(out, place + 1) in _LINKED:
            continue
        start = _failing(out, place - 1, -1)
        end = _failing(out, place + 1, 1)
        denied = end is not None and (_is_denied(out, end) or text_at(out, place - 2).split()[-1:] == ["went"])
        counting = text_at(out, place - 1).split()[-1:] in _COUNTING
        if mark.kind is Kind.NUM and start is None and not counting and not denied:
            continue
        first, last = place if start is None else start, place if end is None else end
        if first == last and not (mark.kind is Kind.ORD and kind_at(out, place - 1) is Kind.NO):
            continue
        counted = text_at(out, place - 1).split()[-1:] in _COUNTING or kind_at(out, place - 1) is Kind.REPS
        first -= start is None and (first == last or counted)
        first -= kind_at(out, first - 1) in (Kind.LASTSET, Kind.LASTREP)
        gone = [replace(m, kind=Kind.GAP, value=None) for m in (*out[first:place], *out[place + 1 : last + 1])]
        failed = Mark(Kind.FAILED, "failed", mark.start, mark.start)
        return [*out[:first], *gone[: place - first], failed, mark, *gone[place - first :], *out[last + 1 :]]
    return out


def _failing(marks: Sequence[Mark], at: int, step: int) -> int | None:
    """Where a word of failing stands, beyond none but little words from a place on; `None` where none does."""
    for _ in range(_FAR):
        mark = marks[at] if 0 <= at < len(marks) else None
        if mark is None:
            return None
        said = set(mark.text.split())
        if said & FAILING or (mark.kind in (Kind.EMPTY, Kind.FAILED) and "failed" in said):
            return at
        if step > 0 and _is_denied(marks, at):
            return at
        passed = said <= _LEADING or (step > 0 and mark.text in _WAS) or (step > 0 and mark.kind is Kind.COMMA)
        if not passed:
            return None
        at += step
    return None


def _is_denied(marks: Sequence[Mark], at: int) -> bool:
    """Whether `wasn't there`, `was a no` of the repetition that did not come ends here."""
    said = " ".join(text_at(marks, i) for i in range(max(0, at - 2), at + 1))
    return text_at(marks, at).split()[-1:] in _NOT_THERE and said.endswith(_DENIED)


_WAS = ("wasnt", "isnt", "aint", "not")
_NOT_THERE = (
    ["there"],
    ["happening"],
    ["coming"],
    ["going"],
    ["possible"],
    ["no"],
    ["miss"],
    ["nope"],
    ["fail"],
    ["on"],
)
_DENIED = (
    *(f"{was} {there}" for was in ("wasnt", "isnt", "was not", "aint") for there in ("there", "happening", "coming",
      "going", "possible", "on")), *(f"was a {no}" for no in ("no", "miss", "nope", "fail")),
)  # fmt: skip
_COUNTING = (["rep"], ["number"])
_LINKED = (Kind.X, Kind.FOR, Kind.AT, Kind.WITH, Kind.KG, Kind.LB, Kind.SETS, Kind.NUM)


def told_last(marks: Sequence[Mark]) -> Decimal | None:
    """The number that was told last, but for efforts and counts of sets: the 5 of `315 5 rpe 10`, not `2 of squats`."""
    told = (m for i, m in reversed(tuple(enumerate(marks))) if m.kind is Kind.NUM and not _tells_no_reps(marks, i))
    last = next(told, None)
    return None if last is None else last.parts[-1] if last.parts else last.value


def _tells_no_reps(marks: Sequence[Mark], at: int) -> bool:
    return _rates(marks, at) or counts_sets(marks, at)


def counts_sets(marks: Sequence[Mark], place: int) -> bool:
    """`2 of squats`, `2 sets`: how many sets, and no repetitions."""
    named = text_at(marks, place + 1) == "of" and kind_at(marks, place + 2) in (Kind.NAME, Kind.WEAK)
    return named or kind_at(marks, place + 1) in (Kind.SET, Kind.SETS)


def _rates(marks: Sequence[Mark], at: int) -> bool:
    """Whether a number is of an effort: `rpe 10`, `@9`, `2 rir`, `2 in the tank`."""
    led = kind_at(marks, at - 1) in (Kind.RPE, Kind.RIR) or text_at(marks, at - 1) == "@"
    word = kind_at(marks, at + 1)
    behind = word in (Kind.RPE, Kind.RIR) and kind_at(marks, at + 2) is not Kind.NUM
    return led or behind or word in (Kind.RPEPOST, Kind.RIRPOST, Kind.TANK)


def _so_many(marks: list[Mark]) -> list[Mark]:
    """`4, then failed the fourth so 3`: the set of three that it was, and nothing left."""
    for place, mark in enumerate(marks):
        at = place + 1 + (kind_at(marks, place + 1) is Kind.REPS) + (text_at(marks, place + 1) in ("the", "on"))
        if mark.kind not in (Kind.FAILED, Kind.EMPTY) or kind_at(marks, at) not in (Kind.NUM, Kind.ORD):
            continue
        value = marks[at].value
        so = at + 1 + (kind_at(marks, at + 1) is Kind.REPS)
        so += kind_at(marks, so) is Kind.COMMA
        end = so
        while text_at(marks, end) in _SO:
            end += 1
        last = end + (2 if kind_at(marks, end + 1) in (Kind.X, Kind.FOR) else 0)
        if end == so or value is None or kind_at(marks, last) is not Kind.NUM or marks[last].value != value - 1:
            continue
        parted = kind_at(marks, place - 1) in (Kind.COMMA, *_ENDS)
        then = [] if parted else [replace(mark, kind=Kind.COMMA, text=",", end=mark.start)]
        empty = replace(mark, kind=Kind.EMPTY, text="to failure")
        return [*marks[:place], *then, *marks[end : last + 1], empty, *marks[last + 1 :]]
    return marks
