"""Loads and counts judged with no set beside them: `135 was too easy`, `the 40s feel light`, `8 is too easy now`."""

from collections.abc import Sequence

from bot.notation.clauses import kind_at, part_of
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark
from bot.notation.wordlist import words

_BEYOND = frozenset(["beyond"])
_JUDGED = frozenset(words("easy heavy light hard tough ok okay fine good great smooth challenging"))


def is_judged(marks: Sequence[Mark], place: int) -> bool:
    """`135 was too easy`: a load that is spoken of, with no repetitions beside it."""
    start, end = part_of(marks, place)
    verb = place + 1 + (place + 1 < end and marks[place + 1].kind is Kind.S)
    rest = [m for m in marks[verb + 1 : end] if m.text not in _BEYOND]
    if len(rest) < len(marks[verb + 1 : end]) and marks[verb].text in ("was", "were"):
        return start == place or all(m.kind is Kind.FILL for m in marks[start:place])
    was = verb < end and marks[verb].text in ("was", "was all", "was only", "felt")
    was = was and (start == 0 or marks[start - 1].kind is not Kind.COMMA)
    plain = all(m.kind is Kind.FILL for m in (*marks[start:place], *rest))
    return was and plain and bool(rest) and rest[-1].text in _JUDGED


_OF_LOADS = (Kind.S, Kind.KG, Kind.LB)
_IS = frozenset(words("is are feels feel felt seems seem was were getting"))
_OF_NOW = frozenset(words("now already lately already today tbh honestly coach tho though"))
_JUDGING = (Kind.FILL, Kind.WAS, Kind.FEELS)


def judges(marks: Sequence[Mark]) -> bool:
    """Whether a word is said that judges a load: without one none is."""
    return any(not _JUDGED.isdisjoint(m.text.split()) for m in marks)


def is_load_judged(marks: Sequence[Mark], place: int) -> bool:
    """`the 40s feel light`, `bw is too easy now`: a load with its unit, judged, and no number in the rest."""
    if kind_at(marks, place + 1) not in _OF_LOADS and marks[place].kind is not Kind.BODY:
        return False
    start, end = part_of(marks, place)
    united = place + 1 < end and marks[place + 1].kind in _OF_LOADS
    rest = [m for m in marks[place + 1 + united : end] if m.kind is not Kind.GAP]
    said = [w for m in rest for w in m.text.split()]
    while said and said[-1] in _OF_NOW:
        said.pop()
    judged = len(said) > 1 and said[0] in _IS and said[-1] in _JUDGED
    plain = all(m.kind in _JUDGING for m in (*marks[start:place], *rest))
    numbers = (Kind.NUM, Kind.CLOCK, Kind.X, Kind.BODY, Kind.SAME, Kind.DONE)
    alone = not any(m.kind in numbers for m in (*marks[:place], *marks[place + 1 :]))
    return judged and plain and alone


_GROWN = frozenset(words("become became becoming got gotten getting"))
_GENERAL = (*_JUDGING, *_OF_LOADS, Kind.WORD, Kind.REPS, Kind.AT, Kind.WITH, Kind.NAME, Kind.WEAK, Kind.GAP)


def has_grown(marks: Sequence[Mark], place: int) -> bool:
    """`twelve has become too easy`, `65 is getting too light`, `8 is too easy now`: of sets in general, and no set."""
    start, end = part_of(marks, place)
    said = [w for m in marks[place + 1 : end] for w in m.text.split()]
    now = bool(said) and said[-1] in ("now", "lately", "already")
    while said and said[-1] in _OF_NOW:
        said.pop()
    if not said or said[-1] not in _JUDGED:
        return False
    if not all(m.kind in _GENERAL for i, m in enumerate(marks[start:end], start) if i != place):
        return False
    grown = bool(_GROWN & set(said)) and bool({"has", "is", "have", "are", "became", "getting"} & set(said))
    return grown or (now and "too" in said and bool({"is", "are"} & set(said)))
