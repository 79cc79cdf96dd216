"""Simulated lifters live sixteen weeks: the engine against a scalar filter and against the bound that knows them.

A small sample of `python -m tests.bench loads`, with wide margins; the bench prints the real numbers.
"""

import numpy as np
import pytest

from tests.bench.lifters import WORLDS
from tests.bench.loads import Tally, run


@pytest.fixture(scope="module")
def tallies() -> dict[str, Tally]:
    """Six lives in two worlds."""
    return run(WORLDS[:2], "plain", range(500, 503), ("bound", "scalar filter", "ours"))


def test_sets_land(tallies: dict[str, Tally]) -> None:
    """Most of the bound's sets in range and near the target effort, and more than a scalar filter's."""
    ours, bound, scalar = (float(np.mean(tallies[name].landed)) for name in ("ours", "bound", "scalar filter"))
    assert ours >= 0.85 * bound
    assert ours > scalar


def test_overshoots_and_swings_stay_small(tallies: dict[str, Tally]) -> None:
    """No more failures than a little over the bound's, and no jumping from week to week."""
    assert float(np.mean(tallies["ours"].over)) <= 1.3 * float(np.mean(tallies["bound"].over))
    assert float(np.mean(tallies["ours"].swings)) <= 0.03


def test_typing_errors_cost_little(tallies: dict[str, Tally]) -> None:
    """One set in twenty mistyped (a lost point, pounds, a repeated digit) costs few landed sets."""
    mistyped = run(WORLDS[:2], "typing", range(500, 503), ("ours",))["ours"]
    assert float(np.mean(mistyped.landed)) >= float(np.mean(tallies["ours"].landed)) - 0.05
