"""The last looks at sets that are clear so far: each finds a number or a word that speaks against keeping them."""

from collections.abc import Sequence
from dataclasses import dataclass

from bot.notation.accounts import unaccounted
from bot.notation.headings import unknown_heading
from bot.notation.miscounted import miscounted
from bot.notation.misheard import sounds_like_another
from bot.notation.misplaced import misplaced
from bot.notation.overlooked import overlooked
from bot.notation.progress import Progress, contradicted
from bot.notation.qualified import of_another_kind
from bot.notation.record import Record
from bot.notation.restated import counted_on, goes_beyond, numbered_again
from bot.notation.set_or_reps import beyond_plan, drops_beyond, may_be_sets, too_many
from bot.notation.strays.lone_loads import failed_again, lone_load, missed_load
from bot.notation.strays.other_measure import of_another_measure
from bot.notation.strays.unknown_words import behind_unknown_word
from bot.notation.tokens import Mark


@dataclass(frozen=True, slots=True)
class Looked:
    """What they look at: the marks as `said`, those of them that `told` sets, and the `record` with the sets."""

    said: Sequence[Mark]
    told: Sequence[Mark]
    record: Record
    progress: Progress
    """How far the message says that the client is."""
    unclear: Mark | None
    """An entry that may be read for several names."""


def last_look(at: Looked) -> Mark | None:
    """What speaks against the sets, by the first look that finds something; `None` where none does."""
    said, told, record = at.said, at.told, at.record
    rows, exercises = record.told, record.exercises
    return (
        unaccounted(told, rows, said, record.gone)
        or sounds_like_another(told, rows, exercises)
        or may_be_sets(told, rows, record)
        or too_many(told, rows, record)
        or drops_beyond(said, rows, record)
        or beyond_plan(said, rows, record)
        or of_another_kind(told, rows, exercises)
        or goes_beyond(told, record)
        or contradicted(at.progress, record)
        or at.unclear
        or numbered_again(said, record)
        or counted_on(said, record)
        or unknown_heading(said, rows)
        or miscounted(told, rows, record)
        or overlooked(said, rows, record)
        or misplaced(said, rows, exercises)
        or lone_load(said, rows)
        or missed_load(said, rows)
        or failed_again(said, rows)
        or of_another_measure(told, record)
        or behind_unknown_word(said, rows)
    )
