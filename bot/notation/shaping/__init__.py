"""Marks made ready for the grammar: each word of two meanings gets the one that its neighbours give it.

Filler words go, labels (`set 2`, `1)`) become one mark, sides stand before or after their numbers, links without two
numbers to link stand alone. What belongs to no set (masked ranges, counted things) is a `GAP`.
"""

from collections.abc import Sequence

from bot.notation.kinds import Kind
from bot.notation.shaping.bands import bands
from bot.notation.shaping.counted import counted, counts_in_words, either, parted
from bot.notation.shaping.efforts import efforts, ranges
from bot.notation.shaping.labels import labels, number_lines
from bot.notation.shaping.letters import letters
from bot.notation.shaping.links import links, signs
from bot.notation.shaping.reserve import reserved
from bot.notation.shaping.sides import sides
from bot.notation.shaping.stages import dropped, warmed
from bot.notation.tokens import Mark

__all__ = ["number_lines", "shape_marks"]


def shape_marks(marks: Sequence[Mark], two_sided: bool) -> list[Mark]:
    """The marks as the grammar takes them. `two_sided`: the session has an exercise that works each side by itself."""
    shaped = [m for m in counts_in_words(parted(marks)) if m.kind is not Kind.FILL]
    shaped = warmed(letters(bands(shaped), two_sided))
    shaped = ranges(reserved(shaped))
    shaped = labels(shaped)
    shaped = efforts(shaped, two_sided)
    shaped = sides(shaped, two_sided)
    shaped = dropped(shaped)
    shaped = counted(either(shaped))
    shaped = signs(shaped)
    return links(shaped)
