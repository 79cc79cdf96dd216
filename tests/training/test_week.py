"""A week laid over its days: never more than is allowed, and never worse than the best there is."""

import time
from dataclasses import replace
from decimal import Decimal
from fractions import Fraction

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from bot.training.week import lay_week
from bot.training.week_grid import Lay, grid_of
from bot.training.week_relay import first_lay
from bot.training.week_story import DayName, Why, minutes_of, muscle_weeks, name_days, tell_cuts
from bot.training.week_values import Fault, Laying, Week, Weekday, WorkDone, check_week, hours_between
from tests.training.week_worlds import (
    Measure,
    best_by_hand,
    days,
    distance_h,
    item,
    measure,
    measure_of,
    remaining,
    small_weeks,
    week_of,
)


def lay(week: Week, time_limit_s: float = 30.0) -> Laying:
    """Laid with so much time that the proof doesn't hang on the machine."""
    return lay_week(week, clock=time.monotonic, time_limit_s=time_limit_s)


@settings(max_examples=120, deadline=None)
@given(small_weeks())
def test_as_good_as_trying_everything(week: Week) -> None:
    """Every way to lay a small week is tried out; the engine's is as good as the best of them, and says so."""
    laying = lay(week)
    found = measure_of(week, laying)
    assert found == best_by_hand(week)
    assert laying.proven
    assert laying.clashes == found.clashes


@settings(max_examples=60, deadline=None)
@given(st.integers(1, 30), st.integers(1, 7), st.integers(0, 10_000), st.floats(0.2, 1.6), st.booleans())
def test_any_week_is_laid_within_its_minutes(count: int, on: int, seed: int, room: float, tenths: bool) -> None:
    """Whatever the time that there is to think: nothing over the minutes, nothing added, partners together."""
    week = week_of(count, on, seed=seed, room=room, tenths=tenths)
    laying = lay(week, time_limit_s=0.05)
    assert measure(week, laying.sets, laying.places) is not None
    assert all(m <= room.minutes for m, room in zip(minutes_of(week, laying), week.days, strict=True))


@settings(max_examples=60, deadline=None)
@given(st.integers(1, 10), st.integers(1, 4), st.integers(0, 10_000), st.floats(0.3, 1.1))
def test_no_set_of_more_weight_is_lost_to_one_of_less(count: int, on: int, seed: int, room: float) -> None:
    """No lower set stands where a lost one of a higher priority could stand in its place."""
    week = week_of(count, on, seed=seed, room=room)
    laying = lay(week)
    here = measure_of(week, laying)
    for lost in range(count):
        for stays in range(count):
            if laying.sets[stays] and week.items[lost].priority < week.items[stays].priority:
                sets = [kept + (k == lost) - (k == stays) * laying.sets[stays] for k, kept in enumerate(laying.sets)]
                places = list(laying.places)
                places[lost] = places[lost] if places[lost] is not None else places[stays]
                other = measure(week, tuple(sets), tuple(places))
                assert other is None or other >= here


@settings(max_examples=25, deadline=None)
@given(st.integers(0, 10_000), st.sampled_from(Weekday))
def test_moving_a_day_there_and_back_changes_nothing(seed: int, to: Weekday) -> None:
    week = week_of(10, 3, seed=seed, room=1.0)
    before = lay(week)
    moved = replace(week, days=(replace(week.days[0], day=to), *week.days[1:]))
    if not check_week(moved):
        lay(moved)
    back = replace(moved, days=(replace(moved.days[0], day=week.days[0].day), *moved.days[1:]))
    assert back == week
    assert lay(back) == before


@settings(max_examples=25, deadline=None)
@given(st.integers(0, 10_000), st.integers(1, 6))
def test_turning_the_week_round_changes_nothing_in_its_worth(seed: int, by: int) -> None:
    """The week repeats: all days later by the same number give the same worth."""
    week = week_of(9, 3, seed=seed, room=0.9)
    turned = replace(week, days=tuple(replace(room, day=Weekday((room.day + by) % 7)) for room in week.days))
    assert measure_of(week, lay(week)) == measure_of(turned, lay(turned))


@pytest.mark.parametrize("seed", range(4))
@pytest.mark.parametrize(("count", "on", "room"), [(8, 2, 0.7), (12, 3, 0.8), (16, 4, 1.2), (24, 6, 1.3)])
def test_never_worse_than_the_plain_way(count: int, on: int, room: float, seed: int) -> None:
    """A plain greedy week is an allowed one; the answer is at least as good, and proven ones stay so with more time."""
    week = week_of(count, on, seed=seed, room=room)
    grid = grid_of(week)
    plain = first_lay(grid)
    places = tuple(plain.places[grid.group[k]] if kept else None for k, kept in enumerate(plain.kept))
    greedy = measure(week, plain.kept, places)
    assert greedy is not None
    laying = lay(week, time_limit_s=0.5)
    assert measure_of(week, laying) <= greedy
    if laying.proven:
        assert measure_of(week, lay(week)) == measure_of(week, laying)


def test_the_grid_and_the_contract_count_alike() -> None:
    """The engine's worth in whole numbers is the contract's in minutes."""
    for seed in range(30):
        week = week_of(12, 4, seed=seed, room=0.9, tenths=True)
        grid = grid_of(week)
        plain: Lay = first_lay(grid)
        places = tuple(plain.places[grid.group[k]] if kept else None for k, kept in enumerate(plain.kept))
        worth = grid.worth(plain)
        assert measure(week, plain.kept, places) == Measure(*worth[:4], Fraction(worth.longest, grid.scale))


# By hand: weeks whose best is plain to see.


def test_everything_fits_and_the_days_are_even() -> None:
    week = Week(
        (item("a", 3, 12), item("b", 3, 10), item("c", 3, 8), item("d", 3, 6)),
        days(mon=60, thu=60),
    )
    laying = lay(week)
    assert laying.sets == (3, 3, 3, 3)
    assert minutes_of(week, laying) == (Fraction(18), Fraction(18))
    assert laying.proven


def test_priorities_go_in_order() -> None:
    """Thirty minutes for forty: priority 3 gives way first, then 2, and 1 stays whole."""
    week = Week(
        (item("third", 4, 10, priority=3), item("first", 4, 20), item("second", 4, 10, priority=2)), days(mon=25)
    )
    assert lay(week).sets == (0, 4, 2)


def test_fewer_sets_take_their_share() -> None:
    """Three sets take ten minutes; seven minutes hold two of them (6 min 40 s), not three."""
    week = Week((item("a", 3, 10),), days(mon=7))
    laying = lay(week)
    assert laying.sets == (2,)
    assert minutes_of(week, laying) == (Fraction(20, 3),)


def test_shares_without_end_fill_a_day_exactly() -> None:
    """Three thirds of ten minutes are ten minutes, not a hair more."""
    assert lay(Week((item("a", 3, 10), item("b", 7, 10)), days(mon=20))).sets == (3, 7)


def test_a_high_set_is_worth_more_than_many_low_ones() -> None:
    week = Week((item("long", 1, 20), item("short", 10, 20, priority=3)), days(mon=20))
    assert lay(week).sets == (1, 0)


def test_partners_share_a_day() -> None:
    week = Week(
        (item("a", 3, 12, partner="c"), item("b", 3, 12), item("c", 3, 12, partner="d"), item("d", 3, 12)),
        days(mon=40, wed=40, fri=40),
    )
    laying = lay(week)
    assert laying.sets == (3, 3, 3, 3)
    assert laying.places[0] == laying.places[2] == laying.places[3]


def test_a_muscle_rests_where_days_allow() -> None:
    """Monday, Tuesday, Thursday: chest twice goes to days two apart, not to neighbours."""
    week = Week(
        (item("a", 3, 30, "chest"), item("b", 3, 30, "chest"), item("c", 3, 30, "back")),
        days(mon=30, tue=30, thu=30),
    )
    laying = lay(week)
    assert laying.clashes == 0
    assert laying.places[2] in (0, 1)


@pytest.mark.parametrize(
    ("one", "other", "rest", "clashes"),
    [
        ("mon", "tue", 48, 1),
        ("mon", "wed", 48, 0),
        ("sun", "mon", 48, 1),
        ("sat", "mon", 48, 0),
        ("mon", "wed", 49, 1),
        ("mon", "thu", 72, 0),
        ("mon", "fri", 73, 1),
        ("mon", "tue", 24, 0),
        ("mon", "tue", 0, 0),
    ],
)
def test_clashes_go_by_hours_in_a_week_that_repeats(one: str, other: str, rest: int, clashes: int) -> None:
    week = Week(
        (item("a", 3, 30, "chest back"), item("b", 3, 30, "chest")),
        days(**{one: 30, other: 30}),
        rest_hours=Decimal(rest),
    )
    assert lay(week).clashes == clashes


def test_what_is_done_is_not_planned_but_counts_for_rest() -> None:
    """Chest was worked on Monday: what is left of the week goes to Wednesday, although Tuesday is emptier."""
    week = Week(
        (item("bench", 4, 20, "chest"), item("fly", 2, 10, "chest"), item("row", 4, 20, "back")),
        days(tue=30, wed=30),
        done=(WorkDone("bench", 4, Weekday.MON),),
    )
    laying = lay(week)
    assert laying.sets == (0, 2, 4)
    assert laying.places == (None, 1, 0)
    assert laying.clashes == 0


def test_the_rest_of_a_part_done_is_still_planned() -> None:
    week = Week((item("bench", 4, 20, "chest"),), days(wed=30), done=(WorkDone("bench", 3, Weekday.MON),))
    assert lay(week).sets == (1,)
    assert minutes_of(week, lay(week)) == (Fraction(5),)


def test_clashes_behind_us_are_counted_and_cannot_be_mended() -> None:
    week = Week(
        (item("bench", 4, 20, "chest"), item("fly", 2, 10, "chest")),
        days(fri=30),
        done=(WorkDone("bench", 4, Weekday.MON), WorkDone("fly", 1, Weekday.TUE)),
    )
    laying = lay(week)
    assert (laying.clashes, laying.proven, laying.sets) == (1, True, (0, 1))


def test_when_the_time_runs_out_the_best_found_is_said_to_be_unproven() -> None:
    """A clock on which every look takes a minute: a week comes all the same, allowed, and without a false claim. The
    muscle's two exercises clash wherever they go, but that takes a proof."""
    looks = iter(range(0, 10**6, 60))
    week = Week((item("a", 3, 30, "chest"), item("b", 3, 30, "chest")), days(mon=30, tue=30))
    hasty = lay_week(week, clock=lambda: next(looks), time_limit_s=1.2)
    assert measure_of(week, hasty) == Measure(0, 0, 0, 1, Fraction(30))
    assert (hasty.proven, lay(week).proven) == (False, True)


def test_no_days_no_work_no_minutes() -> None:
    assert lay(Week((item("a"),), ())) == Laying((0,), (None,), 0, True)
    assert lay(Week((), days(mon=30))) == Laying((), (), 0, True)
    assert lay(Week((item("a"),), days(mon=0))) == Laying((0,), (None,), 0, True)
    assert lay(Week((item("a", 3, 0),), days(mon=0))).sets == (3,)


def test_minutes_of_any_fineness_and_size() -> None:
    """Shares with no common unit, and numbers far beyond a week."""
    week = Week(
        tuple(item(f"i{n}", n, f"{n}.{n:09d}7", "chest") for n in range(1, 30)),
        days(mon=100, wed=100, fri=1_000_000),
    )
    laying = lay(week, time_limit_s=0.3)
    assert laying.sets == tuple(range(1, 30))


@pytest.mark.parametrize(
    ("week", "fault", "place"),
    [
        (Week((), (*days(mon=1), *days(mon=2))), Fault.DAY_TWICE, 1),
        (Week((item("a", partner="b"),), ()), Fault.PARTNER_UNKNOWN, 0),
        (Week((item("b"), item("a", partner="a")), ()), Fault.PARTNER_ITSELF, 1),
        (Week((item("b"), item("b"), item("a", partner="b")), ()), Fault.PARTNER_SEVERAL, 2),
        (Week((item("a"),), (), done=(WorkDone("b", 1, Weekday.MON),)), Fault.DONE_UNKNOWN, 0),
        (Week(tuple(item(f"{n}", direct=f"m{n}") for n in range(61)), ()), Fault.MUSCLES_MANY, 0),
    ],
)
def test_faults_are_told_with_their_place(week: Week, fault: Fault, place: int) -> None:
    (problem,) = check_week(week)
    assert (problem.fault, problem.place) == (fault, place)
    with pytest.raises(ValueError, match="problems"):
        lay(week)


@given(st.sampled_from(Weekday), st.sampled_from(Weekday))
def test_hours_between_days(one: Weekday, other: Weekday) -> None:
    assert hours_between(one, other) == distance_h(one, other) <= 72


# What is told of it.


def names_of(*held: str) -> list[DayName]:
    """Each day holds the items of its line: `region muscle sets`, comma between."""
    items, places = [], []
    for place, line in enumerate(held):
        for n, one in enumerate(line.split(", ") if line else ()):
            region, sets, *muscles = one.split(" ")
            items.append(item(f"{place}.{n}", int(sets), 3, region=region))
            items[-1] = replace(items[-1], direct=(" ".join(muscles),))
            places.append(place)
    on = days(mon=99, tue=99, wed=99, thu=99)[: len(held)]
    week = Week(tuple(items), on)
    return list(name_days(week, Laying(tuple(i.sets for i in items), tuple(places), 0, True)))


@pytest.mark.parametrize(
    ("held", "names"),
    [
        (("upper 3 chest, lower 3 quadriceps",), ["whole-body"]),
        (("upper 3 chest, upper 3 back", "lower 3 quadriceps, trunk 3 abdominals"), ["upper", "lower"]),
        (("upper 3 chest, upper 2 triceps", "upper 3 back", "lower 3 calves"), ["push", "pull", "legs"]),
        (("upper 3 side shoulder", "upper 3 rear shoulder", "upper 3 lats"), ["push", "pull", "pull"]),
        (("upper 9 chest, upper 9 upper back, lower 2 calves",), ["upper"]),
        (("trunk 3 abdominals", ""), ["trunk", "free"]),
        (("upper 3 neck",), ["upper"]),
    ],
)
def test_days_are_named_by_what_they_hold(held: tuple[str, ...], names: list[str]) -> None:
    assert names_of(*held) == names


@pytest.mark.parametrize(
    ("week", "why"),
    [
        (Week((item("a", 3, 9),), ()), Why.NO_DAYS),
        (Week((item("a", 1, 9),), days(mon=5, wed=8)), Why.TOO_LONG),
        (Week((item("b", 3, 9), item("a", 3, 9, priority=2)), days(mon=10)), Why.LOWER_FIRST),
        (Week((item("a", 3, 9),), days(mon=8)), Why.SHORT),
        (Week((item("a", 3, 9),), days(mon=8, tue=8)), Why.SEAMS),
    ],
)
def test_why_sets_were_cut(week: Week, why: Why) -> None:
    cuts = tell_cuts(week, lay(week))
    assert {cut.why for cut in cuts} == {why}
    assert sum(cut.sets for cut in cuts) == sum(remaining(week)) - sum(lay(week).sets)


def test_muscles_count_direct_one_and_indirect_a_half() -> None:
    """Bench 4, row 3, curl 2, pushdown 2: the worked count with indirect sets at a half (fractional counting of
    Pelland et al. 2024, preprint): chest 4, back 3, triceps 0.5 * 4 + 2 = 4, biceps 0.5 * 3 + 2 = 3.5, shoulders 2."""
    week = Week(
        (
            item("bench", 4, 16, "chest", indirect="triceps shoulders"),
            item("row", 3, 12, "back", indirect="biceps"),
            item("curl", 2, 6, "biceps"),
            item("pushdown", 2, 6, "triceps"),
        ),
        days(mon=60),
    )
    muscles = muscle_weeks(week, lay(week))
    assert {name: (m.wanted, m.planned) for name, m in muscles.items()} == {
        "chest": (4, 4),
        "triceps": (4, 4),
        "shoulders": (2, 2),
        "back": (3, 3),
        "biceps": (Decimal("3.5"), Decimal("3.5")),
    }


def test_gaps_are_between_direct_days_and_count_what_is_done() -> None:
    week = Week(
        (item("bench", 3, 20, "chest", indirect="triceps"), item("fly", 3, 20, "chest")),
        days(sun=20),
        done=(WorkDone("bench", 3, Weekday.TUE),),
    )
    muscles = muscle_weeks(week, lay(week))
    assert (muscles["chest"].gap_h, muscles["chest"].planned) == (48, Decimal(6))
    assert (muscles["triceps"].gap_h, muscles["triceps"].planned) == (None, Decimal("1.5"))
