"""The number of sets among the numbers, before what they count or after it; and an effort after `@`."""

from collections.abc import Iterator, Sequence

from bot.notation.atoms import Amount, Counts, Effort, Join
from bot.notation.quick import replace
from bot.notation.roles.costs import LINKED
from bot.notation.roles.counts import RepCounts
from bot.notation.roles.state import State
from bot.notation.roles.steering import end_group
from bot.notation.said import SaidSet
from bot.training.report import Side, Stage

_LEAST = 5
"""A lesser number after `at` or `on` is no effort for certain: `with a spot on 2`."""


class SetCounts(RepCounts):
    """What a number is as sets alike, or as an effort."""

    def _as_sets(self, state: State, amount: Amount) -> Iterator[State]:
        chain, join = state.chain, amount.join
        if amount.value is None or amount.value != int(amount.value) or not 1 <= amount.value <= 20:
            return
        count = int(amount.value)
        said = amount.counts is Counts.SETS
        if not amount.group and self._follows_set(state, amount, said):
            if said and not amount.after and _are_alike(state.sets) and state.index == count:
                yield state
                return
            yield self._sets_after(state, amount, count, said)
            if (
                amount.bracketed
                or amount.after
                or not said
                or join not in (Join.SPACE, Join.COMMA, Join.BREAK, Join.THEN, Join.AND)
            ):
                return
        barred = join in (Join.AT, Join.WITH) or state.mult or (amount.lead and not said and join not in LINKED)
        if (
            barred
            or (join in LINKED and chain not in ("", "L", "S"))
            or (chain == "L" and join is Join.FOR and not said)
        ):
            return
        yield from self._sets_before(state, amount, count, said)

    def _follows_set(self, state: State, amount: Amount, said: bool) -> bool:
        """Whether a number of sets can be that of the set just said: `60x5x3`, `60x5, 3 sets`, `x3`."""
        chain, join = state.chain, amount.join
        if not state.sets or state.fresh or state.sets[-1].stage is not state.stage:
            return False
        sided = state.sets[-1].side is Side.RIGHT and chain == "LRR"
        if join in LINKED and chain not in ("LR", "R", "RL", "HLR") and not sided:
            return False
        if join is Join.FOR and not said and chain == "R":
            return False
        return said or join in (Join.X, Join.FOR) or amount.lead

    def _sets_after(self, state: State, amount: Amount, count: int, said: bool) -> State:
        made = state.copy()
        last = made.sets[-1]
        before = made.sets[-2] if len(made.sets) > 1 else None
        if last.side and before is not None and before.side not in (None, last.side) and before.count == 1:
            counted = replace(before, count=count, words=replace(before.words, sets=amount.at, count=count))
            made.sets = (*made.sets[:-2], counted, last)
        if last.count > 1 or last.stage not in (Stage.WORK, Stage.MINI):
            made.cost += 2
        base = 0.0
        if not said and state.chain == "R" and not (self.seconds or self.metres):
            base = 1.4 if amount.join in LINKED and made.load is not None else 1.3
            base = 0.0 if last.side and before is not None and before.side not in (None, last.side) else base
        base += 1.2 if amount.join in (Join.AND, Join.THEN) and not amount.after else 0.0
        base += 2.0 if count == 1 and amount.join in (Join.AND, Join.THEN, Join.COMMA) else 0.0
        made.cost += base + (self._sets_cost(made.index - 1, count) if last.stage is not Stage.MINI else 0.0)
        words = replace(last.words, sets=amount.at, count=count)
        made.sets = (*made.sets[:-1], replace(last, count=count, end=max(last.end, amount.end), words=words))
        made.index += count - 1
        made.chain = state.chain + "S"
        return made

    def _sets_before(self, state: State, amount: Amount, count: int, said: bool) -> Iterator[State]:
        chain = state.chain
        if said and state.grouped:
            state = state.copy()
            end_group(state)
        made = state.copy()
        made.cost += 0.8 if chain == "L" and not said else 0.0
        if said and state.expect is not None and state.index > state.expect_from:
            made.cost += 3.0 if state.index - state.expect_from != state.expect else -1.8
            made.expect, made.grouped = None, False
        made.cost += 3.0 if said and state.grouped and state.fresh else 0.0
        made.mult = count
        made.mult_said = said
        made.mult_follows = amount.join is Join.SPACE and bool(made.sets) and not made.fresh
        made.chain = chain + "S"
        made.mult_at = amount.at
        yield made
        if said and chain in ("", "L") and not amount.fold and state.stage is not Stage.MINI:
            header = state.copy()
            unmet = state.expect is not None and state.index - state.expect_from != state.expect
            header.cost += 3.0 if unmet else 0.0
            header.chain = chain
            header.expect = count
            header.grouped = amount.group and not amount.final
            header.expect_from = header.index
            header.cost += 0.1
            yield header
        if self.context.is_per_hand and count == 2 and not said and chain == "":
            hand = state.copy()
            hand.chain = "H"
            hand.hand = True
            yield hand

    def _as_scale(self, state: State, amount: Amount) -> Iterator[State]:
        """`@9`: an effort, where the number is at most ten."""
        if amount.join is not Join.AT or amount.value is None or amount.value > 10:
            return
        if state.chain == "S" or (state.chain == "" and not amount.lead):
            return
        rir = 10 - amount.value
        half = (rir * 2).to_integral_value() / 2
        start = amount.start if amount.join_at is None else amount.join_at[0]
        effort = Effort(start, amount.end, half, beyond=half != rir or (amount.worded and amount.value < _LEAST))
        made = self._effort(state, effort)
        made.chain += "E"
        if amount.worded and not state.fresh and state.sets and state.sets[-1].load is None and self.context.takes_load:
            made.cost += 1.2
        yield made


def _are_alike(sets: Sequence[SaidSet]) -> bool:
    """Whether several work sets of one load were said, whose number may be told besides: `60: 6 6 5, 3 sets`."""
    work = [x for x in sets if x.stage is Stage.WORK]
    loads = {x.load.load for x in work if x.load is not None}
    return len(work) > 1 and len(loads) < 2
