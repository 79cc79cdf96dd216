"""A set told at the end of a long breath about something else: `my mum rang so forgive me leg press 100 for 12`.

What is told of others and of other times reaches to the end of its part; a message that is dictated has no parts. A
whole set of an exercise of the session, close to its plan, with nothing before its name that leads to it, is the
client's own. Behind a day or a time of its own (`last week`, `tomorrow`) it is left where it is.
"""

from collections.abc import Sequence

from bot.notation.clauses import kind_at
from bot.notation.draft import Draft
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark
from bot.notation.wordlist import words
from bot.training.units import Load

_OF_OTHERS = (Kind.OTHERTIME, Kind.OTHERPERSON)
_LEADING = frozenset(words(
    "did do does doing done hit hits hitting got get gets getting made make makes on the a an my his her their",
    "our your its with without of for to at in by and or nor was were is are am be been pulled pushed pressed",
    "benched squatted rowed lifted lifts lift lifting tried try tries want wants wanted plan planned plans use",
    "used uses using than like likes called calls said says told about from into next some more another goes go",
    "went going start started starts finish finished before after then last put set sets new old heavy light",
    "first second third while during had has have see saw seen watched watching love loves loved hate hates hated",
    "enjoy skip skipped miss missed no not any all every each same when if because as but so until till failed",
    "fail fails cant couldnt wont me",
))  # fmt: skip
"""Words that lead to a name, so that what is told of it is theirs who are spoken of."""
_DATED = frozenset(words(
    "last yesterday tomorrow tmrw tmr next ago week weeks month months year years monday tuesday wednesday",
    "thursday friday saturday sunday pb pr best record previous used plan planned goal aim target will gonna",
    "going hope want wanted would could should might try ill",
))  # fmt: skip
"""Words of a day, a plan or a wish: the set is of that."""
_IF = ("if", "when", "whenever", "once", "unless")
"""Words of a condition: a set without a name behind them is only thought of."""
_FAR = 2
"""Marks at least between who or what is spoken of and the set."""


def told_at_end(draft: Draft, marks: Sequence[Mark]) -> set[int]:
    """The places of such a set; none where there is none."""
    cues = [i for i, m in enumerate(marks) if m.kind in _OF_OTHERS]
    if not cues:
        return set()
    end = len(marks) - (kind_at(marks, len(marks) - 1) is Kind.STOP)
    last = end - 1 - (kind_at(marks, end - 1) is Kind.REPS)
    load = last - 2 - (kind_at(marks, last - 2) in (Kind.KG, Kind.LB))
    whole = kind_at(marks, last - 1) in (Kind.X, Kind.FOR) and kind_at(marks, last) is kind_at(marks, load) is Kind.NUM
    named = kind_at(marks, load - 1) is Kind.NAME
    start = load - named
    if not whole or start - _FAR < cues[-1]:
        return set()
    said = {w for m in marks[:start] for w in m.text.split()}
    numbers = any(m.kind in (Kind.NUM, Kind.CLOCK, Kind.QUERY) for m in marks[:start])
    if numbers or said & _DATED or _LEADING.issuperset(marks[start - 1].text.split()[-1:]):
        return set()
    place = _exercise(draft, marks[:load] if named else marks[:start])
    others = not named and any(m.kind is Kind.OTHERPERSON or m.text.split(" ")[0] in _IF for m in marks[:start])
    told = place is not None and not others and _is_planned(draft, place, marks[load], marks[last])
    return set(range(start, end)) if told else set()


def _exercise(draft: Draft, marks: Sequence[Mark]) -> int | None:
    """The exercise that is named straight before a set; without a name, the one under way, where no other is named."""
    names = [m for m in marks if m.kind in (Kind.NAME, Kind.WEAK) and m.names]
    if marks[-1].kind is Kind.NAME:
        return marks[-1].names[0] if len(marks[-1].names) == 1 else None
    under = draft.under_way()
    return under if under is not None and all(m.names == (under,) for m in names) else None


def _is_planned(draft: Draft, exercise: int, load: Mark, reps: Mark) -> bool:
    """Whether a load and its repetitions are about those of a set of the exercise that is still open."""
    context = draft.record.context(exercise)
    if not context.open_sets or load.value is None or reps.value is None or reps.value != int(reps.value):
        return False
    number = context.open_sets[0]
    told = Load.of(load.value, draft.unit)
    likely = context.is_load_in_reason(told, number, [p.load for p in context.worked], False)
    return likely and context.are_reps_in_reason(int(reps.value), number)
