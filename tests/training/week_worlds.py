"""Weeks for the tests: by hand, drawn, and of a size; and what a laid week is worth, reckoned straight from the
contract's words, apart from the engine's own grid."""

from collections.abc import Iterator
from decimal import Decimal
from fractions import Fraction
from itertools import combinations, product
from random import Random
from typing import NamedTuple

from hypothesis import strategies as st

from bot.training.plan import Region
from bot.training.week_values import DayRoom, Laying, Week, Weekday, WorkDone, WorkItem

MUSCLES = ("quadriceps", "chest", "back", "biceps")


def item(
    name: str,
    sets: int = 3,
    minutes: str | int = 9,
    direct: str = "",
    priority: int = 1,
    *,
    region: str = "upper",
    partner: str | None = None,
    indirect: str = "",
) -> WorkItem:
    """An item; muscles as words."""
    return WorkItem(
        name,
        sets,
        Decimal(minutes),
        tuple(direct.split()),
        priority,
        Region(region),
        tuple(indirect.split()),
        partner,
    )


def days(**minutes: int) -> tuple[DayRoom, ...]:
    """Days as `mon=40, wed=30`."""
    return tuple(DayRoom(Weekday[day.upper()], Decimal(n)) for day, n in minutes.items())


class Measure(NamedTuple):
    """What the contract compares, in its order; smaller is better."""

    lost_1: int
    lost_2: int
    lost_3: int
    clashes: int
    longest: Fraction


def distance_h(one: Weekday, other: Weekday) -> int:
    """Hours between two days, the week repeating: counted forwards and backwards on the calendar."""
    return min((one - other) % 7, (other - one) % 7) * 24


def measure(week: Week, sets: tuple[int, ...], places: tuple[int | None, ...]) -> Measure | None:
    """The worth of a way to lay the week; `None` where it is not allowed."""
    left = remaining(week)
    if any(kept < 0 or kept > most for kept, most in zip(sets, left, strict=True)):
        return None
    loads = [Fraction(0)] * len(week.days)
    worked: dict[str, set[Weekday]] = {}
    for done in week.done:
        for one in week.items:
            if one.name == done.name and done.sets:
                for muscle in one.direct:
                    worked.setdefault(muscle, set()).add(done.day)
    at: dict[str, int] = {}
    for one, kept, place in zip(week.items, sets, places, strict=True):
        if not kept:
            continue
        if place is None:
            return None
        at[one.name] = place
        loads[place] += Fraction(one.minutes) * kept / one.sets
        for muscle in one.direct:
            worked.setdefault(muscle, set()).add(week.days[place].day)
    if any(len({at[name] for name in group if name in at}) > 1 for group in partners(week)):
        return None
    if any(load > room.minutes for load, room in zip(loads, week.days, strict=True)):
        return None
    clashes = sum(distance_h(a, b) < week.rest_hours for on in worked.values() for a, b in combinations(sorted(on), 2))
    lost = [
        sum(most - kept for one, most, kept in zip(week.items, left, sets, strict=True) if one.priority == p)
        for p in (1, 2, 3)
    ]
    return Measure(lost[0], lost[1], lost[2], clashes, max(loads, default=Fraction(0)))


def partners(week: Week) -> list[set[str]]:
    """Names that share a day: partners, and partners of partners."""
    groups: list[set[str]] = []
    for one in week.items:
        together = {one.name} | ({one.partner} if one.partner is not None else set())
        met = [group for group in groups if group & together]
        groups = [group for group in groups if group not in met] + [together.union(*met)]
    return groups


def measure_of(week: Week, laying: Laying) -> Measure:
    """The worth of what was laid, which must be allowed."""
    found = measure(week, laying.sets, laying.places)
    assert found is not None
    return found


def remaining(week: Week) -> tuple[int, ...]:
    """Sets still to plan, for weeks whose items have different names."""
    return tuple(max(0, one.sets - sum(done.sets for done in week.done if done.name == one.name)) for one in week.items)


def best_by_hand(week: Week) -> Measure:
    """The best worth, by trying every number of sets on every day for every item."""
    left = remaining(week)

    def ways(most: int) -> Iterator[tuple[int, int | None]]:
        yield 0, None
        for kept in range(1, most + 1):
            for place in range(len(week.days)):
                yield kept, place

    measures = (
        measure(week, tuple(kept for kept, _ in way), tuple(place for _, place in way))
        for way in product(*(tuple(ways(most)) for most in left))
    )
    return min(m for m in measures if m is not None)


@st.composite
def small_weeks(draw: st.DrawFn) -> Week:
    """Weeks small enough to be tried out in full."""
    count, most_sets, most_days = draw(
        st.sampled_from(((1, 3, 3), (2, 3, 3), (3, 3, 3), (4, 2, 2), (4, 1, 3), (5, 2, 2)))
    )
    names = [f"item {n}" for n in range(count)]
    muscles = st.lists(st.sampled_from(MUSCLES), max_size=2, unique=True)
    items = []
    for place, name in enumerate(names):
        others = [None, *names[:place]] if draw(st.booleans()) else [None]
        items.append(
            WorkItem(
                name,
                draw(st.integers(1, most_sets)),
                draw(st.decimals("0.5", 20, places=1)),
                tuple(draw(muscles)),
                draw(st.integers(1, 3)),
                draw(st.sampled_from(Region)),
                partner=draw(st.sampled_from(others)),
            )
        )
    on = draw(st.lists(st.sampled_from(Weekday), min_size=1, max_size=most_days, unique=True))
    rooms = tuple(DayRoom(day, draw(st.decimals(0, 30, places=1))) for day in on)
    done = draw(
        st.lists(
            st.builds(WorkDone, st.sampled_from(names), st.integers(0, 2), st.sampled_from(Weekday)),
            max_size=2,
        )
    )
    rest = draw(st.sampled_from([Decimal(48), Decimal(0), Decimal(25), Decimal(72), Decimal(96)]))
    return Week(tuple(items), rooms, rest, tuple(done))


EXERCISES = (
    ("squat", "quadriceps glutes", "lower"),
    ("deadlift", "hamstrings glutes", "lower"),
    ("bench press", "chest", "upper"),
    ("row", "back", "upper"),
    ("pulldown", "back", "upper"),
    ("overhead press", "shoulders", "upper"),
    ("curl", "biceps", "upper"),
    ("pushdown", "triceps", "upper"),
    ("leg press", "quadriceps", "lower"),
    ("leg curl", "hamstrings", "lower"),
    ("calf raise", "calves", "lower"),
    ("lateral raise", "side shoulder", "upper"),
    ("dip", "chest triceps", "upper"),
    ("crunch", "abdominals", "trunk"),
)


def week_of(count: int, on: int, *, seed: int, room: float, tenths: bool = False) -> Week:
    """A week of a size: `room` is the minutes of the days over those of the work; minutes whole, or in tenths."""
    draw = Random(seed)
    items: list[WorkItem] = []
    for n in range(count):
        name, direct, region = draw.choice(EXERCISES)
        sets = draw.randint(1, 5)
        minutes = Decimal(round(sets * draw.uniform(2, 4), 1 if tenths else 0)).quantize(Decimal("0.1"))
        priority = draw.choice((1, 1, 2, 2, 3))
        partner = items[-1].name if n % 6 == 5 and items[-1].partner is None else None
        items.append(item(f"{name} {n}", sets, str(minutes), direct, priority, region=region, partner=partner))
    mean = float(sum(one.minutes for one in items)) / on * room
    chosen = sorted(draw.sample(list(Weekday), on))
    rooms = tuple(DayRoom(day, Decimal(max(5, round(mean * draw.uniform(0.8, 1.2) / 5) * 5))) for day in chosen)
    return Week(tuple(items), rooms)
