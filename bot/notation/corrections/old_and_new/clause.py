"""What a clause that puts a stored set right tells: which sets, what they were and were not: `190 not 180 on set 2`."""

from collections.abc import Sequence
from dataclasses import dataclass, field
from decimal import Decimal

from bot.notation.clauses import kind_at, text_at
from bot.notation.corrections.voiced import CHANGING
from bot.notation.corrections.which_stored import Which, which_at
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark
from bot.notation.wordlist import words

_SIGNS = {Kind.PLUS: 1, Kind.ADDED: 1, Kind.DASH: -1, Kind.MINUS: -1}
UNITS = (Kind.KG, Kind.LB, Kind.S)
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
_PUTTING = frozenset(["make", *CHANGING])


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


@dataclass
class Said:
    """What a clause has told so far."""

    name: Mark | None = None
    which: Which | None = None
    at: Mark | None = None
    plain: list[Value] = field(default_factory=list)
    olds: list[Value] = field(default_factory=list)
    cues: set[Kind] = field(default_factory=set)
    drops: bool = False


def read_clause(clause: Sequence[Mark], stored: Sequence[int]) -> Said | None:
    """What the clause tells; none where a word of it has no place."""
    said = Said()
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


def _is_passed(mark: Mark) -> bool:
    """Whether a mark says nothing more: no effort (`@9`), nothing of other sets (`next`), not of which (`were all`)."""
    said = set(mark.text.split())
    if mark.kind is Kind.WAS and said & {"all", "both"}:
        return False
    sets = mark.kind not in (Kind.SET, Kind.SETS) or mark.text.split(" ")[0] in ("set", "sets")
    return (mark.kind in _PASSED or mark.text in CHANGING) and sets and not said & _TURNING


def _value_at(marks: Sequence[Mark], at: int) -> Value | None:
    """The number that starts here, with its sign, its unit, and whether it is help."""
    start = at
    if kind_at(marks, at) is Kind.BODY:
        return Value(Decimal(0), at + 1, [marks[at]], loads=True)
    sign = _SIGNS.get(marks[at].kind, 0) if at < len(marks) else 0
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
    turned = said.cues & {Kind.MEANT, Kind.TO}
    if len(said.plain) == 2 and not said.olds and turned:
        return said.plain[1], said.plain[0]
    return None, None
