"""Sets told by the repetition that failed: `8, 7, failed the 7th on the third` is `8, 7, third 6 reps to failure`.

Whatever the order of the set and of what failed. A repetition behind a set that was told as one to failure says that
once more; one behind a load alone, in a sentence of its own, is of that load.
"""

from collections.abc import Sequence
from dataclasses import dataclass, replace
from decimal import Decimal

from bot.notation.bounds import EARLIEST_FAILED, FEW_SETS, HARDEST, SEVERAL
from bot.notation.clauses import kind_at, text_at
from bot.notation.kinds import Kind
from bot.notation.misses import reps_told
from bot.notation.next_failed import FAILING, told_last
from bot.notation.tokens import Mark
from bot.notation.wordlist import words

_LINKS = (Kind.AT, Kind.WITH, Kind.FOR, Kind.FILL)
_LITTLE = (*_LINKS, Kind.WAS, Kind.COLON, Kind.COMMA, Kind.DASH, Kind.SET, Kind.THEN)
_ENDS = (None, Kind.COMMA, Kind.STOP, Kind.LINE, Kind.BREAK, Kind.AND, Kind.THEN, Kind.CLOSE, Kind.QUERY, Kind.DASH)
_TALK = (Kind.WORD, Kind.FILL, Kind.GAP, Kind.AT, Kind.WITH, Kind.WAS, Kind.EMPTY, Kind.FAILED, Kind.SKIPPED, Kind.NOT,
         Kind.FOR, Kind.LEFT)  # fmt: skip
_SAYING = (Kind.WORD, Kind.FILL, Kind.EMPTY, Kind.FAILED, Kind.SKIP, Kind.SKIPPED, Kind.TALKNUM)
_NEGATED = frozenset(words("not didnt wouldnt never no couldnt"))
_RISING = frozenset(words("come came go went move moved up happen rise lock budge left"))
_HALTED = frozenset(words("stalled died stopped bailed got gave lost"))
"""Words with which `at 7` counts what was done: `stalled at 7`."""
_FAR = 6
"""Little words between a set, its failing and the repetition that failed."""


@dataclass(frozen=True, slots=True)
class _Failure:
    """The repetition that failed, and where its words start and end."""

    rep: Mark
    start: int
    end: int


@dataclass(frozen=True, slots=True)
class _Which:
    """The words that say of which set it was: its number, 0 for the last one."""

    number: int
    mark: Mark
    start: int
    end: int


def with_failed_sets(marks: Sequence[Mark]) -> list[Mark]:
    """The marks with such sets in that form."""
    out = list(marks)
    if not any(m.kind in (Kind.FAILED, Kind.EMPTY) or set(m.text.split()) & (FAILING | _NEGATED) for m in out):
        return out
    at = 0
    while at < len(out):
        at = _failed_behind(out, at) or _told_set(out, at) or _next_set(out, at) or _of_lone_load(out, at) or at
        at += 1
    return out


def _told_set(out: list[Mark], at: int) -> int | None:
    """Puts `failed the 7th on the third`, `third: failed the 7th` that starts here in that form; where it ends then."""
    which = _which_at(out, at)
    if which is not None:
        place = which.end
        while kind_at(out, place) in _LITTLE and place < which.end + _FAR:
            place += 1
        failure = _failure_at(out, place)
        start, end = which.start, 0 if failure is None else failure.end
    else:
        failure = _failure_at(out, at)
        link = at if failure is None else failure.end
        while kind_at(out, link) in _LINKS:
            link += 1
        which = None if failure is None else _which_at(out, link)
        start, end = at, 0 if which is None else which.end
    if failure is None or which is None or kind_at(out, end) not in _ENDS or which.mark.start == failure.rep.start:
        return None
    if which.number and which.number == failure.rep.value:
        return None
    start -= text_at(out, start - 1) in ("on", "on the", "in", "in the", "the")
    start -= text_at(out, start - 1) in ("on", "in", "and", "then")
    told = reps_told(out, start)
    done = (failure.rep.value or Decimal(0)) - 1
    if not told:
        return None
    empty = Mark(Kind.EMPTY, "to failure", out[failure.start].start, out[failure.end - 1].end)
    if done == told_last(out[:start]) and which.number in (0, len(told)):
        out[start:end] = [empty]
        return start
    last = which.number in (0, len(told) + 1)
    kind = Kind.LASTSET if last else Kind.LABEL
    value = None if last else Decimal(which.number)
    said = replace(which.mark, kind=kind, text="last one", value=value, parts=())
    parted = start == 0 or kind_at(out, start - 1) in _ENDS
    comma = [] if parted else [Mark(Kind.COMMA, ",", said.start, said.start)]
    out[start:end] = [*comma, said, *_counted(failure.rep, done), empty]
    return start + len(comma) + 3


def _counted(rep: Mark, done: Decimal) -> list[Mark]:
    """So many repetitions, where the one that failed is told."""
    return [
        replace(rep, kind=Kind.NUM, text=str(done), value=done, parts=()),
        Mark(Kind.REPS, "reps", rep.end, rep.end),
    ]


def _which_at(marks: Sequence[Mark], at: int) -> _Which | None:
    """Words that start here and name one set: `third set`, `last one`, `set 3`."""
    kind = kind_at(marks, at)
    if kind is Kind.SET and kind_at(marks, at + 1) is Kind.NUM:
        value = marks[at + 1].value
        few = value is not None and value <= FEW_SETS and value == int(value)
        return _Which(int(value or 0), marks[at + 1], at, at + 2) if few else None
    end = at + 1
    while kind_at(marks, end) is Kind.SET or text_at(marks, end) in ("one", "try", "attempt"):
        end += 1
    if kind in (Kind.LASTSET, Kind.LASTREP) and "last" in text_at(marks, at).replace("final", "last").split():
        return _Which(0, marks[at], at, end)
    if kind in (Kind.ORD, Kind.LABEL) and SEVERAL <= (marks[at].value or 0) <= FEW_SETS:
        return _Which(int(marks[at].value or 0), marks[at], at, end)
    return None


def _failure_at(marks: Sequence[Mark], at: int) -> _Failure | None:
    """`failed the 7th`, `stuck on rep 7`, `the 7th didn't come` that starts here."""
    if _is_rep(marks, at, Kind.ORD):
        end = at + 1 + (kind_at(marks, at + 1) is Kind.REPS)
        stop = end
        said: list[str] = []
        while stop < end + _FAR and kind_at(marks, stop) in _TALK and not _leads_to_set(marks, stop):
            said += text_at(marks, stop).split()
            stop += 1
        fails = bool(set(said) & FAILING) or bool(set(said) & _NEGATED and set(said) & _RISING)
        return _Failure(marks[at], at, stop) if fails else None
    failing = kind_at(marks, at) in _SAYING and bool(set(text_at(marks, at).split()) & FAILING)
    if not failing and kind_at(marks, at) is not Kind.FAILED:
        return None
    rep = at + 1
    while kind_at(marks, rep) in (*_LINKS, Kind.REPS) and rep < at + _FAR:
        rep += 1
    leading = {w for m in marks[at:rep] for w in m.text.split()}
    if "after" in leading or ("at" in leading and leading & _HALTED and kind_at(marks, rep) is Kind.NUM):
        return None
    if not (_is_rep(marks, rep, Kind.ORD) or _is_rep(marks, rep, Kind.NUM)):
        return None
    end = rep + 1 + (kind_at(marks, rep + 1) is Kind.REPS)
    while kind_at(marks, end) is Kind.GAP:
        end += 1
    return _Failure(marks[rep], at, end)


def _is_rep(marks: Sequence[Mark], at: int, kind: Kind) -> bool:
    value = marks[at].value if kind_at(marks, at) is kind else None
    counts = value is not None and value >= EARLIEST_FAILED and value == int(value)
    return counts and kind_at(marks, at + 1) not in (Kind.SET, Kind.SETS, Kind.X, Kind.KG, Kind.LB, Kind.NUM)


def _leads_to_set(marks: Sequence[Mark], at: int) -> bool:
    """Whether a little word here stands before the words of a set: `on the third`, `in the last one`."""
    return kind_at(marks, at) in _LINKS and _which_at(marks, at + 1) is not None


def _next_set(out: list[Mark], at: int) -> int | None:
    """`8, 7, then failed the 7th`: a set behind one of more repetitions; where it ends then."""
    if kind_at(out, at) is not Kind.FAILED or kind_at(out, at + 1) is not Kind.ORD:
        return None
    then = text_at(out, at).split()[:1] == ["then"] or kind_at(out, at - 1) is Kind.THEN
    done = (out[at + 1].value or Decimal(0)) - 1
    told, last = reps_told(out, at), told_last(out[:at])
    end = at + 2 + (kind_at(out, at + 2) is Kind.REPS)
    if not then or len(told) < SEVERAL or last is None or not 0 < done < last or kind_at(out, end) not in _ENDS:
        return None
    empty = Mark(Kind.EMPTY, "to failure", out[at].start, out[at + 1].end)
    comma = [] if kind_at(out, at - 1) in _ENDS else [Mark(Kind.COMMA, ",", out[at].start, out[at].start)]
    out[at:end] = [*comma, *_counted(out[at + 1], done), empty]
    return at + len(comma) + 2


def _failed_behind(out: list[Mark], at: int) -> int | None:
    """`315 5 (the 6th stopped at the knees)`: the repetition behind those told last; told of a set that was to failure
    already, it is without bearing."""
    failure = _failure_at(out, at) if kind_at(out, at) in (Kind.FAILED, Kind.ORD) else None
    if failure is None:
        return None
    end = failure.end
    while kind_at(out, end) in _TALK and end < failure.end + _FAR:
        end += 1
    before = at - 1
    while kind_at(out, before) in (Kind.OPEN, Kind.COMMA, Kind.DASH, Kind.STOP, Kind.FILL, Kind.BREAK):
        before -= 1
    rated = kind_at(out, before) is Kind.NUM and out[before].value == HARDEST
    rated = rated and (kind_at(out, before - 1) is Kind.RPE or text_at(out, before - 1) == "@")
    again = rated or kind_at(out, before) is Kind.EMPTY
    done = (failure.rep.value or Decimal(0)) - 1
    if kind_at(out, end) not in _ENDS or told_last(out[: before - rated + (not again)]) != done:
        return None
    if not again:
        out[at:end] = [Mark(Kind.EMPTY, "to failure", out[at].start, out[failure.end - 1].end)]
        return at
    out[at:end] = [replace(m, kind=Kind.GAP, value=None, parts=()) for m in out[at:end]]
    return end - 1


def _of_lone_load(out: list[Mark], at: int) -> int | None:
    """`22.5 kg. Too heavy! Failed the 9th`: of that load, where the message tells no other number."""
    failure = _failure_at(out, at)
    if failure is None or kind_at(out, failure.end) not in _ENDS:
        return None
    numbers = [i for i, m in enumerate(out) if m.kind in (Kind.NUM, Kind.SAME, Kind.BODY, Kind.PLANNED)]
    if len(numbers) != 1 or numbers[0] >= at:
        return None
    load = numbers[0]
    between = out[load + 1 + (kind_at(out, load + 1) in (Kind.KG, Kind.LB, Kind.S)) : at]
    apart = (Kind.STOP, Kind.COMMA, Kind.LINE, Kind.DASH)
    plain = all(m.kind in (*apart, Kind.FILL, Kind.WORD, Kind.WAS) for m in between)
    if not plain or out[load].value == (failure.rep.value or 0) - 1 or not any(m.kind in apart for m in between):
        return None
    rep = replace(failure.rep, kind=Kind.ORD)
    failed = Mark(Kind.FAILED, "failed the", out[failure.start].start, rep.start)
    said = [replace(m, kind=Kind.FILL) if m.kind in apart else m for m in between]
    start = at - len(between)
    out[start : failure.end] = [failed, rep, *said]
    return start + 1 + len(said)
