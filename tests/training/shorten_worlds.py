"""Sessions to be cut, made up from a seed; and the best cut found by trying everything, in the coach's order."""

import random
from collections.abc import Iterator, Sequence
from dataclasses import replace
from datetime import date
from itertools import product

from bot.training.antagonists import can_pair, paired_rests
from bot.training.facts import Reported
from bot.training.people import SessionId
from bot.training.plan import Drop, LoadStyle, Measure, PlannedExercise, PlannedSession, PlannedSet, Region, RepRange
from bot.training.report import Performed, Stage
from bot.training.session import Session, with_report
from bot.training.shorten_values import Allowed, finish_for
from bot.training.timing import session_minutes, session_time

KINDS = (
    ("chest", "triceps", Region.UPPER),
    ("back", "biceps", Region.UPPER),
    ("quadriceps", "", Region.LOWER),
    ("hamstrings", "", Region.LOWER),
    ("shoulders", "", Region.UPPER),
    ("biceps", "", Region.UPPER),
    ("triceps", "", Region.UPPER),
    ("abdominals", "", Region.TRUNK),
)
EQUIPMENT = ("bar", "dumbbells", "stack", "stack", "none")


def exercise_of(name: str, chance: random.Random, *, most_sets: int = 4) -> PlannedExercise:
    """An exercise with one to some sets, a heavy one first now and then."""
    muscle, indirect, region = chance.choice(KINDS)
    reps, rest_s = chance.choice([6, 8, 10, 12]), chance.choice([45, 60, 90, 120])
    sets = [PlannedSet(RepRange(reps, reps + 2), rest_s=rest_s)] * chance.randint(1, most_sets)
    if chance.random() < 0.25:
        sets[0] = PlannedSet(RepRange(4, 6), rest_s=180)
    if chance.random() < 0.1:
        sets[-1] = replace(sets[-1], finish=Drop(1, (20, 30)))
    timed = muscle == "abdominals" and chance.random() < 0.5
    return PlannedExercise(
        name,
        tuple(sets),
        load_style=LoadStyle.NONE if timed else LoadStyle.TOTAL,
        measure=Measure.SECONDS if timed else Measure.REPS,
        region=region,
        muscles=(muscle,),
        muscles_indirect=(indirect,) if indirect else (),
        equipment="none" if timed else chance.choice(EQUIPMENT),
        priority=chance.choice([1, 1, 2, 2, 3]),
        setup_s=chance.choice([20, 45, 60, 90]),
    )


def session_of(seed: int, count: int, *, most_sets: int = 4, begun: bool = False) -> Session:
    """A session of so many exercises; where it is begun, with the first sets of the first ones reported."""
    chance = random.Random(seed)
    exercises = [exercise_of(f"E{n}", chance, most_sets=most_sets) for n in range(count)]
    if count > 2 and chance.random() < 0.4:
        exercises[1:3] = [replace(e, pair="A") for e in exercises[1:3]]
    session = as_session(exercises)
    if begun:
        for e in exercises[: chance.randint(1, 2)]:
            session = done(session, e.name, *range(1, chance.randint(1, len(e.sets)) + 1))
    return session


def as_session(exercises: Sequence[PlannedExercise]) -> Session:
    """The session of these exercises, nothing done."""
    plan = PlannedSession("Today", tuple(exercises), session_minutes(tuple(exercises)))
    return Session(SessionId("s"), "c", date(2026, 1, 5), 0, plan, "t")


def done(session: Session, name: str, *numbers: int) -> Session:
    """The session with these sets reported, each by itself."""
    for number in numbers:
        performed = Performed(name, number, Stage.WORK, None, 8)
        session = with_report(session, Reported("s", f"m{name}{number}", (performed,)))
    return session


Key = tuple[int, ...]


def best_by_hand(session: Session, seconds: int, allowed: Allowed) -> Key | None:
    """The worth of the best cut: the step of the order, then what is counted there; `None` where nothing fits."""
    return min((key for key, took in _ways(session, allowed) if took <= seconds), default=None)


def key_of(session: Session, plan: PlannedSession) -> Key:
    """The worth of a plan that was cut from this session."""
    wanted = [e for e in session.plan.exercises if _open(session, e)]
    stays = {e.name: e for e in plan.exercises}
    kept, turned = [], 0
    for e in wanted:
        behind = len(e.sets) - len(_open(session, e))
        now = stays[e.name].sets[behind:] if e.name in stays else ()
        more = sum(s.finish is not None for s in now) - sum(
            s.finish is not None for s in e.sets[behind : behind + len(now)]
        )
        new = max(0, more)
        kept.append(len(now) + new)
        turned += new
    before = {e.name: e.pair for e in wanted}
    paired = sum(bool(e.pair) and e.name in before and not before[e.name] for e in plan.exercises) // 2
    return _key(session, wanted, kept, turned=turned, paired=paired)


def _open(session: Session, e: PlannedExercise) -> tuple[PlannedSet, ...]:
    return e.sets[max((p.set or 0 for p in session.work_done(e.name)), default=0) :]


def _key(session: Session, wanted: Sequence[PlannedExercise], kept: Sequence[int], *, turned: int, paired: int) -> Key:
    top = min(e.priority for e in wanted)
    lost = {"top": 0, "low": 0, "optional": 0}
    heavy = firsts = 0
    for e, stay in zip(wanted, kept, strict=True):
        count = len(_open(session, e))
        kind = "top" if e.priority == top else "optional" if e.priority == 3 else "low"
        lost[kind] += count - stay
        if kind == "top" and stay == 0 and count == len(e.sets):
            heavy += (e.sets[0].rest_s or 0) >= 180
            firsts += (e.sets[0].rest_s or 0) < 180
    if lost["top"]:
        return (3, heavy, firsts, lost["top"], turned, paired)
    if lost["low"]:
        return (2, lost["low"], turned, paired)
    return (1, turned, paired) if turned or paired else (0, lost["optional"])


def _ways(session: Session, allowed: Allowed) -> Iterator[tuple[Key, int]]:
    """Every way that keeps to the order, with the seconds that it takes."""
    wanted = [e for e in session.plan.exercises if _open(session, e)]
    begun = {p.exercise for p in session.done}
    remaining = [replace(e, sets=_open(session, e)) for e in wanted]
    if not wanted:
        return
    top = min(e.priority for e in wanted)
    for choice in product(*(_choices(e, allowed) for e in remaining)):
        ahead, kept, turned = [c[0] for c in choice], [c[1] for c in choice], sum(c[2] for c in choice)
        for pairs in _matchings(list(range(len(ahead))), remaining, ahead, allowed):
            key = _key(session, wanted, kept, turned=turned, paired=len(pairs))
            if not any(kept) or not _in_order(wanted, ahead, key, top):
                continue
            plan = list(ahead)
            for one, other in pairs:
                rests = paired_rests(ahead[one], ahead[other])
                for place in (one, other):
                    sets = [replace(s, rest_s=r) for s, r in zip(ahead[place].sets, rests, strict=False)]
                    plan[place] = replace(
                        ahead[place], sets=(*sets, *ahead[place].sets[len(sets) :]), pair=f"new {one}"
                    )
            yield key, session_time([e for e in plan if e.sets], begun=begun).seconds


def _in_order(wanted: Sequence[PlannedExercise], ahead: Sequence[PlannedExercise], key: Key, top: int) -> bool:
    """Nothing of a step while something of an earlier one is left to give."""
    stays = [e.priority for e, now in zip(wanted, ahead, strict=True) if now.sets and e.priority != top]
    if key[0] == 3:
        return not stays
    return key[0] == 0 or 3 not in stays


def _choices(e: PlannedExercise, allowed: Allowed) -> Iterator[tuple[PlannedExercise, int, int]]:
    for kept in range(len(e.sets) + 1):
        sets = e.sets[:kept]
        now = replace(e, sets=sets)
        yield now, kept, 0
        finish = finish_for(now, allowed)
        if kept >= 2 and finish and not sets[-1].finish and not sets[-2].finish:
            yield replace(e, sets=(*sets[:-2], replace(sets[-2], finish=finish))), kept, 1


def _matchings(
    left: list[int], whole: Sequence[PlannedExercise], ahead: Sequence[PlannedExercise], allowed: Allowed
) -> Iterator[list[tuple[int, int]]]:
    if not left:
        yield []
        return
    first, others = left[0], left[1:]
    yield from _matchings(others, whole, ahead, allowed)
    for other in others:
        spared = {whole[first].name, whole[other].name} & allowed.spared
        both = ahead[first].sets and ahead[other].sets
        if allowed.pairs and both and not spared and can_pair(whole[first], whole[other]):
            for pairs in _matchings([n for n in others if n != other], whole, ahead, allowed):
                yield [(first, other), *pairs]
