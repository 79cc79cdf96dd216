"""The published equations against their worked values, and against each other where they must meet."""

import pytest

from bot.training.equations import BRZYCKI, EPLEY, EQUATIONS, LANDER, LOMBARDI, MAYHEW, OCONNER, WATHEN, Equation

WORKED = (
    (EPLEY, (103.33, 106.67, 110.00, 113.33, 116.67, 120.00, 126.67, 133.33, 140.00, 150.00, 166.67)),
    (BRZYCKI, (100.00, 102.86, 105.88, 109.09, 112.50, 116.13, 124.14, 133.33, 144.00, 163.64, 211.76)),
    (LANDER, (101.39, 104.21, 107.20, 110.36, 113.71, 117.27, 125.11, 134.07, 144.41, 163.31, 208.88)),
    (OCONNER, (102.50, 105.00, 107.50, 110.00, 112.50, 115.00, 120.00, 125.00, 130.00, 137.50, 150.00)),
    (MAYHEW, (108.86, 111.44, 113.99, 116.52, 119.01, 121.47, 126.29, 130.93, 135.40, 141.72, 151.18)),
    (LOMBARDI, (100.00, 107.18, 111.61, 114.87, 117.46, 119.62, 123.11, 125.89, 128.21, 131.10, 134.93)),
    (WATHEN, (101.30, 105.15, 108.98, 112.80, 116.58, 120.33, 127.67, 134.75, 141.50, 150.91, 164.46)),
)
"""1RM for 100 kg lifted 1, 2, 3, 4, 5, 6, 8, 10, 12, 15 and 20 times, computed by hand from the constants as listed by
LeSuer et al. 1997, J Strength Cond Res 11(4):211-213 (from memory; the constants seen on a secondary page)."""
REPS = (1, 2, 3, 4, 5, 6, 8, 10, 12, 15, 20)


@pytest.mark.parametrize(("equation", "values"), WORKED, ids=lambda v: v.name if isinstance(v, Equation) else "")
def test_worked_values(equation: Equation, values: tuple[float, ...]) -> None:
    """Each equation gives its worked values to the hundredth."""
    for reps, value in zip(REPS, values, strict=True):
        assert 100 * equation.ratio(reps) == pytest.approx(value, abs=0.006)


@pytest.mark.parametrize(
    ("load", "reps", "values"),
    [
        (80, 5, (93.33, 90.00, 90.97, 90.00, 95.21, 93.97, 93.27)),
        (60, 8, (76.00, 74.48, 75.07, 72.00, 75.77, 73.87, 76.60)),
        (102.5, 3, (112.75, 108.53, 109.88, 110.19, 116.84, 114.40, 111.70)),
        (37.5, 12, (52.50, 54.00, 54.16, 48.75, 50.77, 48.08, 53.06)),
        (225, 10, (300.00, 300.00, 301.66, 281.25, 294.60, 283.26, 303.18)),
    ],
)
def test_other_loads(load: float, reps: int, values: tuple[float, ...]) -> None:
    """They are linear in the load; worked by hand in the same order."""
    for equation, value in zip(EQUATIONS, values, strict=True):
        assert equation.one_rep_max(load, reps) == pytest.approx(value, abs=0.006)


def test_epley_and_brzycki_meet_at_ten() -> None:
    """Both give 4/3 at ten repetitions; Epley is above for fewer, below for more."""
    assert EPLEY.ratio(10) == pytest.approx(4 / 3) == BRZYCKI.ratio(10)
    assert all(EPLEY.ratio(r) > BRZYCKI.ratio(r) for r in range(1, 10))
    assert all(EPLEY.ratio(r) < BRZYCKI.ratio(r) for r in range(11, 30))


@pytest.mark.parametrize("equation", EQUATIONS, ids=lambda e: e.name)
def test_inverse(equation: Equation) -> None:
    """Repetitions from the ratio are those that gave it."""
    for reps in (1, 2.5, 5, 8, 12, 20):
        assert equation.reps(equation.ratio(reps)) == pytest.approx(reps, rel=1e-9)


def test_a_single_is_the_1rm() -> None:
    """A single to failure is itself the 1RM, whatever the equation says of one repetition."""
    assert [e.one_rep_max(140, 1) for e in EQUATIONS] == [140.0] * 7


def test_poles_are_out_of_reach() -> None:
    """Brzycki has its pole at 37 and Lander near 37.9: repetitions are capped before."""
    assert BRZYCKI.ratio(50) == BRZYCKI.ratio(36) == 36.0
    assert 0 < LANDER.ratio(500) < 40


def test_reserve_counts_as_repetitions() -> None:
    """100 kg x 5 with 2 left is 7 to failure: Epley 123.33, Brzycki 120.00 (computed by hand)."""
    assert EPLEY.one_rep_max(100, 5 + 2) == pytest.approx(123.33, abs=0.005)
    assert BRZYCKI.one_rep_max(100, 5 + 2) == pytest.approx(120.0)
