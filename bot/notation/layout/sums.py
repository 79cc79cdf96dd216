"""Lines of a report that hold no set: `Session 4 of 12` above it, `Total volume: 6540 kg`, `9 sets, 6,540 kg` below."""

from collections.abc import Sequence
from decimal import Decimal

from bot.notation.bounds import SEVERAL
from bot.notation.kinds import Kind
from bot.notation.layout.lines import Line, has_number, with_marks
from bot.notation.tokens import Mark
from bot.notation.wordlist import words

_SUMS = frozenset(
    words(
        "total totals volume vol tonnage duration length elapsed calories kcal cals cal pr prs pb pbs hr bpm",
        "heartrate workout session sessions block phase programme program bodyweight bw weigh scale steps",
    )
)
"""Words that say of a line's numbers that they are of the whole session, or of the client."""
_WITH = frozenset(
    words(
        "of the a an my new total heart rate avg average max active burned burnt time kg kgs lb lbs k sets set",
        "reps rep exercises lifts exercise min mins minutes h hr hrs hours m s sec secs no number nr week day w d",
        "weight lifted today done and moved all up weighed this",
    )
)


def without_times(lines: Sequence[Line]) -> list[Line]:
    """The lines without the times of day at their sets, `80 x 10 (17:41)`, and without lines of a rest, `Rest: 90s`."""
    timed = [i for i, line in enumerate(lines) if _time_at(line) is not None]
    out = list(lines)
    if len(timed) < SEVERAL:
        return out
    for i in timed:
        start, end = _time_at(lines[i]) or (0, 0)
        out[i] = with_marks(lines[i], [*lines[i].marks[:start], *lines[i].marks[end:]])
    return out


_BODY = ("bw", "bodyweight")


def _time_at(line: Line) -> tuple[int, int] | None:
    """Where a time of day stands at the start or the end of a set's line."""
    marks = line.marks
    clocks = [i for i, m in enumerate(marks) if m.kind is Kind.CLOCK]
    if len(clocks) != 1 or sum(m.kind is Kind.NUM or m.text in _BODY for m in marks) < SEVERAL:
        return None
    start, end = clocks[0], clocks[0] + 1
    if start and marks[start - 1].kind is Kind.OPEN and end < len(marks) and marks[end].kind is Kind.CLOSE:
        start, end = start - 1, end + 1
    while end < len(marks) and not start and marks[end].kind in (Kind.DASH, Kind.COLON):
        end += 1
    return (start, end) if not start or end == len(marks) else None


def without_sums(lines: Sequence[Line]) -> list[Line]:
    """The lines with the numbers of such lines left out, above the sets and below them."""
    sets = [i for i, line in enumerate(lines) if has_number(line) and not _is_sum(line)]
    if not sets:
        return list(lines)
    return [
        with_marks(line, [m for m in line.marks if m.kind is Kind.FILL])
        if _is_sum(line) and not sets[0] < place < sets[-1]
        else line
        for place, line in enumerate(lines)
    ]


def _is_sum(line: Line) -> bool:
    """Whether a line holds nothing but such words and their numbers, or the codes of weeks and days."""
    if not has_number(line):
        return False
    typed = [m.text for m in line.marks if m.kind is Kind.WORD]
    said = set(typed)
    if not typed or not said <= _SUMS | _WITH or any(_is_pair(line.marks, i) for i in range(len(line.marks))):
        return False
    numbers = [max(m.parts or (m.value or Decimal(0),)) for m in line.marks if m.kind in (Kind.NUM, Kind.BAD)]
    big = any(m.kind is Kind.BAD for m in line.marks) or max(numbers, default=Decimal(0)) >= _OF_SESSION
    timed = bool(said & _MINUTES) and not said & _LASTED
    sure = bool(said & (_SUMS - _DOUBTFUL)) and not timed
    sure = sure or (said <= _RECORDS and (numbers == [1] or bool(said & {"prs", "pbs"})))
    total = bool(said & _TOTALS) and (big or (len(numbers) == 1 and (typed[0] in _TOTALS or "sets" in said)))
    weighed = typed[0] in _BODY and len(numbers) == 1 and numbers[0] >= _LIGHTEST
    coded = typed[0] in ("w", "wk", "week") and said <= {"w", "wk", "week", "d", "day"}
    counted = "sets" in said and bool(said & {"exercises", "lifts"})
    return sure or total or weighed or coded or counted


_TOTALS = frozenset(("total", "totals"))
_RECORDS = frozenset(("pr", "prs", "pb", "pbs", "new"))
_DOUBTFUL = _TOTALS | _RECORDS | set(_BODY) | {"steps"}
_MINUTES = frozenset(("min", "mins", "minutes", "h", "hr", "hrs", "hours"))
_LASTED = frozenset(("duration", "length", "elapsed", "time", "heart", "total"))
"""Words of a time that is over: `25 min session today` may be what there is of it."""
_OF_SESSION = 500
"""A number that is of no set."""
_LIGHTEST = 40
"""A client weighs more, in kg (common practice, no source); fewer may be repetitions at body weight."""


def _is_pair(marks: Sequence[Mark], place: int) -> bool:
    """A number with an `x` or an `@` behind it."""
    return marks[place].text in ("x", "*", "@")
