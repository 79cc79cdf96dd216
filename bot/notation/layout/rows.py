"""Lines that are numbered: sets, as `1. 80x10`, `#1 80x10`, `S1: 80x10`, `1 | 80 | 10`, and exercises, `2) Rows`."""

from collections.abc import Sequence
from dataclasses import dataclass, replace

from bot.notation.bounds import MOST_SETS
from bot.notation.kinds import Kind
from bot.notation.layout.lines import Line, has_number, with_marks, word
from bot.notation.tokens import Mark
from bot.notation.wordlist import words

_PREFIXES = frozenset(("#", "s", "set"))
_BULLETS = (Kind.STOP, Kind.CLOSE, Kind.COLON, Kind.DASH, Kind.BREAK)
_BODY = frozenset(("bw", "bodyweight", "body", "same", "ditto"))
_LINKS = frozenset(("x", "for", "at", "@", "*"))
_FEW = 2
"""Rows that are a list, and the marks that lead one of them with a word: `set 1`, `a 1`."""
_LEAST = 3
"""Rows of one number each that are taken as numbered without a sign behind their number."""


@dataclass(frozen=True, slots=True)
class Row:
    """A line that may be a numbered set: its number, what is told of the set, and whether a sign marks the number."""

    number: Mark
    told: tuple[Mark, ...]
    marked: bool


def with_plain_names(lines: Sequence[Line]) -> list[Line]:
    """The lines without the numbers of the exercises that they begin with, where these count from one on, or their
    codes: `A1) Hack squat`, `B2 rdl`."""
    coded = [_code_of_name(line) for line in lines]
    if sum(code == _FEW for code in coded) == 1:
        coded = [0 if code == _FEW else code for code in coded]
    if any(coded):
        return [with_marks(line, line.marks[code:]) for line, code in zip(lines, coded, strict=True)]
    numbered = {i: number for i, line in enumerate(lines) if (number := _number_of_name(line)) is not None}
    numbered |= _numbers_before_sets(lines) if numbered else {}
    numbered = dict(sorted(numbered.items()))
    if len(numbered) < _FEW or list(numbered.values()) != list(range(1, len(numbered) + 1)):
        numbered = {i: number for i, number in numbered.items() if _heads_sets(lines, i)}
    return [
        with_marks(line, line.marks[_number_end(line) :]) if i in numbered else line for i, line in enumerate(lines)
    ]


def _number_of_name(line: Line) -> int | None:
    """The number of `2) Rows`; none where the line does not begin so."""
    end = _number_end(line)
    if len(line.marks) <= end:
        return None
    number, said = line.marks[0], line.marks[end]
    named = said.kind is Kind.WORD and said.text not in _BODY | _LINKS | _PREFIXES | _NO_NAMES and not said.tight
    whole = number.kind is Kind.NUM and number.value is not None and number.value == int(number.value)
    return int(number.value) if named and whole and number.value is not None else None


def _numbers_before_sets(lines: Sequence[Line]) -> dict[int, int]:
    """The numbers of lines that tell sets before they name their exercise: the 2 of `2. 3x8 rows at 60`.

    None unless all the numbered lines count from one on, each with a sign behind its number.
    """
    marked = {i: line for i, line in enumerate(lines) if _is_marked(line)}
    numbers = {i: int(line.marks[0].value or 0) for i, line in marked.items()}
    if list(numbers.values()) != list(range(1, len(numbers) + 1)):
        return {}
    return {i: numbers[i] for i, line in marked.items() if any(_may_name(m) for m in line.marks[_FEW:])}


def _is_marked(line: Line) -> bool:
    kinds = [m.kind for m in line.marks[:_FEW]]
    return kinds in ([Kind.NUM, Kind.STOP], [Kind.NUM, Kind.CLOSE]) and line.marks[0].text.isdecimal()


def _may_name(mark: Mark) -> bool:
    """Whether a word may be an exercise's name, or a part of one."""
    plain = mark.text not in _NO_NAMES | _BODY | _LINKS | _PREFIXES | _TOLD_OF_SETS
    return mark.kind is Kind.WORD and len(mark.text) > _FEW and plain


def _heads_sets(lines: Sequence[Line], place: int) -> bool:
    """Whether nothing but `2. Rows` stands on a line, and numbers on the next."""
    line, end = lines[place], _number_end(lines[place])
    below = next((one for one in lines[place + 1 : place + 4] if one.marks), None)
    alone = not any(m.kind in (Kind.NUM, Kind.CLOCK) for m in line.marks[end:])
    return alone and end == _FEW and below is not None and has_number(below)


def _number_end(line: Line) -> int:
    """Where the number of a line and the sign behind it end."""
    return 1 + (len(line.marks) > 1 and line.marks[1].kind in _BULLETS)


_NO_NAMES = frozenset(
    words(
        "sets rep reps kg kgs lb lbs kilos min mins minutes sec secs hour hours more good hard easy drop warm warmup",
        "work each per left right of to metres meters m and or",
    )
)
"""Words behind a number at a line's start that is no exercise's."""


_TOLD_OF_SETS = frozenset(
    words(
        "then for with and the got did was were felt each side arm leg hand reps rep rpe rir fail failed failure",
        "easy hard heavy light slow fast good bad ok okay fine left right last first one two paused pause grindy",
        "again same missed stopped short could couldnt tough smooth clean ugly lol lbs kilos pounds secs seconds",
    )
)
"""Words of a set's row that name nothing."""


def _code_of_name(line: Line) -> int:
    """How many marks of a line are the code of its exercise."""
    kinds = [m.kind for m in line.marks[: len(("a", "1", ")"))]]
    if kinds[:_FEW] == [Kind.WORD, Kind.NUM] and line.marks[0].text in _ORDINARY and kinds[-1] in _BULLETS:
        return len(kinds)
    lettered = kinds[:_FEW] == [Kind.WORD, Kind.NUM] and line.marks[0].text in _LETTERS and line.marks[1].tight
    bullet = len(kinds) > _FEW and kinds[_FEW] in _BULLETS
    at = _FEW + bullet
    named = len(line.marks) > at and line.marks[at].kind is Kind.WORD and line.marks[at].text not in _BODY | _LINKS
    return at if lettered and named else 0


_ORDINARY = frozenset(("exercise", "ex", "movement", "lift", "station"))
_LETTERS = frozenset("abcdefg")


def numbered_within(marks: Sequence[Mark]) -> list[Mark]:
    """`(1) 80x10 (2) 80x9` as `1) 80x10 2) 80x9`, and `S1-80x10` as `S1: 80x10`, `set 2 80 9` as `set 2: 80 9`."""
    marks = [
        replace(m, kind=Kind.COLON)
        if m.kind is Kind.DASH and i > 1 and marks[i - 1].kind is Kind.NUM and marks[i - 2].text in _PREFIXES
        else m
        for i, m in enumerate(marks)
    ]
    told = [
        i
        for i in range(len(marks) - 2)
        if marks[i].text == "set" and marks[i + 1].kind is Kind.NUM and marks[i + 2].kind is Kind.NUM
    ]
    for i in reversed(told):
        marks.insert(i + 2, replace(word(":", marks[i + 2]), kind=Kind.COLON))
    opens = [
        i
        for i in range(len(marks) - 3)
        if [m.kind for m in marks[i : i + 3]] == [Kind.OPEN, Kind.NUM, Kind.CLOSE]
        and (marks[i + 3].kind is Kind.NUM or marks[i + 3].text in _BODY)
    ]
    counted = [marks[i + 1].value for i in opens]
    if len(opens) < _FEW or counted[:_FEW] != [1, _FEW]:
        return list(marks)
    return [m for i, m in enumerate(marks) if i not in opens]


def with_rows(lines: Sequence[Line]) -> list[Line]:
    """The lines with such rows as `set 1: 80 x 10`, where they count from one on."""
    out = list(lines)
    rows = [_row_of(line) for line in lines]
    start = 0
    while start < len(lines):
        end = _run_end(lines, rows, start)
        run = [(i, row) for i, row in enumerate(rows[start:end], start) if row is not None]
        if _is_list([row for _, row in run]):
            for place, row in run:
                out[place] = with_marks(lines[place], _told(row))
        start = max(end, start + 1)
    return out


def _row_of(line: Line) -> Row | None:
    marks = [m for m in line.marks if m.kind is not Kind.FILL]
    while marks and marks[0].kind is Kind.BREAK:
        del marks[0]
    while marks and marks[-1].kind is Kind.BREAK:
        marks.pop()
    prefixed = len(marks) > 1 and marks[0].text in _PREFIXES and marks[1].kind is Kind.NUM
    at = int(prefixed)
    number = marks[at] if at < len(marks) else None
    if number is None or number.kind is not Kind.NUM or number.parts or number.value is None:
        return None
    if number.value != int(number.value) or not 1 <= number.value <= MOST_SETS:
        return None
    bullet = at + 1 < len(marks) and marks[at + 1].kind in _BULLETS
    told = marks[at + 1 + bullet :]
    if not told or not (told[0].kind in (Kind.NUM, Kind.CLOCK, Kind.PLUS, Kind.DASH) or told[0].text in _BODY):
        return None
    return Row(number, tuple(told), prefixed or bullet)


def _run_end(lines: Sequence[Line], rows: Sequence[Row | None], start: int) -> int:
    """Where the rows end that count on from the one at `start`; empty lines may stand between."""
    first = rows[start]
    if first is None:
        return start
    last, end = first.number.value or 0, start + 1
    for place in range(start + 1, len(lines)):
        row = rows[place]
        if row is None and not lines[place].marks:
            continue
        if row is None or row.number.value != last + 1:
            break
        last, end = row.number.value, place + 1
    return end


def _is_list(rows: Sequence[Row]) -> bool:
    """Whether rows are numbered, and their first numbers no loads or repetitions."""
    if len(rows) < _FEW or rows[0].number.value != 1:
        return False
    if all(row.marked for row in rows):
        return True
    numbers = [sum(m.kind is Kind.NUM for m in row.told) for row in rows]
    opens = all(row.told[0].text not in _LINKS for row in rows)
    return opens and (min(numbers) >= _FEW or len(rows) >= _LEAST or all(r.told[0].text in _BODY for r in rows))


def _told(row: Row) -> list[Mark]:
    """`set 1: 80 x 10`: a bar between load and repetitions is a `x`."""
    colon = replace(word(":", row.told[0]), kind=Kind.COLON)
    told = [word("x", m) if m.kind is Kind.BREAK else m for m in row.told]
    plain = len(told) == _FEW and all(m.kind is Kind.NUM or m.text in _BODY for m in told)
    if plain:
        told = [told[0], word("x", told[1]), told[1]]
    return [word("set", row.number), row.number, colon, *told]
