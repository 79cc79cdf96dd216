"""How long a distance took: `500m in 1:52`, `500 in 1:55, 1:58 and 2:03`. It is kept nowhere, but tells the sets."""

from collections.abc import Iterator
from dataclasses import replace

from bot.notation.atoms import Amount, Counts, Join
from bot.notation.bounds import MINUTE_S
from bot.notation.roles.sets import SetCounts
from bot.notation.roles.state import State


class Timed(SetCounts):
    """Times beside distances, where metres are counted."""

    def _as_time(self, state: State, amount: Amount) -> Iterator[State]:
        """A time: of a set said before it that has none yet, else of one more of that distance, or of the next one."""
        if sum(said.count for said in state.sets) > state.timed:
            made = state.copy()
            made.take_time(amount.at)
            made.minutes = 0 if amount.counts is Counts.MINUTES else None
            yield made
            return
        if not amount.clock:
            yield state
            return
        asked = self.context.range_of(self.number(state.index))
        last = state.sets[-1] if state.sets else None
        reps = last.reps if last is not None else asked.high if asked.is_fixed else None
        if reps is not None and not state.fresh:
            count = replace(amount, clock=False, parts=(), value=None, counts=Counts.METRES, join=Join.COMMA)
            made = self._emit(state, count, reps)
            told = made.sets[-1]
            words = replace(told.words, reps=None if last is None else amount.at, sets=amount.at)
            made.sets = (*made.sets[:-1], replace(told, from_plan=last is None, words=words))
            made.timed += 1
            made.cost += 1.2 if last is None else 0.0
            yield made
        early = state.copy()
        early.cost += 3.0 if state.time_at is not None else 0.3 if last is not None else 0.0
        early.time_at = amount.at
        yield early

    def _goes_on(self, state: State, amount: Amount) -> bool:
        """Whether a bare number goes on with a time: the `fifty` of `one minute fifty`."""
        bare = amount.counts in (Counts.UNSAID, Counts.SECONDS, Counts.S) and amount.join in (Join.SPACE, Join.AND)
        timed = self.metres and state.minutes is not None and bool(state.sets)
        return timed and bare and amount.value is not None and amount.value < MINUTE_S
