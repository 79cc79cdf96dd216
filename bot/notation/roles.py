"""Which number is the load, which the repetitions, which the sets: all readings of a stretch, ranked beside the plan.

A beam goes over the atoms. Every amount takes each role that its words and its join allow; what the plan speaks against
costs. Costs are this reader's own scale: `OUT` is out of reason, differences under `MARGIN` are too close to call.
"""

from collections.abc import Iterator, Sequence
from dataclasses import replace
from decimal import Decimal

from bot.notation.answer import AskKind
from bot.notation.atoms import Amount, Atom, Counts, Effort, Join, Sign
from bot.notation.costs import LINKED, SLACK, WIDTH
from bot.notation.said import Candidate, Doubt, SaidLoad, SaidSet
from bot.notation.state import State
from bot.notation.steering import Steering
from bot.training.plan import Mini
from bot.training.report import Side, Stage
from bot.training.units import Load


class Roles(Steering):
    """The readings of one stretch of atoms for one exercise."""

    def read(self, atoms: Sequence[Atom]) -> list[Candidate]:
        """All readings worth weighing, best first."""
        states = [State()]
        for atom in atoms:
            following: list[State] = []
            for state in states:
                following.extend(self._step(state, atom))
            states = _pruned(following)
            if not states:
                return []
        candidates = [self._finished(state) for state in states]
        candidates.sort(key=lambda c: c.cost)
        return candidates

    def _step(self, state: State, atom: Atom) -> Iterator[State]:
        match atom:
            case Amount():
                yield from self._amount(state, atom)
            case Effort():
                yield self._effort(state, atom)
            case Sign():
                yield from self._sign(state, atom)

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
        if amount.parts and not amount.clock and (amount.value is None or amount.counts is Counts.REPS):
            yield from self._as_parts(state, amount)
            if amount.value is None:
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
            if reps_on_body:
                pass
            elif not amount.each or not self.two_sided or (self.context.is_per_hand and not amount.limb):
                yield from self._as_load(state, amount)
            if not amount.hand and not amount.total and not amount.body:
                yield from self._as_reps(state, amount, amount.value)
            elif amount.body and amount.sign == 0:
                yield from self._body_reps(state, amount)
            if not amount.sign and not amount.each:
                yield from self._as_sets(state, amount)
                yield from self._as_scale(state, amount)
        splits = amount.join not in LINKED or (amount.join is Join.X and not amount.spoken)
        if amount.parts and splits:
            yield from self._as_parts(state, amount)

    def _as_times(self, state: State, amount: Amount) -> Iterator[State]:
        """`5 times`: the repetitions of a load that waits for them or is to come, else the sets."""
        if state.fresh or not state.sets:
            yield from self._as_reps(state, replace(amount, counts=Counts.REPS), amount.value)
        if not state.fresh:
            for made in self._as_sets(state, replace(amount, counts=Counts.SETS)):
                made.cost += 0.0 if state.sets else 0.6
                yield made

    def _body_reps(self, state: State, amount: Amount) -> Iterator[State]:
        """`12 bw`: repetitions on body weight."""
        loaded = state.copy()
        loaded.load = SaidLoad(Load.of(0, self.unit), amount.start, amount.end, signed=True)
        loaded.fresh = False
        yield from self._as_reps(loaded, replace(amount, body=False), amount.value)

    def _as_measure(self, state: State, amount: Amount) -> Iterator[State]:
        if amount.value is None:
            yield state
            return
        is_minutes = amount.counts is Counts.MINUTES or (amount.counts is Counts.M and self.seconds)
        if self.seconds and (is_minutes or amount.counts is Counts.SECONDS):
            yield from self._as_reps(state, amount, amount.value * 60 if is_minutes else amount.value, is_minutes)
        elif self.metres and amount.counts in (Counts.METRES, Counts.M):
            yield from self._as_reps(state, amount, amount.value)
        else:
            yield state

    def _as_clock(self, state: State, amount: Amount) -> Iterator[State]:
        first, second = amount.parts
        if self.seconds:
            yield from self._as_reps(state, amount, first * 60 + second)
            return
        loaded = replace(amount, clock=False, value=first, parts=())
        reps = replace(amount, clock=False, value=second, parts=(), join=Join.COLON)
        for made in self._as_load(state, loaded):
            yield from self._as_reps(made, reps, second)

    def _as_parts(self, state: State, amount: Amount) -> Iterator[State]:
        """The other reading of a number: `12,11` as two, `sixty five` as 60 and 5."""
        states = [state]
        counts = Counts.REPS if amount.counts is Counts.REPS else Counts.UNSAID
        if amount.value is not None and not amount.spoken:
            state = state.copy()
            state.cost += self._split_cost(amount, state)
            states = [state]
        for index, part in enumerate(amount.parts):
            single = replace(
                amount, value=part, parts=(), join=amount.join if index == 0 else Join.COMMA, counts=counts
            )
            following: list[State] = []
            for each in states:
                base = each
                if index:
                    base = each.copy()
                    base.chain = ""
                if base.chain == "" and amount.spoken and index == 0:
                    following.extend(self._as_load(base, single))
                elif counts is Counts.REPS:
                    following.extend(self._as_reps(base, single, part))
                else:
                    if base.chain == "" or index == 0:
                        following.extend(self._as_load(base, single))
                    following.extend(self._as_reps(base, single, part))
            states = following
        for each in states:
            if amount.spoken:
                each.cost += 0.3
            yield each

    def _as_load(self, state: State, amount: Amount) -> Iterator[State]:
        chain, join = state.chain, amount.join
        if not self.context.takes_load:
            if amount.counts in (Counts.LOAD, Counts.S) or amount.body:
                made = state.copy()
                made.chain = chain + "L"
                yield made
            return
        said = self._load_of(amount)
        if said is None:
            return
        surprise = 0.0 if amount.counts is not Counts.UNSAID or amount.hand or amount.total or amount.sign else None
        if join is Join.AT and chain == "" and amount.lead and state.sets and surprise is None:
            if state.sets[-1].load is None and state.sets[-1].entry == state.entry - 1 and not state.fresh:
                late = state.copy()
                late.chain = "R"
                yield from self._load_after(late, amount, said)
            return
        if join in (Join.X, Join.AT, Join.WITH) and chain in ("R", "SR", "RS"):
            yield from self._load_after(state, amount, said)
            return
        if join in LINKED and chain not in ("", "S", "H"):
            return
        if join is Join.FOR and chain:
            return
        made = state.copy()
        if chain == "S" and join is Join.X:
            made.cost += 0.5 if surprise is not None else 1.5
        if chain == "H":
            made.hand = True
        if made.fresh:
            made = self._alone(made)
        if surprise is None and amount.join not in LINKED and made.sets and made.load is not None:
            same = made.load.load is not None and said.load is not None and made.load.load.kg == said.load.kg
            made.cost += 0.0 if same else 0.4
        if made.stage is Stage.MINI and surprise is None:
            return
        made.slashed = join in (Join.SLASH, Join.PLUS) and bool(made.sets) and self._drops_next(made)
        made.wants_load = False
        made.load = replace(said, hand=said.hand or made.hand)
        made.hand = False
        made.fresh = True
        made.bare = surprise is None
        made.chain = chain + "L"
        made.start = amount.start
        yield made
        if join in (Join.COMMA, Join.SPACE) and made.stage is Stage.WORK and self._may_drop(state, said):
            drop = made.copy()
            drop.stage = Stage.DROP
            yield drop
        if (
            amount.join in (Join.SPACE, Join.COMMA)
            and made.sets
            and made.sets[-1].load is None
            and made.sets[-1].entry == state.entry - 1
            and not state.fresh
        ):
            late = state.copy()
            late.chain = "R"
            late.cost += 0.2 if surprise is not None else 1.0
            yield from self._load_after(late, amount, said)

    def _load_after(self, state: State, amount: Amount, said: SaidLoad) -> Iterator[State]:
        """A load said after its repetitions: `5 reps at 60`, `5x60`."""
        made = state.copy()
        number = self.number(made.index - 1)
        last = made.sets[-1]
        group = [s for s in made.sets if s.entry == last.entry]
        if len(group) == 1 and _inherits(last) and amount.join in (Join.WITH, Join.AT):
            made.sets = (*made.sets[:-1], replace(last, load=None))
            group = [made.sets[-1]]
        if last.stage is Stage.MINI:
            return
        if amount.join is Join.WITH:
            group = [s for s in made.sets if s.load is None]
            made.sets = (*(s for s in made.sets if s.load is not None), *group)
        if amount.join is Join.X and made.chain == "R" and amount.counts is Counts.UNSAID:
            assert said.load is not None
            reps = last.reps or 0
            made.cost += 1.2 if reps * 2 < self.context.range_of(number).low else 0.0
            made.cost += 1.2 if made.order == "LR" else 0.0
            made.order = made.order or "RL"
            if self.last_load is None and self.context.planned_load(number) is None:
                made.cost += 0.5
        made.cost += self._load_cost(said, number, last.stage, made)
        if last.stage is not Stage.WORK and amount.join is Join.X:
            made.cost += 1.5
        changed = [replace(s, load=said, end=max(s.end, amount.end)) if s.load is None else s for s in group]
        made.sets = (*made.sets[: len(made.sets) - len(group)], *changed)
        made.load = said
        made.fresh = False
        made.chain += "L"
        yield made

    def _as_reps(self, state: State, amount: Amount, value: Decimal | None, minutes: bool = False) -> Iterator[State]:
        chain, join = state.chain, amount.join
        if value is None or value != int(value) or value < 0 or value > 100_000:
            return
        reps = int(value)
        if (minutes and state.minutes is not None) or (amount.lead and state.sets and state.sets[-1].same):
            return
        if amount.sign:
            if amount.sign == 1 and not self.seconds and self._may_be_mini(state, amount):
                mini = state.copy()
                mini.stage = Stage.MINI
                yield self._emit(mini, amount, reps)
            return
        if join in LINKED and not _takes_reps(state, amount):
            return
        made = state
        extra = 1.6 if chain in ("LR", "LRR", "LRRR") and join is Join.X else 0.0
        if amount.lead and state.sets:
            extra = 0.3 if join in (Join.COMMA, Join.BREAK) else 1.2
        seconds_after = (
            self.seconds and state.minutes is not None and amount.join in (Join.SPACE, Join.AND) and reps < 60
        )
        if seconds_after and state.sets:
            merged = state.copy()
            last = merged.sets[-1]
            merged.sets = (*merged.sets[:-1], replace(last, reps=(last.reps or 0) + reps, end=amount.end))
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
        if score:
            made.doubts = (*made.doubts, Doubt(AskKind.UNSURE, amount.start, amount.end))
        made.cost += extra
        made.minutes = reps if minutes else None
        yield made
        yield from self._other_reps(state, amount, reps, made)

    def _other_reps(self, state: State, amount: Amount, reps: int, made: State) -> Iterator[State]:
        """What repetitions may be instead of a set of their own; each makes that (`made`) less likely."""
        near = (Join.START, Join.SPACE, Join.WITH, Join.COMMA)
        if state.repeats and amount.join in near and not amount.spoken and state.sets and state.sets[-1].same:
            again = state.copy()
            load = SaidLoad(None, amount.start, amount.end)
            last = replace(again.sets[-1], same=False, load=load, reps=reps, end=amount.end)
            again.sets = (*again.sets[:-1], last)
            again.repeats = False
            made.cost += 2.0 if amount.join is not Join.COMMA else 0.0
            yield again
        if not self.seconds and amount.join is Join.PLUS and state.stage is Stage.WORK and self._drops_next(state):
            drop = state.copy()
            drop.stage = Stage.DROP
            made.cost += 3.0
            yield self._emit(drop, amount, reps)
        if not self.seconds and self._may_be_mini(state, amount):
            mini = state.copy()
            mini.stage = Stage.MINI
            mini = self._emit(mini, amount, reps)
            if amount.join is not Join.PLUS:
                mini.stage = state.stage
            made.cost += 3.0 if amount.join is Join.PLUS else 1.2
            yield mini

    def _is_score(self, state: State, amount: Amount, reps: int) -> bool:
        """Whether two bare numbers with a slash may be a score out of ten: `4/10`."""
        if amount.join is not Join.SLASH or reps != 10 or not state.sets or state.fresh:
            return False
        last = state.sets[-1]
        low = last.reps is not None and last.reps < self.context.range_of(self.number(state.index - 1)).low
        return last.entry == state.entry - 1 and low and state.chain == ""

    def _other_side(self, state: State, amount: Amount, reps: int) -> State | None:
        """`10/9` on an exercise of two sides: left, then right."""
        last = state.sets[-1] if state.sets else None
        if not self.two_sided or amount.join is not Join.SLASH or last is None or state.fresh:
            return None
        if last.side is not None or last.entry != state.entry - 1 or last.stage is not Stage.WORK or last.reps is None:
            return None
        made = state.copy()
        right = replace(last, side=Side.RIGHT, reps=reps, end=amount.end, start=last.start, entry=state.entry)
        made.sets = (*made.sets[:-1], replace(last, side=Side.LEFT, end=amount.end), right)
        made.chain = "LRR"
        made.cost += self._reps_cost(reps, self.number(state.index - 1), Stage.WORK, made)
        if max(reps, last.reps) > 2 * min(reps, last.reps):
            made.doubts = (*made.doubts, Doubt(AskKind.UNSURE, last.start, amount.end))
        return made

    def _may_be_mini(self, state: State, amount: Amount) -> bool:
        """Whether bare numbers after a set may be its minis: `+4`, or beside a planned mini finish."""
        if not state.sets or state.stage is not Stage.WORK or amount.join in LINKED or state.fresh:
            return False
        if amount.join is Join.PLUS or amount.sign == 1:
            return True
        planned = self.context.planned(self.number(state.index - 1))
        return planned is not None and isinstance(planned.finish, Mini) and amount.counts is Counts.UNSAID

    def _as_sets(self, state: State, amount: Amount) -> Iterator[State]:
        chain, join = state.chain, amount.join
        if amount.value is None or amount.value != int(amount.value) or not 1 <= amount.value <= 20:
            return
        count = int(amount.value)
        said = amount.counts is Counts.SETS
        if self._follows_set(state, amount, said):
            if said and sum(x.stage is Stage.WORK for x in state.sets) > 1 and state.index == count:
                yield state
                return
            yield self._sets_after(state, amount, count, said)
            if not said or join not in (Join.SPACE, Join.COMMA, Join.BREAK, Join.THEN, Join.AND):
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
        if last.side is Side.RIGHT and before is not None and before.side is Side.LEFT and before.count == 1:
            made.sets = (*made.sets[:-2], replace(before, count=count), last)
        if last.count > 1 or last.stage is not Stage.WORK:
            made.cost += 2
        base = 0.0
        if not said and state.chain == "R":
            base = 1.4 if amount.join in LINKED and made.load is not None else 1.3
        made.cost += base + self._sets_cost(made.index - 1, count)
        made.sets = (*made.sets[:-1], replace(last, count=count, end=max(last.end, amount.end)))
        made.index += count - 1
        made.chain = state.chain + "S"
        return made

    def _sets_before(self, state: State, amount: Amount, count: int, said: bool) -> Iterator[State]:
        chain = state.chain
        made = state.copy()
        made.cost += 0.8 if chain == "L" and not said else 0.0
        made.mult = count
        made.mult_said = said
        made.chain = chain + "S"
        made.mult_start = amount.start
        yield made
        if said and chain in ("", "L"):
            header = state.copy()
            header.chain = chain
            header.expect = count
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
        effort = Effort(amount.start, amount.end, half, beyond=half != rir)
        made = self._effort(state, effort)
        made.chain += "E"
        if amount.worded and not state.fresh and state.sets and state.sets[-1].load is None and self.context.takes_load:
            made.cost += 1.2
        yield made

    def _finished(self, state: State) -> Candidate:
        """The reading, once nothing follows."""
        made = state.copy()
        if made.mult and (made.sets or not made.mult_said):
            made.cost += 6.0
        if made.fresh:
            made = self._alone(made)
        if made.expect is not None:
            met = made.index - made.expect_from == made.expect
            made.cost += 3.0 if not met else -1.0 if made.expect > 1 else 0.0
        if made.all_sets and not made.spread and len(made.sets) == 1 and made.sets[0].from_plan:
            made.spread = -1
        if made.spread and len(made.sets) == 1 and made.sets[0].count == 1:
            count = len(self.opens) if made.spread == -1 else made.spread
            made.sets = (replace(made.sets[0], count=max(count, 1)),)
        if made.side_named and made.after_effort:
            made.sets = _rated_on(made.sets, made.side)
        if made.mult and not made.sets and made.planned is None:
            made.cost += 1.0
        if made.planned is not None and not made.sets:
            made.put(SaidSet(Stage.WORK, *made.planned, count=made.mult or 0, planned=True))
        if made.plates is not None and not any(s.load is not None for s in made.sets):
            made.doubts = (*made.doubts, Doubt(AskKind.LOAD, *made.plates))
        return Candidate(made.cost, made.sets, made.doubts, made.all_sets, made.mult if not made.sets else None)


def _inherits(said: SaidSet) -> bool:
    """Whether the load of a set was said with one before it: `60x7, 6 at 55`."""
    return said.load is not None and said.load.end < said.start


def _rated_on(sets: tuple[SaidSet, ...], side: Side | None) -> tuple[SaidSet, ...]:
    """`L12 R10, rpe 9 on the right`: the effort that was given to both sides is of the one named after it."""
    pair = sets[-2:]
    if len(pair) < 2 or {s.side for s in pair} != set(Side) or pair[0].rir != pair[1].rir:
        return sets
    return (*sets[:-2], *(s if s.side is side else replace(s, rir=None) for s in pair))


def _takes_reps(state: State, amount: Amount) -> bool:
    """Whether what stands before a link leaves it to repetitions."""
    chain, join = state.chain, amount.join
    if chain not in ("", "L", "S", "HL", "SL", "LS", "LR", "LRR", "LRRR"):
        return False
    if amount.counts is not Counts.UNSAID:
        return True
    if join is Join.AT or (join is Join.WITH and (chain != "L" or state.bare)):
        return False
    return not (join is Join.FOR and chain in ("LR", "LRR", "LRRR", "S"))


def _pruned(states: list[State]) -> list[State]:
    """The likeliest states, each way to have come to the same sets once."""
    if len(states) <= 1:
        return states
    states.sort(key=lambda s: s.cost)
    limit = states[0].cost + SLACK
    kept: list[State] = []
    seen: set[object] = set()
    for state in states:
        if state.cost > limit or len(kept) >= WIDTH:
            break
        key = state.key()
        if key not in seen:
            seen.add(key)
            kept.append(state)
    return kept
