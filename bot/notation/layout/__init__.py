"""How a report is laid out on its lines: columns, numbered rows, headings, sums. Each is put as it would be told.

`set kg reps`, `1 80 10`, `2 80 9` becomes `set 1: 80 x 10`, `set 2: 80 x 9`; `## Hack squat (3 sets)` the name alone.
"""

from collections.abc import Sequence

from bot.notation.kinds import Kind
from bot.notation.layout.columns import with_bars, with_columns
from bot.notation.layout.lines import lines_of, marks_of
from bot.notation.layout.rows import numbered_within, with_plain_names, with_rows
from bot.notation.layout.signs import with_number_signs
from bot.notation.layout.sums import without_sums, without_times
from bot.notation.layout.titles import with_plain_titles
from bot.notation.tokens import Mark


def laid_out(typed: Sequence[Mark]) -> list[Mark]:
    """The marks as typed, with what the layout says put into words; of one line, the numbers of its sets."""
    kinds = {m.kind for m in typed}
    if Kind.NUM not in kinds:
        return list(typed)
    if Kind.LINE not in kinds:
        return with_number_signs(numbered_within(typed))
    lines = without_sums(with_columns(lines_of(numbered_within(typed))))
    told = marks_of(without_times(with_rows(with_plain_names(with_bars(with_plain_titles(lines))))))
    return with_number_signs(told)
