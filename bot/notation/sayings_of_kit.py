"""Numbers and names of the kit, and signs, that tell no sets: `a queue for one cable`, `bc the machine was broken`.

Each finds the places of such words from one on. Common usage, no source.
"""

from collections.abc import Sequence

from bot.notation.clauses import EDGES, kind_at, text_at
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark
from bot.notation.wordlist import words

NOWHERE = range(0)
QUEUED = frozenset(words("queue queued queueing line wait waiting waited competing fighting"))


def one_of_kit(marks: Sequence[Mark], place: int) -> range:
    """The `one` of `a queue for one cable`, and `one leg at a time`, `snapped in two`."""
    number = kind_at(marks, place) is Kind.NUM and marks[place].value in (1, 2)
    before = [text_at(marks, i) for i in range(place - 3, place)]
    if number and before[-1] == "for" and QUEUED & set(before) and kind_at(marks, place + 1) is not Kind.X:
        return range(place - 1, place + 1)
    since = [kind_at(marks, place), kind_at(marks, place + 1), text_at(marks, place + 2)]
    if since == [Kind.NUM, Kind.MINUTES, "after"] and kind_at(marks, place + 3) is Kind.LASTSET:
        return range(place, place + 2)  # `out of breath twenty minutes after the last carry`
    if number and text_at(marks, place + 1) in LIMBS and text_at(marks, place + 2) == "at a":
        return range(place, place + 4)
    halved = number and before[-1] == "in" and set(before) & BROKEN and kind_at(marks, place + 1) in (None, *EDGES)
    return range(place, place + 1) if halved else NOWHERE


LIMBS = frozenset(words("leg arm side hand foot one"))
BROKEN = frozenset(words("snapped broke split broken clean tore torn cut ripped bent cracked came"))


def kit_gone(marks: Sequence[Mark], place: int) -> range:
    """`skipped pulldowns bc the machine was broken`: no exercise."""
    kit = kind_at(marks, place) is Kind.NAME and not marks[place].names and text_at(marks, place) in KIT
    was = kit and text_at(marks, place + 1).split()[-1:] in (["was"], ["is"], ["were"], ["are"], ["s"])
    return range(place, place + 1) if was and text_at(marks, place + 2) in _GONE else NOWHERE


KIT = frozenset(words("machine machines rack racks cable cables bench benches bar stack station smith"))
_GONE = frozenset(words("broken busy taken occupied out down full used knackered bust packed hogged gone missing"))


def crossed_out(marks: Sequence[Mark], place: int) -> range:
    """The cross of `flyes ❌ skipped`."""
    crossed = kind_at(marks, place) is Kind.X and kind_at(marks, place + 1) in (Kind.SKIP, Kind.SKIPPED)
    return range(place, place + 1) if crossed and kind_at(marks, place - 1) is Kind.NAME else NOWHERE


WORDS = QUEUED | LIMBS | BROKEN | KIT
"""Of which one is said where any such words are, but for the signs."""
