"""Messages misread when first met, and ten other wordings of each: all but those listed are read.

Every family stands for one thing that people say in many ways; two of each ten look alike and mean something else. A
third of each is kept unread.
"""

import json

import pytest

from bot.cli.read import answer
from tests.notation.judging import Row, differences, rows_of

ROWS = [row for name in ("df", "dg", "dh", "di") for row in rows_of(f"variants_{name}")]
UNLIKE = {
    "DG-107": "asked about, where the label reads it",
    "DG-038": "asked about, where the label reads it",
    "DG-047": "sets kept otherwise than the label has them",
    "DG-077": "sets kept otherwise than the label has them",
    "DG-086": "asked about, where the label reads it",
    "DH-019": "asked about, where the label reads it",
    "DH-023": "asked about, where the label reads it",
    "DH-083": "asked about, where the label reads it",
    "DH-085": "asked about, where the label reads it",
    "DH-089": "asked about, where the label reads it",
    "DH-095": "asked about, where the label reads it",
    "DH-139": "asked about, where the label reads it",
    "DI-026": "asked about, where the label reads it",
    "DI-037": "asked about, where the label reads it",
    "DI-056": "sets kept otherwise than the label has them",
    "DI-124": "asked about, where the label reads it",
    "DI-127": "asked about, where the label reads it",
    "DI-179": "asked about, where the label reads it",
}
"""What is not read as its label says, and how."""


@pytest.mark.parametrize("row", ROWS, ids=lambda row: row["request"]["id"])
def test_a_variant_is_read_as_labelled_unless_it_is_listed(row: Row) -> None:
    differs = differences(row["answer"], answer(json.dumps(row["request"])))
    assert bool(differs) == (row["request"]["id"] in UNLIKE), differs
