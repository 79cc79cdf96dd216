"""How far a client is: `that's three down two to go`, `3 of 5 done`, `2 sets left`. It counts sets and is none.

What is said to be done, less what is stored, is how many sets the message tells.
"""

from collections.abc import Sequence
from dataclasses import dataclass, replace
from decimal import Decimal

from bot.notation.clauses import EDGES
from bot.notation.kinds import Kind
from bot.notation.record import Record
from bot.notation.segments import NUMBERS
from bot.notation.tokens import Mark
from bot.training.report import Stage

_DONE = ("down", "in", "complete", "completed", "finished", "done", "behind", "banked")
_TO_GO = tuple(
    tuple(phrase.split())
    for phrase in (
        "to go", "left to go", "more to go", "to do", "to come", "remaining", "left to do", "still to go",
        "still to do", "more to do", "togo",
    )
)  # fmt: skip
_MOST = 12
_ENDING = (Kind.AND, Kind.THEN, Kind.FILL, Kind.AT, Kind.WITH, Kind.NAME, Kind.UNDONE)


@dataclass(frozen=True, slots=True)
class Progress:
    """The marks without it; how many sets are said to be done, and the mark that says so (`None`: not said)."""

    marks: list[Mark]
    done: int | None = None
    at: Mark | None = None


def read_progress(marks: Sequence[Mark], record: Record, under: int | None) -> Progress:
    """How far the client says to be. Before sets that follow, it becomes how many they are."""
    out = _counted_pairs(marks)
    exercise = _place_of(out, under)
    stored = None if exercise is None else _stored(record, exercise)
    planned = 0 if exercise is None else _sets_of(record, exercise)
    numbers = sum(m.kind in NUMBERS or m.kind is Kind.ORD for m in out)
    place = 0
    done: int | None = None
    at: Mark | None = None
    while place < len(out):
        found = (
            (_done(out, place, planned, 1 + (stored or 0)) or _rest(out, place) or _nth(out, place))
            if numbers > 1
            else None
        )
        if found is None:
            place += 1
            continue
        count, end = found
        if count is not None:
            done, at = count, out[place]
        elif (left := _small(out, place)) is not None and planned - left == (stored or 0) + 1:
            out = [replace(m, kind=Kind.FILL) if m.kind is Kind.WAS else m for m in out]
        new = None if count is None else _new(out, place, end, count, stored)
        gone = [replace(m, kind=Kind.GAP, value=None, parts=()) for m in out[place:end]]
        if place and out[place - 1].kind is Kind.FILL and place > 1 and out[place - 2].kind is Kind.WAS:
            out[place - 2] = replace(out[place - 2], kind=Kind.GAP)
        if place and out[place - 1].kind is Kind.WAS:
            out[place - 1] = replace(out[place - 1], kind=Kind.GAP)
        if new is not None and end < len(out) and out[end].kind is Kind.STOP:
            out[end] = replace(out[end], kind=Kind.COLON)
        out[place:end] = gone if new is None else [*_counted(out[place], new), *gone]
        place += len(gone) + 2 * (new is not None)
    return Progress(out, done, at)


def _counted_pairs(marks: Sequence[Mark]) -> list[Mark]:
    """The marks with the `two of the` of `two of the three: 10 and 9` as a number of sets, not of dumbbells."""
    out: list[Mark] = []
    for place, mark in enumerate(marks):
        heads = place + 2 < len(marks) and marks[place + 2].kind in (Kind.COLON, Kind.COMMA, Kind.DONE, Kind.SETS)
        if mark.kind is Kind.PAIR and mark.text.startswith("two of") and _small(marks, place + 1) and heads:
            out += [
                replace(mark, kind=Kind.NUM, value=Decimal(2), text="two"),
                replace(mark, kind=Kind.FILL, text="of"),
            ]
        else:
            out.append(mark)
    return out


def _counted(mark: Mark, count: int) -> list[Mark]:
    number = replace(mark, kind=Kind.NUM, value=Decimal(count), text=str(count), parts=())
    return [number, replace(mark, kind=Kind.SETS, text="sets", value=None, parts=(), start=mark.end)]


def _small(marks: Sequence[Mark], place: int) -> int | None:
    value = marks[place].value if 0 <= place < len(marks) and marks[place].kind is Kind.NUM else None
    return int(value) if value is not None and value == int(value) and 1 <= value <= _MOST else None


def _words(marks: Sequence[Mark], at: int, count: int) -> list[str]:
    return [w for m in marks[at : at + count] for w in m.text.split()]


def _is_free(marks: Sequence[Mark], place: int) -> bool:
    """Whether no link ties a number to the one before."""
    tied = (Kind.X, Kind.FOR, Kind.NUM, Kind.RPE, Kind.RIR, Kind.COULD, Kind.SLASH, Kind.PLUS, Kind.WITH)
    return place == 0 or marks[place - 1].kind not in tied


def _done(marks: Sequence[Mark], place: int, whole_plan: int, next_number: int) -> tuple[int | None, int] | None:
    """`three down two to go`, `3 of 5 done`, `set 3 of 5`: how many are done, and where the words end."""
    count = _small(marks, place)
    if count is None or not _is_free(marks, place):
        return None
    at = place + 1
    of = _of(marks, at)
    if of is not None:
        whole, at = of
        if whole < count:
            return None
    at += at < len(marks) and marks[at].kind in (Kind.SETS, Kind.SET)
    said = at < len(marks) and (marks[at].kind is Kind.DONE or marks[at].text in _DONE)
    if said:
        at += 1
    rest = _following_rest(marks, at) if said or of is not None else None
    if rest is not None:
        return count, rest
    ends = at >= len(marks) or marks[at].kind in (*EDGES, *_ENDING)
    if of is not None and (said or (ends and of[0] == whole_plan) or (not ends and marks[at].kind is Kind.COLON)):
        return (None if place and marks[place - 1].kind is Kind.SET else count), at
    counted = (
        said and marks[at - 2].kind in (Kind.SETS, Kind.SET) and not (at < len(marks) and marks[at].kind is Kind.FILL)
    )
    whole_entry = _is_entry(marks, at + 1)
    later = any(_is_entry(marks, i) for i in range(at, len(marks)))
    next_one = (whole_entry or (of is not None and later)) and ends and count == next_number
    if next_one and of is not None and of[0] >= count:
        return None, at
    if (
        next_one
        and of is None
        and place
        and marks[place - 1].kind is Kind.WAS
        and marks[place - 1].text in ("thats", "its")
    ):
        return count, at
    makes = _words(marks, place - 2, 2)[-2:] in (["that", "makes"], ["makes", "it"], ["that", "is"]) and not said
    return (count, at) if (counted or makes) and ends else None


def _is_entry(marks: Sequence[Mark], place: int) -> bool:
    """`100x5`: a load with its repetitions."""
    kinds = [m.kind for m in marks[place : place + 3]]
    return kinds in ([Kind.NUM, Kind.X, Kind.NUM], [Kind.NUM, Kind.FOR, Kind.NUM])


def _sets_of(record: Record, place: int) -> int:
    """How many sets the plan has, where so many repetitions are none that it asks for: `4 of 5` may be either."""
    context = record.context(place)
    count = len(record.exercises[place].sets)
    return 0 if any(count <= context.range_of(n).high <= count for n in context.open_sets) else count


def _nth(marks: Sequence[Mark], place: int) -> tuple[int | None, int] | None:
    """`that's the third one in the bag`, `second set done`: how many are done with the set that is told."""
    mark = marks[place]
    at = place + 1
    called = at < len(marks) and marks[at].kind is Kind.DONE and marks[at].text.startswith("set")
    one = at < len(marks) and (marks[at].kind is Kind.SET or marks[at].text == "one" or called)
    if mark.kind is not Kind.ORD or mark.value is None or not one:
        return None
    at += not called
    said = _words(marks, at, 3)
    bagged = 3 if said == ["in", "the", "bag"] else 0
    done = bagged or (at < len(marks) and (marks[at].kind is Kind.DONE or marks[at].text in _DONE))
    end = at + (bagged or 1)
    while done and end < len(marks) and marks[end].kind is Kind.FILL:
        end += 1
    ends = end >= len(marks) or marks[end].kind in EDGES
    start = place
    while start > 0 and marks[start - 1].kind in (Kind.FILL, Kind.WAS):
        start -= 1
    opens = start == 0 or marks[start - 1].kind in EDGES
    return (int(mark.value), end) if done and ends and opens else None


def _of(marks: Sequence[Mark], at: int) -> tuple[int, int] | None:
    """The `of 5` or `/5` of `3 of 5`."""
    if at + 1 >= len(marks):
        return None
    joined = 1 if marks[at].text == "of" or marks[at].kind is Kind.SLASH else 0
    joined = 2 if _words(marks, at, 2) == ["out", "of"] else joined
    place = (
        at
        + joined
        + (joined and marks[at + joined : at + joined + 1] != [] and marks[at + joined].text in ("the", "my"))
    )
    whole = _small(marks, place)
    return None if not joined or whole is None else (whole, place + 1)


def _following_rest(marks: Sequence[Mark], at: int) -> int | None:
    """Where `two to go` behind what is done ends."""
    while at < len(marks) and marks[at].kind in (Kind.FILL, Kind.AND, Kind.COMMA):
        at += 1
    found = _rest(marks, at, left=True)
    return None if found is None else found[1]


def _rest(marks: Sequence[Mark], place: int, *, left: bool = False) -> tuple[int | None, int] | None:
    """`two to go`, `2 sets left`: what is still to come."""
    if _small(marks, place) is None or not _is_free(marks, place):
        return None
    at = place + 1
    sets = at < len(marks) and (marks[at].kind in (Kind.SETS, Kind.SET) or marks[at].text in ("set", "sets"))
    at += sets
    for words in _TO_GO:
        if tuple(_words(marks, at, len(words))) == words:
            return None, at + len(words)
    named = [m.kind for m in marks[at + 1 : at + 3]] in (
        [Kind.WITH, Kind.NAME],
        [Kind.AT, Kind.NAME],
        [Kind.FOR, Kind.NAME],
    )
    alone = not any(m.kind is Kind.NUM for m in marks[:place]) and (
        at + 1 >= len(marks) or marks[at + 1].kind is Kind.STOP
    )
    if (sets or left or named or alone) and at < len(marks) and marks[at].text == "left":
        return None, at + 1
    return None


def _place_of(marks: Sequence[Mark], under: int | None) -> int | None:
    named = [m.names[0] for m in marks if m.kind is Kind.NAME and len(m.names) == 1]
    return named[0] if len(set(named)) == 1 else under if not named else None


def _stored(record: Record, place: int) -> int:
    return len({p.set for p in record.context(place).worked})


def _new(marks: Sequence[Mark], place: int, end: int, count: int, stored: int | None) -> int | None:
    """How many sets the message tells behind its progress; `None` where that changes nothing."""
    if stored is None or any(m.kind in NUMBERS for m in marks[:place]):
        return None
    new = count - stored
    following = [m for m in marks[end:] if m.kind in NUMBERS]
    return new if new > 1 and following else None


def contradicted(progress: Progress, record: Record) -> Mark | None:
    """The mark that says how many sets are done, where the sets that are kept are another number."""
    names = {one.row.exercise for one in record.told if one.row.stage is Stage.WORK}
    if progress.done is None or len(names) != 1:
        return None
    place = record.place_of(next(iter(names)))
    return progress.at if place is not None and _stored(record, place) != progress.done else None
