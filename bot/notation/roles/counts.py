"""The repetitions among the numbers: a set of their own, a drop's, a mini's, the other side's."""

from collections.abc import Iterator
from dataclasses import replace
from decimal import Decimal

from bot.notation.answer import AskKind
from bot.notation.atoms import Amount, Counts, Join, Sign
from bot.notation.kinds import Kind
from bot.notation.roles.costs import LINKED
from bot.notation.roles.loads import Loads
from bot.notation.roles.state import State
from bot.notation.said import Doubt, SaidLoad
from bot.training.plan import Mini, RepRange
from bot.training.report import Side, Stage

_LEAST, _MOST = Decimal("0.6"), Decimal("1.6")
"""Of the planned load: what is near enough to be one (reading rules of this project)."""
_MAY_COUNT = 0.8
"""The same, where it may be a set of both sides: enough to ask."""
_BEFORE_COUNTS = 1.5
"""Against the `12` of `12 7L 6R` as a set of both sides, and the `55` of `55 40m` as metres: it is their load."""


class RepCounts(Loads):
    """What a number is as repetitions, seconds or metres."""

    def _as_reps(self, state: State, amount: Amount, value: Decimal | None, minutes: bool = False) -> Iterator[State]:
        chain, join = state.chain, amount.join
        if value is None or value != int(value) or value < 0 or value > 100_000:
            return
        reps = int(value)
        near = amount.join in (Join.SPACE, Join.AND)
        if (minutes and state.minutes is not None and near) or (amount.lead and state.sets and state.sets[-1].same):
            return
        if amount.sign:
            if (
                amount.sign == 1
                and not self.seconds
                and (state.stage is Stage.MINI or self._may_be_mini(state, amount))
            ):
                mini = state.copy()
                mini.enter(Stage.MINI)
                yield self._emit(mini, amount, reps)
            return
        if join in LINKED and not _takes_reps(state, amount):
            return
        made = state
        extra = 2.4 if chain in ("LR", "LRR", "LRRR") and join is Join.X else 0.0
        if amount.lead and state.sets:
            extra = 0.3 if join in (Join.COMMA, Join.BREAK) else 1.2
        seconds_after = (
            self.seconds and state.minutes is not None and amount.join in (Join.SPACE, Join.AND) and reps < 60
        )
        if seconds_after and state.sets and state.sets[-1].side is None:
            merged = state.copy()
            last = merged.sets[-1]
            words = replace(last.words, reps=(last.words.reps[0] if last.words.reps else last.start, amount.end))
            merged.sets = (*merged.sets[:-1], replace(last, reps=(last.reps or 0) + reps, end=amount.end, words=words))
            merged.minutes = None
            yield merged
            return
        pair = self._other_side(state, amount, reps)
        if pair is not None:
            yield pair
            made = made.copy()
            made.cost += 1.5
        score = self._is_score(state, amount, reps)
        made = self._emit(made, amount, reps)
        if amount.both and not self.two_sided:
            made = self._all(made, Sign(amount.start, amount.end, Kind.ALL, "both"))
        if made.time_at is not None:
            made.take_time(made.time_at)
        made.cost += 3.0 if join is Join.PLUS and made.sets[-1].stage is Stage.WORK else 0.0
        if score:
            made.doubts = (*made.doubts, Doubt(AskKind.UNSURE, amount.start, amount.end))
        made.cost += extra + self._turned_cost(state, amount)
        made.order = made.order or ("LR" if join is Join.WITH else "")
        made.minutes = reps if minutes else None
        yield made
        yield from self._other_reps(state, amount, reps, made)

    def _turned_cost(self, state: State, amount: Amount) -> float:
        """Against what is rarely said so: `80 with 6` for six at 80, a bare planned load for metres or seconds."""
        if amount.join is Join.WITH and state.bare and not state.order:
            return 2.0
        last = state.sets[-1] if state.sets else None
        bare = last is not None and last.load is None and last.side is None and last.label is None and last.rir is None
        told = (amount.side or state.side) is not None or (self.metres and amount.counts in (Counts.METRES, Counts.M))
        asked = last is not None and last.reps is not None and last.reps in self._asked(state.index - 1)
        if bare and told and amount.join is Join.SPACE and self.context.takes_load:
            return _BEFORE_COUNTS if not asked else _MAY_COUNT * (amount.counts is Counts.UNSAID)
        bare = amount.counts is Counts.UNSAID and (self.metres or self.seconds) and state.chain == ""
        planned = self.context.planned_load(self.number(state.index))
        if not bare or planned is None or amount.value is None or not self.context.takes_load:
            return 0.0
        load = planned.amount_in(amount.unit or self.unit)
        beyond = amount.value > self._asked(state.index).high and _LEAST * load <= amount.value <= _MOST * load
        return 1.5 if amount.value == load or beyond else 0.0

    def _asked(self, index: int) -> RepRange:
        """The repetitions asked for in the `index`-th set."""
        return self.context.range_of(self.number(index))

    def _other_reps(self, state: State, amount: Amount, reps: int, made: State) -> Iterator[State]:
        """What repetitions may be instead of a set of their own; each makes that (`made`) less likely."""
        near = (Join.START, Join.SPACE, Join.WITH, Join.COMMA)
        if (
            state.repeats
            and (state.label is None and state.side is None and amount.side is None and not state.fresh)
            and amount.join in near
            and state.sets
            and state.sets[-1].same
        ):
            again = state.copy()
            load = SaidLoad(None, amount.start, amount.end)
            last = again.sets[-1]
            words = replace(last.words, reps=amount.number_at)
            last = replace(last, same=False, load=load, reps=reps, end=amount.end, words=words)
            again.sets = (*again.sets[:-1], last)
            again.repeats = False
            before = self.context.worked[-1] if self.context.worked and len(again.sets) == 1 else None
            told_again = before is not None and before.reps == reps
            listed = amount.join is Join.COMMA and len(state.sets) > 1 and state.index < len(self.opens)
            made.cost += 2.0 if amount.join is not Join.COMMA or told_again else 0.0
            again.cost += 2.0 if listed and not told_again else 0.0
            yield again
        made.cost += _APART if _ends_pair(state, amount.side or state.side) else 0.0
        for sided in self._but_side(state, amount, reps):
            made.cost += 2.0
            yield sided
        if not self.seconds and amount.join is Join.PLUS and state.stage is Stage.WORK and self._drops_next(state):
            drop = state.copy()
            drop.enter(Stage.DROP)
            made.cost += 3.0
            yield self._emit(drop, amount, reps)
        if not self.seconds and self._may_be_mini(state, amount):
            mini = state.copy()
            mini.enter(Stage.MINI)
            mini = self._emit(mini, amount, reps)
            if amount.join is not Join.PLUS:
                mini.enter(state.stage, state.stage_at)
            made.cost += 3.0 if amount.join is Join.PLUS else 1.2
            yield mini

    def _but_side(self, state: State, amount: Amount, reps: int) -> Iterator[State]:
        """`same but right only got 8`: the set before again, with other repetitions on one side."""
        last = state.sets[-1] if state.sets else None
        side = amount.side or state.side
        if last is None or not (last.same and state.repeats and self.two_sided and side is not None):
            return
        other = Side.RIGHT if side is Side.LEFT else Side.LEFT
        plain = replace(last, same=False, load=SaidLoad(None, last.start, last.end), side=other)
        words = replace(last.words, reps=amount.number_at, side=amount.side_at or state.side_at)
        named = replace(plain, side=side, reps=reps, end=amount.end, words=words)
        made = state.copy()
        pair = (plain, named)
        made.sets = (*made.sets[:-1], *pair)
        made.repeats = False
        yield made

    def _is_score(self, state: State, amount: Amount, reps: int) -> bool:
        """Whether two bare numbers with a slash may be a score out of ten: `4/10`."""
        if amount.join is not Join.SLASH or reps != 10 or not state.sets or state.fresh:
            return False
        last = state.sets[-1]
        low = last.reps is not None and last.reps < self._asked(state.index - 1).low
        return last.entry == state.entry - 1 and low and state.chain == "" and last.load is None

    def _other_side(self, state: State, amount: Amount, reps: int) -> State | None:
        """`10/9` on an exercise of two sides: left, then right."""
        last = state.sets[-1] if state.sets else None
        before = [s.side for s in state.sets[:-1] if not s.same] or [p.side for p in self.context.worked]
        sided = amount.join is Join.AND and before[-1:] in ([Side.RIGHT], [Side.LEFT])
        if not self.two_sided or not (amount.join is Join.SLASH or sided) or last is None or state.fresh:
            return None
        if last.side is not None or last.entry != state.entry - 1 or last.stage is not Stage.WORK or last.reps is None:
            return None
        made = state.copy()
        words = replace(last.words, side=((last.words.reps or amount.at)[0], amount.end))
        left = replace(last, side=Side.LEFT, end=amount.end, words=words)
        right = replace(
            left, side=Side.RIGHT, reps=reps, entry=state.entry, words=replace(words, reps=amount.number_at)
        )
        made.sets = (*made.sets[:-1], left, right)
        made.chain = "LRR"
        made.cost += self._reps_cost(reps, self.number(state.index - 1), Stage.WORK, made)
        turned = amount.join is Join.AND and before[-1:] == [Side.LEFT]
        if turned or max(reps, last.reps) > 2 * min(reps, last.reps):
            made.doubts = (*made.doubts, Doubt(AskKind.UNSURE, last.start, amount.end))
        return made

    def _may_be_mini(self, state: State, amount: Amount) -> bool:
        """Whether bare numbers after a set may be its minis: `+4`, or beside a planned mini finish."""
        if not state.sets or state.stage is not Stage.WORK or amount.join in LINKED or state.fresh:
            return False
        planned = self.context.planned(self.number(state.index - 1))
        if amount.join is Join.PLUS or amount.sign == 1:
            return not self._is_added(amount) or (planned is not None and isinstance(planned.finish, Mini))
        return planned is not None and isinstance(planned.finish, Mini) and amount.counts is Counts.UNSAID


def _takes_reps(state: State, amount: Amount) -> bool:
    """Whether what stands before a link leaves it to repetitions."""
    chain, join = state.chain, amount.join
    if chain not in ("", "L", "S", "HL", "SL", "LS", "LR", "LRR", "LRRR"):
        return False
    if amount.counts is not Counts.UNSAID:
        return True
    if join is Join.AT or (join is Join.WITH and chain != "L"):
        return False
    return not (join is Join.FOR and chain in ("LR", "LRR", "LRRR", "S"))


_APART = 6.0
"""Against one side of `same, then 6 left 5 right` as another number of the set that is the same."""


def _ends_pair(state: State, side: Side | None) -> bool:
    """Whether the side that was taken from a repeated set is told itself right behind the other one."""
    first, second = state.sets[-2:] if len(state.sets) > 1 else (None, None)
    if first is None or second is None or side is None or first.side is not side or second.side is None:
        return False
    return second.side is not side and first.reps is None and not first.planned
