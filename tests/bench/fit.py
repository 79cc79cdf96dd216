"""`python -m tests.bench fit`: sessions cut to less time, by the engine and by a plain greedy cut.

python -m tests.bench fit [--sessions 40] [--seed 1]

For each size, made-up sessions (`tests.training.shorten_worlds`) are cut to a quarter, half and three quarters of their
minutes. Printed: the middle and the longest time of a cut, its ratio to the greedy one's, the share proven best, and
how often the engine's cut is better, equal or worse in the coach's order, with the sets of the highest priority kept by
each. The greedy cut takes the plan as it is and gives one thing after the other, the last in the plan first: optional
sets; a pair with the first opposite exercise met; a second set turned; sets of lower priorities; sets of the highest,
first sets last; until it fits.
"""

import argparse
import sys
import time
from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass, replace
from decimal import Decimal
from statistics import fmean, median

from bot.training.antagonists import can_pair
from bot.training.plan import PlannedExercise, PlannedSession, PlannedSet
from bot.training.session import Session
from bot.training.shorten import shorten
from bot.training.shorten_options import as_pair
from bot.training.shorten_values import Allowed, finish_for
from bot.training.timing import session_time
from tests.training.shorten_worlds import key_of, session_of

SIZES = ((4, 4), (6, 4), (8, 4), (10, 4), (12, 4), (12, 6))
"""Exercises, and the most sets that one has."""
SHARES = (0.25, 0.5, 0.75)


@dataclass(frozen=True, slots=True)
class Draft:
    """A plan on the way: the exercises, and which of them are done in turn."""

    exercises: tuple[PlannedExercise, ...]
    pairs: tuple[tuple[int, int], ...] = ()

    def made(self) -> tuple[PlannedExercise, ...]:
        """The exercises that have sets, the pairs made of those that both do."""
        now = list(self.exercises)
        for one, other in self.pairs:
            if now[one].sets and now[other].sets:
                now[one], now[other] = as_pair(now[one], now[other], f"new {one}")
        return tuple(e for e in now if e.sets)

    def with_sets(self, n: int, sets: tuple[PlannedSet, ...]) -> "Draft":
        """With these sets of an exercise."""
        exercises = [replace(e, sets=sets) if k == n else e for k, e in enumerate(self.exercises)]
        return replace(self, exercises=tuple(exercises))


def greedy(session: Session, minutes: Decimal) -> PlannedSession:
    """One thing after the other until it fits."""
    draft = Draft(session.plan.exercises)
    for give in _gives(session):
        if session_time(draft.made()).seconds <= minutes * 60:
            break
        draft = give(draft)
    return replace(session.plan, exercises=draft.made())


_Give = Callable[[Draft], Draft]


def _gives(session: Session) -> Iterator[_Give]:
    exercises = session.plan.exercises
    top = min(e.priority for e in exercises)
    places = range(len(exercises) - 1, -1, -1)
    for n in places:
        if exercises[n].priority == 3 > top:
            yield from (_without_last(n) for _ in exercises[n].sets)
    yield from (_paired(n) for n in places)
    yield from (_turned(n) for n in places)
    for n in places:
        if top < exercises[n].priority < 3:
            yield from (_without_last(n) for _ in exercises[n].sets)
    for n in places:
        if exercises[n].priority == top:
            yield from (_without_last(n) for _ in exercises[n].sets[1:])
    for n in places:
        if exercises[n].priority == top:
            yield _without_last(n)


def _without_last(n: int) -> _Give:
    return lambda draft: draft.with_sets(n, draft.exercises[n].sets[:-1])


def _paired(n: int) -> _Give:
    def give(draft: Draft) -> Draft:
        now, taken = draft.exercises, {place for pair in draft.pairs for place in pair}
        for k in range(n):
            if not taken & {n, k} and now[n].sets and now[k].sets and can_pair(now[k], now[n]):
                return replace(draft, pairs=(*draft.pairs, (k, n)))
        return draft

    return give


def _turned(n: int) -> _Give:
    def give(draft: Draft) -> Draft:
        sets, finish = draft.exercises[n].sets, finish_for(draft.exercises[n], Allowed())
        if len(sets) < 2 or finish is None or sets[-1].finish or sets[-2].finish:
            return draft
        return draft.with_sets(n, (*sets[:-2], replace(sets[-2], finish=finish)))

    return give


@dataclass(frozen=True, slots=True)
class Trial:
    """A session cut in both ways: seconds (`cpu_s` the processor's), proof, which is better (1: ours, 0: equal, -1:
    greedy), and the sets of the highest priority kept by each."""

    ours_s: float
    cpu_s: float
    greedy_s: float
    proven: bool
    better: int
    kept: tuple[int, int]


def trial(session: Session, minutes: Decimal) -> Trial | None:
    """Cut in both ways; `None` where not one set fits."""
    begun, worked = time.perf_counter(), time.process_time()
    found = shorten(session, minutes)
    ours_s, cpu_s = time.perf_counter() - begun, time.process_time() - worked
    begun = time.perf_counter()
    plain = greedy(session, minutes)
    greedy_s = time.perf_counter() - begun
    if not found.fits:
        return None
    ours, theirs = key_of(session, found.plan), key_of(session, plain)
    top = min(e.priority for e in session.plan.exercises)
    kept = [sum(len(e.sets) for e in plan.exercises if e.priority == top) for plan in (found.plan, plain)]
    return Trial(ours_s, cpu_s, greedy_s, found.proven, (ours < theirs) - (theirs < ours), (kept[0], kept[1]))


def main(argv: Sequence[str]) -> int:
    """Runs the measurement."""
    parser = argparse.ArgumentParser(prog="python -m tests.bench fit")
    parser.add_argument("--sessions", type=int, default=40)
    parser.add_argument("--seed", type=int, default=1)
    chosen = parser.parse_args(argv)
    shorten(session_of(0, 4), Decimal(15))
    out = sys.stdout
    out.write("exercises  sets  middle ms  longest ms  (of the processor)  x greedy  proven")
    out.write("  better/equal/worse  top sets kept (greedy)\n")
    for count, most_sets in SIZES:
        sessions = [session_of(chosen.seed * 1000 + n, count, most_sets=most_sets) for n in range(chosen.sessions)]
        trials = [
            found
            for session in sessions
            for share in SHARES
            if (found := trial(session, Decimal(session.plan.minutes) * Decimal(str(share)))) is not None
        ]
        ours, plain = [t.ours_s * 1e3 for t in trials], [t.greedy_s * 1e3 for t in trials]
        by = [sum(t.better == n for t in trials) for n in (1, 0, -1)]
        out.write(
            f"{count:9}  {fmean(s.plan.set_count for s in sessions):4.0f}  {median(ours):9.1f}  {max(ours):10.1f}"
            f"  {max(t.cpu_s for t in trials) * 1e3:18.1f}"
            f"  {median(ours) / median(plain):8.1f}  {fmean(t.proven for t in trials):6.0%}"
            f"  {by[0]:4} / {by[1]} / {by[2]:<8}  {fmean(t.kept[0] for t in trials):.2f}"
            f" ({fmean(t.kept[1] for t in trials):.2f})\n"
        )
        out.flush()
    return 0
