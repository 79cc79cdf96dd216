"""Labelled messages: every one of the shared sample and of the hands that may be looked at comes out as labelled."""

import json

import pytest

from bot.cli.read import answer
from tests.notation.judging import Row, differences, rows_of

ROWS = [row for name in ("shared", "hand_a", "hand_b", "hand_c") for row in rows_of(name)]


@pytest.mark.parametrize("row", ROWS, ids=[row["request"]["id"] for row in ROWS])
def test_as_labelled(row: Row) -> None:
    """Every field is as the label has it."""
    got = answer(json.dumps(row["request"]))
    assert not differences(row["answer"], got), (row["request"]["text"], got)


def test_asking_stores_nothing() -> None:
    """Where a message is asked about, nothing of it is stored."""
    for row in ROWS:
        got = answer(json.dumps(row["request"]))
        assert got["ask"] is None or (got["performed"] == [] and got["replaces"] == [])
