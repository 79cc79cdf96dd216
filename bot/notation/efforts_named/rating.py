"""The sets that were told get the efforts that name them; asked about where they are not so many."""

from collections.abc import Sequence
from dataclasses import dataclass
from decimal import Decimal

from bot.notation.answer import AskKind, Span
from bot.notation.draft import Draft
from bot.notation.efforts_named.which_sets import Sets
from bot.notation.grounds import with_effort
from bot.notation.said import Doubt
from bot.training.report import SetKey, Stage


@dataclass(frozen=True, slots=True)
class NamedEfforts:
    """Repetitions in reserve with the sets that they are of, and where each stands; and where all stand."""

    efforts: tuple[tuple[Sets, Decimal, Span], ...]
    at: Span
    place: int | None
    """The exercise that was named before, if one was."""


def rate_named(draft: Draft, said: NamedEfforts) -> None:
    """Gives the sets that the message told last their efforts; asks where they are not so many."""
    record = draft.record
    last = record.last(said.place if said.place is not None else record.last_exercise)
    if last is None:
        return
    rows = [t.row for t in record.told if t.row.exercise == last.exercise and t.row.stage is Stage.WORK]
    keys = list(dict.fromkeys((p.exercise, p.set) for p in rows if p.set is not None))
    rated: set[SetKey] = set()
    if any((sets.first or 0) > len(keys) for sets, _, _ in said.efforts):
        keys = _numbered(keys)
    for sets, rir, at in said.efforts:
        if sets.reps is not None:
            alike = [k for k in keys if any(p.reps == sets.reps and (p.exercise, p.set) == k for p in rows)]
        chosen = _chosen(keys, sets, rated) if sets.reps is None else alike
        chosen = [k for k in chosen if k[0]]
        if len(chosen) != sets.count and not sets.rest:
            draft.doubt(Doubt(AskKind.EFFORT, *said.at))
            return
        rated.update(chosen)
        for key in chosen:
            record.change(key, lambda told, rir=rir, at=at: [with_effort(t, rir, at) for t in told])  # type: ignore[misc]
    draft.note_replaced(said.at)


def _numbered(keys: Sequence[SetKey]) -> list[SetKey]:
    """The sets told, each at its number in the exercise: of `second and third both 275x5, third was rpe 9`."""
    told = {number: (name, number) for name, number in keys}
    return [told.get(n, ("", n)) for n in range(1, max(told, default=0) + 1)]


def _chosen(keys: Sequence[SetKey], sets: Sets, rated: set[SetKey]) -> list[SetKey]:
    """The sets that words name among those that were told."""
    if sets.rest:
        return [k for k in keys if k not in rated]
    if sets.first is None:
        return list(keys[-sets.count :])
    return list(keys[sets.first - 1 : sets.first - 1 + sets.count])
