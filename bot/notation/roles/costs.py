"""What the plan speaks against in a reading. Costs are on the reader's own scale: 0 is nothing, `OUT` out of reason."""

from decimal import Decimal

from bot.notation.answer import Span
from bot.notation.atoms import Amount, Join
from bot.notation.context import Context
from bot.notation.roles.state import State
from bot.notation.said import SaidLoad
from bot.training.plan import Drop, Measure, Mini
from bot.training.report import Stage
from bot.training.units import Load, Unit

OUT = 6.0
"""Against what is out of reason."""
MARGIN = 0.9
"""Readings closer than this are both honest."""
WIDTH = 10
"""States kept."""
SLACK = 8.0
"""States costlier than the best by more than this are dropped."""
HEAVIEST_WARMUP = Decimal("1.6")
"""A warm-up is at most so many times the planned load."""
MOST_OFF = 4
"""And takes at most so many times the planned assistance off (common practice, no source)."""
LINKED = (Join.X, Join.FOR, Join.AT, Join.WITH)
_FRACTIONS = (Decimal("0.25"), Decimal("0.5"), Decimal("0.75"))
"""What the least plates and dumbbells add to a whole number (common practice, no source)."""


class Costs:
    """The plan of one exercise, weighing readings."""

    def __init__(self, context: Context, unit: Unit, unit_at: Span | None = None) -> None:
        self.context = context
        self.unit = unit
        """Of numbers that name none."""
        self.unit_at = unit_at
        """Where that was said for the whole message."""
        exercise = context.exercise
        self.opens = context.open_sets
        beyond = max([len(exercise.sets), *(n for n, _ in context.filled)], default=0) + 1
        self.beyond = beyond
        self.seconds = exercise.measure is Measure.SECONDS
        self.metres = exercise.measure is Measure.METRES
        self.two_sided = exercise.sides == 2
        self.last_load = context.worked[-1].load if context.worked else None

    def number(self, index: int) -> int:
        """The number of the set that the `index`-th work set of the message answers, from 0."""
        index = max(index, 0)
        if index < len(self.opens):
            return self.opens[index]
        return self.beyond + index - len(self.opens)

    def _prefix_cost(self, state: State, reps: int | None) -> float:
        """Against a bare number that is the sets before an `x`: `3x10`; more, where all sets of the plan are so told
        and the one number before them is its load: `15 3x14`.
        """
        number = self.number(state.index)
        cost = 1.0
        asked = self.context.range_of(number)
        cost -= 0.3 if asked.is_fixed and reps == asked.high and state.load is not None else 0.0
        load = self.context.planned_load(number) or self.last_load
        if load is not None and reps is not None and state.chain == "S" and state.mult is not None:
            turned = Load.of(reps, self.unit)
            if turned.kg == load.kg and state.mult in self.context.range_of(number):
                cost += 1.5
        first = state.sets[-1] if len(state.sets) == 1 and state.load is None else None
        if first is not None and first.reps is not None and load is not None and state.mult is not None:
            whole = state.mult == len(self.opens)
            cost += 0.5 if whole and load.amount_in(self.unit) == first.reps else 0.0
        return cost

    def _header_cost(self, load: SaidLoad, number: int, amount: Amount) -> float:
        """Against a bare first number as the load of what follows: `10 10 10` on 10 kg for 10 to 12."""
        assert load.load is not None or load.load is None
        if load.load is None:
            return 0.0
        value = abs(load.load.amount_in(self.unit))
        cost = {Join.SPACE: 0.0, Join.COLON: -1.5, Join.COMMA: 0.2, Join.DASH: 0.0}.get(amount.join, 0.3)
        if value == int(value) and int(value) in self.context.range_of(number):
            exact = self.context.is_planned(load.load, number)
            cost += 0.0 if exact or amount.join is Join.COLON else 1.0
        return cost

    def _reps_cost(self, reps: int | None, number: int, stage: Stage, state: State) -> float:
        if reps is None:
            return 0.0
        if stage is Stage.MINI:
            planned = self.context.planned(number if not state.index else self.number(state.index - 1))
            usual = planned.finish.reps if planned is not None and isinstance(planned.finish, Mini) else 5
            return 0.0 if reps <= usual * 2 else 3.0
        if stage is not Stage.WORK:
            most = self.context.range_of(number if stage is Stage.WARMUP else self.number(state.index - 1)).high
            cost = 0.0 if reps <= max(most * 2, 15) or self.seconds or self.metres else 3.0
            if stage is Stage.DROP and not state.fresh and "L" not in state.chain:
                before = state.sets[-1] if state.sets else None
                cost += 3.0 if state.wants_load else 1.0 if reps > most else 0.0
                cost += 1.5 if before is not None and before.stage is Stage.DROP and before.load is None else 0.0
            return cost
        asked = self.context.range_of(number)
        if self._is_load_behind(reps, state):
            return 1.6
        if reps in asked:
            return 0.0
        load = None if state.fresh else self.context.planned_load(number)
        if load is not None and abs(load.amount_in(self.unit)) == reps and "L" not in state.chain:
            alike = bool(state.sets) and all(one.reps == reps for one in state.sets) and 4 * reps >= 3 * asked.low
            again = -0.4 if len(state.sets) > 1 else -1.3  # `10 10 10` on 10 kg for 12 to 15: three sets, as may be
            return 2.4 if reps > asked.high else again if alike else 1.3
        if not self.context.are_reps_in_reason(reps, number):
            return OUT + min(reps / 1000, 2)
        linked = "L" in state.chain
        if linked:
            return 0.0
        if reps * 2 > asked.high * 3:
            return 1.7
        return 0.4 if asked.low <= reps * 2 else 1.2

    def _is_load_behind(self, reps: int, state: State) -> bool:
        """Whether a number behind all sets of the plan is their load rather than one set more: `3x20 20` on 20 kg."""
        last = state.sets[-1] if state.sets else None
        full = last is not None and last.count > 1 and last.load is None and state.index >= len(self.opens)
        load = self.context.planned_load(self.opens[0]) if self.opens else None
        return full and not state.chain and load is not None and load.amount_in(self.unit) == reps

    def _load_cost(self, said: SaidLoad, number: int, stage: Stage, state: State) -> float:
        if said.load is None:
            return 0.0
        if stage is Stage.DROP:
            planned = self.context.planned_load(number)
            light = planned is not None and said.load.kg * 4 < planned.kg
            bare = said.load.kg <= 0 and not self.context.is_bodyweight
            return OUT if bare else 1.5 if light and not self.context.is_bodyweight else 0.0
        if stage is Stage.WARMUP:
            return 0.0 if self._may_warm_up(said, number) else OUT
        planned = self.context.planned_load(number)
        if (
            planned is None
            and self.last_load is None
            and state.bare
            and not state.sets
            and said.load.thousandths <= 8000
        ):
            return 1.2 if self.context.takes_load and not self.context.is_bodyweight else 0.0
        if self.context.is_per_hand and planned is not None and not said.hand and said.load.kg == planned.kg * 2:
            return 0.0
        before = [self.last_load, *(s.load.load for s in state.sets if s.load is not None and s.stage is Stage.WORK)]
        if self.context.is_bodyweight and not said.signed and not said.unit_said and said.load.thousandths:
            known = [x for x in (self.context.planned_load(number), *before) if x is not None]
            if not any(x.thousandths for x in known):
                return 1.9
        if self.context.is_load_in_reason(said.load, number, before, said.signed):
            return 0.0
        return OUT

    def _may_warm_up(self, said: SaidLoad, number: int) -> bool:
        """Whether a load is no heavier than a warm-up is: where the plan takes weight off, the more off the lighter."""
        planned = self.context.planned_load(number)
        if planned is None or said.load is None:
            return True
        if planned.kg < 0:
            return planned.kg * MOST_OFF <= said.load.kg <= planned.kg / HEAVIEST_WARMUP
        return said.load.kg <= planned.kg * HEAVIEST_WARMUP

    def _sets_cost(self, index: int, count: int) -> float:
        """Against this many sets from the `index`-th on."""
        left = len(self.opens) - index
        whole = len(self.context.exercise.sets)
        if count == left or (count == whole and not index):
            return -0.5
        if count == 1:
            return 0.3
        if count < left:
            return 0.0
        beyond = count - max(left, whole)
        if beyond > 3:
            return OUT + 0.5
        return {1: 0.5, 2: 1.0}.get(count - max(left, 0), 2.5 if beyond > 1 else 1.0)

    def _split_cost(self, amount: Amount, state: State) -> float:
        """Against taking a comma between two numbers for a separator."""
        number = self.number(state.index)
        both = all(self.context.are_reps_in_reason(int(p), number) for p in amount.parts)
        assert amount.value is not None
        load = Load.of(amount.value, amount.unit or self.unit)
        known = (self.context.planned_load(number), self.last_load)
        if any(x is not None and x.kg == load.kg for x in known):
            return 2.0
        wants_load = amount.leads or (state.stage is Stage.DROP and not state.fresh)
        if wants_load and amount.value % 1 in _FRACTIONS:
            return 2.0
        return 0.0 if both else 2.5

    def _drops_next(self, state: State) -> bool:
        """Whether the set said last has a planned drop that is still to come."""
        planned = self.context.planned(self.number(state.index - 1))
        finish = planned.finish if planned is not None else None
        if not isinstance(finish, Drop) or not state.sets:
            return False
        drops = 0
        for said in reversed(state.sets):
            if said.stage is not Stage.DROP:
                break
            drops += 1
        return drops < finish.times

    def _may_drop(self, state: State, said: SaidLoad) -> bool:
        """Whether a lighter load after the last prescribed set may be its planned drop, though nothing says so."""
        if not state.sets or state.fresh or state.index < len(self.opens) or not self._drops_next(state):
            return False
        before = state.sets[-1].load
        heavier = before.load if before is not None else None
        return heavier is not None and said.load is not None and said.load.kg < heavier.kg
