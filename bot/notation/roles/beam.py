"""The beam over the atoms: which readings are followed, and what each comes to once nothing follows."""

from collections.abc import Iterator, Sequence
from dataclasses import replace

from bot.notation.answer import AskKind
from bot.notation.atoms import Amount, Atom, Effort, Sign
from bot.notation.roles.costs import SLACK, WIDTH
from bot.notation.roles.numbers import Numbers
from bot.notation.roles.state import State
from bot.notation.said import Candidate, Doubt, SaidSet
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
            words = replace(made.sets[0].words, sets=made.all_at, count=max(count, 1))
            made.sets = (replace(made.sets[0], count=max(count, 1), words=words),)
        if made.side_named and made.after_effort:
            made.sets = _rated_on(made.sets, made.side)
        if made.mult and not made.sets and made.planned is None:
            made.cost += 1.0
        if made.planned is not None and not made.sets:
            made.put(SaidSet(Stage.WORK, *made.planned, count=made.mult or 0, planned=True))
        if made.plates is not None and not any(s.load is not None for s in made.sets):
            made.doubts = (*made.doubts, Doubt(AskKind.LOAD, *made.plates))
        return Candidate(made.cost, made.sets, made.doubts, made.all_sets, made.mult if not made.sets else None)


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
        key = state.key()
        if key not in seen:
            seen.add(key)
            kept.append(state)
    return kept
