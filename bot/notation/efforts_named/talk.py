"""Talk beside efforts that tells no set anew: `5 5 4, the 4 was all i had`, `first three easy last one rpe 9`."""

from collections.abc import Sequence

from bot.notation.clauses import kind_at, text_at
from bot.notation.efforts_named.effort import effort_at
from bot.notation.efforts_named.which_sets import sets_at
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark


def past_talk(piece: Sequence[Mark], at: int) -> int:
    """Behind the talk of `the 4 was all i had, nothing left`, where an effort follows it."""
    end = at
    while kind_at(piece, end) in _TALK:
        end += 1
    effort = effort_at(piece, end, None) if kind_at(piece, at) is Kind.WAS and end > at + 1 else None
    return end if effort is not None else at


def talk_end(marks: Sequence[Mark], at: int) -> int | None:
    """Where the talk of `5 5 4, the 4 was all i had` ends, which tells no set anew; `None` where it is none."""
    sets = sets_at(marks, at) if kind_at(marks, at) is Kind.NUM else None
    if sets is None or sets.reps is None or kind_at(marks, sets.end) is not Kind.WAS:
        return None
    end = sets.end + 1
    while kind_at(marks, end) in _SAYING and text_at(marks, end) not in ("so", "then"):
        end += 1
    rated = end < len(marks) and (
        effort_at(marks, end, None) is not None or effort_at(marks, past_talk(marks, sets.end), None) is not None
    )
    ends = kind_at(marks, end) in (None, Kind.COMMA, Kind.STOP, Kind.LINE, Kind.BREAK, Kind.THEN, Kind.FILL)
    return end if ends and end > sets.end + 1 and not rated else None


def felt_end(marks: Sequence[Mark], at: int) -> int | None:
    """Where `first three easy` ends, before the effort of another set: `first three easy last one rpe 9`."""
    sets = sets_at(marks, at) if kind_at(marks, at) in (Kind.ORD, Kind.LASTSET) else None
    if sets is None or sets.first is None:
        return None
    end = sets.end
    counted = sets.count > 1
    if kind_at(marks, end) is Kind.NUM and sets.count == 1 and text_at(marks, end + 1) in _FELT:
        counted, end = True, end + 1
    while kind_at(marks, end) in (Kind.WAS, Kind.FILL) and text_at(marks, end) not in ("but", "so"):
        end += 1
    felt = any(m.text in _FELT for m in marks[sets.end : end])
    while kind_at(marks, end) in (Kind.COMMA, Kind.AND) or text_at(marks, end) in ("but", "so", "the"):
        end += 1
    ends = kind_at(marks, end) in (None, Kind.STOP, Kind.LINE) and counted
    return end if felt and (ends or sets_at(marks, end) is not None) else None


_FELT = frozenset(["easy", "fine", "good", "ok", "okay", "smooth", "solid", "clean", "light", "fast", "hard", "tough",
                   "heavy", "slow", "comfortable", "great", "grand"])  # fmt: skip
_SAYING = (Kind.WAS, Kind.FILL, Kind.WORD, Kind.ALL, Kind.COULD)
_TALK = (Kind.WAS, Kind.FILL, Kind.WORD, Kind.ALL, Kind.COULD, Kind.COMMA, Kind.DASH)
