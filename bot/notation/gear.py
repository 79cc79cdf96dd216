"""What was hung on the body, told to be off: `no plate`, `belt off`, `ditched the vest` is body weight.

Only of an exercise on body weight: a squat with the belt off has its bar's load still.
"""

import re
from collections.abc import Sequence
from dataclasses import replace

from bot.notation.clauses import EDGES
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark
from bot.training.plan import LoadStyle, PlannedExercise

_GEAR = r"(?:plates?|belt|vest|chains?|dis[ck]s?|dumbbells?|db|kettlebell|kb|dip belt|weight belt|weight vest)"
_ART = r"(?:(?:the|a|any|my|that|your|this|extra|added) )*"
_OFF = re.compile(
    rf"\b(?:no|without|w/o|ditched|ditching|binned|binning|removed|removing|unclipped|sans|forgot|lost|left off"
    rf"|took off|taking off|taken off|put down|got rid of"
    rf"|(?:couldnt|cant|didnt|dont) (?:face|add|use|want|fancy|need|manage)) {_ART}"
    rf"{_GEAR}\b(?: (?:(?:and|or|nor|END) )?(?:(?:no|any|without) )?{_GEAR}\b)*(?: (?:off|away|down|at home))?"
    rf"|\b(?:without|w/o)(?: any| it)?(?= END)|\bwith (?:none|nothing)(?= END)"
    rf"|\b(?:took|taken|taking|take|removed) (?:all )?(?:the|my) weights? off\b"
    rf"|\bleft {_ART}{_GEAR} (?:at home|at work|in the car|behind)\b"
    rf"|\b(?:(?:took|taken|taking|take|had|with|got) )?{_ART}{_GEAR} (?:is |was |came |now )?off\b"
)
_NAMES = (Kind.NAME, Kind.WEAK)
_NUMBERS = (Kind.NUM, Kind.CLOCK)


def without_gear(marks: Sequence[Mark], exercises: Sequence[PlannedExercise], under_way: int | None) -> list[Mark]:
    """The marks with such words as body weight. `under_way`: the exercise of sets that name none."""
    if not any(e.load_style is LoadStyle.BODYWEIGHT for e in exercises):
        return list(marks)
    said = [*(_words(m) for m in marks), ["END"]]
    owners = [place for place, told in enumerate(said) for _ in told]
    text = " ".join(w for told in said for w in told)
    out = list(marks)
    late: list[tuple[int, Mark]] = []
    for found in _OFF.finditer(text):
        first = owners[text[: found.start()].count(" ")]
        last = owners[text[: found.end()].count(" ")]
        if any(m.kind in _NUMBERS for m in marks[first : last + 1]):
            continue
        place = _exercise(marks, first, last, under_way)
        if place is None or exercises[place].load_style is not LoadStyle.BODYWEIGHT:
            continue
        gone = [replace(m, kind=Kind.FILL, value=None) for m in marks[first : last + 1]]
        if not _is_told(marks, last) and not _was_told(marks, first):
            gone[0] = replace(marks[first], kind=Kind.BODY, text="no weight", end=marks[last].end, value=None)
        out[first : last + 1] = gone
        name = _name_behind(out, last + 1) if gone[0].kind is Kind.BODY else None
        if name is not None:
            late.append((name, out[first]))
            out[first] = replace(out[first], kind=Kind.FILL)
    for name, body in reversed(late):
        out.insert(name + 1, body)
    return out


def _name_behind(marks: Sequence[Mark], at: int) -> int | None:
    """The name with bare repetitions of `no belt today, chins 7`, before which body weight was told; else `None`."""
    while at < len(marks) and marks[at].kind in (Kind.FILL, Kind.COMMA):
        at += 1
    bare = [m.kind for m in marks[at : at + 2]] == [Kind.NAME, Kind.NUM]
    behind = marks[at + 2].kind if at + 2 < len(marks) else None
    return at if bare and behind not in (Kind.X, Kind.FOR, Kind.KG, Kind.LB) else None


def _words(mark: Mark) -> list[str]:
    """The words of a mark; what ends a part is told as such."""
    return ["END"] if mark.kind in EDGES else mark.text.split()


def _exercise(marks: Sequence[Mark], first: int, last: int, under_way: int | None) -> int | None:
    """The exercise that is spoken of: named straight behind the words, or before them, or the one under way."""
    behind = [m for m in marks[last + 1 : last + 4] if m.kind is not Kind.FILL][:1]
    before = [m for m in marks[:first] if m.kind in _NAMES][-1:]
    anywhere = [m for m in marks[last:] if m.kind in _NAMES][:1]
    for mark in (*(m for m in behind if m.kind in _NAMES), *before, *anywhere):
        return mark.names[0] if len(mark.names) == 1 else None
    return under_way


def _was_told(marks: Sequence[Mark], first: int) -> bool:
    """Whether body weight was said before, of the same exercise: `pull ups bw 8 8 7 couldnt face the plate`."""
    named = next((i for i in range(first - 1, -1, -1) if marks[i].kind in (*_NAMES, Kind.STOP, Kind.LINE)), 0)
    return any(m.kind is Kind.BODY for m in marks[named:first])


def _is_told(marks: Sequence[Mark], last: int) -> bool:
    """Whether body weight is said besides, before the next number: `belt off, just me, 6 and 6`."""
    for mark in marks[last + 1 :]:
        if mark.kind in _NUMBERS:
            return False
        if mark.kind is Kind.BODY:
            return True
    return False
