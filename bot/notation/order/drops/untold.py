"""Drops not written, or whose load is not told: `forgot the drop, it was 25 for 8`, `dropped and got 12 more`."""

from collections.abc import Sequence
from dataclasses import replace

from bot.notation.clauses import kind_at
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark
from bot.notation.wordlist import words


def forgotten(marks: Sequence[Mark], at: int) -> int:
    """Where the numbers of a drop not told before start: `forgot to write the drop, it was 25 for 8`; else 0."""
    end = next((i for i in range(at + 1, min(len(marks), at + _FAR)) if marks[i].kind in (Kind.NUM, Kind.BODY)), 0)
    start = next((i + 1 for i in range(at - 1, -1, -1) if marks[i].kind in ENDS or at - i > _FAR), 0)
    after = marks[end : end + _FAR] if end else []
    stop = next((i for i, m in enumerate(after) if m.kind in ENDS), len(after))
    said = {w for m in (*marks[start:at], *marks[at + 1 : end], *after[:stop]) for w in m.text.split()}
    plain = all(m.kind in _TELLING for m in marks[at + 1 : end])
    return end if plain and said & _UNTOLD and not any(m.kind is Kind.NUM for m in marks[start:at]) else 0


ENDS = (Kind.STOP, Kind.LINE, Kind.QUERY)
_FAR = 10
"""Marks between a drop, the words that it was not told, and its numbers."""
_UNTOLD = frozenset(words("forgot forget forgotten missed missing didnt write wrote mention omitted unlogged"))
"""Words of what was not told."""
_TELLING = (Kind.FILL, Kind.WORD, Kind.COMMA, Kind.COLON, Kind.WAS, Kind.NOT, Kind.TO, Kind.DASH, Kind.WITH, Kind.AT,
            Kind.FOR, Kind.SET, Kind.AND, Kind.THEN, Kind.WROTE, Kind.STOP, Kind.SORRY, Kind.NAME, Kind.LASTSET,
            Kind.LASTREP)  # fmt: skip


def went_on(out: list[Mark]) -> list[Mark]:
    """`90x9, dropped the weight and got 12 more`, `dropped, not sure what to, 12`: a drop whose load is not told."""
    for place, mark in enumerate(out):
        lighter = mark.kind is Kind.DROP and bool(set(mark.text.split()) & _LIGHTER)
        lighter = lighter and not (mark.text.endswith("to") and kind_at(out, place + 1) in (Kind.NUM, Kind.BODY))
        lighter = lighter or (mark.text in _LIGHTER and mark.kind in (Kind.WORD, Kind.FILL))
        opens = mark.kind is Kind.DROP and all(m.kind in _OPENING for m in out[:place])
        if not lighter or not (opens or any(m.kind is Kind.NUM for m in out[:place])):
            continue
        count = place + 1
        while count < len(out) and count - place < _FAR and _is_about_weight(out[count]):
            count += 1
        between = out[place + 1 : count]
        more = kind_at(out, count + 1) is Kind.MORE or any(m.kind is Kind.ANOTHER for m in between)
        end = count + 1 + (kind_at(out, count + 1) in (Kind.MORE, Kind.REPS))
        end += kind_at(out, end) is Kind.REPS
        known = mark.kind is Kind.DROP and (more or bool({w for m in between for w in m.text.split()} & _UNKNOWN))
        told = known or (more and bool({w for m in between for w in m.text.split()} & _WEIGHT))
        ends = kind_at(out, end) in (None, Kind.COMMA, Kind.CLOSE, Kind.RPE, Kind.RIR, Kind.EMPTY, *ENDS)
        if told and kind_at(out, count) is Kind.NUM and ends:
            drop = replace(mark, kind=Kind.DROP, text="drop")
            parted = [replace(mark, kind=Kind.COMMA, text=",", end=mark.start)]
            led = [] if kind_at(out, place - 1) in (Kind.COMMA, *ENDS) else parted
            gone = [replace(m, kind=Kind.FILL) for m in between]
            return [*out[:place], *led, *gone, drop, out[count], *out[end:]]
    return out


_OPENING = (Kind.FILL, Kind.NAME, Kind.COMMA, Kind.AND, Kind.THEN, Kind.COLON)


def _is_about_weight(mark: Mark) -> bool:
    """A word between a drop and its repetitions: of the weight, of not knowing it, of having gone on."""
    return mark.kind in (Kind.AND, Kind.COMMA, Kind.ANOTHER, Kind.FILL, Kind.THEN) or (
        set(mark.text.split()) <= _WEIGHT | _UNKNOWN and mark.kind is not Kind.NUM
    )


_LIGHTER = frozenset(words("dropped drop lowered reduced lightened moved stripped"))
_WEIGHT = frozenset(words("weight load pin it down off bit some a the few plates plate little way stack light lighter"))
_UNKNOWN = frozenset(words(
    "not sure what to how much something idea no know dont unsure clue forgot low where half roughly about like god "
    "knows who dunno whatever around did got for but"
))  # fmt: skip
