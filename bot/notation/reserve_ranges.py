"""What was left in reserve as a range, in a clause of its own: `couldve done another 2-3 easy`, `1 or 2 more in there`.

The clause becomes the middle of the range, `left`. A range of what is to come (`2 or 3 more sets to go`, `2-3 min
rest`, `2 more of these to get through`) is of no set. Common wordings; no source.
"""

from collections.abc import Sequence
from dataclasses import replace
from decimal import Decimal

from bot.notation.bounds import MOST_LEFT
from bot.notation.clauses import kind_at, text_at
from bot.notation.kinds import Kind
from bot.notation.masking import masked
from bot.notation.tokens import Mark
from bot.notation.wordlist import words

_JOINS = (Kind.DASH, Kind.TO, Kind.OR, Kind.SLASH)
_MAYBE = frozenset(words("maybe possibly perhaps"))
_LEADING = frozenset(words(
    "w with and but had have has having i id ive reckon think guess there theres was were is still about around like "
    "maybe prob probs probably perhaps possibly easily easy at least a another the left kept were honestly deffo "
    "definitely surely tbh could would might of couldve wouldve mightve"
))  # fmt: skip
_BEHIND = frozenset(words(
    "more reps rep ones in there me it the tank easy easily easyly i reckon id say think guess maybe for sure to spare "
    "left if pushed had have would wouldve gone come no problem probably prob def deffo extra tbh ngl at least of "
    "them out my legs arms lol clean good solid still possible remaining"
))  # fmt: skip
_OF_RESERVE = frozenset(words("there me spare easy easily left extra possible gone come remaining pushed tank problem"))
_SQUEEZED = frozenset(words("squeezed squeeze ground banged eked pushed forced done got managed had made repped hit"))
_PLACES = ((Kind.MINUTES, Kind.SECONDS), (Kind.SET, Kind.SETS))
_AHEAD = frozenset(words("to go come do left rest remaining yet get through coming and then finished home free"))
_ENDS = (None, Kind.COMMA, Kind.STOP, Kind.LINE, Kind.BREAK, Kind.CLOSE, Kind.QUERY)
_WORDS = (Kind.FILL, Kind.WORD, Kind.WITH, Kind.ANOTHER, Kind.COULD, Kind.MORE, Kind.TANK, Kind.LEFT, Kind.REPS,
          Kind.WAS, Kind.GAP, Kind.TO, Kind.AT, Kind.FOR, Kind.ALL)  # fmt: skip
_OF_THESE = ("of these", "of those", "of them", "of the same", "of the", "like that", "like these")
NEEDS = frozenset((*_JOINS, *_MAYBE, "these", "those"))


def with_reserve_ranges(marks: Sequence[Mark]) -> Sequence[Mark]:
    """The marks with such clauses put so."""
    if sum(m.kind is Kind.NUM for m in marks) < _FEWEST:
        return marks
    out = list(marks)
    place = 1
    while place < len(out):
        if out[place].kind is Kind.ANOTHER and out[place].text == "one more":
            one = _ahead(out, place, place)
            out = out if one is None else masked(out, range(*one))
        if out[place].kind is Kind.ANOTHER:
            out = _with_one(out, place)
        elif out[place].kind is Kind.NUM:
            reach = _range_at(out, place)
            told = None if reach is None else _reserve(out, place, reach)
            if told is not None:
                start, end, middle = told
                number = replace(out[place], value=middle, parts=(), start=out[start].start)
                left = Mark(Kind.TANK, "left", out[end - 1].start, out[end - 1].end)
                led = kind_at(out, start - 1) is not Kind.NUM and kind_at(out, start - 1) is not Kind.REPS
                apart = [] if led else [replace(left, kind=Kind.COMMA, text=",")]
                out[start:end] = [*apart, number, left]
                place = start + len(apart) + 1
                continue
            ahead = _ahead(out, place, place if reach is None else reach)
            if ahead is not None:
                out = masked(out, range(*ahead))
                place = ahead[1]
                continue
        place += 1
    return out


_FEWEST = 2
"""A set and what was left tell so many numbers."""


def _with_one(marks: list[Mark], place: int) -> list[Mark]:
    """`another one or two in me`: the one as the number it is, where a range in reserve starts with it."""
    mark = marks[place]
    if mark.text not in ("another one", "one more", "another rep") or kind_at(marks, place + 2) is not Kind.NUM:
        return marks
    one = Mark(Kind.NUM, "one", mark.end, mark.end, False, Decimal(1))
    out = [*marks[:place], replace(mark, text="another"), one, *marks[place + 1 :]]
    reach = _range_at(out, place + 1)
    return marks if reach is None or _reserve(out, place + 1, reach) is None else out


def _range_at(marks: Sequence[Mark], place: int) -> int | None:
    """Where the second number of a range of few stands."""
    second = place + 2
    joined = kind_at(marks, place + 1) in _JOINS or text_at(marks, place + 1) in _MAYBE
    if not joined and text_at(marks, place + 1) in ("one", "rep", "reps") and text_at(marks, place + 2) in _MAYBE:
        joined, second = True, place + 3
    low, high = marks[place].value, marks[second].value if kind_at(marks, second) is Kind.NUM else None
    near = joined and low is not None and high is not None and low < high <= low + 2 and high <= MOST_LEFT
    return second if near and low is not None and low == int(low) else None


def _reserve(marks: Sequence[Mark], place: int, second: int) -> tuple[int, int, Decimal] | None:
    """Where a clause around a range starts and ends that tells what was left, and its middle."""
    start, end = place, second + 1
    while start > 0 and marks[start - 1].kind in _WORDS and _is_leading(marks[start - 1]):
        start -= 1
    while end < len(marks) and marks[end].kind in _WORDS and set(marks[end].text.split()) <= _BEHIND:
        end += 1
    if start == 0 or kind_at(marks, end) not in (*_ENDS, Kind.AND, Kind.THEN) or kind_at(marks, start - 1) in _LINKS:
        return None
    if not any(m.kind is Kind.NUM and (m.value or 0) > 0 for m in marks[:start]):
        return None
    led, behind = list(marks[start:place]), list(marks[second + 1 : end])
    said = {w for m in behind for w in m.text.split()}
    verbs = {w for m in led if m.kind is Kind.COULD for w in m.text.split()}
    hoped = bool(verbs & {"could", "couldve", "would", "wouldve", "might", "mightve"})
    another = any(m.kind is Kind.ANOTHER for m in led)
    had = bool(verbs) or any("had" in m.text.split() for m in led)
    reserve = hoped and bool(verbs & _SQUEEZED or another or said)
    reserve = reserve or ("more" in said and (had or bool(said & _OF_RESERVE)))
    reserve = reserve or (another and (bool(said & _OF_RESERVE) or had))
    if not reserve or any(m.kind is Kind.TANK and not (led or "more" in m.text.split()) for m in behind):
        return None
    low, high = marks[place].value or Decimal(0), marks[second].value or Decimal(0)
    return start, end, (low + high).quantize(Decimal(1)) / 2


_LINKS = (Kind.X, Kind.FOR, Kind.AT, Kind.DASH, Kind.SLASH, Kind.PLUS)


def _is_leading(mark: Mark) -> bool:
    if mark.kind is Kind.COULD:
        return True
    return mark.kind is not Kind.REPS and bool(mark.text) and set(mark.text.split()) <= _LEADING


def _ahead(marks: Sequence[Mark], place: int, last: int) -> tuple[int, int] | None:
    """The places of a count of what is still to come, which starts here: `2 or 3 more sets to go`, `2-3 min rest`."""
    if kind_at(marks, place - 1) in _LINKS:
        return None
    at = last + 1
    more = Kind.ANOTHER in (marks[place].kind, kind_at(marks, place - 1)) or kind_at(marks, at) is Kind.MORE
    at += kind_at(marks, at) is Kind.MORE
    if last > place and kind_at(marks, at) in _PLACES[0] and kind_at(marks, place + 1) is not Kind.SLASH:
        return place, at + 1
    said = [w for m in marks[at : at + 3] for w in m.text.split()]
    these = said[:2] in (["of", "these"], ["of", "those"])
    if not more or not (these or (last > place and kind_at(marks, at) in _PLACES[1])):
        return None
    end = at
    while end < len(marks) and marks[end].kind not in _ENDS:
        end += 1
    rest = [w for m in marks[at:end] for w in m.text.split()]
    done = any(m.kind in (Kind.DONE, Kind.NUM) for m in marks[max(0, place - 2) : place] if m.kind is not Kind.NUM)
    ahead = bool(set(rest[1 + these :]) & _AHEAD) or (last > place and "me" in rest)
    return (place - (kind_at(marks, place - 1) is Kind.ANOTHER), end) if ahead and not done else None
