"""Where the beam of `roles` stands: what was read so far, and what waits for its other half."""

from dataclasses import replace
from decimal import Decimal

from bot.notation.said import Doubt, SaidLoad, SaidSet
from bot.training.report import Side, Stage


class State:
    """One reading in the making. Copied before it is changed."""

    __slots__ = (
        "after_effort",
        "all_sets",
        "bare",
        "chain",
        "cost",
        "doubts",
        "entry",
        "expect",
        "expect_from",
        "fresh",
        "hand",
        "index",
        "label",
        "load",
        "minutes",
        "mult",
        "mult_said",
        "mult_start",
        "order",
        "pending",
        "planned",
        "plates",
        "repeats",
        "sets",
        "side",
        "side_named",
        "since_edge",
        "slashed",
        "spread",
        "stage",
        "start",
        "wants_load",
    )

    def __init__(self) -> None:
        self.cost = 0.0
        self.sets: tuple[SaidSet, ...] = ()
        self.doubts: tuple[Doubt, ...] = ()
        self.chain = ""
        """The roles of the entry under way: `LR` after `60x5`."""
        self.entry = 0
        self.index = 0
        """Work sets said so far."""
        self.load: SaidLoad | None = None
        """The load that holds for what follows."""
        self.fresh = False
        """Whether that load waits for its first repetitions."""
        self.bare = False
        """Whether nothing but its place says that it is a load."""
        self.start = 0
        self.order = ""
        """Whether pairs so far were load first (`LR`) or repetitions first (`RL`)."""
        self.repeats = False
        """Whether `same` was just said, which a number may change (`same but 4`)."""
        self.wants_load = False
        """Whether a load must follow: `dropped to`."""
        self.since_edge = 0
        """The entry before the last comma or sentence."""
        self.hand = False
        self.slashed = False
        """Whether that load came after a slash, where a drop was planned."""
        self.mult: int | None = None
        """Sets said before what they count."""
        self.mult_said = False
        self.mult_start = 0
        self.expect: int | None = None
        """How many sets a list was announced to have."""
        self.expect_from = 0
        self.stage = Stage.WORK
        self.side: Side | None = None
        self.side_named = False
        """Whether a side was said after the last set: what follows is of it."""
        self.label: int | None = None
        self.pending: Decimal | None = None
        """An effort said before its set."""
        self.after_effort = False
        self.all_sets = False
        self.spread: int | None = None
        """To how many sets one set is spread; -1 for all that are open."""
        self.minutes: int | None = None
        """Seconds of minutes just said, which seconds may follow."""
        self.planned: tuple[int, int] | None = None
        self.plates: tuple[int, int] | None = None
        """Plates or a bar, whose load is not said."""

    def copy(self) -> "State":
        """A state alike."""
        made = object.__new__(State)
        for slot in State.__slots__:
            setattr(made, slot, getattr(self, slot))
        return made

    def put(self, said: SaidSet) -> None:
        """Adds a set."""
        self.sets = (*self.sets, said)
        self.after_effort = False
        self.side_named = False

    def turn_to(self, side: Side) -> None:
        """What follows is of this side."""
        self.side = side
        self.side_named = bool(self.sets)

    def rate_last(self, rir: Decimal, all_sets: bool = False, end: int = 0) -> None:
        """Gives the last set said (and its other side), or all of them, this effort; its words end at `end`."""
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
        for index in range(len(out)) if all_sets else (place,):
            out[index] = replace(out[index], rir=rir, end=max(out[index].end, end))
        last = out[place]
        if last.side is Side.RIGHT and place > 0 and out[place - 1].side is Side.LEFT and not all_sets:
            out[place - 1] = replace(out[place - 1], rir=rir) if out[place - 1].rir is None else out[place - 1]
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
