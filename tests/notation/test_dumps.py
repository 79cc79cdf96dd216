"""Whole sessions told at once: many put together by chance, and those that were once stored otherwise than told."""

import pytest

from bot.notation.reading import read_message
from tests.notation.dumps import Dump, dump

MANY = 600
"""Dumps; of others by the same chance, a thousand, two were stored otherwise and five asked about at first."""
BATCHES = 12
"""So many of `MANY` are read in one test."""


def _told(one: Dump) -> tuple[object, ...]:
    return (sorted(one.stored, key=repr), sorted(one.left_out), one.finished)


def _kept(one: Dump) -> tuple[object, ...]:
    reading = read_message(one.request)
    return (sorted(reading.performed, key=repr), sorted(reading.skipped), reading.finished)


@pytest.mark.parametrize("batch", range(BATCHES))
def test_no_dump_is_stored_otherwise_than_it_was_told(batch: int) -> None:
    """What is not asked about is stored as told, set for set, and at most one in fifty is asked about."""
    size = MANY // BATCHES
    dumps = [dump(seed) for seed in range(batch * size, (batch + 1) * size)]
    asked = [d.text for d in dumps if read_message(d.request).ask is not None]
    wrong = [d.text for d in dumps if d.text not in asked and _kept(d) != _told(d)]
    assert not wrong
    assert len(asked) <= size // 50, asked
