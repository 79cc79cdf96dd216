"""A reading that makes nothing of a number speaks against itself: each number of a report is a value of a set."""

from collections.abc import Iterator, Sequence

from bot.notation.answer import Span
from bot.notation.atoms import Amount, Atom, Counts, Join
from bot.notation.said import SaidSet

LOST = 4.0
"""Against each number of which nothing is made."""
_OF_SETS = (Counts.UNSAID, Counts.REPS, Counts.LOAD, Counts.S)


def lost_numbers(atoms: Sequence[Atom], sets: Sequence[SaidSet], *, takes_load: bool, per_hand: bool) -> int:
    """How many numbers of the atoms are no value of the sets. Times of rest and counts of sets may be told besides."""
    if any(said.planned for said in sets) or not sets:
        return 0
    spans = [span for said in sets for span in _spans(said)]
    lost = 0
    for place, atom in enumerate(atoms):
        if not isinstance(atom, Amount) or atom.counts not in _OF_SETS or (atom.value is None and not atom.parts):
            continue
        if not takes_load and (atom.counts in (Counts.LOAD, Counts.S) or atom.body):
            continue
        following = atoms[place + 1] if place + 1 < len(atoms) else None
        paired = per_hand and atom.value == 2 and isinstance(following, Amount) and _is_pair(following)
        covered = any(start < atom.end and atom.start < end for start, end in spans)
        lost += not (covered or paired or atom.plates)
    return lost


def _spans(said: SaidSet) -> Iterator[Span]:
    """Where the words of a set's values stand."""
    words = said.words
    values = (words.reps, words.sets, words.effort, words.side, words.number, words.stage)
    yield from (value for value in values if value is not None)
    if said.load is not None:
        yield (said.load.start, said.load.end)
    if said.same or words.reps is None:
        yield (said.start, said.end)


def _is_pair(amount: Amount) -> bool:
    """The dumbbells of `2x20 for 10`, `two 10s for 12`."""
    return amount.join is Join.X or amount.counts in (Counts.S, Counts.LOAD)
