"""The load among the numbers: before its repetitions, after them, or for the sets that follow."""

from collections.abc import Iterator, Sequence

from bot.notation.answer import AskKind
from bot.notation.atoms import Amount, Counts, Join, Sign
from bot.notation.bounds import HARDEST
from bot.notation.kinds import Kind
from bot.notation.quick import replace
from bot.notation.roles.costs import LINKED
from bot.notation.roles.state import State
from bot.notation.roles.steering import Steering, is_new_stage
from bot.notation.said import SaidLoad, SaidSet
from bot.training.report import Stage

_NO_WEIGHT = 1.5
"""Against a bare number as what is added to the body, where so many sets are open and nothing is planned."""
_SIGNED = 1.4
"""Against a bare number as the load that was told with its sign before: the last `5` of `+5: 6 6 5`."""


class Loads(Steering):
    """What a number is as a load."""

    def _as_load(self, state: State, amount: Amount) -> Iterator[State]:
        chain, join = state.chain, amount.join
        if not self.context.takes_load:
            if amount.counts in (Counts.LOAD, Counts.S) or amount.body:
                made = state.copy()
                made.chain = chain + "L"
                yield made
            return
        said = self._load_of(amount)
        if said is None or self._is_scale(amount, said):
            return
        surprise = 0.0 if amount.counts is not Counts.UNSAID or amount.hand or amount.total or amount.sign else None
        surprise = 0.0 if amount.same_load or (amount.body and amount.value is None) else surprise
        if join is Join.AT and chain == "" and amount.lead and state.sets and surprise is None:
            if state.sets[-1].load is None and state.sets[-1].entry == state.entry - 1 and not state.fresh:
                late = state.copy()
                late.chain = "R"
                yield from self._load_after(late, amount, said)
            return
        if join is Join.PLUS and self._is_added(amount) and state.sets and all(s.load is None for s in state.sets):
            yield from self._load_after(state, replace(amount, join=Join.WITH), said)
            return
        last = state.sets[-1] if state.sets else None
        counted = chain == "S" and last is not None and last.load is None and state.mult is None and not state.fresh
        if counted and join in (Join.AT, Join.WITH):
            yield from self._load_after(state, amount, said)
            return
        both = chain == "LRR" and join in (Join.AT, Join.WITH) and state.sets[-1].load is None
        if both or (join in (Join.X, Join.AT, Join.WITH) and chain in ("R", "SR", "RS")):
            yield from self._load_after(state, amount, said)
            return
        if join in LINKED and chain not in ("", "S", "H"):
            return
        if join is Join.FOR and chain:
            return
        ahead = self._ahead(state, amount, said, bare=surprise is None)
        if ahead is None:
            return
        if _is_heavier_than_drop(state, said):
            ahead.enter(Stage.WORK)
        yield ahead
        near = join in (Join.COMMA, Join.SPACE, Join.AND, Join.BREAK)
        if near and ahead.stage is Stage.WORK and self._may_drop(state, said):
            drop = ahead.copy()
            drop.enter(Stage.DROP)
            yield drop
        if not state.fresh and ahead.sets and amount.join in (Join.SPACE, Join.COMMA, Join.DASH):
            yield from self._load_late(state, amount, said, 0.2 if surprise is not None else 1.0)

    def _is_scale(self, amount: Amount, said: SaidLoad) -> bool:
        """Whether `@9` can only be an effort: up to ten, with nothing that says a load, and no load of the plan."""
        bare = amount.join is Join.AT and not amount.worded and amount.counts is Counts.UNSAID and not amount.sign
        rated = bare and amount.value is not None and amount.value <= HARDEST and amount.unit is None
        held = amount.hand or amount.total or amount.pair or amount.same_load or amount.body
        return rated and not held and not (said.load is not None and self.context.is_planned(said.load, None))

    def _ahead(self, state: State, amount: Amount, said: SaidLoad, *, bare: bool) -> State | None:
        """The state with a load for what follows; `bare`: nothing but its place says that it is one."""
        made = state.copy()
        if state.chain == "S" and amount.join is Join.X:
            made.cost += 0.5 if not bare else 1.5
        if bare and self._counts_on_body(amount):
            made.cost += _NO_WEIGHT
        if state.chain == "H":
            made.hand = True
        if made.fresh:
            made = self._alone(made)
        if bare and amount.join not in LINKED and made.sets and made.load is not None:
            same = made.load.load is not None and said.load is not None and made.load.load.kg == said.load.kg
            made.cost += 0.0 if same else 1.2 if self._may_be_count(made, amount, said) else 0.4
            marked = made.load.hand or made.load.unit_said
            made.cost += _SIGNED * (made.load.signed and same and bool(made.load.load and made.load.load.kg))
            made.cost += 0.8 if marked and (same or self._may_be_count(made, amount, said)) else 0.0
            made.cost += 1.4 if marked and same and self._repeats_as_count(made, amount) else 0.0
        if made.stage is Stage.MINI and bare:
            return None
        made.slashed = amount.join in (Join.SLASH, Join.PLUS) and bool(made.sets) and self._drops_next(made)
        made.wants_load = False
        made.load = replace(said, hand=said.hand or made.hand)
        made.hand = False
        made.fresh = True
        made.bare = bare
        made.chain = state.chain + "L"
        made.start = amount.start
        return made

    def _counts_on_body(self, amount: Amount) -> bool:
        """The `2` of `2x6` on plain body weight: two sets, which nobody hangs 2 kg on for."""
        planned = self.context.planned_load(None)
        plain = self.context.is_bodyweight and planned is not None and not planned.kg
        joined = amount.leads or amount.join is Join.X
        return plain and joined and amount.value is not None and amount.value <= len(self.opens)

    def _repeats_as_count(self, state: State, amount: Amount) -> bool:
        """Whether a bare number is the load once more, said with its word, and may be repetitions: `15s 15 15 12`."""
        value = amount.value
        counts = value is not None and value == int(value) and not amount.leads
        return counts and int(value or 0) in self.context.range_of(self.number(state.index))

    def _may_be_count(self, state: State, amount: Amount, said: SaidLoad) -> bool:
        """Whether a bare number that would change the load goes on with the repetitions: the `9` of `-10: 10 9 8`."""
        number = self.number(state.index)
        whole = not amount.leads and amount.value is not None and amount.value == int(amount.value)
        counts = whole and self.context.are_reps_in_reason(int(amount.value or 0), number)
        bare = state.load is not None and state.load.load is not None and state.load.signed and not state.load.load.kg
        listed = bare and amount.join is Join.COMMA
        return counts and (said.load is None or listed or not self.context.is_planned(said.load, number))

    def _load_late(self, state: State, amount: Amount, said: SaidLoad, cost: float) -> Iterator[State]:
        """A load behind repetitions without a link: of the last ones, or of a list of them; `L10 R9` has none."""
        apart = state.entry - state.sets[-1].entry - (state.sets[-1].count > 1)
        before, side = state.sets[-1].side, amount.side or state.side
        across = before is not None and side is not None and side is not before
        parted = state.stage_at is not None and state.stage_at[0] >= state.sets[-1].end
        if state.sets[-1].load is not None or apart not in (0, 1) or across or parted:
            return
        late = state.copy()
        late.chain = "R"
        late.cost += cost
        if _are_loose(state):
            yield from self._load_after(late.copy(), amount, said, whole=True)
            late.cost += 1.5
        yield from self._load_after(late, amount, said)

    def _is_added(self, amount: Amount) -> bool:
        """Whether `+10` is what the plan adds to the body: `chins 8, 7, 6 +10`."""
        planned = self.context.planned_load(None)
        plain = amount.value is not None and amount.value > 0 and self.context.is_bodyweight
        return plain and planned is not None and planned.amount_in(amount.unit or self.unit) == amount.value

    def _load_after(self, state: State, amount: Amount, said: SaidLoad, *, whole: bool = False) -> Iterator[State]:
        """A load said after its repetitions: `5 reps at 60`; `whole`: of a list of them, `6, 6, 5, all at 60`."""
        made = state.copy()
        made.cost += _NO_WEIGHT * (amount.counts is Counts.UNSAID and self._counts_on_body(amount))
        number = self.number(made.index - 1)
        last = made.sets[-1]
        group = [s for s in made.sets if s.entry == last.entry]
        if amount.join in (Join.WITH, Join.AT):
            made.cost += 2.5 * self._is_told_twice(made, said)
            made.doubts = tuple(d for d in made.doubts if d.kind is not AskKind.UNSURE or d.start < group[0].start)
        if len(group) == 1 and is_inherited(last) and amount.join in (Join.WITH, Join.AT, Join.X):
            since = 1 if amount.join is Join.X else since_load_behind(made.sets)
            group = [replace(s, load=None) for s in made.sets[-since:]]
            made.sets = (*made.sets[:-since], *group)
        if last.stage is Stage.MINI:
            return
        if made.chain == "LRR":
            group = list(made.sets[-2:])
        if whole or amount.join is Join.WITH or self._is_of_all(made, amount):
            since = -1 if self._is_of_all(made, amount) else max(made.since_then, made.since_last)
            group = [s for s in made.sets if s.load is None and s.entry > since] or [last]
            made.sets = (*(s for s in made.sets if s not in group), *group)
        if amount.join is Join.X and made.chain == "R" and amount.counts is Counts.UNSAID:
            assert said.load is not None
            reps = last.reps or 0
            made.cost += 1.2 if reps * 2 < self.context.range_of(number).low else 0.0
            made.cost += 1.6 if reps * 2 > self.context.range_of(number).high * 3 else 0.0
            made.cost += 1.2 if made.order == "LR" else 0.0
            made.order = made.order or "RL"
            planned = self.context.planned_load(number)
            if self.last_load is None and planned is None:
                made.cost += 0.5
            if planned is None and self.last_load is not None and self.last_load.amount_in(self.unit) == reps:
                made.cost += 1.2
        made.cost += self._load_cost(said, number, last.stage, made)
        if last.stage is not Stage.WORK and amount.join is Join.X:
            made.cost += 1.5
        changed = [replace(s, load=said, end=max(s.end, amount.end)) if s.load is None else s for s in group]
        made.sets = (*made.sets[: len(made.sets) - len(group)], *changed)
        made.load = said
        made.fresh = False
        made.chain += "L"
        yield self._all(made, Sign(amount.start, amount.end, Kind.ALL, "both")) if amount.both else made

    def _is_told_twice(self, state: State, said: SaidLoad) -> bool:
        """Whether a bare number was taken for the load before: the first of `20, 19, 15 at 20`, of `9, 9, 9 at 12s`."""
        before = [s.load for s in state.sets if s.load is not None and s.stage is Stage.WORK and not s.same]
        number, known = self.number(0), [x.load for x in before if x.load is not None]
        if said.load is None or not known or any(x.hand or x.unit_said or x.signed for x in before):
            return False
        amounts = {x.amount_in(self.unit) for x in known}
        counts = all(a == int(a) and self.context.are_reps_in_reason(int(a), number) for a in amounts)
        again = {x.kg for x in known} == {said.load.kg}
        planned = self.context.is_planned(said.load, number)
        return counts and (again or (planned and not any(self.context.is_planned(x, number) for x in known)))

    def _is_of_all(self, state: State, amount: Amount) -> bool:
        """Whether the only load, behind a list of repetitions alone, is of all of them: `10, 9, 8 at 80`."""
        if amount.join not in (Join.AT, Join.WITH):
            return False
        if state.since_last or (state.since_then and amount.join is Join.AT):
            return False
        if state.since_then and (amount.sign or self.context.worked):
            return False
        plain = all(s.load is None and s.stage is Stage.WORK and s.label is None and not s.same for s in state.sets)
        planned = {self.context.planned_load(self.number(n)) for n in range(state.index)}
        return plain and len(state.sets) > 1 and len(planned) == 1 and not state.last_named


def _is_heavier_than_drop(state: State, said: SaidLoad) -> bool:
    """Whether a load is no further drop, as it is above that of the last one: `45x14 > 30x10 and 45x12 > 30x8`."""
    last = state.sets[-1] if state.sets else None
    if state.stage is not Stage.DROP or last is None or last.stage is not Stage.DROP or last.load is None:
        return False
    dropped = last.load.load
    return not is_new_stage(state) and said.load is not None and dropped is not None and said.load.kg > dropped.kg


def _are_loose(state: State) -> bool:
    """Whether several repetitions without a load stand before, the last one of no set or side named."""
    loose = [s for s in state.sets if s.load is None and s.stage is Stage.WORK and s.entry > state.since_then]
    last = state.sets[-1]
    return len(loose) > 1 and last.label is None and not last.same and not last.planned


def is_inherited(said: SaidSet) -> bool:
    """Whether the load of a set was said with one before it: `60x7, 6 at 55`."""
    return said.load is not None and said.load.end < said.start


def since_load_behind(sets: Sequence[SaidSet]) -> int:
    """How many sets at the end await a load: those behind one whose load was told after it, `5 at 140, 8 and 8`."""
    load = sets[-1].load
    count = next((n for n, s in enumerate(reversed(sets)) if s.load != load or not is_inherited(s)), len(sets))
    before = sets[-count - 1] if count < len(sets) else None
    told = None if before is None or before.load != load or load is None else before.words.reps
    start = None if load is None else (load.number_at or (load.start, load.end))[0]
    return count if told is not None and start is not None and told[0] < start else 1
