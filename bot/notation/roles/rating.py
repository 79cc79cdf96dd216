"""An effort put to the set that it is of: the last one, all of them, one side, or the one to come."""

from dataclasses import replace
from decimal import Decimal

from bot.notation.answer import AskKind
from bot.notation.atoms import Amount, Counts, Effort, Join
from bot.notation.roles.emitting import Emitting
from bot.notation.roles.state import State
from bot.notation.said import Doubt
from bot.training.report import Side, Stage


class Rating(Emitting):
    """Gives sets the effort that was said of them."""

    def _effort(self, state: State, effort: Effort) -> State:
        made = state.copy()
        if effort.beyond:
            made.doubts = (*made.doubts, Doubt(AskKind.EFFORT, effort.start, effort.end))
        last = made.sets[-1] if made.sets else None
        if effort.failed is not None and effort.failed > 0:
            new = made.last_named and made.index < len(self.opens) and last is not None and last.reps is not None
            made.cost += 2.0 if made.mult is not None and not made.mult_said else 0.0
            stale = new or last is None or last.rir is not None or (last.reps is not None and last.reps > effort.failed)
            if made.fresh or (last is None) or (stale and made.mult is None):
                amount = Amount(effort.start, effort.end, Join.SPACE, Decimal(effort.failed - 1), counts=Counts.REPS)
                if made.fresh:
                    made.chain = "L"
                    amount = replace(amount, join=Join.FOR)
                made = self._emit(made, amount, effort.failed - 1)
                made.rate_last(Decimal(0), (effort.start, effort.end))
                return made
            if last.reps not in (effort.failed - 1, None):
                made.doubts = (*made.doubts, Doubt(AskKind.EFFORT, effort.start, effort.end))
        elif effort.failed == -1:
            made.doubts = (*made.doubts, Doubt(AskKind.EFFORT, effort.start, effort.end))
        if made.fresh or not made.sets:
            made.pending, made.pending_at = effort.rir, (effort.start, effort.end)
            return made
        if made.side_named and made.side is not None and self.two_sided and not made.all_sets:
            return self._side_effort(made, effort, made.side)
        if last is not None and last.rir is not None and last.rir != effort.rir and made.after_effort:
            made.doubts = (*made.doubts, Doubt(AskKind.EFFORT, effort.start, effort.end))
        if made.last_named and made.all_sets and made.spread and len(made.sets) == 1 and made.sets[0].count == 1:
            count = len(self.opens) if made.spread == -1 else made.spread
            words = replace(made.sets[0].words, sets=made.all_at, count=count)
            made.sets = (replace(made.sets[0], count=max(count, 1), words=words),)
            made.all_sets = False
        counted = len(made.sets) > 1 or made.sets[0].count > 1
        if made.last_named and counted:
            made.all_sets = False
        made.rate_last(effort.rir, (effort.start, effort.end), all_sets=made.all_sets)
        made.after_effort = True
        return made

    def _side_effort(self, state: State, effort: Effort, side: Side) -> State:
        """The effort of one side, named after its sets (`L12 R10, right was to failure`) or before the next one."""
        here = [i for i, s in enumerate(state.sets) if s.side is side and s.stage is Stage.WORK]
        last = state.sets[-1]
        at = (effort.start, effort.end)
        if last.side is not None and last.side is not side and not (here and here[-1] == len(state.sets) - 2):
            state.pending, state.pending_at = effort.rir, at
        elif here:
            rated = state.sets[here[-1]]
            words = replace(rated.words, effort=at)
            rated = replace(rated, rir=effort.rir, end=max(rated.end, effort.end), words=words)
            state.sets = (*state.sets[: here[-1]], rated, *state.sets[here[-1] + 1 :])
        elif last.count == 1 and last.stage is Stage.WORK and not last.same:
            other = Side.RIGHT if side is Side.LEFT else Side.LEFT
            words = replace(last.words, side=state.side_at)
            rated = replace(last, side=side, rir=effort.rir, end=effort.end, words=replace(words, effort=at))
            both = {side: rated, other: replace(last, side=other, words=words)}
            state.sets = (*state.sets[:-1], both[Side.LEFT], both[Side.RIGHT])
        else:
            state.doubts = (*state.doubts, Doubt(AskKind.EFFORT, effort.start, effort.end))
        return state
