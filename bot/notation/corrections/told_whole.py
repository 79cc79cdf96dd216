"""The sets of an exercise told anew, all of them, behind a word that takes back: `50x10 9 8, no hang on, 50x10 10 8`.

One set behind such a word puts right the set before it (`is_correction`); as many as were told take their place.
"""

from collections.abc import Sequence
from dataclasses import replace

from bot.notation.atoms.entries import read_atoms
from bot.notation.draft import Draft
from bot.notation.grammar import read_items
from bot.notation.grounds import Told
from bot.notation.kinds import Kind
from bot.notation.shaping import shape_marks
from bot.notation.tokens import Mark
from bot.notation.wordlist import words
from bot.training.report import Stage

_CUES = (Kind.SORRY, Kind.MEANT, Kind.NO, Kind.SCRAP)
_BETWEEN = (*_CUES, Kind.COMMA, Kind.COLON, Kind.STOP, Kind.LINE, Kind.DASH, Kind.GAP)
_LITTLE = frozenset(
    words("i it its that was did um uh er erm so the ok its lol make say again just haha my all those they were")
)
_OF_ONE = (Kind.LABEL, Kind.ORD, Kind.SET, Kind.LASTSET, Kind.LASTREP, Kind.NOT, Kind.WROTE, Kind.WAS, Kind.SAME,
           Kind.LEFT, Kind.RIGHT, Kind.DROP, Kind.MINI, Kind.WARMUP)  # fmt: skip
"""Kinds that say which set is meant, or that what is told is a part of one."""


def sets_anew(draft: Draft, piece: Sequence[Mark]) -> list[Mark] | None:
    """The marks of the sets told anew, those told before taken out; `None` where the piece tells no such sets."""
    start = next((i for i, m in enumerate(piece) if not _leads(m)), len(piece))
    rest = list(piece[start:])
    if not any(m.kind in _CUES for m in piece[:start]) or any(m.kind in _OF_ONE for m in rest):
        return None
    before = _told_last(draft)
    if not before:
        return None
    place = draft.record.place_of(before[0].row.exercise)
    if place is None or any(m.kind is Kind.NAME and m.names != (place,) for m in rest):
        return None
    count = _sets_in(draft, rest, before, place)
    was = len({t.row.set for t in before})
    if was > 1 and _corrects_one(rest):
        return None
    bare = not any(m.kind in (Kind.X, Kind.FOR, Kind.AT, Kind.SETS) for m in rest)
    goes_on = bare and was > 1 and count + was - 1 <= was + len(draft.record.context(place).open_sets)
    least = 1 if _counts_sets(rest) else max(2, was)
    if count < least or goes_on:
        return None
    draft.record.told = draft.record.told[: -len(before)]
    draft.record.gone += before
    return rest


def _leads(mark: Mark) -> bool:
    """Whether a mark may stand between the word that takes back and what is told anew."""
    return mark.kind in _BETWEEN or (mark.kind is Kind.FILL and set(mark.text.split()) <= _LITTLE)


def _corrects_one(rest: Sequence[Mark]) -> bool:
    """`no 5, 100x4`, `sorry 50 for 10 then 50 for 8`: the set before, and the next one."""
    one = [m.kind for m in rest[:4]] == [Kind.NUM, Kind.COMMA, Kind.NUM, Kind.X]
    return one or any(m.kind is Kind.THEN for m in rest)


def _counts_sets(rest: Sequence[Mark]) -> bool:
    """`100x5x2`, `2 sets of 5 at 100`: how many sets there were, said."""
    kinds = [m.kind for m in rest]
    return Kind.SETS in kinds or any(
        kinds[i : i + 4] == [Kind.X, Kind.NUM, Kind.X, Kind.NUM] for i in range(len(kinds))
    )


def _told_last(draft: Draft) -> list[Told]:
    """The sets that the message told last, all of one exercise and of none that was stored before."""
    told = draft.record.told
    name = told[-1].row.exercise if told else None
    start = next((i + 1 for i in range(len(told) - 1, -1, -1) if told[i].row.exercise != name), 0)
    last = told[start:]
    plain = all(t.row.stage is Stage.WORK and t.row.side is None for t in last)
    return last if plain and not any(key[0] == name for key in draft.record.replaces) else []


def _sets_in(draft: Draft, rest: Sequence[Mark], before: Sequence[Told], place: int) -> int:
    """How many sets the marks tell, beside the plan without those told before; 0 where that is in doubt."""
    record = draft.record
    context = record.context(place)
    gone = {t.row for t in before}
    context = replace(context, done=tuple(p for p in context.done if p not in gone))
    ranked = draft.rank(
        read_atoms(read_items(shape_marks([m for m in rest if m.kind is not Kind.NAME], False))), context
    )
    return 0 if ranked.doubt is not None else len({t.row.set for t in ranked.bound.told})
