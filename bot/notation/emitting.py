"""Sets put into a reading, each weighed beside the set that it would answer."""

from decimal import Decimal

from bot.notation.answer import AskKind
from bot.notation.atoms import Amount, Counts, Join
from bot.notation.costs import Costs
from bot.notation.said import Doubt, SaidLoad, SaidSet
from bot.notation.state import State
from bot.training.report import Side, Stage
from bot.training.units import Load


class Emitting(Costs):
    """Puts sets into a reading in the making."""

    def _emit(self, state: State, amount: Amount, reps: int | None) -> State:
        """The state with one more set of these repetitions."""
        made = state.copy()
        chain = state.chain
        stage = made.stage
        explicit = made.load
        if amount.join is Join.ARROW and made.sets:
            stage = made.stage = Stage.DROP
        if (amount.join is Join.SLASH and made.sets and stage is Stage.WORK and self._drops_next(made)) or (
            "L" in chain and made.slashed and stage is Stage.WORK
        ):
            stage = Stage.DROP
        if stage is Stage.MINI and amount.join is Join.PLUS and not made.sets:
            stage = Stage.WORK
        if amount.join in (Join.THEN, Join.BREAK) and stage is Stage.WARMUP and made.sets:
            stage = made.stage = Stage.WORK
        linked = "L" in chain
        if stage is Stage.DROP and not made.fresh and not linked:
            explicit = None
        side = amount.side or made.side
        number = self.number(made.index)
        label = made.label
        count = made.mult or 1
        if made.fresh and made.bare and not linked and explicit is not None and stage is Stage.WORK:
            made.cost += self._header_cost(explicit, number, amount)
        made.cost += self._reps_cost(reps, number, stage, made)
        if explicit is not None and (made.fresh or linked):
            made.cost += self._load_cost(explicit, number, stage, made)
            if chain == "L" and amount.join is Join.X and stage is Stage.WORK:
                made.cost += 1.2 if made.order == "RL" else 0.0
                made.order = made.order or "LR"
            if chain in ("L",) and amount.join is Join.X and made.bare and reps is not None and stage is Stage.WORK:
                exact = explicit.load is not None and self.context.is_planned(explicit.load, number)
                made.cost -= 3.0 if exact and reps in self.context.range_of(number) else 0.0
                if explicit.load is not None and not exact and reps not in self.context.range_of(number):
                    made.cost += 0.0
        if made.mult:
            made.cost += self._sets_cost(made.index, made.mult) + (
                0.0 if made.mult_said else self._prefix_cost(made, reps)
            )
        start = made.start if made.fresh or linked else amount.start
        if made.mult:
            start = min(start, made.mult_start)
        said = SaidSet(
            stage=stage,
            start=min(start, amount.start),
            end=amount.end,
            load=explicit if stage is not Stage.MINI else None,
            reps=reps,
            count=count,
            side=side,
            rir=made.pending,
            label=label,
            entry=made.entry,
        )
        made.pending = made.pending if made.all_sets else None
        made.label = None
        made.mult = None
        made.fresh = False
        made.chain = chain + "R"
        made.put(said)
        if stage is Stage.WORK and side is not Side.RIGHT:
            made.index += count
        if stage is Stage.WORK and side is Side.RIGHT and not any(s.side is Side.LEFT for s in made.sets):
            made.index += count
        return made

    def _load_of(self, amount: Amount) -> SaidLoad | None:
        unit = amount.unit or self.unit
        if amount.same_load:
            return SaidLoad(None, amount.start, amount.end)
        value = amount.value
        if amount.body:
            return SaidLoad(
                Load.of((value or Decimal(0)) * (amount.sign or 1), unit), amount.start, amount.end, signed=True
            )
        if value is None or abs(value) > 5000:
            return None
        halved = amount.total and self.context.is_per_hand
        if halved:
            value = value / 2
        if amount.sign:
            value = value * amount.sign
        elif self.context.is_bodyweight and value > 0:
            planned = self.context.planned_load(None)
            if planned is not None and planned.thousandths < 0:
                value = -value
        hand = amount.hand or amount.pair or amount.counts is Counts.S or (amount.each and self.context.is_per_hand)
        return SaidLoad(
            Load.of(value, unit),
            amount.start,
            amount.end,
            signed=bool(amount.sign),
            hand=hand or halved,
            unit_said=amount.unit is not None,
            halved=halved,
        )

    def _alone(self, state: State) -> State:
        """A load that no repetitions follow: the plan's, where it fixes them; else a doubt."""
        made = state.copy()
        number = self.number(made.index)
        asked = self.context.range_of(number)
        load = made.load
        assert load is not None
        fixed = asked.is_fixed and made.stage is Stage.WORK
        if fixed:
            made.cost += 0.5 if not made.sets else 0.9
        else:
            made.cost += 2.5
            made.doubts = (*made.doubts, Doubt(AskKind.RANGE, load.start, load.end))
        made.cost += self._load_cost(load, number, made.stage, made)
        made.put(
            SaidSet(
                stage=made.stage,
                start=load.start,
                end=load.end,
                load=load,
                reps=asked.high,
                count=made.mult or 1,
                side=made.side,
                rir=made.pending,
                label=made.label,
                from_plan=True,
                entry=made.entry,
            )
        )
        made.index += made.mult or 1
        made.mult = None
        made.pending = None
        made.label = None
        made.fresh = False
        return made
