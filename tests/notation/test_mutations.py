"""Slips in labelled messages: the reading stays, or the message is asked about; it is seldom lost or changed.

The slips are made by a fixed rule, so the counts are the same on every run: a letter swapped, dropped or doubled in
each long word, and each pair of words typed as one. The bounds are what is measured today, to be lowered, never raised.
"""

import json
import re
from collections import Counter
from collections.abc import Iterator

from bot.cli.read import answer
from tests.notation.judging import rows_of, stored

NAMES = ("shared", "hand_a")


def slips(text: str) -> Iterator[str]:
    """The message with one slip in each of its long words, the kind of slip taking turns."""
    for turn, found in enumerate(re.finditer(r"[a-zA-Z]{5,}", text)):
        word, at = found.group(), 1 + turn % 3
        slipped = (
            word[:at] + word[at + 1] + word[at] + word[at + 2 :],
            word[:at] + word[at + 1 :],
            word[:at] + word[at] + word[at:],
        )[turn % 3]
        yield text[: found.start()] + slipped + text[found.end() :]


def joins(text: str) -> Iterator[str]:
    """The message with each pair of words typed as one."""
    for found in re.finditer(r"(?<=[a-z]) (?=[a-z])", text):
        yield text[: found.start()] + text[found.end() :]


def _count(mutate: object) -> Counter[str]:
    counts: Counter[str] = Counter()
    for row in (row for name in NAMES for row in rows_of(name)):
        request = dict(row["request"])
        before = answer(json.dumps(request))
        for text in mutate(request["text"]):  # type: ignore[operator]  # slips or joins
            after = answer(json.dumps({**request, "text": text}))
            counts["all"] += 1
            if after["ask"] is None and stored(after) != stored(before):
                keeps = bool(after["performed"] or after["replaces"])
                counts["changed" if keeps else "lost"] += 1
    return counts


def test_slips_in_words() -> None:
    """Of a thousand slips in words hardly any changes what is stored without a question."""
    counts = _count(slips)
    assert counts["changed"] <= 0.012 * counts["all"], counts
    assert counts["lost"] <= 0.012 * counts["all"], counts


def test_words_typed_as_one() -> None:
    """Nor does a missing space."""
    counts = _count(joins)
    assert counts["changed"] <= 0.012 * counts["all"], counts
    assert counts["lost"] <= 0.006 * counts["all"], counts
