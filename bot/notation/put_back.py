"""The bar put back where it came from: `👍 racked it`, `all five up, racked`, `thumb, back in the hooks`.

A set is over by it, so it is `done`, or so many as `all five` says. A thumb for what the coach wrote is none:
`👍 got it, starting now`. Common wordings; no source.
"""

import re
from collections.abc import Sequence
from dataclasses import replace
from decimal import Decimal

from bot.notation.kinds import Kind
from bot.notation.tokens import Mark
from bot.notation.wordlist import words

_THING = (
    r"(?:(?:the |that )?(?:bar|barbell|sled|weight|weights|bells?|dbs|dumbbells|kb|it|stack|"
    r"handles?)s?(?: is| are)? )?"
)
_PLACE = (
    r"(?:the )?(?:hooks?|rack|racks|stops?|pins?|safeties|floor|ground|stand|stands|j hooks|catchers|pegs|"
    r"shelf|cradle|"
    r"uprights|holders)"
)
_BACK = re.compile(
    rf"(?:{_THING}(?:(?:back |down |safely |now |all |just )*(?:in|on|onto|into) {_PLACE}|"
    rf"(?:re)?racked(?: it| up| the bar|"
    r" again| and done)?|back down|down)|(?:put|set|parked)(?: (?:it|the bar|them))? (?:back|down)|"
    r"i (?:re)?racked it)"
)
_ALL_UP = re.compile(
    r"(?:all|every) (?P<count>two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|\d+|of them|"
    r"reps?)(?: of them|"
    r" reps)? (?:up|came up|went up|moved|done|there|in)"
)
_THUMB = re.compile(
    r"(?:done|👍|✅|thumbs? up|thumb|did it|complete|finished that|set done|thats done|yep|yes|ok|boom|and|then|"
    r"now|just|nice|lovely|clean|smooth|solid|easy|safe|safely|phew|ok|lol|mate|coach|boss|,|\.|!|it) ?"
)
_TO_COME = re.compile(
    r"\b(?:starting|about to|beginning|begin now|will do|on it|gonna start|going to start|will start|ill start|"
    r"warming up|setting up|loading|heading (?:in|there|over)|on my way|noted|understood|sounds good|"
    r"roger|makes sense)\b"
)
NEEDS = frozenset(words(
    "racked reracked hooks hook rack stops stop pins safeties floor back down up in moved starting about "
    "will on gonna "
    "warming setting loading heading noted understood sounds roger makes"
))  # fmt: skip
_ALONE = frozenset((
    Kind.DONE, Kind.WORD, Kind.FILL, Kind.COMMA, Kind.STOP, Kind.OTHERTIME, Kind.WITH, Kind.ALL, Kind.AT, Kind.AND,
    Kind.THEN, Kind.PLATES, Kind.GAP, Kind.SKIPPED, Kind.EMPTY, Kind.TO, Kind.DROP, Kind.DROPPED, Kind.WEAK, Kind.SKIP,
    Kind.NUM, Kind.REPS,
))  # fmt: skip
_COUNTS = {w: n for n, w in enumerate(words("two three four five six seven eight nine ten eleven twelve"), 2)}
_MOST = 14
"""Marks of such a message: it says no more than that."""


def with_put_back(marks: Sequence[Mark]) -> Sequence[Mark]:
    """The marks with such words as `done`."""
    if not 0 < len(marks) <= _MOST:
        return marks
    if not _ALONE.issuperset(m.kind for m in marks):
        return marks
    line = " ".join(m.text for m in marks)
    thumb = any(m.kind is Kind.DONE for m in marks)
    if any(m.kind is Kind.DONE and m.text == "👍" for m in marks) and _TO_COME.search(line):
        return [replace(m, kind=Kind.GAP) if m.kind is Kind.DONE else m for m in marks]
    counted = _ALL_UP.search(line)
    back = _BACK.search(line if counted is None else _ALL_UP.sub("", line).strip())
    if back is None and not (counted and thumb):
        return marks
    rest = _ALL_UP.sub("", line) if back is None else _BACK.sub("", _ALL_UP.sub("", line), count=1)
    if _THUMB.sub("", " ".join(rest.split())).strip() or not (thumb or counted or "racked" in line):
        return marks
    start, end = marks[0].start, marks[-1].end
    said = "" if counted is None else counted["count"]
    count = int(said) if said.isdecimal() else _COUNTS.get(said)
    if count is None and any(m.kind is Kind.NUM for m in marks):
        return marks
    if count is None:
        return [Mark(Kind.DONE, "done", start, end)]
    number = Mark(Kind.NUM, str(count), start, end, False, Decimal(count))
    return [number, Mark(Kind.REPS, "reps", end, end)]
