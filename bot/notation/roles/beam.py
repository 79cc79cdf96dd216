"""The beam over the atoms: which readings are followed, and what each comes to once nothing follows."""

from collections.abc import Iterator, Sequence

from bot.notation.answer import AskKind
from bot.notation.atoms import Amount, Atom, Effort, Sign
from bot.notation.quick import replace
from bot.notation.roles.costs import SLACK, WIDTH
from bot.notation.roles.covering import LOST, lost_numbers
from bot.notation.roles.numbers import Numbers
from bot.notation.roles.state import State
from bot.notation.said import Candidate, Doubt, SaidSet, Words
from bot.training.report import Side, Stage


class Roles(Numbers):
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
        candidates += [counted for c in candidates if (counted := self._as_count(c)) is not None]
        candidates = [replace(c, cost=c.cost + LOST * self._lost(atoms, c)) for c in candidates]
        candidates.sort(key=lambda c: c.cost)
        return candidates

    def _lost(self, atoms: Sequence[Atom], candidate: Candidate) -> int:
        context = self.context
        return lost_numbers(atoms, candidate.sets, takes_load=context.takes_load, per_hand=context.is_per_hand)

    def _step(self, state: State, atom: Atom) -> Iterator[State]:
        match atom:
            case Amount():
                yield from self._amount(state, atom)
            case Effort():
                yield self._effort(state, atom)
            case Sign():
                yield from self._sign(state, atom)

    def _as_count(self, candidate: Candidate) -> Candidate | None:
        """`60 3 5` where three sets are open: three sets of five too, not only a three and a five."""
        if len(candidate.sets) != 2:
            return None
        first, second = candidate.sets
        alike = first.load is not None and first.load == second.load and first.entry == second.entry - 1
        bare = first.words.spaced and second.words.spaced and first.rir is None and first.label is None
        plain = first.stage is second.stage is Stage.WORK and first.count == second.count == 1 and not second.side
        if not (alike and bare and plain) or first.reps is None or second.reps is None:
            return None
        if first.reps < 2 or first.reps != len(self.opens) or second.reps not in self.context.range_of(self.opens[0]):
            return None
        words = replace(second.words, sets=first.words.reps, count=first.reps)
        whole = replace(second, start=first.start, count=first.reps, words=words)
        return replace(candidate, cost=candidate.cost + 0.3, sets=(whole,))

    def _finished(self, state: State) -> Candidate:
        """The reading, once nothing follows."""
        made = state.copy()
        if made.mult and not (made.fresh and made.mult_said) and (made.sets or not made.mult_said):
            made.cost += 6.0
        if made.fresh:
            made = self._alone(made)
        made.cost += 3.0 if made.time_at is not None else 0.0
        made.cost += _TOO_MANY if made.halved and made.index > len(self.opens) else 0.0
        if made.expect is not None:
            after = self.number(made.expect_from + made.expect)
            named = any(s.label is not None and s.label >= after for s in made.sets)
            named = named or (made.since_last > 0 and made.expect_from + made.expect < len(self.opens))
            met = made.index - made.expect_from == made.expect and not named
            made.cost += 3.0 if not met else -1.8 if made.expect > 1 else 0.0
        if made.all_sets and not made.spread and len(made.sets) == 1 and made.sets[0].from_plan:
            made.spread = -1
        if made.spread and len(made.sets) == 1 and made.sets[0].count == 1:
            count = len(self.opens) if made.spread == -1 else made.spread
            words = replace(made.sets[0].words, sets=made.all_at, count=max(count, 1))
            made.sets = (replace(made.sets[0], count=max(count, 1), words=words),)
        made.sets = _spread(made, len(self.opens))
        if made.side_named and made.after_effort:
            made.sets = _rated_on(made.sets, made.side)
        made.cost += 1.0 if made.expect is None and _is_listed(made.sets) else 0.0
        if made.mult and not made.sets and made.planned is None:
            made.cost += 1.0
        if made.planned is not None and not made.sets:
            made.put(
                SaidSet(
                    Stage.WORK,
                    *made.planned,
                    count=made.mult or 0,
                    planned=True,
                    rir=made.pending,
                    rates_all=made.all_sets,
                    words=Words(effort=made.pending_at),
                )
            )
        if made.plates is not None and not any(s.load is not None for s in made.sets):
            made.doubts = (*made.doubts, Doubt(AskKind.LOAD, *made.plates))
        return Candidate(made.cost, made.sets, made.doubts, made.all_sets, made.mult if not made.sets else None)


_PAIR = tuple(Side)
_TOO_MANY = 2.4
"""Against a spoken number as two where that makes more sets than are open: `one hundred ten ten nine eight`."""


def _spread(state: State, opens: int) -> tuple[SaidSet, ...]:
    """`all three 10/10`, `all 3 sets 25x15, minis 4 4`: one set told with both sides, or with what goes on from it."""
    work = [s for s in state.sets if s.stage is Stage.WORK]
    first, last = (work[0], work[-1]) if len(work) == len(_PAIR) else (None, None)
    if state.all_sets and first is not None and last is not None and first.label is None and first.count == 1:
        label = last.label if last.load is not None else None
        if label is not None and label >= opens > len(_PAIR):
            words = replace(first.words, sets=state.all_at, count=opens - 1)
            return (replace(state.sets[0], count=opens - 1, words=words), *state.sets[1:])
    if not state.spread or len(state.sets) < 2 or any(s.count > 1 or s.same or s.label is not None for s in work):
        return state.sets
    paired = len(work) == 2 and {s.side for s in work} == set(Side)
    if not (paired or len(work) == 1) or state.sets[0].stage is not Stage.WORK:
        return state.sets
    count = max(opens if state.spread == -1 else state.spread, 1)
    return tuple(
        replace(s, count=count, words=replace(s.words, sets=state.all_at, count=count)) if s.stage is Stage.WORK else s
        for s in state.sets
    )


def _is_listed(sets: tuple[SaidSet, ...]) -> bool:
    """Whether so many sets were announced as are listed one by one: `3 sets, 8 then 6 then 5` at one load."""
    first = sets[0] if sets else None
    if (
        first is None
        or first.words.sets is None
        or first.words.reps is None
        or first.count != len(sets)
        or len(sets) < 2
    ):
        return False
    alike = all(s.load in (None, first.load) and s.entry > first.entry for s in sets[1:])
    return alike and first.words.sets[0] < first.words.reps[0]


def _rated_on(sets: tuple[SaidSet, ...], side: Side | None) -> tuple[SaidSet, ...]:
    """`L12 R10, rpe 9 on the right`: the effort that was given to both sides is of the one named after it."""
    pair = sets[-2:]
    if len(pair) < 2 or {s.side for s in pair} != set(Side) or pair[0].rir != pair[1].rir:
        return sets
    return (*sets[:-2], *(s if s.side is side else replace(s, rir=None) for s in pair))


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
        before = len(seen)
        seen.add(state.key())
        if len(seen) > before:
            kept.append(state)
    return kept
