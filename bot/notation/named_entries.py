"""Several exercises told in one message, each with its own name in or behind its sets: each on a line of its own.

`4 sets of 6 on press at 95 and 3 sets of 7 chins` tells `press 4 sets of 6 at 95` and `chins 3 sets of 7`. A part that
names one exercise and tells nothing but sets is that exercise's, wherever in it the name stands.
"""

from collections.abc import Sequence
from dataclasses import dataclass, replace

from bot.notation.bounds import SEVERAL
from bot.notation.clauses import kind_at, text_at
from bot.notation.entry_parts import PARTING, Part, head_of, read_parts
from bot.notation.kinds import Kind
from bot.notation.order.near import counted_sets
from bot.notation.record import Record
from bot.notation.tokens import Mark
from bot.training.plan import Measure

_HARD = (Kind.THEN, Kind.LINE, Kind.STOP, Kind.BREAK, Kind.QUERY)
_LEADS = frozenset(["on", "on the", "for", "of", "for the", "of the", "on my", "in", "in the"])
_ARTICLES = frozenset(["the", "my", "of", "some"])


@dataclass(frozen=True, slots=True)
class _Entry:
    """One exercise's parts, side by side: where they start and end, and their name."""

    start: int
    end: int
    name: int


def with_named_entries(marks: Sequence[Mark], record: Record) -> list[Mark]:
    """The marks with each such entry name first, on a line of its own, where the message has several."""
    if not _are_named(marks):
        return list(marks)
    marks = _with_own_lines(marks, record)
    parts = read_parts(marks)
    entries = _entries(parts, record).entries
    rounds = any(m.kind is Kind.SETS and m.text.startswith("round") for m in marks)
    if not entries or rounds or (len(entries) == 1 and len(parts) > 1):
        return list(marks)
    out: list[Mark] = []
    at = 0
    for entry in entries:
        out += marks[at : entry.start]
        if out and out[-1].kind in (*PARTING, Kind.PLUS):
            out[-1] = replace(out[-1], kind=Kind.LINE)
        out += name_first(list(marks[entry.start : entry.end]), entry.name - entry.start)
        at = entry.end
    return [*out, *marks[at:]]


def _are_named(marks: Sequence[Mark]) -> bool:
    """Whether a name is said at all: without one there is no such entry."""
    return any(m.kind in (Kind.NAME, Kind.WEAK) for m in marks)


def _with_own_lines(marks: Sequence[Mark], record: Record) -> list[Mark]:
    """`curls 45 for 8 then 8 reps plank 20 seconds`: a line's end before a name that stands between two entries, where
    the names of the message stand before what is told of them.
    """
    out = list(marks)
    names = [i for i, m in enumerate(marks) if m.kind is Kind.NAME]
    told = next((i for i, m in enumerate(marks) if m.kind in (Kind.NUM, Kind.BODY)), 0)
    if len(names) < SEVERAL or names[0] > told:
        return out
    for place in reversed(names[1:]):
        start = next((i + 1 for i in range(place - 1, 0, -1) if marks[i].kind in PARTING), 0)
        end = next((i for i in range(place + 1, len(marks)) if marks[i].kind in PARTING), len(marks))
        lead = place
        while lead > start and marks[lead - 1].kind in (Kind.FILL, Kind.DONE):
            lead -= 1
        joined = start > names[0] and marks[start - 1].kind in (Kind.THEN, Kind.AND)
        does = {w for m in marks[lead:place] for w in m.text.split()} >= {"i", "did"}
        before = joined and _is_told_before(marks[start:lead], does=does)
        before = before or (lead - 3 > names[0] and _is_told_before(marks[lead - 3 : lead], does=False))
        before = before or _ends_list(marks[names[names.index(place) - 1] : lead], record)
        timed = _ends_in_time(marks[names[names.index(place) - 1] : lead], marks[place], record)
        if (before and _is_told_behind(marks[place + 1 : end])) or timed:
            out.insert(lead, Mark(Kind.LINE, "", marks[lead].start, marks[lead].start))
    return out


def _ends_list(marks: Sequence[Mark], record: Record) -> bool:
    """`plank 35 30 and 30 | pull ups 5 5 5`: a list whose end fills the exercise that heads it."""
    name, told = marks[0], marks[1:]
    listed = all(m.kind in (Kind.NUM, Kind.COMMA, Kind.AND) for m in told) and any(m.kind is Kind.AND for m in told)
    if len(name.names) != 1 or not listed:
        return False
    context = record.context(name.names[0])
    return sum(m.kind is Kind.NUM for m in told) == len(context.open_sets) + context.takes_load


def _ends_in_time(marks: Sequence[Mark], following: Mark, record: Record) -> bool:
    """`hang 45 seconds then 35 seconds curls with 25`: a time of what is timed, before a name of what is not."""
    told = [m.kind for m in marks if m.kind not in (Kind.EACH, *_PASSED)]
    if told[-2:] not in ([Kind.NUM, Kind.SECONDS], [Kind.NUM, Kind.S]):
        return False
    measures = [{record.exercises[n].measure for n in name.names} for name in (marks[0], following)]
    return measures[0] == {Measure.SECONDS} and Measure.SECONDS not in measures[1]


_PASSED = (Kind.FILL, Kind.SLASH, Kind.PLUS, Kind.ARROW, Kind.DASH, Kind.DONE)
_BY = (Kind.X, Kind.FOR)


def _is_told_before(part: Sequence[Mark], *, does: bool) -> bool:
    """Whether a part up to a name ends a list or a whole set: `bodyweight for 7`, `8 reps rpe 9`, `5 each`."""
    kinds = [m.kind for m in part]
    whole = kinds[1:] in ([_BY[0], Kind.NUM], [_BY[1], Kind.NUM]) and kinds[0] in (Kind.NUM, Kind.BODY)
    counted = kinds[:1] == [Kind.NUM] and kinds[1:2] in ([Kind.REPS], [Kind.EACH], [Kind.RPE], [Kind.WITH], [Kind.TANK])
    rated = counted and any(k in (Kind.RPE, Kind.RIR, Kind.TANK, Kind.EACH, Kind.REPS) for k in kinds)
    return whole or rated or (does and kinds == [Kind.NUM])


def _is_told_behind(part: Sequence[Mark]) -> bool:
    """Whether what follows a name is no load alone of what stands before it."""
    numbers = [i for i, m in enumerate(part) if m.kind is Kind.NUM]
    if not numbers or part[0].kind in (Kind.AT, Kind.WITH):
        return False
    measured = any(m.kind in (Kind.SECONDS, Kind.METRES, Kind.REPS, Kind.SETS) for m in part)
    return len(numbers) >= SEVERAL or measured


def unclear_entry(marks: Sequence[Mark], record: Record) -> Mark | None:
    """The name behind numbers that may be of it or of the one before: `press 45 for 7, 6, 7, 7 and 6 chins`."""
    if sum(m.kind in (Kind.NAME, Kind.WEAK) for m in marks) < SEVERAL:
        return None
    unclear = _entries(read_parts(marks), record).unclear
    return None if unclear is None else marks[unclear]


@dataclass(frozen=True, slots=True)
class _Found:
    """The entries of a message, and where a name stands of which it is not clear where its entry starts."""

    entries: tuple[_Entry, ...]
    unclear: int | None


def _entries(parts: Sequence[Part], record: Record) -> _Found:
    """The entries among parts; a part without a name goes with the one before it, or with the one behind it where
    names stand behind their sets: `95x6, 95x5 press, 8, 7, 7 chins`.
    """
    out: list[_Entry] = []
    unclear: int | None = None
    loose: list[Part] = []
    before: Part | None = None
    for part in parts:
        if part.named is None:
            loose.append(part)
            continue
        first = _first_of(loose, part, before, record)
        if first is not None:
            out.append(_Entry(first.start, part.end, part.named))
        elif before is not None:
            out = out[:-1]
            unclear = part.named if all(one.plain for one in loose) else unclear
        loose, before = [], part
    return _Found(tuple(out), unclear)


def _first_of(loose: Sequence[Part], part: Part, before: Part | None, record: Record) -> Part | None:
    """Where an entry starts that ends with a named part: with one of those without a name before it, where they are of
    it (`press 95 for 6 and 5, then 8, 7 and 7 chins`); `None` where that is not clear.
    """
    if not loose or not part.behind or not any(one.plain for one in loose):
        return part if not loose or before is not None else None
    if not all(one.plain for one in loose):
        return None
    if before is None or before.behind:
        return loose[0]
    run = [*loose, part]
    starts = [p for p, one in enumerate(run) if one.seam in _HARD][-1:]
    starts = [1] if [one.seam for one in run] == [Kind.AND, Kind.AND] else starts
    starts = starts or [p for p in range(len(run)) if _may_start(run, p, before)]
    if len(starts) > 1 and before.numbers > len(("load", "count")) and 0 in starts:
        return run[0]
    if len(starts) > 1 and part.exercise is not None:
        whole = len(record.context(part.exercise).open_sets)
        fills = None if before.exercise is None else len(record.context(before.exercise).open_sets) - _counts_of(before)
        starts = [p for p in starts if len(run) - p == whole or p == fills]
    return run[starts[0]] if len(starts) == 1 else None


def _may_start(run: Sequence[Part], place: int, before: Part) -> bool:
    """Whether the parts from a place on may be one list, and those before it another that `before` begins."""
    own, rest = run[place:], run[:place]
    goes_on = own[0].numbers == before.numbers > own[-1].numbers
    return _is_listed(rest) and _is_listed(own) and _is_alike(own) and (len(own) == 1 or not goes_on)


def _counts_of(part: Part) -> int:
    """How many sets a part tells: each of its numbers but the load."""
    return max(1, part.numbers - 1)


def _is_listed(run: Sequence[Part]) -> bool:
    """Whether parts are one list, of which `and` joins the last two alone."""
    return all(one.seam is Kind.COMMA for one in run[1:-1]) and all(
        one.seam in (Kind.COMMA, Kind.AND) for one in run[1:]
    )


def _is_alike(run: Sequence[Part]) -> bool:
    """Whether parts may be one list: `10, 9 and 8`, `70 for 10, 9 and 8`, `95x6, 95x5`; not `10, 70 for 9`."""
    return all(one.numbers == 1 for one in run[1:]) or all(one.numbers > 1 for one in run)


def name_first(part: list[Mark], name: int) -> list[Mark]:
    """`4 sets of 6 on press at 95` as `press 4 sets of 6 at 95`; `3 sets of chins for 7` as `chins 3 sets of 7`; `3
    sprints of 20 secs` as `sprints 3 sets of 20 secs`.
    """
    before = part[:name]
    if before and before[-1].kind is Kind.SETS:
        before[-1] = replace(before[-1], text="sets")
    while before and (text_at(before, len(before) - 1) in (*_LEADS, *_ARTICLES)):
        before.pop()
    head = head_of(part)
    little = next((i for i, m in enumerate(before) if i >= head and m.kind is not Kind.FILL), len(before))
    after = part[name + 1 + (kind_at(part, name + 1) is Kind.COMMA) :]
    lots = (
        [m.kind for m in before[little:]] == [Kind.NUM] and text_at(after, 0) == "of" and kind_at(after, 1) is Kind.NUM
    )
    rest = [*before[little:], *([counted_sets(before[-1])] if lots else []), *after]
    counted = [m.kind for m in rest[:3]] == [Kind.NUM, Kind.SETS, Kind.FOR]
    return [*before[:little], part[name], *(rest if not counted else rest[:2] + rest[3:])]
