"""The same message is always read the same: also by another process, which takes words in another order."""

import json
import subprocess
import sys
from pathlib import Path

from tests.notation.judging import rows_of

ROOT = Path(__file__).parents[2]
BETWEEN_TWO = (
    "bace",
    "bose",
    "caff",
    "calp",
    "cheel",
    "chesk",
    "deet",
    "eart",
    "fape",
    "feeth",
    "footh",
    "gucs",
    "bricep",
)
"""Slips of the thumb as near to one part of the body as to another."""


def _read_with(seed: str, lines: str) -> str:
    """What a process of its own answers, which orders sets by `seed`."""
    told = subprocess.run(
        [sys.executable, "-m", "bot", "read"],
        input=lines,
        capture_output=True,
        text=True,
        cwd=ROOT,
        env={"PYTHONHASHSEED": seed},
        check=True,
    )
    return told.stdout


def test_another_process_reads_the_same() -> None:
    """Of the shared examples, a hand of hurts, and places that are typed between two."""
    rows = [row["request"] for name in ("shared", "variants_dr") for row in rows_of(name)]
    base = rows[0]
    rows += [{**base, "id": f"T-{word}", "text": f"my left {word} hurts"} for word in BETWEEN_TWO]
    lines = "".join(json.dumps(row) + "\n" for row in rows)
    answers = [_read_with(seed, lines) for seed in ("1", "2", "3")]
    assert len(answers[0].splitlines()) == len(rows)
    assert answers[0] == answers[1] == answers[2]
