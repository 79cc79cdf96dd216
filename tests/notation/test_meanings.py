"""One meaning in many wordings: lists of texts by independent writers that all have the same answer.

A list says what is kept before, the answer, and its texts: those of `texts` are read as the answer, those of `misread`
are not yet (by the list they are in, so that a wording that is mended, or broken, shows). The lists `unread_*` are for
counts only, as the corpus's unread messages are.
"""

import json
from pathlib import Path
from typing import Any

import pytest

from bot.cli.read import answer
from tests.notation.judging import differences

MEANINGS = Path(__file__).parent / "meanings"
NOW = "2026-03-04T18:54:59+00:00"
_BENCH = {"name": "Bench Press", "aliases": ["bench"], "sets": [{"reps": [8, 10], "rir": 2, "load": 60}] * 3}
_ROW = {"name": "Barbell Row", "aliases": ["row"], "sets": [{"reps": [10, 12], "load": 50}] * 3}
_SQUAT = {"name": "Goblet Squat", "sets": [{"reps": [10, 12], "load": 20}] * 2}
_LUNGE = {"name": "Walking Lunge", "aliases": ["lunges"], "sets": [{"reps": [8, 10], "load": 12}] * 2}
_PLANK = {"name": "Plank", "measure": "seconds", "sets": [{"reps": [45, 60]}] * 2}
_PULL_UP = {"name": "Pull-up", "aliases": ["pullups", "chins"], "sets": [{"reps": [6, 8], "load": 0}] * 2}
PLAN = [
    {**_BENCH, "load_style": "total", "sides": 1},
    {**_ROW, "load_style": "total", "sides": 1},
    {**_SQUAT, "load_style": "total", "sides": 1},
    {**_LUNGE, "load_style": "per_hand", "sides": 2},
    {**_PLANK, "load_style": "none", "sides": 1},
    {**_PULL_UP, "load_style": "bodyweight", "sides": 1},
]
"""The session of all lists, in kilograms."""


def _lists() -> list[tuple[str, dict[str, Any]]]:
    """The lists that may be looked at, named by file, line and meaning."""
    out = []
    for path in sorted(p for p in MEANINGS.glob("*.jsonl") if not p.stem.startswith("unread_")):
        for number, line in enumerate(path.read_text(encoding="utf-8").splitlines()):
            one = json.loads(line)
            out.append((f"{path.stem}-{number}-{one['class']}", one))
    return out


def _is_read(one: dict[str, Any], text: str) -> bool:
    """Whether a text of a list is read as the list's answer."""
    request: dict[str, Any] = {"id": text, "text": text, "unit": "kg", "now": one.get("now") or NOW, "exercises": PLAN}
    request |= {key: one[key] for key in ("done", "current") if one.get(key)}
    return not differences({**one["answer"], "id": text}, answer(json.dumps(request)))


@pytest.mark.parametrize("one", [pytest.param(one, id=name) for name, one in _lists()])
def test_every_wording_has_its_meaning(one: dict[str, Any]) -> None:
    """Each text is read as the answer of its list; each of those not yet read so is not."""
    assert [text for text in one["texts"] if not _is_read(one, text)] == []
    assert [text for text in one["misread"] if _is_read(one, text)] == []
