"""Every role that a number's words allow it."""

from collections.abc import Iterator

from bot.notation.answer import AskKind
from bot.notation.atoms import Amount, Counts, Join
from bot.notation.quick import replace
from bot.notation.roles.costs import LINKED
from bot.notation.roles.loads import is_inherited, since_load_behind
from bot.notation.roles.state import State
from bot.notation.roles.timed import Timed
from bot.notation.said import Doubt, SaidLoad
from bot.training.report import Stage
from bot.training.units import Load

_MEASURED = (Counts.SECONDS, Counts.METRES, Counts.M)
_EACH_SIDE = 1.2
"""Against `9 each` as what one hand held, where each side was to do nine."""
_GLUED = 1.0
"""Against `17,5`, typed without a space, as a load and its repetitions."""


class Numbers(Timed):
    """What a number may be, by what is said of it."""

    def _amount(self, state: State, amount: Amount) -> Iterator[State]:
        if state.mult and not state.mult_said and amount.join not in (Join.X, Join.FOR):
            return
        if amount.join not in LINKED or amount.lead:
            state = state.copy()
            state.chain = ""
            state.entry += 1
        yielded = False
        for made in self._roles(state, amount):
            yielded = True
            yield made
        if not yielded:
            made = state.copy()
            made.cost += 7
            made.doubts = (*made.doubts, Doubt(AskKind.UNSURE, amount.start, amount.end))
            yield made

    def _roles(self, state: State, amount: Amount) -> Iterator[State]:
        listed = amount.counts in _MEASURED and not amount.spoken and self._is_listed(state, amount)
        if amount.parts and not amount.clock and (amount.value is None or amount.counts is Counts.REPS or listed):
            yield from self._as_parts(state, amount)
            if amount.value is None:
                return
        if self._goes_on(state, amount):
            gone_on = state.copy()
            gone_on.take_time(amount.at)
            gone_on.timed, gone_on.minutes = state.timed, None
            yield gone_on
            return
        match amount.counts:
            case Counts.UNSAID:
                yield from self._unsaid(state, amount)
            case Counts.SETS:
                yield from self._as_sets(state, amount)
            case Counts.TIMES:
                yield from self._as_times(state, amount)
            case Counts.REPS if amount.body and not amount.sign:
                yield from self._body_reps(state, amount)
            case Counts.REPS:
                yield from self._as_reps(state, amount, amount.value)
            case Counts.SECONDS | Counts.MINUTES | Counts.METRES | Counts.M:
                yield from self._as_measure(state, amount)
            case Counts.S if self.seconds:
                yield from self._as_reps(state, amount, amount.value)
            case Counts.S if not self.context.is_per_hand and state.all_sets and amount.join not in LINKED:
                yield from self._all_alike(state, amount)
            case Counts.S if state.fresh or not self.context.is_per_hand:
                yield from self._as_load(state, amount)
                if amount.join in (Join.AT, Join.WITH):
                    return
                for made in self._as_reps(state, replace(amount, counts=Counts.REPS), amount.value):
                    made.cost += 0.4
                    yield made
            case Counts.LOAD | Counts.S:
                yield from self._as_load(state, amount)

    def _unsaid(self, state: State, amount: Amount) -> Iterator[State]:
        """Every role of a number that says nothing of what it counts."""
        if amount.plates:
            plated = state.copy()
            plated.plates = (amount.start, amount.end)
            yield plated
            return
        if amount.same_reps:
            yield self._emit(state, amount, None)
            return
        if amount.same_load or (amount.body and amount.value is None):
            yield from self._as_load(state, amount)
            return
        if amount.clock:
            yield from self._as_clock(state, amount)
            return
        if amount.value is not None:
            reps_on_body = amount.body and not amount.sign
            turned = amount.join is Join.X and state.chain == "R"
            waits = state.fresh and state.load is not None and (state.load.unit_said or state.load.hand)
            if reps_on_body or (amount.each and waits and amount.unit is None):
                pass
            elif not amount.each or not self.two_sided or turned or self._is_of_hand(amount):
                for made in self._as_load(state, amount):
                    made.cost += _EACH_SIDE * self._is_of_side(state, amount)
                    yield made
            if not amount.hand and not amount.total and not amount.body:
                yield from self._as_reps(state, amount, amount.value)
            elif amount.body and amount.sign == 0:
                yield from self._body_reps(state, amount)
            if not amount.sign and not amount.each:
                yield from self._as_sets(state, amount)
                yield from self._as_scale(state, amount)
        free = amount.sign == 0 and amount.join not in LINKED
        splits = free or (amount.join in (Join.X, Join.FOR) and not amount.spoken)
        splits = splits or (amount.spoken and bool(amount.sign) and amount.join not in LINKED)
        if amount.parts and splits and not (amount.hand or amount.total):
            yield from self._as_parts(state, amount)

    def _is_of_hand(self, amount: Amount) -> bool:
        """Whether `22.5 each` may be what one hand held: so too `25 a side` where nobody does as many repetitions."""
        reps = amount.value is not None and self.context.are_reps_in_reason(int(amount.value), None)
        free = amount.join not in LINKED and not reps
        return free or (self.context.is_per_hand and not amount.limb)

    def _is_of_side(self, state: State, amount: Amount) -> bool:
        """Whether `9 each` is what each side is asked to do, and no load of the plan."""
        asked = self.context.range_of(self.number(state.index))
        whole = amount.value is not None and amount.value == int(amount.value)
        reps = amount.each and self.two_sided and whole and int(amount.value or 0) in asked
        return reps and amount.unit is None and not self._is_planned(amount)

    def _all_alike(self, state: State, amount: Amount) -> Iterator[State]:
        """`90, all 8s`: so many repetitions in every set that is open."""
        for made in self._as_reps(state, replace(amount, counts=Counts.REPS), amount.value):
            made.spread = -1 if len(made.sets) == 1 else made.spread
            yield made

    def _as_times(self, state: State, amount: Amount) -> Iterator[State]:
        """`5 times`: the repetitions of a load that waits for them or is to come, else the sets."""
        if state.fresh or not state.sets:
            yield from self._as_reps(state, replace(amount, counts=Counts.REPS), amount.value)
        if not state.fresh:
            for made in self._as_sets(state, replace(amount, counts=Counts.SETS, after=bool(state.sets))):
                made.cost += 0.0 if state.sets else 0.6
                yield made

    def _body_reps(self, state: State, amount: Amount) -> Iterator[State]:
        """`12 bw`: repetitions on body weight."""
        loaded = self._on_body(state, amount)
        yield from self._as_reps(loaded, replace(amount, body=False), amount.value)

    def _on_body(self, state: State, amount: Amount) -> State:
        """The state with body weight as the load of what follows, and of sets before that have none."""
        loaded = state.copy()
        if loaded.stage is Stage.MINI and loaded.sets:
            loaded.enter(Stage.WORK)
        loaded.load = SaidLoad(Load.of(0, self.unit), *amount.at, signed=True, number_at=amount.body_at)
        loaded.fresh = False
        since = [s for s in loaded.sets if s.entry > state.since_then]
        if all((s.load is None or (state.since_then and is_inherited(s))) and not s.same for s in since):
            changed = [replace(s, load=loaded.load) for s in since]
            loaded.sets = (*loaded.sets[: len(loaded.sets) - len(since)], *changed)
        elif amount.join is Join.AND and is_inherited(since[-1]):
            count = since_load_behind(since)
            loaded.sets = (*loaded.sets[:-count], *(replace(s, load=loaded.load) for s in loaded.sets[-count:]))
        return loaded

    def _as_measure(self, state: State, amount: Amount) -> Iterator[State]:
        if amount.value is None:
            yield state
            return
        is_minutes = amount.counts is Counts.MINUTES or (amount.counts is Counts.M and self.seconds)
        if self.seconds and (is_minutes or amount.counts is Counts.SECONDS):
            yield from self._as_reps(state, amount, amount.value * 60 if is_minutes else amount.value, is_minutes)
        elif self.metres and amount.counts in (Counts.METRES, Counts.M):
            yield from self._as_reps(state, amount, amount.value)
        elif self.metres:
            yield from self._as_time(state, amount)
        else:
            yield state

    def _as_clock(self, state: State, amount: Amount) -> Iterator[State]:
        first, second = amount.parts
        if self.seconds:
            yield from self._as_reps(state, amount, first * 60 + second)
            return
        if self.metres:
            yield from self._as_time(state, amount)
            return
        loaded = replace(amount, clock=False, value=first, parts=())
        reps = replace(amount, clock=False, value=second, parts=(), join=Join.COLON)
        for made in self._as_load(state, loaded):
            yield from self._as_reps(made, reps, second)

    def _is_listed(self, state: State, amount: Amount) -> bool:
        """Whether `25,25 sec` are two: the exercise is so measured, and each is at least half of what is asked."""
        least = self.context.range_of(self.number(state.index)).low
        measured = self.seconds if amount.counts is Counts.SECONDS else self.metres
        return measured and all(2 * p >= least for p in amount.parts)

    def _is_planned(self, amount: Amount) -> bool:
        """Whether a number is a planned load as it stands: `forty five` on a plan of 45 is no 40 for 5."""
        known = (self.context.planned_load(n) for n in (*self.opens, None))
        return any(x is not None and abs(x.amount_in(amount.unit or self.unit)) == amount.value for x in known)

    def _is_planned_part(self, amount: Amount) -> bool:
        """Whether only the first half of a number is a planned load: `sixty nine nine eight` on a plan of 60."""
        return bool(amount.parts) and self._is_planned(replace(amount, value=amount.parts[0]))

    def _as_parts(self, state: State, amount: Amount) -> Iterator[State]:
        """The other reading of a number: `12,11` as two, `sixty five` as 60 and 5."""
        if amount.body and not amount.sign:
            state = self._on_body(state, amount)
            amount = replace(amount, body=False, counts=Counts.REPS)
        states = [state]
        counts = amount.counts if amount.counts in (Counts.REPS, *_MEASURED) else Counts.UNSAID
        if amount.value is not None and not amount.spoken:
            state = state.copy()
            state.cost += self._split_cost(amount, state)
            states = [state]
        for index, part in enumerate(amount.parts):
            single = replace(
                amount, value=part, parts=(), join=amount.join if index == 0 else Join.COMMA, counts=counts
            )
            single = single if index == 0 else replace(single, sign=0)
            if amount.parts_at:
                single = replace(single, parts_at=(amount.parts_at[index],))
            following: list[State] = []
            for each in states:
                base = each
                if index:
                    base = each.copy()
                    base.chain = ""
                if base.chain == "" and amount.spoken and index == 0:
                    following.extend(self._as_load(base, single))
                elif counts is Counts.REPS or counts in _MEASURED:
                    following.extend(self._as_reps(base, single, part))
                else:
                    if base.chain == "" or index == 0:
                        following.extend(self._as_load(base, single))
                    following.extend(self._as_reps(base, single, part))
            states = following
        for each in states:
            if amount.spoken:
                each.halved = amount.value is not None
                each.cost += 1.3 if self._is_planned(amount) else -1.2 if self._is_planned_part(amount) else 0.3
            elif amount.value is not None and each.load is not None and each.load.start == amount.start:
                each.cost += _GLUED
            yield each
