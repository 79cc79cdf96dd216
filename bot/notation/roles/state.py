"""Where the beam of `roles` stands: what was read so far, and what waits for its other half."""

from dataclasses import dataclass, fields, replace
from decimal import Decimal
from operator import attrgetter

from bot.notation.answer import Span
from bot.notation.said import Doubt, SaidLoad, SaidSet, Words
from bot.training.report import Side, Stage


@dataclass(slots=True, eq=False)
class State:
    """One reading in the making. Copied before it is changed."""

    cost: float = 0.0
    sets: tuple[SaidSet, ...] = ()
    doubts: tuple[Doubt, ...] = ()
    chain: str = ""
    """The roles of the entry under way: `LR` after `60x5`."""
    entry: int = 0
    index: int = 0
    """Work sets said so far."""
    load: SaidLoad | None = None
    """The load that holds for what follows."""
    fresh: bool = False
    """Whether that load waits for its first repetitions."""
    bare: bool = False
    """Whether nothing but its place says that it is a load."""
    start: int = 0
    order: str = ""
    """Whether pairs so far were load first (`LR`) or repetitions first (`RL`)."""
    repeats: bool = False
    """Whether `same` was just said, which a number may change (`same but 4`)."""
    wants_load: bool = False
    """Whether a load must follow: `dropped to`."""
    since_edge: int = 0
    """The entry before the last comma or sentence."""
    since_then: int = 0
    """The entry before the last `then`."""
    since_last: int = 0
    """The entry before `last set`, whose load is told by itself: `9, 8, last one 5 with 20 off`."""
    hand: bool = False
    slashed: bool = False
    """Whether that load came after a slash, where a drop was planned."""
    mult: int | None = None
    """Sets said before what they count."""
    mult_said: bool = False
    mult_follows: bool = False
    """Whether they stood straight after a set: `60x5 2 sets`."""
    mult_at: Span | None = None
    expect: int | None = None
    """How many sets a list was announced to have."""
    expect_from: int = 0
    halved: bool = False
    """Whether a spoken number was taken for two: `one hundred ten` for ten at 100."""
    grouped: bool = False
    """Whether they were told as a group: `first two`, which another set's name ends."""
    stage: Stage = Stage.WORK
    stage_at: Span | None = None
    """The words of that stage; `None` where the plan has it."""
    side: Side | None = None
    side_at: Span | None = None
    side_named: bool = False
    """Whether a side was said after the last set: what follows is of it."""
    label: int | None = None
    label_at: Span | None = None
    pending: Decimal | None = None
    """An effort said before its set."""
    pending_at: Span | None = None
    after_effort: bool = False
    last_named: bool = False
    """Whether the last set was named since: an effort is of it alone."""
    all_sets: bool = False
    all_at: Span | None = None
    spread: int | None = None
    """To how many sets one set is spread; -1 for all that are open."""
    minutes: int | None = None
    """Seconds of minutes just said, which seconds may follow."""
    timed: int = 0
    """Of how many distances the time was told."""
    time_at: Span | None = None
    """A time told before its distance."""
    planned: tuple[int, int] | None = None
    plates: tuple[int, int] | None = None
    """Plates or a bar, whose load is not said."""

    def copy(self) -> "State":
        """A state alike."""
        return State(*_values(self))

    def put(self, said: SaidSet) -> None:
        """Adds a set."""
        self.sets = (*self.sets, said)
        self.after_effort = False
        self.side_named = False
        self.last_named = False

    def take_time(self, at: Span) -> None:
        """Takes a time for part of the words of the set said last."""
        last = self.sets[-1]
        said = last.words.reps or (last.start, last.end)
        words = replace(last.words, reps=(min(said[0], at[0]), max(said[1], at[1])))
        last = replace(last, start=min(last.start, at[0]), end=max(last.end, at[1]), words=words)
        self.sets = (*self.sets[:-1], last)
        self.timed += 1
        self.time_at = None

    def words_before(self) -> Words:
        """Where the words stand that were said before a set and are of it: its number, its effort, how many alike."""
        return Words(
            sets=self.mult_at if self.mult else None,
            count=self.mult or 1,
            effort=self.pending_at,
            number=self.label_at if self.label is not None else None,
        )

    def turn_to(self, side: Side, at: Span) -> None:
        """What follows is of this side, as the words at `at` say."""
        self.side = side
        self.side_at = at
        self.side_named = bool(self.sets)

    def enter(self, stage: Stage, at: Span | None = None) -> None:
        """What follows is of this stage: by the words at `at`, or as the plan has it."""
        self.stage = stage
        self.stage_at = at

    def rate_last(self, rir: Decimal, at: Span | None, *, all_sets: bool = False, most: int | None = None) -> None:
        """Gives the last set said (and its other side), or all of them, or the last `most`, the effort said at `at`."""
        end = 0 if at is None else at[1]
        place = len(self.sets) - 1
        while place > 0 and self.sets[place].stage in (Stage.DROP, Stage.MINI):
            place -= 1
        if self.sets[place].stage in (Stage.DROP, Stage.MINI) or self.sets[-1].stage is Stage.DROP:
            place = len(self.sets) - 1
        out = list(self.sets)
        if not all_sets and out[place].count > 1:
            counted = out[place]
            out[place : place + 1] = [replace(counted, count=counted.count - 1), replace(counted, count=1)]
            place += 1
        first = 0 if most is None or any(s.side is not None or s.count > 1 for s in out) else max(0, len(out) - most)
        for index in range(first, len(out)) if all_sets else (place,):
            words = replace(out[index].words, effort=at)
            out[index] = replace(out[index], rir=rir, end=max(out[index].end, end), words=words)
        last = out[place]
        if last.side is Side.RIGHT and place > 0 and out[place - 1].side is Side.LEFT and not all_sets:
            left = out[place - 1]
            if left.rir is None:
                out[place - 1] = replace(left, rir=rir, words=replace(left.words, effort=at))
        self.sets = tuple(out)

    def key(self) -> tuple[object, ...]:
        """What tells this state from one that will go on alike."""
        return (
            self.sets,
            self.chain,
            self.load,
            self.fresh,
            self.mult,
            self.stage,
            self.side,
            self.hand,
            self.expect,
            len(self.doubts),
        )


_values = attrgetter(*(one.name for one in fields(State)))
