"""What a message tells beside its sets by the form of its clauses: other people, intentions, reasons, things counted.

`with_others` gives words of other people and of what was only meant to be their kinds (`other_times` then reaches as
far as they do); `stray_numbers` are the places of numbers, and of names, that reasons and other talk hold.
"""

from collections.abc import Callable, Sequence

from bot.notation.colours import coloured_plates
from bot.notation.headings import measured
from bot.notation.kinds import Kind
from bot.notation.partly_told import without_cut_short
from bot.notation.strays.around import around, nothing_to_drop, told_again
from bot.notation.strays.denied import denied
from bot.notation.strays.equipment import left_standing
from bot.notation.strays.headed import headed
from bot.notation.strays.intents import with_intents
from bot.notation.strays.kit_talk import kit_talk
from bot.notation.strays.kit_weights import kit_weights
from bot.notation.strays.let_fall import let_fall
from bot.notation.strays.people import with_people
from bot.notation.strays.reasons import reasons, without_skips
from bot.notation.strays.spoken_of import spoken_of
from bot.notation.strays.things import things
from bot.notation.strays.undone import undone
from bot.notation.strays.wordings import with_wordings
from bot.notation.tokens import Mark

__all__ = ["nothing_to_drop", "stray_numbers", "with_others"]


def with_others(marks: Sequence[Mark]) -> list[Mark]:
    """The marks with other people, and with what was planned or nearly done, as such."""
    return without_skips(without_cut_short(with_intents(with_wordings(with_people(marks)))))


def stray_numbers(
    marks: Sequence[Mark], is_likely: Callable[[Mark], bool], may_be_set: Callable[[Mark, int], bool], *, is_first: bool
) -> set[int]:
    """The places of what is no set's.

    `is_likely`: whether a number may be a load or a count of the exercise at hand; `may_be_set`: whether a load that
    is only judged may be one of its sets, beside so many other numbers; `is_first`: nothing is stored.
    """
    told = denied(marks, is_first=is_first)
    told |= reasons(marks) | (things(marks) - _of_sets(marks)) | left_standing(marks) | around(marks, is_likely)
    told |= measured(marks) | spoken_of(marks, may_be_set) | kit_weights(marks) | kit_talk(marks)
    told |= coloured_plates(marks)
    return told | told_again(marks) | headed(marks) | undone(marks) | let_fall(marks)


def _of_sets(marks: Sequence[Mark]) -> set[int]:
    """The places of numbers that words behind them count nothing with: the effort of `60x8 rpe 8 coffee kicked in`, the
    last of `60x8 7 6 new shoes` and `8/7/6 coffee kicked in`."""
    return {place for place in range(1, len(marks)) if marks[place].kind is Kind.NUM and _is_of_set(marks, place)}


def _is_of_set(marks: Sequence[Mark], place: int) -> bool:
    before = [m.kind for m in marks[max(0, place - 3) : place]]
    listed = before[-2:] == [Kind.NUM, Kind.SLASH] or before in (
        [Kind.X, Kind.NUM, Kind.NUM],
        [Kind.COLON, Kind.NUM, Kind.NUM],
        [Kind.NUM, Kind.NUM, Kind.NUM],
    )
    return before[-1] in (Kind.RPE, Kind.RIR) or listed
