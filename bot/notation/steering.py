"""What marks and efforts do to a reading: stages, sides, repeats, `all`, corrections of what was just said."""

from collections.abc import Iterator
from dataclasses import replace
from decimal import Decimal

from bot.notation.answer import AskKind
from bot.notation.atoms import Amount, Counts, Effort, Join, Sign
from bot.notation.emitting import Emitting
from bot.notation.kinds import Kind
from bot.notation.said import Doubt, SaidSet
from bot.notation.state import State
from bot.training.plan import Drop, Mini
from bot.training.report import Side, Stage


class Steering(Emitting):
    """Follows the marks between the amounts."""

    def _effort(self, state: State, effort: Effort) -> State:
        made = state.copy()
        if effort.beyond:
            made.doubts = (*made.doubts, Doubt(AskKind.EFFORT, effort.start, effort.end))
        last = made.sets[-1] if made.sets else None
        if effort.failed is not None and effort.failed > 0:
            stale = last is None or last.rir is not None or (last.reps is not None and last.reps > effort.failed)
            if made.fresh or (last is None) or (stale and made.mult is None):
                amount = Amount(effort.start, effort.end, Join.SPACE, Decimal(effort.failed - 1), counts=Counts.REPS)
                if made.fresh:
                    made.chain = "L"
                    amount = replace(amount, join=Join.FOR)
                made = self._emit(made, amount, effort.failed - 1)
                made.rate_last(Decimal(0))
                return made
            if last.reps not in (effort.failed - 1, None):
                made.doubts = (*made.doubts, Doubt(AskKind.EFFORT, effort.start, effort.end))
        elif effort.failed == -1:
            made.doubts = (*made.doubts, Doubt(AskKind.EFFORT, effort.start, effort.end))
        if made.fresh or not made.sets:
            made.pending = effort.rir
            return made
        if made.side_named and made.side is not None and self.two_sided and not made.all_sets:
            return self._side_effort(made, effort, made.side)
        if last is not None and last.rir is not None and last.rir != effort.rir and made.after_effort:
            made.doubts = (*made.doubts, Doubt(AskKind.EFFORT, effort.start, effort.end))
        made.rate_last(effort.rir, made.all_sets, effort.end)
        made.after_effort = True
        return made

    def _side_effort(self, state: State, effort: Effort, side: Side) -> State:
        """The effort of one side, named after its sets (`L12 R10, right was to failure`) or before the next one."""
        here = [i for i, s in enumerate(state.sets) if s.side is side and s.stage is Stage.WORK]
        last = state.sets[-1]
        if last.side is not None and last.side is not side and not (here and here[-1] == len(state.sets) - 2):
            state.pending = effort.rir
        elif here:
            rated = replace(state.sets[here[-1]], rir=effort.rir, end=max(state.sets[here[-1]].end, effort.end))
            state.sets = (*state.sets[: here[-1]], rated, *state.sets[here[-1] + 1 :])
        elif last.count == 1 and last.stage is Stage.WORK and not last.same:
            other = Side.RIGHT if side is Side.LEFT else Side.LEFT
            both = {side: replace(last, side=side, rir=effort.rir, end=effort.end), other: replace(last, side=other)}
            state.sets = (*state.sets[:-1], both[Side.LEFT], both[Side.RIGHT])
        else:
            state.doubts = (*state.doubts, Doubt(AskKind.EFFORT, effort.start, effort.end))
        return state

    def _sign(self, state: State, sign: Sign) -> Iterator[State]:
        made = state.copy()
        match sign.kind:
            case Kind.LEFT | Kind.RIGHT:
                if made.fresh and any(s.side is None for s in made.sets[-1:]) and made.sets:
                    made.cost += 0.1
                made.turn_to(Side.LEFT if sign.kind is Kind.LEFT else Side.RIGHT)
            case Kind.LABEL:
                made.label = None if sign.value is None else int(sign.value)
                made.stage = Stage.WORK if made.stage is not Stage.WARMUP else made.stage
            case Kind.DROP:
                if made.fresh:
                    made = self._alone(made)
                made.stage = Stage.DROP
                made.load = None
                made.wants_load = sign.text.endswith("to")
            case Kind.MINI:
                made.stage = Stage.MINI
            case Kind.WARMUP:
                made = self._warmup(made, sign)
            case Kind.WORKSET:
                made.stage = Stage.WORK
            case Kind.THEN | Kind.LINE | Kind.STOP | Kind.BREAK | Kind.QUERY | Kind.PART | Kind.COMMA:
                yield from self._edge(made, sign)
                return
            case Kind.ARROW:
                if made.fresh:
                    made = self._alone(made)
                made.stage = Stage.DROP
            case Kind.SAME:
                yield self._same(made, sign)
                return
            case Kind.ALL:
                made = self._all(made, sign)
            case Kind.TIMES if sign.text == "twice" and made.sets:
                last = made.sets[-1]
                made.sets = (*made.sets[:-1], replace(last, count=2, end=sign.end))
                made.index += 1
            case Kind.PLANNED | Kind.DONE:
                made = self._planned(made, sign)
            case Kind.PLATES:
                made.plates = (sign.start, sign.end)
            case Kind.EACH if sign.text == "both" and not self.two_sided:
                made = self._all(made, sign)
            case Kind.EACH | Kind.LEFTPOST | Kind.RIGHTPOST if made.sets:
                if sign.kind is not Kind.EACH:
                    side = Side.LEFT if sign.kind is Kind.LEFTPOST else Side.RIGHT
                    made.sets = (*made.sets[:-1], replace(made.sets[-1], side=side))
            case _:
                doubt = self._doubt_of(made, sign.kind)
                if doubt is not None:
                    made.doubts = (*made.doubts, Doubt(doubt, sign.start, sign.end))
        yield made

    def _doubt_of(self, state: State, kind: Kind) -> AskKind | None:
        """Why a mark makes the reading doubtful, if it does."""
        match kind:
            case Kind.BAD:
                return AskKind.NUMBER_FORMAT
            case Kind.SLIP:
                return AskKind.UNSURE
            case Kind.MORE if state.sets and not state.fresh:
                return AskKind.UNSURE
            case Kind.BAND if self.context.is_bodyweight:
                return AskKind.LOAD
            case _:
                return None

    def _edge(self, state: State, sign: Sign) -> Iterator[State]:
        """What ends with a part: warm-ups, drops and minis."""
        state.since_edge = state.entry
        if sign.kind is Kind.COMMA:
            if state.stage is Stage.DROP and state.sets and state.sets[-1].stage is Stage.DROP:
                state.stage = Stage.WORK
            yield state
            return
        if state.stage is Stage.WARMUP and any(s.stage is Stage.WARMUP for s in state.sets):
            state.stage = Stage.WORK
        if state.stage in (Stage.MINI, Stage.DROP) and sign.kind is not Kind.THEN:
            state.stage = Stage.WORK
        yield from self._then(state, sign)

    def _warmup(self, state: State, sign: Sign) -> State:
        """`warm up` before its sets, or after them (`40x5 warm up`)."""
        if state.sets and state.stage is Stage.WORK and not state.fresh:
            entry = state.since_edge
            entry_sets = [s for s in state.sets if s.entry > entry or sign.text.split()[0] in ("to", "as", "for")]
            state.sets = (
                *state.sets[: len(state.sets) - len(entry_sets)],
                *(replace(s, stage=Stage.WARMUP) for s in entry_sets),
            )
            state.index -= sum(s.count for s in entry_sets)
            return state
        state.stage = Stage.WARMUP
        return state

    def _then(self, state: State, sign: Sign) -> Iterator[State]:
        """After `then`: the next set, or the drop of a set whose plan has one."""
        if sign.kind is not Kind.THEN or not state.sets or state.fresh or state.stage is not Stage.WORK:
            yield state
            return
        number = self.number(state.index - 1)
        planned = self.context.planned(number)
        finish = planned.finish if planned is not None else None
        if state.sets[-1].stage is Stage.WORK and isinstance(finish, Drop):
            drop = state.copy()
            drop.stage = Stage.DROP
            drop.load = None
            yield drop
            state.cost += 1.5
        elif state.sets[-1].stage is Stage.WORK and isinstance(finish, Mini):
            mini = state.copy()
            mini.stage = Stage.MINI
            yield mini
            state.cost += 0.2
        yield state

    def _same(self, state: State, sign: Sign) -> State:
        state.repeats = True
        state.put(
            SaidSet(
                stage=Stage.WORK,
                start=sign.start,
                end=sign.end,
                count=state.mult or 1,
                same=True,
                label=state.label,
                entry=state.entry,
                rir=state.pending,
            )
        )
        state.index += state.mult or 1
        state.mult = None
        state.label = None
        state.pending = None
        return state

    def _all(self, state: State, sign: Sign) -> State:
        """`all`, `every set`: each set there is, or, where several are said, the effort of all."""
        state.all_sets = True
        if state.after_effort and state.sets and state.sets[-1].rir is not None and len(state.sets) > 1:
            state.rate_last(state.sets[-1].rir, True)
        if sign.text == "all":
            return state
        if len(state.sets) == 1 and state.sets[0].count == 1 and state.sets[0].stage is Stage.WORK:
            left = max(len(self.opens) - (state.index - 1), 1)
            state.spread = left
        elif not state.sets:
            state.spread = -1
        return state

    def _planned(self, state: State, sign: Sign) -> State:
        if state.sets or state.fresh:
            return state
        state.planned = (sign.start, sign.end)
        return state
