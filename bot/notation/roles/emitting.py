"""Sets put into a reading, each weighed beside the set that it would answer."""

from decimal import Decimal

from bot.notation.answer import AskKind, Span
from bot.notation.atoms import Amount, Counts, Join
from bot.notation.quick import replace
from bot.notation.roles.costs import Costs
from bot.notation.roles.state import State
from bot.notation.said import Doubt, SaidLoad, SaidSet
from bot.training.report import Side, Stage
from bot.training.units import Load


class Emitting(Costs):
    """Puts sets into a reading in the making."""

    def _emit(self, state: State, amount: Amount, reps: int | None) -> State:
        """The state with one more set of these repetitions."""
        made = state.copy()
        linked = "L" in state.chain
        stage = self._stage_of(made, amount)
        load = None if stage is Stage.DROP and not made.fresh and not linked else made.load
        if stage is Stage.WORK and _are_both_told(made):
            made.side, made.side_at = None, None
        side = amount.side or (None if amount.each else made.side)
        count = made.mult or 1
        self._take_last(made)
        self._weigh(made, amount, reps, stage=stage, load=load)
        start = made.start if made.fresh or linked else amount.start
        if made.mult and made.mult_at is not None:
            start = min(start, made.mult_at[0])
        said = SaidSet(
            stage=stage,
            start=min(start, amount.start),
            end=amount.end,
            load=load if stage is not Stage.MINI else None,
            reps=reps,
            count=count,
            side=side,
            rir=made.pending,
            label=made.label,
            entry=made.entry,
            words=replace(
                made.words_before(),
                reps=amount.number_at,
                spaced=amount.join is Join.SPACE and amount.counts is Counts.UNSAID,
                side=amount.side_at if amount.side is not None else made.side_at,
                stage=_stage_at(stage, made, amount),
            ),
        )
        made.pending = made.pending if made.all_sets else None
        made.label = None
        made.mult = None
        made.fresh = False
        made.chain = state.chain + "R"
        made.put(said)
        alone = side is not Side.RIGHT or not any(s.side is Side.LEFT for s in made.sets)
        made.index += count if stage is Stage.WORK and alone else 0
        return made

    def _take_last(self, made: State) -> None:
        """`5x5, the last one only 4`: of sets that were all counted, the last is told apart."""
        last = made.sets[-1] if made.sets else None
        whole = last is not None and last.count > 1 and made.index >= len(self.opens) and last.stage is Stage.WORK
        if made.last_named and whole and last is not None and made.stage is Stage.WORK:
            made.sets = (*made.sets[:-1], replace(last, count=last.count - 1))
            made.index -= 1

    def _stage_of(self, made: State, amount: Amount) -> Stage:
        """The stage of a set that is about to be put: the one under way, or the one that its join opens or ends."""
        if amount.join is Join.ARROW and made.sets:
            made.enter(Stage.DROP, amount.join_at)
        stage = made.stage
        if (
            stage is Stage.WARMUP
            and amount.join in (Join.X, Join.FOR)
            and made.sets
            and self._is_as_planned(made, amount)
        ):
            made.enter(Stage.WORK)
            return Stage.WORK
        slashed = amount.join is Join.SLASH and made.sets and self._drops_next(made)
        if stage is Stage.WORK and (slashed or ("L" in made.chain and made.slashed)):
            return Stage.DROP
        if stage is Stage.MINI and amount.join is Join.PLUS and not made.sets:
            return Stage.WORK
        if amount.join in (Join.THEN, Join.BREAK) and stage is Stage.WARMUP and made.sets:
            made.enter(Stage.WORK)
            return Stage.WORK
        return stage

    def _is_as_planned(self, made: State, amount: Amount) -> bool:
        """Whether a set is just what the plan asks for: behind warm-ups it is the first of them no more."""
        number = self.number(made.index)
        load = made.load.load if made.load is not None else None
        exact = load is not None and self.context.is_planned(load, number)
        return exact and amount.value is not None and int(amount.value) in self.context.range_of(number)

    def _weigh(self, made: State, amount: Amount, reps: int | None, *, stage: Stage, load: SaidLoad | None) -> None:
        """Adds what the plan speaks against the set that is about to be put."""
        number = self.number(made.index)
        linked = "L" in made.chain
        if made.fresh and made.bare and not linked and load is not None and stage is Stage.WORK:
            made.cost += self._header_cost(load, number, amount) + (1.5 if self._is_on_body(made, number) else 0.0)
        made.cost += self._reps_cost(reps, number, stage, made)
        if load is not None and (made.fresh or linked):
            made.cost += self._load_cost(load, number, stage, made)
            if made.chain == "L" and amount.join is Join.X and stage is Stage.WORK:
                made.cost += 1.2 if made.order == "RL" else 0.0
                made.order = made.order or "LR"
                exact = load.load is not None and self.context.is_planned(load.load, number)
                as_planned = exact and reps is not None and reps in self.context.range_of(number)
                made.cost -= 3.0 if made.bare and as_planned else 0.0
                again = exact and not as_planned and self.last_load is not None and self.last_load == load.load
                made.cost -= 1.0 if made.bare and again else 0.0
        if made.mult:
            made.cost += self._sets_cost(made.index, made.mult) if stage is not Stage.MINI else 0.0
            most = max(len(self.opens) - made.index, len(self.context.exercise.sets))
            made.cost += 1.0 if not made.mult_said and made.mult > most + 1 else 0.0
            made.cost += 0.0 if made.mult_said else self._prefix_cost(made, reps)

    def _is_on_body(self, state: State, number: int) -> bool:
        """Whether the set before was on body weight where the plan adds or assists: `bw 6 6 5` goes on so."""
        before = state.sets[-1].load if state.sets else None
        planned = self.context.planned_load(number)
        bare = before is not None and before.load is not None and before.load.thousandths == 0
        return bare and planned is not None and planned.thousandths != 0

    def _load_of(self, amount: Amount) -> SaidLoad | None:
        unit = amount.unit or self.unit
        if amount.same_load:
            return SaidLoad(None, amount.start, amount.end)
        value = amount.value
        if amount.body:
            return SaidLoad(
                Load.of((value or Decimal(0)) * (amount.sign or 1), unit),
                amount.start,
                amount.end,
                signed=True,
                unit_at=amount.unit_at or self.unit_at,
            )
        if value is None or abs(value) > 5000:
            return None
        halved = amount.total and self.context.is_per_hand
        if halved:
            value = value / 2
        if amount.sign:
            value = value * amount.sign
        elif self.context.is_bodyweight and value > 0 and not amount.plates:
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
            number_at=amount.number_at,
            unit_at=amount.unit_at or self.unit_at,
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
            made.cost += 0.5 if not made.sets else 1.2
            made.cost += 1.5 if load.load is None else 0.0
            made.cost += 1.5 if made.sets and made.index >= len(self.opens) else 0.0
            made.cost += 1.2 if self._is_its_count(made, asked.high, number) else 0.0
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
                words=replace(made.words_before(), side=made.side_at, stage=made.stage_at),
            )
        )
        made.index += made.mult or 1
        made.mult = None
        made.pending = None
        made.label = None
        made.fresh = False
        return made

    def _is_its_count(self, state: State, reps: int, number: int) -> bool:
        """Whether a bare number is what the plan fixes as repetitions, and no load that is known: `swings 15`."""
        load = None if state.load is None else state.load.load
        if load is None or not state.bare or load.amount_in(self.unit) != reps:
            return False
        return all(
            known is None or known.kg != load.kg for known in (self.context.planned_load(number), self.last_load)
        )


def _are_both_told(state: State) -> bool:
    """`L9 R10, then 9`: each side was told as often as the other, and none was named since."""
    if state.side is None or state.side_named or not state.sets or state.fresh or "L" in state.chain:
        return False
    told = [s.side for s in state.sets if s.stage is Stage.WORK]
    return told[-1:] == [state.side] and told.count(Side.LEFT) == told.count(Side.RIGHT)


def _stage_at(stage: Stage, state: State, amount: Amount) -> Span | None:
    """The words that made a set a drop, a mini or a warm-up; `None` where the plan did, or it is none."""
    if stage is Stage.WORK:
        return None
    signed = amount.join in (Join.ARROW, Join.PLUS, Join.SLASH)
    return state.stage_at or (amount.join_at if signed else None) or (amount.at if amount.sign else None)
