"""Tables under a heading that names their columns: `set kg reps`, `| Exercise | Sets | Reps | Weight |`."""

from collections.abc import Sequence
from dataclasses import replace
from decimal import Decimal
from enum import Enum, auto

from bot.notation.kinds import Kind
from bot.notation.layout.lines import Line, with_marks, word
from bot.notation.tokens import Mark


class Column(Enum):
    """What the numbers below a heading are."""

    SET = auto()
    LOAD = auto()
    REPS = auto()
    RPE = auto()
    RIR = auto()
    SECONDS = auto()
    METRES = auto()
    LEFT = auto()
    RIGHT = auto()
    NAME = auto()
    NOTE = auto()


_WORDS: dict[Column, tuple[str, ...]] = {
    Column.SET: ("set", "sets", "#", "no", "nr", "round"),
    Column.LOAD: ("kg", "kgs", "lb", "lbs", "kilos", "pounds", "weight", "wt", "load", "weights"),
    Column.REPS: ("reps", "rep", "repetitions"),
    Column.RPE: ("rpe",),
    Column.RIR: ("rir",),
    Column.SECONDS: ("sec", "secs", "seconds", "time", "hold"),
    Column.METRES: ("metres", "meters", "distance"),
    Column.LEFT: ("l", "left"),
    Column.RIGHT: ("r", "right"),
    Column.NAME: ("exercise", "lift", "movement", "exercises", "name"),
    Column.NOTE: ("notes", "note", "comments", "comment", "feel"),
}
_COLUMNS = {said: column for column, words in _WORDS.items() for said in words}
_UNITS = frozenset(("kg", "kgs", "lb", "lbs", "kilos", "pounds"))
_BETWEEN = (Kind.BREAK, Kind.COMMA, Kind.SLASH, Kind.DASH, Kind.OPEN, Kind.CLOSE, Kind.COLON, Kind.X, Kind.FILL)
_RULE = (Kind.BREAK, Kind.DASH, Kind.COLON, Kind.PLUS, Kind.FILL)
_COUNTED = (Column.REPS, Column.SECONDS, Column.METRES, Column.LEFT)
_BODY = frozenset(("bw", "bodyweight", "body"))
_LISTED = (Kind.COMMA, Kind.SLASH)
_SIGNS = (Kind.DASH, Kind.PLUS)
_LEAST = 2
"""Columns of a table, and the bars that two of them have around them."""
_NEAR = 12
"""Lines below a heading among which its first row stands."""
_PAIR = len(("9", "/", "9"))
"""Marks of one count for each side."""
Cells = list[list[Mark]]


def with_columns(lines: Sequence[Line]) -> list[Line]:
    """The lines with the rows of such tables as sets are told, and without their headings."""
    out: list[Line] = []
    columns: list[Column] = []
    names: list[str] = []
    for place, line in enumerate(lines):
        headed = _columns_of(line)
        if _numbers_sets(line) and place + 1 < len(lines) and lines[place + 1].marks:
            out.append(with_marks(line, ()))
        elif headed and _heads(headed, lines[place + 1 : place + _NEAR]):
            columns = headed
            out.append(with_marks(line, ()))
        elif columns and line.marks and all(m.kind in _RULE for m in line.marks):
            out.append(with_marks(line, ()))
        else:
            cells = _cells(line, columns) if columns else None
            below = _cells(lines[place + 1], columns) if columns and place + 1 < len(lines) else None
            before, names = names, _name(columns, cells)
            again, goes_on = before == names, names == _name(columns, below)
            told = None if cells is None else _told(columns, cells, again=again, numbered=again or goes_on)
            out.append(line if told is None else with_marks(line, told))
    return out


def _numbers_sets(line: Line) -> bool:
    """Whether a line only numbers the columns below it as sets: `set1  set2  set3`, `exercise | set 1 | set 2`."""
    said = [m for m in line.marks if m.kind not in _BETWEEN and _COLUMNS.get(m.text) is not Column.NAME]
    numbers = [m.value for m in said[1::2]]
    named = all(m.text in ("set", "s", "round") for m in said[::2]) and len(said) == 2 * len(numbers)
    return named and len(numbers) >= _LEAST and numbers == list(range(1, len(numbers) + 1))


def _name(columns: Sequence[Column], cells: Cells | None) -> list[str]:
    """What a row names."""
    row = {} if cells is None else dict(zip(columns, cells, strict=False))
    return [m.text for m in row.get(Column.NAME, ())]


def _columns_of(line: Line) -> list[Column]:
    """What the columns are that a line names; none where it says anything else."""
    out: list[Column] = []
    for place, mark in enumerate(line.marks):
        column = _COLUMNS.get(mark.text)
        bracketed = place > 0 and line.marks[place - 1].kind is Kind.OPEN
        if column is None and mark.kind not in _BETWEEN and mark.text != "x":
            return []
        if column is not None and not (bracketed and mark.text in _UNITS):
            out.append(column)
    whole = len(out) >= _LEAST and len(set(out)) == len(out)
    paired = (Column.LEFT in out) is (Column.RIGHT in out)
    return out if whole and paired and any(c in _COUNTED for c in out) else []


def _heads(columns: Sequence[Column], lines: Sequence[Line]) -> bool:
    """Whether a row of the table stands below, with nothing between but names, rules and empty lines."""
    for line in lines:
        if line.marks and any(m.kind in (Kind.NUM, Kind.CLOCK, Kind.BAD) for m in line.marks):
            return _cells(line, columns) is not None
    return False


def _cells(line: Line, columns: Sequence[Column]) -> Cells | None:
    """What stands in each column of a row; none where it is no row of the table."""
    marks = list(line.marks)
    while marks and marks[0].kind is Kind.BREAK:
        del marks[0]
    while marks and marks[-1].kind is Kind.BREAK:
        marks.pop()
    if any(m.kind is Kind.BREAK for m in marks):
        cells: Cells = [[]]
        for mark in marks:
            if mark.kind is Kind.BREAK:
                cells.append([])
            else:
                cells[-1].append(mark)
    else:
        cells = _columns_apart(marks, named=columns[0] is Column.NAME)
    wide = len(columns) - (columns[-1] is Column.NOTE)
    if not wide <= len(cells) <= len(columns):
        return None
    plain = all(_fits(column, cell) for column, cell in zip(columns, cells, strict=False))
    return cells if plain else None


def _columns_apart(marks: Sequence[Mark], *, named: bool) -> Cells:
    """The columns of a row that nothing but spaces or commas part: each number with the words behind it."""
    cells: Cells = []
    for mark in marks:
        numeric = mark.kind in (Kind.NUM, Kind.CLOCK) or mark.text in _BODY
        signed = bool(cells) and cells[-1][-1].kind in (Kind.DASH, Kind.PLUS) and mark.tight
        if mark.kind is Kind.NUM and mark.parts and (mark.value is None or named):
            cells += [[replace(mark, value=part, parts=())] for part in mark.parts]
        elif (numeric and not signed) or not cells or (mark.kind in (Kind.DASH, Kind.PLUS) and not mark.tight):
            cells.append([mark])
        elif mark.kind is not Kind.COMMA and mark.text not in ("x", "*"):
            cells[-1].append(mark)
    return cells if not named or (cells and cells[0][0].kind is Kind.WORD) else []


def _fits(column: Column, cell: Sequence[Mark]) -> bool:
    """Whether a cell may stand in a column."""
    numbers = [m for m in cell if m.kind in (Kind.NUM, Kind.CLOCK)]
    match column:
        case Column.NOTE:
            return True
        case Column.NAME:
            return not numbers
        case Column.SET:
            return len(numbers) == 1 and len(cell) == 1
        case Column.LOAD:
            bare = not numbers or (
                len(numbers) == 1 and all(m.text in _UNITS or m.kind in _SIGNS for m in cell if m is not numbers[0])
            )
            return bare and (bool(numbers) or not cell or cell[0].text in _BODY or cell[0].kind is Kind.DASH)
        case Column.LEFT | Column.RIGHT:
            return len(numbers) == len(cell) == 1
        case Column.REPS | Column.SECONDS | Column.METRES:
            return bool(numbers) and all(m in numbers or m.kind in _LISTED or m.kind is Kind.WORD for m in cell)
        case Column.RPE | Column.RIR:
            return len(numbers) <= 1


def _told(columns: Sequence[Column], cells: Cells, *, again: bool, numbered: bool) -> list[Mark]:
    """A row as a set is told: `set 2: 80 kg x 9 rpe 8`; with a name that stands in no row beside it, the sets that it
    counts."""
    row = dict(zip(columns, cells, strict=False))
    near = next(m for cell in cells for m in cell)
    out = [] if again else list(row.get(Column.NAME, ()))
    numbered = numbered or Column.NAME not in row
    number, counts = row.get(Column.SET), next(row[c] for c in columns if c in _COUNTED)
    if out and out[-1].kind is not Kind.COLON and not (number and numbered):
        out.append(replace(word(":", near), kind=Kind.COLON))
    sets: list[Mark] = []
    if number and numbered:
        out += [word("set", number[0]), *number, replace(word(":", number[0]), kind=Kind.COLON)]
    elif number and len(counts) == 1 and number[0].value != Decimal(1):
        sets = [*number, word("x", counts[0])]
    load = row.get(Column.LOAD, [])
    load = [] if [m.kind for m in load] == [Kind.DASH] else load
    if load:
        out += [*load, word("x", counts[0])] if not sets else load
    out += [
        *sets,
        *(replace(m, kind=Kind.COMMA) if m.kind is Kind.SLASH and len(counts) > _PAIR else m for m in counts),
    ]
    if Column.RIGHT in row:
        out[-1:] = [word("left", counts[0]), *counts, word("right", row[Column.RIGHT][0]), *row[Column.RIGHT]]
    unit = "sec" if Column.SECONDS in row else "reps" if not load and Column.REPS in row else ""
    if unit and counts[-1].kind is Kind.NUM:
        out.append(word(unit, counts[-1]))
    for column, said in ((Column.RPE, "rpe"), (Column.RIR, "rir")):
        rated = [m for m in row.get(column, ()) if m.kind is Kind.NUM]
        out += [word(said, rated[0]), *rated] if rated else []
    note = row.get(Column.NOTE)
    return [*out, replace(word(",", note[0]), kind=Kind.COMMA), *note] if note else out


def with_bars(lines: Sequence[Line]) -> list[Line]:
    """`Hack squat | 80 | 10, 9` under no heading as `Hack squat: 80: 10, 9`."""
    return [with_marks(line, _without_bars(line.marks)) for line in lines]


def _without_bars(marks: Sequence[Mark]) -> list[Mark]:
    inner = list(marks)
    while inner and inner[0].kind is Kind.BREAK:
        del inner[0]
    while inner and inner[-1].kind is Kind.BREAK:
        inner.pop()
    bars = [i for i, m in enumerate(inner) if m.kind is Kind.BREAK]
    if len(bars) != _LEAST or any(m.kind is not Kind.WORD for m in inner[: bars[0]]) or not bars[0]:
        return list(marks)
    load, counts = inner[bars[0] + 1 : bars[1]], inner[bars[1] + 1 :]
    if not load or not counts or not (_fits(Column.LOAD, load) and _fits(Column.REPS, counts)):
        return list(marks)
    return [replace(m, kind=Kind.COLON) if i in bars else m for i, m in enumerate(inner)]
