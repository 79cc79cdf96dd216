"""Ways to say the sets of one exercise that hold more than bare sets: loads that change, drops, minis, sides, efforts,
warm-ups, a number put right, dictation. Each gives the text and keeps what it tells.

Common practice, no source.
"""

import random
from collections.abc import Callable, Sequence
from dataclasses import dataclass, field
from decimal import Decimal
from typing import TypeVar

from bot.training.plan import Finish, LoadStyle, Measure, PlannedExercise
from bot.training.report import Performed, Side, Stage
from bot.training.units import Load, Unit
from tests.notation.dumps import ways_of
from tests.notation.plans import DROP, MINI

_T = TypeVar("_T")
_ONES = (
    "zero",
    "one",
    "two",
    "three",
    "four",
    "five",
    "six",
    "seven",
    "eight",
    "nine",
    "ten",
    "eleven",
    "twelve",
    "thirteen",
    "fourteen",
    "fifteen",
    "sixteen",
    "seventeen",
    "eighteen",
    "nineteen",
    "twenty",
)
_TENS = ("twenty", "thirty", "forty", "fifty", "sixty", "seventy", "eighty", "ninety")


@dataclass(slots=True)
class One:
    """An exercise of a message, what its sets are and how it may be called."""

    exercise: PlannedExercise
    unit: Unit
    chance: random.Random
    reps: list[int] = field(default_factory=list)
    stored: list[Performed] = field(default_factory=list)

    def __post_init__(self) -> None:
        asked, step = self.exercise.sets[0].reps, 5 if self.exercise.measure is Measure.SECONDS else 1
        self.reps = [self.pick(range(asked.low, asked.high + 1, step)) for _ in self.exercise.sets]
        if self.chance.random() < 0.3:
            self.reps = [self.reps[0]] * len(self.reps)

    def pick(self, ways: Sequence[_T]) -> _T:
        return self.chance.choice(ways)

    @property
    def name(self) -> str:
        return self.pick((self.exercise.name, self.exercise.name.lower(), *self.exercise.aliases * 3))

    @property
    def load(self) -> Decimal | None:
        load = self.exercise.sets[0].load
        return None if load is None else load.amount

    @property
    def in_units(self) -> str:
        kilos, pounds = ("", "", "kg", " kg", " kilos"), ("", "", "lb", "lbs", " lbs", " pounds")
        return self.pick(pounds if self.unit is Unit.LB else kilos)

    def keep(
        self,
        number: int | None,
        load: Decimal | None,
        reps: int,
        stage: Stage = Stage.WORK,
        *,
        rir: int | None = None,
        side: Side | None = None,
    ) -> None:
        kept = None if load is None else Load.of(load, self.unit)
        self.stored.append(
            Performed(self.exercise.name, number, stage, kept, reps, None if rir is None else Decimal(rir), side)
        )

    def keep_all(self, efforts: Sequence[int] | None = None) -> None:
        for number, reps in enumerate(self.reps, 1):
            self.keep(number, self.load, reps, rir=None if efforts is None else efforts[number - 1])

    def listed(self, reps: Sequence[int] | None = None) -> str:
        """The sets in a plain list."""
        w, u, r = _short(self.load), self.in_units, [str(x) for x in reps or self.reps]
        return self.pick((", ".join(f"{w}x{x}" for x in r), f"{w}{u} " + " ".join(r), f"{w}{u}: " + ", ".join(r)))


def _short(load: Decimal | None) -> str:
    return "" if load is None else f"{load.normalize():f}"


def _word(number: Decimal | int, chance: random.Random) -> str:
    if number != int(number):
        return _word(int(number), chance) + chance.choice((" and a half", " point five"))
    number = int(number)
    if number <= 20:
        return _ONES[number]
    if number < 100:
        return _TENS[number // 10 - 2] + (f" {_ONES[number % 10]}" if number % 10 else "")
    hundreds, rest = divmod(number, 100)
    return ("a hundred" if hundreds == 1 else f"{_ONES[hundreds]} hundred") + (
        f" and {_word(rest, chance)}" if rest else ""
    )


_Said = tuple[Finish | None, str]


def plain(one: One) -> _Said:
    one.keep_all()
    if one.load and one.exercise.load_style is LoadStyle.BODYWEIGHT:
        r = ", ".join(str(x) for x in one.reps)
        return None, f"{one.name} " + one.pick((f"+{_short(one.load)}: {r}", f"with {_short(one.load)} added, {r}"))
    ways = ways_of(one.exercise)(one.name, one.exercise.sets[0].load, [str(r) for r in one.reps], one.chance)
    return None, one.pick([w for w in ways if one.unit is Unit.KG or ("kg" not in w and "kilo" not in w)])


def _rising(one: One) -> _Said:
    """Another load each set, up or down, or one and then another."""
    assert one.load is not None
    step = Decimal(5) if one.unit is Unit.LB else Decimal(2) if one.load < 20 else Decimal("2.5")
    loads = [one.load + step * n for n in range(len(one.reps))]
    loads = one.pick((loads, loads[::-1], [loads[0], *[loads[1]] * (len(loads) - 1)]))
    for number, (load, reps) in enumerate(zip(loads, one.reps, strict=True), 1):
        one.keep(number, load, reps)
    u, pairs = one.in_units, [(_short(a), b) for a, b in zip(loads, one.reps, strict=True)]
    if one.unit is Unit.KG and one.chance.random() < 0.15:
        pairs = [(a.replace(".", ","), b) for a, b in pairs]
    ways = [
        ", ".join(f"{a}{u}x{b}" for a, b in pairs),
        ", ".join(f"{a}{u} for {b}" for a, b in pairs),
        ", ".join(f"{b} at {a}{u}" for a, b in pairs),
        " then ".join(f"{a} x {b}" for a, b in pairs),
        f"started at {pairs[0][0]}{u} for {pairs[0][1]}, " + ", ".join(f"then {a} for {b}" for a, b in pairs[1:]),
    ]
    return None, f"{one.name} {one.pick(ways)}"


def _dropped(one: One) -> _Said:
    """A drop behind the last set."""
    assert one.load is not None
    one.keep_all()
    load, reps = Decimal(round(one.load * Decimal("0.7") / 5) * 5), one.chance.randint(5, 12)
    one.keep(len(one.reps), load, reps, Stage.DROP)
    d, u = _short(load), one.in_units
    ends = (
        f" > {d}x{reps}",
        f" drop {d}x{reps}",
        f", drop {d}{u} x {reps}",
        f" then dropped to {d} for {reps}",
        f", dropped to {d}{u} for {reps}",
        f" + drop {d}x{reps}",
        f" (drop: {d} x {reps})",
        f", drop set {d}x{reps}",
        f", stripped it to {d} for {reps} more",
        f", last one dropped to {d} for another {reps}",
    )
    return DROP, f"{one.name} {one.listed()}{one.pick(ends)}"


def _with_minis(one: One) -> _Said:
    """Short continuations behind the last set."""
    one.keep_all()
    minis = [one.pick((3, 4, 5)) for _ in range(one.chance.randint(2, 3))]
    for reps in minis:
        one.keep(len(one.reps), one.load, reps, Stage.MINI)
    m = [str(x) for x in minis]
    ends = (
        " +" + "+".join(m),
        " + " + " + ".join(m),
        " minis " + " ".join(m),
        ", minis " + ", ".join(m),
        f" (minis {'/'.join(m)})",
        " then minis of " + ", ".join(m),
        ", mini sets " + " ".join(m),
    )
    return MINI, f"{one.name} {one.listed()}{one.pick(ends)}"


def _apart(one: One) -> _Said:
    """Each side by itself."""
    low, high = one.exercise.sets[0].reps.low, one.exercise.sets[0].reps.high
    told = []
    for number in (1, 2):
        left = one.pick(range(low, high + 1))
        right = one.pick([r for r in range(low, high + 1) if r != left])
        one.keep(number, one.load, left, side=Side.LEFT)
        one.keep(number, one.load, right, side=Side.RIGHT)
        told += [left, right]
    w, (p, q, s, t) = _short(one.load), told
    ways = (
        f"{w}s L{p} R{q}, L{s} R{t}",
        f"{w} left {p} right {q}, left {s} right {t}",
        f"with {w}s: {p} left {q} right, then {s} left {t} right",
        f"{w} L{p}/R{q} and L{s}/R{t}",
        f"{w}s {p} on the left {q} on the right, second set {s} left {t} right",
    )
    return None, f"{one.name} {one.pick(ways)}"


def _rated(one: One) -> _Said:
    """An effort each, or one of all."""
    felt, same = [one.pick((7, 8, 9, 10)) for _ in one.reps], one.pick((8, 9))
    w, u, each = _short(one.load), one.in_units, list(zip(one.reps, felt, strict=True))
    r = " ".join(str(x) for x in one.reps)
    apart = [
        ", ".join(f"{w}x{a}@{b}" for a, b in each),
        f"{w}{u}: " + ", ".join(f"{a} @{b}" for a, b in each),
        ", ".join(f"{w}{u} x {a} rpe {b}" for a, b in each),
        ", ".join(f"{w}x{a} ({10 - b} left)" for a, b in each),
        f"{w}{u} " + ", ".join(f"{a} rir {10 - b}" for a, b in each),
        ", ".join(f"{w} for {a} with {10 - b} in the tank" for a, b in each),
        f"{w}{u} {r}, rpe " + " ".join(str(x) for x in felt),
        f"{w}{u} {r} @ " + "/".join(str(x) for x in felt),
    ]
    apart = apart if len(felt) > 2 or felt[-1] != 10 else apart[:-1]  # `@ 8/10` may be eight out of ten
    alike = [f"{w}{u} {r} all @{same}", f"{w}{u} {r} all rpe {same}", f"{w}{u} {r} ({10 - same} left on all)"]
    way = one.pick(apart + alike)
    one.keep_all([10 - (same if way in alike else x) for x in felt])
    return None, f"{one.name} {way}"


def _put_right(one: One) -> _Said:
    """The last set put right behind its list."""
    one.keep_all()
    asked, right = one.exercise.sets[0].reps, one.reps[-1]
    wrong = one.pick([r for r in range(asked.low, asked.high + 1) if r != right])
    ends = (
        f" no wait {right}",
        f", no {right}",
        f" - sorry, {right}",
        f", i mean {right}",
        f" oops {right} not {wrong}",
        f" (actually {right})",
        f", no wait the last was {right}",
        f" scratch that, {right}",
        f", make that {right}",
    )
    return None, f"{one.name} {one.listed([*one.reps[:-1], wrong])}{one.pick(ends)}"


def _warmed_up(one: One) -> _Said:
    """A lighter set before them."""
    assert one.load is not None
    load, reps = Decimal(round(one.load / 2 / 5) * 5), one.chance.randint(5, 8)
    one.keep(None, load, reps, Stage.WARMUP)
    one.keep_all()
    light, w, u, r = _short(load), _short(one.load), one.in_units, [str(x) for x in one.reps]
    ways = (
        f"warm up {light}x{reps}, then {w}{u} {' '.join(r)}",
        f"(warmup {light}x{reps}) {w}{u}: {', '.join(r)}",
        f"warmed up with {light} for {reps}, then " + ", ".join(f"{w}x{x}" for x in r),
        f"{light}x{reps} warmup, {w}{u} x {', '.join(r)}",
        f"wu {light}x{reps}, " + " ".join(f"{w}x{x}" for x in r),
    )
    return None, f"{one.name} {one.pick(ways)}"


def spoken(one: One) -> _Said:
    """Dictated, without a mark."""
    one.keep_all()
    w = [_word(x, one.chance) for x in one.reps]
    each = one.pick((" each", " each side", " a side")) if one.exercise.sides == 2 else ""
    if one.exercise.measure is Measure.SECONDS:
        each = each and " each side"
        ways = [f"{w[0]} seconds{each} then {w[1]} seconds{each}", f"{w[0]} and {w[1]} seconds{each}"]
    elif not one.load:
        ways = [f"{' '.join(w[:-1])} and {w[-1]}", " then ".join(w)]
    elif one.exercise.load_style is LoadStyle.BODYWEIGHT:
        ways = [f"plus {_word(one.load, one.chance)} for {' '.join(w[:-1])} and {w[-1]}"]
    else:
        load, u = (
            _word(one.load, one.chance),
            one.pick(("", " pounds") if one.unit is Unit.LB else ("", " kilos", " kg")),
        )
        ways = [
            f"{load}{u} for {' '.join(w[:-1])} and {w[-1]}{each}",
            f"{load}{u} for " + " then ".join(w) + each,
            " ".join(f"{load}{u} for {x}{each}" for x in w),
            f"with {load}{u} " + " then ".join(x + each for x in w),
        ]
    return None, f"{one.name} {one.pick(ways)}"


def _weighed(exercise: PlannedExercise) -> bool:
    return exercise.load_style is LoadStyle.TOTAL


def _in_hands(exercise: PlannedExercise) -> bool:
    return exercise.load_style in (LoadStyle.TOTAL, LoadStyle.PER_HAND) and exercise.sides == 1


def _two_sided(exercise: PlannedExercise) -> bool:
    return exercise.sides == len(Side) and exercise.measure is Measure.REPS


WAYS: tuple[tuple[Callable[[One], _Said], Callable[[PlannedExercise], bool]], ...] = (
    (plain, lambda _: True),
    (_rising, _in_hands),
    (_dropped, _weighed),
    (_with_minis, _in_hands),
    (_apart, _two_sided),
    (_rated, _weighed),
    (_put_right, _in_hands),
    (_warmed_up, _weighed),
)
