"""`60x8 same same`, `60x8, ditto ditto`: two sets more, where the plan has as many open; else one."""

from collections.abc import Sequence
from dataclasses import replace
from decimal import Decimal

from bot.notation.kinds import Kind
from bot.notation.record import Record
from bot.notation.tokens import Mark

_LINKS = (Kind.X, Kind.FOR)
_REPEATING = (Kind.SAME, Kind.AGAIN)
_TWICE = "same same"
_AND_AGAIN = ("and again", "and same again", "same again")


def with_same_twice(marks: Sequence[Mark], record: Record, under: int | None) -> list[Mark]:
    """The marks with `same` said twice behind one set, or `ditto` alone, as two sets; `under`: what is under way."""
    out: list[Mark] = []
    place = 0
    while place < len(marks):
        if marks[place].text in _AND_AGAIN and out and out[-1].kind is Kind.EACH:
            out.append(replace(marks[place], kind=Kind.COMMA, text=",", end=marks[place].start))  # `10 each and again`
        if marks[place].kind not in _REPEATING and marks[place].text != _TWICE:
            out.append(marks[place])
            place += 1
            continue
        end = _run(marks, place)
        times = end - place + sum(m.text == _TWICE for m in marks[place:end])
        opens = _opens(marks, place, record, under) if times > 1 else 0
        behind = opens > times > 1 and _one_told(marks, place)
        alone = marks[place].text == "ditto" and not any(m.kind is Kind.NUM for m in marks) and opens >= times
        if times > 1 and (behind or alone):
            last = marks[end - 1]
            number = replace(last, kind=Kind.NUM, text=str(times), value=Decimal(times), start=marks[place].start)
            out += [number, replace(number, kind=Kind.SETS, text="group", value=None), last]
        else:
            out += marks[place:end]
        place = end
    return out


def _run(marks: Sequence[Mark], place: int) -> int:
    """Where the words of repeating end that start at a place, said again with nothing between."""
    end = place + 1
    while end < len(marks) and marks[end].kind is Kind.SAME and marks[place].kind in _REPEATING:
        again = marks[end - 1].kind is Kind.AGAIN and marks[end].text == "and again"
        if not again and marks[end - 1].text != marks[end].text:
            break
        end += 1
    return end


def _one_told(marks: Sequence[Mark], place: int) -> bool:
    """Whether a set is told before, and no more than one."""
    before = marks[:place]
    return any(m.kind is Kind.NUM for m in before) and sum(m.kind in _LINKS for m in before) <= 1


def _opens(marks: Sequence[Mark], place: int, record: Record, under: int | None) -> int:
    """How many sets of the exercise that is spoken of at a place were open before the message."""
    named = [m.names[0] for m in marks[:place] if m.kind is Kind.NAME and len(m.names) == 1]
    exercise = named[-1] if named else under
    return 0 if exercise is None else len(record.context(exercise).open_sets)
