"""What stored sets were, in any order of words: `190 not 180 on the last two`, `i wrote 180 for set 1, it was 190`.

A small closed grammar: which stored sets, what they were, what not, and words that say no more. Only a clause whose
every word has its place is read so, and only where what it was not is what these sets are stored with; it is then put
as their numbers, and what they were. Everything else is left to the other rules of this room.
"""

from collections.abc import Sequence
from dataclasses import dataclass, field, replace
from decimal import Decimal

from bot.notation.answer import Request
from bot.notation.clauses import kind_at, text_at
from bot.notation.corrections.voiced import CHANGING
from bot.notation.corrections.which_stored import Which, which_at
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark
from bot.notation.wordlist import words
from bot.training.report import Performed, Stage

_ENDS = (Kind.STOP, Kind.LINE, Kind.QUERY)
_LINKS = (Kind.COMMA, Kind.AND, Kind.THEN, Kind.BREAK, Kind.DASH)
_SIGNS = {Kind.PLUS: 1, Kind.ADDED: 1, Kind.DASH: -1, Kind.MINUS: -1}
_UNITS = (Kind.KG, Kind.LB, Kind.S)
_PASSED = (Kind.FILL, Kind.WAS, Kind.AT, Kind.WITH, Kind.FOR, Kind.COMMA, Kind.COLON, Kind.TO, Kind.MEANT, Kind.SORRY,
           Kind.COULD, Kind.DASH, Kind.SETS, Kind.SET, Kind.OPEN, Kind.CLOSE)  # fmt: skip
"""Kinds that say nothing more beside a set and what it was."""
_OF_MORE = (Kind.X, Kind.NUM, Kind.SECONDS, Kind.METRES, Kind.RPE, Kind.RIR, Kind.TANK, Kind.EACH)
"""Kinds behind a number that is no load, or not all that was told."""
_TURNING = frozenset(words("next other others rest before again more this new also too then left right side leg arm @"))
"""Words that turn to something else."""
_THINGS = frozenset(words(
    "thing things correction corrections change changes fix fixes mistake mistakes edit edits typo typos",
))  # fmt: skip
"""What an announcement counts: `two things, set 1 was 11`."""
_STRONG = (Kind.MEANT, Kind.SORRY, Kind.WROTE)
_PUTTING = frozenset(["make", *CHANGING])


@dataclass(frozen=True, slots=True)
class _Value:
    """A number that was told of a set: its signed amount, the words that say it, and whether its own words make it
    repetitions or a load.
    """

    amount: Decimal
    end: int
    marks: list[Mark]
    counts: bool = False
    loads: bool = False


@dataclass
class _Said:
    """What a clause has told so far."""

    name: Mark | None = None
    which: Which | None = None
    at: Mark | None = None
    plain: list[_Value] = field(default_factory=list)
    olds: list[_Value] = field(default_factory=list)
    cues: set[Kind] = field(default_factory=set)
    drops: bool = False


def old_and_new(marks: Sequence[Mark], request: Request) -> list[Mark]:
    """The marks with each clause that puts stored sets right in plain wording: their labels, and what they were."""
    if not request.done or not any(m.kind in (Kind.NUM, Kind.BODY) for m in marks):
        return list(marks)
    out: list[Mark] = []
    start = 0
    for end in range(len(marks) + 1):
        if end < len(marks) and marks[end].kind not in _ENDS:
            continue
        out += _sentence(list(marks[start:end]), request)
        out += marks[end : end + 1]
        start = end + 1
    return out


def _sentence(sentence: list[Mark], request: Request, *, goes_on: bool = False) -> list[Mark]:
    """The sentence, put plainly: the whole of it, or what stands before or behind one of its commas."""
    if not 1 < len(sentence) <= _LONGEST:
        return sentence
    whole = _plain(sentence, request, goes_on=goes_on)
    if whole is not None:
        return whole
    for place, mark in enumerate(sentence):
        if mark.kind not in _LINKS:
            continue
        left, right = sentence[:place], sentence[place + 1 :]
        stop = replace(mark, kind=Kind.STOP, text=".", value=None, parts=())
        ahead = _plain(left, request, goes_on=goes_on)
        following = right if ahead is None else _sentence(right, request, goes_on=True)
        if ahead is not None and (_tells_set(right) or following != right):
            return [*ahead, stop, *following]
        aims = any(which_at(right, i, (1,)) or right[i].kind in (Kind.ORD, Kind.SET) for i in range(len(right)))
        behind = _plain(right, request) if aims and _tells_set(left) else None
        if behind is not None and mark.kind is not Kind.AND:
            return [*left, stop, *behind]
    return sentence


_LONGEST = 40
"""Marks of a sentence that is read so: a longer one tells more than a correction."""


def _tells_set(marks: Sequence[Mark]) -> bool:
    """Whether a load with its repetitions is told, and nothing is put right."""
    kinds = [m.kind for m in marks if m.kind not in _UNITS]
    entry = any(kinds[i : i + 3] in ([Kind.NUM, Kind.X, Kind.NUM], [Kind.NUM, Kind.FOR, Kind.NUM])
                for i in range(len(kinds)))  # fmt: skip
    return entry and not any(k in (*_STRONG, Kind.NOT, Kind.INSTEAD, Kind.SCRAP) for k in kinds)


def _plain(clause: list[Mark], request: Request, *, goes_on: bool = False) -> list[Mark] | None:
    """The clause in plain wording; none where a word of it has no place, or where it does not fit what is stored.

    Where it `goes_on` behind another correction, a set that is named and its value are enough: `and set 2 185`.
    """
    name = next((m for m in clause if m.kind is Kind.NAME), None)
    exercise = _exercise(name, request)
    rows = [p for p in request.done if p.exercise == exercise and p.set is not None]
    stored = sorted({p.set for p in rows if p.set is not None})
    said = _read(clause, stored) if stored else None
    if said is None or exercise is None or (said.which is None and (not said.olds or _is_of_several(clause))):
        return None
    new, old = _new_and_old(said)
    follows = goes_on and said.which is not None and not said.which.lasts
    cued = follows or bool(said.cues & set(_STRONG)) or _is_told(said, exercise, request)
    if new is None or (old is None and not cued):
        return None
    stages = (Stage.DROP,) if said.drops else (Stage.WORK, Stage.DROP)
    of_drop = [p for p in rows if p.stage is Stage.DROP]
    named = None if said.which is None else said.which.sets
    chosen = _with_old(of_drop[-1:] if said.drops else rows, old) if named is None else named
    staged = [[p for p in rows if p.set == n] for n in chosen]
    stage, counts = _what(staged, new, old, stages)
    if not chosen or stage is None:
        return None
    helped = counts is False and _helped(staged)
    value = _told_plainly(new, old, counts=counts, helped=helped)
    put = _put(said, chosen, value, drops=stage is Stage.DROP)
    return [*_edge(clause[0], put), *put, *_edge(clause[-1], put)]


def _edge(mark: Mark, put: Sequence[Mark]) -> list[Mark]:
    """The first or the last word of the clause as one that says nothing: the evidence holds the whole of it."""
    kept = any(m.start <= mark.start and mark.end <= m.end for m in put)
    return [] if kept else [replace(mark, kind=Kind.FILL, text="that", value=None, parts=(), names=())]


def _is_told(said: _Said, exercise: str, request: Request) -> bool:
    """Whether `set 2 was 190` can only be of a stored set: one that is named by its number, of the exercise that is
    named or under way.
    """
    planned = next(len(e.sets) for e in request.exercises if e.name == exercise)
    stored = {p.set for p in request.done if p.exercise == exercise}
    under_way = request.current in (None, exercise) and len(stored) < planned
    which = said.which is not None and not said.which.lasts
    return which and Kind.WAS in said.cues and (said.name is not None or under_way)


def _exercise(name: Mark | None, request: Request) -> str | None:
    """The exercise that is put right: the one that is named, else the one of the last set; none where it has none."""
    if name is None:
        return request.done[-1].exercise
    done = {p.exercise for p in request.done}
    named = [request.exercises[p].name for p in name.names if request.exercises[p].name in done]
    return named[0] if len(named) == 1 else None


def _read(clause: Sequence[Mark], stored: Sequence[int]) -> _Said | None:
    """What the clause tells; none where a word of it has no place."""
    said = _Said()
    at = 0
    while at < len(clause):
        mark = clause[at]
        which = which_at(clause, at, stored)
        if which is not None:
            if said.which is not None:
                return None
            said.which, said.at = which, mark
            at = which.end
            continue
        if mark.kind is Kind.NUM and set(text_at(clause, at + 1).split()) & _THINGS:
            at += 2
            continue
        if mark.kind is Kind.NAME:
            if said.name is not None and said.name.names != mark.names:
                return None
            said.name = mark
            at += 1
            continue
        if mark.kind is Kind.DROP and mark.text.split(" ")[-1] in ("drop", "set"):
            said.drops = True
            at += 1
            continue
        denies = mark.kind in (Kind.NOT, Kind.INSTEAD, Kind.WROTE, Kind.NO)
        led = denies and kind_at(clause, at + 1) in (Kind.WITH, Kind.AT)
        value = _value_at(clause, at + denies + led)
        if denies:
            said.cues.add(mark.kind)
            said.olds += [value] if value is not None else []
            if value is None and mark.kind is not Kind.WROTE:
                return None
        elif value is not None:
            said.plain.append(value)
        elif not _is_passed(mark):
            return None
        else:
            said.cues.add(Kind.MEANT if set(mark.text.split()) & _PUTTING else mark.kind)
        at = value.end if value is not None else at + 1
    return said


def _is_of_several(clause: Sequence[Mark]) -> bool:
    """`those were 9 not 10`: which ones is for the message to say."""
    return any(m.text.split()[:1] in (["those"], ["they"], ["these"]) for m in clause)


def _is_passed(mark: Mark) -> bool:
    """Whether a mark says nothing more: no effort (`@9`), nothing of other sets (`next`), not of which (`were all`)."""
    said = set(mark.text.split())
    if mark.kind is Kind.WAS and said & {"all", "both"}:
        return False
    sets = mark.kind not in (Kind.SET, Kind.SETS) or mark.text.split(" ")[0] in ("set", "sets")
    return (mark.kind in _PASSED or mark.text in CHANGING) and sets and not said & _TURNING


def _value_at(marks: Sequence[Mark], at: int) -> _Value | None:
    """The number that starts here, with its sign, its unit, and whether it is help."""
    start = at
    if kind_at(marks, at) is Kind.BODY:
        return _Value(Decimal(0), at + 1, [marks[at]], loads=True)
    sign = _SIGNS.get(marks[at].kind, 0) if at < len(marks) else 0
    helps = kind_at(marks, at) is Kind.ASSIST
    at += bool(sign) or helps
    if kind_at(marks, at) is not Kind.NUM or marks[at].value is None:
        return None
    number = marks[at].value or Decimal(0)
    at += 1
    unit = [marks[at]] if kind_at(marks, at) in _UNITS else []
    counts = kind_at(marks, at) is Kind.REPS
    at += bool(unit) or counts
    behind = kind_at(marks, at)
    helps, at = (True, at + 1) if behind is Kind.ASSIST else (helps, at + (behind is Kind.ADDED))
    paired = kind_at(marks, at) is Kind.FOR and kind_at(marks, at + 1) is Kind.NUM
    if paired or kind_at(marks, at) in _OF_MORE:
        return None
    told = [m for m in marks[start:at] if m.kind is Kind.NUM]
    amount = -number if helps or sign < 0 else number
    led = start > 0 and (marks[start - 1].kind is Kind.WITH or marks[start - 1].text.split()[-1:] in (["with"], ["at"]))
    return _Value(amount, at, [*told, *unit], counts, helps or bool(sign) or led)


def _new_and_old(said: _Said) -> tuple[_Value | None, _Value | None]:
    """What it was, and what it was not: the first of two plain numbers, as in `the 180 on set 1 should be 190`."""
    if len(said.plain) == 1 and len(said.olds) <= 1:
        return said.plain[0], said.olds[0] if said.olds else None
    turned = said.cues & {Kind.MEANT, Kind.TO}
    if len(said.plain) == 2 and not said.olds and turned:
        return said.plain[1], said.plain[0]
    return None, None


def _with_old(rows: Sequence[Performed], old: _Value | None) -> tuple[int, ...]:
    """Where no set is named: the last one, where it was the old value, else the only one that was."""
    sets = sorted({p.set for p in rows if p.set is not None and old is not None and _was(p, old)})
    last = max((p.set for p in rows if p.set is not None), default=0)
    return (last,) if last in sets else tuple(sets) if len(sets) == 1 else ()


def _was(row: Performed, value: _Value) -> bool:
    """Whether a stored set has a value: as its load, help as it is said or without a sign, or as its repetitions."""
    return _was_load(row, value) or (not value.loads and row.reps == value.amount)


def _was_load(row: Performed, value: _Value) -> bool:
    load = None if row.load is None else row.load.amount
    return not value.counts and load is not None and value.amount in (load, -load)


def _what(
    staged: Sequence[Sequence[Performed]], new: _Value, old: _Value | None, stages: Sequence[Stage]
) -> tuple[Stage | None, bool | None]:
    """The stage that is put right, and whether repetitions (`None`: not said); no stage where the old value is none."""
    if old is None and all(any(p.stage is stages[0] for p in one) for one in staged):
        return stages[0], True if new.counts else False if new.loads else None
    if old is None:
        return None, None
    for stage in stages:
        rows = [[p for p in one if p.stage is stage] for one in staged]
        if not all(rows):
            continue
        loads = all(_was_load(p, old) for one in rows for p in one) and not new.counts
        reps = all(not old.loads and p.reps == old.amount for one in rows for p in one) and not new.loads
        if loads != reps:
            return stage, reps
        if loads:
            return None, None
    return None, None


def _helped(staged: Sequence[Sequence[Performed]]) -> bool:
    """Whether the sets are stored with help, so that a number without a sign is help."""
    return all(p.load is not None and p.load.thousandths < 0 for one in staged for p in one)


def _told_plainly(new: _Value, old: _Value | None, *, counts: bool | None, helped: bool) -> list[Mark]:
    """`was with 190`, `was 9 not 11`, `was 190`: what the sets were, and of what."""
    start, end = new.marks[0].start, new.marks[-1].end
    was = Mark(Kind.MEANT, "was" if counts is not False else "was with", start, start)
    value = [m for m in new.marks if m.kind is not Kind.S or counts is None]
    if counts and old is not None:
        return [was, *value, Mark(Kind.NOT, "not", end, end), old.marks[0]]
    reps = [Mark(Kind.REPS, "", end, end)] if counts else []
    less = new.amount < 0 or (helped and new.marks[0].kind is not Kind.BODY)
    return [was, *value, *reps, *([Mark(Kind.ASSIST, "assist", end, end)] if less else [])]


def _put(said: _Said, chosen: Sequence[int], value: Sequence[Mark], *, drops: bool) -> list[Mark]:
    """The sets by their numbers, and what they were."""
    beside = said.at if said.at is not None else value[1]
    label = replace(beside, kind=Kind.LABEL, parts=(), names=())
    labels = [replace(label, value=Decimal(n)) for n in chosen]
    drop = [Mark(Kind.DROP, "drop", value[0].start, value[0].start)] if drops else []
    return [*([] if said.name is None else [said.name]), *labels, *drop, *value]
