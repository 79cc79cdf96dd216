"""What marks do to a reading: stages, sides, repeats, `all`, and what a part's end ends."""

from collections.abc import Iterator
from dataclasses import replace

from bot.notation.answer import AskKind, Span
from bot.notation.atoms import Sign
from bot.notation.kinds import Kind
from bot.notation.roles.rating import Rating
from bot.notation.roles.state import State
from bot.notation.said import Doubt, SaidSet, Words
from bot.training.plan import Drop, Mini
from bot.training.report import Side, Stage

_STRAIGHT = frozenset(["straight", "directly", "immediately", "rest", "pause", "break", "without", "right"])
_COUNTS = {"both": 2, "two": 2, "2": 2, "three": 3, "3": 3, "four": 4, "4": 4, "five": 5, "5": 5}


def end_group(state: State) -> None:
    """`first two 10, last one 8`: what follows is of another set than those of the group, which are to be whole."""
    if state.grouped and state.expect is not None and state.index > state.expect_from:
        met = state.index - state.expect_from == state.expect
        state.cost += -1.8 if met else 3.0
        state.expect, state.grouped = None, False


class Steering(Rating):
    """Follows the marks between the amounts."""

    def _sign(self, state: State, sign: Sign) -> Iterator[State]:
        """What a mark makes of a reading; where it may mean two things, both."""
        made = state.copy()
        at = (sign.start, sign.end)
        match sign.kind:
            case Kind.LEFT | Kind.RIGHT:
                if made.fresh and any(s.side is None for s in made.sets[-1:]) and made.sets:
                    made.cost += 0.1
                made.turn_to(Side.LEFT if sign.kind is Kind.LEFT else Side.RIGHT, at)
            case Kind.LASTREP:
                end_group(made)
            case Kind.LASTSET:
                made.repeats = False
                self._name_last(made, at)
            case Kind.LABEL:
                end_group(made)
                made.cost += 1.0 if made.fresh and made.bare and made.sets else 0.0
                made.label, made.label_at = None if sign.value is None else int(sign.value), at
                if made.stage is not Stage.WARMUP:
                    made.enter(Stage.WORK)
            case Kind.DROP | Kind.MINI | Kind.WARMUP | Kind.WORKSET | Kind.ARROW:
                made = self._stage(made, sign)
            case Kind.THEN | Kind.LINE | Kind.STOP | Kind.BREAK | Kind.QUERY | Kind.PART | Kind.COMMA:
                yield from self._edge(made, sign)
                return
            case Kind.AND:
                yield from _after_minis(made)
            case Kind.SAME:
                made = self._same(made, sign)
            case Kind.ALL:
                made = self._all(made, sign)
            case Kind.TIMES if sign.text == "twice" and made.sets:
                last = made.sets[-1]
                words = replace(last.words, sets=at, count=2)
                made.sets = (*made.sets[:-1], replace(last, count=2, end=sign.end, words=words))
                made.index += 1
            case Kind.PLANNED | Kind.DONE:
                made = self._planned(made, sign)
            case Kind.PLATES:
                made.plates = at
            case Kind.EACH if sign.text == "both" and not self.two_sided:
                made = self._all(made, sign)
            case Kind.LEFTPOST | Kind.RIGHTPOST if made.sets:
                words = replace(made.sets[-1].words, side=at)
                side = Side.LEFT if sign.kind is Kind.LEFTPOST else Side.RIGHT
                made.sets = (*made.sets[:-1], replace(made.sets[-1], side=side, words=words))
            case _:
                doubt = self._doubt_of(made, sign.kind)
                if doubt is not None:
                    made.doubts = (*made.doubts, Doubt(doubt, *at))
        yield made

    def _name_last(self, made: State, at: Span) -> None:
        """`last set`: what follows is of it; of sets told alike, only of it."""
        made.last_named = bool(made.sets)
        made.since_last = made.entry if made.sets else 0
        end_group(made)
        if made.all_sets and len(made.sets) == 1 and made.sets[0].count == 1 and len(self.opens) > 1:
            made.label, made.label_at = self.opens[-1], at
        made.all_sets = made.all_sets and len(made.sets) < 2

    def _stage(self, state: State, sign: Sign) -> State:
        """`drop`, `minis`, `warm up`, `working sets`, `>`: the stage of what follows, or of what was just said."""
        at = (sign.start, sign.end)
        match sign.kind:
            case Kind.DROP if state.stage is Stage.WARMUP or (state.sets and state.sets[-1].stage is Stage.WARMUP):
                state.enter(Stage.WORK)
            case Kind.DROP if not state.sets and sign.text.endswith("to") and self.opens and not self._has_drop():
                state.wants_load = True
            case Kind.DROP:
                state = self._alone(state) if state.fresh else state
                state.enter(Stage.DROP, at)
                state.load = None
                state.wants_load = sign.text.endswith("to")
            case Kind.ARROW:
                state = self._alone(state) if state.fresh else state
                state.enter(Stage.DROP, at)
            case Kind.MINI:
                state.enter(Stage.MINI, at)
            case Kind.WORKSET:
                state.enter(Stage.WORK)
            case _:
                state = self._warmup(state, sign)
        return state

    def _has_drop(self) -> bool:
        """Whether the plan has a drop: without one, a load gone down to for the first set told is that set's."""
        return any(isinstance(s.finish, Drop) for s in self.context.exercise.sets)

    def _doubt_of(self, state: State, kind: Kind) -> AskKind | None:
        """Why a mark makes the reading doubtful, if it does."""
        match kind:
            case Kind.BAD:
                return AskKind.NUMBER_FORMAT
            case Kind.SLIP:
                return AskKind.UNSURE
            case Kind.MORE if state.sets and not state.fresh and state.sets[-1].stage is not Stage.DROP:
                return AskKind.UNSURE
            case Kind.BAND if self.context.is_bodyweight:
                return AskKind.LOAD
            case _:
                return None

    def _edge(self, state: State, sign: Sign) -> Iterator[State]:
        """What ends with a part: warm-ups, drops and minis."""
        state.since_edge = state.entry
        if sign.kind is Kind.THEN:
            end_group(state)
        state.since_then = state.entry if sign.kind is Kind.THEN else state.since_then
        state.cost += 2.0 if state.mult and state.mult_follows else 0.0
        if sign.kind is Kind.COMMA:
            if (
                state.stage is Stage.DROP
                and state.sets
                and state.sets[-1].stage is Stage.DROP
                and not is_new_stage(state)
            ):
                state.enter(Stage.WORK)
            yield from _after_minis(state)
            yield state
            return
        if state.stage is Stage.WARMUP and any(s.stage is Stage.WARMUP for s in state.sets):
            state.enter(Stage.WORK)
        if state.stage in (Stage.MINI, Stage.DROP) and sign.kind is not Kind.THEN:
            state.enter(Stage.WORK)
        yield from self._then(state, sign)

    def _warmup(self, state: State, sign: Sign) -> State:
        """`warm up` before its sets, or after them (`40x5 warm up`)."""
        at = (sign.start, sign.end)
        if state.sets and state.stage is Stage.WORK and not state.fresh:
            entry = state.since_edge
            entry_sets = [s for s in state.sets if s.entry > entry or sign.text.split(" ")[0] in ("to", "as", "for")]
            state.sets = (
                *state.sets[: len(state.sets) - len(entry_sets)],
                *(replace(s, stage=Stage.WARMUP, words=replace(s.words, stage=at)) for s in entry_sets),
            )
            state.index -= sum(s.count for s in entry_sets)
            return state
        state.enter(Stage.WARMUP, at)
        return state

    def _then(self, state: State, sign: Sign) -> Iterator[State]:
        """After `then`: the next set, or the drop of a set whose plan has one."""
        if sign.kind is Kind.THEN and not state.sets and not state.fresh and self._waits_for_drop(sign):
            state.enter(Stage.DROP, (sign.start, sign.end))
            yield state
            return
        if sign.kind is not Kind.THEN or not state.sets or state.fresh or state.stage is not Stage.WORK:
            yield state
            return
        spread = 0 if len(state.sets) > 1 else len(self.opens) if state.spread == -1 else state.spread or 0
        number = self.number(state.index - 1 + max(spread - 1, 0))
        planned = self.context.planned(number)
        finish = planned.finish if planned is not None else None
        if isinstance(finish, Drop) and (state.sets[-1].stage is Stage.WORK or self._drops_next(state)):
            drop = state.copy()
            drop.enter(Stage.DROP, (sign.start, sign.end))
            drop.load = None
            yield drop
            state.cost += 1.5
        elif state.sets[-1].stage is Stage.WORK and isinstance(finish, Mini):
            mini = state.copy()
            mini.enter(Stage.MINI, (sign.start, sign.end))
            yield mini
            state.cost += 0.2
        yield state

    def _waits_for_drop(self, sign: Sign) -> bool:
        """Whether words of no rest, before any set, go on with the stored one, whose planned drop is still to come."""
        last = self.context.done[-1] if self.context.done else None
        planned = None if last is None else self.context.planned(last.set)
        drops = planned is not None and isinstance(planned.finish, Drop)
        return drops and last is not None and last.stage is Stage.WORK and bool(_STRAIGHT & set(sign.text.split()))

    def _same(self, state: State, sign: Sign) -> State:
        state.repeats = True
        state.cost += 3.0 if state.expect is not None and state.expect_from == state.index else 0.0
        if sign.text == "rest the same":
            state.mult, state.mult_said, state.mult_at = max(len(self.opens) - state.index, 1), True, None
        state.put(
            SaidSet(
                stage=Stage.WORK,
                start=sign.start,
                end=sign.end,
                count=state.mult or 1,
                same=True,
                like=None if sign.value is None else int(sign.value),
                label=state.label,
                entry=state.entry,
                rir=state.pending,
                words=state.words_before(),
            )
        )
        state.index += state.mult or 1
        state.mult = None
        state.label = None
        state.pending = None
        return state

    def _all(self, state: State, sign: Sign) -> State:
        """`all`, `every set`: each set there is, or, where several are said, the effort of all."""
        if self.two_sided and sign.text in ("both", "on both", "for both") and len(state.sets) == 1:
            return state
        state.all_sets, state.all_at = True, (sign.start, sign.end)
        count = next((_COUNTS[w] for w in sign.text.split() if w in _COUNTS), None)
        if state.after_effort and state.sets and state.sets[-1].rir is not None and len(state.sets) > 1:
            state.rate_last(state.sets[-1].rir, state.sets[-1].words.effort, all_sets=True, most=count)
        if sign.text == "all":
            state.spread = -1 if state.fresh and not state.sets else state.spread
            return state
        if sign.text == "the rest" and state.sets:
            state.mult, state.mult_said, state.mult_at = max(len(self.opens) - state.index, 1), True, state.all_at
            state.all_sets = False
            return state
        if count is not None and len(state.sets) > 1 and self._is_all_of_last(state, count):
            words = replace(state.sets[-1].words, sets=(sign.start, sign.end), count=count)
            state.sets = (*state.sets[:-1], replace(state.sets[-1], count=count, end=sign.end, words=words))
            state.index += count - 1
            return state
        told = state.sets[:1] if _are_sides(state.sets) else state.sets
        if len(told) == 1 and told[0].count == 1 and told[0].stage is Stage.WORK:
            left = max(len(self.opens) - (state.index - 1), 1)
            state.spread = left if count is None else min(count, left)
        elif not state.sets:
            state.spread = -1 if count is None else max(min(count, len(self.opens)), 1)
        return state

    def _is_all_of_last(self, state: State, count: int) -> bool:
        """Whether `both` counts the last set told, at a load of its own, as all that are left: `140x5, 115x8 both`."""
        before, last = state.sets[-2:]
        loads = [s.load.load for s in (before, last) if s.load is not None]
        apart = len(loads) == 2 and loads[0] != loads[1] and last.load is not None and last.load.start >= before.end
        alone = last.count == 1 and last.stage is Stage.WORK and not last.same and not state.fresh
        return apart and alone and state.index - 1 + count == len(self.opens)

    def _planned(self, state: State, sign: Sign) -> State:
        counted = state.mult is not None or state.all_sets
        if state.sets and counted and not state.fresh and not state.sets[-1].planned and sign.kind is Kind.PLANNED:
            at = (sign.start, sign.end)
            state.put(SaidSet(Stage.WORK, *at, count=state.mult or 0, planned=True, words=Words(sets=state.mult_at)))
            state.mult, state.all_sets, state.spread = None, False, None
            return state
        if state.label is not None and not state.fresh and sign.kind is Kind.PLANNED:
            words = Words(number=state.label_at)
            state.put(SaidSet(Stage.WORK, sign.start, sign.end, planned=True, label=state.label, words=words))
            state.label, state.label_at = None, None
            return state
        if state.sets or state.fresh:
            return state
        state.planned = (sign.start, sign.end)
        return state


def is_new_stage(state: State) -> bool:
    """Whether the stage was entered behind the set told last: the drop of `22x9, no rest, 15x8`."""
    return state.stage_at is not None and state.stage_at[0] >= state.sets[-1].end


def _are_sides(sets: tuple[SaidSet, ...]) -> bool:
    """Whether nothing but the two sides of one set was told."""
    return [s.side for s in sets] == [Side.LEFT, Side.RIGHT]


def _after_minis(state: State) -> Iterator[State]:
    """The state with a work set to come, where a list of minis may have ended: `17 +4 +4, 14 +4 +3`."""
    if state.stage is Stage.MINI and state.sets and state.sets[-1].stage is Stage.MINI and not state.fresh:
        made = state.copy()
        made.enter(Stage.WORK)
        made.cost += _ENDED
        yield made


_ENDED = 0.5
"""Against a number behind minis being no mini."""
