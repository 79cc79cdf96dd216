"""What a clause that puts a stored set right tells: which sets, what they were and were not: `190 not 180 on set 2`."""

from collections.abc import Container, Sequence
from dataclasses import dataclass, field
from decimal import Decimal

from bot.notation.bounds import HARDEST
from bot.notation.clauses import kind_at, text_at
from bot.notation.corrections.voiced import CHANGING
from bot.notation.corrections.which_stored import Which, which_at
from bot.notation.efforts_named.effort import effort_at, is_effort
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark
from bot.notation.wordlist import words
from bot.training.report import Stage

_SIGNS = {Kind.PLUS: 1, Kind.ADDED: 1, Kind.DASH: -1, Kind.MINUS: -1}
UNITS = (Kind.KG, Kind.LB, Kind.S)
_PASSED = (Kind.FILL, Kind.WAS, Kind.AT, Kind.WITH, Kind.FOR, Kind.COMMA, Kind.COLON, Kind.TO, Kind.MEANT, Kind.SORRY,
           Kind.COULD, Kind.DASH, Kind.ARROW, Kind.SETS, Kind.SET, Kind.OPEN, Kind.CLOSE)  # fmt: skip
"""Kinds that say nothing more beside a set and what it was."""
_OF_MORE = (Kind.X, Kind.NUM, Kind.SECONDS, Kind.METRES, Kind.RPE, Kind.RIR, Kind.TANK, Kind.EACH)
"""Kinds behind a number that is no load, or not all that was told."""
_TURNING = frozenset(words("next other others rest before again more this new also too then left right side leg arm @"))
"""Words that turn to something else."""
_THINGS = frozenset(words(
    "thing things correction corrections change changes fix fixes mistake mistakes edit edits typo typos",
))  # fmt: skip
"""What an announcement counts: `two things, set 1 was 11`."""
PUTTING = frozenset(["make", *CHANGING])
ANNOUNCING = frozenset(words(
    "correcting correction corrections fix fixes mistake mistakes error errors typo mistyped miscounted misread oops",
    "amendment edit",
))  # fmt: skip
"""Words of what comes: that something is put right."""
_IDLE = frozenset(words(
    "fact reality sir coach maam madam teacher boss mate told logged looking checking checked just truth honesty video",
    "notes notebook see rewatched thinking",
))  # fmt: skip
"""Words outside the lexicon that say no more beside what a set was."""
HEDGES = frozenset(words("maybe perhaps might may possibly"))
"""Words of what is not known for certain."""
WRITTEN = frozenset(words("told said reported logged typed entered noted sent put wrote gave"))
"""Verbs of what was told before, with the old value straight behind: `i told 9 but it was ten`."""
EVERY = 0
"""In place of which drop is named: all of them."""
STAGES = {Kind.DROP: Stage.DROP, Kind.DROPPED: Stage.DROP, Kind.MINI: Stage.MINI}
_LASTS = frozenset(words("last final"))
_HAD = frozenset(words("i had got did"))
_ONLY = frozenset(["only", "just"])


@dataclass(frozen=True, slots=True)
class Value:
    """A number that was told of a set: its signed amount, the words that say it, and whether its own words make it
    repetitions or a load.
    """

    amount: Decimal
    end: int
    marks: list[Mark]
    counts: bool = False
    loads: bool = False
    pair: bool = False
    """Whether a load and its repetitions are told: `30x8`."""


@dataclass
class Said:
    """What a clause has told so far."""

    name: Mark | None = None
    owned: bool = False
    """Whether the name stands in the clause itself."""
    which: Which | None = None
    at: Mark | None = None
    plain: list[Value] = field(default_factory=list)
    olds: list[Value] = field(default_factory=list)
    cues: set[Kind] = field(default_factory=set)
    stage: Stage | None = None
    """Of the continuation that is named."""
    nth: int | None = None
    """Which continuation of its set is named, from 1; -1: the last one; `EVERY`: all of them."""
    effort: tuple[Decimal, Mark, Mark] | None = None
    """Repetitions in reserve, and the first and the last word that tell them."""
    hedge: Mark | None = None
    """A word that leaves it in doubt: `maybe`."""
    several: bool = False
    """Whether `those`, `they` say that it is of several sets, without which ones."""


def read_clause(clause: Sequence[Mark], stored: Sequence[int]) -> Said | None:
    """What the clause tells; none where a word of it has no place."""
    said = Said()
    at: int | None = 0
    while at is not None and at < len(clause):
        words_of = clause[at].text.split()
        said.several |= words_of[:1] in (["those"], ["they"], ["these"]) or clause[at].kind is Kind.SETS
        said.hedge = clause[at] if HEDGES & set(words_of) else said.hedge
        aimed = _aimed(said, clause, at, stored)
        at = _valued(said, clause, at) if aimed == at else aimed
    return None if at is None else said


def _aimed(said: Said, clause: Sequence[Mark], at: int, stored: Sequence[int]) -> int | None:
    """Takes in which set, which part of it or which effort is told at a place: where that ends (there, where none is);
    none where such a thing is told twice.
    """
    mark = clause[at]
    part = continuation_at(clause, at)
    which = which_at(clause, at, stored) or numbered(clause, at, stored) if part is None else None
    rated = effort_said(clause, at) if part is None and which is None else None
    if part is not None and said.stage is None:
        said.stage, said.nth, end = part
        said.name = next((m for m in clause[at:end] if m.kind is Kind.NAME), said.name)
        _was_said(said, clause[end - 1])
        return end
    if which is not None and said.which is None:
        said.which, said.at = which, mark
        return which.end
    if rated is not None and said.effort is None:
        said.effort = (rated[0], mark, clause[rated[1] - 1])
        _was_said(said, mark)
        return rated[1]
    if part is not None or which is not None or rated is not None:
        return None
    if mark.kind is Kind.NUM and set(text_at(clause, at + 1).split()) & _THINGS:
        return at + 2
    if mark.kind is not Kind.NAME:
        return at
    if said.name is not None and said.name.names != mark.names:
        return None
    said.name = mark
    return at + 1


def _was_said(said: Said, mark: Mark) -> None:
    """Takes in the verb of `drop was`, `was rpe`."""
    said.cues |= {Kind.WAS} if {"was", "were"} & set(mark.text.split()) else set()


def _valued(said: Said, clause: Sequence[Mark], at: int) -> int | None:
    """Takes in what was and what was not, or a word that says no more: the place behind; none where it has no place."""
    mark = clause[at]
    written = bool(WRITTEN & set(mark.text.split())) and mark.kind in (Kind.WORD, Kind.FILL, Kind.DONE)
    written = written and _value_at(clause, at + 1) is not None
    denies = written or mark.kind in (Kind.NOT, Kind.INSTEAD, Kind.WROTE, Kind.NO)
    led = denies and kind_at(clause, at + 1) in (Kind.WITH, Kind.AT)
    value = (_pair_at(clause, at) if said.stage is not None else None) or _value_at(clause, at + denies + led)
    if denies:
        said.cues.add(Kind.WROTE if written else mark.kind)
        said.olds += [value] if value is not None else []
        if value is None and mark.kind is not Kind.WROTE:
            return None
    elif value is not None:
        said.plain.append(value)
    elif not _is_passed(mark):
        return None
    else:
        said.cues.add(_cue(mark))
        had = mark.kind is Kind.COULD and set(mark.text.split()) <= _HAD
        said.cues |= {Kind.WAS} if had and kind_at(clause, at + 1) is Kind.NUM else set()
    return value.end if value is not None else at + 1


def _cue(mark: Mark) -> Kind:
    """What a word that has its place says about the clause: that it changes, tells, or corrects what is stored."""
    said = set(mark.text.split())
    if said & PUTTING:
        return Kind.MEANT
    if said & ANNOUNCING:
        return Kind.SORRY
    return Kind.WAS if said & _ONLY else mark.kind


def continuation_at(clause: Sequence[Mark], at: int, *, numbered: bool = False) -> tuple[Stage, int | None, int] | None:
    """A drop or a mini here, which one it is where that is said, and the place behind: `the second drop`, `drop 2`.

    Its exercise may stand between: `the first pec deck drop`. `numbered`: a number behind it can only say which.
    """
    nth: int | None = None
    mark = clause[at]
    last = mark.kind in (Kind.LASTSET, Kind.LASTREP) and bool(_LASTS & set(mark.text.split()))
    second = mark.kind is Kind.SECONDS and mark.text == "second"
    every = mark.kind in (Kind.EACH, Kind.ALL) and mark.text.split(" ")[0] in ("both", "all")
    if mark.kind is Kind.ORD or last or second or every:
        nth = EVERY if every else -1 if last else 2 if second else int(mark.value or 0)
        at += 1
        at += kind_at(clause, at) is Kind.NAME
    stage = STAGES.get(kind_at(clause, at) or Kind.GAP)
    if stage is None or kind_at(clause, at + 1) in (Kind.MINI, Kind.DROP):
        return None
    at += 1
    at += text_at(clause, at) in ("number", "no", "#")
    numbered = numbered or kind_at(clause, at + 1) in (Kind.WAS, Kind.MEANT, Kind.ARROW, Kind.COLON, Kind.DASH)
    if nth is None and text_at(clause, at) == "one" and numbered:
        nth, at = 1, at + 1
    if nth is None and kind_at(clause, at) is Kind.NUM and numbered:
        nth, at = int(clause[at].value or 0), at + 1
    return stage, nth, at


def numbered(clause: Sequence[Mark], at: int, stored: Sequence[int], ends: Container[Kind] = ()) -> Which | None:
    """The stored set that stands behind its exercise as a bare number: `front squat 3 only 4 reps`, `rdl #2`."""
    if kind_at(clause, at - 1) is not Kind.NAME or at == 0 or kind_at(clause, at) is not Kind.NUM:
        return None
    told = (
        kind_at(clause, at + 1) in (Kind.WAS, Kind.MEANT, Kind.COLON, Kind.TO, Kind.ARROW)
        or text_at(clause, at + 1) in _ONLY
    )
    value = clause[at].value
    told = told or kind_at(clause, at + 1) in ends
    if not told or value not in stored or not any(m.kind is Kind.NUM for m in clause[at + 1 :]):
        return None
    return Which((int(value or 0),), at + 1)


def effort_said(clause: Sequence[Mark], at: int) -> tuple[Decimal, int] | None:
    """An effort here and the place behind: `1 rir`, `one rep left`, `rpe 9`, `nothing left`, `could have got 2`."""
    kind = kind_at(clause, at)
    if kind is Kind.COULD and kind_at(clause, at + 1) is Kind.NUM and kind_at(clause, at + 2) is Kind.MORE:
        end = at + 3 + (kind_at(clause, at + 3) is Kind.REPS)
        return clause[at + 1].value or Decimal(0), end
    if kind is Kind.NUM and kind_at(clause, at + 1) is Kind.REPS and kind_at(clause, at + 2) in (Kind.TANK, Kind.LEFT):
        return clause[at].value or Decimal(0), at + 3
    if kind is Kind.AT and text_at(clause, at) == "@" and is_effort(clause, at + 1, Kind.RPE):
        return HARDEST - (clause[at + 1].value or Decimal(0)), at + 2
    if kind is Kind.AT or (at and text_at(clause, at - 1) == "@"):
        return None
    effort = effort_at(clause, at, None)
    return None if effort is None else (effort.left, effort.end)


def _is_passed(mark: Mark) -> bool:
    """Whether a mark says nothing more: no effort (`@9`), nothing of other sets (`next`), not of which (`were all`)."""
    said = set(mark.text.split())
    if mark.kind is Kind.WORD and said <= _IDLE | ANNOUNCING | WRITTEN:
        return True
    if mark.kind is Kind.WAS and said & {"all", "both"}:
        return False
    sets = mark.kind not in (Kind.SET, Kind.SETS) or mark.text.split(" ")[0] in ("set", "sets")
    return (mark.kind in _PASSED or mark.text in CHANGING) and sets and not said & _TURNING


def _pair_at(marks: Sequence[Mark], at: int) -> Value | None:
    """A load with its repetitions here: `30x8`, `22.5 kg for 7`."""
    link = at + 1 + (kind_at(marks, at + 1) in UNITS)
    told = kind_at(marks, at) is Kind.NUM and kind_at(marks, link) in (Kind.X, Kind.FOR)
    if not told or kind_at(marks, link + 1) is not Kind.NUM or kind_at(marks, link + 2) is Kind.X:
        return None
    end = link + 2 + (kind_at(marks, link + 2) is Kind.REPS)
    return Value(marks[at].value or Decimal(0), end, list(marks[at:end]), pair=True)


def _value_at(marks: Sequence[Mark], at: int) -> Value | None:
    """The number that starts here, with its sign, its unit, and whether it is help."""
    start = at
    if kind_at(marks, at) is Kind.BODY:
        return Value(Decimal(0), at + 1, [marks[at]], loads=True)
    sign = _SIGNS.get(marks[at].kind, 0) if at < len(marks) else 0
    if sign and kind_at(marks, at) is Kind.DASH and at + 1 < len(marks) and not marks[at + 1].tight:
        return None
    helps = kind_at(marks, at) is Kind.ASSIST
    at += bool(sign) or helps
    if kind_at(marks, at) is not Kind.NUM or marks[at].value is None:
        return None
    number = marks[at].value or Decimal(0)
    at += 1
    unit = [marks[at]] if kind_at(marks, at) in UNITS else []
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
    return Value(amount, at, [*told, *unit], counts, helps or bool(sign) or led)


def new_and_old(said: Said) -> tuple[Value | None, Value | None]:
    """What it was, and what it was not: the first of two plain numbers, as in `the 180 on set 1 should be 190`."""
    if len(said.plain) == 1 and len(said.olds) <= 1:
        return said.plain[0], said.olds[0] if said.olds else None
    turned = said.cues & {Kind.MEANT, Kind.TO, Kind.ARROW}
    if len(said.plain) == 2 and not said.olds and turned:
        return said.plain[1], said.plain[0]
    return None, None
