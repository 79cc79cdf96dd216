"""Labelled messages, and whether an answer says what its label says.

A row is `{"request": …, "answer": …}` in the shape of the line filter. Equal numbers for left and right say the same as
one entry for each side; the unit of a set without a load says nothing.
"""

import json
from collections import Counter
from pathlib import Path
from typing import Any

CORPUS = Path(__file__).parent / "corpus"
"""`shared.jsonl` is the sample that the rules come with; `hand_*` and `heldout_*` are by several independent hands."""
Row = dict[str, Any]


def rows_of(name: str) -> list[Row]:
    """The rows of a corpus."""
    text = (CORPUS / f"{name}.jsonl").read_text(encoding="utf-8")
    return [json.loads(line) for line in text.splitlines() if line.strip()]


def stored(answer: Row) -> tuple[Counter[tuple[Any, ...]], list[tuple[Any, ...]]]:
    """What an answer stores: sets with both sides taken together, and what they replace."""
    out: Counter[tuple[Any, ...]] = Counter()
    sides: dict[tuple[Any, ...], Counter[str]] = {}
    for row in answer["performed"]:
        unit = None if row["load"] is None else row["unit"]
        load = None if row["load"] is None else round(float(row["load"]), 2)
        key = (row["exercise"], row["set"], row["stage"], load, unit, row["reps"], row["rir"])
        if row["side"] is None:
            out[(*key, None)] += 1
        else:
            sides.setdefault(key, Counter())[row["side"]] += 1
    for key, count in sides.items():
        pairs = min(count["left"], count["right"])
        out[(*key, None)] += pairs
        for side in ("left", "right"):
            out[(*key, side)] += count[side] - pairs
    return +out, sorted(tuple(key) for key in answer["replaces"])


def _same_place(one: str | None, two: str | None) -> bool:
    return one == two or (one is not None and two is not None and (one in two or two in one))


def differences(want: Row, got: Row) -> list[str]:
    """The names of the fields that are not as labelled."""
    if "error" in got:
        return [f"error: {got['error']}"]
    wrong = [] if stored(want) == stored(got) else ["performed"]
    wrong += [key for key in ("finished", "minutes", "day", "question") if want[key] != got[key]]
    if sorted(want["skipped"]) != sorted(got["skipped"]):
        wrong.append("skipped")
    if (want["ask"] is None) != (got["ask"] is None):
        wrong.append("ask")
    one, two = want["pain"], got["pain"]
    if (one is None) != (two is None):
        wrong.append("pain")
    elif one is not None:
        wrong += [key for key in ("urgent", "score", "side") if one.get(key) != two.get(key)]
        if not _same_place(one["where"], two["where"]):
            wrong.append("where")
    return wrong
