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
    name = load - 1
    whole = kind_at(marks, last - 1) in (Kind.X, Kind.FOR) and kind_at(marks, last) is kind_at(marks, load) is Kind.NUM
    if name - _FAR < cues[-1] or not whole or kind_at(marks, name) is not Kind.NAME or len(marks[name].names) != 1:
        return set()
    said = {w for m in marks[:name] for w in m.text.split()}
    numbers = any(m.kind in (Kind.NUM, Kind.CLOCK, Kind.QUERY) for m in marks[:name])
    if numbers or said & _DATED or _LEADING.issuperset(marks[name - 1].text.split()[-1:]):
        return set()
    return set(range(name, end)) if _is_planned(draft, marks[name].names[0], marks[load], marks[last]) else set()


def _is_planned(draft: Draft, exercise: int, load: Mark, reps: Mark) -> bool:
    """Whether a load and its repetitions are about those of a set of the exercise that is still open."""
    context = draft.record.context(exercise)
    if not context.open_sets or load.value is None or reps.value is None or reps.value != int(reps.value):
        return False
    number = context.open_sets[0]
    told = Load.of(load.value, draft.unit)
    likely = context.is_load_in_reason(told, number, [p.load for p in context.worked], False)
    return likely and context.are_reps_in_reason(int(reps.value), number)
