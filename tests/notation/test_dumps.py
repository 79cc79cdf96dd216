"""Whole sessions told at once: many put together by chance, and those that were once stored otherwise than told."""

from dataclasses import replace
from datetime import date

import pytest

from bot.notation.reading import read_message
from tests.notation.dumps import BARBELL, ENDINGS, OTHERS, Dump, dump
from tests.notation.dumps_in_full import MORE, Told, told

MANY = 600
"""Dumps; of others by the same chance, a thousand, two were stored otherwise and five asked about at first."""
BATCHES = 12
"""So many of `MANY` are read in one test."""
NAMES = tuple(word for e in (*BARBELL, *OTHERS, *MORE) for word in (e.name, *e.aliases))
MANY_IN_FULL = 600
"""Dumps that hold more than bare sets; of 2,700 by other chances six were stored otherwise at their first reading."""


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


def _told_in_full(one: Told) -> tuple[object, ...]:
    return (sorted(one.stored, key=repr), one.question, one.hurt, (), False, None, None)


def _kept_in_full(one: Told) -> tuple[object, ...]:
    reading = read_message(one.request)
    hurt = None if reading.pain is None else (reading.pain.where, reading.pain.urgent)
    kept = sorted(reading.performed, key=repr)
    return (kept, reading.question, hurt, reading.skipped, reading.finished, reading.minutes, reading.day)


@pytest.mark.parametrize("batch", range(BATCHES))
def test_no_dump_in_full_is_stored_otherwise_than_it_was_told(batch: int) -> None:
    """What is not asked about is stored as told, hurt and question too; at most two in fifty are asked about."""
    size = MANY_IN_FULL // BATCHES
    dumps = [told(seed) for seed in range(batch * size, (batch + 1) * size)]
    asked = [d.text for d in dumps if read_message(d.request).ask is not None]
    wrong = [d.text for d in dumps if d.text not in asked and _kept_in_full(d) != _told_in_full(d)]
    assert not wrong
    assert len(asked) <= size // 25, asked


@pytest.mark.parametrize("seed", [seed for seed in range(200) if told(seed).hurt is not None])
def test_a_hurt_behind_a_session_is_never_lost(seed: int) -> None:
    """Whatever the session tells, and even where its sets are asked about."""
    one = told(seed)
    reading = read_message(one.request)
    assert reading.pain is not None
    assert (reading.pain.where, reading.pain.urgent) == one.hurt


BESIDE: tuple[tuple[str, str, dict[str, object]], ...] = (
    ("yesterday: ", "", {"day": date(2026, 3, 3)}),
    ("monday's session: ", "", {"day": date(2026, 3, 2)}),
    ("last week i got 60x8 so ", "", {}),
    ("slept 5 hours, 2 coffees in. ", "", {}),
    ("my mate hit 180x3 on squat lol. ", "", {}),
    ("", ". that's me done", {"finished": True}),
    ("", ". gym was packed today", {}),
)
"""What stands before and behind a session, and what it adds."""
PLAIN = tuple(d for d in map(told, range(600, 760)) if d.text.lower().startswith(tuple(map(str.lower, NAMES))))
"""Sessions that open with the name of an exercise."""


@pytest.mark.parametrize(("before", "behind", "adds"), BESIDE, ids=[f"{b}…{e}" for b, e, _ in BESIDE])
def test_what_is_said_beside_a_session_changes_nothing_else(before: str, behind: str, adds: dict[str, object]) -> None:
    """At most one in twenty is asked about beside it."""
    read = asked = 0
    for one in PLAIN:
        if behind and (one.question or one.hurt or one.text.endswith(ENDINGS[3:])):
            continue
        reading = read_message(replace(one.request, text=f"{before}{one.text}{behind}"))
        read, asked = read + 1, asked + (reading.ask is not None)
        if reading.ask is None:
            told_so = {"day": reading.day, "finished": reading.finished}
            assert sorted(reading.performed, key=repr) == sorted(one.stored, key=repr), one.text
            assert told_so == {"day": None, "finished": False, **adds}, one.text
    assert asked <= read // 20 > 0
